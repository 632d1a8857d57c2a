// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/region.h"
#include "shape/segments.h"

#include <algorithm>

namespace drawercast::shape {

/// Whether a region holds `p`; on its boundary as holds_half_open() of its rings.
inline bool holds(const Region& region, Vec p) {
    return std::ranges::any_of(region.patches, [p](const Patch& patch) {
        const auto holds_it = [p](const Ring& ring) { return holds_half_open(ring, p); };
        return holds_it(patch.outer) && std::ranges::none_of(patch.holes, holds_it);
    });
}

} // namespace drawercast::shape
