#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what it needs, builds with warnings as errors and runs every test.
#   --long    the long counts (DRAWERCAST_LONG=1)
#   --threads the workers under ThreadSanitizer too (clang)
#   --comma   the cheaper tests once more where 1.5 is written 1,5
source "$(dirname "$0")/steps.sh"

threads=no
comma=no
for option in "$@"; do
    case $option in
    --long) export DRAWERCAST_LONG=1 ;;
    --threads) threads=yes ;;
    --comma) comma=yes ;;
    *) echo "usage: packaging/test.sh [--long] [--threads] [--comma]" >&2; exit 64 ;;
    esac
done

export QT_QPA_PLATFORM=offscreen
checked=$top/build/checked
release=$top/build/release-tests
log=$checked/ctest.log
rm -f "$log"

# The table, then ctest's own last lines: whoever reads only the end sees what ran.
closing_lines() {
    minutes_table
    if [ -f "$log" ]; then grep -E 'tests passed|^Total Test time' "$log" || true; fi
}
trap closing_lines EXIT

# One more at a time than there are processors: some wait for a program to start or to end.
run_all_tests() {
    ctest --test-dir "$checked" --output-on-failure --no-tests=error --parallel $((jobs + 1)) 2>&1 | tee "$log"
}

check_format() {
    cd "$top"
    find core app tests -name '*.h' -o -name '*.cpp' | sort | xargs clang-format --dry-run -Werror
}

# qpdf 11.3 warns of a stream of some MB whose bytes run out just as its own buffer is full. The stream is read to its
# end all the same; anything else it says is a fault.
sound_pdf() {
    local said
    said=$(qpdf --check "$1" 2>&1 >/dev/null) || true
    said=$(grep -v -e 'input stream is complete but output may still be valid' -e '^qpdf: operation succeeded with warnings$' \
        <<<"$said" || true)
    [ -z "$said" ] || { echo "$said" >&2; return 1; }
}

smoke() {
    local program=$release/app/drawercast out
    out=$(mktemp -d)
    for job in "$top"/resources/demo/*.drawercast.json; do
        "$program" check "$job"
        "$program" figures "$job" >"$out/figures.json"
        python3 -m json.tool "$out/figures.json" >/dev/null
        python3 -m jsonschema -i "$job" "$top/resources/schema/job.schema.json"
        for paper in a4 letter; do # every paper is in the tests
            "$program" templates "$job" --out "$out/templates.pdf" --paper "$paper"
            sound_pdf "$out/templates.pdf"
        done
        "$program" summary "$job" --out "$out/summary.pdf"
        sound_pdf "$out/summary.pdf"
        mkdir -p "$out/drawings"
        "$program" drawings "$job" --out "$out/drawings"
        ls "$out"/drawings/*.svg >/dev/null
    done
    rm -r "$out"
}

# Each target for 10 s on what is kept of earlier finds; what it finds stays in build/fuzz.
fuzz_one() {
    local target=$1 scratch
    unset ASAN_OPTIONS UBSAN_OPTIONS LSAN_OPTIONS # the tests' own
    scratch=$(mktemp -d)
    cd "$top/build/fuzz"
    "$target" -max_total_time=10 -timeout=25 -rss_limit_mb=2048 -verbosity=0 -print_final_stats=1 "$scratch" \
        "$top/tests/fuzz/corpus/$(basename "$target" | sed 's/^fuzz_//')"
    rm -r "$scratch"
}

fuzz_all() {
    CC=clang CXX=clang++ configure "$top/build/fuzz" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS=-O1 \
        -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DDRAWERCAST_FUZZ=ON -DDRAWERCAST_PRECOMPILE=OFF
    build "$top/build/fuzz" --target fuzzers
    export -f fuzz_one
    export top
    find "$top/build/fuzz/tests/fuzz" -name 'fuzz_*' -type f -executable -print0 | sort -z |
        xargs -0 -P "$jobs" -I{} bash -euo pipefail -c 'fuzz_one {}'
}

# clang's: g++'s needs the same, but then nothing would build all of it with another compiler.
test_workers() {
    local program
    CC=clang CXX=clang++ configure "$top/build/threads" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS=-O1 \
        -DDRAWERCAST_WERROR=ON -DDRAWERCAST_THREADS=ON -DDRAWERCAST_PRECOMPILE=OFF
    build "$top/build/threads" --target test_threads test_app_document
    for program in test_threads test_app_document; do
        TSAN_OPTIONS=suppressions=$top/tests/threads.txt:halt_on_error=1 "$top/build/threads/tests/$program"
    done
}

# Not the whole suite again: what reads, writes, shows and prints figures.
test_with_comma() {
    local area
    localedef -i de_DE -f UTF-8 "$top/build/de_DE.UTF-8"
    for area in base job casting runsheet stock app app_forms app_panes; do
        LOCPATH=$top/build LC_ALL=de_DE.UTF-8 "$checked/tests/test_$area" --gtest_brief=1
    done
    LOCPATH=$top/build LC_ALL=de_DE.UTF-8 "$checked/tests/fuzz/test_fuzz_replay" --gtest_brief=1
}

step "packages" install "${build_packages[@]}" "${test_packages[@]}"
step "format" check_format
step "configure, release" configure "$release" -DCMAKE_BUILD_TYPE=Release -DDRAWERCAST_TESTS=OFF -DDRAWERCAST_WERROR=ON
step "build, release" build "$release"
step "smoke: the demo jobs, release" smoke
step "Debian package" bash "$top/packaging/package.sh" "$release"
if [ "$threads" = yes ]; then
    step "packages, threads" install "${thread_packages[@]}"
    step "workers, thread sanitizer" test_workers
fi
# Lines are all that a report names (-g1).
step "configure, sanitizers" configure "$checked" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS=-O1 \
    -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=mold -DDRAWERCAST_WERROR=ON -DDRAWERCAST_SANITIZE=ON
step "build, sanitizers" build "$checked"
export ASAN_OPTIONS=detect_leaks=1:detect_stack_use_after_return=1 UBSAN_OPTIONS=print_stacktrace=1
export LSAN_OPTIONS=suppressions=$top/tests/leaks.txt:print_suppressions=0
step "all tests, address and undefined behavior sanitizers" run_all_tests
if [ "$comma" = yes ]; then
    step "packages, locales" install "${locale_packages[@]}"
    step "tests where 1.5 is written 1,5" test_with_comma
fi
# Last, so that a slow machine still ends within three quarters of an hour.
latest_s=2350
if [ "$SECONDS" -lt "$latest_s" ]; then
    step "packages, fuzzing" install "${fuzz_packages[@]}"
    step "fuzzing" fuzz_all
else
    steps+=("  left out  fuzzing: the rest took longer than $latest_s s")
fi
