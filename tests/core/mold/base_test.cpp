// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/times.h"
#include "job/catalog.h"
#include "mold/base.h"
#include "mold/plate_checks.h"
#include "mold/plate_options.h"
#include "mold/walls.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::mold {
namespace {

/// A box of plain board under this pressure; the plate is as strong as it need be.
BaseIn box(double width, double depth, double closed_kpa) {
    BaseIn in;
    in.mold.width_mm = width, in.mold.depth_mm = depth, in.mold.height_mm = 60;
    in.mold.opening = shape::region_of(shape::Ring{{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    in.mold.load = {closed_kpa, 1.9 * closed_kpa};
    in.mold.boards = job::builtin_boards();
    in.mold.stiffeners = job::builtin_stiffeners();
    in.mold.closures = job::builtin_closures();
    in.mold.corner = job::BoxCorner::lapped;
    const auto profile = casting::profile_of({job::Shared<job::Foam>(job::builtin_foams()[1]), 23, 0});
    in.mold.closing.mold = {*profile, 1000, 5e6, width * depth, 10, 0}; // no closing is judged
    in.mold.closing.band = casting::band_of(in.mold.closing.mold);
    in.mold.closing.times = casting::times_of({*profile, 1000, 10, 5e6, 60, 13});
    in.mold.closing.height_mm = 60;
    in.plate.box_board.name = "board", in.plate.box_board.thickness_mm = 16;
    in.plate.box_board.elasticity_mpa = 2200, in.plate.box_board.poisson = 0.25;
    in.plate.box_board.rupture_mpa = 11;
    in.plate.board = in.plate.box_board;
    in.joint.name = "foot", in.joint.diameter_mm = 4, in.joint.length_mm = 50;
    return in;
}

std::optional<Plate> base(const BaseIn& in) {
    PlateLooks looks;
    return base_of(in, looks);
}

TEST(Base, OfASmallDrawerNeedsNoBearers) {
    const auto found = base(box(200, 150, 10));
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->answer.passes);
    EXPECT_TRUE(found->answer.design.stiffeners.empty());
    EXPECT_FALSE(found->answer.runner_up);
}

TEST(Base, BendsLikeAPlateAndGetsBearersWhereItMust) {
    BaseIn in = box(482, 361, 22.86);
    // Held at its rim alone it bows by Timoshenko and Woinowsky-Krieger, table 8: at least that, as screws
    // give.
    const double d = 2200 * std::pow(16, 3) / (12 * (1 - 0.25 * 0.25));
    const double held = held_plate_lift(482.0 / 361) * 0.02286 * std::pow(361, 4) / d;
    EXPECT_GT(held, 1.5) << "a bare base would bow too far";
    const auto found = base(in);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->answer.passes);
    EXPECT_FALSE(found->answer.design.stiffeners.empty());
    EXPECT_LE(found->answer.bow_mm, bow_limit_mm);
    for (std::size_t i = 0; i < found->answer.closure_n.size(); ++i)
        EXPECT_LE(found->answer.closure_n[i], found->answer.capacity_n[i] / capacity_factor);
    const auto& end = found->answer.design.end_closure;
    EXPECT_TRUE(std::any_of(in.mold.closures.begin(), in.mold.closures.end(), [&](const auto& one) {
        return one == end;
    })) << "one of the shop's, as it is there";
}

/// The first drawer somebody tries: no screw of the usual ones holds a bearer under a mold that low.
TEST(Base, TheBoxIsOfABoardWhoseBaseNeedsNoBearersWhereNoneWouldBeHeld) {
    BaseIn low = box(301, 221, 27.2);
    low.mold.height_mm = 40;
    const auto chosen = box_board_of(low.mold);
    EXPECT_TRUE(bearers_to_try(low.mold, chosen).empty());
    low.plate.board = low.plate.box_board = chosen;
    const auto found = base(low);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->answer.passes) << chosen.name;
    const BaseIn high = box(301, 221, 27.2); // 60: a bearer is held
    EXPECT_LT(box_board_of(high.mold).thickness_mm, chosen.thickness_mm);
}

TEST(Base, WithoutAScrewForBearersSaysSo) {
    BaseIn in = box(482, 361, 22.86);
    std::erase_if(in.mold.closures, [](const auto& one) { return one.length_mm > 55; });
    const auto found = base(in);
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->answer.passes);
    EXPECT_TRUE(found->answer.design.stiffeners.empty()) << "nothing would hold them";
    const auto checks = base_checks(in.mold, *found);
    const auto none = std::find_if(checks.begin(), checks.end(), [](const auto& check) {
        return check.code == layout::Code::closure_none;
    });
    ASSERT_NE(none, checks.end());
    EXPECT_GT(none->value, 55);
    for (const auto& check : checks)
        if (check.code == layout::Code::base_pull) {
            EXPECT_GT(check.limit, 0);
        }
}

TEST(Base, ScrewsFromBelowKeepOffThoseFromAbove) {
    BaseIn in = box(400, 300, 8);
    in.plate.closure = in.joint;
    in.plate.closure.name = "above";
    for (const double x : {30.0, 98.0, 166.0, 234.0, 302.0, 370.0})
        in.plate.closures.push_back({{x, -8}, false});
    const auto found = base(in);
    ASSERT_TRUE(found);
    for (const auto& below : found->answer.design.closures)
        for (const auto& above : in.plate.closures)
            EXPECT_GE(shape::length(below.at.vec() - above.at.vec()), 12 - 1e-9);
}

TEST(Base, RodsOfABarePlateLeaveItToBearersWithScrewsOfTheirOwn) {
    BaseIn in = box(482, 361, 22.86);
    job::Closure rod;
    rod.name = "rod", rod.kind = job::ClosureKind::rod, rod.diameter_mm = 8, rod.capacity_n = 12000;
    rod.stiffness_n_mm = 8000;
    in.plate.closure = in.plate.end_closure = rod;
    for (int i = 0; i < 9; ++i)
        for (const double y : {-8.0, 369.0}) in.plate.closures.push_back({{30 + i * 422 / 8.0, y}, false});
    for (int i = 0; i < 6; ++i)
        for (const double x : {-8.0, 490.0}) in.plate.closures.push_back({{x, 45 + i * 271 / 5.0}, false});
    const auto found = base(in);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->answer.passes);
    const auto& design = found->answer.design;
    ASSERT_FALSE(design.stiffeners.empty());
    EXPECT_EQ(design.end_closure.kind, job::ClosureKind::screw);
    EXPECT_EQ(design.closures.size(), in.plate.closures.size() + 2 * design.stiffeners.size());
}

TEST(Base, RodsHoldItWhereTheyHoldThePlate) {
    BaseIn in = box(400, 300, 12);
    job::Closure rod;
    rod.name = "rod", rod.kind = job::ClosureKind::rod, rod.diameter_mm = 8, rod.capacity_n = 12000;
    rod.stiffness_n_mm = 8000;
    in.plate.closure = in.plate.end_closure = rod;
    for (const double x : {30.0, 143.0, 257.0, 370.0})
        for (const double y : {-8.0, 308.0}) in.plate.closures.push_back({{x, y}, false});
    for (const double y : {45.0, 150.0, 255.0})
        for (const double x : {-8.0, 408.0}) in.plate.closures.push_back({{x, y}, false});
    const auto found = base(in);
    ASSERT_TRUE(found);
    ASSERT_EQ(found->answer.design.closures.size(), in.plate.closures.size());
    for (std::size_t i = 0; i < in.plate.closures.size(); ++i)
        EXPECT_EQ(found->answer.design.closures[i].at, in.plate.closures[i].at);
}

} // namespace
} // namespace drawercast::mold
