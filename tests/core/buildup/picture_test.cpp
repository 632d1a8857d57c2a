// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/bodies.h"
#include "buildup/picture.h"
#include "buildup/plan_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

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
    double top = 0;
    for (const Solid& solid : scene.solids)
        top = std::max(top, solid.layers.back().top_mm + lift_of(solid.part, scene.height_mm, look.apart));
    for (double height = top; height > -60; height -= 0.25) {
        const double depth = (point.y - height * cosine) / sine;
        const Vec plan = turn(Vec{point.x, depth});
        for (std::size_t i = 0; i < scene.solids.size(); ++i) {
            const double within = height - lift_of(scene.solids[i].part, scene.height_mm, look.apart);
            for (const Layer& layer : scene.solids[i].layers)
                if (layer.bottom_mm <= within && within < layer.top_mm && in_plan(layer.plan, plan))
                    return static_cast<int>(i);
        }
    }
    return -1;
}

std::string name_of(const Solid& solid) {
    return std::to_string(static_cast<int>(solid.part)) + "/" + solid.subject;
}

struct Compared {
    int points = 0;
    std::string wrong; ///< where the picture shows something else, in words
};

/// Points of the picture at random against the sight lines through them.
void compare(const Scene& scene, const Look& look, int points, unsigned seed, Compared& so_far) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share(0, 1);
    const auto all = painted(scene, look);
    const Box box = bounds(all);
    for (int i = 0; i < points; ++i) {
        const Vec p{box.min.x + box.width() * share(random), box.min.y + box.height() * share(random)};
        const int hit = first_hit(scene, look, p);
        // at an edge the steps of the sight line decide: only points whose surroundings agree
        bool edge = false;
        for (const Vec by : {Vec{0.4, 0}, Vec{-0.4, 0}, Vec{0, 0.4}, Vec{0, -0.4}})
            edge = edge || first_hit(scene, look, p + by) != hit;
        if (edge) continue;
        ++so_far.points;
        const int seen = seen_at(all, p);
        const std::string shown = seen < 0 ? ""
                                           : name_of({all[static_cast<std::size_t>(seen)].part,
                                                      all[static_cast<std::size_t>(seen)].subject,
                                                      {}});
        const std::string due = hit < 0 ? "" : name_of(scene.solids[static_cast<std::size_t>(hit)]);
        if (shown != due)
            so_far.wrong += " [turned " + std::to_string(look.turn_deg) + ", apart " +
                            std::to_string(look.apart) + ": " + shown + " for " + due + "]";
    }
}

constexpr int turn_step_deg = 15; ///< of the window

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

TEST(Picture, WhatIsSeenIsTheFirstThatASightLineMeetsFromEachTurn) {
    Compared compared;
    unsigned seed = 0;
    for (int turn = 0; turn < 360; turn += turn_step_deg) {
        const Scene scene = random_scene(1 + ++seed % 6);
        for (const double apart : {0.0, 0.6}) compare(scene, {double(turn), apart}, 12, seed, compared);
    }
    EXPECT_GT(compared.points, 400);
    EXPECT_EQ(compared.wrong, "");
}

layout::Cut<shape::InMold> cut(shape::Contour contour, double height_mm) {
    layout::Cut<shape::InMold> made;
    made.outline.contour = std::move(contour);
    made.depth_mm = height_mm;
    return made;
}

/// A small mold with a box, a cylinder and a stepped block in clay, a plate with a stiffener, screws, a vent.
SceneIn small_mold() {
    SceneIn in;
    in.board.box = {{0, 0}, {220, 160}};
    in.board.height_mm = 50;
    in.board.opening.region = rectangle(in.board.box);
    const auto block = [&](const char* subject, std::vector<casting::BlockPart> parts) {
        casting::Block made;
        made.subject = subject;
        made.parts = std::move(parts);
        in.board.blocks.push_back(std::move(made));
    };
    block("box#1", {{cut({{{20, 25}, {80, 25}, {80, 75}, {20, 75}}, 0}, 35), 35}});
    block("round#1", {{cut({{{150, 45}}, 22}, 42), 42}});
    block("steps#1", {{cut({{{40, 100}, {180, 100}, {180, 140}, {40, 140}}, 4}, 15), 15},
                      {cut({{{60, 105}, {120, 105}, {120, 135}, {60, 135}}, 2}, 30), 30}});
    mold::PlateDesign design;
    design.stiffener = job::Stiffener{};
    design.stiffener->width_mm = 40, design.stiffener->height_mm = 60;
    const auto at = [](double x, double y) { return shape::Point<shape::InMold>::of({x, y}); };
    design.stiffeners = {{at(110, -16), at(110, 176)}};
    design.closure.diameter_mm = 5, design.closure.length_mm = 50;
    design.end_closure.diameter_mm = 8, design.end_closure.length_mm = 120;
    for (const double x : {30.0, 190.0})
        for (const double y : {-8.0, 168.0}) design.closures.push_back({at(x, y), false});
    for (const double y : {-8.0, 168.0}) design.closures.push_back({at(110, y), true});
    in.design = design;
    in.vents.push_back({{60, 80}, 6});
    return in;
}

TEST(Picture, AMoldIsSeenAsItIsFromEachTurnWhicheverQuarterIsCutAway) {
    Compared compared;
    const SceneIn mold = small_mold();
    for (int turn = 0; turn < 360; turn += turn_step_deg) {
        Scene scene = scene_of(mold, facing_quarter(turn));
        for (Solid& solid : scene.solids) // where clay runs out it is thinner than the sight line's steps
            if (solid.part == Part::clay) solid.layers.pop_back();
        const double apart = turn % 45 == 0 ? 0 : turn % 2 == 0 ? 1 : 0.35;
        compare(scene, {double(turn), apart}, 24, 7u + static_cast<unsigned>(turn), compared);
    }
    EXPECT_GT(compared.points, 400);
    EXPECT_EQ(compared.wrong, "");
}

TEST(Picture, ASideThatGoesOnIsOneFaceWithoutASeam) {
    Scene scene;
    scene.height_mm = 40;
    scene.cut_at = {-1000, -1000};
    const auto plan = rectangle({{0, 0}, {50, 50}});
    scene.solids.push_back({Part::foam, {}, {{plan, 0, 10}, {plan, 10, 25}, {plan, 25, 40}}});
    int sides = 0;
    for (const auto& face : painted(scene, {45, 0})) sides += face.face == Face::side;
    EXPECT_EQ(sides, 2);
}

TEST(Picture, FartherSidesComeBeforeThoseThatHideThem) {
    const std::vector<Span> spans{{{0, 0}, {10, 0}}, {{2, 5}, {8, 6}}, {{-5, 9}, {20, 3}}};
    EXPECT_EQ(far_to_near(spans), (std::vector<int>{2, 1, 0}));
}

TEST(Picture, SidesThatWaitForEachOtherInACircleAreAllPutTheFarthestFirst) {
    // each of the three lies over the next where they share some of the sweep, by crossing
    const std::vector<Span> spans{
        {{0, 0}, {10, 4}}, {{8, 3}, {20, 0}}, {{0, 1}, {20, 1}}, {{0, -9}, {20, -9}}};
    auto order = far_to_near(spans);
    ASSERT_EQ(order.size(), spans.size());
    EXPECT_EQ(order.back(), 3);
    std::sort(order.begin(), order.end());
    EXPECT_EQ(order, (std::vector<int>{0, 1, 2, 3}));
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
