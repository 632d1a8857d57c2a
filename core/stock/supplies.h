// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/drawer_stock.h"

#include <optional>
#include <vector>

/// What is used up beside wood and foam.
namespace drawercast::stock {

enum class Supply { sealer, release, clay_length, clay_volume, seal, glue, pigment, solvent, gloves, cups };
enum class Rate { counted, practice, guess }; ///< from the job itself, common practice, or our guess

/// A supply in the packages the shop buys it in.
struct Packages {
    double amount = 0;  ///< in one, in the line's unit
    double at_hand = 0; ///< amount left, no more than is needed
    int needed = 0;     ///< whole packages, those at hand too
    int buy = 0;
    double price = 0; ///< of what is bought
    bool operator==(const Packages&) const = default;
};

struct SupplyLine {
    Supply supply = Supply::sealer;
    double amount = 0;
    const char* unit = ""; ///< "L", "mL", "m", "g", "pairs", "pcs"
    double rate = 0;       ///< 0: counted
    const char* rate_unit = "";
    Rate source = Rate::counted;
    std::optional<Packages> packages = {}; ///< absent: the shop has not said how it is sold
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

/// One coat of it: the rates of supplies_of().
double sealer_coat_l(double mm2);
double end_grain_l(double mm2); ///< the two coats more
double release_coat_l(double mm2);

std::vector<SupplyLine> supplies_of(const SuppliesIn& in);

/// How many whole packages of `package` hold `amount`; both in the same unit, `package` > 0.
int packages_for(double amount, double package);

/// What of the job a line is bought as; the clay's length is no goods.
std::optional<job::Supply> sold_as(Supply supply);

/// Whether every cast needs it anew; the others are used up with the mold.
bool used_by_each_cast(Supply supply);

/// Says for each line the shop knows packages of how many are needed and bought.
void add_packages(std::vector<SupplyLine>& lines, const std::vector<job::SupplyPack>& known);

/// Of all packages bought.
double price_of(const std::vector<SupplyLine>& lines);

} // namespace drawercast::stock
