// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/reach.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

/// A box of 80 × 60, `height_mm` high, 30 deep in the foam.
job::Object box(double height_mm) {
    job::Object object;
    object.id = "a";
    object.height_mm = height_mm;
    object.fit_mm = 0;
    object.levels = {{job::Sunk{shape::Rectangle{80, 60, 0}, 30}, {}, {}}};
    return object;
}

/// At the right edge, `along` of the edge and `out` of it both ways.
job::Notch right(double along_mm, double out_mm, double depth_mm) {
    return {shape::Rectangle{2 * out_mm, along_mm, 0}, {{40, 0}, 0}, depth_mm, {}};
}

Reach reach(const job::Object& object, const std::vector<job::Notch>& notches, double turn_deg = 0) {
    auto turned = object;
    turned.levels.front().pose.turn_deg = turn_deg;
    const auto form = pocket_form(turned, notches, {}, 60);
    EXPECT_TRUE(form.has_value());
    return reach_of(*form, turned);
}

TEST(Reach, WhatStandsProudIsTakenHoldOf) {
    EXPECT_FALSE(reach(box(44.9), {}).two_fingers);
    EXPECT_TRUE(reach(box(45), {}).two_fingers);
    EXPECT_DOUBLE_EQ(reach(box(45), {}).proud_mm, 15);
    EXPECT_EQ(reach(box(45), {}).fingers, 0);
}

struct Row {
    const char* name;
    job::Notch notch;
    double height_mm;
    int fingers;
};

TEST(Reach, ANotchHoldsAsManyFingersAsFitBesideEachOther) {
    const Row rows[] = {
        {"two in one notch", right(40, 12, 20), 30, 2},
        {"one", right(39, 12, 20), 30, 1},
        {"three", right(60, 14, 20), 30, 3},
        {"too near the object", right(40, 11.9, 20), 30, 0},
        {"too shallow", right(40, 12, 14.9), 30, 0},
        {"the object lies low: too little of its side is reached", right(40, 12, 20), 24, 0},
        {"deep enough for it", right(40, 12, 21), 24, 2},
        {"below the pocket there is no side to hold", right(40, 12, 60), 14, 0},
    };
    for (const auto& row : rows)
        EXPECT_EQ(reach(box(row.height_mm), {row.notch}).fingers, row.fingers) << row.name;
}

TEST(Reach, TwoNotchesOfOneFingerMakeTwo) {
    auto left = right(25, 14, 20);
    left.pose.at = {-40, 0};
    EXPECT_FALSE(reach(box(30), {left}).two_fingers);
    EXPECT_TRUE(reach(box(30), {left, right(25, 14, 20)}).two_fingers);
}

TEST(Reach, TurningTheWholeChangesNothing) {
    for (const double turn : {15.0, 90.0, 133.0}) {
        auto notch = right(60, 14, 20);
        notch.pose.at = shape::Turn::of_degrees(turn)(notch.pose.at);
        notch.pose.turn_deg = turn;
        EXPECT_EQ(reach(box(30), {notch}, turn).fingers, 3) << turn;
    }
}

} // namespace
} // namespace drawercast::layout
