// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/spoken.h"
#include "sheets/inking.h"
#include "sheets/magnitude_ladder.h"
#include "sheets/signs.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;

void Inking::add(const SignMark& mark) {
    const Vec at = view_.at(mark.at.mm, mark.at.px);
    switch (mark.sign) {
    case Sign::screw: {
        const double r = px(5), arm = px(8);
        stroke(circle(at, r), LineRole::thin);
        stroke(joined(line(at - Vec{arm, 0}, at + Vec{arm, 0}), line(at - Vec{0, arm}, at + Vec{0, arm})),
               LineRole::thin);
        return;
    }
    case Sign::pin:
        stroke(circle(at, px(2.5)), LineRole::thin);
        inks_.push_back(Fill{circle(at, px(0.8)), theme_.ink});
        return;
    case Sign::datum: {
        const double r = px(7);
        inks_.push_back(Fill{circle(at, r), theme_.paper});
        inks_.push_back(Fill{datum_quarters(at, r), theme_.ink});
        stroke(circle(at, r), LineRole::thin);
        return;
    }
    case Sign::f_front:
    case Sign::f_front_mirrored: {
        stroke(front_arrow(at, px(40)), LineRole::thin);
        const bool mirrored = mark.sign == Sign::f_front_mirrored;
        inks_.push_back(Fill{frame_sign(at - Vec{0, px(7)}, px(14), mirrored), theme_.ink});
        return;
    }
    }
}

void Inking::add(const LegendMark& mark) {
    const Vec at = view_.at(mark.at.mm, mark.at.px);
    const Vec cell{px(31), px(13)};
    const theme::Lettering face = lettering(theme::TextRole::caption);
    if (mark.figures.size() < 2) return;
    const std::size_t steps = mark.figures.size() - 1;
    for (std::size_t i = 0; i <= steps; ++i) {
        const Vec corner = at + Vec{cell.x * static_cast<double>(i), 0};
        if (i < steps) {
            const Path box = path_of(Box{corner, corner + cell});
            const bool deep = mark.ladder == Ladder::depth;
            const double next = static_cast<double>(i + 1) / static_cast<double>(steps);
            const double band = static_cast<double>(i) / (magnitude_bands - 1);
            inks_.push_back(Fill{box, deep ? theme_.depth_wash(next) : theme_.magnitude_wash(band)});
            stroke(box, LineRole::soft);
        }
        write(inks_, language::figures(mark.figures[i]),
              corner + Vec{0, cell.y + px(4) + face.px * theme::capital_share}, face, theme_.ink2,
              Align::center);
    }
    write(inks_, QString::fromStdString(mark.caption),
          at + Vec{-px(6), cell.y / 2 + face.px * theme::capital_share / 2}, face, theme_.ink2, Align::right);
}

} // namespace drawercast::sheets
