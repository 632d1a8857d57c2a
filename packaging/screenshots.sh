#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Takes pictures of the window and the guide, from the program itself and a demo job. Needs no display.
#   packaging/screenshots.sh [FOLDER]     resources/screenshots when left out
source "$(dirname "$0")/steps.sh"

folder=${1:-$top/resources/screenshots}

step "packages" install "${build_packages[@]}"
step "configure" configure "$top/build/release" -DCMAKE_BUILD_TYPE=Release -DDRAWERCAST_TESTS=OFF
step "build" build "$top/build/release" --target drawercast_screenshots
step "pictures" "$top/build/release/app/drawercast_screenshots" \
    "$top/resources/demo/field-service.drawercast.json" "$folder"
minutes_table
