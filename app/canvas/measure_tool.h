// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/canvas_tool.h"
#include "canvas/measure_point.h"

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
class MeasureTool final : public CanvasTool {
  public:
    explicit MeasureTool(CanvasPort& port) : port_(port) {}

    void press(QPointF px, Keys keys) override;
    void move(QPointF px, Keys keys) override;
    void release(QPointF px, Keys keys) override;
    bool cancel() override; ///< takes what is measured off the sheet; false where there was nothing
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
    sheets::Inks live(const LiveFrame& frame) const override;

    const std::optional<Measured>& measured() const { return measured_; }

  private:
    MeasurePoint point_at(QPointF px, Keys keys) const;
    void follow(QPointF px, Keys keys);
    QString words() const; ///< "120.5 mm; 100 mm across, 67.2 mm front to back"

    CanvasPort& port_;
    std::optional<MeasurePoint> under_; ///< what the pointer would take hold of
    std::optional<Measured> measured_;
    QPointF pressed_;
    bool open_ = false; ///< the second end still follows the pointer
};

} // namespace drawercast::app
