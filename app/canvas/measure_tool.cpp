// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/measure_tool.h"

#include "canvas/select_tool.h"
#include "language/say.h"
#include "language/spoken.h"

#include <QLineF>

#include <cmath>

namespace drawercast::app {

namespace {

using language::tr;

} // namespace

MeasurePoint MeasureTool::point_at(QPointF px, Keys keys) const {
    const shape::Vec mm = port_.view().to_mm(px);
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || keys.no_snap) return {mm, MeasurePoint::On::nothing};
    auto point = measure_point(*plan, mm, SelectTool::snap_px / port_.view().px_per_mm());
    if (!open_ || !keys.add || !measured_) return point;
    const shape::Vec from = measured_->from.at, by = point.at - from;
    const bool level = std::abs(by.x) >= std::abs(by.y);
    return {level ? shape::Vec{point.at.x, from.y} : shape::Vec{from.x, point.at.y}, point.on};
}

void MeasureTool::press(QPointF px, Keys keys) {
    if (open_) { // the second of two clicks
        follow(px, keys);
        open_ = false;
    } else {
        pressed_ = px;
        const auto from = point_at(px, keys);
        measured_ = Measured{from, from};
        open_ = true;
    }
    port_.redraw_live();
}

void MeasureTool::move(QPointF px, Keys keys) {
    follow(px, keys);
    port_.redraw_live();
}

void MeasureTool::follow(QPointF px, Keys keys) {
    under_ = point_at(px, keys);
    if (!open_) return;
    measured_->to = *under_;
    port_.say(words());
}

void MeasureTool::release(QPointF px, Keys keys) {
    if (!open_ || QLineF(pressed_, px).length() < SelectTool::drag_after_px) return; // a click: one more
    follow(px, keys);
    open_ = false;
    port_.redraw_live();
}

sheets::Inks MeasureTool::live(const LiveFrame& frame) const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr) return {};
    LiveScene scene{frame, *plan, port_.shown(), port_.chosen(), frame.moving};
    scene.notch = port_.chosen_notch();
    scene.under = under_;
    if (measured_) scene.measured = std::pair(measured_->from, measured_->to);
    return live_ink(scene);
}

bool MeasureTool::cancel() {
    const bool any = measured_.has_value();
    measured_.reset();
    under_.reset();
    open_ = false;
    return any;
}

QString MeasureTool::words() const {
    if (!measured_) return {};
    const auto units = port_.job().display_units;
    const auto length = [units](double mm) { return language::say_length(mm, units); };
    const shape::Vec by = measured_->to.at - measured_->from.at;
    return tr("%1; %2 across, %3 front to back")
        .arg(length(shape::length(by)), length(std::abs(by.x)), length(std::abs(by.y)));
}

} // namespace drawercast::app
