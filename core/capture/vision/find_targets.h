// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "capture/measuring_sheet.h"
#include "capture/vision/view.h"

#include <vector>

namespace drawercast::capture {

/// The printed targets of a measuring sheet in a gray picture; eight of ten at least, all four corners among
/// them. Refused in words where they aren't seen.
Expected<std::vector<Sighting>> find_targets(const cv::Mat& gray, SheetSize sheet);

/// The corners of a plain light sheet on a darker table, each where two sides' lines meet.
Expected<std::vector<Sighting>> find_corners(const cv::Mat& gray, SheetSize sheet);

} // namespace drawercast::capture
