// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "base/typed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace drawercast {
namespace {

struct NumberCase {
    std::string typed;
    DecimalMark mark;
    std::optional<double> value;
    std::string code;
};

TEST(TypedNumber, table) {
    const auto point = DecimalMark::point;
    const auto comma = DecimalMark::comma;
    const std::vector<NumberCase> cases{
        {"82.5", point, 82.5, {}},
        {"82,5", point, 82.5, {}},
        {"82.5", comma, 82.5, {}},
        {" \t4\r\n", point, 4, {}},
        {".5", point, 0.5, {}},
        {"5.", point, 5, {}},
        {"-4", point, -4, {}},
        {"+4", point, 4, {}},
        {"\xE2\x88\x92"
         "4",
         point,
         -4,
         {}},
        {"5/8", point, 0.625, {}},
        {"3 1/4", point, 3.25, {}},
        {"3-1/4", point, 3.25, {}},
        {"-3 1/4", point, -3.25, {}},
        {"1,500", comma, 1.5, {}},
        {"0,125", point, 0.125, {}},
        {"1,500", point, {}, "number-ambiguous"},
        {"1.500", comma, {}, "number-ambiguous"},
        {"1.500,5", point, {}, "number-ambiguous"},
        {"", point, {}, "number"},
        {"-", point, {}, "number"},
        {"--4", point, {}, "number"},
        {"4 4", point, {}, "number"},
        {"1e3", point, {}, "number"},
        {"0x10", point, {}, "number"},
        {"nan", point, {}, "number"},
        {"inf", point, {}, "number"},
        {"1/0", point, {}, "number"},
        {"4 g", point, {}, "number"},
        {std::string("4\0", 2), point, {}, "number"},
        {std::string(100000, '1'), point, {}, "number"},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed.substr(0, 70));
        const auto value = parse_typed_number(c.typed, c.mark);
        ASSERT_EQ(value.has_value(), c.value.has_value());
        if (c.value)
            EXPECT_EQ(*value, *c.value);
        else
            EXPECT_EQ(value.error().code, c.code);
    }
}

struct QuantityCase {
    std::string typed;
    Quantity quantity;
    std::string_view bare;
    std::optional<double> value;
};

TEST(TypedQuantity, table) {
    // Pound, ounce, quart, foot: NIST Handbook 44, Appendix C.
    const std::vector<QuantityCase> cases{
        {"640", Quantity::mass_g, "g", 640},
        {"640 g", Quantity::mass_g, "lb", 640},
        {"0.64kg", Quantity::mass_g, "g", 640},
        {"0,64 KG", Quantity::mass_g, "g", 640},
        {"2", Quantity::mass_g, "lb", 907.18474},
        {"8 oz", Quantity::mass_g, "g", 226.796185},
        {"1/2 lb", Quantity::mass_g, "g", 226.796185},
        {"3 lbs", Quantity::mass_g, "g", 1360.77711},
        {"2 qt", Quantity::volume_ml, "ml", 1892.705892},
        {"12 fl oz", Quantity::volume_ml, "ml", 354.88235475},
        {"1.9 L", Quantity::volume_ml, "qt", 1900},
        {"75", Quantity::temperature_c, "°f", 23.888888888888889},
        {"-40 F", Quantity::temperature_c, "°c", -40},
        {"23 °C", Quantity::temperature_c, "°f", 23},
        {"18 °F", Quantity::warmer_k, "k", 10},
        {"5000 ft", Quantity::altitude_m, "m", 1524},
        {"640 kgs", Quantity::mass_g, "g", {}},
        {"g", Quantity::mass_g, "g", {}},
        {"4 mm", Quantity::mass_g, "g", {}},
        {"1 lb 4 oz", Quantity::mass_g, "g", {}},
        {"", Quantity::mass_g, "g", {}},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed);
        const Unit* bare = find_unit(c.quantity, c.bare);
        ASSERT_NE(bare, nullptr);
        const auto value = parse_quantity(c.typed, c.quantity, *bare);
        ASSERT_EQ(value.has_value(), c.value.has_value());
        if (c.value) {
            EXPECT_NEAR(*value, *c.value, 1e-9 * std::abs(*c.value));
        }
    }
}

} // namespace
} // namespace drawercast
