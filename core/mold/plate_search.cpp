// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_search.h"

#include "base/demand.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <utility>
#include <vector>

namespace drawercast::mold {

namespace {

constexpr int groups_after_holding = 12; ///< looked at for one that also closes in time
constexpr int groups_after_best = 2;     ///< looked at for the runner-up
constexpr double hopeless = 1.04;        ///< of a limit, by the rough mesh

/// One board with one way to stiffen it.
struct Group {
    job::Board board;
    Stiffening stiffening;
    double least_price = 0; ///< with the fewest and cheapest closures
};

bool timely(const Plate& plate) { return plate.closing.close_margin_s >= 0; }

/// Better plates come first: those that hold and close, those that hold, then by how far they miss.
bool better(const Plate& a, const Plate& b) {
    const auto rank = [](const Plate& p) { return p.answer.passes ? (timely(p) ? 0 : 1) : 2; };
    const auto key = [&](const Plate& p) {
        const auto& design = p.answer.design;
        return std::tuple(rank(p), p.answer.passes ? p.answer.price : p.answer.use, design.board.thickness_mm,
                          design.stiffeners.size() + design.closures.size());
    };
    return key(a) < key(b);
}

RunnerUp runner_up_of(const Plate& plate) {
    const auto& design = plate.answer.design;
    return {design.board.name,
            static_cast<int>(design.stiffeners.size()),
            design.stiffener ? design.stiffener->name : "",
            static_cast<int>(design.closures.size()),
            design.closure.name,
            plate.answer.price};
}

class Search {
  public:
    Search(const PlateIn& in, const Stop& stop, PlateLooks& looks)
        : in_(in), stop_(stop), looks_(looks), box_board_(box_board_of(in)), boards_(boards_to_try(in)),
          stiffenings_(stiffenings_to_try(in)) {
        looks_.start(in, box_board_, stiffenings_);
    }

    /// `at_any_price`: dear closures too, and what comes nearest where nothing holds.
    std::optional<Plate> run(bool at_any_price) {
        const auto groups = groups_of();
        try_groups(groups);
        if (!best_ && at_any_price && !stopped()) {
            dear_ = std::numeric_limits<double>::infinity();
            try_groups(groups);
        }
        if (!best_ && at_any_price && !stopped()) try_least_bad();
        if (!best_ || stopped()) return std::nullopt;
        if (second_ && second_->answer.passes) best_->answer.runner_up = runner_up_of(*second_);
        return best_;
    }

  private:
    void try_groups(const std::vector<Group>& groups) {
        int since_holding = 0;
        int since_best = 0;
        for (const Group& group : groups) {
            if (stopped()) return;
            const bool holds = best_ && best_->answer.passes;
            const bool found = holds && timely(*best_);
            if (found && group.least_price > bound() && (second_ || ++since_best > groups_after_best)) return;
            if (holds && !found && ++since_holding > groups_after_holding) return;
            try_group(group);
        }
    }

    bool stopped() const { return stop_ && stop_(); }
    double bound() const {
        if (second_ && second_->answer.passes && timely(*second_)) return second_->answer.price;
        return best_->answer.price;
    }

    std::vector<Group> groups_of() const {
        std::vector<Group> out;
        for (const auto& board : boards_) {
            for (const auto& stiffening : stiffenings_) {
                const auto pairs = closures_to_try(in_, board, box_board_, stiffening);
                const double widest = spacings_to_try(in_, stiffening).front();
                const auto design = design_of(in_, board, box_board_, stiffening, pairs.front(), widest);
                out.push_back({board, stiffening, price_of(in_, design)});
            }
        }
        std::stable_sort(out.begin(), out.end(), [](const Group& a, const Group& b) {
            return std::tuple(a.least_price, a.board.thickness_mm, a.stiffening.count) <
                   std::tuple(b.least_price, b.board.thickness_mm, b.stiffening.count);
        });
        return out;
    }

    /// One way to close a group's plate.
    struct Candidate {
        ClosurePair pair;
        PlateDesign design;
        double price = 0;
    };

    std::vector<Candidate> candidates_of(const Group& group) const {
        std::vector<Candidate> out;
        for (const auto& pair : closures_to_try(in_, group.board, box_board_, group.stiffening)) {
            for (const double spacing : spacings_to_try(in_, group.stiffening)) {
                auto design = design_of(in_, group.board, box_board_, group.stiffening, pair, spacing);
                const double price = price_of(in_, design);
                out.push_back({pair, std::move(design), price});
            }
        }
        std::stable_sort(out.begin(), out.end(),
                         [](const Candidate& a, const Candidate& b) { return a.price < b.price; });
        return out;
    }

    /// Cheapest first, up to the first that holds and closes in time.
    void try_group(const Group& group) {
        const auto candidates = candidates_of(group);
        const bool alone = candidates.size() == 1 && boards_.size() * stiffenings_.size() == 1;
        for (const auto& candidate : candidates) {
            if (stopped() || candidate.price > dear_ * group.least_price) return;
            if (best_ && best_->answer.passes && timely(*best_) && candidate.price > bound()) return;
            if (alone) {
                enter(close_look(candidate.design));
                return;
            }
            if (!may_hold(group, candidate) || too_weak(candidate.design)) continue;
            const Trial& rough = looks_.rough(candidate.design, hopeless * most_gap_mm());
            if (rough.cut_short || judged(in_, candidate.design, rough).answer.use > hopeless) continue;
            const Trial& close = looks_.close(candidate.design, most_gap_mm());
            if (close.cut_short) continue;
            Plate plate = judged(in_, candidate.design, close);
            if (!plate.answer.passes) continue;
            const bool done = timely(plate);
            enter(std::move(plate));
            if (done) return;
        }
    }

    double most_gap_mm() const { ///< for 1 kPa
        return (in_.gasket ? gap_limit_gasket_mm : gap_limit_mm) / in_.load.closed_kpa;
    }

    Plate close_look(const PlateDesign& design) {
        return judged(in_, design, looks_.close(design, std::numeric_limits<double>::infinity()));
    }

    /// Whether closures of this stiffness hold at their closest: wider apart they hold less.
    bool may_hold(const Group& group, const Candidate& candidate) {
        const double closest = spacings_to_try(in_, group.stiffening).back();
        const auto design =
            design_of(in_, group.board, box_board_, group.stiffening, candidate.pair, closest);
        const Trial& most = looks_.rough(design, hopeless * most_gap_mm());
        double use = most.gap_mm / most_gap_mm();
        if (use <= hopeless) // else the rest may not be known
            use = std::max(
                {use, most.bow_mm * in_.load.closed_kpa / bow_limit_mm,
                 most.stress_mpa * in_.load.build_for_kpa * stress_factor / design.board.rupture_mpa});
        if (use < least_use_) least_use_ = use, least_bad_ = Group(group), least_bad_design_ = design;
        return use <= hopeless;
    }

    /// Not even if all pulled alike.
    bool too_weak(const PlateDesign& design) const {
        double all = 0;
        for (const auto& closure : design.closures)
            all += capacity_n(kind_of(design, closure), joint_of(in_, design, closure));
        const double pushed_n =
            (shape::area(in_.opening) - shape::area(in_.through)) * in_.load.build_for_kpa / 1000;
        return all / capacity_factor < pushed_n;
    }

    void enter(Plate plate) {
        if (!best_ || better(plate, *best_)) {
            second_ = std::move(best_);
            best_ = std::move(plate);
        } else if (!second_ || better(plate, *second_)) {
            second_ = std::move(plate);
        }
    }

    /// Nothing holds: the plate that comes nearest, so that its checks say what is missing.
    void try_least_bad() {
        if (!least_bad_) return;
        best_ = close_look(*least_bad_design_);
    }

    const PlateIn& in_;
    const Stop& stop_;
    PlateLooks& looks_;
    job::Board box_board_;
    std::vector<job::Board> boards_;
    std::vector<Stiffening> stiffenings_;
    std::optional<Plate> best_;
    std::optional<Plate> second_;
    std::optional<Group> least_bad_;
    std::optional<PlateDesign> least_bad_design_;
    double dear_ = 4; ///< closures that make a plate so many times dearer come last
    double least_use_ = std::numeric_limits<double>::infinity();
};

} // namespace

std::optional<Plate> plate_of(const PlateIn& in, PlateLooks& looks, const Stop& stop) {
    DRAWERCAST_DEMAND(!in.boards.empty() && !in.stiffeners.empty() && !in.closures.empty(),
                      "a shop without lists has the built-in ones");
    std::optional<Plate> found;
    if (!in.last_places.empty()) {
        found = Search(in, stop, looks).run(false);
        PlateIn anywhere = in; // better a vent that has to yield than a plate many times as dear
        anywhere.last_places.clear();
        if (!found) found = Search(anywhere, stop, looks).run(false);
    }
    if (!found) found = Search(in, stop, looks).run(true);
    looks.forget_boxes();
    return found;
}

std::optional<Plate> plate_of(const PlateIn& in, const Stop& stop) {
    PlateLooks looks;
    return plate_of(in, looks, stop);
}

Plate rechecked(const PlateIn& in, const PlateDesign& design, PlateLooks& looks) {
    looks.start_close(shape_of(in, design.box_board));
    return judged(in, design, looks.close(design, std::numeric_limits<double>::infinity()));
}

Plate rechecked(const PlateIn& in, const PlateDesign& design) {
    PlateLooks looks;
    return rechecked(in, design, looks);
}

} // namespace drawercast::mold
