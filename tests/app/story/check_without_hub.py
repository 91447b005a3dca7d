"""The tool alone, as its package brings it: story and demo say what is missing before they touch anything.

usage: check_without_hub.py EBBLINE FOLDER
"""

import os
import shutil
import subprocess
import sys
from pathlib import Path


def main():
    ebbline, folder = Path(sys.argv[1]), Path(sys.argv[2])
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    alone = folder / "ebbline"
    try:
        # A link would be followed to the folder where the hub is.
        os.link(ebbline, alone)
    except OSError:
        shutil.copy(ebbline, alone)
    faults = []
    try:
        for command in ("story", "demo"):
            out = folder / command
            said = subprocess.run([alone, command, "--out", str(out)], capture_output=True, text=True, timeout=60)
            if said.returncode != 1 or "ebbline: ebbline-hub is not beside this program" not in said.stderr or "package ebbline-hub" not in said.stderr:
                faults.append(f"{command}: exit {said.returncode}, {said.stderr}")
            if out.exists():
                faults.append(f"{command}: a folder was made for what cannot be played")
    finally:
        alone.unlink()
    for fault in faults:
        print("wanted a sentence about ebbline-hub:", fault)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
