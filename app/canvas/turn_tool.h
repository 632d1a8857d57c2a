// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "buildup/picture.h"

#include "canvas/canvas_tool.h"

#include <functional>
#include <optional>
#include <utility>

namespace drawercast::app {

/// Turning the mold and taking it apart, by dragging it or by the arrow keys.
class TurnTool final : public CanvasTool {
  public:
    static constexpr double step_deg = 15;

    /// `turned`: called after the look became another one.
    explicit TurnTool(std::function<void()> turned) : turned_(std::move(turned)) {}

    const buildup::Look& look() const { return look_; }
    void set_look(buildup::Look look); ///< turned by steps of `step_deg`, apart 0 … 1

    void press(QPointF px, Keys keys) override;
    void move(QPointF px, Keys keys) override;
    void release(QPointF px, Keys keys) override;
    bool arrow(const ArrowKey& key) override;
    bool cancel() override;
    Qt::CursorShape cursor() const override { return from_ ? Qt::ClosedHandCursor : Qt::OpenHandCursor; }

  private:
    std::function<void()> turned_;
    buildup::Look look_;
    std::optional<QPointF> from_; ///< the mold hangs on the pointer
};

} // namespace drawercast::app
