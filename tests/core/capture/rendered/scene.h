// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measuring_sheet.h"

#include <opencv2/core.hpp>
#include <string>
#include <vector>

namespace drawercast::capture {

/// Something that lies on the sheet: a solid with upright walls.
struct Thing {
    std::vector<cv::Point2d> outline; ///< mm, y down from the sheet's corner
    double height_mm = 0;
    cv::Vec3d color{0.15, 0.15, 0.15}; ///< share of light thrown back; blue, green, red
    bool walls = true;                 ///< else its upper edge alone is seen
    double shine = 0;                  ///< share of its width that a blank streak takes
};

/// A pinhole camera with one radial coefficient over a sheet on a table, ray by ray: nothing here is shared
/// with what measures the picture but the sheet's drawing.
struct Scene {
    SheetSize sheet = sheet_a4;
    bool printed = true; ///< with targets
    std::vector<Thing> things;
    cv::Size picture{4000, 3000};
    double distance_mm = 420; ///< lens to the point looked at
    double tilt_deg = 0;      ///< away from straight down, about the sheet's short axis
    double spin_deg = 90;     ///< about the line of sight
    cv::Point2d look_at{105, 148.5};
    double focal_px = 3000;
    double radial = 0;        ///< of the angle's tangent: r' = r·(1 + radial·r²)
    double blur_px = 0.9;     ///< Gaussian
    double noise = 2.5;       ///< levels, one standard deviation
    double vignette = 0.25;   ///< darker at the corners
    double shade = 0;         ///< depth of a shadow beside each thing, 0 to 1
    double shade_soft_mm = 2; ///< how far its edge fades; a bare lamp's: a few tenths
    int jpeg_quality = 88;    ///< 0: PNG
};

std::string rendered(const Scene& scene); ///< a picture file

std::vector<cv::Point2d> round_thing(cv::Point2d middle, double radius_mm);
std::vector<cv::Point2d> box_thing(cv::Point2d middle, double width_mm, double height_mm, double turn_deg);
/// Like a pair of pliers from above: with hollows.
std::vector<cv::Point2d> tool_thing(cv::Point2d middle, double turn_deg);

/// Largest distance from any point of one closed line to the other, both ways, mm (Hausdorff).
double farthest_apart(const std::vector<cv::Point2d>& a, const std::vector<cv::Point2d>& b);

} // namespace drawercast::capture
