// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_system.h"

#include <array>
#include <cstddef>
#include <vector>

namespace drawercast::mold {

/// The plate held by nothing but four soft springs, one near each corner, condensed once to how far each of
/// some nodes lifts under 1 N at any other. Whoever asks takes the springs off again (base_nodes()).
///
/// The grid must be the same from left to right as from right to left, and from front to back, with a line
/// through the middle of either: then any load is the sum of four that are even or odd in x and in y, and a
/// quarter of the plate answers each.
class FreePlate {
  public:
    /// `nodes`: where anything may hold the plate. Those with their mirror images are the points.
    FreePlate(const PlateSection& section, const PlateGrid& grid, const std::vector<std::size_t>& nodes);

    const PlateGrid& grid() const { return grid_; }
    const PlateSection& section() const { return section_; }

    std::size_t points() const { return points_.size(); }
    std::size_t node_of(std::size_t point) const { return points_[point].node; }
    std::size_t point_of(std::size_t node) const { return point_of_node_[node]; } ///< no_point: none there
    static constexpr std::size_t no_point = static_cast<std::size_t>(-1);

    static constexpr double base_spring_n_mm = 200;
    const std::array<std::size_t, 4>& base_points() const { return base_points_; }

    /// Lift of point `a` under 1 N at point `b`, mm/N.
    double lift_by_force(std::size_t a, std::size_t b) const;
    /// Lifts of all points under a force at each of them.
    std::vector<double> lifts(const std::vector<double>& forces_n) const;
    /// All unknowns (node_unknowns for each node) under a force at each node.
    std::vector<double> unknowns(const std::vector<double>& nodal_forces_n) const;

  private:
    struct Point {
        std::size_t node = 0;
        std::size_t quarter = 0; ///< index among the quarter's points
        bool right = false;      ///< mirrored from there
        bool back = false;
    };
    struct Image { ///< a node of the whole grid as one of the quarter's
        std::size_t quarter_node = 0;
        bool right = false;
        bool back = false;
    };
    Image image_of(std::size_t node) const;

    PlateSection section_;
    PlateGrid grid_;
    PlateGrid quarter_;
    std::vector<Point> points_;
    std::vector<std::size_t> point_of_node_;
    std::array<std::size_t, 4> base_points_{};
    std::vector<PlateSystem> systems_; ///< by symmetry: even-even, odd-even, even-odd, odd-odd
    std::vector<Square> by_force_;     ///< likewise, between the quarter's points
};

} // namespace drawercast::mold
