// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/measure_point.h"
#include "canvas/select_tool.h"

#include <optional>

namespace drawercast::app {

/// A distance taken on the sheet.
struct Measured {
    MeasurePoint from;
    MeasurePoint to;
    bool operator==(const Measured&) const = default;
};

/// Taking distances on the drawer plan: press, drag, let go, or two clicks. Changes nothing in the job. Ctrl
/// lets both ends off corners and edges, Shift keeps the line level or upright.
class MeasureTool {
  public:
    explicit MeasureTool(CanvasPort& port) : port_(port) {}

    using Keys = SelectTool::Keys;
    void press(QPointF px, Keys keys);
    void move(QPointF px, Keys keys);
    void release(QPointF px, Keys keys);
    bool cancel(); ///< takes what is measured off the sheet; false where there was nothing

    /// What the pointer would take hold of now, and what is measured.
    const std::optional<MeasurePoint>& under() const { return under_; }
    const std::optional<Measured>& measured() const { return measured_; }
    QString words() const; ///< "120.5 mm; 100 mm across, 67.2 mm front to back"

  private:
    MeasurePoint point_at(QPointF px, Keys keys) const;

    CanvasPort& port_;
    std::optional<MeasurePoint> under_;
    std::optional<Measured> measured_;
    QPointF pressed_;
    bool open_ = false; ///< the second end still follows the pointer
};

} // namespace drawercast::app
