// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"
#include "job/store.h"
#include "job/write.h"

#include "app_forms/words_fit.h"
#include "app_window/hand.h"
#include "app_window/scripted.h"
#include "canvas/sheet_table.h"
#include "language/spoken.h"
#include "panes/checks_model.h"
#include "window/appearance.h"
#include "window/program.h"

#include <QMenu>
#include <QMenuBar>
#include <QTest>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using language::Language;

/// A drawer with a pocket that reaches out of it.
job::Job one_outside() { return test::square_pockets({{10, 150}}); }

/// The program with a saved job and a change on top of it.
struct Running {
    bool application_first = test::Desktop::ready();
    QTemporaryDir folder;
    Preferences preferences{folder.filePath("settings.ini")};
    test::Scripted asking{folder.path()};
    bool english = (preferences.set_chosen_language(Language::english), true);
    Program program{preferences, folder.filePath("unsaved"), &asking};
    QString path = folder.filePath("one.drawercast.json");

    Running() {
        EXPECT_TRUE(job::save_job(one_outside(), path.toStdString()).has_value());
        window().resize(1366, 740);
        window().show();
        EXPECT_TRUE(window().job_acts().open(path));
        auto changed = document().job();
        changed.title = "Crew B";
        document().commit("Title", std::move(changed));
    }
    MainWindow& window() { return program.window(); }
    Document& document() { return window().document(); }
    QString first_menu() { return window().menuBar()->actions().front()->text(); }
    void choose(const char* action) {
        window().actions()[action]->trigger();
        const auto changed = [&, before = first_menu()] { return first_menu() != before; };
        EXPECT_TRUE(QTest::qWaitFor(changed));
    }
};

TEST(Languages, the_menu_changes_them_at_once_and_the_work_stays) {
    Running running;
    const auto job = running.document().job();
    running.window().sheets().show_sheet(SheetId::pattern_board);
    running.window().selection().choose_pockets({"i1#1"});
    running.choose("view.german");
    EXPECT_EQ(running.first_menu(), "&Auftrag");
    EXPECT_TRUE(running.window().isVisible());
    EXPECT_EQ(running.document().job(), job);
    EXPECT_EQ(running.document().path(), running.path);
    EXPECT_TRUE(running.document().unsaved());
    EXPECT_EQ(running.window().sheets().shown(), SheetId::pattern_board);
    EXPECT_EQ(running.window().selection().pockets(), job::Subjects{"i1#1"});
    EXPECT_TRUE(running.window().actions()["view.german"]->isChecked());
    const ChecksModel checks(running.document(), running.window().selection());
    QString said;
    for (int row = 0; row < checks.rowCount(); ++row)
        said += checks.index(row, 0).data(Qt::AccessibleTextRole).toString() + '\n';
    EXPECT_TRUE(said.contains("Mangel")) << said.toStdString();

    running.window().actions()["edit.undo"]->trigger();
    EXPECT_FALSE(running.document().unsaved()) << "undo reaches back over the change of language";
    running.window().actions()["edit.redo"]->trigger();
    running.window().actions()["job.save"]->trigger();
    EXPECT_EQ(job::load_job(running.path.toStdString())->title, "Crew B");
    EXPECT_EQ(running.asking.asked, 0) << "its own file, saved without a question";

    running.choose("view.english");
    EXPECT_EQ(running.first_menu(), "&Job");
    EXPECT_EQ(Preferences(running.folder.filePath("settings.ini")).chosen_language(), Language::english);
}

TEST(Languages, the_file_is_the_same_in_each) {
    Running running;
    const std::string english = job::write_job(running.document().job());
    running.choose("view.german");
    EXPECT_EQ(job::write_job(running.document().job()), english);
    running.window().selection().choose_pockets({"i1#1"});
    running.window().actions()["place.turn"]->trigger();
    EXPECT_NE(job::write_job(running.document().job()), english);
    running.window().actions()["edit.undo"]->trigger();
    EXPECT_EQ(job::write_job(running.document().job()), english);
}

TEST(Languages, keys_of_menus_lead_to_one_place_in_each) {
    test::application();
    for (const auto spoken : {Language::english, Language::german}) {
        const language::Spoken held(spoken);
        test::Desktop desk;
        const auto expect_unique = [&](const QString& menu, const QList<QAction*>& actions) {
            QStringList texts;
            for (const auto* action : actions) texts << action->text();
            EXPECT_EQ(test::clashes(texts).join(" | ").toStdString(), "")
                << menu.toStdString() << ", " << language::code_of(spoken).toStdString();
        };
        expect_unique("menu bar", desk.window.menuBar()->actions());
        const auto menus = desk.window.findChildren<QMenu*>();
        EXPECT_GT(menus.size(), 15);
        for (const auto* menu : menus) expect_unique(menu->title(), menu->actions());
    }
}

TEST(Languages, nothing_is_clipped_in_german_on_a_small_screen) {
    test::application();
    const language::Spoken german(Language::german);
    test::Desktop desk;
    wear(theme::light_theme(), 1);
    desk.window.document().replace(one_outside(), {}, true);
    QStringList clipped;
    const auto nothing_clipped = [&] {
        clipped = test::clipped_words(desk.window);
        return clipped.isEmpty();
    };
    for (const int width : {1366, 1024}) {
        desk.window.resize(width, 728);
        for (const auto& sheet : sheet_specs()) {
            desk.window.sheets().show_sheet(sheet.id);
            EXPECT_TRUE(QTest::qWaitFor(nothing_clipped, 3000))
                << width << ", " << sheet.action << ": " << clipped.join(" | ").toStdString();
        }
    }
}

} // namespace
} // namespace drawercast::app
