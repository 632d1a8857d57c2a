// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/path.h"
#include "theme/pens.h"

namespace drawercast::sheets {

/// Where millimeters of a sheet (y up) lie on a surface (y down), and how large a logical pixel is there.
/// Points are mapped; weights, dashes and letters are not, so they stay readable at any zoom.
struct View {
    theme::Medium medium = theme::Medium::screen;
    double per_mm = 1; ///< device units in a millimeter of the sheet
    double per_px = 1; ///< device units in a logical pixel; on paper, in 1/96 in
    Vec origin;        ///< device place of the sheet's (0, 0)

    Vec operator()(Vec mm) const { return {origin.x + mm.x * per_mm, origin.y - mm.y * per_mm}; }
    Path operator()(const Path& path) const;
    /// A place some logical pixels away from a point, the displacement given with y up.
    Vec at(Vec mm, Vec plus_px) const {
        const Vec p = (*this)(mm);
        return {p.x + plus_px.x * per_px, p.y - plus_px.y * per_px};
    }

    /// On a page laid out in 1/96 in, true size. What is traced and drilled by has no scale to get wrong.
    static View true_size(Vec origin_px) { return on_page(theme::px_per_mm, origin_px); }
    /// In millimeters, true size, y down from `top_left` of the sheet.
    static View true_mm(Vec top_left) {
        return {theme::Medium::paper, 1, 1 / theme::px_per_mm, {-top_left.x, top_left.y}};
    }
    /// On a page, a millimeter of the sheet taking `per_mm` of its 1/96 in.
    static View on_page(double per_mm, Vec origin_px) { return {theme::Medium::paper, per_mm, 1, origin_px}; }
};

} // namespace drawercast::sheets
