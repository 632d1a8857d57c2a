// SPDX-License-Identifier: GPL-3.0-or-later
// What the View and Help menus do, and what stands in the status line; the rest of the window is in
// main_window.cpp.
#include "base/units.h"
#include "job/edit.h"

#include "canvas/hit.h"
#include "panes/checks_pane.h"
#include "panes/left_pane.h"
#include "window/asking.h"
#include "window/help_texts.h"
#include "window/main_window.h"
#include "window/pane_frame.h"
#include "window/placement_pane.h"
#include "window/right_pane.h"
#include "window/sheet_area.h"
#include "window/situation.h"
#include "window/title_strip.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>

#include <array>

namespace drawercast::app {

namespace {

constexpr double zoom_step = 1.25;
constexpr double text_step = 1.1;

} // namespace

void MainWindow::connect_view() {
    auto& canvas = sheets_->canvas();
    for (const auto& sheet : sheet_specs())
        actions_.on(sheet.action, [this, id = sheet.id] {
            sheets_->show_sheet(id);
            refresh_actions();
        });
    actions_.on("view.next_drawer", [this] {
        const auto& drawers = document_.job().drawers;
        for (std::size_t i = 0; i < drawers.size(); ++i)
            if (drawers[i]->id == selection_.drawer())
                return selection_.choose_drawer(drawers[(i + 1) % drawers.size()]->id);
    });
    actions_.on("view.zoom_in", [&canvas] { canvas.zoom_by(zoom_step); });
    actions_.on("view.zoom_out", [&canvas] { canvas.zoom_by(1 / zoom_step); });
    actions_.on("view.fit", [&canvas] { canvas.fit(); });
    const auto look = [this, &canvas](const char* id, double turns, double apart) {
        actions_.on(id, [&canvas, turns, apart] {
            const auto now = canvas.look();
            canvas.set_look({now.turn_deg + turns * TurnTool::step_deg, now.apart + apart});
        });
    };
    constexpr double apart_step = 0.1;
    look("mold.turn_left", -1, 0);
    look("mold.turn_right", 1, 0);
    look("mold.apart", 0, apart_step);
    look("mold.together", 0, -apart_step);
    actions_.on("view.to_choice", [this, &canvas] {
        constexpr double around_mm = 20;
        if (const auto* plan = shown_plan(desk_))
            if (const auto box = box_of(*plan, selection_.pockets()); !box.empty())
                canvas.zoom_to(box.grown(around_mm));
    });
    actions_.on("view.to_check", [this] {
        if (const auto check = selection_.check()) go_to(*check);
    });
    actions_.on("place.measure", [this, &canvas] {
        canvas.set_measuring(!canvas.measuring());
        canvas.setFocus();
        refresh_actions();
    });
    actions_.on("view.grid", [this] { preferences_.set_grid_shown(!preferences_.grid_shown()); });
    actions_.on("view.snap", [this] { preferences_.set_snapping(!preferences_.snapping()); });
    actions_.on("view.left_pane", [this] { panes_->show_left(!panes_->left_shown()); });
    actions_.on("view.right_pane", [this] { panes_->show_right(!panes_->right_shown()); });
    actions_.on("objects.find", [this] {
        panes_->show_left(true);
        left_->find_field().setFocus();
        left_->find_field().selectAll();
    });
    actions_.on("place.typed", [this] {
        panes_->show_left(true);
        placement_->take_focus();
    });
    actions_.on("check.next", [this] { right_->checks().choose_next(); });
}

void MainWindow::say(const QString& sentence) {
    if (sentence.isEmpty()) return say_hint();
    sentence_->setText(sentence);
    hinting_ = false;
}

/// What can be begun with, until something else is said.
void MainWindow::say_hint() {
    const Situation s = situation_of(desk_, sheets_->canvas(), right_->checks().model());
    const bool to_place = s.drawer && s.plan_sheet && s.unplaced;
    sentence_->setText(!s.objects ? tr("Ready.")
                       : to_place ? tr("Drag objects from the list onto the drawer, or press Ctrl+Enter.")
                                  : QString());
    hinting_ = true;
}

void MainWindow::connect_units_and_looks() {
    const auto units = [this](const char* id, job::DisplayUnits to) {
        actions_.on(id, [this, to] {
            document_.commit(tr("Units"), job::in_units(document_.job(), to));
            refresh_actions();
        });
    };
    units("view.mm", job::DisplayUnits::mm);
    units("view.inch", job::DisplayUnits::inch);
    units("view.inch_32", job::DisplayUnits::inch_32);
    const auto looks = [this](const char* id, Preferences::Appearance to) {
        actions_.on(id, [this, to] {
            preferences_.set_appearance(to);
            refresh_actions();
        });
    };
    looks("view.system", Preferences::Appearance::system);
    looks("view.light", Preferences::Appearance::light);
    looks("view.dark", Preferences::Appearance::dark);
    looks("view.contrast_light", Preferences::Appearance::contrast_light);
    looks("view.contrast_dark", Preferences::Appearance::contrast_dark);
    const auto speaks = [this](const char* id, std::optional<language::Language> to) {
        actions_.on(id, [this, to] {
            preferences_.set_chosen_language(to);
            refresh_actions();
        });
    };
    speaks("view.language_system", std::nullopt);
    speaks("view.english", language::Language::english);
    speaks("view.german", language::Language::german);
    actions_.on("view.larger",
                [this] { preferences_.set_text_scale(preferences_.text_scale() * text_step); });
    actions_.on("view.smaller",
                [this] { preferences_.set_text_scale(preferences_.text_scale() / text_step); });
    actions_.on("view.usual", [this] { preferences_.set_text_scale(1); });

    auto& strip = sheets_->strip();
    strip.set_menu(TitleStrip::scale_cell,
                   menu_of(strip, actions_, {"view.fit", "view.zoom_in", "view.zoom_out", "view.to_choice"}));
    strip.set_menu(TitleStrip::snap_cell, menu_of(strip, actions_, {"view.snap"}));
    strip.set_menu(TitleStrip::unit_cell, menu_of(strip, actions_, {"view.mm", "view.inch", "view.inch_32"}));
    auto* grid = menu_of(strip, actions_, {"view.grid", ""});
    for (const double mm : std::array{1.0, 2.0, 5.0, 10.0, 20.0})
        connect(grid->addAction(tr("Every %1 mm").arg(mm)), &QAction::triggered, this, [this, mm] {
            preferences_.set_grid_mm(mm);
            preferences_.set_grid_shown(true);
        });
    const std::array inches{std::pair{tr("Every 1/8 in"), units::mm_per_inch / 8},
                            std::pair{tr("Every 1/4 in"), units::mm_per_inch / 4},
                            std::pair{tr("Every 1/2 in"), units::mm_per_inch / 2},
                            std::pair{tr("Every inch"), units::mm_per_inch}};
    for (const auto& [words, mm] : inches)
        connect(grid->addAction(words), &QAction::triggered, this, [this, step = mm] {
            preferences_.set_grid_mm(step);
            preferences_.set_grid_shown(true);
        });
    strip.set_menu(TitleStrip::grid_cell, grid);
}

void MainWindow::connect_help() {
    actions_.on("help.about", [this] { desk_.asking.tell(tr("About Drawercast"), about_html()); });
}

} // namespace drawercast::app
