// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/covered.h"

#include <cmath>
#include <utility>

namespace drawercast::air {
namespace {

using shape::Vec;

/// Sums up, cell by cell of a window, what the sides leave on their right: along a row the running sum is
/// then how much of each cell lies inside. In units of cells.
class Tally {
  public:
    Tally(const shape::Box& box, const Mesh& mesh) : mesh_(mesh) {
        const auto cell = [](double at, int count) {
            return std::clamp(static_cast<int>(std::floor(at)), 0, count - 1);
        };
        first_column_ = cell(box.min.x / mesh.dx(), mesh.columns());
        first_row_ = cell(box.min.y / mesh.dy(), mesh.rows());
        columns_ = cell(box.max.x / mesh.dx(), mesh.columns()) - first_column_ + 1;
        rows_ = cell(box.max.y / mesh.dy(), mesh.rows()) - first_row_ + 1;
        sums_.assign(static_cast<std::size_t>(columns_ + 1) * static_cast<std::size_t>(rows_), 0.0);
    }

    void add_side(Vec from, Vec to) {
        Vec a{from.x / mesh_.dx() - first_column_, from.y / mesh_.dy() - first_row_};
        Vec b{to.x / mesh_.dx() - first_column_, to.y / mesh_.dy() - first_row_};
        double sign = -1; // counter-clockwise, the inside ends at a side that goes up
        if (a.y > b.y) std::swap(a, b), sign = 1;
        const double low = std::max(a.y, 0.0);
        const double high = std::min(b.y, static_cast<double>(rows_));
        for (int row = static_cast<int>(low); row < rows_ && row < high; ++row) {
            const double from_y = std::max(low, static_cast<double>(row));
            const double to_y = std::min(high, row + 1.0);
            if (to_y <= from_y) continue;
            const auto x_at = [&](double y) { return a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y); };
            add_in_row(row, x_at(from_y), x_at(to_y), sign * (to_y - from_y));
        }
    }

    std::vector<Covered> take() const {
        std::vector<Covered> out;
        for (int row = 0; row < rows_; ++row) {
            double sum = 0;
            for (int column = 0; column < columns_; ++column) {
                sum += sums_[index(column, row)];
                const double share = std::clamp(sum, 0.0, 1.0);
                if (share > 1e-9) out.push_back({mesh_.at(first_column_ + column, first_row_ + row), share});
            }
        }
        return out;
    }

  private:
    std::size_t index(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_ + 1) +
               static_cast<std::size_t>(column);
    }

    /// A piece of a side within one row, `rise` of it, from x0 to x1.
    void add_in_row(int row, double x0, double x1, double rise) {
        if (x0 > x1) std::swap(x0, x1);
        x0 = std::clamp(x0, 0.0, static_cast<double>(columns_));
        x1 = std::clamp(x1, 0.0, static_cast<double>(columns_));
        int column = std::min(static_cast<int>(x0), columns_ - 1);
        double from = x0;
        do {
            const double to = std::min(x1, column + 1.0);
            const double part = x1 > x0 ? rise * (to - from) / (x1 - x0) : rise;
            const double middle = (from + to) / 2 - column;
            sums_[index(column, row)] += part * (1 - middle);
            sums_[index(column + 1, row)] += part * middle;
            from = to;
            ++column;
        } while (from < x1 && column < columns_);
    }

    const Mesh& mesh_;
    int first_column_ = 0;
    int first_row_ = 0;
    int columns_ = 0;
    int rows_ = 0;
    Values sums_;
};

} // namespace

std::vector<Covered> covered_by(std::span<const shape::Ring> rings, const Mesh& mesh) {
    shape::Box box;
    for (const shape::Ring& ring : rings) box.add(shape::bounds(ring));
    if (box.empty()) return {};
    Tally tally(box, mesh);
    for (const shape::Ring& ring : rings)
        for (std::size_t i = 0; i < ring.size(); ++i) tally.add_side(ring[i], ring[(i + 1) % ring.size()]);
    return tally.take();
}

} // namespace drawercast::air
