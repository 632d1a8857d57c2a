// SPDX-License-Identifier: GPL-3.0-or-later
// The worked drawer (see worked_dose_test.cpp) up to what its mold holds, by hand in double precision.
#include "casting/cavity.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

CavityIn worked_drawer() {
    struct Row {
        const char* subject;
        shape::Given outline;
        double depth_mm;
        shape::Vec at;
    };
    const Row rows[] = {
        {"R1#1", shape::Rectangle{160, 80, 0}, 40, {110, 300}},
        {"R2#1", shape::Rectangle{120, 60, 0}, 30, {300, 300}},
        {"R3#1", shape::Rectangle{100, 100, 0}, 25, {80, 150}},
        {"R4#1", shape::Rectangle{200, 50, 0}, 20, {280, 150}},
        {"C1#1", shape::Circle{60}, 35, {430, 300}},
        {"C2#1", shape::Circle{40}, 30, {420, 60}},
    };
    CavityIn in;
    in.insert = built::insert(480, 360, 60);
    for (const Row& row : rows)
        in.pockets.push_back(
            {built::pocket(row.subject, built::form({built::cut(row.outline, row.depth_mm)}), {row.at, 0}),
             {}});
    return in;
}

TEST(WorkedCavity, volumes) {
    const Cavity cavity = cavity_of(worked_drawer());
    EXPECT_DOUBLE_EQ(cavity.gross_mm3, 10368000);
    EXPECT_NEAR(cavity.blocks_mm3, 1314659.280, 5e-4);
    EXPECT_NEAR(cavity.fillet_mm3, 11246.548, 5e-4);
    EXPECT_NEAR(cavity.net_mm3, 9042094.172, 5e-4);
}

TEST(WorkedCavity, liquid_level) {
    struct Row {
        double height_mm, liters;
    };
    // without fillets, by height; and the poured liquid, which covers no block
    constexpr Row rows[] = {{20, 2.57432}, {25, 3.26790}, {30, 4.01148},
                            {35, 4.79734}, {40, 5.59734}, {60, 9.05334}};
    CavityMemory memory;
    memory.update(worked_drawer());
    for (const Row& row : rows) EXPECT_NEAR(memory.liquid_level_mm(1000 * row.liters), row.height_mm, 1e-4);
    EXPECT_NEAR(memory.liquid_level_mm(1733.07), 13.4643, 5e-5);
}

} // namespace
} // namespace drawercast::casting
