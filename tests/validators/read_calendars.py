"""Reads calendars of the diary with a library that knows nothing of ours, icalendar for Python (python3-icalendar), and holds them to what
write_calendars put beside each. Then every way of spoilt_calendars.json to spoil one must be noticed, or the reader sees nothing.

The library reads an event without UID or DTSTAMP: what a component must have is asked of its own table of required properties.

usage: read_calendars.py FOLDER
"""

import datetime
import json
import re
import sys
from pathlib import Path

import icalendar

UTC = datetime.timezone.utc


def faults_of(text, expected):
    try:
        return faults_read(icalendar.Calendar.from_ical(text), expected)
    except Exception as problem:  # whatever the library throws, it has refused the file
        return [f"{type(problem).__name__}: {problem}"]


def placed(zone, wall):
    """A wall clock in a zone, the first of two where it comes twice. Until version 6 the library makes zones of another kind."""
    return zone.localize(wall, is_dst=True) if hasattr(zone, "localize") else wall.replace(tzinfo=zone, fold=0)


def described(calendar):
    """The zones as the file itself describes them. One of summers alone cannot be told apart from its winter by the library."""
    zones = {}
    for zone in calendar.walk("VTIMEZONE"):
        if zone.walk("STANDARD"):
            zones[str(zone["TZID"])] = zone.to_tz()
    return zones


def faults_read(calendar, expected):
    faults = []
    for component in calendar.walk():
        faults += [f"{component.name} without {name}" for name in component.required if name not in component]
        faults += [f"{component.name}: {what}" for what in component.errors]
    if str(calendar.get("VERSION")) != "2.0":
        faults.append("version")
    zones = described(calendar)
    named = {str(zone["TZID"]) for zone in calendar.walk("VTIMEZONE")}
    wanted = {event["uid"]: event["at"] for event in expected["events"]}
    events = calendar.walk("VEVENT")
    if len(events) != len(wanted):
        faults.append(f"{len(events)} events, not {len(wanted)}")
    for event in events:
        uid = str(event["UID"])
        at = datetime.datetime.fromisoformat(wanted[uid].replace("Z", "+00:00"))
        start = event["DTSTART"].dt
        if start.tzinfo is None:
            faults.append(f"{uid}: a start in no zone")
            continue
        zone = event["DTSTART"].params.get("TZID")
        if zone and zone not in named:
            faults.append(f"{uid}: a zone that is not described")
        if start.astimezone(UTC) != at:
            faults.append(f"{uid}: at {start}, not {at}")
        # The same wall clock by the zone as it stands in the file, not by the library's own.
        if zone in zones and placed(zones[zone], start.replace(tzinfo=None)).astimezone(UTC) != at:
            faults.append(f"{uid}: not at {at} by the file's own zone")
        if str(event["SUMMARY"]) != expected["summary"] or str(event["CLASS"]) != "PRIVATE":
            faults.append(f"{uid}: other words, or for everybody")
        alarms = event.walk("VALARM")
        if len(alarms) != 1 or str(alarms[0]["ACTION"]) != "DISPLAY" or alarms[0]["TRIGGER"].dt != datetime.timedelta(0):
            faults.append(f"{uid}: not one alarm at its start")
    return faults


def main():
    folder = Path(sys.argv[1])
    ways = json.loads((Path(__file__).parent / "spoilt_calendars.json").read_text(encoding="utf-8"))
    noticed = dict.fromkeys((way["what"] for way in ways), 0)
    bad, events = 0, 0
    files = sorted(folder.glob("*.ics"))
    for file in files:
        text = file.read_bytes().decode("utf-8")
        expected = json.loads(file.with_suffix(".json").read_text(encoding="utf-8"))
        events += len(expected["events"])
        for fault in faults_of(text, expected):
            print(f"{file.name}: {fault}", file=sys.stderr)
            bad += 1
        for way in ways:
            spoilt = re.sub(way["find"], re.sub(r"\$(\d)", r"\\g<\1>", way["put"]), text, count=1)
            if spoilt == text:
                continue
            if faults_of(spoilt, expected):
                noticed[way["what"]] += 1
            else:
                print(f"{file.name}: {way['what']} was not noticed", file=sys.stderr)
                bad += 1
    for what, times in noticed.items():
        if times == 0:
            print(f"{what}: noticed in no file", file=sys.stderr)
            bad += 1
    if len(files) < 3:
        print(f"only {len(files)} calendars in {folder}", file=sys.stderr)
        bad += 1
    print(f"icalendar {icalendar.__version__}: {len(files)} calendars, {events} events: {bad} faults; {sum(noticed.values())} spoilt ones noticed")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
