#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# From a fresh clone to a first job: installs what it needs, builds, writes the demo jobs' templates, summaries and
# drawings, and opens the window with the field service job where there is a display.
#   packaging/run.sh [FOLDER]     where the paper goes; build/paper when left out
source "$(dirname "$0")/steps.sh"

paper=${1:-$top/build/paper}

step "packages" install "${build_packages[@]}"
step "configure" configure "$top/build/release" -DCMAKE_BUILD_TYPE=Release -DDRAWERCAST_TESTS=OFF
step "build" build "$top/build/release" --target drawercast

write_paper() {
    local program=$top/build/release/app/drawercast
    mkdir -p "$paper"
    for job in "$top"/resources/demo/*.drawercast.json; do
        local name
        name=$(basename "$job" .drawercast.json)
        echo "-- $name"
        "$program" check "$job"
        "$program" figures "$job" >"$paper/$name-figures.json"
        "$program" templates "$job" --out "$paper/$name-templates.pdf"
        "$program" summary "$job" --out "$paper/$name-summary.pdf"
        mkdir -p "$paper/$name-drawings"
        "$program" drawings "$job" --out "$paper/$name-drawings"
    done
}
step "paper" write_paper

minutes_table
echo "The demo jobs on paper are in $paper"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$top/build/release/app/drawercast" "$top/resources/demo/field-service.drawercast.json"
fi
echo "There is no display: start build/release/app/drawercast on one for the window"
