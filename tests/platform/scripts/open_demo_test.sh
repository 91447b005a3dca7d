#!/usr/bin/env bash
# Opening the demo says when a program ended with an error, what to do, and keeps the exit code.
# usage: open_demo_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/open-demo
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/demo" "$scratch/bin"
echo 40000 >"$scratch/demo/hub.port"

# stands_in PROGRAM LINE...: a program of that name that does this.
stands_in() {
    printf '%s\n' '#!/usr/bin/env bash' "${@:2}" >"$scratch/bin/$1"
    chmod +x "$scratch/bin/$1"
}

# shellcheck disable=SC2016  # for the stand-in to expand
stands_in ebbline-hub 'echo 40000 >"${@: -1}"; echo $$ >"$0.pid"; exec sleep 60'
opened() {
    local code=0
    "${@:2}" bash "$root/platform/open_demo.sh" "$scratch/demo" "$scratch/bin" >"$scratch/said" 2>&1 || code=$?
    [ "$code" = "$1" ] || wrong "exit code $code, wanted $1"
    # The hub goes with it, whatever happened.
    ! kill -0 "$(cat "$scratch/bin/ebbline-hub.pid")" 2>/dev/null || wrong "the hub is left running"
}
wrong() {
    echo "$1:" >&2
    cat "$scratch/said" >&2
    faults=$((faults + 1))
}
says() { grep -q -e "$1" "$scratch/said" || wrong "not said: $1"; }

stands_in ebbline-desk 'exit 0'
stands_in ebbline-diary 'exec sleep 0.5'
opened 0 env DISPLAY=:7
says "the desk was closed; close the diary to end"

# What Qt's programs do where the display does not answer.
stands_in ebbline-desk 'kill -ABRT $$'
opened 134 env DISPLAY=:7
says "the desk ended with an error (exit code 134).*DISPLAY=:7.*does not answer.*run.sh --story"

stands_in ebbline-desk 'exit 0'
stands_in ebbline-diary 'exit 3'
opened 3 env DISPLAY=:7
says "the diary ended with an error (exit code 3).*run.sh --story"

# Wayland alone is named to Qt; where X11 is as well, or somebody chose, nothing is changed.
# shellcheck disable=SC2016
stands_in ebbline-desk 'echo "the desk is told: ${QT_QPA_PLATFORM:-nothing}"'
stands_in ebbline-diary 'exit 0'
opened 0 env -u DISPLAY -u QT_QPA_PLATFORM WAYLAND_DISPLAY=wayland-0
says "the desk is told: wayland"
opened 0 env -u QT_QPA_PLATFORM DISPLAY=:7 WAYLAND_DISPLAY=wayland-0
says "the desk is told: nothing"
opened 0 env -u DISPLAY QT_QPA_PLATFORM=offscreen WAYLAND_DISPLAY=wayland-0
says "the desk is told: offscreen"

# While it is open, nobody empties it and nobody opens it again; afterwards it can be.
mkdir -p "$scratch/root/platform"
cp "$root"/platform/{run,steps,open_demo}.sh "$scratch/root/platform/"
mkdir -p "$scratch/root/build"
mv "$scratch/demo" "$scratch/root/build/demo"
stands_in ebbline-desk 'exit 0'
# shellcheck disable=SC2016
stands_in ebbline-diary 'until [ -e "$0.close" ]; do sleep 0.1; done'
DISPLAY=:7 bash "$scratch/root/platform/open_demo.sh" "$scratch/root/build/demo" "$scratch/bin" >"$scratch/opened" 2>&1 &
open=$!
for _ in $(seq 100); do ! grep -q "close the diary to end" "$scratch/opened" || break; sleep 0.1; done
refused() {
    local code=0
    DISPLAY=:7 timeout 60 bash "$scratch/root/platform/$1" "${@:2}" >"$scratch/said" 2>&1 || code=$?
    [ "$code" = 1 ] || wrong "exit code $code of $1 while the demo is open, wanted 1"
}
refused run.sh --no-install
says "the demo in build/demo is open, and would be emptied"
refused open_demo.sh "$scratch/root/build/demo" "$scratch/bin"
says "is open already"
[ -s "$scratch/root/build/demo/hub.port" ] || wrong "the open demo was emptied"
touch "$scratch/bin/ebbline-diary.close"
wait "$open" || wrong "the demo that was open did not end well"
# shellcheck source=/dev/null
! (. "$root/platform/steps.sh" && demo_is_open "$scratch/root/build/demo") || wrong "a demo that was closed counts as open"
mv "$scratch/root/build/demo" "$scratch/demo"

stands_in ebbline-hub 'exit 1'
: >"$scratch/bin/ebbline-hub.pid"
code=0
timeout 60 bash "$root/platform/open_demo.sh" "$scratch/demo" "$scratch/bin" >"$scratch/said" 2>&1 || code=$?
[ "$code" = 1 ] || wrong "exit code $code without a hub, wanted 1"
says "the hub did not start"
[ "$faults" -eq 0 ] || exit 1
echo "the demo ends as its programs did"
