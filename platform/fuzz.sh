#!/usr/bin/env bash
# Runs every fuzz target for a while, with address and undefined-behaviour sanitizers.
#
# usage: fuzz.sh [seconds]     a target, 20 by default; what was found before is kept in
#                              build/fuzz/corpus and built upon
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
seconds=${1:-20}
# To the fuzzer 0 seconds mean without end.
case $seconds in '' | *[!0-9]*) fail "usage: fuzz.sh [seconds]" ;; esac
[ "$seconds" -gt 0 ] || fail "usage: fuzz.sh [seconds], at least 1"

command -v clang++-19 >/dev/null || fail "clang++-19 is missing: run platform/debian/install.sh --tests"
step "Building the fuzz targets" build fuzz
cd "$ebbline_root/build/fuzz"
bin/fuzz_seeds corpus

targets=(bin/*_fuzz)
[ ${#targets[@]} -ge 10 ] || fail "only ${#targets[@]} fuzz targets found"

# Memory in MiB and seconds for one input. A reader of a few kilobytes needs no more; whoever does says why.
limits_of() {
    case $1 in
        # A few bytes of a picture may name sides of thousands: it is held whole, and once more while it is turned and made smaller.
        photo_intake) echo "1024 5" ;;
        # A whole hub with threads and sockets in one process, and a client that waits for its time-outs.
        hub_http) echo "512 10" ;;
        *) echo "256 1" ;;
    esac
}

# Freed memory is kept aside by the address sanitizer to notice who uses it; that is not the target's.
export ASAN_OPTIONS="${ASAN_OPTIONS:+$ASAN_OPTIONS:}quarantine_size_mb=16"

fuzz_one() {
    local target=$1 name memory most
    name=$(basename "$target" _fuzz)
    read -r memory most <<<"$(limits_of "$name")"
    mkdir -p "corpus/$name" findings logs
    if ! "$target" "corpus/$name" -max_total_time="$seconds" -timeout="$most" -rss_limit_mb="$memory" -max_len=20000 \
        -print_final_stats=1 -artifact_prefix="findings/$name-" >"logs/$name.log" 2>&1; then
        tail -n 40 "logs/$name.log" >&2
        echo "ebbline: $name failed; the input is in build/fuzz/findings" >&2
        return 1
    fi
    printf 'ebbline: %-18s %10s inputs, %s\n' "$name" \
        "$(awk '/stat::number_of_executed_units/ { print $2 }' "logs/$name.log")" \
        "$(grep -o 'cov: [0-9]*' "logs/$name.log" | tail -1) edges reached"
}
export -f fuzz_one limits_of
export seconds
printf '%s\n' "${targets[@]}" | xargs -P "$(nproc)" -I{} bash -c 'fuzz_one {}' || fail "a fuzz target found a fault"
say "${#targets[@]} fuzz targets ran $seconds s each and found nothing"
