// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/turn_tool.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace drawercast::app {

namespace {

constexpr double px_per_step = 28; ///< of the pointer, for one step of the turn
constexpr double apart_px = 240;   ///< for wholly apart
constexpr double apart_step = 0.1; ///< by a key

double in_circle(double deg) {
    const double rest = std::fmod(deg, 360);
    return rest < 0 ? rest + 360 : rest;
}

} // namespace

void TurnTool::set_look(buildup::Look look) {
    look.turn_deg = in_circle(step_deg * std::round(look.turn_deg / step_deg));
    look.apart = std::clamp(look.apart, 0.0, 1.0);
    if (look == look_) return;
    look_ = look;
    turned_();
}

bool TurnTool::arrow(const ArrowKey& key) {
    if (key.fine) return false;
    set_look({look_.turn_deg + key.way.x * step_deg, look_.apart + key.way.y * apart_step});
    return true;
}

void TurnTool::press(QPointF px, Keys) { from_ = px; }

/// To the right the near side goes to the right; upward it comes apart.
void TurnTool::move(QPointF px, Keys) {
    if (!from_) return;
    const QPointF by = px - *from_;
    const double steps = std::trunc(by.x() / px_per_step);
    from_ = QPointF(from_->x() + steps * px_per_step, px.y());
    set_look({look_.turn_deg + steps * step_deg, look_.apart - by.y() / apart_px});
}

void TurnTool::release(QPointF, Keys) { from_.reset(); }

bool TurnTool::cancel() { return std::exchange(from_, std::nullopt).has_value(); }

} // namespace drawercast::app
