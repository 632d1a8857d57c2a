// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"
#include "job/read.h"
#include "job/write.h"

#include "core/job/random_job.h"

#include <gtest/gtest.h>

namespace drawercast::job {
namespace {

Job two_pockets() {
    Job job = new_job({});
    Object object;
    object.id = "i1";
    object.name = "Logger";
    object.levels = {{Sunk{shape::Rectangle{60, 40, 0}, 20}, {}, {}}};
    job = with_object(std::move(job), object);
    job = placed(std::move(job), "d1", "i1", {{100, 100}, 0});
    return placed(std::move(job), "d1", "i1", {{200, 100}, 90});
}

TEST(Edit, placing_counts_on_and_numbers_are_not_used_twice) {
    Job job = two_pockets();
    EXPECT_EQ(find_object(job, "i1")->count, 2);
    ASSERT_NE(find_pocket(job, "i1#2").pocket, nullptr);
    job = removed(job, {"i1#1"});
    std::string made;
    job = placed(job, "d1", "i1", {{50, 50}, 0}, &made);
    EXPECT_EQ(made, "i1#3");
}

TEST(Edit, a_number_that_a_look_left_as_is_speaks_of_is_not_used_again) {
    Job job = with_left_as_is(two_pockets(), {"d1", "wall-thin", {"i1#1", "i1#7"}, 9, {}});
    job =
        with_left_as_is(job, {"d1", "wall-thin", {"i10#40", "i1#x"}, 9, {}}); // other objects, and no number
    std::string made;
    placed(removed(job, {"i1#2"}), "d1", "i1", {{50, 50}, 0}, &made);
    EXPECT_EQ(made, "i1#8");
}

TEST(Edit, there_and_back_is_the_same_job) {
    for (const double turn : {0.0, 90.0, 180.0, 270.0, 15.25, 359.999999}) {
        const Job job = posed(two_pockets(), {{"i1#1", {{100, 100}, turn}}});
        EXPECT_EQ(find_pocket(job, "i1#1").pocket->pose.turn_deg, turn);
        EXPECT_EQ(moved(moved(job, {"i1#1"}, {12.5, -3}), {"i1#1"}, {-12.5, 3}), job);
        EXPECT_EQ(turned(turned(job, {"i1#1", "i1#2"}, 90, {150, 100}), {"i1#1", "i1#2"}, -90, {150, 100}),
                  job);
        Job round = job;
        for (int i = 0; i < 24; ++i) round = turned(round, {"i1#1"}, 15, {100, 100}); // about its own origin
        EXPECT_EQ(round, job);
        EXPECT_EQ(locked(locked(job, {"i1#1"}, true), {"i1#1"}, false), job);
        const Notch notch{shape::Capsule{50, 28}, {{0, 20}, 0}, 10, {}};
        EXPECT_EQ(without_notch(with_notch(job, "i1#1", notch), "i1#1", 0), job);
        EXPECT_EQ(in_units(in_units(job, DisplayUnits::inch_32), job.display_units), job);
        EXPECT_EQ(with_overpack(with_overpack(job, 0.3), job.foam->overpack), job);
    }
}

TEST(Edit, turns_end_from_0_up_to_360) {
    const auto turn_of = [](double given) {
        return find_pocket(posed(two_pockets(), {{"i1#1", {{0, 0}, given}}}), "i1#1").pocket->pose.turn_deg;
    };
    EXPECT_EQ(turn_of(-90), 270);
    EXPECT_EQ(turn_of(360), 0);
    EXPECT_EQ(turn_of(-1e-9), 0);
    EXPECT_EQ(turn_of(359.9999999), 0);
    EXPECT_EQ(turn_of(725.5), 5.5);
}

TEST(Edit, moving_leaves_a_turn_that_a_file_gave_as_it_is) {
    Job job = two_pockets();
    job.drawers[0].edit([](Drawer& drawer) { drawer.pockets[0].pose.turn_deg = -90; });
    EXPECT_EQ(find_pocket(moved(job, {"i1#1"}, {1, 2}), "i1#1").pocket->pose.turn_deg, -90);
}

TEST(Edit, to_another_drawer_and_back) {
    Job job = two_pockets();
    Drawer second = *job.drawers[0];
    second.id = free_drawer_id(job);
    second.pockets.clear();
    job = with_drawer(std::move(job), second);
    const Job there = moved_to_drawer(job, {"i1#2"}, "d2");
    EXPECT_EQ(find_pocket(there, "i1#2").drawer->id, "d2");
    EXPECT_EQ(find_pocket(there, "i1#2").pocket->pose, find_pocket(job, "i1#2").pocket->pose);
    EXPECT_EQ(moved_to_drawer(there, {"i1#2"}, "d1"), job);
    EXPECT_EQ(without_drawer(there, "d2").drawers[0]->pockets.size(), 1u);
}

TEST(Edit, a_new_drawer_is_not_taken_for_one_that_was_cast) {
    Job job = two_pockets();
    job.casts.emplace_back().drawer = "d2";
    job.as_built.emplace_back().drawer = "d3";
    job.log.emplace_back().drawer = "d4";
    EXPECT_EQ(free_drawer_id(job), "d5");
    job.casts.clear();
    EXPECT_EQ(free_drawer_id(job), "d2");
}

TEST(Edit, what_is_locked_or_not_there_is_left_out) {
    const Job job = locked(two_pockets(), {"i1#1"}, true);
    EXPECT_EQ(unlocked(job, {"i1#2", "i1#1", "i1#9"}), Subjects{"i1#2"});
    EXPECT_EQ(unlocked(two_pockets(), {"i1#2", "i1#1"}), (Subjects{"i1#2", "i1#1"})) << "as they were chosen";
    EXPECT_TRUE(unlocked(job, {}).empty());
}

TEST(Edit, turning_a_group_keeps_distances) {
    const Job job = turned(two_pockets(), {"i1#1", "i1#2"}, 37, {150, 100});
    const auto a = find_pocket(job, "i1#1").pocket->pose.at;
    const auto b = find_pocket(job, "i1#2").pocket->pose.at;
    EXPECT_NEAR(shape::length(a - b), 100, 1e-5);
}

TEST(Edit, names_that_are_not_there_change_nothing) {
    const Job job = two_pockets();
    EXPECT_EQ(moved(job, {"i9#1"}, {1, 1}), job);
    EXPECT_EQ(removed(job, {"i9#1"}), job);
    EXPECT_EQ(placed(job, "d1", "i9", {}), job);
    EXPECT_EQ(placed(job, "d9", "i1", {}), job);
    EXPECT_EQ(without_object(job, "i9"), job);
    EXPECT_EQ(moved_to_drawer(job, {"i1#1"}, "d9"), job);
}

TEST(Edit, untouched_drawers_keep_their_instance) {
    Job job = two_pockets();
    Drawer second = *job.drawers[0];
    second.id = free_drawer_id(job);
    second.pockets.clear();
    job = with_drawer(job, second);
    const Job after = moved(job, {"i1#1"}, {1, 0});
    EXPECT_TRUE(after.drawers[1].same_instance(job.drawers[1]));
    EXPECT_FALSE(after.drawers[0].same_instance(job.drawers[0]));
}

TEST(Edit, an_object_goes_with_its_pockets) {
    const Job job = without_object(two_pockets(), "i1");
    EXPECT_TRUE(job.objects.empty());
    EXPECT_TRUE(job.drawers[0]->pockets.empty());
}

TEST(Edit, copies_bring_their_notches_and_free_places) {
    Subjects made;
    const Notch notch{shape::Capsule{50, 28}, {{0, 20}, 0}, 10, {}};
    const Job job =
        duplicated(locked(with_notch(two_pockets(), "i1#1", notch), {"i1#1"}, true), {"i1#1"}, {5, 5}, &made);
    ASSERT_EQ(made, Subjects{"i1#3"});
    EXPECT_EQ(find_pocket(job, "i1#3").pocket->notches.size(), 1u);
    EXPECT_FALSE(find_pocket(job, "i1#3").pocket->locked);
    EXPECT_EQ(find_object(job, "i1")->count, 3);
}

TEST(Edit, left_as_is_is_set_once_and_taken_back) {
    const Job job = two_pockets();
    const LeftAsIs left{"d1", "wall-thin", {"i1#2", "i1#1"}, 9.2, {}};
    Job once = with_left_as_is(job, left);
    once = with_left_as_is(once, left);
    ASSERT_EQ(once.left_as_is.size(), 1u);
    EXPECT_EQ(once.left_as_is[0].subjects.front(), "i1#1");
    EXPECT_EQ(without_left_as_is(once, once.left_as_is[0]), job);
}

TEST(Edit, whatever_is_done_the_job_can_be_saved) {
    std::mt19937 random(11);
    for (unsigned seed = 0; seed < 60; ++seed) {
        Job job = testing::RandomJob(seed).make();
        if (job.drawers.empty() || job.objects.empty()) continue;
        for (int step = 0; step < 20; ++step) {
            Subjects all;
            for (const auto& drawer : job.drawers)
                for (const auto& pocket : drawer->pockets) all.push_back(subject_of(pocket));
            const double by = std::uniform_real_distribution<double>(-90, 90)(random);
            switch (random() % 5) {
            case 0:
                job = moved(job, all, {by, by / 3});
                break;
            case 1:
                job = turned(job, all, by, {100, 50});
                break;
            case 2:
                job = duplicated(job, {all.empty() ? "x" : all[0]}, {by, 0});
                break;
            case 3:
                job = placed(job, job.drawers[0]->id, job.objects[0]->id, {{by, by}, by});
                break;
            default:
                job = with_object_copied(job, job.objects[0]->id);
                break;
            }
        }
        const auto back = read_job(write_job(job));
        ASSERT_TRUE(back) << one_line(back.error().front());
        ASSERT_EQ(write_job(*back), write_job(job)) << seed;
        ASSERT_TRUE(*back == job) << seed;
    }
}

TEST(FreeIds, are_not_given_again_while_a_measured_mold_or_cast_speaks_of_them) {
    Job job;
    Object object;
    object.id = "i1";
    job = with_object(std::move(job), object);
    Drawer drawer;
    drawer.id = "d1";
    job = with_drawer(std::move(job), drawer);
    std::string first, second;
    job = placed(std::move(job), "d1", "i1", {}, &first);
    job = placed(std::move(job), "d1", "i1", {}, &second);
    AsBuilt built;
    built.blocks = {{"i1#2", 1, 20, 0, {}}};
    job.as_built.push_back(built);
    Cast cast;
    cast.fits = {{"i7#4", 0.3, {}}};
    job.casts.push_back(cast);
    job = removed(std::move(job), {second});
    job = placed(std::move(job), "d1", "i1", {}, &second);
    EXPECT_EQ(second, "i1#3");
    const Job listed = with_objects(job, std::vector<Object>(6));
    std::vector<std::string> ids;
    for (const auto& one : listed.objects) ids.push_back(one->id);
    EXPECT_EQ(ids, (std::vector<std::string>{"i1", "i2", "i3", "i4", "i5", "i6", "i8"}));
}

TEST(FindPocket, goes_by_object_and_number) {
    const Pocket pocket{"i1", 12, {}, false, {}, {}};
    EXPECT_TRUE(is_named(pocket, "i1#12"));
    for (const char* other : {"i1#1", "i1#123", "i1#012", "i1", "i1#", "i11#2", "", "i#12"})
        EXPECT_FALSE(is_named(pocket, other)) << other;
}

} // namespace
} // namespace drawercast::job
