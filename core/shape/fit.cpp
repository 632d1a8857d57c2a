// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/fit.h"

#include "shape/dilate.h"
#include "shape/simple.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

Problem vanishes(Phrase what) {
    return {"fit-vanishes", "", std::move(what), phrase("Squeeze the object less, or check the outline")};
}

Problem nothing_left() { return vanishes(phrase("the fit leaves nothing of the outline")); }

Expected<Contour> fitted_to(const Rectangle& r, const Fit& fit) {
    const bool along_x = r.width_mm >= r.height_mm;
    const double width = r.width_mm + 2 * (along_x ? fit.end_mm : fit.side_mm);
    const double height = r.height_mm + 2 * (along_x ? fit.side_mm : fit.end_mm);
    const double lesser = std::min(width, height);
    if (!(lesser > 0)) return nothing_left();
    const double corner = r.corner_mm > 0 ? std::clamp(r.corner_mm + fit.side_mm, 0.0, lesser / 2) : 0;
    return contour_of(Rectangle{width, height, corner});
}

Expected<Contour> fitted_to(const Circle& c, const Fit& fit) {
    const double diameter = c.diameter_mm + 2 * fit.side_mm;
    if (!(diameter > 0)) return nothing_left();
    return contour_of(Circle{diameter});
}

Expected<Contour> fitted_to(const Capsule& c, const Fit& fit) {
    const double length = c.length_mm + 2 * fit.end_mm;
    const double width = c.width_mm + 2 * fit.side_mm;
    if (!(std::min(length, width) > 0)) return nothing_left();
    if (width > length) // sides grew past the ends: its round ends are now at the sides
        return contour_of(Rectangle{length, width, length / 2});
    return contour_of(Capsule{length, width});
}

/// Stretched along the long axis of its box until both ends have moved outward by `more_mm`.
Expected<Contour> stretched(const Contour& contour, bool along_x, double more_mm) {
    Ring ring = traced(contour);
    const Box box = bounds(ring);
    const double extent = along_x ? box.width() : box.height();
    if (!(extent + 2 * more_mm > 0)) return nothing_left();
    const double factor = (extent + 2 * more_mm) / extent;
    const Vec center = box.center();
    for (Vec& p : ring)
        (along_x ? p.x : p.y) =
            along_x ? center.x + (p.x - center.x) * factor : center.y + (p.y - center.y) * factor;
    ring = tidied(ring);
    if (ring.size() < 3 || first_meeting(ring))
        return vanishes(phrase("the fit at the ends makes the outline meet itself"));
    return Contour{std::move(ring), 0};
}

Expected<Contour> fitted_to(const Polygon& p, const Fit& fit) {
    const Expected<Contour> given = contour_of(p);
    if (!given) return given;
    Expected<Contour> moved = offset_kept(*given, fit.side_mm);
    if (!moved)
        return moved.error().code == "geometry" ? moved.error()
                                                : vanishes(phrase("with the fit, %1", moved.error().what));
    if (fit.end_mm == fit.side_mm) return moved;
    const Box box = bounds(*given);
    return stretched(*moved, box.width() >= box.height(), fit.end_mm - fit.side_mm);
}

} // namespace

Expected<Contour> fitted(const Given& given, const Fit& fit) {
    if (const Expected<Contour> sound = contour_of(given); !sound) return sound;
    return std::visit([&](const auto& g) { return fitted_to(g, fit); }, given);
}

} // namespace drawercast::shape
