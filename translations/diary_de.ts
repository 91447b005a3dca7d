<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>Mit Ton erinnern</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>Nicht klingeln</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>Zur Probe klingeln</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>Ausblenden</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>Rufen Sie bei jedem dieser Zeichen sofort den Notruf an</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>Rufen Sie bei jedem dieser Zeichen am selben Tag Ihre Praxis an</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>Dieses Tagebuch ist kein Arzt und kein Medizinprodukt. Es weiß nicht alles.</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>Kamera: über den Code halten</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>Jetzt den Notruf anrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>Jetzt die Praxis anrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>Ihre Praxis sollte das wissen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>Sprechen Sie das beim Termin an</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>Warten Sie nicht und fahren Sie nicht selbst. Nimmt niemand ab, rufen Sie noch einmal an, und bitten Sie jemanden in der Nähe um Hilfe. Sagen Sie danach der Praxis Bescheid.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>Rufen Sie an, schreiben Sie nicht. Nimmt niemand ab, rufen Sie die zweite Nummer an. Antwortet 30 Minuten lang niemand, gehen Sie in die Notaufnahme.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>Es steht in Ihrem Eintrag. Wird es schlimmer, rufen Sie an.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>Wenn Sie einen Adrenalin-Pen bekommen haben, benutzen Sie ihn. Legen Sie sich flach hin, Beine hoch. Wenn Sie schwer Luft bekommen, setzen Sie sich auf.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>Drücken Sie weiter mit einem sauberen Tuch.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>Nicht ziehen und nicht abschneiden. Decken Sie ihn ab.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>Das muss heute Abend angesehen werden, nicht morgen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>Es kann die Betäubung sein. Sie sollte 8 Stunden nach der Behandlung weg sein. Wenn nicht, rufen Sie an.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>Ihre Temperatur ist %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>Ihr Schmerz ist %1 von 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>Eine Seite ist viel stärker geschwollen als die andere.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1, %2: %3 von 10. Üblich an diesem Tag ist bis %4.</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1, %2: Es war bei %3 und ist jetzt bei %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1, %2: Es war auf %3 gesunken und ist wieder bei %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1: links %2 und rechts %3.</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>Alles zusammen liegen Ihre Seiten %1 Punkte auseinander.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1, %2: Es braucht länger als üblich.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1, %2: Es ist noch da.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>Sie haben einige Tage nichts geschrieben.</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>Alles zusammen ist mehr als an diesem Tag üblich.</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>Alles zusammen braucht länger als üblich.</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>Sie haben das seither geändert oder ergänzt. Der Rat bleibt.</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>Die Praxis hat ihren Eintrag zu Ihrer Behandlung seither geändert. Der Rat bleibt.</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>Es steht in Ihrem Eintrag. Hören Sie bis zum nächsten Arbeitstag nichts, rufen Sie an. Wird es schlimmer, rufen Sie sofort an.</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>Über dem üblichen Bereich, %1 bis %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>Unter dem üblichen Bereich, %1 bis %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>Im üblichen Bereich, %1 bis %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>Noch nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1: %2 von 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>Höchster Wert bisher: %1, an Tag %2.</translation>
    </message>
    </context>
    <context>
        <name>DiaryEntryWords</name>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="22"/>
        <source>%1 °F</source>
        <translation>%1 °F</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="23"/>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="38"/>
        <source>%1: right %2, left %3</source>
        <extracomment>A symptom with its scores: "Swelling: right 3, left 4"</extracomment>
        <translation>%1: rechts %2, links %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>Temperatur: %1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>Mein Tagebuch</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>Behandlung: %1. Praxis: %2. Erstellt am %3.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>Die Werte gehen von 0, gar nicht, bis 10, das Schlimmste, was Sie sich denken können. Rechts und links sind meine.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>Bevor es berichtigt wurde:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>Ich</translation>
    </message>
    </context>
    <context>
        <name>DiaryTimes</name>
    <message>
        <location filename="../app/diary/model/times.cpp" line="33"/>
        <source>d MMMM</source>
        <extracomment>A day and a month, as in "22 March"</extracomment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="40"/>
        <source>today %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>gestern %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>morgen %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="46"/>
        <source>%1, %2</source>
        <extracomment>%1 is a date such as "22 March", %2 a time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="53"/>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>Gestern</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>nur heute</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>bis morgen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>bis Tag %1</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>Schwellung</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>Bluterguss</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>Stiche</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>Delle</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>Taubheit</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>Wie sehr tut es weh?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>Wie geschwollen ist es?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>Wie stark ist der Bluterguss?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>Wie gespannt fühlt es sich an?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>Wie stark spüren Sie Stiche?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>Wie tief ist eine Delle oder Falte?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>Wie taub ist die Haut?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 ist nichts</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 ist das Schlimmste, das Sie sich denken können</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>Ihre linke Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>Ihre rechte Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>Ihre linke Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>Ihre rechte Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>Ich bekomme schwer Luft oder kann meinen Speichel nicht schlucken.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>Mein Hals oder die Stelle unter dem Kiefer schwillt schnell an.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>Zunge oder Rachen schwellen an, ich pfeife beim Atmen oder mir wird schwarz vor Augen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>Metall­geschmack, Ohren­klingeln, Zucken, oder ich bin verwirrt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>Ich zittere heftig, bin verwirrt oder lasse den ganzen Tag kein Wasser.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>Mein Gesicht hängt, und dazu ist ein Arm schwach oder ich spreche undeutlich.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>Ich sehe plötzlich schlechter oder doppelt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>Eine Seite wird von Stunde zu Stunde voller.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>Haut ist weiß, grau oder netzartig geworden, ist kalt oder hat Blasen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>Nahe einer Einstichstelle ist die Haut röter, violetter, grauer oder dunkler als auf der anderen Seite.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>Es fühlt sich mit dem Handrücken wärmer an als die andere Seite.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>Es ist fest, glänzend oder gespannt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>Es tut bei Berührung mehr weh als gestern.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>Der Rand hat sich weiter ausgebreitet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>Dicke gelbe, grüne oder milchige Flüssigkeit tritt aus.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>Das Ende eines Fadens schaut aus der Haut.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>Ich kann ein Auge nicht schließen oder eine Braue nicht heben, oder mein Lächeln ist schief.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>Meine Wange schwillt beim Essen an, oder klare Flüssigkeit läuft.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>Es blutet nach 15 Minuten festem Drücken noch.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>Da ist ein Knoten, der wie ein Puls schlägt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>Ich sehe oder fühle einen Faden. Die Haut ist ruhig.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>Ich habe Schüttelfrost oder fröstele.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>Verband ab</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>Einstiche sauber und trocken</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>Auf dem Rücken schlafen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>Gesicht schonen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>Kühlen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>Noch kein Make-up</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>Keine Gesichts­massage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>Kein Zahnarzt, wenn es warten kann</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>Gehen ja, Sport nein</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>Keine Sauna, kein heißes Bad, kein Schwimmbad</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>Sonne meiden</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>Kein Alkohol</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>Nicht rauchen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>Nicht rasieren</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>Aufschreiben, wie es ist</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>Ihr Kontrolltermin</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>Von Ihrer Praxis</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>Lassen Sie ihn dran, bis Sie heute Abend zu Hause sind. Er hält die Einstiche sauber.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>Vorsichtig waschen und nicht reiben. Die kleinen Löcher brauchen Zeit, um sich zu schließen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>Kopf etwas höher legen. Auf dem Gesicht zu liegen kann einen Faden verschieben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>Kleine Bissen, nicht weit gähnen, nicht laut lachen. Die Fäden brauchen Ruhe.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>Zehn Minuten, mit einem Tuch dazwischen. Es kann die Schwellung lindern.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>Nicht auf die Einstiche, bis sie zu sind.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>Druck auf das Gesicht kann einen Faden verschieben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>Ein weit offener Mund zieht an den Fäden. Wenn es weh tut, rufen Sie zuerst die Praxis an.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>Sport steigert die Durchblutung und kann die Schwellung verstärken.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>Hitze kann die Schwellung verstärken, und im Becken können Keime sein.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>Sonne kann einen Bluterguss lange dunkel färben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>Er kann Bluterguss und Schwellung verstärken.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>Rauch bremst die Heilung. Je länger ohne, desto besser.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>Eine Klinge kann die Einstiche öffnen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>Es ist kurz. So kann sich früh zeigen, dass etwas nicht stimmt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>Ihre Praxis sieht sich an, wie es gelaufen ist.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>Diese Passphrase öffnet das Tagebuch nicht. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>Zu viele Versuche. Bitte %1 Sekunden warten.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>Die Datei des Tagebuchs ist beschädigt. Nichts wurde gelöscht. Rufen Sie Ihre Praxis an.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>Dieses Telefon ist voll. Was Sie getippt haben, ist noch da. Schaffen Sie Platz und speichern Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>Dieses Telefon konnte nicht speichern. Was Sie getippt haben, ist noch da. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>Gerade kein Netz. Es wird später gesendet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>Dieser Code ist abgelaufen. Bitten Sie die Praxis um einen neuen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>Dieser Code wurde schon benutzt. Sagen Sie es jetzt der Praxis und bitten Sie um einen neuen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>Dieser Code ist nicht lesbar. Prüfen Sie jedes Zeichen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>Das ist nicht von Ihrer Praxis. Nichts wurde verbunden. Sagen Sie es der Praxis.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>Noch ist nichts beantwortet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>Ein Wert liegt außerhalb. Bitte prüfen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>Das hat nicht geklappt. Versuchen Sie es noch einmal oder rufen Sie die Praxis an.</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>Der Weg zu dieser Praxis ist nicht verschlüsselt: Andere könnten mitlesen. Nichts wurde gesendet. Sagen Sie es der Praxis.</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>Nicht erledigt</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>Erinnert später: %1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>Weiter berichtigen</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>Früheres ausblenden</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>Was vorher da stand</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>Was zu tun ist ausblenden</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>Frage %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>Speichern, dann Fotos dazu</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>Um damals</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>Um jetzt</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>Geht die Fragen noch einmal durch</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 von 10</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>Früheren Zeitpunkt nachtragen</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>Noch nichts. Hier wird Ihr erster Eintrag stehen.</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>Fotos dazu</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>Diesen Code verwenden</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>Ein Bild des Codes</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>Machen Sie das in Ihrer Praxis. Die Praxis zeigt einen Code auf ihrem Bildschirm.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>Bild auswählen</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>Oder den Code eintippen, 24 Buchstaben und Ziffern</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>Die Adresse unter dem Code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>Ihre Praxis wird gefragt …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>Lassen Sie diese Seite offen. Gleich kommt eine Zahl zum Vergleichen.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>Lesen Sie diese Zahl in der Praxis vor</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>Die Praxis muss dieselben sechs Ziffern sehen. Wenn nicht, sagen Sie es und beginnen Sie neu.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>Sie sind verbunden. Ihr Plan ist unterwegs …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>Wenn Sie das Tagebuch jetzt schließen, geht es weiter, wenn Sie es wieder öffnen.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>Sprache und Schriftgröße</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>Ja, ich bin dort</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>Sind Sie gerade in Ihrer Praxis?</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>Jeder kann Ihnen ein Bild mit einem Code schicken. Was Sie schreiben, ginge dann an diese Person. In Ihrer Praxis sehen Sie, woher der Code kommt.</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>Schreiben Sie das auf Papier. Es wird nur jetzt gezeigt. Ein früherer Code gilt nicht mehr.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>Ich habe ihn notiert</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>Ersatz-Code</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>Der Code öffnet das Tagebuch, wenn Sie die Passphrase verlieren. Sonst kann dann niemand helfen.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>Ihre Passphrase, um einen Code zu erstellen</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>Passphrase ändern</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>Ihre jetzige Passphrase</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>Die neue</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>Die neue noch einmal</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Es wurde noch nichts geschrieben.</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>Wohin mit der Seite</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>Eine Seite zum Drucken (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>Als Seite zum Drucken speichern</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>Was Sie noch schreiben, bleibt hier. Ebenso Ihre Passphrase und Ihre Einstellungen.</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>Nur was Sie schreiben, die Fotos, die Sie hier behalten, Ihre Antworten auf Erinnerungen, und dass Sie eine Warnung gesehen haben. Es ist für Ihre Praxis versiegelt. Der Server dazwischen kann es nicht lesen. Er sieht Größen, Zeiten und Ihre Netzadresse.</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>Mein Tagebuch anlegen</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>Mein Tagebuch öffnen</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>Diese Passphrase setzen</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>Ein Tagebuch, das nur Sie öffnen</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>Mit Ihrem Code öffnen</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>Ihr Tagebuch ist gesperrt</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>Wählen Sie eine Passphrase. Sie sperrt das Tagebuch auf diesem Telefon. Niemand kann sie zurücksetzen, auch Ihre Praxis nicht. Erstellen Sie später unter Einstellungen einen Ersatz-Code.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>Ersatz-Code von Ihrem Papier</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>Eine neue Passphrase</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>Noch einmal dasselbe</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>Ich kenne meine Passphrase</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>Ich habe meine Passphrase verloren</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>Was dieses Telefon verlässt</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>Wenn Sie sich Sorgen machen, suchen Sie nicht nach der Passphrase. Tippen Sie auf „Hilfe holen“.</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>Eine für mich ziehen</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>Zufällige Buchstaben und Ziffern, die Sie auf Papier aufbewahren</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>Ich habe beides verloren</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Es wurde noch nichts geschrieben.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>Es steht auf Papier</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Ebbline Tagebuch</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>Länger nicht benutzt. Das Tagebuch sperrt sich in einer halben Minute. Was Sie schrieben, bleibt.</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>Wohin mit Ihren Daten</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>Was dieses Telefon verlässt</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>Meine Daten in einem Ordner sichern</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>Tagebuch löschen</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>Das nimmt das Tagebuch von diesem Telefon. Die Praxis behält, was sie hat: Fragen Sie dort nach, wenn auch das weg soll. Danach kommt keine Erinnerung und keine Warnung mehr.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>Tagebuch löschen …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>Jetzt löschen. Es gibt kein Zurück.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>Alles, was Sie geschrieben haben, als Blatt zum Drucken (PDF), als Tabellen (CSV) und für andere Programme in der Medizin (FHIR), und Ihre Fotos. Das geht ohne Netz.</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>Ihre Passphrase, um alles zu sichern</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>Ihre Passphrase, um alles zu löschen</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>Andere Zeit</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>Es war früher</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>Stellt Tag und Uhrzeit ein, um die es geht</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>Nein, es geht um jetzt</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>Ihre Nachricht</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>Senden, sobald es Netz gibt</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>Die Praxis liest dies vielleicht erst am nächsten Arbeitstag. Wenn es eilt, rufen Sie an.</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    </context>
    <context>
        <name>NoticesPage</name>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="14"/>
        <source>Version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="19"/>
        <source>The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.</source>
        <translation>Das Tagebuch baut auf der Arbeit anderer auf. Hier sehen Sie, was es nutzt und wer das gemacht hat. Die Texte der Lizenzen sind auf Englisch.</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>Die Bausteine</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>Die Lizenzen</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>Zeigt den Text</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>Wohin mit der Kalenderdatei</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>Mit Ton erinnern</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>Andere sehen vielleicht Ihren Bildschirm. Darum steht dort nur, dass es etwas für Sie gibt, nie was.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>Zur Probe klingeln</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>Nachts Ruhe</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>Ruhe von</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>Was in diese Zeit fällt, kommt an ihrem Ende. Was für den Abend ist, kommt kurz vor ihrem Beginn.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>Auch in Ihrem Kalender</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>Eine Datei für Ihren Kalender enthält nur die Zeiten. Bei jeder steht „Erinnerung aus Ihrem Tagebuch“. Viele Kalender kopieren, was sie enthalten, auf einen Server.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>Wenn sich Ihr Plan oder Ihr Termin ändert, machen Sie die Datei neu. Was Ihr Kalender vorher übernommen hat, bleibt dort, bis Sie es löschen.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>Kalenderdatei erstellen</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>Erinnerungen pünktlich klingeln lassen</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>Temperatur, falls gemessen</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="25"/>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="25"/>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="31"/>
        <source>In your own words, if you like</source>
        <translation>In eigenen Worten, wenn Sie mögen</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>Auch nach Stichen und Taubheit fragen</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>Diesen Eintrag wegwerfen …</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>Fragt zuerst</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>Nein, behalten</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Ja, wegwerfen</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>Das Schloss</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>Passphrase und Ersatz-Code</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>Meine Daten</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>Was dieses Telefon verlässt, mitnehmen, löschen</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>Sehr groß</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>Temperatur in</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="55"/>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="55"/>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="61"/>
        <source>Less motion</source>
        <translation>Weniger Bewegung</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>Jetzt senden und abrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>Tagebuch sperren</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline ist freie Software unter der GPL 3. Es ist kein zertifiziertes Medizinprodukt. Es ersetzt weder Ihre Praxis noch den Notdienst.</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>Über Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>Version, Urheber und Lizenzen</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>Sperrt sich ohne Berührung nach (Minuten)</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>Tippen Sie alles an, was jetzt zutrifft. Der Knopf zum Weitergehen steht nach dem letzten.</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>Ihr Verlauf</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>Heute beachten</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>Was ich geschrieben habe</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>Nachrichten mit der Praxis</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>Heute beantwortet</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen Sie anrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>Mehr Kurven</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>Weniger Kurven</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>Hilfe holen</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>Zeigt, wen Sie anrufen</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>Ich habe das gelesen</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>Was das bedeuten kann</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>Ihr Tagebuch ist nicht mehr auf diesem Gerät.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>Ebbline Tagebuch</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>Mit der Praxis verbinden</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>Eintrag berichtigen</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>Wie ist es?</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>Wen Sie anrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>Was ich geschrieben habe</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>Nachrichten mit der Praxis</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>Erinnerungen</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>Das Schloss</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>Meine Daten</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>Auf diesem Telefon gespeichert.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>Eine Nachricht zwischen Ihnen und der Praxis fehlt. Bitte rufen Sie die Praxis an.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>Fertig. Alles ist gesendet und abgerufen.</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>Etwas von Ihnen wartet noch auf diesem Telefon. Wenn es eilt, rufen Sie an.</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>Diesen Eintrag haben Sie vorher begonnen. Speichern oder verwerfen Sie ihn. Tragen Sie dann den früheren Moment nach.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>Dieses Gerät kann keine Praxis erreichen.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>Über Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>Zurück­genommen. Es ist nicht mehr auf diesem Telefon.</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1. Was zu tun ist, steht auf der Seite des Tages.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>Trifft etwas davon zu?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>Noch etwas?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>Zuletzt %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>Nichts davon</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>Nur was ich angetippt habe</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>Bitte einen Wert von 86 bis 113 °F eingeben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>Bitte einen Wert von 30 bis 45 °C eingeben.</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>Sie haben dem Tagebuch gesagt:</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>Wenn das stimmt: %1.</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>Alles wegwerfen, was Sie hier eingegeben haben? Es gibt keinen Weg zurück.</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>%1 sieht nach °F aus. Wählen Sie °F oder geben Sie einen Wert von 30 bis 45 °C ein.</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>%1 sieht nach °C aus. Wählen Sie °C oder geben Sie einen Wert von 86 bis 113 °F ein.</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>Bitte sehen Sie sich die Temperatur an. Speichern Sie dann noch einmal.</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>Das Feld ist voll. Was danach kommt, wird nicht gespeichert.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>Es geht um %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>Es geht um jetzt.</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>Sie haben das %1 begonnen. Geht es um damals oder um jetzt?</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>Geöffnet von %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>Auf dem Rechner der Praxis seit %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>Auf diesem Telefon gespeichert</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>Später geschrieben, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>Berichtigt %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>So geschrieben %1:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>Es ging um %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>Sie, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>Von der Praxis noch nicht gelesen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>Von der Praxis gelesen, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>Von Ihnen gesehen, %1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1. %2 hat geöffnet, was Sie vorher geschrieben hatten, %3. Ihre Korrektur hat noch niemand geöffnet.</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>Diese Nachricht ist zu lang zum Senden. Senden Sie einen Teil davon und den Rest als zweite Nachricht.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>Gerade kein Netz. Das Tagebuch versucht es weiter.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>In diesem Bild ist kein Code. Nehmen Sie ein anderes oder tippen Sie den Code ein.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>Zum getippten Code gehört auch die Adresse darunter.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>Dieses Gerät kann keine Praxis erreichen.</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>Das ist kein Code einer Praxis. Nehmen Sie den Code, den Ihre Praxis auf ihrem Bildschirm zeigt.</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>Dieses Bild lässt sich nicht öffnen. Nehmen Sie ein anderes oder tippen Sie den Code ein.</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>Das Tagebuch darf die Kamera nicht benutzen. Wählen Sie ein Bild des Codes oder tippen Sie ihn ein. In den Einstellungen des Telefons können Sie die Kamera erlauben.</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>Die Kamera geht gerade nicht. Vielleicht wird sie schon benutzt. Wählen Sie ein Bild des Codes oder tippen Sie ihn ein.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>Dieses Gerät hat keine Kamera. Wählen Sie ein Bild des Codes oder tippen Sie ihn ein.</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>Die Adresse der Praxis antwortet nicht. Prüfen Sie, ob Sie die Adresse unter dem Code richtig getippt haben und ob dieses Telefon Netz hat. Das Tagebuch versucht es weiter.</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>Dieses Tagebuch enthält schon eine Behandlung, und mehr als eine geht nicht. Öffnen Sie „Meine Daten“ in den Einstellungen. Sichern Sie dort Ihre Daten und löschen Sie das Tagebuch. Verbinden Sie sich dann neu.</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>Es wurde nichts verbunden. Lassen Sie sich einen Code zeigen, wenn Sie in Ihrer Praxis sind.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>Sie haben einen Ersatz-Code. Er steht nicht hier, nur auf Ihrem Papier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>Sie haben noch keinen Ersatz-Code.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>Neuen Code erstellen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>Code erstellen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>Die beiden sind nicht gleich.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>Fertig. Ab jetzt öffnet nur die neue Passphrase das Tagebuch.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>Gut. Bewahren Sie das Papier dort auf, wo nur Sie es finden.</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>Der Code wird nicht mehr gezeigt. Wenn er nicht auf Ihrem Papier steht, erzeugen Sie einen neuen.</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>Ihre Passphrase braucht auch diesen Computer: Sein Schlüsselbund, den Ihre Anmeldung öffnet, bewahrt die andere Hälfte des Schlüssels auf. Geht die Hälfte verloren oder wird das Tagebuch verschoben, öffnet nur der Ersatz-Code das Tagebuch.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>Ihre Passphrase braucht auch dieses Telefon: Es bewahrt die andere Hälfte des Schlüssels auf. Verliert das Telefon sie, öffnet nur der Ersatz-Code das Tagebuch.</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>Ihr neuester Code wurde nicht von Ihrem Papier zurückgelesen. Steht er dort nicht, erstellen Sie einen neuen. Verliert dieses Gerät seine Hälfte des Schlüssels, öffnet nur dieser Code das Tagebuch.</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>Dieses Gerät könnte die Hälfte Ihres Schlüssels aufbewahren. Es wartet, bis ein Code von Ihrem Papier zurückgelesen wurde. Erstellen Sie dafür einen neuen Code.</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>Von Ihrem Papier: Gruppe %1 von %2</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>Das ist nicht diese Gruppe. Sehen Sie noch einmal auf Ihr Papier. Steht sie dort nicht, lassen Sie den Code noch einmal zeigen.</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>Der Ersatz-Code für mein Tagebuch</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>Er öffnet das Tagebuch mit einer neuen Passphrase. Bewahren Sie ihn dort auf, wo nur Sie ihn finden.</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>Fertig. Drucken Sie die Seite, und löschen Sie dann die Datei: Wer sie findet, kann Ihr Tagebuch öffnen.</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Die Datei ließ sich dort nicht schreiben. Wählen Sie einen anderen Ort.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>Mindestens %1 Zeichen. Vier oder fünf Wörter merken sich leicht.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>Die beiden sind nicht gleich.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>Das ist kein Ersatz-Code. Er hat 36 Buchstaben und Ziffern in neun Gruppen. Prüfen Sie jedes Zeichen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>Dieser Code öffnet das Tagebuch nicht. Nur der neueste tut es.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>Dieser Computer gibt seine Hälfte des Schlüssels nicht heraus. Fragt er nach dem Passwort seines Schlüsselbunds, geben Sie zuerst das ein. Versuchen Sie es dann noch einmal. Hilft das nicht, nehmen Sie Ihren Ersatz-Code.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>Dieses Telefon gibt seine Hälfte des Schlüssels nicht heraus. Versuchen Sie es noch einmal. Hilft das nicht, nehmen Sie Ihren Ersatz-Code.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>Versuchen Sie es zuerst noch einmal. Ohne Passphrase und Code bleibt dieses Tagebuch geschlossen. Sie können sich auf einem anderen Gerät neu verbinden, oder auf diesem, sobald die Daten dieser App gelöscht sind: Ihre Praxis zeigt einen neuen Code. Die App zu entfernen löscht ihre Daten vielleicht nicht. Die Einträge, die Sie gesendet haben, kommen zurück. Fotos bleiben bei Ihrer Praxis. Was nicht gesendet war, ist verloren.</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>Einen Moment. Das Tagebuch ermittelt, wie stark die Sperre auf diesem Telefon sein kann.</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>Von Ihrem Papier: Gruppe %1 und Gruppe %2</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>Das ist nicht das, was gezogen wurde. Sehen Sie noch einmal auf Ihr Papier. Steht es dort nicht, lassen Sie es noch einmal zeigen.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n Eintrag ist nur auf diesem Telefon und wäre verloren.</numerusform>
            <numerusform>%n Einträge sind nur auf diesem Telefon und wären verloren.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>Alle Ihre Einträge sind auch auf dem Rechner der Praxis.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>Fertig. Es liegt im Ordner „%1“. Wer ihn öffnet, kann es lesen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>Dort ließ es sich nicht schreiben. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n Foto ist nur auf diesem Telefon und wäre verloren.</numerusform>
            <numerusform>%n Fotos sind nur auf diesem Telefon und wären verloren.</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>Tippen Sie zuerst Ihre Passphrase.</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>Tippen Sie Ihre Passphrase noch einmal.</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>Das ist nicht Ihre Passphrase. Nichts wurde gesichert oder gelöscht.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Dieser Computer gibt seine Hälfte des Schlüssels nicht heraus. Fragt er nach dem Passwort seines Schlüsselbunds, geben Sie zuerst das ein. Versuchen Sie es dann noch einmal. Hilft das nicht, sperren Sie das Tagebuch und nehmen Sie Ihren Ersatz-Code.</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Dieses Telefon gibt seine Hälfte des Schlüssels nicht heraus. Versuchen Sie es noch einmal. Hilft das nicht, sperren Sie das Tagebuch und nehmen Sie Ihren Ersatz-Code.</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>Nicht alles konnte geschrieben werden. Ein Teil liegt im Ordner „%1“. Wer ihn öffnet, kann ihn lesen: Löschen Sie den Ordner.</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>Etwas anderes, das Sie geschrieben haben, wartet noch auf diesem Telefon und wäre verloren.</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>Auch eine Nachricht oder Antwort, die noch auf diesem Telefon wartet, wäre verloren.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>Noch einmal behandelt? Dieses Tagebuch enthält eine Behandlung. Sichern Sie Ihre Daten, löschen Sie das Tagebuch und verbinden Sie sich dann neu.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>Es hat nicht geklingelt. Dieses Gerät hat es abgelehnt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>Erinnerung</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>Es gibt etwas für Sie.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>Bitte öffnen Sie Ihr Tagebuch, damit es weitergeht.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>In 30 Minuten</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>Dieses Gerät nimmt nicht alle Erinnerungen an. Sehen Sie jeden Tag in Ihr Tagebuch.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>Erinnerungen klingeln. Es kommt keine.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>Erinnerungen klingeln. Die nächste: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>Erinnerungen klingeln. Die nächste: %1. Öffnen Sie das Tagebuch bis %2, damit sie weitergehen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>Dieses Gerät kann nicht klingeln. Was ansteht, steht hier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>Erinnerungen klingeln nicht. Was ansteht, steht hier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>Erinnerungen klingeln noch nicht. Was ansteht, steht hier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>Sehen Sie an den Rand Ihres Bildschirms. Dort muss stehen: „%1“</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>Erinnerung aus Ihrem Tagebuch</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>Es kommt keine Erinnerung.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Die Datei ließ sich dort nicht schreiben. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>Fertig. Öffnen Sie die Datei mit Ihrem Kalender.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>Um Strom zu sparen, klingelt dieses Telefon vielleicht einige Minuten zu spät.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>Ab jetzt klingeln Erinnerungen. Probieren Sie eine aus, bevor Sie die Praxis verlassen.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>Kontrolltermin: %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 bis %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>Heute üblich, von 10: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>, </source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>, </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="53"/>
        <source>This range is an assumption for now. It is not yet made from courses at your clinic.</source>
        <translation>Dieser Bereich ist vorerst eine Annahme. Er stammt noch nicht aus Verläufen Ihrer Praxis.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>Dieser Bereich stammt aus %n Verlauf Ihrer Praxis.</numerusform>
            <numerusform>Dieser Bereich stammt aus %n Verläufen Ihrer Praxis.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>Noch ist nichts aufgeschrieben.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>Ihren letzten Eintrag hat %1 geöffnet, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>Ihr letzter Eintrag liegt seit %1 auf dem Rechner der Praxis. Noch hat ihn niemand geöffnet.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n Eintrag ist auf diesem Telefon gespeichert, noch nicht bei der Praxis. Wenn es eilt, rufen Sie an.</numerusform>
            <numerusform>%n Einträge sind auf diesem Telefon gespeichert, noch nicht bei der Praxis. Wenn es eilt, rufen Sie an.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>%n neue Nachricht der Praxis</numerusform>
            <numerusform>%n neue Nachrichten der Praxis</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>Eintrag fortsetzen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>Aufschreiben, wie es ist</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>Später, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>Ihre Korrektur liegt seit %1 auf dem Rechner der Praxis. Noch hat sie niemand geöffnet. %2 hat geöffnet, was Sie vorher geschrieben hatten, %3.</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>Auf diesem Telefon liegt ein älterer Stand Ihres Tagebuchs. Manches, was Sie geschrieben haben, fehlt hier vielleicht. Bitte rufen Sie Ihre Praxis an.</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>Zwei Nachrichten der Praxis passen nicht zusammen. Rufen Sie Ihre Praxis an, bevor Sie sich nach einer richten.</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>Eine Nachricht der Praxis fehlt hier. Bitte rufen Sie Ihre Praxis an.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>Dieses Telefon hat seit %1 nichts von der Praxis gehört.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>Dieses Telefon hat noch nichts von der Praxis gehört.</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>Soweit dieses Telefon weiß, ist Ihr Eintrag nicht bei der Praxis. Er wartet seit %1.</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>Wenn Sie sich Sorgen machen, rufen Sie an. Warten Sie hier nicht auf eine Antwort.</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>Das sind mehr als %1 Tage. Bitte rufen Sie Ihre Praxis an. Behalten Sie dieses Telefon und dieses Programm: Was Sie geschrieben haben, ist vielleicht nirgendwo sonst.</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>Ihre Praxis braucht eine neuere Version dieser App. Bitte aktualisieren Sie sie. Bis dahin wartet vielleicht auf diesem Telefon, was Sie schreiben.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>%n Sache, die Sie hier aufgeschrieben haben, kam nicht in der Praxis an. Bitte zeigen Sie sie dort.</numerusform>
            <numerusform>%n Sachen, die Sie hier aufgeschrieben haben, kamen nicht in der Praxis an. Bitte zeigen Sie sie dort.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>Kontrolltermin: %1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>Sie sagten: erledigt.</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>Sie sagten: nicht erledigt.</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>Dieses Telefon ist nicht mehr mit der Praxis verbunden. Was Sie hier schreiben, erreicht niemanden, und Erinnerungen klingeln hier nicht. Nehmen Sie Ihr anderes Telefon. Gibt es keines, rufen Sie Ihre Praxis an.</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>Der Server dazwischen ist voll. Was Sie schreiben, passt nicht mehr hinein.</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>Der Server dazwischen kennt dieses Telefon nicht mehr.</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>Der Server dazwischen nimmt nicht an, was dieses Telefon sendet.</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>Es bleibt auf diesem Telefon, und das Telefon versucht es wieder. Bitte rufen Sie Ihre Praxis an.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>Die Uhr dieses Telefons geht etwa %1 vor. Bitte stellen Sie sie: Nach ihr läuten Ihre Erinnerungen.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>Die Uhr dieses Telefons geht etwa %1 nach. Bitte stellen Sie sie: Nach ihr läuten Ihre Erinnerungen.</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>Ihre Praxis hat den Termin verlegt. Vorher war er: %1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>Wen Sie anrufen</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>Wenn Sie sich Sorgen machen, rufen Sie an. Sie brauchen keinen Grund.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>Ein Anruf ist schneller als das Tagebuch: Die Praxis hat Ihren Eintrag vielleicht noch nicht gesehen.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>Sie haben Fieber von 100,4 °F oder mehr.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>Sie haben Fieber ab 38 °C.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>Der Schmerz kommt wieder.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>Notruf</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>Ihre Praxis</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>Wenn niemand abnimmt</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>Ihr Eintrag ist nicht gespeichert und nicht bei der Praxis.</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>Zurück zum Eintrag, um ihn noch einmal zu speichern</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>Die Warnung bleibt in Ihrem Tagebuch</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>Sie sind anderswo? Rufen Sie die Notrufnummer dieses Ortes an.</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>Dieses Telefon konnte nicht festhalten, dass Sie die Warnung gelesen haben. Sie kommt wieder, wenn Sie das Tagebuch das nächste Mal öffnen.</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>Der Schmerz ist 7 von 10 oder mehr.</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>In den ersten zwei Tagen ist eine Seite voller und tut mehr weh.</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>Zwei davon an einer Stelle: andere Farbe, warm, fest, tut mehr weh.</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>Ein Faden schaut heraus, und die Haut dort ist warm, wund oder hat eine andere Farbe.</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>Ihr Eintrag ist noch nicht gespeichert und nicht bei der Praxis. Nach dem Anruf können Sie ihn weiterschreiben.</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>Auf dem Rechner der Praxis seit %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>Auf diesem Telefon gespeichert</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>Nicht auf diesem Telefon. Auf dem Rechner der Praxis seit %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>Nicht auf diesem Telefon. Vielleicht ist es auf Ihrem alten.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>Ihre linke Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>Ihre rechte Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>Fotos: auf diesem Telefon gespeichert</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>Fotos: %1 von %2 auf dem Rechner der Praxis</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>Kamera, mit der Zeichnung eines Gesichts, in die Ihres passen soll</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>Andere Kamera nehmen</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>Dieses Foto wird nicht behalten</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>Ein anderes machen</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>Bild auswählen</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>Zurück zu Ihren Einträgen</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>Ein Foto von Ihnen</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>Welche Seite</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>Zeichnung eines Gesichts: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>Dieses Gerät hat keine Kamera. Wählen Sie ein Bild, das Sie eben gemacht haben.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>Jedes Mal: dasselbe Licht, derselbe Abstand, Haare aus dem Gesicht. Nehmen Sie beide Seiten auf.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>Fotos sind Ihre Entscheidung. Warten Sie nicht auf eines, wenn Sie sich Sorgen machen: Rufen Sie an.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>Das Bild wird vorbereitet …</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>Das Foto: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>Ist es die richtige Seite? Ist es scharf? Ist es von jetzt? Wenn nicht, machen Sie ein anderes.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>Ort und Zeit aus der Datei und der Name Ihres Geräts gehen nicht mit. Ihr Gesicht schon.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>Foto machen</translation>
    </message>
    </context>
    <context>
        <name>PhotoThumb</name>
    <message>
        <location filename="../app/diary/PhotoThumb.qml" line="20"/>
        <source>Photograph. %1</source>
        <translation>Foto. %1</translation>
    </message>
    </context>
    <context>
        <name>PicturePage</name>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="23"/>
        <source>The photograph: %1</source>
        <translation>Das Foto: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>Das heißt nicht, dass jemand es angesehen hat. Wenn Sie sich Sorgen machen, rufen Sie an.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>Es verschwindet jetzt von diesem Telefon. Vom Server und von den Rechnern der Praxis verschwindet es beim nächsten Abgleich. Was jemand kopiert oder gedruckt hat, bleibt.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>Zurück­nehmen …</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>Sagt zuerst, was das bewirkt</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>Jetzt zurück­nehmen. Es gibt kein Zurück.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>Dieses Bild lässt sich nicht öffnen. Wählen Sie ein anderes.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>Dieses Bild ist zu groß. Wählen Sie ein kleineres.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>Das Tagebuch liest Bilder der Arten JPEG und PNG. Wählen Sie ein solches.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>Dieses Bild ist zu klein. Wählen Sie ein größeres.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>Dieses Bild ist beschädigt. Wählen Sie ein anderes oder machen Sie ein neues.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>Drehen Sie den Kopf nach rechts. Die Kamera sieht Ihre linke Wange.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>Drehen Sie den Kopf nach links. Die Kamera sieht Ihre rechte Wange.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>Schauen Sie gerade in die Kamera, das Gesicht entspannt.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>Es steht dann unter %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>Auf diesem Telefon gespeichert: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>Sie haben %1 Fotos. Mehr geht nicht. Nehmen Sie eines zurück, um ein anderes dazuzutun.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>Dieses Telefon konnte es nicht speichern. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>Dieses Telefon ist voll. Schaffen Sie Platz und behalten Sie es dann.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>Die Kamera antwortet nicht. Wählen Sie stattdessen ein Bild.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>Das Tagebuch darf die Kamera nicht benutzen. Erlauben Sie es in den Einstellungen Ihres Telefons oder wählen Sie ein Bild.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>Es ließ sich nicht zurück­nehmen. Versuchen Sie es noch einmal.</translation>
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
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>Notruf (Europäische Union)</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>Notruf (Vereinigtes Königreich)</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>Notruf (Vereinigte Staaten)</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>Rettungs­dienst (Brasilien)</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>Rettungs­dienst (China)</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>Rettungs­dienst (Schweiz)</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>Rettungs­dienst (Türkei)</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>Doch nicht erledigt</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>Doch erledigt</translation>
    </message>
    </context>
    <context>
        <name>CallButton</name>
    <message>
        <location filename="../app/diary/CallButton.qml" line="25"/>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="26"/>
        <source>Calls this number</source>
        <translation>Ruft diese Nummer an</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>Dieses Gerät kann nicht anrufen. Bitte wählen Sie diese Nummer auf einem Telefon:</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>Wenn kein Anruf beginnt, wählen Sie diese Nummer an einem Telefon:</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Ich habe das gelesen</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>Es bleibt bei Ihrem Eintrag, unter Was ich geschrieben habe</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>Eine Schwellung oder Blut im Hals kann auf die Luftwege drücken. Das kann schnell schlimmer werden.</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>Es kann Blut unter der Haut am Hals sein. Es kann auf die Luftwege drücken.</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>Es kann eine schwere Allergie sein. Dann kann der Rachen anschwellen, und das Atmen wird schwer.</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>Das Betäubungsmittel wirkt vielleicht auf den ganzen Körper, nicht nur auf das Gesicht.</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>Es kann eine Blutvergiftung (Sepsis) sein. Dann schadet eine Infektion dem ganzen Körper.</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>Es kann ein Schlaganfall sein. Dann bekommt ein Teil des Gehirns zu wenig Blut.</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>Das Auge oder seine Durchblutung kann in Gefahr sein.</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>Es kann Blut sein, das sich unter der Haut sammelt. Davon gehen wir aus, bis ein Arzt es gesehen hat.</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>Die Haut bekommt dort vielleicht zu wenig Blut. Etwas kann auf ein Gefäß drücken oder es verschließen.</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>Fieber kann heißen, dass eine Infektion da ist.</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>Es kann eine Infektion sein, auch in der Haut des Gesichts. Nahe an Auge oder Nase ist sie gefährlicher.</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>Schüttelfrost kann mit einer Infektion kommen.</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>Es kann eine Infektion sein, die sich in der Haut ausbreitet.</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>Es kann Eiter sein. Eiter kann mit einer Infektion kommen.</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>Ein Faden kommt heraus. Vielleicht ist dort auch die Haut infiziert.</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>Ein Nerv des Gesichts kann gedrückt oder verletzt sein. Die Betäubung sollte jetzt vorbei sein.</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>So starke Schmerzen können von Blut unter der Haut kommen oder von einer Infektion.</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>Die Speicheldrüse in der Wange oder ihr Gang kann verletzt sein.</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>Vielleicht ist noch ein Blutgefäß offen.</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>Es kann ein Leck in einer Arterie sein, mit Blut darum.</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>Zahlen allein sagen nicht, was es ist. Rufen Sie darum jetzt an.</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>Es kann jetzt gleich gefährlich für Sie sein und schnell schlimmer werden. Darum kann es nicht warten.</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>Es muss vielleicht jetzt behandelt werden. Darum sollten Sie anrufen und nicht warten.</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>Es kann Blut unter der Haut sein oder eine Infektion.</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>Zeigen, was ich tippe</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>Schreiben Sie dies jetzt auf Papier, und bewahren Sie es auf, wo nur Sie es finden. Sie tippen es, um das Tagebuch zu öffnen, mit oder ohne Striche.</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>Nicht zu sehen</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>Eine andere ziehen</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>Ich wähle selbst eine</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>Zwei Gruppen davon, damit das Papier sicher stimmt. Ohne das Papier könnten Sie Ihr Tagebuch nicht wieder öffnen.</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Noch einmal zeigen</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>Lang genug.</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>Lang genug. Aber wenige Zeichen immer wieder sind leicht zu erraten.</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>Noch %n Zeichen.</numerusform>
            <numerusform>Noch %n Zeichen.</numerusform>
        </translation>
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
</TS>
