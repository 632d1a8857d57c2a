// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/frame.h"

#include "base/demand.h"
#include "shape/enlargement.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

/// A mirrored ring runs the other way; turned round again behind its first vertex, so that twice is the same
/// ring.
template <class Map>
Ring mirrored(const Ring& ring, Map map) {
    Ring out;
    out.reserve(ring.size());
    for (const Vec p : ring) out.push_back(map(p));
    if (out.size() > 1) std::reverse(out.begin() + 1, out.end());
    return out;
}

} // namespace

MoldMap::MoldMap(Box insert_box, double shrinkage)
    : x1_(insert_box.max.x), y0_(insert_box.min.y), k_(enlargement_for(shrinkage)) {
    DRAWERCAST_DEMAND(!insert_box.empty(), "the insert has an extent");
    DRAWERCAST_DEMAND(shrinkage >= 0 && shrinkage < 0.2, "linear shrinkage is 0 to 0.2");
}

Point<InMold> MoldMap::to_mold(Point<InDrawer> p) const { return {(x1_ - p.x_mm) * k_, (p.y_mm - y0_) * k_}; }

Point<InDrawer> MoldMap::to_drawer(Point<InMold> p) const { return {x1_ - p.x_mm / k_, y0_ + p.y_mm / k_}; }

Outline<InMold> MoldMap::to_mold(const Outline<InDrawer>& outline) const {
    const auto map = [this](Vec p) { return to_mold(Point<InDrawer>::of(p)).vec(); };
    return {{mirrored(outline.contour.core, map), outline.contour.round_mm * k_}};
}

Outline<InDrawer> MoldMap::to_drawer(const Outline<InMold>& outline) const {
    const auto map = [this](Vec p) { return to_drawer(Point<InMold>::of(p)).vec(); };
    return {{mirrored(outline.contour.core, map), outline.contour.round_mm / k_}};
}

Area<InMold> MoldMap::to_mold(const Area<InDrawer>& area) const {
    const auto map = [this](Vec p) { return to_mold(Point<InDrawer>::of(p)).vec(); };
    Area<InMold> out;
    for (const Patch& patch : area.region.patches) {
        Patch turned{mirrored(patch.outer, map), {}};
        for (const Ring& hole : patch.holes) turned.holes.push_back(mirrored(hole, map));
        out.region.patches.push_back(std::move(turned));
    }
    return out;
}

} // namespace drawercast::shape
