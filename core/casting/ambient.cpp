// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/ambient.h"

#include <cmath>

namespace drawercast::casting {

double ambient_kpa(double altitude_m) {
    return sea_level_kpa * std::pow(1 - 0.0065 * altitude_m / 288.15, 5.255876);
}

double expansion_at(double at_sea_level, double ambient_kpa) {
    return 1 + (at_sea_level - 1) * sea_level_kpa / ambient_kpa;
}

double expansion_at_sea_level(double here, double ambient_kpa) {
    return 1 + (here - 1) * ambient_kpa / sea_level_kpa;
}

} // namespace drawercast::casting
