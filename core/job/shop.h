// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"

#include <optional>
#include <string>
#include <vector>

/// The workshop: its room, tools and what it has or can buy.
namespace drawercast::job {

struct Board {
    std::string name;
    double thickness_mm = 16;
    double elasticity_mpa = 2200;
    double poisson = 0.25;
    double rupture_mpa = 11;
    double specific_gravity = 0.605; ///< oven-dry
    double sheet_length_mm = 2440;
    double sheet_width_mm = 1220;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Board&) const = default;
};

struct Stiffener {
    std::string name;
    double width_mm = 45;
    double height_mm = 45; ///< standing on the plate
    double elasticity_mpa = 9000;
    double rupture_mpa = 30;
    double length_mm = 2400;
    double price = 0;
    Unknowns unknown;
    bool operator==(const Stiffener&) const = default;
};

enum class ClosureKind { screw, rod, clamp, strap };

struct Closure {
    std::string name;
    ClosureKind kind = ClosureKind::screw;
    double diameter_mm = 4;
    double length_mm = 50;
    double stiffness_n_mm = 1500;
    std::optional<double> capacity_n; ///< null: the screw formula
    std::optional<double> seconds;    ///< null: shop.seconds_per_closure
    double price = 0;
    std::optional<int> at_hand;
    Unknowns unknown;
    bool operator==(const Closure&) const = default;
};

struct Tube { ///< for round blocks
    std::string name;
    double outside_mm = 50; ///< diameter
    double wall_mm = 1.8;
    double length_mm = 2000;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Tube&) const = default;
};

/// What is used up beside wood and foam.
enum class Supply { sealer, release, clay, seal, glue, pigment, solvent, gloves, cups };

/// How a supply is sold, and what is left of it. Amounts in the unit its need is told in: L of sealer,
/// release and solvent; mL of clay, seal and pigment; g of glue; pairs of gloves; cups.
struct SupplyPack {
    Supply supply = Supply::sealer;
    double amount = 1;  ///< in one package
    double price = 0;   ///< of a package
    double at_hand = 0; ///< amount left, opened or not
    Unknowns unknown;
    bool operator==(const SupplyPack&) const = default;
};

struct Shop {
    double temperature_c = 23;
    double altitude_m = 0;
    int people = 1;
    int drivers = 1;
    double seconds_per_closure = 3;
    double pour_l_s = 0.1;
    std::optional<double> pour_s;
    double set_plate_s = 8;
    double container_ml = 19000;
    double stir_room = 1.0;
    std::optional<double> mixer_ml;
    std::optional<double> bucket_left_ml;
    double scale_step_g = 1; ///< what the scale shows
    double opens_h = 8;      ///< hands work from here, hours of the day
    double closes_h = 17;
    double hour_price = 0; ///< of an hour's work, in quotes
    double margin = 0;     ///< on top of the cost, as a share of it, in quotes
    double saw_step_mm = 0.5;
    double kerf_mm = 3.2;
    std::vector<double> drills_mm{2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8, 10};
    std::optional<std::string> start;
    std::vector<Board> boards;         ///< empty: the built-in catalog
    std::vector<Stiffener> stiffeners; ///< empty: the built-in catalog
    std::vector<Closure> closures;     ///< empty: the built-in catalog
    std::vector<Tube> tubes;           ///< empty: the usual drain pipes
    std::vector<SupplyPack> supplies;  ///< those whose packages are known
    Unknowns unknown;
    bool operator==(const Shop&) const = default;
};

} // namespace drawercast::job
