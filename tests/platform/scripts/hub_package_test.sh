#!/usr/bin/env bash
# What the hub's package does to its service when it is installed, upgraded, taken off and purged.
# usage: hub_package_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/hub-package
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/system/run/systemd/system" "$scratch/system/var/lib/ebbline-hub" \
    "$scratch/system/etc/systemd/system/multi-user.target.wants" "$scratch/system/etc/ebbline-hub"

# The scripts as they are, over a machine of their own; what they call writes itself down, and may be told to fail.
for script in postinst prerm postrm; do
    sed -E "s#(^|[ \"])(/run|/etc|/var)/#\1$scratch/system\2/#g" "$root/platform/packaging/hub/$script" >"$scratch/$script"
done
for program in systemctl deb-systemd-invoke systemd-sysusers; do
    # shellcheck disable=SC2016  # for the stand-in to expand
    printf '#!/bin/sh\necho "%s $*" >>"%s/calls"\n[ ! -e "%s/failing" ]\n' "$program" "$scratch" "$scratch" >"$scratch/bin/$program"
    chmod +x "$scratch/bin/$program"
done

# calls WANTED SCRIPT ARGUMENT...: what it calls, joined by commas.
calls() {
    local wanted=$1 said
    : >"$scratch/calls"
    PATH=$scratch/bin:$PATH sh "$scratch/$2" "${@:3}" >"$scratch/said" 2>&1 || { echo "$2 ${*:3}: ends with an error" >&2; faults=$((faults + 1)); }
    said=$(paste -sd, "$scratch/calls")
    [ "$said" = "$wanted" ] || { printf '%s %s: calls [%s], wanted [%s]\n' "$2" "${*:3}" "$said" "$wanted" >&2; faults=$((faults + 1)); }
}
there() { [ -e "$scratch/system/$1" ] || { echo "after $2: $1 is gone" >&2; faults=$((faults + 1)); }; }
gone() { [ ! -e "$scratch/system/$1" ] && [ ! -L "$scratch/system/$1" ] || { echo "after $2: $1 is still there" >&2; faults=$((faults + 1)); }; }

link=etc/systemd/system/multi-user.target.wants/ebbline-hub.service
ln -s /usr/lib/systemd/system/ebbline-hub.service "$scratch/system/$link"
touch "$scratch/system/var/lib/ebbline-hub/hub.key" "$scratch/system/etc/ebbline-hub/key.pem"
enabled() { [ -L "$scratch/system/$link" ] || { echo "after $1: the service is no longer enabled" >&2; faults=$((faults + 1)); }; }
reload="systemctl --system daemon-reload"

# Installed for the first time: it is known, and not started.
calls "systemd-sysusers ebbline-hub.conf,$reload" postinst configure ""
# Upgraded: the old one runs until the new one is in place, and then it alone.
calls "" prerm upgrade 0.2.0
calls "" postrm upgrade 0.2.0
calls "systemd-sysusers ebbline-hub.conf,$reload,deb-systemd-invoke try-restart ebbline-hub.service" postinst configure 0.1.0
enabled "an upgrade"
# Taken off: it is stopped before its program goes.
calls "deb-systemd-invoke stop ebbline-hub.service" prerm remove
calls "deb-systemd-invoke start ebbline-hub.service" postinst abort-remove
calls "$reload" postrm remove
enabled "a removal"
there var/lib/ebbline-hub/hub.key "a removal"
# Purged: nothing starts it any more. The store and the certificate are the clinic's and stay.
calls "$reload" postrm purge
gone "$link" "a purge"
there var/lib/ebbline-hub/hub.key "a purge"
there etc/ebbline-hub/key.pem "a purge"
grep -q "the store stays" "$scratch/said" || { echo "a purge does not say that the store stays" >&2; faults=$((faults + 1)); }

# A service that does not come up again leaves no package half installed.
touch "$scratch/failing"
calls "deb-systemd-invoke stop ebbline-hub.service" prerm remove
calls "$reload" postrm remove
rm "$scratch/failing"

# Without systemd there is nothing to tell.
rmdir "$scratch/system/run/systemd/system"
calls "systemd-sysusers ebbline-hub.conf" postinst configure 0.1.0
calls "" prerm remove
calls "" postrm remove
calls "" postrm purge

[ "$faults" -eq 0 ] || exit 1
echo "the hub's package starts nothing, restarts what ran, stops what goes, and deletes no store"
