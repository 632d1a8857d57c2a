// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "job/job.h"
#include "plan/plan.h"

#include "sheets/build_up.h"
#include "sheets/drawer_plan.h"
#include "sheets/marks.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

/// The sheets of the window. Another one is another id and another row of the table in sheet_table.cpp: tabs,
/// menu, keys, badges and title strip follow.
namespace drawercast::app {

enum class SheetId { drawer_plan, pattern_board, pressure_plate, air_map, box_and_cuts, build_up, run_sheet };

/// What the hand does on a sheet.
enum class SheetTool {
    none,
    arrange, ///< pockets are placed on it
    vents,   ///< vents are
    turn,    ///< it is a picture that can be turned and taken apart
};

/// From where a sheet is seen.
enum class Seen { drawer, mold, bench, put_together, days };

/// What a sheet draws itself from.
struct SheetIn {
    const job::Job& job;
    const plan::Plan& plan;
    const job::Drawer& drawer;
    const plan::DrawerPlan& drawer_plan;
    /// Worked out when first asked for.
    std::function<const std::optional<casting::PatternBoard>&()> board;
    sheets::Zones zones = sheets::Zones::none;
    /// Likewise: what is seen of the mold from where it is looked at.
    std::function<const std::optional<sheets::SeenMold>&()> mold;
    double px_per_mm = 1; ///< what names beside a picture keep their distance by
};

/// A sheet's marks, what of it must be seen, and the room its words take.
struct Drawn {
    std::vector<sheets::Mark> marks;
    shape::Box area;
    shape::Vec lower_px;
    shape::Vec upper_px;
};

struct SheetSpec {
    SheetId id;
    const char* action; ///< in the View menu: "view.plan"
    const char* text;   ///< its menu text, in the context "Actions"
    const char* icon;
    const char* key;
    const char* name;       ///< in the context "Sheets", as all words below
    const char* short_name; ///< where tabs have little room
    Seen seen;
    SheetTool tool;
    bool slow; ///< drawn from the answer that takes seconds: of an older job while that is worked out
    const char* tip;
    const char* missing; ///< said where there is nothing to draw
    std::optional<Drawn> (*draw)(const SheetIn&);
};

const std::vector<SheetSpec>& sheet_specs();  ///< in the order of the tabs
const SheetSpec& spec_of(SheetId id);         ///< its row
SheetId sheet_of(const layout::Check& check); ///< where the check is to be seen
QString sheet_words(const char* words);       ///< translated
QString seen_words(Seen seen);                ///< "Mold, MIRRORED"

} // namespace drawercast::app
