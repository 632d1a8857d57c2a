// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/brush.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app::photo {

namespace {

struct PixelGrid {
    int width = 0;
    int height = 0;
};

/// Fills the pixels within `radius` of the line from `a` to `b`, all in pixels, y down.
void lay(capture::Brush& brush, const PixelGrid& grid, shape::Vec a, shape::Vec b, double radius,
         std::uint8_t mark) {
    const auto clamped = [](double value, int most) {
        return static_cast<int>(std::clamp(value, 0.0, static_cast<double>(most)));
    };
    const int x0 = clamped(std::floor(std::min(a.x, b.x) - radius), grid.width - 1);
    const int x1 = clamped(std::ceil(std::max(a.x, b.x) + radius), grid.width - 1);
    const int y0 = clamped(std::floor(std::min(a.y, b.y) - radius), grid.height - 1);
    const int y1 = clamped(std::ceil(std::max(a.y, b.y) + radius), grid.height - 1);
    const shape::Vec along = b - a;
    const double long2 = dot(along, along);
    for (int y = y0; y <= y1; ++y)
        for (int x = x0; x <= x1; ++x) {
            const shape::Vec p{x + 0.5, y + 0.5};
            const double t = long2 > 0 ? std::clamp(dot(p - a, along) / long2, 0.0, 1.0) : 0;
            const shape::Vec off = p - (a + along * t);
            if (dot(off, off) <= radius * radius)
                brush[static_cast<std::size_t>(y) * static_cast<std::size_t>(grid.width) +
                      static_cast<std::size_t>(x)] = mark;
        }
}

} // namespace

capture::Brush brush_of(const std::vector<Stroke>& strokes, const capture::FlatPicture& flat) {
    if (strokes.empty()) return {};
    capture::Brush brush(static_cast<std::size_t>(flat.width_px) * static_cast<std::size_t>(flat.height_px));
    const auto in_px = [&](shape::Vec mm) {
        return shape::Vec{mm.x * flat.px_per_mm, flat.height_px - mm.y * flat.px_per_mm};
    };
    for (const Stroke& stroke : strokes)
        for (std::size_t i = 0; i < stroke.points.size(); ++i) // a single dab is a line of no length
            lay(brush, {flat.width_px, flat.height_px}, in_px(stroke.points[i]),
                in_px(stroke.points[std::min(i + 1, stroke.points.size() - 1)]),
                stroke.radius_mm * flat.px_per_mm, stroke.adds ? 1 : 2);
    return brush;
}

shape::Box box_of(const Stroke& stroke) {
    shape::Box box;
    for (const shape::Vec p : stroke.points) box.add(p);
    return box.empty() ? box : box.grown(stroke.radius_mm);
}

} // namespace drawercast::app::photo
