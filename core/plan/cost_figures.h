// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/json_text.h"
#include "plan/plan.h"

namespace drawercast::plan {

/// One set and runs of several; nothing until what to cut and buy is worked out.
void write_cost(JsonText& json, const job::Job& job, const Plan& plan);
/// What the casts say together; nothing where there are none.
void write_casts(JsonText& json, const job::Job& job, const Plan& plan);

} // namespace drawercast::plan
