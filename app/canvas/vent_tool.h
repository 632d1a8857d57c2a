// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/job.h"

#include "canvas/canvas_port.h"
#include "canvas/canvas_tool.h"

#include <QPointF>

#include <memory>
#include <optional>

namespace drawercast::app {

/// A vent being dragged: where it is tried, and what the air would do then.
struct VentTrial {
    std::size_t index = 0;                    ///< in `tried`
    shape::Vec from;                          ///< where it was, mold mm
    std::shared_ptr<const air::Answer> tried; ///< the rest already placed around it
};

/// Choosing and dragging vents on a sheet of the mold. A vent the maker drags is the maker's own from then
/// on: it is locked where it was put, and the others find their places around it.
class VentTool final : public CanvasTool {
  public:
    explicit VentTool(CanvasPort& port) : port_(port) {}

    void press(QPointF px, Keys keys) override;
    void move(QPointF px, Keys keys) override;
    void release(QPointF px, Keys keys) override; ///< stores what was shown last
    bool double_click(QPointF px) override;
    void leave() override { hovered_.reset(); }
    bool arrow(const ArrowKey& key) override;
    bool next(int step) override; ///< by their numbers

    bool busy() const override { return pressed_.has_value(); }
    bool cancel() override;
    bool let_go() override;
    void renew(); ///< another answer is shown: what is being dragged is found in it, or given up

    MenuOf menu_at(QPointF px) override;
    Menu menu_of_chosen() const override;
    QString spoken() const override;
    Qt::CursorShape cursor() const override {
        return hovered_ || pressed_ ? Qt::SizeAllCursor : Qt::ArrowCursor;
    }
    sheets::Inks live(const LiveFrame& frame) const override;

    std::optional<std::size_t> chosen() const; ///< its number among the vents shown, from 0

    static constexpr double reach_px = 11;
    static constexpr double drag_after_px = 4;
    static constexpr double step_mm = 1; ///< a tape is read to that; 1/16 in where inches are shown

  private:
    struct Pressed {
        QPointF at;
        std::size_t index = 0;
        shape::Vec vent; ///< mold mm
        std::optional<job::Job> last;
    };
    std::optional<std::size_t> vent_at(QPointF px) const;
    QString words_of(std::size_t vent) const;
    void take_hold(QPointF px);
    void drag(QPointF px, Keys keys);
    void point_at(QPointF px);
    void store();
    std::optional<job::Job> put(std::size_t index, shape::Vec mold) const;
    void try_at(shape::Vec mold);

    CanvasPort& port_;
    std::optional<Pressed> pressed_;
    std::optional<VentTrial> trial_;
    std::optional<std::size_t> hovered_;
};

} // namespace drawercast::app
