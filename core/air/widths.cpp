// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/widths.h"

#include "shape/segments.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <vector>

namespace drawercast::air {
namespace {

using shape::Vec;

/// A side of a body or of the opening; both ends the same: a point.
struct Side {
    Vec from;
    Vec to;
    double round_mm = 0; ///< grown by that
};

struct Nearest {
    double mm = no_sides; ///< < 0: inside a round one
    Vec at;
    std::size_t side = 0;
};

/// All that foam flows between, in buckets, so that only what is near a point is looked at.
class Obstacles {
  public:
    explicit Obstacles(const Floor& floor) {
        for (const Body& body : floor.bodies) add(body.outline.core, body.outline.round_mm);
        for (const shape::Patch& patch : floor.opening.patches) {
            add(patch.outer, 0);
            for (const shape::Ring& hole : patch.holes) add(hole, 0);
        }
        fill_buckets(floor.width_mm, floor.depth_mm);
    }

    /// Of the points of all sides; of several as near the first one's.
    Nearest nearest(Vec p) const {
        Nearest best;
        const int column = bucket(p.x, columns_), row = bucket(p.y, rows_);
        const double outside_mm = std::hypot(beyond(p.x, columns_), beyond(p.y, rows_));
        for (int ring = 0; ring < std::max(columns_, rows_); ++ring) {
            const double between_mm =
                std::max(0, ring - 1) * bucket_mm_; // at least, to a bucket of that ring
            if (best.mm < std::hypot(outside_mm, between_mm)) break;
            look_around(column, row, ring, p, best);
        }
        if (best.mm == no_sides) return best;
        const Side& side = sides_[best.side];
        const Vec on_core = shape::nearest_on(p, side.from, side.to);
        const double core_mm = best.mm + side.round_mm;
        best.at = core_mm > 0 ? on_core + (p - on_core) * (side.round_mm / core_mm) : on_core;
        best.mm = std::max(best.mm, 0.0);
        return best;
    }

  private:
    void add(const std::vector<Vec>& core, double round_mm) {
        const std::size_t count = core.size() < 3 ? 1 : core.size();
        for (std::size_t i = 0; i < count; ++i)
            sides_.push_back({core[i], core[(i + 1) % core.size()], round_mm});
    }

    int bucket(double mm, int count) const {
        return static_cast<int>(std::clamp(mm / bucket_mm_, 0.0, count - 1.0));
    }

    /// How far outside the buckets, along one axis.
    double beyond(double mm, int count) const { return std::max({0.0, -mm, mm - count * bucket_mm_}); }

    void fill_buckets(double width_mm, double depth_mm) {
        constexpr double least_mm = 5;
        const double even = std::sqrt(width_mm * depth_mm / static_cast<double>(sides_.size() + 1));
        bucket_mm_ = std::max(least_mm, even);
        columns_ = static_cast<int>(width_mm / bucket_mm_) + 1;
        rows_ = static_cast<int>(depth_mm / bucket_mm_) + 1;
        buckets_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
        for (std::size_t i = 0; i < sides_.size(); ++i) {
            shape::Box box;
            box.add(sides_[i].from), box.add(sides_[i].to);
            box = box.grown(sides_[i].round_mm);
            for (int row = bucket(box.min.y, rows_); row <= bucket(box.max.y, rows_); ++row)
                for (int column = bucket(box.min.x, columns_); column <= bucket(box.max.x, columns_);
                     ++column)
                    buckets_[at(column, row)].push_back(i);
        }
    }

    std::size_t at(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(column);
    }

    void look_around(int column, int row, int ring, Vec p, Nearest& best) const {
        for (int y = std::max(0, row - ring); y <= std::min(rows_ - 1, row + ring); ++y) {
            const bool whole = std::abs(y - row) == ring;
            const int step = whole || ring == 0 ? 1 : 2 * ring;
            for (int x = column - ring; x <= column + ring; x += step)
                if (x >= 0 && x < columns_)
                    for (const std::size_t side : buckets_[at(x, y)]) look_at(side, p, best);
        }
    }

    void look_at(std::size_t index, Vec p, Nearest& best) const {
        const Side& side = sides_[index];
        const double mm = length(p - shape::nearest_on(p, side.from, side.to)) - side.round_mm;
        if (mm < best.mm || (mm == best.mm && index < best.side)) best.mm = mm, best.side = index;
    }

    std::vector<Side> sides_;
    double bucket_mm_ = 1;
    int columns_ = 0;
    int rows_ = 0;
    std::vector<std::vector<std::size_t>> buckets_; ///< sides by index
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
