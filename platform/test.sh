#!/usr/bin/env bash
# Installs what is missing, builds, and runs every test.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/test.sh [--no-install] [--quick | --campaign | --soak] [--help]

  --no-install  do not install packages
  --quick       the ordinary build and its tests only: no sanitizers, no fuzzing, no clang-tidy
  --campaign    after the normal run, the long campaigns whose figures docs/ records
  --soak        the campaigns at release size; hours

Without an option: the ordinary build with all its tests, then sanitizers, clang-tidy and a
short run of every fuzzer.
TEXT
}

install=yes size=normal
for argument in "$@"; do
    case $argument in
        --no-install) install=no ;;
        --quick) size=quick ;;
        --campaign) size=campaign ;;
        --soak) size=soak ;;
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
step "Linting the screens" quietly build/logs/qmllint.log cmake --build --preset dev --target lint_screens
step "Running the tests" tests dev

if [ "$size" != quick ]; then
    # Sanitizers on what is ours and free of Qt; Qt itself is not instrumented.
    step "Building with address and undefined-behaviour sanitizers" build asan
    step "Running the core's tests with sanitizers" tests asan --output-on-failure
    step "Building with the thread sanitizer" build tsan
    step "Running the hub's and the core's tests with the thread sanitizer" tests tsan -L threads
    step "Checking with clang-tidy" bash platform/tidy.sh
    step "Building the fuzzers" build fuzz
    step "Fuzzing every parser" bash platform/fuzz.sh "$size"
fi
case $size in
    campaign | soak) step "Running the campaigns ($size)" bash platform/campaign.sh "$size" ;;
esac
say "all tests passed in $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s"
