// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"
#include "plan/as_cast.h"
#include "plan/pour_log.h"

#include "app_window/scripted.h"
#include "document/autosave.h"
#include "pourday/pour_paint.h"
#include "pourday/pour_view.h"
#include "window/actions.h"
#include "window/pour_acts.h"

#include <QKeyEvent>
#include <QPainter>
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

TEST(PourActs, what_is_edited_besides_is_not_saved_with_a_mark) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["job.save"]->trigger();
    auto& document = desk.window.document();
    const auto path = document.path().toStdString();
    const std::string title = document.job().title;
    auto edited = document.job();
    edited.title = "not asked to be saved";
    document.commit("title", edited);
    desk.window.actions()["pour.day"]->trigger();
    press(*view_of(desk), Qt::Key_Space);

    const auto kept = job::load_job(path);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->title, title);
    EXPECT_EQ(kept->log, document.job().log);
    EXPECT_TRUE(document.unsaved());
    EXPECT_FALSE(QFile::exists(document.path() + ".before")) << "a mark is no version to go back to";
    desk.window.actions()["job.save"]->trigger();
    EXPECT_EQ(*job::load_job(path), document.job());
}

TEST(PourActs, work_taken_up_after_a_crash_has_the_marks_made_after_it_was_kept) {
    QTemporaryDir folder;
    const QString path = folder.filePath("job.drawercast.json");
    std::size_t marks = 0;
    std::string title;
    {
        Desktop desk;
        desk.open_demo();
        desk.window.actions()["job.save"]->trigger();
        auto& document = desk.window.document();
        title = document.job().title;
        auto edited = document.job();
        edited.title = "unsaved";
        document.commit("title", edited);
        app::Autosave kept(document, folder.path());
        kept.write_now();
        kept.wait();
        desk.window.actions()["pour.day"]->trigger();
        press(*view_of(desk), Qt::Key_Space);
        marks = document.job().log.size();
        QFile unsaved(kept.file());
        ASSERT_TRUE(unsaved.open(QIODevice::ReadOnly));
        auto text = unsaved.readAll();
        text.replace(0, text.indexOf('\n'), path.toUtf8());
        QDir(folder.path()).mkdir("unsaved");
        QFile left(folder.filePath("unsaved/another-run.unsaved"));
        ASSERT_TRUE(left.open(QIODevice::WriteOnly) &&
                    left.write(text) == text.size()); // as a kill leaves it
        ASSERT_TRUE(QFile::copy(document.path(), path));
    }
    app::Preferences preferences(folder.filePath("settings.ini"));
    Scripted asking(folder.path());
    app::MainWindow window(preferences, folder.filePath("unsaved"), &asking);
    window.job_acts().offer_leftovers();
    auto& document = window.document();
    EXPECT_EQ(document.job().title, "unsaved");
    EXPECT_EQ(document.job().log.size(), marks);
    EXPECT_TRUE(document.unsaved());
    document.undo_stack().undo();
    EXPECT_EQ(document.job().title, title);
    EXPECT_EQ(job::load_job(path.toStdString())->log.size(), marks);
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

/// Where no sound is heard, the last ten seconds are seen: the countdown stands out inverted.
TEST(PourPaint, the_seconds_that_are_sounded_are_seen_too) {
    ASSERT_TRUE(Desktop::ready());
    const plan::PourStep step{"mixed", verbatim("Mix"), {}, 20, {}};
    const auto theme = theme::light_theme();
    const auto inked = [&](double stopwatch_s) {
        app::PourPicture picture;
        picture.next = &step;
        picture.stopwatch_s = stopwatch_s;
        QImage image(320, 180, QImage::Format_RGB32);
        QPainter painter(&image);
        app::paint_pour(painter, image.rect(), picture, theme);
        int dots = 0;
        for (int x = 0; x < image.width(); ++x) dots += image.pixelColor(x, 95) == theme.ink ? 1 : 0;
        return dots;
    };
    EXPECT_LT(inked(9), 20);
    EXPECT_GT(inked(11), 60);
}

TEST(PourPaint, clocks_read_as_clocks) {
    EXPECT_EQ(app::clock_text(67), "1:07");
    EXPECT_EQ(app::clock_text(-5), QString::fromUtf8("−0:05"));
    EXPECT_EQ(app::clock_text(7380), "2:03:00");
    EXPECT_EQ(app::clock_text(-0.2), "0:00");
}

} // namespace
} // namespace drawercast::test
