<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>Sonner pour les rappels</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>Ne pas sonner</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>Sonner une fois pour essayer</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>Masquer ceci</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>Appelez tout de suite les urgences si un seul de ces points est vrai</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>Appelez votre clinique le jour même si un seul de ces points est vrai</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>Ce journal n'est ni un médecin ni un dispositif médical. Il ne sait pas tout.</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>Appareil photo : tenez-le au-dessus du code</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>Appelez les urgences maintenant</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>Appelez votre clinique maintenant</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>Votre clinique devrait le savoir</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>Parlez-en à votre visite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>N&apos;attendez pas et ne conduisez pas. Si personne ne répond, rappelez, et demandez de l&apos;aide à quelqu&apos;un près de vous. Prévenez ensuite votre clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>Appelez, n'écrivez pas. Si personne ne répond, appelez le deuxième numéro. Sans réponse après 30 minutes, allez aux urgences.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>C'est dans votre note. Si cela empire, appelez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>Si on vous a donné un stylo d'adrénaline, utilisez-le. Allongez-vous, jambes levées. Si vous respirez mal, asseyez-vous.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>Continuez d'appuyer avec un linge propre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>Ne tirez pas dessus et ne le coupez pas. Couvrez-le.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>Cela doit être vu ce soir, pas demain.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>C'est peut-être l'anesthésie. Elle devrait passer 8 heures après le traitement. Sinon, appelez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>Votre température est de %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>Votre douleur est à %1 sur 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>Un côté est bien plus enflé que l'autre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1, %2 : %3 sur 10. D'habitude ce jour-là, jusqu'à %4.</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1, %2 : c'était à %3 et c'est maintenant à %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1, %2 : c'était descendu à %3 et c'est de nouveau à %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1 : %2 à votre gauche et %3 à votre droite.</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>Dans l&apos;ensemble, vos deux côtés sont à %1 points d&apos;écart.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1, %2 : cela met plus de temps que d'habitude à partir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1, %2 : c'est encore là.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>Vous n'avez pas écrit depuis quelques jours.</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>Dans l&apos;ensemble, c&apos;est plus que d&apos;habitude ce jour-là.</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>Dans l&apos;ensemble, cela met plus de temps que d&apos;habitude à partir.</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>Vous l&apos;avez changé ou complété depuis. Le conseil reste le même.</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>La clinique a changé depuis ce qu&apos;elle a noté de votre traitement. Le conseil reste le même.</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>C&apos;est dans votre note. Sans nouvelles d&apos;ici le prochain jour ouvré, appelez. Si cela empire, appelez tout de suite.</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>Au-dessus de l'habituel, %1 à %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>En dessous de l'habituel, %1 à %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>Dans l'habituel, %1 à %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>Rien d'écrit encore.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1 : %2 sur 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>Le plus haut : %1, le jour %2.</translation>
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
        <translation>%1 : droite %2, gauche %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>Température : %1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>Mon journal</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>Traitement : %1. Clinique : %2. Fait le %3.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>Les valeurs vont de 0, rien, à 10, le pire que l'on puisse imaginer. Droite et gauche sont les miennes.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>Avant la correction :</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>Messages</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>Moi</translation>
    </message>
    </context>
    <context>
        <name>DiaryTimes</name>
    <message>
        <location filename="../app/diary/model/times.cpp" line="33"/>
        <source>d MMMM</source>
        <extracomment>A day and a month, as in "22 March"</extracomment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="40"/>
        <source>today %1</source>
        <translation>aujourd'hui %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>hier %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>demain %1</translation>
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
        <translation>Aujourd'hui</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>Hier</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>Jour %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>seulement aujourd'hui</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>jusqu'à demain</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>jusqu'au jour %1</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n heure</numerusform>
            <numerusform>%n heures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>Douleur</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>Gonflement</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>Bleus</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>Tension</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>Élancements</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>Creux</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>Engourdissement</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>À quel point avez-vous mal ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>À quel point est-ce enflé ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>À quel point y a-t-il des bleus ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>À quel point est-ce tendu ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>À quel point sentez-vous des piqûres ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>Quelle est la profondeur du creux ou du pli ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>À quel point la peau est-elle engourdie ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 est rien</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 est le pire que l'on puisse imaginer</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>Votre gauche</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>Votre droite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>votre gauche</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>votre droite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>J'ai du mal à respirer, ou je ne peux pas avaler ma salive.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>Mon cou, ou sous ma mâchoire, enfle vite.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>Ma langue ou ma gorge enfle, je siffle en respirant ou je suis sur le point de m&apos;évanouir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>Goût de métal, oreilles qui sifflent, secousses, ou je suis confus.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>Je tremble fort, je suis confus, ou je n'urine pas de la journée.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>Mon visage tombe, et en plus un bras est faible ou je parle mal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>Je vois soudain moins, ou je vois double.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>Un côté se remplit d'heure en heure.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>La peau est devenue blanche, grise ou comme un filet, elle est froide ou a des cloques.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>Près d'un point d'entrée, la peau est plus rouge, violette, grise ou foncée que de l'autre côté.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>Elle est plus chaude au dos de ma main que l'autre côté.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>Elle est dure, luisante ou tendue.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>Elle est plus sensible au toucher qu'hier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>Le bord s'est étendu plus loin qu'avant.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>Un liquide épais jaune, vert ou laiteux sort.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>Le bout d'un fil sort de la peau.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>Je ne peux pas fermer un œil ou lever un sourcil, ou mon sourire est de travers.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>Ma joue enfle quand je mange, ou un liquide clair coule.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>Cela saigne encore après 15 minutes d'appui ferme.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>Il y a une bosse qui bat comme un pouls.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>Je vois ou je sens un fil. La peau est calme.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>J'ai des frissons.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>Retirer les pansements</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>Points d'entrée propres et secs</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>Dormez sur le dos</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>Ménagez votre visage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>Poche froide</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>Pas encore de maquillage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>Pas de massage du visage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>Pas de dentiste si cela peut attendre</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>Marchez, mais pas de sport</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>Ni sauna, ni bain chaud, ni piscine</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>Restez à l'ombre</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>Pas d'alcool</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>Ne fumez pas</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>Pas de rasage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>Noter comment ça va</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>Votre visite de contrôle</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>De votre clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>Gardez-les jusqu'à la maison ce soir. Ils gardent propres les points d'entrée.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>Lavez avec soin et ne frottez pas. Les petits trous ont besoin de temps pour se fermer.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>Relevez un peu la tête. Dormir sur le visage peut déplacer un fil.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>Petites bouchées, pas de grands bâillements ni de grands rires. Les fils ont besoin de calme.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>Dix minutes, avec un linge entre les deux. Cela peut calmer le gonflement.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>Pas sur les points d'entrée tant qu'ils ne sont pas fermés.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>Appuyer sur le visage peut déplacer un fil.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>Une bouche grande ouverte tire sur les fils. Si vous avez mal, appelez d'abord la clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>Le sport augmente le flux de sang et peut faire enfler.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>La chaleur peut faire enfler, et les piscines peuvent porter des germes.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>Le soleil peut foncer un bleu pour longtemps.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>Cela peut ajouter des bleus et du gonflement.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>La fumée ralentit la guérison. Le plus longtemps possible est le mieux.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>Une lame peut ouvrir les points d'entrée.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>C'est court. Cela peut montrer tôt que quelque chose ne va pas.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>Votre clinique regardera comment cela s'est passé.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>Cette phrase secrète n'ouvre pas le journal. Réessayez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>Trop d'essais. Attendez %1 secondes.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>Le fichier du journal est abîmé. Rien n'a été effacé. Appelez votre clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>Ce téléphone est plein. Ce que vous avez tapé est encore ici. Libérez de la place, puis enregistrez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>Ce téléphone n'a pas pu enregistrer. Ce que vous avez tapé est encore ici. Réessayez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>Pas de réseau pour l'instant. L'envoi se fera plus tard.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>Ce code n'est plus valable. Demandez-en un nouveau à votre clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>Ce code a déjà servi. Prévenez maintenant votre clinique et demandez-en un nouveau.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>Ce code ne peut pas être lu. Vérifiez chaque lettre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>Ceci ne vient pas de votre clinique. Rien n'a été relié. Prévenez votre clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>Rien n'est encore répondu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>Une valeur est hors limites. Vérifiez-la.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>Cela n'a pas marché. Réessayez, ou appelez votre clinique.</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>Le chemin vers cette clinique n&apos;est pas chiffré : d&apos;autres pourraient lire. Rien n&apos;a été envoyé. Prévenez votre clinique.</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>Pas fait</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>Vous le rappelle plus tard : %1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>Continuer la correction</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>Masquer l'ancien texte</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>Ce qui était écrit avant</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Que faire</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>Masquer que faire</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>Question %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>Enregistrer, puis ajouter des photos</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>De ce moment-là</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>De maintenant</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>Repasse les questions</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1 : %2 sur 10</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>Ajouter un moment passé</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>Rien encore. Votre première note sera ici.</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>Ajouter des photos</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>Utiliser ce code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>Une image du code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Images (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>Faites ceci à votre clinique. Elle affiche un code sur son écran.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>Choisir une image</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>Ou tapez le code, 24 lettres et chiffres</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>L'adresse sous le code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>Demande à votre clinique …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>Gardez cette page ouverte. Un numéro à comparer va suivre.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>Lisez ce numéro à votre clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>Elle doit voir les mêmes six chiffres. Sinon, dites-le et recommencez.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>Vous êtes relié. Votre plan de soins arrive …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>Si vous fermez le journal maintenant, il continue quand vous le rouvrez.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>Langue et taille du texte</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>Oui, j&apos;y suis</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>Êtes-vous à votre clinique en ce moment ?</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>N&apos;importe qui peut vous envoyer l&apos;image d&apos;un code. Ce que vous écrivez irait alors à cette personne. À votre clinique, vous voyez d&apos;où vient le code.</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>Notez-le sur papier. Il n'est montré que maintenant. Les anciens codes ne marchent plus.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>Je l'ai noté</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>Code de secours</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>Le code ouvre le journal si vous perdez votre phrase secrète. Personne d'autre ne pourra vous aider.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>Votre phrase secrète, pour créer un code</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>Changer la phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>Votre phrase secrète actuelle</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>La nouvelle</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>La nouvelle encore une fois</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Rien n’a encore été écrit.</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>Où mettre la page</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>Une page à imprimer (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>L’enregistrer comme page à imprimer</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>Ce que vous êtes en train d'écrire reste ici. Votre phrase secrète et vos réglages aussi.</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>Seulement ce que vous écrivez, les photos que vous gardez ici, vos réponses aux rappels, et que vous avez vu une alerte. C'est scellé pour votre clinique. Le serveur entre vous ne peut pas le lire. Il voit des tailles, des heures et votre adresse réseau.</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>Créer mon journal</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>Ouvrir mon journal</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>Définir cette phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>Un journal que vous seul pouvez ouvrir</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>Ouvrez-le avec votre code</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>Votre journal est verrouillé</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>Choisissez une phrase secrète. Elle verrouille le journal sur ce téléphone. Personne ne peut la remplacer, pas même votre clinique. Plus tard, créez un code de secours dans les réglages.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>Code de secours de votre papier</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>Une nouvelle phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>La même encore une fois</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>Je connais ma phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>J'ai perdu ma phrase secrète</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>Ce qui quitte ce téléphone</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>Si vous êtes inquiet, ne cherchez pas la phrase secrète. Touchez « Besoin d'aide ».</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>En tirer une pour moi</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>Des lettres et des chiffres au hasard, à garder sur papier</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>J’ai perdu les deux</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Rien n’a encore été écrit.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>C’est sur papier</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Journal Ebbline</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>Pas utilisé depuis un moment. Le journal se verrouille dans une demi-minute. Ce que vous avez écrit est gardé.</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>Où mettre vos données</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>Ce qui quitte ce téléphone</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>Les emporter</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>Enregistrer mes données dans un dossier</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>Supprimer le journal</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>Ceci retire le journal de ce téléphone. La clinique garde ce qu'elle a : demandez-lui si vous voulez l'effacer aussi. Après cela, plus aucun rappel ni alerte.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>Supprimer le journal …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>Le garder</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>Supprimer maintenant. C'est sans retour.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>Tout ce que vous avez écrit, en page à imprimer (PDF), en tableaux (CSV) et pour d’autres programmes de santé (FHIR), et vos photos. Cela marche sans réseau.</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>Votre phrase secrète, pour tout enregistrer</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>Votre phrase secrète, pour tout supprimer</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>Une autre heure</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>C'était plus tôt</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>Choisit le jour et l'heure dont il s'agit</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>Non, il s'agit de maintenant</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>Votre message</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>Envoyer dès qu'il y a du réseau</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>La clinique ne lira peut-être ceci que le prochain jour ouvré. Si c'est urgent, appelez.</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>Fermer</translation>
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
        <translation>Le journal est fait avec le travail d'autres personnes. Vous voyez ici ce qu'il utilise et qui l'a fait. Les textes des licences sont en anglais.</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>Les éléments</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>Les licences</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>Affiche le texte</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>Où mettre le fichier de calendrier</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>Calendrier (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>Sonner pour les rappels</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>D'autres peuvent voir votre écran. Il dit donc seulement qu'il y a quelque chose pour vous, jamais quoi.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>Sonner une fois pour essayer</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>Silence la nuit</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>Silence de</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>à</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>Ce qui tombe dans ce temps arrive à sa fin. Ce qui est pour le soir arrive juste avant son début.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>Dans votre calendrier aussi</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>Un fichier pour votre calendrier ne contient que les heures. Il dit « Rappel de votre journal » à chacune. Beaucoup de calendriers copient leur contenu sur un serveur.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>Si votre plan ou votre visite change, refaites le fichier. Ce que votre calendrier a déjà pris y reste jusqu’à ce que vous le supprimiez.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>Créer un fichier de calendrier</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>Laisser les rappels sonner à l'heure</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>Température, si vous l'avez prise</translation>
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
        <translation>Avec vos mots, si vous voulez</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>Demander aussi les élancements et l'engour­dissement</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>Jeter cette entrée …</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>Demande d&apos;abord</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>Non, la garder</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Oui, la jeter</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>Le verrou</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>Phrase secrète et code de secours</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>Mes données</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>Ce qui quitte ce téléphone, l'emporter, le supprimer</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>Normale</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>Très grande</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>Aspect</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>Fort contraste</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>Température en</translation>
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
        <translation>Moins de mouvement</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>Envoyer et recevoir maintenant</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>Verrouiller le journal</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline est un logiciel libre sous GPL 3. Ce n'est pas un dispositif médical certifié. Il ne remplace ni votre clinique ni un service d'urgence.</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>À propos d'Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>Version, auteurs et licences</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>Se verrouille sans toucher après (minutes)</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>Touchez tout ce qui est vrai maintenant. Le bouton pour continuer se trouve après la dernière ligne.</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>Votre évolution</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>À respecter aujourd'hui</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>Ce que j'ai écrit</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>Messages avec la clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>Répondu aujourd&apos;hui</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Qui appeler</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>Plus de courbes</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>Moins de courbes</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>Besoin d'aide</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>Montre qui appeler</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>J'ai lu ceci</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>Ce que cela peut vouloir dire</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>Votre journal n'est plus sur cet appareil.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>Journal Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>Rejoindre votre clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>Corriger cette note</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>Comment ça va ?</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>Qui appeler</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>Ce que j'ai écrit</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>Messages avec la clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>Rappels</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>Le verrou</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>Mes données</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>Enregistré sur ce téléphone.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>Un message entre vous et la clinique manque. Appelez la clinique, s'il vous plaît.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>Fait. Tout est envoyé et reçu.</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>Quelque chose que vous avez écrit attend encore sur ce téléphone. Si c’est urgent, appelez.</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>Vous avez commencé cette note avant. Enregistrez-la ou jetez-la. Ajoutez ensuite le moment passé.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>Cet appareil ne peut joindre aucune clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>À propos d'Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>Photos</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>Retirée. Elle n'est plus sur ce téléphone.</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1. Ce qu&apos;il faut faire est sur la page du jour.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>Un de ces points est-il vrai ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>Autre chose ?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>La dernière fois %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>Passer celle-ci</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>Aucun de ces points</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>Seulement ce que j'ai coché</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>Tapez une valeur de 86 à 113 °F.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>Tapez une valeur de 30 à 45 °C.</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>Vous avez dit au journal :</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>Si c&apos;est vrai : %1.</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>Jeter tout ce que vous avez saisi ici ? Il n&apos;y a pas de retour.</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>%1 semble être en °F. Choisissez °F, ou tapez une valeur de 30 à 45 °C.</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>%1 semble être en °C. Choisissez °C, ou tapez une valeur de 86 à 113 °F.</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>Vérifiez la température. Puis enregistrez encore une fois.</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>La note est pleine. Ce qui vient après n'est pas gardé.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>Il s'agit de %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>Il s'agit de maintenant.</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>Vous avez commencé ceci %1. Est-ce que cela parle de ce moment-là ou de maintenant ?</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>Ouvert par %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>Sur l'ordinateur de la clinique depuis %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>Enregistré sur ce téléphone</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>Écrit plus tard, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>Corrigé %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>Tel qu'écrit %1 :</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>Il s'agissait de %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>Vous, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>Pas encore lu par la clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>Lu par la clinique, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>Vu par vous, %1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1. %2 a ouvert ce que vous aviez écrit avant, %3. Personne n&apos;a encore ouvert votre correction.</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>Ce message est trop long pour être envoyé. Envoyez-en une partie, puis le reste dans un deuxième message.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>Pas de réseau pour l'instant. Le journal continue d'essayer.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>Il n'y a pas de code sur cette image. Essayez-en une autre, ou tapez le code.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>Un code tapé demande aussi l'adresse qui est dessous.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>Cet appareil ne peut joindre aucune clinique.</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>Ceci n&apos;est pas le code d&apos;une clinique. Utilisez le code que votre clinique montre sur son écran.</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>Cette image ne peut pas être ouverte. Choisissez-en une autre, ou tapez le code.</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>Le journal n&apos;a pas le droit d&apos;utiliser la caméra. Choisissez une image du code, ou tapez-le. Vous pouvez permettre la caméra dans les réglages du téléphone.</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>La caméra ne marche pas en ce moment. Elle est peut-être déjà utilisée. Choisissez une image du code, ou tapez-le.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>Cet appareil n&apos;a pas de caméra. Choisissez une image du code, ou tapez-le.</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>L&apos;adresse de la clinique ne répond pas. Vérifiez que vous avez bien tapé l&apos;adresse sous le code et que ce téléphone a du réseau. Le journal continue d&apos;essayer.</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>Ce journal contient déjà un traitement et ne peut en contenir qu'un. Ouvrez « Mes données » dans les réglages. Enregistrez-y vos données et effacez le journal. Puis rejoignez de nouveau la clinique.</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>Rien n&apos;a été relié. Demandez un code à votre clinique quand vous y serez.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>Vous avez un code de secours. Il n'est pas gardé ici, seulement sur votre papier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>Vous n'avez pas encore de code de secours.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>Créer un nouveau code</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>Créer un code</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>Les deux ne sont pas pareilles.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>Fait. Seule la nouvelle phrase secrète ouvre maintenant le journal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>Bien. Gardez le papier où vous seul le trouvez.</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>Le code n&apos;est plus affiché. S&apos;il n&apos;est pas sur votre papier, faites-en un nouveau.</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>Votre phrase secrète a aussi besoin de cet ordinateur : son trousseau, que votre session ouvre, garde l’autre moitié de la clé. Si cette moitié se perd, ou si le journal est déplacé, seul le code de secours ouvre le journal.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>Votre phrase secrète a aussi besoin de ce téléphone : il garde l’autre moitié de la clé. S’il la perd, seul le code de secours ouvre le journal.</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>Votre dernier code n’a pas été relu sur votre papier. S’il n’y est pas, faites-en un nouveau. Si cet appareil perd sa moitié de la clé, seul ce code ouvre le journal.</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>Cet appareil pourrait garder la moitié de votre clé. Il attend qu’un code ait été relu sur votre papier. Pour cela, faites un nouveau code.</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>Sur votre papier : groupe %1 sur %2</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>Ce n’est pas ce groupe. Regardez encore votre papier. S’il n’y est pas, montrez le code encore une fois.</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>Le code de secours de mon journal</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>Il ouvre le journal avec une nouvelle phrase secrète. Gardez-le où vous seul le trouvez.</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>Terminé. Imprimez la page, puis supprimez le fichier : qui le trouve peut ouvrir votre journal.</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Le fichier n'a pas pu être écrit à cet endroit. Choisissez-en un autre.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>Utilisez au moins %1 lettres. Quatre ou cinq mots se retiennent bien.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>Les deux ne sont pas pareilles.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>Ce n'est pas un code de secours. Il a 36 lettres et chiffres en neuf groupes. Vérifiez chacun.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>Ce code n'ouvre pas le journal. Seul le plus récent le fait.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>Cet ordinateur ne donne pas sa moitié de la clé. S’il demande le mot de passe de son trousseau, tapez-le d’abord. Puis réessayez. Si cela n’aide pas, utilisez votre code de secours.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>Ce téléphone ne donne pas sa moitié de la clé. Réessayez. Si cela n'aide pas, utilisez votre code de secours.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>Essayez d’abord encore une fois. Sans phrase secrète ni code, ce journal reste fermé. Vous pouvez vous relier de nouveau sur un autre appareil, ou sur celui-ci une fois les données de cette application supprimées : votre clinique montre un nouveau code. Retirer l’application ne supprime peut-être pas ses données. Les notes que vous avez envoyées reviennent. Les photos restent à votre clinique. Ce qui n’a pas été envoyé est perdu.</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>Un instant. Le journal cherche à quel point le verrou peut être solide sur ce téléphone.</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>Sur votre papier : groupe %1 et groupe %2</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>Cela ne correspond pas. Regardez encore votre papier. Si ce n’y est pas, montrez-la encore une fois.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n note est seulement sur ce téléphone et serait perdue.</numerusform>
            <numerusform>%n notes sont seulement sur ce téléphone et seraient perdues.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>Toutes vos notes sont aussi sur l'ordinateur de la clinique.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>Fait. C'est dans le dossier « %1 ». Qui l'ouvre peut le lire.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>Impossible d'écrire à cet endroit. Choisissez-en un autre.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n photo est seulement sur ce téléphone et serait perdue.</numerusform>
            <numerusform>%n photos sont seulement sur ce téléphone et seraient perdues.</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>Tapez d&apos;abord votre phrase secrète.</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>Tapez votre phrase secrète encore une fois.</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>Ce n&apos;est pas votre phrase secrète. Rien n&apos;a été enregistré ni supprimé.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Cet ordinateur ne donne pas sa moitié de la clé. S’il demande le mot de passe de son trousseau, tapez-le d’abord. Puis réessayez. Si cela n’aide pas, verrouillez le journal et utilisez votre code de secours.</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Ce téléphone ne donne pas sa moitié de la clé. Réessayez. Si cela n&apos;aide pas, verrouillez le journal et utilisez votre code de secours.</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>Tout n’a pas pu être écrit. Une partie est dans le dossier « %1 ». Quiconque l’ouvre peut la lire : supprimez le dossier.</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>Autre chose que vous avez écrit attend encore sur ce téléphone et serait perdu.</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>Un message ou une réponse qui attend encore sur ce téléphone serait perdu aussi.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>Encore un traitement ? Ce journal n'en contient qu'un. Enregistrez vos données, supprimez le journal, puis rejoignez de nouveau la clinique.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>Cela n'a pas sonné. Cet appareil a refusé.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>Journal</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>Rappel</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>Il y a quelque chose pour vous.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>Ouvrez votre journal, s'il vous plaît, pour qu'il continue.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>Dans 30 minutes</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>Cet appareil ne prend pas tous les rappels. Regardez votre journal chaque jour.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>Les rappels sonnent. Aucun n'est prévu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>Les rappels sonnent. Le prochain : %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>Les rappels sonnent. Le prochain : %1. Ouvrez le journal avant %2 pour qu'ils continuent.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>Cet appareil ne peut pas sonner. Ce qui est à faire est ici.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>Les rappels ne sonnent pas. Ce qui est à faire est ici.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>Les rappels ne sonnent pas encore. Ce qui est à faire est ici.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>Regardez le bord de votre écran. On doit y lire : « %1 »</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>Rappel de votre journal</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>Aucun rappel n'est prévu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Le fichier n'a pas pu être écrit à cet endroit. Choisissez-en un autre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>Fait. Ouvrez le fichier avec votre calendrier.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>Pour économiser l'énergie, ce téléphone peut sonner avec quelques minutes de retard.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>Désormais, les rappels sonnent. Essayez-en un avant de quitter la clinique.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>Visite de contrôle : %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 à %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>Habituel aujourd'hui, sur 10 : %1.</translation>
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
        <translation>Cette plage est une hypothèse pour l'instant. Elle ne vient pas encore de cas de votre clinique.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>Cette plage vient de %n cas de votre clinique.</numerusform>
            <numerusform>Cette plage vient de %n cas de votre clinique.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>Rien n'est écrit encore.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>Votre dernière note a été ouverte par %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>Votre dernière note est sur l'ordinateur de la clinique depuis %1. Personne ne l'a encore ouverte.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n note est enregistrée sur ce téléphone, pas encore à la clinique. Si c'est urgent, appelez.</numerusform>
            <numerusform>%n notes sont enregistrées sur ce téléphone, pas encore à la clinique. Si c'est urgent, appelez.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>%n nouveau message de la clinique</numerusform>
            <numerusform>%n nouveaux messages de la clinique</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>Continuer votre note</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>Noter comment ça va</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>Plus tard, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>Votre correction est sur l&apos;ordinateur de la clinique depuis %1. Personne ne l&apos;a encore ouverte. %2 a ouvert ce que vous aviez écrit avant, %3.</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>Ce téléphone contient une copie plus ancienne de votre journal. Une partie de ce que vous avez écrit manque peut-être ici. Appelez votre clinique, s&apos;il vous plaît.</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>Deux messages de la clinique ne vont pas ensemble. Appelez votre clinique avant d&apos;en suivre un.</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>Un message de la clinique manque ici. Appelez votre clinique, s&apos;il vous plaît.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>Ce téléphone n&apos;a rien reçu de la clinique depuis %1.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>Ce téléphone n&apos;a encore rien reçu de la clinique.</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>D&apos;après ce téléphone, ce que vous avez écrit n&apos;est pas à la clinique. Cela attend depuis %1.</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>Si vous êtes inquiet, appelez. N&apos;attendez pas de réponse ici.</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>Cela fait plus de %1 jours. Appelez votre clinique, s’il vous plaît. Gardez ce téléphone et ce programme : ce que vous avez écrit n’est peut-être nulle part ailleurs.</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>Votre clinique a besoin d&apos;une version plus récente de cette application. Mettez-la à jour, s&apos;il vous plaît. D&apos;ici là, ce que vous écrivez peut attendre sur ce téléphone.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>%n chose que vous avez écrite ici n&apos;est pas arrivée à la clinique. Montrez-la là-bas, s&apos;il vous plaît.</numerusform>
            <numerusform>%n choses que vous avez écrites ici ne sont pas arrivées à la clinique. Montrez-les là-bas, s&apos;il vous plaît.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>Visite de contrôle : %1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>Vous avez dit : fait.</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>Vous avez dit : pas fait.</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>Ce téléphone n&apos;est plus lié à la clinique. Ce que vous écrivez ici n&apos;arrive à personne, et les rappels ne sonnent pas ici. Prenez votre autre téléphone. S&apos;il n&apos;y en a pas, appelez votre clinique.</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>Le serveur entre vous est plein. Ce que vous écrivez n&apos;y entre pas.</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>Le serveur entre vous ne connaît plus ce téléphone.</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>Le serveur entre vous n&apos;accepte pas ce que ce téléphone envoie.</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>Cela reste sur ce téléphone, et le téléphone essaie de nouveau. Appelez votre clinique, s&apos;il vous plaît.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>L&apos;horloge de ce téléphone avance d&apos;environ %1. Réglez-la, s&apos;il vous plaît : vos rappels sonnent d&apos;après elle.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>L&apos;horloge de ce téléphone retarde d&apos;environ %1. Réglez-la, s&apos;il vous plaît : vos rappels sonnent d&apos;après elle.</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>Votre clinique a déplacé la visite. Avant, elle était : %1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>Qui appeler</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>Si vous êtes inquiet, appelez. Il ne faut pas de raison.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>Un appel va plus vite que le journal : la clinique n'a peut-être pas encore vu votre note.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>Vous avez une fièvre de 100,4 °F ou plus.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>Vous avez une fièvre de 38 °C ou plus.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>La douleur revient.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>Numéro d'urgence</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>Votre clinique</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>Si personne ne répond</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>Votre note n&apos;est ni enregistrée ni à la clinique.</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>Retour à votre note, pour l&apos;enregistrer à nouveau</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>L&apos;alerte reste dans votre journal</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>Vous êtes ailleurs ? Appelez le numéro d&apos;urgence de ce lieu.</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>Ce téléphone n&apos;a pas pu noter que vous avez lu l&apos;alerte. Elle revient quand vous ouvrirez le journal la prochaine fois.</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>La douleur est à 7 sur 10 ou plus.</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>Les deux premiers jours, un côté est plus gonflé et fait plus mal.</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>Deux de ces choses au même endroit : autre couleur, chaud, dur, plus sensible.</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>Un fil sort, et la peau y est chaude, sensible ou d&apos;une autre couleur.</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>Votre note n&apos;est pas encore enregistrée ni à la clinique. Vous pourrez la continuer après l&apos;appel.</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>Sur l'ordinateur de la clinique depuis %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>Enregistrée sur ce téléphone</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>Pas sur ce téléphone. Sur l'ordinateur de la clinique depuis %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>Pas sur ce téléphone. Elle est peut-être sur l'ancien.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>Votre côté gauche</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>Votre côté droit</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>De face</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>Photos : enregistrées sur ce téléphone</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>Photos : %1 sur %2 sur l'ordinateur de la clinique</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>Caméra, avec le dessin d'un visage où placer le vôtre</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>Utiliser l'autre caméra</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>La garder</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>Celle-ci n'est pas gardée</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>En prendre une autre</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>Choisir une image</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>Retour à ce que vous avez écrit</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>Une photo de vous</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Images (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>Quel côté</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>Dessin d'un visage : %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>Cet appareil n'a pas de caméra. Choisissez une image que vous venez de prendre.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>Chaque fois : la même lumière, la même distance, les cheveux hors du visage. Prenez les deux côtés.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>Les photos, c'est vous qui décidez. Si vous êtes inquiet, n'attendez pas d'en prendre une : appelez.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>L'image se prépare …</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>La photo : %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>Est-ce le bon côté ? Est-elle nette ? Est-elle de maintenant ? Sinon, prenez-en une autre.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>Le lieu et l'heure du fichier et le nom de votre appareil ne partent pas avec elle. Votre visage, oui.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>Prendre la photo</translation>
    </message>
    </context>
    <context>
        <name>PhotoThumb</name>
    <message>
        <location filename="../app/diary/PhotoThumb.qml" line="20"/>
        <source>Photograph. %1</source>
        <translation>Photo. %1</translation>
    </message>
    </context>
    <context>
        <name>PicturePage</name>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="23"/>
        <source>The photograph: %1</source>
        <translation>La photo : %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>Cela ne dit pas que quelqu'un l'a regardée. Si vous êtes inquiet, appelez.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>Elle part maintenant de ce téléphone. Elle part du serveur et des ordinateurs de la clinique à leur prochain échange. Ce que quelqu'un a copié ou imprimé reste.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>La retirer …</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>Dit d'abord ce que cela fait</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>La laisser</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>La retirer maintenant. C'est sans retour.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>Cette image ne s'ouvre pas. Choisissez-en une autre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>Cette image est trop grande. Choisissez-en une plus petite.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>Le journal lit les images JPEG et PNG. Choisissez-en une de ce type.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>Cette image est trop petite. Choisissez-en une plus grande.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>Cette image est abîmée. Choisissez-en une autre, ou prenez-en une nouvelle.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>Tournez la tête vers votre droite. La caméra voit votre joue gauche.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>Tournez la tête vers votre gauche. La caméra voit votre joue droite.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>Regardez droit la caméra, le visage détendu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>Elle sera sous %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>Enregistré sur ce téléphone : %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>Vous avez %1 photos. C'est le maximum. Retirez-en une pour en ajouter une autre.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>Ce téléphone n'a pas pu l'enregistrer. Réessayez.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>Ce téléphone est plein. Libérez de la place, puis gardez-la.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>La caméra ne répond pas. Choisissez plutôt une image.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>Le journal n'a pas accès à la caméra. Autorisez-le dans les réglages du téléphone, ou choisissez une image.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>Elle n'a pas pu être retirée. Réessayez.</translation>
    </message>
    </context>
    <context>
        <name>IdleNotice</name>
    <message>
        <source>Stay open</source>
        <translation>Laisser ouvert</translation>
    </message>
    </context>
    <context>
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>Numéro d&apos;urgence (Union européenne)</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>Numéro d&apos;urgence (Royaume-Uni)</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>Numéro d&apos;urgence (États-Unis)</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>Ambulance (Brésil)</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>Ambulance (Chine)</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>Ambulance (Suisse)</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>Ambulance (Turquie)</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>En fait, pas fait</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>En fait, fait</translation>
    </message>
    </context>
    <context>
        <name>CallButton</name>
    <message>
        <location filename="../app/diary/CallButton.qml" line="25"/>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="26"/>
        <source>Calls this number</source>
        <translation>Appelle ce numéro</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>Cet appareil ne peut pas appeler. Composez ce numéro sur un téléphone, s’il vous plaît :</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>Si aucun appel ne commence, composez ce numéro sur un téléphone :</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>J&apos;ai lu ceci</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>Cela reste avec votre note, sous Ce que j&apos;ai écrit</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>Un gonflement ou du sang dans le cou peut appuyer sur le passage de l&apos;air. Cela peut vite s&apos;aggraver.</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>Cela peut être du sang sous la peau du cou. Il peut appuyer sur le passage de l&apos;air.</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>Cela peut être une allergie grave. La gorge peut alors gonfler et il devient difficile de respirer.</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>Le produit anesthésiant agit peut-être sur tout le corps, pas seulement sur le visage.</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>Cela peut être un sepsis : une infection commence à nuire à tout le corps.</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>Cela peut être un AVC : une partie du cerveau reçoit trop peu de sang.</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>L&apos;œil, ou le sang qui y arrive, est peut-être en danger.</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>Cela peut être du sang qui s&apos;amasse sous la peau. On le suppose tant qu&apos;un médecin ne l&apos;a pas vu.</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>La peau y reçoit peut-être trop peu de sang. Quelque chose peut appuyer sur un vaisseau ou le boucher.</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>La fièvre peut vouloir dire qu&apos;il y a une infection.</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>Cela peut être une infection, aussi de la peau du visage. Près de l&apos;œil ou du nez, elle est plus dangereuse.</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>Des frissons peuvent venir avec une infection.</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>Cela peut être une infection qui s&apos;étend dans la peau.</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>Cela peut être du pus. Du pus peut venir avec une infection.</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>Un fil est en train de sortir. La peau y a peut-être aussi une infection.</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>Un nerf du visage est peut-être comprimé ou blessé. L&apos;anesthésie devrait être passée.</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>Une douleur aussi forte peut venir de sang sous la peau ou d&apos;une infection.</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>La glande de la joue qui fait la salive, ou son canal, est peut-être blessée.</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>Un vaisseau est peut-être encore ouvert.</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>Cela peut être une fuite d&apos;une artère, avec du sang autour.</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>Les chiffres seuls ne disent pas ce que c&apos;est. Appelez donc maintenant.</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>Cela peut être un danger pour vous en ce moment et vite s&apos;aggraver. C&apos;est pourquoi cela ne peut pas attendre.</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>Il faut peut-être des soins maintenant. C&apos;est pourquoi il faut appeler et ne pas attendre.</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>Cela peut être du sang sous la peau, ou une infection.</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>Montrer ce que je tape</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>Notez ceci maintenant sur papier, et gardez-le là où personne d&apos;autre ne le trouve. Vous le tapez pour ouvrir le journal, avec ou sans tirets.</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>Caché</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>La montrer</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>En tirer une autre</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>Je choisis la mienne</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>Deux groupes, pour être sûr que le papier est juste. Sans le papier, vous ne pourriez plus ouvrir votre journal.</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>La montrer encore une fois</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>Assez longue.</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>Assez longue. Mais peu de lettres, toujours les mêmes, se devinent vite.</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>Encore %n lettre.</numerusform>
            <numerusform>Encore %n lettres.</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>CodeBack</name>
    <message>
        <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
        <translation>Un groupe, pour être sûr que le papier est juste. Ensuite, le code n’est plus affiché.</translation>
    </message>
    <message>
        <source>It is on my paper</source>
        <translation>Il est sur mon papier</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Le montrer encore une fois</translation>
    </message>
    </context>
</TS>
