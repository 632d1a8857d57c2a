// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/bodies.h"
#include "buildup/picture.h"
#include "buildup/plan_order.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace drawercast::buildup {
namespace {

using shape::Box;
using shape::Vec;

bool in_plan(const shape::Region& region, Vec p) {
    int crossings = 0;
    const auto count = [&](const shape::Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Vec a = ring[i], b = ring[(i + 1) % ring.size()];
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
                ++crossings;
        }
    };
    for (const auto& patch : region.patches) {
        count(patch.outer);
        for (const auto& hole : patch.holes) count(hole);
    }
    return crossings % 2 == 1;
}

/// The first solid along the sight line through a point of the picture: by small steps, knowing nothing of
/// faces and their order. −1: none.
int first_hit(const Scene& scene, const Look& look, Vec point) {
    const auto turn = shape::Turn::of_degrees(-look.turn_deg);
    const double sine = sight_sine, cosine = std::sqrt(1 - sine * sine);
    for (double height = 600; height > -60; height -= 0.25) {
        const double depth = (point.y - height * cosine) / sine;
        const Vec plan = turn(Vec{point.x, depth});
        for (std::size_t i = 0; i < scene.solids.size(); ++i) {
            const double lift = lift_of(scene.solids[i].part, scene.height_mm, look.apart);
            const auto here = plan_at(scene.solids[i], height - lift);
            if (!here.empty() && in_plan(here, plan)) return static_cast<int>(i);
        }
    }
    return -1;
}

/// Boxes, discs and stepped bodies that do not run into each other, on a base.
Scene random_scene(unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0, 1);
    Scene scene;
    scene.height_mm = 40;
    scene.outside = {{0, 0}, {200, 200}};
    scene.cut_at = {-1000, -1000};
    scene.solids.push_back({Part::base, "0", {{rectangle(scene.outside), -12, 0}}});
    constexpr Part parts[] = {Part::block, Part::wall, Part::plate, Part::stiffener, Part::closure};
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column) {
            const Vec center{25.0 + 50 * column, 25.0 + 50 * row};
            Solid solid{parts[random() % 5], std::to_string(scene.solids.size()), {}};
            const double bottom = 30 * share(random), top = bottom + 5 + 35 * share(random);
            const double size = 8 + 15 * share(random), lean = 6 * share(random);
            const auto plan = random() % 2 == 0
                                  ? disc(center, size)
                                  : strip(center - Vec{size, lean}, center + Vec{size, lean}, size);
            solid.layers.push_back({plan, bottom, top});
            if (random() % 3 == 0) solid.layers.push_back({disc(center, 4), top, top + 15});
            scene.solids.push_back(std::move(solid));
        }
    return scene;
}

TEST(Picture, WhatIsSeenIsTheFirstThatASightLineMeets) {
    int checked = 0, wrong = 0;
    for (unsigned seed = 1; seed <= 6; ++seed) {
        const Scene scene = random_scene(seed);
        std::mt19937 random(seed);
        for (const double turn : {15.0, 45.0, 90.0, 200.0, 285.0, 333.0})
            for (const double apart : {0.0, 0.6}) {
                const Look look{turn, apart};
                const auto all = painted(scene, look);
                const Box box = bounds(all);
                for (int i = 0; i < 12; ++i) {
                    const Vec p{box.min.x + box.width() * static_cast<double>(random() % 1000) / 1000,
                                box.min.y + box.height() * static_cast<double>(random() % 1000) / 1000};
                    const int hit = first_hit(scene, look, p);
                    // at an edge the steps of the sight line decide: only points whose surroundings agree
                    bool edge = false;
                    for (const Vec by : {Vec{0.4, 0}, Vec{-0.4, 0}, Vec{0, 0.4}, Vec{0, -0.4}})
                        edge = edge || first_hit(scene, look, p + by) != hit;
                    if (edge) continue;
                    ++checked;
                    const int seen = seen_at(all, p);
                    const std::string subject = seen < 0 ? "" : all[static_cast<std::size_t>(seen)].subject;
                    const std::string due =
                        hit < 0 ? "" : scene.solids[static_cast<std::size_t>(hit)].subject;
                    wrong += subject != due;
                }
            }
    }
    EXPECT_GT(checked, 500);
    EXPECT_EQ(wrong, 0);
}

TEST(Picture, FartherSidesComeBeforeThoseThatHideThem) {
    const std::vector<Span> spans{{{0, 0}, {10, 0}}, {{2, 5}, {8, 6}}, {{-5, 9}, {20, 3}}};
    EXPECT_EQ(far_to_near(spans), (std::vector<int>{2, 1, 0}));
}

TEST(Picture, TheQuarterThatIsCutAwayFacesTheViewer) {
    for (int turn = 15; turn < 360; turn += 30) {
        const Projection seen(turn);
        const Quarter quarter = facing_quarter(turn);
        const Vec corner{quarter.right ? 1.0 : -1.0, quarter.back ? 1.0 : -1.0};
        for (const Vec other : {Vec{1, 1}, Vec{1, -1}, Vec{-1, 1}, Vec{-1, -1}})
            EXPECT_LE(seen.turned(corner).y, seen.turned(other).y + 1e-9) << turn;
    }
}

TEST(Picture, TheThreeAxesAreShortenedAlike) {
    const Projection seen(45); // isometric, ISO 5456-3
    const double x = shape::length(seen({1, 0}, 0)), y = shape::length(seen({0, 1}, 0));
    EXPECT_NEAR(x, std::sqrt(2.0 / 3), 1e-12);
    EXPECT_NEAR(y, std::sqrt(2.0 / 3), 1e-12);
    EXPECT_NEAR(shape::length(seen({0, 0}, 1)), std::sqrt(2.0 / 3), 1e-12);
}

} // namespace
} // namespace drawercast::buildup
