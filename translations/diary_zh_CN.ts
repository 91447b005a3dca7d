<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="zh_CN">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>提醒时响铃</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>不响铃</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>响一次试试</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>收起</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>只要有一条属实，请马上拨打急救电话</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>只要有一条属实，请当天打电话给诊所</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>这本日记不是医生，也不是医疗器械。它并非什么都知道。</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>相机：对准代码</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>现在拨打急救电话</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>现在打电话给诊所</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>诊所应该知道这件事</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>请在复诊时说起</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>不要等，不要自己开车。没有人接就再打，并请身边的人帮忙。之后告诉诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>请打电话，不要写。没有人接就打第二个号码。30 分钟内没有人接，请去急诊。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>它在您的记录里。如果变重，请打电话。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>如果给过您肾上腺素笔，请使用。平躺，抬高双腿。如果呼吸困难，请坐起来。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>用干净的布继续按住。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>不要拉，也不要剪。把它盖住。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>这需要今晚就看，不要等到明天。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>可能是麻药的作用。治疗后 8 小时应该消失。如果没有，请打电话。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>您的体温是 %1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>您的疼痛是 10 分中的 %1 分。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>一侧比另一侧肿得多。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1，%2：10 分中的 %3 分。这一天通常不超过 %4 分。</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1，%2：原来是 %3，现在是 %4。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1，%2：曾降到 %3，现在又到 %4。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1：左侧 %2，右侧 %3。</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>总体来看，您的左右两侧相差 %1 分。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1，%2：比通常消退得慢。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1，%2：还在。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>您已经几天没有写了。</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>总体来看，比这一天通常的情况要重。</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>总体来看，比通常消退得慢。</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>您后来更改或补充过这一条。建议仍然有效。</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>诊所后来更改了您的治疗记录。建议仍然有效。</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>它在您的记录里。如果到下一个工作日还没有回音，请打电话。如果变重，请马上打电话。</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>高于通常范围，%1 到 %2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>低于通常范围，%1 到 %2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>在通常范围内，%1 到 %2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>还没有写。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1：10 分中的 %2 分。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>目前最高：%1，第 %2 天。</translation>
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
        <translation>%1：右 %2，左 %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>体温：%1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>我的日记</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>治疗：%1。诊所：%2。制作于 %3。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>分数从 0（没有）到 10（能想到的最重）。左右是我自己的左右。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>更正之前：</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>留言</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>我</translation>
    </message>
    </context>
    <context>
        <name>DiaryTimes</name>
    <message>
        <location filename="../app/diary/model/times.cpp" line="33"/>
        <source>d MMMM</source>
        <extracomment>A day and a month, as in "22 March"</extracomment>
        <translation>M月d日</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="40"/>
        <source>today %1</source>
        <translation>今天 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>昨天 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>明天 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="46"/>
        <source>%1, %2</source>
        <extracomment>%1 is a date such as "22 March", %2 a time</extracomment>
        <translation>%1，%2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="53"/>
        <source>Today</source>
        <translation>今天</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>昨天</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>第 %1 天</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>只在今天</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>到明天</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>到第 %1 天</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n 分钟</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n 小时</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n 天</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>疼痛</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>肿胀</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>淤青</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>紧绷</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>刺痛</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>凹陷</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>麻木</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>有多疼？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>有多肿？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>有多少淤青？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>感觉有多紧？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>有多少针刺般的痛？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>凹陷或褶皱有多深？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>皮肤有多麻？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 是没有</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 是能想到的最重</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>您的左侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>您的右侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>您的左侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>您的右侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>呼吸困难，或咽不下口水。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>脖子或下巴下面很快肿起来。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>舌头或喉咙肿了、呼吸有哨声，或快要昏倒。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>嘴里有金属味、耳鸣、抽动，或头脑不清。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>抖得厉害、头脑不清，或整天没有尿。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>脸下垂，同时一只手臂无力或说话不清。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>突然看不清，或看到重影。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>一侧每小时都更鼓。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>皮肤变白、变灰或像网一样，发冷，或有水泡。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>进针点旁边的皮肤比另一侧更红、更紫、更灰或更暗。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>用手背摸，比另一侧更热。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>它发硬、发亮或绷紧。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>碰起来比昨天更痛。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>边缘超出了原来的地方。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>流出黄色、绿色或乳白色的稠液体。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>线头从皮肤里露出来。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>一只眼闭不上、抬不起眉毛，或笑起来歪。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>吃东西时脸颊肿，或流出清液体。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>用力按 15 分钟后还在流血。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>有一个像脉搏一样跳动的包。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>能看到或摸到线。皮肤平静。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>我打寒战。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>取下敷料</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>进针点干净、干燥</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>仰着睡</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>让脸休息</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>冷敷</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>先不要化妆</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>不要按摩脸</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>能等就先不看牙</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>可以走路，不要运动</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>不要桑拿、热水澡或泳池</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>不要晒太阳</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>不喝酒</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>不抽烟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>不刮脸</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>写下现在怎么样</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>您的复诊</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>来自您的诊所</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>今晚到家之前不要取下。它们让进针点保持干净。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>小心清洗，不要搓。小孔需要时间闭合。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>把头垫高一点。脸朝下躺可能会移动线。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>小口吃，不要大张嘴打哈欠或大笑。线需要安静才能固定。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>十分钟，中间隔一块布。可以减轻肿胀。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>进针点闭合之前，不要涂在上面。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>按压脸部可能会移动线。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>张大嘴会拉扯线。如果疼，先打电话给诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>运动会加快血流，可能更肿。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>热会加重肿胀，泳池可能有细菌。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>太阳会让淤青变深很久。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>可能加重淤青和肿胀。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>烟会让愈合变慢。能坚持多久就多久。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>刀片可能会弄开进针点。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>很短。有问题时，可能早看出来。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>诊所会看恢复得怎么样。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>这个口令打不开日记。请再试一次。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>尝试太多次。请等 %1 秒。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>日记的文件损坏了。没有删除任何内容。请打电话给诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>这部手机满了。您输入的内容还在。请腾出空间再保存。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>这部手机没能保存。您输入的内容还在。请再试一次。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>现在没有网络。稍后会发送。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>这个代码过期了。请向诊所要一个新的。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>这个代码以前用过。请现在告诉诊所并要一个新的。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>这个代码读不出来。请核对每个字母。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>这不是来自您的诊所。没有加入任何东西。请告诉诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>还没有回答任何问题。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>有一个数值超出范围。请检查。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>没有成功。请再试一次，或打电话给诊所。</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>通往这家诊所的线路没有加密：别人可能会看到。没有发送任何内容。请告诉诊所。</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>做了</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>没做</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>稍后再提醒：%1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>继续更正</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>更正</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>收起以前的内容</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>以前写的内容</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>该怎么做</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>收起该怎么做</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>问题 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>保存，再加照片</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>那时的情况</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>现在的情况</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>再看一遍问题</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1：10 分中的 %2 分</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>补记较早的时刻</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>还没有内容。您的第一条记录会出现在这里。</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>加照片</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>使用这个代码</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>重新开始</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>代码的图片</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>图片 (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>请在诊所里做这一步。诊所会在屏幕上显示一个代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>选择图片</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>或输入代码，24 个字母和数字</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>代码下面的地址</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>正在询问诊所 …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>请不要离开此页。接下来会有一个要核对的数字。</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>请把这个数字读给诊所听</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>他们看到的六位数字必须相同。如果不同，请告诉他们并重新开始。</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>您已加入。护理计划正在送来 …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>如果现在关上日记，再打开时会继续。</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>语言和字体大小</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>是，我在诊所</translation>
    </message>
    <message>
        <source>No</source>
        <translation>不在</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>您现在在诊所里吗？</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>任何人都可以发给您一张代码的图片。那样您写的内容就会传到对方那里。在诊所里，您能看到代码是从哪里来的。</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>请写在纸上。它只显示这一次。以前的代码不再有效。</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>我写好了</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>恢复代码</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>如果您丢失口令，这个代码可以打开日记。那时没有别人能帮您。</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>您的口令，用来生成代码</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>更改口令</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>您现在的口令</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>新口令</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>再输入一次新口令</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>还没有写入任何内容。</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>把页面放在哪里</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>可打印的页面 (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>保存为可打印的页面</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>您还在输入的内容留在这里。您的口令和设置也一样。</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>只有您写的内容、您在这里保留的照片、您对提醒的回答，以及您看过警告这件事。内容为您的诊所密封。中间的服务器读不了它，只能看到大小、时间和您的网络地址。</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>建立我的日记</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>打开我的日记</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>设定这个口令</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>语言</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>只有您能打开的日记</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>用您的代码打开</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>您的日记已上锁</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>请选一个口令。它锁住这部手机上的日记。没有人能重置它，诊所也不能。之后请在“设置”里生成一个恢复代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>您纸上的恢复代码</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>新口令</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>口令</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>再输入一次</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>我记得口令</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>我丢失了口令</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>什么会离开这部手机</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>如果您担心，不要去找口令。请点“我需要帮助”。</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>替我抽一个</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>随机的字母和数字，写在纸上保存</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>两样都丢了</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>还没有写入任何内容。</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>已写在纸上</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Ebbline 日记</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>有一会儿没有使用了。日记半分钟后会上锁。您写的内容都会保留。</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>把您的数据放在哪里</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>什么会离开这部手机</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>带走</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>把我的数据存到文件夹</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>删除日记</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>这会把日记从这部手机上移除。诊所会保留它已有的内容：如果也想删除，请问诊所。之后不再有提醒，也不再有警告。</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>删除日记 …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>保留</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>现在删除。无法恢复。</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>您写的全部内容，有可打印的页面 (PDF)、表格 (CSV) 和供其他健康程序使用的文件 (FHIR)，还有您的照片。没有网络也能用。</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>您的口令，用来保存全部</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>您的口令，用来删除全部</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>日期</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>时间</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>另一个时间</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>是更早的事</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>设定所说的日期和时间</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>不，说的是现在</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>您的留言</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>有网络时发送</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>诊所可能到下一个工作日才看。如果很急，请打电话。</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>更正它</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>关闭</translation>
    </message>
    </context>
    <context>
        <name>NoticesPage</name>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="14"/>
        <source>Version %1</source>
        <translation>版本 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="19"/>
        <source>The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.</source>
        <translation>日记是在他人成果的基础上完成的。这里列出它使用了什么，以及由谁完成。许可证文本为英文。</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>组成部分</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>许可证</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>显示文本</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>把日历文件放在哪里</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>日历 (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>提醒时响铃</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>别人可能看到您的屏幕。所以它只说有事找您，从不说是什么事。</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>响一次试试</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>夜间安静</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>安静从</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>到</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>落在这段时间里的提醒，会在结束时出现。晚上的提醒，会在这段时间开始前出现。</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>也放进您的日历</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>日历文件里只有时间。每个时间只写着“日记提醒”。许多日历会把内容复制到服务器上。</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>计划或复诊时间有变时，请重新制作文件。日历之前收下的内容会留在那里，直到您删除。</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>生成日历文件</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>让提醒准时响铃</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>体温，如果您量过</translation>
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
        <translation>如果愿意，用您自己的话写</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>也问刺痛和麻木</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>丢弃这条记录……</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>会先问一下</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>不，保留</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>是，丢弃</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>提醒</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>锁</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>口令和恢复代码</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>我的数据</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>什么会离开这部手机、带走、删除</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>语言</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>文字大小</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>普通</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>大</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>很大</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>外观</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>浅色</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>深色</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>高对比度</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>体温单位</translation>
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
        <translation>减少动画</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>现在发送和接收</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>锁上日记</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline 是采用 GPL 3 的自由软件。它不是经过认证的医疗器械，不能代替您的诊所或急救服务。</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>关于 Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>版本、作者和许可证</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>无触摸多久后上锁（分钟）</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>请点每一条现在属实的。继续的按钮在最后一条之后。</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>现在</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>您的恢复过程</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>接下来</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>今天要遵守</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>我写的内容</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>与诊所的留言</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>今天已回答</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>该给谁打电话</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>更多曲线</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>收起曲线</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>返回</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>我需要帮助</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>显示该打给谁</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>我已阅读</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>这可能说明什么</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>您的日记已不在这台设备上。</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>Ebbline 日记</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>加入您的诊所</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>更正这条记录</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>现在怎么样？</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>该打给谁</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>我写的内容</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>与诊所的留言</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>设置</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>提醒</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>锁</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>我的数据</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>已保存在这部手机上。</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>您和诊所之间缺少一条消息。请打电话给诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>完成。全部已发送和接收。</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>您写的内容还有一些留在这部手机上没有发出。如果紧急，请打电话。</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>这条记录是您之前开始的。请先保存或放弃，然后再补充之前的时刻。</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>这台设备联系不到任何诊所。</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>关于 Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>照片</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>已收回。它不再在这部手机上。</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1。该怎么做写在当天的页面上。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>第 %1 项，共 %2 项</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>有哪一条属实吗？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>还有别的吗？</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1，%2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>上次 %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>接下来</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>跳过这个</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>都没有</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>只有我勾选的</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>请输入 86 到 113 °F 之间的数值。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>请输入 30 到 45 °C 之间的数值。</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>您告诉日记：</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>如果是真的：%1。</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>要丢弃您在这里写的一切吗？丢弃后无法恢复。</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>%1 看起来是 °F。请选择 °F，或输入 30 到 45 °C 之间的数值。</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>%1 看起来是 °C。请选择 °C，或输入 86 到 113 °F 之间的数值。</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>请检查体温，然后再保存一次。</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>这里写满了。后面的内容不会保存。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>说的是 %1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>说的是现在。</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>您是在%1开始写的。写的是那时的情况，还是现在的情况？</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>%1 已打开，%2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>%1 起在诊所的电脑上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>已保存在这部手机上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>后来补写，%1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>%1 更正。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>%1 所写：</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>说的是 %1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>您，%1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>诊所还没有看</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>诊所已看，%1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>您已看，%1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1。%2 打开过您之前写的内容，%3。您的更正还没有人打开。</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>这条留言太长，发不出去。请先发一部分，其余的再发一条。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>现在没有网络。日记会继续尝试。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>这张图片里没有代码。请换一张，或输入代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>输入代码时还需要它下面的地址。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>这台设备联系不到任何诊所。</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>这不是诊所的代码。请使用诊所屏幕上显示的代码。</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>这张图片打不开。请换一张，或输入代码。</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>日记没有使用相机的权限。请选一张代码的图片，或输入代码。您可以在手机设置里允许使用相机。</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>相机现在不能用。它可能正被使用。请选一张代码的图片，或输入代码。</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>这台设备没有相机。请选一张代码的图片，或输入代码。</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>诊所的地址没有回应。请检查代码下面的地址有没有输错，以及这部手机有没有网络。日记会继续尝试。</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>这本日记里已有一次治疗，也只能有一次。请在设置中打开“我的数据”。在那里保存您的数据，然后删除日记，再重新加入。</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>没有加入任何诊所。等您到了诊所，再请他们给您一个代码。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>您有一个恢复代码。它不存放在这里，只在您的纸上。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>您还没有恢复代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>生成新代码</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>生成代码</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>两次输入不同。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>完成。从现在起，只有新口令能打开日记。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>好。请把纸放在只有您能找到的地方。</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>恢复码不再显示。如果您的纸上没有写下，请重新生成一个。</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>您的口令还需要这台电脑：另一半密钥由电脑的钥匙串保存，您登录时它会打开。如果那一半丢失了，或者日记被移到别处，只有恢复代码能打开日记。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>您的口令还需要这部手机：另一半密钥由它保存。如果手机丢失了那一半，只有恢复代码能打开日记。</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>您最新的恢复码还没有照着纸读回过。如果纸上没有，请重新生成一个。如果本设备丢失了它那一半密钥，只有这个恢复码能打开日记。</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>本设备可以保存您密钥的一半。要等到您照着纸读回一个恢复码之后才会保存。为此，请重新生成一个恢复码。</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>您纸上的第%1组，共%2组</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>这不是所问的一组。请再看一遍纸。如果纸上没有，请再显示一次代码。</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>我的日记的恢复代码</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>它可用新的口令打开日记。请放在只有您能找到的地方。</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>完成。请打印页面，然后删除文件：谁找到它，谁就能打开您的日记。</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>文件无法写在那里。请选别的地方。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>请至少用 %1 个字符。四五个词容易记住。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>两次输入不同。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>这不是恢复代码。它有 36 个字母和数字，分九组。请逐个核对。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>这个代码打不开日记。只有最新的才行。</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>这台电脑没有给出它那一半密钥。如果它要求输入钥匙串的密码，请先输入。然后再试一次。如果没有用，请使用您的恢复代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>这部手机没有给出它那一半密钥。请再试一次。如果没有用，请使用您的恢复代码。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>请先再试一次。没有口令和代码，这本日记会一直关着。您可以在另一台设备上重新加入，或者在删除这个应用的数据之后在这台设备上重新加入：诊所会显示新的代码。移除应用不一定会删除它的数据。您发送过的记录会回来。照片留在诊所。没有发送的内容会丢失。</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>请稍候。日记正在确定这部手机上的锁可以有多强。</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>您纸上的第%1组和第%2组</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>这与抽取的内容不符。请再看一遍纸。如果纸上没有，请再显示一次。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n 条记录只在这部手机上，会丢失。</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>您的全部记录也在诊所的电脑上。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>完成。在文件夹“%1”里。谁打开都能看。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>无法写在那里。请选别的地方。</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n 张照片只在这部手机上，会丢失。</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>请先输入您的口令。</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>请再输入一次您的口令。</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>这不是您的口令。什么都没有保存，也没有删除。</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>这台电脑没有给出它那一半密钥。如果它要求输入钥匙串的密码，请先输入。然后再试一次。如果没有用，请锁上日记，再使用您的恢复代码。</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>这部手机没有给出它那一半密钥。请再试一次。如果没有用，请锁上日记，再使用您的恢复代码。</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>没能全部写入。一部分在文件夹“%1”里。打开它的人都能读到：请删除这个文件夹。</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>您写的其他内容还在这部手机上等待发送，会丢失。</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>还在这部手机上等待发送的留言或回答也会丢失。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>又做了一次治疗？这本日记只能有一次治疗。请保存您的数据，删除日记，再重新加入。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>没有响。这台设备拒绝了。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>日记</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>提醒</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>有事找您。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>请打开您的日记，好让它继续。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>打开</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>30 分钟后</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>这台设备不接受全部提醒。请每天看日记。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>提醒会响。没有下一个。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>提醒会响。下一个：%1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>提醒会响。下一个：%1。请在 %2 之前打开日记，好让提醒继续。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>这台设备不能响铃。该做的事都在这里。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>提醒不响。该做的事都在这里。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>提醒还不会响。该做的事都在这里。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>请看屏幕边上。应该写着：“%1”</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>日记提醒</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>没有下一个提醒。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>文件无法写在那里。请选别的地方。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>完成。请用您的日历打开这个文件。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>为了省电，这部手机可能会晚几分钟响铃。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>提醒现在会响了。离开诊所前，请试一次。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>复诊：%1，%2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 到 %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>今天通常（满分 10）：%1。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>, </source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>，</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="53"/>
        <source>This range is an assumption for now. It is not yet made from courses at your clinic.</source>
        <translation>这个范围目前是假设，还不是来自您诊所的病程。</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>这个范围来自您诊所的 %n 个病程。</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>还没有写任何内容。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>您的上一条记录已由 %1 打开，%2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>您的上一条记录 %1 起在诊所的电脑上。还没有人打开。</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n 条记录保存在这部手机上，还没到诊所。如果很急，请打电话。</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>诊所有 %n 条新留言</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>继续您的记录</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>写下现在怎么样</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>稍后，%1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1，%2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>您的更正 %1 起在诊所的电脑上。还没有人打开。%2 打开过您之前写的内容，%3。</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>这部手机上是较旧的日记副本。您写的一些内容这里可能没有。请打电话给您的诊所。</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>诊所的两条消息对不上。照做之前，请先打电话给您的诊所。</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>这里缺少诊所的一条消息。请打电话给您的诊所。</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>自 %1 起，这部手机没有收到诊所的任何消息。</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>这部手机还没有收到诊所的任何消息。</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>就这部手机所知，您写的内容还没到诊所。从 %1 起一直在等待。</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>如果您担心，就打电话。不要在这里等回复。</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>已经超过 %1 天了。请给您的诊所打电话。请保留这部手机和这个程序：您写的内容可能别处都没有。</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>您的诊所需要这个应用的新版本。请更新它。在那之前，您写的内容可能会留在这部手机上等待。</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>您在这里写的 %n 项没有送到诊所。请到诊所出示。</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>复诊：%1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>您说：做了。</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>您说：没做。</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>这部手机不再与诊所相连。您在这里写的内容不会送到任何人手里，提醒也不会在这里响。请用您的另一部手机。如果没有，请打电话给诊所。</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>中间的服务器已满，您写的内容放不进去。</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>中间的服务器不再认识这部手机。</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>中间的服务器不接收这部手机发送的内容。</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>内容留在这部手机上，手机会再次尝试。请致电您的诊所。</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>这部手机的时钟大约快了 %1。请调准：提醒按它响铃。</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>这部手机的时钟大约慢了 %1。请调准：提醒按它响铃。</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>诊所更改了复诊时间。原定：%1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>该打给谁</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>如果您担心，就打电话。不需要理由。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>打电话比日记快：诊所可能还没有看到您的记录。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>您发烧到 100.4 °F 或以上。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>您发烧到 38 °C 或以上。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>疼痛又回来了。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>急救电话</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>您的诊所</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>如果没有人接</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>您的记录没有保存，诊所也没有收到。</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>回到您的记录，再保存一次</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>警告会留在您的日记里</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>您在别的地方吗？请拨打当地的急救电话。</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>这部手机没能记下您已看过警告。下次打开日记时会再出现。</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>疼痛达到 10 分中的 7 分或更高。</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>头两天，一侧更鼓，也更痛。</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>同一处有其中两项：颜色变了、发热、发硬、更痛。</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>线露出来，而且那里的皮肤发热、发痛或变了颜色。</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>您的记录还没有保存，诊所也没有收到。打完电话后可以继续填写。</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>%1 起在诊所的电脑上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>已保存在这部手机上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>不在这部手机上。%1 起在诊所的电脑上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>不在这部手机上。可能在您的旧手机上。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>您的左侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>您的右侧</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>正面</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1。%2，%3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>照片：已保存在这部手机上</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>照片：%2 张中的 %1 张在诊所的电脑上</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>相机，画面上有一张脸的轮廓，请把您的脸对进去</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>换另一个相机</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>保留</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>这一张不会保留</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>另拍一张</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>选择图片</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>完成</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>回到您写的内容</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>一张您的照片</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>图片 (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>哪一侧</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>一张脸的图：%1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>这台设备没有相机。请选一张您刚刚拍的图片。</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>每次都一样：同样的光线，同样的距离，头发不要挡脸。两侧都拍。</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>拍不拍照片由您决定。如果您担心，不要等照片：打电话。</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>正在准备图片……</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>照片：%1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>侧面对吗？清楚吗？是刚拍的吗？如果不是，请另拍一张。</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>文件里的地点和时间、设备的名称不会一起带走。您的脸会。</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>拍照</translation>
    </message>
    </context>
    <context>
        <name>PhotoThumb</name>
    <message>
        <location filename="../app/diary/PhotoThumb.qml" line="20"/>
        <source>Photograph. %1</source>
        <translation>照片。%1</translation>
    </message>
    </context>
    <context>
        <name>PicturePage</name>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="23"/>
        <source>The photograph: %1</source>
        <translation>照片：%1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>这并不说明有人看过。如果您担心，就打电话。</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>它现在就从这部手机上消失。服务器和诊所的电脑下次同步后，那里的也会消失。别人复制或打印的会留下。</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>收回……</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>先说明会怎样</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>留着</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>现在收回。无法恢复。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>这张图片打不开。请选另一张。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>这张图片太大。请选小一些的。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>日记能读 JPEG 和 PNG 图片。请选其中一种。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>这张图片太小。请选大一些的。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>这张图片已损坏。请选另一张，或重新拍。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>把头转向您的右边。相机看到您的左脸颊。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>把头转向您的左边。相机看到您的右脸颊。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>正对相机，面部放松。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>它会记在%1，%2。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>已保存在这部手机上：%1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>您有 %1 张照片，已到上限。请收回一张，再加新的。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>这部手机没能保存。请再试一次。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>这部手机已满。请腾出空间，再保留。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>相机没有反应。请改选一张图片。</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>日记不能使用相机。请在手机设置中允许，或选一张图片。</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>没能收回。请再试一次。</translation>
    </message>
    </context>
    <context>
        <name>IdleNotice</name>
    <message>
        <source>Stay open</source>
        <translation>保持打开</translation>
    </message>
    </context>
    <context>
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>急救电话（欧盟）</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>急救电话（英国）</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>急救电话（美国）</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>救护车（巴西）</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>救护车（中国）</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>救护车（瑞士）</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>救护车（土耳其）</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>其实没做</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>其实做了</translation>
    </message>
    </context>
    <context>
        <name>CallButton</name>
    <message>
        <location filename="../app/diary/CallButton.qml" line="25"/>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="26"/>
        <source>Calls this number</source>
        <translation>拨打这个号码</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>这台设备不能打电话。请用电话拨打这个号码：</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>如果没有开始呼叫，请用电话拨打这个号码：</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>原因</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>我已阅读</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>它会留在您的记录里，在“我写的内容”下面</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>颈部的肿胀或出血可能压住气道。情况可能很快变坏。</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>可能是颈部皮下出血。它可能压住气道。</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>可能是严重过敏。这时喉咙可能会肿，呼吸会变得困难。</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>麻药可能作用到了全身，而不只是脸上。</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>可能是脓毒症，也就是感染开始伤害全身。</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>可能是中风，也就是大脑的一部分供血太少。</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>眼睛或流向眼睛的血可能有危险。</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>可能是皮下积血。在医生看过之前，就按积血对待。</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>那里的皮肤可能供血太少。可能有东西压住或堵住了血管。</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>发烧可能说明有感染。</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>可能是感染，也可能在面部皮肤里。靠近眼睛或鼻子时更危险。</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>发冷打颤可能和感染一起出现。</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>可能是在皮肤里扩散的感染。</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>可能是脓。脓可能和感染一起出现。</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>一根线正在露出来。那里的皮肤也可能有感染。</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>面部的一根神经可能受压或受伤。麻药的药效这时应该已经过去了。</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>这么强的疼痛可能来自皮下出血或感染。</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>面颊里的唾液腺或它的管道可能受了伤。</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>可能还有一根血管没有合上。</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>可能是动脉渗漏，周围有血。</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>单凭数字看不出是什么。所以请现在就打电话。</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>它现在就可能对您有危险，而且可能很快变坏。所以不能等。</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>可能现在就需要处理。所以请打电话，不要等。</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>可能是皮下出血，也可能是感染。</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>显示我输入的内容</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>现在把它写在纸上，把纸放在只有您找得到的地方。打开日记时输入它，横线可有可无。</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>已隐藏</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>显示</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>换一个</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>我自己选</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>请输入其中两组，以确认纸上写得正确。没有这张纸，您将无法再打开日记。</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>再显示一次</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>够长了。</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>够长了。但是几个字符反复用，容易被猜到。</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>还差 %n 个字符。</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>CodeBack</name>
    <message>
        <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
        <translation>请输入其中一组，以确认纸上写得正确。之后代码不再显示。</translation>
    </message>
    <message>
        <source>It is on my paper</source>
        <translation>我的纸上有</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>再显示一次</translation>
    </message>
    </context>
</TS>
