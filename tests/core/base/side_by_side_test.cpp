// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/side_by_side.h"

#include <gtest/gtest.h>

#include <atomic>
#include <stdexcept>
#include <vector>

namespace drawercast {
namespace {

TEST(SideBySide, EachIndexIsWorkedOnOnce) {
    for (const std::size_t count : {0u, 1u, 2u, 1000u}) {
        std::vector<int> times(count);
        side_by_side(count, [&](std::size_t i) { ++times[i]; });
        for (const int each : times) EXPECT_EQ(each, 1);
    }
}

TEST(SideBySide, AFaultOfOneIsThrownAfterTheRest) {
    std::atomic<int> done{0};
    const auto work = [&](std::size_t i) {
        if (i == 0) throw std::runtime_error("torn");
        ++done;
    };
    EXPECT_THROW(side_by_side(8, work), std::runtime_error);
    EXPECT_EQ(done, 7);
}

} // namespace
} // namespace drawercast
