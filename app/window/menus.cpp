// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/menus.h"

#include "canvas/sheet_table.h"
#include "language/spoken.h"
#include "window/actions.h"

#include <QMenu>
#include <QMenuBar>
#include <QToolBar>
#include <QToolButton>

namespace drawercast::app {

namespace {

using Ids = std::vector<std::string_view>;

using language::tr;

void fill(QMenu& menu, const Actions& actions, const Ids& ids) {
    for (const auto id : ids) {
        if (id.empty())
            menu.addSeparator();
        else
            menu.addAction(actions[id]);
    }
}

void with_words(QToolBar& row, const Actions& actions, const Ids& ids) {
    for (const auto id : ids)
        if (auto* button = qobject_cast<QToolButton*>(row.widgetForAction(actions[id]))) {
            button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
            button->setText(QString(actions[id]->iconText()).remove(QStringLiteral("…")));
        }
}

} // namespace

QMenu* menu_of(QWidget& parent, const Actions& actions, const Ids& ids) {
    auto* menu = new QMenu(&parent);
    fill(*menu, actions, ids);
    return menu;
}

Menus fill_menu_bar(QMenuBar& bar, const Actions& actions) {
    Menus menus;
    auto* job = bar.addMenu(tr("&Job"));
    fill(*job, actions, {"job.new", "job.open"});
    menus.recent = job->addMenu(tr("Op&en recent"));
    fill(*job, actions,
         {"job.demo",
          "job.demo_standard",
          "",
          "job.save",
          "job.save_as",
          "",
          "job.title",
          "job.revision",
          "job.foam",
          "job.minimums",
          "job.shop",
          "",
          "job.cost",
          "job.quick_quote",
          "",
          "job.print",
          "job.templates",
          "job.summary",
          "job.drawings",
          "job.cards",
          "job.object_sheets",
          "job.measuring_sheet",
          "job.photo_sheet",
          "job.lists",
          "",
          "job.quit"});

    fill(*bar.addMenu(tr("&Edit")), actions,
         {"edit.undo", "edit.redo", "", "edit.cut", "edit.copy", "edit.paste", "edit.duplicate",
          "edit.delete", "", "edit.select_all", "edit.select_listed", "", "edit.lock", "edit.unlock"});
    fill(*bar.addMenu(tr("&Objects")), actions,
         {"objects.add", "objects.standard", "objects.paste_list", "objects.photo", "objects.change",
          "objects.duplicate", "objects.delete", "", "objects.place", "objects.select", "objects.find", "",
          "drawers.add", "drawers.change", "drawers.delete"});

    auto* place = bar.addMenu(tr("&Place"));
    fill(*place, actions, {"place.turn", "place.turn_back", "place.turn_15", ""});
    auto* align = place->addMenu(tr("&Align"));
    fill(*align, actions,
         {"place.align_left", "place.align_right", "place.align_front", "place.align_back", "",
          "place.center_x", "place.center_y", "", "place.spread_x", "place.spread_y"});
    fill(*place, actions, {"place.walls_x",      "place.walls_y",
                           "place.grid",         "",
                           "place.typed",        "place.swap",
                           "place.replace",      "place.row",
                           "place.other_drawer", "",
                           "place.notch",        "place.notch_sizes",
                           "place.no_notch",     "",
                           "place.measure",      "",
                           "check.next",         "check.mend",
                           "check.leave",        "check.take_back",
                           "check.guide"});

    fill(
        *bar.addMenu(tr("A&rrange")), actions,
        {"arrange.unplaced", "arrange.unlocked", "", "arrange.drawers", "arrange.which", "", "arrange.tidy"});

    fill(*bar.addMenu(tr("&Mold")), actions,
         {"job.mold", "pour.depths", "", "vents.add", "vents.drill", "vents.rest", "vents.automatic", "",
          "mold.turn_left", "mold.turn_right", "mold.apart", "mold.together"});

    fill(*bar.addMenu(tr("Pour da&y")), actions,
         {"pour.cup", "pour.as_built", "", "pour.rehearse", "pour.day", "", "pour.as_cast"});

    auto* view = bar.addMenu(tr("&View"));
    for (const auto& sheet : sheet_specs()) view->addAction(actions[sheet.action]);
    fill(*view, actions,
         {"view.next_drawer", "", "view.zoom_in", "view.zoom_out", "view.fit", "view.to_choice",
          "view.to_check", "", "view.grid", "view.snap", "", "view.left_pane", "view.right_pane", ""});
    fill(*view->addMenu(tr("&Units")), actions, {"view.mm", "view.inch", "view.inch_32"});
    fill(*view->addMenu(tr("&Appearance")), actions,
         {"view.system", "view.light", "view.dark", "", "view.contrast_light", "view.contrast_dark"});
    fill(*view->addMenu(tr("&Language")), actions,
         {"view.language_system", "", "view.english", "view.german"});
    fill(*view->addMenu(tr("Text &size")), actions, {"view.larger", "view.smaller", "view.usual"});

    fill(*bar.addMenu(tr("&Help")), actions, {"help.guide", "help.keys", "help.cautions", "", "help.about"});

    menus.pocket = menu_of(bar, actions,
                           {"place.turn",
                            "place.typed",
                            "place.swap",
                            "place.replace",
                            "",
                            "edit.lock",
                            "edit.unlock",
                            "",
                            "place.notch",
                            "place.notch_sizes",
                            "place.no_notch",
                            "",
                            "edit.cut",
                            "edit.copy",
                            "edit.paste",
                            "edit.duplicate",
                            "place.row",
                            "place.other_drawer",
                            "",
                            "objects.change",
                            "objects.select",
                            "",
                            "edit.delete"});
    menus.vent = menu_of(bar, actions,
                         {"edit.lock", "edit.unlock", "vents.drill", "edit.delete", "", "vents.add",
                          "vents.rest", "vents.automatic"});
    menus.object = menu_of(bar, actions,
                           {"objects.place", "objects.select", "objects.change", "", "edit.copy",
                            "edit.paste", "objects.duplicate", "", "objects.delete"});
    menus.sheet = menu_of(bar, actions,
                          {"edit.paste", "edit.select_all", "edit.select_listed", "", "objects.add",
                           "objects.place", "arrange.unplaced", "arrange.unlocked", "", "place.measure",
                           "view.fit", "view.grid", "view.snap"});
    menus.check = menu_of(bar, actions,
                          {"check.mend", "check.leave", "check.take_back", "", "view.to_check", "check.next",
                           "", "check.guide"});
    menus.drawer = menu_of(bar, actions, {"drawers.change", "drawers.add", "", "drawers.delete"});
    return menus;
}

void fill_tool_row(QToolBar& row, const Actions& actions) {
    const Ids left{"job.new",
                   "job.open",
                   "job.save",
                   "",
                   "edit.undo",
                   "edit.redo",
                   "",
                   "objects.place",
                   "place.notch",
                   "place.turn",
                   "place.align_left",
                   "place.align_front",
                   "place.walls_x",
                   "place.row",
                   "edit.lock",
                   "edit.duplicate",
                   "edit.delete",
                   "",
                   "place.measure",
                   "view.snap",
                   "view.grid",
                   "view.fit",
                   "check.next"};
    for (const auto id : left) {
        if (id.empty())
            row.addSeparator();
        else
            row.addAction(actions[id]);
    }
    auto* room = new QWidget(&row);
    room->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    row.addWidget(room);
    row.addAction(actions["job.templates"]);
    row.addAction(actions["job.summary"]);
    actions["objects.place"]->setIconText(tr("Place"));
    actions["place.notch"]->setIconText(tr("Notch"));
    actions["place.turn"]->setIconText(tr("Turn"));
    actions["edit.lock"]->setIconText(tr("Lock"));
    actions["job.templates"]->setIconText(tr("Templates"));
    actions["job.summary"]->setIconText(tr("Summary"));
    with_words(row, actions,
               {"objects.place", "place.notch", "place.turn", "edit.lock", "job.templates", "job.summary"});
}

} // namespace drawercast::app
