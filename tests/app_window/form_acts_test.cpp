// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "app_window/scripted.h"

#include <gtest/gtest.h>

namespace drawercast::test {

namespace {

job::Object tin(const std::string& name) {
    job::Object object;
    object.name = name;
    object.height_mm = 40;
    object.levels.push_back({job::Sunk{shape::Rectangle{80, 50, 4}, 30}, {}, {}});
    return object;
}

void trigger(Desktop& desk, const char* id) {
    auto* action = desk.window.actions()[id];
    ASSERT_TRUE(action->isEnabled()) << id;
    action->trigger();
    QApplication::processEvents();
}

} // namespace

TEST(FormActs, an_object_is_added_placed_and_changed) {
    Desktop desk;
    desk.window.document().replace(job::new_job({}), {}, true);
    const auto& document = desk.window.document();
    desk.asking.to_object = [](const job::Object&) { return tin("Tin"); };
    trigger(desk, "objects.add");
    ASSERT_EQ(document.job().objects.size(), 1U);
    const std::string id = document.job().objects.front()->id;
    EXPECT_EQ(desk.window.selection().object(), id) << "what was added is chosen";

    trigger(desk, "objects.place");
    ASSERT_EQ(document.job().drawers.front()->pockets.size(), 1U);
    EXPECT_EQ(document.job().drawers.front()->pockets.front().object, id);

    desk.asking.to_object = [](job::Object given) {
        given.name = "Tall tin";
        return std::optional(given);
    };
    trigger(desk, "objects.change");
    EXPECT_EQ(document.job().objects.front()->name, "Tall tin");
    EXPECT_EQ(document.job().objects.front()->id, id);
    EXPECT_EQ(document.job().drawers.front()->pockets.size(), 1U) << "its pocket stays";
}

TEST(FormActs, a_taken_back_form_changes_nothing) {
    Desktop desk;
    desk.open_demo();
    const auto before = desk.window.document().job();
    desk.window.selection().choose_object(before.objects.front()->id);
    desk.asking.to_object = [](const job::Object&) { return std::optional<job::Object>(); };
    desk.asking.to_drawer = [](const job::Drawer&) { return std::optional<job::Drawer>(); };
    desk.asking.to_foam = [](const job::Foam&) { return std::optional<job::Foam>(); };
    for (const char* id : {"objects.add", "objects.change", "objects.paste_list", "drawers.add",
                           "drawers.change", "job.foam", "job.shop", "job.minimums", "job.title"})
        trigger(desk, id);
    EXPECT_EQ(desk.window.document().job(), before);
    EXPECT_EQ(desk.window.document().undo_stack().count(), 0) << "a form taken as it was leaves no step";
}

TEST(FormActs, a_pasted_list_is_one_step) {
    Desktop desk;
    desk.window.document().replace(job::new_job({}), {}, true);
    const auto start = desk.window.document().job();
    desk.asking.listed = {tin("One"), tin("Two"), tin("Three")};
    trigger(desk, "objects.paste_list");
    const auto& objects = desk.window.document().job().objects;
    ASSERT_EQ(objects.size(), 3U);
    EXPECT_NE(objects[0]->id, objects[1]->id);
    EXPECT_EQ(objects[2]->name, "Three");
    EXPECT_EQ(desk.window.document().undo_stack().count(), 1);
    trigger(desk, "edit.undo");
    EXPECT_EQ(desk.window.document().job(), start);
}

TEST(FormActs, drawers_come_and_go) {
    Desktop desk;
    desk.open_demo();
    auto& document = desk.window.document();
    const auto start = document.job();
    trigger(desk, "drawers.add");
    ASSERT_EQ(document.job().drawers.size(), start.drawers.size() + 1);
    const auto& added = *document.job().drawers.back();
    EXPECT_EQ(desk.window.selection().drawer(), added.id);
    EXPECT_TRUE(added.pockets.empty());
    EXPECT_EQ(added.outline, start.drawers.front()->outline) << "of the size of the one that was shown";
    trigger(desk, "drawers.delete");
    EXPECT_EQ(document.job(), start);

    const int asked = desk.asking.asked;
    desk.asking.says_yes = false;
    trigger(desk, "drawers.delete");
    EXPECT_EQ(desk.asking.asked, asked + 1) << "a drawer with pockets is asked about";
    EXPECT_EQ(document.job(), start);
}

TEST(FormActs, foam_and_minimums_change_the_answer) {
    Desktop desk;
    desk.open_demo();
    auto& document = desk.window.document();
    const double poured = document.plan().drawers.front().dose->mixed_ml;
    desk.asking.to_foam = [](job::Foam foam) {
        foam.expansion *= 2;
        return std::optional(foam);
    };
    trigger(desk, "job.foam");
    EXPECT_LT(document.plan().drawers.front().dose->mixed_ml, poured);

    desk.asking.to_minimums = [](job::Minimums minimums) {
        minimums.wall_mm = 60;
        return std::optional(minimums);
    };
    trigger(desk, "job.minimums");
    EXPECT_FALSE(document.plan().drawers.front().checks.empty());
}

TEST(FormActs, a_new_revision_is_a_step) {
    Desktop desk;
    desk.open_demo();
    const int before = desk.window.document().job().revision;
    trigger(desk, "job.revision");
    EXPECT_EQ(desk.window.document().job().revision, before + 1);
    trigger(desk, "edit.undo");
    EXPECT_EQ(desk.window.document().job().revision, before);
}

} // namespace drawercast::test
