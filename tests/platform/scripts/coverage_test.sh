#!/usr/bin/env bash
# What was not reached is said, and a module below its floor fails; so does one of which nothing ran.
# usage: coverage_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
source=$1 scratch=$2/coverage
rm -rf "$scratch"
mkdir -p "$scratch/core/toy" "$scratch/platform"
cat >"$scratch/core/toy/toy.cpp" <<'TEXT'
int sign(int x)
{
    if (x > 3 && x < 10)
        return 1;
    return 0;
}
int main(int count, char**) { return sign(count) == sign(7); }
TEXT
cd "$scratch"
"${CXX:-g++}" --coverage -fprofile-abs-path core/toy/toy.cpp -o toy
./toy
said=$scratch/said
judged() { python3 -B "$source/platform/coverage.py" "$scratch" "$scratch" --missed >"$said" 2>&1; }
expect() { grep -q "$1" "$said" || { cat "$said"; echo "it does not say '$1'"; exit 1; }; }

printf 'module,lines,branches\ntoy,100,75\n' >platform/coverage_floors.csv
judged || { cat "$said"; echo "above its floors it fails"; exit 1; }
expect 'toy  *100.0 %  *75.0 %'
expect 'core/toy/toy.cpp:3 branch'
printf 'module,lines,branches\ntoy,100,76\n' >platform/coverage_floors.csv
! judged || { echo "below its floor it passes"; exit 1; }
expect 'toy: 75.0 % of the branches, 76 % are asked for'
printf 'module,lines,branches\ntoy,100,75\nother,1,1\n' >platform/coverage_floors.csv
! judged || { echo "a module of which nothing ran passes"; exit 1; }
expect 'other: nothing of it ran'
