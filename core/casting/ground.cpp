// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/ground.h"

#include "casting/form_casting.h"

#include <utility>

namespace drawercast::casting {

Ground::Ground(std::shared_ptr<const layout::Insert> of, double radius_mm)
    : insert(std::move(of)), fillet_mm(radius_mm) {
    for (const shape::Patch& patch : insert->area.region.patches) {
        opening.add(patch.outer);
        for (const shape::Ring& hole : patch.holes) opening.add(hole); // the other way round: takes away
    }
    if (fillet_mm > 0) nodes = clay_nodes(fillet_mm, shared_clay_nodes);
}

} // namespace drawercast::casting
