"""Every file of the project has one answer to "whose is it, and under which licence": .reuse/dep5. Each licence there and in the
table of libraries has its text, no text is without a use, and no paragraph without a file. What names other holders than the
project's, or is no text, needs a paragraph of its own.

usage: check_licences.py ROOT
"""
import pathlib
import re
import subprocess
import sys

root = pathlib.Path(sys.argv[1])
sys.dont_write_bytecode = True
sys.path.insert(0, str(root / "platform/release"))

from parts import OWN_LICENCE, TEXTS, faults_of, licences_of, read_parts, text_of  # noqa: E402

HOLDER = "The Ebbline engineers"
# The texts of licences are nobody's to license: REUSE asks for no answer either.
LICENCE_TEXT = re.compile(r"(^|/)LICENSE$|^docs/licences/[^/]+\.txt$")
# Somebody's line of copyright, not a sentence about copyright.
FOREIGN = re.compile(r"(?:Copyright|©)\s*(?:\(c\)|©)?\s*(?:\d{4})[-\d, ]*\s*(?:by\s+)?(?!The Ebbline)\S+ \S+", re.I)
# Where others' holders are told about: the tables and the packages' own statement.
ABOUT_OTHERS = {"docs/safety/libraries.csv"}


def files():
    if (root / ".git").exists():
        listed = subprocess.run(["git", "-C", str(root), "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
                                check=True, capture_output=True, text=True).stdout
        return sorted(name for name in listed.split("\0") if name and (root / name).is_file())
    return sorted(path.relative_to(root).as_posix() for path in root.rglob("*")
                  if path.is_file() and not re.match(r"build|\.git/", path.relative_to(root).as_posix()) and "node_modules" not in path.parts)


def paragraphs_of(text):
    found = []
    for block in re.split(r"\n\s*\n", text.strip()):
        fields = {}
        for line in re.sub(r"\n[ \t]+", " ", block).splitlines():
            key, _, value = line.partition(":")
            fields[key.strip()] = value.strip()
        found.append(fields)
    return found


def matches(pattern, name):
    return re.fullmatch(".*".join(re.escape(piece).replace(r"\?", ".") for piece in pattern.split("*")), name) is not None


def answer_for(name, paragraphs):
    index = None
    for number, fields in enumerate(paragraphs):
        if any(matches(pattern, name) for pattern in fields["Files"].split()):
            index = number
    return index


def faults_in(names, paragraphs, read):
    faults, used = [], set()
    for fields in paragraphs:
        for key in ("Files", "Copyright", "License"):
            if not fields.get(key):
                faults.append(f".reuse/dep5: a paragraph without {key}: {fields}")
        for licence in licences_of(fields.get("License", "")) or [""]:
            if not licence or not text_of(root, licence).is_file():
                faults.append(f".reuse/dep5: the text of '{licence}' is missing in {TEXTS}")
    if faults:
        return faults
    for name in names:
        if LICENCE_TEXT.search(name):
            continue
        index = answer_for(name, paragraphs)
        if index is None:
            faults.append(f"{name}: nothing says whose it is and under which licence")
            continue
        used.add(index)
        content = read(name)
        ours = paragraphs[index]["Copyright"].endswith(HOLDER)
        if b"\0" in content and "Comment" not in paragraphs[index]:
            faults.append(f"{name}: is no text, and nothing says where it comes from")
        elif ours and name not in ABOUT_OTHERS and (other := FOREIGN.search(content.decode("utf-8", "replace"))):
            faults.append(f"{name}: names another holder ({other[0]}) and has the project's answer")
    faults += [f".reuse/dep5: no file is meant by '{fields['Files']}'" for index, fields in enumerate(paragraphs) if index not in used]
    return faults


def texts(paragraphs, parts):
    wanted = {licence for fields in paragraphs for licence in licences_of(fields["License"])}
    wanted |= {licence for part in parts for licence in licences_of(part.licence) or []}
    there = {path.stem for path in (root / TEXTS).glob("*.txt")} | {OWN_LICENCE}
    return [f"{TEXTS}: nothing uses {licence}" for licence in sorted(there - wanted)]


def selftest(paragraphs):
    ours = {"Files": "a/*", "Copyright": f"2026 {HOLDER}", "License": OWN_LICENCE}
    holder = "Copyright " + "(c) 2019 Some Body"
    cases = [("a file without an answer", ["b/x"], [ours], b""), ("another holder", ["a/x"], [ours], holder.encode()),
             ("a picture from nowhere", ["a/x"], [ours], b"\x89\0"), ("a licence without a text", ["a/x"], [{**ours, "License": "XYZ-1.0"}], b""),
             ("a paragraph for nothing", ["a/x"], [ours, {**ours, "Files": "c/*"}], b""), ("a paragraph without a holder", ["a/x"], [{**ours, "Copyright": ""}], b"")]
    faults = [f"{what} is not seen" for what, names, given, content in cases if not faults_in(names, given, lambda _: content)]
    if faults_in(["a/x"], [ours], lambda _: b"words"):
        faults.append("a sound file is refused")
    if len(paragraphs) < 3:
        faults.append(".reuse/dep5 was not read")
    return faults


def main():
    names = files()
    if len(names) < 500:
        sys.exit(f"only {len(names)} files were found: the check is not looking where they are")
    head, *paragraphs = paragraphs_of((root / ".reuse/dep5").read_text(encoding="utf-8"))
    parts = read_parts(root)
    faults = selftest(paragraphs) + faults_of(parts, root)
    if not head.get("Format", "").endswith("/copyright-format/1.0/"):
        faults.append(".reuse/dep5: the first paragraph names no format")
    faults += faults_in(names, paragraphs, lambda name: (root / name).read_bytes())
    faults += texts(paragraphs, parts) if not faults else []
    if faults:
        sys.exit("\n".join(faults))
    print(f"{len(names)} files, {len(paragraphs)} answers")


if __name__ == "__main__":
    main()
