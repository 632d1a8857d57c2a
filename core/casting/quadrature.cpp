// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/quadrature.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

/// The Legendre polynomial of degree `n` at `x` and its derivative.
struct Legendre {
    double value;
    double slope;
};
Legendre legendre(int n, double x) {
    double before = 1;
    double value = x;
    for (int k = 2; k <= n; ++k) {
        const double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
        before = value;
        value = next;
    }
    return {value, n * (x * value - before) / (x * x - 1)};
}

/// The polynomial through `points` at `x`.
double through(std::span<const shape::Vec> points, double x) {
    double sum = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        double term = points[i].y;
        for (std::size_t j = 0; j < points.size(); ++j)
            if (j != i) term *= (x - points[j].x) / (points[i].x - points[j].x);
        sum += term;
    }
    return sum;
}

} // namespace

std::vector<Node> gauss_nodes(int count, double from, double to) {
    std::vector<Node> nodes;
    const double half = (to - from) / 2;
    for (int i = count; i >= 1; --i) {
        double x = std::cos(std::numbers::pi * (i - 0.25) / (count + 0.5));
        for (int step = 0; step < 8; ++step) {
            const Legendre p = legendre(count, x);
            x -= p.value / p.slope;
        }
        const double slope = legendre(count, x).slope;
        nodes.push_back({from + half * (1 + x), half * 2 / ((1 - x * x) * slope * slope)});
    }
    return nodes;
}

double integral_through(std::span<const shape::Vec> points) {
    const std::size_t count = std::min<std::size_t>(4, points.size());
    double sum = 0;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const std::size_t first = std::min(i > 0 ? i - 1 : 0, points.size() - count);
        const auto near = points.subspan(first, count);
        const double middle = (points[i].x + points[i + 1].x) / 2;
        const double half = (points[i + 1].x - points[i].x) / 2;
        const double off = half / std::numbers::sqrt3; // two Gauss nodes integrate a cubic exactly
        sum += half * (through(near, middle - off) + through(near, middle + off));
    }
    return sum;
}

} // namespace drawercast::casting
