#!/usr/bin/env bash
# A file is checked again when anything changed that its result depends on, and not otherwise.
# usage: tidy_test.sh SOURCE_FOLDER SCRATCH_FOLDER
set -euo pipefail
root=$1 scratch=$2/tidy
faults=0
rm -rf "$scratch"
mkdir -p "$scratch/bin" "$scratch/tree/"{platform/server,platform/postgres,core/clock,app/hub,app/tool,build/tsan}
cp "$root/platform/steps.sh" "$root/platform/tidy.sh" "$scratch/tree/platform/"
cd "$scratch/tree"
echo 'Checks: "-*"' >.clang-tidy
echo '// shared' >core/clock/instant.h
echo '// of the tool' >app/tool/words.h

# database FLAGS_OF_THE_FIRST [FOLDER PRESET]: how twenty files are compiled.
database() {
    local i flags=$1 folder=${2:-app/tool} preset=${3:-tsan}
    mkdir -p "$folder" "build/$preset"
    {
        for i in $(seq 20); do
            echo "int file$i;" >"$folder/file$i.cpp"
            printf '%s\n{"directory": "%s", "file": "%s", "command": "c++ %s -c file%s.cpp"}\n' \
                "$([ "$i" = 1 ] && echo '[' || echo ',')" "$PWD/build/$preset" "$PWD/$folder/file$i.cpp" "$flags" "$i"
            flags=-O1
        done
        echo ']'
    } >"build/$preset/compile_commands.json"
}
database -O1

# Notes what it is asked to check.
cat >"$scratch/bin/clang-tidy-19" <<'TEXT'
#!/usr/bin/env bash
case $1 in --version) echo "version 19" ;; *) echo "$2 ${@: -1}" >>"$CHECKED" ;; esac
TEXT
chmod +x "$scratch/bin/clang-tidy-19"

# checks COUNT WHAT [ARGUMENT...]: how many files are checked after it.
checks() {
    local count
    : >"$scratch/checked"
    CHECKED=$scratch/checked XDG_CACHE_HOME=$scratch/cache PATH=$scratch/bin:$PATH bash platform/tidy.sh "${@:3}" >"$scratch/said" 2>&1 || {
        cat "$scratch/said" >&2
        exit 1
    }
    count=$(wc -l <"$scratch/checked")
    [ "$count" = "$1" ] || { echo "$2: $count files were checked, wanted $1" >&2; faults=$((faults + 1)); }
}

checks 20 "a first run"
checks 0 "nothing changed"
echo '// more' >>app/tool/words.h
checks 20 "a header of app changed"
echo '// more' >>core/clock/instant.h
checks 20 "a header of core changed"
database -O2
checks 1 "one file is compiled with other flags"
echo 'int more;' >>app/tool/file7.cpp
checks 1 "one file changed"
echo 'Checks: "*"' >.clang-tidy
checks 20 "the checks changed"

# What includes Qt is read as the dev preset compiles it, but for g++'s own headers read once, and by itself where somebody
# names it.
database "-O1 -DQT -Winvalid-pch -include $PWD/build/dev/app/cmake_pch.hxx -std=c++23" app/desk dev
checks 20 "the rest of app and platform" --qt
grep -q '^build/logs/tidy-dev app/desk/file3.cpp$' "$scratch/checked" && grep -q 'c++ -O1 -DQT -std=c++23 -c file1.cpp' build/logs/tidy-dev/compile_commands.json \
    || { echo "not as the dev preset compiles it" >&2; faults=$((faults + 1)); }
checks 0 "nothing changed there" --qt
echo 'int more;' >>app/desk/file3.cpp
echo 'int more;' >>app/desk/file4.cpp
checks 1 "one file is named" --qt app/desk/file4.cpp
if PATH=$scratch/bin:$PATH bash platform/tidy.sh --qt app/desk/absent.cpp >"$scratch/said" 2>&1 || ! grep -q "only 0 of the 1 files" "$scratch/said"; then
    echo "a file that nothing compiles passes" >&2
    faults=$((faults + 1))
fi
[ "$faults" -eq 0 ] || exit 1
echo "what changed is checked again"
