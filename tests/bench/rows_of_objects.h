// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/catalog.h"
#include "job/edit.h"

#include <cmath>
#include <string>
#include <utility>

namespace drawercast::bench {

/// Rounded rectangles, circles and capsules in rows, each third row a little too close to the next: as many
/// checks as a layout in the making has.
inline job::Job rows_of_objects(int count) {
    constexpr double pitch_mm = 54;
    const int columns = static_cast<int>(std::ceil(std::sqrt(count)));
    job::Job job = job::new_job({pitch_mm * (columns + 1), pitch_mm * (columns + 1), 90, 60});
    const std::string drawer = job.drawers.front()->id;
    for (int i = 0; i < count; ++i) {
        job::Object object;
        object.id = "i" + std::to_string(i + 1);
        object.name = "Object " + std::to_string(i + 1);
        object.height_mm = 40;
        job::Level level;
        const double depth_mm = 12 + 6 * (i % 6);
        if (i % 3 == 0)
            level.form = job::Sunk{shape::Rectangle{42, 34, 4}, depth_mm};
        else if (i % 3 == 1)
            level.form = job::Sunk{shape::Circle{40}, depth_mm};
        else
            level.form = job::Sunk{shape::Capsule{43, 28}, depth_mm};
        object.levels = {level};
        job = job::with_object(std::move(job), object);
        const int row = i / columns;
        const shape::Vec at{pitch_mm * (i % columns + 1), pitch_mm * (row + 1) + (row % 3 == 0 ? 8 : 0)};
        job = job::placed(std::move(job), drawer, object.id, {at, 0});
    }
    return job;
}

} // namespace drawercast::bench
