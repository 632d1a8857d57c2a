// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_judge.h"

#include "mold/walls.h"

#include <algorithm>
#include <utility>

namespace drawercast::mold {

namespace {

constexpr double no_hold_use = 99; ///< of a closure that does not hold at all

void weigh(PlateAnswer& answer, Limit limit, double value, double most) {
    const double use = value / most;
    if (use > answer.use) answer.use = use, answer.governs = limit;
}

void judge_closures(const PlateIn& in, PlateAnswer& answer, const std::vector<double>& pull_n) {
    double most = -1;
    for (std::size_t i = 0; i < pull_n.size(); ++i) {
        const ClosureAt& at = answer.design.closures[i];
        const double capacity = capacity_n(kind_of(answer.design, at), joint_of(in, answer.design, at));
        answer.capacity_n.push_back(capacity);
        answer.closure_n.push_back(pull_n[i] * in.load.build_for_kpa);
        const double share = capacity > 0 ? capacity_factor * pull_n[i] / capacity : no_hold_use;
        if (share > most) most = share, answer.worst = i;
    }
    answer.worst_share_per_kpa = most;
    weigh(answer, Limit::closure, most * in.load.build_for_kpa, 1);
}

void judge_walls(const PlateIn& in, PlateAnswer& answer) {
    const job::Board& board = answer.design.box_board;
    answer.walls = walls_of({in.width_mm, in.depth_mm, in.height_mm, board, in.load});
    for (const auto& wall : answer.walls) {
        weigh(answer, Limit::wall_bow, wall.bow_mm, wall_bow_limit_mm);
        weigh(answer, Limit::wall_stress, wall.stress_mpa, board.rupture_mpa / stress_factor);
    }
}

double seconds_each(const PlateIn& in, const PlateDesign& design) {
    double sum = 0;
    for (const auto& closure : design.closures)
        sum += seconds_of(kind_of(design, closure), in.seconds_per_closure);
    return sum / static_cast<double>(design.closures.size());
}

bool closures_fit(const PlateIn& in, const PlateDesign& design) {
    return in.is_base ||
           std::all_of(design.closures.begin(), design.closures.end(), [&](const ClosureAt& at) {
               return fits(kind_of(design, at), joint_of(in, design, at));
           });
}

} // namespace

const job::Closure& kind_of(const PlateDesign& design, const ClosureAt& closure) {
    return closure.stiffener_end ? design.end_closure : design.closure;
}

Joint joint_of(const PlateIn& in, const PlateDesign& design, const ClosureAt& closure) {
    const double stiffener = closure.stiffener_end ? design.stiffener->height_mm : 0;
    return {design.board.thickness_mm + stiffener, in.height_mm, design.box_board.specific_gravity,
            design.box_board.thickness_mm};
}

Pattern pattern_of(const PlateIn& in, const PlateAnswer& answer) {
    return {static_cast<int>(answer.design.closures.size()), seconds_each(in, answer.design),
            answer.worst_share_per_kpa};
}

Plate judged(const PlateIn& in, const PlateDesign& design, Trial trial) {
    Plate out;
    PlateAnswer& answer = out.answer;
    answer.design = design;
    const double closed = in.load.closed_kpa;
    const double strong = in.load.build_for_kpa;
    answer.bow_mm = trial.bow_mm * closed;
    answer.bow_at = shape::Point<shape::InMold>::of(trial.bow_at);
    answer.gap_mm = trial.gap_mm * closed;
    answer.gap_limit_mm = in.gasket ? gap_limit_gasket_mm : gap_limit_mm;
    answer.stress_mpa = trial.stress_mpa * strong;
    answer.stiffener_stress_mpa = trial.stiffener_stress_mpa * strong;
    answer.lift = std::move(trial.lift);
    for (double& lift : answer.lift.lift_mm) lift *= closed;
    weigh(answer, Limit::bow, answer.bow_mm, bow_limit_mm);
    weigh(answer, Limit::gap, answer.gap_mm, answer.gap_limit_mm);
    weigh(answer, Limit::stress, answer.stress_mpa, design.board.rupture_mpa / stress_factor);
    if (design.stiffener)
        weigh(answer, Limit::stiffener_stress, answer.stiffener_stress_mpa,
              design.stiffener->rupture_mpa / stress_factor);
    judge_closures(in, answer, trial.pull_n);
    if (!in.is_base) judge_walls(in, answer);
    answer.price = price_of(in, design);
    out.closing = closing_of(in.closing, pattern_of(in, answer));
    answer.close_s = out.closing.close_s;
    answer.passes = answer.use <= 1 && closures_fit(in, design);
    if (!closures_fit(in, design)) answer.governs = Limit::screw_length;
    if (answer.passes && out.closing.close_margin_s < 0) answer.governs = Limit::closing;
    return out;
}

} // namespace drawercast::mold
