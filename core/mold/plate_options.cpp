// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_options.h"

#include "mold/screws.h"
#include "mold/walls.h"

#include <algorithm>
#include <array>

namespace drawercast::mold {

namespace {

constexpr std::array bare_spacings_mm{65.0, 58.0, 52.0, 46.0, 40.0}; // common practice: 50 to 75
constexpr std::array stiffened_spacings_mm{100.0, 85.0, 75.0, 65.0, 56.0, 48.0, 40.0};
constexpr int most_stiffeners = 4;

template <class T>
const T* named(const std::vector<T>& list, const std::string& name) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const T& one) { return one.name == name; });
    return found == list.end() ? nullptr : &*found;
}

double area_price(const job::Board& board) {
    return board.price / (board.sheet_length_mm * board.sheet_width_mm);
}

double through_of(const job::Board& board, const Stiffening& stiffening) {
    return board.thickness_mm + (stiffening.piece ? stiffening.piece->height_mm : 0);
}

/// Of `all`, those that fit the joint, cheapest first.
std::vector<job::Closure> fitting(const std::vector<job::Closure>& all, const Joint& joint,
                                  double wall_thickness_mm) {
    std::vector<job::Closure> out;
    for (const auto& closure : all) {
        if (wall_thickness_mm >= least_wall_mm(closure) && fits(closure, joint) &&
            capacity_n(closure, joint) > 0)
            out.push_back(closure);
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.price < b.price; });
    return out;
}

/// The worse of a held board's bow and stress over its limit.
double held_use(const WallAnswer& held, const job::Board& board, double most_bow_mm) {
    return std::max(held.bow_mm / most_bow_mm, held.stress_mpa * stress_factor / board.rupture_mpa);
}

double wall_use(const PlateIn& in, const job::Board& board) {
    const auto walls = walls_of({in.width_mm, in.depth_mm, in.height_mm, board, in.load});
    return held_use(worst_wall(walls), board, wall_bow_limit_mm);
}

/// About how near a bare base comes to its limits: a plate held along the screws' lines, a twentieth in hand
/// since screws give (our guess). It is judged itself once the plate is known (base.h).
double bare_base_use(const PlateIn& in, const job::Board& board) {
    constexpr double in_hand = 1.05;
    const double t = board.thickness_mm;
    return in_hand *
           held_use(held_plate(in.width_mm + t, in.depth_mm + t, board, in.load), board, bow_limit_mm);
}

} // namespace

std::vector<job::Board> boards_to_try(const PlateIn& in) {
    if (in.board)
        if (const auto* set = named(in.boards, *in.board)) return {*set};
    return in.boards;
}

std::vector<Stiffening> stiffenings_to_try(const PlateIn& in) {
    if (in.stiffening) {
        const auto& set = *in.stiffening;
        if (set.count == 0) return {{}};
        if (const auto* piece = named(in.stiffeners, set.name))
            return {{*piece, set.count, set.along, set.glued}};
    }
    std::vector<Stiffening> out{{}};
    for (int count = 1; count <= most_stiffeners; ++count)
        for (const auto& piece : in.stiffeners)
            if (const Stiffening one{piece, count, job::Along::short_side, false};
                stands_off(pattern_in(in, {}, one)))
                out.push_back(one);
    return out;
}

std::vector<double> spacings_to_try(const PlateIn& in, const Stiffening& stiffening) {
    if (in.spacing_mm) return {*in.spacing_mm};
    if (stiffening.count == 0 && !in.is_base) return {bare_spacings_mm.begin(), bare_spacings_mm.end()};
    return {stiffened_spacings_mm.begin(), stiffened_spacings_mm.end()};
}

std::vector<ClosurePair> closures_to_try(const PlateIn& in, const job::Board& board,
                                         const job::Board& box_board, const Stiffening& stiffening) {
    const double wall = box_board.thickness_mm;
    const Joint at_wall{board.thickness_mm, in.height_mm, box_board.specific_gravity, wall};
    const Joint at_end{through_of(board, stiffening), in.height_mm, box_board.specific_gravity, wall};
    const job::Closure* set = in.closure ? named(in.closures, *in.closure) : nullptr;

    auto around = set != nullptr ? std::vector{*set} : fitting(in.closures, at_wall, wall);
    if (around.empty()) around = {in.closures.front()};
    std::vector<ClosurePair> out;
    if (!stiffening.piece) {
        for (const auto& closure : around) out.push_back({closure, closure});
        return out;
    }
    const auto ends = set != nullptr && fits(*set, at_end) && capacity_n(*set, at_end) > 0
                          ? std::vector{*set}
                          : fitting(in.closures, at_end, wall);
    for (const auto& closure : around) {
        for (const auto& end : ends) out.push_back({closure, end});
        if (ends.empty()) out.push_back({closure, closure});
    }
    std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) {
        return a.around.price + a.end.price < b.around.price + b.end.price;
    });
    return out;
}

double least_edge_mm(const std::vector<job::Closure>& closures) {
    constexpr double usual_mm = 4;
    double thinnest_mm = 0;
    for (const auto& closure : closures)
        if (closure.kind == job::ClosureKind::screw &&
            (thinnest_mm == 0 || closure.diameter_mm < thinnest_mm))
            thinnest_mm = closure.diameter_mm;
    return own_edge_diameters * (thinnest_mm > 0 ? thinnest_mm : usual_mm);
}

Joint bearer_joint(const PlateIn& in, const job::Board& base, const job::Stiffener& piece) {
    return {base.thickness_mm + piece.height_mm, in.height_mm, base.specific_gravity};
}

std::vector<job::Stiffener> bearers_to_try(const PlateIn& in, const job::Board& base) {
    std::vector<job::Stiffener> out;
    for (const auto& piece : in.stiffeners) {
        const auto held = fitting(in.closures, bearer_joint(in, base, piece), base.thickness_mm);
        if (std::ranges::any_of(held, [](const auto& one) { return one.kind == job::ClosureKind::screw; }))
            out.push_back(piece);
    }
    return out;
}

job::Board box_board_of(const PlateIn& in) {
    if (in.box_board)
        if (const auto* set = named(in.boards, *in.box_board)) return *set;
    const double least_mm = least_edge_mm(in.closures);
    std::vector<job::Board> walls, bases; // that hold as walls, and as the base too
    for (const auto& board : in.boards) {
        if (board.thickness_mm < least_mm || wall_use(in, board) > 1) continue;
        walls.push_back(board);
        if (bare_base_use(in, board) <= 1 || !bearers_to_try(in, board).empty()) bases.push_back(board);
    }
    for (const auto& fit : {bases, walls})
        if (!fit.empty()) return *std::ranges::min_element(fit, {}, area_price);
    return *std::max_element(in.boards.begin(), in.boards.end(),
                             [](const auto& a, const auto& b) { return a.thickness_mm < b.thickness_mm; });
}

PatternIn pattern_in(const PlateIn& in, const job::Board& box_board, const Stiffening& stiffening) {
    PatternIn out;
    out.width_mm = in.width_mm;
    out.depth_mm = in.depth_mm;
    out.wall_mm = box_board.thickness_mm;
    out.stiffeners = stiffening.count;
    out.along = stiffening.along;
    if (stiffening.piece) out.stiffener_width_mm = stiffening.piece->width_mm;
    double widest = out.stiffener_width_mm;
    for (const auto& piece : in.stiffeners) widest = std::max(widest, piece.width_mm);
    out.keep_off = in.last_places;
    out.stand_off_mm = widest / 2 + in.vent_clear_mm;
    out.corner = in.corner;
    out.apart_from = in.apart_from;
    out.apart_mm = in.apart_mm;
    return out;
}

PlateDesign design_of(const PlateIn& in, const job::Board& board, const job::Board& box_board,
                      const Stiffening& stiffening, const ClosurePair& closures, double spacing_mm) {
    PatternIn pattern = pattern_in(in, box_board, stiffening);
    pattern.spacing_mm = spacing_mm;
    pattern.head_radius_mm = std::max(head_radius_mm(closures.around), head_radius_mm(closures.end));
    PlateDesign out;
    out.board = board;
    out.box_board = box_board;
    out.stiffener = stiffening.piece;
    out.along = stiffening.along;
    out.glued = stiffening.glued;
    out.stiffeners = stiffeners_of(pattern);
    out.closure = closures.around;
    out.end_closure = closures.end;
    out.spacing_mm = spacing_mm;
    out.closures = closures_of(pattern);
    out.order = driving_order(pattern, out.closures);
    return out;
}

double price_of(const PlateIn& in, const PlateDesign& design) {
    const double around = 2 * design.box_board.thickness_mm;
    double sum = area_price(design.board) * (in.width_mm + around) * (in.depth_mm + around);
    const bool bought_anyway = design.board.name == design.box_board.name || design.board.at_hand > 0;
    if (in.plates > 0 && !bought_anyway)
        sum = std::max(sum, design.board.price / static_cast<double>(in.plates));
    for (const auto& at : design.stiffeners)
        sum += design.stiffener->price * shape::length(at.to.vec() - at.from.vec()) /
               design.stiffener->length_mm;
    for (const auto& closure : design.closures)
        sum += (closure.stiffener_end ? design.end_closure : design.closure).price;
    return sum;
}

PlateShape shape_of(const PlateIn& in, const job::Board& box_board) {
    return {in.width_mm, in.depth_mm, in.height_mm, box_board.thickness_mm, box_board.elasticity_mpa,
            in.opening,  in.through};
}

} // namespace drawercast::mold
