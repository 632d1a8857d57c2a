// SPDX-License-Identifier: GPL-3.0-or-later
// How the build-up is turned and taken apart: by keys, by dragging, or by the bar below it.
#include "canvas/sheet_canvas.h"

#include <QMouseEvent>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr double px_per_step = 28; ///< of the pointer, for one step of the turn
constexpr double apart_px = 240;   ///< for wholly apart

double in_circle(double deg) {
    const double rest = std::fmod(deg, 360);
    return rest < 0 ? rest + 360 : rest;
}

} // namespace

void SheetCanvas::set_look(buildup::Look look) {
    look.turn_deg = in_circle(turn_step_deg * std::round(look.turn_deg / turn_step_deg));
    look.apart = std::clamp(look.apart, 0.0, 1.0);
    if (look == look_) return;
    look_ = look;
    kept_.reset();
    if (turning()) refit();
    emit look_changed();
}

bool SheetCanvas::turn_key(int key) {
    constexpr double apart_step = 0.1;
    buildup::Look look = look_;
    switch (key) {
    case Qt::Key_Left:
        look.turn_deg -= turn_step_deg;
        break;
    case Qt::Key_Right:
        look.turn_deg += turn_step_deg;
        break;
    case Qt::Key_Up:
        look.apart += apart_step;
        break;
    case Qt::Key_Down:
        look.apart -= apart_step;
        break;
    default:
        return false;
    }
    set_look(look);
    return true;
}

bool SheetCanvas::press_turn(const QMouseEvent& event) {
    if (!turning()) return false;
    turning_from_ = event.position();
    setCursor(Qt::ClosedHandCursor);
    return true;
}

/// To the right the near side goes to the right; upward it comes apart.
void SheetCanvas::drag_turn(QPointF px) {
    const QPointF by = px - *turning_from_;
    const double steps = std::trunc(by.x() / px_per_step);
    buildup::Look look = look_;
    look.turn_deg += steps * turn_step_deg;
    look.apart = std::clamp(look.apart - by.y() / apart_px, 0.0, 1.0);
    *turning_from_ = {turning_from_->x() + steps * px_per_step, px.y()};
    set_look(look);
}

} // namespace drawercast::app
