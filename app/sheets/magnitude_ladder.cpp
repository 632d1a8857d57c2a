// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/magnitude_ladder.h"

#include "base/units.h"
#include "plan/say.h"

#include "language/spoken.h"
#include "sheets/chart.h"

#include <cmath>

namespace drawercast::sheets {

namespace {

int decimals_of(double step) {
    constexpr double rounding = 1e-6;
    int decimals = 0;
    for (double s = step; decimals < 4 && std::abs(s - std::round(s)) > rounding; s *= 10) ++decimals;
    return decimals;
}

} // namespace

std::string say_small(double mm, job::DisplayUnits units) {
    return units == job::DisplayUnits::mm ? plan::fixed(mm, 2)
                                          : plan::fixed(mm / drawercast::units::mm_per_inch, 3);
}

Bands lift_bands(double most_mm, job::DisplayUnits units) {
    const bool metric = units == job::DisplayUnits::mm;
    Bands bands;
    bands.caption = metric ? language::tr("lift, mm").toStdString() : language::tr("lift, in").toStdString();
    if (!(most_mm > 0)) return bands;
    const double unit = metric ? 1 : drawercast::units::mm_per_inch;
    const double step = even_step(most_mm / unit, magnitude_bands);
    bands.step = step * unit;
    bands.count = static_cast<int>(std::ceil(most_mm / bands.step));
    for (int i = 0; i <= bands.count; ++i) bands.figures.push_back(plan::fixed(step * i, decimals_of(step)));
    return bands;
}

Bands arrival_bands(double first_touch, double full_expansion) {
    Bands bands;
    bands.caption = language::tr("arrives at ×").toStdString();
    bands.first = first_touch;
    if (!(full_expansion > first_touch)) return bands;
    bands.count = magnitude_bands;
    bands.step = (full_expansion - first_touch) / magnitude_bands;
    for (int i = 0; i <= bands.count; ++i) bands.figures.push_back(plan::fixed(bands.level(i), 2));
    return bands;
}

std::vector<std::string> depth_figures(double full_mm, job::DisplayUnits units) {
    constexpr int steps = 6;
    std::vector<std::string> figures;
    for (int i = 0; i <= steps; ++i) figures.push_back(plan::say_length_bare(full_mm * i / steps, units));
    return figures;
}

} // namespace drawercast::sheets
