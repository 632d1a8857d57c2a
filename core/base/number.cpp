// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"

#include "base/demand.h"

#include <array>
#include <charconv>
#include <cmath>

namespace drawercast {

std::optional<double> parse_number(std::string_view text) {
    double value = 0;
    const char* const end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, value, std::chars_format::general);
    if (error != std::errc() || stopped != end || !std::isfinite(value)) return std::nullopt;
    return value == 0 ? 0.0 : value; // one zero only: -0 would be written as another text
}

std::string number_text(double value) {
    DRAWERCAST_DEMAND(std::isfinite(value), "only finite numbers are written");
    if (value == 0) return "0";
    std::array<char, 400> room; // fixed notation of the smallest double needs some 330 characters
    const auto done = std::to_chars(room.data(), room.data() + room.size(), value, std::chars_format::fixed);
    DRAWERCAST_DEMAND(done.ec == std::errc(), "a double fits its fixed notation");
    return std::string(room.data(), done.ptr);
}

std::string rounded_text(double value, int digits) {
    DRAWERCAST_DEMAND(std::isfinite(value), "only finite numbers are written");
    std::array<char, 64> room;
    const auto done = std::to_chars(room.data(), room.data() + room.size(), value,
                                    std::chars_format::scientific, digits - 1);
    DRAWERCAST_DEMAND(done.ec == std::errc(), "a rounded number fits");
    double rounded = 0;
    std::from_chars(room.data(), done.ptr, rounded);
    return number_text(rounded);
}

double grained(double value) {
    const double scaled = value * 1e6;
    if (!(std::abs(scaled) < 9e15)) return value; // beyond that a double has no millionths to round
    const double rounded = std::round(scaled) / 1e6;
    return rounded == 0 ? 0.0 : rounded;
}

} // namespace drawercast
