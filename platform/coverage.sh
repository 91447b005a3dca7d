#!/usr/bin/env bash
# Builds core with coverage, runs its tests, and says module by module what they reach.
#
# usage: coverage.sh [--missed]    --missed names each branch that nothing reached, of the modules that have a floor
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
case ${1:-} in '' | --missed) ;; *) fail "usage: coverage.sh [--missed]" ;; esac
cd "$ebbline_root"
step "Building core with coverage" build coverage
find build/coverage -name '*.gcda' -delete
step "Running its tests" ctest --preset coverage -j "$(nproc)" -L unit
python3 -B platform/coverage.py . build/coverage "$@"
