// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/drag_gesture.h"

#include <QPointF>

#include <optional>
#include <string>
#include <variant>

namespace drawercast::app {

/// Choosing, moving and turning pockets by the pointer. Presses, moves and releases come in view pixels.
class SelectTool {
  public:
    struct Keys {
        bool add = false;     ///< Shift: to the choice, or whole steps when turning
        bool no_snap = false; ///< Ctrl: while held, nothing snaps
    };

    explicit SelectTool(CanvasPort& port) : port_(port) {}

    void press(QPointF px, Keys keys);
    void move(QPointF px, Keys keys);
    void release(QPointF px, Keys keys);
    /// Drops what is being tried: everything is as it was. True where there was something.
    bool cancel();

    bool busy() const { return !std::holds_alternative<Idle>(state_); }
    bool dragging() const {
        return std::holds_alternative<Drag>(state_) || std::holds_alternative<Turn>(state_);
    }
    std::string hovered(QPointF px) const; ///< pocket under the pointer; "" none

    /// Where the ring to turn by stands for the chosen pockets, view pixels; nothing while none can be
    /// turned.
    std::optional<QPointF> turn_ring() const;

    static constexpr double reach_px = 6;      ///< a pocket can be got hold of this far outside its outline
    static constexpr double snap_px = 8;       ///< how far targets attract, the same at any zoom
    static constexpr double drag_after_px = 4; ///< a shaky click is no drag
    static constexpr double ring_distance_px = 28;
    static constexpr double ring_reach_px = 12;

  private:
    struct Idle {};
    struct Pressed { ///< on a pocket, not yet moved
        QPointF at;
        std::string subject;
        bool was_chosen = false;
    };
    struct Drag {
        DragGesture gesture;
        std::optional<job::Job> last;
    };
    struct Turn {
        job::Job at_press;
        std::vector<std::string> subjects;
        shape::Vec center;
        double from_deg = 0;
        std::optional<job::Job> last;
    };
    struct Band {
        QPointF from;
        std::vector<std::string> before;
    };

    std::vector<std::string> movable() const; ///< chosen and not locked
    bool start_drag(const Pressed& pressed);
    void step_drag(Drag& drag, QPointF px, Keys keys);
    void step_turn(Turn& turn, QPointF px, Keys keys);
    void step_band(const Band& band, QPointF px, Keys keys);

    CanvasPort& port_;
    std::variant<Idle, Pressed, Drag, Turn, Band> state_;
};

} // namespace drawercast::app
