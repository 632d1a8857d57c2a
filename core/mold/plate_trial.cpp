// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_trial.h"

#include "mold/screws.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace drawercast::mold {

namespace {

constexpr double soft = 0.5;
constexpr double hard = 2;
constexpr double edge_step_mm = 6; ///< between points of the opening's edge that are looked at

std::vector<Hold> holds_of(const PlateDesign& design, double factor) {
    std::vector<Hold> out;
    for (const ClosureAt& closure : design.closures)
        out.push_back(
            {closure.at.vec(),
             factor * (closure.stiffener_end ? design.end_closure : design.closure).stiffness_n_mm});
    return out;
}

std::vector<Batten> battens_of(const PlateOnBox& box, const PlateDesign& design) {
    std::vector<Batten> out;
    for (const StiffenerAt& at : design.stiffeners) {
        const bool along_x = at.from.y_mm == at.to.y_mm;
        const double span = along_x ? box.shape().width_mm : box.shape().depth_mm,
                     side = along_x ? box.shape().depth_mm : box.shape().width_mm;
        const double pitch = side / static_cast<double>(design.stiffeners.size() + 1);
        out.push_back({along_x, along_x ? at.from.y_mm : at.from.x_mm,
                       beam_section(*design.stiffener, design.glued, box.plate().section(),
                                    std::min(span / 4, pitch))});
    }
    return out;
}

struct Bow {
    double mm = 0;
    shape::Vec at;
};

Bow bow_of(const PlateOnBox& box, const std::vector<double>& unknowns) {
    const PlateGrid& grid = box.plate().grid();
    Bow out;
    for (std::size_t node = 0; node < grid.nodes(); ++node) {
        const double lift = unknowns[node_unknowns * node];
        if (box.areas().pushed_mm2[node] > 0 && lift > out.mm)
            out = {lift, {grid.x_mm[node % grid.columns()], grid.y_mm[node / grid.columns()]}};
    }
    return out;
}

double lift_at(const PlateGrid& grid, const std::vector<double>& unknowns, shape::Vec p) {
    const auto [column, u] = between(grid.x_mm, p.x);
    const auto [row, v] = between(grid.y_mm, p.y);
    // named anew: clang++ before 16 lets no lambda have a structured binding
    const auto lift = [&, column = column, row = row](std::size_t dx, std::size_t dy) {
        return unknowns[node_unknowns * grid.node(column + dx, row + dy)];
    };
    return (1 - v) * ((1 - u) * lift(0, 0) + u * lift(1, 0)) + v * ((1 - u) * lift(0, 1) + u * lift(1, 1));
}

double gap_along(const PlateGrid& grid, const std::vector<double>& unknowns, const shape::Ring& ring) {
    double most = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const shape::Vec a = ring[i];
        const shape::Vec b = ring[(i + 1) % ring.size()];
        const int steps = std::max(1, static_cast<int>(std::ceil(shape::length(b - a) / edge_step_mm)));
        for (int step = 0; step < steps; ++step)
            most = std::max(most, lift_at(grid, unknowns, a + (b - a) * (static_cast<double>(step) / steps)));
    }
    return most;
}

double gap_of(const PlateOnBox& box, const std::vector<double>& unknowns) {
    double most = 0;
    for (const shape::Patch& patch : box.shape().opening.patches) {
        most = std::max(most, gap_along(box.plate().grid(), unknowns, patch.outer));
        for (const shape::Ring& hole : patch.holes)
            most = std::max(most, gap_along(box.plate().grid(), unknowns, hole));
    }
    return most;
}

/// Near a closure thin-plate stresses mean nothing: as far as the plate is thick, or under its head.
bool beside_closure(const PlateDesign& design, shape::Vec p) {
    return std::any_of(design.closures.begin(), design.closures.end(), [&](const ClosureAt& closure) {
        const auto& kind = closure.stiffener_end ? design.end_closure : design.closure;
        return shape::length(closure.at.vec() - p) <
               std::max(design.board.thickness_mm, head_radius_mm(kind));
    });
}

double stress_of(const PlateOnBox& box, const PlateDesign& design, const std::vector<double>& unknowns) {
    const PlateGrid& grid = box.plate().grid();
    double most = 0;
    for (std::size_t row = 0; row + 1 < grid.rows(); ++row) {
        for (std::size_t column = 0; column + 1 < grid.columns(); ++column) {
            const double a = grid.x_mm[column + 1] - grid.x_mm[column];
            const double b = grid.y_mm[row + 1] - grid.y_mm[row];
            const std::array nodes{grid.node(column, row), grid.node(column + 1, row),
                                   grid.node(column, row + 1), grid.node(column + 1, row + 1)};
            ElementVector u{};
            for (std::size_t i = 0; i < u.size(); ++i)
                u[i] = unknowns[node_unknowns * nodes[i / node_unknowns] + i % node_unknowns];
            const double stress = face_stress_mpa(middle_moments(box.plate().section(), a, b, u),
                                                  box.plate().section().thickness_mm);
            if (stress > most && !beside_closure(design, {grid.x_mm[column] + a / 2, grid.y_mm[row] + b / 2}))
                most = stress;
        }
    }
    return most;
}

struct BattenStress {
    double piece_mpa = 0;
    double plate_mpa = 0; ///< of the plate, which works with a glued one as one section
};

BattenStress batten_stress_of(const PlateOnBox& box, const std::vector<Batten>& battens,
                              const std::vector<double>& unknowns) {
    const PlateGrid& grid = box.plate().grid();
    BattenStress most;
    for (const Batten& batten : battens) {
        std::vector<double> lift;
        for (const std::size_t node : nodes_of_line(grid, batten.along_x, batten.at_mm))
            lift.push_back(unknowns[node_unknowns * node]);
        const double moment = beam_moment(batten.section, batten.along_x ? grid.x_mm : grid.y_mm, lift);
        const double curvature = moment / batten.section.bending_nmm2;
        most.piece_mpa = std::max(most.piece_mpa, curvature * batten.section.stress_by_curvature_n_mm);
        most.plate_mpa = std::max(most.plate_mpa, curvature * batten.section.plate_stress_by_curvature_n_mm);
    }
    return most;
}

/// Points that rest if the plate lies like that one; empty where nothing is known.
std::vector<bool> rests_like(const FreePlate& plate, const LiftField& like) {
    if (like.lift_mm.empty()) return {};
    const PlateGrid& grid = plate.grid();
    std::vector<bool> out(plate.points());
    for (std::size_t point = 0; point < plate.points(); ++point) {
        const std::size_t node = plate.node_of(point);
        const auto column = between(like.x_mm, grid.x_mm[node % grid.columns()]);
        const auto row = between(like.y_mm, grid.y_mm[node / grid.columns()]);
        const auto lift = [&](std::size_t dx, std::size_t dy) {
            return like.lift_mm[(row.first + dy) * like.x_mm.size() + column.first + dx];
        };
        out[point] = (1 - row.part) * ((1 - column.part) * lift(0, 0) + column.part * lift(1, 0)) +
                         row.part * ((1 - column.part) * lift(0, 1) + column.part * lift(1, 1)) <
                     0;
    }
    return out;
}

LiftField field_of(const PlateGrid& grid, const std::vector<double>& unknowns) {
    LiftField out{grid.x_mm, grid.y_mm, {}};
    out.lift_mm.reserve(grid.nodes());
    for (std::size_t node = 0; node < grid.nodes(); ++node)
        out.lift_mm.push_back(unknowns[node_unknowns * node]);
    return out;
}

} // namespace

PlateSection section_of(const job::Board& board) {
    return {board.thickness_mm, board.elasticity_mpa, board.poisson};
}

Trial trial_of(const PlateOnBox& box, const PlateDesign& design, double most_gap_mm, const LiftField& like) {
    const auto battens = battens_of(box, design);
    Trial out;
    const Held softer = box.held(holds_of(design, soft), battens, rests_like(box.plate(), like));
    const auto soft_unknowns = box.plate().unknowns(softer.force_n);
    out.gap_mm = gap_of(box, soft_unknowns);
    out.cut_short = out.gap_mm > most_gap_mm;
    if (out.cut_short) {
        out.lift = field_of(box.plate().grid(), soft_unknowns);
        return out;
    }
    const Held stated = box.held(holds_of(design, 1), battens, softer.rests);
    const auto unknowns = box.plate().unknowns(stated.force_n);
    const Bow bow = bow_of(box, unknowns);
    out.bow_mm = bow.mm;
    out.bow_at = bow.at;
    const BattenStress beside = batten_stress_of(box, battens, unknowns);
    out.stress_mpa = std::max(stress_of(box, design, unknowns), beside.plate_mpa);
    out.stiffener_stress_mpa = beside.piece_mpa;
    out.lift = field_of(box.plate().grid(), unknowns);
    out.pull_n = box.held(holds_of(design, hard), battens, stated.rests).pull_n;
    return out;
}

} // namespace drawercast::mold
