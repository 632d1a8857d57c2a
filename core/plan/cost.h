// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "plan/run_sheet.h"

#include <optional>
#include <vector>

/// What a job's inserts cost, in the job's currency: what one mold of each drawer costs once, and what each
/// cast of them costs again.
namespace drawercast::plan {

struct Hours {
    double once = 0; ///< of building the molds, hours of hands, everybody's
    double each = 0; ///< of casting all drawers once
    bool operator==(const Hours&) const = default;
};
/// From the run sheet's minutes, which are our guess until a shop has its own.
Hours hours_of(const std::vector<runsheet::Task>& tasks, int people);

/// What is used up of one kind, in its own unit.
struct SupplyCost {
    double once = 0; ///< with the mold
    double each = 0; ///< with each cast
    double package = 1;
    double price = 0; ///< of a package
    bool operator==(const SupplyCost&) const = default;
};

/// What is paid for; without prices a part is 0 and said to be left out.
struct CostBasis {
    double wood = 0;     ///< whole sheets, bars and tubes as needed, those at hand too
    double closures = 0; ///< screws of the plates as needed; of rods, clamps and straps those to buy
    std::vector<SupplyCost> supplies; ///< those whose packages the shop has said
    Hours hours;
    int days = 0; ///< of the shop, until the first set is ready
    std::vector<job::Kit> kits;
    double mixed_ml = 0; ///< for one set
    double hour_price = 0;
    double margin = 0;
    bool foam_priced = false;
    bool wood_priced = false;
    int unpriced = 0; ///< kinds of wood, screws and closures that have none
    bool operator==(const CostBasis&) const = default;
};
/// Absent until the long answer is there, and while a drawer has no dose.
std::optional<CostBasis> cost_basis(const job::Job& job, const Plan& plan);

struct Cost {
    int sets = 1; ///< of all drawers
    double foam = 0;
    double wood = 0;
    double closures = 0;
    double supplies = 0;
    double hours = 0;
    double work = 0;
    double margin = 0; ///< its money
    double total = 0;
    double each() const { return total / sets; }
    bool operator==(const Cost&) const = default;
};
/// A run of `sets` ≥ 1 from one mold of each drawer. Foam is the cheapest whole set of kits that covers all
/// of it with the spare (casting/kits.h), charged as if none were on the shelf: what lies there was paid for.
/// Wood, closures and the hours of building once; hours of casting each time; then the margin on all of it.
/// Supplies in whole packages over the run; those whose packages the shop has not said are left out.
Cost cost_of(const CostBasis& basis, int sets);

} // namespace drawercast::plan
