// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/measure.h"

#include "core/capture/rendered/scene.h"

#include <benchmark/benchmark.h>

#include <opencv2/imgcodecs.hpp>
#include <string>

/// What a photo of twelve million pixels costs, from the file to the outlines, beside decoding it alone.
namespace drawercast::capture {
namespace {

const std::string& photo() {
    static const std::string file = [] {
        Scene scene;
        scene.things = {{tool_thing({90, 80}, 35), 0, {0.12, 0.14, 0.13}},
                        {round_thing({140, 160}, 22), 0, {0.15, 0.25, 0.75}},
                        {box_thing({80, 200}, 60, 35, 15), 0, {0.55, 0.2, 0.12}}};
        scene.tilt_deg = 12;
        return rendered(scene);
    }();
    return file;
}

void capture_ours(benchmark::State& state) {
    const std::string& file = photo();
    for (auto _ : state) {
        const auto flat = flattened(file, {});
        if (!flat) return state.SkipWithError(one_line(flat.error()).c_str());
        const auto traced = traced_objects(*flat, {});
        if (!traced || traced->outlines.size() != 3) return state.SkipWithError("not the three outlines");
    }
}
BENCHMARK(capture_ours)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();

void capture_floor(benchmark::State& state) {
    const std::string& file = photo();
    const cv::Mat bytes(1, static_cast<int>(file.size()), CV_8U, const_cast<char*>(file.data()));
    for (auto _ : state) benchmark::DoNotOptimize(cv::imdecode(bytes, cv::IMREAD_COLOR).data);
}
BENCHMARK(capture_floor)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime();

} // namespace
} // namespace drawercast::capture
