// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/length.h"
#include "base/number.h"
#include "base/units.h"

#include "core/base/as_shown.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

namespace drawercast {
namespace {

struct Typed {
    const char* text;
    LengthUnit unit;
    double mm;
};

TEST(ParseLength, understands_what_people_type) {
    const Typed rows[] = {
        {"82.5", LengthUnit::mm, 82.5},
        {"82,5", LengthUnit::mm, 82.5},
        {"8.25cm", LengthUnit::mm, 82.5},
        {" 8,25 cm ", LengthUnit::inch, 82.5},
        {"3 1/4 in", LengthUnit::mm, 82.55},
        {"3-1/4\"", LengthUnit::mm, 82.55},
        {"3 1/4", LengthUnit::inch_32, 82.55},
        {"5/8", LengthUnit::inch, 15.875},
        {"0.2 m", LengthUnit::mm, 200},
        {"2 ft", LengthUnit::mm, 609.6},
        {"-4", LengthUnit::mm, -4},
        {"\xE2\x88\x92"
         "4",
         LengthUnit::mm, -4},
        {"-1/2", LengthUnit::inch_32, -12.7},
        {"1", LengthUnit::inch, 25.4},
        {"0,500", LengthUnit::mm, 0.5},
        {"1.500", LengthUnit::mm, 1.5},
        {".5", LengthUnit::inch, 12.7},
        {"1500", LengthUnit::mm, 1500},
        {"12 inches", LengthUnit::mm, 304.8},
        {"4.", LengthUnit::mm, 4},
        {"8.25 CM", LengthUnit::mm, 82.5},
        {"3 1/4 In", LengthUnit::mm, 82.55},
        {"82.5\xC2\xA0mm", LengthUnit::inch, 82.5}, // no-break space
        {"\xE2\x88\x92 1/2\xE2\x80\xAF\"", LengthUnit::mm, -12.7},
        {"+2", LengthUnit::mm, 2},
        {"99999.799999", LengthUnit::mm, 99999.799999},
    };
    for (const auto& row : rows) {
        const auto mm = parse_length(row.text, row.unit);
        ASSERT_TRUE(mm) << row.text;
        EXPECT_DOUBLE_EQ(*mm, row.mm) << row.text;
    }
}

TEST(ParseLength, refuses_what_is_no_length) {
    for (const char* text : {"", " ", "mm", "abc", "1e3", "nan", "inf", "0x10", "1 2", "1/0", "1/", "/2",
                             "--3", "3 mm mm", "1..2", "1.2.3", "99999999", "3 1 /", "\xff\xfe"})
        EXPECT_FALSE(parse_length(text, LengthUnit::mm)) << text;
}

TEST(ParseLength, refuses_a_mark_that_could_be_thousands) {
    for (const char* text : {"1,500", "1.500,5", "12,000 mm", "1,234,567"}) {
        const auto mm = parse_length(text, LengthUnit::mm);
        ASSERT_FALSE(mm) << text;
        EXPECT_EQ(mm.error().code, "length-ambiguous") << text;
    }
    EXPECT_DOUBLE_EQ(*parse_length("1,500", LengthUnit::mm, DecimalMark::comma), 1.5);
    EXPECT_FALSE(parse_length("1.500", LengthUnit::mm, DecimalMark::comma));
}

TEST(LengthText, carries_and_signs) {
    EXPECT_EQ(length_text(-38.1, LengthUnit::inch_32), "-1 1/2 in");
    EXPECT_EQ(length_text(11.999 * 25.4, LengthUnit::inch_32), "12 in");
    EXPECT_EQ(length_text(-12.7, LengthUnit::inch_32), "-1/2 in");
    EXPECT_EQ(length_text(-0.001, LengthUnit::inch_32), "0 in");
    EXPECT_EQ(length_text(9.96, LengthUnit::mm), "10 mm");
    EXPECT_EQ(length_text(6.2, LengthUnit::mm, DecimalMark::comma), "6,2 mm");
    EXPECT_EQ(length_text(-0.04, LengthUnit::mm), "0 mm");
}

TEST(LengthText, what_is_shown_can_be_typed_back) {
    std::mt19937 random(5);
    std::uniform_real_distribution<double> length(-2000, 2000);
    for (int i = 0; i < 20000; ++i) {
        const double mm = length(random);
        for (const auto unit : {LengthUnit::mm, LengthUnit::inch, LengthUnit::inch_32})
            for (const auto mark : {DecimalMark::point, DecimalMark::comma}) {
                const auto back = parse_length(length_text(mm, unit, mark), unit, mark);
                ASSERT_TRUE(back) << length_text(mm, unit, mark);
                ASSERT_EQ(*back, as_shown(mm, unit)) << length_text(mm, unit, mark);
            }
    }
}

// NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B.8, printed to the digits they give.
TEST(Units, published_conversions) {
    EXPECT_DOUBLE_EQ(units::ml_per_gallon, 3785.411784);
    EXPECT_NEAR(units::ml_per_quart, 946.352946, 1e-9);
    EXPECT_NEAR(units::ml_per_fluid_ounce, 29.5735295625, 1e-12);
    EXPECT_NEAR(units::g_per_ounce, 28.349523125, 1e-12);
    EXPECT_NEAR(units::n_per_pound_force, 4.4482216152605, 1e-13);
    EXPECT_NEAR(units::kpa_per_psi, 6.894757, 5e-7);
    EXPECT_NEAR(units::kg_m3_per_pound_per_cubic_foot, 16.01846, 5e-6);
    EXPECT_DOUBLE_EQ(units::fahrenheit(-40), -40);
    EXPECT_DOUBLE_EQ(units::celsius(212), 100);
}

} // namespace
} // namespace drawercast
