// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/contour.h"

#include "sheets/plate_marks.h"

#include <algorithm>
#include <numeric>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double figures_toward = 0.6; ///< slope of the way on which figures like to stand

/// Points of a loop, those furthest to the right and front first.
std::vector<Spot> figure_spots(const std::vector<Vec>& loop) {
    constexpr std::size_t most = 48; // enough for a figure to find room on a long line
    std::vector<std::size_t> order(loop.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto reach = [&](std::size_t i) { return figures_toward * loop[i].x - loop[i].y; };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return reach(a) > reach(b); });
    const std::size_t step = std::max<std::size_t>(1, loop.size() / most);
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < order.size(); i += step) spots.push_back({{loop[order[i]]}, Side::center});
    return spots;
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

void add_contours(MoldPen& pen, const Field& field, const Bands& bands) {
    for (int i = 1; i < bands.count; ++i)
        if (Path lines = loops_path(level_loops(field, bands.level(i))); !lines.empty())
            pen.put(PathMark{std::move(lines), LineRole::contour, std::nullopt});
}

void add_contour_figures(MoldPen& pen, const Field& field, const Bands& bands, const Box& within,
                         double least_line_mm) {
    for (int i = 1; i < bands.count; ++i)
        for (const auto& loop : level_loops(field, bands.level(i))) {
            if (shape::perimeter(loop) < least_line_mm) continue;
            auto spots = figure_spots(loop);
            const Place at = spots.front().at;
            pen.put(TextMark{at,
                             bands.figures[static_cast<std::size_t>(i)],
                             TextRole::caption,
                             Side::center,
                             0,
                             true,
                             {std::move(spots), within, true}});
        }
}

} // namespace drawercast::sheets
