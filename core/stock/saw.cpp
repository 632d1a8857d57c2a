// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/saw.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace drawercast::stock {

double sawn_mm(double mm, double step_mm) {
    if (step_mm <= 0) return grained(mm);
    return grained(step_mm * std::max(1.0, std::round(mm / step_mm)));
}

double sawn_up_mm(double mm, double step_mm) {
    if (step_mm <= 0) return grained(mm);
    return grained(step_mm * std::max(1.0, std::ceil(mm / step_mm - 1e-6)));
}

} // namespace drawercast::stock
