// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/slots.h"

#include "plan/plan.h"

#include "air/floor.h"
#include "air/pour_map.h"

#include <vector>

namespace drawercast::plan {

int narrow_slots(const job::Job& job) {
    std::size_t count = 0;
    for (const DrawerPlan& drawer : compute(job).drawers) {
        if (!drawer.insert) continue;
        std::vector<const layout::PlacedPocket*> pockets;
        for (const auto& pocket : drawer.pockets) pockets.push_back(pocket.get());
        count += air::slots_of(air::floor_of(*drawer.insert, pockets, job.foam->shrinkage)).size();
    }
    return static_cast<int>(count);
}

} // namespace drawercast::plan
