// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"

#include "bench/hand_distance.h"
#include "core/shape/geos_twin.h"
#include "core/shape/random_shapes.h"

#include <benchmark/benchmark.h>

/// Distances of pairs of stars of 8, 40 and 200 vertices 3 mm apart, with a cut-off of 6 mm: ours, the floor
/// (hand_distance.h) and a general geometry library, in one run; then what the floor leaves out. Each
/// iteration measures the same 64 pairs.
namespace drawercast::bench {
namespace {

using namespace shape;
using shape::testing::Dice;
using shape::testing::Geos;

constexpr double cutoff_mm = 6;
constexpr int pair_count = 64;

struct Pair {
    Contour a, b;
    Box box_a, box_b;
    double mm = 0; ///< by the floor
};

Pair pair_of(Contour a, Contour b, double mm) {
    const Box box_a = bounds(a);
    const Box box_b = bounds(b);
    return {std::move(a), std::move(b), box_a, box_b, mm};
}

double floor_of(const Pair& pair) { return hand_distance(pair.a.core, pair.box_a, pair.b.core, cutoff_mm); }

double ours_of(const Pair& pair) { return gap_between(pair.a, pair.box_a, pair.b, pair.box_b, cutoff_mm).mm; }

/// The pair with `b` moved in some direction until it stands 3 mm from `a`.
Pair moved_apart(Dice& dice, const Contour& a, const Contour& b) {
    const double direction = dice.real(0, 360);
    const auto moved = [&](double by) { return placed(b, {placed(Vec{by, 0}, {{}, direction}), 0}); };
    double by = 150;
    for (int step = 0; step < 300; ++step) by += (3 - gap_between(a, moved(by)).mm) / 2;
    return pair_of(a, moved(by), gap_between(a, moved(by)).mm);
}

std::vector<Pair> stars_apart(int vertices) {
    Dice dice(91);
    std::vector<Pair> all;
    while (all.size() < pair_count) {
        const Contour a = shape::testing::star(dice, vertices, 11, 21);
        all.push_back(moved_apart(dice, a, shape::testing::star(dice, vertices, 11, 21)));
        all.back().mm = floor_of(all.back());
    }
    return all;
}

template <class Distance>
void measure(benchmark::State& state, const std::vector<Pair>& all, Distance distance) {
    for (const Pair& pair : all) // what is measured must be right, or the time means nothing
        if (std::abs(distance(pair) - pair.mm) > 1e-9) state.SkipWithError("finds another distance");
    for (auto _ : state)
        for (const Pair& pair : all) benchmark::DoNotOptimize(distance(pair));
    state.SetItemsProcessed(state.iterations() * pair_count);
}

void distance_floor(benchmark::State& state) {
    measure(state, stars_apart(static_cast<int>(state.range(0))), floor_of);
}

void distance_ours(benchmark::State& state) {
    measure(state, stars_apart(static_cast<int>(state.range(0))), ours_of);
}

void distance_library(benchmark::State& state) {
    const std::vector<Pair> all = stars_apart(static_cast<int>(state.range(0)));
    const Geos geos;
    std::vector<std::pair<Geos::Geometry, Geos::Geometry>> made;
    for (const Pair& pair : all) made.emplace_back(geos.polygon(pair.a.core), geos.polygon(pair.b.core));
    measure(state, all, [&](const Pair& pair) {
        const auto& [a, b] = made[static_cast<std::size_t>(&pair - all.data())];
        return geos.distance(a, b);
    });
}

void distance_ours_without_cutoff(benchmark::State& state) {
    measure(state, stars_apart(static_cast<int>(state.range(0))), [](const Pair& pair) {
        return gap_between(pair.a, pair.box_a, pair.b, pair.box_b, any_distance).mm;
    });
}

void distance_ours_boxes_apart(benchmark::State& state) {
    std::vector<Pair> all = stars_apart(40);
    for (Pair& pair : all) pair = pair_of(pair.a, placed(pair.b, {{80, 0}, 0}), any_distance);
    for (auto _ : state)
        for (const Pair& pair : all) benchmark::DoNotOptimize(ours_of(pair));
    state.SetItemsProcessed(state.iterations() * pair_count);
}

/// Boxes overlap, as of neighbors set askew, and one is held by the other: the floor has no word for it.
void distance_ours_holding(benchmark::State& state) {
    Dice dice(92);
    std::vector<Pair> all;
    while (all.size() < pair_count)
        all.push_back(
            pair_of(shape::testing::star(dice, 40, 30, 40), shape::testing::star(dice, 40, 5, 15), 0));
    measure(state, all, ours_of);
}

/// What most layouts are made of: four, two or one core vertices.
void distance_ours_families(benchmark::State& state) {
    Dice dice(93);
    const Given given[] = {Rectangle{60, 40, 5}, Capsule{60, 28}, Circle{30}};
    std::vector<Pair> all;
    while (all.size() < pair_count) {
        const Pose turned{{0, 0}, dice.real(0, 360)};
        all.push_back(moved_apart(dice, placed(*contour_of(given[all.size() % 3]), turned),
                                  *contour_of(given[all.size() / 3 % 3])));
    }
    measure(state, all, ours_of);
}

BENCHMARK(distance_floor)->Arg(8)->Arg(40)->Arg(200);
BENCHMARK(distance_ours)->Arg(8)->Arg(40)->Arg(200);
BENCHMARK(distance_library)->Arg(8)->Arg(40)->Arg(200);
BENCHMARK(distance_ours_without_cutoff)->Arg(8)->Arg(40)->Arg(200);
BENCHMARK(distance_ours_boxes_apart);
BENCHMARK(distance_ours_holding);
BENCHMARK(distance_ours_families);

} // namespace
} // namespace drawercast::bench
