// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "buildup/picture.h"
#include "buildup/plan_order.h"

namespace drawercast::buildup {

/// A level face, seen from above.
struct Level {
    Part part = Part::base;
    const std::string* subject = nullptr;
    double height_mm = 0;
    shape::Region area;
    bool lined = true;
};

/// An upright face toward the viewer.
struct Upright {
    Part part = Part::base;
    const std::string* subject = nullptr;
    Face face = Face::side;
    shape::Vec from; ///< in the mold frame, left to right as seen
    shape::Vec to;
    double bottom_mm = 0;
    double top_mm = 0;
    bool line_left = false;
    bool line_right = false;
    bool line_bottom = false;
    Span span; ///< turned
};

struct Faces {
    std::vector<Level> levels;
    std::vector<Upright> uprights;
};

Faces faces_of(const Scene& scene, const Look& look);

} // namespace drawercast::buildup
