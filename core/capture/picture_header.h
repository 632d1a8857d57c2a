// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace drawercast::capture {

inline constexpr std::size_t picture_bytes_most = 64u << 20; ///< a file this long is refused
inline constexpr int picture_side_most = 20000;              ///< px
inline constexpr double picture_pixels_most = 120e6;         ///< decoded, three bytes each

enum class PictureKind { jpeg, png };

/// What a picture says of itself before anything of it is decoded.
struct PictureHeader {
    PictureKind kind = PictureKind::jpeg;
    int width_px = 0; ///< as stored, not yet turned
    int height_px = 0;
    int orientation = 1;                 ///< 1 to 8 (Exif 2.3, tag 0x0112)
    std::optional<double> dots_per_inch; ///< JFIF density or PNG pHYs, where both directions agree
    std::optional<double> focal_as_35mm; ///< mm (Exif 2.3, tag 0xA405)
    bool operator==(const PictureHeader&) const = default;
};

/// Reads JPEG (ITU-T T.81, B.1 and B.2; JFIF 1.02) and PNG (ISO/IEC 15948) headers. Refused in words: other
/// kinds, torn files, and sizes over the limits above, so that a small file can't ask for all the memory.
Expected<PictureHeader> picture_header(std::string_view bytes);

} // namespace drawercast::capture
