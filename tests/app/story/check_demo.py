"""Seeds the demo and opens it as a person would, offscreen: its hub serves, and desk and diary have nothing to complain of.

usage: check_demo.py EBBLINE HUB DESK DIARY FOLDER
"""

import os
import re
import shutil
import subprocess
import sys
import time
from pathlib import Path

OPEN_S = 3
PATIENCE_S = 20  # of a machine that does much else: until a window asks the hub
FAULTS = []


def want(holds, what):
    if not holds:
        FAULTS.append(what)


def wait_for(holds, process):
    until = time.monotonic() + PATIENCE_S
    while time.monotonic() < until and process.poll() is None and not holds():
        time.sleep(0.05)
    return holds()


def answered(log):
    """Requests that the hub has answered so far."""
    return len(re.findall(r'"event":"request".*"status":200', log.read_text()))


def end(process):
    """Asks it to end, and waits. Returns its exit code."""
    if process.poll() is None:
        process.terminate()
    return process.wait(timeout=20)


def opened(program, vault, demo, log, environment):
    """Stays open, asks the hub and is answered, and says nothing."""
    said, before = demo / f"{program.name}.said", answered(log)
    with said.open("w") as complaints:
        window = subprocess.Popen([program, "--vault", vault, "--passphrase-file", demo / "passphrase.txt"], stderr=complaints, env=environment)
    time.sleep(OPEN_S)
    want(wait_for(lambda: answered(log) > before, window), f"{program.name} asks the hub and is answered")
    want(window.poll() is None, f"{program.name} stays open, and does not end with {window.poll()}")
    end(window)
    for line in said.read_text().splitlines():
        want(not line.strip(), f"no complaint of {program.name}: {line}")


def open_demo(hub, desk, diary, demo, environment):
    ready, log = demo / "hub.ready", demo / "hub.log"
    with log.open("w") as lines:
        serving = subprocess.Popen([hub, "serve", "--store", demo / "work/hub", "--listen", "127.0.0.1:" + (demo / "hub.port").read_text().strip(),
                                    "--port-file", ready, "--log", "requests"], stdout=lines, stderr=subprocess.STDOUT)
    try:
        if not wait_for(lambda: ready.exists() and ready.read_text(), serving):
            want(False, f"the hub serves: {log.read_text()}")
            return
        for program, vault in ((diary, "phone-plain"), (desk, "desk")):
            opened(program, demo / "work" / vault, demo, log, environment)
        want(serving.poll() is None, f"the hub serves until it is asked to end: {log.read_text()[-2000:]}")
    finally:
        code = end(serving)
    want(code == 0, f"the hub ends with exit code 0, not {code}")


def main():
    ebbline, hub, desk, diary, folder = map(Path, sys.argv[1:])
    shutil.rmtree(folder, ignore_errors=True)
    demo, home, runtime = folder / "demo", folder / "home", folder / "runtime"
    for made in (home, runtime):
        made.mkdir(parents=True)
    runtime.chmod(0o700)
    # Nothing of who runs this: no session, no settings. Where the locale is no UTF-8, Qt says that it takes another.
    environment = {name: value for name, value in os.environ.items() if not name.startswith(("DBUS_", "XDG_"))}
    environment |= {"HOME": str(home), "XDG_RUNTIME_DIR": str(runtime), "LC_ALL": "C.UTF-8"}
    seeded = subprocess.run([ebbline, "demo", "--out", demo], capture_output=True, text=True, env=environment)
    want(seeded.returncode == 0, f"the demo is seeded: {seeded.stderr[-2000:]}")
    if not FAULTS:
        open_demo(hub, desk, diary, demo, environment)
    for fault in FAULTS:
        print("wanted:", fault)
    return 1 if FAULTS else 0


if __name__ == "__main__":
    sys.exit(main())
