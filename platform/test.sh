#!/usr/bin/env bash
# Installs what is missing, builds, and runs the tests of the ordinary build. Sanitizers, clang-tidy, fuzzing, campaigns,
# gates and what takes an hour or the network are asked for apart: --help names them.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"

usage() {
    cat <<'TEXT'
usage: bash platform/test.sh [--no-install] [--sanitize] [--campaign] [--gates] [--soak] [--help]

Without an option for it nothing is run with sanitizers, read by clang-tidy or fuzzed.

  --no-install  do not install packages
  --campaign    instead of the ordinary run, the long campaigns. Against the vault: 20000 kills, 10000 power
                cuts, every I/O fault, every request for memory refused, 2000 flipped bytes, 1000 wrong passphrases. Against typing: 300 kills between
                the taps of the diary. Against syncing: 10000 random
                schedules, 2200 scripts of a hostile hub. Against the hub: 100000 abusive requests, 100 kills over each store,
                20 failovers of the database. Reminders in 50000 courses of events. And a small model with its hub in every
                order with every single fault, a search for leaks, the tests with threads under the thread sanitizer, and every
                fuzz target for three minutes.
                EBBLINE_KILLS, EBBLINE_TAP_KILLS, EBBLINE_CUTS, EBBLINE_FLIPS, EBBLINE_TRIES, EBBLINE_SCHEDULES, EBBLINE_SCRIPTS, EBBLINE_PHOTO_SCRIPTS, EBBLINE_HUB_STRIDE,
                EBBLINE_LEAKS, EBBLINE_ABUSE, EBBLINE_HUB_KILLS, EBBLINE_FAILOVERS, EBBLINE_BOOKINGS, EBBLINE_FUZZ_SECONDS and
                EBBLINE_SEED change numbers and seed. EBBLINE_SIZE=release makes them those of a release: a million kills, schedules and
                bookings, half a million cuts, ten million requests, a day for each fuzz target, and so on: that takes weeks on two cores
  --sanitize    after the ordinary run, the tests again with address and undefined-behaviour
                sanitizers, those with threads with the thread sanitizer, clang-tidy, and every
                fuzz target for 20 seconds
  --gates       after the ordinary run, how much of core its tests reach (platform/coverage.sh), and how many of 200 small
                changes to it they notice (platform/mutate.py; EBBLINE_MUTANTS changes the number)
  --soak        after the ordinary run, what takes an hour or the network: every fuzz target for five
                minutes (EBBLINE_FUZZ_SECONDS), with EBBLINE_SIZE=release the campaigns at those numbers as well, exported courses,
                calendars and the bill of materials read by independent validators (needs
                Node.js and npm), the licences judged by REUSE (needs its program), Android's half
                compiled and tried on a JDK (which it installs), and everything that is
                packaged built twice and compared, and the packages themselves (as root): built in a clean Debian 12 and 13,
                judged by lintian, installed and started in clean ones; and core, hub and tool built for arm64
                in a clean Debian 12 and tested under emulation (as root)
TEXT
}

install=yes sanitize=no campaign=no gates=no soak=no
for argument in "$@"; do
    case $argument in
        --no-install) install=no ;;
        --sanitize) sanitize=yes ;;
        --campaign) campaign=yes ;;
        --gates) gates=yes ;;
        --soak) soak=yes ;;
        --help | -h) usage; exit 0 ;;
        *) usage >&2; fail "test.sh does not know '$argument'" ;;
    esac
done

cd "$ebbline_root"
packages=--tests
[ "$soak" = no ] || packages=--soak
if [ "$install" = yes ]; then
    step "Installing what is missing" bash platform/debian/install.sh "$packages"
else
    note_missing "$packages"
fi
# Without one the checks of Android's half are skipped; a long run is to have made them.
[ "$soak" = no ] || command -v javac >/dev/null || fail "javac is missing: run platform/debian/install.sh --soak"
ensure_runtime_dir
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software

tests() { ctest --preset "$1" -j "$(nproc)" "${@:2}"; }

# number NAME CAMPAIGN RELEASE: what the environment says, else the number of this size.
number() {
    local given=${!1:-}
    if [ -n "$given" ]; then echo "$given"; elif [ "${EBBLINE_SIZE:-campaign}" = release ]; then echo "$3"; else echo "$2"; fi
}
case ${EBBLINE_SIZE:-campaign} in campaign | release) ;; *) fail "EBBLINE_SIZE is campaign or release" ;; esac

# Cases of one property test, by RapidCheck's own setting.
property() { RC_PARAMS="max_success=$1 seed=$2" "$3" "$4"; }

campaigns() {
    seed=${EBBLINE_SEED:-$(date +%s)}
    step "Building the campaigns" build dev kill_campaign power_campaign io_sweep schedule_campaign hostile_campaign photo_campaign all_orders hub_orders \
        allocation_sweep leak_campaign abuse_campaign hub_kill_campaign failover_campaign aftercare_test vault_test tap_campaign
    step "Going through every order of a small model" build/dev/bin/all_orders --large 1
    step "Going through every order of a small model with its hub" build/dev/bin/hub_orders --stride "${EBBLINE_HUB_STRIDE:-1}"
    step "Looking for leaks" build/dev/bin/leak_campaign --rounds "$(number EBBLINE_LEAKS 50 1000)" --seed "$seed"
    step "Lying to the devices" build/dev/bin/hostile_campaign --scripts "$(number EBBLINE_SCRIPTS 2200 100000)" --seed "$seed"
    step "Cutting and lying about photographs" build/dev/bin/photo_campaign --scripts "$(number EBBLINE_PHOTO_SCRIPTS 500 20000)" --seed "$seed"
    step "Syncing in random schedules" build/dev/bin/schedule_campaign --schedules "$(number EBBLINE_SCHEDULES 10000 1000000)" --seed "$seed"
    step "Booking reminders" property "$(number EBBLINE_BOOKINGS 50000 1000000)" "$seed" build/dev/bin/aftercare_test "[booking][property]"
    step "Failing every call to the disk" build/dev/bin/io_sweep --stride 1
    step "Refusing memory" build/dev/bin/allocation_sweep --stride 1
    EBBLINE_FLIPS=$(number EBBLINE_FLIPS 2000 100000) EBBLINE_SEED=$seed step "Flipping bytes of the vault" build/dev/bin/vault_test "[damage]"
    EBBLINE_TRIES=$(number EBBLINE_TRIES 1000 100000) EBBLINE_SEED=$seed step "Trying wrong passphrases" build/dev/bin/vault_test "[tries]"
    step "Cutting the power" build/dev/bin/power_campaign --cuts "$(number EBBLINE_CUTS 10000 500000)" --seed "$seed"
    step "Killing the program" build/dev/bin/kill_campaign --kills "$(number EBBLINE_KILLS 20000 1000000)" --seed "$seed"
    step "Killing the diary between taps" build/dev/bin/tap_campaign --kills "$(number EBBLINE_TAP_KILLS 300 10000)" --seed "$seed"
    step "Abusing the hub" build/dev/bin/abuse_campaign --requests "$(number EBBLINE_ABUSE 100000 10000000)" --seed "$seed"
    step "Killing the hub" build/dev/bin/hub_kill_campaign --kills "$(number EBBLINE_HUB_KILLS 100 10000)" --seed "$seed"
    step "Killing hubs over one database" build/dev/bin/hub_kill_campaign --kills "$(number EBBLINE_HUB_KILLS 100 10000)" --seed "$seed" --store postgres
    step "Killing the database under its hubs" build/dev/bin/failover_campaign --rounds "$(number EBBLINE_FAILOVERS 20 500)" --seed "$seed"
}

if [ "$campaign" = yes ]; then
    campaigns
    step "Building with the thread sanitizer" build tsan
    step "Running the tests with the thread sanitizer" tests tsan -L threads
    step "Fuzzing" bash platform/fuzz.sh "$(number EBBLINE_FUZZ_SECONDS 180 86400)"
    say "all campaigns passed in $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s"
    exit 0
fi

step "Building everything" build dev
step "Running the tests" tests dev

if [ "$sanitize" = yes ]; then
    step "Building with address and undefined-behaviour sanitizers" build asan
    step "Running the tests with sanitizers" tests asan
    step "Building with the thread sanitizer" build tsan
    step "Running the tests with the thread sanitizer" tests tsan -L threads
    step "Checking with clang-tidy" bash platform/tidy.sh
    step "Fuzzing" bash platform/fuzz.sh 20
fi
if [ "$gates" = yes ]; then
    step "Measuring what the tests of core reach" bash platform/coverage.sh
    step "Changing core and looking whether a test notices" python3 -B platform/mutate.py build/mutants --all \
        --most "${EBBLINE_MUTANTS:-200}" --seed "${EBBLINE_SEED:-20270301}"
fi
if [ "$soak" = yes ]; then
    step "Validating exported courses" bash platform/validate_bundles.sh
    step "Validating exported calendars" bash platform/validate_calendars.sh
    step "Validating the bill of materials" bash platform/release/validate_bill.sh
    step "Judging the licences" bash platform/release/reuse.sh
    step "Comparing two builds" bash platform/release/reproducible.sh
    step "Trying the packages on a clean Debian 12" bash platform/debian/packages.sh 12
    step "Trying the packages on a clean Debian 13" bash platform/debian/packages.sh 13
    step "Building and testing for arm64 under emulation" bash platform/debian/arm64.sh 12
    step "Fuzzing for long" bash platform/fuzz.sh "$(number EBBLINE_FUZZ_SECONDS 300 86400)"
    [ "${EBBLINE_SIZE:-campaign}" != release ] || campaigns
fi
say "the tests passed in $(((SECONDS - ebbline_started) / 60)) min $(((SECONDS - ebbline_started) % 60)) s"
