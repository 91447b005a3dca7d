#!/usr/bin/env bash
# Runs every fuzzer of build/fuzz for a while: fuzz.sh normal|campaign|soak
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"

case ${1:-normal} in
    normal) seconds=10 ;;
    campaign) seconds=180 ;;
    soak) seconds=3600 ;;
    *) fail "fuzz.sh takes normal, campaign or soak" ;;
esac

mapfile -t fuzzers < <(find build/fuzz/bin -maxdepth 1 -type f -name '*_fuzzer' -perm -u+x | sort)
[ ${#fuzzers[@]} -ge 3 ] || fail "only ${#fuzzers[@]} fuzzers were built"

run_one() {
    local fuzzer=$1 name corpus
    name=$(basename "$fuzzer")
    corpus=build/fuzz/corpus/$name
    mkdir -p "$corpus" build/fuzz/crashes
    if ! "$fuzzer" "$corpus" -max_total_time="$2" -timeout=5 -rss_limit_mb=512 -print_final_stats=1 \
        -artifact_prefix="build/fuzz/crashes/$name-" >"build/logs/$name.log" 2>&1; then
        tail -n 40 "build/logs/$name.log" >&2
        return 1
    fi
    printf 'ebbline: %-32s %s runs\n' "$name" \
        "$(awk '/stat::number_of_executed_units/ { print $2 }' "build/logs/$name.log")"
}
export -f run_one
mkdir -p build/logs
printf '%s\n' "${fuzzers[@]}" | xargs -P "$(nproc)" -I{} bash -c 'run_one {} '"$seconds"
