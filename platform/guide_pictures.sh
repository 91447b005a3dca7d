#!/usr/bin/env bash
# Makes the pictures of docs/guides and README.md anew, from the programs themselves on invented patients; README's from the
# story that its first command plays.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"
step "Building the programs" build dev diary_shots desk_shots overview_picture ebbline ebbline-hub
ensure_runtime_dir
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
shots=build/guide-pictures
step "Taking the pictures of the diary" quietly build/logs/diary-shots.log build/dev/bin/diary_shots $shots/diary en 0 100 390 844
step "Taking the pictures of the desk" quietly build/logs/desk-shots.log build/dev/bin/desk_shots $shots/desk en 0 100 1280 800

pictures=docs/guides/pictures
# take PROGRAM PAGE NAME: the page's picture under the guide's name.
take() {
    local found
    found=$(find "$shots/$1" -name "$2.png" -o -name "??_$2.png" | head -n 1)
    [ -n "$found" ] || fail "there is no picture of the page $2"
    cp "$found" "$pictures/$3.png"
}
take diary lock_fresh patient-lock
take diary join patient-join
take diary today_due patient-today
take diary entry_answered patient-scores
take diary entry_signs patient-signs
take diary warning_call_now patient-warning
take diary photo patient-photo
take diary history_photos patient-photos
take desk clinic desk-clinic
take desk desks desk-desks
take desk keep desk-keep
take desk traces desk-traces
take desk treatment_threads desk-threads
take desk treatment_anaesthetic desk-anaesthetic
take desk pairing_compare desk-linked
take desk queue desk-queue
take desk course desk-course
take desk photos desk-photos
take desk sheet desk-sheet
take desk queue_call desk-call
take desk handOver desk-handover
take desk practice_comparison desk-practice
take desk protocol_rehearsed desk-rehearsal
story=build/guide-pictures/story
step "Playing the story" quietly build/logs/guide-story.log build/dev/bin/ebbline story --out "$story"
warned=$(find "$story" -name 'phone-day*-warning.png' | head -n 1)
[ -n "$warned" ] || fail "the story shows no warning"
build/dev/bin/overview_picture "$pictures/overview.png" 600 "$story/phone-day0-evening.png" "$story/${warned##*/}" \
    "$story/desk-queue-longest.png" || fail "the overview could not be made"
say "the pictures in $pictures are those of the programs"
