#!/usr/bin/env bash
# clang-tidy with the checks named in .clang-tidy over what is free of Qt: core, server, PostgreSQL store, hub and tool.
# What includes Qt is held by the compiler's warnings and by qmllint instead.
# Files that did not change since they last passed are skipped.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"

command -v clang-tidy-19 >/dev/null || fail "clang-tidy-19 is missing: run platform/debian/install.sh --tests"
database=build/tsan
[ -f $database/compile_commands.json ] || fail "build/tsan has no compile_commands.json: build the tsan preset first"

passed=${XDG_CACHE_HOME:-$HOME/.cache}/ebbline-tidy
mkdir -p "$passed"
check() {
    local file=$1 key
    # What the result depends on: the checks, the file, how it is compiled, and everything of ours that it may include.
    key=$({ cat .clang-tidy "$file" "$2/headers"; grep -F -x -A 1 -e "$file" "$2/commands"; } | sha256sum | cut -d' ' -f1)
    [ -e "$passed/$key" ] && return 0
    clang-tidy-19 -p build/tsan --quiet "$file" 2>/dev/null || return 1
    : >"$passed/$key"
}
export -f check
export passed

inputs=build/logs/tidy
mkdir -p $inputs
{ clang-tidy-19 --version; find core platform app -name '*.h' | sort | xargs cat; } >$inputs/headers
# Two lines a file: its name, and the command that compiles it.
python3 - "$ebbline_root" $database/compile_commands.json >$inputs/commands <<'PYTHON'
import json, os, sys
for entry in json.load(open(sys.argv[2])):
    file = os.path.relpath(os.path.join(entry["directory"], entry["file"]), sys.argv[1])
    print(file, entry.get("command") or " ".join(entry["arguments"]), sep="\n")
PYTHON
files=$(find core platform/server platform/postgres app/hub app/tool -name '*.cpp' | sort \
    | while read -r file; do grep -q "\"file\": \"$ebbline_root/$file\"" $database/compile_commands.json && echo "$file"; done)
count=$(printf '%s\n' "$files" | grep -c . || true)
[ "$count" -ge 20 ] || fail "only $count files found to check"
printf '%s\n' "$files" | xargs -P "$(nproc)" -I{} bash -c 'check {} '"$inputs"
say "$count files pass clang-tidy"
