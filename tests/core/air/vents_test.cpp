// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/model.h"

#include "core/air/floors.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::air {
namespace {

constexpr double expansion = 5;

Floor two_blocks() {
    Floor floor = empty_floor(240, 160, 60);
    add_block(floor, 20, 25, 90, 100, 45);
    add_block(floor, 135, 60, 80, 50, 50);
    return floor;
}

std::unique_ptr<Model> model_of(Floor floor, std::vector<SetPour> pours = {}) {
    MapIn in;
    in.floor = std::move(floor);
    in.poured_ml = 400;
    in.full_expansion = expansion;
    in.pours = std::move(pours);
    return Model::make(std::move(in), never_stop);
}

int count(const Vented& vented, VentFor why) {
    return static_cast<int>(
        std::count_if(vented.vents.begin(), vented.vents.end(), [&](const Vent& v) { return v.why == why; }));
}

TEST(Vents, stand_at_each_air_pocket_then_in_corners_and_along_walls) {
    const auto model = model_of(two_blocks());
    const Vented vented = *model->vent({}, never_stop);
    EXPECT_EQ(count(vented, VentFor::air), 2);
    EXPECT_EQ(count(vented, VentFor::corner), 4);
    EXPECT_EQ(count(vented, VentFor::wall), 2); // 200 mm between the corners in front and behind
    EXPECT_LT(vented.air_ml, 2);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_LE(vented.shares_ml[i], vented_ml);
        EXPECT_TRUE(std::any_of(vented.vents.begin(), vented.vents.end(), [&](const Vent& vent) {
            return length(vent.at - model->map().pockets[i].at) < 3;
        }));
    }
}

TEST(Vents, of_the_edge_only_leave_what_is_over_the_blocks) {
    const auto model = model_of(two_blocks());
    VentsIn in;
    in.place_rest = false;
    in.kept = {{{20, 20}, 3, VentFor::kept}, {{220, 20}, 3, VentFor::kept}};
    const Vented vented = *model->vent(in, never_stop);
    EXPECT_EQ(vented.vents, in.kept);
    EXPECT_NEAR(vented.air_ml, (9000 * 15 + 4000 * 10) / 1000.0, 0.5);
}

TEST(Vents, the_makers_serve_and_are_not_doubled) {
    const auto model = model_of(two_blocks());
    VentsIn in;
    in.kept = {{model->map().pockets[0].at + shape::Vec{1, 1}, 4, VentFor::kept},
               {{24, 22}, 3, VentFor::kept}};
    const Vented vented = *model->vent(in, never_stop);
    ASSERT_GE(vented.vents.size(), 2u);
    EXPECT_EQ(vented.vents[0], in.kept[0]);
    EXPECT_EQ(vented.vents[1], in.kept[1]);
    EXPECT_EQ(count(vented, VentFor::air), 1);
    EXPECT_EQ(count(vented, VentFor::corner), 3);
}

TEST(Vents, stand_off_closures_and_stiffeners) {
    const auto model = model_of(two_blocks());
    VentsIn in;
    for (const AirPocket& pocket : model->map().pockets) in.clear.holes.push_back({pocket.at, 2});
    in.clear.strips.push_back({{120, -20}, {120, 180}, 22.5});
    in.clear.holes.push_back({{20, 20}, 2});
    const Vented vented = *model->vent(in, never_stop);
    EXPECT_EQ(count(vented, VentFor::air), 2);
    for (const Vent& vent : vented.vents) {
        EXPECT_GE(meat_mm(vent.at, vent.diameter_mm, in.clear), 2 * vent.diameter_mm);
        EXPECT_FALSE(on_strip(vent.at, vent.diameter_mm, in.clear));
    }
    for (const double share : vented.shares_ml) EXPECT_LE(share, vented_ml);
}

TEST(Vents, that_find_no_place_leave_their_pocket_shut) {
    const auto model = model_of(two_blocks());
    VentsIn in;
    in.clear.strips.push_back({{0, 80}, {240, 80}, 100});
    const Vented vented = *model->vent(in, never_stop);
    EXPECT_TRUE(vented.vents.empty());
    EXPECT_GT(vented.air_ml, 100);
}

TEST(Vents, do_not_depend_on_what_was_asked_before) {
    const auto model = model_of(two_blocks());
    const Vented first = *model->vent({}, never_stop);
    VentsIn other;
    other.kept = {{{40, 60}, 3, VentFor::kept}};
    other.place_rest = false;
    (void)model->vent(other, never_stop);
    EXPECT_EQ(first, *model->vent({}, never_stop));
}

TEST(Model, stops_when_asked) {
    MapIn in;
    in.floor = two_blocks();
    in.poured_ml = 400;
    in.full_expansion = expansion;
    double last = 0;
    EXPECT_EQ(Model::make(in, [&](double done) { return (last = done) > 0.3; }), nullptr);
    EXPECT_LT(last, 0.5);
}

TEST(Model, the_quick_last_place_is_the_last_air_pocket) {
    MapIn in;
    in.floor = two_blocks();
    in.poured_ml = 400;
    in.full_expansion = expansion;
    const auto model = Model::make(in, never_stop);
    const auto last = last_place(in);
    ASSERT_TRUE(last);
    EXPECT_LT(length(*last - model->map().pockets.back().at), 6);
}

TEST(Model, a_pour_over_a_block_fills_that_floor_sooner) {
    const auto bare = model_of(two_blocks());
    const auto wet = model_of(two_blocks(), {{{65, 75}, 40}});
    const auto at_large = [](const Model& model) {
        for (const AirPocket& pocket : model.map().pockets)
            if (pocket.at.x < 120) return pocket.expansion;
        return 0.0;
    };
    EXPECT_GT(at_large(*bare), 0);
    EXPECT_LT(at_large(*wet), at_large(*bare) - 0.1);
    ASSERT_FALSE(wet->map().pour.steps.empty());
    EXPECT_TRUE(std::any_of(wet->map().pour.steps.begin(), wet->map().pour.steps.end(),
                            [](const PourStep& step) { return step.set && step.kind == PourKind::top; }));
}

} // namespace
} // namespace drawercast::air
