"""Holds the manifest of the diary's sandbox to what docs/guides/flatpak.md lists: it is one JSON document, what it names is there,
and it asks for those permissions and for no other. Broken manifests are tried in the same run: one that passes is a failure.

usage: check_flatpak.py ROOT
"""
import copy
import json
import pathlib
import re
import sys

MANIFEST = "platform/packaging/flatpak/invalid.ebbline.diary.json"
GUIDE = "docs/guides/flatpak.md"
# What no list may make right: files of the person, names on a bus, all devices, a program that runs unseen.
NEVER = re.compile(r"^--(filesystem|talk-name|own-name|system-talk-name|system-own-name|persist|allow|device=all|socket=(?!wayland$|fallback-x11$)|share=(?!network$|ipc$))")
KEYS = {"app-id", "runtime", "runtime-version", "sdk", "command", "rename-desktop-file", "rename-icon", "finish-args", "modules"}


def listed(guide):
    return re.findall(r"(?m)^\| `(--[^`]+)` \|", guide)


def faults_of(manifest, permissions, root):
    faults = []
    if set(manifest) != KEYS:
        faults.append(f"other keys than {sorted(KEYS)}: {sorted(set(manifest) ^ KEYS)}")
        return faults
    if (manifest["runtime"], manifest["runtime-version"], manifest["sdk"]) != ("org.kde.Platform", "6.8", "org.kde.Sdk"):
        faults.append("another runtime than the guide's")
    asked = manifest["finish-args"]
    faults += [f"asks for {each}, which the guide does not list" for each in asked if each not in permissions]
    faults += [f"does not ask for {each}, which the guide lists" for each in permissions if each not in asked]
    faults += [f"{each} is not for this program" for each in {*asked, *permissions} if NEVER.match(each)]
    folder = root / MANIFEST
    packaging = root / "platform/packaging"
    desktop = packaging / manifest["rename-desktop-file"]
    entry = desktop.read_text(encoding="utf-8") if desktop.is_file() else ""
    if not re.search(rf"(?m)^Exec={re.escape(manifest['command'])}( |$)", entry):
        faults.append(f"{desktop.name}: not there, or it does not start {manifest['command']}")
    if not re.search(rf"(?m)^Icon={re.escape(manifest['rename-icon'])}$", entry) or not (packaging / "icons" / f"{manifest['rename-icon']}.svg").is_file():
        faults.append(f"the icon {manifest['rename-icon']} is not there, or not the entry's")
    if f"<id>{manifest['app-id']}</id>" not in (packaging / "invalid.ebbline.diary.metainfo.xml.in").read_text(encoding="utf-8"):
        faults.append("another name than the catalogue's")
    for module in manifest["modules"]:
        for source in module["sources"]:
            if source["type"] == "dir":
                if not (folder.parent / source["path"] / "CMakeLists.txt").is_file():
                    faults.append(f"{module['name']}: no tree at {source['path']}")
            elif not re.fullmatch(r"[0-9a-f]{64}", source.get("sha256", "")) or not source.get("url", "").startswith("https://"):
                faults.append(f"{module['name']}: a source without an address or a checksum")
    if not manifest["modules"] or f"--target {manifest['command']} " not in " ".join(manifest["modules"][-1]["build-commands"]) + " ":
        faults.append("the last module does not build the diary")
    return faults


def without_a_tree(manifest):
    manifest["modules"][-1]["sources"][0]["path"] = "../../../.."


SPOILT = [
    ("that reads the home", lambda m: m["finish-args"].append("--filesystem=home")),
    ("that talks to the keyring", lambda m: m["finish-args"].append("--talk-name=org.freedesktop.secrets")),
    ("that may use every device", lambda m: m["finish-args"].append("--device=all")),
    ("that hears the whole bus", lambda m: m["finish-args"].append("--socket=session-bus")),
    ("without the network", lambda m: m["finish-args"].remove("--share=network")),
    ("over another runtime", lambda m: m.update({"runtime-version": "5.15"})),
    ("that starts another program", lambda m: m.update(command="ebbline-desk")),
    ("with an icon that is not there", lambda m: m.update({"rename-icon": "nothing"})),
    ("under another name", lambda m: m.update({"app-id": "invalid.ebbline.desk"})),
    ("of another tree", without_a_tree),
    ("with a source without a checksum", lambda m: m["modules"][0]["sources"].append({"type": "archive", "url": "https://example.invalid/a.tar.gz"})),
    ("without modules", lambda m: m.update(modules=[])),
    ("with a door of another kind", lambda m: m.update({"add-extensions": {}})),
]


def main():
    root = pathlib.Path(sys.argv[1])
    manifest = json.loads((root / MANIFEST).read_text(encoding="utf-8"))
    permissions = listed((root / GUIDE).read_text(encoding="utf-8"))
    if len(permissions) < 3 or len(set(permissions)) != len(permissions):
        sys.exit(f"{GUIDE}: the list of permissions is not found, or names one twice")
    if faults := faults_of(manifest, permissions, root):
        sys.exit("\n".join(f"{MANIFEST}: {fault}" for fault in faults))
    for what, spoil in SPOILT:
        broken = copy.deepcopy(manifest)
        spoil(broken)
        if not faults_of(broken, permissions, root):
            sys.exit(f"a manifest {what} is not refused")
    wider = copy.deepcopy(manifest)
    wider["finish-args"].append("--filesystem=home")
    if not faults_of(wider, [*permissions, "--filesystem=home"], root):
        sys.exit("a guide that lists the home makes it right")
    print(f"{len(permissions)} permissions, {len(SPOILT) + 1} broken manifests refused")


if __name__ == "__main__":
    main()
