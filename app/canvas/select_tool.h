// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/canvas_tool.h"
#include "canvas/drag_gesture.h"
#include "canvas/notch_gesture.h"
#include "canvas/turn_gesture.h"

#include <QPointF>

#include <optional>
#include <string>
#include <variant>

namespace drawercast::app {

/// How near a target attracts on the sheet; 0: nothing snaps.
double snap_reach_mm(const CanvasPort& port, CanvasTool::Keys keys);

/// Choosing, moving and turning pockets by the pointer, sliding their notches. Presses, moves and releases
/// come in view pixels.
class SelectTool {
  public:
    using Keys = CanvasTool::Keys;

    explicit SelectTool(CanvasPort& port) : port_(port) {}

    void press(QPointF px, Keys keys);
    void move(QPointF px, Keys keys);
    /// The keys alone changed: what is being tried follows at once.
    void keys_changed(Keys keys);
    /// Stores what was shown last.
    void release(QPointF px, Keys keys);
    /// Drops what is being tried: everything is as it was. True where there was something.
    bool cancel();

    std::vector<std::string> movable() const; ///< chosen and not locked
    bool busy() const { return !std::holds_alternative<Idle>(state_); }
    std::string hovered(QPointF px) const; ///< pocket under the pointer; "" none
    enum class Grip { none, pocket, notch, ring };
    Grip grip(QPointF px) const; ///< what a press would take hold of

    /// Where the ring to turn by stands for the chosen pockets, view pixels; nothing while none can be turned
    /// or something is being moved.
    std::optional<QPointF> turn_ring() const;

    static constexpr double reach_px = 6;      ///< a pocket can be got hold of this far outside its outline
    static constexpr double snap_px = 8;       ///< how far targets attract, the same at any zoom
    static constexpr double drag_after_px = 4; ///< a shaky click is no drag
    static constexpr double ring_distance_px = 30;
    static constexpr double ring_reach_px = 12;

  private:
    struct Idle {};
    struct Pressed { ///< on a pocket, not yet moved
        QPointF at;
        std::string subject;
        bool was_chosen = false;
        std::optional<std::size_t> notch;
    };
    struct Drag {
        DragGesture gesture;
        std::vector<std::string> subjects;
        std::optional<job::Job> last;
    };
    struct Slide {
        NotchGesture gesture;
        std::string subject;
        std::optional<job::Job> last;
    };
    struct Turn {
        TurnGesture gesture;
        std::vector<std::string> subjects;
        std::optional<job::Job> last;
    };
    struct Band {
        QPointF from;
        std::vector<std::string> kept; ///< chosen whatever the band holds
        std::vector<std::string> before;
    };

    std::optional<std::size_t> notch_under(QPointF px) const;
    double snap_mm(Keys keys) const { return snap_reach_mm(port_, keys); }
    void start(const Pressed& pressed);
    void start_drag(const Pressed& pressed);
    void start_slide(const Pressed& pressed);
    void step(Drag& drag, QPointF px, Keys keys);
    void step(Slide& slide, QPointF px, Keys keys);
    void step(Turn& turn, QPointF px, Keys keys);
    void step(Band& band, QPointF px, Keys keys);
    template <class Other>
    void step(Other&, QPointF, Keys) {}
    void clear_marks();

    CanvasPort& port_;
    std::variant<Idle, Pressed, Drag, Slide, Turn, Band> state_;
    QPointF last_px_;
};

} // namespace drawercast::app
