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

GOALS = {  # at most; the others are there to be compared with the last table
    "distance-40-floor": 2,
    "distance-40-geos": 0.2,
    "recheck-200-floor": 3,
    "recheck-1000-floor": 3,
    "move-1000-floor": 3,
    "recheck-200-geos": 0.2,
    "fast-1000-move-us": 200,
    "growth-exponent": 1.35,
    "fast-exponent": 1.35,
    "whole-again-4": 0.5,
    "air-full-direct": 1,
    "plate-candidate-direct": 1,
    "sheets-exponent": 2,
    "templates-exponent": 1.35,
    "summary-exponent": 1.35,
    "drawings-exponent": 1.35,
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


def exponent(time, name, sizes):
    """Slope of log time over log size, least squares; size is what the work counts, by the benchmark's argument."""
    found = [(size, time[name.format(size)]) for size in sizes if name.format(size) in time]
    if len(found) < min(3, len(sizes)):
        return None
    xs, ys = ([math.log(value) for value in values] for values in zip(*found))
    x_mean, y_mean = sum(xs) / len(xs), sum(ys) / len(ys)
    return sum((x - x_mean) * (y - y_mean) for x, y in zip(xs, ys)) / sum((x - x_mean) ** 2 for x in xs)


def ratios(time):
    def over(one, other):
        return time[one] / time[other] if one in time and other in time else None

    def by_width(name):
        """By cells: they grow with the square of the box's width."""
        slope = exponent(time, name, (200, 400, 800))
        return slope / 2 if slope is not None else None

    pockets = (10, 40, 200, 1000)
    return {
        "distance-40-floor": over("distance_ours/40", "distance_floor/40"),
        "distance-40-geos": over("distance_ours/40", "distance_library/40"),
        "distance-exponent": exponent(time, "distance_ours/{}", (8, 40, 200)),
        "recheck-200-floor": over("recheck_ours/200", "recheck_floor/200"),
        "recheck-1000-floor": over("recheck_ours/1000", "recheck_floor/1000"),
        "move-1000-floor": over("move_ours/1000", "move_floor/1000"),
        "recheck-200-geos": over("recheck_ours/200", "recheck_library/200"),
        "growth-exponent": exponent(time, "recheck_ours/{}", pockets),
        "fast-1000-move-us": time.get("planner_fast_move/1000"),
        "fast-1000-compute": over("planner_fast_move/1000", "planner_compute/1000"),
        "fast-exponent": exponent(time, "planner_fast_move/{}", pockets),
        "drag-200-40": over("drag_step/200/iterations:400", "drag_step/40/iterations:400"),
        "whole-4-1": over("whole/4/iterations:1/process_time", "whole/1/iterations:1/process_time"),
        "whole-again-4": over("whole_again/4/iterations:1/process_time", "whole/4/iterations:1/process_time"),
        "air-full-direct": over("air_full/400", "air_direct/400"),
        "air-solve-direct": over("air_solve/400", "air_direct/400"),
        "air-last-direct": over("air_last_place/400", "air_direct/400"),
        "air-exponent": by_width("air_solve/{}"),
        "plate-candidate-direct": over("plate_candidate/0", "plate_direct"),
        "sheets-exponent": exponent(time, "sheets/{}", (10, 16, 32, 64, 128, 160)),
        "templates-200-pdf": over("templates/200", "pdf_floor/200"),
        "templates-exponent": exponent(time, "templates/{}", (10, 40, 200)),
        "summary-exponent": exponent(time, "job_summary/{}", (10, 40, 200)),
        "drawings-exponent": exponent(time, "drawing_files/{}", (10, 40, 200)),
        "raster-200-empty": over("raster/200", "raster_floor"),
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
        if name in GOALS and (value is None or value > GOALS[name]):
            missed.append(name)
    if check and missed:
        sys.exit("missed: " + ", ".join(missed))


if __name__ == "__main__":
    main(sys.argv[1:])
