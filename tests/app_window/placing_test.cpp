// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/write.h"

#include "window/hand_placing.h"

#include <gtest/gtest.h>

namespace drawercast::app::placing {
namespace {

/// Three boxes, 40 × 20, 30 × 30 and 20 × 40, in a drawer of 300 × 200.
job::Job three_boxes() {
    auto job = job::new_job({300, 200, 80, 50});
    const std::vector<std::pair<double, double>> sizes{{40, 20}, {30, 30}, {20, 40}};
    const std::vector<shape::Vec> at{{60, 60}, {130, 100}, {240, 130}};
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        job::Object object;
        object.id = "i" + std::to_string(i + 1);
        object.name = object.id;
        object.height_mm = 30;
        object.fit_mm = 0;
        job::Level level;
        level.form = job::Sunk{shape::Rectangle{sizes[i].first, sizes[i].second, 0}, 25};
        object.levels = {level};
        job = job::with_object(std::move(job), object);
        job = job::placed(std::move(job), job.drawers.front()->id, object.id, {at[i], 0});
    }
    return job;
}

struct Scene {
    job::Job job = three_boxes();
    plan::DrawerPlan plan() const { return drawercast::plan::compute(job).drawers.front(); }
    shape::Box box(const std::string& subject) const {
        for (const auto& pocket : plan().pockets)
            if (pocket->subject == subject) return pocket->box;
        return {};
    }
};

const job::Subjects all{"i1#1", "i2#1", "i3#1"};

TEST(Placing, aligns_on_the_last_chosen_which_stays) {
    struct Row {
        Line line;
        double (*coordinate)(const shape::Box&);
    };
    const std::vector<Row> rows{{Line::left, [](const shape::Box& b) { return b.min.x; }},
                                {Line::right, [](const shape::Box& b) { return b.max.x; }},
                                {Line::front, [](const shape::Box& b) { return b.min.y; }},
                                {Line::back, [](const shape::Box& b) { return b.max.y; }},
                                {Line::center_x, [](const shape::Box& b) { return b.center().x; }},
                                {Line::center_y, [](const shape::Box& b) { return b.center().y; }}};
    for (const auto& row : rows) {
        Scene scene;
        const auto stays = scene.box("i3#1");
        scene.job = aligned(scene.job, scene.plan(), all, row.line);
        EXPECT_EQ(scene.box("i3#1"), stays);
        for (const auto& subject : all)
            EXPECT_NEAR(row.coordinate(scene.box(subject)), row.coordinate(stays), 1e-6);
    }
}

TEST(Placing, locked_pockets_stand_still) {
    Scene scene;
    scene.job = job::locked(scene.job, {"i1#1"}, true);
    const auto before = scene.box("i1#1");
    scene.job = aligned(scene.job, scene.plan(), all, Line::front);
    EXPECT_EQ(scene.box("i1#1"), before);
    EXPECT_NEAR(scene.box("i2#1").min.y, scene.box("i3#1").min.y, 1e-6);
}

TEST(Placing, spreads_the_middles) {
    Scene scene;
    scene.job = distributed(scene.job, scene.plan(), all, Axis::x);
    EXPECT_NEAR(scene.box("i2#1").center().x, (60 + 240) / 2.0, 1e-6);
    EXPECT_NEAR(scene.box("i2#1").center().y, 100, 1e-6) << "the other direction is left alone";
    const auto two = distributed(scene.job, scene.plan(), {"i1#1", "i2#1"}, Axis::x);
    EXPECT_EQ(two, scene.job) << "two have nothing between them";
}

TEST(Placing, equal_walls_between_and_to_the_edges) {
    Scene scene;
    scene.job = with_equal_walls(scene.job, scene.plan(), all, Axis::x);
    const auto insert = scene.plan().insert->box;
    const double wall = scene.box("i1#1").min.x - insert.min.x;
    EXPECT_GT(wall, 0);
    EXPECT_NEAR(scene.box("i2#1").min.x - scene.box("i1#1").max.x, wall, 1e-5);
    EXPECT_NEAR(scene.box("i3#1").min.x - scene.box("i2#1").max.x, wall, 1e-5);
    EXPECT_NEAR(insert.max.x - scene.box("i3#1").max.x, wall, 1e-5);
}

TEST(Placing, row_of_copies_keeps_the_wall) {
    Scene scene;
    job::Subjects made;
    scene.job = with_copies(scene.job, scene.plan(), "i1#1", CopyOrder{4, 1, 12, 12, false, false}, &made);
    ASSERT_EQ(made.size(), 3U);
    double right = scene.box("i1#1").max.x;
    for (const auto& subject : made) {
        EXPECT_NEAR(scene.box(subject).min.x - right, 12, 1e-6);
        right = scene.box(subject).max.x;
    }
    EXPECT_EQ(job::find_object(scene.job, "i1")->count, 4);
}

TEST(Placing, notches_stand_in_the_middle_of_their_side_however_the_pocket_is_turned) {
    for (const double turn : {0.0, 90.0, 180.0, 270.0}) {
        Scene scene;
        scene.job = job::turned(scene.job, {"i1#1"}, turn, {60, 60});
        const auto before = scene.box("i1#1");
        for (const Side side : {Side::left, Side::right, Side::front, Side::back}) {
            const auto with = with_finger_notch(scene.job, scene.plan(), "i1#1", side);
            Scene notched{with};
            const auto after = notched.box("i1#1");
            constexpr double half_mm = 14;
            const double out = side == Side::left    ? before.min.x - after.min.x
                               : side == Side::right ? after.max.x - before.max.x
                               : side == Side::front ? before.min.y - after.min.y
                                                     : after.max.y - before.max.y;
            EXPECT_NEAR(out, half_mm, 1e-6) << turn;
            ASSERT_EQ(nearest_notch(with, "i1#1", {0, 0}), std::optional<std::size_t>(0));
            EXPECT_EQ(job::without_notch(with, "i1#1", 0), scene.job);
        }
    }
}

TEST(Placing, a_notch_of_a_turned_pocket_is_saved_as_it_is) {
    Scene scene;
    for (double turn = 1; turn < 90; turn += 7) {
        const auto job = job::turned(scene.job, {"i1#1"}, turn, {60, 60});
        for (const Side side : {Side::left, Side::back}) {
            const auto with = with_finger_notch(job, Scene{job}.plan(), "i1#1", side);
            EXPECT_TRUE(job::checked_text(with).has_value()) << turn;
        }
    }
}

TEST(Placing, nearest_side) {
    const shape::Box box{{0, 0}, {100, 50}};
    EXPECT_EQ(nearest_side(box, {1, 25}), Side::left);
    EXPECT_EQ(nearest_side(box, {99, 25}), Side::right);
    EXPECT_EQ(nearest_side(box, {50, 1}), Side::front);
    EXPECT_EQ(nearest_side(box, {50, 49}), Side::back);
}

TEST(Placing, a_new_pocket_keeps_the_walls_while_there_is_room) {
    Scene scene;
    for (int i = 0; i < 6; ++i) {
        const auto before = scene.plan().checks.size();
        std::string made;
        scene.job = placed_where_free(scene.job, scene.plan(), "i2", &made);
        EXPECT_FALSE(made.empty());
        EXPECT_LE(scene.plan().checks.size(), before) << "it wakes no check";
    }
}

TEST(Placing, a_full_drawer_still_takes_it) {
    Scene scene;
    auto object = *job::find_object(scene.job, "i1");
    object.levels.front().form = job::Sunk{shape::Rectangle{290, 190, 0}, 25};
    scene.job = job::with_object(scene.job, object);
    std::string made;
    placed_where_free(scene.job, scene.plan(), "i1", &made);
    EXPECT_EQ(made, "i1#2");
}

} // namespace
} // namespace drawercast::app::placing
