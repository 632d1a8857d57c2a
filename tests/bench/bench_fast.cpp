// SPDX-License-Identifier: GPL-3.0-or-later
// Planner::fast after one pocket moved: what a drag costs, all checks and the foam included.
#include "job/catalog.h"
#include "plan/planner.h"

#include "core/layout/random_layout.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <string>
#include <utility>

namespace drawercast::bench {
namespace {

/// A drawer of `count` objects of their own, stars of 40 vertices, in rows `pitch_mm` apart.
job::Job rows_of_stars(int count, double pitch_mm) {
    layout::testing::Dice dice(23);
    job::Job job;
    job.foam = job::builtin_foams().at(1);
    const int columns = static_cast<int>(std::ceil(std::sqrt(count)));
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{pitch_mm * (columns + 1), pitch_mm * (columns + 1), 0};
    drawer.load_kg = 10000;
    drawer.clear_height_mm = 200;
    for (int i = 0; i < count; ++i) {
        job::Object object = layout::testing::object_of(
            "i" + std::to_string(i), {layout::testing::sunk(layout::testing::star(dice, 40, 13, 19.4), 20)});
        object.fit_mm = 0;
        drawer.pockets.push_back({object.id,
                                  1,
                                  {{pitch_mm * (i % columns + 1), pitch_mm * (i / columns + 1.0)}, 0},
                                  false,
                                  {},
                                  {}});
        job.objects.emplace_back(std::move(object));
    }
    job.drawers.emplace_back(std::move(drawer));
    return job;
}

/// Back and forth by a millimeter, another pocket each time.
void run(benchmark::State& state, double pitch_mm) {
    const int count = static_cast<int>(state.range(0));
    job::Job job = rows_of_stars(count, pitch_mm);
    plan::Planner planner;
    benchmark::DoNotOptimize(planner.fast(job));
    int which = 0;
    for (auto _ : state) {
        state.PauseTiming();
        which = (which + 37) % count;
        job.drawers[0].edit([&](job::Drawer& drawer) {
            auto& x = drawer.pockets[static_cast<std::size_t>(which)].pose.at.x;
            x += std::fmod(x, 2) < 1 ? 1 : -1;
        });
        state.ResumeTiming();
        benchmark::DoNotOptimize(planner.fast(job));
    }
}

/// Walls as a shop wants them: no clay meets other clay.
void planner_fast_move(benchmark::State& state) { run(state, 52); }
/// Crowded: the clay of most neighbors meets.
void planner_fast_move_tight(benchmark::State& state) { run(state, 43); }
/// From scratch, for comparison.
void planner_compute(benchmark::State& state) {
    const job::Job job = rows_of_stars(static_cast<int>(state.range(0)), 52);
    for (auto _ : state) benchmark::DoNotOptimize(plan::compute(job));
}

BENCHMARK(planner_fast_move)->Arg(10)->Arg(40)->Arg(200)->Arg(1000);
BENCHMARK(planner_fast_move_tight)->Arg(200)->Arg(1000);
BENCHMARK(planner_compute)->Arg(200)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace drawercast::bench
