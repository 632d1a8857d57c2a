// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <string>
#include <string_view>

namespace drawercast::plan {

/// The plan's figures as JSON text ("drawercast-figures", version 1): at most 9 significant digits, a part
/// that is not known is absent, never 0. `program` is the name and version that wrote it.
std::string figures_json(const job::Job& job, const Plan& plan, std::string_view program);

} // namespace drawercast::plan
