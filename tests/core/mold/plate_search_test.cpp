// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/dose.h"
#include "casting/pressure.h"
#include "casting/times.h"
#include "job/catalog.h"
#include "mold/plate_search.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace drawercast::mold {
namespace {

/// A box filled by medium foam around one block.
PlateIn box_of(double width, double depth, double height, double block_share = 0.2) {
    PlateIn in;
    in.width_mm = width;
    in.depth_mm = depth;
    in.height_mm = height;
    in.opening = shape::region_of(shape::Ring{{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    in.boards = job::builtin_boards();
    in.stiffeners = job::builtin_stiffeners();
    in.closures = job::builtin_closures();
    const job::Foam foam = job::builtin_foams()[1];
    const auto profile = casting::profile_of({job::Shared<job::Foam>(foam), 23, 0});
    const double net = width * depth * height * (1 - block_share);
    job::Shop shop;
    shop.drivers = 2;
    const auto dose = casting::dose_of(
        {*profile, job::Shared<job::Foam>(foam), job::Shared<job::Shop>(shop), net, width * depth});
    in.closing.mold = {*profile, dose->poured_ml, net, width * depth, foam.mold_hotter_k, 0};
    in.closing.band = casting::band_of(in.closing.mold);
    const auto pressure = casting::pressure_of({in.closing.mold, in.closing.band, 1.5});
    in.load = {pressure.closed_kpa, pressure.build_for_kpa};
    const double level = dose->poured_ml * 1000 / (width * depth * (1 - block_share));
    in.closing.times = casting::times_of({*profile, dose->poured_ml, dose->pour_s, net, height, level});
    in.closing.height_mm = height;
    in.closing.plate_on_s = foam.mix_s + dose->pour_s + 8;
    in.closing.drivers = shop.drivers;
    return in;
}

TEST(PlateSearch, APressureFarTooHighForAnyPlateIsSoonGivenUp) {
    PlateIn in = box_of(300, 200, 40);
    in.load = {40 * in.load.closed_kpa, 40 * in.load.build_for_kpa};
    int asked = 0;
    const auto plate = plate_of(in, [&] { return ++asked > 300; });
    ASSERT_TRUE(plate) << "each of a thousand ways is tried";
    EXPECT_FALSE(plate->answer.passes);
    EXPECT_GT(plate->answer.use, 2);
    EXPECT_EQ(plate->answer.design.stiffeners.size(), 4u); // what comes nearest is the strongest there is
    EXPECT_EQ(plate->answer.design.closure.kind, job::ClosureKind::rod);
}

TEST(PlateSearch, TheCheapestKeepsEveryLimit) {
    const PlateIn in = box_of(300, 200, 40);
    const auto plate = plate_of(in);
    ASSERT_TRUE(plate);
    const PlateAnswer& answer = plate->answer;
    EXPECT_TRUE(answer.passes);
    EXPECT_GT(answer.use, 0.5); // nothing is built much stronger than it need be
    EXPECT_LE(answer.use, 1);
    EXPECT_LE(answer.bow_mm, bow_limit_mm);
    EXPECT_LE(answer.gap_mm, gap_limit_mm);
    EXPECT_LE(answer.stress_mpa, answer.design.board.rupture_mpa / stress_factor);
    ASSERT_EQ(answer.closure_n.size(), answer.design.closures.size());
    for (std::size_t i = 0; i < answer.closure_n.size(); ++i)
        EXPECT_LE(answer.closure_n[i], answer.capacity_n[i] / capacity_factor);
    EXPECT_GE(plate->closing.close_margin_s, 0);

    PlateIn set = in; // the same, set by hand: checked alike
    set.board = answer.design.board.name;
    set.closure = answer.design.closure.name;
    set.spacing_mm = answer.design.spacing_mm;
    set.stiffening = job::StiffenerChoice{};
    const auto again = plate_of(set);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->answer.design, answer.design);
    EXPECT_EQ(again->answer.bow_mm, answer.bow_mm);
    EXPECT_EQ(again->answer.closure_n, answer.closure_n);
    EXPECT_FALSE(again->answer.runner_up);

    PlateIn pressed = in; // everything grows with the pressure
    pressed.load = {2 * in.load.closed_kpa, 2 * in.load.build_for_kpa};
    const Plate twice = rechecked(pressed, answer.design);
    EXPECT_NEAR(twice.answer.bow_mm, 2 * answer.bow_mm, 1e-9);
    EXPECT_NEAR(twice.answer.closure_n[0], 2 * answer.closure_n[0], 1e-6);
    EXPECT_FALSE(twice.answer.passes);
}

TEST(PlateSearch, ABoardBoughtForPlatesAloneCostsItsShareOfTheSheet) {
    PlateIn in = box_of(300, 200, 40);
    PlateDesign design; // a plate and nothing on it
    design.box_board.name = "walls", design.box_board.thickness_mm = 16;
    design.board.name = "plates", design.board.price = 60;
    design.board.sheet_length_mm = 2440, design.board.sheet_width_mm = 1220;
    const double by_area = 60 * 332.0 * 232 / (2440.0 * 1220);
    EXPECT_NEAR(price_of(in, design), by_area, 1e-9);
    in.plates = 3;
    EXPECT_NEAR(price_of(in, design), 20, 1e-9);
    in.plates = 100; // no less than what it takes
    EXPECT_NEAR(price_of(in, design), by_area, 1e-9);
    in.plates = 3;
    design.board.at_hand = 1;
    EXPECT_NEAR(price_of(in, design), by_area, 1e-9);
    design.board.at_hand = 0, design.board.name = "walls";
    EXPECT_NEAR(price_of(in, design), by_area, 1e-9);
}

TEST(PlateSearch, LooksOnlySaveTime) {
    PlateIn in = box_of(200, 150, 40);
    in.boards = {in.boards.begin(), in.boards.begin() + 4};
    PlateLooks looks;
    ASSERT_TRUE(plate_of(in, looks));
    in.load = {1.2 * in.load.closed_kpa, 1.2 * in.load.build_for_kpa};
    const auto warm = plate_of(in, looks);
    const auto cold = plate_of(in);
    ASSERT_TRUE(warm && cold);
    EXPECT_EQ(*warm, *cold);
    EXPECT_EQ(rechecked(in, warm->answer.design, looks), rechecked(in, warm->answer.design));
}

TEST(PlateSearch, StiffenersAreOfferedWhereTheyStandOffTheLastAir) {
    PlateIn in = box_of(300, 200, 40);
    in.vent_clear_mm = 8;
    const std::size_t all = stiffenings_to_try(in).size();
    in.last_places = {{140, 60}, {160, 90}};
    for (const auto& stiffening : stiffenings_to_try(in))
        for (const double at : stiffener_places(pattern_in(in, in.boards.front(), stiffening)))
            for (const auto place : in.last_places) EXPECT_GE(std::abs(place.x - at), 45 / 2.0 + 8);
    for (double x = 0; x <= 300; x += 20) in.last_places.push_back({x, 100});
    EXPECT_LT(stiffenings_to_try(in).size(), all);
    EXPECT_EQ(stiffenings_to_try(in).size(), 1u); // bare
}

TEST(PlateSearch, WhatTheMakerSetMayMiss) {
    PlateIn in = box_of(300, 200, 40);
    in.board = "Particleboard 12";
    in.stiffening = job::StiffenerChoice{};
    in.spacing_mm = 75;
    in.closure = "Screw 4 × 40";
    const auto plate = plate_of(in);
    ASSERT_TRUE(plate);
    EXPECT_EQ(plate->answer.design.board.name, "Particleboard 12");
    EXPECT_FALSE(plate->answer.passes);
    EXPECT_EQ(plate->answer.governs, Limit::screw_length); // 28 mm in the wall, 32 needed
}

TEST(PlateSearch, StopsWhenAsked) {
    int asked = 0;
    EXPECT_FALSE(plate_of(box_of(300, 200, 40), [&] { return ++asked > 2; }));
}

} // namespace
} // namespace drawercast::mold
