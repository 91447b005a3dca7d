<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>BaselineLine</name>
        <message>
            <source>%1, right</source>
            <translation>%1, rechts</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1, links</translation>
        </message>
    </context>
    <context>
        <name>Charts</name>
        <message>
            <source>above the usual range (%1 to %2)</source>
            <translation>über dem üblichen Bereich (%1 bis %2)</translation>
        </message>
        <message>
            <source>below the usual range (%1 to %2)</source>
            <translation>unter dem üblichen Bereich (%1 bis %2)</translation>
        </message>
        <message>
            <source>inside the usual range (%1 to %2)</source>
            <translation>im üblichen Bereich (%1 bis %2)</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>Schmerz</translation>
        </message>
        <message>
            <source>Swelling</source>
            <translation>Schwellung</translation>
        </message>
        <message>
            <source>Bruising</source>
            <translation>Bluterguss</translation>
        </message>
        <message>
            <source>Tightness</source>
            <translation>Spannung</translation>
        </message>
        <message>
            <source>Twinges</source>
            <translation>Stiche</translation>
        </message>
        <message>
            <source>Puckering</source>
            <translation>Einziehung</translation>
        </message>
        <message>
            <source>Numbness</source>
            <translation>Taubheit</translation>
        </message>
        <message>
            <source>left</source>
            <translation>links</translation>
        </message>
        <message>
            <source>right</source>
            <translation>rechts</translation>
        </message>
        <message>
            <source>%1, patient's left</source>
            <translation>%1, linke Patientenseite</translation>
        </message>
        <message>
            <source>%1, patient's right</source>
            <translation>%1, rechte Patientenseite</translation>
        </message>
        <message>
            <source>Usual range, 10th to 90th of 100 patients (%1): an assumption, no courses of this clinic behind it</source>
            <translation>Üblicher Bereich, 10. bis 90. von 100 Personen (%1): eine Annahme, ohne Verläufe dieser Praxis</translation>
        </message>
        <message>
            <source>%1: nothing recorded yet.</source>
            <translation>%1: noch nichts eingetragen.</translation>
        </message>
        <message>
            <source>Highest %1 on day %2.</source>
            <translation>Höchstwert %1 an Tag %2.</translation>
        </message>
        <message>
            <source>Last %1 on day %2</source>
            <translation>Zuletzt %1 an Tag %2</translation>
        </message>
        <message>
            <source>, %1.</source>
            <translation>, %1.</translation>
        </message>
        <message>
            <source>Expected on day %1: %2 to %3, most likely %4.</source>
            <translation>Erwartet an Tag %1: %2 bis %3, am ehesten %4.</translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>Üblicher Bereich, 10. bis 90. von 100 Personen (%1): zu wenige, nur %Ln Verlauf dahinter</numerusform>
                <numerusform>Üblicher Bereich, 10. bis 90. von 100 Personen (%1): zu wenige, nur %Ln Verläufe dahinter</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>Üblicher Bereich, 10. bis 90. von 100 Personen (%1): aus %Ln Verlauf, gelernt %2</numerusform>
                <numerusform>Üblicher Bereich, 10. bis 90. von 100 Personen (%1): aus %Ln Verläufen, gelernt %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1: %Ln Wert, Tag %2 bis Tag %3.</numerusform>
                <numerusform>%1: %Ln Werte, Tag %2 bis Tag %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ClinicPage</name>
        <message>
            <source>Clinic</source>
            <translation>Praxis</translation>
        </message>
        <message>
            <source>The numbers stand on every warning, even on a locked phone without network.</source>
            <translation>Die Nummern stehen auf jeder Warnung, auch auf einem gesperrten Telefon ohne Netz.</translation>
        </message>
        <message>
            <source>Name of the clinic</source>
            <translation>Name der Praxis</translation>
        </message>
        <message>
            <source>Phone during the day</source>
            <translation>Telefon am Tag</translation>
        </message>
        <message>
            <source>On call, if the clinic does not answer</source>
            <translation>Rufdienst, wenn die Praxis nicht abhebt</translation>
        </message>
        <message>
            <source>Emergency number of your country</source>
            <translation>Notrufnummer Ihres Landes</translation>
        </message>
        <message>
            <source>People at the desk, one name a line</source>
            <translation>Personen in der Praxis, ein Name je Zeile</translation>
        </message>
        <message>
            <source>Hub, address and port</source>
            <translation>Hub, Adresse und Port</translation>
        </message>
        <message>
            <source>Fingerprint of the hub's key, from whoever runs it</source>
            <translation>Fingerabdruck des Hub-Schlüssels, von dessen Betreiber</translation>
        </message>
        <message>
            <source>Missing: %1</source>
            <translation>Fehlt: %1</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>This clinic's key: whoever runs the hub admits it by this</source>
            <translation>Schlüssel dieser Praxis: Wer den Hub betreibt, lässt sie damit zu</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <translation>Schlüssel kopieren</translation>
        </message>
    </context>
    <context>
        <name>ClosePanel</name>
        <message>
            <source>What came of it</source>
            <translation>Was daraus wurde</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Close the finding</source>
            <translation>Befund abschließen</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Offen lassen</translation>
        </message>
    </context>
    <context>
        <name>Course</name>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>L %1</source>
            <comment>left, score</comment>
            <translation>L %1</translation>
        </message>
        <message>
            <source>R %1</source>
            <comment>right, score</comment>
            <translation>R %1</translation>
        </message>
        <message>
            <source>%1 by %2, %3</source>
            <comment>act, person, time</comment>
            <translation>%1: %2, %3</translation>
        </message>
        <message>
            <source>%1: %2. %3 Raised %4. %5</source>
            <comment>urgency, title, reason, time, acts</comment>
            <translation>%1: %2. %3 Aufgekommen %4. %5</translation>
        </message>
        <message>
            <source>entered late, %1</source>
            <translation>später eingetragen, %1</translation>
        </message>
        <message>
            <source>amended; was: %1</source>
            <translation>geändert; vorher: %1</translation>
        </message>
        <message>
            <source>no scores</source>
            <translation>keine Werte</translation>
        </message>
        <message>
            <source>Opened by %1, %2</source>
            <translation>Geöffnet von %1, %2</translation>
        </message>
        <message>
            <source>Not opened yet</source>
            <translation>Noch nicht geöffnet</translation>
        </message>
        <message>
            <source>Read on the phone, %1</source>
            <translation>Auf dem Telefon gelesen, %1</translation>
        </message>
        <message>
            <source>Not read yet</source>
            <translation>Noch nicht gelesen</translation>
        </message>
    </context>
    <context>
        <name>CourseLine</name>
        <message>
            <source>Link phone</source>
            <translation>Telefon verbinden</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
    </context>
    <context>
        <name>CoursePage</name>
        <message>
            <source>Link phone</source>
            <translation>Telefon verbinden</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Nachschau</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>Close: %1</source>
            <translation>Abschließen: %1</translation>
        </message>
    </context>
    <context>
        <name>CoursesPage</name>
        <message>
            <source>Courses</source>
            <translation>Verläufe</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Name oder Charge</translation>
        </message>
        <message>
            <source>No course</source>
            <translation>Kein Verlauf</translation>
        </message>
    </context>
    <context>
        <name>CurvePanel</name>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>Wie im Gegenüber: rechte Patientenseite links.</translation>
        </message>
        <message>
            <source>Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.</source>
            <translation>Gepunktet: der Median. Hohl: später eingetragen oder geändert. Klammer am Ende: was zur Nachschau zu erwarten ist.</translation>
        </message>
        <message>
            <source>Show as curves</source>
            <translation>Als Kurven zeigen</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Als Tabelle zeigen</translation>
        </message>
    </context>
    <context>
        <name>CurveTable</name>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Links</translation>
        </message>
        <message>
            <source>Usual</source>
            <translation>Üblich</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Nothing was recorded for this symptom.</source>
            <translation>Zu diesem Symptom wurde nichts eingetragen.</translation>
        </message>
    </context>
    <context>
        <name>Curves</name>
        <message>
            <source>highest %1 on day %2</source>
            <translation>Höchstwert %1 an Tag %2</translation>
        </message>
        <message>
            <source>halved in %1 days</source>
            <translation>halbiert in %1 Tagen</translation>
        </message>
        <message>
            <source>settled on day %1</source>
            <translation>abgeklungen an Tag %1</translation>
        </message>
        <message>
            <source>warned</source>
            <translation>gewarnt</translation>
        </message>
        <message>
            <source>dressings off</source>
            <translation>Pflaster ab</translation>
        </message>
        <message>
            <source>called</source>
            <translation>angerufen</translation>
        </message>
        <message>
            <source>visit forward</source>
            <translation>Termin vorgezogen</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>abgeschlossen</translation>
        </message>
        <message>
            <source>follow-up</source>
            <translation>Nachschau</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>Grenze nach US-Fachinformation, %1: %2 mg/kg, im Allgemeinen nicht über %3 mg</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>mit Epinephrin</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>ohne Zusatz</translation>
        </message>
        <message>
            <source>No dose can be shown: check the solution, the volumes and the weight.</source>
            <translation>Keine Dosis anzeigbar: Lösung, Mengen und Gewicht prüfen.</translation>
        </message>
        <message>
            <source>%1 mL given, %2 mg lidocaine (%3 mg/mL)</source>
            <translation>%1 ml gegeben, %2 mg Lidocain (%3 mg/ml)</translation>
        </message>
        <message>
            <source>%1 µg epinephrine</source>
            <translation>%1 µg Epinephrin</translation>
        </message>
        <message>
            <source>Enter the weight to see the maximum.</source>
            <translation>Gewicht eingeben, um die Höchstmenge zu sehen.</translation>
        </message>
        <message>
            <source>At most %1 mg</source>
            <translation>Höchstens %1 mg</translation>
        </message>
        <message>
            <source>%1 mL of this solution</source>
            <translation>%1 ml dieser Lösung</translation>
        </message>
        <message>
            <source>(the label's cap)</source>
            <translation>(Obergrenze der Fachinformation)</translation>
        </message>
        <message>
            <source>%1 of the maximum</source>
            <translation>%1 der Höchstmenge</translation>
        </message>
        <message>
            <source>Over the maximum by %1 mg. Give no more.</source>
            <translation>Um %1 mg über der Höchstmenge. Nichts mehr geben.</translation>
        </message>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>Mehr als %1 ml entlang Faden %2 (übliche Praxis, ohne Quelle)</numerusform>
                <numerusform>Mehr als %1 ml entlang der Fäden %2 (übliche Praxis, ohne Quelle)</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>Lidocain bisher</translation>
        </message>
        <message>
            <source>Count every local anaesthetic given today, also creams. Buffering thins the solution; the milligrams stay.</source>
            <translation>Zählen Sie jede örtliche Betäubung von heute mit, auch Cremes. Puffern verdünnt die Lösung; die Milligramm bleiben.</translation>
        </message>
    </context>
    <context>
        <name>EntryPanel</name>
        <message>
            <source>Entries</source>
            <translation>Einträge</translation>
        </message>
        <message>
            <source>The patient's entries show up here once the phone has sent them.</source>
            <translation>Die Einträge erscheinen hier, sobald das Telefon sie gesendet hat.</translation>
        </message>
    </context>
    <context>
        <name>FacePanel</name>
        <message>
            <source>Front</source>
            <translation>Vorn</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Linke Patientenseite</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Rechte Patientenseite</translation>
        </message>
        <message>
            <source>moves with speech</source>
            <translation>bewegt sich beim Sprechen</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>Kerbe</translation>
        </message>
        <message>
            <source>Face chart. Draw threads from the entry point to the end.</source>
            <translation>Gesichtskarte. Fäden vom Einstich zum Ende zeichnen.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Wiederholen</translation>
        </message>
        <message>
            <source>Mirror</source>
            <translation>Spiegeln</translation>
        </message>
        <message>
            <source>the chosen thread, to the other side</source>
            <translation>den gewählten Faden, auf die andere Seite</translation>
        </message>
        <message>
            <source>Mirror all</source>
            <translation>Alle spiegeln</translation>
        </message>
        <message>
            <source>Duplicate</source>
            <translation>Verdoppeln</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.</source>
            <translation>Schraffiert: die Zone, die sich beim Sprechen und Kauen bewegt, und die Kerbe des Kiefers. Übliche Praxis, ohne Quelle.</translation>
        </message>
    </context>
    <context>
        <name>FindingCard</name>
        <message>
            <source>Closed</source>
            <translation>Abgeschlossen</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Gesehen</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Angerufen</translation>
        </message>
        <message>
            <source>Visit forward</source>
            <translation>Termin vorziehen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Abschließen</translation>
        </message>
        <message>
            <source>Reopen</source>
            <translation>Wieder öffnen</translation>
        </message>
    </context>
    <context>
        <name>FindingPanel</name>
        <message>
            <source>Findings</source>
            <translation>Befunde</translation>
        </message>
        <message>
            <source>Take all</source>
            <translation>Alle übernehmen</translation>
        </message>
        <message>
            <source>Called about all</source>
            <translation>Zu allem angerufen</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>Keine Regel und kein Warnzeichen verlangt einen Blick.</translation>
        </message>
    </context>
    <context>
        <name>Findings</name>
        <message>
            <source>%1, %2</source>
            <comment>symptom, side</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: above the usual range</source>
            <translation>%1: über dem üblichen Bereich</translation>
        </message>
        <message>
            <source>%1: rising again</source>
            <translation>%1: steigt wieder</translation>
        </message>
        <message>
            <source>%1: one side much worse</source>
            <translation>%1: eine Seite viel schlechter</translation>
        </message>
        <message>
            <source>%1: slow to settle</source>
            <translation>%1: klingt langsam ab</translation>
        </message>
        <message>
            <source>%1: does not smooth out</source>
            <translation>%1: glättet sich nicht</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Nichts gehört</translation>
        </message>
        <message>
            <source>%1 on day %2; usual up to %3.</source>
            <translation>%1 an Tag %2; üblich bis %3.</translation>
        </message>
        <message>
            <source>%1 on day %2 after a low of %3.</source>
            <translation>%1 an Tag %2 nach einem Tiefstand von %3.</translation>
        </message>
        <message>
            <source>Left %1, right %2 on day %3.</source>
            <translation>Links %1, rechts %2 an Tag %3.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>Noch %1 an Tag %2.</translation>
        </message>
        <message>
            <source>Fever</source>
            <translation>Fieber</translation>
        </message>
        <message>
            <source>Fever with inflammation of the face</source>
            <translation>Fieber mit Entzündung im Gesicht</translation>
        </message>
        <message>
            <source>Weakness of the face, perhaps still the numbing</source>
            <translation>Gesichtsschwäche, vielleicht noch die Betäubung</translation>
        </message>
        <message>
            <source>Signs of a spreading inflammation</source>
            <translation>Zeichen einer sich ausbreitenden Entzündung</translation>
        </message>
        <message>
            <source>Severe pain</source>
            <translation>Starker Schmerz</translation>
        </message>
        <message>
            <source>One side swells and hurts</source>
            <translation>Eine Seite schwillt und schmerzt</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>finding, side</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Temperature %1 °C</source>
            <translation>Temperatur %1 °C</translation>
        </message>
        <message>
            <source>swelling %1 against %2</source>
            <translation>Schwellung %1 gegenüber %2</translation>
        </message>
        <message>
            <source>pain %1</source>
            <translation>Schmerz %1</translation>
        </message>
        <message>
            <source>The patient answered on day %1: %2.</source>
            <translation>Angegeben an Tag %1: %2.</translation>
        </message>
        <message>
            <source>Warning rule “%1”: acts whatever the curve says.</source>
            <translation>Warnregel „%1“: gilt, was immer die Kurve sagt.</translation>
        </message>
        <message>
            <source>Rule “%1”: statistic %2, threshold %3.</source>
            <translation>Regel „%1“: Prüfgröße %2, Schwelle %3.</translation>
        </message>
        <message>
            <source>Rule “%1”.</source>
            <translation>Regel „%1“.</translation>
        </message>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>Seit %Ln Tag kein Eintrag.</numerusform>
                <numerusform>Seit %Ln Tagen kein Eintrag.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>FollowUpPage</name>
        <message>
            <source>Follow-up of %1</source>
            <translation>Nachschau bei %1</translation>
        </message>
        <message>
            <source>Recording it closes the course.</source>
            <translation>Das Eintragen schließt den Verlauf ab.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>Against before the treatment</source>
            <translation>Gegenüber vor der Behandlung</translation>
        </message>
        <message>
            <source>How satisfied is the patient?</source>
            <translation>Wie zufrieden ist die behandelte Person?</translation>
        </message>
        <message>
            <source>Management: what was done</source>
            <translation>Vorgehen: was getan wurde</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Nächster Plan</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Komplikationen</translation>
        </message>
        <message>
            <source>An uncomplicated course</source>
            <translation>Ein unkomplizierter Verlauf</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Offene Fragen</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>Eintragen und Verlauf abschließen</translation>
        </message>
    </context>
    <context>
        <name>HelpPanel</name>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Auf, Ab</translation>
        </message>
        <message>
            <source>move in the queue</source>
            <translation>in der Warteliste gehen</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Eingabe</translation>
        </message>
        <message>
            <source>open the course</source>
            <translation>den Verlauf öffnen</translation>
        </message>
        <message>
            <source>take it: others see who is on it</source>
            <translation>übernehmen: andere sehen, wer sich kümmert</translation>
        </message>
        <message>
            <source>note that the patient was called</source>
            <translation>vermerken, dass angerufen wurde</translation>
        </message>
        <message>
            <source>close the most urgent finding, with an outcome</source>
            <translation>den dringendsten Befund mit Ergebnis abschließen</translation>
        </message>
        <message>
            <source>search</source>
            <translation>suchen</translation>
        </message>
        <message>
            <source>queue, courses</source>
            <translation>Warteliste, Verläufe</translation>
        </message>
        <message>
            <source>new treatment</source>
            <translation>neue Behandlung</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>abschließen</translation>
        </message>
        <message>
            <source>this help</source>
            <translation>diese Hilfe</translation>
        </message>
        <message>
            <source>On the face chart</source>
            <translation>Auf der Gesichtskarte</translation>
        </message>
        <message>
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over, Delete removes the chosen thread</source>
            <translation>Pfeile bewegen den Zeiger (mit Umschalt in kleinen Schritten), Leertaste setzt Einstich und Ende, Escape beginnt neu, Entf entfernt den gewählten Faden</translation>
        </message>
        <message>
            <source>Single keys (T, C, X, /) are on</source>
            <translation>Einzeltasten (T, C, X, /) sind an</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>Zurück an die Arbeit</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Ebbline, desk</source>
            <translation>Ebbline, Praxis</translation>
        </message>
        <message>
            <source>Understood</source>
            <translation>Verstanden</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Erneut versuchen</translation>
        </message>
    </context>
    <context>
        <name>MessagePanel</name>
        <message>
            <source>Messages</source>
            <translation>Nachrichten</translation>
        </message>
        <message>
            <source>No message yet.</source>
            <translation>Noch keine Nachricht.</translation>
        </message>
        <message>
            <source>Write to the patient</source>
            <translation>Nachricht schreiben</translation>
        </message>
        <message>
            <source>Send</source>
            <translation>Senden</translation>
        </message>
    </context>
    <context>
        <name>NewEntriesBar</name>
        <message>
            <source>Mark as opened by me</source>
            <translation>Als von mir geöffnet vermerken</translation>
        </message>
    </context>
    <context>
        <name>PairingChoice</name>
        <message>
            <source>Protocol: care plan, rules and usual range, signed by the clinic</source>
            <translation>Protokoll: Pflegeplan, Regeln und üblicher Bereich, von der Praxis signiert</translation>
        </message>
        <message>
            <source>Follow-up, year-month-day</source>
            <translation>Nachschau, Jahr-Monat-Tag</translation>
        </message>
    </context>
    <context>
        <name>PairingPage</name>
        <message>
            <source>Code for the patient's phone. It can also be typed: %1</source>
            <translation>Code für das Telefon. Er lässt sich auch tippen: %1</translation>
        </message>
        <message>
            <source>To type instead</source>
            <translation>Zum Eintippen</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Sechs Ziffern: %1</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>Code erstellen</translation>
        </message>
        <message>
            <source>Both show the same number</source>
            <translation>Beide zeigen dieselbe Zahl</translation>
        </message>
        <message>
            <source>They differ: stop</source>
            <translation>Sie sind verschieden: anhalten</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Neuen Code erstellen</translation>
        </message>
        <message>
            <source>To the queue</source>
            <translation>Zur Warteliste</translation>
        </message>
    </context>
    <context>
        <name>PersonPage</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Wer ist am Platz?</translation>
        </message>
        <message>
            <source>What you take, call and close carries your name, and the patient's phone shows who opened an entry.</source>
            <translation>Was Sie übernehmen, anrufen und abschließen, trägt Ihren Namen; das Telefon zeigt, wer einen Eintrag geöffnet hat.</translation>
        </message>
        <message>
            <source>Somebody is missing: edit the clinic</source>
            <translation>Jemand fehlt: Praxis bearbeiten</translation>
        </message>
    </context>
    <context>
        <name>PlacementFields</name>
        <message>
            <source>Side</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Links</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Endet</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Needle or cannula</source>
            <translation>Nadel oder Kanüle</translation>
        </message>
        <message>
            <source>Length</source>
            <translation>Länge</translation>
        </message>
        <message>
            <source>Anaesthetic along it</source>
            <translation>Betäubung entlang des Fadens</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>Expiry, year-month-day</source>
            <translation>Ablauf, Jahr-Monat-Tag</translation>
        </message>
        <message>
            <source>Thread %L1</source>
            <translation>Faden %L1</translation>
        </message>
    </context>
    <context>
        <name>PlacementList</name>
        <message>
            <source>care</source>
            <translation>Vorsicht</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln Faden</numerusform>
                <numerusform>%Ln Fäden</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message>
            <source>Take the dressings off</source>
            <translation>Pflaster abnehmen</translation>
        </message>
        <message>
            <source>Keep the entry points clean and dry</source>
            <translation>Einstichstellen sauber und trocken halten</translation>
        </message>
        <message>
            <source>Sleep on the back, head raised</source>
            <translation>Auf dem Rücken schlafen, Kopf erhöht</translation>
        </message>
        <message>
            <source>Spare the face: small bites, no wide yawns, little talking</source>
            <translation>Gesicht schonen: kleine Bissen, nicht weit gähnen, wenig reden</translation>
        </message>
        <message>
            <source>Cold pack with a cloth between</source>
            <translation>Kühlkissen mit einem Tuch dazwischen</translation>
        </message>
        <message>
            <source>No make-up</source>
            <translation>Kein Make-up</translation>
        </message>
        <message>
            <source>No massage of the face</source>
            <translation>Keine Gesichtsmassage</translation>
        </message>
        <message>
            <source>No dental work</source>
            <translation>Keine Zahnbehandlung</translation>
        </message>
        <message>
            <source>No hard exercise</source>
            <translation>Kein anstrengender Sport</translation>
        </message>
        <message>
            <source>No sauna, hammam, hot bath or pool</source>
            <translation>Keine Sauna, kein Hamam, heißes Bad oder Schwimmbad</translation>
        </message>
        <message>
            <source>No strong sun</source>
            <translation>Keine starke Sonne</translation>
        </message>
        <message>
            <source>No alcohol</source>
            <translation>Kein Alkohol</translation>
        </message>
        <message>
            <source>No smoking</source>
            <translation>Nicht rauchen</translation>
        </message>
        <message>
            <source>No shaving</source>
            <translation>Nicht rasieren</translation>
        </message>
        <message>
            <source>Write down how it is</source>
            <translation>Aufschreiben, wie es geht</translation>
        </message>
        <message>
            <source>Come to the follow-up</source>
            <translation>Zur Nachschau kommen</translation>
        </message>
        <message>
            <source>The clinic's own instruction</source>
            <translation>Eigene Anweisung der Praxis</translation>
        </message>
        <message>
            <source>on day %1</source>
            <translation>an Tag %1</translation>
        </message>
        <message>
            <source>day %1 to day %2</source>
            <translation>Tag %1 bis Tag %2</translation>
        </message>
        <message>
            <source>a rule to keep, no reminder</source>
            <translation>eine Regel, ohne Erinnerung</translation>
        </message>
        <message>
            <source>reminds at %1</source>
            <translation>erinnert um %1</translation>
        </message>
        <message>
            <source>Level: above the usual range</source>
            <translation>Höhe: über dem üblichen Bereich</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>Schwelle %1</translation>
        </message>
        <message>
            <source>Rebound: rising again</source>
            <translation>Rückschlag: steigt wieder</translation>
        </message>
        <message>
            <source>Side divergence: one side much worse</source>
            <translation>Seitenunterschied: eine Seite viel schlechter</translation>
        </message>
        <message>
            <source>Slow recovery: slow to settle</source>
            <translation>Langsame Erholung: klingt langsam ab</translation>
        </message>
        <message>
            <source>Persistent puckering: does not smooth out</source>
            <translation>Bleibende Einziehung: glättet sich nicht</translation>
        </message>
        <message>
            <source>from day %1 on</source>
            <translation>ab Tag %1</translation>
        </message>
        <message>
            <source>Silence: nothing heard</source>
            <translation>Schweigen: nichts gehört</translation>
        </message>
        <message>
            <source>shown apart, never as fine</source>
            <translation>gesondert gezeigt, nie als gut</translation>
        </message>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>erinnert jeden Tag um %1</numerusform>
                <numerusform>erinnert alle %Ln Tage um %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>mindestens %Ln Punkt</numerusform>
                <numerusform>mindestens %Ln Punkte</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>mindestens %Ln Punkt über dem Tiefstand, ab Tag %1</numerusform>
                <numerusform>mindestens %Ln Punkte über dem Tiefstand, ab Tag %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>mindestens %Ln Punkt zwischen den Seiten</numerusform>
                <numerusform>mindestens %Ln Punkte zwischen den Seiten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>ab Tag %1, mindestens %Ln Punkt</numerusform>
                <numerusform>ab Tag %1, mindestens %Ln Punkte</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>nach %Ln Tag</numerusform>
                <numerusform>nach %Ln Tagen</numerusform>
            </translation>
        </message>
        <message>
            <source>Level, all symptoms together</source>
            <translation>Höhe, alle Symptome zusammen</translation>
        </message>
        <message>
            <source>Side divergence: one side fills in the first days</source>
            <translation>Seitenunterschied: eine Seite füllt sich in den ersten Tagen</translation>
        </message>
        <message>
            <source>Side divergence: one side worsens</source>
            <translation>Seitenunterschied: eine Seite wird schlechter</translation>
        </message>
        <message>
            <source>Slow recovery, all symptoms together</source>
            <translation>Langsame Erholung, alle Symptome zusammen</translation>
        </message>
        <message>
            <source>Persistent puckering: unchanged for a week</source>
            <translation>Bleibende Einziehung: seit einer Woche unverändert</translation>
        </message>
        <message>
            <source>Persistent puckering: keeps most of its first days</source>
            <translation>Bleibende Einziehung: behält das meiste der ersten Tage</translation>
        </message>
        <message>
            <source>Persistent puckering: still deep</source>
            <translation>Bleibende Einziehung: noch immer tief</translation>
        </message>
        <message>
            <source>Silence after a high entry</source>
            <translation>Schweigen nach einem hohen Eintrag</translation>
        </message>
        <message>
            <source>when the last entry was above the usual range</source>
            <translation>wenn der letzte Eintrag über dem Üblichen lag</translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>bis Tag %1, mindestens %Ln Punkt zwischen den Seiten über Schmerz, Schwellung, Bluterguss und Spannung</numerusform>
                <numerusform>bis Tag %1, mindestens %Ln Punkte zwischen den Seiten über Schmerz, Schwellung, Bluterguss und Spannung</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>ab Tag %1, mindestens %Ln Punkt zwischen den Seiten über Schmerz, Schwellung und Spannung</numerusform>
                <numerusform>ab Tag %1, mindestens %Ln Punkte zwischen den Seiten über Schmerz, Schwellung und Spannung</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>mindestens %Ln Punkt über die letzten drei Tage</numerusform>
                <numerusform>mindestens %Ln Punkte über die letzten drei Tage</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>ab Tag %1, mindestens %Ln Punkt, nach einem Höchstwert von %2 oder mehr</numerusform>
                <numerusform>ab Tag %1, mindestens %Ln Punkte, nach einem Höchstwert von %2 oder mehr</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ProtocolsPage</name>
        <message>
            <source>Protocols</source>
            <translation>Protokolle</translation>
        </message>
        <message>
            <source>Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.</source>
            <translation>Pflegeplan, Regeln und üblicher Bereich gehen zusammen auf das Telefon, von der Praxis signiert, damit sie ohne Netz arbeiten.</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Worum gebeten wird</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Was einen Befund auslöst</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Was als üblich gilt</translation>
        </message>
        <message>
            <source>Whom the patient calls</source>
            <translation>Wen das Telefon anruft</translation>
        </message>
        <message>
            <source>Change the numbers</source>
            <translation>Nummern ändern</translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message>
            <source>Still open: %1, day %2.</source>
            <translation>Noch offen: %1, Tag %2.</translation>
        </message>
        <message>
            <source>No phone was linked: ask how the days went.</source>
            <translation>Kein Telefon war verbunden: nachfragen, wie die Tage waren.</translation>
        </message>
        <message>
            <source>The patient recorded nothing: ask how the days went.</source>
            <translation>Nichts wurde eingetragen: nachfragen, wie die Tage waren.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>%Ln Eintrag noch nicht geöffnet.</numerusform>
                <numerusform>%Ln Einträge noch nicht geöffnet.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>%Ln Nachricht noch nicht gelesen.</numerusform>
                <numerusform>%Ln Nachrichten noch nicht gelesen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>%Ln Faden ohne Charge.</numerusform>
                <numerusform>%Ln Fäden ohne Charge.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>QueueActs</name>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Übernommen</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Angerufen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Abschließen</translation>
        </message>
    </context>
    <context>
        <name>QueuePage</name>
        <message>
            <source>Queue</source>
            <translation>Warteliste</translation>
        </message>
        <message>
            <source>Name or lot  ( / )</source>
            <translation>Name oder Charge  ( / )</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Name oder Charge</translation>
        </message>
    </context>
    <context>
        <name>QueueReason</name>
        <message>
            <source>%1 · %2 · %3</source>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
    </context>
    <context>
        <name>QueueRowHead</name>
        <message>
            <source>since %1 · %2</source>
            <translation>seit %1 · %2</translation>
        </message>
    </context>
    <context>
        <name>Rail</name>
        <message>
            <source>Queue</source>
            <translation>Warteliste</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Verläufe</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Neue Behandlung</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protokolle</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Praxis</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Frage beim Hub nach</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Jetzt beim Hub nachfragen</translation>
        </message>
        <message>
            <source>Nobody named</source>
            <translation>Niemand benannt</translation>
        </message>
        <message>
            <source>Who is at the desk: change</source>
            <translation>Wer am Platz ist: ändern</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <translation>Tasten und Hilfe</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Abschließen</translation>
        </message>
    </context>
    <context>
        <name>RailButton</name>
        <message>
            <source>shown now</source>
            <translation>jetzt gezeigt</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>For this computer. Nothing of a patient is stored here.</source>
            <translation>Für diesen Rechner. Hier wird nichts über behandelte Personen gespeichert.</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aussehen</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Hell</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>Hoher Kontrast</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Größe der Schrift</translation>
        </message>
        <message>
            <source>Lock when nobody touches the desk for</source>
            <translation>Abschließen, wenn niemand den Platz nutzt für</translation>
        </message>
        <message>
            <source>minutes</source>
            <translation>Minuten</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Weniger Bewegung</translation>
        </message>
        <message>
            <source>Single keys in the queue: T takes, C notes a call, X closes, / searches</source>
            <translation>Einzeltasten in der Warteliste: T übernimmt, C vermerkt einen Anruf, X schließt ab, / sucht</translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>%1, %2 %</source>
            <comment>drug, percent</comment>
            <translation>%1, %2 %</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>Pflaster</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Einwilligung</translation>
        </message>
        <message>
            <source>Cautions explained</source>
            <translation>Vorsichtsregeln erklärt</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>Werte gleich danach</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>%1 of 5</source>
            <translation>%1 von 5</translation>
        </message>
        <message>
            <source>none, uncomplicated course</source>
            <translation>keine, unkomplizierter Verlauf</translation>
        </message>
        <message>
            <source>none named, not an uncomplicated course</source>
            <translation>keine genannt, kein unkomplizierter Verlauf</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>person, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Change against before</source>
            <translation>Veränderung gegenüber vorher</translation>
        </message>
        <message>
            <source>Patient's satisfaction</source>
            <translation>Zufriedenheit</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Komplikationen</translation>
        </message>
        <message>
            <source>Management</source>
            <translation>Vorgehen</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Nächster Plan</translation>
        </message>
        <message>
            <source>Recorded by</source>
            <translation>Eingetragen von</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Nachschaubogen</translation>
        </message>
        <message>
            <source>Made %1, %2</source>
            <translation>Erstellt %1, %2</translation>
        </message>
        <message>
            <source>Made %1, %2, by %3</source>
            <translation>Erstellt %1, %2, von %3</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Behandelt</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Tag der Erholung</translation>
        </message>
        <message>
            <source>Protocol</source>
            <translation>Protokoll</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>No reminder was due.</source>
            <translation>Keine Erinnerung war fällig.</translation>
        </message>
        <message>
            <source>Treatment map</source>
            <translation>Behandlungskarte</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>Nr.</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Endet</translation>
        </message>
        <message>
            <source>Thread</source>
            <translation>Faden</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>Volume</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>Local anaesthetic</source>
            <translation>Örtliche Betäubung</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Erholung</translation>
        </message>
        <message>
            <source>Findings and what was done</source>
            <translation>Befunde und was getan wurde</translation>
        </message>
        <message>
            <source>No finding.</source>
            <translation>Kein Befund.</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>noch nichts</translation>
        </message>
        <message>
            <source>Urgency</source>
            <translation>Dringlichkeit</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>Befund</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Aufgekommen</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Getan</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Offene Fragen</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Keine.</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>Bei der Nachschau</translation>
        </message>
        <message>
            <source>At the follow-up, to be filled in</source>
            <translation>Bei der Nachschau, auszufüllen</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Linke Patientenseite</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Rechte Patientenseite</translation>
        </message>
        <message>
            <source>Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source).</source>
            <translation>Links: durchgezogen, runde Einstiche. Rechts: gestrichelt, eckige Einstiche. Der Balken zeigt das Ende. Schraffiert: die Zone, die sich beim Sprechen bewegt, und die Kerbe des Kiefers (übliche Praxis, ohne Quelle).</translation>
        </message>
        <message>
            <source>Nothing was recorded.</source>
            <translation>Nichts wurde eingetragen.</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. Hollow marks: entered late or amended. Missing days are gaps.</source>
            <translation>Wie im Gegenüber: rechte Patientenseite links. Wert 0 bis 10 nach Tag der Erholung. Hohle Zeichen: später eingetragen oder geändert. Fehlende Tage sind Lücken.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>%1 von %Ln Erinnerung mit „erledigt“ beantwortet.</numerusform>
                <numerusform>%1 von %Ln Erinnerungen mit „erledigt“ beantwortet.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln Eintrag</numerusform>
                <numerusform>%Ln Einträge</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>an %Ln Tag</numerusform>
                <numerusform>an %Ln Tagen</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SheetPage</name>
        <message>
            <source>Follow-up sheet</source>
            <translation>Nachschaubogen</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Als PDF speichern</translation>
        </message>
        <message>
            <source>Page %L1 of the sheet</source>
            <translation>Seite %L1 des Bogens</translation>
        </message>
    </context>
    <context>
        <name>StepField</name>
        <message>
            <source>%1: less</source>
            <translation>%1: weniger</translation>
        </message>
        <message>
            <source>%1: more</source>
            <translation>%1: mehr</translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message>
            <source>Today %1</source>
            <translation>Heute %1</translation>
        </message>
        <message>
            <source>Yesterday %1</source>
            <translation>Gestern %1</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>date without a year</comment>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>date with a year</comment>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>just now</source>
            <translation>gerade eben</translation>
        </message>
        <message>
            <source>Day %1</source>
            <translation>Tag %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln min</source>
            <translation>
                <numerusform>%Ln Min.</numerusform>
                <numerusform>%Ln Min.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln h</source>
            <translation>
                <numerusform>%Ln Std.</numerusform>
                <numerusform>%Ln Std.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln day(s)</source>
            <translation>
                <numerusform>%Ln Tag</numerusform>
                <numerusform>%Ln Tagen</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Treatment</name>
        <message>
            <source>%1, %2, %3 G, %4 mm</source>
            <comment>material, form, gauge, length</comment>
            <translation>%1, %2, %3 G, %4 mm</translation>
        </message>
        <message>
            <source>Runs near the notch of the jaw: facial artery and marginal nerve.</source>
            <translation>Verläuft nahe der Kerbe des Kiefers: Gesichtsarterie und Randast des Nervs.</translation>
        </message>
        <message>
            <source>Ends past the zone that moves with speech and chewing.</source>
            <translation>Endet jenseits der Zone, die sich beim Sprechen und Kauen bewegt.</translation>
        </message>
        <message>
            <source>The end is drawn inside the moving zone.</source>
            <translation>Das Ende liegt in der bewegten Zone.</translation>
        </message>
        <message>
            <source>no lot</source>
            <translation>keine Charge</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>Charge %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 ml</translation>
        </message>
        <message>
            <source>Thread %1: %2, %3. %4. %5, %6, %7. %8</source>
            <comment>number, side, zone, ending, thread, lot, volume, caution</comment>
            <translation>Faden %1: %2, %3. %4. %5, %6, %7. %8</translation>
        </message>
    </context>
    <context>
        <name>TreatmentAnaesthetic</name>
        <message>
            <source>Solution</source>
            <translation>Lösung</translation>
        </message>
        <message>
            <source>Strength</source>
            <translation>Stärke</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Epinephrin</translation>
        </message>
        <message>
            <source>Buffered with 8.4 % bicarbonate</source>
            <translation>Gepuffert mit Bikarbonat 8,4 %</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nein</translation>
        </message>
        <message>
            <source>Outside the tracks: entry points, blocks</source>
            <translation>Außerhalb der Fadenwege: Einstiche, Blockaden</translation>
        </message>
        <message>
            <source>Weight, kg</source>
            <translation>Gewicht, kg</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCare</name>
        <message>
            <source>Care and consent</source>
            <translation>Versorgung und Einwilligung</translation>
        </message>
        <message>
            <source>Small dressings on the entry points</source>
            <translation>Kleine Pflaster auf den Einstichen</translation>
        </message>
        <message>
            <source>Cautions explained: what is usual, when to call, what to spare</source>
            <translation>Erklärt: was üblich ist, wann anzurufen ist, was zu schonen ist</translation>
        </message>
        <message>
            <source>Consent to the treatment given</source>
            <translation>Einwilligung in die Behandlung gegeben</translation>
        </message>
        <message>
            <source>This course may teach the clinic's usual range, without a name</source>
            <translation>Dieser Verlauf darf ohne Namen in den üblichen Bereich der Praxis eingehen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Before it can be recorded</source>
            <translation>Bevor es eingetragen werden kann</translation>
        </message>
        <message>
            <source>Right after the treatment, 0 to 10</source>
            <translation>Gleich nach der Behandlung, 0 bis 10</translation>
        </message>
        <message>
            <source>What you see now, on each side of the patient. Leave a dash where you did not look.</source>
            <translation>Was Sie jetzt auf jeder Patientenseite sehen. Lassen Sie den Strich, wo Sie nicht hingesehen haben.</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Links</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPage</name>
        <message>
            <source>Treatment of %1</source>
            <translation>Behandlung von %1</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Neue Behandlung</translation>
        </message>
        <message>
            <source>Taken up from the kept draft, %1</source>
            <translation>Aus dem behaltenen Entwurf, %1</translation>
        </message>
        <message>
            <source>Start over</source>
            <translation>Von vorn beginnen</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>Weiter: %1</translation>
        </message>
        <message>
            <source>Record the treatment</source>
            <translation>Behandlung eintragen</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPatient</name>
        <message>
            <source>Known patients</source>
            <translation>Bekannte Personen</translation>
        </message>
        <message>
            <source>Name or phone</source>
            <translation>Name oder Telefon</translation>
        </message>
        <message>
            <source>Nobody found. Register the patient beside this.</source>
            <translation>Niemand gefunden. Nehmen Sie die Person daneben neu auf.</translation>
        </message>
        <message>
            <source>New patient</source>
            <translation>Neue Person</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Telefonnummer für Rückrufe</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Sprache des Tagebuchs</translation>
        </message>
        <message>
            <source>Register</source>
            <translation>Aufnehmen</translation>
        </message>
    </context>
    <context>
        <name>TreatmentThreads</name>
        <message>
            <source>Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.</source>
            <translation>Zeichnen Sie einen Faden: am Einstich drücken, am Ende loslassen. Mit Tasten: Pfeile und Leertaste.</translation>
        </message>
    </context>
    <context>
        <name>UndoBar</name>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
    </context>
    <context>
        <name>UnlockPage</name>
        <message>
            <source>Passphrase</source>
            <translation>Passwortsatz</translation>
        </message>
        <message>
            <source>Passphrase once more</source>
            <translation>Passwortsatz noch einmal</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Aufschließen</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Einrichten</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Emergency</source>
            <translation>Notfall</translation>
        </message>
        <message>
            <source>Call now</source>
            <translation>Jetzt anrufen</translation>
        </message>
        <message>
            <source>Next working day</source>
            <translation>Nächster Werktag</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>Bei der Nachschau</translation>
        </message>
        <message>
            <source>The phone said to call the emergency number. Make sure that help is on its way.</source>
            <translation>Das Telefon riet zum Notruf. Vergewissern Sie sich, dass Hilfe unterwegs ist.</translation>
        </message>
        <message>
            <source>The phone said to call the clinic today. Call the patient if no call came.</source>
            <translation>Das Telefon riet, heute die Praxis anzurufen. Kam kein Anruf, rufen Sie an.</translation>
        </message>
        <message>
            <source>The patient expects an answer on the next working day.</source>
            <translation>Eine Antwort wird am nächsten Werktag erwartet.</translation>
        </message>
        <message>
            <source>Bring it up at the follow-up.</source>
            <translation>Bei der Nachschau ansprechen.</translation>
        </message>
        <message>
            <source>Hard to breathe or to swallow</source>
            <translation>Atmen oder Schlucken fällt schwer</translation>
        </message>
        <message>
            <source>Neck or jaw swelling that grows fast</source>
            <translation>Schwellung an Hals oder Kiefer, die schnell wächst</translation>
        </message>
        <message>
            <source>Throat or tongue swells, wheeze, faint or hives</source>
            <translation>Rachen oder Zunge schwillt, pfeifender Atem, Ohnmacht oder Quaddeln</translation>
        </message>
        <message>
            <source>Metal taste, ringing ears, confusion or twitching</source>
            <translation>Metallgeschmack, Ohrensausen, Verwirrung oder Zucken</translation>
        </message>
        <message>
            <source>Severely ill: hard shivering, confused or mottled skin</source>
            <translation>Schwer krank: starkes Zittern, verwirrt oder fleckige Haut</translation>
        </message>
        <message>
            <source>Face droops with a weak arm or slurred speech</source>
            <translation>Gesicht hängt, mit schwachem Arm oder verwaschener Sprache</translation>
        </message>
        <message>
            <source>Sudden loss of sight or double vision</source>
            <translation>Plötzlicher Sehverlust oder Doppelbilder</translation>
        </message>
        <message>
            <source>One side swells fast</source>
            <translation>Eine Seite schwillt schnell</translation>
        </message>
        <message>
            <source>Skin white, grey or net-like, cold or blistering</source>
            <translation>Haut weiß, grau oder netzartig, kalt oder mit Blasen</translation>
        </message>
        <message>
            <source>Colour change near an entry point</source>
            <translation>Verfärbung nahe einer Einstichstelle</translation>
        </message>
        <message>
            <source>Warmer than the other side</source>
            <translation>Wärmer als die andere Seite</translation>
        </message>
        <message>
            <source>Firm, shiny or tight</source>
            <translation>Fest, glänzend oder gespannt</translation>
        </message>
        <message>
            <source>More tender than yesterday</source>
            <translation>Empfindlicher als gestern</translation>
        </message>
        <message>
            <source>The edge has moved</source>
            <translation>Der Rand ist gewandert</translation>
        </message>
        <message>
            <source>Thick or milky fluid</source>
            <translation>Dicke oder milchige Flüssigkeit</translation>
        </message>
        <message>
            <source>Thread end through the skin</source>
            <translation>Fadenende durch die Haut</translation>
        </message>
        <message>
            <source>Weakness of the face</source>
            <translation>Gesichtsschwäche</translation>
        </message>
        <message>
            <source>Cheek swells on eating, or clear fluid</source>
            <translation>Wange schwillt beim Essen, oder klare Flüssigkeit</translation>
        </message>
        <message>
            <source>Still bleeding after 15 minutes of pressure</source>
            <translation>Blutet nach 15 Minuten Druck noch</translation>
        </message>
        <message>
            <source>A lump that beats</source>
            <translation>Ein Knoten, der pocht</translation>
        </message>
        <message>
            <source>Thread seen or felt, skin calm</source>
            <translation>Faden sichtbar oder tastbar, Haut ruhig</translation>
        </message>
        <message>
            <source>Chills</source>
            <translation>Schüttelfrost</translation>
        </message>
        <message>
            <source>Brow</source>
            <translation>Braue</translation>
        </message>
        <message>
            <source>Temple</source>
            <translation>Schläfe</translation>
        </message>
        <message>
            <source>Midface</source>
            <translation>Mittelgesicht</translation>
        </message>
        <message>
            <source>Cheek</source>
            <translation>Wange</translation>
        </message>
        <message>
            <source>Nasolabial fold</source>
            <translation>Nasolabialfalte</translation>
        </message>
        <message>
            <source>Marionette fold</source>
            <translation>Mundwinkelfalte</translation>
        </message>
        <message>
            <source>Jawline</source>
            <translation>Kieferlinie</translation>
        </message>
        <message>
            <source>Under the chin</source>
            <translation>Unter dem Kinn</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Hals</translation>
        </message>
        <message>
            <source>PDO</source>
            <translation>PDO</translation>
        </message>
        <message>
            <source>PLLA</source>
            <translation>PLLA</translation>
        </message>
        <message>
            <source>PCL</source>
            <translation>PCL</translation>
        </message>
        <message>
            <source>PLCL</source>
            <translation>PLCL</translation>
        </message>
        <message>
            <source>Other material</source>
            <translation>Anderes Material</translation>
        </message>
        <message>
            <source>Smooth</source>
            <translation>Glatt</translation>
        </message>
        <message>
            <source>Twisted</source>
            <translation>Gedreht</translation>
        </message>
        <message>
            <source>Barbed, one way</source>
            <translation>Mit Widerhaken, eine Richtung</translation>
        </message>
        <message>
            <source>Barbed, two ways</source>
            <translation>Mit Widerhaken, zwei Richtungen</translation>
        </message>
        <message>
            <source>Moulded</source>
            <translation>Geformt</translation>
        </message>
        <message>
            <source>Cones</source>
            <translation>Mit Kegeln</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Jenseits der bewegten Zone</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>Vor der bewegten Zone</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Links</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Both</source>
            <translation>Beide</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>Vorn</translation>
        </message>
        <message>
            <source>From the patient's left</source>
            <translation>Von der linken Patientenseite</translation>
        </message>
        <message>
            <source>From the patient's right</source>
            <translation>Von der rechten Patientenseite</translation>
        </message>
        <message>
            <source>Lidocaine with epinephrine</source>
            <translation>Lidocain mit Epinephrin</translation>
        </message>
        <message>
            <source>Lidocaine, plain</source>
            <translation>Lidocain ohne Zusatz</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Gesehen</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Übernommen</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Angerufen</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Termin vorgezogen</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Abgeschlossen</translation>
        </message>
        <message>
            <source>Reopened</source>
            <translation>Wieder geöffnet</translation>
        </message>
        <message>
            <source>Reassured: usual course, explained</source>
            <translation>Beruhigt: üblicher Verlauf, erklärt</translation>
        </message>
        <message>
            <source>Advised: told what to do at home</source>
            <translation>Beraten: gesagt, was zu Hause zu tun ist</translation>
        </message>
        <message>
            <source>Treated in the clinic</source>
            <translation>In der Praxis behandelt</translation>
        </message>
        <message>
            <source>Sent to urgent care</source>
            <translation>In die Notfallversorgung geschickt</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Nicht erreicht</translation>
        </message>
        <message>
            <source>Very much better</source>
            <translation>Sehr viel besser</translation>
        </message>
        <message>
            <source>Much better</source>
            <translation>Viel besser</translation>
        </message>
        <message>
            <source>Better</source>
            <translation>Besser</translation>
        </message>
        <message>
            <source>Unchanged</source>
            <translation>Unverändert</translation>
        </message>
        <message>
            <source>Worse</source>
            <translation>Schlechter</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hämatom</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infektion</translation>
        </message>
        <message>
            <source>Thread end out</source>
            <translation>Fadenende ausgetreten</translation>
        </message>
        <message>
            <source>Lasting puckering</source>
            <translation>Anhaltende Einziehung</translation>
        </message>
        <message>
            <source>Visible thread</source>
            <translation>Sichtbarer Faden</translation>
        </message>
        <message>
            <source>Nerve weakness</source>
            <translation>Nervenschwäche</translation>
        </message>
        <message>
            <source>Lasting numbness</source>
            <translation>Anhaltende Taubheit</translation>
        </message>
        <message>
            <source>Salivary leak</source>
            <translation>Speichelaustritt</translation>
        </message>
        <message>
            <source>Skin injury</source>
            <translation>Hautverletzung</translation>
        </message>
        <message>
            <source>Asymmetry</source>
            <translation>Asymmetrie</translation>
        </message>
        <message>
            <source>Other, see note</source>
            <translation>Anderes, siehe Notiz</translation>
        </message>
        <message>
            <source>That passphrase does not open this vault.</source>
            <translation>Dieser Passwortsatz öffnet diesen Tresor nicht.</translation>
        </message>
        <message>
            <source>Too many tries. Wait a moment, then try again.</source>
            <translation>Zu viele Versuche. Warten Sie einen Moment, dann erneut versuchen.</translation>
        </message>
        <message>
            <source>The vault on this computer is damaged. Nothing was changed. Restore it from a backup.</source>
            <translation>Der Tresor auf diesem Rechner ist beschädigt. Nichts wurde verändert. Stellen Sie ihn aus einer Sicherung wieder her.</translation>
        </message>
        <message>
            <source>The disk is full. Nothing was saved. Free some space and try again.</source>
            <translation>Die Festplatte ist voll. Nichts wurde gespeichert. Schaffen Sie Platz und versuchen Sie es erneut.</translation>
        </message>
        <message>
            <source>The disk reported an error. Nothing was saved.</source>
            <translation>Die Festplatte meldet einen Fehler. Nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The hub cannot be reached. What you record is kept here and sent later.</source>
            <translation>Der Hub ist nicht erreichbar. Was Sie eintragen, bleibt hier und wird später gesendet.</translation>
        </message>
        <message>
            <source>Something arrived that is not genuine. It was kept apart and not used.</source>
            <translation>Etwas kam an, das nicht echt ist. Es wurde beiseitegelegt und nicht verwendet.</translation>
        </message>
        <message>
            <source>Its time is over. Start again.</source>
            <translation>Die Zeit ist abgelaufen. Beginnen Sie neu.</translation>
        </message>
        <message>
            <source>There is one already.</source>
            <translation>Es gibt schon eines.</translation>
        </message>
        <message>
            <source>It is not there.</source>
            <translation>Es ist nicht da.</translation>
        </message>
        <message>
            <source>The vault is locked. Unlock it first.</source>
            <translation>Der Tresor ist verschlossen. Schließen Sie ihn zuerst auf.</translation>
        </message>
        <message>
            <source>It was refused.</source>
            <translation>Es wurde abgelehnt.</translation>
        </message>
        <message>
            <source>Something is missing or out of range: %1</source>
            <translation>Etwas fehlt oder liegt außerhalb der Grenzen: %1</translation>
        </message>
        <message>
            <source>This needs a newer version of the program.</source>
            <translation>Das braucht eine neuere Version des Programms.</translation>
        </message>
        <message>
            <source>That is too long.</source>
            <translation>Das ist zu lang.</translation>
        </message>
        <message>
            <source>That is not possible now.</source>
            <translation>Das geht jetzt nicht.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::app::DeskProgram</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Wer ist am Platz?</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>Warteliste</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Verläufe</translation>
        </message>
        <message>
            <source>Treatment</source>
            <translation>Behandlung</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Telefon verbinden</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Nachschau</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Nachschaubogen</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protokolle</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Praxis</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicEditor</name>
        <message>
            <source>The clinic's name.</source>
            <translation>Der Name der Praxis.</translation>
        </message>
        <message>
            <source>The clinic's phone number.</source>
            <translation>Die Telefonnummer der Praxis.</translation>
        </message>
        <message>
            <source>The emergency number, digits only, for example 112.</source>
            <translation>Die Notrufnummer, nur Ziffern, zum Beispiel 112.</translation>
        </message>
        <message>
            <source>At least one person who works at the desk.</source>
            <translation>Mindestens eine Person, die hier arbeitet.</translation>
        </message>
        <message>
            <source>The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.</source>
            <translation>Der Fingerabdruck des Hub-Schlüssels: 64 Zeichen 0 bis 9 und A bis F.</translation>
        </message>
        <message>
            <source>No number is recorded yet.</source>
            <translation>Noch keine Nummer eingetragen.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>clinic, phone</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Rufdienst: %1</translation>
        </message>
        <message>
            <source>Emergency: %1</source>
            <translation>Notruf: %1</translation>
        </message>
        <message>
            <source>Saved, %1</source>
            <translation>Gespeichert, %1</translation>
        </message>
        <message>
            <source>The clinic's key is copied.</source>
            <translation>Der Schlüssel der Praxis ist kopiert.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message>
            <source>Treated %1 · %2 · %3, version %4</source>
            <comment>date, threads, protocol, its version</comment>
            <translation>Behandelt %1 · %2 · %3, Version %4</translation>
        </message>
        <message>
            <source>Last entry %1</source>
            <translation>Letzter Eintrag %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Noch kein Eintrag</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Telefon verbunden</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Kein Telefon verbunden</translation>
        </message>
        <message>
            <source>No reminder due yet</source>
            <translation>Noch keine Erinnerung fällig</translation>
        </message>
        <message>
            <source>Too long: shorten it before sending.</source>
            <translation>Zu lang: vor dem Senden kürzen.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln Faden</numerusform>
                <numerusform>%Ln Fäden</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>%1 von %Ln Erinnerung mit „erledigt“ beantwortet</numerusform>
                <numerusform>%1 von %Ln Erinnerungen mit „erledigt“ beantwortet</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln new entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln neuer Eintrag, noch nicht geöffnet</numerusform>
                <numerusform>%Ln neue Einträge, noch nicht geöffnet</numerusform>
            </translation>
        </message>
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>Kein Telefon verbunden: Es kann keine Nachricht gesendet werden.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message>
            <source>Treatments that are recorded show up here.</source>
            <translation>Eingetragene Behandlungen erscheinen hier.</translation>
        </message>
        <message>
            <source>No patient and no lot number matches.</source>
            <translation>Weder Name noch Charge passt.</translation>
        </message>
        <message>
            <source>Treated %1</source>
            <translation>Behandelt %1</translation>
        </message>
        <message>
            <source>last entry %1 ago</source>
            <translation>letzter Eintrag vor %1</translation>
        </message>
        <message>
            <source>no entry yet</source>
            <translation>noch kein Eintrag</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Abgeschlossen</translation>
        </message>
        <message>
            <source>Phone linked, %1</source>
            <translation>Telefon verbunden, %1</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Kein Telefon verbunden</translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln ungeöffnet</numerusform>
                <numerusform>%Ln ungeöffnet</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>%Ln Nachricht ungelesen</numerusform>
                <numerusform>%Ln Nachrichten ungelesen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln Verlauf</numerusform>
                <numerusform>%Ln Verläufe</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CurveBoard</name>
        <message>
            <source>L %1  R %2</source>
            <comment>last scores, left and right</comment>
            <translation>L %1  R %2</translation>
        </message>
        <message>
            <source>Left: %1.</source>
            <translation>Links: %1.</translation>
        </message>
        <message>
            <source>Right: %1.</source>
            <translation>Rechts: %1.</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>usual range</comment>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>entered late</source>
            <translation>später eingetragen</translation>
        </message>
        <message>
            <source>amended</source>
            <translation>geändert</translation>
        </message>
        <message>
            <source>%1, %2: left %3, right %4, usual %5. %6</source>
            <comment>day, time, scores, usual range, note</comment>
            <translation>%1, %2: links %3, rechts %4, üblich %5. %6</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::FollowUpEditor</name>
        <message>
            <source>Recorded by %1, %2</source>
            <translation>Eingetragen von %1, %2</translation>
        </message>
        <message>
            <source>1, not at all</source>
            <translation>1, gar nicht</translation>
        </message>
        <message>
            <source>2, a little</source>
            <translation>2, ein wenig</translation>
        </message>
        <message>
            <source>3, fairly</source>
            <translation>3, einigermaßen</translation>
        </message>
        <message>
            <source>4, mostly</source>
            <translation>4, weitgehend</translation>
        </message>
        <message>
            <source>5, fully</source>
            <translation>5, voll und ganz</translation>
        </message>
        <message>
            <source>Choose how the result compares with before.</source>
            <translation>Wählen Sie, wie das Ergebnis gegenüber vorher ist.</translation>
        </message>
        <message>
            <source>Ask the patient how satisfied they are.</source>
            <translation>Nach der Zufriedenheit fragen.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Sagen Sie, wer am Platz ist.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message>
            <source>Not heard from the hub yet</source>
            <translation>Vom Hub noch nichts gehört</translation>
        </message>
        <message>
            <source>Last heard from the hub: %1</source>
            <translation>Zuletzt vom Hub gehört: %1</translation>
        </message>
        <message>
            <source>A phone sent two different histories. Do not rely on its entries; call the patient.</source>
            <translation>Ein Telefon hat zwei verschiedene Verläufe gesendet. Verlassen Sie sich nicht auf seine Einträge; rufen Sie an.</translation>
        </message>
        <message>
            <source>A message from a phone is missing. The queue may be incomplete.</source>
            <translation>Eine Nachricht von einem Telefon fehlt. Die Warteliste ist vielleicht unvollständig.</translation>
        </message>
        <message>
            <source>The queue may be out of date: nothing was heard for over a day.</source>
            <translation>Die Warteliste ist vielleicht veraltet: seit über einem Tag wurde nichts gehört.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>%Ln Nachricht ließ sich nicht prüfen und wurde beiseitegelegt.</numerusform>
                <numerusform>%Ln Nachrichten ließen sich nicht prüfen und wurden beiseitegelegt.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Als Jahr-Monat-Tag schreiben, zum Beispiel 2029-06-30.</translation>
        </message>
        <message>
            <source>First enter the numbers to call on the Clinic page: the phone shows them with every warning.</source>
            <translation>Geben Sie zuerst auf der Seite Praxis die Rufnummern ein: Das Telefon zeigt sie bei jeder Warnung.</translation>
        </message>
        <message>
            <source>Choose a protocol and a day for the follow-up.</source>
            <translation>Wählen Sie ein Protokoll und einen Tag für die Nachschau.</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Telefon verbinden</translation>
        </message>
        <message>
            <source>Making a code</source>
            <translation>Code wird erstellt</translation>
        </message>
        <message>
            <source>Let the patient scan this code</source>
            <translation>Lassen Sie diesen Code einlesen</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Zahlen vergleichen</translation>
        </message>
        <message>
            <source>Linking</source>
            <translation>Verbinde</translation>
        </message>
        <message>
            <source>The phone is linked</source>
            <translation>Das Telefon ist verbunden</translation>
        </message>
        <message>
            <source>Stop: this code was used twice</source>
            <translation>Halt: dieser Code wurde zweimal verwendet</translation>
        </message>
        <message>
            <source>The code has run out</source>
            <translation>Der Code ist abgelaufen</translation>
        </message>
        <message>
            <source>No code could be made</source>
            <translation>Es konnte kein Code erstellt werden</translation>
        </message>
        <message>
            <source>The hub takes the offer. This takes a moment.</source>
            <translation>Der Hub nimmt das Angebot an. Das dauert einen Moment.</translation>
        </message>
        <message>
            <source>If the camera does not work, the code below can be typed instead. It works once.</source>
            <translation>Geht die Kamera nicht, lässt sich der Code darunter tippen. Er gilt einmal.</translation>
        </message>
        <message>
            <source>Read the six digits on the patient's phone. Only if they are the same is it the right phone.</source>
            <translation>Lesen Sie die sechs Ziffern auf dem Telefon. Nur wenn sie gleich sind, ist es das richtige.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call go to the phone.</source>
            <translation>Verlauf, Pflegeplan und Rufnummern gehen auf das Telefon.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call are on their way. The page of the course shows when the first entry arrives.</source>
            <translation>Verlauf, Pflegeplan und Rufnummern sind unterwegs. Die Seite des Verlaufs zeigt, wann der erste Eintrag ankommt.</translation>
        </message>
        <message>
            <source>Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.</source>
            <translation>Vielleicht hat jemand anders den Code gelesen. Nichts wurde verbunden. Erstellen Sie einen neuen, den niemand sonst sieht.</translation>
        </message>
        <message>
            <source>A code is valid for ten minutes. Nothing was linked. Make a new one.</source>
            <translation>Ein Code gilt zehn Minuten. Nichts wurde verbunden. Erstellen Sie einen neuen.</translation>
        </message>
        <message>
            <source>Try again.</source>
            <translation>Versuchen Sie es erneut.</translation>
        </message>
        <message>
            <source>Valid for %1:%2</source>
            <comment>minutes:seconds</comment>
            <translation>Gültig noch %1:%2</translation>
        </message>
        <message>
            <source>First name the hub on the Clinic page.</source>
            <translation>Nennen Sie zuerst den Hub auf der Seite Praxis.</translation>
        </message>
        <message>
            <source>The patient opens the diary, which asks for a code. Do this together, in the same room.</source>
            <translation>Das Tagebuch auf dem Telefon fragt nach einem Code. Tun Sie es zusammen, im selben Raum.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.</source>
            <translation>Schwellen kalibriert an %1, auf höchstens %2 Fehlalarme in 100 unkomplizierten Verläufen.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message>
            <source>Taken by %1</source>
            <translation>Übernommen von %1</translation>
        </message>
        <message>
            <source>Nobody has taken it</source>
            <translation>Niemand kümmert sich</translation>
        </message>
        <message>
            <source>Last entry %1 ago</source>
            <translation>Letzter Eintrag vor %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Noch kein Eintrag</translation>
        </message>
        <message>
            <source>%1: %2, %3. %4. %5 Since %6. %7.</source>
            <comment>urgency, name, day, title, reason, since, taken</comment>
            <translation>%1: %2, %3. %4. %5 Seit %6. %7.</translation>
        </message>
        <message>
            <source>Not heard from: silence is not good news</source>
            <translation>Ohne Nachricht: Schweigen ist keine gute Nachricht</translation>
        </message>
        <message>
            <source>Everyone %1</source>
            <translation>Alle %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>urgency, count</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not heard from</source>
            <translation>Ohne Nachricht</translation>
        </message>
        <message>
            <source>Nobody waits</source>
            <translation>Niemand wartet</translation>
        </message>
        <message>
            <source>No match</source>
            <translation>Kein Treffer</translation>
        </message>
        <message>
            <source>Nobody waits for an answer</source>
            <translation>Niemand wartet auf eine Antwort</translation>
        </message>
        <message>
            <source>Clear the search to see the others.</source>
            <translation>Leeren Sie die Suche, um die anderen zu sehen.</translation>
        </message>
        <message>
            <source>Courses show up here when a warning sign, a rule or a silence asks for a look.</source>
            <translation>Verläufe erscheinen hier, wenn ein Warnzeichen, eine Regel oder Schweigen einen Blick verlangt.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, finding</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Closed: %1</source>
            <translation>Abgeschlossen: %1</translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>und %Ln mehr</numerusform>
                <numerusform>und %Ln mehr</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln ungeöffnet</numerusform>
                <numerusform>%Ln ungeöffnet</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>%Ln Notfall</numerusform>
                <numerusform>%Ln Notfälle</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln jetzt anzurufen</numerusform>
                <numerusform>%Ln jetzt anzurufen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln für den nächsten Werktag</numerusform>
                <numerusform>%Ln für den nächsten Werktag</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln für die Nachschau</numerusform>
                <numerusform>%Ln für die Nachschau</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln ohne Nachricht</numerusform>
                <numerusform>%Ln ohne Nachricht</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by the search</source>
            <translation>
                <numerusform>%Ln durch die Suche ausgeblendet</numerusform>
                <numerusform>%Ln durch die Suche ausgeblendet</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SheetBoard</name>
        <message>
            <source>Save the sheet</source>
            <translation>Bogen speichern</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>PDF-Dateien (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt: verwahren Sie sie wie die Akte.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::StepValue</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TreatmentEditor</name>
        <message>
            <source>Patient</source>
            <translation>Person</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fäden</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Betäubung</translation>
        </message>
        <message>
            <source>Care and consent</source>
            <translation>Versorgung und Einwilligung</translation>
        </message>
        <message>
            <source>Draft kept on this computer, %1</source>
            <translation>Entwurf auf diesem Rechner behalten, %1</translation>
        </message>
        <message>
            <source>Choose or register the patient.</source>
            <translation>Person wählen oder neu aufnehmen.</translation>
        </message>
        <message>
            <source>Draw at least one thread.</source>
            <translation>Zeichnen Sie mindestens einen Faden.</translation>
        </message>
        <message>
            <source>Note that consent was given.</source>
            <translation>Einwilligung vermerken.</translation>
        </message>
        <message>
            <source>Note that the cautions were explained.</source>
            <translation>Vermerken, dass die Vorsichtsregeln erklärt sind.</translation>
        </message>
        <message>
            <source>The weight is not a number of kilograms.</source>
            <translation>Das Gewicht ist keine Zahl in Kilogramm.</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Als Jahr-Monat-Tag schreiben, zum Beispiel 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>Dieser Faden war am Tag der Behandlung abgelaufen.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message>
            <source>Unlock the desk</source>
            <translation>Praxisplatz aufschließen</translation>
        </message>
        <message>
            <source>Set up the desk</source>
            <translation>Praxisplatz einrichten</translation>
        </message>
        <message>
            <source>Everything about patients is encrypted on this computer until you unlock it.</source>
            <translation>Alles über behandelte Personen ist auf diesem Rechner verschlüsselt, bis Sie ihn aufschließen.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>Die beiden sind nicht gleich.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts everything about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Wählen Sie einen Passwortsatz mit mindestens %Ln Zeichen. Er verschlüsselt alles über behandelte Personen auf diesem Rechner. Niemand kann ihn wiederherstellen: schreiben Sie ihn auf und verwahren Sie ihn sicher.</numerusform>
                <numerusform>Wählen Sie einen Passwortsatz mit mindestens %Ln Zeichen. Er verschlüsselt alles über behandelte Personen auf diesem Rechner. Niemand kann ihn wiederherstellen: schreiben Sie ihn auf und verwahren Sie ihn sicher.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Zu kurz: mindestens %Ln Zeichen.</numerusform>
                <numerusform>Zu kurz: mindestens %Ln Zeichen.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::face::FaceChart</name>
        <message>
            <source>Entry point set. Cursor %1 across, %2 down: Space sets the end.</source>
            <translation>Einstich gesetzt. Zeiger %1 quer, %2 hinunter: Leertaste setzt das Ende.</translation>
        </message>
        <message>
            <source>Cursor %1 across, %2 down: Space sets the entry point.</source>
            <translation>Zeiger %1 quer, %2 hinunter: Leertaste setzt den Einstich.</translation>
        </message>
    </context>
</TS>
