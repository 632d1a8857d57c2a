// SPDX-License-Identifier: GPL-3.0-or-later
// Closed cases of foam rising, worked out apart from this program (python 3.11, double precision).
#include "casting/rise.h"

#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::casting {
namespace {

constexpr double mold_full_at = 6 / 1.15; // expansion 6, 15 % over free rise

// E(t) = 1 + 5(1 − exp(−(t − 45)/30)): our first-order rise of a pot life of 50 s that would end at 45 +
// 30·ln 100.
TEST(Rise, first_order_by_time) {
    const RiseCurve curve = FirstOrder{50, 45 + 30 * std::log(100.0), 6};
    constexpr double rows[][2] = {
        {60, 2.96735}, {75, 4.16060}, {90, 4.88435}, {120, 5.58958}, {180, 5.94446}};
    for (const auto& [t_s, expansion] : rows) EXPECT_NEAR(expansion_after(curve, t_s), expansion, 5.1e-6);
    EXPECT_NEAR(time_of(curve, mold_full_at), 100.637, 5.1e-4);
}

TEST(Rise, smoothstep_by_overpack) {
    const RiseCurve curve = Smoothstep{50, 180, 6};
    constexpr double rows[][2] = {{0.05, 161.121}, {0.10, 153.317}, {0.15, 147.469}, {0.30, 134.961}};
    for (const auto& [overpack, t_s] : rows) EXPECT_NEAR(time_of(curve, 6 / (1 + overpack)), t_s, 5.1e-4);
    EXPECT_NEAR((time_of(curve, mold_full_at) - 50) / 130, 0.749759, 5.1e-7);
}

TEST(Rise, smoothstep_is_steepest_at_half) {
    const RiseCurve curve = Smoothstep{50, 180, 6};
    const double peak = (expansion_after(curve, 115.001) - expansion_after(curve, 114.999)) / 0.002;
    EXPECT_NEAR(peak, 1.5 * 5 / 130, 1e-6);
}

} // namespace
} // namespace drawercast::casting
