#!/usr/bin/env bash
# Exports every course of the demo clinic and of one phone as a FHIR bundle, and has independent validators read
# them. Needs Node.js 20 and, the first time, the npm registry: a long run's business, not the ordinary one's.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"
command -v npm >/dev/null || fail "npm is missing: install nodejs (20 or newer) and npm"
tool=$ebbline_root/build/dev/bin/ebbline
[ -x "$tool" ] || fail "build the dev preset first"
ensure_runtime_dir
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software

validators=build/validators
mkdir -p "$validators"
cp tests/validators/package.json tests/validators/package-lock.json tests/validators/validate_bundles.mjs "$validators"
step "Fetching the validators" quietly build/logs/validators.log npm ci --prefix "$validators" --no-audit --no-fund

clinic=$validators/clinic
rm -rf "$clinic"
step "Making the demo clinic" quietly build/logs/validators-demo.log "$tool" demo --out "$clinic"
bundles=()
for vault in desk phone-plain; do
    while read -r course _; do
        file=$clinic/$vault-$course.json
        "$tool" export "$clinic/work/$vault" --course "$course" --out "$file" <"$clinic/passphrase.txt" >/dev/null
        bundles+=("$file")
    done < <("$tool" export "$clinic/work/$vault" <"$clinic/passphrase.txt")
done
[ ${#bundles[@]} -ge 2 ] || fail "only ${#bundles[@]} courses were exported"
step "Validating ${#bundles[@]} bundles" node "$validators/validate_bundles.mjs" "${bundles[@]}"
