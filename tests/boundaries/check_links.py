"""Every relative link and picture of every page leads somewhere, to the heading where it names one; every path of the project
that a page names in code letters exists; from the
first pages every page of docs can be reached; and the pictures of the guides are made by the script that takes them from the programs.

usage: check_links.py ROOT
"""
import pathlib
import re
import sys
import urllib.parse

LINK = re.compile(r"!?\[[^\]]*\]\(\s*<?([^)\s>]+)>?(?:\s+\"[^\"]*\")?\s*\)")
# What stands in code letters and begins with a folder of the project is a path of it.
PATH = re.compile(r"`((?:core|app|platform|tests|translations|docs)/[A-Za-z0-9_./-]+)`")
STARTS = ("README.md", "DEVELOPERS.md", "docs/README.md")


def slug(heading):
    """The name that a heading gets as a target, by the rules of the pages' usual readers."""
    plain = re.sub(r"!?\[([^\]]*)\]\([^)]*\)", r"\1", heading).strip().lower()
    return re.sub(r"[^\w\- ]", "", plain).replace(" ", "-")


def without_code(text):
    return re.sub(r"(?ms)^(```|~~~).*?^\1\s*$", "", text)


def anchors_of(text):
    found, counts = set(), {}
    for heading in re.findall(r"(?m)^#{1,6}\s+(.+?)\s*#*\s*$", without_code(text)):
        name = slug(heading)
        number = counts.get(name, 0)
        counts[name] = number + 1
        found.add(f"{name}-{number}" if number else name)
    return found


def faults_of(name, text, read, exists):
    """read: text of a page by its path, or None; exists: whether there is such a path. -> faults, pages that it links to"""
    found, linked = [], set()
    prose = without_code(text)
    for target in LINK.findall(re.sub(r"`[^`\n]*`", "", prose)):
        if re.match(r"[a-z]+:", target):
            if not re.match(r"(https?://[^/\s]+\.[^/\s]+|mailto:\S+@\S+)", target):
                found.append(f"{name}: {target} is no address")
            continue
        path, _, anchor = urllib.parse.unquote(target).partition("#")
        where = pathlib.PurePosixPath(name).parent / path if path else pathlib.PurePosixPath(name)
        parts = []
        for part in where.parts:
            if part == ".." and parts:
                parts.pop()
            elif part != ".":
                parts.append(part)
        place = "/".join(parts)
        if not exists(place):
            found.append(f"{name}: nothing is at {target}")
            continue
        if place.endswith(".md"):
            linked.add(place)
            if anchor and anchor not in anchors_of(read(place)):
                found.append(f"{name}: {place} has no heading #{anchor}")
    for path in PATH.findall(prose):
        if not exists(path.rstrip("/")) and not exists(path + ".cpp") and not exists(path + ".h"):
            found.append(f"{name}: the path {path} does not exist")
    return found, linked


def selftest():
    pages = {"a.md": "# One two\n[x](b.md#three-four) ![y](p.png) `core/x`", "b.md": "## Three, *four*\n", "p.png": "", "core/x": ""}
    sound = faults_of("a.md", pages["a.md"], pages.get, pages.__contains__)
    wrong = {"[x](c.md)": "a page that is not there", "[x](b.md#five)": "a heading that is not there", "![y](q.png)": "a picture that is not there",
             "`core/nothing.h`": "a path that is not there", "[x](http://nowhere)": "an address that is none"}
    faults = [] if sound == ([], {"b.md"}) else [f"a sound page is refused: {sound[0]}"]
    faults += [f"{what} is not seen" for text, what in wrong.items() if len(faults_of("a.md", text, pages.get, pages.__contains__)[0]) != 1]
    return faults


def faults_of_pictures(there, script, shown):
    """Every picture of the guides is taken by the script that takes them, and is shown on a page."""
    taken = {f"{name}.png" for name in re.findall(r"(?m)^take \S+ \S+ (\S+)$", script)} | set(re.findall(r'overview_picture "\$pictures/(\S+?)"', script))
    return [f"docs/guides/pictures/{name}: platform/guide_pictures.sh does not make it" for name in sorted(there - taken)] + \
           [f"platform/guide_pictures.sh: {name} is not there" for name in sorted(taken - there)] + \
           [f"docs/guides/pictures/{name}: no page shows it" for name in sorted(there - shown)]


def faults_of_overview(script):
    """README's picture shows what the story of README's first command leaves, and no page that was put up for it."""
    call = re.search(r'overview_picture "\$pictures/\S+?" \d+((?:[^\n]*\\\n)*[^\n|]*)', script)
    shown = re.findall(r'"(\$[^"]+)"', call[1]) if call else []
    return [f"platform/guide_pictures.sh: {name} of the overview is not of the story" for name in shown if not name.startswith("$story/")] or \
           ([] if shown else ["platform/guide_pictures.sh: makes no overview"])


def main():
    root = pathlib.Path(sys.argv[1])
    folders = [path for path in sorted(root.iterdir()) if path.is_dir() and not path.name.startswith((".", "build"))]
    files = [*sorted(root.glob("*.md")), *(file for folder in folders for file in sorted(folder.rglob("*.md")) if "node_modules" not in file.parts)]
    texts = {file.relative_to(root).as_posix(): file.read_text(encoding="utf-8") for file in files}
    if len(texts) < 50:
        sys.exit(f"only {len(texts)} pages were found: the check is not looking where they are")
    faults, links = selftest(), {}
    for name, text in texts.items():
        found, links[name] = faults_of(name, text, texts.get, lambda path: (root / path).exists())
        faults += found
    there = {path.name for path in (root / "docs/guides/pictures").iterdir()}
    script = (root / "platform/guide_pictures.sh").read_text(encoding="utf-8")
    shown = {name for text in texts.values() for name in re.findall(r"pictures/([\w-]+\.png)\)", text)}
    faults += faults_of_pictures(there, script, shown)
    if len(faults_of_pictures(there | {"by-hand.png"}, script, shown)) != len(faults_of_pictures(there, script, shown)) + 2:
        faults.append("a picture that no script makes is not seen")
    faults += faults_of_overview(script)
    if not faults_of_overview(script.replace('"$story/', '"$pictures/')) or not faults_of_overview(""):
        faults.append("an overview that is not of the story is not seen")
    reached, waiting = set(), list(STARTS)
    while waiting:
        name = waiting.pop()
        if name not in reached:
            reached.add(name)
            waiting += links.get(name, ())
    faults += [f"{name}: no page leads to it" for name in sorted(texts) if name.startswith("docs/") and name not in reached]
    if faults:
        sys.exit("\n".join(faults))
    print(f"{len(texts)} pages, {sum(map(len, links.values()))} links between them")


if __name__ == "__main__":
    main()
