// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/dose_mass.h"

#include "base/units.h"
#include "plan/say.h"

#include "language/spoken.h"

namespace drawercast::summary {

QString dose_mass(double g, job::DisplayUnits units) {
    if (units == job::DisplayUnits::mm) return language::figures(plan::fixed(g, 0) + " g");
    return language::figures(plan::fixed(g / drawercast::units::g_per_ounce, 1) + " oz");
}

} // namespace drawercast::summary
