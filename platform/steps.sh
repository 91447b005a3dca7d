# Shared by run.sh and test.sh: messages, timing, options, build. Sourced, never run.
# shellcheck shell=bash

ebbline_root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
ebbline_started=$SECONDS

say() { printf 'ebbline: %s\n' "$*"; }
fail() { printf 'ebbline: %s\n' "$*" >&2; exit 1; }

# step "What is being done" command...: says what it does, then how long it took.
step() {
    local what=$1 began=$SECONDS
    shift
    say "$what ..."
    "$@" || fail "$what failed. The messages above say why."
    say "$what: done in $((SECONDS - began)) s"
}

# quietly LOG command...: output goes to a file, shown only on failure.
quietly() {
    local log=$1
    shift
    mkdir -p "$(dirname "$log")"
    if ! "$@" >"$log" 2>&1; then
        tail -n 60 "$log" >&2
        return 1
    fi
}

# paced LOG command...: as quietly, and says at each tenth how far a build has come, by ninja's own count, or apt-get, which
# tells how many packages there are and then unpacks each and sets it up. In one pipe, so that nothing is left behind that
# keeps a reader waiting.
paced() {
    local log=$1 line tenth=0 now what=built at=0 all=0
    shift
    mkdir -p "$(dirname "$log")"
    if ! (
        set -o pipefail
        "$@" 2>&1 | while IFS= read -r line || [ -n "$line" ]; do
            printf '%s\n' "$line" >&3
            if [[ $line =~ ^\[([0-9]+)/([0-9]+)\] ]]; then
                at=${BASH_REMATCH[1]} all=${BASH_REMATCH[2]}
            elif [[ $line =~ ^([0-9]+)\ upgraded,\ ([0-9]+)\ newly\ installed ]]; then
                what=installed all=$((2 * (BASH_REMATCH[1] + BASH_REMATCH[2])))
            elif [ "$what" = installed ] && [[ $line =~ ^(Unpacking|Setting up)\  ]]; then
                at=$((at + 1))
            else
                continue
            fi
            [ "$all" -gt 0 ] || continue
            now=$((10 * at / all))
            if [ "$now" -gt "$tenth" ] && [ "$now" -lt 10 ]; then
                tenth=$now
                say "$what $((10 * now)) % ($at of $all steps)"
            fi
        done 3>"$log"
    ); then
        tail -n 60 "$log" >&2
        return 1
    fi
}

# Object files are found again in another clone, because paths are kept relative to the source.
export CCACHE_BASEDIR=$ebbline_root CCACHE_NOHASHDIR=1

# One compile job a core, but never more than one for each 1.5 GiB of memory.
jobs_at_once() {
    local cores memory
    cores=$(nproc)
    memory=$(awk '/MemAvailable/ { print int($2 / 1572864) }' /proc/meminfo)
    [ "$memory" -ge 1 ] || memory=1
    [ "$cores" -le "$memory" ] && echo "$cores" || echo "$memory"
}

# note_missing [--tests]: with --no-install, names the packages that are missing before anything starts; what they
# are missing for may still work, and if the build does not, the sentence is said again where it is read.
missing_packages=
note_missing() {
    missing_packages=$(bash "$ebbline_root/platform/debian/install.sh" --check "$@") || say "${missing_packages#ebbline: }" >&2
}

# build PRESET [targets...]; what stands in configure_with goes to CMake as well.
configure_with=()
build() {
    local preset=$1 began=$SECONDS
    shift
    cd "$ebbline_root" || return 1
    say "configuring $preset ..."
    if ! quietly "build/logs/configure-$preset.log" cmake --preset "$preset" "${configure_with[@]}"; then
        [ -z "$missing_packages" ] || say "the likely cause: ${missing_packages#ebbline: }" >&2
        return 1
    fi
    say "building $preset with $(jobs_at_once) jobs ..."
    local targets=()
    [ $# -eq 0 ] || targets=(--target "$@")
    if [ -t 1 ]; then
        cmake --build --preset "$preset" -j "$(jobs_at_once)" "${targets[@]}" || return 1
    else
        paced "build/logs/build-$preset.log" cmake --build --preset "$preset" -j "$(jobs_at_once)" "${targets[@]}" || return 1
    fi
    say "built $preset in $((SECONDS - began)) s"
}

# demo_is_open FOLDER: whether anything that open_demo.sh started on it still runs.
demo_is_open() { [ -e "$1/open.lock" ] && ! flock --nonblock "$1/open.lock" true; }

# A private folder for Qt's sockets where the session has none.
ensure_runtime_dir() {
    if [ -z "${XDG_RUNTIME_DIR:-}" ] || [ ! -w "${XDG_RUNTIME_DIR:-/nonexistent}" ]; then
        XDG_RUNTIME_DIR=$ebbline_root/build/runtime
        mkdir -p "$XDG_RUNTIME_DIR"
        chmod 700 "$XDG_RUNTIME_DIR"
        export XDG_RUNTIME_DIR
    fi
}
