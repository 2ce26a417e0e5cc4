# Sourced by app/run and tests/run: installs what is missing and builds. Debian 12, Ubuntu 24.04.
# shellcheck shell=bash

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

build_packages=(cmake ninja-build g++ qt6-base-dev qt6-svg-dev libqt6sql6-sqlite libical-dev libxml2-dev
    libsqlite3-dev libgl-dev
    fonts-dejavu-core)
test_packages=(libgtest-dev libgmock-dev libbenchmark-dev poppler-utils fonts-liberation2 librsvg2-bin python3-jsonschema python3-icalendar python3-pyld xvfb xauth
    minizinc units)

# usage TEXT: prints it and ends; 2 for wrong usage.
usage() {
    printf '%s\n' "$2"
    exit "$1"
}

# read_build_kind HELP ARGS...: sets build_kind and cmake_options, leaves the others in rest.
read_build_kind() {
    local help=$1
    shift
    build_kind=release
    rest=()
    for argument in "$@"; do
        case $argument in
            --debug) build_kind=debug ;;
            --sanitize) build_kind=sanitize ;;
            -h | --help) usage 0 "$help" ;;
            *) rest+=("$argument") ;;
        esac
    done
    case $build_kind in
        release) cmake_options=(-DCMAKE_BUILD_TYPE=Release) ;;
        debug) cmake_options=(-DCMAKE_BUILD_TYPE=Debug) ;;
        sanitize) cmake_options=(-DCMAKE_BUILD_TYPE=RelWithDebInfo -DRANGELINE_SANITIZE=ON) ;;
    esac
    build=$root/.build/$build_kind
}

is_installed() {
    [ "$(dpkg-query -W -f='${db:Status-Status}' "$1" 2>/dev/null)" = installed ]
}

# install PACKAGES...: only what is missing; ends in 2 naming what cannot be had.
install() {
    local missing=() package
    for package in "$@"; do
        is_installed "$package" || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
        if ! sudo -n true 2>/dev/null; then
            usage 2 "These packages are missing: ${missing[*]}. Install them, or run this as root." >&2
        fi
        as_root=(sudo -n)
    fi
    echo "Installing ${missing[*]} ..."
    local log
    log=$(mktemp)
    "${as_root[@]}" apt-get update -qq >"$log" 2>&1
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq \
        --no-install-recommends "${missing[@]}" </dev/null >>"$log" 2>&1
    local failed=()
    for package in "${missing[@]}"; do
        is_installed "$package" || failed+=("$package")
    done
    if [ ${#failed[@]} -gt 0 ]; then
        tail -n 5 "$log" >&2
        usage 2 "These packages cannot be installed: ${failed[*]}." >&2
    fi
    rm -f "$log"
}

# build CMAKE_OPTIONS...: configures where needed and builds; shows the log only if it fails.
build_all() {
    mkdir -p "$build"
    local log=$build/build.log
    echo "Building ($build_kind) ..."
    if ! { cmake -S "$root" -B "$build" -G Ninja "${cmake_options[@]}" "$@" &&
        cmake --build "$build"; } >"$log" 2>&1; then
        tail -n 40 "$log" >&2
        usage 1 "The build failed; the whole log is $log." >&2
    fi
}
