// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/demand.h"
#include "plan/builder.h"

namespace drawercast::plan {

/// The whole answer for a job, long parts and all, from scratch and however long it takes.
inline Plan whole(const job::Job& job) {
    auto plan = Builder().build(job, compute(job), never_stop);
    DRAWERCAST_DEMAND(plan.has_value(), "nobody asked to stop");
    return std::move(*plan);
}

} // namespace drawercast::plan
