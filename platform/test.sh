#!/usr/bin/env bash
# Installs what is missing, builds, and runs every test.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/test.sh [--no-install] [--sanitize] [--help]

  --no-install  do not install packages
  --sanitize    after the ordinary run, the tests of core again with address, undefined-behaviour
                and thread sanitizers, and clang-tidy
TEXT
}

install=yes sanitize=no
for argument in "$@"; do
    case $argument in
        --no-install) install=no ;;
        --sanitize) sanitize=yes ;;
        --help | -h) usage; exit 0 ;;
        *) usage >&2; fail "test.sh does not know '$argument'" ;;
    esac
done

cd "$ebbline_root"
[ "$install" = no ] || step "Installing what is missing" bash platform/debian/install.sh --tests
ensure_runtime_dir
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software

tests() { ctest --preset "$1" -j "$(nproc)" "${@:2}"; }

step "Building everything" build dev
step "Running the tests" tests dev

if [ "$sanitize" = yes ]; then
    # What is ours and free of Qt; Qt itself is not instrumented.
    step "Building with address and undefined-behaviour sanitizers" build asan
    step "Running the tests with sanitizers" tests asan
    step "Building with the thread sanitizer" build tsan
    step "Running the tests with the thread sanitizer" tests tsan -L threads
    step "Checking with clang-tidy" bash platform/tidy.sh
fi
say "all tests passed in $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s"
