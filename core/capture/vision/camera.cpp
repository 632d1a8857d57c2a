// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/camera.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {

namespace {

struct Stand {
    double distance_mm = 0;
    cv::Point2d foot;
};

/// The homography from the sheet to picture coordinates about the middle: columns h1, h2, h3 = K·(r1, r2, t).
cv::Matx33d from_sheet(const View& ground) {
    const cv::Matx33d to_middle(1, 0, -ground.middle.x, 0, 1, -ground.middle.y, 0, 0, 1);
    return to_middle * ground.to_sheet.inv();
}

/// r1 ⟂ r2 and |r1| = |r2| (Zhang 2000, eq. 3 and 4), square pixels, principal point in the middle: two
/// linear equations for f², by least squares.
std::optional<double> focal_px(const cv::Matx33d& h) {
    const double a = h(0, 0) * h(0, 1) + h(1, 0) * h(1, 1), b = h(2, 0) * h(2, 1);
    const double c = h(0, 0) * h(0, 0) + h(1, 0) * h(1, 0) - h(0, 1) * h(0, 1) - h(1, 1) * h(1, 1);
    const double d = h(2, 0) * h(2, 0) - h(2, 1) * h(2, 1);
    const double below = b * b + d * d;
    const double square = below > 0 ? -(a * b + c * d) / below : -1;
    if (!(square > 0)) return std::nullopt;
    return std::sqrt(square);
}

Stand stand(const cv::Matx33d& h, double focal) {
    const cv::Vec3d r1(h(0, 0) / focal, h(1, 0) / focal, h(2, 0)),
        r2(h(0, 1) / focal, h(1, 1) / focal, h(2, 1));
    const cv::Vec3d t(h(0, 2) / focal, h(1, 2) / focal, h(2, 2));
    const double scale = 2 / (cv::norm(r1) + cv::norm(r2));
    const cv::Vec3d x = r1 * scale, y = r2 * scale, at = t * scale;
    const cv::Vec3d z = x.cross(y);
    return {std::abs(z.dot(at)), {-x.dot(at), -y.dot(at)}};
}

/// Relative spread of the distance when each sighting is off by `off_px`; a fixed pattern, so that the same
/// picture gives the same answer.
double spread(const View& ground, std::vector<Sighting> sightings, double off_px, double distance) {
    cv::RNG random(1);
    const std::vector<Sighting> seen = sightings;
    double sum = 0;
    constexpr int rounds = 12;
    const cv::Size size(cvRound(2 * ground.middle.x + 1), cvRound(2 * ground.middle.y + 1));
    for (int i = 0; i < rounds; ++i) {
        for (std::size_t k = 0; k < seen.size(); ++k)
            sightings[k].seen = seen[k].seen + cv::Point2d(random.gaussian(off_px), random.gaussian(off_px));
        const auto other = fitted_ground(sightings, size);
        const auto focal = other ? focal_px(from_sheet(*other)) : std::nullopt;
        if (!focal) return 1;
        const double off = stand(from_sheet(*other), *focal).distance_mm / distance - 1;
        sum += off * off;
    }
    return std::sqrt(sum / rounds);
}

/// What a line between two corners would be taken for if the lens bent the picture: direction and point.
cv::Vec4f bent_side(const View& ground, cv::Point2d from, cv::Point2d to, double bend) {
    constexpr int points = 31;
    std::vector<cv::Point2f> side;
    for (int i = 0; i < points; ++i) {
        const cv::Point2d off = from + (to - from) * (static_cast<double>(i) / (points - 1)) - ground.middle;
        const double share = cv::norm(off) / ground.half_diagonal;
        side.emplace_back(ground.middle + off * (1 + bend * share * share));
    }
    cv::Vec4f line;
    cv::fitLine(side, line, cv::DIST_L2, 0, 0.01, 0.01);
    return line;
}

/// Relative change of the distance if the lens bends the picture's corners in or out by as much as is usual:
/// the four sides of a plain sheet can't tell it from perspective. 1 where it can't be told at all.
double bend_doubt(const View& ground, const std::vector<Sighting>& seen, double distance) {
    constexpr double usual_bend = 0.02; // of the radius, at the picture's corner (our guess)
    const cv::Size size(cvRound(2 * ground.middle.x + 1), cvRound(2 * ground.middle.y + 1));
    double most = 0;
    for (const double bend : {usual_bend, -usual_bend}) {
        std::vector<cv::Vec4f> sides;
        for (std::size_t i = 0; i < seen.size(); ++i)
            sides.push_back(bent_side(ground, seen[i].seen, seen[(i + 1) % seen.size()].seen, bend));
        std::vector<Sighting> bent = seen;
        for (std::size_t i = 0; i < seen.size(); ++i) {
            const cv::Vec4d a = sides[(i + seen.size() - 1) % seen.size()], b = sides[i];
            const cv::Point2d da(a[0], a[1]), db(b[0], b[1]), pa(a[2], a[3]), pb(b[2], b[3]);
            bent[i].seen = pa + da * ((pb - pa).cross(db) / da.cross(db));
        }
        const auto other = fitted_ground(bent, size);
        const auto focal = other ? focal_px(from_sheet(*other)) : std::nullopt;
        if (!focal) return 1;
        most = std::max(most, std::abs(stand(from_sheet(*other), *focal).distance_mm / distance - 1));
    }
    return most;
}

Camera at(const Stand& stood, CameraBy by, double within) {
    return {by, stood.distance_mm, within * stood.distance_mm, {stood.foot.x, stood.foot.y}};
}

} // namespace

Camera camera_of(const View& ground, const std::vector<Sighting>& sightings, const PictureHeader& header,
                 std::optional<double> typed_mm) {
    const cv::Matx33d h = from_sheet(ground);
    if (typed_mm) {
        double low = 10, high = 1e6; // the distance grows with the focal length
        for (int i = 0; i < 60; ++i) {
            const double middle = std::sqrt(low * high);
            (stand(h, middle).distance_mm < *typed_mm ? low : high) = middle;
        }
        Camera camera = at(stand(h, low), CameraBy::typed, 0.01);
        camera.distance_mm = *typed_mm;
        return camera;
    }
    if (const auto focal = focal_px(h)) {
        const Stand stood = stand(h, *focal);
        const bool lens_known = sightings.size() > 4;
        const double noise = spread(ground, sightings, lens_known ? 0.12 : 0.3, stood.distance_mm);
        const double bend = lens_known ? 0 : bend_doubt(ground, sightings, stood.distance_mm);
        const double within = std::hypot(noise, bend);
        if (within < 0.1) return at(stood, CameraBy::perspective, within);
    }
    if (header.focal_as_35mm) {
        const double film =
            std::hypot(36.0, 24.0); // the picture's diagonal stands for 35 mm film's (Exif 2.3)
        return at(stand(h, *header.focal_as_35mm * 2 * ground.half_diagonal / film), CameraBy::file, 0.05);
    }
    return {};
}

} // namespace drawercast::capture
