// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

#include <vector>

namespace drawercast::app::photo {

/// What the hand drew in one go over the flat picture: mm from its lower left corner.
struct Stroke {
    bool adds = true; ///< belongs to an object; else: does not
    double radius_mm = 2;
    std::vector<shape::Vec> points;
    bool operator==(const Stroke&) const = default;
};

/// The pixels under the strokes, later ones over earlier ones; empty without any.
capture::Brush brush_of(const std::vector<Stroke>& strokes, const capture::FlatPicture& flat);

shape::Box box_of(const Stroke& stroke);

} // namespace drawercast::app::photo
