// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/aligned_length.h"

#include "base/units.h"
#include "plan/say.h"

namespace drawercast::sheets {

QString aligned_length(double mm, job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::mm:
        return QString::fromStdString(plan::fixed(mm, 1));
    case job::DisplayUnits::inch:
        return QString::fromStdString(plan::fixed(mm / drawercast::units::mm_per_inch, 3));
    case job::DisplayUnits::inch_32:
        break;
    }
    return QString::fromStdString(plan::say_length_bare(mm, units));
}

} // namespace drawercast::sheets
