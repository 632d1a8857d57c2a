// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/guarded.h"
#include "shape/near_sides.h"
#include "shape/region.h"
#include "shape/trace.h"

#include <numbers>

namespace drawercast::shape {
namespace {

using kernel::Join;

constexpr double pi = std::numbers::pi;
constexpr double nudge_mm = 1e-6;
constexpr std::size_t most_point_checks = 50'000; // pairs of a result's points and an operand's sides

template <class Do>
void each_ring(const Region& region, Do act) {
    for (const Patch& patch : region.patches) {
        act(patch.outer);
        for (const Ring& hole : patch.holes) act(hole);
    }
}

std::size_t points_of(const Region& region) {
    std::size_t sum = 0;
    each_ring(region, [&](const Ring& ring) { sum += ring.size(); });
    return sum;
}

/// Area that mitered corners can add beyond perimeter times offset: at the left turns going out, the right
/// ones going in.
double miters_at_most(const Region& region, double by) {
    double sum = 0;
    each_ring(region, [&](const Ring& ring) {
        for (std::size_t i = 0, n = ring.size(); i < n; ++i) {
            const Vec before = ring[(i + 1) % n] - ring[i];
            const Vec after = ring[(i + 2) % n] - ring[(i + 1) % n];
            const double turn = std::atan2(cross(before, after), dot(before, after));
            if (turn * by > 0)
                sum += std::min(std::tan(std::min(std::abs(turn), 3.0) / 2), kernel::miter_limit);
        }
    });
    return sum * by * by;
}

/// Area that round corners can add: a whole circle for each ring that opens (Steiner's bound, true of any
/// simple ring).
double circles_at_most(const Region& region, double by) {
    std::size_t rings = region.patches.size();
    if (by < 0) {
        rings = 0;
        for (const Patch& patch : region.patches) rings += patch.holes.size();
    }
    return static_cast<double>(rings) * pi * by * by;
}

/// Bounds of the area: Steiner's from above, Brunn and Minkowski's √A' ≥ √A + √π·r from below, the same
/// turned round for erosion.
bool area_fits(const Region& from, const Region& to, double by, Join join) {
    const double r = std::abs(by);
    const double corners = join == Join::round ? circles_at_most(from, by) : miters_at_most(from, by);
    const double band = perimeter(from) * r + corners;
    const double slack = 1e-3 + (perimeter(from) + perimeter(to)) * (chord_sagitta_mm + grid_mm);
    const double before = std::sqrt(area(from));
    const double after = std::sqrt(area(to));
    const double round = std::sqrt(pi) * r;
    if (by > 0)
        return area(to) <= area(from) + band + slack &&
               area(to) >= (before + round) * (before + round) - slack;
    return area(to) >= area(from) - band - slack &&
           (to.empty() || (after + round) * (after + round) <= area(from) + slack);
}

double distance_to_boundary(Vec p, const Region& region) {
    double best = any_distance;
    const Box at{p, p};
    each_ring(region, [&](const Ring& ring) {
        const NearSides near = nearest_sides(std::span(&p, 1), at, ring, best);
        if (near.found) best = std::min(best, std::sqrt(near.squared));
    });
    return best;
}

/// Whether the result's points lie as far from the operand's boundary as they should: a spread of them where
/// the outlines are large.
bool points_fit(const Region& from, const Region& to, double by, Join join) {
    const double r = std::abs(by);
    const double most =
        (join == Join::round ? r : kernel::miter_limit * r) + 2 * (chord_sagitta_mm + grid_mm);
    const double least = r - (join == Join::round ? 0 : r * 0.11) - 2 * (chord_sagitta_mm + grid_mm);
    const std::size_t stride = 1 + points_of(from) * points_of(to) / most_point_checks;
    std::size_t count = 0;
    bool fits = true;
    each_ring(to, [&](const Ring& ring) {
        for (const Vec p : ring) {
            if (!fits || count++ % stride != 0) continue;
            const double d = distance_to_boundary(p, from);
            fits = d <= most && d >= least;
        }
    });
    return fits;
}

Expected<Region> offset(const Region& region, double by_mm, Join join) {
    const Expected<Region> from = prepared(region);
    if (!from || by_mm == 0 || from->empty()) return from;
    const std::size_t points = chords_for(2 * pi, std::abs(by_mm), chord_sagitta_mm);
    for (const double nudge :
         {0.0, nudge_mm, -nudge_mm}) { // a slot of exactly twice the offset is a coincidence
        const double by = by_mm + nudge;
        const auto moved = kernel::moved(*from, by, join, points);
        if (!moved) continue;
        const Region raw = kernel::cleaned(*moved);
        if (kernel::fault(raw)) continue;
        Region to = settled(raw);
        if (area_fits(*from, to, by, join) && points_fit(*from, to, by, join)) return to;
    }
    return geometry_problem(phrase("an outline could not be made larger or smaller reliably"));
}

} // namespace

Expected<Region> offset_round(const Region& region, double by_mm) {
    return offset(region, by_mm, Join::round);
}

Expected<Region> offset_mitred(const Region& region, double by_mm) {
    return offset(region, by_mm, Join::miter);
}

} // namespace drawercast::shape
