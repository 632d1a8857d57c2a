// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/layers.h"
#include "casting/standing.h"

#include <span>

/// What the sum over pockets standing alone counts wrongly, piece by piece. The mold's blocks and clay are
/// Σ alone − Σ beyond the edge − Σ shared by pairs + Σ crowded, exactly, however many meet; each piece
/// depends on its members alone, so that it can be kept while others move. Drawer frame, finished sizes.
namespace drawercast::casting {

struct Correction {
    double footprint_mm2 = 0;
    double fillet_mm3 = 0;
    Layers layers; ///< of the blocks
    bool operator==(const Correction&) const = default;
};

/// What of one pocket lies outside the opening: box walls and fillers have neither blocks nor clay.
Correction beyond_edge(const Standing& block, const Meeting& at_edge, const Ground& ground);

/// What two pockets share; `at_edge`: only inside the opening (both reach its edge). The order of the two
/// does not matter.
Correction shared_by(const Standing& a, const Standing& b, const Meeting& meeting, const Ground& ground,
                     bool at_edge);

/// Where three or more meet within `window`: what their pairs take off too often. `members` in the order of
/// their subjects.
Correction crowded_in(const shape::Box& window, std::span<const Standing* const> members,
                      const Ground& ground, bool at_edge);

} // namespace drawercast::casting
