"""check_numbers.py ROOT: no number that is kept, compared or sent goes through the locale of the system (decision 0051).

printf's %f and its kin, strtod and its kin follow LC_NUMERIC: under a decimal comma one writes "38,2" and the other reads 38 of
"38.2". core/bytes/decimal.h does neither. A program with windows has Qt set the system's locale and must take the numbers of it
back. The tool writes figures for people by printf, and sets no locale but with its story, where it does the same.

Each run first holds the check against samples that it must refuse and samples that it must let pass.
"""
import pathlib
import re
import sys

READING = re.compile(r"\b(?:strto(?:d|f|ld)|sto(?:d|f|ld)|atof|[fs]?scanf)\s*\(")
WRITING = re.compile(r'"(?:[^"\\\n]|\\.)*?%[-+#0]*[0-9*]*(?:\.[0-9*]+)?[lL]?[aAeEfFgG](?:[^"\\\n]|\\.)*"')
WHOLE = re.compile(r"\b(?:locale::global|setlocale)\s*\(")
APPLICATION = re.compile(r"\bQ(?:Gui|Core)?Application application\(")
TAKEN_BACK = 'std::setlocale(LC_NUMERIC, "C");'


def without_comments(text):
    return re.sub(r"//[^\n]*", "", re.sub(r"/\*.*?\*/", "", text, flags=re.S))


def faults(name, text):
    code = without_comments(text)
    found = []
    if not name.startswith("app/tool/"):
        found += [f"{name}: {each.group(0)} reads by the system's locale; core/bytes/decimal.h does not" for each in READING.finditer(code)]
        found += [f"{name}: {each.group(0)} writes by the system's locale; core/bytes/decimal.h does not"
                  for each in WRITING.finditer(code) if "printf" in code or "format" in code]
    application = APPLICATION.search(code)
    if application and TAKEN_BACK not in code[application.end():application.end() + 200]:
        found.append(f"{name}: an application without {TAKEN_BACK} right behind it")
    if WHOLE.search(code.replace(TAKEN_BACK, "")):
        found.append(f"{name}: sets a locale for the whole program")
    return found


REFUSED = [
    ("core/a.cpp", 'std::snprintf(text, sizeof text, "temperature %.1f C", celsius);'),
    ("core/a.cpp", 'std::snprintf(text, sizeof text, "%g", value);'),
    ("core/a.cpp", 'std::snprintf(text, sizeof text, "%+08.*f", 3, value);'),
    ("core/a.cpp", "return std::stod(text);"),
    ("core/a.cpp", "return strtod(text.c_str(), nullptr);"),
    ("platform/a.cpp", 'sscanf(line, "%lf", &value);'),
    ("core/a.cpp", 'std::locale::global(std::locale(""));'),
    ("app/tool/a.cpp", 'std::setlocale(LC_ALL, "");'),
    ("app/desk/main.cpp", "QApplication application(argc, argv);\nreturn QApplication::exec();"),
]
PASSED = [
    ("core/a.cpp", 'std::snprintf(text, sizeof text, "%04d-%02u", year, month);'),
    ("core/a.cpp", '// strtod("%.1f") would follow the locale\nreturn bytes::fixedDecimal(value, 1);'),
    ("core/a.cpp", 'std::printf("%d", 1); out << "a share of 5 % for all";'),
    ("app/desk/main.cpp", f"QApplication application(argc, argv);\n{TAKEN_BACK}"),
]


def main():
    root = pathlib.Path(sys.argv[1])
    for name, text in REFUSED:
        if not faults(name, text):
            sys.exit(f"the check does not refuse: {text}")
    for name, text in PASSED:
        if faults(name, text):
            sys.exit(f"the check refuses what is right: {text}")
    files = [each for folder in ("core", "platform", "app") for each in sorted((root / folder).rglob("*"))
             if each.suffix in (".h", ".cpp", ".mm")]
    programs = 0
    found = []
    for each in files:
        text = each.read_text(encoding="utf-8")
        programs += bool(APPLICATION.search(text))
        found += faults(str(each.relative_to(root)), text)
    if len(files) < 300 or programs < 3:
        sys.exit(f"only {len(files)} files and {programs} programs were read: the check is not looking where the code is")
    if found:
        sys.exit("\n".join(found))
    print(f"{len(files)} files, {programs} programs with windows: no number goes through the system's locale")


main()
