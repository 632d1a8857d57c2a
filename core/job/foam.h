// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"

#include <optional>
#include <string>
#include <vector>

/// The foam by its data sheet, and the test cups poured of it.
namespace drawercast::job {

enum class Firmness { firm, medium, soft };

struct Kit {
    std::string name;
    double volume_ml = 1900;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Kit&) const = default;
};

struct Cup { ///< test cup: straight-sided, risen measured from its floor
    bool use = false;
    double diameter_mm = 80;
    double liquid_g = 100;
    double risen_mm = 100;
    double start_s = 50;
    double half_s = 90;
    double full_s = 180;
    double parts_c = 23;
    double room_c = 23;
    Unknowns unknown;
    bool operator==(const Cup&) const = default;
};

struct Foam {
    std::string name = "foam";
    double expansion = 6; ///< free-rise volume over liquid volume at reference_c and 101.325 kPa
    double reference_c = 23;
    double ratio_a = 1; ///< by volume
    double ratio_b = 1;
    double density_a_g_ml = 1.20;
    double density_b_g_ml = 1.02;
    std::optional<double> overpack; ///< null: "auto"
    double mix_s = 20;
    double pot_life_s = 50;
    double rise_s = 180;
    double demold_min = 120;
    double shrinkage = 0.004;
    double pigment_of_b = 0.02;
    double stress25_kpa = 12;
    double stress40_kpa = 22;
    double viscosity_pa_s = 200;
    std::optional<double> activation_kj_mol;
    double mold_hotter_k = 10;
    Firmness firmness = Firmness::firm;
    bool crush = false;
    std::vector<Kit> kits;
    std::optional<Cup> cup;
    std::vector<Cup> cups; ///< further ones of the day; those in use count together with `cup`
    Unknowns unknown;
    bool operator==(const Foam&) const = default;
};

} // namespace drawercast::job
