#!/usr/bin/env bash
# Has the REUSE project's own program (Debian's package reuse) judge the licences, on a copy that has the folder
# LICENSES which REUSE asks for and our layout has no place for: docs/licences/README.md.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
cd "$ebbline_root"
command -v reuse >/dev/null || fail "reuse is missing: install the package reuse"

copy=build/reuse
rm -rf "$copy"
mkdir -p "$copy"
git ls-files -z --cached --others --exclude-standard | tar -c --null --files-from=- | tar -x -C "$copy"
cd "$copy"
git init -q .
mkdir LICENSES
for licence in $(sed -n 's/^License: *//p' .reuse/dep5 | sort -u); do
    text=docs/licences/$licence.txt
    [ -f "$text" ] || text=LICENSE
    cp "$text" "LICENSES/$licence.txt"
done
rm docs/licences/*.txt # those of libraries that are linked and not kept here, and those that were just copied

reuse lint >../reuse.txt || { cat ../reuse.txt >&2; fail "REUSE finds the faults above"; }
mkdir stray
echo "nobody's" >stray/file.txt
if reuse lint >/dev/null; then
    fail "reuse does not see a file without a licence"
fi
say "REUSE finds nothing missing; see build/reuse.txt"
