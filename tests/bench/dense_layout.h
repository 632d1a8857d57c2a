// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/recheck.h"

#include "core/layout/random_layout.h"

#include <cmath>
#include <memory>
#include <vector>

namespace drawercast::bench {

/// Walls and edges the dense layout asks for; also the cut-off of everything it is measured against.
inline constexpr double dense_limit_mm = 6;

/// N stars of 40 vertices in jittered rows set off by half a place, in a drawer of 36 vertices, none
/// overlapping; about two walls a pocket are below the limit.
struct DenseLayout {
    std::vector<layout::Standing> standing;
    std::vector<job::Pocket> pockets;
    layout::DrawerLimits limits;
    std::vector<shape::Ring> rings; ///< the same outlines, bare
    shape::Ring drawer;
};

inline shape::Polygon many_sided_drawer(double side_mm) {
    shape::Polygon polygon; // a rectangle with nine vertices a side, each a little out of line
    const int per_side = 9;
    const shape::Vec corners[] = {{0, 0}, {side_mm, 0}, {side_mm, side_mm}, {0, side_mm}};
    const shape::Vec outward[] = {{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
    for (std::size_t s = 0; s < 4; ++s)
        for (int i = 0; i < per_side; ++i) {
            const double part = static_cast<double>(i) / per_side;
            const shape::Vec on_side = corners[s] + (corners[(s + 1) % 4] - corners[s]) * part;
            polygon.corners.push_back({on_side + outward[s] * (i == 0 ? 0.0 : 2.0 * (i % 2)), 0});
        }
    return polygon;
}

inline DenseLayout dense_layout(int count) {
    layout::testing::Dice dice(17);
    constexpr double pitch_mm = 40, row_mm = 34.7, margin_mm = 24; // three neighbors at one distance
    const int columns = static_cast<int>(std::ceil(std::sqrt(count)));
    const double side_mm = 2 * margin_mm + pitch_mm * (columns - 0.5);

    DenseLayout dense;
    job::Job job;
    job.minimums.wall_mm = job.minimums.edge_mm = dense_limit_mm;
    job::Drawer drawer = layout::testing::drawer_of(many_sided_drawer(side_mm), 60);
    drawer.load_kg = 1e6;
    const auto insert = layout::insert_of(drawer, 0);
    dense.limits = layout::limits_of(job, drawer, std::make_shared<const layout::Insert>(*insert));
    dense.drawer = dense.limits.insert->edges[0].contour.core;
    const shape::Vec shift = shape::Vec{2, 2}; // the drawer's lower-left vertex bulges by that
    for (int i = 0; i < count; ++i) {
        const job::Object object = layout::testing::object_of(
            "i" + std::to_string(i), {layout::testing::sunk(layout::testing::star(dice, 40, 13, 19.4), 20)});
        const shape::Vec jitter{dice.between(-0.4, 0.4), dice.between(-0.4, 0.4)};
        const int row = i / columns;
        const shape::Vec at{margin_mm + pitch_mm * (i % columns + row % 2 / 2.0), margin_mm + row_mm * row};
        const job::Pocket pocket{object.id, 1, {at + jitter + shift, dice.between(0, 360)}, false, {}, {}};
        dense.pockets.push_back(pocket);
        dense.standing.push_back({layout::testing::stand(object, pocket, 60),
                                  std::make_shared<const layout::ObjectFacts>(layout::facts_of(object))});
        dense.rings.push_back(dense.standing.back().pocket->cuts[0].outline.contour.core);
    }
    return dense;
}

/// How many walls and edges are below the limit, and their sum: equal sums mean equal work was done.
struct Tally {
    int count = 0;
    double sum_mm = 0;
    void take(double mm) {
        if (!(mm < dense_limit_mm - layout::slack_mm)) return;
        ++count;
        sum_mm += mm;
    }
    bool agrees(const Tally& other) const {
        return count == other.count && std::abs(sum_mm - other.sum_mm) < 1e-6 * (1 + count);
    }
};

inline Tally tally_of(const std::vector<layout::Check>& checks) {
    Tally tally;
    for (const auto& check : checks) tally.take(check.value);
    return tally;
}

} // namespace drawercast::bench
