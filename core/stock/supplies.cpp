// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/supplies.h"

#include "base/units.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace drawercast::stock {

namespace {

constexpr double ml_per_l = 1000;
constexpr double sealer_coats = 3;        // common practice
constexpr double end_grain_coats = 2;     // more, common practice
constexpr double sealer_m2_per_l = 10;    // a coat of varnish covers 8 to 12 (common practice)
constexpr double release_coats = 2;       // common practice
constexpr double release_m2_per_l = 20;   // our guess: thin, wiped or sprayed
constexpr double bead_ml_per_m = 12.6;    // a bead of 4 mm: π·2²
constexpr double glue_g_per_m2 = 150;     // wood glue, one side (common practice)
constexpr double solvent_ml_a_pour = 250; // our guess
constexpr double gloves_a_person = 2;     // pairs for each pour, our guess
constexpr double cups_a_batch = 3;        // A, B and the one they are mixed in

} // namespace

double sealer_coat_l(double mm2) { return mm2 / units::mm2_per_m2 / sealer_m2_per_l; }
double end_grain_l(double mm2) { return end_grain_coats * sealer_coat_l(mm2); }
double release_coat_l(double mm2) { return mm2 / units::mm2_per_m2 / release_m2_per_l; }

std::vector<SupplyLine> supplies_of(const SuppliesIn& in) {
    std::vector<SupplyLine> lines{
        {Supply::sealer, sealer_coats * sealer_coat_l(in.sealed_mm2) + end_grain_l(in.end_grain_mm2), "L",
         sealer_m2_per_l, "m²/L", Rate::practice},
        {Supply::release, release_coats * release_coat_l(in.sealed_mm2), "L", release_m2_per_l, "m²/L",
         Rate::guess},
        {Supply::clay_length, in.clay_mm / 1000, "m", 0, "", Rate::counted},
        {Supply::clay_volume, in.clay_mm3 / 1000, "mL", 0, "", Rate::counted},
        {Supply::seal, in.bead_mm / 1000 * bead_ml_per_m, "mL", bead_ml_per_m, "mL/m", Rate::practice},
        {Supply::glue, in.glue_mm2 / units::mm2_per_m2 * glue_g_per_m2, "g", glue_g_per_m2, "g/m²",
         Rate::practice},
    };
    if (in.pigment_ml > 0) lines.push_back({Supply::pigment, in.pigment_ml, "mL", 0, "", Rate::counted});
    lines.push_back({Supply::solvent, in.pours * solvent_ml_a_pour / ml_per_l, "L",
                     solvent_ml_a_pour / ml_per_l, "L/pour", Rate::guess});
    lines.push_back({Supply::gloves, in.pours * in.people * gloves_a_person, "pairs", gloves_a_person,
                     "a person and pour", Rate::guess});
    lines.push_back(
        {Supply::cups, in.batches * cups_a_batch, "pcs", cups_a_batch, "a batch", Rate::practice});
    return lines;
}

int packages_for(double amount, double package) {
    return static_cast<int>(std::ceil(amount / package - 1e-9));
}

std::optional<job::Supply> sold_as(Supply supply) {
    switch (supply) {
    case Supply::sealer:
        return job::Supply::sealer;
    case Supply::release:
        return job::Supply::release;
    case Supply::clay_length:
        return std::nullopt;
    case Supply::clay_volume:
        return job::Supply::clay;
    case Supply::seal:
        return job::Supply::seal;
    case Supply::glue:
        return job::Supply::glue;
    case Supply::pigment:
        return job::Supply::pigment;
    case Supply::solvent:
        return job::Supply::solvent;
    case Supply::gloves:
        return job::Supply::gloves;
    case Supply::cups:
        return job::Supply::cups;
    }
    return std::nullopt;
}

bool used_by_each_cast(Supply supply) {
    switch (supply) {
    case Supply::release:
    case Supply::pigment:
    case Supply::solvent:
    case Supply::gloves:
    case Supply::cups:
        return true;
    case Supply::sealer:
    case Supply::clay_length:
    case Supply::clay_volume:
    case Supply::seal:
    case Supply::glue:
        return false;
    }
    return false;
}

void add_packages(std::vector<SupplyLine>& lines, const std::vector<job::SupplyPack>& known) {
    for (SupplyLine& line : lines) {
        const auto sold = sold_as(line.supply);
        const auto pack = std::find_if(known.begin(), known.end(),
                                       [&](const job::SupplyPack& one) { return one.supply == sold; });
        if (pack == known.end()) continue;
        Packages packages;
        packages.amount = pack->amount;
        packages.at_hand = std::min(pack->at_hand, line.amount);
        packages.needed = packages_for(line.amount, pack->amount);
        packages.buy = packages_for(line.amount - packages.at_hand, pack->amount);
        packages.price = packages.buy * pack->price;
        line.packages = packages;
    }
}

double price_of(const std::vector<SupplyLine>& lines) {
    return std::accumulate(lines.begin(), lines.end(), 0.0, [](double sum, const SupplyLine& line) {
        return sum + (line.packages ? line.packages->price : 0);
    });
}

} // namespace drawercast::stock
