<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>plan</name>
        <message>
            <source>'corner_and_chair'</source>
            <comment>'corner_and_chair'</comment>
            <translation>„Ecke und fester Stuhl“</translation>
        </message>
        <message>
            <source>'helper'</source>
            <comment>'helper'</comment>
            <translation>„Hilfsperson in Reichweite“</translation>
        </message>
        <message>
            <source>'none'</source>
            <comment>'none'</comment>
            <translation>„keiner“</translation>
        </message>
        <message>
            <source>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</source>
            <comment>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</comment>
            <translation>Bohannon RW 2006, Percept Mot Skills 103:215: die Zeit für fünfmal Aufstehen</translation>
        </message>
        <message>
            <source>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</source>
            <comment>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</comment>
            <translation>Cawthorne-Cooksey-Übungen: ein Finger zwischen 91 und 30 cm; die Menge ist gängige Praxis</translation>
        </message>
        <message>
            <source>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</source>
            <comment>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</comment>
            <translation>Gruppe um Cohen HS, JoVE 2023, doi:10.3791/65663: Kopfbewegungen im Takt von 0,3 Hz</translation>
        </message>
        <message>
            <source>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</source>
            <comment>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</comment>
            <translation>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, wie zitiert</translation>
        </message>
        <message>
            <source>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</source>
            <comment>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</comment>
            <translation>Merkblatt des Mersey Care NHS „Dizziness, vertigo, imbalance“</translation>
        </message>
        <message>
            <source>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</source>
            <comment>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</comment>
            <translation>Schubert MC et al. 2008, J Vestib Res 18:147-157, für die Übung; die Menge ist gängige Praxis</translation>
        </message>
        <message>
            <source>US CDC STEADI 2017, four-stage balance test: 10 s a stance</source>
            <comment>US CDC STEADI 2017, four-stage balance test: 10 s a stance</comment>
            <translation>US CDC STEADI 2017, Gleichgewichtstest in vier Stufen: 10 s je Stellung</translation>
        </message>
        <message>
            <source>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</source>
            <comment>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</comment>
            <translation>US CDC STEADI, Aufstehen in 30 Sekunden: Stuhl von 43 cm (17 Zoll), Arme gekreuzt</translation>
        </message>
        <message>
            <source>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</source>
            <comment>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</comment>
            <translation>WCAG 2.3.1: höchstens drei Blitze in jeder Sekunde; die Menge ist gängige Praxis</translation>
        </message>
        <message>
            <source>a bilateral loss</source>
            <comment>a bilateral loss</comment>
            <translation>einen beidseitigen Ausfall</translation>
        </message>
        <message>
            <source>a chronic loss</source>
            <comment>a chronic loss</comment>
            <translation>einen chronischen Ausfall</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</comment>
            <translation>Fassung der Cawthorne-Cooksey-Übungen in einem Lehrtext der Geriatrie, je 20-mal</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</comment>
            <translation>Fassung der Cawthorne-Cooksey-Übungen in einem Lehrtext der Geriatrie, je 20-mal; zehnmal mit jedem Arm ist gängige Praxis</translation>
        </message>
        <message>
            <source>a head shake is no part of it</source>
            <comment>a head shake is no part of it</comment>
            <translation>Kopfschütteln gehört nicht dazu</translation>
        </message>
        <message>
            <source>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</source>
            <comment>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</comment>
            <translation>ein bewegter Hintergrund kann starke Beschwerden auslösen und ist aus, wenn Sie ihn nicht wollen; schreiben Sie, wofür er ist</translation>
        </message>
        <message>
            <source>an acute loss</source>
            <comment>an acute loss</comment>
            <translation>einen akuten Ausfall</translation>
        </message>
        <message>
            <source>common practice</source>
            <comment>common practice</comment>
            <translation>gängige Praxis</translation>
        </message>
        <message>
            <source>common practice, for room above and below; throws in rendered films were counted from there</source>
            <comment>common practice, for room above and below; throws in rendered films were counted from there</comment>
            <translation>gängige Praxis, für Platz nach oben und unten; Würfe in gerenderten Filmen wurden von dort gezählt</translation>
        </message>
        <message>
            <source>common practice: an arm held out doesn't reach the screen</source>
            <comment>common practice: an arm held out doesn't reach the screen</comment>
            <translation>gängige Praxis: ein ausgestreckter Arm reicht nicht bis zum Bildschirm</translation>
        </message>
        <message>
            <source>common practice; also the length of a trial in the sensory-interaction balance test</source>
            <comment>common practice; also the length of a trial in the sensory-interaction balance test</comment>
            <translation>gängige Praxis; auch die Dauer eines Durchgangs im Gleichgewichtstest zum Zusammenspiel der Sinne</translation>
        </message>
        <message>
            <source>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</source>
            <comment>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</comment>
            <translation>gängige Praxis; höchstens 20 Grad pro Sekunde, unter den 30, ab denen die Augen nur mit Sprüngen mitkommen (Text eines Nachschlagewerks)</translation>
        </message>
        <message>
            <source>common practice; published handouts name 20 to 45 degrees to each side</source>
            <comment>common practice; published handouts name 20 to 45 degrees to each side</comment>
            <translation>gängige Praxis; veröffentlichte Merkblätter nennen 20 bis 45 Grad zu jeder Seite</translation>
        </message>
        <message>
            <source>counted: gaze</source>
            <comment>counted: gaze</comment>
            <translation>gezählt am Blick</translation>
        </message>
        <message>
            <source>counted: hand, else vergence</source>
            <comment>counted: hand, else vergence</comment>
            <translation>gezählt an der Hand, sonst an der Vergenz</translation>
        </message>
        <message>
            <source>counted: hands</source>
            <comment>counted: hands</comment>
            <translation>gezählt an den Händen</translation>
        </message>
        <message>
            <source>counted: head in bends</source>
            <comment>counted: head in bends</comment>
            <translation>gezählt am Kopf beim Bücken</translation>
        </message>
        <message>
            <source>counted: head in rises</source>
            <comment>counted: head in rises</comment>
            <translation>gezählt am Kopf beim Aufstehen</translation>
        </message>
        <message>
            <source>counted: head pitch</source>
            <comment>counted: head pitch</comment>
            <translation>gezählt am Nicken des Kopfes</translation>
        </message>
        <message>
            <source>counted: head tilt</source>
            <comment>counted: head tilt</comment>
            <translation>gezählt am Neigen des Kopfes</translation>
        </message>
        <message>
            <source>counted: head yaw</source>
            <comment>counted: head yaw</comment>
            <translation>gezählt am Drehen des Kopfes</translation>
        </message>
        <message>
            <source>counted: neck point fore and aft</source>
            <comment>counted: neck point fore and aft</comment>
            <translation>gezählt am Halspunkt, vor und zurück</translation>
        </message>
        <message>
            <source>counted: neck point sideways</source>
            <comment>counted: neck point sideways</comment>
            <translation>gezählt am Halspunkt, zur Seite</translation>
        </message>
        <message>
            <source>counted: shoulders</source>
            <comment>counted: shoulders</comment>
            <translation>gezählt an den Schultern</translation>
        </message>
        <message>
            <source>the baseline rule needs the most rise that is allowed (baseline_rise_most)</source>
            <comment>finding.baseline_rise</comment>
            <translation>die Regel vom Ausgangswert braucht auch den erlaubten Anstieg</translation>
        </message>
        <message>
            <source>a bilateral loss has both sides affected</source>
            <comment>finding.bilateral_side</comment>
            <translation>bei einem beidseitigen Ausfall sind beide Seiten betroffen</translation>
        </message>
        <message>
            <source>must be true or false</source>
            <comment>finding.bool_type</comment>
            <translation>muss Ja oder Nein sein</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_from_datetime_parsing</comment>
            <translation>muss ein Tag wie 2026-01-31 sein</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_parsing</comment>
            <translation>muss ein Tag wie 2026-01-31 sein</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_type</comment>
            <translation>muss ein Tag wie 2026-01-31 sein</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees: the range is passed over</source>
            <comment>finding.degrees_passed_over</comment>
            <translation>{exercise} wird nicht in Grad gemessen: der Ausschlag wird übergangen</translation>
        </message>
        <message>
            <source>no entry is in stage {name}</source>
            <comment>finding.empty_stage</comment>
            <translation>in der Stufe {name} ist kein Eintrag</translation>
        </message>
        <message>
            <source>is not a field of a plan; see 'turnpost schema plan'</source>
            <comment>finding.extra_forbidden</comment>
            <translation>ist kein Feld eines Plans; siehe „turnpost schema plan“</translation>
        </message>
        <message>
            <source>{exercise} is done with the eyes closed</source>
            <comment>finding.eyes_closed</comment>
            <translation>{exercise} wird mit geschlossenen Augen gemacht</translation>
        </message>
        <message>
            <source>{exercise} at {most} beats a minute is fast: its usual pace is about {own}</source>
            <comment>finding.fast</comment>
            <translation>{exercise} mit {most} Taktschlägen pro Minute ist schnell: üblich sind etwa {own}</translation>
        </message>
        <message>
            <source>figures need the entry or stage they are taken from (after)</source>
            <comment>finding.figures_of_what</comment>
            <translation>Werte brauchen den Eintrag oder die Stufe, von denen sie kommen</translation>
        </message>
        <message>
            <source>must be a finite number</source>
            <comment>finding.finite_number</comment>
            <translation>muss eine endliche Zahl sein</translation>
        </message>
        <message>
            <source>must be a number</source>
            <comment>finding.float_type</comment>
            <translation>muss eine Zahl sein</translation>
        </message>
        <message>
            <source>must be more than {gt}</source>
            <comment>finding.greater_than</comment>
            <translation>muss mehr als {gt} sein</translation>
        </message>
        <message>
            <source>must be {ge} or more</source>
            <comment>finding.greater_than_equal</comment>
            <translation>muss {ge} oder mehr sein</translation>
        </message>
        <message>
            <source>at least {least} for {loss} ({source})</source>
            <comment>finding.guideline_least</comment>
            <translation>mindestens {least} für {loss} ({source})</translation>
        </message>
        <message>
            <source>the guideline names no figure for this kind of loss</source>
            <comment>finding.guideline_none</comment>
            <translation>die Leitlinie nennt keine Zahl für diese Art von Ausfall</translation>
        </message>
        <message>
            <source>{least} to {most} for {loss} ({source})</source>
            <comment>finding.guideline_range</comment>
            <translation>{least} bis {most} für {loss} ({source})</translation>
        </message>
        <message>
            <source>{exercise} is done with a head shake</source>
            <comment>finding.head_shake</comment>
            <translation>zu {exercise} gehört das Kopfschütteln</translation>
        </message>
        <message>
            <source>{exercise} is held: give seconds</source>
            <comment>finding.held_seconds</comment>
            <translation>{exercise} wird gehalten: Sekunden angeben</translation>
        </message>
        <message>
            <source>{exercise} is held: it has no tempo</source>
            <comment>finding.held_tempo</comment>
            <translation>{exercise} wird gehalten: es gibt kein Tempo</translation>
        </message>
        <message>
            <source>changes nothing: give a tempo (tempo_bpm) or a range (amplitude_deg)</source>
            <comment>finding.idle_rung</comment>
            <translation>ändert nichts: Tempo oder Ausschlag angeben</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_from_float</comment>
            <translation>muss eine ganze Zahl sein</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_type</comment>
            <translation>muss eine ganze Zahl sein</translation>
        </message>
        <message>
            <source>there are keys, so nothing is handed over plain</source>
            <comment>finding.keys_and_plain</comment>
            <translation>es gibt Schlüssel, also wird nichts offen übergeben</translation>
        </message>
        <message>
            <source>must be later than the rung before</source>
            <comment>finding.later_rung</comment>
            <translation>muss später als der Schritt davor sein</translation>
        </message>
        <message>
            <source>the least comes first, then the most</source>
            <comment>finding.least_first</comment>
            <translation>erst der kleinste, dann der größte Wert</translation>
        </message>
        <message>
            <source>must be {le} or less</source>
            <comment>finding.less_than_equal</comment>
            <translation>muss {le} oder weniger sein</translation>
        </message>
        <message>
            <source>must be a list in [ ]</source>
            <comment>finding.list_type</comment>
            <translation>muss eine Liste sein</translation>
        </message>
        <message>
            <source>must be {expected}</source>
            <comment>finding.literal_error</comment>
            <translation>muss eines davon sein: {expected}</translation>
        </message>
        <message>
            <source>takes about {minutes} minutes, more than {most}</source>
            <comment>finding.long_stage</comment>
            <translation>dauert etwa {minutes} Minuten, mehr als {most}</translation>
        </message>
        <message>
            <source>is missing</source>
            <comment>finding.missing</comment>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>is misspelt: its check letters don't fit</source>
            <comment>finding.misspelt_key</comment>
            <translation>ist falsch geschrieben: die Prüfzeichen passen nicht</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_attributes_type</comment>
            <translation>muss aus Feldern bestehen</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_type</comment>
            <translation>muss aus Feldern bestehen</translation>
        </message>
        <message>
            <source>{given} can't be used here (letters, digits, . _ - only)</source>
            <comment>finding.name</comment>
            <translation>{given} geht hier nicht (nur Buchstaben, Ziffern, . _ -)</translation>
        </message>
        <message>
            <source>{name} is the name of a stage already</source>
            <comment>finding.name_of_stage</comment>
            <translation>{name} heißt schon eine Stufe</translation>
        </message>
        <message>
            <source>nearer than the usual {usual} mm</source>
            <comment>finding.near_seat</comment>
            <translation>näher als die üblichen {usual} mm</translation>
        </message>
        <message>
            <source>asks for up to {most} degrees, beyond the neck limit of {limit}</source>
            <comment>finding.neck</comment>
            <translation>verlangt bis {most} Grad, mehr als die Grenze für den Nacken von {limit}</translation>
        </message>
        <message>
            <source>{exercise} {how} is not given: {why}</source>
            <comment>finding.never</comment>
            <translation>{exercise} {how} ist nicht möglich: {why}</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees</source>
            <comment>finding.no_degrees</comment>
            <translation>{exercise} wird nicht in Grad gemessen</translation>
        </message>
        <message>
            <source>none is set: the program can only say 'call for help'</source>
            <comment>finding.no_emergency_number</comment>
            <translation>keine angegeben: Das Programm kann nur sagen, dass man Hilfe rufen soll</translation>
        </message>
        <message>
            <source>needs keys, or plain set to true knowingly</source>
            <comment>finding.no_keys</comment>
            <translation>braucht Schlüssel, oder die bewusste Wahl, offen zu übergeben</translation>
        </message>
        <message>
            <source>no pseudonym is set: nobody can tell whose sessions are handed over</source>
            <comment>finding.no_person</comment>
            <translation>kein Pseudonym: Niemand kann sagen, wessen Sitzungen übergeben werden</translation>
        </message>
        <message>
            <source>{exercise} asks for no range, so that nothing is held to the neck limit of {limit} degrees: give one</source>
            <comment>finding.no_range</comment>
            <translation>{exercise} verlangt keinen Ausschlag, also wird dabei nichts an der Grenze für den Nacken von {limit} Grad gemessen: einen angeben</translation>
        </message>
        <message>
            <source>how far the head is shaken while {exercise} is held is not watched, whatever the neck limit of {limit} degrees</source>
            <comment>finding.no_range_held</comment>
            <translation>wie weit der Kopf bei {exercise} geschüttelt wird, wird nicht beobachtet, auch bei einer Grenze für den Nacken von {limit} Grad</translation>
        </message>
        <message>
            <source>there is no stage {name} in this plan</source>
            <comment>finding.no_stage</comment>
            <translation>in diesem Plan gibt es keine Stufe {name}</translation>
        </message>
        <message>
            <source>{exercise} can't be done with marks on the wall</source>
            <comment>finding.no_wall</comment>
            <translation>{exercise} geht nicht mit Marken an der Wand</translation>
        </message>
        <message>
            <source>none is set</source>
            <comment>finding.none_set</comment>
            <translation>nichts angegeben</translation>
        </message>
        <message>
            <source>{name} is no entry or stage further up in this plan</source>
            <comment>finding.not_before</comment>
            <translation>{name} ist kein Eintrag und keine Stufe weiter oben in diesem Plan</translation>
        </message>
        <message>
            <source>not everything is ticked: only what the seated starter has will be offered</source>
            <comment>finding.not_cleared</comment>
            <translation>nicht alles ist abgehakt: Angeboten wird nur, was der Einstieg im Sitzen hat</translation>
        </message>
        <message>
            <source>{exercise} needs a note: {why}</source>
            <comment>finding.note_needed</comment>
            <translation>{exercise} braucht eine Notiz: {why}</translation>
        </message>
        <message>
            <source>a note is asked for with {exercise}: {why}</source>
            <comment>finding.note_wanted</comment>
            <translation>zu {exercise} wird eine Notiz verlangt: {why}</translation>
        </message>
        <message>
            <source>{exercise} has one mark: leave out the distance from mark to mark</source>
            <comment>finding.one_mark</comment>
            <translation>{exercise} hat nur eine Marke: lassen Sie den Abstand von Marke zu Marke weg</translation>
        </message>
        <message>
            <source>{text}</source>
            <comment>finding.other</comment>
            <translation>{text}</translation>
        </message>
        <message>
            <source>sessions are handed over unencrypted</source>
            <comment>finding.plain</comment>
            <translation>Sitzungen werden unverschlüsselt übergeben</translation>
        </message>
        <message>
            <source>is no public key of the format age (age1 and 58 more letters)</source>
            <comment>finding.public_key</comment>
            <translation>ist kein öffentlicher Schlüssel des Formats age (age1 und 58 weitere Zeichen)</translation>
        </message>
        <message>
            <source>is missing, as this plan has stages</source>
            <comment>finding.stage_missing</comment>
            <translation>fehlt, da dieser Plan Stufen hat</translation>
        </message>
        <message>
            <source>is longer than {max_length} characters</source>
            <comment>finding.string_too_long</comment>
            <translation>ist länger als {max_length} Zeichen</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.string_too_short</comment>
            <translation>darf nicht leer sein</translation>
        </message>
        <message>
            <source>must be a text in quotes</source>
            <comment>finding.string_type</comment>
            <translation>muss ein Text sein</translation>
        </message>
        <message>
            <source>{exercise} ({how}) needs the support {least}</source>
            <comment>finding.support</comment>
            <translation>{exercise} ({how}) braucht den Halt {least}</translation>
        </message>
        <message>
            <source>must be a telephone number</source>
            <comment>finding.telephone</comment>
            <translation>muss eine Telefonnummer sein</translation>
        </message>
        <message>
            <source>{exercise} goes at {most} beats a minute at most</source>
            <comment>finding.tempo_to_follow</comment>
            <translation>{exercise} geht mit höchstens {most} Taktschlägen pro Minute</translation>
        </message>
        <message>
            <source>has more than {max_length} parts</source>
            <comment>finding.too_long</comment>
            <translation>hat mehr als {max_length} Teile</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.too_short</comment>
            <translation>darf nicht leer sein</translation>
        </message>
        <message>
            <source>must be a pair, [from, to]</source>
            <comment>finding.tuple_type</comment>
            <translation>muss ein Paar sein, von und bis</translation>
        </message>
        <message>
            <source>stands there twice</source>
            <comment>finding.twice</comment>
            <translation>steht zweimal da</translation>
        </message>
        <message>
            <source>give repetitions or seconds, not both</source>
            <comment>finding.two_doses</comment>
            <translation>Wiederholungen oder Sekunden angeben, nicht beides</translation>
        </message>
        <message>
            <source>there are two entries {name}</source>
            <comment>finding.two_entries</comment>
            <translation>es gibt zwei Einträge {name}</translation>
        </message>
        <message>
            <source>there are two stages {name}</source>
            <comment>finding.two_stages</comment>
            <translation>es gibt zwei Stufen {name}</translation>
        </message>
        <message>
            <source>would lie {angle} degrees above or below the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_above</comment>
            <translation>wäre {angle} Grad über oder unter der Kamera: auf diese Entfernung höchstens {most} mm</translation>
        </message>
        <message>
            <source>the marks would lie {angle} degrees to each side: from this far away they must be {least} to {most} mm apart</source>
            <comment>finding.wall_angle</comment>
            <translation>die Marken wären {angle} Grad zu jeder Seite: auf diese Entfernung müssen sie {least} bis {most} mm auseinander sein</translation>
        </message>
        <message>
            <source>must be {most} mm at most: farther off, no marks will do</source>
            <comment>finding.wall_far</comment>
            <translation>darf höchstens {most} mm sein: weiter weg taugen keine Marken</translation>
        </message>
        <message>
            <source>the marks ask for more than the neck limit of {limit} degrees: {most} mm apart at most from this far away</source>
            <comment>finding.wall_neck</comment>
            <translation>die Marken verlangen mehr als die Grenze für den Nacken von {limit} Grad: auf diese Entfernung höchstens {most} mm auseinander</translation>
        </message>
        <message>
            <source>would lie {angle} degrees to the side of the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_right</comment>
            <translation>wäre {angle} Grad seitlich der Kamera: auf diese Entfernung höchstens {most} mm</translation>
        </message>
        <message>
            <source>{exercise} with the eyes closed can't be done with marks on the wall</source>
            <comment>finding.wall_shut</comment>
            <translation>{exercise} mit geschlossenen Augen geht nicht mit Marken an der Wand</translation>
        </message>
        <message>
            <source>the range or the neck limit leaves {most} degrees to each side, too little for two marks on the wall: they need {least} at least</source>
            <comment>finding.wall_small</comment>
            <translation>der Bereich oder die Grenze für den Nacken lässt {most} Grad zu jeder Seite, zu wenig für zwei Marken an der Wand: sie brauchen mindestens {least}</translation>
        </message>
        <message>
            <source>must be {least} to {most} mm, or no distance from the wall fits it</source>
            <comment>finding.wall_spacing</comment>
            <translation>muss {least} bis {most} mm sein, sonst passt keine Entfernung zur Wand</translation>
        </message>
        <message>
            <source>counts weeks, but the day it begins on is not set (starts_on)</source>
            <comment>finding.weeks_from_when</comment>
            <translation>zählt Wochen, aber der erste Tag ist nicht angegeben</translation>
        </message>
        <message>
            <source>held, timed</source>
            <comment>held, timed</comment>
            <translation>gehalten, nach Zeit</translation>
        </message>
        <message>
            <source>it is done on a firm floor</source>
            <comment>it is done on a firm floor</comment>
            <translation>sie wird auf festem Boden gemacht</translation>
        </message>
        <message>
            <source>it is done with the eyes open</source>
            <comment>it is done with the eyes open</comment>
            <translation>sie wird mit offenen Augen gemacht</translation>
        </message>
        <message>
            <source>it is not done sitting</source>
            <comment>it is not done sitting</comment>
            <translation>sie wird nicht im Sitzen gemacht</translation>
        </message>
        <message>
            <source>it is not done standing</source>
            <comment>it is not done standing</comment>
            <translation>sie wird nicht im Stehen gemacht</translation>
        </message>
        <message>
            <source>it is not done walking</source>
            <comment>it is not done walking</comment>
            <translation>sie wird nicht im Gehen gemacht</translation>
        </message>
        <message>
            <source>led, not counted</source>
            <comment>led, not counted</comment>
            <translation>angeleitet, nicht gezählt</translation>
        </message>
        <message>
            <source>never while tossing, walking, on stairs or with a partner</source>
            <comment>never while tossing, walking, on stairs or with a partner</comment>
            <translation>nie beim Werfen, im Gehen, auf Treppen oder zu zweit</translation>
        </message>
        <message>
            <source>on a soft surface</source>
            <comment>on a soft surface</comment>
            <translation>auf weichem Boden</translation>
        </message>
        <message>
            <source>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</source>
            <comment>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</comment>
            <translation>gerenderte Filme: wer sich halb aufrichtet, ist aus 56 cm unter dem Bild, aus 90 cm zu sehen</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>sitzend</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>stehend</translation>
        </message>
        <message>
            <source>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</source>
            <comment>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</comment>
            <translation>die Leitlinie rät von Augenbewegungen bei ruhigem Kopf zur Blickstabilisierung ab (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, wie zitiert); schreiben Sie, wofür diese Übung ist</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>gehend</translation>
        </message>
        <message>
            <source>with a head shake</source>
            <comment>with a head shake</comment>
            <translation>mit Kopfschütteln</translation>
        </message>
        <message>
            <source>with the eyes closed</source>
            <comment>with the eyes closed</comment>
            <translation>mit geschlossenen Augen</translation>
        </message>
    </context>
    <context>
        <name>trade</name>
        <message>
            <source>30-second chair stand</source>
            <comment>30-second chair stand</comment>
            <translation>30 Sekunden aufstehen</translation>
        </message>
        <message>
            <source>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</source>
            <comment>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</comment>
            <translation>30 Sekunden aufstehen: Stuhl 43 cm, Arme gekreuzt, so oft es sicher ist</translation>
        </message>
        <message>
            <source>95 % below</source>
            <comment>95 % below</comment>
            <translation>95 % darunter</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following</source>
            <comment>Active head pitch with the gaze following</comment>
            <translation>Aktives Nicken, der Blick folgt</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following (habituation)</source>
            <comment>Active head pitch with the gaze following (habituation)</comment>
            <translation>Aktives Nicken, der Blick folgt (Habituation)</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following</source>
            <comment>Active head yaw with the gaze following</comment>
            <translation>Aktives Kopfdrehen, der Blick folgt</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following (habituation)</source>
            <comment>Active head yaw with the gaze following (habituation)</comment>
            <translation>Aktives Kopfdrehen, der Blick folgt (Habituation)</translation>
        </message>
        <message>
            <source>After a sudden drop of the head</source>
            <comment>After a sudden drop of the head</comment>
            <translation>Nach einem plötzlichen Absinken des Kopfes</translation>
        </message>
        <message>
            <source>After an end for today</source>
            <comment>After an end for today</comment>
            <translation>Nach einem Ende für heute</translation>
        </message>
        <message>
            <source>Against the published table</source>
            <comment>Against the published table</comment>
            <translation>Gegen die veröffentlichte Tabelle</translation>
        </message>
        <message>
            <source>Arm of the bends</source>
            <comment>Arm of the bends</comment>
            <translation>Arm beim Bücken</translation>
        </message>
        <message>
            <source>Arm that was used</source>
            <comment>Arm that was used</comment>
            <translation>Benutzter Arm</translation>
        </message>
        <message>
            <source>Backward shoulder circles</source>
            <comment>Backward shoulder circles</comment>
            <translation>Schulterkreisen rückwärts</translation>
        </message>
        <message>
            <source>Backward shoulder circles, slow</source>
            <comment>Backward shoulder circles, slow</comment>
            <translation>Schulterkreisen rückwärts, langsam</translation>
        </message>
        <message>
            <source>Baseline</source>
            <comment>Baseline</comment>
            <translation>Ausgangsmessung</translation>
        </message>
        <message>
            <source>Camera's vertical field of view</source>
            <comment>Camera's vertical field of view</comment>
            <translation>Senkrechtes Bildfeld der Kamera</translation>
        </message>
        <message>
            <source>Changed in the call</source>
            <comment>Changed in the call</comment>
            <translation>Im Gespräch geändert</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip</source>
            <comment>Convergence hold on a fingertip</comment>
            <translation>Konvergenz auf einer Fingerspitze halten</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip, as near as it stays single</source>
            <comment>Convergence hold on a fingertip, as near as it stays single</comment>
            <translation>Konvergenz auf einer Fingerspitze halten, so nah sie einfach bleibt</translation>
        </message>
        <message>
            <source>Counted by the patient</source>
            <comment>Counted by the patient</comment>
            <translation>Von der Person gezählt</translation>
        </message>
        <message>
            <source>Distance end to end</source>
            <comment>Distance end to end</comment>
            <translation>Strecke von Ende zu Ende</translation>
        </message>
        <message>
            <source>Distance from rest</source>
            <comment>Distance from rest</comment>
            <translation>Abstand von der Ruhe</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>Dizziness</comment>
            <translation>Schwindel</translation>
        </message>
        <message>
            <source>Dizziness after last time</source>
            <comment>Dizziness after last time</comment>
            <translation>Schwindel nach dem letzten Mal</translation>
        </message>
        <message>
            <source>Exercises begun</source>
            <comment>Exercises begun</comment>
            <translation>Begonnene Übungen</translation>
        </message>
        <message>
            <source>Eye turn per head turn (no diagnostic gain)</source>
            <comment>Eye turn per head turn (no diagnostic gain)</comment>
            <translation>Augendrehung je Kopfdrehung (kein diagnostischer Gain)</translation>
        </message>
        <message>
            <source>Eyes and head together on a thumb held out that moves from side to side</source>
            <comment>Eyes and head together on a thumb held out that moves from side to side</comment>
            <translation>Augen und Kopf zusammen auf dem vorgestreckten, bewegten Daumen</translation>
        </message>
        <message>
            <source>Eyes as they opened</source>
            <comment>Eyes as they opened</comment>
            <translation>Augen beim Öffnen</translation>
        </message>
        <message>
            <source>Eyes beyond the target</source>
            <comment>Eyes beyond the target</comment>
            <translation>Augen über das Ziel hinaus</translation>
        </message>
        <message>
            <source>Eyes came to rest</source>
            <comment>Eyes came to rest</comment>
            <translation>Augen kamen zur Ruhe</translation>
        </message>
        <message>
            <source>Eyes closed, blinks included</source>
            <comment>Eyes closed, blinks included</comment>
            <translation>Augen geschlossen, mit Lidschlägen</translation>
        </message>
        <message>
            <source>Eyes to camera</source>
            <comment>Eyes to camera</comment>
            <translation>Augen bis Kamera</translation>
        </message>
        <message>
            <source>Eyes watched</source>
            <comment>Eyes watched</comment>
            <translation>Beobachtete Augen</translation>
        </message>
        <message>
            <source>Falls in the last week</source>
            <comment>Falls in the last week</comment>
            <translation>Stürze in der letzten Woche</translation>
        </message>
        <message>
            <source>Field of view known by</source>
            <comment>Field of view known by</comment>
            <translation>Bildfeld bekannt durch</translation>
        </message>
        <message>
            <source>Five stands</source>
            <comment>Five stands</comment>
            <translation>Fünfmal aufstehen</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand</source>
            <comment>Five-times sit-to-stand</comment>
            <translation>Fünfmal aufstehen</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</source>
            <comment>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</comment>
            <translation>Fünfmal aufstehen: Stuhl 43 cm, Arme gekreuzt, so schnell es sicher ist</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles</source>
            <comment>Fore-aft weight shift about the ankles</comment>
            <translation>Gewichtsverlagerung vor und zurück über die Fußgelenke</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles, gaze level</source>
            <comment>Fore-aft weight shift about the ankles, gaze level</comment>
            <translation>Gewichtsverlagerung vor und zurück über die Fußgelenke, Blick waagerecht</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object</source>
            <comment>Forward bends from a chair to put down and fetch an object</comment>
            <translation>Vorbeugen vom Stuhl, einen Gegenstand ablegen und holen</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object (both = 1)</source>
            <comment>Forward bends from a chair to put down and fetch an object (both = 1)</comment>
            <translation>Vorbeugen vom Stuhl, einen Gegenstand ablegen und holen (beides = 1)</translation>
        </message>
        <message>
            <source>Forward shoulder circles</source>
            <comment>Forward shoulder circles</comment>
            <translation>Schulterkreisen vorwärts</translation>
        </message>
        <message>
            <source>Forward shoulder circles, slow</source>
            <comment>Forward shoulder circles, slow</comment>
            <translation>Schulterkreisen vorwärts, langsam</translation>
        </message>
        <message>
            <source>Frame rate</source>
            <comment>Frame rate</comment>
            <translation>Bildrate</translation>
        </message>
        <message>
            <source>From one to the next</source>
            <comment>From one to the next</comment>
            <translation>Von einer zur nächsten</translation>
        </message>
        <message>
            <source>Gait forward and backward</source>
            <comment>Gait forward and backward</comment>
            <translation>Gehen vorwärts und rückwärts</translation>
        </message>
        <message>
            <source>Gait forward and backward, ten steps each way (= 1)</source>
            <comment>Gait forward and backward, ten steps each way (= 1)</comment>
            <translation>Gehen vorwärts und rückwärts, je zehn Schritte (= 1)</translation>
        </message>
        <message>
            <source>Gaze error at set-up</source>
            <comment>Gaze error at set-up</comment>
            <translation>Blickfehler bei der Einrichtung</translation>
        </message>
        <message>
            <source>Gaze error at the wall</source>
            <comment>Gaze error at the wall</comment>
            <translation>Fehler des Blicks an der Wand</translation>
        </message>
        <message>
            <source>Gaze from target</source>
            <comment>Gaze from target</comment>
            <translation>Abstand des Blicks vom Ziel</translation>
        </message>
        <message>
            <source>Glasses</source>
            <comment>Glasses</comment>
            <translation>Brille</translation>
        </message>
        <message>
            <source>Had to hold on</source>
            <comment>Had to hold on</comment>
            <translation>Musste sich festhalten</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height</source>
            <comment>Hand-to-hand toss over eye height</comment>
            <translation>Werfen von Hand zu Hand über Augenhöhe</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height, tracked with eyes and head</source>
            <comment>Hand-to-hand toss over eye height, tracked with eyes and head</comment>
            <translation>Werfen von Hand zu Hand über Augenhöhe, Augen und Kopf folgen</translation>
        </message>
        <message>
            <source>Head shaking in stance on a compliant surface</source>
            <comment>Head shaking in stance on a compliant surface</comment>
            <translation>Kopfschütteln im Stand auf nachgiebigem Boden</translation>
        </message>
        <message>
            <source>Head tilts</source>
            <comment>Head tilts</comment>
            <translation>Kopfneigen</translation>
        </message>
        <message>
            <source>Head tilts, ear towards the shoulder, right and left</source>
            <comment>Head tilts, ear towards the shoulder, right and left</comment>
            <translation>Kopfneigen, Ohr zur Schulter, rechts und links</translation>
        </message>
        <message>
            <source>Head turn against a mark on the wall</source>
            <comment>Head turn against a mark on the wall</comment>
            <translation>Kopfdrehung gegen eine Marke an der Wand</translation>
        </message>
        <message>
            <source>Head with the throws</source>
            <comment>Head with the throws</comment>
            <translation>Kopf bei den Würfen</translation>
        </message>
        <message>
            <source>Held as asked</source>
            <comment>Held as asked</comment>
            <translation>Wie verlangt gehalten</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets</source>
            <comment>Horizontal saccades between two targets</comment>
            <translation>Horizontale Sakkaden zwischen zwei Zielen</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets, head still</source>
            <comment>Horizontal saccades between two targets, head still</comment>
            <translation>Horizontale Sakkaden zwischen zwei Zielen, Kopf still</translation>
        </message>
        <message>
            <source>Hurt in a fall</source>
            <comment>Hurt in a fall</comment>
            <translation>Beim Sturz verletzt</translation>
        </message>
        <message>
            <source>Lateral weight shift on a compliant surface</source>
            <comment>Lateral weight shift on a compliant surface</comment>
            <translation>Seitliche Gewichtsverlagerung auf nachgiebigem Boden</translation>
        </message>
        <message>
            <source>Length</source>
            <comment>Length</comment>
            <translation>Dauer</translation>
        </message>
        <message>
            <source>Light on the face, of full</source>
            <comment>Light on the face, of full</comment>
            <translation>Licht auf dem Gesicht, vom vollen</translation>
        </message>
        <message>
            <source>Medicines changed</source>
            <comment>Medicines changed</comment>
            <translation>Medikamente geändert</translation>
        </message>
        <message>
            <source>Moments marked</source>
            <comment>Moments marked</comment>
            <translation>Gemerkte Augenblicke</translation>
        </message>
        <message>
            <source>Nausea</source>
            <comment>Nausea</comment>
            <translation>Übelkeit</translation>
        </message>
        <message>
            <source>Noticed, in all</source>
            <comment>Noticed, in all</comment>
            <translation>Aufgefallen, insgesamt</translation>
        </message>
        <message>
            <source>One-leg standing</source>
            <comment>One-leg standing</comment>
            <translation>Einbeinstand</translation>
        </message>
        <message>
            <source>One-leg standing, each leg in turn</source>
            <comment>One-leg standing, each leg in turn</comment>
            <translation>Einbeinstand, abwechselnd jedes Bein</translation>
        </message>
        <message>
            <source>Quiet stance in a corner</source>
            <comment>Quiet stance in a corner</comment>
            <translation>Ruhiger Stand in einer Ecke</translation>
        </message>
        <message>
            <source>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</source>
            <comment>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</comment>
            <translation>Ruhiger Stand in einer Ecke, Blick waagerecht auf eine Marke an der Wand (Augen offen oder geschlossen)</translation>
        </message>
        <message>
            <source>Reach of what was asked</source>
            <comment>Reach of what was asked</comment>
            <translation>Reichweite, gemessen am Verlangten</translation>
        </message>
        <message>
            <source>Remembered target</source>
            <comment>Remembered target</comment>
            <translation>Erinnertes Ziel</translation>
        </message>
        <message>
            <source>Remembered target: eyes shut, head turns, eyes kept where the target was</source>
            <comment>Remembered target: eyes shut, head turns, eyes kept where the target was</comment>
            <translation>Erinnertes Ziel: Augen zu, Kopf dreht, die Augen bleiben, wo das Ziel war</translation>
        </message>
        <message>
            <source>Safety questions</source>
            <comment>Safety questions</comment>
            <translation>Sicherheitsfragen</translation>
        </message>
        <message>
            <source>Set stopped for seeing double</source>
            <comment>Set stopped for seeing double</comment>
            <translation>Durchgang beendet, weil doppelt gesehen</translation>
        </message>
        <message>
            <source>Single turns</source>
            <comment>Single turns</comment>
            <translation>Einzelne Drehungen</translation>
        </message>
        <message>
            <source>Sit-to-stand</source>
            <comment>Sit-to-stand</comment>
            <translation>Aufstehen vom Sitzen</translation>
        </message>
        <message>
            <source>Sit-to-stand, arm support permitted</source>
            <comment>Sit-to-stand, arm support permitted</comment>
            <translation>Aufstehen vom Sitzen, mit den Armen erlaubt</translation>
        </message>
        <message>
            <source>Slow nod</source>
            <comment>Slow nod</comment>
            <translation>langsames Nicken</translation>
        </message>
        <message>
            <source>Slow turn</source>
            <comment>Slow turn</comment>
            <translation>langsame Drehung</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip</source>
            <comment>Slow vergence with a fingertip</comment>
            <translation>Langsame Vergenz mit einer Fingerspitze</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip, arm's length to 30 cm, head still</source>
            <comment>Slow vergence with a fingertip, arm's length to 30 cm, head still</comment>
            <translation>Langsame Vergenz mit einer Fingerspitze, von Armlänge bis 30 cm, Kopf still</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target</source>
            <comment>Smooth pursuit of a slow target</comment>
            <translation>Langsame Folgebewegung</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target, head still</source>
            <comment>Smooth pursuit of a slow target, head still</comment>
            <translation>Langsame Folgebewegung, Kopf still</translation>
        </message>
        <message>
            <source>Stands in 30 s</source>
            <comment>Stands in 30 s</comment>
            <translation>Aufstehen in 30 s</translation>
        </message>
        <message>
            <source>Step up and down with the rail</source>
            <comment>Step up and down with the rail</comment>
            <translation>Stufe auf und ab am Geländer</translation>
        </message>
        <message>
            <source>Step up and down with the rail (= 1)</source>
            <comment>Step up and down with the rail (= 1)</comment>
            <translation>Stufe auf und ab am Geländer (= 1)</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>Support</comment>
            <translation>Halt</translation>
        </message>
        <message>
            <source>Sway, 95 % area</source>
            <comment>Sway, 95 % area</comment>
            <translation>Schwanken, 95-%-Fläche</translation>
        </message>
        <message>
            <source>Sway, RMS</source>
            <comment>Sway, RMS</comment>
            <translation>Schwanken, RMS</translation>
        </message>
        <message>
            <source>Sway, range</source>
            <comment>Sway, range</comment>
            <translation>Schwanken, Spanne</translation>
        </message>
        <message>
            <source>Tandem standing</source>
            <comment>Tandem standing</comment>
            <translation>Tandemstand</translation>
        </message>
        <message>
            <source>Tandem standing, heel to toe</source>
            <comment>Tandem standing, heel to toe</comment>
            <translation>Tandemstand, Ferse vor Zehen</translation>
        </message>
        <message>
            <source>Target looked</source>
            <comment>Target looked</comment>
            <translation>Aussehen des Ziels</translation>
        </message>
        <message>
            <source>Targets left out</source>
            <comment>Targets left out</comment>
            <translation>Ausgelassene Ziele</translation>
        </message>
        <message>
            <source>The head after the drop</source>
            <comment>The head after the drop</comment>
            <translation>Der Kopf nach dem Absinken</translation>
        </message>
        <message>
            <source>Throw above the eyes</source>
            <comment>Throw above the eyes</comment>
            <translation>Wurf über die Augen</translation>
        </message>
        <message>
            <source>Time</source>
            <comment>Time</comment>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>Time of one way</source>
            <comment>Time of one way</comment>
            <translation>Zeit für einen Weg</translation>
        </message>
        <message>
            <source>Tolerance of a small</source>
            <comment>Tolerance of a small</comment>
            <translation>Toleranz gegen einen kleinen bewegten Hintergrund</translation>
        </message>
        <message>
            <source>Tolerance of a small, slow moving background (optokinetic habituation)</source>
            <comment>Tolerance of a small, slow moving background (optokinetic habituation)</comment>
            <translation>Toleranz gegen einen kleinen, langsam bewegten Hintergrund (optokinetische Habituation)</translation>
        </message>
        <message>
            <source>Trunk turns with a partner who hands over an object on either side</source>
            <comment>Trunk turns with a partner who hands over an object on either side</comment>
            <translation>Rumpfdrehen mit einer Person, die auf jeder Seite einen Gegenstand reicht</translation>
        </message>
        <message>
            <source>Turning between two targets</source>
            <comment>Turning between two targets</comment>
            <translation>Drehen zwischen zwei Zielen</translation>
        </message>
        <message>
            <source>Turning between two targets: the eyes first, then the head</source>
            <comment>Turning between two targets: the eyes first, then the head</comment>
            <translation>Drehen zwischen zwei Zielen: erst die Augen, dann der Kopf</translation>
        </message>
        <message>
            <source>Uncertainty, ±</source>
            <comment>Uncertainty, ±</comment>
            <translation>Unsicherheit, ±</translation>
        </message>
        <message>
            <source>Unsteadiness</source>
            <comment>Unsteadiness</comment>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets</source>
            <comment>Vertical saccades between two targets</comment>
            <translation>Vertikale Sakkaden zwischen zwei Zielen</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets, small at first, head still</source>
            <comment>Vertical saccades between two targets, small at first, head still</comment>
            <translation>Vertikale Sakkaden zwischen zwei Zielen, anfangs klein, Kopf still</translation>
        </message>
        <message>
            <source>Wall, from mark to mark</source>
            <comment>Wall, from mark to mark</comment>
            <translation>Wand, von Marke zu Marke</translation>
        </message>
        <message>
            <source>Wall, from the eyes</source>
            <comment>Wall, from the eyes</comment>
            <translation>Wand, von den Augen</translation>
        </message>
        <message>
            <source>Wall, marks above the camera</source>
            <comment>Wall, marks above the camera</comment>
            <translation>Wand, Marken über der Kamera</translation>
        </message>
        <message>
            <source>Wall, marks right of the camera</source>
            <comment>Wall, marks right of the camera</comment>
            <translation>Wand, Marken rechts der Kamera</translation>
        </message>
        <message>
            <source>Way of the rolls</source>
            <comment>Way of the rolls</comment>
            <translation>Richtung des Kreisens</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, amplitude</source>
            <comment>Worst on rendered heads in good light, amplitude</comment>
            <translation>Größter Fehler an gerenderten Köpfen bei gutem Licht, Ausschlag</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, gaze</source>
            <comment>Worst on rendered heads in good light, gaze</comment>
            <translation>Größter Fehler an gerenderten Köpfen bei gutem Licht, Blick</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, head angle</source>
            <comment>Worst on rendered heads in good light, head angle</comment>
            <translation>Größter Fehler an gerenderten Köpfen bei gutem Licht, Kopfwinkel</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, peak speed</source>
            <comment>Worst on rendered heads in good light, peak speed</comment>
            <translation>Größter Fehler an gerenderten Köpfen bei gutem Licht, Höchsttempo</translation>
        </message>
        <message>
            <source>a camera's frame rate can't carry the speed of an eye jump</source>
            <comment>a camera's frame rate can't carry the speed of an eye jump</comment>
            <translation>die Bildrate einer Kamera reicht für die Geschwindigkeit eines Augensprungs nicht</translation>
        </message>
        <message>
            <source>a fall, told in the question of the week</source>
            <comment>a fall, told in the question of the week</comment>
            <translation>ein Sturz, in der wöchentlichen Frage berichtet</translation>
        </message>
        <message>
            <source>a safety question ended it</source>
            <comment>a safety question ended it</comment>
            <translation>durch eine Sicherheitsfrage beendet</translation>
        </message>
        <message>
            <source>a set was made easier than the plan has it</source>
            <comment>a set was made easier than the plan has it</comment>
            <translation>ein Durchgang wurde leichter gemacht, als der Plan ihn vorsieht</translation>
        </message>
        <message>
            <source>a short spin on bending or tilting ends it: hold on and sit; you read of it first</source>
            <comment>a short spin on bending or tilting ends it: hold on and sit; you read of it first</comment>
            <translation>ein kurzer Drehschwindel beim Bücken oder Neigen beendet es: festhalten und sitzen; Sie lesen davon zuerst</translation>
        </message>
        <message>
            <source>a target held in the hand</source>
            <comment>a target held in the hand</comment>
            <translation>ein Ziel in der Hand</translation>
        </message>
        <message>
            <source>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</source>
            <comment>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</comment>
            <translation>eine Messreihe allein: ob es eine Einrichtung gab und wie gut der Blick gelesen wurde, ist nicht bekannt</translation>
        </message>
        <message>
            <source>a try of the program, not practice</source>
            <comment>a try of the program, not practice</comment>
            <translation>Versuch mit dem Programm, keine Übung</translation>
        </message>
        <message>
            <source>after</source>
            <comment>after</comment>
            <translation>nachher</translation>
        </message>
        <message>
            <source>all answered no</source>
            <comment>all answered no</comment>
            <translation>alle verneint</translation>
        </message>
        <message>
            <source>amplitude</source>
            <comment>amplitude</comment>
            <translation>Ausschlag</translation>
        </message>
        <message>
            <source>amplitude too large</source>
            <comment>amplitude too large</comment>
            <translation>Ausschlag zu groß</translation>
        </message>
        <message>
            <source>amplitude too small</source>
            <comment>amplitude too small</comment>
            <translation>Ausschlag zu klein</translation>
        </message>
        <message>
            <source>an earlier session of the day had to be ended</source>
            <comment>an earlier session of the day had to be ended</comment>
            <translation>eine frühere Sitzung des Tages musste beendet werden</translation>
        </message>
        <message>
            <source>and was hurt</source>
            <comment>and was hurt</comment>
            <translation>mit Verletzung</translation>
        </message>
        <message>
            <source>another exercise was asked for</source>
            <comment>another exercise was asked for</comment>
            <translation>eine andere Übung war vorgegeben</translation>
        </message>
        <message>
            <source>answered yes: {what}</source>
            <comment>answered yes: {what}</comment>
            <translation>bejaht: {what}</translation>
        </message>
        <message>
            <source>asked</source>
            <comment>asked</comment>
            <translation>vorgegeben</translation>
        </message>
        <message>
            <source>asked after it</source>
            <comment>asked after it</comment>
            <translation>danach gefragt</translation>
        </message>
        <message>
            <source>back</source>
            <comment>back</comment>
            <translation>rückwärts</translation>
        </message>
        <message>
            <source>before</source>
            <comment>before</comment>
            <translation>vorher</translation>
        </message>
        <message>
            <source>below average ({bound} {limit} is below)</source>
            <comment>below average ({bound} {limit} is below)</comment>
            <translation>unter dem Durchschnitt ({bound} {limit} ist darunter)</translation>
        </message>
        <message>
            <source>bending at the hip</source>
            <comment>bending at the hip</comment>
            <translation>Beugen in der Hüfte</translation>
        </message>
        <message>
            <source>beside the target</source>
            <comment>beside the target</comment>
            <translation>neben dem Ziel</translation>
        </message>
        <message>
            <source>beyond it</source>
            <comment>beyond it</comment>
            <translation>darüber hinaus</translation>
        </message>
        <message>
            <source>bi- or varifocal</source>
            <comment>bi- or varifocal</comment>
            <translation>Bifokal oder Gleitsicht</translation>
        </message>
        <message>
            <source>bi- or varifocal glasses in nods</source>
            <comment>bi- or varifocal glasses in nods</comment>
            <translation>Bifokal- oder Gleitsichtbrille beim Nicken</translation>
        </message>
        <message>
            <source>blackout</source>
            <comment>blackout</comment>
            <translation>Bewusstseinsverlust</translation>
        </message>
        <message>
            <source>blurred</source>
            <comment>blurred</comment>
            <translation>verschwommen</translation>
        </message>
        <message>
            <source>both</source>
            <comment>both</comment>
            <translation>beide</translation>
        </message>
        <message>
            <source>both, in turn</source>
            <comment>both, in turn</comment>
            <translation>beide, abwechselnd</translation>
        </message>
        <message>
            <source>broke off (program or computer)</source>
            <comment>broke off (program or computer)</comment>
            <translation>abgebrochen (Programm oder Computer)</translation>
        </message>
        <message>
            <source>camera gone for some of it</source>
            <comment>camera gone for some of it</comment>
            <translation>Kamera war zeitweise weg</translation>
        </message>
        <message>
            <source>catch-up saccades below 2 degrees, and how fast any of them are</source>
            <comment>catch-up saccades below 2 degrees, and how fast any of them are</comment>
            <translation>Aufholsakkaden unter 2 Grad, und wie schnell irgendeine davon ist</translation>
        </message>
        <message>
            <source>chair against the wall, no wheels</source>
            <comment>chair against the wall, no wheels</comment>
            <translation>Stuhl an der Wand, keine Rollen</translation>
        </message>
        <message>
            <source>chest pain</source>
            <comment>chest pain</comment>
            <translation>Brustschmerz</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>chin down</comment>
            <translation>Kinn gesenkt</translation>
        </message>
        <message>
            <source>clear</source>
            <comment>clear</comment>
            <translation>klar</translation>
        </message>
        <message>
            <source>clear lit floor; helper at the side, behind when walking backward</source>
            <comment>clear lit floor; helper at the side, behind when walking backward</comment>
            <translation>freier, heller Boden; Hilfsperson an der Seite, beim Rückwärtsgehen dahinter</translation>
        </message>
        <message>
            <source>clearance checklist not ticked</source>
            <comment>clearance checklist not ticked</comment>
            <translation>Prüfliste zur Freigabe nicht abgehakt</translation>
        </message>
        <message>
            <source>closed the question without saying</source>
            <comment>closed the question without saying</comment>
            <translation>schloss die Frage, ohne etwas zu sagen</translation>
        </message>
        <message>
            <source>condition met: {what}</source>
            <comment>condition met: {what}</comment>
            <translation>Bedingung erfüllt: {what}</translation>
        </message>
        <message>
            <source>confirmed</source>
            <comment>confirmed</comment>
            <translation>bestätigt</translation>
        </message>
        <message>
            <source>corner and chair</source>
            <comment>corner and chair</comment>
            <translation>Ecke und Stuhl</translation>
        </message>
        <message>
            <source>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</source>
            <comment>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</comment>
            <translation>Ecke dahinter, fester Stuhl davor oder eine Hilfsperson; flache geschlossene Schuhe oder barfuß</translation>
        </message>
        <message>
            <source>counted within</source>
            <comment>counted within</comment>
            <translation>gezählt innerhalb von</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>dark</comment>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>did not answer</source>
            <comment>did not answer</comment>
            <translation>hat nicht geantwortet</translation>
        </message>
        <message>
            <source>differs between the exercises</source>
            <comment>differs between the exercises</comment>
            <translation>ist je Übung verschieden</translation>
        </message>
        <message>
            <source>dizziness after</source>
            <comment>dizziness after</comment>
            <translation>Schwindel nachher</translation>
        </message>
        <message>
            <source>dizziness before</source>
            <comment>dizziness before</comment>
            <translation>Schwindel vorher</translation>
        </message>
        <message>
            <source>dizziness unlike the usual</source>
            <comment>dizziness unlike the usual</comment>
            <translation>Schwindel anders als sonst</translation>
        </message>
        <message>
            <source>dizziness, next morning</source>
            <comment>dizziness, next morning</comment>
            <translation>Schwindel, nächster Morgen</translation>
        </message>
        <message>
            <source>dizziness, rest of the day</source>
            <comment>dizziness, rest of the day</comment>
            <translation>Schwindel, restlicher Tag</translation>
        </message>
        <message>
            <source>double</source>
            <comment>double</comment>
            <translation>doppelt</translation>
        </message>
        <message>
            <source>double image (asked)</source>
            <comment>double image (asked)</comment>
            <translation>Doppelbild (gefragt)</translation>
        </message>
        <message>
            <source>double vision</source>
            <comment>double vision</comment>
            <translation>Doppeltsehen</translation>
        </message>
        <message>
            <source>down</source>
            <comment>down</comment>
            <translation>abwärts</translation>
        </message>
        <message>
            <source>end to end</source>
            <comment>end to end</comment>
            <translation>von Ende zu Ende</translation>
        </message>
        <message>
            <source>ended by a safety question</source>
            <comment>ended by a safety question</comment>
            <translation>durch eine Sicherheitsfrage beendet</translation>
        </message>
        <message>
            <source>ended by the symptom rule</source>
            <comment>ended by the symptom rule</comment>
            <translation>durch die Beschwerderegel beendet</translation>
        </message>
        <message>
            <source>error</source>
            <comment>error</comment>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>expected</source>
            <comment>expected</comment>
            <translation>erwartet</translation>
        </message>
        <message>
            <source>eye movement short of the target</source>
            <comment>eye movement short of the target</comment>
            <translation>Augenbewegung endet vor dem Ziel</translation>
        </message>
        <message>
            <source>eye movements that stop short of the target</source>
            <comment>eye movements that stop short of the target</comment>
            <translation>Augenbewegungen, die vor dem Ziel enden</translation>
        </message>
        <message>
            <source>eyes and head together, not the eyes first</source>
            <comment>eyes and head together, not the eyes first</comment>
            <translation>Augen und Kopf zusammen, nicht die Augen zuerst</translation>
        </message>
        <message>
            <source>eyes beyond the range of the set-up</source>
            <comment>eyes beyond the range of the set-up</comment>
            <translation>Augen außerhalb des Bereichs der Einrichtung</translation>
        </message>
        <message>
            <source>eyes beyond the set-up</source>
            <comment>eyes beyond the set-up</comment>
            <translation>Augen außerhalb der Einrichtung</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>eyes closed</comment>
            <translation>Augen geschlossen</translation>
        </message>
        <message>
            <source>eyes did not follow the finger</source>
            <comment>eyes did not follow the finger</comment>
            <translation>Augen folgten dem Finger nicht</translation>
        </message>
        <message>
            <source>eyes not with the head</source>
            <comment>eyes not with the head</comment>
            <translation>Augen nicht mit dem Kopf</translation>
        </message>
        <message>
            <source>eyes open</source>
            <comment>eyes open</comment>
            <translation>Augen offen</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>eyes opened</comment>
            <translation>Augen geöffnet</translation>
        </message>
        <message>
            <source>eyes shut</source>
            <comment>eyes shut</comment>
            <translation>Augen zu</translation>
        </message>
        <message>
            <source>eyes unlike the set-up</source>
            <comment>eyes unlike the set-up</comment>
            <translation>Augen anders als bei der Einrichtung</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up</source>
            <comment>eyes unlike those of the set-up</comment>
            <translation>Augen anders als bei der Einrichtung</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up around then</source>
            <comment>eyes unlike those of the set-up around then</comment>
            <translation>Augen um diese Zeit anders als bei der Einrichtung</translation>
        </message>
        <message>
            <source>face covered, or its light changed</source>
            <comment>face covered, or its light changed</comment>
            <translation>Gesicht verdeckt oder sein Licht verändert</translation>
        </message>
        <message>
            <source>fall since the last session</source>
            <comment>fall since the last session</comment>
            <translation>Sturz seit der letzten Sitzung</translation>
        </message>
        <message>
            <source>far</source>
            <comment>far</comment>
            <translation>fern</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>faster than the beat</comment>
            <translation>schneller als der Takt</translation>
        </message>
        <message>
            <source>faster was asked towards the end</source>
            <comment>faster was asked towards the end</comment>
            <translation>gegen Ende war es schneller vorgegeben</translation>
        </message>
        <message>
            <source>fell</source>
            <comment>fell</comment>
            <translation>gefallen</translation>
        </message>
        <message>
            <source>fewer than</source>
            <comment>fewer than</comment>
            <translation>weniger als</translation>
        </message>
        <message>
            <source>fewer than five stands</source>
            <comment>fewer than five stands</comment>
            <translation>weniger als fünfmal aufgestanden</translation>
        </message>
        <message>
            <source>fewer than ten repetitions</source>
            <comment>fewer than ten repetitions</comment>
            <translation>weniger als zehn Wiederholungen</translation>
        </message>
        <message>
            <source>fewer than two repetitions</source>
            <comment>fewer than two repetitions</comment>
            <translation>weniger als zwei Wiederholungen</translation>
        </message>
        <message>
            <source>fewer than two turns</source>
            <comment>fewer than two turns</comment>
            <translation>weniger als zwei Drehungen</translation>
        </message>
        <message>
            <source>figures can't be trusted in {bad} of the last {all} sets: {why}</source>
            <comment>figures can't be trusted in {bad} of the last {all} sets: {why}</comment>
            <translation>Werte nicht verlässlich in {bad} der letzten {all} Durchgänge: {why}</translation>
        </message>
        <message>
            <source>finished</source>
            <comment>finished</comment>
            <translation>beendet</translation>
        </message>
        <message>
            <source>firm chair without wheels; feet flat, no reaching beyond the knees at first</source>
            <comment>firm chair without wheels; feet flat, no reaching beyond the knees at first</comment>
            <translation>fester Stuhl ohne Rollen; Füße flach, anfangs nicht über die Knie hinaus greifen</translation>
        </message>
        <message>
            <source>firm surface</source>
            <comment>firm surface</comment>
            <translation>fester Boden</translation>
        </message>
        <message>
            <source>first against last five</source>
            <comment>first against last five</comment>
            <translation>erste gegen letzte fünf</translation>
        </message>
        <message>
            <source>first five</source>
            <comment>first five</comment>
            <translation>erste fünf</translation>
        </message>
        <message>
            <source>fore-aft</source>
            <comment>fore-aft</comment>
            <translation>vor und zurück</translation>
        </message>
        <message>
            <source>forward</source>
            <comment>forward</comment>
            <translation>vorwärts</translation>
        </message>
        <message>
            <source>gaze and target were never measured together</source>
            <comment>gaze and target were never measured together</comment>
            <translation>Blick und Ziel wurden nie zusammen gemessen</translation>
        </message>
        <message>
            <source>gaze off target</source>
            <comment>gaze off target</comment>
            <translation>Blick nicht auf dem Ziel</translation>
        </message>
        <message>
            <source>gaze on target</source>
            <comment>gaze on target</comment>
            <translation>Blick auf dem Ziel</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % ({name})</source>
            <comment>gaze on target fell from {first} to {last} % ({name})</comment>
            <translation>Blick auf dem Ziel sank von {first} auf {last} % ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</comment>
            <translation>Blick auf dem Ziel sank von {first} auf {last} %, Kopf gedreht nach: {side} ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</comment>
            <translation>Blick auf dem Ziel sank von {first} auf {last} %, Kopf gedreht nach: {side}, zur anderen Seite weniger ({name})</translation>
        </message>
        <message>
            <source>gaze stabilisation: {measured} minutes a day measured, {reported} told of</source>
            <comment>gaze stabilisation: {measured} minutes a day measured, {reported} told of</comment>
            <translation>Blickstabilisierung: {measured} Minuten am Tag gemessen, {reported} berichtet</translation>
        </message>
        <message>
            <source>gaze while bent</source>
            <comment>gaze while bent</comment>
            <translation>der Blick beim Bücken</translation>
        </message>
        <message>
            <source>half a minute to try the program out: not counted as practice</source>
            <comment>half a minute to try the program out: not counted as practice</comment>
            <translation>eine halbe Minute zum Ausprobieren des Programms: zählt nicht als Übung</translation>
        </message>
        <message>
            <source>hand on the rail, helper one step below, shoes on, eyes open</source>
            <comment>hand on the rail, helper one step below, shoes on, eyes open</comment>
            <translation>Hand am Geländer, Hilfsperson eine Stufe tiefer, mit Schuhen, Augen offen</translation>
        </message>
        <message>
            <source>head away from its middle</source>
            <comment>head away from its middle</comment>
            <translation>Kopf weg von seiner Mitte</translation>
        </message>
        <message>
            <source>head before the eyes</source>
            <comment>head before the eyes</comment>
            <translation>Kopf vor den Augen</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>head moved along</comment>
            <translation>Kopf mitbewegt</translation>
        </message>
        <message>
            <source>head shake</source>
            <comment>head shake</comment>
            <translation>Kopfschütteln</translation>
        </message>
        <message>
            <source>head turned in place of tilting</source>
            <comment>head turned in place of tilting</comment>
            <translation>Kopf gedreht statt geneigt</translation>
        </message>
        <message>
            <source>head turned too far</source>
            <comment>head turned too far</comment>
            <translation>Kopf zu weit gedreht</translation>
        </message>
        <message>
            <source>head with the target, not against it</source>
            <comment>head with the target, not against it</comment>
            <translation>Kopf mit dem Ziel, nicht gegen das Ziel</translation>
        </message>
        <message>
            <source>held on</source>
            <comment>held on</comment>
            <translation>festgehalten</translation>
        </message>
        <message>
            <source>helper within arm's reach; a firm cushion that does not slip</source>
            <comment>helper within arm's reach; a firm cushion that does not slip</comment>
            <translation>Hilfsperson in Reichweite; ein festes Kissen, das nicht rutscht</translation>
        </message>
        <message>
            <source>helper within reach</source>
            <comment>helper within reach</comment>
            <translation>Hilfsperson in Reichweite</translation>
        </message>
        <message>
            <source>holding on to the wall or the chair (asked)</source>
            <comment>holding on to the wall or the chair (asked)</comment>
            <translation>Festhalten an Wand oder Stuhl (gefragt)</translation>
        </message>
        <message>
            <source>holds for</source>
            <comment>holds for</comment>
            <translation>gilt für</translation>
        </message>
        <message>
            <source>how far the eyes go up and down (only coarsely)</source>
            <comment>how far the eyes go up and down (only coarsely)</comment>
            <translation>wie weit die Augen auf und ab gehen (nur grob)</translation>
        </message>
        <message>
            <source>how far the eyes turn in</source>
            <comment>how far the eyes turn in</comment>
            <translation>wie weit sich die Augen nach innen drehen</translation>
        </message>
        <message>
            <source>how far the turns went was not seen</source>
            <comment>how far the turns went was not seen</comment>
            <translation>wie weit die Drehungen gingen, war nicht zu sehen</translation>
        </message>
        <message>
            <source>how high the shoulders really go (their landmarks follow about half)</source>
            <comment>how high the shoulders really go (their landmarks follow about half)</comment>
            <translation>wie hoch die Schultern wirklich gehen (ihre Punkte folgen etwa zur Hälfte)</translation>
        </message>
        <message>
            <source>how it ended is not known</source>
            <comment>how it ended is not known</comment>
            <translation>wie sie endete, ist nicht bekannt</translation>
        </message>
        <message>
            <source>how near the finger really comes (its cycles are counted where the arm is seen)</source>
            <comment>how near the finger really comes (its cycles are counted where the arm is seen)</comment>
            <translation>wie nah der Finger wirklich kommt (seine Durchläufe werden gezählt, wo der Arm zu sehen ist)</translation>
        </message>
        <message>
            <source>in a try of the program: {text}</source>
            <comment>in a try of the program: {text}</comment>
            <translation>bei einem Versuch mit dem Programm: {text}</translation>
        </message>
        <message>
            <source>in the plan, changed in the call</source>
            <comment>in the plan, changed in the call</comment>
            <translation>im Plan, im Gespräch geändert</translation>
        </message>
        <message>
            <source>it broke off</source>
            <comment>it broke off</comment>
            <translation>abgebrochen</translation>
        </message>
        <message>
            <source>it ended with a possible fall</source>
            <comment>it ended with a possible fall</comment>
            <translation>mit einem möglichen Sturz beendet</translation>
        </message>
        <message>
            <source>it is held for a time: there is nothing to count</source>
            <comment>it is held for a time: there is nothing to count</comment>
            <translation>sie wird eine Zeit lang gehalten: es gibt nichts zu zählen</translation>
        </message>
        <message>
            <source>it is in words only, and the therapist has not said so yet</source>
            <comment>it is in words only, and the therapist has not said so yet</comment>
            <translation>sie steht nur in Worten da, und die Therapie hat es noch nicht gesagt</translation>
        </message>
        <message>
            <source>it was stopped unwell</source>
            <comment>it was stopped unwell</comment>
            <translation>wegen Unwohlsein beendet</translation>
        </message>
        <message>
            <source>its end is not recorded</source>
            <comment>its end is not recorded</comment>
            <translation>das Ende ist nicht aufgezeichnet</translation>
        </message>
        <message>
            <source>its end was out of the picture</source>
            <comment>its end was out of the picture</comment>
            <translation>ihr Ende lag außerhalb des Bildes</translation>
        </message>
        <message>
            <source>its target can only be shown to who sits before the screen</source>
            <comment>its target can only be shown to who sits before the screen</comment>
            <translation>sein Ziel lässt sich nur jemandem zeigen, der vor dem Bildschirm sitzt</translation>
        </message>
        <message>
            <source>its target had too little room on the screen for anything to be counted</source>
            <comment>its target had too little room on the screen for anything to be counted</comment>
            <translation>das Ziel hatte auf dem Bildschirm zu wenig Platz, um etwas zu zählen</translation>
        </message>
        <message>
            <source>jumping</source>
            <comment>jumping</comment>
            <translation>springend</translation>
        </message>
        <message>
            <source>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</source>
            <comment>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</comment>
            <translation>k = 2 (etwa 95 %): Rauschen und Zeiten der Bilder, Fehler der Einrichtung; nicht die eigene Streuung der Person</translation>
        </message>
        <message>
            <source>last five</source>
            <comment>last five</comment>
            <translation>letzte fünf</translation>
        </message>
        <message>
            <source>last five less first five (means)</source>
            <comment>last five less first five (means)</comment>
            <translation>letzte fünf minus erste fünf (Mittelwerte)</translation>
        </message>
        <message>
            <source>left</source>
            <comment>left</comment>
            <translation>links</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>left eye only</comment>
            <translation>nur das linke Auge</translation>
        </message>
        <message>
            <source>left out by the patient</source>
            <comment>left out by the patient</comment>
            <translation>von der Person weggelassen</translation>
        </message>
        <message>
            <source>left out by the patient, as no camera could be used</source>
            <comment>left out by the patient, as no camera could be used</comment>
            <translation>von der Person weggelassen, weil keine Kamera zu gebrauchen war</translation>
        </message>
        <message>
            <source>left the picture</source>
            <comment>left the picture</comment>
            <translation>nicht im Bild</translation>
        </message>
        <message>
            <source>light on the face {value} of 1</source>
            <comment>light on the face {value} of 1</comment>
            <translation>Licht auf dem Gesicht {value} von 1</translation>
        </message>
        <message>
            <source>line of sight not fitted</source>
            <comment>line of sight not fitted</comment>
            <translation>Blicklinie nicht bestimmt</translation>
        </message>
        <message>
            <source>line of sight steadily beside the target</source>
            <comment>line of sight steadily beside the target</comment>
            <translation>Blick ständig etwas neben dem Ziel</translation>
        </message>
        <message>
            <source>longer than</source>
            <comment>longer than</comment>
            <translation>länger als</translation>
        </message>
        <message>
            <source>longest stretch</source>
            <comment>longest stretch</comment>
            <translation>längstes Stück</translation>
        </message>
        <message>
            <source>lost while it dropped</source>
            <comment>lost while it dropped</comment>
            <translation>beim Absinken aus dem Bild verloren</translation>
        </message>
        <message>
            <source>low frame rate</source>
            <comment>low frame rate</comment>
            <translation>niedrige Bildrate</translation>
        </message>
        <message>
            <source>made from clips</source>
            <comment>made from clips</comment>
            <translation>aus Filmen gemacht</translation>
        </message>
        <message>
            <source>made from clips: the times between the sets are the plan's, nobody was there</source>
            <comment>made from clips: the times between the sets are the plan's, nobody was there</comment>
            <translation>aus Filmen gemacht: die Zeiten zwischen den Durchgängen sind die des Plans, niemand war da</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>marks on the wall</comment>
            <translation>Marken an der Wand</translation>
        </message>
        <message>
            <source>measured only part of the time</source>
            <comment>measured only part of the time</comment>
            <translation>nur einen Teil der Zeit gemessen</translation>
        </message>
        <message>
            <source>measured too unsteadily for so small a movement</source>
            <comment>measured too unsteadily for so small a movement</comment>
            <translation>zu unruhig gemessen für eine so kleine Bewegung</translation>
        </message>
        <message>
            <source>measured with a card</source>
            <comment>measured with a card</comment>
            <translation>mit einer Karte gemessen</translation>
        </message>
        <message>
            <source>measured with a sheet</source>
            <comment>measured with a sheet</comment>
            <translation>mit einem Blatt gemessen</translation>
        </message>
        <message>
            <source>measuring was starting again</source>
            <comment>measuring was starting again</comment>
            <translation>das Messen startete gerade neu</translation>
        </message>
        <message>
            <source>met in the last {needed} sessions</source>
            <comment>met in the last {needed} sessions</comment>
            <translation>in den letzten {needed} Sitzungen erfüllt</translation>
        </message>
        <message>
            <source>minutes to settle {value}, asked at most {most}</source>
            <comment>minutes to settle {value}, asked at most {most}</comment>
            <translation>Minuten bis zur Beruhigung {value}, verlangt höchstens {most}</translation>
        </message>
        <message>
            <source>more than one fall</source>
            <comment>more than one fall</comment>
            <translation>mehr als ein Sturz</translation>
        </message>
        <message>
            <source>more was asked towards the end</source>
            <comment>more was asked towards the end</comment>
            <translation>gegen Ende war mehr vorgegeben</translation>
        </message>
        <message>
            <source>nausea after</source>
            <comment>nausea after</comment>
            <translation>Übelkeit nachher</translation>
        </message>
        <message>
            <source>nausea before</source>
            <comment>nausea before</comment>
            <translation>Übelkeit vorher</translation>
        </message>
        <message>
            <source>near</source>
            <comment>near</comment>
            <translation>nah</translation>
        </message>
        <message>
            <source>neck pain</source>
            <comment>neck pain</comment>
            <translation>Nackenschmerz</translation>
        </message>
        <message>
            <source>neither voice nor reader</source>
            <comment>neither voice nor reader</comment>
            <translation>weder Stimme noch Vorlesende</translation>
        </message>
        <message>
            <source>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</source>
            <comment>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</comment>
            <translation>nie bei fotosensibler Epilepsie oder durch Muster ausgelöster Migräne; nie mehr als drei Blitze in einer Sekunde</translation>
        </message>
        <message>
            <source>next morning</source>
            <comment>next morning</comment>
            <translation>nächster Morgen</translation>
        </message>
        <message>
            <source>no</source>
            <comment>no</comment>
            <translation>nein</translation>
        </message>
        <message>
            <source>no bouts</source>
            <comment>no bouts</comment>
            <translation>keine Übungszeiten</translation>
        </message>
        <message>
            <source>no change</source>
            <comment>no change</comment>
            <translation>keine Änderung</translation>
        </message>
        <message>
            <source>no clip of it</source>
            <comment>no clip of it</comment>
            <translation>kein Film davon</translation>
        </message>
        <message>
            <source>no cue when shut eyes open; the summary gives the share of time shut</source>
            <comment>no cue when shut eyes open; the summary gives the share of time shut</comment>
            <translation>kein Hinweis, wenn geschlossene Augen aufgehen; die Zusammenfassung nennt den Anteil der Zeit</translation>
        </message>
        <message>
            <source>no day to count yet</source>
            <comment>no day to count yet</comment>
            <translation>noch kein Tag zu zählen</translation>
        </message>
        <message>
            <source>no face in the picture</source>
            <comment>no face in the picture</comment>
            <translation>kein Gesicht im Bild</translation>
        </message>
        <message>
            <source>no face seen</source>
            <comment>no face seen</comment>
            <translation>kein Gesicht gesehen</translation>
        </message>
        <message>
            <source>no fall</source>
            <comment>no fall</comment>
            <translation>kein Sturz</translation>
        </message>
        <message>
            <source>no fall was told</source>
            <comment>no fall was told</comment>
            <translation>kein Sturz angegeben</translation>
        </message>
        <message>
            <source>no gaze set-up</source>
            <comment>no gaze set-up</comment>
            <translation>keine Einrichtung des Blicks</translation>
        </message>
        <message>
            <source>no helper</source>
            <comment>no helper</comment>
            <translation>keine Hilfsperson</translation>
        </message>
        <message>
            <source>no marks on the wall</source>
            <comment>no marks on the wall</comment>
            <translation>keine Marken an der Wand</translation>
        </message>
        <message>
            <source>no pain in shoulder or neck; keep the movement small at first</source>
            <comment>no pain in shoulder or neck; keep the movement small at first</comment>
            <translation>kein Schmerz in Schulter oder Nacken; die Bewegung anfangs klein halten</translation>
        </message>
        <message>
            <source>no picture from the camera</source>
            <comment>no picture from the camera</comment>
            <translation>kein Bild von der Kamera</translation>
        </message>
        <message>
            <source>no practice for {days} days</source>
            <comment>no practice for {days} days</comment>
            <translation>seit {days} Tagen nicht geübt</translation>
        </message>
        <message>
            <source>no practice that day</source>
            <comment>no practice that day</comment>
            <translation>an dem Tag nicht geübt</translation>
        </message>
        <message>
            <source>no reason recorded</source>
            <comment>no reason recorded</comment>
            <translation>kein Grund aufgezeichnet</translation>
        </message>
        <message>
            <source>no score at the start</source>
            <comment>no score at the start</comment>
            <translation>kein Wert am Anfang</translation>
        </message>
        <message>
            <source>no set-up</source>
            <comment>no set-up</comment>
            <translation>keine Einrichtung</translation>
        </message>
        <message>
            <source>no set-up for this person: generic values were used</source>
            <comment>no set-up for this person: generic values were used</comment>
            <translation>keine Einrichtung für diese Person: allgemeine Werte wurden verwendet</translation>
        </message>
        <message>
            <source>no throw was counted</source>
            <comment>no throw was counted</comment>
            <translation>es wurde kein Wurf gezählt</translation>
        </message>
        <message>
            <source>no turn was counted</source>
            <comment>no turn was counted</comment>
            <translation>es wurde keine Drehung gezählt</translation>
        </message>
        <message>
            <source>nobody has measured how well these eyes are read</source>
            <comment>nobody has measured how well these eyes are read</comment>
            <translation>niemand hat gemessen, wie gut diese Augen gelesen werden</translation>
        </message>
        <message>
            <source>nobody was asked</source>
            <comment>nobody was asked</comment>
            <translation>niemand wurde gefragt</translation>
        </message>
        <message>
            <source>none</source>
            <comment>none</comment>
            <translation>keiner</translation>
        </message>
        <message>
            <source>none was counted</source>
            <comment>none was counted</comment>
            <translation>es wurde keine gezählt</translation>
        </message>
        <message>
            <source>not answered</source>
            <comment>not answered</comment>
            <translation>nicht beantwortet</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>not asked</comment>
            <translation>nicht gefragt</translation>
        </message>
        <message>
            <source>not back to usual in the time that the plan allows</source>
            <comment>not back to usual in the time that the plan allows</comment>
            <translation>nicht wie sonst innerhalb der Zeit, die der Plan erlaubt</translation>
        </message>
        <message>
            <source>not below average ({bound} {limit} is below)</source>
            <comment>not below average ({bound} {limit} is below)</comment>
            <translation>nicht unter dem Durchschnitt ({bound} {limit} ist darunter)</translation>
        </message>
        <message>
            <source>not every stand was all the way up</source>
            <comment>not every stand was all the way up</comment>
            <translation>nicht jedes Mal ganz aufgestanden</translation>
        </message>
        <message>
            <source>not fully upright</source>
            <comment>not fully upright</comment>
            <translation>nicht ganz aufgerichtet</translation>
        </message>
        <message>
            <source>not hurt</source>
            <comment>not hurt</comment>
            <translation>ohne Verletzung</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>not known</comment>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>not known for the speed of eyes</source>
            <comment>not known for the speed of eyes</comment>
            <translation>für die Geschwindigkeit der Augen nicht bekannt</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>not measured</comment>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>not measured in each of them</source>
            <comment>not measured in each of them</comment>
            <translation>nicht in jeder davon gemessen</translation>
        </message>
        <message>
            <source>not reckoned for a share of what was asked</source>
            <comment>not reckoned for a share of what was asked</comment>
            <translation>nicht berechnet für einen Anteil am Vorgegebenen</translation>
        </message>
        <message>
            <source>not reckoned for shoulders and hands</source>
            <comment>not reckoned for shoulders and hands</comment>
            <translation>für Schultern und Hände nicht berechnet</translation>
        </message>
        <message>
            <source>not reckoned for standing up and bending down</source>
            <comment>not reckoned for standing up and bending down</comment>
            <translation>für Aufstehen und Bücken nicht berechnet</translation>
        </message>
        <message>
            <source>not recorded</source>
            <comment>not recorded</comment>
            <translation>nicht aufgezeichnet</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>not seen</comment>
            <translation>nicht zu sehen</translation>
        </message>
        <message>
            <source>not settled</source>
            <comment>not settled</comment>
            <translation>nicht beruhigt</translation>
        </message>
        <message>
            <source>not sure</source>
            <comment>not sure</comment>
            <translation>nicht sicher</translation>
        </message>
        <message>
            <source>not told</source>
            <comment>not told</comment>
            <translation>nicht zu erkennen</translation>
        </message>
        <message>
            <source>not unlocked yet</source>
            <comment>not unlocked yet</comment>
            <translation>noch nicht freigeschaltet</translation>
        </message>
        <message>
            <source>nothing is measured: led by voice and timed, the patient's own count</source>
            <comment>nothing is measured: led by voice and timed, the patient's own count</comment>
            <translation>nichts wird gemessen: von der Stimme geführt und nach Zeit, die Person zählt selbst</translation>
        </message>
        <message>
            <source>nothing is watched for in this exercise</source>
            <comment>nothing is watched for in this exercise</comment>
            <translation>bei dieser Übung wird auf nichts geachtet</translation>
        </message>
        <message>
            <source>nothing was asked for</source>
            <comment>nothing was asked for</comment>
            <translation>nichts war verlangt</translation>
        </message>
        <message>
            <source>nothing was measured</source>
            <comment>nothing was measured</comment>
            <translation>es wurde nichts gemessen</translation>
        </message>
        <message>
            <source>older: {text}</source>
            <comment>older: {text}</comment>
            <translation>älter: {text}</translation>
        </message>
        <message>
            <source>on looks kept back</source>
            <comment>on looks kept back</comment>
            <translation>an zurückgehaltenen Blicken</translation>
        </message>
        <message>
            <source>on the target</source>
            <comment>on the target</comment>
            <translation>auf dem Ziel</translation>
        </message>
        <message>
            <source>one fall</source>
            <comment>one fall</comment>
            <translation>ein Sturz</translation>
        </message>
        <message>
            <source>opens only with the patient's yes</source>
            <comment>opens only with the patient's yes</comment>
            <translation>öffnet sich nur mit dem Ja der Person</translation>
        </message>
        <message>
            <source>order</source>
            <comment>order</comment>
            <translation>Reihenfolge</translation>
        </message>
        <message>
            <source>outside any plan: {text}</source>
            <comment>outside any plan: {text}</comment>
            <translation>außerhalb jedes Plans: {text}</translation>
        </message>
        <message>
            <source>own pace</source>
            <comment>own pace</comment>
            <translation>eigenes Tempo</translation>
        </message>
        <message>
            <source>partner near and steady on their feet; hand over, do not throw</source>
            <comment>partner near and steady on their feet; hand over, do not throw</comment>
            <translation>die andere Person nah und sicher auf den Füßen; übergeben, nicht werfen</translation>
        </message>
        <message>
            <source>peak speed</source>
            <comment>peak speed</comment>
            <translation>Spitzengeschwindigkeit</translation>
        </message>
        <message>
            <source>peak speed of an eye jump (beyond a webcam's frame rate)</source>
            <comment>peak speed of an eye jump (beyond a webcam's frame rate)</comment>
            <translation>Spitzengeschwindigkeit eines Augensprungs (jenseits der Bildrate einer Webcam)</translation>
        </message>
        <message>
            <source>picture blurred</source>
            <comment>picture blurred</comment>
            <translation>Bild unscharf</translation>
        </message>
        <message>
            <source>picture too coarse</source>
            <comment>picture too coarse</comment>
            <translation>Bild zu grob</translation>
        </message>
        <message>
            <source>pictures missing</source>
            <comment>pictures missing</comment>
            <translation>Bilder fehlen</translation>
        </message>
        <message>
            <source>positional spin on bending, looking up or tilting</source>
            <comment>positional spin on bending, looking up or tilting</comment>
            <translation>lageabhängiger Drehschwindel beim Bücken, Hochschauen oder Neigen</translation>
        </message>
        <message>
            <source>possible fall</source>
            <comment>possible fall</comment>
            <translation>möglicher Sturz</translation>
        </message>
        <message>
            <source>possible fall seen in {what}</source>
            <comment>possible fall seen in {what}</comment>
            <translation>möglicher Sturz gesehen bei {what}</translation>
        </message>
        <message>
            <source>possible fall seen in {what}: {said}</source>
            <comment>possible fall seen in {what}: {said}</comment>
            <translation>möglicher Sturz gesehen bei {what}: {said}</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it</source>
            <comment>possible fall, and the session ended with it</comment>
            <translation>möglicher Sturz, und die Sitzung endete damit</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it: {said}</source>
            <comment>possible fall, and the session ended with it: {said}</comment>
            <translation>möglicher Sturz, und die Sitzung endete damit: {said}</translation>
        </message>
        <message>
            <source>practised away from the camera, as the patient says</source>
            <comment>practised away from the camera, as the patient says</comment>
            <translation>ohne die Kamera geübt, wie die Patientin oder der Patient sagt</translation>
        </message>
        <message>
            <source>practised {done} of {asked} bouts in {days} days</source>
            <comment>practised {done} of {asked} bouts in {days} days</comment>
            <translation>{done} von {asked} Übungszeiten in {days} Tagen</translation>
        </message>
        <message>
            <source>record damaged</source>
            <comment>record damaged</comment>
            <translation>Aufzeichnung beschädigt</translation>
        </message>
        <message>
            <source>red-flag answer: no practice</source>
            <comment>red-flag answer: no practice</comment>
            <translation>Warnzeichen bejaht: nicht geübt</translation>
        </message>
        <message>
            <source>repetitions</source>
            <comment>repetitions</comment>
            <translation>Wiederholungen</translation>
        </message>
        <message>
            <source>reported by the patient, not seen</source>
            <comment>reported by the patient, not seen</comment>
            <translation>von der Patientin oder dem Patienten berichtet, nicht gesehen</translation>
        </message>
        <message>
            <source>rest of the day</source>
            <comment>rest of the day</comment>
            <translation>restlicher Tag</translation>
        </message>
        <message>
            <source>right</source>
            <comment>right</comment>
            <translation>rechts</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>right eye only</comment>
            <translation>nur das rechte Auge</translation>
        </message>
        <message>
            <source>rise of the score {value}, asked at most {most}</source>
            <comment>rise of the score {value}, asked at most {most}</comment>
            <translation>Anstieg des Werts {value}, verlangt höchstens {most}</translation>
        </message>
        <message>
            <source>rose</source>
            <comment>rose</comment>
            <translation>gestiegen</translation>
        </message>
        <message>
            <source>said not to be well</source>
            <comment>said not to be well</comment>
            <translation>sagte, es gehe nicht gut</translation>
        </message>
        <message>
            <source>said that medicines have changed</source>
            <comment>said that medicines have changed</comment>
            <translation>hat angegeben, dass sich Medikamente geändert haben</translation>
        </message>
        <message>
            <source>said to be all right</source>
            <comment>said to be all right</comment>
            <translation>sagte, es gehe gut</translation>
        </message>
        <message>
            <source>said to the patient</source>
            <comment>said to the patient</comment>
            <translation>der Person gesagt</translation>
        </message>
        <message>
            <source>sat at another distance</source>
            <comment>sat at another distance</comment>
            <translation>saß in anderem Abstand</translation>
        </message>
        <message>
            <source>score too high at the start for more than seated work</source>
            <comment>score too high at the start for more than seated work</comment>
            <translation>Wert am Anfang zu hoch für mehr als Üben im Sitzen</translation>
        </message>
        <message>
            <source>seated until mastered; a soft object; a dropped one stays on the floor</source>
            <comment>seated until mastered; a soft object; a dropped one stays on the floor</comment>
            <translation>sitzend, bis es gelingt; ein weicher Gegenstand; was fällt, bleibt liegen</translation>
        </message>
        <message>
            <source>seen double in today already</source>
            <comment>seen double in today already</comment>
            <translation>heute darin schon doppelt gesehen</translation>
        </message>
        <message>
            <source>seen to stay down</source>
            <comment>seen to stay down</comment>
            <translation>blieb sichtbar unten</translation>
        </message>
        <message>
            <source>session ended before it</source>
            <comment>session ended before it</comment>
            <translation>Sitzung endete vorher</translation>
        </message>
        <message>
            <source>session {number} of the last {needed}: {why}</source>
            <comment>session {number} of the last {needed}: {why}</comment>
            <translation>Sitzung {number} der letzten {needed}: {why}</translation>
        </message>
        <message>
            <source>sessions dated after today: {count}; was that computer's clock right?</source>
            <comment>sessions dated after today: {count}; was that computer's clock right?</comment>
            <translation>Sitzungen mit einem Datum nach heute: {count}; ging die Uhr jenes Computers richtig?</translation>
        </message>
        <message>
            <source>set-up not known</source>
            <comment>set-up not known</comment>
            <translation>Einrichtung nicht bekannt</translation>
        </message>
        <message>
            <source>set-up unusable</source>
            <comment>set-up unusable</comment>
            <translation>Einrichtung nicht verwendbar</translation>
        </message>
        <message>
            <source>share measured {value}, asked at least {least} %</source>
            <comment>share measured {value}, asked at least {least} %</comment>
            <translation>gemessener Anteil {value}, verlangt mindestens {least} %</translation>
        </message>
        <message>
            <source>share on target {value}, asked at least {least} %</source>
            <comment>share on target {value}, asked at least {least} %</comment>
            <translation>Anteil auf dem Ziel {value}, verlangt mindestens {least} %</translation>
        </message>
        <message>
            <source>short of it</source>
            <comment>short of it</comment>
            <translation>davor</translation>
        </message>
        <message>
            <source>shoulders and hands not all seen</source>
            <comment>shoulders and hands not all seen</comment>
            <translation>Schultern und Hände nicht alle zu sehen</translation>
        </message>
        <message>
            <source>sideways</source>
            <comment>sideways</comment>
            <translation>seitwärts</translation>
        </message>
        <message>
            <source>single vision</source>
            <comment>single vision</comment>
            <translation>Einstärkenbrille</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>sitzend</translation>
        </message>
        <message>
            <source>slow down when the target blurs or jumps</source>
            <comment>slow down when the target blurs or jumps</comment>
            <translation>langsamer werden, wenn das Ziel verschwimmt oder springt</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>slower than the beat</comment>
            <translation>langsamer als der Takt</translation>
        </message>
        <message>
            <source>slower was asked towards the end</source>
            <comment>slower was asked towards the end</comment>
            <translation>gegen Ende war es langsamer vorgegeben</translation>
        </message>
        <message>
            <source>slurred speech</source>
            <comment>slurred speech</comment>
            <translation>verwaschene Sprache</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>soft surface</comment>
            <translation>weicher Boden</translation>
        </message>
        <message>
            <source>some sway is normal; hands go to the wall or the chair as soon as needed</source>
            <comment>some sway is normal; hands go to the wall or the chair as soon as needed</comment>
            <translation>etwas Schwanken ist normal; Hände an Wand oder Stuhl, sobald es nötig ist</translation>
        </message>
        <message>
            <source>source</source>
            <comment>source</comment>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>spread</source>
            <comment>spread</comment>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>stehend</translation>
        </message>
        <message>
            <source>stay within the neck limit; stop at neck pain or a tingling arm</source>
            <comment>stay within the neck limit; stop at neck pain or a tingling arm</comment>
            <translation>innerhalb der Grenze für den Nacken bleiben; bei Nackenschmerz oder kribbelndem Arm aufhören</translation>
        </message>
        <message>
            <source>stayed</source>
            <comment>stayed</comment>
            <translation>blieb</translation>
        </message>
        <message>
            <source>stop when dizziness goes beyond the agreed score or does not settle</source>
            <comment>stop when dizziness goes beyond the agreed score or does not settle</comment>
            <translation>aufhören, wenn der Schwindel über den vereinbarten Wert geht oder nicht nachlässt</translation>
        </message>
        <message>
            <source>stop where the image doubles, then move the finger back out</source>
            <comment>stop where the image doubles, then move the finger back out</comment>
            <translation>anhalten, wo das Bild doppelt wird, dann den Finger wieder wegführen</translation>
        </message>
        <message>
            <source>stopped early</source>
            <comment>stopped early</comment>
            <translation>vorzeitig beendet</translation>
        </message>
        <message>
            <source>stopped unwell</source>
            <comment>stopped unwell</comment>
            <translation>wegen Unwohlsein beendet</translation>
        </message>
        <message>
            <source>stretch not measured</source>
            <comment>stretch not measured</comment>
            <translation>Abschnitt nicht gemessen</translation>
        </message>
        <message>
            <source>sudden drop of the head in a set not seen to its end: {said}</source>
            <comment>sudden drop of the head in a set not seen to its end: {said}</comment>
            <translation>der Kopf sank in einem Durchgang plötzlich, das Ende war nicht zu sehen: {said}</translation>
        </message>
        <message>
            <source>sudden drop of the head in {what} not seen to its end: {said}</source>
            <comment>sudden drop of the head in {what} not seen to its end: {said}</comment>
            <translation>der Kopf sank bei {what} plötzlich, das Ende war nicht zu sehen: {said}</translation>
        </message>
        <message>
            <source>sudden hearing loss</source>
            <comment>sudden hearing loss</comment>
            <translation>plötzlicher Hörverlust</translation>
        </message>
        <message>
            <source>sudden severe headache</source>
            <comment>sudden severe headache</comment>
            <translation>plötzliche starke Kopfschmerzen</translation>
        </message>
        <message>
            <source>support not confirmed</source>
            <comment>support not confirmed</comment>
            <translation>Halt nicht bestätigt</translation>
        </message>
        <message>
            <source>sway</source>
            <comment>sway</comment>
            <translation>Schwanken</translation>
        </message>
        <message>
            <source>symptom score above the limit of the plan</source>
            <comment>symptom score above the limit of the plan</comment>
            <translation>Beschwerdewert über der Grenze des Plans</translation>
        </message>
        <message>
            <source>symptom score not answered</source>
            <comment>symptom score not answered</comment>
            <translation>Beschwerdewert nicht beantwortet</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session</source>
            <comment>symptoms above the plan's limit ended the session</comment>
            <translation>Beschwerden über der Grenze des Plans beendeten die Sitzung</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session ({score} of 10 at the end)</source>
            <comment>symptoms above the plan's limit ended the session ({score} of 10 at the end)</comment>
            <translation>Beschwerden über der Grenze des Plans beendeten die Sitzung (am Ende {score} von 10)</translation>
        </message>
        <message>
            <source>symptoms did not settle in the time that the plan allows</source>
            <comment>symptoms did not settle in the time that the plan allows</comment>
            <translation>Beschwerden beruhigten sich nicht in der Zeit, die der Plan erlaubt</translation>
        </message>
        <message>
            <source>symptoms not settled within the time of the plan</source>
            <comment>symptoms not settled within the time of the plan</comment>
            <translation>Beschwerden nicht in der Zeit des Plans beruhigt</translation>
        </message>
        <message>
            <source>taken together in the clinic</source>
            <comment>taken together in the clinic</comment>
            <translation>gemeinsam in der Praxis gemacht</translation>
        </message>
        <message>
            <source>target not said to be clear</source>
            <comment>target not said to be clear</comment>
            <translation>Ziel nicht als klar angegeben</translation>
        </message>
        <message>
            <source>target said to be clear</source>
            <comment>target said to be clear</comment>
            <translation>Ziel nach Angabe klar</translation>
        </message>
        <message>
            <source>tempo</source>
            <comment>tempo</comment>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>the camera does not count it in this version; it is led and timed</source>
            <comment>the camera does not count it in this version; it is led and timed</comment>
            <translation>die Kamera zählt es in dieser Version nicht; es wird geführt und nach Zeit gemacht</translation>
        </message>
        <message>
            <source>the camera does not count this exercise in this version</source>
            <comment>the camera does not count this exercise in this version</comment>
            <translation>die Kamera zählt diese Übung in dieser Version nicht</translation>
        </message>
        <message>
            <source>the camera was gone for a while: what was done then is missing in its count</source>
            <comment>the camera was gone for a while: what was done then is missing in its count</comment>
            <translation>die Kamera war eine Zeit lang weg: was in dieser Zeit gemacht wurde, fehlt in ihrer Zählung</translation>
        </message>
        <message>
            <source>the chair's height: the table holds for 43 cm and arms crossed only</source>
            <comment>the chair's height: the table holds for 43 cm and arms crossed only</comment>
            <translation>die Höhe des Stuhls: die Tabelle gilt nur für 43 cm und gekreuzte Arme</translation>
        </message>
        <message>
            <source>the day has not come yet on which the therapist found it met ({day})</source>
            <comment>the day has not come yet on which the therapist found it met ({day})</comment>
            <translation>der Tag, an dem sie von der Therapie als erfüllt befunden wurde, ist noch nicht gekommen ({day})</translation>
        </message>
        <message>
            <source>the eyes can't be judged in nods behind bi- or varifocal glasses</source>
            <comment>the eyes can't be judged in nods behind bi- or varifocal glasses</comment>
            <translation>hinter Bifokal- oder Gleitsichtgläsern lassen sich die Augen beim Nicken nicht beurteilen</translation>
        </message>
        <message>
            <source>the eyes look unlike those of the set-up: another light, or other glasses</source>
            <comment>the eyes look unlike those of the set-up: another light, or other glasses</comment>
            <translation>die Augen sehen anders aus als bei der Einrichtung: anderes Licht oder eine andere Brille</translation>
        </message>
        <message>
            <source>the eyes turned in by {value} degrees (within {error}) as the finger came near</source>
            <comment>the eyes turned in by {value} degrees (within {error}) as the finger came near</comment>
            <translation>die Augen drehten sich um {value} Grad (auf {error} genau) einwärts, als der Finger näher kam</translation>
        </message>
        <message>
            <source>the eyes went beyond what the set-up taught</source>
            <comment>the eyes went beyond what the set-up taught</comment>
            <translation>die Augen gingen weiter, als die Einrichtung gelehrt hat</translation>
        </message>
        <message>
            <source>the eyes were never seen at rest on a target</source>
            <comment>the eyes were never seen at rest on a target</comment>
            <translation>die Augen wurden nie in Ruhe auf einem Ziel gesehen</translation>
        </message>
        <message>
            <source>the feet and the stance</source>
            <comment>the feet and the stance</comment>
            <translation>die Füße und der Stand</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether it was on the target</source>
            <comment>the gaze is read too coarsely to tell whether it was on the target</comment>
            <translation>der Blick ist zu grob gemessen, um zu sagen, ob er auf dem Ziel war</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether the eyes arrived</source>
            <comment>the gaze is read too coarsely to tell whether the eyes arrived</comment>
            <translation>der Blick ist zu grob gemessen, um zu sagen, ob die Augen ankamen</translation>
        </message>
        <message>
            <source>the hand, its distance and its side</source>
            <comment>the hand, its distance and its side</comment>
            <translation>die Hand, ihr Abstand und ihre Seite</translation>
        </message>
        <message>
            <source>the hands</source>
            <comment>the hands</comment>
            <translation>die Hände</translation>
        </message>
        <message>
            <source>the head was not measured</source>
            <comment>the head was not measured</comment>
            <translation>der Kopf wurde nicht gemessen</translation>
        </message>
        <message>
            <source>the lids were not measured</source>
            <comment>the lids were not measured</comment>
            <translation>die Lider wurden nicht gemessen</translation>
        </message>
        <message>
            <source>the line of sight was not measured</source>
            <comment>the line of sight was not measured</comment>
            <translation>die Blicklinie wurde nicht gemessen</translation>
        </message>
        <message>
            <source>the movement that was asked for is itself a sway or a stand</source>
            <comment>the movement that was asked for is itself a sway or a stand</comment>
            <translation>die verlangte Bewegung ist selbst ein Schwanken oder Aufstehen</translation>
        </message>
        <message>
            <source>the neck point was measured for less than 5 seconds</source>
            <comment>the neck point was measured for less than 5 seconds</comment>
            <translation>der Halspunkt wurde weniger als 5 Sekunden gemessen</translation>
        </message>
        <message>
            <source>the object itself: the height of a throw is judged from the wrists</source>
            <comment>the object itself: the height of a throw is judged from the wrists</comment>
            <translation>der Gegenstand selbst: die Höhe eines Wurfs wird nach den Handgelenken beurteilt</translation>
        </message>
        <message>
            <source>the patient wants nothing to move on the screen</source>
            <comment>the patient wants nothing to move on the screen</comment>
            <translation>die Person will, dass sich auf dem Bildschirm nichts bewegt</translation>
        </message>
        <message>
            <source>the place of the target isn't known</source>
            <comment>the place of the target isn't known</comment>
            <translation>der Ort des Ziels ist nicht bekannt</translation>
        </message>
        <message>
            <source>the plan gives no age group or sex for the table</source>
            <comment>the plan gives no age group or sex for the table</comment>
            <translation>der Plan nennt für die Tabelle weder Altersgruppe noch Geschlecht</translation>
        </message>
        <message>
            <source>the plan has no first day</source>
            <comment>the plan has no first day</comment>
            <translation>der Plan hat keinen ersten Tag</translation>
        </message>
        <message>
            <source>the plan taken differs from the one handed out: {words}</source>
            <comment>the plan taken differs from the one handed out: {words}</comment>
            <translation>Der Plan, der hier gilt, ist ein anderer als der ausgegebene: {words}</translation>
        </message>
        <message>
            <source>the set ended while the head dropped</source>
            <comment>the set ended while the head dropped</comment>
            <translation>der Durchgang endete, während der Kopf absackte</translation>
        </message>
        <message>
            <source>the set-up could not be used, so nothing rests on it</source>
            <comment>the set-up could not be used, so nothing rests on it</comment>
            <translation>die Einrichtung war nicht verwendbar, darum beruht nichts auf ihr</translation>
        </message>
        <message>
            <source>the set-up was too poor for the line of sight</source>
            <comment>the set-up was too poor for the line of sight</comment>
            <translation>die Einrichtung war für die Blicklinie zu schlecht</translation>
        </message>
        <message>
            <source>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</source>
            <comment>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</comment>
            <translation>das Bild der Einrichtung zeigte zu wenig vom bewegten Gesicht: Die Winkel des Kopfes können um 1 bis 2 Grad falsch sein, Drehungen um ein Zehntel</translation>
        </message>
        <message>
            <source>the stage log says that another exercise was asked for</source>
            <comment>the stage log says that another exercise was asked for</comment>
            <translation>laut Ablauf war eine andere Übung vorgegeben</translation>
        </message>
        <message>
            <source>the symptom rule ended it</source>
            <comment>the symptom rule ended it</comment>
            <translation>durch die Beschwerderegel beendet</translation>
        </message>
        <message>
            <source>the table ends before this age</source>
            <comment>the table ends before this age</comment>
            <translation>die Tabelle endet vor diesem Alter</translation>
        </message>
        <message>
            <source>the targets lie too near to each other, or their place isn't known</source>
            <comment>the targets lie too near to each other, or their place isn't known</comment>
            <translation>die Ziele sind zu nah beieinander, oder ihr Ort ist nicht bekannt</translation>
        </message>
        <message>
            <source>the test lasts 30 seconds, this set did not</source>
            <comment>the test lasts 30 seconds, this set did not</comment>
            <translation>der Test dauert 30 Sekunden, dieser Durchgang nicht</translation>
        </message>
        <message>
            <source>the therapist found it met on {day}</source>
            <comment>the therapist found it met on {day}</comment>
            <translation>von der Therapie als erfüllt befunden am {day}</translation>
        </message>
        <message>
            <source>the way of the roll, where the width between the shoulders does not tell it</source>
            <comment>the way of the roll, where the width between the shoulders does not tell it</comment>
            <translation>die Richtung des Kreisens, wo die Breite zwischen den Schultern sie nicht verrät</translation>
        </message>
        <message>
            <source>throw too low</source>
            <comment>throw too low</comment>
            <translation>Wurf zu niedrig</translation>
        </message>
        <message>
            <source>time held</source>
            <comment>time held</comment>
            <translation>gehaltene Zeit</translation>
        </message>
        <message>
            <source>time in all</source>
            <comment>time in all</comment>
            <translation>Zeit insgesamt</translation>
        </message>
        <message>
            <source>time that was measured</source>
            <comment>time that was measured</comment>
            <translation>gemessene Zeit</translation>
        </message>
        <message>
            <source>time to settle</source>
            <comment>time to settle</comment>
            <translation>Zeit bis zur Beruhigung</translation>
        </message>
        <message>
            <source>tingling arm</source>
            <comment>tingling arm</comment>
            <translation>Kribbeln im Arm</translation>
        </message>
        <message>
            <source>told of falls in the last week: {what}</source>
            <comment>told of falls in the last week: {what}</comment>
            <translation>hat Stürze in der letzten Woche angegeben: {what}</translation>
        </message>
        <message>
            <source>too dark</source>
            <comment>too dark</comment>
            <translation>zu dunkel</translation>
        </message>
        <message>
            <source>too far from the camera</source>
            <comment>too far from the camera</comment>
            <translation>zu weit von der Kamera</translation>
        </message>
        <message>
            <source>too few frames</source>
            <comment>too few frames</comment>
            <translation>zu wenige Bilder</translation>
        </message>
        <message>
            <source>too few pictures a second for so fast a movement</source>
            <comment>too few pictures a second for so fast a movement</comment>
            <translation>zu wenige Bilder pro Sekunde für eine so schnelle Bewegung</translation>
        </message>
        <message>
            <source>too few samples in a turn</source>
            <comment>too few samples in a turn</comment>
            <translation>zu wenige Messpunkte in einer Drehung</translation>
        </message>
        <message>
            <source>too few turns or samples to tell</source>
            <comment>too few turns or samples to tell</comment>
            <translation>zu wenige Drehungen oder Messwerte, um es zu sagen</translation>
        </message>
        <message>
            <source>too few turns with the eyes measured at both ends</source>
            <comment>too few turns with the eyes measured at both ends</comment>
            <translation>zu wenige Drehungen, in denen die Augen an beiden Enden gemessen wurden</translation>
        </message>
        <message>
            <source>too little was measured: a stand may be missing</source>
            <comment>too little was measured: a stand may be missing</comment>
            <translation>zu wenig gemessen: ein Aufstehen kann fehlen</translation>
        </message>
        <message>
            <source>too uneven to tell</source>
            <comment>too uneven to tell</comment>
            <translation>zu ungleichmäßig, um es zu sagen</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds</source>
            <comment>turned farther than the set-up holds</comment>
            <translation>weiter gedreht, als die Einrichtung reicht</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds: its error there is not known</source>
            <comment>turned farther than the set-up holds: its error there is not known</comment>
            <translation>weiter gedreht, als die Einrichtung reicht: Ihr Fehler ist dort nicht bekannt</translation>
        </message>
        <message>
            <source>typed in</source>
            <comment>typed in</comment>
            <translation>eingegeben</translation>
        </message>
        <message>
            <source>unable to stand or walk</source>
            <comment>unable to stand or walk</comment>
            <translation>kann nicht stehen oder gehen</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <comment>uncertainty</comment>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>unsteadiness after</source>
            <comment>unsteadiness after</comment>
            <translation>Unsicherheit nachher</translation>
        </message>
        <message>
            <source>unsteadiness before</source>
            <comment>unsteadiness before</comment>
            <translation>Unsicherheit vorher</translation>
        </message>
        <message>
            <source>up</source>
            <comment>up</comment>
            <translation>aufwärts</translation>
        </message>
        <message>
            <source>usual value</source>
            <comment>usual value</comment>
            <translation>üblicher Wert</translation>
        </message>
        <message>
            <source>vergence change</source>
            <comment>vergence change</comment>
            <translation>Änderung der Vergenz</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>gehend</translation>
        </message>
        <message>
            <source>weakness or numbness of face, arm or leg</source>
            <comment>weakness or numbness of face, arm or leg</comment>
            <translation>Schwäche oder Taubheit von Gesicht, Arm oder Bein</translation>
        </message>
        <message>
            <source>went along</source>
            <comment>went along</comment>
            <translation>ging mit</translation>
        </message>
        <message>
            <source>went on, as the therapist had said today</source>
            <comment>went on, as the therapist had said today</comment>
            <translation>hat weitergemacht, wie von der Therapiepraxis heute erlaubt</translation>
        </message>
        <message>
            <source>what it is counted from was never measured</source>
            <comment>what it is counted from was never measured</comment>
            <translation>woran gezählt wird, wurde nie gemessen</translation>
        </message>
        <message>
            <source>where the eyes point behind shut lids (asked when they open)</source>
            <comment>where the eyes point behind shut lids (asked when they open)</comment>
            <translation>wohin die Augen hinter geschlossenen Lidern zeigen (gefragt, wenn sie aufgehen)</translation>
        </message>
        <message>
            <source>whether the eyes followed the object (whether the head went along is told)</source>
            <comment>whether the eyes followed the object (whether the head went along is told)</comment>
            <translation>ob die Augen dem Gegenstand folgten (ob der Kopf mitging, wird gesagt)</translation>
        </message>
        <message>
            <source>whether the target was clear (asked after the set)</source>
            <comment>whether the target was clear (asked after the set)</comment>
            <translation>ob das Ziel klar war (nach dem Durchgang gefragt)</translation>
        </message>
        <message>
            <source>whether there was a set-up is not known, nor its error</source>
            <comment>whether there was a set-up is not known, nor its error</comment>
            <translation>ob es eine Einrichtung gab, ist nicht bekannt, auch nicht ihr Fehler</translation>
        </message>
        <message>
            <source>which arm, unless both wrists are seen in the bend (then it is asked)</source>
            <comment>which arm, unless both wrists are seen in the bend (then it is asked)</comment>
            <translation>welcher Arm, außer beide Handgelenke sind beim Bücken zu sehen (sonst wird danach gefragt)</translation>
        </message>
        <message>
            <source>who looks at the floor lowers the lids, which reads as shut eyes</source>
            <comment>who looks at the floor lowers the lids, which reads as shut eyes</comment>
            <translation>wer auf den Boden schaut, senkt die Lider, und das sieht aus wie geschlossene Augen</translation>
        </message>
        <message>
            <source>why</source>
            <comment>why</comment>
            <translation>warum</translation>
        </message>
        <message>
            <source>without a set-up its error is not known</source>
            <comment>without a set-up its error is not known</comment>
            <translation>ohne Einrichtung ist ihr Fehler nicht bekannt</translation>
        </message>
        <message>
            <source>x1 viewing, pitch</source>
            <comment>x1 viewing, pitch</comment>
            <translation>x1-Blickstabilisierung, Nicken</translation>
        </message>
        <message>
            <source>x1 viewing, pitch: the head nods, the eyes stay on a still target</source>
            <comment>x1 viewing, pitch: the head nods, the eyes stay on a still target</comment>
            <translation>x1-Blickstabilisierung, Nicken: der Kopf nickt, die Augen bleiben auf einem ruhigen Ziel</translation>
        </message>
        <message>
            <source>x1 viewing, yaw</source>
            <comment>x1 viewing, yaw</comment>
            <translation>x1-Blickstabilisierung, Drehen</translation>
        </message>
        <message>
            <source>x1 viewing, yaw: the head turns, the eyes stay on a still target</source>
            <comment>x1 viewing, yaw: the head turns, the eyes stay on a still target</comment>
            <translation>x1-Blickstabilisierung, Drehen: der Kopf dreht, die Augen bleiben auf einem ruhigen Ziel</translation>
        </message>
        <message>
            <source>x2 viewing, pitch</source>
            <comment>x2 viewing, pitch</comment>
            <translation>x2-Blickstabilisierung, Nicken</translation>
        </message>
        <message>
            <source>x2 viewing, pitch: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, pitch: the target moves against the head, the eyes stay on it</comment>
            <translation>x2-Blickstabilisierung, Nicken: das Ziel bewegt sich gegen den Kopf, die Augen bleiben darauf</translation>
        </message>
        <message>
            <source>x2 viewing, yaw</source>
            <comment>x2 viewing, yaw</comment>
            <translation>x2-Blickstabilisierung, Drehen</translation>
        </message>
        <message>
            <source>x2 viewing, yaw: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, yaw: the target moves against the head, the eyes stay on it</comment>
            <translation>x2-Blickstabilisierung, Drehen: das Ziel bewegt sich gegen den Kopf, die Augen bleiben darauf</translation>
        </message>
        <message>
            <source>yes</source>
            <comment>yes</comment>
            <translation>ja</translation>
        </message>
        <message>
            <source>yes to: {what}</source>
            <comment>yes to: {what}</comment>
            <translation>ja zu: {what}</translation>
        </message>
        <message>
            <source>{count} bouts a day</source>
            <comment>{count} bouts a day</comment>
            <translation>{count} Übungszeiten am Tag</translation>
        </message>
        <message>
            <source>{count} lines could not be read</source>
            <comment>{count} lines could not be read</comment>
            <translation>nicht lesbare Zeilen: {count}</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known</comment>
            <translation>nicht lesbare Zeilen: {count}, darunter die erste: wessen Sitzung es ist und nach welchem Plan, ist nicht bekannt</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</comment>
            <translation>nicht lesbare Zeilen: {count}, darunter die erste: wessen Sitzung es ist und nach welchem Plan, ist nicht bekannt; sie kann vom Beispiel sein</translation>
        </message>
        <message>
            <source>{count} of {needed} sessions</source>
            <comment>{count} of {needed} sessions</comment>
            <translation>{count} von {needed} Sitzungen</translation>
        </message>
        <message>
            <source>{count} plan files differ and start on the same day: the newest file is taken</source>
            <comment>{count} plan files differ and start on the same day: the newest file is taken</comment>
            <translation>{count} Plandateien unterscheiden sich und beginnen am selben Tag: Die neueste Datei gilt</translation>
        </message>
        <message>
            <source>{first} to {last} beats a minute</source>
            <comment>{first} to {last} beats a minute</comment>
            <translation>{first} bis {last} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}</source>
            <comment>{gaze}; planned {planned}</comment>
            <translation>{gaze}; geplant {planned}</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} or more</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} or more</comment>
            <translation>{gaze}; geplant {planned}; Leitlinie, wie zitiert: {least} oder mehr</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</comment>
            <translation>{gaze}; geplant {planned}; Leitlinie, wie zitiert: {least} bis {most}</translation>
        </message>
        <message>
            <source>{least} to {most} degrees to each side</source>
            <comment>{least} to {most} degrees to each side</comment>
            <translation>{least} bis {most} Grad zu jeder Seite</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>{low} to {high}</comment>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>{number} ± {most}</source>
            <comment>{number} ± {most}</comment>
            <translation>{number} ± {most}</translation>
        </message>
        <message>
            <source>{opening}: met; {why}</source>
            <comment>{opening}: met; {why}</comment>
            <translation>{opening}: erfüllt; {why}</translation>
        </message>
        <message>
            <source>{opening}: not met; {why}</source>
            <comment>{opening}: not met; {why}</comment>
            <translation>{opening}: nicht erfüllt; {why}</translation>
        </message>
        <message>
            <source>{practice}, and {count} beyond a day's dose</source>
            <comment>{practice}, and {count} beyond a day's dose</comment>
            <translation>{practice}, und {count} über die Tagesdosis hinaus</translation>
        </message>
        <message>
            <source>{practice}; asked: {bouts} a day on {days} days; done {share} %</source>
            <comment>{practice}; asked: {bouts} a day on {days} days; done {share} %</comment>
            <translation>{practice}; vorgegeben: {bouts} am Tag an {days} Tagen; gemacht {share} %</translation>
        </message>
        <message>
            <source>{practice}; no plan at hand to compare with</source>
            <comment>{practice}; no plan at hand to compare with</comment>
            <translation>{practice}; kein Plan zum Vergleichen vorhanden</translation>
        </message>
        <message>
            <source>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate} an dem einen gezählten Tag ({measured} gemessen, {reported} von der Kamera nicht gesehen)</translation>
        </message>
        <message>
            <source>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate} an {days} Tagen in der Woche, in den letzten {length} Tagen ({measured} gemessen, {reported} von der Kamera nicht gesehen)</translation>
        </message>
        <message>
            <source>{share} % of the time</source>
            <comment>{share} % of the time</comment>
            <translation>{share} % der Zeit</translation>
        </message>
        <message>
            <source>{share} % of the time fewer than {value} pictures a second</source>
            <comment>{share} % of the time fewer than {value} pictures a second</comment>
            <translation>{share} % der Zeit weniger als {value} Bilder pro Sekunde</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % der Zeit sahen die Augen anders aus als bei der Einrichtung (anderes Licht oder andere Brille)</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes went beyond the set-up's range</source>
            <comment>{share} % of the time the eyes went beyond the set-up's range</comment>
            <translation>{share} % der Zeit waren die Augen außerhalb des Bereichs der Einrichtung</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % der Zeit wurden die Augen nicht gelesen: Sie sahen anders aus als bei der Einrichtung (anderes Licht oder andere Brille)</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>{tempo} beats a minute</comment>
            <translation>{tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the gravest one shown)</source>
            <comment>{text} ({count} sessions, the gravest one shown)</comment>
            <translation>{text} ({count} Sitzungen, die schwerste gezeigt)</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the last one shown)</source>
            <comment>{text} ({count} sessions, the last one shown)</comment>
            <translation>{text} ({count} Sitzungen, die letzte gezeigt)</translation>
        </message>
        <message>
            <source>{value} beats/min</source>
            <comment>{value} beats/min</comment>
            <translation>{value} Schläge/min</translation>
        </message>
        <message>
            <source>{value} frames/s</source>
            <comment>{value} frames/s</comment>
            <translation>{value} Bilder/s</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>{value} of 10</comment>
            <translation>{value} von 10</translation>
        </message>
        <message>
            <source>{value} pictures a second</source>
            <comment>{value} pictures a second</comment>
            <translation>{value} Bilder pro Sekunde</translation>
        </message>
        <message>
            <source>{what} rose from {first} to {last} of 10</source>
            <comment>{what} rose from {first} to {last} of 10</comment>
            <translation>{what} stieg von {first} auf {last} von 10</translation>
        </message>
        <message>
            <source>{what}: from week {week} on ({day}): {dose}</source>
            <comment>{what}: from week {week} on ({day}): {dose}</comment>
            <translation>{what}: ab Woche {week} ({day}): {dose}</translation>
        </message>
        <message>
            <source>{why} and {count} more</source>
            <comment>{why} and {count} more</comment>
            <translation>{why} und {count} weitere</translation>
        </message>
        <message>
            <source>{words} (opens {what})</source>
            <comment>{words} (opens {what})</comment>
            <translation>{words} (öffnet {what})</translation>
        </message>
        <message>
            <source>{words} (opens {what}, practised already)</source>
            <comment>{words} (opens {what}, practised already)</comment>
            <translation>{words} (öffnet {what}, schon geübt)</translation>
        </message>
    </context>
    <context>
        <name>turnpost</name>
        <message>
            <source>Repeat: {part}</source>
            <comment>again.before</comment>
            <translation>Wiederholen: {part}</translation>
        </message>
        <message>
            <source>{part}: the newer check counts now.</source>
            <comment>again.check</comment>
            <translation>{part}: Jetzt gilt die neuere Prüfung.</translation>
        </message>
        <message>
            <source>Do this step again</source>
            <comment>again.do</comment>
            <translation>Schritt wiederholen</translation>
        </message>
        <message>
            <source>Single steps can be done again only right after the set-up.</source>
            <comment>again.gone</comment>
            <translation>Einzelne Schritte lassen sich nur gleich nach der Einrichtung wiederholen.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was seen less well.</source>
            <comment>again.kept.coarse</comment>
            <translation>{part}: Der frühere Schritt bleibt. Diesmal war Ihr Gesicht schlechter zu sehen.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. With the new one it is harder to tell where you look.</source>
            <comment>again.kept.eyes</comment>
            <translation>{part}: Der frühere Schritt bleibt. Mit dem neuen ist Ihr Blick schlechter zu erkennen.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one could not be used. {why}</source>
            <comment>again.kept.failed</comment>
            <translation>{part}: Der frühere Schritt bleibt. Der neue ließ sich nicht verwenden. {why}</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one was not finished.</source>
            <comment>again.kept.left</comment>
            <translation>{part}: Der frühere Schritt bleibt. Der neue wurde nicht beendet.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your head went less far.</source>
            <comment>again.kept.less_far</comment>
            <translation>{part}: Der frühere Schritt bleibt. Diesmal ging Ihr Kopf weniger weit.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. You sit or hold your head differently now. If you have moved, repeat the whole set-up.</source>
            <comment>again.kept.moved</comment>
            <translation>{part}: Der frühere Schritt bleibt. Sie sitzen jetzt anders oder halten den Kopf anders. Haben Sie sich umgesetzt, wiederholen Sie die ganze Einrichtung.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was hardly seen.</source>
            <comment>again.kept.unseen</comment>
            <translation>{part}: Der frühere Schritt bleibt. Diesmal war Ihr Gesicht kaum zu sehen.</translation>
        </message>
        <message>
            <source>{part}: do this step again</source>
            <comment>again.name</comment>
            <translation>{part}: Schritt wiederholen</translation>
        </message>
        <message>
            <source>One step can be done again while you sit as before. If you have moved, repeat the whole set-up.</source>
            <comment>again.sits</comment>
            <translation>Einen Schritt können Sie wiederholen, solange Sie sitzen wie zuvor. Haben Sie sich umgesetzt, wiederholen Sie die ganze Einrichtung.</translation>
        </message>
        <message>
            <source>{part}: the new step is used now.</source>
            <comment>again.taken</comment>
            <translation>{part}: Jetzt gilt der neue Schritt.</translation>
        </message>
        <message>
            <source>Which arm did you reach with?</source>
            <comment>ask.arm</comment>
            <translation>Mit welchem Arm haben Sie gegriffen?</translation>
        </message>
        <message>
            <source>Both, in turn</source>
            <comment>ask.arm.both</comment>
            <translation>Mit beiden, abwechselnd</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>ask.arm.left</comment>
            <translation>Mit dem linken</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.arm.not_sure</comment>
            <translation>Ich weiß es nicht</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>ask.arm.right</comment>
            <translation>Mit dem rechten</translation>
        </message>
        <message>
            <source>How did the target look while you moved?</source>
            <comment>ask.clarity</comment>
            <translation>Wie sah das Ziel aus, während Sie sich bewegten?</translation>
        </message>
        <message>
            <source>Blurred</source>
            <comment>ask.clarity.blurred</comment>
            <translation>Verschwommen</translation>
        </message>
        <message>
            <source>Clear</source>
            <comment>ask.clarity.clear</comment>
            <translation>Klar</translation>
        </message>
        <message>
            <source>I saw two</source>
            <comment>ask.clarity.double</comment>
            <translation>Ich sah zwei</translation>
        </message>
        <message>
            <source>It jumped</source>
            <comment>ask.clarity.jumping</comment>
            <translation>Es sprang</translation>
        </message>
        <message>
            <source>How did the target look when you opened your eyes?</source>
            <comment>ask.clarity.opened</comment>
            <translation>Wie sah das Ziel aus, als Sie die Augen öffneten?</translation>
        </message>
        <message>
            <source>The camera counted {count}.</source>
            <comment>ask.did</comment>
            <translation>Die Kamera hat {count} gezählt.</translation>
        </message>
        <message>
            <source>Your last nod down: {degrees} degrees.</source>
            <comment>ask.did.down</comment>
            <translation>Ihr letztes Nicken nach unten: {degrees} Grad.</translation>
        </message>
        <message>
            <source>Your last turn left: {degrees} degrees.</source>
            <comment>ask.did.left</comment>
            <translation>Ihre letzte Drehung nach links: {degrees} Grad.</translation>
        </message>
        <message>
            <source>Your last nods: {first} degrees up, {second} degrees down.</source>
            <comment>ask.did.nods</comment>
            <translation>Ihr letztes Nicken: {first} Grad nach oben, {second} Grad nach unten.</translation>
        </message>
        <message>
            <source>The camera counted {count} of {goal}.</source>
            <comment>ask.did.of</comment>
            <translation>Die Kamera hat {count} von {goal} gezählt.</translation>
        </message>
        <message>
            <source>Your last turn right: {degrees} degrees.</source>
            <comment>ask.did.right</comment>
            <translation>Ihre letzte Drehung nach rechts: {degrees} Grad.</translation>
        </message>
        <message>
            <source>Your tempo: {tempo} a minute.</source>
            <comment>ask.did.tempo</comment>
            <translation>Ihr Tempo: {tempo} pro Minute.</translation>
        </message>
        <message>
            <source>Your last turns: {first} degrees right, {second} degrees left.</source>
            <comment>ask.did.turns</comment>
            <translation>Ihre letzten Drehungen: {first} Grad nach rechts, {second} Grad nach links.</translation>
        </message>
        <message>
            <source>Your last nod up: {degrees} degrees.</source>
            <comment>ask.did.up</comment>
            <translation>Ihr letztes Nicken nach oben: {degrees} Grad.</translation>
        </message>
        <message>
            <source>Done</source>
            <comment>ask.done</comment>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>ask.dose.eyes_closed</comment>
            <translation>Augen geschlossen</translation>
        </message>
        <message>
            <source>on the firm floor</source>
            <comment>ask.dose.firm</comment>
            <translation>auf festem Boden</translation>
        </message>
        <message>
            <source>{first} beats a minute at first, {last} at the end</source>
            <comment>ask.dose.from_to</comment>
            <translation>zuerst {first} Taktschläge pro Minute, am Ende {last}</translation>
        </message>
        <message>
            <source>once</source>
            <comment>ask.dose.once</comment>
            <translation>einmal</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>ask.dose.repetitions</comment>
            <translation>{count}-mal</translation>
        </message>
        <message>
            <source>{count} seconds</source>
            <comment>ask.dose.seconds</comment>
            <translation>{count} Sekunden</translation>
        </message>
        <message>
            <source>turning your head</source>
            <comment>ask.dose.shake</comment>
            <translation>mit Drehen des Kopfes</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>ask.dose.sitting</comment>
            <translation>im Sitzen</translation>
        </message>
        <message>
            <source>on the soft mat</source>
            <comment>ask.dose.soft</comment>
            <translation>auf der weichen Matte</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>ask.dose.standing</comment>
            <translation>im Stehen</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>ask.dose.tempo</comment>
            <translation>{tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>ask.dose.walking</comment>
            <translation>im Gehen</translation>
        </message>
        <message>
            <source>with notes on the wall</source>
            <comment>ask.dose.wall</comment>
            <translation>mit Zetteln an der Wand</translation>
        </message>
        <message>
            <source>End for today</source>
            <comment>ask.end</comment>
            <translation>Für heute aufhören</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>ask.go_on</comment>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Say it again</source>
            <comment>ask.guide.again</comment>
            <translation>Noch einmal sagen</translation>
        </message>
        <message>
            <source>Next step</source>
            <comment>ask.guide.next</comment>
            <translation>Nächster Schritt</translation>
        </message>
        <message>
            <source>When you opened your eyes, did they still point at the target?</source>
            <comment>ask.landed</comment>
            <translation>Als Sie die Augen öffneten: Zeigten sie noch auf das Ziel?</translation>
        </message>
        <message>
            <source>No, beside it</source>
            <comment>ask.landed.beside</comment>
            <translation>Nein, daneben</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.landed.not_sure</comment>
            <translation>Ich weiß es nicht</translation>
        </message>
        <message>
            <source>Yes, at the target</source>
            <comment>ask.landed.on</comment>
            <translation>Ja, auf das Ziel</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>ask.left</comment>
            <translation>noch {time}</translation>
        </message>
        <message>
            <source>Left out today: {name}. {why}</source>
            <comment>ask.left_out</comment>
            <translation>Heute weggelassen: {name}. {why}</translation>
        </message>
        <message>
            <source>No</source>
            <comment>ask.no</comment>
            <translation>Nein</translation>
        </message>
        <message>
            <source>How many did you do?</source>
            <comment>ask.own_count</comment>
            <translation>Wie viele haben Sie gemacht?</translation>
        </message>
        <message>
            <source>Press + and − until your number is there.</source>
            <comment>ask.own_count.how</comment>
            <translation>Drücken Sie + und −, bis Ihre Zahl dasteht.</translation>
        </message>
        <message>
            <source>Count</source>
            <comment>ask.own_count.name</comment>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>I don't know</source>
            <comment>ask.own_count.unknown</comment>
            <translation>Ich weiß es nicht</translation>
        </message>
        <message>
            <source>no number chosen yet</source>
            <comment>ask.own_count.unset</comment>
            <translation>noch keine Zahl gewählt</translation>
        </message>
        <message>
            <source>Sit on a firm chair, at arm's length from the screen, about {cm} cm.</source>
            <comment>ask.place.arm</comment>
            <translation>Setzen Sie sich auf einen festen Stuhl, eine Armlänge vom Bildschirm entfernt, etwa {cm} cm.</translation>
        </message>
        <message>
            <source>Stripes will move on the screen. This can make you dizzy or sick. Any key stops it at once.</source>
            <comment>ask.place.backdrop</comment>
            <translation>Auf dem Bildschirm bewegen sich gleich Streifen. Davon kann Ihnen schwindlig oder übel werden. Jede Taste hält es sofort an.</translation>
        </message>
        <message>
            <source>I have read this and am in place</source>
            <comment>ask.place.backdrop_ready</comment>
            <translation>Ich habe das gelesen und bin bereit</translation>
        </message>
        <message>
            <source>Slow beats lead you in. Three quick beats tell you that it is over.</source>
            <comment>ask.place.by_ear</comment>
            <translation>Langsame Taktschläge führen Sie hinein. Drei schnelle Schläge sagen Ihnen, dass es vorbei ist.</translation>
        </message>
        <message>
            <source>No sound plays. The screen counts down and shows when it is over: your helper reads that to you.</source>
            <comment>ask.place.by_reader</comment>
            <translation>Es kommt kein Ton. Der Bildschirm zählt herunter und zeigt, wann es vorbei ist: Ihre Hilfsperson liest Ihnen das vor.</translation>
        </message>
        <message>
            <source>A voice tells you when to begin and when it is over. Slow beats lead you in.</source>
            <comment>ask.place.by_voice</comment>
            <translation>Eine Stimme sagt Ihnen, wann Sie beginnen und wann es vorbei ist. Langsame Taktschläge führen Sie hinein.</translation>
        </message>
        <message>
            <source>Move your chair closer again, about {cm} cm from the screen.</source>
            <comment>ask.place.closer</comment>
            <translation>Rücken Sie mit dem Stuhl wieder näher heran, etwa {cm} cm vom Bildschirm entfernt.</translation>
        </message>
        <message>
            <source>As soon as you see two tips, press “I see double (D)”.</source>
            <comment>ask.place.double</comment>
            <translation>Sobald Sie zwei Spitzen sehen, drücken Sie „Ich sehe doppelt (D)“.</translation>
        </message>
        <message>
            <source>Sit further back for this one, on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.further</comment>
            <translation>Setzen Sie sich für diese Übung weiter zurück: auf einen festen Stuhl, etwa {cm} cm vom Bildschirm entfernt.</translation>
        </message>
        <message>
            <source>You have asked for a still screen. Here the target has to move: that is the exercise. Leave it out if you would rather not.</source>
            <comment>ask.place.moves</comment>
            <translation>Sie wollten einen ruhigen Bildschirm. Hier muss sich das Ziel bewegen: Das ist die Übung. Lassen Sie sie weg, wenn Sie lieber nicht möchten.</translation>
        </message>
        <message>
            <source>Move at a calm, even pace.</source>
            <comment>ask.place.no_beat</comment>
            <translation>Bewegen Sie sich ruhig und gleichmäßig.</translation>
        </message>
        <message>
            <source>You chose to hear nothing. This one is led by sound all the same.</source>
            <comment>ask.place.not_silent</comment>
            <translation>Sie wollten nichts hören. Diese Übung wird trotzdem vom Ton geführt.</translation>
        </message>
        <message>
            <source>I am in place</source>
            <comment>ask.place.ready</comment>
            <translation>Ich bin bereit</translation>
        </message>
        <message>
            <source>First the camera gets to know how you look from here. That takes a minute.</source>
            <comment>ask.place.setup</comment>
            <translation>Zuerst lernt die Kamera, wie Sie von hier aussehen. Das dauert eine Minute.</translation>
        </message>
        <message>
            <source>Sit on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.sitting</comment>
            <translation>Setzen Sie sich auf einen festen Stuhl, etwa {cm} cm vom Bildschirm entfernt.</translation>
        </message>
        <message>
            <source>Not this one</source>
            <comment>ask.place.skip</comment>
            <translation>Diese nicht</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing</comment>
            <translation>Stehen Sie so, dass die Kamera Ihr Gesicht sieht. Schauen Sie auf eine Marke an der Wand dahinter, so hoch wie Ihre Augen.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Until it begins, look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing_shut</comment>
            <translation>Stehen Sie so, dass die Kamera Ihr Gesicht sieht. Schauen Sie bis zum Beginn auf eine Marke an der Wand dahinter, so hoch wie Ihre Augen.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face, and look over the screen at the wall.</source>
            <comment>ask.place.standing_wall</comment>
            <translation>Stehen Sie so, dass die Kamera Ihr Gesicht sieht, und schauen Sie über den Bildschirm hinweg zur Wand.</translation>
        </message>
        <message>
            <source>To stop, sit down, or hold one hand up beside your head. Or step out of the picture for a few seconds.</source>
            <comment>ask.place.to_stop</comment>
            <translation>Zum Aufhören setzen Sie sich hin, oder halten Sie eine Hand neben dem Kopf hoch. Oder gehen Sie ein paar Sekunden aus dem Bild.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head. Or step aside, out of the picture, for a few seconds.</source>
            <comment>ask.place.to_stop_aside</comment>
            <translation>Zum Aufhören halten Sie eine Hand neben dem Kopf hoch. Oder gehen Sie für ein paar Sekunden zur Seite aus dem Bild.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head.</source>
            <comment>ask.place.to_stop_hand</comment>
            <translation>Zum Aufhören halten Sie eine Hand neben dem Kopf hoch.</translation>
        </message>
        <message>
            <source>The camera does not see: {what}.</source>
            <comment>ask.place.unseen</comment>
            <translation>Die Kamera sieht nicht: {what}.</translation>
        </message>
        <message>
            <source>The camera does not watch this one. Press “Done” when you are through.</source>
            <comment>ask.place.walking</comment>
            <translation>Dabei schaut die Kamera nicht zu. Drücken Sie „Fertig“, wenn Sie durch sind.</translation>
        </message>
        <message>
            <source>Is somebody with you who reads to you?</source>
            <comment>ask.reader</comment>
            <translation>Ist jemand bei Ihnen, der Ihnen vorliest?</translation>
        </message>
        <message>
            <source>They read the words on the screen aloud and tell you when to stop.</source>
            <comment>ask.reader.how</comment>
            <translation>Die Person liest die Worte auf dem Bildschirm laut vor und sagt Ihnen, wann Sie aufhören.</translation>
        </message>
        <message>
            <source>This computer can't speak, and what comes now is led by spoken words.</source>
            <comment>ask.reader.no_words</comment>
            <translation>Dieser Computer kann nicht sprechen, und was jetzt kommt, wird mit gesprochenen Worten angeleitet.</translation>
        </message>
        <message>
            <source>This computer can't play a sound, and what comes now is led by sound.</source>
            <comment>ask.reader.silent</comment>
            <translation>Dieser Computer kann keinen Ton abspielen, und was jetzt kommt, wird vom Ton geführt.</translation>
        </message>
        <message>
            <source>A short rest</source>
            <comment>ask.rest</comment>
            <translation>Eine kurze Pause</translation>
        </message>
        <message>
            <source>Go on now</source>
            <comment>ask.rest.go_on</comment>
            <translation>Jetzt weiter</translation>
        </message>
        <message>
            <source>Next: {name}</source>
            <comment>ask.rest.next</comment>
            <translation>Als Nächstes: {name}</translation>
        </message>
        <message>
            <source>Rest until you feel as usual</source>
            <comment>ask.settle</comment>
            <translation>Ruhen Sie aus, bis Sie sich fühlen wie sonst</translation>
        </message>
        <message>
            <source>I feel as usual again</source>
            <comment>ask.settle.done</comment>
            <translation>Ich fühle mich wieder wie sonst</translation>
        </message>
        <message>
            <source>Take your time. If you don't feel as usual by then, that is all for today.</source>
            <comment>ask.settle.how</comment>
            <translation>Lassen Sie sich Zeit. Fühlen Sie sich bis dahin nicht wie sonst, ist für heute Schluss.</translation>
        </message>
        <message>
            <source>Did you hear the beats just now?</source>
            <comment>ask.sound</comment>
            <translation>Haben Sie die Taktschläge gerade gehört?</translation>
        </message>
        <message>
            <source>Play again</source>
            <comment>ask.sound.again</comment>
            <translation>Noch einmal spielen</translation>
        </message>
        <message>
            <source>What comes now is led by sound. Turn it up if you need to.</source>
            <comment>ask.sound.how</comment>
            <translation>Was jetzt kommt, wird vom Ton geführt. Stellen Sie ihn lauter, wenn nötig.</translation>
        </message>
        <message>
            <source>Hear the voice</source>
            <comment>ask.sound.voice</comment>
            <translation>Die Stimme hören</translation>
        </message>
        <message>
            <source>Something new may come now</source>
            <comment>ask.stage</comment>
            <translation>Jetzt kann etwas Neues kommen</translation>
        </message>
        <message>
            <source>Your plan has a next part: {name}. You may begin with it today, or wait. Do you want to begin?</source>
            <comment>ask.stage.how</comment>
            <translation>Ihr Plan hat einen nächsten Teil: {name}. Sie dürfen heute damit beginnen oder noch warten. Möchten Sie beginnen?</translation>
        </message>
        <message>
            <source>Did you have to hold on?</source>
            <comment>ask.steadied</comment>
            <translation>Mussten Sie sich festhalten?</translation>
        </message>
        <message>
            <source>To sway a little is normal. Holding on was right if you needed it.</source>
            <comment>ask.steadied.how</comment>
            <translation>Ein wenig zu schwanken ist normal. Festhalten war richtig, wenn Sie es brauchten.</translation>
        </message>
        <message>
            <source>Is your corner ready?</source>
            <comment>ask.support.corner_and_chair</comment>
            <translation>Ist Ihre Ecke bereit?</translation>
        </message>
        <message>
            <source>Your back is to a corner. A chair that does not roll stands in front of you, to hold on to. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.corner_and_chair.how</comment>
            <translation>Ihr Rücken ist zur Ecke. Vor Ihnen steht ein Stuhl, der nicht rollt, zum Festhalten. Der Laptop steht fest, weiter weg, als Ihr Arm reicht, das Kabel aus dem Weg.</translation>
        </message>
        <message>
            <source>The camera can't hold you, and it calls nobody.</source>
            <comment>ask.support.fall</comment>
            <translation>Die Kamera kann Sie nicht halten, und sie ruft niemanden an.</translation>
        </message>
        <message>
            <source>Is your helper next to you?</source>
            <comment>ask.support.helper</comment>
            <translation>Ist Ihre Hilfsperson neben Ihnen?</translation>
        </message>
        <message>
            <source>Your helper stands so near that a hand can hold you, the whole time. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.helper.how</comment>
            <translation>Ihre Hilfsperson steht die ganze Zeit so nah, dass eine Hand Sie halten kann. Der Laptop steht fest, weiter weg, als Ihr Arm reicht, das Kabel aus dem Weg.</translation>
        </message>
        <message>
            <source>Wear flat shoes with a closed heel, or go barefoot. Keep the floor clear.</source>
            <comment>ask.support.shoes</comment>
            <translation>Tragen Sie flache Schuhe mit geschlossener Ferse oder gehen Sie barfuß. Halten Sie den Boden frei.</translation>
        </message>
        <message>
            <source>Your practice today</source>
            <comment>ask.today</comment>
            <translation>Ihre Übungen heute</translation>
        </message>
        <message>
            <source>Begin</source>
            <comment>ask.today.begin</comment>
            <translation>Beginnen</translation>
        </message>
        <message>
            <source>Exercises and rests take about {minutes} minutes.</source>
            <comment>ask.today.how</comment>
            <translation>Übungen und Pausen dauern etwa {minutes} Minuten.</translation>
        </message>
        <message>
            <source>Nothing in your plan can be done today.</source>
            <comment>ask.today.none</comment>
            <translation>Aus Ihrem Plan geht heute nichts.</translation>
        </message>
        <message>
            <source>Not today:</source>
            <comment>ask.today.not</comment>
            <translation>Heute nicht:</translation>
        </message>
        <message>
            <source>{number}.  {name}: {dose}</source>
            <comment>ask.today.row</comment>
            <translation>{number}.  {name}: {dose}</translation>
        </message>
        <message>
            <source>Exercises and rests take about a minute.</source>
            <comment>ask.today.short</comment>
            <translation>Übungen und Pausen dauern etwa eine Minute.</translation>
        </message>
        <message>
            <source>Today: {name}</source>
            <comment>ask.today.stage</comment>
            <translation>Heute: {name}</translation>
        </message>
        <message>
            <source>{name}: {why}</source>
            <comment>ask.today.waits</comment>
            <translation>{name}: {why}</translation>
        </message>
        <message>
            <source>From your therapist: {words}</source>
            <comment>ask.today.words</comment>
            <translation>Von Ihrer Therapiepraxis: {words}</translation>
        </message>
        <message>
            <source>I feel unwell (U)</source>
            <comment>ask.unwell</comment>
            <translation>Mir ist unwohl (U)</translation>
        </message>
        <message>
            <source>I feel unwell, key U</source>
            <comment>ask.unwell_name</comment>
            <translation>Mir ist unwohl, Taste U</translation>
        </message>
        <message>
            <source>Sit still for a moment</source>
            <comment>ask.wait</comment>
            <translation>Sitzen Sie einen Moment still</translation>
        </message>
        <message>
            <source>You saw two, so you stopped. Move your finger back out, and rest your arm.</source>
            <comment>ask.wait.double</comment>
            <translation>Sie sahen zwei und haben aufgehört. Führen Sie den Finger wieder weg und lassen Sie den Arm ruhen.</translation>
        </message>
        <message>
            <source>Then you say how you feel.</source>
            <comment>ask.wait.how</comment>
            <translation>Dann sagen Sie, wie Sie sich fühlen.</translation>
        </message>
        <message>
            <source>How far is the wall?</source>
            <comment>ask.wall.distance</comment>
            <translation>Wie weit ist die Wand weg?</translation>
        </message>
        <message>
            <source>Sit as you will practise. With a tape measure how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.sitting</comment>
            <translation>Setzen Sie sich so hin, wie Sie üben werden. Messen Sie mit einem Maßband, wie weit es von Ihren Augen gerade zur Wand hinter dem Bildschirm ist. {least} bis {most} cm sind möglich.</translation>
        </message>
        <message>
            <source>Stand as you will practise, and have somebody measure with a tape how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.standing</comment>
            <translation>Stellen Sie sich so hin, wie Sie üben werden. Lassen Sie jemanden mit einem Maßband messen, wie weit es von Ihren Augen gerade zur Wand hinter dem Bildschirm ist. {least} bis {most} cm sind möglich.</translation>
        </message>
        <message>
            <source>Is the wall still {cm} cm from your eyes?</source>
            <comment>ask.wall.distance.still</comment>
            <translation>Ist die Wand noch {cm} cm von Ihren Augen entfernt?</translation>
        </message>
        <message>
            <source>Centimetres</source>
            <comment>ask.wall.length</comment>
            <translation>Zentimeter</translation>
        </message>
        <message>
            <source>I can't put notes there</source>
            <comment>ask.wall.none</comment>
            <translation>Ich kann dort keine Zettel ankleben</translation>
        </message>
        <message>
            <source>How far apart are the two notes?</source>
            <comment>ask.wall.spacing</comment>
            <translation>Wie weit sind die beiden Zettel voneinander entfernt?</translation>
        </message>
        <message>
            <source>Measure from the middle of one note to the middle of the other. {least} to {most} cm will do here; {usual} cm is a good distance.</source>
            <comment>ask.wall.spacing.how</comment>
            <translation>Messen Sie von der Mitte des einen Zettels zur Mitte des anderen. Hier sind {least} bis {most} cm möglich; {usual} cm sind ein guter Abstand.</translation>
        </message>
        <message>
            <source>Are the two notes still {cm} cm apart?</source>
            <comment>ask.wall.spacing.still</comment>
            <translation>Sind die beiden Zettel noch {cm} cm voneinander entfernt?</translation>
        </message>
        <message>
            <source>That is how it was last time. If your place, the screen or the notes have moved since, measure again.</source>
            <comment>ask.wall.still.how</comment>
            <translation>So war es beim letzten Mal. Wenn Ihr Platz, der Bildschirm oder die Zettel seither anders sind, messen Sie neu.</translation>
        </message>
        <message>
            <source>Measure again</source>
            <comment>ask.wall.still.no</comment>
            <translation>Neu messen</translation>
        </message>
        <message>
            <source>Yes, still {cm} cm</source>
            <comment>ask.wall.still.yes</comment>
            <translation>Ja, noch {cm} cm</translation>
        </message>
        <message>
            <source>Did you fall in the last week?</source>
            <comment>ask.weekly.falls</comment>
            <translation>Sind Sie in der letzten Woche gestürzt?</translation>
        </message>
        <message>
            <source>A slip or a trip counts too if you ended up on the ground. This comes once a week, for your therapist.</source>
            <comment>ask.weekly.falls.how</comment>
            <translation>Auch Ausrutschen oder Stolpern zählt, wenn Sie am Boden gelandet sind. Diese Frage kommt einmal in der Woche, für Ihre Therapiepraxis.</translation>
        </message>
        <message>
            <source>Yes, more than once</source>
            <comment>ask.weekly.falls.more</comment>
            <translation>Ja, mehr als einmal</translation>
        </message>
        <message>
            <source>No, I did not fall</source>
            <comment>ask.weekly.falls.none</comment>
            <translation>Nein, ich bin nicht gestürzt</translation>
        </message>
        <message>
            <source>Yes, once</source>
            <comment>ask.weekly.falls.once</comment>
            <translation>Ja, einmal</translation>
        </message>
        <message>
            <source>Were you hurt?</source>
            <comment>ask.weekly.hurt</comment>
            <translation>Haben Sie sich verletzt?</translation>
        </message>
        <message>
            <source>A bruise counts. If you need help, get it now.</source>
            <comment>ask.weekly.hurt.how</comment>
            <translation>Auch ein blauer Fleck zählt. Wenn Sie Hilfe brauchen, holen Sie sie jetzt.</translation>
        </message>
        <message>
            <source>Have your medicines changed?</source>
            <comment>ask.weekly.medicines_changed</comment>
            <translation>Haben sich Ihre Medikamente geändert?</translation>
        </message>
        <message>
            <source>A new one, more or less of one, or one that you stopped, since this was asked last. Yes or no is enough: no names are kept.</source>
            <comment>ask.weekly.medicines_changed.how</comment>
            <translation>Ein neues, mehr oder weniger von einem, oder eines, das Sie abgesetzt haben, seit der letzten Frage danach. Ja oder Nein genügt: Namen werden nicht gespeichert.</translation>
        </message>
        <message>
            <source>I would rather not say</source>
            <comment>ask.weekly.skip</comment>
            <translation>Das möchte ich nicht sagen</translation>
        </message>
        <message>
            <source>{key}: I am all right</source>
            <comment>ask.well.fine</comment>
            <translation>{key}: Mir geht es gut</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. Nobody has been called. Press 1 or 2.</source>
            <comment>ask.well.how</comment>
            <translation>Die Kamera sah ein plötzliches Absinken Ihres Kopfes. Es wurde niemand angerufen. Drücken Sie 1 oder 2.</translation>
        </message>
        <message>
            <source>{key}: I am not well</source>
            <comment>ask.well.not_well</comment>
            <translation>{key}: Mir geht es nicht gut</translation>
        </message>
        <message>
            <source>Yes</source>
            <comment>ask.yes</comment>
            <translation>Ja</translation>
        </message>
        <message>
            <source>Later sessions are compared with this one. Is your therapist with you now?</source>
            <comment>baseline.ask</comment>
            <translation>Spätere Sitzungen werden mit dieser verglichen. Ist Ihre Therapeutin oder Ihr Therapeut jetzt bei Ihnen?</translation>
        </message>
        <message>
            <source>Yes, we do it together</source>
            <comment>baseline.ask.yes</comment>
            <translation>Ja, wir machen es gemeinsam</translation>
        </message>
        <message>
            <source>It is kept as your baseline.</source>
            <comment>baseline.kept</comment>
            <translation>Sie ist als Ihre Ausgangsmessung gespeichert.</translation>
        </message>
        <message>
            <source>Baseline: do the next session together with your therapist. Later ones are compared with it.</source>
            <comment>baseline.next</comment>
            <translation>Ausgangsmessung: Machen Sie die nächste Sitzung gemeinsam mit Ihrer Therapiepraxis. Spätere werden mit ihr verglichen.</translation>
        </message>
        <message>
            <source>No baseline today</source>
            <comment>baseline.not</comment>
            <translation>Heute keine Ausgangsmessung</translation>
        </message>
        <message>
            <source>Begin the baseline</source>
            <comment>baseline.start</comment>
            <translation>Ausgangsmessung beginnen</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>call.amplitude</comment>
            <translation>{low} bis {high} Grad</translation>
        </message>
        <message>
            <source>Only your therapist decides this. Is your therapist in this call now, and do they ask for the change?</source>
            <comment>call.ask</comment>
            <translation>Darüber entscheidet nur Ihre Therapiepraxis. Ist sie jetzt mit Ihnen im Gespräch, und wünscht sie die Änderung?</translation>
        </message>
        <message>
            <source>No, leave it as it is</source>
            <comment>call.ask.no</comment>
            <translation>Nein, so lassen</translation>
        </message>
        <message>
            <source>Yes, my therapist asks for it</source>
            <comment>call.ask.yes</comment>
            <translation>Ja, die Therapiepraxis wünscht es</translation>
        </message>
        <message>
            <source>Now {low} to {high} degrees.</source>
            <comment>call.changed.amplitude</comment>
            <translation>Jetzt {low} bis {high} Grad.</translation>
        </message>
        <message>
            <source>Now this comes next: {name}.</source>
            <comment>call.changed.next</comment>
            <translation>Jetzt kommt als Nächstes: {name}.</translation>
        </message>
        <message>
            <source>Now {tempo} beats a minute.</source>
            <comment>call.changed.tempo</comment>
            <translation>Jetzt {tempo} Taktschläge pro Minute.</translation>
        </message>
        <message>
            <source>Next: {name}. {what}</source>
            <comment>call.coming</comment>
            <translation>Als Nächstes: {name}. {what}</translation>
        </message>
        <message>
            <source>Faster (F6)</source>
            <comment>call.faster</comment>
            <translation>Schneller (F6)</translation>
        </message>
        <message>
            <source>Larger (F8)</source>
            <comment>call.larger</comment>
            <translation>Größer (F8)</translation>
        </message>
        <message>
            <source>Mark this moment (F2)</source>
            <comment>call.mark</comment>
            <translation>Diesen Moment merken (F2)</translation>
        </message>
        <message>
            <source>Marked</source>
            <comment>call.marked</comment>
            <translation>Gemerkt</translation>
        </message>
        <message>
            <source>Another one first (F9)</source>
            <comment>call.other_next</comment>
            <translation>Erst eine andere (F9)</translation>
        </message>
        <message>
            <source>The plan allows no faster beat.</source>
            <comment>call.refused.fastest</comment>
            <translation>Schneller erlaubt der Plan nicht.</translation>
        </message>
        <message>
            <source>The plan allows nothing larger.</source>
            <comment>call.refused.largest</comment>
            <translation>Größer erlaubt der Plan nicht.</translation>
        </message>
        <message>
            <source>The notes on the wall set how far this one goes. They stay where they are.</source>
            <comment>call.refused.marks_on_wall</comment>
            <translation>Die Zettel an der Wand geben vor, wie weit diese Übung geht. Sie bleiben, wo sie sind.</translation>
        </message>
        <message>
            <source>The neck limit of the plan allows nothing larger.</source>
            <comment>call.refused.neck_limit</comment>
            <translation>Die Grenze für den Nacken im Plan erlaubt nichts Größeres.</translation>
        </message>
        <message>
            <source>This one has no degrees to change.</source>
            <comment>call.refused.no_amplitude</comment>
            <translation>Diese Übung hat keine Grade, die man ändern kann.</translation>
        </message>
        <message>
            <source>This can be changed between two sets.</source>
            <comment>call.refused.not_now</comment>
            <translation>Das lässt sich zwischen zwei Durchgängen ändern.</translation>
        </message>
        <message>
            <source>Nothing to take back.</source>
            <comment>call.refused.nothing_to_undo</comment>
            <translation>Es gibt nichts zurückzunehmen.</translation>
        </message>
        <message>
            <source>Nothing else can come first.</source>
            <comment>call.refused.only_one</comment>
            <translation>Es gibt keine andere, die zuerst kommen kann.</translation>
        </message>
        <message>
            <source>This one has no beat to change.</source>
            <comment>call.refused.own_pace</comment>
            <translation>Diese Übung hat keinen Takt, den man ändern kann.</translation>
        </message>
        <message>
            <source>This screen has no room for a larger movement.</source>
            <comment>call.refused.screen</comment>
            <translation>Für eine größere Bewegung ist auf diesem Bildschirm kein Platz.</translation>
        </message>
        <message>
            <source>The plan allows no slower beat.</source>
            <comment>call.refused.slowest</comment>
            <translation>Langsamer erlaubt der Plan nicht.</translation>
        </message>
        <message>
            <source>The plan allows nothing smaller.</source>
            <comment>call.refused.smallest</comment>
            <translation>Kleiner erlaubt der Plan nicht.</translation>
        </message>
        <message>
            <source>Slower (F5)</source>
            <comment>call.slower</comment>
            <translation>Langsamer (F5)</translation>
        </message>
        <message>
            <source>Smaller (F7)</source>
            <comment>call.smaller</comment>
            <translation>Kleiner (F7)</translation>
        </message>
        <message>
            <source>Take it back (F10)</source>
            <comment>call.take_back</comment>
            <translation>Zurücknehmen (F10)</translation>
        </message>
        <message>
            <source>Taken back.</source>
            <comment>call.taken_back</comment>
            <translation>Zurückgenommen.</translation>
        </message>
        <message>
            <source>For your therapist in the call</source>
            <comment>call.title</comment>
            <translation>Für Ihre Therapiepraxis im Gespräch</translation>
        </message>
        <message>
            <source>For your therapist: {figures}</source>
            <comment>came.figures</comment>
            <translation>Für Ihre Therapiepraxis: {figures}</translation>
        </message>
        <message>
            <source>gaze {degrees}° off</source>
            <comment>came.figures.gaze</comment>
            <translation>Blick {degrees}° daneben</translation>
        </message>
        <message>
            <source>nod {up}° up, {down}° down</source>
            <comment>came.figures.nod</comment>
            <translation>Nicken {up}° auf, {down}° ab</translation>
        </message>
        <message>
            <source>turn {right}° right, {left}° left</source>
            <comment>came.figures.turn</comment>
            <translation>Drehung {right}° rechts, {left}° links</translation>
        </message>
        <message>
            <source>at the wall {degrees}° off</source>
            <comment>came.figures.wall</comment>
            <translation>an der Wand {degrees}° daneben</translation>
        </message>
        <message>
            <source>Your eyes, checked on {points} points: {off}. {verdict}</source>
            <comment>came.gaze</comment>
            <translation>Ihre Augen, an {points} Punkten geprüft: {off}. {verdict}</translation>
        </message>
        <message>
            <source>Your eyes were not seen on the points that check the set-up.</source>
            <comment>came.gaze.unseen</comment>
            <translation>Ihre Augen waren auf den Prüfpunkten nicht zu sehen.</translation>
        </message>
        <message>
            <source>The camera read {measured}°, the tape says {expected}°: {off}.</source>
            <comment>came.mark</comment>
            <translation>Die Kamera maß {measured}°, das Maßband sagt {expected}°: {off}.</translation>
        </message>
        <message>
            <source>Do the check again</source>
            <comment>came.mark.again</comment>
            <translation>Prüfung wiederholen</translation>
        </message>
        <message>
            <source>Do the check</source>
            <comment>came.mark.do</comment>
            <translation>Prüfung machen</translation>
        </message>
        <message>
            <source>Not done with this set-up.</source>
            <comment>came.mark.none</comment>
            <translation>Bei dieser Einrichtung nicht geprüft.</translation>
        </message>
        <message>
            <source>about half a degree off</source>
            <comment>came.off.half</comment>
            <translation>etwa ein halbes Grad daneben</translation>
        </message>
        <message>
            <source>about {degrees} degrees off</source>
            <comment>came.off.more</comment>
            <translation>etwa {degrees} Grad daneben</translation>
        </message>
        <message>
            <source>about one degree off</source>
            <comment>came.off.one</comment>
            <translation>etwa ein Grad daneben</translation>
        </message>
        <message>
            <source>See each step</source>
            <comment>came.open</comment>
            <translation>Jeden Schritt ansehen</translation>
        </message>
        <message>
            <source>Checking your eyes</source>
            <comment>came.part.check</comment>
            <translation>Prüfung Ihrer Augen</translation>
        </message>
        <message>
            <source>That is far enough.</source>
            <comment>came.part.enough</comment>
            <translation>Das ist weit genug.</translation>
        </message>
        <message>
            <source>Your eyes were not seen.</source>
            <comment>came.part.eyes_unseen</comment>
            <translation>Ihre Augen waren nicht zu sehen.</translation>
        </message>
        <message>
            <source>Looking at points</source>
            <comment>came.part.looks</comment>
            <translation>Punkte ansehen</translation>
        </message>
        <message>
            <source>Mark on the wall</source>
            <comment>came.part.mark</comment>
            <translation>Marke an der Wand</translation>
        </message>
        <message>
            <source>On {count} of {points} points your face was not seen.</source>
            <comment>came.part.missed</comment>
            <translation>Bei {count} von {points} Punkten war Ihr Gesicht nicht zu sehen.</translation>
        </message>
        <message>
            <source>Your head moved by about {degrees}°.</source>
            <comment>came.part.moved</comment>
            <translation>Ihr Kopf bewegte sich um etwa {degrees}°.</translation>
        </message>
        <message>
            <source>Your exercises need {asked}°.</source>
            <comment>came.part.need</comment>
            <translation>Ihre Übungen brauchen {asked}°.</translation>
        </message>
        <message>
            <source>Nodding</source>
            <comment>came.part.nod</comment>
            <translation>Nicken</translation>
        </message>
        <message>
            <source>{plus}° up, {minus}° down.</source>
            <comment>came.part.nod.far</comment>
            <translation>{plus}° nach oben, {minus}° nach unten.</translation>
        </message>
        <message>
            <source>Your eyes on these points: {off}. {verdict}</source>
            <comment>came.part.read</comment>
            <translation>Ihre Augen an diesen Punkten: {off}. {verdict}</translation>
        </message>
        <message>
            <source>Keeping still</source>
            <comment>came.part.rest</comment>
            <translation>Stillhalten</translation>
        </message>
        <message>
            <source>Your head stayed still.</source>
            <comment>came.part.still</comment>
            <translation>Ihr Kopf blieb ruhig.</translation>
        </message>
        <message>
            <source>Turning the head</source>
            <comment>came.part.turn</comment>
            <translation>Kopf drehen</translation>
        </message>
        <message>
            <source>{plus}° to the right, {minus}° left.</source>
            <comment>came.part.turn.far</comment>
            <translation>{plus}° nach rechts, {minus}° nach links.</translation>
        </message>
        <message>
            <source>Your face was seen in only {percent} % of it.</source>
            <comment>came.part.unseen</comment>
            <translation>Ihr Gesicht war nur in {percent} % davon zu sehen.</translation>
        </message>
        <message>
            <source>Your head went far enough to every side.</source>
            <comment>came.reach</comment>
            <translation>Ihr Kopf ging nach allen Seiten weit genug.</translation>
        </message>
        <message>
            <source>Downwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.down</comment>
            <translation>Nach unten ging Ihr Kopf {went}°, die Übungen brauchen {asked}°.</translation>
        </message>
        <message>
            <source>To the left your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.left</comment>
            <translation>Nach links ging Ihr Kopf {went}°, die Übungen brauchen {asked}°.</translation>
        </message>
        <message>
            <source>To the right your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.right</comment>
            <translation>Nach rechts ging Ihr Kopf {went}°, die Übungen brauchen {asked}°.</translation>
        </message>
        <message>
            <source>Upwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.up</comment>
            <translation>Nach oben ging Ihr Kopf {went}°, die Übungen brauchen {asked}°.</translation>
        </message>
        <message>
            <source>Farther out your eyes may not be judged. Turn farther only if that is comfortable.</source>
            <comment>came.short.why</comment>
            <translation>Weiter außen werden die Augen vielleicht nicht beurteilt. Gehen Sie nur weiter, wenn es angenehm ist.</translation>
        </message>
        <message>
            <source>How the set-up came out</source>
            <comment>came.title</comment>
            <translation>So ist die Einrichtung geworden</translation>
        </message>
        <message>
            <source>That will do: only larger looks away are noticed.</source>
            <comment>came.verdict.fair</comment>
            <translation>Das genügt: Nur wer weiter wegsieht, fällt auf.</translation>
        </message>
        <message>
            <source>That is good.</source>
            <comment>came.verdict.good</comment>
            <translation>Das ist gut.</translation>
        </message>
        <message>
            <source>That is too far off: whether your eyes stay on the target is not judged.</source>
            <comment>came.verdict.poor</comment>
            <translation>Das ist zu viel: Ob die Augen auf dem Ziel bleiben, wird nicht beurteilt.</translation>
        </message>
        <message>
            <source>Your eyes, checked at the wall: {off}. {verdict}</source>
            <comment>came.wall</comment>
            <translation>Ihre Augen, an der Wand geprüft: {off}. {verdict}</translation>
        </message>
        <message>
            <source>At one of the two notes on the wall your eyes were not seen.</source>
            <comment>came.wall.one</comment>
            <translation>Bei einem der beiden Zettel an der Wand waren Ihre Augen nicht zu sehen.</translation>
        </message>
        <message>
            <source>Looking at the wall, your eyes were not seen.</source>
            <comment>came.wall.unseen</comment>
            <translation>Beim Blick zur Wand waren Ihre Augen nicht zu sehen.</translation>
        </message>
        <message>
            <source>Camera</source>
            <comment>camera.choose</comment>
            <translation>Kamera</translation>
        </message>
        <message>
            <source>First camera found</source>
            <comment>camera.default</comment>
            <translation>Erste gefundene Kamera</translation>
        </message>
        <message>
            <source>Use the last set-up</source>
            <comment>camera.kept</comment>
            <translation>Letzte Einrichtung nehmen</translation>
        </message>
        <message>
            <source>Start the set-up</source>
            <comment>camera.next</comment>
            <translation>Einrichtung starten</translation>
        </message>
        <message>
            <source>You, as in a mirror</source>
            <comment>camera.picture</comment>
            <translation>Sie, wie im Spiegel</translation>
        </message>
        <message>
            <source>Can the camera see you?</source>
            <comment>camera.title</comment>
            <translation>Kann die Kamera Sie sehen?</translation>
        </message>
        <message>
            <source>If it stays so, press “{button}”. You can note on the first page what you practise without the laptop.</source>
            <comment>camera.without</comment>
            <translation>Wenn es so bleibt, drücken Sie „{button}“. Was Sie ohne den Laptop üben, können Sie auf der ersten Seite eintragen.</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>camera_off</comment>
            <translation>Kamera aus</translation>
        </message>
        <message>
            <source>Cam. off</source>
            <comment>camera_off.short</comment>
            <translation>Kam. aus</translation>
        </message>
        <message>
            <source>Camera on</source>
            <comment>camera_on</comment>
            <translation>Kamera an</translation>
        </message>
        <message>
            <source>Cam. on</source>
            <comment>camera_on.short</comment>
            <translation>Kam. an</translation>
        </message>
        <message>
            <source>If the room spins, hold on, sit still, and stop.</source>
            <comment>care.bend</comment>
            <translation>Wenn sich das Zimmer dreht: festhalten, still sitzen und aufhören.</translation>
        </message>
        <message>
            <source>If the target blurs or jumps, go slower.</source>
            <comment>care.blur</comment>
            <translation>Wenn das Ziel verschwimmt oder springt, werden Sie langsamer.</translation>
        </message>
        <message>
            <source>Put the chair against a wall. It must not have wheels.</source>
            <comment>care.chair</comment>
            <translation>Stellen Sie den Stuhl an eine Wand. Er darf keine Rollen haben.</translation>
        </message>
        <message>
            <source>If you see two tips, stop there. Move your finger back out.</source>
            <comment>care.double</comment>
            <translation>Wenn Sie zwei Spitzen sehen, halten Sie dort an. Führen Sie den Finger wieder weg.</translation>
        </message>
        <message>
            <source>Have moving or flashing scenes ever made you ill, or brought on a fit (seizure) or a migraine? Then do not do this.</source>
            <comment>care.flashes</comment>
            <translation>Haben bewegte oder flackernde Bilder Sie schon einmal krank gemacht oder einen Krampfanfall oder eine Migräne ausgelöst? Dann machen Sie das nicht.</translation>
        </message>
        <message>
            <source>Stay where your neck feels fine. Stop if your neck hurts or your arm tingles.</source>
            <comment>care.neck</comment>
            <translation>Bleiben Sie da, wo sich der Nacken gut anfühlt. Hören Sie auf, wenn der Nacken schmerzt oder der Arm kribbelt.</translation>
        </message>
        <message>
            <source>Hand the ball over. Do not throw it.</source>
            <comment>care.partner</comment>
            <translation>Geben Sie den Ball in die Hand. Werfen Sie ihn nicht.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop if it gets strong or does not go away.</source>
            <comment>care.settle</comment>
            <translation>Etwas Schwindel gehört dazu. Hören Sie auf, wenn er stark wird oder nicht nachlässt.</translation>
        </message>
        <message>
            <source>It must not hurt. Start small.</source>
            <comment>care.shoulder</comment>
            <translation>Es darf nicht wehtun. Beginnen Sie klein.</translation>
        </message>
        <message>
            <source>Use a firm chair with no wheels. Keep both feet flat.</source>
            <comment>care.slide</comment>
            <translation>Nehmen Sie einen festen Stuhl ohne Rollen. Beide Füße stehen flach auf dem Boden.</translation>
        </message>
        <message>
            <source>Your helper stays within reach of you. The mat must not slip.</source>
            <comment>care.soft</comment>
            <translation>Ihre Hilfsperson bleibt in Reichweite. Die Matte darf nicht rutschen.</translation>
        </message>
        <message>
            <source>Keep one hand on the rail and your eyes open.</source>
            <comment>care.stairs</comment>
            <translation>Eine Hand bleibt am Geländer, die Augen bleiben offen.</translation>
        </message>
        <message>
            <source>Have the corner behind you and a firm chair or a helper in front. Wear flat shoes or go barefoot.</source>
            <comment>care.stand</comment>
            <translation>Die Ecke ist hinter Ihnen, ein fester Stuhl oder eine Hilfsperson vor Ihnen. Tragen Sie flache Schuhe oder gehen Sie barfuß.</translation>
        </message>
        <message>
            <source>A little sway is fine. Hold on as soon as you need to.</source>
            <comment>care.steady</comment>
            <translation>Ein wenig Schwanken ist in Ordnung. Halten Sie sich fest, sobald es nötig ist.</translation>
        </message>
        <message>
            <source>Use something soft. Leave it on the floor if it drops.</source>
            <comment>care.toss</comment>
            <translation>Nehmen Sie etwas Weiches. Fällt es herunter, lassen Sie es liegen.</translation>
        </message>
        <message>
            <source>Clear the floor. Turn on the light. Your helper is at your side, and behind you when you walk backward.</source>
            <comment>care.walk</comment>
            <translation>Räumen Sie den Boden frei. Machen Sie Licht an. Ihre Hilfsperson geht neben Ihnen, und hinter Ihnen, wenn Sie rückwärts gehen.</translation>
        </message>
        <message>
            <source>Sit on a firm chair. To stand, have a corner or a helper within reach.</source>
            <comment>caution.fall</comment>
            <translation>Zum Sitzen ein fester Stuhl. Zum Stehen: Zimmerecke oder Hilfsperson in Reichweite.</translation>
        </message>
        <message>
            <source>Call for emergency help at once for a sudden bad headache, double vision, trouble speaking or swallowing, weakness or numbness, not being able to stand or walk, fainting, chest pain, or sudden loss of hearing.</source>
            <comment>caution.help</comment>
            <translation>Rufen Sie sofort den Notruf bei plötzlichen starken Kopfschmerzen, Doppeltsehen, Problemen beim Sprechen oder Schlucken, Schwäche oder Taubheit, wenn Sie nicht stehen oder gehen können, bei Ohnmacht, Schmerzen in der Brust oder plötzlichem Hörverlust.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop and sit when you feel unwell, are in pain, or the dizziness does not settle.</source>
            <comment>caution.stop</comment>
            <translation>Etwas Schwindel gehört dazu. Hören Sie auf und setzen Sie sich, wenn Ihnen unwohl ist, wenn Sie Schmerzen haben oder wenn der Schwindel nicht nachlässt.</translation>
        </message>
        <message>
            <source>Do only what your therapist has told you. Turnpost does not find out what you have and does not choose your treatment.</source>
            <comment>caution.therapist</comment>
            <translation>Machen Sie nur, was Ihre Therapiepraxis Ihnen gesagt hat. Turnpost stellt nicht fest, was Sie haben, und wählt Ihre Behandlung nicht aus.</translation>
        </message>
        <message>
            <source>Leave</source>
            <comment>choose.leave</comment>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>{what}: less</source>
            <comment>choose.less</comment>
            <translation>{what}: weniger</translation>
        </message>
        <message>
            <source>{what}: more</source>
            <comment>choose.more</comment>
            <translation>{what}: mehr</translation>
        </message>
        <message>
            <source>?</source>
            <comment>choose.none_yet</comment>
            <translation>?</translation>
        </message>
        <message>
            <source>The set-up worked. Choose what your therapist has asked for.</source>
            <comment>choose.ok</comment>
            <translation>Die Einrichtung hat geklappt. Wählen Sie, was Ihre Therapiepraxis Ihnen gesagt hat.</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>choose.repetitions</comment>
            <translation>Wiederholungen</translation>
        </message>
        <message>
            <source>Start exercise</source>
            <comment>choose.start</comment>
            <translation>Übung starten</translation>
        </message>
        <message>
            <source>Target size</source>
            <comment>choose.target</comment>
            <translation>Größe des Ziels</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>choose.target_value</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Beats a minute</source>
            <comment>choose.tempo</comment>
            <translation>Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>Choose an exercise</source>
            <comment>choose.title</comment>
            <translation>Wählen Sie eine Übung</translation>
        </message>
        <message>
            <source>Sample clip, no camera</source>
            <comment>clip_on</comment>
            <translation>Beispielfilm, keine Kamera</translation>
        </message>
        <message>
            <source>Sample</source>
            <comment>clip_on.short</comment>
            <translation>Beispiel</translation>
        </message>
        <message>
            <source>Saving ...</source>
            <comment>close.saving</comment>
            <translation>Wird gespeichert ...</translation>
        </message>
        <message>
            <source>,</source>
            <comment>comma</comment>
            <translation>,</translation>
        </message>
        <message>
            <source>Chin up a little</source>
            <comment>cue.chin_down</comment>
            <translation>Das Kinn etwas höher</translation>
        </message>
        <message>
            <source>Keep your eyes open</source>
            <comment>cue.eyes_closed</comment>
            <translation>Lassen Sie die Augen offen</translation>
        </message>
        <message>
            <source>Let your eyes go with your head</source>
            <comment>cue.eyes_not_with_head</comment>
            <translation>Lassen Sie die Augen mit dem Kopf gehen</translation>
        </message>
        <message>
            <source>Keep your eyes closed</source>
            <comment>cue.eyes_opened</comment>
            <translation>Lassen Sie die Augen zu</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>cue.gaze_off_target</comment>
            <translation>Augen auf das Ziel</translation>
        </message>
        <message>
            <source>Look all the way to the target</source>
            <comment>cue.gaze_short</comment>
            <translation>Schauen Sie ganz bis zum Ziel</translation>
        </message>
        <message>
            <source>Eyes first, then let your head come</source>
            <comment>cue.head_first</comment>
            <translation>Erst die Augen, dann den Kopf nachkommen lassen</translation>
        </message>
        <message>
            <source>Keep your head still</source>
            <comment>cue.head_moved</comment>
            <translation>Den Kopf still halten</translation>
        </message>
        <message>
            <source>Ear to the shoulder, nose ahead</source>
            <comment>cue.head_turned</comment>
            <translation>Ohr zur Schulter, Nase nach vorn</translation>
        </message>
        <message>
            <source>Turn the other way than the target</source>
            <comment>cue.head_with_target</comment>
            <translation>Drehen Sie sich anders herum als das Ziel</translation>
        </message>
        <message>
            <source>Come back into the picture</source>
            <comment>cue.left_picture</comment>
            <translation>Kommen Sie zurück ins Bild</translation>
        </message>
        <message>
            <source>Nearly: let your eyes get there first</source>
            <comment>cue.moved_together</comment>
            <translation>Fast: Lassen Sie die Augen zuerst ankommen</translation>
        </message>
        <message>
            <source>Not measured just now</source>
            <comment>cue.not_measured</comment>
            <translation>Gerade nicht gemessen</translation>
        </message>
        <message>
            <source>All the way up</source>
            <comment>cue.not_upright</comment>
            <translation>Ganz aufrichten</translation>
        </message>
        <message>
            <source>Are you all right?</source>
            <comment>cue.possible_fall</comment>
            <translation>Ist alles in Ordnung?</translation>
        </message>
        <message>
            <source>Let go when you feel steady</source>
            <comment>cue.steadied</comment>
            <translation>Lassen Sie los, wenn Sie sich sicher fühlen</translation>
        </message>
        <message>
            <source>A little higher, above your eyes</source>
            <comment>cue.throw_low</comment>
            <translation>Etwas höher, bis über die Augen</translation>
        </message>
        <message>
            <source>A little slower</source>
            <comment>cue.too_fast</comment>
            <translation>Ein wenig langsamer</translation>
        </message>
        <message>
            <source>A little smaller</source>
            <comment>cue.too_large</comment>
            <translation>Etwas kleiner bewegen</translation>
        </message>
        <message>
            <source>A little faster</source>
            <comment>cue.too_slow</comment>
            <translation>Ein wenig schneller</translation>
        </message>
        <message>
            <source>A little bigger</source>
            <comment>cue.too_small</comment>
            <translation>Etwas größer bewegen</translation>
        </message>
        <message>
            <source>You were asked to stop for today. Please rest, and practise again another day.</source>
            <comment>day_over</comment>
            <translation>Sie wurden gebeten, für heute aufzuhören. Bitte ruhen Sie sich aus und üben Sie an einem anderen Tag weiter.</translation>
        </message>
        <message>
            <source>Call your therapist before you practise again.</source>
            <comment>day_over.call</comment>
            <translation>Rufen Sie Ihre Therapiepraxis an, bevor Sie wieder üben.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now: {number}.</source>
            <comment>day_over.emergency</comment>
            <translation>Wenn Sie den Notruf noch nicht gewählt haben, rufen Sie jetzt an: {number}.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now.</source>
            <comment>day_over.emergency_no_number</comment>
            <translation>Wenn Sie den Notruf noch nicht gewählt haben, rufen Sie jetzt an.</translation>
        </message>
        <message>
            <source>My therapist told me today that I may go on</source>
            <comment>day_over.go_on</comment>
            <translation>Meine Therapiepraxis hat mir heute gesagt, dass ich weitermachen darf</translation>
        </message>
        <message>
            <source>Did your therapist say today that you may go on?</source>
            <comment>day_over.sure</comment>
            <translation>Hat Ihre Therapiepraxis heute gesagt, dass Sie weitermachen dürfen?</translation>
        </message>
        <message>
            <source>Your answer is kept for your therapist. Then the first questions come again.</source>
            <comment>day_over.sure.how</comment>
            <translation>Ihre Antwort wird für Ihre Therapiepraxis aufgehoben. Danach kommen die ersten Fragen noch einmal.</translation>
        </message>
        <message>
            <source>Yes, my therapist said so today</source>
            <comment>day_over.yes</comment>
            <translation>Ja, meine Therapiepraxis hat das heute gesagt</translation>
        </message>
        <message>
            <source>The sample clip can't be paused.</source>
            <comment>demo.cannot_pause</comment>
            <translation>Der Beispielfilm lässt sich nicht anhalten.</translation>
        </message>
        <message>
            <source>{figure} ◄ affected side</source>
            <comment>desk.affected</comment>
            <translation>{figure} ◄ betroffene Seite</translation>
        </message>
        <message>
            <source>{time} s</source>
            <comment>desk.at</comment>
            <translation>{time} s</translation>
        </message>
        <message>
            <source>millimetres</source>
            <comment>desk.axis.mm</comment>
            <translation>Millimeter</translation>
        </message>
        <message>
            <source>degrees, up is up</source>
            <comment>desk.axis.pitch</comment>
            <translation>Grad, aufwärts ist oben</translation>
        </message>
        <message>
            <source>degrees, right ear down is up</source>
            <comment>desk.axis.roll</comment>
            <translation>Grad, rechtes Ohr gesenkt ist oben</translation>
        </message>
        <message>
            <source>degrees, near is up</source>
            <comment>desk.axis.vergence</comment>
            <translation>Grad, nah ist oben</translation>
        </message>
        <message>
            <source>degrees, right is up</source>
            <comment>desk.axis.yaw</comment>
            <translation>Grad, rechts ist oben</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>desk.back</comment>
            <translation>Zurück (Esc)</translation>
        </message>
        <message>
            <source>◆ baseline, {text}</source>
            <comment>desk.baseline</comment>
            <translation>◆ Ausgangsmessung, {text}</translation>
        </message>
        <message>
            <source>◆ {value}</source>
            <comment>desk.baseline.mean</comment>
            <translation>◆ {value}</translation>
        </message>
        <message>
            <source>{text}; baseline of {day}</source>
            <comment>desk.baseline.of</comment>
            <translation>{text}; Ausgangsmessung vom {day}</translation>
        </message>
        <message>
            <source>Compare with</source>
            <comment>desk.beside</comment>
            <translation>Vergleichen mit</translation>
        </message>
        <message>
            <source>no other session</source>
            <comment>desk.beside.none</comment>
            <translation>keine andere Sitzung</translation>
        </message>
        <message>
            <source>between exercises</source>
            <comment>desk.between</comment>
            <translation>zwischen den Übungen</translation>
        </message>
        <message>
            <source>{count} answers tell no change below {least}</source>
            <comment>desk.change.answers</comment>
            <translation>{count} Antworten zeigen keine Änderung unter {least}</translation>
        </message>
        <message>
            <source>▼ fell</source>
            <comment>desk.change.fell</comment>
            <translation>▼ gefallen</translation>
        </message>
        <message>
            <source>{text}; {count} left out</source>
            <comment>desk.change.left_out</comment>
            <translation>{text}; {count} ausgelassen</translation>
        </message>
        <message>
            <source>no change (within ±{least})</source>
            <comment>desk.change.no_change</comment>
            <translation>keine Änderung (innerhalb ±{least})</translation>
        </message>
        <message>
            <source>{text}; another dose was asked</source>
            <comment>desk.change.other_dose</comment>
            <translation>{text}; eine andere Dosis war vorgegeben</translation>
        </message>
        <message>
            <source>▲ rose</source>
            <comment>desk.change.rose</comment>
            <translation>▲ gestiegen</translation>
        </message>
        <message>
            <source>{text}, against the baseline of {day}</source>
            <comment>desk.change.since</comment>
            <translation>{text}, gegenüber der Ausgangsmessung vom {day}</translation>
        </message>
        <message>
            <source>too few to compare</source>
            <comment>desk.change.too_few</comment>
            <translation>zu wenige zum Vergleichen</translation>
        </message>
        <message>
            <source>too uneven to tell a change below {least}</source>
            <comment>desk.change.uneven</comment>
            <translation>zu ungleichmäßig, um eine Änderung unter {least} zu erkennen</translation>
        </message>
        <message>
            <source>not comparable: other limits</source>
            <comment>desk.change.unlike</comment>
            <translation>nicht vergleichbar: andere Grenzen</translation>
        </message>
        <message>
            <source>{measured} of {all} sessions measured, {doubt} of them in doubt</source>
            <comment>desk.chart</comment>
            <translation>{measured} von {all} Sitzungen gemessen, davon {doubt} fraglich</translation>
        </message>
        <message>
            <source>Change</source>
            <comment>desk.col.change</comment>
            <translation>Änderung</translation>
        </message>
        <message>
            <source>Figure</source>
            <comment>desk.col.figure</comment>
            <translation>Messwert</translation>
        </message>
        <message>
            <source>At first</source>
            <comment>desk.col.first</comment>
            <translation>Anfangs</translation>
        </message>
        <message>
            <source>Lately</source>
            <comment>desk.col.last</comment>
            <translation>Zuletzt</translation>
        </message>
        <message>
            <source>All sessions</source>
            <comment>desk.col.trend</comment>
            <translation>Alle Sitzungen</translation>
        </message>
        <message>
            <source>Condition: {text}</source>
            <comment>desk.condition</comment>
            <translation>Bedingung: {text}</translation>
        </message>
        <message>
            <source>Practice is counted up to {day}.</source>
            <comment>desk.counted_to</comment>
            <translation>Das Üben ist bis {day} gezählt.</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>desk.day</comment>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>desk.day.short</comment>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>{before} → {after}</source>
            <comment>desk.dizzy</comment>
            <translation>{before} → {after}</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>desk.doubt.dark</comment>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>? In doubt for {length} s: {why}</source>
            <comment>desk.doubt.of</comment>
            <translation>? {length} s fraglich: {why}</translation>
        </message>
        <message>
            <source>the face was hard to follow</source>
            <comment>desk.doubt.unsure</comment>
            <translation>dem Gesicht war schwer zu folgen</translation>
        </message>
        <message>
            <source>Typed and not added to the notes yet, gone if you close now: {text}</source>
            <comment>desk.draft</comment>
            <translation>Geschrieben und noch nicht zu den Notizen hinzugefügt; wenn Sie jetzt schließen, ist es weg: {text}</translation>
        </message>
        <message>
            <source>Close without it</source>
            <comment>desk.draft.drop</comment>
            <translation>Ohne sie schließen</translation>
        </message>
        <message>
            <source>Go to the note</source>
            <comment>desk.draft.show</comment>
            <translation>Zur Notiz</translation>
        </message>
        <message>
            <source>! {what}, {length} s</source>
            <comment>desk.event</comment>
            <translation>! {what}, {length} s</translation>
        </message>
        <message>
            <source>{what} ×{count}</source>
            <comment>desk.event.times</comment>
            <translation>{what} ×{count}</translation>
        </message>
        <message>
            <source>{what} ({why})</source>
            <comment>desk.event.why</comment>
            <translation>{what} ({why})</translation>
        </message>
        <message>
            <source>Not read: {why}</source>
            <comment>desk.failed</comment>
            <translation>Nicht gelesen: {why}</translation>
        </message>
        <message>
            <source>{name}: {value}</source>
            <comment>desk.figure</comment>
            <translation>{name}: {value}</translation>
        </message>
        <message>
            <source>Figures</source>
            <comment>desk.figures</comment>
            <translation>Messwerte</translation>
        </message>
        <message>
            <source>All exercises</source>
            <comment>desk.filter.all</comment>
            <translation>Alle Übungen</translation>
        </message>
        <message>
            <source>Changes only</source>
            <comment>desk.filter.changed</comment>
            <translation>Nur Änderungen</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.filter.exercise</comment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>From</source>
            <comment>desk.filter.from</comment>
            <translation>Von</translation>
        </message>
        <message>
            <source>Show all</source>
            <comment>desk.filter.reset</comment>
            <translation>Alles zeigen</translation>
        </message>
        <message>
            <source>to</source>
            <comment>desk.filter.to</comment>
            <translation>bis</translation>
        </message>
        <message>
            <source>Urgent</source>
            <comment>desk.first</comment>
            <translation>Dringend</translation>
        </message>
        <message>
            <source>In doubt: {why}</source>
            <comment>desk.flag</comment>
            <translation>Fraglich: {why}</translation>
        </message>
        <message>
            <source>▨ Not measured for {length} s: {why}</source>
            <comment>desk.gap.of</comment>
            <translation>▨ {length} s nicht gemessen: {why}</translation>
        </message>
        <message>
            <source>Read on</source>
            <comment>desk.go_on</comment>
            <translation>Weiterlesen</translation>
        </message>
        <message>
            <source>{value}?</source>
            <comment>desk.in_doubt</comment>
            <translation>{value}?</translation>
        </message>
        <message>
            <source>● session   ◆ baseline   ○ ? in doubt, not compared   ┆ not measured   grey: asked for   At first, Lately: means of up to 5</source>
            <comment>desk.key</comment>
            <translation>● Sitzung   ◆ Ausgangsmessung   ○ ? fraglich, nicht verglichen   ┆ nicht gemessen   grau: vorgegeben   Anfangs, Zuletzt: Mittel aus bis zu 5</translation>
        </message>
        <message>
            <source>in doubt</source>
            <comment>desk.key.doubt</comment>
            <translation>fraglich</translation>
        </message>
        <message>
            <source>noticed</source>
            <comment>desk.key.event</comment>
            <translation>bemerkt</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>desk.key.gap</comment>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>marked</source>
            <comment>desk.key.mark</comment>
            <translation>gemerkt</translation>
        </message>
        <message>
            <source>marked not valid</source>
            <comment>desk.key.not_valid</comment>
            <translation>als ungültig markiert</translation>
        </message>
        <message>
            <source>pause</source>
            <comment>desk.key.pause</comment>
            <translation>Pause</translation>
        </message>
        <message>
            <source>every other repetition</source>
            <comment>desk.key.repetition</comment>
            <translation>jede zweite Wiederholung</translation>
        </message>
        <message>
            <source>Last session: {day}</source>
            <comment>desk.last</comment>
            <translation>Letzte Sitzung: {day}</translation>
        </message>
        <message>
            <source>eyes in the head</source>
            <comment>desk.line.eye</comment>
            <translation>Augen im Kopf</translation>
        </message>
        <message>
            <source>neck forward</source>
            <comment>desk.line.fore_aft</comment>
            <translation>Hals nach vorn</translation>
        </message>
        <message>
            <source>gaze</source>
            <comment>desk.line.gaze</comment>
            <translation>Blick</translation>
        </message>
        <message>
            <source>head</source>
            <comment>desk.line.head</comment>
            <translation>Kopf</translation>
        </message>
        <message>
            <source>neck height</source>
            <comment>desk.line.height</comment>
            <translation>Höhe des Halses</translation>
        </message>
        <message>
            <source>{line} not measured</source>
            <comment>desk.line.none</comment>
            <translation>{line} nicht gemessen</translation>
        </message>
        <message>
            <source>neck sideways</source>
            <comment>desk.line.sideways</comment>
            <translation>Hals seitwärts</translation>
        </message>
        <message>
            <source>target</source>
            <comment>desk.line.target</comment>
            <translation>Ziel</translation>
        </message>
        <message>
            <source>{line} {value}</source>
            <comment>desk.line.value</comment>
            <translation>{line} {value}</translation>
        </message>
        <message>
            <source>angle between the eyes</source>
            <comment>desk.line.vergence</comment>
            <translation>Winkel zwischen den Augen</translation>
        </message>
        <message>
            <source>Reading the session ...</source>
            <comment>desk.loading</comment>
            <translation>Die Sitzung wird gelesen ...</translation>
        </message>
        <message>
            <source>Looking through the folder ...</source>
            <comment>desk.looking</comment>
            <translation>Der Ordner wird durchgesehen ...</translation>
        </message>
        <message>
            <source>⚑ marked at {time} s</source>
            <comment>desk.mark.at</comment>
            <translation>⚑ gemerkt bei {time} s</translation>
        </message>
        <message>
            <source>⚑ Marked while it went on</source>
            <comment>desk.marked</comment>
            <translation>⚑ Währenddessen gemerkt</translation>
        </message>
        <message>
            <source>⚑ Marked outside the exercise</source>
            <comment>desk.marked.outside</comment>
            <translation>⚑ Außerhalb der Übung gemerkt</translation>
        </message>
        <message>
            <source>and {count} more</source>
            <comment>desk.more</comment>
            <translation>und {count} weitere</translation>
        </message>
        <message>
            <source>Sessions without a pseudonym</source>
            <comment>desk.nameless</comment>
            <translation>Sitzungen ohne Pseudonym</translation>
        </message>
        <message>
            <source>Each stands by itself</source>
            <comment>desk.nameless.each</comment>
            <translation>Jede steht für sich</translation>
        </message>
        <message>
            <source>Whose sessions these are is not known: they may be of several people. So each stands by itself, without practice, trends and conditions. Give each person a plan of their own, with a pseudonym; what is practised with it from then on has a name.</source>
            <comment>desk.nameless.what</comment>
            <translation>Von wem diese Sitzungen sind, ist nicht bekannt: Sie können von mehreren Personen sein. Darum steht jede für sich, ohne Übungshäufigkeit, Verläufe und Bedingungen. Geben Sie jeder Person einen eigenen Plan mit einem Pseudonym; was von da an damit geübt wird, hat einen Namen.</translation>
        </message>
        <message>
            <source>No plan at hand</source>
            <comment>desk.no_plan</comment>
            <translation>Kein Plan vorhanden</translation>
        </message>
        <message>
            <source>this folder has only the summary</source>
            <comment>desk.no_samples</comment>
            <translation>dieser Ordner hat nur die Zusammenfassung</translation>
        </message>
        <message>
            <source>Nothing was practised in this session. What was answered is under Figures.</source>
            <comment>desk.no_sets</comment>
            <translation>In dieser Sitzung wurde nichts geübt. Was geantwortet wurde, steht unter „Messwerte“.</translation>
        </message>
        <message>
            <source>The measured samples of this session are not in the folder: {why}</source>
            <comment>desk.no_trace</comment>
            <translation>Die Messdaten dieser Sitzung liegen nicht im Ordner: {why}</translation>
        </message>
        <message>
            <source>There are no sessions in this folder yet.</source>
            <comment>desk.nobody</comment>
            <translation>In diesem Ordner sind noch keine Sitzungen.</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>desk.not_asked</comment>
            <translation>nicht gefragt</translation>
        </message>
        <message>
            <source>{author}, {day}: {text}</source>
            <comment>desk.note</comment>
            <translation>{author}, {day}: {text}</translation>
        </message>
        <message>
            <source>Add note</source>
            <comment>desk.note.add</comment>
            <translation>Notiz hinzufügen</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>desk.note.failed</comment>
            <translation>Nicht gespeichert: {why}</translation>
        </message>
        <message>
            <source>repetition {number} is not valid</source>
            <comment>desk.note.invalid</comment>
            <translation>Wiederholung {number} ist ungültig</translation>
        </message>
        <message>
            <source>Notes stand beside the measured figures, which never change.</source>
            <comment>desk.note.kept</comment>
            <translation>Notizen stehen neben den Messwerten, die sich nie ändern.</translation>
        </message>
        <message>
            <source>Mark repetition not valid</source>
            <comment>desk.note.mark</comment>
            <translation>Wiederholung als ungültig markieren</translation>
        </message>
        <message>
            <source>There is nothing of yours to take back here: a note is taken back only by who wrote it, on the computer on which it was written.</source>
            <comment>desk.note.no_undo</comment>
            <translation>Hier gibt es nichts von Ihnen zurückzunehmen: Eine Notiz nimmt nur zurück, wer sie geschrieben hat, und nur an dem Computer, an dem sie geschrieben wurde.</translation>
        </message>
        <message>
            <source>No notes yet.</source>
            <comment>desk.note.none</comment>
            <translation>Noch keine Notizen.</translation>
        </message>
        <message>
            <source>This older note may be of another computer with the same login: {note}</source>
            <comment>desk.note.older</comment>
            <translation>Diese ältere Notiz kann von einem anderen Computer mit derselben Anmeldung sein: {note}</translation>
        </message>
        <message>
            <source>Take this old note back</source>
            <comment>desk.note.sure</comment>
            <translation>Diese alte Notiz zurücknehmen</translation>
        </message>
        <message>
            <source>A note on this session</source>
            <comment>desk.note.text</comment>
            <translation>Eine Notiz zu dieser Sitzung</translation>
        </message>
        <message>
            <source>Undo my last note</source>
            <comment>desk.note.undo</comment>
            <translation>Meine letzte Notiz zurücknehmen</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.notes</comment>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>{count}</source>
            <comment>desk.notes_count</comment>
            <translation>{count}</translation>
        </message>
        <message>
            <source>nothing practised</source>
            <comment>desk.nothing_done</comment>
            <translation>nichts geübt</translation>
        </message>
        <message>
            <source>Nothing that needs a look first</source>
            <comment>desk.nothing_first</comment>
            <translation>Nichts, was zuerst einen Blick braucht</translation>
        </message>
        <message>
            <source>Another folder</source>
            <comment>desk.open</comment>
            <translation>Anderer Ordner</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>desk.pause</comment>
            <translation>Pause</translation>
        </message>
        <message>
            <source>Ⅱ Paused for {length} s</source>
            <comment>desk.pause.of</comment>
            <translation>Ⅱ Pause von {length} s</translation>
        </message>
        <message>
            <source>People, most urgent first</source>
            <comment>desk.people</comment>
            <translation>Personen, Dringendes zuerst</translation>
        </message>
        <message>
            <source>Plan (Ctrl+E)</source>
            <comment>desk.plan</comment>
            <translation>Plan (Strg+E)</translation>
        </message>
        <message>
            <source>Practice</source>
            <comment>desk.practice</comment>
            <translation>Üben</translation>
        </message>
        <message>
            <source>Today's baseline is here. Set ranges and tempo by it?</source>
            <comment>desk.ranges</comment>
            <translation>Die heutige Ausgangsmessung ist da. Bereiche und Tempo danach einstellen?</translation>
        </message>
        <message>
            <source>Ranges and tempo</source>
            <comment>desk.ranges.set</comment>
            <translation>Bereiche und Tempo</translation>
        </message>
        <message>
            <source>People: {people}, sessions: {sessions}</source>
            <comment>desk.read</comment>
            <translation>Personen: {people}, Sitzungen: {sessions}</translation>
        </message>
        <message>
            <source>Reading {done} of {of} files ...</source>
            <comment>desk.reading</comment>
            <translation>{done} von {of} Dateien gelesen ...</translation>
        </message>
        <message>
            <source>repetition {number}</source>
            <comment>desk.rep</comment>
            <translation>Wiederholung {number}</translation>
        </message>
        <message>
            <source>{what} (marked not valid)</source>
            <comment>desk.rep.invalid</comment>
            <translation>{what} (als ungültig markiert)</translation>
        </message>
        <message>
            <source>{side} {value}</source>
            <comment>desk.rep.turn</comment>
            <translation>{side} {value}</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>desk.scol.dizzy</comment>
            <translation>Schwindel</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>desk.scol.done</comment>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>In doubt</source>
            <comment>desk.scol.doubt</comment>
            <translation>Fraglich</translation>
        </message>
        <message>
            <source>How it ended</source>
            <comment>desk.scol.ended</comment>
            <translation>Wie sie endete</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.scol.notes</comment>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>When</source>
            <comment>desk.scol.when</comment>
            <translation>Wann</translation>
        </message>
        <message>
            <source>{person}, {day}</source>
            <comment>desk.session</comment>
            <translation>{person}, {day}</translation>
        </message>
        <message>
            <source>Sessions</source>
            <comment>desk.sessions</comment>
            <translation>Sitzungen</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.set</comment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>{name} ({number} of {of})</source>
            <comment>desk.set.part</comment>
            <translation>{name} ({number} von {of})</translation>
        </message>
        <message>
            <source>In {days} days: {share} % of bouts asked</source>
            <comment>desk.share</comment>
            <translation>In {days} Tagen: {share} % der vorgesehenen Übungszeiten</translation>
        </message>
        <message>
            <source>In one day: {share} % of bouts asked</source>
            <comment>desk.share.one</comment>
            <translation>An einem Tag: {share} % der vorgesehenen Übungszeiten</translation>
        </message>
        <message>
            <source>Open session</source>
            <comment>desk.show</comment>
            <translation>Sitzung öffnen</translation>
        </message>
        <message>
            <source>Open the session of {day}</source>
            <comment>desk.show_name</comment>
            <translation>Die Sitzung vom {day} öffnen</translation>
        </message>
        <message>
            <source>affected side: both</source>
            <comment>desk.side.both</comment>
            <translation>betroffene Seite: beide</translation>
        </message>
        <message>
            <source>affected side: left</source>
            <comment>desk.side.left</comment>
            <translation>betroffene Seite: links</translation>
        </message>
        <message>
            <source>affected side: right</source>
            <comment>desk.side.right</comment>
            <translation>betroffene Seite: rechts</translation>
        </message>
        <message>
            <source>affected side not known</source>
            <comment>desk.side.unknown</comment>
            <translation>betroffene Seite nicht bekannt</translation>
        </message>
        <message>
            <source>Next: {text}</source>
            <comment>desk.step</comment>
            <translation>Als Nächstes: {text}</translation>
        </message>
        <message>
            <source>Stop reading</source>
            <comment>desk.stop</comment>
            <translation>Lesen anhalten</translation>
        </message>
        <message>
            <source>Stopped: only a part of the folder was read ({count} sessions).</source>
            <comment>desk.stopped</comment>
            <translation>Angehalten: Nur ein Teil des Ordners wurde gelesen (Sitzungen: {count}).</translation>
        </message>
        <message>
            <source>Bouts a day. {text}</source>
            <comment>desk.strip</comment>
            <translation>Übungszeiten pro Tag. {text}</translation>
        </message>
        <message>
            <source>a box a bout: full = measured, half = not seen by the camera, empty = asked, not done</source>
            <comment>desk.strip.key</comment>
            <translation>ein Kästchen je Übungszeit: voll = gemessen, halb = von der Kamera nicht gesehen, leer = vorgesehen, nicht gemacht</translation>
        </message>
        <message>
            <source>See</source>
            <comment>desk.then</comment>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Review</source>
            <comment>desk.title</comment>
            <translation>Durchsicht</translation>
        </message>
        <message>
            <source>Baseline together</source>
            <comment>desk.together</comment>
            <translation>Ausgangsmessung</translation>
        </message>
        <message>
            <source>The program opens beside this window. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.begun</comment>
            <translation>Das Programm öffnet sich neben diesem Fenster. Ist die Sitzung vorbei, steht sie von selbst hier.</translation>
        </message>
        <message>
            <source>Something goes on in the program's window. End it there, then begin here again.</source>
            <comment>desk.together.busy</comment>
            <translation>Im Fenster des Programms ist etwas im Gange. Beenden Sie es dort und beginnen Sie dann hier noch einmal.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip until it is closed. Close it, and this window with it; then start the program again and begin here once more.</source>
            <comment>desk.together.clip</comment>
            <translation>Das Fenster des Programms zeigt den Beispielfilm, bis es geschlossen wird. Schließen Sie es, und mit ihm dieses Fenster; starten Sie das Programm dann neu und beginnen Sie hier noch einmal.</translation>
        </message>
        <message>
            <source>The program could not be opened.</source>
            <comment>desk.together.failed</comment>
            <translation>Das Programm ließ sich nicht öffnen.</translation>
        </message>
        <message>
            <source>The program's window is ready for it. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.here</comment>
            <translation>Das Fenster des Programms ist dafür bereit. Ist die Sitzung vorbei, steht sie von selbst hier.</translation>
        </message>
        <message>
            <source>This folder has no plan with this pseudonym. Make one first.</source>
            <comment>desk.together.no_plan</comment>
            <translation>In diesem Ordner ist kein Plan mit diesem Pseudonym. Legen Sie zuerst einen an.</translation>
        </message>
        <message>
            <source>The program is open already. Close its window first, then begin here again.</source>
            <comment>desk.together.open</comment>
            <translation>Das Programm ist schon geöffnet. Schließen Sie zuerst sein Fenster und beginnen Sie dann hier noch einmal.</translation>
        </message>
        <message>
            <source>The program could not take the plan; its window says why.</source>
            <comment>desk.together.refused</comment>
            <translation>Das Programm konnte den Plan nicht übernehmen; sein Fenster sagt, warum.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip. Go back to the first page there, then begin here again.</source>
            <comment>desk.together.sample</comment>
            <translation>Das Fenster des Programms zeigt den Beispielfilm. Gehen Sie dort zurück zur ersten Seite und beginnen Sie dann hier noch einmal.</translation>
        </message>
        <message>
            <source>Head, gaze and target over time</source>
            <comment>desk.trace</comment>
            <translation>Kopf, Blick und Ziel über die Zeit</translation>
        </message>
        <message>
            <source>← → cursor, with Shift a second; + − zoom; Page keys move; Home shows the whole exercise</source>
            <comment>desk.trace.how</comment>
            <translation>← → Zeiger, mit Umschalt eine Sekunde; + − Vergrößerung; Bild-Tasten bewegen; Pos1 zeigt die ganze Übung</translation>
        </message>
        <message>
            <source>Trends</source>
            <comment>desk.trends</comment>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>{what} (with {count} marked not valid)</source>
            <comment>desk.trends.marked</comment>
            <translation>{what} (mit {count} als ungültig markierten)</translation>
        </message>
        <message>
            <source>Files left out: {count}</source>
            <comment>desk.unread</comment>
            <translation>Ausgelassene Dateien: {count}</translation>
        </message>
        <message>
            <source>Files left out, and why</source>
            <comment>desk.unread.name</comment>
            <translation>Ausgelassene Dateien, mit Grund</translation>
        </message>
        <message>
            <source>{path}: {why}</source>
            <comment>desk.unread.row</comment>
            <translation>{path}: {why}</translation>
        </message>
        <message>
            <source>Files left out: {count} (could not be read: {not_read})</source>
            <comment>desk.unread.some</comment>
            <translation>Ausgelassene Dateien: {count} (nicht lesbar: {not_read})</translation>
        </message>
        <message>
            <source>Over time</source>
            <comment>desk.what</comment>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>Whole session</source>
            <comment>desk.whole</comment>
            <translation>Ganze Sitzung</translation>
        </message>
        <message>
            <source>Zoom in</source>
            <comment>desk.zoom_in</comment>
            <translation>Vergrößern</translation>
        </message>
        <message>
            <source>Zoom out</source>
            <comment>desk.zoom_out</comment>
            <translation>Verkleinern</translation>
        </message>
        <message>
            <source>Beware: {what}.</source>
            <comment>edit.about.cautions</comment>
            <translation>Vorsicht: {what}.</translation>
        </message>
        <message>
            <source>{what}.</source>
            <comment>edit.about.counted</comment>
            <translation>{what}.</translation>
        </message>
        <message>
            <source>Its time counts as gaze stabilisation.</source>
            <comment>edit.about.minutes</comment>
            <translation>Ihre Zeit zählt als Blickstabilisierung.</translation>
        </message>
        <message>
            <source>Not measured: {what}.</source>
            <comment>edit.about.not_measured</comment>
            <translation>Nicht gemessen: {what}.</translation>
        </message>
        <message>
            <source>The patient reads: “{name}”</source>
            <comment>edit.about.patient</comment>
            <translation>Die Person liest: „{name}“</translation>
        </message>
        <message>
            <source>Add (Ctrl+E)</source>
            <comment>edit.add</comment>
            <translation>Hinzufügen (Strg+E)</translation>
        </message>
        <message>
            <source>Add an exercise from the catalogue</source>
            <comment>edit.add.name</comment>
            <translation>Eine Übung aus dem Katalog hinzufügen</translation>
        </message>
        <message>
            <source>Add stage</source>
            <comment>edit.add_stage</comment>
            <translation>Stufe hinzufügen</translation>
        </message>
        <message>
            <source>Add a stage at the end</source>
            <comment>edit.add_stage.name</comment>
            <translation>Am Ende eine Stufe hinzufügen</translation>
        </message>
        <message>
            <source>Add it (Enter)</source>
            <comment>edit.add_this</comment>
            <translation>Hinzufügen (Enter)</translation>
        </message>
        <message>
            <source>Figures come from</source>
            <comment>edit.after</comment>
            <translation>Die Werte kommen von</translation>
        </message>
        <message>
            <source>What stands further up in the plan.</source>
            <comment>edit.after.how</comment>
            <translation>Was weiter oben im Plan steht.</translation>
        </message>
        <message>
            <source>Age group</source>
            <comment>edit.age</comment>
            <translation>Altersgruppe</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.as_usual</comment>
            <translation>wie üblich: {usual}</translation>
        </message>
        <message>
            <source>Ask about nausea too</source>
            <comment>edit.ask.nausea</comment>
            <translation>Auch nach Übelkeit fragen</translation>
        </message>
        <message>
            <source>Ask about unsteadiness too</source>
            <comment>edit.ask.unsteadiness</comment>
            <translation>Auch nach Unsicherheit fragen</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>edit.back</comment>
            <translation>Zurück (Esc)</translation>
        </message>
        <message>
            <source>Baseline of {day}</source>
            <comment>edit.baseline</comment>
            <translation>Ausgangsmessung vom {day}</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>edit.baseline.bpm</comment>
            <translation>{tempo} Schläge pro Minute</translation>
        </message>
        <message>
            <source>{new} instead of {old}</source>
            <comment>edit.baseline.instead</comment>
            <translation>{new} statt {old}</translation>
        </message>
        <message>
            <source>{entry}: {what}</source>
            <comment>edit.baseline.line</comment>
            <translation>{entry}: {what}</translation>
        </message>
        <message>
            <source>{told}. Not offered: {why}</source>
            <comment>edit.baseline.not_offered</comment>
            <translation>{told}. Nicht angeboten: {why}</translation>
        </message>
        <message>
            <source>nothing measured</source>
            <comment>edit.baseline.nothing</comment>
            <translation>nichts gemessen</translation>
        </message>
        <message>
            <source>{low} to {high}°</source>
            <comment>edit.baseline.range</comment>
            <translation>{low} bis {high}°</translation>
        </message>
        <message>
            <source>symptoms +{points}</source>
            <comment>edit.baseline.rise</comment>
            <translation>Beschwerden +{points}</translation>
        </message>
        <message>
            <source>{deg}° to both sides</source>
            <comment>edit.baseline.swing</comment>
            <translation>{deg}° nach beiden Seiten</translation>
        </message>
        <message>
            <source>Take over: {what}</source>
            <comment>edit.baseline.take</comment>
            <translation>Übernehmen: {what}</translation>
        </message>
        <message>
            <source>Take over for all exercises</source>
            <comment>edit.baseline.take_all</comment>
            <translation>Für alle Übungen übernehmen</translation>
        </message>
        <message>
            <source>{told}. To take over: {what}</source>
            <comment>edit.baseline.takes</comment>
            <translation>{told}. Zu übernehmen: {what}</translation>
        </message>
        <message>
            <source>nobody said whether the target was clear</source>
            <comment>edit.baseline.why.clarity_not_asked</comment>
            <translation>niemand hat gesagt, ob das Ziel scharf war</translation>
        </message>
        <message>
            <source>the figures are in doubt</source>
            <comment>edit.baseline.why.doubt</comment>
            <translation>die Werte sind fraglich</translation>
        </message>
        <message>
            <source>a session of that day was broken off</source>
            <comment>edit.baseline.why.ended</comment>
            <translation>eine Sitzung dieses Tages wurde abgebrochen</translation>
        </message>
        <message>
            <source>a possible fall was seen</source>
            <comment>edit.baseline.why.fall</comment>
            <translation>ein möglicher Sturz wurde gesehen</translation>
        </message>
        <message>
            <source>too few turns</source>
            <comment>edit.baseline.why.few_turns</comment>
            <translation>zu wenige Drehungen</translation>
        </message>
        <message>
            <source>no score was given after it</source>
            <comment>edit.baseline.why.no_scores</comment>
            <translation>danach wurde kein Wert angegeben</translation>
        </message>
        <message>
            <source>the target was not clear</source>
            <comment>edit.baseline.why.not_clear</comment>
            <translation>das Ziel war nicht scharf</translation>
        </message>
        <message>
            <source>not done that day</source>
            <comment>edit.baseline.why.not_done</comment>
            <translation>an diesem Tag nicht gemacht</translation>
        </message>
        <message>
            <source>it was not measured</source>
            <comment>edit.baseline.why.not_measured</comment>
            <translation>es wurde nicht gemessen</translation>
        </message>
        <message>
            <source>symptoms did not settle</source>
            <comment>edit.baseline.why.not_settled</comment>
            <translation>die Beschwerden klangen nicht ab</translation>
        </message>
        <message>
            <source>done as another exercise</source>
            <comment>edit.baseline.why.other</comment>
            <translation>als andere Übung gemacht</translation>
        </message>
        <message>
            <source>symptoms rose by more than 2</source>
            <comment>edit.baseline.why.rose</comment>
            <translation>die Beschwerden stiegen um mehr als 2</translation>
        </message>
        <message>
            <source>the turns were too small</source>
            <comment>edit.baseline.why.too_small</comment>
            <translation>die Drehungen waren zu klein</translation>
        </message>
        <message>
            <source>Bouts a day</source>
            <comment>edit.bouts</comment>
            <translation>Übungszeiten am Tag</translation>
        </message>
        <message>
            <source>Usual: 3, at least three a day ({source})</source>
            <comment>edit.bouts.how</comment>
            <translation>Üblich: 3, mindestens drei am Tag ({source})</translation>
        </message>
        <message>
            <source>{tempo} a minute</source>
            <comment>edit.bpm</comment>
            <translation>{tempo} pro Minute</translation>
        </message>
        <message>
            <source>Cancel</source>
            <comment>edit.cancel</comment>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Catalogue</source>
            <comment>edit.catalogue</comment>
            <translation>Katalog</translation>
        </message>
        <message>
            <source>The target was said to be clear</source>
            <comment>edit.clear</comment>
            <translation>Das Ziel war nach Angabe klar</translation>
        </message>
        <message>
            <source>Before anything but seated work</source>
            <comment>edit.clearance</comment>
            <translation>Vor allem, was nicht im Sitzen ist</translation>
        </message>
        <message>
            <source>Until all of this is ticked, only what the seated starter has is offered.</source>
            <comment>edit.clearance.how</comment>
            <translation>Bis alles abgehakt ist, wird nur angeboten, was der Einstieg im Sitzen hat.</translation>
        </message>
        <message>
            <source>I am satisfied of this</source>
            <comment>edit.cleared</comment>
            <translation>Das ist geklärt</translation>
        </message>
        <message>
            <source>Item {number}: I am satisfied of this</source>
            <comment>edit.cleared.name</comment>
            <translation>Punkt {number}: Das ist geklärt</translation>
        </message>
        <message>
            <source>Condition, in words</source>
            <comment>edit.condition</comment>
            <translation>Bedingung, in Worten</translation>
        </message>
        <message>
            <source>It never opens by itself: the condition is met, and the patient says yes.</source>
            <comment>edit.condition.how</comment>
            <translation>Nichts öffnet sich von selbst: Die Bedingung ist erfüllt, und die Person sagt Ja.</translation>
        </message>
        <message>
            <source>Copy</source>
            <comment>edit.copy</comment>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Copy the chosen exercise</source>
            <comment>edit.copy.name</comment>
            <translation>Die gewählte Übung kopieren</translation>
        </message>
        <message>
            <source>Days and rests</source>
            <comment>edit.days</comment>
            <translation>Tage und Pausen</translation>
        </message>
        <message>
            <source>Days a week</source>
            <comment>edit.days_a_week</comment>
            <translation>Tage in der Woche</translation>
        </message>
        <message>
            <source>Dose, tempo, range</source>
            <comment>edit.dose</comment>
            <translation>Dosis, Tempo, Ausschlag</translation>
        </message>
        <message>
            <source>{seconds} s</source>
            <comment>edit.dose.seconds</comment>
            <translation>{seconds} s</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>edit.dose.times</comment>
            <translation>{count}-mal</translation>
        </message>
        <message>
            <source>Usual: {dose} ({source})</source>
            <comment>edit.dose.usual</comment>
            <translation>Üblich: {dose} ({source})</translation>
        </message>
        <message>
            <source>↓</source>
            <comment>edit.down</comment>
            <translation>↓</translation>
        </message>
        <message>
            <source>Move what is chosen down, Alt+Down</source>
            <comment>edit.down.name</comment>
            <translation>Das Gewählte nach unten, Alt+Pfeil runter</translation>
        </message>
        <message>
            <source>Emergency number</source>
            <comment>edit.emergency</comment>
            <translation>Notrufnummer</translation>
        </message>
        <message>
            <source>Said and printed with the signs that need help at once.</source>
            <comment>edit.emergency.how</comment>
            <translation>Wird genannt und gedruckt bei den Zeichen, die sofort Hilfe brauchen.</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Sessions and conditions refer to it.</source>
            <comment>edit.entry.id.how</comment>
            <translation>Buchstaben, Ziffern, . _ und -. Sitzungen und Bedingungen beziehen sich darauf.</translation>
        </message>
        <message>
            <source>Eyes</source>
            <comment>edit.eyes</comment>
            <translation>Augen</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.eyes_closed</comment>
            <translation>Augen geschlossen</translation>
        </message>
        <message>
            <source>Wrong: {text}</source>
            <comment>edit.fault</comment>
            <translation>Falsch: {text}</translation>
        </message>
        <message>
            <source>File</source>
            <comment>edit.file</comment>
            <translation>Datei</translation>
        </message>
        <message>
            <source>Find</source>
            <comment>edit.find</comment>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>There is no such exercise.</source>
            <comment>edit.find.none</comment>
            <translation>So eine Übung gibt es nicht.</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>edit.finding.entries</comment>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>Wrong: {field}: {text}</source>
            <comment>edit.finding.fault</comment>
            <translation>Falsch: {field}: {text}</translation>
        </message>
        <message>
            <source>{place}, {field}</source>
            <comment>edit.finding.in</comment>
            <translation>{place}, {field}</translation>
        </message>
        <message>
            <source>Note: {field}: {text}</source>
            <comment>edit.finding.remark</comment>
            <translation>Hinweis: {field}: {text}</translation>
        </message>
        <message>
            <source>To put right, and to know (F8)</source>
            <comment>edit.findings</comment>
            <translation>Zu berichtigen und zu wissen (F8)</translation>
        </message>
        <message>
            <source>How it is done</source>
            <comment>edit.form</comment>
            <translation>Wie sie gemacht wird</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>edit.from_to</comment>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>edit.good</comment>
            <translation>Gut</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <comment>edit.hand_over</comment>
            <translation>Übergabe</translation>
        </message>
        <message>
            <source>Changed when the plan is handed out: in the review, under Files in and out.</source>
            <comment>edit.hand_over.how</comment>
            <translation>Wird geändert, wenn der Plan ausgegeben wird: in der Durchsicht unter „Dateien rein und raus“.</translation>
        </message>
        <message>
            <source>The patient's files are locked. Keys that open them: {count}.</source>
            <comment>edit.hand_over.keys</comment>
            <translation>Die Dateien der Person sind verschlossen. Schlüssel, die sie öffnen: {count}.</translation>
        </message>
        <message>
            <source>Names no key yet: the patient can make no file for you with this plan.</source>
            <comment>edit.hand_over.nobody</comment>
            <translation>Nennt noch keinen Schlüssel: Mit diesem Plan kann die Person keine Datei für Sie machen.</translation>
        </message>
        <message>
            <source>The patient's files are without a lock: anybody can read them.</source>
            <comment>edit.hand_over.plain</comment>
            <translation>Die Dateien der Person sind ohne Schloss: Jeder kann sie lesen.</translation>
        </message>
        <message>
            <source>Who starts above that score</source>
            <comment>edit.high</comment>
            <translation>Wer über diesem Wert beginnt</translation>
        </message>
        <message>
            <source>may rise a little from there</source>
            <comment>edit.high.baseline</comment>
            <translation>darf von dort ein wenig steigen</translation>
        </message>
        <message>
            <source>Usual: seated work only, the stricter of the two ({source})</source>
            <comment>edit.high.how</comment>
            <translation>Üblich: nur im Sitzen, das strengere von beiden ({source})</translation>
        </message>
        <message>
            <source>does seated work only</source>
            <comment>edit.high.seated_only</comment>
            <translation>übt nur im Sitzen</translation>
        </message>
        <message>
            <source>{what}, up to</source>
            <comment>edit.high_end</comment>
            <translation>{what}, bis</translation>
        </message>
        <message>
            <source>ID</source>
            <comment>edit.id</comment>
            <translation>ID</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.in_stage</comment>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Item {number}</source>
            <comment>edit.item</comment>
            <translation>Punkt {number}</translation>
        </message>
        <message>
            <source>Add an item</source>
            <comment>edit.item.add</comment>
            <translation>Einen Punkt hinzufügen</translation>
        </message>
        <message>
            <source>Remove item {number}</source>
            <comment>edit.item.remove</comment>
            <translation>Punkt {number} entfernen</translation>
        </message>
        <message>
            <source>Ladder over the weeks</source>
            <comment>edit.ladder</comment>
            <translation>Steigerung über die Wochen</translation>
        </message>
        <message>
            <source>A posture that is held has neither tempo nor range to change.</source>
            <comment>edit.ladder.held</comment>
            <translation>Eine gehaltene Stellung hat weder Tempo noch Ausschlag, die sich ändern ließen.</translation>
        </message>
        <message>
            <source>Each step holds from its week on, until the next one.</source>
            <comment>edit.ladder.how</comment>
            <translation>Jeder Schritt gilt ab seiner Woche bis zum nächsten.</translation>
        </message>
        <message>
            <source>The last changes are in no file yet.</source>
            <comment>edit.leave</comment>
            <translation>Die letzten Änderungen stehen noch in keiner Datei.</translation>
        </message>
        <message>
            <source>Drop them</source>
            <comment>edit.leave.discard</comment>
            <translation>Verwerfen</translation>
        </message>
        <message>
            <source>Save them</source>
            <comment>edit.leave.save</comment>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Stay here</source>
            <comment>edit.leave.stay</comment>
            <translation>Hier bleiben</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <comment>edit.line.entry</comment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>▲ wrong: {text}</source>
            <comment>edit.line.fault</comment>
            <translation>▲ falsch: {text}</translation>
        </message>
        <message>
            <source>Stage {number}: {name}</source>
            <comment>edit.line.stage</comment>
            <translation>Stufe {number}: {name}</translation>
        </message>
        <message>
            <source>Look for it ...</source>
            <comment>edit.look</comment>
            <translation>Suchen ...</translation>
        </message>
        <message>
            <source>Kind of loss</source>
            <comment>edit.loss</comment>
            <translation>Art des Ausfalls</translation>
        </message>
        <message>
            <source>acute, one side</source>
            <comment>edit.loss.acute</comment>
            <translation>akut, eine Seite</translation>
        </message>
        <message>
            <source>both sides</source>
            <comment>edit.loss.bilateral</comment>
            <translation>beide Seiten</translation>
        </message>
        <message>
            <source>chronic, one side</source>
            <comment>edit.loss.chronic</comment>
            <translation>chronisch, eine Seite</translation>
        </message>
        <message>
            <source>other</source>
            <comment>edit.loss.other</comment>
            <translation>andere</translation>
        </message>
        <message>
            <source>{what}, from</source>
            <comment>edit.low</comment>
            <translation>{what}, von</translation>
        </message>
        <message>
            <source>Least share measured, 0 to 1</source>
            <comment>edit.measured</comment>
            <translation>Kleinster gemessener Anteil, 0 bis 1</translation>
        </message>
        <message>
            <source>I found it met on</source>
            <comment>edit.met_on</comment>
            <translation>Ich fand sie erfüllt am</translation>
        </message>
        <message>
            <source>Your own decision; it stands in place of the figures.</source>
            <comment>edit.met_on.how</comment>
            <translation>Ihre eigene Entscheidung; sie steht anstelle der Werte.</translation>
        </message>
        <message>
            <source>Met, as of today</source>
            <comment>edit.met_today</comment>
            <translation>Heute erfüllt</translation>
        </message>
        <message>
            <source>Gaze stabilisation</source>
            <comment>edit.minutes</comment>
            <translation>Blickstabilisierung</translation>
        </message>
        <message>
            <source>no figure</source>
            <comment>edit.minutes.none</comment>
            <translation>keine Angabe</translation>
        </message>
        <message>
            <source>About {minutes} min a day planned, all entries open and rests left out. Guideline, as quoted: {guideline}.</source>
            <comment>edit.minutes.said</comment>
            <translation>Etwa {minutes} min am Tag geplant, wenn alle Einträge offen sind, ohne Pausen. Leitlinie, wie zitiert: {guideline}.</translation>
        </message>
        <message>
            <source>gaze stabilisation: {minutes} min a day, guideline as quoted: {figure}</source>
            <comment>edit.minutes.short</comment>
            <translation>Blickstabilisierung: {minutes} min am Tag, Leitlinie wie zitiert: {figure}</translation>
        </message>
        <message>
            <source>To each side of rest. Nothing in the plan may ask for more.</source>
            <comment>edit.neck.how</comment>
            <translation>Von der Ruhe zu jeder Seite. Nichts im Plan darf mehr verlangen.</translation>
        </message>
        <message>
            <source>Neck limit, nodding, degrees</source>
            <comment>edit.neck.pitch</comment>
            <translation>Grenze für den Nacken, Nicken, Grad</translation>
        </message>
        <message>
            <source>Neck limit, turning, degrees</source>
            <comment>edit.neck.yaw</comment>
            <translation>Grenze für den Nacken, Drehen, Grad</translation>
        </message>
        <message>
            <source>New</source>
            <comment>edit.new</comment>
            <translation>Neu</translation>
        </message>
        <message>
            <source>not in a file yet</source>
            <comment>edit.no_file</comment>
            <translation>noch in keiner Datei</translation>
        </message>
        <message>
            <source>not said</source>
            <comment>edit.none</comment>
            <translation>nicht angegeben</translation>
        </message>
        <message>
            <source>Not saved: {why}. Everything is still here.</source>
            <comment>edit.not_saved</comment>
            <translation>Nicht gespeichert: {why}. Alles ist noch hier.</translation>
        </message>
        <message>
            <source>Not known while something is wrong with the plan.</source>
            <comment>edit.not_yet</comment>
            <translation>Nicht bekannt, solange am Plan etwas falsch ist.</translation>
        </message>
        <message>
            <source>Your note</source>
            <comment>edit.note</comment>
            <translation>Ihre Notiz</translation>
        </message>
        <message>
            <source>A note is asked for: {why}.</source>
            <comment>edit.note.asked</comment>
            <translation>Eine Notiz wird verlangt: {why}.</translation>
        </message>
        <message>
            <source>For you and your colleagues.</source>
            <comment>edit.note.how</comment>
            <translation>Für Sie und Ihre Kolleginnen und Kollegen.</translation>
        </message>
        <message>
            <source>Least share on target, 0 to 1</source>
            <comment>edit.on_target</comment>
            <translation>Kleinster Anteil auf dem Ziel, 0 bis 1</translation>
        </message>
        <message>
            <source>Open</source>
            <comment>edit.open</comment>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>edit.open.which</comment>
            <translation>Welcher Plan?</translation>
        </message>
        <message>
            <source>closed</source>
            <comment>edit.option.closed</comment>
            <translation>geschlossen</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.option.eyes_closed</comment>
            <translation>Augen geschlossen</translation>
        </message>
        <message>
            <source>firm</source>
            <comment>edit.option.firm</comment>
            <translation>fest</translation>
        </message>
        <message>
            <source>with head shakes</source>
            <comment>edit.option.head_shake</comment>
            <translation>mit Kopfschütteln</translation>
        </message>
        <message>
            <source>{option} (with a helper only)</source>
            <comment>edit.option.helper</comment>
            <translation>{option} (nur mit Hilfsperson)</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.option.no_shake</comment>
            <translation>keines</translation>
        </message>
        <message>
            <source>open</source>
            <comment>edit.option.open</comment>
            <translation>offen</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>edit.option.sitting</comment>
            <translation>sitzend</translation>
        </message>
        <message>
            <source>soft</source>
            <comment>edit.option.soft</comment>
            <translation>weich</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>edit.option.soft_surface</comment>
            <translation>weicher Boden</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>edit.option.standing</comment>
            <translation>stehend</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>edit.option.walking</comment>
            <translation>gehend</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>edit.option.wall</comment>
            <translation>Marken an der Wand</translation>
        </message>
        <message>
            <source>or seconds</source>
            <comment>edit.or_seconds</comment>
            <translation>oder Sekunden</translation>
        </message>
        <message>
            <source>Parts of the plan</source>
            <comment>edit.outline</comment>
            <translation>Teile des Plans</translation>
        </message>
        <message>
            <source>the patient's own pace</source>
            <comment>edit.own_pace</comment>
            <translation>eigenes Tempo der Person</translation>
        </message>
        <message>
            <source>Person and days</source>
            <comment>edit.page.plan</comment>
            <translation>Person und Tage</translation>
        </message>
        <message>
            <source>Safety</source>
            <comment>edit.page.safety</comment>
            <translation>Sicherheit</translation>
        </message>
        <message>
            <source>Symptom rules</source>
            <comment>edit.page.symptoms</comment>
            <translation>Regeln für Beschwerden</translation>
        </message>
        <message>
            <source>Pseudonym</source>
            <comment>edit.person</comment>
            <translation>Pseudonym</translation>
        </message>
        <message>
            <source>Never a real name: the file travels. With another one, the plan gets a new ID, and ticks and days found met are taken out.</source>
            <comment>edit.person.how</comment>
            <translation>Nie ein echter Name: Die Datei geht auf Reisen. Mit einem anderen bekommt der Plan eine neue ID, und Häkchen und Tage, an denen etwas erfüllt war, fallen weg.</translation>
        </message>
        <message>
            <source>Plan ID</source>
            <comment>edit.plan_id</comment>
            <translation>Plan-ID</translation>
        </message>
        <message>
            <source>Sessions belong to a plan by this ID. With another one, conditions begin to count anew.</source>
            <comment>edit.plan_id.how</comment>
            <translation>Über diese ID gehören Sitzungen zu einem Plan. Mit einer anderen beginnen Bedingungen neu zu zählen.</translation>
        </message>
        <message>
            <source>Posture</source>
            <comment>edit.posture</comment>
            <translation>Haltung</translation>
        </message>
        <message>
            <source>the whole plan</source>
            <comment>edit.preview.all</comment>
            <translation>der ganze Plan</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>edit.preview.entry</comment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>What the patient sees</source>
            <comment>edit.preview.name</comment>
            <translation>Was die Person sieht</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.preview.stage</comment>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Week</source>
            <comment>edit.preview.week</comment>
            <translation>Woche</translation>
        </message>
        <message>
            <source>Range to each side, degrees</source>
            <comment>edit.range</comment>
            <translation>Ausschlag zu jeder Seite, Grad</translation>
        </message>
        <message>
            <source>Usually not asked for.</source>
            <comment>edit.range.none</comment>
            <translation>Wird meist nicht verlangt.</translation>
        </message>
        <message>
            <source>Redo</source>
            <comment>edit.redo</comment>
            <translation>Wiederherstellen</translation>
        </message>
        <message>
            <source>Not given</source>
            <comment>edit.refused</comment>
            <translation>Nicht möglich</translation>
        </message>
        <message>
            <source>{option}: {why}</source>
            <comment>edit.refused.line</comment>
            <translation>{option}: {why}</translation>
        </message>
        <message>
            <source>To know: {text}.</source>
            <comment>edit.remark</comment>
            <translation>Zu wissen: {text}.</translation>
        </message>
        <message>
            <source>Remove</source>
            <comment>edit.remove</comment>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Remove what is chosen, Delete in the list</source>
            <comment>edit.remove.name</comment>
            <translation>Das Gewählte entfernen, in der Liste Entf</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>edit.repetitions</comment>
            <translation>Wiederholungen</translation>
        </message>
        <message>
            <source>Replace it</source>
            <comment>edit.replace</comment>
            <translation>Ersetzen</translation>
        </message>
        <message>
            <source>{file} is there already. If you replace it, what it holds now is gone.</source>
            <comment>edit.replace.ask</comment>
            <translation>{file} gibt es schon. Wenn Sie die Datei ersetzen, ist ihr bisheriger Inhalt weg.</translation>
        </message>
        <message>
            <source>{file} was changed by somebody else since you opened it. If you replace it, their changes are gone.</source>
            <comment>edit.replace.changed</comment>
            <translation>{file} wurde von jemand anderem geändert, seit Sie die Datei geöffnet haben. Wenn Sie sie ersetzen, sind diese Änderungen weg.</translation>
        </message>
        <message>
            <source>Choose another name</source>
            <comment>edit.replace.other</comment>
            <translation>Anderen Namen wählen</translation>
        </message>
        <message>
            <source>Rest between entries, s</source>
            <comment>edit.rest</comment>
            <translation>Pause zwischen Einträgen, s</translation>
        </message>
        <message>
            <source>Most rise from a high start</source>
            <comment>edit.rise</comment>
            <translation>Größter Anstieg von einem hohen Beginn</translation>
        </message>
        <message>
            <source>Needed where a rise is allowed.</source>
            <comment>edit.rise.how</comment>
            <translation>Nötig, wo ein Anstieg erlaubt ist.</translation>
        </message>
        <message>
            <source>Most rise of the score</source>
            <comment>edit.rise_most</comment>
            <translation>Größter Anstieg des Werts</translation>
        </message>
        <message>
            <source>Step {number}, from week</source>
            <comment>edit.rung</comment>
            <translation>Schritt {number}, ab Woche</translation>
        </message>
        <message>
            <source>Add a step</source>
            <comment>edit.rung.add</comment>
            <translation>Einen Schritt hinzufügen</translation>
        </message>
        <message>
            <source>as before</source>
            <comment>edit.rung.as_before</comment>
            <translation>wie zuvor</translation>
        </message>
        <message>
            <source>Step {number}, degrees to each side</source>
            <comment>edit.rung.range</comment>
            <translation>Schritt {number}, Grad zu jeder Seite</translation>
        </message>
        <message>
            <source>Empty: as before.</source>
            <comment>edit.rung.range.how</comment>
            <translation>Leer: wie zuvor.</translation>
        </message>
        <message>
            <source>Remove step {number}</source>
            <comment>edit.rung.remove</comment>
            <translation>Schritt {number} entfernen</translation>
        </message>
        <message>
            <source>Step {number}, beats a minute</source>
            <comment>edit.rung.tempo</comment>
            <translation>Schritt {number}, Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>Limits and help</source>
            <comment>edit.safety</comment>
            <translation>Grenzen und Hilfe</translation>
        </message>
        <message>
            <source>Save</source>
            <comment>edit.save</comment>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Save the plan where?</source>
            <comment>edit.save.which</comment>
            <translation>Wohin soll der Plan gespeichert werden?</translation>
        </message>
        <message>
            <source>Save as</source>
            <comment>edit.save_as</comment>
            <translation>Speichern als</translation>
        </message>
        <message>
            <source>Highest score, of 10</source>
            <comment>edit.score</comment>
            <translation>Höchster Wert, von 10</translation>
        </message>
        <message>
            <source>Eyes to target, mm</source>
            <comment>edit.seat</comment>
            <translation>Augen bis Ziel, mm</translation>
        </message>
        <message>
            <source>Usual: 750, and not nearer (common practice)</source>
            <comment>edit.seat.how</comment>
            <translation>Üblich: 750 und nicht näher (gängige Praxis)</translation>
        </message>
        <message>
            <source>Sitting: about {cm} cm from the screen, or as far as the plan asks where that is more ({source}).</source>
            <comment>edit.seat.least</comment>
            <translation>Im Sitzen: etwa {cm} cm vom Bildschirm, oder so weit, wie der Plan es verlangt, wenn das mehr ist ({source}).</translation>
        </message>
        <message>
            <source>Seconds</source>
            <comment>edit.seconds</comment>
            <translation>Sekunden</translation>
        </message>
        <message>
            <source>Sessions in a row</source>
            <comment>edit.sessions</comment>
            <translation>Sitzungen in Folge</translation>
        </message>
        <message>
            <source>Longest time to settle, minutes</source>
            <comment>edit.settle</comment>
            <translation>Längste Zeit bis zur Beruhigung, Minuten</translation>
        </message>
        <message>
            <source>Most minutes to settle</source>
            <comment>edit.settle_most</comment>
            <translation>Meiste Minuten bis zur Beruhigung</translation>
        </message>
        <message>
            <source>Sex</source>
            <comment>edit.sex</comment>
            <translation>Geschlecht</translation>
        </message>
        <message>
            <source>female</source>
            <comment>edit.sex.female</comment>
            <translation>weiblich</translation>
        </message>
        <message>
            <source>The tables know these two only.</source>
            <comment>edit.sex.how</comment>
            <translation>Die Tabellen kennen nur diese zwei.</translation>
        </message>
        <message>
            <source>male</source>
            <comment>edit.sex.male</comment>
            <translation>männlich</translation>
        </message>
        <message>
            <source>Head shake</source>
            <comment>edit.shake</comment>
            <translation>Kopfschütteln</translation>
        </message>
        <message>
            <source>Sheet to print</source>
            <comment>edit.sheet</comment>
            <translation>Blatt zum Drucken</translation>
        </message>
        <message>
            <source>Web page</source>
            <comment>edit.sheet.html</comment>
            <translation>Webseite</translation>
        </message>
        <message>
            <source>No sheet yet: there are {count} to put right in the plan.</source>
            <comment>edit.sheet.not_yet</comment>
            <translation>Noch kein Blatt: Am Plan ist noch zu berichtigen: {count}.</translation>
        </message>
        <message>
            <source>PDF, A4</source>
            <comment>edit.sheet.pdf_a4</comment>
            <translation>PDF, A4</translation>
        </message>
        <message>
            <source>PDF, Letter</source>
            <comment>edit.sheet.pdf_letter</comment>
            <translation>PDF, Letter</translation>
        </message>
        <message>
            <source>Where to put the patient's sheet? The ending is added.</source>
            <comment>edit.sheet.which</comment>
            <translation>Wohin soll das Blatt für die Person? Die Endung kommt von selbst dazu.</translation>
        </message>
        <message>
            <source>Written: {file}</source>
            <comment>edit.sheet.written</comment>
            <translation>Geschrieben: {file}</translation>
        </message>
        <message>
            <source>has a condition</source>
            <comment>edit.short.condition</comment>
            <translation>hat eine Bedingung</translation>
        </message>
        <message>
            <source>condition met</source>
            <comment>edit.short.met</comment>
            <translation>Bedingung erfüllt</translation>
        </message>
        <message>
            <source>condition not met</source>
            <comment>edit.short.not_met</comment>
            <translation>Bedingung nicht erfüllt</translation>
        </message>
        <message>
            <source>As the patient sees it (F5)</source>
            <comment>edit.show</comment>
            <translation>Wie es die Person sieht (F5)</translation>
        </message>
        <message>
            <source>Affected side</source>
            <comment>edit.side</comment>
            <translation>Betroffene Seite</translation>
        </message>
        <message>
            <source>both</source>
            <comment>edit.side.both</comment>
            <translation>beide</translation>
        </message>
        <message>
            <source>left</source>
            <comment>edit.side.left</comment>
            <translation>links</translation>
        </message>
        <message>
            <source>right</source>
            <comment>edit.side.right</comment>
            <translation>rechts</translation>
        </message>
        <message>
            <source>unknown</source>
            <comment>edit.side.unknown</comment>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.stage</comment>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Conditions and entries refer to it.</source>
            <comment>edit.stage.id.how</comment>
            <translation>Buchstaben, Ziffern, . _ und -. Bedingungen und Einträge beziehen sich darauf.</translation>
        </message>
        <message>
            <source>Name</source>
            <comment>edit.stage.name</comment>
            <translation>Name</translation>
        </message>
        <message>
            <source>The patient reads it.</source>
            <comment>edit.stage.name.how</comment>
            <translation>Die Person liest ihn.</translation>
        </message>
        <message>
            <source>New stage</source>
            <comment>edit.stage.new</comment>
            <translation>Neue Stufe</translation>
        </message>
        <message>
            <source>Takes</source>
            <comment>edit.stage.takes</comment>
            <translation>Dauert</translation>
        </message>
        <message>
            <source>About {minutes} minutes with rests; up to {most} is common practice.</source>
            <comment>edit.stage.takes.said</comment>
            <translation>Etwa {minutes} Minuten mit Pausen; bis {most} ist gängige Praxis.</translation>
        </message>
        <message>
            <source>So far</source>
            <comment>edit.standing</comment>
            <translation>Bisher</translation>
        </message>
        <message>
            <source>Met: {why}. Nothing opens by itself.</source>
            <comment>edit.standing.met</comment>
            <translation>Erfüllt: {why}. Nichts öffnet sich von selbst.</translation>
        </message>
        <message>
            <source>No sessions at hand. Opened from the review of a folder, this says whether it is met.</source>
            <comment>edit.standing.no_sessions</comment>
            <translation>Keine Sitzungen zur Hand. Aus der Durchsicht eines Ordners geöffnet, steht hier, ob sie erfüllt ist.</translation>
        </message>
        <message>
            <source>Not met: {why}.</source>
            <comment>edit.standing.not_met</comment>
            <translation>Nicht erfüllt: {why}.</translation>
        </message>
        <message>
            <source>Begin with nothing</source>
            <comment>edit.start.empty</comment>
            <translation>Mit nichts beginnen</translation>
        </message>
        <message>
            <source>No exercises yet; usual days, rests and symptom rules.</source>
            <comment>edit.start.empty.how</comment>
            <translation>Noch keine Übungen; übliche Tage, Pausen und Regeln für Beschwerden.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>edit.start.file</comment>
            <translation>Einen Plan öffnen</translation>
        </message>
        <message>
            <source>A plan that is in a file already.</source>
            <comment>edit.start.file.how</comment>
            <translation>Ein Plan, der schon in einer Datei steht.</translation>
        </message>
        <message>
            <source>Go on from the plan of {person}</source>
            <comment>edit.start.last</comment>
            <translation>Mit dem Plan von {person} weitermachen</translation>
        </message>
        <message>
            <source>Plan {plan}. Its sessions go on to count, and each condition says whether it is met.</source>
            <comment>edit.start.last.how</comment>
            <translation>Plan {plan}, zuletzt geübt. Seine Sitzungen zählen weiter, und jede Bedingung sagt, ob sie erfüllt ist.</translation>
        </message>
        <message>
            <source>Open this plan</source>
            <comment>edit.start.named</comment>
            <translation>Diesen Plan öffnen</translation>
        </message>
        <message>
            <source>These sessions were practised with a plan that has no pseudonym. Open it, set the pseudonym of one person, and save it as another file. Do so for each person.</source>
            <comment>edit.start.named.how</comment>
            <translation>Diese Sitzungen wurden mit einem Plan ohne Pseudonym geübt. Öffnen Sie ihn, setzen Sie das Pseudonym einer Person und speichern Sie ihn als andere Datei. Tun Sie das für jede Person.</translation>
        </message>
        <message>
            <source>The plan of these sessions</source>
            <comment>edit.start.named.which</comment>
            <translation>Der Plan dieser Sitzungen</translation>
        </message>
        <message>
            <source>Begin with these stages</source>
            <comment>edit.start.starter</comment>
            <translation>Mit diesen Stufen beginnen</translation>
        </message>
        <message>
            <source>The home programme in stages, with usual doses. Each stage opens after calm sessions with the one before. Leave out what you don't want.</source>
            <comment>edit.start.starter.how</comment>
            <translation>Das Heimprogramm in Stufen, mit üblichen Dosen. Jede Stufe öffnet sich nach ruhigen Sitzungen mit der davor. Lassen Sie weg, was Sie nicht wollen.</translation>
        </message>
        <message>
            <source>Begin a plan</source>
            <comment>edit.start.title</comment>
            <translation>Einen Plan beginnen</translation>
        </message>
        <message>
            <source>Begins on</source>
            <comment>edit.starts_on</comment>
            <translation>Beginnt am</translation>
        </message>
        <message>
            <source>A day as in 2026-01-31. Ladders count their weeks from it.</source>
            <comment>edit.starts_on.how</comment>
            <translation>Ein Tag wie 2026-01-31. Von ihm an zählen Steigerungen ihre Wochen.</translation>
        </message>
        <message>
            <source>{file}  ·  {saved}  ·  {found}</source>
            <comment>edit.state</comment>
            <translation>{file}  ·  {saved}  ·  {found}</translation>
        </message>
        <message>
            <source>changed, not saved</source>
            <comment>edit.state.changed</comment>
            <translation>geändert, nicht gespeichert</translation>
        </message>
        <message>
            <source>not finished, to put right: {count}</source>
            <comment>edit.state.faults</comment>
            <translation>vor dem Speichern zu berichtigen: {count}</translation>
        </message>
        <message>
            <source>nothing changed yet</source>
            <comment>edit.state.new</comment>
            <translation>noch nichts geändert</translation>
        </message>
        <message>
            <source>notes: {count}  ·  {minutes}</source>
            <comment>edit.state.remarks</comment>
            <translation>Hinweise: {count}  ·  {minutes}</translation>
        </message>
        <message>
            <source>saved</source>
            <comment>edit.state.saved</comment>
            <translation>gespeichert</translation>
        </message>
        <message>
            <source>Choose how to begin.</source>
            <comment>edit.state.start</comment>
            <translation>Wählen Sie, wie Sie beginnen.</translation>
        </message>
        <message>
            <source>Exercise added</source>
            <comment>edit.step.add</comment>
            <translation>Übung hinzugefügt</translation>
        </message>
        <message>
            <source>Checklist item added</source>
            <comment>edit.step.add_item</comment>
            <translation>Punkt der Prüfliste hinzugefügt</translation>
        </message>
        <message>
            <source>Ladder step added</source>
            <comment>edit.step.add_rung</comment>
            <translation>Schritt der Steigerung hinzugefügt</translation>
        </message>
        <message>
            <source>Stage added</source>
            <comment>edit.step.add_stage</comment>
            <translation>Stufe hinzugefügt</translation>
        </message>
        <message>
            <source>Condition added</source>
            <comment>edit.step.add_unlock</comment>
            <translation>Bedingung hinzugefügt</translation>
        </message>
        <message>
            <source>Copied</source>
            <comment>edit.step.copy</comment>
            <translation>Kopiert</translation>
        </message>
        <message>
            <source>Condition found met</source>
            <comment>edit.step.met</comment>
            <translation>Bedingung als erfüllt befunden</translation>
        </message>
        <message>
            <source>Moved</source>
            <comment>edit.step.move</comment>
            <translation>Verschoben</translation>
        </message>
        <message>
            <source>Removed</source>
            <comment>edit.step.remove</comment>
            <translation>Entfernt</translation>
        </message>
        <message>
            <source>Condition removed</source>
            <comment>edit.step.remove_unlock</comment>
            <translation>Bedingung entfernt</translation>
        </message>
        <message>
            <source>Ranges and tempo of the baseline taken over</source>
            <comment>edit.step.take_baseline</comment>
            <translation>Bereiche und Tempo der Ausgangsmessung übernommen</translation>
        </message>
        <message>
            <source>Begins today</source>
            <comment>edit.step.today</comment>
            <translation>Beginnt heute</translation>
        </message>
        <message>
            <source>{what}</source>
            <comment>edit.step.value</comment>
            <translation>{what}</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>edit.support</comment>
            <translation>Halt</translation>
        </message>
        <message>
            <source>corner and stable chair</source>
            <comment>edit.support.corner_and_chair</comment>
            <translation>Ecke und fester Stuhl</translation>
        </message>
        <message>
            <source>helper within arm's reach</source>
            <comment>edit.support.helper</comment>
            <translation>Hilfsperson in Reichweite</translation>
        </message>
        <message>
            <source>what it takes: {support}</source>
            <comment>edit.support.least</comment>
            <translation>was nötig ist: {support}</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.support.none</comment>
            <translation>keiner</translation>
        </message>
        <message>
            <source>Surface</source>
            <comment>edit.surface</comment>
            <translation>Boden</translation>
        </message>
        <message>
            <source>Enough for today</source>
            <comment>edit.symptoms</comment>
            <translation>Genug für heute</translation>
        </message>
        <message>
            <source>For the published tables of chair stands only</source>
            <comment>edit.tables</comment>
            <translation>Nur für die veröffentlichten Tabellen zum Aufstehen vom Stuhl</translation>
        </message>
        <message>
            <source>Tempo, beats a minute</source>
            <comment>edit.tempo</comment>
            <translation>Tempo, Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>fixed</source>
            <comment>edit.tempo.fixed</comment>
            <translation>fest</translation>
        </message>
        <message>
            <source>changes within the set</source>
            <comment>edit.tempo.pair</comment>
            <translation>ändert sich im Durchgang</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.tempo.usual</comment>
            <translation>wie üblich: {usual}</translation>
        </message>
        <message>
            <source>Plan</source>
            <comment>edit.title</comment>
            <translation>Plan</translation>
        </message>
        <message>
            <source>to</source>
            <comment>edit.to</comment>
            <translation>bis</translation>
        </message>
        <message>
            <source>Today</source>
            <comment>edit.today</comment>
            <translation>Heute</translation>
        </message>
        <message>
            <source>Undo</source>
            <comment>edit.undo</comment>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Not finished: {count} to put right. It can be kept and opened here again, but nobody can practise it.</source>
            <comment>edit.unfinished</comment>
            <translation>Nicht fertig: zu berichtigen: {count}. Er lässt sich aufbewahren und hier wieder öffnen, aber niemand kann danach üben.</translation>
        </message>
        <message>
            <source>Save it unfinished</source>
            <comment>edit.unfinished.save</comment>
            <translation>Unfertig speichern</translation>
        </message>
        <message>
            <source>Show me the first</source>
            <comment>edit.unfinished.show</comment>
            <translation>Das Erste zeigen</translation>
        </message>
        <message>
            <source>Opens when</source>
            <comment>edit.unlock</comment>
            <translation>Öffnet sich, wenn</translation>
        </message>
        <message>
            <source>Set a condition</source>
            <comment>edit.unlock.add</comment>
            <translation>Eine Bedingung stellen</translation>
        </message>
        <message>
            <source>Open from the start.</source>
            <comment>edit.unlock.none</comment>
            <translation>Von Anfang an offen.</translation>
        </message>
        <message>
            <source>Take the condition away</source>
            <comment>edit.unlock.remove</comment>
            <translation>Die Bedingung wegnehmen</translation>
        </message>
        <message>
            <source>↑</source>
            <comment>edit.up</comment>
            <translation>↑</translation>
        </message>
        <message>
            <source>Move what is chosen up, Alt+Up</source>
            <comment>edit.up.name</comment>
            <translation>Das Gewählte nach oben, Alt+Pfeil hoch</translation>
        </message>
        <message>
            <source>Usual: {usual}</source>
            <comment>edit.usual</comment>
            <translation>Üblich: {usual}</translation>
        </message>
        <message>
            <source>Usual: {usual} ({source})</source>
            <comment>edit.usual.from</comment>
            <translation>Üblich: {usual} ({source})</translation>
        </message>
        <message>
            <source>Marks on the wall</source>
            <comment>edit.wall</comment>
            <translation>Marken an der Wand</translation>
        </message>
        <message>
            <source>Above the camera, in mm</source>
            <comment>edit.wall.above</comment>
            <translation>Über der Kamera, in mm</translation>
        </message>
        <message>
            <source>Usual: 100, so that the mark shows above the screen. Below zero: lower.</source>
            <comment>edit.wall.above.how</comment>
            <translation>Üblich: 100, damit die Marke über dem Bildschirm zu sehen ist. Unter null: tiefer.</translation>
        </message>
        <message>
            <source>From the eyes to the wall, in mm</source>
            <comment>edit.wall.distance</comment>
            <translation>Von den Augen zur Wand, in mm</translation>
        </message>
        <message>
            <source>In place of the screen. Leave all of it empty for a target on the screen. Once something stands here, the patient is asked to measure what is left out.</source>
            <comment>edit.wall.how</comment>
            <translation>Anstelle des Bildschirms. Lassen Sie alles leer, wenn das Ziel auf dem Bildschirm ist. Sobald hier etwas steht, wird der Patient gebeten zu messen, was fehlt.</translation>
        </message>
        <message>
            <source>To the right of the camera, in mm</source>
            <comment>edit.wall.right</comment>
            <translation>Rechts von der Kamera, in mm</translation>
        </message>
        <message>
            <source>Usual: 0. As the patient sees it; of two marks their middle. Below zero: to the left.</source>
            <comment>edit.wall.right.how</comment>
            <translation>Üblich: 0. Aus der Sicht des Patienten; bei zwei Marken ihre Mitte. Unter null: nach links.</translation>
        </message>
        <message>
            <source>From mark to mark, in mm</source>
            <comment>edit.wall.spacing</comment>
            <translation>Von Marke zu Marke, in mm</translation>
        </message>
        <message>
            <source>So that each mark lies {low} to {high} degrees from the middle.</source>
            <comment>edit.wall.spacing.how</comment>
            <translation>So, dass jede Marke {low} bis {high} Grad von der Mitte liegt.</translation>
        </message>
        <message>
            <source>Person</source>
            <comment>edit.who</comment>
            <translation>Person</translation>
        </message>
        <message>
            <source>Your words</source>
            <comment>edit.words</comment>
            <translation>Ihre Worte</translation>
        </message>
        <message>
            <source>Read before each practice, and on the printed sheet.</source>
            <comment>edit.words.how</comment>
            <translation>Vor jedem Üben zu lesen und auf dem gedruckten Blatt.</translation>
        </message>
        <message>
            <source>To the patient</source>
            <comment>edit.words.title</comment>
            <translation>An die Person</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>event.chin_down</comment>
            <translation>Kinn unten</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>event.eyes_closed</comment>
            <translation>Augen geschlossen</translation>
        </message>
        <message>
            <source>eyes stayed behind</source>
            <comment>event.eyes_not_with_head</comment>
            <translation>Augen blieben zurück</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>event.eyes_opened</comment>
            <translation>Augen geöffnet</translation>
        </message>
        <message>
            <source>eyes left the target</source>
            <comment>event.gaze_off_target</comment>
            <translation>Augen nicht auf dem Ziel</translation>
        </message>
        <message>
            <source>eyes stopped short</source>
            <comment>event.gaze_short</comment>
            <translation>Augen blieben vor dem Ziel stehen</translation>
        </message>
        <message>
            <source>head went before the eyes</source>
            <comment>event.head_first</comment>
            <translation>Kopf ging vor den Augen</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>event.head_moved</comment>
            <translation>Kopf mitbewegt</translation>
        </message>
        <message>
            <source>head turned, not tilted</source>
            <comment>event.head_turned</comment>
            <translation>Kopf gedreht, nicht geneigt</translation>
        </message>
        <message>
            <source>head went with the target</source>
            <comment>event.head_with_target</comment>
            <translation>Kopf ging mit dem Ziel</translation>
        </message>
        <message>
            <source>out of the picture</source>
            <comment>event.left_picture</comment>
            <translation>nicht im Bild</translation>
        </message>
        <message>
            <source>eyes and head went together</source>
            <comment>event.moved_together</comment>
            <translation>Augen und Kopf gingen zusammen</translation>
        </message>
        <message>
            <source>not measured for a while</source>
            <comment>event.not_measured</comment>
            <translation>eine Zeit lang nicht gemessen</translation>
        </message>
        <message>
            <source>not all the way up</source>
            <comment>event.not_upright</comment>
            <translation>nicht ganz aufgerichtet</translation>
        </message>
        <message>
            <source>once</source>
            <comment>event.once</comment>
            <translation>einmal</translation>
        </message>
        <message>
            <source>{code}</source>
            <comment>event.other</comment>
            <translation>{code}</translation>
        </message>
        <message>
            <source>a sudden drop of the head</source>
            <comment>event.possible_fall</comment>
            <translation>ein plötzliches Absinken des Kopfes</translation>
        </message>
        <message>
            <source>throws below the eyes</source>
            <comment>event.throw_low</comment>
            <translation>Würfe unter Augenhöhe</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>event.times</comment>
            <translation>{count}-mal</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>event.too_fast</comment>
            <translation>schneller als der Takt</translation>
        </message>
        <message>
            <source>turns larger than asked</source>
            <comment>event.too_large</comment>
            <translation>Drehungen größer als vorgegeben</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>event.too_slow</comment>
            <translation>langsamer als der Takt</translation>
        </message>
        <message>
            <source>turns a little small</source>
            <comment>event.too_small</comment>
            <translation>Drehungen etwas klein</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>exchange.back</comment>
            <translation>Zurück (Esc)</translation>
        </message>
        <message>
            <source>{name} (not this computer)</source>
            <comment>exchange.elsewhere</comment>
            <translation>{name} (nicht dieser Computer)</translation>
        </message>
        <message>
            <source>Not done: {why}</source>
            <comment>exchange.failed</comment>
            <translation>Nicht gemacht: {why}</translation>
        </message>
        <message>
            <source>Hand out a plan</source>
            <comment>exchange.give</comment>
            <translation>Einen Plan ausgeben</translation>
        </message>
        <message>
            <source>Hand out a plan without a lock</source>
            <comment>exchange.give_plain</comment>
            <translation>Einen Plan ohne Schloss ausgeben</translation>
        </message>
        <message>
            <source>Written: {path}</source>
            <comment>exchange.given</comment>
            <translation>Geschrieben: {path}</translation>
        </message>
        <message>
            <source>{name} (this computer)</source>
            <comment>exchange.here</comment>
            <translation>{name} (dieser Computer)</translation>
        </message>
        <message>
            <source>From a patient</source>
            <comment>exchange.in</comment>
            <translation>Von einer Person</translation>
        </message>
        <message>
            <source>Takes the sessions out of a file that a patient has made, into the folder that is open. You can also drop the file on this window. The file itself stays where it is.</source>
            <comment>exchange.in.how</comment>
            <translation>Nimmt die Sitzungen aus einer Datei, die eine Person gemacht hat, in den offenen Ordner. Sie können die Datei auch auf dieses Fenster ziehen. Die Datei selbst bleibt, wo sie ist.</translation>
        </message>
        <message>
            <source>Keep other computers' keys in the plan</source>
            <comment>exchange.keep</comment>
            <translation>Schlüssel anderer Computer im Plan lassen</translation>
        </message>
        <message>
            <source>The clinic's key</source>
            <comment>exchange.key</comment>
            <translation>Der Schlüssel der Praxis</translation>
        </message>
        <message>
            <source>Bring in a key</source>
            <comment>exchange.key.bring</comment>
            <translation>Einen Schlüssel holen</translation>
        </message>
        <message>
            <source>The key {name} is here now.</source>
            <comment>exchange.key.brought</comment>
            <translation>Der Schlüssel {name} ist jetzt hier.</translation>
        </message>
        <message>
            <source>Copied to {path}</source>
            <comment>exchange.key.copied</comment>
            <translation>Kopiert nach {path}</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <comment>exchange.key.copy</comment>
            <translation>Den Schlüssel kopieren</translation>
        </message>
        <message>
            <source>A safe place for the copy</source>
            <comment>exchange.key.copy_where</comment>
            <translation>Ein sicherer Ort für die Kopie</translation>
        </message>
        <message>
            <source>On this computer: {names}.</source>
            <comment>exchange.key.has</comment>
            <translation>Auf diesem Computer: {names}.</translation>
        </message>
        <message>
            <source>A key lies behind a passphrase. If either is lost, what patients hand over can't be read by anybody: keep a copy in a safe place.</source>
            <comment>exchange.key.how</comment>
            <translation>Ein Schlüssel liegt hinter einem Kennsatz. Geht eines von beiden verloren, kann niemand mehr lesen, was Patienten übergeben: Bewahren Sie eine Kopie an einem sicheren Ort auf.</translation>
        </message>
        <message>
            <source>Keys (*.age);;All files (*)</source>
            <comment>exchange.key.kinds</comment>
            <translation>Schlüssel (*.age);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>The key {name} is made. Copy it to a safe place now.</source>
            <comment>exchange.key.made</comment>
            <translation>Der Schlüssel {name} ist fertig. Kopieren Sie ihn jetzt an einen sicheren Ort.</translation>
        </message>
        <message>
            <source>Make a key</source>
            <comment>exchange.key.make</comment>
            <translation>Einen Schlüssel machen</translation>
        </message>
        <message>
            <source>There is no key on this computer. Make one, or bring in the copy of a key that the clinic has already.</source>
            <comment>exchange.key.none</comment>
            <translation>Auf diesem Computer ist kein Schlüssel. Machen Sie einen, oder holen Sie die Kopie eines Schlüssels, den die Praxis schon hat.</translation>
        </message>
        <message>
            <source>The copy of the key</source>
            <comment>exchange.key.which</comment>
            <translation>Die Kopie des Schlüssels</translation>
        </message>
        <message>
            <source>Files from patients (*.age *.turnpost);;All files (*)</source>
            <comment>exchange.kinds</comment>
            <translation>Dateien von Patienten (*.age *.turnpost);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>A file that came in between was not taken in. Take it in now.</source>
            <comment>exchange.missed</comment>
            <translation>Eine Datei, die dazwischenkam, wurde nicht aufgenommen. Nehmen Sie sie jetzt auf.</translation>
        </message>
        <message>
            <source>the folder {folder} is not there; connect its disk, or open another folder</source>
            <comment>exchange.no_folder</comment>
            <translation>der Ordner {folder} ist nicht da; schließen Sie sein Laufwerk an oder öffnen Sie einen anderen Ordner</translation>
        </message>
        <message>
            <source>no pseudonym</source>
            <comment>exchange.nobody</comment>
            <translation>kein Pseudonym</translation>
        </message>
        <message>
            <source>Files in and out</source>
            <comment>exchange.open</comment>
            <translation>Dateien rein und raus</translation>
        </message>
        <message>
            <source>What the patient hands over opens with: {names}.</source>
            <comment>exchange.opens</comment>
            <translation>Was die Person übergibt, öffnen: {names}.</translation>
        </message>
        <message>
            <source>Left as they are, although the file has other versions of them: {names}.</source>
            <comment>exchange.other</comment>
            <translation>So gelassen, obwohl die Datei andere Fassungen davon hat: {names}.</translation>
        </message>
        <message>
            <source>To a patient</source>
            <comment>exchange.out</comment>
            <translation>An eine Person</translation>
        </message>
        <message>
            <source>Writes a plan that names keys. What the patient hands over opens with each of them, on any computer that has it. Was a key stolen? Then make a new one, leave the stolen one out, hand the plan out again, and read its words to the patient in a call.</source>
            <comment>exchange.out.how</comment>
            <translation>Schreibt einen Plan, der Schlüssel nennt. Was die Person übergibt, lässt sich mit jedem davon öffnen, auf jedem Computer, der ihn hat. Wurde ein Schlüssel gestohlen? Dann machen Sie einen neuen, lassen den gestohlenen weg, geben den Plan neu aus und lesen der Person seine Wörter in einem Gespräch vor.</translation>
        </message>
        <message>
            <source>The same once more</source>
            <comment>exchange.pass.again</comment>
            <translation>Derselbe noch einmal</translation>
        </message>
        <message>
            <source>Passphrase of the key in the copy</source>
            <comment>exchange.pass.brought</comment>
            <translation>Kennsatz des Schlüssels in der Kopie</translation>
        </message>
        <message>
            <source>Leave it</source>
            <comment>exchange.pass.cancel</comment>
            <translation>Lassen</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <comment>exchange.pass.differ</comment>
            <translation>Die beiden sind nicht gleich.</translation>
        </message>
        <message>
            <source>A passphrase for the new key: three or four words that nobody would guess</source>
            <comment>exchange.pass.new</comment>
            <translation>Ein Kennsatz für den neuen Schlüssel: drei oder vier Wörter, die niemand erraten würde</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>exchange.pass.ok</comment>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Passphrase of the clinic's key</source>
            <comment>exchange.pass.open</comment>
            <translation>Kennsatz des Schlüssels der Praxis</translation>
        </message>
        <message>
            <source>Without a lock anybody who gets hold of a patient's file can read it: e-mail providers, whoever finds a stick. The plan and the patient's program will say so. Is that meant?</source>
            <comment>exchange.plain.ask</comment>
            <translation>Ohne Schloss kann jeder die Datei einer Person lesen, der sie bekommt: E-Mail-Anbieter, wer einen Stick findet. Der Plan und das Programm der Person sagen das auch. Ist das so gemeint?</translation>
        </message>
        <message>
            <source>No</source>
            <comment>exchange.plain.no</comment>
            <translation>Nein</translation>
        </message>
        <message>
            <source>This clinic has chosen files without a lock. A key changes that.</source>
            <comment>exchange.plain.on</comment>
            <translation>Diese Praxis hat Dateien ohne Schloss gewählt. Ein Schlüssel ändert das.</translation>
        </message>
        <message>
            <source>Yes, without a lock</source>
            <comment>exchange.plain.yes</comment>
            <translation>Ja, ohne Schloss</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>exchange.plans</comment>
            <translation>Pläne (*.json)</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <comment>exchange.take</comment>
            <translation>Eine Datei aufnehmen</translation>
        </message>
        <message>
            <source>{person}: new sessions {new}, here before {known}.</source>
            <comment>exchange.taken</comment>
            <translation>{person}: neue Sitzungen {new}, schon vorhanden {known}.</translation>
        </message>
        <message>
            <source>Show the words of a plan</source>
            <comment>exchange.tell</comment>
            <translation>Die Wörter eines Plans zeigen</translation>
        </message>
        <message>
            <source>Files from and to patients</source>
            <comment>exchange.title</comment>
            <translation>Dateien von und an Patientinnen und Patienten</translation>
        </message>
        <message>
            <source>This file was not locked.</source>
            <comment>exchange.was_plain</comment>
            <translation>Diese Datei war nicht verschlossen.</translation>
        </message>
        <message>
            <source>Where to put the plan for the patient</source>
            <comment>exchange.where</comment>
            <translation>Wohin mit dem Plan für die Person</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>exchange.which</comment>
            <translation>Welcher Plan?</translation>
        </message>
        <message>
            <source>Its words:  {words}</source>
            <comment>exchange.words</comment>
            <translation>Seine Wörter:  {words}</translation>
        </message>
        <message>
            <source>Working ...</source>
            <comment>exchange.working</comment>
            <translation>Moment ...</translation>
        </message>
        <message>
            <source>Sway from toes to heels</source>
            <comment>exercise.ankle-sway</comment>
            <translation>Von den Zehen zu den Fersen</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Look straight ahead.</source>
            <comment>exercise.ankle-sway.how</comment>
            <translation>Stehen Sie aufrecht. Neigen Sie sich langsam zu den Zehen, dann zu den Fersen. Bewegen Sie die Fußgelenke, nicht die Hüfte. Schauen Sie geradeaus.</translation>
        </message>
        <message>
            <source>Stands for half a minute</source>
            <comment>exercise.chair-stands-30-s</comment>
            <translation>Eine halbe Minute aufstehen</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until you hear the end.</source>
            <comment>exercise.chair-stands-30-s.how</comment>
            <translation>Kreuzen Sie die Arme. Stehen Sie auf und setzen Sie sich wieder, so oft es sicher geht, bis Sie das Ende hören.</translation>
        </message>
        <message>
            <source>Five stands from a chair</source>
            <comment>exercise.chair-stands-five</comment>
            <translation>Fünfmal vom Stuhl aufstehen</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down, as fast as is safe.</source>
            <comment>exercise.chair-stands-five.how</comment>
            <translation>Kreuzen Sie die Arme. Stehen Sie auf und setzen Sie sich wieder, so schnell es sicher geht.</translation>
        </message>
        <message>
            <source>Move your eyes, head still</source>
            <comment>exercise.eyes-side-to-side</comment>
            <translation>Augen hin und her, Kopf still</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat. Your head stays still.</source>
            <comment>exercise.eyes-side-to-side.how</comment>
            <translation>Ihre Augen springen bei jedem Taktschlag zum Ziel. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Eyes first, then head</source>
            <comment>exercise.eyes-then-head</comment>
            <translation>Erst die Augen, dann der Kopf</translation>
        </message>
        <message>
            <source>Look at one mark with your eyes. Then turn your head to it. Now look at the other mark, and turn again.</source>
            <comment>exercise.eyes-then-head.how</comment>
            <translation>Schauen Sie mit den Augen zu einer Marke. Drehen Sie dann den Kopf dorthin. Schauen Sie nun zur anderen Marke und drehen Sie sich wieder.</translation>
        </message>
        <message>
            <source>Move your eyes up and down, head still</source>
            <comment>exercise.eyes-up-down</comment>
            <translation>Augen auf und ab, Kopf still</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat, a short way at first. Your head stays still.</source>
            <comment>exercise.eyes-up-down.how</comment>
            <translation>Ihre Augen springen bei jedem Taktschlag zum Ziel, anfangs nur ein kurzes Stück. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Pick up from the floor</source>
            <comment>exercise.floor-reach</comment>
            <translation>Vom Boden aufheben</translation>
        </message>
        <message>
            <source>Bend and lay a small thing on the floor. Sit up tall. Bend and pick it up. Sit up tall. Your eyes stay on it. Change arms half way through.</source>
            <comment>exercise.floor-reach.how</comment>
            <translation>Bücken Sie sich und legen Sie etwas Kleines auf den Boden. Richten Sie sich ganz auf. Bücken Sie sich und heben Sie es auf. Richten Sie sich ganz auf. Ihre Augen bleiben darauf. Wechseln Sie nach der Hälfte den Arm.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes</source>
            <comment>exercise.follow-slowly</comment>
            <translation>Dem Ziel mit den Augen folgen</translation>
        </message>
        <message>
            <source>The target moves slowly. Your eyes go with it. Your head stays still.</source>
            <comment>exercise.follow-slowly.how</comment>
            <translation>Das Ziel bewegt sich langsam. Ihre Augen gehen mit. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Toss from hand to hand</source>
            <comment>exercise.hand-toss</comment>
            <translation>Von Hand zu Hand werfen</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one. Stay far back, so that both hands stay in the picture.</source>
            <comment>exercise.hand-toss.how</comment>
            <translation>Werfen Sie einen weichen Ball oder eine gerollte Socke von Hand zu Hand, bis knapp über die Augen. Augen und Kopf gehen mit. Fällt er herunter, lassen Sie ihn liegen und nehmen Sie einen neuen. Bleiben Sie so weit hinten, dass beide Hände im Bild bleiben.</translation>
        </message>
        <message>
            <source>Tilt your head</source>
            <comment>exercise.head-tilts</comment>
            <translation>Den Kopf neigen</translation>
        </message>
        <message>
            <source>Tip your ear to your right shoulder, then to your left. Go slowly. Look straight ahead.</source>
            <comment>exercise.head-tilts.how</comment>
            <translation>Neigen Sie das Ohr zur rechten Schulter, dann zur linken. Langsam. Schauen Sie geradeaus.</translation>
        </message>
        <message>
            <source>Look past a moving scene</source>
            <comment>exercise.moving-background</comment>
            <translation>An bewegten Bildern vorbeischauen</translation>
        </message>
        <message>
            <source>Look at the mark. It stays where it is. Soft stripes behind it move slowly. Your head stays still.</source>
            <comment>exercise.moving-background.how</comment>
            <translation>Schauen Sie auf die Marke. Sie bleibt, wo sie ist. Weiche Streifen dahinter bewegen sich langsam. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Fingertip near and far</source>
            <comment>exercise.near-far</comment>
            <translation>Fingerspitze nah und fern</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length, just under the camera. Bring it slowly to 30 cm from your eyes, then back. Keep your eyes on the tip, your head still.</source>
            <comment>exercise.near-far.how</comment>
            <translation>Halten Sie einen Finger mit ausgestrecktem Arm hoch, knapp unter der Kamera. Führen Sie ihn langsam bis etwa 30 cm vor Ihre Augen und wieder weg. Ihre Augen bleiben auf der Fingerspitze. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Hold your eyes on a near tip</source>
            <comment>exercise.near-hold</comment>
            <translation>Augen auf der nahen Fingerspitze halten</translation>
        </message>
        <message>
            <source>Hold one finger up where you see just one tip. Keep your eyes on it. Your head stays still.</source>
            <comment>exercise.near-hold.how</comment>
            <translation>Halten Sie einen Finger dort hoch, wo Sie gerade nur eine Spitze sehen. Ihre Augen bleiben darauf. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Nod, eyes on the target</source>
            <comment>exercise.nods-on-target</comment>
            <translation>Nicken, Augen auf dem Ziel</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the target.</source>
            <comment>exercise.nods-on-target.how</comment>
            <translation>Nicken Sie auf und ab, eine Bewegung pro Taktschlag. Ihre Augen bleiben auf dem Ziel.</translation>
        </message>
        <message>
            <source>Nod, head and eyes together</source>
            <comment>exercise.nods-together</comment>
            <translation>Nicken, Kopf und Augen zusammen</translation>
        </message>
        <message>
            <source>Look up with head and eyes, then look down. Move once a beat.</source>
            <comment>exercise.nods-together.how</comment>
            <translation>Schauen Sie mit Kopf und Augen nach oben, dann nach unten. Eine Bewegung pro Taktschlag.</translation>
        </message>
        <message>
            <source>Nod while the target moves</source>
            <comment>exercise.nods-x2</comment>
            <translation>Nicken, und das Ziel bewegt sich</translation>
        </message>
        <message>
            <source>Nod up while the target goes down, then the other way round. Your eyes stay on the target. Nod as far as the target goes, and no farther.</source>
            <comment>exercise.nods-x2.how</comment>
            <translation>Heben Sie den Kopf, während das Ziel sinkt, dann umgekehrt. Ihre Augen bleiben auf dem Ziel. Bewegen Sie den Kopf so weit, wie das Ziel geht, und nicht weiter.</translation>
        </message>
        <message>
            <source>Turn with a partner</source>
            <comment>exercise.partner-turns</comment>
            <translation>Zu zweit drehen</translation>
        </message>
        <message>
            <source>Turn to one side and take the ball from your partner. Turn to the other side and give it back.</source>
            <comment>exercise.partner-turns.how</comment>
            <translation>Drehen Sie sich zur einen Seite und nehmen Sie der anderen Person den Ball ab. Drehen Sie sich zur anderen Seite und geben Sie ihn zurück.</translation>
        </message>
        <message>
            <source>Turn with your eyes shut</source>
            <comment>exercise.remembered-target</comment>
            <translation>Drehen mit geschlossenen Augen</translation>
        </message>
        <message>
            <source>Look at the target. Shut your eyes and turn your head. Keep your eyes where the target was. Open them and see if you are right.</source>
            <comment>exercise.remembered-target.how</comment>
            <translation>Schauen Sie auf das Ziel. Schließen Sie die Augen und drehen Sie den Kopf. Lassen Sie die Augen dort, wo das Ziel war. Öffnen Sie sie und sehen Sie, ob es stimmt.</translation>
        </message>
        <message>
            <source>Roll your shoulders back</source>
            <comment>exercise.shoulders-back</comment>
            <translation>Schultern nach hinten kreisen</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-back.how</comment>
            <translation>Heben Sie beide Schultern, kreisen Sie sie nach hinten und lassen Sie sie sinken. Langsam. Der Kopf bleibt gerade. Beide Schultern bleiben im Bild.</translation>
        </message>
        <message>
            <source>Roll your shoulders forward</source>
            <comment>exercise.shoulders-forward</comment>
            <translation>Schultern nach vorn kreisen</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-forward.how</comment>
            <translation>Heben Sie beide Schultern, kreisen Sie sie nach vorn und lassen Sie sie sinken. Langsam. Der Kopf bleibt gerade. Beide Schultern bleiben im Bild.</translation>
        </message>
        <message>
            <source>Stand up and sit down</source>
            <comment>exercise.sit-to-stand</comment>
            <translation>Aufstehen und hinsetzen</translation>
        </message>
        <message>
            <source>Stand up from your chair, then sit down again. You may use your hands.</source>
            <comment>exercise.sit-to-stand.how</comment>
            <translation>Stehen Sie vom Stuhl auf und setzen Sie sich wieder hin. Sie dürfen die Hände benutzen.</translation>
        </message>
        <message>
            <source>Up and down the stairs</source>
            <comment>exercise.stairs</comment>
            <translation>Treppauf und treppab</translation>
        </message>
        <message>
            <source>Go up one step and down again. Hold the rail. Your helper stays close. Count for yourself.</source>
            <comment>exercise.stairs.how</comment>
            <translation>Gehen Sie eine Stufe hinauf und wieder hinunter. Halten Sie sich am Geländer fest. Ihre Hilfsperson bleibt dicht bei Ihnen. Zählen Sie selbst.</translation>
        </message>
        <message>
            <source>Stand in the corner</source>
            <comment>exercise.stand</comment>
            <translation>In der Ecke stehen</translation>
        </message>
        <message>
            <source>Stand and turn your head</source>
            <comment>exercise.stand-head-shake</comment>
            <translation>Stehen und den Kopf drehen</translation>
        </message>
        <message>
            <source>Stand with your feet as wide as your hips. Turn your head from side to side with the beat.</source>
            <comment>exercise.stand-head-shake.how</comment>
            <translation>Stehen Sie mit den Füßen so breit wie Ihre Hüfte. Drehen Sie den Kopf im Takt von Seite zu Seite.</translation>
        </message>
        <message>
            <source>Stand on one leg</source>
            <comment>exercise.stand-one-leg</comment>
            <translation>Auf einem Bein stehen</translation>
        </message>
        <message>
            <source>Lift one foot a little. Stand still and look at a mark on the wall, as high as your eyes. Then change legs.</source>
            <comment>exercise.stand-one-leg.how</comment>
            <translation>Heben Sie einen Fuß etwas an. Stehen Sie still und schauen Sie auf eine Marke an der Wand, so hoch wie Ihre Augen. Wechseln Sie dann das Bein.</translation>
        </message>
        <message>
            <source>Stand heel to toe</source>
            <comment>exercise.stand-tandem</comment>
            <translation>Stehen, Ferse vor Zehen</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Stand still and look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand-tandem.how</comment>
            <translation>Setzen Sie einen Fuß genau vor den anderen. Stehen Sie still und schauen Sie auf eine Marke an der Wand, so hoch wie Ihre Augen.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand.how</comment>
            <translation>Stehen Sie mit dem Rücken zur Ecke, die Füße so breit wie Ihre Schultern. Die Arme hängen. Kinn hoch. Schauen Sie auf eine Marke an der Wand, so hoch wie Ihre Augen.</translation>
        </message>
        <message>
            <source>Follow your thumb, head too</source>
            <comment>exercise.thumb-together</comment>
            <translation>Dem Daumen folgen, auch mit dem Kopf</translation>
        </message>
        <message>
            <source>Hold your thumb out in front of you. Move it from side to side. Your head and eyes go with it.</source>
            <comment>exercise.thumb-together.how</comment>
            <translation>Halten Sie den Daumen vor sich. Bewegen Sie ihn von Seite zu Seite. Kopf und Augen gehen mit.</translation>
        </message>
        <message>
            <source>Turn your head, eyes on the target</source>
            <comment>exercise.turns-on-target</comment>
            <translation>Kopf drehen, Augen auf dem Ziel</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the target.</source>
            <comment>exercise.turns-on-target.how</comment>
            <translation>Drehen Sie den Kopf von Seite zu Seite, eine Drehung pro Taktschlag. Ihre Augen bleiben auf dem Ziel.</translation>
        </message>
        <message>
            <source>Turn head and eyes together</source>
            <comment>exercise.turns-together</comment>
            <translation>Kopf und Augen zusammen drehen</translation>
        </message>
        <message>
            <source>Look to the right with head and eyes, then to the left. Move once a beat.</source>
            <comment>exercise.turns-together.how</comment>
            <translation>Schauen Sie mit Kopf und Augen nach rechts, dann nach links. Eine Bewegung pro Taktschlag.</translation>
        </message>
        <message>
            <source>Head and target move apart</source>
            <comment>exercise.turns-x2</comment>
            <translation>Kopf und Ziel gehen auseinander</translation>
        </message>
        <message>
            <source>Turn your head one way while the target goes the other way. Your eyes stay on the target. Turn as far as the target goes, and no farther.</source>
            <comment>exercise.turns-x2.how</comment>
            <translation>Drehen Sie den Kopf in die eine Richtung, während das Ziel in die andere geht. Ihre Augen bleiben auf dem Ziel. Drehen Sie so weit, wie das Ziel geht, und nicht weiter.</translation>
        </message>
        <message>
            <source>Walk forward and backward</source>
            <comment>exercise.walk</comment>
            <translation>Vorwärts und rückwärts gehen</translation>
        </message>
        <message>
            <source>Walk ten steps forward, then ten steps backward. Your helper walks with you. Count your own steps.</source>
            <comment>exercise.walk.how</comment>
            <translation>Gehen Sie zehn Schritte vorwärts, dann zehn Schritte rückwärts. Ihre Hilfsperson geht mit. Zählen Sie Ihre Schritte selbst.</translation>
        </message>
        <message>
            <source>Shift from foot to foot</source>
            <comment>exercise.weight-shift</comment>
            <translation>Von Fuß zu Fuß</translation>
        </message>
        <message>
            <source>Stand tall. Put your weight on one foot, then on the other. Go slowly.</source>
            <comment>exercise.weight-shift.how</comment>
            <translation>Stehen Sie aufrecht. Verlagern Sie Ihr Gewicht auf den einen Fuß, dann auf den anderen. Langsam.</translation>
        </message>
        <message>
            <source>Both</source>
            <comment>eyes.both</comment>
            <translation>Beide</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>eyes.left</comment>
            <translation>Mein linkes</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>eyes.right</comment>
            <translation>Mein rechtes</translation>
        </message>
        <message>
            <source>Which eye shall be watched?</source>
            <comment>eyes.title</comment>
            <translation>Welches Auge soll beobachtet werden?</translation>
        </message>
        <message>
            <source>until it begins</source>
            <comment>far.begins</comment>
            <translation>bis zum Beginn</translation>
        </message>
        <message>
            <source>left</source>
            <comment>far.left</comment>
            <translation>übrig</translation>
        </message>
        <message>
            <source>left, {count} done</source>
            <comment>far.left_done</comment>
            <translation>übrig, {count} gemacht</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>far.of</comment>
            <translation>von {goal}</translation>
        </message>
        <message>
            <source>so far</source>
            <comment>far.so_far</comment>
            <translation>bisher</translation>
        </message>
        <message>
            <source>Target with repetition count</source>
            <comment>field.name</comment>
            <translation>Ziel mit der Zahl der Wiederholungen</translation>
        </message>
        <message>
            <source>{count} repetitions. Left {left}, right {right}, {tempo} beats a minute.</source>
            <comment>field.text</comment>
            <translation>{count} Wiederholungen. Links {left}, rechts {right}, {tempo} Taktschläge pro Minute.</translation>
        </message>
        <message>
            <source>{count} repetitions. Down {down}, up {up}, {tempo} beats a minute.</source>
            <comment>field.text_up</comment>
            <translation>{count} Wiederholungen. Unten {down}, oben {up}, {tempo} Taktschläge pro Minute.</translation>
        </message>
        <message>
            <source>Let it move (S)</source>
            <comment>figure.go</comment>
            <translation>Bewegen (S)</translation>
        </message>
        <message>
            <source>Let the drawing move, key S</source>
            <comment>figure.go_name</comment>
            <translation>Die Zeichnung bewegen, Taste S</translation>
        </message>
        <message>
            <source>Hold still (S)</source>
            <comment>figure.hold</comment>
            <translation>Anhalten (S)</translation>
        </message>
        <message>
            <source>Hold the drawing still, key S</source>
            <comment>figure.hold_name</comment>
            <translation>Die Zeichnung anhalten, Taste S</translation>
        </message>
        <message>
            <source>Drawings move again.</source>
            <comment>figure.moves</comment>
            <translation>Die Zeichnungen bewegen sich wieder.</translation>
        </message>
        <message>
            <source>It moves slowly, over and over again.</source>
            <comment>figure.moving</comment>
            <translation>Sie bewegt sich langsam, immer wieder von vorn.</translation>
        </message>
        <message>
            <source>Drawing: {what}</source>
            <comment>figure.name</comment>
            <translation>Zeichnung: {what}</translation>
        </message>
        <message>
            <source>It does not move.</source>
            <comment>figure.still</comment>
            <translation>Sie bewegt sich nicht.</translation>
        </message>
        <message>
            <source>Drawings hold still now.</source>
            <comment>figure.stills</comment>
            <translation>Die Zeichnungen halten jetzt still.</translation>
        </message>
        <message>
            <source>From above</source>
            <comment>figure.view.above</comment>
            <translation>Von oben</translation>
        </message>
        <message>
            <source>From the front</source>
            <comment>figure.view.body_front</comment>
            <translation>Von vorn</translation>
        </message>
        <message>
            <source>As in a mirror</source>
            <comment>figure.view.front</comment>
            <translation>Wie im Spiegel</translation>
        </message>
        <message>
            <source>From the side</source>
            <comment>figure.view.side</comment>
            <translation>Von der Seite</translation>
        </message>
        <message>
            <source>Your face can not be seen well while it moves. The numbers may be rough.</source>
            <comment>finding.coarse_picture</comment>
            <translation>Ihr Gesicht ist nicht gut zu sehen, während es sich bewegt. Die Zahlen können ungenau sein.</translation>
        </message>
        <message>
            <source>Your eyes could not be followed well enough. Your head is measured, your gaze is not.</source>
            <comment>finding.gaze_not_fitted</comment>
            <translation>Ihren Augen konnte die Kamera nicht gut genug folgen. Ihr Kopf wird gemessen, Ihr Blick nicht.</translation>
        </message>
        <message>
            <source>The set-up has a weakness ({key}). Numbers may be rough.</source>
            <comment>finding.other</comment>
            <translation>Die Einrichtung hat eine Schwäche ({key}). Die Zahlen können ungenau sein.</translation>
        </message>
        <message>
            <source>Repeat the set-up with more light if you can.</source>
            <comment>finding.repeat_hint</comment>
            <translation>Wiederholen Sie die Einrichtung mit mehr Licht, wenn Sie können.</translation>
        </message>
        <message>
            <source>What Turnpost does, and what it does not</source>
            <comment>first.about</comment>
            <translation>Was Turnpost tut und was nicht</translation>
        </message>
        <message>
            <source>It watches your head and eyes through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and says when something is off.</source>
            <comment>first.about.does</comment>
            <translation>Es schaut durch die Kamera auf Kopf und Augen, während Sie die Übungen machen, die Ihre Therapiepraxis Ihnen gegeben hat. Es zählt, gibt den Takt vor und sagt, wenn etwas nicht stimmt.</translation>
        </message>
        <message>
            <source>It does not find out what you have, and it does not choose or change your treatment. It can't hold you, and it calls nobody.</source>
            <comment>first.about.not</comment>
            <translation>Es stellt nicht fest, was Sie haben, und es wählt oder ändert Ihre Behandlung nicht. Es kann Sie nicht halten, und es ruft niemanden an.</translation>
        </message>
        <message>
            <source>At the end you get a summary that you can hand to your therapist.</source>
            <comment>first.about.saves</comment>
            <translation>Am Ende bekommen Sie eine Zusammenfassung, die Sie Ihrer Therapiepraxis geben können.</translation>
        </message>
        <message>
            <source>One step back</source>
            <comment>first.before</comment>
            <translation>Einen Schritt zurück</translation>
        </message>
        <message>
            <source>Camera, light and glasses</source>
            <comment>first.camera</comment>
            <translation>Kamera, Licht und Brille</translation>
        </message>
        <message>
            <source>Finish</source>
            <comment>first.finish</comment>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>Skip the rest</source>
            <comment>first.leave</comment>
            <translation>Rest überspringen</translation>
        </message>
        <message>
            <source>Skip the rest; you find these steps again under “Camera, screen, more”</source>
            <comment>first.leave_name</comment>
            <translation>Den Rest überspringen; Sie finden die Schritte wieder unter „Kamera, Bildschirm, mehr“</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>first.next</comment>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>First steps</source>
            <comment>first.open</comment>
            <translation>Erste Schritte</translation>
        </message>
        <message>
            <source>The first steps</source>
            <comment>first.overview</comment>
            <translation>Die ersten Schritte</translation>
        </message>
        <message>
            <source>Take any of them again, in any order. Nothing you did is lost.</source>
            <comment>first.overview.how</comment>
            <translation>Sie können jeden davon noch einmal machen, in jeder Reihenfolge. Nichts geht verloren.</translation>
        </message>
        <message>
            <source>What stays with you</source>
            <comment>first.privacy</comment>
            <translation>Was bei Ihnen bleibt</translation>
        </message>
        <message>
            <source>At the top left you always see whether the camera is on.</source>
            <comment>first.privacy.mark</comment>
            <translation>Oben links sehen Sie immer, ob die Kamera an ist.</translation>
        </message>
        <message>
            <source>Step {at} of {of}</source>
            <comment>first.progress</comment>
            <translation>Schritt {at} von {of}</translation>
        </message>
        <message>
            <source>Your place for sitting</source>
            <comment>first.sitting</comment>
            <translation>Ihr Platz zum Sitzen</translation>
        </message>
        <message>
            <source>A firm chair with a back and no wheels, both feet on the floor.</source>
            <comment>first.sitting.chair</comment>
            <translation>Ein fester Stuhl mit Lehne und ohne Rollen, beide Füße auf dem Boden.</translation>
        </message>
        <message>
            <source>A lamp or a window in front of you, not behind you.</source>
            <comment>first.sitting.light</comment>
            <translation>Eine Lampe oder ein Fenster vor Ihnen, nicht hinter Ihnen.</translation>
        </message>
        <message>
            <source>The screen straight ahead at arm's length, its camera about as high as your eyes. A few books under the laptop help.</source>
            <comment>first.sitting.screen</comment>
            <translation>Der Bildschirm gerade vor Ihnen, eine Armlänge weg, die Kamera etwa so hoch wie Ihre Augen. Ein paar Bücher unter dem Laptop helfen.</translation>
        </message>
        <message>
            <source>Sound and voice</source>
            <comment>first.sound</comment>
            <translation>Ton und Stimme</translation>
        </message>
        <message>
            <source>Your place for standing</source>
            <comment>first.standing</comment>
            <translation>Ihr Platz zum Stehen</translation>
        </message>
        <message>
            <source>A corner of the room behind you. A heavy chair without wheels in front of you, so near that you can hold its back.</source>
            <comment>first.standing.corner</comment>
            <translation>Eine Zimmerecke hinter Ihnen. Ein schwerer Stuhl ohne Rollen vor Ihnen, so nah, dass Sie die Lehne greifen können.</translation>
        </message>
        <message>
            <source>Where your plan asks for a helper, never stand without one.</source>
            <comment>first.standing.helper</comment>
            <translation>Wo Ihr Plan eine Hilfsperson verlangt, stehen Sie nie ohne sie.</translation>
        </message>
        <message>
            <source>The laptop on something high and firm, out of your reach, its cable where nobody trips.</source>
            <comment>first.standing.laptop</comment>
            <translation>Der Laptop auf etwas Hohem und Festem, außerhalb Ihrer Reichweite, das Kabel dort, wo niemand stolpert.</translation>
        </message>
        <message>
            <source>You need it only if your plan has exercises for standing.</source>
            <comment>first.standing.only</comment>
            <translation>Sie brauchen ihn nur, wenn Ihr Plan Übungen im Stehen hat.</translation>
        </message>
        <message>
            <source>When to stop, and when to get help</source>
            <comment>first.stop</comment>
            <translation>Wann Sie aufhören und wann Sie Hilfe holen</translation>
        </message>
        <message>
            <source>Can you read this with ease?</source>
            <comment>first.text</comment>
            <translation>Können Sie das gut lesen?</translation>
        </message>
        <message>
            <source>Colours</source>
            <comment>first.text.colours</comment>
            <translation>Farben</translation>
        </message>
        <message>
            <source>Dark</source>
            <comment>first.text.dark</comment>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>Sit as you will when you practise, and choose. The buttons at the top right do the same at any time.</source>
            <comment>first.text.how</comment>
            <translation>Setzen Sie sich so hin, wie Sie üben werden, und wählen Sie. Die Knöpfe oben rechts tun jederzeit dasselbe.</translation>
        </message>
        <message>
            <source>Language</source>
            <comment>first.text.language</comment>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>Light</source>
            <comment>first.text.light</comment>
            <translation>Hell</translation>
        </message>
        <message>
            <source>Drawings of the exercises</source>
            <comment>first.text.motion</comment>
            <translation>Zeichnungen der Übungen</translation>
        </message>
        <message>
            <source>Move slowly</source>
            <comment>first.text.moving</comment>
            <translation>Langsam bewegt</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>first.text.percent</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <comment>first.text.size</comment>
            <translation>Größe der Schrift</translation>
        </message>
        <message>
            <source>Hold still</source>
            <comment>first.text.still</comment>
            <translation>Still</translation>
        </message>
        <message>
            <source>No clinician who speaks this language has checked these words yet.</source>
            <comment>first.text.unchecked</comment>
            <translation>Noch keine Fachperson, die Deutsch spricht, hat diese Texte geprüft.</translation>
        </message>
        <message>
            <source>Half a minute to try it</source>
            <comment>first.try</comment>
            <translation>Eine halbe Minute zum Ausprobieren</translation>
        </message>
        <message>
            <source>Try it now</source>
            <comment>first.try.begin</comment>
            <translation>Jetzt ausprobieren</translation>
        </message>
        <message>
            <source>Leave it out if you were not told that you may turn your head.</source>
            <comment>first.try.care</comment>
            <translation>Lassen Sie es weg, wenn man Ihnen nicht gesagt hat, dass Sie den Kopf drehen dürfen.</translation>
        </message>
        <message>
            <source>A few questions about today come first. Then the camera gets to know you, which takes about a minute. Then you turn your head gently for half a minute.</source>
            <comment>first.try.how</comment>
            <translation>Zuerst kommen ein paar Fragen zu heute. Dann lernt die Kamera Sie kennen, das dauert etwa eine Minute. Dann drehen Sie den Kopf eine halbe Minute lang sanft.</translation>
        </message>
        <message>
            <source>Your plan lets the head turn only a little, too little for this try. Leave it out, and ask your therapist how you begin.</source>
            <comment>first.try.none</comment>
            <translation>Ihr Plan lässt nur kleine Drehungen des Kopfes zu, zu kleine für diesen Versuch. Lassen Sie ihn weg, und fragen Sie in der Therapie, wie Sie anfangen.</translation>
        </message>
        <message>
            <source>Is any of this new since last time?</source>
            <comment>gate.ask</comment>
            <translation>Ist etwas davon neu seit dem letzten Mal?</translation>
        </message>
        <message>
            <source>Did any of this start or happen not long ago?</source>
            <comment>gate.ask_first</comment>
            <translation>Ist etwas davon erst kürzlich aufgetreten?</translation>
        </message>
        <message>
            <source>Is any of this new just now?</source>
            <comment>gate.ask_unwell</comment>
            <translation>Ist etwas davon gerade neu?</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>gate.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>You blacked out</source>
            <comment>gate.blackout</comment>
            <translation>Sie waren ohnmächtig</translation>
        </message>
        <message>
            <source>You can't stand or walk</source>
            <comment>gate.cannot_stand</comment>
            <translation>Sie können nicht stehen oder gehen</translation>
        </message>
        <message>
            <source>Pain in your chest</source>
            <comment>gate.chest_pain</comment>
            <translation>Schmerzen in der Brust</translation>
        </message>
        <message>
            <source>Seeing double</source>
            <comment>gate.double_vision</comment>
            <translation>Sie sehen doppelt</translation>
        </message>
        <message>
            <source>You had a fall</source>
            <comment>gate.fall</comment>
            <translation>Sie sind gestürzt</translation>
        </message>
        <message>
            <source>You suddenly hear less</source>
            <comment>gate.hearing_loss</comment>
            <translation>Sie hören plötzlich weniger</translation>
        </message>
        <message>
            <source>Mark what is new. If nothing is, press “None of these”.</source>
            <comment>gate.how</comment>
            <translation>Kreuzen Sie an, was neu ist. Wenn nichts neu ist, drücken Sie „Nichts davon“.</translation>
        </message>
        <message>
            <source>Your neck hurts</source>
            <comment>gate.neck_pain</comment>
            <translation>Ihr Nacken schmerzt</translation>
        </message>
        <message>
            <source>None of these</source>
            <comment>gate.none</comment>
            <translation>Nichts davon</translation>
        </message>
        <message>
            <source>Do not practise today. Call your therapist first.</source>
            <comment>gate.outcome.call_therapist</comment>
            <translation>Üben Sie heute nicht. Rufen Sie zuerst Ihre Therapiepraxis an.</translation>
        </message>
        <message>
            <source>Call for emergency help now: {number}. Do not practise today.</source>
            <comment>gate.outcome.emergency</comment>
            <translation>Rufen Sie jetzt den Notruf: {number}. Üben Sie heute nicht.</translation>
        </message>
        <message>
            <source>Call for emergency help now. Do not practise today.</source>
            <comment>gate.outcome.emergency_no_number</comment>
            <translation>Rufen Sie jetzt den Notruf. Üben Sie heute nicht.</translation>
        </message>
        <message>
            <source>For now you practise sitting down.</source>
            <comment>gate.outcome.seated_only</comment>
            <translation>Vorerst üben Sie im Sitzen.</translation>
        </message>
        <message>
            <source>Hold on and sit still until it stops. That is all for today. Your therapist sees this first when you hand over your sessions.</source>
            <comment>gate.outcome.sit_and_stop</comment>
            <translation>Halten Sie sich fest und sitzen Sie still, bis es aufhört. Das ist alles für heute. Ihre Therapiepraxis sieht das als Erstes, wenn Sie Ihre Übungssitzungen übergeben.</translation>
        </message>
        <message>
            <source>A short spin when you bend, look up or tilt your head</source>
            <comment>gate.positional_spin</comment>
            <translation>Kurzer Drehschwindel beim Bücken, beim Hochschauen oder beim Neigen des Kopfes</translation>
        </message>
        <message>
            <source>A sudden bad headache</source>
            <comment>gate.severe_headache</comment>
            <translation>Plötzliche starke Kopfschmerzen</translation>
        </message>
        <message>
            <source>Trouble with speech</source>
            <comment>gate.slurred_speech</comment>
            <translation>Probleme beim Sprechen</translation>
        </message>
        <message>
            <source>Yes, what I marked</source>
            <comment>gate.some</comment>
            <translation>Ja, das Angekreuzte</translation>
        </message>
        <message>
            <source>Your arm tingles</source>
            <comment>gate.tingling_arm</comment>
            <translation>Ihr Arm kribbelt</translation>
        </message>
        <message>
            <source>A dizzy spell not like the usual ones</source>
            <comment>gate.unlike_usual</comment>
            <translation>Ein Schwindel, der anders ist als sonst</translation>
        </message>
        <message>
            <source>A weak or numb face, arm or leg</source>
            <comment>gate.weak_or_numb</comment>
            <translation>Gesicht, Arm oder Bein ist schwach oder taub</translation>
        </message>
        <message>
            <source>None</source>
            <comment>glasses.none</comment>
            <translation>Keine</translation>
        </message>
        <message>
            <source>One strength</source>
            <comment>glasses.single</comment>
            <translation>Eine Stärke</translation>
        </message>
        <message>
            <source>Which glasses do you wear now?</source>
            <comment>glasses.title</comment>
            <translation>Welche Brille tragen Sie jetzt?</translation>
        </message>
        <message>
            <source>Bi- or varifocal</source>
            <comment>glasses.varifocal</comment>
            <translation>Gleitsicht oder Bifokal</translation>
        </message>
        <message>
            <source>Nothing is measured here. Please count for yourself.</source>
            <comment>guide.count</comment>
            <translation>Hier wird nichts gemessen. Bitte zählen Sie selbst.</translation>
        </message>
        <message>
            <source>That was all of it. Stand still, or sit down. Your helper presses “Done”.</source>
            <comment>guide.over</comment>
            <translation>Das war alles. Bleiben Sie ruhig stehen, oder setzen Sie sich. Ihre Hilfsperson drückt „Fertig“.</translation>
        </message>
        <message>
            <source>Turn slowly to the other side and give the ball back.</source>
            <comment>guide.partner.give</comment>
            <translation>Drehen Sie sich langsam zur anderen Seite und geben Sie den Ball zurück.</translation>
        </message>
        <message>
            <source>First stand still. Your partner is close to you, with the ball.</source>
            <comment>guide.partner.stand</comment>
            <translation>Stehen Sie zuerst ruhig. Ihr Partner oder Ihre Partnerin ist nah bei Ihnen und hat den Ball.</translation>
        </message>
        <message>
            <source>When you are ready, turn slowly to one side and take the ball.</source>
            <comment>guide.partner.take</comment>
            <translation>Wenn Sie bereit sind, drehen Sie sich langsam zur einen Seite und nehmen Sie den Ball.</translation>
        </message>
        <message>
            <source>Your helper stays one step below you. When you are steady, go down again. Your hand stays on the rail.</source>
            <comment>guide.stairs.down</comment>
            <translation>Ihre Hilfsperson bleibt eine Stufe unter Ihnen. Wenn Sie sicher stehen, gehen Sie wieder hinunter. Ihre Hand bleibt am Geländer.</translation>
        </message>
        <message>
            <source>Stand before the step, your hand on the rail. Your helper stands close behind you.</source>
            <comment>guide.stairs.stand</comment>
            <translation>Stellen Sie sich vor die Stufe, die Hand am Geländer. Ihre Hilfsperson steht dicht hinter Ihnen.</translation>
        </message>
        <message>
            <source>Your helper stays close behind you. When you are ready, go up one step, one foot after the other.</source>
            <comment>guide.stairs.up</comment>
            <translation>Ihre Hilfsperson bleibt dicht hinter Ihnen. Wenn Sie bereit sind, gehen Sie eine Stufe hinauf, einen Fuß nach dem anderen.</translation>
        </message>
        <message>
            <source>To stop, say stop and hold on. Your helper stays and helps you sit down. The Escape key can wait.</source>
            <comment>guide.stop</comment>
            <translation>Zum Anhalten sagen Sie Stopp und halten sich fest. Ihre Hilfsperson bleibt da und hilft beim Hinsetzen. Die Esc-Taste hat Zeit.</translation>
        </message>
        <message>
            <source>Your helper goes behind you. When you are ready, walk ten steps backward. Take your time.</source>
            <comment>guide.walk.back</comment>
            <translation>Ihre Hilfsperson geht hinter Sie. Wenn Sie bereit sind, gehen Sie zehn Schritte rückwärts. Lassen Sie sich Zeit.</translation>
        </message>
        <message>
            <source>When you are ready, walk ten steps forward. Take your time.</source>
            <comment>guide.walk.forward</comment>
            <translation>Wenn Sie bereit sind, gehen Sie zehn Schritte vorwärts. Lassen Sie sich Zeit.</translation>
        </message>
        <message>
            <source>After the tenth step stop, and stand until all is steady.</source>
            <comment>guide.walk.halt</comment>
            <translation>Nach dem zehnten Schritt halten Sie an und bleiben stehen, bis alles ruhig ist.</translation>
        </message>
        <message>
            <source>First stand still. Your helper is at your side.</source>
            <comment>guide.walk.stand</comment>
            <translation>Stehen Sie zuerst ruhig. Ihre Hilfsperson ist an Ihrer Seite.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>handover.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Not in the file, because they broke off: {count}. Close Turnpost and open it again to save them.</source>
            <comment>handover.broken_off</comment>
            <translation>Nicht in der Datei, weil abgebrochen: {count}. Schließen Sie Turnpost und öffnen Sie es wieder, um das zu speichern.</translation>
        </message>
        <message>
            <source>Not in the file, because you saved them in a folder of your own: {count}. Bring that folder to your therapist.</source>
            <comment>handover.elsewhere</comment>
            <translation>Nicht in der Datei, weil Sie es in einem eigenen Ordner gespeichert haben: {count}. Bringen Sie diesen Ordner Ihrer Therapiepraxis.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>handover.failed</comment>
            <translation>Das hat nicht geklappt: {why}</translation>
        </message>
        <message>
            <source>There are sessions of other plans, of which this clinic has nothing yet: {plans}. They stay here unless you say that they are yours and meant for this clinic.</source>
            <comment>handover.foreign</comment>
            <translation>Es gibt Sitzungen zu anderen Plänen, von denen diese Praxis noch nichts hat: {plans}. Sie bleiben hier, außer Sie sagen, dass es Ihre sind und für diese Praxis bestimmt.</translation>
        </message>
        <message>
            <source>Mine: take them, too</source>
            <comment>handover.foreign.take</comment>
            <translation>Meine: auch mitnehmen</translation>
        </message>
        <message>
            <source>Names of files are not shown in a call. Leave the call's layout (F4) first.</source>
            <comment>handover.in_call</comment>
            <translation>Im Gespräch werden keine Dateinamen gezeigt. Verlassen Sie zuerst die Ansicht für das Gespräch (F4).</translation>
        </message>
        <message>
            <source>Turnpost puts them into one file. In it are your answers and what was measured. There is no picture in it, nor the shape of your face, nor your name.</source>
            <comment>handover.inside</comment>
            <translation>Turnpost packt sie in eine Datei. Darin sind Ihre Antworten und was gemessen wurde. Es ist kein Bild darin, auch nicht die Form Ihres Gesichts und nicht Ihr Name.</translation>
        </message>
        <message>
            <source>Files for the clinic (*.age *.turnpost)</source>
            <comment>handover.kinds</comment>
            <translation>Dateien für die Praxis (*.age *.turnpost)</translation>
        </message>
        <message>
            <source>The file is locked: only your clinic can open it.</source>
            <comment>handover.locked</comment>
            <translation>Die Datei ist verschlossen: Nur Ihre Praxis kann sie öffnen.</translation>
        </message>
        <message>
            <source>Looking at what you have practised ...</source>
            <comment>handover.looking</comment>
            <translation>Es wird nachgesehen, was Sie geübt haben ...</translation>
        </message>
        <message>
            <source>The file is made. Sessions in it: {count}. It is here: {path}</source>
            <comment>handover.made</comment>
            <translation>Die Datei ist fertig. Sitzungen darin: {count}. Sie liegt hier: {path}</translation>
        </message>
        <message>
            <source>Make one with all {count}</source>
            <comment>handover.make_all</comment>
            <translation>Eine mit allen machen: {count}</translation>
        </message>
        <message>
            <source>Make the file</source>
            <comment>handover.make_new</comment>
            <translation>Die Datei machen</translation>
        </message>
        <message>
            <source>Making the file ...</source>
            <comment>handover.making</comment>
            <translation>Die Datei wird gemacht ...</translation>
        </message>
        <message>
            <source>Not all went into one file. Send these, too: {names}</source>
            <comment>handover.more</comment>
            <translation>Nicht alles passte in eine Datei. Senden Sie auch diese: {names}</translation>
        </message>
        <message>
            <source>Sessions waiting to be handed over: {count}.</source>
            <comment>handover.new</comment>
            <translation>Sitzungen, die zur Übergabe bereitstehen: {count}.</translation>
        </message>
        <message>
            <source>You have handed over all you practised with this plan. If a file was lost, you can make one with everything again.</source>
            <comment>handover.no_new</comment>
            <translation>Sie haben alles übergeben, was Sie mit diesem Plan geübt haben. Wenn eine Datei verloren ging, können Sie noch einmal eine mit allem machen.</translation>
        </message>
        <message>
            <source>You have no plan from your therapist open. Open it on the first page, then come back.</source>
            <comment>handover.no_plan</comment>
            <translation>Sie haben keinen Plan Ihrer Therapiepraxis geöffnet. Öffnen Sie ihn auf der ersten Seite und kommen Sie dann zurück.</translation>
        </message>
        <message>
            <source>Your plan does not name a clinic that can receive files. Ask your therapist for a plan with the clinic's key in it.</source>
            <comment>handover.no_way</comment>
            <translation>Ihr Plan nennt keine Praxis, die Dateien empfangen kann. Bitten Sie Ihre Therapiepraxis um einen Plan mit dem Schlüssel der Praxis.</translation>
        </message>
        <message>
            <source>There is nothing to hand over yet. Practise once, then come back.</source>
            <comment>handover.none</comment>
            <translation>Es gibt noch nichts zu übergeben. Üben Sie einmal und kommen Sie dann zurück.</translation>
        </message>
        <message>
            <source>One session waits to be handed over.</source>
            <comment>handover.one_new</comment>
            <translation>Eine Sitzung wartet auf die Übergabe.</translation>
        </message>
        <message>
            <source>Hand over to my therapist</source>
            <comment>handover.open</comment>
            <translation>An meine Therapiepraxis übergeben</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. Whoever gets hold of this file can read it, so give it to your therapist by hand if you can.</source>
            <comment>handover.plain</comment>
            <translation>Ihre Praxis hat Dateien ohne Schloss gewählt. Wer diese Datei bekommt, kann sie lesen. Geben Sie sie darum Ihrer Therapiepraxis persönlich, wenn Sie können.</translation>
        </message>
        <message>
            <source>Now send it to your therapist: attach it to an e-mail, or bring it along on a memory stick.</source>
            <comment>handover.send</comment>
            <translation>Schicken Sie sie jetzt Ihrer Therapiepraxis: Hängen Sie sie an eine E-Mail oder bringen Sie sie auf einem Speicherstick mit.</translation>
        </message>
        <message>
            <source>Sessions whose curves stayed behind, too large or not readable: {count}.</source>
            <comment>handover.thin</comment>
            <translation>Sitzungen, deren Kurven hierblieben, weil zu groß oder nicht lesbar: {count}.</translation>
        </message>
        <message>
            <source>Hand over to your therapist</source>
            <comment>handover.title</comment>
            <translation>An Ihre Therapiepraxis übergeben</translation>
        </message>
        <message>
            <source>You have not compared the words of your plan yet. Do it first: then you know that the file goes to your clinic.</source>
            <comment>handover.unchecked</comment>
            <translation>Sie haben die Wörter Ihres Plans noch nicht verglichen. Tun Sie das zuerst: Dann wissen Sie, dass die Datei an Ihre Praxis geht.</translation>
        </message>
        <message>
            <source>Left out, because they can't be read: {count}. Tell your therapist.</source>
            <comment>handover.unread</comment>
            <translation>Weggelassen, weil nicht lesbar: {count}. Sagen Sie es Ihrer Therapiepraxis.</translation>
        </message>
        <message>
            <source>Not in the file, because they were practised as another person or without a plan: {count}.</source>
            <comment>handover.unsent</comment>
            <translation>Nicht in der Datei, weil als andere Person oder ohne Plan geübt: {count}.</translation>
        </message>
        <message>
            <source>Where to put the file</source>
            <comment>handover.where</comment>
            <translation>Wohin mit der Datei</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>help.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>In the whole program</source>
            <comment>help.group.always</comment>
            <translation>Im ganzen Programm</translation>
        </message>
        <message>
            <source>In the layout for a call, between two sets: for your therapist</source>
            <comment>help.group.call</comment>
            <translation>In der Ansicht für das Gespräch, zwischen zwei Durchgängen: für Ihre Therapiepraxis</translation>
        </message>
        <message>
            <source>To get about on a page</source>
            <comment>help.group.page</comment>
            <translation>Um sich auf einer Seite zu bewegen</translation>
        </message>
        <message>
            <source>Where you can see yourself</source>
            <comment>help.group.picture</comment>
            <translation>Wo Sie sich selbst sehen können</translation>
        </message>
        <message>
            <source>While a set goes on</source>
            <comment>help.group.set</comment>
            <translation>Während ein Durchgang läuft</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>help.key.colours</comment>
            <translation>Hell oder dunkel</translation>
        </message>
        <message>
            <source>I see double: stop (with a fingertip near your eyes)</source>
            <comment>help.key.double</comment>
            <translation>Ich sehe doppelt: aufhören (mit der Fingerspitze nah vor den Augen)</translation>
        </message>
        <message>
            <source>Read on below</source>
            <comment>help.key.down</comment>
            <translation>Unten weiterlesen</translation>
        </message>
        <message>
            <source>Faster</source>
            <comment>help.key.faster</comment>
            <translation>Schneller</translation>
        </message>
        <message>
            <source>Full screen, and back</source>
            <comment>help.key.full_screen</comment>
            <translation>Ganzer Bildschirm, und zurück</translation>
        </message>
        <message>
            <source>This page, and back</source>
            <comment>help.key.help</comment>
            <translation>Diese Seite, und zurück</translation>
        </message>
        <message>
            <source>Larger movement</source>
            <comment>help.key.larger</comment>
            <translation>Größere Bewegung</translation>
        </message>
        <message>
            <source>Mark this moment for your therapist (in a session)</source>
            <comment>help.key.mark</comment>
            <translation>Diesen Moment für Ihre Therapiepraxis merken (während einer Sitzung)</translation>
        </message>
        <message>
            <source>To the next button</source>
            <comment>help.key.next</comment>
            <translation>Zum nächsten Knopf</translation>
        </message>
        <message>
            <source>Another exercise first</source>
            <comment>help.key.other_next</comment>
            <translation>Erst eine andere Übung</translation>
        </message>
        <message>
            <source>Pause, and go on</source>
            <comment>help.key.pause</comment>
            <translation>Pause, und weiter</translation>
        </message>
        <message>
            <source>Show or hide your picture</source>
            <comment>help.key.picture</comment>
            <translation>Ihr Bild zeigen oder verbergen</translation>
        </message>
        <message>
            <source>Press the button that has the ring</source>
            <comment>help.key.press</comment>
            <translation>Den umrandeten Knopf drücken</translation>
        </message>
        <message>
            <source>End Turnpost; what was done is saved</source>
            <comment>help.key.quit</comment>
            <translation>Turnpost beenden; was getan ist, wird gespeichert</translation>
        </message>
        <message>
            <source>Layout for a video call, and back (not in the set-up)</source>
            <comment>help.key.share</comment>
            <translation>Ansicht für ein Videogespräch, und zurück (nicht während der Einrichtung)</translation>
        </message>
        <message>
            <source>Slower</source>
            <comment>help.key.slower</comment>
            <translation>Langsamer</translation>
        </message>
        <message>
            <source>Smaller movement</source>
            <comment>help.key.smaller</comment>
            <translation>Kleinere Bewegung</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none</source>
            <comment>help.key.sound</comment>
            <translation>Ton: Stimme, Takt oder nichts</translation>
        </message>
        <message>
            <source>Hold drawings still, or let them move</source>
            <comment>help.key.still</comment>
            <translation>Zeichnungen anhalten oder bewegen lassen</translation>
        </message>
        <message>
            <source>Stop at once, or leave the page</source>
            <comment>help.key.stop</comment>
            <translation>Sofort aufhören oder die Seite verlassen</translation>
        </message>
        <message>
            <source>Take the change back</source>
            <comment>help.key.take_back</comment>
            <translation>Die Änderung zurücknehmen</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>help.key.text_larger</comment>
            <translation>Größere Schrift</translation>
        </message>
        <message>
            <source>Text in its usual size</source>
            <comment>help.key.text_normal</comment>
            <translation>Schrift in üblicher Größe</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>help.key.text_smaller</comment>
            <translation>Kleinere Schrift</translation>
        </message>
        <message>
            <source>I feel unwell (at any time)</source>
            <comment>help.key.unwell</comment>
            <translation>Mir ist unwohl (jederzeit)</translation>
        </message>
        <message>
            <source>Back up</source>
            <comment>help.key.up</comment>
            <translation>Wieder nach oben</translation>
        </message>
        <message>
            <source>Ctrl</source>
            <comment>help.name.Ctrl</comment>
            <translation>Strg</translation>
        </message>
        <message>
            <source>Enter</source>
            <comment>help.name.Enter</comment>
            <translation>Eingabe</translation>
        </message>
        <message>
            <source>Page Down</source>
            <comment>help.name.PgDown</comment>
            <translation>Bild ab</translation>
        </message>
        <message>
            <source>Page Up</source>
            <comment>help.name.PgUp</comment>
            <translation>Bild auf</translation>
        </message>
        <message>
            <source>Space</source>
            <comment>help.name.Space</comment>
            <translation>Leertaste</translation>
        </message>
        <message>
            <source>F1, Ctrl+M and the text size do nothing while a set or the set-up goes on. Between two sets, Esc asks first if that is all for today, and does nothing for two seconds after a page has come by itself.</source>
            <comment>help.note.always</comment>
            <translation>F1, Strg+M und die Textgröße bewirken nichts, während ein Durchgang oder die Einrichtung läuft. Zwischen zwei Durchgängen fragt Esc erst, ob das für heute alles ist, und bewirkt zwei Sekunden lang nichts, nachdem eine Seite von selbst gekommen ist.</translation>
        </message>
        <message>
            <source>Where something moves behind the target, any key stops the set.</source>
            <comment>help.note.set</comment>
            <translation>Wo sich etwas hinter dem Ziel bewegt, beendet jede Taste den Durchgang.</translation>
        </message>
        <message>
            <source>Keys and help (F1)</source>
            <comment>help.open</comment>
            <translation>Tasten und Hilfe (F1)</translation>
        </message>
        <message>
            <source>How to give a score</source>
            <comment>help.scores</comment>
            <translation>So geben Sie eine Zahl an</translation>
        </message>
        <message>
            <source>Then press Enter.</source>
            <comment>help.scores.enter</comment>
            <translation>Drücken Sie danach die Eingabetaste.</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <comment>help.title</comment>
            <translation>Tasten und Hilfe</translation>
        </message>
        <message>
            <source>If you feel unwell</source>
            <comment>help.unwell</comment>
            <translation>Wenn Ihnen unwohl ist</translation>
        </message>
        <message>
            <source>Press Esc: what goes on stops at once. While you practise or just after, press U instead: everything stops, and a few questions follow. Sit down, or hold on to something firm.</source>
            <comment>help.unwell.how</comment>
            <translation>Drücken Sie Esc: Was gerade läuft, hört sofort auf. Während Sie üben oder gleich danach drücken Sie stattdessen U: Alles hört auf, und es folgen ein paar Fragen. Setzen Sie sich hin oder halten Sie sich an etwas Festem fest.</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Keep your eyes shut.</source>
            <comment>how.ankle-sway.closed</comment>
            <translation>Stehen Sie aufrecht. Neigen Sie sich langsam zu den Zehen, dann zu den Fersen. Bewegen Sie die Fußgelenke, nicht die Hüfte. Die Augen bleiben zu.</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until the time is up.</source>
            <comment>how.chair-stands-30-s.paper</comment>
            <translation>Kreuzen Sie die Arme. Stehen Sie auf und setzen Sie sich wieder, so oft es sicher geht, bis die Zeit um ist.</translation>
        </message>
        <message>
            <source>Look from one note to the other, once a beat. Your head stays still.</source>
            <comment>how.eyes-side-to-side.wall</comment>
            <translation>Schauen Sie von einem Zettel zum anderen, ein Blick pro Taktschlag. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at one note with your eyes. Then turn your head to it. Now look at the other note, and turn again.</source>
            <comment>how.eyes-then-head.wall</comment>
            <translation>Schauen Sie mit den Augen zu einem Zettel. Drehen Sie dann den Kopf dorthin. Schauen Sie nun zum anderen Zettel und drehen Sie sich wieder.</translation>
        </message>
        <message>
            <source>Look from the upper note to the lower one and back, once a beat. Your head stays still.</source>
            <comment>how.eyes-up-down.wall</comment>
            <translation>Schauen Sie vom oberen Zettel zum unteren und zurück, ein Blick pro Taktschlag. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one.</source>
            <comment>how.hand-toss.paper</comment>
            <translation>Werfen Sie einen weichen Ball oder eine gerollte Socke von Hand zu Hand, bis knapp über die Augen. Augen und Kopf gehen mit. Fällt er herunter, lassen Sie ihn liegen und nehmen Sie einen neuen.</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length. Bring it slowly to about 30 cm from your eyes, then back out. Your eyes stay on the tip. Your head stays still.</source>
            <comment>how.near-far.paper</comment>
            <translation>Halten Sie einen Finger mit ausgestrecktem Arm hoch. Führen Sie ihn langsam bis etwa 30 cm vor Ihre Augen und wieder weg. Ihre Augen bleiben auf der Fingerspitze. Ihr Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.nods-on-target.wall</comment>
            <translation>Nicken Sie auf und ab, ein Nicken pro Taktschlag. Ihre Augen bleiben auf dem Zettel an der Wand.</translation>
        </message>
        <message>
            <source>Lift your head, then lower it. Keep your eyes shut. Move once a beat.</source>
            <comment>how.nods-together.closed</comment>
            <translation>Heben Sie den Kopf, dann senken Sie ihn. Die Augen bleiben zu. Eine Bewegung pro Taktschlag.</translation>
        </message>
        <message>
            <source>Turn your head from side to side.</source>
            <comment>how.shake</comment>
            <translation>Drehen Sie den Kopf von Seite zu Seite.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-back.paper</comment>
            <translation>Heben Sie beide Schultern, kreisen Sie sie nach hinten und lassen Sie sie sinken. Langsam. Der Kopf bleibt gerade.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-forward.paper</comment>
            <translation>Heben Sie beide Schultern, kreisen Sie sie nach vorn und lassen Sie sie sinken. Langsam. Der Kopf bleibt gerade.</translation>
        </message>
        <message>
            <source>Keep your eyes shut.</source>
            <comment>how.shut</comment>
            <translation>Die Augen bleiben zu.</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Shut your eyes and stand still.</source>
            <comment>how.stand-tandem.closed</comment>
            <translation>Setzen Sie einen Fuß genau vor den anderen. Schließen Sie die Augen und stehen Sie still.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.closed</comment>
            <translation>Stehen Sie mit dem Rücken zur Ecke, die Füße so breit wie Ihre Schultern. Die Arme hängen. Kinn hoch. Die Augen bleiben zu.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>how.stand.soft</comment>
            <translation>Stehen Sie mit dem Rücken zur Ecke, die Füße so breit wie Ihre Hüften. Die Arme hängen. Kinn hoch. Schauen Sie auf eine Marke an der Wand, so hoch wie Ihre Augen.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.soft.closed</comment>
            <translation>Stehen Sie mit dem Rücken zur Ecke, die Füße so breit wie Ihre Hüften. Die Arme hängen. Kinn hoch. Die Augen bleiben zu.</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.turns-on-target.wall</comment>
            <translation>Drehen Sie den Kopf von Seite zu Seite, eine Drehung pro Taktschlag. Ihre Augen bleiben auf dem Zettel an der Wand.</translation>
        </message>
        <message>
            <source>Turn your head to the right, then to the left. Keep your eyes shut. Move once a beat.</source>
            <comment>how.turns-together.closed</comment>
            <translation>Drehen Sie den Kopf nach rechts, dann nach links. Die Augen bleiben zu. Eine Bewegung pro Taktschlag.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>leave.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Go on practising</source>
            <comment>leave.go_on</comment>
            <translation>Weiter üben</translation>
        </message>
        <message>
            <source>What you have done so far is kept either way.</source>
            <comment>leave.how</comment>
            <translation>Was Sie bis jetzt gemacht haben, bleibt auf jeden Fall erhalten.</translation>
        </message>
        <message>
            <source>Is that all for today?</source>
            <comment>leave.title</comment>
            <translation>Ist das alles für heute?</translation>
        </message>
        <message>
            <source>Corner to corner</source>
            <comment>lens.across.corner</comment>
            <translation>Von Ecke zu Ecke</translation>
        </message>
        <message>
            <source>Top to bottom</source>
            <comment>lens.across.upright</comment>
            <translation>Von oben bis unten</translation>
        </message>
        <message>
            <source>Angle</source>
            <comment>lens.angle</comment>
            <translation>Winkel</translation>
        </message>
        <message>
            <source>{deg} degrees</source>
            <comment>lens.angle.deg</comment>
            <translation>{deg} Grad</translation>
        </message>
        <message>
            <source>Distance to the camera</source>
            <comment>lens.distance</comment>
            <translation>Abstand zur Kamera</translation>
        </message>
        <message>
            <source>{cm} cm</source>
            <comment>lens.distance.cm</comment>
            <translation>{cm} cm</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>lens.distance.none</comment>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>Done, and kept for this camera.</source>
            <comment>lens.done</comment>
            <translation>Fertig, und für diese Kamera aufbewahrt.</translation>
        </message>
        <message>
            <source>Take the usual value</source>
            <comment>lens.forget</comment>
            <translation>Den üblichen Wert nehmen</translation>
        </message>
        <message>
            <source>{views} of {wanted} views. {hint}</source>
            <comment>lens.going_on</comment>
            <translation>{views} von {wanted} Ansichten. {hint}</translation>
        </message>
        <message>
            <source>I see it. Hold it still.</source>
            <comment>lens.hint.sheet_moving</comment>
            <translation>Ich sehe es. Halten Sie es still.</translation>
        </message>
        <message>
            <source>Hold it up so that all four corners show.</source>
            <comment>lens.hint.sheet_none</comment>
            <translation>Halten Sie es so hoch, dass alle vier Ecken zu sehen sind.</translation>
        </message>
        <message>
            <source>Good. Now tilt it another way.</source>
            <comment>lens.hint.sheet_same</comment>
            <translation>Gut. Neigen Sie es jetzt anders.</translation>
        </message>
        <message>
            <source>Good. That view is taken.</source>
            <comment>lens.hint.sheet_taken</comment>
            <translation>Gut. Diese Ansicht ist erfasst.</translation>
        </message>
        <message>
            <source>Hold a plain bank card by its rim, about a hand's length from the camera, in front of something darker or lighter. Cover its number if you like: no picture is stored. Tilt it to every side, and hold it still each time.</source>
            <comment>lens.how.card</comment>
            <translation>Halten Sie eine einfache Bankkarte am Rand, etwa eine Handlänge von der Kamera, vor etwas Dunklerem oder Hellerem. Decken Sie die Nummer ab, wenn Sie mögen: Kein Bild wird gespeichert. Neigen Sie die Karte zu jeder Seite, und halten Sie sie jedes Mal still.</translation>
        </message>
        <message>
            <source>Hold a plain white sheet flat in front of something darker, at its edges, about an arm's length from the camera. Tilt it up, down and to both sides, and hold it still each time.</source>
            <comment>lens.how.paper</comment>
            <translation>Halten Sie ein weißes Blatt flach an den Rändern vor etwas Dunklerem, etwa eine Armlänge von der Kamera. Neigen Sie es nach oben, nach unten und zu beiden Seiten, und halten Sie es jedes Mal still.</translation>
        </message>
        <message>
            <source>Take the angle from the camera's papers. Most makers state it corner to corner.</source>
            <comment>lens.how.stated</comment>
            <translation>Nehmen Sie den Winkel aus den Unterlagen der Kamera. Die meisten Hersteller geben ihn von Ecke zu Ecke an.</translation>
        </message>
        <message>
            <source>Keep this angle</source>
            <comment>lens.keep</comment>
            <translation>Diesen Winkel behalten</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a card, give or take {error}.</source>
            <comment>lens.known.card</comment>
            <translation>Kamera: {deg} Grad von oben bis unten, mit einer Karte gemessen, plus oder minus {error}.</translation>
        </message>
        <message>
            <source>Camera: not measured. {deg} degrees are taken, give or take {error}.</source>
            <comment>lens.known.default</comment>
            <translation>Kamera: nicht gemessen. Es gelten {deg} Grad, plus oder minus {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a sheet, give or take {error}.</source>
            <comment>lens.known.paper</comment>
            <translation>Kamera: {deg} Grad von oben bis unten, mit einem Blatt gemessen, plus oder minus {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, as typed, give or take {error}.</source>
            <comment>lens.known.stated</comment>
            <translation>Kamera: {deg} Grad von oben bis unten, wie eingegeben, plus oder minus {error}.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>lens.no_camera</comment>
            <translation>Es wurde keine Kamera gefunden.</translation>
        </message>
        <message>
            <source>Camera on, begin</source>
            <comment>lens.start</comment>
            <translation>Kamera an, beginnen</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>lens.stop</comment>
            <translation>Kamera aus</translation>
        </message>
        <message>
            <source>How wide does your camera see?</source>
            <comment>lens.title</comment>
            <translation>Wie viel sieht Ihre Kamera?</translation>
        </message>
        <message>
            <source>What do you measure with?</source>
            <comment>lens.with</comment>
            <translation>Womit messen Sie?</translation>
        </message>
        <message>
            <source>A bank card</source>
            <comment>lens.with.card</comment>
            <translation>Eine Bankkarte</translation>
        </message>
        <message>
            <source>A sheet of A4 paper</source>
            <comment>lens.with.paper</comment>
            <translation>Ein Blatt Papier (A4)</translation>
        </message>
        <message>
            <source>I know the figure</source>
            <comment>lens.with.stated</comment>
            <translation>Ich kenne die Zahl</translation>
        </message>
        <message>
            <source>The camera is back. Keep counting for yourself, then press Done.</source>
            <comment>lost.again</comment>
            <translation>Die Kamera geht wieder. Zählen Sie selbst weiter, dann drücken Sie „Fertig“.</translation>
        </message>
        <message>
            <source>The camera is back. Go on when you are ready: press Space.</source>
            <comment>lost.back</comment>
            <translation>Die Kamera ist wieder da. Machen Sie weiter, wenn Sie so weit sind: Drücken Sie die Leertaste.</translation>
        </message>
        <message>
            <source>Go on and count for yourself. Press Done when you have done them all.</source>
            <comment>lost.count</comment>
            <translation>Machen Sie weiter und zählen Sie selbst. Drücken Sie „Fertig“, wenn Sie alle gemacht haben.</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>lost.figure</comment>
            <translation>Pause</translation>
        </message>
        <message>
            <source>Take hold of something firm, or sit down.</source>
            <comment>lost.hold</comment>
            <translation>Halten Sie sich an etwas Festem fest, oder setzen Sie sich hin.</translation>
        </message>
        <message>
            <source>This is paused.</source>
            <comment>lost.paused</comment>
            <translation>Die Übung ist angehalten.</translation>
        </message>
        <message>
            <source>The set-up waits. It begins again when the camera is back.</source>
            <comment>lost.setup</comment>
            <translation>Die Einrichtung wartet. Sie beginnt neu, sobald die Kamera wieder da ist.</translation>
        </message>
        <message>
            <source>The camera is back. The set-up begins again.</source>
            <comment>lost.setup_again</comment>
            <translation>Die Kamera geht wieder. Die Einrichtung beginnt neu.</translation>
        </message>
        <message>
            <source>Point your nose straight ahead and hold it. A sound says when to go on.</source>
            <comment>mark.ahead</comment>
            <translation>Richten Sie die Nase geradeaus und halten Sie still. Ein Ton sagt, wann es weitergeht.</translation>
        </message>
        <message>
            <source>Back to the exercises</source>
            <comment>mark.back</comment>
            <translation>Zurück zu den Übungen</translation>
        </message>
        <message>
            <source>Turn slowly back to straight ahead and hold it until the sound.</source>
            <comment>mark.back_ahead</comment>
            <translation>Drehen Sie sich langsam wieder geradeaus und halten Sie das bis zum Ton.</translation>
        </message>
        <message>
            <source>Begin the check</source>
            <comment>mark.begin</comment>
            <translation>Prüfung beginnen</translation>
        </message>
        <message>
            <source>The camera was gone for a while. Begin the check again if you like.</source>
            <comment>mark.camera_lost</comment>
            <translation>Die Kamera war eine Weile weg. Beginnen Sie die Prüfung noch einmal, wenn Sie möchten.</translation>
        </message>
        <message>
            <source>From your eyes to the wall</source>
            <comment>mark.distance</comment>
            <translation>Von Ihren Augen zur Wand</translation>
        </message>
        <message>
            <source>The camera read {measured} degrees, the tape says {expected}. Both go into your results.</source>
            <comment>mark.found</comment>
            <translation>Die Kamera maß {measured} Grad, das Maßband sagt {expected}. Beides kommt in Ihre Ergebnisse.</translation>
        </message>
        <message>
            <source>Your head was not held still long enough at the mark. Try again if you like.</source>
            <comment>mark.gave_up</comment>
            <translation>Ihr Kopf war an der Marke nicht lange genug still. Versuchen Sie es noch einmal, wenn Sie mögen.</translation>
        </message>
        <message>
            <source>Stick a mark on the wall in front of you, at the height of your eyes and to one side. Measure with a tape from your eyes straight to the wall, and from there along the wall to the mark. You can leave this out.</source>
            <comment>mark.how</comment>
            <translation>Kleben Sie eine Marke vor sich an die Wand, so hoch wie Ihre Augen und etwas zur Seite. Messen Sie mit einem Maßband von Ihren Augen gerade zur Wand, und von dort an der Wand entlang bis zur Marke. Sie können das weglassen.</translation>
        </message>
        <message>
            <source>As last time: wall {distance}, mark {offset}. {side}</source>
            <comment>mark.last</comment>
            <translation>Wie letztes Mal: Wand {distance}, Marke {offset}. {side}</translation>
        </message>
        <message>
            <source>Turn slowly until your nose points at the mark. Hold it until the sound.</source>
            <comment>mark.mark</comment>
            <translation>Drehen Sie sich langsam, bis die Nase auf die Marke zeigt. Halten Sie das bis zum Ton.</translation>
        </message>
        <message>
            <source>Along the wall to the mark</source>
            <comment>mark.offset</comment>
            <translation>An der Wand entlang zur Marke</translation>
        </message>
        <message>
            <source>Check the measuring</source>
            <comment>mark.open</comment>
            <translation>Das Messen prüfen</translation>
        </message>
        <message>
            <source>This can't be used: {why}.</source>
            <comment>mark.refused</comment>
            <translation>Das lässt sich nicht verwenden: {why}.</translation>
        </message>
        <message>
            <source>Side of the mark</source>
            <comment>mark.side</comment>
            <translation>Seite der Marke</translation>
        </message>
        <message>
            <source>To my left</source>
            <comment>mark.side.left</comment>
            <translation>Links von mir</translation>
        </message>
        <message>
            <source>To my right</source>
            <comment>mark.side.right</comment>
            <translation>Rechts von mir</translation>
        </message>
        <message>
            <source>Is your head measured rightly?</source>
            <comment>mark.title</comment>
            <translation>Wird Ihr Kopf richtig gemessen?</translation>
        </message>
        <message>
            <source>First give both lengths, by the tape.</source>
            <comment>mark.unset</comment>
            <translation>Geben Sie zuerst beide Längen an, mit dem Maßband gemessen.</translation>
        </message>
        <message>
            <source>Pressed by mistake: go back</source>
            <comment>meant.back</comment>
            <translation>Versehentlich gedrückt: zurück</translation>
        </message>
        <message>
            <source>If so, safety questions come now, and that is all practice for today.</source>
            <comment>meant.how</comment>
            <translation>Wenn ja, kommen jetzt Sicherheitsfragen, und das Üben ist für heute zu Ende.</translation>
        </message>
        <message>
            <source>Do you feel unwell?</source>
            <comment>meant.title</comment>
            <translation>Fühlen Sie sich unwohl?</translation>
        </message>
        <message>
            <source>The window was moved, so this is paused. Go on with Space.</source>
            <comment>moved.set</comment>
            <translation>Das Fenster wurde verschoben, deshalb ist jetzt Pause. Weiter mit der Leertaste.</translation>
        </message>
        <message>
            <source>The window was moved, and the target with it.</source>
            <comment>moved.setup</comment>
            <translation>Das Fenster wurde verschoben und mit ihm das Ziel.</translation>
        </message>
        <message>
            <source>The set-up begins again in a moment.</source>
            <comment>moved.setup_again</comment>
            <translation>Die Einrichtung beginnt gleich neu.</translation>
        </message>
        <message>
            <source>Turnpost could not open</source>
            <comment>not_open.title</comment>
            <translation>Turnpost konnte nicht starten</translation>
        </message>
        <message>
            <source>Your saved sessions stay as they are. Restart the computer and try again. If this note comes back, show it to somebody who helps you with the computer. This is what went wrong:</source>
            <comment>not_open.what</comment>
            <translation>Ihre gespeicherten Sitzungen bleiben, wie sie sind. Starten Sie den Computer neu und versuchen Sie es noch einmal. Wenn dieser Hinweis wiederkommt, zeigen Sie ihn jemandem, der Ihnen mit dem Computer hilft. Das ist schiefgegangen:</translation>
        </message>
        <message>
            <source>You closed the question without saying how you are. Nobody has been called.</source>
            <comment>over.closed_unsaid</comment>
            <translation>Sie haben die Frage geschlossen, ohne zu sagen, wie es Ihnen geht. Es wurde niemand angerufen.</translation>
        </message>
        <message>
            <source>You told of a fall. Your therapist should know before you go on.</source>
            <comment>over.fall</comment>
            <translation>Sie haben von einem Sturz berichtet. Ihre Therapiepraxis sollte davon wissen, bevor Sie weitermachen.</translation>
        </message>
        <message>
            <source>Good. Sit down and rest. Nobody has been called: if you feel unwell later, call for help. Your therapist reads of the drop when you hand over your sessions.</source>
            <comment>over.fine</comment>
            <translation>Gut. Setzen Sie sich und ruhen Sie sich aus. Es wurde niemand angerufen: Wenn Sie sich später nicht wohlfühlen, rufen Sie Hilfe. Ihre Therapiepraxis liest vom Absinken Ihres Kopfes, wenn Sie Ihre Übungssitzungen übergeben.</translation>
        </message>
        <message>
            <source>Nobody has answered, and nobody has been called.</source>
            <comment>over.no_answer</comment>
            <translation>Niemand hat geantwortet, und es wurde niemand angerufen.</translation>
        </message>
        <message>
            <source>Sit or lie down where you are safe. Nobody has been called: if you are not better at once, call for help. Your therapist reads of this when you hand over your sessions.</source>
            <comment>over.not_well</comment>
            <translation>Setzen oder legen Sie sich dorthin, wo Sie sicher sind. Es wurde niemand angerufen: Wenn es Ihnen nicht sofort besser geht, rufen Sie Hilfe. Ihre Therapiepraxis liest davon, wenn Sie Ihre Übungssitzungen übergeben.</translation>
        </message>
        <message>
            <source>The number for help: {number}</source>
            <comment>over.number</comment>
            <translation>Die Nummer für Hilfe: {number}</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. If you fell or are hurt, get help now.</source>
            <comment>over.possible_fall</comment>
            <translation>Die Kamera sah ein plötzliches Absinken Ihres Kopfes. Wenn Sie gestürzt oder verletzt sind, holen Sie jetzt Hilfe.</translation>
        </message>
        <message>
            <source>You felt unwell, and stopping was right. Sit down and rest. If it does not get better, get help.</source>
            <comment>over.stopped_unwell</comment>
            <translation>Ihnen war unwohl, und aufzuhören war richtig. Setzen Sie sich und ruhen Sie aus. Wenn es nicht besser wird, holen Sie Hilfe.</translation>
        </message>
        <message>
            <source>Rest now. Your therapist sees how it went when you hand over your sessions.</source>
            <comment>over.symptom_rule</comment>
            <translation>Ruhen Sie jetzt aus. Ihre Therapiepraxis sieht, wie es ging, wenn Sie Ihre Übungssitzungen übergeben.</translation>
        </message>
        <message>
            <source>That is all for today</source>
            <comment>over.title</comment>
            <translation>Das ist alles für heute</translation>
        </message>
        <message>
            <source>Show what I did</source>
            <comment>over.to_summary</comment>
            <translation>Zeigen, was ich gemacht habe</translation>
        </message>
        <message>
            <source>{part}: your head moved.</source>
            <comment>part.moved</comment>
            <translation>{part}: Ihr Kopf hat sich bewegt.</translation>
        </message>
        <message>
            <source>{part}: seen well.</source>
            <comment>part.seen</comment>
            <translation>{part}: gut zu sehen.</translation>
        </message>
        <message>
            <source>{part}: your head went less far than your exercises need.</source>
            <comment>part.short</comment>
            <translation>{part}: Ihr Kopf ging weniger weit, als Ihre Übungen brauchen.</translation>
        </message>
        <message>
            <source>{part}: your face was often not seen.</source>
            <comment>part.unseen</comment>
            <translation>{part}: Ihr Gesicht war oft nicht zu sehen.</translation>
        </message>
        <message>
            <source>This plan can't be used. {why}</source>
            <comment>plan.bad</comment>
            <translation>Dieser Plan lässt sich nicht verwenden. {why}</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>plan.files</comment>
            <translation>Pläne (*.json)</translation>
        </message>
        <message>
            <source>Your plan. Exercises: {entries}.</source>
            <comment>plan.named</comment>
            <translation>Ihr Plan. Übungen: {entries}.</translation>
        </message>
        <message>
            <source>Already noted today, at {time}. Note it again only if you practised again.</source>
            <comment>plan.noted_today</comment>
            <translation>Heute um {time} schon eingetragen. Tragen Sie es nur noch einmal ein, wenn Sie noch einmal geübt haben.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>plan.open</comment>
            <translation>Einen Plan öffnen</translation>
        </message>
        <message>
            <source>I practised without the laptop</source>
            <comment>plan.report</comment>
            <translation>Ohne den Laptop geübt</translation>
        </message>
        <message>
            <source>I practised once more</source>
            <comment>plan.report_again</comment>
            <translation>Ich habe noch einmal geübt</translation>
        </message>
        <message>
            <source>Practise my plan</source>
            <comment>plan.start</comment>
            <translation>Meinen Plan üben</translation>
        </message>
        <message>
            <source>Seated starter</source>
            <comment>plan.starter</comment>
            <translation>Einstieg im Sitzen</translation>
        </message>
        <message>
            <source>Practise the starter</source>
            <comment>plan.starter_begin</comment>
            <translation>Den Einstieg üben</translation>
        </message>
        <message>
            <source>The seated starter: {entries} exercises on a chair. Do it only if your therapist has told you to.</source>
            <comment>plan.starter_named</comment>
            <translation>Der Einstieg im Sitzen: {entries} Übungen auf dem Stuhl. Machen Sie ihn nur, wenn Ihre Therapiepraxis es gesagt hat.</translation>
        </message>
        <message>
            <source>Try one exercise</source>
            <comment>plan.try</comment>
            <translation>Eine Übung ausprobieren</translation>
        </message>
        <message>
            <source>any key stops</source>
            <comment>practice.any_key</comment>
            <translation>jede Taste hält an</translation>
        </message>
        <message>
            <source>{low} to {high} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked</comment>
            <translation>{low} bis {high} Grad zu jeder Seite, {tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>About {about} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked_about</comment>
            <translation>Etwa {about} Grad zu jeder Seite, {tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>{low} to {high}° (this screen's limit), {tempo} beats a minute</source>
            <comment>practice.asked_less</comment>
            <translation>{low} bis {high}° (Grenze dieses Bildschirms), {tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>practice.asked_tempo</comment>
            <translation>{tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>This computer is busy and measures fewer pictures. Carry on.</source>
            <comment>practice.busy</comment>
            <translation>Der Computer ist ausgelastet und misst weniger Bilder. Machen Sie weiter.</translation>
        </message>
        <message>
            <source>Starting in {seconds}</source>
            <comment>practice.countdown</comment>
            <translation>Start in {seconds}</translation>
        </message>
        <message>
            <source>The disk takes nothing just now. Carry on: you can save at the end.</source>
            <comment>practice.disk</comment>
            <translation>Es lässt sich gerade nichts speichern. Machen Sie weiter: Am Ende können Sie speichern.</translation>
        </message>
        <message>
            <source>I see double (D)</source>
            <comment>practice.double</comment>
            <translation>Ich sehe doppelt (D)</translation>
        </message>
        <message>
            <source>I see double: stop, key D</source>
            <comment>practice.double_name</comment>
            <translation>Ich sehe doppelt: aufhören, Taste D</translation>
        </message>
        <message>
            <source>Go on (Space)</source>
            <comment>practice.go_on</comment>
            <translation>Weiter (Leertaste)</translation>
        </message>
        <message>
            <source>Not measured: {reason}</source>
            <comment>practice.not_measured</comment>
            <translation>Nicht gemessen: {reason}</translation>
        </message>
        <message>
            <source>{done} of {goal}</source>
            <comment>practice.of</comment>
            <translation>{done} von {goal}</translation>
        </message>
        <message>
            <source>Pause (Space)</source>
            <comment>practice.pause</comment>
            <translation>Pause (Leertaste)</translation>
        </message>
        <message>
            <source>Paused. Rest as long as you like.</source>
            <comment>practice.paused</comment>
            <translation>Pause. Ruhen Sie aus, solange Sie mögen.</translation>
        </message>
        <message>
            <source>Hide me (P)</source>
            <comment>practice.picture_hide</comment>
            <translation>Mich nicht zeigen (P)</translation>
        </message>
        <message>
            <source>Show me (P)</source>
            <comment>practice.picture_show</comment>
            <translation>Mich zeigen (P)</translation>
        </message>
        <message>
            <source>Saving your session ...</source>
            <comment>practice.saving</comment>
            <translation>Ihre Sitzung wird gespeichert ...</translation>
        </message>
        <message>
            <source>Stop (Esc)</source>
            <comment>practice.stop</comment>
            <translation>Stopp (Esc)</translation>
        </message>
        <message>
            <source>Stop at once, key Escape</source>
            <comment>practice.stop_name</comment>
            <translation>Sofort aufhören, Taste Escape</translation>
        </message>
        <message>
            <source>No picture is stored. Nothing leaves this computer. Your results are files in your own folder, and you can delete them.</source>
            <comment>privacy</comment>
            <translation>Kein Bild wird gespeichert. Nichts verlässt diesen Computer. Ihre Ergebnisse sind Dateien in Ihrem eigenen Ordner, und Sie können sie löschen.</translation>
        </message>
        <message>
            <source>Turnpost</source>
            <comment>program</comment>
            <translation>Turnpost</translation>
        </message>
        <message>
            <source>Read on ↓</source>
            <comment>read_on</comment>
            <translation>Weiterlesen ↓</translation>
        </message>
        <message>
            <source>your eyes went farther to the side than in the set-up</source>
            <comment>reason.beyond_setup</comment>
            <translation>Ihre Augen gingen weiter zur Seite als bei der Einrichtung</translation>
        </message>
        <message>
            <source>the picture is blurred</source>
            <comment>reason.blurred</comment>
            <translation>das Bild ist unscharf</translation>
        </message>
        <message>
            <source>something covers your face, or the light on it has changed</source>
            <comment>reason.covered</comment>
            <translation>etwas verdeckt Ihr Gesicht, oder das Licht darauf hat sich geändert</translation>
        </message>
        <message>
            <source>your eyes are shut</source>
            <comment>reason.eyes_shut</comment>
            <translation>Ihre Augen sind zu</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike</comment>
            <translation>das Licht auf Ihren Augen oder Ihre Brille ist anders als bei der Einrichtung</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike_around</comment>
            <translation>das Licht auf Ihren Augen oder Ihre Brille ist anders als bei der Einrichtung</translation>
        </message>
        <message>
            <source>pictures are missing</source>
            <comment>reason.gap</comment>
            <translation>es fehlen Bilder</translation>
        </message>
        <message>
            <source>your eyes seem to rest beside the target: do the set-up again</source>
            <comment>reason.gaze_beside</comment>
            <translation>Ihre Augen scheinen neben dem Ziel zu ruhen: bitte die Einrichtung wiederholen</translation>
        </message>
        <message>
            <source>your shoulders and hands are not all seen</source>
            <comment>reason.no_body</comment>
            <translation>Ihre Schultern und Hände sind nicht alle zu sehen</translation>
        </message>
        <message>
            <source>your face is not in the picture</source>
            <comment>reason.no_face</comment>
            <translation>Ihr Gesicht ist nicht im Bild</translation>
        </message>
        <message>
            <source>there was no set-up</source>
            <comment>reason.no_setup</comment>
            <translation>es gab keine Einrichtung</translation>
        </message>
        <message>
            <source>there is nothing to measure by</source>
            <comment>reason.other</comment>
            <translation>es gibt nichts, woran man messen kann</translation>
        </message>
        <message>
            <source>the measuring is starting again</source>
            <comment>reason.restarting</comment>
            <translation>das Messen startet gerade neu</translation>
        </message>
        <message>
            <source>no picture comes from the camera</source>
            <comment>reason.silent</comment>
            <translation>von der Kamera kommt kein Bild</translation>
        </message>
        <message>
            <source>it is too dark</source>
            <comment>reason.too_dark</comment>
            <translation>es ist zu dunkel</translation>
        </message>
        <message>
            <source>you are too far away</source>
            <comment>reason.too_far</comment>
            <translation>Sie sind zu weit weg</translation>
        </message>
        <message>
            <source>your head is turned too far</source>
            <comment>reason.turned_too_far</comment>
            <translation>Ihr Kopf ist zu weit gedreht</translation>
        </message>
        <message>
            <source>your glasses change as you nod</source>
            <comment>reason.varifocal</comment>
            <translation>Ihre Brille wirkt beim Nicken anders</translation>
        </message>
        <message>
            <source>Recordings that broke off and are damaged at the beginning: {n}. Whose they are can't be told. They can be saved without a name, but do not count for the plan. Repetitions in all: {count}.</source>
            <comment>recover.damaged</comment>
            <translation>Aufzeichnungen, die abbrachen und am Anfang beschädigt sind: {n}. Von wem sie sind, lässt sich nicht sagen. Sie lassen sich ohne Namen speichern, zählen aber nicht für den Plan. Wiederholungen insgesamt: {count}.</translation>
        </message>
        <message>
            <source>A recording of {when} broke off, and its beginning is damaged: whose it is can't be told. It can be saved without a name, but does not count for the plan. Repetitions: {count}.</source>
            <comment>recover.damaged.one</comment>
            <translation>Eine Aufzeichnung vom {when} brach ab, und ihr Anfang ist beschädigt: Von wem sie ist, lässt sich nicht sagen. Sie lässt sich ohne Namen speichern, zählt aber nicht für den Plan. Wiederholungen: {count}.</translation>
        </message>
        <message>
            <source>Some of it could not be saved: {why}. It stays where it is, and Turnpost asks again next time.</source>
            <comment>recover.failed</comment>
            <translation>Ein Teil konnte nicht gespeichert werden: {why}. Er bleibt, wo er ist, und Turnpost fragt beim nächsten Mal wieder.</translation>
        </message>
        <message>
            <source>Ask me next time</source>
            <comment>recover.later</comment>
            <translation>Nächstes Mal fragen</translation>
        </message>
        <message>
            <source>{n} of your sessions broke off before their end. What you did until then is kept. Repetitions in all: {count}.</source>
            <comment>recover.many</comment>
            <translation>{n} Ihrer Sitzungen brachen vor dem Ende ab. Was Sie bis dahin gemacht haben, ist noch da. Wiederholungen insgesamt: {count}.</translation>
        </message>
        <message>
            <source>A newer version of Turnpost has recorded something here that broke off. It stays as it is. Open the newer version to save it.</source>
            <comment>recover.newer</comment>
            <translation>Eine neuere Version von Turnpost hat hier etwas aufgezeichnet, das abgebrochen ist. Es bleibt, wie es ist. Öffnen Sie die neuere Version, um es zu speichern.</translation>
        </message>
        <message>
            <source>Your session of {when} broke off before its end. What you did until then is kept. Repetitions: {count}.</source>
            <comment>recover.one</comment>
            <translation>Ihre Sitzung vom {when} brach vor dem Ende ab. Was Sie bis dahin gemacht haben, ist noch da. Wiederholungen: {count}.</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>recover.read</comment>
            <translation>Gut</translation>
        </message>
        <message>
            <source>Save what I did</source>
            <comment>recover.save</comment>
            <translation>Speichern, was ich gemacht habe</translation>
        </message>
        <message>
            <source>Saved, and marked as broken off. It is in {folder}</source>
            <comment>recover.saved</comment>
            <translation>Gespeichert und als abgebrochen vermerkt. Es liegt in {folder}</translation>
        </message>
        <message>
            <source>Saving what you did ...</source>
            <comment>recover.saving</comment>
            <translation>Es wird gespeichert, was Sie gemacht haben ...</translation>
        </message>
        <message>
            <source>Broken off, and too damaged at the beginning to tell whether it is yours or from trying the sample: {n}. It can be saved, but does not count for the plan. Repetitions in it: {count}.</source>
            <comment>recover.unsure</comment>
            <translation>Abgebrochen und am Anfang so beschädigt, dass sich nicht sagen lässt, ob es von Ihnen oder vom Ausprobieren des Beispiels ist: {n}. Es lässt sich speichern, zählt aber nicht für den Plan. Wiederholungen darin: {count}.</translation>
        </message>
        <message>
            <source>You feel dizzy today, so you stay on your chair.</source>
            <comment>refused.high_start</comment>
            <translation>Ihnen ist heute schwindlig, darum bleiben Sie auf dem Stuhl.</translation>
        </message>
        <message>
            <source>This one comes later.</source>
            <comment>refused.locked</comment>
            <translation>Das kommt später.</translation>
        </message>
        <message>
            <source>The screen can show this one only while you sit in front of it.</source>
            <comment>refused.moving_target</comment>
            <translation>Das kann der Bildschirm nur zeigen, während Sie davor sitzen.</translation>
        </message>
        <message>
            <source>You left this one out, as no camera could be used.</source>
            <comment>refused.no_camera</comment>
            <translation>Das haben Sie weggelassen, weil keine Kamera zu gebrauchen war.</translation>
        </message>
        <message>
            <source>A helper has to stand next to you.</source>
            <comment>refused.no_helper</comment>
            <translation>Eine Hilfsperson muss neben Ihnen stehen.</translation>
        </message>
        <message>
            <source>There are no notes on the wall for it.</source>
            <comment>refused.no_marks</comment>
            <translation>Dafür hängen keine Zettel an der Wand.</translation>
        </message>
        <message>
            <source>There is no practice today.</source>
            <comment>refused.no_session</comment>
            <translation>Heute wird nicht geübt.</translation>
        </message>
        <message>
            <source>First say how dizzy you are now.</source>
            <comment>refused.no_start_score</comment>
            <translation>Sagen Sie zuerst, wie schwindlig Ihnen jetzt ist.</translation>
        </message>
        <message>
            <source>You need to hear the voice for this, or a helper who reads to you. Turn on the sound.</source>
            <comment>refused.no_voice</comment>
            <translation>Dafür müssen Sie die Stimme hören, oder jemand liest Ihnen vor. Schalten Sie den Ton ein.</translation>
        </message>
        <message>
            <source>Your therapist has not opened this one yet.</source>
            <comment>refused.not_cleared</comment>
            <translation>Ihre Therapiepraxis hat das noch nicht freigegeben.</translation>
        </message>
        <message>
            <source>You left this one out.</source>
            <comment>refused.not_in_place</comment>
            <translation>Das haben Sie weggelassen.</translation>
        </message>
        <message>
            <source>You saw two here today. That is enough of it for one day.</source>
            <comment>refused.saw_double</comment>
            <translation>Sie haben hier heute schon zwei gesehen. Das reicht für einen Tag.</translation>
        </message>
        <message>
            <source>You stopped before this one.</source>
            <comment>refused.session_ended</comment>
            <translation>Sie haben vorher aufgehört.</translation>
        </message>
        <message>
            <source>The target has too little room to move here. It needs a larger window, or you a little closer.</source>
            <comment>refused.small_screen</comment>
            <translation>Das Ziel hat hier zu wenig Platz, um sich zu bewegen. Das Fenster muss größer sein, oder Sie müssen etwas näher sitzen.</translation>
        </message>
        <message>
            <source>You have asked for a screen on which nothing moves.</source>
            <comment>refused.still_screen</comment>
            <translation>Sie wollten einen Bildschirm, auf dem sich nichts bewegt.</translation>
        </message>
        <message>
            <source>First say that you have something or someone to hold on to.</source>
            <comment>refused.support_not_confirmed</comment>
            <translation>Sagen Sie zuerst, dass Sie etwas oder jemanden zum Festhalten haben.</translation>
        </message>
        <message>
            <source>Table, a row a session ({ending})</source>
            <comment>report.csv</comment>
            <translation>Tabelle, eine Zeile je Sitzung ({ending})</translation>
        </message>
        <message>
            <source>Written, of {count} sessions: {path}</source>
            <comment>report.done</comment>
            <translation>Geschrieben, aus {count} Sitzungen: {path}</translation>
        </message>
        <message>
            <source>No report: {why}</source>
            <comment>report.failed</comment>
            <translation>Kein Bericht: {why}</translation>
        </message>
        <message>
            <source>For a record system, FHIR R4 ({ending})</source>
            <comment>report.fhir</comment>
            <translation>Für ein Praxissystem, FHIR R4 ({ending})</translation>
        </message>
        <message>
            <source>Report to read on a screen, HTML ({ending})</source>
            <comment>report.html</comment>
            <translation>Bericht zum Lesen am Bildschirm, HTML ({ending})</translation>
        </message>
        <message>
            <source>Left out, because they broke off and were not saved: {count}.</source>
            <comment>report.left_out</comment>
            <translation>Weggelassen, weil abgebrochen und nicht gespeichert: {count}.</translation>
        </message>
        <message>
            <source>Make a report</source>
            <comment>report.make</comment>
            <translation>Einen Bericht machen</translation>
        </message>
        <message>
            <source>no session is shown that can be reported</source>
            <comment>report.nothing</comment>
            <translation>es wird keine Sitzung gezeigt, über die sich berichten lässt</translation>
        </message>
        <message>
            <source>{path} holds what was measured or written, or has the name of a session's file; name another file for the report</source>
            <comment>report.over</comment>
            <translation>{path} enthält Gemessenes oder Geschriebenes oder trägt den Namen der Datei einer Sitzung; bitte eine andere Datei für den Bericht nennen</translation>
        </message>
        <message>
            <source>Report to file, a page a session, PDF ({ending})</source>
            <comment>report.pdf</comment>
            <translation>Bericht zum Ablegen, eine Seite je Sitzung, PDF ({ending})</translation>
        </message>
        <message>
            <source>Report with all figures, PDF ({ending})</source>
            <comment>report.pdf_details</comment>
            <translation>Bericht mit allen Werten, PDF ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a repetition ({ending})</source>
            <comment>report.repetitions_csv</comment>
            <translation>Tabelle, eine Zeile je Wiederholung ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a questionnaire score ({ending})</source>
            <comment>report.scores_csv</comment>
            <translation>Tabelle, eine Zeile je Fragebogenwert ({ending})</translation>
        </message>
        <message>
            <source>{path} is there already; choose it with its ending, or name another file</source>
            <comment>report.there</comment>
            <translation>{path} gibt es schon; wählen Sie die Datei mit ihrer Endung oder nennen Sie eine andere</translation>
        </message>
        <message>
            <source>Table of practice and trends ({ending})</source>
            <comment>report.trends_csv</comment>
            <translation>Tabelle von Übungszeiten und Verlauf ({ending})</translation>
        </message>
        <message>
            <source>Making the report ...</source>
            <comment>report.working</comment>
            <translation>Der Bericht wird gemacht ...</translation>
        </message>
        <message>
            <source>Ask your therapist, on the phone or in a call, to read out the words of your plan. They must be:</source>
            <comment>same.ask</comment>
            <translation>Lassen Sie sich von Ihrer Therapiepraxis am Telefon oder im Gespräch die Wörter Ihres Plans vorlesen. Es müssen diese sein:</translation>
        </message>
        <message>
            <source>Compare later</source>
            <comment>same.later</comment>
            <translation>Später vergleichen</translation>
        </message>
        <message>
            <source>What you hand over later will be locked: only your clinic can open it.</source>
            <comment>same.locked</comment>
            <translation>Was Sie später übergeben, ist verschlossen: Nur Ihre Praxis kann es öffnen.</translation>
        </message>
        <message>
            <source>A word is different</source>
            <comment>same.no</comment>
            <translation>Ein Wort ist anders</translation>
        </message>
        <message>
            <source>Compare the words</source>
            <comment>same.open</comment>
            <translation>Die Wörter vergleichen</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. What you hand over later can be read by whoever gets hold of the file.</source>
            <comment>same.plain</comment>
            <translation>Ihre Praxis hat Dateien ohne Schloss gewählt. Was Sie später übergeben, kann jeder lesen, der die Datei bekommt.</translation>
        </message>
        <message>
            <source>The words did not match, so this plan is put away. Ask your therapist to give you the plan again.</source>
            <comment>same.refused</comment>
            <translation>Die Wörter stimmten nicht überein, darum ist dieser Plan weggelegt. Bitten Sie Ihre Therapiepraxis, Ihnen den Plan noch einmal zu geben.</translation>
        </message>
        <message>
            <source>Is it your therapist's plan?</source>
            <comment>same.title</comment>
            <translation>Ist es der Plan Ihrer Therapiepraxis?</translation>
        </message>
        <message>
            <source>One other word, and somebody may have changed the plan on its way. Then do not use it.</source>
            <comment>same.why</comment>
            <translation>Ist auch nur ein Wort anders, hat vielleicht jemand den Plan unterwegs geändert. Dann benutzen Sie ihn nicht.</translation>
        </message>
        <message>
            <source>{number}. {word}</source>
            <comment>same.word</comment>
            <translation>{number}. {word}</translation>
        </message>
        <message>
            <source>All words are the same</source>
            <comment>same.yes</comment>
            <translation>Alle Wörter sind gleich</translation>
        </message>
        <message>
            <source>Begin now.</source>
            <comment>say.begin</comment>
            <translation>Jetzt beginnen.</translation>
        </message>
        <message>
            <source>Come to the screen once you feel steady.</source>
            <comment>say.come</comment>
            <translation>Kommen Sie zum Bildschirm, sobald Sie sich sicher fühlen.</translation>
        </message>
        <message>
            <source>Stop here. Move your finger back out.</source>
            <comment>say.double</comment>
            <translation>Hier aufhören. Führen Sie den Finger wieder weg.</translation>
        </message>
        <message>
            <source>And stop. This one is done.</source>
            <comment>say.end</comment>
            <translation>Und Stopp. Diese Übung ist geschafft.</translation>
        </message>
        <message>
            <source>Nobody has been called. If you are hurt, call for help.</source>
            <comment>say.fall</comment>
            <translation>Es wurde niemand angerufen. Wenn Sie verletzt sind, rufen Sie Hilfe.</translation>
        </message>
        <message>
            <source>Half the time is over.</source>
            <comment>say.half</comment>
            <translation>Die Hälfte der Zeit ist um.</translation>
        </message>
        <message>
            <source>Open your eyes.</source>
            <comment>say.open_eyes</comment>
            <translation>Öffnen Sie die Augen.</translation>
        </message>
        <message>
            <source>That is half. Now with the other arm.</source>
            <comment>say.other_arm</comment>
            <translation>Das ist die Hälfte. Nun mit dem anderen Arm.</translation>
        </message>
        <message>
            <source>I can't see you. Take your time. When you are steady, sit down on your chair, so that I see you again.</source>
            <comment>say.out_of_sight</comment>
            <translation>Ich sehe Sie nicht. Lassen Sie sich Zeit. Wenn Sie sicher stehen, setzen Sie sich auf Ihren Stuhl, damit ich Sie wieder sehe.</translation>
        </message>
        <message>
            <source>Now rest for a while.</source>
            <comment>say.rest</comment>
            <translation>Ruhen Sie jetzt eine Weile aus.</translation>
        </message>
        <message>
            <source>Shut your eyes.</source>
            <comment>say.shut</comment>
            <translation>Schließen Sie die Augen.</translation>
        </message>
        <message>
            <source>Sit down if you can.</source>
            <comment>say.sit</comment>
            <translation>Setzen Sie sich, wenn Sie können.</translation>
        </message>
        <message>
            <source>It begins in {seconds} seconds.</source>
            <comment>say.soon</comment>
            <translation>Es beginnt in {seconds} Sekunden.</translation>
        </message>
        <message>
            <source>Stand firm.</source>
            <comment>say.stand_firm</comment>
            <translation>Stehen Sie fest.</translation>
        </message>
        <message>
            <source>Stopped.</source>
            <comment>say.stopped</comment>
            <translation>Gestoppt.</translation>
        </message>
        <message>
            <source>This is how I speak to you while you practise.</source>
            <comment>say.test</comment>
            <translation>So spreche ich mit Ihnen, während Sie üben.</translation>
        </message>
        <message>
            <source>Only two more.</source>
            <comment>say.two_left</comment>
            <translation>Nur noch zwei.</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>score.dizziness</comment>
            <translation>Wie schwindlig ist Ihnen jetzt?</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>score.done</comment>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>Press a number, or use the arrow keys. For ten press 1, then 0.</source>
            <comment>score.how</comment>
            <translation>Drücken Sie eine Zahl oder die Pfeiltasten. Für zehn: erst 1, dann 0.</translation>
        </message>
        <message>
            <source>0: not at all</source>
            <comment>score.least</comment>
            <translation>0: gar nicht</translation>
        </message>
        <message>
            <source>I do not remember</source>
            <comment>score.leave_out</comment>
            <translation>Ich weiß es nicht mehr</translation>
        </message>
        <message>
            <source>10: it can't get worse</source>
            <comment>score.most</comment>
            <translation>10: schlimmer geht es nicht</translation>
        </message>
        <message>
            <source>How sick do you feel now?</source>
            <comment>score.nausea</comment>
            <translation>Wie übel ist Ihnen jetzt?</translation>
        </message>
        <message>
            <source>And how dizzy on the morning after?</source>
            <comment>score.next_morning</comment>
            <translation>Und wie schwindlig war Ihnen am Morgen danach?</translation>
        </message>
        <message>
            <source>After last time: how dizzy were you for the rest of that day?</source>
            <comment>score.rest_of_day</comment>
            <translation>Nach dem letzten Mal: Wie schwindlig war Ihnen den Rest des Tages?</translation>
        </message>
        <message>
            <source>How unsteady do you feel now?</source>
            <comment>score.unsteadiness</comment>
            <translation>Wie unsicher fühlen Sie sich jetzt?</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>score.value</comment>
            <translation>{value} von 10</translation>
        </message>
        <message>
            <source>Add the score</source>
            <comment>scores.add</comment>
            <translation>Wert eintragen</translation>
        </message>
        <message>
            <source>Kept: {name}, {score} ({least} to {most}), {day}.</source>
            <comment>scores.added</comment>
            <translation>Eingetragen: {name}, {score} ({least} bis {most}), {day}.</translation>
        </message>
        <message>
            <source>That day is still to come.</source>
            <comment>scores.ahead</comment>
            <translation>Dieser Tag kommt erst noch.</translation>
        </message>
        <message>
            <source>Last against first</source>
            <comment>scores.col.change</comment>
            <translation>Letzter gegen ersten</translation>
        </message>
        <message>
            <source>First</source>
            <comment>scores.col.first</comment>
            <translation>Erster</translation>
        </message>
        <message>
            <source>Last</source>
            <comment>scores.col.last</comment>
            <translation>Letzter</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.col.name</comment>
            <translation>Fragebogen</translation>
        </message>
        <message>
            <source>All scores</source>
            <comment>scores.col.trend</comment>
            <translation>Alle Werte</translation>
        </message>
        <message>
            <source>{name} ({least} to {most})</source>
            <comment>scores.course</comment>
            <translation>{name} ({least} bis {most})</translation>
        </message>
        <message>
            <source>Filled in on</source>
            <comment>scores.day</comment>
            <translation>Ausgefüllt am</translation>
        </message>
        <message>
            <source>The least possible must be below the most.</source>
            <comment>scores.ends</comment>
            <translation>Der kleinste mögliche Wert muss unter dem größten liegen.</translation>
        </message>
        <message>
            <source>Not kept: {why}</source>
            <comment>scores.failed</comment>
            <translation>Nicht eingetragen: {why}</translation>
        </message>
        <message>
            <source>{by} higher</source>
            <comment>scores.higher</comment>
            <translation>{by} höher</translation>
        </message>
        <message>
            <source>Only the score is kept, not the questions. How much a score varies by itself, and which end is the better one, is not known here.</source>
            <comment>scores.how</comment>
            <translation>Gespeichert wird nur der Wert, nicht die Fragen. Wie stark ein Wert von selbst schwankt und welches Ende das bessere ist, ist hier nicht bekannt.</translation>
        </message>
        <message>
            <source>Least possible</source>
            <comment>scores.least</comment>
            <translation>Kleinster möglicher</translation>
        </message>
        <message>
            <source>{by} lower</source>
            <comment>scores.lower</comment>
            <translation>{by} niedriger</translation>
        </message>
        <message>
            <source>Most possible</source>
            <comment>scores.most</comment>
            <translation>Größter möglicher</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.name</comment>
            <translation>Fragebogen</translation>
        </message>
        <message>
            <source>Type the name of the questionnaire.</source>
            <comment>scores.no_name</comment>
            <translation>Geben Sie den Namen des Fragebogens ein.</translation>
        </message>
        <message>
            <source>“{field}” needs a number between -{most} and {most}.</source>
            <comment>scores.no_number</comment>
            <translation>„{field}“ braucht eine Zahl zwischen -{most} und {most}.</translation>
        </message>
        <message>
            <source>These sessions name nobody: a score would be nobody's.</source>
            <comment>scores.no_person</comment>
            <translation>Diese Sitzungen nennen niemanden: Ein Wert würde niemandem gehören.</translation>
        </message>
        <message>
            <source>There is no score of yours to take back.</source>
            <comment>scores.no_undo</comment>
            <translation>Von Ihnen gibt es keinen Wert, der sich zurücknehmen lässt.</translation>
        </message>
        <message>
            <source>Entered some time ago and still there: {name}, {score}, {day}.</source>
            <comment>scores.older</comment>
            <translation>Schon vor einiger Zeit eingetragen und noch da: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>{score}, {day}</source>
            <comment>scores.on</comment>
            <translation>{score}, {day}</translation>
        </message>
        <message>
            <source>only one score</source>
            <comment>scores.only</comment>
            <translation>nur ein Wert</translation>
        </message>
        <message>
            <source>The score must lie between {least} and {most}.</source>
            <comment>scores.outside</comment>
            <translation>Der Wert muss zwischen {least} und {most} liegen.</translation>
        </message>
        <message>
            <source>the same</source>
            <comment>scores.same</comment>
            <translation>gleich</translation>
        </message>
        <message>
            <source>Score</source>
            <comment>scores.score</comment>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Take this old score back</source>
            <comment>scores.sure</comment>
            <translation>Diesen alten Wert zurücknehmen</translation>
        </message>
        <message>
            <source>Questionnaires</source>
            <comment>scores.tab</comment>
            <translation>Fragebögen</translation>
        </message>
        <message>
            <source>Undo my last score</source>
            <comment>scores.undo</comment>
            <translation>Meinen letzten Wert zurücknehmen</translation>
        </message>
        <message>
            <source>Taken back: {name}, {score}, {day}.</source>
            <comment>scores.undone</comment>
            <translation>Zurückgenommen: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>This older score may be of another computer with the same login: {name}, {score}, {day}.</source>
            <comment>scores.unsigned</comment>
            <translation>Dieser ältere Wert kann von einem anderen Computer mit derselben Anmeldung sein: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>It fits</source>
            <comment>screen.fits</comment>
            <translation>Es passt</translation>
        </message>
        <message>
            <source>Forget the measure</source>
            <comment>screen.forget</comment>
            <translation>Das Maß vergessen</translation>
        </message>
        <message>
            <source>Put the card's upper left corner on the corner drawn here. Fit the size with the arrow keys.</source>
            <comment>screen.how</comment>
            <translation>Legen Sie die linke obere Ecke der Karte auf die gezeichnete Ecke. Größe: Pfeiltasten.</translation>
        </message>
        <message>
            <source>Screen: not measured, and it does not say. {cm} cm are taken for its width.</source>
            <comment>screen.known.assumed</comment>
            <translation>Bildschirm: nicht gemessen, und er gibt es nicht an. Als Breite gelten {cm} cm.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, measured with a card.</source>
            <comment>screen.known.card</comment>
            <translation>Bildschirm: {cm} cm breit, mit einer Karte gemessen.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, as the screen says of itself.</source>
            <comment>screen.known.screen</comment>
            <translation>Bildschirm: {cm} cm breit, wie er selbst angibt.</translation>
        </message>
        <message>
            <source>Larger</source>
            <comment>screen.larger</comment>
            <translation>Größer</translation>
        </message>
        <message>
            <source>Outline of a card</source>
            <comment>screen.outline</comment>
            <translation>Umriss einer Karte</translation>
        </message>
        <message>
            <source>Smaller</source>
            <comment>screen.smaller</comment>
            <translation>Kleiner</translation>
        </message>
        <message>
            <source>Hold a bank card against the screen</source>
            <comment>screen.title</comment>
            <translation>Halten Sie eine Bankkarte an den Bildschirm</translation>
        </message>
        <message>
            <source>{mm} pixels wide</source>
            <comment>screen.width</comment>
            <translation>{mm} Pixel breit</translation>
        </message>
        <message>
            <source>You sit about {cm} cm from the screen, give or take {error} cm.</source>
            <comment>seat.about</comment>
            <translation>Sie sitzen etwa {cm} cm vom Bildschirm, plus oder minus {error} cm.</translation>
        </message>
        <message>
            <source>Go on as I sit</source>
            <comment>seat.anyway</comment>
            <translation>So sitzen bleiben und weiter</translation>
        </message>
        <message>
            <source>Too near for this exercise. Move back by about {cm} cm.</source>
            <comment>seat.back</comment>
            <translation>Zu nah für diese Übung. Gehen Sie etwa {cm} cm zurück.</translation>
        </message>
        <message>
            <source>A little near for this exercise. Move back by about the width of your hand.</source>
            <comment>seat.back.hand</comment>
            <translation>Etwas zu nah für diese Übung. Gehen Sie etwa eine Handbreit zurück.</translation>
        </message>
        <message>
            <source>Too far for this exercise. Come closer by about {cm} cm.</source>
            <comment>seat.closer</comment>
            <translation>Zu weit weg für diese Übung. Kommen Sie etwa {cm} cm näher.</translation>
        </message>
        <message>
            <source>A little far for this exercise. Come closer by about the width of your hand.</source>
            <comment>seat.closer.hand</comment>
            <translation>Etwas zu weit weg für diese Übung. Kommen Sie etwa eine Handbreit näher.</translation>
        </message>
        <message>
            <source>Done at about {cm} cm from the screen; {asked} cm were asked for.</source>
            <comment>seat.done</comment>
            <translation>Gemacht bei etwa {cm} cm vom Bildschirm, gefragt waren {asked} cm.</translation>
        </message>
        <message>
            <source>This is only a rough figure.</source>
            <comment>seat.rough</comment>
            <translation>Das ist nur ein grober Wert.</translation>
        </message>
        <message>
            <source>If you can't move, go on as you sit.</source>
            <comment>seat.told</comment>
            <translation>Wenn Sie nicht umrücken können, machen Sie weiter, wie Sie sitzen.</translation>
        </message>
        <message>
            <source>Close this note</source>
            <comment>second.close</comment>
            <translation>Hinweis schließen</translation>
        </message>
        <message>
            <source>Turnpost is open already</source>
            <comment>second.title</comment>
            <translation>Turnpost ist schon offen</translation>
        </message>
        <message>
            <source>Look for its other window and go on there. Nothing is lost.</source>
            <comment>second.what</comment>
            <translation>Suchen Sie das andere Fenster und machen Sie dort weiter. Nichts ist verloren.</translation>
        </message>
        <message>
            <source>Repeat the set-up</source>
            <comment>setup.again</comment>
            <translation>Einrichtung wiederholen</translation>
        </message>
        <message>
            <source>The set-up did not work.</source>
            <comment>setup.failed</comment>
            <translation>Die Einrichtung hat nicht geklappt.</translation>
        </message>
        <message>
            <source>far enough</source>
            <comment>setup.far_enough</comment>
            <translation>weit genug</translation>
        </message>
        <message>
            <source>Thank you. Working out your measures ...</source>
            <comment>setup.fitting</comment>
            <translation>Danke. Ihre Maße werden berechnet ...</translation>
        </message>
        <message>
            <source>This takes a few seconds. Rest your eyes.</source>
            <comment>setup.fitting_wait</comment>
            <translation>Das dauert ein paar Sekunden. Ruhen Sie die Augen aus.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes. Keep your head still.</source>
            <comment>setup.look</comment>
            <translation>Folgen Sie dem Ziel mit den Augen. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at the left note on the wall. Keep your head still.</source>
            <comment>setup.look.left</comment>
            <translation>Schauen Sie auf den linken Zettel an der Wand. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at the lower note on the wall. Keep your head still.</source>
            <comment>setup.look.lower</comment>
            <translation>Schauen Sie auf den unteren Zettel an der Wand. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at the note on the wall. Keep your head still.</source>
            <comment>setup.look.note</comment>
            <translation>Schauen Sie auf den Zettel an der Wand. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at the right note on the wall. Keep your head still.</source>
            <comment>setup.look.right</comment>
            <translation>Schauen Sie auf den rechten Zettel an der Wand. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Look at the upper note on the wall. Keep your head still.</source>
            <comment>setup.look.upper</comment>
            <translation>Schauen Sie auf den oberen Zettel an der Wand. Der Kopf bleibt still.</translation>
        </message>
        <message>
            <source>Nod slowly up, then down. Keep your eyes on the target.</source>
            <comment>setup.nod_slowly</comment>
            <translation>Heben Sie den Kopf langsam, dann senken Sie ihn. Die Augen bleiben auf dem Ziel.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.nod_slowly.back</comment>
            <translation>zurück zur Mitte</translation>
        </message>
        <message>
            <source>slowly down</source>
            <comment>setup.nod_slowly.minus</comment>
            <translation>langsam nach unten</translation>
        </message>
        <message>
            <source>slowly up</source>
            <comment>setup.nod_slowly.plus</comment>
            <translation>langsam nach oben</translation>
        </message>
        <message>
            <source>Set-up, part {part} of {parts}</source>
            <comment>setup.progress</comment>
            <translation>Einrichtung, Teil {part} von {parts}</translation>
        </message>
        <message>
            <source>Getting ready ...</source>
            <comment>setup.ready</comment>
            <translation>Gleich geht es los ...</translation>
        </message>
        <message>
            <source>Keep still and look at the target.</source>
            <comment>setup.rest</comment>
            <translation>Halten Sie still und schauen Sie auf das Ziel.</translation>
        </message>
        <message>
            <source>Set-up done.</source>
            <comment>setup.shortened</comment>
            <translation>Die Einrichtung ist fertig.</translation>
        </message>
        <message>
            <source>Next: {what}</source>
            <comment>setup.soon</comment>
            <translation>Als Nächstes: {what}</translation>
        </message>
        <message>
            <source>Stop</source>
            <comment>setup.stop</comment>
            <translation>Stopp</translation>
        </message>
        <message>
            <source>Set-up</source>
            <comment>setup.title</comment>
            <translation>Einrichtung</translation>
        </message>
        <message>
            <source>The set-up is done. This could be better:</source>
            <comment>setup.told</comment>
            <translation>Die Einrichtung ist fertig. Das könnte besser sein:</translation>
        </message>
        <message>
            <source>Turn your head slowly right, then left. Keep your eyes on the target.</source>
            <comment>setup.turn_slowly</comment>
            <translation>Drehen Sie den Kopf langsam nach rechts, dann nach links. Die Augen bleiben auf dem Ziel.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.turn_slowly.back</comment>
            <translation>zurück zur Mitte</translation>
        </message>
        <message>
            <source>slowly to the left</source>
            <comment>setup.turn_slowly.minus</comment>
            <translation>langsam nach links</translation>
        </message>
        <message>
            <source>slowly to the right</source>
            <comment>setup.turn_slowly.plus</comment>
            <translation>langsam nach rechts</translation>
        </message>
        <message>
            <source>After the last set: {scores}</source>
            <comment>share.after</comment>
            <translation>Nach dem letzten Durchgang: {scores}</translation>
        </message>
        <message>
            <source>asked: {what}</source>
            <comment>share.asked</comment>
            <translation>vorgegeben: {what}</translation>
        </message>
        <message>
            <source>Before: {scores}</source>
            <comment>share.before</comment>
            <translation>Vorher: {scores}</translation>
        </message>
        <message>
            <source>Call</source>
            <comment>share.call</comment>
            <translation>Gespräch</translation>
        </message>
        <message>
            <source>Record this call only if everyone in it has agreed.</source>
            <comment>share.consent</comment>
            <translation>Zeichnen Sie dieses Gespräch nur auf, wenn alle darin zugestimmt haben.</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>share.degrees</comment>
            <translation>{value} Grad</translation>
        </message>
        <message>
            <source>done</source>
            <comment>share.done</comment>
            <translation>gemacht</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>share.down</comment>
            <translation>Unten</translation>
        </message>
        <message>
            <source>In the call only this window is seen, not you. To stand you need a helper in the room, or a second device that shows you.</source>
            <comment>share.helper</comment>
            <translation>Im Gespräch ist nur dieses Fenster zu sehen, nicht Sie. Zum Stehen brauchen Sie eine Hilfsperson im Zimmer oder ein zweites Gerät, das Sie zeigt.</translation>
        </message>
        <message>
            <source>No picture while you share</source>
            <comment>share.hidden</comment>
            <translation>Kein Bild, solange Sie teilen</translation>
        </message>
        <message>
            <source>Hide outline (P)</source>
            <comment>share.hide</comment>
            <translation>Umriss nicht zeigen (P)</translation>
        </message>
        <message>
            <source>Left</source>
            <comment>share.left</comment>
            <translation>Links</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>share.left_s</comment>
            <translation>noch {time}</translation>
        </message>
        <message>
            <source>Figures for the call</source>
            <comment>share.name</comment>
            <translation>Zahlen für das Gespräch</translation>
        </message>
        <message>
            <source>Symptoms: not asked yet</source>
            <comment>share.no_scores</comment>
            <translation>Beschwerden: noch nicht gefragt</translation>
        </message>
        <message>
            <source>Not saved.</source>
            <comment>share.not_saved</comment>
            <translation>Nicht gespeichert.</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>share.of</comment>
            <translation>von {goal}</translation>
        </message>
        <message>
            <source>Layout for a video call (F4)</source>
            <comment>share.open</comment>
            <translation>Ansicht für ein Videogespräch (F4)</translation>
        </message>
        <message>
            <source>Outline of your head, as in a mirror</source>
            <comment>share.outline</comment>
            <translation>Umriss Ihres Kopfes, wie im Spiegel</translation>
        </message>
        <message>
            <source>This plan can't be used. End the sharing layout to read why.</source>
            <comment>share.plan_bad</comment>
            <translation>Dieser Plan lässt sich nicht verwenden. Beenden Sie die Ansicht für das Gespräch, um zu lesen, warum.</translation>
        </message>
        <message>
            <source>Right</source>
            <comment>share.right</comment>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Saved.</source>
            <comment>share.saved</comment>
            <translation>Gespeichert.</translation>
        </message>
        <message>
            <source>dizziness {value}</source>
            <comment>share.score.dizziness</comment>
            <translation>Schwindel {value}</translation>
        </message>
        <message>
            <source>nausea {value}</source>
            <comment>share.score.nausea</comment>
            <translation>Übelkeit {value}</translation>
        </message>
        <message>
            <source>unsteadiness {value}</source>
            <comment>share.score.unsteadiness</comment>
            <translation>Unsicherheit {value}</translation>
        </message>
        <message>
            <source>Show outline (P)</source>
            <comment>share.show</comment>
            <translation>Umriss zeigen (P)</translation>
        </message>
        <message>
            <source>{value} a second</source>
            <comment>share.speed</comment>
            <translation>{value} pro Sekunde</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>share.tempo</comment>
            <translation>{tempo} Taktschläge pro Minute</translation>
        </message>
        <message>
            <source>now: {tempo} a minute</source>
            <comment>share.tempo_now</comment>
            <translation>jetzt: {tempo} pro Minute</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>share.unseen</comment>
            <translation>nicht zu sehen</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>share.up</comment>
            <translation>Oben</translation>
        </message>
        <message>
            <source>Practise {n} times a day</source>
            <comment>sheet.bouts</comment>
            <translation>Üben Sie {n}-mal am Tag</translation>
        </message>
        <message>
            <source>Practise once a day</source>
            <comment>sheet.bouts.one</comment>
            <translation>Üben Sie einmal am Tag</translation>
        </message>
        <message>
            <source>Do not practise, and call your therapist first, if:</source>
            <comment>sheet.call</comment>
            <translation>Üben Sie nicht und rufen Sie zuerst Ihre Therapiepraxis an, wenn:</translation>
        </message>
        <message>
            <source>on {n} days a week</source>
            <comment>sheet.days</comment>
            <translation>an {n} Tagen in der Woche</translation>
        </message>
        <message>
            <source>every day</source>
            <comment>sheet.days.all</comment>
            <translation>jeden Tag</translation>
        </message>
        <message>
            <source>Call {number} at once if this is new:</source>
            <comment>sheet.emergency</comment>
            <translation>Rufen Sie sofort {number} an, wenn etwas davon neu ist:</translation>
        </message>
        <message>
            <source>Call for emergency help at once if this is new:</source>
            <comment>sheet.emergency.no_number</comment>
            <translation>Rufen Sie sofort den Notruf, wenn etwas davon neu ist:</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>sheet.exercises</comment>
            <translation>Übungen</translation>
        </message>
        <message>
            <source>Plan {plan}, week {week}</source>
            <comment>sheet.foot</comment>
            <translation>Plan {plan}, Woche {week}</translation>
        </message>
        <message>
            <source>For {person}, week {week}</source>
            <comment>sheet.for</comment>
            <translation>Für {person}, Woche {week}</translation>
        </message>
        <message>
            <source>Week {week}</source>
            <comment>sheet.for_nobody</comment>
            <translation>Woche {week}</translation>
        </message>
        <message>
            <source>en</source>
            <comment>sheet.language</comment>
            <translation>de</translation>
        </message>
        <message>
            <source>Later, when your therapist says so:</source>
            <comment>sheet.later</comment>
            <translation>Später, wenn Ihre Therapiepraxis es sagt:</translation>
        </message>
        <message>
            <source>Your neck: turn or tilt your head {turn} degrees at most to each side. Nod {nod} degrees at most up and down.</source>
            <comment>sheet.neck</comment>
            <translation>Ihr Hals: Drehen oder neigen Sie den Kopf höchstens {turn} Grad zu jeder Seite. Nicken Sie höchstens {nod} Grad nach oben und unten.</translation>
        </message>
        <message>
            <source>{bouts}, {days}. {rest}</source>
            <comment>sheet.often</comment>
            <translation>{bouts}, {days}. {rest}</translation>
        </message>
        <message>
            <source>at your own pace</source>
            <comment>sheet.own_pace</comment>
            <translation>in Ihrem eigenen Tempo</translation>
        </message>
        <message>
            <source>Page {number} of {pages}</source>
            <comment>sheet.page</comment>
            <translation>Seite {number} von {pages}</translation>
        </message>
        <message>
            <source>Drawing: {name}</source>
            <comment>sheet.picture</comment>
            <translation>Zeichnung: {name}</translation>
        </message>
        <message>
            <source>From a firm chair</source>
            <comment>sheet.posture.chair</comment>
            <translation>Von einem festen Stuhl aus</translation>
        </message>
        <message>
            <source>Sitting on a firm chair</source>
            <comment>sheet.posture.sitting</comment>
            <translation>Im Sitzen auf einem festen Stuhl</translation>
        </message>
        <message>
            <source>Standing</source>
            <comment>sheet.posture.standing</comment>
            <translation>Im Stehen</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>sheet.posture.walking</comment>
            <translation>Im Gehen</translation>
        </message>
        <message>
            <source>up to {most} degrees to each side</source>
            <comment>sheet.range</comment>
            <translation>bis {most} Grad zu jeder Seite</translation>
        </message>
        <message>
            <source>up to {most} degrees up and down</source>
            <comment>sheet.range.nod</comment>
            <translation>bis {most} Grad nach oben und unten</translation>
        </message>
        <message>
            <source>Rest for {seconds} seconds after each exercise.</source>
            <comment>sheet.rest</comment>
            <translation>Ruhen Sie nach jeder Übung {seconds} Sekunden aus.</translation>
        </message>
        <message>
            <source>Only with the program, as something has to move on the screen:</source>
            <comment>sheet.screen</comment>
            <translation>Nur mit dem Programm, weil sich auf dem Bildschirm etwas bewegen muss:</translation>
        </message>
        <message>
            <source>Stop for today when:</source>
            <comment>sheet.stop</comment>
            <translation>Hören Sie für heute auf, wenn:</translation>
        </message>
        <message>
            <source>You are dizzier than {most} of 10. None at all is 0. As bad as it can be is 10.</source>
            <comment>sheet.stop.score.dizziness</comment>
            <translation>Ihnen ist schwindliger als {most} von 10. Gar nicht ist 0. So schlimm es sein kann ist 10.</translation>
        </message>
        <message>
            <source>You feel sick, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.nausea</comment>
            <translation>Ihnen ist übel, und zwar mehr als {most} von 10.</translation>
        </message>
        <message>
            <source>You feel unsteady, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.unsteadiness</comment>
            <translation>Sie fühlen sich unsicher auf den Beinen, und zwar mehr als {most} von 10.</translation>
        </message>
        <message>
            <source>After an exercise your symptoms need more than {minutes} minutes to settle.</source>
            <comment>sheet.stop.settle</comment>
            <translation>Nach einer Übung brauchen Ihre Beschwerden mehr als {minutes} Minuten, um nachzulassen.</translation>
        </message>
        <message>
            <source>{what}. Hold on, sit still until it is over, and tell your therapist.</source>
            <comment>sheet.stop.spin</comment>
            <translation>{what}. Halten Sie sich fest, sitzen Sie still, bis es vorbei ist, und sagen Sie es Ihrer Therapiepraxis.</translation>
        </message>
        <message>
            <source>You feel unwell in any other way.</source>
            <comment>sheet.stop.unwell</comment>
            <translation>Ihnen ist auf irgendeine andere Art unwohl.</translation>
        </message>
        <message>
            <source>You are as dizzy as you can imagine.</source>
            <comment>sheet.stop.worst.dizziness</comment>
            <translation>Ihnen ist so schwindlig, wie Sie es sich nur vorstellen können.</translation>
        </message>
        <message>
            <source>You feel as sick as you can imagine.</source>
            <comment>sheet.stop.worst.nausea</comment>
            <translation>Ihnen ist so übel, wie Sie es sich nur vorstellen können.</translation>
        </message>
        <message>
            <source>You feel as unsteady as you can imagine.</source>
            <comment>sheet.stop.worst.unsteadiness</comment>
            <translation>Sie fühlen sich so unsicher auf den Beinen, wie Sie es sich nur vorstellen können.</translation>
        </message>
        <message>
            <source>Stand with a corner behind you and a firm chair in front.</source>
            <comment>sheet.support.corner_and_chair</comment>
            <translation>Stehen Sie mit einer Ecke hinter sich und einem festen Stuhl vor sich.</translation>
        </message>
        <message>
            <source>Only with a helper who is close enough to hold you.</source>
            <comment>sheet.support.helper</comment>
            <translation>Nur mit einer Hilfsperson, die nahe genug ist, um Sie zu halten.</translation>
        </message>
        <message>
            <source>{tempo} moves a minute</source>
            <comment>sheet.tempo</comment>
            <translation>{tempo} Bewegungen pro Minute</translation>
        </message>
        <message>
            <source>first {low} moves a minute, at the end {high}</source>
            <comment>sheet.tempo.changes</comment>
            <translation>erst {low} Bewegungen pro Minute, am Ende {high}</translation>
        </message>
        <message>
            <source>Your exercises at home</source>
            <comment>sheet.title</comment>
            <translation>Ihre Übungen für zu Hause</translation>
        </message>
        <message>
            <source>From your therapist</source>
            <comment>sheet.words</comment>
            <translation>Von Ihrer Therapiepraxis</translation>
        </message>
        <message>
            <source>With your eyes shut, or standing, sound leads you whatever you choose here.</source>
            <comment>sound.always</comment>
            <translation>Mit geschlossenen Augen oder im Stehen führt Sie der Ton, was immer Sie hier wählen.</translation>
        </message>
        <message>
            <source>Without sound, practice with your eyes shut or standing needs somebody who reads to you.</source>
            <comment>sound.always.none</comment>
            <translation>Ohne Ton brauchen Sie für Übungen mit geschlossenen Augen oder im Stehen jemanden, der Ihnen vorliest.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>sound.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Beats only</source>
            <comment>sound.beats</comment>
            <translation>Nur den Takt</translation>
        </message>
        <message>
            <source>After a sudden drop of your head the voice always asks how you are.</source>
            <comment>sound.fall</comment>
            <translation>Nach einem plötzlichen Absinken Ihres Kopfes fragt die Stimme immer, wie es Ihnen geht.</translation>
        </message>
        <message>
            <source>This computer can't play a sound.</source>
            <comment>sound.none</comment>
            <translation>Dieser Computer kann keinen Ton abspielen.</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none (Ctrl+M)</source>
            <comment>sound.open</comment>
            <translation>Ton: Stimme, Takt oder nichts (Strg+M)</translation>
        </message>
        <message>
            <source>A screen reader seems to be on. It says the words, and the voice is quiet unless your eyes are shut.</source>
            <comment>sound.reader</comment>
            <translation>Ein Vorleseprogramm scheint zu laufen. Es liest die Worte vor, und die Stimme schweigt, außer wenn Ihre Augen zu sind.</translation>
        </message>
        <message>
            <source>Your choice holds while you sit with your eyes open. What is said also stands on the screen.</source>
            <comment>sound.seated</comment>
            <translation>Ihre Wahl gilt, solange Sie mit offenen Augen sitzen. Was gesagt wird, steht auch auf dem Bildschirm.</translation>
        </message>
        <message>
            <source>Nothing</source>
            <comment>sound.silence</comment>
            <translation>Nichts</translation>
        </message>
        <message>
            <source>What do you want to hear?</source>
            <comment>sound.title</comment>
            <translation>Was möchten Sie hören?</translation>
        </message>
        <message>
            <source>Let me hear it</source>
            <comment>sound.try</comment>
            <translation>Zur Probe hören</translation>
        </message>
        <message>
            <source>Voice and beats</source>
            <comment>sound.voice</comment>
            <translation>Stimme und Takt</translation>
        </message>
        <message>
            <source>Begin anew</source>
            <comment>stored.anew</comment>
            <translation>Neu beginnen</translation>
        </message>
        <message>
            <source>Delete everything that Turnpost has stored here, for good?</source>
            <comment>stored.ask.everything</comment>
            <translation>Alles endgültig löschen, was Turnpost hier gespeichert hat?</translation>
        </message>
        <message>
            <source>Delete the shape and look of your face for good?</source>
            <comment>stored.ask.faces</comment>
            <translation>Form und Aussehen Ihres Gesichts endgültig löschen?</translation>
        </message>
        <message>
            <source>Delete this session for good? {when}</source>
            <comment>stored.ask.one</comment>
            <translation>Diese Sitzung endgültig löschen? {when}</translation>
        </message>
        <message>
            <source>Delete all your sessions for good? There are {count} ({size}).</source>
            <comment>stored.ask.sessions</comment>
            <translation>Alle Ihre Sitzungen endgültig löschen? Es sind {count} ({size}).</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>stored.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <comment>stored.copy</comment>
            <translation>Kopie sichern</translation>
        </message>
        <message>
            <source>All of it</source>
            <comment>stored.copy.everything</comment>
            <translation>Von allem</translation>
        </message>
        <message>
            <source>The shape of my face</source>
            <comment>stored.copy.faces</comment>
            <translation>Von der Form meines Gesichts</translation>
        </message>
        <message>
            <source>Choose the place</source>
            <comment>stored.copy.go</comment>
            <translation>Ort wählen</translation>
        </message>
        <message>
            <source>The session that is being recorded now is not in it.</source>
            <comment>stored.copy.in_use</comment>
            <translation>Die Sitzung, die gerade aufgezeichnet wird, ist nicht darin.</translation>
        </message>
        <message>
            <source>A copy of all of it also holds the clinic's keys, locked by their passphrase. Keep such a copy where nobody else gets at it.</source>
            <comment>stored.copy.keys</comment>
            <translation>Eine Kopie von allem enthält auch die Schlüssel der Praxis, mit ihrem Kennsatz verschlossen. Bewahren Sie eine solche Kopie so auf, dass sonst niemand an sie herankommt.</translation>
        </message>
        <message>
            <source>Zip files (*.zip)</source>
            <comment>stored.copy.kinds</comment>
            <translation>Zip-Dateien (*.zip)</translation>
        </message>
        <message>
            <source>The copy is saved, and it is not encrypted: {path}</source>
            <comment>stored.copy.made</comment>
            <translation>Die Kopie ist gesichert, und sie ist nicht verschlüsselt: {path}</translation>
        </message>
        <message>
            <source>Saving the copy ...</source>
            <comment>stored.copy.making</comment>
            <translation>Die Kopie wird gesichert ...</translation>
        </message>
        <message>
            <source>The copy is one ordinary file (zip). It is not encrypted: whoever gets it can read it.</source>
            <comment>stored.copy.open</comment>
            <translation>Die Kopie ist eine gewöhnliche Datei (zip). Sie ist nicht verschlüsselt: Wer sie bekommt, kann sie lesen.</translation>
        </message>
        <message>
            <source>The sessions</source>
            <comment>stored.copy.sessions</comment>
            <translation>Von den Sitzungen</translation>
        </message>
        <message>
            <source>What do you want a copy of?</source>
            <comment>stored.copy.what</comment>
            <translation>Wovon möchten Sie eine Kopie?</translation>
        </message>
        <message>
            <source>Where shall the copy be?</source>
            <comment>stored.copy.where</comment>
            <translation>Wo soll die Kopie liegen?</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <comment>stored.days</comment>
            <translation>{first} bis {last}</translation>
        </message>
        <message>
            <source>Delete everything</source>
            <comment>stored.delete.everything</comment>
            <translation>Alles löschen</translation>
        </message>
        <message>
            <source>Delete the shape of my face</source>
            <comment>stored.delete.faces</comment>
            <translation>Form meines Gesichts löschen</translation>
        </message>
        <message>
            <source>Delete one session</source>
            <comment>stored.delete.one</comment>
            <translation>Eine Sitzung löschen</translation>
        </message>
        <message>
            <source>Delete all sessions</source>
            <comment>stored.delete.sessions</comment>
            <translation>Alle Sitzungen löschen</translation>
        </message>
        <message>
            <source>It is deleted.</source>
            <comment>stored.deleted</comment>
            <translation>Es ist gelöscht.</translation>
        </message>
        <message>
            <source>All of it is deleted. Turnpost now begins as on its first day.</source>
            <comment>stored.deleted.everything</comment>
            <translation>Alles ist gelöscht. Turnpost beginnt nun wie am ersten Tag.</translation>
        </message>
        <message>
            <source>Not all of it is deleted.</source>
            <comment>stored.deleted.in_part</comment>
            <translation>Nicht alles davon ist gelöscht.</translation>
        </message>
        <message>
            <source>Deleting ...</source>
            <comment>stored.deleting</comment>
            <translation>Wird gelöscht ...</translation>
        </message>
        <message>
            <source>These lie in another place and are never deleted from here: {names}</source>
            <comment>stored.elsewhere</comment>
            <translation>Dies liegt an einem anderen Ort und wird von hier aus nie gelöscht: {names}</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>stored.eye.left</comment>
            <translation>nur linkes Auge</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>stored.eye.right</comment>
            <translation>nur rechtes Auge</translation>
        </message>
        <message>
            <source>Glasses: {worn}. Camera: {camera}.</source>
            <comment>stored.face</comment>
            <translation>Brille: {worn}. Kamera: {camera}.</translation>
        </message>
        <message>
            <source>Glasses: {worn}.</source>
            <comment>stored.face_worn</comment>
            <translation>Brille: {worn}.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>stored.failed</comment>
            <translation>Das ging nicht: {why}</translation>
        </message>
        <message>
            <source>All sessions (those of other people, too), the shape of your face, the copy of your plan, all measures and all that you chose go. Turnpost is then as on its first day.</source>
            <comment>stored.goes.everything</comment>
            <translation>Alle Sitzungen (auch die anderer Menschen), die Form Ihres Gesichts, die Kopie Ihres Plans, alle Maße und alles, was Sie gewählt haben, verschwinden. Turnpost ist dann wie am ersten Tag.</translation>
        </message>
        <message>
            <source>Before you practise again you do the whole set-up once more.</source>
            <comment>stored.goes.faces</comment>
            <translation>Bevor Sie wieder üben, machen Sie die ganze Einrichtung noch einmal.</translation>
        </message>
        <message>
            <source>The clinic's keys go, too. Without a backup of them nobody can open what patients hand over.</source>
            <comment>stored.goes.keys</comment>
            <translation>Auch die Schlüssel der Praxis sind dann weg. Ohne eine Sicherung davon kann niemand öffnen, was Patienten übergeben.</translation>
        </message>
        <message>
            <source>What is deleted no longer counts for your plan, and you can't hand it over any more.</source>
            <comment>stored.goes.sessions</comment>
            <translation>Was gelöscht ist, zählt für Ihren Plan nicht mehr, und Sie können es nicht mehr übergeben.</translation>
        </message>
        <message>
            <source>Keep it</source>
            <comment>stored.keep</comment>
            <translation>Behalten</translation>
        </message>
        <message>
            <source>Sessions that broke off and are not saved yet</source>
            <comment>stored.kind.broken_off</comment>
            <translation>Sitzungen, die abgebrochen und noch nicht gesichert sind</translation>
        </message>
        <message>
            <source>What was measured of your camera</source>
            <comment>stored.kind.cameras</comment>
            <translation>Was an Ihrer Kamera gemessen wurde</translation>
        </message>
        <message>
            <source>An index for the therapist's desk</source>
            <comment>stored.kind.desk_index</comment>
            <translation>Ein Verzeichnis für den Arbeitsplatz der Therapie</translation>
        </message>
        <message>
            <source>The shape and look of your face, as numbers</source>
            <comment>stored.kind.faces</comment>
            <translation>Form und Aussehen Ihres Gesichts, als Zahlen</translation>
        </message>
        <message>
            <source>Which sessions you handed over</source>
            <comment>stored.kind.handed_over</comment>
            <translation>Welche Sitzungen Sie übergeben haben</translation>
        </message>
        <message>
            <source>The keys of a clinic, locked</source>
            <comment>stored.kind.keys</comment>
            <translation>Die Schlüssel einer Praxis, abgeschlossen</translation>
        </message>
        <message>
            <source>Notes of a therapist</source>
            <comment>stored.kind.notes</comment>
            <translation>Notizen einer Therapeutin oder eines Therapeuten</translation>
        </message>
        <message>
            <source>A copy of your plan</source>
            <comment>stored.kind.plans</comment>
            <translation>Eine Kopie Ihres Plans</translation>
        </message>
        <message>
            <source>Sessions of other people</source>
            <comment>stored.kind.received</comment>
            <translation>Sitzungen anderer Menschen</translation>
        </message>
        <message>
            <source>Remains of something that broke off</source>
            <comment>stored.kind.remains</comment>
            <translation>Reste von etwas, das abgebrochen ist</translation>
        </message>
        <message>
            <source>Your sessions, with all that was measured, answered and scored</source>
            <comment>stored.kind.sessions</comment>
            <translation>Ihre Sitzungen, mit allem, was gemessen, geantwortet und bewertet wurde</translation>
        </message>
        <message>
            <source>What you chose: text, language, sound</source>
            <comment>stored.kind.settings</comment>
            <translation>Was Sie gewählt haben: Schrift, Sprache, Ton</translation>
        </message>
        <message>
            <source>This could not be deleted: {what}</source>
            <comment>stored.left</comment>
            <translation>Das ließ sich nicht löschen: {what}</translation>
        </message>
        <message>
            <source>it is being recorded now</source>
            <comment>stored.left.in_use</comment>
            <translation>es wird gerade aufgezeichnet</translation>
        </message>
        <message>
            <source>{path} ({why})</source>
            <comment>stored.left.row</comment>
            <translation>{path} ({why})</translation>
        </message>
        <message>
            <source>Looking at what is stored ...</source>
            <comment>stored.looking</comment>
            <translation>Es wird nachgesehen, was gespeichert ist ...</translation>
        </message>
        <message>
            <source>Newer ones</source>
            <comment>stored.newer</comment>
            <translation>Neuere</translation>
        </message>
        <message>
            <source>This can't be undone. Copies that you handed over or saved elsewhere stay where they are. An expert may still be able to read parts of deleted files from the disk.</source>
            <comment>stored.no_way_back</comment>
            <translation>Das lässt sich nicht rückgängig machen. Kopien, die Sie übergeben oder anderswo gesichert haben, bleiben, wo sie sind. Fachleute können Teile gelöschter Dateien vielleicht noch von der Festplatte lesen.</translation>
        </message>
        <message>
            <source>Nothing is stored.</source>
            <comment>stored.nothing</comment>
            <translation>Es ist nichts gespeichert.</translation>
        </message>
        <message>
            <source>Older ones</source>
            <comment>stored.older</comment>
            <translation>Ältere</translation>
        </message>
        <message>
            <source>What is stored here</source>
            <comment>stored.open</comment>
            <translation>Was hier gespeichert ist</translation>
        </message>
        <message>
            <source>This folder also holds things that Turnpost did not put there. They always stay: {names}</source>
            <comment>stored.others</comment>
            <translation>In diesem Ordner liegt auch anderes, das nicht von Turnpost ist. Es bleibt immer: {names}</translation>
        </message>
        <message>
            <source>{what}: {count} ({days}), {size}.</source>
            <comment>stored.row</comment>
            <translation>{what}: {count} ({days}), {size}.</translation>
        </message>
        <message>
            <source>{what} ({days}), {size}.</source>
            <comment>stored.row_one</comment>
            <translation>{what} ({days}), {size}.</translation>
        </message>
        <message>
            <source>{day}, {time} ({size})</source>
            <comment>stored.session</comment>
            <translation>{day}, {time} ({size})</translation>
        </message>
        <message>
            <source>{session}, broken off</source>
            <comment>stored.session.broken_off</comment>
            <translation>{session}, abgebrochen</translation>
        </message>
        <message>
            <source>{size} kB</source>
            <comment>stored.size.kb</comment>
            <translation>{size} kB</translation>
        </message>
        <message>
            <source>{size} MB</source>
            <comment>stored.size.mb</comment>
            <translation>{size} MB</translation>
        </message>
        <message>
            <source>Delete this one</source>
            <comment>stored.this</comment>
            <translation>Diese löschen</translation>
        </message>
        <message>
            <source>What is stored on this computer</source>
            <comment>stored.title</comment>
            <translation>Was auf diesem Computer gespeichert ist</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>stored.unknown</comment>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>They lie in this folder: {folder}</source>
            <comment>stored.where</comment>
            <translation>Sie liegen in diesem Ordner: {folder}</translation>
        </message>
        <message>
            <source>Which session do you want to delete?</source>
            <comment>stored.which</comment>
            <translation>Welche Sitzung möchten Sie löschen?</translation>
        </message>
        <message>
            <source>Other accounts on this computer may be able to read these files. They are not encrypted, unless the disk is. Whoever helps you with the computer can close the folder to others.</source>
            <comment>stored.who.others</comment>
            <translation>Andere Konten auf diesem Computer können diese Dateien vielleicht lesen. Verschlüsselt sind sie nicht, außer wenn die Festplatte es ist. Wer Ihnen mit dem Computer hilft, kann den Ordner für andere schließen.</translation>
        </message>
        <message>
            <source>Only your own account on this computer can read these files, and an administrator's. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.own</comment>
            <translation>Nur Ihr eigenes Konto auf diesem Computer kann diese Dateien lesen, und das eines Verwalters. Verschlüsselt sind sie nicht, außer wenn die Festplatte es ist.</translation>
        </message>
        <message>
            <source>Turnpost can't tell which accounts on this computer can read these files. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.unknown</comment>
            <translation>Turnpost kann nicht sagen, welche Konten auf diesem Computer diese Dateien lesen können. Verschlüsselt sind sie nicht, außer wenn die Festplatte es ist.</translation>
        </message>
        <message>
            <source>Delete for good</source>
            <comment>stored.yes</comment>
            <translation>Endgültig löschen</translation>
        </message>
        <message>
            <source>Practise again</source>
            <comment>summary.again</comment>
            <translation>Noch einmal üben</translation>
        </message>
        <message>
            <source>asked: {asked}</source>
            <comment>summary.asked</comment>
            <translation>vorgegeben: {asked}</translation>
        </message>
        <message>
            <source>To show it to your therapist, bring this computer, or a copy of that folder.</source>
            <comment>summary.bring</comment>
            <translation>Um es Ihrer Therapiepraxis zu zeigen, bringen Sie diesen Computer mit oder eine Kopie dieses Ordners.</translation>
        </message>
        <message>
            <source>Close</source>
            <comment>summary.close</comment>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>summary.degrees</comment>
            <translation>{value} Grad</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>summary.degrees_range</comment>
            <translation>{low} bis {high} Grad</translation>
        </message>
        <message>
            <source>{value} degrees a second</source>
            <comment>summary.degrees_s</comment>
            <translation>{value} Grad pro Sekunde</translation>
        </message>
        <message>
            <source>This was the sample clip, not you.</source>
            <comment>summary.demo</comment>
            <translation>Das war der Beispielfilm, nicht Sie.</translation>
        </message>
        <message>
            <source>What you practised before is saved, and so is what you answered.</source>
            <comment>summary.done_before</comment>
            <translation>Was Sie vorher geübt haben, ist gespeichert, und auch, was Sie geantwortet haben.</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>summary.down</comment>
            <translation>Nach unten</translation>
        </message>
        <message>
            <source>Time for each</source>
            <comment>summary.each</comment>
            <translation>Zeit für jede</translation>
        </message>
        <message>
            <source>You did the whole exercise.</source>
            <comment>summary.finished</comment>
            <translation>Sie haben die ganze Übung gemacht.</translation>
        </message>
        <message>
            <source>Your practice for now is done.</source>
            <comment>summary.finished_plan</comment>
            <translation>Für diesmal sind Sie mit dem Üben fertig.</translation>
        </message>
        <message>
            <source>Noted as you say it. The camera did not see it, so nothing is measured.</source>
            <comment>summary.finished_reported</comment>
            <translation>Notiert, wie Sie es sagen. Die Kamera hat es nicht gesehen, also ist nichts gemessen.</translation>
        </message>
        <message>
            <source>To the first page</source>
            <comment>summary.first_page</comment>
            <translation>Zur ersten Seite</translation>
        </message>
        <message>
            <source>Held</source>
            <comment>summary.held</comment>
            <translation>Gehalten</translation>
        </message>
        <message>
            <source>To the left</source>
            <comment>summary.left</comment>
            <translation>Nach links</translation>
        </message>
        <message>
            <source>Left out</source>
            <comment>summary.left_out</comment>
            <translation>Weggelassen</translation>
        </message>
        <message>
            <source>Measured</source>
            <comment>summary.measured</comment>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Your set-up could not be kept ({why}). Next time you do it again; nothing else is lost.</source>
            <comment>summary.not_kept</comment>
            <translation>Ihre Einrichtung konnte nicht aufbewahrt werden ({why}). Nächstes Mal machen Sie sie noch einmal; sonst ist nichts verloren.</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>summary.not_measured</comment>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>not past the middle</source>
            <comment>summary.not_past</comment>
            <translation>nicht über die Mitte hinaus</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>summary.not_saved</comment>
            <translation>Nicht gespeichert: {why}</translation>
        </message>
        <message>
            <source>What you did is still here. Make room, or choose another place, before you close this window.</source>
            <comment>summary.not_saved_do</comment>
            <translation>Was Sie gemacht haben, ist noch hier. Schaffen Sie Platz oder wählen Sie einen anderen Ort, bevor Sie dieses Fenster schließen.</translation>
        </message>
        <message>
            <source>It could not be taken back, so it still counts. {why}</source>
            <comment>summary.not_taken_back</comment>
            <translation>Es ließ sich nicht zurücknehmen und zählt deshalb noch. {why}</translation>
        </message>
        <message>
            <source>Nothing was practised this time. Why stands beside each exercise.</source>
            <comment>summary.nothing_done</comment>
            <translation>Diesmal wurde nichts geübt. Warum, steht bei jeder Übung.</translation>
        </message>
        <message>
            <source>nothing to mention</source>
            <comment>summary.nothing_noticed</comment>
            <translation>nichts Besonderes</translation>
        </message>
        <message>
            <source>Nothing was practised this time. What you answered is saved.</source>
            <comment>summary.nothing_stopped</comment>
            <translation>Diesmal wurde nichts geübt. Ihre Antworten sind gespeichert.</translation>
        </message>
        <message>
            <source>Noticed</source>
            <comment>summary.noticed</comment>
            <translation>Aufgefallen</translation>
        </message>
        <message>
            <source>{value} % of the time</source>
            <comment>summary.of_time</comment>
            <translation>{value} % der Zeit</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>summary.on_target</comment>
            <translation>Augen auf dem Ziel</translation>
        </message>
        <message>
            <source>{count}, as you counted</source>
            <comment>summary.own_count</comment>
            <translation>{count}, von Ihnen gezählt</translation>
        </message>
        <message>
            <source>{value} turns a minute</source>
            <comment>summary.per_minute</comment>
            <translation>{value} Drehungen pro Minute</translation>
        </message>
        <message>
            <source>Choose another place</source>
            <comment>summary.place</comment>
            <translation>Anderen Ort wählen</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>summary.repetitions</comment>
            <translation>Wiederholungen</translation>
        </message>
        <message>
            <source>done, as you say</source>
            <comment>summary.reported</comment>
            <translation>gemacht, wie Sie sagen</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>summary.retry</comment>
            <translation>Noch einmal versuchen</translation>
        </message>
        <message>
            <source>To the right</source>
            <comment>summary.right</comment>
            <translation>Nach rechts</translation>
        </message>
        <message>
            <source>Saved in {folder}</source>
            <comment>summary.saved</comment>
            <translation>Gespeichert in {folder}</translation>
        </message>
        <message>
            <source>{value} seconds</source>
            <comment>summary.seconds</comment>
            <translation>{value} Sekunden</translation>
        </message>
        <message>
            <source>Fastest in a turn</source>
            <comment>summary.speed</comment>
            <translation>Am schnellsten in einer Drehung</translation>
        </message>
        <message>
            <source>You stopped early. What you did is saved and counts.</source>
            <comment>summary.stopped</comment>
            <translation>Sie haben früher aufgehört. Was Sie gemacht haben, ist gespeichert und zählt.</translation>
        </message>
        <message>
            <source>Take it back</source>
            <comment>summary.take_back</comment>
            <translation>Zurücknehmen</translation>
        </message>
        <message>
            <source>Tempo</source>
            <comment>summary.tempo</comment>
            <translation>Tempo</translation>
        </message>
        <message>
            <source>Your session</source>
            <comment>summary.title</comment>
            <translation>Ihre Sitzung</translation>
        </message>
        <message>
            <source>This was only to try it out: it is not counted as practice.</source>
            <comment>summary.try</comment>
            <translation>Das war nur zum Ausprobieren: Es zählt nicht als Übung.</translation>
        </message>
        <message>
            <source>Stopped. What you did is saved.</source>
            <comment>summary.try_stopped</comment>
            <translation>Beendet. Was Sie gemacht haben, ist gespeichert.</translation>
        </message>
        <message>
            <source>How far your eyes turned in</source>
            <comment>summary.turned_in</comment>
            <translation>Wie weit Ihre Augen sich nach innen drehten</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>summary.up</comment>
            <translation>Nach oben</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>switch_colours</comment>
            <translation>Hell oder dunkel</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>symptoms.not_answered</comment>
            <translation>Wie schwindlig ist Ihnen jetzt?</translation>
        </message>
        <message>
            <source>It takes long to settle. It is enough for today.</source>
            <comment>symptoms.not_settled</comment>
            <translation>Es braucht lange, bis es nachlässt. Es reicht für heute.</translation>
        </message>
        <message>
            <source>That was a lot. It is enough for today.</source>
            <comment>symptoms.score_above</comment>
            <translation>Das war viel. Es reicht für heute.</translation>
        </message>
        <message>
            <source>Rest until you feel as usual.</source>
            <comment>symptoms.settling</comment>
            <translation>Ruhen Sie aus, bis Sie sich fühlen wie sonst.</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>text_larger</comment>
            <translation>Größere Schrift</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>text_smaller</comment>
            <translation>Kleinere Schrift</translation>
        </message>
        <message>
            <source>it lies behind a link</source>
            <comment>told.behind_link</comment>
            <translation>es liegt hinter einer Verknüpfung</translation>
        </message>
        <message>
            <source>{path}: could not be written ({why})</source>
            <comment>told.broke_off</comment>
            <translation>{path}: ließ sich nicht schreiben ({why})</translation>
        </message>
        <message>
            <source>its links lead round in a circle</source>
            <comment>told.circle</comment>
            <translation>seine Verknüpfungen führen im Kreis</translation>
        </message>
        <message>
            <source>{path}: lies in the folder that is copied, and would be deleted with it; choose another place</source>
            <comment>told.copy_inside</comment>
            <translation>{path}: liegt in dem Ordner, der kopiert wird, und würde mit ihm gelöscht; wählen Sie einen anderen Ort</translation>
        </message>
        <message>
            <source>there is nothing to copy</source>
            <comment>told.copy_nothing</comment>
            <translation>es gibt nichts zu kopieren</translation>
        </message>
        <message>
            <source>the disk has a fault</source>
            <comment>told.disk_fault</comment>
            <translation>der Datenträger hat einen Fehler</translation>
        </message>
        <message>
            <source>the disk is full</source>
            <comment>told.disk_full</comment>
            <translation>der Datenträger ist voll</translation>
        </message>
        <message>
            <source>the disk is no longer connected</source>
            <comment>told.disk_gone</comment>
            <translation>der Datenträger ist nicht mehr verbunden</translation>
        </message>
        <message>
            <source>the disk does not answer</source>
            <comment>told.disk_silent</comment>
            <translation>der Datenträger antwortet nicht</translation>
        </message>
        <message>
            <source>{path}: the disk does not answer; try again in a moment</source>
            <comment>told.disk_wait</comment>
            <translation>{path}: der Datenträger antwortet nicht; versuchen Sie es gleich noch einmal</translation>
        </message>
        <message>
            <source>the measuring process ended while the set-up was being used</source>
            <comment>told.ended</comment>
            <translation>das Messen brach ab, während die Einrichtung ausgewertet wurde</translation>
        </message>
        <message>
            <source>your eyes look another way than last time; do the whole set-up</source>
            <comment>told.eyes_other</comment>
            <translation>Ihre Augen sehen anders aus als beim letzten Mal; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>the face is too dark or too blurred to be measured; more light helps</source>
            <comment>told.face_dark</comment>
            <translation>Ihr Gesicht ist zu dunkel oder zu unscharf zum Messen; mehr Licht hilft</translation>
        </message>
        <message>
            <source>the face was not seen for long enough in the set-up; do it again</source>
            <comment>told.face_short</comment>
            <translation>Ihr Gesicht war in der Einrichtung nicht lange genug zu sehen; machen Sie sie noch einmal</translation>
        </message>
        <message>
            <source>{path}: is there already; name another file</source>
            <comment>told.file_there</comment>
            <translation>{path}: gibt es dort schon; nennen Sie eine andere Datei</translation>
        </message>
        <message>
            <source>its folder is gone</source>
            <comment>told.folder_gone</comment>
            <translation>der Ordner dafür ist weg</translation>
        </message>
        <message>
            <source>another program is using it</source>
            <comment>told.in_use</comment>
            <translation>ein anderes Programm benutzt es gerade</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <comment>told.is_folder</comment>
            <translation>es ist ein Ordner</translation>
        </message>
        <message>
            <source>this is another camera than that of the kept set-up; do the whole set-up</source>
            <comment>told.kept_camera</comment>
            <translation>das ist eine andere Kamera als bei der letzten Einrichtung; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>you sit much farther from the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_farther</comment>
            <translation>Sie sitzen viel weiter von der Kamera weg als bei der letzten Einrichtung; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>you sit much nearer to the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_nearer</comment>
            <translation>Sie sitzen viel näher an der Kamera als bei der letzten Einrichtung; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>the face was not seen for long enough; do the whole set-up</source>
            <comment>told.kept_short</comment>
            <translation>Ihr Gesicht war nicht lange genug zu sehen; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>the kept set-up does not fit this face or this light; do the whole set-up</source>
            <comment>told.kept_unlike</comment>
            <translation>die letzte Einrichtung passt nicht zu diesem Gesicht oder diesem Licht; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>the key would take too much memory to be opened; make it on another computer</source>
            <comment>told.key_heavy</comment>
            <translation>der Schlüssel würde zum Öffnen zu viel Speicher brauchen; machen Sie ihn auf einem anderen Computer</translation>
        </message>
        <message>
            <source>is a second copy of {path}, left out</source>
            <comment>told.left.copy</comment>
            <translation>ist eine zweite Kopie von {path}, ausgelassen</translation>
        </message>
        <message>
            <source>is no file of this program</source>
            <comment>told.left.foreign</comment>
            <translation>ist keine Datei dieses Programms</translation>
        </message>
        <message>
            <source>is not a whole JSON file; is it still being copied?</source>
            <comment>told.left.half</comment>
            <translation>ist keine vollständige JSON-Datei; wird sie noch kopiert?</translation>
        </message>
        <message>
            <source>is too large for a file of this program</source>
            <comment>told.left.large</comment>
            <translation>ist zu groß für eine Datei dieses Programms</translation>
        </message>
        <message>
            <source>not a whole JSON file ({error})</source>
            <comment>told.left.no_json</comment>
            <translation>ist keine JSON-Datei, oder keine ganze ({error})</translation>
        </message>
        <message>
            <source>is the same session as {path} with other content, left out; look which of them is right</source>
            <comment>told.left.other</comment>
            <translation>ist dieselbe Sitzung wie {path} mit anderem Inhalt, ausgelassen; sehen Sie nach, welche stimmt</translation>
        </message>
        <message>
            <source>is a file that a patient has handed over: take it in ("Files in and out" at the desk, or 'turnpost receive'), then move it elsewhere; taken in twice it changes nothing</source>
            <comment>told.left.shut</comment>
            <translation>ist eine Datei, die ein Patient übergeben hat: Nehmen Sie sie auf (unter „Dateien rein und raus“, oder mit 'turnpost receive') und legen Sie sie dann woanders ab; zweimal aufgenommen ändert sie nichts</translation>
        </message>
        <message>
            <source>is being written just now, or was a minute ago; look again soon</source>
            <comment>told.left.written</comment>
            <translation>wird gerade geschrieben oder wurde es vor einer Minute; sehen Sie bald noch einmal nach</translation>
        </message>
        <message>
            <source>what was held up has another shape; use a flat, whole one</source>
            <comment>told.lens_shape</comment>
            <translation>was Sie hochhielten, hat eine andere Form; nehmen Sie etwas Flaches, Ganzes</translation>
        </message>
        <message>
            <source>it was held too square to the camera; tilt it more, to several sides</source>
            <comment>told.lens_square</comment>
            <translation>Sie hielten es zu gerade zur Kamera; neigen Sie es mehr, zu mehreren Seiten</translation>
        </message>
        <message>
            <source>nothing was seen to measure; hold it up so that all four corners show</source>
            <comment>told.lens_unseen</comment>
            <translation>es war nichts zum Messen zu sehen; halten Sie es so hoch, dass alle vier Ecken zu sehen sind</translation>
        </message>
        <message>
            <source>no webcam sees so wide or so narrow; measure again</source>
            <comment>told.lens_wide</comment>
            <translation>keine Webcam sieht so weit oder so eng; messen Sie noch einmal</translation>
        </message>
        <message>
            <source>too many files are open</source>
            <comment>told.many_open</comment>
            <translation>zu viele Dateien sind geöffnet</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther in</source>
            <comment>told.mark_in</comment>
            <translation>die Marke verlangt eine Drehung von {turn} Grad; setzen Sie sie weiter nach innen</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther out</source>
            <comment>told.mark_out</comment>
            <translation>die Marke verlangt eine Drehung von {turn} Grad; setzen Sie sie weiter nach außen</translation>
        </message>
        <message>
            <source>the computer has too little memory</source>
            <comment>told.memory</comment>
            <translation>der Computer hat zu wenig Speicher</translation>
        </message>
        <message>
            <source>{path}: is a folder; name a file</source>
            <comment>told.name_file</comment>
            <translation>{path}: ist ein Ordner; nennen Sie eine Datei</translation>
        </message>
        <message>
            <source>the name is too long</source>
            <comment>told.name_long</comment>
            <translation>der Name ist zu lang</translation>
        </message>
        <message>
            <source>something of this name is there already</source>
            <comment>told.name_taken</comment>
            <translation>etwas mit diesem Namen gibt es dort schon</translation>
        </message>
        <message>
            <source>this name can't be used here</source>
            <comment>told.name_wrong</comment>
            <translation>dieser Name lässt sich hier nicht verwenden</translation>
        </message>
        <message>
            <source>the place on the network does not answer</source>
            <comment>told.network_silent</comment>
            <translation>der Ort im Netzwerk antwortet nicht</translation>
        </message>
        <message>
            <source>{path}: was written by a newer version of this program; update it</source>
            <comment>told.newer</comment>
            <translation>{path}: wurde von einer neueren Version dieses Programms geschrieben; aktualisieren Sie es</translation>
        </message>
        <message>
            <source>a newer version of this program wrote it</source>
            <comment>told.newer_wrote</comment>
            <translation>eine neuere Version dieses Programms hat es geschrieben</translation>
        </message>
        <message>
            <source>it is not an ordinary file</source>
            <comment>told.no_file</comment>
            <translation>es ist keine gewöhnliche Datei</translation>
        </message>
        <message>
            <source>{path}: the folder can't be made ({why})</source>
            <comment>told.no_folder</comment>
            <translation>{path}: der Ordner lässt sich nicht anlegen ({why})</translation>
        </message>
        <message>
            <source>no file can have such a name</source>
            <comment>told.no_name</comment>
            <translation>so kann keine Datei heißen</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why}); choose another place</source>
            <comment>told.no_place</comment>
            <translation>{path}: lässt sich nicht schreiben ({why}); wählen Sie einen anderen Ort</translation>
        </message>
        <message>
            <source>this account has no right to it</source>
            <comment>told.no_right</comment>
            <translation>dieses Konto hat kein Recht dazu</translation>
        </message>
        <message>
            <source>something else lies in it</source>
            <comment>told.not_empty</comment>
            <translation>es liegt noch etwas anderes darin</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why})</source>
            <comment>told.not_taken_in</comment>
            <translation>{path}: lässt sich nicht beschreiben, nichts wurde übernommen ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why}); make room or choose another folder</source>
            <comment>told.not_taken_in.room</comment>
            <translation>{path}: lässt sich nicht beschreiben, nichts wurde übernommen ({why}); schaffen Sie Platz oder wählen Sie einen anderen Ordner</translation>
        </message>
        <message>
            <source>it is not there</source>
            <comment>told.not_there</comment>
            <translation>es ist nicht da</translation>
        </message>
        <message>
            <source>{path}: the note was not saved ({why})</source>
            <comment>told.note</comment>
            <translation>{path}: die Notiz wurde nicht gespeichert ({why})</translation>
        </message>
        <message>
            <source>nothing is being measured</source>
            <comment>told.nothing</comment>
            <translation>es wird nichts gemessen</translation>
        </message>
        <message>
            <source>the pictures of the other steps are gone; do the whole set-up</source>
            <comment>told.pictures_gone</comment>
            <translation>die Bilder der anderen Schritte sind nicht mehr da; machen Sie die ganze Einrichtung</translation>
        </message>
        <message>
            <source>nothing can be changed there, only read</source>
            <comment>told.read_only</comment>
            <translation>dort lässt sich nichts ändern, nur lesen</translation>
        </message>
        <message>
            <source>a record could not be written</source>
            <comment>told.record_lost</comment>
            <translation>eine Zeile ließ sich nicht schreiben</translation>
        </message>
        <message>
            <source>Body, sitting</source>
            <comment>told.stage_body</comment>
            <translation>Körper, im Sitzen</translation>
        </message>
        <message>
            <source>Eyes and head, sitting</source>
            <comment>told.stage_eyes</comment>
            <translation>Augen und Kopf, im Sitzen</translation>
        </message>
        <message>
            <source>Standing, firm floor</source>
            <comment>told.stage_firm</comment>
            <translation>Stehen, fester Boden</translation>
        </message>
        <message>
            <source>Standing, soft surface</source>
            <comment>told.stage_soft</comment>
            <translation>Stehen, weicher Boden</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>told.stage_walking</comment>
            <translation>Gehen</translation>
        </message>
        <message>
            <source>it is too large</source>
            <comment>told.too_large</comment>
            <translation>es ist zu groß</translation>
        </message>
        <message>
            <source>{path}: can't be deleted ({why})</source>
            <comment>told.undeleted</comment>
            <translation>{path}: lässt sich nicht löschen ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be read ({why})</source>
            <comment>told.unread</comment>
            <translation>{path}: lässt sich nicht lesen ({why})</translation>
        </message>
        <message>
            <source>the folder can't be read ({why})</source>
            <comment>told.unread.folder</comment>
            <translation>der Ordner lässt sich nicht lesen ({why})</translation>
        </message>
        <message>
            <source>can't be read ({why})</source>
            <comment>told.unread.short</comment>
            <translation>lässt sich nicht lesen ({why})</translation>
        </message>
        <message>
            <source>the set-up could not be used ({why})</source>
            <comment>told.unusable</comment>
            <translation>die Einrichtung ließ sich nicht verwenden ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why})</source>
            <comment>told.unwritten</comment>
            <translation>{path}: lässt sich nicht schreiben ({why})</translation>
        </message>
        <message>
            <source>{path}: is in use by another window; close that first</source>
            <comment>told.window</comment>
            <translation>{path}: wird von einem anderen Fenster benutzt; schließen Sie erst dieses</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>tools.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>For therapists: baseline together</source>
            <comment>tools.baseline</comment>
            <translation>Für Therapiepraxen: Ausgangsmessung gemeinsam</translation>
        </message>
        <message>
            <source>For therapists: plan</source>
            <comment>tools.edit</comment>
            <translation>Für Therapiepraxen: Plan</translation>
        </message>
        <message>
            <source>Measure the camera</source>
            <comment>tools.lens</comment>
            <translation>Die Kamera ausmessen</translation>
        </message>
        <message>
            <source>Camera, screen, more</source>
            <comment>tools.open</comment>
            <translation>Kamera, Bildschirm, mehr</translation>
        </message>
        <message>
            <source>For therapists: review sessions</source>
            <comment>tools.review</comment>
            <translation>Für Therapiepraxen: Sitzungen ansehen</translation>
        </message>
        <message>
            <source>Choose the folder with the sessions</source>
            <comment>tools.review.folder</comment>
            <translation>Wählen Sie den Ordner mit den Sitzungen</translation>
        </message>
        <message>
            <source>Measure the screen</source>
            <comment>tools.screen</comment>
            <translation>Den Bildschirm ausmessen</translation>
        </message>
        <message>
            <source>Camera, screen, and what else there is</source>
            <comment>tools.title</comment>
            <translation>Kamera, Bildschirm und was es sonst gibt</translation>
        </message>
        <message>
            <source>Two measures make your figures more exact. You take them once. Without them usual values are taken, and your results say so.</source>
            <comment>tools.why</comment>
            <translation>Zwei Maße machen Ihre Zahlen genauer. Sie nehmen sie einmal. Ohne sie gelten übliche Werte, und Ihre Ergebnisse sagen das.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>trouble.back</comment>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Another program is using the camera.</source>
            <comment>trouble.busy</comment>
            <translation>Ein anderes Programm benutzt die Kamera.</translation>
        </message>
        <message>
            <source>Close the other program. In a video call, switch your video off there and share this window. To stand you then need a helper in the room, or a second device that shows you.</source>
            <comment>trouble.busy.do</comment>
            <translation>Schließen Sie das andere Programm. In einem Videogespräch: Schalten Sie dort Ihr Video aus und teilen Sie dieses Fenster. Zum Stehen brauchen Sie dann eine Hilfsperson im Zimmer oder ein zweites Gerät, das Sie zeigt.</translation>
        </message>
        <message>
            <source>Use the sample clip</source>
            <comment>trouble.demo</comment>
            <translation>Beispielfilm nehmen</translation>
        </message>
        <message>
            <source>The camera can't be used.</source>
            <comment>trouble.failed</comment>
            <translation>Die Kamera lässt sich nicht benutzen.</translation>
        </message>
        <message>
            <source>If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do</comment>
            <translation>Wenn es so bleibt, starten Sie mit einer Hilfsperson „turnpost doctor“.</translation>
        </message>
        <message>
            <source>Try again. If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do.retry</comment>
            <translation>Versuchen Sie es noch einmal. Wenn es so bleibt, starten Sie mit einer Hilfsperson „turnpost doctor“.</translation>
        </message>
        <message>
            <source>The camera does not answer.</source>
            <comment>trouble.hanging</comment>
            <translation>Die Kamera antwortet nicht.</translation>
        </message>
        <message>
            <source>Wait a moment. If nothing comes, unplug it or restart the computer.</source>
            <comment>trouble.hanging.do</comment>
            <translation>Warten Sie einen Moment. Wenn nichts kommt, ziehen Sie sie ab oder starten Sie den Computer neu.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>trouble.no_camera</comment>
            <translation>Es wurde keine Kamera gefunden.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch.</source>
            <comment>trouble.no_camera.do</comment>
            <translation>Stecken Sie eine Kamera an oder öffnen Sie ihre Klappe oder ihren Schalter.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch, then try again.</source>
            <comment>trouble.no_camera.do.retry</comment>
            <translation>Stecken Sie eine Kamera an oder öffnen Sie ihre Klappe oder ihren Schalter. Versuchen Sie es dann noch einmal.</translation>
        </message>
        <message>
            <source>Turnpost may not use the camera.</source>
            <comment>trouble.no_permission</comment>
            <translation>Turnpost darf die Kamera nicht benutzen.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy.</source>
            <comment>trouble.no_permission.do</comment>
            <translation>Erlauben Sie die Kamera in den Einstellungen Ihres Computers unter „Datenschutz“.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy, then try again.</source>
            <comment>trouble.no_permission.do.retry</comment>
            <translation>Erlauben Sie die Kamera in den Einstellungen Ihres Computers unter „Datenschutz“. Versuchen Sie es dann noch einmal.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps another program is using it.</source>
            <comment>trouble.perhaps_busy</comment>
            <translation>Die Kamera gibt kein Bild. Vielleicht benutzt sie ein anderes Programm.</translation>
        </message>
        <message>
            <source>Close the other program. In a call, switch your video off there and share this window. To stand you then need a helper, or a second device. If it is not that, open the camera's cover, or allow it under Privacy.</source>
            <comment>trouble.perhaps_busy.do</comment>
            <translation>Schließen Sie das andere Programm. Im Videogespräch: Schalten Sie Ihr Video dort aus und teilen Sie dieses Fenster. Zum Stehen brauchen Sie dann Hilfe oder ein zweites Gerät. Sonst: Öffnen Sie die Kamera, oder erlauben Sie sie unter Datenschutz.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps Turnpost may not use it.</source>
            <comment>trouble.perhaps_forbidden</comment>
            <translation>Die Kamera gibt kein Bild. Vielleicht darf Turnpost sie nicht benutzen.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings under Privacy. If it is allowed, open its cover, or close other programs.</source>
            <comment>trouble.perhaps_forbidden.do</comment>
            <translation>Erlauben Sie die Kamera in den Einstellungen unter „Datenschutz“. Wenn sie erlaubt ist: Öffnen Sie ihre Abdeckung, oder schließen Sie andere Programme.</translation>
        </message>
        <message>
            <source>It starts to measure again.</source>
            <comment>trouble.restarting</comment>
            <translation>Die Messung startet neu.</translation>
        </message>
        <message>
            <source>Wait a moment. You need do nothing.</source>
            <comment>trouble.restarting.do</comment>
            <translation>Warten Sie einen Moment. Sie müssen nichts tun.</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>trouble.retry</comment>
            <translation>Noch einmal versuchen</translation>
        </message>
        <message>
            <source>No picture comes from the camera.</source>
            <comment>trouble.silent</comment>
            <translation>Von der Kamera kommt kein Bild.</translation>
        </message>
        <message>
            <source>Wait a moment: Turnpost tries again by itself.</source>
            <comment>trouble.silent.do</comment>
            <translation>Warten Sie einen Moment: Turnpost versucht es von selbst noch einmal.</translation>
        </message>
        <message>
            <source>The camera has been unplugged.</source>
            <comment>trouble.unplugged</comment>
            <translation>Die Kamera wurde abgezogen.</translation>
        </message>
        <message>
            <source>Plug it in again.</source>
            <comment>trouble.unplugged.do</comment>
            <translation>Stecken Sie sie wieder an.</translation>
        </message>
        <message>
            <source>Plug it in again, then try again.</source>
            <comment>trouble.unplugged.do.retry</comment>
            <translation>Stecken Sie sie wieder an. Versuchen Sie es dann noch einmal.</translation>
        </message>
        <message>
            <source>which arm you use, if it is out of sight</source>
            <comment>unmeasured.arm</comment>
            <translation>welchen Arm Sie nehmen, wenn er nicht zu sehen ist</translation>
        </message>
        <message>
            <source>how clear the target is to you</source>
            <comment>unmeasured.blur_of_target</comment>
            <translation>wie klar Sie das Ziel sehen</translation>
        </message>
        <message>
            <source>how high your chair is</source>
            <comment>unmeasured.chair</comment>
            <translation>wie hoch Ihr Stuhl ist</translation>
        </message>
        <message>
            <source>The camera does not count this. Count for yourself.</source>
            <comment>unmeasured.count</comment>
            <translation>Die Kamera zählt das nicht. Zählen Sie selbst.</translation>
        </message>
        <message>
            <source>which way your shoulders roll</source>
            <comment>unmeasured.direction</comment>
            <translation>in welche Richtung Ihre Schultern kreisen</translation>
        </message>
        <message>
            <source>if you see two tips</source>
            <comment>unmeasured.double_image</comment>
            <translation>ob Sie zwei Spitzen sehen</translation>
        </message>
        <message>
            <source>The camera measures nothing here. You are led by voice.</source>
            <comment>unmeasured.everything</comment>
            <translation>Die Kamera misst hier nichts. Eine Stimme führt Sie.</translation>
        </message>
        <message>
            <source>if your eyes follow the ball</source>
            <comment>unmeasured.eyes_follow</comment>
            <translation>ob Ihre Augen dem Ball folgen</translation>
        </message>
        <message>
            <source>the moment your eyes open</source>
            <comment>unmeasured.eyes_opened</comment>
            <translation>der Moment, in dem Ihre Augen aufgehen</translation>
        </message>
        <message>
            <source>your feet</source>
            <comment>unmeasured.feet</comment>
            <translation>Ihre Füße</translation>
        </message>
        <message>
            <source>your eyes while you bend</source>
            <comment>unmeasured.gaze_bent</comment>
            <translation>Ihre Augen, während Sie sich bücken</translation>
        </message>
        <message>
            <source>where your eyes point when they are shut</source>
            <comment>unmeasured.gaze_eyes_shut</comment>
            <translation>wohin Ihre Augen zeigen, wenn sie zu sind</translation>
        </message>
        <message>
            <source>eyes that stop short of the target</source>
            <comment>unmeasured.gaze_short</comment>
            <translation>Augen, die vor dem Ziel stehen bleiben</translation>
        </message>
        <message>
            <source>your hand</source>
            <comment>unmeasured.hand</comment>
            <translation>Ihre Hand</translation>
        </message>
        <message>
            <source>how near your finger really comes</source>
            <comment>unmeasured.hand_place</comment>
            <translation>wie nah Ihr Finger wirklich kommt</translation>
        </message>
        <message>
            <source>a target in your hand</source>
            <comment>unmeasured.hand_target</comment>
            <translation>ein Ziel in Ihrer Hand</translation>
        </message>
        <message>
            <source>your hands</source>
            <comment>unmeasured.hands</comment>
            <translation>Ihre Hände</translation>
        </message>
        <message>
            <source>if you bend at the hips</source>
            <comment>unmeasured.hip_bend</comment>
            <translation>ob Sie in der Hüfte einknicken</translation>
        </message>
        <message>
            <source>the ball itself</source>
            <comment>unmeasured.object</comment>
            <translation>der Ball selbst</translation>
        </message>
        <message>
            <source>how fast your eyes jump</source>
            <comment>unmeasured.peak_speed_of_eyes</comment>
            <translation>wie schnell Ihre Augen springen</translation>
        </message>
        <message>
            <source>how far your eyes go up and down</source>
            <comment>unmeasured.reach_vertical</comment>
            <translation>wie weit Ihre Augen auf und ab gehen</translation>
        </message>
        <message>
            <source>how high your shoulders go</source>
            <comment>unmeasured.shoulder_height</comment>
            <translation>wie hoch Ihre Schultern gehen</translation>
        </message>
        <message>
            <source>small jumps of your eyes</source>
            <comment>unmeasured.small_jumps</comment>
            <translation>kleine Sprünge Ihrer Augen</translation>
        </message>
        <message>
            <source>if you hold on</source>
            <comment>unmeasured.steadied</comment>
            <translation>ob Sie sich festhalten</translation>
        </message>
        <message>
            <source>how far your eyes turn in</source>
            <comment>unmeasured.vergence</comment>
            <translation>wie weit sich Ihre Augen nach innen drehen</translation>
        </message>
        <message>
            <source>It is too bright. Turn the light a little aside.</source>
            <comment>verdict.bright</comment>
            <translation>Es ist zu hell. Drehen Sie das Licht etwas zur Seite.</translation>
        </message>
        <message>
            <source>It is dark. Put more light in front of you.</source>
            <comment>verdict.dark</comment>
            <translation>Es ist dunkel. Stellen Sie mehr Licht vor sich auf.</translation>
        </message>
        <message>
            <source>You are far away. Come a hand closer.</source>
            <comment>verdict.far</comment>
            <translation>Sie sind weit weg. Kommen Sie eine Handbreit näher.</translation>
        </message>
        <message>
            <source>Good. Your face is well lit and near enough.</source>
            <comment>verdict.good</comment>
            <translation>Gut. Ihr Gesicht ist hell genug und nah genug.</translation>
        </message>
        <message>
            <source>You are very near. Move back by a hand.</source>
            <comment>verdict.near</comment>
            <translation>Sie sind sehr nah. Gehen Sie eine Handbreit zurück.</translation>
        </message>
        <message>
            <source>Your face is not in the picture. Face the screen, in front of its camera.</source>
            <comment>verdict.no_face</comment>
            <translation>Ihr Gesicht ist nicht im Bild. Schauen Sie zum Bildschirm, vor seine Kamera.</translation>
        </message>
        <message>
            <source>Getting the camera ready. This can take half a minute.</source>
            <comment>verdict.opening</comment>
            <translation>Die Kamera wird vorbereitet. Das kann eine halbe Minute dauern.</translation>
        </message>
        <message>
            <source>The camera is slow. More light may help.</source>
            <comment>verdict.slow</comment>
            <translation>Die Kamera ist langsam. Mehr Licht kann helfen.</translation>
        </message>
        <message>
            <source>The voice can't be heard any more. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.failed</comment>
            <translation>Die Stimme ist nicht mehr zu hören. Taktschläge und die Worte auf dem Bildschirm führen Sie.</translation>
        </message>
        <message>
            <source>This computer has no voice. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_engine</comment>
            <translation>Dieser Computer hat keine Stimme. Taktschläge und die Worte auf dem Bildschirm führen Sie.</translation>
        </message>
        <message>
            <source>This computer has no voice for your language. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_language</comment>
            <translation>Dieser Computer hat keine Stimme für Ihre Sprache. Taktschläge und die Worte auf dem Bildschirm führen Sie.</translation>
        </message>
        <message>
            <source>en</source>
            <comment>voice.language</comment>
            <translation>de</translation>
        </message>
        <message>
            <source>Higher than the camera: {cm} cm.</source>
            <comment>wall.above</comment>
            <translation>Höher als die Kamera: {cm} cm.</translation>
        </message>
        <message>
            <source>Neither to the left nor to the right of it.</source>
            <comment>wall.ahead</comment>
            <translation>Weder links noch rechts von ihr.</translation>
        </message>
        <message>
            <source>From note to note: {cm} cm.</source>
            <comment>wall.apart</comment>
            <translation>Von Zettel zu Zettel: {cm} cm.</translation>
        </message>
        <message>
            <source>From your eyes straight to the wall: {cm} cm.</source>
            <comment>wall.away</comment>
            <translation>Von Ihren Augen gerade zur Wand: {cm} cm.</translation>
        </message>
        <message>
            <source>Lower than the camera: {cm} cm.</source>
            <comment>wall.below</comment>
            <translation>Tiefer als die Kamera: {cm} cm.</translation>
        </message>
        <message>
            <source>To the left of the camera: {cm} cm.</source>
            <comment>wall.left</comment>
            <translation>Links von der Kamera: {cm} cm.</translation>
        </message>
        <message>
            <source>As high as the camera.</source>
            <comment>wall.level</comment>
            <translation>So hoch wie die Kamera.</translation>
        </message>
        <message>
            <source>The camera is midway between them.</source>
            <comment>wall.middle</comment>
            <translation>Die Kamera ist in der Mitte zwischen ihnen.</translation>
        </message>
        <message>
            <source>Stick one note on the wall behind the screen.</source>
            <comment>wall.one</comment>
            <translation>Kleben Sie einen Zettel hinter dem Bildschirm an die Wand.</translation>
        </message>
        <message>
            <source>To the right of the camera: {cm} cm.</source>
            <comment>wall.right</comment>
            <translation>Rechts von der Kamera: {cm} cm.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, side by side.</source>
            <comment>wall.two</comment>
            <translation>Kleben Sie zwei Zettel nebeneinander hinter dem Bildschirm an die Wand.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, one above the other. How high they hang is measured from the place midway between them.</source>
            <comment>wall.two_up</comment>
            <translation>Kleben Sie zwei Zettel übereinander hinter dem Bildschirm an die Wand. Ihre Höhe wird von der Mitte zwischen ihnen gemessen.</translation>
        </message>
        <message>
            <source>Before you begin</source>
            <comment>welcome.safe</comment>
            <translation>Bevor Sie beginnen</translation>
        </message>
        <message>
            <source>Turn on the camera</source>
            <comment>welcome.start</comment>
            <translation>Kamera einschalten</translation>
        </message>
        <message>
            <source>Start the sample</source>
            <comment>welcome.start_demo</comment>
            <translation>Beispiel starten</translation>
        </message>
        <message>
            <source>Time for your exercises</source>
            <comment>welcome.title</comment>
            <translation>Zeit für Ihre Übungen</translation>
        </message>
        <message>
            <source>Turnpost watches through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and tells you when something is off.</source>
            <comment>welcome.what</comment>
            <translation>Turnpost schaut durch die Kamera zu, während Sie die Übungen machen, die Ihre Therapiepraxis Ihnen gegeben hat. Es zählt, gibt den Takt vor und sagt Ihnen, wenn etwas nicht stimmt.</translation>
        </message>
        <message>
            <source>A short sample clip takes the place of the camera. You see what a person at home would see: the set-up, an exercise, and the summary.</source>
            <comment>welcome.what_demo</comment>
            <translation>Ein kurzer Beispielfilm ersetzt die Kamera. Sie sehen, was man zu Hause sieht: die Einrichtung, eine Übung und die Zusammenfassung.</translation>
        </message>
    </context>
</TS>
