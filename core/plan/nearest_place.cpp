// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/nearest_place.h"

#include "layout/checks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::plan {

namespace {

/// One pocket tried at other places of its drawer, the others standing still.
class Trial {
  public:
    Trial(const job::Job& job, const job::Drawer& drawer, const DrawerPlan& plan, const std::string& subject)
        : limits_(layout::limits_of(job, drawer, plan.insert)),
          reach_mm_(limits_.minimums.wall(drawer.insert_mm)) {
        for (const auto& pocket : plan.pockets)
            if (pocket->subject == subject)
                start_ = pocket;
            else
                others_.push_back(pocket);
    }

    bool can_be_moved() const { return start_ && limits_.insert; }

    bool fits(shape::Vec by) {
        job::Pocket moved;
        moved.object = start_->object;
        moved.pose = {start_->pose.at + by, start_->pose.turn_deg};
        const auto placed = layout::place(moved, start_->form);
        checks_.clear();
        layout::add_edge_checks(placed, *limits_.insert, limits_.minimums, checks_);
        if (std::any_of(checks_.begin(), checks_.end(), speaks)) return false;
        return std::none_of(others_.begin(), others_.end(), [&](const auto& other) {
            if (!shape::near(placed.box, other->box, reach_mm_)) return false;
            const auto check = layout::pair_check(placed, *other, limits_.minimums);
            return check && speaks(*check);
        });
    }

  private:
    static bool speaks(const layout::Check& check) { return check.severity != layout::Severity::note; }

    layout::DrawerLimits limits_;
    double reach_mm_; ///< the widest wall any two pockets of this drawer can ask for
    std::shared_ptr<const layout::PlacedPocket> start_;
    std::vector<std::shared_ptr<const layout::PlacedPocket>> others_;
    std::vector<layout::Check> checks_;
};

constexpr double tenth_mm = 0.1;

double in_tenths(double mm) { return std::round(mm / tenth_mm) * tenth_mm; }

/// The shortest way in this direction between `too_short` and `enough`, in tenths as it will be stored.
shape::Vec shortened(Trial& trial, shape::Vec direction, double too_short, double enough) {
    const auto way = [&](double length) {
        return shape::Vec{in_tenths(direction.x * length), in_tenths(direction.y * length)};
    };
    shape::Vec best = direction * enough;
    for (double length = enough; length > too_short; length -= tenth_mm)
        if (trial.fits(way(length))) best = way(length);
    return best;
}

} // namespace

std::optional<shape::Vec> way_to_nearest_place(const job::Job& job, const job::Drawer& drawer,
                                               const DrawerPlan& plan, const std::string& subject,
                                               double step_mm, double farthest_mm) {
    Trial trial(job, drawer, plan, subject);
    if (!trial.can_be_moved()) return std::nullopt;
    constexpr int directions = 64;
    for (double radius = step_mm; radius <= farthest_mm; radius += step_mm)
        for (int i = 0; i < directions; ++i) {
            const double angle = 2 * std::numbers::pi * i / directions;
            const shape::Vec direction{std::cos(angle), std::sin(angle)};
            if (trial.fits(direction * radius))
                return shortened(trial, direction, std::max(0.0, radius - step_mm), radius);
        }
    return std::nullopt;
}

} // namespace drawercast::plan
