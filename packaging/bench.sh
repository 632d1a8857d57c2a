#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds and runs the benchmarks; the last lines are ratios against references measured in the same run.
source "$(dirname "$0")/steps.sh"

folder=$top/build/bench

step "packages" install "${build_packages[@]}" "${test_packages[@]}" "${bench_packages[@]}"
step "configure" configure "$folder" -DCMAKE_BUILD_TYPE=Release -DDRAWERCAST_BENCH=ON
step "build" build "$folder" --target benches

run_all() {
    for bench in "$folder"/tests/bench/bench_*; do
        [ -f "$bench" ] && [ -x "$bench" ] || continue
        "$bench" --benchmark_repetitions=5 --benchmark_report_aggregates_only=true \
            --benchmark_out="$bench.json" --benchmark_out_format=json
    done
}
# Arranging: by the processor's seconds, so that a busy machine tells the same.
arrange_all() {
    "$folder"/tests/bench/pack_strips 10 "$top"/tests/data/packing/{fu,jakobs1,jakobs2,shapes0,shapes1,shirts,marques,dagli}.txt
    "$folder"/tests/bench/pack_strips 10 "$top"/tests/data/packing/hopper-turton-*.txt
    "$folder"/tests/bench/pack_drawers 10 5
}
step "benchmarks" run_all
step "arranging" arrange_all
minutes_table
python3 "$top/tests/bench/ratios.py" "$folder"/tests/bench/bench_*.json
