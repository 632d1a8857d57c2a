// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/demand.h"
#include "base/number.h"
#include "base/problem.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <stdexcept>
#include <string>

namespace drawercast {
namespace {

TEST(Number, reads_plain_numbers_only) {
    EXPECT_EQ(parse_number("82.5"), 82.5);
    EXPECT_EQ(parse_number("-1.5e3"), -1500);
    EXPECT_FALSE(std::signbit(*parse_number("-0")));
    for (const char* text : {"", " 1", "1 ", "+1", "1,5", "0x10", "nan", "inf", "1e999", "1.2.3", "--1"})
        EXPECT_FALSE(parse_number(text)) << text;
}

TEST(Number, writes_what_reads_back) {
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> mantissa(-1, 1);
    std::uniform_int_distribution<int> exponent(-40, 40);
    for (int i = 0; i < 20000; ++i) {
        const double value = std::ldexp(mantissa(random), exponent(random));
        EXPECT_EQ(parse_number(number_text(value)), value);
    }
    EXPECT_EQ(number_text(-0.0), "0");
    EXPECT_EQ(number_text(0.1), "0.1");
    EXPECT_EQ(number_text(1e21), "1000000000000000000000");
    EXPECT_EQ(parse_number(number_text(5e-324)), 5e-324);
    EXPECT_THROW(number_text(NAN), std::logic_error);
}

TEST(Number, rounds_to_significant_digits) {
    EXPECT_EQ(rounded_text(9042094.17239, 9), "9042094.17");
    EXPECT_EQ(rounded_text(0.000123456789123, 9), "0.000123456789");
    EXPECT_EQ(rounded_text(999.9999, 3), "1000");
}

TEST(Number, grain_is_a_millionth) {
    EXPECT_EQ(grained(0.1 + 0.2), 0.3);
    EXPECT_EQ(grained(82.55000004), 82.55);
    EXPECT_FALSE(std::signbit(grained(-1e-9)));
    std::mt19937 random(4);
    std::uniform_real_distribution<double> length(-5000, 5000);
    for (int i = 0; i < 10000; ++i) {
        const double once = grained(length(random));
        EXPECT_EQ(grained(once), once);
    }
}

TEST(Problem, stays_on_one_line) {
    EXPECT_EQ(one_line({"x", "here", phrase("it broke\nbadly"), phrase("Mend it")}),
              "here: it broke badly. Mend it.");
    EXPECT_EQ(one_line({"x", "", phrase("it broke"), {}}), "it broke.");
}

TEST(Demand, tells_the_file_without_its_folders) {
    try {
        DRAWERCAST_DEMAND(1 > 2, "one is more than two");
        FAIL();
    } catch (const std::logic_error& error) {
        EXPECT_NE(std::string(error.what()).find("one is more than two (number_test.cpp:"),
                  std::string::npos);
    }
}

} // namespace
} // namespace drawercast
