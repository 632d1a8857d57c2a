// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace drawercast::mold {

/// An isotropic plate that bends and shears, N and mm.
struct PlateSection {
    double thickness_mm = 0;
    double elasticity_mpa = 0;
    double poisson = 0;
    bool operator==(const PlateSection&) const = default;

    double bending_nmm() const; ///< D = E t³/(12(1 − ν²))
    double shear_n_mm() const;  ///< 5/6·G·t with G = E/(2(1 + ν))
};

/// Unknowns of a node: lift w and the slopes of the normal βx, βy (∂w/∂x and ∂w/∂y of a plate that does not
/// shear).
inline constexpr int node_unknowns = 3;
inline constexpr int element_unknowns = 12;
using ElementMatrix = std::array<std::array<double, element_unknowns>, element_unknowns>;
using ElementVector = std::array<double, element_unknowns>;

/// Stiffness of a rectangle a × b (along x and y), nodes (0, 0), (a, 0), (0, b), (a, b). Reissner and
/// Mindlin's plate with bilinear lift and slopes; the shear strains are those at the middle of the sides, so
/// that a thin plate does not lock. Source: Bathe and Dvorkin (1985), Int. J. Numer. Meth. Engng. 21,
/// 367–383.
ElementMatrix element_stiffness(const PlateSection& section, double a_mm, double b_mm);

/// Moments per length at the middle of the element, N: about y (bending along x), about x, twisting.
struct Moments {
    double x = 0;
    double y = 0;
    double xy = 0;
};
Moments middle_moments(const PlateSection& section, double a_mm, double b_mm, const ElementVector& unknowns);

/// Greatest bending stress of the plate's faces under these moments: 6·(largest principal moment)/t².
double face_stress_mpa(const Moments& moments, double thickness_mm);

} // namespace drawercast::mold
