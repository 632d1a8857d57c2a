// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/palette.h"

#include <algorithm>
#include <cmath>

namespace drawercast::theme {

namespace {

QColor rgb(unsigned value) { return QColor::fromRgb(value); }

std::vector<QColor> ladder(std::initializer_list<unsigned> values) {
    std::vector<QColor> colors;
    for (const unsigned value : values) colors.push_back(rgb(value));
    return colors;
}

} // namespace

const QColor& Theme::depth_wash(double share) const {
    const auto steps = static_cast<double>(depth.size());
    constexpr double rounding = 1e-9; // a depth on a step's edge belongs to the shallower step
    const double step = std::ceil(share * steps - rounding) - 1;
    return depth[static_cast<std::size_t>(std::clamp(step, 0.0, steps - 1))];
}

const QColor& Theme::magnitude_wash(double share) const {
    const auto last = static_cast<double>(magnitude.size() - 1);
    return magnitude[static_cast<std::size_t>(std::clamp(std::round(share * last), 0.0, last))];
}

Theme light_theme() {
    Theme t;
    t.paper = rgb(0xFBFAF6);
    t.pane = rgb(0xF1F0EB);
    t.bench = rgb(0xE2E2DC);
    t.base = rgb(0xFDFDFA);
    t.alt = rgb(0xF5F4EF);
    t.ink = rgb(0x16212B);
    t.ink2 = rgb(0x3F4C57);
    t.ink3 = rgb(0x56626C);
    t.disabled = rgb(0x8C9096);
    t.edge = rgb(0x807D75);
    t.rule = rgb(0xC8C7BE);
    t.blue = rgb(0x1D4FB8);
    t.blue_soft = t.hover = rgb(0xDBE5F7);
    t.red = rgb(0xA8231B);
    t.red_soft = rgb(0xF9E6E2);
    t.ochre = rgb(0x7A4C00);
    t.ochre_soft = rgb(0xF5E9CF);
    t.mend_fill = rgb(0xA8231B);
    t.mend_figure = rgb(0xFFFFFF);
    t.look_fill = rgb(0xF2BE4A);
    t.look_line = rgb(0x7A4C00);
    t.look_figure = rgb(0x16212B);
    t.wall = rgb(0xEAE8E0);
    t.wood = rgb(0xF4EBDB);
    t.wood_line = rgb(0x7A5A2E);
    t.grid = rgb(0xDFE8F1);
    t.grid_wide = rgb(0xC3D3E6);
    t.face = rgb(0xEFF4F2);
    t.depth = ladder({0xD5E6E4, 0xBBD4D1, 0xA3C2BE, 0x8EB1AC, 0x7BA09B, 0x6B908C});
    t.magnitude = ladder({0xF8F1E9, 0xEEDFCA, 0xE2CCAC, 0xD4B98F, 0xC5A775, 0xB59560, 0xA5854D});
    return t;
}

Theme dark_theme() {
    Theme t;
    t.paper = rgb(0x1A2125);
    t.pane = rgb(0x252D32);
    t.bench = rgb(0x1C2327);
    t.base = rgb(0x1A2125);
    t.alt = rgb(0x20282D);
    t.ink = rgb(0xECEDE7);
    t.ink2 = rgb(0xBFC8CA);
    t.ink3 = rgb(0xA0ACB0);
    t.disabled = rgb(0x76828A);
    t.edge = rgb(0x7B888E);
    t.rule = rgb(0x3A454B);
    t.blue = rgb(0x93B8FF);
    t.blue_soft = t.hover = rgb(0x263A5E);
    t.red = rgb(0xFFA194);
    t.red_soft = rgb(0x48282A);
    t.ochre = rgb(0xEDBB63);
    t.ochre_soft = rgb(0x41341D);
    t.mend_fill = rgb(0xD14437);
    t.mend_figure = rgb(0xFFFFFF);
    t.look_fill = rgb(0xEDBB63);
    t.look_line = rgb(0xEDBB63);
    t.look_figure = rgb(0x12181B);
    t.wall = rgb(0x222A2E);
    t.wood = rgb(0x2A251F);
    t.wood_line = rgb(0xC4A274);
    t.grid = rgb(0x597079);
    t.grid_wide = rgb(0x67828F);
    t.face = rgb(0x3E5155);
    t.depth = ladder({0x35464A, 0x2D3B3F, 0x233032, 0x182225, 0x0A1113}); // each 1.18 from the one before
    t.magnitude = ladder({0x2A251F, 0x372F23, 0x453A28, 0x54442D, 0x634F31, 0x725B36, 0x7E6438});
    t.casing = 0.75;
    return t;
}

Theme printed_theme() {
    Theme t = light_theme();
    t.paper = rgb(0xFFFFFF);
    return t;
}

} // namespace drawercast::theme
