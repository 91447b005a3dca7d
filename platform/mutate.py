"""Changes one small thing at a time in core and sees whether a test notices.

usage: mutate.py SCRATCH [--since REF | --all] [--list] [--most N] [--seed N] [--least PERCENT]

Works on the modules below: the files that changed since REF (HEAD~1 unless named), or all. In a working copy of its own in SCRATCH with
a build of its own, each change is built and the module's tests are run; a change is noticed if a test fails or does not end.
A change that does not compile counts for nothing. --most takes so many by chance. Fails if fewer than --least percent (95)
are noticed. --list prints the changes and builds nothing.
"""
import argparse
import pathlib
import random
import re
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parent.parent
TESTS = {
    "bytes": ["bytes_test", "envelope_test"],
    "crypto": ["crypto_test", "envelope_test", "vault_test"],
    "envelope": ["envelope_test"],
    "journal": ["journal_test"],
    "warnings": ["warnings_test"],
}
PATIENCE = 300  # seconds for the tests of one change

# What stands there, and what takes its place; a call that stands alone is left out. Spaces around operators keep templates, arrows and references out of it.
CHANGES = [
    (r" == ", [" != "]), (r" != ", [" == "]),
    (r" < ", [" <= ", " >= "]), (r" <= ", [" < ", " > "]), (r" > ", [" >= ", " <= "]), (r" >= ", [" > ", " < "]),
    (r" && ", [" || "]), (r" \|\| ", [" && "]),
    (r" \+ ", [" - "]), (r" - ", [" + "]), (r" \+= ", [" -= "]), (r" -= ", [" += "]),
    (r"(?<=[(\s,])0(?=[;),\s])", ["1"]), (r"(?<=[(\s,])1(?=[;),\s])", ["0"]),
    (r"\btrue\b", ["false"]), (r"\bfalse\b", ["true"]),
    (r"\bif \(!", ["if ("]), (r"\bif \((?!!|const |auto |constexpr)", ["if (!"]),
    (r"^\s+(?!return|break|continue|case|default|const|auto|using|for|while|if|else|\}|//)[\w.\->:]+\([^;{}]*\);$", ["    ;"]),
]
LEFT_OUT = re.compile(r"^\s*(//|#|static_assert|constexpr std::string_view|\*|template)|static_assert\(")


def mutants(path):
    """(line number from 0, the whole new line) of every change to a file."""
    for number, line in enumerate(path.read_text(encoding="utf-8").split("\n")):
        if LEFT_OUT.search(line):
            continue
        code = line.split("  //")[0]
        if "//" in code and '"' not in code:
            code = code.split("//")[0]
        words = [(m.start(), m.end()) for m in re.finditer(r'"(?:[^"\\]|\\.)*"', code)]
        for pattern, replacements in CHANGES:
            for match in re.finditer(pattern, code):
                # Inside of words nothing is changed; a whole statement goes with its words.
                if any(begin < match.end() and match.start() < end and not (match.start() <= begin and end <= match.end()) for begin, end in words):
                    continue
                for replacement in replacements:
                    changed = line[:match.start()] + replacement + line[match.end():]
                    if changed != line:
                        yield number, changed


def chosen_files(arguments):
    if arguments.all:
        names = [p.relative_to(ROOT).as_posix() for m in TESTS for p in sorted((ROOT / "core" / m).glob("*.cpp"))]
    else:
        names = subprocess.run(["git", "diff", "--name-only", arguments.since, "--", "core"], cwd=ROOT, check=True, capture_output=True,
                               text=True).stdout.split()
    return [n for n in names if n.endswith(".cpp") and n.split("/")[1] in TESTS and (ROOT / n).exists()]


def build(copy, targets):
    return subprocess.run(["cmake", "--build", "build/dev", "--target", *targets], cwd=copy, capture_output=True).returncode == 0


def noticed(copy, targets):
    for target in targets:
        try:
            if subprocess.run([copy / "build/dev/bin" / target], cwd=copy, capture_output=True, timeout=PATIENCE).returncode != 0:
                return True
        except subprocess.TimeoutExpired:
            return True
    return False


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("scratch", type=pathlib.Path)
    parser.add_argument("--since", default="HEAD~1")
    parser.add_argument("--all", action="store_true")
    parser.add_argument("--list", action="store_true")
    parser.add_argument("--most", type=int)
    parser.add_argument("--seed", type=int, default=20270301)
    parser.add_argument("--least", type=float, default=95)
    arguments = parser.parse_args()

    every = [(name, number, changed) for name in chosen_files(arguments) for number, changed in mutants(ROOT / name)]
    if arguments.most is not None and len(every) > arguments.most:
        every = sorted(random.Random(arguments.seed).sample(every, arguments.most))
    if arguments.list:
        for name, number, changed in every:
            print(f"{name}:{number + 1}: {changed.strip()}")
        print(f"{len(every)} changes")
        return 0
    if not every:
        print("mutate: nothing of these modules changed")
        return 0

    copy = arguments.scratch.resolve() / "copy"
    if not copy.exists():
        subprocess.run(["git", "worktree", "add", "--detach", str(copy), "HEAD"], cwd=ROOT, check=True, capture_output=True)
    else:
        head = subprocess.run(["git", "rev-parse", "HEAD"], cwd=ROOT, check=True, capture_output=True, text=True).stdout.strip()
        # What an earlier run left half changed, or stands on another state.
        subprocess.run(["git", "checkout", "--force", "--detach", head], cwd=copy, check=True, capture_output=True)
    targets = sorted({t for name, _, _ in every for t in TESTS[name.split("/")[1]]})
    subprocess.run(["cmake", "--preset", "dev"], cwd=copy, check=True, capture_output=True)
    if not build(copy, targets) or noticed(copy, targets):
        print("mutate: the tests do not pass on the program as it is", file=sys.stderr)
        return 2
    began, caught, missed, void = time.monotonic(), 0, [], 0
    for name, number, changed in every:
        path, own = copy / name, TESTS[name.split("/")[1]]
        before = path.read_text(encoding="utf-8")
        lines = before.split("\n")
        lines[number] = changed
        path.write_text("\n".join(lines), encoding="utf-8")
        if not build(copy, own):
            void += 1
        elif noticed(copy, own):
            caught += 1
        else:
            missed.append(f"{name}:{number + 1}: {changed.strip()}")
        path.write_text(before, encoding="utf-8")
    counted = caught + len(missed)
    score = 100.0 * caught / counted if counted else 100.0
    for each in missed:
        print(f"nobody noticed {each}")
    print(f"{len(every)} changes, {void} that do not compile, {caught} noticed, {len(missed)} not: {score:.1f} %, "
          f"{int(time.monotonic() - began)} s")
    return 0 if score >= arguments.least else 1


sys.exit(main())
