#!/usr/bin/env bash
# The changes that are tried: in code, not in words and comments, and in every module that is named.
# usage: mutate_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/mutate
rm -rf "$scratch"
mkdir -p "$scratch/platform" "$scratch/core/"{bytes,crypto,envelope,journal,warnings}
cp "$root/platform/mutate.py" "$scratch/platform/"
cat >"$scratch/core/journal/toy.cpp" <<'TEXT'
// a == b stays
bool same(int a, int b)
{
    say("a == b");
    return a == b && !gone;  // and a < b
}
TEXT
for module in bytes crypto envelope warnings; do echo 'int one(int x) { return x + 1; }' >"$scratch/core/$module/toy.cpp"; done
python3 -B "$scratch/platform/mutate.py" "$scratch/work" --all --list >"$scratch/said"
expect() { grep -qxF "$1" "$scratch/said" || { cat "$scratch/said"; echo "it does not try: $1"; exit 1; }; }
expect 'core/journal/toy.cpp:5: return a != b && !gone;  // and a < b'
expect 'core/journal/toy.cpp:5: return a == b || !gone;  // and a < b'
expect 'core/journal/toy.cpp:4: ;'
for module in bytes crypto envelope warnings; do expect "core/$module/toy.cpp:1: int one(int x) { return x - 1; }"; done
! grep -q 'toy.cpp:1: // \|say("a != b")\|and a <= b' "$scratch/said" || { cat "$scratch/said"; echo "it changes words"; exit 1; }
[ ! -e "$scratch/work" ] || { echo "a list needs no working copy"; exit 1; }
# Of all changes to core, some in each module.
python3 -B "$root/platform/mutate.py" "$scratch/work" --all --list >"$scratch/said"
for module in bytes crypto envelope journal warnings; do
    [ "$(grep -c "^core/$module/" "$scratch/said")" -ge 20 ] || { echo "hardly any change in $module"; exit 1; }
done
