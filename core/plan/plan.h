// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "casting/answers.h"
#include "job/job.h"
#include "layout/check.h"
#include "layout/feel.h"
#include "layout/insert.h"
#include "layout/pocket.h"
#include "mold/plate_judge.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::stock {
struct DrawerStock; // stock/drawer_stock.h
}

namespace drawercast::plan {

/// The insert as cast and cooled.
struct InsertFigures {
    double area_mm2 = 0; ///< before pockets
    double thickness_mm = 0;
    double volume_mm3 = 0;
    bool operator==(const InsertFigures&) const = default;
};

/// Everything known of one drawer. What could not be worked out is absent, and a check says why.
struct DrawerPlan {
    std::string id;
    std::shared_ptr<const layout::Insert> insert; ///< null: insert-split
    std::vector<std::shared_ptr<const layout::PlacedPocket>>
        pockets; ///< in the job's order; those that have a form
    std::optional<InsertFigures> figures;
    std::optional<casting::Cavity> cavity;
    std::optional<casting::Dose> dose;
    std::optional<casting::Band> band;
    std::optional<casting::Pressure> pressure;
    std::optional<casting::Times> times;
    std::shared_ptr<const air::Answer> air;   ///< null until worked out
    std::shared_ptr<const mold::Plate> plate; ///< likewise
    std::shared_ptr<const mold::Plate> base;  ///< likewise; null where the plate does not hold either
    std::vector<layout::Check> checks;        ///< sorted; those left as is are marked and come last
};

struct StockPlan; // plan/stock_stage.h

struct Plan {
    std::vector<DrawerPlan> drawers;
    std::optional<casting::Purchase> purchase; ///< absent while a drawer has no dose or the foam no kits
    std::vector<layout::Check> checks;         ///< of the job as a whole (not placed, no cup)
    double a_ml = 0;                           ///< over all drawers
    double b_ml = 0;
    std::shared_ptr<const StockPlan> stock; ///< null until worked out
};

/// The answer of the drawer with that id; null where the plan has none.
const DrawerPlan* find_drawer(const Plan& plan, const std::string& id);
/// Null where none of that subject stands.
const layout::PlacedPocket* find_pocket(const DrawerPlan& drawer, const std::string& subject);

/// What the mold of the drawer with that id is made from; null where `stock` is, or has no mold of that
/// drawer.
const stock::DrawerStock* find_stock(const StockPlan* stock, const std::string& drawer);

/// Bitwise equality of every figure, pockets compared by value; of what to cut and buy the parts, tickets,
/// lines and price.
bool same(const Plan& a, const Plan& b);

/// How many of them must be mended and are not left as is.
int count_to_mend(const std::vector<layout::Check>& checks);

/// The same of all drawers and of the job as a whole.
int count_to_mend(const Plan& plan);

/// Whether any check not left as is must be mended.
bool anything_to_mend(const Plan& plan);

/// The whole answer for a job, from scratch: no clock, no files, no settings.
Plan compute(const job::Job& job);

/// The pattern board of one drawer; slower (unions), so made when a sheet is drawn. Absent where the cavity
/// is.
std::optional<casting::PatternBoard> pattern_board(const job::Job& job, const DrawerPlan& drawer);

/// How each pocket holds its object, as `drawer.pockets`; like the board made when it is asked for.
std::vector<layout::Feel> feel_of(const job::Job& job, const DrawerPlan& drawer);

} // namespace drawercast::plan
