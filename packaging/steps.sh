# SPDX-License-Identifier: GPL-3.0-or-later
# Shared by the scripts beside it: what to install, how to configure and build. Sourced, not run.
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
jobs=$(nproc)
steps=()
export PATH=/usr/bin:$PATH # Debian's own tools, whatever else a machine has in front of them
# The same cache serves every folder this is cloned into.
export CCACHE_BASEDIR=$top CCACHE_NOHASHDIR=1 CCACHE_SLOPPINESS=pch_defines,time_macros

build_packages=(g++ cmake ninja-build ccache libboost1.81-dev libboost-json1.81-dev libeigen3-dev qt6-base-dev qt6-svg-dev libgl-dev
    qt6-tools-dev qt6-l10n-tools
    libopencv-core-dev libopencv-imgproc-dev libopencv-imgcodecs-dev libopencv-calib3d-dev)
test_packages=(mold qt6-translations-l10n libgtest-dev libgmock-dev libgeos-dev qpdf poppler-utils clang-format python3 python3-jsonschema)
bench_packages=(libbenchmark-dev libgeos-dev python3)
package_packages=(desktop-file-utils appstream lintian shared-mime-info libxml2-utils man-db bsdextrautils dpkg-dev file poppler-utils)
fuzz_packages=(clang libclang-rt-14-dev)
thread_packages=(clang libclang-rt-14-dev)
locale_packages=(locales)
lint_packages=(clang clang-tidy cppcheck)

# Runs a step, keeps its minutes for the table at the end.
step() {
    local name=$1
    shift
    echo "== $name"
    local began=$SECONDS
    "$@"
    steps+=("$(printf '%6.2f min  %s' "$(awk "BEGIN { print ($SECONDS - $began) / 60 }")" "$name")")
}

minutes_table() {
    echo "== minutes"
    printf '%s\n' "${steps[@]}"
    printf '%6.2f min  all\n' "$(awk "BEGIN { print $SECONDS / 60 }")"
}

# Installs Debian packages that are missing; as root, or through sudo.
install() {
    local missing=()
    for package in "$@"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return
    local root=()
    [ "$(id -u)" -eq 0 ] || root=(sudo)
    echo "installing: ${missing[*]}"
    "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -q
    "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
}

# configure FOLDER [cmake options]
configure() {
    local folder=$1
    shift
    local launcher=()
    command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    cmake -S "$top" -B "$folder" -G Ninja "${launcher[@]}" "$@"
}

build() { cmake --build "$1" --parallel "$jobs" "${@:2}"; }
