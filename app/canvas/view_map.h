// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include "sheets/view.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace drawercast::app {

/// Where millimeters of a sheet lie on the screen, logical pixels: x right, y of the sheet up. A value;
/// zooming and panning give another one. Sheets are drawn by mapping points through it, so that line weights
/// stay in pixels.
class ViewMap {
  public:
    static constexpr double least_px_per_mm = 0.05;
    static constexpr double most_px_per_mm = 80;

    double px_per_mm() const { return px_per_mm_; }
    QPointF to_px(shape::Vec mm) const {
        return {origin_px_.x() + mm.x * px_per_mm_, origin_px_.y() - mm.y * px_per_mm_};
    }
    shape::Vec to_mm(QPointF px) const {
        return {(px.x() - origin_px_.x()) / px_per_mm_, (origin_px_.y() - px.y()) / px_per_mm_};
    }
    QRectF to_px(const shape::Box& box) const;

    /// Zoomed by `factor` with the point under `fixed_px` staying where it is.
    ViewMap zoomed(double factor, QPointF fixed_px) const;
    ViewMap panned(QPointF by_px) const;
    /// `box` in the middle of a view of `size_px`, with `margin_px` around it.
    static ViewMap fitted(const shape::Box& box, QSizeF size_px, double margin_px);

    bool operator==(const ViewMap&) const = default;

  private:
    double px_per_mm_ = 1;
    QPointF origin_px_;
};

/// The same for what draws sheets.
sheets::View sheet_view(const ViewMap& map);

} // namespace drawercast::app
