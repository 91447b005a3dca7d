"""check_java.py ROOT JAVAC JAVA JAVAP: the Java half of the Android bridge.

It compiles against the signatures in stubs/java, its rules hold on plain Java, and every class, method and
signature that the C++ half names in a string is in the compiled classes. Numbers that both halves use are equal.
Skipped without a JDK.
"""
import functools
import re
import subprocess
import sys
import tempfile
from pathlib import Path

from check import SKIPPED, Faults, broken_copy, finish

ROOT = Path(sys.argv[1])
JAVAC, JAVA, JAVAP = sys.argv[2:5]
HERE = ROOT / "tests/platform/phones"
SOURCES = ROOT / "platform/android/package/src"
CPP = ROOT / "platform/android"
PACKAGE = "invalid/ebbline/diary"
if any(tool.endswith("NOTFOUND") for tool in sys.argv[2:5]):
    print("no Java development kit here")
    sys.exit(SKIPPED)


def run(*command):
    return subprocess.run(command, capture_output=True, text=True, timeout=600)


def compile_into(out, folders, *more):
    files = [str(file) for folder in folders for file in sorted(folder.rglob("*.java"))]
    return run(JAVAC, "-J-XX:TieredStopAtLevel=1", "-Xlint:all,-serial", "-Werror", "--release", "11", "-encoding", "UTF-8", "-d", out,
               *more, *files)


@functools.cache
def stubs():
    out = tempfile.mkdtemp(prefix="stubs-")
    done = compile_into(out, [HERE / "stubs/java"])
    if done.returncode != 0:
        sys.exit(f"the signatures themselves do not compile: {done.stdout}{done.stderr}")
    return out


def compiled(sources, faults):
    out = tempfile.mkdtemp(prefix="classes-")
    done = compile_into(out, [HERE / "java", sources], "-cp", stubs())
    return out if faults.unless(done.returncode == 0, f"does not compile: {done.stdout}{done.stderr}") else None


def keep_the_rules(classes, faults):
    done = run(JAVA, "-XX:TieredStopAtLevel=1", "-ea", "-cp", classes, "invalid.ebbline.diary.BellTest")
    held = re.match(r"(\d+) sentences hold", done.stdout)
    faults.unless(done.returncode == 0 and held and int(held[1]) > 40, f"rules of the bells: {done.stdout}{done.stderr}")


@functools.cache
def members(classes, name):
    """(method, descriptor) -> its declaration."""
    text = run(JAVAP, "-J-XX:TieredStopAtLevel=1", "-s", "-p", "-cp", classes, name.replace("/", ".")).stdout
    return {(method, descriptor): declaration.strip()
            for declaration, method, descriptor in re.findall(r"^  (.*?(\w+)\([^)]*\).*;)\n    descriptor: (\S+)$", text, re.M)}


def joined(literals):
    return "".join(re.findall(r'"([^"]*)"', literals))


def wishes(folder):
    """Each (class, method, descriptor, what it is called as) in a string of the C++ half."""
    for file in sorted(folder.glob("*.cpp")):
        text = file.read_text()
        names = dict(re.findall(r'const char\* (\w+) = "([\w/]+)";', text))
        callers = {}
        for function in re.findall(r"(\w+)\(const char\* act", text):
            callers[function] = set(re.findall(rf'\b{function}\("(\w+)"', text))
        acts = set().union(*callers.values()) if callers else set()
        call = r'callStatic(Object)?Method(?:<(\w+)>)?\(\s*(\w+),\s*("\w+"|act),\s*((?:"[^"]*"\s*)+)'
        for is_object, result, owner, method, literals in re.findall(call, text):
            for name in acts if method == "act" else {method.strip('"')}:
                yield names.get(owner, owner), name, joined(literals), "object" if is_object else result
        for owner in re.findall(r"registerNativeMethods\((\w+),", text):
            for name, descriptor in re.findall(r'\{"(\w+)", "([^"]*)", reinterpret_cast', text):
                yield names.get(owner, owner), name, descriptor, "native"


RESULTS = {"void": "V", "jint": "I", "jlong": "J", "jboolean": "Z"}


def meet(classes, folder, faults):
    found = list(wishes(folder))
    faults.unless(len(found) >= 15, f"only {len(found)} calls were found: the check is not looking where they are")
    for owner, name, descriptor, kind in found:
        declaration = members(classes, owner).get((name, descriptor))
        if not faults.unless(declaration, f"C++ calls {owner}.{name}{descriptor}, which Java does not have"):
            continue
        result = descriptor.rsplit(")", 1)[1]
        if kind == "native":
            faults.unless("native" in declaration.split(), f"{owner}.{name} is not native")
        elif kind == "object":
            faults.unless(result[0] in "L[", f"{owner}.{name} gives no object")
        else:
            faults.unless(RESULTS.get(kind) == result, f"C++ takes {kind} from {owner}.{name}{descriptor}")
        faults.unless("static" in declaration.split() and (kind == "native" or declaration.startswith("public")),
                      f"{owner}.{name} is not public and static")
    called = {(owner, name) for owner, name, _, _ in found}
    for owner in {owner for owner, _ in called}:
        for (name, _), declaration in members(classes, owner).items():
            if declaration.startswith("public static") or "native" in declaration.split():
                faults.unless((owner, name) in called, f"{owner}.{name} is there for C++, and nobody calls it")


def number(text, pattern):
    found = re.search(pattern, text)
    return eval(found[1].replace("_", "").replace("'", "").replace("L", "")) if found else None  # digits and * only


def agree(sources, faults):
    java = {file.stem: file.read_text() for file in (sources / PACKAGE).glob("*.java")}
    ringer = (ROOT / "platform/notifications/ringer.h").read_text()
    keeper = (CPP / "android_keeper.cpp").read_text()
    pairs = []
    for event in ("openTouched", "laterTouched", "leaveChanged", "rang", "zoneChanged"):
        constant = re.sub(r"([A-Z])", r"_\1", event).upper()
        pairs.append((event, number(ringer, rf"\b{event} = (\d+)"), number(java["Bridge"], rf"int {constant} = (\d+);")))
    for answer in ("notAsked", "granted", "denied"):
        constant = re.sub(r"([A-Z])", r"_\1", answer).upper()
        pairs.append((answer, number(ringer, rf"\b{answer} = (\d+)"), number(java["Leave"], rf"int {constant} = (\d+);")))
    for answer in ("done", "nothingThere", "lost", "alreadyThere"):
        constant = re.sub(r"([A-Z])", r"_\1", answer).upper()
        pairs.append((answer, number(keeper, rf"uint8_t {answer} = (\d+);"), number(java["SecretBox"], rf"byte {constant} = (\d+);")))
    booking = (ROOT / "core/aftercare/booking.h").read_text()
    pairs.append(("most bells", 10 * number(booking, r"mostBooked = (\d+)"), number(java["BellList"], r"int MOST = (\d+);")))
    board = (ROOT / "app/diary/model/reminder_board.cpp").read_text()
    pairs.append(("putting off, ms", number(board, r"minutes putOffBy\{(\d+)\}") * 60_000, number(java["BellKeeper"], r"PUT_OFF_MS = ([\dL *]+);")))
    ios = (ROOT / "platform/ios/bell_requests.mm").read_text()
    pairs.append(("putting off on iOS", number(board, r"minutes putOffBy\{(\d+)\}"), number(ios, r"since1970 \+ std::chrono::minutes\((\d+)\)")))
    for words, here, there in pairs:
        faults.unless(here is not None and here == there, f"{words}: {here} on one side, {there} on the other")


def check(sources, cpp=CPP):
    faults = Faults()
    classes = compiled(sources, faults)
    if classes:
        keep_the_rules(classes, faults)
        meet(classes, cpp, faults)
    agree(sources, faults)
    return faults.all


def broken(file, old, new):
    return check(broken_copy(SOURCES, f"{PACKAGE}/{file}", old, new))


BREAKAGES = {
    "a call of what Android does not have": broken("AndroidPhone.java", "setAndAllowWhileIdle", "setWhenever"),
    "a method of another name": broken("Bridge.java", "public static boolean book(", "public static boolean take("),
    "a method of other parameters": broken("Bridge.java", "boolean cancel(long at", "boolean cancel(int at"),
    "a native method that is gone": broken("Bridge.java", "private static native void told(int what);", "private static void told(int what) {}"),
    "a method that is not public": broken("SecretBox.java", "public static byte[] fetch()", "static byte[] fetch()"),
    "a number that means something else": broken("Bridge.java", "LEAVE_CHANGED = 3", "LEAVE_CHANGED = 6"),
    "bells that are not put back": broken("BellKeeper.java", "if (!arm(bell))\n                    held", "if (bell == null)\n                    held"),
    "a bell without an alarm that is said to be held": broken("BellKeeper.java", "store(list.without(bell)); // what", "// what"),
    "a refusal that silences a bell": broken("BellKeeper.java", "// An inexact one is better than none.", "return false;"),
    "a zone that moves nothing": broken("BellKeeper.java", "if (there.equals(here))", "if (here != null)"),
    "C++ that asks for what is not there": check(SOURCES, broken_copy(CPP, "android_ringer.cpp", '"isPunctual", "()Z"', '"isPunctual", "()I"')),
}
finish("Android's bridge", check(SOURCES), BREAKAGES)
