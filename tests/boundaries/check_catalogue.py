"""Holds what menus and software catalogues say of diary and desk to the languages that each speaks (translations/*.ts): every entry in
each of them, in no other, and none twice.

usage: check_catalogue.py ROOT
"""
import pathlib
import re
import sys
import xml.etree.ElementTree as ET

LANG = "{http://www.w3.org/XML/1998/namespace}lang"


def spoken(root, part):
    return sorted(file.stem.removeprefix(f"{part}_") for file in (root / "translations").glob(f"{part}_*.ts"))


def menu_texts(text):
    """Key to the pairs of language and text of an entry in menus; without a language it is English."""
    found = {"GenericName": [], "Comment": [], "Keywords": []}
    for key, language, said in re.findall(r"(?m)^(GenericName|Comment|Keywords)(?:\[(\w+)\])?=(.*)$", text):
        found[key].append((language or "en", said))
    return found


def catalogue_texts(text):
    component = ET.fromstring(text)
    found = {"summary": [(each.get(LANG, "en"), each.text) for each in component.findall("summary")]}
    # The first paragraph of each language, the second, and so on.
    seen = {}
    for each in component.findall("description/p"):
        language = each.get(LANG, "en")
        seen[language] = seen.get(language, 0) + 1
        found.setdefault(f"paragraph {seen[language]}", []).append((language, each.text))
    found["languages"] = [(each.text, each.text) for each in component.findall("languages/lang")]
    return found


def faults_of(where, found, languages):
    faults = []
    for key, texts in found.items():
        if sorted(language for language, _ in texts) != languages:
            faults.append(f"{where}: {key} in {sorted(language for language, _ in texts)}, wanted in {languages}")
        if len({said for _, said in texts}) != len(texts):
            faults.append(f"{where}: {key}: two languages say the same")
        if not all(said and said.strip() for _, said in texts):
            faults.append(f"{where}: {key}: an empty text")
    return faults


def main():
    root = pathlib.Path(sys.argv[1])
    faults, texts = [], 0
    for part in ("diary", "desk"):
        languages = spoken(root, part)
        if len(languages) < 6:
            faults.append(f"only {languages} are spoken by the {part}")
        for name, reader in ((f"ebbline-{part}.desktop", menu_texts), (f"invalid.ebbline.{part}.metainfo.xml.in", catalogue_texts)):
            text = (root / "platform/packaging" / name).read_text(encoding="utf-8")
            texts += sum(len(said) for said in reader(text).values())
            faults += faults_of(name, reader(text), languages)
            for without in ("fr", "ar"):
                # One line less, and a language that nobody speaks.
                lines = text.splitlines()
                gone = next(i for i, line in enumerate(lines) if f"[{without}]=" in line or f'xml:lang="{without}"' in line)
                if not faults_of(name, reader("\n".join(lines[:gone] + lines[gone + 1:])), languages):
                    faults.append(f"{name}: a missing text in {without} is not noticed")
                if not faults_of(name, reader(text.replace(f"[{without}]=", "[xx]=", 1).replace(f'"{without}"', '"xx"', 1)), languages):
                    faults.append(f"{name}: a text in a language of nobody is not noticed")
    if faults:
        sys.exit("\n".join(faults))
    print(f"{texts} texts of menus and catalogues, each in the languages that its program speaks")


if __name__ == "__main__":
    main()
