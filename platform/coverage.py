"""Lines and branches of core that its tests reach, module by module, from what gcov left.

usage: coverage.py ROOT BUILD [--missed]

Branches that the compiler adds for exceptions are left out; those of one source line in several programs count as reached if
any of them reached it. --missed names each branch that nothing reached. Fails if a module of platform/coverage_floors.csv
lies below its floor.
"""
import collections
import csv
import json
import pathlib
import subprocess
import sys


def records(build):
    for data in sorted(build.rglob("*.gcda")):
        out = subprocess.run(["gcov", "--json-format", "--branch-probabilities", "--stdout", str(data)], cwd=data.parent, check=True,
                             capture_output=True).stdout
        for line in out.splitlines():
            if line.strip():
                yield from json.loads(line)["files"]


def gathered(root, build):
    """{module: ({(file, line): count}, {(file, line, place): count})}"""
    modules = collections.defaultdict(lambda: (collections.Counter(), collections.Counter()))
    core = root / "core"
    for record in records(build):
        path = pathlib.Path(record["file"])
        if core not in path.parents:
            continue
        lines, branches = modules[path.relative_to(core).parts[0]]
        name = path.relative_to(root).as_posix()
        for line in record["lines"]:
            lines[name, line["line_number"]] += line["count"]
            place = 0
            for branch in line["branches"]:
                if not branch["throw"]:
                    branches[name, line["line_number"], place] += branch["count"]
                    place += 1
    return modules


def share(counts):
    return 100.0 * sum(1 for count in counts.values() if count > 0) / len(counts) if counts else 100.0


def main(arguments):
    missed = "--missed" in arguments
    places = [pathlib.Path(each).resolve() for each in arguments if not each.startswith("--")]
    if len(places) != 2:
        print(__doc__, file=sys.stderr)
        return 2
    root, build = places
    modules = gathered(root, build)
    if not modules:
        print("coverage: gcov left nothing; build the preset coverage and run its tests first", file=sys.stderr)
        return 2
    with open(root / "platform/coverage_floors.csv", newline="", encoding="utf-8") as file:
        floors = {row["module"]: (float(row["lines"]), float(row["branches"])) for row in csv.DictReader(file)}
    low = [f"{module}: nothing of it ran" for module in floors if module not in modules]
    print(f"{'module':<14} {'lines':>7} {'branches':>9} {'of':>6}")
    for module, (lines, branches) in sorted(modules.items()):
        reached = share(lines), share(branches)
        print(f"{module:<14} {reached[0]:6.1f} % {reached[1]:7.1f} % {len(branches):6}")
        for what, got, floor in zip(("lines", "branches"), reached, floors.get(module, (0, 0))):
            if got < floor:
                low.append(f"{module}: {got:.1f} % of the {what}, {floor:g} % are asked for")
        if missed and module in floors:
            for name, line, place in sorted(key for key, count in branches.items() if count == 0):
                print(f"    {name}:{line} branch {place}")
    for each in low:
        print(f"coverage: {each}", file=sys.stderr)
    return 1 if low else 0


sys.exit(main(sys.argv[1:]))
