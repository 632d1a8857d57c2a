// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/dense_layout.h"
#include "bench/hand_distance.h"
#include "bench/library_recheck.h"

#include <benchmark/benchmark.h>

#include <map>
#include <numeric>

/// A dense layout rechecked whole and after one move, at 10 to 1000 pockets of 40 vertices; beside it in the
/// same run the floor (hand_distance.h) and a geometry library's index with prepared distances. ratios.py
/// reads the names.
namespace drawercast::bench {
namespace {

const DenseLayout& layout_of(int count) {
    static std::map<int, DenseLayout> made;
    const auto [at, fresh] = made.try_emplace(count);
    if (fresh) at->second = dense_layout(count);
    return at->second;
}

/// What is measured must be right, or the time means nothing.
void expect_same(benchmark::State& state, const Tally& tally, const Tally& reference) {
    state.counters["below"] = tally.count;
    if (!tally.agrees(reference)) state.SkipWithError("finds other walls than the floor");
}

Tally floor_recheck(const std::vector<shape::Ring>& rings, const shape::Ring& drawer) {
    Tally tally;
    std::vector<Box> boxes;
    for (const auto& ring : rings) boxes.push_back(box_of(ring));
    std::vector<std::size_t> order(rings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return boxes[a].min.x < boxes[b].min.x; });
    for (std::size_t k = 0; k < order.size(); ++k) {
        const std::size_t a = order[k];
        for (std::size_t m = k + 1; m < order.size(); ++m) {
            const std::size_t b = order[m];
            if (boxes[b].min.x > boxes[a].max.x + dense_limit_mm) break;
            if (shape::near(boxes[a], boxes[b], dense_limit_mm))
                tally.take(hand_distance(rings[a], boxes[a], rings[b], dense_limit_mm));
        }
        tally.take(hand_distance(rings[a], boxes[a], drawer, dense_limit_mm));
    }
    return tally;
}

void recheck_floor(benchmark::State& state) {
    const DenseLayout& dense = layout_of(static_cast<int>(state.range(0)));
    Tally tally;
    for (auto _ : state) benchmark::DoNotOptimize(tally = floor_recheck(dense.rings, dense.drawer));
    state.counters["below"] = tally.count;
}

void recheck_ours(benchmark::State& state) {
    const DenseLayout& dense = layout_of(static_cast<int>(state.range(0)));
    Tally tally;
    layout::Recheck recheck(dense.limits);
    for (auto _ : state) {
        recheck.set_all(dense.standing);
        benchmark::DoNotOptimize(recheck.checks().data());
    }
    expect_same(state, tally_of(recheck.checks()), floor_recheck(dense.rings, dense.drawer));
}

void recheck_library(benchmark::State& state) {
    const DenseLayout& dense = layout_of(static_cast<int>(state.range(0)));
    LibraryRecheck library(dense.rings, dense.drawer);
    Tally tally;
    for (auto _ : state) benchmark::DoNotOptimize(tally = library.recheck());
    expect_same(state, tally, floor_recheck(dense.rings, dense.drawer));
}

/// A little way to and fro, so that the layout stays what it is.
job::Pocket moved(const DenseLayout& dense, std::size_t index, int step) {
    job::Pocket pocket = dense.pockets[index];
    pocket.pose.at = pocket.pose.at + shape::Vec{0.01 * (step % 16), 0.01 * (step % 11)};
    return pocket;
}

void move_floor(benchmark::State& state) {
    const DenseLayout& dense = layout_of(static_cast<int>(state.range(0)));
    std::vector<shape::Ring> rings = dense.rings;
    std::vector<Box> boxes;
    for (const auto& ring : rings) boxes.push_back(box_of(ring));
    int step = 0;
    for (auto _ : state) {
        const std::size_t index = (static_cast<std::size_t>(step) * 37) % rings.size();
        const job::Pocket pocket = moved(dense, index, ++step);
        const shape::Turn turn = shape::Turn::of_degrees(pocket.pose.turn_deg);
        const auto& own = dense.standing[index].pocket->form->cuts[0].outline.contour.core;
        for (std::size_t i = 0; i < own.size(); ++i) rings[index][i] = turn(own[i]) + pocket.pose.at;
        boxes[index] = box_of(rings[index]);
        Tally tally;
        for (std::size_t other = 0; other < rings.size(); ++other)
            if (other != index && shape::near(boxes[index], boxes[other], dense_limit_mm))
                tally.take(hand_distance(rings[index], boxes[index], rings[other], dense_limit_mm));
        tally.take(hand_distance(rings[index], boxes[index], dense.drawer, dense_limit_mm));
        benchmark::DoNotOptimize(tally);
    }
}

/// A move as a drag does it: the pocket placed anew, the checks near it found; with the whole list in order,
/// or not yet.
void move_with(benchmark::State& state, bool listed) {
    const DenseLayout& dense = layout_of(static_cast<int>(state.range(0)));
    layout::Recheck recheck(dense.limits);
    recheck.set_all(dense.standing);
    recheck.checks();
    int step = 0;
    for (auto _ : state) {
        const std::size_t index = (static_cast<std::size_t>(step) * 37) % dense.pockets.size();
        auto placed = std::make_shared<const layout::PlacedPocket>(
            layout::place(moved(dense, index, ++step), dense.standing[index].pocket->form));
        recheck.move(index, {std::move(placed), dense.standing[index].object});
        if (listed) benchmark::DoNotOptimize(recheck.checks().data());
    }
    std::vector<layout::Standing> standing;
    for (std::size_t i = 0; i < recheck.size(); ++i) standing.push_back(recheck.at(i));
    if (recheck.checks() != layout::layout_checks(standing, dense.limits))
        state.SkipWithError("moves end in other checks than a start from scratch");
}
void move_ours(benchmark::State& state) { move_with(state, false); }
void move_and_list(benchmark::State& state) { move_with(state, true); }

#define DRAWERCAST_COUNTS ->Arg(10)->Arg(40)->Arg(200)->Arg(1000)->Unit(benchmark::kMicrosecond)
BENCHMARK(recheck_floor) DRAWERCAST_COUNTS;
BENCHMARK(recheck_ours) DRAWERCAST_COUNTS;
BENCHMARK(recheck_library) DRAWERCAST_COUNTS;
BENCHMARK(move_floor) DRAWERCAST_COUNTS;
BENCHMARK(move_ours) DRAWERCAST_COUNTS;
BENCHMARK(move_and_list) DRAWERCAST_COUNTS;

} // namespace
} // namespace drawercast::bench
