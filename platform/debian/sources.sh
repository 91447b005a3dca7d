# What apt takes its packages from. Sourced by install.sh and the scripts that make clean roots, never run.
# shellcheck shell=bash

# apt_files [FOLDER]: the files that list sources, in the order in which apt reads them. FOLDER in place of /etc/apt.
apt_files() {
    local folder=${1:-/etc/apt} file
    for file in "$folder"/sources.list "$folder"/sources.list.d/*.list "$folder"/sources.list.d/*.sources; do
        [ ! -r "$file" ] || printf '%s\n' "$file"
    done
}

# apt_entries FILE...: one line for each address and suite of binary packages that is switched on: "URI SUITE COMPONENT...".
# Lists have one entry a line, `.sources` have stanzas of fields in any order (sources.list(5)).
apt_entries() {
    local file
    for file in "$@"; do
        case $file in
            *.sources) apt_stanzas "$file" ;;
            *) apt_lines "$file" ;;
        esac
    done
}

apt_lines() {
    awk '{ sub(/#.*/, "") }
        /^[[:space:]]*deb[[:space:]]/ {
            sub(/^[[:space:]]*deb[[:space:]]+/, "")
            sub(/^\[[^]]*\][[:space:]]*/, "")
            # The name of a disc may hold spaces.
            if ($0 ~ /^cdrom:\[/) sub(/^cdrom:\[[^]]*\]/, "cdrom:")
            $1 = $1
            if (NF >= 2) print
        }' "$1"
}

apt_stanzas() {
    awk 'function finish(    uris, suites, i, j, u, s) {
            if ((" " field["types"] " ") ~ / deb / && tolower(field["enabled"]) !~ /^ *(no|false|0|off|without|disable) *$/) {
                u = split(field["uris"], uris, " ")
                s = split(field["suites"], suites, " ")
                for (i = 1; i <= u; i++) for (j = 1; j <= s; j++) print uris[i], suites[j], field["components"]
            }
            split("", field)
            name = ""
        }
        /^#/ { next }
        /^[[:space:]]*$/ { finish(); next }
        /^[[:space:]]/ { sub(/^[[:space:]]+/, ""); field[name] = field[name] " " $0; next }
        {
            name = tolower(substr($0, 1, index($0, ":") - 1))
            field[name] = substr($0, index($0, ":") + 1)
            gsub(/^[[:space:]]+|[[:space:]]+$/, "", field[name])
        }
        END { finish() }' "$1"
}

# suite_is_listed SUITE FILE...: whether one that is switched on lists it.
suite_is_listed() {
    local suite=$1
    shift
    apt_entries "$@" | awk -v suite="$suite" '$2 == suite { found = 1 } END { exit !found }'
}

# backports_of SUITE FILE...: the stanza that lists the suite's backports, from the mirror that the suite itself comes from.
backports_of() {
    local suite=$1 address signed="" keyring=/usr/share/keyrings/debian-archive-keyring.gpg
    shift
    read -r _ address <<<"$(release_mirror "$suite" "$@")"
    [ -n "$address" ] || return 1
    [ ! -r "$keyring" ] || signed=$'\n'"Signed-By: $keyring"
    printf 'Types: deb\nURIs: %s\nSuites: %s-backports\nComponents: main%s\n' "$address" "$suite" "$signed"
}

# mirror_of SUITE FILE...: the first address that Debian's own packages of the suite come from; nothing if there is none.
# A disc is no mirror, and who only shares the name of the suite has no component `main`.
mirror_of() {
    local suite=$1
    shift
    apt_entries "$@" | awk -v suite="$suite" '
        $2 == suite && $1 !~ /^cdrom:/ && $1 !~ /debian-security/ {
            for (i = 3; i <= NF; i++) if ($i == "main" && !found) { print $1; found = 1 }
        }'
}

# release_mirror CODENAME FILE...: "NAME ADDRESS", the first address of the release, and the name that it is listed under: its
# codename, or one of those that every release bears for some years and then hands on. Nothing if there is none.
release_mirror() {
    local codename=$1 name address
    shift
    for name in "$codename" stable oldstable oldoldstable; do
        address=$(mirror_of "$name" "$@")
        [ -z "$address" ] || { printf '%s %s\n' "$name" "$address"; return; }
    done
}
