"""Holds the safety and security tables to what exists: every row complete, every folder there, every
test named in a row present under exactly that name; the practitioners' page of expectations the same; and every hazard among
what remains.

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


def faults_of_expectations(text, root, tests):
    """The practitioners' page: its last column names a test, a picture, a folder, another row, or nothing where nothing is met."""
    rows = [[cell.strip() for cell in line.strip().strip("|").split("|")] for line in text.splitlines() if re.match(r"\| \d+ \|", line)]
    found = [] if len(rows) >= 30 else [f"desk_expectations.md: {len(rows)} rows"]
    for row in rows:
        state, proof = row[2], row[-1]
        paths = re.findall(r"`([^`]+)`", proof)
        if any(not ((root / path).exists() or (root / (path + ".cpp")).exists()) for path in paths):
            found.append(f"desk_expectations.md: {row[0]}: {proof} does not exist")
        elif not (paths or "](" in proof or re.fullmatch(r"the same as \d+", proof) or proof in tests or (not proof and not state.startswith("met"))):
            found.append(f"desk_expectations.md: {row[0]}: no test is called '{proof}'")
    return found


def faults_of_remains(text, ids):
    """Every hazard stands among what remains, and no number there is of no row."""
    named = set(re.findall(r"\b[HUT]\d\d\b", text)) | {f"{letter}{number:02}" for letter, first, last in
                                                       re.findall(r"\b([HUT])(\d\d) to [HUT](\d\d)\b", text) for number in range(int(first), int(last) + 1)}
    return [f"residual_risks.md: {number} is missing" for number in sorted(ids) if number[0] == "H" and number not in named] + \
           [f"residual_risks.md: {number} is in no table" for number in sorted(named - ids)]


def faults_of_architecture(text, root):
    """Every module has its word on the page of the architecture."""
    return [f"architecture.md: {part}/{folder.name} is not named" for part in ("core", "platform", "app") for folder in sorted((root / part).iterdir())
            if folder.is_dir() and f"`{folder.name}`" not in text]


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
    page = (root / "docs/guides/desk_expectations.md").read_text(encoding="utf-8")
    found += faults_of_expectations(page, root, tests)
    if not faults_of_expectations(page, root, tests - {"nothing is closed without an outcome"}):
        found.append("desk_expectations.md: the check did not see a row without its test")
    ids = set()
    for name in ("docs/safety/hazards.csv", "docs/safety/use_errors.csv", "docs/security/threats.csv"):
        with open(root / name, newline="", encoding="utf-8") as file:
            ids.update(row[0] for row in list(csv.reader(file))[1:])
    remains = (root / "docs/safety/residual_risks.md").read_text(encoding="utf-8")
    found += faults_of_remains(remains, ids)
    if not faults_of_remains(remains.replace("H11", "H99"), ids):
        found.append("residual_risks.md: the check did not see a hazard that is missing")
    architecture = (root / "docs/architecture.md").read_text(encoding="utf-8")
    found += faults_of_architecture(architecture, root)
    if not faults_of_architecture(architecture.replace("`triage`", ""), root):
        found.append("architecture.md: the check did not see a module that is missing")
    if found:
        sys.exit("\n".join(found))
    print(f"{count} rows in {len(TABLES)} tables name what exists, among {len(tests)} tests")


if __name__ == "__main__":
    main()
