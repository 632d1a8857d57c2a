// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/reach.h"

#include "layout/notch_edge.h"

#include <algorithm>
#include <cmath>

namespace drawercast::layout {

namespace {

using Hollow = Cut<shape::InObject>;

/// The notch in the axes of the edge where it sits: x along it, y into the pocket.
shape::Box beside_edge(const Hollow& notch, const NotchEdge& edge) {
    const auto seat = edge.nearest(shape::bounds(notch.outline.contour).center());
    const auto turn = shape::Turn::of_degrees(-seat.turn_deg);
    shape::Box box;
    for (const shape::Vec p : shape::traced(notch.outline.contour)) box.add(turn(p - seat.at));
    return box;
}

} // namespace

Reach reach_of(const PocketForm& form, const job::Object& object) {
    Reach reach;
    const NotchEdge edge(form);
    double depth = 0;
    for (const Hollow& cut : form.cuts)
        if (cut.kind == Hollow::Kind::level) depth = std::max(depth, cut.depth_mm);
    reach.proud_mm = object.height_mm - depth;
    const double top = std::max(0.0, -reach.proud_mm); // below the face
    for (const Hollow& cut : form.cuts) {
        if (cut.kind != Hollow::Kind::notch || edge.empty()) continue;
        const shape::Box box = beside_edge(cut, edge);
        if (-box.min.y < finger_room_mm || std::min(cut.depth_mm, depth) - top < finger_hold_mm) continue;
        reach.fingers += static_cast<int>(std::floor(box.width() / finger_wide_mm));
    }
    reach.two_fingers = reach.fingers >= 2 || reach.proud_mm >= finger_hold_mm;
    return reach;
}

} // namespace drawercast::layout
