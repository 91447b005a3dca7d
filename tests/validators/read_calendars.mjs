// Reads calendars of the diary with a library that knows nothing of ours, ical.js, by the zones as the files describe them, and holds
// them to what write_calendars put beside each. Then every way of spoilt_calendars.json to spoil one must be noticed, or the reader sees nothing.
//
// The library reads an event without UID or DTSTAMP: what a component must have is asked here, by RFC 5545 sections 3.6 to 3.6.6.
//
// usage: node read_calendars.mjs FOLDER
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';

const required = {
    vcalendar: ['version', 'prodid'],
    vtimezone: ['tzid'],
    standard: ['dtstart', 'tzoffsetfrom', 'tzoffsetto'],
    daylight: ['dtstart', 'tzoffsetfrom', 'tzoffsetto'],
    vevent: ['uid', 'dtstamp', 'dtstart'],
    valarm: ['action', 'trigger', 'description'],
};

function lacking(component) {
    const missing = (required[component.name] ?? []).filter(name => !component.hasProperty(name)).map(name => `${component.name} without ${name}`);
    return [...missing, ...component.getAllSubcomponents().flatMap(lacking)];
}

function eventFaults(component, wanted, summary, zones) {
    const uid = component.getFirstPropertyValue('uid');
    const faults = [];
    const start = component.getFirstProperty('dtstart');
    const zone = start.getParameter('tzid');
    if (zone && !zones.has(zone)) {
        faults.push('a zone that is not described');
    }
    const time = start.getFirstValue();
    const roundTrip = ICAL.Time.fromData({ year: time.year, month: time.month, day: time.day, hour: time.hour, minute: time.minute, second: time.second });
    const shown = start.toICALString().replace(/^[^:]*:/, '').replace('Z', '');
    if (roundTrip.toICALString() !== shown) {
        faults.push('a start that is no time');
    }
    const at = new Date((zone ? time.convertToZone(ICAL.Timezone.utcTimezone) : time).toUnixTime() * 1000);
    if (at.getTime() !== Date.parse(wanted.get(uid))) {
        faults.push(`at ${at.toISOString()}, not ${wanted.get(uid)}`);
    }
    if (component.getFirstPropertyValue('summary') !== summary || component.getFirstPropertyValue('class') !== 'PRIVATE') {
        faults.push('other words, or for everybody');
    }
    const alarms = component.getAllSubcomponents('valarm');
    if (alarms.length !== 1 || alarms[0].getFirstPropertyValue('action') !== 'DISPLAY' || alarms[0].getFirstPropertyValue('trigger').toSeconds() !== 0) {
        faults.push('not one alarm at its start');
    }
    return faults.map(fault => `${uid}: ${fault}`);
}

function faultsOf(text, expected) {
    try {
        const calendar = new ICAL.Component(ICAL.parse(text));
        const faults = lacking(calendar);
        if (calendar.getFirstPropertyValue('version') !== '2.0') {
            faults.push('version');
        }
        const wanted = new Map(expected.events.map(event => [event.uid, event.at]));
        const zones = new Set(calendar.getAllSubcomponents('vtimezone').map(zone => zone.getFirstPropertyValue('tzid')));
        const events = calendar.getAllSubcomponents('vevent');
        if (events.length !== wanted.size) {
            faults.push(`${events.length} events, not ${wanted.size}`);
        }
        return [...faults, ...events.flatMap(event => eventFaults(event, wanted, expected.summary, zones))];
    } catch (problem) {  // whatever the library throws, it has refused the file
        return [`${problem.name}: ${problem.message}`];
    }
}

const folder = process.argv[2];
const ways = JSON.parse(readFileSync(new URL('spoilt_calendars.json', import.meta.url), 'utf8'));
const noticed = new Map(ways.map(way => [way.what, 0]));
const files = readdirSync(folder).filter(name => name.endsWith('.ics')).sort();
let bad = 0;
let events = 0;
const say = fault => {
    console.error(fault);
    bad += 1;
};
for (const name of files) {
    const text = readFileSync(join(folder, name), 'utf8');
    const expected = JSON.parse(readFileSync(join(folder, name.replace(/ics$/, 'json')), 'utf8'));
    events += expected.events.length;
    faultsOf(text, expected).forEach(fault => say(`${name}: ${fault}`));
    for (const way of ways) {
        const spoilt = text.replace(new RegExp(way.find), way.put.replaceAll('\\r', '\r'));
        if (spoilt === text) {
            continue;
        }
        if (faultsOf(spoilt, expected).length > 0) {
            noticed.set(way.what, noticed.get(way.what) + 1);
        } else {
            say(`${name}: ${way.what} was not noticed`);
        }
    }
}
for (const [what, times] of noticed) {
    if (times === 0) {
        say(`${what}: noticed in no file`);
    }
}
if (files.length < 3) {
    say(`only ${files.length} calendars in ${folder}`);
}
console.log(`ical.js: ${files.length} calendars, ${events} events: ${bad} faults; ${[...noticed.values()].reduce((a, b) => a + b, 0)} spoilt ones noticed`);
process.exit(bad === 0 ? 0 : 1);
