// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/placing.h"

#include "layout/minimums.h"
#include "shape/boxes.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace drawercast::app::placing {

namespace {

using shape::Box;
using shape::Vec;

struct Piece {
    std::string subject;
    Box box;
};

/// The chosen pockets that can be moved, in the order chosen.
std::vector<Piece> free_pieces(const job::Job& job, const plan::DrawerPlan& drawer,
                               const job::Subjects& chosen) {
    std::vector<Piece> pieces;
    for (const auto& subject : job::unlocked(job, chosen))
        if (const auto* pocket = find_pocket(drawer, subject); pocket != nullptr)
            pieces.push_back({subject, pocket->box});
    return pieces;
}

double along(Vec v, Axis axis) { return axis == Axis::x ? v.x : v.y; }
Vec shift(double by, Axis axis) { return axis == Axis::x ? Vec{by, 0} : Vec{0, by}; }

void sort_along(std::vector<Piece>& pieces, Axis axis) {
    std::stable_sort(pieces.begin(), pieces.end(), [axis](const Piece& a, const Piece& b) {
        return along(a.box.center(), axis) < along(b.box.center(), axis);
    });
}

double coordinate(const Box& box, Line line) {
    switch (line) {
    case Line::left:
        return box.min.x;
    case Line::right:
        return box.max.x;
    case Line::front:
        return box.min.y;
    case Line::back:
        return box.max.y;
    case Line::center_x:
        return box.center().x;
    case Line::center_y:
        return box.center().y;
    }
    return 0;
}

Axis axis_of(Line line) {
    return line == Line::left || line == Line::right || line == Line::center_x ? Axis::x : Axis::y;
}

Vec middle_of(const Box& box, Side side) {
    switch (side) {
    case Side::left:
        return {box.min.x, box.center().y};
    case Side::right:
        return {box.max.x, box.center().y};
    case Side::front:
        return {box.center().x, box.min.y};
    case Side::back:
        return {box.center().x, box.max.y};
    }
    return box.center();
}

double to_object(const shape::Pose& pose, Vec at, Vec& in_object) {
    const auto back = shape::Turn::of_degrees(-pose.turn_deg);
    in_object = back(at - pose.at);
    return -pose.turn_deg;
}

} // namespace

job::Job aligned(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                 Line line) {
    const auto* reference = chosen.empty() ? nullptr : find_pocket(drawer, chosen.back());
    if (reference == nullptr) return job;
    const Axis axis = axis_of(line);
    job::Job result = job;
    for (const auto& piece : free_pieces(job, drawer, chosen)) {
        if (piece.subject == reference->subject) continue;
        const double by = coordinate(reference->box, line) - coordinate(piece.box, line);
        result = job::moved(std::move(result), {piece.subject}, shift(by, axis));
    }
    return result;
}

job::Job distributed(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                     Axis axis) {
    auto pieces = free_pieces(job, drawer, chosen);
    if (pieces.size() < 3) return job;
    sort_along(pieces, axis);
    const double from = along(pieces.front().box.center(), axis);
    const double step =
        (along(pieces.back().box.center(), axis) - from) / static_cast<double>(pieces.size() - 1);
    job::Job result = job;
    for (std::size_t i = 1; i + 1 < pieces.size(); ++i) {
        const double by = from + step * static_cast<double>(i) - along(pieces[i].box.center(), axis);
        result = job::moved(std::move(result), {pieces[i].subject}, shift(by, axis));
    }
    return result;
}

job::Job with_equal_walls(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                          Axis axis) {
    auto pieces = free_pieces(job, drawer, chosen);
    if (pieces.empty() || !drawer.insert) return job;
    sort_along(pieces, axis);
    const double from = along(drawer.insert->box.min, axis);
    double room = along(drawer.insert->box.max, axis) - from;
    for (const auto& piece : pieces) room -= along(piece.box.max, axis) - along(piece.box.min, axis);
    if (room <= 0) return job;
    const double wall = room / static_cast<double>(pieces.size() + 1);
    double at = from + wall;
    job::Job result = job;
    for (const auto& piece : pieces) {
        result = job::moved(std::move(result), {piece.subject}, shift(at - along(piece.box.min, axis), axis));
        at += along(piece.box.max, axis) - along(piece.box.min, axis) + wall;
    }
    return result;
}

Side nearest_side(const Box& box, Vec point) {
    struct Candidate {
        Side side;
        double distance;
    };
    const std::array candidates{Candidate{Side::left, std::abs(point.x - box.min.x)},
                                Candidate{Side::right, std::abs(point.x - box.max.x)},
                                Candidate{Side::front, std::abs(point.y - box.min.y)},
                                Candidate{Side::back, std::abs(point.y - box.max.y)}};
    return std::min_element(candidates.begin(), candidates.end(),
                            [](const Candidate& a, const Candidate& b) { return a.distance < b.distance; })
        ->side;
}

job::Job with_finger_notch(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject,
                           Side side) {
    const auto* pocket = find_pocket(drawer, subject);
    if (pocket == nullptr || pocket->form->cuts.empty()) return job;
    Box levels; // a second notch stands at the levels' edge, not at the first notch's
    for (std::size_t i = 0; i < pocket->cuts.size(); ++i)
        if (pocket->cuts[i].kind == layout::Cut<shape::InDrawer>::Kind::level) levels.add(pocket->boxes[i]);
    constexpr double long_mm = 60, wide_mm = 28; // a thumb and a finger (our guess)
    const bool upright = side == Side::left || side == Side::right;
    Vec at;
    const double turned = to_object(pocket->pose, middle_of(levels, side), at);
    job::Notch notch;
    const double room = upright ? levels.height() : levels.width();
    notch.outline = shape::Capsule{grained(std::max(wide_mm, std::min(long_mm, room))), wide_mm};
    notch.pose = {at, turned + (upright ? 90 : 0)};
    notch.depth_mm = std::round(pocket->form->greatest_depth_mm * 2 / 3);
    return job::with_notch(job, subject, notch);
}

std::optional<std::size_t> nearest_notch(const job::Job& job, const std::string& subject, Vec point) {
    const auto found = job::find_pocket(job, subject);
    if (found.pocket == nullptr || found.pocket->notches.empty()) return std::nullopt;
    const auto& notches = found.pocket->notches;
    const auto distance = [&](const job::Notch& notch) {
        return shape::length(shape::placed(notch.pose.at, found.pocket->pose) - point);
    };
    const auto nearest = std::min_element(notches.begin(), notches.end(), [&](const auto& a, const auto& b) {
        return distance(a) < distance(b);
    });
    return static_cast<std::size_t>(nearest - notches.begin());
}

job::Job placed_where_free(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& object,
                           std::string* made) {
    const auto* what = job::find_object(job, object);
    const auto* where = job::find_drawer(job, drawer.id);
    if (what == nullptr || where == nullptr) return job;
    const Vec middle = drawer.insert ? drawer.insert->box.center() : Vec{0, 0};
    const auto in_the_middle = [&] { return job::placed(job, drawer.id, object, {middle, 0}, made); };
    const auto form =
        layout::pocket_form(*what, {}, layout::fit_of(*what, job.foam->firmness), where->insert_mm);
    if (!form || !drawer.insert) return in_the_middle();
    const auto pocket = layout::place(job::Pocket{object, 1, {}, false, {}, {}},
                                      std::make_shared<const layout::PocketForm>(*form));
    const auto minimums = layout::minimums_of(job.minimums, job.foam->firmness);
    const double wall = minimums.wall(form->greatest_depth_mm);
    const Box room = drawer.insert->box.grown(-minimums.edge(form->greatest_depth_mm));
    std::vector<Box> taken;
    for (const auto& other : drawer.pockets)
        taken.push_back(other->box.grown(std::max(wall, minimums.wall(other->form->greatest_depth_mm))));
    for (const auto& obstruction : drawer.insert->obstructions)
        taken.push_back(shape::bounds(obstruction.contour).grown(minimums.edge(form->greatest_depth_mm)));
    constexpr double step_mm = 2;
    for (double y = room.max.y - pocket.box.max.y; y + pocket.box.min.y >= room.min.y; y -= step_mm)
        for (double x = room.min.x - pocket.box.min.x; x + pocket.box.max.x <= room.max.x; x += step_mm) {
            const Vec at{std::ceil(x), std::floor(y)};
            const Box box = shape::moved(pocket.box, at);
            if (box.max.x > room.max.x || box.min.y < room.min.y) continue;
            if (std::none_of(taken.begin(), taken.end(),
                             [&](const Box& other) { return shape::near(box, other); }))
                return job::placed(job, drawer.id, object, {at, 0}, made);
        }
    return in_the_middle();
}

} // namespace drawercast::app::placing
