// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/mends.h"

#include "job/edit.h"
#include "layout/minimums.h"
#include "plan/nearest_place.h"
#include "plan/planner.h"

#include <algorithm>
#include <cmath>

namespace drawercast::plan {

namespace {

using layout::Code;

std::ptrdiff_t to_mend(const DrawerPlan& plan) {
    return std::count_if(plan.checks.begin(), plan.checks.end(), layout::to_mend);
}

bool still_there(const DrawerPlan& plan, const layout::Check& check) {
    return std::any_of(plan.checks.begin(), plan.checks.end(), [&](const layout::Check& other) {
        return other.code == check.code && other.subjects == check.subjects &&
               other.severity != layout::Severity::note;
    });
}

/// Changes in steps a maker can measure.
double rounded_up(double mm) {
    constexpr double step_mm = 0.5;
    return std::ceil(mm / step_mm - 1e-9) * step_mm;
}

/// Collects candidates and keeps those that put the check right.
class Search {
  public:
    Search(const job::Job& job, const std::string& drawer, const layout::Check& check)
        : job_(job), drawer_id_(drawer), check_(check), before_(planner_.fast(job)) {}

    std::vector<Mend> run() {
        if (find_drawer(before_, drawer_id_) == nullptr || job::find_drawer(job_, drawer_id_) == nullptr)
            return {};
        switch (check_.code) {
        case Code::wall_thin:
        case Code::overlap:
        case Code::edge_thin:
        case Code::outside:
        case Code::obstructed:
            for (const auto& subject : check_.subjects) try_move(subject);
            break;
        case Code::floor_thin:
            for (const auto& subject : check_.subjects) try_depth(subject, -rounded_up(missing()));
            try_thicker(rounded_up(missing()));
            break;
        case Code::too_high:
            for (const auto& subject : check_.subjects) try_depth(subject, rounded_up(-missing()));
            break;
        case Code::short_if_low:
        case Code::hard_if_high:
            try_automatic_dose();
            break;
        default:
            break;
        }
        std::stable_sort(mends_.begin(), mends_.end(),
                         [](const Mend& a, const Mend& b) { return a.amount_mm < b.amount_mm; });
        return std::move(mends_);
    }

  private:
    double missing() const { return check_.limit - check_.value; }

    void keep_if_right(Mend mend) {
        const Plan after = planner_.fast(mend.job);
        const DrawerPlan* drawer = find_drawer(after, drawer_id_);
        if (drawer == nullptr || still_there(*drawer, check_)) return;
        const bool one_less = layout::to_mend(check_);
        if (to_mend(*drawer) > to_mend(*find_drawer(before_, drawer_id_)) - (one_less ? 1 : 0)) return;
        mends_.push_back(std::move(mend));
    }

    void try_move(const std::string& subject) {
        const auto found = job::find_pocket(job_, subject);
        if (found.pocket == nullptr || found.pocket->locked) return;
        const auto by = way_to_nearest_place(job_, *found.drawer, *find_drawer(before_, drawer_id_), subject,
                                             move_step_mm, farthest_move_mm);
        if (by)
            keep_if_right(
                {Mend::Kind::move, subject, *by, std::hypot(by->x, by->y), job::moved(job_, {subject}, *by)});
    }

    /// Levels of the object that are as deep as its deepest get shallower; all of them get deeper. Every
    /// pocket of the object follows, since the depth is the object's.
    void try_depth(const std::string& subject, double by_mm) {
        const auto found = job::find_pocket(job_, subject);
        if (found.pocket == nullptr || by_mm == 0) return;
        job::Object object = *job::find_object(job_, found.pocket->object);
        double deepest = 0;
        for (const auto& level : object.levels)
            if (const auto* sunk = std::get_if<job::Sunk>(&level.form))
                deepest = std::max(deepest, sunk->depth_mm);
        if (deepest + by_mm <= 0) return;
        for (auto& level : object.levels)
            if (auto* sunk = std::get_if<job::Sunk>(&level.form))
                sunk->depth_mm =
                    grained(by_mm > 0 ? sunk->depth_mm + by_mm : std::min(sunk->depth_mm, deepest + by_mm));
        keep_if_right({by_mm < 0 ? Mend::Kind::shallower : Mend::Kind::deeper,
                       subject,
                       {},
                       std::abs(by_mm),
                       job::with_object(job_, object)});
    }

    void try_thicker(double by_mm) {
        job::Drawer drawer = *job::find_drawer(job_, drawer_id_);
        drawer.insert_mm = grained(drawer.insert_mm + by_mm);
        if (by_mm > 0 && drawer.insert_mm <= drawer.clear_height_mm)
            keep_if_right({Mend::Kind::thicker_insert, {}, {}, by_mm, job::with_drawer(job_, drawer)});
    }

    void try_automatic_dose() {
        if (!job_.foam->overpack) return;
        Mend mend{Mend::Kind::automatic_dose, {}, {}, 0, job_};
        mend.job.foam.edit([](job::Foam& foam) { foam.overpack.reset(); });
        keep_if_right(std::move(mend));
    }

    const job::Job& job_;
    std::string drawer_id_;
    const layout::Check& check_;
    Planner planner_;
    Plan before_;
    std::vector<Mend> mends_;
};

} // namespace

std::vector<Mend> mends_for(const job::Job& job, const std::string& drawer, const layout::Check& check) {
    return Search(job, drawer, check).run();
}

} // namespace drawercast::plan
