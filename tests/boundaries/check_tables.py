"""Holds the safety and security tables to what exists: every row complete, every folder there, every
test named in a row present under exactly that name.

usage: check_tables.py ROOT
"""
import csv
import pathlib
import re
import sys

TABLES = {
    "docs/safety/hazards.csv": ["id", "hazard", "cause", "situation", "harm", "severity (proposal)", "control", "code", "test",
                                "remains"],
    "docs/safety/use_errors.csv": ["id", "scenario", "error", "harm", "control", "code", "test", "remains"],
    "docs/safety/patient_expectations.csv": ["id", "expectation", "how met", "test", "state"],
    "docs/safety/libraries.csv": ["library", "used by", "linked", "programs", "packages", "Debian 12", "Debian 13", "licence", "copyright",
                                  "why acceptable", "known anomalies", "guard in the project", "test"],
    "docs/safety/claims.csv": ["page", "words", "why it is true", "test"],
    "docs/security/threats.csv": ["id", "threat", "who", "answer", "code", "test", "remains"],
    "docs/security/masvs.csv": ["control", "how met", "test", "state"],
    "docs/security/asvs.csv": ["requirement", "how met", "test", "state"],
}
# A table whose first column names no row.
WITHOUT_ID = {"docs/safety/claims.csv"}
# A control that is not met, or not ours, says so and names no test.
WITHOUT_TEST = ("not met", "not applicable", "out of scope")
SEVERITIES = {"minor", "serious", "critical"}


def names_of_tests(root):
    """Every title of a test case, and every name under which CMake adds a test."""
    names = set()
    for path in (root / "tests").rglob("*"):
        if path.suffix in {".cpp", ".h"}:
            text = path.read_text(encoding="utf-8")
            for literal in re.findall(r'TEST_CASE\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)', text):
                names.add("".join(re.findall(r'"((?:[^"\\]|\\.)*)"', literal)))
        elif path.name == "CMakeLists.txt" or path.suffix == ".cmake":
            names.update(re.findall(r'NAME "([^"]+)"', path.read_text(encoding="utf-8")))
    return names


def faults_of(name, rows, root, tests):
    head = TABLES[name]
    if not rows or rows[0] != head:
        return [f"{name}: the first line has to be {','.join(head)}"]
    found = []
    seen = set()
    for number, row in enumerate(rows[1:], 2):
        where = f"{name}:{number}"
        if len(row) != len(head):
            found.append(f"{where}: {len(row)} fields, {len(head)} wanted")
            continue
        cell = dict(zip(head, row))
        if row[0] in seen and name not in WITHOUT_ID:
            found.append(f"{where}: {row[0]} stands there twice")
        seen.add(row[0])
        excused = cell.get("state", "").startswith(WITHOUT_TEST)
        for column, value in cell.items():
            if not value.strip() and not (excused and column in {"how met", "test"}):
                found.append(f"{where}: nothing in '{column}'")
        if "code" in cell and not (root / cell["code"]).exists():
            found.append(f"{where}: {cell['code']} does not exist")
        if "severity (proposal)" in cell and cell["severity (proposal)"] not in SEVERITIES:
            found.append(f"{where}: the severity is one of {', '.join(sorted(SEVERITIES))}")
        for test in filter(None, cell["test"].split(" | ")):
            if test not in tests:
                found.append(f"{where}: no test is called '{test}'")
    if len(rows) < 3:
        found.append(f"{name}: no rows")
    return found


def main():
    root = pathlib.Path(sys.argv[1])
    tests = names_of_tests(root)
    if len(tests) < 100:
        sys.exit(f"only {len(tests)} tests were found: the check is not looking where they are")
    found = []
    count = 0
    for name in TABLES:
        with open(root / name, newline="", encoding="utf-8") as file:
            rows = list(csv.reader(file))
        found += faults_of(name, rows, root, tests)
        count += len(rows) - 1
        # An orphan has to be seen: the same table with a test that does not exist.
        orphaned = [list(row) for row in rows]
        orphaned[1][TABLES[name].index("test")] = "a test that nobody wrote"
        if faults_of(name, orphaned, root, tests) == faults_of(name, rows, root, tests):
            found.append(f"{name}: the check did not see a row without a test")
    if found:
        sys.exit("\n".join(found))
    print(f"{count} rows in {len(TABLES)} tables name what exists, among {len(tests)} tests")


if __name__ == "__main__":
    main()
