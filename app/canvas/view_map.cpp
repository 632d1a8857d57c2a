// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/view_map.h"

#include <algorithm>

namespace drawercast::app {

QRectF ViewMap::to_px(const shape::Box& box) const {
    return QRectF(to_px(shape::Vec{box.min.x, box.max.y}), to_px(shape::Vec{box.max.x, box.min.y}));
}

ViewMap ViewMap::zoomed(double factor, QPointF fixed_px) const {
    ViewMap map = *this;
    map.px_per_mm_ = std::clamp(px_per_mm_ * factor, least_px_per_mm, most_px_per_mm);
    const shape::Vec fixed_mm = to_mm(fixed_px);
    map.origin_px_ = {fixed_px.x() - fixed_mm.x * map.px_per_mm_, fixed_px.y() + fixed_mm.y * map.px_per_mm_};
    return map;
}

ViewMap ViewMap::panned(QPointF by_px) const {
    ViewMap map = *this;
    map.origin_px_ += by_px;
    return map;
}

ViewMap ViewMap::fitted(const shape::Box& box, QSizeF size_px, double margin_px) {
    ViewMap map;
    if (box.empty() || box.width() <= 0 || box.height() <= 0) return map;
    const double across = std::max(1.0, size_px.width() - 2 * margin_px) / box.width();
    const double up = std::max(1.0, size_px.height() - 2 * margin_px) / box.height();
    map.px_per_mm_ = std::clamp(std::min(across, up), least_px_per_mm, most_px_per_mm);
    const shape::Vec center = box.center();
    map.origin_px_ = {size_px.width() / 2 - center.x * map.px_per_mm_,
                      size_px.height() / 2 + center.y * map.px_per_mm_};
    return map;
}

sheets::View sheet_view(const ViewMap& map) {
    const QPointF origin = map.to_px(shape::Vec{0, 0});
    return {theme::Medium::screen, map.px_per_mm(), 1, {origin.x(), origin.y()}};
}

} // namespace drawercast::app
