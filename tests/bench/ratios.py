#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Ratios out of Google Benchmark's JSON, one a line: `ratio NAME VALUE`.

usage: ratios.py [--check] RUN.json [RUN.json ...]

Medians where the run was repeated, else the plain time. A ratio whose benchmarks are not in the files is left out; with
--check the goals below are enforced and a ratio left out counts as missed. Ratios are taken inside one run, so that the
machine drops out; only fast-1000-move-us is a time, in microseconds.
"""
import json
import math
import sys

GOALS = {  # at most
    "recheck-200-floor": 3,
    "recheck-1000-floor": 3,
    "move-1000-floor": 3,
    "recheck-200-geos": 0.2,
    "fast-1000-move-us": 200,
    "growth-exponent": 1.35,
    "plate-candidate-direct": 1,
    "capture-decode": 9,
}
TO_MICROSECONDS = {"ns": 1e-3, "us": 1.0, "ms": 1e3, "s": 1e6}


def times(paths):
    """Benchmark name to microseconds of CPU time."""
    plain, median = {}, {}
    for path in paths:
        with open(path, encoding="utf-8") as file:
            run = json.load(file)
        for one in run["benchmarks"]:
            if one.get("error_occurred"):
                sys.exit(f"{one['name']}: {one.get('error_message', 'failed')}")
            microseconds = one["cpu_time"] * TO_MICROSECONDS[one["time_unit"]] if "cpu_time" in one else None
            if one.get("run_type") == "aggregate":
                if one["aggregate_name"] == "median":
                    median[one["run_name"]] = microseconds
            else:
                plain.setdefault(one["run_name"], []).append(microseconds)
    return {name: median.get(name, sum(all_) / len(all_)) for name, all_ in plain.items()} | median


def growth_exponent(time):
    """Slope of log time over log count, 10 to 1000 pockets, least squares."""
    counts = [count for count in (10, 40, 200, 1000) if f"recheck_ours/{count}" in time]
    if len(counts) < 3:
        return None
    xs = [math.log(count) for count in counts]
    ys = [math.log(time[f"recheck_ours/{count}"]) for count in counts]
    x_mean, y_mean = sum(xs) / len(xs), sum(ys) / len(ys)
    return sum((x - x_mean) * (y - y_mean) for x, y in zip(xs, ys)) / sum((x - x_mean) ** 2 for x in xs)


def ratios(time):
    def over(one, other):
        return time[one] / time[other] if one in time and other in time else None

    return {
        "recheck-200-floor": over("recheck_ours/200", "recheck_floor/200"),
        "recheck-1000-floor": over("recheck_ours/1000", "recheck_floor/1000"),
        "move-1000-floor": over("move_ours/1000", "move_floor/1000"),
        "recheck-200-geos": over("recheck_ours/200", "recheck_library/200"),
        "fast-1000-move-us": time.get("planner_fast_move/1000"),
        "growth-exponent": growth_exponent(time),
        "plate-candidate-direct": over("plate_candidate/0", "plate_direct"),
        "capture-decode": over("capture_ours/process_time", "capture_floor/process_time"),
    }


def main(arguments):
    check = "--check" in arguments
    paths = [argument for argument in arguments if argument != "--check"]
    if not paths:
        sys.exit(__doc__)
    missed = []
    for name, value in ratios(times(paths)).items():
        if value is not None:
            print(f"ratio {name} {value:.3g}")
        if value is None or value > GOALS[name]:
            missed.append(name)
    if check and missed:
        sys.exit("missed: " + ", ".join(missed))


if __name__ == "__main__":
    main(sys.argv[1:])
