// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/length.h"
#include "base/number.h"

#include <cmath>

namespace drawercast {

/// What length_digits shows, in mm.
inline double as_shown(double mm, LengthUnit unit) {
    switch (unit) {
    case LengthUnit::mm:
        return grained(static_cast<double>(std::llround(mm * 10)) / 10);
    case LengthUnit::inch:
        return grained(static_cast<double>(std::llround(mm / 25.4 * 1000)) / 1000 * 25.4);
    case LengthUnit::inch_32:
        return grained(static_cast<double>(std::llround(mm / 25.4 * 32)) / 32 * 25.4);
    }
    return mm;
}

} // namespace drawercast
