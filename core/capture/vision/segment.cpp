// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/segment.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace drawercast::capture {

namespace {

// Shares of the paper's light. Chosen on rendered pictures, held by the tests there.
constexpr float darker = 0.88f, lighter = 1.2f, colored = 0.11f;
constexpr float shadow_colored = 0.075f, shadow_darkest = 0.40f;
constexpr float doubted_darkest = 0.10f; // a bare lamp's shadow is nearly as dark as a black thing
constexpr double sharp_per_mm = 0.28;    // change of light over a mm that no lamp's half-shadow has
constexpr double soft_share = 0.25;      // of a gray part's edge, to count as shadow

cv::Mat disk(double radius_px) {
    const int side = 2 * std::max(1, cvRound(radius_px)) + 1;
    return cv::getStructuringElement(cv::MORPH_ELLIPSE, {side, side});
}

struct Parts {
    cv::Mat light, differs, far_from_paper, gray, neutral;
};

Parts parts_of(const cv::Mat& ratio) {
    Parts out{cv::Mat(ratio.size(), CV_32F), cv::Mat(ratio.size(), CV_32F), cv::Mat(ratio.size(), CV_8U),
              cv::Mat(ratio.size(), CV_8U), cv::Mat(ratio.size(), CV_8U)};
    for (int y = 0; y < ratio.rows; ++y) {
        const auto* from = ratio.ptr<cv::Vec3f>(y);
        for (int x = 0; x < ratio.cols; ++x) {
            const cv::Vec3f p = from[x];
            const float light = (p[0] + p[1] + p[2]) / 3;
            const float color = std::max({p[0], p[1], p[2]}) - std::min({p[0], p[1], p[2]});
            out.light.at<float>(y, x) = light;
            const cv::Vec3f d(1 - p[0], 1 - p[1], 1 - p[2]);
            out.differs.at<float>(y, x) = std::sqrt(d.dot(d) / 3);
            const bool far = light < darker || light > lighter || color > colored;
            out.far_from_paper.at<uchar>(y, x) = far ? 255 : 0;
            const bool neutral = far && light < lighter && light > doubted_darkest && color < shadow_colored;
            out.neutral.at<uchar>(y, x) = neutral ? 255 : 0;
            out.gray.at<uchar>(y, x) = neutral && light > shadow_darkest ? 255 : 0;
        }
    }
    return out;
}

cv::Mat steepness(const cv::Mat& light, double px_per_mm) {
    cv::Mat across, down, out;
    cv::Sobel(light, across, CV_32F, 1, 0, 3, px_per_mm / 8);
    cv::Sobel(light, down, CV_32F, 0, 1, 3, px_per_mm / 8);
    cv::magnitude(across, down, out);
    return out;
}

/// The gray parts whose edge towards the paper is soft.
cv::Mat shadows(const cv::Mat& gray, const cv::Mat& far_from_paper, const cv::Mat& sharp) {
    cv::Mat quiet = gray & ~sharp, labels;
    const int count = cv::connectedComponents(quiet, labels, 4, CV_32S);
    std::vector<int> soft(static_cast<std::size_t>(count)), hard(soft);
    for (int y = 1; y + 1 < gray.rows; ++y)
        for (int x = 1; x + 1 < gray.cols; ++x) {
            const int label = labels.at<int>(y, x);
            if (label == 0) continue;
            const auto k = static_cast<std::size_t>(label);
            for (const cv::Point d : {cv::Point(1, 0), cv::Point(-1, 0), cv::Point(0, 1), cv::Point(0, -1)}) {
                if (sharp.at<uchar>(y + d.y, x + d.x))
                    ++hard[k];
                else if (!far_from_paper.at<uchar>(y + d.y, x + d.x))
                    ++soft[k];
            }
        }
    cv::Mat out = cv::Mat::zeros(gray.size(), CV_8U);
    for (int y = 0; y < gray.rows; ++y)
        for (int x = 0; x < gray.cols; ++x) {
            const auto k = static_cast<std::size_t>(labels.at<int>(y, x));
            if (k > 0 && soft[k] > soft_share * (soft[k] + hard[k])) out.at<uchar>(y, x) = 255;
        }
    return out;
}

cv::Mat filled(const cv::Mat& mask) {
    std::vector<std::vector<cv::Point>> contours;
    cv::findContours(mask, contours, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
    cv::Mat out = cv::Mat::zeros(mask.size(), CV_8U);
    cv::drawContours(out, contours, -1, 255, cv::FILLED);
    return out;
}

} // namespace

Segmented segmented(const cv::Mat& against_paper, double px_per_mm, const Brush& brush) {
    cv::Mat calm;
    cv::GaussianBlur(against_paper, calm, {}, 0.12 * px_per_mm);
    Parts parts = parts_of(calm);
    cv::Mat sharp = steepness(parts.light, px_per_mm) > sharp_per_mm;
    const cv::Mat shadow = shadows(parts.gray, parts.far_from_paper, sharp);
    cv::Mat mask = parts.far_from_paper & ~shadow;
    cv::morphologyEx(mask, mask, cv::MORPH_CLOSE, disk(0.3 * px_per_mm));
    mask = filled(mask);
    cv::morphologyEx(mask, mask, cv::MORPH_OPEN, disk(0.6 * px_per_mm));
    cv::Mat said = cv::Mat::zeros(mask.size(), CV_8U);
    if (brush.size() == mask.total()) {
        const cv::Mat laid(mask.size(), CV_8U, const_cast<std::uint8_t*>(brush.data()));
        said = laid == 1;
        mask.setTo(255, said);
        mask.setTo(0, laid == 2);
    }
    return {filled(mask), parts.differs, mask & parts.neutral & ~sharp & ~said, said};
}

} // namespace drawercast::capture
