#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the largest jobs the program is held to: an outline of 5,000 corners, 1,000 pockets, 50 drawers, 20 MB.

Usage: make.py DEMO_JOB FOLDER. They are made of the demo job and hold nothing of interest but their size.
"""
import copy
import json
import math
import pathlib
import sys

CORNERS = 5000


def ring():
    """A rounded outline that bends in and out, some 90 mm across."""
    turns = [2 * math.pi * i / CORNERS for i in range(CORNERS)]
    return [[round((40 + 5 * math.sin(9 * t)) * f(t), 3) for f in (math.cos, math.sin)] for t in turns]


def bare(demo):
    job = copy.deepcopy(demo)
    for key in ("left_as_is", "log", "casts"):
        job[key] = []
    return job


def emptied(drawer, pockets):
    drawer = copy.deepcopy(drawer)
    for key in ("vents", "pours", "obstructions"):
        drawer.pop(key, None)
    return dict(drawer, pockets=pockets)


def drawn(thing, name):
    return dict(copy.deepcopy(thing), id=name, name=name, count=1,
                levels=[{"outline": {"polygon": ring()}, "depth_mm": 45}])


def corners(demo):
    job = bare(demo)
    job["objects"] = [drawn(job["objects"][0], "drawn")]
    job["drawers"] = [emptied(job["drawers"][0], [{"object": "drawn", "n": 1, "at": [150, 150]}])]
    return job


def pockets(demo):
    job = bare(demo)
    job["objects"] = [dict(job["objects"][1], id="peg", name="Peg", count=1000, height_mm=30,
                           levels=[{"outline": {"circle": [20]}, "depth_mm": 20}])]
    places = [{"object": "peg", "n": i + 1, "at": [40 + i % 36 * 37, 40 + i // 36 * 37]} for i in range(1000)]
    job["drawers"] = [dict(emptied(job["drawers"][0], places), outline={"rect": [1400, 1100]})]
    return job


def drawers(demo):
    job = bare(demo)
    used = {}
    job["drawers"] = []
    for i in range(50):
        drawer = dict(copy.deepcopy(demo["drawers"][0]), id=f"dr{i}", name=f"Drawer {i}")
        for pocket in drawer["pockets"]:
            pocket["n"] = used[pocket["object"]] = used.get(pocket["object"], 0) + 1
        job["drawers"].append(drawer)
    for thing in job["objects"]:
        thing["count"] = max(used.get(thing["id"], 0), thing.get("count", 1))
    return job


def bytes_20_mb(demo):
    job = bare(demo)
    job["objects"] += [drawn(job["objects"][0], f"drawn{i}") for i in range(250)]
    return job


def main(demo, folder):
    job = json.loads(pathlib.Path(demo).read_text(encoding="utf-8"))
    for name, make in (("5000-corners", corners), ("1000-pockets", pockets), ("50-drawers", drawers),
                       ("20-megabytes", bytes_20_mb)):
        path = pathlib.Path(folder) / f"{name}.drawercast.json"
        path.write_text(json.dumps(make(job), separators=(",", ":")), encoding="utf-8")
        print(path, path.stat().st_size)


main(*sys.argv[1:])
