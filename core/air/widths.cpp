// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/widths.h"

#include <algorithm>
#include <cmath>

namespace drawercast::air {
namespace {

using shape::Vec;

/// Sides of one obstacle: those of its core, grown by its round radius.
struct Obstacle {
    std::vector<Vec> core;
    bool closed = true;
    double round_mm = 0;
    shape::Box box; ///< of the core
};

struct Nearest {
    double mm = no_sides;
    Vec at;
};

double box_distance(const shape::Box& box, Vec p) {
    const double x = std::max({box.min.x - p.x, p.x - box.max.x, 0.0});
    const double y = std::max({box.min.y - p.y, p.y - box.max.y, 0.0});
    return std::sqrt(x * x + y * y);
}

class Obstacles {
  public:
    explicit Obstacles(const Floor& floor) {
        for (const Body& body : floor.bodies) add(body.outline.core, body.outline.round_mm);
        for (const shape::Patch& patch : floor.opening.patches) {
            add_sides(patch.outer);
            for (const shape::Ring& hole : patch.holes) add(hole, 0);
        }
    }

    /// Of the points of all obstacles' outlines, for a `p` outside them all.
    Nearest nearest(Vec p) const {
        Nearest best;
        for (const Obstacle& obstacle : all_) {
            if (box_distance(obstacle.box, p) - obstacle.round_mm >= best.mm) continue;
            const Nearest core = nearest_of_core(obstacle, p);
            const double mm = core.mm - obstacle.round_mm;
            if (mm >= best.mm) continue;
            best.mm = std::max(mm, 0.0);
            best.at = core.mm > 0 ? core.at + (p - core.at) * (obstacle.round_mm / core.mm) : core.at;
        }
        return best;
    }

  private:
    void add(const std::vector<Vec>& core, double round_mm) {
        Obstacle obstacle{core, core.size() > 2, round_mm, {}};
        for (const Vec p : core) obstacle.box.add(p);
        all_.push_back(std::move(obstacle));
    }

    /// Each wall by itself, so that far ones are passed over by their boxes.
    void add_sides(const shape::Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) add({ring[i], ring[(i + 1) % ring.size()]}, 0);
    }

    static Nearest nearest_of_core(const Obstacle& obstacle, Vec p) {
        const auto& core = obstacle.core;
        Nearest best;
        const std::size_t sides = core.size() < 2 ? 1 : core.size() - (obstacle.closed ? 0 : 1);
        for (std::size_t i = 0; i < sides; ++i) {
            const Vec a = core[i];
            const Vec b = core[(i + 1) % core.size()];
            const Vec along = b - a;
            const double square = dot(along, along);
            const double t = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0;
            const Vec at = a + along * t;
            const Vec away = p - at;
            const double mm2 = dot(away, away);
            if (mm2 < best.mm) best = {mm2, at};
        }
        best.mm = std::sqrt(best.mm);
        return best;
    }

    std::vector<Obstacle> all_;
};

struct Disc {
    Vec center;
    double radius_mm = 0;
};

/// The largest clear disc that touches what is nearest to `p` where it is nearest: it covers p. Found by
/// shrinking a disc until nothing is inside it any more.
Disc largest_through(const Obstacles& obstacles, Vec p, const Nearest& nearest, double greatest_mm) {
    const Vec from = nearest.at;
    const Vec normal = (p - from) * (1 / nearest.mm);
    double radius = greatest_mm;
    for (int i = 0; i < 40; ++i) {
        const Vec center = from + normal * radius;
        const Nearest inside = obstacles.nearest(center);
        if (inside.mm >= radius * (1 - 1e-6)) break;
        const Vec to = inside.at - from;
        const double toward = 2 * dot(normal, to);
        const double next = toward > 0 ? dot(to, to) / toward : radius;
        if (!(next < radius)) break;
        radius = std::max(next, nearest.mm);
    }
    return {from + normal * radius, radius};
}

void paint(const Disc& disc, const Cells& cells, Values& widths) {
    const Mesh& mesh = cells.mesh;
    const double reach = disc.radius_mm * (1 + 1e-9);
    const int first_row = std::max(0, static_cast<int>(std::ceil((disc.center.y - reach) / mesh.dy() - 0.5)));
    for (int row = first_row; row < mesh.rows(); ++row) {
        const double y = (row + 0.5) * mesh.dy() - disc.center.y;
        if (y > reach) break;
        const double half = std::sqrt(std::max(0.0, reach * reach - y * y));
        const int from = std::max(0, static_cast<int>(std::ceil((disc.center.x - half) / mesh.dx() - 0.5)));
        const int to = std::min(mesh.columns() - 1,
                                static_cast<int>(std::floor((disc.center.x + half) / mesh.dx() - 0.5)));
        for (int column = from; column <= to; ++column) {
            double& width = widths[mesh.at(column, row)];
            width = std::max(width, 2 * disc.radius_mm);
        }
    }
}

} // namespace

Values widths_of(const Floor& floor, const Cells& cells) {
    const Obstacles obstacles(floor);
    const double greatest = std::min(floor.width_mm, floor.depth_mm); // no clear disc has a greater radius
    std::vector<Disc> discs;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!cells.channel[cell]) return;
        const Vec p = cells.mesh.center(cell);
        const Nearest nearest = obstacles.nearest(p);
        if (nearest.mm > 1e-6) discs.push_back(largest_through(obstacles, p, nearest, greatest));
    });
    Values widths(cells.mesh.size(), 0.0);
    for (const Disc& disc : discs) paint(disc, cells, widths);
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!cells.channel[cell])
            widths[cell] = no_sides;
        else
            widths[cell] = std::max(widths[cell], 1e-3);
    });
    return widths;
}

} // namespace drawercast::air
