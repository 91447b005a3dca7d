"""check_bridges.py ROOT CLANG QT_HEADERS JNI_HEADERS: the C++ and Objective-C++ halves of the bridges, by a
compiler that only reads.

Android's: against Qt's own headers for JNI, and the jni.h of a JDK. iOS's: Objective-C++ with automatic
reference counting, against the declarations in stubs/apple; an unknown class, selector or label is an error there.
Skipped without clang, and its Android part without a JDK.
"""
import subprocess
import sys
from pathlib import Path

from check import SKIPPED, Faults, broken_copy, finish

ROOT = Path(sys.argv[1])
CLANG, QT, JNI = sys.argv[2:5]
COMMON = ["-std=c++23", "-fsyntax-only", "-fPIC", "-Wall", "-Wextra", "-Wpedantic", "-Wshadow", "-Wconversion", "-Wnon-virtual-dtor",
          "-Woverloaded-virtual", "-Wno-deprecated-declarations", "-Werror", "-isystem", QT, "-isystem", f"{QT}/QtCore"]
# Qt's own switch for its JNI classes; the rest of Qt has taken its shape as Linux before. JDK's jni.h, other
# than Android's, has names that are not const.
ANDROID = ["-include", "QtCore/qglobal.h", "-DQ_OS_ANDROID", "-Wold-style-cast", "-Wno-writable-strings", "-isystem", JNI,
           "-isystem", f"{JNI}/linux"]
IOS = ["-x", "objective-c++", "-fobjc-arc", "-fblocks", "-fobjc-runtime=ios-16.0", "-isystem", str(ROOT / "tests/platform/phones/stubs/apple")]
if CLANG.endswith("NOTFOUND"):
    print("no clang here")
    sys.exit(SKIPPED)


def read(file, kind, faults):
    # The project's own headers come from the tree, also for a broken copy.
    done = subprocess.run([CLANG, *COMMON, *kind, "-I", str(ROOT), str(file)], capture_output=True, text=True, timeout=600)
    faults.unless(done.returncode == 0, f"{file.name}: {done.stderr}")


def read_all(folder, ending, kind):
    faults = Faults()
    files = sorted(folder.glob(f"*{ending}"))
    faults.unless(len(files) >= 3, f"only {len(files)} files in {folder}")
    for file in files:
        read(file, kind, faults)
    return faults.all


def broken(folder, name, kind, old, new):
    faults = Faults()
    read(broken_copy(ROOT / folder, name, old, new) / name, kind, faults)
    return faults.all


faults = read_all(ROOT / "platform/ios", ".mm", IOS)
BREAKAGES = {
    "a selector that iOS does not have": broken("platform/ios", "bell_requests.mm", IOS, "repeats:NO", "again:NO"),
    "a secret of the wrong type": broken("platform/ios", "keychain_keeper.mm", IOS, "crypto::Secret::from({", "std::string({"),
    "a block that answers otherwise": broken("platform/ios", "ios_ringer.mm", IOS, "completionHandler:^(BOOL granted, NSError* error)",
                                             "completionHandler:^(NSError* granted, NSError* error)"),
    "a bridge without its cast": broken("platform/ios", "keychain_keeper.mm", IOS, "(__bridge_transfer NSData*)found", "(NSData*)found"),
}
if JNI.endswith("NOTFOUND"):
    print("no jni.h here: Android's half was not read")
else:
    faults += read_all(ROOT / "platform/android", ".cpp", ANDROID)
    BREAKAGES["a call that Qt does not have"] = broken("platform/android", "android_ringer.cpp", ANDROID, "registerNativeMethods", "registerNatives")
    BREAKAGES["an override of nothing"] = broken("platform/android", "android_keeper.cpp", ANDROID, "Done forget() override", "Done forgetAll() override")
finish("Bridges", faults, BREAKAGES)
