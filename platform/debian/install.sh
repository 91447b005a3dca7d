#!/usr/bin/env bash
# Installs what Ebbline needs to build and to be tested on Debian 12 (bookworm) or 13 (trixie).
#
# Safe to run again: packages that are there already are left alone, and with nothing
# missing neither root nor the network is needed. On Debian 12 the backports suite is added,
# from the mirror the machine already uses, because SQLCipher 4 and Catch2 3 come from there;
# where that mirror has no such suite it is taken away again.
#
# usage: install.sh [--tests] [--soak] [--check]   --tests adds what only the tests use, --soak what only the long ones use
#                                         besides (a JDK, for the checks of Android's half); --check installs nothing, names
#                                         what is missing in one sentence, and ends with exit code 3 if anything is
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
. "$(dirname "${BASH_SOURCE[0]}")/sources.sh"

with_tests=no with_soak=no check=no
for argument in "$@"; do
    case $argument in
        --tests) with_tests=yes ;;
        --soak) with_tests=yes with_soak=yes ;;
        --check) check=yes ;;
        *) fail "install.sh does not know '$argument'; it takes --tests, --soak and --check" ;;
    esac
done

# Elsewhere packages have other names, and nothing can be said about them.
# shellcheck disable=SC1091
if [ "$check" = yes ] && ! (. /etc/os-release && [[ ${ID:-}:${VERSION_ID:-} =~ ^debian:1[23]$ ]]) 2>/dev/null; then
    exit 0
fi
[ -r /etc/os-release ] || fail "this is not Debian: /etc/os-release is missing. Install the packages by hand (see DEVELOPERS.md)."
# shellcheck disable=SC1091
. /etc/os-release
case "${ID:-}:${VERSION_ID:-}" in
    debian:12 | debian:13) ;;
    *) fail "Debian 12 or 13 is needed to install packages; this is '${PRETTY_NAME:-unknown}'. Use --no-install once the packages of platform/debian/install.sh are there." ;;
esac

packages=(
    g++ cmake ninja-build pkg-config ccache git ca-certificates
    qt6-base-dev qt6-declarative-dev qt6-declarative-dev-tools qt6-charts-dev qt6-svg-dev
    qt6-multimedia-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    qml6-module-qtqml qml6-module-qtqml-workerscript qml6-module-qtquick qml6-module-qtquick-window
    qml6-module-qtquick-controls qml6-module-qtquick-templates qml6-module-qtquick-layouts
    qml6-module-qtquick-shapes qml6-module-qtcharts qml6-module-qtmultimedia qml6-module-qtqml-models
    qml6-module-qtquick-dialogs qml6-module-qt-labs-folderlistmodel qt6-wayland
    fonts-noto-core fonts-noto-ui-core fonts-noto-cjk fonttools
    python3 libsqlcipher-dev libsodium-dev libssl-dev libcereal-dev libcli11-dev nlohmann-json3-dev
    libeigen3-dev libhowardhinnant-date-dev libqrencode-dev libzstd-dev libpq-dev tzdata
    qtkeychain-qt6-dev libsecret-1-0
)
if [ "$with_tests" = yes ]; then
    packages+=(catch2 librapidcheck-dev poppler-utils python3-icalendar dbus file binutils locales appstream desktop-file-utils nodejs postgresql r-base-core)
fi
if [ "$with_soak" = yes ]; then
    packages+=(default-jdk-headless)
fi
case $VERSION_ID in
    12) packages+=(libboost1.81-dev libzxingcore-dev)
        [ "$with_tests" = no ] || packages+=(clang-19 clang-tidy-19 libclang-rt-19-dev) ;;
    13) packages+=(libboost-dev libzxing-dev)
        [ "$with_tests" = no ] || packages+=(clang-19 clang-tidy-19 libclang-rt-19-dev) ;;
esac
# On Debian 12 these come from the backports suite.
from_backports=" libsqlcipher-dev catch2 "

# Debian 12 has SQLCipher 3 and Catch2 2 under the same names: those do not count.
installed() {
    local version
    version=$(dpkg-query -W -f '${db:Status-Status} ${Version}' "$1" 2>/dev/null) || return 1
    case $version in installed\ *) version=${version#installed } ;; *) return 1 ;; esac
    case $1 in
        libsqlcipher-dev) dpkg --compare-versions "$version" ge 4 ;;
        catch2) dpkg --compare-versions "$version" ge 3 ;;
        *) return 0 ;;
    esac
}

missing=()
for package in "${packages[@]}"; do
    installed "$package" || missing+=("$package")
done
if [ ${#missing[@]} -eq 0 ]; then
    [ "$check" = yes ] || say "all ${#packages[@]} packages are installed"
    exit 0
fi
if [ "$check" = yes ]; then
    tests=""
    [ "$with_tests" = no ] || tests=" --tests"
    [ "$with_soak" = no ] || tests=" --soak"
    say "missing packages (${#missing[@]} of ${#packages[@]}): ${missing[*]}. Install them with: bash platform/debian/install.sh$tests"
    exit 3
fi

as_root=()
if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "installing needs root: run this as root, or install sudo, or use --no-install."
    sudo true || fail "sudo does not let this user install packages; its own words stand above. Run this as root or as a user whom sudo lets, or have these packages installed and use --no-install: ${missing[*]}"
    as_root=(sudo)
fi

# On a terminal apt shows its own progress; elsewhere its many lines go to a file, shown if it fails.
log=$(mktemp)
added=""
# A suite that turned out not to be there must not stay: apt would complain of it for ever.
finish() {
    rm -f "$log"
    [ -z "$added" ] || "${as_root[@]}" rm -f "$added"
}
trap finish EXIT
apt() {
    if [ -t 1 ]; then
        "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -q "$@"
    else
        paced "$log" "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 apt-get -q "$@"
    fi
}

wanted=() late=()
for package in "${missing[@]}"; do
    if [ "$VERSION_ID" = 12 ] && [[ $from_backports == *" $package "* ]]; then
        late+=("$package")
        [ "$package" != libsqlcipher-dev ] || late+=(libsqlcipher1)
    else
        wanted+=("$package")
    fi
done

mapfile -t lists < <(apt_files)
read -r listed_as address <<<"$(release_mirror "$VERSION_CODENAME" "${lists[@]}")"
if [ ${#late[@]} -gt 0 ]; then
    if suite_is_listed bookworm-backports "${lists[@]}"; then
        address=$(mirror_of bookworm-backports "${lists[@]}")
    else
        file=/etc/apt/sources.list.d/bookworm-backports.sources
        stanza=$(backports_of bookworm "${lists[@]}") || fail "no mirror for bookworm is set in /etc/apt: add one, then run this again."
        [ ! -e "$file" ] || fail "$file is there and switched off, and ${late[*]} come from that suite: switch it on or remove it, then run this again."
        say "adding the backports suite from the mirror in use"
        added=$file
        printf '%s\n' "$stanza" | "${as_root[@]}" tee "$file" >/dev/null
    fi
fi

say "installing ${#missing[@]} packages and what they need: ${missing[*]}"
apt update || say "apt-get update reported a problem; trying with the lists at hand"

# The wandering names lead to another release one day, and its packages would take this machine halfway there.
if [ -n "$listed_as" ] && [ "$listed_as" != "$VERSION_CODENAME" ] && [[ $(LC_ALL=C apt-cache policy) != *",n=$VERSION_CODENAME,"* ]]; then
    fail "/etc/apt lists '$listed_as', which is not $VERSION_CODENAME, the release of this machine, as far as apt knows: write $VERSION_CODENAME in its place, then run this again."
fi
absent=()
for package in "${late[@]}"; do
    [[ $(LC_ALL=C apt-cache policy "$package") == *" bookworm-backports/"* ]] || absent+=("$package")
done
if [ ${#absent[@]} -gt 0 ]; then
    fail "the mirror ${address:-in use} has no bookworm-backports, or apt could not read it; what apt said stands above. On Debian 12 these come from there: ${absent[*]}. Name a mirror that has that suite in /etc/apt, or install them yourself, then run this again.${added:+ What was added to /etc/apt is taken away again.}"
fi
added=""
for package in "${late[@]}"; do
    wanted+=("$package/bookworm-backports")
done
apt install -y --no-install-recommends "${wanted[@]}" \
    || fail "apt-get could not install the packages. Read its message above; the network or the mirror is the usual cause."
say "installed"
