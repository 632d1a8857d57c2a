// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/feel.h"

#include "core/layout/scene.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::layout {
namespace {

using namespace testing;

constexpr double pi = std::numbers::pi;

TEST(Stress, IsStraightTo25ThenTo40AndThenHeld) {
    job::Foam foam;
    foam.stress25_kpa = 12;
    foam.stress40_kpa = 22;
    const double rows[][2] = {{-0.1, 0}, {0, 0}, {0.05, 2.4}, {0.25, 12}, {0.325, 17}, {0.4, 22}, {0.9, 22}};
    for (const auto& [strain, kpa] : rows) EXPECT_NEAR(stress_kpa(strain, foam), kpa, 1e-12) << strain;
}

TEST(GripOf, WeighsFrictionAgainstWeight) {
    EXPECT_EQ(grip_of(4.9, 5), Grip::falls_out);
    EXPECT_EQ(grip_of(5, 5), Grip::easy);
    EXPECT_EQ(grip_of(15, 5), Grip::easy);
    EXPECT_EQ(grip_of(15.1, 5), Grip::firm);
    EXPECT_EQ(grip_of(55, 5), Grip::firm);
    EXPECT_EQ(grip_of(55.1, 5), Grip::two_hands);
    EXPECT_EQ(english(words_of(Grip::two_hands)), "two hands");
}

/// One scene's feels: the job needs its objects to look up the fit.
std::vector<Feel> feels(Scene scene, double step_mm = 1) {
    for (const auto& object : scene.objects) scene.job.objects.push_back(object);
    std::vector<std::shared_ptr<const PlacedPocket>> pockets;
    for (const auto& pocket : scene.drawer.pockets)
        pockets.push_back(stand(scene.object(pocket.object), pocket, scene.drawer.insert_mm));
    const auto insert = insert_of(scene.drawer, 0);
    return feel_of(pockets, scene.job, insert ? &*insert : nullptr, step_mm);
}

/// A round object of 40 in the middle of a round foam of 200, squeezed.
Scene round_in_round(double fit_mm, double mass_g) {
    Scene scene;
    scene.drawer = drawer_of(shape::Circle{200});
    job::Object& object = scene.add(object_of("a", {sunk(shape::Circle{40}, 30)}), {{{100, 100}, 0}});
    object.fit_mm = fit_mm;
    object.mass_g = mass_g;
    return scene;
}

TEST(Feel, RoundObjectInRoundFoamIsTheClosedForm) {
    for (const double squeeze : {0.5, 1.0, 2.0}) {
        const double radius = 20 - squeeze;
        const double strain = squeeze / (100 - radius);
        const double kpa = 12 * strain / 0.25;
        const double expected = 0.5 * 30 * kpa * 2 * pi * radius / 1000;
        const auto found = feels(round_in_round(-squeeze, 500));
        ASSERT_EQ(found.size(), 1U);
        EXPECT_NEAR(found[0].lift_out_n, expected, 1e-4 * expected) << squeeze;
        EXPECT_DOUBLE_EQ(found[0].weight_n, 4.903325);
        EXPECT_FALSE(found[0].beyond_curve);
        EXPECT_EQ(found[0].subject, "a#1");
    }
}

TEST(Feel, LooseObjectsFallOut) {
    for (const double fit : {0.0, 1.0}) {
        const auto found = feels(round_in_round(fit, 100));
        EXPECT_EQ(found[0].lift_out_n, 0);
        EXPECT_EQ(found[0].grip, Grip::falls_out);
    }
}

/// Two 60 × 40 blocks, 9 mm of foam between their long sides, in a 400 × 300 drawer; the first squeezed by 1,
/// the second by 2 (outlines 58 × 38 and 56 × 36).
Scene neighbors(double fit_a, double fit_b, double fit_b_end) {
    Scene scene;
    const double half_a = 20 + fit_a;
    const double half_b = 20 + fit_b;
    scene.add(object_of("a", {sunk(shape::Rectangle{60, 40, 0}, 30)}), {{{200, 150}, 0}}).fit_mm = fit_a;
    job::Object& b = scene.add(object_of("b", {sunk(shape::Rectangle{60, 40, 0}, 30)}),
                               {{{200, 150 + half_a + 9 + half_b}, 0}});
    b.fit_mm = fit_b;
    b.fit_end_mm = fit_b_end;
    return scene;
}

double kpa(double strain) { return 12 * strain / 0.25; }

TEST(Feel, BothNeighborsSqueezeTheWallBetween) {
    const auto found = feels(neighbors(-1, -2, -2), 0.01);
    // Around a: 56 of the top face b, 3 mm squeezed together over 9; 1 mm at each corner misses it up to the
    // edge.
    const double top = 56 * std::min(22.0, 12 + 10 * (3.0 / 9 - 0.25) / 0.15) + 2 * kpa(1.0 / (300 - 169));
    const double bottom = 58 * kpa(1.0 / 131);
    const double sides = 2 * 38 * kpa(1.0 / (200 - 29));
    EXPECT_NEAR(found[0].lift_out_n, 0.5 * 30 * (top + bottom + sides) / 1000, 1e-3);
    EXPECT_FALSE(found[0].beyond_curve);
}

TEST(Feel, EndsHaveTheirOwnSqueeze) {
    const auto found = feels(neighbors(0, -2, -1), 0.01);
    // Around b (58 × 36 at 150 + 20 + 9 + 18 = 197): a does not squeeze; long sides by 2, ends by 1.
    const double below = 58 * kpa(2.0 / 9);
    const double above = 58 * kpa(2.0 / (300 - 215));
    const double ends = 2 * 36 * kpa(1.0 / (200 - 29));
    EXPECT_NEAR(found[1].lift_out_n, 0.5 * 30 * (below + above + ends) / 1000, 1e-3);
}

TEST(Feel, SaysWhenFoamIsSqueezedBeyondItsCurve) {
    Scene scene = neighbors(-2, -2, -2);
    scene.drawer.pockets[1].pose.at.y -= 1; // 4 mm into 8 of foam
    const auto found = feels(scene);
    EXPECT_TRUE(found[0].beyond_curve);
    EXPECT_TRUE(found[1].beyond_curve);
}

TEST(Feel, NotchesAndUpperLevelsTakeWallAway) {
    Scene plain = round_in_round(-1, 100);
    Scene notched = plain;
    // A notch as deep as the pocket over one half of its boundary, reaching far: that half holds nothing.
    notched.drawer.pockets[0].notches = {notch(shape::Rectangle{50, 100, 0}, {{25, 0}, 0}, 30)};
    const double whole = feels(plain, 0.05)[0].lift_out_n;
    EXPECT_NEAR(feels(notched, 0.05)[0].lift_out_n, whole / 2, 0.003 * whole);
    notched.drawer.pockets[0].notches[0].depth_mm = 10; // a third of the wall there
    EXPECT_NEAR(feels(notched, 0.05)[0].lift_out_n, whole * 5 / 6, 0.003 * whole);
}

TEST(Feel, ConvergesAsTheStepShrinks) {
    Scene scene = neighbors(-1, -2, -2);
    scene.drawer.pockets[1].pose.turn_deg = 20;
    scene.drawer.pockets[1].pose.at.y += 12;
    const double fine = feels(scene, 0.01)[0].lift_out_n;
    const double coarse_error = std::abs(feels(scene, 4)[0].lift_out_n - fine);
    const double usual_error = std::abs(feels(scene)[0].lift_out_n - fine);
    EXPECT_LT(usual_error, 0.01 * fine);
    EXPECT_LT(usual_error, coarse_error);
}

TEST(Feel, TurningTheDrawerChangesNothing) {
    const Scene scene = neighbors(-1, -2, -1);
    Scene turned = scene;
    turned.drawer.outline = shape::Rectangle{300, 400, 0};
    for (auto& pocket : turned.drawer.pockets)
        pocket.pose = {{300 - pocket.pose.at.y, pocket.pose.at.x}, pocket.pose.turn_deg + 90};
    for (std::size_t i = 0; i < 2; ++i)
        EXPECT_NEAR(feels(turned)[i].lift_out_n, feels(scene)[i].lift_out_n, 1e-9);
}

} // namespace
} // namespace drawercast::layout
