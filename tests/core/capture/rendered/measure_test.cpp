// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures with known outlines are rendered ray by ray and measured again.
#include "capture/measure.h"

#include "core/capture/rendered/scene.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <iostream>

namespace drawercast::capture {
namespace {

std::vector<Thing> three_things(double height) {
    return {{tool_thing({90, 80}, 35), height, {0.12, 0.14, 0.13}},
            {round_thing({140, 160}, 22), height, {0.15, 0.25, 0.75}},
            {box_thing({80, 200}, 60, 35, 15), height, {0.55, 0.2, 0.12}}};
}

/// The found outline in the sheet's frame, y down.
std::vector<cv::Point2d> on_sheet(const FoundOutline& found, const FlatPicture& flat, SheetSize sheet) {
    const double inset_x = (sheet.width_mm - flat.width_px / flat.px_per_mm) / 2;
    std::vector<cv::Point2d> out;
    const double low = sheet.height_mm - inset_x;
    for (const shape::Corner& corner : found.polygon.corners)
        out.emplace_back(inset_x + found.at.x + corner.at.x,
                         low - (sheet.height_mm - 2 * inset_x - flat.height_px / flat.px_per_mm) -
                             found.at.y - corner.at.y);
    return out;
}

/// Each thing is found once, within `most_mm`, and inside the band that is said.
void expect_found(const Scene& scene, const Shot& shot, double most_mm) {
    const std::string file = rendered(scene);
    const auto began = std::chrono::steady_clock::now();
    const auto flat = flattened(file, shot);
    ASSERT_TRUE(flat) << one_line(flat.error());
    double height = 0;
    for (const Thing& thing : scene.things) height = std::max(height, thing.height_mm);
    const auto traced = traced_objects(*flat, {height, 0.15});
    ASSERT_TRUE(traced) << one_line(traced.error());
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
    ASSERT_EQ(traced->outlines.size(), scene.things.size());
    for (const Thing& thing : scene.things) {
        double best = 1e9, band = 0;
        for (const FoundOutline& found : traced->outlines) {
            const double off = farthest_apart(on_sheet(found, *flat, scene.sheet), thing.outline);
            if (off < best) best = off, band = found.band_mm;
        }
        EXPECT_LE(best, most_mm);
        EXPECT_LE(best, band + 0.2);
        std::cout << "off " << best << " mm, band " << band << " mm\n";
    }
    std::cout << "misfit " << flat->misfit_mm << " mm, camera " << flat->camera.distance_mm << " ± "
              << flat->camera.within_mm << " mm, " << took.count() << " s\n";
}

TEST(Measured, flat_things_from_straight_above) {
    Scene scene;
    scene.things = three_things(0);
    expect_found(scene, {}, 0.5);
}

TEST(Measured, well_aslant_with_a_lens_that_bends_and_soft_shadows) {
    Scene scene;
    scene.things = three_things(0);
    scene.tilt_deg = 30;
    scene.radial = -0.12;
    scene.shade = 0.4;
    expect_found(scene, {}, 0.5);
}

TEST(Measured, high_things_are_brought_down_to_size) {
    Scene scene;
    scene.things = three_things(12);
    Shot shot;
    shot.camera_mm = scene.distance_mm;
    expect_found(scene, shot, 0.5);
}

TEST(Measured, on_a_plain_sheet) {
    Scene scene;
    scene.printed = false;
    scene.tilt_deg = 10;
    scene.things = three_things(0);
    Shot shot;
    shot.ground = Ground::plain_sheet;
    expect_found(scene, shot, 0.5);
}

/// Four corners can't tell a bent lens from perspective: the distance says how little it knows, or nothing.
TEST(Measured, a_plain_sheets_camera_distance_is_as_sure_as_it_says) {
    for (const double tilt_deg : {8.0, 25.0}) {
        Scene scene;
        scene.printed = false;
        scene.picture = {2800, 2100};
        scene.focal_px = 2100;
        scene.radial = -0.04;
        scene.tilt_deg = tilt_deg;
        scene.things = three_things(0);
        Shot shot;
        shot.ground = Ground::plain_sheet;
        const auto flat = flattened(rendered(scene), shot);
        ASSERT_TRUE(flat) << flat.error().code;
        if (flat->camera.by == CameraBy::nothing) continue;
        const double true_mm = scene.distance_mm * std::cos(tilt_deg * 3.14159265358979324 / 180);
        EXPECT_NEAR(flat->camera.distance_mm, true_mm, 2 * flat->camera.within_mm) << tilt_deg;
    }
}

TEST(Measured, a_blurred_picture_gives_no_outline) {
    Scene scene;
    scene.things = three_things(0);
    scene.picture = {2400, 1800};
    scene.focal_px = 1800;
    scene.blur_px = 8;
    const auto flat = flattened(rendered(scene), {});
    if (!flat) return; // the marks are blurred as well
    EXPECT_EQ(traced_objects(*flat, {}).error().code, "capture-blurred");
}

TEST(Measured, a_file_whose_data_are_no_picture_is_refused) {
    Scene scene;
    scene.picture = {400, 300};
    scene.jpeg_quality = 0;
    std::string file = rendered(scene);
    file.resize(60); // the header alone
    EXPECT_EQ(flattened(file, {}).error().code, "picture-torn");
}

TEST(Measured, a_sheet_that_is_not_seen_whole_gives_no_outline) {
    Scene scene;
    scene.things = three_things(0);
    scene.look_at = {105, -200};
    const auto flat = flattened(rendered(scene), {});
    ASSERT_FALSE(flat);
    EXPECT_EQ(flat.error().code, "capture-no-sheet");
}

TEST(Measured, another_paper_size_gives_no_outline) {
    Scene scene;
    Shot shot;
    shot.sheet = sheet_letter;
    const auto flat = flattened(rendered(scene), shot);
    ASSERT_FALSE(flat);
    EXPECT_EQ(flat.error().code, "capture-other-sheet");
    scene.sheet = sheet_letter;
    EXPECT_EQ(flattened(rendered(scene), {}).error().code, "capture-other-sheet");
    EXPECT_TRUE(flattened(rendered(scene), shot));
}

TEST(Measured, nothing_on_the_sheet_and_something_over_the_edge_are_said) {
    Scene scene;
    auto flat = flattened(rendered(scene), {});
    ASSERT_TRUE(flat);
    EXPECT_EQ(traced_objects(*flat, {}).error().code, "capture-nothing");
    scene.things = {{box_thing({105, 60}, 30, 100, 0), 0}};
    flat = flattened(rendered(scene), {});
    if (flat) {
        EXPECT_EQ(traced_objects(*flat, {}).error().code, "capture-over-edge");
    }
}

TEST(Measured, a_height_wants_a_camera_distance) {
    Scene scene;
    scene.things = three_things(0);
    const auto flat = flattened(rendered(scene), {}); // straight from above: no perspective to tell it
    ASSERT_TRUE(flat);
    EXPECT_EQ(traced_objects(*flat, {.height_mm = 10}).error().code, "capture-no-distance");
}

} // namespace
} // namespace drawercast::capture
