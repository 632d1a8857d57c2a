// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core.hpp>
#include <optional>

namespace drawercast::capture {

/// How light each pixel is against bare paper at its place: 1 is paper, 0 black; CV_32FC3. Lamps and lenses
/// light a sheet unevenly but smoothly: paper is a quadratic surface per color, fitted to what lies near it.
/// Nothing where less than a tenth of the field is bare paper.
std::optional<cv::Mat> against_paper(const cv::Mat& bgr, double px_per_mm);

} // namespace drawercast::capture
