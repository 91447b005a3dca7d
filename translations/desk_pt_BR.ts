<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR" sourcelanguage="en">
    <context>
        <name>BaselineLine</name>
        <message>
            <source>%1, right</source>
            <translation>%1, direita</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1, esquerda</translation>
        </message>
    </context>
    <context>
        <name>Charts</name>
        <message>
            <source>above the usual range (%1 to %2)</source>
            <translation>acima do normal (%1 a %2)</translation>
        </message>
        <message>
            <source>below the usual range (%1 to %2)</source>
            <translation>abaixo do normal (%1 a %2)</translation>
        </message>
        <message>
            <source>inside the usual range (%1 to %2)</source>
            <translation>dentro do normal (%1 a %2)</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>Dor</translation>
        </message>
        <message>
            <source>Swelling</source>
            <translation>Inchaço</translation>
        </message>
        <message>
            <source>Bruising</source>
            <translation>Roxo</translation>
        </message>
        <message>
            <source>Tightness</source>
            <translation>Repuxo</translation>
        </message>
        <message>
            <source>Twinges</source>
            <translation>Pontadas</translation>
        </message>
        <message>
            <source>Puckering</source>
            <translation>Covinhas</translation>
        </message>
        <message>
            <source>Numbness</source>
            <translation>Dormência</translation>
        </message>
        <message>
            <source>left</source>
            <translation>esquerda</translation>
        </message>
        <message>
            <source>right</source>
            <translation>direita</translation>
        </message>
        <message>
            <source>%1, patient's left</source>
            <translation>%1, esquerda do paciente</translation>
        </message>
        <message>
            <source>%1, patient's right</source>
            <translation>%1, direita do paciente</translation>
        </message>
        <message>
            <source>Usual range, 10th to 90th of 100 patients (%1): an assumption, no courses of this clinic behind it</source>
            <translation>Faixa normal, do 10º ao 90º de 100 pacientes (%1): uma suposição, sem casos desta clínica</translation>
        </message>
        <message>
            <source>%1: nothing recorded yet.</source>
            <translation>%1: nada registrado ainda.</translation>
        </message>
        <message>
            <source>Highest %1 on day %2.</source>
            <translation>Máximo %1 no dia %2.</translation>
        </message>
        <message>
            <source>Last %1 on day %2</source>
            <translation>Último %1 no dia %2</translation>
        </message>
        <message>
            <source>, %1.</source>
            <translation>, %1.</translation>
        </message>
        <message>
            <source>Expected on day %1: %2 to %3, most likely %4.</source>
            <translation>Esperado no dia %1: %2 a %3, mais provável %4.</translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>Faixa normal, do 10º ao 90º de 100 pacientes (%1): base insuficiente, só %Ln caso</numerusform>
                <numerusform>Faixa normal, do 10º ao 90º de 100 pacientes (%1): base insuficiente, só %Ln casos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>Faixa normal, do 10º ao 90º de 100 pacientes (%1): de %Ln caso, calculada: %2</numerusform>
                <numerusform>Faixa normal, do 10º ao 90º de 100 pacientes (%1): de %Ln casos, calculada: %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1: %Ln valor, do dia %2 ao dia %3.</numerusform>
                <numerusform>%1: %Ln valores, do dia %2 ao dia %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ClinicPage</name>
        <message>
            <source>Clinic</source>
            <translation>Clínica</translation>
        </message>
        <message>
            <source>The numbers stand on every warning, even on a locked phone without network.</source>
            <translation>Os números aparecem em cada aviso, mesmo com o celular bloqueado e sem rede.</translation>
        </message>
        <message>
            <source>Name of the clinic</source>
            <translation>Nome da clínica</translation>
        </message>
        <message>
            <source>Phone during the day</source>
            <translation>Telefone de dia</translation>
        </message>
        <message>
            <source>On call, if the clinic does not answer</source>
            <translation>Plantão, se a clínica não atender</translation>
        </message>
        <message>
            <source>Emergency number of your country</source>
            <translation>Número de emergência do seu país</translation>
        </message>
        <message>
            <source>People at the desk, one name a line</source>
            <translation>Pessoas na estação, um nome por linha</translation>
        </message>
        <message>
            <source>Hub, address and port</source>
            <translation>Servidor, endereço e porta</translation>
        </message>
        <message>
            <source>Fingerprint of the hub's key, from whoever runs it</source>
            <translation>Impressão digital da chave do servidor, dada por quem o administra</translation>
        </message>
        <message>
            <source>Missing: %1</source>
            <translation>Falta: %1</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Salvar</translation>
        </message>
        <message>
            <source>This clinic's key: whoever runs the hub admits it by this</source>
            <translation>Chave desta clínica: com ela, quem administra o servidor libera o acesso</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <translation>Copiar a chave</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Juntar-se às outras estações da clínica</translation>
        </message>
        <message>
            <source>If the clinic works with Ebbline at another computer already</source>
            <translation>Se a clínica já trabalha com o Ebbline em outro computador</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Estações</translation>
        </message>
        <message>
            <source>Add another computer, shut out a lost one</source>
            <translation>Adicionar outro computador, excluir um perdido</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Backup e chaves</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Quem fez o quê</translation>
        </message>
        <message>
            <source>What was written at the clinic's desks, to search and to save</source>
            <translation>O que foi escrito nas estações da clínica, para buscar e salvar</translation>
        </message>
    </context>
    <context>
        <name>ClosePanel</name>
        <message>
            <source>What came of it</source>
            <translation>Resultado</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Observação</translation>
        </message>
        <message>
            <source>Close the finding</source>
            <translation>Fechar o achado</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Deixar aberto</translation>
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
            <translation>esq. %1</translation>
        </message>
        <message>
            <source>R %1</source>
            <comment>right, score</comment>
            <translation>dir. %1</translation>
        </message>
        <message>
            <source>%1 by %2, %3</source>
            <comment>act, person, time</comment>
            <translation>%1 por %2, %3</translation>
        </message>
        <message>
            <source>%1: %2. %3 Raised %4. %5</source>
            <comment>urgency, title, reason, time, acts</comment>
            <translation>%1: %2. %3 Detectado: %4. %5</translation>
        </message>
        <message>
            <source>entered late, %1</source>
            <translation>escrito mais tarde, %1</translation>
        </message>
        <message>
            <source>amended; was: %1</source>
            <translation>corrigido; antes: %1</translation>
        </message>
        <message>
            <source>no scores</source>
            <translation>sem valores</translation>
        </message>
        <message>
            <source>Opened by %1, %2</source>
            <translation>Aberta por %1, %2</translation>
        </message>
        <message>
            <source>Not opened yet</source>
            <translation>Ainda não aberta</translation>
        </message>
        <message>
            <source>Read on the phone, %1</source>
            <translation>Lida no celular, %1</translation>
        </message>
        <message>
            <source>Not read yet</source>
            <translation>Ainda não lida</translation>
        </message>
        <message>
            <source>Correction not opened yet; %1 opened an earlier version, %2</source>
            <translation>Correção ainda não aberta; %1 abriu uma versão anterior, %2</translation>
        </message>
        <message>
            <source>Before it was worse: %1</source>
            <comment>an act</comment>
            <translation>Antes de piorar: %1</translation>
        </message>
        <message>
            <source>By the day that stood then: %1</source>
            <comment>an act</comment>
            <translation>Pelo dia que constava então: %1</translation>
        </message>
        <message>
            <source>came before the time that it bears, %1: the clock of the phone or of this desk is wrong</source>
            <translation>chegou antes da hora que traz, %1: o relógio do celular ou desta estação está errado</translation>
        </message>
    </context>
    <context>
        <name>CourseLine</name>
        <message>
            <source>Link phone</source>
            <translation>Vincular celular</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abrir</translation>
        </message>
    </context>
    <context>
        <name>CoursePage</name>
        <message>
            <source>Link phone</source>
            <translation>Vincular celular</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Retorno</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Ficha</translation>
        </message>
        <message>
            <source>Close: %1</source>
            <translation>Fechar: %1</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Exportar</translation>
        </message>
        <message>
            <source>As a file, or for paper</source>
            <translation>Como arquivo ou em papel</translation>
        </message>
        <message>
            <source>Link another phone</source>
            <translation>Ligar outro telefone</translation>
        </message>
        <message>
            <source>Its page says what happens, and asks once</source>
            <translation>A página diz o que acontece e pergunta uma vez</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
    </context>
    <context>
        <name>CoursesPage</name>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Nome ou lote</translation>
        </message>
        <message>
            <source>No course</source>
            <translation>Nenhum caso</translation>
        </message>
    </context>
    <context>
        <name>CurvePanel</name>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>Como de frente para o paciente: a direita do paciente fica à esquerda.</translation>
        </message>
        <message>
            <source>Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.</source>
            <translation>Pontilhado: a mediana. Vazado: escrito mais tarde ou corrigido. Colchete no fim: o esperado no retorno.</translation>
        </message>
        <message>
            <source>Show as curves</source>
            <translation>Ver como curvas</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Ver como tabela</translation>
        </message>
    </context>
    <context>
        <name>CurveTable</name>
        <message>
            <source>Day</source>
            <translation>Dia</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Quando</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Direita</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Esquerda</translation>
        </message>
        <message>
            <source>Usual</source>
            <translation>Normal</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Observação</translation>
        </message>
        <message>
            <source>Nothing was recorded for this symptom.</source>
            <translation>Nada foi registrado para este sintoma.</translation>
        </message>
    </context>
    <context>
        <name>Curves</name>
        <message>
            <source>highest %1 on day %2</source>
            <translation>máximo %1 no dia %2</translation>
        </message>
        <message>
            <source>halved in %1 days</source>
            <translation>caiu à metade em %1 dias</translation>
        </message>
        <message>
            <source>settled on day %1</source>
            <translation>passou no dia %1</translation>
        </message>
        <message>
            <source>area: not enough to say</source>
            <translation>área: dados insuficientes</translation>
        </message>
        <message>
            <source>area %1 points × days, day %2 to %3</source>
            <translation>área %1 pontos × dias, do dia %2 ao %3</translation>
        </message>
        <message>
            <source>level</source>
            <translation>iguais</translation>
        </message>
        <message>
            <source>left %1 higher</source>
            <translation>esquerda %1 mais alta</translation>
        </message>
        <message>
            <source>right %1 higher</source>
            <translation>direita %1 mais alta</translation>
        </message>
        <message>
            <source>Left against right: not enough to say.</source>
            <translation>Esquerda contra direita: dados insuficientes.</translation>
        </message>
        <message>
            <source>%1 on average</source>
            <translation>%1 em média</translation>
        </message>
        <message>
            <source>most on day %1 (%2)</source>
            <translation>mais no dia %1 (%2)</translation>
        </message>
        <message>
            <source>too few points for a share of the sum</source>
            <translation>poucos pontos para uma parte da soma</translation>
        </message>
        <message>
            <source>Left against right, %1 days with both: %2.</source>
            <translation>Esquerda contra direita, %1 dias com ambas: %2.</translation>
        </message>
        <message>
            <source>Left: %1.</source>
            <translation>Esquerda: %1.</translation>
        </message>
        <message>
            <source>Right: %1.</source>
            <translation>Direita: %1.</translation>
        </message>
        <message>
            <source>the difference is %1% of the sum</source>
            <translation>a diferença é %1% da soma</translation>
        </message>
        <message>
            <source>right %1 on day %2</source>
            <comment>score, day</comment>
            <translation>direita %1 no dia %2</translation>
        </message>
        <message>
            <source>left %1 on day %2</source>
            <comment>score, day</comment>
            <translation>esquerda %1 no dia %2</translation>
        </message>
        <message>
            <source>The axis ends with day 21. Last written after it: %1. The table has every score.</source>
            <translation>O eixo termina no dia 21. Último registro depois: %1. A tabela tem todas as pontuações.</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>Limite da bula dos EUA, %1: %2 mg/kg, em geral não mais de %3 mg</translation>
        </message>
        <message>
            <source>Your clinic's limit, %1: %2 mg/kg, not over %3 mg</source>
            <translation>Limite da sua clínica, %1: %2 mg/kg, não mais de %3 mg</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>com epinefrina</translation>
        </message>
        <message>
            <source>plain, the lower one, as some was given otherwise</source>
            <translation>sem epinefrina, o mais baixo, pois também foi dada de outro modo</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>sem epinefrina</translation>
        </message>
        <message>
            <source>No dose can be shown: check the solution, the volumes and the weight.</source>
            <translation>Não é possível mostrar a dose: confira a solução, os volumes e o peso.</translation>
        </message>
        <message>
            <source>%1 mL given, %2 mg lidocaine (%3 mg/mL)</source>
            <translation>%1 mL administrados, %2 mg de lidocaína (%3 mg/mL)</translation>
        </message>
        <message>
            <source>%1 µg epinephrine</source>
            <translation>%1 µg de epinefrina</translation>
        </message>
        <message>
            <source>%1 mg given otherwise, %2 mg in all</source>
            <translation>%1 mg dados de outro modo, %2 mg no total</translation>
        </message>
        <message>
            <source>Enter the weight to see the maximum.</source>
            <translation>Digite o peso para ver o máximo.</translation>
        </message>
        <message>
            <source>At most %1 mg</source>
            <translation>No máximo %1 mg</translation>
        </message>
        <message>
            <source>%1 mL of this solution</source>
            <translation>%1 mL desta solução</translation>
        </message>
        <message>
            <source>(the label's cap)</source>
            <translation>(teto da bula)</translation>
        </message>
        <message>
            <source>(your clinic's cap)</source>
            <translation>(teto da sua clínica)</translation>
        </message>
        <message>
            <source>%1 of the maximum</source>
            <translation>%1 do máximo</translation>
        </message>
        <message>
            <source>Over the maximum by %1 mg. Give no more.</source>
            <translation>Máximo ultrapassado em %1 mg. Não administre mais.</translation>
        </message>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>Mais de %1 mL ao longo do trajeto %2 (prática comum, sem fonte)</numerusform>
                <numerusform>Mais de %1 mL ao longo dos trajetos %2 (prática comum, sem fonte)</numerusform>
            </translation>
        </message>
        <message>
            <source>plain, the lower one, as not all of it had epinephrine</source>
            <translation>sem epinefrina, o mais baixo, pois nem tudo tinha epinefrina</translation>
        </message>
        <message>
            <source>at most %1 µg epinephrine</source>
            <translation>no máximo %1 µg de epinefrina</translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>Lidocaína até agora</translation>
        </message>
        <message>
            <source>Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.</source>
            <translation>Anote toda a lidocaína injetada hoje. Cremes contam para o mesmo limite, mas não se sabe quanto é absorvido: nenhum é contado aqui. O tamponamento dilui a solução; os miligramas não mudam.</translation>
        </message>
    </context>
    <context>
        <name>EntryPanel</name>
        <message>
            <source>Entries</source>
            <translation>Anotações</translation>
        </message>
        <message>
            <source>The patient's entries show up here once the phone has sent them.</source>
            <translation>As anotações do paciente aparecem aqui assim que o celular as envia.</translation>
        </message>
    </context>
    <context>
        <name>FacePanel</name>
        <message>
            <source>Front</source>
            <translation>Frente</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Esquerda do paciente</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Direita do paciente</translation>
        </message>
        <message>
            <source>moves with speech</source>
            <translation>move-se ao falar</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>incisura</translation>
        </message>
        <message>
            <source>Face chart. Draw threads from the entry point to the end.</source>
            <translation>Mapa facial. Desenhe os fios do ponto de entrada até o fim.</translation>
        </message>
        <message>
            <source>Mirror</source>
            <translation>Espelhar</translation>
        </message>
        <message>
            <source>the chosen thread, to the other side</source>
            <translation>o fio escolhido, para o outro lado</translation>
        </message>
        <message>
            <source>Mirror all</source>
            <translation>Espelhar todos</translation>
        </message>
        <message>
            <source>Duplicate</source>
            <translation>Duplicar</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Remover</translation>
        </message>
        <message>
            <source>Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.</source>
            <translation>Hachurado: a zona que se move ao falar e mastigar, e a incisura antegoniana da mandíbula. Prática comum, sem fonte.</translation>
        </message>
    </context>
    <context>
        <name>FindingCard</name>
        <message>
            <source>Closed</source>
            <translation>Fechado</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Assumir</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Ligar</translation>
        </message>
        <message>
            <source>Visit forward</source>
            <translation>Consulta antecipada</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Fechar</translation>
        </message>
        <message>
            <source>Reopen</source>
            <translation>Reabrir</translation>
        </message>
    </context>
    <context>
        <name>FindingPanel</name>
        <message>
            <source>Findings</source>
            <translation>Achados</translation>
        </message>
        <message>
            <source>Take all</source>
            <translation>Assumir todos</translation>
        </message>
        <message>
            <source>Call about all</source>
            <translation>Ligar sobre todos</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>Nenhuma regra ou sinal de alerta pediu atenção.</translation>
        </message>
        <message>
            <source>Note a call</source>
            <translation>Anotar uma ligação</translation>
        </message>
        <message>
            <source>She rang, or somebody spoke with her</source>
            <translation>Ela ligou, ou alguém falou com ela</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Ligações anotadas no caso</translation>
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
            <translation>%1: acima do normal</translation>
        </message>
        <message>
            <source>%1: rising again</source>
            <translation>%1: subindo de novo</translation>
        </message>
        <message>
            <source>%1: rising</source>
            <translation>%1: subindo</translation>
        </message>
        <message>
            <source>%1: one side much worse</source>
            <translation>%1: um lado muito pior</translation>
        </message>
        <message>
            <source>%1: slow to settle</source>
            <translation>%1: melhora lenta</translation>
        </message>
        <message>
            <source>%1: does not smooth out</source>
            <translation>%1: não se desfazem</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Sem notícias</translation>
        </message>
        <message>
            <source>%1 on day %2; usual up to %3.</source>
            <translation>%1 no dia %2; normal até %3.</translation>
        </message>
        <message>
            <source>On average %1 over its last three days with an answer, up to day %2; usual up to %3.</source>
            <translation>Em média %1 nos seus três últimos dias com resposta, até o dia %2; normal até %3.</translation>
        </message>
        <message>
            <source>Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.</source>
            <translation>Dia %1; entre eles %2, em média %3 nos seus três últimos dias com resposta, normal até %4.</translation>
        </message>
        <message>
            <source>%1 on day %2 after a low of %3.</source>
            <translation>%1 no dia %2, após um mínimo de %3.</translation>
        </message>
        <message>
            <source>Left %1, right %2 on day %3.</source>
            <translation>Esquerda %1, direita %2 no dia %3.</translation>
        </message>
        <message>
            <source>All symptoms together: %1 points apart.</source>
            <translation>Todos os sintomas juntos: %1 pontos de diferença.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>Ainda %1 no dia %2.</translation>
        </message>
        <message>
            <source>A week before: %1.</source>
            <translation>Uma semana antes: %1.</translation>
        </message>
        <message>
            <source>Over its last three days: %1 points.</source>
            <translation>Nos seus três últimos dias: %1 pontos.</translation>
        </message>
        <message>
            <source>In its first days: %1.</source>
            <translation>Nos primeiros dias: %1.</translation>
        </message>
        <message>
            <source>Noted because it is so late.</source>
            <translation>Anotado por já ser tão tarde.</translation>
        </message>
        <message>
            <source>Fever</source>
            <translation>Febre</translation>
        </message>
        <message>
            <source>Fever with inflammation of the face</source>
            <translation>Febre com inflamação no rosto</translation>
        </message>
        <message>
            <source>Weakness of the face, perhaps still the numbing</source>
            <translation>Fraqueza facial, talvez ainda pela anestesia</translation>
        </message>
        <message>
            <source>Signs of a spreading inflammation</source>
            <translation>Sinais de inflamação que se espalha</translation>
        </message>
        <message>
            <source>Severe pain</source>
            <translation>Dor intensa</translation>
        </message>
        <message>
            <source>One side swells and hurts</source>
            <translation>Um lado incha e dói</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>finding, side</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Temperature %1 °C</source>
            <translation>Temperatura %1 °C</translation>
        </message>
        <message>
            <source>swelling %1 against %2</source>
            <translation>inchaço %1 contra %2</translation>
        </message>
        <message>
            <source>pain %1</source>
            <translation>dor %1</translation>
        </message>
        <message>
            <source>The patient answered on day %1: %2.</source>
            <translation>Resposta do paciente no dia %1: %2.</translation>
        </message>
        <message>
            <source>Warning rule “%1”: acts whatever the curve says.</source>
            <translation>Regra de aviso “%1”: vale, não importa o que diga a curva.</translation>
        </message>
        <message>
            <source>Rule “%1”: statistic %2, threshold %3.</source>
            <translation>Regra “%1”: estatística %2, limiar %3.</translation>
        </message>
        <message>
            <source>Rule “%1”.</source>
            <translation>Regra “%1”.</translation>
        </message>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>Sem anotação há %Ln dia.</numerusform>
                <numerusform>Sem anotação há %Ln dias.</numerusform>
            </translation>
        </message>
        <message>
            <source>The visit was to be on day %1; by day %2 no follow-up was recorded.</source>
            <translation>A consulta seria no dia %1; até o dia %2 nenhum retorno foi registrado.</translation>
        </message>
        <message>
            <source>All symptoms together</source>
            <translation>Todos os sintomas juntos</translation>
        </message>
        <message>
            <source>Day %1; among them %2 with %3, usual up to %4.</source>
            <translation>Dia %1; entre eles %2 com %3, normal até %4.</translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>Corrigido ou completado depois: com as anotações de agora, este aviso não surgiria. Ele fica até alguém fechá-lo.</translation>
        </message>
        <message>
            <source>Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.</source>
            <translation>Sinalizado por um dia do tratamento, ou notas logo depois, corrigidos desde então. Fica até que alguém o feche.</translation>
        </message>
    </context>
    <context>
        <name>FollowUpPage</name>
        <message>
            <source>Follow-up of %1</source>
            <translation>Retorno de %1</translation>
        </message>
        <message>
            <source>Recording it closes the course.</source>
            <translation>Registrá-lo fecha o caso.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Ficha</translation>
        </message>
        <message>
            <source>Against before the treatment</source>
            <translation>Em relação a antes do tratamento</translation>
        </message>
        <message>
            <source>How satisfied is the patient?</source>
            <translation>Qual é a satisfação do paciente?</translation>
        </message>
        <message>
            <source>Management: what was done</source>
            <translation>Conduta: o que foi feito</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Próximo plano</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicações</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Questões em aberto</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>Registrar e fechar o caso</translation>
        </message>
        <message>
            <source>An uncomplicated course?</source>
            <translation>Evolução sem complicações?</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Sim</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Não</translation>
        </message>
    </context>
    <context>
        <name>HelpPanel</name>
        <message>
            <source>Keys</source>
            <translation>Teclas</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Cima, baixo</translation>
        </message>
        <message>
            <source>move in the queue</source>
            <translation>mover-se na fila</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>open the course</source>
            <translation>abrir o caso</translation>
        </message>
        <message>
            <source>take it: others see who is on it</source>
            <translation>assumir: os outros veem quem está cuidando</translation>
        </message>
        <message>
            <source>close the most urgent finding, with an outcome</source>
            <translation>fechar o achado mais urgente, com um resultado</translation>
        </message>
        <message>
            <source>search</source>
            <translation>buscar</translation>
        </message>
        <message>
            <source>queue, courses</source>
            <translation>fila, casos</translation>
        </message>
        <message>
            <source>new treatment</source>
            <translation>novo tratamento</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>trancar</translation>
        </message>
        <message>
            <source>this help</source>
            <translation>esta ajuda</translation>
        </message>
        <message>
            <source>On the face chart</source>
            <translation>No mapa facial</translation>
        </message>
        <message>
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread</source>
            <translation>as setas movem o cursor (com Shift em passos pequenos), Espaço marca a entrada e o fim, Escape recomeça; Page Up e Page Down escolhem um fio, Home pega o ponto de entrada e End o fim, Espaço o solta, Delete remove o fio</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>Voltar ao trabalho</translation>
        </message>
        <message>
            <source>call: number, what to ask, what was said</source>
            <translation>ligar: número, o que perguntar, o que foi dito</translation>
        </message>
        <message>
            <source>next with entries that nobody opened</source>
            <translation>próximo com anotações que ninguém abriu</translation>
        </message>
        <message>
            <source>hand over</source>
            <translation>passar o plantão</translation>
        </message>
        <message>
            <source>On photographs</source>
            <translation>Nas fotos</translation>
        </message>
        <message>
            <source>+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends</source>
            <translation>+ e - ampliam e reduzem as duas, 0 mostra a imagem inteira, as setas movem a parte visível; ao marcar os olhos, as setas movem o cursor (com Shift, em passos pequenos), Espaço marca, Backspace desfaz, Esc encerra</translation>
        </message>
        <message>
            <source>Single keys (E, T, C, X, F, N, H, A, /) are on</source>
            <translation>Atalhos de uma tecla (E, T, C, X, F, N, H, A, /) ativados</translation>
        </message>
        <message>
            <source>take search and filters off</source>
            <translation>retirar a busca e os filtros</translation>
        </message>
        <message>
            <source>open the course at the entry behind the reason</source>
            <translation>abrir o acompanhamento na anotação que deu o motivo</translation>
        </message>
        <message>
            <source>bring the visit forward: its new day and time</source>
            <translation>antecipar a consulta: novo dia e nova hora</translation>
        </message>
        <message>
            <source>print the sheet, the course or the hand-over</source>
            <translation>imprimir a folha, o curso ou a passagem</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Ebbline, desk</source>
            <translation>Ebbline, clínica</translation>
        </message>
        <message>
            <source>Understood</source>
            <translation>Entendi</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Tentar de novo</translation>
        </message>
        <message>
            <source>Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.</source>
            <translation>Pacientes inventados: nada aqui é real, nada é enviado, e tudo some quando você tranca a estação.</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>Sair da demonstração</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Backup e chaves</translation>
        </message>
    </context>
    <context>
        <name>MessagePanel</name>
        <message>
            <source>Messages</source>
            <translation>Mensagens</translation>
        </message>
        <message>
            <source>No message yet.</source>
            <translation>Nenhuma mensagem ainda.</translation>
        </message>
        <message>
            <source>Write to the patient</source>
            <translation>Escrever ao paciente</translation>
        </message>
        <message>
            <source>Send</source>
            <translation>Enviar</translation>
        </message>
    </context>
    <context>
        <name>NewEntriesBar</name>
        <message>
            <source>Mark as opened by me</source>
            <translation>Marcar como abertas por mim</translation>
        </message>
    </context>
    <context>
        <name>PairingChoice</name>
        <message>
            <source>Protocol: care plan, rules and usual range, signed by the clinic</source>
            <translation>Protocolo: plano de cuidados, regras e faixa normal, assinados pela clínica</translation>
        </message>
        <message>
            <source>Follow-up, year-month-day</source>
            <translation>Retorno, ano-mês-dia</translation>
        </message>
        <message>
            <source>Its time, hours:minutes, if it is agreed</source>
            <translation>A hora, horas:minutos, se já combinada</translation>
        </message>
    </context>
    <context>
        <name>PairingPage</name>
        <message>
            <source>Code for the patient's phone. It can also be typed: %1</source>
            <translation>Código para o celular do paciente. Também pode ser digitado: %1</translation>
        </message>
        <message>
            <source>To type instead</source>
            <translation>Para digitar</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Seis dígitos: %1</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>Criar um código</translation>
        </message>
        <message>
            <source>Both show the same number</source>
            <translation>Os dois mostram o mesmo número</translation>
        </message>
        <message>
            <source>They differ: stop</source>
            <translation>São diferentes: parar</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Criar um novo código</translation>
        </message>
        <message>
            <source>To the queue</source>
            <translation>Para a fila</translation>
        </message>
        <message>
            <source>It shall hold the clinic's root key: link phones, add and shut out desks</source>
            <translation>Terá a chave raiz da clínica: vincular celulares, adicionar e excluir estações</translation>
        </message>
        <message>
            <source>The code</source>
            <translation>O código</translation>
        </message>
        <message>
            <source>and the hub's address</source>
            <translation>e o endereço do servidor</translation>
        </message>
        <message>
            <source>To the desks</source>
            <translation>Para as estações</translation>
        </message>
        <message>
            <source>The old phone is lost: the hub refuses it at once, and what it did not send stays unknown</source>
            <translation>O celular antigo foi perdido: o servidor o recusa na hora, e o que ele não enviou fica desconhecido</translation>
        </message>
        <message>
            <source>Only end the lost phone</source>
            <translation>Só excluir o celular perdido</translation>
        </message>
    </context>
    <context>
        <name>PersonPage</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Quem está na estação?</translation>
        </message>
        <message>
            <source>What you take, call and close carries your name, and the patient's phone shows who opened an entry.</source>
            <translation>O que você assume e fecha e as ligações que faz levam o seu nome; o celular do paciente mostra quem abriu uma anotação.</translation>
        </message>
        <message>
            <source>Somebody is missing: edit the clinic</source>
            <translation>Falta alguém: editar a clínica</translation>
        </message>
    </context>
    <context>
        <name>PackField</name>
        <message>
            <source>Code on the pack: scan it, or type it with its brackets</source>
            <translation>Código da embalagem: escaneie ou digite com os parênteses</translation>
        </message>
    </context>
    <context>
        <name>PlacementFields</name>
        <message>
            <source>Side</source>
            <translation>Lado</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Esquerda</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Direita</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zona</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Termina</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Forma</translation>
        </message>
        <message>
            <source>Needle or cannula</source>
            <translation>Agulha ou cânula</translation>
        </message>
        <message>
            <source>Anaesthetic along it</source>
            <translation>Anestésico no trajeto</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Expiry, year-month-day</source>
            <translation>Validade, ano-mês-dia</translation>
        </message>
        <message>
            <source>Thread %L1</source>
            <translation>Fio %L1</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
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
            <translation>Refeito</translation>
        </message>
        <message>
            <source>Why it was redone</source>
            <translation>Por que foi refeito</translation>
        </message>
        <message>
            <source>Brought in with</source>
            <translation>Introduzido com</translation>
        </message>
        <message>
            <source>Length of needle or cannula</source>
            <translation>Comprimento da agulha ou cânula</translation>
        </message>
        <message>
            <source>Length of thread</source>
            <translation>Comprimento do fio</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Epinefrina</translation>
        </message>
    </context>
    <context>
        <name>PlacementList</name>
        <message>
            <source>care</source>
            <translation>atenção</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln fio</numerusform>
                <numerusform>%Ln fios</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message>
            <source>Take the dressings off</source>
            <translation>Tirar os curativos</translation>
        </message>
        <message>
            <source>Keep the entry points clean and dry</source>
            <translation>Manter os pontos de entrada limpos e secos</translation>
        </message>
        <message>
            <source>Sleep on the back, head raised</source>
            <translation>Dormir de costas, com a cabeça elevada</translation>
        </message>
        <message>
            <source>Spare the face: small bites, no wide yawns, little talking</source>
            <translation>Poupar o rosto: mordidas pequenas, sem bocejos largos, falar pouco</translation>
        </message>
        <message>
            <source>Cold pack with a cloth between</source>
            <translation>Compressa fria com um pano no meio</translation>
        </message>
        <message>
            <source>No make-up</source>
            <translation>Sem maquiagem</translation>
        </message>
        <message>
            <source>No massage of the face</source>
            <translation>Sem massagem no rosto</translation>
        </message>
        <message>
            <source>No dental work</source>
            <translation>Sem tratamento dentário</translation>
        </message>
        <message>
            <source>No hard exercise</source>
            <translation>Sem exercício intenso</translation>
        </message>
        <message>
            <source>No sauna, hammam, hot bath or pool</source>
            <translation>Sem sauna, hammam, banho quente ou piscina</translation>
        </message>
        <message>
            <source>No strong sun</source>
            <translation>Sem sol forte</translation>
        </message>
        <message>
            <source>No alcohol</source>
            <translation>Sem álcool</translation>
        </message>
        <message>
            <source>No smoking</source>
            <translation>Sem fumar</translation>
        </message>
        <message>
            <source>No shaving</source>
            <translation>Sem barbear</translation>
        </message>
        <message>
            <source>Write down how it is</source>
            <translation>Anotar como está</translation>
        </message>
        <message>
            <source>Come to the follow-up</source>
            <translation>Vir ao retorno</translation>
        </message>
        <message>
            <source>The clinic's own instruction</source>
            <translation>Instrução própria da clínica</translation>
        </message>
        <message>
            <source>on day %1</source>
            <translation>no dia %1</translation>
        </message>
        <message>
            <source>day %1 to day %2</source>
            <translation>do dia %1 ao dia %2</translation>
        </message>
        <message>
            <source>a rule to keep, no reminder</source>
            <translation>uma regra a cumprir, sem lembrete</translation>
        </message>
        <message>
            <source>reminds at %1</source>
            <translation>lembra às %1</translation>
        </message>
        <message>
            <source>Level: above the usual range</source>
            <translation>Nível: acima do normal</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>limiar %1</translation>
        </message>
        <message>
            <source>Rebound: rising again</source>
            <translation>Rebote: subindo de novo</translation>
        </message>
        <message>
            <source>Side divergence: one side much worse</source>
            <translation>Diferença entre os lados: um lado muito pior</translation>
        </message>
        <message>
            <source>Slow recovery: slow to settle</source>
            <translation>Recuperação lenta: demora a passar</translation>
        </message>
        <message>
            <source>Persistent puckering: does not smooth out</source>
            <translation>Covinhas persistentes: não se desfazem</translation>
        </message>
        <message>
            <source>from day %1 on</source>
            <translation>a partir do dia %1</translation>
        </message>
        <message>
            <source>Silence: nothing heard</source>
            <translation>Silêncio: sem notícias</translation>
        </message>
        <message>
            <source>shown apart, never as fine</source>
            <translation>mostrado à parte, nunca como se estivesse bem</translation>
        </message>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>lembra a cada %Ln dia às %1</numerusform>
                <numerusform>lembra a cada %Ln dias às %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>pelo menos %Ln ponto</numerusform>
                <numerusform>pelo menos %Ln pontos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>pelo menos %Ln ponto acima do mínimo, a partir do dia %1</numerusform>
                <numerusform>pelo menos %Ln pontos acima do mínimo, a partir do dia %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>pelo menos %Ln ponto entre os lados</numerusform>
                <numerusform>pelo menos %Ln pontos entre os lados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>a partir do dia %1, pelo menos %Ln ponto</numerusform>
                <numerusform>a partir do dia %1, pelo menos %Ln pontos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>após %Ln dia</numerusform>
                <numerusform>após %Ln dias</numerusform>
            </translation>
        </message>
        <message>
            <source>Level, all symptoms together</source>
            <translation>Nível, todos os sintomas juntos</translation>
        </message>
        <message>
            <source>Side divergence: one side fills in the first days</source>
            <translation>Diferença entre os lados: um lado enche nos primeiros dias</translation>
        </message>
        <message>
            <source>Side divergence: one side worsens</source>
            <translation>Diferença entre os lados: um lado piora</translation>
        </message>
        <message>
            <source>Slow recovery, all symptoms together</source>
            <translation>Recuperação lenta, todos os sintomas juntos</translation>
        </message>
        <message>
            <source>Slow recovery: pain that stays high</source>
            <translation>Recuperação lenta: dor que continua alta</translation>
        </message>
        <message>
            <source>Slow recovery: swelling, bruising or tightness that stays high</source>
            <translation>Recuperação lenta: inchaço, roxo ou repuxo que continua alto</translation>
        </message>
        <message>
            <source>%1 of 10 or more over the last three days; no threshold</source>
            <translation>%1 de 10 ou mais nos últimos três dias; sem limiar</translation>
        </message>
        <message>
            <source>Persistent puckering: unchanged for a week</source>
            <translation>Covinhas persistentes: iguais há uma semana</translation>
        </message>
        <message>
            <source>Persistent puckering: keeps most of its first days</source>
            <translation>Covinhas persistentes: mantêm a maior parte dos primeiros dias</translation>
        </message>
        <message>
            <source>Persistent puckering: still deep</source>
            <translation>Covinhas persistentes: ainda fundas</translation>
        </message>
        <message>
            <source>Silence after a high entry</source>
            <translation>Silêncio após uma anotação alta</translation>
        </message>
        <message>
            <source>when the last entry was above the usual range</source>
            <translation>quando a última anotação estava acima do normal</translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>até o dia %1, pelo menos %Ln ponto entre os lados, somando dor, inchaço, roxo e repuxo</numerusform>
                <numerusform>até o dia %1, pelo menos %Ln pontos entre os lados, somando dor, inchaço, roxo e repuxo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>a partir do dia %1, pelo menos %Ln ponto entre os lados, somando dor, inchaço e repuxo</numerusform>
                <numerusform>a partir do dia %1, pelo menos %Ln pontos entre os lados, somando dor, inchaço e repuxo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>pelo menos %Ln ponto nos últimos três dias</numerusform>
                <numerusform>pelo menos %Ln pontos nos últimos três dias</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>a partir do dia %1, pelo menos %Ln ponto, após um máximo de %2 ou mais</numerusform>
                <numerusform>a partir do dia %1, pelo menos %Ln pontos, após um máximo de %2 ou mais</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ProtocolsPage</name>
        <message>
            <source>Protocols</source>
            <translation>Protocolos</translation>
        </message>
        <message>
            <source>Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.</source>
            <translation>O plano de cuidados, as regras e a faixa normal vão juntos para o celular, assinados pela clínica, para que funcionem sem rede.</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>O que se pede ao paciente</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>O que gera um achado</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>O que conta como normal</translation>
        </message>
        <message>
            <source>Whom the patient calls</source>
            <translation>Para quem o paciente liga</translation>
        </message>
        <message>
            <source>Change the numbers</source>
            <translation>Mudar os números</translation>
        </message>
        <message>
            <source>Change it</source>
            <translation>Mudar</translation>
        </message>
        <message>
            <source>Take from a file</source>
            <translation>Tomar de um arquivo</translation>
        </message>
        <message>
            <source>Shows what it is; nothing goes live by it.</source>
            <translation>Mostra o que é; nada entra em uso com isso.</translation>
        </message>
        <message>
            <source>Save as a file</source>
            <translation>Salvar como arquivo</translation>
        </message>
        <message>
            <source>For the tool, or for a colleague&apos;s clinic.</source>
            <translation>Para a ferramenta ou para a clínica de um colega.</translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message>
            <source>Still open: %1, day %2.</source>
            <translation>Ainda aberto: %1, dia %2.</translation>
        </message>
        <message>
            <source>No phone was linked: ask how the days went.</source>
            <translation>Nenhum celular foi vinculado: pergunte como foram os dias.</translation>
        </message>
        <message>
            <source>The patient recorded nothing: ask how the days went.</source>
            <translation>O paciente não anotou nada: pergunte como foram os dias.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>%Ln anotação ainda não aberta.</numerusform>
                <numerusform>%Ln anotações ainda não abertas.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>%Ln mensagem do paciente ainda não lida.</numerusform>
                <numerusform>%Ln mensagens do paciente ainda não lidas.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>%Ln fio sem número de lote.</numerusform>
                <numerusform>%Ln fios sem número de lote.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>QueueActs</name>
        <message>
            <source>Open</source>
            <translation>Abrir</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Assumido</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Assumir</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Fechar</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>Passar para mim</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Ligar</translation>
        </message>
    </context>
    <context>
        <name>QueuePage</name>
        <message>
            <source>Queue</source>
            <translation>Fila</translation>
        </message>
        <message>
            <source>Name or lot  ( / )</source>
            <translation>Nome ou lote  ( / )</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Nome ou lote</translation>
        </message>
        <message>
            <source>Hand over</source>
            <translation>Passar plantão</translation>
        </message>
        <message>
            <source>A note for whoever takes over</source>
            <translation>Recado para quem assume</translation>
        </message>
        <message>
            <source>Filter</source>
            <translation>Filtrar</translation>
        </message>
        <message>
            <source>By who placed the threads, who took the row, and day</source>
            <translation>Por quem colocou os fios, quem assumiu a linha e dia</translation>
        </message>
    </context>
    <context>
        <name>QueueRowHead</name>
        <message>
            <source>since %1 · %2</source>
            <translation>desde %1 · %2</translation>
        </message>
    </context>
    <context>
        <name>Rail</name>
        <message>
            <source>Queue</source>
            <translation>Fila</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Novo tratamento</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protocolos</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Clínica</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Consultando o servidor</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Consultar o servidor agora</translation>
        </message>
        <message>
            <source>Nobody named</source>
            <translation>Ninguém indicado</translation>
        </message>
        <message>
            <source>Who is at the desk: change</source>
            <translation>Quem está na estação: mudar</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <translation>Teclas e ajuda</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Trancar</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Resultados</translation>
        </message>
    </context>
    <context>
        <name>RailButton</name>
        <message>
            <source>shown now</source>
            <translation>mostrado agora</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>Settings</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>For this computer. Nothing of a patient is stored here.</source>
            <translation>Para este computador. Nada de nenhum paciente é guardado aqui.</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aparência</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Claro</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Escuro</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>Alto contraste</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Tamanho do texto</translation>
        </message>
        <message>
            <source>Lock when nobody touches the desk for</source>
            <translation>Trancar quando ninguém usa a estação por</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Menos movimento</translation>
        </message>
        <message>
            <source>Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off</source>
            <translation>Atalhos de uma tecla na fila: E abre a anotação que deu o motivo, T assume, C liga, X fecha, F antecipa a consulta, N próximo não aberto, H passa o plantão, / busca, A retira a busca e os filtros</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Sobre o Ebbline</translation>
        </message>
        <message>
            <source>Version, makers and licences</source>
            <translation>Versão, autores e licenças</translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
        <message>
            <source>%1 of 5</source>
            <translation>%1 de 5</translation>
        </message>
        <message>
            <source>none, uncomplicated course</source>
            <translation>nenhuma, evolução sem complicações</translation>
        </message>
        <message>
            <source>none named, not an uncomplicated course</source>
            <translation>nenhuma indicada, não marcada como evolução sem complicações</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>person, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Change against before</source>
            <translation>Mudança em relação a antes</translation>
        </message>
        <message>
            <source>Patient's satisfaction</source>
            <translation>Satisfação</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicações</translation>
        </message>
        <message>
            <source>Management</source>
            <translation>Conduta</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Próximo plano</translation>
        </message>
        <message>
            <source>Recorded by</source>
            <translation>Registrado por</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Ficha de retorno</translation>
        </message>
        <message>
            <source>Made %1, %2</source>
            <translation>Gerada: %1, %2</translation>
        </message>
        <message>
            <source>Made %1, %2, by %3</source>
            <translation>Gerada: %1, %2, por %3</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamento</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Dia de recuperação</translation>
        </message>
        <message>
            <source>Protocol</source>
            <translation>Protocolo</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versão %2</translation>
        </message>
        <message>
            <source>No reminder was due.</source>
            <translation>Nenhum lembrete estava previsto.</translation>
        </message>
        <message>
            <source>Treatment map</source>
            <translation>Mapa do tratamento</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>Nº</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Lado</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zona</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Termina</translation>
        </message>
        <message>
            <source>Thread</source>
            <translation>Fio</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anestésico</translation>
        </message>
        <message>
            <source>Local anaesthetic</source>
            <translation>Anestésico local</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Recuperação</translation>
        </message>
        <message>
            <source>Findings and what was done</source>
            <translation>Achados e condutas</translation>
        </message>
        <message>
            <source>No finding.</source>
            <translation>Nenhum achado.</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>nada ainda</translation>
        </message>
        <message>
            <source>Urgency</source>
            <translation>Urgência</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>Achado</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Detectado</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Conduta</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Questões em aberto</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Nenhuma.</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>No retorno</translation>
        </message>
        <message>
            <source>At the follow-up, to be filled in</source>
            <translation>No retorno, a preencher</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Esquerda do paciente</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Direita do paciente</translation>
        </message>
        <message>
            <source>Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source).</source>
            <translation>Esquerda: linhas contínuas, pontos de entrada redondos. Direita: linhas tracejadas, pontos de entrada quadrados. A barra marca o fim. Hachurado: a zona que se move ao falar e a incisura antegoniana da mandíbula (prática comum, sem fonte).</translation>
        </message>
        <message>
            <source>Nothing was recorded.</source>
            <translation>Nada foi registrado.</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. Hollow marks: entered late or amended. Missing days are gaps.</source>
            <translation>Como de frente para o paciente: a direita do paciente fica à esquerda. Valor de 0 a 10 por dia de recuperação. Marcas vazadas: escrito mais tarde ou corrigido. Dias sem dados são lacunas.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Página %1 de %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>%1 de %Ln lembrete respondido com “feito”.</numerusform>
                <numerusform>%1 de %Ln lembretes respondidos com “feito”.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln anotação</numerusform>
                <numerusform>%Ln anotações</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>em %Ln dia</numerusform>
                <numerusform>em %Ln dias</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: could not be opened</source>
            <translation>%1: não foi possível abrir</translation>
        </message>
        <message>
            <source>The only photograph of this view.</source>
            <translation>A única foto desta vista.</translation>
        </message>
        <message>
            <source>Aligned by the eyes, not stretched and not mirrored.</source>
            <translation>Alinhadas pelos olhos, sem distorcer nem espelhar.</translation>
        </message>
        <message>
            <source>As they were taken, perhaps not on one scale.</source>
            <translation>Como foram tiradas, talvez não na mesma escala.</translation>
        </message>
        <message>
            <source>Photographs, %1: %2, and %3. %4</source>
            <comment>view, first, last, how</comment>
            <translation>Fotos, %1: %2, e %3. %4</translation>
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
            <translation>A primeira e a última de cada vista, a primeira à esquerda. Luz, distância e expressão podem variar: compare com cautela.</translation>
        </message>
        <message>
            <source>Lot, expiry</source>
            <translation>Lote, validade</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>logo após o tratamento</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>O plano</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Correções do registro</translation>
        </message>
    </context>
    <context>
        <name>SheetPage</name>
        <message>
            <source>Follow-up sheet</source>
            <translation>Ficha de retorno</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Salvar como PDF</translation>
        </message>
        <message>
            <source>Page %L1 of the sheet</source>
            <translation>Página %L1 da ficha</translation>
        </message>
        <message>
            <source>With photographs: the first and the last of each view</source>
            <translation>Com fotos: a primeira e a última de cada vista</translation>
        </message>
        <message>
            <source>The photographs are being opened.</source>
            <translation>As fotos estão sendo abertas.</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
    </context>
    <context>
        <name>StepField</name>
        <message>
            <source>%1: less</source>
            <translation>%1: menos</translation>
        </message>
        <message>
            <source>%1: more</source>
            <translation>%1: mais</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>não informado</translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message>
            <source>Today %1</source>
            <translation>hoje %1</translation>
        </message>
        <message>
            <source>Yesterday %1</source>
            <translation>ontem %1</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>date without a year</comment>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>date with a year</comment>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>just now</source>
            <translation>menos de 1 min</translation>
        </message>
        <message>
            <source>Day %1</source>
            <translation>Dia %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln min</source>
            <translation>
                <numerusform>%Ln min</numerusform>
                <numerusform>%Ln min</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln h</source>
            <translation>
                <numerusform>%Ln h</numerusform>
                <numerusform>%Ln h</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln day(s)</source>
            <translation>
                <numerusform>%Ln dia</numerusform>
                <numerusform>%Ln dias</numerusform>
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
            <translation>Passa perto da incisura antegoniana: artéria facial e nervo marginal.</translation>
        </message>
        <message>
            <source>Ends past the zone that moves with speech and chewing.</source>
            <translation>Termina além da zona que se move ao falar e mastigar.</translation>
        </message>
        <message>
            <source>The end is drawn inside the moving zone.</source>
            <translation>O fim está desenhado dentro da zona móvel.</translation>
        </message>
        <message>
            <source>no lot</source>
            <translation>sem lote</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>lote %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>Thread %1: %2, %3. %4. %5, %6, %7. %8</source>
            <comment>number, side, zone, ending, thread, lot, volume, caution</comment>
            <translation>Fio %1: %2, %3. %4. %5, %6, %7. %8</translation>
        </message>
        <message>
            <source>Cautions explained</source>
            <translation>Precauções explicadas</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Consentimento</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>Curativos</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>Valores logo depois</translation>
        </message>
        <message>
            <source>no</source>
            <translation>não</translation>
        </message>
        <message>
            <source>none</source>
            <translation>nenhum</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sim</translation>
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
            <translation>%1 mL fora dos trajetos</translation>
        </message>
        <message>
            <source>%1, expiry %2</source>
            <comment>lot, date as on the pack</comment>
            <translation>%1, validade %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>label, value</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>May teach the usual range</source>
            <translation>Pode ser usado para a faixa normal</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Peso</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise</source>
            <translation>Lidocaína dada de outro modo</translation>
        </message>
        <message>
            <source>epinephrine %1</source>
            <translation>epinefrina %1</translation>
        </message>
        <message>
            <source>not buffered</source>
            <translation>sem tamponamento</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>não pesado</translation>
        </message>
        <message>
            <source>%1, %2%</source>
            <comment>drug, percent</comment>
            <translation>%1, %2%</translation>
        </message>
        <message>
            <source>buffered with 8.4% bicarbonate, 1 part to %1</source>
            <translation>tamponada com bicarbonato a 8,4%, 1 parte para %1</translation>
        </message>
        <message>
            <source>One more along the same track</source>
            <translation>Mais um no mesmo trajeto</translation>
        </message>
        <message>
            <source>Taken out and placed anew</source>
            <translation>Retirado e colocado de novo</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fios colocados por</translation>
        </message>
        <message>
            <source>not written down</source>
            <translation>não anotado</translation>
        </message>
        <message>
            <source>What you chose stays. The drawing says otherwise: %1.</source>
            <translation>O que você escolheu fica. O desenho diz outra coisa: %1.</translation>
        </message>
        <message>
            <source>Sharp needle</source>
            <translation>Agulha afiada</translation>
        </message>
        <message>
            <source>Blunt cannula</source>
            <translation>Cânula romba</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <comment>needle or cannula, its length</comment>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>Needle or cannula of %1 mm</source>
            <translation>Agulha ou cânula de %1 mm</translation>
        </message>
        <message>
            <source>no epinephrine</source>
            <translation>sem epinefrina</translation>
        </message>
        <message>
            <source>epinephrine at the entry point</source>
            <translation>epinefrina no ponto de entrada</translation>
        </message>
        <message>
            <source>epinephrine along the track</source>
            <translation>epinefrina no trajeto</translation>
        </message>
        <message>
            <source>epinephrine at entry point and along the track</source>
            <translation>epinefrina no ponto de entrada e no trajeto</translation>
        </message>
        <message>
            <source>Planned: %1. Placed: %2.</source>
            <comment>threads, threads</comment>
            <translation>Planejado: %1. Colocado: %2.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <comment>numbers of threads in the plan</comment>
            <translation>Deixado de fora: %1.</translation>
        </message>
        <message>
            <source>Not in the plan: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Fora do plano: %1.</translation>
        </message>
        <message>
            <source>Moved: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Deslocado: %1.</translation>
        </message>
        <message>
            <source>Otherwise than planned: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Diferente do planejado: %1.</translation>
        </message>
        <message>
            <source>As planned.</source>
            <translation>Como planejado.</translation>
        </message>
        <message>
            <source>%1 (in the plan %2)</source>
            <comment>number of a thread, its number in the plan</comment>
            <translation>%1 (no plano %2)</translation>
        </message>
        <message>
            <source>Left out.</source>
            <translation>Deixado de fora.</translation>
        </message>
        <message>
            <source>Placed as thread %1.</source>
            <translation>Colocado como fio %1.</translation>
        </message>
        <message>
            <source>Moved.</source>
            <translation>Deslocado.</translation>
        </message>
        <message>
            <source>Otherwise than planned.</source>
            <translation>Diferente do planejado.</translation>
        </message>
        <message>
            <source>Planned thread %1: %2, %3. %4. %5. %6</source>
            <comment>number, side, zone, ending, thread, what became of it</comment>
            <translation>Fio planejado %1: %2, %3. %4. %5. %6</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>O plano</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product as on the pack</comment>
            <translation>%1, produto %2</translation>
        </message>
        <message>
            <source>%1: %2; until then %3</source>
            <comment>label, what stands there now, what stood there</comment>
            <translation>%1: %2; até então %3</translation>
        </message>
        <message>
            <source>Written in: %1</source>
            <comment>a thread</comment>
            <translation>Acrescentado: %1</translation>
        </message>
        <message>
            <source>Taken out of the record: %1</source>
            <comment>a thread</comment>
            <translation>Retirado do registro: %1</translation>
        </message>
        <message>
            <source>Thread %1</source>
            <comment>its number</comment>
            <translation>Fio %1</translation>
        </message>
        <message>
            <source>Thread %1, until then %2</source>
            <comment>its number, its former number</comment>
            <translation>Fio %1, até então %2</translation>
        </message>
        <message>
            <source>drawn elsewhere</source>
            <translation>desenhado em outro lugar</translation>
        </message>
        <message>
            <source>When the treatment was</source>
            <translation>Quando foi o tratamento</translation>
        </message>
        <message>
            <source>The threads are numbered otherwise.</source>
            <translation>Os fios estão numerados de outro modo.</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anestésico</translation>
        </message>
        <message>
            <source>Threads of the plan</source>
            <translation>Fios do plano</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Observação</translation>
        </message>
        <message>
            <source>Recorded again %1, without a reason</source>
            <comment>when</comment>
            <translation>Registrado de novo %1, sem motivo</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>alguém</translation>
        </message>
        <message>
            <source>Corrected %1 by %2. Why: %3</source>
            <comment>when, who, reason</comment>
            <translation>Corrigido %1 por %2. Por quê: %3</translation>
        </message>
        <message>
            <source>What stood there until then has not arrived at this desk.</source>
            <translation>O que constava até então não chegou a esta estação.</translation>
        </message>
        <message>
            <source>Nothing differs from what stood there.</source>
            <translation>Nada difere do que constava.</translation>
        </message>
        <message>
            <source>This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.</source>
            <translation>Este acompanhamento e seu telefone contam a partir de outro dia do tratamento, ou com outras notas logo depois, do que diz o registro. Corrija o registro ou registre-o de novo como está: então contarão por ele.</translation>
        </message>
        <message>
            <source>Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.</source>
            <translation>Duas estações registraram isto sem saber uma da outra. O registro mais recente vale por inteiro; veja abaixo o que o outro dizia e corrija o que falta.</translation>
        </message>
        <message>
            <source>No phone has this course: nothing changes on one.</source>
            <translation>Nenhum celular tem este acompanhamento: nada muda em nenhum.</translation>
        </message>
        <message>
            <source>Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.</source>
            <translation>O celular dela guarda do tratamento apenas quando foi e as notas logo depois. Ambos ficam como estão; nada disto vai para lá.</translation>
        </message>
        <message>
            <source>With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.</source>
            <translation>Na próxima sincronização o celular dela recebe quando foi o tratamento e as notas logo depois, e conta por eles dias, lembretes e avisos. Até lá segue os antigos. Os achados são avaliados de novo em ambos; o que foi sinalizado permanece, mas um telefone com um programa mais antigo deixa de mostrar o que o novo dia não provoca.</translation>
        </message>
        <message>
            <source>The visit that was agreed does not lie 1 to 60 days after that: agree on another one.</source>
            <translation>A consulta combinada não fica de 1 a 60 dias depois: combine outra.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentAnaesthetic</name>
        <message>
            <source>Solution</source>
            <translation>Solução</translation>
        </message>
        <message>
            <source>Strength</source>
            <translation>Concentração</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Epinefrina</translation>
        </message>
        <message>
            <source>Of this solution outside the tracks: entry points, blocks</source>
            <translation>Desta solução fora dos trajetos: pontos de entrada, bloqueios</translation>
        </message>
        <message>
            <source>Weight, kg</source>
            <translation>Peso, kg</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise, mg</source>
            <translation>Lidocaína dada de outro modo, mg</translation>
        </message>
        <message>
            <source>Nerve blocks, other strengths</source>
            <translation>Bloqueios de nervo, outras concentrações</translation>
        </message>
        <message>
            <source>Buffered with 8.4% bicarbonate</source>
            <translation>Tamponada com bicarbonato a 8,4%</translation>
        </message>
        <message>
            <source>Where it held epinephrine, all threads at once</source>
            <translation>Onde havia epinefrina, todos os fios de uma vez</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCare</name>
        <message>
            <source>Care and consent</source>
            <translation>Cuidados e consentimento</translation>
        </message>
        <message>
            <source>Small dressings on the entry points</source>
            <translation>Curativos pequenos nos pontos de entrada</translation>
        </message>
        <message>
            <source>Cautions explained: what is usual, when to call, what to spare</source>
            <translation>Precauções explicadas: o que é normal, quando ligar, o que evitar</translation>
        </message>
        <message>
            <source>Consent to the treatment given</source>
            <translation>Consentimento dado para o tratamento</translation>
        </message>
        <message>
            <source>This course may teach the clinic's usual range, without a name</source>
            <translation>Este caso pode ser usado, sem nome, para calcular a faixa normal da clínica</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Observação</translation>
        </message>
        <message>
            <source>Before it can be recorded</source>
            <translation>Antes de registrar</translation>
        </message>
        <message>
            <source>Right after the treatment, 0 to 10</source>
            <translation>Logo depois do tratamento, 0 a 10</translation>
        </message>
        <message>
            <source>What you see now, on each side of the patient. Leave a dash where you did not look.</source>
            <translation>O que você vê agora em cada lado do paciente. Deixe um traço onde não olhou.</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Direita</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Esquerda</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fios colocados por</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPage</name>
        <message>
            <source>Treatment of %1</source>
            <translation>Tratamento de %1</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Novo tratamento</translation>
        </message>
        <message>
            <source>Taken up from the kept draft, %1</source>
            <translation>Retomado do rascunho guardado, %1</translation>
        </message>
        <message>
            <source>Start over</source>
            <translation>Começar de novo</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Voltar</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>A seguir: %1</translation>
        </message>
        <message>
            <source>Record the treatment</source>
            <translation>Registrar o tratamento</translation>
        </message>
        <message>
            <source>%1 What you write is kept as a draft.</source>
            <translation>%1 O que você escrever fica guardado como rascunho.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Desfazer</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Refazer</translation>
        </message>
        <message>
            <source>Empties everything but the patient; can be undone.</source>
            <translation>Esvazia tudo, menos a pessoa; pode ser desfeito.</translation>
        </message>
        <message>
            <source>Correct the treatment of %1</source>
            <translation>Corrigir o tratamento de %1</translation>
        </message>
        <message>
            <source>Drop the correction</source>
            <translation>Descartar a correção</translation>
        </message>
        <message>
            <source>The record stays as it is.</source>
            <translation>O registro fica como está.</translation>
        </message>
        <message>
            <source>Record the correction</source>
            <translation>Registrar a correção</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPatient</name>
        <message>
            <source>Known patients</source>
            <translation>Pacientes conhecidos</translation>
        </message>
        <message>
            <source>Name or phone</source>
            <translation>Nome ou telefone</translation>
        </message>
        <message>
            <source>Nobody found. Register the patient beside this.</source>
            <translation>Ninguém encontrado. Cadastre o paciente ao lado.</translation>
        </message>
        <message>
            <source>New patient</source>
            <translation>Novo paciente</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nome</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Telefone para ligar para o paciente</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Idioma do diário</translation>
        </message>
        <message>
            <source>Register</source>
            <translation>Cadastrar</translation>
        </message>
        <message>
            <source>Begun and not recorded</source>
            <translation>Começado e não registrado</translation>
        </message>
    </context>
    <context>
        <name>TreatmentThreads</name>
        <message>
            <source>Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.</source>
            <translation>Desenhe um fio no mapa: pressione no ponto de entrada e solte no fim. Com o teclado: setas e Espaço.</translation>
        </message>
    </context>
    <context>
        <name>UndoBar</name>
        <message>
            <source>Undo</source>
            <translation>Desfazer</translation>
        </message>
    </context>
    <context>
        <name>UnlockPage</name>
        <message>
            <source>Passphrase</source>
            <translation>Frase secreta</translation>
        </message>
        <message>
            <source>Passphrase once more</source>
            <translation>Frase secreta mais uma vez</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Destrancar</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Configurar</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Look around with invented patients</source>
            <translation>Explorar com pacientes inventados</translation>
        </message>
        <message>
            <source>A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.</source>
            <translation>Uma clínica à parte, que some quando você a tranca. O cofre da clínica continua fechado.</translation>
        </message>
        <message>
            <source>Recovery code from the paper</source>
            <translation>Código de recuperação do papel</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Uma nova frase secreta</translation>
        </message>
        <message>
            <source>Set this passphrase and unlock</source>
            <translation>Definir esta frase secreta e destrancar</translation>
        </message>
        <message>
            <source>I know the passphrase</source>
            <translation>Eu sei a frase secreta</translation>
        </message>
        <message>
            <source>I lost the passphrase</source>
            <translation>Perdi a frase secreta</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Parar</translation>
        </message>
        <message>
            <source>Nothing has been written yet.</source>
            <translation>Nada foi gravado ainda.</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Emergency</source>
            <translation>Emergência</translation>
        </message>
        <message>
            <source>Call now</source>
            <translation>Ligar agora</translation>
        </message>
        <message>
            <source>Next working day</source>
            <translation>Próximo dia útil</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>No retorno</translation>
        </message>
        <message>
            <source>The phone said to call the emergency number. Make sure that help is on its way.</source>
            <translation>O celular orientou ligar para o número de emergência. Certifique-se de que a ajuda está a caminho.</translation>
        </message>
        <message>
            <source>The phone said to call the clinic today. Call the patient if no call came.</source>
            <translation>O celular orientou ligar para a clínica hoje. Se o paciente não ligou, ligue para ele.</translation>
        </message>
        <message>
            <source>The patient expects an answer on the next working day.</source>
            <translation>O paciente espera resposta no próximo dia útil.</translation>
        </message>
        <message>
            <source>Bring it up at the follow-up.</source>
            <translation>Trate disto no retorno.</translation>
        </message>
        <message>
            <source>Hard to breathe or to swallow</source>
            <translation>Dificuldade para respirar ou engolir</translation>
        </message>
        <message>
            <source>Neck or jaw swelling that grows fast</source>
            <translation>Inchaço no pescoço ou na mandíbula que cresce rápido</translation>
        </message>
        <message>
            <source>Throat or tongue swells, wheeze, faint or hives</source>
            <translation>Inchaço da garganta ou da língua, chiado, desmaio ou urticária</translation>
        </message>
        <message>
            <source>Metal taste, ringing ears, confusion or twitching</source>
            <translation>Gosto de metal, zumbido no ouvido, confusão ou tremores</translation>
        </message>
        <message>
            <source>Severely ill: hard shivering, confused or mottled skin</source>
            <translation>Estado grave: calafrios com tremor intenso, confusão ou pele marmorizada</translation>
        </message>
        <message>
            <source>Face droops with a weak arm or slurred speech</source>
            <translation>Rosto caído com braço fraco ou fala enrolada</translation>
        </message>
        <message>
            <source>Sudden loss of sight or double vision</source>
            <translation>Perda súbita da visão ou visão dupla</translation>
        </message>
        <message>
            <source>One side swells fast</source>
            <translation>Um lado incha rápido</translation>
        </message>
        <message>
            <source>Skin white, grey or net-like, cold or blistering</source>
            <translation>Pele branca, cinza ou em rede, fria ou com bolhas</translation>
        </message>
        <message>
            <source>Colour change near an entry point</source>
            <translation>Mudança de cor perto de um ponto de entrada</translation>
        </message>
        <message>
            <source>Warmer than the other side</source>
            <translation>Mais quente que o outro lado</translation>
        </message>
        <message>
            <source>Firm, shiny or tight</source>
            <translation>Firme, brilhante ou esticada</translation>
        </message>
        <message>
            <source>More tender than yesterday</source>
            <translation>Mais dor ao toque que ontem</translation>
        </message>
        <message>
            <source>The edge has moved</source>
            <translation>A borda avançou</translation>
        </message>
        <message>
            <source>Thick or milky fluid</source>
            <translation>Líquido grosso ou leitoso</translation>
        </message>
        <message>
            <source>Thread end through the skin</source>
            <translation>Ponta de fio aparecendo na pele</translation>
        </message>
        <message>
            <source>Weakness of the face</source>
            <translation>Fraqueza facial</translation>
        </message>
        <message>
            <source>Cheek swells on eating, or clear fluid</source>
            <translation>Bochecha incha ao comer, ou líquido claro</translation>
        </message>
        <message>
            <source>Still bleeding after 15 minutes of pressure</source>
            <translation>Ainda sangra após 15 minutos de compressão</translation>
        </message>
        <message>
            <source>A lump that beats</source>
            <translation>Caroço que pulsa</translation>
        </message>
        <message>
            <source>Thread seen or felt, skin calm</source>
            <translation>Fio visível ou palpável, pele calma</translation>
        </message>
        <message>
            <source>Chills</source>
            <translation>Calafrios</translation>
        </message>
        <message>
            <source>Brow</source>
            <translation>Sobrancelha</translation>
        </message>
        <message>
            <source>Temple</source>
            <translation>Têmpora</translation>
        </message>
        <message>
            <source>Midface</source>
            <translation>Terço médio</translation>
        </message>
        <message>
            <source>Cheek</source>
            <translation>Bochecha</translation>
        </message>
        <message>
            <source>Nasolabial fold</source>
            <translation>Sulco nasolabial</translation>
        </message>
        <message>
            <source>Marionette fold</source>
            <translation>Linha de marionete</translation>
        </message>
        <message>
            <source>Jawline</source>
            <translation>Linha mandibular</translation>
        </message>
        <message>
            <source>Under the chin</source>
            <translation>Sob o queixo</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Pescoço</translation>
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
            <translation>Outro material</translation>
        </message>
        <message>
            <source>Smooth</source>
            <translation>Liso</translation>
        </message>
        <message>
            <source>Twisted</source>
            <translation>Torcido</translation>
        </message>
        <message>
            <source>Barbed, one way</source>
            <translation>Espiculado, unidirecional</translation>
        </message>
        <message>
            <source>Barbed, two ways</source>
            <translation>Espiculado, bidirecional</translation>
        </message>
        <message>
            <source>Moulded</source>
            <translation>Moldado</translation>
        </message>
        <message>
            <source>Cones</source>
            <translation>Com cones</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Além da zona móvel</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>Antes da zona móvel</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Esquerda</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Direita</translation>
        </message>
        <message>
            <source>Both</source>
            <translation>Ambos os lados</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>Frente</translation>
        </message>
        <message>
            <source>From the patient's left</source>
            <translation>Da esquerda do paciente</translation>
        </message>
        <message>
            <source>From the patient's right</source>
            <translation>Da direita do paciente</translation>
        </message>
        <message>
            <source>Lidocaine with epinephrine</source>
            <translation>Lidocaína com epinefrina</translation>
        </message>
        <message>
            <source>Lidocaine, plain</source>
            <translation>Lidocaína sem epinefrina</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Assumido</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Ligação feita</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Consulta antecipada</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Fechado</translation>
        </message>
        <message>
            <source>Reopened</source>
            <translation>Reaberto</translation>
        </message>
        <message>
            <source>Reassured: usual course, explained</source>
            <translation>Tranquilização: evolução normal, explicada</translation>
        </message>
        <message>
            <source>Advised: told what to do at home</source>
            <translation>Orientação: o que fazer em casa</translation>
        </message>
        <message>
            <source>Treated in the clinic</source>
            <translation>Tratamento na clínica</translation>
        </message>
        <message>
            <source>Sent to urgent care</source>
            <translation>Encaminhamento ao pronto-socorro</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Sem contato</translation>
        </message>
        <message>
            <source>Very much better</source>
            <translation>Muitíssimo melhor</translation>
        </message>
        <message>
            <source>Much better</source>
            <translation>Muito melhor</translation>
        </message>
        <message>
            <source>Better</source>
            <translation>Melhor</translation>
        </message>
        <message>
            <source>Unchanged</source>
            <translation>Sem mudança</translation>
        </message>
        <message>
            <source>Worse</source>
            <translation>Pior</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hematoma</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infecção</translation>
        </message>
        <message>
            <source>Thread end out</source>
            <translation>Extrusão da ponta do fio</translation>
        </message>
        <message>
            <source>Lasting puckering</source>
            <translation>Covinhas persistentes</translation>
        </message>
        <message>
            <source>Visible thread</source>
            <translation>Fio visível</translation>
        </message>
        <message>
            <source>Nerve weakness</source>
            <translation>Paresia de nervo</translation>
        </message>
        <message>
            <source>Lasting numbness</source>
            <translation>Dormência persistente</translation>
        </message>
        <message>
            <source>Salivary leak</source>
            <translation>Extravasamento de saliva</translation>
        </message>
        <message>
            <source>Skin injury</source>
            <translation>Lesão de pele</translation>
        </message>
        <message>
            <source>Asymmetry</source>
            <translation>Assimetria</translation>
        </message>
        <message>
            <source>Other, see note</source>
            <translation>Outra, ver observação</translation>
        </message>
        <message>
            <source>That passphrase does not open this vault.</source>
            <translation>Essa frase secreta não abre este cofre.</translation>
        </message>
        <message>
            <source>Too many tries. Wait a moment, then try again.</source>
            <translation>Tentativas demais. Espere um momento e tente de novo.</translation>
        </message>
        <message>
            <source>The vault on this computer is damaged. Nothing was changed. Restore it from a backup.</source>
            <translation>O cofre neste computador está danificado. Nada foi alterado. Restaure-o de um backup.</translation>
        </message>
        <message>
            <source>The disk is full. Nothing was saved. Free some space and try again.</source>
            <translation>O disco está cheio. Nada foi salvo. Libere espaço e tente de novo.</translation>
        </message>
        <message>
            <source>The disk reported an error. Nothing was saved.</source>
            <translation>O disco relatou um erro. Nada foi salvo.</translation>
        </message>
        <message>
            <source>The hub cannot be reached. What you record is kept here and sent later.</source>
            <translation>Não há contato com o servidor. O que você registrar fica aqui e é enviado mais tarde.</translation>
        </message>
        <message>
            <source>Something arrived that is not genuine. It was kept apart and not used.</source>
            <translation>Chegou algo que não é autêntico. Foi separado e não foi usado.</translation>
        </message>
        <message>
            <source>Its time is over. Start again.</source>
            <translation>O tempo acabou. Comece de novo.</translation>
        </message>
        <message>
            <source>There is one already.</source>
            <translation>Já existe.</translation>
        </message>
        <message>
            <source>It is not there.</source>
            <translation>Não foi encontrado.</translation>
        </message>
        <message>
            <source>The vault is locked. Unlock it first.</source>
            <translation>O cofre está trancado. Destranque-o primeiro.</translation>
        </message>
        <message>
            <source>It was refused.</source>
            <translation>Foi recusado.</translation>
        </message>
        <message>
            <source>Something is missing or out of range: %1</source>
            <translation>Algo falta ou está fora do limite: %1</translation>
        </message>
        <message>
            <source>This needs a newer version of the program.</source>
            <translation>Isto precisa de uma versão mais nova do programa.</translation>
        </message>
        <message>
            <source>That is too long.</source>
            <translation>É longo demais.</translation>
        </message>
        <message>
            <source>That is not possible now.</source>
            <translation>Não é possível agora.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln invented course(s)</source>
            <translation>
                <numerusform>%Ln caso inventado</numerusform>
                <numerusform>%Ln casos inventados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln uncomplicated course(s)</source>
            <translation>
                <numerusform>%Ln caso sem complicações</numerusform>
                <numerusform>%Ln casos sem complicações</numerusform>
            </translation>
        </message>
        <message>
            <source>Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.</source>
            <translation>Sem TLS, outros poderiam ler o que é enviado: HTTP sem criptografia é só para um servidor neste mesmo computador. Nada foi enviado.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.</source>
            <translation>Não se sabe se o celular mostrou este aviso. Ligue agora e certifique-se de que a ajuda está a caminho.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call the patient now.</source>
            <translation>Não se sabe se o celular mostrou este aviso. Ligue agora para o paciente.</translation>
        </message>
        <message>
            <source>Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none.</source>
            <translation>Sangue acumulado sob a pele como um caroço, que foi observado de perto, comprimido, drenado ou operado; um roxo plano não é.</translation>
        </message>
        <message>
            <source>Pus, or redness, warmth and pain that spread, treated as an infection.</source>
            <translation>Pus, ou vermelhidão, calor e dor que se espalham, tratados como infecção.</translation>
        </message>
        <message>
            <source>An end of a thread stands out of the skin or lies bare.</source>
            <translation>Uma ponta do fio sai da pele ou fica exposta.</translation>
        </message>
        <message>
            <source>A dimple or fold along a thread that is still there at the follow-up.</source>
            <translation>Uma covinha ou dobra ao longo de um fio que ainda está lá no retorno.</translation>
        </message>
        <message>
            <source>A thread can be seen or felt through closed skin, and troubles the patient.</source>
            <translation>Um fio é visto ou sentido através da pele fechada e incomoda a paciente.</translation>
        </message>
        <message>
            <source>A part of the face moves less than before the treatment, after the anaesthetic has worn off.</source>
            <translation>Uma parte do rosto se move menos do que antes do tratamento, depois que a anestesia passou.</translation>
        </message>
        <message>
            <source>Feeling in a part of the face is less or other than before, still at the follow-up.</source>
            <translation>A sensibilidade em uma parte do rosto é menor ou diferente de antes, ainda no retorno.</translation>
        </message>
        <message>
            <source>Clear fluid from the cheek or swelling of it, more while eating.</source>
            <translation>Líquido claro da bochecha ou inchaço dela, mais ao comer.</translation>
        </message>
        <message>
            <source>Skin that blistered, died, broke open or was left with a scar or a dark mark.</source>
            <translation>Pele que fez bolhas, morreu, se abriu ou ficou com cicatriz ou mancha escura.</translation>
        </message>
        <message>
            <source>The sides differ more than before the treatment, in the eyes of patient or practitioner.</source>
            <translation>Os lados diferem mais do que antes do tratamento, aos olhos da paciente ou do profissional.</translation>
        </message>
        <message>
            <source>Anything else that needed a visit, a medicine or an act; the note says what.</source>
            <translation>Qualquer outra coisa que precisou de uma consulta, um remédio ou um procedimento; a observação diz o quê.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::app::DeskProgram</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Quem está na estação?</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>Fila</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>Treatment</source>
            <translation>Tratamento</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Vincular um celular</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Caso</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Retorno</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Ficha de retorno</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protocolos</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Clínica</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>Change the protocol</source>
            <translation>Mudar o protocolo</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Passagem de plantão</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Adicionar uma estação</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Estações</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Juntar-se às outras estações da clínica</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Backup e chaves</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Sobre o Ebbline</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Quem fez o quê</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The recovery code is not shown any more. If it is not on paper, make a new one.</source>
            <translation>O código de recuperação não é mais mostrado. Se não está no papel, crie um novo.</translation>
        </message>
        <message>
            <source>A protocol from a file</source>
            <translation>Um protocolo de um arquivo</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicEditor</name>
        <message>
            <source>The clinic's name.</source>
            <translation>O nome da clínica.</translation>
        </message>
        <message>
            <source>The clinic's phone number.</source>
            <translation>O número de telefone da clínica.</translation>
        </message>
        <message>
            <source>The emergency number, digits only, for example 112.</source>
            <translation>O número de emergência, só dígitos, por exemplo 112.</translation>
        </message>
        <message>
            <source>At least one person who works at the desk.</source>
            <translation>Pelo menos uma pessoa que trabalhe na estação.</translation>
        </message>
        <message>
            <source>The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.</source>
            <translation>A impressão digital da chave do servidor: 64 caracteres, 0 a 9 e A a F.</translation>
        </message>
        <message>
            <source>No number is recorded yet.</source>
            <translation>Nenhum número registrado ainda.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>clinic, phone</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Plantão: %1</translation>
        </message>
        <message>
            <source>Emergency: %1</source>
            <translation>Emergência: %1</translation>
        </message>
        <message>
            <source>Saved, %1</source>
            <translation>Salvo, %1</translation>
        </message>
        <message>
            <source>The clinic's key is copied.</source>
            <translation>A chave da clínica foi copiada.</translation>
        </message>
        <message>
            <source>The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>O número de telefone da clínica como um só número, sem letras, “/”, “,”, “;” ou “(0)”, por exemplo +00 555 0100.</translation>
        </message>
        <message>
            <source>The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>O número de plantão como um só número, sem letras, “/”, “,”, “;” ou “(0)”, por exemplo +00 555 0100.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message>
            <source>Seen: %1</source>
            <translation>Visto: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Assumido: %1</translation>
        </message>
        <message>
            <source>Treated %1 · %2 · %3, version %4</source>
            <comment>date, threads, protocol, its version</comment>
            <translation>Tratamento: %1 · %2 · %3, versão %4</translation>
        </message>
        <message>
            <source>Last entry %1</source>
            <translation>Última anotação: %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Ainda sem anotação</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Celular vinculado</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Nenhum celular vinculado</translation>
        </message>
        <message>
            <source>No reminder due yet</source>
            <translation>Ainda sem lembrete previsto</translation>
        </message>
        <message>
            <source>Too long: shorten it before sending.</source>
            <translation>Longa demais: encurte antes de enviar.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln fio</numerusform>
                <numerusform>%Ln fios</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>%1 de %Ln lembrete respondido com “feito”</numerusform>
                <numerusform>%1 de %Ln lembretes respondidos com “feito”</numerusform>
            </translation>
        </message>
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>Nenhum celular vinculado: não é possível enviar mensagem.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Salvo como %1. O arquivo não está criptografado: guarde-o como guarda o prontuário.</translation>
        </message>
        <message>
            <source>Save the course</source>
            <translation>Salvar o caso</translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln anotação nova ou corrigida, ainda não aberta</numerusform>
                <numerusform>%Ln anotações novas ou corrigidas, ainda não abertas</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message>
            <source>Treatments that are recorded show up here.</source>
            <translation>Os tratamentos registrados aparecem aqui.</translation>
        </message>
        <message>
            <source>No patient and no lot number matches.</source>
            <translation>Nenhum paciente ou número de lote corresponde.</translation>
        </message>
        <message>
            <source>Treated %1</source>
            <translation>Tratamento: %1</translation>
        </message>
        <message>
            <source>last entry %1 ago</source>
            <translation>última anotação há %1</translation>
        </message>
        <message>
            <source>no entry yet</source>
            <translation>ainda sem anotação</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Fechado</translation>
        </message>
        <message>
            <source>Phone linked, %1</source>
            <translation>Celular vinculado, %1</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Nenhum celular vinculado</translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln não aberta</numerusform>
                <numerusform>%Ln não abertas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>%Ln mensagem não lida</numerusform>
                <numerusform>%Ln mensagens não lidas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln caso</numerusform>
                <numerusform>%Ln casos</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CurveBoard</name>
        <message>
            <source>L %1  R %2</source>
            <comment>last scores, left and right</comment>
            <translation>Esq. %1  Dir. %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>usual range</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>entered late</source>
            <translation>escrito mais tarde</translation>
        </message>
        <message>
            <source>amended</source>
            <translation>corrigido</translation>
        </message>
        <message>
            <source>%1, %2: left %3, right %4, usual %5. %6</source>
            <comment>day, time, scores, usual range, note</comment>
            <translation>%1, %2: esquerda %3, direita %4, normal %5. %6</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DoseLimits</name>
        <message>
            <source>Plain, mg/kg</source>
            <translation>Sem epinefrina, mg/kg</translation>
        </message>
        <message>
            <source>Plain, in all, mg</source>
            <translation>Sem epinefrina, no total, mg</translation>
        </message>
        <message>
            <source>With epinephrine, mg/kg</source>
            <translation>Com epinefrina, mg/kg</translation>
        </message>
        <message>
            <source>With epinephrine, in all, mg</source>
            <translation>Com epinefrina, no total, mg</translation>
        </message>
        <message>
            <source>A number up to %1, the label's. Empty: the label's.</source>
            <translation>Um número até %1, o da bula. Vazio: o da bula.</translation>
        </message>
        <message>
            <source>The label's limits hold.</source>
            <translation>Valem os limites da bula.</translation>
        </message>
        <message>
            <source>Lowered by %1, %2</source>
            <comment>person, time</comment>
            <translation>Reduzido por %1, %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::FollowUpEditor</name>
        <message>
            <source>Recorded by %1, %2</source>
            <translation>Registrado por %1, %2</translation>
        </message>
        <message>
            <source>1, not at all</source>
            <translation>1, nada</translation>
        </message>
        <message>
            <source>2, a little</source>
            <translation>2, um pouco</translation>
        </message>
        <message>
            <source>3, fairly</source>
            <translation>3, razoavelmente</translation>
        </message>
        <message>
            <source>4, mostly</source>
            <translation>4, em grande parte</translation>
        </message>
        <message>
            <source>5, fully</source>
            <translation>5, totalmente</translation>
        </message>
        <message>
            <source>Choose how the result compares with before.</source>
            <translation>Escolha como o resultado se compara com antes.</translation>
        </message>
        <message>
            <source>Ask the patient how satisfied they are.</source>
            <translation>Pergunte ao paciente o quanto ele está satisfeito.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quem está na estação.</translation>
        </message>
        <message>
            <source>Say whether the course was uncomplicated.</source>
            <translation>Diga se a evolução foi sem complicações.</translation>
        </message>
        <message>
            <source>Say what became of it: %1.</source>
            <translation>Diga no que deu: %1.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message>
            <source>Not heard from the hub yet</source>
            <translation>Ainda sem notícias do servidor</translation>
        </message>
        <message>
            <source>Last heard from the hub: %1</source>
            <translation>Último contato com o servidor: %1</translation>
        </message>
        <message>
            <source>A phone sent two different histories. Do not rely on its entries; call the patient.</source>
            <translation>Um celular enviou dois históricos diferentes. Não confie nas anotações dele; ligue para o paciente.</translation>
        </message>
        <message>
            <source>A message from a phone is missing. The queue may be incomplete.</source>
            <translation>Falta uma mensagem de um celular. A fila pode estar incompleta.</translation>
        </message>
        <message>
            <source>Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.</source>
            <translation>Outra de suas estações enviou dois históricos diferentes. Pergunte lá o que foi escrito e compare com o que consta aqui.</translation>
        </message>
        <message>
            <source>A message from another desk of yours is missing. What was written there may not be here.</source>
            <translation>Falta uma mensagem de outra de suas estações. O que foi escrito lá pode não estar aqui.</translation>
        </message>
        <message>
            <source>Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.</source>
            <translation>Parte do que chegou foi escrita por um programa mais novo e não pode ser mostrada aqui. Atualize esta estação. Até lá, ligue para os pacientes cujo celular foi atualizado.</translation>
        </message>
        <message>
            <source>The queue may be out of date: nothing was heard for over a day.</source>
            <translation>A fila pode estar desatualizada: sem notícias há mais de um dia.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>%Ln mensagem não pôde ser verificada e foi separada.</numerusform>
                <numerusform>%Ln mensagens não puderam ser verificadas e foram separadas.</numerusform>
            </translation>
        </message>
        <message>
            <source>Phones not heard of for more than a day: %1</source>
            <comment>list of names</comment>
            <translation>Mais de um dia sem notícias dos celulares de: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>e mais %Ln</numerusform>
                <numerusform>e mais %Ln</numerusform>
            </translation>
        </message>
        <message>
            <source>%1. What was written there may not be here.</source>
            <translation>%1. O que foi escrito lá pode não estar aqui.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>Mais de um dia sem notícias de %Ln celular.</numerusform>
                <numerusform>Mais de um dia sem notícias de %Ln celulares.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>Há mais de um dia %Ln celular não confirma o que foi enviado a ele.</numerusform>
                <numerusform>Há mais de um dia %Ln celulares não confirmam o que foi enviado a eles.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>%Ln celular ainda precisa confirmar o que foi enviado a ele.</numerusform>
                <numerusform>%Ln celulares ainda precisam confirmar o que foi enviado a eles.</numerusform>
            </translation>
        </message>
        <message>
            <source>All phones were heard of within a day or little more, and have confirmed what was sent to them.</source>
            <translation>Há notícias de todos os celulares no último dia ou pouco mais, e eles confirmaram o que lhes foi enviado.</translation>
        </message>
        <message>
            <source>This desk runs on older data: a phone holds more from it. Write again what was written here in between.</source>
            <translation>Esta estação trabalha com dados mais antigos: um celular tem mais dela. Escreva de novo o que foi escrito aqui nesse meio-tempo.</translation>
        </message>
        <message>
            <source>For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.</source>
            <translation>Há mais de %1 dias um telefone não recebe o que lhe foi enviado: %2. Ligue antes que algo se perca.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 fast: please set it.</source>
            <translation>O relógio deste computador está adiantado cerca de %1: acerte-o, por favor.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 slow: please set it.</source>
            <translation>O relógio deste computador está atrasado cerca de %1: acerte-o, por favor.</translation>
        </message>
        <message>
            <source>This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Esta estação trabalha com dados mais antigos: outra de suas estações tem mais dela. O que é escrito aqui agora não chega lá. Copie à mão. Depois, em uma estação que tenha a chave raiz, exclua a outra em “Estações” e adicione-a de novo.</translation>
        </message>
        <message>
            <source>Another desk of yours says that it runs on older data. What is written there now does not arrive here. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Outra de suas estações diz que trabalha com dados mais antigos. O que é escrito lá agora não chega aqui. Copie à mão. Depois, em uma estação que tenha a chave raiz, exclua a outra em “Estações” e adicione-a de novo.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>It is of: %1.</source>
            <comment>list of names, each with how many</comment>
            <translation>É de: %1.</translation>
        </message>
        <message>
            <source>Messages from these patients&apos; phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <comment>list of names, each with how many</comment>
            <translation>Mensagens dos celulares destes pacientes não podem ser lidas aqui: %1. Ligue e pergunte o que foi escrito. Se continuar assim, peça que os dados do diário sejam salvos no celular (Ajustes, Os meus dados). Só depois apague ali o diário e vincule o celular de novo.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versão %2</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escreva como ano-mês-dia, por exemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>First enter the numbers to call on the Clinic page: the phone shows them with every warning.</source>
            <translation>Primeiro informe os números para ligar na página Clínica: o celular os mostra em cada aviso.</translation>
        </message>
        <message>
            <source>Choose a protocol and a day for the follow-up.</source>
            <translation>Escolha um protocolo e um dia para o retorno.</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Vincular um celular</translation>
        </message>
        <message>
            <source>Making a code</source>
            <translation>Criando um código</translation>
        </message>
        <message>
            <source>Let the patient scan this code</source>
            <translation>Peça ao paciente que escaneie este código</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Compare os números</translation>
        </message>
        <message>
            <source>Linking</source>
            <translation>Vinculando</translation>
        </message>
        <message>
            <source>The phone is linked</source>
            <translation>O celular está vinculado</translation>
        </message>
        <message>
            <source>Stop: this code was used twice</source>
            <translation>Pare: este código foi usado duas vezes</translation>
        </message>
        <message>
            <source>The code has run out</source>
            <translation>O código venceu</translation>
        </message>
        <message>
            <source>No code could be made</source>
            <translation>Não foi possível criar um código</translation>
        </message>
        <message>
            <source>The hub takes the offer. This takes a moment.</source>
            <translation>O servidor está recebendo a oferta. Leva um momento.</translation>
        </message>
        <message>
            <source>If the camera does not work, the code below can be typed instead. It works once.</source>
            <translation>Se a câmera não funcionar, o código abaixo pode ser digitado. Vale uma só vez.</translation>
        </message>
        <message>
            <source>Read the six digits on the patient's phone. Only if they are the same is it the right phone.</source>
            <translation>Leia os seis dígitos no celular do paciente. Só é o celular certo se forem os mesmos.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call go to the phone.</source>
            <translation>O caso, o plano de cuidados e os números para ligar vão para o celular.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call are on their way. The page of the course shows when the first entry arrives.</source>
            <translation>O caso, o plano de cuidados e os números para ligar estão a caminho. A página do caso mostra quando chega a primeira anotação.</translation>
        </message>
        <message>
            <source>Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.</source>
            <translation>Outra pessoa pode ter lido o código. Nada foi vinculado. Crie um novo código, longe da vista de outros.</translation>
        </message>
        <message>
            <source>A code is valid for ten minutes. Nothing was linked. Make a new one.</source>
            <translation>Um código vale dez minutos. Nada foi vinculado. Crie um novo.</translation>
        </message>
        <message>
            <source>Try again.</source>
            <translation>Tente de novo.</translation>
        </message>
        <message>
            <source>Valid for %1:%2</source>
            <comment>minutes:seconds</comment>
            <translation>Válido por %1:%2</translation>
        </message>
        <message>
            <source>First name the hub on the Clinic page.</source>
            <translation>Primeiro indique o servidor na página Clínica.</translation>
        </message>
        <message>
            <source>The patient opens the diary, which asks for a code. Do this together, in the same room.</source>
            <translation>O paciente abre o diário, que pede um código. Façam isto juntos, na mesma sala.</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can do this.</source>
            <translation>Só uma estação com a chave raiz da clínica pode fazer isto.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Adicionar uma estação</translation>
        </message>
        <message>
            <source>Type this at the other desk</source>
            <translation>Digite isto na outra estação</translation>
        </message>
        <message>
            <source>The desk is added</source>
            <translation>A estação foi adicionada</translation>
        </message>
        <message>
            <source>Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this together, in the same room.</source>
            <translation>Inicie este programa no outro computador, configure lá o cofre e escolha juntar-se às outras estações da clínica. Façam isto juntos, na mesma sala.</translation>
        </message>
        <message>
            <source>The code works once. The new desk also asks for the hub's address.</source>
            <translation>O código vale uma só vez. A nova estação pede também o endereço do servidor.</translation>
        </message>
        <message>
            <source>Read the six digits on the new desk. Only if they are the same is it the right one.</source>
            <translation>Leia os seis dígitos na nova estação. Só é a estação certa se forem os mesmos.</translation>
        </message>
        <message>
            <source>The clinic's keys go to the new desk.</source>
            <translation>As chaves da clínica vão para a nova estação.</translation>
        </message>
        <message>
            <source>It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the hub.</source>
            <translation>Ela tem as chaves da clínica. O que pacientes e estações escreveram chega lá depois que esta estação, e em seguida a nova, consultarem o servidor.</translation>
        </message>
        <message>
            <source>A phone before this one has not said what it still holds. What was written on it and not sent is not here.</source>
            <translation>Um celular anterior ainda não disse o que guarda. O que foi escrito nele e não foi enviado não está aqui.</translation>
        </message>
        <message>
            <source>A phone before this one says that everything on it has arrived.</source>
            <translation>Um celular anterior diz que tudo o que havia nele chegou.</translation>
        </message>
        <message>
            <source>(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the patient.</source>
            <translation>(anotações: %L1, mensagens: %L2, fotografias: %L3), o mais recente de %4. Vejam isso nesse celular junto com a pessoa.</translation>
        </message>
        <message>
            <source>The phone is ended. The hub is told with the next sync and refuses it from then on.</source>
            <translation>O celular está excluído. O servidor é avisado na próxima sincronização e o recusa a partir daí.</translation>
        </message>
        <message>
            <source>This course has no phone in use.</source>
            <translation>Este acompanhamento não tem celular em uso.</translation>
        </message>
        <message>
            <source>Another phone for this course</source>
            <translation>Outro celular para este acompanhamento</translation>
        </message>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>Um celular anterior ainda guarda %Ln coisa que nunca chegou</numerusform>
                <numerusform>Um celular anterior ainda guarda %Ln coisas que nunca chegaram</numerusform>
            </translation>
        </message>
        <message>
            <source>The phone shows: %1, %2</source>
            <comment>date, time</comment>
            <translation>O celular mostra: %1, %2</translation>
        </message>
        <message>
            <source>The phone shows: %1, without a time</source>
            <comment>date</comment>
            <translation>O celular mostra: %1, sem hora</translation>
        </message>
        <message>
            <source>The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.</source>
            <comment>date, date</comment>
            <translation>O retorno deve ser de 1 a 60 dias depois do tratamento. Escolha um dia de %1 a %2.</translation>
        </message>
        <message>
            <source>Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Escreva a hora do retorno em horas e minutos, por exemplo 10:30, ou deixe em branco.</translation>
        </message>
        <message>
            <source>The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic&apos;s key. The key stands on the Clinic page, where it can be copied. Then make a new code.</source>
            <comment>a command</comment>
            <translation>O servidor ainda não conhece esta clínica. Peça a quem administra o servidor que execute %1 com a chave desta clínica. A chave está na página Clínica, onde pode ser copiada. Depois crie um novo código.</translation>
        </message>
        <message>
            <source>The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.</source>
            <translation>O telefone ligado agora é deixado assim que o novo é confirmado: o que se escrever nele depois não chega à clínica, e ele diz isso. O telefone novo recebe o diário inteiro. As fotografias ficam na clínica. Nada muda antes de os seis dígitos serem confirmados.</translation>
        </message>
        <message>
            <source>The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.</source>
            <translation>O servidor recusa o telefone perdido assim que o novo for confirmado, ou na hora se você apenas o encerrar. O que ele não enviou fica sem se saber. O novo telefone recebe o diário inteiro. As fotografias ficam na clínica.</translation>
        </message>
        <message>
            <source>Stop: the numbers were not the same</source>
            <translation>Pare: os números não eram iguais</translation>
        </message>
        <message>
            <source>Somebody else may have used the code first. Nothing was linked. Make a new code out of other people&apos;s sight.</source>
            <translation>Outra pessoa pode ter usado o código antes. Nada foi vinculado. Crie um novo código, longe da vista de outros.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versão %2</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.</source>
            <translation>Limiares calibrados com %1, para no máximo %2 alertas falsos em 100 casos sem complicações.</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1.</source>
            <translation>Limiares calibrados com %1.</translation>
        </message>
        <message>
            <source>These are few: the thresholds are drawn towards those before.</source>
            <translation>São poucos: os limiares são puxados para os anteriores.</translation>
        </message>
        <message>
            <source>Rules, or the days that are asked about, were changed since.</source>
            <translation>Desde então mudaram as regras ou os dias perguntados.</translation>
        </message>
        <message>
            <source>It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.</source>
            <translation>Não está demonstrado que respeitem o orçamento de %1 alertas falsos em 100 casos sem complicações.</translation>
        </message>
        <message>
            <source>They came in a file: other patients may stand behind them.</source>
            <translation>Vieram em um arquivo: podem basear-se em outros pacientes.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message>
            <source>Nobody has taken it</source>
            <translation>Ninguém assumiu</translation>
        </message>
        <message>
            <source>Last entry %1 ago</source>
            <translation>Última anotação há %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Ainda sem anotação</translation>
        </message>
        <message>
            <source>%1: %2, %3. %4. %5 Since %6.</source>
            <comment>urgency, name, day, title, reason, since</comment>
            <translation>%1: %2, %3. %4. %5 Desde %6.</translation>
        </message>
        <message>
            <source>Not heard from: silence is not good news</source>
            <translation>Sem notícias: silêncio não é boa notícia</translation>
        </message>
        <message>
            <source>Everyone %1</source>
            <translation>Todos %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>urgency, count</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not heard from</source>
            <translation>Sem notícias</translation>
        </message>
        <message>
            <source>Nobody waits</source>
            <translation>Ninguém espera</translation>
        </message>
        <message>
            <source>No match</source>
            <translation>Nada encontrado</translation>
        </message>
        <message>
            <source>Nobody waits for an answer</source>
            <translation>Ninguém espera resposta</translation>
        </message>
        <message>
            <source>Courses show up here when a warning sign, a rule or a silence asks for a look.</source>
            <translation>Os casos aparecem aqui quando um sinal de alerta, uma regra ou um silêncio pede atenção.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, finding</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Closed: %1</source>
            <translation>Fechado: %1</translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>e mais %Ln</numerusform>
                <numerusform>e mais %Ln</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln não aberta</numerusform>
                <numerusform>%Ln não abertas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>%Ln emergência</numerusform>
                <numerusform>%Ln emergências</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln para ligar agora</numerusform>
                <numerusform>%Ln para ligar agora</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln para o próximo dia útil</numerusform>
                <numerusform>%Ln para o próximo dia útil</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln para o retorno</numerusform>
                <numerusform>%Ln para o retorno</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln sem notícias</numerusform>
                <numerusform>%Ln sem notícias</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln oculto pela busca ou pelos filtros</numerusform>
                <numerusform>%Ln ocultos pela busca ou pelos filtros</numerusform>
            </translation>
        </message>
        <message>
            <source>Nobody has acted for %1</source>
            <translation>Sem atendimento há %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln caso espera mais que o combinado.</numerusform>
                <numerusform>%Ln casos esperam mais que o combinado.</numerusform>
            </translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Plantão: %1</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Todos</translation>
        </message>
        <message>
            <source>Nobody on it</source>
            <translation>Sem responsável</translation>
        </message>
        <message>
            <source>Mine</source>
            <translation>Meus</translation>
        </message>
        <message>
            <source>Not opened</source>
            <translation>Não abertas</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Ligar também por: %1</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Ligação feita: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Assumido: %1</translation>
        </message>
        <message>
            <source>Take search and filters off to see the others.</source>
            <translation>Retire a busca e os filtros para ver os outros.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>%Ln linha urgente está oculta pela busca ou pelos filtros</numerusform>
                <numerusform>%Ln linhas urgentes estão ocultas pela busca ou pelos filtros</numerusform>
            </translation>
        </message>
        <message>
            <source>Visits missed more than %1 days ago, with nothing written down since: %2</source>
            <translation>Visitas perdidas há mais de %1 dias, sem nada anotado desde então: %2</translation>
        </message>
        <message>
            <source>Only visits missed long ago</source>
            <translation>Só visitas perdidas há muito tempo</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SheetBoard</name>
        <message>
            <source>Save the sheet</source>
            <translation>Salvar a ficha</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Arquivos PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Salvo como %1. O arquivo não está criptografado: guarde-o como guarda o prontuário.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::StepValue</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TreatmentEditor</name>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fios</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anestésico</translation>
        </message>
        <message>
            <source>Care and consent</source>
            <translation>Cuidados e consentimento</translation>
        </message>
        <message>
            <source>Draft kept on this computer, %1</source>
            <translation>Rascunho guardado neste computador, %1</translation>
        </message>
        <message>
            <source>Choose or register the patient.</source>
            <translation>Escolha ou cadastre o paciente.</translation>
        </message>
        <message>
            <source>Draw at least one thread.</source>
            <translation>Desenhe pelo menos um fio.</translation>
        </message>
        <message>
            <source>Note that consent was given.</source>
            <translation>Anote que o consentimento foi dado.</translation>
        </message>
        <message>
            <source>Note that the cautions were explained.</source>
            <translation>Anote que as precauções foram explicadas.</translation>
        </message>
        <message>
            <source>The weight is not a number of kilograms.</source>
            <translation>O peso não é um número em quilogramas.</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.</source>
            <translation>Lidocaína dada de outro modo: miligramas, de 0 a %L1, no máximo uma casa decimal.</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escreva como ano-mês-dia, por exemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>Este fio estava vencido no dia do tratamento.</translation>
        </message>
        <message>
            <source>The code names no lot and no expiry: type them below.</source>
            <translation>O código não indica lote nem validade: digite-os abaixo.</translation>
        </message>
        <message>
            <source>This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.</source>
            <translation>Não é um código de embalagem legível. Nada foi aproveitado: escaneie de novo ou digite abaixo o lote e a validade.</translation>
        </message>
        <message>
            <source>Draw or choose a thread first.</source>
            <translation>Desenhe ou escolha primeiro um fio.</translation>
        </message>
        <message>
            <source>This record was begun on %1. Say when the treatment was.</source>
            <translation>Este registro foi iniciado em %1. Informe quando foi o tratamento.</translation>
        </message>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>O tratamento foi há %Ln dia. Informe se está certo.</numerusform>
                <numerusform>O tratamento foi há %Ln dias. Informe se está certo.</numerusform>
            </translation>
        </message>
        <message>
            <source>This time is still to come. Write when the treatment was.</source>
            <translation>Esse momento ainda não chegou. Escreva quando foi o tratamento.</translation>
        </message>
        <message>
            <source>Write the day of the treatment as year-month-day, for example 2029-06-30.</source>
            <translation>Escreva o dia do tratamento como ano-mês-dia, por exemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time of the treatment as hours and minutes, for example 14:05.</source>
            <translation>Escreva a hora do tratamento em horas e minutos, por exemplo 14:05.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Não</translation>
        </message>
        <message>
            <source>Placed once</source>
            <translation>Colocado uma vez</translation>
        </message>
        <message>
            <source>Say why it was redone.</source>
            <translation>Diga por que foi refeito.</translation>
        </message>
        <message>
            <source>Shorten the reason.</source>
            <translation>Encurte o motivo.</translation>
        </message>
        <message>
            <source>Thread %L1 was redone: say why.</source>
            <translation>O fio %L1 foi refeito: diga por quê.</translation>
        </message>
        <message>
            <source>Not written down</source>
            <translation>Não anotado</translation>
        </message>
        <message>
            <source>The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.</source>
            <translation>O código não diz onde o lote termina. Olhe a embalagem e escolha o que está escrito nela, ou digite abaixo.</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>Não informado</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Nenhuma</translation>
        </message>
        <message>
            <source>At the entry point</source>
            <translation>No ponto de entrada</translation>
        </message>
        <message>
            <source>Along the track</source>
            <translation>No trajeto</translation>
        </message>
        <message>
            <source>At entry point and along the track</source>
            <translation>No ponto de entrada e no trajeto</translation>
        </message>
        <message>
            <source>Nobody chosen yet</source>
            <translation>Ninguém escolhido ainda</translation>
        </message>
        <message>
            <source>What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1</source>
            <comment>the reason</comment>
            <translation>O que foi começado aqui não pode ser lido. Fica como está: o que você escrever agora não é guardado como rascunho. %1</translation>
        </message>
        <message>
            <source>Nothing was drawn: thread %1 lies there already. It is chosen now.</source>
            <comment>its number</comment>
            <translation>Nada foi desenhado: o fio %1 já está ali. Ele está escolhido agora.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Say why it is corrected.</source>
            <translation>Diga por que se corrige.</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Nada foi mudado ainda.</translation>
        </message>
        <message>
            <source>A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.</source>
            <translation>Alguém da equipe corrigiu este registro nesse meio-tempo. O que você registrar vale por inteiro, no lugar do dele: abaixo está o que mudaria.</translation>
        </message>
        <message>
            <source>The solution is now with epinephrine %1: check it under Anaesthetic.</source>
            <comment>dilution</comment>
            <translation>A solução agora tem epinefrina %1: confira em “Anestésico”.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message>
            <source>Unlock the desk</source>
            <translation>Destrancar a estação</translation>
        </message>
        <message>
            <source>Set up the desk</source>
            <translation>Configurar a estação</translation>
        </message>
        <message>
            <source>What the desk keeps about patients is encrypted on this computer until you unlock it.</source>
            <translation>O que o programa guarda sobre os pacientes está criptografado neste computador até você destrancá-lo.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>As duas não são iguais.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Escolha uma frase secreta de pelo menos %Ln caractere. Ela criptografa o que o programa guarda sobre os pacientes neste computador. Ninguém pode recuperá-la para você: anote-a e guarde-a em lugar seguro.</numerusform>
                <numerusform>Escolha uma frase secreta de pelo menos %Ln caracteres. Ela criptografa o que o programa guarda sobre os pacientes neste computador. Ninguém pode recuperá-la para você: anote-a e guarde-a em lugar seguro.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Curta demais: pelo menos %Ln caractere.</numerusform>
                <numerusform>Curta demais: pelo menos %Ln caracteres.</numerusform>
            </translation>
        </message>
        <message>
            <source>Open it with the recovery code</source>
            <translation>Abrir com o código de recuperação</translation>
        </message>
        <message>
            <source>Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.</source>
            <translation>Digite o código do papel e escolha uma nova frase secreta. A que foi perdida não abre mais nada depois disso.</translation>
        </message>
        <message>
            <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
            <translation>Isto não é um código de recuperação. Ele tem 36 letras e números em nove grupos. Confira cada um.</translation>
        </message>
        <message>
            <source>This code does not open this vault. A newer one may have taken its place.</source>
            <translation>Este código não abre este cofre. Um mais novo pode tê-lo substituído.</translation>
        </message>
        <message>
            <source>One moment. The desk finds out how strong the lock can be on this computer.</source>
            <translation>Um momento. A estação verifica quão forte a trava pode ser neste computador.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::face::FaceChart</name>
        <message>
            <source>Entry point set. Cursor %1 across, %2 down: Space sets the end.</source>
            <translation>Ponto de entrada marcado. Cursor %1 na horizontal, %2 para baixo: Espaço marca o fim.</translation>
        </message>
        <message>
            <source>Cursor %1 across, %2 down: Space sets the entry point.</source>
            <translation>Cursor %1 na horizontal, %2 para baixo: Espaço marca o ponto de entrada.</translation>
        </message>
        <message>
            <source>Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Ponto de entrada do fio %1 pego, agora %2 na horizontal, %3 para baixo: Espaço o solta.</translation>
        </message>
        <message>
            <source>End of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Fim do fio %1 pego, agora %2 na horizontal, %3 para baixo: Espaço o solta.</translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message>
            <source>Per cent of courses</source>
            <translation>Percentual de casos</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Dias desde o tratamento</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Grupo</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Com complicações</translation>
        </message>
        <message>
            <source>Outcome known</source>
            <translation>Desfecho conhecido</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Não conhecido</translation>
        </message>
        <message>
            <source>Treatments with a known outcome, one after the other</source>
            <translation>Tratamentos com desfecho conhecido, um após o outro</translation>
        </message>
        <message>
            <source>Running sum, no unit</source>
            <translation>Soma acumulada, sem unidade</translation>
        </message>
        <message>
            <source>Look here from %1 on</source>
            <translation>Atenção a partir de %1</translation>
        </message>
        <message>
            <source>strokes: complicated courses</source>
            <translation>traços: casos com complicações</translation>
        </message>
        <message>
            <source>Have complications become more frequent?</source>
            <translation>As complicações ficaram mais frequentes?</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>Running sum</source>
            <translation>Soma acumulada</translation>
        </message>
        <message>
            <source>No course has a known outcome yet. Record follow-ups, and the line begins.</source>
            <translation>Nenhum caso tem desfecho conhecido ainda. Registre retornos, e a linha começa.</translation>
        </message>
        <message>
            <source>yes, and a signal</source>
            <translation>sim, e um sinal</translation>
        </message>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>Nenhum sinal em %Ln tratamento.</numerusform>
                <numerusform>Nenhum sinal em %Ln tratamentos.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln sinal: veja os casos anteriores a ele.</numerusform>
                <numerusform>%Ln sinais: veja os casos anteriores a cada um.</numerusform>
            </translation>
        </message>
        <message>
            <source>Now at %1 of %2.</source>
            <comment>sum, limit</comment>
            <translation>Agora em %1 de %2.</translation>
        </message>
        <message>
            <source>%1 more complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>Casos com complicações: %1 a mais que o esperado.</translation>
        </message>
        <message>
            <source>%1 fewer complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>Casos com complicações: %1 a menos que o esperado.</translation>
        </message>
        <message>
            <source>By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.</source>
            <translation>Só por acaso, uma linha assim dá sinal em %1 de cada 100 clínicas; se a chance (odds) realmente dobrasse, em %2.</translation>
        </message>
        <message>
            <source>How often chance alone would signal is still being worked out.</source>
            <translation>Ainda se calcula com que frequência só o acaso daria sinal.</translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>Não definitivo: %Ln caso sem desfecho conhecido, anterior ao último mostrado.</numerusform>
                <numerusform>Não definitivo: %Ln casos sem desfecho conhecido, alguns anteriores ao último mostrado.</numerusform>
            </translation>
        </message>
        <message>
            <source>The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.</source>
            <translation>O risco é uma suposição, a mesma para todos os pacientes: um sinal pede atenção, não culpa ninguém.</translation>
        </message>
        <message>
            <source>What alerts cost, and which were worth it</source>
            <translation>O que os alertas custam, e quais valeram a pena</translation>
        </message>
        <message>
            <source>Closed as</source>
            <translation>Fechado como</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Alertas</translation>
        </message>
        <message>
            <source>Not closed before the follow-up</source>
            <translation>Não fechado antes do retorno</translation>
        </message>
        <message>
            <source>Still open</source>
            <translation>Ainda aberto</translation>
        </message>
        <message>
            <source>Apart: not heard from</source>
            <translation>À parte: sem notícias</translation>
        </message>
        <message>
            <source>No course with a linked phone yet.</source>
            <translation>Nenhum caso com celular vinculado ainda.</translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>Nenhum alerta em %Ln caso.</numerusform>
                <numerusform>Nenhum alerta em %Ln casos.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 raised an alert, %2 alert(s) in all, about %3 a week lately.</source>
            <comment>courses, number, number</comment>
            <translation>%1 com alerta; alertas no total: %2; ultimamente cerca de %3 por semana.</translation>
        </message>
        <message>
            <source>Worth it, of those closed: %1.</source>
            <translation>Valeram a pena, dos fechados: %1.</translation>
        </message>
        <message>
            <source>An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.</source>
            <translation>Um alerta que levou a tranquilizar o paciente conta aqui como não tendo valido a pena. O paciente pode ver isso de outro modo.</translation>
        </message>
        <message>
            <source>Worth it</source>
            <translation>Valeu a pena</translation>
        </message>
        <message>
            <source>Per cent of closed alerts</source>
            <translation>Percentual dos alertas fechados</translation>
        </message>
        <message>
            <source>What patients did of what they were asked</source>
            <translation>O que os pacientes fizeram do que lhes foi pedido</translation>
        </message>
        <message>
            <source>An unanswered reminder is not a missed one: she may have done it without saying so.</source>
            <translation>Lembrete sem resposta não quer dizer não cumprido: o paciente pode ter feito sem dizer.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Asked</source>
            <translation>Vezes pedido</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Feito</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>Não feito</translation>
        </message>
        <message>
            <source>Days with an entry</source>
            <translation>Dias com anotação</translation>
        </message>
        <message>
            <source>Per cent of times asked</source>
            <translation>Percentual das vezes pedidas</translation>
        </message>
        <message>
            <source>%1 wrote on %2 of %3 days asked.</source>
            <comment>courses, days, days</comment>
            <translation>%1: anotações em %2 de %3 dias em que foram pedidas.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>Dados insuficientes: %Ln desfecho conhecido, são necessários %1</numerusform>
                <numerusform>Dados insuficientes: %Ln desfechos conhecidos, são necessários %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>Dados insuficientes: %Ln caso teve o sintoma, são necessários %1</numerusform>
                <numerusform>Dados insuficientes: %Ln casos tiveram o sintoma, são necessários %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>Dados insuficientes: seguimento de %Ln dia, são necessários %1</numerusform>
                <numerusform>Dados insuficientes: seguimento de %Ln dias, são necessários %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>Dados insuficientes: %Ln grupo, são necessários %1</numerusform>
                <numerusform>Dados insuficientes: %Ln grupos, são necessários %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Not enough to say: nothing varied</source>
            <translation>Dados insuficientes: nada variou</translation>
        </message>
        <message>
            <source>Not enough to say: nothing happened in either group</source>
            <translation>Dados insuficientes: nada aconteceu em nenhum dos grupos</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>share, its limits</comment>
            <translation>%1 (%2 a %3)</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln course(s)</source>
            <translation>
                <numerusform>%1 de %Ln caso</numerusform>
                <numerusform>%1 de %Ln casos</numerusform>
            </translation>
        </message>
        <message>
            <source>Where threads end</source>
            <translation>Onde os fios terminam</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Calibre</translation>
        </message>
        <message>
            <source>Epinephrine at the entry point</source>
            <translation>Epinefrina no ponto de entrada</translation>
        </message>
        <message>
            <source>Face or neck</source>
            <translation>Rosto ou pescoço</translation>
        </message>
        <message>
            <source>Not told</source>
            <translation>Não informado</translation>
        </message>
        <message>
            <source>Mixed</source>
            <translation>Misto</translation>
        </message>
        <message>
            <source>%1 G</source>
            <comment>gauge of needle or cannula</comment>
            <translation>%1 G</translation>
        </message>
        <message>
            <source>With epinephrine</source>
            <translation>Com epinefrina</translation>
        </message>
        <message>
            <source>Without epinephrine</source>
            <translation>Sem epinefrina</translation>
        </message>
        <message>
            <source>Face</source>
            <translation>Rosto</translation>
        </message>
        <message>
            <source>Deep folds ask for threads past the moving zone, and deep folds recover otherwise.</source>
            <translation>Sulcos profundos pedem fios além da zona móvel e se recuperam de outro modo.</translation>
        </message>
        <message>
            <source>Stronger threads need a lower gauge: what differs may be the thread.</source>
            <translation>Fios mais fortes precisam de agulha mais grossa (G menor): a diferença pode vir do fio.</translation>
        </message>
        <message>
            <source>Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.</source>
            <translation>A epinefrina esconde o roxo inicial e é omitida em pacientes com tendência a sangrar ou coração fraco. Os casos em que nem todos os fios dizem onde havia epinefrina, como os de um programa mais antigo, não são contados.</translation>
        </message>
        <message>
            <source>Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.</source>
            <translation>Rosto e pescoço, por natureza, incham e melhoram de modo diferente: isto mostra o que dizer aos pacientes, não qual é melhor.</translation>
        </message>
        <message>
            <source>Threads were chosen for the face: heavy faces get other threads than light ones.</source>
            <translation>Os fios foram escolhidos conforme o rosto: rostos pesados recebem outros fios que os leves.</translation>
        </message>
        <message>
            <source>%1 days (%2 to %3)</source>
            <comment>mean, its limits</comment>
            <translation>%1 dias (%2 a %3)</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>não alcançada</translation>
        </message>
        <message>
            <source>Courses that still have it, per cent</source>
            <translation>Casos que ainda têm o sintoma, percentual</translation>
        </message>
        <message>
            <source>Complicated courses</source>
            <translation>Casos com complicações</translation>
        </message>
        <message>
            <source>All courses</source>
            <translation>Todos os casos</translation>
        </message>
        <message>
            <source>%1 were complicated: %2.</source>
            <comment>courses, share</comment>
            <translation>Com complicações: %1, ou seja, %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln caso sem retorno não é contado: pode ter ido pior ou melhor.</numerusform>
                <numerusform>%Ln casos sem retorno não são contados: podem ter ido pior ou melhor.</numerusform>
            </translation>
        </message>
        <message>
            <source>By kind</source>
            <translation>Por tipo</translation>
        </message>
        <message>
            <source>Most often: %1.</source>
            <translation>Mais frequente: %1.</translation>
        </message>
        <message>
            <source>A course with two kinds counts in both.</source>
            <translation>Um caso com dois tipos conta em ambos.</translation>
        </message>
        <message>
            <source>No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.</source>
            <translation>Ainda não há complicação registrada. Isso não prova que não haja: os limites acima dizem quantas pode haver.</translation>
        </message>
        <message>
            <source>By zone</source>
            <translation>Por zona</translation>
        </message>
        <message>
            <source>A course counts in every zone that it has.</source>
            <translation>Um caso conta em cada uma das suas zonas.</translation>
        </message>
        <message>
            <source>Shares of zones do not add up: neighbouring zones share their patients.</source>
            <translation>As proporções por zona não se somam: zonas vizinhas têm pacientes em comum.</translation>
        </message>
        <message>
            <source>How long symptoms last</source>
            <translation>Quanto duram os sintomas</translation>
        </message>
        <message>
            <source>Who feels well may stop writing: then this looks slower than it is.</source>
            <translation>Quem está bem pode parar de escrever: então isto parece mais lento do que é.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Sintoma</translation>
        </message>
        <message>
            <source>Courses with it</source>
            <translation>Casos com o sintoma</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Passou</translation>
        </message>
        <message>
            <source>Days with it up to day 20</source>
            <translation>Dias com ele até o dia 20</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>symptom, days</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in which it went.</source>
            <translation>Dados insuficientes: em nenhum sintoma há casos suficientes em que passou.</translation>
        </message>
        <message>
            <source>Half were rid of it by day: %1.</source>
            <translation>Dia em que metade já não o tinha: %1.</translation>
        </message>
        <message>
            <source>Complications side by side</source>
            <translation>Complicações lado a lado</translation>
        </message>
        <message>
            <source>%1 less %2: %3 points of 100 (%4 to %5).</source>
            <comment>group, group, difference, its limits</comment>
            <translation>%1 menos %2: %3 pontos em 100 (%4 a %5).</translation>
        </message>
        <message>
            <source>So many courses would find a doubling of %1 in %2 of 100 cases.</source>
            <comment>share, number</comment>
            <translation>Com tantos casos, uma duplicação de %1 seria detectada em %2 de cada 100 vezes.</translation>
        </message>
        <message>
            <source>Found in 80 of 100 cases: %1 or more beside it.</source>
            <translation>Detectável em 80 de cada 100 vezes: %1 ou mais no outro grupo.</translation>
        </message>
        <message>
            <source>No difference at all would be found in 80 of 100 cases.</source>
            <translation>Nenhuma diferença, por maior que fosse, seria detectada em 80 de cada 100 vezes.</translation>
        </message>
        <message>
            <source>Probability by chance alone: below %1.</source>
            <translation>Probabilidade só por acaso: abaixo de %1.</translation>
        </message>
        <message>
            <source>Probability by chance alone: %1.</source>
            <translation>Probabilidade só por acaso: %1.</translation>
        </message>
        <message>
            <source>No test: all ended alike.</source>
            <translation>Sem teste: todos terminaram igual.</translation>
        </message>
        <message>
            <source>Days with each symptom, difference</source>
            <translation>Dias com cada sintoma, diferença</translation>
        </message>
        <message>
            <source>Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.</source>
            <translation>Sete sintomas são sete testes: entre eles, uma probabilidade abaixo de 0,05 é comum mesmo sem diferença alguma.</translation>
        </message>
        <message>
            <source>Difference, days</source>
            <translation>Diferença, dias</translation>
        </message>
        <message>
            <source>By chance</source>
            <translation>Por acaso</translation>
        </message>
        <message>
            <source>Found in 80 of 100</source>
            <translation>Detectável em 80 de 100</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 dias</translation>
        </message>
        <message>
            <source>Days: to the left %1 is shorter, to the right %2</source>
            <comment>group, group</comment>
            <translation>Dias: à esquerda, menos com %1; à direita, menos com %2</translation>
        </message>
        <message>
            <source>Days with the symptom up to day 20, %1 less %2.</source>
            <comment>group, group</comment>
            <translation>Dias com o sintoma até o dia 20, %1 menos %2.</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in both groups.</source>
            <translation>Dados insuficientes: em nenhum sintoma há casos suficientes nos dois grupos.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln caso</numerusform>
                <numerusform>%Ln casos</numerusform>
            </translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamento</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sim</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fios</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Além da zona móvel</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>Antes da zona móvel</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Pescoço</translation>
        </message>
        <message>
            <source>fewer than %1</source>
            <comment>of 100</comment>
            <translation>menos de %1</translation>
        </message>
        <message>
            <source>Not enough to say: the groups lie too far apart</source>
            <translation>Não é suficiente para dizer: os grupos estão distantes demais uns dos outros</translation>
        </message>
        <message>
            <source>Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.</source>
            <translation>Proporção de casos com desfecho conhecido. Limites: Wilson, 95%. Casos sem retorno ficam de fora e são contados à parte.</translation>
        </message>
        <message>
            <source>Share, 95% limits</source>
            <translation>Proporção, limites 95%</translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>Alerta: um aviso ou achado que pede uma ação antes do retorno. Valeu a pena: fechado com orientação, tratamento ou pronto-socorro, ou a consulta foi antecipada. Limites: Wilson, 95%. Alertas por semana: na última %Ln semana.</numerusform>
                <numerusform>Alerta: um aviso ou achado que pede uma ação antes do retorno. Valeu a pena: fechado com orientação, tratamento ou pronto-socorro, ou a consulta foi antecipada. Limites: Wilson, 95%. Alertas por semana: nas últimas %Ln semanas.</numerusform>
            </translation>
        </message>
        <message>
            <source>Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.</source>
            <translation>Anotações: dias em que o plano de cuidados perguntou e algo foi escrito. Lembretes: respondidos com “feito”. Limites: Wilson, 95%; os lembretes de um mesmo paciente se parecem, por isso são estreitos demais.</translation>
        </message>
        <message>
            <source>Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.</source>
            <translation>Passou: valor de 1 ou menos em dois dias seguidos, que se mantém; conta o lado pior. Curvas: Kaplan-Meier, mediana com limites de Brookmeyer e Crowley, 95%. Média de dias até o dia 20, limites pela distribuição normal.</translation>
        </message>
        <message>
            <source>Median day, 95% limits</source>
            <translation>Mediana (dia), limites 95%</translation>
        </message>
        <message>
            <source>Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.</source>
            <translation>Proporções: Wilson, 95%. Diferença: Newcombe. Teste: Fisher, bilateral. Poder: exato para este teste.</translation>
        </message>
        <message>
            <source>Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.</source>
            <translation>Diferença da média de dias até o dia 20 (médias restritas), limites pela distribuição normal, 95%; teste de log-rank.</translation>
        </message>
        <message>
            <source>CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.</source>
            <translation>CUSUM com um só risco para todos os cursos (a soma de Steiner et al., Biostatistics 2000, sem ajuste a cada paciente): vigia uma chance (odds) %1 vezes a de um risco de %2; recomeça após um sinal.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message>
            <source>Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one.</source>
            <translation>Dados insuficientes: uma comparação precisa de dois grupos, e todos os casos que se podem classificar pertencem a um.</translation>
        </message>
        <message>
            <source>Not enough to say: a comparison needs two groups, and no course says to which it belongs.</source>
            <translation>Dados insuficientes: uma comparação precisa de dois grupos, e nenhum caso diz a qual pertence.</translation>
        </message>
        <message>
            <source>Time to settle</source>
            <translation>Duração</translation>
        </message>
        <message>
            <source>Techniques</source>
            <translation>Técnicas</translation>
        </message>
        <message>
            <source>Over time</source>
            <translation>Ao longo do tempo</translation>
        </message>
        <message>
            <source>Adherence</source>
            <translation>Adesão</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Usual range</source>
            <translation>Faixa normal</translation>
        </message>
        <message>
            <source>Reading the courses</source>
            <translation>Lendo os casos</translation>
        </message>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · %Ln com desfecho conhecido</numerusform>
                <numerusform>%1 · %Ln com desfecho conhecido</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>group, courses</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Comparison, not proof: nobody drew by lot who got what.</source>
            <translation>Comparação, não prova: ninguém sorteou quem recebeu o quê.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted.</source>
            <translation>Salvo como %1. O arquivo não está criptografado.</translation>
        </message>
        <message>
            <source>Save the figure</source>
            <translation>Salvar a figura</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicações</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Alertas</translation>
        </message>
    </context>
    <context>
        <name>PracticePage</name>
        <message>
            <source>Practice</source>
            <translation>Resultados</translation>
        </message>
        <message>
            <source>Working the figures out. The desk stays free meanwhile.</source>
            <translation>Calculando os números. Enquanto isso, você pode continuar trabalhando.</translation>
        </message>
    </context>
    <context>
        <name>FigureCard</name>
        <message>
            <source>How: %1</source>
            <translation>Método: %1</translation>
        </message>
        <message>
            <source>Show the picture</source>
            <translation>Ver a figura</translation>
        </message>
        <message>
            <source>Save as CSV</source>
            <translation>Salvar como CSV</translation>
        </message>
        <message>
            <source>Save as PNG</source>
            <translation>Salvar como PNG</translation>
        </message>
        <message>
            <source>Save as SVG</source>
            <translation>Salvar como SVG</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Ver como tabela</translation>
        </message>
    </context>
    <context>
        <name>ComparisonChoice</name>
        <message>
            <source>Compare by</source>
            <translation>Comparar por</translation>
        </message>
        <message>
            <source>First</source>
            <translation>Primeiro</translation>
        </message>
        <message>
            <source>Second</source>
            <translation>Segundo</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::LotBoard</name>
        <message>
            <source>%1 complicated, %2 not known yet</source>
            <translation>%1 com complicações, %2 ainda sem desfecho conhecido</translation>
        </message>
        <message>
            <source>Lot %1 went to %2.</source>
            <comment>lot, courses</comment>
            <translation>Lote %1: usado em %2.</translation>
        </message>
        <message>
            <source>Outcome not known</source>
            <translation>Desfecho não conhecido</translation>
        </message>
        <message>
            <source>Uncomplicated</source>
            <translation>Sem complicações</translation>
        </message>
        <message>
            <source>Call list for lot %1</source>
            <translation>Lista de ligações do lote %1</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <comment>clinic, when</comment>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Telefone</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lote como anotado</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Desfecho</translation>
        </message>
        <message>
            <source>Called by, when</source>
            <translation>Ligação feita por, quando</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Salvo como %1. O arquivo não está criptografado: guarde-o como guarda os prontuários.</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Salvar a lista de ligações</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Com complicações</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamento</translation>
        </message>
        <message>
            <source>%1, product not known</source>
            <comment>lot</comment>
            <translation>%1, produto não conhecido</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product</comment>
            <translation>%1, produto %2</translation>
        </message>
        <message>
            <source>Product not known: %1 of them. It may be this one, so they stand here too.</source>
            <comment>a number of courses</comment>
            <translation>Produto não conhecido: em %1 deles. Pode ser este, por isso também constam aqui.</translation>
        </message>
    </context>
    <context>
        <name>LimitFields</name>
        <message>
            <source>Your clinic's limit of lidocaine</source>
            <translation>Limite de lidocaína da sua clínica</translation>
        </message>
        <message>
            <source>You may set it lower than the US label's, never higher. An empty field keeps the label's number.</source>
            <translation>Pode ser mais baixo que o da bula dos EUA, nunca mais alto. Um campo vazio mantém o número da bula.</translation>
        </message>
        <message>
            <source>Save the limit</source>
            <translation>Salvar o limite</translation>
        </message>
    </context>
    <context>
        <name>LotPanel</name>
        <message>
            <source>Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.</source>
            <translation>Escolha um lote para ver todos que o receberam. Ele é encontrado como quer que tenha sido escrito. Um lote não é uma causa: quem o recebeu pode estar bem.</translation>
        </message>
        <message>
            <source>No treatment on record has such a lot.</source>
            <translation>Nenhum tratamento registrado tem esse lote.</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Telefone</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamento</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lote como anotado</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Desfecho</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Salvar a lista de ligações</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>%Ln caso pode ser usado para calcular uma nova versão.</numerusform>
                <numerusform>%Ln casos podem ser usados para calcular uma nova versão.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>%Ln caso pode ser usado. São necessários %1 para verificar uma versão.</numerusform>
                <numerusform>%Ln casos podem ser usados. São necessários %1 para verificar uma versão.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>Calculada com %Ln caso por %1, %2</numerusform>
                <numerusform>Calculada com %Ln casos por %1, %2</numerusform>
            </translation>
        </message>
        <message>
            <source>The range every clinic begins with: an assumption, no courses behind it</source>
            <translation>A faixa com que toda clínica começa: uma suposição, sem casos por trás</translation>
        </message>
        <message>
            <source>%1 went back to %2, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 voltou a %2, %3: %4</translation>
        </message>
        <message>
            <source>%1 put %2 into use, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 colocou %2 em uso, %3: %4</translation>
        </message>
        <message>
            <source>On courses it had not seen</source>
            <translation>Em casos não vistos</translation>
        </message>
        <message>
            <source>Above the 90th</source>
            <translation>Acima do P90</translation>
        </message>
        <message>
            <source>Above the 97th</source>
            <translation>Acima do P97</translation>
        </message>
        <message>
            <source>Say first who is at the desk: a version carries the name of who learned it.</source>
            <translation>Indique primeiro quem está na estação: uma versão leva o nome de quem a calculou.</translation>
        </message>
        <message>
            <source>Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.</source>
            <translation>Calculada: %1. Nada mudou para nenhum paciente: veja a verificação, depois use ou deixe.</translation>
        </message>
        <message>
            <source>Nothing has changed since the last version was learned.</source>
            <translation>Nada mudou desde que a última versão foi calculada.</translation>
        </message>
        <message>
            <source>Go back to %1</source>
            <translation>Voltar a %1</translation>
        </message>
        <message>
            <source>Use %1</source>
            <translation>Usar %1</translation>
        </message>
        <message>
            <source>%1 is in use. Courses that run keep the range they began with.</source>
            <translation>%1 está em uso. Casos em andamento mantêm a faixa com que começaram.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Sintoma</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
    </context>
    <context>
        <name>Bands</name>
        <message numerus="yes">
            <source>%Ln course(s): the patient has not agreed that her course teaches</source>
            <translation>
                <numerusform>%Ln caso: o paciente não autorizou o uso para o cálculo</numerusform>
                <numerusform>%Ln casos: o paciente não autorizou o uso para o cálculo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln caso: ainda sem retorno, desfecho desconhecido</numerusform>
                <numerusform>%Ln casos: ainda sem retorno, desfecho desconhecido</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln caso: com complicações</numerusform>
                <numerusform>%Ln casos: com complicações</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln caso: tratado por causa de um achado</numerusform>
                <numerusform>%Ln casos: tratados por causa de um achado</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln caso: dias com anotação insuficientes</numerusform>
                <numerusform>%Ln casos: dias com anotação insuficientes</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough to say: nearly the assumption</source>
            <translation>dados insuficientes: quase a suposição</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>confirma-se</translation>
        </message>
        <message>
            <source>too narrow: false alerts</source>
            <translation>estreita demais: alertas falsos</translation>
        </message>
        <message>
            <source>too wide: it would look late</source>
            <translation>larga demais: alertaria tarde</translation>
        </message>
        <message>
            <source>%1, promised %2</source>
            <comment>share seen, share promised</comment>
            <translation>%1, previsto %2</translation>
        </message>
        <message>
            <source>It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).</source>
            <translation>Confirmou-se em casos não vistos: %1 dos valores ficaram acima do seu percentil 90 (%2 a %3).</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>Não pode ser usada: baseia-se em %Ln caso, são necessários %1.</numerusform>
                <numerusform>Não pode ser usada: baseia-se em %Ln casos, são necessários %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be used: it did not hold on courses that it had not seen. The table says where.</source>
            <translation>Não pode ser usada: não se confirmou em casos não vistos. A tabela diz onde.</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>Ainda não pode ser usada: pôde ser verificada com %Ln caso desta clínica, são necessários %1.</numerusform>
                <numerusform>Ainda não pode ser usada: pôde ser verificada com %Ln casos desta clínica, são necessários %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>Tomada de um arquivo por %1, %2. Nele se chama %3 e se baseia em %Ln caso.</numerusform>
                <numerusform>Tomada de um arquivo por %1, %2. Nele se chama %3 e se baseia em %Ln casos.</numerusform>
            </translation>
        </message>
        <message>
            <source>Whoever took it says that no course of this clinic is behind it.</source>
            <translation>Quem a tomou diz que nenhum caso desta clínica está por trás dela.</translation>
        </message>
        <message>
            <source>It was checked on courses that were treated after it was learned.</source>
            <translation>Foi verificada com casos tratados depois de ser calculada.</translation>
        </message>
    </context>
    <context>
        <name>BandCard</name>
        <message>
            <source>%1, in use</source>
            <translation>%1, em uso</translation>
        </message>
        <message>
            <source>Go back to it</source>
            <translation>Voltar a ela</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>Usar</translation>
        </message>
        <message>
            <source>Hide the check</source>
            <translation>Esconder a verificação</translation>
        </message>
        <message>
            <source>Show the check</source>
            <translation>Ver a verificação</translation>
        </message>
    </context>
    <context>
        <name>BandPanel</name>
        <message>
            <source>In use</source>
            <translation>Em uso</translation>
        </message>
        <message>
            <source>Learn a new one</source>
            <translation>Calcular uma nova</translation>
        </message>
        <message>
            <source>Learning, and checking on courses left out. This takes a while; the desk stays free.</source>
            <translation>Calculando e verificando em casos deixados de fora. Leva um tempo; você pode continuar trabalhando.</translation>
        </message>
        <message>
            <source>Learn a version</source>
            <translation>Calcular uma versão</translation>
        </message>
        <message>
            <source>Nothing comes into use by it.</source>
            <translation>Nada entra em uso com isso.</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>Versões</translation>
        </message>
        <message>
            <source>Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.</source>
            <translation>Cada protocolo é assinado de novo com ela. Casos em andamento mantêm o seu. O motivo fica guardado com o seu nome.</translation>
        </message>
    </context>
    <context>
        <name>ReasonPanel</name>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>Deixar assim</translation>
        </message>
    </context>
    <context>
        <name>ProtocolEditPage</name>
        <message>
            <source>Change the protocol</source>
            <translation>Mudar o protocolo</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Desfazer</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Refazer</translation>
        </message>
        <message>
            <source>As in use</source>
            <translation>Como em uso</translation>
        </message>
        <message>
            <source>Drops every change; can be undone.</source>
            <translation>Descarta todas as mudanças; pode ser desfeito.</translation>
        </message>
        <message>
            <source>Undo the signature</source>
            <translation>Desfazer a assinatura</translation>
        </message>
        <message>
            <source>Signs what was in use before anew.</source>
            <translation>Assina de novo o que estava em uso antes.</translation>
        </message>
    </context>
    <context>
        <name>PlanFields</name>
        <message>
            <source>From day</source>
            <translation>Do dia</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Até o dia</translation>
        </message>
        <message>
            <source>Every how many days</source>
            <translation>A cada quantos dias</translation>
        </message>
        <message>
            <source>Reminds at (empty: a rule to keep, nothing rings)</source>
            <translation>Lembra às (vazio: uma regra a cumprir, nada toca)</translation>
        </message>
        <message>
            <source>The clinic's own words, added for the patient</source>
            <translation>Palavras da própria clínica, acrescentadas para o paciente</translation>
        </message>
        <message>
            <source>Rings in quiet hours too</source>
            <translation>Toca também no horário de silêncio</translation>
        </message>
        <message>
            <source>Take it out of the plan</source>
            <translation>Tirar do plano</translation>
        </message>
    </context>
    <context>
        <name>PlanLine</name>
        <message>
            <source>%1 (changed)</source>
            <translation>%1 (alterado)</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolEditor</name>
        <message>
            <source>was %1</source>
            <translation>antes %1</translation>
        </message>
        <message>
            <source>%1, version %2 in the making</source>
            <translation>%1, versão %2 em preparação</translation>
        </message>
        <message>
            <source>Care plan</source>
            <translation>Plano de cuidados</translation>
        </message>
        <message>
            <source>Rules</source>
            <translation>Regras</translation>
        </message>
        <message>
            <source>Rehearse and sign</source>
            <translation>Simular e assinar</translation>
        </message>
        <message>
            <source>Write times of day with a space between, for example 08:00 20:00.</source>
            <translation>Escreva as horas com um espaço entre elas, por exemplo 08:00 20:00.</translation>
        </message>
        <message>
            <source>What the patient sees on day %1</source>
            <translation>O que o paciente vê no dia %1</translation>
        </message>
        <message>
            <source>An instruction of the clinic's own needs its words.</source>
            <translation>Uma instrução própria da clínica precisa de texto.</translation>
        </message>
        <message>
            <source>Too much: at most 40 instructions, 8 times a day and 400 characters of text.</source>
            <translation>Demais: no máximo 40 instruções, 8 horários por dia e 400 caracteres de texto.</translation>
        </message>
        <message>
            <source>Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.</source>
            <translation>De %1 casos sem complicações inventados em curva suave, este sinaliza %2, o que está em uso %3; de %4 inventados em degraus, %5, o que está em uso %6.</translation>
        </message>
        <message>
            <source>With as many patients as lately: about %1 alerts a week, now %2.</source>
            <comment>number, number</comment>
            <translation>Com tantos pacientes quanto ultimamente: cerca de %1 alertas por semana, agora %2.</translation>
        </message>
        <message>
            <source>No past course to rehearse on: only invented courses speak.</source>
            <translation>Nenhum caso anterior para simular: só contam os inventados.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>%Ln caso anterior teria sido sinalizado de outro modo.</numerusform>
                <numerusform>%Ln casos anteriores teriam sido sinalizados de outro modo.</numerusform>
            </translation>
        </message>
        <message>
            <source>The protocol has been changed since: rehearse it again.</source>
            <translation>O protocolo foi alterado desde então: simule de novo.</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>Flagged, in use</source>
            <translation>Sinalizados, em uso</translation>
        </message>
        <message>
            <source>Flagged, changed</source>
            <translation>Sinalizados, alterado</translation>
        </message>
        <message>
            <source>Within a day, in use</source>
            <translation>Em até um dia, em uso</translation>
        </message>
        <message>
            <source>Within a day, changed</source>
            <translation>Em até um dia, alterado</translation>
        </message>
        <message>
            <source>Invented, smooth: %1</source>
            <translation>Inventados, curva suave: %1</translation>
        </message>
        <message>
            <source>Invented, in steps: %1</source>
            <translation>Inventados, em degraus: %1</translation>
        </message>
        <message>
            <source>%1, call now</source>
            <comment>courses</comment>
            <translation>%1, ligar agora</translation>
        </message>
        <message>
            <source>%1, not heard from</source>
            <comment>courses</comment>
            <translation>%1, sem notícias</translation>
        </message>
        <message>
            <source>Past: %1</source>
            <translation>Anteriores: %1</translation>
        </message>
        <message>
            <source>New: %1, %2</source>
            <comment>instruction, when</comment>
            <translation>Nova: %1, %2</translation>
        </message>
        <message>
            <source>%1: %2, %3 (was %4, %5)</source>
            <comment>instruction, when, how, when, how</comment>
            <translation>%1: %2, %3 (antes %4, %5)</translation>
        </message>
        <message>
            <source>Taken out: %1</source>
            <translation>Retirada: %1</translation>
        </message>
        <message>
            <source>Follow-up on day %1 (was %2)</source>
            <translation>Retorno no dia %1 (antes %2)</translation>
        </message>
        <message>
            <source>%1, %2: %3 (was %4)</source>
            <comment>rule, what, number, number</comment>
            <translation>%1, %2: %3 (antes %4)</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Nada foi alterado ainda.</translation>
        </message>
        <message>
            <source>Rehearse it first: nothing goes live unseen.</source>
            <translation>Simule primeiro: nada entra em uso sem ser visto.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quem está na estação.</translation>
        </message>
        <message>
            <source>Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.</source>
            <translation>A versão %1 está assinada. Ela vai para os celulares vinculados a partir de agora; casos em andamento mantêm a sua.</translation>
        </message>
        <message>
            <source>What was in use before is in use again, as version %1.</source>
            <translation>O que estava em uso antes está em uso de novo, como versão %1.</translation>
        </message>
        <message>
            <source>Version %1, signed %2</source>
            <translation>Versão %1, assinada: %2</translation>
        </message>
        <message>
            <source>Usual range: %1 (was %2)</source>
            <comment>version, version</comment>
            <translation>Faixa normal: %1 (antes %2)</translation>
        </message>
        <message>
            <source>It cannot be signed with the usual range that came with it. %1</source>
            <translation>Não pode ser assinado com a faixa normal que veio junto. %1</translation>
        </message>
        <message>
            <source>With version %1 of %2</source>
            <comment>number, protocol</comment>
            <translation>Com a versão %1 de %2</translation>
        </message>
        <message>
            <source>The signature of version %1 was undone</source>
            <translation>A assinatura da versão %1 foi desfeita</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <comment>rule, threshold and details, the same before</comment>
            <translation>%1: %2 (antes %3)</translation>
        </message>
        <message>
            <source>A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1</source>
            <comment>the reason</comment>
            <translation>Um rascunho guardado não pode ser lido. Fica como está: o que você mudar agora não é guardado. %1</translation>
        </message>
    </context>
    <context>
        <name>ProtocolPlan</name>
        <message>
            <source>Follow-up</source>
            <translation>Retorno</translation>
        </message>
        <message>
            <source>day</source>
            <translation>dia</translation>
        </message>
        <message>
            <source>Add an instruction</source>
            <translation>Adicionar uma instrução</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Dia</translation>
        </message>
        <message>
            <source>All day</source>
            <translation>O dia todo</translation>
        </message>
        <message>
            <source>Nothing is asked on this day.</source>
            <translation>Nada é pedido neste dia.</translation>
        </message>
        <message>
            <source>The diary says the same in the patient's language; the clinic's own words stand as they are written.</source>
            <translation>O diário diz o mesmo no idioma do paciente; as palavras da própria clínica ficam como foram escritas.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolRules</name>
        <message>
            <source>Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.</source>
            <translation>Sinais de alerta, febre e dor intensa não estão aqui: nenhum protocolo pode atrasá-los ou abrandá-los. Os limiares das estatísticas são calibrados junto com a faixa normal.</translation>
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
            <translation>O que foi alterado</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Nada ainda.</translation>
        </message>
        <message>
            <source>Rehearsal</source>
            <translation>Simulação</translation>
        </message>
        <message>
            <source>Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.</source>
            <translation>Aplica as regras a casos anteriores e a casos inventados cujo desfecho real é conhecido. Nada muda para ninguém com isso.</translation>
        </message>
        <message>
            <source>Rehearsing. The desk stays free meanwhile.</source>
            <translation>Simulando. Enquanto isso, você pode continuar trabalhando.</translation>
        </message>
        <message>
            <source>Past courses, one by one</source>
            <translation>Casos anteriores, um por um</translation>
        </message>
        <message>
            <source>Rehearse again</source>
            <translation>Simular de novo</translation>
        </message>
        <message>
            <source>Rehearse</source>
            <translation>Simular</translation>
        </message>
        <message>
            <source>Sign it</source>
            <translation>Assinar</translation>
        </message>
        <message>
            <source>It goes to phones that are linked from now on.</source>
            <translation>Ele vai para os celulares vinculados a partir de agora.</translation>
        </message>
        <message>
            <source>Signed before</source>
            <translation>Assinadas antes</translation>
        </message>
        <message>
            <source>Take it up again</source>
            <translation>Retomar</translation>
        </message>
        <message>
            <source>Keep the usual range in use</source>
            <translation>Manter a faixa normal em uso</translation>
        </message>
        <message>
            <source>Drops the range that came with the file, and its thresholds; can be undone.</source>
            <translation>Retira a faixa que veio com o arquivo e seus limiares; pode ser desfeito.</translation>
        </message>
    </context>
    <context>
        <name>Rehearsals</name>
        <message>
            <source>Uncomplicated</source>
            <translation>Sem complicações</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infecção</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hematoma</translation>
        </message>
        <message>
            <source>Slow recovery</source>
            <translation>Recuperação lenta</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Covinhas persistentes</translation>
        </message>
        <message>
            <source>Falls silent</source>
            <translation>Deixa de escrever</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Com complicações</translation>
        </message>
        <message>
            <source>%1 of %2 (%3 to %4 in 100)</source>
            <comment>flagged, courses, limits</comment>
            <translation>%1 de %2 (%3 a %4 em 100)</translation>
        </message>
        <message>
            <source>no such finding</source>
            <translation>nenhum aviso assim</translation>
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
            <translation>Acima do normal</translation>
        </message>
        <message>
            <source>Rising again</source>
            <translation>Subindo de novo</translation>
        </message>
        <message>
            <source>One side much worse</source>
            <translation>Um lado muito pior</translation>
        </message>
        <message>
            <source>One side fills in the first days</source>
            <translation>Um lado enche nos primeiros dias</translation>
        </message>
        <message>
            <source>Slow to settle</source>
            <translation>Melhora lenta</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Covinhas persistentes</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Sem notícias</translation>
        </message>
        <message>
            <source>only from this score on</source>
            <translation>só a partir deste valor</translation>
        </message>
        <message>
            <source>only so far above the lowest so far</source>
            <translation>só a esta distância acima do mínimo até agora</translation>
        </message>
        <message>
            <source>from this day on</source>
            <translation>a partir deste dia</translation>
        </message>
        <message>
            <source>up to this day</source>
            <translation>até este dia</translation>
        </message>
        <message>
            <source>only with so much between the sides</source>
            <translation>só com esta diferença entre os lados</translation>
        </message>
        <message>
            <source>only with so much between the sides, symptoms added up</source>
            <translation>só com esta diferença entre os lados, sintomas somados</translation>
        </message>
        <message>
            <source>only after a peak of this score</source>
            <translation>só após um máximo deste valor</translation>
        </message>
        <message>
            <source>unchanged for a week: from this day on</source>
            <translation>iguais há uma semana: a partir deste dia</translation>
        </message>
        <message>
            <source>unchanged for a week: only from this score on</source>
            <translation>iguais há uma semana: só a partir deste valor</translation>
        </message>
        <message>
            <source>without an entry</source>
            <translation>sem anotação</translation>
        </message>
        <message>
            <source>without an entry, after a high one</source>
            <translation>sem anotação, após uma alta</translation>
        </message>
        <message>
            <source>days</source>
            <translation>dias</translation>
        </message>
        <message>
            <source>points</source>
            <translation>pontos</translation>
        </message>
    </context>
    <context>
        <name>CallPanel</name>
        <message>
            <source>What to ask</source>
            <translation>O que perguntar</translation>
        </message>
        <message>
            <source>%L1. %2</source>
            <translation>%L1. %2</translation>
        </message>
        <message>
            <source>Note, or message to the patient</source>
            <translation>Observação ou mensagem para o paciente</translation>
        </message>
        <message>
            <source>Spoke with her</source>
            <translation>Conversei</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Sem contato</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Consulta antecipada</translation>
        </message>
        <message>
            <source>Send as a message</source>
            <translation>Enviar como mensagem</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Agora não</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por quê</translation>
        </message>
        <message>
            <source>Move the visit</source>
            <translation>Mudar a consulta</translation>
        </message>
        <message>
            <source>She called us</source>
            <translation>Ela nos ligou</translation>
        </message>
        <message>
            <source>Nothing is open: the call is noted on the course.</source>
            <translation>Nada está aberto: a ligação é anotada no caso.</translation>
        </message>
        <message>
            <source>We reached her</source>
            <translation>Conseguimos falar com ela</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CallBoard</name>
        <message>
            <source>Call %1</source>
            <comment>name</comment>
            <translation>Ligar para %1</translation>
        </message>
        <message>
            <source>No number on record</source>
            <translation>Nenhum número registrado</translation>
        </message>
        <message>
            <source>%1. Ask before you call twice.</source>
            <comment>what somebody else did last</comment>
            <translation>%1. Pergunte antes de ligar duas vezes.</translation>
        </message>
        <message>
            <source>Her diary is in %1.</source>
            <translation>O diário está em %1.</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Ligação feita: %1</translation>
        </message>
        <message>
            <source>Visit brought forward: %1</source>
            <translation>Consulta antecipada: %1</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>Não atendeu: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Choose a day from %1 to %2, and not what is agreed already.</source>
            <comment>date, date</comment>
            <translation>Escolha um dia de %1 a %2, e não o que já está combinado.</translation>
        </message>
        <message>
            <source>Agreed so far: %1</source>
            <translation>Combinado até agora: %1</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escreva como ano-mês-dia, por exemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Escreva a hora em horas e minutos, por exemplo 10:30, ou deixe em branco.</translation>
        </message>
        <message>
            <source>Midnight stands for a day without a time. Leave the time empty if none is agreed.</source>
            <translation>Meia-noite indica um dia sem hora. Deixe a hora em branco se nenhuma foi combinada.</translation>
        </message>
        <message>
            <source>It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.</source>
            <translation>É tarde demais para mudar a consulta: o dia %L1 após o tratamento, o último possível, já passou.</translation>
        </message>
        <message>
            <source>The phone shows from its next sync on: %1</source>
            <translation>O celular mostra a partir da próxima sincronização: %1</translation>
        </message>
        <message>
            <source>No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.</source>
            <translation>Nenhum celular tem este caso: uma consulta antecipada só é anotada aqui, e nenhum celular a mostra. Diga a ela o dia.</translation>
        </message>
        <message>
            <source>She called us: %1</source>
            <translation>Ela nos ligou: %1</translation>
        </message>
        <message>
            <source>Since you opened this, something new came: %1</source>
            <comment>titles of findings</comment>
            <translation>Desde que você abriu isto, chegou algo novo: %1</translation>
        </message>
    </context>
    <context>
        <name>CallScript</name>
        <message>
            <source>Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line.</source>
            <translation>Você consegue respirar, engolir a saliva e dizer uma frase inteira? Se não: número de emergência, agora, e não desligue.</translation>
        </message>
        <message>
            <source>Is the swelling growing from hour to hour, or is the neck hard?</source>
            <translation>O inchaço cresce de hora em hora, ou o pescoço está duro?</translation>
        </message>
        <message>
            <source>Is somebody with you?</source>
            <translation>Há alguém com você?</translation>
        </message>
        <message>
            <source>Do you see as before with each eye? If not: emergency number, now.</source>
            <translation>Você enxerga como antes com cada olho? Se não: número de emergência, agora.</translation>
        </message>
        <message>
            <source>Smile, close both eyes, lift your brows: is one side weaker? Since when?</source>
            <translation>Sorria, feche os dois olhos, levante as sobrancelhas: um lado está mais fraco? Desde quando?</translation>
        </message>
        <message>
            <source>Is one side growing? Compared with this morning: much more, a little, the same?</source>
            <translation>Um lado está crescendo? Comparado com hoje de manhã: muito mais, um pouco, igual?</translation>
        </message>
        <message>
            <source>Does it feel hard and tense, or soft?</source>
            <translation>Está duro e tenso, ou macio?</translation>
        </message>
        <message>
            <source>Do you take anything that thins the blood, or aspirin or ibuprofen?</source>
            <translation>Você toma algo que afina o sangue, ou aspirina ou ibuprofeno?</translation>
        </message>
        <message>
            <source>What is your temperature now? Did you have chills?</source>
            <translation>Qual é a sua temperatura agora? Teve calafrios?</translation>
        </message>
        <message>
            <source>Is an entry point red, warm, or is anything coming out of it?</source>
            <translation>Algum ponto de entrada está vermelho, quente, ou sai algo dele?</translation>
        </message>
        <message>
            <source>Is the red or the pain spreading?</source>
            <translation>O vermelho ou a dor está se espalhando?</translation>
        </message>
        <message>
            <source>Pain from 0 to 10 now, and at its worst since yesterday?</source>
            <translation>Dor de 0 a 10 agora, e no pior momento desde ontem?</translation>
        </message>
        <message>
            <source>What have you taken against it, and did it help?</source>
            <translation>O que você tomou para isso, e ajudou?</translation>
        </message>
        <message>
            <source>Is the skin there pale, blue, or does it feel cold?</source>
            <translation>A pele ali está pálida, azul, ou parece fria?</translation>
        </message>
        <message>
            <source>Can you see or feel an end of a thread? Do not pull or cut it.</source>
            <translation>Você vê ou sente a ponta de um fio? Não puxe e não corte.</translation>
        </message>
        <message>
            <source>Is the skin over it open, red or wet?</source>
            <translation>A pele sobre ele está aberta, vermelha ou molhada?</translation>
        </message>
        <message>
            <source>Please send a photo from the diary, from the front and from that side.</source>
            <translation>Envie, por favor, uma foto pelo diário, de frente e desse lado.</translation>
        </message>
        <message>
            <source>Compared with yesterday: better, the same, worse?</source>
            <translation>Comparado com ontem: melhor, igual, pior?</translation>
        </message>
        <message>
            <source>Anything new: fever, one side worse, something coming out?</source>
            <translation>Algo novo: febre, um lado pior, algo saindo?</translation>
        </message>
        <message>
            <source>How are you? The diary has heard nothing for some days.</source>
            <translation>Como você está? O diário não tem notícias há alguns dias.</translation>
        </message>
        <message>
            <source>Does the diary work, and is the phone online?</source>
            <translation>O diário funciona, e o celular está com rede?</translation>
        </message>
        <message>
            <source>Fever, one side worse, anything coming out of an entry point?</source>
            <translation>Febre, um lado pior, algo saindo de um ponto de entrada?</translation>
        </message>
        <message>
            <source>Last: what are you most worried about?</source>
            <translation>Por último: o que mais preocupa você?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HandOverBoard</name>
        <message>
            <source>Hand-over</source>
            <translation>Passagem de plantão</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>clinic, person, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>A word from who leaves</source>
            <translation>Recado de quem sai</translation>
        </message>
        <message>
            <source>Who waits</source>
            <translation>Quem espera</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Urgência</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>O quê e por quê</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>Who is on it</source>
            <translation>Responsável</translation>
        </message>
        <message>
            <source>What was done in the last day</source>
            <translation>O que foi feito no último dia</translation>
        </message>
        <message>
            <source>nobody</source>
            <translation>ninguém</translation>
        </message>
        <message>
            <source>Nobody waits for an answer.</source>
            <translation>Ninguém espera resposta.</translation>
        </message>
        <message>
            <source>Nothing was noted.</source>
            <translation>Nada foi anotado.</translation>
        </message>
        <message>
            <source>%1 (%2, %3)</source>
            <comment>note, person, when</comment>
            <translation>%1 (%2, %3)</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quem está na estação.</translation>
        </message>
        <message>
            <source>Too long: shorten it.</source>
            <translation>Longo demais: encurte.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Salvo como %1. O arquivo não está criptografado: guarde-o como guarda os prontuários.</translation>
        </message>
        <message>
            <source>Save the hand-over</source>
            <translation>Salvar a passagem de plantão</translation>
        </message>
        <message>
            <source>Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.</source>
            <translation>Copiado como texto. Quem usar este computador pode colá-lo: cole logo e depois copie outra coisa.</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Ligar também por: %1</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Retirado por %1</translation>
        </message>
    </context>
    <context>
        <name>HandOverPage</name>
        <message>
            <source>Hand-over</source>
            <translation>Passagem de plantão</translation>
        </message>
        <message>
            <source>Made from the queue of this moment.</source>
            <translation>Feita a partir da fila deste momento.</translation>
        </message>
        <message>
            <source>Copy as text</source>
            <translation>Copiar como texto</translation>
        </message>
        <message>
            <source>Take it down</source>
            <translation>Retirar</translation>
        </message>
        <message>
            <source>A word for whoever takes over; it stays pinned over the queue until somebody takes it down</source>
            <translation>Recado para quem assume; fica fixado sobre a fila até alguém o retirar</translation>
        </message>
        <message>
            <source>Pin it</source>
            <translation>Fixar</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Salvar</translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message>
            <source>You have not looked at this course before.</source>
            <translation>Você ainda não olhou este caso.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln anotação</numerusform>
                <numerusform>%Ln anotações</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln achado</numerusform>
                <numerusform>%Ln achados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln mensagem</numerusform>
                <numerusform>%Ln mensagens</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing new since you last looked, %1.</source>
            <translation>Nada de novo desde a última vez que você olhou, %1.</translation>
        </message>
        <message>
            <source>New since you last looked, %1: %2.</source>
            <comment>when, list</comment>
            <translation>Novo desde a última vez que você olhou, %1: %2.</translation>
        </message>
        <message>
            <source>%1 %2 to %3</source>
            <comment>stream, low, high</comment>
            <translation>%1 %2 a %3</translation>
        </message>
        <message>
            <source>Too few entries for a forecast to the follow-up.</source>
            <translation>Anotações insuficientes para uma previsão até o retorno.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1: every score 1 or below.</source>
            <translation>Esperado no retorno, dia %1: todos os valores em 1 ou menos.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.</source>
            <comment>day, list</comment>
            <translation>Esperado no retorno, dia %1, em 8 de cada 10 casos assim: %2; todo o resto, 1 ou menos.</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Caso</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>patient, clinic, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>Treated %1, %2 now</source>
            <translation>Tratamento: %1. Agora: %2</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Achados</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Urgência</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>O quê e por quê</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Detectado</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>O que foi feito</translation>
        </message>
        <message>
            <source>Entries</source>
            <translation>Anotações</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Dia</translation>
        </message>
        <message>
            <source>Scores</source>
            <translation>Valores</translation>
        </message>
        <message>
            <source>Signs and words</source>
            <translation>Sinais e palavras</translation>
        </message>
        <message>
            <source>Marks</source>
            <translation>Marcas</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>Mensagens</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Não há.</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Ligações anotadas no caso</translation>
        </message>
    </context>
    <context>
        <name>PlanBeside</name>
        <message>
            <source>The plan</source>
            <translation>O plano</translation>
        </message>
        <message>
            <source>Make this the plan</source>
            <translation>Tornar isto o plano</translation>
        </message>
        <message>
            <source>Keep this as the plan</source>
            <translation>Guardar como plano</translation>
        </message>
        <message>
            <source>It stays as it is while you change what is done.</source>
            <translation>Ele fica como está enquanto você altera o que é feito.</translation>
        </message>
        <message>
            <source>Drop the plan</source>
            <translation>Descartar o plano</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DesksBoard</name>
        <message>
            <source>This desk, %1</source>
            <translation>Esta estação, %1</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Estação %1</translation>
        </message>
        <message>
            <source>Holds the clinic's root key: may add and shut out desks, and link phones</source>
            <translation>Tem a chave raiz da clínica: pode adicionar e excluir estações, e vincular celulares</translation>
        </message>
        <message>
            <source>Reads and writes; links no phones and adds no desks</source>
            <translation>Lê e escreve; não vincula celulares e não adiciona estações</translation>
        </message>
        <message>
            <source>Nothing from it has arrived here yet</source>
            <translation>Nada dela chegou aqui ainda</translation>
        </message>
        <message>
            <source>Last wrote: %1</source>
            <translation>Escreveu por último: %1</translation>
        </message>
        <message>
            <source>Shut out desk %1?</source>
            <translation>Excluir a estação %1?</translation>
        </message>
        <message>
            <source>Begin a fresh key?</source>
            <translation>Iniciar uma chave nova?</translation>
        </message>
        <message>
            <source>For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its passphrase. This cannot be undone: a desk that is found again must be set up anew.</source>
            <translation>Para uma estação perdida, roubada ou cedida. A partir da próxima vez que celulares e estações consultarem o servidor, ninguém aceita mais nada dela, e ela não consegue ler o que for escrito daí em diante. O que ela já tem continua nela, atrás da sua frase secreta. Isto não pode ser desfeito: uma estação reencontrada precisa ser configurada de novo.</translation>
        </message>
        <message>
            <source>Shut it out</source>
            <translation>Excluir</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Iniciar uma chave nova</translation>
        </message>
        <message>
            <source>A fresh key holds from the next time each phone asks the hub.</source>
            <translation>A chave nova vale a partir da próxima vez que cada celular consultar o servidor.</translation>
        </message>
        <message>
            <source>Phone %1</source>
            <translation>Celular %1</translation>
        </message>
        <message>
            <source>%1: the hub refuses it, said %2</source>
            <translation>%1: o servidor o recusa, confirmado %2</translation>
        </message>
        <message>
            <source>%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2</source>
            <translation>%1: foi substituído; o servidor é avisado assim que ele disser o que ainda guarda, no mais tardar %2</translation>
        </message>
        <message>
            <source>%1: the hub has not been told yet, and may still let it in. It is told at every sync.</source>
            <translation>%1: o servidor ainda não sabe e pode continuar a admiti-lo. É avisado em cada sincronização.</translation>
        </message>
        <message>
            <source>Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it can refuse the desk by this number: %1. If it held the clinic&apos;s root key, whoever opens it can still sign as the clinic: then set up a new clinic.</source>
            <translation>Excluída. O servidor é avisado na próxima sincronização; abaixo consta quando ele aceitou. Se não aceitar, quem o opera pode recusar a estação com este número: %1. Se ela tinha a chave raiz da clínica, quem a abrir ainda pode assinar como a clínica: crie então uma nova clínica.</translation>
        </message>
        <message>
            <source>Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.</source>
            <translation>A partir da próxima vez que os celulares consultarem o servidor, os pacientes lacram o que escrevem com uma chave nova. O que foi escrito antes continua legível aqui. A cada trinta dias começa uma por si só; outra convém depois que alguém viu uma frase secreta.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ApplyBoard</name>
        <message>
            <source>This desk has a clinic of its own already. Only a new, empty one can join.</source>
            <translation>Esta estação já tem uma clínica própria. Só uma nova, vazia, pode se juntar.</translation>
        </message>
        <message>
            <source>Type the hub's address as well: it stands under the code.</source>
            <translation>Digite também o endereço do servidor: está embaixo do código.</translation>
        </message>
        <message>
            <source>That is not such a code: compare it letter by letter with the other screen.</source>
            <translation>Não é um código desse tipo: compare-o letra por letra com a outra tela.</translation>
        </message>
        <message>
            <source>This computer has no way to a hub.</source>
            <translation>Este computador não alcança nenhum servidor.</translation>
        </message>
        <message>
            <source>Somebody else has used this code. Ask for a new one, out of other people's sight.</source>
            <translation>Outra pessoa usou este código. Peça um novo, longe da vista de outros.</translation>
        </message>
        <message>
            <source>Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.</source>
            <translation>Quem respondeu não é o hub da clínica. Nada foi ligado. Compare o endereço e avise a clínica.</translation>
        </message>
        <message>
            <source>The hub does not answer. It is asked again by itself.</source>
            <translation>O servidor não responde. Será consultado de novo automaticamente.</translation>
        </message>
        <message>
            <source>This desk belongs to the clinic</source>
            <translation>Esta estação pertence à clínica</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Compare os números</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Juntar-se às outras estações da clínica</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Consultando o servidor</translation>
        </message>
        <message>
            <source>The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.</source>
            <translation>As chaves da clínica estão aqui, e o que pacientes e colegas escreveram começou a chegar. Indique quem está nesta estação.</translation>
        </message>
        <message>
            <source>The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, have asked the hub.</source>
            <translation>As chaves da clínica estão aqui. O que pacientes e colegas escreveram chega depois que a outra estação, e em seguida esta, consultarem o servidor.</translation>
        </message>
        <message>
            <source>Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.</source>
            <translation>Leia estes seis dígitos em voz alta. Alguém só pode confirmar lá se a outra estação mostrar os mesmos.</translation>
        </message>
        <message>
            <source>At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.</source>
            <translation>Em uma estação com a chave raiz da clínica, abra Clínica, Estações, e adicione uma estação. Ela mostra um código e o endereço do servidor.</translation>
        </message>
        <message>
            <source>Leave both programs open.</source>
            <translation>Deixe os dois programas abertos.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message>
            <source>There is a recovery code. It is not stored here, only on your paper.</source>
            <translation>Há um código de recuperação. Ele não está guardado aqui, só no seu papel.</translation>
        </message>
        <message>
            <source>There is no recovery code yet: whoever loses the passphrase loses this vault.</source>
            <translation>Ainda não há código de recuperação: quem perde a frase secreta perde este cofre.</translation>
        </message>
        <message>
            <source>The passphrase is being changed.</source>
            <translation>A frase secreta está sendo mudada.</translation>
        </message>
        <message>
            <source>The two new ones are not the same.</source>
            <translation>As duas novas não são iguais.</translation>
        </message>
        <message>
            <source>From now on only the new passphrase opens this desk.</source>
            <translation>A partir de agora só a nova frase secreta abre esta estação.</translation>
        </message>
        <message>
            <source>A recovery code is being made.</source>
            <translation>Um código de recuperação está sendo criado.</translation>
        </message>
        <message>
            <source>From the paper: group %L1 of %L2</source>
            <translation>Do papel: grupo %L1 de %L2</translation>
        </message>
        <message>
            <source>That is not this group. Look at the paper again. If it is not there, show the code once more.</source>
            <translation>Não é esse grupo. Olhe o papel de novo. Se não estiver lá, mostre o código mais uma vez.</translation>
        </message>
        <message>
            <source>Keep the paper where only the clinic finds it, not beside this computer.</source>
            <translation>Guarde o papel onde só a clínica o encontre, não ao lado deste computador.</translation>
        </message>
        <message>
            <source>Where to put the backup</source>
            <translation>Onde pôr o backup</translation>
        </message>
        <message>
            <source>The backup is being made, opened and compared. This may take a minute.</source>
            <translation>O backup está sendo criado, aberto e comparado. Pode levar um minuto.</translation>
        </message>
        <message>
            <source>A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: today's passphrase opens it, also after a change.</source>
            <translation>Há um backup em %1 (%2). Ele foi aberto de novo e comparado: tudo está nele. Continua criptografado: a frase secreta de hoje o abre, também depois de uma mudança.</translation>
        </message>
        <message>
            <source>There is a file of that name. A backup is never written over another: choose a new name.</source>
            <translation>Já existe um arquivo com esse nome. Um backup nunca é gravado sobre outro: escolha um nome novo.</translation>
        </message>
        <message>
            <source>Everything is being read and compared.</source>
            <translation>Tudo está sendo lido e comparado.</translation>
        </message>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>A nova é curta demais: pelo menos %Ln caractere.</numerusform>
                <numerusform>A nova é curta demais: pelo menos %Ln caracteres.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>Íntegro: %Ln registro escrito, no seu lugar, e o que é mostrado decorre dele.</numerusform>
                <numerusform>Íntegro: %Ln registros escritos, cada um no seu lugar, e o que é mostrado decorre deles.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>Foi encontrada %Ln falha. Não registre mais nada aqui, deixe este computador como está e restaure o último backup. É esta: %1</numerusform>
                <numerusform>Foram encontradas %Ln falhas. Não registre mais nada aqui, deixe este computador como está e restaure o último backup. A primeira: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Last backup of this desk: %1.</source>
            <translation>Último backup desta estação: %1.</translation>
        </message>
        <message>
            <source>No backup of this desk was made yet.</source>
            <translation>Ainda não foi feito nenhum backup desta estação.</translation>
        </message>
        <message>
            <source>No backup of this desk since %1.</source>
            <translation>Nenhum backup desta estação desde %1.</translation>
        </message>
        <message>
            <source>If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.</source>
            <translation>Se este computador falhar, pode perder-se o que está escrito aqui. Faça um backup e guarde-o em outro lugar.</translation>
        </message>
        <message>
            <source>If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.</source>
            <translation>Se este computador falhar, pode perder-se o que foi escrito aqui desde então. Faça um backup e guarde-o em outro lugar.</translation>
        </message>
    </context>
    <context>
        <name>DesksPage</name>
        <message>
            <source>Desks</source>
            <translation>Estações</translation>
        </message>
        <message>
            <source>Computers that share this clinic. Each has its own passphrase.</source>
            <translation>Computadores que compartilham esta clínica. Cada um tem a sua própria frase secreta.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Voltar à clínica</translation>
        </message>
        <message>
            <source>Number by which the hub knows it</source>
            <translation>Número com que o servidor a conhece</translation>
        </message>
        <message>
            <source>Shut out: lost or given away</source>
            <translation>Excluir: perdida ou cedida</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can add or shut out desks.</source>
            <translation>Só uma estação com a chave raiz da clínica pode adicionar ou excluir estações.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Adicionar uma estação</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Iniciar uma chave nova</translation>
        </message>
    </context>
    <context>
        <name>ApplyPage</name>
        <message>
            <source>The code on the other screen</source>
            <translation>O código na outra tela</translation>
        </message>
        <message>
            <source>The hub's address under it</source>
            <translation>O endereço do servidor embaixo dele</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Seis dígitos: %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Juntar-se</translation>
        </message>
        <message>
            <source>Say who is here</source>
            <translation>Indicar quem está aqui</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Consultar o servidor agora</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Voltar à clínica</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Parar</translation>
        </message>
    </context>
    <context>
        <name>KeepPage</name>
        <message>
            <source>Backup and keys</source>
            <translation>Backup e chaves</translation>
        </message>
        <message>
            <source>A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.</source>
            <translation>Um computador pode ser roubado, falhar ou pegar fogo. O que então não estiver em um backup em outro lugar se perde.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Voltar à clínica</translation>
        </message>
        <message>
            <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
            <translation>Escreva isto no papel. Só é mostrado agora. Códigos de antes não valem mais.</translation>
        </message>
        <message>
            <source>It is written down</source>
            <translation>Já está escrito</translation>
        </message>
        <message>
            <source>Passphrase of this desk, for each of these</source>
            <translation>Frase secreta desta estação, para tudo aqui</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Backup</translation>
        </message>
        <message>
            <source>One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.</source>
            <translation>Um arquivo criptografado. Guarde-o em outra mídia, em outro lugar, pelo menos uma vez por semana; teste-o duas vezes por ano.</translation>
        </message>
        <message>
            <source>Make a backup</source>
            <translation>Criar um backup</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Verificação</translation>
        </message>
        <message>
            <source>Reads everything, and whether each thing is where it was written.</source>
            <translation>Lê tudo e verifica se cada coisa está onde foi escrita.</translation>
        </message>
        <message>
            <source>Check this vault</source>
            <translation>Verificar este cofre</translation>
        </message>
        <message>
            <source>Recovery code</source>
            <translation>Código de recuperação</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Criar um novo código</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Uma nova frase secreta</translation>
        </message>
        <message>
            <source>Change the passphrase</source>
            <translation>Mudar a frase secreta</translation>
        </message>
        <message>
            <source>The new one</source>
            <translation>A nova</translation>
        </message>
        <message>
            <source>The new one once more</source>
            <translation>A nova mais uma vez</translation>
        </message>
    </context>
    <context>
        <name>NoticesPage</name>
        <message>
            <source>About Ebbline</source>
            <translation>Sobre o Ebbline</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Versão %1</translation>
        </message>
        <message>
            <source>Back to the settings</source>
            <translation>Voltar aos ajustes</translation>
        </message>
        <message>
            <source>Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.</source>
            <translation>Ebbline é software livre sob a GPL 3. Não é um produto médico certificado e não substitui nenhum exame clínico nem serviço de emergência.</translation>
        </message>
        <message>
            <source>The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.</source>
            <translation>Este programa é feito com o trabalho de outras pessoas. Aqui você vê o que ele usa e quem fez isso. Os textos das licenças estão em inglês.</translation>
        </message>
        <message>
            <source>The parts</source>
            <translation>As partes</translation>
        </message>
        <message>
            <source>The licences</source>
            <translation>As licenças</translation>
        </message>
        <message>
            <source>Shows the text</source>
            <translation>Mostra o texto</translation>
        </message>
    </context>
    <context>
        <name>LicencePage</name>
        <message>
            <source>Back to all parts</source>
            <translation>Voltar a todas as partes</translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message>
            <source>Patient registered</source>
            <translation>Paciente cadastrado</translation>
        </message>
        <message>
            <source>Treatment recorded</source>
            <translation>Tratamento registrado</translation>
        </message>
        <message>
            <source>Care plan sent to the phone</source>
            <translation>Plano de cuidados enviado ao celular</translation>
        </message>
        <message>
            <source>Finding: %1</source>
            <translation>Achado: %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>%Ln anotação aberta</numerusform>
                <numerusform>%Ln anotações abertas</numerusform>
            </translation>
        </message>
        <message>
            <source>Message written</source>
            <translation>Mensagem escrita</translation>
        </message>
        <message>
            <source>Message read</source>
            <translation>Mensagem lida</translation>
        </message>
        <message>
            <source>Follow-up recorded</source>
            <translation>Retorno registrado</translation>
        </message>
        <message>
            <source>Protocol signed</source>
            <translation>Protocolo assinado</translation>
        </message>
        <message>
            <source>Clinic's particulars changed</source>
            <translation>Dados da clínica alterados</translation>
        </message>
        <message>
            <source>Limit of lidocaine set</source>
            <translation>Limite de lidocaína definido</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Celular vinculado</translation>
        </message>
        <message>
            <source>Usual range learned</source>
            <translation>Faixa normal calculada</translation>
        </message>
        <message>
            <source>Usual range put into use</source>
            <translation>Faixa normal colocada em uso</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Estação %1</translation>
        </message>
        <message>
            <source>Eyes marked in a photograph</source>
            <translation>Olhos marcados em uma foto</translation>
        </message>
        <message>
            <source>Desk added</source>
            <translation>Estação adicionada</translation>
        </message>
        <message>
            <source>Desk shut out</source>
            <translation>Estação excluída</translation>
        </message>
        <message>
            <source>Lost phone ended</source>
            <translation>Celular perdido excluído</translation>
        </message>
        <message>
            <source>Phone replaced</source>
            <translation>Celular substituído</translation>
        </message>
        <message>
            <source>Fresh key begun</source>
            <translation>Chave nova iniciada</translation>
        </message>
        <message>
            <source>Numbers to call changed</source>
            <translation>Números para ligar alterados</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1, com %2</translation>
        </message>
        <message>
            <source>Newer program asked for</source>
            <translation>Programa mais novo exigido</translation>
        </message>
        <message>
            <source>Finding: taken back what was noted</source>
            <translation>Achado: anotação retirada</translation>
        </message>
        <message>
            <source>Word to who takes over</source>
            <translation>Recado para quem assume</translation>
        </message>
        <message>
            <source>Backup made</source>
            <translation>Backup feito</translation>
        </message>
        <message>
            <source>Passphrase of this desk changed</source>
            <translation>Frase secreta desta estação mudada</translation>
        </message>
        <message>
            <source>Recovery code made</source>
            <translation>Código de recuperação feito</translation>
        </message>
        <message>
            <source>Usual range taken from a file</source>
            <translation>Faixa normal tomada de um arquivo</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment put in</source>
            <translation>Foto de logo após o tratamento incluída</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment taken back</source>
            <translation>Foto de logo após o tratamento retirada</translation>
        </message>
        <message>
            <source>Role of %1: %2</source>
            <comment>person, role</comment>
            <translation>Função de %1: %2</translation>
        </message>
        <message>
            <source>Patient&apos;s name, number or language corrected</source>
            <translation>Nome, número ou idioma do paciente corrigido</translation>
        </message>
        <message>
            <source>Call noted on the course</source>
            <translation>Ligação anotada no caso</translation>
        </message>
        <message>
            <source>Treatment corrected</source>
            <translation>Tratamento corrigido</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>%Ln linha</numerusform>
                <numerusform>%Ln linhas</numerusform>
            </translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Salvo como %1. O arquivo não está criptografado: guarde-o como guarda os prontuários.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>O arquivo não pode ser gravado ali. Escolha outra pasta.</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Salvar a lista</translation>
        </message>
        <message>
            <source>%1; the newest %2 are shown</source>
            <translation>%1; são mostradas as %2 mais recentes</translation>
        </message>
    </context>
    <context>
        <name>TracesPage</name>
        <message>
            <source>Who did what</source>
            <translation>Quem fez o quê</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Salvar a lista</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Voltar à clínica</translation>
        </message>
        <message>
            <source>Search: a name, an act, a day</source>
            <translation>Buscar: um nome, uma ação, um dia</translation>
        </message>
        <message>
            <source>No line says that.</source>
            <translation>Nenhuma linha diz isso.</translation>
        </message>
        <message>
            <source>Nothing has been done here yet.</source>
            <translation>Nada foi feito aqui ainda.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Quando</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Quem</translation>
        </message>
        <message>
            <source>What</source>
            <translation>O quê</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.</source>
            <translation>O que se escreve em uma estação deixa uma linha: pacientes, tratamentos, achados, mensagens, protocolos, e o que se fez com chaves, backups, estações e celulares. Abrir anotações também; olhar um caso, não; nem um backup, uma frase secreta ou um código de recuperação concluídos depois de a estação ser bloqueada, se o programa terminou antes de ela ser aberta de novo. Onde nenhum nome foi anotado, consta a estação.</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Mostrar linhas mais antigas</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>warned</source>
            <translation>aviso</translation>
        </message>
        <message>
            <source>dressings off</source>
            <translation>curativos fora</translation>
        </message>
        <message>
            <source>called</source>
            <translation>ligação feita</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>não atendeu</translation>
        </message>
        <message>
            <source>visit forward</source>
            <translation>consulta antecipada</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>fechado</translation>
        </message>
        <message>
            <source>follow-up</source>
            <translation>retorno</translation>
        </message>
        <message>
            <source>reopened</source>
            <translation>reaberto</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>visto</translation>
        </message>
        <message>
            <source>taken on</source>
            <translation>assumido</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>aberta</translation>
        </message>
        <message>
            <source>entry without scores</source>
            <translation>registro sem notas</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>day, what happened</comment>
            <translation>%1: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln lembrete feito</numerusform>
                <numerusform>%Ln lembretes feitos</numerusform>
            </translation>
        </message>
        <message>
            <source>photos</source>
            <translation>fotos</translation>
        </message>
        <message>
            <source>she rang</source>
            <translation>ela ligou</translation>
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
            <translation>Não há aqui nenhuma foto desta vista.</translation>
        </message>
        <message>
            <source>There is only one photograph of this view.</source>
            <translation>Há só uma foto desta vista.</translation>
        </message>
        <message>
            <source>Earlier: %1, %2</source>
            <comment>day, time</comment>
            <translation>Mais antiga: %1, %2</translation>
        </message>
        <message>
            <source>Later: %1, %2</source>
            <comment>day, time</comment>
            <translation>Mais recente: %1, %2</translation>
        </message>
        <message>
            <source>Eyes marked %1</source>
            <translation>Olhos marcados: %1</translation>
        </message>
        <message>
            <source>Eyes marked by %1, %2</source>
            <comment>person, time</comment>
            <translation>Olhos marcados por %1, %2</translation>
        </message>
        <message>
            <source>%1. %2. %3</source>
            <comment>which one and when, view, where the sides are</comment>
            <translation>%1. %2. %3</translation>
        </message>
        <message>
            <source>Being opened</source>
            <translation>Sendo aberta</translation>
        </message>
        <message>
            <source>Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.</source>
            <translation>Alinhadas pelos olhos: a mais recente foi girada, redimensionada e deslocada, sem distorcer nem espelhar.</translation>
        </message>
        <message>
            <source>While you mark, both are shown as they were taken.</source>
            <translation>Enquanto você marca, as duas são mostradas como foram tiradas.</translation>
        </message>
        <message>
            <source>Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.</source>
            <translation>Mostradas como foram tiradas, talvez não na mesma escala. Marque os olhos nas duas para alinhá-las.</translation>
        </message>
        <message>
            <source>The two marks are too close together to turn a picture by. Mark the middle of each pupil.</source>
            <translation>As duas marcas estão próximas demais para girar uma imagem por elas. Marque o centro de cada pupila.</translation>
        </message>
        <message>
            <source>Both eyes are marked. Keep them, or mark again: the nearer mark moves.</source>
            <translation>Os dois olhos estão marcados. Mantenha as marcas ou marque de novo: a marca mais próxima se move.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil: the one on the left of the picture.</source>
            <translation>Marque o centro da pupila direita do paciente: a que está à esquerda na imagem.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil.</source>
            <translation>Marque o centro da pupila direita do paciente.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil: the one on the right of the picture.</source>
            <translation>Agora a pupila esquerda do paciente: a que está à direita na imagem.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil.</source>
            <translation>Agora a pupila esquerda do paciente.</translation>
        </message>
        <message>
            <source>The patient&apos;s left eye is marked to the left of the right one. If the picture is upright, the two are swapped.</source>
            <translation>O olho esquerdo do paciente está marcado à esquerda do olho direito. Se a imagem não está de cabeça para baixo, os dois estão trocados.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 Cursor %2% across, %3% down. Space marks.</source>
            <comment>what to mark, shares of the picture</comment>
            <translation>%1 Cursor: %2% a partir da esquerda, %3% a partir do alto. Espaço marca.</translation>
        </message>
        <message>
            <source>Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.</source>
            <comment>view</comment>
            <translation>Retirar esta foto: %1, logo após o tratamento? Todas as estações da clínica a apagam, e ela não volta.</translation>
        </message>
    </context>
    <context>
        <name>PhotoHalf</name>
        <message>
            <source>The one before</source>
            <translation>A anterior</translation>
        </message>
        <message>
            <source>The one after</source>
            <translation>A seguinte</translation>
        </message>
        <message>
            <source>Mark the eyes anew</source>
            <translation>Marcar de novo</translation>
        </message>
        <message>
            <source>Mark the eyes</source>
            <translation>Marcar os olhos</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Retirar</translation>
        </message>
    </context>
    <context>
        <name>PhotoMarking</name>
        <message>
            <source>Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.</source>
            <translation>Clique ou toque, ou mova o cursor com as setas (com Shift, em passos pequenos) e pressione Espaço. Quadrado: olho direito. Círculo: olho esquerdo.</translation>
        </message>
        <message>
            <source>Keep the marks</source>
            <translation>Manter as marcas</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Desfazer</translation>
        </message>
        <message>
            <source>Leave without keeping</source>
            <translation>Sair sem manter</translation>
        </message>
    </context>
    <context>
        <name>PhotoPanel</name>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The patient&apos;s photographs show up here once the phone has sent them. Taking them is the patient&apos;s choice.</source>
            <translation>As fotos do paciente aparecem aqui assim que o celular as envia. Tirar fotos é escolha do paciente.</translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>Side by side</source>
            <translation>Lado a lado</translation>
        </message>
        <message>
            <source>Two photographs of one view beside each other</source>
            <translation>Duas fotos da mesma vista, uma ao lado da outra</translation>
        </message>
        <message>
            <source>Add the clinic's photographs</source>
            <translation>Incluir fotos da clínica</translation>
        </message>
        <message>
            <source>From right after the treatment, with the clinic's own camera</source>
            <translation>De logo após o tratamento, com a câmera da própria clínica</translation>
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
            <source>As when facing the patient: the patient&apos;s right on the left.</source>
            <translation>Como de frente para o paciente: a direita do paciente fica à esquerda.</translation>
        </message>
        <message>
            <source>The patient&apos;s left side is towards the camera.</source>
            <translation>O lado esquerdo do paciente está voltado para a câmera.</translation>
        </message>
        <message>
            <source>The patient&apos;s right side is towards the camera.</source>
            <translation>O lado direito do paciente está voltado para a câmera.</translation>
        </message>
        <message>
            <source>Beside an entry that has not arrived yet</source>
            <translation>Com uma anotação que ainda não chegou</translation>
        </message>
        <message>
            <source>Beside the entry of %1</source>
            <translation>Com a anotação de %1</translation>
        </message>
        <message>
            <source>Could not be opened</source>
            <translation>Não foi possível abrir</translation>
        </message>
        <message>
            <source>Still arriving: %1 of %2 parts</source>
            <translation>Ainda chegando: %1 de %2 partes</translation>
        </message>
        <message>
            <source>Taken back by the patient, %1</source>
            <translation>Retirada pelo paciente, %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln photograph(s)</source>
            <translation>
                <numerusform>%Ln foto</numerusform>
                <numerusform>%Ln fotos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln still arriving</source>
            <translation>
                <numerusform>%Ln ainda chegando</numerusform>
                <numerusform>%Ln ainda chegando</numerusform>
            </translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <comment>views</comment>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>logo após o tratamento</translation>
        </message>
        <message>
            <source>Put in by %1</source>
            <comment>person</comment>
            <translation>Incluída por %1</translation>
        </message>
        <message>
            <source>Taken back by %1, %2</source>
            <comment>person, time</comment>
            <translation>Retirada por %1, %2</translation>
        </message>
    </context>
    <context>
        <name>PhotosPage</name>
        <message>
            <source>Photographs side by side</source>
            <translation>Fotos lado a lado</translation>
        </message>
        <message>
            <source>Back to the course</source>
            <translation>Voltar ao caso</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Aproximar</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>Afastar</translation>
        </message>
        <message>
            <source>Whole picture</source>
            <translation>Imagem inteira</translation>
        </message>
        <message>
            <source>Zoom of both: %1</source>
            <translation>Zoom das duas: %1</translation>
        </message>
        <message>
            <source>Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.</source>
            <translation>Luz, distância e expressão variam de uma foto para outra. O que parece uma mudança pode vir delas: compare com cautela e olhe para o paciente antes de decidir.</translation>
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
    <context>
        <name>IdleNotice</name>
        <message>
            <source>Stay open</source>
            <translation>Deixar aberta</translation>
        </message>
    </context>
    <context>
        <name>IdlePanel</name>
        <message>
            <source>Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.</source>
            <translation>Ninguém usa a estação há algum tempo. Ela se tranca em meio minuto. O que foi começado fica guardado.</translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message>
            <source>The phone holds more from this desk than the desk does: the desk runs on older data.</source>
            <translation>O celular tem mais desta estação do que a própria estação: a estação trabalha com dados mais antigos.</translation>
        </message>
        <message>
            <source>The phone sent two different histories: call, and do not rely on its entries.</source>
            <translation>O celular enviou dois históricos diferentes: ligue e não confie nas anotações dele.</translation>
        </message>
        <message>
            <source>A message of the phone is missing: the hub holds it back or lost it.</source>
            <translation>Falta uma mensagem do celular: o servidor a retém ou a perdeu.</translation>
        </message>
        <message>
            <source>Phone not heard of since %1: what was written there may not be here.</source>
            <translation>Sem notícias do celular desde %1: o que foi escrito lá pode não estar aqui.</translation>
        </message>
        <message>
            <source>Phone not heard of since it was linked.</source>
            <translation>Sem notícias do celular desde que foi vinculado.</translation>
        </message>
        <message>
            <source>It has not confirmed what was sent to it, %1.</source>
            <comment>when it was sent</comment>
            <translation>O celular não confirmou o que foi enviado a ele, %1.</translation>
        </message>
        <message>
            <source>That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.</source>
            <translation>São mais de %1 dias: o telefone pode ter se perdido ou não ser mais usado. Ligue e, se preciso, vincule um telefone de novo.</translation>
        </message>
        <message>
            <source>it does not know this desk or the mailbox</source>
            <comment>why the hub takes nothing</comment>
            <translation>ele não conhece esta estação ou a caixa de correio</translation>
        </message>
        <message>
            <source>it holds something else under the same number</source>
            <comment>why the hub takes nothing</comment>
            <translation>ele tem outra coisa sob o mesmo número</translation>
        </message>
        <message>
            <source>the mailbox is full</source>
            <comment>why the hub takes nothing</comment>
            <translation>a caixa de correio está cheia</translation>
        </message>
        <message>
            <source>it is too large or unreadable for it</source>
            <comment>why the hub takes nothing</comment>
            <translation>ele o acha grande demais ou não consegue ler</translation>
        </message>
        <message>
            <source>The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.</source>
            <translation>O servidor não aceita o que esta estação envia: %1. Fica aqui e é tentado de novo. Avise quem administra o servidor.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>%Ln mensagem do celular não pode ser lida aqui. Ligue e pergunte o que foi escrito. Se continuar assim, peça que os dados do diário sejam salvos no celular (Ajustes, Os meus dados). Só depois apague ali o diário e vincule o celular de novo.</numerusform>
                <numerusform>%Ln mensagens do celular não podem ser lidas aqui. Ligue e pergunte o que foi escrito. Se continuar assim, peça que os dados do diário sejam salvos no celular (Ajustes, Os meus dados). Só depois apague ali o diário e vincule o celular de novo.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>%Ln item deste acompanhamento foi escrito por um programa mais novo e não pode ser mostrado aqui. Atualize esta estação e ligue até lá.</numerusform>
                <numerusform>%Ln itens deste acompanhamento foram escritos por um programa mais novo e não podem ser mostrados aqui. Atualize esta estação e ligue até lá.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SettingsBoard</name>
        <message numerus="yes">
            <source>%Ln minute(s)</source>
            <translation>
                <numerusform>%Ln minuto</numerusform>
                <numerusform>%Ln minutos</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>StepPanel</name>
        <message>
            <source>Leave it as it is</source>
            <translation>Deixar assim</translation>
        </message>
    </context>
    <context>
        <name>GraveStep</name>
        <message>
            <source>Choose who stands by: this is for two people.</source>
            <translation>Escolha quem acompanha: isto se faz a dois.</translation>
        </message>
        <message>
            <source>Type the passphrase of this desk.</source>
            <translation>Digite a frase secreta desta estação.</translation>
        </message>
    </context>
    <context>
        <name>StepFields</name>
        <message>
            <source>Passphrase of this desk, once more</source>
            <translation>Frase secreta desta estação, mais uma vez</translation>
        </message>
        <message>
            <source>Who stands by: this is for two people</source>
            <translation>Quem acompanha: isto se faz a dois</translation>
        </message>
    </context>
    <context>
        <name>TreatmentWhen</name>
        <message>
            <source>When the treatment was</source>
            <translation>Quando foi o tratamento</translation>
        </message>
        <message>
            <source>Day, year-month-day</source>
            <translation>Dia, ano-mês-dia</translation>
        </message>
        <message>
            <source>Time, hours:minutes</source>
            <translation>Hora, horas:minutos</translation>
        </message>
        <message>
            <source>It was just now</source>
            <translation>Foi agora mesmo</translation>
        </message>
        <message>
            <source>It was then</source>
            <translation>Foi nesse momento</translation>
        </message>
        <message>
            <source>The days of the course count from here. Unless you change it, today&apos;s record takes the time at which you record it.</source>
            <translation>Os dias do caso contam a partir daqui. Se não mudar, um registro de hoje recebe a hora em que você o grava.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPanel</name>
        <message>
            <source>The treatment</source>
            <translation>O tratamento</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Correções do registro</translation>
        </message>
        <message>
            <source>Go on with the correction</source>
            <translation>Continuar a correção</translation>
        </message>
        <message>
            <source>Correct the treatment</source>
            <translation>Corrigir o tratamento</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>O que estava escrito antes continua registrado</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln espera há tempo demais</numerusform>
                <numerusform>%Ln esperam há tempo demais</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln na fila espera há tempo demais.</numerusform>
                <numerusform>%Ln na fila esperam há tempo demais.</numerusform>
            </translation>
        </message>
        <message>
            <source>Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.</source>
            <translation>Trancada desde: %1. Enquanto está trancada, esta estação não consulta o servidor: o que chegar agora aparece ao destrancar.</translation>
        </message>
        <message>
            <source>Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.</source>
            <translation>Avisos na área de trabalho não são possíveis aqui: este computador não oferece um serviço para eles. Só a estação aberta avisa.</translation>
        </message>
        <message>
            <source>The computer did not take the last notice. Only the open desk tells for sure.</source>
            <translation>O computador não aceitou o último aviso. Com certeza só a estação aberta avisa.</translation>
        </message>
        <message>
            <source>When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.</source>
            <translation>Quando é preciso ligar agora para alguém, ou alguém espera há tempo demais, aparece um aviso sem nome na área de trabalho. Uma estação trancada não recebe nada novo.</translation>
        </message>
        <message>
            <source>Somebody is to be called now. Open the desk.</source>
            <translation>É preciso ligar agora para alguém. Abra a estação.</translation>
        </message>
        <message>
            <source>Clinic&apos;s desk</source>
            <translation>Estação da clínica</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Abrir a estação</translation>
        </message>
    </context>
    <context>
        <name>FollowUpAnswer</name>
        <message>
            <source>What became of it?</source>
            <translation>No que deu?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueFilter</name>
        <message>
            <source>Not written down</source>
            <translation>Não anotado</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, count</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Anybody</source>
            <translation>Qualquer pessoa</translation>
        </message>
        <message>
            <source>Anybody or nobody</source>
            <translation>Alguém ou ninguém</translation>
        </message>
        <message>
            <source>Any day</source>
            <translation>Qualquer dia</translation>
        </message>
        <message>
            <source>After day %1</source>
            <translation>Depois do dia %1</translation>
        </message>
        <message>
            <source>Days %1 to %2</source>
            <translation>Dias %1 a %2</translation>
        </message>
        <message>
            <source>Threads by %1</source>
            <translation>Fios por %1</translation>
        </message>
        <message>
            <source>Taken by %1</source>
            <translation>Assumido por %1</translation>
        </message>
    </context>
    <context>
        <name>FilterPanel</name>
        <message>
            <source>Filter the queue</source>
            <translation>Filtrar a fila</translation>
        </message>
        <message>
            <source>Back to the queue</source>
            <translation>Voltar à fila</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fios colocados por</translation>
        </message>
        <message>
            <source>Row taken by</source>
            <translation>Linha assumida por</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Dia de recuperação</translation>
        </message>
        <message>
            <source>It holds until the desk is locked or somebody else is named.</source>
            <translation>Vale até o posto ser bloqueado ou outra pessoa ser indicada.</translation>
        </message>
    </context>
    <context>
        <name>FilterBar</name>
        <message>
            <source>Takes this filter off</source>
            <translation>Retira este filtro</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Mostrar</translation>
        </message>
        <message>
            <source>Takes search and filters off</source>
            <translation>Retira a busca e os filtros</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UsualBoard</name>
        <message>
            <source>Dressings</source>
            <translation>Curativos</translation>
        </message>
        <message>
            <source>Please write an entry</source>
            <translation>Pedir uma anotação</translation>
        </message>
        <message>
            <source>Come earlier</source>
            <translation>Vir antes</translation>
        </message>
        <message>
            <source>Please call us</source>
            <translation>Pedir uma ligação</translation>
        </message>
        <message>
            <source>Thank you</source>
            <translation>Obrigado</translation>
        </message>
        <message>
            <source>It is not known which language the patient reads: choose it.</source>
            <translation>Não se sabe qual idioma a paciente lê: escolha.</translation>
        </message>
        <message>
            <source>The patient was registered with %1.</source>
            <comment>a language</comment>
            <translation>A paciente foi cadastrada com %1.</translation>
        </message>
        <message>
            <source>The patient reads, in %1</source>
            <comment>a language</comment>
            <translation>A paciente lê, em %1</translation>
        </message>
        <message>
            <source>A call is due. A message may be read too late: call first.</source>
            <translation>É preciso ligar. Uma mensagem pode ser lida tarde demais: ligue primeiro.</translation>
        </message>
    </context>
    <context>
        <name>UsualPanel</name>
        <message>
            <source>Usual messages</source>
            <translation>Mensagens habituais</translation>
        </message>
        <message>
            <source>Language of the patient</source>
            <translation>Idioma da paciente</translation>
        </message>
        <message>
            <source>In your language</source>
            <translation>No seu idioma</translation>
        </message>
        <message>
            <source>Put it into the message</source>
            <translation>Colocar na mensagem</translation>
        </message>
        <message>
            <source>It can be changed there before it is sent</source>
            <translation>Lá pode ser alterada antes do envio</translation>
        </message>
    </context>
    <context>
        <name>EntryLink</name>
        <message>
            <source>Shows the entry behind it</source>
            <translation>Mostra a anotação por trás disso</translation>
        </message>
    </context>
    <context>
        <name>CallVisit</name>
        <message>
            <source>The visit</source>
            <translation>A consulta</translation>
        </message>
        <message>
            <source>New day, year-month-day</source>
            <translation>Novo dia, ano-mês-dia</translation>
        </message>
        <message>
            <source>Time, if one is agreed</source>
            <translation>Hora, se combinada</translation>
        </message>
    </context>
    <context>
        <name>CurveBox</name>
        <message>
            <source>Score, points of 10</source>
            <translation>Pontuação, pontos de 10</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Dias desde o tratamento</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PaperPrinter</name>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
        <message>
            <source>No printer is set up on this computer. Set one up, or save the pages as a file.</source>
            <translation>Nenhuma impressora está instalada neste computador. Instale uma ou salve as páginas como arquivo.</translation>
        </message>
        <message>
            <source>Sent to %1. Fetch it there; this desk wrote no file.</source>
            <translation>Enviado para %1. Busque lá; esta estação não gravou nenhum arquivo.</translation>
        </message>
        <message>
            <source>The printer did not take it. Look whether it is on and has paper, then print again.</source>
            <translation>A impressora não aceitou. Veja se está ligada e tem papel, e imprima de novo.</translation>
        </message>
    </context>
    <context>
        <name>Roles</name>
        <message>
            <source>Recording treatments and follow-ups</source>
            <translation>Registrar tratamentos e retornos</translation>
        </message>
        <message>
            <source>Closing a finding</source>
            <translation>Fechar um achado</translation>
        </message>
        <message>
            <source>Signing a protocol, a usual range or a limit</source>
            <translation>Assinar um protocolo, uma faixa normal ou um limite</translation>
        </message>
        <message>
            <source>Linking and ending patients&apos; phones</source>
            <translation>Vincular e excluir celulares</translation>
        </message>
        <message>
            <source>Adding and shutting out desks, fresh keys and the hub</source>
            <translation>Adicionar e excluir estações, chaves novas e o servidor</translation>
        </message>
        <message>
            <source>Changing the numbers that patients call</source>
            <translation>Alterar os números para ligar</translation>
        </message>
        <message>
            <source>Naming people and giving roles</source>
            <translation>Nomear pessoas e dar funções</translation>
        </message>
        <message>
            <source>Backups, passphrase and saving who did what</source>
            <translation>Backups, frase secreta e salvar quem fez o quê</translation>
        </message>
        <message>
            <source>The practice&apos;s figures</source>
            <translation>Os números da clínica</translation>
        </message>
        <message>
            <source>In charge</source>
            <translation>Responsável</translation>
        </message>
        <message>
            <source>Practitioner</source>
            <translation>Profissional</translation>
        </message>
        <message>
            <source>Colleague on call</source>
            <translation>De plantão</translation>
        </message>
        <message>
            <source>Assistant</source>
            <translation>Assistência</translation>
        </message>
        <message>
            <source>Keeper of the computers</source>
            <translation>Cuidado dos computadores</translation>
        </message>
        <message>
            <source>No role yet: may do everything.</source>
            <translation>Ainda sem função: pode fazer tudo.</translation>
        </message>
        <message>
            <source>May do everything.</source>
            <translation>Pode fazer tudo.</translation>
        </message>
        <message>
            <source>Treatments, follow-ups and closing findings; patients&apos; phones; the numbers that patients call; the practice&apos;s figures.</source>
            <translation>Tratamentos, retornos e fechamento de achados; celulares; os números para ligar; os números da clínica.</translation>
        </message>
        <message>
            <source>Closing findings; patients&apos; phones.</source>
            <translation>Fechar achados; celulares.</translation>
        </message>
        <message>
            <source>Patients&apos; phones.</source>
            <translation>Celulares.</translation>
        </message>
        <message>
            <source>Desks, keys and the hub; backups and passphrase; saving who did what.</source>
            <translation>Estações, chaves e servidor; backups e frase secreta; salvar quem fez o quê.</translation>
        </message>
        <message>
            <source>Say first who is at the desk.</source>
            <translation>Indique primeiro quem está na estação.</translation>
        </message>
        <message>
            <source>%1: nobody here has a role for that. Whoever is in charge can give one.</source>
            <translation>%1: ninguém aqui tem função para isso. A pessoa responsável pode dar uma.</translation>
        </message>
        <message>
            <source>%1: for %2. Your role here: %3.</source>
            <comment>task, people, role</comment>
            <translation>%1: reservado a %2. Sua função aqui: %3.</translation>
        </message>
        <message>
            <source>not allowed by the role at that time</source>
            <translation>não permitido pela função da época</translation>
        </message>
        <message>
            <source>Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.</source>
            <translation>Precisa restar alguém que possa nomear pessoas e dar funções. Dê antes a outra pessoa a função “Responsável”.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::RoleBoard</name>
        <message>
            <source>%1: %2 from now on.</source>
            <comment>person, role</comment>
            <translation>%1: a partir de agora, %2.</translation>
        </message>
        <message>
            <source>%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.</source>
            <comment>person, role</comment>
            <translation>%1, “%2” tira de você o direito de dar funções. Só outra pessoa que o tenha pode devolvê-lo.</translation>
        </message>
    </context>
    <context>
        <name>RoleFields</name>
        <message>
            <source>People and roles</source>
            <translation>Pessoas e funções</translation>
        </message>
        <message>
            <source>A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.</source>
            <translation>Uma função é uma regra da casa e não uma fechadura: aqui as pessoas são nomes atrás de uma mesma frase secreta. Quem não pode fazer algo fica sabendo quem pode. Assumir e ligar para uma paciente, anotar isso e reabrir um achado é permitido a todos.</translation>
        </message>
        <message>
            <source>Give that role</source>
            <translation>Dar essa função</translation>
        </message>
        <message>
            <source>Keep my role</source>
            <translation>Manter a minha função</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicPhotos</name>
        <message>
            <source>This picture does not open. Choose another.</source>
            <translation>Esta imagem não abre. Escolha outra.</translation>
        </message>
        <message>
            <source>This picture is too large. Choose a smaller one.</source>
            <translation>Esta imagem é grande demais. Escolha uma menor.</translation>
        </message>
        <message>
            <source>The desk reads JPEG and PNG pictures. Choose one of these.</source>
            <translation>Este programa lê imagens JPEG e PNG. Escolha uma dessas.</translation>
        </message>
        <message>
            <source>This picture is too small. Choose a larger one.</source>
            <translation>Esta imagem é pequena demais. Escolha uma maior.</translation>
        </message>
        <message>
            <source>This picture is damaged. Choose another.</source>
            <translation>Esta imagem está danificada. Escolha outra.</translation>
        </message>
        <message>
            <source>There are %1 from right after the treatment. That is the most. Take one back to add another.</source>
            <translation>Há %1 fotos de logo após o tratamento. É o máximo. Retire uma para incluir outra.</translation>
        </message>
        <message>
            <source>A photograph from right after the treatment</source>
            <translation>Uma foto de logo após o tratamento</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg)</source>
            <translation>Imagens (*.png *.jpg *.jpeg)</translation>
        </message>
        <message>
            <source>Kept: %1, right after the treatment.</source>
            <comment>view</comment>
            <translation>Guardada: %1, logo após o tratamento.</translation>
        </message>
    </context>
    <context>
        <name>TakeBackPhoto</name>
        <message>
            <source>Take it back</source>
            <translation>Retirar</translation>
        </message>
        <message>
            <source>Keep the photograph</source>
            <translation>Manter a foto</translation>
        </message>
    </context>
    <context>
        <name>ClinicPhotoForm</name>
        <message>
            <source>Right after the treatment: %1</source>
            <translation>Logo após o tratamento: %1</translation>
        </message>
        <message>
            <source>Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.</source>
            <translation>Imagens que você tirou com a câmera da própria clínica. Elas ficam nas estações da clínica e nunca vão para um celular. O lugar e a hora do arquivo não são guardados.</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Vista</translation>
        </message>
        <message>
            <source>Getting the picture ready …</source>
            <translation>Preparando a imagem …</translation>
        </message>
        <message>
            <source>The photograph: %1</source>
            <translation>A foto: %1</translation>
        </message>
        <message>
            <source>Is it this patient? Is it the right side? Is it sharp?</source>
            <translation>É este paciente? É o lado certo? Está nítida?</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Manter</translation>
        </message>
        <message>
            <source>Not this one</source>
            <translation>Esta não</translation>
        </message>
        <message>
            <source>It is not kept</source>
            <translation>Ela não fica guardada</translation>
        </message>
        <message>
            <source>Choose a picture</source>
            <translation>Escolher uma imagem</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Pronto</translation>
        </message>
        <message>
            <source>Closes this form</source>
            <translation>Fecha este formulário</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolTaking</name>
        <message>
            <source>This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.</source>
            <translation>Este arquivo é maior do que um protocolo pode ser. Nada foi alterado. Escolha o arquivo que uma estação salvou ou que calibrate gravou.</translation>
        </message>
        <message>
            <source>This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.</source>
            <translation>Este arquivo tem uma forma que este programa não conhece. Nada foi alterado. Atualize o programa ou peça o arquivo feito com a mesma versão.</translation>
        </message>
        <message>
            <source>This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.</source>
            <translation>Este não é um arquivo de protocolo correto (%1). Nada foi alterado. Escolha outro arquivo ou peça que este seja gravado de novo; não o corrija à mão.</translation>
        </message>
        <message>
            <source>Take a protocol from a file</source>
            <translation>Tomar um protocolo de um arquivo</translation>
        </message>
        <message>
            <source>The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.</source>
            <translation>O arquivo não pode ser lido. Nada foi alterado. Copie-o para este computador e escolha-o de novo.</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <comment>protocol in a file, number</comment>
            <translation>%1, versão %2</translation>
        </message>
        <message>
            <source>Written %1 by %2.</source>
            <comment>when, program</comment>
            <translation>Gravado %1 por %2.</translation>
        </message>
        <message>
            <source>It does not say when it was written, nor by which program.</source>
            <translation>Não diz quando foi gravado, nem por qual programa.</translation>
        </message>
        <message>
            <source>Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.</source>
            <translation>Seus limiares foram calibrados com %1, para um orçamento de %2 alertas falsos em 100 casos sem complicações. É o que diz o arquivo; não está demonstrado que o respeitem nesta clínica.</translation>
        </message>
        <message>
            <source>The hash of what is behind that range begins with %1.</source>
            <translation>O hash do que está por trás dessa faixa começa com %1.</translation>
        </message>
        <message>
            <source>The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.</source>
            <translation>O arquivo não está assinado: nada nele prova quem o gravou. Aceite-o apenas de alguém a quem possa perguntar.</translation>
        </message>
        <message>
            <source>Rule</source>
            <translation>Regra</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>Em uso</translation>
        </message>
        <message>
            <source>In the file</source>
            <translation>No arquivo</translation>
        </message>
        <message>
            <source>No rule differs.</source>
            <translation>Nenhuma regra é diferente.</translation>
        </message>
        <message>
            <source>All other rules are the same.</source>
            <translation>Todas as outras regras são iguais.</translation>
        </message>
        <message>
            <source>It is the one in use.</source>
            <translation>É a que está em uso.</translation>
        </message>
        <message>
            <source>It is known here as %1, and may be used. It comes into use when the draft is signed.</source>
            <translation>Aqui é conhecida como %1 e pode ser usada. Entra em uso quando o rascunho é assinado.</translation>
        </message>
        <message>
            <source>It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.</source>
            <translation>Não pode ser tomada: não diz corretamente em que se baseia. O rascunho mantém a faixa normal em uso e os limiares que pertencem a ela.</translation>
        </message>
        <message>
            <source>A draft can be rehearsed with it, and not signed.</source>
            <translation>Com ela um rascunho pode ser simulado, mas não assinado.</translation>
        </message>
        <message>
            <source>It is kept as a version, and comes into use when the draft is signed.</source>
            <translation>É guardada como versão e entra em uso quando o rascunho é assinado.</translation>
        </message>
        <message>
            <source>A draft is there already. This one takes its place; &quot;Undo&quot; on the next page brings it back.</source>
            <translation>Já existe um rascunho. Este toma o lugar dele; “Desfazer” na página seguinte o traz de volta.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: what is taken carries a name.</source>
            <translation>Indique primeiro quem está na estação: o que se toma leva um nome.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>O arquivo não pode ser gravado ali. Escolha outra pasta.</translation>
        </message>
        <message>
            <source>Saved as %1. It holds the care plan in the clinic&apos;s own words, the rules and the usual range; no patient stands in it.</source>
            <translation>Salvo como %1. Contém o plano de cuidados com as palavras da própria clínica, as regras e a faixa normal; nenhum paciente consta nele.</translation>
        </message>
        <message>
            <source>Save the protocol in use</source>
            <translation>Salvar o protocolo em uso</translation>
        </message>
        <message>
            <source>A draft is there already, and cannot be read. It stays as it is: this one is not kept.</source>
            <translation>Já existe um rascunho, e ele não pode ser lido. Fica como está: este não é guardado.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolFilePage</name>
        <message>
            <source>A protocol from a file</source>
            <translation>Um protocolo de um arquivo</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Deixar</translation>
        </message>
        <message>
            <source>Nothing of the file is kept.</source>
            <translation>Nada do arquivo é guardado.</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>O que é</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>O que gera um achado</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>O que se pede ao paciente</translation>
        </message>
        <message>
            <source>The care plan is the same.</source>
            <translation>O plano de cuidados é o mesmo.</translation>
        </message>
        <message>
            <source>Take its care plan as well</source>
            <translation>Tomar também o plano de cuidados</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>O que conta como normal</translation>
        </message>
        <message>
            <source>No course of this clinic is behind it: check it on all of ours</source>
            <translation>Nenhum caso desta clínica está por trás dela: verificá-la com todos os nossos</translation>
        </message>
        <message>
            <source>Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.</source>
            <translation>Caso contrário, só contam como não vistos os casos tratados depois de ela ser calculada. Uma faixa dos seus próprios casos é calculada em Resultados, Faixa normal.</translation>
        </message>
        <message>
            <source>Make a draft of it</source>
            <translation>Fazer um rascunho dele</translation>
        </message>
        <message>
            <source>It is rehearsed and signed like every other draft; nothing goes live before.</source>
            <translation>É simulado e assinado como qualquer rascunho; nada entra em uso antes.</translation>
        </message>
    </context>
    <context>
        <name>PastVisits</name>
        <message>
            <source>Fold them away</source>
            <translation>Recolher</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Mostrar</translation>
        </message>
    </context>
    <context>
        <name>PatientPanel</name>
        <message>
            <source>Record the correction</source>
            <translation>Registrar a correção</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>Deixar assim</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nome</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Telefone para ligar para o paciente</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Idioma do diário</translation>
        </message>
        <message>
            <source>Every desk of the clinic shows it from then on. The patient&apos;s phone is told nothing of it: she chooses the language there herself.</source>
            <translation>A partir daí, todas as estações da clínica mostram isso. O celular da paciente não é avisado de nada: lá ela mesma escolhe o idioma.</translation>
        </message>
    </context>
    <context>
        <name>PatientRecord</name>
        <message>
            <source>Correct name, number, language</source>
            <translation>Corrigir nome, número, idioma</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>O que estava escrito antes continua registrado</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PatientEditor</name>
        <message>
            <source>name until then: %1</source>
            <translation>nome até então: %1</translation>
        </message>
        <message>
            <source>no number until then</source>
            <translation>sem número até então</translation>
        </message>
        <message>
            <source>number until then: %1</source>
            <translation>número até então: %1</translation>
        </message>
        <message>
            <source>language until then: %1</source>
            <translation>idioma até então: %1</translation>
        </message>
        <message>
            <source>as it was already</source>
            <translation>como já estava</translation>
        </message>
        <message>
            <source>somebody at another desk</source>
            <translation>alguém em outra estação</translation>
        </message>
        <message>
            <source>Corrected %1 by %2: %3</source>
            <comment>when, who, what held until then</comment>
            <translation>Corrigido %1 por %2: %3</translation>
        </message>
        <message>
            <source>Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.</source>
            <translation>Duas estações corrigiram isto sem saber uma da outra. Onde ambas mudaram a mesma coisa, vale a mais recente. Pergunte à paciente o que está certo.</translation>
        </message>
        <message>
            <source>Correct what is on record of %1</source>
            <translation>Corrigir o que está registrado sobre %1</translation>
        </message>
        <message>
            <source>%1 corrected this meanwhile: %2. Only what you change here is changed.</source>
            <comment>who, what held until then</comment>
            <translation>%1 corrigiu isto enquanto isso: %2. Só muda o que você mudar aqui.</translation>
        </message>
        <message>
            <source>Corrected: %1</source>
            <comment>name</comment>
            <translation>Corrigido: %1</translation>
        </message>
        <message>
            <source>It was corrected again meanwhile: nothing was taken back.</source>
            <translation>Enquanto isso foi corrigido de novo: nada foi retirado.</translation>
        </message>
    </context>
    <context>
        <name>LastAct</name>
        <message>
            <source>%1 brought the visit forward, %2</source>
            <comment>person, when</comment>
            <translation>%1 antecipou a consulta, %2</translation>
        </message>
        <message>
            <source>%1 spoke with her, %2</source>
            <comment>person, when</comment>
            <translation>%1 falou com ela, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2</source>
            <comment>person, when</comment>
            <translation>%1 ligou e não a encontrou, %2</translation>
        </message>
        <message>
            <source>Taken by %1, %2</source>
            <comment>person, when</comment>
            <translation>Assumido por %1, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2, nothing noted since</source>
            <comment>person, when</comment>
            <translation>%1 ligou e não a encontrou, %2; nada anotado desde então</translation>
        </message>
        <message>
            <source>%1 brought the visit forward %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 antecipou a consulta há %2; nada anotado desde então</translation>
        </message>
        <message>
            <source>%1 spoke with her %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 falou com ela há %2; nada anotado desde então</translation>
        </message>
        <message>
            <source>Taken by %1 %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>Assumido por %1 há %2; nada anotado desde então</translation>
        </message>
        <message>
            <source>She rang, and %1 answered, %2</source>
            <comment>person, when</comment>
            <translation>Ela ligou, %1 atendeu, %2</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Retirado por %1</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCorrection</name>
        <message>
            <source>I have seen it</source>
            <translation>Já vi</translation>
        </message>
        <message>
            <source>Your draft stays as it is</source>
            <translation>Seu rascunho fica como está</translation>
        </message>
        <message>
            <source>Why the record is corrected</source>
            <translation>Por que o registro é corrigido</translation>
        </message>
        <message>
            <source>What this changes</source>
            <translation>O que isto muda</translation>
        </message>
        <message>
            <source>Nothing yet. Go through the steps and set right what is wrong.</source>
            <translation>Nada ainda. Percorra os passos e acerte o que está errado.</translation>
        </message>
        <message>
            <source>The former record stays with the course. Whose treatment it is cannot be corrected here.</source>
            <translation>O registro anterior fica com o acompanhamento. De quem é o tratamento não pode ser corrigido aqui.</translation>
        </message>
    </context>
</TS>
