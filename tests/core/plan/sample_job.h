// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

namespace drawercast::plan::testing {

/// The published-style worked drawer: 480 × 360 × 60 mm, four rectangles and two circles, firm foam ×6, no
/// shrinkage, no fit, no gap, no heat: the figures of an in-house reckoning that the reference tests hold.
inline job::Object object(const char* id, shape::Given outline, double depth_mm, double mass_g = 100) {
    job::Object object;
    object.id = id;
    object.name = id;
    object.mass_g = mass_g;
    object.height_mm = depth_mm + 5;
    object.fit_mm = 0;
    object.levels = {{job::Sunk{outline, depth_mm}, {}, {}}};
    return object;
}

inline job::Job worked_job() {
    job::Job job;
    job.title = "Worked drawer";
    job::Foam foam;
    foam.density_b_g_ml = 1.00;
    foam.shrinkage = 0;
    foam.mold_hotter_k = 0;
    foam.overpack = 0.15;
    foam.kits = {{"small", 1900, 42, 0, {}}, {"large", 3800, 75, 0, {}}};
    job.foam = foam;

    job::Drawer drawer;
    drawer.id = "d1";
    drawer.name = "Worked";
    drawer.outline = shape::Rectangle{480, 360, 0};
    drawer.gap_mm = 0;
    struct Place {
        const char* id;
        shape::Given outline;
        double depth_mm;
        shape::Vec at;
    };
    const Place places[] = {
        {"R1", shape::Rectangle{160, 80, 0}, 40, {100, 300}},
        {"R2", shape::Rectangle{120, 60, 0}, 30, {280, 300}},
        {"R3", shape::Rectangle{100, 100, 0}, 25, {80, 180}},
        {"R4", shape::Rectangle{200, 50, 0}, 20, {260, 180}},
        {"C1", shape::Circle{60}, 35, {80, 70}},
        {"C2", shape::Circle{40}, 30, {180, 70}},
    };
    for (const auto& place : places) {
        job.objects.emplace_back(object(place.id, place.outline, place.depth_mm));
        drawer.pockets.push_back({place.id, 1, {place.at, 0}, false, {}, {}});
    }
    job.drawers.emplace_back(drawer);
    return job;
}

} // namespace drawercast::plan::testing
