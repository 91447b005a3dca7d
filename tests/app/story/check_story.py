"""Plays the story and holds its summary, its pictures and its sheet to what the scenario promises.

usage: check_story.py EBBLINE FOLDER
"""

import json
import shutil
import subprocess
import sys
from pathlib import Path

FAULTS = []


def want(holds, what):
    if not holds:
        FAULTS.append(what)


def findings_of(summary, course, trigger=None):
    return [f for f in summary["findings"] if f["course"] == course and trigger in (None, f["trigger"])]


def soonest(findings):
    """Hours after the onset of the first finding at or after it."""
    return min((f["hours_after_onset"] for f in findings if f.get("hours_after_onset", -1) >= 0), default=None)


def check_steps(steps):
    want(steps["treatments"] == 5, "five treatments")
    want(steps["phones joined"] == 5, "five phones joined")
    want(steps["follow-ups recorded"] == 5, "five follow-ups")
    want(steps["vaults verified"] == 6, "five vaults of phones and one of the desk, verified")
    want(steps["entries"] >= 100, f"a hundred entries, not {steps['entries']}")
    want(steps.get("entries written offline", 0) > 0, "an entry written offline")
    want(steps.get("warnings shown on phones", 0) > 0, "a warning on a phone")
    want(steps.get("calls", 0) > 0, "a call")
    want(steps.get("notes to silent patients", 0) > 0, "a note to the silent patient")
    want(steps.get("envelopes refused", 0) == 0, "no envelope refused")
    want(steps.get("reminders answered", 0) > 0, "reminders answered")
    taken = steps.get("photographs taken", 0)
    want(taken >= 10 and steps.get("photographs at the desk") == taken, f"each of ten photographs and more at the desk, whole; {taken} were taken")


def check_findings(summary):
    loud = ("emergency", "call-now")
    want(not [f for f in findings_of(summary, "plain") if f["urgency"] in loud], "no loud finding in the ordinary course")
    for course, hours in (("haematoma", 24), ("infection", 72)):
        found = soonest([f for f in findings_of(summary, course) if f["urgency"] in loud])
        want(found is not None and found <= hours, f"{course} found within {hours} hours of its onset, not {found}")
    want(findings_of(summary, "silent", "silence"), "the silent patient on the silent list")
    want(findings_of(summary, "puckering", "persistent-puckering"), "the dimple that stays")
    for finding in summary["findings"]:
        want(finding["reason"].strip(), f"a reason for {finding['trigger']}")


def check_hub(hub):
    want(hub["bytes_stored"] > 0 and hub["bytes_carried"] > 0, "something went through the hub")
    want(hub["words_readable"] == [] and hub["entries_readable"] == 0, "nothing readable at the hub or on the way")
    want(hub["words_searched"] >= 10 and hub["entries_searched"] >= 100, "a search for many words and entries")
    want(hub["notes_found_on_phones"] > 0, "the same search finds notes where they are")


def check_files(folder, pictures):
    shown = sorted(folder.glob("*.png"))
    want(len(shown) == pictures, f"a file for each of {pictures} pictures, not {len(shown)}")
    want(pictures >= 100, f"a hundred pictures and more, not {pictures}")
    for picture in shown:
        want(picture.read_bytes()[:8] == b"\x89PNG\r\n\x1a\n" and picture.stat().st_size > 4000, f"a picture in {picture.name}")
    for language in ("en", "de", "ar"):
        sheet = folder / f"follow-up-sheet-{language}.pdf"
        want(sheet.exists() and sheet.read_bytes().startswith(b"%PDF-"), f"a sheet in {sheet.name}")


def check_folders(ebbline, beside):
    """A folder that is not a story's own is left as it is, and so is the current one."""
    shutil.rmtree(beside, ignore_errors=True)
    beside.mkdir(parents=True)
    letter = beside / "letter.txt"
    letter.write_text("kept")
    for command in ("story", "demo"):
        for out, said in ((beside, "is not empty"), (".", "is not empty"), ("", "names no folder")):
            refused = subprocess.run([ebbline, command, "--out", str(out)], cwd=beside, capture_output=True, text=True)
            want(refused.returncode == 2 and said in refused.stderr, f"{command} --out '{out}' refused: {refused.stderr}")
    want([each.name for each in beside.iterdir()] == ["letter.txt"], "the folder left as it was")


def main():
    ebbline, folder = sys.argv[1], Path(sys.argv[2])
    check_folders(ebbline, folder.with_name("not-a-story"))
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    played = subprocess.run([ebbline, "story", "--out", str(folder)], capture_output=True, text=True)
    want(played.returncode == 0, f"exit code 0, not {played.returncode}: {played.stderr.splitlines()[-1:]}")
    file = folder / "summary.json"
    if file.exists():
        summary = json.loads(file.read_text())
        want(summary["result"] == "played to the end", summary["result"])
        check_steps(summary["steps"])
        check_findings(summary)
        check_hub(summary["hub"])
        check_files(folder, summary["steps"].get("pictures", 0))
    else:
        want(False, "a summary")
    for fault in FAULTS:
        print("wanted:", fault)
    return 1 if FAULTS else 0


if __name__ == "__main__":
    sys.exit(main())
