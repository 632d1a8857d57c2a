// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision/answers.h"
#include "capture/vision/camera.h"
#include "capture/vision/find_targets.h"
#include "capture/vision/read_picture.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace drawercast::capture {

namespace {

constexpr double px_per_mm_least = 3, px_per_mm_most = 8;
constexpr double flat_pixels_most = 12e6;
constexpr double misfit_most_mm = 0.35;
constexpr double plain_margin_mm = 4, scan_margin_mm = 2;

Problem too_coarse(double px_per_mm) {
    return {
        "capture-coarse",
        {},
        phrase("the picture has only %1 pixels to the mm", figure(std::to_string(px_per_mm).substr(0, 3))),
        phrase("Go nearer, or take a photo of more pixels")};
}

double scale_for(double source, cv::Rect2d field) {
    return std::min({source, px_per_mm_most, std::sqrt(flat_pixels_most / field.area())});
}

FlatPicture flat_of(const cv::Mat& bgr, double px_per_mm) {
    FlatPicture flat;
    flat.width_px = bgr.cols;
    flat.height_px = bgr.rows;
    flat.px_per_mm = px_per_mm;
    flat.bgr.assign(bgr.datastart, bgr.datastart + bgr.total() * 3);
    return flat;
}

/// `picture` seen square within `field` of the sheet.
cv::Mat laid_flat(const cv::Mat& picture, const View& ground, cv::Rect2d field, double px_per_mm) {
    const cv::Size size(cvFloor(field.width * px_per_mm), cvFloor(field.height * px_per_mm));
    cv::Mat map(size, CV_32FC2);
    const cv::Matx33d from_sheet = ground.to_sheet.inv();
    for (int y = 0; y < size.height; ++y) {
        auto* row = map.ptr<cv::Vec2f>(y);
        for (int x = 0; x < size.width; ++x) {
            const cv::Point2d on_sheet(field.x + (x + 0.5) / px_per_mm, field.y + (y + 0.5) / px_per_mm);
            const cv::Point2d seen = ground.seen(mapped(from_sheet, on_sheet));
            row[x] = {static_cast<float>(seen.x), static_cast<float>(seen.y)};
        }
    }
    cv::Mat flat;
    cv::remap(picture, flat, map, {}, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return flat;
}

Expected<FlatPicture> scanned(const cv::Mat& picture, const PictureHeader& header, const Shot& shot) {
    const auto dpi = shot.dots_per_inch ? shot.dots_per_inch : header.dots_per_inch;
    if (!dpi)
        return Problem("capture-no-resolution", {}, phrase("the scan does not say its resolution"),
                       phrase("Type the dots per inch it was scanned with"));
    const double source = *dpi / 25.4;
    if (source < px_per_mm_least) return too_coarse(source);
    const int margin = cvCeil(scan_margin_mm * source);
    if (picture.cols < 4 * margin || picture.rows < 4 * margin)
        return Problem("capture-small", {}, phrase("the scan is smaller than 8 mm"),
                       phrase("Type the resolution it was scanned with"));
    const cv::Mat inner =
        picture(cv::Rect(margin, margin, picture.cols - 2 * margin, picture.rows - 2 * margin));
    const double scale = scale_for(source, {0, 0, inner.cols / source, inner.rows / source});
    cv::Mat flat;
    cv::resize(inner, flat, {}, scale / source, scale / source, cv::INTER_AREA);
    FlatPicture out = flat_of(flat, scale);
    out.source_px_per_mm = source;
    out.scanned = true;
    return out;
}

} // namespace

Expected<FlatPicture> vision::flattened(std::string_view file, const Shot& shot) {
    const auto header = picture_header(file);
    if (!header) return header.error();
    const auto picture = read_picture(file, *header);
    if (!picture) return picture.error();
    if (shot.ground == Ground::scan) return scanned(*picture, *header, shot);
    cv::Mat gray;
    cv::cvtColor(*picture, gray, cv::COLOR_BGR2GRAY);
    const bool plain = shot.ground == Ground::plain_sheet;
    const auto sightings = plain ? find_corners(gray, shot.sheet) : find_targets(gray, shot.sheet);
    if (!sightings) return sightings.error();
    const auto ground = fitted_ground(*sightings, gray.size());
    if (!ground)
        return Problem("capture-no-sheet", {}, phrase("the sheet's marks lie on one line"),
                       phrase("Photograph the sheet from above"));
    const double misfit = misfit_mm(*ground, *sightings);
    if (misfit > misfit_most_mm)
        return Problem(
            "capture-misfit", {},
            phrase("the sheet's marks are off by %1 mm: it does not lie flat, or was not printed at 100 %",
                   figure(std::to_string(misfit).substr(0, 4))),
            phrase("Tape the sheet to a flat board and measure its scales"));
    const double inset = plain ? plain_margin_mm : field_inset_mm;
    const cv::Rect2d field(inset, inset, shot.sheet.width_mm - 2 * inset, shot.sheet.height_mm - 2 * inset);
    const double source = coarsest_scale(*ground, field);
    if (source < px_per_mm_least) return too_coarse(source);
    const double scale = scale_for(source, field);
    FlatPicture out = flat_of(laid_flat(*picture, *ground, field, scale), scale);
    out.source_px_per_mm = source;
    out.misfit_mm = plain ? 0 : misfit;
    out.lens_corrected = !plain;
    out.camera = camera_of(*ground, *sightings, *header, shot.camera_mm);
    // The flat picture's frame: y up from its lower left corner.
    out.camera.foot = {out.camera.foot.x - field.x, field.y + field.height - out.camera.foot.y};
    return out;
}

} // namespace drawercast::capture
