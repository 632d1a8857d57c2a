// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"

#include "app_window/scripted.h"
#include "window/mend_acts.h"

#include <gtest/gtest.h>

namespace drawercast::test {

namespace {

job::Job with_a_thin_wall() {
    auto job = job::new_job({});
    for (const char* id : {"i1", "i2"}) {
        job::Object object;
        object.id = object.name = id;
        object.height_mm = 40;
        object.levels.push_back({job::Sunk{shape::Rectangle{80, 50, 0}, 30}, {}, {}});
        job = job::with_object(job, object);
    }
    const auto drawer = job.drawers.front()->id;
    job = job::placed(job, drawer, "i1", {{200, 180}, 0});
    return job::placed(job, drawer, "i2", {{284, 180}, 0});
}

} // namespace

TEST(MendActs, pointing_shows_choosing_does_leaving_forgets) {
    Desktop desk;
    auto& document = desk.window.document();
    document.replace(with_a_thin_wall(), {}, true);
    const auto start = document.job();
    desk.window.selection().choose_check(document.plan().drawers.front().checks.front());
    QApplication::processEvents();
    auto* mend = desk.window.actions()["check.mend"];
    ASSERT_TRUE(mend->isEnabled());
    mend->trigger();
    auto& menu = desk.window.findChild<app::MendActs*>()->menu();
    ASSERT_EQ(menu.actions().size(), 2);

    menu.actions()[0]->hover();
    EXPECT_TRUE(document.previewing());
    menu.hide();
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(document.job(), start);

    mend->trigger();
    menu.actions()[0]->trigger();
    EXPECT_FALSE(document.previewing());
    EXPECT_FALSE(document.job() == start);
    EXPECT_EQ(document.undo_stack().count(), 1);
    for (const auto& check : document.plan().drawers.front().checks)
        EXPECT_EQ(check.severity, layout::Severity::note);
}

} // namespace drawercast::test
