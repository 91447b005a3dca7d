<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR">
    <context>
        <name>BellCard</name>
    <message>
        <location filename="../app/diary/BellCard.qml" line="35"/>
        <source>Ring for reminders</source>
        <translation>Tocar para os lembretes</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="40"/>
        <source>Do not ring</source>
        <translation>Não tocar</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="47"/>
        <source>Ring once to try it</source>
        <translation>Tocar uma vez para testar</translation>
    </message>
    <message>
        <location filename="../app/diary/BellCard.qml" line="53"/>
        <source>Put this away</source>
        <translation>Ocultar isto</translation>
    </message>
    </context>
    <context>
        <name>CallPage</name>
    <message>
        <location filename="../app/diary/CallPage.qml" line="30"/>
        <source>Call the emergency number at once if one of these is true</source>
        <translation>Ligue já para o número de emergência se algo disto for verdade</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="35"/>
        <source>Call your clinic the same day if one of these is true</source>
        <translation>Ligue para a sua clínica no mesmo dia se algo disto for verdade</translation>
    </message>
    <message>
        <location filename="../app/diary/CallPage.qml" line="40"/>
        <source>This diary is no doctor and no medical device. It does not know everything.</source>
        <translation>Este diário não é um médico nem um produto médico. Ele não sabe tudo.</translation>
    </message>
    </context>
    <context>
        <name>CameraBox</name>
    <message>
        <location filename="../app/diary/CameraBox.qml" line="14"/>
        <source>Camera: hold it over the code</source>
        <translation>Câmera: segure sobre o código</translation>
    </message>
    </context>
    <context>
        <name>DiaryAdvice</name>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="24"/>
        <source>Call the emergency number now</source>
        <translation>Ligue agora para o número de emergência</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="25"/>
        <source>Call your clinic now</source>
        <translation>Ligue agora para a sua clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="26"/>
        <source>Your clinic should hear of this</source>
        <translation>A sua clínica deve saber disto</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="27"/>
        <source>Bring this up at your visit</source>
        <translation>Fale disto na sua consulta</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="35"/>
        <source>Do not wait and do not drive yourself. If nobody answers, call again, and ask someone near you for help. Then tell your clinic.</source>
        <translation>Não espere e não dirija. Se ninguém atender, ligue de novo e peça ajuda a alguém por perto. Depois avise a sua clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="36"/>
        <source>Call, do not write. If nobody answers, call the second number. If nobody answers within 30 minutes, go to urgent care.</source>
        <translation>Ligue, não escreva. Se ninguém atender, ligue para o segundo número. Se ninguém atender em 30 minutos, vá ao pronto-socorro.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="38"/>
        <source>It is in your entry. If it gets worse, call.</source>
        <translation>Está na sua anotação. Se piorar, ligue.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="47"/>
        <source>If you were given an adrenaline pen, use it. Lie flat with your legs up. If it is hard to breathe, sit up.</source>
        <translation>Se deram a você uma caneta de adrenalina, use. Deite-se com as pernas para cima. Se for difícil respirar, sente-se.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="49"/>
        <source>Keep pressing with a clean cloth.</source>
        <translation>Continue apertando com um pano limpo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="51"/>
        <source>Do not pull it and do not cut it. Cover it.</source>
        <translation>Não puxe e não corte. Cubra.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="53"/>
        <source>This needs to be seen tonight, not tomorrow.</source>
        <translation>Isto precisa ser visto esta noite, não amanhã.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="55"/>
        <source>It may be the numbing. It should be gone 8 hours after the treatment. If it is not, call.</source>
        <translation>Pode ser a anestesia. Deve passar 8 horas depois do tratamento. Se não passar, ligue.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="68"/>
        <source>Your temperature is %1.</source>
        <translation>A sua temperatura é %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="70"/>
        <source>Your pain is %1 of 10.</source>
        <translation>A sua dor é %1 de 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="72"/>
        <source>One side is much more swollen than the other.</source>
        <translation>Um lado está muito mais inchado que o outro.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="89"/>
        <source>%1, %2: %3 of 10. Usual on this day is up to %4.</source>
        <translation>%1, %2: %3 de 10. O normal neste dia é até %4.</translation>
    </message>
    <message>
        <source>%1, %2: it was at %3 and is at %4 now.</source>
        <translation>%1, %2: estava em %3 e agora está em %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="91"/>
        <source>%1, %2: it went down to %3 and is at %4 again.</source>
        <translation>%1, %2: tinha baixado para %3 e está de novo em %4.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="93"/>
        <source>%1: %2 on your left and %3 on your right.</source>
        <translation>%1: %2 à sua esquerda e %3 à sua direita.</translation>
    </message>
    <message>
        <source>All in all, your sides are %1 points apart.</source>
        <translation>No conjunto, seus dois lados diferem em %1 pontos.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="95"/>
        <source>%1, %2: it takes longer than usual to go.</source>
        <translation>%1, %2: demora mais que o normal para passar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="97"/>
        <source>%1, %2: it is still there.</source>
        <translation>%1, %2: ainda está lá.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/advice.cpp" line="99"/>
        <source>You have not written for some days.</source>
        <translation>Você não escreve há alguns dias.</translation>
    </message>
    <message>
        <source>All taken together, it is more than usual for this day.</source>
        <translation>No conjunto, é mais que o normal neste dia.</translation>
    </message>
    <message>
        <source>All in all, it takes longer than usual to go.</source>
        <translation>No conjunto, demora mais que o normal para passar.</translation>
    </message>
    <message>
        <source>You have changed or added to this since. The advice stays.</source>
        <translation>Desde então você mudou ou completou isto. O conselho continua valendo.</translation>
    </message>
    <message>
        <source>The clinic has changed its record of your treatment since. The advice stays.</source>
        <translation>Desde então a clínica mudou o que anotou do seu tratamento. O conselho continua valendo.</translation>
    </message>
    <message>
        <source>It is in your entry. If you hear nothing by the next working day, call. If it gets worse, call at once.</source>
        <translation>Está na sua anotação. Se não tiver notícias até o próximo dia útil, ligue. Se piorar, ligue já.</translation>
    </message>
    </context>
    <context>
        <name>DiaryCurve</name>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="27"/>
        <source>Above the usual range, %1 to %2.</source>
        <translation>Acima do normal, %1 a %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="28"/>
        <source>Below the usual range, %1 to %2.</source>
        <translation>Abaixo do normal, %1 a %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="29"/>
        <source>Inside the usual range, %1 to %2.</source>
        <translation>Dentro do normal, %1 a %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="38"/>
        <source>Nothing written yet.</source>
        <translation>Nada escrito ainda.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="41"/>
        <source>%1: %2 of 10.</source>
        <extracomment>"Day 4: 3 of 10."</extracomment>
        <translation>%1: %2 de 10.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/curve_text.cpp" line="44"/>
        <source>Highest so far: %1, on day %2.</source>
        <translation>O mais alto até agora: %1, no dia %2.</translation>
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
        <translation>%1: direita %2, esquerda %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_words.cpp" line="41"/>
        <source>Temperature: %1</source>
        <translation>Temperatura: %1</translation>
    </message>
    </context>
    <context>
        <name>DiaryRecord</name>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="41"/>
        <source>My diary</source>
        <translation>O meu diário</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="42"/>
        <source>Treatment: %1. Clinic: %2. Made on %3.</source>
        <translation>Tratamento: %1. Clínica: %2. Feito em %3.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="44"/>
        <source>Scores go from 0, none, to 10, the worst you can think of. Right and left are mine.</source>
        <translation>Os valores vão de 0, nada, a 10, o pior que se possa imaginar. Direita e esquerda são as minhas.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="52"/>
        <source>Before it was corrected:</source>
        <translation>Antes da correção:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="58"/>
        <source>Notes</source>
        <translation>Recados</translation>
    </message>
    <message>
        <location filename="../app/diary/model/record_sheet.cpp" line="61"/>
        <source>Me</source>
        <translation>Eu</translation>
    </message>
    </context>
    <context>
        <name>DiaryTimes</name>
    <message>
        <location filename="../app/diary/model/times.cpp" line="33"/>
        <source>d MMMM</source>
        <extracomment>A day and a month, as in "22 March"</extracomment>
        <translation>d 'de' MMMM</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="40"/>
        <source>today %1</source>
        <translation>hoje %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="42"/>
        <source>yesterday %1</source>
        <translation>ontem %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="44"/>
        <source>tomorrow %1</source>
        <translation>amanhã %1</translation>
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
        <translation>Hoje</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="55"/>
        <source>Yesterday</source>
        <translation>Ontem</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="61"/>
        <source>Day %1</source>
        <translation>Dia %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="67"/>
        <source>only today</source>
        <translation>só hoje</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="69"/>
        <source>until tomorrow</source>
        <translation>até amanhã</translation>
    </message>
    <message>
        <location filename="../app/diary/model/times.cpp" line="70"/>
        <source>until day %1</source>
        <translation>até o dia %1</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hora</numerusform>
            <numerusform>%n horas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n dia</numerusform>
            <numerusform>%n dias</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>DiaryWords</name>
    <message>
        <location filename="../app/diary/model/words.cpp" line="26"/>
        <source>Pain</source>
        <translation>Dor</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="27"/>
        <source>Swelling</source>
        <translation>Inchaço</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="28"/>
        <source>Bruising</source>
        <translation>Roxo</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="29"/>
        <source>Tightness</source>
        <translation>Repuxo</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="30"/>
        <source>Twinges</source>
        <translation>Pontadas</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="31"/>
        <source>Puckering</source>
        <translation>Covinhas</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="32"/>
        <source>Numbness</source>
        <translation>Dormência</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="41"/>
        <source>How much does it hurt?</source>
        <translation>Quanto dói?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="42"/>
        <source>How swollen is it?</source>
        <translation>Quanto está inchado?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="43"/>
        <source>How much bruise is there?</source>
        <translation>Quanto roxo há?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="44"/>
        <source>How tight does it feel?</source>
        <translation>Quanto está repuxando?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="45"/>
        <source>How much do you feel sharp stabs?</source>
        <translation>Quanto você sente picadas fortes?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="46"/>
        <source>How deep is a dimple or fold?</source>
        <translation>Quão funda é uma covinha ou dobra?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="47"/>
        <source>How numb is the skin?</source>
        <translation>Quanto a pele está dormente?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="54"/>
        <source>0 is none</source>
        <translation>0 é nada</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="59"/>
        <source>10 is the worst you can think of</source>
        <translation>10 é o pior que se possa imaginar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="65"/>
        <source>Your left</source>
        <translation>A sua esquerda</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="66"/>
        <source>Your right</source>
        <translation>A sua direita</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="75"/>
        <source>your left</source>
        <translation>a sua esquerda</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="76"/>
        <source>your right</source>
        <translation>a sua direita</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="86"/>
        <source>It is hard to breathe, or I can not swallow my spit.</source>
        <translation>É difícil respirar, ou não consigo engolir a saliva.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="87"/>
        <source>My neck, or under my jaw, swells up fast.</source>
        <translation>O pescoço, ou embaixo do queixo, incha rápido.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="88"/>
        <source>My tongue or throat swells, I wheeze, or I feel faint.</source>
        <translation>A língua ou a garganta incha, eu chio ao respirar ou sinto que vou desmaiar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="89"/>
        <source>Metal taste, ringing ears, twitching, or I feel mixed up.</source>
        <translation>Gosto de metal, zumbido no ouvido, espasmos, ou estou confuso.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="90"/>
        <source>I shake hard, feel mixed up, or pass no urine all day.</source>
        <translation>Tremo muito, estou confuso, ou não urino o dia todo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="91"/>
        <source>My face droops and an arm is weak or my speech is slurred.</source>
        <translation>O meu rosto cai e, além disso, um braço está fraco ou falo enrolado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="92"/>
        <source>I suddenly see less, or I see double.</source>
        <translation>De repente vejo menos, ou vejo dobrado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="93"/>
        <source>One side keeps getting fuller by the hour.</source>
        <translation>Um lado enche mais a cada hora.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="94"/>
        <source>Skin turned white, grey or like a net, is cold, or has blisters.</source>
        <translation>A pele ficou branca, cinza ou como uma rede, está fria ou tem bolhas.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="95"/>
        <source>Near an entry point, the skin is more red, purple, grey or dark than on the other side.</source>
        <translation>Perto de um ponto de entrada, a pele está mais vermelha, roxa, cinza ou escura que do outro lado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="96"/>
        <source>It feels warmer to the back of my hand than the other side.</source>
        <translation>Está mais quente nas costas da minha mão que o outro lado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="97"/>
        <source>It is firm, shiny or tight.</source>
        <translation>Está firme, brilhante ou esticada.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="98"/>
        <source>It is more sore to touch than yesterday.</source>
        <translation>Dói mais ao toque que ontem.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="99"/>
        <source>The edge has spread past where it was.</source>
        <translation>A borda passou de onde estava.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="100"/>
        <source>Thick yellow, green or milky fluid comes out.</source>
        <translation>Sai líquido grosso amarelo, verde ou leitoso.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="101"/>
        <source>The end of a thread shows through the skin.</source>
        <translation>A ponta de um fio aparece na pele.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="102"/>
        <source>I can not close an eye or lift a brow, or my smile is crooked.</source>
        <translation>Não consigo fechar um olho ou levantar a sobrancelha, ou o meu sorriso está torto.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="103"/>
        <source>My cheek swells when I eat, or clear fluid runs.</source>
        <translation>A bochecha incha quando como, ou corre líquido claro.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="104"/>
        <source>It still bleeds after 15 minutes of firm pressing.</source>
        <translation>Ainda sangra depois de 15 minutos apertando firme.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="105"/>
        <source>There is a lump that beats like a pulse.</source>
        <translation>Há um caroço que bate como o pulso.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="106"/>
        <source>I can see or feel a thread. The skin is calm.</source>
        <translation>Vejo ou sinto um fio. A pele está calma.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="107"/>
        <source>I have chills.</source>
        <translation>Tenho calafrios.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="116"/>
        <source>Dressings off</source>
        <translation>Tirar os curativos</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="117"/>
        <source>Entry points clean and dry</source>
        <translation>Pontos de entrada limpos e secos</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="118"/>
        <source>Sleep on your back</source>
        <translation>Durma de costas</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="119"/>
        <source>Spare your face</source>
        <translation>Poupe o rosto</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="120"/>
        <source>Cold pack</source>
        <translation>Compressa fria</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="121"/>
        <source>No make-up yet</source>
        <translation>Sem maquiagem ainda</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="122"/>
        <source>No face massage</source>
        <translation>Sem massagem no rosto</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="123"/>
        <source>No dentist if it can wait</source>
        <translation>Sem dentista se puder esperar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="124"/>
        <source>Walk, but no sport</source>
        <translation>Caminhe, mas sem esporte</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="125"/>
        <source>No sauna, hot bath or pool</source>
        <translation>Sem sauna, banho quente ou piscina</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="126"/>
        <source>Stay out of the sun</source>
        <translation>Fique fora do sol</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="127"/>
        <source>No alcohol</source>
        <translation>Sem álcool</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="128"/>
        <source>No smoking</source>
        <translation>Sem fumar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="129"/>
        <source>No shaving</source>
        <translation>Sem barbear</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="130"/>
        <source>Write down how it is</source>
        <translation>Anotar como está</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="131"/>
        <source>Your follow-up visit</source>
        <translation>A sua consulta de retorno</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="132"/>
        <source>From your clinic</source>
        <translation>Da sua clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="141"/>
        <source>Leave them on until you are home this evening. They keep the entry points clean.</source>
        <translation>Deixe até estar em casa esta noite. Eles mantêm limpos os pontos de entrada.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="142"/>
        <source>Wash with care and do not rub. The small holes need time to close.</source>
        <translation>Lave com cuidado e não esfregue. Os furinhos precisam de tempo para fechar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="143"/>
        <source>Raise your head a little. Lying on your face can move a thread.</source>
        <translation>Levante um pouco a cabeça. Deitar sobre o rosto pode mover um fio.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="144"/>
        <source>Small bites, no wide yawns or big laughs. The threads need calm to settle.</source>
        <translation>Mordidas pequenas, sem bocejos largos ou risadas grandes. Os fios precisam de calma.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="145"/>
        <source>Ten minutes, with a cloth between. It can ease swelling.</source>
        <translation>Dez minutos, com um pano no meio. Pode aliviar o inchaço.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="146"/>
        <source>Keep it off the entry points until they have closed.</source>
        <translation>Não passe nos pontos de entrada até fecharem.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="147"/>
        <source>Pressing on your face can move a thread.</source>
        <translation>Apertar o rosto pode mover um fio.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="148"/>
        <source>A wide open mouth pulls on the threads. If it hurts, call the clinic first.</source>
        <translation>A boca bem aberta puxa os fios. Se doer, ligue primeiro para a clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="149"/>
        <source>Sport raises the blood flow and can add swelling.</source>
        <translation>O esporte aumenta o fluxo de sangue e pode inchar mais.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="150"/>
        <source>Heat can add swelling, and pools can carry germs.</source>
        <translation>O calor pode inchar mais, e piscinas podem ter germes.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="151"/>
        <source>Sun can darken a bruise for a long time.</source>
        <translation>O sol pode escurecer um roxo por muito tempo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="152"/>
        <source>It can add bruising and swelling.</source>
        <translation>Pode dar mais roxo e inchaço.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="153"/>
        <source>Smoke slows healing. As long as you can is best.</source>
        <translation>A fumaça atrasa a cura. O melhor é pelo tempo que puder.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="154"/>
        <source>A blade can open the entry points.</source>
        <translation>Uma lâmina pode abrir os pontos de entrada.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="155"/>
        <source>It is short. It can show early that something is off.</source>
        <translation>É breve. Pode mostrar cedo que algo está errado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="156"/>
        <source>Your clinic will look at how it went.</source>
        <translation>A sua clínica vai ver como foi.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="165"/>
        <source>That passphrase does not open the diary. Try again.</source>
        <translation>Essa frase secreta não abre o diário. Tente de novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="166"/>
        <source>Too many tries. Please wait %1 seconds.</source>
        <translation>Tentativas demais. Espere %1 segundos.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="167"/>
        <source>The diary's file is damaged. Nothing was deleted. Call your clinic.</source>
        <translation>O arquivo do diário está danificado. Nada foi apagado. Ligue para a sua clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="168"/>
        <source>This phone is full. What you typed is still here. Free some space, then save again.</source>
        <translation>Este celular está cheio. O que você digitou ainda está aqui. Libere espaço e salve de novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="169"/>
        <source>This phone could not save. What you typed is still here. Try again.</source>
        <translation>Este celular não conseguiu salvar. O que você digitou ainda está aqui. Tente de novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="170"/>
        <source>No network right now. It will be sent later.</source>
        <translation>Sem rede agora. Será enviado mais tarde.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="171"/>
        <source>This code is over. Ask your clinic for a new one.</source>
        <translation>Este código venceu. Peça um novo à sua clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="172"/>
        <source>This code was used before. Tell your clinic now and ask for a new one.</source>
        <translation>Este código já foi usado. Avise já a sua clínica e peça um novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="173"/>
        <source>This code can not be read. Check each letter.</source>
        <translation>Este código não pode ser lido. Confira cada letra.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="174"/>
        <source>This is not from your clinic. Nothing was joined. Tell your clinic.</source>
        <translation>Isto não é da sua clínica. Nada foi ligado. Avise a sua clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="175"/>
        <source>Nothing is answered yet.</source>
        <translation>Nada foi respondido ainda.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="176"/>
        <source>A value is out of range. Please check it.</source>
        <translation>Um valor está fora do limite. Confira, por favor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/words.cpp" line="177"/>
        <source>That did not work. Try again, or call your clinic.</source>
        <translation>Não deu certo. Tente de novo ou ligue para a sua clínica.</translation>
    </message>
    <message>
        <source>The way to this clinic is not locked: others could read along. Nothing was sent. Tell your clinic.</source>
        <translation>O caminho até esta clínica não é cifrado: outros poderiam ler. Nada foi enviado. Avise a sua clínica.</translation>
    </message>
    </context>
    <context>
        <name>DueCard</name>
    <message>
        <location filename="../app/diary/DueCard.qml" line="41"/>
        <source>Done</source>
        <translation>Feito</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="47"/>
        <source>Not done</source>
        <translation>Não feito</translation>
    </message>
    <message>
        <location filename="../app/diary/DueCard.qml" line="60"/>
        <source>Reminds you later: %1</source>
        <translation>Lembra mais tarde: %1</translation>
    </message>
    </context>
    <context>
        <name>EntryCard</name>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Go on correcting</source>
        <translation>Continuar a correção</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="71"/>
        <source>Correct</source>
        <translation>Corrigir</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>Hide what was before</source>
        <translation>Esconder o que estava antes</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryCard.qml" line="77"/>
        <source>What was before</source>
        <translation>O que estava antes</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>O que fazer</translation>
    </message>
    <message>
        <source>Hide what to do</source>
        <translation>Esconder o que fazer</translation>
    </message>
    </context>
    <context>
        <name>EntryPage</name>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="34"/>
        <source>Save</source>
        <translation>Salvar</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="46"/>
        <source>Question %1</source>
        <translation>Pergunta %1</translation>
    </message>
    <message>
        <location filename="../app/diary/EntryPage.qml" line="40"/>
        <source>Save, then add photographs</source>
        <translation>Salvar e depois pôr fotos</translation>
    </message>
    <message>
        <source>About then</source>
        <translation>De então</translation>
    </message>
    <message>
        <source>About now</source>
        <translation>De agora</translation>
    </message>
    <message>
        <source>Goes through the questions again</source>
        <translation>Passa pelas perguntas de novo</translation>
    </message>
    </context>
    <context>
        <name>GaugeMark</name>
    <message>
        <location filename="../app/diary/GaugeMark.qml" line="23"/>
        <source>%1: %2 of 10</source>
        <translation>%1: %2 de 10</translation>
    </message>
    </context>
    <context>
        <name>HistoryPage</name>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add an earlier moment</source>
        <translation>Anotar um momento anterior</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="23"/>
        <source>Nothing yet. Your first entry will stand here.</source>
        <translation>Nada ainda. A sua primeira anotação ficará aqui.</translation>
    </message>
    <message>
        <location filename="../app/diary/HistoryPage.qml" line="15"/>
        <source>Add photographs</source>
        <translation>Pôr fotos</translation>
    </message>
    </context>
    <context>
        <name>JoinPage</name>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="20"/>
        <source>Use this code</source>
        <translation>Usar este código</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="26"/>
        <source>Start over</source>
        <translation>Começar de novo</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="35"/>
        <source>A picture of the code</source>
        <translation>Uma imagem do código</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="36"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Imagens (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="49"/>
        <source>Do this at your clinic. Your clinic shows a code on its screen.</source>
        <translation>Faça isto na sua clínica. A clínica mostra um código na tela.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="69"/>
        <source>Choose a picture</source>
        <translation>Escolher uma imagem</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="77"/>
        <source>Or type the code, 24 letters and digits</source>
        <translation>Ou digite o código, 24 letras e números</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="84"/>
        <source>The address under the code</source>
        <translation>O endereço embaixo do código</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="90"/>
        <source>Asking your clinic …</source>
        <translation>Perguntando à sua clínica …</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="95"/>
        <source>Keep this page open. Next comes a number to compare.</source>
        <translation>Deixe esta página aberta. Depois vem um número para comparar.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="100"/>
        <source>Read this number to your clinic</source>
        <translation>Leia este número para a sua clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="117"/>
        <source>They must see the same six digits. If not, tell them and start over.</source>
        <translation>Eles devem ver os mesmos seis números. Se não, avise e comece de novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/JoinPage.qml" line="122"/>
        <source>You have joined. Your care plan is on its way …</source>
        <translation>Você entrou. O seu plano de cuidados está a caminho …</translation>
    </message>
    <message>
        <source>If you close the diary now, it goes on when you open it again.</source>
        <translation>Se você fechar o diário agora, ele continua quando você o abrir de novo.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Configurações</translation>
    </message>
    <message>
        <source>Language and text size</source>
        <translation>Idioma e tamanho do texto</translation>
    </message>
    <message>
        <source>Yes, I am there</source>
        <translation>Sim, estou lá</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Não</translation>
    </message>
    <message>
        <source>Are you at your clinic now?</source>
        <translation>Você está na sua clínica agora?</translation>
    </message>
    <message>
        <source>Anyone can send you a picture of a code. What you write would then go to them. At your clinic you can see where the code comes from.</source>
        <translation>Qualquer pessoa pode enviar a você a imagem de um código. O que você escrever iria então para ela. Na sua clínica você vê de onde vem o código.</translation>
    </message>
    </context>
    <context>
        <name>KeysPage</name>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="24"/>
        <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
        <translation>Escreva isto no papel. Só é mostrado agora. Códigos de antes não valem mais.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="40"/>
        <source>I have written it down</source>
        <translation>Já escrevi</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="46"/>
        <source>Recovery code</source>
        <translation>Código de recuperação</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="57"/>
        <source>The code opens the diary if you lose your passphrase. Nobody else can help you then.</source>
        <translation>O código abre o diário se você perder a frase secreta. Ninguém mais pode ajudar então.</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="65"/>
        <source>Your passphrase, to make a code</source>
        <translation>A sua frase secreta, para criar um código</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="79"/>
        <source>Change the passphrase</source>
        <translation>Mudar a frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="88"/>
        <source>Your passphrase now</source>
        <translation>A sua frase secreta atual</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="97"/>
        <source>The new one</source>
        <translation>A nova</translation>
    </message>
    <message>
        <location filename="../app/diary/KeysPage.qml" line="106"/>
        <source>The new one once more</source>
        <translation>A nova mais uma vez</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Nada foi gravado ainda.</translation>
    </message>
    <message>
        <source>Where to put the page</source>
        <translation>Onde pôr a página</translation>
    </message>
    <message>
        <source>A page to print (*.pdf)</source>
        <translation>Uma página para imprimir (*.pdf)</translation>
    </message>
    <message>
        <source>Save it as a page to print</source>
        <translation>Salvar como página para imprimir</translation>
    </message>
    </context>
    <context>
        <name>LeavesList</name>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="17"/>
        <source>What you are still typing stays here. So do your passphrase and your settings.</source>
        <translation>O que você ainda está digitando fica aqui. A sua frase secreta e os seus ajustes também.</translation>
    </message>
    <message>
        <location filename="../app/diary/LeavesList.qml" line="13"/>
        <source>Only what you write, the photographs that you keep here, your answers to reminders, and that you saw a warning. It is sealed for your clinic. The server between can not read it. It sees sizes, times and your net address.</source>
        <translation>Só o que você escreve, as fotos que você salva aqui, as suas respostas aos lembretes e que você viu um aviso. Vai lacrado para a sua clínica. O servidor no meio não pode ler. Ele vê tamanhos, horas e o seu endereço de rede.</translation>
    </message>
    </context>
    <context>
        <name>LockPage</name>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Make my diary</source>
        <translation>Criar o meu diário</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="20"/>
        <source>Open my diary</source>
        <translation>Abrir o meu diário</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="27"/>
        <source>Set this passphrase</source>
        <translation>Definir esta frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="35"/>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="42"/>
        <source>A diary that only you can open</source>
        <translation>Um diário que só você pode abrir</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Open it with your code</source>
        <translation>Abra com o seu código</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="43"/>
        <source>Your diary is locked</source>
        <translation>O seu diário está trancado</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="48"/>
        <source>Choose a passphrase. It locks the diary on this phone. Nobody can reset it, not even your clinic. Later, make a recovery code under Settings.</source>
        <translation>Escolha uma frase secreta. Ela tranca o diário neste celular. Ninguém pode trocá-la, nem a sua clínica. Mais tarde, crie um código de recuperação em Ajustes.</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="55"/>
        <source>Recovery code from your paper</source>
        <translation>Código de recuperação do seu papel</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>A new passphrase</source>
        <translation>Uma nova frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="62"/>
        <source>Passphrase</source>
        <translation>Frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="72"/>
        <source>The same once more</source>
        <translation>A mesma mais uma vez</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I know my passphrase</source>
        <translation>Eu sei a minha frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="82"/>
        <source>I lost my passphrase</source>
        <translation>Perdi a minha frase secreta</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="98"/>
        <source>What leaves this phone</source>
        <translation>O que sai deste celular</translation>
    </message>
    <message>
        <location filename="../app/diary/LockPage.qml" line="109"/>
        <source>If you are worried, do not look for the passphrase. Touch “I need help”.</source>
        <translation>Se algo preocupa você, não procure a frase secreta. Toque em “Preciso de ajuda”.</translation>
    </message>
    <message>
        <source>Draw one for me</source>
        <translation>Sortear uma para mim</translation>
    </message>
    <message>
        <source>Letters and digits by chance, for you to keep on paper</source>
        <translation>Letras e algarismos ao acaso, para guardar no papel</translation>
    </message>
    <message>
            <source>I lost both</source>
            <translation>Perdi os dois</translation>
        </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Nada foi gravado ainda.</translation>
    </message>
    <message>
        <source>It is on paper</source>
        <translation>Está no papel</translation>
    </message>
    </context>
    <context>
        <name>Main</name>
    <message>
        <location filename="../app/diary/Main.qml" line="20"/>
        <source>Ebbline diary</source>
        <translation>Diário Ebbline</translation>
    </message>
    <message>
        <source>Not used for a while. The diary locks in half a minute. What you wrote is kept.</source>
        <translation>Sem uso há algum tempo. O diário se tranca em meio minuto. O que você escreveu fica guardado.</translation>
    </message>
    </context>
    <context>
        <name>MinePage</name>
    <message>
        <location filename="../app/diary/MinePage.qml" line="18"/>
        <source>Where to put your data</source>
        <translation>Onde pôr os seus dados</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="22"/>
        <source>What leaves this phone</source>
        <translation>O que sai deste celular</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="30"/>
        <source>Take it along</source>
        <translation>Levar junto</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="40"/>
        <source>Save my data to a folder</source>
        <translation>Salvar os meus dados em uma pasta</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="51"/>
        <source>Delete the diary</source>
        <translation>Apagar o diário</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="57"/>
        <source>This takes the diary off this phone. The clinic keeps what it has: ask the clinic if you want that gone too. No reminder and no warning comes after it.</source>
        <translation>Isto tira o diário deste celular. A clínica guarda o que já tem: pergunte a ela se quiser apagar isso também. Depois não vem nenhum lembrete nem aviso.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="63"/>
        <source>Delete the diary …</source>
        <translation>Apagar o diário …</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="85"/>
        <source>Keep it</source>
        <translation>Manter</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="92"/>
        <source>Delete it now. There is no way back.</source>
        <translation>Apagar agora. Não tem volta.</translation>
    </message>
    <message>
        <location filename="../app/diary/MinePage.qml" line="36"/>
        <source>All that you wrote, as a page to print (PDF), as tables (CSV) and for other health programs (FHIR), and your photographs. It works without a network.</source>
        <translation>Tudo o que você escreveu, como página para imprimir (PDF), como tabelas (CSV) e para outros programas de saúde (FHIR), e as suas fotos. Funciona sem rede.</translation>
    </message>
    <message>
        <source>Your passphrase, to save it all</source>
        <translation>A sua frase secreta, para salvar tudo</translation>
    </message>
    <message>
        <source>Your passphrase, to delete it all</source>
        <translation>A sua frase secreta, para apagar tudo</translation>
    </message>
    </context>
    <context>
        <name>MomentLine</name>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="26"/>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="34"/>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>Another time</source>
        <translation>Outra hora</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="43"/>
        <source>It was earlier</source>
        <translation>Foi antes</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="44"/>
        <source>Sets the day and time this is about</source>
        <translation>Define o dia e a hora de que se trata</translation>
    </message>
    <message>
        <location filename="../app/diary/MomentLine.qml" line="50"/>
        <source>No, it is about now</source>
        <translation>Não, é sobre agora</translation>
    </message>
    </context>
    <context>
        <name>NotesPage</name>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="17"/>
        <source>Your note</source>
        <translation>O seu recado</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="25"/>
        <source>Send when there is a network</source>
        <translation>Enviar quando houver rede</translation>
    </message>
    <message>
        <location filename="../app/diary/NotesPage.qml" line="33"/>
        <source>The clinic may read this only on the next working day. If it is urgent, call.</source>
        <translation>A clínica talvez só leia isto no próximo dia útil. Se for urgente, ligue.</translation>
    </message>
    </context>
    <context>
        <name>NoticeLine</name>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="49"/>
        <source>Correct it</source>
        <translation>Corrigir</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticeLine.qml" line="53"/>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
    </context>
    <context>
        <name>NoticesPage</name>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="14"/>
        <source>Version %1</source>
        <translation>Versão %1</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="19"/>
        <source>The diary is made with the work of others. Here you see what it uses, and who made that. The texts of the licences are in English.</source>
        <translation>O diário é feito com o trabalho de outras pessoas. Aqui você vê o que ele usa e quem fez isso. Os textos das licenças estão em inglês.</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="24"/>
        <source>The parts</source>
        <translation>As partes</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="25"/>
        <source>The licences</source>
        <translation>As licenças</translation>
    </message>
    <message>
        <location filename="../app/diary/NoticesPage.qml" line="26"/>
        <source>Shows the text</source>
        <translation>Mostra o texto</translation>
    </message>
    </context>
    <context>
        <name>RemindersPage</name>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="18"/>
        <source>Where to put the calendar file</source>
        <translation>Onde pôr o arquivo de calendário</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="21"/>
        <source>Calendar (*.ics)</source>
        <translation>Calendário (*.ics)</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="31"/>
        <source>Ring for reminders</source>
        <translation>Tocar para os lembretes</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="38"/>
        <source>Others may see your screen. So it only says that there is something for you, never what.</source>
        <translation>Outras pessoas podem ver a sua tela. Por isso ela só diz que há algo para você, nunca o quê.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="44"/>
        <source>Ring once to try it</source>
        <translation>Tocar uma vez para testar</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="55"/>
        <source>Quiet at night</source>
        <translation>Silêncio à noite</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="62"/>
        <source>Quiet from</source>
        <translation>Silêncio das</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="70"/>
        <source>until</source>
        <translation>até</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="78"/>
        <source>What falls into this time comes when it ends. What is for the evening comes just before it begins.</source>
        <translation>O que cai nesse tempo chega quando ele acaba. O que é para a noite chega pouco antes de ele começar.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="83"/>
        <source>In your calendar too</source>
        <translation>Também no seu calendário</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="88"/>
        <source>A file for your calendar holds the times only. It says “Reminder from your diary” at each. Many calendars copy what they hold to a server.</source>
        <translation>Um arquivo para o seu calendário guarda só as horas. Em cada uma está “Lembrete do seu diário”. Muitos calendários copiam o que guardam para um servidor.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>When your plan or your visit changes, make the file again. What your calendar took in before stays there until you delete it.</source>
        <translation>Se o seu plano ou a sua consulta mudar, faça o arquivo de novo. O que o seu calendário já recebeu fica lá até você apagar.</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="93"/>
        <source>Make a calendar file</source>
        <translation>Criar um arquivo de calendário</translation>
    </message>
    <message>
        <location filename="../app/diary/RemindersPage.qml" line="49"/>
        <source>Let reminders ring on time</source>
        <translation>Deixar os lembretes tocarem na hora</translation>
    </message>
    </context>
    <context>
        <name>RestStep</name>
    <message>
        <location filename="../app/diary/RestStep.qml" line="16"/>
        <source>Temperature, if you measured it</source>
        <translation>Temperatura, se você mediu</translation>
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
        <translation>Com as suas palavras, se quiser</translation>
    </message>
    <message>
        <location filename="../app/diary/RestStep.qml" line="44"/>
        <source>Also ask about twinges and numbness</source>
        <translation>Perguntar também sobre pontadas e dormência</translation>
    </message>
    <message>
        <source>Throw this entry away …</source>
        <translation>Jogar fora esta anotação …</translation>
    </message>
    <message>
        <source>Asks first</source>
        <translation>Pergunta antes</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>Não, manter</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Sim, jogar fora</translation>
    </message>
    </context>
    <context>
        <name>SettingsPage</name>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="15"/>
        <source>Reminders</source>
        <translation>Lembretes</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="21"/>
        <source>The lock</source>
        <translation>A tranca</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="22"/>
        <source>Passphrase and recovery code</source>
        <translation>Frase secreta e código de recuperação</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="27"/>
        <source>My data</source>
        <translation>Os meus dados</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="28"/>
        <source>What leaves this phone. Take it along. Delete it.</source>
        <translation>O que sai deste celular, levar junto, apagar</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="33"/>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="40"/>
        <source>Text size</source>
        <translation>Tamanho do texto</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="41"/>
        <source>Very large</source>
        <translation>Muito grande</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="47"/>
        <source>Look</source>
        <translation>Aparência</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="48"/>
        <source>High contrast</source>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="54"/>
        <source>Temperature in</source>
        <translation>Temperatura em</translation>
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
        <translation>Menos movimento</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="67"/>
        <source>Send and fetch now</source>
        <translation>Enviar e buscar agora</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="72"/>
        <source>Lock the diary</source>
        <translation>Trancar o diário</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>Ebbline is free software under the GPL 3. It is not a certified medical device. It does not replace your clinic or an emergency service.</source>
        <translation>Ebbline é software livre sob a GPL 3. Não é um produto médico certificado. Não substitui a sua clínica nem um serviço de emergência.</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="77"/>
        <source>About Ebbline</source>
        <translation>Sobre o Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/SettingsPage.qml" line="78"/>
        <source>Version, makers and licences</source>
        <translation>Versão, autores e licenças</translation>
    </message>
    <message>
        <source>Locks if not touched for (minutes)</source>
        <translation>Tranca sem toque depois de (minutos)</translation>
    </message>
    </context>
    <context>
        <name>SignsStep</name>
    <message>
        <source>Touch each one that is true now. The button to go on stands after the last one.</source>
        <translation>Toque em tudo o que é verdade agora. O botão para seguir está depois da última linha.</translation>
    </message>
    </context>
    <context>
        <name>TodayPage</name>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="49"/>
        <source>Now</source>
        <translation>Agora</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="63"/>
        <source>Your course</source>
        <translation>A sua evolução</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="90"/>
        <source>Next</source>
        <translation>A seguir</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="103"/>
        <source>To keep today</source>
        <translation>Para cumprir hoje</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>What I wrote</source>
        <translation>O que eu escrevi</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="125"/>
        <source>Notes with the clinic</source>
        <translation>Recados com a clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="130"/>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Answered today</source>
        <translation>Respondido hoje</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Para quem ligar</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>More curves</source>
        <translation>Mais curvas</translation>
    </message>
    <message>
        <location filename="../app/diary/TodayPage.qml" line="120"/>
        <source>Fewer curves</source>
        <translation>Menos curvas</translation>
    </message>
    </context>
    <context>
        <name>TopLine</name>
    <message>
        <location filename="../app/diary/TopLine.qml" line="29"/>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="60"/>
        <source>I need help</source>
        <translation>Preciso de ajuda</translation>
    </message>
    <message>
        <location filename="../app/diary/TopLine.qml" line="61"/>
        <source>Shows whom to call</source>
        <translation>Mostra para quem ligar</translation>
    </message>
    </context>
    <context>
        <name>WarningPage</name>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="17"/>
        <source>I have read this</source>
        <translation>Eu li isto</translation>
    </message>
    <message>
        <location filename="../app/diary/WarningPage.qml" line="53"/>
        <source>Why</source>
        <translation>Por quê</translation>
    </message>
    <message>
        <source>What this can mean</source>
        <translation>O que isso pode significar</translation>
    </message>
    </context>
    <context>
        <name>ebbline::app::DiaryProgram</name>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="58"/>
        <source>Your diary is no longer on this device.</source>
        <translation>O seu diário não está mais neste aparelho.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="111"/>
        <source>Ebbline diary</source>
        <translation>Diário Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="112"/>
        <source>Join your clinic</source>
        <translation>Entrar na sua clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>Correct this entry</source>
        <translation>Corrigir esta anotação</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="114"/>
        <source>How is it?</source>
        <translation>Como está?</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="116"/>
        <source>Whom to call</source>
        <translation>Para quem ligar</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="117"/>
        <source>What I wrote</source>
        <translation>O que eu escrevi</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="118"/>
        <source>Notes with the clinic</source>
        <translation>Recados com a clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="119"/>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Reminders</source>
        <translation>Lembretes</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="121"/>
        <source>The lock</source>
        <translation>A tranca</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="122"/>
        <source>My data</source>
        <translation>Os meus dados</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="288"/>
        <source>Saved on this phone.</source>
        <translation>Salvo neste celular.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="336"/>
        <source>A message between you and the clinic is missing. Call the clinic, please.</source>
        <translation>Falta uma mensagem entre você e a clínica. Ligue para a clínica, por favor.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="338"/>
        <source>Done. All is sent and fetched.</source>
        <translation>Pronto. Tudo foi enviado e buscado.</translation>
    </message>
    <message>
        <source>Something that you wrote still waits on this phone. If it is urgent, call.</source>
        <translation>Algo que você escreveu ainda espera neste telefone. Se for urgente, ligue.</translation>
    </message>
    <message>
        <source>You began this entry before. Save it or throw it away. Then add the earlier moment.</source>
        <translation>Você começou este registro antes. Salve ou descarte. Depois acrescente o momento anterior.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="355"/>
        <source>This device can not reach a clinic.</source>
        <translation>Este aparelho não alcança nenhuma clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="123"/>
        <source>About Ebbline</source>
        <translation>Sobre o Ebbline</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_program.cpp" line="120"/>
        <source>Photographs</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <location filename="../app/diary/diary_photos.cpp" line="13"/>
        <source>Taken back. It is no longer on this phone.</source>
        <translation>Retirada. Ela não está mais neste celular.</translation>
    </message>
    <message>
        <source>%1. What to do stands on the day&apos;s page.</source>
        <translation>%1. O que fazer está na página do dia.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryBoard</name>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="111"/>
        <source>%1 of %2</source>
        <extracomment>"2 of 7": the place of a question among all</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="123"/>
        <source>Is any of this true?</source>
        <translation>Algo disto é verdade?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="124"/>
        <source>Anything else?</source>
        <translation>Mais alguma coisa?</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="131"/>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="147"/>
        <source>Last time %1</source>
        <translation>Da última vez %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Next</source>
        <translation>A seguir</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="158"/>
        <source>Skip this one</source>
        <translation>Pular esta</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>None of these</source>
        <translation>Nada disto</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="171"/>
        <source>Only what I ticked</source>
        <translation>Só o que eu marquei</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 86 to 113 °F.</source>
        <translation>Digite um valor de 86 a 113 °F.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_board.cpp" line="287"/>
        <source>Please type a value from 30 to 45 °C.</source>
        <translation>Digite um valor de 30 a 45 °C.</translation>
    </message>
    <message>
        <source>You told the diary:</source>
        <translation>Você disse ao diário:</translation>
    </message>
    <message>
        <source>If that is true: %1.</source>
        <translation>Se for verdade: %1.</translation>
    </message>
    <message>
        <source>Throw away all that you typed here? There is no way back.</source>
        <translation>Jogar fora tudo o que você digitou aqui? Não há volta.</translation>
    </message>
    <message>
        <source>%1 looks like °F. Choose °F, or type a value from 30 to 45 °C.</source>
        <translation>%1 parece estar em °F. Escolha °F ou digite um valor de 30 a 45 °C.</translation>
    </message>
    <message>
        <source>%1 looks like °C. Choose °C, or type a value from 86 to 113 °F.</source>
        <translation>%1 parece estar em °C. Escolha °C ou digite um valor de 86 a 113 °F.</translation>
    </message>
    <message>
        <source>Please look at the temperature. Then save again.</source>
        <translation>Veja a temperatura. Depois salve de novo.</translation>
    </message>
    <message>
        <source>The note is full. What comes after this is not kept.</source>
        <translation>A nota está cheia. O que vier depois não é guardado.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::EntryMoment</name>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about %1.</source>
        <translation>É sobre %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/entry_moment.cpp" line="28"/>
        <source>This is about now.</source>
        <translation>É sobre agora.</translation>
    </message>
    <message>
        <source>You began this %1. Is what you typed about then, or about now?</source>
        <translation>Você começou isto %1. O que você escreveu é de então ou de agora?</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::HistoryBoard</name>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="16"/>
        <source>Opened by %1, %2</source>
        <translation>Aberto por %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="18"/>
        <source>On the clinic's computer since %1</source>
        <translation>No computador da clínica desde %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="21"/>
        <source>Saved on this phone</source>
        <translation>Salvo neste celular</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="47"/>
        <source>Written later, %1.</source>
        <translation>Escrito mais tarde, %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="50"/>
        <source>Corrected %1.</source>
        <translation>Corrigido %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="62"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="73"/>
        <source>As written %1:</source>
        <translation>Como foi escrito %1:</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="75"/>
        <source>It was about %1.</source>
        <translation>Era sobre %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="97"/>
        <source>You, %1</source>
        <translation>Você, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="100"/>
        <source>Not read by the clinic yet</source>
        <translation>A clínica ainda não leu</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="102"/>
        <source>Read by the clinic, %1</source>
        <translation>Lido pela clínica, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/history_board.cpp" line="104"/>
        <source>Seen by you, %1</source>
        <translation>Visto por você, %1</translation>
    </message>
    <message>
        <source>%1. %2 opened what you wrote before, %3. Nobody has opened your correction yet.</source>
            <comment>state, person, time</comment>
        <translation>%1. %2 abriu o que você tinha escrito antes, %3. Ninguém abriu ainda a sua correção.</translation>
    </message>
    <message>
        <source>This note is too long to send. Send a part of it, and the rest as a second note.</source>
        <translation>Este recado é longo demais para enviar. Envie uma parte, e o resto em um segundo recado.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::JoinBoard</name>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="16"/>
        <source>No network right now. The diary keeps trying.</source>
        <translation>Sem rede agora. O diário continua tentando.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="57"/>
        <source>There is no code in this picture. Try another, or type the code.</source>
        <translation>Não há código nesta imagem. Tente outra ou digite o código.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="75"/>
        <source>A typed code also needs the address under it.</source>
        <translation>Um código digitado também precisa do endereço embaixo dele.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/join_board.cpp" line="89"/>
        <source>This device can not reach a clinic.</source>
        <translation>Este aparelho não alcança nenhuma clínica.</translation>
    </message>
    <message>
        <source>This is not a code of a clinic. Use the code that your clinic shows on its screen.</source>
        <translation>Este não é um código de uma clínica. Use o código que a sua clínica mostra na tela dela.</translation>
    </message>
    <message>
        <source>This picture does not open. Choose another, or type the code.</source>
        <translation>Não é possível abrir esta imagem. Escolha outra ou digite o código.</translation>
    </message>
    <message>
        <source>The diary may not use the camera. Choose a picture of the code, or type it. You can allow the camera in the phone&apos;s settings.</source>
        <translation>O diário não tem permissão para usar a câmera. Escolha uma imagem do código ou digite-o. Você pode permitir a câmera nos ajustes do telefone.</translation>
    </message>
    <message>
        <source>The camera does not work right now. It may be in use. Choose a picture of the code, or type it.</source>
        <translation>A câmera não funciona agora. Talvez esteja em uso. Escolha uma imagem do código ou digite-o.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture of the code, or type it.</source>
        <translation>Este aparelho não tem câmera. Escolha uma imagem do código ou digite-o.</translation>
    </message>
    <message>
        <source>The clinic&apos;s address does not answer. Check that you typed the address under the code right, and that this phone has a network. The diary keeps trying.</source>
        <translation>O endereço da clínica não responde. Veja se digitou certo o endereço que está abaixo do código e se este celular tem rede. O diário continua tentando.</translation>
    </message>
    <message>
        <source>This diary holds a treatment, and it can hold just one. Open My data in the settings. Save your data there and delete the diary. Then join again.</source>
        <translation>Este diário já tem um tratamento e só pode ter um. Abra “Os meus dados” nos ajustes. Salve ali os seus dados e apague o diário. Depois entre de novo.</translation>
    </message>
    <message>
        <source>Nothing was joined. Ask your clinic for a code when you are there.</source>
        <translation>Nada foi ligado. Peça um código à sua clínica quando estiver lá.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::KeysBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="30"/>
        <source>You have a recovery code. It is not stored here, only on your paper.</source>
        <translation>Você tem um código de recuperação. Ele não está guardado aqui, só no seu papel.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="31"/>
        <source>You have no recovery code yet.</source>
        <translation>Você ainda não tem um código de recuperação.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a new code</source>
        <translation>Criar um novo código</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="36"/>
        <source>Make a code</source>
        <translation>Criar um código</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="44"/>
        <source>These two are not the same.</source>
        <translation>As duas não são iguais.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="48"/>
        <source>Done. From now on only the new passphrase opens the diary.</source>
        <translation>Pronto. A partir de agora só a nova frase secreta abre o diário.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="69"/>
        <source>Good. Keep the paper where only you find it.</source>
        <translation>Bom. Guarde o papel onde só você o ache.</translation>
    </message>
    <message>
        <source>The code is not shown any more. If it is not on your paper, make a new one.</source>
        <translation>O código não é mais mostrado. Se não está no seu papel, faça um novo.</translation>
    </message>
    <message>
        <source>Your passphrase needs this computer too: its keyring, which your login opens, keeps the other half of the key. If the half is lost, or the diary is moved, only the recovery code opens the diary.</source>
        <translation>A sua frase secreta precisa também deste computador: o chaveiro dele, que o seu login abre, guarda a outra metade da chave. Se essa metade se perder, ou se o diário mudar de lugar, só o código de recuperação abre o diário.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="38"/>
        <source>Your passphrase needs this phone too: the phone keeps the other half of the key. If the phone loses it, only the recovery code opens the diary.</source>
        <translation>A sua frase secreta precisa também deste celular: ele guarda a outra metade da chave. Se o celular a perder, só o código de recuperação abre o diário.</translation>
    </message>
    <message>
        <source>Your newest code was not read back from your paper. If it is not there, make a new one. If this device loses its half of the key, only that code opens the diary.</source>
        <translation>O seu código mais novo não foi lido do seu papel. Se não está lá, faça um novo. Se este aparelho perder a metade dele da chave, só esse código abre o diário.</translation>
    </message>
    <message>
        <source>This device could keep half of your key. It waits until a code was read back from your paper. For that, make a new code.</source>
        <translation>Este aparelho poderia guardar metade da sua chave. Ele espera até que um código tenha sido lido do seu papel. Para isso, faça um código novo.</translation>
    </message>
    <message>
        <source>From your paper: group %1 of %2</source>
        <translation>Do seu papel: grupo %1 de %2</translation>
    </message>
    <message>
        <source>That is not this group. Look at your paper again. If it is not there, show the code once more.</source>
        <translation>Não é esse grupo. Olhe o seu papel de novo. Se não estiver lá, mostre o código mais uma vez.</translation>
    </message>
    <message>
        <source>The recovery code of my diary</source>
        <translation>O código de recuperação do meu diário</translation>
    </message>
    <message>
        <source>It opens the diary with a new passphrase. Keep it where only you find it.</source>
        <translation>Ele abre o diário com uma nova frase secreta. Guarde-o onde só você o ache.</translation>
    </message>
    <message>
        <source>Done. Print the page, then delete the file: whoever finds it can open your diary.</source>
        <translation>Pronto. Imprima a página e depois apague o arquivo: quem o achar pode abrir o seu diário.</translation>
    </message>
    <message>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Não foi possível gravar o arquivo ali. Escolha outro lugar.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::LockBoard</name>
    <message>
        <location filename="../app/diary/model/keys_board.cpp" line="25"/>
        <source>Use at least %1 letters. Four or five words are easy to keep in mind.</source>
        <translation>Use pelo menos %1 letras. Quatro ou cinco palavras são fáceis de lembrar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="29"/>
        <source>These two are not the same.</source>
        <translation>As duas não são iguais.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="51"/>
        <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
        <translation>Isto não é um código de recuperação. Ele tem 36 letras e números em nove grupos. Confira cada um.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="60"/>
        <source>This code does not open the diary. Only the newest one does.</source>
        <translation>Este código não abre o diário. Só o mais novo abre.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, use your recovery code.</source>
        <translation>Este computador não entrega a sua metade da chave. Se ele pedir a senha do chaveiro, digite-a primeiro. Depois tente de novo. Se isso não ajudar, use o seu código de recuperação.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="38"/>
        <source>This phone does not give its half of the key. Try again. If that does not help, use your recovery code.</source>
        <translation>Este celular não entrega a sua metade da chave. Tente de novo. Se isso não ajudar, use o seu código de recuperação.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/lock_board.cpp" line="85"/>
        <source>Try again first. Without passphrase and code this diary stays closed. You can join anew on another device, or on this one once the data of this app is deleted: your clinic shows a new code. Taking the app off may not delete its data. The entries you sent come back. Photographs stay with your clinic. What was not sent is lost.</source>
        <translation>Primeiro tente mais uma vez. Sem a frase secreta e sem o código este diário fica fechado. Você pode se conectar outra vez em outro aparelho, ou neste depois de apagar os dados deste aplicativo: a sua clínica mostra um novo código. Tirar o aplicativo talvez não apague os seus dados. As anotações que você enviou voltam. As fotos ficam na sua clínica. O que não foi enviado se perde.</translation>
    </message>
    <message>
        <source>One moment. The diary finds out how strong the lock can be on this phone.</source>
        <translation>Um momento. O diário verifica quão forte a trava pode ser neste celular.</translation>
    </message>
    <message>
        <source>From your paper: group %1 and group %2</source>
        <translation>Do seu papel: grupo %1 e grupo %2</translation>
    </message>
    <message>
        <source>That is not what was drawn. Look at your paper again. If it is not there, show it once more.</source>
        <translation>Isso não confere. Olhe o seu papel de novo. Se não estiver lá, mostre mais uma vez.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::MineBoard</name>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="41"/>
        <source>%n entry/entries are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n anotação está só neste celular e seria perdida.</numerusform>
            <numerusform>%n anotações estão só neste celular e seriam perdidas.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="42"/>
        <source>All your entries are on the clinic's computer too.</source>
        <translation>Todas as suas anotações estão também no computador da clínica.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="60"/>
        <source>Done. It is in the folder “%1”. Anyone who opens it can read it.</source>
        <translation>Pronto. Está na pasta “%1”. Quem abrir pode ler.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="61"/>
        <source>It could not be written there. Choose another place.</source>
        <translation>Não foi possível gravar ali. Escolha outro lugar.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/mine_board.cpp" line="44"/>
        <source>%n photograph(s) are only on this phone and would be lost.</source>
        <translation>
            <numerusform>%n foto está só neste celular e seria perdida.</numerusform>
            <numerusform>%n fotos estão só neste celular e seriam perdidas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Type your passphrase first.</source>
        <translation>Digite primeiro a sua frase secreta.</translation>
    </message>
    <message>
        <source>Type your passphrase once more.</source>
        <translation>Digite a sua frase secreta mais uma vez.</translation>
    </message>
    <message>
        <source>That is not your passphrase. Nothing was saved or deleted.</source>
        <translation>Essa não é a sua frase secreta. Nada foi salvo nem apagado.</translation>
    </message>
    <message>
        <source>This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Este computador não entrega a sua metade da chave. Se ele pedir a senha do chaveiro, digite-a primeiro. Depois tente de novo. Se isso não ajudar, tranque o diário e use o seu código de recuperação.</translation>
    </message>
    <message>
        <source>This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.</source>
        <translation>Este celular não entrega a sua metade da chave. Tente de novo. Se isso não ajudar, tranque o diário e use o seu código de recuperação.</translation>
    </message>
    <message>
            <source>Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.</source>
            <translation>Nem tudo pôde ser gravado. Uma parte está na pasta “%1”. Quem a abrir pode ler: apague a pasta.</translation>
        </message>
    <message>
        <source>Something else that you wrote still waits on this phone and would be lost.</source>
        <translation>Outra coisa que você escreveu ainda espera neste celular e se perderia.</translation>
    </message>
    <message>
        <source>A note or an answer that still waits on this phone would be lost too.</source>
        <translation>Um recado ou uma resposta que ainda espera neste celular também se perderia.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/mine_board.cpp" line="57"/>
        <source>Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.</source>
        <translation>Fez outro tratamento? Este diário tem um só tratamento. Salve os seus dados, apague o diário e depois entre de novo.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::ReminderBoard</name>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="32"/>
        <source>It did not ring. This device refused it.</source>
        <translation>Não tocou. Este aparelho recusou.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Diary</source>
        <translation>Diário</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>Reminder</source>
        <translation>Lembrete</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="46"/>
        <source>There is something for you.</source>
        <translation>Há algo para você.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Please open your diary, so that it can go on.</source>
        <translation>Abra o seu diário, por favor, para que ele continue.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="47"/>
        <source>In 30 minutes</source>
        <translation>Em 30 minutos</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="73"/>
        <source>This device does not take all reminders. Look into your diary each day.</source>
        <translation>Este aparelho não aceita todos os lembretes. Olhe o seu diário todo dia.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="75"/>
        <source>Reminders ring. None is coming up.</source>
        <translation>Os lembretes tocam. Não vem nenhum.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="79"/>
        <source>Reminders ring. Next: %1.</source>
        <translation>Os lembretes tocam. O próximo: %1.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="80"/>
        <source>Reminders ring. Next: %1. Open the diary by %2, so that they go on.</source>
        <translation>Os lembretes tocam. O próximo: %1. Abra o diário até %2 para que continuem.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="88"/>
        <source>This device can not ring. What is due stands here.</source>
        <translation>Este aparelho não pode tocar. O que está pendente fica aqui.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="89"/>
        <source>Reminders do not ring. What is due stands here.</source>
        <translation>Os lembretes não tocam. O que está pendente fica aqui.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="92"/>
        <source>Reminders do not ring yet. What is due stands here.</source>
        <translation>Os lembretes ainda não tocam. O que está pendente fica aqui.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="108"/>
        <source>Look at the edge of your screen. It must say: “%1”</source>
        <translation>Olhe a borda da sua tela. Deve estar escrito: “%1”</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="174"/>
        <source>Reminder from your diary</source>
        <translation>Lembrete do seu diário</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="178"/>
        <source>No reminder is coming up.</source>
        <translation>Não vem nenhum lembrete.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="181"/>
        <source>The file could not be written there. Choose another place.</source>
        <translation>Não foi possível gravar o arquivo ali. Escolha outro lugar.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="183"/>
        <source>Done. Open the file with your calendar.</source>
        <translation>Pronto. Abra o arquivo com o seu calendário.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="97"/>
        <source>To save power, this phone may ring some minutes late.</source>
        <translation>Para poupar energia, este celular pode tocar com alguns minutos de atraso.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/reminder_board.cpp" line="104"/>
        <source>Reminders ring now. Try one before you leave the clinic.</source>
        <translation>Os lembretes já tocam. Teste um antes de sair da clínica.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::TodayBoard</name>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="29"/>
        <source>Follow-up visit: %1, %2</source>
        <translation>Consulta de retorno: %1, %2</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="41"/>
        <source>%1 %2 to %3</source>
        <extracomment>"Swelling 2 to 6": a symptom and its usual scores of 10</extracomment>
        <translation>%1 %2 a %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="44"/>
        <source>Usual today, of 10: %1.</source>
        <extracomment>%1 is a list such as "Swelling 2 to 6, Pain 1 to 5"</extracomment>
        <translation>O normal hoje, de 10: %1.</translation>
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
        <translation>Esta faixa é uma suposição por enquanto. Ela ainda não vem de casos da sua clínica.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="54"/>
        <source>This range comes from %n course(s) at your clinic.</source>
        <translation>
            <numerusform>Esta faixa vem de %n caso da sua clínica.</numerusform>
            <numerusform>Esta faixa vem de %n casos da sua clínica.</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="60"/>
        <source>Nothing is written down yet.</source>
        <translation>Nada foi escrito ainda.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="64"/>
        <source>Your last entry was opened by %1, %2.</source>
        <translation>A sua última anotação foi aberta por %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="67"/>
        <source>Your last entry is on the clinic's computer since %1. Nobody has opened it yet.</source>
        <translation>A sua última anotação está no computador da clínica desde %1. Ninguém abriu ainda.</translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="71"/>
        <source>%n entry/entries saved on this phone, not with the clinic yet. If it is urgent, call.</source>
        <translation>
            <numerusform>%n anotação está salva neste celular, ainda não na clínica. Se for urgente, ligue.</numerusform>
            <numerusform>%n anotações estão salvas neste celular, ainda não na clínica. Se for urgente, ligue.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/diary/model/today_board.cpp" line="82"/>
        <source>%n new note(s) from the clinic</source>
        <translation>
            <numerusform>%n novo recado da clínica</numerusform>
            <numerusform>%n novos recados da clínica</numerusform>
        </translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Go on with your entry</source>
        <translation>Continuar a anotação</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="131"/>
        <source>Write down how it is</source>
        <translation>Anotar como está</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="144"/>
        <source>Later, %1</source>
        <translation>Mais tarde, %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/today_board.cpp" line="157"/>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Your correction is on the clinic&apos;s computer since %1. Nobody has opened it yet. %2 opened what you wrote before, %3.</source>
        <translation>A sua correção está no computador da clínica desde %1. Ninguém abriu ainda. %2 abriu o que você tinha escrito antes, %3.</translation>
    </message>
    <message>
        <source>This phone holds an older copy of your diary. Some of what you wrote may be gone here. Call your clinic, please.</source>
        <translation>Este celular tem uma cópia antiga do seu diário. Pode faltar aqui algo do que você escreveu. Ligue para a sua clínica, por favor.</translation>
    </message>
    <message>
        <source>Two messages from the clinic do not fit together. Call your clinic before you act on one.</source>
        <translation>Duas mensagens da clínica não combinam. Ligue para a sua clínica antes de seguir uma delas.</translation>
    </message>
    <message>
        <source>A message from the clinic is missing here. Call your clinic, please.</source>
        <translation>Falta aqui uma mensagem da clínica. Ligue para a sua clínica, por favor.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic since %1.</source>
        <translation>Este celular não recebe nada da clínica desde %1.</translation>
    </message>
    <message>
        <source>This phone has heard nothing from the clinic yet.</source>
        <translation>Este celular ainda não recebeu nada da clínica.</translation>
    </message>
    <message>
        <source>As far as this phone knows, what you wrote is not with the clinic. It has waited since %1.</source>
        <translation>Pelo que este celular sabe, o que você escreveu não está na clínica. Espera desde %1.</translation>
    </message>
    <message>
        <source>If you are worried, call. Do not wait for an answer here.</source>
        <translation>Se algo preocupa você, ligue. Não espere uma resposta aqui.</translation>
    </message>
    <message>
        <source>That is more than %1 days. Call your clinic, please. Keep this phone and this program: what you wrote may be nowhere else.</source>
        <translation>São mais de %1 dias. Ligue para a sua clínica, por favor. Guarde este telefone e este programa: o que você escreveu talvez não esteja em nenhum outro lugar.</translation>
    </message>
    <message>
        <source>Your clinic needs a newer version of this app. Please update it. Until then, what you write may wait on this phone.</source>
        <translation>Sua clínica precisa de uma versão mais nova deste aplicativo. Atualize-o, por favor. Até lá, o que você escrever pode ficar esperando neste celular.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) that you wrote here did not get to the clinic. Show them there, please.</source>
        <translation>
            <numerusform>%n coisa que você escreveu aqui não chegou à clínica. Mostre-a lá, por favor.</numerusform>
            <numerusform>%n coisas que você escreveu aqui não chegaram à clínica. Mostre-as lá, por favor.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow-up visit: %1</source>
        <translation>Consulta de retorno: %1</translation>
    </message>
    <message>
        <source>You said: done.</source>
        <translation>Você disse: feito.</translation>
    </message>
    <message>
        <source>You said: not done.</source>
        <translation>Você disse: não feito.</translation>
    </message>
    <message>
        <source>This phone is no longer linked with the clinic. What you write here reaches nobody, and reminders do not ring here. Use your other phone. If there is none, call your clinic.</source>
        <translation>Este telefone não está mais ligado à clínica. O que você escreve aqui não chega a ninguém, e os lembretes não tocam aqui. Use o seu outro telefone. Se não houver outro, ligue para a sua clínica.</translation>
    </message>
    <message>
        <source>The server between is full. What you write does not fit in.</source>
        <translation>O servidor no meio está cheio. O que você escreve não cabe nele.</translation>
    </message>
    <message>
        <source>The server between does not know this phone any more.</source>
        <translation>O servidor no meio não conhece mais este celular.</translation>
    </message>
    <message>
        <source>The server between does not take what this phone sends.</source>
        <translation>O servidor no meio não aceita o que este celular envia.</translation>
    </message>
    <message>
        <source>It stays on this phone, and this phone tries again. Call your clinic, please.</source>
        <translation>Fica neste celular, e o celular tenta de novo. Ligue para a sua clínica, por favor.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 fast. Please set it: it rings your reminders.</source>
        <translation>O relógio deste celular está adiantado cerca de %1. Acerte-o, por favor: é por ele que tocam os seus lembretes.</translation>
    </message>
    <message>
        <source>The clock of this phone is about %1 slow. Please set it: it rings your reminders.</source>
        <translation>O relógio deste celular está atrasado cerca de %1. Acerte-o, por favor: é por ele que tocam os seus lembretes.</translation>
    </message>
    <message>
            <source>Your clinic moved the visit. Before, it was: %1</source>
            <translation>Sua clínica mudou a consulta. Antes era: %1</translation>
        </message>
    </context>
    <context>
        <name>ebbline::diaryapp::WarningBoard</name>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="41"/>
        <source>Whom to call</source>
        <translation>Para quem ligar</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="47"/>
        <source>If you are worried, call. You do not need a reason.</source>
        <translation>Se algo preocupa você, ligue. Não precisa de motivo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="69"/>
        <source>A call is faster than the diary: the clinic may not have seen your entry yet.</source>
        <translation>Ligar é mais rápido que o diário: talvez a clínica ainda não tenha visto a sua anotação.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 100.4 °F or more.</source>
        <translation>Você tem febre de 100,4 °F ou mais.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="86"/>
        <source>You have a fever of 38 °C or more.</source>
        <translation>Você tem febre de 38 °C ou mais.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="87"/>
        <source>Pain comes back.</source>
        <translation>A dor volta.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="99"/>
        <source>Emergency number</source>
        <translation>Número de emergência</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="102"/>
        <source>Your clinic</source>
        <translation>A sua clínica</translation>
    </message>
    <message>
        <location filename="../app/diary/model/warning_board.cpp" line="104"/>
        <source>If nobody answers</source>
        <translation>Se ninguém atender</translation>
    </message>
    <message>
        <source>Your entry is not saved, and not with the clinic.</source>
        <translation>A sua anotação não foi salva nem está com a clínica.</translation>
    </message>
    <message>
        <source>Back to your entry, to save it again</source>
        <translation>Voltar à sua anotação, para salvar de novo</translation>
    </message>
    <message>
        <source>The warning stays in your diary</source>
        <translation>O aviso fica no seu diário</translation>
    </message>
    <message>
        <source>You are in another place? Call the emergency number of that place.</source>
        <translation>Está em outro lugar? Ligue para o número de emergência desse lugar.</translation>
    </message>
    <message>
        <source>This phone could not note that you read the warning. It comes again when you open the diary next.</source>
        <translation>Este telefone não conseguiu anotar que você leu o aviso. Ele volta quando você abrir o diário da próxima vez.</translation>
    </message>
    <message>
        <source>Pain is 7 of 10 or more.</source>
        <translation>A dor é 7 de 10 ou mais.</translation>
    </message>
    <message>
        <source>In the first two days one side is more full and hurts more.</source>
        <translation>Nos dois primeiros dias um lado está mais cheio e dói mais.</translation>
    </message>
    <message>
        <source>Two of these at one place: new colour, warm, firm, more sore.</source>
        <translation>Duas destas coisas num lugar: outra cor, quente, firme, mais dolorido.</translation>
    </message>
    <message>
        <source>A thread shows, and the skin there is warm, sore or has a new colour.</source>
        <translation>Um fio aparece, e a pele ali está quente, dolorida ou de outra cor.</translation>
    </message>
    <message>
        <source>Your entry is not saved yet, and not with the clinic. You can go on with it after the call.</source>
        <translation>A sua anotação ainda não foi salva nem está com a clínica. Você pode continuar depois de ligar.</translation>
    </message>
    </context>
    <context>
        <name>DiaryPhotos</name>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="21"/>
        <source>On the clinic's computer since %1</source>
        <translation>No computador da clínica desde %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="22"/>
        <source>Saved on this phone</source>
        <translation>Salva neste celular</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="23"/>
        <source>Not on this phone. On the clinic's computer since %1</source>
        <translation>Não está neste celular. No computador da clínica desde %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="25"/>
        <source>Not on this phone. Your old phone may have it.</source>
        <translation>Não está neste celular. Pode estar no antigo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="33"/>
        <source>Your left side</source>
        <translation>O seu lado esquerdo</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="34"/>
        <source>Your right side</source>
        <translation>O seu lado direito</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="37"/>
        <source>From the front</source>
        <translation>De frente</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="45"/>
        <source>%1. %2, %3</source>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="55"/>
        <source>Photographs: saved on this phone</source>
        <translation>Fotos: salvas neste celular</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_lines.cpp" line="57"/>
        <source>Photographs: %1 of %2 on the clinic's computer</source>
        <translation>Fotos: %1 de %2 no computador da clínica</translation>
    </message>
    </context>
    <context>
        <name>PhotoCameraBox</name>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="23"/>
        <source>Camera, with a drawing of a face to fit yours into</source>
        <translation>Câmera, com o desenho de um rosto para encaixar o seu</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoCameraBox.qml" line="58"/>
        <source>Use the other camera</source>
        <translation>Usar a outra câmera</translation>
    </message>
    </context>
    <context>
        <name>PhotoPage</name>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="24"/>
        <source>Keep it</source>
        <translation>Manter</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="32"/>
        <source>This one is not kept</source>
        <translation>Esta não fica salva</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="31"/>
        <source>Take another</source>
        <translation>Tirar outra</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="47"/>
        <source>Choose a picture</source>
        <translation>Escolher uma imagem</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="54"/>
        <source>Done</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="55"/>
        <source>Back to what you wrote</source>
        <translation>Volta ao que você escreveu</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="64"/>
        <source>A photograph of you</source>
        <translation>Uma foto sua</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="65"/>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Imagens (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="85"/>
        <source>Which side</source>
        <translation>Que lado</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="113"/>
        <source>Drawing of a face: %1</source>
        <translation>Desenho de um rosto: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="123"/>
        <source>This device has no camera. Choose a picture that you took just now.</source>
        <translation>Este aparelho não tem câmera. Escolha uma imagem que você acabou de tirar.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="128"/>
        <source>Each time: the same light, the same distance, hair off your face. Take both sides.</source>
        <translation>Cada vez: a mesma luz, a mesma distância, cabelo fora do rosto. Tire dos dois lados.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="133"/>
        <source>Photographs are up to you. Do not wait for one if you are worried: call.</source>
        <translation>As fotos são escolha sua. Se algo preocupa você, não espere por uma: ligue.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="139"/>
        <source>Getting the picture ready …</source>
        <translation>Preparando a imagem …</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="155"/>
        <source>The photograph: %1</source>
        <translation>A foto: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="165"/>
        <source>Is it the right side? Is it sharp? Is it from now? If not, take another.</source>
        <translation>É o lado certo? Está nítida? É de agora? Se não, tire outra.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="170"/>
        <source>Place and time of the file and the name of your device do not go along. Your face does.</source>
        <translation>O lugar e a hora do arquivo e o nome do seu aparelho não vão junto. O seu rosto vai.</translation>
    </message>
    <message>
        <location filename="../app/diary/PhotoPage.qml" line="39"/>
        <source>Take the photograph</source>
        <translation>Tirar a foto</translation>
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
        <translation>A foto: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="37"/>
        <source>That does not say that somebody looked at it. If you are worried, call.</source>
        <translation>Isso não diz que alguém olhou. Se algo preocupa você, ligue.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="43"/>
        <source>It goes from this phone now. It goes from the server and from the clinic's computers once they next sync. What somebody copied or printed stays.</source>
        <translation>Ela sai agora deste celular. Sai do servidor e dos computadores da clínica na próxima vez que eles trocarem dados. O que alguém copiou ou imprimiu fica.</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="59"/>
        <source>Take it back …</source>
        <translation>Retirar …</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="60"/>
        <source>Says first what that does</source>
        <translation>Antes diz o que isso faz</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="67"/>
        <source>Leave it</source>
        <translation>Deixar</translation>
    </message>
    <message>
        <location filename="../app/diary/PicturePage.qml" line="74"/>
        <source>Take it back now. There is no way back.</source>
        <translation>Retirar agora. Não tem volta.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoBoard</name>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="24"/>
        <source>This picture does not open. Choose another.</source>
        <translation>Esta imagem não abre. Escolha outra.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="25"/>
        <source>This picture is too large. Choose a smaller one.</source>
        <translation>Esta imagem é grande demais. Escolha uma menor.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="26"/>
        <source>The diary reads JPEG and PNG pictures. Choose one of these.</source>
        <translation>O diário lê imagens JPEG e PNG. Escolha uma dessas.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="27"/>
        <source>This picture is too small. Choose a larger one.</source>
        <translation>Esta imagem é pequena demais. Escolha uma maior.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="28"/>
        <source>This picture is damaged. Choose another, or take a new one.</source>
        <translation>Esta imagem está danificada. Escolha outra ou tire uma nova.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="96"/>
        <source>Turn your head to your right. The camera sees your left cheek.</source>
        <translation>Vire a cabeça para a sua direita. A câmera vê a sua bochecha esquerda.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="97"/>
        <source>Turn your head to your left. The camera sees your right cheek.</source>
        <translation>Vire a cabeça para a sua esquerda. A câmera vê a sua bochecha direita.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="100"/>
        <source>Look straight at the camera, with your face at rest.</source>
        <translation>Olhe de frente para a câmera, com o rosto relaxado.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="109"/>
        <source>It will stand under %1, %2.</source>
        <translation>Ela fica em %1, %2.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="118"/>
        <source>Saved on this phone: %1</source>
        <translation>Salvo neste celular: %1</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="125"/>
        <source>You have %1 photographs. That is the most. Take one back to add another.</source>
        <translation>Você tem %1 fotos. É o máximo. Retire uma para pôr outra.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="205"/>
        <source>This phone could not save it. Try again.</source>
        <translation>Este celular não conseguiu salvar. Tente de novo.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_board.cpp" line="207"/>
        <source>This phone is full. Free some space, then keep it.</source>
        <translation>Este celular está cheio. Libere espaço e depois salve.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PhotoCamera</name>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="49"/>
        <source>The camera does not answer. Choose a picture instead.</source>
        <translation>A câmera não responde. Escolha uma imagem.</translation>
    </message>
    <message>
        <location filename="../app/diary/model/photo_camera.cpp" line="117"/>
        <source>The diary may not use the camera. Allow it in your phone's settings, or choose a picture.</source>
        <translation>O diário não pode usar a câmera. Permita nos ajustes do celular ou escolha uma imagem.</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::PictureBoard</name>
    <message>
        <location filename="../app/diary/model/picture_board.cpp" line="63"/>
        <source>It could not be taken back. Try again.</source>
        <translation>Não foi possível retirar. Tente de novo.</translation>
    </message>
    </context>
    <context>
        <name>IdleNotice</name>
    <message>
        <source>Stay open</source>
        <translation>Deixar aberto</translation>
    </message>
    </context>
    <context>
        <name>EmergencyNumbers</name>
    <message>
        <source>Emergency number (European Union)</source>
        <translation>Emergência (União Europeia)</translation>
    </message>
    <message>
        <source>Emergency number (United Kingdom)</source>
        <translation>Emergência (Reino Unido)</translation>
    </message>
    <message>
        <source>Emergency number (United States)</source>
        <translation>Emergência (Estados Unidos)</translation>
    </message>
    <message>
        <source>Ambulance (Brazil)</source>
        <translation>Ambulância (Brasil)</translation>
    </message>
    <message>
        <source>Ambulance (China)</source>
        <translation>Ambulância (China)</translation>
    </message>
    <message>
        <source>Ambulance (Switzerland)</source>
        <translation>Ambulância (Suíça)</translation>
    </message>
    <message>
        <source>Ambulance (Turkey)</source>
        <translation>Ambulância (Turquia)</translation>
    </message>
    </context>
    <context>
        <name>AnsweredLine</name>
    <message>
        <source>Not done after all</source>
        <translation>Na verdade, não feito</translation>
    </message>
    <message>
        <source>Done after all</source>
        <translation>Na verdade, feito</translation>
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
        <translation>Liga para este número</translation>
    </message>
    <message>
        <location filename="../app/diary/CallButton.qml" line="34"/>
        <source>This device can not call. Please dial this number on a phone:</source>
        <translation>Este aparelho não pode ligar. Por favor, disque este número em um telefone:</translation>
    </message>
    <message>
            <source>If no call starts, dial this number on a phone:</source>
            <translation>Se nenhuma ligação começar, disque este número em um telefone:</translation>
        </message>
    </context>
    <context>
        <name>AdviceCard</name>
    <message>
        <source>Why</source>
        <translation>Por quê</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Eu li isto</translation>
    </message>
    <message>
        <source>It stays with your entry, under What I wrote</source>
        <translation>Fica com a sua anotação, em O que eu escrevi</translation>
    </message>
    </context>
    <context>
        <name>DiaryMeaning</name>
    <message>
        <source>Swelling or blood in the neck can press on the way the air takes. It can get worse fast.</source>
        <translation>Um inchaço ou sangue no pescoço pode apertar a passagem do ar. Pode piorar depressa.</translation>
    </message>
    <message>
        <source>It can be blood under the skin of the neck. It can press on the way the air takes.</source>
        <translation>Pode ser sangue sob a pele do pescoço. Pode apertar a passagem do ar.</translation>
    </message>
    <message>
        <source>It can be a severe allergy. Then the throat can swell and it gets hard to breathe.</source>
        <translation>Pode ser uma alergia grave. Então a garganta pode inchar e fica difícil respirar.</translation>
    </message>
    <message>
        <source>The numbing drug may act on your whole body, not just on your face.</source>
        <translation>A anestesia pode estar agindo no corpo todo, não só no rosto.</translation>
    </message>
    <message>
        <source>It can be sepsis. That is when an infection starts to harm the whole body.</source>
        <translation>Pode ser sepse. É quando uma infecção começa a fazer mal ao corpo todo.</translation>
    </message>
    <message>
        <source>It can be a stroke. That is when a part of the brain gets too little blood.</source>
        <translation>Pode ser um AVC. É quando uma parte do cérebro recebe sangue de menos.</translation>
    </message>
    <message>
        <source>The eye, or the blood flow to it, may be in danger.</source>
        <translation>O olho, ou o sangue que chega a ele, pode estar em perigo.</translation>
    </message>
    <message>
        <source>It can be blood that gathers under the skin. It counts as that until a doctor has looked.</source>
        <translation>Pode ser sangue que se junta sob a pele. É tratado como isso até um médico olhar.</translation>
    </message>
    <message>
        <source>The skin there may get too little blood. Something may press on a vessel or block it.</source>
        <translation>A pele ali pode receber sangue de menos. Algo pode apertar um vaso ou tapá-lo.</translation>
    </message>
    <message>
        <source>A fever can mean that there is an infection.</source>
        <translation>A febre pode querer dizer que há uma infecção.</translation>
    </message>
    <message>
        <source>It can be an infection, also in the skin of your face. Near the eye or the nose it is more dangerous.</source>
        <translation>Pode ser uma infecção, também na pele do rosto. Perto do olho ou do nariz é mais perigosa.</translation>
    </message>
    <message>
        <source>Chills can come with an infection.</source>
        <translation>Calafrios podem vir com uma infecção.</translation>
    </message>
    <message>
        <source>It can be an infection that spreads in the skin.</source>
        <translation>Pode ser uma infecção que se espalha na pele.</translation>
    </message>
    <message>
        <source>It can be pus. Pus can come with an infection.</source>
        <translation>Pode ser pus. Pus pode vir com uma infecção.</translation>
    </message>
    <message>
        <source>A thread works its way out. The skin there may have an infection too.</source>
        <translation>Um fio está saindo. A pele ali também pode ter uma infecção.</translation>
    </message>
    <message>
        <source>A nerve of your face may be pressed or hurt. The numbing should have gone by now.</source>
        <translation>Um nervo do rosto pode estar apertado ou ferido. A anestesia já devia ter passado.</translation>
    </message>
    <message>
        <source>Pain this strong can come from blood under the skin, or from an infection.</source>
        <translation>Uma dor tão forte pode vir de sangue sob a pele ou de uma infecção.</translation>
    </message>
    <message>
        <source>The gland in your cheek that makes spit, or its duct, may be hurt.</source>
        <translation>A glândula da bochecha que faz a saliva, ou o seu canal, pode estar ferida.</translation>
    </message>
    <message>
        <source>A blood vessel may still be open.</source>
        <translation>Um vaso pode ainda estar aberto.</translation>
    </message>
    <message>
        <source>It can be a leak in an artery, with blood around it.</source>
        <translation>Pode ser um vazamento de uma artéria, com sangue em volta.</translation>
    </message>
    <message>
        <source>Numbers alone do not say what it is. So call now.</source>
        <translation>Só os números não dizem o que é. Por isso, ligue agora.</translation>
    </message>
    <message>
        <source>It can be a danger to you right now, and it can get worse fast. That is why it can not wait.</source>
        <translation>Pode ser um perigo para você agora mesmo e piorar depressa. Por isso não pode esperar.</translation>
    </message>
    <message>
        <source>It may need care now. That is why you should call and not wait.</source>
        <translation>Pode precisar de cuidado agora. Por isso ligue e não espere.</translation>
    </message>
    <message>
        <source>It can be blood under the skin, or an infection.</source>
        <translation>Pode ser sangue sob a pele ou uma infecção.</translation>
    </message>
    </context>
    <context>
        <name>SecretField</name>
    <message>
        <source>Show what I type</source>
        <translation>Mostrar o que digito</translation>
    </message>
    </context>
    <context>
        <name>DrawnBox</name>
    <message>
        <source>Write this on paper now, and keep the paper where only you find it. You type it to open the diary, with or without the dashes.</source>
        <translation>Escreva isto agora no papel e guarde-o onde só você o ache. Você o digita para abrir o diário, com ou sem traços.</translation>
    </message>
    <message>
        <source>Out of sight</source>
        <translation>Fora da vista</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Draw another one</source>
        <translation>Sortear outra</translation>
    </message>
    <message>
        <source>I choose my own</source>
        <translation>Escolho a minha</translation>
    </message>
    <message>
        <source>Two groups of it, to be sure that the paper is right. Without the paper you could not open your diary again.</source>
        <translation>Dois grupos dela, para ter certeza de que o papel está certo. Sem o papel você não poderia abrir o seu diário de novo.</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Mostrar mais uma vez</translation>
    </message>
    </context>
    <context>
        <name>ebbline::diaryapp::SecretSight</name>
    <message>
        <source>Long enough.</source>
        <translation>Comprida o bastante.</translation>
    </message>
    <message>
        <source>Long enough. But a few letters, again and again, are easy to guess.</source>
        <translation>Comprida o bastante. Mas poucas letras repetidas são fáceis de adivinhar.</translation>
    </message>
    <message numerus="yes">
        <source>%n letter(s) more.</source>
        <translation>
            <numerusform>Falta %n letra.</numerusform>
            <numerusform>Faltam %n letras.</numerusform>
        </translation>
    </message>
    </context>
    <context>
        <name>CodeBack</name>
    <message>
        <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
        <translation>Um grupo dele, para ter certeza de que o papel está certo. Depois disso o código não é mais mostrado.</translation>
    </message>
    <message>
        <source>It is on my paper</source>
        <translation>Está no meu papel</translation>
    </message>
    <message>
        <source>Show it once more</source>
        <translation>Mostrar mais uma vez</translation>
    </message>
    </context>
</TS>
