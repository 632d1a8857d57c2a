// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/live_marks.h"

#include "base/contains.h"

#include "canvas/blue_pencil.h"
#include "canvas/hit.h"
#include "canvas/live_lines.h"
#include "canvas/still_marks.h"
#include "language/say.h"
#include "language/spoken.h"

#include <cmath>
#include <numbers>

namespace drawercast::app {

namespace {

using shape::Box;
using shape::Vec;

constexpr double corner_px = 9;
constexpr double outside_px = 4.5;

Vec vec(QPointF p) { return {p.x(), p.y()}; }

Box px_box(const ViewMap& view, const Box& box) {
    const QRectF r = view.to_px(box);
    return {{r.left(), r.top()}, {r.right(), r.bottom()}};
}

/// Brackets at a box's corners; `filled` ones mark what the others align to.
void corner_marks(BluePencil& pencil, const Box& box, bool filled) {
    const Box r = box.grown(outside_px);
    for (const Vec corner : {r.min, Vec{r.max.x, r.min.y}, r.max, Vec{r.min.x, r.max.y}}) {
        const Vec a = corner + Vec{corner.x == r.min.x ? corner_px : -corner_px, 0};
        const Vec b = corner + Vec{0, corner.y == r.min.y ? corner_px : -corner_px};
        pencil.line(sheets::polyline({a, corner, b}), 1.8);
        if (filled) pencil.fill(sheets::polygon({a, corner, b}));
    }
}

/// A circle to take hold of, an arc with two arrow heads over it, on a leader from the pocket.
void turn_ring(BluePencil& pencil, Vec at, Vec from) {
    const double up = at.y < from.y ? -1 : 1; // below the pocket where there is no room above
    pencil.line(sheets::line(from, at + Vec{0, -up * 5}), 1.25);
    pencil.line(sheets::circle(at, 5), 1.6);
    constexpr double radius = 13, half = 40 * std::numbers::pi / 180;
    const auto on_arc = [&](double angle) {
        return at + Vec{std::sin(angle) * radius, up * std::cos(angle) * radius};
    };
    std::vector<Vec> arc;
    for (int i = -4; i <= 4; ++i) arc.push_back(on_arc(half * i / 4));
    pencil.line(sheets::polyline(arc), 1.6);
    for (const double side : {-1.0, 1.0}) {
        const Vec tip = on_arc(side * half), back = on_arc(side * half * 0.55);
        const Vec out = (back - at) * (3.5 / radius);
        pencil.line(sheets::polyline({back + out, tip, back - out}), 1.6);
    }
}

/// What can be taken hold of on a chosen pocket's notches, and the chosen one's outline.
void notches(BluePencil& pencil, const layout::PlacedPocket& pocket, const LiveScene& scene) {
    for (const auto& cut : pocket.cuts) {
        if (cut.kind != layout::Cut<shape::InDrawer>::Kind::notch) continue;
        const bool chosen = scene.notch && static_cast<int>(*scene.notch) == cut.index;
        const Vec at = vec(scene.frame.view.to_px(shape::bounds(cut.outline.contour).center()));
        if (chosen) pencil.line(sheet_view(scene.frame.view)(sheets::path_of(cut.outline.contour)), 2.2);
        pencil.line(sheets::circle(at, 4), 1.25);
        if (chosen) pencil.fill(sheets::circle(at, 4));
    }
}

void chosen_pockets(BluePencil& pencil, WordRoom& room, const LiveScene& scene) {
    for (const auto& subject : scene.chosen) {
        const auto* pocket = find_pocket(scene.plan, subject);
        if (pocket == nullptr) continue;
        const bool whole = !scene.notch;
        pencil.line(sheet_view(scene.frame.view)(outline_of(*pocket)), whole ? 2.2 : 1.25);
        const Box box = px_box(scene.frame.view, pocket->box);
        corner_marks(pencil, box, scene.chosen.size() > 1 && subject == scene.chosen.back());
        room.keep_off(box.grown(outside_px + 2));
        if (scene.chosen.size() == 1) notches(pencil, *pocket, scene);
    }
}

void while_moving(BluePencil& pencil, WordRoom& room, const LiveScene& scene) {
    std::vector<Box> hidden = scene.frame.taken.pockets;
    for (const auto& subject : scene.spaced)
        if (const auto* pocket = find_pocket(scene.plan, subject)) {
            hidden.push_back(px_box(scene.frame.view, pocket->box));
            room.keep_off(hidden.back().grown(outside_px + 2)); // names and corner marks stay in sight
        }
    const LiveDesk desk{pencil, room, scene.frame.view};
    for (const auto& one : live_dimensions(scene.plan, scene.spaced))
        draw_dimension(desk, one, scene.job.display_units);
    for (const auto& axis : {scene.frame.aids.guides.x, scene.frame.aids.guides.y}) {
        if (!axis) continue;
        draw_guide(desk, *axis, hidden);
        for (const auto& [from, to] : axis->walls) // equal ones: each with its figure
            draw_dimension(desk, {from, to, std::nullopt}, scene.job.display_units);
    }
}

/// Two rings, and what they say.
void last_air(BluePencil& pencil, WordRoom& room, const LiveScene& scene) {
    constexpr double outer_px = 9, inner_px = 4;
    const Vec at = vec(scene.frame.view.to_px(*scene.frame.last_air));
    pencil.line(sheets::circle(at, outer_px), 1.25, {4, 3});
    pencil.line(sheets::circle(at, inner_px), 1.25);
    const QString words = language::tr("fills last");
    const Vec size = pencil.plate_size(words);
    std::vector<Vec> middles;
    for (const Vec way : {Vec{1, 0}, Vec{-1, 0}, Vec{0, 1}, Vec{0, -1}})
        middles.push_back(at + Vec{way.x * (outer_px + 4 + size.x / 2), way.y * (outer_px + 4 + size.y / 2)});
    pencil.words(words, room.place(middles, size));
}

/// A small ring at a corner, a stroke through an edge: what holds the end of a measurement.
void measure_mark(BluePencil& pencil, const ViewMap& view, const MeasurePoint& point) {
    constexpr double ring_px = 4;
    const Vec at = vec(view.to_px(point.at));
    if (point.on == MeasurePoint::On::corner) pencil.line(sheets::circle(at, ring_px), 1.6);
    if (point.on == MeasurePoint::On::edge) pencil.fill(sheets::circle(at, ring_px / 2));
}

/// The distance as a dimension, and its share across and front to back where it is neither.
void measured(BluePencil& pencil, WordRoom& room, const LiveScene& scene) {
    const auto& [from, to] = *scene.measured;
    const auto units = scene.job.display_units;
    // What one asks for stands at its line, over what is drawn there.
    WordRoom own({}, {{0, 0}, {scene.frame.size.width(), scene.frame.size.height()}});
    draw_dimension({pencil, own, scene.frame.view}, {from.at, to.at, std::nullopt}, units);
    const Vec by = to.at - from.at;
    constexpr double level_mm = 0.05;
    if (std::abs(by.x) > level_mm && std::abs(by.y) > level_mm) {
        const Vec corner{to.at.x, from.at.y};
        const auto px = [&](Vec mm) { return vec(scene.frame.view.to_px(mm)); };
        pencil.line(sheets::polyline({px(from.at), px(corner), px(to.at)}), 1.0, {6, 3});
        const auto say = [units](double mm) { return language::say_length_bare(std::abs(mm), units); };
        const auto beside = [&](Vec a, Vec b, const QString& text) {
            const Vec size = pencil.plate_size(text), middle = (px(a) + px(b)) * 0.5;
            std::vector<Vec> places;
            for (const Vec way : {Vec{0, 1}, Vec{0, -1}, Vec{1, 0}, Vec{-1, 0}})
                places.push_back(middle + Vec{way.x * (size.x / 2 + 6), way.y * (size.y / 2 + 6)});
            pencil.words(text, room.place(places, size));
        };
        beside(from.at, corner, say(by.x));
        beside(corner, to.at, say(by.y));
    }
    measure_mark(pencil, scene.frame.view, from);
    measure_mark(pencil, scene.frame.view, to);
}

void note(BluePencil& pencil, WordRoom& room, const LiveScene& scene) {
    const Vec at = vec(scene.frame.view.to_px(scene.frame.aids.note->at));
    const Vec size = pencil.plate_size(scene.frame.aids.note->words);
    std::vector<Vec> middles;
    for (const double far : {24.0, 40.0, 64.0, 100.0})
        for (const Vec way : {Vec{0, -1}, Vec{0, 1}, Vec{1, 0}, Vec{-1, 0}})
            middles.push_back(at + Vec{way.x * (far + size.x / 2), way.y * far});
    pencil.words(scene.frame.aids.note->words, room.place(middles, size));
}

} // namespace

sheets::Inks live_ink(const LiveScene& scene) {
    BluePencil pencil(scene.frame.theme);
    WordRoom room(scene.frame.taken, {{0, 0}, {scene.frame.size.width(), scene.frame.size.height()}});
    if (!scene.hovered.empty() && !contains(scene.chosen, scene.hovered))
        if (const auto* pocket = find_pocket(scene.plan, scene.hovered))
            pencil.line(sheet_view(scene.frame.view)(outline_of(*pocket)), 1.0);
    if (scene.frame.plate) pencil.line(sheets::path_of(scene.frame.plate->grown(2.5)), 1.8);
    chosen_pockets(pencil, room, scene);
    const auto box = box_of(scene.plan, scene.chosen);
    if (scene.turn_ring && !box.empty()) {
        const Vec at = vec(*scene.turn_ring);
        const Box around = px_box(scene.frame.view, box);
        turn_ring(pencil, at, {at.x, at.y < around.min.y ? around.min.y : around.max.y});
    }
    if (!scene.spaced.empty()) while_moving(pencil, room, scene);
    if (scene.frame.last_air) last_air(pencil, room, scene);
    if (scene.measured) measured(pencil, room, scene);
    if (scene.under) measure_mark(pencil, scene.frame.view, *scene.under);
    if (scene.frame.aids.note) note(pencil, room, scene);
    if (scene.frame.aids.band)
        pencil.line(sheets::path_of(px_box(scene.frame.view, *scene.frame.aids.band)), 1.0, {6, 3});
    return pencil.take();
}

} // namespace drawercast::app
