// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/length.h"

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
constexpr double most_mm = 100000;

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

bool digit(char c) { return c >= '0' && c <= '9'; }

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

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
        if (before.empty() || !(digit(before.back()) || before.back() == '.' || before.back() == ','))
            continue;
        text = before;
        return unit.mm;
    }
    return std::nullopt;
}

enum class Fault { none, not_number, ambiguous };

/// A decimal with one mark of either kind. Three digits behind the mark that is not the decimal one may be
/// thousands, unless a zero stands before it.
std::optional<double> decimal(std::string_view text, DecimalMark mark, Fault& fault) {
    const char other = mark == DecimalMark::point ? ',' : '.';
    std::string plain(text);
    const auto at = text.find_first_of(".,");
    if (at != std::string_view::npos) {
        if (text.find_first_of(".,", at + 1) != std::string_view::npos) fault = Fault::ambiguous;
        if (text[at] == other && text.size() - at - 1 == 3 && at >= 1 && at <= 3 && text.front() != '0')
            fault = Fault::ambiguous;
        plain[at] = '.';
        if (at + 1 == text.size()) plain.pop_back();
        if (at == 0) plain.insert(0, "0");
    }
    for (const char c : plain)
        if (!digit(c) && c != '.' && c != ',') fault = Fault::not_number;
    if (fault != Fault::none) return std::nullopt;
    const auto value = parse_number(plain);
    if (!value) fault = Fault::not_number;
    return value;
}

std::optional<std::int64_t> small_whole(std::string_view text) {
    if (text.empty() || text.size() > 6) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : text) {
        if (!digit(c)) return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

/// "5/8", "3 1/4", "3-1/4"; nothing where there is no fraction.
std::optional<double> mixed_fraction(std::string_view text) {
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const auto below = small_whole(trimmed(text.substr(slash + 1)));
    auto head = trimmed(text.substr(0, slash));
    const auto split = head.find_last_of(" -");
    std::optional<std::int64_t> whole = 0;
    if (split != std::string_view::npos) {
        whole = small_whole(trimmed(head.substr(0, split)));
        head = head.substr(split + 1);
    }
    const auto above = small_whole(head);
    if (!below || !above || !whole || *below == 0) return std::nullopt;
    return static_cast<double>(*whole) + static_cast<double>(*above) / static_cast<double>(*below);
}

Problem not_a_length(std::string_view typed) {
    return {"length", "", "\"" + std::string(typed) + "\" is not a length",
            "Type it like 82.5, 8.25 cm, 3 1/4 in"};
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

double as_shown(double mm, LengthUnit unit) {
    switch (unit) {
    case LengthUnit::mm:
        return grained(static_cast<double>(std::llround(mm * 10)) / 10);
    case LengthUnit::inch:
        return grained(static_cast<double>(std::llround(mm / 25.4 * 1000)) / 1000 * 25.4);
    case LengthUnit::inch_32:
        return grained(static_cast<double>(std::llround(mm / 25.4 * 32)) / 32 * 25.4);
    }
    return mm;
}

Expected<double> parse_length(std::string_view typed, LengthUnit unit, DecimalMark mark) {
    std::string_view text = trimmed(typed);
    if (text.size() > 64) return not_a_length(text.substr(0, 64));
    bool negative = false;
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        negative = text.front() == '-';
        text = trimmed(text.substr(1));
    } else if (text.substr(0, 3) == "\xE2\x88\x92") { // the minus sign that the program shows
        negative = true;
        text = trimmed(text.substr(3));
    }
    const double in_mm = take_unit(text).value_or(unit == LengthUnit::mm ? 1 : units::mm_per_inch);
    Fault fault = Fault::none;
    const auto value =
        text.find('/') != std::string_view::npos ? mixed_fraction(text) : decimal(text, mark, fault);
    if (fault == Fault::ambiguous)
        return Problem{"length-ambiguous", "",
                       "\"" + std::string(trimmed(typed)) + "\" can be read in two ways",
                       "Type it without a thousands mark"};
    if (!value) return not_a_length(trimmed(typed));
    const double mm = *value * in_mm;
    if (!(mm <= most_mm))
        return Problem{"length-range", "", "that is longer than any workshop", "Check the unit"};
    return grained(negative ? -mm : mm);
}

} // namespace drawercast
