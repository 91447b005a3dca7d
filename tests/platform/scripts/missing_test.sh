#!/usr/bin/env bash
# Without installing, what is missing is named in one sentence, before CMake is asked and again where its log ends.
# usage: missing_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/missing
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/platform/debian"
cp "$root/platform/steps.sh" "$scratch/platform/"
cp "$root/platform/debian/"*.sh "$scratch/platform/debian/"

wrong() {
    echo "$1:" >&2
    cat "$scratch/said" >&2
    faults=$((faults + 1))
}

# A machine on which one package is missing, and a CMake that stumbles over it.
cat >"$scratch/bin/dpkg-query" <<'TEXT'
#!/usr/bin/env bash
case ${@: -1} in libzstd-dev) exit 1 ;; esac
echo "installed 99"
TEXT
printf '%s\n' '#!/usr/bin/env bash' 'echo "CMake Error: could not find zstd"; exit 1' >"$scratch/bin/cmake"
chmod +x "$scratch/bin/"*
export PATH=$scratch/bin:$PATH

code=0
bash "$scratch/platform/debian/install.sh" --check >"$scratch/said" || code=$?
case $(. /etc/os-release && echo "${ID:-}:${VERSION_ID:-}") in
    debian:12 | debian:13) ;;
    *)
        # Packages have other names there: nothing is said.
        [ "$code" = 0 ] && [ ! -s "$scratch/said" ] || wrong "said something about a system it does not know"
        [ "$faults" -eq 0 ]
        exit
        ;;
esac
[ "$code" = 3 ] || wrong "exit code $code, wanted 3"
[ "$(wc -l <"$scratch/said")" = 1 ] && grep -q "missing packages (1 of [0-9]*): libzstd-dev. Install them with:" "$scratch/said" \
    || wrong "not one sentence that names the package"

code=0
bash -c '. "$1/platform/steps.sh"; note_missing; step "Building" build dev' bash "$scratch" >"$scratch/said" 2>&1 || code=$?
[ "$code" = 1 ] || wrong "exit code $code of a build that failed"
[ "$(grep -c 'libzstd-dev. Install them with' "$scratch/said")" = 2 ] || wrong "not said before and after"
# After the log, not above it.
[ "$(grep -n 'the likely cause: .*libzstd-dev' "$scratch/said" | cut -d: -f1)" -gt "$(grep -n 'CMake Error' "$scratch/said" | cut -d: -f1)" ] \
    || wrong "the cause stands above CMake's log"

# What only a long run needs is asked of a long run alone.
printf '%s\n' '#!/usr/bin/env bash' 'case ${@: -1} in default-jdk-headless) exit 1 ;; esac' 'echo "installed 99"' >"$scratch/bin/dpkg-query"
bash "$scratch/platform/debian/install.sh" --tests --check >"$scratch/said" || wrong "an ordinary run wants a JDK"
code=0
bash "$scratch/platform/debian/install.sh" --soak --check >"$scratch/said" || code=$?
[ "$code" = 3 ] && grep -q 'default-jdk-headless. Install them with: .*install.sh --soak$' "$scratch/said" || wrong "a long run does not ask for its JDK"

# With nothing missing, nothing is said.
printf '%s\n' '#!/usr/bin/env bash' 'echo "installed 99"' >"$scratch/bin/dpkg-query"
bash "$scratch/platform/debian/install.sh" --check >"$scratch/said" || wrong "something is missing"
[ ! -s "$scratch/said" ] || wrong "something is said"
[ "$faults" -eq 0 ] || exit 1
echo "what is missing is named"
