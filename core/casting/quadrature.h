// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <span>
#include <vector>

namespace drawercast::casting {

struct Node {
    double at = 0;
    double weight = 0;
};

/// Gauss-Legendre nodes from `from` to `to`, ascending: exact for polynomials of degree 2·count − 1.
/// Nodes by Newton's method on the Legendre recurrence. Source: Abramowitz and Stegun (1964), 25.4.29.
std::vector<Node> gauss_nodes(int count, double from, double to);

/// Integral of a smooth curve known at `points` (x ascending) only: cubics through each four neighbors.
double integral_through(std::span<const shape::Vec> points);

} // namespace drawercast::casting
