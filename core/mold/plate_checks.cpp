// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_checks.h"

#include <algorithm>
#include <optional>

namespace drawercast::mold {

namespace {

using layout::Check;
using layout::Code;
using layout::Severity;

constexpr double far_over = 2; ///< of a limit of looks: then it will not do (our guess)

void put_at(Check& check, shape::Point<shape::InMold> at) {
    check.frame = layout::CheckFrame::mold;
    check.at = at.vec();
}

/// A matter of looks up to twice its limit.
std::optional<Check> over(Code code, double value, double limit) {
    if (value <= limit) return std::nullopt;
    return check_of(code, value > far_over * limit ? Severity::mend : Severity::look, value, limit);
}

void add_stress(std::vector<Check>& out, double value, double rupture) {
    if (value > rupture / stress_factor)
        out.push_back(check_of(Code::plate_stress, Severity::mend, value, rupture / stress_factor));
}

void add_pull(std::vector<Check>& out, const PlateAnswer& answer) {
    const double limit = answer.capacity_n[answer.worst] / capacity_factor;
    if (limit == 0 || answer.closure_n[answer.worst] <= limit) return; // 0: too short, said elsewhere
    out.push_back(check_of(Code::screw_pull, Severity::mend, answer.closure_n[answer.worst], limit));
    put_at(out.back(), answer.design.closures[answer.worst].at);
}

/// The first that does not fit stands for all of its kind.
void add_lengths(std::vector<Check>& out, const PlateIn& in, const PlateDesign& design, bool ends) {
    const auto found = std::find_if(design.closures.begin(), design.closures.end(),
                                    [&](const ClosureAt& at) { return at.stiffener_end == ends; });
    if (found == design.closures.end()) return;
    const auto& kind = kind_of(design, *found);
    const Joint joint = joint_of(in, design, *found);
    if (!fits(kind, joint)) {
        const double in_wall = in_wall_mm(kind, joint);
        const auto limits = penetration_limits(kind.diameter_mm, in.height_mm);
        out.push_back(check_of(Code::screw_short, Severity::mend, in_wall,
                               in_wall < limits.least_mm ? limits.least_mm : limits.most_mm));
        put_at(out.back(), found->at);
    }
    const double least = edge_diameters * kind.diameter_mm;
    if (kind.kind == job::ClosureKind::screw && design.box_board.thickness_mm < least)
        out.push_back(check_of(Code::board_thin, Severity::mend, design.box_board.thickness_mm, least));
}

void add_at_hand(std::vector<Check>& out, const PlateDesign& design) {
    const bool one_kind = design.closure == design.end_closure;
    for (const bool ends : {false, true}) {
        const auto& kind = ends ? design.end_closure : design.closure;
        if (!kind.at_hand || (ends && one_kind)) continue;
        const auto needed =
            std::count_if(design.closures.begin(), design.closures.end(),
                          [&](const auto& at) { return one_kind || at.stiffener_end == ends; });
        if (*kind.at_hand < needed)
            out.push_back(
                check_of(Code::closures_few, Severity::note, *kind.at_hand, static_cast<double>(needed)));
    }
}

} // namespace

std::vector<Check> plate_checks(const PlateIn& in, const Plate& plate) {
    const PlateAnswer& answer = plate.answer;
    std::vector<Check> out;
    if (auto check = over(Code::plate_bow, answer.bow_mm, bow_limit_mm)) {
        put_at(*check, answer.bow_at);
        out.push_back(*check);
    }
    if (const auto check = over(Code::plate_gap, answer.gap_mm, answer.gap_limit_mm)) out.push_back(*check);
    add_stress(out, answer.stress_mpa, answer.design.board.rupture_mpa);
    if (answer.design.stiffener)
        add_stress(out, answer.stiffener_stress_mpa, answer.design.stiffener->rupture_mpa);
    add_pull(out, answer);
    for (const bool ends : {false, true}) add_lengths(out, in, answer.design, ends);
    double wall_bow = 0;
    for (const auto& wall : answer.walls) wall_bow = std::max(wall_bow, wall.bow_mm);
    if (const auto check = over(Code::wall_bow, wall_bow, wall_bow_limit_mm)) out.push_back(*check);
    if (plate.closing.close_margin_s < 0)
        out.push_back(check_of(Code::close_late, Severity::mend, plate.closing.plate_on_s,
                               plate.closing.plate_on_s + plate.closing.close_margin_s));
    add_at_hand(out, answer.design);
    return out;
}

} // namespace drawercast::mold
