// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/supplies.h"

namespace drawercast::stock {

namespace {

constexpr double mm2_per_m2 = 1e6;
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

std::vector<SupplyLine> supplies_of(const SuppliesIn& in) {
    const double area = in.sealed_mm2 / mm2_per_m2, ends = in.end_grain_mm2 / mm2_per_m2;
    const double coats = sealer_coats * area + end_grain_coats * ends;
    std::vector<SupplyLine> lines{
        {Supply::sealer, coats / sealer_m2_per_l, "L", sealer_m2_per_l, "m²/L", Rate::practice},
        {Supply::release, release_coats * area / release_m2_per_l, "L", release_m2_per_l, "m²/L",
         Rate::guess},
        {Supply::clay_length, in.clay_mm / 1000, "m", 0, "", Rate::counted},
        {Supply::clay_volume, in.clay_mm3 / 1000, "mL", 0, "", Rate::counted},
        {Supply::seal, in.bead_mm / 1000 * bead_ml_per_m, "mL", bead_ml_per_m, "mL/m", Rate::practice},
        {Supply::glue, in.glue_mm2 / mm2_per_m2 * glue_g_per_m2, "g", glue_g_per_m2, "g/m²", Rate::practice},
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

} // namespace drawercast::stock
