// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/turn_gesture.h"

#include "job/edit.h"

#include <cmath>
#include <numbers>

namespace drawercast::app {

TurnGesture::Step TurnGesture::at(shape::Vec pointer, double step_deg) const {
    const shape::Vec a = start_.grabbed - start_.about, b = pointer - start_.about;
    const double turned = std::atan2(shape::cross(a, b), shape::dot(a, b)) * 180 / std::numbers::pi;
    const double by = std::round(turned / step_deg) * step_deg;
    return {job::turned(start_.job, start_.subjects, by, start_.about), by};
}

} // namespace drawercast::app
