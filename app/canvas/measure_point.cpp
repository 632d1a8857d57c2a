// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/measure_point.h"

#include "layout/insert.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

using shape::Vec;

/// The nearest offer of each kind.
class Search {
  public:
    Search(Vec pointer, double reach_mm) : pointer_(pointer), corner_mm_(reach_mm), edge_mm_(reach_mm) {}

    void add(const shape::Contour& contour) {
        if (!shape::near(shape::bounds(contour).grown(edge_room()), {pointer_, pointer_})) return;
        if (contour.core.size() == 1) offer_corner(contour.core.front());
        if (contour.round_mm == 0) offer_corners(contour.core);
        const auto ring = shape::traced(contour);
        for (std::size_t i = 0; i < ring.size(); ++i) offer_edge(ring[i], ring[(i + 1) % ring.size()]);
    }
    MeasurePoint best() const {
        if (corner_) return {*corner_, MeasurePoint::On::corner};
        if (edge_) return {*edge_, MeasurePoint::On::edge};
        return {pointer_, MeasurePoint::On::nothing};
    }

  private:
    double edge_room() const { return std::max(corner_mm_, edge_mm_); }
    /// The ends of an arc's chords are no corners.
    void offer_corners(const std::vector<Vec>& ring) {
        constexpr double sharp = 0.17; // sine of the turn, 10°
        const std::size_t count = ring.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Vec in = ring[i] - ring[(i + count - 1) % count], out = ring[(i + 1) % count] - ring[i];
            const double lengths = shape::length(in) * shape::length(out);
            if (shape::dot(in, out) < 0 || std::abs(shape::cross(in, out)) > sharp * lengths)
                offer_corner(ring[i]);
        }
    }
    void offer_corner(Vec at) {
        const double mm = shape::length(at - pointer_);
        if (mm > corner_mm_) return;
        corner_mm_ = mm;
        corner_ = at;
    }
    void offer_edge(Vec a, Vec b) {
        const Vec along = b - a;
        const double square = shape::dot(along, along);
        if (!(square > 0)) return;
        const Vec at = a + along * std::clamp(shape::dot(pointer_ - a, along) / square, 0.0, 1.0);
        const double mm = shape::length(at - pointer_);
        if (mm > edge_mm_) return;
        edge_mm_ = mm;
        edge_ = at;
    }

    Vec pointer_;
    double corner_mm_;
    double edge_mm_;
    std::optional<Vec> corner_;
    std::optional<Vec> edge_;
};

} // namespace

MeasurePoint measure_point(const plan::DrawerPlan& plan, Vec pointer, double reach_mm) {
    Search search(pointer, reach_mm);
    for (const auto& pocket : plan.pockets)
        for (const auto& cut : pocket->cuts) search.add(cut.outline.contour);
    if (plan.insert) {
        search.add(plan.insert->drawer.contour);
        for (const auto& obstruction : plan.insert->obstructions) search.add(obstruction.contour);
        for (const auto& edge : plan.insert->edges) search.add(edge.contour);
    }
    return search.best();
}

} // namespace drawercast::app
