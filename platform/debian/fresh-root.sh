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

case ${1:-} in
    12) suite=bookworm ;;
    13) suite=trixie ;;
    *) fail "usage: fresh-root.sh 12|13 run|test [folder]" ;;
esac
case ${2:-} in
    run | test) command=$2 ;;
    *) fail "usage: fresh-root.sh 12|13 run|test [folder]" ;;
esac
[ "$(id -u)" -eq 0 ] || fail "making a root needs root"
folder=${3:-/var/tmp/ebbline-root-$1-$$}
[ ! -e "$folder" ] || fail "$folder exists already; name another folder or remove it"
command -v debootstrap >/dev/null || step "Installing debootstrap" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q debootstrap

# The mirror this machine uses itself.
mapfile -t lists < <(apt_files)
mirror=$(mirror_of "$(. /etc/os-release && echo "${VERSION_CODENAME:-}")" "${lists[@]}")
[ -n "$mirror" ] || fail "no Debian mirror is set in /etc/apt"

clean() {
    for mounted in proc sys dev root/.cache/ccache; do
        umount -R -l "$folder/$mounted" 2>/dev/null || true
    done
}
trap clean EXIT

step "Making a clean Debian $1 in $folder" quietly "$ebbline_root/build/logs/debootstrap-$1.log" \
    debootstrap --variant=minbase --include=ca-certificates "$suite" "$folder" "$mirror"
for file in /etc/apt/apt.conf.d/*proxy* /etc/resolv.conf /etc/hosts; do
    [ ! -r "$file" ] || cp "$file" "$folder$file"
done
# The root is thrown away: no package needs to survive a power cut.
echo force-unsafe-io >"$folder/etc/dpkg/dpkg.cfg.d/throw-away"
mount -t proc proc "$folder/proc"
for mounted in sys dev; do
    mount --rbind "/$mounted" "$folder/$mounted"
    # What is unmounted in the root must stay mounted outside.
    mount --make-rslave "$folder/$mounted"
done
if [ -n "${FRESH_ROOT_CCACHE:-}" ]; then
    mkdir -p "$FRESH_ROOT_CCACHE" "$folder/root/.cache/ccache"
    mount --bind "$FRESH_ROOT_CCACHE" "$folder/root/.cache/ccache"
fi
mkdir -p "$folder/ebbline"
git -C "$ebbline_root" archive HEAD | tar -x -C "$folder/ebbline"
step "Running platform/$command.sh in it" chroot "$folder" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root \
    LANG=C.UTF-8 http_proxy="${http_proxy:-}" https_proxy="${https_proxy:-}" \
    bash -c "cd /ebbline && bash platform/$command.sh ${FRESH_ROOT_OPTIONS:-}"
say "platform/$command.sh works on a clean Debian $1, after $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s; the root is left in $folder"
