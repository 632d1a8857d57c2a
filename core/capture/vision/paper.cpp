// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/paper.h"

#include <algorithm>
#include <array>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace drawercast::capture {

namespace {

using Terms = cv::Vec<double, 6>;

Terms terms(double x, double y) { return {1, x, y, x * x, x * y, y * y}; }

/// Normal equations of the surfaces through the pixels that `counts`.
std::array<Terms, 3> surfaces(const cv::Mat& small, const cv::Mat& counts) {
    cv::Matx<double, 6, 6> normal = cv::Matx<double, 6, 6>::eye() * 1e-9;
    std::array<Terms, 3> right{};
    for (int y = 0; y < small.rows; ++y)
        for (int x = 0; x < small.cols; ++x) {
            if (!counts.at<uchar>(y, x)) continue;
            const Terms t = terms(2.0 * x / small.cols - 1, 2.0 * y / small.rows - 1);
            normal += t * t.t();
            for (int c = 0; c < 3; ++c)
                right[static_cast<std::size_t>(c)] += t * static_cast<double>(small.at<cv::Vec3f>(y, x)[c]);
        }
    std::array<Terms, 3> out;
    for (std::size_t c = 0; c < 3; ++c) out[c] = normal.solve(right[c], cv::DECOMP_CHOLESKY);
    return out;
}

cv::Mat drawn(const std::array<Terms, 3>& surface, cv::Size size) {
    cv::Mat out(size, CV_32FC3);
    for (int y = 0; y < size.height; ++y)
        for (int x = 0; x < size.width; ++x) {
            const Terms t = terms(2.0 * x / size.width - 1, 2.0 * y / size.height - 1);
            for (int c = 0; c < 3; ++c)
                out.at<cv::Vec3f>(y, x)[c] =
                    static_cast<float>(std::max(8.0, surface[static_cast<std::size_t>(c)].dot(t)));
        }
    return out;
}

float green_at_share(const cv::Mat& small, double share) {
    std::vector<float> greens;
    for (int y = 0; y < small.rows; ++y)
        for (int x = 0; x < small.cols; ++x) greens.push_back(small.at<cv::Vec3f>(y, x)[1]);
    const auto at = greens.begin() + static_cast<long>(share * static_cast<double>(greens.size() - 1));
    std::nth_element(greens.begin(), at, greens.end());
    return *at;
}

} // namespace

std::optional<cv::Mat> against_paper(const cv::Mat& bgr, double px_per_mm) {
    cv::Mat small, wide;
    cv::resize(bgr, small, {}, 1 / px_per_mm, 1 / px_per_mm, cv::INTER_AREA);
    small.convertTo(wide, CV_32FC3);
    // Paper is among the lightest there is; the first guess is level, each next one bends nearer to it.
    const float light = green_at_share(wide, 0.9);
    cv::Mat model(wide.size(), CV_32FC3, cv::Scalar::all(static_cast<double>(light)));
    cv::Mat counts(wide.size(), CV_8U);
    int counted = 0;
    for (const float below : {0.4f, 0.22f, 0.14f, 0.10f, 0.08f, 0.07f, 0.07f, 0.07f}) {
        counted = 0;
        for (int y = 0; y < wide.rows; ++y)
            for (int x = 0; x < wide.cols; ++x) {
                const float is = wide.at<cv::Vec3f>(y, x)[1], paper = model.at<cv::Vec3f>(y, x)[1];
                const bool near = is > (1 - below) * paper && is < (1 + 1.6f * below) * paper;
                counts.at<uchar>(y, x) = near ? 1 : 0;
                counted += near ? 1 : 0;
            }
        if (counted < 60) return std::nullopt;
        model = drawn(surfaces(wide, counts), wide.size());
    }
    if (counted < 0.1 * static_cast<double>(wide.total())) return std::nullopt;
    cv::Mat paper, picture, ratio;
    cv::resize(model, paper, bgr.size(), 0, 0, cv::INTER_LINEAR);
    bgr.convertTo(picture, CV_32FC3);
    cv::divide(picture, paper, ratio);
    return ratio;
}

} // namespace drawercast::capture
