// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/standing.h"

#include "shape/gap.h"

#include <algorithm>

namespace drawercast::casting {
namespace {

/// The height below which clay of these radii bridges the gap between its blocks.
double bridging_height(double radius_a, double radius_b, double gap_mm) {
    if (radius_a == radius_b) return clay_height(radius_a, gap_mm / 2);
    double low = 0;
    double high = std::max(radius_a, radius_b);
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (clay_reach(radius_a, middle) + clay_reach(radius_b, middle) > gap_mm ? low : high) = middle;
    }
    return low;
}

void note(std::optional<Meeting>& meeting, double gap_mm, double radius_a, double radius_b) {
    if (!meeting) meeting = Meeting{};
    if (gap_mm <= 0) {
        meeting->touching = true;
        return;
    }
    const double below =
        radius_b > 0 ? bridging_height(radius_a, radius_b, gap_mm) : clay_height(radius_a, gap_mm);
    meeting->below_mm = std::max(meeting->below_mm, below);
}

/// Least distance to the opening's edge; ≤ 0 where the cut sticks out.
double edge_distance(const shape::Contour& outline, const layout::Insert& insert, double cutoff_mm) {
    double least = shape::gap_inside(outline, insert.edges[0].contour, cutoff_mm).mm;
    for (std::size_t i = 1; i < insert.edges.size(); ++i)
        least = std::min(least, shape::gap_between(outline, insert.edges[i].contour, cutoff_mm).mm);
    return least;
}

} // namespace

std::optional<Meeting> meeting_of(const Standing& a, const Standing& b) {
    const double reach = a.casting->greatest_reach_mm + b.casting->greatest_reach_mm;
    if (!near(a.pocket->box, b.pocket->box, reach)) return std::nullopt;
    std::optional<Meeting> meeting;
    for (std::size_t i = 0; i < a.pocket->cuts.size(); ++i)
        for (std::size_t j = 0; j < b.pocket->cuts.size(); ++j) {
            const double radius_a = a.casting->reach_mm[i];
            const double radius_b = b.casting->reach_mm[j];
            const double gap =
                shape::gap_between(a.pocket->cuts[i].outline.contour, a.pocket->boxes[i],
                                   b.pocket->cuts[j].outline.contour, b.pocket->boxes[j], radius_a + radius_b)
                    .mm;
            if (gap <= 0 || gap < radius_a + radius_b) note(meeting, gap, radius_a, radius_b);
        }
    return meeting;
}

std::optional<Meeting> meeting_at_edge(const Standing& block, const Ground& ground) {
    std::optional<Meeting> meeting;
    for (std::size_t i = 0; i < block.pocket->cuts.size(); ++i) {
        const double radius = block.casting->reach_mm[i];
        const double gap = edge_distance(block.pocket->cuts[i].outline.contour, *ground.insert, radius);
        if (gap <= 0 || gap < radius) note(meeting, gap, radius, 0);
    }
    return meeting;
}

} // namespace drawercast::casting
