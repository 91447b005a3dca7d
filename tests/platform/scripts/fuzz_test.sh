#!/usr/bin/env bash
# Fuzzing for no time is refused, because to the fuzzer it means without end.
# usage: fuzz_test.sh SOURCE_FOLDER
set -euo pipefail
for seconds in 0 00 -1 1.5 ten; do
    code=0
    said=$(timeout 20 bash "$1/platform/fuzz.sh" "$seconds" 2>&1) || code=$?
    if [ "$code" != 1 ] || [[ $said != *"usage: fuzz.sh"* ]]; then
        echo "fuzz.sh $seconds: exit $code, said: $said" >&2
        exit 1
    fi
done
echo "refused"
