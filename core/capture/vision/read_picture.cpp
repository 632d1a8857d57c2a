// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/read_picture.h"

#include <array>
#include <opencv2/imgcodecs.hpp>

namespace drawercast::capture {

namespace {

/// Exif 2.3, tag 0x0112: which row and column of the stored picture are the upper and left one.
cv::Mat upright(const cv::Mat& stored, int orientation) {
    cv::Mat out = stored;
    if (orientation >= 5) cv::transpose(stored, out); // mirrored at the main diagonal; then as 1 to 4
    const int corner = (orientation - 1) % 4;
    if (corner <= 0) return out;
    constexpr std::array flips{0, 1, -1, 0}; // as cv::flip calls them: none, across, both, down
    cv::Mat turned;
    cv::flip(out, turned, flips[static_cast<std::size_t>(corner)]);
    return turned;
}

} // namespace

Expected<cv::Mat> read_picture(std::string_view file, const PictureHeader& header) {
    const Problem unreadable("picture-torn", {}, phrase("the picture can't be decoded"),
                             phrase("Copy or save it again"));
    try {
        const cv::Mat bytes(1, static_cast<int>(file.size()), CV_8U, const_cast<char*>(file.data()));
        const cv::Mat stored = cv::imdecode(bytes, cv::IMREAD_COLOR | cv::IMREAD_IGNORE_ORIENTATION);
        // A file whose data disagree with its header is no picture to measure in.
        if (stored.empty() || stored.cols != header.width_px || stored.rows != header.height_px)
            return unreadable;
        return upright(stored, header.orientation);
    } catch (const cv::Exception&) {
        return unreadable;
    }
}

} // namespace drawercast::capture
