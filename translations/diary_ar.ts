<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>رنّ عند التذكير</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>لا ترنّ</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>رنّ مرة للتجربة</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>أخفِ هذا</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>اتصل برقم الطوارئ فورًا عند أي من هذه</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>اتصل بعيادتك في اليوم نفسه عند أي من هذه</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>هذه المفكرة ليست طبيبًا ولا جهازًا طبيًا. وهي لا تعرف كل شيء.</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>الكاميرا: وجّهها نحو الرمز</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>اتصل برقم الطوارئ الآن</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>اتصل بعيادتك الآن</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>يجب أن تعلم عيادتك بهذا</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>اذكر هذا في زيارتك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>لا تنتظر ولا تقد السيارة بنفسك. إذا لم يجب أحد فاتصل مرة أخرى واطلب المساعدة ممن حولك. ثم أخبر عيادتك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>اتصل ولا تكتب. إذا لم يجب أحد فاتصل بالرقم الثاني. إذا لم يجب أحد خلال ٣٠ دقيقة فاذهب إلى الرعاية العاجلة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>إنه مذكور فيما كتبته. إذا ساء الأمر فاتصل.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>إذا كان لديك قلم أدرينالين فاستخدمه. استلقِ وارفع ساقيك. إذا صعب التنفس فاجلس.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>استمر في الضغط بقماش نظيف.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>لا تسحبه ولا تقصه. غطِّه.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>يجب فحص هذا الليلة، لا غدًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>قد يكون من التخدير. يجب أن يزول بعد ٨ ساعات من العلاج. إن لم يزل فاتصل.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>حرارتك %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>ألمك %1 من ١٠.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>أحد الجانبين أكثر تورمًا بكثير من الآخر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1، %2: %3 من ١٠. المعتاد في هذا اليوم حتى %4.</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1، %2: كان عند %3 وهو الآن عند %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1، %2: انخفض إلى %3 ثم عاد إلى %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1: %2 في يسارك و%3 في يمينك.</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>كل شيء معًا: الفرق بين جانبيك %1 من النقاط.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1، %2: يستغرق زواله وقتًا أطول من المعتاد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1، %2: ما زال موجودًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>لم تكتب منذ أيام.</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>كل شيء معًا أكثر من المعتاد في هذا اليوم.</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>كل شيء معًا يستغرق زواله وقتًا أطول من المعتاد.</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>غيّرتَ هذا أو أضفتَ إليه منذ ذلك الحين. تبقى النصيحة كما هي.</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>غيّرت العيادة منذ ذلك الحين ما دوّنته عن معالجتك. تبقى النصيحة كما هي.</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>إنه مذكور فيما كتبته. إذا لم يصلك شيء حتى يوم العمل التالي فاتصل. إذا ساء الأمر فاتصل فورًا.</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>فوق النطاق المعتاد، من %1 إلى %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>تحت النطاق المعتاد، من %1 إلى %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>ضمن النطاق المعتاد، من %1 إلى %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>لم يُكتب شيء بعد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1: %2 من ١٠.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>الأعلى حتى الآن: %1، في اليوم %2.</translation>
    </message>
    </context>
    <context>
        <name>DiaryEntryWords</name>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="22"/>
        <source>%1 °F</source>
        <translation>%1 °ف</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="23"/>
        <source>%1 °C</source>
        <translation>%1 °م</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="38"/>
        <source>%1: right %2, left %3</source>
        <extracomment>A symptom with its scores: "Swelling: right 3, left 4"</extracomment>
        <translation>%1: يمين %2، يسار %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>الحرارة: %1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>مفكرتي</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>العلاج: %1. العيادة: %2. أُنشئ في %3.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>الدرجات من ٠، لا شيء، إلى ١٠، أسوأ ما يمكن تخيله. اليمين واليسار لي أنا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>قبل التصحيح:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>ملاحظات</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>أنا</translation>
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
        <translation>اليوم %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>أمس %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>غدًا %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="46"/>
        <source>%1, %2</source>
        <extracomment>%1 is a date such as "22 March", %2 a time</extracomment>
        <translation>%1، %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="53"/>
        <source>Today</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>أمس</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>اليوم %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>اليوم فقط</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>حتى الغد</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>حتى اليوم %1</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>أقل من دقيقة</numerusform>
            <numerusform>دقيقة واحدة</numerusform>
            <numerusform>دقيقتين</numerusform>
            <numerusform>%Ln دقائق</numerusform>
            <numerusform>%Ln دقيقة</numerusform>
            <numerusform>%Ln دقيقة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>أقل من ساعة</numerusform>
            <numerusform>ساعة واحدة</numerusform>
            <numerusform>ساعتين</numerusform>
            <numerusform>%Ln ساعات</numerusform>
            <numerusform>%Ln ساعة</numerusform>
            <numerusform>%Ln ساعة</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>أقل من يوم</numerusform>
            <numerusform>يوم واحد</numerusform>
            <numerusform>يومين</numerusform>
            <numerusform>%Ln أيام</numerusform>
            <numerusform>%Ln يومًا</numerusform>
            <numerusform>%Ln يوم</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>الألم</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>التورم</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>الكدمات</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>الشد</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>الوخز</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>التجعد</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>الخدر</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>ما شدة الألم؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>ما مقدار التورم؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>ما مقدار الكدمة؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>ما مقدار الشعور بالشد؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>ما شدة الوخزات الحادة؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>ما عمق النقرة أو الطية؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>ما مقدار خدر الجلد؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>٠ يعني لا شيء</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>١٠ أسوأ ما يمكنك تخيله</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>يسارك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>يمينك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>يسارك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>يمينك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>أتنفس بصعوبة أو لا أستطيع بلع ريقي.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>يتورم عنقي أو ما تحت فكي بسرعة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>يتورم لساني أو حلقي، أو أسمع صفيرًا عند التنفس، أو أشعر أنني سأفقد الوعي.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>طعم معدني، أو طنين في الأذن، أو نفضات في العضلات، أو أشعر بالتشوش.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>أرتجف بشدة، أو أشعر بالتشوش، أو لم أتبول طوال اليوم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>يتدلى وجهي، ومعه ضعف في إحدى ذراعي أو تلعثم في كلامي.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>ضعف بصري فجأة أو أرى الأشياء مزدوجة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>أحد الجانبين يمتلئ أكثر ساعة بعد ساعة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>أصبح الجلد أبيض أو رماديًا أو كالشبكة، أو باردًا، أو فيه بثور.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>قرب نقطة دخول، الجلد أشد حمرة أو بنفسجية أو رمادية أو أغمق مما على الجانب الآخر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>أشعر بظهر يدي أنه أدفأ من الجانب الآخر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>إنه صلب أو لامع أو مشدود.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>يؤلم عند اللمس أكثر من أمس.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>امتدت الحافة أبعد مما كانت.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>يخرج سائل كثيف أصفر أو أخضر أو حليبي.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>يظهر طرف خيط من الجلد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>لا أستطيع إغلاق عين أو رفع حاجب، أو ابتسامتي مائلة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>يتورم خدي عند الأكل، أو يسيل سائل صافٍ.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>ما زال ينزف بعد ١٥ دقيقة من الضغط القوي.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>توجد كتلة تنبض.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>أرى خيطًا أو ألمسه. الجلد هادئ.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>أشعر بقشعريرة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>انزع الضمادات</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>نقاط الدخول نظيفة وجافة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>نم على ظهرك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>أرِح وجهك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>كمادة باردة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>لا مكياج بعد</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>لا تدليك للوجه</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>لا طبيب أسنان إن أمكن الانتظار</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>امشِ، لكن بلا رياضة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>لا ساونا ولا حمام ساخن ولا مسبح</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>ابتعد عن الشمس</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>لا كحول</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>لا تدخين</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>لا حلاقة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>اكتب كيف حالك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>زيارة المتابعة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>من عيادتك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>اتركها حتى تصل إلى البيت هذا المساء. إنها تبقي نقاط الدخول نظيفة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>اغسل برفق ولا تفرك. تحتاج الثقوب الصغيرة إلى وقت لتلتئم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>ارفع رأسك قليلًا. النوم على الوجه قد يحرك خيطًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>لقمات صغيرة، بلا تثاؤب واسع ولا ضحك شديد. تحتاج الخيوط إلى هدوء لتستقر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>عشر دقائق مع قماش بينهما. قد يخفف التورم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>أبعده عن نقاط الدخول حتى تلتئم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>الضغط على وجهك قد يحرك خيطًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>الفم المفتوح بشدة يشد الخيوط. إذا آلمك فاتصل بالعيادة أولًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>الرياضة تزيد تدفق الدم وقد تزيد التورم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>الحرارة قد تزيد التورم، والمسابح قد تحمل جراثيم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>قد تجعل الشمس الكدمة داكنة لمدة طويلة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>قد يزيد الكدمات والتورم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>الدخان يبطئ الشفاء. كلما طال الامتناع كان أفضل.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>قد تفتح الشفرة نقاط الدخول.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>قصير. وقد يُظهر مبكرًا إن كان هناك خلل.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>ستنظر عيادتك كيف سار الأمر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>عبارة المرور هذه لا تفتح المفكرة. حاول مرة أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>محاولات كثيرة. انتظر %1 ثانية من فضلك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>ملف المفكرة تالف. لم يُحذف شيء. اتصل بعيادتك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>هذا الهاتف ممتلئ. ما كتبته ما زال هنا. وفّر مساحة ثم احفظ مرة أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>لم يستطع الهاتف الحفظ. ما كتبته ما زال هنا. حاول مرة أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>لا شبكة الآن. سيُرسل لاحقًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>انتهى هذا الرمز. اطلب من عيادتك رمزًا جديدًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>استُخدم هذا الرمز من قبل. أخبر عيادتك الآن واطلب رمزًا جديدًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>لا يمكن قراءة هذا الرمز. تحقق من كل حرف.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>هذا ليس من عيادتك. لم يتم أي انضمام. أخبر عيادتك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>لم تُجب عن شيء بعد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>هناك قيمة خارج النطاق. تحقق منها.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>لم ينجح ذلك. حاول مرة أخرى أو اتصل بعيادتك.</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>الطريق إلى هذه العيادة غير مشفّر: قد يقرأ آخرون. لم يُرسل شيء. أخبر عيادتك.</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>تم</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>لم يتم</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>يذكّرك لاحقًا: %1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>تابع التصحيح</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>تصحيح</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>أخفِ ما كان قبل ذلك</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>ما كان قبل ذلك</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>ما عليك فعله</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>أخفِ ما عليك فعله</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>حفظ</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>السؤال %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>احفظ ثم أضف صورًا</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>عن ذلك الوقت</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>عن الآن</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>يمر بالأسئلة مرة أخرى</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 من ١٠</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>أضف وقتًا سابقًا</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>لا شيء بعد. سيظهر هنا أول ما تكتبه.</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>أضف صورًا</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>استخدم هذا الرمز</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>ابدأ من جديد</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>صورة للرمز</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>صور (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>افعل هذا في عيادتك. تعرض العيادة رمزًا على شاشتها.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>اختر صورة</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>أو اكتب الرمز: ٢٤ حرفًا ورقمًا</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>العنوان المكتوب تحت الرمز</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>جارٍ سؤال عيادتك …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>اترك هذه الصفحة مفتوحة. سيظهر بعد قليل رقم للمقارنة.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>اقرأ هذا الرقم لعيادتك</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>يجب أن ترى العيادة الأرقام الستة نفسها. وإلا فأخبرهم وابدأ من جديد.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>تم الانضمام. خطة العناية في الطريق إليك …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>إن أغلقت المفكرة الآن فإنها تكمل عندما تفتحها مجددًا.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>اللغة وحجم النص</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>نعم، أنا هناك</translation>
    </message>
    <message>
        <source>No</source>
        <translation>لا</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>هل أنت في عيادتك الآن؟</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>يستطيع أي شخص أن يرسل إليك صورة رمز. عندها يصل إليه ما تكتبه. في عيادتك ترى من أين يأتي الرمز.</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>اكتب هذا على ورقة. لا يظهر إلا الآن. أي رمز سابق لم يعد يعمل.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>لقد كتبته</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>رمز الاسترداد</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>يفتح الرمز المفكرة إذا فقدت عبارة المرور. لا يستطيع أحد غيرك المساعدة حينها.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>عبارة المرور، لإنشاء رمز</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>غيّر عبارة المرور</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>عبارة المرور الحالية</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>الجديدة</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>الجديدة مرة أخرى</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>لم يُكتب أي شيء بعد.</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>أين توضع الصفحة</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>صفحة للطباعة (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>حفظه صفحةً للطباعة</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>ما تكتبه ولم تحفظه بعد يبقى هنا. وكذلك عبارة المرور والإعدادات.</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>فقط ما تكتبه، والصور التي تحتفظ بها هنا، وإجاباتك عن التذكيرات، وأنك رأيت تحذيرًا. وهو مختوم لعيادتك. لا يستطيع الخادم الوسيط قراءته. يرى الأحجام والأوقات وعنوان شبكتك فقط.</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>أنشئ مفكرتي</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>افتح مفكرتي</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>اعتمد عبارة المرور هذه</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>مفكرة لا يفتحها غيرك</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>افتحها برمزك</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>مفكرتك مقفلة</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>اختر عبارة مرور. هي تقفل المفكرة على هذا الهاتف. لا يستطيع أحد إعادة ضبطها، ولا حتى عيادتك. أنشئ لاحقًا رمز استرداد من الإعدادات.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>رمز الاسترداد من ورقتك</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>عبارة مرور جديدة</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>عبارة المرور</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>العبارة نفسها مرة أخرى</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>أعرف عبارة المرور</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>فقدت عبارة المرور</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>ما يغادر هذا الهاتف</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>إذا كنت قلقًا فلا تبحث عن عبارة المرور. المس «أحتاج مساعدة».</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>اسحب لي عبارة</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>حروف وأرقام عشوائية، لتحفظها على ورقة</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>فقدت الاثنين</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>إيقاف</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>لم يُكتب أي شيء بعد.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>صارت على الورق</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>مفكرة Ebbline</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>لم تُستخدم منذ مدة. ستُقفل المفكرة بعد نصف دقيقة. ما كتبته محفوظ.</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>أين توضع بياناتك</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>ما يغادر هذا الهاتف</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>خذها معك</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>احفظ بياناتي في مجلد</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>احذف المفكرة</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>هذا يزيل المفكرة من هذا الهاتف. تحتفظ العيادة بما لديها: اسألها إن أردت حذفه أيضًا. لا يأتي بعد ذلك تذكير ولا تحذير.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>احذف المفكرة …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>أبقِها</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>احذفها الآن. لا رجوع بعد ذلك.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>كل ما كتبته، صفحةً للطباعة (PDF) وجداول (CSV) وملفًا لبرامج الصحة الأخرى (FHIR)، وصورك. يعمل بلا شبكة.</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>عبارة المرور، لحفظ كل شيء</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>عبارة المرور، لحذف كل شيء</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>اليوم</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>الساعة</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>وقت آخر</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>كان ذلك من قبل</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>يحدد اليوم والساعة المقصودين</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>لا، المقصود الآن</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>ملاحظتك</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>أرسل عند توفر الشبكة</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>قد لا تقرأ العيادة هذا إلا في يوم العمل التالي. إذا كان الأمر عاجلًا فاتصل.</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>صحّحه</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>إغلاق</translation>
    </message>
    </context>
    <context>
        <name>NoticesPage</name>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="14"/>
        <source>Version %1</source>
        <translation>الإصدار %1</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="19"/>
        <source>The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.</source>
        <translation>اليوميات مبنية على عمل آخرين. هنا ترين ما تستخدمه ومن صنعه. نصوص التراخيص باللغة الإنجليزية.</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>الأجزاء</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>التراخيص</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>يعرض النص</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>أين يوضع ملف التقويم</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>تقويم (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>رنّ عند التذكير</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>قد يرى غيرك شاشتك. لذلك تقول فقط إن هناك شيئًا لك، ولا تقول ما هو.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>رنّ مرة للتجربة</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>هدوء في الليل</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>الهدوء من</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>حتى</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>ما يقع في هذا الوقت يأتي عند انتهائه. وما هو للمساء يأتي قبيل بدئه.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>في تقويمك أيضًا</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>ملف التقويم يحمل الأوقات فقط. يقول عند كل منها «تذكير من مفكرتك». كثير من التقاويم تنسخ ما فيها إلى خادم.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>إذا تغيّرت خطتك أو زيارتك فأنشئ الملف من جديد. ما أخذه تقويمك من قبل يبقى فيه إلى أن تحذفه.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>أنشئ ملف تقويم</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>دع التذكيرات ترنّ في وقتها</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>الحرارة، إن قستها</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="25"/>
        <source>°C</source>
        <translation>°م</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="25"/>
        <source>°F</source>
        <translation>°ف</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="31"/>
        <source>In your own words, if you like</source>
        <translation>بكلماتك أنت، إن شئت</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>اسأل أيضًا عن الوخز والخدر</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>ارمِ هذه المدونة …</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>يسأل أولًا</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>لا، احتفظ بها</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>نعم، ارمها</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>القفل</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>عبارة المرور ورمز الاسترداد</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>بياناتي</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>ما يغادر هذا الهاتف، وأخذه معك، وحذفه</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>اللغة</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>حجم النص</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>عادي</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>كبير</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>كبير جدًا</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>المظهر</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>فاتح</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>داكن</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>تباين عالٍ</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>الحرارة بوحدة</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="55"/>
        <source>°C</source>
        <translation>°م</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="55"/>
        <source>°F</source>
        <translation>°ف</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="61"/>
        <source>Less motion</source>
        <translation>حركة أقل</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>أرسل واستلم الآن</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>اقفل المفكرة</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline برنامج حر برخصة GPL 3. ليس جهازًا طبيًا معتمدًا. ولا يغني عن عيادتك أو عن خدمة الطوارئ.</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>حول Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>الإصدار والمؤلفون والتراخيص</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>تُقفل بلا لمس بعد (دقائق)</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>المس كل ما ينطبق الآن. زر المتابعة بعد السطر الأخير.</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>الآن</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>مسار تعافيك</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>القادم</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>ما يُراعى اليوم</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>ما كتبته</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>ملاحظات مع العيادة</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>أُجيب عنه اليوم</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>منحنيات أخرى</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>منحنيات أقل</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>رجوع</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>أحتاج مساعدة</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>يعرض بمن تتصل</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>لماذا</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>ماذا قد يعني هذا</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>لم تعد مفكرتك على هذا الجهاز.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>مفكرة Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>انضم إلى عيادتك</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>صحّح هذا الإدخال</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>كيف حالك؟</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>ما كتبته</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>ملاحظات مع العيادة</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>الإعدادات</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>التذكيرات</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>القفل</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>بياناتي</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>حُفظ على هذا الهاتف.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>هناك رسالة مفقودة بينك وبين العيادة. اتصل بالعيادة من فضلك.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>تم. أُرسل كل شيء واستُلم كل شيء.</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>ما زال شيء مما كتبته ينتظر على هذا الهاتف. إذا كان الأمر عاجلًا فاتصل.</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>بدأت هذا التسجيل من قبل. احفظه أو تخلّص منه، ثم أضف اللحظة السابقة.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>لا يستطيع هذا الجهاز الوصول إلى عيادة.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>حول Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>الصور</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>سُحبت. لم تعد على هذا الهاتف.</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1. ما عليك فعله مكتوب في صفحة اليوم.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>%1 من %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>هل ينطبق شيء من هذا؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>هل من شيء آخر؟</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1، %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>آخر مرة %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>التالي</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>تخطَّ هذا</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>لا شيء من هذا</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>فقط ما حددته</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>اكتب قيمة من ٨٦ إلى ١١٣ °ف.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>اكتب قيمة من ٣٠ إلى ٤٥ °م.</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>قلت للمفكرة:</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>إن كان ذلك صحيحًا: %1.</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>هل ترمي كل ما كتبته هنا؟ لا رجعة في ذلك.</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>يبدو أن %1 بوحدة °ف. اختر °ف، أو اكتب قيمة من ٣٠ إلى ٤٥ °م.</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>يبدو أن %1 بوحدة °م. اختر °م، أو اكتب قيمة من ٨٦ إلى ١١٣ °ف.</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>راجع درجة الحرارة. ثم احفظ مرة أخرى.</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>الملاحظة ممتلئة. ما يأتي بعد هذا لا يُحفظ.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>هذا عن %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>هذا عن الآن.</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>بدأت هذا %1. هل ما كتبته عن ذلك الوقت أم عن الآن؟</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>فتحه %1، %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>على حاسوب العيادة منذ %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>محفوظ على هذا الهاتف</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>كُتب لاحقًا، %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>صُحح %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>كما كُتب %1:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>كان عن %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>أنت، %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>لم تقرأه العيادة بعد</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>قرأته العيادة، %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>رأيته، %1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1. فتح %2 ما كتبته من قبل، %3. لم يفتح أحد تصحيحك بعد.</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>هذه الملاحظة أطول من أن تُرسل. أرسل جزءًا منها، والباقي في ملاحظة ثانية.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>لا شبكة الآن. تواصل المفكرة المحاولة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>لا يوجد رمز في هذه الصورة. جرّب غيرها أو اكتب الرمز.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>الرمز المكتوب يحتاج أيضًا إلى العنوان الذي تحته.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>لا يستطيع هذا الجهاز الوصول إلى عيادة.</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>هذا ليس رمز عيادة. استخدم الرمز الذي تعرضه عيادتك على شاشتها.</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>لا يمكن فتح هذه الصورة. اختر غيرها أو اكتب الرمز.</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>لا يُسمح لليوميات باستخدام الكاميرا. اختر صورة للرمز أو اكتبه. يمكنك السماح بالكاميرا في إعدادات الهاتف.</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>الكاميرا لا تعمل الآن. قد تكون قيد الاستخدام. اختر صورة للرمز أو اكتبه.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>لا توجد كاميرا في هذا الجهاز. اختر صورة للرمز أو اكتبه.</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>عنوان العيادة لا يجيب. تحقق من أنك كتبت العنوان الذي تحت الرمز كتابةً صحيحة ومن أن لدى هذا الهاتف شبكة. تواصل اليوميات المحاولة.</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>تحوي هذه المفكرة علاجًا، ولا تتسع إلا لواحد. افتح «بياناتي» في الإعدادات. احفظ هناك بياناتك واحذف المفكرة. ثم انضم من جديد.</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>لم يتم أي انضمام. اطلب من عيادتك رمزًا عندما تكون هناك.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>لديك رمز استرداد. ليس محفوظًا هنا، بل على ورقتك فقط.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>ليس لديك رمز استرداد بعد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>أنشئ رمزًا جديدًا</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>أنشئ رمزًا</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>العبارتان غير متطابقتين.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>تم. من الآن لا تفتح المفكرة إلا عبارة المرور الجديدة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>جيد. احفظ الورقة حيث لا يجدها غيرك.</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>لم يعد الرمز ظاهرًا. إن لم يكن على ورقتك فاصنع رمزًا جديدًا.</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>تحتاج عبارة المرور إلى هذا الحاسوب أيضًا: فحلقة مفاتيحه، التي يفتحها دخولك إليه، تحفظ النصف الآخر من المفتاح. إن فُقد هذا النصف أو نُقلت المفكرة، فلا يفتح المفكرة إلا رمز الاسترداد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>تحتاج عبارة المرور إلى هذا الهاتف أيضًا: فهو يحفظ النصف الآخر من المفتاح. إن فقده الهاتف، فلا يفتح المفكرة إلا رمز الاسترداد.</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>لم يُقرأ أحدث رمز لك من ورقتك. إن لم يكن عليها فأنشئ رمزًا جديدًا. إن فقد هذا الجهاز نصفه من المفتاح، فلا يفتح المفكرة إلا ذلك الرمز.</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>يمكن لهذا الجهاز أن يحفظ نصف مفتاحك. وهو ينتظر حتى يُقرأ رمز من ورقتك. لذلك أنشئ رمزًا جديدًا.</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>من ورقتك: المجموعة %1 من %2</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>ليست هذه هي المجموعة. انظر إلى الورقة مرة أخرى. إن لم تكن مكتوبة عليها، فاعرض الرمز مرة أخرى.</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>رمز استرداد مفكرتي</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>يفتح المفكرة بعبارة مرور جديدة. احفظه حيث لا يجده غيرك.</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>تم. اطبع الصفحة ثم احذف الملف: من يجده يستطيع فتح مفكرتك.</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>تعذرت كتابة الملف هناك. اختر مكانًا آخر.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>استخدم %1 حرفًا على الأقل. أربع أو خمس كلمات سهلة الحفظ.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>العبارتان غير متطابقتين.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>هذا ليس رمز استرداد. فيه ٣٦ حرفًا ورقمًا في تسع مجموعات. تحقق من كل منها.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>هذا الرمز لا يفتح المفكرة. الأحدث وحده يفتحها.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>لا يعطي هذا الحاسوب نصفه من المفتاح. إن طلب كلمة مرور حلقة مفاتيحه، فاكتبها أولًا. ثم حاول مرة أخرى. إن لم ينفع ذلك، فاستخدم رمز الاسترداد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>لا يعطي هذا الهاتف نصفه من المفتاح. حاول مرة أخرى. إن لم ينفع ذلك، فاستخدم رمز الاسترداد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>حاول مرة أخرى أولًا. بدون عبارة المرور والرمز تبقى هذه المفكرة مغلقة. يمكنك الارتباط من جديد على جهاز آخر، أو على هذا الجهاز بعد حذف بيانات هذا التطبيق: تعرض عيادتك رمزًا جديدًا. قد لا تحذف إزالةُ التطبيق بياناتِه. الإدخالات التي أرسلتها تعود. الصور تبقى لدى عيادتك. وما لم يُرسل يضيع.</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>لحظة من فضلك. تتحقق المفكرة من أقصى قوة ممكنة للقفل على هذا الهاتف.</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>من ورقتك: المجموعة %1 والمجموعة %2</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>هذا لا يطابق. انظر إلى الورقة مرة أخرى. إن لم تكن مكتوبة عليها، فاعرضها مرة أخرى.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>كل ما كتبته عند العيادة أيضًا.</numerusform>
            <numerusform>إدخال واحد على هذا الهاتف فقط وسيضيع.</numerusform>
            <numerusform>إدخالان على هذا الهاتف فقط وسيضيعان.</numerusform>
            <numerusform>%Ln إدخالات على هذا الهاتف فقط وستضيع.</numerusform>
            <numerusform>%Ln إدخالًا على هذا الهاتف فقط وستضيع.</numerusform>
            <numerusform>%Ln إدخال على هذا الهاتف فقط وستضيع.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>كل إدخالاتك على حاسوب العيادة أيضًا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>تم. هي في المجلد «%1». من يفتحه يستطيع قراءتها.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>تعذرت الكتابة هناك. اختر مكانًا آخر.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>لا توجد صور على هذا الهاتف وحده.</numerusform>
            <numerusform>صورة واحدة على هذا الهاتف فقط وستضيع.</numerusform>
            <numerusform>صورتان على هذا الهاتف فقط وستضيعان.</numerusform>
            <numerusform>%Ln صور على هذا الهاتف فقط وستضيع.</numerusform>
            <numerusform>%Ln صورة على هذا الهاتف فقط وستضيع.</numerusform>
            <numerusform>%Ln صورة على هذا الهاتف فقط وستضيع.</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>اكتب عبارة المرور أولًا.</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>اكتب عبارة المرور مرة أخرى.</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>هذه ليست عبارة المرور. لم يُحفظ شيء ولم يُحذف شيء.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>لا يعطي هذا الحاسوب نصفه من المفتاح. إن طلب كلمة مرور حلقة مفاتيحه، فاكتبها أولًا. ثم حاول مرة أخرى. إن لم ينفع ذلك، فاقفل المفكرة واستخدم رمز الاسترداد.</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>لا يعطي هذا الهاتف نصفه من المفتاح. حاول مرة أخرى. إن لم ينفع ذلك، فاقفل المفكرة واستخدم رمز الاسترداد.</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>تعذّرت كتابة كل شيء. جزء منه موجود في المجلد «%1». كل من يفتحه يستطيع قراءته: احذف المجلد.</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>شيء آخر كتبته ما زال ينتظر على هذا الهاتف وسيضيع.</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>وستضيع أيضًا أي ملاحظة أو إجابة ما زالت تنتظر على هذا الهاتف.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>هل عولجت مرة أخرى؟ تتسع هذه المفكرة لعلاج واحد. احفظ بياناتك واحذف المفكرة ثم انضم من جديد.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>لم يرنّ. رفض هذا الجهاز ذلك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>مفكرة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>تذكير</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>هناك شيء لك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>افتح مفكرتك من فضلك كي تستمر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>افتح</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>بعد ٣٠ دقيقة</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>لا يقبل هذا الجهاز كل التذكيرات. انظر في مفكرتك كل يوم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>التذكيرات ترنّ. لا شيء قادم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>التذكيرات ترنّ. القادم: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>التذكيرات ترنّ. القادم: %1. افتح المفكرة قبل %2 كي تستمر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>لا يستطيع هذا الجهاز الرنين. ما حان وقته مكتوب هنا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>التذكيرات لا ترنّ. ما حان وقته مكتوب هنا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>التذكيرات لا ترنّ بعد. ما حان وقته مكتوب هنا.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>انظر إلى طرف شاشتك. يجب أن تقول: «%1»</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>تذكير من مفكرتك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>لا تذكير قادم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>تعذرت كتابة الملف هناك. اختر مكانًا آخر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>تم. افتح الملف بتقويمك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>لتوفير الطاقة، قد يرنّ هذا الهاتف متأخرًا بضع دقائق.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>التذكيرات ترنّ الآن. جرّب واحدًا قبل أن تغادر العيادة.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>زيارة المتابعة: %1، %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 من %2 إلى %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>المعتاد اليوم، من ١٠: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>, </source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>، </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="53"/>
        <source>This range is an assumption for now. It is not yet made from courses at your clinic.</source>
        <translation>هذا النطاق افتراض في الوقت الحالي. لم يُبنَ بعد على حالات عيادتك.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>لا حالات من عيادتك وراء هذا النطاق.</numerusform>
            <numerusform>هذا النطاق من حالة واحدة في عيادتك.</numerusform>
            <numerusform>هذا النطاق من حالتين في عيادتك.</numerusform>
            <numerusform>هذا النطاق من %Ln حالات في عيادتك.</numerusform>
            <numerusform>هذا النطاق من %Ln حالة في عيادتك.</numerusform>
            <numerusform>هذا النطاق من %Ln حالة في عيادتك.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>لم يُكتب شيء بعد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>فتح %1 آخر ما كتبته، %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>آخر ما كتبته على حاسوب العيادة منذ %1. لم يفتحه أحد بعد.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>لا شيء ينتظر على هذا الهاتف.</numerusform>
            <numerusform>إدخال واحد محفوظ على هذا الهاتف ولم يصل إلى العيادة بعد. إذا كان عاجلًا فاتصل.</numerusform>
            <numerusform>إدخالان محفوظان على هذا الهاتف ولم يصلا إلى العيادة بعد. إذا كان عاجلًا فاتصل.</numerusform>
            <numerusform>%Ln إدخالات محفوظة على هذا الهاتف ولم تصل إلى العيادة بعد. إذا كان عاجلًا فاتصل.</numerusform>
            <numerusform>%Ln إدخالًا محفوظًا على هذا الهاتف ولم يصل إلى العيادة بعد. إذا كان عاجلًا فاتصل.</numerusform>
            <numerusform>%Ln إدخال محفوظ على هذا الهاتف ولم يصل إلى العيادة بعد. إذا كان عاجلًا فاتصل.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>لا ملاحظات جديدة من العيادة</numerusform>
            <numerusform>ملاحظة جديدة من العيادة</numerusform>
            <numerusform>ملاحظتان جديدتان من العيادة</numerusform>
            <numerusform>%Ln ملاحظات جديدة من العيادة</numerusform>
            <numerusform>%Ln ملاحظة جديدة من العيادة</numerusform>
            <numerusform>%Ln ملاحظة جديدة من العيادة</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>تابع إدخالك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>اكتب كيف حالك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>لاحقًا، %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1، %2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>تصحيحك على حاسوب العيادة منذ %1. لم يفتحه أحد بعد. فتح %2 ما كتبته من قبل، %3.</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>على هذا الهاتف نسخة قديمة من مفكرتك. قد ينقص هنا بعض ما كتبته. اتصل بعيادتك من فضلك.</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>رسالتان من العيادة لا تتفقان. اتصل بعيادتك قبل أن تعمل بإحداهما.</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>هناك رسالة من العيادة مفقودة هنا. اتصل بعيادتك من فضلك.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>لم يصل إلى هذا الهاتف شيء من العيادة منذ %1.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>لم يصل إلى هذا الهاتف شيء من العيادة بعد.</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>بحسب ما يعرفه هذا الهاتف، ما كتبته ليس عند العيادة. إنه ينتظر منذ %1.</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>إذا كنت قلقًا فاتصل. لا تنتظر جوابًا هنا.</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>مضى على ذلك أكثر من %1 يومًا. اتصل بعيادتك من فضلك. احتفظ بهذا الهاتف وبهذا البرنامج: ما كتبته ربما لا يوجد في أي مكان آخر.</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>تحتاج عيادتك إلى إصدار أحدث من هذا التطبيق. حدّثه من فضلك. وحتى ذلك الحين قد ينتظر ما تكتبه على هذا الهاتف.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>لم يبق هنا شيء لم يصل إلى العيادة.</numerusform>
            <numerusform>شيء واحد كتبته هنا لم يصل إلى العيادة. اعرضه هناك من فضلك.</numerusform>
            <numerusform>شيئان كتبتهما هنا لم يصلا إلى العيادة. اعرضهما هناك من فضلك.</numerusform>
            <numerusform>%Ln أشياء كتبتها هنا لم تصل إلى العيادة. اعرضها هناك من فضلك.</numerusform>
            <numerusform>%Ln شيئًا كتبته هنا لم يصل إلى العيادة. اعرضها هناك من فضلك.</numerusform>
            <numerusform>%Ln شيء كتبته هنا لم يصل إلى العيادة. اعرضها هناك من فضلك.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>زيارة المتابعة: %1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>قلت: تم.</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>قلت: لم يتم.</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>لم يعد هذا الهاتف مرتبطًا بالعيادة. ما تكتبه هنا لا يصل إلى أحد، ولا ترن التذكيرات هنا. استخدم هاتفك الآخر. إن لم يوجد هاتف آخر فاتصل بعيادتك.</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>الخادم الوسيط ممتلئ. لا مكان فيه لما تكتبه.</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>الخادم الوسيط لم يعد يعرف هذا الهاتف.</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>الخادم الوسيط لا يقبل ما يرسله هذا الهاتف.</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>يبقى على هذا الهاتف، والهاتف يحاول مرة أخرى. اتصل بعيادتك من فضلك.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>ساعة هذا الهاتف متقدمة بنحو %1. اضبطها من فضلك: عليها ترن تذكيراتك.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>ساعة هذا الهاتف متأخرة بنحو %1. اضبطها من فضلك: عليها ترن تذكيراتك.</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>نقلت عيادتك الموعد. كان قبل ذلك: %1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>بمن تتصل</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>إذا كنت قلقًا فاتصل. لا تحتاج إلى سبب.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>الاتصال أسرع من المفكرة: قد لا تكون العيادة رأت ما كتبته بعد.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>لديك حمى ١٠٠٫٤ °ف أو أكثر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>لديك حمى ٣٨ °م أو أكثر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>يعود الألم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>رقم الطوارئ</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>عيادتك</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>إذا لم يجب أحد</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>لم يُحفظ ما كتبته، وليس لدى العيادة.</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>عودة إلى ما كتبته لحفظه مرة أخرى</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>يبقى التحذير في مفكرتك</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>هل أنت في مكان آخر؟ اتصل برقم الطوارئ في ذلك المكان.</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>لم يستطع هذا الهاتف أن يسجل أنك قرأت التحذير. سيظهر مجددًا عندما تفتح المفكرة في المرة القادمة.</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>الألم ٧ من ١٠ أو أكثر.</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>في اليومين الأولين أحد الجانبين أكثر امتلاءً وأكثر ألمًا.</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>اثنان من هذه في موضع واحد: لون مختلف، دفء، صلابة، ألم أشد عند اللمس.</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>يظهر خيط، والجلد هناك دافئ أو مؤلم أو تغيّر لونه.</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>لم يُحفظ ما كتبته بعد، وليس لدى العيادة. يمكنك متابعته بعد الاتصال.</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>على حاسوب العيادة منذ %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>محفوظة على هذا الهاتف</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>ليست على هذا الهاتف. على حاسوب العيادة منذ %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>ليست على هذا الهاتف. قد تكون على هاتفك القديم.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>جانبك الأيسر</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>جانبك الأيمن</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>من الأمام</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1. %2، %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>الصور: محفوظة على هذا الهاتف</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>الصور: %1 من %2 على حاسوب العيادة</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>الكاميرا، مع رسم لوجه تضع وجهك داخله</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>استخدم الكاميرا الأخرى</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>احتفظ بها</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>هذه لا تُحفظ</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>التقط صورة أخرى</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>اختر صورة</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>انتهيت</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>يعود إلى ما كتبته</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>صورة لك</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>صور (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>أي جانب</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>رسم لوجه: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>لا توجد كاميرا في هذا الجهاز. اختر صورة التقطتها الآن.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>في كل مرة: الضوء نفسه، والمسافة نفسها، والشعر بعيدًا عن الوجه. صوّر الجانبين.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>الصور اختيارك أنت. إذا كنت قلقًا فلا تنتظر صورة: اتصل.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>يجري تجهيز الصورة …</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>الصورة: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>هل هو الجانب الصحيح؟ هل الصورة واضحة؟ هل هي من الآن؟ إن لم تكن، فالتقط أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>لا يذهب معها مكان الملف ووقته ولا اسم جهازك. أما وجهك فيظهر.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>التقط الصورة</translation>
    </message>
    </context>
    <context>
        <name>PhotoThumb</name>
    <message>
        <location filename="../app/diary/PhotoThumb.qml" line="20"/>
        <source>Photograph. %1</source>
        <translation>صورة. %1</translation>
    </message>
    </context>
    <context>
        <name>PicturePage</name>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="23"/>
        <source>The photograph: %1</source>
        <translation>الصورة: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>هذا لا يعني أن أحدًا نظر إليها. إذا كنت قلقًا فاتصل.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>تزول الآن من هذا الهاتف. وتزول من الخادم ومن حواسيب العيادة عند تبادل البيانات القادم. أما ما نسخه أحد أو طبعه فيبقى.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>اسحبها …</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>يقول أولًا ما يحدث</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>اتركها</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>اسحبها الآن. لا رجوع بعد ذلك.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>لا يمكن فتح هذه الصورة. اختر غيرها.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>هذه الصورة كبيرة جدًا. اختر صورة أصغر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>تقرأ المفكرة صور JPEG وPNG. اختر واحدة منها.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>هذه الصورة صغيرة جدًا. اختر صورة أكبر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>هذه الصورة تالفة. اختر غيرها أو التقط صورة جديدة.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>أدر رأسك إلى يمينك. ترى الكاميرا خدك الأيسر.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>أدر رأسك إلى يسارك. ترى الكاميرا خدك الأيمن.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>انظر مباشرة إلى الكاميرا ووجهك مسترخٍ.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>ستكون تحت %1، %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>محفوظ على هذا الهاتف: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>لديك %1 صورة. هذا هو الحد الأقصى. اسحب واحدة لتضيف أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>لم يستطع هذا الهاتف حفظها. حاول مرة أخرى.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>هذا الهاتف ممتلئ. أفرغ بعض المساحة ثم احتفظ بها.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>الكاميرا لا تستجيب. اختر صورة بدلًا من ذلك.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>لا يُسمح للمفكرة باستخدام الكاميرا. اسمح بذلك في إعدادات هاتفك، أو اختر صورة.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>تعذّر سحبها. حاول مرة أخرى.</translation>
    </message>
    </context>
    <context>
        <name>IdleNotice</name>
    <message>
        <source>Stay open</source>
        <translation>أبقها مفتوحة</translation>
    </message>
    </context>
    <context>
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>رقم الطوارئ (الاتحاد الأوروبي)</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>رقم الطوارئ (المملكة المتحدة)</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>رقم الطوارئ (الولايات المتحدة)</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>الإسعاف (البرازيل)</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>الإسعاف (الصين)</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>الإسعاف (سويسرا)</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>الإسعاف (تركيا)</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>لم يتم في الحقيقة</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>تم في الحقيقة</translation>
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
        <translation>يتصل بهذا الرقم</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>لا يستطيع هذا الجهاز الاتصال. من فضلك اطلب هذا الرقم من هاتف:</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>إذا لم تبدأ مكالمة، فاطلب هذا الرقم من هاتف:</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>لماذا</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>قرأت هذا</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>يبقى مع ما كتبته، تحت: ما كتبته</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>قد يضغط تورم أو دم في الرقبة على مجرى الهواء. وقد يسوء ذلك بسرعة.</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>قد يكون دمًا تحت جلد الرقبة. وقد يضغط على مجرى الهواء.</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>قد تكون حساسية شديدة. عندها قد يتورم الحلق ويصعب التنفس.</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>قد يكون دواء التخدير يؤثر في الجسم كله، لا في الوجه فقط.</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>قد يكون إنتانًا في الدم. أي أن عدوى بدأت تضر الجسم كله.</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>قد تكون سكتة دماغية. أي أن جزءًا من الدماغ يصله دم قليل جدًا.</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>قد تكون العين أو الدم الواصل إليها في خطر.</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>قد يكون دمًا يتجمع تحت الجلد. ويُعد كذلك حتى يراه طبيب.</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>قد يصل إلى الجلد هناك دم قليل جدًا. قد يضغط شيء على وعاء أو يسده.</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>قد تعني الحمى أن هناك عدوى.</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>قد تكون عدوى، وقد تكون في جلد الوجه أيضًا. وقرب العين أو الأنف تكون أخطر.</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>قد تأتي القشعريرة مع عدوى.</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>قد تكون عدوى تنتشر في الجلد.</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>قد يكون قيحًا. وقد يأتي القيح مع عدوى.</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>خيط يشق طريقه إلى الخارج. وقد تكون في الجلد هناك عدوى أيضًا.</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>قد يكون أحد أعصاب وجهك مضغوطًا أو مصابًا. كان يجب أن يزول التخدير الآن.</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>قد يأتي ألم بهذه الشدة من دم تحت الجلد أو من عدوى.</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>قد تكون غدة اللعاب في خدك أو قناتها مصابة.</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>قد يكون وعاء دموي ما زال مفتوحًا.</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>قد يكون تسربًا من شريان يحيط به دم.</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>الأرقام وحدها لا تقول ما هو. لذلك اتصل الآن.</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>قد يكون خطرًا عليك الآن وقد يسوء بسرعة. لذلك لا يحتمل الانتظار.</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>قد يحتاج إلى رعاية الآن. لذلك ينبغي أن تتصل ولا تنتظر.</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>قد يكون دمًا تحت الجلد أو عدوى.</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>أظهر ما أكتب</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>اكتب هذا الآن على ورقة، واحفظ الورقة حيث لا يجدها غيرك. تكتبه لفتح المفكرة، بالشرطات أو بدونها.</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>مخفية</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>أظهرها</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>اسحب عبارة أخرى</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>أختار عبارتي بنفسي</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>مجموعتان منها، للتأكد من صحة ما على الورقة. من دون الورقة لن تُفتح مفكرتك مرة أخرى.</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>عرضها مرة أخرى</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>طويلة بما يكفي.</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>طويلة بما يكفي. لكن حروفًا قليلة مكررة يسهل تخمينها.</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>لم يبق أي حرف.</numerusform>
            <numerusform>بقي حرف واحد.</numerusform>
            <numerusform>بقي حرفان.</numerusform>
            <numerusform>بقيت %Ln أحرف.</numerusform>
            <numerusform>بقي %Ln حرفًا.</numerusform>
            <numerusform>بقي %Ln حرف.</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>CodeBack</name>
    <message>
        <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
        <translation>مجموعة واحدة منه، للتأكد من صحة ما على الورقة. بعدها لا يظهر الرمز مرة أخرى.</translation>
    </message>
    <message>
        <source>It is on my paper</source>
        <translation>إنه على ورقتي</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>عرضه مرة أخرى</translation>
    </message>
    </context>
</TS>
