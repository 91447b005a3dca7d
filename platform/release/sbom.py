"""Writes the bill of materials of the four programs as CycloneDX 1.5, from what they are really made of
(linked.py) and what the table of libraries says about it. Ends with an error where the two differ.

With a folder of packages each program's hash is that of the file that its package installs; without one, of the file
that was built, symbols and all, which nobody is given. The bill says which (`ebbline:hash-of`).

usage: sbom.py ROOT BUILD OUT [PACKAGES]
"""
import datetime
import hashlib
import io
import json
import os
import pathlib
import re
import subprocess
import sys
import tarfile
import urllib.parse
import uuid

from bom_rules import BUILT, faults_of_bom
from linked import parts_of, sources
from parts import FILES, OWN_LICENCE, PROGRAMS, covers, faults_of, read_parts, upstream


def project_version(root):
    return re.search(r"project\(ebbline VERSION (\S+)", (root / "CMakeLists.txt").read_text(encoding="utf-8"))[1]


def debian():
    release = pathlib.Path("/etc/os-release").read_text(encoding="utf-8")
    name, version = (re.search(rf'^{key}="?([^"\n]+)', release, re.M) for key in ("ID", "VERSION_ID"))
    return version[1] if name and version and name[1] == "debian" else None


def versions():
    """Source packages to their versions; that of the libraries, where another of their packages is older."""
    return {source: version for source, version, _ in sources().values()}


def differences(parts, found, release):
    """Where the table says something else than the programs."""
    faults = []
    rows = {package: part for part in parts for package in part.packages}
    installed = versions()
    for program, (kinds, _, fonts) in found.items():
        for source, kind in sorted(kinds.items()):
            part = rows.get(source)
            if part is None:
                faults.append(f"{program}: made with {source} ({kind}), which is in no row")
            elif program not in part.programs:
                faults.append(f"{program}: made with {source} ({kind}), but the row of {part.name} does not name the program")
        for part in parts:
            if program not in part.programs:
                continue
            real = fonts if part.linked == "inside" else any(kinds.get(package) == part.linked for package in part.packages)
            if not real:
                faults.append(f"{program}: the row of {part.name} says {part.linked}, the program says otherwise")
    for part in parts:
        here = [installed[package] for package in part.packages if package in installed]
        if release in part.version and not any(covers(part.version[release], upstream(version)) for version in here):
            faults.append(f"{part.name}: the table says {part.version[release]} in Debian {release}, installed is {', '.join(here) or 'nothing'}")
    return faults


def component_of(source, part, kind, release):
    version = versions()[source]
    quoted = urllib.parse.quote(version, safe="~")
    component = {"type": "library", "bom-ref": f"deb:{source}", "name": source, "version": version,
                 "purl": f"pkg:deb/debian/{urllib.parse.quote(source)}@{quoted}?arch=source&distro=debian-{release}",
                 "properties": [{"name": "ebbline:linked", "value": kind}]}
    if part:
        component["licenses"] = [{"expression": part.licence}]
        component["copyright"] = part.copyright
        component["properties"].append({"name": "ebbline:library", "value": part.name})
    return component


def program_hash(build, name, packages):
    """SHA-256 of a program, and what it is the hash of."""
    if packages is None:
        return hashlib.sha256((build / "bin" / name).read_bytes()).hexdigest(), BUILT
    for package in sorted(packages.glob("*.deb")):
        files = subprocess.run(["dpkg-deb", "--fsys-tarfile", package], check=True, capture_output=True).stdout
        with tarfile.open(fileobj=io.BytesIO(files)) as archive:
            if f"./usr/bin/{name}" in archive.getnames():
                program = archive.extractfile(f"./usr/bin/{name}").read()
                return hashlib.sha256(program).hexdigest(), f"usr/bin/{name} of {package.name}"
    sys.exit(f"no package in {packages} holds usr/bin/{name}")


def bill(root, build, parts, found, release, packages=None):
    rows = {package: part for part in parts for package in part.packages}
    version = project_version(root)
    own = [{"expression": OWN_LICENCE}]
    components, dependencies = {}, []
    for program, (kinds, indirect, fonts) in found.items():
        digest, digested = program_hash(build, FILES[program], packages)
        reference = f"program:{FILES[program]}"
        components[reference] = {"type": "application", "bom-ref": reference, "name": FILES[program], "version": version, "licenses": own,
                                 "hashes": [{"alg": "SHA-256", "content": digest}],
                                 "properties": [{"name": "ebbline:hash-of", "value": digested}]}
        inside = {package for part in parts if part.linked == "inside" and program in part.programs
                  for package in part.packages if package in versions()} if fonts else set()
        for source in sorted({*kinds, *inside}):
            part = rows[source]
            components.setdefault(f"deb:{source}", component_of(source, part, part.linked, release))
        for source in sorted(indirect):
            components.setdefault(f"deb:{source}", component_of(source, rows.get(source), "through others", release))
        dependencies.append({"ref": reference, "dependsOn": sorted(f"deb:{source}" for source in {*kinds, *inside, *indirect})})
    dependencies.insert(0, {"ref": "ebbline", "dependsOn": sorted(f"program:{FILES[program]}" for program in found)})
    moment = datetime.datetime.fromtimestamp(int(os.environ.get("SOURCE_DATE_EPOCH", datetime.datetime.now().timestamp())), datetime.timezone.utc)
    document = {"bomFormat": "CycloneDX", "specVersion": "1.5", "version": 1,
                "metadata": {"timestamp": moment.strftime("%Y-%m-%dT%H:%M:%SZ"),
                             "component": {"type": "application", "bom-ref": "ebbline", "name": "ebbline", "version": version, "licenses": own}},
                "components": [components[reference] for reference in sorted(components)], "dependencies": dependencies}
    content = json.dumps({**document, "metadata": document["metadata"]["component"]}, sort_keys=True)
    document["serialNumber"] = uuid.uuid5(uuid.NAMESPACE_URL, content).urn
    return document


def main():
    if len(sys.argv) not in (4, 5):
        sys.exit(__doc__)
    root, build, out, *packages = (pathlib.Path(argument) for argument in sys.argv[1:])
    release = debian()
    if release is None:
        sys.exit("the packages of this system are not Debian's")
    parts = read_parts(root)
    found = {program: parts_of(build, FILES[program]) for program in PROGRAMS if (build / "bin" / FILES[program]).is_file()}
    if missing := [FILES[program] for program in PROGRAMS if program not in found]:
        print(f"not built, and so not in the bill: {', '.join(missing)}", file=sys.stderr)
    if not found:
        sys.exit(f"no program is built in {build}")
    faults = faults_of(parts, root) + differences(parts, found, release)
    document = bill(root, build, parts, found, release, *packages) if not faults else None
    faults += faults_of_bom(document, parts) if document else []
    if faults:
        sys.exit("\n".join(faults))
    out.write_text(json.dumps(document, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    print(f"{len(document['components'])} components in {out}")


if __name__ == "__main__":
    main()
