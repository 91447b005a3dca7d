<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
    <context>
        <name>BaselineLine</name>
        <message>
            <source>%1, right</source>
            <translation>%1، يمين</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1، يسار</translation>
        </message>
    </context>
    <context>
        <name>Charts</name>
        <message>
            <source>above the usual range (%1 to %2)</source>
            <translation>فوق المجال المعتاد (من %1 إلى %2)</translation>
        </message>
        <message>
            <source>below the usual range (%1 to %2)</source>
            <translation>تحت المجال المعتاد (من %1 إلى %2)</translation>
        </message>
        <message>
            <source>inside the usual range (%1 to %2)</source>
            <translation>ضمن المجال المعتاد (من %1 إلى %2)</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>الألم</translation>
        </message>
        <message>
            <source>Swelling</source>
            <translation>التورّم</translation>
        </message>
        <message>
            <source>Bruising</source>
            <translation>الكدمات</translation>
        </message>
        <message>
            <source>Tightness</source>
            <translation>الشدّ</translation>
        </message>
        <message>
            <source>Twinges</source>
            <translation>الوخزات</translation>
        </message>
        <message>
            <source>Puckering</source>
            <translation>الانكماش</translation>
        </message>
        <message>
            <source>Numbness</source>
            <translation>الخدر</translation>
        </message>
        <message>
            <source>left</source>
            <translation>يسار</translation>
        </message>
        <message>
            <source>right</source>
            <translation>يمين</translation>
        </message>
        <message>
            <source>%1, patient's left</source>
            <translation>%1، يسار المريض</translation>
        </message>
        <message>
            <source>%1, patient's right</source>
            <translation>%1، يمين المريض</translation>
        </message>
        <message>
            <source>Usual range, 10th to 90th of 100 patients (%1): an assumption, no courses of this clinic behind it</source>
            <translation>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): افتراض، دون مسارات من هذه العيادة</translation>
        </message>
        <message>
            <source>%1: nothing recorded yet.</source>
            <translation>%1: لم يُسجَّل شيء بعد.</translation>
        </message>
        <message>
            <source>Highest %1 on day %2.</source>
            <translation>الأعلى %1 في اليوم %2.</translation>
        </message>
        <message>
            <source>Last %1 on day %2</source>
            <translation>آخرها %1 في اليوم %2</translation>
        </message>
        <message>
            <source>, %1.</source>
            <translation>، %1.</translation>
        </message>
        <message>
            <source>Expected on day %1: %2 to %3, most likely %4.</source>
            <translation>المتوقع في اليوم %1: من %2 إلى %3، والأرجح %4.</translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط %Ln مسار</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط مسار واحد</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط مساران</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط %Ln مسارات</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط %Ln مسارًا</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): قليل جدًا، وراءه فقط %Ln مسار</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من %Ln مسار، استُخلص %2</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من مسار واحد، استُخلص %2</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من مسارين، استُخلص %2</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من %Ln مسارات، استُخلص %2</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من %Ln مسارًا، استُخلص %2</numerusform>
                <numerusform>المجال المعتاد، من العاشر إلى التسعين من ١٠٠ مريض (%1): من %Ln مسار، استُخلص %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1: لا درجات، من اليوم %2 إلى اليوم %3.</numerusform>
                <numerusform>%1: درجة واحدة، من اليوم %2 إلى اليوم %3.</numerusform>
                <numerusform>%1: درجتان، من اليوم %2 إلى اليوم %3.</numerusform>
                <numerusform>%1: %Ln درجات، من اليوم %2 إلى اليوم %3.</numerusform>
                <numerusform>%1: %Ln درجة، من اليوم %2 إلى اليوم %3.</numerusform>
                <numerusform>%1: %Ln درجة، من اليوم %2 إلى اليوم %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ClinicPage</name>
        <message>
            <source>Clinic</source>
            <translation>العيادة</translation>
        </message>
        <message>
            <source>The numbers stand on every warning, even on a locked phone without network.</source>
            <translation>تظهر الأرقام مع كل تحذير، حتى على هاتف مقفل دون شبكة.</translation>
        </message>
        <message>
            <source>Name of the clinic</source>
            <translation>اسم العيادة</translation>
        </message>
        <message>
            <source>Phone during the day</source>
            <translation>الهاتف خلال النهار</translation>
        </message>
        <message>
            <source>On call, if the clinic does not answer</source>
            <translation>المناوب، إن لم تجب العيادة</translation>
        </message>
        <message>
            <source>Emergency number of your country</source>
            <translation>رقم الطوارئ في بلدك</translation>
        </message>
        <message>
            <source>People at the desk, one name a line</source>
            <translation>العاملون على المكتب، اسم في كل سطر</translation>
        </message>
        <message>
            <source>Hub, address and port</source>
            <translation>المحور، العنوان والمنفذ</translation>
        </message>
        <message>
            <source>Fingerprint of the hub's key, from whoever runs it</source>
            <translation>بصمة مفتاح المحور، ممن يديره</translation>
        </message>
        <message>
            <source>Missing: %1</source>
            <translation>ناقص: %1</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>حفظ</translation>
        </message>
        <message>
            <source>This clinic's key: whoever runs the hub admits it by this</source>
            <translation>مفتاح هذه العيادة: من يدير المحور يقبل العيادة به</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <translation>انسخ المفتاح</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>الانضمام إلى مكاتب العيادة</translation>
        </message>
        <message>
            <source>If the clinic works with Ebbline at another computer already</source>
            <translation>إن كانت العيادة تعمل مع Ebbline على حاسوب آخر</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>المكاتب</translation>
        </message>
        <message>
            <source>Add another computer, shut out a lost one</source>
            <translation>إضافة حاسوب آخر، وإقصاء حاسوب مفقود</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>النسخ الاحتياطي والمفاتيح</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>من فعل ماذا</translation>
        </message>
        <message>
            <source>What was written at the clinic's desks, to search and to save</source>
            <translation>ما كُتب على مكاتب العيادة، للبحث والحفظ</translation>
        </message>
    </context>
    <context>
        <name>ClosePanel</name>
        <message>
            <source>What came of it</source>
            <translation>ما نتج عنها</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>ملاحظة مكتوبة</translation>
        </message>
        <message>
            <source>Close the finding</source>
            <translation>إغلاق الملاحظة</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>أبقها مفتوحة</translation>
        </message>
    </context>
    <context>
        <name>Course</name>
        <message>
            <source>%1 °C</source>
            <translation>%1 °م</translation>
        </message>
        <message>
            <source>L %1</source>
            <comment>left, score</comment>
            <translation>يس %1</translation>
        </message>
        <message>
            <source>R %1</source>
            <comment>right, score</comment>
            <translation>يم %1</translation>
        </message>
        <message>
            <source>%1 by %2, %3</source>
            <comment>act, person, time</comment>
            <translation>%1: %2، %3</translation>
        </message>
        <message>
            <source>%1: %2. %3 Raised %4. %5</source>
            <comment>urgency, title, reason, time, acts</comment>
            <translation>%1: %2. %3 ظهر %4. %5</translation>
        </message>
        <message>
            <source>entered late, %1</source>
            <translation>أُدخلت متأخرة، %1</translation>
        </message>
        <message>
            <source>amended; was: %1</source>
            <translation>معدّلة؛ كانت: %1</translation>
        </message>
        <message>
            <source>no scores</source>
            <translation>بلا درجات</translation>
        </message>
        <message>
            <source>Opened by %1, %2</source>
            <translation>فتحها %1، %2</translation>
        </message>
        <message>
            <source>Not opened yet</source>
            <translation>لم تُفتح بعد</translation>
        </message>
        <message>
            <source>Read on the phone, %1</source>
            <translation>قُرئت على الهاتف، %1</translation>
        </message>
        <message>
            <source>Not read yet</source>
            <translation>لم تُقرأ بعد</translation>
        </message>
        <message>
            <source>Correction not opened yet; %1 opened an earlier version, %2</source>
            <translation>لم يُفتح التصحيح بعد؛ فتح %1 نسخة سابقة، %2</translation>
        </message>
        <message>
            <source>Before it was worse: %1</source>
            <comment>an act</comment>
            <translation>قبل أن يسوء: %1</translation>
        </message>
        <message>
            <source>By the day that stood then: %1</source>
            <comment>an act</comment>
            <translation>بحسب اليوم المسجّل حينها: %1</translation>
        </message>
        <message>
            <source>came before the time that it bears, %1: the clock of the phone or of this desk is wrong</source>
            <translation>وصل قبل الوقت المدوّن عليه، %1: ساعة الهاتف أو ساعة هذا المكتب خاطئة</translation>
        </message>
    </context>
    <context>
        <name>CourseLine</name>
        <message>
            <source>Link phone</source>
            <translation>ربط الهاتف</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>فتح</translation>
        </message>
    </context>
    <context>
        <name>CoursePage</name>
        <message>
            <source>Link phone</source>
            <translation>ربط الهاتف</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>المراجعة</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>الورقة</translation>
        </message>
        <message>
            <source>Close: %1</source>
            <translation>إغلاق: %1</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>تصدير</translation>
        </message>
        <message>
            <source>As a file, or for paper</source>
            <translation>كملف أو على الورق</translation>
        </message>
        <message>
            <source>Link another phone</source>
            <translation>ربط هاتف آخر</translation>
        </message>
        <message>
            <source>Its page says what happens, and asks once</source>
            <translation>صفحته تقول ما سيحدث وتسأل مرة واحدة</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>طباعة</translation>
        </message>
    </context>
    <context>
        <name>CoursesPage</name>
        <message>
            <source>Courses</source>
            <translation>المسارات</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>الاسم أو التشغيلة</translation>
        </message>
        <message>
            <source>No course</source>
            <translation>لا مسار</translation>
        </message>
    </context>
    <context>
        <name>CurvePanel</name>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>كما عند مواجهة المريض: يمين المريض على اليسار.</translation>
        </message>
        <message>
            <source>Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.</source>
            <translation>المنقّط: الوسيط. المفرغ: أُدخل متأخرًا أو عُدّل. القوس في النهاية: المتوقع عند المراجعة.</translation>
        </message>
        <message>
            <source>Show as curves</source>
            <translation>عرض كمنحنيات</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>عرض كجدول</translation>
        </message>
    </context>
    <context>
        <name>CurveTable</name>
        <message>
            <source>Day</source>
            <translation>اليوم</translation>
        </message>
        <message>
            <source>When</source>
            <translation>متى</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>يمين</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>يسار</translation>
        </message>
        <message>
            <source>Usual</source>
            <translation>المعتاد</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>ملاحظة مكتوبة</translation>
        </message>
        <message>
            <source>Nothing was recorded for this symptom.</source>
            <translation>لم يُسجَّل شيء لهذا العرض.</translation>
        </message>
    </context>
    <context>
        <name>Curves</name>
        <message>
            <source>highest %1 on day %2</source>
            <translation>الأعلى %1 في اليوم %2</translation>
        </message>
        <message>
            <source>halved in %1 days</source>
            <translation>انخفض إلى النصف في %1 يوم</translation>
        </message>
        <message>
            <source>settled on day %1</source>
            <translation>هدأ في اليوم %1</translation>
        </message>
        <message>
            <source>area: not enough to say</source>
            <translation>المساحة: لا يكفي للقول</translation>
        </message>
        <message>
            <source>area %1 points × days, day %2 to %3</source>
            <translation>المساحة %1 نقطة × يوم، من اليوم %2 إلى %3</translation>
        </message>
        <message>
            <source>level</source>
            <translation>متساويان</translation>
        </message>
        <message>
            <source>left %1 higher</source>
            <translation>اليسار أعلى بمقدار %1</translation>
        </message>
        <message>
            <source>right %1 higher</source>
            <translation>اليمين أعلى بمقدار %1</translation>
        </message>
        <message>
            <source>Left against right: not enough to say.</source>
            <translation>اليسار مقابل اليمين: لا يكفي للقول.</translation>
        </message>
        <message>
            <source>%1 on average</source>
            <translation>%1 في المتوسط</translation>
        </message>
        <message>
            <source>most on day %1 (%2)</source>
            <translation>الأكثر في اليوم %1 (%2)</translation>
        </message>
        <message>
            <source>too few points for a share of the sum</source>
            <translation>نقاط قليلة جدًا لحساب نسبة من المجموع</translation>
        </message>
        <message>
            <source>Left against right, %1 days with both: %2.</source>
            <translation>اليسار مقابل اليمين، عدد الأيام التي فيها الجانبان %1: %2.</translation>
        </message>
        <message>
            <source>Left: %1.</source>
            <translation>اليسار: %1.</translation>
        </message>
        <message>
            <source>Right: %1.</source>
            <translation>اليمين: %1.</translation>
        </message>
        <message>
            <source>the difference is %1% of the sum</source>
            <translation>الفرق %1٪ من المجموع</translation>
        </message>
        <message>
            <source>right %1 on day %2</source>
            <comment>score, day</comment>
            <translation>اليمين %1 في اليوم %2</translation>
        </message>
        <message>
            <source>left %1 on day %2</source>
            <comment>score, day</comment>
            <translation>اليسار %1 في اليوم %2</translation>
        </message>
        <message>
            <source>The axis ends with day 21. Last written after it: %1. The table has every score.</source>
            <translation>ينتهي المحور باليوم 21. آخر ما سُجّل بعده: %1. الجدول فيه كل الدرجات.</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>الحد بحسب النشرة الأمريكية، %1: %2 ملغ/كغ، وعمومًا لا يتجاوز %3 ملغ</translation>
        </message>
        <message>
            <source>Your clinic's limit, %1: %2 mg/kg, not over %3 mg</source>
            <translation>حد عيادتك، %1: %2 ملغ/كغ، لا يتجاوز %3 ملغ</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>مع إبينفرين</translation>
        </message>
        <message>
            <source>plain, the lower one, as some was given otherwise</source>
            <translation>دون إضافة، وهو الأدنى، لأن بعضه أُعطي بغير ذلك</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>دون إضافة</translation>
        </message>
        <message>
            <source>No dose can be shown: check the solution, the volumes and the weight.</source>
            <translation>لا يمكن عرض جرعة: تحقق من المحلول والأحجام والوزن.</translation>
        </message>
        <message>
            <source>%1 mL given, %2 mg lidocaine (%3 mg/mL)</source>
            <translation>أُعطي %1 مل، %2 ملغ ليدوكائين (%3 ملغ/مل)</translation>
        </message>
        <message>
            <source>%1 µg epinephrine</source>
            <translation>%1 ميكروغرام إبينفرين</translation>
        </message>
        <message>
            <source>%1 mg given otherwise, %2 mg in all</source>
            <translation>%1 ملغ أُعطيت بغير ذلك، والمجموع %2 ملغ</translation>
        </message>
        <message>
            <source>Enter the weight to see the maximum.</source>
            <translation>أدخل الوزن لرؤية الحد الأقصى.</translation>
        </message>
        <message>
            <source>At most %1 mg</source>
            <translation>%1 ملغ على الأكثر</translation>
        </message>
        <message>
            <source>%1 mL of this solution</source>
            <translation>%1 مل من هذا المحلول</translation>
        </message>
        <message>
            <source>(the label's cap)</source>
            <translation>(سقف النشرة)</translation>
        </message>
        <message>
            <source>(your clinic's cap)</source>
            <translation>(سقف عيادتك)</translation>
        </message>
        <message>
            <source>%1 of the maximum</source>
            <translation>%1 من الحد الأقصى</translation>
        </message>
        <message>
            <source>Over the maximum by %1 mg. Give no more.</source>
            <translation>تجاوز الحد الأقصى بمقدار %1 ملغ. لا تعطِ المزيد.</translation>
        </message>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>أكثر من %1 مل على المسار %2 (ممارسة شائعة، بلا مصدر)</numerusform>
                <numerusform>أكثر من %1 مل على المسار %2 (ممارسة شائعة، بلا مصدر)</numerusform>
                <numerusform>أكثر من %1 مل على المسارات %2 (ممارسة شائعة، بلا مصدر)</numerusform>
                <numerusform>أكثر من %1 مل على المسارات %2 (ممارسة شائعة، بلا مصدر)</numerusform>
                <numerusform>أكثر من %1 مل على المسارات %2 (ممارسة شائعة، بلا مصدر)</numerusform>
                <numerusform>أكثر من %1 مل على المسارات %2 (ممارسة شائعة، بلا مصدر)</numerusform>
            </translation>
        </message>
        <message>
            <source>plain, the lower one, as not all of it had epinephrine</source>
            <translation>دون إضافة، وهو الأدنى، لأن بعضه كان بلا إبينفرين</translation>
        </message>
        <message>
            <source>at most %1 µg epinephrine</source>
            <translation>%1 ميكروغرام إبينفرين على الأكثر</translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>الليدوكائين حتى الآن</translation>
        </message>
        <message>
            <source>Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.</source>
            <translation>أدخل كل ليدوكائين حُقن اليوم. الكريمات تُحسب ضمن الحد نفسه، لكن مقدار ما يُمتص منها غير معروف: لا يُحسب أي منها هنا. معادلة الحموضة تخفّف المحلول؛ أما الملغرامات فتبقى.</translation>
        </message>
    </context>
    <context>
        <name>EntryPanel</name>
        <message>
            <source>Entries</source>
            <translation>المدخلات</translation>
        </message>
        <message>
            <source>The patient's entries show up here once the phone has sent them.</source>
            <translation>تظهر مدخلات المريض هنا حالما يرسلها الهاتف.</translation>
        </message>
    </context>
    <context>
        <name>FacePanel</name>
        <message>
            <source>Front</source>
            <translation>أمامي</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>يسار المريض</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>يمين المريض</translation>
        </message>
        <message>
            <source>moves with speech</source>
            <translation>تتحرك مع الكلام</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>ثلمة</translation>
        </message>
        <message>
            <source>Face chart. Draw threads from the entry point to the end.</source>
            <translation>مخطط الوجه. ارسم الخيوط من نقطة الدخول إلى النهاية.</translation>
        </message>
        <message>
            <source>Mirror</source>
            <translation>عكس</translation>
        </message>
        <message>
            <source>the chosen thread, to the other side</source>
            <translation>الخيط المختار إلى الجانب الآخر</translation>
        </message>
        <message>
            <source>Mirror all</source>
            <translation>عكس الكل</translation>
        </message>
        <message>
            <source>Duplicate</source>
            <translation>تكرار</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>إزالة</translation>
        </message>
        <message>
            <source>Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.</source>
            <translation>المظلّل: المنطقة التي تتحرك مع الكلام والمضغ، وثلمة الفك. ممارسة شائعة، بلا مصدر.</translation>
        </message>
    </context>
    <context>
        <name>FindingCard</name>
        <message>
            <source>Closed</source>
            <translation>مغلق</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>تمت رؤيتها</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>تولَّ</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>اتصال</translation>
        </message>
        <message>
            <source>Visit forward</source>
            <translation>تقديم الموعد</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>إغلاق</translation>
        </message>
        <message>
            <source>Reopen</source>
            <translation>إعادة فتح</translation>
        </message>
    </context>
    <context>
        <name>FindingPanel</name>
        <message>
            <source>Findings</source>
            <translation>الملاحظات</translation>
        </message>
        <message>
            <source>Take all</source>
            <translation>تولَّ الكل</translation>
        </message>
        <message>
            <source>Call about all</source>
            <translation>الاتصال بشأن الكل</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>لم تستدعِ أي قاعدة أو علامة تحذير نظرة.</translation>
        </message>
        <message>
            <source>Note a call</source>
            <translation>تدوين مكالمة</translation>
        </message>
        <message>
            <source>She rang, or somebody spoke with her</source>
            <translation>اتصلت هي، أو تحدّث أحد معها</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>مكالمات مدوّنة في المسار</translation>
        </message>
    </context>
    <context>
        <name>Findings</name>
        <message>
            <source>%1, %2</source>
            <comment>symptom, side</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>%1: above the usual range</source>
            <translation>%1: فوق المجال المعتاد</translation>
        </message>
        <message>
            <source>%1: rising again</source>
            <translation>%1: يرتفع من جديد</translation>
        </message>
        <message>
            <source>%1: rising</source>
            <translation>%1: يرتفع</translation>
        </message>
        <message>
            <source>%1: one side much worse</source>
            <translation>%1: أحد الجانبين أسوأ بكثير</translation>
        </message>
        <message>
            <source>%1: slow to settle</source>
            <translation>%1: يهدأ ببطء</translation>
        </message>
        <message>
            <source>%1: does not smooth out</source>
            <translation>%1: لا يستوي</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>لا أخبار</translation>
        </message>
        <message>
            <source>%1 on day %2; usual up to %3.</source>
            <translation>%1 في اليوم %2؛ المعتاد حتى %3.</translation>
        </message>
        <message>
            <source>On average %1 over its last three days with an answer, up to day %2; usual up to %3.</source>
            <translation>بمتوسط %1 في آخر ثلاثة أيام فيها إجابة، حتى اليوم %2؛ والمعتاد حتى %3.</translation>
        </message>
        <message>
            <source>Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.</source>
            <translation>اليوم %1؛ ومنها %2 بمتوسط %3 في آخر ثلاثة أيام فيها إجابة، والمعتاد حتى %4.</translation>
        </message>
        <message>
            <source>%1 on day %2 after a low of %3.</source>
            <translation>%1 في اليوم %2 بعد أدنى قيمة %3.</translation>
        </message>
        <message>
            <source>Left %1, right %2 on day %3.</source>
            <translation>يسار %1، يمين %2 في اليوم %3.</translation>
        </message>
        <message>
            <source>All symptoms together: %1 points apart.</source>
            <translation>كل الأعراض معًا: الفرق %1 من النقاط.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>ما زال %1 في اليوم %2.</translation>
        </message>
        <message>
            <source>A week before: %1.</source>
            <translation>قبل ذلك بأسبوع: %1.</translation>
        </message>
        <message>
            <source>Over its last three days: %1 points.</source>
            <translation>في أيامها الثلاثة الأخيرة: %1 من النقاط.</translation>
        </message>
        <message>
            <source>In its first days: %1.</source>
            <translation>في أيامها الأولى: %1.</translation>
        </message>
        <message>
            <source>Noted because it is so late.</source>
            <translation>سُجِّل لأن الوقت تأخر.</translation>
        </message>
        <message>
            <source>Fever</source>
            <translation>حمّى</translation>
        </message>
        <message>
            <source>Fever with inflammation of the face</source>
            <translation>حمّى مع التهاب في الوجه</translation>
        </message>
        <message>
            <source>Weakness of the face, perhaps still the numbing</source>
            <translation>ضعف في الوجه، ربما لا يزال من التخدير</translation>
        </message>
        <message>
            <source>Signs of a spreading inflammation</source>
            <translation>علامات التهاب ينتشر</translation>
        </message>
        <message>
            <source>Severe pain</source>
            <translation>ألم شديد</translation>
        </message>
        <message>
            <source>One side swells and hurts</source>
            <translation>جانب واحد يتورّم ويؤلم</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>finding, side</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>Temperature %1 °C</source>
            <translation>الحرارة %1 °م</translation>
        </message>
        <message>
            <source>swelling %1 against %2</source>
            <translation>تورّم %1 مقابل %2</translation>
        </message>
        <message>
            <source>pain %1</source>
            <translation>الألم %1</translation>
        </message>
        <message>
            <source>The patient answered on day %1: %2.</source>
            <translation>أجاب المريض في اليوم %1: %2.</translation>
        </message>
        <message>
            <source>Warning rule “%1”: acts whatever the curve says.</source>
            <translation>قاعدة التحذير «%1»: تعمل مهما قال المنحنى.</translation>
        </message>
        <message>
            <source>Rule “%1”: statistic %2, threshold %3.</source>
            <translation>القاعدة «%1»: الإحصاء %2، العتبة %3.</translation>
        </message>
        <message>
            <source>Rule “%1”.</source>
            <translation>القاعدة «%1».</translation>
        </message>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>لا مدخلة منذ أقل من يوم.</numerusform>
                <numerusform>لا مدخلة منذ يوم.</numerusform>
                <numerusform>لا مدخلة منذ يومين.</numerusform>
                <numerusform>لا مدخلة منذ %Ln أيام.</numerusform>
                <numerusform>لا مدخلة منذ %Ln يومًا.</numerusform>
                <numerusform>لا مدخلة منذ %Ln يوم.</numerusform>
            </translation>
        </message>
        <message>
            <source>The visit was to be on day %1; by day %2 no follow-up was recorded.</source>
            <translation>كان موعد الزيارة في اليوم %1؛ وحتى اليوم %2 لم تُسجَّل أي مراجعة.</translation>
        </message>
        <message>
            <source>All symptoms together</source>
            <translation>كل الأعراض معًا</translation>
        </message>
        <message>
            <source>Day %1; among them %2 with %3, usual up to %4.</source>
            <translation>اليوم %1؛ منها %2 بدرجة %3، المعتاد حتى %4.</translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>صُحّح أو أُكمل بعد ذلك: لا يُثار هذا التنبيه بحسب القيود كما هي الآن. يبقى حتى يغلقه أحد.</translation>
        </message>
        <message>
            <source>Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.</source>
            <translation>أُبلغ عنه بحسب يوم للمعالجة أو درجات بعدها مباشرة صُحِّحت منذ ذلك الحين. يبقى إلى أن يغلقه أحد.</translation>
        </message>
    </context>
    <context>
        <name>FollowUpPage</name>
        <message>
            <source>Follow-up of %1</source>
            <translation>مراجعة %1</translation>
        </message>
        <message>
            <source>Recording it closes the course.</source>
            <translation>تسجيلها يغلق المسار.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>الورقة</translation>
        </message>
        <message>
            <source>Against before the treatment</source>
            <translation>مقارنة بما قبل المعالجة</translation>
        </message>
        <message>
            <source>How satisfied is the patient?</source>
            <translation>ما مدى رضا المريض؟</translation>
        </message>
        <message>
            <source>Management: what was done</source>
            <translation>التدبير: ما تم</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>الخطة التالية</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>المضاعفات</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>أسئلة مفتوحة</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>تسجيل وإغلاق المسار</translation>
        </message>
        <message>
            <source>An uncomplicated course?</source>
            <translation>مسار بلا مضاعفات؟</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>نعم</translation>
        </message>
        <message>
            <source>No</source>
            <translation>لا</translation>
        </message>
    </context>
    <context>
        <name>HelpPanel</name>
        <message>
            <source>Keys</source>
            <translation>المفاتيح</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>أعلى، أسفل</translation>
        </message>
        <message>
            <source>move in the queue</source>
            <translation>التنقّل في القائمة</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>open the course</source>
            <translation>فتح المسار</translation>
        </message>
        <message>
            <source>take it: others see who is on it</source>
            <translation>التولّي: يرى الآخرون من يتولاها</translation>
        </message>
        <message>
            <source>close the most urgent finding, with an outcome</source>
            <translation>إغلاق أكثر الملاحظات استعجالًا مع نتيجة</translation>
        </message>
        <message>
            <source>search</source>
            <translation>البحث</translation>
        </message>
        <message>
            <source>queue, courses</source>
            <translation>القائمة، المسارات</translation>
        </message>
        <message>
            <source>new treatment</source>
            <translation>معالجة جديدة</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>القفل</translation>
        </message>
        <message>
            <source>this help</source>
            <translation>هذه المساعدة</translation>
        </message>
        <message>
            <source>On the face chart</source>
            <translation>على مخطط الوجه</translation>
        </message>
        <message>
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread</source>
            <translation>الأسهم تحرّك المؤشر (مع Shift بخطوات صغيرة)، المسافة تضع نقطة الدخول والنهاية، Escape يبدأ من جديد؛ Page Up وPage Down تختاران خيطًا، Home يمسك نقطة دخوله وEnd نهايته، المسافة تضعها، Delete يزيل الخيط</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>عودة إلى العمل</translation>
        </message>
        <message>
            <source>call: number, what to ask, what was said</source>
            <translation>اتصال: الرقم وما يُسأل وما قيل</translation>
        </message>
        <message>
            <source>next with entries that nobody opened</source>
            <translation>التالية بتسجيلات لم يفتحها أحد</translation>
        </message>
        <message>
            <source>hand over</source>
            <translation>تسليم</translation>
        </message>
        <message>
            <source>On photographs</source>
            <translation>عند الصور</translation>
        </message>
        <message>
            <source>+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends</source>
            <translation>+ و- لتكبير الاثنتين وتصغيرهما، و0 لعرض الصورة كاملة، والأسهم لتحريك الظاهر؛ وعند تحديد العينين تحرّك الأسهم المؤشر (مع Shift بخطوات صغيرة)، ومفتاح المسافة يحدّد، وBackspace للتراجع، وEscape للإنهاء</translation>
        </message>
        <message>
            <source>Single keys (E, T, C, X, F, N, H, A, /) are on</source>
            <translation>المفاتيح المفردة (E, T, C, X, F, N, H, A, /) مفعّلة</translation>
        </message>
        <message>
            <source>take search and filters off</source>
            <translation>إزالة البحث والتصفية</translation>
        </message>
        <message>
            <source>open the course at the entry behind the reason</source>
            <translation>فتح المسار عند التسجيل الذي أدى إلى السبب</translation>
        </message>
        <message>
            <source>bring the visit forward: its new day and time</source>
            <translation>تقديم الموعد: اليوم والوقت الجديدان</translation>
        </message>
        <message>
            <source>print the sheet, the course or the hand-over</source>
            <translation>طباعة الورقة أو المسار أو التسليم</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Ebbline, desk</source>
            <translation>Ebbline، المكتب</translation>
        </message>
        <message>
            <source>Understood</source>
            <translation>مفهوم</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>حاول مجددًا</translation>
        </message>
        <message>
            <source>Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.</source>
            <translation>مريضات متخيَّلات: لا شيء هنا حقيقي، ولا يُرسل شيء، ويزول كله عند قفل المكتب.</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>مغادرة العرض</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>النسخ الاحتياطي والمفاتيح</translation>
        </message>
    </context>
    <context>
        <name>MessagePanel</name>
        <message>
            <source>Messages</source>
            <translation>الرسائل</translation>
        </message>
        <message>
            <source>No message yet.</source>
            <translation>لا رسالة بعد.</translation>
        </message>
        <message>
            <source>Write to the patient</source>
            <translation>اكتب إلى المريض</translation>
        </message>
        <message>
            <source>Send</source>
            <translation>إرسال</translation>
        </message>
    </context>
    <context>
        <name>NewEntriesBar</name>
        <message>
            <source>Mark as opened by me</source>
            <translation>سجّل أنني فتحتها</translation>
        </message>
    </context>
    <context>
        <name>PairingChoice</name>
        <message>
            <source>Protocol: care plan, rules and usual range, signed by the clinic</source>
            <translation>البروتوكول: خطة العناية والقواعد والمجال المعتاد، بتوقيع العيادة</translation>
        </message>
        <message>
            <source>Follow-up, year-month-day</source>
            <translation>المراجعة، سنة-شهر-يوم</translation>
        </message>
        <message>
            <source>Its time, hours:minutes, if it is agreed</source>
            <translation>وقتها، ساعات:دقائق، إن اتُّفق عليه</translation>
        </message>
    </context>
    <context>
        <name>PairingPage</name>
        <message>
            <source>Code for the patient's phone. It can also be typed: %1</source>
            <translation>رمز لهاتف المريض. يمكن كتابته أيضًا: %1</translation>
        </message>
        <message>
            <source>To type instead</source>
            <translation>للكتابة بدلًا من ذلك</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>ستة أرقام: %1</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>إنشاء رمز</translation>
        </message>
        <message>
            <source>Both show the same number</source>
            <translation>كلاهما يُظهر الرقم نفسه</translation>
        </message>
        <message>
            <source>They differ: stop</source>
            <translation>مختلفان: توقّف</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>إلغاء</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>إنشاء رمز جديد</translation>
        </message>
        <message>
            <source>To the queue</source>
            <translation>إلى القائمة</translation>
        </message>
        <message>
            <source>It shall hold the clinic's root key: link phones, add and shut out desks</source>
            <translation>يحمل المفتاح الأصل للعيادة: يربط الهواتف ويضيف المكاتب ويقصيها</translation>
        </message>
        <message>
            <source>The code</source>
            <translation>الرمز</translation>
        </message>
        <message>
            <source>and the hub's address</source>
            <translation>وعنوان المحور</translation>
        </message>
        <message>
            <source>To the desks</source>
            <translation>إلى المكاتب</translation>
        </message>
        <message>
            <source>The old phone is lost: the hub refuses it at once, and what it did not send stays unknown</source>
            <translation>الهاتف القديم مفقود: يرفضه المحور فورًا، وما لم يرسله يبقى مجهولًا</translation>
        </message>
        <message>
            <source>Only end the lost phone</source>
            <translation>إنهاء الهاتف المفقود فقط</translation>
        </message>
    </context>
    <context>
        <name>PersonPage</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>من على المكتب؟</translation>
        </message>
        <message>
            <source>What you take, call and close carries your name, and the patient's phone shows who opened an entry.</source>
            <translation>ما تتولاه وتتصل بشأنه وتغلقه يحمل اسمك، ويُظهر هاتف المريض من فتح المدخلة.</translation>
        </message>
        <message>
            <source>Somebody is missing: edit the clinic</source>
            <translation>أحدهم غير موجود: حرّر العيادة</translation>
        </message>
    </context>
    <context>
        <name>PackField</name>
        <message>
            <source>Code on the pack: scan it, or type it with its brackets</source>
            <translation>رمز العبوة: امسحه أو اكتبه بأقواسه</translation>
        </message>
    </context>
    <context>
        <name>PlacementFields</name>
        <message>
            <source>Side</source>
            <translation>الجانب</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>يسار</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>يمين</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>المنطقة</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>ينتهي</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>المادة</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>الشكل</translation>
        </message>
        <message>
            <source>Needle or cannula</source>
            <translation>إبرة أو قنية</translation>
        </message>
        <message>
            <source>Anaesthetic along it</source>
            <translation>التخدير على مساره</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>رقم التشغيلة</translation>
        </message>
        <message>
            <source>Expiry, year-month-day</source>
            <translation>الصلاحية، سنة-شهر-يوم</translation>
        </message>
        <message>
            <source>Thread %L1</source>
            <translation>الخيط %L1</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>مل</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>مم</translation>
        </message>
        <message>
            <source>G</source>
            <comment>needle gauge</comment>
            <translation>G</translation>
        </message>
        <message>
            <source>Redone</source>
            <translation>أُعيد</translation>
        </message>
        <message>
            <source>Why it was redone</source>
            <translation>سبب الإعادة</translation>
        </message>
        <message>
            <source>Brought in with</source>
            <translation>أُدخل بواسطة</translation>
        </message>
        <message>
            <source>Length of needle or cannula</source>
            <translation>طول الإبرة أو القنية</translation>
        </message>
        <message>
            <source>Length of thread</source>
            <translation>طول الخيط</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>الإبينفرين</translation>
        </message>
    </context>
    <context>
        <name>PlacementList</name>
        <message>
            <source>care</source>
            <translation>انتبه</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>لا خيوط</numerusform>
                <numerusform>خيط واحد</numerusform>
                <numerusform>خيطان</numerusform>
                <numerusform>%Ln خيوط</numerusform>
                <numerusform>%Ln خيطًا</numerusform>
                <numerusform>%Ln خيط</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message>
            <source>Take the dressings off</source>
            <translation>نزع الضمادات</translation>
        </message>
        <message>
            <source>Keep the entry points clean and dry</source>
            <translation>إبقاء نقاط الدخول نظيفة وجافة</translation>
        </message>
        <message>
            <source>Sleep on the back, head raised</source>
            <translation>النوم على الظهر والرأس مرفوع</translation>
        </message>
        <message>
            <source>Spare the face: small bites, no wide yawns, little talking</source>
            <translation>إراحة الوجه: لقم صغيرة، لا تثاؤب واسع، كلام قليل</translation>
        </message>
        <message>
            <source>Cold pack with a cloth between</source>
            <translation>كمادة باردة مع قماش بينها وبين الجلد</translation>
        </message>
        <message>
            <source>No make-up</source>
            <translation>لا مكياج</translation>
        </message>
        <message>
            <source>No massage of the face</source>
            <translation>لا تدليك للوجه</translation>
        </message>
        <message>
            <source>No dental work</source>
            <translation>لا علاج أسنان</translation>
        </message>
        <message>
            <source>No hard exercise</source>
            <translation>لا رياضة مجهدة</translation>
        </message>
        <message>
            <source>No sauna, hammam, hot bath or pool</source>
            <translation>لا ساونا ولا حمّام بخار أو ساخن ولا مسبح</translation>
        </message>
        <message>
            <source>No strong sun</source>
            <translation>لا شمس قوية</translation>
        </message>
        <message>
            <source>No alcohol</source>
            <translation>لا كحول</translation>
        </message>
        <message>
            <source>No smoking</source>
            <translation>لا تدخين</translation>
        </message>
        <message>
            <source>No shaving</source>
            <translation>لا حلاقة</translation>
        </message>
        <message>
            <source>Write down how it is</source>
            <translation>تدوين الحال</translation>
        </message>
        <message>
            <source>Come to the follow-up</source>
            <translation>الحضور إلى المراجعة</translation>
        </message>
        <message>
            <source>The clinic's own instruction</source>
            <translation>تعليمات العيادة الخاصة</translation>
        </message>
        <message>
            <source>on day %1</source>
            <translation>في اليوم %1</translation>
        </message>
        <message>
            <source>day %1 to day %2</source>
            <translation>من اليوم %1 إلى اليوم %2</translation>
        </message>
        <message>
            <source>a rule to keep, no reminder</source>
            <translation>قاعدة تُراعى، دون تذكير</translation>
        </message>
        <message>
            <source>reminds at %1</source>
            <translation>يذكّر في %1</translation>
        </message>
        <message>
            <source>Level: above the usual range</source>
            <translation>المستوى: فوق المجال المعتاد</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>العتبة %1</translation>
        </message>
        <message>
            <source>Rebound: rising again</source>
            <translation>ارتداد: يرتفع من جديد</translation>
        </message>
        <message>
            <source>Side divergence: one side much worse</source>
            <translation>تباعد الجانبين: أحدهما أسوأ بكثير</translation>
        </message>
        <message>
            <source>Slow recovery: slow to settle</source>
            <translation>تعافٍ بطيء: يهدأ ببطء</translation>
        </message>
        <message>
            <source>Persistent puckering: does not smooth out</source>
            <translation>انكماش باقٍ: لا يستوي</translation>
        </message>
        <message>
            <source>from day %1 on</source>
            <translation>من اليوم %1 فصاعدًا</translation>
        </message>
        <message>
            <source>Silence: nothing heard</source>
            <translation>الصمت: لا أخبار</translation>
        </message>
        <message>
            <source>shown apart, never as fine</source>
            <translation>يُعرض منفصلًا، ولا يُعدّ سليمًا أبدًا</translation>
        </message>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>يذكّر كل يوم في %1</numerusform>
                <numerusform>يذكّر كل يوم في %1</numerusform>
                <numerusform>يذكّر كل يومين في %1</numerusform>
                <numerusform>يذكّر كل %Ln أيام في %1</numerusform>
                <numerusform>يذكّر كل %Ln يومًا في %1</numerusform>
                <numerusform>يذكّر كل %Ln يوم في %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>%Ln نقطة على الأقل</numerusform>
                <numerusform>نقطة واحدة على الأقل</numerusform>
                <numerusform>نقطتان على الأقل</numerusform>
                <numerusform>%Ln نقاط على الأقل</numerusform>
                <numerusform>%Ln نقطة على الأقل</numerusform>
                <numerusform>%Ln نقطة على الأقل</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>%Ln نقطة على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
                <numerusform>نقطة واحدة على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
                <numerusform>نقطتان على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
                <numerusform>%Ln نقاط على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
                <numerusform>%Ln نقطة على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
                <numerusform>%Ln نقطة على الأقل فوق الأدنى، من اليوم %1 فصاعدًا</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>%Ln نقطة على الأقل بين الجانبين</numerusform>
                <numerusform>نقطة واحدة على الأقل بين الجانبين</numerusform>
                <numerusform>نقطتان على الأقل بين الجانبين</numerusform>
                <numerusform>%Ln نقاط على الأقل بين الجانبين</numerusform>
                <numerusform>%Ln نقطة على الأقل بين الجانبين</numerusform>
                <numerusform>%Ln نقطة على الأقل بين الجانبين</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطة واحدة على الأقل</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطتان على الأقل</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقاط على الأقل</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>بعد أقل من يوم</numerusform>
                <numerusform>بعد يوم</numerusform>
                <numerusform>بعد يومين</numerusform>
                <numerusform>بعد %Ln أيام</numerusform>
                <numerusform>بعد %Ln يومًا</numerusform>
                <numerusform>بعد %Ln يوم</numerusform>
            </translation>
        </message>
        <message>
            <source>Level, all symptoms together</source>
            <translation>المستوى، كل الأعراض معًا</translation>
        </message>
        <message>
            <source>Side divergence: one side fills in the first days</source>
            <translation>تباعد الجانبين: أحدهما يمتلئ في الأيام الأولى</translation>
        </message>
        <message>
            <source>Side divergence: one side worsens</source>
            <translation>تباعد الجانبين: أحدهما يسوء</translation>
        </message>
        <message>
            <source>Slow recovery, all symptoms together</source>
            <translation>تعافٍ بطيء، كل الأعراض معًا</translation>
        </message>
        <message>
            <source>Slow recovery: pain that stays high</source>
            <translation>تعافٍ بطيء: ألم يبقى شديدًا</translation>
        </message>
        <message>
            <source>Slow recovery: swelling, bruising or tightness that stays high</source>
            <translation>تعافٍ بطيء: تورّم أو كدمات أو شدّ يبقى شديدًا</translation>
        </message>
        <message>
            <source>%1 of 10 or more over the last three days; no threshold</source>
            <translation>%1 من 10 أو أكثر في الأيام الثلاثة الأخيرة؛ دون عتبة</translation>
        </message>
        <message>
            <source>Persistent puckering: unchanged for a week</source>
            <translation>انكماش باقٍ: لم يتغيّر منذ أسبوع</translation>
        </message>
        <message>
            <source>Persistent puckering: keeps most of its first days</source>
            <translation>انكماش باقٍ: يحتفظ بمعظم ما كان في الأيام الأولى</translation>
        </message>
        <message>
            <source>Persistent puckering: still deep</source>
            <translation>انكماش باقٍ: ما زال عميقًا</translation>
        </message>
        <message>
            <source>Silence after a high entry</source>
            <translation>الصمت بعد إدخال مرتفع</translation>
        </message>
        <message>
            <source>when the last entry was above the usual range</source>
            <translation>إذا كان آخر إدخال فوق المجال المعتاد</translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>حتى اليوم %1، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
                <numerusform>حتى اليوم %1، نقطة واحدة على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
                <numerusform>حتى اليوم %1، نقطتان على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
                <numerusform>حتى اليوم %1، %Ln نقاط على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
                <numerusform>حتى اليوم %1، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
                <numerusform>حتى اليوم %1، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والكدمات والشدّ</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطة واحدة على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطتان على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقاط على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل بين الجانبين في الألم والتورّم والشدّ</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>%Ln نقطة على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
                <numerusform>نقطة واحدة على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
                <numerusform>نقطتان على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
                <numerusform>%Ln نقاط على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
                <numerusform>%Ln نقطة على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
                <numerusform>%Ln نقطة على الأقل خلال الأيام الثلاثة الأخيرة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطة واحدة على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، نقطتان على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقاط على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
                <numerusform>من اليوم %1 فصاعدًا، %Ln نقطة على الأقل، بعد ذروة بلغت %2 أو أكثر</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ProtocolsPage</name>
        <message>
            <source>Protocols</source>
            <translation>البروتوكولات</translation>
        </message>
        <message>
            <source>Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.</source>
            <translation>خطة العناية والقواعد والمجال المعتاد تنتقل معًا إلى الهاتف بتوقيع العيادة، لتعمل دون شبكة.</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>ما يُطلب من المريض</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>ما يُظهر ملاحظة</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>ما يُعدّ معتادًا</translation>
        </message>
        <message>
            <source>Whom the patient calls</source>
            <translation>بمن يتصل المريض</translation>
        </message>
        <message>
            <source>Change the numbers</source>
            <translation>تغيير الأرقام</translation>
        </message>
        <message>
            <source>Change it</source>
            <translation>تغييره</translation>
        </message>
        <message>
            <source>Take from a file</source>
            <translation>أخذ من ملف</translation>
        </message>
        <message>
            <source>Shows what it is; nothing goes live by it.</source>
            <translation>يُظهر ما هو؛ ولا يُستعمل شيء بذلك.</translation>
        </message>
        <message>
            <source>Save as a file</source>
            <translation>حفظ في ملف</translation>
        </message>
        <message>
            <source>For the tool, or for a colleague&apos;s clinic.</source>
            <translation>للأداة، أو لعيادة زميل.</translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message>
            <source>Still open: %1, day %2.</source>
            <translation>ما زالت مفتوحة: %1، اليوم %2.</translation>
        </message>
        <message>
            <source>No phone was linked: ask how the days went.</source>
            <translation>لم يُربط هاتف: اسأل كيف مرّت الأيام.</translation>
        </message>
        <message>
            <source>The patient recorded nothing: ask how the days went.</source>
            <translation>لم يسجّل المريض شيئًا: اسأل كيف مرّت الأيام.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>لا مدخلات غير مفتوحة.</numerusform>
                <numerusform>مدخلة واحدة لم تُفتح بعد.</numerusform>
                <numerusform>مدخلتان لم تُفتحا بعد.</numerusform>
                <numerusform>%Ln مدخلات لم تُفتح بعد.</numerusform>
                <numerusform>%Ln مدخلة لم تُفتح بعد.</numerusform>
                <numerusform>%Ln مدخلة لم تُفتح بعد.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>لا رسائل غير مقروءة من المريض.</numerusform>
                <numerusform>رسالة واحدة من المريض لم تُقرأ بعد.</numerusform>
                <numerusform>رسالتان من المريض لم تُقرآ بعد.</numerusform>
                <numerusform>%Ln رسائل من المريض لم تُقرأ بعد.</numerusform>
                <numerusform>%Ln رسالة من المريض لم تُقرأ بعد.</numerusform>
                <numerusform>%Ln رسالة من المريض لم تُقرأ بعد.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>لا خيوط بلا رقم تشغيلة.</numerusform>
                <numerusform>خيط واحد بلا رقم تشغيلة.</numerusform>
                <numerusform>خيطان بلا رقم تشغيلة.</numerusform>
                <numerusform>%Ln خيوط بلا رقم تشغيلة.</numerusform>
                <numerusform>%Ln خيطًا بلا رقم تشغيلة.</numerusform>
                <numerusform>%Ln خيط بلا رقم تشغيلة.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>QueueActs</name>
        <message>
            <source>Open</source>
            <translation>فتح</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>تم التولّي</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>تولَّ</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>إغلاق</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>تسلّم</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>اتصال</translation>
        </message>
    </context>
    <context>
        <name>QueuePage</name>
        <message>
            <source>Queue</source>
            <translation>القائمة</translation>
        </message>
        <message>
            <source>Name or lot  ( / )</source>
            <translation>الاسم أو التشغيلة  ( / )</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>الاسم أو التشغيلة</translation>
        </message>
        <message>
            <source>Hand over</source>
            <translation>تسليم</translation>
        </message>
        <message>
            <source>A note for whoever takes over</source>
            <translation>ملاحظة لمن يتسلّم</translation>
        </message>
        <message>
            <source>Filter</source>
            <translation>تصفية</translation>
        </message>
        <message>
            <source>By who placed the threads, who took the row, and day</source>
            <translation>حسب من وضع الخيوط، ومن تولّى الصف، واليوم</translation>
        </message>
    </context>
    <context>
        <name>QueueRowHead</name>
        <message>
            <source>since %1 · %2</source>
            <translation>منذ %1 · %2</translation>
        </message>
    </context>
    <context>
        <name>Rail</name>
        <message>
            <source>Queue</source>
            <translation>القائمة</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>المسارات</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>معالجة جديدة</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>البروتوكولات</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>العيادة</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>الإعدادات</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>جارٍ سؤال المحور</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>اسأل المحور الآن</translation>
        </message>
        <message>
            <source>Nobody named</source>
            <translation>لم يُسمَّ أحد</translation>
        </message>
        <message>
            <source>Who is at the desk: change</source>
            <translation>من على المكتب: تغيير</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <translation>المفاتيح والمساعدة</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>قفل</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>حصيلة العيادة</translation>
        </message>
    </context>
    <context>
        <name>RailButton</name>
        <message>
            <source>shown now</source>
            <translation>معروض الآن</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>Settings</source>
            <translation>الإعدادات</translation>
        </message>
        <message>
            <source>For this computer. Nothing of a patient is stored here.</source>
            <translation>لهذا الحاسوب. لا يُحفظ هنا شيء عن المرضى.</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>اللغة</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>المظهر</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>فاتح</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>داكن</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>تباين عالٍ</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>حجم النص</translation>
        </message>
        <message>
            <source>Lock when nobody touches the desk for</source>
            <translation>القفل حين لا يلمس أحد المكتب لمدة</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>حركة أقل</translation>
        </message>
        <message>
            <source>Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off</source>
            <translation>مفاتيح مفردة في القائمة: E فتح التسجيل الذي أدى إلى السبب، T تأخذ، C اتصال، X إغلاق، F تقديم الموعد، N التالية غير المفتوحة، H تسليم، / بحث، A إزالة البحث والتصفية</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>حول Ebbline</translation>
        </message>
        <message>
            <source>Version, makers and licences</source>
            <translation>الإصدار والمؤلفون والتراخيص</translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
        <message>
            <source>%1 of 5</source>
            <translation>%1 من ٥</translation>
        </message>
        <message>
            <source>none, uncomplicated course</source>
            <translation>لا شيء، مسار بلا مضاعفات</translation>
        </message>
        <message>
            <source>none named, not an uncomplicated course</source>
            <translation>لم تُذكر، وليس مسارًا بلا مضاعفات</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>person, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>Change against before</source>
            <translation>التغيّر مقارنة بما قبل</translation>
        </message>
        <message>
            <source>Patient's satisfaction</source>
            <translation>رضا المريض</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>المضاعفات</translation>
        </message>
        <message>
            <source>Management</source>
            <translation>التدبير</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>الخطة التالية</translation>
        </message>
        <message>
            <source>Recorded by</source>
            <translation>سجّلها</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>ورقة المراجعة</translation>
        </message>
        <message>
            <source>Made %1, %2</source>
            <translation>أُعدّت %1، %2</translation>
        </message>
        <message>
            <source>Made %1, %2, by %3</source>
            <translation>أعدّها %3، %1، %2</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>المعالجة</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>يوم التعافي</translation>
        </message>
        <message>
            <source>Protocol</source>
            <translation>البروتوكول</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1، الإصدار %2</translation>
        </message>
        <message>
            <source>No reminder was due.</source>
            <translation>لم يُستحق أي تذكير.</translation>
        </message>
        <message>
            <source>Treatment map</source>
            <translation>خريطة المعالجة</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>رقم</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>الجانب</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>المنطقة</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>ينتهي</translation>
        </message>
        <message>
            <source>Thread</source>
            <translation>الخيط</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>التخدير</translation>
        </message>
        <message>
            <source>Local anaesthetic</source>
            <translation>التخدير الموضعي</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>التعافي</translation>
        </message>
        <message>
            <source>Findings and what was done</source>
            <translation>الملاحظات وما تم بشأنها</translation>
        </message>
        <message>
            <source>No finding.</source>
            <translation>لا ملاحظة.</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>لا شيء بعد</translation>
        </message>
        <message>
            <source>Urgency</source>
            <translation>الاستعجال</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>الملاحظة</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>ظهرت</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>ما تم</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>أسئلة مفتوحة</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>لا شيء.</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>عند المراجعة</translation>
        </message>
        <message>
            <source>At the follow-up, to be filled in</source>
            <translation>عند المراجعة، للتعبئة</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>يسار المريض</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>يمين المريض</translation>
        </message>
        <message>
            <source>Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source).</source>
            <translation>اليسار: خطوط متصلة ونقاط دخول مستديرة. اليمين: خطوط متقطعة ونقاط دخول مربعة. الشرطة تبيّن النهاية. المظلّل: المنطقة التي تتحرك مع الكلام، وثلمة الفك (ممارسة شائعة، بلا مصدر).</translation>
        </message>
        <message>
            <source>Nothing was recorded.</source>
            <translation>لم يُسجَّل شيء.</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. Hollow marks: entered late or amended. Missing days are gaps.</source>
            <translation>كما عند مواجهة المريض: يمين المريض على اليسار. الدرجة ٠ إلى ١٠ بحسب يوم التعافي. العلامات المفرغة: أُدخلت متأخرة أو عُدّلت. الأيام الناقصة فراغات.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>صفحة %1 من %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>%1 من %Ln تذكير أُجيب عنه «تم».</numerusform>
                <numerusform>%1 من تذكير واحد أُجيب عنه «تم».</numerusform>
                <numerusform>%1 من تذكيرين أُجيب عنهما «تم».</numerusform>
                <numerusform>%1 من %Ln تذكيرات أُجيب عنها «تم».</numerusform>
                <numerusform>%1 من %Ln تذكيرًا أُجيب عنها «تم».</numerusform>
                <numerusform>%1 من %Ln تذكير أُجيب عنها «تم».</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>لا مدخلات</numerusform>
                <numerusform>مدخلة واحدة</numerusform>
                <numerusform>مدخلتان</numerusform>
                <numerusform>%Ln مدخلات</numerusform>
                <numerusform>%Ln مدخلة</numerusform>
                <numerusform>%Ln مدخلة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>في %Ln يوم</numerusform>
                <numerusform>في يوم واحد</numerusform>
                <numerusform>في يومين</numerusform>
                <numerusform>في %Ln أيام</numerusform>
                <numerusform>في %Ln يومًا</numerusform>
                <numerusform>في %Ln يوم</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>%1: could not be opened</source>
            <translation>%1: تعذّر فتحها</translation>
        </message>
        <message>
            <source>The only photograph of this view.</source>
            <translation>الصورة الوحيدة لهذا المنظر.</translation>
        </message>
        <message>
            <source>Aligned by the eyes, not stretched and not mirrored.</source>
            <translation>محاذاة على العينين، دون تمديد ودون عكس.</translation>
        </message>
        <message>
            <source>As they were taken, perhaps not on one scale.</source>
            <translation>كما التُقطتا، وربما ليستا بمقياس واحد.</translation>
        </message>
        <message>
            <source>Photographs, %1: %2, and %3. %4</source>
            <comment>view, first, last, how</comment>
            <translation>الصور، %1: %2، و%3. %4</translation>
        </message>
        <message>
            <source>Photograph, %1: %2. %3</source>
            <comment>view, when, how</comment>
            <translation>صورة، %1: %2. %3</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>الصور</translation>
        </message>
        <message>
            <source>The first and the last of each view, the first on the left. Light, distance and expression may differ: compare with care.</source>
            <translation>الأولى والأخيرة لكل منظر، والأولى على اليسار. قد يختلف الضوء والمسافة وتعبير الوجه: قارن بحذر.</translation>
        </message>
        <message>
            <source>Lot, expiry</source>
            <translation>التشغيلة، الصلاحية</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>بعد العلاج مباشرة</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>الخطة</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>تصحيحات السجل</translation>
        </message>
    </context>
    <context>
        <name>SheetPage</name>
        <message>
            <source>Follow-up sheet</source>
            <translation>ورقة المراجعة</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>حفظ بصيغة PDF</translation>
        </message>
        <message>
            <source>Page %L1 of the sheet</source>
            <translation>صفحة %L1 من الورقة</translation>
        </message>
        <message>
            <source>With photographs: the first and the last of each view</source>
            <translation>مع الصور: الأولى والأخيرة لكل منظر</translation>
        </message>
        <message>
            <source>The photographs are being opened.</source>
            <translation>يجري فتح الصور.</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>طباعة</translation>
        </message>
    </context>
    <context>
        <name>StepField</name>
        <message>
            <source>%1: less</source>
            <translation>%1: أقل</translation>
        </message>
        <message>
            <source>%1: more</source>
            <translation>%1: أكثر</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>غير مذكور</translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message>
            <source>Today %1</source>
            <translation>اليوم %1</translation>
        </message>
        <message>
            <source>Yesterday %1</source>
            <translation>أمس %1</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>date without a year</comment>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>date with a year</comment>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>just now</source>
            <translation>الآن</translation>
        </message>
        <message>
            <source>Day %1</source>
            <translation>اليوم %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln min</source>
            <translation>
                <numerusform>%Ln دقيقة</numerusform>
                <numerusform>دقيقة واحدة</numerusform>
                <numerusform>دقيقتين</numerusform>
                <numerusform>%Ln دقائق</numerusform>
                <numerusform>%Ln دقيقة</numerusform>
                <numerusform>%Ln دقيقة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln h</source>
            <translation>
                <numerusform>%Ln ساعة</numerusform>
                <numerusform>ساعة واحدة</numerusform>
                <numerusform>ساعتين</numerusform>
                <numerusform>%Ln ساعات</numerusform>
                <numerusform>%Ln ساعة</numerusform>
                <numerusform>%Ln ساعة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln day(s)</source>
            <translation>
                <numerusform>%Ln يوم</numerusform>
                <numerusform>يوم واحد</numerusform>
                <numerusform>يومين</numerusform>
                <numerusform>%Ln أيام</numerusform>
                <numerusform>%Ln يومًا</numerusform>
                <numerusform>%Ln يوم</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Treatment</name>
        <message>
            <source>%1, %2, %3 G, %4 mm</source>
            <comment>material, form, gauge, length</comment>
            <translation>%1، %2، %3 G، %4 مم</translation>
        </message>
        <message>
            <source>Runs near the notch of the jaw: facial artery and marginal nerve.</source>
            <translation>يمر قرب ثلمة الفك: الشريان الوجهي والعصب الهامشي.</translation>
        </message>
        <message>
            <source>Ends past the zone that moves with speech and chewing.</source>
            <translation>ينتهي بعد المنطقة التي تتحرك مع الكلام والمضغ.</translation>
        </message>
        <message>
            <source>The end is drawn inside the moving zone.</source>
            <translation>رُسمت النهاية داخل المنطقة المتحركة.</translation>
        </message>
        <message>
            <source>no lot</source>
            <translation>بلا تشغيلة</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>تشغيلة %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 مل</translation>
        </message>
        <message>
            <source>Thread %1: %2, %3. %4. %5, %6, %7. %8</source>
            <comment>number, side, zone, ending, thread, lot, volume, caution</comment>
            <translation>الخيط %1: %2، %3. %4. %5، %6، %7. %8</translation>
        </message>
        <message>
            <source>Cautions explained</source>
            <translation>شُرحت المحاذير</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>الموافقة</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>الضمادات</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>الدرجات بعدها مباشرة</translation>
        </message>
        <message>
            <source>no</source>
            <translation>لا</translation>
        </message>
        <message>
            <source>none</source>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>نعم</translation>
        </message>
        <message>
            <source>%1 kg</source>
            <translation>%1 كغ</translation>
        </message>
        <message>
            <source>%1 mg</source>
            <translation>%1 ملغ</translation>
        </message>
        <message>
            <source>%1 mL outside the tracks</source>
            <translation>%1 مل خارج المسارات</translation>
        </message>
        <message>
            <source>%1, expiry %2</source>
            <comment>lot, date as on the pack</comment>
            <translation>%1، الصلاحية %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>label, value</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>May teach the usual range</source>
            <translation>يجوز أن يُسهم في المجال المعتاد</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>الوزن</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise</source>
            <translation>ليدوكائين أُعطي بغير ذلك</translation>
        </message>
        <message>
            <source>epinephrine %1</source>
            <translation>إبينفرين %1</translation>
        </message>
        <message>
            <source>not buffered</source>
            <translation>غير ممزوج ببيكربونات</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>لم يوزن</translation>
        </message>
        <message>
            <source>%1, %2%</source>
            <comment>drug, percent</comment>
            <translation>%1، %2٪</translation>
        </message>
        <message>
            <source>buffered with 8.4% bicarbonate, 1 part to %1</source>
            <translation>ممزوج ببيكربونات ٨٫٤٪، جزء إلى %1</translation>
        </message>
        <message>
            <source>One more along the same track</source>
            <translation>خيط إضافي في المسار نفسه</translation>
        </message>
        <message>
            <source>Taken out and placed anew</source>
            <translation>أُخرج ووُضع من جديد</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>من وضع الخيوط</translation>
        </message>
        <message>
            <source>not written down</source>
            <translation>غير مدوّن</translation>
        </message>
        <message>
            <source>What you chose stays. The drawing says otherwise: %1.</source>
            <translation>يبقى ما اخترته. الرسم يقول غير ذلك: %1.</translation>
        </message>
        <message>
            <source>Sharp needle</source>
            <translation>إبرة حادة</translation>
        </message>
        <message>
            <source>Blunt cannula</source>
            <translation>قنية كليلة الرأس</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <comment>needle or cannula, its length</comment>
            <translation>%1، %2 مم</translation>
        </message>
        <message>
            <source>Needle or cannula of %1 mm</source>
            <translation>إبرة أو قنية بطول %1 مم</translation>
        </message>
        <message>
            <source>no epinephrine</source>
            <translation>بلا إبينفرين</translation>
        </message>
        <message>
            <source>epinephrine at the entry point</source>
            <translation>إبينفرين عند نقطة الدخول</translation>
        </message>
        <message>
            <source>epinephrine along the track</source>
            <translation>إبينفرين على طول المسار</translation>
        </message>
        <message>
            <source>epinephrine at entry point and along the track</source>
            <translation>إبينفرين عند نقطة الدخول وعلى طول المسار</translation>
        </message>
        <message>
            <source>Planned: %1. Placed: %2.</source>
            <comment>threads, threads</comment>
            <translation>المخطط: %1. الموضوع: %2.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <comment>numbers of threads in the plan</comment>
            <translation>تُرك من الخطة: %1.</translation>
        </message>
        <message>
            <source>Not in the plan: %1.</source>
            <comment>numbers of threads</comment>
            <translation>ليس في الخطة: %1.</translation>
        </message>
        <message>
            <source>Moved: %1.</source>
            <comment>numbers of threads</comment>
            <translation>تغيّر موضعه: %1.</translation>
        </message>
        <message>
            <source>Otherwise than planned: %1.</source>
            <comment>numbers of threads</comment>
            <translation>خلاف الخطة: %1.</translation>
        </message>
        <message>
            <source>As planned.</source>
            <translation>كما خُطط.</translation>
        </message>
        <message>
            <source>%1 (in the plan %2)</source>
            <comment>number of a thread, its number in the plan</comment>
            <translation>%1 (في الخطة %2)</translation>
        </message>
        <message>
            <source>Left out.</source>
            <translation>تُرك.</translation>
        </message>
        <message>
            <source>Placed as thread %1.</source>
            <translation>وُضع بوصفه الخيط %1.</translation>
        </message>
        <message>
            <source>Moved.</source>
            <translation>تغيّر موضعه.</translation>
        </message>
        <message>
            <source>Otherwise than planned.</source>
            <translation>خلاف الخطة.</translation>
        </message>
        <message>
            <source>Planned thread %1: %2, %3. %4. %5. %6</source>
            <comment>number, side, zone, ending, thread, what became of it</comment>
            <translation>الخيط المخطط %1: %2، %3. %4. %5. %6</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>الخطة</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product as on the pack</comment>
            <translation>%1، المنتج %2</translation>
        </message>
        <message>
            <source>%1: %2; until then %3</source>
            <comment>label, what stands there now, what stood there</comment>
            <translation>%1: %2؛ وحتى ذلك الحين %3</translation>
        </message>
        <message>
            <source>Written in: %1</source>
            <comment>a thread</comment>
            <translation>أُضيف: %1</translation>
        </message>
        <message>
            <source>Taken out of the record: %1</source>
            <comment>a thread</comment>
            <translation>حُذف من السجل: %1</translation>
        </message>
        <message>
            <source>Thread %1</source>
            <comment>its number</comment>
            <translation>الخيط %1</translation>
        </message>
        <message>
            <source>Thread %1, until then %2</source>
            <comment>its number, its former number</comment>
            <translation>الخيط %1، وحتى ذلك الحين %2</translation>
        </message>
        <message>
            <source>drawn elsewhere</source>
            <translation>رُسم في موضع آخر</translation>
        </message>
        <message>
            <source>When the treatment was</source>
            <translation>متى كانت المعالجة</translation>
        </message>
        <message>
            <source>The threads are numbered otherwise.</source>
            <translation>رُقّمت الخيوط بترتيب آخر.</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>التخدير</translation>
        </message>
        <message>
            <source>Threads of the plan</source>
            <translation>خيوط الخطة</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>ملاحظة مكتوبة</translation>
        </message>
        <message>
            <source>Recorded again %1, without a reason</source>
            <comment>when</comment>
            <translation>سُجِّل من جديد %1 دون ذكر سبب</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>شخص ما</translation>
        </message>
        <message>
            <source>Corrected %1 by %2. Why: %3</source>
            <comment>when, who, reason</comment>
            <translation>صُحِّح %1 بواسطة %2. السبب: %3</translation>
        </message>
        <message>
            <source>What stood there until then has not arrived at this desk.</source>
            <translation>ما كان مكتوبًا حتى ذلك الحين لم يصل إلى هذا المكتب.</translation>
        </message>
        <message>
            <source>Nothing differs from what stood there.</source>
            <translation>لا شيء يختلف عمّا كان مكتوبًا.</translation>
        </message>
        <message>
            <source>This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.</source>
            <translation>تُحسب هذه المتابعة وهاتفها بيوم آخر للعلاج، أو بدرجات أخرى بعده مباشرة، غير ما يقوله السجل. صحّح السجل أو سجّله مرة أخرى كما هو: عندها يُحسبان وفقه.</translation>
        </message>
        <message>
            <source>Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.</source>
            <translation>سجّل مكتبان هذا دون أن يعلم أحدهما بالآخر. يسري السجل الأحدث كله؛ انظر أدناه ما قاله الآخر وصحّح ما ينقص.</translation>
        </message>
        <message>
            <source>No phone has this course: nothing changes on one.</source>
            <translation>لا هاتف لديه هذا المسار: لا يتغير شيء على أي هاتف.</translation>
        </message>
        <message>
            <source>Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.</source>
            <translation>لا يحفظ هاتفها من المعالجة إلا وقتها والدرجات بعدها مباشرة. يبقى الاثنان كما هما؛ ولا يُرسل شيء من هذا إليه.</translation>
        </message>
        <message>
            <source>With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.</source>
            <translation>في المزامنة التالية يتلقى هاتفها وقت المعالجة والدرجات بعدها مباشرة، ويحسب بها الأيام والتذكيرات والتحذيرات. وحتى ذلك الحين يعمل بالقديمة. تُقيَّم النتائج من جديد لدى الطرفين؛ وما أُبلغ عنه يبقى، لكن هاتفًا ببرنامج أقدم يُسقط ما لا يثيره اليوم الجديد.</translation>
        </message>
        <message>
            <source>The visit that was agreed does not lie 1 to 60 days after that: agree on another one.</source>
            <translation>الموعد المتفق عليه لا يقع بعد ذلك بمدة من 1 إلى 60 يومًا: اتفق على موعد آخر.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentAnaesthetic</name>
        <message>
            <source>Solution</source>
            <translation>المحلول</translation>
        </message>
        <message>
            <source>Strength</source>
            <translation>التركيز</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>الإبينفرين</translation>
        </message>
        <message>
            <source>Of this solution outside the tracks: entry points, blocks</source>
            <translation>من هذا المحلول خارج المسارات: نقاط الدخول والحصر العصبي</translation>
        </message>
        <message>
            <source>Weight, kg</source>
            <translation>الوزن، كغ</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>مل</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise, mg</source>
            <translation>ليدوكائين أُعطي بغير ذلك، ملغ</translation>
        </message>
        <message>
            <source>Nerve blocks, other strengths</source>
            <translation>حصر الأعصاب، تراكيز أخرى</translation>
        </message>
        <message>
            <source>Buffered with 8.4% bicarbonate</source>
            <translation>ممزوج ببيكربونات ٨٫٤٪</translation>
        </message>
        <message>
            <source>Where it held epinephrine, all threads at once</source>
            <translation>أين كان فيه إبينفرين، كل الخيوط معًا</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCare</name>
        <message>
            <source>Care and consent</source>
            <translation>العناية والموافقة</translation>
        </message>
        <message>
            <source>Small dressings on the entry points</source>
            <translation>ضمادات صغيرة على نقاط الدخول</translation>
        </message>
        <message>
            <source>Cautions explained: what is usual, when to call, what to spare</source>
            <translation>شُرح: ما المعتاد، متى يُتصل، ما يجب تجنّبه</translation>
        </message>
        <message>
            <source>Consent to the treatment given</source>
            <translation>أُعطيت الموافقة على المعالجة</translation>
        </message>
        <message>
            <source>This course may teach the clinic's usual range, without a name</source>
            <translation>يجوز أن يُسهم هذا المسار في المجال المعتاد للعيادة دون اسم</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>ملاحظة مكتوبة</translation>
        </message>
        <message>
            <source>Before it can be recorded</source>
            <translation>قبل أن يمكن تسجيلها</translation>
        </message>
        <message>
            <source>Right after the treatment, 0 to 10</source>
            <translation>بعد المعالجة مباشرة، ٠ إلى ١٠</translation>
        </message>
        <message>
            <source>What you see now, on each side of the patient. Leave a dash where you did not look.</source>
            <translation>ما تراه الآن على كل جانب من المريض. اترك الشرطة حيث لم تنظر.</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>يمين</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>يسار</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>من وضع الخيوط</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPage</name>
        <message>
            <source>Treatment of %1</source>
            <translation>معالجة %1</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>معالجة جديدة</translation>
        </message>
        <message>
            <source>Taken up from the kept draft, %1</source>
            <translation>من المسودة المحفوظة، %1</translation>
        </message>
        <message>
            <source>Start over</source>
            <translation>البدء من جديد</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>التالي: %1</translation>
        </message>
        <message>
            <source>Record the treatment</source>
            <translation>تسجيل المعالجة</translation>
        </message>
        <message>
            <source>%1 What you write is kept as a draft.</source>
            <translation>%1 ما تكتبه يُحفظ مسودةً.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>تراجع</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>إعادة</translation>
        </message>
        <message>
            <source>Empties everything but the patient; can be undone.</source>
            <translation>يُفرغ كل شيء ما عدا المريض؛ ويمكن التراجع عنه.</translation>
        </message>
        <message>
            <source>Correct the treatment of %1</source>
            <translation>تصحيح معالجة %1</translation>
        </message>
        <message>
            <source>Drop the correction</source>
            <translation>ترك التصحيح</translation>
        </message>
        <message>
            <source>The record stays as it is.</source>
            <translation>يبقى السجل كما هو.</translation>
        </message>
        <message>
            <source>Record the correction</source>
            <translation>تسجيل التصحيح</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPatient</name>
        <message>
            <source>Known patients</source>
            <translation>المرضى المعروفون</translation>
        </message>
        <message>
            <source>Name or phone</source>
            <translation>الاسم أو الهاتف</translation>
        </message>
        <message>
            <source>Nobody found. Register the patient beside this.</source>
            <translation>لم يُعثر على أحد. سجّل المريض بجانب هذا.</translation>
        </message>
        <message>
            <source>New patient</source>
            <translation>مريض جديد</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>الاسم</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>رقم الهاتف للاتصال بالمريض</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>لغة اليوميات</translation>
        </message>
        <message>
            <source>Register</source>
            <translation>تسجيل</translation>
        </message>
        <message>
            <source>Begun and not recorded</source>
            <translation>بُدئ ولم يُسجَّل</translation>
        </message>
    </context>
    <context>
        <name>TreatmentThreads</name>
        <message>
            <source>Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.</source>
            <translation>ارسم خيطًا على المخطط: اضغط عند نقطة الدخول وأفلت عند النهاية. بالمفاتيح: الأسهم والمسافة.</translation>
        </message>
    </context>
    <context>
        <name>UndoBar</name>
        <message>
            <source>Undo</source>
            <translation>تراجع</translation>
        </message>
    </context>
    <context>
        <name>UnlockPage</name>
        <message>
            <source>Passphrase</source>
            <translation>عبارة المرور</translation>
        </message>
        <message>
            <source>Passphrase once more</source>
            <translation>عبارة المرور مرة أخرى</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>فتح القفل</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>إعداد</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>اللغة</translation>
        </message>
        <message>
            <source>Look around with invented patients</source>
            <translation>جولة بمريضات متخيَّلات</translation>
        </message>
        <message>
            <source>A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.</source>
            <translation>عيادة مستقلة تزول عند القفل. وتبقى خزنة العيادة مغلقة.</translation>
        </message>
        <message>
            <source>Recovery code from the paper</source>
            <translation>رمز الاستعادة من الورقة</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>عبارة مرور جديدة</translation>
        </message>
        <message>
            <source>Set this passphrase and unlock</source>
            <translation>ضبط هذه العبارة وفتح القفل</translation>
        </message>
        <message>
            <source>I know the passphrase</source>
            <translation>أعرف عبارة المرور</translation>
        </message>
        <message>
            <source>I lost the passphrase</source>
            <translation>فقدت عبارة المرور</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>إيقاف</translation>
        </message>
        <message>
            <source>Nothing has been written yet.</source>
            <translation>لم يُكتب أي شيء بعد.</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Emergency</source>
            <translation>طوارئ</translation>
        </message>
        <message>
            <source>Call now</source>
            <translation>اتصل الآن</translation>
        </message>
        <message>
            <source>Next working day</source>
            <translation>يوم العمل التالي</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>عند المراجعة</translation>
        </message>
        <message>
            <source>The phone said to call the emergency number. Make sure that help is on its way.</source>
            <translation>نصح الهاتف بالاتصال بالطوارئ. تأكد من أن المساعدة في الطريق.</translation>
        </message>
        <message>
            <source>The phone said to call the clinic today. Call the patient if no call came.</source>
            <translation>نصح الهاتف بالاتصال بالعيادة اليوم. إن لم يتصل المريض فاتصل به.</translation>
        </message>
        <message>
            <source>The patient expects an answer on the next working day.</source>
            <translation>ينتظر المريض جوابًا في يوم العمل التالي.</translation>
        </message>
        <message>
            <source>Bring it up at the follow-up.</source>
            <translation>اطرحه عند المراجعة.</translation>
        </message>
        <message>
            <source>Hard to breathe or to swallow</source>
            <translation>صعوبة في التنفس أو البلع</translation>
        </message>
        <message>
            <source>Neck or jaw swelling that grows fast</source>
            <translation>تورّم في العنق أو الفك يكبر بسرعة</translation>
        </message>
        <message>
            <source>Throat or tongue swells, wheeze, faint or hives</source>
            <translation>تورّم الحلق أو اللسان أو صفير أو إغماء أو شرى</translation>
        </message>
        <message>
            <source>Metal taste, ringing ears, confusion or twitching</source>
            <translation>طعم معدني أو طنين أو تشوش أو ارتعاش</translation>
        </message>
        <message>
            <source>Severely ill: hard shivering, confused or mottled skin</source>
            <translation>مرض شديد: ارتجاف قوي أو تشوش أو جلد مبقّع</translation>
        </message>
        <message>
            <source>Face droops with a weak arm or slurred speech</source>
            <translation>تدلّي الوجه مع ضعف ذراع أو تلعثم</translation>
        </message>
        <message>
            <source>Sudden loss of sight or double vision</source>
            <translation>فقدان مفاجئ للبصر أو ازدواج الرؤية</translation>
        </message>
        <message>
            <source>One side swells fast</source>
            <translation>جانب واحد يتورّم بسرعة</translation>
        </message>
        <message>
            <source>Skin white, grey or net-like, cold or blistering</source>
            <translation>جلد أبيض أو رمادي أو شبكي أو بارد أو متنفّط</translation>
        </message>
        <message>
            <source>Colour change near an entry point</source>
            <translation>تغيّر لون قرب نقطة دخول</translation>
        </message>
        <message>
            <source>Warmer than the other side</source>
            <translation>أدفأ من الجانب الآخر</translation>
        </message>
        <message>
            <source>Firm, shiny or tight</source>
            <translation>قاسٍ أو لامع أو مشدود</translation>
        </message>
        <message>
            <source>More tender than yesterday</source>
            <translation>أكثر إيلامًا باللمس من أمس</translation>
        </message>
        <message>
            <source>The edge has moved</source>
            <translation>تحرّكت الحافة</translation>
        </message>
        <message>
            <source>Thick or milky fluid</source>
            <translation>سائل كثيف أو حليبي</translation>
        </message>
        <message>
            <source>Thread end through the skin</source>
            <translation>طرف خيط عبر الجلد</translation>
        </message>
        <message>
            <source>Weakness of the face</source>
            <translation>ضعف في الوجه</translation>
        </message>
        <message>
            <source>Cheek swells on eating, or clear fluid</source>
            <translation>يتورّم الخد عند الأكل، أو سائل صافٍ</translation>
        </message>
        <message>
            <source>Still bleeding after 15 minutes of pressure</source>
            <translation>ما زال ينزف بعد ١٥ دقيقة من الضغط</translation>
        </message>
        <message>
            <source>A lump that beats</source>
            <translation>كتلة نابضة</translation>
        </message>
        <message>
            <source>Thread seen or felt, skin calm</source>
            <translation>خيط يُرى أو يُحس، والجلد هادئ</translation>
        </message>
        <message>
            <source>Chills</source>
            <translation>قشعريرة</translation>
        </message>
        <message>
            <source>Brow</source>
            <translation>الحاجب</translation>
        </message>
        <message>
            <source>Temple</source>
            <translation>الصدغ</translation>
        </message>
        <message>
            <source>Midface</source>
            <translation>وسط الوجه</translation>
        </message>
        <message>
            <source>Cheek</source>
            <translation>الخد</translation>
        </message>
        <message>
            <source>Nasolabial fold</source>
            <translation>الطية الأنفية الشفوية</translation>
        </message>
        <message>
            <source>Marionette fold</source>
            <translation>طية زاوية الفم</translation>
        </message>
        <message>
            <source>Jawline</source>
            <translation>خط الفك</translation>
        </message>
        <message>
            <source>Under the chin</source>
            <translation>تحت الذقن</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>العنق</translation>
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
            <translation>مادة أخرى</translation>
        </message>
        <message>
            <source>Smooth</source>
            <translation>أملس</translation>
        </message>
        <message>
            <source>Twisted</source>
            <translation>مجدول</translation>
        </message>
        <message>
            <source>Barbed, one way</source>
            <translation>مسنّن باتجاه واحد</translation>
        </message>
        <message>
            <source>Barbed, two ways</source>
            <translation>مسنّن باتجاهين</translation>
        </message>
        <message>
            <source>Moulded</source>
            <translation>مقولب</translation>
        </message>
        <message>
            <source>Cones</source>
            <translation>مخاريط</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>بعد المنطقة المتحركة</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>قبل المنطقة المتحركة</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>يسار</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>يمين</translation>
        </message>
        <message>
            <source>Both</source>
            <translation>كلاهما</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>أمامي</translation>
        </message>
        <message>
            <source>From the patient's left</source>
            <translation>من يسار المريض</translation>
        </message>
        <message>
            <source>From the patient's right</source>
            <translation>من يمين المريض</translation>
        </message>
        <message>
            <source>Lidocaine with epinephrine</source>
            <translation>ليدوكائين مع إبينفرين</translation>
        </message>
        <message>
            <source>Lidocaine, plain</source>
            <translation>ليدوكائين دون إضافة</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>تمت رؤيتها</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>تم التولّي</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>تم الاتصال</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>قُدّم الموعد</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>مغلق</translation>
        </message>
        <message>
            <source>Reopened</source>
            <translation>أُعيد فتحها</translation>
        </message>
        <message>
            <source>Reassured: usual course, explained</source>
            <translation>طُمئن: مسار معتاد، شُرح له</translation>
        </message>
        <message>
            <source>Advised: told what to do at home</source>
            <translation>نُصح: قيل له ما يفعله في البيت</translation>
        </message>
        <message>
            <source>Treated in the clinic</source>
            <translation>عولج في العيادة</translation>
        </message>
        <message>
            <source>Sent to urgent care</source>
            <translation>أُرسل إلى الرعاية العاجلة</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>لم يُعثر عليه</translation>
        </message>
        <message>
            <source>Very much better</source>
            <translation>أفضل كثيرًا جدًا</translation>
        </message>
        <message>
            <source>Much better</source>
            <translation>أفضل بكثير</translation>
        </message>
        <message>
            <source>Better</source>
            <translation>أفضل</translation>
        </message>
        <message>
            <source>Unchanged</source>
            <translation>دون تغيّر</translation>
        </message>
        <message>
            <source>Worse</source>
            <translation>أسوأ</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>ورم دموي</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>عدوى</translation>
        </message>
        <message>
            <source>Thread end out</source>
            <translation>خروج طرف خيط</translation>
        </message>
        <message>
            <source>Lasting puckering</source>
            <translation>انكماش دائم</translation>
        </message>
        <message>
            <source>Visible thread</source>
            <translation>خيط ظاهر</translation>
        </message>
        <message>
            <source>Nerve weakness</source>
            <translation>ضعف عصب</translation>
        </message>
        <message>
            <source>Lasting numbness</source>
            <translation>خدر دائم</translation>
        </message>
        <message>
            <source>Salivary leak</source>
            <translation>تسرّب لعابي</translation>
        </message>
        <message>
            <source>Skin injury</source>
            <translation>إصابة جلدية</translation>
        </message>
        <message>
            <source>Asymmetry</source>
            <translation>عدم تناظر</translation>
        </message>
        <message>
            <source>Other, see note</source>
            <translation>أخرى، انظر الملاحظة</translation>
        </message>
        <message>
            <source>That passphrase does not open this vault.</source>
            <translation>عبارة المرور هذه لا تفتح هذه الخزنة.</translation>
        </message>
        <message>
            <source>Too many tries. Wait a moment, then try again.</source>
            <translation>محاولات كثيرة. انتظر لحظة ثم حاول مجددًا.</translation>
        </message>
        <message>
            <source>The vault on this computer is damaged. Nothing was changed. Restore it from a backup.</source>
            <translation>الخزنة على هذا الحاسوب تالفة. لم يتغير شيء. استعدها من نسخة احتياطية.</translation>
        </message>
        <message>
            <source>The disk is full. Nothing was saved. Free some space and try again.</source>
            <translation>القرص ممتلئ. لم يُحفظ شيء. أفرغ بعض المساحة ثم حاول مجددًا.</translation>
        </message>
        <message>
            <source>The disk reported an error. Nothing was saved.</source>
            <translation>أبلغ القرص عن خطأ. لم يُحفظ شيء.</translation>
        </message>
        <message>
            <source>The hub cannot be reached. What you record is kept here and sent later.</source>
            <translation>لا يمكن الوصول إلى المحور. ما تسجّله محفوظ هنا ويُرسل لاحقًا.</translation>
        </message>
        <message>
            <source>Something arrived that is not genuine. It was kept apart and not used.</source>
            <translation>وصل شيء غير أصيل. عُزل ولم يُستخدم.</translation>
        </message>
        <message>
            <source>Its time is over. Start again.</source>
            <translation>انتهى وقته. ابدأ من جديد.</translation>
        </message>
        <message>
            <source>There is one already.</source>
            <translation>يوجد واحد من قبل.</translation>
        </message>
        <message>
            <source>It is not there.</source>
            <translation>غير موجود.</translation>
        </message>
        <message>
            <source>The vault is locked. Unlock it first.</source>
            <translation>الخزنة مقفلة. افتحها أولًا.</translation>
        </message>
        <message>
            <source>It was refused.</source>
            <translation>رُفض.</translation>
        </message>
        <message>
            <source>Something is missing or out of range: %1</source>
            <translation>شيء ناقص أو خارج المجال: %1</translation>
        </message>
        <message>
            <source>This needs a newer version of the program.</source>
            <translation>يحتاج هذا إلى إصدار أحدث من البرنامج.</translation>
        </message>
        <message>
            <source>That is too long.</source>
            <translation>هذا طويل جدًا.</translation>
        </message>
        <message>
            <source>That is not possible now.</source>
            <translation>هذا غير ممكن الآن.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln invented course(s)</source>
            <translation>
                <numerusform>%Ln مسار مختلق</numerusform>
                <numerusform>مسار مختلق واحد</numerusform>
                <numerusform>مسارين مختلقين</numerusform>
                <numerusform>%Ln مسارات مختلقة</numerusform>
                <numerusform>%Ln مسارًا مختلقًا</numerusform>
                <numerusform>%Ln مسار مختلق</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln uncomplicated course(s)</source>
            <translation>
                <numerusform>%Ln مسار بلا مضاعفات</numerusform>
                <numerusform>مسار واحد بلا مضاعفات</numerusform>
                <numerusform>مسارين بلا مضاعفات</numerusform>
                <numerusform>%Ln مسارات بلا مضاعفات</numerusform>
                <numerusform>%Ln مسارًا بلا مضاعفات</numerusform>
                <numerusform>%Ln مسار بلا مضاعفات</numerusform>
            </translation>
        </message>
        <message>
            <source>Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.</source>
            <translation>من دون TLS قد يقرأ آخرون: بروتوكول HTTP وحده لمحور على هذا الحاسوب نفسه. لم يُرسل شيء.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.</source>
            <translation>لا يُعرف هل عرض الهاتف هذا التحذير. اتصل الآن وتأكد من أن المساعدة في الطريق.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call the patient now.</source>
            <translation>لا يُعرف هل عرض الهاتف هذا التحذير. اتصل بالمريض الآن.</translation>
        </message>
        <message>
            <source>Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none.</source>
            <translation>دم تجمّع تحت الجلد على شكل كتلة وتمت مراقبته عن قرب أو ضغطه أو تفريغه أو جراحته؛ الكدمة المسطحة ليست كذلك.</translation>
        </message>
        <message>
            <source>Pus, or redness, warmth and pain that spread, treated as an infection.</source>
            <translation>قيح، أو احمرار وحرارة وألم تنتشر، عولجت على أنها عدوى.</translation>
        </message>
        <message>
            <source>An end of a thread stands out of the skin or lies bare.</source>
            <translation>طرف خيط يبرز من الجلد أو مكشوف.</translation>
        </message>
        <message>
            <source>A dimple or fold along a thread that is still there at the follow-up.</source>
            <translation>نقرة أو ثنية على طول خيط ما زالت موجودة عند المراجعة.</translation>
        </message>
        <message>
            <source>A thread can be seen or felt through closed skin, and troubles the patient.</source>
            <translation>خيط يُرى أو يُحس عبر جلد مغلق ويزعج المريضة.</translation>
        </message>
        <message>
            <source>A part of the face moves less than before the treatment, after the anaesthetic has worn off.</source>
            <translation>جزء من الوجه يتحرك أقل مما قبل المعالجة بعد زوال التخدير.</translation>
        </message>
        <message>
            <source>Feeling in a part of the face is less or other than before, still at the follow-up.</source>
            <translation>الإحساس في جزء من الوجه أقل أو مختلف عما كان، حتى وقت المراجعة.</translation>
        </message>
        <message>
            <source>Clear fluid from the cheek or swelling of it, more while eating.</source>
            <translation>سائل صافٍ من الخد أو تورّم فيه يزداد عند الأكل.</translation>
        </message>
        <message>
            <source>Skin that blistered, died, broke open or was left with a scar or a dark mark.</source>
            <translation>جلد تقرّح بفقاعات أو مات أو انفتح أو بقي فيه ندبة أو بقعة داكنة.</translation>
        </message>
        <message>
            <source>The sides differ more than before the treatment, in the eyes of patient or practitioner.</source>
            <translation>يختلف الجانبان أكثر مما قبل المعالجة في نظر المريضة أو المعالج.</translation>
        </message>
        <message>
            <source>Anything else that needed a visit, a medicine or an act; the note says what.</source>
            <translation>أي شيء آخر احتاج إلى زيارة أو دواء أو إجراء؛ والملاحظة تقول ما هو.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::app::DeskProgram</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>من على المكتب؟</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>القائمة</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>المسارات</translation>
        </message>
        <message>
            <source>Treatment</source>
            <translation>المعالجة</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>ربط هاتف</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>المسار</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>المراجعة</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>ورقة المراجعة</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>البروتوكولات</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>العيادة</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>الإعدادات</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>حصيلة العيادة</translation>
        </message>
        <message>
            <source>Change the protocol</source>
            <translation>تغيير البروتوكول</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>التسليم</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>إضافة مكتب</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>المكاتب</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>الانضمام إلى مكاتب العيادة</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>النسخ الاحتياطي والمفاتيح</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>حول Ebbline</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>من فعل ماذا</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>الصور</translation>
        </message>
        <message>
            <source>The recovery code is not shown any more. If it is not on paper, make a new one.</source>
            <translation>لم يعد رمز الاسترداد ظاهرًا. إن لم يكن على ورقة فاصنع رمزًا جديدًا.</translation>
        </message>
        <message>
            <source>A protocol from a file</source>
            <translation>بروتوكول من ملف</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicEditor</name>
        <message>
            <source>The clinic's name.</source>
            <translation>اسم العيادة.</translation>
        </message>
        <message>
            <source>The clinic's phone number.</source>
            <translation>رقم هاتف العيادة.</translation>
        </message>
        <message>
            <source>The emergency number, digits only, for example 112.</source>
            <translation>رقم الطوارئ، أرقام فقط، مثل 112.</translation>
        </message>
        <message>
            <source>At least one person who works at the desk.</source>
            <translation>شخص واحد على الأقل يعمل على المكتب.</translation>
        </message>
        <message>
            <source>The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.</source>
            <translation>بصمة مفتاح المحور: 64 خانة من 0 إلى 9 ومن A إلى F.</translation>
        </message>
        <message>
            <source>No number is recorded yet.</source>
            <translation>لم يُسجَّل رقم بعد.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>clinic, phone</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>المناوب: %1</translation>
        </message>
        <message>
            <source>Emergency: %1</source>
            <translation>الطوارئ: %1</translation>
        </message>
        <message>
            <source>Saved, %1</source>
            <translation>حُفظ، %1</translation>
        </message>
        <message>
            <source>The clinic's key is copied.</source>
            <translation>نُسخ مفتاح العيادة.</translation>
        </message>
        <message>
            <source>The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>رقم هاتف العيادة كرقم واحد، بلا حروف ولا «/» ولا «,» ولا «;» ولا «(0)»، مثل ⁦+00 555 0100⁩.</translation>
        </message>
        <message>
            <source>The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>رقم المناوب كرقم واحد، بلا حروف ولا «/» ولا «,» ولا «;» ولا «(0)»، مثل ⁦+00 555 0100⁩.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message>
            <source>Seen: %1</source>
            <translation>تمت رؤيتها: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>أُخذت: %1</translation>
        </message>
        <message>
            <source>Treated %1 · %2 · %3, version %4</source>
            <comment>date, threads, protocol, its version</comment>
            <translation>عولج %1 · %2 · %3، الإصدار %4</translation>
        </message>
        <message>
            <source>Last entry %1</source>
            <translation>آخر مدخلة %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>لا مدخلة بعد</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>الهاتف مربوط</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>لا هاتف مربوط</translation>
        </message>
        <message>
            <source>No reminder due yet</source>
            <translation>لا تذكير مستحق بعد</translation>
        </message>
        <message>
            <source>Too long: shorten it before sending.</source>
            <translation>طويلة جدًا: اختصرها قبل الإرسال.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>لا خيوط</numerusform>
                <numerusform>خيط واحد</numerusform>
                <numerusform>خيطان</numerusform>
                <numerusform>%Ln خيوط</numerusform>
                <numerusform>%Ln خيطًا</numerusform>
                <numerusform>%Ln خيط</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>%1 من %Ln تذكير أُجيب عنه «تم»</numerusform>
                <numerusform>%1 من تذكير واحد أُجيب عنه «تم»</numerusform>
                <numerusform>%1 من تذكيرين أُجيب عنهما «تم»</numerusform>
                <numerusform>%1 من %Ln تذكيرات أُجيب عنها «تم»</numerusform>
                <numerusform>%1 من %Ln تذكيرًا أُجيب عنها «تم»</numerusform>
                <numerusform>%1 من %Ln تذكير أُجيب عنها «تم»</numerusform>
            </translation>
        </message>
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>لا هاتف مربوط: لا يمكن إرسال رسالة.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>حُفظ باسم %1. الملف غير مشفّر: احفظه كما تحفظ سجل المريضة.</translation>
        </message>
        <message>
            <source>Save the course</source>
            <translation>حفظ المسار</translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>لا مدخلات جديدة أو مصححة</numerusform>
                <numerusform>مدخلة واحدة جديدة أو مصححة لم تُفتح بعد</numerusform>
                <numerusform>مدخلتان جديدتان أو مصححتان لم تُفتحا بعد</numerusform>
                <numerusform>%Ln مدخلات جديدة أو مصححة لم تُفتح بعد</numerusform>
                <numerusform>%Ln مدخلة جديدة أو مصححة لم تُفتح بعد</numerusform>
                <numerusform>%Ln مدخلة جديدة أو مصححة لم تُفتح بعد</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message>
            <source>Treatments that are recorded show up here.</source>
            <translation>تظهر هنا المعالجات المسجّلة.</translation>
        </message>
        <message>
            <source>No patient and no lot number matches.</source>
            <translation>لا اسم ولا رقم تشغيلة يطابق.</translation>
        </message>
        <message>
            <source>Treated %1</source>
            <translation>عولج %1</translation>
        </message>
        <message>
            <source>last entry %1 ago</source>
            <translation>آخر مدخلة قبل %1</translation>
        </message>
        <message>
            <source>no entry yet</source>
            <translation>لا مدخلة بعد</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>مغلق</translation>
        </message>
        <message>
            <source>Phone linked, %1</source>
            <translation>الهاتف مربوط، %1</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>لا هاتف مربوط</translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>لا رسائل غير مقروءة</numerusform>
                <numerusform>رسالة واحدة غير مقروءة</numerusform>
                <numerusform>رسالتان غير مقروءتين</numerusform>
                <numerusform>%Ln رسائل غير مقروءة</numerusform>
                <numerusform>%Ln رسالة غير مقروءة</numerusform>
                <numerusform>%Ln رسالة غير مقروءة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>لا مسارات</numerusform>
                <numerusform>مسار واحد</numerusform>
                <numerusform>مساران</numerusform>
                <numerusform>%Ln مسارات</numerusform>
                <numerusform>%Ln مسارًا</numerusform>
                <numerusform>%Ln مسار</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CurveBoard</name>
        <message>
            <source>L %1  R %2</source>
            <comment>last scores, left and right</comment>
            <translation>يس %1  يم %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>usual range</comment>
            <translation>من %1 إلى %2</translation>
        </message>
        <message>
            <source>entered late</source>
            <translation>أُدخلت متأخرة</translation>
        </message>
        <message>
            <source>amended</source>
            <translation>معدّلة</translation>
        </message>
        <message>
            <source>%1, %2: left %3, right %4, usual %5. %6</source>
            <comment>day, time, scores, usual range, note</comment>
            <translation>%1، %2: يسار %3، يمين %4، المعتاد %5. %6</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DoseLimits</name>
        <message>
            <source>Plain, mg/kg</source>
            <translation>دون إضافة، ملغ/كغ</translation>
        </message>
        <message>
            <source>Plain, in all, mg</source>
            <translation>دون إضافة، المجموع، ملغ</translation>
        </message>
        <message>
            <source>With epinephrine, mg/kg</source>
            <translation>مع إبينفرين، ملغ/كغ</translation>
        </message>
        <message>
            <source>With epinephrine, in all, mg</source>
            <translation>مع إبينفرين، المجموع، ملغ</translation>
        </message>
        <message>
            <source>A number up to %1, the label's. Empty: the label's.</source>
            <translation>عدد لا يتجاوز %1، وهو رقم النشرة. فارغ: رقم النشرة.</translation>
        </message>
        <message>
            <source>The label's limits hold.</source>
            <translation>تسري حدود النشرة.</translation>
        </message>
        <message>
            <source>Lowered by %1, %2</source>
            <comment>person, time</comment>
            <translation>خفّضه %1، %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::FollowUpEditor</name>
        <message>
            <source>Recorded by %1, %2</source>
            <translation>سجّلها %1، %2</translation>
        </message>
        <message>
            <source>1, not at all</source>
            <translation>١، غير راضٍ إطلاقًا</translation>
        </message>
        <message>
            <source>2, a little</source>
            <translation>٢، قليلًا</translation>
        </message>
        <message>
            <source>3, fairly</source>
            <translation>٣، إلى حد ما</translation>
        </message>
        <message>
            <source>4, mostly</source>
            <translation>٤، غالبًا</translation>
        </message>
        <message>
            <source>5, fully</source>
            <translation>٥، تمامًا</translation>
        </message>
        <message>
            <source>Choose how the result compares with before.</source>
            <translation>اختر كيف تبدو النتيجة مقارنة بما قبل.</translation>
        </message>
        <message>
            <source>Ask the patient how satisfied they are.</source>
            <translation>اسأل المريض عن مدى رضاه.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>قل من على المكتب.</translation>
        </message>
        <message>
            <source>Say whether the course was uncomplicated.</source>
            <translation>اذكر هل كان المسار بلا مضاعفات.</translation>
        </message>
        <message>
            <source>Say what became of it: %1.</source>
            <translation>اذكر ما آل إليه الأمر: %1.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message>
            <source>Not heard from the hub yet</source>
            <translation>لا خبر من المحور بعد</translation>
        </message>
        <message>
            <source>Last heard from the hub: %1</source>
            <translation>آخر اتصال بالمحور: %1</translation>
        </message>
        <message>
            <source>A phone sent two different histories. Do not rely on its entries; call the patient.</source>
            <translation>أرسل أحد الهواتف سجلّين مختلفين. لا تعتمد على مدخلاته؛ اتصل بالمريض.</translation>
        </message>
        <message>
            <source>A message from a phone is missing. The queue may be incomplete.</source>
            <translation>رسالة من أحد الهواتف مفقودة. قد تكون القائمة ناقصة.</translation>
        </message>
        <message>
            <source>Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.</source>
            <translation>أرسل مكتب آخر من مكاتبكم سجلّين مختلفين. اسأل هناك عمّا كُتب وقارنه بما هو موجود هنا.</translation>
        </message>
        <message>
            <source>A message from another desk of yours is missing. What was written there may not be here.</source>
            <translation>رسالة من مكتب آخر من مكاتبكم مفقودة. قد لا يكون ما كُتب هناك موجودًا هنا.</translation>
        </message>
        <message>
            <source>Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.</source>
            <translation>بعض ما وصل كُتب ببرنامج أحدث ولا يمكن عرضه هنا. حدّث هذا المكتب. وحتى ذلك الحين اتصل بالمرضى الذين حُدّثت هواتفهم.</translation>
        </message>
        <message>
            <source>The queue may be out of date: nothing was heard for over a day.</source>
            <translation>قد تكون القائمة قديمة: لا أخبار منذ أكثر من يوم.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>لا رسائل معزولة.</numerusform>
                <numerusform>رسالة واحدة تعذّر التحقق منها وعُزلت.</numerusform>
                <numerusform>رسالتان تعذّر التحقق منهما وعُزلتا.</numerusform>
                <numerusform>%Ln رسائل تعذّر التحقق منها وعُزلت.</numerusform>
                <numerusform>%Ln رسالة تعذّر التحقق منها وعُزلت.</numerusform>
                <numerusform>%Ln رسالة تعذّر التحقق منها وعُزلت.</numerusform>
            </translation>
        </message>
        <message>
            <source>Phones not heard of for more than a day: %1</source>
            <comment>list of names</comment>
            <translation>لم يصل شيء منذ أكثر من يوم من هواتف: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>، </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>و%Ln غيرهم</numerusform>
                <numerusform>وواحد غيرهم</numerusform>
                <numerusform>واثنين غيرهم</numerusform>
                <numerusform>و%Ln غيرهم</numerusform>
                <numerusform>و%Ln غيرهم</numerusform>
                <numerusform>و%Ln غيرهم</numerusform>
            </translation>
        </message>
        <message>
            <source>%1. What was written there may not be here.</source>
            <translation>%1. قد لا يكون هنا ما كُتب عليها.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>لا هاتف غاب خبره أكثر من يوم.</numerusform>
                <numerusform>هاتف واحد لم يصل منه شيء منذ أكثر من يوم.</numerusform>
                <numerusform>هاتفان لم يصل منهما شيء منذ أكثر من يوم.</numerusform>
                <numerusform>%Ln هواتف لم يصل منها شيء منذ أكثر من يوم.</numerusform>
                <numerusform>%Ln هاتفًا لم يصل منها شيء منذ أكثر من يوم.</numerusform>
                <numerusform>%Ln هاتف لم يصل منها شيء منذ أكثر من يوم.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>كل الهواتف أكدت استلام ما أُرسل إليها.</numerusform>
                <numerusform>هاتف واحد لم يؤكد منذ أكثر من يوم استلام ما أُرسل إليه.</numerusform>
                <numerusform>هاتفان لم يؤكدا منذ أكثر من يوم استلام ما أُرسل إليهما.</numerusform>
                <numerusform>%Ln هواتف لم تؤكد منذ أكثر من يوم استلام ما أُرسل إليها.</numerusform>
                <numerusform>%Ln هاتفًا لم تؤكد منذ أكثر من يوم استلام ما أُرسل إليها.</numerusform>
                <numerusform>%Ln هاتف لم تؤكد منذ أكثر من يوم استلام ما أُرسل إليها.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>كل الهواتف أكدت استلام ما أُرسل إليها.</numerusform>
                <numerusform>هاتف واحد لم يؤكد بعد استلام ما أُرسل إليه.</numerusform>
                <numerusform>هاتفان لم يؤكدا بعد استلام ما أُرسل إليهما.</numerusform>
                <numerusform>%Ln هواتف لم تؤكد بعد استلام ما أُرسل إليها.</numerusform>
                <numerusform>%Ln هاتفًا لم تؤكد بعد استلام ما أُرسل إليها.</numerusform>
                <numerusform>%Ln هاتف لم تؤكد بعد استلام ما أُرسل إليها.</numerusform>
            </translation>
        </message>
        <message>
            <source>All phones were heard of within a day or little more, and have confirmed what was sent to them.</source>
            <translation>وصل شيء من كل الهواتف خلال يوم أو أكثر بقليل، وأكدت استلام ما أُرسل إليها.</translation>
        </message>
        <message>
            <source>This desk runs on older data: a phone holds more from it. Write again what was written here in between.</source>
            <translation>يعمل هذا المكتب على بيانات أقدم: عند هاتف منه أكثر مما عنده. اكتب من جديد ما كُتب هنا بينهما.</translation>
        </message>
        <message>
            <source>For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.</source>
            <translation>منذ أكثر من %1 يومًا لم يستلم هاتفٌ ما أُرسل إليه: %2. اتصل قبل أن يضيع شيء.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 fast: please set it.</source>
            <translation>ساعة هذا الحاسوب متقدمة بنحو %1: اضبطها من فضلك.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 slow: please set it.</source>
            <translation>ساعة هذا الحاسوب متأخرة بنحو %1: اضبطها من فضلك.</translation>
        </message>
        <message>
            <source>This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>يعمل هذا المكتب على بيانات أقدم: عند مكتب آخر من مكاتبكم منه أكثر مما عنده. ما يُكتب هنا الآن لا يصل إلى هناك. انقله يدويًا. ثم على مكتب يحمل المفتاح الأصل أقصِ الآخر تحت «المكاتب» وأضفه من جديد.</translation>
        </message>
        <message>
            <source>Another desk of yours says that it runs on older data. What is written there now does not arrive here. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>يقول مكتب آخر من مكاتبكم إنه يعمل على بيانات أقدم. ما يُكتب هناك الآن لا يصل إلى هنا. انقله يدويًا. ثم على مكتب يحمل المفتاح الأصل أقصِ الآخر تحت «المكاتب» وأضفه من جديد.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>It is of: %1.</source>
            <comment>list of names, each with how many</comment>
            <translation>وهو من: %1.</translation>
        </message>
        <message>
            <source>Messages from these patients&apos; phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <comment>list of names, each with how many</comment>
            <translation>لا يمكن هنا قراءة رسائل من هواتف هؤلاء المرضى: %1. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1، الإصدار %2</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>اكتبها سنة-شهر-يوم، مثل 2029-06-30.</translation>
        </message>
        <message>
            <source>First enter the numbers to call on the Clinic page: the phone shows them with every warning.</source>
            <translation>أدخل أولًا أرقام الاتصال في صفحة العيادة: يعرضها الهاتف مع كل تحذير.</translation>
        </message>
        <message>
            <source>Choose a protocol and a day for the follow-up.</source>
            <translation>اختر بروتوكولًا ويومًا للمراجعة.</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>ربط هاتف</translation>
        </message>
        <message>
            <source>Making a code</source>
            <translation>جارٍ إنشاء الرمز</translation>
        </message>
        <message>
            <source>Let the patient scan this code</source>
            <translation>دع المريض يمسح هذا الرمز</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>قارن الأرقام</translation>
        </message>
        <message>
            <source>Linking</source>
            <translation>جارٍ الربط</translation>
        </message>
        <message>
            <source>The phone is linked</source>
            <translation>الهاتف مربوط</translation>
        </message>
        <message>
            <source>Stop: this code was used twice</source>
            <translation>توقّف: استُخدم هذا الرمز مرتين</translation>
        </message>
        <message>
            <source>The code has run out</source>
            <translation>انتهت صلاحية الرمز</translation>
        </message>
        <message>
            <source>No code could be made</source>
            <translation>تعذّر إنشاء رمز</translation>
        </message>
        <message>
            <source>The hub takes the offer. This takes a moment.</source>
            <translation>يستلم المحور العرض. يستغرق ذلك لحظة.</translation>
        </message>
        <message>
            <source>If the camera does not work, the code below can be typed instead. It works once.</source>
            <translation>إن لم تعمل الكاميرا يمكن كتابة الرمز بدلًا منها. يعمل مرة واحدة.</translation>
        </message>
        <message>
            <source>Read the six digits on the patient's phone. Only if they are the same is it the right phone.</source>
            <translation>اقرأ الأرقام الستة على هاتف المريض. لا يكون الهاتف الصحيح إلا إذا تطابقت.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call go to the phone.</source>
            <translation>المسار وخطة العناية وأرقام الاتصال تنتقل إلى الهاتف.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call are on their way. The page of the course shows when the first entry arrives.</source>
            <translation>المسار وخطة العناية وأرقام الاتصال في الطريق. تُظهر صفحة المسار متى تصل أول مدخلة.</translation>
        </message>
        <message>
            <source>Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.</source>
            <translation>ربما قرأ شخص آخر الرمز. لم يُربط شيء. أنشئ رمزًا جديدًا بعيدًا عن أعين الآخرين.</translation>
        </message>
        <message>
            <source>A code is valid for ten minutes. Nothing was linked. Make a new one.</source>
            <translation>الرمز صالح عشر دقائق. لم يُربط شيء. أنشئ رمزًا جديدًا.</translation>
        </message>
        <message>
            <source>Try again.</source>
            <translation>حاول مجددًا.</translation>
        </message>
        <message>
            <source>Valid for %1:%2</source>
            <comment>minutes:seconds</comment>
            <translation>صالح لمدة %1:%2</translation>
        </message>
        <message>
            <source>First name the hub on the Clinic page.</source>
            <translation>سمِّ المحور أولًا في صفحة العيادة.</translation>
        </message>
        <message>
            <source>The patient opens the diary, which asks for a code. Do this together, in the same room.</source>
            <translation>يفتح المريض اليوميات التي تطلب رمزًا. افعلا ذلك معًا في الغرفة نفسها.</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can do this.</source>
            <translation>لا يستطيع ذلك إلا مكتب يحمل المفتاح الأصل للعيادة.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>إضافة مكتب</translation>
        </message>
        <message>
            <source>Type this at the other desk</source>
            <translation>اكتب هذا على المكتب الآخر</translation>
        </message>
        <message>
            <source>The desk is added</source>
            <translation>أُضيف المكتب</translation>
        </message>
        <message>
            <source>Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this together, in the same room.</source>
            <translation>شغّل هذا البرنامج على الحاسوب الآخر، وأعدّ خزنته، واختر هناك الانضمام إلى مكاتب العيادة. افعلا ذلك معًا في الغرفة نفسها.</translation>
        </message>
        <message>
            <source>The code works once. The new desk also asks for the hub's address.</source>
            <translation>الرمز صالح مرة واحدة. ويسأل المكتب الجديد أيضًا عن عنوان المحور.</translation>
        </message>
        <message>
            <source>Read the six digits on the new desk. Only if they are the same is it the right one.</source>
            <translation>اقرأ الأرقام الستة على المكتب الجديد. لا يكون هو المقصود إلا إذا تطابقت.</translation>
        </message>
        <message>
            <source>The clinic's keys go to the new desk.</source>
            <translation>تُرسل مفاتيح العيادة إلى المكتب الجديد.</translation>
        </message>
        <message>
            <source>It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the hub.</source>
            <translation>لديه مفاتيح العيادة. يصل إليه ما كتبه المرضى والمكاتب بعد أن يسأل هذا المكتب المحور ثم المكتب الجديد.</translation>
        </message>
        <message>
            <source>A phone before this one has not said what it still holds. What was written on it and not sent is not here.</source>
            <translation>هاتف سابق لم يقل ما بقي عليه. ما كُتب عليه ولم يُرسل ليس هنا.</translation>
        </message>
        <message>
            <source>A phone before this one says that everything on it has arrived.</source>
            <translation>هاتف سابق يقول إن كل ما عليه قد وصل.</translation>
        </message>
        <message>
            <source>(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the patient.</source>
            <translation>(منها إدخالات: %L1، رسائل: %L2، صور: %L3)، وأحدثها %4. انظروا إليها على ذلك الهاتف مع المريض.</translation>
        </message>
        <message>
            <source>The phone is ended. The hub is told with the next sync and refuses it from then on.</source>
            <translation>أُنهي الهاتف. يُبلَّغ المحور في المزامنة التالية ويرفضه منذ ذلك الحين.</translation>
        </message>
        <message>
            <source>This course has no phone in use.</source>
            <translation>ليس لهذا المسار هاتف مستخدم.</translation>
        </message>
        <message>
            <source>Another phone for this course</source>
            <translation>هاتف آخر لهذا المسار</translation>
        </message>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>لا شيء على هاتف سابق لم يصل</numerusform>
                <numerusform>على هاتف سابق شيء واحد لم يصل قط</numerusform>
                <numerusform>على هاتف سابق شيئان لم يصلا قط</numerusform>
                <numerusform>على هاتف سابق %Ln أشياء لم تصل قط</numerusform>
                <numerusform>على هاتف سابق %Ln شيئًا لم يصل قط</numerusform>
                <numerusform>على هاتف سابق %Ln شيء لم يصل قط</numerusform>
            </translation>
        </message>
        <message>
            <source>The phone shows: %1, %2</source>
            <comment>date, time</comment>
            <translation>يعرض الهاتف: %1، %2</translation>
        </message>
        <message>
            <source>The phone shows: %1, without a time</source>
            <comment>date</comment>
            <translation>يعرض الهاتف: %1، دون وقت</translation>
        </message>
        <message>
            <source>The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.</source>
            <comment>date, date</comment>
            <translation>يجب أن تكون المراجعة بعد المعالجة بيوم إلى ٦٠ يومًا. اختر يومًا من %1 إلى %2.</translation>
        </message>
        <message>
            <source>Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>اكتب وقت المراجعة بالساعات والدقائق، مثل 10:30، أو اتركه فارغًا.</translation>
        </message>
        <message>
            <source>The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic&apos;s key. The key stands on the Clinic page, where it can be copied. Then make a new code.</source>
            <comment>a command</comment>
            <translation>لا يعرف المحور هذه العيادة بعد. اطلب ممن يدير المحور تشغيل %1 بمفتاح هذه العيادة. المفتاح في صفحة العيادة ويمكن نسخه منها. ثم أنشئ رمزًا جديدًا.</translation>
        </message>
        <message>
            <source>The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.</source>
            <translation>يُترك الهاتف المرتبط الآن حالما يُؤكَّد الجديد: ما يُكتب فيه بعد ذلك لا يصل إلى العيادة، وهو يقول ذلك. يحصل الهاتف الجديد على المفكرة كلها. تبقى الصور لدى العيادة. لا يتغير شيء قبل تأكيد الأرقام الستة.</translation>
        </message>
        <message>
            <source>The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.</source>
            <translation>يرفض المحور الهاتف المفقود فور تأكيد الجديد، أو على الفور إذا أنهيته فقط. وما لم يرسله يبقى غير معروف. ويتلقى الهاتف الجديد المفكرة كلها. وتبقى الصور لدى العيادة.</translation>
        </message>
        <message>
            <source>Stop: the numbers were not the same</source>
            <translation>توقّف: لم يكن الرقمان متطابقين</translation>
        </message>
        <message>
            <source>Somebody else may have used the code first. Nothing was linked. Make a new code out of other people&apos;s sight.</source>
            <translation>ربما استخدم شخص آخر الرمز أولًا. لم يُربط شيء. أنشئ رمزًا جديدًا بعيدًا عن أعين الآخرين.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1، الإصدار %2</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.</source>
            <translation>عُويرت العتبات على %1، بحيث لا تتجاوز %2 إنذارات كاذبة في ١٠٠ مسار بلا مضاعفات.</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1.</source>
            <translation>عُويرت العتبات على %1.</translation>
        </message>
        <message>
            <source>These are few: the thresholds are drawn towards those before.</source>
            <translation>هذا عدد قليل: العتبات مقرّبة إلى ما كان قبلها.</translation>
        </message>
        <message>
            <source>Rules, or the days that are asked about, were changed since.</source>
            <translation>تغيّرت القواعد أو الأيام التي يُسأل عنها منذ ذلك الحين.</translation>
        </message>
        <message>
            <source>It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.</source>
            <translation>لم يثبت أنها لا تتجاوز %1 إنذارات كاذبة في ١٠٠ مسار بلا مضاعفات.</translation>
        </message>
        <message>
            <source>They came in a file: other patients may stand behind them.</source>
            <translation>جاءت في ملف: قد يكون وراءها مرضى آخرون.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message>
            <source>Nobody has taken it</source>
            <translation>لم يتولَّها أحد</translation>
        </message>
        <message>
            <source>Last entry %1 ago</source>
            <translation>آخر مدخلة قبل %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>لا مدخلة بعد</translation>
        </message>
        <message>
            <source>%1: %2, %3. %4. %5 Since %6.</source>
            <comment>urgency, name, day, title, reason, since</comment>
            <translation>%1: %2، %3. %4. %5 منذ %6.</translation>
        </message>
        <message>
            <source>Not heard from: silence is not good news</source>
            <translation>بلا أخبار: الصمت ليس خبرًا جيدًا</translation>
        </message>
        <message>
            <source>Everyone %1</source>
            <translation>الكل %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>urgency, count</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not heard from</source>
            <translation>بلا أخبار</translation>
        </message>
        <message>
            <source>Nobody waits</source>
            <translation>لا أحد ينتظر</translation>
        </message>
        <message>
            <source>No match</source>
            <translation>لا تطابق</translation>
        </message>
        <message>
            <source>Nobody waits for an answer</source>
            <translation>لا أحد ينتظر جوابًا</translation>
        </message>
        <message>
            <source>Courses show up here when a warning sign, a rule or a silence asks for a look.</source>
            <translation>تظهر المسارات هنا حين تستدعي علامة تحذير أو قاعدة أو صمت إلقاء نظرة.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, finding</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Closed: %1</source>
            <translation>أُغلق: %1</translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>و%Ln غيرها</numerusform>
                <numerusform>و%Ln غيرها</numerusform>
                <numerusform>و%Ln غيرها</numerusform>
                <numerusform>و%Ln غيرها</numerusform>
                <numerusform>و%Ln غيرها</numerusform>
                <numerusform>و%Ln غيرها</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
                <numerusform>%Ln غير مفتوحة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>لا طوارئ</numerusform>
                <numerusform>حالة طوارئ واحدة</numerusform>
                <numerusform>حالتا طوارئ</numerusform>
                <numerusform>%Ln حالات طوارئ</numerusform>
                <numerusform>%Ln حالة طوارئ</numerusform>
                <numerusform>%Ln حالة طوارئ</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln للاتصال الآن</numerusform>
                <numerusform>%Ln للاتصال الآن</numerusform>
                <numerusform>%Ln للاتصال الآن</numerusform>
                <numerusform>%Ln للاتصال الآن</numerusform>
                <numerusform>%Ln للاتصال الآن</numerusform>
                <numerusform>%Ln للاتصال الآن</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
                <numerusform>%Ln ليوم العمل التالي</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln للمراجعة</numerusform>
                <numerusform>%Ln للمراجعة</numerusform>
                <numerusform>%Ln للمراجعة</numerusform>
                <numerusform>%Ln للمراجعة</numerusform>
                <numerusform>%Ln للمراجعة</numerusform>
                <numerusform>%Ln للمراجعة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln بلا أخبار</numerusform>
                <numerusform>%Ln بلا أخبار</numerusform>
                <numerusform>%Ln بلا أخبار</numerusform>
                <numerusform>%Ln بلا أخبار</numerusform>
                <numerusform>%Ln بلا أخبار</numerusform>
                <numerusform>%Ln بلا أخبار</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
                <numerusform>%Ln أخفاها البحث أو التصفية</numerusform>
            </translation>
        </message>
        <message>
            <source>Nobody has acted for %1</source>
            <translation>لم يتصرّف أحد منذ %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln مريضة تنتظر أطول مما اتُّفق عليه.</numerusform>
                <numerusform>مريضة واحدة تنتظر أطول مما اتُّفق عليه.</numerusform>
                <numerusform>مريضتان تنتظران أطول مما اتُّفق عليه.</numerusform>
                <numerusform>%Ln مريضات ينتظرن أطول مما اتُّفق عليه.</numerusform>
                <numerusform>%Ln مريضة تنتظر أطول مما اتُّفق عليه.</numerusform>
                <numerusform>%Ln مريضة تنتظر أطول مما اتُّفق عليه.</numerusform>
            </translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>المناوب: %1</translation>
        </message>
        <message>
            <source>All</source>
            <translation>الكل</translation>
        </message>
        <message>
            <source>Nobody on it</source>
            <translation>بلا متولٍّ</translation>
        </message>
        <message>
            <source>Mine</source>
            <translation>لي</translation>
        </message>
        <message>
            <source>Not opened</source>
            <translation>غير مفتوحة</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>اتصل أيضًا بسبب: %1</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>جرى الاتصال: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>أُخذت: %1</translation>
        </message>
        <message>
            <source>Take search and filters off to see the others.</source>
            <translation>أزل البحث والتصفية لترى الآخرين.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>لا صف عاجلًا يخفيه البحث أو التصفية (%Ln)</numerusform>
                <numerusform>صف عاجل واحد (%Ln) يخفيه البحث أو التصفية</numerusform>
                <numerusform>صفان عاجلان (%Ln) يخفيهما البحث أو التصفية</numerusform>
                <numerusform>%Ln صفوف عاجلة يخفيها البحث أو التصفية</numerusform>
                <numerusform>%Ln صفًا عاجلًا يخفيها البحث أو التصفية</numerusform>
                <numerusform>%Ln صف عاجل يخفيها البحث أو التصفية</numerusform>
            </translation>
        </message>
        <message>
            <source>Visits missed more than %1 days ago, with nothing written down since: %2</source>
            <translation>زيارات فاتت منذ أكثر من %1 يومًا ولم يُدوَّن شيء بعدها: %2</translation>
        </message>
        <message>
            <source>Only visits missed long ago</source>
            <translation>زيارات فاتت منذ زمن طويل فقط</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SheetBoard</name>
        <message>
            <source>Save the sheet</source>
            <translation>حفظ الورقة</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>ملفات PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>حُفظت باسم %1. الملف غير مشفّر: احفظه كما تحفظ ملف المريض.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::StepValue</name>
        <message>
            <source>%1 to %2</source>
            <translation>من %1 إلى %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TreatmentEditor</name>
        <message>
            <source>Patient</source>
            <translation>المريض</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>الخيوط</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>التخدير</translation>
        </message>
        <message>
            <source>Care and consent</source>
            <translation>العناية والموافقة</translation>
        </message>
        <message>
            <source>Draft kept on this computer, %1</source>
            <translation>المسودة محفوظة على هذا الحاسوب، %1</translation>
        </message>
        <message>
            <source>Choose or register the patient.</source>
            <translation>اختر المريض أو سجّله.</translation>
        </message>
        <message>
            <source>Draw at least one thread.</source>
            <translation>ارسم خيطًا واحدًا على الأقل.</translation>
        </message>
        <message>
            <source>Note that consent was given.</source>
            <translation>سجّل أن الموافقة أُعطيت.</translation>
        </message>
        <message>
            <source>Note that the cautions were explained.</source>
            <translation>سجّل أن المحاذير شُرحت.</translation>
        </message>
        <message>
            <source>The weight is not a number of kilograms.</source>
            <translation>الوزن ليس عددًا بالكيلوغرام.</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.</source>
            <translation>الليدوكائين المعطى بغير ذلك: بالملغرام، من 0 إلى %L1، بمنزلة عشرية واحدة على الأكثر.</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>اكتبها سنة-شهر-يوم، مثل 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>كان هذا الخيط منتهي الصلاحية يوم المعالجة.</translation>
        </message>
        <message>
            <source>The code names no lot and no expiry: type them below.</source>
            <translation>الرمز لا يذكر تشغيلة ولا صلاحية: اكتبهما أدناه.</translation>
        </message>
        <message>
            <source>This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.</source>
            <translation>ليس هذا رمز عبوة يمكن قراءته. لم يؤخذ منه شيء: امسحه ثانية، أو اكتب التشغيلة والصلاحية أدناه.</translation>
        </message>
        <message>
            <source>Draw or choose a thread first.</source>
            <translation>ارسم خيطًا أو اختره أولًا.</translation>
        </message>
        <message>
            <source>This record was begun on %1. Say when the treatment was.</source>
            <translation>بدأ هذا السجل في %1. حدّد متى كانت المعالجة.</translation>
        </message>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>كانت المعالجة قبل %Ln يوم. حدّد إن كان ذلك صحيحًا.</numerusform>
                <numerusform>كانت المعالجة قبل يوم واحد. حدّد إن كان ذلك صحيحًا.</numerusform>
                <numerusform>كانت المعالجة قبل يومين. حدّد إن كان ذلك صحيحًا.</numerusform>
                <numerusform>كانت المعالجة قبل %Ln أيام. حدّد إن كان ذلك صحيحًا.</numerusform>
                <numerusform>كانت المعالجة قبل %Ln يومًا. حدّد إن كان ذلك صحيحًا.</numerusform>
                <numerusform>كانت المعالجة قبل %Ln يوم. حدّد إن كان ذلك صحيحًا.</numerusform>
            </translation>
        </message>
        <message>
            <source>This time is still to come. Write when the treatment was.</source>
            <translation>هذا الوقت لم يأتِ بعد. اكتب متى كانت المعالجة.</translation>
        </message>
        <message>
            <source>Write the day of the treatment as year-month-day, for example 2029-06-30.</source>
            <translation>اكتب يوم المعالجة سنة-شهر-يوم، مثل 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time of the treatment as hours and minutes, for example 14:05.</source>
            <translation>اكتب وقت المعالجة بالساعات والدقائق، مثل 14:05.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>لا</translation>
        </message>
        <message>
            <source>Placed once</source>
            <translation>وُضع مرة واحدة</translation>
        </message>
        <message>
            <source>Say why it was redone.</source>
            <translation>اذكر سبب إعادته.</translation>
        </message>
        <message>
            <source>Shorten the reason.</source>
            <translation>اختصر السبب.</translation>
        </message>
        <message>
            <source>Thread %L1 was redone: say why.</source>
            <translation>أُعيد الخيط %L1: اذكر السبب.</translation>
        </message>
        <message>
            <source>Not written down</source>
            <translation>لم يُكتب</translation>
        </message>
        <message>
            <source>The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.</source>
            <translation>لا يوضّح الرمز أين ينتهي رقم التشغيلة. انظر إلى العبوة واختر المكتوب عليها، أو اكتبه أدناه.</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>غير مذكور</translation>
        </message>
        <message>
            <source>None</source>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>At the entry point</source>
            <translation>عند نقطة الدخول</translation>
        </message>
        <message>
            <source>Along the track</source>
            <translation>على طول المسار</translation>
        </message>
        <message>
            <source>At entry point and along the track</source>
            <translation>عند نقطة الدخول وعلى طول المسار</translation>
        </message>
        <message>
            <source>Nobody chosen yet</source>
            <translation>لم يُختر أحد بعد</translation>
        </message>
        <message>
            <source>What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1</source>
            <comment>the reason</comment>
            <translation>ما بُدئ هنا لا يمكن قراءته. يبقى كما هو: وما تكتبه الآن لا يُحفظ كمسودة. %1</translation>
        </message>
        <message>
            <source>Nothing was drawn: thread %1 lies there already. It is chosen now.</source>
            <comment>its number</comment>
            <translation>لم يُرسم شيء: الخيط %1 موجود هناك. وقد اختير الآن.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>السبب</translation>
        </message>
        <message>
            <source>Say why it is corrected.</source>
            <translation>اذكر سبب التصحيح.</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>لم يتغير شيء بعد.</translation>
        </message>
        <message>
            <source>A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.</source>
            <translation>صحّح أحد الزملاء هذا السجل في هذه الأثناء. ما تسجّله يسري كله ويحل محله: أدناه ما سيتغير.</translation>
        </message>
        <message>
            <source>The solution is now with epinephrine %1: check it under Anaesthetic.</source>
            <comment>dilution</comment>
            <translation>صار المحلول مع إبينفرين %1: تحقق منه تحت «التخدير».</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message>
            <source>Unlock the desk</source>
            <translation>فتح قفل المكتب</translation>
        </message>
        <message>
            <source>Set up the desk</source>
            <translation>إعداد المكتب</translation>
        </message>
        <message>
            <source>What the desk keeps about patients is encrypted on this computer until you unlock it.</source>
            <translation>ما يحفظه البرنامج عن المرضى مشفّر على هذا الحاسوب حتى تفتحه.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>العبارتان غير متطابقتين.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
                <numerusform>اختر عبارة مرور من %Ln محرفًا على الأقل. تشفّر ما يحفظه البرنامج عن المرضى على هذا الحاسوب. لا يستطيع أحد استعادتها لك: اكتبها واحفظها في مكان آمن.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
                <numerusform>قصيرة جدًا: %Ln محرفًا على الأقل.</numerusform>
            </translation>
        </message>
        <message>
            <source>Open it with the recovery code</source>
            <translation>الفتح برمز الاستعادة</translation>
        </message>
        <message>
            <source>Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.</source>
            <translation>اكتب الرمز من الورقة واختر عبارة مرور جديدة. والعبارة المفقودة لا تفتح شيئًا بعد ذلك.</translation>
        </message>
        <message>
            <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
            <translation>هذا ليس رمز استعادة. له ٣٦ حرفًا ورقمًا في تسع مجموعات. تحقق من كل خانة.</translation>
        </message>
        <message>
            <source>This code does not open this vault. A newer one may have taken its place.</source>
            <translation>هذا الرمز لا يفتح هذه الخزنة. لعل رمزًا أحدث حلّ محله.</translation>
        </message>
        <message>
            <source>One moment. The desk finds out how strong the lock can be on this computer.</source>
            <translation>لحظة من فضلك. يتحقق المكتب من أقصى قوة ممكنة للقفل على هذا الحاسوب.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::face::FaceChart</name>
        <message>
            <source>Entry point set. Cursor %1 across, %2 down: Space sets the end.</source>
            <translation>وُضعت نقطة الدخول. المؤشر %1 عرضًا، %2 نزولًا: المسافة تضع النهاية.</translation>
        </message>
        <message>
            <source>Cursor %1 across, %2 down: Space sets the entry point.</source>
            <translation>المؤشر %1 عرضًا، %2 نزولًا: المسافة تضع نقطة الدخول.</translation>
        </message>
        <message>
            <source>Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>أُمسكت نقطة دخول الخيط %1، وهي الآن %2 عرضًا، %3 نزولًا: المسافة تضعها.</translation>
        </message>
        <message>
            <source>End of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>أُمسكت نهاية الخيط %1، وهي الآن %2 عرضًا، %3 نزولًا: المسافة تضعها.</translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln مسار</numerusform>
                <numerusform>مسار واحد</numerusform>
                <numerusform>مساران</numerusform>
                <numerusform>%Ln مسارات</numerusform>
                <numerusform>%Ln مسارًا</numerusform>
                <numerusform>%Ln مسار</numerusform>
            </translation>
        </message>
        <message>
            <source>Per cent of courses</source>
            <translation>بالمئة من المسارات</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>الأيام منذ العلاج</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>المجموعة</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>مع مضاعفات</translation>
        </message>
        <message>
            <source>Outcome known</source>
            <translation>النتيجة معروفة</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>غير معروفة</translation>
        </message>
        <message>
            <source>Treatments with a known outcome, one after the other</source>
            <translation>علاجات معروفة النتيجة، الواحد تلو الآخر</translation>
        </message>
        <message>
            <source>Running sum, no unit</source>
            <translation>المجموع الجاري، بلا وحدة</translation>
        </message>
        <message>
            <source>Look here from %1 on</source>
            <translation>انظر هنا ابتداءً من %1</translation>
        </message>
        <message>
            <source>strokes: complicated courses</source>
            <translation>الخطوط القصيرة: مسارات مع مضاعفات</translation>
        </message>
        <message>
            <source>Have complications become more frequent?</source>
            <translation>هل صارت المضاعفات أكثر تكرارًا؟</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>الرقم</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>تاريخ العلاج</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>المريضة</translation>
        </message>
        <message>
            <source>Running sum</source>
            <translation>المجموع الجاري</translation>
        </message>
        <message>
            <source>No course has a known outcome yet. Record follow-ups, and the line begins.</source>
            <translation>لا مسار معروف النتيجة بعد. سجّل المتابعات فيبدأ الخط.</translation>
        </message>
        <message>
            <source>yes, and a signal</source>
            <translation>نعم، مع إشارة</translation>
        </message>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>لا إشارة في %Ln علاج.</numerusform>
                <numerusform>لا إشارة في علاج واحد.</numerusform>
                <numerusform>لا إشارة في علاجين.</numerusform>
                <numerusform>لا إشارة في %Ln علاجات.</numerusform>
                <numerusform>لا إشارة في %Ln علاجًا.</numerusform>
                <numerusform>لا إشارة في %Ln علاج.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln إشارة: انظر المسارات التي سبقتها.</numerusform>
                <numerusform>إشارة واحدة: انظر المسارات التي سبقتها.</numerusform>
                <numerusform>إشارتان: انظر المسارات التي سبقتها.</numerusform>
                <numerusform>%Ln إشارات: انظر المسارات التي سبقتها.</numerusform>
                <numerusform>%Ln إشارة: انظر المسارات التي سبقتها.</numerusform>
                <numerusform>%Ln إشارة: انظر المسارات التي سبقتها.</numerusform>
            </translation>
        </message>
        <message>
            <source>Now at %1 of %2.</source>
            <comment>sum, limit</comment>
            <translation>الآن عند %1 من %2.</translation>
        </message>
        <message>
            <source>%1 more complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 أكثر من المتوقع مع مضاعفات.</translation>
        </message>
        <message>
            <source>%1 fewer complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 أقل من المتوقع مع مضاعفات.</translation>
        </message>
        <message>
            <source>By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.</source>
            <translation>بالمصادفة وحدها يعطي خط كهذا إشارة في %1 من ١٠٠ عيادة؛ وإن تضاعفت الأرجحية حقًا ففي %2.</translation>
        </message>
        <message>
            <source>How often chance alone would signal is still being worked out.</source>
            <translation>ما زال يُحسب كم مرة تعطي المصادفة وحدها إشارة.</translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>غير نهائي: %Ln مسار بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
                <numerusform>غير نهائي: مسار واحد بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
                <numerusform>غير نهائي: مساران بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
                <numerusform>غير نهائي: %Ln مسارات بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
                <numerusform>غير نهائي: %Ln مسارًا بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
                <numerusform>غير نهائي: %Ln مسار بلا نتيجة معروفة، وبعضها قبل آخر ما يُعرض.</numerusform>
            </translation>
        </message>
        <message>
            <source>The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.</source>
            <translation>الخطر افتراض واحد لكل المريضات: الإشارة تطلب نظرة ولا تلوم أحدًا.</translation>
        </message>
        <message>
            <source>What alerts cost, and which were worth it</source>
            <translation>ما تكلفه التنبيهات، وأيها كان مجديًا</translation>
        </message>
        <message>
            <source>Closed as</source>
            <translation>أُغلق على أنه</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>التنبيهات</translation>
        </message>
        <message>
            <source>Not closed before the follow-up</source>
            <translation>لم يُغلق قبل المتابعة</translation>
        </message>
        <message>
            <source>Still open</source>
            <translation>ما زال مفتوحًا</translation>
        </message>
        <message>
            <source>Apart: not heard from</source>
            <translation>على حدة: لم يرد خبر</translation>
        </message>
        <message>
            <source>No course with a linked phone yet.</source>
            <translation>لا مسار بهاتف مرتبط بعد.</translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>لا تنبيه في %Ln مسار.</numerusform>
                <numerusform>لا تنبيه في مسار واحد.</numerusform>
                <numerusform>لا تنبيه في مسارين.</numerusform>
                <numerusform>لا تنبيه في %Ln مسارات.</numerusform>
                <numerusform>لا تنبيه في %Ln مسارًا.</numerusform>
                <numerusform>لا تنبيه في %Ln مسار.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 raised an alert, %2 alert(s) in all, about %3 a week lately.</source>
            <comment>courses, number, number</comment>
            <translation>أثار تنبيهًا %1، والتنبيهات كلها %2، ونحو %3 في الأسبوع مؤخرًا.</translation>
        </message>
        <message>
            <source>Worth it, of those closed: %1.</source>
            <translation>المجدي منها بين المغلقة: %1.</translation>
        </message>
        <message>
            <source>An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.</source>
            <translation>التنبيه الذي انتهى بطمأنة لا يُعدّ مجديًا هنا. وقد ترى المريضة غير ذلك.</translation>
        </message>
        <message>
            <source>Worth it</source>
            <translation>مجدٍ</translation>
        </message>
        <message>
            <source>Per cent of closed alerts</source>
            <translation>بالمئة من التنبيهات المغلقة</translation>
        </message>
        <message>
            <source>What patients did of what they were asked</source>
            <translation>ما فعلته المريضات مما طُلب منهن</translation>
        </message>
        <message>
            <source>An unanswered reminder is not a missed one: she may have done it without saying so.</source>
            <translation>التذكير بلا جواب ليس تذكيرًا ضائعًا: ربما فعلته دون أن تقول.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>المطلوب</translation>
        </message>
        <message>
            <source>Asked</source>
            <translation>سُئل</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>تم</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>لم يتم</translation>
        </message>
        <message>
            <source>Days with an entry</source>
            <translation>أيام فيها تسجيل</translation>
        </message>
        <message>
            <source>Per cent of times asked</source>
            <translation>بالمئة من المرات</translation>
        </message>
        <message>
            <source>%1 wrote on %2 of %3 days asked.</source>
            <comment>courses, days, days</comment>
            <translation>%1: كُتب في %2 من %3 من الأيام المطلوبة.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>لا يكفي للقول: %Ln نتيجة معروفة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: نتيجة معروفة واحدة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: نتيجتان معروفتان، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln نتائج معروفة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln نتيجة معروفة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln نتيجة معروفة، والمطلوب %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>لا يكفي للقول: %Ln مسار فيها ذلك، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: مسار واحد فيها ذلك، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: مساران فيها ذلك، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مسارات فيها ذلك، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مسارًا فيها ذلك، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مسار فيها ذلك، والمطلوب %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>لا يكفي للقول: المتابعة %Ln يوم، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: المتابعة يوم واحد، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: المتابعة يومان، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: المتابعة %Ln أيام، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: المتابعة %Ln يومًا، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: المتابعة %Ln يوم، والمطلوب %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>لا يكفي للقول: %Ln مجموعة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: مجموعة واحدة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: مجموعتان، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مجموعات، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مجموعة، والمطلوب %1</numerusform>
                <numerusform>لا يكفي للقول: %Ln مجموعة، والمطلوب %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Not enough to say: nothing varied</source>
            <translation>لا يكفي للقول: لم يختلف شيء</translation>
        </message>
        <message>
            <source>Not enough to say: nothing happened in either group</source>
            <translation>لا يكفي للقول: لم يحدث شيء في أي من المجموعتين</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>share, its limits</comment>
            <translation>%1 (من %2 إلى %3)</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln course(s)</source>
            <translation>
                <numerusform>%1 من %Ln مسار</numerusform>
                <numerusform>%1 من مسار واحد</numerusform>
                <numerusform>%1 من مسارين</numerusform>
                <numerusform>%1 من %Ln مسارات</numerusform>
                <numerusform>%1 من %Ln مسارًا</numerusform>
                <numerusform>%1 من %Ln مسار</numerusform>
            </translation>
        </message>
        <message>
            <source>Where threads end</source>
            <translation>أين تنتهي الخيوط</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>القياس</translation>
        </message>
        <message>
            <source>Epinephrine at the entry point</source>
            <translation>الأدرينالين عند نقطة الدخول</translation>
        </message>
        <message>
            <source>Face or neck</source>
            <translation>الوجه أو الرقبة</translation>
        </message>
        <message>
            <source>Not told</source>
            <translation>غير مذكور</translation>
        </message>
        <message>
            <source>Mixed</source>
            <translation>مختلط</translation>
        </message>
        <message>
            <source>%1 G</source>
            <comment>gauge of needle or cannula</comment>
            <translation>%1 G</translation>
        </message>
        <message>
            <source>With epinephrine</source>
            <translation>مع الأدرينالين</translation>
        </message>
        <message>
            <source>Without epinephrine</source>
            <translation>بلا أدرينالين</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>الرقبة</translation>
        </message>
        <message>
            <source>Face</source>
            <translation>الوجه</translation>
        </message>
        <message>
            <source>Deep folds ask for threads past the moving zone, and deep folds recover otherwise.</source>
            <translation>الطيات العميقة تحتاج خيوطًا بعد المنطقة المتحركة، وهي تتعافى على نحو آخر.</translation>
        </message>
        <message>
            <source>Stronger threads need a lower gauge: what differs may be the thread.</source>
            <translation>الخيوط الأقوى تحتاج قياسًا أغلظ: قد يكون الفرق من الخيط.</translation>
        </message>
        <message>
            <source>Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.</source>
            <translation>الأدرينالين يخفي الكدمات المبكرة، ويُترك عند من تنزف أو قلبها ضعيف. والمسارات التي لا تذكر كل خيوطها أين كان، كتلك من برنامج أقدم، لا تُحتسب.</translation>
        </message>
        <message>
            <source>Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.</source>
            <translation>الوجه والرقبة يتورمان ويهدآن على نحو مختلف بطبيعتهما: هذا يبيّن ما يُقال للمريضة، لا أيهما أفضل.</translation>
        </message>
        <message>
            <source>Threads were chosen for the face: heavy faces get other threads than light ones.</source>
            <translation>اختيرت الخيوط بحسب الوجه: الوجوه الثقيلة لها خيوط غير الخفيفة.</translation>
        </message>
        <message>
            <source>%1 days (%2 to %3)</source>
            <comment>mean, its limits</comment>
            <translation>%1 أيام (من %2 إلى %3)</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>لم يُبلغ</translation>
        </message>
        <message>
            <source>Courses that still have it, per cent</source>
            <translation>المسارات التي ما زال فيها، بالمئة</translation>
        </message>
        <message>
            <source>Complicated courses</source>
            <translation>مسارات مع مضاعفات</translation>
        </message>
        <message>
            <source>All courses</source>
            <translation>كل المسارات</translation>
        </message>
        <message>
            <source>%1 were complicated: %2.</source>
            <comment>courses, share</comment>
            <translation>مع مضاعفات: %1، أي %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln مسار بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
                <numerusform>مسار واحد بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
                <numerusform>مساران بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
                <numerusform>%Ln مسارات بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
                <numerusform>%Ln مسارًا بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
                <numerusform>%Ln مسار بلا متابعة لا تُعدّ: قد تكون أسوأ أو أفضل.</numerusform>
            </translation>
        </message>
        <message>
            <source>By kind</source>
            <translation>بحسب النوع</translation>
        </message>
        <message>
            <source>Most often: %1.</source>
            <translation>الأكثر: %1.</translation>
        </message>
        <message>
            <source>A course with two kinds counts in both.</source>
            <translation>المسار ذو النوعين يُعدّ في كليهما.</translation>
        </message>
        <message>
            <source>No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.</source>
            <translation>لا مضاعفات مسجّلة بعد. وهذا لا يثبت عدم وجودها: الحدود أعلاه تقول كم قد يكون منها.</translation>
        </message>
        <message>
            <source>By zone</source>
            <translation>بحسب المنطقة</translation>
        </message>
        <message>
            <source>A course counts in every zone that it has.</source>
            <translation>يُعدّ المسار في كل منطقة له.</translation>
        </message>
        <message>
            <source>Shares of zones do not add up: neighbouring zones share their patients.</source>
            <translation>نسب المناطق لا تُجمع: المناطق المتجاورة تشترك في المريضات.</translation>
        </message>
        <message>
            <source>How long symptoms last</source>
            <translation>كم تدوم الأعراض</translation>
        </message>
        <message>
            <source>Who feels well may stop writing: then this looks slower than it is.</source>
            <translation>من تشعر بتحسن قد تكف عن الكتابة: فيبدو الأمر أبطأ مما هو.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>العرَض</translation>
        </message>
        <message>
            <source>Courses with it</source>
            <translation>مسارات فيها العرَض</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>زال</translation>
        </message>
        <message>
            <source>Days with it up to day 20</source>
            <translation>أيام معه حتى اليوم ٢٠</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>symptom, days</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in which it went.</source>
            <translation>لا يكفي للقول: لا عرَض له ما يكفي من المسارات التي زال فيها.</translation>
        </message>
        <message>
            <source>Half were rid of it by day: %1.</source>
            <translation>تخلّص منه النصف حتى اليوم: %1.</translation>
        </message>
        <message>
            <source>Complications side by side</source>
            <translation>المضاعفات جنبًا إلى جنب</translation>
        </message>
        <message>
            <source>%1 less %2: %3 points of 100 (%4 to %5).</source>
            <comment>group, group, difference, its limits</comment>
            <translation>%1 ناقص %2: %3 نقاط من ١٠٠ (من %4 إلى %5).</translation>
        </message>
        <message>
            <source>So many courses would find a doubling of %1 in %2 of 100 cases.</source>
            <comment>share, number</comment>
            <translation>هذا العدد من المسارات يكشف تضاعف %1 في %2 من ١٠٠ حالة.</translation>
        </message>
        <message>
            <source>Found in 80 of 100 cases: %1 or more beside it.</source>
            <translation>يُكشف في ٨٠ من ١٠٠ حالة: %1 أو أكثر في المقابل.</translation>
        </message>
        <message>
            <source>No difference at all would be found in 80 of 100 cases.</source>
            <translation>لا فرق مهما كبر يُكشف في ٨٠ من ١٠٠ حالة.</translation>
        </message>
        <message>
            <source>Probability by chance alone: below %1.</source>
            <translation>الاحتمال بالمصادفة وحدها: أقل من %1.</translation>
        </message>
        <message>
            <source>Probability by chance alone: %1.</source>
            <translation>الاحتمال بالمصادفة وحدها: %1.</translation>
        </message>
        <message>
            <source>No test: all ended alike.</source>
            <translation>لا اختبار: انتهت كلها على نحو واحد.</translation>
        </message>
        <message>
            <source>Days with each symptom, difference</source>
            <translation>أيام كل عرَض، الفرق</translation>
        </message>
        <message>
            <source>Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.</source>
            <translation>سبعة أعراض سبعة اختبارات: احتمال واحد دون ٠٫٠٥ بينها شائع وإن لم يختلف شيء.</translation>
        </message>
        <message>
            <source>Difference, days</source>
            <translation>الفرق، أيام</translation>
        </message>
        <message>
            <source>By chance</source>
            <translation>بالمصادفة</translation>
        </message>
        <message>
            <source>Found in 80 of 100</source>
            <translation>يُكشف في ٨٠ من ١٠٠</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 أيام</translation>
        </message>
        <message>
            <source>Days: to the left %1 is shorter, to the right %2</source>
            <comment>group, group</comment>
            <translation>أيام: إلى اليسار %1 أقصر، وإلى اليمين %2</translation>
        </message>
        <message>
            <source>Days with the symptom up to day 20, %1 less %2.</source>
            <comment>group, group</comment>
            <translation>أيام العرَض حتى اليوم ٢٠، %1 ناقص %2.</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in both groups.</source>
            <translation>لا يكفي للقول: لا عرَض له ما يكفي من المسارات في المجموعتين.</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>نعم</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>الخيوط</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>بعد المنطقة المتحركة</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>قبل المنطقة المتحركة</translation>
        </message>
        <message>
            <source>fewer than %1</source>
            <comment>of 100</comment>
            <translation>أقل من %1</translation>
        </message>
        <message>
            <source>Not enough to say: the groups lie too far apart</source>
            <translation>لا يكفي للقول: المجموعات متباعدة أكثر مما ينبغي</translation>
        </message>
        <message>
            <source>Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.</source>
            <translation>نسبة المسارات معروفة النتيجة. الحدود: ويلسون، ٩٥٪. المسارات بلا متابعة مستبعدة وتُعدّ على حدة.</translation>
        </message>
        <message>
            <source>Share, 95% limits</source>
            <translation>النسبة، حدود ٩٥٪</translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر %Ln أسبوع.</numerusform>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر أسبوع واحد.</numerusform>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر أسبوعان.</numerusform>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر %Ln أسابيع.</numerusform>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر %Ln أسبوعًا.</numerusform>
                <numerusform>التنبيه: تحذير أو ملاحظة تطلب فعلًا قبل المتابعة. مجدٍ: أُغلق بنصيحة أو علاج أو رعاية عاجلة، أو قُدّم الموعد. الحدود: ويلسون، ٩٥٪. التنبيهات في الأسبوع: خلال آخر %Ln أسبوع.</numerusform>
            </translation>
        </message>
        <message>
            <source>Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.</source>
            <translation>التسجيلات: أيام سألت فيها خطة العناية وكُتب شيء. التذكيرات: أُجيب عنها بكلمة «تم». الحدود: ويلسون، ٩٥٪؛ وتذكيرات المريضة الواحدة متشابهة، فالحدود أضيق مما ينبغي.</translation>
        </message>
        <message>
            <source>Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.</source>
            <translation>زال: درجة ١ أو أقل في يومين متتاليين ودامت؛ ويُحسب الجانب الأسوأ. المنحنيات: كابلان-ماير، والوسيط بحدود بروكماير وكراولي، ٩٥٪. متوسط الأيام حتى اليوم ٢٠ بحدود التوزيع الطبيعي.</translation>
        </message>
        <message>
            <source>Median day, 95% limits</source>
            <translation>اليوم الوسيط، حدود ٩٥٪</translation>
        </message>
        <message>
            <source>Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.</source>
            <translation>النسب: ويلسون، ٩٥٪. الفرق: نيوكومب. الاختبار: فيشر، ثنائي الجانب. القدرة: مضبوطة لهذا الاختبار.</translation>
        </message>
        <message>
            <source>Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.</source>
            <translation>فرق متوسط الأيام حتى اليوم ٢٠ (متوسطات مقيّدة)، حدود التوزيع الطبيعي، ٩٥٪؛ اختبار لوغ-رانك.</translation>
        </message>
        <message>
            <source>CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.</source>
            <translation>مخطط CUSUM بخطر واحد لكل المسارات (مجموع شتاينر وآخرين، Biostatistics 2000، دون تعديل بحسب المريضة): يراقب أرجحية أكبر %1 مرات من خطر قدره %2؛ ويبدأ من جديد بعد كل إشارة.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message>
            <source>Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one.</source>
            <translation>لا يكفي للقول: المقارنة تحتاج مجموعتين، وكل المسارات التي يمكن تصنيفها في واحدة.</translation>
        </message>
        <message>
            <source>Not enough to say: a comparison needs two groups, and no course says to which it belongs.</source>
            <translation>لا يكفي للقول: المقارنة تحتاج مجموعتين، ولا مسار يذكر إلى أيّهما ينتمي.</translation>
        </message>
        <message>
            <source>Time to settle</source>
            <translation>المدة</translation>
        </message>
        <message>
            <source>Techniques</source>
            <translation>التقنيات</translation>
        </message>
        <message>
            <source>Over time</source>
            <translation>عبر الزمن</translation>
        </message>
        <message>
            <source>Adherence</source>
            <translation>الالتزام</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>التشغيلات</translation>
        </message>
        <message>
            <source>Usual range</source>
            <translation>المجال المعتاد</translation>
        </message>
        <message>
            <source>Reading the courses</source>
            <translation>تُقرأ المسارات</translation>
        </message>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · %Ln معروفة النتيجة</numerusform>
                <numerusform>%1 · واحد معروف النتيجة</numerusform>
                <numerusform>%1 · اثنان معروفا النتيجة</numerusform>
                <numerusform>%1 · %Ln معروفة النتيجة</numerusform>
                <numerusform>%1 · %Ln معروفة النتيجة</numerusform>
                <numerusform>%1 · %Ln معروفة النتيجة</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>group, courses</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Comparison, not proof: nobody drew by lot who got what.</source>
            <translation>مقارنة لا برهان: لم يُقرع على من يأخذ ماذا.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted.</source>
            <translation>حُفظ باسم %1. الملف غير مشفّر.</translation>
        </message>
        <message>
            <source>Save the figure</source>
            <translation>حفظ الشكل</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>المضاعفات</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>التنبيهات</translation>
        </message>
    </context>
    <context>
        <name>PracticePage</name>
        <message>
            <source>Practice</source>
            <translation>حصيلة العيادة</translation>
        </message>
        <message>
            <source>Working the figures out. The desk stays free meanwhile.</source>
            <translation>تُحسب الأرقام. يبقى المكتب حرًّا أثناء ذلك.</translation>
        </message>
    </context>
    <context>
        <name>FigureCard</name>
        <message>
            <source>How: %1</source>
            <translation>الطريقة: %1</translation>
        </message>
        <message>
            <source>Show the picture</source>
            <translation>عرض الصورة</translation>
        </message>
        <message>
            <source>Save as CSV</source>
            <translation>حفظ بصيغة CSV</translation>
        </message>
        <message>
            <source>Save as PNG</source>
            <translation>حفظ بصيغة PNG</translation>
        </message>
        <message>
            <source>Save as SVG</source>
            <translation>حفظ بصيغة SVG</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>عرض كجدول</translation>
        </message>
    </context>
    <context>
        <name>ComparisonChoice</name>
        <message>
            <source>Compare by</source>
            <translation>المقارنة بحسب</translation>
        </message>
        <message>
            <source>First</source>
            <translation>الأولى</translation>
        </message>
        <message>
            <source>Second</source>
            <translation>الثانية</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::LotBoard</name>
        <message>
            <source>%1 complicated, %2 not known yet</source>
            <translation>%1 مع مضاعفات، %2 غير معروفة بعد</translation>
        </message>
        <message>
            <source>Lot %1 went to %2.</source>
            <comment>lot, courses</comment>
            <translation>التشغيلة %1 ذهبت إلى %2.</translation>
        </message>
        <message>
            <source>Outcome not known</source>
            <translation>النتيجة غير معروفة</translation>
        </message>
        <message>
            <source>Uncomplicated</source>
            <translation>بلا مضاعفات</translation>
        </message>
        <message>
            <source>Call list for lot %1</source>
            <translation>قائمة اتصال للتشغيلة %1</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <comment>clinic, when</comment>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>الهاتف</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>التشغيلة كما كُتبت</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>النتيجة</translation>
        </message>
        <message>
            <source>Called by, when</source>
            <translation>من اتصل ومتى</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>حُفظ باسم %1. الملف غير مشفّر: احفظه كما تحفظ سجلات المريضات.</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>حفظ قائمة الاتصال</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>مع مضاعفات</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>المريضة</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>تاريخ العلاج</translation>
        </message>
        <message>
            <source>%1, product not known</source>
            <comment>lot</comment>
            <translation>%1، المنتج غير معروف</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product</comment>
            <translation>%1، المنتج %2</translation>
        </message>
        <message>
            <source>Product not known: %1 of them. It may be this one, so they stand here too.</source>
            <comment>a number of courses</comment>
            <translation>المنتج غير معروف: %1 منها. قد يكون هذا المنتج، لذا تُذكر هنا أيضًا.</translation>
        </message>
    </context>
    <context>
        <name>LimitFields</name>
        <message>
            <source>Your clinic's limit of lidocaine</source>
            <translation>حد عيادتك من الليدوكائين</translation>
        </message>
        <message>
            <source>You may set it lower than the US label's, never higher. An empty field keeps the label's number.</source>
            <translation>يمكنك جعله أدنى من حد النشرة الأمريكية، ولا يمكن أن يكون أعلى. الحقل الفارغ يُبقي رقم النشرة.</translation>
        </message>
        <message>
            <source>Save the limit</source>
            <translation>احفظ الحد</translation>
        </message>
    </context>
    <context>
        <name>LotPanel</name>
        <message>
            <source>Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.</source>
            <translation>اختر تشغيلة لترى كل من تلقّاها. تُعرف بأي كتابة كانت. التشغيلة ليست سببًا: من تلقّاها قد تكون بخير.</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>التشغيلة</translation>
        </message>
        <message>
            <source>No treatment on record has such a lot.</source>
            <translation>لا علاج مسجّل بهذه التشغيلة.</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>المريضة</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>الهاتف</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>تاريخ العلاج</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>التشغيلة كما كُتبت</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>النتيجة</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>حفظ قائمة الاتصال</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من %Ln مسار.</numerusform>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من مسار واحد.</numerusform>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من مسارين.</numerusform>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من %Ln مسارات.</numerusform>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من %Ln مسارًا.</numerusform>
                <numerusform>يجوز أن تُستخلص نسخة جديدة من %Ln مسار.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>يجوز الاستخلاص من %Ln مسار. والمطلوب %1 لفحص نسخة.</numerusform>
                <numerusform>يجوز الاستخلاص من مسار واحد. والمطلوب %1 لفحص نسخة.</numerusform>
                <numerusform>يجوز الاستخلاص من مسارين. والمطلوب %1 لفحص نسخة.</numerusform>
                <numerusform>يجوز الاستخلاص من %Ln مسارات. والمطلوب %1 لفحص نسخة.</numerusform>
                <numerusform>يجوز الاستخلاص من %Ln مسارًا. والمطلوب %1 لفحص نسخة.</numerusform>
                <numerusform>يجوز الاستخلاص من %Ln مسار. والمطلوب %1 لفحص نسخة.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>استُخلص من %Ln مسار بيد %1، %2</numerusform>
                <numerusform>استُخلص من مسار واحد بيد %1، %2</numerusform>
                <numerusform>استُخلص من مسارين بيد %1، %2</numerusform>
                <numerusform>استُخلص من %Ln مسارات بيد %1، %2</numerusform>
                <numerusform>استُخلص من %Ln مسارًا بيد %1، %2</numerusform>
                <numerusform>استُخلص من %Ln مسار بيد %1، %2</numerusform>
            </translation>
        </message>
        <message>
            <source>The range every clinic begins with: an assumption, no courses behind it</source>
            <translation>المجال الذي تبدأ به كل عيادة: افتراض، لا مسارات وراءه</translation>
        </message>
        <message>
            <source>%1 went back to %2, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1: العودة إلى %2، %3: %4</translation>
        </message>
        <message>
            <source>%1 put %2 into use, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1: استعمال %2، %3: %4</translation>
        </message>
        <message>
            <source>On courses it had not seen</source>
            <translation>على مسارات لم يرها</translation>
        </message>
        <message>
            <source>Above the 90th</source>
            <translation>فوق التسعين</translation>
        </message>
        <message>
            <source>Above the 97th</source>
            <translation>فوق السابعة والتسعين</translation>
        </message>
        <message>
            <source>Say first who is at the desk: a version carries the name of who learned it.</source>
            <translation>قل أولًا من على المكتب: النسخة تحمل اسم من استخلصها.</translation>
        </message>
        <message>
            <source>Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.</source>
            <translation>استُخلصت %1. لم يتغير شيء لأي مريضة: انظر فحصها ثم استعملها أو اتركها.</translation>
        </message>
        <message>
            <source>Nothing has changed since the last version was learned.</source>
            <translation>لم يتغير شيء منذ استخلاص آخر نسخة.</translation>
        </message>
        <message>
            <source>Go back to %1</source>
            <translation>العودة إلى %1</translation>
        </message>
        <message>
            <source>Use %1</source>
            <translation>استعمال %1</translation>
        </message>
        <message>
            <source>%1 is in use. Courses that run keep the range they began with.</source>
            <translation>%1 قيد الاستعمال. المسارات الجارية تحتفظ بمجالها.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>العرَض</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>المسارات</translation>
        </message>
    </context>
    <context>
        <name>Bands</name>
        <message numerus="yes">
            <source>%Ln course(s): the patient has not agreed that her course teaches</source>
            <translation>
                <numerusform>%Ln مسار: لم توافق المريضة على الاستخلاص</numerusform>
                <numerusform>مسار واحد: لم توافق المريضة على الاستخلاص</numerusform>
                <numerusform>مساران: لم توافق المريضة على الاستخلاص</numerusform>
                <numerusform>%Ln مسارات: لم توافق المريضة على الاستخلاص</numerusform>
                <numerusform>%Ln مسارًا: لم توافق المريضة على الاستخلاص</numerusform>
                <numerusform>%Ln مسار: لم توافق المريضة على الاستخلاص</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln مسار: لا متابعة بعد ولا تُعرف النهاية</numerusform>
                <numerusform>مسار واحد: لا متابعة بعد ولا تُعرف النهاية</numerusform>
                <numerusform>مساران: لا متابعة بعد ولا تُعرف النهاية</numerusform>
                <numerusform>%Ln مسارات: لا متابعة بعد ولا تُعرف النهاية</numerusform>
                <numerusform>%Ln مسارًا: لا متابعة بعد ولا تُعرف النهاية</numerusform>
                <numerusform>%Ln مسار: لا متابعة بعد ولا تُعرف النهاية</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln مسار: مع مضاعفات</numerusform>
                <numerusform>مسار واحد: مع مضاعفات</numerusform>
                <numerusform>مساران: مع مضاعفات</numerusform>
                <numerusform>%Ln مسارات: مع مضاعفات</numerusform>
                <numerusform>%Ln مسارًا: مع مضاعفات</numerusform>
                <numerusform>%Ln مسار: مع مضاعفات</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln مسار: عولجت بسبب ملاحظة</numerusform>
                <numerusform>مسار واحد: عولجت بسبب ملاحظة</numerusform>
                <numerusform>مساران: عولجت بسبب ملاحظة</numerusform>
                <numerusform>%Ln مسارات: عولجت بسبب ملاحظة</numerusform>
                <numerusform>%Ln مسارًا: عولجت بسبب ملاحظة</numerusform>
                <numerusform>%Ln مسار: عولجت بسبب ملاحظة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln مسار: أيام التسجيل قليلة</numerusform>
                <numerusform>مسار واحد: أيام التسجيل قليلة</numerusform>
                <numerusform>مساران: أيام التسجيل قليلة</numerusform>
                <numerusform>%Ln مسارات: أيام التسجيل قليلة</numerusform>
                <numerusform>%Ln مسارًا: أيام التسجيل قليلة</numerusform>
                <numerusform>%Ln مسار: أيام التسجيل قليلة</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough to say: nearly the assumption</source>
            <translation>لا يكفي للقول: يكاد يكون الافتراض</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>يصمد</translation>
        </message>
        <message>
            <source>too narrow: false alerts</source>
            <translation>ضيق جدًّا: تنبيهات كاذبة</translation>
        </message>
        <message>
            <source>too wide: it would look late</source>
            <translation>واسع جدًّا: ينظر متأخرًا</translation>
        </message>
        <message>
            <source>%1, promised %2</source>
            <comment>share seen, share promised</comment>
            <translation>%1، والموعود %2</translation>
        </message>
        <message>
            <source>It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).</source>
            <translation>صمد على مسارات لم يرها: %1 من القراءات فوق المئين التسعين (من %2 إلى %3).</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>لا يُستعمل: وراءه %Ln مسار، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل: وراءه مسار واحد، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل: وراءه مساران، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل: وراءه %Ln مسارات، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل: وراءه %Ln مسارًا، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل: وراءه %Ln مسار، والمطلوب %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be used: it did not hold on courses that it had not seen. The table says where.</source>
            <translation>لا يُستعمل: لم يصمد على مسارات لم يرها. الجدول يقول أين.</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على %Ln مسار من هذه العيادة، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على مسار واحد من هذه العيادة، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على مسارين من هذه العيادة، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على %Ln مسارات من هذه العيادة، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على %Ln مسارًا من هذه العيادة، والمطلوب %1.</numerusform>
                <numerusform>لا يُستعمل بعد: أمكن فحصه على %Ln مسار من هذه العيادة، والمطلوب %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه %Ln مسار.</numerusform>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه مسار واحد.</numerusform>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه مساران.</numerusform>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه %Ln مسارات.</numerusform>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه %Ln مسارًا.</numerusform>
                <numerusform>أُخذ من ملف بيد %1، %2. اسمه هناك %3 ووراءه %Ln مسار.</numerusform>
            </translation>
        </message>
        <message>
            <source>Whoever took it says that no course of this clinic is behind it.</source>
            <translation>يقول من أخذه إن لا مسار من هذه العيادة وراءه.</translation>
        </message>
        <message>
            <source>It was checked on courses that were treated after it was learned.</source>
            <translation>فُحص على مسارات عولجت بعد استخلاصه.</translation>
        </message>
    </context>
    <context>
        <name>BandCard</name>
        <message>
            <source>%1, in use</source>
            <translation>%1، قيد الاستعمال</translation>
        </message>
        <message>
            <source>Go back to it</source>
            <translation>العودة إليها</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>استعمالها</translation>
        </message>
        <message>
            <source>Hide the check</source>
            <translation>إخفاء الفحص</translation>
        </message>
        <message>
            <source>Show the check</source>
            <translation>عرض الفحص</translation>
        </message>
    </context>
    <context>
        <name>BandPanel</name>
        <message>
            <source>In use</source>
            <translation>قيد الاستعمال</translation>
        </message>
        <message>
            <source>Learn a new one</source>
            <translation>استخلاص مجال جديد</translation>
        </message>
        <message>
            <source>Learning, and checking on courses left out. This takes a while; the desk stays free.</source>
            <translation>يجري الاستخلاص والفحص على مسارات مستبعدة. يستغرق ذلك وقتًا؛ ويبقى المكتب حرًّا.</translation>
        </message>
        <message>
            <source>Learn a version</source>
            <translation>استخلاص نسخة</translation>
        </message>
        <message>
            <source>Nothing comes into use by it.</source>
            <translation>لا يُستعمل شيء بذلك.</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>النسخ</translation>
        </message>
        <message>
            <source>Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.</source>
            <translation>يُوقَّع كل بروتوكول به من جديد. المسارات الجارية تحتفظ بما لها. ويُحفظ السبب مع اسمك.</translation>
        </message>
    </context>
    <context>
        <name>ReasonPanel</name>
        <message>
            <source>Reason</source>
            <translation>السبب</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>تركه كما هو</translation>
        </message>
    </context>
    <context>
        <name>ProtocolEditPage</name>
        <message>
            <source>Change the protocol</source>
            <translation>تغيير البروتوكول</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>تراجع</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>إعادة</translation>
        </message>
        <message>
            <source>As in use</source>
            <translation>كما هو مستعمل</translation>
        </message>
        <message>
            <source>Drops every change; can be undone.</source>
            <translation>يلغي كل تغيير؛ ويمكن التراجع عنه.</translation>
        </message>
        <message>
            <source>Undo the signature</source>
            <translation>التراجع عن التوقيع</translation>
        </message>
        <message>
            <source>Signs what was in use before anew.</source>
            <translation>يوقّع من جديد ما كان مستعملًا قبله.</translation>
        </message>
    </context>
    <context>
        <name>PlanFields</name>
        <message>
            <source>From day</source>
            <translation>من اليوم</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>إلى اليوم</translation>
        </message>
        <message>
            <source>Every how many days</source>
            <translation>كل كم يوم</translation>
        </message>
        <message>
            <source>Reminds at (empty: a rule to keep, nothing rings)</source>
            <translation>يذكّر في (فارغ: قاعدة تُراعى ولا شيء يرن)</translation>
        </message>
        <message>
            <source>The clinic's own words, added for the patient</source>
            <translation>كلمات العيادة، تضاف للمريضة</translation>
        </message>
        <message>
            <source>Rings in quiet hours too</source>
            <translation>يرن في ساعات الهدوء أيضًا</translation>
        </message>
        <message>
            <source>Take it out of the plan</source>
            <translation>إخراجه من الخطة</translation>
        </message>
    </context>
    <context>
        <name>PlanLine</name>
        <message>
            <source>%1 (changed)</source>
            <translation>%1 (مُغيَّر)</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolEditor</name>
        <message>
            <source>was %1</source>
            <translation>كان %1</translation>
        </message>
        <message>
            <source>%1, version %2 in the making</source>
            <translation>%1، النسخة %2 قيد الإعداد</translation>
        </message>
        <message>
            <source>Care plan</source>
            <translation>خطة العناية</translation>
        </message>
        <message>
            <source>Rules</source>
            <translation>القواعد</translation>
        </message>
        <message>
            <source>Rehearse and sign</source>
            <translation>التجربة والتوقيع</translation>
        </message>
        <message>
            <source>Write times of day with a space between, for example 08:00 20:00.</source>
            <translation>اكتب أوقات اليوم وبينها مسافة، مثلًا 08:00 20:00.</translation>
        </message>
        <message>
            <source>What the patient sees on day %1</source>
            <translation>ما تراه المريضة في اليوم %1</translation>
        </message>
        <message>
            <source>An instruction of the clinic's own needs its words.</source>
            <translation>تعليمة العيادة الخاصة تحتاج كلماتها.</translation>
        </message>
        <message>
            <source>Too much: at most 40 instructions, 8 times a day and 400 characters of text.</source>
            <translation>أكثر من اللازم: ٤٠ تعليمة على الأكثر، و٨ أوقات في اليوم، و٤٠٠ حرف.</translation>
        </message>
        <message>
            <source>Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.</source>
            <translation>من %1 مسارًا بلا مضاعفات متخيَّلًا بمنحنى أملس ينبّه إلى %2، والمستعمل إلى %3؛ ومن %4 متخيَّلًا بخطوات إلى %5، والمستعمل إلى %6.</translation>
        </message>
        <message>
            <source>With as many patients as lately: about %1 alerts a week, now %2.</source>
            <comment>number, number</comment>
            <translation>بعدد المريضات الأخير: نحو %1 تنبيهات في الأسبوع، والآن %2.</translation>
        </message>
        <message>
            <source>No past course to rehearse on: only invented courses speak.</source>
            <translation>لا مسار سابق للتجربة عليه: تتكلم المسارات المتخيَّلة وحدها.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: %Ln مسار.</numerusform>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: مسار واحد.</numerusform>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: مساران.</numerusform>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: %Ln مسارات.</numerusform>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: %Ln مسارًا.</numerusform>
                <numerusform>مسارات سابقة كان التنبيه إليها سيختلف: %Ln مسار.</numerusform>
            </translation>
        </message>
        <message>
            <source>The protocol has been changed since: rehearse it again.</source>
            <translation>تغيّر البروتوكول منذ ذلك: جرّبه مرة أخرى.</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>المسارات</translation>
        </message>
        <message>
            <source>Flagged, in use</source>
            <translation>نُبّه إليه، المستعمل</translation>
        </message>
        <message>
            <source>Flagged, changed</source>
            <translation>نُبّه إليه، المغيَّر</translation>
        </message>
        <message>
            <source>Within a day, in use</source>
            <translation>خلال يوم، المستعمل</translation>
        </message>
        <message>
            <source>Within a day, changed</source>
            <translation>خلال يوم، المغيَّر</translation>
        </message>
        <message>
            <source>Invented, smooth: %1</source>
            <translation>متخيَّل، منحنى أملس: %1</translation>
        </message>
        <message>
            <source>Invented, in steps: %1</source>
            <translation>متخيَّل، بخطوات: %1</translation>
        </message>
        <message>
            <source>%1, call now</source>
            <comment>courses</comment>
            <translation>%1، اتصل الآن</translation>
        </message>
        <message>
            <source>%1, not heard from</source>
            <comment>courses</comment>
            <translation>%1، بلا أخبار</translation>
        </message>
        <message>
            <source>Past: %1</source>
            <translation>سابق: %1</translation>
        </message>
        <message>
            <source>New: %1, %2</source>
            <comment>instruction, when</comment>
            <translation>جديد: %1، %2</translation>
        </message>
        <message>
            <source>%1: %2, %3 (was %4, %5)</source>
            <comment>instruction, when, how, when, how</comment>
            <translation>%1: %2، %3 (كان %4، %5)</translation>
        </message>
        <message>
            <source>Taken out: %1</source>
            <translation>أُخرج: %1</translation>
        </message>
        <message>
            <source>Follow-up on day %1 (was %2)</source>
            <translation>المتابعة في اليوم %1 (كانت %2)</translation>
        </message>
        <message>
            <source>%1, %2: %3 (was %4)</source>
            <comment>rule, what, number, number</comment>
            <translation>%1، %2: %3 (كان %4)</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>لم يتغير شيء بعد.</translation>
        </message>
        <message>
            <source>Rehearse it first: nothing goes live unseen.</source>
            <translation>جرّبه أولًا: لا شيء يُستعمل دون أن يُرى.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>قل من على المكتب.</translation>
        </message>
        <message>
            <source>Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.</source>
            <translation>وُقّعت النسخة %1. تذهب إلى الهواتف التي تُربط من الآن؛ والمسارات الجارية تحتفظ بما لها.</translation>
        </message>
        <message>
            <source>What was in use before is in use again, as version %1.</source>
            <translation>ما كان مستعملًا من قبل عاد مستعملًا، بالنسخة %1.</translation>
        </message>
        <message>
            <source>Version %1, signed %2</source>
            <translation>النسخة %1، وُقّعت %2</translation>
        </message>
        <message>
            <source>Usual range: %1 (was %2)</source>
            <comment>version, version</comment>
            <translation>المجال المعتاد: %1 (كان %2)</translation>
        </message>
        <message>
            <source>It cannot be signed with the usual range that came with it. %1</source>
            <translation>لا يمكن توقيعه بالمجال المعتاد الذي جاء معه. %1</translation>
        </message>
        <message>
            <source>With version %1 of %2</source>
            <comment>number, protocol</comment>
            <translation>مع النسخة %1 من %2</translation>
        </message>
        <message>
            <source>The signature of version %1 was undone</source>
            <translation>أُلغي توقيع النسخة %1</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <comment>rule, threshold and details, the same before</comment>
            <translation>%1: %2 (كان %3)</translation>
        </message>
        <message>
            <source>A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1</source>
            <comment>the reason</comment>
            <translation>توجد مسودة محفوظة لا يمكن قراءتها. تبقى كما هي: وما تغيّره الآن لا يُحفظ. %1</translation>
        </message>
    </context>
    <context>
        <name>ProtocolPlan</name>
        <message>
            <source>Follow-up</source>
            <translation>المتابعة</translation>
        </message>
        <message>
            <source>day</source>
            <translation>اليوم</translation>
        </message>
        <message>
            <source>Add an instruction</source>
            <translation>إضافة تعليمة</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>اليوم</translation>
        </message>
        <message>
            <source>All day</source>
            <translation>طوال اليوم</translation>
        </message>
        <message>
            <source>Nothing is asked on this day.</source>
            <translation>لا شيء مطلوب في هذا اليوم.</translation>
        </message>
        <message>
            <source>The diary says the same in the patient's language; the clinic's own words stand as they are written.</source>
            <translation>تقول اليوميات الشيء نفسه بلغة المريضة؛ وتبقى كلمات العيادة كما كُتبت.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolRules</name>
        <message>
            <source>Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.</source>
            <translation>علامات الخطر والحمى والألم الشديد ليست هنا: لا بروتوكول يؤخرها أو يخففها. وعتبات الإحصاء تُعاير مع المجال المعتاد.</translation>
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
            <translation>ما تغيّر</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>لا شيء بعد.</translation>
        </message>
        <message>
            <source>Rehearsal</source>
            <translation>التجربة</translation>
        </message>
        <message>
            <source>Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.</source>
            <translation>يمرّر القواعد على مسارات سابقة وأخرى متخيَّلة حقيقتها معروفة. لا يتغير بذلك شيء لأحد.</translation>
        </message>
        <message>
            <source>Rehearsing. The desk stays free meanwhile.</source>
            <translation>تجري التجربة. يبقى المكتب حرًّا أثناء ذلك.</translation>
        </message>
        <message>
            <source>Past courses, one by one</source>
            <translation>المسارات السابقة، واحدًا واحدًا</translation>
        </message>
        <message>
            <source>Rehearse again</source>
            <translation>التجربة مرة أخرى</translation>
        </message>
        <message>
            <source>Rehearse</source>
            <translation>تجربة</translation>
        </message>
        <message>
            <source>Sign it</source>
            <translation>توقيعه</translation>
        </message>
        <message>
            <source>It goes to phones that are linked from now on.</source>
            <translation>يذهب إلى الهواتف التي تُربط من الآن.</translation>
        </message>
        <message>
            <source>Signed before</source>
            <translation>وُقّع سابقًا</translation>
        </message>
        <message>
            <source>Take it up again</source>
            <translation>استئنافه</translation>
        </message>
        <message>
            <source>Keep the usual range in use</source>
            <translation>إبقاء المجال المعتاد المستعمل</translation>
        </message>
        <message>
            <source>Drops the range that came with the file, and its thresholds; can be undone.</source>
            <translation>يُسقط المجال الذي جاء مع الملف وعتباته؛ ويمكن التراجع عنه.</translation>
        </message>
    </context>
    <context>
        <name>Rehearsals</name>
        <message>
            <source>Uncomplicated</source>
            <translation>بلا مضاعفات</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>عدوى</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>ورم دموي</translation>
        </message>
        <message>
            <source>Slow recovery</source>
            <translation>تعافٍ بطيء</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>تجعد يبقى</translation>
        </message>
        <message>
            <source>Falls silent</source>
            <translation>يصمت</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>مع مضاعفات</translation>
        </message>
        <message>
            <source>%1 of %2 (%3 to %4 in 100)</source>
            <comment>flagged, courses, limits</comment>
            <translation>%1 من %2 (من %3 إلى %4 في المئة)</translation>
        </message>
        <message>
            <source>no such finding</source>
            <translation>لا تنبيه كهذا</translation>
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
            <translation>فوق المجال المعتاد</translation>
        </message>
        <message>
            <source>Rising again</source>
            <translation>يرتفع من جديد</translation>
        </message>
        <message>
            <source>One side much worse</source>
            <translation>جانب أسوأ بكثير</translation>
        </message>
        <message>
            <source>One side fills in the first days</source>
            <translation>جانب يمتلئ في الأيام الأولى</translation>
        </message>
        <message>
            <source>Slow to settle</source>
            <translation>بطيء الهدوء</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>تجعد يبقى</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>لم يرد خبر</translation>
        </message>
        <message>
            <source>only from this score on</source>
            <translation>من هذه الدرجة فقط</translation>
        </message>
        <message>
            <source>only so far above the lowest so far</source>
            <translation>بهذا القدر فوق أدنى ما كان فقط</translation>
        </message>
        <message>
            <source>from this day on</source>
            <translation>من هذا اليوم</translation>
        </message>
        <message>
            <source>up to this day</source>
            <translation>حتى هذا اليوم</translation>
        </message>
        <message>
            <source>only with so much between the sides</source>
            <translation>بهذا الفرق بين الجانبين فقط</translation>
        </message>
        <message>
            <source>only with so much between the sides, symptoms added up</source>
            <translation>بهذا الفرق بين الجانبين فقط، والأعراض مجموعة</translation>
        </message>
        <message>
            <source>only after a peak of this score</source>
            <translation>بعد ذروة بهذه الدرجة فقط</translation>
        </message>
        <message>
            <source>unchanged for a week: from this day on</source>
            <translation>بلا تغير أسبوعًا: من هذا اليوم</translation>
        </message>
        <message>
            <source>unchanged for a week: only from this score on</source>
            <translation>بلا تغير أسبوعًا: من هذه الدرجة فقط</translation>
        </message>
        <message>
            <source>without an entry</source>
            <translation>بلا تسجيل</translation>
        </message>
        <message>
            <source>without an entry, after a high one</source>
            <translation>بلا تسجيل، بعد تسجيل مرتفع</translation>
        </message>
        <message>
            <source>days</source>
            <translation>أيام</translation>
        </message>
        <message>
            <source>points</source>
            <translation>نقاط</translation>
        </message>
    </context>
    <context>
        <name>CallPanel</name>
        <message>
            <source>What to ask</source>
            <translation>ما يُسأل</translation>
        </message>
        <message>
            <source>%L1. %2</source>
            <translation>%L1. %2</translation>
        </message>
        <message>
            <source>Note, or message to the patient</source>
            <translation>ملاحظة، أو رسالة إلى المريضة</translation>
        </message>
        <message>
            <source>Spoke with her</source>
            <translation>تم الحديث معها</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>لم يُردّ</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>قُدّم الموعد</translation>
        </message>
        <message>
            <source>Send as a message</source>
            <translation>إرسال كرسالة</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>ليس الآن</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>لماذا</translation>
        </message>
        <message>
            <source>Move the visit</source>
            <translation>نقل الموعد</translation>
        </message>
        <message>
            <source>She called us</source>
            <translation>اتصلت بنا</translation>
        </message>
        <message>
            <source>Nothing is open: the call is noted on the course.</source>
            <translation>لا شيء مفتوح: تُدوَّن المكالمة في المسار.</translation>
        </message>
        <message>
            <source>We reached her</source>
            <translation>وصلنا إليها</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CallBoard</name>
        <message>
            <source>Call %1</source>
            <comment>name</comment>
            <translation>اتصال بـ %1</translation>
        </message>
        <message>
            <source>No number on record</source>
            <translation>لا رقم مسجّل</translation>
        </message>
        <message>
            <source>%1. Ask before you call twice.</source>
            <comment>what somebody else did last</comment>
            <translation>%1. اسأل قبل الاتصال مرتين.</translation>
        </message>
        <message>
            <source>Her diary is in %1.</source>
            <translation>لغة مفكرة المريضة: %1.</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>جرى الاتصال: %1</translation>
        </message>
        <message>
            <source>Visit brought forward: %1</source>
            <translation>قُدّم الموعد: %1</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>لم يُوصل إلى: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>Choose a day from %1 to %2, and not what is agreed already.</source>
            <comment>date, date</comment>
            <translation>اختر يومًا من %1 إلى %2، غير ما اتُّفق عليه.</translation>
        </message>
        <message>
            <source>Agreed so far: %1</source>
            <translation>المتفق عليه حتى الآن: %1</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>اكتبها سنة-شهر-يوم، مثل 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>اكتب الوقت بالساعات والدقائق، مثل 10:30، أو اتركه فارغًا.</translation>
        </message>
        <message>
            <source>Midnight stands for a day without a time. Leave the time empty if none is agreed.</source>
            <translation>منتصف الليل يعني يومًا بلا وقت. اترك الوقت فارغًا إذا لم يُتفق على وقت.</translation>
        </message>
        <message>
            <source>It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.</source>
            <translation>فات أوان نقل الموعد: اليوم %L1 بعد العلاج، وهو آخر يوم ممكن، قد مضى.</translation>
        </message>
        <message>
            <source>The phone shows from its next sync on: %1</source>
            <translation>يعرض الهاتف بعد مزامنته التالية: %1</translation>
        </message>
        <message>
            <source>No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.</source>
            <translation>لا هاتف لديه هذا المسار: الموعد المقدَّم يُدوَّن هنا فقط، ولا يعرضه أي هاتف. أخبرها باليوم.</translation>
        </message>
        <message>
            <source>She called us: %1</source>
            <translation>اتصلت بنا: %1</translation>
        </message>
        <message>
            <source>Since you opened this, something new came: %1</source>
            <comment>titles of findings</comment>
            <translation>منذ أن فتحت هذا وصل شيء جديد: %1</translation>
        </message>
    </context>
    <context>
        <name>CallScript</name>
        <message>
            <source>Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line.</source>
            <translation>هل تستطيعين التنفس وبلع الريق وقول جملة كاملة؟ إن لم يكن: رقم الطوارئ الآن، وابقي على الخط.</translation>
        </message>
        <message>
            <source>Is the swelling growing from hour to hour, or is the neck hard?</source>
            <translation>هل يزداد التورم ساعة بعد ساعة، أو هل الرقبة قاسية؟</translation>
        </message>
        <message>
            <source>Is somebody with you?</source>
            <translation>هل معك أحد؟</translation>
        </message>
        <message>
            <source>Do you see as before with each eye? If not: emergency number, now.</source>
            <translation>هل ترين بكل عين كما من قبل؟ إن لم يكن: رقم الطوارئ الآن.</translation>
        </message>
        <message>
            <source>Smile, close both eyes, lift your brows: is one side weaker? Since when?</source>
            <translation>ابتسمي، أغمضي العينين، ارفعي الحاجبين: هل جانب أضعف؟ منذ متى؟</translation>
        </message>
        <message>
            <source>Is one side growing? Compared with this morning: much more, a little, the same?</source>
            <translation>هل يكبر جانب؟ مقارنة بالصباح: أكثر بكثير، قليلًا، أم كما هو؟</translation>
        </message>
        <message>
            <source>Does it feel hard and tense, or soft?</source>
            <translation>هل هو قاسٍ مشدود أم طري؟</translation>
        </message>
        <message>
            <source>Do you take anything that thins the blood, or aspirin or ibuprofen?</source>
            <translation>هل تتناولين مميعًا للدم أو أسبرينًا أو إيبوبروفين؟</translation>
        </message>
        <message>
            <source>What is your temperature now? Did you have chills?</source>
            <translation>كم حرارتك الآن؟ هل أصابتك قشعريرة؟</translation>
        </message>
        <message>
            <source>Is an entry point red, warm, or is anything coming out of it?</source>
            <translation>هل نقطة دخول حمراء أو دافئة أو يخرج منها شيء؟</translation>
        </message>
        <message>
            <source>Is the red or the pain spreading?</source>
            <translation>هل ينتشر الاحمرار أو الألم؟</translation>
        </message>
        <message>
            <source>Pain from 0 to 10 now, and at its worst since yesterday?</source>
            <translation>الألم من ٠ إلى ١٠ الآن، وفي أشده منذ أمس؟</translation>
        </message>
        <message>
            <source>What have you taken against it, and did it help?</source>
            <translation>ماذا تناولتِ له، وهل أفاد؟</translation>
        </message>
        <message>
            <source>Is the skin there pale, blue, or does it feel cold?</source>
            <translation>هل الجلد هناك شاحب أو أزرق أو بارد؟</translation>
        </message>
        <message>
            <source>Can you see or feel an end of a thread? Do not pull or cut it.</source>
            <translation>هل ترين أو تحسين طرف خيط؟ لا تسحبيه ولا تقصيه.</translation>
        </message>
        <message>
            <source>Is the skin over it open, red or wet?</source>
            <translation>هل الجلد فوقه مفتوح أو أحمر أو رطب؟</translation>
        </message>
        <message>
            <source>Please send a photo from the diary, from the front and from that side.</source>
            <translation>أرسلي من فضلك صورة من اليوميات، من الأمام ومن ذلك الجانب.</translation>
        </message>
        <message>
            <source>Compared with yesterday: better, the same, worse?</source>
            <translation>مقارنة بأمس: أفضل، كما هو، أسوأ؟</translation>
        </message>
        <message>
            <source>Anything new: fever, one side worse, something coming out?</source>
            <translation>هل من جديد: حمى، جانب أسوأ، شيء يخرج؟</translation>
        </message>
        <message>
            <source>How are you? The diary has heard nothing for some days.</source>
            <translation>كيف حالك؟ لم تسمع اليوميات شيئًا منذ أيام.</translation>
        </message>
        <message>
            <source>Does the diary work, and is the phone online?</source>
            <translation>هل تعمل اليوميات، وهل الهاتف متصل؟</translation>
        </message>
        <message>
            <source>Fever, one side worse, anything coming out of an entry point?</source>
            <translation>حمى، جانب أسوأ، شيء يخرج من نقطة دخول؟</translation>
        </message>
        <message>
            <source>Last: what are you most worried about?</source>
            <translation>أخيرًا: ما أكثر ما يقلقك؟</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HandOverBoard</name>
        <message>
            <source>Hand-over</source>
            <translation>التسليم</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>clinic, person, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>A word from who leaves</source>
            <translation>كلمة ممن يغادر</translation>
        </message>
        <message>
            <source>Who waits</source>
            <translation>من ينتظر</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>درجة الاستعجال</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>المريضة</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>ماذا ولماذا</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>منذ</translation>
        </message>
        <message>
            <source>Who is on it</source>
            <translation>من يتولاها</translation>
        </message>
        <message>
            <source>What was done in the last day</source>
            <translation>ما تم في اليوم الأخير</translation>
        </message>
        <message>
            <source>nobody</source>
            <translation>لا أحد</translation>
        </message>
        <message>
            <source>Nobody waits for an answer.</source>
            <translation>لا أحد ينتظر جوابًا.</translation>
        </message>
        <message>
            <source>Nothing was noted.</source>
            <translation>لم يُدوَّن شيء.</translation>
        </message>
        <message>
            <source>%1 (%2, %3)</source>
            <comment>note, person, when</comment>
            <translation>%1 (%2، %3)</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>قل من على المكتب.</translation>
        </message>
        <message>
            <source>Too long: shorten it.</source>
            <translation>طويلة جدًّا: اختصرها.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>حُفظ باسم %1. الملف غير مشفّر: احفظه كما تحفظ سجلات المريضات.</translation>
        </message>
        <message>
            <source>Save the hand-over</source>
            <translation>حفظ التسليم</translation>
        </message>
        <message>
            <source>Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.</source>
            <translation>نُسخ كنص. من يستعمل هذا الحاسوب يستطيع لصقه: الصقه سريعًا ثم انسخ شيئًا آخر.</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>اتصل أيضًا بسبب: %1</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>سحبه %1</translation>
        </message>
    </context>
    <context>
        <name>HandOverPage</name>
        <message>
            <source>Hand-over</source>
            <translation>التسليم</translation>
        </message>
        <message>
            <source>Made from the queue of this moment.</source>
            <translation>من قائمة هذه اللحظة.</translation>
        </message>
        <message>
            <source>Copy as text</source>
            <translation>نسخ كنص</translation>
        </message>
        <message>
            <source>Take it down</source>
            <translation>إزالتها</translation>
        </message>
        <message>
            <source>A word for whoever takes over; it stays pinned over the queue until somebody takes it down</source>
            <translation>كلمة لمن يتسلّم؛ تبقى فوق القائمة حتى يزيلها أحد</translation>
        </message>
        <message>
            <source>Pin it</source>
            <translation>تثبيتها</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>طباعة</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>حفظ</translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message>
            <source>You have not looked at this course before.</source>
            <translation>لم تنظر في هذا المسار من قبل.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln تسجيل</numerusform>
                <numerusform>تسجيل واحد</numerusform>
                <numerusform>تسجيلان</numerusform>
                <numerusform>%Ln تسجيلات</numerusform>
                <numerusform>%Ln تسجيلًا</numerusform>
                <numerusform>%Ln تسجيل</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln ملاحظة</numerusform>
                <numerusform>ملاحظة واحدة</numerusform>
                <numerusform>ملاحظتان</numerusform>
                <numerusform>%Ln ملاحظات</numerusform>
                <numerusform>%Ln ملاحظة</numerusform>
                <numerusform>%Ln ملاحظة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln رسالة</numerusform>
                <numerusform>رسالة واحدة</numerusform>
                <numerusform>رسالتان</numerusform>
                <numerusform>%Ln رسائل</numerusform>
                <numerusform>%Ln رسالة</numerusform>
                <numerusform>%Ln رسالة</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing new since you last looked, %1.</source>
            <translation>لا جديد منذ آخر نظرة لك، %1.</translation>
        </message>
        <message>
            <source>New since you last looked, %1: %2.</source>
            <comment>when, list</comment>
            <translation>الجديد منذ آخر نظرة لك، %1: %2.</translation>
        </message>
        <message>
            <source>%1 %2 to %3</source>
            <comment>stream, low, high</comment>
            <translation>%1 من %2 إلى %3</translation>
        </message>
        <message>
            <source>Too few entries for a forecast to the follow-up.</source>
            <translation>تسجيلات أقل من أن تكفي لتوقّع حتى المتابعة.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1: every score 1 or below.</source>
            <translation>المتوقع عند المتابعة، اليوم %1: كل درجة ١ أو أقل.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.</source>
            <comment>day, list</comment>
            <translation>المتوقع عند المتابعة، اليوم %1، في ٨ من ١٠ مسارات كهذه: %2؛ وما عداها ١ أو أقل.</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>المسار</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>patient, clinic, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>Treated %1, %2 now</source>
            <translation>تاريخ العلاج %1، والآن %2</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>الملاحظات</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>درجة الاستعجال</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>ماذا ولماذا</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>ظهرت</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>ما تم</translation>
        </message>
        <message>
            <source>Entries</source>
            <translation>التسجيلات</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>اليوم</translation>
        </message>
        <message>
            <source>Scores</source>
            <translation>الدرجات</translation>
        </message>
        <message>
            <source>Signs and words</source>
            <translation>العلامات والكلمات</translation>
        </message>
        <message>
            <source>Marks</source>
            <translation>الإشارات</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>الرسائل</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>لا شيء.</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>مكالمات مدوّنة في المسار</translation>
        </message>
    </context>
    <context>
        <name>PlanBeside</name>
        <message>
            <source>The plan</source>
            <translation>الخطة</translation>
        </message>
        <message>
            <source>Make this the plan</source>
            <translation>اجعل هذا هو الخطة</translation>
        </message>
        <message>
            <source>Keep this as the plan</source>
            <translation>احتفظ بهذا كخطة</translation>
        </message>
        <message>
            <source>It stays as it is while you change what is done.</source>
            <translation>تبقى كما هي بينما تغيّر ما يُنفّذ.</translation>
        </message>
        <message>
            <source>Drop the plan</source>
            <translation>إسقاط الخطة</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DesksBoard</name>
        <message>
            <source>This desk, %1</source>
            <translation>هذا المكتب، %1</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>المكتب %1</translation>
        </message>
        <message>
            <source>Holds the clinic's root key: may add and shut out desks, and link phones</source>
            <translation>يحمل المفتاح الأصل للعيادة: يضيف مكاتب ويقصيها ويربط الهواتف</translation>
        </message>
        <message>
            <source>Reads and writes; links no phones and adds no desks</source>
            <translation>يقرأ ويكتب؛ ولا يربط هواتف ولا يضيف مكاتب</translation>
        </message>
        <message>
            <source>Nothing from it has arrived here yet</source>
            <translation>لم يصل منه شيء إلى هنا بعد</translation>
        </message>
        <message>
            <source>Last wrote: %1</source>
            <translation>آخر كتابة: %1</translation>
        </message>
        <message>
            <source>Shut out desk %1?</source>
            <translation>إقصاء المكتب %1؟</translation>
        </message>
        <message>
            <source>Begin a fresh key?</source>
            <translation>بدء مفتاح جديد؟</translation>
        </message>
        <message>
            <source>For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its passphrase. This cannot be undone: a desk that is found again must be set up anew.</source>
            <translation>لمكتب فُقد أو سُرق أو أُعطي لغيركم. منذ المرة التالية التي تسأل فيها الهواتف والمكاتب المحور لا يقبل أحد منه شيئًا، ولا يستطيع قراءة ما يُكتب بعدها. ما عليه يبقى عليه خلف عبارة مروره. لا رجعة في ذلك: المكتب الذي يُعثر عليه يُعَدّ من جديد.</translation>
        </message>
        <message>
            <source>Shut it out</source>
            <translation>إقصاؤه</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>بدء مفتاح جديد</translation>
        </message>
        <message>
            <source>A fresh key holds from the next time each phone asks the hub.</source>
            <translation>يسري المفتاح الجديد منذ المرة التالية التي يسأل فيها كل هاتف المحور.</translation>
        </message>
        <message>
            <source>Phone %1</source>
            <translation>الهاتف %1</translation>
        </message>
        <message>
            <source>%1: the hub refuses it, said %2</source>
            <translation>%1: المحور يرفضه، وأكد ذلك %2</translation>
        </message>
        <message>
            <source>%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2</source>
            <translation>%1: استُبدل؛ يُبلَّغ المحور حين يقول ما بقي عليه، وعلى الأكثر %2</translation>
        </message>
        <message>
            <source>%1: the hub has not been told yet, and may still let it in. It is told at every sync.</source>
            <translation>%1: لم يُبلَّغ المحور بعد وقد يظل يسمح له. يُبلَّغ عند كل مزامنة.</translation>
        </message>
        <message>
            <source>Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it can refuse the desk by this number: %1. If it held the clinic&apos;s root key, whoever opens it can still sign as the clinic: then set up a new clinic.</source>
            <translation>أُقصي. يُبلَّغ المحور في المزامنة التالية، ويظهر أدناه متى قبل ذلك. فإن لم يفعل، يستطيع من يديره رفض المكتب بهذا الرقم: %1. وإن كان يحمل المفتاح الجذر للعيادة فمن يفتحه يستطيع التوقيع باسمها: عندئذ أنشئ عيادة جديدة.</translation>
        </message>
        <message>
            <source>Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.</source>
            <translation>منذ المرة التالية التي تسأل فيها الهواتف المحور تختم ما تكتبه بمفتاح جديد. وما كُتب قبل ذلك يبقى مقروءًا هنا. يبدأ مفتاح من تلقاء نفسه كل ثلاثين يومًا، ويحسن بدء آخر إذا رأى أحد عبارة مرور.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ApplyBoard</name>
        <message>
            <source>This desk has a clinic of its own already. Only a new, empty one can join.</source>
            <translation>لهذا المكتب عيادة خاصة به. لا ينضم إلا مكتب جديد فارغ.</translation>
        </message>
        <message>
            <source>Type the hub's address as well: it stands under the code.</source>
            <translation>اكتب عنوان المحور أيضًا: تجده تحت الرمز.</translation>
        </message>
        <message>
            <source>That is not such a code: compare it letter by letter with the other screen.</source>
            <translation>هذا ليس رمزًا صحيحًا: قارنه حرفًا حرفًا بالشاشة الأخرى.</translation>
        </message>
        <message>
            <source>This computer has no way to a hub.</source>
            <translation>لا طريق لهذا الحاسوب إلى محور.</translation>
        </message>
        <message>
            <source>Somebody else has used this code. Ask for a new one, out of other people's sight.</source>
            <translation>استعمل غيرك هذا الرمز. اطلب رمزًا جديدًا بعيدًا عن أعين الآخرين.</translation>
        </message>
        <message>
            <source>Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.</source>
            <translation>من أجاب ليس مركز العيادة. لم يُضمّ شيء. قارن العنوان وأخبر العيادة.</translation>
        </message>
        <message>
            <source>The hub does not answer. It is asked again by itself.</source>
            <translation>المحور لا يجيب. يُسأل ثانية تلقائيًا.</translation>
        </message>
        <message>
            <source>This desk belongs to the clinic</source>
            <translation>هذا المكتب من العيادة</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>قارن الأرقام</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>الانضمام إلى مكاتب العيادة</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>جارٍ سؤال المحور</translation>
        </message>
        <message>
            <source>The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.</source>
            <translation>مفاتيح العيادة هنا، وبدأ يصل ما كتبه المرضى والزملاء. قل من على هذا المكتب.</translation>
        </message>
        <message>
            <source>The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, have asked the hub.</source>
            <translation>مفاتيح العيادة هنا. يصل ما كتبه المرضى والزملاء بعد أن يسأل المكتب الآخر المحور ثم هذا المكتب.</translation>
        </message>
        <message>
            <source>Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.</source>
            <translation>اقرأ هذه الأرقام الستة بصوت مسموع. لا يؤكد أحد هناك إلا إذا أظهر المكتب الآخر الأرقام نفسها.</translation>
        </message>
        <message>
            <source>At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.</source>
            <translation>على مكتب يحمل المفتاح الأصل للعيادة افتح العيادة ثم المكاتب وأضف مكتبًا. يُظهر رمزًا وعنوان المحور.</translation>
        </message>
        <message>
            <source>Leave both programs open.</source>
            <translation>اترك البرنامجين مفتوحين.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message>
            <source>There is a recovery code. It is not stored here, only on your paper.</source>
            <translation>يوجد رمز استعادة. وهو غير محفوظ هنا، بل على ورقتك فقط.</translation>
        </message>
        <message>
            <source>There is no recovery code yet: whoever loses the passphrase loses this vault.</source>
            <translation>لا رمز استعادة بعد: من يفقد عبارة المرور يفقد هذه الخزنة.</translation>
        </message>
        <message>
            <source>The passphrase is being changed.</source>
            <translation>تُغيَّر عبارة المرور.</translation>
        </message>
        <message>
            <source>The two new ones are not the same.</source>
            <translation>العبارتان الجديدتان غير متطابقتين.</translation>
        </message>
        <message>
            <source>From now on only the new passphrase opens this desk.</source>
            <translation>من الآن لا تفتح هذا المكتب إلا عبارة المرور الجديدة.</translation>
        </message>
        <message>
            <source>A recovery code is being made.</source>
            <translation>يُنشأ رمز استعادة.</translation>
        </message>
        <message>
            <source>From the paper: group %L1 of %L2</source>
            <translation>من الورقة: المجموعة %L1 من %L2</translation>
        </message>
        <message>
            <source>That is not this group. Look at the paper again. If it is not there, show the code once more.</source>
            <translation>ليست هذه هي المجموعة. انظر إلى الورقة مرة أخرى. إن لم تكن مكتوبة عليها، فاعرض الرمز مرة أخرى.</translation>
        </message>
        <message>
            <source>Keep the paper where only the clinic finds it, not beside this computer.</source>
            <translation>احفظ الورقة حيث لا يجدها إلا من في العيادة، لا بجانب هذا الحاسوب.</translation>
        </message>
        <message>
            <source>Where to put the backup</source>
            <translation>أين توضع النسخة الاحتياطية</translation>
        </message>
        <message>
            <source>The backup is being made, opened and compared. This may take a minute.</source>
            <translation>تُنشأ النسخة الاحتياطية وتُفتح وتُقارن. قد يستغرق ذلك دقيقة.</translation>
        </message>
        <message>
            <source>A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: today's passphrase opens it, also after a change.</source>
            <translation>النسخة الاحتياطية في %1 (%2). فُتحت ثانية وقورنت: كل شيء فيها. وتبقى مشفرة: تفتحها عبارة مرور اليوم حتى بعد تغييرها.</translation>
        </message>
        <message>
            <source>There is a file of that name. A backup is never written over another: choose a new name.</source>
            <translation>يوجد ملف بهذا الاسم. لا تُكتب نسخة احتياطية فوق أخرى: اختر اسمًا جديدًا.</translation>
        </message>
        <message>
            <source>Everything is being read and compared.</source>
            <translation>يُقرأ كل شيء ويُقارن.</translation>
        </message>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>العبارة الجديدة أقصر من اللازم: %Ln حرف على الأقل.</numerusform>
                <numerusform>العبارة الجديدة أقصر من اللازم: حرف واحد على الأقل.</numerusform>
                <numerusform>العبارة الجديدة أقصر من اللازم: حرفان على الأقل.</numerusform>
                <numerusform>العبارة الجديدة أقصر من اللازم: %Ln أحرف على الأقل.</numerusform>
                <numerusform>العبارة الجديدة أقصر من اللازم: %Ln حرفًا على الأقل.</numerusform>
                <numerusform>العبارة الجديدة أقصر من اللازم: %Ln حرف على الأقل.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>سليمة: %Ln تدوين، كل في مكانه، وما يُعرض ناتج عنه.</numerusform>
                <numerusform>سليمة: تدوين واحد في مكانه، وما يُعرض ناتج عنه.</numerusform>
                <numerusform>سليمة: تدوينان كل في مكانه، وما يُعرض ناتج عنهما.</numerusform>
                <numerusform>سليمة: %Ln تدوينات كل في مكانه، وما يُعرض ناتج عنها.</numerusform>
                <numerusform>سليمة: %Ln تدوينًا كل في مكانه، وما يُعرض ناتج عنها.</numerusform>
                <numerusform>سليمة: %Ln تدوين كل في مكانه، وما يُعرض ناتج عنها.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>وُجد %Ln خطأ. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. الأول: %1</numerusform>
                <numerusform>وُجد خطأ واحد. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. وهو: %1</numerusform>
                <numerusform>وُجد خطآن. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. الأول: %1</numerusform>
                <numerusform>وُجدت %Ln أخطاء. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. الأول: %1</numerusform>
                <numerusform>وُجد %Ln خطأً. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. الأول: %1</numerusform>
                <numerusform>وُجد %Ln خطأ. لا تُدخل شيئًا هنا، واترك الحاسوب كما هو، واستعد آخر نسخة احتياطية. الأول: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Last backup of this desk: %1.</source>
            <translation>آخر نسخة احتياطية لهذا المكتب: %1.</translation>
        </message>
        <message>
            <source>No backup of this desk was made yet.</source>
            <translation>لم تُنشأ بعد نسخة احتياطية لهذا المكتب.</translation>
        </message>
        <message>
            <source>No backup of this desk since %1.</source>
            <translation>لا نسخة احتياطية لهذا المكتب منذ %1.</translation>
        </message>
        <message>
            <source>If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.</source>
            <translation>إذا تعطّل هذا الحاسوب فقد يضيع ما كُتب هنا. أنشئ نسخة احتياطية واحفظها في مكان آخر.</translation>
        </message>
        <message>
            <source>If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.</source>
            <translation>إذا تعطّل هذا الحاسوب فقد يضيع ما كُتب هنا منذ ذلك الحين. أنشئ نسخة احتياطية واحفظها في مكان آخر.</translation>
        </message>
    </context>
    <context>
        <name>DesksPage</name>
        <message>
            <source>Desks</source>
            <translation>المكاتب</translation>
        </message>
        <message>
            <source>Computers that share this clinic. Each has its own passphrase.</source>
            <translation>حواسيب تتشارك هذه العيادة. لكل منها عبارة مرور خاصة.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>عودة إلى العيادة</translation>
        </message>
        <message>
            <source>Number by which the hub knows it</source>
            <translation>الرقم الذي يعرفه به المحور</translation>
        </message>
        <message>
            <source>Shut out: lost or given away</source>
            <translation>إقصاء: فُقد أو أُعطي</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can add or shut out desks.</source>
            <translation>لا يضيف المكاتب ولا يقصيها إلا مكتب يحمل المفتاح الأصل للعيادة.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>إضافة مكتب</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>بدء مفتاح جديد</translation>
        </message>
    </context>
    <context>
        <name>ApplyPage</name>
        <message>
            <source>The code on the other screen</source>
            <translation>الرمز على الشاشة الأخرى</translation>
        </message>
        <message>
            <source>The hub's address under it</source>
            <translation>عنوان المحور تحته</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>ستة أرقام: %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>انضمام</translation>
        </message>
        <message>
            <source>Say who is here</source>
            <translation>قل من هنا</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>اسأل المحور الآن</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>عودة إلى العيادة</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>إيقاف</translation>
        </message>
    </context>
    <context>
        <name>KeepPage</name>
        <message>
            <source>Backup and keys</source>
            <translation>النسخ الاحتياطي والمفاتيح</translation>
        </message>
        <message>
            <source>A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.</source>
            <translation>قد يُسرق الحاسوب أو يتعطل أو يحترق. وما ليس في نسخة احتياطية في مكان آخر يضيع عندئذ.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>عودة إلى العيادة</translation>
        </message>
        <message>
            <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
            <translation>اكتبه على ورق. لا يظهر إلا الآن. وأي رمز سابق لم يعد صالحًا.</translation>
        </message>
        <message>
            <source>It is written down</source>
            <translation>كُتب</translation>
        </message>
        <message>
            <source>Passphrase of this desk, for each of these</source>
            <translation>عبارة مرور هذا المكتب، لكل ما هنا</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>نسخة احتياطية</translation>
        </message>
        <message>
            <source>One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.</source>
            <translation>ملف مشفر واحد. ضعه على وسيط آخر في مكان آخر مرة في الأسبوع على الأقل، وجرّبه مرتين في السنة.</translation>
        </message>
        <message>
            <source>Make a backup</source>
            <translation>إنشاء نسخة احتياطية</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>فحص</translation>
        </message>
        <message>
            <source>Reads everything, and whether each thing is where it was written.</source>
            <translation>يقرأ كل شيء، وهل كل شيء حيث كُتب.</translation>
        </message>
        <message>
            <source>Check this vault</source>
            <translation>افحص هذه الخزنة</translation>
        </message>
        <message>
            <source>Recovery code</source>
            <translation>رمز الاستعادة</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>إنشاء رمز جديد</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>عبارة مرور جديدة</translation>
        </message>
        <message>
            <source>Change the passphrase</source>
            <translation>تغيير عبارة المرور</translation>
        </message>
        <message>
            <source>The new one</source>
            <translation>الجديدة</translation>
        </message>
        <message>
            <source>The new one once more</source>
            <translation>الجديدة مرة أخرى</translation>
        </message>
    </context>
    <context>
        <name>NoticesPage</name>
        <message>
            <source>About Ebbline</source>
            <translation>حول Ebbline</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>الإصدار %1</translation>
        </message>
        <message>
            <source>Back to the settings</source>
            <translation>العودة إلى الإعدادات</translation>
        </message>
        <message>
            <source>Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.</source>
            <translation>Ebbline برنامج حر برخصة GPL 3. ليس جهازًا طبيًا معتمدًا، ولا يغني عن الفحص ولا عن خدمة الطوارئ.</translation>
        </message>
        <message>
            <source>The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.</source>
            <translation>هذا البرنامج مبني على عمل آخرين. هنا ما يستخدمه ومن صنعه. نصوص التراخيص باللغة الإنجليزية.</translation>
        </message>
        <message>
            <source>The parts</source>
            <translation>الأجزاء</translation>
        </message>
        <message>
            <source>The licences</source>
            <translation>التراخيص</translation>
        </message>
        <message>
            <source>Shows the text</source>
            <translation>يعرض النص</translation>
        </message>
    </context>
    <context>
        <name>LicencePage</name>
        <message>
            <source>Back to all parts</source>
            <translation>العودة إلى كل الأجزاء</translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message>
            <source>Patient registered</source>
            <translation>سُجِّلت المريضة</translation>
        </message>
        <message>
            <source>Treatment recorded</source>
            <translation>سُجِّل العلاج</translation>
        </message>
        <message>
            <source>Care plan sent to the phone</source>
            <translation>أُرسلت خطة العناية إلى الهاتف</translation>
        </message>
        <message>
            <source>Finding: %1</source>
            <translation>ملاحظة: %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>لم يُفتح أي إدخال</numerusform>
                <numerusform>فُتح إدخال واحد</numerusform>
                <numerusform>فُتح إدخالان</numerusform>
                <numerusform>فُتحت %Ln إدخالات</numerusform>
                <numerusform>فُتح %Ln إدخالًا</numerusform>
                <numerusform>فُتح %Ln إدخال</numerusform>
            </translation>
        </message>
        <message>
            <source>Message written</source>
            <translation>كُتبت رسالة</translation>
        </message>
        <message>
            <source>Message read</source>
            <translation>قُرئت رسالة</translation>
        </message>
        <message>
            <source>Follow-up recorded</source>
            <translation>سُجِّلت المراجعة</translation>
        </message>
        <message>
            <source>Protocol signed</source>
            <translation>وُقِّع البروتوكول</translation>
        </message>
        <message>
            <source>Clinic's particulars changed</source>
            <translation>عُدِّلت بيانات العيادة</translation>
        </message>
        <message>
            <source>Limit of lidocaine set</source>
            <translation>ضُبط حد الليدوكائين</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>رُبط الهاتف</translation>
        </message>
        <message>
            <source>Usual range learned</source>
            <translation>تُعُلِّم المدى المعتاد</translation>
        </message>
        <message>
            <source>Usual range put into use</source>
            <translation>بدأ استخدام المدى المعتاد</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>المكتب %1</translation>
        </message>
        <message>
            <source>Eyes marked in a photograph</source>
            <translation>عُلِّمت العينان في صورة</translation>
        </message>
        <message>
            <source>Desk added</source>
            <translation>أُضيف مكتب</translation>
        </message>
        <message>
            <source>Desk shut out</source>
            <translation>أُقصي مكتب</translation>
        </message>
        <message>
            <source>Lost phone ended</source>
            <translation>أُنهي هاتف مفقود</translation>
        </message>
        <message>
            <source>Phone replaced</source>
            <translation>استُبدل الهاتف</translation>
        </message>
        <message>
            <source>Fresh key begun</source>
            <translation>بدأ مفتاح جديد</translation>
        </message>
        <message>
            <source>Numbers to call changed</source>
            <translation>تغيرت أرقام الاتصال</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1، مع %2</translation>
        </message>
        <message>
            <source>Newer program asked for</source>
            <translation>طُلب برنامج أحدث</translation>
        </message>
        <message>
            <source>Finding: taken back what was noted</source>
            <translation>ملاحظة: سُحب ما دُوِّن</translation>
        </message>
        <message>
            <source>Word to who takes over</source>
            <translation>كلمة لمن يتسلّم</translation>
        </message>
        <message>
            <source>Backup made</source>
            <translation>أُنشئت نسخة احتياطية</translation>
        </message>
        <message>
            <source>Passphrase of this desk changed</source>
            <translation>غُيّرت عبارة المرور لهذا المكتب</translation>
        </message>
        <message>
            <source>Recovery code made</source>
            <translation>أُنشئ رمز الاستعادة</translation>
        </message>
        <message>
            <source>Usual range taken from a file</source>
            <translation>أُخذ المجال المعتاد من ملف</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment put in</source>
            <translation>أُضيفت صورة من بعد العلاج مباشرة</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment taken back</source>
            <translation>سُحبت صورة من بعد العلاج مباشرة</translation>
        </message>
        <message>
            <source>Role of %1: %2</source>
            <comment>person, role</comment>
            <translation>دور %1: %2</translation>
        </message>
        <message>
            <source>Patient&apos;s name, number or language corrected</source>
            <translation>صُحِّح اسم المريضة أو رقمها أو لغتها</translation>
        </message>
        <message>
            <source>Call noted on the course</source>
            <translation>دُوّنت مكالمة في المسار</translation>
        </message>
        <message>
            <source>Treatment corrected</source>
            <translation>صُحِّح العلاج</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>لا أسطر</numerusform>
                <numerusform>سطر واحد</numerusform>
                <numerusform>سطران</numerusform>
                <numerusform>%Ln أسطر</numerusform>
                <numerusform>%Ln سطرًا</numerusform>
                <numerusform>%Ln سطر</numerusform>
            </translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>حُفظ باسم %1. الملف غير مشفّر: احفظوه كما تحفظون ملفات المريضات.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>لا يمكن كتابة الملف هناك. اختر مجلدًا آخر.</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>حفظ القائمة</translation>
        </message>
        <message>
            <source>%1; the newest %2 are shown</source>
            <translation>%1؛ يُعرض أحدث %2</translation>
        </message>
    </context>
    <context>
        <name>TracesPage</name>
        <message>
            <source>Who did what</source>
            <translation>من فعل ماذا</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>حفظ القائمة</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>العودة إلى العيادة</translation>
        </message>
        <message>
            <source>Search: a name, an act, a day</source>
            <translation>بحث: اسم أو فعل أو يوم</translation>
        </message>
        <message>
            <source>No line says that.</source>
            <translation>لا يوجد سطر يذكر ذلك.</translation>
        </message>
        <message>
            <source>Nothing has been done here yet.</source>
            <translation>لم يُفعل شيء هنا بعد.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>متى</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>من</translation>
        </message>
        <message>
            <source>What</source>
            <translation>ماذا</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>المريضة</translation>
        </message>
        <message>
            <source>What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.</source>
            <translation>ما يُكتب على مكتب يترك سطرًا: المريضات والعلاجات والملاحظات والرسائل والبروتوكولات، وما جرى للمفاتيح والنسخ الاحتياطية والمكاتب والهواتف. وفتح الإدخالات كذلك، أما مجرد النظر إلى مسار فلا، ولا نسخة احتياطية أو عبارة مرور أو رمز استعادة اكتمل بعد قفل المكتب إن أُغلق البرنامج قبل فتحه من جديد. وحيث لم يُسجَّل اسم يُذكر المكتب.</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>عرض أسطر أقدم</translation>
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
            <translation>لا توجد هنا صورة لهذا المنظر.</translation>
        </message>
        <message>
            <source>There is only one photograph of this view.</source>
            <translation>توجد صورة واحدة فقط لهذا المنظر.</translation>
        </message>
        <message>
            <source>Earlier: %1, %2</source>
            <comment>day, time</comment>
            <translation>الأقدم: %1، %2</translation>
        </message>
        <message>
            <source>Later: %1, %2</source>
            <comment>day, time</comment>
            <translation>الأحدث: %1، %2</translation>
        </message>
        <message>
            <source>Eyes marked %1</source>
            <translation>حُدّدت العينان %1</translation>
        </message>
        <message>
            <source>Eyes marked by %1, %2</source>
            <comment>person, time</comment>
            <translation>حدّد العينين %1، %2</translation>
        </message>
        <message>
            <source>%1. %2. %3</source>
            <comment>which one and when, view, where the sides are</comment>
            <translation>%1. %2. %3</translation>
        </message>
        <message>
            <source>Being opened</source>
            <translation>قيد الفتح</translation>
        </message>
        <message>
            <source>Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.</source>
            <translation>محاذاة على العينين: الصورة الأحدث مُدارة ومُعدّلة الحجم ومُزاحة، دون تمديد ودون عكس.</translation>
        </message>
        <message>
            <source>While you mark, both are shown as they were taken.</source>
            <translation>أثناء التحديد تُعرض الصورتان كما التُقطتا.</translation>
        </message>
        <message>
            <source>Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.</source>
            <translation>معروضتان كما التُقطتا، وربما ليستا بمقياس واحد. حدّد العينين في كلتيهما لمحاذاتهما.</translation>
        </message>
        <message>
            <source>The two marks are too close together to turn a picture by. Mark the middle of each pupil.</source>
            <translation>العلامتان متقاربتان جدًا ولا تكفيان لإدارة الصورة. حدّد منتصف كل حدقة.</translation>
        </message>
        <message>
            <source>Both eyes are marked. Keep them, or mark again: the nearer mark moves.</source>
            <translation>حُدّدت العينان. احفظ العلامتين أو حدّد من جديد: تتحرك العلامة الأقرب.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient's right pupil: the one on the left of the picture.</source>
            <translation>حدّد منتصف حدقة المريض اليمنى: التي على يسار الصورة.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient's right pupil.</source>
            <translation>حدّد منتصف حدقة المريض اليمنى.</translation>
        </message>
        <message>
            <source>Now the patient's left pupil: the one on the right of the picture.</source>
            <translation>والآن حدقة المريض اليسرى: التي على يمين الصورة.</translation>
        </message>
        <message>
            <source>Now the patient's left pupil.</source>
            <translation>والآن حدقة المريض اليسرى.</translation>
        </message>
        <message>
            <source>The patient's left eye is marked to the left of the right one. If the picture is upright, the two are swapped.</source>
            <translation>عين المريض اليسرى محدّدة إلى يسار اليمنى. إن كانت الصورة قائمة فالعلامتان مبدّلتان.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1، %2</translation>
        </message>
        <message>
            <source>%1 Cursor %2% across, %3% down. Space marks.</source>
            <comment>what to mark, shares of the picture</comment>
            <translation>%1 المؤشر %2٪ من اليسار، %3٪ من الأعلى. مفتاح المسافة يحدّد.</translation>
        </message>
        <message>
            <source>Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.</source>
            <comment>view</comment>
            <translation>هل تُسحب هذه الصورة: %1، بعد العلاج مباشرة؟ تحذفها كل مكاتب العيادة، ولا تعود.</translation>
        </message>
    </context>
    <context>
        <name>PhotoHalf</name>
        <message>
            <source>The one before</source>
            <translation>السابقة</translation>
        </message>
        <message>
            <source>The one after</source>
            <translation>التالية</translation>
        </message>
        <message>
            <source>Mark the eyes anew</source>
            <translation>إعادة التحديد</translation>
        </message>
        <message>
            <source>Mark the eyes</source>
            <translation>تحديد العينين</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>اسحبها</translation>
        </message>
    </context>
    <context>
        <name>PhotoMarking</name>
        <message>
            <source>Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.</source>
            <translation>انقر أو المس، أو حرّك المؤشر بالأسهم (مع Shift بخطوات صغيرة) واضغط مفتاح المسافة. المربع: العين اليمنى. الدائرة: العين اليسرى.</translation>
        </message>
        <message>
            <source>Keep the marks</source>
            <translation>حفظ العلامتين</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>تراجع</translation>
        </message>
        <message>
            <source>Leave without keeping</source>
            <translation>خروج دون حفظ</translation>
        </message>
    </context>
    <context>
        <name>PhotoPanel</name>
        <message>
            <source>Photographs</source>
            <translation>الصور</translation>
        </message>
        <message>
            <source>The patient's photographs show up here once the phone has sent them. Taking them is the patient's choice.</source>
            <translation>تظهر هنا صور المريض بعد أن يرسلها الهاتف. والتقاطها اختيار المريض.</translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <translation>الصور: %1</translation>
        </message>
        <message>
            <source>Side by side</source>
            <translation>جنبًا إلى جنب</translation>
        </message>
        <message>
            <source>Two photographs of one view beside each other</source>
            <translation>صورتان لمنظر واحد متجاورتان</translation>
        </message>
        <message>
            <source>Add the clinic's photographs</source>
            <translation>أضف صور العيادة</translation>
        </message>
        <message>
            <source>From right after the treatment, with the clinic's own camera</source>
            <translation>من بعد العلاج مباشرة، بكاميرا العيادة نفسها</translation>
        </message>
    </context>
    <context>
        <name>Photos</name>
        <message>
            <source>%1, %2, %3</source>
            <comment>day, view, time</comment>
            <translation>%1، %2، %3</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>كما عند مواجهة المريض: يمين المريض على اليسار.</translation>
        </message>
        <message>
            <source>The patient's left side is towards the camera.</source>
            <translation>يسار المريض نحو الكاميرا.</translation>
        </message>
        <message>
            <source>The patient's right side is towards the camera.</source>
            <translation>يمين المريض نحو الكاميرا.</translation>
        </message>
        <message>
            <source>Beside an entry that has not arrived yet</source>
            <translation>بجانب مُدخل لم يصل بعد</translation>
        </message>
        <message>
            <source>Beside the entry of %1</source>
            <translation>بجانب مُدخل %1</translation>
        </message>
        <message>
            <source>Could not be opened</source>
            <translation>تعذّر فتحها</translation>
        </message>
        <message>
            <source>Still arriving: %1 of %2 parts</source>
            <translation>ما زالت تصل: %1 من %2 أجزاء</translation>
        </message>
        <message>
            <source>Taken back by the patient, %1</source>
            <translation>سحبها المريض، %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln photograph(s)</source>
            <translation>
                <numerusform>لا صور</numerusform>
                <numerusform>صورة واحدة</numerusform>
                <numerusform>صورتان</numerusform>
                <numerusform>%Ln صور</numerusform>
                <numerusform>%Ln صورة</numerusform>
                <numerusform>%Ln صورة</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln still arriving</source>
            <translation>
                <numerusform>لا شيء في الطريق</numerusform>
                <numerusform>واحدة ما زالت تصل</numerusform>
                <numerusform>اثنتان ما زالتا تصلان</numerusform>
                <numerusform>%Ln ما زالت تصل</numerusform>
                <numerusform>%Ln ما زالت تصل</numerusform>
                <numerusform>%Ln ما زالت تصل</numerusform>
            </translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <comment>views</comment>
            <translation>الصور: %1</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>بعد العلاج مباشرة</translation>
        </message>
        <message>
            <source>Put in by %1</source>
            <comment>person</comment>
            <translation>أضافها %1</translation>
        </message>
        <message>
            <source>Taken back by %1, %2</source>
            <comment>person, time</comment>
            <translation>سحبها %1، %2</translation>
        </message>
    </context>
    <context>
        <name>PhotosPage</name>
        <message>
            <source>Photographs side by side</source>
            <translation>صور جنبًا إلى جنب</translation>
        </message>
        <message>
            <source>Back to the course</source>
            <translation>العودة إلى المسار</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>أقرب</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>أبعد</translation>
        </message>
        <message>
            <source>Whole picture</source>
            <translation>الصورة كاملة</translation>
        </message>
        <message>
            <source>Zoom of both: %1</source>
            <translation>تكبير الاثنتين: %1</translation>
        </message>
        <message>
            <source>Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.</source>
            <translation>يختلف الضوء والمسافة وتعبير الوجه من صورة إلى أخرى. ما يبدو تغيّرًا قد يكون من ذلك: قارن بحذر، وانظر إلى المريض قبل أن تقرر.</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>warned</source>
            <translation>تحذير</translation>
        </message>
        <message>
            <source>dressings off</source>
            <translation>نزع الضمادات</translation>
        </message>
        <message>
            <source>called</source>
            <translation>اتصال</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>لم يُردّ</translation>
        </message>
        <message>
            <source>visit forward</source>
            <translation>تقديم الموعد</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>أُغلق</translation>
        </message>
        <message>
            <source>follow-up</source>
            <translation>مراجعة</translation>
        </message>
        <message>
            <source>photos</source>
            <translation>صور</translation>
        </message>
        <message>
            <source>reopened</source>
            <translation>أعيد فتحه</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>اطُّلع عليه</translation>
        </message>
        <message>
            <source>taken on</source>
            <translation>تولاه أحد</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>فُتح</translation>
        </message>
        <message>
            <source>entry without scores</source>
            <translation>تدوين بلا درجات</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>day, what happened</comment>
            <translation>%1: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln تذكير منجز</numerusform>
                <numerusform>تذكير واحد منجز</numerusform>
                <numerusform>تذكيران منجزان</numerusform>
                <numerusform>%Ln تذكيرات منجزة</numerusform>
                <numerusform>%Ln تذكيرًا منجزًا</numerusform>
                <numerusform>%Ln تذكير منجز</numerusform>
            </translation>
        </message>
        <message>
            <source>she rang</source>
            <translation>اتصلت هي</translation>
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
    <context>
        <name>IdleNotice</name>
        <message>
            <source>Stay open</source>
            <translation>أبقه مفتوحًا</translation>
        </message>
    </context>
    <context>
        <name>IdlePanel</name>
        <message>
            <source>Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.</source>
            <translation>لم يستخدم أحد المكتب منذ مدة. سيُقفل بعد نصف دقيقة. ما بدأته محفوظ.</translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message>
            <source>The phone holds more from this desk than the desk does: the desk runs on older data.</source>
            <translation>عند الهاتف من هذا المكتب أكثر مما عند المكتب نفسه: المكتب يعمل على بيانات أقدم.</translation>
        </message>
        <message>
            <source>The phone sent two different histories: call, and do not rely on its entries.</source>
            <translation>أرسل الهاتف سجلين مختلفين: اتصل ولا تعتمد على إدخالاته.</translation>
        </message>
        <message>
            <source>A message of the phone is missing: the hub holds it back or lost it.</source>
            <translation>رسالة من الهاتف مفقودة: المحور يحتجزها أو أضاعها.</translation>
        </message>
        <message>
            <source>Phone not heard of since %1: what was written there may not be here.</source>
            <translation>لم يصل شيء من الهاتف منذ %1: قد لا يكون هنا ما كُتب عليه.</translation>
        </message>
        <message>
            <source>Phone not heard of since it was linked.</source>
            <translation>لم يصل شيء من الهاتف منذ ربطه.</translation>
        </message>
        <message>
            <source>It has not confirmed what was sent to it, %1.</source>
            <comment>when it was sent</comment>
            <translation>لم يؤكد استلام ما أُرسل إليه، %1.</translation>
        </message>
        <message>
            <source>That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.</source>
            <translation>مضى على ذلك أكثر من %1 يومًا: ربما فُقد الهاتف أو لم يعد مستعملًا. اتصل، وأعد ربط هاتف إذا لزم الأمر.</translation>
        </message>
        <message>
            <source>it does not know this desk or the mailbox</source>
            <comment>why the hub takes nothing</comment>
            <translation>لا يعرف هذا المكتب أو الصندوق</translation>
        </message>
        <message>
            <source>it holds something else under the same number</source>
            <comment>why the hub takes nothing</comment>
            <translation>لديه شيء آخر تحت الرقم نفسه</translation>
        </message>
        <message>
            <source>the mailbox is full</source>
            <comment>why the hub takes nothing</comment>
            <translation>الصندوق ممتلئ</translation>
        </message>
        <message>
            <source>it is too large or unreadable for it</source>
            <comment>why the hub takes nothing</comment>
            <translation>يجده كبيرًا جدًا أو لا يستطيع قراءته</translation>
        </message>
        <message>
            <source>The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.</source>
            <translation>المحور لا يقبل ما يرسله هذا المكتب: %1. يبقى هنا ويعاد إرساله. أخبر من يدير المحور.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>لا يمكن هنا قراءة %Ln رسالة من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
                <numerusform>لا يمكن هنا قراءة رسالة واحدة من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
                <numerusform>لا يمكن هنا قراءة رسالتين من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
                <numerusform>لا يمكن هنا قراءة %Ln رسائل من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
                <numerusform>لا يمكن هنا قراءة %Ln رسالة من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
                <numerusform>لا يمكن هنا قراءة %Ln رسالة من الهاتف. اتصل واسأل عمّا كُتب. وإن بقي الأمر كذلك فاطلب حفظ بيانات المفكرة على الهاتف (الإعدادات، بياناتي). وبعد ذلك فقط احذف المفكرة هناك وأعد ربط الهاتف.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>كُتب %Ln شيء في هذا المسار ببرنامج أحدث ولا يمكن عرضه هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
                <numerusform>كُتب شيء واحد في هذا المسار ببرنامج أحدث ولا يمكن عرضه هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
                <numerusform>كُتب شيئان في هذا المسار ببرنامج أحدث ولا يمكن عرضهما هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
                <numerusform>كُتبت %Ln أشياء في هذا المسار ببرنامج أحدث ولا يمكن عرضها هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
                <numerusform>كُتب %Ln شيئًا في هذا المسار ببرنامج أحدث ولا يمكن عرضه هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
                <numerusform>كُتب %Ln شيء في هذا المسار ببرنامج أحدث ولا يمكن عرضه هنا. حدّث هذا المكتب، واتصل حتى ذلك الحين.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SettingsBoard</name>
        <message numerus="yes">
            <source>%Ln minute(s)</source>
            <translation>
                <numerusform>%Ln دقيقة</numerusform>
                <numerusform>دقيقة واحدة</numerusform>
                <numerusform>دقيقتين</numerusform>
                <numerusform>%Ln دقائق</numerusform>
                <numerusform>%Ln دقيقة</numerusform>
                <numerusform>%Ln دقيقة</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>StepPanel</name>
        <message>
            <source>Leave it as it is</source>
            <translation>اتركه كما هو</translation>
        </message>
    </context>
    <context>
        <name>GraveStep</name>
        <message>
            <source>Choose who stands by: this is for two people.</source>
            <translation>اختر من يشهد: هذه خطوة لشخصين.</translation>
        </message>
        <message>
            <source>Type the passphrase of this desk.</source>
            <translation>اكتب عبارة مرور هذا المكتب.</translation>
        </message>
    </context>
    <context>
        <name>StepFields</name>
        <message>
            <source>Passphrase of this desk, once more</source>
            <translation>عبارة مرور هذا المكتب مرة أخرى</translation>
        </message>
        <message>
            <source>Who stands by: this is for two people</source>
            <translation>من يشهد: هذه خطوة لشخصين</translation>
        </message>
    </context>
    <context>
        <name>TreatmentWhen</name>
        <message>
            <source>When the treatment was</source>
            <translation>متى كانت المعالجة</translation>
        </message>
        <message>
            <source>Day, year-month-day</source>
            <translation>اليوم، سنة-شهر-يوم</translation>
        </message>
        <message>
            <source>Time, hours:minutes</source>
            <translation>الوقت، ساعات:دقائق</translation>
        </message>
        <message>
            <source>It was just now</source>
            <translation>كانت الآن</translation>
        </message>
        <message>
            <source>It was then</source>
            <translation>كانت في ذلك الوقت</translation>
        </message>
        <message>
            <source>The days of the course count from here. Unless you change it, today&apos;s record takes the time at which you record it.</source>
            <translation>تُحسب أيام المسار من هنا. إن لم تغيّره، يأخذ سجل اليوم وقت تسجيلك له.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPanel</name>
        <message>
            <source>The treatment</source>
            <translation>المعالجة</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>تصحيحات السجل</translation>
        </message>
        <message>
            <source>Go on with the correction</source>
            <translation>متابعة التصحيح</translation>
        </message>
        <message>
            <source>Correct the treatment</source>
            <translation>تصحيح المعالجة</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>يبقى ما كُتب من قبل مسجَّلًا</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln ينتظر وقتًا أطول من اللازم</numerusform>
                <numerusform>%Ln ينتظر وقتًا أطول من اللازم</numerusform>
                <numerusform>%Ln ينتظران وقتًا أطول من اللازم</numerusform>
                <numerusform>%Ln ينتظرون وقتًا أطول من اللازم</numerusform>
                <numerusform>%Ln ينتظرون وقتًا أطول من اللازم</numerusform>
                <numerusform>%Ln ينتظرون وقتًا أطول من اللازم</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln في القائمة ينتظر وقتًا أطول من اللازم.</numerusform>
                <numerusform>%Ln في القائمة ينتظر وقتًا أطول من اللازم.</numerusform>
                <numerusform>%Ln في القائمة ينتظران وقتًا أطول من اللازم.</numerusform>
                <numerusform>%Ln في القائمة ينتظرون وقتًا أطول من اللازم.</numerusform>
                <numerusform>%Ln في القائمة ينتظرون وقتًا أطول من اللازم.</numerusform>
                <numerusform>%Ln في القائمة ينتظرون وقتًا أطول من اللازم.</numerusform>
            </translation>
        </message>
        <message>
            <source>Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.</source>
            <translation>مقفل منذ: %1. ما دام مقفلًا لا يسأل هذا المكتب المحور عن شيء: ما يصل الآن يظهر عند فتح القفل.</translation>
        </message>
        <message>
            <source>Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.</source>
            <translation>الإشعارات على سطح المكتب غير ممكنة هنا: لا يوفر هذا الحاسوب خدمة لها. المكتب المفتوح وحده ينبّه.</translation>
        </message>
        <message>
            <source>The computer did not take the last notice. Only the open desk tells for sure.</source>
            <translation>لم يقبل الحاسوب الإشعار الأخير. المكتب المفتوح وحده ينبّه بيقين.</translation>
        </message>
        <message>
            <source>When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.</source>
            <translation>عندما يجب الاتصال بأحد الآن، أو ينتظر أحد وقتًا أطول من اللازم، يظهر إشعار بلا اسم على سطح المكتب. المكتب المقفل لا يعلم بشيء جديد.</translation>
        </message>
        <message>
            <source>Somebody is to be called now. Open the desk.</source>
            <translation>يجب الاتصال بأحد الآن. افتح المكتب.</translation>
        </message>
        <message>
            <source>Clinic&apos;s desk</source>
            <translation>مكتب العيادة</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>افتح المكتب</translation>
        </message>
    </context>
    <context>
        <name>FollowUpAnswer</name>
        <message>
            <source>What became of it?</source>
            <translation>ماذا آل إليه الأمر؟</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueFilter</name>
        <message>
            <source>Not written down</source>
            <translation>غير مدوّن</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, count</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Anybody</source>
            <translation>أي شخص</translation>
        </message>
        <message>
            <source>Anybody or nobody</source>
            <translation>أي شخص أو لا أحد</translation>
        </message>
        <message>
            <source>Any day</source>
            <translation>أي يوم</translation>
        </message>
        <message>
            <source>After day %1</source>
            <translation>بعد اليوم %1</translation>
        </message>
        <message>
            <source>Days %1 to %2</source>
            <translation>الأيام من %1 إلى %2</translation>
        </message>
        <message>
            <source>Threads by %1</source>
            <translation>الخيوط بيد %1</translation>
        </message>
        <message>
            <source>Taken by %1</source>
            <translation>تولّاه %1</translation>
        </message>
    </context>
    <context>
        <name>FilterPanel</name>
        <message>
            <source>Filter the queue</source>
            <translation>تصفية القائمة</translation>
        </message>
        <message>
            <source>Back to the queue</source>
            <translation>العودة إلى القائمة</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>من وضع الخيوط</translation>
        </message>
        <message>
            <source>Row taken by</source>
            <translation>من تولّى الصف</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>يوم التعافي</translation>
        </message>
        <message>
            <source>It holds until the desk is locked or somebody else is named.</source>
            <translation>تبقى حتى يُقفل المكتب أو يُسمّى شخص آخر.</translation>
        </message>
    </context>
    <context>
        <name>FilterBar</name>
        <message>
            <source>Takes this filter off</source>
            <translation>يزيل هذه التصفية</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>إظهارها</translation>
        </message>
        <message>
            <source>Takes search and filters off</source>
            <translation>يزيل البحث والتصفية</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UsualBoard</name>
        <message>
            <source>Dressings</source>
            <translation>الضمادات</translation>
        </message>
        <message>
            <source>Please write an entry</source>
            <translation>طلب تسجيل</translation>
        </message>
        <message>
            <source>Come earlier</source>
            <translation>الحضور أبكر</translation>
        </message>
        <message>
            <source>Please call us</source>
            <translation>طلب اتصال</translation>
        </message>
        <message>
            <source>Thank you</source>
            <translation>شكرًا</translation>
        </message>
        <message>
            <source>It is not known which language the patient reads: choose it.</source>
            <translation>لغة المريضة غير معروفة: اخترها.</translation>
        </message>
        <message>
            <source>The patient was registered with %1.</source>
            <comment>a language</comment>
            <translation>سُجّلت المريضة بلغة %1.</translation>
        </message>
        <message>
            <source>The patient reads, in %1</source>
            <comment>a language</comment>
            <translation>تقرأ المريضة بلغة %1</translation>
        </message>
        <message>
            <source>A call is due. A message may be read too late: call first.</source>
            <translation>يجب الاتصال. قد تُقرأ الرسالة متأخرة: اتصل أولًا.</translation>
        </message>
    </context>
    <context>
        <name>UsualPanel</name>
        <message>
            <source>Usual messages</source>
            <translation>رسائل معتادة</translation>
        </message>
        <message>
            <source>Language of the patient</source>
            <translation>لغة المريضة</translation>
        </message>
        <message>
            <source>In your language</source>
            <translation>بلغتك</translation>
        </message>
        <message>
            <source>Put it into the message</source>
            <translation>ضعها في الرسالة</translation>
        </message>
        <message>
            <source>It can be changed there before it is sent</source>
            <translation>يمكن تغييرها هناك قبل الإرسال</translation>
        </message>
    </context>
    <context>
        <name>EntryLink</name>
        <message>
            <source>Shows the entry behind it</source>
            <translation>يعرض التسجيل وراءه</translation>
        </message>
    </context>
    <context>
        <name>CallVisit</name>
        <message>
            <source>The visit</source>
            <translation>الموعد</translation>
        </message>
        <message>
            <source>New day, year-month-day</source>
            <translation>اليوم الجديد، سنة-شهر-يوم</translation>
        </message>
        <message>
            <source>Time, if one is agreed</source>
            <translation>الوقت، إن اتُّفق عليه</translation>
        </message>
    </context>
    <context>
        <name>CurveBox</name>
        <message>
            <source>Score, points of 10</source>
            <translation>الدرجة، نقاط من 10</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>الأيام منذ المعالجة</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PaperPrinter</name>
        <message>
            <source>Print</source>
            <translation>طباعة</translation>
        </message>
        <message>
            <source>No printer is set up on this computer. Set one up, or save the pages as a file.</source>
            <translation>لا توجد طابعة معدّة على هذا الحاسوب. أعِدّ واحدة، أو احفظ الصفحات كملف.</translation>
        </message>
        <message>
            <source>Sent to %1. Fetch it there; this desk wrote no file.</source>
            <translation>أُرسل إلى %1. خذه من هناك؛ لم يكتب هذا المكتب أي ملف.</translation>
        </message>
        <message>
            <source>The printer did not take it. Look whether it is on and has paper, then print again.</source>
            <translation>لم تقبله الطابعة. تحقّق من أنها تعمل وفيها ورق، ثم اطبع مرة أخرى.</translation>
        </message>
    </context>
    <context>
        <name>Roles</name>
        <message>
            <source>Recording treatments and follow-ups</source>
            <translation>تسجيل العلاجات والمراجعات</translation>
        </message>
        <message>
            <source>Closing a finding</source>
            <translation>إغلاق ملاحظة</translation>
        </message>
        <message>
            <source>Signing a protocol, a usual range or a limit</source>
            <translation>توقيع بروتوكول أو مجال معتاد أو حد</translation>
        </message>
        <message>
            <source>Linking and ending patients&apos; phones</source>
            <translation>ربط هواتف المرضى وإنهاؤها</translation>
        </message>
        <message>
            <source>Adding and shutting out desks, fresh keys and the hub</source>
            <translation>إضافة المكاتب واستبعادها والمفاتيح الجديدة والمحور</translation>
        </message>
        <message>
            <source>Changing the numbers that patients call</source>
            <translation>تغيير الأرقام التي يتصل بها المرضى</translation>
        </message>
        <message>
            <source>Naming people and giving roles</source>
            <translation>تسمية الأشخاص وإسناد الأدوار</translation>
        </message>
        <message>
            <source>Backups, passphrase and saving who did what</source>
            <translation>النسخ الاحتياطي وعبارة المرور وحفظ قائمة من فعل ماذا</translation>
        </message>
        <message>
            <source>The practice&apos;s figures</source>
            <translation>أرقام العيادة</translation>
        </message>
        <message>
            <source>In charge</source>
            <translation>المسؤول</translation>
        </message>
        <message>
            <source>Practitioner</source>
            <translation>المعالج</translation>
        </message>
        <message>
            <source>Colleague on call</source>
            <translation>الزميل المناوب</translation>
        </message>
        <message>
            <source>Assistant</source>
            <translation>المساعد</translation>
        </message>
        <message>
            <source>Keeper of the computers</source>
            <translation>القائم على الأجهزة</translation>
        </message>
        <message>
            <source>No role yet: may do everything.</source>
            <translation>بلا دور بعد: يجوز له كل شيء.</translation>
        </message>
        <message>
            <source>May do everything.</source>
            <translation>يجوز له كل شيء.</translation>
        </message>
        <message>
            <source>Treatments, follow-ups and closing findings; patients&apos; phones; the numbers that patients call; the practice&apos;s figures.</source>
            <translation>العلاجات والمراجعات وإغلاق الملاحظات؛ هواتف المرضى؛ الأرقام التي يتصلون بها؛ أرقام العيادة.</translation>
        </message>
        <message>
            <source>Closing findings; patients&apos; phones.</source>
            <translation>إغلاق الملاحظات؛ هواتف المرضى.</translation>
        </message>
        <message>
            <source>Patients&apos; phones.</source>
            <translation>هواتف المرضى.</translation>
        </message>
        <message>
            <source>Desks, keys and the hub; backups and passphrase; saving who did what.</source>
            <translation>المكاتب والمفاتيح والمحور؛ النسخ الاحتياطي وعبارة المرور؛ حفظ قائمة من فعل ماذا.</translation>
        </message>
        <message>
            <source>Say first who is at the desk.</source>
            <translation>قل أولًا من على المكتب.</translation>
        </message>
        <message>
            <source>%1: nobody here has a role for that. Whoever is in charge can give one.</source>
            <translation>%1: لا أحد هنا له دور لذلك. يمكن للمسؤول أن يسند دورًا.</translation>
        </message>
        <message>
            <source>%1: for %2. Your role here: %3.</source>
            <comment>task, people, role</comment>
            <translation>%1: لـ %2. دورك هنا: %3.</translation>
        </message>
        <message>
            <source>not allowed by the role at that time</source>
            <translation>لا يسمح به الدور في ذلك الوقت</translation>
        </message>
        <message>
            <source>Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.</source>
            <translation>لا بد أن يبقى من يجوز له تسمية الأشخاص وإسناد الأدوار. أسند أولًا دور «المسؤول» إلى شخص آخر.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::RoleBoard</name>
        <message>
            <source>%1: %2 from now on.</source>
            <comment>person, role</comment>
            <translation>%1: من الآن %2.</translation>
        </message>
        <message>
            <source>%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.</source>
            <comment>person, role</comment>
            <translation>%1، «%2» يسلبك حق منح الأدوار. لا يعيده إليك إلا شخص آخر يملكه.</translation>
        </message>
    </context>
    <context>
        <name>RoleFields</name>
        <message>
            <source>People and roles</source>
            <translation>الأشخاص والأدوار</translation>
        </message>
        <message>
            <source>A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.</source>
            <translation>الدور قاعدة من قواعد العيادة وليس قفلًا: الأشخاص هنا أسماء خلف عبارة مرور واحدة. من لا يجوز له أمر يُقال له من يجوز له. تولي المريض والاتصال به وتدوين ذلك وإعادة فتح ملاحظة متاح للجميع.</translation>
        </message>
        <message>
            <source>Give that role</source>
            <translation>امنح هذا الدور</translation>
        </message>
        <message>
            <source>Keep my role</source>
            <translation>أبقِ على دوري</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicPhotos</name>
        <message>
            <source>This picture does not open. Choose another.</source>
            <translation>لا يمكن فتح هذه الصورة. اختر غيرها.</translation>
        </message>
        <message>
            <source>This picture is too large. Choose a smaller one.</source>
            <translation>هذه الصورة كبيرة جدًا. اختر صورة أصغر.</translation>
        </message>
        <message>
            <source>The desk reads JPEG and PNG pictures. Choose one of these.</source>
            <translation>يقرأ هذا البرنامج صور JPEG وPNG. اختر واحدة منها.</translation>
        </message>
        <message>
            <source>This picture is too small. Choose a larger one.</source>
            <translation>هذه الصورة صغيرة جدًا. اختر صورة أكبر.</translation>
        </message>
        <message>
            <source>This picture is damaged. Choose another.</source>
            <translation>هذه الصورة تالفة. اختر غيرها.</translation>
        </message>
        <message>
            <source>There are %1 from right after the treatment. That is the most. Take one back to add another.</source>
            <translation>توجد %1 صورة من بعد العلاج مباشرة. هذا أقصى عدد. اسحب واحدة لتضيف غيرها.</translation>
        </message>
        <message>
            <source>A photograph from right after the treatment</source>
            <translation>صورة من بعد العلاج مباشرة</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg)</source>
            <translation>صور (*.png *.jpg *.jpeg)</translation>
        </message>
        <message>
            <source>Kept: %1, right after the treatment.</source>
            <comment>view</comment>
            <translation>حُفظت: %1، بعد العلاج مباشرة.</translation>
        </message>
    </context>
    <context>
        <name>TakeBackPhoto</name>
        <message>
            <source>Take it back</source>
            <translation>اسحبها</translation>
        </message>
        <message>
            <source>Keep the photograph</source>
            <translation>أبقِ الصورة</translation>
        </message>
    </context>
    <context>
        <name>ClinicPhotoForm</name>
        <message>
            <source>Right after the treatment: %1</source>
            <translation>بعد العلاج مباشرة: %1</translation>
        </message>
        <message>
            <source>Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.</source>
            <translation>صور التقطتها بكاميرا العيادة نفسها. تبقى في مكاتب العيادة ولا تذهب إلى أي هاتف. لا يُحفظ مكان الملف ولا وقته.</translation>
        </message>
        <message>
            <source>View</source>
            <translation>الجهة</translation>
        </message>
        <message>
            <source>Getting the picture ready …</source>
            <translation>يجري تجهيز الصورة …</translation>
        </message>
        <message>
            <source>The photograph: %1</source>
            <translation>الصورة: %1</translation>
        </message>
        <message>
            <source>Is it this patient? Is it the right side? Is it sharp?</source>
            <translation>هل هو هذا المريض؟ هل هي الجهة الصحيحة؟ هل هي واضحة؟</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>أبقِها</translation>
        </message>
        <message>
            <source>Not this one</source>
            <translation>ليست هذه</translation>
        </message>
        <message>
            <source>It is not kept</source>
            <translation>لا تُحفظ</translation>
        </message>
        <message>
            <source>Choose a picture</source>
            <translation>اختر صورة</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>تم</translation>
        </message>
        <message>
            <source>Closes this form</source>
            <translation>يغلق هذا النموذج</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolTaking</name>
        <message>
            <source>This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.</source>
            <translation>هذا الملف أكبر مما يمكن أن يكون بروتوكول. لم يتغير شيء. اختر الملف الذي حفظه مكتب أو كتبه calibrate.</translation>
        </message>
        <message>
            <source>This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.</source>
            <translation>هذا الملف بصيغة لا يعرفها هذا البرنامج. لم يتغير شيء. حدّث البرنامج، أو اطلب الملف من برنامج بالإصدار نفسه.</translation>
        </message>
        <message>
            <source>This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.</source>
            <translation>هذا ليس ملف بروتوكول سليمًا (%1). لم يتغير شيء. اختر ملفًا آخر، أو اطلب كتابته من جديد؛ ولا تصلحه بيدك.</translation>
        </message>
        <message>
            <source>Take a protocol from a file</source>
            <translation>أخذ بروتوكول من ملف</translation>
        </message>
        <message>
            <source>The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.</source>
            <translation>لا يمكن قراءة الملف. لم يتغير شيء. انسخه إلى هذا الحاسوب ثم اختره مرة أخرى.</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <comment>protocol in a file, number</comment>
            <translation>%1، الإصدار %2</translation>
        </message>
        <message>
            <source>Written %1 by %2.</source>
            <comment>when, program</comment>
            <translation>كُتب %1 بواسطة %2.</translation>
        </message>
        <message>
            <source>It does not say when it was written, nor by which program.</source>
            <translation>لا يقول متى كُتب ولا بأي برنامج.</translation>
        </message>
        <message>
            <source>Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.</source>
            <translation>عُويرت عتباته على %1، بحيث لا تتجاوز %2 إنذارات كاذبة في ١٠٠ مسار بلا مضاعفات. هكذا يقول الملف؛ ولم يثبت ذلك في هذه العيادة.</translation>
        </message>
        <message>
            <source>The hash of what is behind that range begins with %1.</source>
            <translation>بصمة ما وراء هذا المجال تبدأ بـ %1.</translation>
        </message>
        <message>
            <source>The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.</source>
            <translation>الملف غير موقّع: لا شيء فيه يثبت من كتبه. لا تأخذه إلا ممن يمكنك سؤاله.</translation>
        </message>
        <message>
            <source>Rule</source>
            <translation>القاعدة</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>المستعمل</translation>
        </message>
        <message>
            <source>In the file</source>
            <translation>في الملف</translation>
        </message>
        <message>
            <source>No rule differs.</source>
            <translation>لا تختلف أي قاعدة.</translation>
        </message>
        <message>
            <source>All other rules are the same.</source>
            <translation>كل القواعد الأخرى هي نفسها.</translation>
        </message>
        <message>
            <source>It is the one in use.</source>
            <translation>هو المستعمل الآن.</translation>
        </message>
        <message>
            <source>It is known here as %1, and may be used. It comes into use when the draft is signed.</source>
            <translation>هو معروف هنا باسم %1 ويجوز استعماله. يُستعمل عند توقيع المسودة.</translation>
        </message>
        <message>
            <source>It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.</source>
            <translation>لا يمكن أخذه: لا يقول على وجه سليم ما وراءه. تحتفظ المسودة بالمجال المعتاد المستعمل وعتباته.</translation>
        </message>
        <message>
            <source>A draft can be rehearsed with it, and not signed.</source>
            <translation>يمكن تجربة مسودة به، لا توقيعها.</translation>
        </message>
        <message>
            <source>It is kept as a version, and comes into use when the draft is signed.</source>
            <translation>يُحفظ نسخةً، ويُستعمل عند توقيع المسودة.</translation>
        </message>
        <message>
            <source>A draft is there already. This one takes its place; &quot;Undo&quot; on the next page brings it back.</source>
            <translation>توجد مسودة بالفعل. تحل هذه محلها؛ و«تراجع» في الصفحة التالية يعيدها.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: what is taken carries a name.</source>
            <translation>قل أولًا من على المكتب: ما يؤخذ يحمل اسمًا.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>لا يمكن كتابة الملف هناك. اختر مجلدًا آخر.</translation>
        </message>
        <message>
            <source>Saved as %1. It holds the care plan in the clinic&apos;s own words, the rules and the usual range; no patient stands in it.</source>
            <translation>حُفظ باسم %1. فيه خطة الرعاية بكلمات العيادة، والقواعد، والمجال المعتاد؛ وليس فيه أي مريض.</translation>
        </message>
        <message>
            <source>Save the protocol in use</source>
            <translation>حفظ البروتوكول المستعمل</translation>
        </message>
        <message>
            <source>A draft is there already, and cannot be read. It stays as it is: this one is not kept.</source>
            <translation>توجد مسودة بالفعل ولا يمكن قراءتها. تبقى كما هي: وهذه لا تُحفظ.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolFilePage</name>
        <message>
            <source>A protocol from a file</source>
            <translation>بروتوكول من ملف</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>تركه</translation>
        </message>
        <message>
            <source>Nothing of the file is kept.</source>
            <translation>لا يُحفظ شيء من الملف.</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>ما هو</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>ما يُظهر ملاحظة</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>ما يُطلب من المريض</translation>
        </message>
        <message>
            <source>The care plan is the same.</source>
            <translation>خطة الرعاية هي نفسها.</translation>
        </message>
        <message>
            <source>Take its care plan as well</source>
            <translation>أخذ خطة الرعاية أيضًا</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>ما يُعدّ معتادًا</translation>
        </message>
        <message>
            <source>No course of this clinic is behind it: check it on all of ours</source>
            <translation>لا مسار من هذه العيادة وراءه: افحصه على كل مساراتنا</translation>
        </message>
        <message>
            <source>Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.</source>
            <translation>وإلا فلا تُعدّ غير مرئية إلا المسارات التي عولجت بعد استخلاصه. والمجال من مساراتكم يُستخلص في «حصيلة العيادة»، «المجال المعتاد».</translation>
        </message>
        <message>
            <source>Make a draft of it</source>
            <translation>جعله مسودة</translation>
        </message>
        <message>
            <source>It is rehearsed and signed like every other draft; nothing goes live before.</source>
            <translation>تُجرَّب وتُوقَّع كأي مسودة؛ ولا شيء يُستعمل قبل ذلك.</translation>
        </message>
    </context>
    <context>
        <name>PastVisits</name>
        <message>
            <source>Fold them away</source>
            <translation>طيّها</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>عرضها</translation>
        </message>
    </context>
    <context>
        <name>PatientPanel</name>
        <message>
            <source>Record the correction</source>
            <translation>سجّل التصحيح</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>تركه كما هو</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>الاسم</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>رقم الهاتف للاتصال بالمريض</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>لغة اليوميات</translation>
        </message>
        <message>
            <source>Every desk of the clinic shows it from then on. The patient&apos;s phone is told nothing of it: she chooses the language there herself.</source>
            <translation>يظهر ذلك منذئذ في كل مكاتب العيادة. ولا يُبلَّغ هاتف المريضة بشيء منه: فهي تختار اللغة هناك بنفسها.</translation>
        </message>
    </context>
    <context>
        <name>PatientRecord</name>
        <message>
            <source>Correct name, number, language</source>
            <translation>تصحيح الاسم والرقم واللغة</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>يبقى ما كُتب من قبل مسجَّلًا</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PatientEditor</name>
        <message>
            <source>name until then: %1</source>
            <translation>الاسم حتى ذلك الحين: %1</translation>
        </message>
        <message>
            <source>no number until then</source>
            <translation>لا رقم حتى ذلك الحين</translation>
        </message>
        <message>
            <source>number until then: %1</source>
            <translation>الرقم حتى ذلك الحين: %1</translation>
        </message>
        <message>
            <source>language until then: %1</source>
            <translation>اللغة حتى ذلك الحين: %1</translation>
        </message>
        <message>
            <source>as it was already</source>
            <translation>كما كان من قبل</translation>
        </message>
        <message>
            <source>somebody at another desk</source>
            <translation>شخص في مكتب آخر</translation>
        </message>
        <message>
            <source>Corrected %1 by %2: %3</source>
            <comment>when, who, what held until then</comment>
            <translation>صُحِّح %1 بواسطة %2: %3</translation>
        </message>
        <message>
            <source>Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.</source>
            <translation>صحّح مكتبان هذا دون أن يعلم أحدهما بالآخر. حيث غيّرا الشيء نفسه يسري الأحدث. اسأل المريضة عن الصحيح.</translation>
        </message>
        <message>
            <source>Correct what is on record of %1</source>
            <translation>تصحيح المسجَّل عن %1</translation>
        </message>
        <message>
            <source>%1 corrected this meanwhile: %2. Only what you change here is changed.</source>
            <comment>who, what held until then</comment>
            <translation>صحّح %1 هذا في هذه الأثناء: %2. لا يتغيّر إلا ما تغيّره هنا.</translation>
        </message>
        <message>
            <source>Corrected: %1</source>
            <comment>name</comment>
            <translation>صُحِّح: %1</translation>
        </message>
        <message>
            <source>It was corrected again meanwhile: nothing was taken back.</source>
            <translation>صُحِّح مرة أخرى في هذه الأثناء: لم يُسحب شيء.</translation>
        </message>
    </context>
    <context>
        <name>LastAct</name>
        <message>
            <source>%1 brought the visit forward, %2</source>
            <comment>person, when</comment>
            <translation>قدّم %1 موعد الزيارة، %2</translation>
        </message>
        <message>
            <source>%1 spoke with her, %2</source>
            <comment>person, when</comment>
            <translation>تحدّث %1 معها، %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2</source>
            <comment>person, when</comment>
            <translation>اتصل %1 ولم يصل إليها، %2</translation>
        </message>
        <message>
            <source>Taken by %1, %2</source>
            <comment>person, when</comment>
            <translation>أخذها %1، %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2, nothing noted since</source>
            <comment>person, when</comment>
            <translation>اتصل %1 ولم يصل إليها، %2، ولم يُدوَّن شيء منذ ذلك</translation>
        </message>
        <message>
            <source>%1 brought the visit forward %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>قدّم %1 موعد الزيارة قبل %2، ولم يُدوَّن شيء منذ ذلك</translation>
        </message>
        <message>
            <source>%1 spoke with her %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>تحدّث %1 معها قبل %2، ولم يُدوَّن شيء منذ ذلك</translation>
        </message>
        <message>
            <source>Taken by %1 %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>أخذها %1 قبل %2، ولم يُدوَّن شيء منذ ذلك</translation>
        </message>
        <message>
            <source>She rang, and %1 answered, %2</source>
            <comment>person, when</comment>
            <translation>اتصلت هي وردّ %1، %2</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>سحبه %1</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCorrection</name>
        <message>
            <source>I have seen it</source>
            <translation>لقد رأيته</translation>
        </message>
        <message>
            <source>Your draft stays as it is</source>
            <translation>تبقى مسودتك كما هي</translation>
        </message>
        <message>
            <source>Why the record is corrected</source>
            <translation>سبب تصحيح السجل</translation>
        </message>
        <message>
            <source>What this changes</source>
            <translation>ما الذي يغيّره هذا</translation>
        </message>
        <message>
            <source>Nothing yet. Go through the steps and set right what is wrong.</source>
            <translation>لا شيء بعد. مُرّ بالخطوات وصوّب ما هو خاطئ.</translation>
        </message>
        <message>
            <source>The former record stays with the course. Whose treatment it is cannot be corrected here.</source>
            <translation>يبقى السجل السابق مع المسار. ولا يمكن هنا تصحيح صاحبة المعالجة.</translation>
        </message>
    </context>
</TS>
