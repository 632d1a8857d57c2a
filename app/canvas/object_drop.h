// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/canvas_tool.h"
#include "canvas/drag_gesture.h"

#include <optional>
#include <string>

namespace drawercast::app {

/// An object dragged from the list onto the drawer: from the moment it is over it, it moves as pockets do.
class ObjectDrop {
  public:
    explicit ObjectDrop(CanvasPort& port) : port_(port) {}

    bool enter(const std::string& object, QPointF px); ///< false: it can't be placed
    void move(QPointF px, CanvasTool::Keys keys);
    void leave();
    bool drop();                     ///< stores what was shown last, and chooses it
    void forget() { held_.reset(); } ///< another job is shown
    bool busy() const { return held_.has_value(); }

  private:
    struct Held {
        std::string subject;
        DragGesture gesture;
        job::Job last;
    };

    CanvasPort& port_;
    std::optional<Held> held_;
};

} // namespace drawercast::app
