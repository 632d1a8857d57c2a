// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/contour.h"

#include "core/shape/random_shapes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace drawercast::shape {
namespace {

using ::testing::HasSubstr;
using testing::pi;

struct Family {
    const char* name;
    Given given;
    std::size_t core;
    double round, area, perimeter, width, height;
};

TEST(Given, FamiliesAreExact) {
    const Family families[] = {
        {"rectangle", Rectangle{160, 80, 0}, 4, 0, 12800, 480, 160, 80},
        {"rounded", Rectangle{160, 80, 10}, 4, 10, 12800 - 100 * (4 - pi), 480 - 80 + 20 * pi, 160, 80},
        {"rounded to a capsule", Rectangle{50, 20, 10}, 2, 10, 600 + 100 * pi, 60 + 20 * pi, 50, 20},
        {"upright, rounded to a capsule", Rectangle{20, 50, 10}, 2, 10, 600 + 100 * pi, 60 + 20 * pi, 20, 50},
        {"rounded to a circle", Rectangle{20, 20, 10}, 1, 10, 100 * pi, 20 * pi, 20, 20},
        {"circle", Circle{60}, 1, 30, 900 * pi, 60 * pi, 60, 60},
        {"capsule", Capsule{60, 28}, 2, 14, 32 * 28 + 196 * pi, 64 + 28 * pi, 60, 28},
        {"capsule as wide as long", Capsule{28, 28}, 1, 14, 196 * pi, 28 * pi, 28, 28},
        {"triangle", Polygon{{{{0, 0}}, {{30, 0}}, {{0, 40}}}}, 3, 0, 600, 120, 30, 40},
        {"triangle clockwise", Polygon{{{{0, 0}}, {{0, 40}}, {{30, 0}}}}, 3, 0, 600, 120, 30, 40},
    };
    for (const Family& f : families) {
        SCOPED_TRACE(f.name);
        const auto contour = contour_of(f.given);
        ASSERT_TRUE(contour) << one_line(contour.error());
        EXPECT_EQ(contour->core.size(), f.core);
        EXPECT_DOUBLE_EQ(contour->round_mm, f.round);
        EXPECT_NEAR(area(*contour), f.area, 1e-9);
        EXPECT_NEAR(perimeter(*contour), f.perimeter, 1e-10);
        EXPECT_NEAR(bounds(*contour).width(), f.width, 1e-12);
        EXPECT_NEAR(bounds(*contour).height(), f.height, 1e-12);
        EXPECT_GE(area(contour->core), 0) << "counter-clockwise";
    }
}

struct Refusal {
    const char* name;
    Given given;
    const char* code;
    const char* text;
};

TEST(Given, RefusesWithReasonAndPlace) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    std::vector<Corner> many(5001);
    for (std::size_t i = 0; i < many.size(); ++i) {
        const double angle = 2 * pi * static_cast<double>(i) / static_cast<double>(many.size());
        many[i].at = Vec{std::cos(angle), std::sin(angle)} * 500;
    }
    std::vector<Corner> arcs(many.begin(), many.begin() + 5000);
    for (Corner& c : arcs) c.sagitta_mm = 30;
    const Refusal refusals[] = {
        {"no width", Rectangle{0, 10, 0}, "outline-size", "over 0"},
        {"negative height", Rectangle{10, -1, 0}, "outline-size", "over 0"},
        {"NaN", Rectangle{nan, 10, 0}, "outline-size", "over 0"},
        {"infinite", Circle{inf}, "outline-size", "over 0"},
        {"corner too round", Rectangle{10, 6, 3.5}, "outline-size", "radius 3.5"},
        {"corner negative", Rectangle{10, 6, -1}, "outline-size", "radius -1"},
        {"circle of nothing", Circle{0}, "outline-size", "over 0"},
        {"capsule wider than long", Capsule{10, 12}, "outline-size", "as long as wide"},
        {"no corners", Polygon{}, "outline-few-corners", "no area"},
        {"two corners", Polygon{{{{0, 0}}, {{10, 0}}}}, "outline-few-corners", "no area"},
        {"on one line", Polygon{{{{0, 0}}, {{10, 0}}, {{20, 0}}}}, "outline-few-corners", "no area"},
        {"one corner thrice", Polygon{{{{1, 1}}, {{1, 1}}, {{1, 1}}}}, "outline-few-corners", "no area"},
        {"bow tie", Polygon{{{{0, 0}}, {{10, 10}}, {{10, 0}}, {{0, 10}}}}, "outline-crosses",
         "crosses itself at (5, 5)"},
        {"crossing off the middle", Polygon{{{{0, 0}}, {{24, 81}}, {{24, 0}}, {{0, 81}}}}, "outline-crosses",
         "crosses itself at (12, 40.5)"},
        {"corner on a side", Polygon{{{{0, 0}}, {{20, 0}}, {{20, 20}}, {{10, 0}}, {{0, 20}}}},
         "outline-crosses", "touches itself at (10, 0)"},
        {"slit of no width to a hollow",
         Polygon{{{{0, 0}},
                  {{20, 0}},
                  {{20, 10}},
                  {{10, 10}},
                  {{10, 5}},
                  {{12, 4}},
                  {{8, 4}},
                  {{9.999, 5}},
                  {{9.999, 10}},
                  {{0, 10}}}},
         "outline-crosses", "touches itself"},
        {"arc through the far side", Polygon{{{{0, 0}, -15}, {{20, 0}}, {{20, 10}}, {{0, 10}}}},
         "outline-crosses", "crosses itself"},
        {"crescent inside out", Polygon{{{{0, 0}, -5}, {{20, 0}, 3}}}, "outline-crosses", "change places"},
        {"corner not a number", Polygon{{{{0, nan}}, {{20, 0}}, {{0, 20}}}}, "outline-size", "not a number"},
        {"corner far away", Polygon{{{{0, 1e9}}, {{20, 0}}, {{0, 20}}}}, "outline-size", "100000"},
        {"sagitta infinite", Polygon{{{{0, 0}, inf}, {{20, 0}}, {{0, 20}}}}, "outline-size", "not a number"},
        {"too many corners", Polygon{many}, "outline-many-corners", "5000 corners"},
        {"too many chords", Polygon{arcs}, "outline-many-corners", "20000 chords"},
    };
    for (const Refusal& r : refusals) {
        SCOPED_TRACE(r.name);
        const auto contour = contour_of(r.given);
        ASSERT_FALSE(contour);
        EXPECT_EQ(contour.error().code, r.code);
        EXPECT_THAT(english(contour.error().what), HasSubstr(r.text));
        EXPECT_FALSE(contour.error().fix.empty());
    }
}

TEST(Given, MostCornersAreAccepted) {
    Polygon p;
    for (int i = 0; i < 5000; ++i)
        p.corners.push_back({Vec{std::cos(i * pi / 2500), std::sin(i * pi / 2500)} * 200});
    const auto contour = contour_of(p);
    ASSERT_TRUE(contour) << one_line(contour.error());
    EXPECT_EQ(contour->core.size(), 5000u);
}

TEST(Given, RepeatedCornersAndSpikesAreRemoved) {
    const Polygon p{{{{0, 0}},
                     {{0, 0}},
                     {{40, 0}},
                     {{70, 0}},
                     {{40, 0}}, // out and back along the lower side
                     {{40, 30}},
                     {{0, 30}},
                     {{0, 45}},
                     {{0, 30}},
                     {{0, 0}}}};
    const auto contour = contour_of(p);
    ASSERT_TRUE(contour) << one_line(contour.error());
    EXPECT_EQ(contour->core, (Ring{{0, 0}, {40, 0}, {40, 30}, {0, 30}}));
}

TEST(Given, SpikeOverTheSeamIsRemoved) {
    const Polygon p{{{{-20, 0}}, {{0, 0}}, {{40, 0}}, {{40, 30}}, {{0, 30}}, {{0, 0}}}};
    const auto contour = contour_of(p);
    ASSERT_TRUE(contour) << one_line(contour.error());
    EXPECT_DOUBLE_EQ(area(*contour), 1200);
}

/// Circular segment on a chord c with sagitta h: r = (c²/4 + h²)/(2h), area = r²(θ − sin θ)/2 (any handbook).
double segment_area(double c, double h) {
    const double r = (c * c / 4 + h * h) / (2 * h);
    const double theta = 4 * std::atan(2 * h / c);
    return r * r * (theta - std::sin(theta)) / 2;
}

TEST(Given, ArcsBulgeOutwardEitherWayRound) {
    const std::vector<Corner> ccw{{{0, 0}, 0}, {{40, 0}, 5}, {{40, 30}, -3}, {{0, 30}, 0}};
    const std::vector<Corner> cw{{{0, 30}, -3}, {{40, 30}, 5}, {{40, 0}, 0}, {{0, 0}, 0}};
    const double exact = 1200 + segment_area(30, 5) - segment_area(40, 3);
    for (const auto& corners : {ccw, cw}) {
        const auto contour = contour_of(Polygon{corners});
        ASSERT_TRUE(contour) << one_line(contour.error());
        EXPECT_NEAR(area(*contour), exact, 75 * chord_sagitta_mm);
        EXPECT_NEAR(bounds(*contour).max.x, 45, chord_sagitta_mm);
        EXPECT_NEAR(bounds(*contour).max.y, 30, 1e-12);
    }
}

TEST(Given, TwoCornersWithArcsAreEnough) {
    const auto disc = contour_of(Polygon{{{{-10, 0}, 10}, {{10, 0}, 10}}});
    ASSERT_TRUE(disc) << one_line(disc.error());
    EXPECT_NEAR(area(*disc), 100 * pi, 20 * pi * chord_sagitta_mm);
    const auto half = contour_of(Polygon{{{{-10, 0}, 10}, {{10, 0}, 0}}});
    ASSERT_TRUE(half) << one_line(half.error());
    EXPECT_NEAR(area(*half), 50 * pi, 10 * pi * chord_sagitta_mm);
    const auto keyhole = contour_of(Polygon{{{{-3, 0}, 20}, {{3, 0}, 0}}}); // more than half a circle
    ASSERT_TRUE(keyhole) << one_line(keyhole.error());
    EXPECT_NEAR(area(*keyhole), segment_area(6, 20), 70 * chord_sagitta_mm);
}

TEST(Given, ChordsKeepTheSagitta) {
    for (const double h : {0.0005, 0.01, 1.0, 8.0, 19.0}) {
        const auto contour = contour_of(Polygon{{{{0, 0}, h}, {{30, 0}}, {{15, 50}}}});
        ASSERT_TRUE(contour);
        const double r = (225 + h * h) / (2 * h);
        const Vec center{15, r - h};
        for (std::size_t i = 0; i + 1 < contour->core.size(); ++i) {
            const Vec a = contour->core[i];
            const Vec b = contour->core[i + 1];
            if (b == Vec{15, 50} || a == Vec{15, 50}) continue;
            EXPECT_LE(r - length((a + b) * 0.5 - center), chord_sagitta_mm * (1 + 1e-6)) << "sagitta " << h;
        }
    }
}

} // namespace
} // namespace drawercast::shape
