// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/still_marks.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

shape::Vec px(const ViewMap& view, shape::Vec mm) {
    const QPointF p = view.to_px(mm);
    return {p.x(), p.y()};
}

/// A closed padlock, 9 px wide, its body's middle at `at`.
sheets::Path padlock(shape::Vec at) {
    const shape::Box body{at + shape::Vec{-4.5, -1}, at + shape::Vec{4.5, 6}};
    constexpr double r = 3;
    const shape::Vec left = at + shape::Vec{-r, -1}, up{0, -2.5}, right = at + shape::Vec{r, -1};
    sheets::Strand shackle{
        left, {{left + up, 0}, {at + shape::Vec{0, -3.5 - r}, r}, {right + up, r}, {right, 0}}, false};
    return sheets::joined(sheets::path_of(body), sheets::Path{{shackle}});
}

} // namespace

sheets::Inks grid_ink(const shape::Box& insert, double step_mm, const ViewMap& view,
                      const theme::Theme& theme) {
    constexpr double least_px = 5;
    constexpr int strong_every = 5;
    if (!(step_mm * view.px_per_mm() >= least_px)) return {};
    sheets::Path fine, strong;
    const auto lines = [&](double from, double to, bool upright) {
        const auto first = static_cast<long>(std::ceil(from / step_mm));
        const auto last = static_cast<long>(std::floor(to / step_mm));
        for (long i = first; i <= last; ++i) {
            const double at = static_cast<double>(i) * step_mm;
            shape::Vec a = px(view, upright ? shape::Vec{at, insert.min.y} : shape::Vec{insert.min.x, at});
            shape::Vec b = px(view, upright ? shape::Vec{at, insert.max.y} : shape::Vec{insert.max.x, at});
            (upright ? a.x : a.y) = std::floor(upright ? a.x : a.y) + 0.5; // sharp at one pixel
            (upright ? b.x : b.y) = upright ? a.x : a.y;
            sheets::Path& path = i % strong_every == 0 ? strong : fine;
            path.strands.push_back({a, {{b, 0}}, false});
        }
    };
    lines(insert.min.x, insert.max.x, true);
    lines(insert.min.y, insert.max.y, false);
    return {sheets::Stroke{fine, {theme.grid, 1, {}}}, sheets::Stroke{strong, {theme.grid_wide, 1, {}}}};
}

sheets::Inks lock_ink(const plan::DrawerPlan& plan, const job::Drawer& drawer, const ViewMap& view,
                      const theme::Theme& theme) {
    sheets::Inks inks;
    for (const auto& pocket : drawer.pockets) {
        if (!pocket.locked) continue;
        const auto* placed = find_pocket(plan, job::subject_of(pocket));
        if (placed == nullptr) continue;
        const shape::Vec corner = px(view, {placed->box.min.x, placed->box.max.y});
        const auto path = padlock(corner + shape::Vec{13, 14});
        QColor casing = theme.paper;
        casing.setAlphaF(static_cast<float>(theme.casing));
        inks.push_back(sheets::About{placed->subject});
        inks.push_back(sheets::Stroke{path, {casing, 4, {}}});
        inks.push_back(sheets::Stroke{path, {theme.ink, theme.line(1.4), {}}});
    }
    return inks;
}

sheets::Inks vent_lock_ink(const air::Answer& air, const ViewMap& view, const theme::Theme& theme) {
    sheets::Inks inks;
    for (const auto& vent : air.vented.vents) {
        if (vent.why != air::VentFor::kept) continue;
        const auto path = padlock(px(view, vent.at) + shape::Vec{-12, -2});
        QColor casing = theme.paper;
        casing.setAlphaF(static_cast<float>(theme.casing));
        inks.push_back(sheets::Stroke{path, {casing, 4, {}}});
        inks.push_back(sheets::Stroke{path, {theme.ink, theme.line(1.4), {}}});
    }
    return inks;
}

sheets::Inks words_ink(const QStringList& lines, QPointF middle, const theme::Theme& theme) {
    if (lines.isEmpty()) return {};
    constexpr double pitch_px = 24, heading_px = 18, row_px = 13;
    shape::Vec at{middle.x(), middle.y() - pitch_px * static_cast<double>(lines.size()) / 2};
    sheets::Inks inks{sheets::About{}};
    for (const QString& line : lines) {
        const bool heading = &line == &lines.front();
        const theme::Lettering face{heading ? theme::Face::drafting : theme::Face::regular,
                                    heading ? heading_px : row_px, 1};
        sheets::write(inks, line, at, face, heading ? theme.ink : theme.ink2, sheets::Align::center);
        at.y += heading ? pitch_px * 1.4 : pitch_px;
    }
    return inks;
}

sheets::Path outline_of(const layout::PlacedPocket& pocket) {
    if (pocket.cuts.size() == 1) return sheets::path_of(pocket.cuts.front().outline.contour);
    std::vector<shape::Region> regions;
    sheets::Path all;
    for (const auto& cut : pocket.cuts) {
        regions.push_back(shape::region_of(cut.outline.contour));
        all = sheets::joined(std::move(all), sheets::path_of(cut.outline.contour));
    }
    const auto united = shape::united(regions);
    return united ? sheets::path_of(*united) : all;
}

} // namespace drawercast::app
