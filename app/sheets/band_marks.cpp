// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/plate_marks.h"

#include <algorithm>
#include <numeric>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double figures_toward = 0.6; ///< slope of the way on which figures like to stand

double length_of(const std::vector<Vec>& loop) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) sum += length(loop[(i + 1) % loop.size()] - loop[i]);
    return sum;
}

Box around(Vec at, Vec half) { return {at - half, at + half}; }

/// The point of a loop furthest to the right and front that is clear of all that is kept.
std::optional<Vec> figure_place(const std::vector<Vec>& loop, const Box& within, const std::vector<Box>& keep,
                                Vec half) {
    std::vector<std::size_t> order(loop.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto reach = [&](std::size_t i) { return figures_toward * loop[i].x - loop[i].y; };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return reach(a) > reach(b); });
    for (const std::size_t i : order) {
        const Box room = around(loop[i], half);
        const bool inside = room.min.x >= within.min.x && room.min.y >= within.min.y &&
                            room.max.x <= within.max.x && room.max.y <= within.max.y;
        if (inside && std::none_of(keep.begin(), keep.end(),
                                   [&](const Box& other) { return shape::near(room, other); }))
            return loop[i];
    }
    return std::nullopt;
}

} // namespace

void add_bands(MoldPen& pen, const Field& field, const Bands& bands) {
    for (int i = 1; i < bands.count; ++i) {
        Path band = loops_path(level_loops(field, bands.level(i)));
        if (!band.empty())
            pen.put(
                PathMark{std::move(band), std::nullopt, theme::Wash{WashRole::magnitude, bands.share(i)}});
    }
}

void add_contours(MoldPen& pen, const Field& field, const Bands& bands, const Box& within,
                  std::vector<Box> keep, const FigureRoom& room) {
    std::vector<TextMark> figures;
    for (int i = 1; i < bands.count; ++i) {
        const auto loops = level_loops(field, bands.level(i));
        Path lines = loops_path(loops);
        if (!lines.empty()) pen.put(PathMark{std::move(lines), LineRole::contour, std::nullopt});
        for (const auto& loop : loops) {
            if (length_of(loop) < room.least_line_mm) continue;
            const auto place = figure_place(loop, within, keep, room.half_mm);
            if (!place) continue;
            keep.push_back(around(*place, room.half_mm));
            figures.push_back({{*place},
                               bands.figures[static_cast<std::size_t>(i)],
                               TextRole::caption,
                               Side::center,
                               0,
                               true});
        }
    }
    for (auto& figure : figures) pen.put(std::move(figure));
}

} // namespace drawercast::sheets
