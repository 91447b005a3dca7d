#!/usr/bin/env bash
# Installs what is missing, builds, and runs Ebbline on an invented clinic.
#
# With a display: starts a hub, seeds a demo clinic, and opens the desk and one patient's diary.
# Without one: plays the same story headless and leaves every screen (PNG), the follow-up sheet
# (PDF) and a summary in build/story/.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/run.sh [--no-install] [--story] [--help]

  --no-install  do not install packages
  --story       play the story headless even if there is a display
TEXT
}

install=yes story=no
for argument in "$@"; do
    case $argument in
        --no-install) install=no ;;
        --story) story=yes ;;
        --help | -h) usage; exit 0 ;;
        *) usage >&2; fail "run.sh does not know '$argument'" ;;
    esac
done

cd "$ebbline_root"
[ "$install" = no ] || step "Installing what is missing" bash platform/debian/install.sh
# The packages that only tests need are not asked for here.
configure_with=(-DEBBLINE_TESTS=OFF)
step "Building the programs" build dev ebbline ebbline-hub ebbline-desk ebbline-diary
ensure_runtime_dir

if [ "$story" = yes ] || { [ -z "${DISPLAY:-}" ] && [ -z "${WAYLAND_DISPLAY:-}" ]; }; then
    say "no display is used: playing the story; this takes about a minute"
    step "Playing the story" build/dev/bin/ebbline story --out build/story
    say "look at build/story: screens as PNG, follow-up sheet as PDF, summary.json"
    exit 0
fi

demo=build/demo
step "Seeding the demo clinic" build/dev/bin/ebbline demo --out "$demo"
port=$(cat "$demo/hub.port")
hub_pid=
stop_hub() { [ -z "$hub_pid" ] || kill "$hub_pid" 2>/dev/null || true; }
trap stop_hub EXIT
build/dev/bin/ebbline-hub serve --store "$demo/work/hub" --listen "127.0.0.1:$port" --port-file "$demo/hub.ready" \
    >"$demo/hub.log" 2>&1 &
hub_pid=$!
for _ in $(seq 100); do
    [ -s "$demo/hub.ready" ] && break
    sleep 0.1
done
[ -s "$demo/hub.ready" ] || fail "the hub did not start; see $demo/hub.log"
say "the hub listens on 127.0.0.1:$port"

say "opening desk and diary, already unlocked; to unlock them again, the passphrase is in $demo/passphrase.txt"
build/dev/bin/ebbline-diary --vault "$demo/work/phone-plain" --passphrase-file "$demo/passphrase.txt" &
diary_pid=$!
build/dev/bin/ebbline-desk --vault "$demo/work/desk" --passphrase-file "$demo/passphrase.txt" || true
say "the desk was closed; close the diary to end"
wait "$diary_pid" || true
