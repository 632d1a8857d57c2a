// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_held.h"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <vector>

/// One pressure plate of a drawer as large as the demo's, 480 × 360: condensed once (plate_condensed), then
/// closed by other screws and stiffeners (plate_candidate). Beside them in the same run what a candidate
/// would cost without condensing: the whole plate's equations with its closures and wall tops, in as many
/// rounds, by a library's sparse Cholesky factor (plate_direct). ratios.py reads the names.
namespace drawercast::mold {
namespace {

constexpr double width = 480, depth = 360, wall = 16, closure = 1500;
const PlateSection board{16, 2200, 0.25};

PlateShape box() {
    PlateShape shape{width, depth, 60, wall, 2200, {}, {}};
    shape.opening = shape::region_of(shape::Ring{{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    return shape;
}

const std::vector<double> across{width / 3, 2 * width / 3};

std::vector<Hold> holds(double spacing) {
    std::vector<Hold> all;
    const auto side = [&](double length, auto place) {
        const int gaps = static_cast<int>(std::ceil((length - 60) / spacing - 1e-9));
        for (int i = 0; i <= gaps; ++i) all.push_back({place(30 + (length - 60) * i / gaps), closure});
    };
    for (const double y : {-wall / 2, depth + wall / 2})
        side(width, [&](double s) { return shape::Vec{s, y}; });
    for (const double x : {-wall / 2, width + wall / 2})
        side(depth, [&](double s) { return shape::Vec{x, s}; });
    return all;
}

std::vector<Batten> battens() {
    const BeamSection section = beam_section({}, false, board, depth);
    return {{false, across[0], section}, {false, across[1], section}};
}

void plate_condensed(benchmark::State& state) {
    const PlateShape shape = box();
    for (auto _ : state) {
        const PlateOnBox plate(board, shape, across, {});
        benchmark::DoNotOptimize(plate.plate().points());
    }
}
BENCHMARK(plate_condensed)->Unit(benchmark::kMillisecond);

void plate_candidate(benchmark::State& state) {
    const PlateOnBox plate(board, box(), across, {});
    const auto on = state.range(0) == 0 ? std::vector<Batten>{} : battens();
    double spacing = 60;
    int rounds = 0;
    for (auto _ : state) {
        const Held held = plate.held(holds(spacing), on);
        rounds = held.rounds;
        benchmark::DoNotOptimize(held.resting_n);
        spacing = spacing > 90 ? 60 : spacing + 5;
    }
    state.counters["rounds"] = rounds;
}
BENCHMARK(plate_candidate)->Arg(0)->Arg(2)->Unit(benchmark::kMillisecond);

using Sparse = Eigen::SparseMatrix<double>;

/// The plate with closures and such wall tops as the answer rests on: all unknowns.
Sparse equations(const PlateOnBox& plate, const std::vector<Hold>& by, const std::vector<bool>& rests) {
    const PlateGrid& grid = plate.plate().grid();
    std::vector<Eigen::Triplet<double>> entries;
    for (std::size_t row = 0; row + 1 < grid.rows(); ++row) {
        for (std::size_t column = 0; column + 1 < grid.columns(); ++column) {
            const auto k = element_stiffness(board, grid.x_mm[column + 1] - grid.x_mm[column],
                                             grid.y_mm[row + 1] - grid.y_mm[row]);
            const std::size_t nodes[]{grid.node(column, row), grid.node(column + 1, row),
                                      grid.node(column, row + 1), grid.node(column + 1, row + 1)};
            for (std::size_t i = 0; i < k.size(); ++i)
                for (std::size_t j = 0; j < k.size(); ++j)
                    entries.emplace_back(
                        static_cast<int>(node_unknowns * nodes[i / node_unknowns] + i % node_unknowns),
                        static_cast<int>(node_unknowns * nodes[j / node_unknowns] + j % node_unknowns),
                        k[i][j]);
        }
    }
    const auto add_spring = [&](std::size_t node, double spring) {
        const int at = static_cast<int>(node_unknowns * node);
        entries.emplace_back(at, at, spring);
    };
    for (std::size_t point = 0; point < rests.size(); ++point) {
        const std::size_t node = plate.plate().node_of(point);
        if (rests[point]) add_spring(node, 2200.0 / 60 * plate.areas().resting_mm2[node]);
    }
    for (const Hold& hold : by) { // at the nearest node: the same work
        const auto x = between(grid.x_mm, hold.at.x), y = between(grid.y_mm, hold.at.y);
        add_spring(grid.node(x.first, y.first), hold.spring_n_mm);
    }
    const auto size = static_cast<Eigen::Index>(node_unknowns * grid.nodes());
    Sparse out(size, size);
    out.setFromTriplets(entries.begin(), entries.end());
    return out;
}

void plate_direct(benchmark::State& state) {
    const PlateOnBox plate(board, box(), {}, {});
    const auto by = holds(65);
    const Held held = plate.held(by, {});
    const PlateGrid& grid = plate.plate().grid();
    Eigen::VectorXd push = Eigen::VectorXd::Zero(static_cast<Eigen::Index>(node_unknowns * grid.nodes()));
    for (std::size_t node = 0; node < grid.nodes(); ++node)
        push(static_cast<Eigen::Index>(node_unknowns * node)) = 1e-3 * plate.areas().pushed_mm2[node];
    double bow = 0;
    for (auto _ : state) {
        for (int round = 0; round < held.rounds; ++round) { // what rests is known only after as many
            const Eigen::SimplicialLLT<Sparse> factor(equations(plate, by, held.rests));
            const Eigen::VectorXd lifts = factor.solve(push);
            benchmark::DoNotOptimize(bow = lifts.maxCoeff());
        }
    }
    const auto ours = plate.plate().unknowns(held.force_n);
    double our_bow = 0; // what is measured must be right, or the time means nothing
    for (std::size_t i = 0; i < ours.size(); i += node_unknowns) our_bow = std::max(our_bow, ours[i]);
    if (std::abs(bow / our_bow - 1) > 0.02) state.SkipWithError("finds another bow than the condensed plate");
    state.counters["bow_mm"] = bow;
}
BENCHMARK(plate_direct)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace drawercast::mold
