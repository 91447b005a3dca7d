<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="tr">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>Hatırlatma­larda çal</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>Çalma</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>Denemek için bir kez çal</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>Bunu kaldır</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>Bunlardan biri doğruysa hemen acil numarayı arayın</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>Bunlardan biri doğruysa aynı gün kliniğinizi arayın</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>Bu günlük doktor değildir, tıbbi cihaz da değildir. Her şeyi bilmez.</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>Kamera: kodun üzerine tutun</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>Şimdi acil numarayı arayın</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>Şimdi kliniğinizi arayın</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>Kliniğiniz bunu bilmeli</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>Bunu kontrolünüzde söyleyin</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>Beklemeyin ve araba kullanmayın. Kimse açmazsa yine arayın ve yakınınızdaki birinden yardım isteyin. Sonra kliniğinize haber verin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>Arayın, yazmayın. Kimse açmazsa ikinci numarayı arayın. 30 dakika içinde kimse açmazsa acile gidin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>Kaydınızda duruyor. Kötüleşirse arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>Size adrenalin kalemi verildiyse kullanın. Bacaklarınız yukarıda düz yatın. Nefes almak zorsa oturun.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>Temiz bir bezle bastırmaya devam edin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>Çekmeyin ve kesmeyin. Üstünü örtün.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>Bunun bu gece görülmesi gerekir, yarın değil.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>Uyuşturmadan olabilir. Tedaviden 8 saat sonra geçmiş olmalı. Geçmezse arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>Ateşiniz %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>Ağrınız 10 üzerinden %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>Bir taraf diğerinden çok daha şiş.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1, %2: 10 üzerinden %3. Bu gün için olağan en çok %4.</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1, %2: %3 idi, şimdi %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1, %2: %3 değerine inmişti, yine %4 oldu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1: solunuzda %2, sağınızda %3.</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>Hepsi birlikte, iki yanınız arasında %1 puan fark var.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1, %2: geçmesi olağandan uzun sürüyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1, %2: hâlâ duruyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>Birkaç gündür yazmadınız.</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>Hepsi birlikte bu gün için olağandan fazla.</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>Hepsi birlikte, geçmesi olağandan uzun sürüyor.</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>O zamandan beri bunu değiştirdiniz ya da buna ekleme yaptınız. Öneri geçerli kalır.</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>Klinik o zamandan beri tedavinizle ilgili kaydını değiştirdi. Öneri geçerli kalır.</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>Kaydınızda duruyor. Sonraki iş gününe kadar haber almazsanız arayın. Kötüleşirse hemen arayın.</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>Olağan aralığın üstünde, %1 ile %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>Olağan aralığın altında, %1 ile %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>Olağan aralıkta, %1 ile %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>Henüz bir şey yazılmadı.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1: 10 üzerinden %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>Şimdiye dek en yüksek: %1, gün %2.</translation>
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
        <translation>%1: sağ %2, sol %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>Ateş: %1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>Günlüğüm</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>Tedavi: %1. Klinik: %2. Hazırlandı: %3.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>Değerler 0, hiç, ile 10, düşünebildiğim en kötüsü, arasındadır. Sağ ve sol bana göredir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>Düzeltmeden önce:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>Notlar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>Ben</translation>
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
        <translation>bugün %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>dün %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>yarın %1</translation>
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
        <translation>Bugün</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>Dün</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>Gün %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>yalnız bugün</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>yarına kadar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>gün %1 sonuna kadar</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n dakika</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n saat</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n gün</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>Ağrı</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>Şişlik</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>Morluk</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>Gerginlik</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>Batma</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>Büzülme</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>Uyuşma</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>Ne kadar ağrıyor?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>Ne kadar şiş?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>Ne kadar morluk var?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>Ne kadar gergin?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>Keskin batmaları ne kadar hissedi­yorsunuz?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>Bir çukur ya da kıvrım ne kadar derin?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>Deri ne kadar uyuşuk?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 hiç</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 düşünebildiğiniz en kötüsü</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>Sizin solunuz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>Sizin sağınız</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>sizin solunuz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>sizin sağınız</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>Nefes almak zor ya da tükürüğümü yutamıyorum.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>Boynum ya da çenemin altı hızla şişiyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>Dilim ya da boğazım şişiyor, hırıltım var ya da bayılacak gibiyim.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>Metal tadı, kulak çınlaması, seğirme var ya da kafam karışık.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>Çok titriyorum, kafam karışık ya da bütün gün idrarım gelmedi.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>Yüzüm sarkıyor; ayrıca bir kolum güçsüz ya da konuşmam bozuk.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>Birden az görüyorum ya da çift görüyorum.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>Bir taraf saatten saate doluyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>Deri beyaz, gri ya da ağ gibi oldu, soğuk ya da kabarcıklı.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>Bir giriş noktasının yanında deri diğer taraftan daha kırmızı, mor, gri ya da koyu.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>Elimin tersiyle diğer taraftan daha sıcak geliyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>Sert, parlak ya da gergin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>Dokununca dünden daha çok acıyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>Kenarı olduğu yerin ötesine yayıldı.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>Koyu sarı, yeşil ya da sütlü sıvı geliyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>Bir ipin ucu deriden görünüyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>Bir gözümü kapatamıyor, kaşımı kaldıra­mıyorum ya da gülüşüm eğri.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>Yerken yanağım şişiyor ya da berrak sıvı akıyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>15 dakika sıkı bastırdıktan sonra hâlâ kanıyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>Nabız gibi atan bir şişlik var.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>Bir ipi görüyor ya da hissediyorum. Deri sakin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>Üşüme ve titremem var.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>Pansumanları çıkarın</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>Giriş noktaları temiz ve kuru</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>Sırtüstü uyuyun</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>Yüzünüzü yormayın</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>Soğuk kompres</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>Henüz makyaj yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>Yüz masajı yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>Bekleyebiliyorsa dişçi yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>Yürüyün ama spor yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>Sauna, sıcak banyo, havuz yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>Güneşten uzak durun</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>Alkol yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>Sigara yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>Tıraş yok</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>Nasıl olduğunu yaz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>Kontrol randevunuz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>Kliniğinizden</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>Bu akşam eve varana kadar kalsın. Giriş noktalarını temiz tutarlar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>Özenle yıkayın, ovmayın. Küçük deliklerin kapanması zaman ister.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>Başınızı biraz yükseltin. Yüzüstü yatmak bir ipi oynatabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>Küçük lokmalar; geniş esneme ya da kahkaha yok. İplerin oturması için sakinlik gerek.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>On dakika, arada bir bezle. Şişliği azaltabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>Giriş noktaları kapanana kadar üstlerine sürmeyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>Yüze bastırmak bir ipi oynatabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>Çok açılan ağız ipleri çeker. Ağrırsa önce kliniği arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>Spor kan akışını artırır ve şişliği artırabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>Sıcak şişliği artırabilir, havuzlar mikrop taşıyabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>Güneş bir morluğu uzun süre koyulaştırabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>Morluğu ve şişliği artırabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>Duman iyileşmeyi yavaşlatır. Ne kadar uzun o kadar iyi.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>Bıçak giriş noktalarını açabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>Kısadır. Ters giden bir şeyi erken gösterebilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>Kliniğiniz nasıl geçtiğine bakacak.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>Bu parola sözü günlüğü açmıyor. Yine deneyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>Çok fazla deneme. Lütfen %1 saniye bekleyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>Günlüğün dosyası bozuk. Hiçbir şey silinmedi. Kliniğinizi arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>Bu telefon dolu. Yazdığınız hâlâ burada. Yer açın, sonra yine kaydedin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>Bu telefon kaydedemedi. Yazdığınız hâlâ burada. Yine deneyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>Şu an ağ yok. Sonra gönderilecek.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>Bu kodun süresi doldu. Kliniğinizden yenisini isteyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>Bu kod daha önce kullanıldı. Kliniğinize şimdi söyleyin ve yenisini isteyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>Bu kod okunamıyor. Her harfe bakın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>Bu sizin kliniğinizden değil. Hiçbir şeye katılınmadı. Kliniğinize söyleyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>Henüz bir yanıt yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>Bir değer sınırın dışında. Lütfen bakın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>Olmadı. Yine deneyin ya da kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>Bu kliniğe giden yol şifreli değil: başkaları okuyabilir. Hiçbir şey gönderilmedi. Kliniğinize söyleyin.</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>Yapıldı</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>Yapılmadı</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>Sonra hatırlatır: %1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>Düzeltmeye devam et</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>Düzelt</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>Öncekini gizle</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>Önce ne yazıyordu</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Ne yapmalı</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>Ne yapılacağını gizle</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>Kaydet</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>Soru %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>Kaydet, sonra fotoğraf ekle</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>O zaman için</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>Şimdi için</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>Soruların üzerinden yeniden geçer</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1: 10 üzerinden %2</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>Daha önceki bir anı ekle</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>Henüz bir şey yok. İlk kaydınız burada duracak.</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>Fotoğraf ekle</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>Bu kodu kullan</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>Baştan başla</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>Kodun resmi</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Resimler (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>Bunu kliniğinizde yapın. Kliniğiniz ekranında bir kod gösterir.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>Resim seç</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>Ya da kodu yazın, 24 harf ve rakam</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>Kodun altındaki adres</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>Kliniğinize soruluyor …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>Bu sayfayı açık tutun. Sırada karşılaştırılacak bir sayı var.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>Bu sayıyı kliniğinize okuyun</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>Aynı altı rakamı görmeliler. Değilse söyleyin ve baştan başlayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>Katıldınız. Bakım planınız yolda …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>Günlüğü şimdi kapatırsanız yeniden açtığınızda kaldığı yerden sürer.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ayarlar</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>Dil ve yazı boyutu</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>Evet, oradayım</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Hayır</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>Şu anda kliniğinizde misiniz?</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>Herkes size bir kod resmi gönderebilir. O zaman yazdıklarınız ona gider. Kliniğinizdeyken kodun nereden geldiğini görürsünüz.</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>Bunu kâğıda yazın. Yalnız şimdi gösterilir. Önceki kodlar artık geçmez.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>Yazdım</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>Kurtarma kodu</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>Parola sözünüzü kaybederseniz kod günlüğü açar. O zaman başka kimse yardım edemez.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>Kod oluşturmak için parola sözünüz</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>Parola sözünü değiştir</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>Şimdiki parola sözünüz</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>Yenisi</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>Yenisi bir kez daha</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Durdur</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Henüz hiçbir şey yazılmadı.</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>Sayfa nereye konsun</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>Yazdırılacak sayfa (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>Yazdırılacak sayfa olarak kaydet</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>Henüz yazmakta olduğunuz burada kalır. Parola sözünüz ve ayarlarınız da.</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>Yalnız yazdıklarınız, burada sakladığınız fotoğraflar, hatırlatmalara yanıtlarınız ve bir uyarı gördüğünüz. Kliniğiniz için mühürlenir. Aradaki sunucu okuyamaz. Boyutları, saatleri ve ağ adresinizi görür.</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>Günlüğümü oluştur</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>Günlüğümü aç</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>Bu parola sözünü koy</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>Dil</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>Yalnız sizin açabildiğiniz bir günlük</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>Kodunuzla açın</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>Günlüğünüz kilitli</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>Bir parola sözü seçin. Günlüğü bu telefonda kilitler. Kimse sıfırlayamaz, kliniğiniz bile. Sonra Ayarlar'da bir kurtarma kodu oluşturun.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>Kâğıdınızdaki kurtarma kodu</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>Yeni bir parola sözü</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>Parola sözü</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>Aynısı bir kez daha</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>Parola sözümü biliyorum</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>Parola sözümü kaybettim</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>Bu telefondan ne çıkar</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>Endişeliyseniz parola sözünü aramayın. “Yardım gerek” düğmesine dokunun.</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>Benim için bir tane çek</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>Kâğıtta saklamanız için rastgele harf ve rakamlar</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>İkisini de kaybettim</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>Durdur</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Henüz hiçbir şey yazılmadı.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>Kâğıda yazdım</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Ebbline günlüğü</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>Bir süredir kullanılmadı. Günlük yarım dakika içinde kilitlenir. Yazdıklarınız saklanır.</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>Verileriniz nereye konsun</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>Bu telefondan ne çıkar</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>Yanınıza alın</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>Verilerimi bir klasöre kaydet</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>Günlüğü sil</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>Bu, günlüğü bu telefondan kaldırır. Klinik elindekini saklar: onun da silinmesini isterseniz kliniğe sorun. Bundan sonra hatırlatma da uyarı da gelmez.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>Günlüğü sil …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>Kalsın</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>Şimdi sil. Geri dönüşü yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>Yazdığınız her şey, basılacak sayfa (PDF), tablo (CSV) ve başka sağlık programları için dosya (FHIR) olarak, ayrıca fotoğraflarınız. Ağ olmadan çalışır.</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>Hepsini kaydetmek için parola sözünüz</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>Hepsini silmek için parola sözünüz</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>Gün</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>Saat</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>Başka bir saat</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>Daha önceydi</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>Hangi gün ve saatle ilgili olduğunu ayarlar</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>Hayır, şimdiyle ilgili</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>Notunuz</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>Ağ olunca gönder</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>Klinik bunu ancak sonraki iş günü okuyabilir. Acilse arayın.</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>Düzelt</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>Kapat</translation>
    </message>
    </context>
    <context>
        <name>NoticesPage</name>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="14"/>
        <source>Version %1</source>
        <translation>Sürüm %1</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="19"/>
        <source>The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.</source>
        <translation>Günlük, başkalarının emeğiyle yapıldı. Burada neler kullandığını ve onları kimin yaptığını görürsünüz. Lisans metinleri İngilizcedir.</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>Parçalar</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>Lisanslar</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>Metni gösterir</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>Takvim dosyası nereye konsun</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>Takvim (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>Hatırlatma­larda çal</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>Ekranınızı başkaları görebilir. Bu yüzden yalnız size bir şey olduğunu söyler, ne olduğunu söylemez.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>Denemek için bir kez çal</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>Gece sessiz</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>Sessizlik başlangıcı</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>bitişi</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>Bu saatlere düşen, saatler bitince gelir. Akşam için olan, saatler başlamadan hemen önce gelir.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>Takviminizde de</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>Takviminiz için dosyada yalnız saatler olur. Her birinde “Günlüğünüzden hatırlatma” yazar. Birçok takvim içindekileri bir sunucuya kopyalar.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>Planınız veya kontrolünüz değişirse dosyayı yeniden yapın. Takviminizin daha önce aldıkları siz silene kadar orada kalır.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>Takvim dosyası oluştur</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>Hatırlatmalar zamanında çalsın</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>Ateş, ölçtüyseniz</translation>
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
        <translation>İsterseniz kendi sözlerinizle</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>Batma ve uyuşmayı da sor</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>Bu kaydı at …</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>Önce sorar</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>Hayır, kalsın</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Evet, at</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>Hatırlatmalar</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>Kilit</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>Parola sözü ve kurtarma kodu</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>Verilerim</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>Bu telefondan ne çıkar, yanınıza alma, silme</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>Dil</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>Yazı boyu</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>Büyük</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>Çok büyük</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>Görünüm</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>Açık</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>Koyu</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>Yüksek karşıtlık</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>Ateş birimi</translation>
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
        <translation>Daha az hareket</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>Şimdi gönder ve al</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>Günlüğü kilitle</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline, GPL 3 altında özgür yazılımdır. Onaylı bir tıbbi cihaz değildir. Kliniğinizin ya da acil servisin yerini tutmaz.</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>Ebbline hakkında</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>Sürüm, yapımcılar ve lisanslar</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>Dokunulmazsa kilitlenme süresi (dakika)</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>Şimdi doğru olan her birine dokunun. Devam düğmesi sonuncunun altındadır.</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>Şimdi</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>Gidişatınız</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>Sırada</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>Bugün uyulacaklar</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>Yazdıklarım</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>Klinikle notlar</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>Ayarlar</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>Bugün yanıtlanan</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Kimi aramalı</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>Daha çok eğri</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>Daha az eğri</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>Geri</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>Yardım gerek</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>Kimi arayacağınızı gösterir</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>Bunu okudum</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>Neden</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>Bu ne anlama gelebilir</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>Günlüğünüz artık bu cihazda değil.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>Ebbline günlüğü</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>Kliniğinize katılın</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>Bu kaydı düzelt</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>Nasıl?</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>Kimi aramalı</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>Yazdıklarım</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>Klinikle notlar</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>Ayarlar</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>Hatırlatmalar</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>Kilit</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>Verilerim</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>Bu telefona kaydedildi.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>Sizinle klinik arasında bir ileti eksik. Lütfen kliniği arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>Tamam. Hepsi gönderildi ve alındı.</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>Yazdığınız bir şey hâlâ bu telefonda bekliyor. Aceleyse arayın.</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>Bu kayda daha önce başladınız. Kaydedin ya da silin. Sonra önceki anı ekleyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>Bu cihaz bir kliniğe ulaşamıyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>Ebbline hakkında</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>Fotoğraflar</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>Geri alındı. Artık bu telefonda değil.</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1. Ne yapılacağı günün sayfasında yazar.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>Bunlardan biri doğru mu?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>Başka bir şey?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>Geçen sefer %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>Sırada</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>Bunu atla</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>Hiçbiri</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>Yalnız işaretledik­lerim</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>86 ile 113 °F arası bir değer yazın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>30 ile 45 °C arası bir değer yazın.</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>Günlüğe şunu söylediniz:</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>Bu doğruysa: %1.</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>Buraya yazdığınız her şey atılsın mı? Geri dönüşü yok.</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>%1 bir °F değeri gibi görünüyor. °F seçin ya da 30 ile 45 °C arası bir değer yazın.</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>%1 bir °C değeri gibi görünüyor. °C seçin ya da 86 ile 113 °F arası bir değer yazın.</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>Lütfen ateş değerine bakın. Sonra yeniden kaydedin.</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>Not doldu. Bundan sonrası saklanmaz.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>Konu: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>Konu: şimdi.</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>Buna %1 başladınız. Yazdıklarınız o zaman için mi, şimdi için mi?</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>%1 açtı, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>Kliniğin bilgisayarında, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>Bu telefona kaydedildi</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>Sonradan yazıldı, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>Düzeltildi, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>Önceki yazılış, %1:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>Konusu: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>Siz, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>Klinik henüz okumadı</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>Klinik okudu, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>Siz gördünüz, %1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1. %2 daha önce yazdığınızı açtı, %3. Düzeltmenizi henüz kimse açmadı.</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>Bu not gönderilemeyecek kadar uzun. Bir kısmını gönderin, kalanını ikinci bir notla.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>Şu an ağ yok. Günlük denemeye devam ediyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>Bu resimde kod yok. Başkasını deneyin ya da kodu yazın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>Yazılan kod için altındaki adres de gerekir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>Bu cihaz bir kliniğe ulaşamıyor.</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>Bu bir kliniğin kodu değil. Kliniğinizin ekranında gösterdiği kodu kullanın.</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>Bu resim açılamıyor. Başkasını seçin ya da kodu yazın.</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>Günlüğün kamerayı kullanma izni yok. Kodun bir resmini seçin ya da kodu yazın. Kameraya telefonun ayarlarından izin verebilirsiniz.</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>Kamera şu anda çalışmıyor. Kullanımda olabilir. Kodun bir resmini seçin ya da kodu yazın.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>Bu cihazda kamera yok. Kodun bir resmini seçin ya da kodu yazın.</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>Kliniğin adresi yanıt vermiyor. Kodun altındaki adresi doğru yazdığınızı ve bu telefonun ağı olduğunu kontrol edin. Günlük denemeyi sürdürüyor.</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>Bu günlükte zaten bir tedavi var ve yalnızca bir tane olabilir. Ayarlarda “Verilerim”i açın. Verilerinizi orada kaydedin ve günlüğü silin. Sonra yeniden katılın.</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>Hiçbir yere katılmadınız. Kliniğinize gittiğinizde onlardan bir kod isteyin.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>Bir kurtarma kodunuz var. Burada saklanmaz, yalnız kâğıdınızda.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>Henüz kurtarma kodunuz yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>Yeni kod oluştur</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>Kod oluştur</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>Bu ikisi aynı değil.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>Tamam. Artık günlüğü yalnız yeni parola sözü açar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>İyi. Kâğıdı yalnız sizin bulacağınız yerde saklayın.</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>Kod artık gösterilmiyor. Kâğıdınızda yoksa yenisini oluşturun.</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>Parola sözünüz için bu bilgisayar da gerekir: anahtarın öbür yarısı, oturumunuzun açtığı anahtarlıktadır. Bu yarı kaybolursa ya da günlük taşınırsa günlüğü yalnız kurtarma kodu açar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>Parola sözünüz için bu telefon da gerekir: anahtarın öbür yarısı telefondadır. Telefon onu kaybederse günlüğü yalnız kurtarma kodu açar.</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>En yeni kodunuz kâğıdınızdan geri okunmadı. Kâğıtta yoksa yenisini oluşturun. Bu cihaz anahtarın kendisindeki yarısını kaybederse günlüğü yalnız o kod açar.</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>Bu cihaz anahtarınızın yarısını saklayabilir. Bunun için kâğıdınızdan bir kodun geri okunmasını bekliyor. Bunu yapmak için yeni bir kod oluşturun.</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>Kâğıdınızdan: %2 gruptan %1. grup</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>Bu, istenen grup değil. Kâğıdınıza yeniden bakın. Orada yoksa kodu bir kez daha gösterin.</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>Günlüğümün kurtarma kodu</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>Günlüğü yeni bir parola sözüyle açar. Yalnız sizin bulacağınız yerde saklayın.</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>Tamam. Sayfayı yazdırın, sonra dosyayı silin: bulan kişi günlüğünüzü açabilir.</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Dosya oraya yazılamadı. Başka bir yer seçin.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>En az %1 harf kullanın. Dört beş sözcük kolay akılda kalır.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>Bu ikisi aynı değil.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>Bu bir kurtarma kodu değil. Dokuz öbekte 36 harf ve rakamı vardır. Her birine bakın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>Bu kod günlüğü açmıyor. Yalnız en yenisi açar.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>Bu bilgisayar anahtarın kendindeki yarısını vermiyor. Anahtarlığının parolasını soruyorsa önce onu yazın. Sonra tekrar deneyin. İşe yaramazsa kurtarma kodunuzu kullanın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>Bu telefon anahtarın kendindeki yarısını vermiyor. Tekrar deneyin. İşe yaramazsa kurtarma kodunuzu kullanın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>Önce bir kez daha deneyin. Parola sözü ve kod olmadan bu günlük kapalı kalır. Başka bir cihazda, ya da bu uygulamanın verileri silindikten sonra bu cihazda yeniden bağlanabilirsiniz: kliniğiniz yeni bir kod gösterir. Uygulamayı kaldırmak verilerini silmeyebilir. Gönderdiğiniz kayıtlar geri gelir. Fotoğraflar kliniğinizde kalır. Gönderilmemiş olanlar kaybolur.</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>Bir dakika. Günlük, kilidin bu telefonda ne kadar güçlü olabileceğini ölçüyor.</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>Kâğıdınızdan: %1. grup ve %2. grup</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>Bu, çekilenle aynı değil. Kâğıdınıza yeniden bakın. Orada yoksa bir kez daha gösterin.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n kayıt yalnız bu telefonda ve kaybolur.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>Bütün kayıtlarınız kliniğin bilgisayarında da var.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>Tamam. “%1” klasöründe. Açan herkes okuyabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>Oraya yazılamadı. Başka bir yer seçin.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n fotoğraf yalnız bu telefonda ve kaybolur.</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>Önce parola sözünüzü yazın.</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>Parola sözünüzü bir kez daha yazın.</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>Bu sizin parola sözünüz değil. Hiçbir şey kaydedilmedi veya silinmedi.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Bu bilgisayar anahtarın kendindeki yarısını vermiyor. Anahtarlığının parolasını soruyorsa önce onu yazın. Sonra tekrar deneyin. İşe yaramazsa günlüğü kilitleyip kurtarma kodunuzu kullanın.</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Bu telefon anahtarın kendindeki yarısını vermiyor. Tekrar deneyin. İşe yaramazsa günlüğü kilitleyip kurtarma kodunuzu kullanın.</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>Hepsi yazılamadı. Bir bölümü “%1” klasöründe. Klasörü açan herkes okuyabilir: klasörü silin.</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>Yazdığınız başka bir şey hâlâ bu telefonda bekliyor ve kaybolur.</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>Bu telefonda hâlâ bekleyen bir not ya da yanıt da kaybolur.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>Yeniden tedavi mi oldunuz? Bu günlük tek bir tedavi içerir. Verilerinizi kaydedin, günlüğü silin, sonra yeniden katılın.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>Çalmadı. Bu cihaz kabul etmedi.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>Günlük</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>Hatırlatma</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>Sizin için bir şey var.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>Devam edebilmesi için lütfen günlüğünüzü açın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>Aç</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>30 dakika sonra</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>Bu cihaz bütün hatırlatmaları almıyor. Her gün günlüğünüze bakın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>Hatırlatmalar çalıyor. Sırada yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>Hatırlatmalar çalıyor. Sıradaki: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>Hatırlatmalar çalıyor. Sıradaki: %1. Sürmesi için günlüğü en geç %2 açın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>Bu cihaz çalamaz. Sırası gelen burada durur.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>Hatırlatmalar çalmıyor. Sırası gelen burada durur.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>Hatırlatmalar henüz çalmıyor. Sırası gelen burada durur.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>Ekranınızın kenarına bakın. Şöyle yazmalı: “%1”</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>Günlüğünüzden hatırlatma</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>Sırada hatırlatma yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Dosya oraya yazılamadı. Başka bir yer seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>Tamam. Dosyayı takviminizle açın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>Bu telefon, güç tasarrufu için birkaç dakika geç çalabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>Hatırlatmalar artık çalıyor. Klinikten ayrılmadan önce birini deneyin.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>Kontrol: %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 ile %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>Bugün olağan, 10 üzerinden: %1.</translation>
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
        <translation>Bu aralık şimdilik bir varsayım. Henüz kliniğinizdeki vakalardan gelmiyor.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>Bu aralık kliniğinizdeki %n vakadan geliyor.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>Henüz bir şey yazılmadı.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>Son kaydınızı %1 açtı, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>Son kaydınız kliniğin bilgisayarında, %1. Henüz kimse açmadı.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n kayıt bu telefonda, henüz klinikte değil. Acilse arayın.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>Klinikten %n yeni not</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>Kaydınıza devam edin</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>Nasıl olduğunu yaz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>Sonra, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>Düzeltmeniz kliniğin bilgisayarında, %1. Henüz kimse açmadı. %2 daha önce yazdığınızı açtı, %3.</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>Bu telefonda günlüğünüzün eski bir kopyası var. Yazdıklarınızın bir kısmı burada olmayabilir. Lütfen kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>Klinikten gelen iki ileti birbirini tutmuyor. Birine uymadan önce kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>Klinikten gelen bir ileti burada eksik. Lütfen kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>Bu telefona klinikten gelen son haber: %1.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>Bu telefona klinikten henüz haber gelmedi.</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>Bu telefonun bildiği kadarıyla yazdıklarınız klinikte değil. Bekleme başlangıcı: %1.</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>Endişeliyseniz arayın. Burada yanıt beklemeyin.</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>Bu, %1 günden fazla. Lütfen kliniğinizi arayın. Bu telefonu ve bu programı saklayın: yazdıklarınız belki başka hiçbir yerde yoktur.</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>Kliniğiniz bu uygulamanın daha yeni bir sürümünü istiyor. Lütfen güncelleyin. O zamana kadar yazdıklarınız bu telefonda bekleyebilir.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>Burada yazdığınız %n şey kliniğe ulaşmadı. Lütfen orada gösterin.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>Kontrol: %1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>Söylediğiniz: yapıldı.</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>Söylediğiniz: yapılmadı.</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>Bu telefon artık klinikle bağlı değil. Burada yazdıklarınız kimseye ulaşmaz ve hatırlatmalar burada çalmaz. Öbür telefonunuzu kullanın. Başka telefon yoksa kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>Aradaki sunucu dolu. Yazdıklarınız sığmıyor.</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>Aradaki sunucu bu telefonu artık tanımıyor.</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>Aradaki sunucu bu telefonun gönderdiklerini kabul etmiyor.</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>Bu telefonda kalır ve telefon yeniden dener. Lütfen kliniğinizi arayın.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>Bu telefonun saati yaklaşık %1 ileri. Lütfen ayarlayın: hatırlatmalarınız ona göre çalar.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>Bu telefonun saati yaklaşık %1 geri. Lütfen ayarlayın: hatırlatmalarınız ona göre çalar.</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>Kliniğiniz kontrolün zamanını değiştirdi. Önceki: %1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>Kimi aramalı</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>Endişeliyseniz arayın. Bir nedene gerek yok.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>Aramak günlükten hızlıdır: klinik kaydınızı henüz görmemiş olabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>Ateşiniz 100,4 °F ya da üstü.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>Ateşiniz 38 °C ya da üstü.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>Ağrı geri geliyor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>Acil numara</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>Kliniğiniz</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>Kimse açmazsa</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>Kaydınız kaydedilmedi ve klinikte de yok.</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>Kaydınıza dönün ve yeniden kaydedin</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>Uyarı günlüğünüzde kalır</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>Başka bir yerde misiniz? O yerin acil numarasını arayın.</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>Bu telefon uyarıyı okuduğunuzu kaydedemedi. Günlüğü bir daha açtığınızda yeniden gelir.</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>Ağrı 10 üzerinden 7 ya da daha çok.</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>İlk iki günde bir taraf daha dolgun ve daha çok ağrıyor.</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>Bir yerde bunlardan ikisi: renk değişik, sıcak, sert, daha acılı.</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>Bir ip görünüyor ve oradaki deri sıcak, acılı ya da renk değiştirmiş.</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>Kaydınız henüz kaydedilmedi ve klinikte de yok. Aradıktan sonra devam edebilirsiniz.</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>Kliniğin bilgisayarında, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>Bu telefona kaydedildi</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>Bu telefonda değil. Kliniğin bilgisayarında, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>Bu telefonda değil. Eski telefonunuzda olabilir.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>Sol tarafınız</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>Sağ tarafınız</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>Önden</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>Fotoğraflar: bu telefona kaydedildi</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>Fotoğraflar: %1 / %2 kliniğin bilgisayarında</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>Kamera, yüzünüzü içine yerleştireceğiniz bir yüz çizimiyle</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>Öteki kamerayı kullan</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>Kalsın</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>Bu fotoğraf saklanmaz</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>Başka bir tane çek</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>Resim seç</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>Bitti</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>Yazdıklarınıza döner</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>Sizin bir fotoğrafınız</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Resimler (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>Hangi taraf</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>Bir yüz çizimi: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>Bu cihazda kamera yok. Az önce çektiğiniz bir resmi seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>Her seferinde: aynı ışık, aynı uzaklık, saçlar yüzden uzak. İki tarafı da çekin.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>Fotoğraf çekmek size kalmış. Endişeliyseniz fotoğrafı beklemeyin: arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>Resim hazırlanıyor …</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>Fotoğraf: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>Doğru taraf mı? Net mi? Şimdi mi çekildi? Değilse başka bir tane çekin.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>Dosyadaki yer ve saat ile cihazınızın adı birlikte gitmez. Yüzünüz gider.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>Fotoğrafı çek</translation>
    </message>
    </context>
    <context>
        <name>PhotoThumb</name>
    <message>
        <location filename="../app/diary/PhotoThumb.qml" line="20"/>
        <source>Photograph. %1</source>
        <translation>Fotoğraf. %1</translation>
    </message>
    </context>
    <context>
        <name>PicturePage</name>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="23"/>
        <source>The photograph: %1</source>
        <translation>Fotoğraf: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>Bu, birinin ona baktığı anlamına gelmez. Endişeliyseniz arayın.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>Şimdi bu telefondan gider. Sunucudan ve kliniğin bilgisayar­larından, bir sonraki eşitlemede gider. Birinin kopyaladığı ya da bastığı kalır.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>Geri al …</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>Önce bunun ne yapacağını söyler</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>Kalsın</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>Şimdi geri al. Geri dönüşü yok.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>Bu resim açılamıyor. Başka bir resim seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>Bu resim çok büyük. Daha küçük bir resim seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>Günlük JPEG ve PNG resimlerini okur. Bunlardan birini seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>Bu resim çok küçük. Daha büyük bir resim seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>Bu resim bozuk. Başka bir resim seçin ya da yenisini çekin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>Başınızı sağınıza çevirin. Kamera sol yanağınızı görür.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>Başınızı solunuza çevirin. Kamera sağ yanağınızı görür.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>Yüzünüz gevşek, doğrudan kameraya bakın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>Şunun altında duracak: %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>Bu telefona kaydedildi: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>%1 fotoğrafınız var. En fazlası bu. Yenisi için birini geri alın.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>Bu telefon onu kaydedemedi. Yeniden deneyin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>Bu telefon dolu. Yer açın, sonra saklayın.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>Kamera yanıt vermiyor. Bunun yerine bir resim seçin.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>Günlüğün kamerayı kullanma izni yok. Telefonunuzun ayarlarında izin verin ya da bir resim seçin.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>Geri alınamadı. Yeniden deneyin.</translation>
    </message>
    </context>
    <context>
        <name>IdleNotice</name>
    <message>
        <source>Stay open</source>
        <translation>Açık kalsın</translation>
    </message>
    </context>
    <context>
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>Acil numarası (Avrupa Birliği)</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>Acil numarası (Birleşik Krallık)</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>Acil numarası (Amerika Birleşik Devletleri)</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>Ambulans (Brezilya)</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>Ambulans (Çin)</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>Ambulans (İsviçre)</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>Ambulans (Türkiye)</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>Aslında yapılmadı</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>Aslında yapıldı</translation>
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
        <translation>Bu numarayı arar</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>Bu cihaz arama yapamaz. Lütfen bu numarayı bir telefondan arayın:</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>Arama başlamazsa bu numarayı bir telefondan arayın:</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>Neden</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Bunu okudum</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>Kaydınızla kalır, Yazdıklarım altında</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>Boyundaki şişlik veya kan, havanın geçtiği yola baskı yapabilir. Hızla kötüleşebilir.</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>Boyun derisinin altında kan olabilir. Havanın geçtiği yola baskı yapabilir.</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>Ağır bir alerji olabilir. O zaman boğaz şişebilir ve nefes almak zorlaşır.</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>Uyuşturan ilaç yalnız yüzünüze değil, bütün vücudunuza etki ediyor olabilir.</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>Sepsis olabilir. Bu, bir enfeksiyonun bütün vücuda zarar vermeye başlamasıdır.</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>İnme olabilir. Bu, beynin bir bölümüne çok az kan gitmesidir.</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>Göz veya göze giden kan tehlikede olabilir.</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>Deri altında toplanan kan olabilir. Bir doktor bakana kadar öyle sayılır.</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>Oradaki deriye çok az kan gidiyor olabilir. Bir şey bir damara baskı yapıyor veya onu tıkıyor olabilir.</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>Ateş, bir enfeksiyon olduğu anlamına gelebilir.</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>Bir enfeksiyon olabilir, yüzünüzün derisinde de. Göze veya buruna yakınsa daha tehlikelidir.</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>Üşüme ve titreme bir enfeksiyonla gelebilir.</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>Deride yayılan bir enfeksiyon olabilir.</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>İrin olabilir. İrin bir enfeksiyonla gelebilir.</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>Bir ip dışarı çıkıyor. Oradaki deride enfeksiyon da olabilir.</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>Yüzünüzün bir siniri sıkışmış veya zarar görmüş olabilir. Uyuşukluk artık geçmiş olmalıydı.</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>Bu kadar güçlü ağrı, deri altındaki kandan veya bir enfeksiyondan gelebilir.</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>Yanağınızdaki tükürük bezi veya kanalı zarar görmüş olabilir.</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>Bir damar hâlâ açık olabilir.</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>Bir atardamarda sızıntı olabilir, çevresinde de kan.</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>Sayılar tek başına ne olduğunu söylemez. Bu yüzden şimdi arayın.</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>Sizin için şu anda tehlikeli olabilir ve hızla kötüleşebilir. Bu yüzden bekleyemez.</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>Şimdi bakım gerekebilir. Bu yüzden beklemeyip aramalısınız.</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>Deri altında kan veya bir enfeksiyon olabilir.</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>Yazdığımı göster</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>Bunu şimdi kâğıda yazın ve kâğıdı yalnız sizin bulacağınız yerde saklayın. Günlüğü açmak için bunu yazarsınız, çizgili veya çizgisiz.</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>Görünmüyor</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Göster</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>Başka bir tane çek</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>Kendim seçerim</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>Kâğıttakinin doğru olduğundan emin olmak için iki grup. Kâğıt olmadan günlüğünüzü yeniden açamazsınız.</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Bir kez daha göster</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>Yeterince uzun.</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>Yeterince uzun. Ama hep aynı birkaç harf kolay tahmin edilir.</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>%n harf daha.</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>CodeBack</name>
    <message>
        <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
        <translation>Kâğıttakinin doğru olduğundan emin olmak için bir grup. Ondan sonra kod artık gösterilmez.</translation>
    </message>
    <message>
        <source>It is on my paper</source>
        <translation>Kâğıdımda yazıyor</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Bir kez daha göster</translation>
    </message>
    </context>
</TS>
