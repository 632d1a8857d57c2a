// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/slots.h"

#include "air/pour_map.h"
#include "plan/air_stage.h"

namespace drawercast::plan {

int narrow_slots(const job::Job& job, const Plan& plan) {
    std::size_t count = 0;
    for (const DrawerPlan& drawer : plan.drawers)
        if (drawer.insert) count += air::slots_of(floor_of(job, drawer)).size();
    return static_cast<int>(count);
}

} // namespace drawercast::plan
