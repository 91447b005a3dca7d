#!/usr/bin/env python3
"""Every name under which the code keeps something in a vault stands in the table of docs/formats/vault.md, and the reverse.

usage: check_kept.py ROOT

A name is what the first argument of keep(), putKept(), kept(), keptOf() and keptUnder() begins with: a literal, a constant, or a
function that puts a name together. Before it judges, the check proves that it notices a name that is missing on either side.
"""
import pathlib
import re
import sys

FOLDERS = ("core/vault", "core/desk", "core/patient", "core/sync", "app/desk", "app/diary")
# The vault's own door: what comes through it was named by somebody else. A backup keeps a file, under no name.
DOORS = {"core/vault/vault.cpp", "core/vault/vault.h", "core/vault/inside.h", "core/vault/backup.cpp"}
ACT = r"(?:keep|putKept|kept|keptOf|keptUnder)\(([^;]*)"
CALL = re.compile(r"(?:vault(?:\(\))?|\bm?_?inside)(?:\.|->)" + ACT)
OWN_CALL = re.compile(r"(?<![\w>:.])(?:(?:m_)?inside(?:\.|->))?" + ACT)  # the vault's own, in core/vault


def first_argument(text):
    depth = 0
    for place, letter in enumerate(text):
        if letter in "([{":
            depth += 1
        elif letter in ")]}":
            depth -= 1
        if depth < 0 or (letter == "," and depth == 0):
            return text[:place].strip()
    return text.strip()


def definition(name, texts, path):
    """What a constant or a function of that name begins with; the file itself comes first."""
    pattern = re.compile(r"\b(?:string_view|char\*|auto|string)\s+(?:const\s+)?(?:\w+::)?" + re.escape(name)
                         + r"\b(?:\([^)]*\)(?:\s*const)?\s*\{\s*return\s+|\s*=\s*)([^;]*);")
    for text in [texts[path]] + [text for other, text in sorted(texts.items()) if other != path]:
        found = pattern.search(text)
        if found:
            return found.group(1).strip()
    return None


def resolved(expression, texts, path, deep=0):
    literal = re.match(r'(?:std::string\()?"([^"]+)"', expression)
    if literal:
        return literal.group(1)
    expression = re.sub(r"^std::string\(", "", expression)
    word = re.match(r"(?:\w+::)*(\w+)", expression)
    if not word or deep > 4:
        return None
    meant = definition(word.group(1), texts, path)
    return resolved(meant, texts, path, deep + 1) if meant else None


def is_parameter(expression, text):
    return re.fullmatch(r"\w+", expression) is not None and \
        re.search(r"(?:string_view|std::string&|char\*)\s+" + expression + r"[,)]", text) is not None


def names_in(texts):
    """Names with the files that say them, and calls whose name cannot be told."""
    names, faults = {}, []
    for path, text in texts.items():
        if path in DOORS:
            continue
        for call in (OWN_CALL if path.startswith("core/vault/") else CALL).finditer(text):
            expression = first_argument(call.group(1))
            name = resolved(expression, texts, path)
            if name:
                names.setdefault(name, set()).add(path)
            elif expression and not is_parameter(expression, text) and not re.match(r"(?:const\s+)?(?:std::|QString|bytes::|records::|clock::|Q_INVOKABLE)", expression):
                faults.append(f"{path}: under which name is {expression} kept?")
    return names, faults


def names_of_table(page):
    part = page.partition("**Kept.**")[2]
    return set(re.findall(r"^\| `([^`]+?)(?:[A-Z][A-Z0-9 /]*)?` \|", part, re.M))


def faults_of(names, table):
    return [f"vault.md: '{name}' is kept ({', '.join(sorted(files))}) and stands in no row" for name, files in sorted(names.items()) if name not in table] + \
           [f"vault.md: nothing is kept under '{name}'" for name in sorted(table - set(names))]


def main():
    root = pathlib.Path(sys.argv[1])
    texts = {}
    for folder in FOLDERS:
        for path in (root / folder).rglob("*"):
            if path.suffix in {".cpp", ".h"}:
                text = re.sub(r"//[^\n]*", "", path.read_text(encoding="utf-8"))
                texts[str(path.relative_to(root))] = text
    names, found = names_in(texts)
    table = names_of_table((root / "docs/formats/vault.md").read_text(encoding="utf-8"))
    if len(names) < 20:
        sys.exit(f"only {len(names)} names were found: the check is not looking where they are")
    found += faults_of(names, table)
    # Both ways, and a name that cannot be told, have to be seen.
    if not faults_of({**names, "nobody-wrote-this/": {"nowhere"}}, table) or not faults_of(names, table | {"nobody-keeps-this"}):
        found.append("the check did not see a name that stands on one side alone")
    forged = {"core/desk/forged.cpp": 'std::string forgedName(int i) { return "forged/" + std::to_string(i); }\nDone a() { return vault.keep(forgedName(1), {}); }\n'
                                      "Done b() { return vault.keep(somewhere(), {}); }\n"}
    new, unknown = names_in(forged)
    if set(new) != {"forged/"} or len(unknown) != 1:
        found.append(f"the check did not read a call of its own: {new}, {unknown}")
    if found:
        sys.exit("\n".join(found))
    print(f"{len(names)} names are kept, and each stands in the table")


if __name__ == "__main__":
    main()
