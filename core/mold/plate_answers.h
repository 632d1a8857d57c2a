// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/mold.h"
#include "job/shop.h"
#include "shape/frame.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// What the mold's pressure plate answers, as plain values. Mold frame, mm, N, MPa; pressures in kPa.
namespace drawercast::mold {

struct StiffenerAt { ///< center line on the plate, from one plate edge to the other
    shape::Point<shape::InMold> from;
    shape::Point<shape::InMold> to;
    bool operator==(const StiffenerAt&) const = default;
};

struct ClosureAt { ///< on the center line of a wall
    shape::Point<shape::InMold> at;
    bool stiffener_end = false; ///< goes through a stiffener too: the design's end_closure
    bool operator==(const ClosureAt&) const = default;
};

/// What is built: the plate covers the box and its walls; the base is another such plate, upside down
/// (base.h).
struct PlateDesign {
    job::Board board;                        ///< of the plate
    job::Board box_board;                    ///< of walls and base
    std::optional<job::Stiffener> stiffener; ///< absent: a bare plate
    job::Along along = job::Along::short_side;
    bool glued = false;
    std::vector<StiffenerAt> stiffeners;
    job::Closure closure;
    job::Closure end_closure;        ///< at the ends of stiffeners; as `closure` on a bare plate
    double spacing_mm = 65;          ///< greatest pitch along a side
    std::vector<ClosureAt> closures; ///< counter-clockwise from the front-left corner: number = index + 1
    std::vector<int> order;          ///< indices of `closures` in the order they are driven
    bool operator==(const PlateDesign&) const = default;
};

struct PlateLoad {
    double closed_kpa = 0;    ///< serviceability: bow and gap
    double build_for_kpa = 0; ///< strength: stress, closures, walls, base
    bool operator==(const PlateLoad&) const = default;
};

/// The plate's lift over its mesh, at closed pressure: x and y lines and the lift of each node, row by row
/// from the front.
struct LiftField {
    std::vector<double> x_mm;
    std::vector<double> y_mm;
    std::vector<double> lift_mm; ///< y.size() rows of x.size()
    bool operator==(const LiftField&) const = default;
};

enum class Limit {
    bow,
    gap,
    stress,
    stiffener_stress,
    closure,
    wall_bow,
    wall_stress,
    screw_length,
    closing
};

struct WallAnswer {
    double length_mm = 0;  ///< inside
    double bow_mm = 0;     ///< at closed pressure
    double stress_mpa = 0; ///< at build-for pressure
    bool operator==(const WallAnswer&) const = default;
};

/// What is known without another search: by how much the worst limit is kept, and what would have come next.
struct RunnerUp {
    std::string board;
    int stiffeners = 0;
    std::string stiffener;
    int closures = 0;
    std::string closure;
    double price = 0;
    bool operator==(const RunnerUp&) const = default;
};

struct PlateAnswer {
    PlateDesign design;
    double bow_mm = 0; ///< at closed pressure, greatest lift over the opening
    shape::Point<shape::InMold> bow_at;
    double gap_mm = 0; ///< at closed pressure, greatest lift on the opening's edge
    double gap_limit_mm = 0;
    double stress_mpa = 0;           ///< of the plate, at build-for pressure
    double stiffener_stress_mpa = 0; ///< likewise; 0 on a bare plate
    std::vector<double> closure_n;   ///< pull of each, at build-for pressure
    std::vector<double> capacity_n;  ///< mean ultimate of each; 0 where a screw is too short to hold
    std::size_t worst = 0;           ///< index of the closure with the greatest share of its capacity
    double worst_share_per_kpa = 0;  ///< its pull over a third of its capacity, for 1 kPa
    LiftField lift;
    std::vector<WallAnswer> walls; ///< front, right, back, left of the mold
    double price = 0;              ///< of plate, stiffeners and closures
    double close_s = 0;            ///< all closures, with the shop's drivers
    Limit governs = Limit::bow;
    double use = 0; ///< value over limit of what governs: 1 is just at the limit
    bool passes = false;
    std::optional<RunnerUp> runner_up; ///< absent where the maker set everything
    bool operator==(const PlateAnswer&) const = default;
};

inline constexpr double bow_limit_mm = 1.5; ///< the plate's side is the insert's hidden back (our guess)
inline constexpr double gap_limit_mm = 0.3; ///< flash of that thickness is trimmed off (our guess)
inline constexpr double gap_limit_gasket_mm = 0.5;
inline constexpr double stress_factor = 2.5;     ///< on the board's rupture (common practice)
inline constexpr double capacity_factor = 3;     ///< on a closure's mean ultimate (common practice)
inline constexpr double wall_bow_limit_mm = 0.5; ///< (our guess)

} // namespace drawercast::mold
