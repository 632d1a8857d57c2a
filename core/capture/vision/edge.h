// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core.hpp>
#include <vector>

namespace drawercast::capture {

struct Edge {
    std::vector<cv::Point2d> points; ///< px, even steps, closed
    double scatter_px = 0;           ///< of the points about the smooth line, root mean square
    double blur_px = 0;              ///< median width over which the edge changes from a fifth to four fifths
};

/// The rim of an object between pixels: on each normal the place half way between what is inside and what is
/// outside, then smoothed over 0.3 mm, no point by more than `smoothing_px`.
Edge edge_of(const std::vector<cv::Point>& rim, const cv::Mat& differs, double px_per_mm,
             double smoothing_px);

} // namespace drawercast::capture
