// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/hit.h"

#include "shape/boxes.h"
#include "shape/gap.h"

#include <algorithm>

namespace drawercast::app {

namespace {

bool covers(const layout::PlacedPocket& pocket, shape::Vec at, double reach_mm) {
    const shape::Contour pointer{{at}, 0};
    return std::any_of(pocket.cuts.begin(), pocket.cuts.end(), [&](const auto& cut) {
        return shape::gap_between(cut.outline.contour, pointer, reach_mm).within(reach_mm);
    });
}

} // namespace

std::string pocket_at(const plan::DrawerPlan& drawer, shape::Vec at_mm, double reach_mm) {
    std::string near;
    for (auto it = drawer.pockets.rbegin(); it != drawer.pockets.rend(); ++it) {
        if (covers(**it, at_mm, 0)) return (*it)->subject; // truly inside wins over merely near
        if (near.empty() && covers(**it, at_mm, reach_mm)) near = (*it)->subject;
    }
    return near;
}

std::optional<std::size_t> notch_at(const layout::PlacedPocket& pocket, shape::Vec at_mm, double reach_mm) {
    using Kind = layout::Cut<shape::InDrawer>::Kind;
    const bool on_level = std::any_of(pocket.cuts.begin(), pocket.cuts.end(), [&](const auto& cut) {
        return cut.kind == Kind::level && shape::contains(cut.outline.contour, at_mm);
    });
    for (auto cut = pocket.cuts.rbegin(); cut != pocket.cuts.rend(); ++cut) {
        if (cut->kind != Kind::notch) continue;
        const auto middle = shape::bounds(cut->outline.contour).center();
        if (shape::length(at_mm - middle) <= reach_mm ||
            (!on_level && shape::contains(cut->outline.contour, at_mm)))
            return static_cast<std::size_t>(cut->index);
    }
    return std::nullopt;
}

std::vector<std::string> pockets_inside(const plan::DrawerPlan& drawer, const shape::Box& box) {
    std::vector<std::string> inside;
    for (const auto& pocket : drawer.pockets)
        if (shape::holds(box, pocket->box)) inside.push_back(pocket->subject);
    return inside;
}

shape::Box box_of(const plan::DrawerPlan& drawer, const std::vector<std::string>& subjects) {
    shape::Box box;
    for (const auto& subject : subjects)
        if (const auto* pocket = find_pocket(drawer, subject)) box.add(pocket->box);
    return box;
}

} // namespace drawercast::app
