#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The Debian package: built, looked over by the validators, installed, run and removed again.
#   packaging/package.sh [BUILD_FOLDER]     a Release build; build/release when left out
source "$(dirname "$0")/steps.sh"

folder=${1:-$top/build/release}

validate() {
    local linux=$top/packaging/linux
    desktop-file-validate "$linux/drawercast.desktop"
    appstreamcli validate --no-net "$folder/packaging/linux/org.drawercast.Drawercast.metainfo.xml"
    xmllint --noout "$linux/drawercast-mime.xml"
    local types
    types=$(mktemp -d)
    mkdir "$types/packages"
    cp "$linux/drawercast-mime.xml" "$types/packages"
    update-mime-database "$types"
    grep -q 'drawercast-job' "$types/globs2"
    rm -r "$types"
}

pack() {
    (cd "$folder" && cpack --config CPackConfig.cmake -B "$folder/package")
    package=$(ls -t "$folder"/package/drawercast_*.deb | head -1)
    lintian --fail-on error --suppress-tags bad-distribution-in-changes-file "$package"
}

# Every line that --help prints stands in the man page, letter for letter.
man_page_is_help() {
    local page
    page=$(mktemp)
    MANWIDTH=200 man --nh --nj -E UTF-8 "$folder/packaging/linux/drawercast.1" | col -b | sed 's/‐/-/g; s/−/-/g' >"$page"
    "$folder/app/drawercast" --help | sed 's/^ *//' | grep -v '^$' | while IFS= read -r line; do
        grep -qF -- "$line" "$page" || { echo "the man page lacks: $line" >&2; exit 1; }
    done
    rm "$page"
}

as_root() { if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi; }

install_run_remove() {
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$package"
    local out
    out=$(mktemp -d)
    (cd / && /usr/bin/drawercast --version && /usr/bin/drawercast templates \
        /usr/share/drawercast/demo/field-service.drawercast.json --sheet pattern-board --out "$out/templates.pdf")
    [ -s "$out/templates.pdf" ]
    # The part that measures pictures is found there and loads: an empty sheet is seen to be empty.
    if [ -e "$folder/lib/drawercast/vision.so" ]; then
        (cd "$out" && /usr/bin/drawercast measuring-sheet --out sheet.pdf && pdftoppm -r 200 -png -singlefile sheet.pdf sheet
            ! /usr/bin/drawercast capture sheet.png --out none.json 2>said && grep -q 'no object stands out' said)
    fi
    rm -r "$out"
    as_root env DEBIAN_FRONTEND=noninteractive apt-get purge -q -y drawercast
    [ ! -e /usr/bin/drawercast ] && [ ! -e /usr/lib/drawercast ] && [ ! -e /usr/share/drawercast ]
}

step "packages, packaging" install "${build_packages[@]}" "${package_packages[@]}"
step "configure" configure "$folder" -DCMAKE_BUILD_TYPE=Release -DDRAWERCAST_TESTS=OFF
step "build" build "$folder"
step "validators" validate
step "man page is --help" man_page_is_help
step "Debian package" pack
step "install, run, remove" install_run_remove
minutes_table
