// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/block.h"

#include <string>

namespace drawercast::stock {

inline job::Board board(const std::string& name, double thickness_mm, int at_hand = 0) {
    job::Board made;
    made.name = name, made.thickness_mm = thickness_mm, made.at_hand = at_hand;
    return made;
}

inline shape::Contour outline(const shape::Given& given) { return *shape::contour_of(given); }

inline BlockShop block_shop() {
    return {{board("b16", 15.8), board("b12", 12.1)}, usual_tubes(), board("b16", 15.8), 0.5, 0.1};
}

} // namespace drawercast::stock
