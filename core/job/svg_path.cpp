// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/svg_path.h"

#include "base/ascii.h"

#include <array>
#include <cctype>
#include <string>

namespace drawercast::job {

namespace {

using shape::Vec;

std::size_t numbers_of(char command) {
    switch (command) {
    case 'H':
    case 'V':
        return 1;
    case 'M':
    case 'L':
    case 'T':
        return 2;
    case 'S':
    case 'Q':
        return 4;
    case 'C':
        return 6;
    case 'A':
        return 7;
    default:
        return 0;
    }
}

/// A flag of an arc may stand without a blank before the next number: "0 01.5".
std::optional<double> flag(std::string_view d, std::size_t& at) {
    while (at < d.size() && (is_blank(d[at]) || d[at] == ',')) ++at;
    if (at >= d.size() || (d[at] != '0' && d[at] != '1')) return std::nullopt;
    return d[at++] - '0';
}

class Drawing {
  public:
    explicit Drawing(SvgPen& pen) : pen_(pen) {}

    void draw(char upper, bool relative, std::array<double, 7> v) {
        const Vec base = relative ? pen_.at() : Vec{};
        const auto point = [&](std::size_t i) { return Vec{v[i], v[i + 1]} + base; };
        const Vec from = pen_.at();
        const bool after_cubic = last_ == 'C' || last_ == 'S';
        const bool after_quadratic = last_ == 'Q' || last_ == 'T';
        switch (upper) {
        case 'M':
            pen_.move(point(0));
            break;
        case 'L':
            pen_.line(point(0));
            break;
        case 'H':
            pen_.line({v[0] + base.x, from.y});
            break;
        case 'V':
            pen_.line({from.x, v[0] + base.y});
            break;
        case 'C':
            curve(point(0), point(2), point(4));
            break;
        case 'S':
            curve(after_cubic ? from * 2 - control_ : from, point(0), point(2));
            break;
        case 'Q':
            quadratic(point(0), point(2));
            break;
        case 'T':
            quadratic(after_quadratic ? from * 2 - control_ : from, point(0));
            break;
        default:
            pen_.arc({v[0], v[1], v[2], v[3] != 0, v[4] != 0}, point(5));
        }
        last_ = upper;
    }

    void close() {
        pen_.close();
        last_ = 'Z';
    }

  private:
    void curve(Vec one, Vec two, Vec to) {
        pen_.cubic(one, two, to);
        control_ = two;
    }
    void quadratic(Vec control, Vec to) {
        const Vec from = pen_.at();
        pen_.cubic(from + (control - from) * (2.0 / 3), to + (control - to) * (2.0 / 3), to);
        control_ = control;
    }

    SvgPen& pen_;
    Vec control_;
    char last_ = 0;
};

Problem problem(std::size_t at, const Phrase& what) {
    return {"svg-path", phrase("character %1 of the path", verbatim(std::to_string(at + 1))), what,
            phrase("Draw the path once more, or save it as an SVG with nothing in it but outlines")};
}

} // namespace

Expected<void> svg_path(std::string_view d, SvgPen& pen) {
    Drawing drawing(pen);
    std::size_t at = 0;
    char command = 0;
    bool begun = false;
    const auto skip = [&] {
        while (at < d.size() && is_blank(d[at])) ++at;
    };
    for (skip(); at < d.size(); skip()) {
        const char c = d[at];
        if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
            command = c;
            const char upper = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
            if (upper != 'Z' && numbers_of(upper) == 0)
                return problem(at, phrase("“%1” is no command of a path", verbatim(std::string(1, c))));
            if (!begun && upper != 'M') return problem(at, phrase("a path begins with M"));
            begun = true;
            ++at;
            if (upper == 'Z') {
                drawing.close();
                continue;
            }
        } else if (command == 0 || command == 'Z' || command == 'z') {
            return problem(at, phrase("a command is missing before this"));
        }
        const char upper = static_cast<char>(std::toupper(static_cast<unsigned char>(command)));
        std::array<double, 7> values{};
        for (std::size_t i = 0; i < numbers_of(upper); ++i) {
            skip();
            const bool is_flag = upper == 'A' && (i == 3 || i == 4);
            const auto value = is_flag ? flag(d, at) : svg_number(d, at);
            if (!value)
                return problem(at, is_flag ? phrase("an arc wants 0 or 1 here")
                                           : phrase("a number is missing here"));
            values[i] = *value;
        }
        drawing.draw(upper, upper != command, values);
        if (pen.too_many()) return problem(at, phrase("the path has more than 5000 corners"));
        if (command == 'M') command = 'L'; // further points are lines
        if (command == 'm') command = 'l';
    }
    return {};
}

} // namespace drawercast::job
