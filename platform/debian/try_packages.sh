#!/usr/bin/env bash
# Run by packages.sh in a clean root that has the packages in /packages: installs them, starts every program, takes them off.
set -euo pipefail
say() { printf 'ebbline: %s\n' "$*"; }
fail() { printf 'ebbline: %s\n' "$*" >&2; exit 1; }
cd /packages
log=/packages/log

apt-get update -q >$log 2>&1 || { tail -n 20 $log >&2; fail "apt-get update failed"; }
apt-get install -y -q --no-install-recommends ./*.deb >$log 2>&1 || { tail -n 40 $log >&2; fail "the packages cannot be installed"; }
say "installed with $(dpkg-query -W -f '.\n' | wc -l) packages in all"
for forbidden in g++ qt6-base-dev libsqlcipher-dev; do
    ! dpkg-query -W "$forbidden" >/dev/null 2>&1 || fail "$forbidden came along; what needs it?"
done
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software XDG_RUNTIME_DIR=/packages/runtime
mkdir -m 700 -p $XDG_RUNTIME_DIR
version=$(dpkg-query -W -f '${Version}' ebbline)
for program in ebbline ebbline-hub ebbline-diary ebbline-desk; do
    said=$($program --version) || fail "$program does not start"
    [[ $said == *"$version"* ]] || fail "$program is of version '$said', its package of $version"
done

ebbline simulate --courses 40 --seed 1 --out-scores scores.csv --out-truth truth.csv >/dev/null
ebbline assess --scores scores.csv --out findings.csv >/dev/null
[ "$(wc -l <findings.csv)" -gt 1 ] || fail "assess found nothing in forty invented courses"
say "the tool invents and judges courses: $(($(wc -l <findings.csv) - 1)) findings"

ebbline-hub serve --store hub --listen 127.0.0.1:0 --port-file port >hub.log 2>&1 &
hub=$!
for _ in $(seq 50); do [ -s port ] && break; sleep 0.2; done
[ -s port ] || { cat hub.log >&2; fail "the hub does not listen"; }
exec 3<>"/dev/tcp/127.0.0.1/$(cat port)"
printf 'GET /v1/health HTTP/1.1\r\nHost: hub\r\nConnection: close\r\n\r\n' >&3
head -n 1 <&3 | grep -q ' 200 ' || fail "the hub is not well"
exec 3<&- 3>&-
kill -TERM $hub
wait $hub || fail "the hub does not end quietly"
say "the hub answers and ends"

# The service as it is installed: its command line, as its user, with its options. Where systemd runs, systemd starts it.
unit=/usr/lib/systemd/system/ebbline-hub.service
of_unit() { sed -n "s/^$1=//p" $unit; }
user=$(of_unit User) options=$(of_unit EnvironmentFile) command=$(of_unit ExecStart) state=/var/lib/$(of_unit StateDirectory)
getent passwd "$user" | grep -q ':/usr/sbin/nologin$' || fail "the package made no user $user without a shell"
[ -r "$options" ] || fail "the package brought no $options"
listens=$(sed -n 's/^EBBLINE_HUB_OPTIONS=.*--listen 127.0.0.1:\([0-9]*\).*/\1/p' "$options")
[ -n "$listens" ] || fail "as delivered the hub has to listen on this machine alone"
if [ -d /run/systemd/system ]; then
    systemctl start ebbline-hub
    service=$(systemctl show -P MainPID ebbline-hub)
else
    install -d -m "$(of_unit StateDirectoryMode)" -o "$user" -g "$(of_unit Group)" "$state"
    # shellcheck disable=SC2016
    setpriv --reuid "$user" --regid "$(of_unit Group)" --init-groups -- sh -c '. "$1"; eval "exec $2"' sh "$options" "$command" >service.log 2>&1 &
    service=$!
fi
for _ in $(seq 50); do (: <"/dev/tcp/127.0.0.1/$listens") 2>/dev/null && break; sleep 0.2; done
exec 3<>"/dev/tcp/127.0.0.1/$listens" || { cat service.log >&2; fail "the service does not listen"; }
printf 'GET /v1/health HTTP/1.1\r\nHost: hub\r\nConnection: close\r\n\r\n' >&3
head -n 1 <&3 | grep -q ' 200 ' || fail "the service is not well"
exec 3<&- 3>&-
[ "$(readlink "/proc/$service/exe")" = /usr/bin/ebbline-hub ] || fail "the service is not the program of the package"
[ "$(stat -c %U "/proc/$service")" = "$user" ] || fail "the service does not run as $user"
[ "$(stat -c %U "$state/hub.key")" = "$user" ] || fail "the store of the service is not its user's"
# Upgraded over itself: what ran goes on as the program that was put in its place. Without systemd a stand-in is told.
again() { apt-get install -y -q --no-install-recommends --reinstall ./ebbline-hub_*.deb >$log 2>&1 || { tail -n 40 $log >&2; fail "the hub's package cannot be upgraded"; }; }
if [ -d /run/systemd/system ]; then
    again
    [ "$(systemctl show -P MainPID ebbline-hub)" != "$service" ] || fail "after an upgrade the old hub runs on"
    [ "$(systemctl is-active ebbline-hub)" = active ] || fail "after an upgrade the hub does not run"
else
    mkdir -p /run/systemd/system stand-in
    for program in systemctl deb-systemd-invoke; do
        printf '#!/bin/sh\necho "%s $*" >>/packages/told\n' $program >stand-in/$program
        chmod +x stand-in/$program
    done
    PATH=/packages/stand-in:$PATH again
    rmdir /run/systemd/system
    grep -q '^systemctl .*daemon-reload' told && grep -q '^deb-systemd-invoke try-restart ebbline-hub.service' told \
        || fail "an upgrade does not restart the hub"
fi
[ -e "$state/hub.key" ] || fail "an upgrade takes the store away"
say "upgraded over itself: the service is restarted and its store stays"
if [ -d /run/systemd/system ]; then
    systemctl stop ebbline-hub
else
    kill -TERM "$service"
    wait "$service" || fail "the service does not end quietly"
fi
rm -r "$state"
say "the unit's command line serves as $user"

# A program that finds a module of its pages missing says so and ends at once.
for program in ebbline-diary ebbline-desk; do
    code=0
    timeout 5 $program --vault "/packages/$program" >$program.log 2>&1 || code=$?
    [ $code -eq 124 ] || { cat $program.log >&2; fail "$program ended by itself, with $code"; }
    ! grep -E 'is not installed|is not a type|Cannot assign|ReferenceError|TypeError' $program.log || fail "$program speaks of missing parts"
    say "$program starts and stays"
done

ebbline story --out story >story.log 2>&1 || { tail -n 20 story.log >&2; fail "the story cannot be played"; }
say "the story plays: $(find story -name '*.png' | wc -l) screens, $(find story -name '*.pdf' | wc -l) sheet"

apt-get purge -y -q ebbline ebbline-hub ebbline-diary ebbline-desk >$log 2>&1 || { tail -n 20 $log >&2; fail "the packages cannot be taken off"; }
left=$(find /usr /etc /var/lib -name '*ebbline*' -not -path '/var/lib/dpkg/*' -not -path '/var/lib/apt/*')
[ -z "$left" ] || fail "left behind: $left"
say "taken off without a trace"
