// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/title_block.h"
#include "sheets/table.h"

namespace drawercast::summary {

/// A cell with a box to tick by hand, or ticked already.
inline sheets::Table::Cell tick_cell(const theme::Theme& theme, bool ticked = false) {
    return {{}, false, [&theme, ticked](sheets::Inks& inks, const shape::Box& box) {
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
                if (!ticked) return;
                line(lower + shape::Vec{2, 5}, lower + shape::Vec{4, 8});
                line(lower + shape::Vec{4, 8}, lower + shape::Vec{8, 2});
            }};
}

} // namespace drawercast::summary
