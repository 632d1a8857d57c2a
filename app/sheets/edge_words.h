// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "language/spoken.h"
#include "sheets/sheet.h"

namespace drawercast::sheets {

/// Which side of the drawer each edge of a drawing is. In the mold the drawer's right is on the left.
/// mold_once: where the whole of it is seen at a time.
enum class EdgeWords { front_and_back, drawer, mold, mold_once };

/// Room around a 1:1 template for its edge words and dimensions, mm.
inline constexpr double edge_room_mm = 14;
/// How far off the edge a 1:1 template's overall dimensions stand.
inline constexpr double template_dimension_px = 40;

/// Where along their line the dimensions' figures stand: not in the middle, where tiles are joined.
inline constexpr double template_figure_at = 0.42;

/// FRONT, BACK, LEFT, RIGHT outside the edges of `box`; on 1:1 templates twice on each, clear of the joints
/// between tiles. `once_at`: where along front and back the one of a sheet that is seen whole
/// stands.
template <class Frame>
void add_edge_words(Drafter<Frame>& pen, const Box& box, EdgeWords which, double once_at = 0.5) {
    const auto word = [&](Vec at, Vec px, const QString& text, double turn_deg) {
        pen.put(TextMark{
            {at, px}, text.toStdString(), theme::TextRole::edge_word, Side::center, turn_deg, false});
    };
    constexpr double off = 13; // px
    const bool once = which == EdgeWords::front_and_back || which == EdgeWords::mold_once;
    const bool mold = which == EdgeWords::mold || which == EdgeWords::mold_once;
    for (const double share : once ? std::vector{once_at} : std::vector{0.2, 0.8}) {
        const Vec c{box.min.x + share * box.width(), box.min.y + share * box.height()};
        word({c.x, box.min.y}, {0, -off}, language::tr("FRONT"), 0);
        word({c.x, box.max.y}, {0, off}, language::tr("BACK"), 0);
        if (which == EdgeWords::front_and_back) continue;
        const double up = once ? box.center().y : c.y;
        word({box.min.x, up}, {-off, 0}, mold ? language::tr("RIGHT of the drawer") : language::tr("LEFT"),
             90);
        word({box.max.x, up}, {off, 0}, mold ? language::tr("LEFT of the drawer") : language::tr("RIGHT"),
             90);
    }
}

} // namespace drawercast::sheets
