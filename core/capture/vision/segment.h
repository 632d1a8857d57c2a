// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

#include <opencv2/core.hpp>

namespace drawercast::capture {

struct Segmented {
    cv::Mat mask;    ///< CV_8U, 255 where an object is
    cv::Mat differs; ///< CV_32F, how far a pixel is from paper: 0 is paper
    cv::Mat doubt;   ///< CV_8U, 255 where a gray part with a sharp edge may be a hard shadow
    cv::Mat said;    ///< CV_8U, 255 where the brush says that it is an object
};

/// What is not paper, shadows left out. A shadow takes light of all colors alike and has a soft edge towards
/// the paper; a gray object has a sharp one. Shine inside an object is enclosed by it and filled. The brush
/// decides where it was laid.
Segmented segmented(const cv::Mat& against_paper, double px_per_mm, const Brush& brush);

} // namespace drawercast::capture
