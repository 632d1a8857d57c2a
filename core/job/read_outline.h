// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/fields.h"
#include "shape/contour.h"

namespace drawercast::job {

/// {"rect": [w, h, r]}, {"circle": [d]}, {"capsule": [l, w]} or {"polygon": [[x, y] or [x, y, sagitta], …]},
/// checked by shape::contour_of.
void read_outline(Fields& fields, std::string_view key, shape::Given& outline);

/// "at" and "turn_deg" of the object being read.
void read_pose(Fields& fields, shape::Pose& pose);

} // namespace drawercast::job
