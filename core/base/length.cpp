// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/length.h"

#include "base/ascii.h"
#include "base/number.h"
#include "base/units.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <optional>

namespace drawercast {

namespace {

constexpr std::int64_t fraction = 32;
// 3937 in: about 100 m, and a whole step of each way a length is shown, so that what is shown near it can be
// typed back
constexpr double most_mm = 99'999.8;

/// `ticks` of 1/10^decimals: rounded before it is split, so that no carry is lost.
std::string decimal_digits(double value, int decimals, DecimalMark mark) {
    const double scale = decimals == 3 ? 1000 : 10;
    const auto ticks = std::llround(value * scale);
    std::string digits = number_text(static_cast<double>(std::llabs(ticks)) / scale);
    if (mark == DecimalMark::comma)
        for (char& c : digits)
            if (c == '.') c = ',';
    return ticks < 0 ? "-" + digits : digits;
}

std::string fraction_digits(double inches) {
    const std::int64_t ticks = std::llround(inches * static_cast<double>(fraction));
    const std::int64_t size = std::llabs(ticks);
    const std::int64_t whole = size / fraction;
    std::int64_t rest = size % fraction;
    std::string digits = ticks < 0 ? "-" : "";
    if (whole != 0 || rest == 0) digits += std::to_string(whole);
    if (rest != 0) {
        const std::int64_t common = std::gcd(rest, fraction);
        if (whole != 0) digits += ' ';
        digits += std::to_string(rest / common) + "/" + std::to_string(fraction / common);
    }
    return digits;
}

// ---- reading ----

struct UnitWord {
    std::string_view word;
    double mm;
};
constexpr std::array unit_words{
    UnitWord{"mm", 1},
    UnitWord{"cm", 10},
    UnitWord{"m", 1000},
    UnitWord{"inches", 25.4},
    UnitWord{"inch", 25.4},
    UnitWord{"in", 25.4},
    UnitWord{"\"", 25.4},
    UnitWord{"\xE2\x80\xB3", 25.4},
    UnitWord{"feet", 304.8},
    UnitWord{"foot", 304.8},
    UnitWord{"ft", 304.8},
    UnitWord{"'", 304.8},
    UnitWord{"\xE2\x80\xB2", 304.8},
};

/// Takes a unit off the end of the text; nothing where there is none.
std::optional<double> take_unit(std::string_view& text) {
    for (const auto& unit : unit_words) {
        if (text.size() <= unit.word.size() || text.substr(text.size() - unit.word.size()) != unit.word)
            continue;
        const auto before = trimmed(text.substr(0, text.size() - unit.word.size()));
        if (before.empty() || !(is_digit(before.back()) || before.back() == '.' || before.back() == ','))
            continue;
        text = before;
        return unit.mm;
    }
    return std::nullopt;
}

/// Small letters, and plain blanks for the no-break ones that texts copied from a page hold.
std::string plainly(std::string_view typed) {
    constexpr std::string_view no_break_space = "\xC2\xA0";
    constexpr std::string_view narrow_no_break_space = "\xE2\x80\xAF";
    std::string text;
    while (!typed.empty()) {
        std::size_t taken = 1;
        const char c = typed.front();
        for (const auto blank : {no_break_space, narrow_no_break_space})
            if (typed.substr(0, blank.size()) == blank) taken = blank.size();
        text += taken > 1 ? ' ' : small_letter(c);
        typed.remove_prefix(taken);
    }
    return text;
}

Problem not_a_length(std::string_view typed) {
    return {"length", "", phrase("\"%1\" is not a length", verbatim(std::string(typed.substr(0, 64)))),
            phrase("Type it like 82.5, 8.25 cm, 3 1/4 in")};
}

} // namespace

std::string length_digits(double mm, LengthUnit unit, DecimalMark mark) {
    switch (unit) {
    case LengthUnit::mm:
        return decimal_digits(mm, 1, mark);
    case LengthUnit::inch:
        return decimal_digits(mm / units::mm_per_inch, 3, mark);
    case LengthUnit::inch_32:
        return fraction_digits(mm / units::mm_per_inch);
    }
    return {};
}

std::string length_text(double mm, LengthUnit unit, DecimalMark mark) {
    return length_digits(mm, unit, mark) + (unit == LengthUnit::mm ? " mm" : " in");
}

Expected<double> parse_length(std::string_view typed, LengthUnit unit, DecimalMark mark) {
    const std::string plain = plainly(typed);
    std::string_view text = trimmed(plain);
    const double in_mm = take_unit(text).value_or(unit == LengthUnit::mm ? 1 : units::mm_per_inch);
    const auto value = parse_typed_number(text, mark);
    if (value.has_error() && value.error().code == "number-ambiguous")
        return Problem{"length-ambiguous", "",
                       phrase("\"%1\" can be read in two ways", verbatim(std::string(trimmed(typed)))),
                       phrase("Type it without a thousands mark")};
    if (!value) return not_a_length(trimmed(typed));
    const double mm = *value * in_mm;
    if (!(std::abs(mm) <= most_mm))
        return Problem{"length-range", "", phrase("that is longer than any workshop"),
                       phrase("Check the unit")};
    return grained(mm);
}

} // namespace drawercast
