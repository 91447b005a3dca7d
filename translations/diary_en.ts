<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>CallList</name>
    <message>
        <location filename="../app/diary/CallList.qml" line="25"/>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <location filename="../app/diary/CallList.qml" line="26"/>
        <source>Calls this number</source>
        <translation>Calls this number</translation>
    </message>
</context>
<context>
    <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>Call the emergency number at once if one of these is true</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>Call your clinic the same day if one of these is true</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>This diary is no doctor and no medical device. It does not know everything.</translation>
    </message>
</context>
<context>
    <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>Camera: hold it over the code</translation>
    </message>
</context>
<context>
    <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>Call the emergency number now</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>Call your clinic now</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>Your clinic should hear of this</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>Bring this up at your visit</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. Then tell your clinic.</source>
        <translation>Do not wait and do not drive yourself. Then tell your clinic.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="37"/>
        <source>It is in your entry. They answer on the next working day. If it gets worse, call at once.</source>
        <translation>It is in your entry. They answer on the next working day. If it gets worse, call at once.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>It is in your entry. If it gets worse, call.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>Keep pressing with a clean cloth.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>Do not pull it and do not cut it. Cover it.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>This needs to be seen tonight, not tomorrow.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="67"/>
        <source>Your temperature is %1 °C.</source>
        <translation>Your temperature is %1 °C.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="69"/>
        <source>Your pain is %1 of 10.</source>
        <translation>Your pain is %1 of 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="71"/>
        <source>One side is much more swollen than the other.</source>
        <translation>One side is much more swollen than the other.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="88"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1, %2: %3 of 10. Usual on this day is up to %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="90"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1, %2: it went down to %3 and is at %4 again.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="92"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1: %2 on your left and %3 on your right.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="94"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1, %2: it takes longer than usual to go.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="96"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1, %2: it is still there.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="98"/>
        <source>You have not written for some days.</source>
        <translation>You have not written for some days.</translation>
    </message>
</context>
<context>
    <name>DiaryTimes</name>
    <message>
        <location filename="../app/diary/model/times.cpp" line="27"/>
        <source>d MMMM</source>
        <extracomment>A day and a month, as in &quot;22 March&quot;</extracomment>
        <translation>d MMMM</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="34"/>
        <source>today %1</source>
        <translation>today %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="36"/>
        <source>yesterday %1</source>
        <translation>yesterday %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="38"/>
        <source>tomorrow %1</source>
        <translation>tomorrow %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="40"/>
        <source>%1, %2</source>
        <extracomment>%1 is a date such as &quot;22 March&quot;, %2 a time</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="45"/>
        <source>Day %1</source>
        <translation>Day %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="51"/>
        <source>only today</source>
        <translation>only today</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="53"/>
        <source>until tomorrow</source>
        <translation>until tomorrow</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="54"/>
        <source>until day %1</source>
        <translation>until day %1</translation>
    </message>
</context>
<context>
    <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>Pain</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>Swelling</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>Bruising</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>Tightness</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>Twinges</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>Puckering</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>Numbness</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>How much does it hurt?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>How swollen is it?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>How much bruise is there?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>How tight does it feel?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>How much do you feel sharp stabs?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>How deep is a dimple or fold?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>How numb is the skin?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 is none</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 is the worst you can think of</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>Your left</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>Your right</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>your left</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>your right</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>It is hard to breathe, or I can not swallow my spit.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>My neck, or under my jaw, swells up fast.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>My tongue or throat swells, I wheeze, or I feel faint.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>Metal taste, ringing ears, twitching, or I feel mixed up.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>I shake hard, feel mixed up, or pass no urine all day.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>My face droops and an arm is weak or my speech is slurred.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>I suddenly see less, or I see double.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>One side keeps getting fuller by the hour.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>Skin turned white, grey or like a net, is cold, or has blisters.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>It feels warmer to the back of my hand than the other side.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>It is firm, shiny or tight.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>It is more sore to touch than yesterday.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>The edge has spread past where it was.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>Thick yellow, green or milky fluid comes out.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>The end of a thread shows through the skin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>I can not close an eye or lift a brow, or my smile is crooked.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>My cheek swells when I eat, or clear fluid runs.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>It still bleeds after 15 minutes of firm pressing.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>There is a lump that beats like a pulse.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>I can see or feel a thread. The skin is calm.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>I have chills.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>Dressings off</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>Entry points clean and dry</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>Sleep on your back</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>Spare your face</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>Cold pack</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>No make-up yet</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>No face massage</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>No dentist if it can wait</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>Walk, but no sport</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>No sauna, hot bath or pool</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>Stay out of the sun</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>No alcohol</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>No smoking</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>No shaving</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>Write down how it is</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>Your follow-up visit</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>From your clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>Leave them on until you are home this evening. They keep the entry points clean.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>Wash with care and do not rub. The small holes need time to close.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>Raise your head a little. Lying on your face can move a thread.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>Small bites, no wide yawns or big laughs. The threads need calm to settle.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>Ten minutes, with a cloth between. It can ease swelling.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>Keep it off the entry points until they have closed.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>Pressing on your face can move a thread.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>Sport raises the blood flow and can add swelling.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>Heat can add swelling, and pools can carry germs.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>Sun can darken a bruise for a long time.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>It can add bruising and swelling.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>Smoke slows healing. As long as you can is best.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>A blade can open the entry points.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It takes under a minute. It shows early if something is off.</source>
        <translation>It takes under a minute. It shows early if something is off.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>Your clinic will look at how it went.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>That passphrase does not open the diary. Try again.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>Too many tries. Please wait %1 seconds.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary&apos;s file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>The diary&apos;s file is damaged. Nothing was deleted. Call your clinic.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>This phone is full. What you typed is still here. Free some space, then save again.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>This phone could not save. What you typed is still here. Try again.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>No network right now. It will be sent later.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>This code is over. Ask your clinic for a new one.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>This code was used before. Tell your clinic now and ask for a new one.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>This code can not be read. Check each letter.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>This is not from your clinic. Nothing was joined. Tell your clinic.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>Nothing is answered yet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>A value is out of range. Please check it.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>That did not work. Try again, or call your clinic.</translation>
    </message>
</context>
<context>
    <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="39"/>
        <source>Done</source>
        <translation>Done</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="45"/>
        <source>Not done</source>
        <translation>Not done</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="57"/>
        <source>Reminds you later: %1</source>
        <translation>Reminds you later: %1</translation>
    </message>
</context>
<context>
    <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="59"/>
        <source>Correct</source>
        <translation>Correct</translation>
    </message>
</context>
<context>
    <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>Save</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>Question %1</translation>
    </message>
</context>
<context>
    <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 of 10</translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>Nothing yet. Your first entry will stand here.</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>Use this code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>Start over</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>A picture of the code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Pictures (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>Do this at your clinic. Your clinic shows a code on its screen.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="63"/>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>This device has no camera. Choose a picture of the code, or type it.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>Choose a picture</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>Or type the code, 24 letters and digits</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>The address under the code</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>Asking your clinic …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>Keep this page open. Next comes a number to compare.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>Read this number to your clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>They must see the same six digits. If not, tell them and start over.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>You have joined. Your care plan is on its way …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="127"/>
        <source>Keep this page open until the plan is here.</source>
        <translation>Keep this page open until the plan is here.</translation>
    </message>
</context>
<context>
    <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="17"/>
        <source>Make my diary</source>
        <translation>Make my diary</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="17"/>
        <source>Open my diary</source>
        <translation>Open my diary</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="25"/>
        <source>Language</source>
        <translation>Language</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="32"/>
        <source>A diary that only you can open</source>
        <translation>A diary that only you can open</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="32"/>
        <source>Your diary is locked</source>
        <translation>Your diary is locked</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="37"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. If you lose it, what was not sent is lost.</source>
        <translation>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. If you lose it, what was not sent is lost.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="53"/>
        <source>The same once more</source>
        <translation>The same once more</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>What leaves this phone</source>
        <translation>What leaves this phone</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="77"/>
        <source>Only what you write, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>Only what you write, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="84"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>If you are worried, do not look for the passphrase. Touch “I need help”.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Ebbline diary</translation>
    </message>
</context>
<context>
    <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>Your note</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>Send when there is a network</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>The clinic may read this only on the next working day. If it is urgent, call.</translation>
    </message>
</context>
<context>
    <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="36"/>
        <source>Correct it</source>
        <translation>Correct it</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="36"/>
        <source>Close</source>
        <translation>Close</translation>
    </message>
</context>
<context>
    <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>Temperature, if you measured it</translation>
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
        <translation>In your own words, if you like</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>Also ask about twinges and numbness</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="52"/>
        <source>Throw this entry away</source>
        <translation>Throw this entry away</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Language</source>
        <translation>Language</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Text size</source>
        <translation>Text size</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="23"/>
        <source>Usual</source>
        <translation>Usual</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="23"/>
        <source>Large</source>
        <translation>Large</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="23"/>
        <source>Very large</source>
        <translation>Very large</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="29"/>
        <source>Look</source>
        <translation>Look</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="30"/>
        <source>Light</source>
        <translation>Light</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="30"/>
        <source>Dark</source>
        <translation>Dark</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="30"/>
        <source>High contrast</source>
        <translation>High contrast</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="36"/>
        <source>Less motion</source>
        <translation>Less motion</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="42"/>
        <source>Send and fetch now</source>
        <translation>Send and fetch now</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Lock the diary</source>
        <translation>Lock the diary</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="52"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</translation>
    </message>
</context>
<context>
    <name>SignsStep</name>
    <message>
        <location filename="../app/diary/SignsStep.qml" line="16"/>
        <source>Touch each one that is true now.</source>
        <translation>Touch each one that is true now.</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="18"/>
        <source>Write down how it is</source>
        <translation>Write down how it is</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="44"/>
        <source>Now</source>
        <translation>Now</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="58"/>
        <source>Your course</source>
        <translation>Your course</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="84"/>
        <source>Next</source>
        <translation>Next</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="97"/>
        <source>To keep today</source>
        <translation>To keep today</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="114"/>
        <source>What I wrote</source>
        <translation>What I wrote</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="119"/>
        <source>Notes with the clinic</source>
        <translation>Notes with the clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="124"/>
        <source>Settings</source>
        <translation>Settings</translation>
    </message>
</context>
<context>
    <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="30"/>
        <source>Back</source>
        <translation>Back</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="44"/>
        <source>I need help</source>
        <translation>I need help</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="45"/>
        <source>Shows whom to call</source>
        <translation>Shows whom to call</translation>
    </message>
</context>
<context>
    <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>I have read this</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="18"/>
        <source>The warning stays in your diary</source>
        <translation>The warning stays in your diary</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>Why</translation>
    </message>
</context>
<context>
    <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="86"/>
        <source>Ebbline diary</source>
        <translation>Ebbline diary</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="87"/>
        <source>Join your clinic</source>
        <translation>Join your clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="89"/>
        <source>Correct this entry</source>
        <translation>Correct this entry</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="89"/>
        <source>How is it?</source>
        <translation>How is it?</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="91"/>
        <source>Whom to call</source>
        <translation>Whom to call</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="92"/>
        <source>What I wrote</source>
        <translation>What I wrote</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="93"/>
        <source>Notes with the clinic</source>
        <translation>Notes with the clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="94"/>
        <source>Settings</source>
        <translation>Settings</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="226"/>
        <source>Saved on this phone.</source>
        <translation>Saved on this phone.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="228"/>
        <source>: </source>
        <translation>: </translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="262"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>A message between you and the clinic is missing. Call the clinic, please.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="264"/>
        <source>Done. All is sent and fetched.</source>
        <translation>Done. All is sent and fetched.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="281"/>
        <source>This device can not reach a clinic.</source>
        <translation>This device can not reach a clinic.</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="76"/>
        <source>%1 of %2</source>
        <extracomment>&quot;2 of 7&quot;: the place of a question among all</extracomment>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="88"/>
        <source>Is any of this true?</source>
        <translation>Is any of this true?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="89"/>
        <source>Anything else?</source>
        <translation>Anything else?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="96"/>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="112"/>
        <source>Last time %1</source>
        <translation>Last time %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Next</source>
        <translation>Next</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Skip this one</source>
        <translation>Skip this one</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="136"/>
        <source>None of these</source>
        <translation>None of these</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="136"/>
        <source>Only what I ticked</source>
        <translation>Only what I ticked</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="152"/>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="154"/>
        <source>%1: right %2, left %3</source>
        <extracomment>A symptom with its scores: &quot;Swelling: right 3, left 4&quot;</extracomment>
        <translation>%1: right %2, left %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="262"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>Please type a value from 86 to 113 °F.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="262"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>Please type a value from 30 to 45 °C.</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="24"/>
        <source>%1: right %2, left %3</source>
        <translation>%1: right %2, left %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="27"/>
        <source>Temperature: %1 °C</source>
        <translation>Temperature: %1 °C</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="37"/>
        <source>Opened by %1, %2</source>
        <translation>Opened by %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="39"/>
        <source>On the clinic&apos;s computer since %1</source>
        <translation>On the clinic&apos;s computer since %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="42"/>
        <source>Saved on this phone</source>
        <translation>Saved on this phone</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="63"/>
        <source>Written later, %1.</source>
        <translation>Written later, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="65"/>
        <source>Corrected. The first version is kept.</source>
        <translation>Corrected. The first version is kept.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="71"/>
        <location filename="../app/diary/model/history_board.cpp" line="93"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="92"/>
        <source>You, %1</source>
        <translation>You, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="95"/>
        <source> (read by the clinic)</source>
        <translation> (read by the clinic)</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>No network right now. The diary keeps trying.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>There is no code in this picture. Try another, or type the code.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>A typed code also needs the address under it.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>This device can not reach a clinic.</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="22"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>Use at least %1 letters. Four or five words are easy to keep in mind.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="24"/>
        <source>These two are not the same.</source>
        <translation>These two are not the same.</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="28"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>Follow-up visit: %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="40"/>
        <source>%1 %2 to %3</source>
        <extracomment>&quot;Swelling 2 to 6&quot;: a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 to %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="43"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as &quot;Swelling 2 to 6, Pain 1 to 5&quot;</extracomment>
        <translation>Usual today, of 10: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="43"/>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="52"/>
        <source>This range is an assumption for now. It is not yet made from courses at your clinic.</source>
        <translation>This range is an assumption for now. It is not yet made from courses at your clinic.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="53"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>This range comes from %n course at your clinic.</numerusform>
            <numerusform>This range comes from %n courses at your clinic.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="59"/>
        <source>Nothing is written down yet.</source>
        <translation>Nothing is written down yet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="63"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>Your last entry was opened by %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="66"/>
        <source>Your last entry is on the clinic&apos;s computer since %1. Nobody has opened it yet.</source>
        <translation>Your last entry is on the clinic&apos;s computer since %1. Nobody has opened it yet.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="70"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n entry is saved on this phone, not with the clinic yet. If it is urgent, call.</numerusform>
            <numerusform>%n entries are saved on this phone, not with the clinic yet. If it is urgent, call.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="81"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>%n new note from the clinic</numerusform>
            <numerusform>%n new notes from the clinic</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="137"/>
        <source>Later, %1</source>
        <translation>Later, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="148"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="39"/>
        <source>Whom to call</source>
        <translation>Whom to call</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="45"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>If you are worried, call. You do not need a reason.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="67"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>A call is faster than the diary: the clinic may not have seen your entry yet.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="78"/>
        <source>You can not breathe or swallow.</source>
        <translation>You can not breathe or swallow.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="78"/>
        <source>Your neck or tongue swells fast.</source>
        <translation>Your neck or tongue swells fast.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="78"/>
        <source>You faint.</source>
        <translation>You faint.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="79"/>
        <source>You suddenly see less, or see double.</source>
        <translation>You suddenly see less, or see double.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="79"/>
        <source>Your face droops and an arm is weak.</source>
        <translation>Your face droops and an arm is weak.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="84"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>You have a fever of 38 °C or more.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="84"/>
        <source>Fluid like pus comes out.</source>
        <translation>Fluid like pus comes out.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="84"/>
        <source>One side keeps swelling.</source>
        <translation>One side keeps swelling.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="85"/>
        <source>Pain comes back.</source>
        <translation>Pain comes back.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="85"/>
        <source>Skin turns white, grey or cold.</source>
        <translation>Skin turns white, grey or cold.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="94"/>
        <source>Emergency number (European Union)</source>
        <translation>Emergency number (European Union)</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="97"/>
        <source>Emergency number</source>
        <translation>Emergency number</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="100"/>
        <source>Your clinic</source>
        <translation>Your clinic</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>If nobody answers</source>
        <translation>If nobody answers</translation>
    </message>
</context>
</TS>
