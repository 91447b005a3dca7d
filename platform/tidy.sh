#!/usr/bin/env bash
# clang-tidy with the checks named in .clang-tidy over what is free of Qt: core, server, PostgreSQL store, hub and tool.
# With --qt instead over the rest of app and platform, as the dev preset compiles it.
# Files that did not change since they last passed are skipped.
#
# usage: tidy.sh [--qt] [FILE...]     FILEs: only these
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"

database=build/tsan preset=tsan
folders=(core platform/server platform/postgres app/hub app/tool)
if [ "${1:-}" = --qt ]; then
    shift
    database=build/dev preset=dev
    folders=(app platform)
fi
command -v clang-tidy-19 >/dev/null || fail "clang-tidy-19 is missing: run platform/debian/install.sh --tests"
[ -f $database/compile_commands.json ] || fail "$database has no compile_commands.json: build the $preset preset first"

passed=${XDG_CACHE_HOME:-$HOME/.cache}/ebbline-tidy
mkdir -p "$passed"
check() {
    local file=$1 key
    # What the result depends on: the checks, the file, how it is compiled, and everything of ours that it may include.
    key=$({ cat .clang-tidy "$file" "$2/headers"; grep -F -x -A 1 -e "$file" "$2/commands"; } | sha256sum | cut -d' ' -f1)
    [ -e "$passed/$key" ] && return 0
    clang-tidy-19 -p "$2" --quiet "$file" 2>/dev/null || return 1
    : >"$passed/$key"
}
export -f check
export passed

inputs=build/logs/tidy-$preset
mkdir -p "$inputs"
{ clang-tidy-19 --version; find core platform app -name '*.h' | sort | xargs cat; } >"$inputs/headers"
# Two lines a file: its name, and the command that compiles it. g++'s headers read once are nothing that clang could read.
python3 - "$ebbline_root" $database "$inputs" >"$inputs/commands" <<'PYTHON'
import json, os, re, sys
root, database, inputs = sys.argv[1:]
entries = json.load(open(f"{database}/compile_commands.json"))
for entry in entries:
    entry["command"] = re.sub(r" -Winvalid-pch -include \S+/cmake_pch\.hxx", "", entry["command"])
    print(os.path.relpath(os.path.join(entry["directory"], entry["file"]), root), entry["command"], sep="\n")
json.dump(entries, open(f"{inputs}/compile_commands.json", "w"))
PYTHON
files=$(if [ $# -gt 0 ]; then printf '%s\n' "$@"; else find "${folders[@]}" -name '*.cpp' | sort; fi \
    | while read -r file; do grep -q -F "\"file\": \"$ebbline_root/$file\"" $database/compile_commands.json && echo "$file"; done || true)
count=$(printf '%s\n' "$files" | grep -c . || true)
if [ $# -gt 0 ]; then
    [ "$count" -eq $# ] || fail "only $count of the $# files are compiled by $database"
else
    [ "$count" -ge 20 ] || fail "only $count files found to check"
fi
printf '%s\n' "$files" | xargs -P "$(nproc)" -I{} bash -c 'check {} "'"$inputs"'"'
say "$count files pass clang-tidy"
