// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/sheet_table.h"

#include "base/demand.h"
#include "plan/run_sheet.h"
#include "plan/stock_stage.h"

#include "language/spoken.h"
#include "sheets/box_and_cuts.h"
#include "sheets/pattern_board.h"
#include "sheets/pressure_plate.h"
#include "sheets/run_bars.h"

#include <QCoreApplication>

#include <algorithm>

namespace drawercast::app {

namespace {

template <class Frame>
Drawn drawn(sheets::Sheet<Frame> sheet) {
    return {std::move(sheet.marks), sheet.area, sheet.lower_room_px, sheet.upper_room_px};
}

/// Checks are drawn over it, layer by layer: they are left out here.
std::optional<Drawn> draw_plan(const SheetIn& in) {
    auto sheet = drawn(sheets::drawer_plan(in.job, in.drawer, in.drawer_plan, sheets::Keys::none, in.zones));
    std::erase_if(sheet.marks, [](const sheets::Mark& mark) { // the title strip has the legend
        return mark.layer == sheets::Layer::live || std::holds_alternative<sheets::LegendMark>(mark.kind);
    });
    return sheet;
}

std::optional<Drawn> draw_board(const SheetIn& in) {
    const auto& board = in.board();
    if (!board) return std::nullopt;
    const auto& air = in.drawer_plan.air; // the pour map is there once it is worked out
    auto sheet = air ? sheets::pour_board(in.job, *board, air->model->map().pour)
                     : sheets::pattern_board(in.job, *board, sheets::Finish::washed);
    if (air) sheets::add_board_checks(sheet, in.job, in.drawer_plan.checks);
    return drawn(std::move(sheet));
}

std::optional<Drawn> draw_plate_by(const SheetIn& in, sheets::PlateGround ground) {
    if (!in.drawer_plan.insert || !in.drawer_plan.plate) return std::nullopt;
    auto sheet = drawn(sheets::pressure_plate(in.job, in.drawer_plan, sheets::Finish::washed, ground));
    if (sheet.marks.empty() || sheet.area.empty()) return std::nullopt;
    return sheet;
}

std::optional<Drawn> draw_plate(const SheetIn& in) { return draw_plate_by(in, sheets::PlateGround::lift); }

std::optional<Drawn> draw_air(const SheetIn& in) {
    if (!in.drawer_plan.air || !in.drawer_plan.air->model) return std::nullopt;
    return draw_plate_by(in, sheets::PlateGround::arrival);
}

std::optional<Drawn> draw_cuts(const SheetIn& in) {
    if (!in.plan.stock) return std::nullopt;
    auto sheet = drawn(sheets::box_and_cuts(in.job, *in.plan.stock, in.drawer.id));
    if (sheet.marks.empty() || sheet.area.empty()) return std::nullopt;
    return sheet;
}

std::optional<Drawn> draw_build_up(const SheetIn& in) {
    const auto& mold = in.mold();
    if (!mold) return std::nullopt;
    return drawn(sheets::build_up(*mold, in.px_per_mm));
}

std::optional<Drawn> draw_run(const SheetIn& in) {
    constexpr double width_mm = 470;
    constexpr sheets::RunRoom room{190, 7.6}; // words are larger there than on paper
    auto sheet = drawn(sheets::run_bars(plan::run_sheet(in.job, in.plan), in.job, width_mm, room));
    if (sheet.marks.empty()) return std::nullopt;
    return sheet;
}

} // namespace

#define TEXT(words) QT_TRANSLATE_NOOP("Sheets", words)

const std::vector<SheetSpec>& sheet_specs() {
    static const std::vector<SheetSpec> specs{
        {SheetId::drawer_plan, "view.plan", QT_TRANSLATE_NOOP("Actions", "&Drawer plan"), "sign-drawer",
         "Ctrl+1", TEXT("Drawer plan"), TEXT("Plan"), Seen::drawer, SheetTool::arrange, false,
         TEXT("The insert as one looks into the drawer"), TEXT("This drawer has no insert."), draw_plan},
        {SheetId::pattern_board, "view.board", QT_TRANSLATE_NOOP("Actions", "Pattern b&oard"), "sign-mold",
         "Ctrl+2", TEXT("Pattern board"), TEXT("Board"), Seen::mold, SheetTool::none, false,
         TEXT("Seen in the mold: mirrored left to right, enlarged by the shrinkage"),
         TEXT("There is no mold yet: it needs pockets that can be made."), draw_board},
        {SheetId::pressure_plate, "view.plate", QT_TRANSLATE_NOOP("Actions", "P&ressure plate"), "plate",
         "Ctrl+3", TEXT("Pressure plate"), TEXT("Plate"), Seen::mold, SheetTool::vents, true,
         TEXT("How far the plate lifts, what holds it and in which order; mirrored as the mold is"),
         TEXT("There is no plate yet: it needs a mold and a dose."), draw_plate},
        {SheetId::air_map, "view.air", QT_TRANSLATE_NOOP("Actions", "&Where air stays"), "air", "Ctrl+4",
         TEXT("Where air stays"), TEXT("Air"), Seen::mold, SheetTool::vents, true,
         TEXT(
             "How the foam arrives, where air stays, and the vents that let it out; mirrored as the mold is"),
         TEXT("Where air stays can’t be told yet: it needs a mold and a dose."), draw_air},
        {SheetId::box_and_cuts, "view.cuts", QT_TRANSLATE_NOOP("Actions", "&Box and cuts"), "cut-sheet",
         "Ctrl+5", TEXT("Box and cuts"), TEXT("Cuts"), Seen::bench, SheetTool::none, true,
         TEXT("The mold’s box, and every sheet and length of the job with its cuts in order"),
         TEXT("There is nothing to cut yet: it needs a mold and a dose."), draw_cuts},
        {SheetId::build_up, "view.build_up", QT_TRANSLATE_NOOP("Actions", "Build-u&p"), "build-up", "Ctrl+6",
         TEXT("Build-up"), TEXT("Build-up"), Seen::put_together, SheetTool::turn, true,
         TEXT("The mold put together, a quarter cut away: turn it, take it apart"),
         TEXT("There is no mold yet: it needs pockets that can be made."), draw_build_up},
        {SheetId::run_sheet, "view.run", QT_TRANSLATE_NOOP("Actions", "Run s&heet"), "run-sheet", "Ctrl+7",
         TEXT("Run sheet"), TEXT("Steps"), Seen::days, SheetTool::none, true,
         TEXT("What is done when, for all drawers: dark while hands are on, open while it is left alone, "
              "black where it can’t wait; a flag stands before what has conditions"),
         TEXT("There is nothing to do yet: it needs a mold and a dose."), draw_run},
    };
    return specs;
}

#undef TEXT

const SheetSpec& spec_of(SheetId id) {
    const auto& specs = sheet_specs();
    const auto at = std::find_if(specs.begin(), specs.end(), [&](const auto& s) { return s.id == id; });
    DRAWERCAST_DEMAND(at != specs.end(), "a row for each sheet");
    return *at;
}

SheetId sheet_of(const layout::Check& check) {
    using layout::Code;
    switch (check.code) { // all of them: the next one has to be thought about here
    case Code::stock_short:
    case Code::cut_small:
    case Code::wall_bow:
    case Code::wall_stress:
    case Code::base_bow:
    case Code::base_gap:
    case Code::base_stress:
    case Code::base_pull:
        return SheetId::box_and_cuts;
    case Code::plate_bow:
    case Code::plate_gap:
    case Code::plate_stress:
    case Code::screw_pull:
    case Code::screw_short:
    case Code::rod_short:
    case Code::drill_none:
    case Code::board_thin:
    case Code::closures_few:
    case Code::closure_none:
    case Code::head_unchecked:
    case Code::close_late:
        return SheetId::pressure_plate;
    case Code::wall_thin:
    case Code::edge_thin:
    case Code::floor_thin:
    case Code::overlap:
    case Code::outside:
    case Code::too_high:
    case Code::notch_apart:
    case Code::fit_vanishes:
    case Code::volume_doubted:
    case Code::cup_unusable:
    case Code::cup_far:
    case Code::insert_split:
    case Code::obstructed:
    case Code::overload:
    case Code::foot_pressure:
    case Code::not_placed:
    case Code::no_cup:
    case Code::short_if_low:
    case Code::hard_if_high:
    case Code::too_many_batches:
    case Code::dose_altitude:
    case Code::pour_late:
    case Code::dose_refused:
    case Code::geometry:
    case Code::air_pocket_unvented:
    case Code::vent_on_stiffener:
    case Code::vent_meat:
    case Code::vent_outside:
    case Code::squeeze_out:
    case Code::floor_slow:
    case Code::slot_narrow:
    case Code::channel_shut:
    case Code::pours_over:
    case Code::pour_outside:
    case Code::cup_warmth:
        break;
    }
    if (sheets::lies_on_board(check)) return SheetId::pattern_board;
    return check.frame == layout::CheckFrame::mold ? SheetId::air_map : SheetId::drawer_plan;
}

QString sheet_words(const char* words) { return QCoreApplication::translate("Sheets", words); }

QString seen_words(Seen seen) {
    switch (seen) {
    case Seen::mold:
        return sheet_words(frame_words(sheets::Sheet<shape::InMold>()).data());
    case Seen::bench:
        return sheet_words(frame_words(sheets::Sheet<sheets::OnBench>()).data());
    case Seen::put_together:
        return language::tr("Mold, put together");
    case Seen::days:
        return language::tr("Shop’s days");
    case Seen::drawer:
        break;
    }
    return sheet_words(frame_words(sheets::Sheet<shape::InDrawer>()).data());
}

} // namespace drawercast::app
