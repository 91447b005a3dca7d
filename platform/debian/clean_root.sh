# Clean roots made with debootstrap, to try things where nothing of this machine helps. Sourced after steps.sh and sources.sh, never run.
# shellcheck shell=bash

# suite_of 12|13
suite_of() {
    case ${1:-} in
        12) echo bookworm ;;
        13) echo trixie ;;
        *) return 1 ;;
    esac
}

mounted_roots=()
# What was mounted goes again, however the script ends.
unmount_roots() {
    local root mounted
    for root in "${mounted_roots[@]}"; do
        for mounted in proc sys dev root/.cache/ccache; do
            umount -R -l "$root/$mounted" 2>/dev/null || true
        done
    done
}
trap unmount_roots EXIT

# make_root 12|13 FOLDER: a minimal Debian from the mirror that this machine uses itself.
make_root() {
    local suite folder=$2 mirror lists file mounted
    # Under `step` nothing ends the script by itself: each act is asked whether it came to be.
    suite=$(suite_of "$1")
    mapfile -t lists < <(apt_files)
    read -r _ mirror <<<"$(release_mirror "$(. /etc/os-release && echo "${VERSION_CODENAME:-}")" "${lists[@]}")"
    [ -n "$mirror" ] || fail "no Debian mirror is set in /etc/apt"
    command -v debootstrap >/dev/null || step "Installing debootstrap" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q debootstrap
    quietly "$ebbline_root/build/logs/debootstrap-$1.log" \
        debootstrap --variant=minbase --include=ca-certificates "$suite" "$folder" "$mirror" || return 1
    for file in /etc/apt/apt.conf.d/*proxy* /etc/resolv.conf /etc/hosts; do
        [ ! -r "$file" ] || cp "$file" "$folder$file" || return 1
    done
    # The root is thrown away: no package needs to survive a power cut.
    echo force-unsafe-io >"$folder/etc/dpkg/dpkg.cfg.d/throw-away" || return 1
    mounted_roots+=("$folder")
    mount -t proc proc "$folder/proc" || return 1
    for mounted in sys dev; do
        mount --rbind "/$mounted" "$folder/$mounted" || return 1
        # What is unmounted in the root must stay mounted outside.
        mount --make-rslave "$folder/$mounted" || return 1
    done
}

# keep_objects FOLDER: compiled objects live in $FRESH_ROOT_CCACHE between runs, if it is set.
keep_objects() {
    [ -n "${FRESH_ROOT_CCACHE:-}" ] || return 0
    mkdir -p "$FRESH_ROOT_CCACHE" "$1/root/.cache/ccache"
    mount --bind "$FRESH_ROOT_CCACHE" "$1/root/.cache/ccache"
}

# need_source: asked before a root is made, so that nobody waits for one that stays empty.
need_source() {
    local said
    said=$(git -C "$ebbline_root" rev-parse --quiet --verify HEAD 2>&1) \
        || fail "what is tried in a clean root is the committed tree: this needs git, and a clone with a commit in place of $ebbline_root${said:+ (${said%%$'\n'*})}"
}

# put_source FOLDER: the committed tree, as /ebbline of the root.
put_source() {
    mkdir -p "$1/ebbline"
    git -C "$ebbline_root" archive HEAD | tar -x -C "$1/ebbline"
}

# in_root FOLDER COMMAND: one line of shell in the root, with an environment of its own.
in_root() {
    chroot "$1" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 DEBIAN_FRONTEND=noninteractive \
        http_proxy="${http_proxy:-}" https_proxy="${https_proxy:-}" bash -c "$2"
}
