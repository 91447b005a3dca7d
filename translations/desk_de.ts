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
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Zu den anderen Pulten der Praxis</translation>
        </message>
        <message>
            <source>If the clinic works with Ebbline at another computer already</source>
            <translation>Wenn die Praxis schon an einem anderen Rechner mit Ebbline arbeitet</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Pulte</translation>
        </message>
        <message>
            <source>Add another computer, shut out a lost one</source>
            <translation>Einen weiteren Rechner aufnehmen, einen verlorenen aussperren</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sicherung und Schlüssel</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Wer was getan hat</translation>
        </message>
        <message>
            <source>What was written at the clinic's desks, to search and to save</source>
            <translation>Was an den Pulten der Praxis geschrieben wurde, zum Suchen und Speichern</translation>
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
        <message>
            <source>Correction not opened yet; %1 opened an earlier version, %2</source>
            <translation>Korrektur noch nicht geöffnet; %1 hat eine frühere Fassung geöffnet, %2</translation>
        </message>
        <message>
            <source>Before it was worse: %1</source>
            <comment>an act</comment>
            <translation>Bevor es schlimmer war: %1</translation>
        </message>
        <message>
            <source>By the day that stood then: %1</source>
            <comment>an act</comment>
            <translation>Nach dem Tag, der damals galt: %1</translation>
        </message>
        <message>
            <source>came before the time that it bears, %1: the clock of the phone or of this desk is wrong</source>
            <translation>kam vor der Zeit, die darauf steht, %1: Die Uhr des Telefons oder dieses Pults geht falsch</translation>
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
        <message>
            <source>Export</source>
            <translation>Ausgeben</translation>
        </message>
        <message>
            <source>As a file, or for paper</source>
            <translation>Als Datei oder auf Papier</translation>
        </message>
        <message>
            <source>Link another phone</source>
            <translation>Weiteres Telefon verbinden</translation>
        </message>
        <message>
            <source>Its page says what happens, and asks once</source>
            <translation>Die Seite sagt, was geschieht, und fragt einmal</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
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
            <source>area: not enough to say</source>
            <translation>Fläche: zu wenig für eine Aussage</translation>
        </message>
        <message>
            <source>area %1 points × days, day %2 to %3</source>
            <translation>Fläche %1 Punkte × Tage, Tag %2 bis %3</translation>
        </message>
        <message>
            <source>level</source>
            <translation>gleich</translation>
        </message>
        <message>
            <source>left %1 higher</source>
            <translation>links um %1 höher</translation>
        </message>
        <message>
            <source>right %1 higher</source>
            <translation>rechts um %1 höher</translation>
        </message>
        <message>
            <source>Left against right: not enough to say.</source>
            <translation>Links gegen rechts: zu wenig für eine Aussage.</translation>
        </message>
        <message>
            <source>%1 on average</source>
            <translation>%1 im Mittel</translation>
        </message>
        <message>
            <source>most on day %1 (%2)</source>
            <translation>am meisten an Tag %1 (%2)</translation>
        </message>
        <message>
            <source>too few points for a share of the sum</source>
            <translation>zu wenige Punkte für einen Anteil an der Summe</translation>
        </message>
        <message>
            <source>Left against right, %1 days with both: %2.</source>
            <translation>Links gegen rechts, %1 Tage mit beiden: %2.</translation>
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
            <source>the difference is %1% of the sum</source>
            <translation>der Unterschied ist %1 % der Summe</translation>
        </message>
        <message>
            <source>right %1 on day %2</source>
            <comment>score, day</comment>
            <translation>rechts %1 an Tag %2</translation>
        </message>
        <message>
            <source>left %1 on day %2</source>
            <comment>score, day</comment>
            <translation>links %1 an Tag %2</translation>
        </message>
        <message>
            <source>The axis ends with day 21. Last written after it: %1. The table has every score.</source>
            <translation>Die Achse endet mit Tag 21. Danach zuletzt notiert: %1. Die Tabelle hat jeden Wert.</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>Grenze nach US-Fachinformation, %1: %2 mg/kg, im Allgemeinen nicht über %3 mg</translation>
        </message>
        <message>
            <source>Your clinic's limit, %1: %2 mg/kg, not over %3 mg</source>
            <translation>Grenze Ihrer Klinik, %1: %2 mg/kg, nicht über %3 mg</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>mit Epinephrin</translation>
        </message>
        <message>
            <source>plain, the lower one, as some was given otherwise</source>
            <translation>ohne Zusatz, die niedrigere, weil auch anders gegeben wurde</translation>
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
            <source>%1 mg given otherwise, %2 mg in all</source>
            <translation>%1 mg anders gegeben, zusammen %2 mg</translation>
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
            <source>(your clinic's cap)</source>
            <translation>(Obergrenze Ihrer Klinik)</translation>
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
        <message>
            <source>plain, the lower one, as not all of it had epinephrine</source>
            <translation>ohne Zusatz, die niedrigere, weil nicht alles Epinephrin enthielt</translation>
        </message>
        <message>
            <source>at most %1 µg epinephrine</source>
            <translation>höchstens %1 µg Epinephrin</translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>Lidocain bisher</translation>
        </message>
        <message>
            <source>Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.</source>
            <translation>Tragen Sie alles heute gespritzte Lidocain ein. Cremes zählen zur selben Grenze, aber wie viel davon aufgenommen wird, ist nicht bekannt: Hier ist keine mitgezählt. Puffern verdünnt die Lösung; die Milligramm bleiben.</translation>
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
            <source>Call</source>
            <translation>Anrufen</translation>
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
            <source>Call about all</source>
            <translation>Zu allem anrufen</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>Keine Regel und kein Warnzeichen verlangt einen Blick.</translation>
        </message>
        <message>
            <source>Note a call</source>
            <translation>Anruf vermerken</translation>
        </message>
        <message>
            <source>She rang, or somebody spoke with her</source>
            <translation>Sie rief an, oder jemand sprach mit ihr</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Beim Verlauf vermerkte Anrufe</translation>
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
            <source>%1: rising</source>
            <translation>%1: steigt</translation>
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
            <source>On average %1 over its last three days with an answer, up to day %2; usual up to %3.</source>
            <translation>Im Mittel %1 an den letzten drei Tagen mit Antwort, bis Tag %2; üblich bis %3.</translation>
        </message>
        <message>
            <source>Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.</source>
            <translation>Tag %1; darunter %2, im Mittel %3 an den letzten drei Tagen mit Antwort, üblich bis %4.</translation>
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
            <source>All symptoms together: %1 points apart.</source>
            <translation>Alle Symptome zusammen: %1 Punkte auseinander.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>Noch %1 an Tag %2.</translation>
        </message>
        <message>
            <source>A week before: %1.</source>
            <translation>Eine Woche davor: %1.</translation>
        </message>
        <message>
            <source>Over its last three days: %1 points.</source>
            <translation>An den letzten drei Tagen: %1 Punkte.</translation>
        </message>
        <message>
            <source>In its first days: %1.</source>
            <translation>In den ersten Tagen: %1.</translation>
        </message>
        <message>
            <source>Noted because it is so late.</source>
            <translation>Vermerkt, weil es schon so spät ist.</translation>
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
        <message>
            <source>The visit was to be on day %1; by day %2 no follow-up was recorded.</source>
            <translation>Der Termin war für Tag %1 vereinbart; bis Tag %2 war keine Nachschau eingetragen.</translation>
        </message>
        <message>
            <source>All symptoms together</source>
            <translation>Alle Symptome zusammen</translation>
        </message>
        <message>
            <source>Day %1; among them %2 with %3, usual up to %4.</source>
            <translation>Tag %1; darunter %2 mit %3, üblich bis %4.</translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>Seither korrigiert oder ergänzt: So, wie die Einträge jetzt sind, gäbe es den Hinweis nicht. Er bleibt, bis ihn jemand schließt.</translation>
        </message>
        <message>
            <source>Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.</source>
            <translation>Der Hinweis kam nach einem Tag der Behandlung oder Werten gleich danach, die seither korrigiert wurden. Er bleibt, bis ihn jemand schließt.</translation>
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
            <source>Open questions</source>
            <translation>Offene Fragen</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>Eintragen und Verlauf abschließen</translation>
        </message>
        <message>
            <source>An uncomplicated course?</source>
            <translation>Ein unkomplizierter Verlauf?</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Ja</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nein</translation>
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
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread</source>
            <translation>Pfeile bewegen den Zeiger (mit Umschalt in kleinen Schritten), Leertaste setzt Einstich und Ende, Escape beginnt neu; Bild auf und Bild ab wählen einen Faden, Pos1 nimmt seinen Einstich und Ende sein Ende, Leertaste legt es ab, Entf entfernt den Faden</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>Zurück an die Arbeit</translation>
        </message>
        <message>
            <source>call: number, what to ask, what was said</source>
            <translation>anrufen: Nummer, was zu fragen ist, was gesagt wurde</translation>
        </message>
        <message>
            <source>next with entries that nobody opened</source>
            <translation>nächste mit Einträgen, die niemand öffnete</translation>
        </message>
        <message>
            <source>hand over</source>
            <translation>übergeben</translation>
        </message>
        <message>
            <source>On photographs</source>
            <translation>Bei Fotos</translation>
        </message>
        <message>
            <source>+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends</source>
            <translation>+ und - vergrößern und verkleinern beide, 0 zeigt das Ganze, Pfeiltasten verschieben den Ausschnitt; beim Markieren der Augen bewegen Pfeiltasten den Zeiger (mit der Umschalttaste in kleinen Schritten), die Leertaste markiert, die Rücktaste macht rückgängig, Escape beendet</translation>
        </message>
        <message>
            <source>Single keys (E, T, C, X, F, N, H, A, /) are on</source>
            <translation>Einzeltasten (E, T, C, X, F, N, H, A, /) sind an</translation>
        </message>
        <message>
            <source>take search and filters off</source>
            <translation>Suche und Filter aufheben</translation>
        </message>
        <message>
            <source>open the course at the entry behind the reason</source>
            <translation>den Verlauf beim Eintrag hinter dem Grund öffnen</translation>
        </message>
        <message>
            <source>bring the visit forward: its new day and time</source>
            <translation>den Termin vorziehen: neuer Tag und neue Uhrzeit</translation>
        </message>
        <message>
            <source>print the sheet, the course or the hand-over</source>
            <translation>Bogen, Verlauf oder Übergabe drucken</translation>
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
        <message>
            <source>Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.</source>
            <translation>Erfundene Patientinnen: nichts hier ist echt, nichts wird gesendet, und alles ist weg, wenn Sie das Pult sperren.</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>Vorführung verlassen</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sicherung und Schlüssel</translation>
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
        <message>
            <source>Its time, hours:minutes, if it is agreed</source>
            <translation>Uhrzeit, Stunden:Minuten, falls vereinbart</translation>
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
        <message>
            <source>It shall hold the clinic's root key: link phones, add and shut out desks</source>
            <translation>Es soll den Wurzelschlüssel der Praxis haben: Telefone verbinden, Pulte aufnehmen und aussperren</translation>
        </message>
        <message>
            <source>The code</source>
            <translation>Der Code</translation>
        </message>
        <message>
            <source>and the hub's address</source>
            <translation>und die Adresse des Hubs</translation>
        </message>
        <message>
            <source>To the desks</source>
            <translation>Zu den Pulten</translation>
        </message>
        <message>
            <source>The old phone is lost: the hub refuses it at once, and what it did not send stays unknown</source>
            <translation>Das alte Telefon ist verloren: Der Hub weist es sofort ab, und was es nicht gesendet hat, bleibt unbekannt</translation>
        </message>
        <message>
            <source>Only end the lost phone</source>
            <translation>Nur das verlorene Telefon beenden</translation>
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
        <name>PackField</name>
        <message>
            <source>Code on the pack: scan it, or type it with its brackets</source>
            <translation>Code auf der Packung: scannen oder mit Klammern tippen</translation>
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
        <message>
            <source>mL</source>
            <translation>ml</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>G</source>
            <comment>needle gauge</comment>
            <translation>G</translation>
        </message>
        <message>
            <source>Redone</source>
            <translation>Neu gelegt</translation>
        </message>
        <message>
            <source>Why it was redone</source>
            <translation>Warum er neu gelegt wurde</translation>
        </message>
        <message>
            <source>Brought in with</source>
            <translation>Eingebracht mit</translation>
        </message>
        <message>
            <source>Length of needle or cannula</source>
            <translation>Länge von Nadel oder Kanüle</translation>
        </message>
        <message>
            <source>Length of thread</source>
            <translation>Länge des Fadens</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Epinephrin</translation>
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
            <source>Slow recovery: pain that stays high</source>
            <translation>Langsame Erholung: Schmerz, der stark bleibt</translation>
        </message>
        <message>
            <source>Slow recovery: swelling, bruising or tightness that stays high</source>
            <translation>Langsame Erholung: Schwellung, Bluterguss oder Spannung, die stark bleiben</translation>
        </message>
        <message>
            <source>%1 of 10 or more over the last three days; no threshold</source>
            <translation>%1 von 10 oder mehr in den letzten drei Tagen; keine Schwelle</translation>
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
        <message>
            <source>Change it</source>
            <translation>Ändern</translation>
        </message>
        <message>
            <source>Take from a file</source>
            <translation>Aus einer Datei übernehmen</translation>
        </message>
        <message>
            <source>Shows what it is; nothing goes live by it.</source>
            <translation>Zeigt, was es ist; dadurch geht nichts in Betrieb.</translation>
        </message>
        <message>
            <source>Save as a file</source>
            <translation>Als Datei speichern</translation>
        </message>
        <message>
            <source>For the tool, or for a colleague&apos;s clinic.</source>
            <translation>Für das Werkzeug oder die Praxis einer Kollegin.</translation>
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
            <source>Close</source>
            <translation>Abschließen</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>Ablösen</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Anrufen</translation>
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
        <message>
            <source>Hand over</source>
            <translation>Übergeben</translation>
        </message>
        <message>
            <source>A note for whoever takes over</source>
            <translation>Eine Notiz für die Ablösung</translation>
        </message>
        <message>
            <source>Filter</source>
            <translation>Filter</translation>
        </message>
        <message>
            <source>By who placed the threads, who took the row, and day</source>
            <translation>Danach, wer die Fäden gelegt und wer die Zeile übernommen hat, und nach Tag</translation>
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
            <translation>Sperren</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Praxis im Rückblick</translation>
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
            <translation>Sperren, wenn niemand den Platz nutzt für</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Weniger Bewegung</translation>
        </message>
        <message>
            <source>Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off</source>
            <translation>Einzeltasten in der Warteliste: E öffnet den Eintrag hinter dem Grund, T übernimmt, C ruft an, X schließt, F zieht den Termin vor, N nächste ungeöffnete, H übergibt, / sucht, A hebt Suche und Filter auf</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Über Ebbline</translation>
        </message>
        <message>
            <source>Version, makers and licences</source>
            <translation>Version, Urheber und Lizenzen</translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
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
            <source>Anaesthetic</source>
            <translation>Betäubung</translation>
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
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: could not be opened</source>
            <translation>%1: ließ sich nicht öffnen</translation>
        </message>
        <message>
            <source>The only photograph of this view.</source>
            <translation>Das einzige Foto dieser Ansicht.</translation>
        </message>
        <message>
            <source>Aligned by the eyes, not stretched and not mirrored.</source>
            <translation>An den Augen ausgerichtet, nicht verzerrt und nicht gespiegelt.</translation>
        </message>
        <message>
            <source>As they were taken, perhaps not on one scale.</source>
            <translation>So, wie sie aufgenommen wurden, vielleicht nicht im gleichen Maßstab.</translation>
        </message>
        <message>
            <source>Photographs, %1: %2, and %3. %4</source>
            <comment>view, first, last, how</comment>
            <translation>Fotos, %1: %2, und %3. %4</translation>
        </message>
        <message>
            <source>Photograph, %1: %2. %3</source>
            <comment>view, when, how</comment>
            <translation>Foto, %1: %2. %3</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The first and the last of each view, the first on the left. Light, distance and expression may differ: compare with care.</source>
            <translation>Das erste und das letzte jeder Ansicht, das erste links. Licht, Abstand und Mimik können verschieden sein: vorsichtig vergleichen.</translation>
        </message>
        <message>
            <source>Lot, expiry</source>
            <translation>Charge, Ablauf</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>direkt nach der Behandlung</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>Der Plan</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Korrekturen des Eintrags</translation>
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
        <message>
            <source>With photographs: the first and the last of each view</source>
            <translation>Mit Fotos: das erste und das letzte jeder Ansicht</translation>
        </message>
        <message>
            <source>The photographs are being opened.</source>
            <translation>Die Fotos werden geöffnet.</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
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
        <message>
            <source>not said</source>
            <translation>nicht gesagt</translation>
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
        <message>
            <source>Cautions explained</source>
            <translation>Vorsichtsregeln erklärt</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Einwilligung</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>Pflaster</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>Werte gleich danach</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>%1 kg</source>
            <translation>%1 kg</translation>
        </message>
        <message>
            <source>%1 mg</source>
            <translation>%1 mg</translation>
        </message>
        <message>
            <source>%1 mL outside the tracks</source>
            <translation>%1 ml außerhalb der Fadenwege</translation>
        </message>
        <message>
            <source>%1, expiry %2</source>
            <comment>lot, date as on the pack</comment>
            <translation>%1, Ablauf %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>label, value</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>May teach the usual range</source>
            <translation>Darf in den üblichen Bereich eingehen</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise</source>
            <translation>Anders gegebenes Lidocain</translation>
        </message>
        <message>
            <source>epinephrine %1</source>
            <translation>Epinephrin %1</translation>
        </message>
        <message>
            <source>not buffered</source>
            <translation>nicht gepuffert</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>nicht gewogen</translation>
        </message>
        <message>
            <source>%1, %2%</source>
            <comment>drug, percent</comment>
            <translation>%1, %2 %</translation>
        </message>
        <message>
            <source>buffered with 8.4% bicarbonate, 1 part to %1</source>
            <translation>gepuffert mit Bikarbonat 8,4 %, 1 Teil auf %1</translation>
        </message>
        <message>
            <source>One more along the same track</source>
            <translation>Ein weiterer in derselben Bahn</translation>
        </message>
        <message>
            <source>Taken out and placed anew</source>
            <translation>Entfernt und neu gelegt</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fäden gelegt von</translation>
        </message>
        <message>
            <source>not written down</source>
            <translation>nicht vermerkt</translation>
        </message>
        <message>
            <source>What you chose stays. The drawing says otherwise: %1.</source>
            <translation>Was Sie gewählt haben, bleibt. Die Zeichnung sagt anderes: %1.</translation>
        </message>
        <message>
            <source>Sharp needle</source>
            <translation>Spitze Nadel</translation>
        </message>
        <message>
            <source>Blunt cannula</source>
            <translation>Stumpfe Kanüle</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <comment>needle or cannula, its length</comment>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>Needle or cannula of %1 mm</source>
            <translation>Nadel oder Kanüle von %1 mm</translation>
        </message>
        <message>
            <source>no epinephrine</source>
            <translation>kein Epinephrin</translation>
        </message>
        <message>
            <source>epinephrine at the entry point</source>
            <translation>Epinephrin am Einstich</translation>
        </message>
        <message>
            <source>epinephrine along the track</source>
            <translation>Epinephrin entlang der Bahn</translation>
        </message>
        <message>
            <source>epinephrine at entry point and along the track</source>
            <translation>Epinephrin am Einstich und entlang der Bahn</translation>
        </message>
        <message>
            <source>Planned: %1. Placed: %2.</source>
            <comment>threads, threads</comment>
            <translation>Geplant: %1. Gelegt: %2.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <comment>numbers of threads in the plan</comment>
            <translation>Weggelassen: %1.</translation>
        </message>
        <message>
            <source>Not in the plan: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Nicht im Plan: %1.</translation>
        </message>
        <message>
            <source>Moved: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Verschoben: %1.</translation>
        </message>
        <message>
            <source>Otherwise than planned: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Anders als geplant: %1.</translation>
        </message>
        <message>
            <source>As planned.</source>
            <translation>Wie geplant.</translation>
        </message>
        <message>
            <source>%1 (in the plan %2)</source>
            <comment>number of a thread, its number in the plan</comment>
            <translation>%1 (im Plan %2)</translation>
        </message>
        <message>
            <source>Left out.</source>
            <translation>Weggelassen.</translation>
        </message>
        <message>
            <source>Placed as thread %1.</source>
            <translation>Gelegt als Faden %1.</translation>
        </message>
        <message>
            <source>Moved.</source>
            <translation>Verschoben.</translation>
        </message>
        <message>
            <source>Otherwise than planned.</source>
            <translation>Anders als geplant.</translation>
        </message>
        <message>
            <source>Planned thread %1: %2, %3. %4. %5. %6</source>
            <comment>number, side, zone, ending, thread, what became of it</comment>
            <translation>Geplanter Faden %1: %2, %3. %4. %5. %6</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>Der Plan</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product as on the pack</comment>
            <translation>%1, Produkt %2</translation>
        </message>
        <message>
            <source>%1: %2; until then %3</source>
            <comment>label, what stands there now, what stood there</comment>
            <translation>%1: %2; bis dahin %3</translation>
        </message>
        <message>
            <source>Written in: %1</source>
            <comment>a thread</comment>
            <translation>Nachgetragen: %1</translation>
        </message>
        <message>
            <source>Taken out of the record: %1</source>
            <comment>a thread</comment>
            <translation>Aus dem Eintrag genommen: %1</translation>
        </message>
        <message>
            <source>Thread %1</source>
            <comment>its number</comment>
            <translation>Faden %1</translation>
        </message>
        <message>
            <source>Thread %1, until then %2</source>
            <comment>its number, its former number</comment>
            <translation>Faden %1, bis dahin %2</translation>
        </message>
        <message>
            <source>drawn elsewhere</source>
            <translation>anders eingezeichnet</translation>
        </message>
        <message>
            <source>When the treatment was</source>
            <translation>Wann die Behandlung war</translation>
        </message>
        <message>
            <source>The threads are numbered otherwise.</source>
            <translation>Die Fäden sind anders nummeriert.</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Betäubung</translation>
        </message>
        <message>
            <source>Threads of the plan</source>
            <translation>Fäden des Plans</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Recorded again %1, without a reason</source>
            <comment>when</comment>
            <translation>Erneut eingetragen %1, ohne Grund</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>jemand</translation>
        </message>
        <message>
            <source>Corrected %1 by %2. Why: %3</source>
            <comment>when, who, reason</comment>
            <translation>Korrigiert %1 von %2. Warum: %3</translation>
        </message>
        <message>
            <source>What stood there until then has not arrived at this desk.</source>
            <translation>Was bis dahin da stand, ist an diesem Pult nicht angekommen.</translation>
        </message>
        <message>
            <source>Nothing differs from what stood there.</source>
            <translation>Nichts ist anders als das, was da stand.</translation>
        </message>
        <message>
            <source>This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.</source>
            <translation>Dieser Verlauf und sein Telefon zählen nach einem anderen Tag der Behandlung oder nach anderen Werten gleich danach, als der Eintrag sagt. Korrigieren Sie den Eintrag, oder tragen Sie ihn unverändert noch einmal ein: Dann zählen sie nach ihm.</translation>
        </message>
        <message>
            <source>Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.</source>
            <translation>Zwei Pulte haben das eingetragen, ohne voneinander zu wissen. Der spätere Eintrag gilt als Ganzes; sehen Sie unten nach, was der andere sagte, und korrigieren Sie, was fehlt.</translation>
        </message>
        <message>
            <source>No phone has this course: nothing changes on one.</source>
            <translation>Kein Telefon hat diesen Verlauf: Auf keinem ändert sich etwas.</translation>
        </message>
        <message>
            <source>Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.</source>
            <translation>Ihr Telefon kennt von der Behandlung nur, wann sie war, und die Werte gleich danach. Beides bleibt, wie es ist; nichts hiervon geht dorthin.</translation>
        </message>
        <message>
            <source>With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.</source>
            <translation>Mit dem nächsten Abgleich bekommt ihr Telefon, wann die Behandlung war und die Werte gleich danach, und zählt Tage, Erinnerungen und Warnungen danach. Bis dahin richtet es sich nach den alten. Die Befunde werden auf beiden neu beurteilt; was gemeldet war, bleibt, aber ein Telefon mit einem älteren Programm lässt fallen, was der neue Tag nicht auslöst.</translation>
        </message>
        <message>
            <source>The visit that was agreed does not lie 1 to 60 days after that: agree on another one.</source>
            <translation>Der vereinbarte Termin liegt nicht 1 bis 60 Tage danach: Vereinbaren Sie einen anderen.</translation>
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
            <source>Of this solution outside the tracks: entry points, blocks</source>
            <translation>Von dieser Lösung außerhalb der Fadenwege: Einstiche, Blockaden</translation>
        </message>
        <message>
            <source>Weight, kg</source>
            <translation>Gewicht, kg</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>ml</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise, mg</source>
            <translation>Anders gegebenes Lidocain, mg</translation>
        </message>
        <message>
            <source>Nerve blocks, other strengths</source>
            <translation>Nervenblockaden, andere Stärken</translation>
        </message>
        <message>
            <source>Buffered with 8.4% bicarbonate</source>
            <translation>Gepuffert mit Bikarbonat 8,4 %</translation>
        </message>
        <message>
            <source>Where it held epinephrine, all threads at once</source>
            <translation>Wo es Epinephrin enthielt, alle Fäden auf einmal</translation>
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
        <message>
            <source>Threads placed by</source>
            <translation>Fäden gelegt von</translation>
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
        <message>
            <source>%1 What you write is kept as a draft.</source>
            <translation>%1 Was Sie schreiben, bleibt als Entwurf erhalten.</translation>
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
            <source>Empties everything but the patient; can be undone.</source>
            <translation>Leert alles außer der Person; lässt sich rückgängig machen.</translation>
        </message>
        <message>
            <source>Correct the treatment of %1</source>
            <translation>Behandlung von %1 korrigieren</translation>
        </message>
        <message>
            <source>Drop the correction</source>
            <translation>Korrektur verwerfen</translation>
        </message>
        <message>
            <source>The record stays as it is.</source>
            <translation>Der Eintrag bleibt, wie er ist.</translation>
        </message>
        <message>
            <source>Record the correction</source>
            <translation>Korrektur eintragen</translation>
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
        <message>
            <source>Begun and not recorded</source>
            <translation>Begonnen und nicht eingetragen</translation>
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
        <message>
            <source>Look around with invented patients</source>
            <translation>Mit erfundenen Patientinnen umsehen</translation>
        </message>
        <message>
            <source>A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.</source>
            <translation>Eine Praxis für sich, die beim Sperren verschwindet. Der Tresor der Praxis bleibt zu.</translation>
        </message>
        <message>
            <source>Recovery code from the paper</source>
            <translation>Ersatz-Code vom Papier</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Ein neuer Passwortsatz</translation>
        </message>
        <message>
            <source>Set this passphrase and unlock</source>
            <translation>Diesen Passwortsatz setzen und aufschließen</translation>
        </message>
        <message>
            <source>I know the passphrase</source>
            <translation>Ich weiß den Passwortsatz</translation>
        </message>
        <message>
            <source>I lost the passphrase</source>
            <translation>Passwortsatz verloren</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Nothing has been written yet.</source>
            <translation>Es wurde noch nichts geschrieben.</translation>
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
            <translation>Nasolabial­falte</translation>
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
        <message numerus="yes">
            <source>%Ln invented course(s)</source>
            <translation>
                <numerusform>%Ln erfundenen Verlauf</numerusform>
                <numerusform>%Ln erfundenen Verläufen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln uncomplicated course(s)</source>
            <translation>
                <numerusform>%Ln unkomplizierten Verlauf</numerusform>
                <numerusform>%Ln unkomplizierten Verläufen</numerusform>
            </translation>
        </message>
        <message>
            <source>Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.</source>
            <translation>Ohne TLS könnten andere mitlesen: HTTP allein ist für einen Hub auf diesem Rechner. Nichts wurde gesendet.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.</source>
            <translation>Ob das Telefon diese Warnung gezeigt hat, ist nicht bekannt. Rufen Sie jetzt an und vergewissern Sie sich, dass Hilfe unterwegs ist.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call the patient now.</source>
            <translation>Ob das Telefon diese Warnung gezeigt hat, ist nicht bekannt. Rufen Sie jetzt an.</translation>
        </message>
        <message>
            <source>Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none.</source>
            <translation>Blut, das sich unter der Haut als Knoten gesammelt hat und eng beobachtet, gedrückt, entleert oder operiert wurde; ein flacher Bluterguss ist keines.</translation>
        </message>
        <message>
            <source>Pus, or redness, warmth and pain that spread, treated as an infection.</source>
            <translation>Eiter, oder Rötung, Wärme und Schmerz, die sich ausbreiten und als Infektion behandelt wurden.</translation>
        </message>
        <message>
            <source>An end of a thread stands out of the skin or lies bare.</source>
            <translation>Ein Fadenende ragt aus der Haut oder liegt frei.</translation>
        </message>
        <message>
            <source>A dimple or fold along a thread that is still there at the follow-up.</source>
            <translation>Eine Delle oder Falte entlang eines Fadens, die bei der Nachschau noch da ist.</translation>
        </message>
        <message>
            <source>A thread can be seen or felt through closed skin, and troubles the patient.</source>
            <translation>Ein Faden ist durch geschlossene Haut zu sehen oder zu tasten und stört die Patientin.</translation>
        </message>
        <message>
            <source>A part of the face moves less than before the treatment, after the anaesthetic has worn off.</source>
            <translation>Ein Teil des Gesichts bewegt sich weniger als vor der Behandlung, nachdem die Betäubung abgeklungen ist.</translation>
        </message>
        <message>
            <source>Feeling in a part of the face is less or other than before, still at the follow-up.</source>
            <translation>Das Gefühl in einem Teil des Gesichts ist geringer oder anders als vorher, noch bei der Nachschau.</translation>
        </message>
        <message>
            <source>Clear fluid from the cheek or swelling of it, more while eating.</source>
            <translation>Klare Flüssigkeit aus der Wange oder ihre Schwellung, mehr beim Essen.</translation>
        </message>
        <message>
            <source>Skin that blistered, died, broke open or was left with a scar or a dark mark.</source>
            <translation>Haut, die Blasen warf, abstarb, aufging oder mit einer Narbe oder einem dunklen Fleck blieb.</translation>
        </message>
        <message>
            <source>The sides differ more than before the treatment, in the eyes of patient or practitioner.</source>
            <translation>Die Seiten unterscheiden sich mehr als vor der Behandlung, in den Augen von Patientin oder Behandelnden.</translation>
        </message>
        <message>
            <source>Anything else that needed a visit, a medicine or an act; the note says what.</source>
            <translation>Alles andere, das einen Termin, ein Medikament oder einen Eingriff brauchte; die Notiz sagt, was.</translation>
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
        <message>
            <source>Practice</source>
            <translation>Praxis im Rückblick</translation>
        </message>
        <message>
            <source>Change the protocol</source>
            <translation>Protokoll ändern</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Übergabe</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ein Pult aufnehmen</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Pulte</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Zu den anderen Pulten der Praxis</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sicherung und Schlüssel</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Über Ebbline</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Wer was getan hat</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The recovery code is not shown any more. If it is not on paper, make a new one.</source>
            <translation>Der Wiederherstellungscode wird nicht mehr gezeigt. Wenn er nicht auf Papier steht, erzeugen Sie einen neuen.</translation>
        </message>
        <message>
            <source>A protocol from a file</source>
            <translation>Ein Protokoll aus einer Datei</translation>
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
        <message>
            <source>The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>Die Telefonnummer der Praxis als eine Nummer, ohne Buchstaben, „/“, „,“, „;“ oder „(0)“, zum Beispiel +00 555 0100.</translation>
        </message>
        <message>
            <source>The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>Die Nummer des Rufdienstes als eine Nummer, ohne Buchstaben, „/“, „,“, „;“ oder „(0)“, zum Beispiel +00 555 0100.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message>
            <source>Seen: %1</source>
            <translation>Gesehen: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Übernommen: %1</translation>
        </message>
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
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>Kein Telefon verbunden: Es kann keine Nachricht gesendet werden.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt: verwahren Sie sie wie die Akte.</translation>
        </message>
        <message>
            <source>Save the course</source>
            <translation>Verlauf speichern</translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln neuer oder korrigierter Eintrag, noch nicht geöffnet</numerusform>
                <numerusform>%Ln neue oder korrigierte Einträge, noch nicht geöffnet</numerusform>
            </translation>
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
        <name>ebbline::deskapp::DoseLimits</name>
        <message>
            <source>Plain, mg/kg</source>
            <translation>Ohne Zusatz, mg/kg</translation>
        </message>
        <message>
            <source>Plain, in all, mg</source>
            <translation>Ohne Zusatz, insgesamt, mg</translation>
        </message>
        <message>
            <source>With epinephrine, mg/kg</source>
            <translation>Mit Epinephrin, mg/kg</translation>
        </message>
        <message>
            <source>With epinephrine, in all, mg</source>
            <translation>Mit Epinephrin, insgesamt, mg</translation>
        </message>
        <message>
            <source>A number up to %1, the label's. Empty: the label's.</source>
            <translation>Eine Zahl bis %1, der der Fachinformation. Leer: die der Fachinformation.</translation>
        </message>
        <message>
            <source>The label's limits hold.</source>
            <translation>Es gelten die Grenzen der Fachinformation.</translation>
        </message>
        <message>
            <source>Lowered by %1, %2</source>
            <comment>person, time</comment>
            <translation>Herabgesetzt von %1, %2</translation>
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
        <message>
            <source>Say whether the course was uncomplicated.</source>
            <translation>Sagen Sie, ob der Verlauf unkompliziert war.</translation>
        </message>
        <message>
            <source>Say what became of it: %1.</source>
            <translation>Sagen Sie, was daraus wurde: %1.</translation>
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
            <source>Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.</source>
            <translation>Ein anderes Ihrer Pulte hat zwei verschiedene Verläufe gesendet. Fragen Sie dort, was geschrieben wurde, und vergleichen Sie es mit dem, was hier steht.</translation>
        </message>
        <message>
            <source>A message from another desk of yours is missing. What was written there may not be here.</source>
            <translation>Eine Nachricht von einem anderen Ihrer Pulte fehlt. Was dort geschrieben wurde, ist vielleicht nicht hier.</translation>
        </message>
        <message>
            <source>Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.</source>
            <translation>Manches, was ankam, wurde mit einem neueren Programm geschrieben und lässt sich hier nicht anzeigen. Aktualisieren Sie dieses Pult. Rufen Sie bis dahin Patienten an, deren Telefon aktualisiert wurde.</translation>
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
        <message>
            <source>Phones not heard of for more than a day: %1</source>
            <comment>list of names</comment>
            <translation>Seit mehr als einem Tag nichts gehört von den Telefonen von: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>und %Ln weiteren</numerusform>
                <numerusform>und %Ln weiteren</numerusform>
            </translation>
        </message>
        <message>
            <source>%1. What was written there may not be here.</source>
            <translation>%1. Was dort geschrieben wurde, ist vielleicht nicht hier.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>Von %Ln Telefon seit mehr als einem Tag nichts gehört.</numerusform>
                <numerusform>Von %Ln Telefonen seit mehr als einem Tag nichts gehört.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>%Ln Telefon hat seit mehr als einem Tag nicht bestätigt, was ihm gesendet wurde.</numerusform>
                <numerusform>%Ln Telefone haben seit mehr als einem Tag nicht bestätigt, was ihnen gesendet wurde.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>%Ln Telefon muss noch bestätigen, was ihm gesendet wurde.</numerusform>
                <numerusform>%Ln Telefone müssen noch bestätigen, was ihnen gesendet wurde.</numerusform>
            </translation>
        </message>
        <message>
            <source>All phones were heard of within a day or little more, and have confirmed what was sent to them.</source>
            <translation>Von allen Telefonen kam innerhalb eines Tages oder wenig mehr etwas, und sie haben bestätigt, was ihnen gesendet wurde.</translation>
        </message>
        <message>
            <source>This desk runs on older data: a phone holds more from it. Write again what was written here in between.</source>
            <translation>Dieses Pult arbeitet mit älteren Daten: Ein Telefon hat mehr von ihm. Schreiben Sie noch einmal, was dazwischen hier geschrieben wurde.</translation>
        </message>
        <message>
            <source>For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.</source>
            <translation>Seit mehr als %1 Tagen hat ein Telefon nicht angenommen, was ihm gesendet wurde: %2. Rufen Sie an, bevor etwas verloren geht.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 fast: please set it.</source>
            <translation>Die Uhr dieses Rechners geht etwa %1 vor: Bitte stellen Sie sie.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 slow: please set it.</source>
            <translation>Die Uhr dieses Rechners geht etwa %1 nach: Bitte stellen Sie sie.</translation>
        </message>
        <message>
            <source>This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Dieses Pult arbeitet mit älteren Daten: Ein anderes Ihrer Pulte hat mehr von ihm. Was jetzt hier geschrieben wird, kommt dort nicht an. Übertragen Sie es von Hand. Sperren Sie dann auf einem Pult, das den Wurzelschlüssel hat, das andere unter „Pulte“ aus und nehmen Sie es neu auf.</translation>
        </message>
        <message>
            <source>Another desk of yours says that it runs on older data. What is written there now does not arrive here. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Ein anderes Ihrer Pulte sagt, dass es mit älteren Daten arbeitet. Was dort jetzt geschrieben wird, kommt hier nicht an. Übertragen Sie es von Hand. Sperren Sie dann auf einem Pult, das den Wurzelschlüssel hat, das andere unter „Pulte“ aus und nehmen Sie es neu auf.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>It is of: %1.</source>
            <comment>list of names, each with how many</comment>
            <translation>Es ist von: %1.</translation>
        </message>
        <message>
            <source>Messages from these patients&apos; phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <comment>list of names, each with how many</comment>
            <translation>Nachrichten von den Telefonen dieser Patienten lassen sich hier nicht lesen: %1. Rufen Sie an und fragen Sie, was geschrieben wurde. Bleibt es so, lassen Sie auf dem Telefon die Daten des Tagebuchs sichern (Einstellungen, Meine Daten). Erst dann löschen Sie dort das Tagebuch und verbinden das Telefon neu.</translation>
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
        <message>
            <source>Only a desk that holds the clinic's root key can do this.</source>
            <translation>Das kann nur ein Pult mit dem Wurzelschlüssel der Praxis.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ein Pult aufnehmen</translation>
        </message>
        <message>
            <source>Type this at the other desk</source>
            <translation>Tippen Sie das am anderen Pult</translation>
        </message>
        <message>
            <source>The desk is added</source>
            <translation>Das Pult ist aufgenommen</translation>
        </message>
        <message>
            <source>Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this together, in the same room.</source>
            <translation>Starten Sie dieses Programm auf dem anderen Rechner, richten Sie dort den Tresor ein und wählen Sie, zu den anderen Pulten der Praxis zu kommen. Tun Sie das gemeinsam, im selben Raum.</translation>
        </message>
        <message>
            <source>The code works once. The new desk also asks for the hub's address.</source>
            <translation>Der Code gilt einmal. Das neue Pult fragt auch nach der Adresse des Hubs.</translation>
        </message>
        <message>
            <source>Read the six digits on the new desk. Only if they are the same is it the right one.</source>
            <translation>Lesen Sie die sechs Ziffern am neuen Pult. Nur wenn sie gleich sind, ist es das richtige.</translation>
        </message>
        <message>
            <source>The clinic's keys go to the new desk.</source>
            <translation>Die Schlüssel der Praxis gehen an das neue Pult.</translation>
        </message>
        <message>
            <source>It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the hub.</source>
            <translation>Es hat die Schlüssel der Praxis. Was Patientinnen und Pulte geschrieben haben, kommt dort an, wenn erst dieses Pult und dann das neue beim Hub nachgefragt hat.</translation>
        </message>
        <message>
            <source>A phone before this one has not said what it still holds. What was written on it and not sent is not here.</source>
            <translation>Ein früheres Telefon hat noch nicht gesagt, was darauf ist. Was dort geschrieben und nicht gesendet wurde, ist nicht hier.</translation>
        </message>
        <message>
            <source>A phone before this one says that everything on it has arrived.</source>
            <translation>Ein früheres Telefon sagt, dass alles von ihm angekommen ist.</translation>
        </message>
        <message>
            <source>(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the patient.</source>
            <translation>(davon Einträge: %L1, Nachrichten: %L2, Fotos: %L3), das neueste von %4. Sehen Sie es mit der Patientin auf jenem Telefon an.</translation>
        </message>
        <message>
            <source>The phone is ended. The hub is told with the next sync and refuses it from then on.</source>
            <translation>Das Telefon ist beendet. Der Hub erfährt es beim nächsten Abgleich und weist es von da an ab.</translation>
        </message>
        <message>
            <source>This course has no phone in use.</source>
            <translation>Zu diesem Verlauf gehört kein Telefon in Gebrauch.</translation>
        </message>
        <message>
            <source>Another phone for this course</source>
            <translation>Ein anderes Telefon für diesen Verlauf</translation>
        </message>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>Auf einem früheren Telefon ist noch eine Aufzeichnung, die nie ankam</numerusform>
                <numerusform>Auf einem früheren Telefon sind noch %Ln Aufzeichnungen, die nie ankamen</numerusform>
            </translation>
        </message>
        <message>
            <source>The phone shows: %1, %2</source>
            <comment>date, time</comment>
            <translation>Das Telefon zeigt: %1, %2</translation>
        </message>
        <message>
            <source>The phone shows: %1, without a time</source>
            <comment>date</comment>
            <translation>Das Telefon zeigt: %1, ohne Uhrzeit</translation>
        </message>
        <message>
            <source>The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.</source>
            <comment>date, date</comment>
            <translation>Die Nachschau muss 1 bis 60 Tage nach der Behandlung liegen. Wählen Sie einen Tag vom %1 bis zum %2.</translation>
        </message>
        <message>
            <source>Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Die Uhrzeit der Nachschau als Stunden und Minuten schreiben, zum Beispiel 10:30, oder leer lassen.</translation>
        </message>
        <message>
            <source>The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic&apos;s key. The key stands on the Clinic page, where it can be copied. Then make a new code.</source>
            <comment>a command</comment>
            <translation>Der Hub kennt diese Praxis noch nicht. Bitten Sie, wer den Hub betreibt, %1 mit dem Schlüssel dieser Praxis auszuführen. Der Schlüssel steht auf der Seite Praxis und lässt sich dort kopieren. Erstellen Sie dann einen neuen Code.</translation>
        </message>
        <message>
            <source>The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.</source>
            <translation>Das jetzt verbundene Telefon wird losgelassen, sobald das neue bestätigt ist: Was dort danach geschrieben wird, kommt nicht in die Praxis, und das sagt es. Das neue Telefon bekommt das ganze Tagebuch. Fotos bleiben in der Praxis. Nichts ändert sich, bevor die sechs Ziffern bestätigt sind.</translation>
        </message>
        <message>
            <source>The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.</source>
            <translation>Der Hub lehnt das verlorene Telefon ab, sobald das neue bestätigt ist, oder sofort, wenn Sie es nur beenden. Was es nicht gesendet hat, bleibt unbekannt. Das neue Telefon bekommt das ganze Tagebuch. Fotos bleiben in der Praxis.</translation>
        </message>
        <message>
            <source>Stop: the numbers were not the same</source>
            <translation>Halt: die Zahlen waren nicht gleich</translation>
        </message>
        <message>
            <source>Somebody else may have used the code first. Nothing was linked. Make a new code out of other people&apos;s sight.</source>
            <translation>Vielleicht hat jemand anders den Code zuerst verwendet. Nichts wurde verbunden. Erstellen Sie einen neuen, den niemand sonst sieht.</translation>
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
        <message>
            <source>Thresholds calibrated on %1.</source>
            <translation>Schwellen kalibriert an: %1.</translation>
        </message>
        <message>
            <source>These are few: the thresholds are drawn towards those before.</source>
            <translation>Das sind wenige: Die Schwellen sind zu den früheren hingezogen.</translation>
        </message>
        <message>
            <source>Rules, or the days that are asked about, were changed since.</source>
            <translation>Regeln oder die erfragten Tage wurden seither geändert.</translation>
        </message>
        <message>
            <source>It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.</source>
            <translation>Dass sie das Budget von %1 Fehlalarmen auf 100 unkomplizierte Verläufe einhalten, ist nicht gezeigt.</translation>
        </message>
        <message>
            <source>They came in a file: other patients may stand behind them.</source>
            <translation>Sie kamen in einer Datei: andere Patientinnen können dahinterstehen.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
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
            <source>%1: %2, %3. %4. %5 Since %6.</source>
            <comment>urgency, name, day, title, reason, since</comment>
            <translation>%1: %2, %3. %4. %5 Seit %6.</translation>
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
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln durch Suche oder Filter ausgeblendet</numerusform>
                <numerusform>%Ln durch Suche oder Filter ausgeblendet</numerusform>
            </translation>
        </message>
        <message>
            <source>Nobody has acted for %1</source>
            <translation>Seit %1 hat niemand etwas getan</translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln wartet länger als vereinbart.</numerusform>
                <numerusform>%Ln warten länger als vereinbart.</numerusform>
            </translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Bereitschaft: %1</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Alle</translation>
        </message>
        <message>
            <source>Nobody on it</source>
            <translation>Niemand daran</translation>
        </message>
        <message>
            <source>Mine</source>
            <translation>Meine</translation>
        </message>
        <message>
            <source>Not opened</source>
            <translation>Ungeöffnet</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Auch deswegen anrufen: %1</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Angerufen: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Übernommen: %1</translation>
        </message>
        <message>
            <source>Take search and filters off to see the others.</source>
            <translation>Heben Sie Suche und Filter auf, um die anderen zu sehen.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>%Ln dringende Zeile ist durch Suche oder Filter verborgen</numerusform>
                <numerusform>%Ln dringende Zeilen sind durch Suche oder Filter verborgen</numerusform>
            </translation>
        </message>
        <message>
            <source>Visits missed more than %1 days ago, with nothing written down since: %2</source>
            <translation>Seit mehr als %1 Tagen versäumte Besuche, seither nichts notiert: %2</translation>
        </message>
        <message>
            <source>Only visits missed long ago</source>
            <translation>Nur lange versäumte Besuche</translation>
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
            <source>Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.</source>
            <translation>Anders gegebenes Lidocain: Milligramm, 0 bis %L1, höchstens eine Nachkommastelle.</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Als Jahr-Monat-Tag schreiben, zum Beispiel 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>Dieser Faden war am Tag der Behandlung abgelaufen.</translation>
        </message>
        <message>
            <source>The code names no lot and no expiry: type them below.</source>
            <translation>Der Code nennt weder Charge noch Verfall: tippen Sie beides unten.</translation>
        </message>
        <message>
            <source>This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.</source>
            <translation>Das ist kein lesbarer Code einer Packung. Nichts wurde übernommen: noch einmal scannen, oder Charge und Verfall unten tippen.</translation>
        </message>
        <message>
            <source>Draw or choose a thread first.</source>
            <translation>Zeichnen oder wählen Sie zuerst einen Faden.</translation>
        </message>
        <message>
            <source>This record was begun on %1. Say when the treatment was.</source>
            <translation>Dieser Eintrag wurde am %1 begonnen. Geben Sie an, wann die Behandlung war.</translation>
        </message>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>Die Behandlung war vor %Ln Tag. Geben Sie an, ob das stimmt.</numerusform>
                <numerusform>Die Behandlung war vor %Ln Tagen. Geben Sie an, ob das stimmt.</numerusform>
            </translation>
        </message>
        <message>
            <source>This time is still to come. Write when the treatment was.</source>
            <translation>Dieser Zeitpunkt liegt noch vor uns. Schreiben Sie, wann die Behandlung war.</translation>
        </message>
        <message>
            <source>Write the day of the treatment as year-month-day, for example 2029-06-30.</source>
            <translation>Den Tag der Behandlung als Jahr-Monat-Tag schreiben, zum Beispiel 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time of the treatment as hours and minutes, for example 14:05.</source>
            <translation>Die Uhrzeit der Behandlung als Stunden und Minuten schreiben, zum Beispiel 14:05.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nein</translation>
        </message>
        <message>
            <source>Placed once</source>
            <translation>Einmal gelegt</translation>
        </message>
        <message>
            <source>Say why it was redone.</source>
            <translation>Sagen Sie, warum er neu gelegt wurde.</translation>
        </message>
        <message>
            <source>Shorten the reason.</source>
            <translation>Kürzen Sie den Grund.</translation>
        </message>
        <message>
            <source>Thread %L1 was redone: say why.</source>
            <translation>Faden %L1 wurde neu gelegt: Sagen Sie, warum.</translation>
        </message>
        <message>
            <source>Not written down</source>
            <translation>Nicht aufgeschrieben</translation>
        </message>
        <message>
            <source>The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.</source>
            <translation>Der Code sagt nicht, wo die Charge endet. Sehen Sie auf die Packung und wählen Sie, was dort steht, oder tippen Sie es unten ein.</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>Nicht gesagt</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Keines</translation>
        </message>
        <message>
            <source>At the entry point</source>
            <translation>Am Einstich</translation>
        </message>
        <message>
            <source>Along the track</source>
            <translation>Entlang der Bahn</translation>
        </message>
        <message>
            <source>At entry point and along the track</source>
            <translation>Am Einstich und entlang der Bahn</translation>
        </message>
        <message>
            <source>Nobody chosen yet</source>
            <translation>Noch niemand gewählt</translation>
        </message>
        <message>
            <source>What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1</source>
            <comment>the reason</comment>
            <translation>Was hier begonnen wurde, lässt sich nicht lesen. Es bleibt, wie es ist: Was Sie jetzt schreiben, wird nicht als Entwurf behalten. %1</translation>
        </message>
        <message>
            <source>Nothing was drawn: thread %1 lies there already. It is chosen now.</source>
            <comment>its number</comment>
            <translation>Nichts wurde gezeichnet: Faden %1 liegt dort schon. Er ist jetzt gewählt.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Say why it is corrected.</source>
            <translation>Sagen Sie, warum korrigiert wird.</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Noch ist nichts geändert.</translation>
        </message>
        <message>
            <source>A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.</source>
            <translation>Jemand aus dem Team hat diesen Eintrag inzwischen korrigiert. Was Sie eintragen, gilt als Ganzes und tritt an dessen Stelle: Unten steht, was es ändern würde.</translation>
        </message>
        <message>
            <source>The solution is now with epinephrine %1: check it under Anaesthetic.</source>
            <comment>dilution</comment>
            <translation>Jetzt enthält die Lösung Epinephrin %1: prüfen Sie sie unter „Betäubung“.</translation>
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
            <source>What the desk keeps about patients is encrypted on this computer until you unlock it.</source>
            <translation>Was das Programm über behandelte Personen aufbewahrt, ist auf diesem Rechner verschlüsselt, bis Sie ihn aufschließen.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>Die beiden sind nicht gleich.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Wählen Sie einen Passwortsatz mit mindestens %Ln Zeichen. Er verschlüsselt, was das Programm auf diesem Rechner über behandelte Personen aufbewahrt. Niemand kann ihn wiederherstellen: schreiben Sie ihn auf und verwahren Sie ihn sicher.</numerusform>
                <numerusform>Wählen Sie einen Passwortsatz mit mindestens %Ln Zeichen. Er verschlüsselt, was das Programm auf diesem Rechner über behandelte Personen aufbewahrt. Niemand kann ihn wiederherstellen: schreiben Sie ihn auf und verwahren Sie ihn sicher.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Zu kurz: mindestens %Ln Zeichen.</numerusform>
                <numerusform>Zu kurz: mindestens %Ln Zeichen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Open it with the recovery code</source>
            <translation>Mit dem Ersatz-Code öffnen</translation>
        </message>
        <message>
            <source>Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.</source>
            <translation>Tippen Sie den Code vom Papier und wählen Sie einen neuen Passwortsatz. Der verlorene öffnet danach nichts mehr.</translation>
        </message>
        <message>
            <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
            <translation>Das ist kein Ersatz-Code. Er hat 36 Buchstaben und Ziffern in neun Gruppen. Prüfen Sie jedes Zeichen.</translation>
        </message>
        <message>
            <source>This code does not open this vault. A newer one may have taken its place.</source>
            <translation>Dieser Code öffnet diesen Tresor nicht. Vielleicht gilt ein neuerer.</translation>
        </message>
        <message>
            <source>One moment. The desk finds out how strong the lock can be on this computer.</source>
            <translation>Einen Moment. Das Programm ermittelt, wie stark die Sperre auf diesem Rechner sein kann.</translation>
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
        <message>
            <source>Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Einstich von Faden %1 genommen, jetzt %2 quer, %3 hinunter: Leertaste legt ihn ab.</translation>
        </message>
        <message>
            <source>End of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Ende von Faden %1 genommen, jetzt %2 quer, %3 hinunter: Leertaste legt es ab.</translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message>
            <source>Per cent of courses</source>
            <translation>Prozent der Verläufe</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Tage seit der Behandlung</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Kompliziert</translation>
        </message>
        <message>
            <source>Outcome known</source>
            <translation>Ausgang bekannt</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Nicht bekannt</translation>
        </message>
        <message>
            <source>Treatments with a known outcome, one after the other</source>
            <translation>Behandlungen mit bekanntem Ausgang, eine nach der anderen</translation>
        </message>
        <message>
            <source>Running sum, no unit</source>
            <translation>Laufende Summe, ohne Einheit</translation>
        </message>
        <message>
            <source>Look here from %1 on</source>
            <translation>Ab %1 hinschauen</translation>
        </message>
        <message>
            <source>strokes: complicated courses</source>
            <translation>Striche: komplizierte Verläufe</translation>
        </message>
        <message>
            <source>Have complications become more frequent?</source>
            <translation>Sind Komplikationen häufiger geworden?</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patientin</translation>
        </message>
        <message>
            <source>Running sum</source>
            <translation>Laufende Summe</translation>
        </message>
        <message>
            <source>No course has a known outcome yet. Record follow-ups, and the line begins.</source>
            <translation>Noch kein Verlauf hat einen bekannten Ausgang. Tragen Sie Nachschauen ein, dann beginnt die Linie.</translation>
        </message>
        <message>
            <source>yes, and a signal</source>
            <translation>ja, und ein Signal</translation>
        </message>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>Kein Signal in %Ln Behandlung.</numerusform>
                <numerusform>Kein Signal in %Ln Behandlungen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln Signal: sehen Sie die Verläufe davor an.</numerusform>
                <numerusform>%Ln Signale: sehen Sie die Verläufe jeweils davor an.</numerusform>
            </translation>
        </message>
        <message>
            <source>Now at %1 of %2.</source>
            <comment>sum, limit</comment>
            <translation>Jetzt bei %1 von %2.</translation>
        </message>
        <message>
            <source>%1 more complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 mehr kompliziert als erwartet.</translation>
        </message>
        <message>
            <source>%1 fewer complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 weniger kompliziert als erwartet.</translation>
        </message>
        <message>
            <source>By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.</source>
            <translation>Allein durch Zufall meldet sich so eine Linie in %1 von 100 Praxen; bei wirklich verdoppelten Chancen in %2.</translation>
        </message>
        <message>
            <source>How often chance alone would signal is still being worked out.</source>
            <translation>Wie oft sich allein der Zufall meldet, wird noch berechnet.</translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>Nicht endgültig: %Ln Verlauf ohne bekannten Ausgang liegt vor dem letzten gezeigten.</numerusform>
                <numerusform>Nicht endgültig: %Ln Verläufe ohne bekannten Ausgang, einige vor dem letzten gezeigten.</numerusform>
            </translation>
        </message>
        <message>
            <source>The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.</source>
            <translation>Das Risiko ist eine Annahme, für alle gleich: ein Signal bittet um einen Blick, es beschuldigt niemanden.</translation>
        </message>
        <message>
            <source>What alerts cost, and which were worth it</source>
            <translation>Was Meldungen kosten, und welche sich lohnten</translation>
        </message>
        <message>
            <source>Closed as</source>
            <translation>Geschlossen als</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Meldungen</translation>
        </message>
        <message>
            <source>Not closed before the follow-up</source>
            <translation>Vor der Nachschau nicht geschlossen</translation>
        </message>
        <message>
            <source>Still open</source>
            <translation>Noch offen</translation>
        </message>
        <message>
            <source>Apart: not heard from</source>
            <translation>Gesondert: nichts gehört</translation>
        </message>
        <message>
            <source>No course with a linked phone yet.</source>
            <translation>Noch kein Verlauf mit gekoppeltem Telefon.</translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>Keine Meldung in %Ln Verlauf.</numerusform>
                <numerusform>Keine Meldung in %Ln Verläufen.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 raised an alert, %2 alert(s) in all, about %3 a week lately.</source>
            <comment>courses, number, number</comment>
            <translation>%1 mit Meldung, Meldungen insgesamt: %2, zuletzt etwa %3 je Woche.</translation>
        </message>
        <message>
            <source>Worth it, of those closed: %1.</source>
            <translation>Gelohnt, von den geschlossenen: %1.</translation>
        </message>
        <message>
            <source>An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.</source>
            <translation>Eine Meldung, nach der beruhigt wurde, zählt hier als nicht gelohnt. Die Patientin sieht das vielleicht anders.</translation>
        </message>
        <message>
            <source>Worth it</source>
            <translation>Gelohnt</translation>
        </message>
        <message>
            <source>Per cent of closed alerts</source>
            <translation>Prozent der geschlossenen Meldungen</translation>
        </message>
        <message>
            <source>What patients did of what they were asked</source>
            <translation>Was von dem Erbetenen getan wurde</translation>
        </message>
        <message>
            <source>An unanswered reminder is not a missed one: she may have done it without saying so.</source>
            <translation>Eine unbeantwortete Erinnerung ist keine versäumte: vielleicht wurde es getan und nicht gesagt.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Erbeten</translation>
        </message>
        <message>
            <source>Asked</source>
            <translation>Gefragt</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>Nicht erledigt</translation>
        </message>
        <message>
            <source>Days with an entry</source>
            <translation>Tage mit Eintrag</translation>
        </message>
        <message>
            <source>Per cent of times asked</source>
            <translation>Prozent der Fragen</translation>
        </message>
        <message>
            <source>%1 wrote on %2 of %3 days asked.</source>
            <comment>courses, days, days</comment>
            <translation>%1: eingetragen an %2 von %3 erfragten Tagen.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>Zu wenig für eine Aussage: %Ln bekannter Ausgang, %1 sind nötig</numerusform>
                <numerusform>Zu wenig für eine Aussage: %Ln bekannte Ausgänge, %1 sind nötig</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>Zu wenig für eine Aussage: %Ln Verlauf damit, %1 sind nötig</numerusform>
                <numerusform>Zu wenig für eine Aussage: %Ln Verläufe damit, %1 sind nötig</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>Zu wenig für eine Aussage: %Ln Tag verfolgt, %1 sind nötig</numerusform>
                <numerusform>Zu wenig für eine Aussage: %Ln Tage verfolgt, %1 sind nötig</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>Zu wenig für eine Aussage: %Ln Gruppe, %1 sind nötig</numerusform>
                <numerusform>Zu wenig für eine Aussage: %Ln Gruppen, %1 sind nötig</numerusform>
            </translation>
        </message>
        <message>
            <source>Not enough to say: nothing varied</source>
            <translation>Zu wenig für eine Aussage: nichts war verschieden</translation>
        </message>
        <message>
            <source>Not enough to say: nothing happened in either group</source>
            <translation>Zu wenig für eine Aussage: in keiner Gruppe geschah etwas</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>share, its limits</comment>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln course(s)</source>
            <translation>
                <numerusform>%1 von %Ln Verlauf</numerusform>
                <numerusform>%1 von %Ln Verläufen</numerusform>
            </translation>
        </message>
        <message>
            <source>Where threads end</source>
            <translation>Wo Fäden enden</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Stärke</translation>
        </message>
        <message>
            <source>Epinephrine at the entry point</source>
            <translation>Adrenalin am Einstich</translation>
        </message>
        <message>
            <source>Face or neck</source>
            <translation>Gesicht oder Hals</translation>
        </message>
        <message>
            <source>Not told</source>
            <translation>Nicht angegeben</translation>
        </message>
        <message>
            <source>Mixed</source>
            <translation>Gemischt</translation>
        </message>
        <message>
            <source>%1 G</source>
            <comment>gauge of needle or cannula</comment>
            <translation>%1 G</translation>
        </message>
        <message>
            <source>With epinephrine</source>
            <translation>Mit Adrenalin</translation>
        </message>
        <message>
            <source>Without epinephrine</source>
            <translation>Ohne Adrenalin</translation>
        </message>
        <message>
            <source>Face</source>
            <translation>Gesicht</translation>
        </message>
        <message>
            <source>Deep folds ask for threads past the moving zone, and deep folds recover otherwise.</source>
            <translation>Tiefe Falten verlangen Fäden jenseits der bewegten Zone, und tiefe Falten erholen sich anders.</translation>
        </message>
        <message>
            <source>Stronger threads need a lower gauge: what differs may be the thread.</source>
            <translation>Stärkere Fäden brauchen eine dickere Nadel: der Unterschied kann am Faden liegen.</translation>
        </message>
        <message>
            <source>Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.</source>
            <translation>Adrenalin verdeckt frühe Blutergüsse und wird bei Blutungsneigung oder schwachem Herzen weggelassen. Verläufe, deren Fäden nicht alle sagen, wo sie es hatten, wie die eines älteren Programms, zählen nicht mit.</translation>
        </message>
        <message>
            <source>Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.</source>
            <translation>Gesicht und Hals schwellen von Natur verschieden: das zeigt, was zu sagen ist, nicht was besser ist.</translation>
        </message>
        <message>
            <source>Threads were chosen for the face: heavy faces get other threads than light ones.</source>
            <translation>Fäden wurden fürs Gesicht gewählt: schwere Gesichter bekommen andere als leichte.</translation>
        </message>
        <message>
            <source>%1 days (%2 to %3)</source>
            <comment>mean, its limits</comment>
            <translation>%1 Tage (%2 bis %3)</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>nicht erreicht</translation>
        </message>
        <message>
            <source>Courses that still have it, per cent</source>
            <translation>Verläufe, die es noch haben, Prozent</translation>
        </message>
        <message>
            <source>Complicated courses</source>
            <translation>Komplizierte Verläufe</translation>
        </message>
        <message>
            <source>All courses</source>
            <translation>Alle Verläufe</translation>
        </message>
        <message>
            <source>%1 were complicated: %2.</source>
            <comment>courses, share</comment>
            <translation>Kompliziert: %1, das sind %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln Verlauf ohne Nachschau zählt nicht mit: er kann schlechter oder besser sein.</numerusform>
                <numerusform>%Ln Verläufe ohne Nachschau zählen nicht mit: sie können schlechter oder besser sein.</numerusform>
            </translation>
        </message>
        <message>
            <source>By kind</source>
            <translation>Nach Art</translation>
        </message>
        <message>
            <source>Most often: %1.</source>
            <translation>Am häufigsten: %1.</translation>
        </message>
        <message>
            <source>A course with two kinds counts in both.</source>
            <translation>Ein Verlauf mit zwei Arten zählt in beiden.</translation>
        </message>
        <message>
            <source>No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.</source>
            <translation>Noch ist keine Komplikation verzeichnet. Das beweist nicht, dass es keine gibt: die Grenzen oben sagen, wie viele es sein können.</translation>
        </message>
        <message>
            <source>By zone</source>
            <translation>Nach Zone</translation>
        </message>
        <message>
            <source>A course counts in every zone that it has.</source>
            <translation>Ein Verlauf zählt in jeder Zone, die er hat.</translation>
        </message>
        <message>
            <source>Shares of zones do not add up: neighbouring zones share their patients.</source>
            <translation>Anteile der Zonen ergeben keine Summe: benachbarte Zonen teilen sich Patientinnen.</translation>
        </message>
        <message>
            <source>How long symptoms last</source>
            <translation>Wie lange Beschwerden dauern</translation>
        </message>
        <message>
            <source>Who feels well may stop writing: then this looks slower than it is.</source>
            <translation>Wem es gut geht, der schreibt vielleicht nicht mehr: dann wirkt es langsamer, als es ist.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Beschwerde</translation>
        </message>
        <message>
            <source>Courses with it</source>
            <translation>Verläufe damit</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Vorbei</translation>
        </message>
        <message>
            <source>Days with it up to day 20</source>
            <translation>Tage damit bis Tag 20</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>symptom, days</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in which it went.</source>
            <translation>Zu wenig für eine Aussage: für keine Beschwerde gibt es genug Verläufe, in denen sie verging.</translation>
        </message>
        <message>
            <source>Half were rid of it by day: %1.</source>
            <translation>Bei der Hälfte vorbei bis Tag: %1.</translation>
        </message>
        <message>
            <source>Complications side by side</source>
            <translation>Komplikationen im Vergleich</translation>
        </message>
        <message>
            <source>%1 less %2: %3 points of 100 (%4 to %5).</source>
            <comment>group, group, difference, its limits</comment>
            <translation>%1 minus %2: %3 Punkte von 100 (%4 bis %5).</translation>
        </message>
        <message>
            <source>So many courses would find a doubling of %1 in %2 of 100 cases.</source>
            <comment>share, number</comment>
            <translation>So viele Verläufe fänden eine Verdopplung von %1 in %2 von 100 Fällen.</translation>
        </message>
        <message>
            <source>Found in 80 of 100 cases: %1 or more beside it.</source>
            <translation>In 80 von 100 Fällen gefunden: %1 oder mehr daneben.</translation>
        </message>
        <message>
            <source>No difference at all would be found in 80 of 100 cases.</source>
            <translation>Kein Unterschied würde in 80 von 100 Fällen gefunden.</translation>
        </message>
        <message>
            <source>Probability by chance alone: below %1.</source>
            <translation>Wahrscheinlichkeit allein durch Zufall: unter %1.</translation>
        </message>
        <message>
            <source>Probability by chance alone: %1.</source>
            <translation>Wahrscheinlichkeit allein durch Zufall: %1.</translation>
        </message>
        <message>
            <source>No test: all ended alike.</source>
            <translation>Kein Test: alle endeten gleich.</translation>
        </message>
        <message>
            <source>Days with each symptom, difference</source>
            <translation>Tage mit jeder Beschwerde, Differenz</translation>
        </message>
        <message>
            <source>Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.</source>
            <translation>Sieben Beschwerden sind sieben Tests: eine Wahrscheinlichkeit unter 0,05 darunter ist häufig, auch wenn nichts verschieden ist.</translation>
        </message>
        <message>
            <source>Difference, days</source>
            <translation>Differenz, Tage</translation>
        </message>
        <message>
            <source>By chance</source>
            <translation>Durch Zufall</translation>
        </message>
        <message>
            <source>Found in 80 of 100</source>
            <translation>In 80 von 100 gefunden</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 Tage</translation>
        </message>
        <message>
            <source>Days: to the left %1 is shorter, to the right %2</source>
            <comment>group, group</comment>
            <translation>Tage: links ist %1 kürzer, rechts %2</translation>
        </message>
        <message>
            <source>Days with the symptom up to day 20, %1 less %2.</source>
            <comment>group, group</comment>
            <translation>Tage mit der Beschwerde bis Tag 20, %1 minus %2.</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in both groups.</source>
            <translation>Zu wenig für eine Aussage: für keine Beschwerde gibt es in beiden Gruppen genug Verläufe.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln Verlauf</numerusform>
                <numerusform>%Ln Verläufe</numerusform>
            </translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Behandelt</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fäden</translation>
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
            <source>Neck</source>
            <translation>Hals</translation>
        </message>
        <message>
            <source>fewer than %1</source>
            <comment>of 100</comment>
            <translation>weniger als %1</translation>
        </message>
        <message>
            <source>Not enough to say: the groups lie too far apart</source>
            <translation>Zu wenig, um etwas zu sagen: die Gruppen liegen zu weit auseinander</translation>
        </message>
        <message>
            <source>Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.</source>
            <translation>Anteil der Verläufe mit bekanntem Ausgang. Grenzen: Wilson, 95 %. Verläufe ohne Nachschau sind ausgelassen und eigens gezählt.</translation>
        </message>
        <message>
            <source>Share, 95% limits</source>
            <translation>Anteil, Grenzen 95 %</translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>Meldung: eine Warnung oder ein Befund, der vor der Nachschau eine Handlung verlangt. Gelohnt: mit Rat, Behandlung oder Notfallversorgung geschlossen, oder der Termin wurde vorgezogen. Grenzen: Wilson, 95 %. Meldungen je Woche: über die letzte %Ln Woche.</numerusform>
                <numerusform>Meldung: eine Warnung oder ein Befund, der vor der Nachschau eine Handlung verlangt. Gelohnt: mit Rat, Behandlung oder Notfallversorgung geschlossen, oder der Termin wurde vorgezogen. Grenzen: Wilson, 95 %. Meldungen je Woche: über die letzten %Ln Wochen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.</source>
            <translation>Einträge: Tage, an denen der Pflegeplan fragte und etwas eingetragen wurde. Erinnerungen: mit „erledigt“ beantwortet. Grenzen: Wilson, 95 %; Erinnerungen derselben Person ähneln einander, daher sind sie zu eng.</translation>
        </message>
        <message>
            <source>Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.</source>
            <translation>Vorbei: ein Wert von 1 oder weniger an zwei Tagen hintereinander, der bleibt; die schlechtere Seite zählt. Kurven: Kaplan-Meier, Median mit Grenzen nach Brookmeyer und Crowley, 95 %. Mittlere Tage bis Tag 20, Grenzen nach der Normalverteilung.</translation>
        </message>
        <message>
            <source>Median day, 95% limits</source>
            <translation>Mittlerer Tag (Median), Grenzen 95 %</translation>
        </message>
        <message>
            <source>Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.</source>
            <translation>Anteile: Wilson, 95 %. Differenz: Newcombe. Test: Fisher, zweiseitig. Teststärke: exakt für diesen Test.</translation>
        </message>
        <message>
            <source>Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.</source>
            <translation>Differenz der mittleren Tage bis Tag 20 (beschränkte Mittelwerte), Grenzen nach der Normalverteilung, 95 %; Log-Rank-Test.</translation>
        </message>
        <message>
            <source>CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.</source>
            <translation>CUSUM mit einem Risiko für alle Verläufe (Summe nach Steiner u. a., Biostatistics 2000, an keine Patientin angepasst): achtet auf %1-fache Chancen gegenüber einem Risiko von %2; beginnt nach einem Signal von vorn.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message>
            <source>Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one.</source>
            <translation>Zu wenig für eine Aussage: ein Vergleich braucht zwei Gruppen, und alle Verläufe, die sich zuordnen lassen, gehören zu einer.</translation>
        </message>
        <message>
            <source>Not enough to say: a comparison needs two groups, and no course says to which it belongs.</source>
            <translation>Zu wenig für eine Aussage: ein Vergleich braucht zwei Gruppen, und kein Verlauf sagt, zu welcher er gehört.</translation>
        </message>
        <message>
            <source>Time to settle</source>
            <translation>Dauer</translation>
        </message>
        <message>
            <source>Techniques</source>
            <translation>Techniken</translation>
        </message>
        <message>
            <source>Over time</source>
            <translation>Im Lauf der Zeit</translation>
        </message>
        <message>
            <source>Adherence</source>
            <translation>Mitmachen</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Chargen</translation>
        </message>
        <message>
            <source>Usual range</source>
            <translation>Üblicher Bereich</translation>
        </message>
        <message>
            <source>Reading the courses</source>
            <translation>Die Verläufe werden gelesen</translation>
        </message>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · davon %Ln mit bekanntem Ausgang</numerusform>
                <numerusform>%1 · davon %Ln mit bekanntem Ausgang</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>group, courses</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Comparison, not proof: nobody drew by lot who got what.</source>
            <translation>Vergleich, kein Beweis: niemand hat ausgelost, wer was bekam.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt.</translation>
        </message>
        <message>
            <source>Save the figure</source>
            <translation>Abbildung speichern</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Komplikationen</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Meldungen</translation>
        </message>
    </context>
    <context>
        <name>PracticePage</name>
        <message>
            <source>Practice</source>
            <translation>Praxis im Rückblick</translation>
        </message>
        <message>
            <source>Working the figures out. The desk stays free meanwhile.</source>
            <translation>Die Zahlen werden berechnet. Das Pult bleibt dabei frei.</translation>
        </message>
    </context>
    <context>
        <name>FigureCard</name>
        <message>
            <source>How: %1</source>
            <translation>Wie: %1</translation>
        </message>
        <message>
            <source>Show the picture</source>
            <translation>Bild zeigen</translation>
        </message>
        <message>
            <source>Save as CSV</source>
            <translation>Als CSV speichern</translation>
        </message>
        <message>
            <source>Save as PNG</source>
            <translation>Als PNG speichern</translation>
        </message>
        <message>
            <source>Save as SVG</source>
            <translation>Als SVG speichern</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Als Tabelle zeigen</translation>
        </message>
    </context>
    <context>
        <name>ComparisonChoice</name>
        <message>
            <source>Compare by</source>
            <translation>Vergleichen nach</translation>
        </message>
        <message>
            <source>First</source>
            <translation>Erste</translation>
        </message>
        <message>
            <source>Second</source>
            <translation>Zweite</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::LotBoard</name>
        <message>
            <source>%1 complicated, %2 not known yet</source>
            <translation>%1 kompliziert, %2 noch nicht bekannt</translation>
        </message>
        <message>
            <source>Lot %1 went to %2.</source>
            <comment>lot, courses</comment>
            <translation>Charge %1 ging an %2.</translation>
        </message>
        <message>
            <source>Outcome not known</source>
            <translation>Ausgang nicht bekannt</translation>
        </message>
        <message>
            <source>Uncomplicated</source>
            <translation>Unkompliziert</translation>
        </message>
        <message>
            <source>Call list for lot %1</source>
            <translation>Rufliste für Charge %1</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <comment>clinic, when</comment>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Telefon</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Charge wie notiert</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>Called by, when</source>
            <translation>Angerufen von, wann</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt: verwahren Sie sie wie die Akten.</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Rufliste speichern</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Kompliziert</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patientin</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Behandelt</translation>
        </message>
        <message>
            <source>%1, product not known</source>
            <comment>lot</comment>
            <translation>%1, Produkt nicht bekannt</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product</comment>
            <translation>%1, Produkt %2</translation>
        </message>
        <message>
            <source>Product not known: %1 of them. It may be this one, so they stand here too.</source>
            <comment>a number of courses</comment>
            <translation>Produkt nicht bekannt: bei %1 davon. Es kann dieses sein, darum stehen sie auch hier.</translation>
        </message>
    </context>
    <context>
        <name>LimitFields</name>
        <message>
            <source>Your clinic's limit of lidocaine</source>
            <translation>Grenze Ihrer Klinik für Lidocain</translation>
        </message>
        <message>
            <source>You may set it lower than the US label's, never higher. An empty field keeps the label's number.</source>
            <translation>Sie dürfen sie niedriger setzen als die der US-Fachinformation, nie höher. Ein leeres Feld behält die Zahl der Fachinformation.</translation>
        </message>
        <message>
            <source>Save the limit</source>
            <translation>Grenze speichern</translation>
        </message>
    </context>
    <context>
        <name>LotPanel</name>
        <message>
            <source>Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.</source>
            <translation>Wählen Sie eine Charge, um alle zu sehen, die sie bekamen. Sie wird in jeder Schreibweise gefunden. Eine Charge ist keine Ursache: wer sie bekam, dem kann es gut gehen.</translation>
        </message>
        <message>
            <source>No treatment on record has such a lot.</source>
            <translation>Keine verzeichnete Behandlung hat so eine Charge.</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Charge</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patientin</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Telefon</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Behandelt</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Charge wie notiert</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Rufliste speichern</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>%Ln Verlauf darf eine neue Fassung lehren.</numerusform>
                <numerusform>%Ln Verläufe dürfen eine neue Fassung lehren.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>%Ln Verlauf darf lehren. %1 sind nötig, um eine Fassung zu prüfen.</numerusform>
                <numerusform>%Ln Verläufe dürfen lehren. %1 sind nötig, um eine Fassung zu prüfen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>Aus %Ln Verlauf gelernt von %1, %2</numerusform>
                <numerusform>Aus %Ln Verläufen gelernt von %1, %2</numerusform>
            </translation>
        </message>
        <message>
            <source>The range every clinic begins with: an assumption, no courses behind it</source>
            <translation>Der Bereich, mit dem jede Praxis beginnt: eine Annahme, keine Verläufe dahinter</translation>
        </message>
        <message>
            <source>%1 went back to %2, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 ging zu %2 zurück, %3: %4</translation>
        </message>
        <message>
            <source>%1 put %2 into use, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 nahm %2 in Gebrauch, %3: %4</translation>
        </message>
        <message>
            <source>On courses it had not seen</source>
            <translation>An ungesehenen Verläufen</translation>
        </message>
        <message>
            <source>Above the 90th</source>
            <translation>Über dem 90.</translation>
        </message>
        <message>
            <source>Above the 97th</source>
            <translation>Über dem 97.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: a version carries the name of who learned it.</source>
            <translation>Sagen Sie zuerst, wer am Pult ist: eine Fassung trägt den Namen dessen, der sie lernte.</translation>
        </message>
        <message>
            <source>Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.</source>
            <translation>%1 ist gelernt. Für niemanden hat sich etwas geändert: sehen Sie die Prüfung an, dann verwenden oder lassen Sie sie.</translation>
        </message>
        <message>
            <source>Nothing has changed since the last version was learned.</source>
            <translation>Seit der letzten Fassung hat sich nichts geändert.</translation>
        </message>
        <message>
            <source>Go back to %1</source>
            <translation>Zu %1 zurückkehren</translation>
        </message>
        <message>
            <source>Use %1</source>
            <translation>%1 verwenden</translation>
        </message>
        <message>
            <source>%1 is in use. Courses that run keep the range they began with.</source>
            <translation>%1 ist in Gebrauch. Laufende Verläufe behalten ihren Bereich.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Beschwerde</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Verläufe</translation>
        </message>
    </context>
    <context>
        <name>Bands</name>
        <message numerus="yes">
            <source>%Ln course(s): the patient has not agreed that her course teaches</source>
            <translation>
                <numerusform>%Ln Verlauf: keine Zustimmung zum Lernen</numerusform>
                <numerusform>%Ln Verläufe: keine Zustimmung zum Lernen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln Verlauf: noch keine Nachschau, der Ausgang ist unbekannt</numerusform>
                <numerusform>%Ln Verläufe: noch keine Nachschau, der Ausgang ist unbekannt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln Verlauf: kompliziert</numerusform>
                <numerusform>%Ln Verläufe: kompliziert</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln Verlauf: wegen eines Befunds behandelt</numerusform>
                <numerusform>%Ln Verläufe: wegen eines Befunds behandelt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln Verlauf: zu wenige Tage mit Eintrag</numerusform>
                <numerusform>%Ln Verläufe: zu wenige Tage mit Eintrag</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough to say: nearly the assumption</source>
            <translation>zu wenig für eine Aussage: fast die Annahme</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>hält</translation>
        </message>
        <message>
            <source>too narrow: false alerts</source>
            <translation>zu eng: falsche Meldungen</translation>
        </message>
        <message>
            <source>too wide: it would look late</source>
            <translation>zu weit: es sähe spät hin</translation>
        </message>
        <message>
            <source>%1, promised %2</source>
            <comment>share seen, share promised</comment>
            <translation>%1, versprochen %2</translation>
        </message>
        <message>
            <source>It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).</source>
            <translation>Er hielt an ungesehenen Verläufen: %1 der Werte lagen über seinem 90. Zentil (%2 bis %3).</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>Nicht verwendbar: %Ln Verlauf dahinter, %1 sind nötig.</numerusform>
                <numerusform>Nicht verwendbar: %Ln Verläufe dahinter, %1 sind nötig.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be used: it did not hold on courses that it had not seen. The table says where.</source>
            <translation>Nicht verwendbar: er hielt nicht an ungesehenen Verläufen. Die Tabelle sagt, wo.</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>Noch nicht verwendbar: er konnte an %Ln Verlauf dieser Praxis geprüft werden, %1 sind nötig.</numerusform>
                <numerusform>Noch nicht verwendbar: er konnte an %Ln Verläufen dieser Praxis geprüft werden, %1 sind nötig.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>Aus einer Datei übernommen von %1, %2. Dort heißt er %3 und beruht auf %Ln Verlauf.</numerusform>
                <numerusform>Aus einer Datei übernommen von %1, %2. Dort heißt er %3 und beruht auf %Ln Verläufen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Whoever took it says that no course of this clinic is behind it.</source>
            <translation>Wer ihn übernahm, sagt, dass kein Verlauf dieser Praxis dahintersteht.</translation>
        </message>
        <message>
            <source>It was checked on courses that were treated after it was learned.</source>
            <translation>Er wurde an Verläufen geprüft, die nach dem Lernen behandelt wurden.</translation>
        </message>
    </context>
    <context>
        <name>BandCard</name>
        <message>
            <source>%1, in use</source>
            <translation>%1, in Gebrauch</translation>
        </message>
        <message>
            <source>Go back to it</source>
            <translation>Zu ihr zurück</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>Verwenden</translation>
        </message>
        <message>
            <source>Hide the check</source>
            <translation>Prüfung verbergen</translation>
        </message>
        <message>
            <source>Show the check</source>
            <translation>Prüfung zeigen</translation>
        </message>
    </context>
    <context>
        <name>BandPanel</name>
        <message>
            <source>In use</source>
            <translation>In Gebrauch</translation>
        </message>
        <message>
            <source>Learn a new one</source>
            <translation>Einen neuen lernen</translation>
        </message>
        <message>
            <source>Learning, and checking on courses left out. This takes a while; the desk stays free.</source>
            <translation>Es wird gelernt und an ausgelassenen Verläufen geprüft. Das dauert eine Weile; das Pult bleibt frei.</translation>
        </message>
        <message>
            <source>Learn a version</source>
            <translation>Eine Fassung lernen</translation>
        </message>
        <message>
            <source>Nothing comes into use by it.</source>
            <translation>Dadurch kommt nichts in Gebrauch.</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>Fassungen</translation>
        </message>
        <message>
            <source>Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.</source>
            <translation>Jedes Protokoll wird damit neu unterschrieben. Laufende Verläufe behalten ihres. Der Grund wird mit Ihrem Namen verwahrt.</translation>
        </message>
    </context>
    <context>
        <name>ReasonPanel</name>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>So lassen</translation>
        </message>
    </context>
    <context>
        <name>ProtocolEditPage</name>
        <message>
            <source>Change the protocol</source>
            <translation>Protokoll ändern</translation>
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
            <source>As in use</source>
            <translation>Wie in Gebrauch</translation>
        </message>
        <message>
            <source>Drops every change; can be undone.</source>
            <translation>Verwirft jede Änderung; lässt sich rückgängig machen.</translation>
        </message>
        <message>
            <source>Undo the signature</source>
            <translation>Unterschrift zurücknehmen</translation>
        </message>
        <message>
            <source>Signs what was in use before anew.</source>
            <translation>Unterschreibt neu, was vorher in Gebrauch war.</translation>
        </message>
    </context>
    <context>
        <name>PlanFields</name>
        <message>
            <source>From day</source>
            <translation>Ab Tag</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Bis Tag</translation>
        </message>
        <message>
            <source>Every how many days</source>
            <translation>Alle wie viele Tage</translation>
        </message>
        <message>
            <source>Reminds at (empty: a rule to keep, nothing rings)</source>
            <translation>Erinnert um (leer: eine Regel, nichts klingelt)</translation>
        </message>
        <message>
            <source>The clinic's own words, added for the patient</source>
            <translation>Eigene Worte der Praxis, für die Patientin ergänzt</translation>
        </message>
        <message>
            <source>Rings in quiet hours too</source>
            <translation>Klingelt auch in der Ruhezeit</translation>
        </message>
        <message>
            <source>Take it out of the plan</source>
            <translation>Aus dem Plan nehmen</translation>
        </message>
    </context>
    <context>
        <name>PlanLine</name>
        <message>
            <source>%1 (changed)</source>
            <translation>%1 (geändert)</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolEditor</name>
        <message>
            <source>was %1</source>
            <translation>war %1</translation>
        </message>
        <message>
            <source>%1, version %2 in the making</source>
            <translation>%1, Fassung %2 in Arbeit</translation>
        </message>
        <message>
            <source>Care plan</source>
            <translation>Pflegeplan</translation>
        </message>
        <message>
            <source>Rules</source>
            <translation>Regeln</translation>
        </message>
        <message>
            <source>Rehearse and sign</source>
            <translation>Proben und unterschreiben</translation>
        </message>
        <message>
            <source>Write times of day with a space between, for example 08:00 20:00.</source>
            <translation>Schreiben Sie Uhrzeiten mit Leerzeichen dazwischen, etwa 08:00 20:00.</translation>
        </message>
        <message>
            <source>What the patient sees on day %1</source>
            <translation>Was die Patientin an Tag %1 sieht</translation>
        </message>
        <message>
            <source>An instruction of the clinic's own needs its words.</source>
            <translation>Eine eigene Anweisung der Praxis braucht ihre Worte.</translation>
        </message>
        <message>
            <source>Too much: at most 40 instructions, 8 times a day and 400 characters of text.</source>
            <translation>Zu viel: höchstens 40 Anweisungen, 8 Uhrzeiten am Tag und 400 Zeichen Text.</translation>
        </message>
        <message>
            <source>Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.</source>
            <translation>Von %1 glatt erfundenen unkomplizierten Verläufen meldet es %2, das in Gebrauch %3; von %4 in Stufen erfundenen %5, das in Gebrauch %6.</translation>
        </message>
        <message>
            <source>With as many patients as lately: about %1 alerts a week, now %2.</source>
            <comment>number, number</comment>
            <translation>Mit so vielen Patientinnen wie zuletzt: etwa %1 Meldungen je Woche, jetzt %2.</translation>
        </message>
        <message>
            <source>No past course to rehearse on: only invented courses speak.</source>
            <translation>Kein früherer Verlauf zum Proben: nur erfundene sprechen.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>%Ln früherer Verlauf wäre anders gemeldet worden.</numerusform>
                <numerusform>%Ln frühere Verläufe wären anders gemeldet worden.</numerusform>
            </translation>
        </message>
        <message>
            <source>The protocol has been changed since: rehearse it again.</source>
            <translation>Das Protokoll wurde seither geändert: proben Sie es noch einmal.</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Verläufe</translation>
        </message>
        <message>
            <source>Flagged, in use</source>
            <translation>Gemeldet, in Gebrauch</translation>
        </message>
        <message>
            <source>Flagged, changed</source>
            <translation>Gemeldet, geändert</translation>
        </message>
        <message>
            <source>Within a day, in use</source>
            <translation>Binnen eines Tages, in Gebrauch</translation>
        </message>
        <message>
            <source>Within a day, changed</source>
            <translation>Binnen eines Tages, geändert</translation>
        </message>
        <message>
            <source>Invented, smooth: %1</source>
            <translation>Erfunden, glatt: %1</translation>
        </message>
        <message>
            <source>Invented, in steps: %1</source>
            <translation>Erfunden, in Stufen: %1</translation>
        </message>
        <message>
            <source>%1, call now</source>
            <comment>courses</comment>
            <translation>%1, jetzt anrufen</translation>
        </message>
        <message>
            <source>%1, not heard from</source>
            <comment>courses</comment>
            <translation>%1, ohne Nachricht</translation>
        </message>
        <message>
            <source>Past: %1</source>
            <translation>Früher: %1</translation>
        </message>
        <message>
            <source>New: %1, %2</source>
            <comment>instruction, when</comment>
            <translation>Neu: %1, %2</translation>
        </message>
        <message>
            <source>%1: %2, %3 (was %4, %5)</source>
            <comment>instruction, when, how, when, how</comment>
            <translation>%1: %2, %3 (war %4, %5)</translation>
        </message>
        <message>
            <source>Taken out: %1</source>
            <translation>Herausgenommen: %1</translation>
        </message>
        <message>
            <source>Follow-up on day %1 (was %2)</source>
            <translation>Nachschau an Tag %1 (war %2)</translation>
        </message>
        <message>
            <source>%1, %2: %3 (was %4)</source>
            <comment>rule, what, number, number</comment>
            <translation>%1, %2: %3 (war %4)</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Noch ist nichts geändert.</translation>
        </message>
        <message>
            <source>Rehearse it first: nothing goes live unseen.</source>
            <translation>Proben Sie zuerst: nichts geht ungesehen in Betrieb.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Sagen Sie, wer am Pult ist.</translation>
        </message>
        <message>
            <source>Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.</source>
            <translation>Fassung %1 ist unterschrieben. Sie geht auf Telefone, die ab jetzt gekoppelt werden; laufende Verläufe behalten ihre.</translation>
        </message>
        <message>
            <source>What was in use before is in use again, as version %1.</source>
            <translation>Was vorher in Gebrauch war, ist wieder in Gebrauch, als Fassung %1.</translation>
        </message>
        <message>
            <source>Version %1, signed %2</source>
            <translation>Fassung %1, unterschrieben %2</translation>
        </message>
        <message>
            <source>Usual range: %1 (was %2)</source>
            <comment>version, version</comment>
            <translation>Üblicher Bereich: %1 (war %2)</translation>
        </message>
        <message>
            <source>It cannot be signed with the usual range that came with it. %1</source>
            <translation>Mit dem üblichen Bereich, der mitkam, kann es nicht unterschrieben werden. %1</translation>
        </message>
        <message>
            <source>With version %1 of %2</source>
            <comment>number, protocol</comment>
            <translation>Mit Fassung %1 von %2</translation>
        </message>
        <message>
            <source>The signature of version %1 was undone</source>
            <translation>Die Unterschrift von Fassung %1 wurde zurückgenommen</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <comment>rule, threshold and details, the same before</comment>
            <translation>%1: %2 (war %3)</translation>
        </message>
        <message>
            <source>A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1</source>
            <comment>the reason</comment>
            <translation>Ein behaltener Entwurf lässt sich nicht lesen. Er bleibt, wie er ist: Was Sie jetzt ändern, wird nicht behalten. %1</translation>
        </message>
    </context>
    <context>
        <name>ProtocolPlan</name>
        <message>
            <source>Follow-up</source>
            <translation>Nachschau</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Add an instruction</source>
            <translation>Anweisung hinzufügen</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>All day</source>
            <translation>Den ganzen Tag</translation>
        </message>
        <message>
            <source>Nothing is asked on this day.</source>
            <translation>An diesem Tag wird um nichts gebeten.</translation>
        </message>
        <message>
            <source>The diary says the same in the patient's language; the clinic's own words stand as they are written.</source>
            <translation>Das Tagebuch sagt dasselbe in der Sprache der Patientin; eigene Worte der Praxis stehen, wie sie geschrieben sind.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolRules</name>
        <message>
            <source>Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.</source>
            <translation>Warnzeichen, Fieber und starker Schmerz stehen nicht hier: kein Protokoll kann sie verzögern oder abschwächen. Die Schwellen der Statistik werden zusammen mit dem üblichen Bereich kalibriert.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
    </context>
    <context>
        <name>ProtocolSigning</name>
        <message>
            <source>What is changed</source>
            <translation>Was geändert ist</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Noch nichts.</translation>
        </message>
        <message>
            <source>Rehearsal</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.</source>
            <translation>Lässt die Regeln über frühere und über erfundene Verläufe laufen, deren Wahrheit bekannt ist. Dadurch ändert sich für niemanden etwas.</translation>
        </message>
        <message>
            <source>Rehearsing. The desk stays free meanwhile.</source>
            <translation>Es wird geprobt. Das Pult bleibt dabei frei.</translation>
        </message>
        <message>
            <source>Past courses, one by one</source>
            <translation>Frühere Verläufe, einer nach dem anderen</translation>
        </message>
        <message>
            <source>Rehearse again</source>
            <translation>Noch einmal proben</translation>
        </message>
        <message>
            <source>Rehearse</source>
            <translation>Proben</translation>
        </message>
        <message>
            <source>Sign it</source>
            <translation>Unterschreiben</translation>
        </message>
        <message>
            <source>It goes to phones that are linked from now on.</source>
            <translation>Es geht auf Telefone, die ab jetzt gekoppelt werden.</translation>
        </message>
        <message>
            <source>Signed before</source>
            <translation>Früher unterschrieben</translation>
        </message>
        <message>
            <source>Take it up again</source>
            <translation>Wieder aufnehmen</translation>
        </message>
        <message>
            <source>Keep the usual range in use</source>
            <translation>Den üblichen Bereich in Gebrauch behalten</translation>
        </message>
        <message>
            <source>Drops the range that came with the file, and its thresholds; can be undone.</source>
            <translation>Lässt den Bereich aus der Datei und seine Schwellen weg; lässt sich rückgängig machen.</translation>
        </message>
    </context>
    <context>
        <name>Rehearsals</name>
        <message>
            <source>Uncomplicated</source>
            <translation>Unkompliziert</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infektion</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hämatom</translation>
        </message>
        <message>
            <source>Slow recovery</source>
            <translation>Langsame Erholung</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Bleibende Einziehung</translation>
        </message>
        <message>
            <source>Falls silent</source>
            <translation>Verstummt</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Kompliziert</translation>
        </message>
        <message>
            <source>%1 of %2 (%3 to %4 in 100)</source>
            <comment>flagged, courses, limits</comment>
            <translation>%1 von %2 (%3 bis %4 von 100)</translation>
        </message>
        <message>
            <source>no such finding</source>
            <translation>kein solcher Hinweis</translation>
        </message>
        <message>
            <source>%1: %2 (%3)</source>
            <comment>day, finding, urgency</comment>
            <translation>%1: %2 (%3)</translation>
        </message>
    </context>
    <context>
        <name>RuleFields</name>
        <message>
            <source>Above the usual range</source>
            <translation>Über dem üblichen Bereich</translation>
        </message>
        <message>
            <source>Rising again</source>
            <translation>Steigt wieder</translation>
        </message>
        <message>
            <source>One side much worse</source>
            <translation>Eine Seite viel schlechter</translation>
        </message>
        <message>
            <source>One side fills in the first days</source>
            <translation>Eine Seite füllt sich in den ersten Tagen</translation>
        </message>
        <message>
            <source>Slow to settle</source>
            <translation>Beruhigt sich langsam</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Bleibende Einziehung</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Nichts gehört</translation>
        </message>
        <message>
            <source>only from this score on</source>
            <translation>erst ab diesem Wert</translation>
        </message>
        <message>
            <source>only so far above the lowest so far</source>
            <translation>erst so weit über dem bisher niedrigsten</translation>
        </message>
        <message>
            <source>from this day on</source>
            <translation>ab diesem Tag</translation>
        </message>
        <message>
            <source>up to this day</source>
            <translation>bis zu diesem Tag</translation>
        </message>
        <message>
            <source>only with so much between the sides</source>
            <translation>erst bei so viel zwischen den Seiten</translation>
        </message>
        <message>
            <source>only with so much between the sides, symptoms added up</source>
            <translation>erst bei so viel zwischen den Seiten, Beschwerden zusammengezählt</translation>
        </message>
        <message>
            <source>only after a peak of this score</source>
            <translation>erst nach einem Höchstwert dieser Höhe</translation>
        </message>
        <message>
            <source>unchanged for a week: from this day on</source>
            <translation>eine Woche unverändert: ab diesem Tag</translation>
        </message>
        <message>
            <source>unchanged for a week: only from this score on</source>
            <translation>eine Woche unverändert: erst ab diesem Wert</translation>
        </message>
        <message>
            <source>without an entry</source>
            <translation>ohne Eintrag</translation>
        </message>
        <message>
            <source>without an entry, after a high one</source>
            <translation>ohne Eintrag, nach einem hohen</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
    </context>
    <context>
        <name>CallPanel</name>
        <message>
            <source>What to ask</source>
            <translation>Was zu fragen ist</translation>
        </message>
        <message>
            <source>%L1. %2</source>
            <translation>%L1. %2</translation>
        </message>
        <message>
            <source>Note, or message to the patient</source>
            <translation>Notiz oder Nachricht an die Patientin</translation>
        </message>
        <message>
            <source>Spoke with her</source>
            <translation>Gesprochen</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Nicht erreicht</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Termin vorgezogen</translation>
        </message>
        <message>
            <source>Send as a message</source>
            <translation>Als Nachricht senden</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Jetzt nicht</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>Move the visit</source>
            <translation>Termin verschieben</translation>
        </message>
        <message>
            <source>She called us</source>
            <translation>Sie rief uns an</translation>
        </message>
        <message>
            <source>Nothing is open: the call is noted on the course.</source>
            <translation>Es ist nichts offen: Das Gespräch wird beim Verlauf vermerkt.</translation>
        </message>
        <message>
            <source>We reached her</source>
            <translation>Wir haben sie erreicht</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CallBoard</name>
        <message>
            <source>Call %1</source>
            <comment>name</comment>
            <translation>%1 anrufen</translation>
        </message>
        <message>
            <source>No number on record</source>
            <translation>Keine Nummer verzeichnet</translation>
        </message>
        <message>
            <source>%1. Ask before you call twice.</source>
            <comment>what somebody else did last</comment>
            <translation>%1. Fragen Sie, bevor zweimal angerufen wird.</translation>
        </message>
        <message>
            <source>Her diary is in %1.</source>
            <translation>Das Tagebuch spricht %1.</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Angerufen: %1</translation>
        </message>
        <message>
            <source>Visit brought forward: %1</source>
            <translation>Termin vorgezogen: %1</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>Nicht erreicht: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Choose a day from %1 to %2, and not what is agreed already.</source>
            <comment>date, date</comment>
            <translation>Wählen Sie einen Tag vom %1 bis zum %2, und nicht, was schon vereinbart ist.</translation>
        </message>
        <message>
            <source>Agreed so far: %1</source>
            <translation>Bisher vereinbart: %1</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Als Jahr-Monat-Tag schreiben, zum Beispiel 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Die Uhrzeit als Stunden und Minuten schreiben, zum Beispiel 10:30, oder leer lassen.</translation>
        </message>
        <message>
            <source>Midnight stands for a day without a time. Leave the time empty if none is agreed.</source>
            <translation>Mitternacht steht für einen Tag ohne Uhrzeit. Lassen Sie die Uhrzeit leer, wenn keine vereinbart ist.</translation>
        </message>
        <message>
            <source>It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.</source>
            <translation>Es ist zu spät, den Termin zu verschieben: Tag %L1 nach der Behandlung, der letzte mögliche, ist vorbei.</translation>
        </message>
        <message>
            <source>The phone shows from its next sync on: %1</source>
            <translation>Das Telefon zeigt ab dem nächsten Abgleich: %1</translation>
        </message>
        <message>
            <source>No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.</source>
            <translation>Kein Telefon hat diesen Verlauf: Ein vorgezogener Termin wird nur hier vermerkt, und kein Telefon zeigt ihn. Sagen Sie ihr den Tag.</translation>
        </message>
        <message>
            <source>She called us: %1</source>
            <translation>Sie rief uns an: %1</translation>
        </message>
        <message>
            <source>Since you opened this, something new came: %1</source>
            <comment>titles of findings</comment>
            <translation>Seit Sie dies geöffnet haben, kam etwas Neues: %1</translation>
        </message>
    </context>
    <context>
        <name>CallScript</name>
        <message>
            <source>Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line.</source>
            <translation>Können Sie atmen, Speichel schlucken und einen ganzen Satz sprechen? Wenn nicht: Notruf, jetzt, und in der Leitung bleiben.</translation>
        </message>
        <message>
            <source>Is the swelling growing from hour to hour, or is the neck hard?</source>
            <translation>Wächst die Schwellung von Stunde zu Stunde, oder ist der Hals hart?</translation>
        </message>
        <message>
            <source>Is somebody with you?</source>
            <translation>Ist jemand bei Ihnen?</translation>
        </message>
        <message>
            <source>Do you see as before with each eye? If not: emergency number, now.</source>
            <translation>Sehen Sie mit jedem Auge wie vorher? Wenn nicht: Notruf, jetzt.</translation>
        </message>
        <message>
            <source>Smile, close both eyes, lift your brows: is one side weaker? Since when?</source>
            <translation>Lächeln, beide Augen schließen, Brauen heben: ist eine Seite schwächer? Seit wann?</translation>
        </message>
        <message>
            <source>Is one side growing? Compared with this morning: much more, a little, the same?</source>
            <translation>Wächst eine Seite? Gegenüber heute früh: viel mehr, etwas, gleich?</translation>
        </message>
        <message>
            <source>Does it feel hard and tense, or soft?</source>
            <translation>Fühlt es sich hart und gespannt an oder weich?</translation>
        </message>
        <message>
            <source>Do you take anything that thins the blood, or aspirin or ibuprofen?</source>
            <translation>Nehmen Sie Blutverdünner, Aspirin oder Ibuprofen?</translation>
        </message>
        <message>
            <source>What is your temperature now? Did you have chills?</source>
            <translation>Wie hoch ist die Temperatur jetzt? Hatten Sie Schüttelfrost?</translation>
        </message>
        <message>
            <source>Is an entry point red, warm, or is anything coming out of it?</source>
            <translation>Ist ein Einstich rot, warm, oder kommt etwas heraus?</translation>
        </message>
        <message>
            <source>Is the red or the pain spreading?</source>
            <translation>Breitet sich die Röte oder der Schmerz aus?</translation>
        </message>
        <message>
            <source>Pain from 0 to 10 now, and at its worst since yesterday?</source>
            <translation>Schmerz von 0 bis 10 jetzt, und am schlimmsten seit gestern?</translation>
        </message>
        <message>
            <source>What have you taken against it, and did it help?</source>
            <translation>Was haben Sie dagegen genommen, und half es?</translation>
        </message>
        <message>
            <source>Is the skin there pale, blue, or does it feel cold?</source>
            <translation>Ist die Haut dort blass, blau oder kalt?</translation>
        </message>
        <message>
            <source>Can you see or feel an end of a thread? Do not pull or cut it.</source>
            <translation>Sehen oder fühlen Sie ein Fadenende? Nicht ziehen, nicht schneiden.</translation>
        </message>
        <message>
            <source>Is the skin over it open, red or wet?</source>
            <translation>Ist die Haut darüber offen, rot oder nass?</translation>
        </message>
        <message>
            <source>Please send a photo from the diary, from the front and from that side.</source>
            <translation>Bitte senden Sie ein Foto aus dem Tagebuch, von vorn und von dieser Seite.</translation>
        </message>
        <message>
            <source>Compared with yesterday: better, the same, worse?</source>
            <translation>Gegenüber gestern: besser, gleich, schlechter?</translation>
        </message>
        <message>
            <source>Anything new: fever, one side worse, something coming out?</source>
            <translation>Etwas Neues: Fieber, eine Seite schlechter, kommt etwas heraus?</translation>
        </message>
        <message>
            <source>How are you? The diary has heard nothing for some days.</source>
            <translation>Wie geht es Ihnen? Das Tagebuch hat seit Tagen nichts gehört.</translation>
        </message>
        <message>
            <source>Does the diary work, and is the phone online?</source>
            <translation>Geht das Tagebuch, und ist das Telefon im Netz?</translation>
        </message>
        <message>
            <source>Fever, one side worse, anything coming out of an entry point?</source>
            <translation>Fieber, eine Seite schlechter, kommt etwas aus einem Einstich?</translation>
        </message>
        <message>
            <source>Last: what are you most worried about?</source>
            <translation>Zuletzt: was macht Ihnen am meisten Sorge?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HandOverBoard</name>
        <message>
            <source>Hand-over</source>
            <translation>Übergabe</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>clinic, person, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>A word from who leaves</source>
            <translation>Ein Wort von dem, der geht</translation>
        </message>
        <message>
            <source>Who waits</source>
            <translation>Wer wartet</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Wie dringend</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patientin</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Was und warum</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Seit</translation>
        </message>
        <message>
            <source>Who is on it</source>
            <translation>Wer daran ist</translation>
        </message>
        <message>
            <source>What was done in the last day</source>
            <translation>Was am letzten Tag getan wurde</translation>
        </message>
        <message>
            <source>nobody</source>
            <translation>niemand</translation>
        </message>
        <message>
            <source>Nobody waits for an answer.</source>
            <translation>Niemand wartet auf Antwort.</translation>
        </message>
        <message>
            <source>Nothing was noted.</source>
            <translation>Nichts wurde vermerkt.</translation>
        </message>
        <message>
            <source>%1 (%2, %3)</source>
            <comment>note, person, when</comment>
            <translation>%1 (%2, %3)</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Sagen Sie, wer am Pult ist.</translation>
        </message>
        <message>
            <source>Too long: shorten it.</source>
            <translation>Zu lang: kürzen Sie es.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt: verwahren Sie sie wie die Akten.</translation>
        </message>
        <message>
            <source>Save the hand-over</source>
            <translation>Übergabe speichern</translation>
        </message>
        <message>
            <source>Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.</source>
            <translation>Als Text kopiert. Wer diesen Rechner benutzt, kann ihn einfügen: fügen Sie ihn bald ein, dann kopieren Sie etwas anderes.</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Auch deswegen anrufen: %1</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Zurückgenommen von %1</translation>
        </message>
    </context>
    <context>
        <name>HandOverPage</name>
        <message>
            <source>Hand-over</source>
            <translation>Übergabe</translation>
        </message>
        <message>
            <source>Made from the queue of this moment.</source>
            <translation>Aus der Warteliste dieses Augenblicks.</translation>
        </message>
        <message>
            <source>Copy as text</source>
            <translation>Als Text kopieren</translation>
        </message>
        <message>
            <source>Take it down</source>
            <translation>Abnehmen</translation>
        </message>
        <message>
            <source>A word for whoever takes over; it stays pinned over the queue until somebody takes it down</source>
            <translation>Ein Wort für die Ablösung; es bleibt über der Warteliste, bis jemand es abnimmt</translation>
        </message>
        <message>
            <source>Pin it</source>
            <translation>Anheften</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message>
            <source>You have not looked at this course before.</source>
            <translation>Sie haben diesen Verlauf noch nicht angesehen.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln Eintrag</numerusform>
                <numerusform>%Ln Einträge</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln Befund</numerusform>
                <numerusform>%Ln Befunde</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln Nachricht</numerusform>
                <numerusform>%Ln Nachrichten</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing new since you last looked, %1.</source>
            <translation>Nichts Neues, seit Sie zuletzt hinsahen, %1.</translation>
        </message>
        <message>
            <source>New since you last looked, %1: %2.</source>
            <comment>when, list</comment>
            <translation>Neu, seit Sie zuletzt hinsahen, %1: %2.</translation>
        </message>
        <message>
            <source>%1 %2 to %3</source>
            <comment>stream, low, high</comment>
            <translation>%1 %2 bis %3</translation>
        </message>
        <message>
            <source>Too few entries for a forecast to the follow-up.</source>
            <translation>Zu wenige Einträge für eine Vorhersage bis zur Nachschau.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1: every score 1 or below.</source>
            <translation>Erwartet zur Nachschau, Tag %1: jeder Wert 1 oder weniger.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.</source>
            <comment>day, list</comment>
            <translation>Erwartet zur Nachschau, Tag %1, in 8 von 10 solchen Verläufen: %2; alles andere 1 oder weniger.</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>patient, clinic, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>Treated %1, %2 now</source>
            <translation>Behandelt %1, jetzt %2</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Befunde</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Wie dringend</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Was und warum</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Aufgekommen</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Was getan wurde</translation>
        </message>
        <message>
            <source>Entries</source>
            <translation>Einträge</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Scores</source>
            <translation>Werte</translation>
        </message>
        <message>
            <source>Signs and words</source>
            <translation>Zeichen und Worte</translation>
        </message>
        <message>
            <source>Marks</source>
            <translation>Vermerke</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>Nachrichten</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Keine.</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Beim Verlauf vermerkte Anrufe</translation>
        </message>
    </context>
    <context>
        <name>PlanBeside</name>
        <message>
            <source>The plan</source>
            <translation>Der Plan</translation>
        </message>
        <message>
            <source>Make this the plan</source>
            <translation>Dies zum Plan machen</translation>
        </message>
        <message>
            <source>Keep this as the plan</source>
            <translation>Als Plan behalten</translation>
        </message>
        <message>
            <source>It stays as it is while you change what is done.</source>
            <translation>Er bleibt, wie er ist, während Sie das Getane ändern.</translation>
        </message>
        <message>
            <source>Drop the plan</source>
            <translation>Plan verwerfen</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DesksBoard</name>
        <message>
            <source>This desk, %1</source>
            <translation>Dieses Pult, %1</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Pult %1</translation>
        </message>
        <message>
            <source>Holds the clinic's root key: may add and shut out desks, and link phones</source>
            <translation>Hat den Wurzelschlüssel der Praxis: darf Pulte aufnehmen und aussperren und Telefone verbinden</translation>
        </message>
        <message>
            <source>Reads and writes; links no phones and adds no desks</source>
            <translation>Liest und schreibt; verbindet keine Telefone und nimmt keine Pulte auf</translation>
        </message>
        <message>
            <source>Nothing from it has arrived here yet</source>
            <translation>Von ihm ist hier noch nichts angekommen</translation>
        </message>
        <message>
            <source>Last wrote: %1</source>
            <translation>Schrieb zuletzt: %1</translation>
        </message>
        <message>
            <source>Shut out desk %1?</source>
            <translation>Pult %1 aussperren?</translation>
        </message>
        <message>
            <source>Begin a fresh key?</source>
            <translation>Einen neuen Schlüssel beginnen?</translation>
        </message>
        <message>
            <source>For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its passphrase. This cannot be undone: a desk that is found again must be set up anew.</source>
            <translation>Für ein Pult, das verloren, gestohlen oder weggegeben ist. Sobald Telefone und Pulte das nächste Mal beim Hub nachfragen, nimmt niemand mehr etwas von ihm an, und was danach geschrieben wird, kann es nicht lesen. Was es schon hat, bleibt darauf, hinter seinem Passwortsatz. Das lässt sich nicht zurücknehmen: Ein wiedergefundenes Pult muss neu eingerichtet werden.</translation>
        </message>
        <message>
            <source>Shut it out</source>
            <translation>Aussperren</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Neuen Schlüssel beginnen</translation>
        </message>
        <message>
            <source>A fresh key holds from the next time each phone asks the hub.</source>
            <translation>Der neue Schlüssel gilt, sobald ein Telefon das nächste Mal beim Hub nachfragt.</translation>
        </message>
        <message>
            <source>Phone %1</source>
            <translation>Telefon %1</translation>
        </message>
        <message>
            <source>%1: the hub refuses it, said %2</source>
            <translation>%1: Der Hub weist es ab, bestätigt %2</translation>
        </message>
        <message>
            <source>%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2</source>
            <translation>%1: wurde ersetzt; der Hub erfährt es, sobald es gesagt hat, was es noch hat, spätestens %2</translation>
        </message>
        <message>
            <source>%1: the hub has not been told yet, and may still let it in. It is told at every sync.</source>
            <translation>%1: Der Hub weiß es noch nicht und lässt es vielleicht noch ein. Es wird ihm bei jedem Abgleich gesagt.</translation>
        </message>
        <message>
            <source>Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it can refuse the desk by this number: %1. If it held the clinic&apos;s root key, whoever opens it can still sign as the clinic: then set up a new clinic.</source>
            <translation>Ausgesperrt. Der Hub erfährt es beim nächsten Abgleich; unten steht, wann er es angenommen hat. Tut er es nicht, kann sein Betreiber den Arbeitsplatz mit dieser Nummer abweisen: %1. Hatte er den Wurzelschlüssel der Praxis, kann weiter im Namen der Praxis unterschreiben, wer ihn öffnet: Richten Sie dann eine neue Praxis ein.</translation>
        </message>
        <message>
            <source>Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.</source>
            <translation>Sobald die Telefone das nächste Mal beim Hub nachfragen, versiegeln sie für einen neuen Schlüssel. Was davor geschrieben wurde, bleibt hier lesbar. Alle dreißig Tage beginnt von selbst einer; ein weiterer ist gut, wenn jemand einen Passwortsatz gesehen hat.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ApplyBoard</name>
        <message>
            <source>This desk has a clinic of its own already. Only a new, empty one can join.</source>
            <translation>Dieses Pult hat schon eine eigene Praxis. Nur ein neues, leeres kann beitreten.</translation>
        </message>
        <message>
            <source>Type the hub's address as well: it stands under the code.</source>
            <translation>Tippen Sie auch die Adresse des Hubs: Sie steht unter dem Code.</translation>
        </message>
        <message>
            <source>That is not such a code: compare it letter by letter with the other screen.</source>
            <translation>Das ist kein solcher Code: Vergleichen Sie ihn Zeichen für Zeichen mit dem anderen Bildschirm.</translation>
        </message>
        <message>
            <source>This computer has no way to a hub.</source>
            <translation>Dieser Rechner hat keinen Weg zu einem Hub.</translation>
        </message>
        <message>
            <source>Somebody else has used this code. Ask for a new one, out of other people's sight.</source>
            <translation>Jemand anderes hat diesen Code benutzt. Lassen Sie sich einen neuen zeigen, den sonst niemand sieht.</translation>
        </message>
        <message>
            <source>Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.</source>
            <translation>Wer geantwortet hat, ist nicht der Hub der Praxis. Nichts wurde verbunden. Vergleichen Sie die Adresse, und sagen Sie es der Praxis.</translation>
        </message>
        <message>
            <source>The hub does not answer. It is asked again by itself.</source>
            <translation>Der Hub antwortet nicht. Er wird von selbst noch einmal gefragt.</translation>
        </message>
        <message>
            <source>This desk belongs to the clinic</source>
            <translation>Dieses Pult gehört zur Praxis</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Vergleichen Sie die Zahlen</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Zu den anderen Pulten der Praxis</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Frage beim Hub nach</translation>
        </message>
        <message>
            <source>The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.</source>
            <translation>Die Schlüssel der Praxis sind da, und was Patientinnen und Kollegen geschrieben haben, kommt an. Sagen Sie, wer an diesem Pult ist.</translation>
        </message>
        <message>
            <source>The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, have asked the hub.</source>
            <translation>Die Schlüssel der Praxis sind da. Was Patientinnen und Kollegen geschrieben haben, kommt an, wenn erst das andere Pult und dann dieses beim Hub nachgefragt hat.</translation>
        </message>
        <message>
            <source>Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.</source>
            <translation>Lesen Sie diese sechs Ziffern vor. Nur wenn das andere Pult dieselben zeigt, darf dort jemand bestätigen.</translation>
        </message>
        <message>
            <source>At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.</source>
            <translation>Öffnen Sie an einem Pult mit dem Wurzelschlüssel der Praxis die Seite Praxis, dann Pulte, und nehmen Sie ein Pult auf. Es zeigt einen Code und die Adresse des Hubs.</translation>
        </message>
        <message>
            <source>Leave both programs open.</source>
            <translation>Lassen Sie beide Programme offen.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message>
            <source>There is a recovery code. It is not stored here, only on your paper.</source>
            <translation>Es gibt einen Ersatz-Code. Er steht nicht hier, nur auf Ihrem Papier.</translation>
        </message>
        <message>
            <source>There is no recovery code yet: whoever loses the passphrase loses this vault.</source>
            <translation>Es gibt noch keinen Ersatz-Code: Wer den Passwortsatz verliert, verliert diesen Tresor.</translation>
        </message>
        <message>
            <source>The passphrase is being changed.</source>
            <translation>Der Passwortsatz wird geändert.</translation>
        </message>
        <message>
            <source>The two new ones are not the same.</source>
            <translation>Die beiden neuen sind nicht gleich.</translation>
        </message>
        <message>
            <source>From now on only the new passphrase opens this desk.</source>
            <translation>Von jetzt an öffnet nur der neue Passwortsatz dieses Pult.</translation>
        </message>
        <message>
            <source>A recovery code is being made.</source>
            <translation>Ein Ersatz-Code wird gemacht.</translation>
        </message>
        <message>
            <source>From the paper: group %L1 of %L2</source>
            <translation>Vom Papier: Gruppe %L1 von %L2</translation>
        </message>
        <message>
            <source>That is not this group. Look at the paper again. If it is not there, show the code once more.</source>
            <translation>Das ist nicht diese Gruppe. Sehen Sie noch einmal auf das Papier. Steht sie dort nicht, lassen Sie den Code noch einmal zeigen.</translation>
        </message>
        <message>
            <source>Keep the paper where only the clinic finds it, not beside this computer.</source>
            <translation>Verwahren Sie das Papier, wo nur die Praxis es findet, nicht neben diesem Rechner.</translation>
        </message>
        <message>
            <source>Where to put the backup</source>
            <translation>Wohin mit der Sicherung</translation>
        </message>
        <message>
            <source>The backup is being made, opened and compared. This may take a minute.</source>
            <translation>Die Sicherung wird gemacht, geöffnet und verglichen. Das kann eine Minute dauern.</translation>
        </message>
        <message>
            <source>A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: today's passphrase opens it, also after a change.</source>
            <translation>Eine Sicherung liegt in %1 (%2). Sie wurde wieder geöffnet und verglichen: Alles ist darin. Sie bleibt verschlüsselt: Der heutige Passwortsatz öffnet sie, auch nach einer Änderung.</translation>
        </message>
        <message>
            <source>There is a file of that name. A backup is never written over another: choose a new name.</source>
            <translation>Es gibt schon eine Datei dieses Namens. Keine Sicherung wird überschrieben: Wählen Sie einen neuen Namen.</translation>
        </message>
        <message>
            <source>Everything is being read and compared.</source>
            <translation>Alles wird gelesen und verglichen.</translation>
        </message>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Der neue ist zu kurz: mindestens %Ln Zeichen.</numerusform>
                <numerusform>Der neue ist zu kurz: mindestens %Ln Zeichen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>Unversehrt: %Ln Eintragung, an ihrem Platz, und was gezeigt wird, folgt aus ihr.</numerusform>
                <numerusform>Unversehrt: %Ln Eintragungen, jede an ihrem Platz, und was gezeigt wird, folgt aus ihnen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>%Ln Fehler wurde gefunden. Tragen Sie hier nichts mehr ein, lassen Sie den Rechner, wie er ist, und stellen Sie die letzte Sicherung wieder her. Es ist: %1</numerusform>
                <numerusform>%Ln Fehler wurden gefunden. Tragen Sie hier nichts mehr ein, lassen Sie den Rechner, wie er ist, und stellen Sie die letzte Sicherung wieder her. Der erste: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Last backup of this desk: %1.</source>
            <translation>Letzte Sicherung dieses Pults: %1.</translation>
        </message>
        <message>
            <source>No backup of this desk was made yet.</source>
            <translation>Von diesem Pult wurde noch keine Sicherung gemacht.</translation>
        </message>
        <message>
            <source>No backup of this desk since %1.</source>
            <translation>Keine Sicherung dieses Pults seit dem %1.</translation>
        </message>
        <message>
            <source>If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.</source>
            <translation>Fällt dieser Rechner aus, kann verloren sein, was hier geschrieben ist. Machen Sie eine Sicherung, und verwahren Sie sie an einem anderen Ort.</translation>
        </message>
        <message>
            <source>If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.</source>
            <translation>Fällt dieser Rechner aus, kann verloren sein, was hier seither geschrieben wurde. Machen Sie eine Sicherung, und verwahren Sie sie an einem anderen Ort.</translation>
        </message>
    </context>
    <context>
        <name>DesksPage</name>
        <message>
            <source>Desks</source>
            <translation>Pulte</translation>
        </message>
        <message>
            <source>Computers that share this clinic. Each has its own passphrase.</source>
            <translation>Rechner, die sich diese Praxis teilen. Jeder hat seinen eigenen Passwortsatz.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Zurück zur Praxis</translation>
        </message>
        <message>
            <source>Number by which the hub knows it</source>
            <translation>Nummer, unter der der Hub es kennt</translation>
        </message>
        <message>
            <source>Shut out: lost or given away</source>
            <translation>Aussperren: verloren oder weggegeben</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can add or shut out desks.</source>
            <translation>Nur ein Pult mit dem Wurzelschlüssel der Praxis kann Pulte aufnehmen oder aussperren.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ein Pult aufnehmen</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Neuen Schlüssel beginnen</translation>
        </message>
    </context>
    <context>
        <name>ApplyPage</name>
        <message>
            <source>The code on the other screen</source>
            <translation>Der Code auf dem anderen Bildschirm</translation>
        </message>
        <message>
            <source>The hub's address under it</source>
            <translation>Die Adresse des Hubs darunter</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Sechs Ziffern: %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Beitreten</translation>
        </message>
        <message>
            <source>Say who is here</source>
            <translation>Sagen, wer hier ist</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Jetzt beim Hub nachfragen</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Zurück zur Praxis</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>KeepPage</name>
        <message>
            <source>Backup and keys</source>
            <translation>Sicherung und Schlüssel</translation>
        </message>
        <message>
            <source>A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.</source>
            <translation>Ein Rechner kann gestohlen werden, ausfallen oder verbrennen. Was dann nicht anderswo gesichert ist, ist verloren.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Zurück zur Praxis</translation>
        </message>
        <message>
            <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
            <translation>Schreiben Sie ihn auf Papier. Er wird nur jetzt gezeigt. Ein früherer Code gilt nicht mehr.</translation>
        </message>
        <message>
            <source>It is written down</source>
            <translation>Er ist aufgeschrieben</translation>
        </message>
        <message>
            <source>Passphrase of this desk, for each of these</source>
            <translation>Passwortsatz dieses Pults, für alles hier</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Sicherung</translation>
        </message>
        <message>
            <source>One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.</source>
            <translation>Eine verschlüsselte Datei. Legen Sie sie auf ein anderes Medium, an einen anderen Ort, mindestens jede Woche; probieren Sie sie zweimal im Jahr aus.</translation>
        </message>
        <message>
            <source>Make a backup</source>
            <translation>Sicherung machen</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Prüfung</translation>
        </message>
        <message>
            <source>Reads everything, and whether each thing is where it was written.</source>
            <translation>Liest alles, und ob jedes an seinem Platz steht.</translation>
        </message>
        <message>
            <source>Check this vault</source>
            <translation>Diesen Tresor prüfen</translation>
        </message>
        <message>
            <source>Recovery code</source>
            <translation>Ersatz-Code</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Neuen Code machen</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Ein neuer Passwortsatz</translation>
        </message>
        <message>
            <source>Change the passphrase</source>
            <translation>Passwortsatz ändern</translation>
        </message>
        <message>
            <source>The new one</source>
            <translation>Der neue</translation>
        </message>
        <message>
            <source>The new one once more</source>
            <translation>Der neue noch einmal</translation>
        </message>
    </context>
    <context>
        <name>NoticesPage</name>
        <message>
            <source>About Ebbline</source>
            <translation>Über Ebbline</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Version %1</translation>
        </message>
        <message>
            <source>Back to the settings</source>
            <translation>Zurück zu den Einstellungen</translation>
        </message>
        <message>
            <source>Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.</source>
            <translation>Ebbline ist freie Software unter der GPL 3. Es ist kein zertifiziertes Medizinprodukt und ersetzt keine Untersuchung und keinen Notdienst.</translation>
        </message>
        <message>
            <source>The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.</source>
            <translation>Das Programm baut auf der Arbeit anderer auf. Hier steht, was es nutzt und wer das gemacht hat. Die Texte der Lizenzen sind auf Englisch.</translation>
        </message>
        <message>
            <source>The parts</source>
            <translation>Die Bausteine</translation>
        </message>
        <message>
            <source>The licences</source>
            <translation>Die Lizenzen</translation>
        </message>
        <message>
            <source>Shows the text</source>
            <translation>Zeigt den Text</translation>
        </message>
    </context>
    <context>
        <name>LicencePage</name>
        <message>
            <source>Back to all parts</source>
            <translation>Zurück zu allen Bausteinen</translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message>
            <source>Patient registered</source>
            <translation>Patientin aufgenommen</translation>
        </message>
        <message>
            <source>Treatment recorded</source>
            <translation>Behandlung eingetragen</translation>
        </message>
        <message>
            <source>Care plan sent to the phone</source>
            <translation>Pflegeplan an das Telefon geschickt</translation>
        </message>
        <message>
            <source>Finding: %1</source>
            <translation>Befund: %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>%Ln Eintrag geöffnet</numerusform>
                <numerusform>%Ln Einträge geöffnet</numerusform>
            </translation>
        </message>
        <message>
            <source>Message written</source>
            <translation>Nachricht geschrieben</translation>
        </message>
        <message>
            <source>Message read</source>
            <translation>Nachricht gelesen</translation>
        </message>
        <message>
            <source>Follow-up recorded</source>
            <translation>Nachschau eingetragen</translation>
        </message>
        <message>
            <source>Protocol signed</source>
            <translation>Protokoll signiert</translation>
        </message>
        <message>
            <source>Clinic's particulars changed</source>
            <translation>Angaben der Praxis geändert</translation>
        </message>
        <message>
            <source>Limit of lidocaine set</source>
            <translation>Grenze für Lidocain festgelegt</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Telefon verbunden</translation>
        </message>
        <message>
            <source>Usual range learned</source>
            <translation>Üblicher Bereich gelernt</translation>
        </message>
        <message>
            <source>Usual range put into use</source>
            <translation>Üblicher Bereich in Gebrauch genommen</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Pult %1</translation>
        </message>
        <message>
            <source>Eyes marked in a photograph</source>
            <translation>Augen in einem Foto markiert</translation>
        </message>
        <message>
            <source>Desk added</source>
            <translation>Arbeitsplatz hinzugefügt</translation>
        </message>
        <message>
            <source>Desk shut out</source>
            <translation>Arbeitsplatz ausgesperrt</translation>
        </message>
        <message>
            <source>Lost phone ended</source>
            <translation>Verlorenes Telefon beendet</translation>
        </message>
        <message>
            <source>Phone replaced</source>
            <translation>Telefon ersetzt</translation>
        </message>
        <message>
            <source>Fresh key begun</source>
            <translation>Neuer Schlüssel begonnen</translation>
        </message>
        <message>
            <source>Numbers to call changed</source>
            <translation>Rufnummern geändert</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1, mit %2</translation>
        </message>
        <message>
            <source>Newer program asked for</source>
            <translation>Neueres Programm verlangt</translation>
        </message>
        <message>
            <source>Finding: taken back what was noted</source>
            <translation>Befund: Vermerk zurückgenommen</translation>
        </message>
        <message>
            <source>Word to who takes over</source>
            <translation>Wort an die Ablösung</translation>
        </message>
        <message>
            <source>Backup made</source>
            <translation>Sicherung gemacht</translation>
        </message>
        <message>
            <source>Passphrase of this desk changed</source>
            <translation>Passwortsatz dieses Pults geändert</translation>
        </message>
        <message>
            <source>Recovery code made</source>
            <translation>Ersatz-Code gemacht</translation>
        </message>
        <message>
            <source>Usual range taken from a file</source>
            <translation>Üblicher Bereich aus einer Datei übernommen</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment put in</source>
            <translation>Foto von direkt nach der Behandlung hinzugefügt</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment taken back</source>
            <translation>Foto von direkt nach der Behandlung zurückgenommen</translation>
        </message>
        <message>
            <source>Role of %1: %2</source>
            <comment>person, role</comment>
            <translation>Rolle von %1: %2</translation>
        </message>
        <message>
            <source>Patient&apos;s name, number or language corrected</source>
            <translation>Name, Nummer oder Sprache der Patientin korrigiert</translation>
        </message>
        <message>
            <source>Call noted on the course</source>
            <translation>Anruf beim Verlauf vermerkt</translation>
        </message>
        <message>
            <source>Treatment corrected</source>
            <translation>Behandlung korrigiert</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>%Ln Zeile</numerusform>
                <numerusform>%Ln Zeilen</numerusform>
            </translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Gespeichert als %1. Die Datei ist nicht verschlüsselt: Verwahren Sie sie wie die Akten der Patientinnen.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>Die Datei kann dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Liste speichern</translation>
        </message>
        <message>
            <source>%1; the newest %2 are shown</source>
            <translation>%1; gezeigt sind die neuesten %2</translation>
        </message>
    </context>
    <context>
        <name>TracesPage</name>
        <message>
            <source>Who did what</source>
            <translation>Wer was getan hat</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Liste speichern</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Zurück zur Praxis</translation>
        </message>
        <message>
            <source>Search: a name, an act, a day</source>
            <translation>Suchen: ein Name, eine Handlung, ein Tag</translation>
        </message>
        <message>
            <source>No line says that.</source>
            <translation>Keine Zeile enthält das.</translation>
        </message>
        <message>
            <source>Nothing has been done here yet.</source>
            <translation>Hier wurde noch nichts getan.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Wer</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patientin</translation>
        </message>
        <message>
            <source>What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.</source>
            <translation>Was an einem Pult geschrieben wird, hinterlässt eine Zeile: Patientinnen, Behandlungen, Befunde, Nachrichten, Protokolle, und was mit Schlüsseln, Sicherungen, Pulten und Telefonen geschah. Einträge zu öffnen ebenso, einen Verlauf anzusehen nicht, ebenso wenig eine Sicherung, eine Passphrase oder ein Wiederherstellungscode, die erst nach dem Sperren des Pults fertig wurden, wenn das Programm endete, bevor es wieder geöffnet wurde. Wo kein Name vermerkt wurde, steht das Pult.</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Ältere Zeilen zeigen</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PhotoComparison</name>
        <message>
            <source>%1 (%2)</source>
            <comment>view, how many photographs</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>There is no photograph of this view here.</source>
            <translation>Von dieser Ansicht ist kein Foto da.</translation>
        </message>
        <message>
            <source>There is only one photograph of this view.</source>
            <translation>Von dieser Ansicht gibt es nur ein Foto.</translation>
        </message>
        <message>
            <source>Earlier: %1, %2</source>
            <comment>day, time</comment>
            <translation>Früher: %1, %2</translation>
        </message>
        <message>
            <source>Later: %1, %2</source>
            <comment>day, time</comment>
            <translation>Später: %1, %2</translation>
        </message>
        <message>
            <source>Eyes marked %1</source>
            <translation>Augen markiert %1</translation>
        </message>
        <message>
            <source>Eyes marked by %1, %2</source>
            <comment>person, time</comment>
            <translation>Augen markiert von %1, %2</translation>
        </message>
        <message>
            <source>%1. %2. %3</source>
            <comment>which one and when, view, where the sides are</comment>
            <translation>%1. %2. %3</translation>
        </message>
        <message>
            <source>Being opened</source>
            <translation>Wird geöffnet</translation>
        </message>
        <message>
            <source>Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.</source>
            <translation>An den Augen ausgerichtet: Das spätere Foto ist gedreht, in der Größe angepasst und verschoben, nicht verzerrt und nicht gespiegelt.</translation>
        </message>
        <message>
            <source>While you mark, both are shown as they were taken.</source>
            <translation>Während Sie markieren, stehen beide so da, wie sie aufgenommen wurden.</translation>
        </message>
        <message>
            <source>Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.</source>
            <translation>So gezeigt, wie sie aufgenommen wurden, vielleicht nicht im gleichen Maßstab. Markieren Sie in beiden die Augen, um sie auszurichten.</translation>
        </message>
        <message>
            <source>The two marks are too close together to turn a picture by. Mark the middle of each pupil.</source>
            <translation>Die beiden Marken liegen zu nah beieinander, um ein Bild danach zu drehen. Markieren Sie die Mitte jeder Pupille.</translation>
        </message>
        <message>
            <source>Both eyes are marked. Keep them, or mark again: the nearer mark moves.</source>
            <translation>Beide Augen sind markiert. Behalten Sie die Marken, oder markieren Sie noch einmal: Die nähere Marke wandert.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient's right pupil: the one on the left of the picture.</source>
            <translation>Markieren Sie die Mitte der rechten Pupille der Patientin: die links im Bild.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient's right pupil.</source>
            <translation>Markieren Sie die Mitte der rechten Pupille der Patientin.</translation>
        </message>
        <message>
            <source>Now the patient's left pupil: the one on the right of the picture.</source>
            <translation>Nun die linke Pupille der Patientin: die rechts im Bild.</translation>
        </message>
        <message>
            <source>Now the patient's left pupil.</source>
            <translation>Nun die linke Pupille der Patientin.</translation>
        </message>
        <message>
            <source>The patient's left eye is marked to the left of the right one. If the picture is upright, the two are swapped.</source>
            <translation>Das linke Auge der Patientin ist links vom rechten markiert. Steht das Bild aufrecht, sind die beiden vertauscht.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 Cursor %2% across, %3% down. Space marks.</source>
            <comment>what to mark, shares of the picture</comment>
            <translation>%1 Zeiger %2 % von links, %3 % von oben. Die Leertaste markiert.</translation>
        </message>
        <message>
            <source>Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.</source>
            <comment>view</comment>
            <translation>Dieses Foto zurücknehmen: %1, direkt nach der Behandlung? Jedes Pult der Praxis löscht es, und es kommt nicht wieder.</translation>
        </message>
    </context>
    <context>
        <name>PhotoHalf</name>
        <message>
            <source>The one before</source>
            <translation>Das davor</translation>
        </message>
        <message>
            <source>The one after</source>
            <translation>Das danach</translation>
        </message>
        <message>
            <source>Mark the eyes anew</source>
            <translation>Neu markieren</translation>
        </message>
        <message>
            <source>Mark the eyes</source>
            <translation>Augen markieren</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Zurücknehmen</translation>
        </message>
    </context>
    <context>
        <name>PhotoMarking</name>
        <message>
            <source>Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.</source>
            <translation>Klicken oder tippen Sie, oder bewegen Sie den Zeiger mit den Pfeiltasten (mit der Umschalttaste in kleinen Schritten) und drücken Sie die Leertaste. Quadrat: rechtes Auge. Kreis: linkes Auge.</translation>
        </message>
        <message>
            <source>Keep the marks</source>
            <translation>Marken behalten</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Leave without keeping</source>
            <translation>Verlassen ohne zu behalten</translation>
        </message>
    </context>
    <context>
        <name>PhotoPanel</name>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The patient's photographs show up here once the phone has sent them. Taking them is the patient's choice.</source>
            <translation>Die Fotos der Patientin erscheinen hier, sobald das Telefon sie geschickt hat. Ob sie welche macht, ist ihre Sache.</translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>Side by side</source>
            <translation>Nebeneinander</translation>
        </message>
        <message>
            <source>Two photographs of one view beside each other</source>
            <translation>Zwei Fotos einer Ansicht nebeneinander</translation>
        </message>
        <message>
            <source>Add the clinic's photographs</source>
            <translation>Fotos der Praxis hinzufügen</translation>
        </message>
        <message>
            <source>From right after the treatment, with the clinic's own camera</source>
            <translation>Von direkt nach der Behandlung, mit der eigenen Kamera der Praxis</translation>
        </message>
    </context>
    <context>
        <name>Photos</name>
        <message>
            <source>%1, %2, %3</source>
            <comment>day, view, time</comment>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>Wie im Gegenüber: rechte Patientenseite links.</translation>
        </message>
        <message>
            <source>The patient's left side is towards the camera.</source>
            <translation>Die linke Patientenseite ist der Kamera zugewandt.</translation>
        </message>
        <message>
            <source>The patient's right side is towards the camera.</source>
            <translation>Die rechte Patientenseite ist der Kamera zugewandt.</translation>
        </message>
        <message>
            <source>Beside an entry that has not arrived yet</source>
            <translation>Zu einem Eintrag, der noch nicht da ist</translation>
        </message>
        <message>
            <source>Beside the entry of %1</source>
            <translation>Zum Eintrag von %1</translation>
        </message>
        <message>
            <source>Could not be opened</source>
            <translation>Ließ sich nicht öffnen</translation>
        </message>
        <message>
            <source>Still arriving: %1 of %2 parts</source>
            <translation>Noch unterwegs: %1 von %2 Teilen</translation>
        </message>
        <message>
            <source>Taken back by the patient, %1</source>
            <translation>Von der Patientin zurückgenommen, %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln photograph(s)</source>
            <translation>
                <numerusform>%Ln Foto</numerusform>
                <numerusform>%Ln Fotos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln still arriving</source>
            <translation>
                <numerusform>%Ln noch unterwegs</numerusform>
                <numerusform>%Ln noch unterwegs</numerusform>
            </translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <comment>views</comment>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>direkt nach der Behandlung</translation>
        </message>
        <message>
            <source>Put in by %1</source>
            <comment>person</comment>
            <translation>Hinzugefügt von %1</translation>
        </message>
        <message>
            <source>Taken back by %1, %2</source>
            <comment>person, time</comment>
            <translation>Zurückgenommen von %1, %2</translation>
        </message>
    </context>
    <context>
        <name>PhotosPage</name>
        <message>
            <source>Photographs side by side</source>
            <translation>Fotos nebeneinander</translation>
        </message>
        <message>
            <source>Back to the course</source>
            <translation>Zurück zum Verlauf</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Näher</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>Weiter weg</translation>
        </message>
        <message>
            <source>Whole picture</source>
            <translation>Ganzes Bild</translation>
        </message>
        <message>
            <source>Zoom of both: %1</source>
            <translation>Zoom beider: %1</translation>
        </message>
        <message>
            <source>Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.</source>
            <translation>Licht, Abstand und Mimik sind von Foto zu Foto verschieden. Was wie eine Veränderung aussieht, kann daran liegen: Vergleichen Sie vorsichtig, und sehen Sie die Patientin an, bevor Sie entscheiden.</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
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
            <source>not reached</source>
            <translation>nicht erreicht</translation>
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
        <message>
            <source>photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>reopened</source>
            <translation>wieder geöffnet</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>gesehen</translation>
        </message>
        <message>
            <source>taken on</source>
            <translation>übernommen</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>geöffnet</translation>
        </message>
        <message>
            <source>entry without scores</source>
            <translation>Eintrag ohne Werte</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>day, what happened</comment>
            <translation>%1: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln Erinnerung erledigt</numerusform>
                <numerusform>%Ln Erinnerungen erledigt</numerusform>
            </translation>
        </message>
        <message>
            <source>she rang</source>
            <translation>sie rief an</translation>
        </message>
    </context>
    <context>
        <name>CodeBack</name>
        <message>
            <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
            <translation>Eine Gruppe davon, damit das Papier sicher stimmt. Danach wird der Code nicht mehr gezeigt.</translation>
        </message>
        <message>
            <source>It is on my paper</source>
            <translation>Er steht auf meinem Papier</translation>
        </message>
        <message>
            <source>Show it once more</source>
            <translation>Noch einmal zeigen</translation>
        </message>
    </context>
    <context>
        <name>IdleNotice</name>
        <message>
            <source>Stay open</source>
            <translation>Offen lassen</translation>
        </message>
    </context>
    <context>
        <name>IdlePanel</name>
        <message>
            <source>Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.</source>
            <translation>Seit einer Weile hat niemand das Pult benutzt. In einer halben Minute sperrt es sich. Was begonnen wurde, bleibt erhalten.</translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message>
            <source>The phone holds more from this desk than the desk does: the desk runs on older data.</source>
            <translation>Das Telefon hat mehr von diesem Pult, als das Pult selbst: Das Pult arbeitet mit älteren Daten.</translation>
        </message>
        <message>
            <source>The phone sent two different histories: call, and do not rely on its entries.</source>
            <translation>Das Telefon hat zwei verschiedene Verläufe gesendet: Rufen Sie an, und verlassen Sie sich nicht auf seine Einträge.</translation>
        </message>
        <message>
            <source>A message of the phone is missing: the hub holds it back or lost it.</source>
            <translation>Eine Nachricht des Telefons fehlt: Der Hub hält sie zurück oder hat sie verloren.</translation>
        </message>
        <message>
            <source>Phone not heard of since %1: what was written there may not be here.</source>
            <translation>Vom Telefon nichts gehört seit %1: Was dort geschrieben wurde, ist vielleicht nicht hier.</translation>
        </message>
        <message>
            <source>Phone not heard of since it was linked.</source>
            <translation>Vom Telefon nichts gehört, seit es verbunden wurde.</translation>
        </message>
        <message>
            <source>It has not confirmed what was sent to it, %1.</source>
            <comment>when it was sent</comment>
            <translation>Es hat nicht bestätigt, was ihm gesendet wurde, %1.</translation>
        </message>
        <message>
            <source>That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.</source>
            <translation>Das sind mehr als %1 Tage: Das Telefon ist vielleicht verloren oder nicht mehr in Gebrauch. Rufen Sie an, und koppeln Sie wenn nötig ein Telefon neu.</translation>
        </message>
        <message>
            <source>it does not know this desk or the mailbox</source>
            <comment>why the hub takes nothing</comment>
            <translation>Er kennt dieses Pult oder das Postfach nicht</translation>
        </message>
        <message>
            <source>it holds something else under the same number</source>
            <comment>why the hub takes nothing</comment>
            <translation>Er hat unter derselben Nummer etwas anderes</translation>
        </message>
        <message>
            <source>the mailbox is full</source>
            <comment>why the hub takes nothing</comment>
            <translation>Das Postfach ist voll</translation>
        </message>
        <message>
            <source>it is too large or unreadable for it</source>
            <comment>why the hub takes nothing</comment>
            <translation>Es ist ihm zu groß, oder er kann es nicht lesen</translation>
        </message>
        <message>
            <source>The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.</source>
            <translation>Der Hub nimmt nicht an, was dieses Pult sendet: %1. Es bleibt hier und wird wieder versucht. Sagen Sie es dem, der den Hub betreibt.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>%Ln Nachricht des Telefons lässt sich hier nicht lesen. Rufen Sie an und fragen Sie, was geschrieben wurde. Bleibt es so, lassen Sie auf dem Telefon die Daten des Tagebuchs sichern (Einstellungen, Meine Daten). Erst dann löschen Sie dort das Tagebuch und verbinden das Telefon neu.</numerusform>
                <numerusform>%Ln Nachrichten des Telefons lassen sich hier nicht lesen. Rufen Sie an und fragen Sie, was geschrieben wurde. Bleibt es so, lassen Sie auf dem Telefon die Daten des Tagebuchs sichern (Einstellungen, Meine Daten). Erst dann löschen Sie dort das Tagebuch und verbinden das Telefon neu.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>%Ln Eintrag in diesem Verlauf wurde mit einem neueren Programm geschrieben und lässt sich hier nicht anzeigen. Aktualisieren Sie dieses Pult, und rufen Sie bis dahin an.</numerusform>
                <numerusform>%Ln Einträge in diesem Verlauf wurden mit einem neueren Programm geschrieben und lassen sich hier nicht anzeigen. Aktualisieren Sie dieses Pult, und rufen Sie bis dahin an.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SettingsBoard</name>
        <message numerus="yes">
            <source>%Ln minute(s)</source>
            <translation>
                <numerusform>%Ln Minute</numerusform>
                <numerusform>%Ln Minuten</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>StepPanel</name>
        <message>
            <source>Leave it as it is</source>
            <translation>So lassen</translation>
        </message>
    </context>
    <context>
        <name>GraveStep</name>
        <message>
            <source>Choose who stands by: this is for two people.</source>
            <translation>Wählen Sie, wer dabei ist: Das geht nur zu zweit.</translation>
        </message>
        <message>
            <source>Type the passphrase of this desk.</source>
            <translation>Geben Sie den Passwortsatz dieses Arbeitsplatzes ein.</translation>
        </message>
    </context>
    <context>
        <name>StepFields</name>
        <message>
            <source>Passphrase of this desk, once more</source>
            <translation>Passwortsatz dieses Arbeitsplatzes, noch einmal</translation>
        </message>
        <message>
            <source>Who stands by: this is for two people</source>
            <translation>Wer dabei ist: Das geht nur zu zweit</translation>
        </message>
    </context>
    <context>
        <name>TreatmentWhen</name>
        <message>
            <source>When the treatment was</source>
            <translation>Wann die Behandlung war</translation>
        </message>
        <message>
            <source>Day, year-month-day</source>
            <translation>Tag, Jahr-Monat-Tag</translation>
        </message>
        <message>
            <source>Time, hours:minutes</source>
            <translation>Uhrzeit, Stunden:Minuten</translation>
        </message>
        <message>
            <source>It was just now</source>
            <translation>Sie war eben</translation>
        </message>
        <message>
            <source>It was then</source>
            <translation>Sie war zu dieser Zeit</translation>
        </message>
        <message>
            <source>The days of the course count from here. Unless you change it, today&apos;s record takes the time at which you record it.</source>
            <translation>Ab hier zählen die Tage des Verlaufs. Ändern Sie nichts, gilt für eine Behandlung von heute der Zeitpunkt, zu dem Sie sie festhalten.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPanel</name>
        <message>
            <source>The treatment</source>
            <translation>Die Behandlung</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Korrekturen des Eintrags</translation>
        </message>
        <message>
            <source>Go on with the correction</source>
            <translation>Mit der Korrektur fortfahren</translation>
        </message>
        <message>
            <source>Correct the treatment</source>
            <translation>Behandlung korrigieren</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Was vorher da stand, bleibt verzeichnet</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln wartet zu lange</numerusform>
                <numerusform>%Ln warten zu lange</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln in der Warteliste wartet zu lange.</numerusform>
                <numerusform>%Ln in der Warteliste warten zu lange.</numerusform>
            </translation>
        </message>
        <message>
            <source>Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.</source>
            <translation>Gesperrt seit: %1. Solange es gesperrt ist, fragt dieses Pult den Hub nach nichts: Was jetzt kommt, zeigt sich nach dem Entsperren.</translation>
        </message>
        <message>
            <source>Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.</source>
            <translation>Hinweise auf dem Bildschirm sind hier nicht möglich: Dieser Computer bietet keinen Dienst dafür. Nur das offene Pult meldet sich.</translation>
        </message>
        <message>
            <source>The computer did not take the last notice. Only the open desk tells for sure.</source>
            <translation>Der Computer hat den letzten Hinweis nicht angenommen. Sicher meldet sich nur das offene Pult.</translation>
        </message>
        <message>
            <source>When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.</source>
            <translation>Wenn jemand jetzt anzurufen ist oder zu lange wartet, erscheint auf dem Bildschirm ein Hinweis ohne Namen. Ein gesperrtes Pult erfährt nichts Neues.</translation>
        </message>
        <message>
            <source>Somebody is to be called now. Open the desk.</source>
            <translation>Jemand ist jetzt anzurufen. Öffnen Sie das Pult.</translation>
        </message>
        <message>
            <source>Clinic&apos;s desk</source>
            <translation>Pult der Praxis</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Pult öffnen</translation>
        </message>
    </context>
    <context>
        <name>FollowUpAnswer</name>
        <message>
            <source>What became of it?</source>
            <translation>Was wurde daraus?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueFilter</name>
        <message>
            <source>Not written down</source>
            <translation>Nicht vermerkt</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, count</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Anybody</source>
            <translation>Alle</translation>
        </message>
        <message>
            <source>Anybody or nobody</source>
            <translation>Alle, auch ohne Übernahme</translation>
        </message>
        <message>
            <source>Any day</source>
            <translation>Jeder Tag</translation>
        </message>
        <message>
            <source>After day %1</source>
            <translation>Nach Tag %1</translation>
        </message>
        <message>
            <source>Days %1 to %2</source>
            <translation>Tag %1 bis %2</translation>
        </message>
        <message>
            <source>Threads by %1</source>
            <translation>Fäden von %1</translation>
        </message>
        <message>
            <source>Taken by %1</source>
            <translation>Übernommen von %1</translation>
        </message>
    </context>
    <context>
        <name>FilterPanel</name>
        <message>
            <source>Filter the queue</source>
            <translation>Die Warteliste filtern</translation>
        </message>
        <message>
            <source>Back to the queue</source>
            <translation>Zurück zur Warteliste</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fäden gelegt von</translation>
        </message>
        <message>
            <source>Row taken by</source>
            <translation>Zeile übernommen von</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Tag der Erholung</translation>
        </message>
        <message>
            <source>It holds until the desk is locked or somebody else is named.</source>
            <translation>Gilt, bis der Platz gesperrt oder jemand anderes genannt wird.</translation>
        </message>
    </context>
    <context>
        <name>FilterBar</name>
        <message>
            <source>Takes this filter off</source>
            <translation>Hebt diesen Filter auf</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Anzeigen</translation>
        </message>
        <message>
            <source>Takes search and filters off</source>
            <translation>Hebt Suche und Filter auf</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UsualBoard</name>
        <message>
            <source>Dressings</source>
            <translation>Pflaster</translation>
        </message>
        <message>
            <source>Please write an entry</source>
            <translation>Bitte um einen Eintrag</translation>
        </message>
        <message>
            <source>Come earlier</source>
            <translation>Früher kommen</translation>
        </message>
        <message>
            <source>Please call us</source>
            <translation>Bitte um Anruf</translation>
        </message>
        <message>
            <source>Thank you</source>
            <translation>Danke</translation>
        </message>
        <message>
            <source>It is not known which language the patient reads: choose it.</source>
            <translation>Welche Sprache die Patientin liest, ist nicht bekannt: Wählen Sie sie.</translation>
        </message>
        <message>
            <source>The patient was registered with %1.</source>
            <comment>a language</comment>
            <translation>Die Patientin wurde mit %1 aufgenommen.</translation>
        </message>
        <message>
            <source>The patient reads, in %1</source>
            <comment>a language</comment>
            <translation>Die Patientin liest, auf %1</translation>
        </message>
        <message>
            <source>A call is due. A message may be read too late: call first.</source>
            <translation>Ein Anruf steht an. Eine Nachricht wird vielleicht zu spät gelesen: Rufen Sie zuerst an.</translation>
        </message>
    </context>
    <context>
        <name>UsualPanel</name>
        <message>
            <source>Usual messages</source>
            <translation>Übliche Nachrichten</translation>
        </message>
        <message>
            <source>Language of the patient</source>
            <translation>Sprache der Patientin</translation>
        </message>
        <message>
            <source>In your language</source>
            <translation>In Ihrer Sprache</translation>
        </message>
        <message>
            <source>Put it into the message</source>
            <translation>In die Nachricht setzen</translation>
        </message>
        <message>
            <source>It can be changed there before it is sent</source>
            <translation>Dort lässt sie sich vor dem Senden ändern</translation>
        </message>
    </context>
    <context>
        <name>EntryLink</name>
        <message>
            <source>Shows the entry behind it</source>
            <translation>Zeigt den Eintrag dahinter</translation>
        </message>
    </context>
    <context>
        <name>CallVisit</name>
        <message>
            <source>The visit</source>
            <translation>Der Termin</translation>
        </message>
        <message>
            <source>New day, year-month-day</source>
            <translation>Neuer Tag, Jahr-Monat-Tag</translation>
        </message>
        <message>
            <source>Time, if one is agreed</source>
            <translation>Uhrzeit, falls vereinbart</translation>
        </message>
    </context>
    <context>
        <name>CurveBox</name>
        <message>
            <source>Score, points of 10</source>
            <translation>Wert, Punkte von 10</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Tage seit der Behandlung</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PaperPrinter</name>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>No printer is set up on this computer. Set one up, or save the pages as a file.</source>
            <translation>Auf diesem Computer ist kein Drucker eingerichtet. Richten Sie einen ein, oder speichern Sie die Seiten als Datei.</translation>
        </message>
        <message>
            <source>Sent to %1. Fetch it there; this desk wrote no file.</source>
            <translation>An %1 gesendet. Holen Sie es dort ab; dieses Pult hat keine Datei geschrieben.</translation>
        </message>
        <message>
            <source>The printer did not take it. Look whether it is on and has paper, then print again.</source>
            <translation>Der Drucker hat es nicht angenommen. Sehen Sie nach, ob er an ist und Papier hat, und drucken Sie noch einmal.</translation>
        </message>
    </context>
    <context>
        <name>Roles</name>
        <message>
            <source>Recording treatments and follow-ups</source>
            <translation>Behandlungen und Nachschauen aufzeichnen</translation>
        </message>
        <message>
            <source>Closing a finding</source>
            <translation>Einen Befund abschließen</translation>
        </message>
        <message>
            <source>Signing a protocol, a usual range or a limit</source>
            <translation>Ein Protokoll, einen üblichen Bereich oder eine Grenze in Kraft setzen</translation>
        </message>
        <message>
            <source>Linking and ending patients&apos; phones</source>
            <translation>Telefone verbinden und beenden</translation>
        </message>
        <message>
            <source>Adding and shutting out desks, fresh keys and the hub</source>
            <translation>Pulte aufnehmen und aussperren, neue Schlüssel und der Hub</translation>
        </message>
        <message>
            <source>Changing the numbers that patients call</source>
            <translation>Die Nummern ändern, die angerufen werden</translation>
        </message>
        <message>
            <source>Naming people and giving roles</source>
            <translation>Personen nennen und Rollen vergeben</translation>
        </message>
        <message>
            <source>Backups, passphrase and saving who did what</source>
            <translation>Sicherungen, Passwortsatz und das Speichern, wer was getan hat</translation>
        </message>
        <message>
            <source>The practice&apos;s figures</source>
            <translation>Die Zahlen der Praxis</translation>
        </message>
        <message>
            <source>In charge</source>
            <translation>Leitung</translation>
        </message>
        <message>
            <source>Practitioner</source>
            <translation>Behandelnde Person</translation>
        </message>
        <message>
            <source>Colleague on call</source>
            <translation>Rufdienst</translation>
        </message>
        <message>
            <source>Assistant</source>
            <translation>Assistenz</translation>
        </message>
        <message>
            <source>Keeper of the computers</source>
            <translation>Betreuung der Rechner</translation>
        </message>
        <message>
            <source>No role yet: may do everything.</source>
            <translation>Noch keine Rolle: darf alles.</translation>
        </message>
        <message>
            <source>May do everything.</source>
            <translation>Darf alles.</translation>
        </message>
        <message>
            <source>Treatments, follow-ups and closing findings; patients&apos; phones; the numbers that patients call; the practice&apos;s figures.</source>
            <translation>Behandlungen, Nachschauen und das Abschließen von Befunden; Telefone; die Nummern, die angerufen werden; die Zahlen der Praxis.</translation>
        </message>
        <message>
            <source>Closing findings; patients&apos; phones.</source>
            <translation>Befunde abschließen; Telefone.</translation>
        </message>
        <message>
            <source>Patients&apos; phones.</source>
            <translation>Telefone verbinden und beenden.</translation>
        </message>
        <message>
            <source>Desks, keys and the hub; backups and passphrase; saving who did what.</source>
            <translation>Pulte, Schlüssel und der Hub; Sicherungen und Passwortsatz; das Speichern, wer was getan hat.</translation>
        </message>
        <message>
            <source>Say first who is at the desk.</source>
            <translation>Sagen Sie zuerst, wer am Pult ist.</translation>
        </message>
        <message>
            <source>%1: nobody here has a role for that. Whoever is in charge can give one.</source>
            <translation>%1: Dafür hat hier niemand eine Rolle. Wer die Leitung hat, kann eine vergeben.</translation>
        </message>
        <message>
            <source>%1: for %2. Your role here: %3.</source>
            <comment>task, people, role</comment>
            <translation>%1: Das dürfen %2. Ihre Rolle hier: %3.</translation>
        </message>
        <message>
            <source>not allowed by the role at that time</source>
            <translation>nach der damaligen Rolle nicht vorgesehen</translation>
        </message>
        <message>
            <source>Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.</source>
            <translation>Es muss jemand bleiben, der Personen nennen und Rollen vergeben darf. Geben Sie zuerst einer anderen Person die Rolle „Leitung“.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::RoleBoard</name>
        <message>
            <source>%1: %2 from now on.</source>
            <comment>person, role</comment>
            <translation>%1: ab jetzt %2.</translation>
        </message>
        <message>
            <source>%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.</source>
            <comment>person, role</comment>
            <translation>%1, „%2“ nimmt Ihnen das Recht, Rollen zu vergeben. Nur jemand anderes, der es hat, kann es zurückgeben.</translation>
        </message>
    </context>
    <context>
        <name>RoleFields</name>
        <message>
            <source>People and roles</source>
            <translation>Personen und Rollen</translation>
        </message>
        <message>
            <source>A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.</source>
            <translation>Eine Rolle ist eine Hausregel und kein Schloss: Personen sind hier Namen hinter einem gemeinsamen Passwortsatz. Wer etwas nicht darf, erfährt, wer es darf. Jemanden übernehmen und anrufen, das notieren und einen Befund wieder öffnen dürfen alle.</translation>
        </message>
        <message>
            <source>Give that role</source>
            <translation>Diese Rolle vergeben</translation>
        </message>
        <message>
            <source>Keep my role</source>
            <translation>Meine Rolle behalten</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicPhotos</name>
        <message>
            <source>This picture does not open. Choose another.</source>
            <translation>Dieses Bild lässt sich nicht öffnen. Wählen Sie ein anderes.</translation>
        </message>
        <message>
            <source>This picture is too large. Choose a smaller one.</source>
            <translation>Dieses Bild ist zu groß. Wählen Sie ein kleineres.</translation>
        </message>
        <message>
            <source>The desk reads JPEG and PNG pictures. Choose one of these.</source>
            <translation>Dieses Programm liest Bilder der Arten JPEG und PNG. Wählen Sie ein solches.</translation>
        </message>
        <message>
            <source>This picture is too small. Choose a larger one.</source>
            <translation>Dieses Bild ist zu klein. Wählen Sie ein größeres.</translation>
        </message>
        <message>
            <source>This picture is damaged. Choose another.</source>
            <translation>Dieses Bild ist beschädigt. Wählen Sie ein anderes.</translation>
        </message>
        <message>
            <source>There are %1 from right after the treatment. That is the most. Take one back to add another.</source>
            <translation>Es sind %1 Fotos von direkt nach der Behandlung da. Mehr geht nicht. Nehmen Sie eines zurück, um ein anderes hinzuzufügen.</translation>
        </message>
        <message>
            <source>A photograph from right after the treatment</source>
            <translation>Ein Foto von direkt nach der Behandlung</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg)</source>
            <translation>Bilder (*.png *.jpg *.jpeg)</translation>
        </message>
        <message>
            <source>Kept: %1, right after the treatment.</source>
            <comment>view</comment>
            <translation>Behalten: %1, direkt nach der Behandlung.</translation>
        </message>
    </context>
    <context>
        <name>TakeBackPhoto</name>
        <message>
            <source>Take it back</source>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>Keep the photograph</source>
            <translation>Foto behalten</translation>
        </message>
    </context>
    <context>
        <name>ClinicPhotoForm</name>
        <message>
            <source>Right after the treatment: %1</source>
            <translation>Direkt nach der Behandlung: %1</translation>
        </message>
        <message>
            <source>Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.</source>
            <translation>Bilder, die Sie mit der eigenen Kamera der Praxis gemacht haben. Sie bleiben an den Pulten der Praxis und gehen nie an ein Telefon. Ort und Zeit aus der Datei werden nicht behalten.</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Ansicht</translation>
        </message>
        <message>
            <source>Getting the picture ready …</source>
            <translation>Das Bild wird vorbereitet …</translation>
        </message>
        <message>
            <source>The photograph: %1</source>
            <translation>Das Foto: %1</translation>
        </message>
        <message>
            <source>Is it this patient? Is it the right side? Is it sharp?</source>
            <translation>Ist es diese Patientin? Ist es die richtige Seite? Ist es scharf?</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Behalten</translation>
        </message>
        <message>
            <source>Not this one</source>
            <translation>Dieses nicht</translation>
        </message>
        <message>
            <source>It is not kept</source>
            <translation>Es wird nicht behalten</translation>
        </message>
        <message>
            <source>Choose a picture</source>
            <translation>Bild auswählen</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>Closes this form</source>
            <translation>Schließt dieses Formular</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolTaking</name>
        <message>
            <source>This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.</source>
            <translation>Diese Datei ist größer, als ein Protokoll sein kann. Nichts wurde geändert. Wählen Sie die Datei, die ein Pult gespeichert oder calibrate geschrieben hat.</translation>
        </message>
        <message>
            <source>This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.</source>
            <translation>Diese Datei hat eine Form, die dieses Programm nicht kennt. Nichts wurde geändert. Aktualisieren Sie das Programm, oder bitten Sie um die Datei aus einem Programm derselben Version.</translation>
        </message>
        <message>
            <source>This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.</source>
            <translation>Das ist keine heile Protokolldatei (%1). Nichts wurde geändert. Wählen Sie eine andere Datei, oder lassen Sie diese neu schreiben; bessern Sie sie nicht von Hand aus.</translation>
        </message>
        <message>
            <source>Take a protocol from a file</source>
            <translation>Ein Protokoll aus einer Datei übernehmen</translation>
        </message>
        <message>
            <source>The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.</source>
            <translation>Die Datei kann nicht gelesen werden. Nichts wurde geändert. Kopieren Sie sie auf diesen Rechner und wählen Sie sie dann noch einmal.</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <comment>protocol in a file, number</comment>
            <translation>%1, Version %2</translation>
        </message>
        <message>
            <source>Written %1 by %2.</source>
            <comment>when, program</comment>
            <translation>Geschrieben %1 von %2.</translation>
        </message>
        <message>
            <source>It does not say when it was written, nor by which program.</source>
            <translation>Sie sagt nicht, wann und von welchem Programm sie geschrieben wurde.</translation>
        </message>
        <message>
            <source>Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.</source>
            <translation>Ihre Schwellen wurden kalibriert an: %1, auf ein Budget von %2 Fehlalarmen in 100 unkomplizierten Verläufen. So sagt es die Datei; dass sie es in dieser Praxis einhalten, ist nicht gezeigt.</translation>
        </message>
        <message>
            <source>The hash of what is behind that range begins with %1.</source>
            <translation>Der Hash dessen, was hinter diesem Bereich steht, beginnt mit %1.</translation>
        </message>
        <message>
            <source>The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.</source>
            <translation>Die Datei ist nicht signiert: nichts in ihr beweist, wer sie schrieb. Nehmen Sie sie nur von jemandem an, den Sie fragen können.</translation>
        </message>
        <message>
            <source>Rule</source>
            <translation>Regel</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>In Gebrauch</translation>
        </message>
        <message>
            <source>In the file</source>
            <translation>In der Datei</translation>
        </message>
        <message>
            <source>No rule differs.</source>
            <translation>Keine Regel ist anders.</translation>
        </message>
        <message>
            <source>All other rules are the same.</source>
            <translation>Alle anderen Regeln sind gleich.</translation>
        </message>
        <message>
            <source>It is the one in use.</source>
            <translation>Es ist der Bereich in Gebrauch.</translation>
        </message>
        <message>
            <source>It is known here as %1, and may be used. It comes into use when the draft is signed.</source>
            <translation>Er ist hier als %1 bekannt und darf verwendet werden. Er kommt in Gebrauch, wenn der Entwurf unterschrieben wird.</translation>
        </message>
        <message>
            <source>It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.</source>
            <translation>Er kann nicht übernommen werden: er sagt nicht ordentlich, was dahintersteht. Der Entwurf behält den üblichen Bereich in Gebrauch und dessen Schwellen.</translation>
        </message>
        <message>
            <source>A draft can be rehearsed with it, and not signed.</source>
            <translation>Ein Entwurf kann damit geprobt, aber nicht unterschrieben werden.</translation>
        </message>
        <message>
            <source>It is kept as a version, and comes into use when the draft is signed.</source>
            <translation>Er wird als Fassung aufbewahrt und kommt in Gebrauch, wenn der Entwurf unterschrieben wird.</translation>
        </message>
        <message>
            <source>A draft is there already. This one takes its place; &quot;Undo&quot; on the next page brings it back.</source>
            <translation>Es gibt schon einen Entwurf. Dieser tritt an seine Stelle; „Rückgängig“ auf der nächsten Seite bringt ihn zurück.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: what is taken carries a name.</source>
            <translation>Sagen Sie zuerst, wer am Pult ist: was übernommen wird, trägt einen Namen.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>Die Datei kann dort nicht geschrieben werden. Wählen Sie einen anderen Ordner.</translation>
        </message>
        <message>
            <source>Saved as %1. It holds the care plan in the clinic&apos;s own words, the rules and the usual range; no patient stands in it.</source>
            <translation>Gespeichert als %1. Darin stehen der Pflegeplan mit den eigenen Worten der Praxis, die Regeln und der übliche Bereich; keine Patientin steht darin.</translation>
        </message>
        <message>
            <source>Save the protocol in use</source>
            <translation>Das Protokoll in Gebrauch speichern</translation>
        </message>
        <message>
            <source>A draft is there already, and cannot be read. It stays as it is: this one is not kept.</source>
            <translation>Ein Entwurf ist schon da und lässt sich nicht lesen. Er bleibt, wie er ist: Dieser wird nicht behalten.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolFilePage</name>
        <message>
            <source>A protocol from a file</source>
            <translation>Ein Protokoll aus einer Datei</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
        <message>
            <source>Nothing of the file is kept.</source>
            <translation>Von der Datei wird nichts aufbewahrt.</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Was einen Befund auslöst</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Worum gebeten wird</translation>
        </message>
        <message>
            <source>The care plan is the same.</source>
            <translation>Der Pflegeplan ist derselbe.</translation>
        </message>
        <message>
            <source>Take its care plan as well</source>
            <translation>Auch den Pflegeplan übernehmen</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Was als üblich gilt</translation>
        </message>
        <message>
            <source>No course of this clinic is behind it: check it on all of ours</source>
            <translation>Kein Verlauf dieser Praxis steht dahinter: an allen unseren prüfen</translation>
        </message>
        <message>
            <source>Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.</source>
            <translation>Sonst gelten nur Verläufe als ungesehen, die nach dem Lernen behandelt wurden. Ein Bereich aus eigenen Verläufen wird unter „Praxis im Rückblick“, „Üblicher Bereich“ gelernt.</translation>
        </message>
        <message>
            <source>Make a draft of it</source>
            <translation>Einen Entwurf daraus machen</translation>
        </message>
        <message>
            <source>It is rehearsed and signed like every other draft; nothing goes live before.</source>
            <translation>Er wird geprobt und unterschrieben wie jeder andere Entwurf; vorher geht nichts in Betrieb.</translation>
        </message>
    </context>
    <context>
        <name>PastVisits</name>
        <message>
            <source>Fold them away</source>
            <translation>Einklappen</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Anzeigen</translation>
        </message>
    </context>
    <context>
        <name>PatientPanel</name>
        <message>
            <source>Record the correction</source>
            <translation>Korrektur eintragen</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>So lassen</translation>
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
            <source>Every desk of the clinic shows it from then on. The patient&apos;s phone is told nothing of it: she chooses the language there herself.</source>
            <translation>Jedes Pult der Praxis zeigt es von da an. Das Telefon der Patientin erfährt nichts davon: Die Sprache wählt sie dort selbst.</translation>
        </message>
    </context>
    <context>
        <name>PatientRecord</name>
        <message>
            <source>Correct name, number, language</source>
            <translation>Name, Nummer, Sprache korrigieren</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Was vorher da stand, bleibt verzeichnet</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PatientEditor</name>
        <message>
            <source>name until then: %1</source>
            <translation>Name bis dahin: %1</translation>
        </message>
        <message>
            <source>no number until then</source>
            <translation>bis dahin keine Nummer</translation>
        </message>
        <message>
            <source>number until then: %1</source>
            <translation>Nummer bis dahin: %1</translation>
        </message>
        <message>
            <source>language until then: %1</source>
            <translation>Sprache bis dahin: %1</translation>
        </message>
        <message>
            <source>as it was already</source>
            <translation>wie es schon war</translation>
        </message>
        <message>
            <source>somebody at another desk</source>
            <translation>jemand an einem anderen Pult</translation>
        </message>
        <message>
            <source>Corrected %1 by %2: %3</source>
            <comment>when, who, what held until then</comment>
            <translation>Korrigiert %1 von %2: %3</translation>
        </message>
        <message>
            <source>Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.</source>
            <translation>Zwei Pulte haben das korrigiert, ohne voneinander zu wissen. Wo beide dasselbe geändert haben, gilt das spätere. Fragen Sie die Patientin, was stimmt.</translation>
        </message>
        <message>
            <source>Correct what is on record of %1</source>
            <translation>Korrigieren, was über %1 verzeichnet ist</translation>
        </message>
        <message>
            <source>%1 corrected this meanwhile: %2. Only what you change here is changed.</source>
            <comment>who, what held until then</comment>
            <translation>%1 hat das inzwischen korrigiert: %2. Geändert wird nur, was Sie hier ändern.</translation>
        </message>
        <message>
            <source>Corrected: %1</source>
            <comment>name</comment>
            <translation>Korrigiert: %1</translation>
        </message>
        <message>
            <source>It was corrected again meanwhile: nothing was taken back.</source>
            <translation>Es wurde inzwischen noch einmal korrigiert: Nichts wurde zurückgenommen.</translation>
        </message>
    </context>
    <context>
        <name>LastAct</name>
        <message>
            <source>%1 brought the visit forward, %2</source>
            <comment>person, when</comment>
            <translation>%1 hat den Besuch vorgezogen, %2</translation>
        </message>
        <message>
            <source>%1 spoke with her, %2</source>
            <comment>person, when</comment>
            <translation>%1 hat mit ihr gesprochen, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2</source>
            <comment>person, when</comment>
            <translation>%1 hat angerufen und sie nicht erreicht, %2</translation>
        </message>
        <message>
            <source>Taken by %1, %2</source>
            <comment>person, when</comment>
            <translation>Übernommen von %1, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2, nothing noted since</source>
            <comment>person, when</comment>
            <translation>%1 hat angerufen und sie nicht erreicht, %2, seither nichts vermerkt</translation>
        </message>
        <message>
            <source>%1 brought the visit forward %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 hat den Besuch vor %2 vorgezogen, seither nichts vermerkt</translation>
        </message>
        <message>
            <source>%1 spoke with her %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 hat vor %2 mit ihr gesprochen, seither nichts vermerkt</translation>
        </message>
        <message>
            <source>Taken by %1 %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>Vor %2 von %1 übernommen, seither nichts vermerkt</translation>
        </message>
        <message>
            <source>She rang, and %1 answered, %2</source>
            <comment>person, when</comment>
            <translation>Sie rief an, am Apparat %1, %2</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Zurückgenommen von %1</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCorrection</name>
        <message>
            <source>I have seen it</source>
            <translation>Ich habe es gesehen</translation>
        </message>
        <message>
            <source>Your draft stays as it is</source>
            <translation>Ihr Entwurf bleibt, wie er ist</translation>
        </message>
        <message>
            <source>Why the record is corrected</source>
            <translation>Warum der Eintrag korrigiert wird</translation>
        </message>
        <message>
            <source>What this changes</source>
            <translation>Was das ändert</translation>
        </message>
        <message>
            <source>Nothing yet. Go through the steps and set right what is wrong.</source>
            <translation>Noch nichts. Gehen Sie durch die Schritte und stellen Sie richtig, was falsch ist.</translation>
        </message>
        <message>
            <source>The former record stays with the course. Whose treatment it is cannot be corrected here.</source>
            <translation>Der frühere Eintrag bleibt beim Verlauf. Wessen Behandlung es ist, lässt sich hier nicht korrigieren.</translation>
        </message>
    </context>
</TS>
