// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_search.h"

#include "base/demand.h"

#include <queue>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <tuple>
#include <utility>
#include <vector>

namespace drawercast::mold {

namespace {

constexpr int groups_after_holding = 12; ///< looked at for one that also closes in time
constexpr double runner_up_dearer = 1.5; ///< than the best, at most
constexpr double hopeless = 1.04;        ///< of a limit, by the rough mesh
constexpr int failed_before_doubt = 24;  ///< looks, before it is asked whether anything can hold
constexpr double far_off = 2; ///< of a limit: what misses it so far with all at their strongest holds nowhere

/// One board with one way to stiffen it.
struct Group {
    job::Board board;
    Stiffening stiffening;
    double least_price = 0; ///< with the fewest and cheapest closures
    bool done = false;      ///< its cheapest that holds and closes in time is known
};

/// One way to close a group's plate.
struct Candidate {
    std::size_t group = 0;
    ClosurePair pair;
    double spacing_mm = 0;
    double price = 0;
    std::size_t order = 0; ///< among all, for equal prices
};

struct Dearer {
    bool operator()(const Candidate& a, const Candidate& b) const {
        return std::tuple(a.price, a.order) > std::tuple(b.price, b.order);
    }
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
        groups_ = groups_of();
        try_by_price();
        if (!best_ && at_any_price && !nothing_holds_ && !stopped()) {
            dear_ = std::numeric_limits<double>::infinity();
            try_by_price();
        }
        if (!best_ && at_any_price && !stopped()) try_least_bad();
        if (!best_ || stopped()) return std::nullopt;
        if (second_ && second_->answer.passes) best_->answer.runner_up = runner_up_of(*second_);
        return best_;
    }

  private:
    /// Cheapest first over all groups: then the first that holds and closes in time is the best, and the
    /// first of another group the runner-up. A group's candidates are worked out when its least price is due.
    void try_by_price() {
        std::priority_queue<Candidate, std::vector<Candidate>, Dearer> queue;
        std::size_t next = 0;
        int since_holding = 0;
        while (!nothing_holds_ && !stopped()) {
            while (next < groups_.size() &&
                   (queue.empty() || groups_[next].least_price <= queue.top().price)) {
                if (best_ && best_->answer.passes && !timely(*best_) &&
                    ++since_holding > groups_after_holding)
                    next = groups_.size();
                else
                    for (const auto& candidate : candidates_of(next++)) queue.push(candidate);
            }
            if (queue.empty()) return;
            const Candidate candidate = queue.top();
            queue.pop();
            if (found(best_) && (found(second_) || candidate.price > runner_up_dearer * best_->answer.price))
                return;
            if (!groups_[candidate.group].done) try_candidate(candidate);
        }
    }

    static bool found(const std::optional<Plate>& plate) {
        return plate && plate->answer.passes && timely(*plate);
    }
    bool stopped() const { return stop_ && stop_(); }

    std::vector<Group> groups_of() const {
        std::vector<Group> out;
        for (const auto& board : boards_) {
            for (const auto& stiffening : stiffenings_) {
                const auto pairs = closures_to_try(in_, board, box_board_, stiffening);
                const double widest = spacings_to_try(in_, stiffening).front();
                const auto design = design_of(in_, board, box_board_, stiffening, pairs.front(), widest);
                out.push_back({board, stiffening, price_of(in_, design), false});
            }
        }
        std::stable_sort(out.begin(), out.end(), [](const Group& a, const Group& b) {
            return std::tuple(a.least_price, a.board.thickness_mm, a.stiffening.count) <
                   std::tuple(b.least_price, b.board.thickness_mm, b.stiffening.count);
        });
        return out;
    }

    PlateDesign design_for(const Group& group, const ClosurePair& pair, double spacing_mm) const {
        return design_of(in_, group.board, box_board_, group.stiffening, pair, spacing_mm);
    }

    std::vector<Candidate> candidates_of(std::size_t index) {
        const Group& group = groups_[index];
        std::vector<Candidate> out;
        for (const auto& pair : closures_to_try(in_, group.board, box_board_, group.stiffening)) {
            for (const double spacing : spacings_to_try(in_, group.stiffening)) {
                const double price = price_of(in_, design_for(group, pair, spacing));
                if (price <= dear_ * group.least_price)
                    out.push_back({index, pair, spacing, price, candidates_++});
            }
        }
        only_one_ = out.size() == 1 && groups_.size() == 1;
        return out;
    }

    void try_candidate(const Candidate& candidate) {
        Group& group = groups_[candidate.group];
        const auto design = design_for(group, candidate.pair, candidate.spacing_mm);
        if (only_one_) {
            enter(close_look(design));
            return;
        }
        if (!may_hold(group, candidate) || too_weak(design)) return;
        const Trial& rough = looks_.rough(design, hopeless * most_gap_mm());
        if (rough.cut_short) return;
        const bool holding = best_ && best_->answer.passes; // what comes now is dearer: it must close in time
        if (judged(in_, design, rough).answer.use > hopeless || (holding && !may_close(design, rough)))
            return;
        const Trial& close = looks_.close(design, most_gap_mm(), rough.lift);
        if (close.cut_short) return;
        Plate plate = judged(in_, design, close);
        if (!plate.answer.passes) return;
        group.done = timely(plate);
        enter(std::move(plate));
    }

    /// In time, if the rough mesh has the pulls too high.
    bool may_close(const PlateDesign& design, Trial rough) const {
        for (double& pull : rough.pull_n) pull /= hopeless;
        return timely(judged(in_, design, std::move(rough)));
    }

    double most_gap_mm() const { ///< for 1 kPa
        return (in_.gasket ? gap_limit_gasket_mm : gap_limit_mm) / in_.load.closed_kpa;
    }

    Plate close_look(const PlateDesign& design) {
        return judged(in_, design, looks_.close(design, std::numeric_limits<double>::infinity()));
    }

    /// Whether closures of this stiffness hold at their closest: wider apart they hold less.
    bool may_hold(const Group& group, const Candidate& candidate) {
        const bool holds = use_at_closest(group, candidate.pair) <= hopeless;
        if (!holds && ++failed_ == failed_before_doubt) nothing_holds_ = use_at_strongest() > far_off;
        return holds;
    }

    double use_at_closest(const Group& group, const ClosurePair& pair) {
        const double closest = spacings_to_try(in_, group.stiffening).back();
        const auto design = design_for(group, pair, closest);
        const Trial& most = looks_.rough(design, hopeless * most_gap_mm());
        double use = most.gap_mm / most_gap_mm();
        if (use <= hopeless) // else the rest may not be known
            use = std::max(
                {use, most.bow_mm * in_.load.closed_kpa / bow_limit_mm,
                 most.stress_mpa * in_.load.build_for_kpa * stress_factor / design.board.rupture_mpa});
        if (use < least_use_) least_use_ = use, least_bad_ = design;
        return use;
    }

    /// The stiffest board, stiffeners and closures: a drawer too large for any of them would have each tried.
    double use_at_strongest() {
        const auto board_ei = [](const job::Board& b) {
            return b.elasticity_mpa * std::pow(b.thickness_mm, 3);
        };
        const auto all_ei = [](const Stiffening& s) {
            return s.piece ? s.count * s.piece->elasticity_mpa * s.piece->width_mm *
                                 std::pow(s.piece->height_mm, 3)
                           : 0.0;
        };
        const auto stiffness = [](const ClosurePair& pair) {
            return pair.around.stiffness_n_mm + pair.end.stiffness_n_mm;
        };
        const Group strongest{*std::ranges::max_element(boards_, {}, board_ei),
                              *std::ranges::max_element(stiffenings_, {}, all_ei), 0, false};
        const auto pairs = closures_to_try(in_, strongest.board, box_board_, strongest.stiffening);
        return use_at_closest(strongest, *std::ranges::max_element(pairs, {}, stiffness));
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
        best_ = close_look(*least_bad_);
    }

    const PlateIn& in_;
    const Stop& stop_;
    PlateLooks& looks_;
    job::Board box_board_;
    std::vector<job::Board> boards_;
    std::vector<Stiffening> stiffenings_;
    std::optional<Plate> best_;
    std::optional<Plate> second_;
    std::optional<PlateDesign> least_bad_;
    std::vector<Group> groups_;
    std::size_t candidates_ = 0; ///< worked out so far
    bool only_one_ = false;      ///< nothing to choose from
    bool nothing_holds_ = false; ///< not even the strongest, by far
    int failed_ = 0;             ///< looks that did not hold
    double dear_ = 4;            ///< closures that make a plate so many times dearer come last
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
