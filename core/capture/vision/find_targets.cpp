// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/find_targets.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {

namespace {

constexpr int search_side =
    2200; // px; targets are looked for in a smaller picture, then measured in the whole
constexpr std::size_t targets_least = 8;

struct Candidate {
    cv::Point2d at;
    bool dotted = false;
};

Problem unseen(Phrase what) {
    return {"capture-no-sheet",
            {},
            std::move(what),
            phrase("Photograph the whole sheet, sharp, from above, with nothing over its marks")};
}

double mean_within(const cv::Mat& gray, cv::Point2d at, double radius) {
    const int r = std::max(1, static_cast<int>(radius));
    const cv::Rect box = cv::Rect(cvRound(at.x) - r, cvRound(at.y) - r, 2 * r + 1, 2 * r + 1) &
                         cv::Rect(0, 0, gray.cols, gray.rows);
    return box.empty() ? 0 : cv::mean(gray(box))[0];
}

/// A dark quadrilateral with one round hole, of the right share, in its middle.
std::vector<Candidate> candidates(const cv::Mat& gray) {
    cv::Mat dark;
    const int block = std::max(31, (std::max(gray.cols, gray.rows) / 24) | 1);
    cv::adaptiveThreshold(gray, dark, 255, cv::ADAPTIVE_THRESH_MEAN_C, cv::THRESH_BINARY_INV, block, 12);
    std::vector<std::vector<cv::Point>> contours;
    std::vector<cv::Vec4i> kin;
    cv::findContours(dark, contours, kin, cv::RETR_CCOMP, cv::CHAIN_APPROX_NONE);
    std::vector<Candidate> out;
    for (std::size_t i = 0; i < contours.size(); ++i) {
        if (kin[i][3] >= 0 || kin[i][2] < 0) continue; // outermost with a hole
        const double area = cv::contourArea(contours[i]);
        if (area < 80) continue;
        std::vector<cv::Point> tips;
        cv::approxPolyDP(contours[i], tips, 0.06 * cv::arcLength(contours[i], true), true);
        if (tips.size() != 4 || !cv::isContourConvex(tips)) continue;
        int largest = -1;
        double hole = 0;
        for (int h = kin[i][2]; h >= 0; h = kin[static_cast<std::size_t>(h)][0]) {
            const double one = cv::contourArea(contours[static_cast<std::size_t>(h)]);
            if (one > hole) hole = one, largest = h;
        }
        // π·4² of 2·8² is 0.393; blur and print take or give a little.
        if (largest < 0 || hole < 0.25 * area || hole > 0.55 * area) continue;
        const auto& rim = contours[static_cast<std::size_t>(largest)];
        const double around = cv::arcLength(rim, true);
        if (4 * CV_PI * hole / (around * around) < 0.7) continue;
        const cv::Moments m = cv::moments(rim), whole = cv::moments(contours[i]);
        const cv::Point2d at(m.m10 / m.m00, m.m01 / m.m00);
        const cv::Point2d of_whole(whole.m10 / whole.m00, whole.m01 / whole.m00);
        if (cv::norm(at - of_whole) > 0.12 * std::sqrt(area)) continue;
        const double radius = std::sqrt(hole / CV_PI);
        double ring = 0;
        for (const cv::Point2d d : {cv::Point2d(1, 0), {0, 1}, {-1, 0}, {0, -1}})
            ring += mean_within(gray, at + d * (0.7 * radius), 0.1 * radius) / 4;
        out.push_back({at, mean_within(gray, at, 0.2 * radius) < 0.65 * ring});
    }
    return out;
}

/// Corners of the hull, clockwise as seen, the dotted one first; empty where there is none.
std::vector<cv::Point2d> corners_of(const std::vector<Candidate>& found) {
    std::vector<cv::Point2f> points, hull;
    for (const Candidate& one : found) points.emplace_back(one.at);
    cv::convexHull(points, hull); // clockwise in a picture, whose y points down, is positive area
    if (hull.size() < 4) return {};
    if (cv::contourArea(hull, true) < 0) std::reverse(hull.begin(), hull.end());
    std::vector<cv::Point2f> four;
    for (double share = 0.01; share < 0.12; share += 0.005) {
        cv::approxPolyDP(hull, four, share * cv::arcLength(hull, true), true);
        if (four.size() <= 4) break;
    }
    if (four.size() != 4) return {};
    const auto dotted = std::find_if(four.begin(), four.end(), [&](cv::Point2f corner) {
        return std::any_of(found.begin(), found.end(), [&](const Candidate& one) {
            return one.dotted && cv::norm(one.at - cv::Point2d(corner)) < 1;
        });
    });
    if (dotted == four.end()) return {};
    std::rotate(four.begin(), dotted, four.end());
    return {four.begin(), four.end()};
}

/// The middle of the light in the hole: the black around it weighs nothing, so that the window's edge
/// doesn't.
cv::Point2d middle_of_hole(const cv::Mat& gray, cv::Point2d at, double px_per_mm) {
    const double window = (target_hole_mm + 0.7) * px_per_mm;
    for (int round = 0; round < 3; ++round) {
        const int r = static_cast<int>(std::ceil(window));
        std::vector<unsigned char> values;
        const cv::Rect box = cv::Rect(cvRound(at.x) - r, cvRound(at.y) - r, 2 * r + 1, 2 * r + 1) &
                             cv::Rect(0, 0, gray.cols, gray.rows);
        if (box.empty()) return at;
        for (int y = box.y; y < box.br().y; ++y)
            for (int x = box.x; x < box.br().x; ++x)
                if (std::hypot(x - at.x, y - at.y) > window - 0.6 * px_per_mm &&
                    std::hypot(x - at.x, y - at.y) <= window)
                    values.push_back(gray.at<unsigned char>(y, x));
        if (values.empty()) return at;
        std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
        const double black = values[values.size() / 2] + 8.0; // above the noise of the black
        double sum = 0;
        cv::Point2d moment;
        for (int y = box.y; y < box.br().y; ++y)
            for (int x = box.x; x < box.br().x; ++x) {
                if (std::hypot(x - at.x, y - at.y) > window) continue;
                const double light = std::max(0.0, gray.at<unsigned char>(y, x) - black);
                sum += light;
                moment += cv::Point2d(x, y) * light;
            }
        if (sum <= 0) return at;
        at = moment / sum;
    }
    return at;
}

} // namespace

Expected<std::vector<Sighting>> find_targets(const cv::Mat& gray, SheetSize sheet) {
    const double shrink = std::min(1.0, static_cast<double>(search_side) / std::max(gray.cols, gray.rows));
    cv::Mat small = gray;
    if (shrink < 1) cv::resize(gray, small, {}, shrink, shrink, cv::INTER_AREA);
    const auto found = candidates(small);
    if (found.size() < targets_least)
        return unseen(
            phrase("only %1 of the sheet's ten marks are seen", figure(std::to_string(found.size()))));
    const auto corners = corners_of(found);
    if (corners.empty())
        return unseen(phrase("the sheet's four corner marks are not all seen, one of them with a dot"));
    const auto places = target_places(sheet);
    std::vector<Sighting> out;
    for (std::size_t i = 0; i < 4; ++i) out.push_back({corners[i], {places[i].x, places[i].y}});
    const auto rough = fitted_ground(out, small.size());
    if (!rough) return unseen(phrase("the sheet's four corner marks lie on one line"));
    for (std::size_t i = 4; i < places.size(); ++i) {
        const cv::Point2d place(places[i].x, places[i].y);
        const auto nearest =
            std::min_element(found.begin(), found.end(), [&](const Candidate& a, const Candidate& b) {
                return cv::norm(rough->on_sheet(a.at) - place) < cv::norm(rough->on_sheet(b.at) - place);
            });
        if (cv::norm(rough->on_sheet(nearest->at) - place) >= 7) continue;
        if (nearest->dotted != target_dotted(sheet, i))
            return Problem("capture-other-sheet", {},
                           phrase("the measuring sheet in the picture is of another paper"),
                           phrase("Choose the paper it was printed on"));
        out.push_back({nearest->at, place});
    }
    if (out.size() < targets_least)
        return unseen(
            phrase("the marks are not where this sheet has them: another paper size, or a mirrored picture"));
    for (Sighting& one : out) {
        const cv::Point2d beside = rough->in_picture(one.sheet + cv::Point2d(1, 0));
        const cv::Point2d below = rough->in_picture(one.sheet + cv::Point2d(0, 1));
        const cv::Point2d here = rough->in_picture(one.sheet);
        const double scale = (cv::norm(beside - here) + cv::norm(below - here)) / 2 / shrink;
        const cv::Point2d half(0.5, 0.5);
        one.seen = middle_of_hole(gray, (one.seen + half) / shrink - half, scale);
    }
    return out;
}

} // namespace drawercast::capture
