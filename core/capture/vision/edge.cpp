// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/edge.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace drawercast::capture {

namespace {

constexpr double reach_mm = 1.2, plain_mm = 0.3, step_px = 0.25;
constexpr double contrast_least = 0.06;

double level(const cv::Mat& differs, cv::Point2d p) {
    const double x = std::clamp(p.x, 0.0, differs.cols - 1.001),
                 y = std::clamp(p.y, 0.0, differs.rows - 1.001);
    const int i = static_cast<int>(x), j = static_cast<int>(y);
    const double u = x - i, v = y - j;
    const auto at = [&](int dy, int dx) { return static_cast<double>(differs.at<float>(j + dy, i + dx)); };
    return (at(0, 0) * (1 - u) + at(0, 1) * u) * (1 - v) + (at(1, 0) * (1 - u) + at(1, 1) * u) * v;
}

/// Even steps of about a pixel along the closed line.
std::vector<cv::Point2d> even(const std::vector<cv::Point>& rim, double step) {
    std::vector<cv::Point2d> out;
    double carried = 0;
    for (std::size_t i = 0; i < rim.size(); ++i) {
        const cv::Point2d a = rim[i], b = rim[(i + 1) % rim.size()];
        const double length = cv::norm(b - a);
        for (; carried < length; carried += step) out.push_back(a + (b - a) * (carried / length));
        carried -= length;
    }
    return out;
}

/// Gauss weights over the closed line.
std::vector<cv::Point2d> smooth(const std::vector<cv::Point2d>& line, double sigma) {
    const int reach = std::max(1, cvCeil(3 * sigma)), n = static_cast<int>(line.size());
    if (n < 2 * reach + 1) return line;
    std::vector<double> weights;
    double sum = 0;
    for (int k = -reach; k <= reach; ++k)
        sum += weights.emplace_back(std::exp(-0.5 * k * k / (sigma * sigma)));
    std::vector<cv::Point2d> out(line.size());
    for (int i = 0; i < n; ++i)
        for (int k = -reach; k <= reach; ++k)
            out[static_cast<std::size_t>(i)] += line[static_cast<std::size_t>((i + k + n) % n)] *
                                                (weights[static_cast<std::size_t>(k + reach)] / sum);
    return out;
}

struct Crossing {
    double off = 0, width = 0;
};

/// Along `out` from `at`: where the level falls through the middle, nearest to the rim.
std::optional<Crossing> crossing(const cv::Mat& differs, cv::Point2d at, cv::Point2d out, double px_per_mm) {
    const double reach = reach_mm * px_per_mm, plain = plain_mm * px_per_mm;
    double inside = 0, outside = 0;
    int n = 0;
    for (double s = 0; s <= plain; s += 2 * step_px, ++n) {
        inside += level(differs, at - out * (reach - s));
        outside += level(differs, at + out * (reach - s));
    }
    inside /= n, outside /= n;
    if (inside - outside < contrast_least) return std::nullopt;
    const auto falls = [&](double share) -> std::optional<double> {
        const double wanted = outside + share * (inside - outside);
        std::optional<double> best;
        double before = level(differs, at - out * reach);
        for (double s = -reach + step_px; s <= reach; s += step_px) {
            const double now = level(differs, at + out * s);
            if (before >= wanted && now < wanted) {
                const double where = s - step_px * (wanted - now) / (before - now);
                if (!best || std::abs(where) < std::abs(*best)) best = where;
            }
            before = now;
        }
        return best;
    };
    const auto half = falls(0.5), high = falls(0.8), low = falls(0.2);
    if (!half) return std::nullopt;
    return Crossing{*half, high && low ? std::abs(*low - *high) : reach};
}

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<long>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

Edge edge_of(const std::vector<cv::Point>& rim, const cv::Mat& differs, double px_per_mm,
             double smoothing_px) {
    const std::vector<cv::Point2d> rough = even(rim, 1);
    const std::vector<cv::Point2d> guide = smooth(rough, 0.35 * px_per_mm);
    const std::size_t n = guide.size();
    std::vector<cv::Point2d> fine(n), normals(n);
    std::vector<double> widths;
    double turn = 0;
    for (std::size_t i = 0; i < n; ++i) turn += guide[i].cross(guide[(i + 1) % n]);
    for (std::size_t i = 0; i < n; ++i) {
        const cv::Point2d along = guide[(i + 2) % n] - guide[(i + n - 2) % n];
        const double length = std::max(1e-9, cv::norm(along));
        normals[i] = cv::Point2d(along.y, -along.x) * ((turn > 0 ? 1 : -1) / length);
        const auto found = crossing(differs, rough[i], normals[i], px_per_mm);
        fine[i] = rough[i] + normals[i] * (found ? found->off : 0);
        if (found) widths.push_back(found->width);
    }
    Edge out;
    out.points = smooth(fine, 0.3 * px_per_mm);
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const cv::Point2d moved = out.points[i] - fine[i];
        const double by = cv::norm(moved), across = moved.dot(normals[i]);
        sum += across * across;
        if (by > smoothing_px) out.points[i] = fine[i] + moved * (smoothing_px / by);
    }
    out.scatter_px = n > 0 ? std::sqrt(sum / static_cast<double>(n)) : 0;
    out.blur_px = median(widths);
    return out;
}

} // namespace drawercast::capture
