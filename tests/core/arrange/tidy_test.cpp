// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/random.h"
#include "arrange/standing.h"
#include "arrange/tidy.h"
#include "job/edit.h"
#include "layout/checks.h"

#include <gtest/gtest.h>

namespace drawercast::arrange {
namespace {

/// A drawer of 400 × 300 with a few objects of two kinds: i1 60 × 40 of 100 g, i2 60 × 40 of 900 g.
job::Job two_kinds() {
    job::Job job;
    for (const auto& [id, mass] : {std::pair{"i1", 100.0}, {"i2", 900.0}}) {
        job::Object object;
        object.id = id;
        object.count = 20;
        object.mass_g = mass;
        object.levels.push_back({job::Sunk{shape::Rectangle{60, 40, 3}, 30}, {}, {}});
        job = job::with_object(job, object);
    }
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{400, 300, 0};
    return job::with_drawer(job, drawer);
}

std::vector<layout::Check> to_mend(const job::Job& job) {
    const job::Drawer& drawer = *job::find_drawer(job, "d1");
    const auto insert = std::make_shared<const layout::Insert>(
        *layout::insert_of(drawer, layout::gap_of(drawer, job.foam->firmness)));
    std::vector<layout::Check> out;
    for (const auto& check :
         layout::layout_checks(standing_in(job, drawer), layout::limits_of(job, drawer, insert)))
        if (about_place(check)) out.push_back(check);
    return out;
}

shape::Pose pose(const job::Job& job, const char* subject) {
    return job::find_pocket(job, subject).pocket->pose;
}

TEST(Tidied, APocketAloneStandsInTheMiddle) {
    const auto job = job::placed(two_kinds(), "d1", "i1", {{80, 70}, 0});
    const Tidied done = tidied(job, "d1", Wish::equal_walls);
    EXPECT_EQ(done.moved, 1);
    EXPECT_NEAR(pose(done.job, "i1#1").at.x, 200, 0.02);
    EXPECT_NEAR(pose(done.job, "i1#1").at.y, 150, 0.02);
    EXPECT_GT(done.narrowest_after_mm, done.narrowest_before_mm);
}

TEST(Tidied, WallsOfARowComeOutEqual) {
    auto job = two_kinds();
    for (const double x : {50.0, 130.0, 330.0}) job = job::placed(job, "d1", "i1", {{x, 150}, 0});
    const Tidied done = tidied(job, "d1", Wish::equal_walls);
    const double first = pose(done.job, "i1#2").at.x - pose(done.job, "i1#1").at.x;
    const double second = pose(done.job, "i1#3").at.x - pose(done.job, "i1#2").at.x;
    EXPECT_NEAR(first, second, 0.1);
    EXPECT_NEAR(pose(done.job, "i1#2").at.x, 200, 0.1);
}

TEST(Tidied, LabelsReadFromTheFrontAndLockedOnesStay) {
    auto job = two_kinds();
    job = job::placed(job, "d1", "i1", {{100, 100}, 180});
    job = job::placed(job, "d1", "i1", {{200, 100}, 270});
    job = job::placed(job, "d1", "i2", {{300, 100}, 180});
    job = job::locked(job, {"i2#1"}, true);
    const Tidied done = tidied(job, "d1", Wish::labels_one_way);
    EXPECT_EQ(pose(done.job, "i1#1").turn_deg, 0);
    EXPECT_EQ(pose(done.job, "i1#2").turn_deg, 0);
    EXPECT_EQ(pose(done.job, "i2#1").turn_deg, 180);
    EXPECT_EQ(done.moved, 2);
    EXPECT_EQ(done.left, 0);
}

TEST(Tidied, WhatTurnsEndForEndAloneKeepsItsAxis) {
    auto job = two_kinds();
    job::Object object = *job::find_object(job, "i1");
    object.turns = job::Turns::half;
    job = job::with_object(job, object);
    job = job::placed(job, "d1", "i1", {{100, 100}, 180});
    job = job::placed(job, "d1", "i1", {{200, 100}, 90});
    job = job::placed(job, "d1", "i1", {{300, 100}, 270});
    const Tidied done = tidied(job, "d1", Wish::labels_one_way);
    EXPECT_EQ(pose(done.job, "i1#1").turn_deg, 0);
    EXPECT_EQ(pose(done.job, "i1#2").turn_deg, 90);
    EXPECT_EQ(pose(done.job, "i1#3").turn_deg, 90);
    EXPECT_EQ(done.left, 0);
}

TEST(Tidied, HeavyAndLightChangePlaces) {
    auto job = two_kinds();
    job = job::placed(job, "d1", "i1", {{100, 60}, 0});
    job = job::placed(job, "d1", "i2", {{300, 240}, 0});
    const Tidied done = tidied(job, "d1", Wish::heavy_in_front);
    EXPECT_NEAR(pose(done.job, "i2#1").at.y, 60, 1e-6);
    EXPECT_NEAR(pose(done.job, "i1#1").at.y, 240, 1e-6);
    EXPECT_LT(done.heavy_after_mm, done.heavy_before_mm);
}

/// Whatever the wish, what was in order stays in order, and the heavy never come to stand further back.
TEST(Tidied, NothingIsSpoiledInRandomLayouts) {
    Random random(11);
    for (int k = 0; k < 40; ++k) {
        auto job = two_kinds();
        for (int n = 0; n < 12; ++n) {
            const auto more = job::placed(job, "d1", random() < 0.5 ? "i1" : "i2",
                                          {{random.between(30, 370), random.between(30, 270)},
                                           90.0 * static_cast<double>(random.below(4))});
            if (to_mend(more).empty()) job = more;
        }
        for (const Wish wish : {Wish::equal_walls, Wish::labels_one_way, Wish::heavy_in_front}) {
            const Tidied done = tidied(job, "d1", wish);
            EXPECT_TRUE(to_mend(done.job).empty()) << k;
            EXPECT_EQ(job::find_drawer(done.job, "d1")->pockets.size(),
                      job::find_drawer(job, "d1")->pockets.size());
            if (wish == Wish::heavy_in_front) {
                EXPECT_LE(done.heavy_after_mm, done.heavy_before_mm + 1e-6);
            }
        }
    }
}

TEST(Tidy, less_than_a_tenth_of_a_millimeter_is_no_gain) {
    Tidied tidied;
    tidied.narrowest_before_mm = 12;
    tidied.narrowest_after_mm = 13;
    EXPECT_FALSE(gains(tidied)) << "nothing moved";
    tidied.moved = 1;
    EXPECT_TRUE(gains(tidied));
    tidied.narrowest_after_mm = 12.09;
    EXPECT_FALSE(gains(tidied)) << "12 mm to 12 mm";
    tidied.wish = Wish::heavy_in_front;
    tidied.heavy_before_mm = tidied.heavy_after_mm = 150;
    EXPECT_FALSE(gains(tidied));
    tidied.heavy_after_mm = 149.8;
    EXPECT_TRUE(gains(tidied));
    tidied.wish = Wish::labels_one_way;
    EXPECT_TRUE(gains(tidied)) << "a label turned is one";
}

} // namespace
} // namespace drawercast::arrange
