// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_element.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace drawercast::mold {

/// Where a value lies among rising lines: past the one of index `first`, by that part of the way to the next.
/// Beyond the outer lines it lies on them. At least two lines.
struct Between {
    std::size_t first = 0;
    double part = 0;
};
Between between(const std::vector<double>& lines, double value);

/// A rectangle cut by lines: nodes where they cross, row by row from the front.
struct PlateGrid {
    std::vector<double> x_mm; ///< rising, at least two
    std::vector<double> y_mm;
    bool operator==(const PlateGrid&) const = default;

    std::size_t columns() const { return x_mm.size(); }
    std::size_t rows() const { return y_mm.size(); }
    std::size_t nodes() const { return x_mm.size() * y_mm.size(); }
    std::size_t node(std::size_t column, std::size_t row) const { return row * x_mm.size() + column; }
};

/// A square matrix, row by row.
struct Square {
    std::size_t size = 0;
    std::vector<double> values;
    double at(std::size_t row, std::size_t column) const { return values[row * size + column]; }
};

/// What holds the plate: unknowns kept at zero (node_unknowns for each node) and springs under the lifts.
struct Holding {
    std::vector<bool> fixed;
    std::vector<double> spring_n_mm; ///< for each node
};

/// The finite elements of one rectangular plate, factored once: a Cholesky factor by blocks, each block the
/// unknowns along one line of the grid's shorter direction. The holding must leave no motion free.
class PlateSystem {
  public:
    PlateSystem(const PlateSection& section, const PlateGrid& grid, const Holding& holding);
    ~PlateSystem();
    PlateSystem(PlateSystem&&) noexcept;
    PlateSystem& operator=(PlateSystem&&) noexcept;

    /// Unknowns under nodal loads (both node_unknowns for each node, N and N·mm).
    std::vector<double> solve(const std::vector<double>& loads) const;

    /// Lift of each of `nodes` under 1 N at each of them.
    Square lift_by_force(const std::vector<std::size_t>& nodes) const;

  private:
    struct Factor;
    std::unique_ptr<Factor> factor_;
};

} // namespace drawercast::mold
