"""The version stands in the top CMakeLists.txt alone. What was made from it says the same: descriptions for software catalogues,
manuals, Debian's changelog, what the programs answer. No other file names another one, and the list of changes begins with it.

usage: check_version.py ROOT BUILD PROGRAM...
"""
import datetime
import email.utils
import pathlib
import re
import subprocess
import sys

OURS = re.compile(r"\bebbline[a-z-]*[\s\"'(,:]*v?(\d+\.\d+\.\d+)\b", re.I)
TEXT = {".txt", ".md", ".h", ".cpp", ".qml", ".py", ".sh", ".cmake", ".in", ".csv", ".desktop", ".service", ".ts", ".mjs", ".js"}


def stated(text, pattern):
    return re.findall(pattern, text, re.M)


def differing(wanted, where, versions):
    if not versions:
        return [f"{where}: no version"]
    return [f"{where}: {version} instead of {wanted}" for version in versions if version != wanted]


def made(build):
    """Where a version was written when building -> the versions there."""
    folder = build / "platform/packaging"
    found = {"Debian's changelog": stated((folder / "changelog").read_text(encoding="utf-8"), r"^ebbline \(([^)]*)\)")}
    for file in sorted(folder.glob("*.metainfo.xml")):
        found[file.name] = stated(file.read_text(encoding="utf-8"), r'<release version="([^"]*)"')
    for file in sorted(folder.glob("*.1")):
        found[file.name] = stated(file.read_text(encoding="utf-8"), r'^\.TH .*"Ebbline ([^"]*)"')
    return found


def files_of(root):
    for path in sorted(root.rglob("*")):
        parts = path.relative_to(root).parts
        if path.suffix in TEXT and path.is_file() and not parts[0].startswith((".", "build")) and "node_modules" not in parts:
            yield path


def dates(root, released):
    """The dates of the package: one day, written in two forms; a version that is not released calls itself development."""
    text = (root / "platform/packaging/CMakeLists.txt").read_text(encoding="utf-8")
    day = datetime.date.fromisoformat(re.search(r"EBBLINE_RELEASE_DATE (\S+)\)", text)[1])
    long = re.search(r'EBBLINE_CHANGELOG_DATE "([^"]+)"', text)[1]
    moment = email.utils.parsedate_to_datetime(long)
    faults = []
    if moment.date() != day or email.utils.format_datetime(moment) != long:
        faults.append(f"platform/packaging: {day} and {long} are not one day")
    for file in sorted((root / "platform/packaging").glob("*.metainfo.xml.in")):
        kind = stated(file.read_text(encoding="utf-8"), r'<release [^>]*type="([^"]*)"')
        if kind != (["stable"] if released else ["development"]):
            faults.append(f"{file.name}: the release is called {kind}")
    return faults


def faults_of(root, build, wanted, answers):
    faults = []
    for where, versions in {**made(build), **answers}.items():
        faults += differing(wanted, where, versions)
    for path in files_of(root):
        versions = OURS.findall(path.read_text(encoding="utf-8", errors="replace"))
        faults += differing(wanted, path.relative_to(root).as_posix(), versions) if versions else []
    changes = re.search(r"^## (\S+?)(, not released)?$", (root / "docs/changelog.md").read_text(encoding="utf-8"), re.M)
    faults += differing(wanted, "docs/changelog.md", [changes[1]] if changes else [])
    return faults + dates(root, changes and not changes[2])


def main():
    root, build = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
    top = stated((root / "CMakeLists.txt").read_text(encoding="utf-8"), r"VERSION (\d+\.\d+\.\d+) LANGUAGES")
    if len(top) != 1:
        sys.exit("CMakeLists.txt states no version, or several")
    answers = {}
    for program in sys.argv[3:]:
        said = subprocess.run([program, "--version"], capture_output=True, text=True, timeout=60, check=True).stdout
        answers[pathlib.Path(program).name] = re.findall(r"\d+\.\d+\.\d+\S*", said)
    faults = faults_of(root, build, top[0], answers)
    # With another version each of the places has to be noticed.
    places = {fault.split(":")[0] for fault in faults_of(root, build, "99.9.9", answers)}
    faults += [f"a wrong version in {where} is not seen" for where in {*made(build), *answers, "docs/changelog.md"} - places]
    if not differing("1.2.3", "somewhere", OURS.findall("made by ebbline-desk " + "1.2.4")):
        faults.append("a wrong version in a text is not seen")
    if faults:
        sys.exit("\n".join(faults))
    print(f"{top[0]} in {len(made(build)) + len(answers)} places that were made from it")


if __name__ == "__main__":
    main()
