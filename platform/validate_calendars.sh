#!/usr/bin/env bash
# Writes calendars as the diary exports them and has ical.js read them. Needs Node.js 20 and, the first time, the npm registry:
# a long run's business, not the ordinary one's. What icalendar for Python says of the same files is an ordinary test.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/steps.sh"
cd "$ebbline_root"
command -v npm >/dev/null || fail "npm is missing: install nodejs (20 or newer) and npm"
writer=$ebbline_root/build/dev/bin/write_calendars
[ -x "$writer" ] || fail "build the dev preset first"

validators=build/validators
mkdir -p "$validators"
cp tests/validators/package.json tests/validators/package-lock.json tests/validators/read_calendars.mjs tests/validators/spoilt_calendars.json "$validators"
step "Fetching the validators" quietly build/logs/validators.log npm ci --prefix "$validators" --no-audit --no-fund

calendars=$validators/calendars
rm -rf "$calendars"
"$writer" "$calendars"
step "Validating calendars" node "$validators/read_calendars.mjs" "$calendars"
