<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>BaselineLine</name>
        <message>
            <source>%1, right</source>
            <translation>%1, derecha</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1, izquierda</translation>
        </message>
    </context>
    <context>
        <name>Charts</name>
        <message>
            <source>above the usual range (%1 to %2)</source>
            <translation>por encima de lo habitual (%1 a %2)</translation>
        </message>
        <message>
            <source>below the usual range (%1 to %2)</source>
            <translation>por debajo de lo habitual (%1 a %2)</translation>
        </message>
        <message>
            <source>inside the usual range (%1 to %2)</source>
            <translation>dentro de lo habitual (%1 a %2)</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>Dolor</translation>
        </message>
        <message>
            <source>Swelling</source>
            <translation>Hinchazón</translation>
        </message>
        <message>
            <source>Bruising</source>
            <translation>Moratón</translation>
        </message>
        <message>
            <source>Tightness</source>
            <translation>Tirantez</translation>
        </message>
        <message>
            <source>Twinges</source>
            <translation>Punzadas</translation>
        </message>
        <message>
            <source>Puckering</source>
            <translation>Hoyuelos</translation>
        </message>
        <message>
            <source>Numbness</source>
            <translation>Adormecimiento</translation>
        </message>
        <message>
            <source>left</source>
            <translation>izquierda</translation>
        </message>
        <message>
            <source>right</source>
            <translation>derecha</translation>
        </message>
        <message>
            <source>%1, patient's left</source>
            <translation>%1, izquierda del paciente</translation>
        </message>
        <message>
            <source>%1, patient's right</source>
            <translation>%1, derecha del paciente</translation>
        </message>
        <message>
            <source>Usual range, 10th to 90th of 100 patients (%1): an assumption, no courses of this clinic behind it</source>
            <translation>Margen habitual, del 10.º al 90.º de 100 pacientes (%1): una suposición, sin casos de esta clínica</translation>
        </message>
        <message>
            <source>%1: nothing recorded yet.</source>
            <translation>%1: aún no hay nada anotado.</translation>
        </message>
        <message>
            <source>Highest %1 on day %2.</source>
            <translation>Máximo %1 el día %2.</translation>
        </message>
        <message>
            <source>Last %1 on day %2</source>
            <translation>Último %1 el día %2</translation>
        </message>
        <message>
            <source>, %1.</source>
            <translation>, %1.</translation>
        </message>
        <message>
            <source>Expected on day %1: %2 to %3, most likely %4.</source>
            <translation>Esperado el día %1: %2 a %3, lo más probable %4.</translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>Margen habitual, del 10.º al 90.º de 100 pacientes (%1): insuficiente, basado en solo %Ln caso</numerusform>
                <numerusform>Margen habitual, del 10.º al 90.º de 100 pacientes (%1): insuficiente, basado en solo %Ln casos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>Margen habitual, del 10.º al 90.º de 100 pacientes (%1): de %Ln caso, calculado %2</numerusform>
                <numerusform>Margen habitual, del 10.º al 90.º de 100 pacientes (%1): de %Ln casos, calculado %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1: %Ln valor, del día %2 al día %3.</numerusform>
                <numerusform>%1: %Ln valores, del día %2 al día %3.</numerusform>
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
            <translation>Los números aparecen en cada aviso, también con el teléfono bloqueado y sin red.</translation>
        </message>
        <message>
            <source>Name of the clinic</source>
            <translation>Nombre de la clínica</translation>
        </message>
        <message>
            <source>Phone during the day</source>
            <translation>Teléfono de día</translation>
        </message>
        <message>
            <source>On call, if the clinic does not answer</source>
            <translation>Guardia, si la clínica no contesta</translation>
        </message>
        <message>
            <source>Emergency number of your country</source>
            <translation>Número de emergencias de su país</translation>
        </message>
        <message>
            <source>People at the desk, one name a line</source>
            <translation>Personas del puesto, un nombre por línea</translation>
        </message>
        <message>
            <source>Hub, address and port</source>
            <translation>Servidor, dirección y puerto</translation>
        </message>
        <message>
            <source>Fingerprint of the hub's key, from whoever runs it</source>
            <translation>Huella de la clave del servidor, de quien lo administra</translation>
        </message>
        <message>
            <source>Missing: %1</source>
            <translation>Falta: %1</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>This clinic's key: whoever runs the hub admits it by this</source>
            <translation>Clave de esta clínica: con ella la admite quien administra el servidor</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <translation>Copiar la clave</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Unirse a los demás puestos de la clínica</translation>
        </message>
        <message>
            <source>If the clinic works with Ebbline at another computer already</source>
            <translation>Si la clínica ya trabaja con Ebbline en otro ordenador</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Puestos</translation>
        </message>
        <message>
            <source>Add another computer, shut out a lost one</source>
            <translation>Añadir otro ordenador, excluir uno perdido</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Copia de seguridad y claves</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Quién hizo qué</translation>
        </message>
        <message>
            <source>What was written at the clinic's desks, to search and to save</source>
            <translation>Lo escrito en los puestos de la clínica, para buscar y guardar</translation>
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
            <translation>Nota</translation>
        </message>
        <message>
            <source>Close the finding</source>
            <translation>Cerrar el hallazgo</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Dejarlo abierto</translation>
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
            <translation>izq. %1</translation>
        </message>
        <message>
            <source>R %1</source>
            <comment>right, score</comment>
            <translation>der. %1</translation>
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
            <translation>escrito más tarde, %1</translation>
        </message>
        <message>
            <source>amended; was: %1</source>
            <translation>corregido; antes: %1</translation>
        </message>
        <message>
            <source>no scores</source>
            <translation>sin valores</translation>
        </message>
        <message>
            <source>Opened by %1, %2</source>
            <translation>Abierta por %1, %2</translation>
        </message>
        <message>
            <source>Not opened yet</source>
            <translation>Aún sin abrir</translation>
        </message>
        <message>
            <source>Read on the phone, %1</source>
            <translation>Leído en el teléfono, %1</translation>
        </message>
        <message>
            <source>Not read yet</source>
            <translation>Aún sin leer</translation>
        </message>
        <message>
            <source>Correction not opened yet; %1 opened an earlier version, %2</source>
            <translation>Corrección aún sin abrir; %1 abrió una versión anterior, %2</translation>
        </message>
        <message>
            <source>Before it was worse: %1</source>
            <comment>an act</comment>
            <translation>Antes de empeorar: %1</translation>
        </message>
        <message>
            <source>By the day that stood then: %1</source>
            <comment>an act</comment>
            <translation>Según el día que constaba entonces: %1</translation>
        </message>
        <message>
            <source>came before the time that it bears, %1: the clock of the phone or of this desk is wrong</source>
            <translation>llegó antes de la hora que lleva, %1: el reloj del teléfono o de este puesto está mal</translation>
        </message>
    </context>
    <context>
        <name>CourseLine</name>
        <message>
            <source>Link phone</source>
            <translation>Vincular teléfono</translation>
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
            <translation>Vincular teléfono</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Control</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Hoja</translation>
        </message>
        <message>
            <source>Close: %1</source>
            <translation>Cerrar: %1</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Exportar</translation>
        </message>
        <message>
            <source>As a file, or for paper</source>
            <translation>Como archivo o en papel</translation>
        </message>
        <message>
            <source>Link another phone</source>
            <translation>Vincular otro teléfono</translation>
        </message>
        <message>
            <source>Its page says what happens, and asks once</source>
            <translation>Su página dice qué ocurre y pregunta una vez</translation>
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
            <translation>Nombre o lote</translation>
        </message>
        <message>
            <source>No course</source>
            <translation>Ningún caso</translation>
        </message>
    </context>
    <context>
        <name>CurvePanel</name>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>Como frente al paciente: la derecha del paciente, a la izquierda.</translation>
        </message>
        <message>
            <source>Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.</source>
            <translation>Punteado: la mediana. Hueco: escrito más tarde o corregido. Corchete al final: lo esperado en el control.</translation>
        </message>
        <message>
            <source>Show as curves</source>
            <translation>Ver como curvas</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Ver como tabla</translation>
        </message>
    </context>
    <context>
        <name>CurveTable</name>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Derecha</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Usual</source>
            <translation>Habitual</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Nothing was recorded for this symptom.</source>
            <translation>No se anotó nada sobre este síntoma.</translation>
        </message>
    </context>
    <context>
        <name>Curves</name>
        <message>
            <source>highest %1 on day %2</source>
            <translation>máximo %1 el día %2</translation>
        </message>
        <message>
            <source>halved in %1 days</source>
            <translation>a la mitad en %1 días</translation>
        </message>
        <message>
            <source>settled on day %1</source>
            <translation>remitido el día %1</translation>
        </message>
        <message>
            <source>area: not enough to say</source>
            <translation>área: datos insuficientes</translation>
        </message>
        <message>
            <source>area %1 points × days, day %2 to %3</source>
            <translation>área %1 puntos × días, del día %2 al %3</translation>
        </message>
        <message>
            <source>level</source>
            <translation>iguales</translation>
        </message>
        <message>
            <source>left %1 higher</source>
            <translation>izquierda %1 más alta</translation>
        </message>
        <message>
            <source>right %1 higher</source>
            <translation>derecha %1 más alta</translation>
        </message>
        <message>
            <source>Left against right: not enough to say.</source>
            <translation>Izquierda frente a derecha: datos insuficientes.</translation>
        </message>
        <message>
            <source>%1 on average</source>
            <translation>%1 de media</translation>
        </message>
        <message>
            <source>most on day %1 (%2)</source>
            <translation>máximo el día %1 (%2)</translation>
        </message>
        <message>
            <source>too few points for a share of the sum</source>
            <translation>muy pocos puntos para una parte de la suma</translation>
        </message>
        <message>
            <source>Left against right, %1 days with both: %2.</source>
            <translation>Izquierda frente a derecha, %1 días con ambas: %2.</translation>
        </message>
        <message>
            <source>Left: %1.</source>
            <translation>Izquierda: %1.</translation>
        </message>
        <message>
            <source>Right: %1.</source>
            <translation>Derecha: %1.</translation>
        </message>
        <message>
            <source>the difference is %1% of the sum</source>
            <translation>la diferencia es el %1 % de la suma</translation>
        </message>
        <message>
            <source>right %1 on day %2</source>
            <comment>score, day</comment>
            <translation>derecha %1 el día %2</translation>
        </message>
        <message>
            <source>left %1 on day %2</source>
            <comment>score, day</comment>
            <translation>izquierda %1 el día %2</translation>
        </message>
        <message>
            <source>The axis ends with day 21. Last written after it: %1. The table has every score.</source>
            <translation>El eje termina en el día 21. Lo último anotado después: %1. La tabla tiene todas las puntuaciones.</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>Límite según la ficha técnica de EE. UU., %1: %2 mg/kg, en general no más de %3 mg</translation>
        </message>
        <message>
            <source>Your clinic's limit, %1: %2 mg/kg, not over %3 mg</source>
            <translation>Límite de su clínica, %1: %2 mg/kg, no más de %3 mg</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>con epinefrina</translation>
        </message>
        <message>
            <source>plain, the lower one, as some was given otherwise</source>
            <translation>sin epinefrina, el más bajo, porque también se dio de otro modo</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>sin epinefrina</translation>
        </message>
        <message>
            <source>No dose can be shown: check the solution, the volumes and the weight.</source>
            <translation>No se puede mostrar la dosis: revise la solución, los volúmenes y el peso.</translation>
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
            <translation>%1 mg dados de otro modo, %2 mg en total</translation>
        </message>
        <message>
            <source>Enter the weight to see the maximum.</source>
            <translation>Introduzca el peso para ver el máximo.</translation>
        </message>
        <message>
            <source>At most %1 mg</source>
            <translation>Como máximo %1 mg</translation>
        </message>
        <message>
            <source>%1 mL of this solution</source>
            <translation>%1 mL de esta solución</translation>
        </message>
        <message>
            <source>(the label's cap)</source>
            <translation>(tope de la ficha técnica)</translation>
        </message>
        <message>
            <source>(your clinic's cap)</source>
            <translation>(tope de su clínica)</translation>
        </message>
        <message>
            <source>%1 of the maximum</source>
            <translation>%1 del máximo</translation>
        </message>
        <message>
            <source>Over the maximum by %1 mg. Give no more.</source>
            <translation>Máximo superado en %1 mg. No administre más.</translation>
        </message>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>Más de %1 mL a lo largo del trayecto %2 (práctica común, sin fuente)</numerusform>
                <numerusform>Más de %1 mL a lo largo de los trayectos %2 (práctica común, sin fuente)</numerusform>
            </translation>
        </message>
        <message>
            <source>plain, the lower one, as not all of it had epinephrine</source>
            <translation>sin epinefrina, el más bajo, porque no todo llevaba epinefrina</translation>
        </message>
        <message>
            <source>at most %1 µg epinephrine</source>
            <translation>como máximo %1 µg de epinefrina</translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>Lidocaína hasta ahora</translation>
        </message>
        <message>
            <source>Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.</source>
            <translation>Anote toda la lidocaína inyectada hoy. Las cremas cuentan para el mismo límite, pero no se sabe cuánto se absorbe: aquí no se cuenta ninguna. El tamponado diluye la solución; los miligramos no cambian.</translation>
        </message>
    </context>
    <context>
        <name>EntryPanel</name>
        <message>
            <source>Entries</source>
            <translation>Anotaciones</translation>
        </message>
        <message>
            <source>The patient's entries show up here once the phone has sent them.</source>
            <translation>Las anotaciones del paciente aparecen aquí en cuanto el teléfono las envía.</translation>
        </message>
    </context>
    <context>
        <name>FacePanel</name>
        <message>
            <source>Front</source>
            <translation>De frente</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Izquierda del paciente</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Derecha del paciente</translation>
        </message>
        <message>
            <source>moves with speech</source>
            <translation>se mueve al hablar</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>escotadura</translation>
        </message>
        <message>
            <source>Face chart. Draw threads from the entry point to the end.</source>
            <translation>Mapa facial. Dibuje los hilos desde el punto de entrada hasta el final.</translation>
        </message>
        <message>
            <source>Mirror</source>
            <translation>Reflejar</translation>
        </message>
        <message>
            <source>the chosen thread, to the other side</source>
            <translation>el hilo elegido, al otro lado</translation>
        </message>
        <message>
            <source>Mirror all</source>
            <translation>Reflejar todo</translation>
        </message>
        <message>
            <source>Duplicate</source>
            <translation>Duplicar</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.</source>
            <translation>Rayado: la zona que se mueve al hablar y masticar, y la escotadura antegonial de la mandíbula. Práctica común, sin fuente.</translation>
        </message>
    </context>
    <context>
        <name>FindingCard</name>
        <message>
            <source>Closed</source>
            <translation>Cerrado</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Asumir</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Llamar</translation>
        </message>
        <message>
            <source>Visit forward</source>
            <translation>Visita adelantada</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
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
            <translation>Hallazgos</translation>
        </message>
        <message>
            <source>Take all</source>
            <translation>Asumir todos</translation>
        </message>
        <message>
            <source>Call about all</source>
            <translation>Llamar por todos</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>Ninguna regla ni signo de alarma pide una revisión.</translation>
        </message>
        <message>
            <source>Note a call</source>
            <translation>Anotar una llamada</translation>
        </message>
        <message>
            <source>She rang, or somebody spoke with her</source>
            <translation>Llamó ella, o alguien habló con ella</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Llamadas anotadas en el caso</translation>
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
            <translation>%1: por encima de lo habitual</translation>
        </message>
        <message>
            <source>%1: rising again</source>
            <translation>%1: nuevo aumento</translation>
        </message>
        <message>
            <source>%1: rising</source>
            <translation>%1: aumento</translation>
        </message>
        <message>
            <source>%1: one side much worse</source>
            <translation>%1: un lado mucho peor</translation>
        </message>
        <message>
            <source>%1: slow to settle</source>
            <translation>%1: remisión lenta</translation>
        </message>
        <message>
            <source>%1: does not smooth out</source>
            <translation>%1: no se alisan</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Sin noticias</translation>
        </message>
        <message>
            <source>%1 on day %2; usual up to %3.</source>
            <translation>%1 el día %2; habitual hasta %3.</translation>
        </message>
        <message>
            <source>On average %1 over its last three days with an answer, up to day %2; usual up to %3.</source>
            <translation>De media %1 en sus tres últimos días con respuesta, hasta el día %2; habitual hasta %3.</translation>
        </message>
        <message>
            <source>Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.</source>
            <translation>Día %1; entre ellos %2, de media %3 en sus tres últimos días con respuesta, habitual hasta %4.</translation>
        </message>
        <message>
            <source>%1 on day %2 after a low of %3.</source>
            <translation>%1 el día %2 tras un mínimo de %3.</translation>
        </message>
        <message>
            <source>Left %1, right %2 on day %3.</source>
            <translation>Izquierda %1, derecha %2 el día %3.</translation>
        </message>
        <message>
            <source>All symptoms together: %1 points apart.</source>
            <translation>Todos los síntomas juntos: %1 puntos de diferencia.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>Todavía %1 el día %2.</translation>
        </message>
        <message>
            <source>A week before: %1.</source>
            <translation>Una semana antes: %1.</translation>
        </message>
        <message>
            <source>Over its last three days: %1 points.</source>
            <translation>En sus tres últimos días: %1 puntos.</translation>
        </message>
        <message>
            <source>In its first days: %1.</source>
            <translation>En sus primeros días: %1.</translation>
        </message>
        <message>
            <source>Noted because it is so late.</source>
            <translation>Se anota por lo tarde que es.</translation>
        </message>
        <message>
            <source>Fever</source>
            <translation>Fiebre</translation>
        </message>
        <message>
            <source>Fever with inflammation of the face</source>
            <translation>Fiebre con inflamación de la cara</translation>
        </message>
        <message>
            <source>Weakness of the face, perhaps still the numbing</source>
            <translation>Debilidad facial, quizá aún por la anestesia</translation>
        </message>
        <message>
            <source>Signs of a spreading inflammation</source>
            <translation>Signos de inflamación que se extiende</translation>
        </message>
        <message>
            <source>Severe pain</source>
            <translation>Dolor intenso</translation>
        </message>
        <message>
            <source>One side swells and hurts</source>
            <translation>Un lado se hincha y duele</translation>
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
            <translation>hinchazón %1 frente a %2</translation>
        </message>
        <message>
            <source>pain %1</source>
            <translation>dolor %1</translation>
        </message>
        <message>
            <source>The patient answered on day %1: %2.</source>
            <translation>Respuesta del paciente el día %1: %2.</translation>
        </message>
        <message>
            <source>Warning rule “%1”: acts whatever the curve says.</source>
            <translation>Regla de alarma «%1»: se aplica diga lo que diga la curva.</translation>
        </message>
        <message>
            <source>Rule “%1”: statistic %2, threshold %3.</source>
            <translation>Regla «%1»: estadístico %2, umbral %3.</translation>
        </message>
        <message>
            <source>Rule “%1”.</source>
            <translation>Regla «%1».</translation>
        </message>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>Sin anotaciones desde hace %Ln día.</numerusform>
                <numerusform>Sin anotaciones desde hace %Ln días.</numerusform>
            </translation>
        </message>
        <message>
            <source>The visit was to be on day %1; by day %2 no follow-up was recorded.</source>
            <translation>La visita era el día %1; hasta el día %2 no se registró ningún control.</translation>
        </message>
        <message>
            <source>All symptoms together</source>
            <translation>Todos los síntomas juntos</translation>
        </message>
        <message>
            <source>Day %1; among them %2 with %3, usual up to %4.</source>
            <translation>Día %1; entre ellos %2 con %3, habitual hasta %4.</translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>Corregido o completado después: tal como están ahora las anotaciones, este aviso no saldría. Se queda hasta que alguien lo cierre.</translation>
        </message>
        <message>
            <source>Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.</source>
            <translation>Aviso por un día del tratamiento, o unas puntuaciones justo después, que se corrigieron después. Se queda hasta que alguien lo cierre.</translation>
        </message>
    </context>
    <context>
        <name>FollowUpPage</name>
        <message>
            <source>Follow-up of %1</source>
            <translation>Control de %1</translation>
        </message>
        <message>
            <source>Recording it closes the course.</source>
            <translation>Registrarlo cierra el caso.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Hoja</translation>
        </message>
        <message>
            <source>Against before the treatment</source>
            <translation>Comparado con antes del tratamiento</translation>
        </message>
        <message>
            <source>How satisfied is the patient?</source>
            <translation>¿Cuál es la satisfacción del paciente?</translation>
        </message>
        <message>
            <source>Management: what was done</source>
            <translation>Actuación: qué se hizo</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Plan siguiente</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicaciones</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Cuestiones pendientes</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>Registrar y cerrar el caso</translation>
        </message>
        <message>
            <source>An uncomplicated course?</source>
            <translation>¿Evolución sin complicaciones?</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Sí</translation>
        </message>
        <message>
            <source>No</source>
            <translation>No</translation>
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
            <translation>Arriba, Abajo</translation>
        </message>
        <message>
            <source>move in the queue</source>
            <translation>moverse por la cola</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Intro</translation>
        </message>
        <message>
            <source>open the course</source>
            <translation>abrir el caso</translation>
        </message>
        <message>
            <source>take it: others see who is on it</source>
            <translation>asumir: los demás ven quién se ocupa</translation>
        </message>
        <message>
            <source>close the most urgent finding, with an outcome</source>
            <translation>cerrar el hallazgo más urgente, con un resultado</translation>
        </message>
        <message>
            <source>search</source>
            <translation>buscar</translation>
        </message>
        <message>
            <source>queue, courses</source>
            <translation>cola, casos</translation>
        </message>
        <message>
            <source>new treatment</source>
            <translation>nuevo tratamiento</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>bloquear</translation>
        </message>
        <message>
            <source>this help</source>
            <translation>esta ayuda</translation>
        </message>
        <message>
            <source>On the face chart</source>
            <translation>En el mapa facial</translation>
        </message>
        <message>
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread</source>
            <translation>las flechas mueven el cursor (con Mayús a pasos pequeños), la barra espaciadora fija la entrada y el final, Escape empieza de nuevo; Re Pág y Av Pág eligen un hilo, Inicio toma su punto de entrada y Fin su final, la barra espaciadora lo deja, Supr quita el hilo</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>Volver al trabajo</translation>
        </message>
        <message>
            <source>call: number, what to ask, what was said</source>
            <translation>llamar: número, qué preguntar, qué se dijo</translation>
        </message>
        <message>
            <source>next with entries that nobody opened</source>
            <translation>siguiente con anotaciones que nadie ha abierto</translation>
        </message>
        <message>
            <source>hand over</source>
            <translation>traspasar</translation>
        </message>
        <message>
            <source>On photographs</source>
            <translation>En las fotos</translation>
        </message>
        <message>
            <source>+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends</source>
            <translation>+ y - amplían y reducen ambas, 0 muestra la imagen entera, las flechas desplazan la parte visible; al marcar los ojos, las flechas mueven el cursor (con Mayús, a pasos pequeños), Espacio marca, Retroceso deshace, Escape termina</translation>
        </message>
        <message>
            <source>Single keys (E, T, C, X, F, N, H, A, /) are on</source>
            <translation>Teclas sueltas (E, T, C, X, F, N, H, A, /) activadas</translation>
        </message>
        <message>
            <source>take search and filters off</source>
            <translation>quitar la búsqueda y los filtros</translation>
        </message>
        <message>
            <source>open the course at the entry behind the reason</source>
            <translation>abrir el curso en la anotación que dio el motivo</translation>
        </message>
        <message>
            <source>bring the visit forward: its new day and time</source>
            <translation>adelantar la visita: nuevo día y nueva hora</translation>
        </message>
        <message>
            <source>print the sheet, the course or the hand-over</source>
            <translation>imprimir la hoja, el curso o el relevo</translation>
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
            <translation>Entendido</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Reintentar</translation>
        </message>
        <message>
            <source>Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.</source>
            <translation>Pacientes inventados: aquí nada es real, no se envía nada y todo desaparece al bloquear el puesto.</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>Salir de la demostración</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Copia de seguridad y claves</translation>
        </message>
    </context>
    <context>
        <name>MessagePanel</name>
        <message>
            <source>Messages</source>
            <translation>Mensajes</translation>
        </message>
        <message>
            <source>No message yet.</source>
            <translation>Aún no hay mensajes.</translation>
        </message>
        <message>
            <source>Write to the patient</source>
            <translation>Escribir al paciente</translation>
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
            <translation>Marcar como abiertas por mí</translation>
        </message>
    </context>
    <context>
        <name>PairingChoice</name>
        <message>
            <source>Protocol: care plan, rules and usual range, signed by the clinic</source>
            <translation>Protocolo: plan de cuidados, reglas y margen habitual, firmados por la clínica</translation>
        </message>
        <message>
            <source>Follow-up, year-month-day</source>
            <translation>Control, año-mes-día</translation>
        </message>
        <message>
            <source>Its time, hours:minutes, if it is agreed</source>
            <translation>Su hora, horas:minutos, si está acordada</translation>
        </message>
    </context>
    <context>
        <name>PairingPage</name>
        <message>
            <source>Code for the patient's phone. It can also be typed: %1</source>
            <translation>Código para el teléfono del paciente. También se puede teclear: %1</translation>
        </message>
        <message>
            <source>To type instead</source>
            <translation>Para teclearlo</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Seis cifras: %1</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>Crear un código</translation>
        </message>
        <message>
            <source>Both show the same number</source>
            <translation>Ambos muestran el mismo número</translation>
        </message>
        <message>
            <source>They differ: stop</source>
            <translation>Son distintos: detener</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Crear un código nuevo</translation>
        </message>
        <message>
            <source>To the queue</source>
            <translation>A la cola</translation>
        </message>
        <message>
            <source>It shall hold the clinic's root key: link phones, add and shut out desks</source>
            <translation>Tendrá la clave raíz de la clínica: vincular teléfonos, añadir y excluir puestos</translation>
        </message>
        <message>
            <source>The code</source>
            <translation>El código</translation>
        </message>
        <message>
            <source>and the hub's address</source>
            <translation>y la dirección del servidor</translation>
        </message>
        <message>
            <source>To the desks</source>
            <translation>A los puestos</translation>
        </message>
        <message>
            <source>The old phone is lost: the hub refuses it at once, and what it did not send stays unknown</source>
            <translation>El teléfono anterior se ha perdido: el servidor lo rechaza enseguida, y lo que no envió queda sin saberse</translation>
        </message>
        <message>
            <source>Only end the lost phone</source>
            <translation>Solo excluir el teléfono perdido</translation>
        </message>
    </context>
    <context>
        <name>PersonPage</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>¿Quién está en el puesto?</translation>
        </message>
        <message>
            <source>What you take, call and close carries your name, and the patient's phone shows who opened an entry.</source>
            <translation>Lo que usted asuma, llame y cierre lleva su nombre; el teléfono del paciente muestra quién abrió una anotación.</translation>
        </message>
        <message>
            <source>Somebody is missing: edit the clinic</source>
            <translation>Falta alguien: editar la clínica</translation>
        </message>
    </context>
    <context>
        <name>PackField</name>
        <message>
            <source>Code on the pack: scan it, or type it with its brackets</source>
            <translation>Código del envase: escanéelo o tecléelo con sus paréntesis</translation>
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
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Derecha</translation>
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
            <translation>Aguja o cánula</translation>
        </message>
        <message>
            <source>Anaesthetic along it</source>
            <translation>Anestésico en el trayecto</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Expiry, year-month-day</source>
            <translation>Caducidad, año-mes-día</translation>
        </message>
        <message>
            <source>Thread %L1</source>
            <translation>Hilo %L1</translation>
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
            <translation>Rehecho</translation>
        </message>
        <message>
            <source>Why it was redone</source>
            <translation>Por qué se rehízo</translation>
        </message>
        <message>
            <source>Brought in with</source>
            <translation>Introducido con</translation>
        </message>
        <message>
            <source>Length of needle or cannula</source>
            <translation>Longitud de la aguja o cánula</translation>
        </message>
        <message>
            <source>Length of thread</source>
            <translation>Longitud del hilo</translation>
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
            <translation>precaución</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln hilo</numerusform>
                <numerusform>%Ln hilos</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message>
            <source>Take the dressings off</source>
            <translation>Quitar los apósitos</translation>
        </message>
        <message>
            <source>Keep the entry points clean and dry</source>
            <translation>Mantener limpios y secos los puntos de entrada</translation>
        </message>
        <message>
            <source>Sleep on the back, head raised</source>
            <translation>Dormir boca arriba, con la cabeza elevada</translation>
        </message>
        <message>
            <source>Spare the face: small bites, no wide yawns, little talking</source>
            <translation>Cuidar la cara: bocados pequeños, sin bostezos amplios, hablar poco</translation>
        </message>
        <message>
            <source>Cold pack with a cloth between</source>
            <translation>Compresa fría con un paño en medio</translation>
        </message>
        <message>
            <source>No make-up</source>
            <translation>Sin maquillaje</translation>
        </message>
        <message>
            <source>No massage of the face</source>
            <translation>Sin masaje en la cara</translation>
        </message>
        <message>
            <source>No dental work</source>
            <translation>Sin tratamientos dentales</translation>
        </message>
        <message>
            <source>No hard exercise</source>
            <translation>Sin ejercicio intenso</translation>
        </message>
        <message>
            <source>No sauna, hammam, hot bath or pool</source>
            <translation>Sin sauna, hammam, baño caliente ni piscina</translation>
        </message>
        <message>
            <source>No strong sun</source>
            <translation>Sin sol intenso</translation>
        </message>
        <message>
            <source>No alcohol</source>
            <translation>Sin alcohol</translation>
        </message>
        <message>
            <source>No smoking</source>
            <translation>Sin fumar</translation>
        </message>
        <message>
            <source>No shaving</source>
            <translation>Sin afeitarse</translation>
        </message>
        <message>
            <source>Write down how it is</source>
            <translation>Anotar cómo está</translation>
        </message>
        <message>
            <source>Come to the follow-up</source>
            <translation>Acudir al control</translation>
        </message>
        <message>
            <source>The clinic's own instruction</source>
            <translation>Instrucción propia de la clínica</translation>
        </message>
        <message>
            <source>on day %1</source>
            <translation>el día %1</translation>
        </message>
        <message>
            <source>day %1 to day %2</source>
            <translation>del día %1 al día %2</translation>
        </message>
        <message>
            <source>a rule to keep, no reminder</source>
            <translation>una norma que cumplir, sin recordatorio</translation>
        </message>
        <message>
            <source>reminds at %1</source>
            <translation>recordatorio a las %1</translation>
        </message>
        <message>
            <source>Level: above the usual range</source>
            <translation>Nivel: por encima de lo habitual</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>umbral %1</translation>
        </message>
        <message>
            <source>Rebound: rising again</source>
            <translation>Rebote: nuevo aumento</translation>
        </message>
        <message>
            <source>Side divergence: one side much worse</source>
            <translation>Diferencia entre lados: un lado mucho peor</translation>
        </message>
        <message>
            <source>Slow recovery: slow to settle</source>
            <translation>Recuperación lenta: tarda en remitir</translation>
        </message>
        <message>
            <source>Persistent puckering: does not smooth out</source>
            <translation>Hoyuelos persistentes: no se alisan</translation>
        </message>
        <message>
            <source>from day %1 on</source>
            <translation>desde el día %1</translation>
        </message>
        <message>
            <source>Silence: nothing heard</source>
            <translation>Silencio: sin noticias</translation>
        </message>
        <message>
            <source>shown apart, never as fine</source>
            <translation>se muestra aparte, nunca como que va bien</translation>
        </message>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>recordatorio cada %Ln día a las %1</numerusform>
                <numerusform>recordatorio cada %Ln días a las %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>al menos %Ln punto</numerusform>
                <numerusform>al menos %Ln puntos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>al menos %Ln punto sobre el mínimo, desde el día %1</numerusform>
                <numerusform>al menos %Ln puntos sobre el mínimo, desde el día %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>al menos %Ln punto entre los lados</numerusform>
                <numerusform>al menos %Ln puntos entre los lados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>desde el día %1, al menos %Ln punto</numerusform>
                <numerusform>desde el día %1, al menos %Ln puntos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>tras %Ln día</numerusform>
                <numerusform>tras %Ln días</numerusform>
            </translation>
        </message>
        <message>
            <source>Level, all symptoms together</source>
            <translation>Nivel, todos los síntomas juntos</translation>
        </message>
        <message>
            <source>Side divergence: one side fills in the first days</source>
            <translation>Diferencia entre lados: un lado se llena en los primeros días</translation>
        </message>
        <message>
            <source>Side divergence: one side worsens</source>
            <translation>Diferencia entre lados: un lado empeora</translation>
        </message>
        <message>
            <source>Slow recovery, all symptoms together</source>
            <translation>Recuperación lenta, todos los síntomas juntos</translation>
        </message>
        <message>
            <source>Slow recovery: pain that stays high</source>
            <translation>Recuperación lenta: dolor que sigue alto</translation>
        </message>
        <message>
            <source>Slow recovery: swelling, bruising or tightness that stays high</source>
            <translation>Recuperación lenta: hinchazón, moratón o tirantez que sigue alta</translation>
        </message>
        <message>
            <source>%1 of 10 or more over the last three days; no threshold</source>
            <translation>%1 de 10 o más en los últimos tres días; sin umbral</translation>
        </message>
        <message>
            <source>Persistent puckering: unchanged for a week</source>
            <translation>Hoyuelos persistentes: sin cambios en una semana</translation>
        </message>
        <message>
            <source>Persistent puckering: keeps most of its first days</source>
            <translation>Hoyuelos persistentes: conservan gran parte de los primeros días</translation>
        </message>
        <message>
            <source>Persistent puckering: still deep</source>
            <translation>Hoyuelos persistentes: aún profundos</translation>
        </message>
        <message>
            <source>Silence after a high entry</source>
            <translation>Silencio tras una anotación alta</translation>
        </message>
        <message>
            <source>when the last entry was above the usual range</source>
            <translation>cuando la última anotación superaba lo habitual</translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>hasta el día %1, al menos %Ln punto entre los lados sumando dolor, hinchazón, moratón y tirantez</numerusform>
                <numerusform>hasta el día %1, al menos %Ln puntos entre los lados sumando dolor, hinchazón, moratón y tirantez</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>desde el día %1, al menos %Ln punto entre los lados sumando dolor, hinchazón y tirantez</numerusform>
                <numerusform>desde el día %1, al menos %Ln puntos entre los lados sumando dolor, hinchazón y tirantez</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>al menos %Ln punto en los últimos tres días</numerusform>
                <numerusform>al menos %Ln puntos en los últimos tres días</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>desde el día %1, al menos %Ln punto, tras un máximo de %2 o más</numerusform>
                <numerusform>desde el día %1, al menos %Ln puntos, tras un máximo de %2 o más</numerusform>
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
            <translation>El plan de cuidados, las reglas y el margen habitual van juntos al teléfono, firmados por la clínica, para que funcionen sin red.</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Qué se pide al paciente</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Qué genera un hallazgo</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Qué se considera habitual</translation>
        </message>
        <message>
            <source>Whom the patient calls</source>
            <translation>A quién llama el paciente</translation>
        </message>
        <message>
            <source>Change the numbers</source>
            <translation>Cambiar los números</translation>
        </message>
        <message>
            <source>Change it</source>
            <translation>Cambiar</translation>
        </message>
        <message>
            <source>Take from a file</source>
            <translation>Tomar de un archivo</translation>
        </message>
        <message>
            <source>Shows what it is; nothing goes live by it.</source>
            <translation>Muestra qué es; con ello no entra nada en uso.</translation>
        </message>
        <message>
            <source>Save as a file</source>
            <translation>Guardar como archivo</translation>
        </message>
        <message>
            <source>For the tool, or for a colleague&apos;s clinic.</source>
            <translation>Para la herramienta o para la clínica de un colega.</translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message>
            <source>Still open: %1, day %2.</source>
            <translation>Aún pendiente: %1, día %2.</translation>
        </message>
        <message>
            <source>No phone was linked: ask how the days went.</source>
            <translation>No se vinculó ningún teléfono: pregunte cómo fueron los días.</translation>
        </message>
        <message>
            <source>The patient recorded nothing: ask how the days went.</source>
            <translation>El paciente no anotó nada: pregunte cómo fueron los días.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>%Ln anotación aún sin abrir.</numerusform>
                <numerusform>%Ln anotaciones aún sin abrir.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>%Ln mensaje del paciente aún sin leer.</numerusform>
                <numerusform>%Ln mensajes del paciente aún sin leer.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>%Ln hilo sin número de lote.</numerusform>
                <numerusform>%Ln hilos sin número de lote.</numerusform>
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
            <translation>Asumido</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Asumir</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>Relevar</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Llamar</translation>
        </message>
    </context>
    <context>
        <name>QueuePage</name>
        <message>
            <source>Queue</source>
            <translation>Cola</translation>
        </message>
        <message>
            <source>Name or lot  ( / )</source>
            <translation>Nombre o lote  ( / )</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Nombre o lote</translation>
        </message>
        <message>
            <source>Hand over</source>
            <translation>Traspasar</translation>
        </message>
        <message>
            <source>A note for whoever takes over</source>
            <translation>Nota para el relevo</translation>
        </message>
        <message>
            <source>Filter</source>
            <translation>Filtrar</translation>
        </message>
        <message>
            <source>By who placed the threads, who took the row, and day</source>
            <translation>Por quién colocó los hilos, quién se encarga y día</translation>
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
            <translation>Cola</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Nuevo tratamiento</translation>
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
            <translation>Consultando el servidor</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Consultar el servidor</translation>
        </message>
        <message>
            <source>Nobody named</source>
            <translation>Nadie indicado</translation>
        </message>
        <message>
            <source>Who is at the desk: change</source>
            <translation>Quién está en el puesto: cambiar</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <translation>Teclas y ayuda</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Bloquear</translation>
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
            <translation>se muestra ahora</translation>
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
            <translation>Para este ordenador. Aquí no se guarda nada de ningún paciente.</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aspecto</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Claro</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Oscuro</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>Alto contraste</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Tamaño del texto</translation>
        </message>
        <message>
            <source>Lock when nobody touches the desk for</source>
            <translation>Bloquear si nadie usa el puesto durante</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Menos movimiento</translation>
        </message>
        <message>
            <source>Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off</source>
            <translation>Teclas sueltas en la cola: E abre la anotación que dio el motivo, T asume, C llama, X cierra, F adelanta la visita, N siguiente sin abrir, H traspasa, / busca, A quita la búsqueda y los filtros</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Acerca de Ebbline</translation>
        </message>
        <message>
            <source>Version, makers and licences</source>
            <translation>Versión, autores y licencias</translation>
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
            <translation>ninguna, evolución sin complicaciones</translation>
        </message>
        <message>
            <source>none named, not an uncomplicated course</source>
            <translation>ninguna indicada, no marcada como sin complicaciones</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>person, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Change against before</source>
            <translation>Cambio respecto a antes</translation>
        </message>
        <message>
            <source>Patient's satisfaction</source>
            <translation>Satisfacción</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicaciones</translation>
        </message>
        <message>
            <source>Management</source>
            <translation>Actuación</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Plan siguiente</translation>
        </message>
        <message>
            <source>Recorded by</source>
            <translation>Registrado por</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Hoja de control</translation>
        </message>
        <message>
            <source>Made %1, %2</source>
            <translation>Generada: %1, %2</translation>
        </message>
        <message>
            <source>Made %1, %2, by %3</source>
            <translation>Generada: %1, %2, por %3</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamiento</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Día de recuperación</translation>
        </message>
        <message>
            <source>Protocol</source>
            <translation>Protocolo</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>No reminder was due.</source>
            <translation>No correspondía ningún recordatorio.</translation>
        </message>
        <message>
            <source>Treatment map</source>
            <translation>Mapa del tratamiento</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>N.º</translation>
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
            <translation>Hilo</translation>
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
            <translation>Recuperación</translation>
        </message>
        <message>
            <source>Findings and what was done</source>
            <translation>Hallazgos y actuaciones</translation>
        </message>
        <message>
            <source>No finding.</source>
            <translation>Ningún hallazgo.</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>nada aún</translation>
        </message>
        <message>
            <source>Urgency</source>
            <translation>Urgencia</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>Hallazgo</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Detectado</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Actuación</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Cuestiones pendientes</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Ninguna.</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>En el control</translation>
        </message>
        <message>
            <source>At the follow-up, to be filled in</source>
            <translation>En el control, por rellenar</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Izquierda del paciente</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Derecha del paciente</translation>
        </message>
        <message>
            <source>Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source).</source>
            <translation>Izquierda: líneas continuas, puntos de entrada redondos. Derecha: líneas discontinuas, puntos de entrada cuadrados. La barra marca el final. Rayado: la zona que se mueve al hablar y la escotadura antegonial de la mandíbula (práctica común, sin fuente).</translation>
        </message>
        <message>
            <source>Nothing was recorded.</source>
            <translation>No se anotó nada.</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. Hollow marks: entered late or amended. Missing days are gaps.</source>
            <translation>Como frente al paciente: la derecha del paciente, a la izquierda. Valor de 0 a 10 por día de recuperación. Marcas huecas: escrito más tarde o corregido. Los días sin datos son huecos en la línea.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Página %1 de %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>%1 de %Ln recordatorio respondido con «hecho».</numerusform>
                <numerusform>%1 de %Ln recordatorios respondidos con «hecho».</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln anotación</numerusform>
                <numerusform>%Ln anotaciones</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>en %Ln día</numerusform>
                <numerusform>en %Ln días</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: could not be opened</source>
            <translation>%1: no se pudo abrir</translation>
        </message>
        <message>
            <source>The only photograph of this view.</source>
            <translation>La única foto de esta vista.</translation>
        </message>
        <message>
            <source>Aligned by the eyes, not stretched and not mirrored.</source>
            <translation>Alineadas por los ojos, sin deformar ni reflejar.</translation>
        </message>
        <message>
            <source>As they were taken, perhaps not on one scale.</source>
            <translation>Tal como se tomaron, quizá no a la misma escala.</translation>
        </message>
        <message>
            <source>Photographs, %1: %2, and %3. %4</source>
            <comment>view, first, last, how</comment>
            <translation>Fotos, %1: %2, y %3. %4</translation>
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
            <translation>La primera y la última de cada vista, la primera a la izquierda. La luz, la distancia y la expresión pueden variar: compare con cautela.</translation>
        </message>
        <message>
            <source>Lot, expiry</source>
            <translation>Lote, caducidad</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>justo después del tratamiento</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>El plan</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Correcciones del registro</translation>
        </message>
    </context>
    <context>
        <name>SheetPage</name>
        <message>
            <source>Follow-up sheet</source>
            <translation>Hoja de control</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Guardar como PDF</translation>
        </message>
        <message>
            <source>Page %L1 of the sheet</source>
            <translation>Página %L1 de la hoja</translation>
        </message>
        <message>
            <source>With photographs: the first and the last of each view</source>
            <translation>Con fotos: la primera y la última de cada vista</translation>
        </message>
        <message>
            <source>The photographs are being opened.</source>
            <translation>Se están abriendo las fotos.</translation>
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
            <translation>%1: más</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>no indicado</translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message>
            <source>Today %1</source>
            <translation>hoy %1</translation>
        </message>
        <message>
            <source>Yesterday %1</source>
            <translation>ayer %1</translation>
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
            <translation>Día %1</translation>
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
                <numerusform>%Ln día</numerusform>
                <numerusform>%Ln días</numerusform>
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
            <translation>Pasa cerca de la escotadura antegonial: arteria facial y nervio marginal.</translation>
        </message>
        <message>
            <source>Ends past the zone that moves with speech and chewing.</source>
            <translation>Termina más allá de la zona que se mueve al hablar y masticar.</translation>
        </message>
        <message>
            <source>The end is drawn inside the moving zone.</source>
            <translation>El final está dibujado dentro de la zona móvil.</translation>
        </message>
        <message>
            <source>no lot</source>
            <translation>sin lote</translation>
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
            <translation>Hilo %1: %2, %3. %4. %5, %6, %7. %8</translation>
        </message>
        <message>
            <source>Cautions explained</source>
            <translation>Precauciones explicadas</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Consentimiento</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>Apósitos</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>Valores justo después</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
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
            <translation>%1 mL fuera de los trayectos</translation>
        </message>
        <message>
            <source>%1, expiry %2</source>
            <comment>lot, date as on the pack</comment>
            <translation>%1, caducidad %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>label, value</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>May teach the usual range</source>
            <translation>Puede usarse para el margen habitual</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Peso</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise</source>
            <translation>Lidocaína dada de otro modo</translation>
        </message>
        <message>
            <source>epinephrine %1</source>
            <translation>epinefrina %1</translation>
        </message>
        <message>
            <source>not buffered</source>
            <translation>sin tamponar</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>sin pesar</translation>
        </message>
        <message>
            <source>%1, %2%</source>
            <comment>drug, percent</comment>
            <translation>%1, %2 %</translation>
        </message>
        <message>
            <source>buffered with 8.4% bicarbonate, 1 part to %1</source>
            <translation>tamponada con bicarbonato al 8,4 %, 1 parte por %1</translation>
        </message>
        <message>
            <source>One more along the same track</source>
            <translation>Uno más en el mismo trayecto</translation>
        </message>
        <message>
            <source>Taken out and placed anew</source>
            <translation>Retirado y colocado de nuevo</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Hilos colocados por</translation>
        </message>
        <message>
            <source>not written down</source>
            <translation>no anotado</translation>
        </message>
        <message>
            <source>What you chose stays. The drawing says otherwise: %1.</source>
            <translation>Lo que eligió se mantiene. El dibujo indica otra cosa: %1.</translation>
        </message>
        <message>
            <source>Sharp needle</source>
            <translation>Aguja afilada</translation>
        </message>
        <message>
            <source>Blunt cannula</source>
            <translation>Cánula roma</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <comment>needle or cannula, its length</comment>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>Needle or cannula of %1 mm</source>
            <translation>Aguja o cánula de %1 mm</translation>
        </message>
        <message>
            <source>no epinephrine</source>
            <translation>sin epinefrina</translation>
        </message>
        <message>
            <source>epinephrine at the entry point</source>
            <translation>epinefrina en el punto de entrada</translation>
        </message>
        <message>
            <source>epinephrine along the track</source>
            <translation>epinefrina en el trayecto</translation>
        </message>
        <message>
            <source>epinephrine at entry point and along the track</source>
            <translation>epinefrina en el punto de entrada y en el trayecto</translation>
        </message>
        <message>
            <source>Planned: %1. Placed: %2.</source>
            <comment>threads, threads</comment>
            <translation>Previstos: %1. Colocados: %2.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <comment>numbers of threads in the plan</comment>
            <translation>Omitidos: %1.</translation>
        </message>
        <message>
            <source>Not in the plan: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Fuera del plan: %1.</translation>
        </message>
        <message>
            <source>Moved: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Desplazados: %1.</translation>
        </message>
        <message>
            <source>Otherwise than planned: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Distintos de lo previsto: %1.</translation>
        </message>
        <message>
            <source>As planned.</source>
            <translation>Según lo previsto.</translation>
        </message>
        <message>
            <source>%1 (in the plan %2)</source>
            <comment>number of a thread, its number in the plan</comment>
            <translation>%1 (en el plan %2)</translation>
        </message>
        <message>
            <source>Left out.</source>
            <translation>Omitido.</translation>
        </message>
        <message>
            <source>Placed as thread %1.</source>
            <translation>Colocado como hilo %1.</translation>
        </message>
        <message>
            <source>Moved.</source>
            <translation>Desplazado.</translation>
        </message>
        <message>
            <source>Otherwise than planned.</source>
            <translation>Distinto de lo previsto.</translation>
        </message>
        <message>
            <source>Planned thread %1: %2, %3. %4. %5. %6</source>
            <comment>number, side, zone, ending, thread, what became of it</comment>
            <translation>Hilo previsto %1: %2, %3. %4. %5. %6</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>El plan</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product as on the pack</comment>
            <translation>%1, producto %2</translation>
        </message>
        <message>
            <source>%1: %2; until then %3</source>
            <comment>label, what stands there now, what stood there</comment>
            <translation>%1: %2; hasta entonces %3</translation>
        </message>
        <message>
            <source>Written in: %1</source>
            <comment>a thread</comment>
            <translation>Añadido: %1</translation>
        </message>
        <message>
            <source>Taken out of the record: %1</source>
            <comment>a thread</comment>
            <translation>Quitado del registro: %1</translation>
        </message>
        <message>
            <source>Thread %1</source>
            <comment>its number</comment>
            <translation>Hilo %1</translation>
        </message>
        <message>
            <source>Thread %1, until then %2</source>
            <comment>its number, its former number</comment>
            <translation>Hilo %1, hasta entonces %2</translation>
        </message>
        <message>
            <source>drawn elsewhere</source>
            <translation>dibujado en otro lugar</translation>
        </message>
        <message>
            <source>When the treatment was</source>
            <translation>Cuándo fue el tratamiento</translation>
        </message>
        <message>
            <source>The threads are numbered otherwise.</source>
            <translation>Los hilos están numerados de otro modo.</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anestésico</translation>
        </message>
        <message>
            <source>Threads of the plan</source>
            <translation>Hilos del plan</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Recorded again %1, without a reason</source>
            <comment>when</comment>
            <translation>Registrado de nuevo %1, sin motivo</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>alguien</translation>
        </message>
        <message>
            <source>Corrected %1 by %2. Why: %3</source>
            <comment>when, who, reason</comment>
            <translation>Corregido %1 por %2. Por qué: %3</translation>
        </message>
        <message>
            <source>What stood there until then has not arrived at this desk.</source>
            <translation>Lo que constaba hasta entonces no ha llegado a este puesto.</translation>
        </message>
        <message>
            <source>Nothing differs from what stood there.</source>
            <translation>Nada difiere de lo que constaba.</translation>
        </message>
        <message>
            <source>This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.</source>
            <translation>Este curso y su teléfono cuentan desde otro día del tratamiento, o con otras puntuaciones justo después, que lo que dice el registro. Corrija el registro o regístrelo de nuevo tal como está: entonces contarán según él.</translation>
        </message>
        <message>
            <source>Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.</source>
            <translation>Dos puestos registraron esto sin saber uno del otro. El registro posterior vale por entero; mire abajo lo que decía el otro y corrija lo que falte.</translation>
        </message>
        <message>
            <source>No phone has this course: nothing changes on one.</source>
            <translation>Ningún teléfono tiene este caso: en ninguno cambia nada.</translation>
        </message>
        <message>
            <source>Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.</source>
            <translation>Su teléfono solo guarda del tratamiento cuándo fue y las puntuaciones justo después. Ambas cosas quedan como están; nada de esto va allí.</translation>
        </message>
        <message>
            <source>With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.</source>
            <translation>Con la próxima sincronización su teléfono recibe cuándo fue el tratamiento y las puntuaciones justo después, y cuenta por ellos días, recordatorios y avisos. Hasta entonces se rige por los antiguos. Los hallazgos se juzgan de nuevo en ambos; lo que se señaló permanece, pero un teléfono con un programa anterior deja de mostrar lo que el nuevo día no provoca.</translation>
        </message>
        <message>
            <source>The visit that was agreed does not lie 1 to 60 days after that: agree on another one.</source>
            <translation>La visita acordada no cae entre 1 y 60 días después: acuerde otra.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentAnaesthetic</name>
        <message>
            <source>Solution</source>
            <translation>Solución</translation>
        </message>
        <message>
            <source>Strength</source>
            <translation>Concentración</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Epinefrina</translation>
        </message>
        <message>
            <source>Of this solution outside the tracks: entry points, blocks</source>
            <translation>De esta solución fuera de los trayectos: puntos de entrada, bloqueos</translation>
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
            <translation>Lidocaína dada de otro modo, mg</translation>
        </message>
        <message>
            <source>Nerve blocks, other strengths</source>
            <translation>Bloqueos nerviosos, otras concentraciones</translation>
        </message>
        <message>
            <source>Buffered with 8.4% bicarbonate</source>
            <translation>Tamponada con bicarbonato al 8,4 %</translation>
        </message>
        <message>
            <source>Where it held epinephrine, all threads at once</source>
            <translation>Dónde llevaba epinefrina, todos los hilos a la vez</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCare</name>
        <message>
            <source>Care and consent</source>
            <translation>Cuidados y consentimiento</translation>
        </message>
        <message>
            <source>Small dressings on the entry points</source>
            <translation>Apósitos pequeños en los puntos de entrada</translation>
        </message>
        <message>
            <source>Cautions explained: what is usual, when to call, what to spare</source>
            <translation>Precauciones explicadas: qué es habitual, cuándo llamar, qué evitar</translation>
        </message>
        <message>
            <source>Consent to the treatment given</source>
            <translation>Consentimiento para el tratamiento otorgado</translation>
        </message>
        <message>
            <source>This course may teach the clinic's usual range, without a name</source>
            <translation>Este caso puede usarse, sin nombre, para calcular el margen habitual de la clínica</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Before it can be recorded</source>
            <translation>Antes de poder registrarlo</translation>
        </message>
        <message>
            <source>Right after the treatment, 0 to 10</source>
            <translation>Justo después del tratamiento, 0 a 10</translation>
        </message>
        <message>
            <source>What you see now, on each side of the patient. Leave a dash where you did not look.</source>
            <translation>Lo que ve ahora en cada lado del paciente. Deje un guion donde no haya mirado.</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Derecha</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Hilos colocados por</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPage</name>
        <message>
            <source>Treatment of %1</source>
            <translation>Tratamiento de %1</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Nuevo tratamiento</translation>
        </message>
        <message>
            <source>Taken up from the kept draft, %1</source>
            <translation>Retomado del borrador guardado, %1</translation>
        </message>
        <message>
            <source>Start over</source>
            <translation>Empezar de nuevo</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Volver</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>Siguiente: %1</translation>
        </message>
        <message>
            <source>Record the treatment</source>
            <translation>Registrar el tratamiento</translation>
        </message>
        <message>
            <source>%1 What you write is kept as a draft.</source>
            <translation>%1 Lo que escriba se guarda como borrador.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Rehacer</translation>
        </message>
        <message>
            <source>Empties everything but the patient; can be undone.</source>
            <translation>Vacía todo menos la persona; se puede deshacer.</translation>
        </message>
        <message>
            <source>Correct the treatment of %1</source>
            <translation>Corregir el tratamiento de %1</translation>
        </message>
        <message>
            <source>Drop the correction</source>
            <translation>Descartar la corrección</translation>
        </message>
        <message>
            <source>The record stays as it is.</source>
            <translation>El registro queda como está.</translation>
        </message>
        <message>
            <source>Record the correction</source>
            <translation>Registrar la corrección</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPatient</name>
        <message>
            <source>Known patients</source>
            <translation>Pacientes conocidos</translation>
        </message>
        <message>
            <source>Name or phone</source>
            <translation>Nombre o teléfono</translation>
        </message>
        <message>
            <source>Nobody found. Register the patient beside this.</source>
            <translation>No se encontró a nadie. Registre al paciente aquí al lado.</translation>
        </message>
        <message>
            <source>New patient</source>
            <translation>Nuevo paciente</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Teléfono para llamar al paciente</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Idioma del diario</translation>
        </message>
        <message>
            <source>Register</source>
            <translation>Registrar</translation>
        </message>
        <message>
            <source>Begun and not recorded</source>
            <translation>Empezado y sin registrar</translation>
        </message>
    </context>
    <context>
        <name>TreatmentThreads</name>
        <message>
            <source>Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.</source>
            <translation>Dibuje un hilo en el mapa: pulse en el punto de entrada y suelte en el final. Con teclas: flechas y Espacio.</translation>
        </message>
    </context>
    <context>
        <name>UndoBar</name>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
    </context>
    <context>
        <name>UnlockPage</name>
        <message>
            <source>Passphrase</source>
            <translation>Frase de acceso</translation>
        </message>
        <message>
            <source>Passphrase once more</source>
            <translation>Frase de acceso otra vez</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Desbloquear</translation>
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
            <translation>Explorar con pacientes inventados</translation>
        </message>
        <message>
            <source>A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.</source>
            <translation>Una clínica aparte que desaparece al bloquearla. El almacén cifrado de la clínica sigue cerrado.</translation>
        </message>
        <message>
            <source>Recovery code from the paper</source>
            <translation>Código de recuperación del papel</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Una nueva frase de acceso</translation>
        </message>
        <message>
            <source>Set this passphrase and unlock</source>
            <translation>Fijar esta frase de acceso y desbloquear</translation>
        </message>
        <message>
            <source>I know the passphrase</source>
            <translation>Sé la frase de acceso</translation>
        </message>
        <message>
            <source>I lost the passphrase</source>
            <translation>Perdí la frase de acceso</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
        <message>
            <source>Nothing has been written yet.</source>
            <translation>Todavía no se ha escrito nada.</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Emergency</source>
            <translation>Emergencia</translation>
        </message>
        <message>
            <source>Call now</source>
            <translation>Llamar ahora</translation>
        </message>
        <message>
            <source>Next working day</source>
            <translation>Próximo día laborable</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>En el control</translation>
        </message>
        <message>
            <source>The phone said to call the emergency number. Make sure that help is on its way.</source>
            <translation>El teléfono indicó llamar al número de emergencias. Compruebe que la ayuda está en camino.</translation>
        </message>
        <message>
            <source>The phone said to call the clinic today. Call the patient if no call came.</source>
            <translation>El teléfono indicó llamar hoy a la clínica. Si no ha llamado, llame usted al paciente.</translation>
        </message>
        <message>
            <source>The patient expects an answer on the next working day.</source>
            <translation>El paciente espera respuesta el próximo día laborable.</translation>
        </message>
        <message>
            <source>Bring it up at the follow-up.</source>
            <translation>Coméntelo en el control.</translation>
        </message>
        <message>
            <source>Hard to breathe or to swallow</source>
            <translation>Dificultad para respirar o tragar</translation>
        </message>
        <message>
            <source>Neck or jaw swelling that grows fast</source>
            <translation>Hinchazón del cuello o la mandíbula que crece deprisa</translation>
        </message>
        <message>
            <source>Throat or tongue swells, wheeze, faint or hives</source>
            <translation>Hinchazón de garganta o lengua, sibilancias, desmayo o urticaria</translation>
        </message>
        <message>
            <source>Metal taste, ringing ears, confusion or twitching</source>
            <translation>Sabor a metal, pitido en los oídos, confusión o sacudidas musculares</translation>
        </message>
        <message>
            <source>Severely ill: hard shivering, confused or mottled skin</source>
            <translation>Estado grave: tiritona intensa, confusión o piel moteada</translation>
        </message>
        <message>
            <source>Face droops with a weak arm or slurred speech</source>
            <translation>Cara caída con un brazo débil o habla pastosa</translation>
        </message>
        <message>
            <source>Sudden loss of sight or double vision</source>
            <translation>Pérdida súbita de visión o visión doble</translation>
        </message>
        <message>
            <source>One side swells fast</source>
            <translation>Un lado se hincha deprisa</translation>
        </message>
        <message>
            <source>Skin white, grey or net-like, cold or blistering</source>
            <translation>Piel blanca, gris o en red, fría o con ampollas</translation>
        </message>
        <message>
            <source>Colour change near an entry point</source>
            <translation>Cambio de color junto a un punto de entrada</translation>
        </message>
        <message>
            <source>Warmer than the other side</source>
            <translation>Más caliente que el otro lado</translation>
        </message>
        <message>
            <source>Firm, shiny or tight</source>
            <translation>Zona dura, brillante o tensa</translation>
        </message>
        <message>
            <source>More tender than yesterday</source>
            <translation>Más dolor al tacto que ayer</translation>
        </message>
        <message>
            <source>The edge has moved</source>
            <translation>El borde se ha extendido</translation>
        </message>
        <message>
            <source>Thick or milky fluid</source>
            <translation>Líquido espeso o lechoso</translation>
        </message>
        <message>
            <source>Thread end through the skin</source>
            <translation>Punta de un hilo a través de la piel</translation>
        </message>
        <message>
            <source>Weakness of the face</source>
            <translation>Debilidad facial</translation>
        </message>
        <message>
            <source>Cheek swells on eating, or clear fluid</source>
            <translation>La mejilla se hincha al comer, o líquido claro</translation>
        </message>
        <message>
            <source>Still bleeding after 15 minutes of pressure</source>
            <translation>Sigue sangrando tras 15 minutos de presión</translation>
        </message>
        <message>
            <source>A lump that beats</source>
            <translation>Bulto que late</translation>
        </message>
        <message>
            <source>Thread seen or felt, skin calm</source>
            <translation>Hilo visible o palpable, piel tranquila</translation>
        </message>
        <message>
            <source>Chills</source>
            <translation>Escalofríos</translation>
        </message>
        <message>
            <source>Brow</source>
            <translation>Ceja</translation>
        </message>
        <message>
            <source>Temple</source>
            <translation>Sien</translation>
        </message>
        <message>
            <source>Midface</source>
            <translation>Tercio medio</translation>
        </message>
        <message>
            <source>Cheek</source>
            <translation>Mejilla</translation>
        </message>
        <message>
            <source>Nasolabial fold</source>
            <translation>Surco nasogeniano</translation>
        </message>
        <message>
            <source>Marionette fold</source>
            <translation>Surco de marioneta</translation>
        </message>
        <message>
            <source>Jawline</source>
            <translation>Línea mandibular</translation>
        </message>
        <message>
            <source>Under the chin</source>
            <translation>Bajo el mentón</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Cuello</translation>
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
            <translation>Otro material</translation>
        </message>
        <message>
            <source>Smooth</source>
            <translation>Liso</translation>
        </message>
        <message>
            <source>Twisted</source>
            <translation>Retorcido</translation>
        </message>
        <message>
            <source>Barbed, one way</source>
            <translation>Espiculado, unidireccional</translation>
        </message>
        <message>
            <source>Barbed, two ways</source>
            <translation>Espiculado, bidireccional</translation>
        </message>
        <message>
            <source>Moulded</source>
            <translation>Moldeado</translation>
        </message>
        <message>
            <source>Cones</source>
            <translation>Con conos</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Más allá de la zona móvil</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>Antes de la zona móvil</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Derecha</translation>
        </message>
        <message>
            <source>Both</source>
            <translation>Ambos lados</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>De frente</translation>
        </message>
        <message>
            <source>From the patient's left</source>
            <translation>Desde la izquierda del paciente</translation>
        </message>
        <message>
            <source>From the patient's right</source>
            <translation>Desde la derecha del paciente</translation>
        </message>
        <message>
            <source>Lidocaine with epinephrine</source>
            <translation>Lidocaína con epinefrina</translation>
        </message>
        <message>
            <source>Lidocaine, plain</source>
            <translation>Lidocaína sin epinefrina</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Visto</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Asumido</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Llamada hecha</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Visita adelantada</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Cerrado</translation>
        </message>
        <message>
            <source>Reopened</source>
            <translation>Reabierto</translation>
        </message>
        <message>
            <source>Reassured: usual course, explained</source>
            <translation>Se tranquilizó: evolución habitual, explicada</translation>
        </message>
        <message>
            <source>Advised: told what to do at home</source>
            <translation>Se aconsejó qué hacer en casa</translation>
        </message>
        <message>
            <source>Treated in the clinic</source>
            <translation>Se trató en la clínica</translation>
        </message>
        <message>
            <source>Sent to urgent care</source>
            <translation>Se derivó a urgencias</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Sin contacto</translation>
        </message>
        <message>
            <source>Very much better</source>
            <translation>Muchísimo mejor</translation>
        </message>
        <message>
            <source>Much better</source>
            <translation>Mucho mejor</translation>
        </message>
        <message>
            <source>Better</source>
            <translation>Mejor</translation>
        </message>
        <message>
            <source>Unchanged</source>
            <translation>Sin cambios</translation>
        </message>
        <message>
            <source>Worse</source>
            <translation>Peor</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hematoma</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infección</translation>
        </message>
        <message>
            <source>Thread end out</source>
            <translation>Punta de hilo extruida</translation>
        </message>
        <message>
            <source>Lasting puckering</source>
            <translation>Hoyuelos persistentes</translation>
        </message>
        <message>
            <source>Visible thread</source>
            <translation>Hilo visible</translation>
        </message>
        <message>
            <source>Nerve weakness</source>
            <translation>Debilidad nerviosa</translation>
        </message>
        <message>
            <source>Lasting numbness</source>
            <translation>Adormecimiento persistente</translation>
        </message>
        <message>
            <source>Salivary leak</source>
            <translation>Fuga salival</translation>
        </message>
        <message>
            <source>Skin injury</source>
            <translation>Lesión cutánea</translation>
        </message>
        <message>
            <source>Asymmetry</source>
            <translation>Asimetría</translation>
        </message>
        <message>
            <source>Other, see note</source>
            <translation>Otra, ver nota</translation>
        </message>
        <message>
            <source>That passphrase does not open this vault.</source>
            <translation>Esa frase de acceso no abre este almacén cifrado.</translation>
        </message>
        <message>
            <source>Too many tries. Wait a moment, then try again.</source>
            <translation>Demasiados intentos. Espere un momento y pruebe otra vez.</translation>
        </message>
        <message>
            <source>The vault on this computer is damaged. Nothing was changed. Restore it from a backup.</source>
            <translation>El almacén cifrado de este ordenador está dañado. No se ha cambiado nada. Restáurelo desde una copia de seguridad.</translation>
        </message>
        <message>
            <source>The disk is full. Nothing was saved. Free some space and try again.</source>
            <translation>El disco está lleno. No se ha guardado nada. Libere espacio y pruebe otra vez.</translation>
        </message>
        <message>
            <source>The disk reported an error. Nothing was saved.</source>
            <translation>El disco ha dado un error. No se ha guardado nada.</translation>
        </message>
        <message>
            <source>The hub cannot be reached. What you record is kept here and sent later.</source>
            <translation>No se puede contactar con el servidor. Lo que registre se queda aquí y se envía más tarde.</translation>
        </message>
        <message>
            <source>Something arrived that is not genuine. It was kept apart and not used.</source>
            <translation>Ha llegado algo que no es auténtico. Se ha apartado y no se ha usado.</translation>
        </message>
        <message>
            <source>Its time is over. Start again.</source>
            <translation>Se acabó el tiempo. Empiece de nuevo.</translation>
        </message>
        <message>
            <source>There is one already.</source>
            <translation>Ya existe.</translation>
        </message>
        <message>
            <source>It is not there.</source>
            <translation>No se encuentra.</translation>
        </message>
        <message>
            <source>The vault is locked. Unlock it first.</source>
            <translation>El almacén cifrado está bloqueado. Desbloquéelo primero.</translation>
        </message>
        <message>
            <source>It was refused.</source>
            <translation>Se ha rechazado.</translation>
        </message>
        <message>
            <source>Something is missing or out of range: %1</source>
            <translation>Falta algo o está fuera de los límites: %1</translation>
        </message>
        <message>
            <source>This needs a newer version of the program.</source>
            <translation>Esto necesita una versión más nueva del programa.</translation>
        </message>
        <message>
            <source>That is too long.</source>
            <translation>Es demasiado largo.</translation>
        </message>
        <message>
            <source>That is not possible now.</source>
            <translation>Ahora no es posible.</translation>
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
                <numerusform>%Ln caso sin complicaciones</numerusform>
                <numerusform>%Ln casos sin complicaciones</numerusform>
            </translation>
        </message>
        <message>
            <source>Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.</source>
            <translation>Sin TLS, otros podrían leer lo que se envía: HTTP sin cifrar es solo para un servidor en este mismo ordenador. No se envió nada.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.</source>
            <translation>No se sabe si el teléfono ha mostrado este aviso. Llame ahora y compruebe que la ayuda está en camino.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call the patient now.</source>
            <translation>No se sabe si el teléfono ha mostrado este aviso. Llame ahora al paciente.</translation>
        </message>
        <message>
            <source>Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none.</source>
            <translation>Sangre acumulada bajo la piel como un bulto que se vigiló de cerca, se comprimió, se drenó o se operó; un moretón plano no lo es.</translation>
        </message>
        <message>
            <source>Pus, or redness, warmth and pain that spread, treated as an infection.</source>
            <translation>Pus, o enrojecimiento, calor y dolor que se extienden, tratado como infección.</translation>
        </message>
        <message>
            <source>An end of a thread stands out of the skin or lies bare.</source>
            <translation>Una punta del hilo sale de la piel o queda al descubierto.</translation>
        </message>
        <message>
            <source>A dimple or fold along a thread that is still there at the follow-up.</source>
            <translation>Un hoyuelo o pliegue a lo largo de un hilo que sigue ahí en el control.</translation>
        </message>
        <message>
            <source>A thread can be seen or felt through closed skin, and troubles the patient.</source>
            <translation>Un hilo se ve o se palpa a través de la piel cerrada y molesta a la paciente.</translation>
        </message>
        <message>
            <source>A part of the face moves less than before the treatment, after the anaesthetic has worn off.</source>
            <translation>Una parte de la cara se mueve menos que antes del tratamiento, pasado ya el efecto de la anestesia.</translation>
        </message>
        <message>
            <source>Feeling in a part of the face is less or other than before, still at the follow-up.</source>
            <translation>La sensibilidad en una parte de la cara es menor o distinta que antes, todavía en el control.</translation>
        </message>
        <message>
            <source>Clear fluid from the cheek or swelling of it, more while eating.</source>
            <translation>Líquido claro de la mejilla o hinchazón de ella, más al comer.</translation>
        </message>
        <message>
            <source>Skin that blistered, died, broke open or was left with a scar or a dark mark.</source>
            <translation>Piel que hizo ampollas, murió, se abrió o quedó con una cicatriz o una mancha oscura.</translation>
        </message>
        <message>
            <source>The sides differ more than before the treatment, in the eyes of patient or practitioner.</source>
            <translation>Los lados difieren más que antes del tratamiento, a ojos de la paciente o del profesional.</translation>
        </message>
        <message>
            <source>Anything else that needed a visit, a medicine or an act; the note says what.</source>
            <translation>Cualquier otra cosa que requirió una visita, un medicamento o una intervención; la nota dice qué.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::app::DeskProgram</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>¿Quién está en el puesto?</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>Cola</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>Treatment</source>
            <translation>Tratamiento</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Vincular un teléfono</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Caso</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Control</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Hoja de control</translation>
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
            <translation>Cambiar el protocolo</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Traspaso</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Añadir un puesto</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Puestos</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Unirse a los demás puestos de la clínica</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Copia de seguridad y claves</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>Acerca de Ebbline</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Quién hizo qué</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>The recovery code is not shown any more. If it is not on paper, make a new one.</source>
            <translation>El código de recuperación ya no se muestra. Si no está en papel, cree uno nuevo.</translation>
        </message>
        <message>
            <source>A protocol from a file</source>
            <translation>Un protocolo de un archivo</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicEditor</name>
        <message>
            <source>The clinic's name.</source>
            <translation>El nombre de la clínica.</translation>
        </message>
        <message>
            <source>The clinic's phone number.</source>
            <translation>El número de teléfono de la clínica.</translation>
        </message>
        <message>
            <source>The emergency number, digits only, for example 112.</source>
            <translation>El número de emergencias, solo cifras, por ejemplo 112.</translation>
        </message>
        <message>
            <source>At least one person who works at the desk.</source>
            <translation>Al menos una persona que trabaje en el puesto.</translation>
        </message>
        <message>
            <source>The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.</source>
            <translation>La huella de la clave del servidor: 64 caracteres, 0 a 9 y A a F.</translation>
        </message>
        <message>
            <source>No number is recorded yet.</source>
            <translation>Aún no hay ningún número registrado.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>clinic, phone</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Guardia: %1</translation>
        </message>
        <message>
            <source>Emergency: %1</source>
            <translation>Emergencias: %1</translation>
        </message>
        <message>
            <source>Saved, %1</source>
            <translation>Guardado, %1</translation>
        </message>
        <message>
            <source>The clinic's key is copied.</source>
            <translation>La clave de la clínica está copiada.</translation>
        </message>
        <message>
            <source>The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>El número de teléfono de la clínica como un solo número, sin letras, «/», «,», «;» ni «(0)», por ejemplo +00 555 0100.</translation>
        </message>
        <message>
            <source>The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>El número de guardia como un solo número, sin letras, «/», «,», «;» ni «(0)», por ejemplo +00 555 0100.</translation>
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
            <translation>Asumido: %1</translation>
        </message>
        <message>
            <source>Treated %1 · %2 · %3, version %4</source>
            <comment>date, threads, protocol, its version</comment>
            <translation>Tratamiento: %1 · %2 · %3, versión %4</translation>
        </message>
        <message>
            <source>Last entry %1</source>
            <translation>Última anotación: %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Aún sin anotaciones</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Teléfono vinculado</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Ningún teléfono vinculado</translation>
        </message>
        <message>
            <source>No reminder due yet</source>
            <translation>Aún no corresponde ningún recordatorio</translation>
        </message>
        <message>
            <source>Too long: shorten it before sending.</source>
            <translation>Demasiado largo: acórtelo antes de enviar.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln hilo</numerusform>
                <numerusform>%Ln hilos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>%1 de %Ln recordatorio respondido con «hecho»</numerusform>
                <numerusform>%1 de %Ln recordatorios respondidos con «hecho»</numerusform>
            </translation>
        </message>
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>No hay ningún teléfono vinculado: no se puede enviar un mensaje.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Guardado como %1. El archivo no está cifrado: custódielo como la historia clínica.</translation>
        </message>
        <message>
            <source>Save the course</source>
            <translation>Guardar el caso</translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln anotación nueva o corregida, aún sin abrir</numerusform>
                <numerusform>%Ln anotaciones nuevas o corregidas, aún sin abrir</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message>
            <source>Treatments that are recorded show up here.</source>
            <translation>Aquí aparecen los tratamientos registrados.</translation>
        </message>
        <message>
            <source>No patient and no lot number matches.</source>
            <translation>Ningún paciente ni número de lote coincide.</translation>
        </message>
        <message>
            <source>Treated %1</source>
            <translation>Tratamiento: %1</translation>
        </message>
        <message>
            <source>last entry %1 ago</source>
            <translation>última anotación hace %1</translation>
        </message>
        <message>
            <source>no entry yet</source>
            <translation>aún sin anotaciones</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Cerrado</translation>
        </message>
        <message>
            <source>Phone linked, %1</source>
            <translation>Teléfono vinculado, %1</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Ningún teléfono vinculado</translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln sin abrir</numerusform>
                <numerusform>%Ln sin abrir</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>%Ln mensaje sin leer</numerusform>
                <numerusform>%Ln mensajes sin leer</numerusform>
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
            <translation>Izq. %1  Der. %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>usual range</comment>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>entered late</source>
            <translation>escrito más tarde</translation>
        </message>
        <message>
            <source>amended</source>
            <translation>corregido</translation>
        </message>
        <message>
            <source>%1, %2: left %3, right %4, usual %5. %6</source>
            <comment>day, time, scores, usual range, note</comment>
            <translation>%1, %2: izquierda %3, derecha %4, habitual %5. %6</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DoseLimits</name>
        <message>
            <source>Plain, mg/kg</source>
            <translation>Sin epinefrina, mg/kg</translation>
        </message>
        <message>
            <source>Plain, in all, mg</source>
            <translation>Sin epinefrina, en total, mg</translation>
        </message>
        <message>
            <source>With epinephrine, mg/kg</source>
            <translation>Con epinefrina, mg/kg</translation>
        </message>
        <message>
            <source>With epinephrine, in all, mg</source>
            <translation>Con epinefrina, en total, mg</translation>
        </message>
        <message>
            <source>A number up to %1, the label's. Empty: the label's.</source>
            <translation>Un número hasta %1, el de la ficha técnica. Vacío: el de la ficha técnica.</translation>
        </message>
        <message>
            <source>The label's limits hold.</source>
            <translation>Valen los límites de la ficha técnica.</translation>
        </message>
        <message>
            <source>Lowered by %1, %2</source>
            <comment>person, time</comment>
            <translation>Bajado por %1, %2</translation>
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
            <translation>2, un poco</translation>
        </message>
        <message>
            <source>3, fairly</source>
            <translation>3, medianamente</translation>
        </message>
        <message>
            <source>4, mostly</source>
            <translation>4, en gran parte</translation>
        </message>
        <message>
            <source>5, fully</source>
            <translation>5, del todo</translation>
        </message>
        <message>
            <source>Choose how the result compares with before.</source>
            <translation>Elija cómo está el resultado respecto a antes.</translation>
        </message>
        <message>
            <source>Ask the patient how satisfied they are.</source>
            <translation>Pregunte al paciente por su satisfacción.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quién está en el puesto.</translation>
        </message>
        <message>
            <source>Say whether the course was uncomplicated.</source>
            <translation>Indique si la evolución fue sin complicaciones.</translation>
        </message>
        <message>
            <source>Say what became of it: %1.</source>
            <translation>Indique qué resultó de esto: %1.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message>
            <source>Not heard from the hub yet</source>
            <translation>Aún sin noticias del servidor</translation>
        </message>
        <message>
            <source>Last heard from the hub: %1</source>
            <translation>Último contacto con el servidor: %1</translation>
        </message>
        <message>
            <source>A phone sent two different histories. Do not rely on its entries; call the patient.</source>
            <translation>Un teléfono ha enviado dos historiales distintos. No confíe en sus anotaciones; llame al paciente.</translation>
        </message>
        <message>
            <source>A message from a phone is missing. The queue may be incomplete.</source>
            <translation>Falta un mensaje de un teléfono. La cola puede estar incompleta.</translation>
        </message>
        <message>
            <source>Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.</source>
            <translation>Otro de sus puestos ha enviado dos historiales distintos. Pregunte allí qué se escribió y compárelo con lo que consta aquí.</translation>
        </message>
        <message>
            <source>A message from another desk of yours is missing. What was written there may not be here.</source>
            <translation>Falta un mensaje de otro de sus puestos. Lo que se escribió allí puede no estar aquí.</translation>
        </message>
        <message>
            <source>Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.</source>
            <translation>Parte de lo que llegó se escribió con un programa más nuevo y no se puede mostrar aquí. Actualice este puesto. Hasta entonces, llame a los pacientes cuyo teléfono se actualizó.</translation>
        </message>
        <message>
            <source>The queue may be out of date: nothing was heard for over a day.</source>
            <translation>La cola puede estar desactualizada: no hay noticias desde hace más de un día.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>%Ln mensaje no se pudo verificar y se ha apartado.</numerusform>
                <numerusform>%Ln mensajes no se pudieron verificar y se han apartado.</numerusform>
            </translation>
        </message>
        <message>
            <source>Phones not heard of for more than a day: %1</source>
            <comment>list of names</comment>
            <translation>Más de un día sin noticias de los teléfonos de: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>y %Ln más</numerusform>
                <numerusform>y %Ln más</numerusform>
            </translation>
        </message>
        <message>
            <source>%1. What was written there may not be here.</source>
            <translation>%1. Lo que se escribió allí puede no estar aquí.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>Más de un día sin noticias de %Ln teléfono.</numerusform>
                <numerusform>Más de un día sin noticias de %Ln teléfonos.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>%Ln teléfono lleva más de un día sin confirmar lo que se le envió.</numerusform>
                <numerusform>%Ln teléfonos llevan más de un día sin confirmar lo que se les envió.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>%Ln teléfono aún debe confirmar lo que se le envió.</numerusform>
                <numerusform>%Ln teléfonos aún deben confirmar lo que se les envió.</numerusform>
            </translation>
        </message>
        <message>
            <source>All phones were heard of within a day or little more, and have confirmed what was sent to them.</source>
            <translation>Hay noticias de todos los teléfonos en el último día o poco más, y han confirmado lo que se les envió.</translation>
        </message>
        <message>
            <source>This desk runs on older data: a phone holds more from it. Write again what was written here in between.</source>
            <translation>Este puesto trabaja con datos anteriores: un teléfono tiene más de él. Escriba de nuevo lo que se escribió aquí entretanto.</translation>
        </message>
        <message>
            <source>For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.</source>
            <translation>Hace más de %1 días que un teléfono no recoge lo que se le envió: %2. Llame antes de que se pierda algo.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 fast: please set it.</source>
            <translation>El reloj de este ordenador va adelantado unos %1: póngalo en hora, por favor.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 slow: please set it.</source>
            <translation>El reloj de este ordenador va atrasado unos %1: póngalo en hora, por favor.</translation>
        </message>
        <message>
            <source>This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Este puesto trabaja con datos anteriores: otro de sus puestos tiene más de él. Lo que se escribe aquí ahora no llega allí. Cópielo a mano. Después, en un puesto que tenga la clave raíz, excluya el otro en «Puestos» y añádalo de nuevo.</translation>
        </message>
        <message>
            <source>Another desk of yours says that it runs on older data. What is written there now does not arrive here. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Otro de sus puestos dice que trabaja con datos anteriores. Lo que se escribe allí ahora no llega aquí. Cópielo a mano. Después, en un puesto que tenga la clave raíz, excluya el otro en «Puestos» y añádalo de nuevo.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>It is of: %1.</source>
            <comment>list of names, each with how many</comment>
            <translation>Es de: %1.</translation>
        </message>
        <message>
            <source>Messages from these patients&apos; phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <comment>list of names, each with how many</comment>
            <translation>Los mensajes de los teléfonos de estos pacientes no se pueden leer aquí: %1. Llame y pregunte qué se escribió. Si sigue así, haga que se guarden en el teléfono los datos del diario (Ajustes, Mis datos). Solo después borre allí el diario y vincule de nuevo el teléfono.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escríbalo como año-mes-día, por ejemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>First enter the numbers to call on the Clinic page: the phone shows them with every warning.</source>
            <translation>Introduzca primero los números de llamada en la página Clínica: el teléfono los muestra con cada aviso.</translation>
        </message>
        <message>
            <source>Choose a protocol and a day for the follow-up.</source>
            <translation>Elija un protocolo y un día para el control.</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Vincular un teléfono</translation>
        </message>
        <message>
            <source>Making a code</source>
            <translation>Creando un código</translation>
        </message>
        <message>
            <source>Let the patient scan this code</source>
            <translation>Que el paciente escanee este código</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Compare los números</translation>
        </message>
        <message>
            <source>Linking</source>
            <translation>Vinculando</translation>
        </message>
        <message>
            <source>The phone is linked</source>
            <translation>El teléfono está vinculado</translation>
        </message>
        <message>
            <source>Stop: this code was used twice</source>
            <translation>Alto: este código se usó dos veces</translation>
        </message>
        <message>
            <source>The code has run out</source>
            <translation>El código ha caducado</translation>
        </message>
        <message>
            <source>No code could be made</source>
            <translation>No se pudo crear ningún código</translation>
        </message>
        <message>
            <source>The hub takes the offer. This takes a moment.</source>
            <translation>El servidor recibe la oferta. Tarda un momento.</translation>
        </message>
        <message>
            <source>If the camera does not work, the code below can be typed instead. It works once.</source>
            <translation>Si la cámara no funciona, se puede teclear el código de abajo. Sirve una sola vez.</translation>
        </message>
        <message>
            <source>Read the six digits on the patient's phone. Only if they are the same is it the right phone.</source>
            <translation>Lea las seis cifras en el teléfono del paciente. Solo si son las mismas es el teléfono correcto.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call go to the phone.</source>
            <translation>El caso, su plan de cuidados y los números de llamada pasan al teléfono.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call are on their way. The page of the course shows when the first entry arrives.</source>
            <translation>El caso, su plan de cuidados y los números de llamada están en camino. La página del caso muestra cuándo llega la primera anotación.</translation>
        </message>
        <message>
            <source>Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.</source>
            <translation>Quizá otra persona leyó el código. No se vinculó nada. Cree un código nuevo fuera de la vista de otros.</translation>
        </message>
        <message>
            <source>A code is valid for ten minutes. Nothing was linked. Make a new one.</source>
            <translation>Un código vale diez minutos. No se vinculó nada. Cree uno nuevo.</translation>
        </message>
        <message>
            <source>Try again.</source>
            <translation>Pruebe otra vez.</translation>
        </message>
        <message>
            <source>Valid for %1:%2</source>
            <comment>minutes:seconds</comment>
            <translation>Válido durante %1:%2</translation>
        </message>
        <message>
            <source>First name the hub on the Clinic page.</source>
            <translation>Indique primero el servidor en la página Clínica.</translation>
        </message>
        <message>
            <source>The patient opens the diary, which asks for a code. Do this together, in the same room.</source>
            <translation>El paciente abre el diario, que pide un código. Háganlo juntos, en la misma sala.</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can do this.</source>
            <translation>Solo puede hacerlo un puesto que tenga la clave raíz de la clínica.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Añadir un puesto</translation>
        </message>
        <message>
            <source>Type this at the other desk</source>
            <translation>Teclee esto en el otro puesto</translation>
        </message>
        <message>
            <source>The desk is added</source>
            <translation>El puesto está añadido</translation>
        </message>
        <message>
            <source>Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this together, in the same room.</source>
            <translation>Inicie este programa en el otro ordenador, configure su almacén cifrado y elija allí unirse a los demás puestos de la clínica. Háganlo juntos, en la misma sala.</translation>
        </message>
        <message>
            <source>The code works once. The new desk also asks for the hub's address.</source>
            <translation>El código sirve una sola vez. El puesto nuevo pide también la dirección del servidor.</translation>
        </message>
        <message>
            <source>Read the six digits on the new desk. Only if they are the same is it the right one.</source>
            <translation>Lea las seis cifras en el puesto nuevo. Solo si son las mismas es el correcto.</translation>
        </message>
        <message>
            <source>The clinic's keys go to the new desk.</source>
            <translation>Las claves de la clínica pasan al puesto nuevo.</translation>
        </message>
        <message>
            <source>It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the hub.</source>
            <translation>Tiene las claves de la clínica. Lo que escribieron pacientes y puestos llega allí cuando este puesto, y después el nuevo, hayan consultado el servidor.</translation>
        </message>
        <message>
            <source>A phone before this one has not said what it still holds. What was written on it and not sent is not here.</source>
            <translation>Un teléfono anterior no ha dicho qué conserva todavía. Lo que se escribió en él y no se envió no está aquí.</translation>
        </message>
        <message>
            <source>A phone before this one says that everything on it has arrived.</source>
            <translation>Un teléfono anterior dice que todo lo suyo ha llegado.</translation>
        </message>
        <message>
            <source>(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the patient.</source>
            <translation>(anotaciones: %L1, mensajes: %L2, fotografías: %L3), lo más reciente de %4. Mírenlo en ese teléfono junto con la persona.</translation>
        </message>
        <message>
            <source>The phone is ended. The hub is told with the next sync and refuses it from then on.</source>
            <translation>El teléfono queda excluido. Se avisa al servidor en la próxima sincronización y desde entonces lo rechaza.</translation>
        </message>
        <message>
            <source>This course has no phone in use.</source>
            <translation>Este curso no tiene ningún teléfono en uso.</translation>
        </message>
        <message>
            <source>Another phone for this course</source>
            <translation>Otro teléfono para este curso</translation>
        </message>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>Un teléfono anterior conserva %Ln cosa que nunca llegó</numerusform>
                <numerusform>Un teléfono anterior conserva %Ln cosas que nunca llegaron</numerusform>
            </translation>
        </message>
        <message>
            <source>The phone shows: %1, %2</source>
            <comment>date, time</comment>
            <translation>El teléfono muestra: %1, %2</translation>
        </message>
        <message>
            <source>The phone shows: %1, without a time</source>
            <comment>date</comment>
            <translation>El teléfono muestra: %1, sin hora</translation>
        </message>
        <message>
            <source>The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.</source>
            <comment>date, date</comment>
            <translation>El control debe ser entre 1 y 60 días después del tratamiento. Elija un día del %1 al %2.</translation>
        </message>
        <message>
            <source>Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Escriba la hora del control en horas y minutos, por ejemplo 10:30, o déjela vacía.</translation>
        </message>
        <message>
            <source>The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic&apos;s key. The key stands on the Clinic page, where it can be copied. Then make a new code.</source>
            <comment>a command</comment>
            <translation>El servidor aún no conoce esta clínica. Pida a quien administra el servidor que ejecute %1 con la clave de esta clínica. La clave está en la página Clínica, donde se puede copiar. Después cree un código nuevo.</translation>
        </message>
        <message>
            <source>The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.</source>
            <translation>El teléfono vinculado ahora se deja en cuanto se confirma el nuevo: lo que se escriba allí después no llega a la clínica, y él lo dice. El teléfono nuevo recibe todo el diario. Las fotografías se quedan en la clínica. Nada cambia antes de confirmar las seis cifras.</translation>
        </message>
        <message>
            <source>The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.</source>
            <translation>El servidor rechaza el teléfono perdido en cuanto se confirme el nuevo, o enseguida si solo lo da por terminado. Lo que no envió queda sin saberse. El teléfono nuevo recibe todo el diario. Las fotografías se quedan en la clínica.</translation>
        </message>
        <message>
            <source>Stop: the numbers were not the same</source>
            <translation>Alto: los números no eran iguales</translation>
        </message>
        <message>
            <source>Somebody else may have used the code first. Nothing was linked. Make a new code out of other people&apos;s sight.</source>
            <translation>Quizá otra persona usó antes el código. No se vinculó nada. Cree un código nuevo fuera de la vista de otros.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.</source>
            <translation>Umbrales calibrados con %1, para un máximo de %2 falsas alertas por cada 100 casos sin complicaciones.</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1.</source>
            <translation>Umbrales calibrados con %1.</translation>
        </message>
        <message>
            <source>These are few: the thresholds are drawn towards those before.</source>
            <translation>Son pocos: los umbrales se acercan a los anteriores.</translation>
        </message>
        <message>
            <source>Rules, or the days that are asked about, were changed since.</source>
            <translation>Desde entonces cambiaron las reglas o los días por los que se pregunta.</translation>
        </message>
        <message>
            <source>It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.</source>
            <translation>No está demostrado que respeten el presupuesto de %1 falsas alertas por cada 100 casos sin complicaciones.</translation>
        </message>
        <message>
            <source>They came in a file: other patients may stand behind them.</source>
            <translation>Vinieron en un archivo: pueden basarse en otros pacientes.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message>
            <source>Nobody has taken it</source>
            <translation>Nadie lo ha asumido</translation>
        </message>
        <message>
            <source>Last entry %1 ago</source>
            <translation>Última anotación hace %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Aún sin anotaciones</translation>
        </message>
        <message>
            <source>%1: %2, %3. %4. %5 Since %6.</source>
            <comment>urgency, name, day, title, reason, since</comment>
            <translation>%1: %2, %3. %4. %5 Desde %6.</translation>
        </message>
        <message>
            <source>Not heard from: silence is not good news</source>
            <translation>Sin noticias: el silencio no es buena noticia</translation>
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
            <translation>Sin noticias</translation>
        </message>
        <message>
            <source>Nobody waits</source>
            <translation>Nadie espera</translation>
        </message>
        <message>
            <source>No match</source>
            <translation>Sin coincidencias</translation>
        </message>
        <message>
            <source>Nobody waits for an answer</source>
            <translation>Nadie espera respuesta</translation>
        </message>
        <message>
            <source>Courses show up here when a warning sign, a rule or a silence asks for a look.</source>
            <translation>Los casos aparecen aquí cuando un signo de alarma, una regla o un silencio pide una revisión.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, finding</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Closed: %1</source>
            <translation>Cerrado: %1</translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>y %Ln más</numerusform>
                <numerusform>y %Ln más</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln sin abrir</numerusform>
                <numerusform>%Ln sin abrir</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>%Ln emergencia</numerusform>
                <numerusform>%Ln emergencias</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln para llamar ahora</numerusform>
                <numerusform>%Ln para llamar ahora</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln para el próximo día laborable</numerusform>
                <numerusform>%Ln para el próximo día laborable</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln para el control</numerusform>
                <numerusform>%Ln para el control</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln sin noticias</numerusform>
                <numerusform>%Ln sin noticias</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln oculto por la búsqueda o los filtros</numerusform>
                <numerusform>%Ln ocultos por la búsqueda o los filtros</numerusform>
            </translation>
        </message>
        <message>
            <source>Nobody has acted for %1</source>
            <translation>Sin atender desde hace %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln caso espera más de lo acordado.</numerusform>
                <numerusform>%Ln casos esperan más de lo acordado.</numerusform>
            </translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Guardia: %1</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Todos</translation>
        </message>
        <message>
            <source>Nobody on it</source>
            <translation>Sin asumir</translation>
        </message>
        <message>
            <source>Mine</source>
            <translation>Míos</translation>
        </message>
        <message>
            <source>Not opened</source>
            <translation>Sin abrir</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>También hay que llamar por: %1</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Llamada hecha: %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Asumido: %1</translation>
        </message>
        <message>
            <source>Take search and filters off to see the others.</source>
            <translation>Quite la búsqueda y los filtros para ver los demás.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>%Ln fila urgente está oculta por la búsqueda o los filtros</numerusform>
                <numerusform>%Ln filas urgentes están ocultas por la búsqueda o los filtros</numerusform>
            </translation>
        </message>
        <message>
            <source>Visits missed more than %1 days ago, with nothing written down since: %2</source>
            <translation>Visitas perdidas hace más de %1 días, sin nada anotado desde entonces: %2</translation>
        </message>
        <message>
            <source>Only visits missed long ago</source>
            <translation>Solo visitas perdidas hace tiempo</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SheetBoard</name>
        <message>
            <source>Save the sheet</source>
            <translation>Guardar la hoja</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Archivos PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Guardado como %1. El archivo no está cifrado: custódielo como la historia clínica.</translation>
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
            <translation>Hilos</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anestésico</translation>
        </message>
        <message>
            <source>Care and consent</source>
            <translation>Cuidados y consentimiento</translation>
        </message>
        <message>
            <source>Draft kept on this computer, %1</source>
            <translation>Borrador guardado en este ordenador, %1</translation>
        </message>
        <message>
            <source>Choose or register the patient.</source>
            <translation>Elija o registre al paciente.</translation>
        </message>
        <message>
            <source>Draw at least one thread.</source>
            <translation>Dibuje al menos un hilo.</translation>
        </message>
        <message>
            <source>Note that consent was given.</source>
            <translation>Anote que se dio el consentimiento.</translation>
        </message>
        <message>
            <source>Note that the cautions were explained.</source>
            <translation>Anote que se explicaron las precauciones.</translation>
        </message>
        <message>
            <source>The weight is not a number of kilograms.</source>
            <translation>El peso no es un número en kilogramos.</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.</source>
            <translation>Lidocaína dada de otro modo: miligramos, de 0 a %L1, como mucho un decimal.</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escríbalo como año-mes-día, por ejemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>Este hilo estaba caducado el día del tratamiento.</translation>
        </message>
        <message>
            <source>The code names no lot and no expiry: type them below.</source>
            <translation>El código no indica lote ni caducidad: tecléelos abajo.</translation>
        </message>
        <message>
            <source>This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.</source>
            <translation>No es un código de envase legible. No se ha tomado nada de él: escanéelo otra vez o teclee abajo el lote y la caducidad.</translation>
        </message>
        <message>
            <source>Draw or choose a thread first.</source>
            <translation>Dibuje o elija primero un hilo.</translation>
        </message>
        <message>
            <source>This record was begun on %1. Say when the treatment was.</source>
            <translation>Este registro se empezó el %1. Indique cuándo fue el tratamiento.</translation>
        </message>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>El tratamiento fue hace %Ln día. Indique si es correcto.</numerusform>
                <numerusform>El tratamiento fue hace %Ln días. Indique si es correcto.</numerusform>
            </translation>
        </message>
        <message>
            <source>This time is still to come. Write when the treatment was.</source>
            <translation>Ese momento aún no ha llegado. Escriba cuándo fue el tratamiento.</translation>
        </message>
        <message>
            <source>Write the day of the treatment as year-month-day, for example 2029-06-30.</source>
            <translation>Escriba el día del tratamiento como año-mes-día, por ejemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time of the treatment as hours and minutes, for example 14:05.</source>
            <translation>Escriba la hora del tratamiento en horas y minutos, por ejemplo 14:05.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>No</translation>
        </message>
        <message>
            <source>Placed once</source>
            <translation>Colocado una vez</translation>
        </message>
        <message>
            <source>Say why it was redone.</source>
            <translation>Diga por qué se rehízo.</translation>
        </message>
        <message>
            <source>Shorten the reason.</source>
            <translation>Acorte el motivo.</translation>
        </message>
        <message>
            <source>Thread %L1 was redone: say why.</source>
            <translation>El hilo %L1 se rehízo: diga por qué.</translation>
        </message>
        <message>
            <source>Not written down</source>
            <translation>Sin anotar</translation>
        </message>
        <message>
            <source>The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.</source>
            <translation>El código no indica dónde termina el lote. Mire el envase y elija lo que pone, o escríbalo abajo.</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>No indicado</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Ninguna</translation>
        </message>
        <message>
            <source>At the entry point</source>
            <translation>En el punto de entrada</translation>
        </message>
        <message>
            <source>Along the track</source>
            <translation>En el trayecto</translation>
        </message>
        <message>
            <source>At entry point and along the track</source>
            <translation>En el punto de entrada y en el trayecto</translation>
        </message>
        <message>
            <source>Nobody chosen yet</source>
            <translation>Nadie elegido todavía</translation>
        </message>
        <message>
            <source>What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1</source>
            <comment>the reason</comment>
            <translation>Lo que se empezó aquí no se puede leer. Queda como está: lo que escriba ahora no se guarda como borrador. %1</translation>
        </message>
        <message>
            <source>Nothing was drawn: thread %1 lies there already. It is chosen now.</source>
            <comment>its number</comment>
            <translation>No se dibujó nada: el hilo %1 ya está ahí. Ahora está elegido.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>Say why it is corrected.</source>
            <translation>Diga por qué se corrige.</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Todavía no se ha cambiado nada.</translation>
        </message>
        <message>
            <source>A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.</source>
            <translation>Alguien del equipo corrigió este registro entretanto. Lo que usted registre vale por entero, en lugar de lo suyo: abajo consta lo que cambiaría.</translation>
        </message>
        <message>
            <source>The solution is now with epinephrine %1: check it under Anaesthetic.</source>
            <comment>dilution</comment>
            <translation>La solución lleva ahora epinefrina %1: revísela en «Anestésico».</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message>
            <source>Unlock the desk</source>
            <translation>Desbloquear el puesto</translation>
        </message>
        <message>
            <source>Set up the desk</source>
            <translation>Configurar el puesto</translation>
        </message>
        <message>
            <source>What the desk keeps about patients is encrypted on this computer until you unlock it.</source>
            <translation>Lo que el programa guarda sobre los pacientes está cifrado en este ordenador hasta que lo desbloquee.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>No son iguales.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Elija una frase de acceso de al menos %Ln carácter. Cifra lo que el programa guarda sobre los pacientes en este ordenador. Nadie puede recuperarla por usted: anótela y guárdela en un lugar seguro.</numerusform>
                <numerusform>Elija una frase de acceso de al menos %Ln caracteres. Cifra lo que el programa guarda sobre los pacientes en este ordenador. Nadie puede recuperarla por usted: anótela y guárdela en un lugar seguro.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Demasiado corta: al menos %Ln carácter.</numerusform>
                <numerusform>Demasiado corta: al menos %Ln caracteres.</numerusform>
            </translation>
        </message>
        <message>
            <source>Open it with the recovery code</source>
            <translation>Abrir con el código de recuperación</translation>
        </message>
        <message>
            <source>Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.</source>
            <translation>Teclee el código del papel y elija una nueva frase de acceso. La que se perdió ya no abrirá nada.</translation>
        </message>
        <message>
            <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
            <translation>Esto no es un código de recuperación. Tiene 36 letras y cifras en nueve grupos. Revise cada una.</translation>
        </message>
        <message>
            <source>This code does not open this vault. A newer one may have taken its place.</source>
            <translation>Este código no abre este almacén cifrado. Quizá lo ha sustituido uno más nuevo.</translation>
        </message>
        <message>
            <source>One moment. The desk finds out how strong the lock can be on this computer.</source>
            <translation>Un momento. El puesto averigua cuán fuerte puede ser el cierre en este ordenador.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::face::FaceChart</name>
        <message>
            <source>Entry point set. Cursor %1 across, %2 down: Space sets the end.</source>
            <translation>Punto de entrada fijado. Cursor %1 en horizontal, %2 hacia abajo: Espacio fija el final.</translation>
        </message>
        <message>
            <source>Cursor %1 across, %2 down: Space sets the entry point.</source>
            <translation>Cursor %1 en horizontal, %2 hacia abajo: Espacio fija el punto de entrada.</translation>
        </message>
        <message>
            <source>Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Punto de entrada del hilo %1 tomado, ahora %2 en horizontal, %3 hacia abajo: la barra espaciadora lo deja.</translation>
        </message>
        <message>
            <source>End of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Final del hilo %1 tomado, ahora %2 en horizontal, %3 hacia abajo: la barra espaciadora lo deja.</translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message>
            <source>Per cent of courses</source>
            <translation>Porcentaje de casos</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Días desde el tratamiento</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Grupo</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Con complicaciones</translation>
        </message>
        <message>
            <source>Outcome known</source>
            <translation>Desenlace conocido</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>No conocido</translation>
        </message>
        <message>
            <source>Treatments with a known outcome, one after the other</source>
            <translation>Tratamientos con desenlace conocido, uno tras otro</translation>
        </message>
        <message>
            <source>Running sum, no unit</source>
            <translation>Suma acumulada, sin unidad</translation>
        </message>
        <message>
            <source>Look here from %1 on</source>
            <translation>Revisar a partir de %1</translation>
        </message>
        <message>
            <source>strokes: complicated courses</source>
            <translation>rayas: casos con complicaciones</translation>
        </message>
        <message>
            <source>Have complications become more frequent?</source>
            <translation>¿Son más frecuentes las complicaciones?</translation>
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
            <translation>Suma acumulada</translation>
        </message>
        <message>
            <source>No course has a known outcome yet. Record follow-ups, and the line begins.</source>
            <translation>Ningún caso tiene aún desenlace conocido. Registre controles y la línea empezará.</translation>
        </message>
        <message>
            <source>yes, and a signal</source>
            <translation>sí, y con señal</translation>
        </message>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>Ninguna señal en %Ln tratamiento.</numerusform>
                <numerusform>Ninguna señal en %Ln tratamientos.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln señal: revise los casos anteriores.</numerusform>
                <numerusform>%Ln señales: revise los casos anteriores a cada una.</numerusform>
            </translation>
        </message>
        <message>
            <source>Now at %1 of %2.</source>
            <comment>sum, limit</comment>
            <translation>Ahora en %1 de %2.</translation>
        </message>
        <message>
            <source>%1 more complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>Casos con complicaciones: %1 más de lo esperado.</translation>
        </message>
        <message>
            <source>%1 fewer complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>Casos con complicaciones: %1 menos de lo esperado.</translation>
        </message>
        <message>
            <source>By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.</source>
            <translation>Solo por azar, una línea así da señal en %1 de cada 100 clínicas; si las odds se duplicaran de verdad, en %2.</translation>
        </message>
        <message>
            <source>How often chance alone would signal is still being worked out.</source>
            <translation>Aún se está calculando con qué frecuencia el azar por sí solo daría señal.</translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>No definitivo: %Ln caso sin desenlace conocido es anterior al último mostrado.</numerusform>
                <numerusform>No definitivo: %Ln casos sin desenlace conocido, algunos anteriores al último mostrado.</numerusform>
            </translation>
        </message>
        <message>
            <source>The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.</source>
            <translation>El riesgo es una suposición, igual para todos los pacientes: una señal pide una revisión, no culpa a nadie.</translation>
        </message>
        <message>
            <source>What alerts cost, and which were worth it</source>
            <translation>Qué cuestan las alertas y cuáles valieron la pena</translation>
        </message>
        <message>
            <source>Closed as</source>
            <translation>Cerrada como</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Alertas</translation>
        </message>
        <message>
            <source>Not closed before the follow-up</source>
            <translation>No cerrada antes del control</translation>
        </message>
        <message>
            <source>Still open</source>
            <translation>Aún abierta</translation>
        </message>
        <message>
            <source>Apart: not heard from</source>
            <translation>Aparte: sin noticias</translation>
        </message>
        <message>
            <source>No course with a linked phone yet.</source>
            <translation>Aún no hay casos con teléfono vinculado.</translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>Ninguna alerta en %Ln caso.</numerusform>
                <numerusform>Ninguna alerta en %Ln casos.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 raised an alert, %2 alert(s) in all, about %3 a week lately.</source>
            <comment>courses, number, number</comment>
            <translation>%1 con alerta; alertas en total: %2; últimamente unas %3 por semana.</translation>
        </message>
        <message>
            <source>Worth it, of those closed: %1.</source>
            <translation>Valieron la pena, de las cerradas: %1.</translation>
        </message>
        <message>
            <source>An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.</source>
            <translation>Una alerta tras la cual se tranquilizó al paciente cuenta aquí como que no valió la pena. El paciente puede verlo de otro modo.</translation>
        </message>
        <message>
            <source>Worth it</source>
            <translation>Valió la pena</translation>
        </message>
        <message>
            <source>Per cent of closed alerts</source>
            <translation>Porcentaje de alertas cerradas</translation>
        </message>
        <message>
            <source>What patients did of what they were asked</source>
            <translation>Qué hicieron los pacientes de lo que se les pidió</translation>
        </message>
        <message>
            <source>An unanswered reminder is not a missed one: she may have done it without saying so.</source>
            <translation>Un recordatorio sin respuesta no es un incumplimiento: puede haberse hecho sin decirlo.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Asked</source>
            <translation>Veces pedido</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>No hecho</translation>
        </message>
        <message>
            <source>Days with an entry</source>
            <translation>Días con anotación</translation>
        </message>
        <message>
            <source>Per cent of times asked</source>
            <translation>Porcentaje de veces pedidas</translation>
        </message>
        <message>
            <source>%1 wrote on %2 of %3 days asked.</source>
            <comment>courses, days, days</comment>
            <translation>%1: anotaciones en %2 de %3 días en que se pidieron.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>Datos insuficientes: %Ln desenlace conocido, se necesitan %1</numerusform>
                <numerusform>Datos insuficientes: %Ln desenlaces conocidos, se necesitan %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>Datos insuficientes: lo tuvo %Ln caso, se necesitan %1</numerusform>
                <numerusform>Datos insuficientes: lo tuvieron %Ln casos, se necesitan %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>Datos insuficientes: seguimiento de %Ln día, se necesitan %1</numerusform>
                <numerusform>Datos insuficientes: seguimiento de %Ln días, se necesitan %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>Datos insuficientes: %Ln grupo, se necesitan %1</numerusform>
                <numerusform>Datos insuficientes: %Ln grupos, se necesitan %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Not enough to say: nothing varied</source>
            <translation>Datos insuficientes: nada varió</translation>
        </message>
        <message>
            <source>Not enough to say: nothing happened in either group</source>
            <translation>Datos insuficientes: no ocurrió nada en ningún grupo</translation>
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
            <translation>Dónde terminan los hilos</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Calibre</translation>
        </message>
        <message>
            <source>Epinephrine at the entry point</source>
            <translation>Epinefrina en el punto de entrada</translation>
        </message>
        <message>
            <source>Face or neck</source>
            <translation>Cara o cuello</translation>
        </message>
        <message>
            <source>Not told</source>
            <translation>No indicado</translation>
        </message>
        <message>
            <source>Mixed</source>
            <translation>Mixto</translation>
        </message>
        <message>
            <source>%1 G</source>
            <comment>gauge of needle or cannula</comment>
            <translation>%1 G</translation>
        </message>
        <message>
            <source>With epinephrine</source>
            <translation>Con epinefrina</translation>
        </message>
        <message>
            <source>Without epinephrine</source>
            <translation>Sin epinefrina</translation>
        </message>
        <message>
            <source>Face</source>
            <translation>Cara</translation>
        </message>
        <message>
            <source>Deep folds ask for threads past the moving zone, and deep folds recover otherwise.</source>
            <translation>Los surcos profundos piden hilos más allá de la zona móvil, y se recuperan de otro modo.</translation>
        </message>
        <message>
            <source>Stronger threads need a lower gauge: what differs may be the thread.</source>
            <translation>Los hilos más fuertes necesitan una aguja más gruesa (menos G): la diferencia puede deberse al hilo.</translation>
        </message>
        <message>
            <source>Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.</source>
            <translation>La epinefrina oculta los moratones tempranos, y se omite en pacientes con tendencia a sangrar o corazón débil. No se cuentan los casos en los que no todos los hilos dicen dónde la llevaban, como los de un programa anterior.</translation>
        </message>
        <message>
            <source>Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.</source>
            <translation>Cara y cuello se hinchan y remiten de forma distinta por naturaleza: esto muestra qué decir a los pacientes, no qué es mejor.</translation>
        </message>
        <message>
            <source>Threads were chosen for the face: heavy faces get other threads than light ones.</source>
            <translation>Los hilos se eligieron según la cara: las caras pesadas llevan otros que las ligeras.</translation>
        </message>
        <message>
            <source>%1 days (%2 to %3)</source>
            <comment>mean, its limits</comment>
            <translation>%1 días (%2 a %3)</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>no alcanzada</translation>
        </message>
        <message>
            <source>Courses that still have it, per cent</source>
            <translation>Casos que aún lo tienen, porcentaje</translation>
        </message>
        <message>
            <source>Complicated courses</source>
            <translation>Casos con complicaciones</translation>
        </message>
        <message>
            <source>All courses</source>
            <translation>Todos los casos</translation>
        </message>
        <message>
            <source>%1 were complicated: %2.</source>
            <comment>courses, share</comment>
            <translation>Con complicaciones: %1, es decir, %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln caso sin control no se cuenta: puede haber ido peor o mejor.</numerusform>
                <numerusform>%Ln casos sin control no se cuentan: pueden haber ido peor o mejor.</numerusform>
            </translation>
        </message>
        <message>
            <source>By kind</source>
            <translation>Por tipo</translation>
        </message>
        <message>
            <source>Most often: %1.</source>
            <translation>Más frecuente: %1.</translation>
        </message>
        <message>
            <source>A course with two kinds counts in both.</source>
            <translation>Un caso con dos tipos cuenta en ambos.</translation>
        </message>
        <message>
            <source>No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.</source>
            <translation>Aún no consta ninguna complicación. Eso no prueba que no haya: los límites de arriba dicen cuántas puede haber.</translation>
        </message>
        <message>
            <source>By zone</source>
            <translation>Por zona</translation>
        </message>
        <message>
            <source>A course counts in every zone that it has.</source>
            <translation>Un caso cuenta en cada una de sus zonas.</translation>
        </message>
        <message>
            <source>Shares of zones do not add up: neighbouring zones share their patients.</source>
            <translation>Las proporciones por zona no se suman: las zonas vecinas comparten pacientes.</translation>
        </message>
        <message>
            <source>How long symptoms last</source>
            <translation>Cuánto duran los síntomas</translation>
        </message>
        <message>
            <source>Who feels well may stop writing: then this looks slower than it is.</source>
            <translation>Quien se encuentra bien quizá deje de escribir: entonces parece más lento de lo que es.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Síntoma</translation>
        </message>
        <message>
            <source>Courses with it</source>
            <translation>Casos que lo tuvieron</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Desaparecido</translation>
        </message>
        <message>
            <source>Days with it up to day 20</source>
            <translation>Días con él hasta el día 20</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>symptom, days</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in which it went.</source>
            <translation>Datos insuficientes: en ningún síntoma hay suficientes casos en los que desapareció.</translation>
        </message>
        <message>
            <source>Half were rid of it by day: %1.</source>
            <translation>Día en que la mitad ya no lo tenía: %1.</translation>
        </message>
        <message>
            <source>Complications side by side</source>
            <translation>Comparación de complicaciones</translation>
        </message>
        <message>
            <source>%1 less %2: %3 points of 100 (%4 to %5).</source>
            <comment>group, group, difference, its limits</comment>
            <translation>%1 menos %2: %3 puntos de 100 (%4 a %5).</translation>
        </message>
        <message>
            <source>So many courses would find a doubling of %1 in %2 of 100 cases.</source>
            <comment>share, number</comment>
            <translation>Con tantos casos se detectaría una duplicación de %1 en %2 de cada 100 ocasiones.</translation>
        </message>
        <message>
            <source>Found in 80 of 100 cases: %1 or more beside it.</source>
            <translation>Detectable en 80 de cada 100 ocasiones: %1 o más en el otro grupo.</translation>
        </message>
        <message>
            <source>No difference at all would be found in 80 of 100 cases.</source>
            <translation>Ni la mayor diferencia posible se detectaría en 80 de cada 100 ocasiones.</translation>
        </message>
        <message>
            <source>Probability by chance alone: below %1.</source>
            <translation>Probabilidad solo por azar: inferior a %1.</translation>
        </message>
        <message>
            <source>Probability by chance alone: %1.</source>
            <translation>Probabilidad solo por azar: %1.</translation>
        </message>
        <message>
            <source>No test: all ended alike.</source>
            <translation>Sin prueba: todos acabaron igual.</translation>
        </message>
        <message>
            <source>Days with each symptom, difference</source>
            <translation>Días con cada síntoma, diferencia</translation>
        </message>
        <message>
            <source>Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.</source>
            <translation>Siete síntomas son siete pruebas: que una dé una probabilidad inferior a 0,05 es común aunque nada difiera.</translation>
        </message>
        <message>
            <source>Difference, days</source>
            <translation>Diferencia, días</translation>
        </message>
        <message>
            <source>By chance</source>
            <translation>Por azar</translation>
        </message>
        <message>
            <source>Found in 80 of 100</source>
            <translation>Detectable en 80 de 100</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 días</translation>
        </message>
        <message>
            <source>Days: to the left %1 is shorter, to the right %2</source>
            <comment>group, group</comment>
            <translation>Días: a la izquierda, menos con %1; a la derecha, con %2</translation>
        </message>
        <message>
            <source>Days with the symptom up to day 20, %1 less %2.</source>
            <comment>group, group</comment>
            <translation>Días con el síntoma hasta el día 20, %1 menos %2.</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in both groups.</source>
            <translation>Datos insuficientes: en ningún síntoma hay suficientes casos en ambos grupos.</translation>
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
            <translation>Tratamiento</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Hilos</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Más allá de la zona móvil</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>Antes de la zona móvil</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Cuello</translation>
        </message>
        <message>
            <source>fewer than %1</source>
            <comment>of 100</comment>
            <translation>menos de %1</translation>
        </message>
        <message>
            <source>Not enough to say: the groups lie too far apart</source>
            <translation>No alcanza para decir nada: los grupos están demasiado lejos unos de otros</translation>
        </message>
        <message>
            <source>Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.</source>
            <translation>Proporción de casos con desenlace conocido. Límites: Wilson, 95 %. Los casos sin control se excluyen y se cuentan aparte.</translation>
        </message>
        <message>
            <source>Share, 95% limits</source>
            <translation>Proporción, límites 95 %</translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>Alerta: un aviso o hallazgo que exige actuar antes del control. Valió la pena: se cerró con consejo, tratamiento o urgencias, o se adelantó la visita. Límites: Wilson, 95 %. Alertas por semana: en la última %Ln semana.</numerusform>
                <numerusform>Alerta: un aviso o hallazgo que exige actuar antes del control. Valió la pena: se cerró con consejo, tratamiento o urgencias, o se adelantó la visita. Límites: Wilson, 95 %. Alertas por semana: en las últimas %Ln semanas.</numerusform>
            </translation>
        </message>
        <message>
            <source>Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.</source>
            <translation>Anotaciones: días en que el plan de cuidados preguntó y se escribió algo. Recordatorios: respondidos con «hecho». Límites: Wilson, 95 %; los recordatorios de un mismo paciente se parecen entre sí, por lo que son demasiado estrechos.</translation>
        </message>
        <message>
            <source>Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.</source>
            <translation>Desaparecido: un valor de 1 o menos dos días seguidos que se mantiene; cuenta el lado peor. Curvas: Kaplan-Meier, mediana con límites de Brookmeyer y Crowley, 95 %. Días medios hasta el día 20, límites por distribución normal.</translation>
        </message>
        <message>
            <source>Median day, 95% limits</source>
            <translation>Mediana (día), límites 95 %</translation>
        </message>
        <message>
            <source>Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.</source>
            <translation>Proporciones: Wilson, 95 %. Diferencia: Newcombe. Prueba: Fisher, bilateral. Potencia: exacta para esta prueba.</translation>
        </message>
        <message>
            <source>Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.</source>
            <translation>Diferencia de días medios hasta el día 20 (medias restringidas), límites por distribución normal, 95 %; prueba log-rank.</translation>
        </message>
        <message>
            <source>CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.</source>
            <translation>CUSUM con un mismo riesgo para todos los cursos (la suma de Steiner et al., Biostatistics 2000, sin ajuste a cada paciente): vigila odds %1 veces las de un riesgo de %2; vuelve a empezar tras una señal.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message>
            <source>Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one.</source>
            <translation>Datos insuficientes: una comparación necesita dos grupos, y todos los casos que se pueden asignar pertenecen a uno.</translation>
        </message>
        <message>
            <source>Not enough to say: a comparison needs two groups, and no course says to which it belongs.</source>
            <translation>Datos insuficientes: una comparación necesita dos grupos, y ningún caso dice a cuál pertenece.</translation>
        </message>
        <message>
            <source>Time to settle</source>
            <translation>Duración</translation>
        </message>
        <message>
            <source>Techniques</source>
            <translation>Técnicas</translation>
        </message>
        <message>
            <source>Over time</source>
            <translation>Con el tiempo</translation>
        </message>
        <message>
            <source>Adherence</source>
            <translation>Adherencia</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Usual range</source>
            <translation>Margen habitual</translation>
        </message>
        <message>
            <source>Reading the courses</source>
            <translation>Leyendo los casos</translation>
        </message>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · %Ln con desenlace conocido</numerusform>
                <numerusform>%1 · %Ln con desenlace conocido</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>group, courses</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Comparison, not proof: nobody drew by lot who got what.</source>
            <translation>Comparación, no prueba: nadie sorteó quién recibía qué.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted.</source>
            <translation>Guardado como %1. El archivo no está cifrado.</translation>
        </message>
        <message>
            <source>Save the figure</source>
            <translation>Guardar la figura</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complicaciones</translation>
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
            <translation>Calculando las cifras. Mientras tanto puede seguir trabajando.</translation>
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
            <translation>Ver la figura</translation>
        </message>
        <message>
            <source>Save as CSV</source>
            <translation>Guardar como CSV</translation>
        </message>
        <message>
            <source>Save as PNG</source>
            <translation>Guardar como PNG</translation>
        </message>
        <message>
            <source>Save as SVG</source>
            <translation>Guardar como SVG</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Ver como tabla</translation>
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
            <translation>Primero</translation>
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
            <translation>%1 con complicaciones, %2 aún sin desenlace conocido</translation>
        </message>
        <message>
            <source>Lot %1 went to %2.</source>
            <comment>lot, courses</comment>
            <translation>Lote %1: usado en %2.</translation>
        </message>
        <message>
            <source>Outcome not known</source>
            <translation>Desenlace no conocido</translation>
        </message>
        <message>
            <source>Uncomplicated</source>
            <translation>Sin complicaciones</translation>
        </message>
        <message>
            <source>Call list for lot %1</source>
            <translation>Lista de llamadas del lote %1</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <comment>clinic, when</comment>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Teléfono</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lote como se anotó</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Desenlace</translation>
        </message>
        <message>
            <source>Called by, when</source>
            <translation>Llamada hecha por, cuándo</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Guardado como %1. El archivo no está cifrado: custódielo como las historias clínicas.</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Guardar la lista de llamadas</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Con complicaciones</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamiento</translation>
        </message>
        <message>
            <source>%1, product not known</source>
            <comment>lot</comment>
            <translation>%1, producto no conocido</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product</comment>
            <translation>%1, producto %2</translation>
        </message>
        <message>
            <source>Product not known: %1 of them. It may be this one, so they stand here too.</source>
            <comment>a number of courses</comment>
            <translation>Producto no conocido: en %1 de ellos. Puede ser este, por eso también figuran aquí.</translation>
        </message>
    </context>
    <context>
        <name>LimitFields</name>
        <message>
            <source>Your clinic's limit of lidocaine</source>
            <translation>Límite de lidocaína de su clínica</translation>
        </message>
        <message>
            <source>You may set it lower than the US label's, never higher. An empty field keeps the label's number.</source>
            <translation>Puede fijarlo más bajo que el de la ficha técnica de EE. UU., nunca más alto. Un campo vacío conserva el número de la ficha técnica.</translation>
        </message>
        <message>
            <source>Save the limit</source>
            <translation>Guardar el límite</translation>
        </message>
    </context>
    <context>
        <name>LotPanel</name>
        <message>
            <source>Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.</source>
            <translation>Elija un lote para ver a todos los que lo recibieron. Se encuentra sea cual sea la forma en que se escribió. Un lote no es una causa: quien lo recibió puede estar bien.</translation>
        </message>
        <message>
            <source>No treatment on record has such a lot.</source>
            <translation>Ningún tratamiento registrado tiene ese lote.</translation>
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
            <translation>Teléfono</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Tratamiento</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lote como se anotó</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Desenlace</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Guardar la lista de llamadas</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>%Ln caso puede usarse para calcular una versión nueva.</numerusform>
                <numerusform>%Ln casos pueden usarse para calcular una versión nueva.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>%Ln caso puede usarse. Se necesitan %1 para comprobar una versión.</numerusform>
                <numerusform>%Ln casos pueden usarse. Se necesitan %1 para comprobar una versión.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>Calculada con %Ln caso por %1, %2</numerusform>
                <numerusform>Calculada con %Ln casos por %1, %2</numerusform>
            </translation>
        </message>
        <message>
            <source>The range every clinic begins with: an assumption, no courses behind it</source>
            <translation>El margen con el que empieza cada clínica: una suposición, sin casos detrás</translation>
        </message>
        <message>
            <source>%1 went back to %2, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 volvió a %2, %3: %4</translation>
        </message>
        <message>
            <source>%1 put %2 into use, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>%1 puso en uso %2, %3: %4</translation>
        </message>
        <message>
            <source>On courses it had not seen</source>
            <translation>En casos no vistos</translation>
        </message>
        <message>
            <source>Above the 90th</source>
            <translation>Sobre el percentil 90</translation>
        </message>
        <message>
            <source>Above the 97th</source>
            <translation>Sobre el percentil 97</translation>
        </message>
        <message>
            <source>Say first who is at the desk: a version carries the name of who learned it.</source>
            <translation>Indique primero quién está en el puesto: cada versión lleva el nombre de quien la calculó.</translation>
        </message>
        <message>
            <source>Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.</source>
            <translation>Calculada: %1. No ha cambiado nada para ningún paciente: vea su comprobación; después úsela o déjela.</translation>
        </message>
        <message>
            <source>Nothing has changed since the last version was learned.</source>
            <translation>Nada ha cambiado desde que se calculó la última versión.</translation>
        </message>
        <message>
            <source>Go back to %1</source>
            <translation>Volver a %1</translation>
        </message>
        <message>
            <source>Use %1</source>
            <translation>Usar %1</translation>
        </message>
        <message>
            <source>%1 is in use. Courses that run keep the range they began with.</source>
            <translation>%1 está en uso. Los casos en curso conservan el margen con el que empezaron.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Síntoma</translation>
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
                <numerusform>%Ln caso: sin consentimiento para el cálculo</numerusform>
                <numerusform>%Ln casos: sin consentimiento para el cálculo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln caso: aún sin control, se desconoce el desenlace</numerusform>
                <numerusform>%Ln casos: aún sin control, se desconoce el desenlace</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln caso: con complicaciones</numerusform>
                <numerusform>%Ln casos: con complicaciones</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln caso: tratado por un hallazgo</numerusform>
                <numerusform>%Ln casos: tratados por un hallazgo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln caso: muy pocos días con anotación</numerusform>
                <numerusform>%Ln casos: muy pocos días con anotación</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough to say: nearly the assumption</source>
            <translation>datos insuficientes: casi la suposición</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>se cumple</translation>
        </message>
        <message>
            <source>too narrow: false alerts</source>
            <translation>demasiado estrecho: falsas alertas</translation>
        </message>
        <message>
            <source>too wide: it would look late</source>
            <translation>demasiado ancho: alertaría tarde</translation>
        </message>
        <message>
            <source>%1, promised %2</source>
            <comment>share seen, share promised</comment>
            <translation>%1, previsto %2</translation>
        </message>
        <message>
            <source>It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).</source>
            <translation>Se cumplió en casos no vistos: el %1 de los valores quedó por encima de su percentil 90 (%2 a %3).</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>No se puede usar: se basa en %Ln caso, se necesitan %1.</numerusform>
                <numerusform>No se puede usar: se basa en %Ln casos, se necesitan %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be used: it did not hold on courses that it had not seen. The table says where.</source>
            <translation>No se puede usar: no se cumplió en casos no vistos. La tabla dice dónde.</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>Aún no se puede usar: se pudo comprobar con %Ln caso de esta clínica, se necesitan %1.</numerusform>
                <numerusform>Aún no se puede usar: se pudo comprobar con %Ln casos de esta clínica, se necesitan %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>Tomado de un archivo por %1, %2. Allí se llama %3 y se basa en %Ln caso.</numerusform>
                <numerusform>Tomado de un archivo por %1, %2. Allí se llama %3 y se basa en %Ln casos.</numerusform>
            </translation>
        </message>
        <message>
            <source>Whoever took it says that no course of this clinic is behind it.</source>
            <translation>Quien lo tomó dice que no se basa en ningún caso de esta clínica.</translation>
        </message>
        <message>
            <source>It was checked on courses that were treated after it was learned.</source>
            <translation>Se comprobó con casos tratados después de calcularlo.</translation>
        </message>
    </context>
    <context>
        <name>BandCard</name>
        <message>
            <source>%1, in use</source>
            <translation>%1, en uso</translation>
        </message>
        <message>
            <source>Go back to it</source>
            <translation>Volver a esta</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>Usarla</translation>
        </message>
        <message>
            <source>Hide the check</source>
            <translation>Ocultar la comprobación</translation>
        </message>
        <message>
            <source>Show the check</source>
            <translation>Ver la comprobación</translation>
        </message>
    </context>
    <context>
        <name>BandPanel</name>
        <message>
            <source>In use</source>
            <translation>En uso</translation>
        </message>
        <message>
            <source>Learn a new one</source>
            <translation>Calcular uno nuevo</translation>
        </message>
        <message>
            <source>Learning, and checking on courses left out. This takes a while; the desk stays free.</source>
            <translation>Calculando y comprobando con casos apartados. Tarda un rato; puede seguir trabajando.</translation>
        </message>
        <message>
            <source>Learn a version</source>
            <translation>Calcular una versión</translation>
        </message>
        <message>
            <source>Nothing comes into use by it.</source>
            <translation>Con ello nada entra en uso.</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>Versiones</translation>
        </message>
        <message>
            <source>Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.</source>
            <translation>Con ella se vuelve a firmar cada protocolo. Los casos en curso conservan el suyo. El motivo se guarda con su nombre.</translation>
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
            <translation>Dejarlo así</translation>
        </message>
    </context>
    <context>
        <name>ProtocolEditPage</name>
        <message>
            <source>Change the protocol</source>
            <translation>Cambiar el protocolo</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Rehacer</translation>
        </message>
        <message>
            <source>As in use</source>
            <translation>Como está en uso</translation>
        </message>
        <message>
            <source>Drops every change; can be undone.</source>
            <translation>Descarta todos los cambios; se puede deshacer.</translation>
        </message>
        <message>
            <source>Undo the signature</source>
            <translation>Deshacer la firma</translation>
        </message>
        <message>
            <source>Signs what was in use before anew.</source>
            <translation>Vuelve a firmar lo que estaba antes en uso.</translation>
        </message>
    </context>
    <context>
        <name>PlanFields</name>
        <message>
            <source>From day</source>
            <translation>Desde el día</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Hasta el día</translation>
        </message>
        <message>
            <source>Every how many days</source>
            <translation>Cada cuántos días</translation>
        </message>
        <message>
            <source>Reminds at (empty: a rule to keep, nothing rings)</source>
            <translation>Horas del recordatorio (vacío: una norma que cumplir, nada suena)</translation>
        </message>
        <message>
            <source>The clinic's own words, added for the patient</source>
            <translation>Texto propio de la clínica, añadido para el paciente</translation>
        </message>
        <message>
            <source>Rings in quiet hours too</source>
            <translation>Suena también en las horas de silencio</translation>
        </message>
        <message>
            <source>Take it out of the plan</source>
            <translation>Quitar del plan</translation>
        </message>
    </context>
    <context>
        <name>PlanLine</name>
        <message>
            <source>%1 (changed)</source>
            <translation>%1 (cambiado)</translation>
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
            <translation>%1, versión %2 en preparación</translation>
        </message>
        <message>
            <source>Care plan</source>
            <translation>Plan de cuidados</translation>
        </message>
        <message>
            <source>Rules</source>
            <translation>Reglas</translation>
        </message>
        <message>
            <source>Rehearse and sign</source>
            <translation>Simular y firmar</translation>
        </message>
        <message>
            <source>Write times of day with a space between, for example 08:00 20:00.</source>
            <translation>Escriba las horas separadas por un espacio, por ejemplo 08:00 20:00.</translation>
        </message>
        <message>
            <source>What the patient sees on day %1</source>
            <translation>Qué ve el paciente el día %1</translation>
        </message>
        <message>
            <source>An instruction of the clinic's own needs its words.</source>
            <translation>Una instrucción propia de la clínica necesita su texto.</translation>
        </message>
        <message>
            <source>Too much: at most 40 instructions, 8 times a day and 400 characters of text.</source>
            <translation>Demasiado: como máximo 40 instrucciones, 8 horas al día y 400 caracteres de texto.</translation>
        </message>
        <message>
            <source>Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.</source>
            <translation>De %1 casos sin complicaciones inventados con curva suave señala %2, el que está en uso %3; de %4 inventados a escalones, %5, el que está en uso %6.</translation>
        </message>
        <message>
            <source>With as many patients as lately: about %1 alerts a week, now %2.</source>
            <comment>number, number</comment>
            <translation>Con tantos pacientes como últimamente: unas %1 alertas por semana, ahora %2.</translation>
        </message>
        <message>
            <source>No past course to rehearse on: only invented courses speak.</source>
            <translation>No hay casos anteriores con los que simular: solo cuentan los inventados.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>%Ln caso anterior se habría señalado de otro modo.</numerusform>
                <numerusform>%Ln casos anteriores se habrían señalado de otro modo.</numerusform>
            </translation>
        </message>
        <message>
            <source>The protocol has been changed since: rehearse it again.</source>
            <translation>El protocolo ha cambiado desde entonces: simúlelo otra vez.</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Casos</translation>
        </message>
        <message>
            <source>Flagged, in use</source>
            <translation>Señalados, en uso</translation>
        </message>
        <message>
            <source>Flagged, changed</source>
            <translation>Señalados, cambiado</translation>
        </message>
        <message>
            <source>Within a day, in use</source>
            <translation>En un día, en uso</translation>
        </message>
        <message>
            <source>Within a day, changed</source>
            <translation>En un día, cambiado</translation>
        </message>
        <message>
            <source>Invented, smooth: %1</source>
            <translation>Inventados, curva suave: %1</translation>
        </message>
        <message>
            <source>Invented, in steps: %1</source>
            <translation>Inventados, a escalones: %1</translation>
        </message>
        <message>
            <source>%1, call now</source>
            <comment>courses</comment>
            <translation>%1, llamar ahora</translation>
        </message>
        <message>
            <source>%1, not heard from</source>
            <comment>courses</comment>
            <translation>%1, sin noticias</translation>
        </message>
        <message>
            <source>Past: %1</source>
            <translation>Anteriores: %1</translation>
        </message>
        <message>
            <source>New: %1, %2</source>
            <comment>instruction, when</comment>
            <translation>Nueva: %1, %2</translation>
        </message>
        <message>
            <source>%1: %2, %3 (was %4, %5)</source>
            <comment>instruction, when, how, when, how</comment>
            <translation>%1: %2, %3 (antes %4, %5)</translation>
        </message>
        <message>
            <source>Taken out: %1</source>
            <translation>Quitada: %1</translation>
        </message>
        <message>
            <source>Follow-up on day %1 (was %2)</source>
            <translation>Control el día %1 (antes %2)</translation>
        </message>
        <message>
            <source>%1, %2: %3 (was %4)</source>
            <comment>rule, what, number, number</comment>
            <translation>%1, %2: %3 (antes %4)</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Aún no se ha cambiado nada.</translation>
        </message>
        <message>
            <source>Rehearse it first: nothing goes live unseen.</source>
            <translation>Simúlelo primero: nada entra en uso sin haberse visto.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quién está en el puesto.</translation>
        </message>
        <message>
            <source>Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.</source>
            <translation>La versión %1 está firmada. Va a los teléfonos que se vinculen desde ahora; los casos en curso conservan la suya.</translation>
        </message>
        <message>
            <source>What was in use before is in use again, as version %1.</source>
            <translation>Lo que estaba antes en uso vuelve a estar en uso, como versión %1.</translation>
        </message>
        <message>
            <source>Version %1, signed %2</source>
            <translation>Versión %1, firmada %2</translation>
        </message>
        <message>
            <source>Usual range: %1 (was %2)</source>
            <comment>version, version</comment>
            <translation>Margen habitual: %1 (antes %2)</translation>
        </message>
        <message>
            <source>It cannot be signed with the usual range that came with it. %1</source>
            <translation>No se puede firmar con el margen habitual que trae. %1</translation>
        </message>
        <message>
            <source>With version %1 of %2</source>
            <comment>number, protocol</comment>
            <translation>Con la versión %1 de %2</translation>
        </message>
        <message>
            <source>The signature of version %1 was undone</source>
            <translation>Se deshizo la firma de la versión %1</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <comment>rule, threshold and details, the same before</comment>
            <translation>%1: %2 (antes %3)</translation>
        </message>
        <message>
            <source>A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1</source>
            <comment>the reason</comment>
            <translation>Un borrador guardado no se puede leer. Queda como está: lo que cambie ahora no se guarda. %1</translation>
        </message>
    </context>
    <context>
        <name>ProtocolPlan</name>
        <message>
            <source>Follow-up</source>
            <translation>Control</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>Add an instruction</source>
            <translation>Añadir una instrucción</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>All day</source>
            <translation>Todo el día</translation>
        </message>
        <message>
            <source>Nothing is asked on this day.</source>
            <translation>Este día no se pide nada.</translation>
        </message>
        <message>
            <source>The diary says the same in the patient's language; the clinic's own words stand as they are written.</source>
            <translation>El diario dice lo mismo en el idioma del paciente; el texto propio de la clínica queda tal como se escribió.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolRules</name>
        <message>
            <source>Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.</source>
            <translation>Los signos de alarma, la fiebre y el dolor intenso no están aquí: ningún protocolo puede retrasarlos ni suavizarlos. Los umbrales de los estadísticos se calibran junto con el margen habitual.</translation>
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
            <translation>Qué ha cambiado</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Nada aún.</translation>
        </message>
        <message>
            <source>Rehearsal</source>
            <translation>Simulación</translation>
        </message>
        <message>
            <source>Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.</source>
            <translation>Aplica las reglas a casos anteriores y a casos inventados cuyo desenlace real se conoce. Con ello no cambia nada para nadie.</translation>
        </message>
        <message>
            <source>Rehearsing. The desk stays free meanwhile.</source>
            <translation>Simulando. Mientras tanto puede seguir trabajando.</translation>
        </message>
        <message>
            <source>Past courses, one by one</source>
            <translation>Casos anteriores, uno por uno</translation>
        </message>
        <message>
            <source>Rehearse again</source>
            <translation>Simular otra vez</translation>
        </message>
        <message>
            <source>Rehearse</source>
            <translation>Simular</translation>
        </message>
        <message>
            <source>Sign it</source>
            <translation>Firmar</translation>
        </message>
        <message>
            <source>It goes to phones that are linked from now on.</source>
            <translation>Va a los teléfonos que se vinculen desde ahora.</translation>
        </message>
        <message>
            <source>Signed before</source>
            <translation>Firmadas antes</translation>
        </message>
        <message>
            <source>Take it up again</source>
            <translation>Retomar</translation>
        </message>
        <message>
            <source>Keep the usual range in use</source>
            <translation>Conservar el margen habitual en uso</translation>
        </message>
        <message>
            <source>Drops the range that came with the file, and its thresholds; can be undone.</source>
            <translation>Quita el margen que vino con el archivo y sus umbrales; se puede deshacer.</translation>
        </message>
    </context>
    <context>
        <name>Rehearsals</name>
        <message>
            <source>Uncomplicated</source>
            <translation>Sin complicaciones</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infección</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hematoma</translation>
        </message>
        <message>
            <source>Slow recovery</source>
            <translation>Recuperación lenta</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Hoyuelos persistentes</translation>
        </message>
        <message>
            <source>Falls silent</source>
            <translation>Deja de escribir</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Con complicaciones</translation>
        </message>
        <message>
            <source>%1 of %2 (%3 to %4 in 100)</source>
            <comment>flagged, courses, limits</comment>
            <translation>%1 de %2 (%3 a %4 de 100)</translation>
        </message>
        <message>
            <source>no such finding</source>
            <translation>ningún aviso así</translation>
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
            <translation>Por encima de lo habitual</translation>
        </message>
        <message>
            <source>Rising again</source>
            <translation>Nuevo aumento</translation>
        </message>
        <message>
            <source>One side much worse</source>
            <translation>Un lado mucho peor</translation>
        </message>
        <message>
            <source>One side fills in the first days</source>
            <translation>Un lado se llena en los primeros días</translation>
        </message>
        <message>
            <source>Slow to settle</source>
            <translation>Remisión lenta</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Hoyuelos persistentes</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Sin noticias</translation>
        </message>
        <message>
            <source>only from this score on</source>
            <translation>solo desde este valor</translation>
        </message>
        <message>
            <source>only so far above the lowest so far</source>
            <translation>solo a esta distancia sobre el mínimo hasta ahora</translation>
        </message>
        <message>
            <source>from this day on</source>
            <translation>desde este día</translation>
        </message>
        <message>
            <source>up to this day</source>
            <translation>hasta este día</translation>
        </message>
        <message>
            <source>only with so much between the sides</source>
            <translation>solo con esta diferencia entre los lados</translation>
        </message>
        <message>
            <source>only with so much between the sides, symptoms added up</source>
            <translation>solo con esta diferencia entre los lados, sumando los síntomas</translation>
        </message>
        <message>
            <source>only after a peak of this score</source>
            <translation>solo tras un máximo de este valor</translation>
        </message>
        <message>
            <source>unchanged for a week: from this day on</source>
            <translation>sin cambios en una semana: desde este día</translation>
        </message>
        <message>
            <source>unchanged for a week: only from this score on</source>
            <translation>sin cambios en una semana: solo desde este valor</translation>
        </message>
        <message>
            <source>without an entry</source>
            <translation>sin anotación</translation>
        </message>
        <message>
            <source>without an entry, after a high one</source>
            <translation>sin anotación, tras una alta</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
        <message>
            <source>points</source>
            <translation>puntos</translation>
        </message>
    </context>
    <context>
        <name>CallPanel</name>
        <message>
            <source>What to ask</source>
            <translation>Qué preguntar</translation>
        </message>
        <message>
            <source>%L1. %2</source>
            <translation>%L1. %2</translation>
        </message>
        <message>
            <source>Note, or message to the patient</source>
            <translation>Nota o mensaje al paciente</translation>
        </message>
        <message>
            <source>Spoke with her</source>
            <translation>He hablado</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Sin contacto</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Visita adelantada</translation>
        </message>
        <message>
            <source>Send as a message</source>
            <translation>Enviar como mensaje</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Ahora no</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>Move the visit</source>
            <translation>Mover la visita</translation>
        </message>
        <message>
            <source>She called us</source>
            <translation>Ella nos llamó</translation>
        </message>
        <message>
            <source>Nothing is open: the call is noted on the course.</source>
            <translation>No hay nada abierto: la llamada se anota en el caso.</translation>
        </message>
        <message>
            <source>We reached her</source>
            <translation>La hemos localizado</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CallBoard</name>
        <message>
            <source>Call %1</source>
            <comment>name</comment>
            <translation>Llamar a %1</translation>
        </message>
        <message>
            <source>No number on record</source>
            <translation>Ningún número registrado</translation>
        </message>
        <message>
            <source>%1. Ask before you call twice.</source>
            <comment>what somebody else did last</comment>
            <translation>%1. Pregunte antes de llamar dos veces.</translation>
        </message>
        <message>
            <source>Her diary is in %1.</source>
            <translation>El diario está en %1.</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Llamada hecha: %1</translation>
        </message>
        <message>
            <source>Visit brought forward: %1</source>
            <translation>Visita adelantada: %1</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>No contesta: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Choose a day from %1 to %2, and not what is agreed already.</source>
            <comment>date, date</comment>
            <translation>Elija un día del %1 al %2, y no lo que ya está acordado.</translation>
        </message>
        <message>
            <source>Agreed so far: %1</source>
            <translation>Acordado hasta ahora: %1</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>Escríbalo como año-mes-día, por ejemplo 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Escriba la hora en horas y minutos, por ejemplo 10:30, o déjela vacía.</translation>
        </message>
        <message>
            <source>Midnight stands for a day without a time. Leave the time empty if none is agreed.</source>
            <translation>La medianoche indica un día sin hora. Deje la hora vacía si no se ha acordado ninguna.</translation>
        </message>
        <message>
            <source>It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.</source>
            <translation>Es demasiado tarde para mover la visita: el día %L1 tras el tratamiento, el último posible, ya ha pasado.</translation>
        </message>
        <message>
            <source>The phone shows from its next sync on: %1</source>
            <translation>El teléfono muestra desde su próxima sincronización: %1</translation>
        </message>
        <message>
            <source>No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.</source>
            <translation>Ningún teléfono tiene este caso: una visita adelantada solo se anota aquí, y ningún teléfono la muestra. Dígale el día.</translation>
        </message>
        <message>
            <source>She called us: %1</source>
            <translation>Ella nos llamó: %1</translation>
        </message>
        <message>
            <source>Since you opened this, something new came: %1</source>
            <comment>titles of findings</comment>
            <translation>Desde que abrió esto ha llegado algo nuevo: %1</translation>
        </message>
    </context>
    <context>
        <name>CallScript</name>
        <message>
            <source>Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line.</source>
            <translation>¿Puede respirar, tragar la saliva y decir una frase entera? Si no: número de emergencias, ahora, y no cuelgue.</translation>
        </message>
        <message>
            <source>Is the swelling growing from hour to hour, or is the neck hard?</source>
            <translation>¿La hinchazón crece de hora en hora, o el cuello está duro?</translation>
        </message>
        <message>
            <source>Is somebody with you?</source>
            <translation>¿Hay alguien con usted?</translation>
        </message>
        <message>
            <source>Do you see as before with each eye? If not: emergency number, now.</source>
            <translation>¿Ve como antes con cada ojo? Si no: número de emergencias, ahora.</translation>
        </message>
        <message>
            <source>Smile, close both eyes, lift your brows: is one side weaker? Since when?</source>
            <translation>Sonría, cierre los dos ojos, levante las cejas: ¿hay un lado más débil? ¿Desde cuándo?</translation>
        </message>
        <message>
            <source>Is one side growing? Compared with this morning: much more, a little, the same?</source>
            <translation>¿Está creciendo un lado? Comparado con esta mañana: ¿mucho más, un poco, igual?</translation>
        </message>
        <message>
            <source>Does it feel hard and tense, or soft?</source>
            <translation>¿Se nota duro y tenso, o blando?</translation>
        </message>
        <message>
            <source>Do you take anything that thins the blood, or aspirin or ibuprofen?</source>
            <translation>¿Toma algo que haga la sangre más líquida, o aspirina o ibuprofeno?</translation>
        </message>
        <message>
            <source>What is your temperature now? Did you have chills?</source>
            <translation>¿Qué temperatura tiene ahora? ¿Ha tenido escalofríos?</translation>
        </message>
        <message>
            <source>Is an entry point red, warm, or is anything coming out of it?</source>
            <translation>¿Algún punto de entrada está rojo o caliente, o sale algo de él?</translation>
        </message>
        <message>
            <source>Is the red or the pain spreading?</source>
            <translation>¿Se extiende la rojez o el dolor?</translation>
        </message>
        <message>
            <source>Pain from 0 to 10 now, and at its worst since yesterday?</source>
            <translation>¿Dolor de 0 a 10 ahora, y en el peor momento desde ayer?</translation>
        </message>
        <message>
            <source>What have you taken against it, and did it help?</source>
            <translation>¿Qué ha tomado para ello, y le ha ayudado?</translation>
        </message>
        <message>
            <source>Is the skin there pale, blue, or does it feel cold?</source>
            <translation>¿La piel está ahí pálida o azul, o se nota fría?</translation>
        </message>
        <message>
            <source>Can you see or feel an end of a thread? Do not pull or cut it.</source>
            <translation>¿Ve o nota la punta de un hilo? No tire de él ni lo corte.</translation>
        </message>
        <message>
            <source>Is the skin over it open, red or wet?</source>
            <translation>¿La piel que lo cubre está abierta, roja o húmeda?</translation>
        </message>
        <message>
            <source>Please send a photo from the diary, from the front and from that side.</source>
            <translation>Envíe, por favor, una foto desde el diario, de frente y de ese lado.</translation>
        </message>
        <message>
            <source>Compared with yesterday: better, the same, worse?</source>
            <translation>Comparado con ayer: ¿mejor, igual, peor?</translation>
        </message>
        <message>
            <source>Anything new: fever, one side worse, something coming out?</source>
            <translation>¿Algo nuevo: fiebre, un lado peor, sale algo?</translation>
        </message>
        <message>
            <source>How are you? The diary has heard nothing for some days.</source>
            <translation>¿Cómo está? El diario no ha tenido noticias desde hace unos días.</translation>
        </message>
        <message>
            <source>Does the diary work, and is the phone online?</source>
            <translation>¿Funciona el diario, y tiene red el teléfono?</translation>
        </message>
        <message>
            <source>Fever, one side worse, anything coming out of an entry point?</source>
            <translation>¿Fiebre, un lado peor, sale algo de un punto de entrada?</translation>
        </message>
        <message>
            <source>Last: what are you most worried about?</source>
            <translation>Por último: ¿qué es lo que más le preocupa?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HandOverBoard</name>
        <message>
            <source>Hand-over</source>
            <translation>Traspaso</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>clinic, person, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>A word from who leaves</source>
            <translation>Unas palabras de quien sale</translation>
        </message>
        <message>
            <source>Who waits</source>
            <translation>Quién espera</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Urgencia</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Qué y por qué</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>Who is on it</source>
            <translation>Quién se ocupa</translation>
        </message>
        <message>
            <source>What was done in the last day</source>
            <translation>Qué se hizo en el último día</translation>
        </message>
        <message>
            <source>nobody</source>
            <translation>nadie</translation>
        </message>
        <message>
            <source>Nobody waits for an answer.</source>
            <translation>Nadie espera respuesta.</translation>
        </message>
        <message>
            <source>Nothing was noted.</source>
            <translation>No se anotó nada.</translation>
        </message>
        <message>
            <source>%1 (%2, %3)</source>
            <comment>note, person, when</comment>
            <translation>%1 (%2, %3)</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indique quién está en el puesto.</translation>
        </message>
        <message>
            <source>Too long: shorten it.</source>
            <translation>Demasiado largo: acórtelo.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Guardado como %1. El archivo no está cifrado: custódielo como las historias clínicas.</translation>
        </message>
        <message>
            <source>Save the hand-over</source>
            <translation>Guardar el traspaso</translation>
        </message>
        <message>
            <source>Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.</source>
            <translation>Copiado como texto. Quien use este ordenador puede pegarlo: péguelo pronto y después copie otra cosa.</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>También hay que llamar por: %1</translation>
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
            <translation>Traspaso</translation>
        </message>
        <message>
            <source>Made from the queue of this moment.</source>
            <translation>A partir de la cola de este momento.</translation>
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
            <translation>Unas palabras para el relevo; quedan fijadas sobre la cola hasta que alguien las retire</translation>
        </message>
        <message>
            <source>Pin it</source>
            <translation>Fijar</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimir</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message>
            <source>You have not looked at this course before.</source>
            <translation>No ha mirado antes este caso.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln anotación</numerusform>
                <numerusform>%Ln anotaciones</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln hallazgo</numerusform>
                <numerusform>%Ln hallazgos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln mensaje</numerusform>
                <numerusform>%Ln mensajes</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing new since you last looked, %1.</source>
            <translation>Nada nuevo desde que miró por última vez, %1.</translation>
        </message>
        <message>
            <source>New since you last looked, %1: %2.</source>
            <comment>when, list</comment>
            <translation>Nuevo desde que miró por última vez, %1: %2.</translation>
        </message>
        <message>
            <source>%1 %2 to %3</source>
            <comment>stream, low, high</comment>
            <translation>%1 %2 a %3</translation>
        </message>
        <message>
            <source>Too few entries for a forecast to the follow-up.</source>
            <translation>Muy pocas anotaciones para un pronóstico hasta el control.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1: every score 1 or below.</source>
            <translation>Esperado en el control, día %1: todos los valores en 1 o menos.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.</source>
            <comment>day, list</comment>
            <translation>Esperado en el control, día %1, en 8 de cada 10 casos así: %2; todo lo demás, 1 o menos.</translation>
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
            <translation>Tratamiento: %1. Ahora: %2</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Hallazgos</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Urgencia</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Qué y por qué</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Detectado</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Qué se hizo</translation>
        </message>
        <message>
            <source>Entries</source>
            <translation>Anotaciones</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Scores</source>
            <translation>Valores</translation>
        </message>
        <message>
            <source>Signs and words</source>
            <translation>Signos y palabras</translation>
        </message>
        <message>
            <source>Marks</source>
            <translation>Marcas</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>Mensajes</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>No hay.</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Llamadas anotadas en el caso</translation>
        </message>
    </context>
    <context>
        <name>PlanBeside</name>
        <message>
            <source>The plan</source>
            <translation>El plan</translation>
        </message>
        <message>
            <source>Make this the plan</source>
            <translation>Tomar esto como plan</translation>
        </message>
        <message>
            <source>Keep this as the plan</source>
            <translation>Conservar como plan</translation>
        </message>
        <message>
            <source>It stays as it is while you change what is done.</source>
            <translation>Se queda como está mientras usted cambia lo que se hace.</translation>
        </message>
        <message>
            <source>Drop the plan</source>
            <translation>Descartar el plan</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DesksBoard</name>
        <message>
            <source>This desk, %1</source>
            <translation>Este puesto, %1</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Puesto %1</translation>
        </message>
        <message>
            <source>Holds the clinic's root key: may add and shut out desks, and link phones</source>
            <translation>Tiene la clave raíz de la clínica: puede añadir y excluir puestos, y vincular teléfonos</translation>
        </message>
        <message>
            <source>Reads and writes; links no phones and adds no desks</source>
            <translation>Lee y escribe; no vincula teléfonos ni añade puestos</translation>
        </message>
        <message>
            <source>Nothing from it has arrived here yet</source>
            <translation>Aún no ha llegado aquí nada de este puesto</translation>
        </message>
        <message>
            <source>Last wrote: %1</source>
            <translation>Escribió por última vez: %1</translation>
        </message>
        <message>
            <source>Shut out desk %1?</source>
            <translation>¿Excluir el puesto %1?</translation>
        </message>
        <message>
            <source>Begin a fresh key?</source>
            <translation>¿Empezar una clave nueva?</translation>
        </message>
        <message>
            <source>For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its passphrase. This cannot be undone: a desk that is found again must be set up anew.</source>
            <translation>Para un puesto perdido, robado o cedido. Desde la próxima vez que los teléfonos y puestos consulten el servidor, nadie acepta ya nada de ese puesto, y este no puede leer lo que se escriba desde entonces. Lo que ya contiene se queda en él, tras su frase de acceso. Esto no se puede deshacer: un puesto que se recupere debe configurarse de nuevo.</translation>
        </message>
        <message>
            <source>Shut it out</source>
            <translation>Excluir</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Empezar una clave nueva</translation>
        </message>
        <message>
            <source>A fresh key holds from the next time each phone asks the hub.</source>
            <translation>La clave nueva vale desde la próxima vez que cada teléfono consulte el servidor.</translation>
        </message>
        <message>
            <source>Phone %1</source>
            <translation>Teléfono %1</translation>
        </message>
        <message>
            <source>%1: the hub refuses it, said %2</source>
            <translation>%1: el servidor lo rechaza, lo confirmó %2</translation>
        </message>
        <message>
            <source>%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2</source>
            <translation>%1: fue sustituido; se avisará al servidor cuando haya dicho qué conserva todavía, a más tardar %2</translation>
        </message>
        <message>
            <source>%1: the hub has not been told yet, and may still let it in. It is told at every sync.</source>
            <translation>%1: el servidor aún no lo sabe y puede seguir admitiéndolo. Se le avisa en cada sincronización.</translation>
        </message>
        <message>
            <source>Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it can refuse the desk by this number: %1. If it held the clinic&apos;s root key, whoever opens it can still sign as the clinic: then set up a new clinic.</source>
            <translation>Excluido. Se avisa al servidor en la próxima sincronización; abajo consta cuándo lo ha aceptado. Si no lo hace, quien lo gestiona puede rechazar el puesto con este número: %1. Si tenía la clave raíz de la clínica, quien lo abra puede seguir firmando como la clínica: cree entonces una clínica nueva.</translation>
        </message>
        <message>
            <source>Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.</source>
            <translation>Los pacientes sellan lo que escriben con una clave nueva desde la próxima vez que sus teléfonos consulten el servidor. Lo escrito antes sigue siendo legible aquí. Cada treinta días empieza una por sí sola; conviene otra cuando alguien ha visto una frase de acceso.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ApplyBoard</name>
        <message>
            <source>This desk has a clinic of its own already. Only a new, empty one can join.</source>
            <translation>Este puesto ya tiene su propia clínica. Solo puede unirse uno nuevo y vacío.</translation>
        </message>
        <message>
            <source>Type the hub's address as well: it stands under the code.</source>
            <translation>Teclee también la dirección del servidor: está bajo el código.</translation>
        </message>
        <message>
            <source>That is not such a code: compare it letter by letter with the other screen.</source>
            <translation>No es un código de este tipo: compárelo letra por letra con la otra pantalla.</translation>
        </message>
        <message>
            <source>This computer has no way to a hub.</source>
            <translation>Este ordenador no puede llegar a ningún servidor.</translation>
        </message>
        <message>
            <source>Somebody else has used this code. Ask for a new one, out of other people's sight.</source>
            <translation>Otra persona ha usado este código. Pida uno nuevo, fuera de la vista de otros.</translation>
        </message>
        <message>
            <source>Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.</source>
            <translation>Quien respondió no es el hub de la clínica. No se unió nada. Compare la dirección y avise a la clínica.</translation>
        </message>
        <message>
            <source>The hub does not answer. It is asked again by itself.</source>
            <translation>El servidor no responde. Se volverá a consultar automáticamente.</translation>
        </message>
        <message>
            <source>This desk belongs to the clinic</source>
            <translation>Este puesto pertenece a la clínica</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Compare los números</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Unirse a los demás puestos de la clínica</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Consultando el servidor</translation>
        </message>
        <message>
            <source>The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.</source>
            <translation>Las claves de la clínica están aquí, y ha empezado a llegar lo que escribieron pacientes y compañeros. Indique quién está en este puesto.</translation>
        </message>
        <message>
            <source>The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, have asked the hub.</source>
            <translation>Las claves de la clínica están aquí. Lo que escribieron pacientes y compañeros llega cuando el otro puesto, y después este, hayan consultado el servidor.</translation>
        </message>
        <message>
            <source>Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.</source>
            <translation>Lea estas seis cifras en voz alta. Solo si el otro puesto muestra las mismas puede alguien confirmar allí.</translation>
        </message>
        <message>
            <source>At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.</source>
            <translation>En un puesto que tenga la clave raíz de la clínica, abra Clínica, Puestos, y añada un puesto. Muestra un código y la dirección del servidor.</translation>
        </message>
        <message>
            <source>Leave both programs open.</source>
            <translation>Deje ambos programas abiertos.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message>
            <source>There is a recovery code. It is not stored here, only on your paper.</source>
            <translation>Hay un código de recuperación. No está guardado aquí, solo en su papel.</translation>
        </message>
        <message>
            <source>There is no recovery code yet: whoever loses the passphrase loses this vault.</source>
            <translation>Aún no hay código de recuperación: quien pierda la frase de acceso pierde este almacén cifrado.</translation>
        </message>
        <message>
            <source>The passphrase is being changed.</source>
            <translation>Se está cambiando la frase de acceso.</translation>
        </message>
        <message>
            <source>The two new ones are not the same.</source>
            <translation>Las dos nuevas no son iguales.</translation>
        </message>
        <message>
            <source>From now on only the new passphrase opens this desk.</source>
            <translation>Desde ahora solo la nueva frase de acceso abre este puesto.</translation>
        </message>
        <message>
            <source>A recovery code is being made.</source>
            <translation>Se está creando un código de recuperación.</translation>
        </message>
        <message>
            <source>From the paper: group %L1 of %L2</source>
            <translation>Del papel: grupo %L1 de %L2</translation>
        </message>
        <message>
            <source>That is not this group. Look at the paper again. If it is not there, show the code once more.</source>
            <translation>Ese no es el grupo. Mire el papel otra vez. Si no está ahí, muestre el código otra vez.</translation>
        </message>
        <message>
            <source>Keep the paper where only the clinic finds it, not beside this computer.</source>
            <translation>Guarde el papel donde solo la clínica lo encuentre, no junto a este ordenador.</translation>
        </message>
        <message>
            <source>Where to put the backup</source>
            <translation>Dónde poner la copia de seguridad</translation>
        </message>
        <message>
            <source>The backup is being made, opened and compared. This may take a minute.</source>
            <translation>Se está creando, abriendo y comparando la copia de seguridad. Puede tardar un minuto.</translation>
        </message>
        <message>
            <source>A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: today's passphrase opens it, also after a change.</source>
            <translation>Hay una copia de seguridad en %1 (%2). Se volvió a abrir y se comparó: está todo. Sigue cifrada: la abre la frase de acceso de hoy, también después de un cambio.</translation>
        </message>
        <message>
            <source>There is a file of that name. A backup is never written over another: choose a new name.</source>
            <translation>Ya hay un archivo con ese nombre. Una copia de seguridad nunca se escribe sobre otra: elija un nombre nuevo.</translation>
        </message>
        <message>
            <source>Everything is being read and compared.</source>
            <translation>Se está leyendo y comparando todo.</translation>
        </message>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>La nueva es demasiado corta: al menos %Ln carácter.</numerusform>
                <numerusform>La nueva es demasiado corta: al menos %Ln caracteres.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>Íntegro: %Ln registro escrito, en su lugar, y lo que se muestra se deriva de él.</numerusform>
                <numerusform>Íntegro: %Ln registros escritos, cada uno en su lugar, y lo que se muestra se deriva de ellos.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>Se encontró %Ln fallo. No registre nada más aquí, deje este ordenador como está y restaure la última copia de seguridad. Es: %1</numerusform>
                <numerusform>Se encontraron %Ln fallos. No registre nada más aquí, deje este ordenador como está y restaure la última copia de seguridad. El primero: %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Last backup of this desk: %1.</source>
            <translation>Última copia de seguridad de este puesto: %1.</translation>
        </message>
        <message>
            <source>No backup of this desk was made yet.</source>
            <translation>Aún no se ha hecho ninguna copia de seguridad de este puesto.</translation>
        </message>
        <message>
            <source>No backup of this desk since %1.</source>
            <translation>Sin copia de seguridad de este puesto desde el %1.</translation>
        </message>
        <message>
            <source>If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.</source>
            <translation>Si este ordenador falla, puede perderse lo escrito aquí. Haga una copia de seguridad y guárdela en otro lugar.</translation>
        </message>
        <message>
            <source>If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.</source>
            <translation>Si este ordenador falla, puede perderse lo escrito aquí desde entonces. Haga una copia de seguridad y guárdela en otro lugar.</translation>
        </message>
    </context>
    <context>
        <name>DesksPage</name>
        <message>
            <source>Desks</source>
            <translation>Puestos</translation>
        </message>
        <message>
            <source>Computers that share this clinic. Each has its own passphrase.</source>
            <translation>Ordenadores que comparten esta clínica. Cada uno tiene su propia frase de acceso.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Volver a la clínica</translation>
        </message>
        <message>
            <source>Number by which the hub knows it</source>
            <translation>Número con el que el servidor lo conoce</translation>
        </message>
        <message>
            <source>Shut out: lost or given away</source>
            <translation>Excluir: perdido o cedido</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can add or shut out desks.</source>
            <translation>Solo un puesto que tenga la clave raíz de la clínica puede añadir o excluir puestos.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Añadir un puesto</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Empezar una clave nueva</translation>
        </message>
    </context>
    <context>
        <name>ApplyPage</name>
        <message>
            <source>The code on the other screen</source>
            <translation>El código de la otra pantalla</translation>
        </message>
        <message>
            <source>The hub's address under it</source>
            <translation>La dirección del servidor, debajo</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Seis cifras: %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Unirse</translation>
        </message>
        <message>
            <source>Say who is here</source>
            <translation>Indicar quién está aquí</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Consultar el servidor</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Volver a la clínica</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
    </context>
    <context>
        <name>KeepPage</name>
        <message>
            <source>Backup and keys</source>
            <translation>Copia de seguridad y claves</translation>
        </message>
        <message>
            <source>A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.</source>
            <translation>Un ordenador puede ser robado, averiarse o quemarse. Lo que no esté entonces en una copia en otro lugar se pierde.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Volver a la clínica</translation>
        </message>
        <message>
            <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
            <translation>Escríbalo en papel. Solo se muestra ahora. Los códigos anteriores ya no sirven.</translation>
        </message>
        <message>
            <source>It is written down</source>
            <translation>Ya está escrito</translation>
        </message>
        <message>
            <source>Passphrase of this desk, for each of these</source>
            <translation>Frase de acceso de este puesto, para todo lo de aquí</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Copia de seguridad</translation>
        </message>
        <message>
            <source>One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.</source>
            <translation>Un archivo cifrado. Póngalo en otro soporte, en otro lugar, al menos una vez por semana; pruébelo dos veces al año.</translation>
        </message>
        <message>
            <source>Make a backup</source>
            <translation>Crear una copia de seguridad</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Comprobación</translation>
        </message>
        <message>
            <source>Reads everything, and whether each thing is where it was written.</source>
            <translation>Lee todo y comprueba que cada cosa está donde se escribió.</translation>
        </message>
        <message>
            <source>Check this vault</source>
            <translation>Comprobar este almacén cifrado</translation>
        </message>
        <message>
            <source>Recovery code</source>
            <translation>Código de recuperación</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Crear un código nuevo</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Una nueva frase de acceso</translation>
        </message>
        <message>
            <source>Change the passphrase</source>
            <translation>Cambiar la frase de acceso</translation>
        </message>
        <message>
            <source>The new one</source>
            <translation>La nueva</translation>
        </message>
        <message>
            <source>The new one once more</source>
            <translation>La nueva otra vez</translation>
        </message>
    </context>
    <context>
        <name>NoticesPage</name>
        <message>
            <source>About Ebbline</source>
            <translation>Acerca de Ebbline</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Versión %1</translation>
        </message>
        <message>
            <source>Back to the settings</source>
            <translation>Volver a los ajustes</translation>
        </message>
        <message>
            <source>Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.</source>
            <translation>Ebbline es software libre bajo la GPL 3. No es un producto sanitario certificado y no sustituye a ninguna exploración ni a un servicio de urgencias.</translation>
        </message>
        <message>
            <source>The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.</source>
            <translation>Este programa está hecho con el trabajo de otros. Aquí se ve qué usa y quién lo hizo. Los textos de las licencias están en inglés.</translation>
        </message>
        <message>
            <source>The parts</source>
            <translation>Las partes</translation>
        </message>
        <message>
            <source>The licences</source>
            <translation>Las licencias</translation>
        </message>
        <message>
            <source>Shows the text</source>
            <translation>Muestra el texto</translation>
        </message>
    </context>
    <context>
        <name>LicencePage</name>
        <message>
            <source>Back to all parts</source>
            <translation>Volver a todas las partes</translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message>
            <source>Patient registered</source>
            <translation>Paciente registrado</translation>
        </message>
        <message>
            <source>Treatment recorded</source>
            <translation>Tratamiento registrado</translation>
        </message>
        <message>
            <source>Care plan sent to the phone</source>
            <translation>Plan de cuidados enviado al teléfono</translation>
        </message>
        <message>
            <source>Finding: %1</source>
            <translation>Hallazgo: %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>%Ln anotación abierta</numerusform>
                <numerusform>%Ln anotaciones abiertas</numerusform>
            </translation>
        </message>
        <message>
            <source>Message written</source>
            <translation>Mensaje escrito</translation>
        </message>
        <message>
            <source>Message read</source>
            <translation>Mensaje leído</translation>
        </message>
        <message>
            <source>Follow-up recorded</source>
            <translation>Control registrado</translation>
        </message>
        <message>
            <source>Protocol signed</source>
            <translation>Protocolo firmado</translation>
        </message>
        <message>
            <source>Clinic's particulars changed</source>
            <translation>Datos de la clínica cambiados</translation>
        </message>
        <message>
            <source>Limit of lidocaine set</source>
            <translation>Límite de lidocaína fijado</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Teléfono vinculado</translation>
        </message>
        <message>
            <source>Usual range learned</source>
            <translation>Margen habitual calculado</translation>
        </message>
        <message>
            <source>Usual range put into use</source>
            <translation>Margen habitual puesto en uso</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Puesto %1</translation>
        </message>
        <message>
            <source>Eyes marked in a photograph</source>
            <translation>Ojos marcados en una foto</translation>
        </message>
        <message>
            <source>Desk added</source>
            <translation>Puesto añadido</translation>
        </message>
        <message>
            <source>Desk shut out</source>
            <translation>Puesto excluido</translation>
        </message>
        <message>
            <source>Lost phone ended</source>
            <translation>Teléfono perdido excluido</translation>
        </message>
        <message>
            <source>Phone replaced</source>
            <translation>Teléfono sustituido</translation>
        </message>
        <message>
            <source>Fresh key begun</source>
            <translation>Clave nueva empezada</translation>
        </message>
        <message>
            <source>Numbers to call changed</source>
            <translation>Números de teléfono cambiados</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1, con %2</translation>
        </message>
        <message>
            <source>Newer program asked for</source>
            <translation>Se pidió un programa más nuevo</translation>
        </message>
        <message>
            <source>Finding: taken back what was noted</source>
            <translation>Hallazgo: se retiró lo anotado</translation>
        </message>
        <message>
            <source>Word to who takes over</source>
            <translation>Nota para el relevo</translation>
        </message>
        <message>
            <source>Backup made</source>
            <translation>Copia de seguridad hecha</translation>
        </message>
        <message>
            <source>Passphrase of this desk changed</source>
            <translation>Frase de acceso de este puesto cambiada</translation>
        </message>
        <message>
            <source>Recovery code made</source>
            <translation>Código de recuperación hecho</translation>
        </message>
        <message>
            <source>Usual range taken from a file</source>
            <translation>Margen habitual tomado de un archivo</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment put in</source>
            <translation>Foto de justo después del tratamiento añadida</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment taken back</source>
            <translation>Foto de justo después del tratamiento retirada</translation>
        </message>
        <message>
            <source>Role of %1: %2</source>
            <comment>person, role</comment>
            <translation>Función de %1: %2</translation>
        </message>
        <message>
            <source>Patient&apos;s name, number or language corrected</source>
            <translation>Nombre, número o idioma del paciente corregido</translation>
        </message>
        <message>
            <source>Call noted on the course</source>
            <translation>Llamada anotada en el caso</translation>
        </message>
        <message>
            <source>Treatment corrected</source>
            <translation>Tratamiento corregido</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>%Ln línea</numerusform>
                <numerusform>%Ln líneas</numerusform>
            </translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Guardado como %1. El archivo no está cifrado: custódielo como las historias clínicas.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>El archivo no se puede escribir ahí. Elija otra carpeta.</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Guardar la lista</translation>
        </message>
        <message>
            <source>%1; the newest %2 are shown</source>
            <translation>%1; se muestran las %2 más recientes</translation>
        </message>
    </context>
    <context>
        <name>TracesPage</name>
        <message>
            <source>Who did what</source>
            <translation>Quién hizo qué</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Guardar la lista</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Volver a la clínica</translation>
        </message>
        <message>
            <source>Search: a name, an act, a day</source>
            <translation>Buscar: un nombre, un acto, un día</translation>
        </message>
        <message>
            <source>No line says that.</source>
            <translation>Ninguna línea dice eso.</translation>
        </message>
        <message>
            <source>Nothing has been done here yet.</source>
            <translation>Aquí aún no se ha hecho nada.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Quién</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Paciente</translation>
        </message>
        <message>
            <source>What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.</source>
            <translation>Lo que se escribe en un puesto deja una línea: pacientes, tratamientos, hallazgos, mensajes, protocolos, y lo que se hizo con claves, copias de seguridad, puestos y teléfonos. Abrir anotaciones también; mirar un caso, no; tampoco una copia de seguridad, una frase de acceso o un código de recuperación que se terminaron después de bloquear el puesto, si el programa se cerró antes de abrirlo de nuevo. Donde no se anotó un nombre, figura el puesto.</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Mostrar líneas anteriores</translation>
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
            <translation>apósitos fuera</translation>
        </message>
        <message>
            <source>called</source>
            <translation>llamada</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>sin contacto</translation>
        </message>
        <message>
            <source>visit forward</source>
            <translation>visita adelantada</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>cerrado</translation>
        </message>
        <message>
            <source>follow-up</source>
            <translation>control</translation>
        </message>
        <message>
            <source>reopened</source>
            <translation>reabierto</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>visto</translation>
        </message>
        <message>
            <source>taken on</source>
            <translation>asumido</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>abierta</translation>
        </message>
        <message>
            <source>entry without scores</source>
            <translation>anotación sin valores</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>day, what happened</comment>
            <translation>%1: %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln recordatorio hecho</numerusform>
                <numerusform>%Ln recordatorios hechos</numerusform>
            </translation>
        </message>
        <message>
            <source>photos</source>
            <translation>fotos</translation>
        </message>
        <message>
            <source>she rang</source>
            <translation>llamó ella</translation>
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
            <translation>No hay aquí ninguna foto de esta vista.</translation>
        </message>
        <message>
            <source>There is only one photograph of this view.</source>
            <translation>Solo hay una foto de esta vista.</translation>
        </message>
        <message>
            <source>Earlier: %1, %2</source>
            <comment>day, time</comment>
            <translation>Más antigua: %1, %2</translation>
        </message>
        <message>
            <source>Later: %1, %2</source>
            <comment>day, time</comment>
            <translation>Más reciente: %1, %2</translation>
        </message>
        <message>
            <source>Eyes marked %1</source>
            <translation>Ojos marcados: %1</translation>
        </message>
        <message>
            <source>Eyes marked by %1, %2</source>
            <comment>person, time</comment>
            <translation>Ojos marcados por %1, %2</translation>
        </message>
        <message>
            <source>%1. %2. %3</source>
            <comment>which one and when, view, where the sides are</comment>
            <translation>%1. %2. %3</translation>
        </message>
        <message>
            <source>Being opened</source>
            <translation>Abriéndose</translation>
        </message>
        <message>
            <source>Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.</source>
            <translation>Alineadas por los ojos: la más reciente está girada, ajustada de tamaño y desplazada, sin deformar ni reflejar.</translation>
        </message>
        <message>
            <source>While you mark, both are shown as they were taken.</source>
            <translation>Mientras marca, ambas se muestran tal como se tomaron.</translation>
        </message>
        <message>
            <source>Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.</source>
            <translation>Se muestran tal como se tomaron, quizá no a la misma escala. Marque los ojos en ambas para alinearlas.</translation>
        </message>
        <message>
            <source>The two marks are too close together to turn a picture by. Mark the middle of each pupil.</source>
            <translation>Las dos marcas están demasiado juntas para girar una imagen a partir de ellas. Marque el centro de cada pupila.</translation>
        </message>
        <message>
            <source>Both eyes are marked. Keep them, or mark again: the nearer mark moves.</source>
            <translation>Ambos ojos están marcados. Conserve las marcas o marque otra vez: se mueve la marca más cercana.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil: the one on the left of the picture.</source>
            <translation>Marque el centro de la pupila derecha del paciente: la que está a la izquierda en la imagen.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil.</source>
            <translation>Marque el centro de la pupila derecha del paciente.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil: the one on the right of the picture.</source>
            <translation>Ahora la pupila izquierda del paciente: la que está a la derecha en la imagen.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil.</source>
            <translation>Ahora la pupila izquierda del paciente.</translation>
        </message>
        <message>
            <source>The patient&apos;s left eye is marked to the left of the right one. If the picture is upright, the two are swapped.</source>
            <translation>El ojo izquierdo del paciente está marcado a la izquierda del ojo derecho. Si la imagen no está cabeza abajo, los dos están intercambiados.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 Cursor %2% across, %3% down. Space marks.</source>
            <comment>what to mark, shares of the picture</comment>
            <translation>%1 Cursor: %2 % desde la izquierda, %3 % desde arriba. Espacio marca.</translation>
        </message>
        <message>
            <source>Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.</source>
            <comment>view</comment>
            <translation>¿Retirar esta foto: %1, justo después del tratamiento? Todos los puestos de la clínica la borran y no vuelve.</translation>
        </message>
    </context>
    <context>
        <name>PhotoHalf</name>
        <message>
            <source>The one before</source>
            <translation>La anterior</translation>
        </message>
        <message>
            <source>The one after</source>
            <translation>La siguiente</translation>
        </message>
        <message>
            <source>Mark the eyes anew</source>
            <translation>Volver a marcar</translation>
        </message>
        <message>
            <source>Mark the eyes</source>
            <translation>Marcar los ojos</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>Retirarla</translation>
        </message>
    </context>
    <context>
        <name>PhotoMarking</name>
        <message>
            <source>Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.</source>
            <translation>Haga clic o toque, o mueva el cursor con las flechas (con Mayús, a pasos pequeños) y pulse Espacio. Cuadrado: ojo derecho. Círculo: ojo izquierdo.</translation>
        </message>
        <message>
            <source>Keep the marks</source>
            <translation>Conservar las marcas</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Leave without keeping</source>
            <translation>Salir sin conservar</translation>
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
            <translation>Las fotos del paciente aparecen aquí en cuanto el teléfono las envía. Tomarlas es decisión del paciente.</translation>
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
            <translation>Dos fotos de una misma vista, una junto a otra</translation>
        </message>
        <message>
            <source>Add the clinic's photographs</source>
            <translation>Añadir fotos de la clínica</translation>
        </message>
        <message>
            <source>From right after the treatment, with the clinic's own camera</source>
            <translation>De justo después del tratamiento, con la cámara de la propia clínica</translation>
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
            <translation>Como frente al paciente: la derecha del paciente, a la izquierda.</translation>
        </message>
        <message>
            <source>The patient&apos;s left side is towards the camera.</source>
            <translation>El lado izquierdo del paciente mira hacia la cámara.</translation>
        </message>
        <message>
            <source>The patient&apos;s right side is towards the camera.</source>
            <translation>El lado derecho del paciente mira hacia la cámara.</translation>
        </message>
        <message>
            <source>Beside an entry that has not arrived yet</source>
            <translation>Con una anotación que aún no ha llegado</translation>
        </message>
        <message>
            <source>Beside the entry of %1</source>
            <translation>Con la anotación de %1</translation>
        </message>
        <message>
            <source>Could not be opened</source>
            <translation>No se pudo abrir</translation>
        </message>
        <message>
            <source>Still arriving: %1 of %2 parts</source>
            <translation>Aún llegando: %1 de %2 partes</translation>
        </message>
        <message>
            <source>Taken back by the patient, %1</source>
            <translation>Retirada por el paciente, %1</translation>
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
                <numerusform>%Ln aún llegando</numerusform>
                <numerusform>%Ln aún llegando</numerusform>
            </translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <comment>views</comment>
            <translation>Fotos: %1</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>justo después del tratamiento</translation>
        </message>
        <message>
            <source>Put in by %1</source>
            <comment>person</comment>
            <translation>Añadida por %1</translation>
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
            <translation>Volver al caso</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Acercar</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>Alejar</translation>
        </message>
        <message>
            <source>Whole picture</source>
            <translation>Imagen entera</translation>
        </message>
        <message>
            <source>Zoom of both: %1</source>
            <translation>Zoom de ambas: %1</translation>
        </message>
        <message>
            <source>Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.</source>
            <translation>La luz, la distancia y la expresión varían de una foto a otra. Lo que parece un cambio puede deberse a ellas: compare con cautela y mire al paciente antes de decidir.</translation>
        </message>
    </context>
    <context>
        <name>CodeBack</name>
        <message>
            <source>One group of it, to be sure that the paper is right. After that the code is not shown any more.</source>
            <translation>Un grupo de él, para estar seguros de que el papel está bien. Después el código ya no se muestra.</translation>
        </message>
        <message>
            <source>It is on my paper</source>
            <translation>Está en mi papel</translation>
        </message>
        <message>
            <source>Show it once more</source>
            <translation>Mostrarlo otra vez</translation>
        </message>
    </context>
    <context>
        <name>IdleNotice</name>
        <message>
            <source>Stay open</source>
            <translation>Dejar abierto</translation>
        </message>
    </context>
    <context>
        <name>IdlePanel</name>
        <message>
            <source>Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.</source>
            <translation>Nadie ha usado el puesto desde hace un rato. Se bloquea en medio minuto. Lo empezado se conserva.</translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message>
            <source>The phone holds more from this desk than the desk does: the desk runs on older data.</source>
            <translation>El teléfono tiene más de este puesto que el propio puesto: el puesto trabaja con datos anteriores.</translation>
        </message>
        <message>
            <source>The phone sent two different histories: call, and do not rely on its entries.</source>
            <translation>El teléfono ha enviado dos historiales distintos: llame y no confíe en sus anotaciones.</translation>
        </message>
        <message>
            <source>A message of the phone is missing: the hub holds it back or lost it.</source>
            <translation>Falta un mensaje del teléfono: el servidor lo retiene o lo ha perdido.</translation>
        </message>
        <message>
            <source>Phone not heard of since %1: what was written there may not be here.</source>
            <translation>Sin noticias del teléfono desde %1: lo que se escribió allí puede no estar aquí.</translation>
        </message>
        <message>
            <source>Phone not heard of since it was linked.</source>
            <translation>Sin noticias del teléfono desde que se vinculó.</translation>
        </message>
        <message>
            <source>It has not confirmed what was sent to it, %1.</source>
            <comment>when it was sent</comment>
            <translation>El teléfono no ha confirmado lo que se le envió, %1.</translation>
        </message>
        <message>
            <source>That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.</source>
            <translation>Son más de %1 días: puede que el teléfono se haya perdido o ya no se use. Llame y, si hace falta, vincule de nuevo un teléfono.</translation>
        </message>
        <message>
            <source>it does not know this desk or the mailbox</source>
            <comment>why the hub takes nothing</comment>
            <translation>no conoce este puesto o el buzón</translation>
        </message>
        <message>
            <source>it holds something else under the same number</source>
            <comment>why the hub takes nothing</comment>
            <translation>tiene otra cosa con el mismo número</translation>
        </message>
        <message>
            <source>the mailbox is full</source>
            <comment>why the hub takes nothing</comment>
            <translation>el buzón está lleno</translation>
        </message>
        <message>
            <source>it is too large or unreadable for it</source>
            <comment>why the hub takes nothing</comment>
            <translation>le parece demasiado grande o no puede leerlo</translation>
        </message>
        <message>
            <source>The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.</source>
            <translation>El servidor no acepta lo que envía este puesto: %1. Se queda aquí y se intenta de nuevo. Avise a quien administra el servidor.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>%Ln mensaje del teléfono no se puede leer aquí. Llame y pregunte qué se escribió. Si sigue así, haga que se guarden en el teléfono los datos del diario (Ajustes, Mis datos). Solo después borre allí el diario y vincule de nuevo el teléfono.</numerusform>
                <numerusform>%Ln mensajes del teléfono no se pueden leer aquí. Llame y pregunte qué se escribió. Si sigue así, haga que se guarden en el teléfono los datos del diario (Ajustes, Mis datos). Solo después borre allí el diario y vincule de nuevo el teléfono.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>%Ln dato de esta evolución se escribió con un programa más nuevo y no se puede mostrar aquí. Actualice este puesto y llame hasta entonces.</numerusform>
                <numerusform>%Ln datos de esta evolución se escribieron con un programa más nuevo y no se pueden mostrar aquí. Actualice este puesto y llame hasta entonces.</numerusform>
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
            <translation>Dejarlo así</translation>
        </message>
    </context>
    <context>
        <name>GraveStep</name>
        <message>
            <source>Choose who stands by: this is for two people.</source>
            <translation>Elija quién acompaña: esto se hace entre dos personas.</translation>
        </message>
        <message>
            <source>Type the passphrase of this desk.</source>
            <translation>Escriba la frase de acceso de este puesto.</translation>
        </message>
    </context>
    <context>
        <name>StepFields</name>
        <message>
            <source>Passphrase of this desk, once more</source>
            <translation>Frase de acceso de este puesto, una vez más</translation>
        </message>
        <message>
            <source>Who stands by: this is for two people</source>
            <translation>Quién acompaña: esto se hace entre dos personas</translation>
        </message>
    </context>
    <context>
        <name>TreatmentWhen</name>
        <message>
            <source>When the treatment was</source>
            <translation>Cuándo fue el tratamiento</translation>
        </message>
        <message>
            <source>Day, year-month-day</source>
            <translation>Día, año-mes-día</translation>
        </message>
        <message>
            <source>Time, hours:minutes</source>
            <translation>Hora, horas:minutos</translation>
        </message>
        <message>
            <source>It was just now</source>
            <translation>Fue ahora mismo</translation>
        </message>
        <message>
            <source>It was then</source>
            <translation>Fue entonces</translation>
        </message>
        <message>
            <source>The days of the course count from here. Unless you change it, today&apos;s record takes the time at which you record it.</source>
            <translation>Los días del caso se cuentan desde aquí. Si no lo cambia, un registro de hoy toma la hora en que lo guarda.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPanel</name>
        <message>
            <source>The treatment</source>
            <translation>El tratamiento</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Correcciones del registro</translation>
        </message>
        <message>
            <source>Go on with the correction</source>
            <translation>Seguir con la corrección</translation>
        </message>
        <message>
            <source>Correct the treatment</source>
            <translation>Corregir el tratamiento</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Lo escrito antes queda registrado</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln espera demasiado</numerusform>
                <numerusform>%Ln esperan demasiado</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln en la lista espera demasiado.</numerusform>
                <numerusform>%Ln en la lista esperan demasiado.</numerusform>
            </translation>
        </message>
        <message>
            <source>Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.</source>
            <translation>Bloqueado desde: %1. Mientras está bloqueado, este puesto no consulta el servidor: lo que llegue ahora se verá al desbloquearlo.</translation>
        </message>
        <message>
            <source>Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.</source>
            <translation>Aquí no son posibles los avisos en el escritorio: este ordenador no ofrece un servicio para ellos. Solo avisa el puesto abierto.</translation>
        </message>
        <message>
            <source>The computer did not take the last notice. Only the open desk tells for sure.</source>
            <translation>El ordenador no aceptó el último aviso. Con seguridad solo avisa el puesto abierto.</translation>
        </message>
        <message>
            <source>When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.</source>
            <translation>Cuando hay que llamar ya a alguien, o alguien espera demasiado, aparece en el escritorio un aviso sin nombre. Un puesto bloqueado no recibe nada nuevo.</translation>
        </message>
        <message>
            <source>Somebody is to be called now. Open the desk.</source>
            <translation>Hay que llamar ya a alguien. Abra el puesto.</translation>
        </message>
        <message>
            <source>Clinic&apos;s desk</source>
            <translation>Puesto de la clínica</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Abrir el puesto</translation>
        </message>
    </context>
    <context>
        <name>FollowUpAnswer</name>
        <message>
            <source>What became of it?</source>
            <translation>¿Qué resultó de esto?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueFilter</name>
        <message>
            <source>Not written down</source>
            <translation>No anotado</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, count</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Anybody</source>
            <translation>Cualquiera</translation>
        </message>
        <message>
            <source>Anybody or nobody</source>
            <translation>Alguien o nadie</translation>
        </message>
        <message>
            <source>Any day</source>
            <translation>Cualquier día</translation>
        </message>
        <message>
            <source>After day %1</source>
            <translation>Después del día %1</translation>
        </message>
        <message>
            <source>Days %1 to %2</source>
            <translation>Días %1 a %2</translation>
        </message>
        <message>
            <source>Threads by %1</source>
            <translation>Hilos de %1</translation>
        </message>
        <message>
            <source>Taken by %1</source>
            <translation>A cargo de %1</translation>
        </message>
    </context>
    <context>
        <name>FilterPanel</name>
        <message>
            <source>Filter the queue</source>
            <translation>Filtrar la cola</translation>
        </message>
        <message>
            <source>Back to the queue</source>
            <translation>Volver a la cola</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Hilos colocados por</translation>
        </message>
        <message>
            <source>Row taken by</source>
            <translation>Fila a cargo de</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Día de recuperación</translation>
        </message>
        <message>
            <source>It holds until the desk is locked or somebody else is named.</source>
            <translation>Vale hasta que se bloquee el puesto o se nombre a otra persona.</translation>
        </message>
    </context>
    <context>
        <name>FilterBar</name>
        <message>
            <source>Takes this filter off</source>
            <translation>Quita este filtro</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Mostrarlas</translation>
        </message>
        <message>
            <source>Takes search and filters off</source>
            <translation>Quita la búsqueda y los filtros</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UsualBoard</name>
        <message>
            <source>Dressings</source>
            <translation>Apósitos</translation>
        </message>
        <message>
            <source>Please write an entry</source>
            <translation>Pedir una anotación</translation>
        </message>
        <message>
            <source>Come earlier</source>
            <translation>Venir antes</translation>
        </message>
        <message>
            <source>Please call us</source>
            <translation>Pedir una llamada</translation>
        </message>
        <message>
            <source>Thank you</source>
            <translation>Gracias</translation>
        </message>
        <message>
            <source>It is not known which language the patient reads: choose it.</source>
            <translation>No se sabe qué idioma lee la paciente: elíjalo.</translation>
        </message>
        <message>
            <source>The patient was registered with %1.</source>
            <comment>a language</comment>
            <translation>La paciente se registró con %1.</translation>
        </message>
        <message>
            <source>The patient reads, in %1</source>
            <comment>a language</comment>
            <translation>La paciente lee, en %1</translation>
        </message>
        <message>
            <source>A call is due. A message may be read too late: call first.</source>
            <translation>Hay que llamar. Un mensaje puede leerse demasiado tarde: llame primero.</translation>
        </message>
    </context>
    <context>
        <name>UsualPanel</name>
        <message>
            <source>Usual messages</source>
            <translation>Mensajes habituales</translation>
        </message>
        <message>
            <source>Language of the patient</source>
            <translation>Idioma de la paciente</translation>
        </message>
        <message>
            <source>In your language</source>
            <translation>En su idioma</translation>
        </message>
        <message>
            <source>Put it into the message</source>
            <translation>Ponerlo en el mensaje</translation>
        </message>
        <message>
            <source>It can be changed there before it is sent</source>
            <translation>Allí se puede cambiar antes de enviarlo</translation>
        </message>
    </context>
    <context>
        <name>EntryLink</name>
        <message>
            <source>Shows the entry behind it</source>
            <translation>Muestra la anotación que hay detrás</translation>
        </message>
    </context>
    <context>
        <name>CallVisit</name>
        <message>
            <source>The visit</source>
            <translation>La visita</translation>
        </message>
        <message>
            <source>New day, year-month-day</source>
            <translation>Nuevo día, año-mes-día</translation>
        </message>
        <message>
            <source>Time, if one is agreed</source>
            <translation>Hora, si se acordó</translation>
        </message>
    </context>
    <context>
        <name>CurveBox</name>
        <message>
            <source>Score, points of 10</source>
            <translation>Puntuación, puntos de 10</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Días desde el tratamiento</translation>
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
            <translation>No hay ninguna impresora instalada en este equipo. Instale una o guarde las páginas como archivo.</translation>
        </message>
        <message>
            <source>Sent to %1. Fetch it there; this desk wrote no file.</source>
            <translation>Enviado a %1. Recójalo allí; este puesto no escribió ningún archivo.</translation>
        </message>
        <message>
            <source>The printer did not take it. Look whether it is on and has paper, then print again.</source>
            <translation>La impresora no lo aceptó. Mire si está encendida y tiene papel, e imprima de nuevo.</translation>
        </message>
    </context>
    <context>
        <name>Roles</name>
        <message>
            <source>Recording treatments and follow-ups</source>
            <translation>Registrar tratamientos y controles</translation>
        </message>
        <message>
            <source>Closing a finding</source>
            <translation>Cerrar un hallazgo</translation>
        </message>
        <message>
            <source>Signing a protocol, a usual range or a limit</source>
            <translation>Firmar un protocolo, un margen habitual o un límite</translation>
        </message>
        <message>
            <source>Linking and ending patients&apos; phones</source>
            <translation>Vincular y excluir teléfonos</translation>
        </message>
        <message>
            <source>Adding and shutting out desks, fresh keys and the hub</source>
            <translation>Añadir y excluir puestos, claves nuevas y el servidor</translation>
        </message>
        <message>
            <source>Changing the numbers that patients call</source>
            <translation>Cambiar los números a los que se llama</translation>
        </message>
        <message>
            <source>Naming people and giving roles</source>
            <translation>Nombrar personas y dar funciones</translation>
        </message>
        <message>
            <source>Backups, passphrase and saving who did what</source>
            <translation>Copias de seguridad, frase de acceso y guardar quién hizo qué</translation>
        </message>
        <message>
            <source>The practice&apos;s figures</source>
            <translation>Las cifras de la clínica</translation>
        </message>
        <message>
            <source>In charge</source>
            <translation>Responsable</translation>
        </message>
        <message>
            <source>Practitioner</source>
            <translation>Profesional</translation>
        </message>
        <message>
            <source>Colleague on call</source>
            <translation>De guardia</translation>
        </message>
        <message>
            <source>Assistant</source>
            <translation>Asistencia</translation>
        </message>
        <message>
            <source>Keeper of the computers</source>
            <translation>Cuidado de los equipos</translation>
        </message>
        <message>
            <source>No role yet: may do everything.</source>
            <translation>Sin función todavía: puede hacerlo todo.</translation>
        </message>
        <message>
            <source>May do everything.</source>
            <translation>Puede hacerlo todo.</translation>
        </message>
        <message>
            <source>Treatments, follow-ups and closing findings; patients&apos; phones; the numbers that patients call; the practice&apos;s figures.</source>
            <translation>Tratamientos, controles y cierre de hallazgos; teléfonos; los números a los que se llama; las cifras de la clínica.</translation>
        </message>
        <message>
            <source>Closing findings; patients&apos; phones.</source>
            <translation>Cerrar hallazgos; teléfonos.</translation>
        </message>
        <message>
            <source>Patients&apos; phones.</source>
            <translation>Teléfonos.</translation>
        </message>
        <message>
            <source>Desks, keys and the hub; backups and passphrase; saving who did what.</source>
            <translation>Puestos, claves y servidor; copias de seguridad y frase de acceso; guardar quién hizo qué.</translation>
        </message>
        <message>
            <source>Say first who is at the desk.</source>
            <translation>Indique primero quién está en el puesto.</translation>
        </message>
        <message>
            <source>%1: nobody here has a role for that. Whoever is in charge can give one.</source>
            <translation>%1: aquí nadie tiene una función para eso. La persona responsable puede darla.</translation>
        </message>
        <message>
            <source>%1: for %2. Your role here: %3.</source>
            <comment>task, people, role</comment>
            <translation>%1: lo pueden hacer %2. Su función aquí: %3.</translation>
        </message>
        <message>
            <source>not allowed by the role at that time</source>
            <translation>no permitido por la función de entonces</translation>
        </message>
        <message>
            <source>Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.</source>
            <translation>Debe quedar alguien que pueda nombrar personas y dar funciones. Dé primero a otra persona la función «Responsable».</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::RoleBoard</name>
        <message>
            <source>%1: %2 from now on.</source>
            <comment>person, role</comment>
            <translation>%1: desde ahora, %2.</translation>
        </message>
        <message>
            <source>%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.</source>
            <comment>person, role</comment>
            <translation>%1, «%2» le quita el derecho a dar funciones. Solo otra persona que lo tenga puede devolverlo.</translation>
        </message>
    </context>
    <context>
        <name>RoleFields</name>
        <message>
            <source>People and roles</source>
            <translation>Personas y funciones</translation>
        </message>
        <message>
            <source>A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.</source>
            <translation>Una función es una regla de la casa y no una cerradura: aquí las personas son nombres tras una misma frase de acceso. A quien no puede hacer algo se le dice quién puede. Asumir y llamar a una paciente, anotarlo y reabrir un hallazgo puede hacerlo cualquiera.</translation>
        </message>
        <message>
            <source>Give that role</source>
            <translation>Dar esa función</translation>
        </message>
        <message>
            <source>Keep my role</source>
            <translation>Conservar mi función</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicPhotos</name>
        <message>
            <source>This picture does not open. Choose another.</source>
            <translation>Esta imagen no se puede abrir. Elija otra.</translation>
        </message>
        <message>
            <source>This picture is too large. Choose a smaller one.</source>
            <translation>Esta imagen es demasiado grande. Elija una más pequeña.</translation>
        </message>
        <message>
            <source>The desk reads JPEG and PNG pictures. Choose one of these.</source>
            <translation>Este programa lee imágenes JPEG y PNG. Elija una de estas.</translation>
        </message>
        <message>
            <source>This picture is too small. Choose a larger one.</source>
            <translation>Esta imagen es demasiado pequeña. Elija una más grande.</translation>
        </message>
        <message>
            <source>This picture is damaged. Choose another.</source>
            <translation>Esta imagen está dañada. Elija otra.</translation>
        </message>
        <message>
            <source>There are %1 from right after the treatment. That is the most. Take one back to add another.</source>
            <translation>Hay %1 fotos de justo después del tratamiento. Es el máximo. Retire una para añadir otra.</translation>
        </message>
        <message>
            <source>A photograph from right after the treatment</source>
            <translation>Una foto de justo después del tratamiento</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg)</source>
            <translation>Imágenes (*.png *.jpg *.jpeg)</translation>
        </message>
        <message>
            <source>Kept: %1, right after the treatment.</source>
            <comment>view</comment>
            <translation>Guardada: %1, justo después del tratamiento.</translation>
        </message>
    </context>
    <context>
        <name>TakeBackPhoto</name>
        <message>
            <source>Take it back</source>
            <translation>Retirarla</translation>
        </message>
        <message>
            <source>Keep the photograph</source>
            <translation>Conservar la foto</translation>
        </message>
    </context>
    <context>
        <name>ClinicPhotoForm</name>
        <message>
            <source>Right after the treatment: %1</source>
            <translation>Justo después del tratamiento: %1</translation>
        </message>
        <message>
            <source>Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.</source>
            <translation>Imágenes que tomó con la cámara de la propia clínica. Se quedan en los puestos de la clínica y nunca van a un teléfono. El lugar y la hora del archivo no se guardan.</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Vista</translation>
        </message>
        <message>
            <source>Getting the picture ready …</source>
            <translation>Preparando la imagen …</translation>
        </message>
        <message>
            <source>The photograph: %1</source>
            <translation>La foto: %1</translation>
        </message>
        <message>
            <source>Is it this patient? Is it the right side? Is it sharp?</source>
            <translation>¿Es este paciente? ¿Es el lado correcto? ¿Está nítida?</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>Conservarla</translation>
        </message>
        <message>
            <source>Not this one</source>
            <translation>Esta no</translation>
        </message>
        <message>
            <source>It is not kept</source>
            <translation>No se conserva</translation>
        </message>
        <message>
            <source>Choose a picture</source>
            <translation>Elegir una imagen</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Listo</translation>
        </message>
        <message>
            <source>Closes this form</source>
            <translation>Cierra este formulario</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolTaking</name>
        <message>
            <source>This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.</source>
            <translation>Este archivo es más grande de lo que puede ser un protocolo. No se cambió nada. Elija el archivo que guardó un puesto o que escribió calibrate.</translation>
        </message>
        <message>
            <source>This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.</source>
            <translation>Este archivo tiene una forma que este programa no conoce. No se cambió nada. Actualice el programa o pida el archivo hecho con la misma versión.</translation>
        </message>
        <message>
            <source>This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.</source>
            <translation>Este no es un archivo de protocolo correcto (%1). No se cambió nada. Elija otro archivo o pida que se escriba de nuevo; no lo corrija a mano.</translation>
        </message>
        <message>
            <source>Take a protocol from a file</source>
            <translation>Tomar un protocolo de un archivo</translation>
        </message>
        <message>
            <source>The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.</source>
            <translation>El archivo no se puede leer. No se cambió nada. Cópielo a este ordenador y elíjalo otra vez.</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <comment>protocol in a file, number</comment>
            <translation>%1, versión %2</translation>
        </message>
        <message>
            <source>Written %1 by %2.</source>
            <comment>when, program</comment>
            <translation>Escrito %1 por %2.</translation>
        </message>
        <message>
            <source>It does not say when it was written, nor by which program.</source>
            <translation>No dice cuándo se escribió ni con qué programa.</translation>
        </message>
        <message>
            <source>Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.</source>
            <translation>Sus umbrales se calibraron con %1, para un presupuesto de %2 falsas alertas por cada 100 casos sin complicaciones. Así lo dice el archivo; no está demostrado que lo respeten en esta clínica.</translation>
        </message>
        <message>
            <source>The hash of what is behind that range begins with %1.</source>
            <translation>El hash de lo que hay detrás de ese margen empieza por %1.</translation>
        </message>
        <message>
            <source>The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.</source>
            <translation>El archivo no está firmado: nada en él prueba quién lo escribió. Acéptelo solo de alguien a quien pueda preguntar.</translation>
        </message>
        <message>
            <source>Rule</source>
            <translation>Regla</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>En uso</translation>
        </message>
        <message>
            <source>In the file</source>
            <translation>En el archivo</translation>
        </message>
        <message>
            <source>No rule differs.</source>
            <translation>Ninguna regla es distinta.</translation>
        </message>
        <message>
            <source>All other rules are the same.</source>
            <translation>Todas las demás reglas son iguales.</translation>
        </message>
        <message>
            <source>It is the one in use.</source>
            <translation>Es el que está en uso.</translation>
        </message>
        <message>
            <source>It is known here as %1, and may be used. It comes into use when the draft is signed.</source>
            <translation>Aquí se conoce como %1 y se puede usar. Entra en uso cuando se firma el borrador.</translation>
        </message>
        <message>
            <source>It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.</source>
            <translation>No se puede tomar: no dice correctamente en qué se basa. El borrador conserva el margen habitual en uso y los umbrales que le corresponden.</translation>
        </message>
        <message>
            <source>A draft can be rehearsed with it, and not signed.</source>
            <translation>Con él se puede simular un borrador, pero no firmarlo.</translation>
        </message>
        <message>
            <source>It is kept as a version, and comes into use when the draft is signed.</source>
            <translation>Se guarda como versión y entra en uso cuando se firma el borrador.</translation>
        </message>
        <message>
            <source>A draft is there already. This one takes its place; &quot;Undo&quot; on the next page brings it back.</source>
            <translation>Ya hay un borrador. Este ocupa su lugar; «Deshacer» en la página siguiente lo recupera.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: what is taken carries a name.</source>
            <translation>Indique primero quién está en el puesto: lo que se toma lleva un nombre.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>El archivo no se puede escribir ahí. Elija otra carpeta.</translation>
        </message>
        <message>
            <source>Saved as %1. It holds the care plan in the clinic&apos;s own words, the rules and the usual range; no patient stands in it.</source>
            <translation>Guardado como %1. Contiene el plan de cuidados con el texto propio de la clínica, las reglas y el margen habitual; ningún paciente figura en él.</translation>
        </message>
        <message>
            <source>Save the protocol in use</source>
            <translation>Guardar el protocolo en uso</translation>
        </message>
        <message>
            <source>A draft is there already, and cannot be read. It stays as it is: this one is not kept.</source>
            <translation>Ya hay un borrador y no se puede leer. Queda como está: este no se guarda.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolFilePage</name>
        <message>
            <source>A protocol from a file</source>
            <translation>Un protocolo de un archivo</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Dejarlo</translation>
        </message>
        <message>
            <source>Nothing of the file is kept.</source>
            <translation>No se guarda nada del archivo.</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Qué es</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Qué genera un hallazgo</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Qué se pide al paciente</translation>
        </message>
        <message>
            <source>The care plan is the same.</source>
            <translation>El plan de cuidados es el mismo.</translation>
        </message>
        <message>
            <source>Take its care plan as well</source>
            <translation>Tomar también su plan de cuidados</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Qué se considera habitual</translation>
        </message>
        <message>
            <source>No course of this clinic is behind it: check it on all of ours</source>
            <translation>No se basa en ningún caso de esta clínica: comprobarlo con todos los nuestros</translation>
        </message>
        <message>
            <source>Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.</source>
            <translation>Si no, solo cuentan como no vistos los casos tratados después de calcularlo. Un margen de sus propios casos se calcula en Resultados, Margen habitual.</translation>
        </message>
        <message>
            <source>Make a draft of it</source>
            <translation>Hacer un borrador con él</translation>
        </message>
        <message>
            <source>It is rehearsed and signed like every other draft; nothing goes live before.</source>
            <translation>Se simula y se firma como cualquier borrador; antes no entra nada en uso.</translation>
        </message>
    </context>
    <context>
        <name>PastVisits</name>
        <message>
            <source>Fold them away</source>
            <translation>Plegarlas</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Mostrarlas</translation>
        </message>
    </context>
    <context>
        <name>PatientPanel</name>
        <message>
            <source>Record the correction</source>
            <translation>Registrar la corrección</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>Dejarlo así</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Teléfono para llamar al paciente</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Idioma del diario</translation>
        </message>
        <message>
            <source>Every desk of the clinic shows it from then on. The patient&apos;s phone is told nothing of it: she chooses the language there herself.</source>
            <translation>Desde entonces lo muestran todos los puestos de la clínica. Al teléfono de la paciente no se le dice nada: allí el idioma lo elige ella.</translation>
        </message>
    </context>
    <context>
        <name>PatientRecord</name>
        <message>
            <source>Correct name, number, language</source>
            <translation>Corregir nombre, número, idioma</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Lo escrito antes queda registrado</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PatientEditor</name>
        <message>
            <source>name until then: %1</source>
            <translation>nombre hasta entonces: %1</translation>
        </message>
        <message>
            <source>no number until then</source>
            <translation>sin número hasta entonces</translation>
        </message>
        <message>
            <source>number until then: %1</source>
            <translation>número hasta entonces: %1</translation>
        </message>
        <message>
            <source>language until then: %1</source>
            <translation>idioma hasta entonces: %1</translation>
        </message>
        <message>
            <source>as it was already</source>
            <translation>como ya estaba</translation>
        </message>
        <message>
            <source>somebody at another desk</source>
            <translation>alguien en otro puesto</translation>
        </message>
        <message>
            <source>Corrected %1 by %2: %3</source>
            <comment>when, who, what held until then</comment>
            <translation>Corregido %1 por %2: %3</translation>
        </message>
        <message>
            <source>Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.</source>
            <translation>Dos puestos corrigieron esto sin saber uno del otro. Donde ambos cambiaron lo mismo, vale lo posterior. Pregunte a la paciente qué es lo correcto.</translation>
        </message>
        <message>
            <source>Correct what is on record of %1</source>
            <translation>Corregir lo registrado de %1</translation>
        </message>
        <message>
            <source>%1 corrected this meanwhile: %2. Only what you change here is changed.</source>
            <comment>who, what held until then</comment>
            <translation>%1 lo corrigió mientras tanto: %2. Solo cambia lo que usted cambie aquí.</translation>
        </message>
        <message>
            <source>Corrected: %1</source>
            <comment>name</comment>
            <translation>Corregido: %1</translation>
        </message>
        <message>
            <source>It was corrected again meanwhile: nothing was taken back.</source>
            <translation>Mientras tanto se corrigió de nuevo: no se retiró nada.</translation>
        </message>
    </context>
    <context>
        <name>LastAct</name>
        <message>
            <source>%1 brought the visit forward, %2</source>
            <comment>person, when</comment>
            <translation>%1 adelantó la visita, %2</translation>
        </message>
        <message>
            <source>%1 spoke with her, %2</source>
            <comment>person, when</comment>
            <translation>%1 habló con ella, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2</source>
            <comment>person, when</comment>
            <translation>%1 llamó y no la localizó, %2</translation>
        </message>
        <message>
            <source>Taken by %1, %2</source>
            <comment>person, when</comment>
            <translation>Asumido por %1, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2, nothing noted since</source>
            <comment>person, when</comment>
            <translation>%1 llamó y no la localizó, %2; nada anotado desde entonces</translation>
        </message>
        <message>
            <source>%1 brought the visit forward %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 adelantó la visita hace %2; nada anotado desde entonces</translation>
        </message>
        <message>
            <source>%1 spoke with her %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 habló con ella hace %2; nada anotado desde entonces</translation>
        </message>
        <message>
            <source>Taken by %1 %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>Asumido por %1 hace %2; nada anotado desde entonces</translation>
        </message>
        <message>
            <source>She rang, and %1 answered, %2</source>
            <comment>person, when</comment>
            <translation>Llamó ella, atendió %1, %2</translation>
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
            <translation>Lo he visto</translation>
        </message>
        <message>
            <source>Your draft stays as it is</source>
            <translation>Su borrador queda como está</translation>
        </message>
        <message>
            <source>Why the record is corrected</source>
            <translation>Por qué se corrige el registro</translation>
        </message>
        <message>
            <source>What this changes</source>
            <translation>Qué cambia con esto</translation>
        </message>
        <message>
            <source>Nothing yet. Go through the steps and set right what is wrong.</source>
            <translation>Nada todavía. Recorra los pasos y corrija lo que esté mal.</translation>
        </message>
        <message>
            <source>The former record stays with the course. Whose treatment it is cannot be corrected here.</source>
            <translation>El registro anterior queda con el caso. De quién es el tratamiento no se puede corregir aquí.</translation>
        </message>
    </context>
</TS>
