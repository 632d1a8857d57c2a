#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the tree to its rules: what may stand at the top, which folder may include what, who says its license.

Usage: tree.py SOURCE_FOLDER. Prints each breach and ends with 1, or prints the sizes of files and ends with 0.
"""
import pathlib
import re
import sys

TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "core", "app", "resources", "tests", "packaging", "build"}
LIBRARIES = {  # what may be included only by some sources, never by a header
    "boost/geometry": lambda p: p.match("core/shape/*.cpp"),
    "boost/json": lambda p: p.match("core/job/*.cpp"),
    "opencv2/": lambda p: p.match("core/capture/vision/*"),
    "Eigen/": lambda p: p.match("core/mold/*.cpp"),
}
# The operating system beyond standard C++: what another system would have to be given.
for header in ("unistd.h", "fcntl.h", "sys/", "dirent.h", "pwd.h", "signal.h", "dlfcn.h", "pthread.h", "windows.h"):
    LIBRARIES[header] = lambda p: p.match("core/job/file_system.cpp")
LIBRARIES["sys/"] = lambda p: p.match("core/job/file_system.cpp") or p.match("app/document/behind.cpp")
LIBRARIES["dlfcn.h"] = lambda p: p.match("core/capture/vision_part.cpp")
ALLOWED = {  # the arrows between core's folders
    "base": set(),
    "shape": {"base"},
    "job": {"base", "shape"},
    "layout": {"base", "shape", "job"},
    "arrange": {"base", "shape", "job", "layout"},
    "casting": {"base", "shape", "job", "layout"},
    "mold": {"base", "shape", "job", "layout", "casting"},
    "air": {"base", "shape", "job", "layout", "casting"},
    "stock": {"base", "shape", "job", "casting"},
    "buildup": {"base", "shape", "job", "layout", "casting", "mold", "air"},
    "runsheet": {"base"},
    "capture": {"base", "shape"},
    "plan": {"base", "shape", "job", "layout", "casting", "mold", "air", "stock", "runsheet"},
}
PAPER = {"language", "theme", "sheets", "print"}
APP_ALLOWED = {  # the arrows between app's folders
    "language": set(),
    "theme": set(),
    "sheets": {"language", "theme"},
    "print": {"language", "theme", "sheets"},
    "summary": PAPER,
    "subcommands": PAPER | {"summary"},
    "document": {"language"},
    "outline": {"theme"},
    "forms": {"language", "theme", "sheets", "outline"},
    "panes/explain": {"language", "sheets"},
    "panes": {"language", "theme", "sheets", "document", "panes/explain"},
    "canvas": {"language", "theme", "sheets", "document"},
    "photo": {"language", "theme", "document", "outline", "forms"},
    "pourday": {"language", "theme"},
    "guide": PAPER | {"document", "forms"},
    "window": PAPER | {"summary", "document", "forms", "panes", "canvas", "photo", "pourday", "guide"},
}
INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]', re.M)


def code_files(top):
    for folder in ("core", "app", "tests"):
        for path in sorted((top / folder).rglob("*")):
            if path.suffix in {".h", ".cpp"}:
                yield path.relative_to(top), path.read_text(encoding="utf-8")


def built_files(top):
    """What builds and runs the code: lists for CMake and Qt, scripts."""
    for folder in ("core", "app", "tests", "resources", "packaging"):
        for path in sorted((top / folder).rglob("*")):
            if path.name == "CMakeLists.txt" or path.suffix in {".cmake", ".qrc", ".sh", ".py"}:
                yield path.relative_to(top)


def app_folder(path):
    """"panes/explain" of panes/explain/plate.h, "window" of window/tools/screenshots.cpp; None of no folder of app."""
    return next((name for name in ("/".join(path.parts[:2]), path.parts[0]) if name in APP_ALLOWED), None)


def breaches(top):
    for entry in top.iterdir():
        if not entry.name.startswith(".") and entry.name not in TOP and not entry.name.startswith("build"):
            yield f"{entry.name}: nothing else may stand at the top"
    for path, text in code_files(top):
        if "SPDX-License-Identifier: GPL-3.0-or-later" not in text.split("\n", 1)[0]:
            yield f"{path}: the first line does not say the license"
        if path.suffix == ".h" and "#pragma once" not in text:
            yield f"{path}: no #pragma once"
        includes = INCLUDE.findall(text)
        own_header = path.with_suffix(".h")
        if path.suffix == ".cpp" and path.parts[0] in {"core", "app"} and (top / own_header).exists():
            # So each header is compiled by itself once; only those without a source need a source made for it.
            if includes[:1] != ["/".join(own_header.parts[1:])]:
                yield f"{path}: its own header does not come first"
        for include in includes:
            for library, allowed in LIBRARIES.items():
                if include.startswith(library) and path.parts[0] != "tests" and not allowed(path):
                    yield f"{path}: may not include {include}"
            if path.parts[0] == "core":
                if re.match(r"Q[A-Z]|Qt", include):
                    yield f"{path}: core knows no Qt ({include})"
                folder, own = include.split("/")[0], path.parts[1]
                if folder in ALLOWED and folder != own and folder not in ALLOWED.get(own, set()):
                    yield f"{path}: core/{own} may not know core/{folder} ({include})"
            if path.parts[0] == "app" and (top / "app" / include).exists():
                own, folder = app_folder(path.relative_to("app")), app_folder(pathlib.Path(include))
                if own and folder != own and folder not in APP_ALLOWED[own]:
                    yield f"{path}: app/{own} may not know app/{folder} ({include})"
    for path in built_files(top):
        if "SPDX-License-Identifier: GPL-3.0-or-later" not in "".join(open(top / path, encoding="utf-8").readlines()[:3]):
            yield f"{path}: the first lines do not say the license"
    developers = top / "DEVELOPERS.md"
    for path in re.findall(r"`((?:core|app|tests|resources|packaging)/[\w./*-]+)`", developers.read_text(encoding="utf-8")):
        if not list(top.glob(path.rstrip("/"))):
            yield f"DEVELOPERS.md: {path} is not there"


def sizes(top):
    for folder in ("core", "app", "tests"):
        lines = sorted(text.count("\n") for path, text in code_files(top) if path.parts[0] == folder)
        if lines:
            yield (f"{folder}: {len(lines)} files, {sum(lines)} lines; median {lines[len(lines) // 2]}, "
                   f"90th percentile {lines[len(lines) * 9 // 10]}, longest {lines[-1]}")


def main():
    top = pathlib.Path(sys.argv[1]).resolve()
    found = list(breaches(top))
    for breach in found:
        print(breach)
    if found:
        return 1
    print("\n".join(sizes(top)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
