// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

namespace drawercast::capture {

/// From the picture to the sheet's plane and back: one radial coefficient about the picture's middle (first
/// order of Brown 1971), then a homography.
struct View {
    cv::Point2d middle;       ///< of the picture, px
    double half_diagonal = 1; ///< px
    double radial = 0; ///< straight = middle + (seen − middle)·(1 + radial·r²), r in half diagonals
    cv::Matx33d to_sheet = cv::Matx33d::eye(); ///< straight px to mm, y down

    cv::Point2d straight(cv::Point2d seen) const;
    cv::Point2d seen(cv::Point2d straight) const;
    cv::Point2d on_sheet(cv::Point2d seen) const;
    cv::Point2d in_picture(cv::Point2d on_sheet) const;
};

/// A point of the picture and where it is on the sheet.
struct Sighting {
    cv::Point2d seen;  ///< px
    cv::Point2d sheet; ///< mm
};

/// The ground that leaves the least squares over. The lens is fitted where there are eight sightings or more:
/// four fix the perspective alone.
std::optional<View> fitted_ground(const std::vector<Sighting>& sightings, cv::Size picture);

/// Root mean square of what is left over, mm.
double misfit_mm(const View& ground, const std::vector<Sighting>& sightings);

/// The coarsest scale of the picture within a field of the sheet, px per mm.
double coarsest_scale(const View& ground, cv::Rect2d field);

cv::Point2d mapped(const cv::Matx33d& by, cv::Point2d p);

} // namespace drawercast::capture
