#!/usr/bin/env bash
# shellcheck source-path=SCRIPTDIR
# Builds core, hub and tool for arm64 with Debian's cross compiler, in a clean Debian, runs their tests under emulation, and has
# the emulated tool open every vault among the fixtures, which were written on amd64.
#
# usage: arm64.sh 12|13 [folder]     needs root; about 5 GB in the folder, which must not exist
#
# EBBLINE_ARM64_TESTS goes to ctest. FRESH_ROOT_CCACHE names a folder that keeps compiled objects between runs.
# With --inside it is the part that runs in the root.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
. "$(dirname "${BASH_SOURCE[0]}")/sources.sh"

usage="usage: arm64.sh 12|13 [folder]"

# What runs on this machine, and what is linked and run as arm64. Nothing of Qt: the programs with windows are not crossed.
tools=(crossbuild-essential-arm64 cmake ninja-build pkg-config ccache git ca-certificates python3 file binutils dbus appstream desktop-file-utils
    locales nodejs python3-icalendar qemu-user-static tzdata)
headers=(libcli11-dev nlohmann-json3-dev libeigen3-dev)
libraries=(libsqlcipher-dev libsodium-dev libssl-dev libcereal-dev libhowardhinnant-date-dev libqrencode-dev libzstd-dev libpq-dev libzxing-dev libcatch2-dev librapidcheck-dev)

apt() { quietly build/logs/arm64-apt.log env DEBIAN_FRONTEND=noninteractive apt-get -q "$@"; }

install_for_arm64() {
    local release=$1 suite=$2 lists wanted=() package
    mapfile -t lists < <(apt_files)
    if [ "$release" = 12 ] && ! suite_is_listed "$suite-backports" "${lists[@]}"; then
        backports_of "$suite" "${lists[@]}" >"/etc/apt/sources.list.d/$suite-backports.sources" || return 1
    fi
    local boost=libboost-dev
    [ "$release" != 12 ] || boost=libboost1.81-dev
    for package in "${libraries[@]}" "$boost"; do
        case $release:$package in
            12:libsqlcipher-dev) wanted+=("$package:arm64/$suite-backports" "libsqlcipher1:arm64/$suite-backports") ;;
            12:libcatch2-dev) wanted+=("$package:arm64/$suite-backports") ;;
            *) wanted+=("$package:arm64") ;;
        esac
    done
    dpkg --add-architecture arm64 || return 1
    apt update || return 1
    apt install -y --no-install-recommends "${tools[@]}" "${headers[@]}" "${wanted[@]}"
}

# What was written on one architecture has to be read on the other: journal, keys and pages.
open_fixtures() {
    local emulator=$1 fixture copy opened=0
    for fixture in tests/core/vault/fixtures/version*; do
        copy=build/arm64/fixtures/$(basename "$fixture")
        mkdir -p build/arm64/fixtures && rm -rf "$copy" && cp -r "$fixture" "$copy" || return 1
        "$emulator" build/arm64/bin/ebbline verify "$copy" <<<"three calm herons wade" || return 1
        opened=$((opened + 1))
    done
    [ "$opened" -ge 5 ] || { say "only $opened fixtures were there"; return 1; }
    say "$opened vaults that were written on amd64 are whole on arm64"
}

inside() {
    local release=$1 suite=$2 emulator options
    cd "$ebbline_root"
    step "Installing the cross compiler and arm64's libraries" install_for_arm64 "$release" "$suite"
    emulator=$(command -v qemu-aarch64-static || command -v qemu-aarch64) || fail "no emulator of arm64 was installed"
    step "Building core, hub and tool for arm64" build arm64
    file -L build/arm64/bin/ebbline-hub | grep -q 'ARM aarch64' || fail "what was built is not for arm64"
    read -ra options <<<"${EBBLINE_ARM64_TESTS:-}"
    # A test that starts another program of ours needs a kernel that starts arm64's; CMake puts the emulator before the others.
    if [ "$(build/arm64/bin/ebbline --version 2>/dev/null)" = "" ]; then
        say "this kernel does not start programs of arm64 (binfmt_misc): only tests that start none are run"
        options+=(-L unit)
    fi
    step "Running their tests under emulation" ctest --preset arm64 -j "$(nproc)" "${options[@]}"
    step "Opening vaults that were written on amd64" open_fixtures "$emulator"
}

if [ "${1:-}" = --inside ]; then
    inside "$2" "$3"
    exit 0
fi
. "$(dirname "${BASH_SOURCE[0]}")/clean_root.sh"
suite=$(suite_of "${1:-}") || fail "$usage"
[ "$(id -u)" -eq 0 ] || fail "making a root needs root"
need_source
folder=${2:-/var/tmp/ebbline-arm64-$1-$$}
[ ! -e "$folder" ] || fail "$folder exists already; name another folder or remove it"

step "Making a clean Debian $1 in $folder" make_root "$1" "$folder"
keep_objects "$folder"
put_source "$folder"
step "Building and testing for arm64 in it" in_root "$folder" "cd /ebbline && EBBLINE_ARM64_TESTS='${EBBLINE_ARM64_TESTS:-}' bash platform/debian/arm64.sh --inside $1 $suite"
say "core, hub and tool work as arm64 on an emulated machine, after $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s; the root is left in $folder"
