#!/usr/bin/env bash
# What the scripts read out of apt's lists of sources.
# usage: sources_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
. "$1/platform/debian/sources.sh"
scratch=$2/apt
faults=0

# listed NAME: a folder like /etc/apt with what stands on standard input as its only file.
listed() {
    rm -rf "$scratch"
    mkdir -p "$scratch/sources.list.d"
    cat >"$scratch/$1"
}

files() { mapfile -t them < <(apt_files "$scratch"); }

mirror_is() {
    local found
    files
    found=$(mirror_of bookworm "${them[@]}")
    [ "$found" = "$2" ] || { echo "$1: the mirror is '$found', wanted '$2'" >&2; faults=$((faults + 1)); }
}

backports_are() {
    local found=absent
    files
    suite_is_listed bookworm-backports "${them[@]}" && found=listed
    [ "$found" = "$2" ] || { echo "$1: backports are $found, wanted $2" >&2; faults=$((faults + 1)); }
}

listed sources.list <<'TEXT'
#deb http://old.invalid/debian bookworm main
deb-src http://source.invalid/debian bookworm main
deb [arch=amd64 signed-by=/usr/share/keyrings/x.gpg] http://mirror.invalid/debian bookworm main contrib # ours
# deb http://mirror.invalid/debian bookworm-backports main
TEXT
mirror_is "a list" http://mirror.invalid/debian
backports_are "a line that is commented out" absent

# What would be added there is read as the backports of the same mirror; without a mirror there is nothing to add.
files
stanza=$(backports_of bookworm "${them[@]}")
printf '%s\n' "$stanza" >"$scratch/sources.list.d/bookworm-backports.sources"
backports_are "the stanza that is added" listed
grep -qx 'URIs: http://mirror.invalid/debian' <<<"$stanza" || { echo "the stanza names another mirror: $stanza" >&2; faults=$((faults + 1)); }
! backports_of trixie "${them[@]}" >/dev/null || { echo "a stanza for a suite that nothing lists" >&2; faults=$((faults + 1)); }

listed sources.list <<'TEXT'
deb http://mirror.invalid/debian bookworm main
deb http://mirror.invalid/debian bookworm-backports main
TEXT
backports_are "a line" listed

listed sources.list <<'TEXT'
deb cdrom:[Debian GNU/Linux 12.1.0 _Bookworm_ - Official amd64 NETINST]/ bookworm main non-free-firmware
deb http://mirror.invalid/debian bookworm main
TEXT
mirror_is "a disc before the mirror" http://mirror.invalid/debian

listed sources.list <<'TEXT'
deb cdrom:[Debian GNU/Linux 12.1.0 _Bookworm_ - Official amd64 DVD]/ bookworm main
TEXT
mirror_is "a disc alone" ""

listed sources.list <<'TEXT'
deb https://elsewhere.invalid/linux/debian bookworm stable
deb http://security.invalid/debian-security bookworm main
deb https://mirror.invalid/debian bookworm main
TEXT
mirror_is "others that use the name of the suite" https://mirror.invalid/debian

listed sources.list.d/debian.sources <<'TEXT'
Types: deb deb-src
Suites: bookworm bookworm-updates
# in any order
URIs: http://mirror.invalid/debian
Components: main
Signed-By: /usr/share/keyrings/debian-archive-keyring.gpg

Types: deb
URIs: http://security.invalid/debian-security
Suites: bookworm-security
Components: main
TEXT
mirror_is "suites before addresses" http://mirror.invalid/debian
backports_are "stanzas without them" absent

listed sources.list.d/debian.sources <<'TEXT'
types: deb
components: main
uris:
 http://mirror.invalid/debian
suites: bookworm
 bookworm-backports
TEXT
mirror_is "fields over several lines" http://mirror.invalid/debian
backports_are "fields over several lines" listed

listed sources.list.d/backports.sources <<'TEXT'
Enabled: no
Types: deb
URIs: http://mirror.invalid/debian
Suites: bookworm bookworm-backports
Components: main
TEXT
mirror_is "a stanza that is switched off" ""
backports_are "a stanza that is switched off" absent

listed sources.list.d/source.sources <<'TEXT'
Types: deb-src
URIs: http://mirror.invalid/debian
Suites: bookworm-backports
Components: main
TEXT
backports_are "source packages alone" absent

release_is() {
    local found
    files
    found=$(release_mirror bookworm "${them[@]}")
    [ "$found" = "$2" ] || { echo "$1: the release comes from '$found', wanted '$2'" >&2; faults=$((faults + 1)); }
}

listed sources.list <<'TEXT'
deb http://elsewhere.invalid/linux/debian stable stable
deb http://mirror.invalid/debian oldstable main
deb http://security.invalid/debian-security oldstable-security main
TEXT
release_is "a name that wanders" "oldstable http://mirror.invalid/debian"
mirror_is "a name that wanders" ""

listed sources.list <<'TEXT'
deb http://new.invalid/debian stable main
deb http://mirror.invalid/debian bookworm main
TEXT
release_is "the codename beside another" "bookworm http://mirror.invalid/debian"

rm -rf "$scratch"
mkdir -p "$scratch"
mirror_is "no file at all" ""
release_is "no file at all" ""
[ "$faults" -eq 0 ] || exit 1
echo "every list was read as apt reads it"
