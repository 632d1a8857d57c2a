// SPDX-License-Identifier: GPL-3.0-or-later
// What makes photos hard to measure: an outline is right within its limit, or doubted, or refused.
#include "capture/measure.h"

#include "core/capture/rendered/scene.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

namespace drawercast::capture {
namespace {

/// A fifth of the pixels of a real photo, hardly four to the millimeter: what is asked here does not depend
/// on it, and a scene takes a fifth of the time.
Scene small_scene() {
    Scene scene;
    scene.picture = {1840, 1380};
    scene.focal_px = 1480;
    scene.blur_px = 0.6;
    scene.things = {{tool_thing({90, 80}, 35), 0, {0.12, 0.14, 0.13}},
                    {box_thing({80, 200}, 60, 35, 15), 0, {0.55, 0.2, 0.12}}};
    return scene;
}

std::vector<cv::Point2d> on_sheet(const FoundOutline& found, SheetSize sheet) {
    std::vector<cv::Point2d> out;
    for (const shape::Corner& corner : found.polygon.corners)
        out.emplace_back(field_inset_mm + found.at.x + corner.at.x,
                         sheet.height_mm - field_inset_mm - found.at.y - corner.at.y);
    return out;
}

enum class Fate { right, doubted, refused, wrong };

/// The worst of the scene's outlines.
Fate fate_of(const Scene& scene, double most_mm = 0.5) {
    const auto flat = flattened(rendered(scene), {});
    if (!flat) return std::cout << one_line(flat.error()) << '\n', Fate::refused;
    const auto traced = traced_objects(*flat, {});
    if (!traced) return std::cout << one_line(traced.error()) << '\n', Fate::refused;
    Fate worst = traced->outlines.size() >= scene.things.size() ? Fate::right : Fate::wrong;
    for (const FoundOutline& found : traced->outlines) {
        double off = 1e9;
        for (const Thing& thing : scene.things)
            off = std::min(off, farthest_apart(on_sheet(found, scene.sheet), thing.outline));
        std::cout << "off " << off << " mm, band " << found.band_mm << (found.maybe_shadow ? ", shadow?" : "")
                  << (found.maybe_part ? ", part?" : "") << '\n';
        const bool doubted = found.maybe_shadow || found.maybe_part;
        if (off > most_mm && !doubted) worst = Fate::wrong;
        if (off > most_mm && worst == Fate::right) worst = Fate::doubted;
    }
    return worst;
}

TEST(HardLight, a_hard_shadow_is_doubted_and_never_passed_for_the_object) {
    Scene scene = small_scene();
    scene.shade_soft_mm = 0.3;
    scene.shade = 0.5;
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

TEST(HardLight, a_bare_lamp_as_black_as_the_thing_itself) {
    Scene scene = small_scene();
    scene.shade_soft_mm = 0.15;
    scene.shade = 0.75;
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

TEST(HardLight, shine_across_a_thing_does_not_cut_it) {
    Scene scene = small_scene();
    for (Thing& thing : scene.things) thing.shine = 0.25;
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

TEST(HardLight, a_gray_thing_cut_by_shine_is_one_once_brushed_and_no_shadow) {
    FlatPicture flat;
    flat.width_px = flat.height_px = 400;
    flat.px_per_mm = 4;
    flat.scanned = true;
    flat.bgr.assign(3U * 400 * 400, 235);
    Brush brush(400U * 400);
    for (std::size_t y = 120; y < 280; ++y)
        for (std::size_t x = 120; x < 280; ++x) {
            const bool streak = x >= 190 && x < 206;
            if (!streak)
                std::fill_n(flat.bgr.begin() + static_cast<std::ptrdiff_t>(3 * (400 * y + x)), 3, 150);
            if (x >= 180 && x < 216) brush[400 * y + x] = 1;
        }
    const auto cut = traced_objects(flat, {});
    ASSERT_TRUE(cut);
    ASSERT_EQ(cut->outlines.size(), 2U);
    EXPECT_TRUE(cut->outlines[0].maybe_part);
    const auto one = traced_objects(flat, {}, brush);
    ASSERT_TRUE(one);
    ASSERT_EQ(one->outlines.size(), 1U);
    EXPECT_NEAR(shape::area(*shape::contour_of(one->outlines[0].polygon)), 40 * 40, 8);
    EXPECT_FALSE(one->outlines[0].maybe_shadow) << "the brush has said that it is one thing";
}

TEST(HardLight, little_contrast_is_found_or_refused) {
    Scene scene = small_scene();
    for (Thing& thing : scene.things) thing.color = {0.88, 0.9, 0.9};
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

TEST(HardLight, noise_and_a_poor_jpeg) {
    Scene scene = small_scene();
    scene.noise = 9;
    scene.jpeg_quality = 45;
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

TEST(HardLight, far_aslant) {
    Scene scene = small_scene();
    scene.tilt_deg = 30;
    scene.distance_mm = 520;
    scene.focal_px = 2050;
    EXPECT_NE(fate_of(scene), Fate::wrong);
}

} // namespace
} // namespace drawercast::capture
