"""check_form.py ROOT CMAKE BUILD: how the build takes shape for a phone.

Configured as for a phone, on this machine, there is the diary, and nothing that a phone has not: no hub, no desk,
no PostgreSQL (D-Bus is there all the same: Qt for Linux brings it along). And the two functions that make packages
set what they should, with files that exist. BUILD, the ordinary build around this check, has to look wrong to it.
"""
import subprocess
import sys
import tempfile
from pathlib import Path

from check import Faults, broken_copy, finish

ROOT = Path(sys.argv[1])
CMAKE, BUILD = sys.argv[2], Path(sys.argv[3])
WANTED = {"ebbline-diary", "platform_device", "platform_notifications", "platform_camera", "core_vault"}
UNWANTED = {"ebbline-hub", "ebbline-desk", "ebbline", "platform_postgres", "platform_server", "vault_test"}


def run(*command):
    done = subprocess.run(command, capture_output=True, text=True, timeout=500)
    return done.returncode == 0, done.stdout + done.stderr


def configured():
    build = tempfile.mkdtemp(prefix="phone-form-")
    fine, text = run(CMAKE, "-S", str(ROOT), "-B", build, "-G", "Ninja", "-DEBBLINE_PHONE=ON", "-DCMAKE_BUILD_TYPE=Release")
    if not fine:
        sys.exit(f"not configured: {text}")
    return Path(build)


def shape(build):
    faults = Faults()
    fine, text = run(CMAKE, "--build", str(build), "--target", "help")
    targets = {line.split(":")[0] for line in text.splitlines() if ": " in line}
    if faults.unless(fine, "the targets could not be listed"):
        faults.unless(WANTED <= targets, f"missing are {sorted(WANTED - targets)}")
        faults.unless(not UNWANTED & targets, f"too many are {sorted(UNWANTED & targets)}")
    cache = (build / "CMakeCache.txt").read_text()
    for library in ("Qt6Test_DIR", "LIBPQ_FOUND", "CLI11_DIR", "QRENCODE_FOUND"):
        faults.unless(f"\n{library}:" not in cache, f"{library.split('_')[0]} is looked for")
    return faults.all


def packages(root):
    faults = Faults()
    build = Path(tempfile.mkdtemp(prefix="form-"))
    fine, text = run(CMAKE, "-S", str(ROOT / "tests/platform/phones/form"), "-B", str(build), "-G", "Ninja", f"-DROOT={root}")
    if not faults.unless(fine, f"the functions do not run: {text}"):
        return faults.all
    set_to = dict(line.split("=", 1) for line in (build / "form.txt").read_text().splitlines())
    exact = {"QT_ANDROID_MIN_SDK_VERSION": "28", "QT_ANDROID_TARGET_SDK_VERSION": "34", "QT_ANDROID_VERSION_NAME": "1.2.3",
             "QT_ANDROID_VERSION_CODE": "10203", "MACOSX_BUNDLE": "TRUE", "MACOSX_BUNDLE_GUI_IDENTIFIER": "invalid.ebbline.diary",
             "MACOSX_BUNDLE_BUNDLE_VERSION": "1.2.3", "XCODE_ATTRIBUTE_IPHONEOS_DEPLOYMENT_TARGET": "16.0"}
    for name, value in exact.items():
        faults.unless(set_to.get(name) == value, f"{name} is {set_to.get(name)}, wanted is {value}")
    sources = set_to.get("SOURCES", "").split(";")
    faults.unless(len([file for file in sources if file.endswith(".lproj/InfoPlist.strings")]) == 8, "not every language is packed")
    for name in ("PrivacyInfo.xcprivacy", "Assets.xcassets"):
        faults.unless(any(file.endswith(name) for file in sources), f"{name} is not packed")
    for file in [set_to.get("MACOSX_BUNDLE_INFO_PLIST", ""), set_to.get("XCODE_ATTRIBUTE_CODE_SIGN_ENTITLEMENTS", ""), *sources,
                 set_to.get("QT_ANDROID_PACKAGE_SOURCE_DIR", "") + "/AndroidManifest.xml"]:
        faults.unless(Path(file).exists(), f"{file} does not exist")
    return faults.all


def broken(relative, old, new):
    copy = broken_copy(ROOT / "platform", relative, old, new)
    root = copy.parent / "root"
    root.mkdir()
    (root / "platform").symlink_to(copy)
    return packages(root)


finish("The form of a phone", shape(configured()) + packages(ROOT), {
    "the form of a desktop": shape(BUILD),
    "papers that are not packed": broken("ios/diary.cmake", "${folder}/PrivacyInfo.xcprivacy ", ""),
    "rights that are not signed in": broken("ios/diary.cmake", "Ebbline.entitlements", "Entitlements.plist"),
    "a package that is somewhere else": broken("android/diary.cmake", "platform/android/package", "platform/android/papers"),
    "an older Android": broken("android/diary.cmake", "QT_ANDROID_MIN_SDK_VERSION 28", "QT_ANDROID_MIN_SDK_VERSION 23"),
})
