// SPDX-License-Identifier: GPL-3.0-or-later
// A picture stored in each of the eight ways (Exif 2.3, tag 0x0112) is measured the same way up.
#include "capture/measure.h"

#include <gtest/gtest.h>

#include <opencv2/core.hpp>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {
namespace {

/// What a camera stores that says `orientation` of what is `upright`: by whole turns, so that nothing is
/// shared with what undoes it.
cv::Mat stored(const cv::Mat& upright, int orientation) {
    cv::Mat mirrored, out;
    cv::flip(upright, mirrored, 1);
    switch (orientation) {
    case 2:
        return mirrored;
    case 3:
        cv::rotate(upright, out, cv::ROTATE_180);
        return out;
    case 4:
        cv::rotate(mirrored, out, cv::ROTATE_180);
        return out;
    case 5:
        cv::rotate(mirrored, out, cv::ROTATE_90_COUNTERCLOCKWISE);
        return out;
    case 6:
        cv::rotate(upright, out, cv::ROTATE_90_COUNTERCLOCKWISE);
        return out;
    case 7:
        cv::rotate(mirrored, out, cv::ROTATE_90_CLOCKWISE);
        return out;
    case 8:
        cv::rotate(upright, out, cv::ROTATE_90_CLOCKWISE);
        return out;
    default:
        return upright;
    }
}

std::string jpeg_that_says(int orientation, const cv::Mat& picture) {
    std::vector<uchar> bytes;
    cv::imencode(".jpg", picture, bytes, {cv::IMWRITE_JPEG_QUALITY, 92});
    std::string tiff("II\x2A\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18);
    tiff += static_cast<char>(orientation);
    tiff += std::string(7, '\0'); // the rest of the value, no further list
    const std::string body = std::string("Exif\0\0", 6) + tiff;
    const auto size = body.size() + 2;
    std::string file(bytes.begin(), bytes.end());
    const std::string head{'\xFF', '\xE1', static_cast<char>(size >> 8), static_cast<char>(size & 0xFF)};
    return file.insert(2, head + body);
}

TEST(Orientation, all_eight_give_the_same_outline_in_the_same_place) {
    cv::Mat upright(300, 420, CV_8UC3, cv::Scalar::all(240));
    const std::vector<cv::Point> ell{{60, 50}, {200, 50}, {200, 90}, {110, 90}, {110, 210}, {60, 210}};
    cv::fillPoly(upright, std::vector<std::vector<cv::Point>>{ell}, cv::Scalar(60, 50, 45));
    Shot shot;
    shot.ground = Ground::scan;
    shot.dots_per_inch = 101.6; // 4 px to the mm
    for (int orientation = 1; orientation <= 8; ++orientation) {
        SCOPED_TRACE(orientation);
        const auto flat = flattened(jpeg_that_says(orientation, stored(upright, orientation)), shot);
        ASSERT_TRUE(flat) << one_line(flat.error());
        EXPECT_GT(flat->width_px, flat->height_px);
        const auto traced = traced_objects(*flat, {});
        ASSERT_TRUE(traced) << one_line(traced.error());
        ASSERT_EQ(traced->outlines.size(), 1U);
        const auto& found = traced->outlines[0];
        const auto contour = shape::contour_of(found.polygon);
        EXPECT_NEAR(shape::bounds(*contour).width(), 35, 0.4);
        EXPECT_NEAR(shape::bounds(*contour).height(), 40, 0.4);
        EXPECT_TRUE(shape::contains(*contour, {14, 16})) << "its short arm is above, to the right";
        EXPECT_FALSE(shape::contains(*contour, {14, -16}));
        const double margin = std::ceil(2 * 4.0) / 4; // a scan's rim is left out
        EXPECT_NEAR(found.at.x, 130 / 4.0 - margin, 0.4);
        EXPECT_NEAR(found.at.y, (300 - 130) / 4.0 - margin, 0.4);
    }
}

} // namespace
} // namespace drawercast::capture
