// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace drawercast::air {

/// A value for each cell of a mesh, its rim included.
using Values = std::vector<double>;
using Marks = std::vector<char>;

/// The inner box of a mold, from (0, 0), cut into equal upright cells. One row of cells around it has no room
/// and no way in, so that every cell has four neighbors: left −1, right +1, front −stride(), back +stride().
class Mesh {
  public:
    Mesh() = default;
    /// Cells no wider than `pitch_mm` either way.
    Mesh(double width_mm, double depth_mm, double pitch_mm);

    int columns() const { return columns_; }
    int rows() const { return rows_; }
    double dx() const { return dx_; }
    double dy() const { return dy_; }
    double cell_mm2() const { return dx_ * dy_; }
    std::size_t stride() const { return static_cast<std::size_t>(columns_) + 2; }
    std::size_t size() const { return stride() * (static_cast<std::size_t>(rows_) + 2); }
    std::size_t at(int column, int row) const {
        return static_cast<std::size_t>(row + 1) * stride() + static_cast<std::size_t>(column + 1);
    }
    int column_of(std::size_t cell) const { return static_cast<int>(cell % stride()) - 1; }
    int row_of(std::size_t cell) const { return static_cast<int>(cell / stride()) - 1; }
    shape::Vec center(std::size_t cell) const {
        return {(column_of(cell) + 0.5) * dx_, (row_of(cell) + 0.5) * dy_};
    }
    /// The cell that holds `p`; the nearest one where `p` lies outside.
    std::size_t holding(shape::Vec p) const {
        return at(std::clamp(static_cast<int>(p.x / dx_), 0, columns_ - 1),
                  std::clamp(static_cast<int>(p.y / dy_), 0, rows_ - 1));
    }
    bool operator==(const Mesh&) const = default;

  private:
    int columns_ = 0;
    int rows_ = 0;
    double dx_ = 1;
    double dy_ = 1;
};

/// Calls `with(cell)` for each cell but the rim, row by row.
template <class With>
void for_each_cell(const Mesh& mesh, With with) {
    for (int row = 0; row < mesh.rows(); ++row) {
        const std::size_t first = mesh.at(0, row);
        for (std::size_t cell = first; cell < first + static_cast<std::size_t>(mesh.columns()); ++cell)
            with(cell);
    }
}

} // namespace drawercast::air
