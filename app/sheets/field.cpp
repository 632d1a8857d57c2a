// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/field.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

namespace {

/// Lines no further apart than `pitch`, the old ones among them.
std::vector<double> finer(const std::vector<double>& lines, double pitch) {
    std::vector<double> out;
    for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
        const double gap = lines[i + 1] - lines[i];
        const int parts = std::max(1, static_cast<int>(std::ceil(gap / pitch)));
        for (int k = 0; k < parts; ++k) out.push_back(lines[i] + gap * k / parts);
    }
    if (!lines.empty()) out.push_back(lines.back());
    return out;
}

/// Slope at each line by the parabola through it and its neighbors; one-sided at the ends.
std::vector<double> slopes(const std::vector<double>& x, const std::vector<double>& v) {
    const std::size_t n = x.size();
    std::vector<double> steep(n - 1), out(n);
    for (std::size_t i = 0; i + 1 < n; ++i) steep[i] = (v[i + 1] - v[i]) / (x[i + 1] - x[i]);
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double before = x[i] - x[i - 1], after = x[i + 1] - x[i];
        out[i] = (steep[i - 1] * after + steep[i] * before) / (before + after);
    }
    out.front() = steep.front();
    out.back() = steep.back();
    return out;
}

/// `v` at `x`, asked at `wanted`, which has all of `x` among it.
std::vector<double> along(const std::vector<double>& x, const std::vector<double>& v,
                          const std::vector<double>& wanted) {
    const auto slope = slopes(x, v);
    std::vector<double> out;
    out.reserve(wanted.size());
    std::size_t i = 0;
    for (const double at : wanted) {
        while (i + 2 < x.size() && at >= x[i + 1]) ++i;
        const double h = x[i + 1] - x[i], t = (at - x[i]) / h, s = 1 - t;
        out.push_back(v[i] * s * s * (1 + 2 * t) + v[i + 1] * t * t * (1 + 2 * s) +
                      h * t * s * (slope[i] * s - slope[i + 1] * t));
    }
    return out;
}

std::pair<std::size_t, double> span_of(const std::vector<double>& lines, double at) {
    const auto after = std::upper_bound(lines.begin() + 1, lines.end() - 1, at);
    const auto i = static_cast<std::size_t>(after - lines.begin()) - 1;
    return {i, std::clamp((at - lines[i]) / (lines[i + 1] - lines[i]), 0.0, 1.0)};
}

} // namespace

Field refined(const Field& field, double pitch_mm) {
    if (field.x_mm.size() < 2 || field.y_mm.size() < 2) return field;
    Field out{finer(field.x_mm, pitch_mm), finer(field.y_mm, pitch_mm), {}};
    const std::size_t wide = out.x_mm.size(), rows = field.y_mm.size();
    std::vector<std::vector<double>> by_row;
    for (std::size_t row = 0; row < rows; ++row) {
        const auto from = field.values.begin() + static_cast<std::ptrdiff_t>(row * field.x_mm.size());
        by_row.push_back(
            along(field.x_mm, {from, from + static_cast<std::ptrdiff_t>(field.x_mm.size())}, out.x_mm));
    }
    out.values.resize(wide * out.y_mm.size());
    std::vector<double> upright(rows);
    for (std::size_t column = 0; column < wide; ++column) {
        for (std::size_t row = 0; row < rows; ++row) upright[row] = by_row[row][column];
        const auto values = along(field.y_mm, upright, out.y_mm);
        for (std::size_t row = 0; row < values.size(); ++row) out.values[row * wide + column] = values[row];
    }
    return out;
}

Field field_of(const mold::LiftField& lift) { return {lift.x_mm, lift.y_mm, lift.lift_mm}; }

Field field_of(const air::AirMap& map) {
    const air::Mesh& mesh = map.mesh;
    Field out;
    const auto lines = [](int count, double pitch) { // cell centers, and the walls on both sides
        std::vector<double> at{0};
        for (int i = 0; i < count; ++i) at.push_back((i + 0.5) * pitch);
        at.push_back(count * pitch);
        return at;
    };
    out.x_mm = lines(mesh.columns(), mesh.dx());
    out.y_mm = lines(mesh.rows(), mesh.dy());
    for (int row = -1; row <= mesh.rows(); ++row)
        for (int column = -1; column <= mesh.columns(); ++column)
            out.values.push_back(map.arrival[mesh.at(std::clamp(column, 0, mesh.columns() - 1),
                                                     std::clamp(row, 0, mesh.rows() - 1))]);
    return out;
}

double value_at(const Field& field, Vec p) {
    const auto [column, u] = span_of(field.x_mm, p.x);
    const auto [row, v] = span_of(field.y_mm, p.y);
    return (1 - v) * ((1 - u) * field.at(column, row) + u * field.at(column + 1, row)) +
           v * ((1 - u) * field.at(column, row + 1) + u * field.at(column + 1, row + 1));
}

} // namespace drawercast::sheets
