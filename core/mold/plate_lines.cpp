// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_lines.h"

#include "shape/boxes.h"

#include <algorithm>
#include <cmath>

namespace drawercast::mold {

namespace {

constexpr double growth = 1.6;     ///< of one element to the next, away from the wall
constexpr double most_on_rim = 20; ///< elements across a wall's top, its outer edge apart
constexpr double nearest_mm = 0.5; ///< lines nearer than this are one

/// From `from` to `to` (both left out of the list's end, `from` put in): elements that grow from `first` up
/// to `pitch`.
void add_graded(std::vector<double>& lines, double from, double to, double first, double pitch) {
    std::vector<double> sizes;
    double left = to - from;
    for (double size = first; size < pitch && left > 2 * size; size *= growth) {
        sizes.push_back(size);
        left -= size;
    }
    const auto rest = static_cast<std::size_t>(std::ceil(left / pitch - 1e-9));
    for (std::size_t i = 0; i < rest; ++i) sizes.push_back(left / static_cast<double>(rest));
    double at = from;
    for (const double size : sizes) {
        lines.push_back(at);
        at += size;
    }
}

/// From `from` (put in) to `to` (left out): even elements no larger than `size`.
void add_even(std::vector<double>& lines, double from, double to, double size) {
    const int parts = static_cast<int>(std::ceil((to - from) / size - 1e-9));
    for (int i = 0; i < parts; ++i) lines.push_back(from + (to - from) * i / parts);
}

/// Half plane a·x + b·y ≤ c with one of a, b zero: cuts the ring (Sutherland and Hodgman, 1974; a concave
/// ring's pieces stay joined by sides of no area).
shape::Ring cut(const shape::Ring& ring, bool along_x, double bound, double side) {
    shape::Ring out;
    const auto value = [&](shape::Vec p) { return side * ((along_x ? p.x : p.y) - bound); };
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const shape::Vec a = ring[i];
        const shape::Vec b = ring[(i + 1) % ring.size()];
        const double va = value(a);
        const double vb = value(b);
        if (va <= 0) out.push_back(a);
        if ((va < 0 && vb > 0) || (va > 0 && vb < 0)) out.push_back(a + (b - a) * (va / (va - vb)));
    }
    return out;
}

double ring_area_within(const shape::Ring& ring, const shape::Box& box) {
    const shape::Box around = shape::bounds(ring);
    if (!shape::near(around, box)) return 0;
    if (shape::holds(box, around)) return shape::area(ring);
    shape::Ring rest = cut(ring, true, box.min.x, -1);
    rest = cut(rest, true, box.max.x, 1);
    rest = cut(rest, false, box.min.y, -1);
    rest = cut(rest, false, box.max.y, 1);
    return rest.size() < 3 ? 0 : shape::area(rest);
}

double before(const std::vector<double>& lines, std::size_t i) {
    return i == 0 ? lines[i] : (lines[i - 1] + lines[i]) / 2;
}
double after(const std::vector<double>& lines, std::size_t i) {
    return i + 1 == lines.size() ? lines[i] : (lines[i] + lines[i + 1]) / 2;
}

} // namespace

std::vector<double> plate_lines(double inside_mm, double wall_mm, std::vector<double> through_mm,
                                const Fineness& fineness) {
    const double middle = inside_mm / 2;
    for (double& at : through_mm) at = std::min(at, inside_mm - at);
    through_mm.push_back(middle);
    std::sort(through_mm.begin(), through_mm.end());

    std::vector<double> lines;
    const double quarter = wall_mm / 4;
    const double rim =
        std::max(fineness.rim_mm, wall_mm / most_on_rim); // a wall of 200 mm must not take hours
    add_even(lines, -4 * quarter, -3 * quarter, rim / 2); // the plate pries on its outer edge
    add_even(lines, -3 * quarter, -2 * quarter, rim);
    add_even(lines, -2 * quarter, 0, rim);
    double from = 0;
    for (const double to : through_mm) {
        if (to - from < nearest_mm) continue;
        add_graded(lines, from, to, std::min(from == 0 ? rim : fineness.pitch_mm, fineness.pitch_mm),
                   fineness.pitch_mm);
        from = to;
    }
    const std::size_t half = lines.size();
    lines.push_back(middle);
    for (std::size_t i = half; i-- > 0;) lines.push_back(inside_mm - lines[i]);
    return lines;
}

double area_within(const shape::Region& region, const shape::Box& box) {
    double sum = 0;
    for (const shape::Patch& patch : region.patches) {
        sum += ring_area_within(patch.outer, box);
        for (const shape::Ring& hole : patch.holes) sum += ring_area_within(hole, box); // clockwise: less
    }
    return sum;
}

NodeAreas node_areas(const PlateGrid& grid, const PlateShape& shape) {
    NodeAreas out{std::vector<double>(grid.nodes()), std::vector<double>(grid.nodes())};
    for (std::size_t row = 0; row < grid.rows(); ++row) {
        for (std::size_t column = 0; column < grid.columns(); ++column) {
            const shape::Box cell{{before(grid.x_mm, column), before(grid.y_mm, row)},
                                  {after(grid.x_mm, column), after(grid.y_mm, row)}};
            const double open = area_within(shape.opening, cell);
            const std::size_t node = grid.node(column, row);
            const double resting = cell.width() * cell.height() - open;
            out.pushed_mm2[node] = std::max(0.0, open - area_within(shape.through, cell));
            out.resting_mm2[node] = resting > 1e-3 ? resting : 0; // the opening's vertices lie on a grid
        }
    }
    return out;
}

} // namespace drawercast::mold
