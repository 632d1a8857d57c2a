// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/batches.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

BatchesIn liquid(double ml) {
    BatchesIn in;
    in.liquid_ml = ml;
    in.pour_window_s = 30;
    in.container_ml = 19000;
    return in;
}

TEST(Batches, table) {
    struct Row {
        const char* name;
        void (*change)(BatchesIn&);
        int count;
        double bucket_left_ml, pour_s;
        bool in_time;
    };
    const Row rows[] = {
        {"one", [](BatchesIn&) {}, 1, 96, 24, true},
        {"little: 40 mL stay behind all the same", [](BatchesIn& in) { in.liquid_ml = 500; }, 1, 40, 5, true},
        {"the pot life splits it", [](BatchesIn& in) { in.pour_window_s = 23; }, 2, 48, 12, true},
        {"a small container", [](BatchesIn& in) { in.container_ml = 1800; }, 3, 40, 8, true},
        {"no room to stir needed",
         [](BatchesIn& in) {
             in.container_ml = 2500;
             in.stir_room = 0;
         },
         1, 96, 24, true},
        {"a small mixer", [](BatchesIn& in) { in.mixer_ml = 1300; }, 2, 48, 12, true},
        {"what is left counts for the container", [](BatchesIn& in) { in.container_ml = 4900; }, 2, 48, 12,
         true},
        {"the shop's own leftover", [](BatchesIn& in) { in.bucket_left_ml = 10; }, 1, 10, 24, true},
        {"a pour of fixed length", [](BatchesIn& in) { in.pour_s = 29; }, 1, 96, 29, true},
        {"one too long for the pot life", [](BatchesIn& in) { in.pour_s = 31; }, 1, 96, 31, false},
        {"mixing takes the pot life", [](BatchesIn& in) { in.pour_window_s = 0; }, 1, 96, 24, false},
        {"and more, split by volume",
         [](BatchesIn& in) {
             in.pour_window_s = -5;
             in.mixer_ml = 900;
         },
         3, 40, 8, false},
    };
    for (const Row& row : rows) {
        BatchesIn in = liquid(2400);
        row.change(in);
        const auto batches = batches_of(in);
        ASSERT_TRUE(batches) << row.name;
        EXPECT_EQ(batches->count, row.count) << row.name;
        EXPECT_NEAR(batches->bucket_left_ml, row.bucket_left_ml, 1e-9) << row.name;
        EXPECT_NEAR(batches->pour_s, row.pour_s, 1e-9) << row.name;
        EXPECT_EQ(batches->in_time, row.in_time) << row.name;
    }
}

TEST(Batches, refused_where_even_the_leftover_fills_the_container) {
    BatchesIn in = liquid(2400);
    in.container_ml = 79;
    const auto batches = batches_of(in);
    ASSERT_FALSE(batches);
    EXPECT_EQ(batches.error().code, "container-small");
}

} // namespace
} // namespace drawercast::casting
