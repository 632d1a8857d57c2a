// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/form_casting.h"
#include "casting/sections.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace drawercast::casting {
namespace {

using built::cut;
using built::form;
using built::lying;
using built::notch;
using shape::Capsule;
using shape::Circle;
using shape::Rectangle;

constexpr double pi = std::numbers::pi;

double blocks(std::vector<FormCut> cuts, double insert_mm = 60) { return volume(layers_of(cuts, insert_mm)); }

double segment(double r, double h) {
    return r * r * std::acos(1 - h / r) - (r - h) * std::sqrt(h * (2 * r - h));
}

TEST(Sections, volumes_by_hand) {
    struct Row {
        const char* name;
        std::vector<FormCut> cuts;
        double volume;
    };
    const Row rows[] = {
        {"prism", {cut(Rectangle{40, 20, 0}, 25)}, 20000},
        {"deeper than the insert is thick", {cut(Rectangle{40, 20, 0}, 90)}, 48000},
        {"two levels, one in the other",
         {cut(Rectangle{40, 20, 0}, 10), cut(Rectangle{10, 10, 0}, 30)},
         8000 + 2000},
        {"half over each other",
         {cut(Rectangle{40, 20, 0}, 10), cut(Rectangle{40, 20, 0}, 30, {{20, 0}, 0})},
         24000 + 4000},
        {"side by side", {cut(Rectangle{40, 20, 0}, 10), cut(Rectangle{40, 20, 0}, 30, {{40, 0}, 0})}, 32000},
        {"notch", {cut(Rectangle{40, 40, 0}, 30), notch(Circle{20}, 10, {{20, 0}, 0})}, 48000 + 10 * pi * 50},
        {"round, axis at the face", {lying(-20, 20, 18, 0)}, pi * 81 / 2 * 40},
        {"round, axis below", {lying(-20, 20, 18, 7)}, (7 * 18 + pi * 81 / 2) * 40},
        {"round, axis above", {lying(-20, 20, 18, -4)}, segment(9, 5) * 40},
        {"two cylinders",
         {lying(-20, 20, 18, 7), lying(20, 30, 8, 7)},
         (7 * 18 + pi * 81 / 2) * 40 + (7 * 8 + pi * 16 / 2) * 10},
    };
    for (const Row& row : rows) EXPECT_NEAR(blocks(row.cuts), row.volume, 1e-9 * row.volume) << row.name;
}

TEST(Sections, round_cut_short_by_the_insert) {
    // 12 deep into a round of radius 10 with its axis at 5: the lowest 3 mm of the segment are missing
    const double whole = (5 * 20 + pi * 50) * 30;
    EXPECT_NEAR(blocks({lying(-15, 15, 20, 5)}, 12), whole - segment(10, 3) * 30, 1e-6);
    EXPECT_NEAR(blocks({lying(-15, 15, 20, 5)}, 4), 4 * 20 * 30, 1e-9);
}

TEST(Sections, sliced_round_agrees_with_its_closed_form) {
    // a notch inside the opening changes nothing, but makes slices of it
    const auto inside = notch(Circle{6}, 3, {{0, 0}, 0});
    for (const double axis : {-6.0, 0.0, 8.0}) {
        const double exact = blocks({lying(-25, 25, 22, axis)});
        EXPECT_NEAR(blocks({lying(-25, 25, 22, axis), inside}), exact, 1e-6 * exact) << axis;
    }
}

TEST(Sections, volume_below_a_height) {
    const Layers layers =
        layers_of(std::vector{cut(Rectangle{40, 20, 0}, 10), cut(Rectangle{10, 10, 0}, 30)}, 60);
    EXPECT_DOUBLE_EQ(volume_below(layers, 0), 0);
    EXPECT_NEAR(volume_below(layers, 4), 3200, 1e-9);
    EXPECT_NEAR(volume_below(layers, 20), 8000 + 1000, 1e-9);
    EXPECT_NEAR(volume_below(layers, 99), volume(layers), 1e-9);
    EXPECT_NEAR(area_at(layers, 0), 800, 1e-9);
    EXPECT_NEAR(area_at(layers, 10), 100, 1e-9);
    EXPECT_DOUBLE_EQ(area_at(layers, 30), 0);
    EXPECT_DOUBLE_EQ(lowest_top(layers), 10);
    EXPECT_EQ(lowest_top({}), std::numeric_limits<double>::infinity());
}

TEST(FormCasting, measured_volume_stands_for_the_levels) {
    const auto notched = form({cut(Rectangle{40, 40, 0}, 30), notch(Circle{20}, 10, {{20, 0}, 0})});
    const FormCasting outlined = casting_of({notched, {}, 60, 5});
    const FormCasting measured = casting_of({notched, 31.5, 60, 5});
    EXPECT_NEAR(measured.blocks_mm3, 31500 + 10 * pi * 50, 1e-6);
    EXPECT_EQ(measured.fillet_mm3, outlined.fillet_mm3);
    EXPECT_EQ(measured.footprint_mm2, outlined.footprint_mm2);
}

TEST(FormCasting, volume_is_additive) {
    const auto a = cut(Capsule{50, 20}, 25, {{0, 0}, 15});
    const auto b = lying(-15, 15, 12, 3);
    auto far = b;
    far.outline.contour = shape::placed(b.outline.contour, {{0, 80}, 0});
    const auto alone = [](const FormCut& one) { return casting_of({form({one}), {}, 60, 5}); };
    const FormCasting both = casting_of({form({a, far}), {}, 60, 5});
    EXPECT_NEAR(both.blocks_mm3, alone(a).blocks_mm3 + alone(b).blocks_mm3, 1e-9);
    EXPECT_NEAR(both.fillet_mm3, alone(a).fillet_mm3 + alone(b).fillet_mm3, 1e-9);
    EXPECT_NEAR(both.footprint_mm2, alone(a).footprint_mm2 + alone(b).footprint_mm2, 1e-9);
}

} // namespace
} // namespace drawercast::casting
