// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/live_lines.h"

#include "language/in_words.h"
#include "language/say.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

using shape::Box;
using shape::Vec;

Vec px(const ViewMap& view, Vec mm) {
    const QPointF p = view.to_px(mm);
    return {p.x(), p.y()};
}

/// A filled arrow of 8 px, 22° wide.
sheets::Path arrow(Vec tip, Vec way) {
    constexpr double length = 8, half = 1.55;
    const Vec across{-way.y, way.x};
    return sheets::polygon({tip, tip - way * length + across * half, tip - way * length - across * half});
}

/// Middles for words along a line from `a` to `b`: on it, beside it, past its ends.
std::vector<Vec> middles(Vec a, Vec b, Vec size, bool in_line) {
    const double length = shape::length(b - a);
    const Vec way = length > 0 ? (b - a) * (1 / length) : Vec{1, 0};
    const Vec across{-way.y, way.x};
    const double aside = (std::abs(across.x) * size.x + std::abs(across.y) * size.y) / 2 + 4;
    const double past = (std::abs(way.x) * size.x + std::abs(way.y) * size.y) / 2 + 10;
    std::vector<Vec> out;
    if (in_line)
        for (const double share : {0.5, 0.35, 0.65}) out.push_back(a + (b - a) * share);
    for (const double share : {0.5, 0.25, 0.75, 0.0, 1.0})
        for (const double side : {-1.0, 1.0}) out.push_back(a + (b - a) * share + across * (side * aside));
    out.push_back(b + way * past);
    out.push_back(a - way * past);
    for (const double further : {18.0, 36.0}) // px; further off no one would see what they speak of
        for (const double side : {-1.0, 1.0})
            out.push_back((a + b) * 0.5 + across * (side * (aside + further)));
    return out;
}

/// Parts of the level or upright line from `a` to `b` outside all boxes.
std::vector<std::pair<Vec, Vec>> outside(Vec a, Vec b, const std::vector<Box>& boxes) {
    constexpr double touch_px = 1; // along an edge is not across it
    const double length = shape::length(b - a);
    if (!(length > 0)) return {};
    const Vec way = (b - a) * (1 / length);
    std::vector<std::pair<double, double>> hidden;
    for (const Box& box : boxes) {
        const Box inner = box.grown(-touch_px);
        Box line;
        line.add(a);
        line.add(b);
        if (inner.empty() || !shape::near(inner, line)) continue;
        const double p = shape::dot(inner.min - a, way), q = shape::dot(inner.max - a, way);
        hidden.emplace_back(std::min(p, q), std::max(p, q));
    }
    std::sort(hidden.begin(), hidden.end());
    std::vector<std::pair<Vec, Vec>> seen;
    double at = 0;
    const auto take = [&](double to) {
        if (to - at > 2) seen.emplace_back(a + way * at, a + way * to);
    };
    for (const auto& [from, to] : hidden) {
        take(std::min(from, length));
        at = std::max(at, to);
    }
    take(length);
    return seen;
}

} // namespace

void draw_dimension(const LiveDesk& desk, const LiveDimension& dimension, job::DisplayUnits units) {
    const Vec a = px(desk.view, dimension.from), b = px(desk.view, dimension.to);
    const double length = shape::length(b - a);
    if (!(length > 0.5)) return;
    const Vec way = (b - a) * (1 / length), across{-way.y, way.x};
    constexpr double least_inside = 28, tail = 12;
    const bool inside = length >= least_inside;
    desk.pencil.line(inside ? sheets::line(a, b) : sheets::line(a - way * tail, b + way * tail), 1.0);
    desk.pencil.fill(arrow(a, inside ? way * -1 : way));
    desk.pencil.fill(arrow(b, inside ? way : way * -1));
    desk.pencil.line(sheets::line(a - across * 5, a + across * 5), 1.0);
    if (dimension.extended_from) {
        const Vec from = px(desk.view, *dimension.extended_from);
        const double far = shape::length(b - from);
        if (far > 0) desk.pencil.line(sheets::line(from, b + (b - from) * (4 / far)), 1.0);
    }
    const double mm = shape::length(dimension.to - dimension.from);
    const auto text = language::say_length_bare(mm, units);
    const Vec size = desk.pencil.plate_size(text);
    const double along = std::abs(way.x) * size.x + std::abs(way.y) * size.y;
    desk.pencil.words(text, desk.room.place(middles(a, b, size, length >= along + 24), size));
}

void draw_guide(const LiveDesk& desk, const layout::SnapAxis& axis, const std::vector<Box>& hidden) {
    if (axis.reason == layout::SnapReason::grid) return;
    Vec a = px(desk.view, axis.guide_from), b = px(desk.view, axis.guide_to);
    auto parts = outside(a, b, hidden);
    if (parts.empty()) parts.emplace_back(a, b);
    a = parts.front().first;
    b = parts.back().second;
    const double length = shape::length(b - a);
    if (!(length > 0)) return;
    const Vec across = Vec{-(b - a).y, (b - a).x} * (1 / length);
    for (const auto& [from, to] : parts) desk.pencil.line(sheets::line(from, to), 1.25, {14, 3, 2, 3, 2, 3});
    for (const Vec end : {a, b}) desk.pencil.line(sheets::line(end - across * 4, end + across * 4), 1.25);
    const auto text = in_words(layout::words_of(axis.reason));
    const Vec size = desk.pencil.plate_size(text);
    desk.pencil.words(text, desk.room.place(middles(a, b, size, false), size));
}

} // namespace drawercast::app
