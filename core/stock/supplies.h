// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/drawer_stock.h"

#include <vector>

/// What is used up beside wood and foam.
namespace drawercast::stock {

enum class Supply { sealer, release, clay_length, clay_volume, seal, glue, pigment, solvent, gloves, cups };
enum class Rate { counted, practice, guess }; ///< from the job itself, common practice, or our guess

struct SupplyLine {
    Supply supply = Supply::sealer;
    double amount = 0;
    const char* unit = ""; ///< "L", "mL", "m", "g", "pairs", "pcs"
    double rate = 0;       ///< 0: counted
    const char* rate_unit = "";
    Rate source = Rate::counted;
};

struct SuppliesIn {
    double sealed_mm2 = 0;
    double end_grain_mm2 = 0; ///< of it, two coats more
    double clay_mm = 0;       ///< length of fillet
    double clay_mm3 = 0;
    double bead_mm = 0;
    double glue_mm2 = 0;
    double pigment_ml = 0;
    int batches = 0; ///< over all drawers
    int people = 1;
    int pours = 0; ///< drawers
};

std::vector<SupplyLine> supplies_of(const SuppliesIn& in);

} // namespace drawercast::stock
