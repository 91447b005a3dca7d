"""Plays the story and holds its summary, its pictures and its sheet to what the scenario promises.

usage: check_story.py EBBLINE FOLDER

Afterwards the summary, what was said, the pictures and the sheets are broken in every way that they are held to, one at a time,
and each must be noticed.
"""

import copy
import hashlib
import json
import os
import re
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


# What is counted, and must be none.
NEVER = ("syncs with a problem", "syncs that missed a message", "syncs that saw two histories", "syncs with a vault older than the clinic's",
         "envelopes refused", "photographs refused", "looks with a backup overdue", "looks at a desk that does not hear the hub")
LANGUAGES = ("en", "de", "ar")
# What must be among the pictures, beside those of each page: a treatment with threads and dose, the code and the six digits at
# either end, what is due and what is to come, and a follow-up.
PICTURES = tuple(f"desk-day0-treatment-{step}" for step in ("patient", "threads", "anaesthetic", "care")) \
    + tuple(f"desk-day0-pairing-{state}" for state in ("choice", "code", "digits", "linked")) \
    + tuple(f"phone-day0-{state}" for state in ("join-code", "join-digits", "today", "reminders-to-come", "care-plan", "reminders-due", "evening")) \
    + tuple(f"desk-visit-follow-up-{state}" for state in ("written", "recorded")) \
    + tuple(f"desk-treatment-{step}-{language}" for step in (1, 2, 3, 4) for language in LANGUAGES)


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
    for never in NEVER:
        want(steps.get(never) == 0, f"none of the {never}, and their number: {steps.get(never)}")
    want(steps.get("syncs", 0) >= 100, "a hundred syncs")
    want(steps.get("entries tapped in", 0) >= 20, "twenty entries tapped in question by question")
    for act in ("calls on the page of calls", "findings closed at the queue", "findings closed on the page of the course",
                "findings seen on the page of the course"):
        want(steps.get(act, 0) > 0, act)
    want(steps.get("reminders answered", 0) > 0, "reminders answered")
    taken = steps.get("photographs taken", 0)
    want(taken >= 10 and steps.get("photographs at the desk") == taken, f"each of ten photographs and more at the desk, whole; {taken} were taken")


def check_findings(summary):
    loud = ("emergency", "call-now")
    want(not [f for f in findings_of(summary, "plain") if f["urgency"] in loud], "no loud finding in the ordinary course")
    for course, hours in (("haematoma", 24), ("infection", 72)):
        found = soonest([f for f in findings_of(summary, course) if f["urgency"] in loud])
        want(found is not None and found <= hours, f"{course} found within {hours} hours of its onset, not {found}")
    # The days are the protocol's. Who falls silent on a day may have written until its end.
    days = summary["protocol"]
    silence = sorted(findings_of(summary, "silent", "silence"), key=lambda finding: finding["hours_after_onset"])
    want(len(silence) == 2, "the silent patient on the silent list, for her days without a word and for the visit that passed")
    want(all("visit_day" not in finding for finding in silence[:1]), "the first silence for her days without a word, whatever was agreed")
    for finding in silence[1:]:
        # Her visit was on a day that is over when the clinic hears of it, and no earlier.
        visit = finding.get("visit_day")
        want(visit is not None and finding["day"] == visit + 1, f"the second silence on the day after her visit, not on day {finding['day']} for a visit on {visit}")
    for finding in silence:
        want(finding["symptom"] == "-" and finding["side"] == "-", f"silence is about no symptom and no side, not {finding['symptom']}")
    for finding in silence[:1]:
        low, high = 24 * min(days["silent_days"], days["silent_days_when_high"]), 24 * (days["silent_days"] + 1)
        want(low <= finding["hours_after_onset"] <= high, f"silence after {low} to {high} hours, not {finding['hours_after_onset']}")
    dimple = findings_of(summary, "puckering", "persistent-puckering")
    first = min((finding["day"] for finding in dimple), default=None)
    want(first == days["puckering_kept_day"], f"the dimple that stays on day {days['puckering_kept_day']}, not {first}")
    for finding in summary["findings"]:
        # The clinic looks at 9:30 and at 21:00.
        if finding["course"] != "plain":
            want(0 <= finding["hours_to_queue"] <= 12.5, f"{finding['course']}: {finding['trigger']} at the next look, not after {finding['hours_to_queue']} hours")
    for finding in summary["findings"]:
        want(finding["reason"].strip(), f"a reason for {finding['trigger']}")


def check_hub(hub):
    want(hub["database_bytes"] > 0 and hub["bytes_carried"] > 0, "something went through the hub")
    want(hub["database_rows"] >= 100 and hub["database_cells"] > hub["database_rows"], "a hundred rows of the hub's database, read with its key")
    want(hub["planted_words_found"], "the same search finds an operation that was put into the database unsealed")
    want(hub["planted_packed_words_found"], "the same search finds a packed message that was put into the database unsealed")
    want(hub["log_holds_its_own_words"], "the same search finds the log's own words")
    want(hub["planted_entries_found"] > 0, "the same search finds an entry without a note that was put into the database unsealed")
    want(hub["planted_packed_entries_found"] > 0, "the same search finds such an entry in a packed message")
    want(hub["words_readable"] == [] and hub["entries_readable"] == 0, "nothing readable at the hub or on the way")
    want(hub["entries_readable_in_database"] == 0, "no entry, scores and all, readable in the hub's database")
    want(hub["words_searched"] >= 10 and hub["entries_searched"] >= 100, "a search for many words and entries")
    want(hub["notes_found_on_phones"] > 0, "the same search finds notes where they are")


def check_states(followed):
    """An entry tapped in: each state on the phone's own page, in this order, none left out and none ahead of proof."""
    states = followed.get("states", [])
    wanted = ("Saved on this phone", "On the clinic's computer since .+", r"Opened by Dr\. Ada Lund, .+")
    want(len(states) >= 3 and all(re.fullmatch(each, state) for each, state in zip(wanted, states)), f"the three states of an entry, not {states}")
    # Afterwards it stays opened; only the day is told in other words.
    want(all(re.fullmatch(wanted[-1], state) for state in states[3:]), f"an opened entry stays opened, not {states[3:]}")


def check_summary(summary):
    want(summary["result"] == "played to the end", summary["result"])
    check_steps(summary["steps"])
    check_findings(summary)
    check_hub(summary["hub"])
    check_states(summary["entry_followed"])


def of(summary, course, trigger):
    return findings_of(summary, course, trigger)[0]


def loud_of(summary, course):
    return [f for f in findings_of(summary, course) if f["urgency"] in ("emergency", "call-now")]


def without(summary, findings):
    summary["findings"] = [f for f in summary["findings"] if f not in findings]


# One less than what is wanted of each step.
TOO_FEW = {"treatments": 4, "phones joined": 4, "follow-ups recorded": 4, "vaults verified": 5, "entries": 99, "entries written offline": 0,
           "warnings shown on phones": 0, "calls": 0, "notes to silent patients": 0, "syncs": 99, "entries tapped in": 19,
           "calls on the page of calls": 0, "findings closed at the queue": 0, "findings closed on the page of the course": 0,
           "findings seen on the page of the course": 0, "reminders answered": 0}

# What makes a summary wrong; each must be noticed.
BREAKS = {
    "a story that stopped": lambda s: s.update(result="stopped: no hub"),
    "nine photographs": lambda s: s["steps"].update({"photographs taken": 9, "photographs at the desk": 9}),
    "a photograph that is not at the desk": lambda s: s["steps"].update({"photographs at the desk": s["steps"]["photographs taken"] - 1}),
    "a loud finding in the ordinary course": lambda s: s["findings"].append(loud_of(s, "haematoma")[0] | {"course": "plain"}),
    "a haematoma found late": lambda s: [f.update(hours_after_onset=24.1) for f in loud_of(s, "haematoma")],
    "a haematoma that nothing loud told of": lambda s: without(s, loud_of(s, "haematoma")),
    "a haematoma told of before it began": lambda s: [f.update(hours_after_onset=-1) for f in loud_of(s, "haematoma")],
    "an infection found late": lambda s: [f.update(hours_after_onset=72.1) for f in loud_of(s, "infection")],
    "an infection that nothing loud told of": lambda s: without(s, loud_of(s, "infection")),
    "an infection told of before it began": lambda s: [f.update(hours_after_onset=-1) for f in loud_of(s, "infection")],
    "an empty reason": lambda s: s["findings"][-1].update(reason=" "),
    "no silence": lambda s: without(s, findings_of(s, "silent", "silence")),
    "a silence too many": lambda s: s["findings"].append(dict(of(s, "silent", "silence"))),
    "silence too early": lambda s: of(s, "silent", "silence").update(hours_after_onset=1),
    "no dimple": lambda s: without(s, findings_of(s, "puckering", "persistent-puckering")),
    "silence a day late": lambda s: of(s, "silent", "silence").update(hours_after_onset=24 * (s["protocol"]["silent_days"] + 2)),
    "a second silence that is of no visit": lambda s: [f.pop("visit_day", None) for f in findings_of(s, "silent", "silence")],
    "a first silence that is of the visit": lambda s: [f.update(visit_day=f["day"] - 1) for f in findings_of(s, "silent", "silence")],
    "a visit missed on its own day": lambda s: [f.update(day=f["visit_day"]) for f in findings_of(s, "silent", "silence") if "visit_day" in f],
    "silence about pain": lambda s: of(s, "silent", "silence").update(symptom="pain"),
    "a dimple found a day late": lambda s: [f.update(day=f["day"] + 1) for f in findings_of(s, "puckering", "persistent-puckering")],
    "a finding that waits for a day": lambda s: of(s, "puckering", "persistent-puckering").update(hours_to_queue=24),
    "nothing kept at the hub": lambda s: s["hub"].update(database_bytes=0),
    "nothing carried": lambda s: s["hub"].update(bytes_carried=0),
    "rows without cells": lambda s: s["hub"].update(database_cells=0),
    "a log that nobody read": lambda s: s["hub"].update(log_holds_its_own_words=False),
    "a search for nine words": lambda s: s["hub"].update(words_searched=9),
    "a search for 99 entries": lambda s: s["hub"].update(entries_searched=99),
    "no note on any phone": lambda s: s["hub"].update(notes_found_on_phones=0),
    "an entry readable on the way": lambda s: s["hub"].update(entries_readable=1),
    "a word readable at the hub": lambda s: s["hub"]["words_readable"].append("swelling"),
    "a search of the hub that finds nothing": lambda s: s["hub"].update(planted_words_found=[]),
    "a search of the hub that passes over what is packed": lambda s: s["hub"].update(planted_packed_words_found=[]),
    "an entry readable in the hub's database": lambda s: s["hub"].update(entries_readable_in_database=1),
    "a search of the hub for entries that finds nothing": lambda s: s["hub"].update(planted_entries_found=0),
    "a search of the hub for entries that passes over what is packed": lambda s: s["hub"].update(planted_packed_entries_found=0),
    "an empty database": lambda s: s["hub"].update(database_rows=0),
    "a state ahead of proof": lambda s: s["entry_followed"]["states"].pop(1),
    "opened by nobody": lambda s: s["entry_followed"].update(states=s["entry_followed"]["states"][:2]),
    "an opened entry that is saved again": lambda s: s["entry_followed"]["states"].append("Saved on this phone"),
}
BREAKS |= {f"only {number} {step}": lambda s, step=step, number=number: s["steps"].update({step: number}) for step, number in TOO_FEW.items()}
BREAKS |= {f"one of the {never}": lambda s, never=never: s["steps"].update({never: 1}) for never in NEVER}
BREAKS |= {f"{never} that nobody counted": lambda s, never=never: s["steps"].pop(never) for never in NEVER}


def check_said(said):
    """A story says how far it is to its last picture, and nothing else: a page or a library that complains is a fault."""
    want("\r" not in said, "lines, where nobody can write over one")
    drawn = re.findall(r"^ebbline story: drawing (\d+) of (\d+)$", said, re.MULTILINE)
    want(drawn and drawn[-1][0] == drawn[-1][1] and len(drawn) >= 10, f"how many of all are drawn, to the last, not {drawn[-1:]}")
    for line in re.split(r"[\r\n]+", said):
        want(not line.strip() or re.fullmatch(r"ebbline story: (day|drawing) \d+ of \d+", line), f"no complaint: {line}")


def check_twins(pictures):
    """Pictures, by name, of one program in one language, look and size of text: no two are the same."""
    seen = {}
    for name, picture in sorted(pictures.items()):
        ending = re.search(r"-(en|de|ar|dark|200)$", name)
        key = (name.split("-")[0], ending and ending[1], hashlib.sha256(picture).digest())
        twin = seen.setdefault(key, name)
        want(twin == name, f"two pictures, not one: {twin} and {name} are the same")


def noticed(check, broken):
    before = len(FAULTS)
    check(broken)
    found = len(FAULTS) > before
    del FAULTS[before:]
    return found


def check_the_check(summary, said, pictures, sheets):
    for what, breaks in BREAKS.items():
        broken = copy.deepcopy(summary)
        breaks(broken)
        want(noticed(check_summary, broken), f"that {what} is noticed")
    for line in ("qrc:/qt/qml/Ebbline/Desk/QueuePage.qml:7:1: Expected token", "ebbline: day 1 of 2", "ebbline story: day 1 of 2 QFont"):
        for broken in (f"{line}\n{said}", f"{said}{line}\n", f"\r{line}{said}"):
            want(noticed(check_said, broken), f"that '{line}' is noticed")
    silent = "".join(line for line in said.splitlines(keepends=True) if "drawing" not in line)
    for what, broken in (("silence while pictures are drawn", silent), ("a line that is written over", said.replace("\n", "\r"))):
        want(noticed(check_said, broken), f"that {what} is noticed")
    for program, pages in (("phone", ("history", "settings")), ("desk", ("courses", "licence"))):
        for language in LANGUAGES:
            one, other = (f"{program}-{page}-{language}" for page in pages)
            want(noticed(check_twins, pictures | {one: pictures[other]}), f"that {one} and {other} are one picture is noticed")
    want(not noticed(check_twins, pictures | {"phone-history-de": pictures["phone-history-en"]}), "that a page may look the same in two languages")
    counted, (name, picture) = len(pictures), next(iter(pictures.items()))
    for what, broken in (("a missing picture", ({each: pictures[each] for each in pictures if each != name}, sheets, counted)),
                         ("a picture that nobody counted", (pictures, sheets, counted - 1)),
                         ("99 pictures", (dict(list(pictures.items())[:99]), sheets, 99)),
                         ("a picture cut short", (pictures | {name: picture[:4000]}, sheets, counted)),
                         ("a picture that is none", (pictures | {name: b"none" + picture[4:]}, sheets, counted))):
        want(noticed(lambda files: check_files(*files), broken), f"that {what} is noticed")
    for each in PICTURES:
        left = {other: pictures[other] for other in pictures if other != each}
        want(noticed(lambda files: check_files(*files), (left, sheets, counted - 1)), f"that {each} is missing is noticed")
    for sheet in sheets:
        others = {each: sheets[each] for each in sheets if each != sheet}
        for what, left in (("missing", others), ("no PDF", others | {sheet: b"<html>"})):
            want(noticed(lambda files: check_files(pictures, files, counted), left), f"that {sheet} is {what} is noticed")


def check_files(pictures, sheets, counted):
    """Pictures and sheets, by name, as they lie in the folder."""
    want(len(pictures) == counted, f"a file for each of {counted} pictures, not {len(pictures)}")
    want(counted >= 100, f"a hundred pictures and more, not {counted}")
    for name, picture in pictures.items():
        want(picture.startswith(b"\x89PNG\r\n\x1a\n") and len(picture) > 4000, f"a picture in {name}.png")
    for name in PICTURES:
        want(name in pictures, f"a picture {name}")
    for language in LANGUAGES:
        want(sheets.get(f"follow-up-sheet-{language}", b"").startswith(b"%PDF-"), f"a sheet in {language}")


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
    # Where the locale is no UTF-8, Qt says that it takes another: about the machine, not about the story.
    played = subprocess.run([ebbline, "story", "--out", str(folder)], capture_output=True, text=True, env=os.environ | {"LC_ALL": "C.UTF-8"})
    want(played.returncode == 0, f"exit code 0, not {played.returncode}: {played.stderr.splitlines()[-1:]}")
    check_said(played.stderr)
    pictures = {file.stem: file.read_bytes() for file in folder.glob("*.png")}
    check_twins(pictures)
    file = folder / "summary.json"
    if file.exists():
        summary = json.loads(file.read_text())
        check_summary(summary)
        sheets = {sheet.stem: sheet.read_bytes() for sheet in folder.glob("*.pdf")}
        check_files(pictures, sheets, summary["steps"].get("pictures", 0))
        if not FAULTS:
            check_the_check(summary, played.stderr, pictures, sheets)
    else:
        want(False, "a summary")
    for fault in FAULTS:
        print("wanted:", fault)
    return 1 if FAULTS else 0


if __name__ == "__main__":
    sys.exit(main())
