// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/aligned_length.h"

#include "base/units.h"

#include "language/say.h"

namespace drawercast::sheets {

QString aligned_length(double mm, job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::mm:
        return language::fixed(mm, 1);
    case job::DisplayUnits::inch:
        return language::fixed(mm / drawercast::units::mm_per_inch, 3);
    case job::DisplayUnits::inch_32:
        break;
    }
    return language::say_length_bare(mm, units);
}

} // namespace drawercast::sheets
