// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/hand_placing.h"

#include "layout/pocket.h"
#include "shape/boxes.h"

#include "canvas/hit.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app::placing {

namespace {

using shape::Box;
using shape::Vec;

/// Whether all of them are there and not locked.
bool all_free(const job::Job& job, const job::Subjects& chosen) {
    return job::unlocked(job, chosen).size() == chosen.size();
}

Box levels_box(const layout::PlacedPocket& pocket) {
    Box box;
    for (std::size_t i = 0; i < pocket.cuts.size(); ++i)
        if (pocket.cuts[i].kind == layout::Cut<shape::InDrawer>::Kind::level) box.add(pocket.boxes[i]);
    return box;
}

/// The pocket an object would get, placed; nothing where it can't be made.
std::optional<layout::PlacedPocket> tried(const job::Job& job, const job::Pocket& pocket, double insert_mm) {
    const auto* object = job::find_object(job, pocket.object);
    if (object == nullptr) return std::nullopt;
    const auto form =
        layout::pocket_form(*object, {}, layout::fit_of(*object, job.foam->firmness), insert_mm);
    if (!form) return std::nullopt;
    return layout::place(pocket, std::make_shared<const layout::PocketForm>(*form));
}

double share(double now, double before) { return before > 0 ? now / before : 1; }

/// A notch of a pocket whose levels were `before` and are `after` now, both about their own middles.
job::Notch carried_over(job::Notch notch, const shape::Pose& pose, const Box& before, const Box& after,
                        double depth_mm) {
    const auto turn = shape::Turn::of_degrees(pose.turn_deg), back = shape::Turn::of_degrees(-pose.turn_deg);
    const Vec from_middle = pose.at + turn(notch.pose.at) - before.center();
    const Vec now{from_middle.x * share(after.width(), before.width()),
                  from_middle.y * share(after.height(), before.height())};
    notch.pose.at = back(now + after.center() - pose.at);
    notch.depth_mm = std::min(notch.depth_mm, depth_mm);
    return notch;
}

/// `pocket` holding another object; nothing where that one's pocket can't be made.
std::optional<job::Pocket> replaced(const job::Job& job, const layout::PlacedPocket& was,
                                    const std::string& object, double insert_mm) {
    job::Pocket pocket = *job::find_pocket(job, was.subject).pocket;
    pocket.object = object;
    const auto now = tried(job, pocket, insert_mm);
    if (!now) return std::nullopt;
    const Box before = levels_box(was);
    Box after = levels_box(*now);
    const Vec by = before.center() - after.center();
    after = shape::moved(after, by);
    const shape::Pose old_pose = pocket.pose;
    pocket.pose.at = pocket.pose.at + by;
    for (auto& notch : pocket.notches) {
        notch = carried_over(notch, old_pose, before, after, now->form->greatest_depth_mm);
        notch.pose.at = notch.pose.at - shape::Turn::of_degrees(-old_pose.turn_deg)(by);
    }
    return pocket;
}

} // namespace

job::Job swapped(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen) {
    if (chosen.size() != 2 || !all_free(job, chosen)) return job;
    const auto* a = find_pocket(drawer, chosen[0]);
    const auto* b = find_pocket(drawer, chosen[1]);
    if (a == nullptr || b == nullptr) return job;
    const Vec by = b->box.center() - a->box.center();
    return job::moved(job::moved(job, {a->subject}, by), {b->subject}, by * -1);
}

job::Job with_copies(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject,
                     const CopyOrder& order, job::Subjects* made) {
    const auto* pocket = find_pocket(drawer, subject);
    if (pocket == nullptr) return job;
    const Vec pitch{(pocket->box.width() + order.wall_x_mm) * (order.leftward ? -1 : 1),
                    (pocket->box.height() + order.wall_y_mm) * (order.backward ? 1 : -1)};
    job::Job result = job;
    for (int row = 0; row < order.rows; ++row)
        for (int column = 0; column < order.columns; ++column) {
            if (row == 0 && column == 0) continue;
            job::Subjects one;
            result = job::duplicated(std::move(result), {subject}, {pitch.x * column, pitch.y * row}, &one);
            if (made != nullptr) made->insert(made->end(), one.begin(), one.end());
        }
    return result;
}

job::Job put_at(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen, Axis axis,
                double edge_mm) {
    const Box box = box_of(drawer, chosen);
    if (box.empty() || !all_free(job, chosen)) return job;
    return job::moved(job, chosen,
                      axis == Axis::x ? Vec{edge_mm - box.min.x, 0} : Vec{0, edge_mm - box.min.y});
}

job::Job into_drawer(const job::Job& job, const plan::DrawerPlan& from, const job::Subjects& chosen,
                     const plan::DrawerPlan& there, double edge_mm) {
    auto moved = job::moved_to_drawer(job, chosen, there.id);
    const auto box = box_of(from, chosen);
    if (!there.insert || box.empty()) return moved;
    const auto room = there.insert->box.grown(-edge_mm);
    const auto least = [](double low, double high, double from_mm, double to_mm) {
        if (high - low > to_mm - from_mm) return (from_mm + to_mm - low - high) / 2;
        return low < from_mm ? from_mm - low : std::min(to_mm - high, 0.0);
    };
    return job::moved(std::move(moved), chosen,
                      {least(box.min.x, box.max.x, room.min.x, room.max.x),
                       least(box.min.y, box.max.y, room.min.y, room.max.y)});
}

job::Job turned_to(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                   double turn_deg) {
    job::Job result = job;
    for (const auto& subject : job::unlocked(job, chosen)) {
        const auto* pocket = find_pocket(drawer, subject);
        if (pocket == nullptr || pocket->pose.turn_deg == turn_deg) continue;
        const double by = turn_deg - pocket->pose.turn_deg;
        const Vec middle = pocket->box.center();
        const auto turn = shape::Turn::of_degrees(by);
        result =
            job::posed(std::move(result), {{subject, {middle + turn(pocket->pose.at - middle), turn_deg}}});
    }
    return result;
}

job::Job onto_grid(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                   double grid_mm) {
    const auto to_line = [grid_mm](double mm) { return std::round(mm / grid_mm) * grid_mm - mm; };
    job::Job result = job;
    for (const auto& subject : job::unlocked(job, chosen)) {
        const auto* pocket = find_pocket(drawer, subject);
        if (pocket == nullptr) continue;
        const Vec by{to_line(pocket->box.min.x), to_line(pocket->box.min.y)};
        result = job::moved(std::move(result), {subject}, by);
    }
    return result;
}

std::optional<double> turn_of(const job::Job& job, const job::Subjects& chosen) {
    std::optional<double> turn;
    for (const auto& subject : chosen) {
        const auto found = job::find_pocket(job, subject);
        if (found.pocket == nullptr) continue;
        if (turn && *turn != found.pocket->pose.turn_deg) return std::nullopt;
        turn = found.pocket->pose.turn_deg;
    }
    return turn;
}

job::Job with_object_replaced(const job::Job& job, const plan::DrawerPlan& drawer,
                              const job::Subjects& chosen, const std::string& object, job::Subjects* made) {
    const auto* where = job::find_drawer(job, drawer.id);
    job::Job result = job;
    for (const auto& subject : job::unlocked(job, chosen)) {
        const auto* was = find_pocket(drawer, subject);
        if (was == nullptr || where == nullptr || was->object == object) continue;
        const auto pocket = replaced(job, *was, object, where->insert_mm);
        if (!pocket) continue;
        std::string one;
        result = job::removed(std::move(result), {subject});
        result = job::placed(std::move(result), drawer.id, object, pocket->pose, &one);
        for (const auto& notch : pocket->notches) result = job::with_notch(std::move(result), one, notch);
        if (made != nullptr) made->push_back(one);
    }
    return result;
}

} // namespace drawercast::app::placing
