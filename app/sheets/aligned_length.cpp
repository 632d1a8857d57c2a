// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/aligned_length.h"

#include "base/units.h"
#include "plan/say.h"

#include "language/spoken.h"

namespace drawercast::sheets {

QString aligned_length(double mm, job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::mm:
        return language::figures(plan::fixed(mm, 1));
    case job::DisplayUnits::inch:
        return language::figures(plan::fixed(mm / drawercast::units::mm_per_inch, 3));
    case job::DisplayUnits::inch_32:
        break;
    }
    return language::figures(plan::say_length_bare(mm, units));
}

} // namespace drawercast::sheets
