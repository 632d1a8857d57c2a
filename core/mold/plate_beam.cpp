// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_beam.h"

#include <Eigen/Cholesky>
#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace drawercast::mold {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double shear_share = 5.0 / 6;
constexpr double along_grain = 15; ///< E over G

using BeamMatrix = Eigen::Matrix4d; ///< lift and slope at one end, lift and slope at the other

BeamMatrix element(const BeamSection& section, double length) {
    const double ei = section.bending_nmm2;
    const double phi = 12 * ei / (section.shear_n * length * length);
    const double k = ei / ((1 + phi) * length * length * length);
    const double l = length;
    BeamMatrix m;
    m << 12, 6 * l, -12, 6 * l,                              //
        6 * l, (4 + phi) * l * l, -6 * l, (2 - phi) * l * l, //
        -12, -6 * l, 12, -6 * l,                             //
        6 * l, (2 - phi) * l * l, -6 * l, (4 + phi) * l * l;
    return k * m;
}

struct Assembled {
    MatrixXd lift, mixed, slope; ///< lift–lift, slope–lift, slope–slope
};

Assembled assembled(const BeamSection& section, const std::vector<double>& at_mm) {
    const auto n = static_cast<Index>(at_mm.size());
    Assembled all{MatrixXd::Zero(n, n), MatrixXd::Zero(n, n), MatrixXd::Zero(n, n)};
    for (Index e = 0; e + 1 < n; ++e) {
        const auto i = static_cast<std::size_t>(e);
        const BeamMatrix k = element(section, at_mm[i + 1] - at_mm[i]);
        for (Index a = 0; a < 2; ++a) {
            for (Index b = 0; b < 2; ++b) {
                all.lift(e + a, e + b) += k(2 * a, 2 * b);
                all.mixed(e + a, e + b) += k(2 * a + 1, 2 * b);
                all.slope(e + a, e + b) += k(2 * a + 1, 2 * b + 1);
            }
        }
    }
    return all;
}

} // namespace

BeamSection beam_section(const job::Stiffener& piece, bool glued, const PlateSection& plate,
                         double strip_mm) {
    const double area = piece.width_mm * piece.height_mm;
    const double own = piece.width_mm * std::pow(piece.height_mm, 3) / 12;
    BeamSection out;
    out.shear_n = shear_share * piece.elasticity_mpa / along_grain * area;
    out.bending_nmm2 = piece.elasticity_mpa * own;
    out.stress_by_curvature_n_mm = piece.elasticity_mpa * piece.height_mm / 2;
    if (!glued) return out;
    const double strip_ea = plate.elasticity_mpa * plate.thickness_mm * strip_mm;
    const double piece_ea = piece.elasticity_mpa * area;
    const double apart = (plate.thickness_mm + piece.height_mm) / 2; // of the two centers
    out.bending_nmm2 += strip_ea * piece_ea / (strip_ea + piece_ea) * apart * apart;
    const double neutral = apart * strip_ea / (strip_ea + piece_ea); // below the piece's own center
    out.stress_by_curvature_n_mm = piece.elasticity_mpa * (piece.height_mm / 2 + neutral);
    out.plate_stress_by_curvature_n_mm = plate.elasticity_mpa * (apart - neutral + plate.thickness_mm / 2);
    return out;
}

Square beam_stiffness(const BeamSection& section, const std::vector<double>& at_mm) {
    const Assembled all = assembled(section, at_mm);
    const MatrixXd k = all.lift - all.mixed.transpose() * all.slope.ldlt().solve(all.mixed);
    Square out{at_mm.size(), std::vector<double>(at_mm.size() * at_mm.size())};
    for (std::size_t i = 0; i < out.size; ++i)
        for (std::size_t j = 0; j < out.size; ++j)
            out.values[i * out.size + j] = k(static_cast<Index>(i), static_cast<Index>(j));
    return out;
}

double beam_moment(const BeamSection& section, const std::vector<double>& at_mm,
                   const std::vector<double>& lift_mm) {
    const Assembled all = assembled(section, at_mm);
    const VectorXd lift = Eigen::Map<const VectorXd>(lift_mm.data(), static_cast<Index>(lift_mm.size()));
    const VectorXd slope = -all.slope.ldlt().solve(all.mixed * lift);
    double greatest = 0;
    for (std::size_t i = 0; i + 1 < at_mm.size(); ++i) {
        const auto e = static_cast<Index>(i);
        const Eigen::Vector4d ends{lift(e), slope(e), lift(e + 1), slope(e + 1)};
        const Eigen::Vector4d forces = element(section, at_mm[i + 1] - at_mm[i]) * ends;
        greatest = std::max({greatest, std::abs(forces(1)), std::abs(forces(3))});
    }
    return greatest;
}

} // namespace drawercast::mold
