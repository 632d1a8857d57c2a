// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/scene.h"

#include <gtest/gtest.h>

#include <numbers>

namespace drawercast::layout {
namespace {

using namespace testing;

constexpr double pi = std::numbers::pi;

TEST(FootPressure, IsTheWeightOverTheDeepestLevel) {
    // Firm foam: 12 kPa at 25 %, so 6 kPa; 9.80665 N/kg over 400 mm² is 24.5 kPa a kilogram.
    struct Row {
        const char* name;
        std::vector<job::Level> levels;
        double mass_g;
        std::optional<double> kpa;
    };
    const Row rows[] = {
        {"inside", {sunk(shape::Rectangle{20, 20, 0}, 30)}, 244.7, {}},
        {"just over", {sunk(shape::Rectangle{20, 20, 0}, 30)}, 244.8, 9.80665 * 244.8 / 400},
        {"the deepest of two",
         {sunk(shape::Rectangle{90, 90, 0}, 10), sunk(shape::Circle{10}, 30)},
         60,
         9.80665 * 60 / (25 * pi)},
        {"two feet of one depth",
         {sunk(shape::Circle{10}, 30, {{-20, 0}, 0}), sunk(shape::Circle{10}, 30, {{20, 0}, 0})},
         120,
         9.80665 * 120 / (50 * pi)},
        {"stands through", {sunk(shape::Rectangle{90, 90, 0}, 10), through(shape::Circle{10})}, 5000, {}},
        {"lying, on its thickest part", {lying({{10, 30}, {40, 10}}, 5)}, 200, 9.80665 * 200 / 300},
        {"mass unknown", {sunk(shape::Circle{1}, 30)}, 0, {}},
    };
    for (const Row& row : rows) {
        Scene scene;
        scene.add(object_of("a", row.levels), {{{200, 150}, 0}});
        scene.objects[0].mass_g = row.mass_g;
        const auto found = only(scene.checks(), Code::foot_pressure);
        ASSERT_EQ(found.size(), row.kpa ? 1U : 0U) << row.name;
        if (!row.kpa) continue;
        EXPECT_NEAR(found[0].value, *row.kpa, 1e-9) << row.name;
        EXPECT_EQ(found[0].limit, 6) << row.name;
        EXPECT_EQ(found[0].severity, Severity::look) << row.name;
    }
}

TEST(Overload, IsTheSumOfWhatStandsInTheDrawer) {
    Scene scene;
    scene.drawer.load_kg = 3;
    job::Object& object = scene.add(object_of("a", {sunk(shape::Rectangle{60, 60, 0}, 30)}),
                                    {{{60, 150}, 0}, {{160, 150}, 0}, {{260, 150}, 0}});
    object.mass_g = 1000;
    EXPECT_TRUE(only(scene.checks(), Code::overload).empty());
    object.mass_g = 1001;
    const auto found = only(scene.checks(), Code::overload);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_DOUBLE_EQ(found[0].value, 3.003);
    EXPECT_EQ(found[0].limit, 3);
    EXPECT_EQ(found[0].severity, Severity::mend);
    EXPECT_TRUE(found[0].subjects.empty());
}

TEST(NotPlaced, CountsOverAllDrawers) {
    job::Job job;
    job::Object object = object_of("a", {sunk(shape::Circle{30}, 20)});
    object.count = 3;
    job.objects = {object};
    job::Drawer drawer = drawer_of(shape::Rectangle{100, 100, 0});
    drawer.pockets.resize(1);
    drawer.pockets[0].object = "a";
    job.drawers = {drawer, drawer};
    std::vector<Check> checks;
    add_not_placed(job, checks);
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].code, Code::not_placed);
    EXPECT_EQ(checks[0].severity, Severity::look);
    EXPECT_EQ(checks[0].subjects, std::vector<std::string>{"a"});
    EXPECT_EQ(checks[0].value, 2);
    EXPECT_EQ(checks[0].limit, 3);

    job.drawers.push_back(drawer);
    checks.clear();
    add_not_placed(job, checks);
    EXPECT_TRUE(checks.empty());
}

struct NotchRow {
    const char* name;
    std::vector<job::Notch> notches;
    bool apart;
    std::optional<double> wall_mm;
};

TEST(NotchApart, IsAPocketOfItsOwn) {
    const shape::Given finger = shape::Circle{20};
    const NotchRow rows[] = {
        {"across the edge", {notch(finger, {{30, 0}, 0}, 20)}, false, {}},
        {"touching", {notch(finger, {{40, 0}, 0}, 20)}, false, {}},
        {"inside", {notch(finger, {{0, 0}, 0}, 20)}, false, {}},
        {"apart", {notch(finger, {{44, 0}, 0}, 20)}, true, 4},
        {"far apart", {notch(finger, {{55, 0}, 0}, 20)}, true, {}},
        {"over another notch", {notch(finger, {{52, 0}, 0}, 20), notch(finger, {{36, 0}, 0}, 20)}, false, {}},
        {"one of two", {notch(finger, {{-36, 0}, 0}, 20), notch(finger, {{47, 0}, 0}, 20)}, true, 7},
        {"two apart", {notch(finger, {{60, 0}, 0}, 20), notch(finger, {{60, 23}, 0}, 20)}, true, 3},
        {"two apart that are one",
         {notch(finger, {{60, 0}, 0}, 20), notch(finger, {{60, 15}, 0}, 20)},
         true,
         {}},
    };
    for (const NotchRow& row : rows) {
        Scene scene;
        scene.add(object_of("a", {sunk(shape::Rectangle{60, 60, 0}, 40)}), {{{200, 150}, 45}}, row.notches);
        const auto checks = scene.checks();
        EXPECT_EQ(only(checks, Code::notch_apart).size(), row.apart ? 1U : 0U) << row.name;
        const auto walls = only(checks, Code::wall_thin);
        ASSERT_EQ(walls.size(), row.wall_mm ? 1U : 0U) << row.name;
        if (!row.wall_mm) continue;
        EXPECT_NEAR(walls[0].value, *row.wall_mm, 1e-9) << row.name;
        EXPECT_EQ(walls[0].limit, 10) << row.name << ": by the notch's depth";
        EXPECT_EQ(walls[0].subjects, std::vector<std::string>{"a#1"}) << row.name;
        EXPECT_NEAR(length(*walls[0].to - *walls[0].at), *row.wall_mm, 1e-9) << row.name;
    }
}

TEST(NotchApart, CountsAgainstTheOtherPockets) {
    Scene scene;
    scene.add(object_of("a", {sunk(shape::Rectangle{60, 60, 0}, 40)}), {{{100, 150}, 0}},
              {notch(shape::Circle{20}, {{30, 0}, 0}, 20)});
    scene.add(object_of("b", {sunk(shape::Rectangle{60, 60, 0}, 40)}), {{{177, 150}, 0}});
    const auto walls = only(scene.checks(), Code::wall_thin);
    ASSERT_EQ(walls.size(), 1U);
    EXPECT_NEAR(walls[0].value, 7, 1e-9) << "from the notch, not the 17 from the level";
}

TEST(Problems, BecomeChecksOfTheirOwnCode) {
    EXPECT_EQ(check_of({"fit-vanishes", "", {}, {}}, {"b#2", "a#1"}).code, Code::fit_vanishes);
    EXPECT_EQ(check_of({"fit-vanishes", "", {}, {}}, {"b#2", "a#1"}).subjects,
              (std::vector<std::string>{"a#1", "b#2"}));
    EXPECT_EQ(check_of({"geometry", "", {}, {}}, {}).code, Code::geometry);
    EXPECT_EQ(check_of({"something-else", "", {}, {}}, {}).code, Code::geometry);
    EXPECT_EQ(check_of({"insert-split", "", {}, {}}, {}).severity, Severity::mend);
}

} // namespace
} // namespace drawercast::layout
