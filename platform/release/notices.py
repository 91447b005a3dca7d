"""Makes what the programs show about the work of others, from the table of libraries and the texts of the
licences: one file, notices.json.

usage: notices.py ROOT OUT
"""
import json
import pathlib
import re
import sys

from parts import OWN_LICENCE, faults_of, licences_of, read_parts, text_of


def paragraphs_of(text):
    """A licence was broken into lines for paper; a page breaks them anew, without the rules and boxes of it."""
    plain = re.sub(r"(?m)^\*(.*)\*$", r"\1", re.sub(r"(?m)^[-=*]{3,}$", "", text))
    blocks = [re.sub(r"\s+", " ", block).strip() for block in re.split(r"\n\s*\n", plain)]
    return [block for block in blocks if block]


def main():
    root, out = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
    parts = read_parts(root)
    if faults := faults_of(parts, root):
        sys.exit("\n".join(faults))
    out.mkdir(parents=True, exist_ok=True)
    listed = [{"name": part.name, "programs": list(part.programs), "licence": part.licence, "copyright": part.copyright}
              for part in parts]
    identifiers = sorted({OWN_LICENCE, *(found for part in parts for found in licences_of(part.licence))})
    texts = {identifier: paragraphs_of(text_of(root, identifier).read_text(encoding="utf-8")) for identifier in identifiers}
    (out / "notices.json").write_text(json.dumps({"own": OWN_LICENCE, "parts": listed, "texts": texts}, ensure_ascii=False, indent=1) + "\n",
                                      encoding="utf-8")


if __name__ == "__main__":
    main()
