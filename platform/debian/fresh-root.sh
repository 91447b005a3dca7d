#!/usr/bin/env bash
# Proves the two set-up commands on a clean Debian: makes a root with debootstrap, copies the
# committed tree into it and runs one command there.
#
# usage: fresh-root.sh [--sudo] 12|13 run|test [folder]     needs root; about 4 GB in the folder
#
# --sudo runs the command as a user who is not root and has sudo, as README's reader may; then nothing is kept between runs.
# FRESH_ROOT_OPTIONS goes to the command. FRESH_ROOT_CCACHE names a folder that keeps compiled
# objects between runs; without it everything is compiled anew, which is what to measure.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
. "$(dirname "${BASH_SOURCE[0]}")/sources.sh"
. "$(dirname "${BASH_SOURCE[0]}")/clean_root.sh"

usage="usage: fresh-root.sh [--sudo] 12|13 run|test [folder]"
with_sudo=no
if [ "${1:-}" = --sudo ]; then
    with_sudo=yes
    shift
fi
suite_of "${1:-}" >/dev/null || fail "$usage"
case ${2:-} in
    run | test) command=$2 ;;
    *) fail "$usage" ;;
esac
[ "$(id -u)" -eq 0 ] || fail "making a root needs root"
need_source
folder=${3:-/var/tmp/ebbline-root-$1-$$}
[ ! -e "$folder" ] || fail "$folder exists already; name another folder or remove it"

step "Making a clean Debian $1 in $folder" make_root "$1" "$folder"
[ "$with_sudo" = yes ] || keep_objects "$folder"
put_source "$folder"
it="cd /ebbline && bash platform/$command.sh ${FRESH_ROOT_OPTIONS:-}"
if [ "$with_sudo" = yes ]; then
    step "Making a user with sudo in it" in_root "$folder" "apt-get update -q && apt-get install -y -q --no-install-recommends sudo \
        && useradd --create-home --shell /bin/bash reader && echo 'reader ALL=(ALL) NOPASSWD: ALL' >/etc/sudoers.d/reader \
        && chown -R reader: /ebbline"
    step "Running platform/$command.sh in it as that user" in_root "$folder" "export HOME=/home/reader && exec runuser -u reader -- bash -c '$it'"
else
    step "Running platform/$command.sh in it" in_root "$folder" "$it"
fi
say "platform/$command.sh works on a clean Debian $1, after $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s; the root is left in $folder"
