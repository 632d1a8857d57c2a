// SPDX-License-Identifier: GPL-3.0-or-later
// The window is killed in the middle of work, as by a power cut: a process of its own, the signal no program
// can answer.
#include "job/catalog.h"
#include "job/edit.h"
#include "job/store.h"

#include "app_window/hand.h"
#include "source_dir.h"

#include <QDir>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTest>
#include <gtest/gtest.h>

#include <csignal>
#include <unistd.h>

namespace drawercast::test {

namespace {

const char* const folder_key = "DRAWERCAST_KILLED_FOLDER";
const char* const job_key = "DRAWERCAST_KILLED_JOB";

QStringList kept_in(const QString& folder) { return QDir(folder).entryList({"*.unsaved"}, QDir::Files); }

/// What the process is that will be killed: this program again, doing only the test below.
QProcessEnvironment surroundings(const QString& folder, const QString& job) {
    auto all = QProcessEnvironment::systemEnvironment();
    all.insert(QLatin1String(folder_key), folder);
    all.insert(QLatin1String(job_key), job);
    all.insert("ASAN_OPTIONS", "detect_leaks=0"); // nobody tidies up who is killed
    return all;
}

void work_until_killed(const QString& folder, const QString& job) {
    QProcess other;
    other.setProcessEnvironment(surroundings(folder, job));
    other.start(QCoreApplication::applicationFilePath(),
                {"--gtest_filter=Killed.DISABLED_the_window_that_is", "--gtest_also_run_disabled_tests"});
    ASSERT_TRUE(other.waitForFinished(60'000));
    ASSERT_EQ(other.exitStatus(), QProcess::CrashExit) << other.readAll().toStdString();
}

/// A window of the next day on the same folder, asked about what was left.
struct NextDay {
    explicit NextDay(const QString& folder) : window(preferences, folder, &asking) {
        window.job_acts().offer_leftovers();
        QApplication::processEvents();
    }
    QTemporaryDir own;
    app::Preferences preferences{own.filePath("settings.ini")};
    Scripted asking{own.path()};
    app::MainWindow window;
};

} // namespace

/// Runs in the other process only.
TEST(Killed, DISABLED_the_window_that_is) {
    const QString folder = qEnvironmentVariable(folder_key);
    ASSERT_FALSE(folder.isEmpty());
    Desktop
        desk; // for its scripted answers; the window under test keeps its work where the other process looks
    app::MainWindow window(desk.preferences, folder, &desk.asking);
    const QString path = qEnvironmentVariable(job_key);
    if (path.isEmpty()) {
        open_pockets(desk, {{100, 100}});
        window.document().replace(desk.window.document().job(), {}, true);
    } else {
        ASSERT_TRUE(window.job_acts().open(path));
    }
    auto job = window.document().job();
    job.title = "Edited just before";
    window.document().commit("title", std::move(job));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !kept_in(folder).isEmpty(); }, 30'000));
    ::kill(::getpid(), SIGKILL);
}

TEST(Killed, untitled_work_is_taken_up_again) {
    application();
    QTemporaryDir folder;
    work_until_killed(folder.path(), {});
    ASSERT_EQ(kept_in(folder.path()).size(), 1);
    NextDay next(folder.path());
    EXPECT_EQ(next.asking.asked, 1);
    EXPECT_EQ(next.window.document().job().title, "Edited just before");
    EXPECT_EQ(next.window.document().job().drawers.size(), 1U);
    EXPECT_TRUE(next.window.document().unsaved());
}

TEST(Killed, titled_work_is_taken_up_again_and_its_file_is_as_it_was) {
    application();
    QTemporaryDir folder;
    const QString path = folder.filePath("field.drawercast.json");
    const std::string demo = DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json";
    const auto before = job::load_job(demo);
    ASSERT_TRUE(before);
    ASSERT_TRUE(job::save_job(*before, path.toStdString()));
    work_until_killed(folder.path(), path);
    EXPECT_EQ(*job::load_job(path.toStdString()), *before);
    NextDay next(folder.path());
    auto expected = *before;
    expected.title = "Edited just before";
    EXPECT_EQ(next.window.document().job(), expected);
    next.window.actions()["job.save"]->trigger();
    EXPECT_EQ(job::load_job(path.toStdString())->title, "Edited just before");
    EXPECT_TRUE(kept_in(folder.path()).isEmpty()) << "saved work is no leftover";
}

} // namespace drawercast::test
