<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
    <context>
        <name>BaselineLine</name>
        <message>
            <source>%1, right</source>
            <translation>%1, droite</translation>
        </message>
        <message>
            <source>%1, left</source>
            <translation>%1, gauche</translation>
        </message>
    </context>
    <context>
        <name>Charts</name>
        <message>
            <source>above the usual range (%1 to %2)</source>
            <translation>au-dessus de la plage habituelle (%1 à %2)</translation>
        </message>
        <message>
            <source>below the usual range (%1 to %2)</source>
            <translation>en dessous de la plage habituelle (%1 à %2)</translation>
        </message>
        <message>
            <source>inside the usual range (%1 to %2)</source>
            <translation>dans la plage habituelle (%1 à %2)</translation>
        </message>
        <message>
            <source>Pain</source>
            <translation>Douleur</translation>
        </message>
        <message>
            <source>Swelling</source>
            <translation>Gonflement</translation>
        </message>
        <message>
            <source>Bruising</source>
            <translation>Bleus</translation>
        </message>
        <message>
            <source>Tightness</source>
            <translation>Tension</translation>
        </message>
        <message>
            <source>Twinges</source>
            <translation>Élancements</translation>
        </message>
        <message>
            <source>Puckering</source>
            <translation>Creux</translation>
        </message>
        <message>
            <source>Numbness</source>
            <translation>Engourdissement</translation>
        </message>
        <message>
            <source>left</source>
            <translation>gauche</translation>
        </message>
        <message>
            <source>right</source>
            <translation>droite</translation>
        </message>
        <message>
            <source>%1, patient's left</source>
            <translation>%1, gauche du patient</translation>
        </message>
        <message>
            <source>%1, patient's right</source>
            <translation>%1, droite du patient</translation>
        </message>
        <message>
            <source>Usual range, 10th to 90th of 100 patients (%1): an assumption, no courses of this clinic behind it</source>
            <translation>Plage habituelle, du 10e au 90e sur 100 patients (%1) : une hypothèse, sans aucun suivi de cette clinique</translation>
        </message>
        <message>
            <source>%1: nothing recorded yet.</source>
            <translation>%1 : encore rien de noté.</translation>
        </message>
        <message>
            <source>Highest %1 on day %2.</source>
            <translation>Maximum %1 au jour %2.</translation>
        </message>
        <message>
            <source>Last %1 on day %2</source>
            <translation>Dernière valeur %1 au jour %2</translation>
        </message>
        <message>
            <source>, %1.</source>
            <translation>, %1.</translation>
        </message>
        <message>
            <source>Expected on day %1: %2 to %3, most likely %4.</source>
            <translation>Attendu au jour %1 : %2 à %3, le plus probable %4.</translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): too few, only %Ln course(s) behind it</source>
            <translation>
                <numerusform>Plage habituelle, du 10e au 90e sur 100 patients (%1) : base trop faible, %Ln suivi seulement</numerusform>
                <numerusform>Plage habituelle, du 10e au 90e sur 100 patients (%1) : base trop faible, %Ln suivis seulement</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Usual range, 10th to 90th of 100 patients (%1): from %Ln course(s), learned %2</source>
            <translation>
                <numerusform>Plage habituelle, du 10e au 90e sur 100 patients (%1) : tirée de %Ln suivi, établie le %2</numerusform>
                <numerusform>Plage habituelle, du 10e au 90e sur 100 patients (%1) : tirée de %Ln suivis, établie le %2</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %Ln score(s), day %2 to day %3.</source>
            <translation>
                <numerusform>%1 : %Ln valeur, du jour %2 au jour %3.</numerusform>
                <numerusform>%1 : %Ln valeurs, du jour %2 au jour %3.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ClinicPage</name>
        <message>
            <source>Clinic</source>
            <translation>Clinique</translation>
        </message>
        <message>
            <source>The numbers stand on every warning, even on a locked phone without network.</source>
            <translation>Ces numéros figurent sur chaque alerte, même sur un téléphone verrouillé et sans réseau.</translation>
        </message>
        <message>
            <source>Name of the clinic</source>
            <translation>Nom de la clinique</translation>
        </message>
        <message>
            <source>Phone during the day</source>
            <translation>Téléphone en journée</translation>
        </message>
        <message>
            <source>On call, if the clinic does not answer</source>
            <translation>Astreinte, si la clinique ne répond pas</translation>
        </message>
        <message>
            <source>Emergency number of your country</source>
            <translation>Numéro d’urgence de votre pays</translation>
        </message>
        <message>
            <source>People at the desk, one name a line</source>
            <translation>Personnes au poste, un nom par ligne</translation>
        </message>
        <message>
            <source>Hub, address and port</source>
            <translation>Hub, adresse et port</translation>
        </message>
        <message>
            <source>Fingerprint of the hub's key, from whoever runs it</source>
            <translation>Empreinte de la clé du hub, fournie par son exploitant</translation>
        </message>
        <message>
            <source>Missing: %1</source>
            <translation>Manque : %1</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Enregistrer</translation>
        </message>
        <message>
            <source>This clinic's key: whoever runs the hub admits it by this</source>
            <translation>Clé de cette clinique : c’est par elle que l’exploitant du hub l’admet</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <translation>Copier la clé</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Rejoindre les autres postes</translation>
        </message>
        <message>
            <source>If the clinic works with Ebbline at another computer already</source>
            <translation>Si la clinique utilise déjà Ebbline sur un autre ordinateur</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Postes</translation>
        </message>
        <message>
            <source>Add another computer, shut out a lost one</source>
            <translation>Ajouter un autre ordinateur, exclure un poste perdu</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sauvegarde et clés</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Qui a fait quoi</translation>
        </message>
        <message>
            <source>What was written at the clinic's desks, to search and to save</source>
            <translation>Ce qui a été écrit aux postes de la clinique, à rechercher et à enregistrer</translation>
        </message>
    </context>
    <context>
        <name>ClosePanel</name>
        <message>
            <source>What came of it</source>
            <translation>Suite donnée</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Remarque</translation>
        </message>
        <message>
            <source>Close the finding</source>
            <translation>Clore le constat</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Laisser ouvert</translation>
        </message>
    </context>
    <context>
        <name>Course</name>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>L %1</source>
            <comment>left, score</comment>
            <translation>G %1</translation>
        </message>
        <message>
            <source>R %1</source>
            <comment>right, score</comment>
            <translation>D %1</translation>
        </message>
        <message>
            <source>%1 by %2, %3</source>
            <comment>act, person, time</comment>
            <translation>%1 par %2, %3</translation>
        </message>
        <message>
            <source>%1: %2. %3 Raised %4. %5</source>
            <comment>urgency, title, reason, time, acts</comment>
            <translation>%1 : %2. %3 Apparu %4. %5</translation>
        </message>
        <message>
            <source>entered late, %1</source>
            <translation>saisie après coup, %1</translation>
        </message>
        <message>
            <source>amended; was: %1</source>
            <translation>corrigée ; avant : %1</translation>
        </message>
        <message>
            <source>no scores</source>
            <translation>aucune valeur</translation>
        </message>
        <message>
            <source>Opened by %1, %2</source>
            <translation>Ouverte par %1, %2</translation>
        </message>
        <message>
            <source>Not opened yet</source>
            <translation>Pas encore ouverte</translation>
        </message>
        <message>
            <source>Read on the phone, %1</source>
            <translation>Lu sur le téléphone, %1</translation>
        </message>
        <message>
            <source>Not read yet</source>
            <translation>Pas encore lu</translation>
        </message>
        <message>
            <source>Correction not opened yet; %1 opened an earlier version, %2</source>
            <translation>Correction pas encore ouverte ; %1 a ouvert une version antérieure, %2</translation>
        </message>
        <message>
            <source>Before it was worse: %1</source>
            <comment>an act</comment>
            <translation>Avant l’aggravation : %1</translation>
        </message>
        <message>
            <source>By the day that stood then: %1</source>
            <comment>an act</comment>
            <translation>D’après le jour qui figurait alors : %1</translation>
        </message>
        <message>
            <source>came before the time that it bears, %1: the clock of the phone or of this desk is wrong</source>
            <translation>arrivé avant l’heure qu’il porte, %1 : l’horloge du téléphone ou de ce poste est fausse</translation>
        </message>
    </context>
    <context>
        <name>CourseLine</name>
        <message>
            <source>Link phone</source>
            <translation>Relier le téléphone</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Ouvrir</translation>
        </message>
    </context>
    <context>
        <name>CoursePage</name>
        <message>
            <source>Link phone</source>
            <translation>Relier le téléphone</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Contrôle</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Fiche</translation>
        </message>
        <message>
            <source>Close: %1</source>
            <translation>Clore : %1</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Exporter</translation>
        </message>
        <message>
            <source>As a file, or for paper</source>
            <translation>En fichier ou sur papier</translation>
        </message>
        <message>
            <source>Link another phone</source>
            <translation>Lier un autre téléphone</translation>
        </message>
        <message>
            <source>Its page says what happens, and asks once</source>
            <translation>Sa page dit ce qui se passe et pose la question une seule fois</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
    </context>
    <context>
        <name>CoursesPage</name>
        <message>
            <source>Courses</source>
            <translation>Suivis</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Nom ou lot</translation>
        </message>
        <message>
            <source>No course</source>
            <translation>Aucun suivi</translation>
        </message>
    </context>
    <context>
        <name>CurvePanel</name>
        <message>
            <source>As when facing the patient: the patient's right on the left.</source>
            <translation>Comme face au patient : la droite du patient est à gauche.</translation>
        </message>
        <message>
            <source>Dotted: the median. Hollow: entered late or amended. Bracket at the end: what is expected at the follow-up.</source>
            <translation>Pointillé : la médiane. Marque vide : saisie après coup ou corrigée. Crochet à la fin : ce qui est attendu au contrôle.</translation>
        </message>
        <message>
            <source>Show as curves</source>
            <translation>Afficher en courbes</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Afficher en tableau</translation>
        </message>
    </context>
    <context>
        <name>CurveTable</name>
        <message>
            <source>Day</source>
            <translation>Jour</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Quand</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Droite</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Gauche</translation>
        </message>
        <message>
            <source>Usual</source>
            <translation>Habituel</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Remarque</translation>
        </message>
        <message>
            <source>Nothing was recorded for this symptom.</source>
            <translation>Rien n’a été noté pour ce symptôme.</translation>
        </message>
    </context>
    <context>
        <name>Curves</name>
        <message>
            <source>highest %1 on day %2</source>
            <translation>maximum %1 au jour %2</translation>
        </message>
        <message>
            <source>halved in %1 days</source>
            <translation>diminué de moitié en %1 jours</translation>
        </message>
        <message>
            <source>settled on day %1</source>
            <translation>résolu au jour %1</translation>
        </message>
        <message>
            <source>area: not enough to say</source>
            <translation>aire : données insuffisantes</translation>
        </message>
        <message>
            <source>area %1 points × days, day %2 to %3</source>
            <translation>aire %1 points × jours, du jour %2 au jour %3</translation>
        </message>
        <message>
            <source>level</source>
            <translation>égales</translation>
        </message>
        <message>
            <source>left %1 higher</source>
            <translation>gauche plus haute de %1</translation>
        </message>
        <message>
            <source>right %1 higher</source>
            <translation>droite plus haute de %1</translation>
        </message>
        <message>
            <source>Left against right: not enough to say.</source>
            <translation>Gauche contre droite : données insuffisantes.</translation>
        </message>
        <message>
            <source>%1 on average</source>
            <translation>%1 en moyenne</translation>
        </message>
        <message>
            <source>most on day %1 (%2)</source>
            <translation>le plus au jour %1 (%2)</translation>
        </message>
        <message>
            <source>too few points for a share of the sum</source>
            <translation>trop peu de points pour une part de la somme</translation>
        </message>
        <message>
            <source>Left against right, %1 days with both: %2.</source>
            <translation>Gauche contre droite, %1 jours avec les deux : %2.</translation>
        </message>
        <message>
            <source>Left: %1.</source>
            <translation>Gauche : %1.</translation>
        </message>
        <message>
            <source>Right: %1.</source>
            <translation>Droite : %1.</translation>
        </message>
        <message>
            <source>the difference is %1% of the sum</source>
            <translation>la différence est de %1 % de la somme</translation>
        </message>
        <message>
            <source>right %1 on day %2</source>
            <comment>score, day</comment>
            <translation>droite %1 au jour %2</translation>
        </message>
        <message>
            <source>left %1 on day %2</source>
            <comment>score, day</comment>
            <translation>gauche %1 au jour %2</translation>
        </message>
        <message>
            <source>The axis ends with day 21. Last written after it: %1. The table has every score.</source>
            <translation>L’axe s’arrête au jour 21. Dernier relevé après : %1. Le tableau contient tous les scores.</translation>
        </message>
    </context>
    <context>
        <name>Dose</name>
        <message>
            <source>Limit by US label, %1: %2 mg/kg, in general not over %3 mg</source>
            <translation>Limite du RCP américain, %1 : %2 mg/kg, en général pas plus de %3 mg</translation>
        </message>
        <message>
            <source>Your clinic's limit, %1: %2 mg/kg, not over %3 mg</source>
            <translation>Limite de votre clinique, %1 : %2 mg/kg, pas plus de %3 mg</translation>
        </message>
        <message>
            <source>with epinephrine</source>
            <translation>avec adrénaline</translation>
        </message>
        <message>
            <source>plain, the lower one, as some was given otherwise</source>
            <translation>sans adrénaline, la plus basse, car il en a aussi été donné autrement</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>sans adrénaline</translation>
        </message>
        <message>
            <source>No dose can be shown: check the solution, the volumes and the weight.</source>
            <translation>Aucune dose ne peut être affichée : vérifiez la solution, les volumes et le poids.</translation>
        </message>
        <message>
            <source>%1 mL given, %2 mg lidocaine (%3 mg/mL)</source>
            <translation>%1 mL administrés, %2 mg de lidocaïne (%3 mg/mL)</translation>
        </message>
        <message>
            <source>%1 µg epinephrine</source>
            <translation>%1 µg d’adrénaline</translation>
        </message>
        <message>
            <source>%1 mg given otherwise, %2 mg in all</source>
            <translation>%1 mg donnés autrement, %2 mg en tout</translation>
        </message>
        <message>
            <source>Enter the weight to see the maximum.</source>
            <translation>Saisissez le poids pour voir la dose maximale.</translation>
        </message>
        <message>
            <source>At most %1 mg</source>
            <translation>Au plus %1 mg</translation>
        </message>
        <message>
            <source>%1 mL of this solution</source>
            <translation>%1 mL de cette solution</translation>
        </message>
        <message>
            <source>(the label's cap)</source>
            <translation>(plafond du RCP)</translation>
        </message>
        <message>
            <source>(your clinic's cap)</source>
            <translation>(plafond de votre clinique)</translation>
        </message>
        <message>
            <source>%1 of the maximum</source>
            <translation>%1 de la dose maximale</translation>
        </message>
        <message>
            <source>Over the maximum by %1 mg. Give no more.</source>
            <translation>Dose maximale dépassée de %1 mg. Ne plus rien administrer.</translation>
        </message>
        <message numerus="yes">
            <source>More than %1 mL along track %2 (common practice, no source)</source>
            <translation>
                <numerusform>Plus de %1 mL le long du fil %2 (pratique courante, sans source)</numerusform>
                <numerusform>Plus de %1 mL le long des fils %2 (pratique courante, sans source)</numerusform>
            </translation>
        </message>
        <message>
            <source>plain, the lower one, as not all of it had epinephrine</source>
            <translation>sans adrénaline, la plus basse, car tout n’en contenait pas</translation>
        </message>
        <message>
            <source>at most %1 µg epinephrine</source>
            <translation>au plus %1 µg d’adrénaline</translation>
        </message>
    </context>
    <context>
        <name>DoseCard</name>
        <message>
            <source>Lidocaine so far</source>
            <translation>Lidocaïne jusqu’ici</translation>
        </message>
        <message>
            <source>Enter all lidocaine injected today. Creams count toward the same limit, but how much of one is absorbed is not known: none is counted here. Buffering thins the solution; the milligrams stay.</source>
            <translation>Saisissez toute la lidocaïne injectée aujourd’hui. Les crèmes comptent pour la même limite, mais on ignore ce qui en est absorbé : aucune n’est comptée ici. Tamponner dilue la solution ; les milligrammes restent les mêmes.</translation>
        </message>
    </context>
    <context>
        <name>EntryPanel</name>
        <message>
            <source>Entries</source>
            <translation>Notes</translation>
        </message>
        <message>
            <source>The patient's entries show up here once the phone has sent them.</source>
            <translation>Les notes du patient apparaissent ici dès que le téléphone les a envoyées.</translation>
        </message>
    </context>
    <context>
        <name>FacePanel</name>
        <message>
            <source>Front</source>
            <translation>De face</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Gauche du patient</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Droite du patient</translation>
        </message>
        <message>
            <source>moves with speech</source>
            <translation>bouge avec la parole</translation>
        </message>
        <message>
            <source>notch</source>
            <translation>encoche</translation>
        </message>
        <message>
            <source>Face chart. Draw threads from the entry point to the end.</source>
            <translation>Carte du visage. Tracez les fils du point d’entrée à l’extrémité.</translation>
        </message>
        <message>
            <source>Mirror</source>
            <translation>Miroir</translation>
        </message>
        <message>
            <source>the chosen thread, to the other side</source>
            <translation>le fil choisi, de l’autre côté</translation>
        </message>
        <message>
            <source>Mirror all</source>
            <translation>Miroir pour tous</translation>
        </message>
        <message>
            <source>Duplicate</source>
            <translation>Dupliquer</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Retirer</translation>
        </message>
        <message>
            <source>Hatched: the zone that moves with speech and chewing, and the notch of the jaw. Common practice, no source.</source>
            <translation>Hachuré : la zone qui bouge avec la parole et la mastication, et l’encoche du bord mandibulaire. Pratique courante, sans source.</translation>
        </message>
    </context>
    <context>
        <name>FindingCard</name>
        <message>
            <source>Closed</source>
            <translation>Clos</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Vu</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Prendre en charge</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Appeler</translation>
        </message>
        <message>
            <source>Visit forward</source>
            <translation>Avancer la visite</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Clore</translation>
        </message>
        <message>
            <source>Reopen</source>
            <translation>Rouvrir</translation>
        </message>
    </context>
    <context>
        <name>FindingPanel</name>
        <message>
            <source>Findings</source>
            <translation>Constats</translation>
        </message>
        <message>
            <source>Take all</source>
            <translation>Tout prendre en charge</translation>
        </message>
        <message>
            <source>Call about all</source>
            <translation>Appeler pour tout</translation>
        </message>
        <message>
            <source>No rule and no warning sign has asked for a look.</source>
            <translation>Aucune règle ni aucun signe d’alerte n’a demandé votre attention.</translation>
        </message>
        <message>
            <source>Note a call</source>
            <translation>Noter un appel</translation>
        </message>
        <message>
            <source>She rang, or somebody spoke with her</source>
            <translation>Elle a appelé, ou quelqu’un lui a parlé</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Appels notés dans le suivi</translation>
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
            <translation>%1 : au-dessus de la plage habituelle</translation>
        </message>
        <message>
            <source>%1: rising again</source>
            <translation>%1 : nouvelle hausse</translation>
        </message>
        <message>
            <source>%1: rising</source>
            <translation>%1 : hausse</translation>
        </message>
        <message>
            <source>%1: one side much worse</source>
            <translation>%1 : un côté nettement plus atteint</translation>
        </message>
        <message>
            <source>%1: slow to settle</source>
            <translation>%1 : disparition lente</translation>
        </message>
        <message>
            <source>%1: does not smooth out</source>
            <translation>%1 : ne s’efface pas</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Aucune nouvelle</translation>
        </message>
        <message>
            <source>%1 on day %2; usual up to %3.</source>
            <translation>%1 au jour %2 ; habituel jusqu’à %3.</translation>
        </message>
        <message>
            <source>On average %1 over its last three days with an answer, up to day %2; usual up to %3.</source>
            <translation>En moyenne %1 sur ses trois derniers jours avec réponse, jusqu’au jour %2 ; habituel jusqu’à %3.</translation>
        </message>
        <message>
            <source>Day %1; among them %2, on average %3 over its last three days with an answer, usual up to %4.</source>
            <translation>Jour %1 ; parmi eux %2, en moyenne %3 sur ses trois derniers jours avec réponse, habituel jusqu’à %4.</translation>
        </message>
        <message>
            <source>%1 on day %2 after a low of %3.</source>
            <translation>%1 au jour %2 après un minimum de %3.</translation>
        </message>
        <message>
            <source>Left %1, right %2 on day %3.</source>
            <translation>Gauche %1, droite %2 au jour %3.</translation>
        </message>
        <message>
            <source>All symptoms together: %1 points apart.</source>
            <translation>Tous symptômes réunis : %1 points d’écart.</translation>
        </message>
        <message>
            <source>Still %1 on day %2.</source>
            <translation>Encore %1 au jour %2.</translation>
        </message>
        <message>
            <source>A week before: %1.</source>
            <translation>Une semaine avant : %1.</translation>
        </message>
        <message>
            <source>Over its last three days: %1 points.</source>
            <translation>Sur ses trois derniers jours : %1 points.</translation>
        </message>
        <message>
            <source>In its first days: %1.</source>
            <translation>Les premiers jours : %1.</translation>
        </message>
        <message>
            <source>Noted because it is so late.</source>
            <translation>Noté parce qu’il est déjà si tard.</translation>
        </message>
        <message>
            <source>Fever</source>
            <translation>Fièvre</translation>
        </message>
        <message>
            <source>Fever with inflammation of the face</source>
            <translation>Fièvre avec inflammation du visage</translation>
        </message>
        <message>
            <source>Weakness of the face, perhaps still the numbing</source>
            <translation>Faiblesse faciale, peut-être encore l’anesthésie</translation>
        </message>
        <message>
            <source>Signs of a spreading inflammation</source>
            <translation>Signes d’une inflammation qui s’étend</translation>
        </message>
        <message>
            <source>Severe pain</source>
            <translation>Douleur intense</translation>
        </message>
        <message>
            <source>One side swells and hurts</source>
            <translation>Un côté enfle et fait mal</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>finding, side</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Temperature %1 °C</source>
            <translation>Température %1 °C</translation>
        </message>
        <message>
            <source>swelling %1 against %2</source>
            <translation>gonflement %1 contre %2</translation>
        </message>
        <message>
            <source>pain %1</source>
            <translation>douleur %1</translation>
        </message>
        <message>
            <source>The patient answered on day %1: %2.</source>
            <translation>Réponse du patient au jour %1 : %2.</translation>
        </message>
        <message>
            <source>Warning rule “%1”: acts whatever the curve says.</source>
            <translation>Règle d’alerte « %1 » : s’applique quoi que dise la courbe.</translation>
        </message>
        <message>
            <source>Rule “%1”: statistic %2, threshold %3.</source>
            <translation>Règle « %1 » : statistique %2, seuil %3.</translation>
        </message>
        <message>
            <source>Rule “%1”.</source>
            <translation>Règle « %1 ».</translation>
        </message>
        <message numerus="yes">
            <source>No entry for %Ln day(s).</source>
            <translation>
                <numerusform>Aucune note depuis %Ln jour.</numerusform>
                <numerusform>Aucune note depuis %Ln jours.</numerusform>
            </translation>
        </message>
        <message>
            <source>The visit was to be on day %1; by day %2 no follow-up was recorded.</source>
            <translation>La visite était prévue au jour %1 ; au jour %2, aucun contrôle n’était enregistré.</translation>
        </message>
        <message>
            <source>All symptoms together</source>
            <translation>Tous symptômes réunis</translation>
        </message>
        <message>
            <source>Day %1; among them %2 with %3, usual up to %4.</source>
            <translation>Jour %1 ; parmi eux %2 avec %3, habituel jusqu’à %4.</translation>
        </message>
        <message>
            <source>Corrected or added to since: as the entries stand now, this would not be raised. It stays until somebody closes it.</source>
            <translation>Corrigé ou complété depuis : d’après les notes actuelles, ce signal n’apparaîtrait pas. Il reste jusqu’à ce que quelqu’un le ferme.</translation>
        </message>
        <message>
            <source>Raised by a day of the treatment, or scores right after it, that were corrected since. It stays until somebody closes it.</source>
            <translation>Signalé d’après un jour du traitement, ou des scores juste après, corrigés depuis. Cela reste jusqu’à ce que quelqu’un le ferme.</translation>
        </message>
    </context>
    <context>
        <name>FollowUpPage</name>
        <message>
            <source>Follow-up of %1</source>
            <translation>Contrôle de %1</translation>
        </message>
        <message>
            <source>Recording it closes the course.</source>
            <translation>L’enregistrer clôt le suivi.</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Fiche</translation>
        </message>
        <message>
            <source>Against before the treatment</source>
            <translation>Par rapport à avant le traitement</translation>
        </message>
        <message>
            <source>How satisfied is the patient?</source>
            <translation>Quelle est la satisfaction du patient ?</translation>
        </message>
        <message>
            <source>Management: what was done</source>
            <translation>Prise en charge : ce qui a été fait</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Suite prévue</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complications</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Questions en suspens</translation>
        </message>
        <message>
            <source>Record and close the course</source>
            <translation>Enregistrer et clore le suivi</translation>
        </message>
        <message>
            <source>An uncomplicated course?</source>
            <translation>Des suites simples, sans complication ?</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Oui</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Non</translation>
        </message>
    </context>
    <context>
        <name>HelpPanel</name>
        <message>
            <source>Keys</source>
            <translation>Touches</translation>
        </message>
        <message>
            <source>Up, Down</source>
            <translation>Haut, Bas</translation>
        </message>
        <message>
            <source>move in the queue</source>
            <translation>se déplacer dans la file</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Entrée</translation>
        </message>
        <message>
            <source>open the course</source>
            <translation>ouvrir le suivi</translation>
        </message>
        <message>
            <source>take it: others see who is on it</source>
            <translation>prendre en charge : les autres voient qui s’en occupe</translation>
        </message>
        <message>
            <source>close the most urgent finding, with an outcome</source>
            <translation>clore le constat le plus urgent, avec la suite donnée</translation>
        </message>
        <message>
            <source>search</source>
            <translation>rechercher</translation>
        </message>
        <message>
            <source>queue, courses</source>
            <translation>file d’attente, suivis</translation>
        </message>
        <message>
            <source>new treatment</source>
            <translation>nouveau traitement</translation>
        </message>
        <message>
            <source>lock</source>
            <translation>verrouiller</translation>
        </message>
        <message>
            <source>this help</source>
            <translation>cette aide</translation>
        </message>
        <message>
            <source>On the face chart</source>
            <translation>Sur la carte du visage</translation>
        </message>
        <message>
            <source>arrows move the cursor (with Shift in small steps), Space sets entry point and end, Escape starts over; Page Up and Page Down choose a thread, Home takes its entry point and End its end, Space puts it down, Delete removes the thread</source>
            <translation>les flèches déplacent le curseur (avec Maj à petits pas), Espace pose le point d’entrée et la fin, Échap recommence ; Page préc. et Page suiv. choisissent un fil, Origine prend son point d’entrée et Fin sa fin, Espace le repose, Suppr enlève le fil</translation>
        </message>
        <message>
            <source>Back to work</source>
            <translation>Retour au travail</translation>
        </message>
        <message>
            <source>call: number, what to ask, what was said</source>
            <translation>appeler : numéro, questions à poser, ce qui a été dit</translation>
        </message>
        <message>
            <source>next with entries that nobody opened</source>
            <translation>suivant avec des notes que personne n’a ouvertes</translation>
        </message>
        <message>
            <source>hand over</source>
            <translation>passer la relève</translation>
        </message>
        <message>
            <source>On photographs</source>
            <translation>Sur les photos</translation>
        </message>
        <message>
            <source>+ and - zoom both, 0 shows the whole, arrows move what is in sight; while the eyes are marked, arrows move the cursor (with Shift in small steps), Space marks, Backspace undoes, Escape ends</source>
            <translation>+ et - agrandissent et réduisent les deux, 0 affiche l’image entière, les flèches déplacent la partie visible ; pendant le marquage des yeux, les flèches déplacent le curseur (avec Maj, à petits pas), Espace marque, Retour arrière annule, Échap termine</translation>
        </message>
        <message>
            <source>Single keys (E, T, C, X, F, N, H, A, /) are on</source>
            <translation>Les touches simples (E, T, C, X, F, N, H, A, /) sont actives</translation>
        </message>
        <message>
            <source>take search and filters off</source>
            <translation>retirer la recherche et les filtres</translation>
        </message>
        <message>
            <source>open the course at the entry behind the reason</source>
            <translation>ouvrir le suivi à la note à l’origine du motif</translation>
        </message>
        <message>
            <source>bring the visit forward: its new day and time</source>
            <translation>avancer la visite : nouveau jour et nouvelle heure</translation>
        </message>
        <message>
            <source>print the sheet, the course or the hand-over</source>
            <translation>imprimer la fiche, le suivi ou la relève</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>Ebbline, desk</source>
            <translation>Ebbline, clinique</translation>
        </message>
        <message>
            <source>Understood</source>
            <translation>Compris</translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Réessayer</translation>
        </message>
        <message>
            <source>Invented patients: nothing here is real, nothing is sent, and all of it is gone when you lock the desk.</source>
            <translation>Patients fictifs : rien ici n’est réel, rien n’est envoyé, et tout disparaît quand vous verrouillez le poste.</translation>
        </message>
        <message>
            <source>Leave the demo</source>
            <translation>Quitter la démonstration</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sauvegarde et clés</translation>
        </message>
    </context>
    <context>
        <name>MessagePanel</name>
        <message>
            <source>Messages</source>
            <translation>Messages</translation>
        </message>
        <message>
            <source>No message yet.</source>
            <translation>Pas encore de message.</translation>
        </message>
        <message>
            <source>Write to the patient</source>
            <translation>Écrire au patient</translation>
        </message>
        <message>
            <source>Send</source>
            <translation>Envoyer</translation>
        </message>
    </context>
    <context>
        <name>NewEntriesBar</name>
        <message>
            <source>Mark as opened by me</source>
            <translation>Marquer comme ouvertes par moi</translation>
        </message>
    </context>
    <context>
        <name>PairingChoice</name>
        <message>
            <source>Protocol: care plan, rules and usual range, signed by the clinic</source>
            <translation>Protocole : plan de soins, règles et plage habituelle, signés par la clinique</translation>
        </message>
        <message>
            <source>Follow-up, year-month-day</source>
            <translation>Contrôle, année-mois-jour</translation>
        </message>
        <message>
            <source>Its time, hours:minutes, if it is agreed</source>
            <translation>Son heure, heures:minutes, si elle est convenue</translation>
        </message>
    </context>
    <context>
        <name>PairingPage</name>
        <message>
            <source>Code for the patient's phone. It can also be typed: %1</source>
            <translation>Code pour le téléphone du patient. Il peut aussi être tapé : %1</translation>
        </message>
        <message>
            <source>To type instead</source>
            <translation>À taper</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Six chiffres : %1</translation>
        </message>
        <message>
            <source>Make a code</source>
            <translation>Créer un code</translation>
        </message>
        <message>
            <source>Both show the same number</source>
            <translation>Les deux affichent le même numéro</translation>
        </message>
        <message>
            <source>They differ: stop</source>
            <translation>Ils diffèrent : arrêter</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Créer un nouveau code</translation>
        </message>
        <message>
            <source>To the queue</source>
            <translation>Vers la file d’attente</translation>
        </message>
        <message>
            <source>It shall hold the clinic's root key: link phones, add and shut out desks</source>
            <translation>Il aura la clé racine de la clinique : relier des téléphones, ajouter et exclure des postes</translation>
        </message>
        <message>
            <source>The code</source>
            <translation>Le code</translation>
        </message>
        <message>
            <source>and the hub's address</source>
            <translation>et l’adresse du hub</translation>
        </message>
        <message>
            <source>To the desks</source>
            <translation>Vers les postes</translation>
        </message>
        <message>
            <source>The old phone is lost: the hub refuses it at once, and what it did not send stays unknown</source>
            <translation>L’ancien téléphone est perdu : le hub le refuse aussitôt, et ce qu’il n’a pas envoyé reste inconnu</translation>
        </message>
        <message>
            <source>Only end the lost phone</source>
            <translation>Exclure seulement le téléphone perdu</translation>
        </message>
    </context>
    <context>
        <name>PersonPage</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Qui est au poste ?</translation>
        </message>
        <message>
            <source>What you take, call and close carries your name, and the patient's phone shows who opened an entry.</source>
            <translation>Prises en charge, appels et clôtures portent votre nom, et le téléphone du patient montre qui a ouvert une note.</translation>
        </message>
        <message>
            <source>Somebody is missing: edit the clinic</source>
            <translation>Il manque quelqu’un : modifier la clinique</translation>
        </message>
    </context>
    <context>
        <name>PackField</name>
        <message>
            <source>Code on the pack: scan it, or type it with its brackets</source>
            <translation>Code de l’emballage : scannez-le, ou tapez-le avec ses parenthèses</translation>
        </message>
    </context>
    <context>
        <name>PlacementFields</name>
        <message>
            <source>Side</source>
            <translation>Côté</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Gauche</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Droite</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Se termine</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Matériau</translation>
        </message>
        <message>
            <source>Form</source>
            <translation>Forme</translation>
        </message>
        <message>
            <source>Needle or cannula</source>
            <translation>Aiguille ou canule</translation>
        </message>
        <message>
            <source>Anaesthetic along it</source>
            <translation>Anesthésique le long du fil</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lot</translation>
        </message>
        <message>
            <source>Expiry, year-month-day</source>
            <translation>Péremption, année-mois-jour</translation>
        </message>
        <message>
            <source>Thread %L1</source>
            <translation>Fil %L1</translation>
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
            <translation>Refait</translation>
        </message>
        <message>
            <source>Why it was redone</source>
            <translation>Pourquoi il a été refait</translation>
        </message>
        <message>
            <source>Brought in with</source>
            <translation>Introduit avec</translation>
        </message>
        <message>
            <source>Length of needle or cannula</source>
            <translation>Longueur de l’aiguille ou de la canule</translation>
        </message>
        <message>
            <source>Length of thread</source>
            <translation>Longueur du fil</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Adrénaline</translation>
        </message>
    </context>
    <context>
        <name>PlacementList</name>
        <message>
            <source>care</source>
            <translation>prudence</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln fil</numerusform>
                <numerusform>%Ln fils</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Protocols</name>
        <message>
            <source>Take the dressings off</source>
            <translation>Retirer les pansements</translation>
        </message>
        <message>
            <source>Keep the entry points clean and dry</source>
            <translation>Garder les points d’entrée propres et secs</translation>
        </message>
        <message>
            <source>Sleep on the back, head raised</source>
            <translation>Dormir sur le dos, tête relevée</translation>
        </message>
        <message>
            <source>Spare the face: small bites, no wide yawns, little talking</source>
            <translation>Ménager le visage : petites bouchées, pas de grands bâillements, parler peu</translation>
        </message>
        <message>
            <source>Cold pack with a cloth between</source>
            <translation>Poche froide avec un linge entre les deux</translation>
        </message>
        <message>
            <source>No make-up</source>
            <translation>Pas de maquillage</translation>
        </message>
        <message>
            <source>No massage of the face</source>
            <translation>Pas de massage du visage</translation>
        </message>
        <message>
            <source>No dental work</source>
            <translation>Pas de soins dentaires</translation>
        </message>
        <message>
            <source>No hard exercise</source>
            <translation>Pas de sport intense</translation>
        </message>
        <message>
            <source>No sauna, hammam, hot bath or pool</source>
            <translation>Ni sauna, ni hammam, ni bain chaud, ni piscine</translation>
        </message>
        <message>
            <source>No strong sun</source>
            <translation>Pas de soleil intense</translation>
        </message>
        <message>
            <source>No alcohol</source>
            <translation>Pas d’alcool</translation>
        </message>
        <message>
            <source>No smoking</source>
            <translation>Ne pas fumer</translation>
        </message>
        <message>
            <source>No shaving</source>
            <translation>Pas de rasage</translation>
        </message>
        <message>
            <source>Write down how it is</source>
            <translation>Noter comment ça va</translation>
        </message>
        <message>
            <source>Come to the follow-up</source>
            <translation>Venir à la visite de contrôle</translation>
        </message>
        <message>
            <source>The clinic's own instruction</source>
            <translation>Consigne propre à la clinique</translation>
        </message>
        <message>
            <source>on day %1</source>
            <translation>au jour %1</translation>
        </message>
        <message>
            <source>day %1 to day %2</source>
            <translation>du jour %1 au jour %2</translation>
        </message>
        <message>
            <source>a rule to keep, no reminder</source>
            <translation>consigne à respecter, sans rappel</translation>
        </message>
        <message>
            <source>reminds at %1</source>
            <translation>rappel à %1</translation>
        </message>
        <message>
            <source>Level: above the usual range</source>
            <translation>Niveau : au-dessus de la plage habituelle</translation>
        </message>
        <message>
            <source>threshold %1</source>
            <translation>seuil %1</translation>
        </message>
        <message>
            <source>Rebound: rising again</source>
            <translation>Rebond : nouvelle hausse</translation>
        </message>
        <message>
            <source>Side divergence: one side much worse</source>
            <translation>Écart entre les côtés : un côté nettement plus atteint</translation>
        </message>
        <message>
            <source>Slow recovery: slow to settle</source>
            <translation>Récupération lente : disparition lente</translation>
        </message>
        <message>
            <source>Persistent puckering: does not smooth out</source>
            <translation>Creux persistant : ne s’efface pas</translation>
        </message>
        <message>
            <source>from day %1 on</source>
            <translation>à partir du jour %1</translation>
        </message>
        <message>
            <source>Silence: nothing heard</source>
            <translation>Silence : aucune nouvelle</translation>
        </message>
        <message>
            <source>shown apart, never as fine</source>
            <translation>affiché à part, jamais comme rassurant</translation>
        </message>
        <message numerus="yes">
            <source>reminds every %Ln day(s) at %1</source>
            <translation>
                <numerusform>rappel chaque jour à %1</numerusform>
                <numerusform>rappel tous les %Ln jours à %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s)</source>
            <translation>
                <numerusform>au moins %Ln point</numerusform>
                <numerusform>au moins %Ln points</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) above the lowest, from day %1 on</source>
            <translation>
                <numerusform>au moins %Ln point au-dessus du minimum, à partir du jour %1</numerusform>
                <numerusform>au moins %Ln points au-dessus du minimum, à partir du jour %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) between the sides</source>
            <translation>
                <numerusform>au moins %Ln point entre les côtés</numerusform>
                <numerusform>au moins %Ln points entre les côtés</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s)</source>
            <translation>
                <numerusform>à partir du jour %1, au moins %Ln point</numerusform>
                <numerusform>à partir du jour %1, au moins %Ln points</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>after %Ln day(s)</source>
            <translation>
                <numerusform>après %Ln jour</numerusform>
                <numerusform>après %Ln jours</numerusform>
            </translation>
        </message>
        <message>
            <source>Level, all symptoms together</source>
            <translation>Niveau, tous symptômes réunis</translation>
        </message>
        <message>
            <source>Side divergence: one side fills in the first days</source>
            <translation>Écart entre les côtés : un côté se remplit les premiers jours</translation>
        </message>
        <message>
            <source>Side divergence: one side worsens</source>
            <translation>Écart entre les côtés : un côté s’aggrave</translation>
        </message>
        <message>
            <source>Slow recovery, all symptoms together</source>
            <translation>Récupération lente, tous symptômes réunis</translation>
        </message>
        <message>
            <source>Slow recovery: pain that stays high</source>
            <translation>Récupération lente : une douleur qui reste forte</translation>
        </message>
        <message>
            <source>Slow recovery: swelling, bruising or tightness that stays high</source>
            <translation>Récupération lente : gonflement, bleus ou tension qui restent forts</translation>
        </message>
        <message>
            <source>%1 of 10 or more over the last three days; no threshold</source>
            <translation>%1 sur 10 ou plus sur les trois derniers jours ; sans seuil</translation>
        </message>
        <message>
            <source>Persistent puckering: unchanged for a week</source>
            <translation>Creux persistant : inchangé depuis une semaine</translation>
        </message>
        <message>
            <source>Persistent puckering: keeps most of its first days</source>
            <translation>Creux persistant : garde l’essentiel des premiers jours</translation>
        </message>
        <message>
            <source>Persistent puckering: still deep</source>
            <translation>Creux persistant : encore profond</translation>
        </message>
        <message>
            <source>Silence after a high entry</source>
            <translation>Silence après une note élevée</translation>
        </message>
        <message>
            <source>when the last entry was above the usual range</source>
            <translation>quand la dernière note dépassait la plage habituelle</translation>
        </message>
        <message numerus="yes">
            <source>up to day %1, at least %Ln point(s) between the sides over pain, swelling, bruising and tightness</source>
            <translation>
                <numerusform>jusqu’au jour %1, au moins %Ln point entre les côtés sur douleur, gonflement, bleus et tension</numerusform>
                <numerusform>jusqu’au jour %1, au moins %Ln points entre les côtés sur douleur, gonflement, bleus et tension</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s) between the sides over pain, swelling and tightness</source>
            <translation>
                <numerusform>à partir du jour %1, au moins %Ln point entre les côtés sur douleur, gonflement et tension</numerusform>
                <numerusform>à partir du jour %1, au moins %Ln points entre les côtés sur douleur, gonflement et tension</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>at least %Ln point(s) over the last three days</source>
            <translation>
                <numerusform>au moins %Ln point sur les trois derniers jours</numerusform>
                <numerusform>au moins %Ln points sur les trois derniers jours</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>from day %1 on, at least %Ln point(s), after a peak of %2 or more</source>
            <translation>
                <numerusform>à partir du jour %1, au moins %Ln point, après un maximum de %2 ou plus</numerusform>
                <numerusform>à partir du jour %1, au moins %Ln points, après un maximum de %2 ou plus</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ProtocolsPage</name>
        <message>
            <source>Protocols</source>
            <translation>Protocoles</translation>
        </message>
        <message>
            <source>Care plan, rules and usual range go to the phone together, signed by the clinic, so that they work offline.</source>
            <translation>Plan de soins, règles et plage habituelle vont ensemble sur le téléphone, signés par la clinique, pour fonctionner hors ligne.</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Ce qui est demandé au patient</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Ce qui déclenche un constat</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Ce qui compte comme habituel</translation>
        </message>
        <message>
            <source>Whom the patient calls</source>
            <translation>Qui le patient doit appeler</translation>
        </message>
        <message>
            <source>Change the numbers</source>
            <translation>Modifier les numéros</translation>
        </message>
        <message>
            <source>Change it</source>
            <translation>Modifier</translation>
        </message>
        <message>
            <source>Take from a file</source>
            <translation>Reprendre d’un fichier</translation>
        </message>
        <message>
            <source>Shows what it is; nothing goes live by it.</source>
            <translation>Montre ce que c’est ; rien n’entre en vigueur par là.</translation>
        </message>
        <message>
            <source>Save as a file</source>
            <translation>Enregistrer en fichier</translation>
        </message>
        <message>
            <source>For the tool, or for a colleague&apos;s clinic.</source>
            <translation>Pour l’outil, ou pour la clinique d’un confrère.</translation>
        </message>
    </context>
    <context>
        <name>Questions</name>
        <message>
            <source>Still open: %1, day %2.</source>
            <translation>Toujours ouvert : %1, jour %2.</translation>
        </message>
        <message>
            <source>No phone was linked: ask how the days went.</source>
            <translation>Aucun téléphone n’était relié : demander comment se sont passées les journées.</translation>
        </message>
        <message>
            <source>The patient recorded nothing: ask how the days went.</source>
            <translation>Le patient n’a rien noté : demander comment se sont passées les journées.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies) not opened yet.</source>
            <translation>
                <numerusform>%Ln note pas encore ouverte.</numerusform>
                <numerusform>%Ln notes pas encore ouvertes.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) from the patient not read yet.</source>
            <translation>
                <numerusform>%Ln message du patient pas encore lu.</numerusform>
                <numerusform>%Ln messages du patient pas encore lus.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s) without a lot number.</source>
            <translation>
                <numerusform>%Ln fil sans numéro de lot.</numerusform>
                <numerusform>%Ln fils sans numéro de lot.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>QueueActs</name>
        <message>
            <source>Open</source>
            <translation>Ouvrir</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Pris en charge</translation>
        </message>
        <message>
            <source>Take</source>
            <translation>Prendre en charge</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Clore</translation>
        </message>
        <message>
            <source>Take over</source>
            <translation>Prendre le relais</translation>
        </message>
        <message>
            <source>Call</source>
            <translation>Appeler</translation>
        </message>
    </context>
    <context>
        <name>QueuePage</name>
        <message>
            <source>Queue</source>
            <translation>File d’attente</translation>
        </message>
        <message>
            <source>Name or lot  ( / )</source>
            <translation>Nom ou lot  ( / )</translation>
        </message>
        <message>
            <source>Name or lot</source>
            <translation>Nom ou lot</translation>
        </message>
        <message>
            <source>Hand over</source>
            <translation>Relève</translation>
        </message>
        <message>
            <source>A note for whoever takes over</source>
            <translation>Un mot pour la relève</translation>
        </message>
        <message>
            <source>Filter</source>
            <translation>Filtrer</translation>
        </message>
        <message>
            <source>By who placed the threads, who took the row, and day</source>
            <translation>Selon qui a posé les fils, qui a pris la ligne, et le jour</translation>
        </message>
    </context>
    <context>
        <name>QueueRowHead</name>
        <message>
            <source>since %1 · %2</source>
            <translation>depuis %1 · %2</translation>
        </message>
    </context>
    <context>
        <name>Rail</name>
        <message>
            <source>Queue</source>
            <translation>File d’attente</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Suivis</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Nouveau traitement</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protocoles</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Clinique</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Réglages</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Interrogation du hub</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Interroger le hub</translation>
        </message>
        <message>
            <source>Nobody named</source>
            <translation>Aucun nom indiqué</translation>
        </message>
        <message>
            <source>Who is at the desk: change</source>
            <translation>Qui est au poste : changer</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <translation>Touches et aide</translation>
        </message>
        <message>
            <source>Lock</source>
            <translation>Verrouiller</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Bilan d’activité</translation>
        </message>
    </context>
    <context>
        <name>RailButton</name>
        <message>
            <source>shown now</source>
            <translation>affiché maintenant</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>Settings</source>
            <translation>Réglages</translation>
        </message>
        <message>
            <source>For this computer. Nothing of a patient is stored here.</source>
            <translation>Pour cet ordinateur. Rien sur un patient n’est conservé ici.</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Langue</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aspect</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Clair</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Sombre</translation>
        </message>
        <message>
            <source>High contrast</source>
            <translation>Fort contraste</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Taille du texte</translation>
        </message>
        <message>
            <source>Lock when nobody touches the desk for</source>
            <translation>Verrouiller si personne n’utilise le poste pendant</translation>
        </message>
        <message>
            <source>Less motion</source>
            <translation>Moins de mouvement</translation>
        </message>
        <message>
            <source>Single keys in the queue: E opens the entry behind the reason, T takes, C calls, X closes, F brings the visit forward, N next unopened, H hands over, / searches, A takes search and filters off</source>
            <translation>Touches simples dans la file : E ouvre la note à l’origine du motif, T prend en charge, C appelle, X clôt, F avance la visite, N suivant non ouvert, H relève, / recherche, A retire la recherche et les filtres</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>À propos d’Ebbline</translation>
        </message>
        <message>
            <source>Version, makers and licences</source>
            <translation>Version, auteurs et licences</translation>
        </message>
    </context>
    <context>
        <name>Sheet</name>
        <message>
            <source>%1 of 5</source>
            <translation>%1 sur 5</translation>
        </message>
        <message>
            <source>none, uncomplicated course</source>
            <translation>aucune, suites simples</translation>
        </message>
        <message>
            <source>none named, not an uncomplicated course</source>
            <translation>aucune nommée, suites non simples</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>person, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Change against before</source>
            <translation>Évolution par rapport à avant</translation>
        </message>
        <message>
            <source>Patient's satisfaction</source>
            <translation>Satisfaction du patient</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complications</translation>
        </message>
        <message>
            <source>Management</source>
            <translation>Prise en charge</translation>
        </message>
        <message>
            <source>Next plan</source>
            <translation>Suite prévue</translation>
        </message>
        <message>
            <source>Recorded by</source>
            <translation>Enregistré par</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Fiche de contrôle</translation>
        </message>
        <message>
            <source>Made %1, %2</source>
            <translation>Établie le %1, %2</translation>
        </message>
        <message>
            <source>Made %1, %2, by %3</source>
            <translation>Établie le %1, %2, par %3</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Traité le</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Jour de récupération</translation>
        </message>
        <message>
            <source>Protocol</source>
            <translation>Protocole</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>No reminder was due.</source>
            <translation>Aucun rappel n’était prévu.</translation>
        </message>
        <message>
            <source>Treatment map</source>
            <translation>Carte du traitement</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>N°</translation>
        </message>
        <message>
            <source>Side</source>
            <translation>Côté</translation>
        </message>
        <message>
            <source>Zone</source>
            <translation>Zone</translation>
        </message>
        <message>
            <source>Ends</source>
            <translation>Se termine</translation>
        </message>
        <message>
            <source>Thread</source>
            <translation>Fil</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anesthésique</translation>
        </message>
        <message>
            <source>Local anaesthetic</source>
            <translation>Anesthésie locale</translation>
        </message>
        <message>
            <source>Recovery</source>
            <translation>Récupération</translation>
        </message>
        <message>
            <source>Findings and what was done</source>
            <translation>Constats et actions</translation>
        </message>
        <message>
            <source>No finding.</source>
            <translation>Aucun constat.</translation>
        </message>
        <message>
            <source>nothing yet</source>
            <translation>rien encore</translation>
        </message>
        <message>
            <source>Urgency</source>
            <translation>Degré d’urgence</translation>
        </message>
        <message>
            <source>Finding</source>
            <translation>Constat</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Apparu</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Fait</translation>
        </message>
        <message>
            <source>Open questions</source>
            <translation>Questions en suspens</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Aucune.</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>Au contrôle</translation>
        </message>
        <message>
            <source>At the follow-up, to be filled in</source>
            <translation>Au contrôle, à remplir</translation>
        </message>
        <message>
            <source>Patient's left</source>
            <translation>Gauche du patient</translation>
        </message>
        <message>
            <source>Patient's right</source>
            <translation>Droite du patient</translation>
        </message>
        <message>
            <source>Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source).</source>
            <translation>Gauche : traits pleins, points d’entrée ronds. Droite : tirets, points d’entrée carrés. La barre marque l’extrémité. Hachuré : la zone qui bouge avec la parole, et l’encoche du bord mandibulaire (pratique courante, sans source).</translation>
        </message>
        <message>
            <source>Nothing was recorded.</source>
            <translation>Rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. Hollow marks: entered late or amended. Missing days are gaps.</source>
            <translation>Comme face au patient : la droite du patient est à gauche. Valeur de 0 à 10 par jour de récupération. Marques vides : saisie après coup ou corrigée. Les jours manquants restent vides.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Page %1 sur %2</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”.</source>
            <translation>
                <numerusform>Réponse « Fait » : %1 sur %Ln rappel.</numerusform>
                <numerusform>Réponse « Fait » : %1 sur %Ln rappels.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln note</numerusform>
                <numerusform>%Ln notes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %Ln day(s)</source>
            <translation>
                <numerusform>sur %Ln jour</numerusform>
                <numerusform>sur %Ln jours</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1: could not be opened</source>
            <translation>%1 : n’a pas pu être ouverte</translation>
        </message>
        <message>
            <source>The only photograph of this view.</source>
            <translation>La seule photo de cette vue.</translation>
        </message>
        <message>
            <source>Aligned by the eyes, not stretched and not mirrored.</source>
            <translation>Alignées sur les yeux, sans déformation ni effet miroir.</translation>
        </message>
        <message>
            <source>As they were taken, perhaps not on one scale.</source>
            <translation>Telles qu’elles ont été prises, peut-être pas à la même échelle.</translation>
        </message>
        <message>
            <source>Photographs, %1: %2, and %3. %4</source>
            <comment>view, first, last, how</comment>
            <translation>Photos, %1 : %2, et %3. %4</translation>
        </message>
        <message>
            <source>Photograph, %1: %2. %3</source>
            <comment>view, when, how</comment>
            <translation>Photo, %1 : %2. %3</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Photos</translation>
        </message>
        <message>
            <source>The first and the last of each view, the first on the left. Light, distance and expression may differ: compare with care.</source>
            <translation>La première et la dernière de chaque vue, la première à gauche. Lumière, distance et expression peuvent différer : comparez avec prudence.</translation>
        </message>
        <message>
            <source>Lot, expiry</source>
            <translation>Lot, péremption</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>juste après le traitement</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>Le plan</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Corrections de l’enregistrement</translation>
        </message>
    </context>
    <context>
        <name>SheetPage</name>
        <message>
            <source>Follow-up sheet</source>
            <translation>Fiche de contrôle</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Enregistrer en PDF</translation>
        </message>
        <message>
            <source>Page %L1 of the sheet</source>
            <translation>Page %L1 de la fiche</translation>
        </message>
        <message>
            <source>With photographs: the first and the last of each view</source>
            <translation>Avec photos : la première et la dernière de chaque vue</translation>
        </message>
        <message>
            <source>The photographs are being opened.</source>
            <translation>Ouverture des photos en cours.</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
    </context>
    <context>
        <name>StepField</name>
        <message>
            <source>%1: less</source>
            <translation>%1 : moins</translation>
        </message>
        <message>
            <source>%1: more</source>
            <translation>%1 : plus</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>non précisé</translation>
        </message>
    </context>
    <context>
        <name>Times</name>
        <message>
            <source>Today %1</source>
            <translation>aujourd’hui %1</translation>
        </message>
        <message>
            <source>Yesterday %1</source>
            <translation>hier %1</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>date without a year</comment>
            <translation>'le' d MMM</translation>
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
            <translation>moins d’une minute</translation>
        </message>
        <message>
            <source>Day %1</source>
            <translation>Jour %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln min</source>
            <translation>
                <numerusform>%Ln min</numerusform>
                <numerusform>%Ln min</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln h</source>
            <translation>
                <numerusform>%Ln h</numerusform>
                <numerusform>%Ln h</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln day(s)</source>
            <translation>
                <numerusform>%Ln jour</numerusform>
                <numerusform>%Ln jours</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Treatment</name>
        <message>
            <source>%1, %2, %3 G, %4 mm</source>
            <comment>material, form, gauge, length</comment>
            <translation>%1, %2, %3 G, %4 mm</translation>
        </message>
        <message>
            <source>Runs near the notch of the jaw: facial artery and marginal nerve.</source>
            <translation>Passe près de l’encoche du bord mandibulaire : artère faciale et rameau marginal.</translation>
        </message>
        <message>
            <source>Ends past the zone that moves with speech and chewing.</source>
            <translation>Se termine au-delà de la zone qui bouge avec la parole et la mastication.</translation>
        </message>
        <message>
            <source>The end is drawn inside the moving zone.</source>
            <translation>L’extrémité est tracée dans la zone mobile.</translation>
        </message>
        <message>
            <source>no lot</source>
            <translation>pas de lot</translation>
        </message>
        <message>
            <source>lot %1</source>
            <translation>lot %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>Thread %1: %2, %3. %4. %5, %6, %7. %8</source>
            <comment>number, side, zone, ending, thread, lot, volume, caution</comment>
            <translation>Fil %1 : %2, %3. %4. %5, %6, %7. %8</translation>
        </message>
        <message>
            <source>Cautions explained</source>
            <translation>Précautions expliquées</translation>
        </message>
        <message>
            <source>Consent</source>
            <translation>Consentement</translation>
        </message>
        <message>
            <source>Dressings</source>
            <translation>Pansements</translation>
        </message>
        <message>
            <source>Scores right after</source>
            <translation>Valeurs juste après</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>none</source>
            <translation>aucune</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
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
            <translation>%1 mL hors trajets</translation>
        </message>
        <message>
            <source>%1, expiry %2</source>
            <comment>lot, date as on the pack</comment>
            <translation>%1, péremption %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>label, value</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>May teach the usual range</source>
            <translation>Peut servir à la plage habituelle</translation>
        </message>
        <message>
            <source>Weight</source>
            <translation>Poids</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise</source>
            <translation>Lidocaïne donnée autrement</translation>
        </message>
        <message>
            <source>epinephrine %1</source>
            <translation>adrénaline %1</translation>
        </message>
        <message>
            <source>not buffered</source>
            <translation>non tamponnée</translation>
        </message>
        <message>
            <source>not weighed</source>
            <translation>non pesé</translation>
        </message>
        <message>
            <source>%1, %2%</source>
            <comment>drug, percent</comment>
            <translation>%1, %2 %</translation>
        </message>
        <message>
            <source>buffered with 8.4% bicarbonate, 1 part to %1</source>
            <translation>tamponnée au bicarbonate à 8,4 %, 1 part pour %1</translation>
        </message>
        <message>
            <source>One more along the same track</source>
            <translation>Un de plus sur le même trajet</translation>
        </message>
        <message>
            <source>Taken out and placed anew</source>
            <translation>Retiré et reposé</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fils posés par</translation>
        </message>
        <message>
            <source>not written down</source>
            <translation>non noté</translation>
        </message>
        <message>
            <source>What you chose stays. The drawing says otherwise: %1.</source>
            <translation>Votre choix est conservé. Le dessin dit autre chose : %1.</translation>
        </message>
        <message>
            <source>Sharp needle</source>
            <translation>Aiguille pointue</translation>
        </message>
        <message>
            <source>Blunt cannula</source>
            <translation>Canule mousse</translation>
        </message>
        <message>
            <source>%1, %2 mm</source>
            <comment>needle or cannula, its length</comment>
            <translation>%1, %2 mm</translation>
        </message>
        <message>
            <source>Needle or cannula of %1 mm</source>
            <translation>Aiguille ou canule de %1 mm</translation>
        </message>
        <message>
            <source>no epinephrine</source>
            <translation>sans adrénaline</translation>
        </message>
        <message>
            <source>epinephrine at the entry point</source>
            <translation>adrénaline au point d’entrée</translation>
        </message>
        <message>
            <source>epinephrine along the track</source>
            <translation>adrénaline le long du trajet</translation>
        </message>
        <message>
            <source>epinephrine at entry point and along the track</source>
            <translation>adrénaline au point d’entrée et le long du trajet</translation>
        </message>
        <message>
            <source>Planned: %1. Placed: %2.</source>
            <comment>threads, threads</comment>
            <translation>Prévu : %1. Posé : %2.</translation>
        </message>
        <message>
            <source>Left out: %1.</source>
            <comment>numbers of threads in the plan</comment>
            <translation>Non posé : %1.</translation>
        </message>
        <message>
            <source>Not in the plan: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Hors du plan : %1.</translation>
        </message>
        <message>
            <source>Moved: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Déplacé : %1.</translation>
        </message>
        <message>
            <source>Otherwise than planned: %1.</source>
            <comment>numbers of threads</comment>
            <translation>Différent du plan : %1.</translation>
        </message>
        <message>
            <source>As planned.</source>
            <translation>Conforme au plan.</translation>
        </message>
        <message>
            <source>%1 (in the plan %2)</source>
            <comment>number of a thread, its number in the plan</comment>
            <translation>%1 (%2 dans le plan)</translation>
        </message>
        <message>
            <source>Left out.</source>
            <translation>Non posé.</translation>
        </message>
        <message>
            <source>Placed as thread %1.</source>
            <translation>Posé : fil %1.</translation>
        </message>
        <message>
            <source>Moved.</source>
            <translation>Déplacé.</translation>
        </message>
        <message>
            <source>Otherwise than planned.</source>
            <translation>Différent du plan.</translation>
        </message>
        <message>
            <source>Planned thread %1: %2, %3. %4. %5. %6</source>
            <comment>number, side, zone, ending, thread, what became of it</comment>
            <translation>Fil prévu %1 : %2, %3. %4. %5. %6</translation>
        </message>
        <message>
            <source>The plan</source>
            <translation>Le plan</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product as on the pack</comment>
            <translation>%1, produit %2</translation>
        </message>
        <message>
            <source>%1: %2; until then %3</source>
            <comment>label, what stands there now, what stood there</comment>
            <translation>%1 : %2 ; jusque-là %3</translation>
        </message>
        <message>
            <source>Written in: %1</source>
            <comment>a thread</comment>
            <translation>Ajouté : %1</translation>
        </message>
        <message>
            <source>Taken out of the record: %1</source>
            <comment>a thread</comment>
            <translation>Retiré de l’enregistrement : %1</translation>
        </message>
        <message>
            <source>Thread %1</source>
            <comment>its number</comment>
            <translation>Fil %1</translation>
        </message>
        <message>
            <source>Thread %1, until then %2</source>
            <comment>its number, its former number</comment>
            <translation>Fil %1, jusque-là %2</translation>
        </message>
        <message>
            <source>drawn elsewhere</source>
            <translation>dessiné ailleurs</translation>
        </message>
        <message>
            <source>When the treatment was</source>
            <translation>Quand le traitement a eu lieu</translation>
        </message>
        <message>
            <source>The threads are numbered otherwise.</source>
            <translation>Les fils sont numérotés autrement.</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anesthésique</translation>
        </message>
        <message>
            <source>Threads of the plan</source>
            <translation>Fils du plan</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Remarque</translation>
        </message>
        <message>
            <source>Recorded again %1, without a reason</source>
            <comment>when</comment>
            <translation>Enregistré de nouveau %1, sans motif</translation>
        </message>
        <message>
            <source>somebody</source>
            <translation>quelqu’un</translation>
        </message>
        <message>
            <source>Corrected %1 by %2. Why: %3</source>
            <comment>when, who, reason</comment>
            <translation>Corrigé %1 par %2. Pourquoi : %3</translation>
        </message>
        <message>
            <source>What stood there until then has not arrived at this desk.</source>
            <translation>Ce qui y figurait jusque-là n’est pas arrivé à ce poste.</translation>
        </message>
        <message>
            <source>Nothing differs from what stood there.</source>
            <translation>Rien ne diffère de ce qui y figurait.</translation>
        </message>
        <message>
            <source>This course and its phone count by another day of the treatment, or by other scores right after it, than the record says. Correct the record, or record it once more as it is: then they count by it.</source>
            <translation>Ce suivi et son téléphone comptent à partir d’un autre jour du traitement, ou d’autres scores juste après, que ce que dit l’enregistrement. Corrigez l’enregistrement, ou enregistrez-le de nouveau tel quel : ils compteront alors d’après lui.</translation>
        </message>
        <message>
            <source>Two desks recorded this without knowing of each other. The later record holds as a whole; look below what the other one said, and correct what is missing.</source>
            <translation>Deux postes ont enregistré ceci sans savoir l’un de l’autre. L’enregistrement le plus récent vaut en entier ; regardez plus bas ce que disait l’autre et corrigez ce qui manque.</translation>
        </message>
        <message>
            <source>No phone has this course: nothing changes on one.</source>
            <translation>Aucun téléphone n’a ce suivi : rien n’y change.</translation>
        </message>
        <message>
            <source>Her phone holds of the treatment only when it was and the scores right after. Both stay as they are; nothing of this goes there.</source>
            <translation>Son téléphone ne garde du traitement que sa date et les scores juste après. Les deux restent tels quels ; rien de ceci n’y est envoyé.</translation>
        </message>
        <message>
            <source>With the next sync her phone gets when the treatment was and the scores right after, and counts days, reminders and warnings by them. Until then it goes by the old ones. Findings are judged anew by both; what was raised stays, but a phone with an older program drops what the new day does not raise.</source>
            <translation>À la prochaine synchronisation, son téléphone reçoit la date du traitement et les scores juste après, et compte d’après eux jours, rappels et alertes. Jusque-là il se règle sur les anciens. Les constats sont jugés à nouveau des deux côtés ; ce qui a été signalé reste, mais un téléphone dont le programme est plus ancien laisse tomber ce que le nouveau jour ne déclenche pas.</translation>
        </message>
        <message>
            <source>The visit that was agreed does not lie 1 to 60 days after that: agree on another one.</source>
            <translation>Le rendez-vous convenu ne tombe pas 1 à 60 jours après : convenez d’un autre.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentAnaesthetic</name>
        <message>
            <source>Solution</source>
            <translation>Solution</translation>
        </message>
        <message>
            <source>Strength</source>
            <translation>Concentration</translation>
        </message>
        <message>
            <source>Epinephrine</source>
            <translation>Adrénaline</translation>
        </message>
        <message>
            <source>Of this solution outside the tracks: entry points, blocks</source>
            <translation>De cette solution hors trajets : points d’entrée, blocs</translation>
        </message>
        <message>
            <source>Weight, kg</source>
            <translation>Poids, kg</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise, mg</source>
            <translation>Lidocaïne donnée autrement, mg</translation>
        </message>
        <message>
            <source>Nerve blocks, other strengths</source>
            <translation>Blocs nerveux, autres concentrations</translation>
        </message>
        <message>
            <source>Buffered with 8.4% bicarbonate</source>
            <translation>Tamponnée au bicarbonate à 8,4 %</translation>
        </message>
        <message>
            <source>Where it held epinephrine, all threads at once</source>
            <translation>Où il contenait de l’adrénaline, tous les fils à la fois</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCare</name>
        <message>
            <source>Care and consent</source>
            <translation>Soins et consentement</translation>
        </message>
        <message>
            <source>Small dressings on the entry points</source>
            <translation>Petits pansements sur les points d’entrée</translation>
        </message>
        <message>
            <source>Cautions explained: what is usual, when to call, what to spare</source>
            <translation>Précautions expliquées : ce qui est habituel, quand appeler, quoi ménager</translation>
        </message>
        <message>
            <source>Consent to the treatment given</source>
            <translation>Le consentement au traitement a été donné</translation>
        </message>
        <message>
            <source>This course may teach the clinic's usual range, without a name</source>
            <translation>Ce suivi peut servir, sans nom, à établir la plage habituelle de la clinique</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Remarque</translation>
        </message>
        <message>
            <source>Before it can be recorded</source>
            <translation>À compléter avant d’enregistrer</translation>
        </message>
        <message>
            <source>Right after the treatment, 0 to 10</source>
            <translation>Juste après le traitement, 0 à 10</translation>
        </message>
        <message>
            <source>What you see now, on each side of the patient. Leave a dash where you did not look.</source>
            <translation>Ce que vous voyez maintenant, de chaque côté du patient. Laissez un tiret là où vous n’avez pas regardé.</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Droite</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Gauche</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fils posés par</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPage</name>
        <message>
            <source>Treatment of %1</source>
            <translation>Traitement de %1</translation>
        </message>
        <message>
            <source>New treatment</source>
            <translation>Nouveau traitement</translation>
        </message>
        <message>
            <source>Taken up from the kept draft, %1</source>
            <translation>Repris du brouillon conservé, %1</translation>
        </message>
        <message>
            <source>Start over</source>
            <translation>Recommencer</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Retour</translation>
        </message>
        <message>
            <source>Next: %1</source>
            <translation>Suite : %1</translation>
        </message>
        <message>
            <source>Record the treatment</source>
            <translation>Enregistrer le traitement</translation>
        </message>
        <message>
            <source>%1 What you write is kept as a draft.</source>
            <translation>%1 Ce que vous écrivez est gardé comme brouillon.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Rétablir</translation>
        </message>
        <message>
            <source>Empties everything but the patient; can be undone.</source>
            <translation>Vide tout sauf la personne ; peut être annulé.</translation>
        </message>
        <message>
            <source>Correct the treatment of %1</source>
            <translation>Corriger le traitement de %1</translation>
        </message>
        <message>
            <source>Drop the correction</source>
            <translation>Abandonner la correction</translation>
        </message>
        <message>
            <source>The record stays as it is.</source>
            <translation>L’enregistrement reste tel quel.</translation>
        </message>
        <message>
            <source>Record the correction</source>
            <translation>Enregistrer la correction</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPatient</name>
        <message>
            <source>Known patients</source>
            <translation>Patients connus</translation>
        </message>
        <message>
            <source>Name or phone</source>
            <translation>Nom ou téléphone</translation>
        </message>
        <message>
            <source>Nobody found. Register the patient beside this.</source>
            <translation>Aucun résultat. Inscrivez le patient ci-contre.</translation>
        </message>
        <message>
            <source>New patient</source>
            <translation>Nouveau patient</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Numéro pour appeler le patient</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Langue du journal</translation>
        </message>
        <message>
            <source>Register</source>
            <translation>Inscrire</translation>
        </message>
        <message>
            <source>Begun and not recorded</source>
            <translation>Commencé et non enregistré</translation>
        </message>
    </context>
    <context>
        <name>TreatmentThreads</name>
        <message>
            <source>Draw a thread on the chart: press on the entry point and let go at the end. With keys: arrows and Space.</source>
            <translation>Tracez un fil sur la carte : appuyez au point d’entrée, relâchez à l’extrémité. Au clavier : flèches et Espace.</translation>
        </message>
    </context>
    <context>
        <name>UndoBar</name>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
    </context>
    <context>
        <name>UnlockPage</name>
        <message>
            <source>Passphrase</source>
            <translation>Phrase secrète</translation>
        </message>
        <message>
            <source>Passphrase once more</source>
            <translation>Phrase secrète encore une fois</translation>
        </message>
        <message>
            <source>Unlock</source>
            <translation>Déverrouiller</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Configurer</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Langue</translation>
        </message>
        <message>
            <source>Look around with invented patients</source>
            <translation>Découvrir avec des patients fictifs</translation>
        </message>
        <message>
            <source>A clinic of its own that is gone when you lock it. The clinic's own vault stays shut.</source>
            <translation>Une clinique à part, qui disparaît au verrouillage. Le coffre de la clinique reste fermé.</translation>
        </message>
        <message>
            <source>Recovery code from the paper</source>
            <translation>Code de secours du papier</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Une nouvelle phrase secrète</translation>
        </message>
        <message>
            <source>Set this passphrase and unlock</source>
            <translation>Définir cette phrase secrète et déverrouiller</translation>
        </message>
        <message>
            <source>I know the passphrase</source>
            <translation>Je connais la phrase secrète</translation>
        </message>
        <message>
            <source>I lost the passphrase</source>
            <translation>J’ai perdu la phrase secrète</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Arrêter</translation>
        </message>
        <message>
            <source>Nothing has been written yet.</source>
            <translation>Rien n’a encore été écrit.</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Emergency</source>
            <translation>Urgence</translation>
        </message>
        <message>
            <source>Call now</source>
            <translation>Appeler maintenant</translation>
        </message>
        <message>
            <source>Next working day</source>
            <translation>Prochain jour ouvré</translation>
        </message>
        <message>
            <source>At the follow-up</source>
            <translation>Au contrôle</translation>
        </message>
        <message>
            <source>The phone said to call the emergency number. Make sure that help is on its way.</source>
            <translation>Le téléphone a dit d’appeler les urgences. Assurez-vous que les secours sont en route.</translation>
        </message>
        <message>
            <source>The phone said to call the clinic today. Call the patient if no call came.</source>
            <translation>Le téléphone a dit d’appeler la clinique aujourd’hui. Si aucun appel n’est venu, appelez le patient.</translation>
        </message>
        <message>
            <source>The patient expects an answer on the next working day.</source>
            <translation>Le patient attend une réponse le prochain jour ouvré.</translation>
        </message>
        <message>
            <source>Bring it up at the follow-up.</source>
            <translation>À aborder au contrôle.</translation>
        </message>
        <message>
            <source>Hard to breathe or to swallow</source>
            <translation>Difficulté à respirer ou à avaler</translation>
        </message>
        <message>
            <source>Neck or jaw swelling that grows fast</source>
            <translation>Gonflement du cou ou de la mâchoire qui augmente vite</translation>
        </message>
        <message>
            <source>Throat or tongue swells, wheeze, faint or hives</source>
            <translation>Gorge ou langue qui enfle, respiration sifflante, malaise ou urticaire</translation>
        </message>
        <message>
            <source>Metal taste, ringing ears, confusion or twitching</source>
            <translation>Goût de métal, oreilles qui sifflent, confusion ou secousses</translation>
        </message>
        <message>
            <source>Severely ill: hard shivering, confused or mottled skin</source>
            <translation>État grave : grands frissons, confusion ou peau marbrée</translation>
        </message>
        <message>
            <source>Face droops with a weak arm or slurred speech</source>
            <translation>Visage affaissé avec bras faible ou parole troublée</translation>
        </message>
        <message>
            <source>Sudden loss of sight or double vision</source>
            <translation>Perte soudaine de la vue ou vision double</translation>
        </message>
        <message>
            <source>One side swells fast</source>
            <translation>Un côté enfle vite</translation>
        </message>
        <message>
            <source>Skin white, grey or net-like, cold or blistering</source>
            <translation>Peau blanche, grise ou en filet, froide ou avec cloques</translation>
        </message>
        <message>
            <source>Colour change near an entry point</source>
            <translation>Changement de couleur près d’un point d’entrée</translation>
        </message>
        <message>
            <source>Warmer than the other side</source>
            <translation>Plus chaud que l’autre côté</translation>
        </message>
        <message>
            <source>Firm, shiny or tight</source>
            <translation>Dur, luisant ou tendu</translation>
        </message>
        <message>
            <source>More tender than yesterday</source>
            <translation>Plus sensible qu’hier</translation>
        </message>
        <message>
            <source>The edge has moved</source>
            <translation>Le bord s’est étendu</translation>
        </message>
        <message>
            <source>Thick or milky fluid</source>
            <translation>Liquide épais ou laiteux</translation>
        </message>
        <message>
            <source>Thread end through the skin</source>
            <translation>Bout de fil à travers la peau</translation>
        </message>
        <message>
            <source>Weakness of the face</source>
            <translation>Faiblesse faciale</translation>
        </message>
        <message>
            <source>Cheek swells on eating, or clear fluid</source>
            <translation>Joue qui enfle en mangeant, ou liquide clair</translation>
        </message>
        <message>
            <source>Still bleeding after 15 minutes of pressure</source>
            <translation>Saigne encore après 15 minutes d’appui</translation>
        </message>
        <message>
            <source>A lump that beats</source>
            <translation>Bosse qui bat</translation>
        </message>
        <message>
            <source>Thread seen or felt, skin calm</source>
            <translation>Fil visible ou palpable, peau calme</translation>
        </message>
        <message>
            <source>Chills</source>
            <translation>Frissons</translation>
        </message>
        <message>
            <source>Brow</source>
            <translation>Sourcil</translation>
        </message>
        <message>
            <source>Temple</source>
            <translation>Tempe</translation>
        </message>
        <message>
            <source>Midface</source>
            <translation>Tiers moyen</translation>
        </message>
        <message>
            <source>Cheek</source>
            <translation>Joue</translation>
        </message>
        <message>
            <source>Nasolabial fold</source>
            <translation>Sillon nasogénien</translation>
        </message>
        <message>
            <source>Marionette fold</source>
            <translation>Pli d’amertume</translation>
        </message>
        <message>
            <source>Jawline</source>
            <translation>Ligne mandibulaire</translation>
        </message>
        <message>
            <source>Under the chin</source>
            <translation>Sous le menton</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Cou</translation>
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
            <translation>Autre matériau</translation>
        </message>
        <message>
            <source>Smooth</source>
            <translation>Lisse</translation>
        </message>
        <message>
            <source>Twisted</source>
            <translation>Torsadé</translation>
        </message>
        <message>
            <source>Barbed, one way</source>
            <translation>Cranté, un sens</translation>
        </message>
        <message>
            <source>Barbed, two ways</source>
            <translation>Cranté, deux sens</translation>
        </message>
        <message>
            <source>Moulded</source>
            <translation>Moulé</translation>
        </message>
        <message>
            <source>Cones</source>
            <translation>À cônes</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Au-delà de la zone mobile</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>En deçà de la zone mobile</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Gauche</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Droite</translation>
        </message>
        <message>
            <source>Both</source>
            <translation>Les deux</translation>
        </message>
        <message>
            <source>Front</source>
            <translation>De face</translation>
        </message>
        <message>
            <source>From the patient's left</source>
            <translation>Côté gauche du patient</translation>
        </message>
        <message>
            <source>From the patient's right</source>
            <translation>Côté droit du patient</translation>
        </message>
        <message>
            <source>Lidocaine with epinephrine</source>
            <translation>Lidocaïne avec adrénaline</translation>
        </message>
        <message>
            <source>Lidocaine, plain</source>
            <translation>Lidocaïne sans adrénaline</translation>
        </message>
        <message>
            <source>Seen</source>
            <translation>Vu</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Pris en charge</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Appelé</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Visite avancée</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Clos</translation>
        </message>
        <message>
            <source>Reopened</source>
            <translation>Rouvert</translation>
        </message>
        <message>
            <source>Reassured: usual course, explained</source>
            <translation>Rassuré : évolution habituelle, expliquée</translation>
        </message>
        <message>
            <source>Advised: told what to do at home</source>
            <translation>Conseillé : conduite à tenir à domicile</translation>
        </message>
        <message>
            <source>Treated in the clinic</source>
            <translation>Traité à la clinique</translation>
        </message>
        <message>
            <source>Sent to urgent care</source>
            <translation>Envoyé aux urgences</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Non joint</translation>
        </message>
        <message>
            <source>Very much better</source>
            <translation>Très nettement mieux</translation>
        </message>
        <message>
            <source>Much better</source>
            <translation>Nettement mieux</translation>
        </message>
        <message>
            <source>Better</source>
            <translation>Mieux</translation>
        </message>
        <message>
            <source>Unchanged</source>
            <translation>Inchangé</translation>
        </message>
        <message>
            <source>Worse</source>
            <translation>Moins bien</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hématome</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infection</translation>
        </message>
        <message>
            <source>Thread end out</source>
            <translation>Extrusion de fil</translation>
        </message>
        <message>
            <source>Lasting puckering</source>
            <translation>Creux persistant</translation>
        </message>
        <message>
            <source>Visible thread</source>
            <translation>Fil visible</translation>
        </message>
        <message>
            <source>Nerve weakness</source>
            <translation>Parésie nerveuse</translation>
        </message>
        <message>
            <source>Lasting numbness</source>
            <translation>Engourdissement persistant</translation>
        </message>
        <message>
            <source>Salivary leak</source>
            <translation>Fuite salivaire</translation>
        </message>
        <message>
            <source>Skin injury</source>
            <translation>Lésion cutanée</translation>
        </message>
        <message>
            <source>Asymmetry</source>
            <translation>Asymétrie</translation>
        </message>
        <message>
            <source>Other, see note</source>
            <translation>Autre, voir remarque</translation>
        </message>
        <message>
            <source>That passphrase does not open this vault.</source>
            <translation>Cette phrase secrète n’ouvre pas ce coffre.</translation>
        </message>
        <message>
            <source>Too many tries. Wait a moment, then try again.</source>
            <translation>Trop d’essais. Attendez un moment, puis réessayez.</translation>
        </message>
        <message>
            <source>The vault on this computer is damaged. Nothing was changed. Restore it from a backup.</source>
            <translation>Le coffre de cet ordinateur est endommagé. Rien n’a été modifié. Restaurez-le depuis une sauvegarde.</translation>
        </message>
        <message>
            <source>The disk is full. Nothing was saved. Free some space and try again.</source>
            <translation>Le disque est plein. Rien n’a été enregistré. Libérez de la place et réessayez.</translation>
        </message>
        <message>
            <source>The disk reported an error. Nothing was saved.</source>
            <translation>Le disque a signalé une erreur. Rien n’a été enregistré.</translation>
        </message>
        <message>
            <source>The hub cannot be reached. What you record is kept here and sent later.</source>
            <translation>Le hub est injoignable. Ce que vous enregistrez est gardé ici et envoyé plus tard.</translation>
        </message>
        <message>
            <source>Something arrived that is not genuine. It was kept apart and not used.</source>
            <translation>Quelque chose de non authentique est arrivé. Cela a été mis à part et n’a pas été utilisé.</translation>
        </message>
        <message>
            <source>Its time is over. Start again.</source>
            <translation>Le délai est passé. Recommencez.</translation>
        </message>
        <message>
            <source>There is one already.</source>
            <translation>Il en existe déjà un.</translation>
        </message>
        <message>
            <source>It is not there.</source>
            <translation>Introuvable.</translation>
        </message>
        <message>
            <source>The vault is locked. Unlock it first.</source>
            <translation>Le coffre est verrouillé. Déverrouillez-le d’abord.</translation>
        </message>
        <message>
            <source>It was refused.</source>
            <translation>Refusé.</translation>
        </message>
        <message>
            <source>Something is missing or out of range: %1</source>
            <translation>Quelque chose manque ou est hors limites : %1</translation>
        </message>
        <message>
            <source>This needs a newer version of the program.</source>
            <translation>Il faut pour cela une version plus récente du programme.</translation>
        </message>
        <message>
            <source>That is too long.</source>
            <translation>C’est trop long.</translation>
        </message>
        <message>
            <source>That is not possible now.</source>
            <translation>Impossible pour l’instant.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln invented course(s)</source>
            <translation>
                <numerusform>%Ln suivi inventé</numerusform>
                <numerusform>%Ln suivis inventés</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln uncomplicated course(s)</source>
            <translation>
                <numerusform>%Ln suivi sans complication</numerusform>
                <numerusform>%Ln suivis sans complication</numerusform>
            </translation>
        </message>
        <message>
            <source>Without TLS others could read along: plain HTTP is for a hub on this very computer. Nothing was sent.</source>
            <translation>Sans TLS, d’autres pourraient lire les échanges : HTTP seul est réservé à un hub sur cet ordinateur même. Rien n’a été envoyé.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call now, and make sure that help is on its way.</source>
            <translation>On ne sait pas si le téléphone a affiché cette alerte. Appelez maintenant et assurez-vous que les secours sont en route.</translation>
        </message>
        <message>
            <source>It is not known whether the phone has shown this warning. Call the patient now.</source>
            <translation>On ne sait pas si le téléphone a affiché cette alerte. Appelez le patient maintenant.</translation>
        </message>
        <message>
            <source>Blood gathered under the skin as a lump, which was watched closely, pressed, drained or operated on; a flat bruise is none.</source>
            <translation>Sang accumulé sous la peau en une boule, surveillée de près, comprimée, drainée ou opérée ; un bleu plat n’en est pas un.</translation>
        </message>
        <message>
            <source>Pus, or redness, warmth and pain that spread, treated as an infection.</source>
            <translation>Du pus, ou une rougeur, une chaleur et une douleur qui s’étendent, traitées comme une infection.</translation>
        </message>
        <message>
            <source>An end of a thread stands out of the skin or lies bare.</source>
            <translation>Une extrémité du fil sort de la peau ou est à nu.</translation>
        </message>
        <message>
            <source>A dimple or fold along a thread that is still there at the follow-up.</source>
            <translation>Un creux ou un pli le long d’un fil, encore là au contrôle.</translation>
        </message>
        <message>
            <source>A thread can be seen or felt through closed skin, and troubles the patient.</source>
            <translation>Un fil se voit ou se sent sous une peau fermée et gêne la patiente.</translation>
        </message>
        <message>
            <source>A part of the face moves less than before the treatment, after the anaesthetic has worn off.</source>
            <translation>Une partie du visage bouge moins qu’avant le traitement, une fois l’anesthésie dissipée.</translation>
        </message>
        <message>
            <source>Feeling in a part of the face is less or other than before, still at the follow-up.</source>
            <translation>La sensibilité d’une partie du visage est moindre ou autre qu’avant, encore au contrôle.</translation>
        </message>
        <message>
            <source>Clear fluid from the cheek or swelling of it, more while eating.</source>
            <translation>Liquide clair venant de la joue, ou gonflement de celle-ci, davantage en mangeant.</translation>
        </message>
        <message>
            <source>Skin that blistered, died, broke open or was left with a scar or a dark mark.</source>
            <translation>Peau qui a fait des cloques, s’est nécrosée, s’est ouverte, ou garde une cicatrice ou une tache foncée.</translation>
        </message>
        <message>
            <source>The sides differ more than before the treatment, in the eyes of patient or practitioner.</source>
            <translation>Les côtés diffèrent plus qu’avant le traitement, aux yeux de la patiente ou du praticien.</translation>
        </message>
        <message>
            <source>Anything else that needed a visit, a medicine or an act; the note says what.</source>
            <translation>Toute autre chose qui a demandé une visite, un médicament ou un geste ; la remarque dit quoi.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::app::DeskProgram</name>
        <message>
            <source>Who is at the desk?</source>
            <translation>Qui est au poste ?</translation>
        </message>
        <message>
            <source>Queue</source>
            <translation>File d’attente</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Suivis</translation>
        </message>
        <message>
            <source>Treatment</source>
            <translation>Traitement</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Relier un téléphone</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Suivi</translation>
        </message>
        <message>
            <source>Follow-up</source>
            <translation>Contrôle</translation>
        </message>
        <message>
            <source>Follow-up sheet</source>
            <translation>Fiche de contrôle</translation>
        </message>
        <message>
            <source>Protocols</source>
            <translation>Protocoles</translation>
        </message>
        <message>
            <source>Clinic</source>
            <translation>Clinique</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Réglages</translation>
        </message>
        <message>
            <source>Practice</source>
            <translation>Bilan d’activité</translation>
        </message>
        <message>
            <source>Change the protocol</source>
            <translation>Modifier le protocole</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <translation>Relève</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ajouter un poste</translation>
        </message>
        <message>
            <source>Desks</source>
            <translation>Postes</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Rejoindre les autres postes de la clinique</translation>
        </message>
        <message>
            <source>Backup and keys</source>
            <translation>Sauvegarde et clés</translation>
        </message>
        <message>
            <source>About Ebbline</source>
            <translation>À propos d’Ebbline</translation>
        </message>
        <message>
            <source>Who did what</source>
            <translation>Qui a fait quoi</translation>
        </message>
        <message>
            <source>Photographs</source>
            <translation>Photos</translation>
        </message>
        <message>
            <source>The recovery code is not shown any more. If it is not on paper, make a new one.</source>
            <translation>Le code de secours n’est plus affiché. S’il n’est pas sur papier, créez-en un nouveau.</translation>
        </message>
        <message>
            <source>A protocol from a file</source>
            <translation>Un protocole venu d’un fichier</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicEditor</name>
        <message>
            <source>The clinic's name.</source>
            <translation>Le nom de la clinique.</translation>
        </message>
        <message>
            <source>The clinic's phone number.</source>
            <translation>Le numéro de téléphone de la clinique.</translation>
        </message>
        <message>
            <source>The emergency number, digits only, for example 112.</source>
            <translation>Le numéro d’urgence, chiffres seulement, par exemple 112.</translation>
        </message>
        <message>
            <source>At least one person who works at the desk.</source>
            <translation>Au moins une personne qui travaille à ce poste.</translation>
        </message>
        <message>
            <source>The fingerprint of the hub's key: 64 digits 0 to 9 and A to F.</source>
            <translation>L’empreinte de la clé du hub : 64 caractères, 0 à 9 et A à F.</translation>
        </message>
        <message>
            <source>No number is recorded yet.</source>
            <translation>Aucun numéro enregistré pour l’instant.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>clinic, phone</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Astreinte : %1</translation>
        </message>
        <message>
            <source>Emergency: %1</source>
            <translation>Urgences : %1</translation>
        </message>
        <message>
            <source>Saved, %1</source>
            <translation>Enregistré, %1</translation>
        </message>
        <message>
            <source>The clinic's key is copied.</source>
            <translation>La clé de la clinique est copiée.</translation>
        </message>
        <message>
            <source>The clinic's phone number as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>Le numéro de téléphone de la clinique en un seul numéro, sans lettres, « / », « , », « ; » ni « (0) », par exemple +00 555 0100.</translation>
        </message>
        <message>
            <source>The number on call as one number, without letters, “/”, “,”, “;” or “(0)”, for example +00 555 0100.</source>
            <translation>Le numéro d’astreinte en un seul numéro, sans lettres, « / », « , », « ; » ni « (0) », par exemple +00 555 0100.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseBoard</name>
        <message>
            <source>Seen: %1</source>
            <translation>Vu : %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Pris en charge : %1</translation>
        </message>
        <message>
            <source>Treated %1 · %2 · %3, version %4</source>
            <comment>date, threads, protocol, its version</comment>
            <translation>Traité le %1 · %2 · %3, version %4</translation>
        </message>
        <message>
            <source>Last entry %1</source>
            <translation>Dernière note %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Pas encore de note</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Téléphone relié</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Aucun téléphone relié</translation>
        </message>
        <message>
            <source>No reminder due yet</source>
            <translation>Pas encore de rappel à faire</translation>
        </message>
        <message>
            <source>Too long: shorten it before sending.</source>
            <translation>Trop long : raccourcissez avant d’envoyer.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln thread(s)</source>
            <translation>
                <numerusform>%Ln fil</numerusform>
                <numerusform>%Ln fils</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln reminder(s) answered “done”</source>
            <translation>
                <numerusform>Réponse « Fait » : %1 sur %Ln rappel</numerusform>
                <numerusform>Réponse « Fait » : %1 sur %Ln rappels</numerusform>
            </translation>
        </message>
        <message>
            <source>No phone is linked: a message cannot be sent.</source>
            <translation>Aucun téléphone relié : impossible d’envoyer un message.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré : conservez-le comme le dossier du patient.</translation>
        </message>
        <message>
            <source>Save the course</source>
            <translation>Enregistrer le suivi</translation>
        </message>
        <message numerus="yes">
            <source>%Ln new or corrected entry(ies), not opened yet</source>
            <translation>
                <numerusform>%Ln note nouvelle ou corrigée, pas encore ouverte</numerusform>
                <numerusform>%Ln notes nouvelles ou corrigées, pas encore ouvertes</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CourseList</name>
        <message>
            <source>Treatments that are recorded show up here.</source>
            <translation>Les traitements enregistrés apparaissent ici.</translation>
        </message>
        <message>
            <source>No patient and no lot number matches.</source>
            <translation>Aucun patient ni numéro de lot ne correspond.</translation>
        </message>
        <message>
            <source>Treated %1</source>
            <translation>Traité %1</translation>
        </message>
        <message>
            <source>last entry %1 ago</source>
            <translation>dernière note il y a %1</translation>
        </message>
        <message>
            <source>no entry yet</source>
            <translation>pas encore de note</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Clos</translation>
        </message>
        <message>
            <source>Phone linked, %1</source>
            <translation>Téléphone relié, %1</translation>
        </message>
        <message>
            <source>No phone linked</source>
            <translation>Aucun téléphone relié</translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln note non ouverte</numerusform>
                <numerusform>%Ln notes non ouvertes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) not read</source>
            <translation>
                <numerusform>%Ln message non lu</numerusform>
                <numerusform>%Ln messages non lus</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln suivi</numerusform>
                <numerusform>%Ln suivis</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CurveBoard</name>
        <message>
            <source>L %1  R %2</source>
            <comment>last scores, left and right</comment>
            <translation>G %1  D %2</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <comment>usual range</comment>
            <translation>%1 à %2</translation>
        </message>
        <message>
            <source>entered late</source>
            <translation>saisie après coup</translation>
        </message>
        <message>
            <source>amended</source>
            <translation>corrigée</translation>
        </message>
        <message>
            <source>%1, %2: left %3, right %4, usual %5. %6</source>
            <comment>day, time, scores, usual range, note</comment>
            <translation>%1, %2 : gauche %3, droite %4, habituel %5. %6</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DoseLimits</name>
        <message>
            <source>Plain, mg/kg</source>
            <translation>Sans adrénaline, mg/kg</translation>
        </message>
        <message>
            <source>Plain, in all, mg</source>
            <translation>Sans adrénaline, en tout, mg</translation>
        </message>
        <message>
            <source>With epinephrine, mg/kg</source>
            <translation>Avec adrénaline, mg/kg</translation>
        </message>
        <message>
            <source>With epinephrine, in all, mg</source>
            <translation>Avec adrénaline, en tout, mg</translation>
        </message>
        <message>
            <source>A number up to %1, the label's. Empty: the label's.</source>
            <translation>Un nombre jusqu’à %1, celui du RCP. Vide : celui du RCP.</translation>
        </message>
        <message>
            <source>The label's limits hold.</source>
            <translation>Les limites du RCP s’appliquent.</translation>
        </message>
        <message>
            <source>Lowered by %1, %2</source>
            <comment>person, time</comment>
            <translation>Abaissée par %1, %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::FollowUpEditor</name>
        <message>
            <source>Recorded by %1, %2</source>
            <translation>Enregistré par %1, %2</translation>
        </message>
        <message>
            <source>1, not at all</source>
            <translation>1, pas du tout</translation>
        </message>
        <message>
            <source>2, a little</source>
            <translation>2, un peu</translation>
        </message>
        <message>
            <source>3, fairly</source>
            <translation>3, assez</translation>
        </message>
        <message>
            <source>4, mostly</source>
            <translation>4, en grande partie</translation>
        </message>
        <message>
            <source>5, fully</source>
            <translation>5, tout à fait</translation>
        </message>
        <message>
            <source>Choose how the result compares with before.</source>
            <translation>Choisissez l’évolution par rapport à avant.</translation>
        </message>
        <message>
            <source>Ask the patient how satisfied they are.</source>
            <translation>Demandez au patient son degré de satisfaction.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indiquez qui est au poste.</translation>
        </message>
        <message>
            <source>Say whether the course was uncomplicated.</source>
            <translation>Dites si les suites ont été simples, sans complication.</translation>
        </message>
        <message>
            <source>Say what became of it: %1.</source>
            <translation>Dites ce qu’il en est advenu : %1.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HubWatch</name>
        <message>
            <source>Not heard from the hub yet</source>
            <translation>Encore aucune nouvelle du hub</translation>
        </message>
        <message>
            <source>Last heard from the hub: %1</source>
            <translation>Dernières nouvelles du hub : %1</translation>
        </message>
        <message>
            <source>A phone sent two different histories. Do not rely on its entries; call the patient.</source>
            <translation>Un téléphone a envoyé deux historiques différents. Ne vous fiez pas à ses notes ; appelez le patient.</translation>
        </message>
        <message>
            <source>A message from a phone is missing. The queue may be incomplete.</source>
            <translation>Il manque un message d’un téléphone. La file d’attente est peut-être incomplète.</translation>
        </message>
        <message>
            <source>Another desk of yours sent two different histories. Ask there what was written, and compare it with what stands here.</source>
            <translation>Un autre de vos postes a envoyé deux historiques différents. Demandez là-bas ce qui a été écrit et comparez avec ce qui figure ici.</translation>
        </message>
        <message>
            <source>A message from another desk of yours is missing. What was written there may not be here.</source>
            <translation>Il manque un message d’un autre de vos postes. Ce qui a été écrit là-bas n’est peut-être pas ici.</translation>
        </message>
        <message>
            <source>Some of what arrived was written by a newer program and cannot be shown here. Update this desk. Until then call patients whose phone was updated.</source>
            <translation>Une partie de ce qui est arrivé a été écrite par un programme plus récent et ne peut pas être affichée ici. Mettez ce poste à jour. D’ici là, appelez les patients dont le téléphone a été mis à jour.</translation>
        </message>
        <message>
            <source>The queue may be out of date: nothing was heard for over a day.</source>
            <translation>La file d’attente n’est peut-être pas à jour : aucune nouvelle depuis plus d’un jour.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) could not be verified and were set apart.</source>
            <translation>
                <numerusform>%Ln message n’a pas pu être vérifié et a été mis à part.</numerusform>
                <numerusform>%Ln messages n’ont pas pu être vérifiés et ont été mis à part.</numerusform>
            </translation>
        </message>
        <message>
            <source>Phones not heard of for more than a day: %1</source>
            <comment>list of names</comment>
            <translation>Plus d’un jour sans nouvelles des téléphones de : %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>et %Ln autre</numerusform>
                <numerusform>et %Ln autres</numerusform>
            </translation>
        </message>
        <message>
            <source>%1. What was written there may not be here.</source>
            <translation>%1. Ce qui y a été écrit n’est peut-être pas ici.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) not heard of for more than a day.</source>
            <translation>
                <numerusform>Plus d’un jour sans nouvelles de %Ln téléphone.</numerusform>
                <numerusform>Plus d’un jour sans nouvelles de %Ln téléphones.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have not confirmed for more than a day what was sent to them.</source>
            <translation>
                <numerusform>Depuis plus d’un jour, %Ln téléphone n’a pas confirmé ce qui lui a été envoyé.</numerusform>
                <numerusform>Depuis plus d’un jour, %Ln téléphones n’ont pas confirmé ce qui leur a été envoyé.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln phone(s) have yet to confirm what was sent to them.</source>
            <translation>
                <numerusform>%Ln téléphone doit encore confirmer ce qui lui a été envoyé.</numerusform>
                <numerusform>%Ln téléphones doivent encore confirmer ce qui leur a été envoyé.</numerusform>
            </translation>
        </message>
        <message>
            <source>All phones were heard of within a day or little more, and have confirmed what was sent to them.</source>
            <translation>Tous les téléphones ont donné des nouvelles depuis un jour ou guère plus, et ont confirmé ce qui leur a été envoyé.</translation>
        </message>
        <message>
            <source>This desk runs on older data: a phone holds more from it. Write again what was written here in between.</source>
            <translation>Ce poste travaille sur des données plus anciennes : un téléphone a reçu de lui davantage. Réécrivez ce qui a été écrit ici entre-temps.</translation>
        </message>
        <message>
            <source>For more than %1 days a phone has not taken what was sent to it: %2. Call, before anything is lost.</source>
            <translation>Depuis plus de %1 jours, un téléphone n’a pas reçu ce qui lui a été envoyé : %2. Appelez avant que quelque chose ne se perde.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 fast: please set it.</source>
            <translation>L’horloge de cet ordinateur avance d’environ %1 : réglez-la, s’il vous plaît.</translation>
        </message>
        <message>
            <source>The clock of this computer is about %1 slow: please set it.</source>
            <translation>L’horloge de cet ordinateur retarde d’environ %1 : réglez-la, s’il vous plaît.</translation>
        </message>
        <message>
            <source>This desk runs on older data: another desk of yours holds more from it. What is written here now does not arrive there. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Ce poste travaille sur des données plus anciennes : un autre de vos postes a reçu de lui davantage. Ce qui est écrit ici maintenant n’arrive pas là-bas. Recopiez-le à la main. Ensuite, sur un poste qui a la clé racine, excluez l’autre sous « Postes » et ajoutez-le de nouveau.</translation>
        </message>
        <message>
            <source>Another desk of yours says that it runs on older data. What is written there now does not arrive here. Copy it by hand. Then, on a desk that holds the root key, shut the other one out under Desks and add it again.</source>
            <translation>Un autre de vos postes dit qu’il travaille sur des données plus anciennes. Ce qui y est écrit maintenant n’arrive pas ici. Recopiez-le à la main. Ensuite, sur un poste qui a la clé racine, excluez l’autre sous « Postes » et ajoutez-le de nouveau.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>It is of: %1.</source>
            <comment>list of names, each with how many</comment>
            <translation>Il s’agit de : %1.</translation>
        </message>
        <message>
            <source>Messages from these patients&apos; phones cannot be read here: %1. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <comment>list of names, each with how many</comment>
            <translation>Des messages des téléphones de ces patients ne peuvent pas être lus ici : %1. Appelez et demandez ce qui a été écrit. Si cela dure, faites enregistrer sur le téléphone les données du journal (Réglages, Mes données). Ensuite seulement, supprimez-y le journal et associez de nouveau le téléphone.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PairingBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>À écrire année-mois-jour, par exemple 2029-06-30.</translation>
        </message>
        <message>
            <source>First enter the numbers to call on the Clinic page: the phone shows them with every warning.</source>
            <translation>Saisissez d’abord les numéros à appeler sur la page Clinique : le téléphone les affiche avec chaque alerte.</translation>
        </message>
        <message>
            <source>Choose a protocol and a day for the follow-up.</source>
            <translation>Choisissez un protocole et un jour pour le contrôle.</translation>
        </message>
        <message>
            <source>Link a phone</source>
            <translation>Relier un téléphone</translation>
        </message>
        <message>
            <source>Making a code</source>
            <translation>Création du code</translation>
        </message>
        <message>
            <source>Let the patient scan this code</source>
            <translation>Faites scanner ce code par le patient</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Comparez les numéros</translation>
        </message>
        <message>
            <source>Linking</source>
            <translation>Liaison en cours</translation>
        </message>
        <message>
            <source>The phone is linked</source>
            <translation>Le téléphone est relié</translation>
        </message>
        <message>
            <source>Stop: this code was used twice</source>
            <translation>Stop : ce code a servi deux fois</translation>
        </message>
        <message>
            <source>The code has run out</source>
            <translation>Le code a expiré</translation>
        </message>
        <message>
            <source>No code could be made</source>
            <translation>Aucun code n’a pu être créé</translation>
        </message>
        <message>
            <source>The hub takes the offer. This takes a moment.</source>
            <translation>Le hub reçoit l’offre. Cela prend un instant.</translation>
        </message>
        <message>
            <source>If the camera does not work, the code below can be typed instead. It works once.</source>
            <translation>Si l’appareil photo ne marche pas, le code ci-dessous peut être tapé. Il sert une seule fois.</translation>
        </message>
        <message>
            <source>Read the six digits on the patient's phone. Only if they are the same is it the right phone.</source>
            <translation>Lisez les six chiffres sur le téléphone du patient. Ce n’est le bon téléphone que s’ils sont identiques.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call go to the phone.</source>
            <translation>Le suivi, son plan de soins et les numéros à appeler vont au téléphone.</translation>
        </message>
        <message>
            <source>The course, its care plan and the numbers to call are on their way. The page of the course shows when the first entry arrives.</source>
            <translation>Le suivi, son plan de soins et les numéros à appeler sont en route. La page du suivi indique l’arrivée de la première note.</translation>
        </message>
        <message>
            <source>Somebody else may have read the code. Nothing was linked. Make a new code out of other people's sight.</source>
            <translation>Quelqu’un d’autre a peut-être lu le code. Rien n’a été relié. Créez un nouveau code à l’abri des regards.</translation>
        </message>
        <message>
            <source>A code is valid for ten minutes. Nothing was linked. Make a new one.</source>
            <translation>Un code vaut dix minutes. Rien n’a été relié. Créez-en un nouveau.</translation>
        </message>
        <message>
            <source>Try again.</source>
            <translation>Réessayez.</translation>
        </message>
        <message>
            <source>Valid for %1:%2</source>
            <comment>minutes:seconds</comment>
            <translation>Valable encore %1:%2</translation>
        </message>
        <message>
            <source>First name the hub on the Clinic page.</source>
            <translation>Indiquez d’abord le hub sur la page Clinique.</translation>
        </message>
        <message>
            <source>The patient opens the diary, which asks for a code. Do this together, in the same room.</source>
            <translation>Le patient ouvre le journal, qui demande un code. Faites-le ensemble, dans la même pièce.</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can do this.</source>
            <translation>Seul un poste qui a la clé racine de la clinique peut le faire.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ajouter un poste</translation>
        </message>
        <message>
            <source>Type this at the other desk</source>
            <translation>Tapez ceci sur l’autre poste</translation>
        </message>
        <message>
            <source>The desk is added</source>
            <translation>Le poste est ajouté</translation>
        </message>
        <message>
            <source>Start this program on the other computer, set up its vault, and choose there to join the clinic's other desks. Do this together, in the same room.</source>
            <translation>Démarrez ce programme sur l’autre ordinateur, configurez son coffre et choisissez-y de rejoindre les autres postes de la clinique. Faites-le ensemble, dans la même pièce.</translation>
        </message>
        <message>
            <source>The code works once. The new desk also asks for the hub's address.</source>
            <translation>Le code sert une seule fois. Le nouveau poste demande aussi l’adresse du hub.</translation>
        </message>
        <message>
            <source>Read the six digits on the new desk. Only if they are the same is it the right one.</source>
            <translation>Lisez les six chiffres sur le nouveau poste. Ce n’est le bon que s’ils sont identiques.</translation>
        </message>
        <message>
            <source>The clinic's keys go to the new desk.</source>
            <translation>Les clés de la clinique vont au nouveau poste.</translation>
        </message>
        <message>
            <source>It has the clinic's keys. What patients and desks wrote arrives there once this desk, and then the new one, have asked the hub.</source>
            <translation>Il a les clés de la clinique. Ce que patients et postes ont écrit y arrive dès que ce poste, puis le nouveau, ont interrogé le hub.</translation>
        </message>
        <message>
            <source>A phone before this one has not said what it still holds. What was written on it and not sent is not here.</source>
            <translation>Un téléphone précédent n’a pas dit ce qu’il contient encore. Ce qui y a été écrit sans être envoyé n’est pas ici.</translation>
        </message>
        <message>
            <source>A phone before this one says that everything on it has arrived.</source>
            <translation>Un téléphone précédent indique que tout ce qu’il contient est arrivé.</translation>
        </message>
        <message>
            <source>(of them entries: %L1, messages: %L2, photographs: %L3), the newest of %4. Look at them on that phone together with the patient.</source>
            <translation>(dont notes : %L1, messages : %L2, photographies : %L3), le plus récent de %4. Regardez-les sur ce téléphone avec la personne.</translation>
        </message>
        <message>
            <source>The phone is ended. The hub is told with the next sync and refuses it from then on.</source>
            <translation>Le téléphone est exclu. Le hub en est informé à la prochaine synchronisation et le refuse dès lors.</translation>
        </message>
        <message>
            <source>This course has no phone in use.</source>
            <translation>Ce suivi n’a pas de téléphone en service.</translation>
        </message>
        <message>
            <source>Another phone for this course</source>
            <translation>Un autre téléphone pour ce suivi</translation>
        </message>
        <message numerus="yes">
            <source>A phone before this one still holds %Ln thing(s) that did not arrive</source>
            <translation>
                <numerusform>Un téléphone précédent contient encore %Ln élément qui n’est jamais arrivé</numerusform>
                <numerusform>Un téléphone précédent contient encore %Ln éléments qui ne sont jamais arrivés</numerusform>
            </translation>
        </message>
        <message>
            <source>The phone shows: %1, %2</source>
            <comment>date, time</comment>
            <translation>Le téléphone affiche : %1, %2</translation>
        </message>
        <message>
            <source>The phone shows: %1, without a time</source>
            <comment>date</comment>
            <translation>Le téléphone affiche : %1, sans heure</translation>
        </message>
        <message>
            <source>The follow-up must be 1 to 60 days after the treatment. Choose a day from %1 to %2.</source>
            <comment>date, date</comment>
            <translation>Le contrôle doit avoir lieu 1 à 60 jours après le traitement. Choisissez un jour du %1 au %2.</translation>
        </message>
        <message>
            <source>Write the time of the follow-up as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Écrivez l’heure du contrôle en heures et minutes, par exemple 10:30, ou laissez-la vide.</translation>
        </message>
        <message>
            <source>The hub does not know this clinic yet. Ask whoever runs the hub to run %1 with this clinic&apos;s key. The key stands on the Clinic page, where it can be copied. Then make a new code.</source>
            <comment>a command</comment>
            <translation>Le hub ne connaît pas encore cette clinique. Demandez à son exploitant de lancer %1 avec la clé de cette clinique. La clé se trouve sur la page Clinique, où elle peut être copiée. Créez ensuite un nouveau code.</translation>
        </message>
        <message>
            <source>The phone that is linked now is let go of as soon as the new one is confirmed: what is written there afterwards does not reach the clinic, and it says so. The new phone gets the whole diary. Photographs stay with the clinic. Nothing changes before the six digits are confirmed.</source>
            <translation>Le téléphone lié maintenant est abandonné dès que le nouveau est confirmé : ce qui s’y écrit ensuite n’arrive pas à la clinique, et il le dit. Le nouveau téléphone reçoit tout le journal. Les photographies restent à la clinique. Rien ne change avant la confirmation des six chiffres.</translation>
        </message>
        <message>
            <source>The hub refuses the lost phone as soon as the new one is confirmed, or at once if you only end it. What it did not send stays unknown. The new phone gets the whole diary. Photographs stay with the clinic.</source>
            <translation>Le hub refuse le téléphone perdu dès que le nouveau est confirmé, ou tout de suite si vous y mettez seulement fin. Ce qu’il n’a pas envoyé reste inconnu. Le nouveau téléphone reçoit tout le journal. Les photographies restent à la clinique.</translation>
        </message>
        <message>
            <source>Stop: the numbers were not the same</source>
            <translation>Stop : les nombres n’étaient pas les mêmes</translation>
        </message>
        <message>
            <source>Somebody else may have used the code first. Nothing was linked. Make a new code out of other people&apos;s sight.</source>
            <translation>Quelqu’un d’autre a peut-être utilisé le code avant. Rien n’a été relié. Créez un nouveau code à l’abri des regards.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolBoard</name>
        <message>
            <source>%1, version %2</source>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1, to at most %2 false alerts in 100 uncomplicated courses.</source>
            <translation>Seuils calibrés sur %1, pour au plus %2 fausses alertes sur 100 suivis sans complication.</translation>
        </message>
        <message>
            <source>Thresholds calibrated on %1.</source>
            <translation>Seuils calibrés sur %1.</translation>
        </message>
        <message>
            <source>These are few: the thresholds are drawn towards those before.</source>
            <translation>C’est peu : les seuils sont ramenés vers les précédents.</translation>
        </message>
        <message>
            <source>Rules, or the days that are asked about, were changed since.</source>
            <translation>Depuis, les règles ou les jours demandés ont changé.</translation>
        </message>
        <message>
            <source>It is not shown that they hold the budget of %1 false alerts in 100 uncomplicated courses.</source>
            <translation>Il n’est pas montré qu’ils tiennent le budget de %1 fausses alertes sur 100 suivis sans complication.</translation>
        </message>
        <message>
            <source>They came in a file: other patients may stand behind them.</source>
            <translation>Ils sont venus dans un fichier : d’autres patients peuvent en être la base.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueBoard</name>
        <message>
            <source>Nobody has taken it</source>
            <translation>Personne ne s’en occupe</translation>
        </message>
        <message>
            <source>Last entry %1 ago</source>
            <translation>Dernière note il y a %1</translation>
        </message>
        <message>
            <source>No entry yet</source>
            <translation>Pas encore de note</translation>
        </message>
        <message>
            <source>%1: %2, %3. %4. %5 Since %6.</source>
            <comment>urgency, name, day, title, reason, since</comment>
            <translation>%1 : %2, %3. %4. %5 Depuis %6.</translation>
        </message>
        <message>
            <source>Not heard from: silence is not good news</source>
            <translation>Sans nouvelles : le silence n’est pas une bonne nouvelle</translation>
        </message>
        <message>
            <source>Everyone %1</source>
            <translation>Tous %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>urgency, count</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not heard from</source>
            <translation>Sans nouvelles</translation>
        </message>
        <message>
            <source>Nobody waits</source>
            <translation>Personne n’attend</translation>
        </message>
        <message>
            <source>No match</source>
            <translation>Aucun résultat</translation>
        </message>
        <message>
            <source>Nobody waits for an answer</source>
            <translation>Personne n’attend de réponse</translation>
        </message>
        <message>
            <source>Courses show up here when a warning sign, a rule or a silence asks for a look.</source>
            <translation>Les suivis apparaissent ici quand un signe d’alerte, une règle ou un silence demande votre attention.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, finding</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Closed: %1</source>
            <translation>Clos : %1</translation>
        </message>
        <message numerus="yes">
            <source>and %Ln more</source>
            <translation>
                <numerusform>et %Ln autre</numerusform>
                <numerusform>et %Ln autres</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not opened</source>
            <comment>entries</comment>
            <translation>
                <numerusform>%Ln note non ouverte</numerusform>
                <numerusform>%Ln notes non ouvertes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln emergency(ies)</source>
            <translation>
                <numerusform>%Ln urgence</numerusform>
                <numerusform>%Ln urgences</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln to call now</source>
            <translation>
                <numerusform>%Ln à appeler maintenant</numerusform>
                <numerusform>%Ln à appeler maintenant</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the next working day</source>
            <translation>
                <numerusform>%Ln pour le prochain jour ouvré</numerusform>
                <numerusform>%Ln pour le prochain jour ouvré</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln for the follow-up</source>
            <translation>
                <numerusform>%Ln pour le contrôle</numerusform>
                <numerusform>%Ln pour le contrôle</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln not heard from</source>
            <translation>
                <numerusform>%Ln sans nouvelles</numerusform>
                <numerusform>%Ln sans nouvelles</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln hidden by search or filters</source>
            <translation>
                <numerusform>%Ln masqué par la recherche ou les filtres</numerusform>
                <numerusform>%Ln masqués par la recherche ou les filtres</numerusform>
            </translation>
        </message>
        <message>
            <source>Nobody has acted for %1</source>
            <translation>Sans action depuis %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) wait longer than agreed.</source>
            <translation>
                <numerusform>%Ln attend depuis plus longtemps que convenu.</numerusform>
                <numerusform>%Ln attendent depuis plus longtemps que convenu.</numerusform>
            </translation>
        </message>
        <message>
            <source>On call: %1</source>
            <translation>Astreinte : %1</translation>
        </message>
        <message>
            <source>All</source>
            <translation>Tous</translation>
        </message>
        <message>
            <source>Nobody on it</source>
            <translation>Non pris en charge</translation>
        </message>
        <message>
            <source>Mine</source>
            <translation>Les miens</translation>
        </message>
        <message>
            <source>Not opened</source>
            <translation>Non ouverts</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Appeler aussi pour : %1</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Appel fait : %1</translation>
        </message>
        <message>
            <source>Taken: %1</source>
            <translation>Pris en charge : %1</translation>
        </message>
        <message>
            <source>Take search and filters off to see the others.</source>
            <translation>Retirez la recherche et les filtres pour voir les autres.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln urgent row(s) hidden by search or filters</source>
            <translation>
                <numerusform>%Ln ligne urgente est masquée par la recherche ou les filtres</numerusform>
                <numerusform>%Ln lignes urgentes sont masquées par la recherche ou les filtres</numerusform>
            </translation>
        </message>
        <message>
            <source>Visits missed more than %1 days ago, with nothing written down since: %2</source>
            <translation>Visites manquées depuis plus de %1 jours, sans rien de noté depuis : %2</translation>
        </message>
        <message>
            <source>Only visits missed long ago</source>
            <translation>Seulement des visites manquées depuis longtemps</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SheetBoard</name>
        <message>
            <source>Save the sheet</source>
            <translation>Enregistrer la fiche</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Fichiers PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patient's record.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré : conservez-le comme le dossier du patient.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::StepValue</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 à %2</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TreatmentEditor</name>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fils</translation>
        </message>
        <message>
            <source>Anaesthetic</source>
            <translation>Anesthésique</translation>
        </message>
        <message>
            <source>Care and consent</source>
            <translation>Soins et consentement</translation>
        </message>
        <message>
            <source>Draft kept on this computer, %1</source>
            <translation>Brouillon conservé sur cet ordinateur, %1</translation>
        </message>
        <message>
            <source>Choose or register the patient.</source>
            <translation>Choisissez ou inscrivez le patient.</translation>
        </message>
        <message>
            <source>Draw at least one thread.</source>
            <translation>Tracez au moins un fil.</translation>
        </message>
        <message>
            <source>Note that consent was given.</source>
            <translation>Notez que le consentement a été donné.</translation>
        </message>
        <message>
            <source>Note that the cautions were explained.</source>
            <translation>Notez que les précautions ont été expliquées.</translation>
        </message>
        <message>
            <source>The weight is not a number of kilograms.</source>
            <translation>Le poids n’est pas un nombre de kilogrammes.</translation>
        </message>
        <message>
            <source>Lidocaine given otherwise: want milligrams, 0 to %L1, at most one decimal.</source>
            <translation>Lidocaïne donnée autrement : en milligrammes, de 0 à %L1, une décimale au plus.</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>À écrire année-mois-jour, par exemple 2029-06-30.</translation>
        </message>
        <message>
            <source>This thread was past its expiry on the day of the treatment.</source>
            <translation>Ce fil était périmé le jour du traitement.</translation>
        </message>
        <message>
            <source>The code names no lot and no expiry: type them below.</source>
            <translation>Le code n’indique ni lot ni péremption : tapez-les ci-dessous.</translation>
        </message>
        <message>
            <source>This is no code of a pack that can be read. Nothing was taken from it: scan it again, or type lot and expiry below.</source>
            <translation>Ce n’est pas un code d’emballage lisible. Rien n’en a été repris : scannez-le à nouveau, ou tapez le lot et la péremption ci-dessous.</translation>
        </message>
        <message>
            <source>Draw or choose a thread first.</source>
            <translation>Tracez ou choisissez d’abord un fil.</translation>
        </message>
        <message>
            <source>This record was begun on %1. Say when the treatment was.</source>
            <translation>Cet enregistrement a été commencé le %1. Indiquez quand le traitement a eu lieu.</translation>
        </message>
        <message numerus="yes">
            <source>The treatment was %Ln day(s) ago. Say whether that is right.</source>
            <translation>
                <numerusform>Le traitement date d’il y a %Ln jour. Indiquez si c’est exact.</numerusform>
                <numerusform>Le traitement date d’il y a %Ln jours. Indiquez si c’est exact.</numerusform>
            </translation>
        </message>
        <message>
            <source>This time is still to come. Write when the treatment was.</source>
            <translation>Ce moment est encore à venir. Écrivez quand le traitement a eu lieu.</translation>
        </message>
        <message>
            <source>Write the day of the treatment as year-month-day, for example 2029-06-30.</source>
            <translation>Écrivez le jour du traitement année-mois-jour, par exemple 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time of the treatment as hours and minutes, for example 14:05.</source>
            <translation>Écrivez l’heure du traitement en heures et minutes, par exemple 14:05.</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Non</translation>
        </message>
        <message>
            <source>Placed once</source>
            <translation>Posé une fois</translation>
        </message>
        <message>
            <source>Say why it was redone.</source>
            <translation>Dites pourquoi il a été refait.</translation>
        </message>
        <message>
            <source>Shorten the reason.</source>
            <translation>Raccourcissez la raison.</translation>
        </message>
        <message>
            <source>Thread %L1 was redone: say why.</source>
            <translation>Le fil %L1 a été refait : dites pourquoi.</translation>
        </message>
        <message>
            <source>Not written down</source>
            <translation>Non noté</translation>
        </message>
        <message>
            <source>The code does not say where the lot ends. Look at the pack and choose what stands there, or type it below.</source>
            <translation>Le code ne dit pas où finit le lot. Regardez l’emballage et choisissez ce qui y figure, ou tapez-le ci-dessous.</translation>
        </message>
        <message>
            <source>Not said</source>
            <translation>Non précisé</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Aucune</translation>
        </message>
        <message>
            <source>At the entry point</source>
            <translation>Au point d’entrée</translation>
        </message>
        <message>
            <source>Along the track</source>
            <translation>Le long du trajet</translation>
        </message>
        <message>
            <source>At entry point and along the track</source>
            <translation>Au point d’entrée et le long du trajet</translation>
        </message>
        <message>
            <source>Nobody chosen yet</source>
            <translation>Personne de choisi pour l’instant</translation>
        </message>
        <message>
            <source>What was begun here cannot be read. It stays as it is: what you write now is not kept as a draft. %1</source>
            <comment>the reason</comment>
            <translation>Ce qui a été commencé ici ne peut pas être lu. Cela reste tel quel : ce que vous écrivez maintenant n’est pas gardé comme brouillon. %1</translation>
        </message>
        <message>
            <source>Nothing was drawn: thread %1 lies there already. It is chosen now.</source>
            <comment>its number</comment>
            <translation>Rien n’a été tracé : le fil %1 s’y trouve déjà. Il est choisi maintenant.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
        <message>
            <source>Say why it is corrected.</source>
            <translation>Dites pourquoi c’est corrigé.</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Rien n’est encore changé.</translation>
        </message>
        <message>
            <source>A colleague corrected this record meanwhile. What you record holds as a whole, in place of hers: below stands what it would change.</source>
            <translation>Quelqu’un de l’équipe a corrigé cet enregistrement entre-temps. Ce que vous enregistrez vaut en entier, à sa place : ce que cela changerait figure plus bas.</translation>
        </message>
        <message>
            <source>The solution is now with epinephrine %1: check it under Anaesthetic.</source>
            <comment>dilution</comment>
            <translation>La solution contient maintenant de l’adrénaline à %1 : vérifiez-la sous « Anesthésique ».</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UnlockBoard</name>
        <message>
            <source>Unlock the desk</source>
            <translation>Déverrouiller le poste</translation>
        </message>
        <message>
            <source>Set up the desk</source>
            <translation>Configurer le poste</translation>
        </message>
        <message>
            <source>What the desk keeps about patients is encrypted on this computer until you unlock it.</source>
            <translation>Ce que le programme garde sur les patients est chiffré sur cet ordinateur tant que vous ne le déverrouillez pas.</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <translation>Les deux ne sont pas pareilles.</translation>
        </message>
        <message numerus="yes">
            <source>Choose a passphrase of at least %Ln character(s). It encrypts what the desk keeps about patients on this computer. Nobody can recover it for you: write it down and keep it in a safe place.</source>
            <translation>
                <numerusform>Choisissez une phrase secrète d’au moins %Ln caractère. Elle chiffre ce que le programme garde sur les patients sur cet ordinateur. Personne ne peut la retrouver pour vous : notez-la et gardez-la en lieu sûr.</numerusform>
                <numerusform>Choisissez une phrase secrète d’au moins %Ln caractères. Elle chiffre ce que le programme garde sur les patients sur cet ordinateur. Personne ne peut la retrouver pour vous : notez-la et gardez-la en lieu sûr.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>Trop courte : au moins %Ln caractère.</numerusform>
                <numerusform>Trop courte : au moins %Ln caractères.</numerusform>
            </translation>
        </message>
        <message>
            <source>Open it with the recovery code</source>
            <translation>Ouvrir avec le code de secours</translation>
        </message>
        <message>
            <source>Type the code from the paper, and choose a new passphrase. The one that was lost opens nothing afterwards.</source>
            <translation>Tapez le code du papier et choisissez une nouvelle phrase secrète. Celle qui a été perdue n’ouvrira plus rien.</translation>
        </message>
        <message>
            <source>This is not a recovery code. It has 36 letters and digits in nine groups. Check each one.</source>
            <translation>Ce n’est pas un code de secours. Il a 36 lettres et chiffres en neuf groupes. Vérifiez chacun.</translation>
        </message>
        <message>
            <source>This code does not open this vault. A newer one may have taken its place.</source>
            <translation>Ce code n’ouvre pas ce coffre. Un plus récent l’a peut-être remplacé.</translation>
        </message>
        <message>
            <source>One moment. The desk finds out how strong the lock can be on this computer.</source>
            <translation>Un instant. Le poste cherche à quel point le verrou peut être solide sur cet ordinateur.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::face::FaceChart</name>
        <message>
            <source>Entry point set. Cursor %1 across, %2 down: Space sets the end.</source>
            <translation>Point d’entrée posé. Curseur %1 en largeur, %2 vers le bas : Espace pose l’extrémité.</translation>
        </message>
        <message>
            <source>Cursor %1 across, %2 down: Space sets the entry point.</source>
            <translation>Curseur %1 en largeur, %2 vers le bas : Espace pose le point d’entrée.</translation>
        </message>
        <message>
            <source>Entry point of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Point d’entrée du fil %1 pris, maintenant %2 en travers, %3 vers le bas : Espace le repose.</translation>
        </message>
        <message>
            <source>End of thread %1 taken, now %2 across, %3 down: Space puts it down.</source>
            <translation>Fin du fil %1 prise, maintenant %2 en travers, %3 vers le bas : Espace la repose.</translation>
        </message>
    </context>
    <context>
        <name>Practice</name>
        <message>
            <source>Per cent of courses</source>
            <translation>Pourcentage des suivis</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Jours depuis le traitement</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Groupe</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Avec complication</translation>
        </message>
        <message>
            <source>Outcome known</source>
            <translation>Issue connue</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Inconnue</translation>
        </message>
        <message>
            <source>Treatments with a known outcome, one after the other</source>
            <translation>Traitements à issue connue, dans l’ordre</translation>
        </message>
        <message>
            <source>Running sum, no unit</source>
            <translation>Somme cumulée, sans unité</translation>
        </message>
        <message>
            <source>Look here from %1 on</source>
            <translation>À examiner dès %1</translation>
        </message>
        <message>
            <source>strokes: complicated courses</source>
            <translation>traits : suivis avec complication</translation>
        </message>
        <message>
            <source>Have complications become more frequent?</source>
            <translation>Les complications sont-elles devenues plus fréquentes ?</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Numéro</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>Running sum</source>
            <translation>Somme cumulée</translation>
        </message>
        <message>
            <source>No course has a known outcome yet. Record follow-ups, and the line begins.</source>
            <translation>Aucun suivi n’a encore d’issue connue. Enregistrez des contrôles, et la courbe commence.</translation>
        </message>
        <message>
            <source>yes, and a signal</source>
            <translation>oui, et un signal</translation>
        </message>
        <message numerus="yes">
            <source>No signal in %Ln treatment(s).</source>
            <translation>
                <numerusform>Aucun signal sur %Ln traitement.</numerusform>
                <numerusform>Aucun signal sur %Ln traitements.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln signal(s): look at the courses before each.</source>
            <translation>
                <numerusform>%Ln signal : examinez les suivis qui le précèdent.</numerusform>
                <numerusform>%Ln signaux : examinez les suivis qui précèdent chacun.</numerusform>
            </translation>
        </message>
        <message>
            <source>Now at %1 of %2.</source>
            <comment>sum, limit</comment>
            <translation>Actuellement à %1 sur %2.</translation>
        </message>
        <message>
            <source>%1 more complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 avec complication de plus qu’attendu.</translation>
        </message>
        <message>
            <source>%1 fewer complicated than expected.</source>
            <comment>courses, a decimal number</comment>
            <translation>%1 avec complication de moins qu’attendu.</translation>
        </message>
        <message>
            <source>By chance alone such a line signals in %1 of 100 practices; if the odds really doubled, in %2.</source>
            <translation>Par le seul hasard, une telle courbe donne un signal dans %1 cliniques sur 100 ; si la cote doublait vraiment, dans %2.</translation>
        </message>
        <message>
            <source>How often chance alone would signal is still being worked out.</source>
            <translation>La fréquence des signaux dus au seul hasard est encore en cours de calcul.</translation>
        </message>
        <message numerus="yes">
            <source>Not settled: %Ln course(s) have no known outcome, some from before the last one shown.</source>
            <translation>
                <numerusform>Non définitif : %Ln suivi sans issue connue, antérieur au dernier affiché.</numerusform>
                <numerusform>Non définitif : %Ln suivis sans issue connue, certains antérieurs au dernier affiché.</numerusform>
            </translation>
        </message>
        <message>
            <source>The risk is an assumption, the same for every patient: a signal asks for a look, it blames nobody.</source>
            <translation>Le risque est une hypothèse, la même pour tous les patients : un signal invite à regarder, il n’accuse personne.</translation>
        </message>
        <message>
            <source>What alerts cost, and which were worth it</source>
            <translation>Ce que coûtent les signalements, et lesquels ont été utiles</translation>
        </message>
        <message>
            <source>Closed as</source>
            <translation>Clos comme</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Signalements</translation>
        </message>
        <message>
            <source>Not closed before the follow-up</source>
            <translation>Non clos avant le contrôle</translation>
        </message>
        <message>
            <source>Still open</source>
            <translation>Encore ouverts</translation>
        </message>
        <message>
            <source>Apart: not heard from</source>
            <translation>À part : sans nouvelles</translation>
        </message>
        <message>
            <source>No course with a linked phone yet.</source>
            <translation>Encore aucun suivi avec téléphone relié.</translation>
        </message>
        <message numerus="yes">
            <source>No alert in %Ln course(s).</source>
            <translation>
                <numerusform>Aucun signalement sur %Ln suivi.</numerusform>
                <numerusform>Aucun signalement sur %Ln suivis.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 raised an alert, %2 alert(s) in all, about %3 a week lately.</source>
            <comment>courses, number, number</comment>
            <translation>Avec signalement : %1. Signalements en tout : %2, récemment environ %3 par semaine.</translation>
        </message>
        <message>
            <source>Worth it, of those closed: %1.</source>
            <translation>Utiles, parmi les clos : %1.</translation>
        </message>
        <message>
            <source>An alert that led to reassurance is counted as not worth it here. The patient may see that otherwise.</source>
            <translation>Un signalement conclu par une réassurance compte ici comme non utile. Le patient peut en juger autrement.</translation>
        </message>
        <message>
            <source>Worth it</source>
            <translation>Utiles</translation>
        </message>
        <message>
            <source>Per cent of closed alerts</source>
            <translation>Pourcentage des signalements clos</translation>
        </message>
        <message>
            <source>What patients did of what they were asked</source>
            <translation>Ce que les patients ont fait des consignes</translation>
        </message>
        <message>
            <source>An unanswered reminder is not a missed one: she may have done it without saying so.</source>
            <translation>Un rappel sans réponse n’est pas un rappel manqué : le patient l’a peut-être fait sans le dire.</translation>
        </message>
        <message>
            <source>Asked for</source>
            <translation>Consigne</translation>
        </message>
        <message>
            <source>Asked</source>
            <translation>Demandé</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Fait</translation>
        </message>
        <message>
            <source>Not done</source>
            <translation>Pas fait</translation>
        </message>
        <message>
            <source>Days with an entry</source>
            <translation>Jours avec une note</translation>
        </message>
        <message>
            <source>Per cent of times asked</source>
            <translation>Pourcentage des demandes</translation>
        </message>
        <message>
            <source>%1 wrote on %2 of %3 days asked.</source>
            <comment>courses, days, days</comment>
            <translation>%1 : note écrite %2 jours sur %3 demandés.</translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln known outcome(s), %1 are needed</source>
            <translation>
                <numerusform>Données insuffisantes : %Ln issue connue, il en faut %1</numerusform>
                <numerusform>Données insuffisantes : %Ln issues connues, il en faut %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln course(s) had it, %1 are needed</source>
            <translation>
                <numerusform>Données insuffisantes : %Ln suivi concerné, il en faut %1</numerusform>
                <numerusform>Données insuffisantes : %Ln suivis concernés, il en faut %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: followed for %Ln day(s), %1 are needed</source>
            <translation>
                <numerusform>Données insuffisantes : %Ln jour de suivi, il en faut %1</numerusform>
                <numerusform>Données insuffisantes : %Ln jours de suivi, il en faut %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not enough to say: %Ln group(s), %1 are needed</source>
            <translation>
                <numerusform>Données insuffisantes : %Ln groupe, il en faut %1</numerusform>
                <numerusform>Données insuffisantes : %Ln groupes, il en faut %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Not enough to say: nothing varied</source>
            <translation>Données insuffisantes : aucune variation</translation>
        </message>
        <message>
            <source>Not enough to say: nothing happened in either group</source>
            <translation>Données insuffisantes : aucun événement, ni dans l’un ni dans l’autre groupe</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <comment>share, its limits</comment>
            <translation>%1 (%2 à %3)</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %Ln course(s)</source>
            <translation>
                <numerusform>%1 sur %Ln suivi</numerusform>
                <numerusform>%1 sur %Ln suivis</numerusform>
            </translation>
        </message>
        <message>
            <source>Where threads end</source>
            <translation>Où se terminent les fils</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Calibre</translation>
        </message>
        <message>
            <source>Epinephrine at the entry point</source>
            <translation>Adrénaline au point d’entrée</translation>
        </message>
        <message>
            <source>Face or neck</source>
            <translation>Visage ou cou</translation>
        </message>
        <message>
            <source>Not told</source>
            <translation>Non indiqué</translation>
        </message>
        <message>
            <source>Mixed</source>
            <translation>Mixte</translation>
        </message>
        <message>
            <source>%1 G</source>
            <comment>gauge of needle or cannula</comment>
            <translation>%1 G</translation>
        </message>
        <message>
            <source>With epinephrine</source>
            <translation>Avec adrénaline</translation>
        </message>
        <message>
            <source>Without epinephrine</source>
            <translation>Sans adrénaline</translation>
        </message>
        <message>
            <source>Face</source>
            <translation>Visage</translation>
        </message>
        <message>
            <source>Deep folds ask for threads past the moving zone, and deep folds recover otherwise.</source>
            <translation>Les plis profonds demandent des fils au-delà de la zone mobile, et les plis profonds récupèrent autrement.</translation>
        </message>
        <message>
            <source>Stronger threads need a lower gauge: what differs may be the thread.</source>
            <translation>Les fils plus forts demandent une aiguille plus grosse (G plus bas) : la différence peut tenir au fil.</translation>
        </message>
        <message>
            <source>Epinephrine hides early bruising, and is left out for patients who bleed or have a weak heart. Courses whose threads do not all say where they had it, as those of an older program, are not counted.</source>
            <translation>L’adrénaline masque les bleus précoces et n’est pas donnée aux patients qui saignent facilement ou ont une fragilité cardiaque. Les suivis dont les fils ne disent pas tous où il y en avait, comme ceux d’un programme plus ancien, ne sont pas comptés.</translation>
        </message>
        <message>
            <source>Face and neck swell and settle otherwise by nature: this shows what to tell patients, not which is better.</source>
            <translation>Visage et cou enflent et récupèrent différemment par nature : cela montre ce qu’il faut dire aux patients, pas ce qui est mieux.</translation>
        </message>
        <message>
            <source>Threads were chosen for the face: heavy faces get other threads than light ones.</source>
            <translation>Les fils ont été choisis selon le visage : un visage lourd reçoit d’autres fils qu’un visage léger.</translation>
        </message>
        <message>
            <source>%1 days (%2 to %3)</source>
            <comment>mean, its limits</comment>
            <translation>%1 jours (%2 à %3)</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>non atteint</translation>
        </message>
        <message>
            <source>Courses that still have it, per cent</source>
            <translation>Suivis où le symptôme persiste, pour cent</translation>
        </message>
        <message>
            <source>Complicated courses</source>
            <translation>Suivis avec complication</translation>
        </message>
        <message>
            <source>All courses</source>
            <translation>Tous les suivis</translation>
        </message>
        <message>
            <source>%1 were complicated: %2.</source>
            <comment>courses, share</comment>
            <translation>Avec complication : %1, soit %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) without a follow-up are not counted: they may be worse or better.</source>
            <translation>
                <numerusform>%Ln suivi sans contrôle n’est pas compté : il peut être pire ou meilleur.</numerusform>
                <numerusform>%Ln suivis sans contrôle ne sont pas comptés : ils peuvent être pires ou meilleurs.</numerusform>
            </translation>
        </message>
        <message>
            <source>By kind</source>
            <translation>Par type</translation>
        </message>
        <message>
            <source>Most often: %1.</source>
            <translation>Le plus souvent : %1.</translation>
        </message>
        <message>
            <source>A course with two kinds counts in both.</source>
            <translation>Un suivi avec deux types compte dans les deux.</translation>
        </message>
        <message>
            <source>No complication is on record yet. That is no proof that there is none: the limits above say how many there may be.</source>
            <translation>Aucune complication enregistrée pour l’instant. Cela ne prouve pas qu’il n’y en a pas : l’intervalle ci-dessus dit combien il peut y en avoir.</translation>
        </message>
        <message>
            <source>By zone</source>
            <translation>Par zone</translation>
        </message>
        <message>
            <source>A course counts in every zone that it has.</source>
            <translation>Un suivi compte dans chacune de ses zones.</translation>
        </message>
        <message>
            <source>Shares of zones do not add up: neighbouring zones share their patients.</source>
            <translation>Les proportions par zone ne s’additionnent pas : les zones voisines partagent leurs patients.</translation>
        </message>
        <message>
            <source>How long symptoms last</source>
            <translation>Durée des symptômes</translation>
        </message>
        <message>
            <source>Who feels well may stop writing: then this looks slower than it is.</source>
            <translation>Qui va bien cesse peut-être d’écrire : la disparition paraît alors plus lente qu’elle ne l’est.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Symptôme</translation>
        </message>
        <message>
            <source>Courses with it</source>
            <translation>Suivis concernés</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Disparu</translation>
        </message>
        <message>
            <source>Days with it up to day 20</source>
            <translation>Jours avec, jusqu’au jour 20</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <comment>symptom, days</comment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in which it went.</source>
            <translation>Données insuffisantes : aucun symptôme n’a assez de suivis où il a disparu.</translation>
        </message>
        <message>
            <source>Half were rid of it by day: %1.</source>
            <translation>Disparu chez la moitié au jour : %1.</translation>
        </message>
        <message>
            <source>Complications side by side</source>
            <translation>Complications côte à côte</translation>
        </message>
        <message>
            <source>%1 less %2: %3 points of 100 (%4 to %5).</source>
            <comment>group, group, difference, its limits</comment>
            <translation>%1 moins %2 : %3 points sur 100 (%4 à %5).</translation>
        </message>
        <message>
            <source>So many courses would find a doubling of %1 in %2 of 100 cases.</source>
            <comment>share, number</comment>
            <translation>Ce nombre de suivis détecterait un doublement de %1 dans %2 cas sur 100.</translation>
        </message>
        <message>
            <source>Found in 80 of 100 cases: %1 or more beside it.</source>
            <translation>Détecté dans 80 cas sur 100 : %1 ou plus face à ce taux.</translation>
        </message>
        <message>
            <source>No difference at all would be found in 80 of 100 cases.</source>
            <translation>Aucune différence, si grande soit-elle, ne serait détectée dans 80 cas sur 100.</translation>
        </message>
        <message>
            <source>Probability by chance alone: below %1.</source>
            <translation>Probabilité par le seul hasard : inférieure à %1.</translation>
        </message>
        <message>
            <source>Probability by chance alone: %1.</source>
            <translation>Probabilité par le seul hasard : %1.</translation>
        </message>
        <message>
            <source>No test: all ended alike.</source>
            <translation>Pas de test : toutes les issues sont identiques.</translation>
        </message>
        <message>
            <source>Days with each symptom, difference</source>
            <translation>Jours avec chaque symptôme, différence</translation>
        </message>
        <message>
            <source>Seven symptoms are seven tests: among them one probability below 0.05 is common if nothing differs.</source>
            <translation>Sept symptômes, sept tests : il est fréquent que l’une des probabilités soit inférieure à 0,05 même si rien ne diffère.</translation>
        </message>
        <message>
            <source>Difference, days</source>
            <translation>Différence, jours</translation>
        </message>
        <message>
            <source>By chance</source>
            <translation>Par hasard</translation>
        </message>
        <message>
            <source>Found in 80 of 100</source>
            <translation>Détecté dans 80 sur 100</translation>
        </message>
        <message>
            <source>%1 days</source>
            <translation>%1 jours</translation>
        </message>
        <message>
            <source>Days: to the left %1 is shorter, to the right %2</source>
            <comment>group, group</comment>
            <translation>Jours : à gauche, plus court pour %1 ; à droite, pour %2</translation>
        </message>
        <message>
            <source>Days with the symptom up to day 20, %1 less %2.</source>
            <comment>group, group</comment>
            <translation>Jours avec le symptôme jusqu’au jour 20, %1 moins %2.</translation>
        </message>
        <message>
            <source>Not enough to say: for no symptom are there enough courses in both groups.</source>
            <translation>Données insuffisantes : aucun symptôme n’a assez de suivis dans les deux groupes.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s)</source>
            <translation>
                <numerusform>%Ln suivi</numerusform>
                <numerusform>%Ln suivis</numerusform>
            </translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Traité le</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
        <message>
            <source>Threads</source>
            <translation>Fils</translation>
        </message>
        <message>
            <source>Past the moving zone</source>
            <translation>Au-delà de la zone mobile</translation>
        </message>
        <message>
            <source>Short of the moving zone</source>
            <translation>En deçà de la zone mobile</translation>
        </message>
        <message>
            <source>Neck</source>
            <translation>Cou</translation>
        </message>
        <message>
            <source>fewer than %1</source>
            <comment>of 100</comment>
            <translation>moins de %1</translation>
        </message>
        <message>
            <source>Not enough to say: the groups lie too far apart</source>
            <translation>Pas assez pour conclure : les groupes sont trop éloignés les uns des autres</translation>
        </message>
        <message>
            <source>Share of courses whose outcome is known. Limits: Wilson, 95%. Courses without a follow-up are left out and counted apart.</source>
            <translation>Proportion parmi les suivis à issue connue. IC à 95 % : Wilson. Les suivis sans contrôle sont exclus et comptés à part.</translation>
        </message>
        <message>
            <source>Share, 95% limits</source>
            <translation>Proportion, IC à 95 %</translation>
        </message>
        <message numerus="yes">
            <source>Alert: a warning or finding that asks for an act before the follow-up. Worth it: closed with advice, treatment or urgent care, or the visit was brought forward. Limits: Wilson, 95%. Alerts a week: over the last %Ln week(s).</source>
            <translation>
                <numerusform>Signalement : alerte ou constat qui demande un acte avant le contrôle. Utile : clos avec un conseil, un traitement ou un envoi aux urgences, ou visite avancée. IC à 95 % : Wilson. Signalements par semaine : sur %Ln semaine, la dernière.</numerusform>
                <numerusform>Signalement : alerte ou constat qui demande un acte avant le contrôle. Utile : clos avec un conseil, un traitement ou un envoi aux urgences, ou visite avancée. IC à 95 % : Wilson. Signalements par semaine : sur les %Ln dernières semaines.</numerusform>
            </translation>
        </message>
        <message>
            <source>Entries: days on which the care plan asked and something was written. Reminders: answered “done”. Limits: Wilson, 95%; reminders of one patient resemble each other, so they are too narrow.</source>
            <translation>Notes : jours où le plan de soins demandait une note et où quelque chose a été noté. Rappels : réponse « Fait ». IC à 95 % : Wilson ; les rappels d’un même patient se ressemblent, l’intervalle est donc trop étroit.</translation>
        </message>
        <message>
            <source>Gone: a score of 1 or below on two days in a row that last; the worse side counts. Curves: Kaplan-Meier, median with limits of Brookmeyer and Crowley, 95%. Mean days up to day 20, normal limits.</source>
            <translation>Disparu : valeur de 1 ou moins deux jours de suite, qui se maintient ; le côté le plus atteint compte. Courbes : Kaplan-Meier, médiane avec IC à 95 % de Brookmeyer et Crowley. Moyenne des jours jusqu’au jour 20, IC selon la loi normale.</translation>
        </message>
        <message>
            <source>Median day, 95% limits</source>
            <translation>Jour médian, IC à 95 %</translation>
        </message>
        <message>
            <source>Shares: Wilson, 95%. Difference: Newcombe. Test: Fisher, two-sided. Power: exact for this test.</source>
            <translation>Proportions : Wilson, 95 %. Différence : Newcombe. Test : Fisher, bilatéral. Puissance : exacte pour ce test.</translation>
        </message>
        <message>
            <source>Difference of mean days up to day 20 (restricted means), normal limits, 95%; log-rank test.</source>
            <translation>Différence des moyennes de jours jusqu’au jour 20 (moyennes restreintes), IC à 95 % selon la loi normale ; test du log-rank.</translation>
        </message>
        <message>
            <source>CUSUM with one risk for every course (the sum of Steiner and others, Biostatistics 2000, adjusted to no patient): watches for odds %1 times as large as with a risk of %2; begins again after a signal.</source>
            <translation>CUSUM avec un même risque pour tous les suivis (la somme de Steiner et coll., Biostatistics 2000, sans ajustement à la patiente) : surveille une cote %1 fois plus élevée qu’avec un risque de %2 ; recommence après un signal.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PracticeBoard</name>
        <message>
            <source>Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one.</source>
            <translation>Données insuffisantes : une comparaison demande deux groupes, et tous les suivis que l’on peut classer sont dans un seul.</translation>
        </message>
        <message>
            <source>Not enough to say: a comparison needs two groups, and no course says to which it belongs.</source>
            <translation>Données insuffisantes : une comparaison demande deux groupes, et aucun suivi ne dit auquel il appartient.</translation>
        </message>
        <message>
            <source>Time to settle</source>
            <translation>Durée</translation>
        </message>
        <message>
            <source>Techniques</source>
            <translation>Techniques</translation>
        </message>
        <message>
            <source>Over time</source>
            <translation>Au fil du temps</translation>
        </message>
        <message>
            <source>Adherence</source>
            <translation>Observance</translation>
        </message>
        <message>
            <source>Lots</source>
            <translation>Lots</translation>
        </message>
        <message>
            <source>Usual range</source>
            <translation>Plage habituelle</translation>
        </message>
        <message>
            <source>Reading the courses</source>
            <translation>Lecture des suivis</translation>
        </message>
        <message numerus="yes">
            <source>%1 · %Ln with a known outcome</source>
            <translation>
                <numerusform>%1 · dont %Ln à issue connue</numerusform>
                <numerusform>%1 · dont %Ln à issue connue</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>group, courses</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Comparison, not proof: nobody drew by lot who got what.</source>
            <translation>Comparaison, non preuve : les traitements n’ont pas été tirés au sort.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré.</translation>
        </message>
        <message>
            <source>Save the figure</source>
            <translation>Enregistrer la figure</translation>
        </message>
        <message>
            <source>Complications</source>
            <translation>Complications</translation>
        </message>
        <message>
            <source>Alerts</source>
            <translation>Signalements</translation>
        </message>
    </context>
    <context>
        <name>PracticePage</name>
        <message>
            <source>Practice</source>
            <translation>Bilan d’activité</translation>
        </message>
        <message>
            <source>Working the figures out. The desk stays free meanwhile.</source>
            <translation>Calcul des chiffres en cours. Le poste reste utilisable.</translation>
        </message>
    </context>
    <context>
        <name>FigureCard</name>
        <message>
            <source>How: %1</source>
            <translation>Méthode : %1</translation>
        </message>
        <message>
            <source>Show the picture</source>
            <translation>Afficher l’image</translation>
        </message>
        <message>
            <source>Save as CSV</source>
            <translation>Enregistrer en CSV</translation>
        </message>
        <message>
            <source>Save as PNG</source>
            <translation>Enregistrer en PNG</translation>
        </message>
        <message>
            <source>Save as SVG</source>
            <translation>Enregistrer en SVG</translation>
        </message>
        <message>
            <source>Show as a table</source>
            <translation>Afficher en tableau</translation>
        </message>
    </context>
    <context>
        <name>ComparisonChoice</name>
        <message>
            <source>Compare by</source>
            <translation>Comparer selon</translation>
        </message>
        <message>
            <source>First</source>
            <translation>Premier</translation>
        </message>
        <message>
            <source>Second</source>
            <translation>Second</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::LotBoard</name>
        <message>
            <source>%1 complicated, %2 not known yet</source>
            <translation>%1 avec complication, %2 encore inconnus</translation>
        </message>
        <message>
            <source>Lot %1 went to %2.</source>
            <comment>lot, courses</comment>
            <translation>Lot %1 : utilisé dans %2.</translation>
        </message>
        <message>
            <source>Outcome not known</source>
            <translation>Issue inconnue</translation>
        </message>
        <message>
            <source>Uncomplicated</source>
            <translation>Sans complication</translation>
        </message>
        <message>
            <source>Call list for lot %1</source>
            <translation>Liste d’appel du lot %1</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <comment>clinic, when</comment>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Téléphone</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lot tel qu’écrit</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Issue</translation>
        </message>
        <message>
            <source>Called by, when</source>
            <translation>Appelé par, quand</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré : conservez-le comme les dossiers des patients.</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Enregistrer la liste d’appel</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Avec complication</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Traité le</translation>
        </message>
        <message>
            <source>%1, product not known</source>
            <comment>lot</comment>
            <translation>%1, produit non connu</translation>
        </message>
        <message>
            <source>%1, product %2</source>
            <comment>lot, number of the product</comment>
            <translation>%1, produit %2</translation>
        </message>
        <message>
            <source>Product not known: %1 of them. It may be this one, so they stand here too.</source>
            <comment>a number of courses</comment>
            <translation>Produit non connu : pour %1 d’entre eux. Ce peut être celui-ci, ils figurent donc aussi ici.</translation>
        </message>
    </context>
    <context>
        <name>LimitFields</name>
        <message>
            <source>Your clinic's limit of lidocaine</source>
            <translation>Limite de lidocaïne de votre clinique</translation>
        </message>
        <message>
            <source>You may set it lower than the US label's, never higher. An empty field keeps the label's number.</source>
            <translation>Vous pouvez la fixer plus bas que celle du RCP américain, jamais plus haut. Un champ vide garde le nombre du RCP.</translation>
        </message>
        <message>
            <source>Save the limit</source>
            <translation>Enregistrer la limite</translation>
        </message>
    </context>
    <context>
        <name>LotPanel</name>
        <message>
            <source>Choose a lot to see everybody who received it. It is found however it was written. A lot is no cause: who received it may be fine.</source>
            <translation>Choisissez un lot pour voir toutes les personnes qui l’ont reçu. Il est trouvé quelle que soit la façon dont il a été écrit. Un lot n’est pas une cause : qui l’a reçu peut aller bien.</translation>
        </message>
        <message>
            <source>No treatment on record has such a lot.</source>
            <translation>Aucun traitement enregistré n’a ce lot.</translation>
        </message>
        <message>
            <source>Lot</source>
            <translation>Lot</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>Phone</source>
            <translation>Téléphone</translation>
        </message>
        <message>
            <source>Treated</source>
            <translation>Traité le</translation>
        </message>
        <message>
            <source>Lot as written</source>
            <translation>Lot tel qu’écrit</translation>
        </message>
        <message>
            <source>Outcome</source>
            <translation>Issue</translation>
        </message>
        <message>
            <source>Save the call list</source>
            <translation>Enregistrer la liste d’appel</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::BandBoard</name>
        <message numerus="yes">
            <source>%Ln course(s) may teach a new version.</source>
            <translation>
                <numerusform>%Ln suivi peut servir à établir une nouvelle version.</numerusform>
                <numerusform>%Ln suivis peuvent servir à établir une nouvelle version.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s) may teach. %1 are needed to check a version.</source>
            <translation>
                <numerusform>%Ln suivi utilisable. Il en faut %1 pour vérifier une version.</numerusform>
                <numerusform>%Ln suivis utilisables. Il en faut %1 pour vérifier une version.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Learned from %Ln course(s) by %1, %2</source>
            <translation>
                <numerusform>Établie sur %Ln suivi par %1, %2</numerusform>
                <numerusform>Établie sur %Ln suivis par %1, %2</numerusform>
            </translation>
        </message>
        <message>
            <source>The range every clinic begins with: an assumption, no courses behind it</source>
            <translation>La plage par laquelle toute clinique commence : une hypothèse, sans suivis</translation>
        </message>
        <message>
            <source>%1 went back to %2, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>Retour à %2 par %1, %3 : %4</translation>
        </message>
        <message>
            <source>%1 put %2 into use, %3: %4</source>
            <comment>person, version, when, reason</comment>
            <translation>Mise en vigueur de %2 par %1, %3 : %4</translation>
        </message>
        <message>
            <source>On courses it had not seen</source>
            <translation>Sur des suivis non vus</translation>
        </message>
        <message>
            <source>Above the 90th</source>
            <translation>Au-dessus du 90e</translation>
        </message>
        <message>
            <source>Above the 97th</source>
            <translation>Au-dessus du 97e</translation>
        </message>
        <message>
            <source>Say first who is at the desk: a version carries the name of who learned it.</source>
            <translation>Indiquez d’abord qui est au poste : une version porte le nom de la personne qui l’a établie.</translation>
        </message>
        <message>
            <source>Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.</source>
            <translation>%1 est établie. Rien n’a changé pour aucun patient : regardez sa vérification, puis utilisez-la ou laissez-la.</translation>
        </message>
        <message>
            <source>Nothing has changed since the last version was learned.</source>
            <translation>Rien n’a changé depuis l’établissement de la dernière version.</translation>
        </message>
        <message>
            <source>Go back to %1</source>
            <translation>Revenir à %1</translation>
        </message>
        <message>
            <source>Use %1</source>
            <translation>Utiliser %1</translation>
        </message>
        <message>
            <source>%1 is in use. Courses that run keep the range they began with.</source>
            <translation>%1 est en vigueur. Les suivis en cours gardent leur plage de départ.</translation>
        </message>
        <message>
            <source>Symptom</source>
            <translation>Symptôme</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Suivis</translation>
        </message>
    </context>
    <context>
        <name>Bands</name>
        <message numerus="yes">
            <source>%Ln course(s): the patient has not agreed that her course teaches</source>
            <translation>
                <numerusform>%Ln suivi : sans accord du patient pour établir la plage</numerusform>
                <numerusform>%Ln suivis : sans accord du patient pour établir la plage</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): no follow-up yet, nobody knows how it ended</source>
            <translation>
                <numerusform>%Ln suivi : pas encore de contrôle, issue inconnue</numerusform>
                <numerusform>%Ln suivis : pas encore de contrôle, issue inconnue</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): complicated</source>
            <translation>
                <numerusform>%Ln suivi : avec complication</numerusform>
                <numerusform>%Ln suivis : avec complication</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): treated because of a finding</source>
            <translation>
                <numerusform>%Ln suivi : traité à cause d’un constat</numerusform>
                <numerusform>%Ln suivis : traités à cause d’un constat</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln course(s): too few days with an entry</source>
            <translation>
                <numerusform>%Ln suivi : trop peu de jours avec une note</numerusform>
                <numerusform>%Ln suivis : trop peu de jours avec une note</numerusform>
            </translation>
        </message>
        <message>
            <source>not enough to say: nearly the assumption</source>
            <translation>données insuffisantes : presque l’hypothèse</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>tient</translation>
        </message>
        <message>
            <source>too narrow: false alerts</source>
            <translation>trop étroite : fausses alertes</translation>
        </message>
        <message>
            <source>too wide: it would look late</source>
            <translation>trop large : réagirait trop tard</translation>
        </message>
        <message>
            <source>%1, promised %2</source>
            <comment>share seen, share promised</comment>
            <translation>%1, annoncé %2</translation>
        </message>
        <message>
            <source>It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).</source>
            <translation>Elle a tenu sur des suivis qu’elle n’avait pas vus : %1 des valeurs étaient au-dessus de son 90e centile (%2 à %3).</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used: %Ln course(s) behind it, %1 are needed.</source>
            <translation>
                <numerusform>Inutilisable : fondée sur %Ln suivi, il en faut %1.</numerusform>
                <numerusform>Inutilisable : fondée sur %Ln suivis, il en faut %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Cannot be used: it did not hold on courses that it had not seen. The table says where.</source>
            <translation>Inutilisable : elle n’a pas tenu sur des suivis qu’elle n’avait pas vus. Le tableau dit où.</translation>
        </message>
        <message numerus="yes">
            <source>Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.</source>
            <translation>
                <numerusform>Pas encore utilisable : elle a pu être vérifiée sur %Ln suivi de cette clinique, il en faut %1.</numerusform>
                <numerusform>Pas encore utilisable : elle a pu être vérifiée sur %Ln suivis de cette clinique, il en faut %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).</source>
            <translation>
                <numerusform>Reprise d’un fichier par %1, %2. Elle s’y appelle %3 et repose sur %Ln suivi.</numerusform>
                <numerusform>Reprise d’un fichier par %1, %2. Elle s’y appelle %3 et repose sur %Ln suivis.</numerusform>
            </translation>
        </message>
        <message>
            <source>Whoever took it says that no course of this clinic is behind it.</source>
            <translation>La personne qui l’a reprise dit qu’aucun suivi de cette clinique n’y figure.</translation>
        </message>
        <message>
            <source>It was checked on courses that were treated after it was learned.</source>
            <translation>Elle a été vérifiée sur des suivis traités après qu’elle a été établie.</translation>
        </message>
    </context>
    <context>
        <name>BandCard</name>
        <message>
            <source>%1, in use</source>
            <translation>%1, en vigueur</translation>
        </message>
        <message>
            <source>Go back to it</source>
            <translation>Y revenir</translation>
        </message>
        <message>
            <source>Use it</source>
            <translation>Utiliser</translation>
        </message>
        <message>
            <source>Hide the check</source>
            <translation>Masquer la vérification</translation>
        </message>
        <message>
            <source>Show the check</source>
            <translation>Afficher la vérification</translation>
        </message>
    </context>
    <context>
        <name>BandPanel</name>
        <message>
            <source>In use</source>
            <translation>En vigueur</translation>
        </message>
        <message>
            <source>Learn a new one</source>
            <translation>Établir une nouvelle plage</translation>
        </message>
        <message>
            <source>Learning, and checking on courses left out. This takes a while; the desk stays free.</source>
            <translation>Calcul, puis vérification sur des suivis laissés de côté. Cela prend un moment ; le poste reste utilisable.</translation>
        </message>
        <message>
            <source>Learn a version</source>
            <translation>Établir une version</translation>
        </message>
        <message>
            <source>Nothing comes into use by it.</source>
            <translation>Cela ne met rien en vigueur.</translation>
        </message>
        <message>
            <source>Versions</source>
            <translation>Versions</translation>
        </message>
        <message>
            <source>Every protocol is signed anew with it. Courses that run keep theirs. The reason is kept with your name.</source>
            <translation>Chaque protocole est signé à nouveau avec elle. Les suivis en cours gardent le leur. Le motif est conservé avec votre nom.</translation>
        </message>
    </context>
    <context>
        <name>ReasonPanel</name>
        <message>
            <source>Reason</source>
            <translation>Motif</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>Laisser tel quel</translation>
        </message>
    </context>
    <context>
        <name>ProtocolEditPage</name>
        <message>
            <source>Change the protocol</source>
            <translation>Modifier le protocole</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Rétablir</translation>
        </message>
        <message>
            <source>As in use</source>
            <translation>Comme en vigueur</translation>
        </message>
        <message>
            <source>Drops every change; can be undone.</source>
            <translation>Abandonne toutes les modifications ; peut être annulé.</translation>
        </message>
        <message>
            <source>Undo the signature</source>
            <translation>Annuler la signature</translation>
        </message>
        <message>
            <source>Signs what was in use before anew.</source>
            <translation>Signe à nouveau ce qui était en vigueur avant.</translation>
        </message>
    </context>
    <context>
        <name>PlanFields</name>
        <message>
            <source>From day</source>
            <translation>Du jour</translation>
        </message>
        <message>
            <source>To day</source>
            <translation>Au jour</translation>
        </message>
        <message>
            <source>Every how many days</source>
            <translation>Tous les combien de jours</translation>
        </message>
        <message>
            <source>Reminds at (empty: a rule to keep, nothing rings)</source>
            <translation>Rappel à (vide : consigne à respecter, rien ne sonne)</translation>
        </message>
        <message>
            <source>The clinic's own words, added for the patient</source>
            <translation>Texte propre à la clinique, ajouté pour le patient</translation>
        </message>
        <message>
            <source>Rings in quiet hours too</source>
            <translation>Sonne aussi aux heures de silence</translation>
        </message>
        <message>
            <source>Take it out of the plan</source>
            <translation>Retirer du plan</translation>
        </message>
    </context>
    <context>
        <name>PlanLine</name>
        <message>
            <source>%1 (changed)</source>
            <translation>%1 (modifié)</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolEditor</name>
        <message>
            <source>was %1</source>
            <translation>avant : %1</translation>
        </message>
        <message>
            <source>%1, version %2 in the making</source>
            <translation>%1, version %2 en préparation</translation>
        </message>
        <message>
            <source>Care plan</source>
            <translation>Plan de soins</translation>
        </message>
        <message>
            <source>Rules</source>
            <translation>Règles</translation>
        </message>
        <message>
            <source>Rehearse and sign</source>
            <translation>Essai et signature</translation>
        </message>
        <message>
            <source>Write times of day with a space between, for example 08:00 20:00.</source>
            <translation>Écrivez les heures séparées par une espace, par exemple 08:00 20:00.</translation>
        </message>
        <message>
            <source>What the patient sees on day %1</source>
            <translation>Ce que voit le patient au jour %1</translation>
        </message>
        <message>
            <source>An instruction of the clinic's own needs its words.</source>
            <translation>Une consigne propre à la clinique a besoin d’un texte.</translation>
        </message>
        <message>
            <source>Too much: at most 40 instructions, 8 times a day and 400 characters of text.</source>
            <translation>C’est trop : au plus 40 consignes, 8 heures par jour et 400 caractères de texte.</translation>
        </message>
        <message>
            <source>Of %1 uncomplicated courses invented smooth it flags %2, the one in use %3; of %4 invented in steps %5, the one in use %6.</source>
            <translation>Sur %1 suivis sans complication fictifs à courbe lisse, il en signale %2, celui en vigueur %3 ; sur %4 par paliers, %5, celui en vigueur %6.</translation>
        </message>
        <message>
            <source>With as many patients as lately: about %1 alerts a week, now %2.</source>
            <comment>number, number</comment>
            <translation>Avec autant de patients que récemment : environ %1 signalements par semaine, actuellement %2.</translation>
        </message>
        <message>
            <source>No past course to rehearse on: only invented courses speak.</source>
            <translation>Aucun suivi passé pour l’essai : il ne repose que sur des suivis fictifs.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln past course(s) would have been flagged otherwise.</source>
            <translation>
                <numerusform>%Ln suivi passé aurait été signalé autrement.</numerusform>
                <numerusform>%Ln suivis passés auraient été signalés autrement.</numerusform>
            </translation>
        </message>
        <message>
            <source>The protocol has been changed since: rehearse it again.</source>
            <translation>Le protocole a été modifié depuis : refaites l’essai.</translation>
        </message>
        <message>
            <source>Courses</source>
            <translation>Suivis</translation>
        </message>
        <message>
            <source>Flagged, in use</source>
            <translation>Signalés (en vigueur)</translation>
        </message>
        <message>
            <source>Flagged, changed</source>
            <translation>Signalés (modifié)</translation>
        </message>
        <message>
            <source>Within a day, in use</source>
            <translation>Sous 24 h (en vigueur)</translation>
        </message>
        <message>
            <source>Within a day, changed</source>
            <translation>Sous 24 h (modifié)</translation>
        </message>
        <message>
            <source>Invented, smooth: %1</source>
            <translation>Fictif, courbe lisse : %1</translation>
        </message>
        <message>
            <source>Invented, in steps: %1</source>
            <translation>Fictif, par paliers : %1</translation>
        </message>
        <message>
            <source>%1, call now</source>
            <comment>courses</comment>
            <translation>%1, appeler maintenant</translation>
        </message>
        <message>
            <source>%1, not heard from</source>
            <comment>courses</comment>
            <translation>%1, sans nouvelles</translation>
        </message>
        <message>
            <source>Past: %1</source>
            <translation>Passé : %1</translation>
        </message>
        <message>
            <source>New: %1, %2</source>
            <comment>instruction, when</comment>
            <translation>Nouveau : %1, %2</translation>
        </message>
        <message>
            <source>%1: %2, %3 (was %4, %5)</source>
            <comment>instruction, when, how, when, how</comment>
            <translation>%1 : %2, %3 (avant : %4, %5)</translation>
        </message>
        <message>
            <source>Taken out: %1</source>
            <translation>Retiré : %1</translation>
        </message>
        <message>
            <source>Follow-up on day %1 (was %2)</source>
            <translation>Contrôle au jour %1 (avant : %2)</translation>
        </message>
        <message>
            <source>%1, %2: %3 (was %4)</source>
            <comment>rule, what, number, number</comment>
            <translation>%1, %2 : %3 (avant : %4)</translation>
        </message>
        <message>
            <source>Nothing is changed yet.</source>
            <translation>Rien n’est encore modifié.</translation>
        </message>
        <message>
            <source>Rehearse it first: nothing goes live unseen.</source>
            <translation>Faites d’abord l’essai : rien n’entre en vigueur sans avoir été vu.</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indiquez qui est au poste.</translation>
        </message>
        <message>
            <source>Version %1 is signed. It goes to phones that are linked from now on; courses that run keep theirs.</source>
            <translation>La version %1 est signée. Elle va aux téléphones reliés à partir de maintenant ; les suivis en cours gardent la leur.</translation>
        </message>
        <message>
            <source>What was in use before is in use again, as version %1.</source>
            <translation>Ce qui était en vigueur avant l’est de nouveau, comme version %1.</translation>
        </message>
        <message>
            <source>Version %1, signed %2</source>
            <translation>Version %1, signée %2</translation>
        </message>
        <message>
            <source>Usual range: %1 (was %2)</source>
            <comment>version, version</comment>
            <translation>Plage habituelle : %1 (avant : %2)</translation>
        </message>
        <message>
            <source>It cannot be signed with the usual range that came with it. %1</source>
            <translation>Il ne peut pas être signé avec la plage habituelle venue avec lui. %1</translation>
        </message>
        <message>
            <source>With version %1 of %2</source>
            <comment>number, protocol</comment>
            <translation>Avec la version %1 de %2</translation>
        </message>
        <message>
            <source>The signature of version %1 was undone</source>
            <translation>La signature de la version %1 a été annulée</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <comment>rule, threshold and details, the same before</comment>
            <translation>%1 : %2 (avant : %3)</translation>
        </message>
        <message>
            <source>A draft that is kept cannot be read. It stays as it is: what you change now is not kept. %1</source>
            <comment>the reason</comment>
            <translation>Un brouillon gardé ne peut pas être lu. Il reste tel quel : ce que vous changez maintenant n’est pas gardé. %1</translation>
        </message>
    </context>
    <context>
        <name>ProtocolPlan</name>
        <message>
            <source>Follow-up</source>
            <translation>Contrôle</translation>
        </message>
        <message>
            <source>day</source>
            <translation>jour</translation>
        </message>
        <message>
            <source>Add an instruction</source>
            <translation>Ajouter une consigne</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Jour</translation>
        </message>
        <message>
            <source>All day</source>
            <translation>Toute la journée</translation>
        </message>
        <message>
            <source>Nothing is asked on this day.</source>
            <translation>Rien n’est demandé ce jour-là.</translation>
        </message>
        <message>
            <source>The diary says the same in the patient's language; the clinic's own words stand as they are written.</source>
            <translation>Le journal dit la même chose dans la langue du patient ; le texte propre à la clinique reste tel qu’il est écrit.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolRules</name>
        <message>
            <source>Warning signs, fever and severe pain are not here: no protocol can delay or soften them. The thresholds of the statistics are calibrated together with the usual range.</source>
            <translation>Les signes d’alerte, la fièvre et la douleur intense ne sont pas ici : aucun protocole ne peut les retarder ni les atténuer. Les seuils statistiques sont calibrés avec la plage habituelle.</translation>
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
            <translation>Ce qui est modifié</translation>
        </message>
        <message>
            <source>Nothing yet.</source>
            <translation>Rien encore.</translation>
        </message>
        <message>
            <source>Rehearsal</source>
            <translation>Essai</translation>
        </message>
        <message>
            <source>Runs the rules over past courses and over invented ones whose truth is known. Nothing changes for anybody by it.</source>
            <translation>Applique les règles à des suivis passés et à des suivis fictifs dont l’issue réelle est connue. Cela ne change rien pour personne.</translation>
        </message>
        <message>
            <source>Rehearsing. The desk stays free meanwhile.</source>
            <translation>Essai en cours. Le poste reste utilisable.</translation>
        </message>
        <message>
            <source>Past courses, one by one</source>
            <translation>Suivis passés, un par un</translation>
        </message>
        <message>
            <source>Rehearse again</source>
            <translation>Refaire l’essai</translation>
        </message>
        <message>
            <source>Rehearse</source>
            <translation>Lancer l’essai</translation>
        </message>
        <message>
            <source>Sign it</source>
            <translation>Signer</translation>
        </message>
        <message>
            <source>It goes to phones that are linked from now on.</source>
            <translation>Il va aux téléphones reliés à partir de maintenant.</translation>
        </message>
        <message>
            <source>Signed before</source>
            <translation>Signés auparavant</translation>
        </message>
        <message>
            <source>Take it up again</source>
            <translation>Reprendre</translation>
        </message>
        <message>
            <source>Keep the usual range in use</source>
            <translation>Garder la plage habituelle en vigueur</translation>
        </message>
        <message>
            <source>Drops the range that came with the file, and its thresholds; can be undone.</source>
            <translation>Retire la plage venue avec le fichier et ses seuils ; peut être annulé.</translation>
        </message>
    </context>
    <context>
        <name>Rehearsals</name>
        <message>
            <source>Uncomplicated</source>
            <translation>Sans complication</translation>
        </message>
        <message>
            <source>Infection</source>
            <translation>Infection</translation>
        </message>
        <message>
            <source>Haematoma</source>
            <translation>Hématome</translation>
        </message>
        <message>
            <source>Slow recovery</source>
            <translation>Récupération lente</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Creux qui persiste</translation>
        </message>
        <message>
            <source>Falls silent</source>
            <translation>Cesse d’écrire</translation>
        </message>
        <message>
            <source>Complicated</source>
            <translation>Avec complication</translation>
        </message>
        <message>
            <source>%1 of %2 (%3 to %4 in 100)</source>
            <comment>flagged, courses, limits</comment>
            <translation>%1 sur %2 (%3 à %4 sur 100)</translation>
        </message>
        <message>
            <source>no such finding</source>
            <translation>pas de tel signal</translation>
        </message>
        <message>
            <source>%1: %2 (%3)</source>
            <comment>day, finding, urgency</comment>
            <translation>%1 : %2 (%3)</translation>
        </message>
    </context>
    <context>
        <name>RuleFields</name>
        <message>
            <source>Above the usual range</source>
            <translation>Au-dessus de la plage habituelle</translation>
        </message>
        <message>
            <source>Rising again</source>
            <translation>Nouvelle hausse</translation>
        </message>
        <message>
            <source>One side much worse</source>
            <translation>Un côté nettement plus atteint</translation>
        </message>
        <message>
            <source>One side fills in the first days</source>
            <translation>Un côté se remplit les premiers jours</translation>
        </message>
        <message>
            <source>Slow to settle</source>
            <translation>Disparition lente</translation>
        </message>
        <message>
            <source>Puckering that stays</source>
            <translation>Creux qui persiste</translation>
        </message>
        <message>
            <source>Nothing heard</source>
            <translation>Aucune nouvelle</translation>
        </message>
        <message>
            <source>only from this score on</source>
            <translation>seulement à partir de cette valeur</translation>
        </message>
        <message>
            <source>only so far above the lowest so far</source>
            <translation>seulement à cet écart au-dessus du minimum atteint</translation>
        </message>
        <message>
            <source>from this day on</source>
            <translation>à partir de ce jour</translation>
        </message>
        <message>
            <source>up to this day</source>
            <translation>jusqu’à ce jour</translation>
        </message>
        <message>
            <source>only with so much between the sides</source>
            <translation>seulement à cet écart entre les côtés</translation>
        </message>
        <message>
            <source>only with so much between the sides, symptoms added up</source>
            <translation>seulement à cet écart entre les côtés, symptômes additionnés</translation>
        </message>
        <message>
            <source>only after a peak of this score</source>
            <translation>seulement après un maximum de cette valeur</translation>
        </message>
        <message>
            <source>unchanged for a week: from this day on</source>
            <translation>inchangé depuis une semaine : à partir de ce jour</translation>
        </message>
        <message>
            <source>unchanged for a week: only from this score on</source>
            <translation>inchangé depuis une semaine : seulement à partir de cette valeur</translation>
        </message>
        <message>
            <source>without an entry</source>
            <translation>sans note</translation>
        </message>
        <message>
            <source>without an entry, after a high one</source>
            <translation>sans note, après une note élevée</translation>
        </message>
        <message>
            <source>days</source>
            <translation>jours</translation>
        </message>
        <message>
            <source>points</source>
            <translation>points</translation>
        </message>
    </context>
    <context>
        <name>CallPanel</name>
        <message>
            <source>What to ask</source>
            <translation>Questions à poser</translation>
        </message>
        <message>
            <source>%L1. %2</source>
            <translation>%L1. %2</translation>
        </message>
        <message>
            <source>Note, or message to the patient</source>
            <translation>Remarque, ou message au patient</translation>
        </message>
        <message>
            <source>Spoke with her</source>
            <translation>Patient joint</translation>
        </message>
        <message>
            <source>Not reached</source>
            <translation>Non joint</translation>
        </message>
        <message>
            <source>Visit brought forward</source>
            <translation>Visite avancée</translation>
        </message>
        <message>
            <source>Send as a message</source>
            <translation>Envoyer comme message</translation>
        </message>
        <message>
            <source>Not now</source>
            <translation>Pas maintenant</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Pourquoi</translation>
        </message>
        <message>
            <source>Move the visit</source>
            <translation>Déplacer la visite</translation>
        </message>
        <message>
            <source>She called us</source>
            <translation>Elle nous a appelés</translation>
        </message>
        <message>
            <source>Nothing is open: the call is noted on the course.</source>
            <translation>Rien n’est ouvert : l’appel est noté dans le suivi.</translation>
        </message>
        <message>
            <source>We reached her</source>
            <translation>Nous l’avons jointe</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::CallBoard</name>
        <message>
            <source>Call %1</source>
            <comment>name</comment>
            <translation>Appeler %1</translation>
        </message>
        <message>
            <source>No number on record</source>
            <translation>Aucun numéro enregistré</translation>
        </message>
        <message>
            <source>%1. Ask before you call twice.</source>
            <comment>what somebody else did last</comment>
            <translation>%1. Demandez avant d’appeler une seconde fois.</translation>
        </message>
        <message>
            <source>Her diary is in %1.</source>
            <translation>Le journal est en %1.</translation>
        </message>
        <message>
            <source>Called: %1</source>
            <translation>Appel fait : %1</translation>
        </message>
        <message>
            <source>Visit brought forward: %1</source>
            <translation>Visite avancée : %1</translation>
        </message>
        <message>
            <source>Not reached: %1</source>
            <translation>Pas joignable : %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>date, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Choose a day from %1 to %2, and not what is agreed already.</source>
            <comment>date, date</comment>
            <translation>Choisissez un jour du %1 au %2, et pas ce qui est déjà convenu.</translation>
        </message>
        <message>
            <source>Agreed so far: %1</source>
            <translation>Convenu jusqu’ici : %1</translation>
        </message>
        <message>
            <source>Write it as year-month-day, for example 2029-06-30.</source>
            <translation>À écrire année-mois-jour, par exemple 2029-06-30.</translation>
        </message>
        <message>
            <source>Write the time as hours and minutes, for example 10:30, or leave it empty.</source>
            <translation>Écrivez l’heure en heures et minutes, par exemple 10:30, ou laissez-la vide.</translation>
        </message>
        <message>
            <source>Midnight stands for a day without a time. Leave the time empty if none is agreed.</source>
            <translation>Minuit signifie un jour sans heure. Laissez l’heure vide si aucune n’est convenue.</translation>
        </message>
        <message>
            <source>It is too late to move the visit: day %L1 after the treatment, the last that it may have, is over.</source>
            <translation>Il est trop tard pour déplacer la visite : le jour %L1 après le traitement, le dernier possible, est passé.</translation>
        </message>
        <message>
            <source>The phone shows from its next sync on: %1</source>
            <translation>Le téléphone affiche dès sa prochaine synchronisation : %1</translation>
        </message>
        <message>
            <source>No phone has this course: a visit that is brought forward is only noted here, and no phone shows it. Tell her the day.</source>
            <translation>Aucun téléphone n’a ce suivi : une visite avancée n’est que notée ici, et aucun téléphone ne l’affiche. Dites-lui le jour.</translation>
        </message>
        <message>
            <source>She called us: %1</source>
            <translation>Elle nous a appelés : %1</translation>
        </message>
        <message>
            <source>Since you opened this, something new came: %1</source>
            <comment>titles of findings</comment>
            <translation>Depuis que vous avez ouvert ceci, du nouveau est arrivé : %1</translation>
        </message>
    </context>
    <context>
        <name>CallScript</name>
        <message>
            <source>Can you breathe, swallow your saliva and speak a whole sentence? If not: emergency number, now, and stay on the line.</source>
            <translation>Pouvez-vous respirer, avaler votre salive et dire une phrase entière ? Sinon : numéro d’urgence, tout de suite, et restez en ligne.</translation>
        </message>
        <message>
            <source>Is the swelling growing from hour to hour, or is the neck hard?</source>
            <translation>Le gonflement augmente-t-il d’heure en heure, ou le cou est-il dur ?</translation>
        </message>
        <message>
            <source>Is somebody with you?</source>
            <translation>Y a-t-il quelqu’un avec vous ?</translation>
        </message>
        <message>
            <source>Do you see as before with each eye? If not: emergency number, now.</source>
            <translation>Voyez-vous comme avant avec chaque œil ? Sinon : numéro d’urgence, tout de suite.</translation>
        </message>
        <message>
            <source>Smile, close both eyes, lift your brows: is one side weaker? Since when?</source>
            <translation>Souriez, fermez les deux yeux, levez les sourcils : un côté est-il plus faible ? Depuis quand ?</translation>
        </message>
        <message>
            <source>Is one side growing? Compared with this morning: much more, a little, the same?</source>
            <translation>Un côté grossit-il ? Par rapport à ce matin : beaucoup plus, un peu, pareil ?</translation>
        </message>
        <message>
            <source>Does it feel hard and tense, or soft?</source>
            <translation>Est-ce dur et tendu, ou souple ?</translation>
        </message>
        <message>
            <source>Do you take anything that thins the blood, or aspirin or ibuprofen?</source>
            <translation>Prenez-vous un médicament qui fluidifie le sang, de l’aspirine ou de l’ibuprofène ?</translation>
        </message>
        <message>
            <source>What is your temperature now? Did you have chills?</source>
            <translation>Quelle est votre température maintenant ? Avez-vous eu des frissons ?</translation>
        </message>
        <message>
            <source>Is an entry point red, warm, or is anything coming out of it?</source>
            <translation>Un point d’entrée est-il rouge, chaud, ou en sort-il quelque chose ?</translation>
        </message>
        <message>
            <source>Is the red or the pain spreading?</source>
            <translation>La rougeur ou la douleur s’étend-elle ?</translation>
        </message>
        <message>
            <source>Pain from 0 to 10 now, and at its worst since yesterday?</source>
            <translation>Douleur de 0 à 10 maintenant, et au pire depuis hier ?</translation>
        </message>
        <message>
            <source>What have you taken against it, and did it help?</source>
            <translation>Qu’avez-vous pris contre la douleur, et cela a-t-il aidé ?</translation>
        </message>
        <message>
            <source>Is the skin there pale, blue, or does it feel cold?</source>
            <translation>La peau y est-elle pâle, bleue, ou froide au toucher ?</translation>
        </message>
        <message>
            <source>Can you see or feel an end of a thread? Do not pull or cut it.</source>
            <translation>Voyez-vous ou sentez-vous un bout de fil ? Ne tirez pas dessus et ne le coupez pas.</translation>
        </message>
        <message>
            <source>Is the skin over it open, red or wet?</source>
            <translation>La peau au-dessus est-elle ouverte, rouge ou humide ?</translation>
        </message>
        <message>
            <source>Please send a photo from the diary, from the front and from that side.</source>
            <translation>Envoyez, s’il vous plaît, une photo depuis le journal, de face et de ce côté.</translation>
        </message>
        <message>
            <source>Compared with yesterday: better, the same, worse?</source>
            <translation>Par rapport à hier : mieux, pareil, pire ?</translation>
        </message>
        <message>
            <source>Anything new: fever, one side worse, something coming out?</source>
            <translation>Du nouveau : fièvre, un côté qui s’aggrave, quelque chose qui sort ?</translation>
        </message>
        <message>
            <source>How are you? The diary has heard nothing for some days.</source>
            <translation>Comment allez-vous ? Le journal n’a rien reçu depuis quelques jours.</translation>
        </message>
        <message>
            <source>Does the diary work, and is the phone online?</source>
            <translation>Le journal fonctionne-t-il, et le téléphone est-il connecté ?</translation>
        </message>
        <message>
            <source>Fever, one side worse, anything coming out of an entry point?</source>
            <translation>Fièvre, un côté qui s’aggrave, quelque chose qui sort d’un point d’entrée ?</translation>
        </message>
        <message>
            <source>Last: what are you most worried about?</source>
            <translation>Pour finir : qu’est-ce qui vous inquiète le plus ?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::HandOverBoard</name>
        <message>
            <source>Hand-over</source>
            <translation>Relève</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>clinic, person, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>A word from who leaves</source>
            <translation>Un mot de la personne qui part</translation>
        </message>
        <message>
            <source>Who waits</source>
            <translation>Qui attend</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Degré d’urgence</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Quoi et pourquoi</translation>
        </message>
        <message>
            <source>Since</source>
            <translation>Depuis</translation>
        </message>
        <message>
            <source>Who is on it</source>
            <translation>Qui s’en occupe</translation>
        </message>
        <message>
            <source>What was done in the last day</source>
            <translation>Ce qui a été fait ces dernières 24 heures</translation>
        </message>
        <message>
            <source>nobody</source>
            <translation>personne</translation>
        </message>
        <message>
            <source>Nobody waits for an answer.</source>
            <translation>Personne n’attend de réponse.</translation>
        </message>
        <message>
            <source>Nothing was noted.</source>
            <translation>Rien n’a été noté.</translation>
        </message>
        <message>
            <source>%1 (%2, %3)</source>
            <comment>note, person, when</comment>
            <translation>%1 (%2, %3)</translation>
        </message>
        <message>
            <source>Say who is at the desk.</source>
            <translation>Indiquez qui est au poste.</translation>
        </message>
        <message>
            <source>Too long: shorten it.</source>
            <translation>Trop long : raccourcissez.</translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré : conservez-le comme les dossiers des patients.</translation>
        </message>
        <message>
            <source>Save the hand-over</source>
            <translation>Enregistrer la relève</translation>
        </message>
        <message>
            <source>Copied as text. Whoever uses this computer can paste it: paste it soon, then copy something else.</source>
            <translation>Copié en texte. Toute personne utilisant cet ordinateur peut le coller : collez-le vite, puis copiez autre chose.</translation>
        </message>
        <message>
            <source>Also to call about: %1</source>
            <translation>Appeler aussi pour : %1</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Retiré par %1</translation>
        </message>
    </context>
    <context>
        <name>HandOverPage</name>
        <message>
            <source>Hand-over</source>
            <translation>Relève</translation>
        </message>
        <message>
            <source>Made from the queue of this moment.</source>
            <translation>Établie d’après la file d’attente à cet instant.</translation>
        </message>
        <message>
            <source>Copy as text</source>
            <translation>Copier en texte</translation>
        </message>
        <message>
            <source>Take it down</source>
            <translation>Retirer</translation>
        </message>
        <message>
            <source>A word for whoever takes over; it stays pinned over the queue until somebody takes it down</source>
            <translation>Un mot pour la relève ; il reste épinglé au-dessus de la file jusqu’à ce que quelqu’un le retire</translation>
        </message>
        <message>
            <source>Pin it</source>
            <translation>Épingler</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Enregistrer</translation>
        </message>
    </context>
    <context>
        <name>CourseLook</name>
        <message>
            <source>You have not looked at this course before.</source>
            <translation>Vous n’avez pas encore consulté ce suivi.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(ies)</source>
            <translation>
                <numerusform>%Ln note</numerusform>
                <numerusform>%Ln notes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln finding(s)</source>
            <translation>
                <numerusform>%Ln constat</numerusform>
                <numerusform>%Ln constats</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s)</source>
            <translation>
                <numerusform>%Ln message</numerusform>
                <numerusform>%Ln messages</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing new since you last looked, %1.</source>
            <translation>Rien de nouveau depuis votre dernier passage, %1.</translation>
        </message>
        <message>
            <source>New since you last looked, %1: %2.</source>
            <comment>when, list</comment>
            <translation>Nouveau depuis votre dernier passage, %1 : %2.</translation>
        </message>
        <message>
            <source>%1 %2 to %3</source>
            <comment>stream, low, high</comment>
            <translation>%1 %2 à %3</translation>
        </message>
        <message>
            <source>Too few entries for a forecast to the follow-up.</source>
            <translation>Trop peu de notes pour une prévision jusqu’au contrôle.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1: every score 1 or below.</source>
            <translation>Attendu au contrôle, jour %1 : toutes les valeurs à 1 ou moins.</translation>
        </message>
        <message>
            <source>Expected at the follow-up, day %1, in 8 of 10 such courses: %2; everything else 1 or below.</source>
            <comment>day, list</comment>
            <translation>Attendu au contrôle, jour %1, dans 8 suivis semblables sur 10 : %2 ; tout le reste à 1 ou moins.</translation>
        </message>
        <message>
            <source>Course</source>
            <translation>Suivi</translation>
        </message>
        <message>
            <source>%1 · %2 · %3</source>
            <comment>patient, clinic, when</comment>
            <translation>%1 · %2 · %3</translation>
        </message>
        <message>
            <source>Treated %1, %2 now</source>
            <translation>Traité le %1 ; actuellement : %2</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Constats</translation>
        </message>
        <message>
            <source>How urgent</source>
            <translation>Degré d’urgence</translation>
        </message>
        <message>
            <source>What and why</source>
            <translation>Quoi et pourquoi</translation>
        </message>
        <message>
            <source>Raised</source>
            <translation>Apparu</translation>
        </message>
        <message>
            <source>What was done</source>
            <translation>Ce qui a été fait</translation>
        </message>
        <message>
            <source>Entries</source>
            <translation>Notes</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Jour</translation>
        </message>
        <message>
            <source>Scores</source>
            <translation>Valeurs</translation>
        </message>
        <message>
            <source>Signs and words</source>
            <translation>Signes et texte</translation>
        </message>
        <message>
            <source>Marks</source>
            <translation>Mentions</translation>
        </message>
        <message>
            <source>Messages</source>
            <translation>Messages</translation>
        </message>
        <message>
            <source>None.</source>
            <translation>Néant.</translation>
        </message>
        <message>
            <source>Calls noted on the course</source>
            <translation>Appels notés dans le suivi</translation>
        </message>
    </context>
    <context>
        <name>PlanBeside</name>
        <message>
            <source>The plan</source>
            <translation>Le plan</translation>
        </message>
        <message>
            <source>Make this the plan</source>
            <translation>En faire le plan</translation>
        </message>
        <message>
            <source>Keep this as the plan</source>
            <translation>Garder comme plan</translation>
        </message>
        <message>
            <source>It stays as it is while you change what is done.</source>
            <translation>Il reste tel quel pendant que vous modifiez ce qui est fait.</translation>
        </message>
        <message>
            <source>Drop the plan</source>
            <translation>Abandonner le plan</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::DesksBoard</name>
        <message>
            <source>This desk, %1</source>
            <translation>Ce poste, %1</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Poste %1</translation>
        </message>
        <message>
            <source>Holds the clinic's root key: may add and shut out desks, and link phones</source>
            <translation>A la clé racine de la clinique : peut ajouter et exclure des postes, et relier des téléphones</translation>
        </message>
        <message>
            <source>Reads and writes; links no phones and adds no desks</source>
            <translation>Lit et écrit ; ne relie pas de téléphones et n’ajoute pas de postes</translation>
        </message>
        <message>
            <source>Nothing from it has arrived here yet</source>
            <translation>Rien de ce poste n’est encore arrivé ici</translation>
        </message>
        <message>
            <source>Last wrote: %1</source>
            <translation>Dernière écriture : %1</translation>
        </message>
        <message>
            <source>Shut out desk %1?</source>
            <translation>Exclure le poste %1 ?</translation>
        </message>
        <message>
            <source>Begin a fresh key?</source>
            <translation>Passer à une nouvelle clé ?</translation>
        </message>
        <message>
            <source>For a desk that is lost, stolen or given away. From the next time phones and desks ask the hub on, nobody takes anything from it, and what is written from then on it cannot read. What it holds already stays on it, behind its passphrase. This cannot be undone: a desk that is found again must be set up anew.</source>
            <translation>Pour un poste perdu, volé ou cédé. À partir de la prochaine interrogation du hub par les téléphones et les postes, personne n’accepte plus rien de lui, et il ne peut pas lire ce qui est écrit ensuite. Ce qu’il contient déjà y reste, derrière sa phrase secrète. C’est irréversible : un poste retrouvé doit être configuré à nouveau.</translation>
        </message>
        <message>
            <source>Shut it out</source>
            <translation>Exclure</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Passer à une nouvelle clé</translation>
        </message>
        <message>
            <source>A fresh key holds from the next time each phone asks the hub.</source>
            <translation>Une nouvelle clé vaut dès la prochaine interrogation du hub par chaque téléphone.</translation>
        </message>
        <message>
            <source>Phone %1</source>
            <translation>Téléphone %1</translation>
        </message>
        <message>
            <source>%1: the hub refuses it, said %2</source>
            <translation>%1 : le hub le refuse, confirmé %2</translation>
        </message>
        <message>
            <source>%1: was replaced; the hub is told once it has said what it still holds, or at the latest %2</source>
            <translation>%1 : a été remplacé ; le hub en est informé dès qu’il a dit ce qu’il contient encore, au plus tard %2</translation>
        </message>
        <message>
            <source>%1: the hub has not been told yet, and may still let it in. It is told at every sync.</source>
            <translation>%1 : le hub ne le sait pas encore et peut encore l’admettre. Il en est informé à chaque synchronisation.</translation>
        </message>
        <message>
            <source>Shut out. The hub is told with the next sync; below it says when it has taken that in. Should it not, whoever runs it can refuse the desk by this number: %1. If it held the clinic&apos;s root key, whoever opens it can still sign as the clinic: then set up a new clinic.</source>
            <translation>Exclu. Le hub en est informé à la prochaine synchronisation ; plus bas est indiqué quand il l’a pris en compte. Sinon, son exploitant peut refuser le poste avec ce numéro : %1. S’il détenait la clé racine de la clinique, qui l’ouvre peut encore signer au nom de la clinique : créez alors une nouvelle clinique.</translation>
        </message>
        <message>
            <source>Patients seal what they write to a fresh key from the next time their phones ask the hub on. What was written before stays readable here. One begins by itself every thirty days; another one is good after a passphrase was seen by somebody.</source>
            <translation>À partir de la prochaine interrogation du hub par leur téléphone, les patients scellent ce qu’ils écrivent pour une nouvelle clé. Ce qui a été écrit avant reste lisible ici. Une nouvelle commence d’elle-même tous les trente jours ; une autre est utile si quelqu’un a vu une phrase secrète.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ApplyBoard</name>
        <message>
            <source>This desk has a clinic of its own already. Only a new, empty one can join.</source>
            <translation>Ce poste a déjà sa propre clinique. Seul un poste neuf et vide peut en rejoindre d’autres.</translation>
        </message>
        <message>
            <source>Type the hub's address as well: it stands under the code.</source>
            <translation>Tapez aussi l’adresse du hub : elle est sous le code.</translation>
        </message>
        <message>
            <source>That is not such a code: compare it letter by letter with the other screen.</source>
            <translation>Ce n’est pas un code de ce type : comparez-le lettre par lettre avec l’autre écran.</translation>
        </message>
        <message>
            <source>This computer has no way to a hub.</source>
            <translation>Cet ordinateur n’a pas d’accès à un hub.</translation>
        </message>
        <message>
            <source>Somebody else has used this code. Ask for a new one, out of other people's sight.</source>
            <translation>Quelqu’un d’autre a utilisé ce code. Demandez-en un nouveau, à l’abri des regards.</translation>
        </message>
        <message>
            <source>Who answered is not the clinic's hub. Nothing was joined. Compare the address, and tell the clinic.</source>
            <translation>Celui qui a répondu n’est pas le hub de la clinique. Rien n’a été relié. Comparez l’adresse et prévenez la clinique.</translation>
        </message>
        <message>
            <source>The hub does not answer. It is asked again by itself.</source>
            <translation>Le hub ne répond pas. Il sera interrogé de nouveau automatiquement.</translation>
        </message>
        <message>
            <source>This desk belongs to the clinic</source>
            <translation>Ce poste fait partie de la clinique</translation>
        </message>
        <message>
            <source>Compare the numbers</source>
            <translation>Comparez les numéros</translation>
        </message>
        <message>
            <source>Join the clinic's other desks</source>
            <translation>Rejoindre les autres postes de la clinique</translation>
        </message>
        <message>
            <source>Asking the hub</source>
            <translation>Interrogation du hub</translation>
        </message>
        <message>
            <source>The clinic's keys are here, and what patients and colleagues wrote has begun to arrive. Say who is at this desk.</source>
            <translation>Les clés de la clinique sont là, et ce que patients et collègues ont écrit commence à arriver. Indiquez qui est à ce poste.</translation>
        </message>
        <message>
            <source>The clinic's keys are here. What patients and colleagues wrote arrives once the other desk, and then this one, have asked the hub.</source>
            <translation>Les clés de la clinique sont là. Ce que patients et collègues ont écrit arrive dès que l’autre poste, puis celui-ci, ont interrogé le hub.</translation>
        </message>
        <message>
            <source>Read these six digits aloud. Only if the other desk shows the same ones may somebody confirm there.</source>
            <translation>Lisez ces six chiffres à voix haute. On ne peut confirmer sur l’autre poste que s’il affiche les mêmes.</translation>
        </message>
        <message>
            <source>At a desk that holds the clinic's root key, open Clinic, Desks, and add a desk. It shows a code and the hub's address.</source>
            <translation>Sur un poste qui a la clé racine de la clinique, ouvrez Clinique, Postes, et ajoutez un poste. Il affiche un code et l’adresse du hub.</translation>
        </message>
        <message>
            <source>Leave both programs open.</source>
            <translation>Laissez les deux programmes ouverts.</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::KeepBoard</name>
        <message>
            <source>There is a recovery code. It is not stored here, only on your paper.</source>
            <translation>Il y a un code de secours. Il n’est pas gardé ici, seulement sur votre papier.</translation>
        </message>
        <message>
            <source>There is no recovery code yet: whoever loses the passphrase loses this vault.</source>
            <translation>Il n’y a pas encore de code de secours : qui perd la phrase secrète perd ce coffre.</translation>
        </message>
        <message>
            <source>The passphrase is being changed.</source>
            <translation>Changement de la phrase secrète en cours.</translation>
        </message>
        <message>
            <source>The two new ones are not the same.</source>
            <translation>Les deux nouvelles ne sont pas pareilles.</translation>
        </message>
        <message>
            <source>From now on only the new passphrase opens this desk.</source>
            <translation>Désormais, seule la nouvelle phrase secrète ouvre ce poste.</translation>
        </message>
        <message>
            <source>A recovery code is being made.</source>
            <translation>Création d’un code de secours en cours.</translation>
        </message>
        <message>
            <source>From the paper: group %L1 of %L2</source>
            <translation>Sur le papier : groupe %L1 sur %L2</translation>
        </message>
        <message>
            <source>That is not this group. Look at the paper again. If it is not there, show the code once more.</source>
            <translation>Ce n’est pas ce groupe. Regardez encore le papier. S’il n’y est pas, montrez le code encore une fois.</translation>
        </message>
        <message>
            <source>Keep the paper where only the clinic finds it, not beside this computer.</source>
            <translation>Gardez le papier là où seule la clinique le trouve, pas à côté de cet ordinateur.</translation>
        </message>
        <message>
            <source>Where to put the backup</source>
            <translation>Où mettre la sauvegarde</translation>
        </message>
        <message>
            <source>The backup is being made, opened and compared. This may take a minute.</source>
            <translation>La sauvegarde est créée, ouverte et comparée. Cela peut prendre une minute.</translation>
        </message>
        <message>
            <source>A backup is in %1 (%2). It was opened again and compared: everything is in it. It stays encrypted: today's passphrase opens it, also after a change.</source>
            <translation>Une sauvegarde est dans %1 (%2). Elle a été rouverte et comparée : tout y est. Elle reste chiffrée : la phrase secrète d’aujourd’hui l’ouvre, même après un changement.</translation>
        </message>
        <message>
            <source>There is a file of that name. A backup is never written over another: choose a new name.</source>
            <translation>Un fichier de ce nom existe. Une sauvegarde n’en écrase jamais une autre : choisissez un nouveau nom.</translation>
        </message>
        <message>
            <source>Everything is being read and compared.</source>
            <translation>Tout est lu et comparé.</translation>
        </message>
        <message numerus="yes">
            <source>The new one is too short: at least %Ln character(s).</source>
            <translation>
                <numerusform>La nouvelle est trop courte : au moins %Ln caractère.</numerusform>
                <numerusform>La nouvelle est trop courte : au moins %Ln caractères.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Whole: %Ln thing(s) written, each in its place, and what is shown follows from them.</source>
            <translation>
                <numerusform>Intact : %Ln écriture, à sa place, et ce qui est affiché en découle.</numerusform>
                <numerusform>Intact : %Ln écritures, chacune à sa place, et ce qui est affiché en découle.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln fault(s) were found. Make no more entries here, keep this computer as it is, and restore the last backup. The first: %1</source>
            <translation>
                <numerusform>%Ln anomalie trouvée. N’enregistrez plus rien ici, laissez cet ordinateur tel quel et restaurez la dernière sauvegarde. La voici : %1</numerusform>
                <numerusform>%Ln anomalies trouvées. N’enregistrez plus rien ici, laissez cet ordinateur tel quel et restaurez la dernière sauvegarde. La première : %1</numerusform>
            </translation>
        </message>
        <message>
            <source>Last backup of this desk: %1.</source>
            <translation>Dernière sauvegarde de ce poste : %1.</translation>
        </message>
        <message>
            <source>No backup of this desk was made yet.</source>
            <translation>Aucune sauvegarde de ce poste n&apos;a encore été faite.</translation>
        </message>
        <message>
            <source>No backup of this desk since %1.</source>
            <translation>Aucune sauvegarde de ce poste depuis le %1.</translation>
        </message>
        <message>
            <source>If this computer fails, what is written here may be lost. Make a backup, and keep it in another place.</source>
            <translation>Si cet ordinateur tombe en panne, ce qui est écrit ici peut être perdu. Faites une sauvegarde et gardez-la ailleurs.</translation>
        </message>
        <message>
            <source>If this computer fails, what was written here since may be lost. Make a backup, and keep it in another place.</source>
            <translation>Si cet ordinateur tombe en panne, ce qui a été écrit ici depuis peut être perdu. Faites une sauvegarde et gardez-la ailleurs.</translation>
        </message>
    </context>
    <context>
        <name>DesksPage</name>
        <message>
            <source>Desks</source>
            <translation>Postes</translation>
        </message>
        <message>
            <source>Computers that share this clinic. Each has its own passphrase.</source>
            <translation>Ordinateurs qui partagent cette clinique. Chacun a sa propre phrase secrète.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Retour à la clinique</translation>
        </message>
        <message>
            <source>Number by which the hub knows it</source>
            <translation>Numéro sous lequel le hub le connaît</translation>
        </message>
        <message>
            <source>Shut out: lost or given away</source>
            <translation>Exclure : perdu ou cédé</translation>
        </message>
        <message>
            <source>Only a desk that holds the clinic's root key can add or shut out desks.</source>
            <translation>Seul un poste qui a la clé racine de la clinique peut ajouter ou exclure des postes.</translation>
        </message>
        <message>
            <source>Add a desk</source>
            <translation>Ajouter un poste</translation>
        </message>
        <message>
            <source>Begin a fresh key</source>
            <translation>Passer à une nouvelle clé</translation>
        </message>
    </context>
    <context>
        <name>ApplyPage</name>
        <message>
            <source>The code on the other screen</source>
            <translation>Le code sur l’autre écran</translation>
        </message>
        <message>
            <source>The hub's address under it</source>
            <translation>L’adresse du hub en dessous</translation>
        </message>
        <message>
            <source>Six digits: %1</source>
            <translation>Six chiffres : %1</translation>
        </message>
        <message>
            <source>Join</source>
            <translation>Rejoindre</translation>
        </message>
        <message>
            <source>Say who is here</source>
            <translation>Indiquer qui est là</translation>
        </message>
        <message>
            <source>Ask the hub now</source>
            <translation>Interroger le hub</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Retour à la clinique</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Arrêter</translation>
        </message>
    </context>
    <context>
        <name>KeepPage</name>
        <message>
            <source>Backup and keys</source>
            <translation>Sauvegarde et clés</translation>
        </message>
        <message>
            <source>A computer can be stolen, fail, or burn. What is not in a backup elsewhere is lost then.</source>
            <translation>Un ordinateur peut être volé, tomber en panne ou brûler. Ce qui n’est pas dans une sauvegarde ailleurs est alors perdu.</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Retour à la clinique</translation>
        </message>
        <message>
            <source>Write this down on paper. It is shown only now. Any code from before no longer works.</source>
            <translation>Notez-le sur papier. Il n’est montré que maintenant. Les anciens codes ne marchent plus.</translation>
        </message>
        <message>
            <source>It is written down</source>
            <translation>C’est noté</translation>
        </message>
        <message>
            <source>Passphrase of this desk, for each of these</source>
            <translation>Phrase secrète de ce poste, pour chacune de ces actions</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Sauvegarde</translation>
        </message>
        <message>
            <source>One encrypted file. Put it on another medium, in another place, at least once a week; try it out twice a year.</source>
            <translation>Un fichier chiffré. Mettez-le sur un autre support, dans un autre lieu, au moins une fois par semaine ; testez-le deux fois par an.</translation>
        </message>
        <message>
            <source>Make a backup</source>
            <translation>Créer une sauvegarde</translation>
        </message>
        <message>
            <source>Check</source>
            <translation>Vérification</translation>
        </message>
        <message>
            <source>Reads everything, and whether each thing is where it was written.</source>
            <translation>Lit tout et vérifie que chaque élément est là où il a été écrit.</translation>
        </message>
        <message>
            <source>Check this vault</source>
            <translation>Vérifier ce coffre</translation>
        </message>
        <message>
            <source>Recovery code</source>
            <translation>Code de secours</translation>
        </message>
        <message>
            <source>Make a new code</source>
            <translation>Créer un nouveau code</translation>
        </message>
        <message>
            <source>A new passphrase</source>
            <translation>Une nouvelle phrase secrète</translation>
        </message>
        <message>
            <source>Change the passphrase</source>
            <translation>Changer la phrase secrète</translation>
        </message>
        <message>
            <source>The new one</source>
            <translation>La nouvelle</translation>
        </message>
        <message>
            <source>The new one once more</source>
            <translation>La nouvelle encore une fois</translation>
        </message>
    </context>
    <context>
        <name>NoticesPage</name>
        <message>
            <source>About Ebbline</source>
            <translation>À propos d’Ebbline</translation>
        </message>
        <message>
            <source>Version %1</source>
            <translation>Version %1</translation>
        </message>
        <message>
            <source>Back to the settings</source>
            <translation>Retour aux réglages</translation>
        </message>
        <message>
            <source>Ebbline is free software under the GPL 3. It is not a certified medical device, and replaces no examination and no emergency service.</source>
            <translation>Ebbline est un logiciel libre sous GPL 3. Ce n’est pas un dispositif médical certifié ; il ne remplace ni un examen ni un service d’urgence.</translation>
        </message>
        <message>
            <source>The desk is made with the work of others. Here is what it uses and who made that. The texts of the licences are in English.</source>
            <translation>Ce programme est fait avec le travail d’autres personnes. Vous voyez ici ce qu’il utilise et qui l’a fait. Les textes des licences sont en anglais.</translation>
        </message>
        <message>
            <source>The parts</source>
            <translation>Les éléments</translation>
        </message>
        <message>
            <source>The licences</source>
            <translation>Les licences</translation>
        </message>
        <message>
            <source>Shows the text</source>
            <translation>Affiche le texte</translation>
        </message>
    </context>
    <context>
        <name>LicencePage</name>
        <message>
            <source>Back to all parts</source>
            <translation>Retour à tous les éléments</translation>
        </message>
    </context>
    <context>
        <name>Traces</name>
        <message>
            <source>Patient registered</source>
            <translation>Patient inscrit</translation>
        </message>
        <message>
            <source>Treatment recorded</source>
            <translation>Traitement enregistré</translation>
        </message>
        <message>
            <source>Care plan sent to the phone</source>
            <translation>Plan de soins envoyé au téléphone</translation>
        </message>
        <message>
            <source>Finding: %1</source>
            <translation>Constat : %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln entry(s) opened</source>
            <translation>
                <numerusform>%Ln note ouverte</numerusform>
                <numerusform>%Ln notes ouvertes</numerusform>
            </translation>
        </message>
        <message>
            <source>Message written</source>
            <translation>Message écrit</translation>
        </message>
        <message>
            <source>Message read</source>
            <translation>Message lu</translation>
        </message>
        <message>
            <source>Follow-up recorded</source>
            <translation>Contrôle enregistré</translation>
        </message>
        <message>
            <source>Protocol signed</source>
            <translation>Protocole signé</translation>
        </message>
        <message>
            <source>Clinic's particulars changed</source>
            <translation>Coordonnées de la clinique modifiées</translation>
        </message>
        <message>
            <source>Limit of lidocaine set</source>
            <translation>Limite de lidocaïne fixée</translation>
        </message>
        <message>
            <source>Phone linked</source>
            <translation>Téléphone relié</translation>
        </message>
        <message>
            <source>Usual range learned</source>
            <translation>Plage habituelle établie</translation>
        </message>
        <message>
            <source>Usual range put into use</source>
            <translation>Plage habituelle mise en vigueur</translation>
        </message>
        <message>
            <source>Desk %1</source>
            <translation>Poste %1</translation>
        </message>
        <message>
            <source>Eyes marked in a photograph</source>
            <translation>Yeux marqués sur une photo</translation>
        </message>
        <message>
            <source>Desk added</source>
            <translation>Poste ajouté</translation>
        </message>
        <message>
            <source>Desk shut out</source>
            <translation>Poste exclu</translation>
        </message>
        <message>
            <source>Lost phone ended</source>
            <translation>Téléphone perdu exclu</translation>
        </message>
        <message>
            <source>Phone replaced</source>
            <translation>Téléphone remplacé</translation>
        </message>
        <message>
            <source>Fresh key begun</source>
            <translation>Nouvelle clé commencée</translation>
        </message>
        <message>
            <source>Numbers to call changed</source>
            <translation>Numéros à appeler modifiés</translation>
        </message>
        <message>
            <source>%1, with %2</source>
            <translation>%1, avec %2</translation>
        </message>
        <message>
            <source>Newer program asked for</source>
            <translation>Programme plus récent demandé</translation>
        </message>
        <message>
            <source>Finding: taken back what was noted</source>
            <translation>Constat : note retirée</translation>
        </message>
        <message>
            <source>Word to who takes over</source>
            <translation>Mot pour la relève</translation>
        </message>
        <message>
            <source>Backup made</source>
            <translation>Sauvegarde faite</translation>
        </message>
        <message>
            <source>Passphrase of this desk changed</source>
            <translation>Phrase secrète de ce poste changée</translation>
        </message>
        <message>
            <source>Recovery code made</source>
            <translation>Code de secours créé</translation>
        </message>
        <message>
            <source>Usual range taken from a file</source>
            <translation>Plage habituelle reprise d’un fichier</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment put in</source>
            <translation>Photo prise juste après le traitement ajoutée</translation>
        </message>
        <message>
            <source>Photograph from right after the treatment taken back</source>
            <translation>Photo prise juste après le traitement retirée</translation>
        </message>
        <message>
            <source>Role of %1: %2</source>
            <comment>person, role</comment>
            <translation>Rôle de %1 : %2</translation>
        </message>
        <message>
            <source>Patient&apos;s name, number or language corrected</source>
            <translation>Nom, numéro ou langue du patient corrigé</translation>
        </message>
        <message>
            <source>Call noted on the course</source>
            <translation>Appel noté dans le suivi</translation>
        </message>
        <message>
            <source>Treatment corrected</source>
            <translation>Traitement corrigé</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::TraceBoard</name>
        <message numerus="yes">
            <source>%Ln line(s)</source>
            <translation>
                <numerusform>%Ln ligne</numerusform>
                <numerusform>%Ln lignes</numerusform>
            </translation>
        </message>
        <message>
            <source>Saved as %1. The file is not encrypted: keep it as you keep the patients' records.</source>
            <translation>Enregistré sous %1. Le fichier n’est pas chiffré : conservez-le comme les dossiers des patients.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>Impossible d’écrire le fichier à cet endroit. Choisissez un autre dossier.</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Enregistrer la liste</translation>
        </message>
        <message>
            <source>%1; the newest %2 are shown</source>
            <translation>%1 ; les %2 plus récentes sont affichées</translation>
        </message>
    </context>
    <context>
        <name>TracesPage</name>
        <message>
            <source>Who did what</source>
            <translation>Qui a fait quoi</translation>
        </message>
        <message>
            <source>Save the list</source>
            <translation>Enregistrer la liste</translation>
        </message>
        <message>
            <source>Back to the clinic</source>
            <translation>Retour à la clinique</translation>
        </message>
        <message>
            <source>Search: a name, an act, a day</source>
            <translation>Rechercher : un nom, un acte, un jour</translation>
        </message>
        <message>
            <source>No line says that.</source>
            <translation>Aucune ligne ne contient cela.</translation>
        </message>
        <message>
            <source>Nothing has been done here yet.</source>
            <translation>Rien n’a encore été fait ici.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Quand</translation>
        </message>
        <message>
            <source>Who</source>
            <translation>Qui</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Quoi</translation>
        </message>
        <message>
            <source>Patient</source>
            <translation>Patient</translation>
        </message>
        <message>
            <source>What is written at a desk leaves a line: patients, treatments, findings, messages, protocols, and what was done with keys, backups, desks and phones. Opening entries does, looking at a course does not, nor does a backup, a passphrase or a recovery code that was finished after the desk was locked, if the program ended before it was opened again. Where no name was noted, the desk is named.</source>
            <translation>Ce qui est écrit à un poste laisse une ligne : patients, traitements, constats, messages, protocoles, et ce qui a été fait des clés, sauvegardes, postes et téléphones. Ouvrir des notes en laisse une, consulter un suivi n’en laisse pas, ni une sauvegarde, une phrase secrète ou un code de secours terminés après le verrouillage du poste, si le programme a été quitté avant qu’il soit rouvert. Là où aucun nom n’a été noté, le poste est indiqué.</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Afficher des lignes plus anciennes</translation>
        </message>
    </context>
    <context>
        <name>Events</name>
        <message>
            <source>warned</source>
            <translation>alerte</translation>
        </message>
        <message>
            <source>dressings off</source>
            <translation>pansements retirés</translation>
        </message>
        <message>
            <source>called</source>
            <translation>appelé</translation>
        </message>
        <message>
            <source>not reached</source>
            <translation>pas joint</translation>
        </message>
        <message>
            <source>visit forward</source>
            <translation>visite avancée</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>clos</translation>
        </message>
        <message>
            <source>follow-up</source>
            <translation>contrôle</translation>
        </message>
        <message>
            <source>reopened</source>
            <translation>rouvert</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>vu</translation>
        </message>
        <message>
            <source>taken on</source>
            <translation>pris en charge</translation>
        </message>
        <message>
            <source>opened</source>
            <translation>ouverte</translation>
        </message>
        <message>
            <source>entry without scores</source>
            <translation>note sans scores</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <comment>day, what happened</comment>
            <translation>%1 : %2.</translation>
        </message>
        <message numerus="yes">
            <source>%Ln reminder(s) done</source>
            <translation>
                <numerusform>%Ln rappel fait</numerusform>
                <numerusform>%Ln rappels faits</numerusform>
            </translation>
        </message>
        <message>
            <source>photos</source>
            <translation>photos</translation>
        </message>
        <message>
            <source>she rang</source>
            <translation>elle a appelé</translation>
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
            <translation>Il n’y a ici aucune photo de cette vue.</translation>
        </message>
        <message>
            <source>There is only one photograph of this view.</source>
            <translation>Il n’y a qu’une photo de cette vue.</translation>
        </message>
        <message>
            <source>Earlier: %1, %2</source>
            <comment>day, time</comment>
            <translation>Plus ancienne : %1, %2</translation>
        </message>
        <message>
            <source>Later: %1, %2</source>
            <comment>day, time</comment>
            <translation>Plus récente : %1, %2</translation>
        </message>
        <message>
            <source>Eyes marked %1</source>
            <translation>Yeux marqués : %1</translation>
        </message>
        <message>
            <source>Eyes marked by %1, %2</source>
            <comment>person, time</comment>
            <translation>Yeux marqués par %1, %2</translation>
        </message>
        <message>
            <source>%1. %2. %3</source>
            <comment>which one and when, view, where the sides are</comment>
            <translation>%1. %2. %3</translation>
        </message>
        <message>
            <source>Being opened</source>
            <translation>En cours d’ouverture</translation>
        </message>
        <message>
            <source>Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.</source>
            <translation>Alignées sur les yeux : la plus récente est tournée, mise à l’échelle et déplacée, sans déformation ni effet miroir.</translation>
        </message>
        <message>
            <source>While you mark, both are shown as they were taken.</source>
            <translation>Pendant le marquage, les deux sont affichées telles qu’elles ont été prises.</translation>
        </message>
        <message>
            <source>Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.</source>
            <translation>Affichées telles qu’elles ont été prises, peut-être pas à la même échelle. Marquez les yeux sur les deux pour les aligner.</translation>
        </message>
        <message>
            <source>The two marks are too close together to turn a picture by. Mark the middle of each pupil.</source>
            <translation>Les deux marques sont trop proches pour servir à tourner une image. Marquez le centre de chaque pupille.</translation>
        </message>
        <message>
            <source>Both eyes are marked. Keep them, or mark again: the nearer mark moves.</source>
            <translation>Les deux yeux sont marqués. Gardez les marques, ou marquez à nouveau : la marque la plus proche se déplace.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil: the one on the left of the picture.</source>
            <translation>Marquez le centre de la pupille droite du patient : celle qui est à gauche sur l’image.</translation>
        </message>
        <message>
            <source>Mark the middle of the patient&apos;s right pupil.</source>
            <translation>Marquez le centre de la pupille droite du patient.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil: the one on the right of the picture.</source>
            <translation>Maintenant la pupille gauche du patient : celle qui est à droite sur l’image.</translation>
        </message>
        <message>
            <source>Now the patient&apos;s left pupil.</source>
            <translation>Maintenant la pupille gauche du patient.</translation>
        </message>
        <message>
            <source>The patient&apos;s left eye is marked to the left of the right one. If the picture is upright, the two are swapped.</source>
            <translation>L’œil gauche du patient est marqué à gauche de l’œil droit. Si l’image est à l’endroit, les deux sont intervertis.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>day, time</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 Cursor %2% across, %3% down. Space marks.</source>
            <comment>what to mark, shares of the picture</comment>
            <translation>%1 Curseur : %2 % depuis la gauche, %3 % depuis le haut. Espace marque.</translation>
        </message>
        <message>
            <source>Take this photograph back: %1, right after the treatment? Every desk of the clinic lets it go, and it does not come back.</source>
            <comment>view</comment>
            <translation>Retirer cette photo : %1, juste après le traitement ? Chaque poste du cabinet l’efface, et elle ne revient pas.</translation>
        </message>
    </context>
    <context>
        <name>PhotoHalf</name>
        <message>
            <source>The one before</source>
            <translation>La précédente</translation>
        </message>
        <message>
            <source>The one after</source>
            <translation>La suivante</translation>
        </message>
        <message>
            <source>Mark the eyes anew</source>
            <translation>Marquer à nouveau</translation>
        </message>
        <message>
            <source>Mark the eyes</source>
            <translation>Marquer les yeux</translation>
        </message>
        <message>
            <source>Take it back</source>
            <translation>La retirer</translation>
        </message>
    </context>
    <context>
        <name>PhotoMarking</name>
        <message>
            <source>Click or tap, or move the cursor with the arrows (with Shift in small steps) and press Space. Square: right eye. Circle: left eye.</source>
            <translation>Cliquez ou touchez, ou déplacez le curseur avec les flèches (avec Maj, à petits pas) et appuyez sur Espace. Carré : œil droit. Cercle : œil gauche.</translation>
        </message>
        <message>
            <source>Keep the marks</source>
            <translation>Garder les marques</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Leave without keeping</source>
            <translation>Quitter sans garder</translation>
        </message>
    </context>
    <context>
        <name>PhotoPanel</name>
        <message>
            <source>Photographs</source>
            <translation>Photos</translation>
        </message>
        <message>
            <source>The patient&apos;s photographs show up here once the phone has sent them. Taking them is the patient&apos;s choice.</source>
            <translation>Les photos du patient apparaissent ici dès que le téléphone les a envoyées. En prendre ou non relève du choix du patient.</translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <translation>Photos : %1</translation>
        </message>
        <message>
            <source>Side by side</source>
            <translation>Côte à côte</translation>
        </message>
        <message>
            <source>Two photographs of one view beside each other</source>
            <translation>Deux photos d’une même vue, l’une à côté de l’autre</translation>
        </message>
        <message>
            <source>Add the clinic's photographs</source>
            <translation>Ajouter les photos du cabinet</translation>
        </message>
        <message>
            <source>From right after the treatment, with the clinic's own camera</source>
            <translation>Prises juste après le traitement, avec l’appareil du cabinet</translation>
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
            <translation>Comme face au patient : la droite du patient est à gauche.</translation>
        </message>
        <message>
            <source>The patient&apos;s left side is towards the camera.</source>
            <translation>Le côté gauche du patient est tourné vers la caméra.</translation>
        </message>
        <message>
            <source>The patient&apos;s right side is towards the camera.</source>
            <translation>Le côté droit du patient est tourné vers la caméra.</translation>
        </message>
        <message>
            <source>Beside an entry that has not arrived yet</source>
            <translation>Avec une note qui n’est pas encore arrivée</translation>
        </message>
        <message>
            <source>Beside the entry of %1</source>
            <translation>Avec la note, %1</translation>
        </message>
        <message>
            <source>Could not be opened</source>
            <translation>N’a pas pu être ouverte</translation>
        </message>
        <message>
            <source>Still arriving: %1 of %2 parts</source>
            <translation>Pas encore complète : %1 sur %2 parties</translation>
        </message>
        <message>
            <source>Taken back by the patient, %1</source>
            <translation>Retirée par le patient, %1</translation>
        </message>
        <message numerus="yes">
            <source>%Ln photograph(s)</source>
            <translation>
                <numerusform>%Ln photo</numerusform>
                <numerusform>%Ln photos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln still arriving</source>
            <translation>
                <numerusform>%Ln pas encore complète</numerusform>
                <numerusform>%Ln pas encore complètes</numerusform>
            </translation>
        </message>
        <message>
            <source>Photographs: %1</source>
            <comment>views</comment>
            <translation>Photos : %1</translation>
        </message>
        <message>
            <source>right after the treatment</source>
            <translation>juste après le traitement</translation>
        </message>
        <message>
            <source>Put in by %1</source>
            <comment>person</comment>
            <translation>Ajoutée par %1</translation>
        </message>
        <message>
            <source>Taken back by %1, %2</source>
            <comment>person, time</comment>
            <translation>Retirée par %1, %2</translation>
        </message>
    </context>
    <context>
        <name>PhotosPage</name>
        <message>
            <source>Photographs side by side</source>
            <translation>Photos côte à côte</translation>
        </message>
        <message>
            <source>Back to the course</source>
            <translation>Retour au suivi</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Rapprocher</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>Éloigner</translation>
        </message>
        <message>
            <source>Whole picture</source>
            <translation>Image entière</translation>
        </message>
        <message>
            <source>Zoom of both: %1</source>
            <translation>Zoom des deux : %1</translation>
        </message>
        <message>
            <source>Light, distance and expression differ from one photograph to the next. What looks like a change may be one of them: compare with care, and look at the patient before you decide.</source>
            <translation>Lumière, distance et expression diffèrent d’une photo à l’autre. Ce qui ressemble à un changement peut en venir : comparez avec prudence, et regardez le patient avant de décider.</translation>
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
    <context>
        <name>IdleNotice</name>
        <message>
            <source>Stay open</source>
            <translation>Laisser ouvert</translation>
        </message>
    </context>
    <context>
        <name>IdlePanel</name>
        <message>
            <source>Nobody has used the desk for a while. It locks in half a minute. What was begun is kept.</source>
            <translation>Personne n’a utilisé le poste depuis un moment. Il se verrouille dans une demi-minute. Ce qui est commencé est conservé.</translation>
        </message>
    </context>
    <context>
        <name>PhoneWords</name>
        <message>
            <source>The phone holds more from this desk than the desk does: the desk runs on older data.</source>
            <translation>Le téléphone a reçu de ce poste plus que le poste lui-même ne contient : le poste travaille sur des données plus anciennes.</translation>
        </message>
        <message>
            <source>The phone sent two different histories: call, and do not rely on its entries.</source>
            <translation>Le téléphone a envoyé deux historiques différents : appelez, et ne vous fiez pas à ses notes.</translation>
        </message>
        <message>
            <source>A message of the phone is missing: the hub holds it back or lost it.</source>
            <translation>Il manque un message du téléphone : le hub le retient ou l’a perdu.</translation>
        </message>
        <message>
            <source>Phone not heard of since %1: what was written there may not be here.</source>
            <translation>Sans nouvelles du téléphone depuis %1 : ce qui y a été écrit n’est peut-être pas ici.</translation>
        </message>
        <message>
            <source>Phone not heard of since it was linked.</source>
            <translation>Sans nouvelles du téléphone depuis qu’il a été relié.</translation>
        </message>
        <message>
            <source>It has not confirmed what was sent to it, %1.</source>
            <comment>when it was sent</comment>
            <translation>Le téléphone n’a pas confirmé ce qui lui a été envoyé, %1.</translation>
        </message>
        <message>
            <source>That is more than %1 days: the phone may be lost or out of use. Call, and link a phone again if need be.</source>
            <translation>Cela fait plus de %1 jours : le téléphone est peut-être perdu ou n’est plus utilisé. Appelez, et associez de nouveau un téléphone si nécessaire.</translation>
        </message>
        <message>
            <source>it does not know this desk or the mailbox</source>
            <comment>why the hub takes nothing</comment>
            <translation>il ne connaît pas ce poste ou la boîte</translation>
        </message>
        <message>
            <source>it holds something else under the same number</source>
            <comment>why the hub takes nothing</comment>
            <translation>il a autre chose sous le même numéro</translation>
        </message>
        <message>
            <source>the mailbox is full</source>
            <comment>why the hub takes nothing</comment>
            <translation>la boîte est pleine</translation>
        </message>
        <message>
            <source>it is too large or unreadable for it</source>
            <comment>why the hub takes nothing</comment>
            <translation>il le trouve trop grand ou ne peut pas le lire</translation>
        </message>
        <message>
            <source>The hub does not take what this desk sends: %1. It stays here and is tried again. Tell whoever runs the hub.</source>
            <translation>Le hub n’accepte pas ce que ce poste envoie : %1. Cela reste ici et sera retenté. Prévenez la personne qui gère le hub.</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <comment>a name, and how many</comment>
            <translation>%1 (%2)</translation>
        </message>
        <message numerus="yes">
            <source>%Ln message(s) of the phone cannot be read here. Call and ask what was written. If it stays so, have the diary&apos;s data saved on the phone (Settings, My data). Only then delete the diary there and link the phone again.</source>
            <translation>
                <numerusform>%Ln message du téléphone ne peut pas être lu ici. Appelez et demandez ce qui a été écrit. Si cela dure, faites enregistrer sur le téléphone les données du journal (Réglages, Mes données). Ensuite seulement, supprimez-y le journal et associez de nouveau le téléphone.</numerusform>
                <numerusform>%Ln messages du téléphone ne peuvent pas être lus ici. Appelez et demandez ce qui a été écrit. Si cela dure, faites enregistrer sur le téléphone les données du journal (Réglages, Mes données). Ensuite seulement, supprimez-y le journal et associez de nouveau le téléphone.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln thing(s) in this course were written by a newer program and cannot be shown here. Update this desk, and call until then.</source>
            <translation>
                <numerusform>%Ln élément de ce suivi a été écrit par un programme plus récent et ne peut pas être affiché ici. Mettez ce poste à jour, et appelez d’ici là.</numerusform>
                <numerusform>%Ln éléments de ce suivi ont été écrits par un programme plus récent et ne peuvent pas être affichés ici. Mettez ce poste à jour, et appelez d’ici là.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::SettingsBoard</name>
        <message numerus="yes">
            <source>%Ln minute(s)</source>
            <translation>
                <numerusform>%Ln minute</numerusform>
                <numerusform>%Ln minutes</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>StepPanel</name>
        <message>
            <source>Leave it as it is</source>
            <translation>Laisser tel quel</translation>
        </message>
    </context>
    <context>
        <name>GraveStep</name>
        <message>
            <source>Choose who stands by: this is for two people.</source>
            <translation>Choisissez qui assiste : cela se fait à deux.</translation>
        </message>
        <message>
            <source>Type the passphrase of this desk.</source>
            <translation>Saisissez la phrase secrète de ce poste.</translation>
        </message>
    </context>
    <context>
        <name>StepFields</name>
        <message>
            <source>Passphrase of this desk, once more</source>
            <translation>Phrase secrète de ce poste, encore une fois</translation>
        </message>
        <message>
            <source>Who stands by: this is for two people</source>
            <translation>Qui assiste : cela se fait à deux</translation>
        </message>
    </context>
    <context>
        <name>TreatmentWhen</name>
        <message>
            <source>When the treatment was</source>
            <translation>Quand le traitement a eu lieu</translation>
        </message>
        <message>
            <source>Day, year-month-day</source>
            <translation>Jour, année-mois-jour</translation>
        </message>
        <message>
            <source>Time, hours:minutes</source>
            <translation>Heure, heures:minutes</translation>
        </message>
        <message>
            <source>It was just now</source>
            <translation>C’était à l’instant</translation>
        </message>
        <message>
            <source>It was then</source>
            <translation>C’était bien à ce moment</translation>
        </message>
        <message>
            <source>The days of the course count from here. Unless you change it, today&apos;s record takes the time at which you record it.</source>
            <translation>Les jours du suivi comptent à partir d’ici. Sans changement, un enregistrement d’aujourd’hui prend l’heure à laquelle vous l’enregistrez.</translation>
        </message>
    </context>
    <context>
        <name>TreatmentPanel</name>
        <message>
            <source>The treatment</source>
            <translation>Le traitement</translation>
        </message>
        <message>
            <source>Corrections of the record</source>
            <translation>Corrections de l’enregistrement</translation>
        </message>
        <message>
            <source>Go on with the correction</source>
            <translation>Poursuivre la correction</translation>
        </message>
        <message>
            <source>Correct the treatment</source>
            <translation>Corriger le traitement</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Ce qui était écrit avant reste consigné</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueAlarm</name>
        <message numerus="yes">
            <source>%Ln wait(s) too long</source>
            <translation>
                <numerusform>%Ln attend trop longtemps</numerusform>
                <numerusform>%Ln attendent trop longtemps</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln in the queue wait(s) too long.</source>
            <translation>
                <numerusform>%Ln dans la file attend trop longtemps.</numerusform>
                <numerusform>%Ln dans la file attendent trop longtemps.</numerusform>
            </translation>
        </message>
        <message>
            <source>Locked since %1. While it is locked, this desk asks the hub for nothing: what comes now shows when you unlock it.</source>
            <translation>Verrouillé depuis : %1. Tant qu’il est verrouillé, ce poste ne demande rien au hub : ce qui arrive maintenant se verra au déverrouillage.</translation>
        </message>
        <message>
            <source>Notices on the desktop are not possible here: this computer offers no service for them. Only the open desk tells.</source>
            <translation>Les avis sur le bureau ne sont pas possibles ici : cet ordinateur n’offre pas de service pour cela. Seul le poste ouvert prévient.</translation>
        </message>
        <message>
            <source>The computer did not take the last notice. Only the open desk tells for sure.</source>
            <translation>L’ordinateur n’a pas pris le dernier avis. Seul le poste ouvert prévient à coup sûr.</translation>
        </message>
        <message>
            <source>When somebody is to be called now, or waits too long, a notice without a name shows on the desktop. A locked desk hears nothing new.</source>
            <translation>Quand quelqu’un est à appeler maintenant, ou attend trop longtemps, un avis sans nom s’affiche sur le bureau. Un poste verrouillé n’apprend rien de nouveau.</translation>
        </message>
        <message>
            <source>Somebody is to be called now. Open the desk.</source>
            <translation>Quelqu’un est à appeler maintenant. Ouvrez le poste.</translation>
        </message>
        <message>
            <source>Clinic&apos;s desk</source>
            <translation>Poste du cabinet</translation>
        </message>
        <message>
            <source>Open the desk</source>
            <translation>Ouvrir le poste</translation>
        </message>
    </context>
    <context>
        <name>FollowUpAnswer</name>
        <message>
            <source>What became of it?</source>
            <translation>Qu’en est-il advenu ?</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::QueueFilter</name>
        <message>
            <source>Not written down</source>
            <translation>Non noté</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>name, count</comment>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>Anybody</source>
            <translation>N’importe qui</translation>
        </message>
        <message>
            <source>Anybody or nobody</source>
            <translation>Quelqu’un ou personne</translation>
        </message>
        <message>
            <source>Any day</source>
            <translation>N’importe quel jour</translation>
        </message>
        <message>
            <source>After day %1</source>
            <translation>Après le jour %1</translation>
        </message>
        <message>
            <source>Days %1 to %2</source>
            <translation>Jours %1 à %2</translation>
        </message>
        <message>
            <source>Threads by %1</source>
            <translation>Fils par %1</translation>
        </message>
        <message>
            <source>Taken by %1</source>
            <translation>Pris par %1</translation>
        </message>
    </context>
    <context>
        <name>FilterPanel</name>
        <message>
            <source>Filter the queue</source>
            <translation>Filtrer la file</translation>
        </message>
        <message>
            <source>Back to the queue</source>
            <translation>Retour à la file</translation>
        </message>
        <message>
            <source>Threads placed by</source>
            <translation>Fils posés par</translation>
        </message>
        <message>
            <source>Row taken by</source>
            <translation>Ligne prise par</translation>
        </message>
        <message>
            <source>Day of recovery</source>
            <translation>Jour de récupération</translation>
        </message>
        <message>
            <source>It holds until the desk is locked or somebody else is named.</source>
            <translation>Vaut jusqu’au verrouillage du poste ou jusqu’à ce qu’une autre personne soit nommée.</translation>
        </message>
    </context>
    <context>
        <name>FilterBar</name>
        <message>
            <source>Takes this filter off</source>
            <translation>Retire ce filtre</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Les montrer</translation>
        </message>
        <message>
            <source>Takes search and filters off</source>
            <translation>Retire la recherche et les filtres</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::UsualBoard</name>
        <message>
            <source>Dressings</source>
            <translation>Pansements</translation>
        </message>
        <message>
            <source>Please write an entry</source>
            <translation>Demander une note</translation>
        </message>
        <message>
            <source>Come earlier</source>
            <translation>Venir plus tôt</translation>
        </message>
        <message>
            <source>Please call us</source>
            <translation>Demander un appel</translation>
        </message>
        <message>
            <source>Thank you</source>
            <translation>Merci</translation>
        </message>
        <message>
            <source>It is not known which language the patient reads: choose it.</source>
            <translation>On ne sait pas quelle langue lit la patiente : choisissez-la.</translation>
        </message>
        <message>
            <source>The patient was registered with %1.</source>
            <comment>a language</comment>
            <translation>La patiente a été inscrite avec : %1.</translation>
        </message>
        <message>
            <source>The patient reads, in %1</source>
            <comment>a language</comment>
            <translation>La patiente lit, en %1</translation>
        </message>
        <message>
            <source>A call is due. A message may be read too late: call first.</source>
            <translation>Un appel est dû. Un message peut être lu trop tard : appelez d’abord.</translation>
        </message>
    </context>
    <context>
        <name>UsualPanel</name>
        <message>
            <source>Usual messages</source>
            <translation>Messages habituels</translation>
        </message>
        <message>
            <source>Language of the patient</source>
            <translation>Langue de la patiente</translation>
        </message>
        <message>
            <source>In your language</source>
            <translation>Dans votre langue</translation>
        </message>
        <message>
            <source>Put it into the message</source>
            <translation>Le mettre dans le message</translation>
        </message>
        <message>
            <source>It can be changed there before it is sent</source>
            <translation>Il peut y être modifié avant l’envoi</translation>
        </message>
    </context>
    <context>
        <name>EntryLink</name>
        <message>
            <source>Shows the entry behind it</source>
            <translation>Montre la note qui en est l’origine</translation>
        </message>
    </context>
    <context>
        <name>CallVisit</name>
        <message>
            <source>The visit</source>
            <translation>La visite</translation>
        </message>
        <message>
            <source>New day, year-month-day</source>
            <translation>Nouveau jour, année-mois-jour</translation>
        </message>
        <message>
            <source>Time, if one is agreed</source>
            <translation>Heure, si elle est convenue</translation>
        </message>
    </context>
    <context>
        <name>CurveBox</name>
        <message>
            <source>Score, points of 10</source>
            <translation>Score, points sur 10</translation>
        </message>
        <message>
            <source>Days since the treatment</source>
            <translation>Jours depuis le traitement</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PaperPrinter</name>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
        <message>
            <source>No printer is set up on this computer. Set one up, or save the pages as a file.</source>
            <translation>Aucune imprimante n’est installée sur cet ordinateur. Installez-en une, ou enregistrez les pages dans un fichier.</translation>
        </message>
        <message>
            <source>Sent to %1. Fetch it there; this desk wrote no file.</source>
            <translation>Envoyé à %1. Allez le chercher ; ce poste n’a écrit aucun fichier.</translation>
        </message>
        <message>
            <source>The printer did not take it. Look whether it is on and has paper, then print again.</source>
            <translation>L’imprimante ne l’a pas accepté. Vérifiez qu’elle est allumée et a du papier, puis imprimez à nouveau.</translation>
        </message>
    </context>
    <context>
        <name>Roles</name>
        <message>
            <source>Recording treatments and follow-ups</source>
            <translation>Enregistrer traitements et contrôles</translation>
        </message>
        <message>
            <source>Closing a finding</source>
            <translation>Clore un constat</translation>
        </message>
        <message>
            <source>Signing a protocol, a usual range or a limit</source>
            <translation>Signer un protocole, une plage habituelle ou une limite</translation>
        </message>
        <message>
            <source>Linking and ending patients&apos; phones</source>
            <translation>Relier et exclure des téléphones</translation>
        </message>
        <message>
            <source>Adding and shutting out desks, fresh keys and the hub</source>
            <translation>Ajouter et exclure des postes, nouvelles clés et hub</translation>
        </message>
        <message>
            <source>Changing the numbers that patients call</source>
            <translation>Modifier les numéros à appeler</translation>
        </message>
        <message>
            <source>Naming people and giving roles</source>
            <translation>Nommer des personnes et donner des rôles</translation>
        </message>
        <message>
            <source>Backups, passphrase and saving who did what</source>
            <translation>Sauvegardes, phrase secrète et liste de qui a fait quoi</translation>
        </message>
        <message>
            <source>The practice&apos;s figures</source>
            <translation>Les chiffres de la clinique</translation>
        </message>
        <message>
            <source>In charge</source>
            <translation>Responsable</translation>
        </message>
        <message>
            <source>Practitioner</source>
            <translation>Praticien ou praticienne</translation>
        </message>
        <message>
            <source>Colleague on call</source>
            <translation>D’astreinte</translation>
        </message>
        <message>
            <source>Assistant</source>
            <translation>Assistance</translation>
        </message>
        <message>
            <source>Keeper of the computers</source>
            <translation>Entretien des ordinateurs</translation>
        </message>
        <message>
            <source>No role yet: may do everything.</source>
            <translation>Pas encore de rôle : peut tout faire.</translation>
        </message>
        <message>
            <source>May do everything.</source>
            <translation>Peut tout faire.</translation>
        </message>
        <message>
            <source>Treatments, follow-ups and closing findings; patients&apos; phones; the numbers that patients call; the practice&apos;s figures.</source>
            <translation>Traitements, contrôles et clôture des constats ; téléphones ; numéros à appeler ; chiffres de la clinique.</translation>
        </message>
        <message>
            <source>Closing findings; patients&apos; phones.</source>
            <translation>Clore les constats ; téléphones.</translation>
        </message>
        <message>
            <source>Patients&apos; phones.</source>
            <translation>Téléphones.</translation>
        </message>
        <message>
            <source>Desks, keys and the hub; backups and passphrase; saving who did what.</source>
            <translation>Postes, clés et hub ; sauvegardes et phrase secrète ; liste de qui a fait quoi.</translation>
        </message>
        <message>
            <source>Say first who is at the desk.</source>
            <translation>Indiquez d’abord qui est au poste.</translation>
        </message>
        <message>
            <source>%1: nobody here has a role for that. Whoever is in charge can give one.</source>
            <translation>%1 : personne ici n’a de rôle pour cela. La personne responsable peut en donner un.</translation>
        </message>
        <message>
            <source>%1: for %2. Your role here: %3.</source>
            <comment>task, people, role</comment>
            <translation>%1 : réservé à %2. Votre rôle ici : %3.</translation>
        </message>
        <message>
            <source>not allowed by the role at that time</source>
            <translation>non permis par le rôle d’alors</translation>
        </message>
        <message>
            <source>Somebody has to remain who may name people and give roles. Give another person the role “In charge” first.</source>
            <translation>Il doit rester quelqu’un qui puisse nommer des personnes et donner des rôles. Donnez d’abord à une autre personne le rôle « Responsable ».</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::RoleBoard</name>
        <message>
            <source>%1: %2 from now on.</source>
            <comment>person, role</comment>
            <translation>%1 : désormais %2.</translation>
        </message>
        <message>
            <source>%1, “%2” takes the right to give roles from you. Only somebody else who has it can give it back.</source>
            <comment>person, role</comment>
            <translation>%1, « %2 » vous retire le droit de donner des rôles. Seule une autre personne qui l&apos;a peut vous le rendre.</translation>
        </message>
    </context>
    <context>
        <name>RoleFields</name>
        <message>
            <source>People and roles</source>
            <translation>Personnes et rôles</translation>
        </message>
        <message>
            <source>A role is a rule of the house and no lock: people are names here, behind one passphrase. Whoever may not do something is told who may. Taking and calling a patient, noting it and reopening a finding are open to everyone.</source>
            <translation>Un rôle est une règle de la maison et non un verrou : ici, les personnes sont des noms derrière une même phrase secrète. Qui ne peut pas faire quelque chose apprend qui le peut. Prendre en charge et appeler une patiente, le noter et rouvrir un constat est ouvert à tout le monde.</translation>
        </message>
        <message>
            <source>Give that role</source>
            <translation>Donner ce rôle</translation>
        </message>
        <message>
            <source>Keep my role</source>
            <translation>Garder mon rôle</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ClinicPhotos</name>
        <message>
            <source>This picture does not open. Choose another.</source>
            <translation>Cette image ne s’ouvre pas. Choisissez-en une autre.</translation>
        </message>
        <message>
            <source>This picture is too large. Choose a smaller one.</source>
            <translation>Cette image est trop grande. Choisissez-en une plus petite.</translation>
        </message>
        <message>
            <source>The desk reads JPEG and PNG pictures. Choose one of these.</source>
            <translation>Ce programme lit les images JPEG et PNG. Choisissez-en une de ce type.</translation>
        </message>
        <message>
            <source>This picture is too small. Choose a larger one.</source>
            <translation>Cette image est trop petite. Choisissez-en une plus grande.</translation>
        </message>
        <message>
            <source>This picture is damaged. Choose another.</source>
            <translation>Cette image est abîmée. Choisissez-en une autre.</translation>
        </message>
        <message>
            <source>There are %1 from right after the treatment. That is the most. Take one back to add another.</source>
            <translation>Il y a %1 photos prises juste après le traitement. C’est le maximum. Retirez-en une pour en ajouter une autre.</translation>
        </message>
        <message>
            <source>A photograph from right after the treatment</source>
            <translation>Une photo prise juste après le traitement</translation>
        </message>
        <message>
            <source>Pictures (*.png *.jpg *.jpeg)</source>
            <translation>Images (*.png *.jpg *.jpeg)</translation>
        </message>
        <message>
            <source>Kept: %1, right after the treatment.</source>
            <comment>view</comment>
            <translation>Gardée : %1, juste après le traitement.</translation>
        </message>
    </context>
    <context>
        <name>TakeBackPhoto</name>
        <message>
            <source>Take it back</source>
            <translation>La retirer</translation>
        </message>
        <message>
            <source>Keep the photograph</source>
            <translation>Garder la photo</translation>
        </message>
    </context>
    <context>
        <name>ClinicPhotoForm</name>
        <message>
            <source>Right after the treatment: %1</source>
            <translation>Juste après le traitement : %1</translation>
        </message>
        <message>
            <source>Pictures that you took with the clinic's own camera. They stay with the clinic's desks and never go to a phone. Place and time of the file are not kept.</source>
            <translation>Images que vous avez prises avec l’appareil du cabinet. Elles restent sur les postes du cabinet et ne vont jamais sur un téléphone. Le lieu et l’heure du fichier ne sont pas gardés.</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Vue</translation>
        </message>
        <message>
            <source>Getting the picture ready …</source>
            <translation>L’image se prépare …</translation>
        </message>
        <message>
            <source>The photograph: %1</source>
            <translation>La photo : %1</translation>
        </message>
        <message>
            <source>Is it this patient? Is it the right side? Is it sharp?</source>
            <translation>Est-ce bien ce patient ? Est-ce le bon côté ? Est-elle nette ?</translation>
        </message>
        <message>
            <source>Keep it</source>
            <translation>La garder</translation>
        </message>
        <message>
            <source>Not this one</source>
            <translation>Pas celle-ci</translation>
        </message>
        <message>
            <source>It is not kept</source>
            <translation>Elle n’est pas gardée</translation>
        </message>
        <message>
            <source>Choose a picture</source>
            <translation>Choisir une image</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Terminé</translation>
        </message>
        <message>
            <source>Closes this form</source>
            <translation>Ferme ce formulaire</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::ProtocolTaking</name>
        <message>
            <source>This file is larger than a protocol can be. Nothing was changed. Choose the file that a desk saved, or that calibrate wrote.</source>
            <translation>Ce fichier est plus grand qu’un protocole ne peut l’être. Rien n’a été changé. Choisissez le fichier qu’un poste a enregistré ou que calibrate a écrit.</translation>
        </message>
        <message>
            <source>This file is written in a form that this program does not know. Nothing was changed. Update the program, or ask for the file from one of the same version.</source>
            <translation>Ce fichier a une forme que ce programme ne connaît pas. Rien n’a été changé. Mettez le programme à jour, ou demandez le fichier fait avec la même version.</translation>
        </message>
        <message>
            <source>This is not a sound protocol file (%1). Nothing was changed. Choose another file, or have this one written anew; do not mend it by hand.</source>
            <translation>Ce n’est pas un fichier de protocole en ordre (%1). Rien n’a été changé. Choisissez un autre fichier, ou faites réécrire celui-ci ; ne le corrigez pas à la main.</translation>
        </message>
        <message>
            <source>Take a protocol from a file</source>
            <translation>Reprendre un protocole d’un fichier</translation>
        </message>
        <message>
            <source>The file cannot be read. Nothing was changed. Copy it to this computer, then choose it again.</source>
            <translation>Le fichier ne peut pas être lu. Rien n’a été changé. Copiez-le sur cet ordinateur, puis choisissez-le de nouveau.</translation>
        </message>
        <message>
            <source>%1, version %2</source>
            <comment>protocol in a file, number</comment>
            <translation>%1, version %2</translation>
        </message>
        <message>
            <source>Written %1 by %2.</source>
            <comment>when, program</comment>
            <translation>Écrit %1 par %2.</translation>
        </message>
        <message>
            <source>It does not say when it was written, nor by which program.</source>
            <translation>Il ne dit pas quand il a été écrit, ni par quel programme.</translation>
        </message>
        <message>
            <source>Its thresholds were calibrated on %1, to a budget of %2 false alerts in 100 uncomplicated courses. So the file says; it is not shown that they hold it at this clinic.</source>
            <translation>Ses seuils ont été calibrés sur %1, pour un budget de %2 fausses alertes sur 100 suivis sans complication. C’est ce que dit le fichier ; il n’est pas montré qu’ils le tiennent dans cette clinique.</translation>
        </message>
        <message>
            <source>The hash of what is behind that range begins with %1.</source>
            <translation>L’empreinte de ce qui est derrière cette plage commence par %1.</translation>
        </message>
        <message>
            <source>The file is not signed: nothing in it proves who wrote it. Take it only from somebody whom you can ask.</source>
            <translation>Le fichier n’est pas signé : rien n’y prouve qui l’a écrit. Ne l’acceptez que de quelqu’un que vous pouvez interroger.</translation>
        </message>
        <message>
            <source>Rule</source>
            <translation>Règle</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>En vigueur</translation>
        </message>
        <message>
            <source>In the file</source>
            <translation>Dans le fichier</translation>
        </message>
        <message>
            <source>No rule differs.</source>
            <translation>Aucune règle ne diffère.</translation>
        </message>
        <message>
            <source>All other rules are the same.</source>
            <translation>Toutes les autres règles sont les mêmes.</translation>
        </message>
        <message>
            <source>It is the one in use.</source>
            <translation>C’est celle en vigueur.</translation>
        </message>
        <message>
            <source>It is known here as %1, and may be used. It comes into use when the draft is signed.</source>
            <translation>Elle est connue ici sous %1 et peut être utilisée. Elle entre en vigueur quand le projet est signé.</translation>
        </message>
        <message>
            <source>It cannot be taken: it does not say soundly what is behind it. The draft keeps the usual range in use, and the thresholds that belong to it.</source>
            <translation>Elle ne peut pas être reprise : elle ne dit pas en ordre ce qui est derrière elle. Le projet garde la plage habituelle en vigueur et les seuils qui vont avec.</translation>
        </message>
        <message>
            <source>A draft can be rehearsed with it, and not signed.</source>
            <translation>Un projet peut être essayé avec elle, mais pas signé.</translation>
        </message>
        <message>
            <source>It is kept as a version, and comes into use when the draft is signed.</source>
            <translation>Elle est gardée comme version et entre en vigueur quand le projet est signé.</translation>
        </message>
        <message>
            <source>A draft is there already. This one takes its place; &quot;Undo&quot; on the next page brings it back.</source>
            <translation>Un projet existe déjà. Celui-ci prend sa place ; « Annuler » à la page suivante le ramène.</translation>
        </message>
        <message>
            <source>Say first who is at the desk: what is taken carries a name.</source>
            <translation>Indiquez d’abord qui est au poste : ce qui est repris porte un nom.</translation>
        </message>
        <message>
            <source>The file cannot be written there. Choose another folder.</source>
            <translation>Impossible d’écrire le fichier à cet endroit. Choisissez un autre dossier.</translation>
        </message>
        <message>
            <source>Saved as %1. It holds the care plan in the clinic&apos;s own words, the rules and the usual range; no patient stands in it.</source>
            <translation>Enregistré sous %1. Il contient le plan de soins avec le texte propre à la clinique, les règles et la plage habituelle ; aucun patient n’y figure.</translation>
        </message>
        <message>
            <source>Save the protocol in use</source>
            <translation>Enregistrer le protocole en vigueur</translation>
        </message>
        <message>
            <source>A draft is there already, and cannot be read. It stays as it is: this one is not kept.</source>
            <translation>Un brouillon existe déjà et ne peut pas être lu. Il reste tel quel : celui-ci n’est pas gardé.</translation>
        </message>
    </context>
    <context>
        <name>ProtocolFilePage</name>
        <message>
            <source>A protocol from a file</source>
            <translation>Un protocole venu d’un fichier</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>L’abandonner</translation>
        </message>
        <message>
            <source>Nothing of the file is kept.</source>
            <translation>Rien du fichier n’est gardé.</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Ce que c’est</translation>
        </message>
        <message>
            <source>What raises a finding</source>
            <translation>Ce qui déclenche un constat</translation>
        </message>
        <message>
            <source>What the patient is asked to do</source>
            <translation>Ce qui est demandé au patient</translation>
        </message>
        <message>
            <source>The care plan is the same.</source>
            <translation>Le plan de soins est le même.</translation>
        </message>
        <message>
            <source>Take its care plan as well</source>
            <translation>Reprendre aussi son plan de soins</translation>
        </message>
        <message>
            <source>What counts as usual</source>
            <translation>Ce qui compte comme habituel</translation>
        </message>
        <message>
            <source>No course of this clinic is behind it: check it on all of ours</source>
            <translation>Aucun suivi de cette clinique n’y figure : la vérifier sur tous les nôtres</translation>
        </message>
        <message>
            <source>Otherwise only courses that were treated after it was learned count as not seen. A range from your own courses is learned under Practice, Usual range.</source>
            <translation>Sinon, seuls les suivis traités après qu’elle a été établie comptent comme non vus. Une plage tirée de vos propres suivis s’établit sous Bilan d’activité, Plage habituelle.</translation>
        </message>
        <message>
            <source>Make a draft of it</source>
            <translation>En faire un projet</translation>
        </message>
        <message>
            <source>It is rehearsed and signed like every other draft; nothing goes live before.</source>
            <translation>Il est essayé et signé comme tout autre projet ; rien n’entre en vigueur avant.</translation>
        </message>
    </context>
    <context>
        <name>PastVisits</name>
        <message>
            <source>Fold them away</source>
            <translation>Les replier</translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Les afficher</translation>
        </message>
    </context>
    <context>
        <name>PatientPanel</name>
        <message>
            <source>Record the correction</source>
            <translation>Enregistrer la correction</translation>
        </message>
        <message>
            <source>Leave it as it is</source>
            <translation>Laisser tel quel</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nom</translation>
        </message>
        <message>
            <source>Phone number, to call the patient</source>
            <translation>Numéro pour appeler le patient</translation>
        </message>
        <message>
            <source>Language of the diary</source>
            <translation>Langue du journal</translation>
        </message>
        <message>
            <source>Every desk of the clinic shows it from then on. The patient&apos;s phone is told nothing of it: she chooses the language there herself.</source>
            <translation>Dès lors, tous les postes du cabinet l&apos;affichent. Le téléphone de la patiente n&apos;en apprend rien : elle y choisit la langue elle-même.</translation>
        </message>
    </context>
    <context>
        <name>PatientRecord</name>
        <message>
            <source>Correct name, number, language</source>
            <translation>Corriger nom, numéro, langue</translation>
        </message>
        <message>
            <source>What was written before stays on record</source>
            <translation>Ce qui était écrit avant reste consigné</translation>
        </message>
    </context>
    <context>
        <name>ebbline::deskapp::PatientEditor</name>
        <message>
            <source>name until then: %1</source>
            <translation>nom jusque-là : %1</translation>
        </message>
        <message>
            <source>no number until then</source>
            <translation>pas de numéro jusque-là</translation>
        </message>
        <message>
            <source>number until then: %1</source>
            <translation>numéro jusque-là : %1</translation>
        </message>
        <message>
            <source>language until then: %1</source>
            <translation>langue jusque-là : %1</translation>
        </message>
        <message>
            <source>as it was already</source>
            <translation>comme c&apos;était déjà</translation>
        </message>
        <message>
            <source>somebody at another desk</source>
            <translation>quelqu&apos;un à un autre poste</translation>
        </message>
        <message>
            <source>Corrected %1 by %2: %3</source>
            <comment>when, who, what held until then</comment>
            <translation>Corrigé %1 par %2 : %3</translation>
        </message>
        <message>
            <source>Two desks corrected this without knowing of each other. Where both changed the same, the later one holds. Ask the patient what is right.</source>
            <translation>Deux postes ont corrigé ceci sans savoir l&apos;un de l&apos;autre. Là où les deux ont changé la même chose, la plus récente vaut. Demandez à la patiente ce qui est juste.</translation>
        </message>
        <message>
            <source>Correct what is on record of %1</source>
            <translation>Corriger ce qui est consigné sur %1</translation>
        </message>
        <message>
            <source>%1 corrected this meanwhile: %2. Only what you change here is changed.</source>
            <comment>who, what held until then</comment>
            <translation>%1 a corrigé ceci entre-temps : %2. Seul change ce que vous changez ici.</translation>
        </message>
        <message>
            <source>Corrected: %1</source>
            <comment>name</comment>
            <translation>Corrigé : %1</translation>
        </message>
        <message>
            <source>It was corrected again meanwhile: nothing was taken back.</source>
            <translation>Cela a été corrigé à nouveau entre-temps : rien n&apos;a été retiré.</translation>
        </message>
    </context>
    <context>
        <name>LastAct</name>
        <message>
            <source>%1 brought the visit forward, %2</source>
            <comment>person, when</comment>
            <translation>%1 a avancé la visite, %2</translation>
        </message>
        <message>
            <source>%1 spoke with her, %2</source>
            <comment>person, when</comment>
            <translation>%1 lui a parlé, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2</source>
            <comment>person, when</comment>
            <translation>%1 a appelé sans la joindre, %2</translation>
        </message>
        <message>
            <source>Taken by %1, %2</source>
            <comment>person, when</comment>
            <translation>Pris en charge par %1, %2</translation>
        </message>
        <message>
            <source>%1 called and did not reach her, %2, nothing noted since</source>
            <comment>person, when</comment>
            <translation>%1 a appelé sans la joindre, %2, rien de noté depuis</translation>
        </message>
        <message>
            <source>%1 brought the visit forward %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 a avancé la visite il y a %2, rien de noté depuis</translation>
        </message>
        <message>
            <source>%1 spoke with her %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>%1 lui a parlé il y a %2, rien de noté depuis</translation>
        </message>
        <message>
            <source>Taken by %1 %2 ago, nothing noted since</source>
            <comment>person, how long</comment>
            <translation>Pris en charge par %1 il y a %2, rien de noté depuis</translation>
        </message>
        <message>
            <source>She rang, and %1 answered, %2</source>
            <comment>person, when</comment>
            <translation>Elle a appelé, %1 a répondu, %2</translation>
        </message>
        <message>
            <source>Taken back by %1</source>
            <translation>Retiré par %1</translation>
        </message>
    </context>
    <context>
        <name>TreatmentCorrection</name>
        <message>
            <source>I have seen it</source>
            <translation>Je l’ai vu</translation>
        </message>
        <message>
            <source>Your draft stays as it is</source>
            <translation>Votre brouillon reste tel quel</translation>
        </message>
        <message>
            <source>Why the record is corrected</source>
            <translation>Pourquoi l’enregistrement est corrigé</translation>
        </message>
        <message>
            <source>What this changes</source>
            <translation>Ce que cela change</translation>
        </message>
        <message>
            <source>Nothing yet. Go through the steps and set right what is wrong.</source>
            <translation>Rien encore. Parcourez les étapes et rectifiez ce qui est faux.</translation>
        </message>
        <message>
            <source>The former record stays with the course. Whose treatment it is cannot be corrected here.</source>
            <translation>L’ancien enregistrement reste avec le suivi. À qui appartient le traitement ne peut pas être corrigé ici.</translation>
        </message>
    </context>
</TS>
