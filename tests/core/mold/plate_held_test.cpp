// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_held.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace drawercast::mold {
namespace {

PlateShape plain_box(double width, double depth, double height = 60, double wall = 16) {
    PlateShape shape{width, depth, height, wall, 2200, {}, {}};
    shape.opening = shape::region_of(shape::Ring{{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    return shape;
}

std::vector<Hold> around(const PlateShape& shape, double spacing, double spring) {
    std::vector<Hold> holds;
    const auto side = [&](double length, auto place) {
        const int gaps = static_cast<int>(std::ceil((length - 60) / spacing - 1e-9));
        for (int i = 0; i <= gaps; ++i) holds.push_back({place(30 + (length - 60) * i / gaps), spring});
    };
    const double out = shape.wall_mm / 2;
    side(shape.width_mm, [&](double s) { return shape::Vec{s, -out}; });
    side(shape.depth_mm, [&](double s) { return shape::Vec{shape.width_mm + out, s}; });
    side(shape.width_mm, [&](double s) { return shape::Vec{shape.width_mm - s, shape.depth_mm + out}; });
    side(shape.depth_mm, [&](double s) { return shape::Vec{-out, shape.depth_mm - s}; });
    return holds;
}

const PlateSection board16{16, 2200, 0.25};

std::vector<Batten> two_stiffeners(const PlateShape& shape) {
    const BeamSection section = beam_section({}, false, board16, shape.depth_mm);
    return {{false, shape.width_mm / 3, section}, {false, 2 * shape.width_mm / 3, section}};
}

double worst(const Held& held) { return *std::max_element(held.pull_n.begin(), held.pull_n.end()); }

/// By the foam, 1 kPa.
double pushed_n(const PlateOnBox& box) {
    double sum = 0;
    for (const double mm2 : box.areas().pushed_mm2) sum += 1e-3 * mm2;
    return sum;
}

double bow(const PlateOnBox& box, const Held& held) {
    const auto unknowns = box.plate().unknowns(held.force_n);
    double most = 0;
    for (std::size_t i = 0; i < unknowns.size(); i += node_unknowns) most = std::max(most, unknowns[i]);
    return most;
}

TEST(PlateHeld, IsInBalance) {
    const PlateShape shape = plain_box(240, 180);
    const PlateOnBox box(board16, shape, {80}, {});
    for (const auto& battens : {std::vector<Batten>{}, two_stiffeners(shape)}) {
        const Held held = box.held(around(shape, 65, 1500), battens);
        const double pull = std::accumulate(held.pull_n.begin(), held.pull_n.end(), 0.0);
        EXPECT_NEAR(pushed_n(box), 0.240 * 0.180 * 1000, 1e-6);
        EXPECT_NEAR(pull, pushed_n(box) + held.resting_n, 1e-7 * pull);
        const PlateGrid& grid = box.plate().grid();
        double sum = 0;
        double about_x = 0;
        double about_y = 0;
        auto force = held.force_n;
        for (const std::size_t point : box.plate().base_points()) // the springs that are taken off again
            force[box.plate().node_of(point)] -= FreePlate::base_spring_n_mm * held.lift_mm[point];
        for (std::size_t node = 0; node < grid.nodes(); ++node) {
            sum += force[node];
            about_y += force[node] * grid.x_mm[node % grid.columns()];
            about_x += force[node] * grid.y_mm[node / grid.columns()];
        }
        EXPECT_NEAR(sum, 0, 1e-6 * pull);
        EXPECT_NEAR(about_x, 0, 1e-4 * pull);
        EXPECT_NEAR(about_y, 0, 1e-4 * pull);
    }
}

TEST(PlateHeld, WallTopsOnlyPush) {
    PlateShape shape = plain_box(240, 180);
    shape.opening =
        shape::region_of(shape::Ring{{0, 0}, {240, 0}, {240, 180}, {90, 180}, {90, 110}, {0, 110}});
    const PlateOnBox box(board16, shape, {}, {});
    const Held held = box.held(around(shape, 65, 1500), {});
    double resting = 0;
    for (std::size_t point = 0; point < box.plate().points(); ++point) {
        const std::size_t node = box.plate().node_of(point);
        const double spring = 2200.0 / 60 * box.areas().resting_mm2[node];
        if (spring == 0) continue;
        EXPECT_EQ(held.rests[point], held.lift_mm[point] < 0);
        if (held.rests[point]) resting -= spring * held.lift_mm[point];
    }
    EXPECT_NEAR(resting, held.resting_n, 1e-6 * resting);
    EXPECT_NEAR(pushed_n(box), (0.240 * 0.180 - 0.090 * 0.070) * 1000, 1e-3);
}

TEST(PlateHeld, MirrorsWithItsClosures) {
    const PlateShape shape = plain_box(240, 180);
    const PlateOnBox box(board16, shape, {}, {});
    auto holds = around(shape, 65, 1500);
    holds.erase(holds.begin() + 1, holds.begin() + 3); // no longer the same from either side
    auto mirrored = holds;
    for (Hold& hold : mirrored) hold.at.x = 240 - hold.at.x;
    const Held one = box.held(holds, {});
    const Held other = box.held(mirrored, {});
    for (std::size_t i = 0; i < holds.size(); ++i) EXPECT_NEAR(one.pull_n[i], other.pull_n[i], 1e-7);
}

TEST(PlateHeld, AThickWallTakesAboutAsManyLinesAsAUsualOne) {
    const auto usual = plate_lines(480, 16, {}, {}).size();
    EXPECT_LT(plate_lines(480, 200, {}, {}).size(), 3 * usual); // the thickest board a shop may list
}

TEST(PlateHeld, FinerMeshesSayTheSame) {
    const PlateShape shape = plain_box(240, 180);
    const auto battens = two_stiffeners(shape);
    const auto holds = around(shape, 65, 1500);
    const PlateOnBox usual(board16, shape, {80}, {});
    const PlateOnBox fine(board16, shape, {80}, {}, {2, 8});
    for (const auto& on : {std::vector<Batten>{}, battens}) {
        const Held one = usual.held(holds, on);
        const Held other = fine.held(holds, on);
        EXPECT_NEAR(worst(one) / worst(other), 1, 0.015);
        EXPECT_NEAR(bow(usual, one) / bow(fine, other), 1, 0.01);
    }
}

// A bare 16 mm plate over 480 × 360: its worst screw pulls about twice the even share, because the plate
// pries on its outer edge; stiffeners without closures of their own leave that so.
TEST(PlateHeld, PriesOnItsOuterEdge) {
    const PlateShape shape = plain_box(480, 360);
    const PlateOnBox box(board16, shape, {160}, {});
    const auto holds = around(shape, 65, 1500);
    const Held bare = box.held(holds, {});
    EXPECT_NEAR(worst(bare) * static_cast<double>(holds.size()) / pushed_n(box), 2.08, 0.06);
    auto soft = holds;
    for (Hold& hold : soft) hold.spring_n_mm = 750;
    EXPECT_LT(worst(box.held(soft, {})), worst(bare)); // softer closures share better
    EXPECT_GT(bow(box, box.held(soft, {})), bow(box, bare));
    EXPECT_LT(bow(box, box.held(holds, two_stiffeners(shape))), 0.5 * bow(box, bare));
}

TEST(PlateHeld, StartingElsewhereEndsAlike) {
    const PlateShape shape = plain_box(240, 180);
    const PlateOnBox box(board16, shape, {}, {});
    const auto holds = around(shape, 65, 1500);
    const Held usual = box.held(holds, {});
    std::vector<bool> all(box.plate().points());
    for (std::size_t i = 0; i < all.size(); i += 3)
        all[i] = box.areas().resting_mm2[box.plate().node_of(i)] > 0;
    const Held other = box.held(holds, {}, all);
    EXPECT_EQ(usual.rests, other.rests);
    for (std::size_t i = 0; i < holds.size(); ++i) EXPECT_NEAR(usual.pull_n[i], other.pull_n[i], 1e-9);
}

} // namespace
} // namespace drawercast::mold
