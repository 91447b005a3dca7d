#!/usr/bin/env bash
# Installs what is missing, builds, and runs Ebbline on an invented clinic.
#
# With a display: starts a hub, seeds a demo clinic, and opens the desk and one patient's diary.
# Without one: plays the same story headless and leaves every screen (PNG), the follow-up sheet
# (PDF) and a summary in build/story/.
# Each run begins anew: what was typed into the demo, or left of the story, is gone.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/run.sh [--no-install] [--story] [--help]

  --no-install  do not install packages
  --story       play the story headless even if there is a display

Each run makes the demo clinic in build/demo, or the story in build/story, anew and empties what is there: what you
typed into the demo is gone. Not while the demo is open. To go on with it as it is:

  bash platform/open_demo.sh build/demo build/dev/bin
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
demo=build/demo
if [ -z "${DISPLAY:-}" ] && [ -z "${WAYLAND_DISPLAY:-}" ]; then story=yes; fi
if [ "$story" = no ] && demo_is_open "$demo"; then
    fail "the demo in $demo is open, and would be emptied: close its desk and its diary first"
fi
if [ "$install" = yes ]; then
    step "Installing what is missing" bash platform/debian/install.sh
else
    note_missing
fi
# The packages that only tests need are not asked for here.
configure_with=(-DEBBLINE_TESTS=OFF)
step "Building the programs" build dev ebbline ebbline-hub ebbline-desk ebbline-diary
ensure_runtime_dir

if [ "$story" = yes ]; then
    say "no display is used: playing the story; this takes two or three minutes"
    step "Playing the story" build/dev/bin/ebbline story --out build/story
    say "look at build/story: screens as PNG, follow-up sheet as PDF, summary.json"
    exit 0
fi

# Again: a build takes long enough to open it meanwhile.
! demo_is_open "$demo" || fail "the demo in $demo is open, and would be emptied: close its desk and its diary first"
[ ! -e "$demo" ] || say "$demo is emptied and made anew; what was typed into it goes (bash platform/open_demo.sh $demo build/dev/bin opens it as it is)"
step "Seeding the demo clinic" build/dev/bin/ebbline demo --out "$demo"
bash platform/open_demo.sh "$demo" build/dev/bin
