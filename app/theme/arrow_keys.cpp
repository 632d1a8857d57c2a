// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/arrow_keys.h"

#include <Qt>

namespace drawercast::app {

std::optional<shape::Vec> way_of(int key) {
    switch (key) {
    case Qt::Key_Left:
        return shape::Vec{-1, 0};
    case Qt::Key_Right:
        return shape::Vec{1, 0};
    case Qt::Key_Up:
        return shape::Vec{0, 1};
    case Qt::Key_Down:
        return shape::Vec{0, -1};
    default:
        return std::nullopt;
    }
}

} // namespace drawercast::app
