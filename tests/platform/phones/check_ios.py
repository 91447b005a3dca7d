"""check_ios.py ROOT: the papers of the iOS bundle.

Every plist reads, has what it needs and nothing more, and each language asks for the camera in its own words.
"""
import json
import plistlib
import re
import struct
import sys
from pathlib import Path

from check import Faults, broken_copy, finish

ROOT = Path(sys.argv[1])
IOS = ROOT / "platform/ios"
LANGUAGES = {"en", "de", "es", "fr", "pt-BR", "tr", "ar", "zh-Hans"}
PLACES = {  # a place for a value of CMake's
    "CFBundleExecutable": "${MACOSX_BUNDLE_EXECUTABLE_NAME}",
    "CFBundleIdentifier": "${MACOSX_BUNDLE_GUI_IDENTIFIER}",
    "CFBundleName": "${MACOSX_BUNDLE_BUNDLE_NAME}",
    "CFBundleShortVersionString": "${MACOSX_BUNDLE_SHORT_VERSION_STRING}",
    "CFBundleVersion": "${MACOSX_BUNDLE_BUNDLE_VERSION}",
}
# The reasons that Apple lists ("Describing use of required reason API"), as far as we give them.
REASONS = {
    "NSPrivacyAccessedAPICategoryFileTimestamp": ["C617.1"],
    "NSPrivacyAccessedAPICategorySystemBootTime": ["35F9.1"],
    "NSPrivacyAccessedAPICategoryUserDefaults": ["CA92.1"],
}
COLLECTED = {"NSPrivacyCollectedDataTypeHealth", "NSPrivacyCollectedDataTypeOtherUserContent", "NSPrivacyCollectedDataTypePhotosorVideos"}
STRING = re.compile(r'^"(\w+)" = "([^"\\]+)";$')


def read(path, faults):
    try:
        return plistlib.loads(path.read_bytes())
    except Exception as error:  # plistlib raises what its parser raises
        faults.unless(False, f"{path.name}: {error}")
        return {}


def read_info(folder, faults):
    info = read(folder / "Info.plist", faults)
    for key, place in PLACES.items():
        faults.unless(info.get(key) == place, f"Info.plist: {key} is {info.get(key)!r}")
    asks = {key for key in info if key.endswith("UsageDescription")}
    faults.unless(asks == {"NSCameraUsageDescription"}, f"Info.plist asks for {sorted(asks)}")
    faults.unless(set(info.get("CFBundleLocalizations", [])) == LANGUAGES, "Info.plist: the languages are not those of the diary")
    faults.unless("UILaunchScreen" in info, "Info.plist: no launch screen, so pages would not fill the phone")
    faults.unless(info.get("UIFileSharingEnabled") is False and "LSSupportsOpeningDocumentsInPlace" not in info, "Info.plist: files are open to a computer")
    faults.unless("UIBackgroundModes" not in info, "Info.plist: the program wants to run in the background")
    faults.unless("NSAppTransportSecurity" not in info, "Info.plist: rules of the network are loosened")
    faults.unless(isinstance(info.get("ITSAppUsesNonExemptEncryption"), bool), "Info.plist does not say whether it encrypts")
    return info


def read_languages(folder, info, faults):
    there = {path.parent.name.removesuffix(".lproj") for path in folder.glob("*.lproj/InfoPlist.strings")}
    faults.unless(there == LANGUAGES, f"words are there in {sorted(there)}")
    texts = {}
    for language in there:
        words = {}
        for line in (folder / f"{language}.lproj/InfoPlist.strings").read_text(encoding="utf-8").splitlines():
            if line and not line.startswith("/*"):
                match = STRING.match(line)
                if faults.unless(match, f"{language}: not a line of a strings file: {line}"):
                    words[match[1]] = match[2]
        faults.unless(set(words) == {"NSCameraUsageDescription", "CFBundleDisplayName"}, f"{language}: has {sorted(words)}")
        texts[language] = words.get("NSCameraUsageDescription", "")
    faults.unless(len(set(texts.values())) == len(texts), "two languages say the same: one is not translated")
    faults.unless(texts.get("en") == info.get("NSCameraUsageDescription"), "English says something else than Info.plist")


def read_rights(folder, faults):
    rights = read(folder / "Ebbline.entitlements", faults)
    faults.unless(rights == {"com.apple.developer.default-data-protection": "NSFileProtectionComplete"}, f"entitlements are {rights}")


def read_privacy(folder, faults):
    privacy = read(folder / "PrivacyInfo.xcprivacy", faults)
    faults.unless(privacy.get("NSPrivacyTracking") is False and privacy.get("NSPrivacyTrackingDomains") == [], "the bundle says that it tracks")
    given = {entry.get("NSPrivacyAccessedAPIType"): entry.get("NSPrivacyAccessedAPITypeReasons") for entry in privacy.get("NSPrivacyAccessedAPITypes", [])}
    faults.unless(given == REASONS, f"reasons are {given}")
    types = {entry.get("NSPrivacyCollectedDataType"): entry for entry in privacy.get("NSPrivacyCollectedDataTypes", [])}
    faults.unless(set(types) == COLLECTED, f"data are {sorted(types)}")
    for name, entry in types.items():
        faults.unless(entry.get("NSPrivacyCollectedDataTypeTracking") is False
                      and entry.get("NSPrivacyCollectedDataTypePurposes") == ["NSPrivacyCollectedDataTypePurposeAppFunctionality"],
                      f"{name}: for another purpose than the diary's")


def read_icon(folder, faults):
    icons = folder / "Assets.xcassets/AppIcon.appiconset"
    for image in json.loads((icons / "Contents.json").read_text())["images"]:
        head = (icons / image["filename"]).read_bytes()[:26]
        width, height, _, colour = struct.unpack(">IIBB", head[16:26])
        faults.unless((width, height) == (1024, 1024) and colour == 2, f"{image['filename']}: {width} x {height}, colour type {colour}")


def read_code(folder, faults):
    """What the rules of this project ask of the bridges, as far as a text shows it."""
    wanted = {
        "keychain_keeper.mm": ["kSecAttrAccessibleWhenUnlockedThisDeviceOnly", "kSecAttrSynchronizable : @NO"],
        "protection.mm": ["NSFileProtectionComplete", "NSURLIsExcludedFromBackupKey"],
        "cover.mm": ["UIApplicationWillResignActiveNotification"],
        "ios_ringer.mm": ["mostPending = 64", "NSSystemTimeZoneDidChangeNotification"],
    }
    for name, words in wanted.items():
        text = (folder / name).read_text()
        for word in words:
            faults.unless(word in text, f"{name}: no {word}")
    cmake = (ROOT / "platform/device/CMakeLists.txt").read_text()
    for file in sorted(folder.glob("*.mm")):
        faults.unless(f"../ios/{file.name}" in cmake, f"{file.name} is not built")


def check(folder):
    faults = Faults()
    info = read_info(folder, faults)
    read_languages(folder, info, faults)
    read_rights(folder, faults)
    read_privacy(folder, faults)
    read_icon(folder, faults)
    read_code(folder, faults)
    return faults.all


BREAKAGES = {
    "a plist that does not read": ("Info.plist", "</plist>", ""),
    "a camera without a reason": ("Info.plist", "<key>NSCameraUsageDescription</key>", "<key>NSCameraUsage</key>"),
    "a wish for the microphone": ("Info.plist", "<key>NSCameraUsageDescription</key>",
                                  "<key>NSMicrophoneUsageDescription</key><string>x</string><key>NSCameraUsageDescription</key>"),
    "a language that is not translated": ("de.lproj/InfoPlist.strings", "Die Kamera liest den Code Ihrer Praxis und macht Fotos, wenn Sie es wollen. Sie bleiben im Tagebuch und gehen an Ihre Praxis.",
                                          "The camera reads the code of your clinic and takes photographs when you ask for one. They stay in the diary and go to your clinic."),
    "a language without its words": ("ar.lproj/InfoPlist.strings", "NSCameraUsageDescription", "NSCamera"),
    "a line without its end": ("fr.lproj/InfoPlist.strings", '";', '"'),
    "files that open after the first unlocking": ("Ebbline.entitlements", "NSFileProtectionComplete", "NSFileProtectionCompleteUntilFirstUserAuthentication"),
    "tracking": ("PrivacyInfo.xcprivacy", "<key>NSPrivacyTracking</key>\n    <false/>", "<key>NSPrivacyTracking</key>\n    <true/>"),
    "a reason that is missing": ("PrivacyInfo.xcprivacy", "35F9.1", ""),
    "data for advertising": ("PrivacyInfo.xcprivacy", "PurposeAppFunctionality", "PurposeThirdPartyAdvertising"),
    "a secret that travels with a backup": ("keychain_keeper.mm", "kSecAttrAccessibleWhenUnlockedThisDeviceOnly", "kSecAttrAccessibleWhenUnlocked"),
    "files in a backup": ("protection.mm", "NSURLIsExcludedFromBackupKey", "NSURLNameKey"),
    "a cover that comes too late": ("cover.mm", "UIApplicationWillResignActiveNotification", "UIApplicationDidEnterBackgroundNotification"),
}

finish("iOS's papers", check(IOS), {words: check(broken_copy(IOS, *change)) for words, change in BREAKAGES.items()})
