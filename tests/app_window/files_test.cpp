// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/store.h"

#include "app_window/scripted.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <QTest>
#include <QUrl>
#include <gtest/gtest.h>

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

} // namespace

TEST(Files, AJobDroppedOnTheWindowIsOpened) {
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

TEST(Files, AChangeByAnotherProgramIsAskedAbout) {
    Desktop desk;
    const auto path = write(desk.folder, "shared.drawercast.json", titled("One"));
    ASSERT_TRUE(desk.window.job_acts().open(QString::fromStdString(path)));
    desk.asking.says_yes = false;
    write(desk.folder, "shared.drawercast.json", titled("Two"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.asking.asked == 1; }, 5000));
    EXPECT_EQ(desk.window.document().job().title, "One");

    desk.asking.says_yes = true;
    write(desk.folder, "shared.drawercast.json", titled("Three"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.window.document().job().title == "Three"; }, 5000));
    EXPECT_FALSE(desk.window.document().unsaved());
}

TEST(Files, OurOwnSaveAsksNothing) {
    Desktop desk;
    const auto path = write(desk.folder, "own.drawercast.json", titled("One"));
    ASSERT_TRUE(desk.window.job_acts().open(QString::fromStdString(path)));
    desk.window.document().commit("Title", titled("Mine"));
    desk.window.actions()["job.save"]->trigger();
    QTest::qWait(700);
    EXPECT_EQ(desk.asking.asked, 0);
    EXPECT_EQ(desk.window.document().job().title, "Mine");
}

} // namespace drawercast::test
