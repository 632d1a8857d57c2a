// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

#include <vector>

namespace drawercast::theme {

/// Every color of the program by what it is for. Three pencils: ink for what is there and prints, blue for
/// what is live and never prints, red and ochre for the checker; two washes: cool for the drawer frame, warm
/// for the mold frame. The ratios of all pairs in use are checked by a test (WCAG 2.1: words 4.5, lines 3).
struct Theme {
    QColor paper, pane, bench, base, alt;     ///< grounds
    QColor ink, ink2, ink3, disabled;         ///< words, from first to last
    QColor edge, rule;                        ///< borders of controls; separators (decor)
    QColor blue, blue_soft, hover;            ///< live; chosen row; button under the pointer
    QColor red, red_soft, ochre, ochre_soft;  ///< words and lines of a mend and of a look; plates behind them
    QColor mend_fill, mend_figure;            ///< square badge
    QColor look_fill, look_line, look_figure; ///< triangle badge
    QColor wall, wood, wood_line;             ///< drawer in section; board and blocks; hatching and clay line
    QColor grid, grid_wide;                   ///< every 10 and 50 mm, decor
    QColor face;                              ///< the insert's face
    std::vector<QColor> depth;                ///< deeper is darker in both themes: a hole lies in shadow
    std::vector<QColor> magnitude;            ///< lift, filling order: more is further from the paper
    double casing = 0.85;                     ///< opacity of the paper line under a live or checker's line
    bool high_contrast = false; ///< the desktop's own colors: no washes, lines half as wide again

    double line(double width) const { return high_contrast ? width * 1.5 : width; }
    /// The step of the depth ladder for `share` of its full depth, 0 < share ≤ 1.
    const QColor& depth_wash(double share) const;
    /// Band of the magnitude ladder, 0 ≤ share ≤ 1: 0 is the first, 1 the last.
    const QColor& magnitude_wash(double share) const;
};

Theme light_theme();
Theme dark_theme();
/// The light theme on paper that is white already.
Theme printed_theme();

} // namespace drawercast::theme
