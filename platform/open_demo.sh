#!/usr/bin/env bash
# Opens the desk and one patient's diary on a demo clinic that `ebbline demo` made, with a hub of its own.
# usage: open_demo.sh DEMO_FOLDER PROGRAM_FOLDER
#
# Ends when both are closed, with the exit code of the first that ended with an error.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
demo=$1 programs=$2

# Where only a Wayland session is, Qt is told so; X11 is what it takes by itself.
if [ -z "${QT_QPA_PLATFORM:-}" ] && [ -z "${DISPLAY:-}" ] && [ -n "${WAYLAND_DISPLAY:-}" ]; then
    export QT_QPA_PLATFORM=wayland
fi

# Held by this script and by what it starts, until the last of them has ended: run.sh empties no demo that is open.
exec 9>"$demo/open.lock"
flock --nonblock 9 || fail "the demo in $demo is open already"

port=$(cat "$demo/hub.port")
hub_pid='' diary_pid=''
# Ends what is still running; both are children of this script.
finish() {
    local pid
    for pid in $diary_pid $hub_pid; do
        kill "$pid" 2>/dev/null || true
        wait "$pid" 2>/dev/null || true
    done
}
trap finish EXIT
# Left by an earlier run, it would pass for this hub's.
rm -f "$demo/hub.ready"
"$programs/ebbline-hub" serve --store "$demo/work/hub" --listen "127.0.0.1:$port" --port-file "$demo/hub.ready" \
    >"$demo/hub.log" 2>&1 &
hub_pid=$!
for _ in $(seq 100); do
    if [ -s "$demo/hub.ready" ] || ! kill -0 "$hub_pid" 2>/dev/null; then break; fi
    sleep 0.1
done
[ -s "$demo/hub.ready" ] || fail "the hub did not start; see $demo/hub.log"
say "the hub listens on 127.0.0.1:$port"

# failed_with CODE PROGRAM: says what to do, and ends with the program's exit code.
failed_with() {
    printf 'ebbline: the %s ended with an error (exit code %s).' "$2" "$1" >&2
    printf ' If no window came up, the display (DISPLAY=%s, WAYLAND_DISPLAY=%s) does not answer:' \
        "${DISPLAY:-}" "${WAYLAND_DISPLAY:-}" >&2
    printf ' play the story without one, with: bash platform/run.sh --story\n' >&2
    exit "$1"
}

say "opening desk and diary, already unlocked; to unlock them again, the passphrase is in $demo/passphrase.txt"
"$programs/ebbline-diary" --vault "$demo/work/phone-plain" --passphrase-file "$demo/passphrase.txt" &
diary_pid=$!
desk_code=0 diary_code=0
"$programs/ebbline-desk" --vault "$demo/work/desk" --passphrase-file "$demo/passphrase.txt" || desk_code=$?
[ "$desk_code" -eq 0 ] || failed_with "$desk_code" desk
! kill -0 "$diary_pid" 2>/dev/null || say "the desk was closed; close the diary to end"
wait "$diary_pid" || diary_code=$?
diary_pid=
[ "$diary_code" -eq 0 ] || failed_with "$diary_code" diary
