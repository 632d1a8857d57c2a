// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/screws.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace drawercast::stock {

namespace {

constexpr double sold_mm[] = {16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 120};
constexpr double pin_grip_mm = 15, least_pin_grip_mm = 5, pin_skin_mm = 2;

} // namespace

std::optional<double> screw_length_mm(double through_mm, double into_mm, double grip_mm) {
    const double longest = through_mm + into_mm - skin_mm;
    const auto* enough = std::find_if(std::begin(sold_mm), std::end(sold_mm),
                                      [&](double length) { return length >= through_mm + grip_mm - 1e-9; });
    if (enough != std::end(sold_mm) && *enough <= longest + 1e-9) return *enough;
    std::optional<double> best;
    for (const double length : sold_mm)
        if (length <= longest + 1e-9 && length >= through_mm + least_grip_mm - 1e-9) best = length;
    return best;
}

std::optional<double> pin_length_mm(double through_mm, double into_mm) {
    const double length = std::floor(through_mm + std::min(pin_grip_mm, into_mm - pin_skin_mm) + 1e-9);
    if (length < through_mm + least_pin_grip_mm) return std::nullopt;
    return length;
}

int screws_along(double line_mm, double end_mm, double pitch_mm) {
    const double between = line_mm - 2 * end_mm;
    if (between <= 0) return 2;
    return 1 + std::max(1, static_cast<int>(std::ceil(between / pitch_mm - 1e-9)));
}

std::vector<double> spread_mm(double line_mm, double end_mm, int count) {
    const double end = std::min(end_mm, line_mm / 4);
    std::vector<double> at;
    for (int i = 0; i < count; ++i)
        at.push_back(count == 1 ? line_mm / 2 : end + (line_mm - 2 * end) * i / (count - 1));
    return at;
}

} // namespace drawercast::stock
