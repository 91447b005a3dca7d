"""The table of libraries, docs/safety/libraries.csv, for everything that is made from it: the notices in
the programs, the bill of materials, and the checks. What it holds that a person reads stays there alone."""
import csv
import dataclasses
import pathlib
import re

TABLE = "docs/safety/libraries.csv"
TEXTS = "docs/licences"
FILES = {"diary": "ebbline-diary", "desk": "ebbline-desk", "hub": "ebbline-hub", "tool": "ebbline"}
PROGRAMS = tuple(FILES)
LINKED = ("shared", "static", "headers", "inside")  # inside: data that the program carries, as fonts
# The text of the project's own licence is LICENSE, at the top; it is not kept twice.
OWN_LICENCE = "GPL-3.0-or-later"


@dataclasses.dataclass(frozen=True)
class Part:
    name: str
    linked: str
    programs: tuple
    packages: tuple  # Debian source packages, of either release
    version: dict    # "12" and "13": upstream version, as far as it is pinned
    licence: str     # SPDX expression: of several on offer the one that is used
    copyright: str


def read_parts(root):
    with open(pathlib.Path(root) / TABLE, newline="", encoding="utf-8") as file:
        return [Part(row["library"], row["linked"], tuple(row["programs"].split()), tuple(row["packages"].split()),
                     {"12": row["Debian 12"], "13": row["Debian 13"]}, row["licence"], row["copyright"])
                for row in csv.DictReader(file)]


def licences_of(expression):
    """The identifiers in an SPDX expression; None if it is not one of the plain kind that the table uses."""
    tokens = expression.split()
    if not tokens or len(tokens) % 2 == 0:
        return None
    if any(token not in ("AND", "OR", "WITH") for token in tokens[1::2]):
        return None
    if any(not re.fullmatch(r"[A-Za-z0-9.+-]+", token) for token in tokens[0::2]):
        return None
    return tokens[0::2]


def text_of(root, identifier):
    """Where the text of a licence lies."""
    root = pathlib.Path(root)
    return root / "LICENSE" if identifier == OWN_LICENCE else root / TEXTS / f"{identifier}.txt"


def upstream(version):
    """1:6.4.2+dfsg-10 -> 6.4.2: without epoch, Debian's revision and its marks of a repacked source."""
    version = re.sub(r"^\d+:", "", version)
    version = version.rsplit("-", 1)[0] if "-" in version else version
    return re.split(r"[+~]", version)[0]


def covers(pinned, actual):
    """3.0 covers 3.0.19: what the table leaves open are point releases of a kept series."""
    wanted = pinned.split(".")
    return actual.split(".")[:len(wanted)] == wanted


def faults_of(parts, root):
    """What is wrong with the table itself."""
    found = []
    for part in parts:
        if part.linked not in LINKED:
            found.append(f"{TABLE}: {part.name}: linked is one of {', '.join(LINKED)}")
        if not part.programs or any(program not in PROGRAMS for program in part.programs):
            found.append(f"{TABLE}: {part.name}: programs are among {', '.join(PROGRAMS)}")
        if not part.copyright or not part.packages:
            found.append(f"{TABLE}: {part.name}: copyright or packages are missing")
        identifiers = licences_of(part.licence)
        if identifiers is None:
            found.append(f"{TABLE}: {part.name}: '{part.licence}' is no licence expression")
        for identifier in identifiers or []:
            if not text_of(root, identifier).is_file():
                found.append(f"{TABLE}: {part.name}: the text of {identifier} is missing in {TEXTS}")
    owners = [package for part in parts for package in part.packages]
    found += [f"{TABLE}: the package {package} stands in two rows" for package in sorted(set(owners)) if owners.count(package) > 1]
    return found
