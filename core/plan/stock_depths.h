// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <string_view>

namespace drawercast::plan {

/// The same job with the depths of one object's levels (empty: of all objects') such as boards give without
/// sawing a stack down: the nearest sum of the measured boards that its blocks are made of, by `plan`, the
/// job's, in the first drawer that holds it; where none does, in the first. Lying rounds and levels that go
/// through stay as they are. Figures follow from the new depths like from any others.
job::Job with_depths_from_boards(job::Job job, const Plan& plan, std::string_view object = {});

} // namespace drawercast::plan
