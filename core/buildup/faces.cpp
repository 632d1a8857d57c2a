// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/faces.h"

#include "buildup/bodies.h"
#include "shape/in_region.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace drawercast::buildup {

using shape::Region;
using shape::Ring;
using shape::Vec;

namespace {

constexpr double crease_cosine = 0.85; ///< sides that turn less are chords of one curve
constexpr double near_mm = 0.01;       ///< what the grid may have moved

bool on_cut(const Scene& scene, Vec a, Vec b) {
    const auto at = [](double p, double q, double cut) {
        return std::abs(p - cut) < near_mm && std::abs(q - cut) < near_mm;
    };
    return at(a.x, b.x, scene.cut_at.x) || at(a.y, b.y, scene.cut_at.y);
}

bool is_cut_through(Part part) {
    return part != Part::base && part != Part::block && part != Part::clay && part != Part::closure &&
           part != Part::bearer;
}

class Sides {
  public:
    Sides(const Scene& scene, const Solid& solid, const Projection& seen, double lift, Faces& out)
        : scene_(scene), solid_(solid), seen_(seen), lift_(lift), out_(out) {}

    void add(std::size_t layer, const Ring& ring) {
        const std::size_t n = ring.size();
        for (std::size_t i = 0; i < n; ++i) {
            const Vec a = ring[i], b = ring[(i + 1) % n];
            if (!faces_viewer(a, b)) continue;
            const bool left = edge_between(ring[(i + n - 1) % n], a, b);
            const bool right = edge_between(a, b, ring[(i + 2) % n]);
            add_side(layer, a, b, left, right);
        }
    }

  private:
    /// Material lies to the left of a → b: a side is seen where it runs from left to right.
    bool faces_viewer(Vec a, Vec b) const { return seen_.turned(b - a).x > 1e-9; }

    bool edge_between(Vec a, Vec b, Vec c) const {
        if (faces_viewer(a, b) != faces_viewer(b, c)) return true; // silhouette
        const double lengths = shape::length(b - a) * shape::length(c - b);
        return lengths > 0 && shape::dot(b - a, c - b) < crease_cosine * lengths;
    }

    void add_side(std::size_t layer, Vec a, Vec b, bool left, bool right) {
        const bool cut = is_cut_through(solid_.part) && on_cut(scene_, a, b);
        std::vector<double> shares{0, 1};
        if (cut && layer > 0) split_at_below(solid_.layers[layer - 1].plan, a, b, shares);
        std::sort(shares.begin(), shares.end());
        for (std::size_t i = 0; i + 1 < shares.size(); ++i) {
            if (shares[i + 1] - shares[i] < 1e-6) continue;
            const Vec from = a + (b - a) * shares[i], to = a + (b - a) * shares[i + 1];
            const bool last = i + 2 == shares.size();
            put(layer, cut, from, to, left && i == 0, right && last);
        }
    }

    /// Where corners of the layer below lie on the side.
    static void split_at_below(const Region& below, Vec a, Vec b, std::vector<double>& shares) {
        const double length = shape::length(b - a);
        const auto visit = [&](const Ring& ring) {
            for (const Vec p : ring) {
                const double share = shape::dot(p - a, b - a) / (length * length);
                if (share > 0 && share < 1 && std::abs(shape::cross(b - a, p - a)) < near_mm * length)
                    shares.push_back(share);
            }
        };
        for (const auto& patch : below.patches) {
            visit(patch.outer);
            for (const Ring& hole : patch.holes) visit(hole);
        }
    }

    void put(std::size_t layer, bool cut, Vec a, Vec b, bool left, bool right) {
        const Layer& own = solid_.layers[layer];
        const Vec along = (b - a) * (1 / shape::length(b - a));
        const Vec within = (a + b) * 0.5 + Vec{-along.y, along.x} * (5 * near_mm);
        const bool stands = layer > 0 && shape::holds(solid_.layers[layer - 1].plan, within);
        Upright side{solid_.part,
                     &solid_.subject,
                     cut ? Face::cut : Face::side,
                     a,
                     b,
                     own.bottom_mm + lift_,
                     own.top_mm + lift_,
                     left,
                     right,
                     !stands,
                     {}};
        side.span = {seen_.turned(a), seen_.turned(b)};
        if (side.span.to.x - side.span.from.x > 1e-9) join(side);
    }

    /// A side that goes on from the layer below is one face with it: two would show their seam.
    void join(const Upright& side) {
        const auto known = standing_.find({side.from.x, side.from.y, side.to.x, side.to.y});
        if (known != standing_.end()) {
            Upright& below = out_.uprights[known->second];
            if (below.top_mm == side.bottom_mm && below.face == side.face) {
                below.top_mm = side.top_mm;
                below.line_left = below.line_left || side.line_left;
                below.line_right = below.line_right || side.line_right;
                return;
            }
        }
        standing_[{side.from.x, side.from.y, side.to.x, side.to.y}] = out_.uprights.size();
        out_.uprights.push_back(side);
    }

    const Scene& scene_;
    const Solid& solid_;
    const Projection& seen_;
    double lift_;
    Faces& out_;
    std::map<std::array<double, 4>, std::size_t> standing_; ///< uprights by their plan
};

void add_levels(const Solid& solid, double lift, Faces& out) {
    for (std::size_t i = 0; i < solid.layers.size(); ++i) {
        const bool last = i + 1 == solid.layers.size();
        Region top = last ? solid.layers[i].plan : Region{};
        // foam only widens from layer to layer: nothing of it is seen from above but its top
        if (!last && solid.part != Part::foam) top = less(solid.layers[i].plan, solid.layers[i + 1].plan);
        if (top.empty()) continue;
        out.levels.push_back({solid.part, &solid.subject, solid.layers[i].top_mm + lift, std::move(top),
                              last || !solid.smooth});
    }
}

} // namespace

Faces faces_of(const Scene& scene, const Look& look) {
    Faces faces;
    const Projection seen(look.turn_deg);
    for (const Solid& solid : scene.solids) {
        const double lift = lift_of(solid.part, scene.height_mm, look.apart);
        add_levels(solid, lift, faces);
        Sides sides(scene, solid, seen, lift, faces);
        for (std::size_t i = 0; i < solid.layers.size(); ++i)
            for (const auto& patch : solid.layers[i].plan.patches) {
                sides.add(i, patch.outer);
                for (const Ring& hole : patch.holes) sides.add(i, hole);
            }
    }
    return faces;
}

} // namespace drawercast::buildup
