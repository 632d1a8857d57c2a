// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace drawercast::capture {

struct Exif {
    int orientation = 1;                 ///< 1 to 8
    std::optional<double> focal_as_35mm; ///< mm
};

/// The two entries of an Exif block (TIFF 6.0 inside, behind "Exif\0\0") that measuring needs. What is torn
/// or out of range reads as not said: a camera's notes never make a picture unreadable.
Exif exif(std::string_view tiff);

} // namespace drawercast::capture
