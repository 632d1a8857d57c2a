#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Looks the sources over with cppcheck and clang-tidy: what they find and is not excused in packaging/lint.cppcheck or
# .clang-tidy, each with its reason, fails.
#   packaging/lint.sh [--quick] [FILE ...]     --quick: cppcheck alone; files: clang-tidy on these alone
source "$(dirname "$0")/steps.sh"

quick=no
[ "${1:-}" != --quick ] || { quick=yes; shift; }
folder=$top/build/lint

run_cppcheck() {
    cd "$top"
    mkdir -p "$folder/cppcheck"
    cppcheck core app tests -I core -I app -I tests --std=c++20 --language=c++ --quiet -j "$jobs" \
        --cppcheck-build-dir="$folder/cppcheck" --enable=warning,performance,portability --inline-suppr \
        --suppressions-list=packaging/lint.cppcheck --library=googletest --library=qt --error-exitcode=1
}

run_clang_tidy() {
    cd "$top"
    local files=("$@")
    [ ${#files[@]} -gt 0 ] || mapfile -t files < <(find core app -name '*.cpp' | sort)
    printf '%s\n' "${files[@]}" | xargs -P "$jobs" -n 1 clang-tidy -p "$folder" --quiet
}

step "packages" install "${build_packages[@]}" "${test_packages[@]}" "${lint_packages[@]}"
step "cppcheck" run_cppcheck
if [ "$quick" = no ]; then
    # clang++ has to understand the commands: g++'s own options are unknown to it
    step "configure, clang" env CC=clang CXX=clang++ CMAKE_EXPORT_COMPILE_COMMANDS=ON cmake -S "$top" -B "$folder" -G Ninja \
        -DCMAKE_BUILD_TYPE=Debug -DDRAWERCAST_PRECOMPILE=OFF
    step "clang-tidy" run_clang_tidy "$@"
fi
minutes_table
