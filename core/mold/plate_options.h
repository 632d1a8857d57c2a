// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/closing.h"
#include "mold/pattern.h"
#include "mold/plate_answers.h"
#include "mold/plate_lines.h"
#include "mold/screws.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::mold {

/// All that the plate's answer reads. Mold frame.
struct PlateIn {
    double width_mm = 0; ///< of the box, inside
    double depth_mm = 0;
    double height_mm = 0;
    shape::Region opening;
    shape::Region through; ///< blocks as high as the walls, all together
    PlateLoad load;
    ClosingIn closing;
    bool gasket = false;
    double seconds_per_closure = 3;
    std::vector<job::Board> boards; ///< the shop's or the built-in ones, none of them empty
    std::size_t plates = 0; ///< of the job, which share a sheet that is bought for plates; 0: by area alone
    std::vector<job::Stiffener> stiffeners;
    std::vector<job::Closure> closures;
    std::vector<shape::Vec> last_places; ///< of air: vents belong there, stiffeners do not
    double vent_clear_mm = 0;            ///< from a stiffener's side to such a place
    std::optional<std::string> board;    ///< what the maker set; absent: to be found
    std::optional<std::string> box_board;
    std::optional<std::string> closure;
    std::optional<job::StiffenerChoice> stiffening;
    std::optional<double> spacing_mm;
    std::optional<job::BoxCorner> corner{}; ///< as PatternIn
    std::vector<shape::Vec> apart_from{};   ///< likewise
    double apart_mm = 0;
    bool is_base = false; ///< its screws’ lengths and the walls are judged elsewhere
    bool operator==(const PlateIn&) const = default;
};

/// How a plate may be stiffened.
struct Stiffening {
    std::optional<job::Stiffener> piece; ///< absent: bare
    int count = 0;
    job::Along along = job::Along::short_side;
    bool glued = false;
    bool operator==(const Stiffening&) const = default;
};

/// What may be tried: the maker's choice alone where there is one; else stiffeners that stand off the last
/// places of air.
std::vector<job::Board> boards_to_try(const PlateIn& in);
std::vector<Stiffening> stiffenings_to_try(const PlateIn& in);
std::vector<double> spacings_to_try(const PlateIn& in, const Stiffening& stiffening); ///< widest first

/// Closures around, and those at the ends of stiffeners (the same on a bare plate); cheapest pair first. Only
/// such as fit, where any do; a closure set by the maker is taken as it is.
struct ClosurePair {
    job::Closure around;
    job::Closure end;
};
std::vector<ClosurePair> closures_to_try(const PlateIn& in, const job::Board& board,
                                         const job::Board& box_board, const Stiffening& stiffening);

/// Walls and base: the maker's, else the cheapest board that is thick enough for a screw in its edge and as a
/// wall keeps its limits, and as the base too where no bearer would be held under it; the stiffest where none
/// does.
job::Board box_board_of(const PlateIn& in);

/// Of the shop's pieces those that one of its screws holds as bearers: up through the base and them, into the
/// foot of the wall.
std::vector<job::Stiffener> bearers_to_try(const PlateIn& in, const job::Board& base);
Joint bearer_joint(const PlateIn& in, const job::Board& base, const job::Stiffener& piece);

/// Least thickness of a wall the program itself takes for a screw in its edge, in diameters (common
/// practice).
inline constexpr double own_edge_diameters = 4;

/// Least thickness of a board whose edge takes the thinnest of these screws, by own_edge_diameters; where
/// none is listed, one of 4 mm.
double least_edge_mm(const std::vector<job::Closure>& closures);

/// Where closures (at the widest) and stiffeners of the stiffening go. Stiffeners stand off by the shop's
/// widest piece, so that their places depend on their number alone.
PatternIn pattern_in(const PlateIn& in, const job::Board& box_board, const Stiffening& stiffening);

PlateDesign design_of(const PlateIn& in, const job::Board& board, const job::Board& box_board,
                      const Stiffening& stiffening, const ClosurePair& closures, double spacing_mm);

/// Of plate, stiffeners and closures, each by its share of what is bought. A board that neither is at hand
/// nor gives the box its walls is bought by the whole sheet: each of the job's plates bears its share of
/// that, so that plates of one job tend to one board.
double price_of(const PlateIn& in, const PlateDesign& design);

PlateShape shape_of(const PlateIn& in, const job::Board& box_board);

} // namespace drawercast::mold
