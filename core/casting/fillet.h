// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/quadrature.h"
#include "shape/contour.h"

#include <vector>

/// The clay fillet: a concave quarter round of radius r at the foot of a block. At height z over the board
/// the clay reaches x(z) = r − √(2rz − z²) from the block's outline.
namespace drawercast::casting {

double clay_reach(double radius_mm, double height_mm); ///< x(z); 0 from `radius_mm` up
double clay_height(double radius_mm, double reach_mm); ///< z(x), the same curve: it is its own mirror image

/// Volume of the clay around a block that stands alone, mm³, where no clay meets other clay and the block is
/// at least `radius_mm` high: A_f·P + A_f·x_f·(Σ convex turns − Σ over reflex corners of 2·tan(turn/2)),
/// turns in radians, arcs with theirs; A_f = r²(1 − π/4) the fillet's cross-section and x_f = r(10 − 3π)/(3(4
/// − π)) its centroid from the wall. For a convex outline A_f(P + 2πx_f). Source: Pappus' theorem on solids
/// of revolution.
double fillet_alone(const shape::Contour& outline, double radius_mm);

/// Heights at which the clay's plan area is to be known, and the weights that turn those areas into a volume:
/// Gauss in φ with z = r(1 − sin φ), in which plan areas are smooth at both ends.
struct ClayNode {
    double phi = 0;
    double height_mm = 0;
    double weight_mm = 0;  ///< Σ weight·area is the volume over heights 0 … radius
    double per_phi_mm = 0; ///< |dz/dφ|
};
std::vector<ClayNode> clay_nodes(double radius_mm, int count);

} // namespace drawercast::casting
