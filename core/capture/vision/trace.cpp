// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/parallax.h"
#include "capture/vision/answers.h"
#include "capture/vision/edge.h"
#include "capture/vision/paper.h"
#include "capture/vision/segment.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {

namespace {

constexpr double object_least_mm2 = 25, stray_most_mm2 = 100, blur_most_mm = 1.0;
constexpr double doubt_share = 0.04, whole_share = 0.7;
constexpr double streak_most_mm = 5;
constexpr std::size_t outlines_most = 60;

Problem problem(const char* code, Phrase what, Phrase fix) {
    return {code, {}, std::move(what), std::move(fix)};
}

Expected<FoundOutline> outline_of(const Edge& edge, const FlatPicture& flat, const Tracing& tracing) {
    std::vector<cv::Point2f> line, few;
    for (const cv::Point2d p : edge.points) line.emplace_back(p);
    const double tolerance_mm = tracing.smoothing_mm / 2;
    cv::approxPolyDP(line, few, tolerance_mm * flat.px_per_mm, true);
    shape::Polygon seen;
    const double high = flat.height_px / flat.px_per_mm;
    for (auto p = few.rbegin(); p != few.rend(); ++p)
        seen.corners.push_back({{(static_cast<double>(p->x) + 0.5) / flat.px_per_mm,
                                 high - (static_cast<double>(p->y) + 0.5) / flat.px_per_mm},
                                0});
    const auto simple = shape::contour_of(seen); // where a line crosses itself nothing is guessed
    if (!simple)
        return problem("capture-crossing", phrase("the edge of an object crosses itself"),
                       phrase("Take a sharper photo, or brush the object by hand"));
    const shape::Ring ring = shape::traced(*simple);
    const auto base = without_parallax(ring, flat.camera, tracing.height_mm, tracing.walls);
    if (!base) return base.error();
    FoundOutline out;
    out.at = shape::bounds(*base).center();
    for (const shape::Vec corner : *base) out.polygon.corners.push_back({corner - out.at, 0});
    const double farthest = parallax_doubt(ring, flat.camera, tracing.height_mm);
    // Independent parts, each one standard deviation: points, sheet, an eighth of the blur (a lighter or
    // darker rim moves the half-way place; our guess), simplifying, parallax.
    const double parts[] = {edge.scatter_px / flat.px_per_mm, flat.misfit_mm,
                            edge.blur_px / 8 / flat.px_per_mm, tolerance_mm / 2, farthest};
    double sum = 0;
    for (const double part : parts) sum += part * part;
    out.band_mm = 2 * std::sqrt(sum) + tracing.smoothing_mm; // which is no chance but a limit
    return out;
}

bool over_the_edge(const cv::Rect& box, cv::Size size) {
    return box.x <= 1 || box.y <= 1 || box.br().x >= size.width - 1 || box.br().y >= size.height - 1;
}

/// Whether even gray parts of it, set off by sharp edges, are more than specks and not the whole. Parts that
/// the brush ties together are one.
bool maybe_shadow(const std::vector<cv::Point>& rim, const cv::Rect& box, const Segmented& seen,
                  double area_px2) {
    cv::Mat inside = cv::Mat::zeros(box.size(), CV_8U), labels, sizes, middles;
    cv::drawContours(inside, std::vector<std::vector<cv::Point>>{rim}, 0, 255, cv::FILLED, cv::LINE_8, {}, 0,
                     -box.tl());
    const cv::Mat doubt = inside & seen.doubt(box);
    const int parts =
        cv::connectedComponentsWithStats(doubt | (inside & seen.said(box)), labels, sizes, middles, 4);
    std::vector<bool> whole(static_cast<std::size_t>(parts));
    for (int part = 1; part < parts; ++part)
        whole[static_cast<std::size_t>(part)] =
            sizes.at<int>(part, cv::CC_STAT_AREA) >= whole_share * area_px2;
    int sum = 0; // a narrow shadow falls into pieces
    for (int y = 0; y < box.height; ++y)
        for (int x = 0; x < box.width; ++x)
            sum += doubt.at<uchar>(y, x) && !whole[static_cast<std::size_t>(labels.at<int>(y, x))];
    return sum > doubt_share * area_px2;
}

shape::Ring standing(const FoundOutline& found) {
    shape::Ring ring;
    for (const shape::Corner& corner : found.polygon.corners) ring.push_back(corner.at + found.at);
    return ring;
}

bool come_near(const shape::Ring& a, const shape::Ring& b, double within_mm) {
    if (!shape::near(shape::bounds(a), shape::bounds(b), within_mm)) return false;
    const auto corners_near_sides = [within_mm](const shape::Ring& points, const shape::Ring& sides) {
        for (const shape::Vec p : points)
            for (std::size_t i = 0; i < sides.size(); ++i) {
                const shape::Vec from = sides[i], along = sides[(i + 1) % sides.size()] - from;
                const double t =
                    std::clamp(dot(p - from, along) / std::max(1e-12, dot(along, along)), 0.0, 1.0);
                if (length(from + along * t - p) < within_mm) return true;
            }
        return false;
    };
    return corners_near_sides(a, b) || corners_near_sides(b, a);
}

/// A blank streak is as white as paper: where it crosses a thing, two are seen.
void doubt_neighbors(std::vector<FoundOutline>& outlines) {
    for (std::size_t i = 0; i < outlines.size(); ++i)
        for (std::size_t k = i + 1; k < outlines.size(); ++k)
            if (come_near(standing(outlines[i]), standing(outlines[k]), streak_most_mm))
                outlines[i].maybe_part = outlines[k].maybe_part = true;
}

/// One lamp lights all: where one throws a shadow, so do the others, whether it could be told apart or not.
void doubt_under_one_lamp(std::vector<FoundOutline>& outlines) {
    const auto shadowed = [](const FoundOutline& found) { return found.maybe_shadow; };
    if (std::any_of(outlines.begin(), outlines.end(), shadowed))
        for (FoundOutline& found : outlines) found.maybe_shadow = true;
}

Expected<Traced> traced(const cv::Mat& bgr, const FlatPicture& flat, const Tracing& tracing,
                        const Brush& brush) {
    const auto ratio = against_paper(bgr, flat.px_per_mm);
    if (!ratio)
        return problem("capture-no-paper", phrase("too little bare paper is seen around the objects"),
                       phrase("Lay fewer objects on the sheet, apart from each other, in even light"));
    const Segmented parts = segmented(*ratio, flat.px_per_mm, brush);
    std::vector<std::vector<cv::Point>> rims;
    cv::findContours(parts.mask, rims, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
    std::sort(rims.begin(), rims.end(),
              [](const auto& a, const auto& b) { return cv::contourArea(a) > cv::contourArea(b); });
    Traced out;
    const double px2 = flat.px_per_mm * flat.px_per_mm;
    for (const auto& rim : rims) {
        const double area_mm2 = cv::contourArea(rim) / px2;
        if (area_mm2 < object_least_mm2) break;
        const cv::Rect box = cv::boundingRect(rim);
        if (over_the_edge(box, parts.mask.size())) {
            if (area_mm2 < stray_most_mm2) continue; // a smudge at the rim
            return problem("capture-over-edge", phrase("something reaches over the edge of the field"),
                           phrase("Lay the objects inside the field, or brush away what is no object"));
        }
        const Edge edge = edge_of(rim, parts.differs, flat.px_per_mm, tracing.smoothing_mm * flat.px_per_mm);
        if (edge.blur_px > blur_most_mm * flat.px_per_mm)
            return problem("capture-blurred", phrase("the edge of an object is blurred over more than 1 mm"),
                           phrase("Hold the camera still, focus on the object, or take more light"));
        auto outline = outline_of(edge, flat, tracing);
        if (!outline) return outline.error();
        FoundOutline found = std::move(*outline);
        found.maybe_shadow = maybe_shadow(rim, box, parts, area_mm2 * px2);
        out.outlines.push_back(std::move(found));
        if (out.outlines.size() > outlines_most)
            return problem("capture-many", phrase("more than 60 objects are seen"),
                           phrase("Photograph fewer at a time"));
    }
    if (out.outlines.empty())
        return problem("capture-nothing", phrase("no object stands out from the paper"),
                       phrase("Take more light, or brush over the object by hand"));
    doubt_neighbors(out.outlines);
    doubt_under_one_lamp(out.outlines);
    if (tracing.height_mm > 0 && flat.camera.by != CameraBy::nothing)
        out.enlarged_by = flat.camera.distance_mm / (flat.camera.distance_mm - tracing.height_mm);
    return out;
}

} // namespace

Expected<Traced> vision::traced_objects(const FlatPicture& flat, const Tracing& tracing, const Brush& brush) {
    const auto expected =
        static_cast<std::size_t>(flat.width_px) * static_cast<std::size_t>(flat.height_px) * 3;
    if (flat.width_px < 16 || flat.height_px < 16 || flat.bgr.size() != expected)
        return problem("capture-small", phrase("the picture is too small to measure in"),
                       phrase("Take a larger one"));
    if (tracing.height_mm > 0 && !flat.scanned && flat.camera.by == CameraBy::nothing)
        return problem("capture-no-distance",
                       phrase("how far the camera was can't be told from this picture"),
                       phrase("Type the distance from lens to sheet"));
    if (flat.camera.by != CameraBy::nothing && tracing.height_mm >= 0.8 * flat.camera.distance_mm)
        return problem("capture-too-high", phrase("the objects are nearly as high as the camera was"),
                       phrase("Go farther away"));
    const cv::Mat bgr(flat.height_px, flat.width_px, CV_8UC3, const_cast<std::uint8_t*>(flat.bgr.data()));
    return traced(bgr, flat, tracing, brush);
}

} // namespace drawercast::capture
