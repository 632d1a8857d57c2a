// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/situation.h"

#include "arrange/drawer.h"
#include "job/edit.h"
#include "job/edit_vents.h"

#include "canvas/sheet_canvas.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "panes/checks_model.h"

#include <algorithm>

namespace drawercast::app {

Situation situation_of(const Desk& desk, const SheetCanvas& canvas, const ChecksModel& checks) {
    Situation s;
    const auto& job = desk.document.job();
    const auto* drawer = job::find_drawer(job, desk.selection.drawer());
    s.drawer = drawer != nullptr;
    s.plan_sheet = spec_of(canvas.sheet()).tool == SheetTool::arrange;
    s.build_up = spec_of(canvas.sheet()).tool == SheetTool::turn;
    s.other_drawers = job.drawers.size() > 1;
    s.object = job::find_object(job, desk.selection.object()) != nullptr;
    s.unplaced = arrange::not_placed_yet(job) > 0;
    s.loose = drawer != nullptr && std::any_of(drawer->pockets.begin(), drawer->pockets.end(),
                                               [](const auto& pocket) { return !pocket.locked; });
    s.objects = !job.objects.empty();
    s.drawer_pockets = drawer != nullptr && !drawer->pockets.empty();
    for (const auto& subject : desk.selection.pockets()) {
        const auto found = job::find_pocket(job, subject);
        if (found.pocket == nullptr || !s.plan_sheet) continue; // what is not seen is not changed
        ++s.pockets;
        s.free += found.pocket->locked ? 0 : 1;
        s.notches = !found.pocket->notches.empty();
    }
    s.vent_sheet = spec_of(canvas.sheet()).tool == SheetTool::vents && canvas.air() != nullptr;
    if (const auto vent = canvas.vent_chosen()) {
        s.vent = true;
        s.vent_kept = canvas.air()->vented.vents[*vent].why == air::VentFor::kept;
    }
    s.own_vents = drawer != nullptr && drawer->vents.has_value();
    s.can_undo = desk.document.undo_stack().canUndo();
    s.can_redo = desk.document.undo_stack().canRedo();
    s.checks = checks.rowCount() > 0;
    if (const auto& check = desk.selection.check()) {
        const int row = checks.row_of(*check);
        s.any_check = row >= 0;
        const auto index = checks.index(row, 0);
        const auto* now = checks.check(index);
        const bool of_drawer = now != nullptr && !checks.is_job_check(index);
        s.left_as_is = of_drawer && now->left_as_is;
        s.check = of_drawer && !now->left_as_is;
        s.look = of_drawer && !now->left_as_is && now->severity == layout::Severity::look;
    }
    return s;
}

void show_checked(Actions& actions, const Desk& desk, const SheetCanvas& canvas) {
    const auto check = [&](const char* id, bool on) { actions[id]->setChecked(on); };
    for (const auto& sheet : sheet_specs()) check(sheet.action, sheet.id == canvas.sheet());
    check("place.measure", canvas.measuring());
    const auto* drawer = job::find_drawer(desk.document.job(), desk.selection.drawer());
    check("vents.rest", drawer == nullptr || job::vents_automatic(*drawer));
    check("view.grid", desk.preferences.grid_shown());
    check("view.snap", desk.preferences.snapping());
    const auto units = desk.document.job().display_units;
    check("view.mm", units == job::DisplayUnits::mm);
    check("view.inch", units == job::DisplayUnits::inch);
    check("view.inch_32", units == job::DisplayUnits::inch_32);
    const auto looks = desk.preferences.appearance();
    check("view.system", looks == Preferences::Appearance::system);
    check("view.light", looks == Preferences::Appearance::light);
    check("view.dark", looks == Preferences::Appearance::dark);
    check("view.contrast_light", looks == Preferences::Appearance::contrast_light);
    check("view.contrast_dark", looks == Preferences::Appearance::contrast_dark);
    const auto language = desk.preferences.chosen_language();
    check("view.language_system", !language);
    check("view.english", language == language::Language::english);
    check("view.german", language == language::Language::german);
}

} // namespace drawercast::app
