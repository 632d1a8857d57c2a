// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/dilate.h"

#include "base/demand.h"
#include "shape/simple.h"
#include "shape/trace.h"

namespace drawercast::shape {
namespace {

Problem vanishes(Phrase what) {
    return {"outline-vanishes", "", std::move(what),
            phrase("Choose a smaller change of size, or simplify the outline")};
}

/// The larger or smaller outline in closed form, where it has one.
std::optional<Contour> closed_form(const Contour& contour, double by) {
    const double round = contour.round_mm + by;
    if (convex(contour) && round >= 0) return Contour{contour.core, round};
    if (contour.round_mm != 0 || contour.core.size() < 3) return std::nullopt;
    const auto moved = moved_sides(contour.core, by);
    if (!moved || first_meeting(*moved)) return std::nullopt;
    return by > 0 ? Contour{contour.core, by} : Contour{tidied(*moved), 0};
}

} // namespace

Expected<Region> dilated(const Contour& contour, double by_mm) {
    DRAWERCAST_DEMAND(by_mm >= 0, "dilation makes larger");
    if (convex(contour)) return region_of(Contour{contour.core, contour.round_mm + by_mm});
    return offset_round(region_of(contour), by_mm);
}

Expected<Contour> offset_kept(const Contour& contour, double by_mm) {
    if (auto exact = closed_form(contour, by_mm)) return *exact;
    const Expected<Region> region = offset_round(region_of(contour), by_mm);
    if (!region) return region.error();
    if (region->empty()) return vanishes(phrase("nothing is left of the outline"));
    if (region->patches.size() > 1) return vanishes(phrase("the outline falls apart"));
    if (!region->patches[0].holes.empty()) return vanishes(phrase("the outline closes around an island"));
    Ring ring = tidied(region->patches[0].outer);
    if (ring.size() < 3 || first_meeting(ring)) return vanishes(phrase("the outline meets itself"));
    return Contour{std::move(ring), 0};
}

} // namespace drawercast::shape
