// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/svg_transform.h"

#include "base/ascii.h"
#include "base/number.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string>

namespace drawercast::job {

namespace {

void skip_blanks(std::string_view text, std::size_t& at) {
    while (at < text.size() && is_blank(text[at])) ++at;
}

void skip_between(std::string_view text, std::size_t& at) {
    skip_blanks(text, at);
    if (at < text.size() && text[at] == ',') ++at;
    skip_blanks(text, at);
}

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

std::optional<SvgMap> map_of(std::string_view name, const std::array<double, 6>& v, std::size_t count) {
    if (name == "matrix" && count == 6) return SvgMap{v[0], v[1], v[2], v[3], v[4], v[5]};
    if (name == "translate" && (count == 1 || count == 2)) return SvgMap{1, 0, 0, 1, v[0], v[1]};
    if (name == "scale" && (count == 1 || count == 2))
        return SvgMap{v[0], 0, 0, count == 1 ? v[0] : v[1], 0, 0};
    if (name == "skewX" && count == 1) return SvgMap{1, 0, std::tan(radians(v[0])), 1, 0, 0};
    if (name == "skewY" && count == 1) return SvgMap{1, std::tan(radians(v[0])), 0, 1, 0, 0};
    if (name == "rotate" && (count == 1 || count == 3)) {
        const auto turn = shape::Turn::of_degrees(v[0]);
        const SvgMap about_origin{turn.cosine, turn.sine, -turn.sine, turn.cosine, 0, 0};
        const SvgMap there{1, 0, 0, 1, v[1], v[2]};
        return there.after(about_origin.after(SvgMap{1, 0, 0, 1, -v[1], -v[2]}));
    }
    return std::nullopt;
}

} // namespace

bool SvgMap::keeps_angles() const {
    const double across = std::hypot(a, b);
    const double up = std::hypot(c, d);
    constexpr double nothing = 1e-9;
    return std::abs(across - up) <= nothing * across && std::abs(a * c + b * d) <= nothing * across * up;
}

SvgMap SvgMap::after(const SvgMap& inner) const {
    const auto origin = (*this)({inner.e, inner.f});
    return {a * inner.a + c * inner.b,
            b * inner.a + d * inner.b,
            a * inner.c + c * inner.d,
            b * inner.c + d * inner.d,
            origin.x,
            origin.y};
}

std::optional<double> svg_number(std::string_view text, std::size_t& at) {
    std::size_t end = at;
    skip_between(text, end);
    std::string plain;
    if (end < text.size() && (text[end] == '+' || text[end] == '-')) {
        if (text[end] == '-') plain = "-";
        ++end;
    }
    if (end < text.size() && text[end] == '.') plain += '0';
    bool any = false;
    const auto take_digits = [&] {
        while (end < text.size() && is_digit(text[end])) {
            plain += text[end++];
            any = true;
        }
    };
    take_digits();
    if (end < text.size() && text[end] == '.') {
        plain += '.';
        ++end;
        const auto before = plain.size();
        take_digits();
        if (plain.size() == before) plain += '0';
    }
    if (!any) return std::nullopt;
    if (end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
        std::size_t power = end + 1;
        std::string exponent = "e";
        if (power < text.size() && (text[power] == '+' || text[power] == '-')) exponent += text[power++];
        if (power < text.size() && is_digit(text[power])) { // else it is a unit: "2em"
            if (exponent == "e+") exponent = "e";
            while (power < text.size() && is_digit(text[power])) exponent += text[power++];
            plain += exponent;
            end = power;
        }
    }
    const auto value = parse_number(plain);
    if (!value || std::abs(*value) > 1e9) return std::nullopt;
    at = end;
    return value;
}

std::optional<SvgMap> svg_transform(std::string_view text) {
    SvgMap whole;
    std::size_t at = 0;
    skip_between(text, at);
    while (at < text.size()) {
        const auto bracket = text.find('(', at);
        if (bracket == std::string_view::npos) return std::nullopt;
        auto name = text.substr(at, bracket - at);
        while (!name.empty() && is_blank(name.back())) name.remove_suffix(1);
        at = bracket + 1;
        std::array<double, 6> values{};
        std::size_t count = 0;
        while (count < values.size()) {
            const auto value = svg_number(text, at);
            if (!value) break;
            values[count++] = *value;
        }
        skip_blanks(text, at);
        const auto map = map_of(name, values, count);
        if (at >= text.size() || text[at] != ')' || !map) return std::nullopt;
        whole = whole.after(*map);
        ++at;
        skip_between(text, at);
    }
    return whole;
}

std::optional<double> svg_length_mm(std::string_view text) {
    std::size_t at = 0;
    const auto value = svg_number(text, at);
    if (!value) return std::nullopt;
    auto unit = text.substr(at);
    while (!unit.empty() && is_blank(unit.back())) unit.remove_suffix(1);
    constexpr double inch = 25.4;
    if (unit.empty() || unit == "px") return *value * inch / 96;
    if (unit == "mm") return *value;
    if (unit == "cm") return *value * 10;
    if (unit == "in") return *value * inch;
    if (unit == "pt") return *value * inch / 72;
    if (unit == "pc") return *value * inch / 6;
    return std::nullopt;
}

} // namespace drawercast::job
