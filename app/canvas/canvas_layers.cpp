// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/canvas_layers.h"

#include "canvas/ink_difference.h"

#include <utility>

namespace drawercast::app {

namespace {
constexpr double moving_wash = 0.75; ///< opacity
}

QRegion CanvasLayers::set_still(const StillPicture::Frame& frame, sheets::Inks inks, sheets::Taken taken) {
    taken_still_ = std::move(taken);
    return picture_.draw(frame, std::move(inks));
}

QRegion CanvasLayers::set_over(Over over) {
    const QRegion changed = changed_region(over_.washes, over.washes) + changed_region(over_.inks, over.inks);
    over_ = std::move(over);
    return changed;
}

QRegion CanvasLayers::set_live(sheets::Inks inks) {
    const QRegion changed = changed_region(live_, inks);
    live_ = std::move(inks);
    return changed;
}

std::optional<shape::Box> CanvasLayers::plate_of(const std::string& key) const {
    for (const auto& plate : over_.plates)
        if (plate.key == key) return plate.box;
    return std::nullopt;
}

void CanvasLayers::paint(QPainter& painter, const QRegion& region) const {
    picture_.paint(painter, region);
    painter.setClipRegion(region);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(moving_wash);
    paint_inside(over_.washes, painter, region);
    painter.setOpacity(1);
    paint_inside(live_, painter, region); // its words keep off names and checks, its lines go under them
    paint_inside(over_.inks, painter, region);
}

} // namespace drawercast::app
