// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"
#include "capture/picture_header.h"
#include "capture/vision/view.h"

#include <vector>

namespace drawercast::capture {

/// Where the camera stood, in mm on the sheet (x right, y down): with the typed distance; else by the sheet's
/// perspective where that says the distance within a tenth; else by the focal length in the file (taken
/// within 5 %, our guess: makers round it). CameraBy::nothing where none of these is there.
Camera camera_of(const View& ground, const std::vector<Sighting>& sightings, const PictureHeader& header,
                 std::optional<double> typed_mm);

} // namespace drawercast::capture
