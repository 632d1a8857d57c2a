// SPDX-License-Identifier: GPL-3.0-or-later
// Concave quarter-round fillets by Pappus' theorem, worked out apart from this program (python 3.11, double
// precision).
#include "casting/fillet.h"
#include "casting/form_casting.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

struct Case {
    const char* name;
    shape::Given outline;
    double radius_mm;
    double volume_mm3;
};

const Case cases[] = {
    {"cylinder a 20 r 5", shape::Circle{40}, 5, 711.840},
    {"cylinder a 30 r 5", shape::Circle{60}, 5, 1048.94},
    {"cylinder a 40 r 10", shape::Circle{80}, 10, 5694.72},
    {"rectangle 160x80 r 5", shape::Rectangle{160, 80, 0}, 5, 2612.87},
    {"rectangle 100x100 r 3", shape::Rectangle{100, 100, 0}, 3, 780.699},
    {"rectangle 200x50 r 10", shape::Rectangle{200, 50, 0}, 10, 11031.3},
    {"rectangle 160x80 with corners of 10, r 5", shape::Rectangle{160, 80, 10}, 5, 2520.76},
    {"R2 of the worked drawer", shape::Rectangle{120, 60, 0}, 5, 1969.06},
    {"R3 of the worked drawer", shape::Rectangle{100, 100, 0}, 5, 2183.67},
    {"R4 of the worked drawer", shape::Rectangle{200, 50, 0}, 5, 2720.17},
};

constexpr double six_digits = 5e-6;

TEST(Fillets, closed_form) {
    for (const Case& row : cases)
        EXPECT_NEAR(fillet_alone(built::contour(row.outline), row.radius_mm), row.volume_mm3,
                    six_digits * row.volume_mm3)
            << row.name;
}

TEST(Fillets, by_areas) {
    for (const Case& row : cases) {
        const auto form = built::form({built::cut(row.outline, 40)});
        EXPECT_NEAR(fillet_by_areas(form->cuts, 60, row.radius_mm, own_clay_nodes), row.volume_mm3,
                    six_digits * row.volume_mm3)
            << row.name;
    }
}

// A = r²(1 − π/4) along a straight side: what a rectangle gains when it grows.
TEST(Fillets, straight_side) {
    constexpr double rows[][3] = {{3, 100, 193.142}, {5, 480, 2575.22}, {10, 250, 5365.05}};
    for (const auto& [radius, length, volume] : rows) {
        const auto of = [r = radius](double width) {
            return fillet_alone(built::contour(shape::Rectangle{width, 50, 0}), r);
        };
        EXPECT_NEAR((of(20 + length) - of(20)) / 2, volume, six_digits * volume);
    }
}

} // namespace
} // namespace drawercast::casting
