// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/dose_mass.h"

#include "base/units.h"

#include "language/say.h"

namespace drawercast::summary {

QString dose_mass(double g, job::DisplayUnits units) {
    if (units == job::DisplayUnits::mm) return language::fixed(g, 0) + QStringLiteral(" g");
    return language::fixed(g / drawercast::units::g_per_ounce, 1) + QStringLiteral(" oz");
}

} // namespace drawercast::summary
