"""What the checks of this folder share: faults are collected, and every check is tried on broken input."""
import atexit
import shutil
import sys
import tempfile
from pathlib import Path

SKIPPED = 77

# Everything that a check writes goes here, and is gone afterwards.
tempfile.tempdir = tempfile.mkdtemp(prefix="phones-")
atexit.register(shutil.rmtree, tempfile.tempdir, ignore_errors=True)


class Faults:
    """What is wrong, in words."""

    def __init__(self):
        self.all = []

    def unless(self, holds, text):
        if not holds:
            self.all.append(text)
        return bool(holds)


def finish(name, faults, breakages):
    """Ends the program: with the faults, or with the broken inputs that were not noticed.

    breakages: words for what was broken -> the faults that the check found in it.
    """
    for fault in faults:
        print(f"{name}: {fault}")
    blind = [words for words, found in breakages.items() if not found]
    for words in blind:
        print(f"{name}: the check did not notice {words}")
    if faults or blind:
        sys.exit(1)
    print(f"{name}: nothing is wrong, and each of {len(breakages)} broken inputs is noticed")


def broken_copy(folder, relative, old, new):
    """A copy of the folder in which one text of one file is replaced; it must be there."""
    copy = Path(tempfile.mkdtemp(prefix="broken-")) / "copy"
    shutil.copytree(folder, copy)
    file = copy / relative
    text = file.read_text(encoding="utf-8")
    if old not in text:
        sys.exit(f"{relative} has no {old!r}: the broken input would not be broken")
    file.write_text(text.replace(old, new), encoding="utf-8")
    return copy
