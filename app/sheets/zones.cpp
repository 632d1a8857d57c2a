// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/zones.h"

#include "base/units.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

std::string zone_letter(int row) {
    std::string letters;
    for (int rest = row; rest >= 0; rest = rest / 26 - 1)
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    return letters;
}

double zone_side_mm(job::DisplayUnits units) {
    return units == job::DisplayUnits::mm ? 60.0 : 2.5 * drawercast::units::mm_per_inch;
}

int zone_count(double side_mm, double zone_mm) {
    // a rest of less than a quarter zone has no room for a letter and goes with the zone before
    return std::max(1, static_cast<int>(std::ceil(side_mm / zone_mm - 0.25)));
}

std::string zone_of(shape::Point<shape::InDrawer> point, const Box& drawer, job::DisplayUnits units) {
    const double zone_mm = zone_side_mm(units);
    const auto index = [zone_mm](double from_mm, double side_mm) {
        return std::clamp(static_cast<int>(std::floor(from_mm / zone_mm)), 0,
                          zone_count(side_mm, zone_mm) - 1);
    };
    return zone_letter(index(point.y_mm - drawer.min.y, drawer.height())) +
           std::to_string(index(point.x_mm - drawer.min.x, drawer.width()) + 1);
}

} // namespace drawercast::sheets
