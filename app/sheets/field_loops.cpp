// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/level_lines.h"

#include "sheets/field.h"

namespace drawercast::sheets {

namespace {

/// The field with a rim of its own edge lines on which nothing is high: every line on it then comes back to
/// where it began.
class Rimmed {
  public:
    Rimmed(const Field& field, double level) : field_(field), low_(level - 1) {}

    std::size_t columns() const { return field_.x_mm.size() + 2; }
    std::size_t rows() const { return field_.y_mm.size() + 2; }
    double value(shape::GridNode n) const {
        if (n.column == 0 || n.row == 0 || n.column + 1 == columns() || n.row + 1 == rows()) return low_;
        return field_.at(n.column - 1, n.row - 1);
    }
    Vec place(shape::GridNode n) const {
        return {field_.x_mm[inner(n.column, columns())], field_.y_mm[inner(n.row, rows())]};
    }

  private:
    static std::size_t inner(std::size_t i, std::size_t count) {
        return i == 0 ? 0 : i + 1 == count ? count - 3 : i - 1;
    }

    const Field& field_;
    double low_;
};

} // namespace

std::vector<std::vector<Vec>> level_loops(const Field& field, double level) {
    if (field.x_mm.size() < 2 || field.y_mm.size() < 2) return {};
    const Rimmed rimmed(field, level);
    auto loops = shape::LevelTracer(rimmed, level).lines();
    for (auto& loop : loops) loop.pop_back(); // the first point again
    return loops;
}

Path loops_path(const std::vector<std::vector<Vec>>& loops) {
    Path path;
    for (const auto& loop : loops)
        if (loop.size() > 2) path = joined(std::move(path), polygon(loop));
    return path;
}

} // namespace drawercast::sheets
