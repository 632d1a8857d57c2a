// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/title_block.h"
#include "sheets/table.h"

namespace drawercast::summary {

/// A cell with a box to tick by hand.
inline sheets::Table::Cell tick_cell(const theme::Theme& theme) {
    return {{}, false, [&theme](sheets::Inks& inks, const shape::Box& box) {
                constexpr double side = 10;
                const shape::Vec lower{box.min.x + 2, box.center().y - side / 2};
                const shape::Vec upper = lower + shape::Vec{side, side};
                const auto line = [&](shape::Vec from, shape::Vec to) {
                    print::rule(inks, from, to, theme::LineRole::thin, theme);
                };
                line(lower, {upper.x, lower.y});
                line({upper.x, lower.y}, upper);
                line(upper, {lower.x, upper.y});
                line({lower.x, upper.y}, lower);
            }};
}

} // namespace drawercast::summary
