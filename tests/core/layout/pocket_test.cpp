// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/scene.h"

#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::layout {
namespace {

using namespace testing;

TEST(PocketForm, EachLevelAndNotchIsOneHollowInOrder) {
    const job::Object object =
        object_of("i1", {sunk(shape::Rectangle{100, 60, 0}, 20), through(shape::Circle{30}, {{10, 0}, 0})});
    const auto form = pocket_form(object, {notch(shape::Capsule{28, 25}, {{0, 30}, 90}, 12)}, {0, 0}, 60);
    ASSERT_TRUE(form.has_value());
    ASSERT_EQ(form->cuts.size(), 3U);
    EXPECT_EQ(form->cuts[0].kind, Cut<shape::InObject>::Kind::level);
    EXPECT_EQ(form->cuts[0].index, 0);
    EXPECT_EQ(form->cuts[0].depth_mm, 20);
    EXPECT_FALSE(form->cuts[0].through);
    EXPECT_EQ(form->cuts[1].index, 1);
    EXPECT_TRUE(form->cuts[1].through);
    EXPECT_EQ(form->cuts[1].depth_mm, 60) << "a through level is as deep as the insert";
    EXPECT_EQ(form->cuts[2].kind, Cut<shape::InObject>::Kind::notch);
    EXPECT_EQ(form->cuts[2].index, 0);
    EXPECT_EQ(form->cuts[2].depth_mm, 12);
    EXPECT_EQ(form->greatest_depth_mm, 60);
}

TEST(PocketForm, FitSqueezesLevelsAndLeavesNotches) {
    const job::Object object = object_of("i1", {sunk(shape::Rectangle{100, 60, 0}, 20)});
    const auto form = pocket_form(object, {notch(shape::Circle{25}, {{0, 30}, 0}, 12)}, {-0.5, -1}, 60);
    ASSERT_TRUE(form.has_value());
    const shape::Box box = shape::bounds(form->cuts[0].outline.contour);
    EXPECT_DOUBLE_EQ(box.width(), 98);
    EXPECT_DOUBLE_EQ(box.height(), 59);
    EXPECT_DOUBLE_EQ(shape::bounds(form->cuts[1].outline.contour).width(), 25);
}

TEST(PocketForm, LyingRoundsOpenAsWideAsTheyAreAtTheFace) {
    struct Row {
        const char* name;
        double axis_mm, width_mm, depth_mm;
    };
    const Row rows[] = {
        {"axis at the face", 0, 40, 20},
        {"axis below: straight sides above it", 10, 40, 30},
        {"axis above: the chord", -12, 32, 8}}; // 3-4-5: half chord 16 at 12 from the middle of 20
    for (const Row& row : rows) {
        const auto form = pocket_form(object_of("i1", {lying({{100, 40}}, row.axis_mm)}), {}, {0, 0}, 60);
        ASSERT_TRUE(form.has_value()) << row.name;
        const auto& cut = form->cuts.at(0);
        EXPECT_DOUBLE_EQ(shape::bounds(cut.outline.contour).height(), row.width_mm) << row.name;
        EXPECT_DOUBLE_EQ(shape::bounds(cut.outline.contour).width(), 100) << row.name;
        EXPECT_DOUBLE_EQ(cut.depth_mm, row.depth_mm) << row.name;
        ASSERT_TRUE(cut.round.has_value());
        EXPECT_DOUBLE_EQ(cut.round->radius_mm, 20);
        EXPECT_DOUBLE_EQ(cut.round->axis_mm, row.axis_mm);
    }
}

TEST(PocketForm, SqueezingASteppedRoundIsSqueezingTheWhole) {
    // 60 of 40 then 30 of 20: free ends come in by 1, so does the shoulder of the thicker one.
    const job::Object object = object_of("i1", {lying({{60, 40}, {30, 20}}, 5)});
    const auto form = pocket_form(object, {}, {-0.5, -1}, 60);
    ASSERT_TRUE(form.has_value());
    ASSERT_EQ(form->cuts.size(), 2U);
    const shape::Box thick = shape::bounds(form->cuts[0].outline.contour);
    const shape::Box thin = shape::bounds(form->cuts[1].outline.contour);
    EXPECT_DOUBLE_EQ(thick.min.x, -44);
    EXPECT_DOUBLE_EQ(thick.max.x, 14);
    EXPECT_DOUBLE_EQ(thin.min.x, 14);
    EXPECT_DOUBLE_EQ(thin.max.x, 44);
    EXPECT_DOUBLE_EQ(thick.height(), 39);
    EXPECT_DOUBLE_EQ(thin.height(), 19);
    EXPECT_DOUBLE_EQ(form->cuts[0].depth_mm, 24.5);
}

TEST(PocketForm, AFitThatLeavesNothingIsRefused) {
    const shape::Fit fit{-2, -2};
    const struct {
        const char* name;
        job::Level level;
    } rows[] = {{"rectangle", sunk(shape::Rectangle{100, 3.9, 0}, 20)},
                {"circle", sunk(shape::Circle{4}, 20)},
                {"through", through(shape::Capsule{30, 3})},
                {"lying, thin", lying({{100, 4}}, 5)},
                {"lying, short", lying({{3, 40}}, 5)},
                {"lying, axis too high", lying({{100, 40}}, -19)},
                {"dumb-bell", sunk(shape::Polygon{{{{0, 0}, 0},
                                                   {{20, 0}, 0},
                                                   {{20, 9}, 0},
                                                   {{40, 9}, 0},
                                                   {{40, 0}, 0},
                                                   {{60, 0}, 0},
                                                   {{60, 20}, 0},
                                                   {{40, 20}, 0},
                                                   {{40, 11}, 0},
                                                   {{20, 11}, 0},
                                                   {{20, 20}, 0},
                                                   {{0, 20}, 0}}},
                                   20)}};
    for (const auto& row : rows) {
        const auto form = pocket_form(object_of("i7", {row.level}), {}, fit, 60);
        ASSERT_FALSE(form.has_value()) << row.name;
        EXPECT_EQ(form.error().code, "fit-vanishes") << row.name;
        EXPECT_EQ(english(form.error().where), "i7") << row.name;
    }
}

TEST(PlacedPocket, TurnsAboutTheObjectsOriginAndKeepsItsBoxes) {
    const job::Object object = object_of("i1", {sunk(shape::Rectangle{100, 60, 0}, 20)});
    const job::Pocket pocket{"i1", 3, {{200, 150}, 90}, false, {notch(shape::Circle{20}, {{50, 0}, 0}, 10)},
                             {}};
    const auto placed = stand(object, pocket, 60);
    EXPECT_EQ(placed->subject, "i1#3");
    EXPECT_EQ(placed->boxes.at(0), (shape::Box{{170, 100}, {230, 200}}));
    EXPECT_EQ(placed->boxes.at(1), (shape::Box{{190, 190}, {210, 210}}));
    EXPECT_EQ(placed->box, (shape::Box{{170, 100}, {230, 210}}));
    EXPECT_EQ(placed->cuts.at(1).kind, Cut<shape::InDrawer>::Kind::notch);
}

TEST(Practice, FitAndGapFollowTheFoamUnlessSet) {
    job::Object object = object_of("i1", {});
    EXPECT_EQ(fit_of(object, job::Firmness::soft), (shape::Fit{0, 0})) << "set in the test's object";
    object.fit_mm.reset();
    EXPECT_EQ(fit_of(object, job::Firmness::firm), (shape::Fit{-0.5, -0.5}));
    EXPECT_EQ(fit_of(object, job::Firmness::medium), (shape::Fit{-1, -1}));
    EXPECT_EQ(fit_of(object, job::Firmness::soft), (shape::Fit{-2, -2}));
    object.fit_end_mm = 0.5;
    EXPECT_EQ(fit_of(object, job::Firmness::soft), (shape::Fit{-2, 0.5}));

    job::Drawer drawer = drawer_of(shape::Rectangle{10, 10, 0});
    EXPECT_EQ(gap_of(drawer, job::Firmness::firm), 0);
    drawer.gap_mm.reset();
    EXPECT_EQ(gap_of(drawer, job::Firmness::firm), 0.5);
    EXPECT_EQ(gap_of(drawer, job::Firmness::medium), 0.5);
    EXPECT_EQ(gap_of(drawer, job::Firmness::soft), 0);
}

} // namespace
} // namespace drawercast::layout
