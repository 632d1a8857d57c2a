// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/json_text.h"

#include "base/number.h"

#include <cmath>

namespace drawercast::plan {

namespace {

constexpr int significant_digits =
    9; // more would show the machine's last-digit noise as if it meant something

constexpr double least = 1e-9; // of any unit used here: less of it nobody could measure

} // namespace

void JsonText::number(double value) {
    out_.raw(rounded_text(std::abs(value) < least ? 0 : value, significant_digits));
}

void JsonText::point(shape::Vec p) {
    begin_array();
    number(p.x);
    number(p.y);
    end_array();
}

void JsonText::numbers(std::string_view name, const std::vector<double>& values) {
    key(name);
    begin_array();
    for (const double value : values) number(value);
    end_array();
}

} // namespace drawercast::plan
