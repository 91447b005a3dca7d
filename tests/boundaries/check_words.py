#!/usr/bin/env python3
"""Every word of the programs is in its translations, under the name by which the program asks for it.

usage: check_words.py ROOT LUPDATE

The strings are collected by Qt's own lupdate. It drops the namespaces of view models, while a running program asks
by a class's full name: a translation under the short name would never be found. Before it judges, the check proves
on a small tree of its own that it notices a word that is missing, one that is no longer asked for, and one under a
short name.
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree


def full_names(folders):
    """Of every class with a meta-object: short name -> name with its namespaces."""
    names = {}
    for folder in folders:
        for header in folder.rglob("*.h"):
            text = header.read_text(encoding="utf-8")
            space = re.search(r"^namespace ([\w:]+)", text, re.M)
            for name in re.findall(r"^\s*class (\w+)[^;{]*\{\s*Q_OBJECT", text, re.M):
                names[name] = f"{space.group(1)}::{name}" if space else name
    return names


def messages(ts):
    for context in ElementTree.parse(ts).iter("context"):
        for message in context.iter("message"):
            yield context.findtext("name"), message.findtext("source"), message.findtext("comment") or ""


def faults(lupdate, folders, files, only_counts=()):
    names = full_names(folders)
    with tempfile.TemporaryDirectory() as scratch:
        collected = pathlib.Path(scratch, "all.ts")
        subprocess.run([lupdate, "-silent", "-locations", "none", *map(str, folders), "-ts", str(collected)],
                       check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        asked = set()
        for context, source, comment in messages(collected):
            short = context.split("::")[-1]
            asked.add((names.get(short, context), source, comment))
    found = []
    for file in files:
        there = set(messages(file))
        if file not in only_counts:
            found += [f"{file.name}: {context} has no \"{source}\"" for context, source, _ in sorted(asked - there)]
        found += [f"{file.name}: {context} asks no more for \"{source}\"" for context, source, _ in sorted(there - asked)]
    return found


# Names, and an address to show the form of one: the same in every language.
NAMES = {"Ebbline", "A4", "Letter", "hub.example:8443"}
SHOWN = re.compile(r"(?:^|[\s{;])((?:[a-z]\w*\.)?(?:text|label|title|subtitle|hint|unit|problem|options|name|description|placeholderText|\w*Word|\w*Text|spoken)"
                   r"|Accessible\.(?:name|description))\s*:\s*(.*)")
LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"')


def bare_words(page):
    """Literals with a letter or a digit that a property shows, and that no translation was asked for."""
    found = []
    shown, depth = None, 0
    for number, line in enumerate(page.splitlines(), 1):
        code = re.sub(r'^\s*//.*', "", line)
        begins = SHOWN.search(code)
        if depth <= 0:
            shown = begins.group(1) if begins else None
        text = begins.group(2) if begins and depth <= 0 else code
        if shown is None or re.match(r"\s*(?:readonly\s+)?property\b", code) and '"' not in code:
            continue
        depth += text.count("(") + text.count("[") - text.count(")") - text.count("]")
        bare = re.sub(r'qsTr\((?:[^()"]|"(?:[^"\\]|\\.)*")*\)', "", text)
        bare = re.sub(r'(?:begunOf|indexOf|includes|split|join|keepOf|===|!==)\s*\(?\s*"[^"]*"', "", bare)
        for literal in LITERAL.findall(bare):
            if re.search(r"[^\W_]", re.sub(r"%L?\d|\\u[0-9a-f]{4}|\\[nt]", "", literal)) and literal not in NAMES:
                found.append((number, literal))
    return found


def prove_itself(lupdate):
    with tempfile.TemporaryDirectory() as scratch:
        root = pathlib.Path(scratch)
        (root / "board.h").write_text("namespace a::b {\nclass Board : public QObject {\n    Q_OBJECT\n};\n}\n", encoding="utf-8")
        (root / "board.cpp").write_text("namespace a::b {\nQString Board::f() { return tr(\"one\") + tr(\"two\"); }\n}\n", encoding="utf-8")

        def judged(context, *sources):
            body = "".join(f"<message><source>{s}</source><translation>x</translation></message>" for s in sources)
            file = root / "x_de.ts"
            file.write_text(f"<TS version=\"2.1\"><context><name>{context}</name>{body}</context></TS>", encoding="utf-8")
            return len(faults(lupdate, [root], [file]))

        if (judged("a::b::Board", "one", "two"), judged("a::b::Board", "one"), judged("a::b::Board", "one", "two", "three"),
                judged("Board", "one", "two")) != (0, 1, 1, 4):
            sys.exit("check_words.py does not notice what it should")
    page = 'Item {\n    label: qsTr("Weight (kg)")\n    unit: "mL"\n    options: [qsTr("No"),\n        "1:10"]\n    text: "· " + a + "%L1".arg(2)\n' \
           '    objectName: "mine"\n    Accessible.name: "Spoken"\n    text: b === "queue" ? qsTr("x") : "Plain"\n}\n'
    if bare_words(page) != [(3, "mL"), (5, "1:10"), (8, "Spoken"), (9, "Plain")]:
        sys.exit(f"check_words.py does not notice words that a page shows untranslated: {bare_words(page)}")


def main():
    root, lupdate = pathlib.Path(sys.argv[1]), sys.argv[2]
    prove_itself(lupdate)
    shared = {"desk": ("charts", "face", "controls"), "diary": ("controls",)}
    found = []
    for program, parts in shared.items():
        files = sorted((root / "translations").glob(f"{program}_*.ts"))
        english = root / f"translations/{program}_en.ts"
        found += faults(lupdate, [root / "app" / program, *(root / "app" / part for part in parts)], files, [english])
    for page in sorted((root / "app").rglob("*.qml")):
        found += [f"{page.name}:{number}: shows \"{words}\", which is not translated"
                  for number, words in bare_words(page.read_text(encoding="utf-8"))]
    print("\n".join(found))
    sys.exit(1 if found else 0)


main()
