#!/usr/bin/env bash
# Writes the bill of materials of the programs in build/dev, and has the library of those who publish CycloneDX read it. Needs
# Node.js 20 and, the first time, the npm registry: a long run's business, not the ordinary one's.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/../steps.sh"
cd "$ebbline_root"
command -v npm >/dev/null || fail "npm is missing: install nodejs (20 or newer) and npm"

bill=build/dev/ebbline.cdx.json
step "Writing the bill of materials" python3 -B platform/release/sbom.py . build/dev "$bill"
validators=build/validators
mkdir -p "$validators"
cp tests/validators/package.json tests/validators/package-lock.json tests/validators/validate_bill.mjs "$validators"
step "Fetching the validators" quietly build/logs/validators.log npm ci --prefix "$validators" --no-audit --no-fund
step "Validating the bill of materials" node "$validators/validate_bill.mjs" "$bill"
