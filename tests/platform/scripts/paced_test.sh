#!/usr/bin/env bash
# Off a terminal a build says how far it has come while it runs, keeps all of its output in the log, and fails as it would.
# usage: paced_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/paced
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/platform"
cp "$root/platform/steps.sh" "$scratch/platform/"

wrong() {
    echo "$1:" >&2
    cat "$scratch/said" >&2
    exit 1
}

# A CMake that configures in silence, and builds 40 steps in ninja's words; it goes on after step 20 only when told.
cat >"$scratch/bin/cmake" <<'TEXT'
#!/usr/bin/env bash
[ "$1" = --build ] || exit 0
for i in $(seq 40); do
    echo "[$i/40] Building CXX object $i.o"
    [ "$i" != 20 ] || read -r _ <"$GATE"
done
[ -z "${BREAKS:-}" ] || { echo "FAILED: the last object"; exit 1; }
TEXT
chmod +x "$scratch/bin/cmake"
export PATH=$scratch/bin:$PATH GATE=$scratch/gate
mkfifo "$GATE"

build() { bash -c 'set -euo pipefail; . "$1/platform/steps.sh"; step "Building" build dev' bash "$scratch" >"$scratch/said" 2>&1; }

build &
building=$!
for _ in $(seq 100); do
    grep -q "built 50 % (20 of 40 steps)" "$scratch/said" 2>/dev/null && break
    sleep 0.1
done
grep -q "built 50 % (20 of 40 steps)" "$scratch/said" || { echo >"$GATE"; wrong "half of the build is done, and nothing says so"; }
! grep -q "built 60 %" "$scratch/said" || wrong "more is said than is done"
echo >"$GATE"
wait "$building" || wrong "a build that holds is called a failure"
[ "$(grep -c "ebbline: built [1-9]0 % (" "$scratch/said")" = 9 ] || wrong "not nine tenths before the end"
[ "$(wc -l <"$scratch/build/logs/build-dev.log")" = 40 ] || wrong "the log is not whole"

(sleep 0.2; echo >"$GATE") &
code=0
BREAKS=yes build || code=$?
[ "$code" = 1 ] || wrong "exit code $code of a build that failed"
grep -q "FAILED: the last object" "$scratch/said" || wrong "the end of the log is not shown"
# As apt-get speaks, whatever else it says in between.
code=0
bash -c 'set -euo pipefail; . "$1/platform/steps.sh"; paced "$1/apt.log" bash -c "
    echo Unpacking before it is known how many
    echo 1 upgraded, 1 newly installed, 0 to remove and 9 not upgraded.
    for i in 1 2; do echo Preparing to unpack; echo Unpacking p\$i; done
    echo Setting up p1; echo Setting up p2"' bash "$scratch" >"$scratch/said" 2>&1 || code=$?
[ "$code" = 0 ] && [ "$(grep -c "ebbline: installed [0-9]*0 % (" "$scratch/said")" = 3 ] || wrong "installing does not say how far it is"
grep -q "installed 50 % (2 of 4 steps)" "$scratch/said" || wrong "half of the packages are unpacked, and nothing says so"
[ "$(wc -l <"$scratch/apt.log")" = 8 ] || wrong "apt's log is not whole"
echo "the build says how far it has come"
