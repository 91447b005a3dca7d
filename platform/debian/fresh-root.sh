#!/usr/bin/env bash
# Proves the two set-up commands on a clean Debian: makes a root with debootstrap, copies the
# committed tree into it and runs one command there.
#
# usage: fresh-root.sh 12|13 run|test [folder]     needs root; about 4 GB in the folder
#
# FRESH_ROOT_OPTIONS goes to the command. FRESH_ROOT_CCACHE names a folder that keeps compiled
# objects between runs; without it everything is compiled anew, which is what to measure.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
. "$(dirname "${BASH_SOURCE[0]}")/sources.sh"
. "$(dirname "${BASH_SOURCE[0]}")/clean_root.sh"

suite_of "${1:-}" >/dev/null || fail "usage: fresh-root.sh 12|13 run|test [folder]"
case ${2:-} in
    run | test) command=$2 ;;
    *) fail "usage: fresh-root.sh 12|13 run|test [folder]" ;;
esac
[ "$(id -u)" -eq 0 ] || fail "making a root needs root"
folder=${3:-/var/tmp/ebbline-root-$1-$$}
[ ! -e "$folder" ] || fail "$folder exists already; name another folder or remove it"

step "Making a clean Debian $1 in $folder" make_root "$1" "$folder"
keep_objects "$folder"
put_source "$folder"
step "Running platform/$command.sh in it" in_root "$folder" "cd /ebbline && bash platform/$command.sh ${FRESH_ROOT_OPTIONS:-}"
say "platform/$command.sh works on a clean Debian $1, after $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s; the root is left in $folder"
