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
if [ "$install" = yes ]; then
    step "Installing what is missing" bash platform/debian/install.sh
else
    note_missing
fi
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
bash platform/open_demo.sh "$demo" build/dev/bin
