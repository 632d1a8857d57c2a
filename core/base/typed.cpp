// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/typed.h"

#include "base/ascii.h"
#include "base/number.h"

#include <cstdint>
#include <optional>
#include <string>

namespace drawercast {

namespace {

constexpr std::size_t most_characters = 64;

/// Takes a sign off the front; whether it was a minus.
bool take_minus(std::string_view& text) {
    constexpr std::string_view shown_minus = "\xE2\x88\x92"; // the sign that the program shows
    const bool shown = text.substr(0, shown_minus.size()) == shown_minus;
    const bool minus = shown || (!text.empty() && text.front() == '-');
    if (minus || (!text.empty() && text.front() == '+'))
        text = trimmed(text.substr(shown ? shown_minus.size() : 1));
    return minus;
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
        if (!is_digit(c) && c != '.' && c != ',') fault = Fault::not_number;
    if (fault != Fault::none) return std::nullopt;
    const auto value = parse_number(plain);
    if (!value) fault = Fault::not_number;
    return value;
}

std::optional<std::int64_t> small_whole(std::string_view text) {
    if (text.empty() || text.size() > 6) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : text) {
        if (!is_digit(c)) return std::nullopt;
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

} // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
    return text;
}

Expected<double> parse_typed_number(std::string_view typed, DecimalMark mark) {
    const std::string_view whole = trimmed(typed);
    const std::string quoted = "\"" + std::string(whole.substr(0, most_characters)) + "\"";
    std::string_view text = whole;
    const bool minus = take_minus(text);
    Fault fault = Fault::none;
    std::optional<double> value;
    if (whole.size() <= most_characters)
        value = text.find('/') != std::string_view::npos ? mixed_fraction(text) : decimal(text, mark, fault);
    if (fault == Fault::ambiguous)
        return Problem{"number-ambiguous", "", phrase("%1 can be read in two ways", verbatim(quoted)),
                       phrase("Type it without a thousands mark")};
    if (!value)
        return Problem{"number", "", phrase("%1 is not a number", verbatim(quoted)),
                       phrase("Type it like 82.5 or 3 1/4")};
    return minus ? -*value : *value;
}

} // namespace drawercast
