// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/store.h"

#include "app_window/scripted.h"
#include "window/file_claim.h"

#include <QDir>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QTest>
#include <QUrl>
#include <gtest/gtest.h>

#include <memory>

namespace drawercast::test {

namespace {

job::Job titled(const std::string& title) {
    auto job = job::new_job({});
    job.title = title;
    return job;
}

std::string write(const QTemporaryDir& folder, const char* name, const job::Job& job) {
    const std::string path = folder.filePath(name).toStdString();
    EXPECT_TRUE(job::save_job(job, path).has_value());
    return path;
}

/// Of work that is not saved, in the folder where it outlives the program.
qsizetype kept_copies(const Desktop& desk) {
    return QDir(desk.folder.filePath("unsaved")).entryList({"*.unsaved"}, QDir::Files).size();
}

} // namespace

TEST(Files, a_job_dropped_on_the_window_is_opened) {
    Desktop desk;
    const auto path = write(desk.folder, "dropped.drawercast.json", titled("Dropped"));
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(QString::fromStdString(path))});
    QDragEnterEvent enter({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&desk.window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&desk.window, &drop);
    QApplication::processEvents();
    EXPECT_EQ(desk.window.document().job().title, "Dropped");
}

TEST(Files, a_change_by_another_program_is_asked_about) {
    Desktop desk;
    const auto path = write(desk.folder, "shared.drawercast.json", titled("One"));
    ASSERT_TRUE(desk.window.job_acts().open(QString::fromStdString(path)));
    desk.asking.says_yes = false;
    write(desk.folder, "shared.drawercast.json", titled("Two"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.asking.asked == 1; }, 5000));
    EXPECT_EQ(desk.window.document().job().title, "One");
    EXPECT_TRUE(desk.window.document().unsaved()) << "what was kept is on no disk: closing must ask";

    desk.asking.says_yes = true;
    write(desk.folder, "shared.drawercast.json", titled("Three"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.window.document().job().title == "Three"; }, 5000));
    EXPECT_FALSE(desk.window.document().unsaved());
}

TEST(Files, a_change_by_another_program_waits_for_an_open_dialog) {
    Desktop desk;
    const auto path = write(desk.folder, "shared.drawercast.json", titled("One"));
    ASSERT_TRUE(desk.window.job_acts().open(QString::fromStdString(path)));
    QDialog dialog(&desk.window);
    dialog.setModal(true);
    dialog.show();
    write(desk.folder, "shared.drawercast.json", titled("Two"));
    QTest::qWait(900);
    EXPECT_EQ(desk.asking.asked, 0);
    EXPECT_EQ(desk.window.document().job().title, "One");
    dialog.close();
    EXPECT_TRUE(QTest::qWaitFor([&] { return desk.window.document().job().title == "Two"; }, 5000));
}

TEST(Files, work_thrown_away_is_kept_until_another_job_is_open) {
    Desktop desk;
    const auto kept = [&] { return kept_copies(desk); };
    desk.window.document().commit("Title", titled("Mine"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept() == 1; }, 20000));
    desk.asking.unsaved = app::Asking::Unsaved::discard;
    EXPECT_FALSE(desk.window.job_acts().open(desk.folder.filePath("there is none.drawercast.json")));
    EXPECT_EQ(desk.window.document().job().title, "Mine");
    EXPECT_EQ(kept(), 1) << "the job stayed, and so does what is kept of it";
    const auto other = write(desk.folder, "other.drawercast.json", titled("Other"));
    EXPECT_TRUE(desk.window.job_acts().open(QString::fromStdString(other)));
    EXPECT_EQ(kept(), 0);
}

TEST(Files, work_thrown_away_as_the_window_closes_is_not_offered_again) {
    Desktop desk;
    desk.window.document().commit("Title", titled("Mine"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept_copies(desk) == 1; }, 20000));
    desk.asking.unsaved = app::Asking::Unsaved::cancel;
    EXPECT_FALSE(desk.window.close());
    EXPECT_EQ(kept_copies(desk), 1);
    desk.asking.unsaved = app::Asking::Unsaved::discard;
    EXPECT_TRUE(desk.window.close());
    EXPECT_EQ(kept_copies(desk), 0);
}

TEST(Files, a_window_that_is_made_anew_keeps_what_is_not_saved) {
    std::unique_ptr<app::OpenJob> open; // outlives the window it is taken from
    Desktop desk;
    desk.window.document().commit("Title", titled("Mine"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept_copies(desk) == 1; }, 20000));
    open = desk.window.hand_over();
    EXPECT_EQ(kept_copies(desk), 1);
}

TEST(Files, our_own_save_asks_nothing) {
    Desktop desk;
    const auto path = write(desk.folder, "own.drawercast.json", titled("One"));
    ASSERT_TRUE(desk.window.job_acts().open(QString::fromStdString(path)));
    desk.window.document().commit("Title", titled("Mine"));
    desk.window.actions()["job.save"]->trigger();
    QTest::qWait(700);
    EXPECT_EQ(desk.asking.asked, 0);
    EXPECT_EQ(desk.window.document().job().title, "Mine");
}

TEST(Files, a_second_window_on_a_file_gets_a_copy_or_nothing) {
    Desktop desk;
    const auto path = QString::fromStdString(write(desk.folder, "both.drawercast.json", titled("Both")));
    ASSERT_TRUE(desk.window.job_acts().open(path));
    Scripted second_asking{desk.folder.path()};
    {
        app::MainWindow second{desk.preferences, desk.folder.filePath("unsaved"), &second_asking};
        second_asking.says_yes = false;
        EXPECT_FALSE(second.job_acts().open(path));
        EXPECT_EQ(second_asking.asked, 1);
        EXPECT_NE(second.document().job().title, "Both");
        second_asking.says_yes = true;
        EXPECT_TRUE(second.job_acts().open(desk.folder.filePath("./both.drawercast.json")));
        EXPECT_EQ(second.document().job().title, "Both");
        EXPECT_TRUE(second.document().path().isEmpty()) << "a copy: it can't be saved over the first's";
        EXPECT_FALSE(second.document().unsaved());
    }
    EXPECT_TRUE(desk.window.job_acts().open(path)) << "one's own file is no trouble";
    EXPECT_EQ(desk.asking.asked, 0);
    desk.window.job_acts().open_demo(); // lets go of it
    app::MainWindow third{desk.preferences, desk.folder.filePath("unsaved"), &second_asking};
    const int asked = second_asking.asked;
    EXPECT_TRUE(third.job_acts().open(path));
    EXPECT_EQ(second_asking.asked, asked);
    EXPECT_EQ(third.document().path(), path);
}

TEST(Files, a_claim_of_a_program_that_is_gone_is_free) {
    const QTemporaryDir folder;
    application();
    const QString path = folder.filePath("a.json");
    app::FileClaim other(folder.filePath("open"));
    {
        app::FileClaim gone(folder.filePath("open"));
        EXPECT_TRUE(gone.take(path));
        EXPECT_TRUE(other.taken_by_another(path));
        EXPECT_FALSE(other.take(path));
        EXPECT_FALSE(gone.taken_by_another(path));
    }
    EXPECT_FALSE(other.taken_by_another(path));
    // What a killed program leaves: its lock, with a process that is no more.
    EXPECT_TRUE(other.take(path));
    const auto locks = QDir(folder.filePath("open")).entryList({"*.open"});
    ASSERT_EQ(locks.size(), 1);
    const QString lock = folder.filePath("open/" + locks[0]);
    QFile file(lock);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    auto lines = file.readAll().split('\n');
    file.close();
    EXPECT_TRUE(other.take({}));
    lines[0] = "2147483000"; // beyond any process's number
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(lines.join('\n'));
    file.close();
    EXPECT_FALSE(other.taken_by_another(path));
}

} // namespace drawercast::test
