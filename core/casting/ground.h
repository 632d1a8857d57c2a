// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/fillet.h"
#include "casting/footprint.h"
#include "layout/insert.h"

#include <memory>
#include <vector>

namespace drawercast::casting {

/// What all blocks of one mold stand on: its opening, and the heights at which clay is looked at. Drawer
/// frame, finished sizes.
struct Ground {
    Ground(std::shared_ptr<const layout::Insert> insert, double fillet_mm);

    std::shared_ptr<const layout::Insert> insert;
    double fillet_mm; ///< radius as if it shrank like the insert
    Footprint opening;
    std::vector<ClayNode> nodes; ///< those at which forms keep their clay
};

} // namespace drawercast::casting
