// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/find_targets.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {

namespace {

constexpr int search_side = 1600; // px

Problem unseen(Phrase what) {
    return {"capture-no-sheet",
            {},
            std::move(what),
            phrase("Lay a white sheet on a darker table and photograph all of it from above")};
}

/// The steepest place from dark to light across a side, at fractions of its length; px.
std::vector<cv::Point2f> edge_points(const cv::Mat& gray, cv::Point2d from, cv::Point2d to, double reach) {
    std::vector<cv::Point2f> out;
    const cv::Point2d along = to - from, inward(-along.y, along.x);
    const cv::Point2d unit = inward / cv::norm(inward);
    for (int i = 0; i <= 60; ++i) {
        const cv::Point2d at = from + along * (0.05 + 0.9 * i / 60);
        double best = 4, where = 0; // at least four levels to the px
        bool found = false;
        double before = -1;
        for (double s = -reach; s <= reach; s += 0.5) {
            const cv::Point2d p = at + unit * s;
            if (p.x < 0 || p.y < 0 || p.x > gray.cols - 1 || p.y > gray.rows - 1) {
                before = -1;
                continue;
            }
            const int x = std::min(static_cast<int>(p.x), gray.cols - 2);
            const int y = std::min(static_cast<int>(p.y), gray.rows - 2);
            const double u = p.x - x, v = p.y - y;
            const double level = (gray.at<uchar>(y, x) * (1 - u) + gray.at<uchar>(y, x + 1) * u) * (1 - v) +
                                 (gray.at<uchar>(y + 1, x) * (1 - u) + gray.at<uchar>(y + 1, x + 1) * u) * v;
            if (before >= 0 && level - before > best) {
                best = level - before, where = s - 0.25;
                found = true;
            }
            before = level;
        }
        if (found) out.emplace_back(at + unit * where);
    }
    return out;
}

/// Where two lines meet, each (direction, point).
std::optional<cv::Point2d> meeting(const cv::Vec4d& a, const cv::Vec4d& b) {
    const cv::Point2d da(a[0], a[1]), db(b[0], b[1]), pa(a[2], a[3]), pb(b[2], b[3]);
    const double turn = da.cross(db);
    if (std::abs(turn) < 0.2) return std::nullopt;
    return pa + da * ((pb - pa).cross(db) / turn);
}

} // namespace

Expected<std::vector<Sighting>> find_corners(const cv::Mat& gray, SheetSize sheet) {
    const double shrink = std::min(1.0, static_cast<double>(search_side) / std::max(gray.cols, gray.rows));
    cv::Mat small, light;
    cv::resize(gray, small, {}, shrink, shrink, cv::INTER_AREA);
    cv::GaussianBlur(small, light, {5, 5}, 0);
    cv::threshold(light, light, 0, 255, cv::THRESH_BINARY | cv::THRESH_OTSU);
    std::vector<std::vector<cv::Point>> contours;
    cv::findContours(light, contours, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
    const auto largest = std::max_element(contours.begin(), contours.end(), [](const auto& a, const auto& b) {
        return cv::contourArea(a) < cv::contourArea(b);
    });
    if (largest == contours.end() || cv::contourArea(*largest) < 0.1 * small.cols * small.rows)
        return unseen(phrase("no light sheet is seen"));
    std::vector<cv::Point> four;
    cv::approxPolyDP(*largest, four, 0.03 * cv::arcLength(*largest, true), true);
    if (four.size() != 4 || !cv::isContourConvex(four))
        return unseen(
            phrase("the light area has not four straight sides: something lies over the sheet's edge"));
    if (cv::contourArea(four, true) < 0) std::reverse(four.begin(), four.end());
    for (const cv::Point p : four)
        if (p.x < 3 || p.y < 3 || p.x > small.cols - 4 || p.y > small.rows - 4)
            return unseen(phrase("a corner of the sheet is outside the picture"));
    std::array<cv::Vec4d, 4> sides;
    for (std::size_t i = 0; i < 4; ++i) {
        const cv::Point2d half(0.5, 0.5);
        const auto whole = [&](cv::Point p) { return (cv::Point2d(p) + half) / shrink - half; };
        const auto points = edge_points(gray, whole(four[i]), whole(four[(i + 1) % 4]), 8 / shrink);
        if (points.size() < 30) return unseen(phrase("a side of the sheet doesn't stand out from the table"));
        cv::Vec4f line;
        cv::fitLine(points, line, cv::DIST_HUBER, 0, 0.01, 0.01);
        sides[i] = cv::Vec4d(line);
        const cv::Point2d along(sides[i][0], sides[i][1]), on(sides[i][2], sides[i][3]);
        double off = 0;
        for (const cv::Point2f p : points) off += std::abs((cv::Point2d(p) - on).cross(along));
        if (off / static_cast<double>(points.size()) > 0.004 * cv::norm(four[i] - four[(i + 1) % 4]) / shrink)
            return unseen(phrase("a side of the sheet isn't straight: it is curled, or the lens bends it"));
    }
    std::array<cv::Point2d, 4> corners;
    for (std::size_t i = 0; i < 4; ++i) {
        const auto at = meeting(sides[(i + 3) % 4], sides[i]);
        if (!at) return unseen(phrase("two sides of the sheet don't meet"));
        corners[i] = *at;
    }
    const auto side = [&](std::size_t i) { return cv::norm(corners[i] - corners[(i + 1) % 4]); };
    const double one = side(0) + side(2), other = side(1) + side(3);
    if (std::max(one, other) < 1.08 * std::min(one, other))
        return unseen(phrase("which side of the sheet is the longer one can't be told from so far aside"));
    const std::size_t first = one < other ? 0 : 1; // the side from here is a short one
    const std::array<cv::Point2d, 4> places{cv::Point2d(0, 0), cv::Point2d(sheet.width_mm, 0),
                                            cv::Point2d(sheet.width_mm, sheet.height_mm),
                                            cv::Point2d(0, sheet.height_mm)};
    std::vector<Sighting> out;
    for (std::size_t i = 0; i < 4; ++i) out.push_back({corners[(first + i) % 4], places[i]});
    return out;
}

} // namespace drawercast::capture
