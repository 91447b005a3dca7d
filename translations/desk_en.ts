<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en">
    <context>
        <name>Charts</name>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course behind it</numerusform>
                <numerusform>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln courses behind it</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>Usual range, 10th to 90th of 100 patients (%1): from %Ln course, learned %2</numerusform>
                <numerusform>Usual range, 10th to 90th of 100 patients (%1): from %Ln courses, learned %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1: %Ln score, day %2 to day %3.</numerusform>
                <numerusform>%1: %Ln scores, day %2 to day %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>More than %1 mL along track %2 (common practice, no source)</numerusform>
                <numerusform>More than %1 mL along tracks %2 (common practice, no source)</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Findings</name>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>No entry for %Ln day.</numerusform>
                <numerusform>No entry for %Ln days.</numerusform>
            </translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</translation>
        </message>
    </context>
    <context>
        <name>PlacementList</name>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln thread</numerusform>
                <numerusform>%Ln threads</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>reminds every day at %1</numerusform>
                <numerusform>reminds every %Ln days at %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>at least %Ln point</numerusform>
                <numerusform>at least %Ln points</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>at least %Ln point above the lowest, from day %1 on</numerusform>
                <numerusform>at least %Ln points above the lowest, from day %1 on</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>at least %Ln point between the sides</numerusform>
                <numerusform>at least %Ln points between the sides</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>from day %1 on, at least %Ln point</numerusform>
                <numerusform>from day %1 on, at least %Ln points</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>after %Ln day</numerusform>
                <numerusform>after %Ln days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>up to day %1, at least %Ln point between the sides over pain, swelling, bruising and tightness</numerusform>
                <numerusform>up to day %1, at least %Ln points between the sides over pain, swelling, bruising and tightness</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>from day %1 on, at least %Ln point between the sides over pain, swelling and tightness</numerusform>
                <numerusform>from day %1 on, at least %Ln points between the sides over pain, swelling and tightness</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>at least %Ln point over the last three days</numerusform>
                <numerusform>at least %Ln points over the last three days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>from day %1 on, at least %Ln point, after a peak of %2 or more</numerusform>
                <numerusform>from day %1 on, at least %Ln points, after a peak of %2 or more</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>%Ln entry not opened yet.</numerusform>
                <numerusform>%Ln entries not opened yet.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>%Ln message from the patient not read yet.</numerusform>
                <numerusform>%Ln messages from the patient not read yet.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>%Ln thread without a lot number.</numerusform>
                <numerusform>%Ln threads without a lot number.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>%1 of %Ln reminder answered “done”.</numerusform>
                <numerusform>%1 of %Ln reminders answered “done”.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln entry</numerusform>
                <numerusform>%Ln entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>on %Ln day</numerusform>
                <numerusform>on %Ln days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message numerus="yes">
            <source>%Ln min</source>
            <translation>
                <numerusform>%Ln min</numerusform>
                <numerusform>%Ln min</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln h</source>
            <translation>
                <numerusform>%Ln h</numerusform>
                <numerusform>%Ln h</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln day(s)</source>
            <translation>
                <numerusform>%Ln day</numerusform>
                <numerusform>%Ln days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln thread</numerusform>
                <numerusform>%Ln threads</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>%1 of %Ln reminder answered “done”</numerusform>
                <numerusform>%1 of %Ln reminders answered “done”</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln new or corrected entry, not opened yet</numerusform>
                <numerusform>%Ln new or corrected entries, not opened yet</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln not opened</numerusform>
                <numerusform>%Ln not opened</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>%Ln message not read</numerusform>
                <numerusform>%Ln messages not read</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln course</numerusform>
                <numerusform>%Ln courses</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>%Ln message could not be verified and was set apart.</numerusform>
                <numerusform>%Ln messages could not be verified and were set apart.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>and %Ln more</numerusform>
                <numerusform>and %Ln more</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>%Ln phone not heard of for more than a day.</numerusform>
                <numerusform>%Ln phones not heard of for more than a day.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>%Ln phone has not confirmed for more than a day what was sent to it.</numerusform>
                <numerusform>%Ln phones have not confirmed for more than a day what was sent to them.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>%Ln phone has yet to confirm what was sent to it.</numerusform>
                <numerusform>%Ln phones have yet to confirm what was sent to them.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>and %Ln more</numerusform>
                <numerusform>and %Ln more</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln not opened</numerusform>
                <numerusform>%Ln not opened</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>%Ln emergency</numerusform>
                <numerusform>%Ln emergencies</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln to call now</numerusform>
                <numerusform>%Ln to call now</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln for the next working day</numerusform>
                <numerusform>%Ln for the next working day</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln for the follow-up</numerusform>
                <numerusform>%Ln for the follow-up</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln not heard from</numerusform>
                <numerusform>%Ln not heard from</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln hidden by search or filters</numerusform>
                <numerusform>%Ln hidden by search or filters</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln waits longer than agreed.</numerusform>
                <numerusform>%Ln wait longer than agreed.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>%Ln urgent row is hidden by search or filters</numerusform>
                <numerusform>%Ln urgent rows are hidden by search or filters</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Choose a passphrase of at least %Ln character. It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</numerusform>
                <numerusform>Choose a passphrase of at least %Ln characters. It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Too short: at least %Ln character.</numerusform>
                <numerusform>Too short: at least %Ln characters.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>No signal in %Ln treatment.</numerusform>
                <numerusform>No signal in %Ln treatments.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln signal: look at the courses before it.</numerusform>
                <numerusform>%Ln signals: look at the courses before each.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>Not settled: %Ln course has no known outcome, from before the last one shown.</numerusform>
                <numerusform>Not settled: %Ln courses have no known outcome, some from before the last one shown.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week.</numerusform>
                <numerusform>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln weeks.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>No alert in %Ln course.</numerusform>
                <numerusform>No alert in %Ln courses.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>Not enough to say: %Ln known outcome, %1 are needed</numerusform>
                <numerusform>Not enough to say: %Ln known outcomes, %1 are needed</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>Not enough to say: %Ln course had it, %1 are needed</numerusform>
                <numerusform>Not enough to say: %Ln courses had it, %1 are needed</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>Not enough to say: followed for %Ln day, %1 are needed</numerusform>
                <numerusform>Not enough to say: followed for %Ln days, %1 are needed</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>Not enough to say: %Ln group, %1 are needed</numerusform>
                <numerusform>Not enough to say: %Ln groups, %1 are needed</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln course(s)</source>
            <translation>
                <numerusform>%1 of %Ln course</numerusform>
                <numerusform>%1 of %Ln courses</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln course without a follow-up is not counted: it may be worse or better.</numerusform>
                <numerusform>%Ln courses without a follow-up are not counted: they may be worse or better.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln course</numerusform>
                <numerusform>%Ln courses</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · %Ln with a known outcome</numerusform>
                <numerusform>%1 · %Ln with a known outcome</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>%Ln course may teach a new version.</numerusform>
                <numerusform>%Ln courses may teach a new version.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>%Ln course may teach. %1 are needed to check a version.</numerusform>
                <numerusform>%Ln courses may teach. %1 are needed to check a version.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>Learned from %Ln course by %1, %2</numerusform>
                <numerusform>Learned from %Ln courses by %1, %2</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Bands</name>
        <message numerus="yes">
            <source>%Ln course(s): the patient has not agreed that her course teaches</source>
            <translation>
                <numerusform>%Ln course: the patient has not agreed that her course teaches</numerusform>
                <numerusform>%Ln courses: the patient has not agreed that her course teaches</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln course: no follow-up yet, nobody knows how it ended</numerusform>
                <numerusform>%Ln courses: no follow-up yet, nobody knows how they ended</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln course: complicated</numerusform>
                <numerusform>%Ln courses: complicated</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln course: treated because of a finding</numerusform>
                <numerusform>%Ln courses: treated because of a finding</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln course: too few days with an entry</numerusform>
                <numerusform>%Ln courses: too few days with an entry</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>Cannot be used: %Ln course behind it, %1 are needed.</numerusform>
                <numerusform>Cannot be used: %Ln courses behind it, %1 are needed.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>Cannot be used yet: it could be checked on %Ln course of this clinic, %1 are needed.</numerusform>
                <numerusform>Cannot be used yet: it could be checked on %Ln courses of this clinic, %1 are needed.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course.</numerusform>
                <numerusform>Taken from a file by %1, %2. There it is called %3 and rests on %Ln courses.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolEditor</name>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>%Ln past course would have been flagged otherwise.</numerusform>
                <numerusform>%Ln past courses would have been flagged otherwise.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln entry</numerusform>
                <numerusform>%Ln entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln finding</numerusform>
                <numerusform>%Ln findings</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln message</numerusform>
                <numerusform>%Ln messages</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>The new one is too short: at least %Ln character.</numerusform>
                <numerusform>The new one is too short: at least %Ln characters.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>Whole: %Ln thing written, in its place, and what is shown follows from it.</numerusform>
                <numerusform>Whole: %Ln things written, each in its place, and what is shown follows from them.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>%Ln fault was found. Make no more entries here, keep this computer as it is, and restore the last backup. It is: %1</numerusform>
                <numerusform>%Ln faults were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>%Ln entry opened</numerusform>
                <numerusform>%Ln entries opened</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>%Ln line</numerusform>
                <numerusform>%Ln lines</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message numerus="yes">
            <source>%Ln invented course(s)</source>
            <translation>
                <numerusform>%Ln invented course</numerusform>
                <numerusform>%Ln invented courses</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln uncomplicated course(s)</source>
            <translation>
                <numerusform>%Ln uncomplicated course</numerusform>
                <numerusform>%Ln uncomplicated courses</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Photos</name>
        <message numerus="yes">
            <source>%Ln photograph(s)</source>
            <translation>
                <numerusform>%Ln photograph</numerusform>
                <numerusform>%Ln photographs</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln still arriving</source>
            <translation>
                <numerusform>%Ln still arriving</numerusform>
                <numerusform>%Ln still arriving</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln reminder done</numerusform>
                <numerusform>%Ln reminders done</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SettingsBoard</name>
        <message numerus="yes">
            <source>%Ln minute(s)</source>
            <translation>
                <numerusform>%Ln minute</numerusform>
                <numerusform>%Ln minutes</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>A phone before this one still holds one thing that did not arrive</numerusform>
                <numerusform>A phone before this one still holds %Ln things that did not arrive</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TreatmentEditor</name>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>The treatment was %Ln day ago. Say whether that is right.</numerusform>
                <numerusform>The treatment was %Ln days ago. Say whether that is right.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln waits too long</numerusform>
                <numerusform>%Ln wait too long</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln in the queue waits too long.</numerusform>
                <numerusform>%Ln in the queue wait too long.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>%Ln message of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</numerusform>
                <numerusform>%Ln messages of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>%Ln thing in this course was written by a newer program and cannot be shown here. Update this desk, and call until then.</numerusform>
                <numerusform>%Ln things in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</numerusform>
            </translation>
        </message>
    </context>
</TS>
