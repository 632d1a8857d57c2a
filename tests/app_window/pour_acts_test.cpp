// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"
#include "plan/as_cast.h"
#include "plan/pour_log.h"

#include "app_window/scripted.h"
#include "pourday/pour_paint.h"
#include "pourday/pour_view.h"
#include "window/actions.h"
#include "window/pour_acts.h"

#include <QKeyEvent>
#include <gtest/gtest.h>

namespace drawercast::test {
namespace {

void press(QWidget& view, int key) {
    QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
    QApplication::sendEvent(&view, &event);
}

app::PourView* view_of(Desktop& desk) {
    QApplication::processEvents();
    return desk.window.findChild<app::PourActs*>()->view();
}

plan::DrawerPlan drawer_named(const std::string& id) {
    plan::DrawerPlan drawer;
    drawer.id = id;
    return drawer;
}

TEST(PourActs, each_mark_is_in_the_file_at_once) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["pour.day"]->trigger();
    auto* view = view_of(desk);
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(desk.asking.told, 1); // the cautions, once
    const std::string first = view->next()->id;
    press(*view, Qt::Key_Space);
    EXPECT_NE(view->next()->id, first);
    const auto path = desk.window.document().path().toStdString();
    const auto kept = job::load_job(path);
    ASSERT_TRUE(kept);
    const std::string drawer = desk.window.selection().drawer();
    EXPECT_TRUE(plan::last_run(kept->log, drawer)->is_done(first));
    press(*view, Qt::Key_Backspace);
    EXPECT_EQ(view->next()->id, first);
    EXPECT_FALSE(plan::last_run(job::load_job(path)->log, drawer)->is_done(first));
    press(*view, Qt::Key_Escape);
    desk.window.actions()["pour.day"]->trigger();
    ASSERT_NE(view_of(desk), nullptr);
    EXPECT_EQ(desk.asking.told, 1);
}

TEST(PourActs, a_running_pour_goes_on_where_the_job_is_opened_again) {
    QTemporaryDir folder;
    const QString path = folder.filePath("job.drawercast.json");
    std::string next;
    {
        Desktop desk;
        desk.open_demo();
        desk.window.actions()["pour.day"]->trigger();
        auto* view = view_of(desk);
        while (!plan::last_run(desk.window.document().job().log, desk.window.selection().drawer())
                    ->is_done(plan::clock_step))
            press(*view, Qt::Key_Space);
        next = view->next()->id;
        ASSERT_TRUE(QFile::copy(desk.window.document().path(), path)); // as a kill would leave it
    }
    Desktop later;
    later.window.job_acts().open(path);
    auto* view = view_of(later);
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->next()->id, next);
    EXPECT_FALSE(view->clock_words().isEmpty());
}

TEST(PourActs, a_rehearsal_does_not_hide_a_running_pour_unasked) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["pour.day"]->trigger();
    auto* view = view_of(desk);
    const auto run = [&] {
        return *plan::last_run(desk.window.document().job().log, desk.window.selection().drawer());
    };
    while (!run().is_done(plan::clock_step)) press(*view, Qt::Key_Space);
    press(*view, Qt::Key_Escape);
    desk.asking.says_yes = false;
    desk.window.actions()["pour.rehearse"]->trigger();
    EXPECT_FALSE(run().rehearsal);
    desk.asking.says_yes = true;
    desk.window.actions()["pour.rehearse"]->trigger();
    EXPECT_TRUE(run().rehearsal);
}

TEST(PourActs, undo_and_redo_of_a_mark_reach_the_file) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["pour.day"]->trigger();
    auto* view = view_of(desk);
    press(*view, Qt::Key_Space);
    press(*view, Qt::Key_Space);
    const auto path = desk.window.document().path().toStdString();
    const auto marks = job::load_job(path)->log.size();
    press(*view, Qt::Key_Escape);
    desk.window.actions()["edit.undo"]->trigger();
    EXPECT_EQ(job::load_job(path)->log.size(), marks - 1);
    EXPECT_FALSE(desk.window.document().unsaved());
    desk.window.actions()["edit.redo"]->trigger();
    EXPECT_EQ(job::load_job(path)->log.size(), marks);
}

TEST(PourActs, a_rehearsals_times_are_taken_when_the_maker_agrees) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["pour.rehearse"]->trigger();
    auto* view = view_of(desk);
    ASSERT_NE(view, nullptr);
    const auto before = *desk.window.document().job().shop;
    while (view->next() != nullptr) {
        press(*view, Qt::Key_Space);
        const auto until = std::chrono::steady_clock::now() + std::chrono::milliseconds(120);
        while (std::chrono::steady_clock::now() < until) {
        } // hands take their time
    }
    QApplication::processEvents();
    EXPECT_FALSE(*desk.window.document().job().shop == before);
}

TEST(PourActs, a_cast_and_what_is_learned_from_it_are_one_step_of_undo) {
    Desktop desk;
    desk.open_demo();
    const auto before = desk.window.document().job();
    desk.asking.to_pour_form = [](app::Asking::PourForm form, job::Job job, const std::string& drawer) {
        EXPECT_EQ(form, app::Asking::PourForm::as_cast);
        job.casts.push_back(plan::blank_cast(job, drawer_named(drawer), "2031-03-05"));
        job.foam.edit([](job::Foam& foam) { foam.shrinkage = 0.0042; });
        return std::optional(job);
    };
    desk.window.actions()["pour.as_cast"]->trigger();
    EXPECT_EQ(desk.window.document().job().casts.size(), 1U);
    desk.window.actions()["edit.undo"]->trigger();
    EXPECT_EQ(desk.window.document().job(), before);
}

TEST(PourPaint, clocks_read_as_clocks) {
    EXPECT_EQ(app::clock_text(67), "1:07");
    EXPECT_EQ(app::clock_text(-5), QString::fromUtf8("−0:05"));
    EXPECT_EQ(app::clock_text(7380), "2:03:00");
    EXPECT_EQ(app::clock_text(-0.2), "0:00");
}

} // namespace
} // namespace drawercast::test
