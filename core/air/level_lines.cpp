// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/level_lines.h"

namespace drawercast::air {
namespace {

/// The cells' centers.
class Centers {
  public:
    Centers(const Mesh& mesh, const Values& values) : mesh_(mesh), values_(values) {}

    std::size_t columns() const { return static_cast<std::size_t>(mesh_.columns()); }
    std::size_t rows() const { return static_cast<std::size_t>(mesh_.rows()); }
    bool known(shape::GridNode node) const { return value(node) > 0; }
    double value(shape::GridNode node) const { return values_[cell(node)]; }
    shape::Vec place(shape::GridNode node) const { return mesh_.center(cell(node)); }

  private:
    std::size_t cell(shape::GridNode node) const {
        return mesh_.at(static_cast<int>(node.column), static_cast<int>(node.row));
    }

    const Mesh& mesh_;
    const Values& values_;
};

} // namespace

std::vector<shape::LevelLine> level_lines(const Mesh& mesh, const Values& values, double level) {
    const Centers centers(mesh, values);
    return shape::LevelTracer(centers, level).lines();
}

} // namespace drawercast::air
