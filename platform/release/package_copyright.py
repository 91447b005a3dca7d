"""Makes the statement of copyright of one Debian package: the project's own, and of the table of libraries what is inside the
program (linked statically, compiled in from headers, fonts). What is linked dynamically lies in packages of its own.

usage: package_copyright.py ROOT PROGRAM OUT
"""
import pathlib
import sys

from parts import FILES, PROGRAMS, licences_of, read_parts, text_of

# Debian keeps these for all packages.
COMMON = {"MPL-2.0": "MPL-2.0", "Apache-2.0": "Apache-2.0"}


def indented(text):
    return "\n".join(f" {line}" if line.strip() else " ." for line in text.strip().splitlines())


def main():
    root, program, out = pathlib.Path(sys.argv[1]), sys.argv[2], pathlib.Path(sys.argv[3])
    if program not in PROGRAMS:
        sys.exit(f"'{program}' is none of {', '.join(PROGRAMS)}")
    inside = [part for part in read_parts(root) if program in part.programs and part.linked != "shared"]
    blocks = [(root / "platform/packaging/copyright").read_text(encoding="utf-8").strip()]
    licences = sorted({licence for part in inside for licence in licences_of(part.licence)})
    blocks.append("\n".join([f"Files: usr/bin/{FILES[program]}", "Copyright: 2026 The Ebbline engineers",
                             *(f" {part.copyright}" for part in inside), f"License: {' and '.join(['GPL-3+', *licences])}",
                             "Comment: The program contains", *(f" {part.name}: {part.licence}; {part.copyright}" for part in inside)]))
    for licence in licences:
        text = (f" On Debian systems the text is in /usr/share/common-licenses/{COMMON[licence]}." if licence in COMMON
                else indented(text_of(root, licence).read_text(encoding="utf-8")))
        blocks.append(f"License: {licence}\n{text}")
    out.write_text("\n\n".join(blocks) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
