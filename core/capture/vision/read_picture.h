// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "capture/picture_header.h"

#include <opencv2/core.hpp>
#include <string_view>

namespace drawercast::capture {

/// The picture upright, three bytes per pixel (blue, green, red). The header is checked before anything is
/// decoded.
Expected<cv::Mat> read_picture(std::string_view file, const PictureHeader& header);

} // namespace drawercast::capture
