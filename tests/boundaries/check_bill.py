"""Makes the bill of materials of what is built, and holds it and its checks to their word: every way to spoil it that is
listed below has to be seen, and so has a table that names one library too few or too many.

usage: check_bill.py ROOT BUILD OUT
"""
import copy
import dataclasses
import hashlib
import json
import pathlib
import subprocess
import sys
import tempfile

root, build, out = (pathlib.Path(argument) for argument in sys.argv[1:])
sys.path.insert(0, str(root / "platform/release"))
sys.dont_write_bytecode = True

import sbom  # noqa: E402
from bom_rules import faults_of_bom  # noqa: E402
from parts import PROGRAMS, faults_of, read_parts  # noqa: E402


def library(bom):
    return next(component for component in bom["components"] if component["name"] == "libsodium")


WAYS = [
    ("without a format", lambda bom: bom.pop("bomFormat")),
    ("of another version of the standard", lambda bom: bom.update(specVersion="9")),
    ("with a serial number that is none", lambda bom: bom.update(serialNumber="seven")),
    ("with a time that is none", lambda bom: bom["metadata"].update(timestamp="noon")),
    ("with a key of nobody", lambda bom: library(bom).update(threads=6)),
    ("with a library without a version", lambda bom: library(bom).pop("version")),
    ("with a library without a package", lambda bom: library(bom).update(purl="libsodium")),
    ("with a licence that is none", lambda bom: library(bom).update(licenses=[{"expression": "AND"}])),
    ("with another licence than the table's", lambda bom: library(bom).update(licenses=[{"expression": "MIT"}])),
    ("with a holder who is not the table's", lambda bom: library(bom).update(copyright="nobody")),
    ("with a program without a hash", lambda bom: next(c for c in bom["components"] if c["type"] == "application").pop("hashes")),
    ("with a hash of nobody says what", lambda bom: next(c for c in bom["components"] if c["type"] == "application").pop("properties")),
    ("with a reference twice", lambda bom: bom["components"].append(copy.deepcopy(library(bom)))),
    ("with a dependency on nothing", lambda bom: bom["dependencies"][0]["dependsOn"].append("deb:nothing")),
    ("with a component that nothing leads to", lambda bom: bom["components"].append({**copy.deepcopy(library(bom)), "bom-ref": "deb:lonely"})),
]


def hashes_of_packages(folder):
    """Of stand-ins for packages: the hash is that of the file inside, and a program that no package holds is refused."""
    for name in sbom.FILES.values():
        inside = folder / name
        (inside / "usr/bin").mkdir(parents=True)
        (inside / "DEBIAN").mkdir()
        (inside / "usr/bin" / name).write_text(f"stripped {name}")
        (inside / "DEBIAN/control").write_text(f"Package: {name}\nVersion: 1.0\nArchitecture: all\nMaintainer: Nobody <nobody@ebbline.invalid>\nDescription: none\n")
        subprocess.run(["dpkg-deb", "--build", inside, folder / f"{name}_1.0_all.deb"], check=True, stdout=subprocess.DEVNULL)
    for name in sbom.FILES.values():
        digest, said = sbom.program_hash(build, name, folder)
        if digest != hashlib.sha256(f"stripped {name}".encode()).hexdigest() or said != f"usr/bin/{name} of {name}_1.0_all.deb":
            sys.exit(f"{name}: the hash is not that of the package's file: {said}")
    (folder / "ebbline-hub_1.0_all.deb").unlink()
    try:
        sbom.program_hash(build, "ebbline-hub", folder)
    except SystemExit:
        return
    sys.exit("a program that no package holds is not seen")


def main():
    with tempfile.TemporaryDirectory() as folder:
        hashes_of_packages(pathlib.Path(folder))
    release = sbom.debian()
    parts = read_parts(root)
    programs = [program for program in PROGRAMS if (build / "bin" / sbom.FILES[program]).is_file()]
    if len(programs) < len(PROGRAMS):
        sys.exit(f"built are only {', '.join(programs)}")
    found = {program: sbom.parts_of(build, sbom.FILES[program]) for program in programs}
    faults = faults_of(parts, root) + sbom.differences(parts, found, release)
    if faults:
        sys.exit("\n".join(faults))
    bom = sbom.bill(root, build, parts, found, release)
    faults = faults_of_bom(bom, parts)
    if faults:
        sys.exit("\n".join(faults))
    for what, spoil in WAYS:
        spoilt = copy.deepcopy(bom)
        spoil(spoilt)
        if not faults_of_bom(spoilt, parts):
            sys.exit(f"a bill {what} is not refused")
    without = [part for part in parts if part.name != "libsodium"]
    if not any("libsodium" in fault for fault in sbom.differences(without, found, release)):
        sys.exit("a library that is linked and in no row is not seen")
    more = [dataclasses.replace(part, programs=PROGRAMS) if part.name == "qrencode" else part for part in parts]
    if not any("qrencode" in fault for fault in sbom.differences(more, found, release)):
        sys.exit("a row that names a program which does not link it is not seen")
    older = [dataclasses.replace(part, version={release: "0.0.1"}) if part.name == "Qt" else part for part in parts]
    if not any(fault.startswith("Qt:") for fault in sbom.differences(older, found, release)):
        sys.exit("a version that is not the table's is not seen")
    out.write_text(json.dumps(bom, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    print(f"{len(bom['components'])} components, {len(WAYS) + 3} ways to spoil them seen")


if __name__ == "__main__":
    main()
