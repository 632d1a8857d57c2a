// SPDX-License-Identifier: GPL-3.0-or-later
// A pour is marked in a process of its own, which is killed at a moment it does not choose: every mark that
// was acknowledged is in the file, and the program goes on at the next step with the clock right.
#include "job/store.h"
#include "plan/pour_log.h"

#include "app_window/scripted.h"
#include "pourday/pour_view.h"
#include "source_dir.h"
#include "window/actions.h"
#include "window/pour_acts.h"

#include <QKeyEvent>
#include <QProcess>
#include <QProcessEnvironment>
#include <gtest/gtest.h>

#include <cstdio>

namespace drawercast::test {
namespace {

const char* const job_key = "DRAWERCAST_KILLED_POUR";

app::PourView* view_of(app::MainWindow& window) {
    QApplication::processEvents();
    return window.findChild<app::PourActs*>()->view();
}

QString demo_in(const QTemporaryDir& folder) {
    const QString path = folder.filePath("pour.drawercast.json");
    EXPECT_TRUE(QFile::copy(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json", path));
    return path;
}

/// Starts marking in another process, kills it after `marks` acknowledged ones; returns how many there were.
int marked_until_killed(const QString& path, int marks) {
    QProcess other;
    auto around = QProcessEnvironment::systemEnvironment();
    around.insert(QLatin1String(job_key), path);
    around.insert("ASAN_OPTIONS", "detect_leaks=0");
    other.setProcessEnvironment(around);
    other.start(QCoreApplication::applicationFilePath(),
                {"--gtest_filter=PourKilledElsewhere.DISABLED_marks", "--gtest_also_run_disabled_tests"});
    int seen = 0;
    while (seen < marks && other.waitForReadyRead(60'000))
        while (other.canReadLine()) seen += other.readLine().startsWith("marked") ? 1 : 0;
    other.kill(); // the signal no program can answer
    EXPECT_TRUE(other.waitForFinished(30'000));
    EXPECT_EQ(other.exitStatus(), QProcess::CrashExit);
    while (other.canReadLine()) seen += other.readLine().startsWith("marked") ? 1 : 0;
    return seen;
}

} // namespace

/// Runs in the other process only.
TEST(PourKilledElsewhere, DISABLED_marks) {
    const QString path = qEnvironmentVariable(job_key);
    ASSERT_FALSE(path.isEmpty());
    Desktop desk;
    ASSERT_TRUE(desk.window.job_acts().open(path));
    desk.window.actions()["pour.day"]->trigger();
    auto* view = view_of(desk.window);
    ASSERT_NE(view, nullptr);
    const auto key = [&](int which) {
        QKeyEvent event(QEvent::KeyPress, which, Qt::NoModifier);
        QApplication::sendEvent(view, &event);
        ASSERT_TRUE(view->trouble().isEmpty());
        std::puts("marked");
        std::fflush(stdout);
    };
    for (int i = 0; i < 12; ++i) key(Qt::Key_Space); // the gates, the scale, A meets B
    for (;;) key(Qt::Key_Space), key(Qt::Key_Backspace);
}

class PourKilled : public ::testing::TestWithParam<int> {};

TEST_P(PourKilled, every_acknowledged_mark_is_in_the_file) {
    application();
    QTemporaryDir folder;
    const QString path = demo_in(folder);
    const int marks = marked_until_killed(path, GetParam());
    ASSERT_GE(marks, GetParam());
    const auto kept = job::load_job(path.toStdString());
    ASSERT_TRUE(kept) << one_line(kept.error().front());
    // the run's beginning, and the marks; one more may have been written and not yet acknowledged
    EXPECT_GE(kept->log.size(), static_cast<std::size_t>(marks) + 1);
    EXPECT_LE(kept->log.size(), static_cast<std::size_t>(marks) + 2);
    const auto run = plan::last_run(kept->log, kept->drawers.front()->id);
    ASSERT_TRUE(run);

    Desktop later;
    ASSERT_TRUE(later.window.job_acts().open(path));
    auto* view = view_of(later.window);
    EXPECT_EQ(view != nullptr, run->is_done(plan::clock_step)); // taken up by itself once the clock runs
    if (view == nullptr) return;
    EXPECT_FALSE(view->clock_words().isEmpty());
    ASSERT_NE(view->next(), nullptr);
    EXPECT_FALSE(run->is_done(view->next()->id));
}
INSTANTIATE_TEST_SUITE_P(Moments, PourKilled, ::testing::Values(1, 12, 13, 40));

} // namespace drawercast::test
