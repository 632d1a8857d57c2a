// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "air/answer.h"
#include "canvas/canvas_port.h"

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
class VentTool {
  public:
    explicit VentTool(CanvasPort& port) : port_(port) {}

    void press(QPointF px);
    void move(QPointF px, bool free); ///< `free`: not on whole steps
    void release();                   ///< stores what was shown last
    bool cancel();                    ///< true where something was being tried
    bool busy() const { return pressed_.has_value(); }

    /// The vent under a place of the view: its number among those shown, from 0.
    std::optional<std::size_t> hovered(QPointF px) const;
    std::optional<std::size_t> chosen() const; ///< likewise the chosen one
    const std::optional<VentTrial>& trial() const { return trial_; }
    /// Another answer is shown: what is being dragged is found in it, or given up.
    void renew();

    struct Nudged {
        job::Job job;
        std::size_t kept = 0; ///< its number among the maker's
        shape::Vec at;        ///< drawer mm
    };
    std::optional<Nudged> nudged(shape::Vec by) const; ///< the chosen one, mm of the sheet

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
    std::optional<job::Job> put(std::size_t index, shape::Vec mold) const;
    void try_at(shape::Vec mold);

    CanvasPort& port_;
    std::optional<Pressed> pressed_;
    std::optional<VentTrial> trial_;
};

/// A vent's place in the drawer and back; both frames finished sizes and mold sizes as everywhere.
shape::Vec vent_in_drawer(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec mold);
shape::Vec vent_in_mold(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec drawer);

/// The chosen vent among those of `air`, whose places are told in the mold's frame: its number, from 0.
std::optional<std::size_t> vent_near(const air::Answer& air, shape::Vec mold, double reach_mm);

} // namespace drawercast::app
