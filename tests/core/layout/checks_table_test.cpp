// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/scene.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>

namespace drawercast::layout {
namespace {

using namespace testing;

struct Expectation {
    const char* name;
    std::function<void(Scene&)> build;
    Code code;
    std::optional<Severity> severity; ///< nothing: no check of the code
    double value = 0;
    double limit = 0;
    std::vector<std::string> subjects{};
};

void PrintTo(const Expectation& row, std::ostream* out) { *out << row.name; }

/// Two equal blocks side by side in the middle of the drawer, `wall` between them.
void pair(Scene& scene, double wall, double depth_a, double depth_b) {
    scene.add(object_of("a", {sunk(shape::Rectangle{40, 40, 0}, depth_a)}), {{{150, 150}, 0}});
    scene.add(object_of("b", {sunk(shape::Rectangle{40, 40, 0}, depth_b)}), {{{190 + wall, 150}, 0}});
}
std::function<void(Scene&)> walls(double wall, double depth_a, double depth_b) {
    return [=](Scene& scene) { pair(scene, wall, depth_a, depth_b); };
}

/// A 40 × 40 block `edge` from the left edge.
std::function<void(Scene&)> edges(double edge, double depth) {
    return [=](Scene& scene) {
        scene.add(object_of("a", {sunk(shape::Rectangle{40, 40, 0}, depth)}), {{{20 + edge, 150}, 0}});
    };
}

std::function<void(Scene&)> one(std::vector<job::Level> levels, double mass_g = 0, double height_mm = 20,
                                std::vector<job::Notch> notches = {}) {
    return [=](Scene& scene) {
        job::Object object = object_of("a", levels);
        object.mass_g = mass_g;
        object.height_mm = height_mm;
        scene.add(object, {{{200, 150}, 30}}, notches);
    };
}

std::function<void(Scene&)> beside_obstruction(shape::Vec at) {
    return [=](Scene& scene) {
        scene.drawer.gap_mm = 0.5;
        scene.drawer.obstructions = {{shape::Rectangle{60, 40, 0}, {{370, 280}, 0}, {}},
                                     {shape::Circle{50}, {{100, 100}, 0}, {}}};
        scene.add(object_of("a", {sunk(shape::Circle{40}, 30)}), {{at, 0}});
    };
}

const shape::Given square = shape::Rectangle{40, 40, 0};

class LayoutChecks : public ::testing::TestWithParam<Expectation> {};

TEST_P(LayoutChecks, AppearAtTheRightFigure) {
    const Expectation& row = GetParam();
    Scene scene;
    row.build(scene);
    const auto found = only(scene.checks(), row.code);
    if (!row.severity) {
        EXPECT_TRUE(found.empty());
        return;
    }
    ASSERT_EQ(found.size(), 1U);
    const Check& check = found[0];
    EXPECT_EQ(text_of(check.severity), text_of(*row.severity));
    // How far two outlines overlap comes over the grid of set operations.
    EXPECT_NEAR(check.value, row.value, row.limit == 0 ? 0.002 : 1e-6);
    EXPECT_NEAR(check.limit, row.limit, 1e-9);
    const std::vector<std::string> subjects =
        row.subjects.empty() ? std::vector<std::string>{"a#1"} : row.subjects;
    EXPECT_EQ(check.subjects, subjects);
    if (check.at && check.to && unit_of(check.code) == "mm") {
        const double drawn = length(*check.to - *check.at);
        EXPECT_NEAR(drawn, check.value, 1e-6) << "the segment shown is the distance named";
    }
}

const std::vector<std::string> both{"a#1", "b#1"};

constexpr auto mend = Severity::mend;
constexpr auto look = Severity::look;

INSTANTIATE_TEST_SUITE_P(
    Walls, LayoutChecks,
    ::testing::Values(
        Expectation{"just enough", walls(10, 40, 40), Code::wall_thin, {}},
        Expectation{"just too thin", walls(9.99, 40, 40), Code::wall_thin, look, 9.99, 10, both},
        Expectation{"at 60 percent", walls(6, 40, 40), Code::wall_thin, look, 6, 10, both},
        Expectation{"below 60 percent", walls(5.99, 40, 40), Code::wall_thin, mend, 5.99, 10, both},
        Expectation{"a quarter of the depth", walls(11.9, 48, 48), Code::wall_thin, look, 11.9, 12, both},
        Expectation{"of the lesser depth", walls(10.9, 48, 44), Code::wall_thin, look, 10.9, 11, both},
        Expectation{"the lesser depth lets it pass", walls(10, 56, 20), Code::wall_thin, {}},
        Expectation{"touching", walls(0, 30, 30), Code::wall_thin, mend, 0, 10, both},
        Expectation{"touching is no overlap", walls(0, 30, 30), Code::overlap, {}},
        Expectation{"overlap", walls(-3, 30, 30), Code::overlap, mend, 3, 0, both},
        Expectation{"overlap says it all", walls(-3, 30, 30), Code::wall_thin, {}},
        Expectation{"overlap is by how much one gives way", walls(-37, 30, 30), Code::overlap, mend, 37, 0,
                    both}));

INSTANTIATE_TEST_SUITE_P(
    Edges, LayoutChecks,
    ::testing::Values(Expectation{"just enough", edges(12, 50), Code::edge_thin, {}},
                      Expectation{"just too thin", edges(11.99, 50), Code::edge_thin, look, 11.99, 12},
                      Expectation{"deep", edges(14.9, 50.5), Code::edge_thin, look, 14.9, 15},
                      Expectation{"mend", edges(7.1, 50), Code::edge_thin, mend, 7.1, 12},
                      Expectation{"flush", edges(0, 50), Code::edge_thin, mend, 0, 12},
                      Expectation{"flush is not outside", edges(0, 50), Code::outside, {}},
                      Expectation{"outside", edges(-2, 50), Code::outside, mend, 2, 0},
                      Expectation{"outside says it all", edges(-2, 50), Code::edge_thin, {}},
                      Expectation{"far outside", edges(-60, 50), Code::outside, mend, 60, 0}));

INSTANTIATE_TEST_SUITE_P(
    Obstructions, LayoutChecks,
    ::testing::Values(
        Expectation{
            "clear of the hole", beside_obstruction({100 + 25.5 + 20 + 12, 100}), Code::edge_thin, {}},
        Expectation{"thin to the hole", beside_obstruction({100 + 25.5 + 20 + 9, 100}), Code::edge_thin, look,
                    9, 12},
        Expectation{"into the gap about it", beside_obstruction({100 + 25.5 + 19.8, 100}), Code::outside,
                    mend, 0.2, 0},
        Expectation{"not yet on it", beside_obstruction({100 + 25.5 + 19.8, 100}), Code::obstructed, {}},
        Expectation{"on it", beside_obstruction({130, 100}), Code::obstructed, mend, 0, 0},
        Expectation{"right over it", beside_obstruction({100, 100}), Code::obstructed, mend, 0, 0},
        Expectation{"on it, but not outside", beside_obstruction({130, 100}), Code::outside, {}},
        Expectation{"on the corner one", beside_obstruction({335, 280}), Code::obstructed, mend, 0, 0},
        Expectation{"on it and out of the drawer", beside_obstruction({390, 285}), Code::outside, mend, 10,
                    0},
        Expectation{"thin beside the corner one", beside_obstruction({339.5 - 20 - 8, 280 - 20}),
                    Code::edge_thin, look, 8, 12}));

INSTANTIATE_TEST_SUITE_P(
    Floors, LayoutChecks,
    ::testing::Values(
        Expectation{"just enough", one({sunk(square, 48)}), Code::floor_thin, {}},
        Expectation{"just too thin", one({sunk(square, 48.1)}), Code::floor_thin, look, 11.9, 12},
        Expectation{"mend", one({sunk(square, 53)}), Code::floor_thin, mend, 7, 12},
        Expectation{"as deep as the insert", one({sunk(square, 60)}), Code::floor_thin, mend, 0, 12},
        Expectation{"deeper than the insert", one({sunk(square, 61)}), Code::floor_thin, mend, -1, 12},
        Expectation{"through has none", one({through(square)}), Code::floor_thin, {}},
        Expectation{"1 kg is not heavy", one({sunk(square, 48)}, 1000), Code::floor_thin, {}},
        Expectation{"heavy", one({sunk(square, 48)}, 1001), Code::floor_thin, look, 12, 15},
        Expectation{"100 is not wide", one({sunk(shape::Rectangle{150, 100, 0}, 48)}), Code::floor_thin, {}},
        Expectation{"wide both ways", one({sunk(shape::Rectangle{150, 101, 0}, 48)}), Code::floor_thin, look,
                    12, 15},
        Expectation{"wide, level turned on its object",
                    one({sunk(shape::Rectangle{150, 100, 0}, 48, {{0, 0}, 45})}),
                    Code::floor_thin,
                    {}},
        Expectation{"the worst level", one({sunk(shape::Rectangle{150, 101, 0}, 46), sunk(square, 49)}),
                    Code::floor_thin, look, 11, 12},
        Expectation{"a notch too",
                    one({sunk(square, 20)}, 0, 20, {notch(shape::Circle{25}, {{20, 0}, 0}, 50)}),
                    Code::floor_thin, look, 10, 12},
        Expectation{"nothing heavy rests in a notch",
                    one({sunk(square, 20)}, 2000, 20, {notch(shape::Circle{25}, {{20, 0}, 0}, 47)}),
                    Code::floor_thin,
                    {}}));

INSTANTIATE_TEST_SUITE_P(
    Heights, LayoutChecks,
    ::testing::Values(
        Expectation{"to the brim", one({sunk(square, 40)}, 0, 70), Code::too_high, {}},
        Expectation{"over it", one({sunk(square, 40)}, 0, 70.5), Code::too_high, mend, 90.5, 90},
        Expectation{"through stands on the bottom", one({through(square)}, 0, 90), Code::too_high, {}},
        Expectation{"through, over it", one({through(square)}, 0, 91), Code::too_high, mend, 91, 90},
        Expectation{"does not sink below the bottom", one({sunk(square, 70)}, 0, 91), Code::too_high, mend,
                    91, 90},
        Expectation{"a notch does not lower it",
                    one({sunk(square, 40)}, 0, 70.5, {notch(shape::Circle{25}, {{20, 0}, 0}, 45)}),
                    Code::too_high, mend, 90.5, 90}));

TEST(LayoutChecksOfNeighbors, FlushSidesAtAnyTurnAreAThinWallAndNoOverlap) {
    for (int turn_deg = 0; turn_deg < 180; ++turn_deg) {
        const double turn = turn_deg * std::numbers::pi / 180;
        const shape::Vec step{40 * std::cos(turn), 40 * std::sin(turn)};
        const double turned = turn_deg;
        Scene scene; // in floating point they overlap or part by next to nothing
        scene.add(object_of("a", {sunk(square, 30)}), {{{150.3, 150.7}, turned}});
        scene.add(object_of("b", {sunk(square, 30)}), {{shape::Vec{150.3, 150.7} + step, turned}});
        const auto checks = scene.checks();
        EXPECT_TRUE(only(checks, Code::overlap).empty()) << turn_deg;
        const auto found = only(checks, Code::wall_thin);
        ASSERT_EQ(found.size(), 1U) << turn_deg;
        EXPECT_NEAR(found[0].value, 0, 1e-9) << turn_deg;
    }
}

TEST(LayoutChecksOfTheDrawer, AnInsertHigherThanTheDrawerIsAMend) {
    Scene scene;
    scene.drawer.clear_height_mm = 59;
    const auto checks = scene.checks();
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].code, Code::too_high);
    EXPECT_TRUE(checks[0].subjects.empty());
    EXPECT_EQ(checks[0].value, 60);
    EXPECT_EQ(checks[0].limit, 59);
}

} // namespace
} // namespace drawercast::layout
