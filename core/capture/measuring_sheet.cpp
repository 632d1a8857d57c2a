// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/measuring_sheet.h"

namespace drawercast::capture {

std::vector<shape::Vec> target_places(SheetSize sheet) {
    const double left = target_inset_mm, right = sheet.width_mm - target_inset_mm;
    const double top = target_inset_mm, bottom = sheet.height_mm - target_inset_mm;
    const double middle = sheet.width_mm / 2, third = (bottom - top) / 3;
    return {{left, top},
            {right, top},
            {right, bottom},
            {left, bottom},
            {middle, top},
            {middle, bottom},
            {left, top + third},
            {right, top + third},
            {left, bottom - third},
            {right, bottom - third}};
}

bool target_dotted(SheetSize sheet, std::size_t index) {
    return index == 0 || (index == 4 && sheet == sheet_letter);
}

} // namespace drawercast::capture
