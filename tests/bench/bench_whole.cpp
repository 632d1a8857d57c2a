// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read.h"
#include "job/store.h"
#include "plan/builder.h"

#include "source_dir.h"

#include <benchmark/benchmark.h>

#include <string>

/// The whole answer, air, plates, vents and cuts included, of one, two and four demo drawers: from scratch
/// (whole), and again after a pocket of one of them moved (whole_again). The processor's time of all threads.
/// ratios.py reads the names.
namespace drawercast::bench {
namespace {

job::Job demo_drawers(int count) {
    const auto demo = job::load_job(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json");
    if (!demo) return {};
    job::Job job = *demo;
    const job::Drawer drawer = *job.drawers.front();
    job.left_as_is.clear();
    job.log.clear();
    job.casts.clear();
    job.drawers.clear();
    for (int i = 0; i < count; ++i) {
        job::Drawer copy = drawer;
        copy.id = "dr" + std::to_string(i);
        job.drawers.emplace_back(std::move(copy));
    }
    return job;
}

void whole(benchmark::State& state) {
    const job::Job job = demo_drawers(static_cast<int>(state.range(0)));
    if (job.drawers.empty()) return state.SkipWithError("no demo job");
    const plan::Plan quick = plan::compute(job);
    for (auto _ : state) benchmark::DoNotOptimize(plan::Builder().build(job, quick, never_stop));
}

void whole_again(benchmark::State& state) {
    job::Job job = demo_drawers(static_cast<int>(state.range(0)));
    if (job.drawers.empty()) return state.SkipWithError("no demo job");
    plan::Builder builder;
    benchmark::DoNotOptimize(builder.build(job, plan::compute(job), never_stop));
    double by = 0.5;
    for (auto _ : state) {
        job.drawers[0].edit([&](job::Drawer& drawer) { drawer.pockets.front().pose.at.x += by; });
        by = -by;
        benchmark::DoNotOptimize(builder.build(job, plan::compute(job), never_stop));
    }
}

#define DRAWERCAST_DRAWERS                                                                                   \
    ->Arg(1)->Arg(2)->Arg(4)->Iterations(1)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()
BENCHMARK(whole) DRAWERCAST_DRAWERS;
BENCHMARK(whole_again) DRAWERCAST_DRAWERS;

} // namespace
} // namespace drawercast::bench
