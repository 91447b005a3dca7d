"""Looks for sentences that promise: words such as guarantee, proven or compliant on every page, and always, never or cannot
where people read what they may rely on: pages, words of the programs, manuals, and what catalogues, menus and packages say of them. Each has to stand in docs/safety/claims.csv with the reason why it is true and the
test that shows it (check_tables.py looks for that test). A denial is no promise: "not a certified medical device". That every
threshold is a setting is refused as well: warning rules are fixed (core/warnings), and some guards change only in a file.

usage: check_claims.py ROOT [--list]
"""
import csv
import pathlib
import re
import sys

TABLE = "docs/safety/claims.csv"
PACKAGES = "platform/packaging/CMakeLists.txt"  # says of each package what it is
STRONG = re.compile(r"\b(guarantee\w*|certified|certification|certifies|complian\w*|complies|conforms?|unbreakable|impossible|fool-?proof|"
                    r"tamper-?proof|bullet-?proof|unhackable|proven|proved|validated|approved|anonymous\w*|perfect\w*|flawless\w*|"
                    r"error-free|bug-free|risk-free|no risk|zero risk|clinically|military|state of the art|fully secure|completely safe|"
                    r"HIPAA|FDA|CE mark\w*|ensures?|all cases|100 % (?:safe|secure|reliable))\b", re.I)
PROMISE = re.compile(r"\b(always|never|can ?not (?:read|link|see|learn|lose|fail|reach|be (?:lost|forged|changed|opened|broken|read at|delayed))|can read none|"
                     r"nobody (?:can|else)|no one can|nothing is lost|nothing that|at all times|secure|securely|safely|safe|in under an? \w+|"
                     r"in less than an? \w+|less than a minute|under a minute|"
                     r"(?:everything|all)(?: [\w' ]{1,40})? (?:stays?|is|are|lies) (?:sealed|encrypted|private|protected))\b", re.I)
# What somebody is asked to do, and what one says of oneself or of a phone, is no promise of the program.
NO_PROMISE = re.compile(r"^Never\b|^If you cannot\b|\bI can not\b|\bYou can not\b|^This device can not\b|^The hub cannot be reached\b", re.I)
DENIAL = re.compile(r"\b(not|no|none|nothing|neither|without|until)\b[^.;]{0,40}?\b(certif\w+|approv\w+|validated|guarantee\w*|proven|complian\w+|clinically)", re.I)
# Of all thresholds at once: some are settings of a clinic, and the warning rules are not.
ALL_SETTINGS = re.compile(r"\b(?:each|every|all|its|the)\b[^.;]*\b(?:thresholds?|durations?)\b[^.;]*\b(?:is|are) (?:a |all )?settings?\b", re.I)
# Where somebody reads what may be relied on: patients, clinics, operators, whoever weighs risks.
RELIED_ON = ("README.md", "docs/architecture.md", "docs/changelog.md", "docs/guides/", "docs/safety/", "docs/security/", "platform/packaging/",
             "translations/")


def blocks_of(path, text):
    """The running text of a page, without code."""
    if path.suffix == ".ts":
        return re.findall(r"<source>(.*?)</source>", text, re.S)
    if path.suffix == ".desktop":
        return re.findall(r"(?m)^(?:GenericName|Comment|Keywords)=(.*)$", text)
    if path.name == "CMakeLists.txt":
        return re.findall(r'(?s)set\(CPACK_COMPONENT_\w+_DESCRIPTION "(.*?)"\)', text)
    text = re.sub(r"(?ms)^```.*?^```", "", text)
    text = re.sub(r"<[^>]+>", "\n\n", text) if path.suffix == ".in" and "xml" in path.name else text
    lines = [re.sub(r"^\s*\|", "", line).replace("|", "\n\n") if line.lstrip().startswith("|") else line for line in text.splitlines()]
    return re.split(r"\n\s*\n|\n\s*[-*] |\n\s*\d+\. ", "\n".join(lines))


def sentences_of(path, text):
    for block in blocks_of(path, text):
        plain = re.sub(r"[`*_]|\]\([^)]*\)|\[", "", re.sub(r"\s+", " ", block)).strip()
        yield from (sentence for sentence in re.split(r"(?<=[.!?;])\s+", plain) if sentence)


def promises(name, sentence):
    bare = DENIAL.sub("", sentence)
    return bool(STRONG.search(bare) or ALL_SETTINGS.search(bare) or (name.startswith(RELIED_ON) and PROMISE.search(bare) and not NO_PROMISE.search(bare)))


def pages(root):
    """The tables of docs/safety and docs/security are not among them: check_tables.py holds each row to its test."""
    return [root / "README.md", root / "DEVELOPERS.md", *(root / "docs").rglob("*.md"),
             *(root / "platform/packaging").rglob("*.in"), *(root / "platform/packaging").glob("*.desktop"), root / PACKAGES, *(root / "translations").glob("*_en.ts"), root / "translations/desk_de.ts"]


def hits(root):
    for path in pages(root):
        name = path.relative_to(root).as_posix()
        for sentence in sentences_of(path, path.read_text(encoding="utf-8")):
            if promises(name, sentence):
                yield name, sentence


def faults_of(found, rows):
    used, faults = set(), []
    for name, sentence in found:
        allowed = [index for index, row in enumerate(rows) if row["page"] == name and row["words"] in sentence]
        used.update(allowed)
        if not allowed:
            faults.append(f"{name}: promises without a reason in {TABLE}: {sentence}")
    faults += [f"{TABLE}: no page says '{row['words']}' any more ({row['page']})" for index, row in enumerate(rows) if index not in used]
    return faults


def main():
    root = pathlib.Path(sys.argv[1])
    found = list(hits(root))
    if "--list" in sys.argv:
        print("\n".join(f"{name}\t{sentence}" for name, sentence in found))
        return
    with open(root / TABLE, newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    faults = faults_of(found, rows)
    for wrong in ("Ebbline guarantees that no entry is lost.", "It is a certified medical device.", "It is fully HIPAA compliant.",
                  "The hub never fails.", "Your data are always safe.", "Everything stays sealed on this device.", "Everything it keeps is sealed.",
                  "Its thresholds and durations are settings with their sources.", "Each threshold and duration is a setting with a source."):
        if not promises("docs/guides/patient.md", wrong):
            faults.append(f"the search does not see: {wrong}")
    for right in ("It is not a certified medical device.", "No certification is claimed.", "The desk prints the sheet.",
                  "A clinic changes most thresholds; the warning rules are fixed."):
        if promises("docs/guides/patient.md", right):
            faults.append(f"the search takes for a promise: {right}")
    for page, text in ((PACKAGES, 'set(CPACK_COMPONENT_HUB_DESCRIPTION "a hub\n It never\n fails.")'),
                       ("platform/packaging/ebbline-desk.desktop", "[Desktop Entry]\nComment=A desk that never fails\n")):
        if not any(promises(page, sentence) for sentence in sentences_of(pathlib.Path(page), text)):
            faults.append(f"the search does not see a promise in {page}")
        if not list(sentences_of(pathlib.Path(page), (root / page).read_text(encoding="utf-8"))):
            faults.append(f"the search finds no words in {page}")
    if not faults_of([("README.md", "Ebbline never fails.")], []) or not faults_of([], rows[:1]):
        faults.append("the comparison with the table sees nothing")
    if faults:
        sys.exit("\n".join(faults))
    print(f"{len(found)} promises, each with its reason")


if __name__ == "__main__":
    main()
