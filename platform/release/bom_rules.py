"""What a bill of materials has to keep to: of CycloneDX 1.5 the rules that our own use, and that it says what the
table of libraries says. The whole published schema is another validator's: platform/release/validate_bill.sh."""
import re

from parts import licences_of

TOP = {"bomFormat", "specVersion", "serialNumber", "version", "metadata", "components", "dependencies"}
COMPONENT = {"type", "bom-ref", "name", "version", "purl", "licenses", "copyright", "hashes", "properties"}
URN = r"urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}"
PURL = r"pkg:deb/debian/[A-Za-z0-9.%-]+@[A-Za-z0-9.~%-]+\?arch=source&distro=debian-\d+"
BUILT = "the file as it was built, with its symbols; no package holds it"
PACKED = r"usr/bin/[a-z-]+ of [a-z-]+_[A-Za-z0-9.+~-]+_[a-z0-9]+\.deb"
LINKED = {"shared", "static", "headers", "inside", "through others"}


def faults_of_component(component, rows):
    name = component.get("name") or "(no name)"
    found = [f"{name}: {key} is unknown" for key in component.keys() - COMPONENT]
    found += [f"{name}: {key} is missing" for key in ("name", "version", "bom-ref") if not component.get(key)]
    if component.get("type") not in ("application", "library"):
        found.append(f"{name}: the type is {component.get('type')}")
    for licence in component.get("licenses", []):
        if licence.keys() != {"expression"} or licences_of(licence["expression"]) is None:
            found.append(f"{name}: {licence} is no licence")
    if component.get("type") == "library":
        if not re.fullmatch(PURL, component.get("purl", "")):
            found.append(f"{name}: {component.get('purl')} names no package")
        properties = {entry["name"]: entry["value"] for entry in component.get("properties", [])}
        linked = properties.get("ebbline:linked")
        if linked not in LINKED:
            found.append(f"{name}: how it is linked is missing")
        row = rows.get(component.get("name"))
        if row is None and linked != "through others":
            found.append(f"{name}: linked by a program and in no row of the table")
        if row and (component.get("licenses") != [{"expression": row.licence}] or component.get("copyright") != row.copyright):
            found.append(f"{name}: licence or copyright is not the table's")
    elif component.get("bom-ref") != "ebbline":
        hashes = component.get("hashes", [])
        if len(hashes) != 1 or hashes[0].get("alg") != "SHA-256" or not re.fullmatch(r"[0-9a-f]{64}", hashes[0].get("content", "")):
            found.append(f"{name}: no SHA-256")
        said = [entry["value"] for entry in component.get("properties", []) if entry["name"] == "ebbline:hash-of"]
        if len(said) != 1 or not (said[0] == BUILT or re.fullmatch(PACKED, said[0])):
            found.append(f"{name}: what the hash is of is not said")
    return found


def faults_of_bom(bom, parts):
    found = [f"{key} is missing" for key in TOP - bom.keys()] + [f"{key} is unknown" for key in bom.keys() - TOP]
    if found:
        return found
    if (bom["bomFormat"], bom["specVersion"]) != ("CycloneDX", "1.5") or not isinstance(bom["version"], int) or bom["version"] < 1:
        found.append("not a CycloneDX 1.5 document")
    if not re.fullmatch(URN, bom["serialNumber"]):
        found.append("the serial number is no UUID")
    if not re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", bom["metadata"].get("timestamp", "")):
        found.append("the time is none")
    rows = {package: part for part in parts for package in part.packages}
    components = [bom["metadata"].get("component", {}), *bom["components"]]
    for component in components:
        found += faults_of_component(component, rows)
    references = [component.get("bom-ref") for component in components]
    if len(set(references)) != len(references):
        found.append("a reference stands there twice")
    edges = {}
    for dependency in bom["dependencies"]:
        if dependency["ref"] in edges:
            found.append(f"the dependencies of {dependency['ref']} stand there twice")
        edges[dependency["ref"]] = dependency.get("dependsOn", [])
    named = set(edges).union(*edges.values())
    found += [f"{reference} is named and not there" for reference in sorted(named - set(references))]
    reached, waiting = set(), ["ebbline"]
    while waiting:
        reference = waiting.pop()
        if reference not in reached:
            reached.add(reference)
            waiting += edges.get(reference, [])
    found += [f"nothing leads to {reference}" for reference in references if reference not in reached]
    return found
