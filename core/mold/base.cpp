// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/base.h"

#include "base/contains.h"
#include "mold/plate_options.h"

#include <algorithm>
#include <utility>

namespace drawercast::mold {

namespace {

constexpr double screw_apart_mm = 12; ///< of two screws' center lines that pass each other (common practice)
constexpr double between_points_mm = 5; ///< of screws in line, from above and below (our guess)

/// The closures of the plate that reach so far down that a screw from below could meet them.
std::vector<shape::Vec> in_the_way(const BaseIn& in) {
    const double foot = in.joint.length_mm - in.plate.box_board.thickness_mm;
    std::vector<shape::Vec> points;
    for (const ClosureAt& closure : in.plate.closures) {
        const job::Closure& kind = kind_of(in.plate, closure);
        const bool through = kind.kind == job::ClosureKind::rod; // down to the base and out of it
        const double reaches =
            through ? in.mold.height_mm : in_wall_mm(kind, joint_of(in.mold, in.plate, closure));
        // a bearer's own closure reaches further than a foot's screw: as far as one of the plate's
        if (reaches > 0 &&
            (closure.stiffener_end ? 2 * reaches : reaches + foot) + between_points_mm > in.mold.height_mm)
            points.push_back(closure.at.vec());
    }
    return points;
}

/// A shop's screws alone: whatever else it has ends in no wall.
void keep_screws(std::vector<job::Closure>& closures) {
    std::erase_if(closures, [](const auto& one) { return one.kind != job::ClosureKind::screw; });
}

/// Bearers' center lines stand so far off these points that their ends' screws pass them.
void keep_bearers_off(PlateIn& base, std::vector<shape::Vec> points) {
    double widest = 0;
    for (const auto& piece : base.stiffeners) widest = std::max(widest, piece.width_mm);
    base.last_places = std::move(points);
    base.vent_clear_mm = screw_apart_mm - widest / 2; // pattern_in() counts from a stiffener's side
}

PlateIn base_in(const BaseIn& in) {
    PlateIn base = in.mold;
    const job::Board& board = in.plate.box_board;
    base.boards = {board};
    base.board = base.box_board = board.name;
    base.plates = 0;
    base.gasket = true; // the joint is sealed
    keep_screws(base.closures);
    base.closures.push_back(in.joint);
    for (auto& closure : base.closures) closure.seconds = 0;
    base.closure = in.joint.name;
    base.spacing_mm.reset();
    base.stiffening.reset();
    base.is_base = true;
    base.closing.plate_on_s = 0; // long before anything pushes
    base.seconds_per_closure = 0;
    base.apart_from = in_the_way(in);
    base.apart_mm = screw_apart_mm;
    return base;
}

/// `bare` with bearers of the shop's pieces, off its closures, each held by a screw up through either end
/// into the wall: fewest first. None where no screw of the shop fits.
std::vector<PlateDesign> with_bearers(const BaseIn& in, PlateIn base, const PlateDesign& bare) {
    std::vector<PlateDesign> designs;
    keep_screws(base.closures);
    if (base.closures.empty()) return designs;
    base.closure.reset();
    base.stiffening.reset();
    base.stiffeners = bearers_to_try(in.mold, in.plate.box_board);
    std::vector<shape::Vec> points;
    for (const ClosureAt& closure : bare.closures) points.push_back(closure.at.vec());
    keep_bearers_off(base, std::move(points));
    for (const Stiffening& one : stiffenings_to_try(base)) {
        if (!one.piece) continue;
        const auto pairs = closures_to_try(base, in.plate.box_board, in.plate.box_board, one);
        const PlateDesign borne =
            design_of(base, in.plate.box_board, in.plate.box_board, one, pairs.front(), bare.spacing_mm);
        PlateDesign design = bare;
        design.stiffener = borne.stiffener, design.stiffeners = borne.stiffeners;
        design.along = borne.along, design.end_closure = borne.end_closure;
        for (const ClosureAt& closure : borne.closures)
            if (closure.stiffener_end) design.closures.push_back(closure);
        designs.push_back(std::move(design));
    }
    return designs;
}

/// Whether the closures at the stiffeners' ends are long enough for the same pieces under the base.
bool reach_through_bearers(const BaseIn& in) {
    const auto end = std::ranges::find_if(in.plate.closures, &ClosureAt::stiffener_end);
    if (end == in.plate.closures.end()) return true;
    Joint joint = joint_of(in.mold, in.plate, *end);
    joint.below_mm += in.plate.stiffener->height_mm;
    return fits(in.plate.end_closure, joint);
}

/// Rods, clamps and straps go round both: they hold the base where they hold the plate.
std::optional<Plate> held_like_the_plate(const BaseIn& in, PlateLooks& looks, const Stop& stop) {
    PlateIn base = in.mold;
    base.gasket = true;
    base.is_base = true;
    PlateDesign design = in.plate;
    design.board = design.box_board;
    design.stiffener.reset();
    design.stiffeners.clear();
    for (auto& closure : design.closures) closure.stiffener_end = false;
    Plate best = rechecked(base, design, looks);
    if (best.answer.passes) return best;
    if (in.plate.stiffener && reach_through_bearers(in)) {
        PlateDesign over_again = in.plate;
        over_again.board = over_again.box_board;
        Plate like_the_plate = rechecked(base, over_again, looks);
        if (like_the_plate.answer.passes) return like_the_plate;
    }
    for (const PlateDesign& borne : with_bearers(in, base, design)) {
        if (stop && stop()) return std::nullopt;
        Plate held = rechecked(base, borne, looks);
        if (held.answer.passes) return held;
        if (held.answer.use < best.answer.use) best = std::move(held);
    }
    return best;
}

/// Bare, else stiffened like the plate, else by whatever the shop has.
std::optional<Plate> searched(const BaseIn& in, PlateLooks& looks, const Stop& stop) {
    PlateIn base = base_in(in);
    base.stiffening = job::StiffenerChoice{};
    base.last_places.clear(); // of the plate's stiffeners
    auto bare = plate_of(base, looks, stop);
    if (!bare || bare->answer.passes) return bare;
    base.stiffening.reset();
    keep_bearers_off(base, base.apart_from);
    const std::vector<job::Stiffener> all = bearers_to_try(in.mold, in.plate.box_board);
    if (all.empty()) return bare;
    base.stiffeners = all;
    if (in.plate.stiffener && contains(all, *in.plate.stiffener)) {
        base.stiffeners = {*in.plate.stiffener};
        auto like_the_plate = plate_of(base, looks, stop);
        if (!like_the_plate || like_the_plate->answer.passes) return like_the_plate;
        base.stiffeners = all;
    }
    return plate_of(base, looks, stop);
}

} // namespace

std::optional<Plate> base_of(const BaseIn& in, PlateLooks& looks, const Stop& stop) {
    if (in.plate.closure.kind != job::ClosureKind::screw) return held_like_the_plate(in, looks, stop);
    auto base = searched(in, looks, stop);
    if (!base) return base;
    for (const auto& closure : in.mold.closures) // as the shop has it, with the time it takes
        if (closure.name == base->answer.design.end_closure.name) base->answer.design.end_closure = closure;
    base->answer.runner_up.reset();
    return base;
}

} // namespace drawercast::mold
