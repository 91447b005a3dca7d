#!/usr/bin/env bash
# What installing does to apt's lists on Debian 12, and what it says where it cannot go on. With stand-ins for all that it
# asks of the machine, and a folder in place of /etc/apt.
# usage: install_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/install
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/platform/debian"
cp "$root/platform/steps.sh" "$scratch/platform/"
for script in install sources; do
    sed -e "s#/etc/apt#$scratch/apt#g; s#/etc/os-release#$scratch/os-release#g; s#/usr/share/keyrings#$scratch/keyrings#g" \
        "$root/platform/debian/$script.sh" >"$scratch/platform/debian/$script.sh"
done
printf '%s\n' ID=debian VERSION_ID=12 VERSION_CODENAME=bookworm >"$scratch/os-release"
added=$scratch/apt/sources.list.d/bookworm-backports.sources

# stands_in PROGRAM LINE...: a program of that name that does this.
stands_in() {
    printf '%s\n' '#!/usr/bin/env bash' "${@:2}" >"$scratch/bin/$1"
    chmod +x "$scratch/bin/$1"
}
# A mirror has what $SUITES names; what is missing here is what $MISSING names.
# shellcheck disable=SC2016  # for the stand-ins to expand
{
    stands_in id 'echo "${USER_ID:-0}"'
    stands_in dpkg 'exit 0'
    stands_in dpkg-query '[[ " $MISSING " != *" ${*: -1} "* ]] && echo "installed 99"'
    stands_in tee 'case $1 in "$SCRATCH"/*) exec /usr/bin/tee "$@" ;; *) echo "tee: $1" >&2; exit 1 ;; esac'
    stands_in sudo 'echo "sudo $*" >>"$SCRATCH/done"' '[ -z "${SUDO_REFUSES:-}" ] || { echo "sudo: a password is required" >&2; exit 1; }' 'exec "$@"'
    stands_in apt-get 'echo "apt-get $*" >>"$SCRATCH/done"' \
        'case "$*" in' \
        '    *update) ! [ -e "$SCRATCH/apt/sources.list.d/bookworm-backports.sources" ] || [[ $SUITES == *backports* ]] || { echo "E: no Release file"; exit 100; } ;;' \
        '    *install*) echo "1 upgraded, 4 newly installed, 0 to remove and 2 not upgraded."' \
        '        for i in 1 2 3 4 5; do echo "Unpacking p$i (1) ..."; done; for i in 1 2 3 4 5; do echo "Setting up p$i (1) ..."; done' \
        '        [ -z "${INSTALLING_FAILS:-}" ] || { echo "E: a package is not found"; exit 100; } ;;' \
        'esac'
    stands_in apt-cache 'for suite in $SUITES; do' \
        '    [ $# -gt 1 ] || echo "     release v=1,o=Debian,a=any,n=$suite,l=Debian,c=main,b=amd64"' \
        '    [ $# -eq 1 ] || echo "        100 http://mirror.invalid/debian $suite/main amd64 Packages"' \
        'done'
}

listed() { rm -rf "$scratch/apt"; mkdir -p "$scratch/apt/sources.list.d"; cat >"$scratch/apt/sources.list"; }
# installed CODE VARIABLE=VALUE...: the script's exit code, and the machine that it runs on.
installed() {
    local code=0
    : >"$scratch/done"
    env SCRATCH="$scratch" PATH="$scratch/bin:$PATH" MISSING="libsqlcipher-dev ninja-build" SUITES="bookworm bookworm-backports" "${@:2}" \
        bash "$scratch/platform/debian/install.sh" >"$scratch/said" 2>&1 || code=$?
    [ "$code" = "$1" ] || wrong "exit code $code, wanted $1"
}
wrong() {
    echo "$1:" >&2
    cat "$scratch/said" "$scratch/done" >&2
    faults=$((faults + 1))
}
says() { grep -q -e "$1" "$scratch/said" || wrong "not said: $1"; }
does() { grep -q -e "$1" "$scratch/done" || wrong "not done: $1"; }
doesnt() { ! grep -q -e "$1" "$scratch/done" || wrong "done: $1"; }
is_added() { [ -e "$added" ] || wrong "the suite is not added"; }
isnt_added() { [ ! -e "$added" ] || wrong "the suite is still in apt's lists"; }

mirror="deb http://mirror.invalid/debian bookworm main"
listed <<<"$mirror"
installed 0
says "adding the backports suite from the mirror in use"
is_added
grep -qx "URIs: http://mirror.invalid/debian" "$added" && grep -qx "Suites: bookworm-backports" "$added" || wrong "another suite is added"
does "^apt-get .*install .*ninja-build libsqlcipher-dev/bookworm-backports libsqlcipher1/bookworm-backports"
# Off a terminal it says how far it is.
says "installed 50 % (5 of 10 steps)"
says "installed 90 % (9 of 10 steps)"

# Again, with the same missing and with nothing missing: what is there is left as it is.
before=$(cat "$added")
installed 0
[ "$(cat "$added")" = "$before" ] || wrong "the suite is added anew"
! grep -q "adding the backports suite" "$scratch/said" || wrong "the suite is added a second time"
installed 0 MISSING=
says "all [0-9]* packages are installed"
doesnt apt-get
is_added

# Nothing from there is missing: apt's lists are no business of ours.
listed <<<"$mirror"
installed 0 MISSING=ninja-build
isnt_added

# A mirror without the suite: said, and apt is left as it was.
listed <<<"$mirror"
installed 1 SUITES=bookworm
says "the mirror http://mirror.invalid/debian has no bookworm-backports.*come from there: libsqlcipher-dev libsqlcipher1\. Name a mirror.*taken away again"
isnt_added
doesnt install
# Where somebody else listed it, nothing is taken away.
listed <<<"$mirror"$'\n'"deb http://other.invalid/debian bookworm-backports main"
installed 1 SUITES=bookworm
says "the mirror http://other.invalid/debian has no bookworm-backports"
! grep -q "taken away" "$scratch/said" || wrong "what was not added is said to be taken away"
grep -q other.invalid "$scratch/apt/sources.list" || wrong "somebody's list was changed"

# The suite is there and a package is not: the suite stays, for the next run.
listed <<<"$mirror"
installed 1 INSTALLING_FAILS=yes
says "E: a package is not found"
says "apt-get could not install the packages"
is_added

# One that somebody switched off is not switched on again.
listed <<<"$mirror"
printf 'Enabled: no\nTypes: deb\nURIs: http://mirror.invalid/debian\nSuites: bookworm-backports\nComponents: main\n' >"$added"
installed 1
says "bookworm-backports.sources is there and switched off.*switch it on or remove it"
grep -q "Enabled: no" "$added" || wrong "it was switched on"
doesnt apt-get

listed <<<""
installed 1
says "no mirror for bookworm is set in .*: add one"
doesnt apt-get
isnt_added

# The name that wanders, while it means this release, and afterwards.
listed <<<"deb http://mirror.invalid/debian oldstable main"
installed 0
is_added
grep -qx "URIs: http://mirror.invalid/debian" "$added" || wrong "the suite comes from elsewhere"
listed <<<"deb http://mirror.invalid/debian stable main"
installed 1 SUITES="trixie bookworm-backports"
says "lists 'stable', which is not bookworm"
isnt_added
doesnt install

# Not root: with sudo, and with one that refuses.
listed <<<"$mirror"
installed 0 USER_ID=1000
does "^sudo tee "
does "^sudo env .*apt-get .*install"
is_added
listed <<<"$mirror"
installed 1 USER_ID=1000 SUDO_REFUSES=yes
says "a password is required"
says "sudo does not let this user install packages.*--no-install: ninja-build libsqlcipher-dev"
doesnt apt-get
isnt_added
listed <<<"$mirror"
installed 1 USER_ID=1000 SUITES=bookworm
does "^sudo rm -f .*bookworm-backports.sources"
isnt_added

[ "$faults" -eq 0 ] || exit 1
echo "apt's lists are added to where that helps, and left as they were where it does not"
