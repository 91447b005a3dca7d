"""check_android.py ROOT: the papers of the Android package.

The permissions are exactly the needed ones, of Qt's classes in the diary's sources as well, nothing is exported but the window, no backup takes anything
along, every class that the manifest names is there, and a bell's words are those of the translations.
"""
import re
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

from check import Faults, broken_copy, finish

ROOT = Path(sys.argv[1])
PACKAGE = ROOT / "platform/android/package"
A = "{http://schemas.android.com/apk/res/android}"
T = "{http://schemas.android.com/tools}"

PERMISSIONS = {"INTERNET", "ACCESS_NETWORK_STATE", "CAMERA", "POST_NOTIFICATIONS", "RECEIVE_BOOT_COMPLETED", "SCHEDULE_EXACT_ALARM"}
# What Qt itself asks Android for where a program uses these classes ("Qt for Android", and the manifests and Java of its modules).
QT_CLASSES = {
    "QNetworkAccessManager": "INTERNET",
    "QNetworkInformation": "ACCESS_NETWORK_STATE",
    "QCamera": "CAMERA",
    "QCameraPermission": "CAMERA",
    "QAudioInput": "RECORD_AUDIO",
    "QAudioSource": "RECORD_AUDIO",
    "QMediaRecorder": "RECORD_AUDIO",
    "QMicrophonePermission": "RECORD_AUDIO",
    "QGeoPositionInfoSource": "ACCESS_FINE_LOCATION",
    "QLocationPermission": "ACCESS_FINE_LOCATION",
    "QBluetoothDeviceDiscoveryAgent": "BLUETOOTH_SCAN",
    "QBluetoothPermission": "BLUETOOTH_CONNECT",
    "QContactsPermission": "READ_CONTACTS",
    "QCalendarPermission": "READ_CALENDAR",
}
# Of app and platform, what is built into no phone.
NOT_ON_PHONES = {"app/desk", "app/hub", "app/story", "app/tool", "platform/ios", "platform/linux", "platform/postgres", "platform/server"}
RESTORED_AFTER = {
    "android.intent.action.BOOT_COMPLETED",
    "android.intent.action.MY_PACKAGE_REPLACED",
    "android.intent.action.TIME_SET",
    "android.intent.action.TIMEZONE_CHANGED",
    "android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED",
}
DOMAINS = {"root", "file", "database", "sharedpref", "external"}
WORDS = {
    "bell_title": "Reminder",
    "bell_text": "There is something for you.",
    "bell_asks_to_open": "Please open your diary, so that it can go on.",
    "bell_open": "Open",
    "bell_later": "In 30 minutes",
}
LANGUAGES = {"": "en", "-de": "de", "-es": "es", "-fr": "fr", "-pt-rBR": "pt_BR", "-tr": "tr", "-ar": "ar", "-zh-rCN": "zh_CN"}


def excluded(element):
    return {child.get("domain") for child in element.findall("exclude") if child.get("path") == "."}


def read_manifest(package, faults):
    manifest = ET.parse(package / "AndroidManifest.xml").getroot()
    asked = {p.get(A + "name", "").removeprefix("android.permission.") for p in manifest.findall("uses-permission")
             if p.get(T + "node") != "remove"}
    faults.unless(asked == PERMISSIONS, f"permissions are {sorted(asked)}, wanted are {sorted(PERMISSIONS)}")
    faults.unless("%%INSERT_PERMISSIONS" not in re.sub("<!--.*?-->", "", (package / "AndroidManifest.xml").read_text(), flags=re.S)
                  and "<!-- %%INSERT_PERMISSIONS" not in (package / "AndroidManifest.xml").read_text(),
                  "a library could add permissions of its own")
    for feature in manifest.findall("uses-feature"):
        faults.unless(feature.get(A + "required") == "false", f"{feature.get(A + 'name')} is required: phones without it are shut out")
    application = manifest.find("application")
    for name, value in {"allowBackup": "false", "usesCleartextTraffic": "false", "hasFragileUserData": "false", "supportsRtl": "true",
                        "dataExtractionRules": "@xml/data_extraction_rules", "fullBackupContent": "@xml/backup_rules"}.items():
        faults.unless(application.get(A + name) == value, f"application: {name} is {application.get(A + name)}, wanted is {value}")
    faults.unless(application.get(A + "debuggable") is None, "the package says whether it may be debugged; the build says that")
    parts = [part for kind in ("activity", "receiver", "service", "provider", "activity-alias") for part in application.findall(kind)]
    names = {part.get(A + "name") for part in parts}
    faults.unless(names == {f"invalid.ebbline.diary.{name}" for name in ("DiaryActivity", "BellReceiver", "RestoreReceiver")},
                  f"parts are {sorted(names)}")
    for part in parts:
        name = part.get(A + "name")
        want = "true" if name.endswith(".DiaryActivity") else "false"
        faults.unless(part.get(A + "exported") == want, f"{name}: exported is {part.get(A + 'exported')}, wanted is {want}")
        source = package / "src" / (name.replace(".", "/") + ".java")
        faults.unless(source.exists(), f"{name}: there is no such class")
        actions = {action.get(A + "name") for action in part.iter("action")}
        if name.endswith(".RestoreReceiver"):
            faults.unless(actions == RESTORED_AFTER, f"bells are put back after {sorted(actions)}")
        elif part.tag == "receiver":
            faults.unless(not actions, f"{name} can be reached from outside")
        else:
            faults.unless(actions == {"android.intent.action.MAIN"}, f"{name} answers to {sorted(actions)}")
    lib = [m for m in application.iter("meta-data") if m.get(A + "name") == "android.app.lib_name"]
    faults.unless(lib and lib[0].get(A + "value") == "-- %%INSERT_APP_LIB_NAME%% --", "Qt does not learn which library to start")
    text = (package / "src/invalid/ebbline/diary/RestoreReceiver.java").read_text()
    constants = {"BOOT_COMPLETED": "ACTION_BOOT_COMPLETED", "MY_PACKAGE_REPLACED": "ACTION_MY_PACKAGE_REPLACED", "TIME_SET": "ACTION_TIME_CHANGED",
                 "TIMEZONE_CHANGED": "ACTION_TIMEZONE_CHANGED",
                 "SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED": "ACTION_SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED"}
    for action in RESTORED_AFTER:
        faults.unless(f".{constants[action.rsplit('.', 1)[1]]}:" in text, f"RestoreReceiver does nothing after {action}")


def diary_sources():
    for folder in ("app", "platform"):
        for file in sorted((ROOT / folder).rglob("*")):
            if file.suffix in (".h", ".cpp") and "/".join(file.relative_to(ROOT).parts[:2]) not in NOT_ON_PHONES:
                yield file.read_text(encoding="utf-8")


def read_classes(asked, sources, faults):
    text = re.sub(r"//[^\n]*", "", "\n".join(sources))
    used = {name for name in QT_CLASSES if re.search(rf"\b{name}\b", text)}
    for name in sorted(used):
        faults.unless(QT_CLASSES[name] in asked, f"{name} is used and does nothing without {QT_CLASSES[name]}")
    for permission in sorted(set(QT_CLASSES.values()) & asked):
        faults.unless(any(QT_CLASSES[name] == permission for name in used), f"{permission} is asked for and no class of Qt's needs it")


def classes(asked, sources):
    faults = Faults()
    read_classes(asked, sources, faults)
    return faults.all


def read_backups(package, faults):
    rules = ET.parse(package / "res/xml/data_extraction_rules.xml").getroot()
    for kind in ("cloud-backup", "device-transfer"):
        part = rules.find(kind)
        left = DOMAINS | {f"device_{domain}" for domain in DOMAINS - {"external"}}
        if faults.unless(part is not None, f"{kind} has no rule: everything would go along"):
            faults.unless(not part.findall("include") and excluded(part) == left, f"{kind} takes along {sorted(left - excluded(part))}")
    old = ET.parse(package / "res/xml/backup_rules.xml").getroot()
    faults.unless(not old.findall("include") and excluded(old) == DOMAINS, "an old Android would back something up")


def translations(language):
    words = {}
    for context in ET.parse(ROOT / f"translations/diary_{language}.ts").getroot().findall("context"):
        if "ReminderBoard" in context.findtext("name"):
            for message in context.findall("message"):
                words[message.findtext("source")] = message.findtext("translation")
    return words


def read_words(package, faults):
    for suffix, language in LANGUAGES.items():
        said = {s.get("name"): s.text.replace("\\'", "'") for s in ET.parse(package / f"res/values{suffix}/strings.xml").getroot().findall("string")}
        words = translations(language)
        for name, source in WORDS.items():
            want = words.get(source) if language != "en" else source
            faults.unless(want and said.get(name) == want, f"{language}: {name} is {said.get(name)!r}, the diary says {want!r}")
    used = set(re.findall(r"R\.string\.(\w+)", " ".join(p.read_text() for p in package.rglob("*.java"))))
    faults.unless(used == set(WORDS), f"the code uses the words {sorted(used)}")


def read_versions(root, faults):
    text = (root / "platform/android/diary.cmake").read_text()
    for name, value in {"QT_ANDROID_MIN_SDK_VERSION": 28, "QT_ANDROID_TARGET_SDK_VERSION": 34}.items():
        faults.unless(f"{name} {value}" in text, f"{name} is not {value}")


def read_window(package, faults):
    text = (package / "src/invalid/ebbline/diary/DiaryActivity.java").read_text()
    secure = text.find("FLAG_SECURE")
    faults.unless(0 < secure < text.find("super.onCreate"), "the window is shown before it is kept out of pictures")


def check(package):
    faults = Faults()
    for xml in package.rglob("*.xml"):
        try:
            ET.parse(xml)
        except ET.ParseError as error:
            faults.unless(False, f"{xml.relative_to(package)}: {error}")
    if faults.all:
        return faults.all
    read_manifest(package, faults)
    read_backups(package, faults)
    read_words(package, faults)
    read_window(package, faults)
    return faults.all


MANIFEST = "AndroidManifest.xml"
BREAKAGES = {
    "a permission too many": (MANIFEST, "</manifest>", '<uses-permission android:name="android.permission.READ_CONTACTS" /></manifest>'),
    "a permission too few": (MANIFEST, '<uses-permission android:name="android.permission.RECEIVE_BOOT_COMPLETED" />', ""),
    "a network whose return nobody hears of": (MANIFEST, '<uses-permission android:name="android.permission.ACCESS_NETWORK_STATE" />', ""),
    "an invitation for more permissions": (MANIFEST, "</manifest>", "<!-- %%INSERT_PERMISSIONS --></manifest>"),
    "backups that are on": (MANIFEST, 'allowBackup="false"', 'allowBackup="true"'),
    "a backup that takes settings along": ("res/xml/data_extraction_rules.xml", '<exclude domain="sharedpref" path="." />', ""),
    "an old backup that takes files along": ("res/xml/backup_rules.xml", '<exclude domain="file" path="." />', ""),
    "a receiver for everybody": (MANIFEST, 'RestoreReceiver" android:exported="false"', 'RestoreReceiver" android:exported="true"'),
    "a zone that is not heard of": (MANIFEST, '<action android:name="android.intent.action.TIMEZONE_CHANGED" />', ""),
    "a zone that is heard of and ignored": ("src/invalid/ebbline/diary/RestoreReceiver.java", "case Intent.ACTION_TIMEZONE_CHANGED:", ""),
    "a class that is not there": (MANIFEST, 'diary.BellReceiver"', 'diary.BellReceptor"'),
    "a camera that is required": (MANIFEST, 'android:name="android.hardware.camera" android:required="false"',
                                  'android:name="android.hardware.camera" android:required="true"'),
    "a bell that speaks of health": ("res/values-de/strings.xml", "Es gibt etwas für Sie.", "Kühlen Sie Ihr Gesicht."),
    "a window in the list of recent programs": ("src/invalid/ebbline/diary/DiaryActivity.java", "FLAG_SECURE", "FLAG_FULLSCREEN"),
    "a file that is no XML": ("res/drawable/bell.xml", "</vector>", ""),
}

versions = Faults()
read_versions(ROOT, versions)
SOURCES = list(diary_sources())
finish("Android's papers", check(PACKAGE) + versions.all + classes(PERMISSIONS, SOURCES),
       {words: check(broken_copy(PACKAGE, *change)) for words, change in BREAKAGES.items()}
       | {"a class of Qt's without its permission": classes(PERMISSIONS - {"ACCESS_NETWORK_STATE"}, SOURCES),
          "a new class that listens": classes(PERMISSIONS, [*SOURCES, "QAudioSource source;"]),
          "a permission that nothing needs": classes(PERMISSIONS, [text for text in SOURCES if "QNetworkInformation" not in text])})
