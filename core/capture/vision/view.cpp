// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/view.h"

#include <cmath>
#include <opencv2/calib3d.hpp>

namespace drawercast::capture {

namespace {

constexpr double radial_most = 0.25; // beyond any lens that maps straight lines to nearly straight ones
constexpr std::size_t sightings_for_lens = 8;

std::optional<View> with_radial(const std::vector<Sighting>& sightings, View ground) {
    std::vector<cv::Point2d> from, to;
    for (const Sighting& one : sightings) {
        from.push_back(ground.straight(one.seen));
        to.push_back(one.sheet);
    }
    const cv::Mat found = cv::findHomography(from, to, 0);
    if (found.empty()) return std::nullopt;
    ground.to_sheet = cv::Matx33d(found);
    if (std::abs(cv::determinant(ground.to_sheet)) < 1e-14) return std::nullopt;
    return ground;
}

} // namespace

cv::Point2d mapped(const cv::Matx33d& by, cv::Point2d p) {
    const cv::Vec3d q = by * cv::Vec3d(p.x, p.y, 1);
    return {q[0] / q[2], q[1] / q[2]};
}

cv::Point2d View::straight(cv::Point2d at) const {
    const cv::Point2d d = (at - middle) / half_diagonal;
    return middle + (at - middle) * (1 + radial * d.dot(d));
}

cv::Point2d View::seen(cv::Point2d at) const {
    const cv::Point2d whole = at - middle;
    cv::Point2d d = whole;
    for (int i = 0; i < 8; ++i) { // contracts by about 2·radial·r² each time
        const cv::Point2d r = d / half_diagonal;
        d = whole / (1 + radial * r.dot(r));
    }
    return middle + d;
}

cv::Point2d View::on_sheet(cv::Point2d at) const { return mapped(to_sheet, straight(at)); }
cv::Point2d View::in_picture(cv::Point2d at) const { return seen(mapped(to_sheet.inv(), at)); }

double misfit_mm(const View& ground, const std::vector<Sighting>& sightings) {
    double sum = 0;
    for (const Sighting& one : sightings) {
        const cv::Point2d left = ground.on_sheet(one.seen) - one.sheet;
        sum += left.dot(left);
    }
    return std::sqrt(sum / static_cast<double>(sightings.size()));
}

std::optional<View> fitted_ground(const std::vector<Sighting>& sightings, cv::Size picture) {
    View ground;
    ground.middle = {(picture.width - 1) / 2.0, (picture.height - 1) / 2.0};
    ground.half_diagonal = std::hypot(picture.width, picture.height) / 2;
    if (sightings.size() < 4) return std::nullopt;
    if (sightings.size() < sightings_for_lens) return with_radial(sightings, ground);
    const auto left_over = [&](double radial) {
        ground.radial = radial;
        const auto fit = with_radial(sightings, ground);
        return fit ? misfit_mm(*fit, sightings) : 1e9;
    };
    // Golden section: what is left over has one valley in the one coefficient.
    const double golden = (std::sqrt(5.0) - 1) / 2;
    double low = -radial_most, high = radial_most;
    double a = high - golden * (high - low), b = low + golden * (high - low);
    double at_a = left_over(a), at_b = left_over(b);
    while (high - low > 1e-5) {
        if (at_a < at_b) {
            high = b, b = a, at_b = at_a;
            a = high - golden * (high - low), at_a = left_over(a);
        } else {
            low = a, a = b, at_a = at_b;
            b = low + golden * (high - low), at_b = left_over(b);
        }
    }
    ground.radial = (low + high) / 2;
    return with_radial(sightings, ground);
}

double coarsest_scale(const View& ground, cv::Rect2d field) {
    double least = 1e9;
    for (const double u : {0.0, 0.5, 1.0})
        for (const double v : {0.0, 0.5, 1.0}) {
            const cv::Point2d at(field.x + u * field.width, field.y + v * field.height);
            const cv::Point2d here = ground.in_picture(at);
            const cv::Point2d across = ground.in_picture(at + cv::Point2d(1, 0)) - here;
            const cv::Point2d down = ground.in_picture(at + cv::Point2d(0, 1)) - here;
            // The lesser singular value of the 2 × 2 map.
            const double sum = across.dot(across) + down.dot(down), area = across.cross(down);
            const double root = std::sqrt(std::max(0.0, sum * sum - 4 * area * area));
            least = std::min(least, std::sqrt(std::max(0.0, (sum - root) / 2)));
        }
    return least;
}

} // namespace drawercast::capture
