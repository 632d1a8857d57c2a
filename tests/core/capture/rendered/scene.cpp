// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/capture/rendered/scene.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <optional>

namespace drawercast::capture {

namespace {

constexpr double turn_to_rad = CV_PI / 180;

/// The sheet's own ink: 1 white, 0.06 black, nothing off the sheet.
std::optional<double> ink(const Scene& scene, cv::Point2d p) {
    if (p.x < 0 || p.y < 0 || p.x > scene.sheet.width_mm || p.y > scene.sheet.height_mm) return std::nullopt;
    if (!scene.printed) return 1;
    const auto places = target_places(scene.sheet);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const cv::Point2d d(p.x - places[i].x, p.y - places[i].y);
        if (std::abs(d.x) + std::abs(d.y) > target_tip_mm) continue;
        const double r = cv::norm(d);
        return r > target_hole_mm || (target_dotted(scene.sheet, i) && r < target_dot_mm) ? 0.06 : 1.0;
    }
    return 1;
}

struct Mask { ///< an outline as a fine bitmap, for quick lookup
    cv::Mat inside, shade;
    double px_per_mm = 20;
    cv::Point2d from;
    double at(const cv::Mat& mat, cv::Point2d p) const {
        const int x = cvFloor((p.x - from.x) * px_per_mm), y = cvFloor((p.y - from.y) * px_per_mm);
        if (x < 0 || y < 0 || x >= mat.cols || y >= mat.rows) return 0;
        return mat.at<uchar>(y, x) / 255.0;
    }
};

Mask mask_of(const Thing& thing, double shade, double soft_mm) {
    std::vector<cv::Point2f> points(thing.outline.begin(), thing.outline.end());
    const cv::Rect2f box = cv::minAreaRect(points).boundingRect2f();
    constexpr double margin = 25;
    Mask out;
    out.from = {box.x - margin, box.y - margin};
    const cv::Size size(cvCeil((box.width + 2 * margin) * out.px_per_mm),
                        cvCeil((box.height + 2 * margin) * out.px_per_mm));
    out.inside = cv::Mat::zeros(size, CV_8U);
    std::vector<cv::Point> fine;
    for (const cv::Point2d p : thing.outline) // 1/16 px
        fine.emplace_back(cvRound(((p.x - out.from.x) * out.px_per_mm - 0.5) * 16),
                          cvRound(((p.y - out.from.y) * out.px_per_mm - 0.5) * 16));
    cv::fillPoly(out.inside, std::vector<std::vector<cv::Point>>{fine}, 255, cv::LINE_8, 4);
    if (shade > 0) {
        const cv::Mat move = (cv::Mat_<double>(2, 3) << 1, 0, 5 * out.px_per_mm, 0, 1, 3 * out.px_per_mm);
        cv::Mat small;
        cv::warpAffine(out.inside, out.shade, move, size);
        cv::resize(out.shade, small, {}, 0.125, 0.125, cv::INTER_AREA);
        cv::GaussianBlur(small, small, {}, soft_mm * out.px_per_mm / 8);
        cv::resize(small, out.shade, size, 0, 0, cv::INTER_LINEAR);
    }
    return out;
}

struct Eye {
    cv::Vec3d at, right, down, ahead;
};

Eye eye_of(const Scene& scene) {
    const double tilt = scene.tilt_deg * turn_to_rad, spin = scene.spin_deg * turn_to_rad;
    Eye eye; // z points up from the sheet, whose y points down
    eye.ahead = {0, -std::sin(tilt), -std::cos(tilt)};
    eye.at = cv::Vec3d(scene.look_at.x, scene.look_at.y, 0) - eye.ahead * scene.distance_mm;
    const cv::Vec3d across(1, 0, 0), down = eye.ahead.cross(across) * -1.0;
    const cv::Vec3d toward = down[1] < 0 ? down * -1.0 : down;
    eye.right = across * std::cos(spin) + toward * std::sin(spin);
    eye.down = toward * std::cos(spin) - across * std::sin(spin);
    return eye;
}

/// What a ray from the eye meets: tops first, then walls by steps downward, then the sheet.
cv::Vec3d color_along(const Scene& scene, const std::vector<Mask>& masks, const Eye& eye,
                      const cv::Vec3d& ray) {
    const auto at_height = [&](double z) {
        const cv::Vec3d p = eye.at + ray * ((z - eye.at[2]) / ray[2]);
        return cv::Point2d(p[0], p[1]);
    };
    const cv::Point2d ground = at_height(0);
    for (std::size_t i = 0; i < masks.size(); ++i) {
        const Thing& thing = scene.things[i];
        if (masks[i].at(masks[i].inside, at_height(thing.height_mm)) > 0.5) {
            const cv::Point2d p = at_height(thing.height_mm) - thing.outline.front();
            const bool blank = thing.shine > 0 && std::fmod(std::abs(p.x + p.y), 14) < 14 * thing.shine;
            return blank ? cv::Vec3d(1.0, 1.0, 1.0) : thing.color;
        }
        for (double z = thing.height_mm - 1; thing.walls && z >= 0; z -= 1)
            if (masks[i].at(masks[i].inside, at_height(z)) > 0.5) return thing.color * 0.7;
    }
    const auto paper = ink(scene, ground);
    double light = 1;
    if (scene.shade > 0)
        for (const Mask& mask : masks) light = std::min(light, 1 - scene.shade * mask.at(mask.shade, ground));
    if (!paper) return cv::Vec3d(0.25, 0.33, 0.42) * light;
    return cv::Vec3d::all(*paper * light);
}

} // namespace

std::string rendered(const Scene& scene) {
    std::vector<Mask> masks;
    for (const Thing& thing : scene.things) masks.push_back(mask_of(thing, scene.shade, scene.shade_soft_mm));
    const Eye eye = eye_of(scene);
    const cv::Point2d middle((scene.picture.width - 1) / 2.0, (scene.picture.height - 1) / 2.0);
    const double far = cv::norm(middle);
    cv::Mat out(scene.picture, CV_32FC3);
    cv::parallel_for_({0, scene.picture.height}, [&](const cv::Range& rows) {
        for (int y = rows.start; y < rows.end; ++y)
            for (int x = 0; x < scene.picture.width; ++x) {
                cv::Vec3d sum;
                for (const double sub : {-0.25, 0.25}) { // two samples a pixel, on a diagonal
                    const cv::Point2d seen = (cv::Point2d(x + sub, y + sub) - middle) / scene.focal_px;
                    cv::Point2d d = seen; // without distortion: d·(1 + radial·|d|²) = seen
                    for (int k = 0; k < 6 && scene.radial != 0; ++k) d = seen / (1 + scene.radial * d.dot(d));
                    sum += color_along(scene, masks, eye, eye.right * d.x + eye.down * d.y + eye.ahead) * 0.5;
                }
                const double off = cv::norm(cv::Point2d(x, y) - middle) / far;
                const double light =
                    225 * (1 - scene.vignette * off * off) * (1 - 0.08 * x / scene.picture.width);
                out.at<cv::Vec3f>(y, x) = cv::Vec3f(cv::Vec3d(0.93 * sum[0], 0.98 * sum[1], sum[2]) * light);
            }
    });
    cv::GaussianBlur(out, out, {}, scene.blur_px);
    cv::Mat noise(out.size(), CV_32FC3);
    cv::RNG random(7);
    random.fill(noise, cv::RNG::NORMAL, 0, scene.noise);
    out += noise;
    cv::Mat levels;
    out.convertTo(levels, CV_8UC3);
    std::vector<uchar> bytes;
    if (scene.jpeg_quality > 0)
        cv::imencode(".jpg", levels, bytes, {cv::IMWRITE_JPEG_QUALITY, scene.jpeg_quality});
    else
        cv::imencode(".png", levels, bytes);
    return {bytes.begin(), bytes.end()};
}

std::vector<cv::Point2d> round_thing(cv::Point2d middle, double radius) {
    std::vector<cv::Point2d> out;
    for (int i = 0; i < 180; ++i)
        out.push_back(middle + radius * cv::Point2d(std::cos(i * CV_PI / 90), std::sin(i * CV_PI / 90)));
    return out;
}

static cv::Point2d turned(cv::Point2d p, double deg) {
    const double c = std::cos(deg * turn_to_rad), s = std::sin(deg * turn_to_rad);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

std::vector<cv::Point2d> box_thing(cv::Point2d middle, double width, double height, double turn) {
    std::vector<cv::Point2d> out;
    for (const cv::Point2d corner : {cv::Point2d(-1, -1), {1, -1}, {1, 1}, {-1, 1}})
        out.push_back(middle + turned({corner.x * width / 2, corner.y * height / 2}, turn));
    return out;
}

std::vector<cv::Point2d> tool_thing(cv::Point2d middle, double turn) {
    std::vector<cv::Point2d> out;
    for (int i = 0; i < 360; ++i) { // a waist: radius by angle, smooth
        const double a = i * turn_to_rad;
        const cv::Point2d p(48 * std::cos(a), (9 + 7 * std::cos(2 * a) * std::cos(2 * a)) * std::sin(a));
        out.push_back(middle + turned(p, turn));
    }
    return out;
}

double farthest_apart(const std::vector<cv::Point2d>& a, const std::vector<cv::Point2d>& b) {
    const auto one_way = [](const auto& from, const auto& to) {
        double most = 0;
        for (std::size_t i = 0; i < from.size(); ++i)
            for (const double share : {0.0, 0.25, 0.5, 0.75}) {
                const cv::Point2d p = from[i] * (1 - share) + from[(i + 1) % from.size()] * share;
                double least = 1e9;
                for (std::size_t k = 0; k < to.size(); ++k) {
                    const cv::Point2d side = to[(k + 1) % to.size()] - to[k];
                    const double t =
                        std::clamp((p - to[k]).dot(side) / std::max(1e-12, side.dot(side)), 0.0, 1.0);
                    least = std::min(least, cv::norm(to[k] + side * t - p));
                }
                most = std::max(most, least);
            }
        return most;
    };
    return std::max(one_way(a, b), one_way(b, a));
}

} // namespace drawercast::capture
