// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_checks.h"

#include "mold/plate_options.h"
#include "mold/screws.h"
#include "mold/walls.h"

#include <algorithm>
#include <optional>

namespace drawercast::mold {

namespace {

using layout::Check;
using layout::Code;
using layout::Severity;

constexpr double far_over = 2; ///< of a limit of looks: then it will not do (our guess)
/// Plates of that many screw diameters are usual (common practice); of thinner ones it is said that nobody
/// looked at their heads.
constexpr double usual_head_diameters = 4;

void put_at(Check& check, shape::Point<shape::InMold> at) {
    check.frame = layout::CheckFrame::mold;
    check.at = at.vec();
}

/// A matter of looks up to twice its limit.
std::optional<Check> over(Code code, double value, double limit) {
    if (value <= limit) return std::nullopt;
    return check_of(code, value > far_over * limit ? Severity::mend : Severity::look, value, limit);
}

void add_stress(std::vector<Check>& out, Code code, double value, double rupture) {
    if (value > rupture / stress_factor)
        out.push_back(check_of(code, Severity::mend, value, rupture / stress_factor));
}

/// What bends under the foam, be it plate or base: bow, gap and stresses.
struct BendingCodes {
    Code bow, gap, stress;
};
void add_bending(std::vector<Check>& out, const BendingCodes& codes, const PlateAnswer& answer) {
    if (auto check = over(codes.bow, answer.bow_mm, bow_limit_mm)) {
        put_at(*check, answer.bow_at);
        out.push_back(*check);
    }
    if (const auto check = over(codes.gap, answer.gap_mm, answer.gap_limit_mm)) out.push_back(*check);
    add_stress(out, codes.stress, answer.stress_mpa, answer.design.board.rupture_mpa);
    if (answer.design.stiffener)
        add_stress(out, codes.stress, answer.stiffener_stress_mpa, answer.design.stiffener->rupture_mpa);
}

void add_pull(std::vector<Check>& out, Code code, const PlateAnswer& answer) {
    const double limit = answer.capacity_n[answer.worst] / capacity_factor;
    if (answer.closure_n[answer.worst] <= limit) return;
    out.push_back(check_of(code, Severity::mend, answer.closure_n[answer.worst], limit));
    put_at(out.back(), answer.design.closures[answer.worst].at);
}

/// Then its length is told, not its pull.
bool worst_is_too_short(const PlateAnswer& answer) {
    const auto& worst = kind_of(answer.design, answer.design.closures[answer.worst]);
    return answer.capacity_n[answer.worst] == 0 && worst.kind == job::ClosureKind::screw;
}

/// Nobody chose a closure that does not fit: then nothing in the shop's list does. Least and greatest length
/// of a screw that would, as thin as the list's thinnest.
Check none_fits(const PlateIn& in, const Joint& joint) {
    double thinnest = 0;
    for (const auto& one : in.closures)
        if (one.kind == job::ClosureKind::screw && (thinnest == 0 || one.diameter_mm < thinnest))
            thinnest = one.diameter_mm;
    const auto limits = penetration_limits(thinnest, in.height_mm);
    return check_of(Code::closure_none, Severity::mend, joint.through_mm + limits.least_mm,
                    joint.through_mm + limits.most_mm);
}

/// The joint of the lowest bearer, where no piece of the shop is held as one.
std::optional<Joint> unheld_bearer(const PlateIn& in, const job::Board& board) {
    if (in.stiffeners.empty() || !bearers_to_try(in, board).empty()) return std::nullopt;
    const auto lowest = std::ranges::min_element(in.stiffeners, {}, &job::Stiffener::height_mm);
    return bearer_joint(in, board, *lowest);
}

Check does_not_fit(const PlateIn& in, const job::Closure& kind, const Joint& joint) {
    if (kind.kind == job::ClosureKind::rod)
        return check_of(Code::rod_short, Severity::mend, kind.length_mm,
                        rod_length_mm(kind.diameter_mm, joint));
    if (!in.closure) return none_fits(in, joint);
    const double in_wall = in_wall_mm(kind, joint);
    const auto limits = penetration_limits(kind.diameter_mm, in.height_mm);
    return check_of(Code::screw_short, Severity::mend, in_wall,
                    in_wall < limits.least_mm ? limits.least_mm : limits.most_mm);
}

/// The first that does not fit stands for all of its kind.
void add_lengths(std::vector<Check>& out, const PlateIn& in, const PlateDesign& design, bool ends) {
    const auto found = std::find_if(design.closures.begin(), design.closures.end(),
                                    [&](const ClosureAt& at) { return at.stiffener_end == ends; });
    if (found == design.closures.end()) return;
    const auto& kind = kind_of(design, *found);
    const Joint joint = joint_of(in, design, *found);
    if (!fits(kind, joint)) {
        out.push_back(does_not_fit(in, kind, joint));
        put_at(out.back(), found->at);
    }
    const double least = least_wall_mm(kind);
    if (design.box_board.thickness_mm < least)
        out.push_back(check_of(Code::board_thin, Severity::mend, design.box_board.thickness_mm, least));
}

/// Under heads that press on the plate alone.
void add_heads(std::vector<Check>& out, const PlateDesign& design) {
    const double usual = usual_head_diameters * design.closure.diameter_mm;
    if (design.closure.kind == job::ClosureKind::screw && design.board.thickness_mm < usual)
        out.push_back(check_of(Code::head_unchecked, Severity::note, design.board.thickness_mm, usual));
}

/// One, or two where other closures hold the stiffeners' ends.
std::vector<job::Closure> kinds_of(const PlateDesign& design) {
    if (!design.stiffener || design.closure == design.end_closure) return {design.closure};
    return {design.closure, design.end_closure};
}

void add_at_hand(std::vector<Check>& out, const PlateDesign& design) {
    for (const job::Closure& kind : kinds_of(design)) {
        if (!kind.at_hand) continue;
        const auto needed = std::ranges::count_if(
            design.closures, [&](const ClosureAt& at) { return kind_of(design, at) == kind; });
        if (*kind.at_hand >= needed) continue;
        out.push_back(
            check_of(Code::closures_few, Severity::note, *kind.at_hand, static_cast<double>(needed)));
        out.back().subjects = {kind.name};
    }
}

} // namespace

std::vector<Check> plate_checks(const PlateIn& in, const Plate& plate) {
    const PlateAnswer& answer = plate.answer;
    std::vector<Check> out;
    add_bending(out, {Code::plate_bow, Code::plate_gap, Code::plate_stress}, answer);
    if (!worst_is_too_short(answer)) add_pull(out, Code::screw_pull, answer);
    for (const bool ends : {false, true}) add_lengths(out, in, answer.design, ends);
    const WallAnswer wall = worst_wall(answer.walls);
    add_stress(out, Code::wall_stress, wall.stress_mpa, answer.design.box_board.rupture_mpa);
    if (const auto check = over(Code::wall_bow, wall.bow_mm, wall_bow_limit_mm)) out.push_back(*check);
    if (plate.closing.close_margin_s < 0)
        out.push_back(check_of(Code::close_late, Severity::mend, plate.closing.plate_on_s,
                               plate.closing.plate_on_s + plate.closing.close_margin_s));
    add_heads(out, answer.design);
    add_at_hand(out, answer.design);
    return out;
}

std::vector<Check> base_checks(const PlateIn& in, const Plate& base) {
    std::vector<Check> out;
    add_bending(out, {Code::base_bow, Code::base_gap, Code::base_stress}, base.answer);
    add_pull(out, Code::base_pull, base.answer);
    if (!base.answer.passes && !base.answer.design.stiffener)
        if (const auto joint = unheld_bearer(in, base.answer.design.board))
            out.push_back(none_fits(in, *joint));
    return out;
}

std::vector<Check> drill_checks(const PlateDesign& design, const std::vector<double>& drills_mm) {
    std::vector<Check> out;
    for (const job::Closure& kind : kinds_of(design)) {
        const Holes wanted = wanted_holes(kind), made = holes_of(kind, drills_mm);
        const bool all_made = (made.clearance_mm > 0) == (wanted.clearance_mm > 0) &&
                              (made.pilot_mm > 0) == (wanted.pilot_mm > 0);
        if (all_made) continue;
        out.push_back(check_of(Code::drill_none, Severity::look, wanted.pilot_mm, wanted.clearance_mm));
        out.back().subjects = {kind.name};
    }
    return out;
}

} // namespace drawercast::mold
