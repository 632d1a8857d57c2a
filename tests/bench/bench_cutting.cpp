// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/lengths.h"
#include "stock/one_sheet.h"
#include "stock/sheets.h"
#include "stock/unlimited_table.h"

#include "core/stock/published_sets.h"

#include <benchmark/benchmark.h>

#include <random>

/// How the cutting searches grow with the number of pieces, and what the published sets cost.
namespace drawercast::stock {
namespace {

void unlimited(benchmark::State& state) {
    const auto in = published_set("gcut" + std::to_string(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(UnlimitedTable(in).value(in.width, in.height));
    state.SetLabel("gcut" + std::to_string(state.range(0)));
}
BENCHMARK(unlimited)->DenseRange(1, 3)->Unit(benchmark::kMillisecond);

void limited(benchmark::State& state) {
    const auto in = published_set("cgcut" + std::to_string(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(best_limited(in).value);
    state.SetLabel("cgcut" + std::to_string(state.range(0)));
}
BENCHMARK(limited)->DenseRange(1, 3)->Unit(benchmark::kMillisecond);

void sheets(benchmark::State& state) {
    std::mt19937 random(1);
    SheetsIn in{2440'000, 1220'000, 3'200, {}};
    for (int i = 0; i < state.range(0); ++i)
        in.pieces.push_back({60'000 + static_cast<Micro>(random() % 500'000),
                             40'000 + static_cast<Micro>(random() % 400'000), true});
    SheetsAnswer answer;
    for (auto _ : state) answer = few_sheets(in);
    state.counters["sheets"] = static_cast<double>(answer.sheets.size());
    state.counters["least"] = answer.least;
    state.SetComplexityN(state.range(0));
}
BENCHMARK(sheets)->RangeMultiplier(2)->Range(10, 160)->Unit(benchmark::kMillisecond)->Complexity();

void lengths(benchmark::State& state) {
    std::mt19937 random(1);
    LengthsIn in{2400'000, 3'200, {}};
    for (int i = 0; i < state.range(0); ++i)
        in.pieces.push_back(300'000 + static_cast<Micro>(random() % 700) * 1000);
    LengthsAnswer answer;
    for (auto _ : state) answer = fewest_bars(in);
    state.counters["bars"] = static_cast<double>(answer.bars.size());
    state.counters["least"] = answer.least;
    state.SetComplexityN(state.range(0));
}
BENCHMARK(lengths)->RangeMultiplier(2)->Range(5, 80)->Unit(benchmark::kMillisecond)->Complexity();

} // namespace
} // namespace drawercast::stock
