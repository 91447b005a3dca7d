#!/usr/bin/env bash
# Who runs the command in a clean root: root, or with --sudo a user who has it. With stand-ins for what makes the root.
# usage: fresh_root_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/fresh-root
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/tree/platform/debian"
cp "$root/platform/steps.sh" "$scratch/tree/platform/"
cp "$root"/platform/debian/{fresh-root,packages,arm64,sources,clean_root}.sh "$scratch/tree/platform/debian/"

# stands_in PROGRAM LINE...: a program of that name that does this.
stands_in() {
    printf '%s\n' '#!/usr/bin/env bash' "${@:2}" >"$scratch/bin/$1"
    chmod +x "$scratch/bin/$1"
}
# shellcheck disable=SC2016  # for the stand-ins to expand
{
    stands_in id 'echo 0'
    stands_in debootstrap 'mkdir -p "${@: -2:1}"/{etc/apt/apt.conf.d,etc/dpkg/dpkg.cfg.d,proc,sys,dev}'
    stands_in chroot 'printf "%s\n" "${@: -1}" >>"$CHROOTED"'
    stands_in mount 'echo "$*" >>"$CHROOTED"' '[[ -z "${NO_MOUNT:-}" || "$*" != *"$NO_MOUNT"* ]]'
    stands_in umount 'exit 0'
    stands_in git 'case $* in *rev-parse*) echo 0123456789 ;; *) exec tar -c -T /dev/null ;; esac'
}

# ran ARGUMENT...: what was done in the root.
ran() {
    rm -rf "$scratch/made"
    : >"$scratch/chrooted"
    CHROOTED=$scratch/chrooted FRESH_ROOT_CCACHE=$scratch/objects PATH=$scratch/bin:$PATH \
        bash "$scratch/tree/platform/debian/fresh-root.sh" "$@" "$scratch/made" >"$scratch/said" 2>&1 || {
        cat "$scratch/said" >&2
        faults=$((faults + 1))
    }
}
has() { grep -q -e "$1" "$scratch/chrooted" || { echo "not done in the root: $1" >&2; faults=$((faults + 1)); }; }
hasnt() { ! grep -q -e "$1" "$scratch/chrooted" || { echo "done in the root: $1" >&2; faults=$((faults + 1)); }; }

ran 12 run
has '^cd /ebbline && bash platform/run.sh'
has '^--bind .*objects'
hasnt 'runuser'

ran --sudo 13 test
has 'install .* sudo'
has 'NOPASSWD'
has "runuser -u reader -- bash -c 'cd /ebbline && bash platform/test.sh"
hasnt '^cd /ebbline && bash'
# A user could not write to objects that root keeps.
hasnt '^--bind .*objects'

# A root with half of what belongs into it is not used.
for missing in "proc proc" "--rbind /sys" "--rbind /dev" "--make-rslave"; do
    rm -rf "$scratch/made"
    : >"$scratch/chrooted"
    if NO_MOUNT=$missing CHROOTED=$scratch/chrooted PATH=$scratch/bin:$PATH \
        bash "$scratch/tree/platform/debian/fresh-root.sh" 12 run "$scratch/made" >"$scratch/said" 2>&1 \
        || ! grep -q "Making a clean Debian 12 in .* failed" "$scratch/said"; then
        echo "used although this could not be mounted: $missing" >&2
        faults=$((faults + 1))
    fi
    hasnt 'platform/run.sh'
done

# Without git, or outside of a clone, that is said before anything is made.
# shellcheck disable=SC2016
for answer in 'echo "fatal: not a git repository" >&2; exit 128' 'exec git-that-is-not-installed'; do
    stands_in git "$answer"
    for script in "fresh-root.sh 12 run" "packages.sh 12" "arm64.sh 12"; do
        rm -rf "$scratch/made"
        : >"$scratch/chrooted"
        # shellcheck disable=SC2086
        if CHROOTED=$scratch/chrooted PATH=$scratch/bin:$PATH \
            bash "$scratch/tree/platform/debian/"$script "$scratch/made" >"$scratch/said" 2>&1 \
            || [ "$(wc -l <"$scratch/said")" -ne 1 ] \
            || ! grep -q "^ebbline: .*this needs git, and a clone with a commit" "$scratch/said" || [ -e "$scratch/made" ]; then
            echo "without the committed tree $script goes on, or says something else:" >&2
            cat "$scratch/said" >&2
            faults=$((faults + 1))
        fi
    done
done

for wrong in "--sudo 11 run" "12 --sudo run" "12"; do
    # shellcheck disable=SC2086
    if PATH=$scratch/bin:$PATH bash "$scratch/tree/platform/debian/fresh-root.sh" $wrong >"$scratch/said" 2>&1 \
        || ! grep -q 'usage: fresh-root.sh \[--sudo\] 12|13 run|test' "$scratch/said"; then
        echo "not refused: $wrong" >&2
        faults=$((faults + 1))
    fi
done
[ "$faults" -eq 0 ] || exit 1
echo "the command is run by who was asked for"
