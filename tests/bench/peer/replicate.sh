#!/usr/bin/env bash
# The same entries by PouchDB over HTTP, for replication_bench: entries.jsonl of the folder from one database to a hub in a process
# of its own and on to another. Installs under build/peer what it needs; 77 if that cannot be had.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../../.." && pwd)
command -v node >/dev/null && command -v npm >/dev/null || { echo "ebbline: no peer: Node.js or npm is missing" >&2; exit 77; }
mkdir -p "$root/build/peer"
cp "$here/package.json" "$here/replicate.js" "$root/build/peer/"
cd "$root/build/peer"
if [ ! -d node_modules/express-pouchdb ]; then
    timeout 900 npm install --omit=dev --no-audit --no-fund >npm.log 2>&1 || { echo "ebbline: no peer: npm brings no PouchDB (build/peer/npm.log)" >&2; exit 77; }
fi
node replicate.js "$1"
