// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/casting/builders.h"
#include "core/casting/raster.h"

#include <gtest/gtest.h>

#include <random>

// The cavity against the same mold looked at point by point.
namespace drawercast::casting {
namespace {

using built::cut;
using built::form;
using built::lying;
using built::notch;
using built::pocket;
using shape::Capsule;
using shape::Circle;
using shape::Polygon;
using shape::Rectangle;

using Form = std::shared_ptr<const layout::PocketForm>;

Form l_outline() {
    return form({cut(Polygon{{{{0, 0}}, {{30, 0}}, {{30, 12}}, {{12, 12}}, {{12, 34}}, {{0, 34}}}}, 20)});
}

/// A slot 6 wide: the clay of its sides meets.
Form u_outline() {
    return form({cut(
        Polygon{{{{0, 0}}, {{36, 0}}, {{36, 30}}, {{21, 30}}, {{21, 8}}, {{15, 8}}, {{15, 30}}, {{0, 30}}}},
        25)});
}

struct Case {
    const char* name;
    double fillet_mm;
    std::vector<std::pair<Form, shape::Pose>> pockets;
};

std::vector<Case> cases() {
    const Form box = form({cut(Rectangle{30, 20, 0}, 20)});
    const Form soft = form({cut(Rectangle{30, 20, 6}, 25)});
    const Form can = form({cut(Circle{24}, 30)});
    const Form pin = form({cut(Circle{5}, 12)});
    const Form low = form({cut(Rectangle{25, 18, 0}, 2)});
    const Form step = form({cut(Rectangle{30, 20, 2}, 12), cut(Rectangle{16, 12, 0}, 30, {{4, 0}, 20})});
    const Form notched = form({cut(Rectangle{34, 18, 0}, 24), notch(Capsule{26, 12}, 12, {{0, 9}, 90})});
    const Form cell = form({lying(-20, 12, 14, 4), lying(12, 18, 6, 4)});
    const Form high_axis = form({lying(-15, 15, 20, -3)});
    const Form rolled = form({lying(-20, 20, 16, 3), notch(Capsule{20, 10}, 8, {{0, 8}, 90})});
    return {
        {"alone",
         5,
         {{box, {{40, 40}, 0}}, {soft, {{90, 40}, 30}}, {can, {{40, 80}, 0}}, {l_outline(), {{80, 65}, 15}}}},
        {"slot and notch",
         5,
         {{u_outline(), {{20, 20}, 10}}, {notched, {{90, 50}, 0}}, {step, {{40, 90}, 45}}}},
        {"lying rounds", 4, {{cell, {{40, 30}, 20}}, {high_axis, {{90, 40}, 90}}, {rolled, {{50, 80}, 0}}}},
        {"two, side by side", 5, {{box, {{40, 40}, 0}}, {box, {{76, 40}, 0}}}},
        {"two rounds", 5, {{can, {{40, 40}, 0}}, {can, {{70, 44}, 0}}}},
        {"low beside high", 5, {{low, {{40, 40}, 0}}, {box, {{71, 40}, 0}}}},
        {"four corners",
         5,
         {{box, {{40, 40}, 0}}, {box, {{76, 40}, 0}}, {box, {{40, 65}, 0}}, {box, {{76, 65}, 0}}}},
        {"pins",
         4,
         {{pin, {{40, 40}, 0}},
          {pin, {{47, 40}, 0}},
          {pin, {{40, 47}, 0}},
          {pin, {{47, 47}, 0}},
          {pin, {{54, 44}, 0}},
          {pin, {{46, 54}, 0}}}},
        {"at walls", 5, {{box, {{17, 40}, 0}}, {can, {{60, 13}, 0}}, {box, {{132, 107}, 0}}}},
        {"sticking out",
         5,
         {{box, {{10, 40}, 0}}, {can, {{70, 4}, 0}}, {box, {{145, 115}, 30}}, {cell, {{75, 118}, 10}}}},
        {"overlapping",
         5,
         {{box, {{40, 40}, 0}}, {can, {{55, 45}, 0}}, {soft, {{90, 80}, 0}}, {step, {{100, 85}, 70}}}},
        {"heap",
         5,
         {{box, {{40, 40}, 0}},
          {can, {{50, 45}, 0}},
          {soft, {{45, 50}, 40}},
          {cell, {{40, 45}, 60}},
          {step, {{52, 38}, 10}}}},
        {"heap at a wall",
         5,
         {{box, {{10, 40}, 0}}, {can, {{12, 50}, 0}}, {soft, {{8, 45}, 40}}, {low, {{14, 34}, 0}}}},
        {"no clay", 0, {{box, {{40, 40}, 0}}, {can, {{50, 45}, 0}}, {soft, {{45, 50}, 40}}}},
        {"much clay",
         12,
         {{box, {{40, 40}, 0}}, {can, {{75, 40}, 0}}, {l_outline(), {{40, 62}, 0}}, {low, {{85, 70}, 0}}}},
    };
}

CavityIn mold(const Case& one) {
    CavityIn in;
    in.insert = built::insert(150, 120, 40);
    in.fillet_mm = one.fillet_mm;
    int n = 0;
    for (const auto& [form, pose] : one.pockets)
        in.pockets.push_back({pocket("p#" + std::to_string(++n), form, pose), {}});
    return in;
}

TEST(CavityRaster, cases) {
    for (const Case& one : cases()) {
        const CavityIn in = mold(one);
        const Cavity exact = cavity_of(in);
        const Cavity seen = raster::cavity(in, 3'000'000);
        EXPECT_NEAR(exact.fillet_mm3, seen.fillet_mm3, 0.002 * seen.fillet_mm3 + 0.5) << one.name;
        EXPECT_NEAR(exact.blocks_mm3, seen.blocks_mm3, 0.001 * seen.blocks_mm3) << one.name;
        EXPECT_NEAR(exact.open_area_mm2, seen.open_area_mm2, 2) << one.name;
    }
}

} // namespace
} // namespace drawercast::casting
