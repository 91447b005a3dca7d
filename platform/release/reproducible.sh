#!/usr/bin/env bash
# Builds what is packaged twice, in two folders, without a cache and under different circumstances, and compares every
# installed file. The same hashes mean that who has the source can check where a program comes from.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/release/reproducible.sh [--only hub|tool] [--jobs N] [--help]

  --only    one program without Qt, in some minutes, instead of all four
  --jobs    compile jobs at once
TEXT
}

only="" jobs=$(jobs_at_once)
while [ $# -gt 0 ]; do
    case $1 in
        --only) only=${2:-}; shift ;;
        --jobs) jobs=${2:-}; shift ;;
        --help | -h) usage; exit 0 ;;
        *) usage >&2; fail "reproducible.sh does not know '$1'" ;;
    esac
    shift
done
case $only in
    "") parts=(tool hub diary desk) targets=() options=() ;;
    hub) parts=(hub) targets=(--target ebbline-hub ebbline-hub_papers) options=(-DEBBLINE_APPS=OFF) ;;
    tool) parts=(tool) targets=(--target ebbline ebbline_papers) options=(-DEBBLINE_APPS=OFF) ;;
    *) fail "--only takes hub or tool" ;;
esac
case $jobs in "" | *[!0-9]*) fail "--jobs takes a number" ;; esac

cd "$ebbline_root"
day=$(sed -n 's/^set(EBBLINE_RELEASE_DATE \(.*\))$/\1/p' platform/packaging/CMakeLists.txt)
SOURCE_DATE_EPOCH=$(date -u -d "$day 12:00" +%s)
export SOURCE_DATE_EPOCH
work=$ebbline_root/build/reproducible
rm -rf "$work"

# build_in FOLDER ZONE LANGUAGE MASK: what differs between two machines of two people.
# Chained, because inside a condition the shell does not end at the first failure.
build_in() {
    local source=$work/$1
    mkdir -p "$source" || return 1
    git ls-files -z --cached --others --exclude-standard | tar -c --null --files-from=- | tar -x -m -C "$source" || return 1
    (
        cd "$source" || exit 1
        export TZ=$2 LC_ALL=$3
        umask "$4"
        quietly "$work/$1.configure.log" cmake --preset release -DCMAKE_CXX_COMPILER_LAUNCHER= "${options[@]}" || exit 1
        quietly "$work/$1.build.log" cmake --build --preset release -j "$jobs" "${targets[@]}" || exit 1
        for part in "${parts[@]}"; do
            quietly "$work/$1.install.log" cmake --install build/release --strip --component "$part" --prefix "$work/$1.installed" || exit 1
        done
    )
}
# hashes FOLDER: one line for each file that was installed there.
hashes() { (cd "$1" && find . -type f -print0 | sort -z | xargs -0 sha256sum); }

step "Building the first time" build_in one UTC C 022
step "Building the second time" build_in another/folder/with_a_longer_name Asia/Tokyo C.UTF-8 002
hashes "$work/one.installed" >"$work/one.sha256"
hashes "$work/another/folder/with_a_longer_name.installed" >"$work/another.sha256"
count=$(grep -c usr/bin/ "$work/one.sha256" || true)
[ "$count" -eq ${#parts[@]} ] || fail "$count programs were installed, ${#parts[@]} expected"

# A comparison that sees nothing would be worth nothing: one byte of a copy is changed first.
cp -r "$work/one.installed" "$work/changed"
changed=$(find "$work/changed/usr/bin" -type f | head -n 1)
printf '\377' | dd of="$changed" bs=1 seek=100 conv=notrunc status=none
! diff -q <(hashes "$work/changed") "$work/one.sha256" >/dev/null || fail "the comparison does not see a changed byte"
rm -rf "$work/changed"

if ! diff "$work/one.sha256" "$work/another.sha256" >&2; then
    fail "the two builds differ in the files above"
fi
say "$(wc -l <"$work/one.sha256") installed files have the same hashes in both builds: $work/one.sha256"
