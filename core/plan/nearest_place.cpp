// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/nearest_place.h"

#include "layout/recheck.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::plan {

namespace {

bool of_place(layout::Code code) {
    switch (code) {
    case layout::Code::wall_thin:
    case layout::Code::overlap:
    case layout::Code::edge_thin:
    case layout::Code::outside:
    case layout::Code::obstructed:
        return true;
    default:
        return false;
    }
}

/// One pocket tried at other places of its drawer.
class Trial {
  public:
    Trial(const job::Job& job, const job::Drawer& drawer, const DrawerPlan& plan, const std::string& subject)
        : recheck_(layout::limits_of(job, drawer, plan.insert)), subject_(subject) {
        std::vector<layout::Standing> standing;
        for (const auto& pocket : plan.pockets) {
            const auto* object = job::find_object(job, pocket->object);
            if (pocket->subject == subject) index_ = standing.size();
            standing.push_back(
                {pocket, std::make_shared<const layout::ObjectFacts>(layout::facts_of(*object))});
        }
        start_ = index_ ? standing[*index_] : layout::Standing{};
        recheck_.set_all(std::move(standing));
    }

    bool can_be_moved() const { return index_.has_value(); }

    bool fits(shape::Vec by) {
        job::Pocket pocket;
        pocket.object = start_.pocket->object;
        pocket.n = 0;
        pocket.pose = start_.pocket->pose;
        pocket.pose.at = pocket.pose.at + by;
        auto placed = layout::place(pocket, start_.pocket->form);
        placed.subject = subject_;
        recheck_.move(*index_,
                      {std::make_shared<const layout::PlacedPocket>(std::move(placed)), start_.object});
        const auto& checks = recheck_.checks();
        return std::none_of(checks.begin(), checks.end(), [&](const layout::Check& check) {
            return check.severity != layout::Severity::note && of_place(check.code) &&
                   std::find(check.subjects.begin(), check.subjects.end(), subject_) != check.subjects.end();
        });
    }

  private:
    layout::Recheck recheck_;
    std::string subject_;
    std::optional<std::size_t> index_;
    layout::Standing start_;
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
