#!/usr/bin/env bash
# Proves the packages: builds them in one clean Debian, has lintian judge them, installs them in a second one that has no
# compiler and no library of development, and there starts all four programs, plays the story and takes them off again.
#
# usage: packages.sh 12|13 [folder]     needs root; about 6 GB in the folder, which must not exist
#
# FRESH_ROOT_CCACHE names a folder that keeps compiled objects between runs.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
. "$(dirname "${BASH_SOURCE[0]}")/sources.sh"
. "$(dirname "${BASH_SOURCE[0]}")/clean_root.sh"

suite_of "${1:-}" >/dev/null || fail "usage: packages.sh 12|13 [folder]"
[ "$(id -u)" -eq 0 ] || fail "making a root needs root"
need_source
release=$1
folder=${2:-/var/tmp/ebbline-packages-$1-$$}
[ ! -e "$folder" ] || fail "$folder exists already; name another folder or remove it"
mkdir -p "$folder"
maker=$folder/maker user=$folder/user

step "Making a clean Debian $release to build in" make_root "$release" "$maker"
keep_objects "$maker"
put_source "$maker"
step "Installing what building needs" in_root "$maker" "cd /ebbline && bash platform/debian/install.sh && apt-get install -y -q --no-install-recommends dpkg-dev lintian >/var/log/packing.log 2>&1"
step "Building the packages" in_root "$maker" "cd /ebbline && . platform/steps.sh && configure_with=(-DEBBLINE_TESTS=OFF) && build release && cpack --config build/release/CPackConfig.cmake -B /packages"
step "Writing the bill of materials of what they hold" in_root "$maker" "cd /ebbline && python3 -B platform/release/sbom.py . build/release /packages/ebbline.cdx.json /packages"
packages=$(cd "$maker/packages" && ls ./*.deb)
[ "$(wc -l <<<"$packages")" -eq 4 ] || fail "four packages were expected: $packages"

step "Judging them with lintian" in_root "$maker" "lintian --allow-root --fail-on error,warning /packages/*.deb"

step "Making a clean Debian $release to install in" make_root "$release" "$user"
mkdir "$user/packages"
cp "$maker"/packages/*.deb "$user/packages/"
cp "$ebbline_root/platform/debian/try_packages.sh" "$user/packages/"
step "Installing and starting them" in_root "$user" "bash /packages/try_packages.sh"
mkdir -p "$ebbline_root/build/packages-$release"
cp "$maker"/packages/*.deb "$maker/packages/ebbline.cdx.json" "$ebbline_root/build/packages-$release/"
say "the packages work on a clean Debian $release: build/packages-$release, after $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s; the roots are left in $folder"
