// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/model.h"

#include "core/air/floors.h"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

/// Where air stays in boxes 200, 400 and 800 mm wide, blocks in rows in them: the whole rise (air_solve), the
/// last place alone, as while a pocket is dragged (air_last_place), and the full mold by multigrid
/// (air_full). Beside them in the same run the full mold by a library's sparse Cholesky factor (air_direct).
/// ratios.py reads the names.
namespace drawercast::air {
namespace {

constexpr double expansion = 6, height_mm = 60;

Floor blocks_in_rows(double width_mm) {
    const double depth_mm = width_mm * 3 / 4;
    Floor floor = empty_floor(width_mm, depth_mm, height_mm);
    for (double y = 15; y + 30 < depth_mm; y += 50)
        for (double x = 15; x + 30 < width_mm; x += 50)
            add_block(floor, x, y, 30, 30, 20 + std::fmod(x + y, 30));
    return floor;
}

MapIn map_of(double width_mm) {
    MapIn in{blocks_in_rows(width_mm), 0, expansion, {}};
    double room_mm3 = 0;
    for (const double mm3 : cells_of(in.floor, coarsest_pitch_mm).room_mm3) room_mm3 += mm3;
    in.poured_ml = room_mm3 / expansion / 1000;
    return in;
}

void air_solve(benchmark::State& state) {
    const MapIn in = map_of(static_cast<double>(state.range(0)));
    for (auto _ : state) {
        const auto model = Model::make(in, never_stop);
        state.counters["cells"] = static_cast<double>(model->map().mesh.size());
        state.counters["pockets"] = static_cast<double>(model->map().pockets.size());
    }
}

void air_last_place(benchmark::State& state) {
    const MapIn in = map_of(static_cast<double>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(last_place(in));
}

void air_full(benchmark::State& state) {
    Worked worked(blocks_in_rows(static_cast<double>(state.range(0))), coarsest_pitch_mm, expansion);
    for (auto _ : state) benchmark::DoNotOptimize(worked.rise.full(worked.pieces).data());
}

using Sparse = Eigen::SparseMatrix<double>;

/// The open cells' equations; where the last air is does not depend on one cell being held, so the first is.
struct Direct {
    explicit Direct(const Worked& worked) : number(worked.cells.mesh.size(), -1) {
        const Mesh& mesh = worked.cells.mesh;
        for_each_cell(mesh, [&](std::size_t cell) {
            if (worked.links.sum(cell, mesh.stride()) > 0) number[cell] = count++;
        });
    }

    Eigen::VectorXd solved(const Worked& worked) const {
        const Mesh& mesh = worked.cells.mesh;
        std::vector<Eigen::Triplet<double>> entries;
        Eigen::VectorXd lacking = Eigen::VectorXd::Zero(count);
        const auto link = [&](std::size_t one, std::size_t other, double by) {
            if (by <= 0) return;
            entries.emplace_back(number[one], number[one], by);
            entries.emplace_back(number[other], number[other], by);
            entries.emplace_back(std::max(number[one], number[other]), std::min(number[one], number[other]),
                                 -by);
        };
        for_each_cell(mesh, [&](std::size_t cell) {
            if (number[cell] < 0) return;
            link(cell, cell + 1, worked.links.right[cell]);
            link(cell, cell + mesh.stride(), worked.links.back[cell]);
            lacking(number[cell]) = worked.liquid.mm3[cell] - worked.cells.room_mm3[cell] / expansion;
        });
        entries.emplace_back(0, 0, 1e6);
        Sparse equations(count, count);
        equations.setFromTriplets(entries.begin(), entries.end());
        const Eigen::SimplicialLDLT<Sparse> factor(equations);
        return factor.solve(lacking);
    }

    std::vector<int> number;
    int count = 0;
};

void air_direct(benchmark::State& state) {
    Worked worked(blocks_in_rows(static_cast<double>(state.range(0))), coarsest_pitch_mm, expansion);
    const Direct direct(worked);
    Eigen::VectorXd push;
    for (auto _ : state) benchmark::DoNotOptimize((push = direct.solved(worked)).data());
    const Values ours =
        worked.rise.full(worked.pieces); // what is measured must be right, or the time means nothing
    const double least = push.minCoeff();
    double worst = 0;
    for (std::size_t cell = 0; cell < ours.size(); ++cell)
        if (direct.number[cell] >= 0)
            worst = std::max(worst, std::abs(push(direct.number[cell]) - least - ours[cell]));
    state.counters["off"] = worst / (push.maxCoeff() - least);
    if (worst > 1e-3 * (push.maxCoeff() - least))
        state.SkipWithError("finds another rise than the multigrid");
}

#define DRAWERCAST_WIDTHS ->Arg(200)->Arg(400)->Arg(800)->Unit(benchmark::kMillisecond)
BENCHMARK(air_solve) DRAWERCAST_WIDTHS;
BENCHMARK(air_last_place) DRAWERCAST_WIDTHS;
BENCHMARK(air_full) DRAWERCAST_WIDTHS;
BENCHMARK(air_direct) DRAWERCAST_WIDTHS;

} // namespace
} // namespace drawercast::air
