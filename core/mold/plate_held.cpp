// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_held.h"

#include "base/demand.h"

#include <Eigen/Cholesky>
#include <Eigen/Dense>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace drawercast::mold {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr double push_n_mm2 = 1e-3; ///< 1 kPa

Index index(std::size_t i) { return static_cast<Index>(i); }

std::size_t nearest(const std::vector<double>& lines, double at) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < lines.size(); ++i)
        if (std::abs(lines[i] - at) < std::abs(lines[best] - at)) best = i;
    return best;
}

/// The lift of a place between points, as shares of theirs.
struct Blend {
    struct Share {
        std::size_t point;
        double part;
    };
    std::vector<Share> shares;
};

Blend blend_at(const FreePlate& plate, shape::Vec at) {
    const PlateGrid& grid = plate.grid();
    const auto [column, u] = between(grid.x_mm, at.x);
    const auto [row, v] = between(grid.y_mm, at.y);
    Blend out;
    for (const auto& [dx, part_x] : {std::pair(0, 1 - u), std::pair(1, u)}) {
        for (const auto& [dy, part_y] : {std::pair(0, 1 - v), std::pair(1, v)}) {
            if (part_x * part_y < 1e-9) continue;
            const auto point = plate.point_of(
                grid.node(column + static_cast<std::size_t>(dx), row + static_cast<std::size_t>(dy)));
            DRAWERCAST_DEMAND(point != FreePlate::no_point, "closures stand on the walls");
            out.shares.push_back({point, part_x * part_y});
        }
    }
    return out;
}

/// All that holds the plate both ways: closures, battens, and the four springs taken off again.
struct Ties {
    std::vector<Blend> places;
    MatrixXd stiffness;
};

Ties ties_of(const FreePlate& plate, const std::vector<Hold>& holds, const std::vector<Batten>& battens) {
    Ties ties;
    for (const Hold& hold : holds) ties.places.push_back(blend_at(plate, hold.at));
    for (const std::size_t point : plate.base_points()) ties.places.push_back({{{point, 1}}});
    std::vector<Square> beams;
    for (const Batten& batten : battens) {
        for (const std::size_t node : nodes_of_line(plate.grid(), batten.along_x, batten.at_mm)) {
            const std::size_t point = plate.point_of(node);
            DRAWERCAST_DEMAND(point != FreePlate::no_point, "stiffeners stand where they may");
            ties.places.push_back({{{point, 1}}});
        }
        beams.push_back(
            beam_stiffness(batten.section, batten.along_x ? plate.grid().x_mm : plate.grid().y_mm));
    }
    const Index size = index(ties.places.size());
    ties.stiffness = MatrixXd::Zero(size, size);
    Index at = 0;
    for (const Hold& hold : holds) ties.stiffness(at, at) = hold.spring_n_mm, ++at;
    for (std::size_t i = 0; i < plate.base_points().size(); ++i, ++at)
        ties.stiffness(at, at) = -FreePlate::base_spring_n_mm;
    for (const Square& beam : beams) {
        for (std::size_t i = 0; i < beam.size; ++i)
            for (std::size_t j = 0; j < beam.size; ++j)
                ties.stiffness(at + index(i), at + index(j)) = beam.at(i, j);
        at += index(beam.size);
    }
    return ties;
}

double blended(const Blend& blend, const std::vector<double>& lifts) {
    double sum = 0;
    for (const auto& share : blend.shares) sum += share.part * lifts[share.point];
    return sum;
}

/// Lift of one place under 1 N at another.
double between(const FreePlate& plate, const Blend& a, const Blend& b) {
    double sum = 0;
    for (const auto& p : a.shares)
        for (const auto& q : b.shares) sum += p.part * q.part * plate.lift_by_force(p.point, q.point);
    return sum;
}

/// The plate with its ties, before it rests on anything.
struct Tied {
    const FreePlate& plate;
    Ties ties;
    VectorXd free;                         ///< lift of the ties' places on the free plate
    Eigen::PartialPivLU<MatrixXd> release; ///< I + flexibility·stiffness

    Tied(const FreePlate& of, Ties made, const std::vector<double>& free_lift)
        : plate(of), ties(std::move(made)), free(index(ties.places.size())) {
        const Index size = index(ties.places.size());
        MatrixXd flexibility(size, size);
        for (Index i = 0; i < size; ++i) {
            free(i) = blended(ties.places[static_cast<std::size_t>(i)], free_lift);
            for (Index j = 0; j <= i; ++j)
                flexibility(i, j) = flexibility(j, i) =
                    between(plate, ties.places[static_cast<std::size_t>(i)],
                            ties.places[static_cast<std::size_t>(j)]);
        }
        release.compute(MatrixXd::Identity(size, size) + flexibility * ties.stiffness);
    }

    /// Pushes of the points that rest, and what they make of the ties' lifts.
    std::pair<VectorXd, VectorXd> rest(const std::vector<std::size_t>& resting,
                                       const std::vector<double>& free_lift,
                                       const std::vector<double>& spring) const {
        if (resting.empty()) return {VectorXd(), release.solve(free)}; // it hangs on its ties alone
        const Index n = index(resting.size());
        const Index m = index(ties.places.size());
        MatrixXd across(m, n);
        MatrixXd own(n, n);
        VectorXd sunk(n);
        for (Index j = 0; j < n; ++j) {
            const std::size_t point = resting[static_cast<std::size_t>(j)];
            const Blend here{{{point, 1}}};
            for (Index i = 0; i < m; ++i)
                across(i, j) = between(plate, ties.places[static_cast<std::size_t>(i)], here);
            for (Index i = j; i < n; ++i)
                own(i, j) = plate.lift_by_force(resting[static_cast<std::size_t>(i)], point);
            own(j, j) += 1 / spring[point];
            sunk(j) = -free_lift[point];
        }
        const MatrixXd pull = across.transpose() * ties.stiffness; // on the places, felt at the points
        own.triangularView<Eigen::Lower>() -= pull * release.solve(across);
        sunk += pull * release.solve(free);
        const VectorXd push = own.selfadjointView<Eigen::Lower>().llt().solve(sunk);
        return {push, release.solve(free + across * push)};
    }
};

} // namespace

std::vector<std::size_t> nodes_of_line(const PlateGrid& grid, bool along_x, double at_mm) {
    std::vector<std::size_t> out;
    const std::size_t line = nearest(along_x ? grid.y_mm : grid.x_mm, at_mm);
    const std::size_t count = along_x ? grid.columns() : grid.rows();
    for (std::size_t i = 0; i < count; ++i) out.push_back(along_x ? grid.node(i, line) : grid.node(line, i));
    return out;
}

namespace {

std::vector<std::size_t> wanted_nodes(const PlateGrid& grid, const NodeAreas& areas,
                                      const std::vector<double>& across_mm,
                                      const std::vector<double>& deep_mm) {
    std::vector<std::size_t> out;
    for (std::size_t node = 0; node < grid.nodes(); ++node)
        if (areas.resting_mm2[node] > 0) out.push_back(node);
    for (const bool along_x : {false, true})
        for (const double at : along_x ? deep_mm : across_mm)
            for (const std::size_t node : nodes_of_line(grid, along_x, at)) out.push_back(node);
    return out;
}

} // namespace

PlateOnBox::PlateOnBox(const PlateSection& section, const PlateShape& shape,
                       const std::vector<double>& across_mm, const std::vector<double>& deep_mm,
                       const Fineness& fineness)
    : shape_(shape), grid_{plate_lines(shape.width_mm, shape.wall_mm, across_mm, fineness),
                           plate_lines(shape.depth_mm, shape.wall_mm, deep_mm, fineness)},
      areas_(node_areas(grid_, shape)), wanted_(wanted_nodes(grid_, areas_, across_mm, deep_mm)),
      plate_(section, grid_, wanted_), push_n_(grid_.nodes()), free_lift_(plate_.points()),
      rest_n_mm_(plate_.points()) {
    for (std::size_t node = 0; node < grid_.nodes(); ++node)
        push_n_[node] = push_n_mm2 * areas_.pushed_mm2[node];
    const auto unknowns = plate_.unknowns(push_n_);
    for (std::size_t point = 0; point < plate_.points(); ++point) {
        const std::size_t node = plate_.node_of(point);
        free_lift_[point] = unknowns[node_unknowns * node];
        rest_n_mm_[point] = shape.wall_elasticity_mpa / shape.height_mm * areas_.resting_mm2[node];
    }
}

Held PlateOnBox::held(const std::vector<Hold>& holds, const std::vector<Batten>& battens,
                      const std::vector<bool>& start) const {
    const Tied tied(plate_, ties_of(plate_, holds, battens), free_lift_);
    Held out;
    out.rests = start;
    if (out.rests.empty()) {
        out.rests.assign(plate_.points(), false);
        for (std::size_t point = 0; point < plate_.points(); ++point) {
            const std::size_t column = plate_.node_of(point) % grid_.columns();
            const std::size_t row = plate_.node_of(point) / grid_.columns();
            out.rests[point] =
                column == 0 || row == 0 || column + 1 == grid_.columns() || row + 1 == grid_.rows();
        }
    }
    constexpr int many = 25;
    constexpr int enough = 400;
    std::vector<double> forces;
    for (bool settled = false; !settled; ++out.rounds) {
        DRAWERCAST_DEMAND(out.rounds < enough, "the plate comes to rest");
        std::vector<std::size_t> resting;
        for (std::size_t point = 0; point < plate_.points(); ++point)
            if (out.rests[point]) resting.push_back(point);
        const auto [push, tie_lift] = tied.rest(resting, free_lift_, rest_n_mm_);
        const VectorXd tie_pull = tied.ties.stiffness * tie_lift;

        forces.assign(plate_.points(), 0);
        out.resting_n = push.sum();
        for (std::size_t i = 0; i < resting.size(); ++i) forces[resting[i]] += push(index(i));
        for (std::size_t i = 0; i < tied.ties.places.size(); ++i)
            for (const auto& share : tied.ties.places[i].shares)
                forces[share.point] -= share.part * tie_pull(index(i));
        out.lift_mm = plate_.lifts(forces);
        for (std::size_t point = 0; point < plate_.points(); ++point) out.lift_mm[point] += free_lift_[point];
        out.pull_n.assign(holds.size(), 0);
        for (std::size_t i = 0; i < holds.size(); ++i) out.pull_n[i] = tie_pull(index(i));

        settled = true;
        std::size_t worst = 0; // of those that must change, by depth or pull
        double most = 0;
        const auto must_change = [&](std::size_t point) {
            return rest_n_mm_[point] > 0 && out.rests[point] != (out.lift_mm[point] < 0);
        };
        for (std::size_t point = 0; point < plate_.points(); ++point) {
            if (!must_change(point)) continue;
            settled = false;
            if (std::abs(out.lift_mm[point]) > most) most = std::abs(out.lift_mm[point]), worst = point;
        }
        if (settled) break;
        for (std::size_t point = 0; point < plate_.points(); ++point)
            if (out.rounds < many ? must_change(point) : point == worst) out.rests[point] = !out.rests[point];
    }
    out.force_n = push_n_;
    for (std::size_t point = 0; point < plate_.points(); ++point)
        out.force_n[plate_.node_of(point)] += forces[point];
    return out;
}

} // namespace drawercast::mold
