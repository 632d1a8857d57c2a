// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include "base/ascii.h"
#include "base/units.h"

#include <array>
#include <string>

namespace drawercast {

namespace {

constexpr std::array mass{Unit{"g"}, Unit{"kg", 1000}, Unit{"oz", units::g_per_ounce},
                          Unit{"lb", units::g_per_pound}, Unit{"lbs", units::g_per_pound}};
constexpr std::array load{Unit{"kg"}, Unit{"g", 0.001}, Unit{"lb", units::g_per_pound / 1000},
                          Unit{"lbs", units::g_per_pound / 1000}};
constexpr std::array volume{Unit{"ml"},
                            Unit{"l", 1000},
                            Unit{"cm³", 1},
                            Unit{"fl oz", units::ml_per_fluid_ounce},
                            Unit{"qt", units::ml_per_quart},
                            Unit{"gal", units::ml_per_gallon}};
constexpr std::array pressure{Unit{"kpa"}, Unit{"psi", units::kpa_per_psi}};
constexpr std::array temperature{Unit{"°c"}, Unit{"c"}, Unit{"°f", 5.0 / 9, -160.0 / 9},
                                 Unit{"f", 5.0 / 9, -160.0 / 9}};
constexpr std::array warmer{Unit{"°c"}, Unit{"k"}, Unit{"c"}, Unit{"°f", 5.0 / 9}, Unit{"f", 5.0 / 9}};
constexpr std::array altitude{Unit{"m"}, Unit{"ft", units::mm_per_foot / 1000}};

/// Capital letters of ASCII only: the words have no others.
std::string lower(std::string_view text) {
    std::string low(text);
    for (char& c : low) c = small_letter(c);
    return low;
}

bool ends_number(char c) { return is_digit(c) || c == '.' || c == ','; }

} // namespace

std::span<const Unit> units_of(Quantity quantity) {
    switch (quantity) {
    case Quantity::mass_g:
        return mass;
    case Quantity::load_kg:
        return load;
    case Quantity::volume_ml:
        return volume;
    case Quantity::pressure_kpa:
        return pressure;
    case Quantity::temperature_c:
        return temperature;
    case Quantity::warmer_k:
        return warmer;
    case Quantity::altitude_m:
        return altitude;
    }
    return {};
}

const Unit* find_unit(Quantity quantity, std::string_view word) {
    const std::string low = lower(word);
    for (const Unit& unit : units_of(quantity))
        if (unit.word == low) return &unit;
    return nullptr;
}

Expected<double> parse_quantity(std::string_view typed, Quantity quantity, const Unit& bare,
                                DecimalMark mark) {
    const std::string low = lower(trimmed(typed));
    const Unit* in = &bare;
    std::string_view digits = low;
    for (const Unit& unit : units_of(quantity)) {
        if (low.size() <= unit.word.size() || !low.ends_with(unit.word)) continue;
        const auto before = trimmed(std::string_view(low).substr(0, low.size() - unit.word.size()));
        if (before.empty() || !ends_number(before.back())) continue;
        in = &unit;
        digits = before;
        break;
    }
    const auto value = parse_typed_number(digits, mark);
    if (!value) return value.error();
    return *value * in->scale + in->zero;
}

} // namespace drawercast
