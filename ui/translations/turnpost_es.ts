<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>plan</name>
        <message>
            <source>'corner_and_chair'</source>
            <comment>'corner_and_chair'</comment>
            <translation>«esquina y silla estable»</translation>
        </message>
        <message>
            <source>'helper'</source>
            <comment>'helper'</comment>
            <translation>«ayudante al alcance del brazo»</translation>
        </message>
        <message>
            <source>'none'</source>
            <comment>'none'</comment>
            <translation>«ninguno»</translation>
        </message>
        <message>
            <source>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</source>
            <comment>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</comment>
            <translation>Bohannon RW 2006, Percept Mot Skills 103:215: el tiempo de cinco levantadas</translation>
        </message>
        <message>
            <source>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</source>
            <comment>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</comment>
            <translation>Serie de Cawthorne-Cooksey: un dedo entre 91 y 30 cm; la dosis es práctica común</translation>
        </message>
        <message>
            <source>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</source>
            <comment>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</comment>
            <translation>Grupo de Cohen HS, JoVE 2023, doi:10.3791/65663: movimientos de cabeza a 0,3 Hz</translation>
        </message>
        <message>
            <source>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</source>
            <comment>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</comment>
            <translation>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, según citas</translation>
        </message>
        <message>
            <source>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</source>
            <comment>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</comment>
            <translation>folleto de Mersey Care NHS «Dizziness, vertigo, imbalance»</translation>
        </message>
        <message>
            <source>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</source>
            <comment>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</comment>
            <translation>Schubert MC et al. 2008, J Vestib Res 18:147-157, para el ejercicio; la dosis es práctica común</translation>
        </message>
        <message>
            <source>US CDC STEADI 2017, four-stage balance test: 10 s a stance</source>
            <comment>US CDC STEADI 2017, four-stage balance test: 10 s a stance</comment>
            <translation>US CDC STEADI 2017, prueba de equilibrio en cuatro etapas: 10 s por postura</translation>
        </message>
        <message>
            <source>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</source>
            <comment>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</comment>
            <translation>US CDC STEADI, levantarse durante 30 segundos: silla de 43 cm (17 pulgadas), brazos cruzados</translation>
        </message>
        <message>
            <source>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</source>
            <comment>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</comment>
            <translation>WCAG 2.3.1: como máximo tres destellos en un segundo; la dosis es práctica común</translation>
        </message>
        <message>
            <source>a bilateral loss</source>
            <comment>a bilateral loss</comment>
            <translation>una pérdida bilateral</translation>
        </message>
        <message>
            <source>a chronic loss</source>
            <comment>a chronic loss</comment>
            <translation>una pérdida crónica</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</comment>
            <translation>variante de la serie de Cawthorne-Cooksey en un texto de geriatría, 20 veces cada uno</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</comment>
            <translation>variante de la serie de Cawthorne-Cooksey en un texto de geriatría, 20 veces cada uno; diez con cada brazo es práctica común</translation>
        </message>
        <message>
            <source>a head shake is no part of it</source>
            <comment>a head shake is no part of it</comment>
            <translation>los giros de cabeza no forman parte de él</translation>
        </message>
        <message>
            <source>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</source>
            <comment>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</comment>
            <translation>un fondo en movimiento puede provocar síntomas fuertes y está apagado si usted no lo quiere; diga para qué es</translation>
        </message>
        <message>
            <source>an acute loss</source>
            <comment>an acute loss</comment>
            <translation>una pérdida aguda</translation>
        </message>
        <message>
            <source>common practice</source>
            <comment>common practice</comment>
            <translation>práctica común</translation>
        </message>
        <message>
            <source>common practice, for room above and below; throws in rendered films were counted from there</source>
            <comment>common practice, for room above and below; throws in rendered films were counted from there</comment>
            <translation>práctica común, para dejar sitio arriba y abajo; los lanzamientos de películas generadas se contaron desde ahí</translation>
        </message>
        <message>
            <source>common practice: an arm held out doesn't reach the screen</source>
            <comment>common practice: an arm held out doesn't reach the screen</comment>
            <translation>práctica común: un brazo extendido no llega a la pantalla</translation>
        </message>
        <message>
            <source>common practice; also the length of a trial in the sensory-interaction balance test</source>
            <comment>common practice; also the length of a trial in the sensory-interaction balance test</comment>
            <translation>práctica común; también la duración de un intento en la prueba de equilibrio de interacción sensorial</translation>
        </message>
        <message>
            <source>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</source>
            <comment>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</comment>
            <translation>práctica común; como máximo 20 grados por segundo, por debajo de los 30 a partir de los cuales los ojos necesitan saltos para seguir (texto enciclopédico)</translation>
        </message>
        <message>
            <source>common practice; published handouts name 20 to 45 degrees to each side</source>
            <comment>common practice; published handouts name 20 to 45 degrees to each side</comment>
            <translation>práctica común; las hojas publicadas indican de 20 a 45 grados a cada lado</translation>
        </message>
        <message>
            <source>counted: gaze</source>
            <comment>counted: gaze</comment>
            <translation>se cuenta por la mirada</translation>
        </message>
        <message>
            <source>counted: hand, else vergence</source>
            <comment>counted: hand, else vergence</comment>
            <translation>se cuenta por la mano; si no, por la vergencia</translation>
        </message>
        <message>
            <source>counted: hands</source>
            <comment>counted: hands</comment>
            <translation>se cuenta por las manos</translation>
        </message>
        <message>
            <source>counted: head in bends</source>
            <comment>counted: head in bends</comment>
            <translation>se cuenta por la cabeza al agacharse</translation>
        </message>
        <message>
            <source>counted: head in rises</source>
            <comment>counted: head in rises</comment>
            <translation>se cuenta por la cabeza al levantarse</translation>
        </message>
        <message>
            <source>counted: head pitch</source>
            <comment>counted: head pitch</comment>
            <translation>se cuenta por la cabeza, arriba y abajo</translation>
        </message>
        <message>
            <source>counted: head tilt</source>
            <comment>counted: head tilt</comment>
            <translation>se cuenta por la inclinación de la cabeza</translation>
        </message>
        <message>
            <source>counted: head yaw</source>
            <comment>counted: head yaw</comment>
            <translation>se cuenta por el giro de la cabeza</translation>
        </message>
        <message>
            <source>counted: neck point fore and aft</source>
            <comment>counted: neck point fore and aft</comment>
            <translation>se cuenta por el punto del cuello, adelante y atrás</translation>
        </message>
        <message>
            <source>counted: neck point sideways</source>
            <comment>counted: neck point sideways</comment>
            <translation>se cuenta por el punto del cuello, a los lados</translation>
        </message>
        <message>
            <source>counted: shoulders</source>
            <comment>counted: shoulders</comment>
            <translation>se cuenta por los hombros</translation>
        </message>
        <message>
            <source>the baseline rule needs the most rise that is allowed (baseline_rise_most)</source>
            <comment>finding.baseline_rise</comment>
            <translation>la regla del valor inicial necesita también la subida permitida</translation>
        </message>
        <message>
            <source>a bilateral loss has both sides affected</source>
            <comment>finding.bilateral_side</comment>
            <translation>en una pérdida bilateral están afectados los dos lados</translation>
        </message>
        <message>
            <source>must be true or false</source>
            <comment>finding.bool_type</comment>
            <translation>debe ser sí o no</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_from_datetime_parsing</comment>
            <translation>debe ser un día como 2026-01-31</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_parsing</comment>
            <translation>debe ser un día como 2026-01-31</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_type</comment>
            <translation>debe ser un día como 2026-01-31</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees: the range is passed over</source>
            <comment>finding.degrees_passed_over</comment>
            <translation>{exercise} no se mide en grados: la amplitud no se tiene en cuenta</translation>
        </message>
        <message>
            <source>no entry is in stage {name}</source>
            <comment>finding.empty_stage</comment>
            <translation>no hay ninguna entrada en la etapa {name}</translation>
        </message>
        <message>
            <source>is not a field of a plan; see 'turnpost schema plan'</source>
            <comment>finding.extra_forbidden</comment>
            <translation>no es un campo de un plan; vea «turnpost schema plan»</translation>
        </message>
        <message>
            <source>{exercise} is done with the eyes closed</source>
            <comment>finding.eyes_closed</comment>
            <translation>{exercise} se hace con los ojos cerrados</translation>
        </message>
        <message>
            <source>{exercise} at {most} beats a minute is fast: its usual pace is about {own}</source>
            <comment>finding.fast</comment>
            <translation>{exercise} a {most} golpes por minuto es rápido: lo habitual son unos {own}</translation>
        </message>
        <message>
            <source>figures need the entry or stage they are taken from (after)</source>
            <comment>finding.figures_of_what</comment>
            <translation>los valores necesitan la entrada o la etapa de la que vienen</translation>
        </message>
        <message>
            <source>must be a finite number</source>
            <comment>finding.finite_number</comment>
            <translation>debe ser un número finito</translation>
        </message>
        <message>
            <source>must be a number</source>
            <comment>finding.float_type</comment>
            <translation>debe ser un número</translation>
        </message>
        <message>
            <source>must be more than {gt}</source>
            <comment>finding.greater_than</comment>
            <translation>debe ser más de {gt}</translation>
        </message>
        <message>
            <source>must be {ge} or more</source>
            <comment>finding.greater_than_equal</comment>
            <translation>debe ser {ge} o más</translation>
        </message>
        <message>
            <source>at least {least} for {loss} ({source})</source>
            <comment>finding.guideline_least</comment>
            <translation>al menos {least} para {loss} ({source})</translation>
        </message>
        <message>
            <source>the guideline names no figure for this kind of loss</source>
            <comment>finding.guideline_none</comment>
            <translation>la guía no da ninguna cifra para este tipo de pérdida</translation>
        </message>
        <message>
            <source>{least} to {most} for {loss} ({source})</source>
            <comment>finding.guideline_range</comment>
            <translation>de {least} a {most} para {loss} ({source})</translation>
        </message>
        <message>
            <source>{exercise} is done with a head shake</source>
            <comment>finding.head_shake</comment>
            <translation>{exercise} se hace con giros de cabeza</translation>
        </message>
        <message>
            <source>{exercise} is held: give seconds</source>
            <comment>finding.held_seconds</comment>
            <translation>{exercise} se mantiene: indique segundos</translation>
        </message>
        <message>
            <source>{exercise} is held: it has no tempo</source>
            <comment>finding.held_tempo</comment>
            <translation>{exercise} se mantiene: no tiene ritmo</translation>
        </message>
        <message>
            <source>changes nothing: give a tempo (tempo_bpm) or a range (amplitude_deg)</source>
            <comment>finding.idle_rung</comment>
            <translation>no cambia nada: indique ritmo o amplitud</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_from_float</comment>
            <translation>debe ser un número entero</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_type</comment>
            <translation>debe ser un número entero</translation>
        </message>
        <message>
            <source>there are keys, so nothing is handed over plain</source>
            <comment>finding.keys_and_plain</comment>
            <translation>hay llaves, así que nada se entrega sin cierre</translation>
        </message>
        <message>
            <source>must be later than the rung before</source>
            <comment>finding.later_rung</comment>
            <translation>debe ser posterior al paso anterior</translation>
        </message>
        <message>
            <source>the least comes first, then the most</source>
            <comment>finding.least_first</comment>
            <translation>primero el menor, después el mayor</translation>
        </message>
        <message>
            <source>must be {le} or less</source>
            <comment>finding.less_than_equal</comment>
            <translation>debe ser {le} o menos</translation>
        </message>
        <message>
            <source>must be a list in [ ]</source>
            <comment>finding.list_type</comment>
            <translation>debe ser una lista</translation>
        </message>
        <message>
            <source>must be {expected}</source>
            <comment>finding.literal_error</comment>
            <translation>debe ser uno de estos: {expected}</translation>
        </message>
        <message>
            <source>takes about {minutes} minutes, more than {most}</source>
            <comment>finding.long_stage</comment>
            <translation>dura unos {minutes} minutos, más de {most}</translation>
        </message>
        <message>
            <source>is missing</source>
            <comment>finding.missing</comment>
            <translation>falta</translation>
        </message>
        <message>
            <source>is misspelt: its check letters don't fit</source>
            <comment>finding.misspelt_key</comment>
            <translation>está mal escrito: sus letras de control no encajan</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_attributes_type</comment>
            <translation>debe tener campos</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_type</comment>
            <translation>debe tener campos</translation>
        </message>
        <message>
            <source>{given} can't be used here (letters, digits, . _ - only)</source>
            <comment>finding.name</comment>
            <translation>{given} no sirve aquí (solo letras, cifras, . _ -)</translation>
        </message>
        <message>
            <source>{name} is the name of a stage already</source>
            <comment>finding.name_of_stage</comment>
            <translation>{name} es ya el nombre de una etapa</translation>
        </message>
        <message>
            <source>nearer than the usual {usual} mm</source>
            <comment>finding.near_seat</comment>
            <translation>más cerca que los {usual} mm habituales</translation>
        </message>
        <message>
            <source>asks for up to {most} degrees, beyond the neck limit of {limit}</source>
            <comment>finding.neck</comment>
            <translation>pide hasta {most} grados, más que el límite del cuello de {limit}</translation>
        </message>
        <message>
            <source>{exercise} {how} is not given: {why}</source>
            <comment>finding.never</comment>
            <translation>{exercise} {how} no se da: {why}</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees</source>
            <comment>finding.no_degrees</comment>
            <translation>{exercise} no se mide en grados</translation>
        </message>
        <message>
            <source>none is set: the program can only say 'call for help'</source>
            <comment>finding.no_emergency_number</comment>
            <translation>no hay ninguno: el programa solo puede decir que se pida ayuda</translation>
        </message>
        <message>
            <source>needs keys, or plain set to true knowingly</source>
            <comment>finding.no_keys</comment>
            <translation>necesita llaves, o la decisión expresa de entregar sin cierre</translation>
        </message>
        <message>
            <source>no pseudonym is set: nobody can tell whose sessions are handed over</source>
            <comment>finding.no_person</comment>
            <translation>no hay seudónimo: nadie puede saber de quién son las sesiones que se entregan</translation>
        </message>
        <message>
            <source>{exercise} asks for no range, so that nothing is held to the neck limit of {limit} degrees: give one</source>
            <comment>finding.no_range</comment>
            <translation>{exercise} no pide amplitud, así que nada se compara con el límite del cuello de {limit} grados: indique una</translation>
        </message>
        <message>
            <source>how far the head is shaken while {exercise} is held is not watched, whatever the neck limit of {limit} degrees</source>
            <comment>finding.no_range_held</comment>
            <translation>en {exercise} no se observa cuánto gira la cabeza de lado a lado, aunque el límite del cuello sea de {limit} grados</translation>
        </message>
        <message>
            <source>there is no stage {name} in this plan</source>
            <comment>finding.no_stage</comment>
            <translation>en este plan no hay ninguna etapa {name}</translation>
        </message>
        <message>
            <source>{exercise} can't be done with marks on the wall</source>
            <comment>finding.no_wall</comment>
            <translation>{exercise} no se puede hacer con marcas en la pared</translation>
        </message>
        <message>
            <source>none is set</source>
            <comment>finding.none_set</comment>
            <translation>no se ha indicado</translation>
        </message>
        <message>
            <source>{name} is no entry or stage further up in this plan</source>
            <comment>finding.not_before</comment>
            <translation>{name} no es ninguna entrada ni etapa más arriba en este plan</translation>
        </message>
        <message>
            <source>not everything is ticked: only what the seated starter has will be offered</source>
            <comment>finding.not_cleared</comment>
            <translation>no está todo marcado: solo se ofrecerá lo que tiene el comienzo en la silla</translation>
        </message>
        <message>
            <source>{exercise} needs a note: {why}</source>
            <comment>finding.note_needed</comment>
            <translation>{exercise} necesita una nota: {why}</translation>
        </message>
        <message>
            <source>a note is asked for with {exercise}: {why}</source>
            <comment>finding.note_wanted</comment>
            <translation>con {exercise} se pide una nota: {why}</translation>
        </message>
        <message>
            <source>{exercise} has one mark: leave out the distance from mark to mark</source>
            <comment>finding.one_mark</comment>
            <translation>{exercise} tiene una sola marca: quite la distancia de marca a marca</translation>
        </message>
        <message>
            <source>{text}</source>
            <comment>finding.other</comment>
            <translation>{text}</translation>
        </message>
        <message>
            <source>sessions are handed over unencrypted</source>
            <comment>finding.plain</comment>
            <translation>las sesiones se entregan sin cifrar</translation>
        </message>
        <message>
            <source>is no public key of the format age (age1 and 58 more letters)</source>
            <comment>finding.public_key</comment>
            <translation>no es una clave pública del formato age (age1 y 58 letras más)</translation>
        </message>
        <message>
            <source>is missing, as this plan has stages</source>
            <comment>finding.stage_missing</comment>
            <translation>falta, porque este plan tiene etapas</translation>
        </message>
        <message>
            <source>is longer than {max_length} characters</source>
            <comment>finding.string_too_long</comment>
            <translation>tiene más de {max_length} caracteres</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.string_too_short</comment>
            <translation>no debe estar vacío</translation>
        </message>
        <message>
            <source>must be a text in quotes</source>
            <comment>finding.string_type</comment>
            <translation>debe ser un texto</translation>
        </message>
        <message>
            <source>{exercise} ({how}) needs the support {least}</source>
            <comment>finding.support</comment>
            <translation>{exercise} ({how}) necesita el apoyo {least}</translation>
        </message>
        <message>
            <source>must be a telephone number</source>
            <comment>finding.telephone</comment>
            <translation>debe ser un número de teléfono</translation>
        </message>
        <message>
            <source>{exercise} goes at {most} beats a minute at most</source>
            <comment>finding.tempo_to_follow</comment>
            <translation>{exercise} va como máximo a {most} golpes por minuto</translation>
        </message>
        <message>
            <source>has more than {max_length} parts</source>
            <comment>finding.too_long</comment>
            <translation>tiene más de {max_length} partes</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.too_short</comment>
            <translation>no debe estar vacío</translation>
        </message>
        <message>
            <source>must be a pair, [from, to]</source>
            <comment>finding.tuple_type</comment>
            <translation>debe ser un par, desde y hasta</translation>
        </message>
        <message>
            <source>stands there twice</source>
            <comment>finding.twice</comment>
            <translation>está dos veces</translation>
        </message>
        <message>
            <source>give repetitions or seconds, not both</source>
            <comment>finding.two_doses</comment>
            <translation>indique repeticiones o segundos, no las dos cosas</translation>
        </message>
        <message>
            <source>there are two entries {name}</source>
            <comment>finding.two_entries</comment>
            <translation>hay dos entradas {name}</translation>
        </message>
        <message>
            <source>there are two stages {name}</source>
            <comment>finding.two_stages</comment>
            <translation>hay dos etapas {name}</translation>
        </message>
        <message>
            <source>would lie {angle} degrees above or below the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_above</comment>
            <translation>quedaría a {angle} grados por encima o por debajo de la cámara: a esta distancia, {most} mm como máximo</translation>
        </message>
        <message>
            <source>the marks would lie {angle} degrees to each side: from this far away they must be {least} to {most} mm apart</source>
            <comment>finding.wall_angle</comment>
            <translation>las marcas quedarían a {angle} grados a cada lado: a esta distancia deben estar separadas de {least} a {most} mm</translation>
        </message>
        <message>
            <source>must be {most} mm at most: farther off, no marks will do</source>
            <comment>finding.wall_far</comment>
            <translation>debe ser como mucho {most} mm: más lejos no sirve ninguna marca</translation>
        </message>
        <message>
            <source>the marks ask for more than the neck limit of {limit} degrees: {most} mm apart at most from this far away</source>
            <comment>finding.wall_neck</comment>
            <translation>las marcas piden más que el límite del cuello de {limit} grados: a esta distancia, {most} mm entre ellas como máximo</translation>
        </message>
        <message>
            <source>would lie {angle} degrees to the side of the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_right</comment>
            <translation>quedaría a {angle} grados al lado de la cámara: a esta distancia, {most} mm como máximo</translation>
        </message>
        <message>
            <source>{exercise} with the eyes closed can't be done with marks on the wall</source>
            <comment>finding.wall_shut</comment>
            <translation>{exercise} con los ojos cerrados no se puede hacer con marcas en la pared</translation>
        </message>
        <message>
            <source>the range or the neck limit leaves {most} degrees to each side, too little for two marks on the wall: they need {least} at least</source>
            <comment>finding.wall_small</comment>
            <translation>el margen o el límite del cuello deja {most} grados a cada lado, muy poco para dos marcas en la pared: necesitan al menos {least}</translation>
        </message>
        <message>
            <source>must be {least} to {most} mm, or no distance from the wall fits it</source>
            <comment>finding.wall_spacing</comment>
            <translation>debe ser de {least} a {most} mm, o no habrá distancia a la pared que sirva</translation>
        </message>
        <message>
            <source>counts weeks, but the day it begins on is not set (starts_on)</source>
            <comment>finding.weeks_from_when</comment>
            <translation>cuenta semanas, pero no se ha indicado el primer día</translation>
        </message>
        <message>
            <source>held, timed</source>
            <comment>held, timed</comment>
            <translation>se mantiene, por tiempo</translation>
        </message>
        <message>
            <source>it is done on a firm floor</source>
            <comment>it is done on a firm floor</comment>
            <translation>se hace sobre suelo firme</translation>
        </message>
        <message>
            <source>it is done with the eyes open</source>
            <comment>it is done with the eyes open</comment>
            <translation>se hace con los ojos abiertos</translation>
        </message>
        <message>
            <source>it is not done sitting</source>
            <comment>it is not done sitting</comment>
            <translation>no se hace sentado</translation>
        </message>
        <message>
            <source>it is not done standing</source>
            <comment>it is not done standing</comment>
            <translation>no se hace de pie</translation>
        </message>
        <message>
            <source>it is not done walking</source>
            <comment>it is not done walking</comment>
            <translation>no se hace caminando</translation>
        </message>
        <message>
            <source>led, not counted</source>
            <comment>led, not counted</comment>
            <translation>guiado, no se cuenta</translation>
        </message>
        <message>
            <source>never while tossing, walking, on stairs or with a partner</source>
            <comment>never while tossing, walking, on stairs or with a partner</comment>
            <translation>nunca al lanzar, al caminar, en escaleras o con un compañero</translation>
        </message>
        <message>
            <source>on a soft surface</source>
            <comment>on a soft surface</comment>
            <translation>sobre superficie blanda</translation>
        </message>
        <message>
            <source>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</source>
            <comment>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</comment>
            <translation>películas generadas: quien se incorpora a medias queda por debajo de la imagen a 56 cm, y se ve a 90</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>sentado</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>de pie</translation>
        </message>
        <message>
            <source>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</source>
            <comment>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</comment>
            <translation>la guía desaconseja los movimientos de ojos con la cabeza quieta como estabilización de la mirada (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, según citas); diga para qué es este ejercicio</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>caminando</translation>
        </message>
        <message>
            <source>with a head shake</source>
            <comment>with a head shake</comment>
            <translation>con giros de cabeza</translation>
        </message>
        <message>
            <source>with the eyes closed</source>
            <comment>with the eyes closed</comment>
            <translation>con los ojos cerrados</translation>
        </message>
    </context>
    <context>
        <name>trade</name>
        <message>
            <source>30-second chair stand</source>
            <comment>30-second chair stand</comment>
            <translation>Levantarse de la silla 30 segundos</translation>
        </message>
        <message>
            <source>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</source>
            <comment>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</comment>
            <translation>Levantarse 30 segundos: silla de 43 cm, brazos cruzados, tantas como sea seguro</translation>
        </message>
        <message>
            <source>95 % below</source>
            <comment>95 % below</comment>
            <translation>95 % por debajo</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following</source>
            <comment>Active head pitch with the gaze following</comment>
            <translation>Cabeza arriba y abajo con la mirada siguiendo</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following (habituation)</source>
            <comment>Active head pitch with the gaze following (habituation)</comment>
            <translation>Cabeza arriba y abajo con la mirada siguiendo (habituación)</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following</source>
            <comment>Active head yaw with the gaze following</comment>
            <translation>Giro de cabeza con la mirada siguiendo</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following (habituation)</source>
            <comment>Active head yaw with the gaze following (habituation)</comment>
            <translation>Giro de cabeza con la mirada siguiendo (habituación)</translation>
        </message>
        <message>
            <source>After a sudden drop of the head</source>
            <comment>After a sudden drop of the head</comment>
            <translation>Tras una bajada brusca de la cabeza</translation>
        </message>
        <message>
            <source>After an end for today</source>
            <comment>After an end for today</comment>
            <translation>Después de un fin por hoy</translation>
        </message>
        <message>
            <source>Against the published table</source>
            <comment>Against the published table</comment>
            <translation>frente a la tabla publicada</translation>
        </message>
        <message>
            <source>Arm of the bends</source>
            <comment>Arm of the bends</comment>
            <translation>brazo al agacharse</translation>
        </message>
        <message>
            <source>Arm that was used</source>
            <comment>Arm that was used</comment>
            <translation>brazo que usó</translation>
        </message>
        <message>
            <source>Backward shoulder circles</source>
            <comment>Backward shoulder circles</comment>
            <translation>Círculos de hombros hacia atrás</translation>
        </message>
        <message>
            <source>Backward shoulder circles, slow</source>
            <comment>Backward shoulder circles, slow</comment>
            <translation>Círculos de hombros hacia atrás, lentos</translation>
        </message>
        <message>
            <source>Baseline</source>
            <comment>Baseline</comment>
            <translation>Sesión de referencia</translation>
        </message>
        <message>
            <source>Camera's vertical field of view</source>
            <comment>Camera's vertical field of view</comment>
            <translation>campo de visión vertical de la cámara</translation>
        </message>
        <message>
            <source>Changed in the call</source>
            <comment>Changed in the call</comment>
            <translation>Cambiado en la llamada</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip</source>
            <comment>Convergence hold on a fingertip</comment>
            <translation>Mantener la convergencia en la punta del dedo</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip, as near as it stays single</source>
            <comment>Convergence hold on a fingertip, as near as it stays single</comment>
            <translation>Mantener la convergencia en la punta del dedo, tan cerca como se vea una sola</translation>
        </message>
        <message>
            <source>Counted by the patient</source>
            <comment>Counted by the patient</comment>
            <translation>contado por el paciente</translation>
        </message>
        <message>
            <source>Distance end to end</source>
            <comment>Distance end to end</comment>
            <translation>distancia de extremo a extremo</translation>
        </message>
        <message>
            <source>Distance from rest</source>
            <comment>Distance from rest</comment>
            <translation>distancia desde el reposo</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>Dizziness</comment>
            <translation>mareo</translation>
        </message>
        <message>
            <source>Dizziness after last time</source>
            <comment>Dizziness after last time</comment>
            <translation>mareo después de la última vez</translation>
        </message>
        <message>
            <source>Exercises begun</source>
            <comment>Exercises begun</comment>
            <translation>ejercicios empezados</translation>
        </message>
        <message>
            <source>Eye turn per head turn (no diagnostic gain)</source>
            <comment>Eye turn per head turn (no diagnostic gain)</comment>
            <translation>giro del ojo por giro de cabeza (no es ganancia diagnóstica)</translation>
        </message>
        <message>
            <source>Eyes and head together on a thumb held out that moves from side to side</source>
            <comment>Eyes and head together on a thumb held out that moves from side to side</comment>
            <translation>Ojos y cabeza juntos en el pulgar extendido que se mueve</translation>
        </message>
        <message>
            <source>Eyes as they opened</source>
            <comment>Eyes as they opened</comment>
            <translation>ojos al abrirse</translation>
        </message>
        <message>
            <source>Eyes beyond the target</source>
            <comment>Eyes beyond the target</comment>
            <translation>Ojos más allá del punto</translation>
        </message>
        <message>
            <source>Eyes came to rest</source>
            <comment>Eyes came to rest</comment>
            <translation>Los ojos se detuvieron</translation>
        </message>
        <message>
            <source>Eyes closed, blinks included</source>
            <comment>Eyes closed, blinks included</comment>
            <translation>ojos cerrados, parpadeos incluidos</translation>
        </message>
        <message>
            <source>Eyes to camera</source>
            <comment>Eyes to camera</comment>
            <translation>de los ojos a la cámara</translation>
        </message>
        <message>
            <source>Eyes watched</source>
            <comment>Eyes watched</comment>
            <translation>ojos observados</translation>
        </message>
        <message>
            <source>Falls in the last week</source>
            <comment>Falls in the last week</comment>
            <translation>Caídas en la última semana</translation>
        </message>
        <message>
            <source>Field of view known by</source>
            <comment>Field of view known by</comment>
            <translation>campo de visión conocido por</translation>
        </message>
        <message>
            <source>Five stands</source>
            <comment>Five stands</comment>
            <translation>cinco levantadas</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand</source>
            <comment>Five-times sit-to-stand</comment>
            <translation>Cinco veces de sentado a de pie</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</source>
            <comment>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</comment>
            <translation>Cinco veces de sentado a de pie: silla de 43 cm, brazos cruzados, tan rápido como sea seguro</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles</source>
            <comment>Fore-aft weight shift about the ankles</comment>
            <translation>Cambio de peso adelante y atrás sobre los tobillos</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles, gaze level</source>
            <comment>Fore-aft weight shift about the ankles, gaze level</comment>
            <translation>Cambio de peso adelante y atrás sobre los tobillos, mirada al frente</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object</source>
            <comment>Forward bends from a chair to put down and fetch an object</comment>
            <translation>Inclinarse desde la silla para dejar y recoger un objeto</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object (both = 1)</source>
            <comment>Forward bends from a chair to put down and fetch an object (both = 1)</comment>
            <translation>Inclinarse desde la silla para dejar y recoger un objeto (las dos = 1)</translation>
        </message>
        <message>
            <source>Forward shoulder circles</source>
            <comment>Forward shoulder circles</comment>
            <translation>Círculos de hombros hacia delante</translation>
        </message>
        <message>
            <source>Forward shoulder circles, slow</source>
            <comment>Forward shoulder circles, slow</comment>
            <translation>Círculos de hombros hacia delante, lentos</translation>
        </message>
        <message>
            <source>Frame rate</source>
            <comment>Frame rate</comment>
            <translation>frecuencia de imagen</translation>
        </message>
        <message>
            <source>From one to the next</source>
            <comment>From one to the next</comment>
            <translation>de una a la siguiente</translation>
        </message>
        <message>
            <source>Gait forward and backward</source>
            <comment>Gait forward and backward</comment>
            <translation>Marcha adelante y atrás</translation>
        </message>
        <message>
            <source>Gait forward and backward, ten steps each way (= 1)</source>
            <comment>Gait forward and backward, ten steps each way (= 1)</comment>
            <translation>Marcha adelante y atrás, diez pasos en cada sentido (= 1)</translation>
        </message>
        <message>
            <source>Gaze error at set-up</source>
            <comment>Gaze error at set-up</comment>
            <translation>error de mirada en la preparación</translation>
        </message>
        <message>
            <source>Gaze error at the wall</source>
            <comment>Gaze error at the wall</comment>
            <translation>Error de la mirada en la pared</translation>
        </message>
        <message>
            <source>Gaze from target</source>
            <comment>Gaze from target</comment>
            <translation>distancia de la mirada al punto</translation>
        </message>
        <message>
            <source>Glasses</source>
            <comment>Glasses</comment>
            <translation>gafas</translation>
        </message>
        <message>
            <source>Had to hold on</source>
            <comment>Had to hold on</comment>
            <translation>tuvo que agarrarse</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height</source>
            <comment>Hand-to-hand toss over eye height</comment>
            <translation>Lanzar de mano a mano por encima de los ojos</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height, tracked with eyes and head</source>
            <comment>Hand-to-hand toss over eye height, tracked with eyes and head</comment>
            <translation>Lanzar de mano a mano por encima de los ojos, con ojos y cabeza siguiendo</translation>
        </message>
        <message>
            <source>Head shaking in stance on a compliant surface</source>
            <comment>Head shaking in stance on a compliant surface</comment>
            <translation>Giros de cabeza de pie sobre superficie blanda</translation>
        </message>
        <message>
            <source>Head tilts</source>
            <comment>Head tilts</comment>
            <translation>Inclinaciones de cabeza</translation>
        </message>
        <message>
            <source>Head tilts, ear towards the shoulder, right and left</source>
            <comment>Head tilts, ear towards the shoulder, right and left</comment>
            <translation>Inclinaciones de cabeza, oreja hacia el hombro, derecha e izquierda</translation>
        </message>
        <message>
            <source>Head turn against a mark on the wall</source>
            <comment>Head turn against a mark on the wall</comment>
            <translation>giro de cabeza frente a una marca en la pared</translation>
        </message>
        <message>
            <source>Head with the throws</source>
            <comment>Head with the throws</comment>
            <translation>Cabeza en los lanzamientos</translation>
        </message>
        <message>
            <source>Held as asked</source>
            <comment>Held as asked</comment>
            <translation>mantenido como se pedía</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets</source>
            <comment>Horizontal saccades between two targets</comment>
            <translation>Sacadas horizontales entre dos puntos</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets, head still</source>
            <comment>Horizontal saccades between two targets, head still</comment>
            <translation>Sacadas horizontales entre dos puntos, cabeza quieta</translation>
        </message>
        <message>
            <source>Hurt in a fall</source>
            <comment>Hurt in a fall</comment>
            <translation>Lesión en una caída</translation>
        </message>
        <message>
            <source>Lateral weight shift on a compliant surface</source>
            <comment>Lateral weight shift on a compliant surface</comment>
            <translation>Cambio de peso lateral sobre superficie blanda</translation>
        </message>
        <message>
            <source>Length</source>
            <comment>Length</comment>
            <translation>duración</translation>
        </message>
        <message>
            <source>Light on the face, of full</source>
            <comment>Light on the face, of full</comment>
            <translation>luz en la cara, del total</translation>
        </message>
        <message>
            <source>Medicines changed</source>
            <comment>Medicines changed</comment>
            <translation>Cambio de medicamentos</translation>
        </message>
        <message>
            <source>Moments marked</source>
            <comment>Moments marked</comment>
            <translation>Momentos marcados</translation>
        </message>
        <message>
            <source>Nausea</source>
            <comment>Nausea</comment>
            <translation>náuseas</translation>
        </message>
        <message>
            <source>Noticed, in all</source>
            <comment>Noticed, in all</comment>
            <translation>observado, en total</translation>
        </message>
        <message>
            <source>One-leg standing</source>
            <comment>One-leg standing</comment>
            <translation>De pie sobre una pierna</translation>
        </message>
        <message>
            <source>One-leg standing, each leg in turn</source>
            <comment>One-leg standing, each leg in turn</comment>
            <translation>De pie sobre una pierna, cada una por turno</translation>
        </message>
        <message>
            <source>Quiet stance in a corner</source>
            <comment>Quiet stance in a corner</comment>
            <translation>De pie en calma en una esquina</translation>
        </message>
        <message>
            <source>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</source>
            <comment>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</comment>
            <translation>De pie en calma en una esquina, mirada al frente en una marca de la pared (ojos abiertos o cerrados)</translation>
        </message>
        <message>
            <source>Reach of what was asked</source>
            <comment>Reach of what was asked</comment>
            <translation>alcance de lo pedido</translation>
        </message>
        <message>
            <source>Remembered target</source>
            <comment>Remembered target</comment>
            <translation>Punto recordado</translation>
        </message>
        <message>
            <source>Remembered target: eyes shut, head turns, eyes kept where the target was</source>
            <comment>Remembered target: eyes shut, head turns, eyes kept where the target was</comment>
            <translation>Punto recordado: ojos cerrados, gira la cabeza, los ojos se quedan donde estaba el punto</translation>
        </message>
        <message>
            <source>Safety questions</source>
            <comment>Safety questions</comment>
            <translation>preguntas de seguridad</translation>
        </message>
        <message>
            <source>Set stopped for seeing double</source>
            <comment>Set stopped for seeing double</comment>
            <translation>serie parada por ver doble</translation>
        </message>
        <message>
            <source>Single turns</source>
            <comment>Single turns</comment>
            <translation>giros sueltos</translation>
        </message>
        <message>
            <source>Sit-to-stand</source>
            <comment>Sit-to-stand</comment>
            <translation>De sentado a de pie</translation>
        </message>
        <message>
            <source>Sit-to-stand, arm support permitted</source>
            <comment>Sit-to-stand, arm support permitted</comment>
            <translation>De sentado a de pie, con apoyo de brazos permitido</translation>
        </message>
        <message>
            <source>Slow nod</source>
            <comment>Slow nod</comment>
            <translation>inclinación lenta</translation>
        </message>
        <message>
            <source>Slow turn</source>
            <comment>Slow turn</comment>
            <translation>giro lento</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip</source>
            <comment>Slow vergence with a fingertip</comment>
            <translation>Vergencia lenta con la punta del dedo</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip, arm's length to 30 cm, head still</source>
            <comment>Slow vergence with a fingertip, arm's length to 30 cm, head still</comment>
            <translation>Vergencia lenta con la punta del dedo, de un brazo a 30 cm, cabeza quieta</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target</source>
            <comment>Smooth pursuit of a slow target</comment>
            <translation>Seguimiento lento de un punto</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target, head still</source>
            <comment>Smooth pursuit of a slow target, head still</comment>
            <translation>Seguimiento lento de un punto, cabeza quieta</translation>
        </message>
        <message>
            <source>Stands in 30 s</source>
            <comment>Stands in 30 s</comment>
            <translation>levantadas en 30 s</translation>
        </message>
        <message>
            <source>Step up and down with the rail</source>
            <comment>Step up and down with the rail</comment>
            <translation>Subir y bajar un escalón con barandilla</translation>
        </message>
        <message>
            <source>Step up and down with the rail (= 1)</source>
            <comment>Step up and down with the rail (= 1)</comment>
            <translation>Subir y bajar un escalón con barandilla (= 1)</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>Support</comment>
            <translation>apoyo</translation>
        </message>
        <message>
            <source>Sway, 95 % area</source>
            <comment>Sway, 95 % area</comment>
            <translation>balanceo, área del 95 %</translation>
        </message>
        <message>
            <source>Sway, RMS</source>
            <comment>Sway, RMS</comment>
            <translation>balanceo, RMS</translation>
        </message>
        <message>
            <source>Sway, range</source>
            <comment>Sway, range</comment>
            <translation>balanceo, margen</translation>
        </message>
        <message>
            <source>Tandem standing</source>
            <comment>Tandem standing</comment>
            <translation>De pie en tándem</translation>
        </message>
        <message>
            <source>Tandem standing, heel to toe</source>
            <comment>Tandem standing, heel to toe</comment>
            <translation>De pie en tándem, talón con punta</translation>
        </message>
        <message>
            <source>Target looked</source>
            <comment>Target looked</comment>
            <translation>aspecto del punto</translation>
        </message>
        <message>
            <source>Targets left out</source>
            <comment>Targets left out</comment>
            <translation>Puntos omitidos</translation>
        </message>
        <message>
            <source>The head after the drop</source>
            <comment>The head after the drop</comment>
            <translation>La cabeza después de bajar</translation>
        </message>
        <message>
            <source>Throw above the eyes</source>
            <comment>Throw above the eyes</comment>
            <translation>lanzamiento por encima de los ojos</translation>
        </message>
        <message>
            <source>Time</source>
            <comment>Time</comment>
            <translation>tiempo</translation>
        </message>
        <message>
            <source>Time of one way</source>
            <comment>Time of one way</comment>
            <translation>tiempo de un recorrido</translation>
        </message>
        <message>
            <source>Tolerance of a small</source>
            <comment>Tolerance of a small</comment>
            <translation>Tolerancia a un pequeño fondo en movimiento</translation>
        </message>
        <message>
            <source>Tolerance of a small, slow moving background (optokinetic habituation)</source>
            <comment>Tolerance of a small, slow moving background (optokinetic habituation)</comment>
            <translation>Tolerancia a un fondo pequeño que se mueve despacio (habituación optocinética)</translation>
        </message>
        <message>
            <source>Trunk turns with a partner who hands over an object on either side</source>
            <comment>Trunk turns with a partner who hands over an object on either side</comment>
            <translation>Giros del tronco con alguien que entrega un objeto a cada lado</translation>
        </message>
        <message>
            <source>Turning between two targets</source>
            <comment>Turning between two targets</comment>
            <translation>Girar entre dos puntos</translation>
        </message>
        <message>
            <source>Turning between two targets: the eyes first, then the head</source>
            <comment>Turning between two targets: the eyes first, then the head</comment>
            <translation>Girar entre dos puntos: primero los ojos, luego la cabeza</translation>
        </message>
        <message>
            <source>Uncertainty, ±</source>
            <comment>Uncertainty, ±</comment>
            <translation>Incertidumbre, ±</translation>
        </message>
        <message>
            <source>Unsteadiness</source>
            <comment>Unsteadiness</comment>
            <translation>inestabilidad</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets</source>
            <comment>Vertical saccades between two targets</comment>
            <translation>Sacadas verticales entre dos puntos</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets, small at first, head still</source>
            <comment>Vertical saccades between two targets, small at first, head still</comment>
            <translation>Sacadas verticales entre dos puntos, pequeñas al principio, cabeza quieta</translation>
        </message>
        <message>
            <source>Wall, from mark to mark</source>
            <comment>Wall, from mark to mark</comment>
            <translation>Pared, de marca a marca</translation>
        </message>
        <message>
            <source>Wall, from the eyes</source>
            <comment>Wall, from the eyes</comment>
            <translation>Pared, desde los ojos</translation>
        </message>
        <message>
            <source>Wall, marks above the camera</source>
            <comment>Wall, marks above the camera</comment>
            <translation>Pared, marcas por encima de la cámara</translation>
        </message>
        <message>
            <source>Wall, marks right of the camera</source>
            <comment>Wall, marks right of the camera</comment>
            <translation>Pared, marcas a la derecha de la cámara</translation>
        </message>
        <message>
            <source>Way of the rolls</source>
            <comment>Way of the rolls</comment>
            <translation>sentido de los círculos</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, amplitude</source>
            <comment>Worst on rendered heads in good light, amplitude</comment>
            <translation>Mayor error en cabezas generadas con buena luz, amplitud</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, gaze</source>
            <comment>Worst on rendered heads in good light, gaze</comment>
            <translation>Mayor error en cabezas generadas con buena luz, mirada</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, head angle</source>
            <comment>Worst on rendered heads in good light, head angle</comment>
            <translation>Mayor error en cabezas generadas con buena luz, ángulo de la cabeza</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, peak speed</source>
            <comment>Worst on rendered heads in good light, peak speed</comment>
            <translation>Mayor error en cabezas generadas con buena luz, velocidad máxima</translation>
        </message>
        <message>
            <source>a camera's frame rate can't carry the speed of an eye jump</source>
            <comment>a camera's frame rate can't carry the speed of an eye jump</comment>
            <translation>la frecuencia de imagen de una cámara no alcanza para la velocidad de un salto del ojo</translation>
        </message>
        <message>
            <source>a fall, told in the question of the week</source>
            <comment>a fall, told in the question of the week</comment>
            <translation>una caída, contada en la pregunta semanal</translation>
        </message>
        <message>
            <source>a safety question ended it</source>
            <comment>a safety question ended it</comment>
            <translation>terminada por una pregunta de seguridad</translation>
        </message>
        <message>
            <source>a set was made easier than the plan has it</source>
            <comment>a set was made easier than the plan has it</comment>
            <translation>una serie se hizo más fácil de lo que indica el plan</translation>
        </message>
        <message>
            <source>a short spin on bending or tilting ends it: hold on and sit; you read of it first</source>
            <comment>a short spin on bending or tilting ends it: hold on and sit; you read of it first</comment>
            <translation>un giro breve al agacharse o inclinarse lo termina: agarrarse y sentarse; usted lo lee lo primero</translation>
        </message>
        <message>
            <source>a target held in the hand</source>
            <comment>a target held in the hand</comment>
            <translation>un punto sostenido en la mano</translation>
        </message>
        <message>
            <source>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</source>
            <comment>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</comment>
            <translation>una serie de medidas sola: no se sabe si hubo preparación ni lo bien que se leyó la mirada</translation>
        </message>
        <message>
            <source>a try of the program, not practice</source>
            <comment>a try of the program, not practice</comment>
            <translation>prueba del programa, no práctica</translation>
        </message>
        <message>
            <source>after</source>
            <comment>after</comment>
            <translation>después</translation>
        </message>
        <message>
            <source>all answered no</source>
            <comment>all answered no</comment>
            <translation>todas respondidas que no</translation>
        </message>
        <message>
            <source>amplitude</source>
            <comment>amplitude</comment>
            <translation>amplitud</translation>
        </message>
        <message>
            <source>amplitude too large</source>
            <comment>amplitude too large</comment>
            <translation>amplitud demasiado grande</translation>
        </message>
        <message>
            <source>amplitude too small</source>
            <comment>amplitude too small</comment>
            <translation>amplitud demasiado pequeña</translation>
        </message>
        <message>
            <source>an earlier session of the day had to be ended</source>
            <comment>an earlier session of the day had to be ended</comment>
            <translation>una sesión anterior de ese día tuvo que terminarse</translation>
        </message>
        <message>
            <source>and was hurt</source>
            <comment>and was hurt</comment>
            <translation>con lesión</translation>
        </message>
        <message>
            <source>another exercise was asked for</source>
            <comment>another exercise was asked for</comment>
            <translation>se pedía otro ejercicio</translation>
        </message>
        <message>
            <source>answered yes: {what}</source>
            <comment>answered yes: {what}</comment>
            <translation>respondió sí: {what}</translation>
        </message>
        <message>
            <source>asked</source>
            <comment>asked</comment>
            <translation>pedido</translation>
        </message>
        <message>
            <source>asked after it</source>
            <comment>asked after it</comment>
            <translation>preguntado después</translation>
        </message>
        <message>
            <source>back</source>
            <comment>back</comment>
            <translation>atrás</translation>
        </message>
        <message>
            <source>before</source>
            <comment>before</comment>
            <translation>antes</translation>
        </message>
        <message>
            <source>below average ({bound} {limit} is below)</source>
            <comment>below average ({bound} {limit} is below)</comment>
            <translation>por debajo de la media ({bound} {limit} es por debajo)</translation>
        </message>
        <message>
            <source>bending at the hip</source>
            <comment>bending at the hip</comment>
            <translation>doblar la cadera</translation>
        </message>
        <message>
            <source>beside the target</source>
            <comment>beside the target</comment>
            <translation>al lado del punto</translation>
        </message>
        <message>
            <source>beyond it</source>
            <comment>beyond it</comment>
            <translation>más allá</translation>
        </message>
        <message>
            <source>bi- or varifocal</source>
            <comment>bi- or varifocal</comment>
            <translation>bifocal o progresiva</translation>
        </message>
        <message>
            <source>bi- or varifocal glasses in nods</source>
            <comment>bi- or varifocal glasses in nods</comment>
            <translation>gafas bifocales o progresivas al mover la cabeza arriba y abajo</translation>
        </message>
        <message>
            <source>blackout</source>
            <comment>blackout</comment>
            <translation>pérdida de conciencia</translation>
        </message>
        <message>
            <source>blurred</source>
            <comment>blurred</comment>
            <translation>borroso</translation>
        </message>
        <message>
            <source>both</source>
            <comment>both</comment>
            <translation>los dos</translation>
        </message>
        <message>
            <source>both, in turn</source>
            <comment>both, in turn</comment>
            <translation>los dos, por turnos</translation>
        </message>
        <message>
            <source>broke off (program or computer)</source>
            <comment>broke off (program or computer)</comment>
            <translation>interrumpida (programa u ordenador)</translation>
        </message>
        <message>
            <source>camera gone for some of it</source>
            <comment>camera gone for some of it</comment>
            <translation>la cámara faltó una parte del tiempo</translation>
        </message>
        <message>
            <source>catch-up saccades below 2 degrees, and how fast any of them are</source>
            <comment>catch-up saccades below 2 degrees, and how fast any of them are</comment>
            <translation>sacadas de corrección de menos de 2 grados, y la velocidad de cualquiera de ellas</translation>
        </message>
        <message>
            <source>chair against the wall, no wheels</source>
            <comment>chair against the wall, no wheels</comment>
            <translation>silla contra la pared, sin ruedas</translation>
        </message>
        <message>
            <source>chest pain</source>
            <comment>chest pain</comment>
            <translation>dolor en el pecho</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>chin down</comment>
            <translation>barbilla baja</translation>
        </message>
        <message>
            <source>clear</source>
            <comment>clear</comment>
            <translation>claro</translation>
        </message>
        <message>
            <source>clear lit floor; helper at the side, behind when walking backward</source>
            <comment>clear lit floor; helper at the side, behind when walking backward</comment>
            <translation>suelo despejado e iluminado; ayudante al lado, detrás al caminar hacia atrás</translation>
        </message>
        <message>
            <source>clearance checklist not ticked</source>
            <comment>clearance checklist not ticked</comment>
            <translation>lista de autorización sin marcar</translation>
        </message>
        <message>
            <source>closed the question without saying</source>
            <comment>closed the question without saying</comment>
            <translation>cerró la pregunta sin decir nada</translation>
        </message>
        <message>
            <source>condition met: {what}</source>
            <comment>condition met: {what}</comment>
            <translation>condición cumplida: {what}</translation>
        </message>
        <message>
            <source>confirmed</source>
            <comment>confirmed</comment>
            <translation>confirmado</translation>
        </message>
        <message>
            <source>corner and chair</source>
            <comment>corner and chair</comment>
            <translation>esquina y silla</translation>
        </message>
        <message>
            <source>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</source>
            <comment>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</comment>
            <translation>esquina detrás, silla estable delante o ayudante; zapatos planos cerrados, o pies descalzos</translation>
        </message>
        <message>
            <source>counted within</source>
            <comment>counted within</comment>
            <translation>contado dentro de</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>dark</comment>
            <translation>oscuro</translation>
        </message>
        <message>
            <source>did not answer</source>
            <comment>did not answer</comment>
            <translation>no respondió</translation>
        </message>
        <message>
            <source>differs between the exercises</source>
            <comment>differs between the exercises</comment>
            <translation>distinto según el ejercicio</translation>
        </message>
        <message>
            <source>dizziness after</source>
            <comment>dizziness after</comment>
            <translation>mareo después</translation>
        </message>
        <message>
            <source>dizziness before</source>
            <comment>dizziness before</comment>
            <translation>mareo antes</translation>
        </message>
        <message>
            <source>dizziness unlike the usual</source>
            <comment>dizziness unlike the usual</comment>
            <translation>mareo distinto del habitual</translation>
        </message>
        <message>
            <source>dizziness, next morning</source>
            <comment>dizziness, next morning</comment>
            <translation>mareo, mañana siguiente</translation>
        </message>
        <message>
            <source>dizziness, rest of the day</source>
            <comment>dizziness, rest of the day</comment>
            <translation>mareo, resto del día</translation>
        </message>
        <message>
            <source>double</source>
            <comment>double</comment>
            <translation>doble</translation>
        </message>
        <message>
            <source>double image (asked)</source>
            <comment>double image (asked)</comment>
            <translation>imagen doble (preguntado)</translation>
        </message>
        <message>
            <source>double vision</source>
            <comment>double vision</comment>
            <translation>visión doble</translation>
        </message>
        <message>
            <source>down</source>
            <comment>down</comment>
            <translation>abajo</translation>
        </message>
        <message>
            <source>end to end</source>
            <comment>end to end</comment>
            <translation>de extremo a extremo</translation>
        </message>
        <message>
            <source>ended by a safety question</source>
            <comment>ended by a safety question</comment>
            <translation>terminada por una pregunta de seguridad</translation>
        </message>
        <message>
            <source>ended by the symptom rule</source>
            <comment>ended by the symptom rule</comment>
            <translation>terminada por la regla de síntomas</translation>
        </message>
        <message>
            <source>error</source>
            <comment>error</comment>
            <translation>error</translation>
        </message>
        <message>
            <source>expected</source>
            <comment>expected</comment>
            <translation>esperado</translation>
        </message>
        <message>
            <source>eye movement short of the target</source>
            <comment>eye movement short of the target</comment>
            <translation>movimiento ocular que no llega al punto</translation>
        </message>
        <message>
            <source>eye movements that stop short of the target</source>
            <comment>eye movements that stop short of the target</comment>
            <translation>movimientos oculares que no llegan al punto</translation>
        </message>
        <message>
            <source>eyes and head together, not the eyes first</source>
            <comment>eyes and head together, not the eyes first</comment>
            <translation>ojos y cabeza a la vez, no los ojos primero</translation>
        </message>
        <message>
            <source>eyes beyond the range of the set-up</source>
            <comment>eyes beyond the range of the set-up</comment>
            <translation>ojos fuera del margen de la preparación</translation>
        </message>
        <message>
            <source>eyes beyond the set-up</source>
            <comment>eyes beyond the set-up</comment>
            <translation>ojos fuera de la preparación</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>eyes closed</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>eyes did not follow the finger</source>
            <comment>eyes did not follow the finger</comment>
            <translation>los ojos no siguieron el dedo</translation>
        </message>
        <message>
            <source>eyes not with the head</source>
            <comment>eyes not with the head</comment>
            <translation>los ojos no van con la cabeza</translation>
        </message>
        <message>
            <source>eyes open</source>
            <comment>eyes open</comment>
            <translation>ojos abiertos</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>eyes opened</comment>
            <translation>ojos abiertos</translation>
        </message>
        <message>
            <source>eyes shut</source>
            <comment>eyes shut</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>eyes unlike the set-up</source>
            <comment>eyes unlike the set-up</comment>
            <translation>ojos distintos de la preparación</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up</source>
            <comment>eyes unlike those of the set-up</comment>
            <translation>ojos distintos de los de la preparación</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up around then</source>
            <comment>eyes unlike those of the set-up around then</comment>
            <translation>ojos distintos a los de la preparación en torno a ese momento</translation>
        </message>
        <message>
            <source>face covered, or its light changed</source>
            <comment>face covered, or its light changed</comment>
            <translation>cara tapada, o su luz cambió</translation>
        </message>
        <message>
            <source>fall since the last session</source>
            <comment>fall since the last session</comment>
            <translation>caída desde la última sesión</translation>
        </message>
        <message>
            <source>far</source>
            <comment>far</comment>
            <translation>lejos</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>faster than the beat</comment>
            <translation>más rápido que el ritmo</translation>
        </message>
        <message>
            <source>faster was asked towards the end</source>
            <comment>faster was asked towards the end</comment>
            <translation>hacia el final se pedía más rápido</translation>
        </message>
        <message>
            <source>fell</source>
            <comment>fell</comment>
            <translation>bajó</translation>
        </message>
        <message>
            <source>fewer than</source>
            <comment>fewer than</comment>
            <translation>menos de</translation>
        </message>
        <message>
            <source>fewer than five stands</source>
            <comment>fewer than five stands</comment>
            <translation>menos de cinco levantadas</translation>
        </message>
        <message>
            <source>fewer than ten repetitions</source>
            <comment>fewer than ten repetitions</comment>
            <translation>menos de diez repeticiones</translation>
        </message>
        <message>
            <source>fewer than two repetitions</source>
            <comment>fewer than two repetitions</comment>
            <translation>menos de dos repeticiones</translation>
        </message>
        <message>
            <source>fewer than two turns</source>
            <comment>fewer than two turns</comment>
            <translation>menos de dos giros</translation>
        </message>
        <message>
            <source>figures can't be trusted in {bad} of the last {all} sets: {why}</source>
            <comment>figures can't be trusted in {bad} of the last {all} sets: {why}</comment>
            <translation>valores no fiables en {bad} de las últimas {all} series: {why}</translation>
        </message>
        <message>
            <source>finished</source>
            <comment>finished</comment>
            <translation>terminada</translation>
        </message>
        <message>
            <source>firm chair without wheels; feet flat, no reaching beyond the knees at first</source>
            <comment>firm chair without wheels; feet flat, no reaching beyond the knees at first</comment>
            <translation>silla firme sin ruedas; pies planos, al principio sin pasar de las rodillas</translation>
        </message>
        <message>
            <source>firm surface</source>
            <comment>firm surface</comment>
            <translation>superficie firme</translation>
        </message>
        <message>
            <source>first against last five</source>
            <comment>first against last five</comment>
            <translation>primeras cinco frente a últimas cinco</translation>
        </message>
        <message>
            <source>first five</source>
            <comment>first five</comment>
            <translation>primeras cinco</translation>
        </message>
        <message>
            <source>fore-aft</source>
            <comment>fore-aft</comment>
            <translation>adelante y atrás</translation>
        </message>
        <message>
            <source>forward</source>
            <comment>forward</comment>
            <translation>adelante</translation>
        </message>
        <message>
            <source>gaze and target were never measured together</source>
            <comment>gaze and target were never measured together</comment>
            <translation>la mirada y el punto nunca se midieron juntos</translation>
        </message>
        <message>
            <source>gaze off target</source>
            <comment>gaze off target</comment>
            <translation>mirada fuera del punto</translation>
        </message>
        <message>
            <source>gaze on target</source>
            <comment>gaze on target</comment>
            <translation>mirada en el punto</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % ({name})</source>
            <comment>gaze on target fell from {first} to {last} % ({name})</comment>
            <translation>la mirada en el punto bajó de {first} a {last} % ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</comment>
            <translation>la mirada en el punto bajó de {first} a {last} %, cabeza hacia: {side} ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</comment>
            <translation>la mirada en el punto bajó de {first} a {last} %, cabeza hacia: {side}, menos hacia el otro lado ({name})</translation>
        </message>
        <message>
            <source>gaze stabilisation: {measured} minutes a day measured, {reported} told of</source>
            <comment>gaze stabilisation: {measured} minutes a day measured, {reported} told of</comment>
            <translation>estabilización de la mirada: {measured} minutos al día medidos, {reported} referidos</translation>
        </message>
        <message>
            <source>gaze while bent</source>
            <comment>gaze while bent</comment>
            <translation>la mirada al agacharse</translation>
        </message>
        <message>
            <source>half a minute to try the program out: not counted as practice</source>
            <comment>half a minute to try the program out: not counted as practice</comment>
            <translation>medio minuto para probar el programa: no cuenta como práctica</translation>
        </message>
        <message>
            <source>hand on the rail, helper one step below, shoes on, eyes open</source>
            <comment>hand on the rail, helper one step below, shoes on, eyes open</comment>
            <translation>mano en la barandilla, ayudante un escalón más abajo, con zapatos, ojos abiertos</translation>
        </message>
        <message>
            <source>head away from its middle</source>
            <comment>head away from its middle</comment>
            <translation>cabeza fuera de su centro</translation>
        </message>
        <message>
            <source>head before the eyes</source>
            <comment>head before the eyes</comment>
            <translation>la cabeza antes que los ojos</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>head moved along</comment>
            <translation>la cabeza se movió también</translation>
        </message>
        <message>
            <source>head shake</source>
            <comment>head shake</comment>
            <translation>giros de cabeza</translation>
        </message>
        <message>
            <source>head turned in place of tilting</source>
            <comment>head turned in place of tilting</comment>
            <translation>cabeza girada en vez de inclinada</translation>
        </message>
        <message>
            <source>head turned too far</source>
            <comment>head turned too far</comment>
            <translation>cabeza demasiado girada</translation>
        </message>
        <message>
            <source>head with the target, not against it</source>
            <comment>head with the target, not against it</comment>
            <translation>la cabeza con el punto, no en contra</translation>
        </message>
        <message>
            <source>held on</source>
            <comment>held on</comment>
            <translation>se agarró</translation>
        </message>
        <message>
            <source>helper within arm's reach; a firm cushion that does not slip</source>
            <comment>helper within arm's reach; a firm cushion that does not slip</comment>
            <translation>ayudante al alcance del brazo; un cojín firme que no resbale</translation>
        </message>
        <message>
            <source>helper within reach</source>
            <comment>helper within reach</comment>
            <translation>ayudante al alcance</translation>
        </message>
        <message>
            <source>holding on to the wall or the chair (asked)</source>
            <comment>holding on to the wall or the chair (asked)</comment>
            <translation>agarrarse a la pared o la silla (preguntado)</translation>
        </message>
        <message>
            <source>holds for</source>
            <comment>holds for</comment>
            <translation>vale para</translation>
        </message>
        <message>
            <source>how far the eyes go up and down (only coarsely)</source>
            <comment>how far the eyes go up and down (only coarsely)</comment>
            <translation>hasta dónde van los ojos arriba y abajo (solo aproximado)</translation>
        </message>
        <message>
            <source>how far the eyes turn in</source>
            <comment>how far the eyes turn in</comment>
            <translation>cuánto giran los ojos hacia dentro</translation>
        </message>
        <message>
            <source>how far the turns went was not seen</source>
            <comment>how far the turns went was not seen</comment>
            <translation>no se vio hasta dónde llegaron los giros</translation>
        </message>
        <message>
            <source>how high the shoulders really go (their landmarks follow about half)</source>
            <comment>how high the shoulders really go (their landmarks follow about half)</comment>
            <translation>hasta qué altura suben de verdad los hombros (sus puntos siguen más o menos la mitad)</translation>
        </message>
        <message>
            <source>how it ended is not known</source>
            <comment>how it ended is not known</comment>
            <translation>no se sabe cómo terminó</translation>
        </message>
        <message>
            <source>how near the finger really comes (its cycles are counted where the arm is seen)</source>
            <comment>how near the finger really comes (its cycles are counted where the arm is seen)</comment>
            <translation>hasta dónde se acerca de verdad el dedo (sus ciclos se cuentan donde se ve el brazo)</translation>
        </message>
        <message>
            <source>in a try of the program: {text}</source>
            <comment>in a try of the program: {text}</comment>
            <translation>en una prueba del programa: {text}</translation>
        </message>
        <message>
            <source>in the plan, changed in the call</source>
            <comment>in the plan, changed in the call</comment>
            <translation>en el plan, cambiado en la llamada</translation>
        </message>
        <message>
            <source>it broke off</source>
            <comment>it broke off</comment>
            <translation>se interrumpió</translation>
        </message>
        <message>
            <source>it ended with a possible fall</source>
            <comment>it ended with a possible fall</comment>
            <translation>terminó con una posible caída</translation>
        </message>
        <message>
            <source>it is held for a time: there is nothing to count</source>
            <comment>it is held for a time: there is nothing to count</comment>
            <translation>se mantiene un tiempo: no hay nada que contar</translation>
        </message>
        <message>
            <source>it is in words only, and the therapist has not said so yet</source>
            <comment>it is in words only, and the therapist has not said so yet</comment>
            <translation>está solo en palabras, y el terapeuta aún no lo ha dicho</translation>
        </message>
        <message>
            <source>it was stopped unwell</source>
            <comment>it was stopped unwell</comment>
            <translation>parada por malestar</translation>
        </message>
        <message>
            <source>its end is not recorded</source>
            <comment>its end is not recorded</comment>
            <translation>su final no está registrado</translation>
        </message>
        <message>
            <source>its end was out of the picture</source>
            <comment>its end was out of the picture</comment>
            <translation>su final estaba fuera de la imagen</translation>
        </message>
        <message>
            <source>its target can only be shown to who sits before the screen</source>
            <comment>its target can only be shown to who sits before the screen</comment>
            <translation>su punto solo se puede mostrar a quien está sentado ante la pantalla</translation>
        </message>
        <message>
            <source>its target had too little room on the screen for anything to be counted</source>
            <comment>its target had too little room on the screen for anything to be counted</comment>
            <translation>el punto tenía muy poco sitio en la pantalla para poder contar algo</translation>
        </message>
        <message>
            <source>jumping</source>
            <comment>jumping</comment>
            <translation>saltando</translation>
        </message>
        <message>
            <source>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</source>
            <comment>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</comment>
            <translation>k = 2 (cerca del 95 %): ruido y tiempos de las imágenes, error de la preparación; no la dispersión propia de la persona</translation>
        </message>
        <message>
            <source>last five</source>
            <comment>last five</comment>
            <translation>últimas cinco</translation>
        </message>
        <message>
            <source>last five less first five (means)</source>
            <comment>last five less first five (means)</comment>
            <translation>últimas cinco menos primeras cinco (medias)</translation>
        </message>
        <message>
            <source>left</source>
            <comment>left</comment>
            <translation>izquierda</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>left eye only</comment>
            <translation>solo el ojo izquierdo</translation>
        </message>
        <message>
            <source>left out by the patient</source>
            <comment>left out by the patient</comment>
            <translation>omitido por el paciente</translation>
        </message>
        <message>
            <source>left out by the patient, as no camera could be used</source>
            <comment>left out by the patient, as no camera could be used</comment>
            <translation>omitido por el paciente, porque ninguna cámara servía</translation>
        </message>
        <message>
            <source>left the picture</source>
            <comment>left the picture</comment>
            <translation>fuera de la imagen</translation>
        </message>
        <message>
            <source>light on the face {value} of 1</source>
            <comment>light on the face {value} of 1</comment>
            <translation>luz en la cara {value} de 1</translation>
        </message>
        <message>
            <source>line of sight not fitted</source>
            <comment>line of sight not fitted</comment>
            <translation>línea de mirada sin ajustar</translation>
        </message>
        <message>
            <source>line of sight steadily beside the target</source>
            <comment>line of sight steadily beside the target</comment>
            <translation>mirada siempre un poco al lado del punto</translation>
        </message>
        <message>
            <source>longer than</source>
            <comment>longer than</comment>
            <translation>más de</translation>
        </message>
        <message>
            <source>longest stretch</source>
            <comment>longest stretch</comment>
            <translation>tramo más largo</translation>
        </message>
        <message>
            <source>lost while it dropped</source>
            <comment>lost while it dropped</comment>
            <translation>se perdió de vista al bajar</translation>
        </message>
        <message>
            <source>low frame rate</source>
            <comment>low frame rate</comment>
            <translation>frecuencia de imagen baja</translation>
        </message>
        <message>
            <source>made from clips</source>
            <comment>made from clips</comment>
            <translation>hecho a partir de vídeos</translation>
        </message>
        <message>
            <source>made from clips: the times between the sets are the plan's, nobody was there</source>
            <comment>made from clips: the times between the sets are the plan's, nobody was there</comment>
            <translation>hecho a partir de vídeos: los tiempos entre series son los del plan, no había nadie</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>marks on the wall</comment>
            <translation>marcas en la pared</translation>
        </message>
        <message>
            <source>measured only part of the time</source>
            <comment>measured only part of the time</comment>
            <translation>medido solo parte del tiempo</translation>
        </message>
        <message>
            <source>measured too unsteadily for so small a movement</source>
            <comment>measured too unsteadily for so small a movement</comment>
            <translation>medido con demasiada inestabilidad para un movimiento tan pequeño</translation>
        </message>
        <message>
            <source>measured with a card</source>
            <comment>measured with a card</comment>
            <translation>medido con una tarjeta</translation>
        </message>
        <message>
            <source>measured with a sheet</source>
            <comment>measured with a sheet</comment>
            <translation>medido con una hoja</translation>
        </message>
        <message>
            <source>measuring was starting again</source>
            <comment>measuring was starting again</comment>
            <translation>la medición empezaba de nuevo</translation>
        </message>
        <message>
            <source>met in the last {needed} sessions</source>
            <comment>met in the last {needed} sessions</comment>
            <translation>cumplida en las últimas {needed} sesiones</translation>
        </message>
        <message>
            <source>minutes to settle {value}, asked at most {most}</source>
            <comment>minutes to settle {value}, asked at most {most}</comment>
            <translation>minutos hasta calmarse {value}, pedido como máximo {most}</translation>
        </message>
        <message>
            <source>more than one fall</source>
            <comment>more than one fall</comment>
            <translation>más de una caída</translation>
        </message>
        <message>
            <source>more was asked towards the end</source>
            <comment>more was asked towards the end</comment>
            <translation>hacia el final se pedía más</translation>
        </message>
        <message>
            <source>nausea after</source>
            <comment>nausea after</comment>
            <translation>náuseas después</translation>
        </message>
        <message>
            <source>nausea before</source>
            <comment>nausea before</comment>
            <translation>náuseas antes</translation>
        </message>
        <message>
            <source>near</source>
            <comment>near</comment>
            <translation>cerca</translation>
        </message>
        <message>
            <source>neck pain</source>
            <comment>neck pain</comment>
            <translation>dolor de cuello</translation>
        </message>
        <message>
            <source>neither voice nor reader</source>
            <comment>neither voice nor reader</comment>
            <translation>ni voz ni lector</translation>
        </message>
        <message>
            <source>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</source>
            <comment>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</comment>
            <translation>nunca con epilepsia fotosensible o migraña provocada por patrones; no más de tres destellos en un segundo</translation>
        </message>
        <message>
            <source>next morning</source>
            <comment>next morning</comment>
            <translation>mañana siguiente</translation>
        </message>
        <message>
            <source>no</source>
            <comment>no</comment>
            <translation>no</translation>
        </message>
        <message>
            <source>no bouts</source>
            <comment>no bouts</comment>
            <translation>ninguna práctica</translation>
        </message>
        <message>
            <source>no change</source>
            <comment>no change</comment>
            <translation>sin cambio</translation>
        </message>
        <message>
            <source>no clip of it</source>
            <comment>no clip of it</comment>
            <translation>sin vídeo de ello</translation>
        </message>
        <message>
            <source>no cue when shut eyes open; the summary gives the share of time shut</source>
            <comment>no cue when shut eyes open; the summary gives the share of time shut</comment>
            <translation>sin aviso cuando se abren los ojos; el resumen da la parte del tiempo con ellos cerrados</translation>
        </message>
        <message>
            <source>no day to count yet</source>
            <comment>no day to count yet</comment>
            <translation>todavía ningún día que contar</translation>
        </message>
        <message>
            <source>no face in the picture</source>
            <comment>no face in the picture</comment>
            <translation>ninguna cara en la imagen</translation>
        </message>
        <message>
            <source>no face seen</source>
            <comment>no face seen</comment>
            <translation>no se vio ninguna cara</translation>
        </message>
        <message>
            <source>no fall</source>
            <comment>no fall</comment>
            <translation>ninguna caída</translation>
        </message>
        <message>
            <source>no fall was told</source>
            <comment>no fall was told</comment>
            <translation>no se indicó ninguna caída</translation>
        </message>
        <message>
            <source>no gaze set-up</source>
            <comment>no gaze set-up</comment>
            <translation>sin preparación de la mirada</translation>
        </message>
        <message>
            <source>no helper</source>
            <comment>no helper</comment>
            <translation>sin ayudante</translation>
        </message>
        <message>
            <source>no marks on the wall</source>
            <comment>no marks on the wall</comment>
            <translation>sin marcas en la pared</translation>
        </message>
        <message>
            <source>no pain in shoulder or neck; keep the movement small at first</source>
            <comment>no pain in shoulder or neck; keep the movement small at first</comment>
            <translation>sin dolor en hombro o cuello; al principio movimiento pequeño</translation>
        </message>
        <message>
            <source>no picture from the camera</source>
            <comment>no picture from the camera</comment>
            <translation>sin imagen de la cámara</translation>
        </message>
        <message>
            <source>no practice for {days} days</source>
            <comment>no practice for {days} days</comment>
            <translation>sin práctica desde hace {days} días</translation>
        </message>
        <message>
            <source>no practice that day</source>
            <comment>no practice that day</comment>
            <translation>sin práctica ese día</translation>
        </message>
        <message>
            <source>no reason recorded</source>
            <comment>no reason recorded</comment>
            <translation>sin motivo registrado</translation>
        </message>
        <message>
            <source>no score at the start</source>
            <comment>no score at the start</comment>
            <translation>sin puntuación al empezar</translation>
        </message>
        <message>
            <source>no set-up</source>
            <comment>no set-up</comment>
            <translation>sin preparación</translation>
        </message>
        <message>
            <source>no set-up for this person: generic values were used</source>
            <comment>no set-up for this person: generic values were used</comment>
            <translation>sin preparación para esta persona: se usaron valores generales</translation>
        </message>
        <message>
            <source>no throw was counted</source>
            <comment>no throw was counted</comment>
            <translation>no se contó ningún lanzamiento</translation>
        </message>
        <message>
            <source>no turn was counted</source>
            <comment>no turn was counted</comment>
            <translation>no se contó ningún giro</translation>
        </message>
        <message>
            <source>nobody has measured how well these eyes are read</source>
            <comment>nobody has measured how well these eyes are read</comment>
            <translation>nadie ha medido lo bien que se leen estos ojos</translation>
        </message>
        <message>
            <source>nobody was asked</source>
            <comment>nobody was asked</comment>
            <translation>no se preguntó a nadie</translation>
        </message>
        <message>
            <source>none</source>
            <comment>none</comment>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>none was counted</source>
            <comment>none was counted</comment>
            <translation>no se contó ninguna</translation>
        </message>
        <message>
            <source>not answered</source>
            <comment>not answered</comment>
            <translation>sin respuesta</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>not asked</comment>
            <translation>sin preguntar</translation>
        </message>
        <message>
            <source>not back to usual in the time that the plan allows</source>
            <comment>not back to usual in the time that the plan allows</comment>
            <translation>sin volver a lo habitual en el tiempo que permite el plan</translation>
        </message>
        <message>
            <source>not below average ({bound} {limit} is below)</source>
            <comment>not below average ({bound} {limit} is below)</comment>
            <translation>no por debajo de la media ({bound} {limit} es por debajo)</translation>
        </message>
        <message>
            <source>not every stand was all the way up</source>
            <comment>not every stand was all the way up</comment>
            <translation>no todas las levantadas fueron completas</translation>
        </message>
        <message>
            <source>not fully upright</source>
            <comment>not fully upright</comment>
            <translation>sin enderezarse del todo</translation>
        </message>
        <message>
            <source>not hurt</source>
            <comment>not hurt</comment>
            <translation>sin lesión</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>not known</comment>
            <translation>no se sabe</translation>
        </message>
        <message>
            <source>not known for the speed of eyes</source>
            <comment>not known for the speed of eyes</comment>
            <translation>no se conoce para la velocidad de los ojos</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>not measured</comment>
            <translation>no medido</translation>
        </message>
        <message>
            <source>not measured in each of them</source>
            <comment>not measured in each of them</comment>
            <translation>no medido en cada una de ellas</translation>
        </message>
        <message>
            <source>not reckoned for a share of what was asked</source>
            <comment>not reckoned for a share of what was asked</comment>
            <translation>no se calcula para una parte de lo pedido</translation>
        </message>
        <message>
            <source>not reckoned for shoulders and hands</source>
            <comment>not reckoned for shoulders and hands</comment>
            <translation>no se calcula para hombros y manos</translation>
        </message>
        <message>
            <source>not reckoned for standing up and bending down</source>
            <comment>not reckoned for standing up and bending down</comment>
            <translation>no se calcula al levantarse ni al agacharse</translation>
        </message>
        <message>
            <source>not recorded</source>
            <comment>not recorded</comment>
            <translation>sin registrar</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>not seen</comment>
            <translation>no visto</translation>
        </message>
        <message>
            <source>not settled</source>
            <comment>not settled</comment>
            <translation>sin calmarse</translation>
        </message>
        <message>
            <source>not sure</source>
            <comment>not sure</comment>
            <translation>no está seguro</translation>
        </message>
        <message>
            <source>not told</source>
            <comment>not told</comment>
            <translation>sin determinar</translation>
        </message>
        <message>
            <source>not unlocked yet</source>
            <comment>not unlocked yet</comment>
            <translation>aún sin abrir</translation>
        </message>
        <message>
            <source>nothing is measured: led by voice and timed, the patient's own count</source>
            <comment>nothing is measured: led by voice and timed, the patient's own count</comment>
            <translation>no se mide nada: guiado por voz y por tiempo, cuenta el paciente</translation>
        </message>
        <message>
            <source>nothing is watched for in this exercise</source>
            <comment>nothing is watched for in this exercise</comment>
            <translation>en este ejercicio no se vigila nada</translation>
        </message>
        <message>
            <source>nothing was asked for</source>
            <comment>nothing was asked for</comment>
            <translation>no se pedía nada</translation>
        </message>
        <message>
            <source>nothing was measured</source>
            <comment>nothing was measured</comment>
            <translation>no se midió nada</translation>
        </message>
        <message>
            <source>older: {text}</source>
            <comment>older: {text}</comment>
            <translation>anterior: {text}</translation>
        </message>
        <message>
            <source>on looks kept back</source>
            <comment>on looks kept back</comment>
            <translation>en miradas reservadas</translation>
        </message>
        <message>
            <source>on the target</source>
            <comment>on the target</comment>
            <translation>en el punto</translation>
        </message>
        <message>
            <source>one fall</source>
            <comment>one fall</comment>
            <translation>una caída</translation>
        </message>
        <message>
            <source>opens only with the patient's yes</source>
            <comment>opens only with the patient's yes</comment>
            <translation>se abre solo con el sí del paciente</translation>
        </message>
        <message>
            <source>order</source>
            <comment>order</comment>
            <translation>orden</translation>
        </message>
        <message>
            <source>outside any plan: {text}</source>
            <comment>outside any plan: {text}</comment>
            <translation>fuera de todo plan: {text}</translation>
        </message>
        <message>
            <source>own pace</source>
            <comment>own pace</comment>
            <translation>a su propio paso</translation>
        </message>
        <message>
            <source>partner near and steady on their feet; hand over, do not throw</source>
            <comment>partner near and steady on their feet; hand over, do not throw</comment>
            <translation>la otra persona cerca y estable; entregar, no lanzar</translation>
        </message>
        <message>
            <source>peak speed</source>
            <comment>peak speed</comment>
            <translation>velocidad máxima</translation>
        </message>
        <message>
            <source>peak speed of an eye jump (beyond a webcam's frame rate)</source>
            <comment>peak speed of an eye jump (beyond a webcam's frame rate)</comment>
            <translation>velocidad máxima de un salto del ojo (más allá de la frecuencia de una cámara web)</translation>
        </message>
        <message>
            <source>picture blurred</source>
            <comment>picture blurred</comment>
            <translation>imagen borrosa</translation>
        </message>
        <message>
            <source>picture too coarse</source>
            <comment>picture too coarse</comment>
            <translation>imagen demasiado pobre</translation>
        </message>
        <message>
            <source>pictures missing</source>
            <comment>pictures missing</comment>
            <translation>faltan imágenes</translation>
        </message>
        <message>
            <source>positional spin on bending, looking up or tilting</source>
            <comment>positional spin on bending, looking up or tilting</comment>
            <translation>giro posicional al agacharse, mirar arriba o inclinarse</translation>
        </message>
        <message>
            <source>possible fall</source>
            <comment>possible fall</comment>
            <translation>posible caída</translation>
        </message>
        <message>
            <source>possible fall seen in {what}</source>
            <comment>possible fall seen in {what}</comment>
            <translation>posible caída vista en {what}</translation>
        </message>
        <message>
            <source>possible fall seen in {what}: {said}</source>
            <comment>possible fall seen in {what}: {said}</comment>
            <translation>posible caída vista en {what}: {said}</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it</source>
            <comment>possible fall, and the session ended with it</comment>
            <translation>posible caída, y la sesión terminó con ella</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it: {said}</source>
            <comment>possible fall, and the session ended with it: {said}</comment>
            <translation>posible caída, y la sesión terminó con ella: {said}</translation>
        </message>
        <message>
            <source>practised away from the camera, as the patient says</source>
            <comment>practised away from the camera, as the patient says</comment>
            <translation>practicado lejos de la cámara, según dice el paciente</translation>
        </message>
        <message>
            <source>practised {done} of {asked} bouts in {days} days</source>
            <comment>practised {done} of {asked} bouts in {days} days</comment>
            <translation>{done} de {asked} prácticas en {days} días</translation>
        </message>
        <message>
            <source>record damaged</source>
            <comment>record damaged</comment>
            <translation>registro dañado</translation>
        </message>
        <message>
            <source>red-flag answer: no practice</source>
            <comment>red-flag answer: no practice</comment>
            <translation>señal de alarma: sin práctica</translation>
        </message>
        <message>
            <source>repetitions</source>
            <comment>repetitions</comment>
            <translation>repeticiones</translation>
        </message>
        <message>
            <source>reported by the patient, not seen</source>
            <comment>reported by the patient, not seen</comment>
            <translation>comunicado por el paciente, no visto</translation>
        </message>
        <message>
            <source>rest of the day</source>
            <comment>rest of the day</comment>
            <translation>resto del día</translation>
        </message>
        <message>
            <source>right</source>
            <comment>right</comment>
            <translation>derecha</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>right eye only</comment>
            <translation>solo el ojo derecho</translation>
        </message>
        <message>
            <source>rise of the score {value}, asked at most {most}</source>
            <comment>rise of the score {value}, asked at most {most}</comment>
            <translation>subida de la puntuación {value}, pedido como máximo {most}</translation>
        </message>
        <message>
            <source>rose</source>
            <comment>rose</comment>
            <translation>subió</translation>
        </message>
        <message>
            <source>said not to be well</source>
            <comment>said not to be well</comment>
            <translation>dijo que no estaba bien</translation>
        </message>
        <message>
            <source>said that medicines have changed</source>
            <comment>said that medicines have changed</comment>
            <translation>indicó que sus medicamentos han cambiado</translation>
        </message>
        <message>
            <source>said to be all right</source>
            <comment>said to be all right</comment>
            <translation>dijo que estaba bien</translation>
        </message>
        <message>
            <source>said to the patient</source>
            <comment>said to the patient</comment>
            <translation>dicho al paciente</translation>
        </message>
        <message>
            <source>sat at another distance</source>
            <comment>sat at another distance</comment>
            <translation>sentado a otra distancia</translation>
        </message>
        <message>
            <source>score too high at the start for more than seated work</source>
            <comment>score too high at the start for more than seated work</comment>
            <translation>puntuación inicial demasiado alta para más que trabajo sentado</translation>
        </message>
        <message>
            <source>seated until mastered; a soft object; a dropped one stays on the floor</source>
            <comment>seated until mastered; a soft object; a dropped one stays on the floor</comment>
            <translation>sentado hasta dominarlo; un objeto blando; lo que cae se queda en el suelo</translation>
        </message>
        <message>
            <source>seen double in today already</source>
            <comment>seen double in today already</comment>
            <translation>hoy ya vio doble en él</translation>
        </message>
        <message>
            <source>seen to stay down</source>
            <comment>seen to stay down</comment>
            <translation>se vio que seguía abajo</translation>
        </message>
        <message>
            <source>session ended before it</source>
            <comment>session ended before it</comment>
            <translation>la sesión terminó antes</translation>
        </message>
        <message>
            <source>session {number} of the last {needed}: {why}</source>
            <comment>session {number} of the last {needed}: {why}</comment>
            <translation>sesión {number} de las últimas {needed}: {why}</translation>
        </message>
        <message>
            <source>sessions dated after today: {count}; was that computer's clock right?</source>
            <comment>sessions dated after today: {count}; was that computer's clock right?</comment>
            <translation>sesiones con fecha posterior a hoy: {count}; ¿iba bien el reloj de ese ordenador?</translation>
        </message>
        <message>
            <source>set-up not known</source>
            <comment>set-up not known</comment>
            <translation>preparación desconocida</translation>
        </message>
        <message>
            <source>set-up unusable</source>
            <comment>set-up unusable</comment>
            <translation>preparación inutilizable</translation>
        </message>
        <message>
            <source>share measured {value}, asked at least {least} %</source>
            <comment>share measured {value}, asked at least {least} %</comment>
            <translation>parte medida {value}, pedido como mínimo {least} %</translation>
        </message>
        <message>
            <source>share on target {value}, asked at least {least} %</source>
            <comment>share on target {value}, asked at least {least} %</comment>
            <translation>parte en el punto {value}, pedido como mínimo {least} %</translation>
        </message>
        <message>
            <source>short of it</source>
            <comment>short of it</comment>
            <translation>antes de llegar</translation>
        </message>
        <message>
            <source>shoulders and hands not all seen</source>
            <comment>shoulders and hands not all seen</comment>
            <translation>hombros y manos no del todo visibles</translation>
        </message>
        <message>
            <source>sideways</source>
            <comment>sideways</comment>
            <translation>hacia los lados</translation>
        </message>
        <message>
            <source>single vision</source>
            <comment>single vision</comment>
            <translation>monofocal</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>sentado</translation>
        </message>
        <message>
            <source>slow down when the target blurs or jumps</source>
            <comment>slow down when the target blurs or jumps</comment>
            <translation>ir más despacio si el punto se ve borroso o salta</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>slower than the beat</comment>
            <translation>más lento que el ritmo</translation>
        </message>
        <message>
            <source>slower was asked towards the end</source>
            <comment>slower was asked towards the end</comment>
            <translation>hacia el final se pedía más lento</translation>
        </message>
        <message>
            <source>slurred speech</source>
            <comment>slurred speech</comment>
            <translation>habla arrastrada</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>soft surface</comment>
            <translation>superficie blanda</translation>
        </message>
        <message>
            <source>some sway is normal; hands go to the wall or the chair as soon as needed</source>
            <comment>some sway is normal; hands go to the wall or the chair as soon as needed</comment>
            <translation>algo de balanceo es normal; manos a la pared o la silla en cuanto haga falta</translation>
        </message>
        <message>
            <source>source</source>
            <comment>source</comment>
            <translation>fuente</translation>
        </message>
        <message>
            <source>spread</source>
            <comment>spread</comment>
            <translation>dispersión</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>de pie</translation>
        </message>
        <message>
            <source>stay within the neck limit; stop at neck pain or a tingling arm</source>
            <comment>stay within the neck limit; stop at neck pain or a tingling arm</comment>
            <translation>no pasar del límite del cuello; parar si hay dolor de cuello u hormigueo en el brazo</translation>
        </message>
        <message>
            <source>stayed</source>
            <comment>stayed</comment>
            <translation>se quedó</translation>
        </message>
        <message>
            <source>stop when dizziness goes beyond the agreed score or does not settle</source>
            <comment>stop when dizziness goes beyond the agreed score or does not settle</comment>
            <translation>parar si el mareo pasa de la puntuación acordada o no se calma</translation>
        </message>
        <message>
            <source>stop where the image doubles, then move the finger back out</source>
            <comment>stop where the image doubles, then move the finger back out</comment>
            <translation>parar donde la imagen se hace doble, luego alejar el dedo</translation>
        </message>
        <message>
            <source>stopped early</source>
            <comment>stopped early</comment>
            <translation>parada antes</translation>
        </message>
        <message>
            <source>stopped unwell</source>
            <comment>stopped unwell</comment>
            <translation>parada por malestar</translation>
        </message>
        <message>
            <source>stretch not measured</source>
            <comment>stretch not measured</comment>
            <translation>tramo sin medir</translation>
        </message>
        <message>
            <source>sudden drop of the head in a set not seen to its end: {said}</source>
            <comment>sudden drop of the head in a set not seen to its end: {said}</comment>
            <translation>bajada brusca de la cabeza en una serie, sin verse el final: {said}</translation>
        </message>
        <message>
            <source>sudden drop of the head in {what} not seen to its end: {said}</source>
            <comment>sudden drop of the head in {what} not seen to its end: {said}</comment>
            <translation>bajada brusca de la cabeza en {what}, sin verse el final: {said}</translation>
        </message>
        <message>
            <source>sudden hearing loss</source>
            <comment>sudden hearing loss</comment>
            <translation>pérdida repentina de audición</translation>
        </message>
        <message>
            <source>sudden severe headache</source>
            <comment>sudden severe headache</comment>
            <translation>dolor de cabeza intenso y repentino</translation>
        </message>
        <message>
            <source>support not confirmed</source>
            <comment>support not confirmed</comment>
            <translation>apoyo sin confirmar</translation>
        </message>
        <message>
            <source>sway</source>
            <comment>sway</comment>
            <translation>balanceo</translation>
        </message>
        <message>
            <source>symptom score above the limit of the plan</source>
            <comment>symptom score above the limit of the plan</comment>
            <translation>puntuación de síntomas por encima del límite del plan</translation>
        </message>
        <message>
            <source>symptom score not answered</source>
            <comment>symptom score not answered</comment>
            <translation>puntuación de síntomas sin responder</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session</source>
            <comment>symptoms above the plan's limit ended the session</comment>
            <translation>síntomas por encima del límite del plan terminaron la sesión</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session ({score} of 10 at the end)</source>
            <comment>symptoms above the plan's limit ended the session ({score} of 10 at the end)</comment>
            <translation>síntomas por encima del límite del plan terminaron la sesión ({score} de 10 al final)</translation>
        </message>
        <message>
            <source>symptoms did not settle in the time that the plan allows</source>
            <comment>symptoms did not settle in the time that the plan allows</comment>
            <translation>los síntomas no se calmaron en el tiempo que permite el plan</translation>
        </message>
        <message>
            <source>symptoms not settled within the time of the plan</source>
            <comment>symptoms not settled within the time of the plan</comment>
            <translation>síntomas no calmados en el tiempo del plan</translation>
        </message>
        <message>
            <source>taken together in the clinic</source>
            <comment>taken together in the clinic</comment>
            <translation>hecha juntos en la consulta</translation>
        </message>
        <message>
            <source>target not said to be clear</source>
            <comment>target not said to be clear</comment>
            <translation>punto no descrito como claro</translation>
        </message>
        <message>
            <source>target said to be clear</source>
            <comment>target said to be clear</comment>
            <translation>punto descrito como claro</translation>
        </message>
        <message>
            <source>tempo</source>
            <comment>tempo</comment>
            <translation>ritmo</translation>
        </message>
        <message>
            <source>the camera does not count it in this version; it is led and timed</source>
            <comment>the camera does not count it in this version; it is led and timed</comment>
            <translation>la cámara no lo cuenta en esta versión; se guía y se cronometra</translation>
        </message>
        <message>
            <source>the camera does not count this exercise in this version</source>
            <comment>the camera does not count this exercise in this version</comment>
            <translation>la cámara no cuenta este ejercicio en esta versión</translation>
        </message>
        <message>
            <source>the camera was gone for a while: what was done then is missing in its count</source>
            <comment>the camera was gone for a while: what was done then is missing in its count</comment>
            <translation>la cámara faltó un tiempo: lo que se hizo entonces no está en su recuento</translation>
        </message>
        <message>
            <source>the chair's height: the table holds for 43 cm and arms crossed only</source>
            <comment>the chair's height: the table holds for 43 cm and arms crossed only</comment>
            <translation>la altura de la silla: la tabla vale solo para 43 cm y brazos cruzados</translation>
        </message>
        <message>
            <source>the day has not come yet on which the therapist found it met ({day})</source>
            <comment>the day has not come yet on which the therapist found it met ({day})</comment>
            <translation>aún no ha llegado el día en que el terapeuta la dio por cumplida ({day})</translation>
        </message>
        <message>
            <source>the eyes can't be judged in nods behind bi- or varifocal glasses</source>
            <comment>the eyes can't be judged in nods behind bi- or varifocal glasses</comment>
            <translation>tras gafas bifocales o progresivas no se pueden juzgar los ojos al mover la cabeza arriba y abajo</translation>
        </message>
        <message>
            <source>the eyes look unlike those of the set-up: another light, or other glasses</source>
            <comment>the eyes look unlike those of the set-up: another light, or other glasses</comment>
            <translation>los ojos se ven distintos de los de la preparación: otra luz, u otras gafas</translation>
        </message>
        <message>
            <source>the eyes turned in by {value} degrees (within {error}) as the finger came near</source>
            <comment>the eyes turned in by {value} degrees (within {error}) as the finger came near</comment>
            <translation>los ojos giraron hacia dentro {value} grados (con un margen de {error}) al acercarse el dedo</translation>
        </message>
        <message>
            <source>the eyes went beyond what the set-up taught</source>
            <comment>the eyes went beyond what the set-up taught</comment>
            <translation>los ojos fueron más allá de lo enseñado en la preparación</translation>
        </message>
        <message>
            <source>the eyes were never seen at rest on a target</source>
            <comment>the eyes were never seen at rest on a target</comment>
            <translation>los ojos no se vieron nunca quietos en un punto</translation>
        </message>
        <message>
            <source>the feet and the stance</source>
            <comment>the feet and the stance</comment>
            <translation>los pies y la postura</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether it was on the target</source>
            <comment>the gaze is read too coarsely to tell whether it was on the target</comment>
            <translation>la mirada se lee con demasiada imprecisión para decir si estaba en el punto</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether the eyes arrived</source>
            <comment>the gaze is read too coarsely to tell whether the eyes arrived</comment>
            <translation>la mirada se lee con demasiada imprecisión para decir si los ojos llegaron</translation>
        </message>
        <message>
            <source>the hand, its distance and its side</source>
            <comment>the hand, its distance and its side</comment>
            <translation>la mano, su distancia y su lado</translation>
        </message>
        <message>
            <source>the hands</source>
            <comment>the hands</comment>
            <translation>las manos</translation>
        </message>
        <message>
            <source>the head was not measured</source>
            <comment>the head was not measured</comment>
            <translation>la cabeza no se midió</translation>
        </message>
        <message>
            <source>the lids were not measured</source>
            <comment>the lids were not measured</comment>
            <translation>los párpados no se midieron</translation>
        </message>
        <message>
            <source>the line of sight was not measured</source>
            <comment>the line of sight was not measured</comment>
            <translation>la línea de mirada no se midió</translation>
        </message>
        <message>
            <source>the movement that was asked for is itself a sway or a stand</source>
            <comment>the movement that was asked for is itself a sway or a stand</comment>
            <translation>el movimiento pedido es en sí un balanceo o una levantada</translation>
        </message>
        <message>
            <source>the neck point was measured for less than 5 seconds</source>
            <comment>the neck point was measured for less than 5 seconds</comment>
            <translation>el punto del cuello se midió menos de 5 segundos</translation>
        </message>
        <message>
            <source>the object itself: the height of a throw is judged from the wrists</source>
            <comment>the object itself: the height of a throw is judged from the wrists</comment>
            <translation>el objeto mismo: la altura del lanzamiento se juzga por las muñecas</translation>
        </message>
        <message>
            <source>the patient wants nothing to move on the screen</source>
            <comment>the patient wants nothing to move on the screen</comment>
            <translation>el paciente no quiere que nada se mueva en la pantalla</translation>
        </message>
        <message>
            <source>the place of the target isn't known</source>
            <comment>the place of the target isn't known</comment>
            <translation>no se conoce el lugar del punto</translation>
        </message>
        <message>
            <source>the plan gives no age group or sex for the table</source>
            <comment>the plan gives no age group or sex for the table</comment>
            <translation>el plan no da grupo de edad o sexo para la tabla</translation>
        </message>
        <message>
            <source>the plan has no first day</source>
            <comment>the plan has no first day</comment>
            <translation>el plan no tiene primer día</translation>
        </message>
        <message>
            <source>the plan taken differs from the one handed out: {words}</source>
            <comment>the plan taken differs from the one handed out: {words}</comment>
            <translation>El plan que vale aquí no es igual al que se entregó: {words}</translation>
        </message>
        <message>
            <source>the set ended while the head dropped</source>
            <comment>the set ended while the head dropped</comment>
            <translation>la serie terminó mientras la cabeza caía</translation>
        </message>
        <message>
            <source>the set-up could not be used, so nothing rests on it</source>
            <comment>the set-up could not be used, so nothing rests on it</comment>
            <translation>la preparación no se pudo usar, así que nada se apoya en ella</translation>
        </message>
        <message>
            <source>the set-up was too poor for the line of sight</source>
            <comment>the set-up was too poor for the line of sight</comment>
            <translation>la preparación fue demasiado pobre para la línea de mirada</translation>
        </message>
        <message>
            <source>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</source>
            <comment>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</comment>
            <translation>la imagen de la preparación mostró demasiado poco de la cara en movimiento: los ángulos de la cabeza pueden desviarse de 1 a 2 grados, y los giros una décima parte</translation>
        </message>
        <message>
            <source>the stage log says that another exercise was asked for</source>
            <comment>the stage log says that another exercise was asked for</comment>
            <translation>el registro dice que se pedía otro ejercicio</translation>
        </message>
        <message>
            <source>the symptom rule ended it</source>
            <comment>the symptom rule ended it</comment>
            <translation>terminada por la regla de síntomas</translation>
        </message>
        <message>
            <source>the table ends before this age</source>
            <comment>the table ends before this age</comment>
            <translation>la tabla termina antes de esta edad</translation>
        </message>
        <message>
            <source>the targets lie too near to each other, or their place isn't known</source>
            <comment>the targets lie too near to each other, or their place isn't known</comment>
            <translation>los puntos están demasiado cerca uno de otro, o no se sabe dónde están</translation>
        </message>
        <message>
            <source>the test lasts 30 seconds, this set did not</source>
            <comment>the test lasts 30 seconds, this set did not</comment>
            <translation>la prueba dura 30 segundos, esta serie no</translation>
        </message>
        <message>
            <source>the therapist found it met on {day}</source>
            <comment>the therapist found it met on {day}</comment>
            <translation>el terapeuta la dio por cumplida el {day}</translation>
        </message>
        <message>
            <source>the way of the roll, where the width between the shoulders does not tell it</source>
            <comment>the way of the roll, where the width between the shoulders does not tell it</comment>
            <translation>el sentido del círculo, donde el ancho entre los hombros no lo dice</translation>
        </message>
        <message>
            <source>throw too low</source>
            <comment>throw too low</comment>
            <translation>lanzamiento demasiado bajo</translation>
        </message>
        <message>
            <source>time held</source>
            <comment>time held</comment>
            <translation>tiempo mantenido</translation>
        </message>
        <message>
            <source>time in all</source>
            <comment>time in all</comment>
            <translation>tiempo total</translation>
        </message>
        <message>
            <source>time that was measured</source>
            <comment>time that was measured</comment>
            <translation>tiempo medido</translation>
        </message>
        <message>
            <source>time to settle</source>
            <comment>time to settle</comment>
            <translation>tiempo hasta calmarse</translation>
        </message>
        <message>
            <source>tingling arm</source>
            <comment>tingling arm</comment>
            <translation>hormigueo en el brazo</translation>
        </message>
        <message>
            <source>told of falls in the last week: {what}</source>
            <comment>told of falls in the last week: {what}</comment>
            <translation>indicó caídas en la última semana: {what}</translation>
        </message>
        <message>
            <source>too dark</source>
            <comment>too dark</comment>
            <translation>demasiado oscuro</translation>
        </message>
        <message>
            <source>too far from the camera</source>
            <comment>too far from the camera</comment>
            <translation>demasiado lejos de la cámara</translation>
        </message>
        <message>
            <source>too few frames</source>
            <comment>too few frames</comment>
            <translation>demasiado pocas imágenes</translation>
        </message>
        <message>
            <source>too few pictures a second for so fast a movement</source>
            <comment>too few pictures a second for so fast a movement</comment>
            <translation>demasiado pocas imágenes por segundo para un movimiento tan rápido</translation>
        </message>
        <message>
            <source>too few samples in a turn</source>
            <comment>too few samples in a turn</comment>
            <translation>demasiado pocas muestras en un giro</translation>
        </message>
        <message>
            <source>too few turns or samples to tell</source>
            <comment>too few turns or samples to tell</comment>
            <translation>demasiado pocos giros o mediciones para saberlo</translation>
        </message>
        <message>
            <source>too few turns with the eyes measured at both ends</source>
            <comment>too few turns with the eyes measured at both ends</comment>
            <translation>demasiado pocos giros con los ojos medidos en los dos extremos</translation>
        </message>
        <message>
            <source>too little was measured: a stand may be missing</source>
            <comment>too little was measured: a stand may be missing</comment>
            <translation>se midió demasiado poco: puede faltar una levantada</translation>
        </message>
        <message>
            <source>too uneven to tell</source>
            <comment>too uneven to tell</comment>
            <translation>demasiado irregular para saberlo</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds</source>
            <comment>turned farther than the set-up holds</comment>
            <translation>giró más allá de lo que abarca la preparación</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds: its error there is not known</source>
            <comment>turned farther than the set-up holds: its error there is not known</comment>
            <translation>girada más allá de lo que abarca la preparación: su error allí no se conoce</translation>
        </message>
        <message>
            <source>typed in</source>
            <comment>typed in</comment>
            <translation>escrito a mano</translation>
        </message>
        <message>
            <source>unable to stand or walk</source>
            <comment>unable to stand or walk</comment>
            <translation>incapaz de estar de pie o caminar</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <comment>uncertainty</comment>
            <translation>incertidumbre</translation>
        </message>
        <message>
            <source>unsteadiness after</source>
            <comment>unsteadiness after</comment>
            <translation>inestabilidad después</translation>
        </message>
        <message>
            <source>unsteadiness before</source>
            <comment>unsteadiness before</comment>
            <translation>inestabilidad antes</translation>
        </message>
        <message>
            <source>up</source>
            <comment>up</comment>
            <translation>arriba</translation>
        </message>
        <message>
            <source>usual value</source>
            <comment>usual value</comment>
            <translation>valor habitual</translation>
        </message>
        <message>
            <source>vergence change</source>
            <comment>vergence change</comment>
            <translation>cambio de vergencia</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>caminando</translation>
        </message>
        <message>
            <source>weakness or numbness of face, arm or leg</source>
            <comment>weakness or numbness of face, arm or leg</comment>
            <translation>debilidad o entumecimiento de cara, brazo o pierna</translation>
        </message>
        <message>
            <source>went along</source>
            <comment>went along</comment>
            <translation>acompañó</translation>
        </message>
        <message>
            <source>went on, as the therapist had said today</source>
            <comment>went on, as the therapist had said today</comment>
            <translation>siguió, como el terapeuta había dicho hoy</translation>
        </message>
        <message>
            <source>what it is counted from was never measured</source>
            <comment>what it is counted from was never measured</comment>
            <translation>aquello de lo que se cuenta nunca se midió</translation>
        </message>
        <message>
            <source>where the eyes point behind shut lids (asked when they open)</source>
            <comment>where the eyes point behind shut lids (asked when they open)</comment>
            <translation>hacia dónde apuntan los ojos tras los párpados cerrados (se pregunta al abrirlos)</translation>
        </message>
        <message>
            <source>whether the eyes followed the object (whether the head went along is told)</source>
            <comment>whether the eyes followed the object (whether the head went along is told)</comment>
            <translation>si los ojos siguieron el objeto (si la cabeza acompañó, se dice)</translation>
        </message>
        <message>
            <source>whether the target was clear (asked after the set)</source>
            <comment>whether the target was clear (asked after the set)</comment>
            <translation>si el punto se veía claro (se pregunta después de la serie)</translation>
        </message>
        <message>
            <source>whether there was a set-up is not known, nor its error</source>
            <comment>whether there was a set-up is not known, nor its error</comment>
            <translation>no se sabe si hubo preparación, ni su error</translation>
        </message>
        <message>
            <source>which arm, unless both wrists are seen in the bend (then it is asked)</source>
            <comment>which arm, unless both wrists are seen in the bend (then it is asked)</comment>
            <translation>qué brazo, salvo que se vean las dos muñecas al agacharse (si no, se pregunta)</translation>
        </message>
        <message>
            <source>who looks at the floor lowers the lids, which reads as shut eyes</source>
            <comment>who looks at the floor lowers the lids, which reads as shut eyes</comment>
            <translation>quien mira al suelo baja los párpados, y eso se lee como ojos cerrados</translation>
        </message>
        <message>
            <source>why</source>
            <comment>why</comment>
            <translation>por qué</translation>
        </message>
        <message>
            <source>without a set-up its error is not known</source>
            <comment>without a set-up its error is not known</comment>
            <translation>sin preparación no se conoce su error</translation>
        </message>
        <message>
            <source>x1 viewing, pitch</source>
            <comment>x1 viewing, pitch</comment>
            <translation>estabilización x1, arriba y abajo</translation>
        </message>
        <message>
            <source>x1 viewing, pitch: the head nods, the eyes stay on a still target</source>
            <comment>x1 viewing, pitch: the head nods, the eyes stay on a still target</comment>
            <translation>estabilización x1, arriba y abajo: la cabeza se mueve, los ojos se quedan en un punto quieto</translation>
        </message>
        <message>
            <source>x1 viewing, yaw</source>
            <comment>x1 viewing, yaw</comment>
            <translation>estabilización x1, a los lados</translation>
        </message>
        <message>
            <source>x1 viewing, yaw: the head turns, the eyes stay on a still target</source>
            <comment>x1 viewing, yaw: the head turns, the eyes stay on a still target</comment>
            <translation>estabilización x1, a los lados: la cabeza gira, los ojos se quedan en un punto quieto</translation>
        </message>
        <message>
            <source>x2 viewing, pitch</source>
            <comment>x2 viewing, pitch</comment>
            <translation>estabilización x2, arriba y abajo</translation>
        </message>
        <message>
            <source>x2 viewing, pitch: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, pitch: the target moves against the head, the eyes stay on it</comment>
            <translation>estabilización x2, arriba y abajo: el punto se mueve contra la cabeza, los ojos se quedan en él</translation>
        </message>
        <message>
            <source>x2 viewing, yaw</source>
            <comment>x2 viewing, yaw</comment>
            <translation>estabilización x2, a los lados</translation>
        </message>
        <message>
            <source>x2 viewing, yaw: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, yaw: the target moves against the head, the eyes stay on it</comment>
            <translation>estabilización x2, a los lados: el punto se mueve contra la cabeza, los ojos se quedan en él</translation>
        </message>
        <message>
            <source>yes</source>
            <comment>yes</comment>
            <translation>sí</translation>
        </message>
        <message>
            <source>yes to: {what}</source>
            <comment>yes to: {what}</comment>
            <translation>sí a: {what}</translation>
        </message>
        <message>
            <source>{count} bouts a day</source>
            <comment>{count} bouts a day</comment>
            <translation>{count} prácticas al día</translation>
        </message>
        <message>
            <source>{count} lines could not be read</source>
            <comment>{count} lines could not be read</comment>
            <translation>líneas que no se pudieron leer: {count}</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known</comment>
            <translation>líneas que no se pudieron leer: {count}, entre ellas la primera: no se sabe de quién es ni de qué plan</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</comment>
            <translation>líneas que no se pudieron leer: {count}, entre ellas la primera: no se sabe de quién es ni de qué plan; puede ser del ejemplo</translation>
        </message>
        <message>
            <source>{count} of {needed} sessions</source>
            <comment>{count} of {needed} sessions</comment>
            <translation>{count} de {needed} sesiones</translation>
        </message>
        <message>
            <source>{count} plan files differ and start on the same day: the newest file is taken</source>
            <comment>{count} plan files differ and start on the same day: the newest file is taken</comment>
            <translation>{count} archivos de plan difieren y empiezan el mismo día: vale el más nuevo</translation>
        </message>
        <message>
            <source>{first} to {last} beats a minute</source>
            <comment>{first} to {last} beats a minute</comment>
            <translation>de {first} a {last} golpes por minuto</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}</source>
            <comment>{gaze}; planned {planned}</comment>
            <translation>{gaze}; previstos {planned}</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} or more</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} or more</comment>
            <translation>{gaze}; previstos {planned}; guía, según se cita: {least} o más</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</comment>
            <translation>{gaze}; previstos {planned}; guía, según se cita: de {least} a {most}</translation>
        </message>
        <message>
            <source>{least} to {most} degrees to each side</source>
            <comment>{least} to {most} degrees to each side</comment>
            <translation>de {least} a {most} grados a cada lado</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>{low} to {high}</comment>
            <translation>de {low} a {high}</translation>
        </message>
        <message>
            <source>{number} ± {most}</source>
            <comment>{number} ± {most}</comment>
            <translation>{number} ± {most}</translation>
        </message>
        <message>
            <source>{opening}: met; {why}</source>
            <comment>{opening}: met; {why}</comment>
            <translation>{opening}: cumplida; {why}</translation>
        </message>
        <message>
            <source>{opening}: not met; {why}</source>
            <comment>{opening}: not met; {why}</comment>
            <translation>{opening}: no cumplida; {why}</translation>
        </message>
        <message>
            <source>{practice}, and {count} beyond a day's dose</source>
            <comment>{practice}, and {count} beyond a day's dose</comment>
            <translation>{practice}, y {count} más allá de la dosis del día</translation>
        </message>
        <message>
            <source>{practice}; asked: {bouts} a day on {days} days; done {share} %</source>
            <comment>{practice}; asked: {bouts} a day on {days} days; done {share} %</comment>
            <translation>{practice}; pedido: {bouts} al día, {days} días; hecho {share} %</translation>
        </message>
        <message>
            <source>{practice}; no plan at hand to compare with</source>
            <comment>{practice}; no plan at hand to compare with</comment>
            <translation>{practice}; sin plan con que comparar</translation>
        </message>
        <message>
            <source>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate}, en el único día contado ({measured} medidas, {reported} no vistas por la cámara)</translation>
        </message>
        <message>
            <source>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate}, {days} días a la semana, en los últimos {length} días ({measured} medidas, {reported} no vistas por la cámara)</translation>
        </message>
        <message>
            <source>{share} % of the time</source>
            <comment>{share} % of the time</comment>
            <translation>{share} % del tiempo</translation>
        </message>
        <message>
            <source>{share} % of the time fewer than {value} pictures a second</source>
            <comment>{share} % of the time fewer than {value} pictures a second</comment>
            <translation>{share} % del tiempo con menos de {value} imágenes por segundo</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % del tiempo los ojos se veían distintos de los de la preparación (otra luz, u otras gafas)</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes went beyond the set-up's range</source>
            <comment>{share} % of the time the eyes went beyond the set-up's range</comment>
            <translation>{share} % del tiempo los ojos salieron del margen de la preparación</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % del tiempo no se leyeron los ojos: se veían distintos de los de la preparación (otra luz, u otras gafas)</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>{tempo} beats a minute</comment>
            <translation>{tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the gravest one shown)</source>
            <comment>{text} ({count} sessions, the gravest one shown)</comment>
            <translation>{text} ({count} sesiones, se muestra la más grave)</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the last one shown)</source>
            <comment>{text} ({count} sessions, the last one shown)</comment>
            <translation>{text} ({count} sesiones, se muestra la última)</translation>
        </message>
        <message>
            <source>{value} beats/min</source>
            <comment>{value} beats/min</comment>
            <translation>{value} golpes/min</translation>
        </message>
        <message>
            <source>{value} frames/s</source>
            <comment>{value} frames/s</comment>
            <translation>{value} imágenes/s</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>{value} of 10</comment>
            <translation>{value} de 10</translation>
        </message>
        <message>
            <source>{value} pictures a second</source>
            <comment>{value} pictures a second</comment>
            <translation>{value} imágenes por segundo</translation>
        </message>
        <message>
            <source>{what} rose from {first} to {last} of 10</source>
            <comment>{what} rose from {first} to {last} of 10</comment>
            <translation>{what} subió de {first} a {last} de 10</translation>
        </message>
        <message>
            <source>{what}: from week {week} on ({day}): {dose}</source>
            <comment>{what}: from week {week} on ({day}): {dose}</comment>
            <translation>{what}: desde la semana {week} ({day}): {dose}</translation>
        </message>
        <message>
            <source>{why} and {count} more</source>
            <comment>{why} and {count} more</comment>
            <translation>{why} y {count} más</translation>
        </message>
        <message>
            <source>{words} (opens {what})</source>
            <comment>{words} (opens {what})</comment>
            <translation>{words} (abre {what})</translation>
        </message>
        <message>
            <source>{words} (opens {what}, practised already)</source>
            <comment>{words} (opens {what}, practised already)</comment>
            <translation>{words} (abre {what}, ya practicado)</translation>
        </message>
    </context>
    <context>
        <name>turnpost</name>
        <message>
            <source>Repeat: {part}</source>
            <comment>again.before</comment>
            <translation>Repetir: {part}</translation>
        </message>
        <message>
            <source>{part}: the newer check counts now.</source>
            <comment>again.check</comment>
            <translation>{part}: ahora vale la comprobación más reciente.</translation>
        </message>
        <message>
            <source>Do this step again</source>
            <comment>again.do</comment>
            <translation>Repetir este paso</translation>
        </message>
        <message>
            <source>Single steps can be done again only right after the set-up.</source>
            <comment>again.gone</comment>
            <translation>Los pasos sueltos solo se pueden repetir justo después de la preparación.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was seen less well.</source>
            <comment>again.kept.coarse</comment>
            <translation>{part}: se queda el paso de antes. Esta vez su cara se vio peor.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. With the new one it is harder to tell where you look.</source>
            <comment>again.kept.eyes</comment>
            <translation>{part}: se queda el paso de antes. Con el nuevo se reconoce peor adónde mira.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one could not be used. {why}</source>
            <comment>again.kept.failed</comment>
            <translation>{part}: se queda el paso de antes. El nuevo no se pudo usar. {why}</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one was not finished.</source>
            <comment>again.kept.left</comment>
            <translation>{part}: se queda el paso de antes. El nuevo no se terminó.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your head went less far.</source>
            <comment>again.kept.less_far</comment>
            <translation>{part}: se queda el paso de antes. Esta vez su cabeza llegó menos lejos.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. You sit or hold your head differently now. If you have moved, repeat the whole set-up.</source>
            <comment>again.kept.moved</comment>
            <translation>{part}: se queda el paso de antes. Ahora está sentado de otra manera o tiene la cabeza en otra postura. Si se ha movido de sitio, repita toda la preparación.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was hardly seen.</source>
            <comment>again.kept.unseen</comment>
            <translation>{part}: se queda el paso de antes. Esta vez apenas se vio su cara.</translation>
        </message>
        <message>
            <source>{part}: do this step again</source>
            <comment>again.name</comment>
            <translation>{part}: repetir este paso</translation>
        </message>
        <message>
            <source>One step can be done again while you sit as before. If you have moved, repeat the whole set-up.</source>
            <comment>again.sits</comment>
            <translation>Puede repetir un paso mientras siga sentado como antes. Si se ha movido de sitio, repita toda la preparación.</translation>
        </message>
        <message>
            <source>{part}: the new step is used now.</source>
            <comment>again.taken</comment>
            <translation>{part}: ahora vale el paso nuevo.</translation>
        </message>
        <message>
            <source>Which arm did you reach with?</source>
            <comment>ask.arm</comment>
            <translation>¿Con qué brazo alcanzó el suelo?</translation>
        </message>
        <message>
            <source>Both, in turn</source>
            <comment>ask.arm.both</comment>
            <translation>Con los dos, por turnos</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>ask.arm.left</comment>
            <translation>Con el izquierdo</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.arm.not_sure</comment>
            <translation>No lo sé</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>ask.arm.right</comment>
            <translation>Con el derecho</translation>
        </message>
        <message>
            <source>How did the target look while you moved?</source>
            <comment>ask.clarity</comment>
            <translation>¿Cómo se veía el punto mientras se movía?</translation>
        </message>
        <message>
            <source>Blurred</source>
            <comment>ask.clarity.blurred</comment>
            <translation>Borroso</translation>
        </message>
        <message>
            <source>Clear</source>
            <comment>ask.clarity.clear</comment>
            <translation>Claro</translation>
        </message>
        <message>
            <source>I saw two</source>
            <comment>ask.clarity.double</comment>
            <translation>Vi dos</translation>
        </message>
        <message>
            <source>It jumped</source>
            <comment>ask.clarity.jumping</comment>
            <translation>Saltaba</translation>
        </message>
        <message>
            <source>How did the target look when you opened your eyes?</source>
            <comment>ask.clarity.opened</comment>
            <translation>¿Cómo se veía el punto al abrir los ojos?</translation>
        </message>
        <message>
            <source>The camera counted {count}.</source>
            <comment>ask.did</comment>
            <translation>La cámara ha contado {count}.</translation>
        </message>
        <message>
            <source>Your last nod down: {degrees} degrees.</source>
            <comment>ask.did.down</comment>
            <translation>Su último movimiento de cabeza abajo: {degrees} grados.</translation>
        </message>
        <message>
            <source>Your last turn left: {degrees} degrees.</source>
            <comment>ask.did.left</comment>
            <translation>Su último giro a la izquierda: {degrees} grados.</translation>
        </message>
        <message>
            <source>Your last nods: {first} degrees up, {second} degrees down.</source>
            <comment>ask.did.nods</comment>
            <translation>Sus últimos movimientos de cabeza: {first} grados arriba, {second} grados abajo.</translation>
        </message>
        <message>
            <source>The camera counted {count} of {goal}.</source>
            <comment>ask.did.of</comment>
            <translation>La cámara ha contado {count} de {goal}.</translation>
        </message>
        <message>
            <source>Your last turn right: {degrees} degrees.</source>
            <comment>ask.did.right</comment>
            <translation>Su último giro a la derecha: {degrees} grados.</translation>
        </message>
        <message>
            <source>Your tempo: {tempo} a minute.</source>
            <comment>ask.did.tempo</comment>
            <translation>Su ritmo: {tempo} por minuto.</translation>
        </message>
        <message>
            <source>Your last turns: {first} degrees right, {second} degrees left.</source>
            <comment>ask.did.turns</comment>
            <translation>Sus últimos giros: {first} grados a la derecha, {second} grados a la izquierda.</translation>
        </message>
        <message>
            <source>Your last nod up: {degrees} degrees.</source>
            <comment>ask.did.up</comment>
            <translation>Su último movimiento de cabeza arriba: {degrees} grados.</translation>
        </message>
        <message>
            <source>Done</source>
            <comment>ask.done</comment>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>ask.dose.eyes_closed</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>on the firm floor</source>
            <comment>ask.dose.firm</comment>
            <translation>en el suelo firme</translation>
        </message>
        <message>
            <source>{first} beats a minute at first, {last} at the end</source>
            <comment>ask.dose.from_to</comment>
            <translation>{first} golpes por minuto al principio, {last} al final</translation>
        </message>
        <message>
            <source>once</source>
            <comment>ask.dose.once</comment>
            <translation>una vez</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>ask.dose.repetitions</comment>
            <translation>{count} veces</translation>
        </message>
        <message>
            <source>{count} seconds</source>
            <comment>ask.dose.seconds</comment>
            <translation>{count} segundos</translation>
        </message>
        <message>
            <source>turning your head</source>
            <comment>ask.dose.shake</comment>
            <translation>girando la cabeza</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>ask.dose.sitting</comment>
            <translation>sentado o sentada</translation>
        </message>
        <message>
            <source>on the soft mat</source>
            <comment>ask.dose.soft</comment>
            <translation>en la colchoneta blanda</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>ask.dose.standing</comment>
            <translation>de pie</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>ask.dose.tempo</comment>
            <translation>{tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>ask.dose.walking</comment>
            <translation>caminando</translation>
        </message>
        <message>
            <source>with notes on the wall</source>
            <comment>ask.dose.wall</comment>
            <translation>con notas en la pared</translation>
        </message>
        <message>
            <source>End for today</source>
            <comment>ask.end</comment>
            <translation>Terminar por hoy</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>ask.go_on</comment>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Say it again</source>
            <comment>ask.guide.again</comment>
            <translation>Decirlo otra vez</translation>
        </message>
        <message>
            <source>Next step</source>
            <comment>ask.guide.next</comment>
            <translation>Siguiente paso</translation>
        </message>
        <message>
            <source>When you opened your eyes, did they still point at the target?</source>
            <comment>ask.landed</comment>
            <translation>Al abrir los ojos, ¿seguían apuntando al punto?</translation>
        </message>
        <message>
            <source>No, beside it</source>
            <comment>ask.landed.beside</comment>
            <translation>No, al lado</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.landed.not_sure</comment>
            <translation>No lo sé</translation>
        </message>
        <message>
            <source>Yes, at the target</source>
            <comment>ask.landed.on</comment>
            <translation>Sí, al punto</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>ask.left</comment>
            <translation>quedan {time}</translation>
        </message>
        <message>
            <source>Left out today: {name}. {why}</source>
            <comment>ask.left_out</comment>
            <translation>Hoy no se hace: {name}. {why}</translation>
        </message>
        <message>
            <source>No</source>
            <comment>ask.no</comment>
            <translation>No</translation>
        </message>
        <message>
            <source>How many did you do?</source>
            <comment>ask.own_count</comment>
            <translation>¿Cuántas hizo?</translation>
        </message>
        <message>
            <source>Press + and − until your number is there.</source>
            <comment>ask.own_count.how</comment>
            <translation>Pulse + y − hasta que aparezca su número.</translation>
        </message>
        <message>
            <source>Count</source>
            <comment>ask.own_count.name</comment>
            <translation>Cantidad</translation>
        </message>
        <message>
            <source>I don't know</source>
            <comment>ask.own_count.unknown</comment>
            <translation>No lo sé</translation>
        </message>
        <message>
            <source>no number chosen yet</source>
            <comment>ask.own_count.unset</comment>
            <translation>aún no se ha elegido un número</translation>
        </message>
        <message>
            <source>Sit on a firm chair, at arm's length from the screen, about {cm} cm.</source>
            <comment>ask.place.arm</comment>
            <translation>Siéntese en una silla firme, a la distancia de un brazo de la pantalla, unos {cm} cm.</translation>
        </message>
        <message>
            <source>Stripes will move on the screen. This can make you dizzy or sick. Any key stops it at once.</source>
            <comment>ask.place.backdrop</comment>
            <translation>Unas rayas se moverán en la pantalla. Esto puede darle mareo o náuseas. Cualquier tecla lo para enseguida.</translation>
        </message>
        <message>
            <source>I have read this and am in place</source>
            <comment>ask.place.backdrop_ready</comment>
            <translation>Lo he leído y estoy en mi sitio</translation>
        </message>
        <message>
            <source>Slow beats lead you in. Three quick beats tell you that it is over.</source>
            <comment>ask.place.by_ear</comment>
            <translation>Unos golpes lentos le llevan al comienzo. Tres golpes rápidos le dicen que ha terminado.</translation>
        </message>
        <message>
            <source>No sound plays. The screen counts down and shows when it is over: your helper reads that to you.</source>
            <comment>ask.place.by_reader</comment>
            <translation>No suena nada. La pantalla cuenta hacia atrás y muestra cuándo termina: la persona que le ayuda se lo lee.</translation>
        </message>
        <message>
            <source>A voice tells you when to begin and when it is over. Slow beats lead you in.</source>
            <comment>ask.place.by_voice</comment>
            <translation>Una voz le dice cuándo empezar y cuándo termina. Unos golpes lentos le llevan al comienzo.</translation>
        </message>
        <message>
            <source>Move your chair closer again, about {cm} cm from the screen.</source>
            <comment>ask.place.closer</comment>
            <translation>Acerque otra vez la silla, a unos {cm} cm de la pantalla.</translation>
        </message>
        <message>
            <source>As soon as you see two tips, press “I see double (D)”.</source>
            <comment>ask.place.double</comment>
            <translation>En cuanto vea dos puntas, pulse «Veo doble (D)».</translation>
        </message>
        <message>
            <source>Sit further back for this one, on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.further</comment>
            <translation>Para este ejercicio, siéntese más atrás, en una silla firme, a unos {cm} cm de la pantalla.</translation>
        </message>
        <message>
            <source>You have asked for a still screen. Here the target has to move: that is the exercise. Leave it out if you would rather not.</source>
            <comment>ask.place.moves</comment>
            <translation>Ha pedido una pantalla quieta. Aquí el punto tiene que moverse: ese es el ejercicio. No lo haga si prefiere que no.</translation>
        </message>
        <message>
            <source>Move at a calm, even pace.</source>
            <comment>ask.place.no_beat</comment>
            <translation>Muévase con calma y sin cambiar de ritmo.</translation>
        </message>
        <message>
            <source>You chose to hear nothing. This one is led by sound all the same.</source>
            <comment>ask.place.not_silent</comment>
            <translation>Usted eligió no oír nada. Este se guía por el sonido de todos modos.</translation>
        </message>
        <message>
            <source>I am in place</source>
            <comment>ask.place.ready</comment>
            <translation>Estoy en mi sitio</translation>
        </message>
        <message>
            <source>First the camera gets to know how you look from here. That takes a minute.</source>
            <comment>ask.place.setup</comment>
            <translation>Primero la cámara aprende cómo se le ve desde aquí. Tarda un minuto.</translation>
        </message>
        <message>
            <source>Sit on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.sitting</comment>
            <translation>Siéntese en una silla firme, a unos {cm} cm de la pantalla.</translation>
        </message>
        <message>
            <source>Not this one</source>
            <comment>ask.place.skip</comment>
            <translation>Este no</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing</comment>
            <translation>Póngase de pie de modo que la cámara vea su cara. Mire una marca en la pared de detrás, a la altura de sus ojos.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Until it begins, look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing_shut</comment>
            <translation>Póngase de pie de modo que la cámara vea su cara. Hasta que empiece, mire una marca en la pared de detrás, a la altura de sus ojos.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face, and look over the screen at the wall.</source>
            <comment>ask.place.standing_wall</comment>
            <translation>Póngase de pie de modo que la cámara vea su cara, y mire la pared por encima de la pantalla.</translation>
        </message>
        <message>
            <source>To stop, sit down, or hold one hand up beside your head. Or step out of the picture for a few seconds.</source>
            <comment>ask.place.to_stop</comment>
            <translation>Para parar, siéntese, o levante una mano junto a la cabeza. O salga de la imagen unos segundos.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head. Or step aside, out of the picture, for a few seconds.</source>
            <comment>ask.place.to_stop_aside</comment>
            <translation>Para parar, levante una mano junto a la cabeza. O apártese hacia un lado, fuera de la imagen, unos segundos.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head.</source>
            <comment>ask.place.to_stop_hand</comment>
            <translation>Para parar, levante una mano junto a la cabeza.</translation>
        </message>
        <message>
            <source>The camera does not see: {what}.</source>
            <comment>ask.place.unseen</comment>
            <translation>La cámara no ve: {what}.</translation>
        </message>
        <message>
            <source>The camera does not watch this one. Press “Done” when you are through.</source>
            <comment>ask.place.walking</comment>
            <translation>La cámara no mira este. Pulse «Hecho» cuando termine.</translation>
        </message>
        <message>
            <source>Is somebody with you who reads to you?</source>
            <comment>ask.reader</comment>
            <translation>¿Hay alguien con usted que le lea?</translation>
        </message>
        <message>
            <source>They read the words on the screen aloud and tell you when to stop.</source>
            <comment>ask.reader.how</comment>
            <translation>Esa persona lee en voz alta lo que dice la pantalla y le dice cuándo parar.</translation>
        </message>
        <message>
            <source>This computer can't speak, and what comes now is led by spoken words.</source>
            <comment>ask.reader.no_words</comment>
            <translation>Este ordenador no puede hablar, y lo que viene ahora se guía con palabras.</translation>
        </message>
        <message>
            <source>This computer can't play a sound, and what comes now is led by sound.</source>
            <comment>ask.reader.silent</comment>
            <translation>Este ordenador no puede tocar sonido, y lo que viene ahora lo guía el sonido.</translation>
        </message>
        <message>
            <source>A short rest</source>
            <comment>ask.rest</comment>
            <translation>Un breve descanso</translation>
        </message>
        <message>
            <source>Go on now</source>
            <comment>ask.rest.go_on</comment>
            <translation>Seguir ya</translation>
        </message>
        <message>
            <source>Next: {name}</source>
            <comment>ask.rest.next</comment>
            <translation>Después: {name}</translation>
        </message>
        <message>
            <source>Rest until you feel as usual</source>
            <comment>ask.settle</comment>
            <translation>Descanse hasta sentirse como siempre</translation>
        </message>
        <message>
            <source>I feel as usual again</source>
            <comment>ask.settle.done</comment>
            <translation>Ya me siento como siempre</translation>
        </message>
        <message>
            <source>Take your time. If you don't feel as usual by then, that is all for today.</source>
            <comment>ask.settle.how</comment>
            <translation>Tómese su tiempo. Si para entonces no se siente como siempre, por hoy ya está.</translation>
        </message>
        <message>
            <source>Did you hear the beats just now?</source>
            <comment>ask.sound</comment>
            <translation>¿Ha oído los golpes ahora mismo?</translation>
        </message>
        <message>
            <source>Play again</source>
            <comment>ask.sound.again</comment>
            <translation>Tocar otra vez</translation>
        </message>
        <message>
            <source>What comes now is led by sound. Turn it up if you need to.</source>
            <comment>ask.sound.how</comment>
            <translation>Lo que viene ahora lo guía el sonido. Súbalo si lo necesita.</translation>
        </message>
        <message>
            <source>Hear the voice</source>
            <comment>ask.sound.voice</comment>
            <translation>Oír la voz</translation>
        </message>
        <message>
            <source>Something new may come now</source>
            <comment>ask.stage</comment>
            <translation>Ahora puede venir algo nuevo</translation>
        </message>
        <message>
            <source>Your plan has a next part: {name}. You may begin with it today, or wait. Do you want to begin?</source>
            <comment>ask.stage.how</comment>
            <translation>Su plan tiene una parte siguiente: {name}. Puede empezarla hoy o esperar. ¿Quiere empezar?</translation>
        </message>
        <message>
            <source>Did you have to hold on?</source>
            <comment>ask.steadied</comment>
            <translation>¿Tuvo que agarrarse?</translation>
        </message>
        <message>
            <source>To sway a little is normal. Holding on was right if you needed it.</source>
            <comment>ask.steadied.how</comment>
            <translation>Balancearse un poco es normal. Agarrarse estuvo bien si lo necesitaba.</translation>
        </message>
        <message>
            <source>Is your corner ready?</source>
            <comment>ask.support.corner_and_chair</comment>
            <translation>¿Está lista su esquina?</translation>
        </message>
        <message>
            <source>Your back is to a corner. A chair that does not roll stands in front of you, to hold on to. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.corner_and_chair.how</comment>
            <translation>Está de espaldas a una esquina. Delante hay una silla que no rueda, para agarrarse. El portátil está firme, más lejos de lo que alcanza su brazo, con el cable fuera del paso.</translation>
        </message>
        <message>
            <source>The camera can't hold you, and it calls nobody.</source>
            <comment>ask.support.fall</comment>
            <translation>La cámara no puede sujetarle, y no llama a nadie.</translation>
        </message>
        <message>
            <source>Is your helper next to you?</source>
            <comment>ask.support.helper</comment>
            <translation>¿Está a su lado la persona que le ayuda?</translation>
        </message>
        <message>
            <source>Your helper stands so near that a hand can hold you, the whole time. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.helper.how</comment>
            <translation>La persona que le ayuda está tan cerca que una mano puede sujetarle, todo el tiempo. El portátil está firme, más lejos de lo que alcanza su brazo, con el cable fuera del paso.</translation>
        </message>
        <message>
            <source>Wear flat shoes with a closed heel, or go barefoot. Keep the floor clear.</source>
            <comment>ask.support.shoes</comment>
            <translation>Lleve zapatos planos con el talón cerrado, o vaya sin zapatos. Mantenga el suelo despejado.</translation>
        </message>
        <message>
            <source>Your practice today</source>
            <comment>ask.today</comment>
            <translation>Su práctica de hoy</translation>
        </message>
        <message>
            <source>Begin</source>
            <comment>ask.today.begin</comment>
            <translation>Empezar</translation>
        </message>
        <message>
            <source>Exercises and rests take about {minutes} minutes.</source>
            <comment>ask.today.how</comment>
            <translation>Los ejercicios y los descansos duran unos {minutes} minutos.</translation>
        </message>
        <message>
            <source>Nothing in your plan can be done today.</source>
            <comment>ask.today.none</comment>
            <translation>Hoy no se puede hacer nada de su plan.</translation>
        </message>
        <message>
            <source>Not today:</source>
            <comment>ask.today.not</comment>
            <translation>Hoy no:</translation>
        </message>
        <message>
            <source>{number}.  {name}: {dose}</source>
            <comment>ask.today.row</comment>
            <translation>{number}.  {name}: {dose}</translation>
        </message>
        <message>
            <source>Exercises and rests take about a minute.</source>
            <comment>ask.today.short</comment>
            <translation>Los ejercicios y los descansos duran más o menos un minuto.</translation>
        </message>
        <message>
            <source>Today: {name}</source>
            <comment>ask.today.stage</comment>
            <translation>Hoy: {name}</translation>
        </message>
        <message>
            <source>{name}: {why}</source>
            <comment>ask.today.waits</comment>
            <translation>{name}: {why}</translation>
        </message>
        <message>
            <source>From your therapist: {words}</source>
            <comment>ask.today.words</comment>
            <translation>De su terapeuta: {words}</translation>
        </message>
        <message>
            <source>I feel unwell (U)</source>
            <comment>ask.unwell</comment>
            <translation>Me siento mal (U)</translation>
        </message>
        <message>
            <source>I feel unwell, key U</source>
            <comment>ask.unwell_name</comment>
            <translation>Me siento mal, tecla U</translation>
        </message>
        <message>
            <source>Sit still for a moment</source>
            <comment>ask.wait</comment>
            <translation>Siéntese sin moverse un momento</translation>
        </message>
        <message>
            <source>You saw two, so you stopped. Move your finger back out, and rest your arm.</source>
            <comment>ask.wait.double</comment>
            <translation>Vio dos y por eso paró. Vuelva a alejar el dedo y descanse el brazo.</translation>
        </message>
        <message>
            <source>Then you say how you feel.</source>
            <comment>ask.wait.how</comment>
            <translation>Después dice cómo se siente.</translation>
        </message>
        <message>
            <source>How far is the wall?</source>
            <comment>ask.wall.distance</comment>
            <translation>¿A qué distancia está la pared?</translation>
        </message>
        <message>
            <source>Sit as you will practise. With a tape measure how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.sitting</comment>
            <translation>Siéntese como va a practicar. Mida con una cinta cuánto hay de sus ojos, en línea recta, a la pared de detrás de la pantalla. Sirven de {least} a {most} cm.</translation>
        </message>
        <message>
            <source>Stand as you will practise, and have somebody measure with a tape how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.standing</comment>
            <translation>Póngase de pie como va a practicar. Pida a alguien que mida con una cinta cuánto hay de sus ojos, en línea recta, a la pared de detrás de la pantalla. Sirven de {least} a {most} cm.</translation>
        </message>
        <message>
            <source>Is the wall still {cm} cm from your eyes?</source>
            <comment>ask.wall.distance.still</comment>
            <translation>¿Sigue la pared a {cm} cm de sus ojos?</translation>
        </message>
        <message>
            <source>Centimetres</source>
            <comment>ask.wall.length</comment>
            <translation>Centímetros</translation>
        </message>
        <message>
            <source>I can't put notes there</source>
            <comment>ask.wall.none</comment>
            <translation>No puedo pegar notas ahí</translation>
        </message>
        <message>
            <source>How far apart are the two notes?</source>
            <comment>ask.wall.spacing</comment>
            <translation>¿Cuánto hay entre las dos notas?</translation>
        </message>
        <message>
            <source>Measure from the middle of one note to the middle of the other. {least} to {most} cm will do here; {usual} cm is a good distance.</source>
            <comment>ask.wall.spacing.how</comment>
            <translation>Mida del centro de una nota al centro de la otra. Aquí sirven de {least} a {most} cm; {usual} cm es una buena distancia.</translation>
        </message>
        <message>
            <source>Are the two notes still {cm} cm apart?</source>
            <comment>ask.wall.spacing.still</comment>
            <translation>¿Siguen las dos notas a {cm} cm una de otra?</translation>
        </message>
        <message>
            <source>That is how it was last time. If your place, the screen or the notes have moved since, measure again.</source>
            <comment>ask.wall.still.how</comment>
            <translation>Así fue la última vez. Si desde entonces se han movido su sitio, la pantalla o las notas, mida de nuevo.</translation>
        </message>
        <message>
            <source>Measure again</source>
            <comment>ask.wall.still.no</comment>
            <translation>Medir de nuevo</translation>
        </message>
        <message>
            <source>Yes, still {cm} cm</source>
            <comment>ask.wall.still.yes</comment>
            <translation>Sí, siguen siendo {cm} cm</translation>
        </message>
        <message>
            <source>Did you fall in the last week?</source>
            <comment>ask.weekly.falls</comment>
            <translation>¿Se ha caído en la última semana?</translation>
        </message>
        <message>
            <source>A slip or a trip counts too if you ended up on the ground. This comes once a week, for your therapist.</source>
            <comment>ask.weekly.falls.how</comment>
            <translation>Un resbalón o un tropiezo también cuenta si acabó en el suelo. Esta pregunta aparece una vez por semana, para su terapeuta.</translation>
        </message>
        <message>
            <source>Yes, more than once</source>
            <comment>ask.weekly.falls.more</comment>
            <translation>Sí, más de una vez</translation>
        </message>
        <message>
            <source>No, I did not fall</source>
            <comment>ask.weekly.falls.none</comment>
            <translation>No, no me he caído</translation>
        </message>
        <message>
            <source>Yes, once</source>
            <comment>ask.weekly.falls.once</comment>
            <translation>Sí, una vez</translation>
        </message>
        <message>
            <source>Were you hurt?</source>
            <comment>ask.weekly.hurt</comment>
            <translation>¿Se hizo daño?</translation>
        </message>
        <message>
            <source>A bruise counts. If you need help, get it now.</source>
            <comment>ask.weekly.hurt.how</comment>
            <translation>Un moretón también cuenta. Si necesita ayuda, pídala ahora.</translation>
        </message>
        <message>
            <source>Have your medicines changed?</source>
            <comment>ask.weekly.medicines_changed</comment>
            <translation>¿Han cambiado sus medicamentos?</translation>
        </message>
        <message>
            <source>A new one, more or less of one, or one that you stopped, since this was asked last. Yes or no is enough: no names are kept.</source>
            <comment>ask.weekly.medicines_changed.how</comment>
            <translation>Uno nuevo, más o menos de alguno, o uno que dejó de tomar, desde la última vez que se le preguntó. Basta con sí o no: no se guardan nombres.</translation>
        </message>
        <message>
            <source>I would rather not say</source>
            <comment>ask.weekly.skip</comment>
            <translation>Prefiero no decirlo</translation>
        </message>
        <message>
            <source>{key}: I am all right</source>
            <comment>ask.well.fine</comment>
            <translation>{key}: Estoy bien</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. Nobody has been called. Press 1 or 2.</source>
            <comment>ask.well.how</comment>
            <translation>La cámara vio una bajada repentina de su cabeza. No se ha llamado a nadie. Pulse 1 o 2.</translation>
        </message>
        <message>
            <source>{key}: I am not well</source>
            <comment>ask.well.not_well</comment>
            <translation>{key}: No estoy bien</translation>
        </message>
        <message>
            <source>Yes</source>
            <comment>ask.yes</comment>
            <translation>Sí</translation>
        </message>
        <message>
            <source>Later sessions are compared with this one. Is your therapist with you now?</source>
            <comment>baseline.ask</comment>
            <translation>Las sesiones siguientes se comparan con esta. ¿Está su terapeuta con usted ahora?</translation>
        </message>
        <message>
            <source>Yes, we do it together</source>
            <comment>baseline.ask.yes</comment>
            <translation>Sí, lo hacemos juntos</translation>
        </message>
        <message>
            <source>It is kept as your baseline.</source>
            <comment>baseline.kept</comment>
            <translation>Se guarda como su sesión de referencia.</translation>
        </message>
        <message>
            <source>Baseline: do the next session together with your therapist. Later ones are compared with it.</source>
            <comment>baseline.next</comment>
            <translation>Sesión de referencia: haga la próxima sesión junto con su terapeuta. Las siguientes se comparan con ella.</translation>
        </message>
        <message>
            <source>No baseline today</source>
            <comment>baseline.not</comment>
            <translation>Hoy sin referencia</translation>
        </message>
        <message>
            <source>Begin the baseline</source>
            <comment>baseline.start</comment>
            <translation>Empezar la referencia</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>call.amplitude</comment>
            <translation>de {low} a {high} grados</translation>
        </message>
        <message>
            <source>Only your therapist decides this. Is your therapist in this call now, and do they ask for the change?</source>
            <comment>call.ask</comment>
            <translation>Esto solo lo decide su terapeuta. ¿Está ahora en esta llamada y pide el cambio?</translation>
        </message>
        <message>
            <source>No, leave it as it is</source>
            <comment>call.ask.no</comment>
            <translation>No, dejarlo como está</translation>
        </message>
        <message>
            <source>Yes, my therapist asks for it</source>
            <comment>call.ask.yes</comment>
            <translation>Sí, mi terapeuta lo pide</translation>
        </message>
        <message>
            <source>Now {low} to {high} degrees.</source>
            <comment>call.changed.amplitude</comment>
            <translation>Ahora de {low} a {high} grados.</translation>
        </message>
        <message>
            <source>Now this comes next: {name}.</source>
            <comment>call.changed.next</comment>
            <translation>Ahora viene después: {name}.</translation>
        </message>
        <message>
            <source>Now {tempo} beats a minute.</source>
            <comment>call.changed.tempo</comment>
            <translation>Ahora {tempo} golpes por minuto.</translation>
        </message>
        <message>
            <source>Next: {name}. {what}</source>
            <comment>call.coming</comment>
            <translation>Después: {name}. {what}</translation>
        </message>
        <message>
            <source>Faster (F6)</source>
            <comment>call.faster</comment>
            <translation>Más rápido (F6)</translation>
        </message>
        <message>
            <source>Larger (F8)</source>
            <comment>call.larger</comment>
            <translation>Más grande (F8)</translation>
        </message>
        <message>
            <source>Mark this moment (F2)</source>
            <comment>call.mark</comment>
            <translation>Marcar este momento (F2)</translation>
        </message>
        <message>
            <source>Marked</source>
            <comment>call.marked</comment>
            <translation>Marcado</translation>
        </message>
        <message>
            <source>Another one first (F9)</source>
            <comment>call.other_next</comment>
            <translation>Antes otro (F9)</translation>
        </message>
        <message>
            <source>The plan allows no faster beat.</source>
            <comment>call.refused.fastest</comment>
            <translation>El plan no permite ir más rápido.</translation>
        </message>
        <message>
            <source>The plan allows nothing larger.</source>
            <comment>call.refused.largest</comment>
            <translation>El plan no permite nada más grande.</translation>
        </message>
        <message>
            <source>The notes on the wall set how far this one goes. They stay where they are.</source>
            <comment>call.refused.marks_on_wall</comment>
            <translation>Las notas en la pared marcan hasta dónde llega este ejercicio. Se quedan donde están.</translation>
        </message>
        <message>
            <source>The neck limit of the plan allows nothing larger.</source>
            <comment>call.refused.neck_limit</comment>
            <translation>El límite del cuello en el plan no permite nada más grande.</translation>
        </message>
        <message>
            <source>This one has no degrees to change.</source>
            <comment>call.refused.no_amplitude</comment>
            <translation>Este no tiene grados que cambiar.</translation>
        </message>
        <message>
            <source>This can be changed between two sets.</source>
            <comment>call.refused.not_now</comment>
            <translation>Esto se puede cambiar entre dos series.</translation>
        </message>
        <message>
            <source>Nothing to take back.</source>
            <comment>call.refused.nothing_to_undo</comment>
            <translation>No hay nada que deshacer.</translation>
        </message>
        <message>
            <source>Nothing else can come first.</source>
            <comment>call.refused.only_one</comment>
            <translation>Ningún otro puede ir antes.</translation>
        </message>
        <message>
            <source>This one has no beat to change.</source>
            <comment>call.refused.own_pace</comment>
            <translation>Este no tiene golpes que cambiar.</translation>
        </message>
        <message>
            <source>This screen has no room for a larger movement.</source>
            <comment>call.refused.screen</comment>
            <translation>En esta pantalla no cabe un movimiento más grande.</translation>
        </message>
        <message>
            <source>The plan allows no slower beat.</source>
            <comment>call.refused.slowest</comment>
            <translation>El plan no permite ir más lento.</translation>
        </message>
        <message>
            <source>The plan allows nothing smaller.</source>
            <comment>call.refused.smallest</comment>
            <translation>El plan no permite nada más pequeño.</translation>
        </message>
        <message>
            <source>Slower (F5)</source>
            <comment>call.slower</comment>
            <translation>Más lento (F5)</translation>
        </message>
        <message>
            <source>Smaller (F7)</source>
            <comment>call.smaller</comment>
            <translation>Más pequeño (F7)</translation>
        </message>
        <message>
            <source>Take it back (F10)</source>
            <comment>call.take_back</comment>
            <translation>Deshacer (F10)</translation>
        </message>
        <message>
            <source>Taken back.</source>
            <comment>call.taken_back</comment>
            <translation>Deshecho.</translation>
        </message>
        <message>
            <source>For your therapist in the call</source>
            <comment>call.title</comment>
            <translation>Para su terapeuta en la llamada</translation>
        </message>
        <message>
            <source>For your therapist: {figures}</source>
            <comment>came.figures</comment>
            <translation>Para su terapeuta: {figures}</translation>
        </message>
        <message>
            <source>gaze {degrees}° off</source>
            <comment>came.figures.gaze</comment>
            <translation>mirada desviada {degrees}°</translation>
        </message>
        <message>
            <source>nod {up}° up, {down}° down</source>
            <comment>came.figures.nod</comment>
            <translation>inclinación {up}° arriba, {down}° abajo</translation>
        </message>
        <message>
            <source>turn {right}° right, {left}° left</source>
            <comment>came.figures.turn</comment>
            <translation>giro {right}° a la derecha, {left}° a la izquierda</translation>
        </message>
        <message>
            <source>at the wall {degrees}° off</source>
            <comment>came.figures.wall</comment>
            <translation>en la pared, desviada {degrees}°</translation>
        </message>
        <message>
            <source>Your eyes, checked on {points} points: {off}. {verdict}</source>
            <comment>came.gaze</comment>
            <translation>Sus ojos, comprobados en {points} puntos: {off}. {verdict}</translation>
        </message>
        <message>
            <source>Your eyes were not seen on the points that check the set-up.</source>
            <comment>came.gaze.unseen</comment>
            <translation>No se vieron sus ojos en los puntos de comprobación.</translation>
        </message>
        <message>
            <source>The camera read {measured}°, the tape says {expected}°: {off}.</source>
            <comment>came.mark</comment>
            <translation>La cámara leyó {measured}°, la cinta dice {expected}°: {off}.</translation>
        </message>
        <message>
            <source>Do the check again</source>
            <comment>came.mark.again</comment>
            <translation>Repetir la comprobación</translation>
        </message>
        <message>
            <source>Do the check</source>
            <comment>came.mark.do</comment>
            <translation>Hacer la comprobación</translation>
        </message>
        <message>
            <source>Not done with this set-up.</source>
            <comment>came.mark.none</comment>
            <translation>No se ha hecho con esta preparación.</translation>
        </message>
        <message>
            <source>about half a degree off</source>
            <comment>came.off.half</comment>
            <translation>medio grado de error, más o menos</translation>
        </message>
        <message>
            <source>about {degrees} degrees off</source>
            <comment>came.off.more</comment>
            <translation>unos {degrees} grados de error</translation>
        </message>
        <message>
            <source>about one degree off</source>
            <comment>came.off.one</comment>
            <translation>un grado de error, más o menos</translation>
        </message>
        <message>
            <source>See each step</source>
            <comment>came.open</comment>
            <translation>Ver cada paso</translation>
        </message>
        <message>
            <source>Checking your eyes</source>
            <comment>came.part.check</comment>
            <translation>Comprobar sus ojos</translation>
        </message>
        <message>
            <source>That is far enough.</source>
            <comment>came.part.enough</comment>
            <translation>Es suficiente.</translation>
        </message>
        <message>
            <source>Your eyes were not seen.</source>
            <comment>came.part.eyes_unseen</comment>
            <translation>No se vieron sus ojos.</translation>
        </message>
        <message>
            <source>Looking at points</source>
            <comment>came.part.looks</comment>
            <translation>Mirar los puntos</translation>
        </message>
        <message>
            <source>Mark on the wall</source>
            <comment>came.part.mark</comment>
            <translation>Marca en la pared</translation>
        </message>
        <message>
            <source>On {count} of {points} points your face was not seen.</source>
            <comment>came.part.missed</comment>
            <translation>En {count} de {points} puntos no se vio su cara.</translation>
        </message>
        <message>
            <source>Your head moved by about {degrees}°.</source>
            <comment>came.part.moved</comment>
            <translation>Su cabeza se movió unos {degrees}°.</translation>
        </message>
        <message>
            <source>Your exercises need {asked}°.</source>
            <comment>came.part.need</comment>
            <translation>Sus ejercicios necesitan {asked}°.</translation>
        </message>
        <message>
            <source>Nodding</source>
            <comment>came.part.nod</comment>
            <translation>Subir y bajar la cabeza</translation>
        </message>
        <message>
            <source>{plus}° up, {minus}° down.</source>
            <comment>came.part.nod.far</comment>
            <translation>{plus}° hacia arriba, {minus}° hacia abajo.</translation>
        </message>
        <message>
            <source>Your eyes on these points: {off}. {verdict}</source>
            <comment>came.part.read</comment>
            <translation>Sus ojos en estos puntos: {off}. {verdict}</translation>
        </message>
        <message>
            <source>Keeping still</source>
            <comment>came.part.rest</comment>
            <translation>Quedarse quieto</translation>
        </message>
        <message>
            <source>Your head stayed still.</source>
            <comment>came.part.still</comment>
            <translation>Su cabeza se quedó quieta.</translation>
        </message>
        <message>
            <source>Turning the head</source>
            <comment>came.part.turn</comment>
            <translation>Girar la cabeza</translation>
        </message>
        <message>
            <source>{plus}° to the right, {minus}° left.</source>
            <comment>came.part.turn.far</comment>
            <translation>{plus}° a la derecha, {minus}° a la izquierda.</translation>
        </message>
        <message>
            <source>Your face was seen in only {percent} % of it.</source>
            <comment>came.part.unseen</comment>
            <translation>Su cara se vio solo en el {percent} % del paso.</translation>
        </message>
        <message>
            <source>Your head went far enough to every side.</source>
            <comment>came.reach</comment>
            <translation>Su cabeza llegó bastante lejos hacia todos los lados.</translation>
        </message>
        <message>
            <source>Downwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.down</comment>
            <translation>Hacia abajo su cabeza llegó a {went}°; los ejercicios necesitan {asked}°.</translation>
        </message>
        <message>
            <source>To the left your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.left</comment>
            <translation>Hacia la izquierda su cabeza llegó a {went}°; los ejercicios necesitan {asked}°.</translation>
        </message>
        <message>
            <source>To the right your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.right</comment>
            <translation>Hacia la derecha su cabeza llegó a {went}°; los ejercicios necesitan {asked}°.</translation>
        </message>
        <message>
            <source>Upwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.up</comment>
            <translation>Hacia arriba su cabeza llegó a {went}°; los ejercicios necesitan {asked}°.</translation>
        </message>
        <message>
            <source>Farther out your eyes may not be judged. Turn farther only if that is comfortable.</source>
            <comment>came.short.why</comment>
            <translation>Más allá quizá no se juzguen sus ojos. Vaya más lejos solo si le resulta cómodo.</translation>
        </message>
        <message>
            <source>How the set-up came out</source>
            <comment>came.title</comment>
            <translation>Cómo ha salido la preparación</translation>
        </message>
        <message>
            <source>That will do: only larger looks away are noticed.</source>
            <comment>came.verdict.fair</comment>
            <translation>Es suficiente: solo se notan las miradas más desviadas.</translation>
        </message>
        <message>
            <source>That is good.</source>
            <comment>came.verdict.good</comment>
            <translation>Eso está bien.</translation>
        </message>
        <message>
            <source>That is too far off: whether your eyes stay on the target is not judged.</source>
            <comment>came.verdict.poor</comment>
            <translation>Es demasiado: no se juzga si sus ojos siguen en el blanco.</translation>
        </message>
        <message>
            <source>Your eyes, checked at the wall: {off}. {verdict}</source>
            <comment>came.wall</comment>
            <translation>Sus ojos, comprobados en la pared: {off}. {verdict}</translation>
        </message>
        <message>
            <source>At one of the two notes on the wall your eyes were not seen.</source>
            <comment>came.wall.one</comment>
            <translation>En una de las dos notas de la pared no se vieron sus ojos.</translation>
        </message>
        <message>
            <source>Looking at the wall, your eyes were not seen.</source>
            <comment>came.wall.unseen</comment>
            <translation>Al mirar la pared no se vieron sus ojos.</translation>
        </message>
        <message>
            <source>Camera</source>
            <comment>camera.choose</comment>
            <translation>Cámara</translation>
        </message>
        <message>
            <source>First camera found</source>
            <comment>camera.default</comment>
            <translation>Primera cámara encontrada</translation>
        </message>
        <message>
            <source>Use the last set-up</source>
            <comment>camera.kept</comment>
            <translation>Usar la última preparación</translation>
        </message>
        <message>
            <source>Start the set-up</source>
            <comment>camera.next</comment>
            <translation>Empezar la preparación</translation>
        </message>
        <message>
            <source>You, as in a mirror</source>
            <comment>camera.picture</comment>
            <translation>Usted, como en un espejo</translation>
        </message>
        <message>
            <source>Can the camera see you?</source>
            <comment>camera.title</comment>
            <translation>¿Puede verle la cámara?</translation>
        </message>
        <message>
            <source>If it stays so, press “{button}”. You can note on the first page what you practise without the laptop.</source>
            <comment>camera.without</comment>
            <translation>Si sigue igual, pulse «{button}». Lo que practique sin el ordenador puede anotarlo en la primera página.</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>camera_off</comment>
            <translation>Cámara apagada</translation>
        </message>
        <message>
            <source>Cam. off</source>
            <comment>camera_off.short</comment>
            <translation>Cám. no</translation>
        </message>
        <message>
            <source>Camera on</source>
            <comment>camera_on</comment>
            <translation>Cámara encendida</translation>
        </message>
        <message>
            <source>Cam. on</source>
            <comment>camera_on.short</comment>
            <translation>Cám. sí</translation>
        </message>
        <message>
            <source>If the room spins, hold on, sit still, and stop.</source>
            <comment>care.bend</comment>
            <translation>Si la habitación da vueltas, agárrese, siéntese sin moverse y pare.</translation>
        </message>
        <message>
            <source>If the target blurs or jumps, go slower.</source>
            <comment>care.blur</comment>
            <translation>Si el punto se ve borroso o salta, vaya más despacio.</translation>
        </message>
        <message>
            <source>Put the chair against a wall. It must not have wheels.</source>
            <comment>care.chair</comment>
            <translation>Ponga la silla contra una pared. No debe tener ruedas.</translation>
        </message>
        <message>
            <source>If you see two tips, stop there. Move your finger back out.</source>
            <comment>care.double</comment>
            <translation>Si ve dos puntas, pare ahí. Vuelva a alejar el dedo.</translation>
        </message>
        <message>
            <source>Have moving or flashing scenes ever made you ill, or brought on a fit (seizure) or a migraine? Then do not do this.</source>
            <comment>care.flashes</comment>
            <translation>¿Alguna vez las imágenes que se mueven o parpadean le han hecho enfermar o le han provocado una convulsión o una migraña? Entonces no haga esto.</translation>
        </message>
        <message>
            <source>Stay where your neck feels fine. Stop if your neck hurts or your arm tingles.</source>
            <comment>care.neck</comment>
            <translation>Llegue solo hasta donde su cuello se sienta bien. Pare si le duele el cuello o siente hormigueo en el brazo.</translation>
        </message>
        <message>
            <source>Hand the ball over. Do not throw it.</source>
            <comment>care.partner</comment>
            <translation>Dé la pelota en la mano. No la lance.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop if it gets strong or does not go away.</source>
            <comment>care.settle</comment>
            <translation>Es normal sentir algo de mareo. Pare si es fuerte o no se va.</translation>
        </message>
        <message>
            <source>It must not hurt. Start small.</source>
            <comment>care.shoulder</comment>
            <translation>No debe doler. Empiece con poco.</translation>
        </message>
        <message>
            <source>Use a firm chair with no wheels. Keep both feet flat.</source>
            <comment>care.slide</comment>
            <translation>Use una silla firme sin ruedas. Los dos pies planos en el suelo.</translation>
        </message>
        <message>
            <source>Your helper stays within reach of you. The mat must not slip.</source>
            <comment>care.soft</comment>
            <translation>La persona que le ayuda se queda a su alcance. La colchoneta no debe resbalar.</translation>
        </message>
        <message>
            <source>Keep one hand on the rail and your eyes open.</source>
            <comment>care.stairs</comment>
            <translation>Una mano en la barandilla y los ojos abiertos.</translation>
        </message>
        <message>
            <source>Have the corner behind you and a firm chair or a helper in front. Wear flat shoes or go barefoot.</source>
            <comment>care.stand</comment>
            <translation>Tenga la esquina detrás y una silla firme o a alguien que le ayude delante. Lleve zapatos planos o vaya sin zapatos.</translation>
        </message>
        <message>
            <source>A little sway is fine. Hold on as soon as you need to.</source>
            <comment>care.steady</comment>
            <translation>Balancearse un poco está bien. Agárrese en cuanto lo necesite.</translation>
        </message>
        <message>
            <source>Use something soft. Leave it on the floor if it drops.</source>
            <comment>care.toss</comment>
            <translation>Use algo blando. Si cae, déjelo en el suelo.</translation>
        </message>
        <message>
            <source>Clear the floor. Turn on the light. Your helper is at your side, and behind you when you walk backward.</source>
            <comment>care.walk</comment>
            <translation>Despeje el suelo. Encienda la luz. La persona que le ayuda va a su lado, y detrás de usted cuando camine hacia atrás.</translation>
        </message>
        <message>
            <source>Sit on a firm chair. To stand, have a corner or a helper within reach.</source>
            <comment>caution.fall</comment>
            <translation>Siéntese en una silla firme. De pie: una esquina de la habitación o una persona cerca.</translation>
        </message>
        <message>
            <source>Call for emergency help at once for a sudden bad headache, double vision, trouble speaking or swallowing, weakness or numbness, not being able to stand or walk, fainting, chest pain, or sudden loss of hearing.</source>
            <comment>caution.help</comment>
            <translation>Llame enseguida a emergencias si tiene un dolor de cabeza fuerte y repentino, visión doble, dificultad para hablar o tragar, debilidad o entumecimiento, si no puede estar de pie o caminar, si se desmaya, o si tiene dolor en el pecho o pérdida repentina de la audición.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop and sit when you feel unwell, are in pain, or the dizziness does not settle.</source>
            <comment>caution.stop</comment>
            <translation>Es normal sentir algo de mareo. Pare y siéntese si se siente mal, si tiene dolor o si el mareo no se calma.</translation>
        </message>
        <message>
            <source>Do only what your therapist has told you. Turnpost does not find out what you have and does not choose your treatment.</source>
            <comment>caution.therapist</comment>
            <translation>Haga solo lo que le ha dicho su terapeuta. Turnpost no averigua qué tiene usted ni elige su tratamiento.</translation>
        </message>
        <message>
            <source>Leave</source>
            <comment>choose.leave</comment>
            <translation>Salir</translation>
        </message>
        <message>
            <source>{what}: less</source>
            <comment>choose.less</comment>
            <translation>{what}: menos</translation>
        </message>
        <message>
            <source>{what}: more</source>
            <comment>choose.more</comment>
            <translation>{what}: más</translation>
        </message>
        <message>
            <source>?</source>
            <comment>choose.none_yet</comment>
            <translation>?</translation>
        </message>
        <message>
            <source>The set-up worked. Choose what your therapist has asked for.</source>
            <comment>choose.ok</comment>
            <translation>La preparación ha salido bien. Elija lo que le ha pedido su terapeuta.</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>choose.repetitions</comment>
            <translation>Repeticiones</translation>
        </message>
        <message>
            <source>Start exercise</source>
            <comment>choose.start</comment>
            <translation>Empezar el ejercicio</translation>
        </message>
        <message>
            <source>Target size</source>
            <comment>choose.target</comment>
            <translation>Tamaño del punto</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>choose.target_value</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Beats a minute</source>
            <comment>choose.tempo</comment>
            <translation>Golpes por minuto</translation>
        </message>
        <message>
            <source>Choose an exercise</source>
            <comment>choose.title</comment>
            <translation>Elija un ejercicio</translation>
        </message>
        <message>
            <source>Sample clip, no camera</source>
            <comment>clip_on</comment>
            <translation>Vídeo de ejemplo, sin cámara</translation>
        </message>
        <message>
            <source>Sample</source>
            <comment>clip_on.short</comment>
            <translation>Ejemplo</translation>
        </message>
        <message>
            <source>Saving ...</source>
            <comment>close.saving</comment>
            <translation>Guardando ...</translation>
        </message>
        <message>
            <source>,</source>
            <comment>comma</comment>
            <translation>,</translation>
        </message>
        <message>
            <source>Chin up a little</source>
            <comment>cue.chin_down</comment>
            <translation>La barbilla un poco más alta</translation>
        </message>
        <message>
            <source>Keep your eyes open</source>
            <comment>cue.eyes_closed</comment>
            <translation>Mantenga los ojos abiertos</translation>
        </message>
        <message>
            <source>Let your eyes go with your head</source>
            <comment>cue.eyes_not_with_head</comment>
            <translation>Deje que los ojos vayan con la cabeza</translation>
        </message>
        <message>
            <source>Keep your eyes closed</source>
            <comment>cue.eyes_opened</comment>
            <translation>Mantenga los ojos cerrados</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>cue.gaze_off_target</comment>
            <translation>Los ojos en el punto</translation>
        </message>
        <message>
            <source>Look all the way to the target</source>
            <comment>cue.gaze_short</comment>
            <translation>Mire hasta llegar al punto</translation>
        </message>
        <message>
            <source>Eyes first, then let your head come</source>
            <comment>cue.head_first</comment>
            <translation>Primero los ojos, luego la cabeza</translation>
        </message>
        <message>
            <source>Keep your head still</source>
            <comment>cue.head_moved</comment>
            <translation>La cabeza quieta</translation>
        </message>
        <message>
            <source>Ear to the shoulder, nose ahead</source>
            <comment>cue.head_turned</comment>
            <translation>Oreja al hombro, nariz al frente</translation>
        </message>
        <message>
            <source>Turn the other way than the target</source>
            <comment>cue.head_with_target</comment>
            <translation>Gire al revés que el punto</translation>
        </message>
        <message>
            <source>Come back into the picture</source>
            <comment>cue.left_picture</comment>
            <translation>Vuelva a la imagen</translation>
        </message>
        <message>
            <source>Nearly: let your eyes get there first</source>
            <comment>cue.moved_together</comment>
            <translation>Casi: deje que los ojos lleguen antes</translation>
        </message>
        <message>
            <source>Not measured just now</source>
            <comment>cue.not_measured</comment>
            <translation>Ahora mismo no se mide</translation>
        </message>
        <message>
            <source>All the way up</source>
            <comment>cue.not_upright</comment>
            <translation>Enderécese del todo</translation>
        </message>
        <message>
            <source>Are you all right?</source>
            <comment>cue.possible_fall</comment>
            <translation>¿Se encuentra bien?</translation>
        </message>
        <message>
            <source>Let go when you feel steady</source>
            <comment>cue.steadied</comment>
            <translation>Suéltese cuando se sienta estable</translation>
        </message>
        <message>
            <source>A little higher, above your eyes</source>
            <comment>cue.throw_low</comment>
            <translation>Un poco más alto, por encima de los ojos</translation>
        </message>
        <message>
            <source>A little slower</source>
            <comment>cue.too_fast</comment>
            <translation>Un poco más despacio</translation>
        </message>
        <message>
            <source>A little smaller</source>
            <comment>cue.too_large</comment>
            <translation>Un poco menos amplio</translation>
        </message>
        <message>
            <source>A little faster</source>
            <comment>cue.too_slow</comment>
            <translation>Un poco más rápido</translation>
        </message>
        <message>
            <source>A little bigger</source>
            <comment>cue.too_small</comment>
            <translation>Un poco más amplio</translation>
        </message>
        <message>
            <source>You were asked to stop for today. Please rest, and practise again another day.</source>
            <comment>day_over</comment>
            <translation>Se le pidió que parara por hoy. Descanse y vuelva a practicar otro día.</translation>
        </message>
        <message>
            <source>Call your therapist before you practise again.</source>
            <comment>day_over.call</comment>
            <translation>Llame a su terapeuta antes de volver a practicar.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now: {number}.</source>
            <comment>day_over.emergency</comment>
            <translation>Si aún no ha llamado a emergencias, llame ahora: {number}.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now.</source>
            <comment>day_over.emergency_no_number</comment>
            <translation>Si aún no ha llamado a emergencias, llame ahora.</translation>
        </message>
        <message>
            <source>My therapist told me today that I may go on</source>
            <comment>day_over.go_on</comment>
            <translation>Mi terapeuta me ha dicho hoy que puedo seguir</translation>
        </message>
        <message>
            <source>Did your therapist say today that you may go on?</source>
            <comment>day_over.sure</comment>
            <translation>¿Le ha dicho hoy su terapeuta que puede seguir?</translation>
        </message>
        <message>
            <source>Your answer is kept for your therapist. Then the first questions come again.</source>
            <comment>day_over.sure.how</comment>
            <translation>Su respuesta se guarda para su terapeuta. Después vuelven las primeras preguntas.</translation>
        </message>
        <message>
            <source>Yes, my therapist said so today</source>
            <comment>day_over.yes</comment>
            <translation>Sí, mi terapeuta lo ha dicho hoy</translation>
        </message>
        <message>
            <source>The sample clip can't be paused.</source>
            <comment>demo.cannot_pause</comment>
            <translation>El vídeo de ejemplo no se puede pausar.</translation>
        </message>
        <message>
            <source>{figure} ◄ affected side</source>
            <comment>desk.affected</comment>
            <translation>{figure} ◄ lado afectado</translation>
        </message>
        <message>
            <source>{time} s</source>
            <comment>desk.at</comment>
            <translation>{time} s</translation>
        </message>
        <message>
            <source>millimetres</source>
            <comment>desk.axis.mm</comment>
            <translation>milímetros</translation>
        </message>
        <message>
            <source>degrees, up is up</source>
            <comment>desk.axis.pitch</comment>
            <translation>grados, arriba es arriba</translation>
        </message>
        <message>
            <source>degrees, right ear down is up</source>
            <comment>desk.axis.roll</comment>
            <translation>grados, oreja derecha abajo es arriba</translation>
        </message>
        <message>
            <source>degrees, near is up</source>
            <comment>desk.axis.vergence</comment>
            <translation>grados, cerca es arriba</translation>
        </message>
        <message>
            <source>degrees, right is up</source>
            <comment>desk.axis.yaw</comment>
            <translation>grados, derecha es arriba</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>desk.back</comment>
            <translation>Atrás (Esc)</translation>
        </message>
        <message>
            <source>◆ baseline, {text}</source>
            <comment>desk.baseline</comment>
            <translation>◆ referencia, {text}</translation>
        </message>
        <message>
            <source>◆ {value}</source>
            <comment>desk.baseline.mean</comment>
            <translation>◆ {value}</translation>
        </message>
        <message>
            <source>{text}; baseline of {day}</source>
            <comment>desk.baseline.of</comment>
            <translation>{text}; referencia del {day}</translation>
        </message>
        <message>
            <source>Compare with</source>
            <comment>desk.beside</comment>
            <translation>Comparar con</translation>
        </message>
        <message>
            <source>no other session</source>
            <comment>desk.beside.none</comment>
            <translation>ninguna otra sesión</translation>
        </message>
        <message>
            <source>between exercises</source>
            <comment>desk.between</comment>
            <translation>entre ejercicios</translation>
        </message>
        <message>
            <source>{count} answers tell no change below {least}</source>
            <comment>desk.change.answers</comment>
            <translation>{count} respuestas no muestran un cambio menor de {least}</translation>
        </message>
        <message>
            <source>▼ fell</source>
            <comment>desk.change.fell</comment>
            <translation>▼ bajó</translation>
        </message>
        <message>
            <source>{text}; {count} left out</source>
            <comment>desk.change.left_out</comment>
            <translation>{text}; {count} sin contar</translation>
        </message>
        <message>
            <source>no change (within ±{least})</source>
            <comment>desk.change.no_change</comment>
            <translation>sin cambio (dentro de ±{least})</translation>
        </message>
        <message>
            <source>{text}; another dose was asked</source>
            <comment>desk.change.other_dose</comment>
            <translation>{text}; se pedía otra dosis</translation>
        </message>
        <message>
            <source>▲ rose</source>
            <comment>desk.change.rose</comment>
            <translation>▲ subió</translation>
        </message>
        <message>
            <source>{text}, against the baseline of {day}</source>
            <comment>desk.change.since</comment>
            <translation>{text}, frente a la referencia del {day}</translation>
        </message>
        <message>
            <source>too few to compare</source>
            <comment>desk.change.too_few</comment>
            <translation>demasiado pocos para comparar</translation>
        </message>
        <message>
            <source>too uneven to tell a change below {least}</source>
            <comment>desk.change.uneven</comment>
            <translation>demasiado irregular para ver un cambio menor de {least}</translation>
        </message>
        <message>
            <source>not comparable: other limits</source>
            <comment>desk.change.unlike</comment>
            <translation>no comparable: otros límites</translation>
        </message>
        <message>
            <source>{measured} of {all} sessions measured, {doubt} of them in doubt</source>
            <comment>desk.chart</comment>
            <translation>{measured} de {all} sesiones medidas, {doubt} de ellas en duda</translation>
        </message>
        <message>
            <source>Change</source>
            <comment>desk.col.change</comment>
            <translation>Cambio</translation>
        </message>
        <message>
            <source>Figure</source>
            <comment>desk.col.figure</comment>
            <translation>Valor</translation>
        </message>
        <message>
            <source>At first</source>
            <comment>desk.col.first</comment>
            <translation>Al principio</translation>
        </message>
        <message>
            <source>Lately</source>
            <comment>desk.col.last</comment>
            <translation>Últimamente</translation>
        </message>
        <message>
            <source>All sessions</source>
            <comment>desk.col.trend</comment>
            <translation>Todas las sesiones</translation>
        </message>
        <message>
            <source>Condition: {text}</source>
            <comment>desk.condition</comment>
            <translation>Condición: {text}</translation>
        </message>
        <message>
            <source>Practice is counted up to {day}.</source>
            <comment>desk.counted_to</comment>
            <translation>La práctica está contada hasta el {day}.</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>desk.day</comment>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>desk.day.short</comment>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>{before} → {after}</source>
            <comment>desk.dizzy</comment>
            <translation>{before} → {after}</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>desk.doubt.dark</comment>
            <translation>oscuro</translation>
        </message>
        <message>
            <source>? In doubt for {length} s: {why}</source>
            <comment>desk.doubt.of</comment>
            <translation>? {length} s en duda: {why}</translation>
        </message>
        <message>
            <source>the face was hard to follow</source>
            <comment>desk.doubt.unsure</comment>
            <translation>costaba seguir la cara</translation>
        </message>
        <message>
            <source>Typed and not added to the notes yet, gone if you close now: {text}</source>
            <comment>desk.draft</comment>
            <translation>Escrito y aún sin añadir a las notas; si cierra ahora, se pierde: {text}</translation>
        </message>
        <message>
            <source>Close without it</source>
            <comment>desk.draft.drop</comment>
            <translation>Cerrar sin ella</translation>
        </message>
        <message>
            <source>Go to the note</source>
            <comment>desk.draft.show</comment>
            <translation>Ir a la nota</translation>
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
            <translation>No leído: {why}</translation>
        </message>
        <message>
            <source>{name}: {value}</source>
            <comment>desk.figure</comment>
            <translation>{name}: {value}</translation>
        </message>
        <message>
            <source>Figures</source>
            <comment>desk.figures</comment>
            <translation>Valores</translation>
        </message>
        <message>
            <source>All exercises</source>
            <comment>desk.filter.all</comment>
            <translation>Todos los ejercicios</translation>
        </message>
        <message>
            <source>Changes only</source>
            <comment>desk.filter.changed</comment>
            <translation>Solo cambios</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.filter.exercise</comment>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>From</source>
            <comment>desk.filter.from</comment>
            <translation>Desde</translation>
        </message>
        <message>
            <source>Show all</source>
            <comment>desk.filter.reset</comment>
            <translation>Mostrar todo</translation>
        </message>
        <message>
            <source>to</source>
            <comment>desk.filter.to</comment>
            <translation>hasta</translation>
        </message>
        <message>
            <source>Urgent</source>
            <comment>desk.first</comment>
            <translation>Urgente</translation>
        </message>
        <message>
            <source>In doubt: {why}</source>
            <comment>desk.flag</comment>
            <translation>En duda: {why}</translation>
        </message>
        <message>
            <source>▨ Not measured for {length} s: {why}</source>
            <comment>desk.gap.of</comment>
            <translation>▨ {length} s no medidos: {why}</translation>
        </message>
        <message>
            <source>Read on</source>
            <comment>desk.go_on</comment>
            <translation>Seguir leyendo</translation>
        </message>
        <message>
            <source>{value}?</source>
            <comment>desk.in_doubt</comment>
            <translation>{value}?</translation>
        </message>
        <message>
            <source>● session   ◆ baseline   ○ ? in doubt, not compared   ┆ not measured   grey: asked for   At first, Lately: means of up to 5</source>
            <comment>desk.key</comment>
            <translation>● sesión   ◆ referencia   ○ ? en duda, no comparado   ┆ no medido   gris: pedido   Al principio, Últimamente: medias de hasta 5</translation>
        </message>
        <message>
            <source>in doubt</source>
            <comment>desk.key.doubt</comment>
            <translation>en duda</translation>
        </message>
        <message>
            <source>noticed</source>
            <comment>desk.key.event</comment>
            <translation>observado</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>desk.key.gap</comment>
            <translation>no medido</translation>
        </message>
        <message>
            <source>marked</source>
            <comment>desk.key.mark</comment>
            <translation>marcado</translation>
        </message>
        <message>
            <source>marked not valid</source>
            <comment>desk.key.not_valid</comment>
            <translation>marcada como no válida</translation>
        </message>
        <message>
            <source>pause</source>
            <comment>desk.key.pause</comment>
            <translation>pausa</translation>
        </message>
        <message>
            <source>every other repetition</source>
            <comment>desk.key.repetition</comment>
            <translation>una repetición de cada dos</translation>
        </message>
        <message>
            <source>Last session: {day}</source>
            <comment>desk.last</comment>
            <translation>Última sesión: {day}</translation>
        </message>
        <message>
            <source>eyes in the head</source>
            <comment>desk.line.eye</comment>
            <translation>ojos en la cabeza</translation>
        </message>
        <message>
            <source>neck forward</source>
            <comment>desk.line.fore_aft</comment>
            <translation>cuello hacia delante</translation>
        </message>
        <message>
            <source>gaze</source>
            <comment>desk.line.gaze</comment>
            <translation>mirada</translation>
        </message>
        <message>
            <source>head</source>
            <comment>desk.line.head</comment>
            <translation>cabeza</translation>
        </message>
        <message>
            <source>neck height</source>
            <comment>desk.line.height</comment>
            <translation>altura del cuello</translation>
        </message>
        <message>
            <source>{line} not measured</source>
            <comment>desk.line.none</comment>
            <translation>{line} no medido</translation>
        </message>
        <message>
            <source>neck sideways</source>
            <comment>desk.line.sideways</comment>
            <translation>cuello hacia los lados</translation>
        </message>
        <message>
            <source>target</source>
            <comment>desk.line.target</comment>
            <translation>punto</translation>
        </message>
        <message>
            <source>{line} {value}</source>
            <comment>desk.line.value</comment>
            <translation>{line} {value}</translation>
        </message>
        <message>
            <source>angle between the eyes</source>
            <comment>desk.line.vergence</comment>
            <translation>ángulo entre los ojos</translation>
        </message>
        <message>
            <source>Reading the session ...</source>
            <comment>desk.loading</comment>
            <translation>Leyendo la sesión ...</translation>
        </message>
        <message>
            <source>Looking through the folder ...</source>
            <comment>desk.looking</comment>
            <translation>Mirando la carpeta ...</translation>
        </message>
        <message>
            <source>⚑ marked at {time} s</source>
            <comment>desk.mark.at</comment>
            <translation>⚑ marcado a los {time} s</translation>
        </message>
        <message>
            <source>⚑ Marked while it went on</source>
            <comment>desk.marked</comment>
            <translation>⚑ Marcado mientras se hacía</translation>
        </message>
        <message>
            <source>⚑ Marked outside the exercise</source>
            <comment>desk.marked.outside</comment>
            <translation>⚑ Marcado fuera del ejercicio</translation>
        </message>
        <message>
            <source>and {count} more</source>
            <comment>desk.more</comment>
            <translation>y {count} más</translation>
        </message>
        <message>
            <source>Sessions without a pseudonym</source>
            <comment>desk.nameless</comment>
            <translation>Sesiones sin seudónimo</translation>
        </message>
        <message>
            <source>Each stands by itself</source>
            <comment>desk.nameless.each</comment>
            <translation>Cada una va por separado</translation>
        </message>
        <message>
            <source>Whose sessions these are is not known: they may be of several people. So each stands by itself, without practice, trends and conditions. Give each person a plan of their own, with a pseudonym; what is practised with it from then on has a name.</source>
            <comment>desk.nameless.what</comment>
            <translation>No se sabe de quién son estas sesiones: pueden ser de varias personas. Por eso cada una va por separado, sin práctica, tendencias ni condiciones. Dé a cada persona un plan propio, con un seudónimo; lo que se practique con él desde entonces tendrá nombre.</translation>
        </message>
        <message>
            <source>No plan at hand</source>
            <comment>desk.no_plan</comment>
            <translation>Sin plan disponible</translation>
        </message>
        <message>
            <source>this folder has only the summary</source>
            <comment>desk.no_samples</comment>
            <translation>esta carpeta solo tiene el resumen</translation>
        </message>
        <message>
            <source>Nothing was practised in this session. What was answered is under Figures.</source>
            <comment>desk.no_sets</comment>
            <translation>En esta sesión no se practicó nada. Lo que se respondió está en «Valores».</translation>
        </message>
        <message>
            <source>The measured samples of this session are not in the folder: {why}</source>
            <comment>desk.no_trace</comment>
            <translation>Los datos medidos de esta sesión no están en la carpeta: {why}</translation>
        </message>
        <message>
            <source>There are no sessions in this folder yet.</source>
            <comment>desk.nobody</comment>
            <translation>Todavía no hay sesiones en esta carpeta.</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>desk.not_asked</comment>
            <translation>sin preguntar</translation>
        </message>
        <message>
            <source>{author}, {day}: {text}</source>
            <comment>desk.note</comment>
            <translation>{author}, {day}: {text}</translation>
        </message>
        <message>
            <source>Add note</source>
            <comment>desk.note.add</comment>
            <translation>Añadir nota</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>desk.note.failed</comment>
            <translation>No guardado: {why}</translation>
        </message>
        <message>
            <source>repetition {number} is not valid</source>
            <comment>desk.note.invalid</comment>
            <translation>la repetición {number} no es válida</translation>
        </message>
        <message>
            <source>Notes stand beside the measured figures, which never change.</source>
            <comment>desk.note.kept</comment>
            <translation>Las notas están junto a los valores medidos, que nunca cambian.</translation>
        </message>
        <message>
            <source>Mark repetition not valid</source>
            <comment>desk.note.mark</comment>
            <translation>Marcar repetición como no válida</translation>
        </message>
        <message>
            <source>There is nothing of yours to take back here: a note is taken back only by who wrote it, on the computer on which it was written.</source>
            <comment>desk.note.no_undo</comment>
            <translation>Aquí no hay nada suyo que retirar: una nota solo la retira quien la escribió, y en el ordenador en el que la escribió.</translation>
        </message>
        <message>
            <source>No notes yet.</source>
            <comment>desk.note.none</comment>
            <translation>Todavía no hay notas.</translation>
        </message>
        <message>
            <source>This older note may be of another computer with the same login: {note}</source>
            <comment>desk.note.older</comment>
            <translation>Esta nota más antigua puede ser de otro ordenador con el mismo usuario: {note}</translation>
        </message>
        <message>
            <source>Take this old note back</source>
            <comment>desk.note.sure</comment>
            <translation>Retirar esta nota antigua</translation>
        </message>
        <message>
            <source>A note on this session</source>
            <comment>desk.note.text</comment>
            <translation>Una nota sobre esta sesión</translation>
        </message>
        <message>
            <source>Undo my last note</source>
            <comment>desk.note.undo</comment>
            <translation>Deshacer mi última nota</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.notes</comment>
            <translation>Notas</translation>
        </message>
        <message>
            <source>{count}</source>
            <comment>desk.notes_count</comment>
            <translation>{count}</translation>
        </message>
        <message>
            <source>nothing practised</source>
            <comment>desk.nothing_done</comment>
            <translation>nada practicado</translation>
        </message>
        <message>
            <source>Nothing that needs a look first</source>
            <comment>desk.nothing_first</comment>
            <translation>Nada que haya que mirar primero</translation>
        </message>
        <message>
            <source>Another folder</source>
            <comment>desk.open</comment>
            <translation>Otra carpeta</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>desk.pause</comment>
            <translation>en pausa</translation>
        </message>
        <message>
            <source>Ⅱ Paused for {length} s</source>
            <comment>desk.pause.of</comment>
            <translation>Ⅱ Pausa de {length} s</translation>
        </message>
        <message>
            <source>People, most urgent first</source>
            <comment>desk.people</comment>
            <translation>Personas, primero lo más urgente</translation>
        </message>
        <message>
            <source>Plan (Ctrl+E)</source>
            <comment>desk.plan</comment>
            <translation>Plan (Ctrl+E)</translation>
        </message>
        <message>
            <source>Practice</source>
            <comment>desk.practice</comment>
            <translation>Práctica</translation>
        </message>
        <message>
            <source>Today's baseline is here. Set ranges and tempo by it?</source>
            <comment>desk.ranges</comment>
            <translation>La referencia de hoy ya está. ¿Ajustar amplitudes y ritmo según ella?</translation>
        </message>
        <message>
            <source>Ranges and tempo</source>
            <comment>desk.ranges.set</comment>
            <translation>Amplitudes y ritmo</translation>
        </message>
        <message>
            <source>People: {people}, sessions: {sessions}</source>
            <comment>desk.read</comment>
            <translation>Personas: {people}, sesiones: {sessions}</translation>
        </message>
        <message>
            <source>Reading {done} of {of} files ...</source>
            <comment>desk.reading</comment>
            <translation>Leyendo {done} de {of} archivos ...</translation>
        </message>
        <message>
            <source>repetition {number}</source>
            <comment>desk.rep</comment>
            <translation>repetición {number}</translation>
        </message>
        <message>
            <source>{what} (marked not valid)</source>
            <comment>desk.rep.invalid</comment>
            <translation>{what} (marcada como no válida)</translation>
        </message>
        <message>
            <source>{side} {value}</source>
            <comment>desk.rep.turn</comment>
            <translation>{side} {value}</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>desk.scol.dizzy</comment>
            <translation>Mareo</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>desk.scol.done</comment>
            <translation>Ejercicios</translation>
        </message>
        <message>
            <source>In doubt</source>
            <comment>desk.scol.doubt</comment>
            <translation>En duda</translation>
        </message>
        <message>
            <source>How it ended</source>
            <comment>desk.scol.ended</comment>
            <translation>Cómo terminó</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.scol.notes</comment>
            <translation>Notas</translation>
        </message>
        <message>
            <source>When</source>
            <comment>desk.scol.when</comment>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>{person}, {day}</source>
            <comment>desk.session</comment>
            <translation>{person}, {day}</translation>
        </message>
        <message>
            <source>Sessions</source>
            <comment>desk.sessions</comment>
            <translation>Sesiones</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.set</comment>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>{name} ({number} of {of})</source>
            <comment>desk.set.part</comment>
            <translation>{name} ({number} de {of})</translation>
        </message>
        <message>
            <source>In {days} days: {share} % of bouts asked</source>
            <comment>desk.share</comment>
            <translation>En {days} días: {share} % de las prácticas pedidas</translation>
        </message>
        <message>
            <source>In one day: {share} % of bouts asked</source>
            <comment>desk.share.one</comment>
            <translation>En un día: {share} % de las prácticas pedidas</translation>
        </message>
        <message>
            <source>Open session</source>
            <comment>desk.show</comment>
            <translation>Abrir sesión</translation>
        </message>
        <message>
            <source>Open the session of {day}</source>
            <comment>desk.show_name</comment>
            <translation>Abrir la sesión del {day}</translation>
        </message>
        <message>
            <source>affected side: both</source>
            <comment>desk.side.both</comment>
            <translation>lado afectado: los dos</translation>
        </message>
        <message>
            <source>affected side: left</source>
            <comment>desk.side.left</comment>
            <translation>lado afectado: izquierdo</translation>
        </message>
        <message>
            <source>affected side: right</source>
            <comment>desk.side.right</comment>
            <translation>lado afectado: derecho</translation>
        </message>
        <message>
            <source>affected side not known</source>
            <comment>desk.side.unknown</comment>
            <translation>lado afectado desconocido</translation>
        </message>
        <message>
            <source>Next: {text}</source>
            <comment>desk.step</comment>
            <translation>A continuación: {text}</translation>
        </message>
        <message>
            <source>Stop reading</source>
            <comment>desk.stop</comment>
            <translation>Dejar de leer</translation>
        </message>
        <message>
            <source>Stopped: only a part of the folder was read ({count} sessions).</source>
            <comment>desk.stopped</comment>
            <translation>Detenido: solo se leyó una parte de la carpeta (sesiones: {count}).</translation>
        </message>
        <message>
            <source>Bouts a day. {text}</source>
            <comment>desk.strip</comment>
            <translation>Prácticas por día. {text}</translation>
        </message>
        <message>
            <source>a box a bout: full = measured, half = not seen by the camera, empty = asked, not done</source>
            <comment>desk.strip.key</comment>
            <translation>una casilla por práctica: llena = medida, media = no vista por la cámara, vacía = pedida, no hecha</translation>
        </message>
        <message>
            <source>See</source>
            <comment>desk.then</comment>
            <translation>Ver</translation>
        </message>
        <message>
            <source>Review</source>
            <comment>desk.title</comment>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Baseline together</source>
            <comment>desk.together</comment>
            <translation>Referencia</translation>
        </message>
        <message>
            <source>The program opens beside this window. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.begun</comment>
            <translation>El programa se abre junto a esta ventana. Cuando termine, la sesión aparecerá aquí por sí sola.</translation>
        </message>
        <message>
            <source>Something goes on in the program's window. End it there, then begin here again.</source>
            <comment>desk.together.busy</comment>
            <translation>En la ventana del programa hay algo en marcha. Termínelo allí y vuelva a empezar aquí.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip until it is closed. Close it, and this window with it; then start the program again and begin here once more.</source>
            <comment>desk.together.clip</comment>
            <translation>La ventana del programa muestra el vídeo de ejemplo hasta que se cierra. Ciérrela, y con ella esta ventana; después abra de nuevo el programa y vuelva a empezar aquí.</translation>
        </message>
        <message>
            <source>The program could not be opened.</source>
            <comment>desk.together.failed</comment>
            <translation>No se pudo abrir el programa.</translation>
        </message>
        <message>
            <source>The program's window is ready for it. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.here</comment>
            <translation>La ventana del programa está lista para ella. Cuando termine, la sesión aparecerá aquí por sí sola.</translation>
        </message>
        <message>
            <source>This folder has no plan with this pseudonym. Make one first.</source>
            <comment>desk.together.no_plan</comment>
            <translation>En esta carpeta no hay ningún plan con este seudónimo. Haga uno primero.</translation>
        </message>
        <message>
            <source>The program is open already. Close its window first, then begin here again.</source>
            <comment>desk.together.open</comment>
            <translation>El programa ya está abierto. Cierre primero su ventana y vuelva a empezar aquí.</translation>
        </message>
        <message>
            <source>The program could not take the plan; its window says why.</source>
            <comment>desk.together.refused</comment>
            <translation>El programa no pudo aceptar el plan; su ventana dice por qué.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip. Go back to the first page there, then begin here again.</source>
            <comment>desk.together.sample</comment>
            <translation>La ventana del programa muestra el vídeo de ejemplo. Vuelva allí a la primera página y empiece aquí de nuevo.</translation>
        </message>
        <message>
            <source>Head, gaze and target over time</source>
            <comment>desk.trace</comment>
            <translation>Cabeza, mirada y punto a lo largo del tiempo</translation>
        </message>
        <message>
            <source>← → cursor, with Shift a second; + − zoom; Page keys move; Home shows the whole exercise</source>
            <comment>desk.trace.how</comment>
            <translation>← → cursor, con Mayús un segundo; + − ampliación; las teclas de página mueven; Inicio muestra el ejercicio entero</translation>
        </message>
        <message>
            <source>Trends</source>
            <comment>desk.trends</comment>
            <translation>Tendencias</translation>
        </message>
        <message>
            <source>{what} (with {count} marked not valid)</source>
            <comment>desk.trends.marked</comment>
            <translation>{what} (con {count} marcadas como no válidas)</translation>
        </message>
        <message>
            <source>Files left out: {count}</source>
            <comment>desk.unread</comment>
            <translation>Archivos no tenidos en cuenta: {count}</translation>
        </message>
        <message>
            <source>Files left out, and why</source>
            <comment>desk.unread.name</comment>
            <translation>Archivos no tenidos en cuenta, y por qué</translation>
        </message>
        <message>
            <source>{path}: {why}</source>
            <comment>desk.unread.row</comment>
            <translation>{path}: {why}</translation>
        </message>
        <message>
            <source>Files left out: {count} (could not be read: {not_read})</source>
            <comment>desk.unread.some</comment>
            <translation>Archivos omitidos: {count} (ilegibles: {not_read})</translation>
        </message>
        <message>
            <source>Over time</source>
            <comment>desk.what</comment>
            <translation>Recorrido</translation>
        </message>
        <message>
            <source>Whole session</source>
            <comment>desk.whole</comment>
            <translation>Sesión entera</translation>
        </message>
        <message>
            <source>Zoom in</source>
            <comment>desk.zoom_in</comment>
            <translation>Ampliar</translation>
        </message>
        <message>
            <source>Zoom out</source>
            <comment>desk.zoom_out</comment>
            <translation>Reducir</translation>
        </message>
        <message>
            <source>Beware: {what}.</source>
            <comment>edit.about.cautions</comment>
            <translation>Cuidado: {what}.</translation>
        </message>
        <message>
            <source>{what}.</source>
            <comment>edit.about.counted</comment>
            <translation>{what}.</translation>
        </message>
        <message>
            <source>Its time counts as gaze stabilisation.</source>
            <comment>edit.about.minutes</comment>
            <translation>Su tiempo cuenta como estabilización de la mirada.</translation>
        </message>
        <message>
            <source>Not measured: {what}.</source>
            <comment>edit.about.not_measured</comment>
            <translation>No se mide: {what}.</translation>
        </message>
        <message>
            <source>The patient reads: “{name}”</source>
            <comment>edit.about.patient</comment>
            <translation>El paciente lee: «{name}»</translation>
        </message>
        <message>
            <source>Add (Ctrl+E)</source>
            <comment>edit.add</comment>
            <translation>Añadir (Ctrl+E)</translation>
        </message>
        <message>
            <source>Add an exercise from the catalogue</source>
            <comment>edit.add.name</comment>
            <translation>Añadir un ejercicio del catálogo</translation>
        </message>
        <message>
            <source>Add stage</source>
            <comment>edit.add_stage</comment>
            <translation>Añadir etapa</translation>
        </message>
        <message>
            <source>Add a stage at the end</source>
            <comment>edit.add_stage.name</comment>
            <translation>Añadir una etapa al final</translation>
        </message>
        <message>
            <source>Add it (Enter)</source>
            <comment>edit.add_this</comment>
            <translation>Añadirlo (Intro)</translation>
        </message>
        <message>
            <source>Figures come from</source>
            <comment>edit.after</comment>
            <translation>Los valores vienen de</translation>
        </message>
        <message>
            <source>What stands further up in the plan.</source>
            <comment>edit.after.how</comment>
            <translation>Lo que está más arriba en el plan.</translation>
        </message>
        <message>
            <source>Age group</source>
            <comment>edit.age</comment>
            <translation>Grupo de edad</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.as_usual</comment>
            <translation>lo habitual: {usual}</translation>
        </message>
        <message>
            <source>Ask about nausea too</source>
            <comment>edit.ask.nausea</comment>
            <translation>Preguntar también por náuseas</translation>
        </message>
        <message>
            <source>Ask about unsteadiness too</source>
            <comment>edit.ask.unsteadiness</comment>
            <translation>Preguntar también por inestabilidad</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>edit.back</comment>
            <translation>Atrás (Esc)</translation>
        </message>
        <message>
            <source>Baseline of {day}</source>
            <comment>edit.baseline</comment>
            <translation>Referencia del {day}</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>edit.baseline.bpm</comment>
            <translation>{tempo} pulsos por minuto</translation>
        </message>
        <message>
            <source>{new} instead of {old}</source>
            <comment>edit.baseline.instead</comment>
            <translation>{new} en vez de {old}</translation>
        </message>
        <message>
            <source>{entry}: {what}</source>
            <comment>edit.baseline.line</comment>
            <translation>{entry}: {what}</translation>
        </message>
        <message>
            <source>{told}. Not offered: {why}</source>
            <comment>edit.baseline.not_offered</comment>
            <translation>{told}. No se ofrece: {why}</translation>
        </message>
        <message>
            <source>nothing measured</source>
            <comment>edit.baseline.nothing</comment>
            <translation>nada medido</translation>
        </message>
        <message>
            <source>{low} to {high}°</source>
            <comment>edit.baseline.range</comment>
            <translation>de {low} a {high}°</translation>
        </message>
        <message>
            <source>symptoms +{points}</source>
            <comment>edit.baseline.rise</comment>
            <translation>síntomas +{points}</translation>
        </message>
        <message>
            <source>{deg}° to both sides</source>
            <comment>edit.baseline.swing</comment>
            <translation>{deg}° a ambos lados</translation>
        </message>
        <message>
            <source>Take over: {what}</source>
            <comment>edit.baseline.take</comment>
            <translation>Tomar: {what}</translation>
        </message>
        <message>
            <source>Take over for all exercises</source>
            <comment>edit.baseline.take_all</comment>
            <translation>Tomar para todos los ejercicios</translation>
        </message>
        <message>
            <source>{told}. To take over: {what}</source>
            <comment>edit.baseline.takes</comment>
            <translation>{told}. Para tomar: {what}</translation>
        </message>
        <message>
            <source>nobody said whether the target was clear</source>
            <comment>edit.baseline.why.clarity_not_asked</comment>
            <translation>nadie dijo si el objetivo se veía nítido</translation>
        </message>
        <message>
            <source>the figures are in doubt</source>
            <comment>edit.baseline.why.doubt</comment>
            <translation>los valores están en duda</translation>
        </message>
        <message>
            <source>a session of that day was broken off</source>
            <comment>edit.baseline.why.ended</comment>
            <translation>una sesión de ese día se interrumpió</translation>
        </message>
        <message>
            <source>a possible fall was seen</source>
            <comment>edit.baseline.why.fall</comment>
            <translation>se vio una posible caída</translation>
        </message>
        <message>
            <source>too few turns</source>
            <comment>edit.baseline.why.few_turns</comment>
            <translation>demasiado pocos giros</translation>
        </message>
        <message>
            <source>no score was given after it</source>
            <comment>edit.baseline.why.no_scores</comment>
            <translation>después no se dio ninguna puntuación</translation>
        </message>
        <message>
            <source>the target was not clear</source>
            <comment>edit.baseline.why.not_clear</comment>
            <translation>el objetivo no se veía nítido</translation>
        </message>
        <message>
            <source>not done that day</source>
            <comment>edit.baseline.why.not_done</comment>
            <translation>no se hizo ese día</translation>
        </message>
        <message>
            <source>it was not measured</source>
            <comment>edit.baseline.why.not_measured</comment>
            <translation>no se midió</translation>
        </message>
        <message>
            <source>symptoms did not settle</source>
            <comment>edit.baseline.why.not_settled</comment>
            <translation>los síntomas no se calmaron</translation>
        </message>
        <message>
            <source>done as another exercise</source>
            <comment>edit.baseline.why.other</comment>
            <translation>se hizo como otro ejercicio</translation>
        </message>
        <message>
            <source>symptoms rose by more than 2</source>
            <comment>edit.baseline.why.rose</comment>
            <translation>los síntomas subieron más de 2</translation>
        </message>
        <message>
            <source>the turns were too small</source>
            <comment>edit.baseline.why.too_small</comment>
            <translation>los giros fueron demasiado pequeños</translation>
        </message>
        <message>
            <source>Bouts a day</source>
            <comment>edit.bouts</comment>
            <translation>Prácticas al día</translation>
        </message>
        <message>
            <source>Usual: 3, at least three a day ({source})</source>
            <comment>edit.bouts.how</comment>
            <translation>Habitual: 3, al menos tres al día ({source})</translation>
        </message>
        <message>
            <source>{tempo} a minute</source>
            <comment>edit.bpm</comment>
            <translation>{tempo} por minuto</translation>
        </message>
        <message>
            <source>Cancel</source>
            <comment>edit.cancel</comment>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Catalogue</source>
            <comment>edit.catalogue</comment>
            <translation>Catálogo</translation>
        </message>
        <message>
            <source>The target was said to be clear</source>
            <comment>edit.clear</comment>
            <translation>Se dijo que el punto era claro</translation>
        </message>
        <message>
            <source>Before anything but seated work</source>
            <comment>edit.clearance</comment>
            <translation>Antes de todo lo que no sea sentado</translation>
        </message>
        <message>
            <source>Until all of this is ticked, only what the seated starter has is offered.</source>
            <comment>edit.clearance.how</comment>
            <translation>Hasta que todo esté marcado, solo se ofrece lo que tiene el comienzo en la silla.</translation>
        </message>
        <message>
            <source>I am satisfied of this</source>
            <comment>edit.cleared</comment>
            <translation>Lo he comprobado</translation>
        </message>
        <message>
            <source>Item {number}: I am satisfied of this</source>
            <comment>edit.cleared.name</comment>
            <translation>Punto {number}: lo he comprobado</translation>
        </message>
        <message>
            <source>Condition, in words</source>
            <comment>edit.condition</comment>
            <translation>Condición, en palabras</translation>
        </message>
        <message>
            <source>It never opens by itself: the condition is met, and the patient says yes.</source>
            <comment>edit.condition.how</comment>
            <translation>Nunca se abre sola: la condición se cumple, y el paciente dice que sí.</translation>
        </message>
        <message>
            <source>Copy</source>
            <comment>edit.copy</comment>
            <translation>Copiar</translation>
        </message>
        <message>
            <source>Copy the chosen exercise</source>
            <comment>edit.copy.name</comment>
            <translation>Copiar el ejercicio elegido</translation>
        </message>
        <message>
            <source>Days and rests</source>
            <comment>edit.days</comment>
            <translation>Días y descansos</translation>
        </message>
        <message>
            <source>Days a week</source>
            <comment>edit.days_a_week</comment>
            <translation>Días a la semana</translation>
        </message>
        <message>
            <source>Dose, tempo, range</source>
            <comment>edit.dose</comment>
            <translation>Dosis, ritmo, amplitud</translation>
        </message>
        <message>
            <source>{seconds} s</source>
            <comment>edit.dose.seconds</comment>
            <translation>{seconds} s</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>edit.dose.times</comment>
            <translation>{count} veces</translation>
        </message>
        <message>
            <source>Usual: {dose} ({source})</source>
            <comment>edit.dose.usual</comment>
            <translation>Habitual: {dose} ({source})</translation>
        </message>
        <message>
            <source>↓</source>
            <comment>edit.down</comment>
            <translation>↓</translation>
        </message>
        <message>
            <source>Move what is chosen down, Alt+Down</source>
            <comment>edit.down.name</comment>
            <translation>Bajar lo elegido, Alt+Flecha abajo</translation>
        </message>
        <message>
            <source>Emergency number</source>
            <comment>edit.emergency</comment>
            <translation>Número de emergencias</translation>
        </message>
        <message>
            <source>Said and printed with the signs that need help at once.</source>
            <comment>edit.emergency.how</comment>
            <translation>Se dice y se imprime con las señales que necesitan ayuda enseguida.</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Sessions and conditions refer to it.</source>
            <comment>edit.entry.id.how</comment>
            <translation>Letras, cifras, . _ y -. Las sesiones y las condiciones se refieren a él.</translation>
        </message>
        <message>
            <source>Eyes</source>
            <comment>edit.eyes</comment>
            <translation>Ojos</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.eyes_closed</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>Wrong: {text}</source>
            <comment>edit.fault</comment>
            <translation>Mal: {text}</translation>
        </message>
        <message>
            <source>File</source>
            <comment>edit.file</comment>
            <translation>Archivo</translation>
        </message>
        <message>
            <source>Find</source>
            <comment>edit.find</comment>
            <translation>Buscar</translation>
        </message>
        <message>
            <source>There is no such exercise.</source>
            <comment>edit.find.none</comment>
            <translation>No hay un ejercicio así.</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>edit.finding.entries</comment>
            <translation>Ejercicios</translation>
        </message>
        <message>
            <source>Wrong: {field}: {text}</source>
            <comment>edit.finding.fault</comment>
            <translation>Mal: {field}: {text}</translation>
        </message>
        <message>
            <source>{place}, {field}</source>
            <comment>edit.finding.in</comment>
            <translation>{place}, {field}</translation>
        </message>
        <message>
            <source>Note: {field}: {text}</source>
            <comment>edit.finding.remark</comment>
            <translation>Nota: {field}: {text}</translation>
        </message>
        <message>
            <source>To put right, and to know (F8)</source>
            <comment>edit.findings</comment>
            <translation>Por corregir, y por saber (F8)</translation>
        </message>
        <message>
            <source>How it is done</source>
            <comment>edit.form</comment>
            <translation>Cómo se hace</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>edit.from_to</comment>
            <translation>de {low} a {high}</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>edit.good</comment>
            <translation>Bien</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <comment>edit.hand_over</comment>
            <translation>Entrega</translation>
        </message>
        <message>
            <source>Changed when the plan is handed out: in the review, under Files in and out.</source>
            <comment>edit.hand_over.how</comment>
            <translation>Se cambia al dar el plan: en la revisión, en «Archivos de entrada y salida».</translation>
        </message>
        <message>
            <source>The patient's files are locked. Keys that open them: {count}.</source>
            <comment>edit.hand_over.keys</comment>
            <translation>Los archivos del paciente están cerrados. Llaves que los abren: {count}.</translation>
        </message>
        <message>
            <source>Names no key yet: the patient can make no file for you with this plan.</source>
            <comment>edit.hand_over.nobody</comment>
            <translation>Todavía no nombra ninguna llave: con este plan el paciente no puede hacer ningún archivo para usted.</translation>
        </message>
        <message>
            <source>The patient's files are without a lock: anybody can read them.</source>
            <comment>edit.hand_over.plain</comment>
            <translation>Los archivos del paciente no tienen cierre: cualquiera puede leerlos.</translation>
        </message>
        <message>
            <source>Who starts above that score</source>
            <comment>edit.high</comment>
            <translation>Quien empieza por encima de esa puntuación</translation>
        </message>
        <message>
            <source>may rise a little from there</source>
            <comment>edit.high.baseline</comment>
            <translation>puede subir un poco desde ahí</translation>
        </message>
        <message>
            <source>Usual: seated work only, the stricter of the two ({source})</source>
            <comment>edit.high.how</comment>
            <translation>Habitual: solo sentado, lo más estricto de los dos ({source})</translation>
        </message>
        <message>
            <source>does seated work only</source>
            <comment>edit.high.seated_only</comment>
            <translation>solo practica sentado</translation>
        </message>
        <message>
            <source>{what}, up to</source>
            <comment>edit.high_end</comment>
            <translation>{what}, hasta</translation>
        </message>
        <message>
            <source>ID</source>
            <comment>edit.id</comment>
            <translation>ID</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.in_stage</comment>
            <translation>Etapa</translation>
        </message>
        <message>
            <source>Item {number}</source>
            <comment>edit.item</comment>
            <translation>Punto {number}</translation>
        </message>
        <message>
            <source>Add an item</source>
            <comment>edit.item.add</comment>
            <translation>Añadir un punto</translation>
        </message>
        <message>
            <source>Remove item {number}</source>
            <comment>edit.item.remove</comment>
            <translation>Quitar el punto {number}</translation>
        </message>
        <message>
            <source>Ladder over the weeks</source>
            <comment>edit.ladder</comment>
            <translation>Escalera por semanas</translation>
        </message>
        <message>
            <source>A posture that is held has neither tempo nor range to change.</source>
            <comment>edit.ladder.held</comment>
            <translation>Una postura mantenida no tiene ritmo ni amplitud que cambiar.</translation>
        </message>
        <message>
            <source>Each step holds from its week on, until the next one.</source>
            <comment>edit.ladder.how</comment>
            <translation>Cada paso vale desde su semana hasta el siguiente.</translation>
        </message>
        <message>
            <source>The last changes are in no file yet.</source>
            <comment>edit.leave</comment>
            <translation>Los últimos cambios no están todavía en ningún archivo.</translation>
        </message>
        <message>
            <source>Drop them</source>
            <comment>edit.leave.discard</comment>
            <translation>Descartarlos</translation>
        </message>
        <message>
            <source>Save them</source>
            <comment>edit.leave.save</comment>
            <translation>Guardarlos</translation>
        </message>
        <message>
            <source>Stay here</source>
            <comment>edit.leave.stay</comment>
            <translation>Quedarse aquí</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <comment>edit.line.entry</comment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>▲ wrong: {text}</source>
            <comment>edit.line.fault</comment>
            <translation>▲ mal: {text}</translation>
        </message>
        <message>
            <source>Stage {number}: {name}</source>
            <comment>edit.line.stage</comment>
            <translation>Etapa {number}: {name}</translation>
        </message>
        <message>
            <source>Look for it ...</source>
            <comment>edit.look</comment>
            <translation>Buscar ...</translation>
        </message>
        <message>
            <source>Kind of loss</source>
            <comment>edit.loss</comment>
            <translation>Tipo de pérdida</translation>
        </message>
        <message>
            <source>acute, one side</source>
            <comment>edit.loss.acute</comment>
            <translation>aguda, un lado</translation>
        </message>
        <message>
            <source>both sides</source>
            <comment>edit.loss.bilateral</comment>
            <translation>los dos lados</translation>
        </message>
        <message>
            <source>chronic, one side</source>
            <comment>edit.loss.chronic</comment>
            <translation>crónica, un lado</translation>
        </message>
        <message>
            <source>other</source>
            <comment>edit.loss.other</comment>
            <translation>otra</translation>
        </message>
        <message>
            <source>{what}, from</source>
            <comment>edit.low</comment>
            <translation>{what}, desde</translation>
        </message>
        <message>
            <source>Least share measured, 0 to 1</source>
            <comment>edit.measured</comment>
            <translation>Menor parte medida, de 0 a 1</translation>
        </message>
        <message>
            <source>I found it met on</source>
            <comment>edit.met_on</comment>
            <translation>La di por cumplida el</translation>
        </message>
        <message>
            <source>Your own decision; it stands in place of the figures.</source>
            <comment>edit.met_on.how</comment>
            <translation>Su propia decisión; vale en lugar de los valores.</translation>
        </message>
        <message>
            <source>Met, as of today</source>
            <comment>edit.met_today</comment>
            <translation>Cumplida, desde hoy</translation>
        </message>
        <message>
            <source>Gaze stabilisation</source>
            <comment>edit.minutes</comment>
            <translation>Estabilización de la mirada</translation>
        </message>
        <message>
            <source>no figure</source>
            <comment>edit.minutes.none</comment>
            <translation>sin cifra</translation>
        </message>
        <message>
            <source>About {minutes} min a day planned, all entries open and rests left out. Guideline, as quoted: {guideline}.</source>
            <comment>edit.minutes.said</comment>
            <translation>Unos {minutes} min al día previstos, con todas las entradas abiertas y sin los descansos. Guía, según se cita: {guideline}.</translation>
        </message>
        <message>
            <source>gaze stabilisation: {minutes} min a day, guideline as quoted: {figure}</source>
            <comment>edit.minutes.short</comment>
            <translation>estabilización de la mirada: {minutes} min al día, guía según se cita: {figure}</translation>
        </message>
        <message>
            <source>To each side of rest. Nothing in the plan may ask for more.</source>
            <comment>edit.neck.how</comment>
            <translation>Desde el reposo a cada lado. Nada en el plan puede pedir más.</translation>
        </message>
        <message>
            <source>Neck limit, nodding, degrees</source>
            <comment>edit.neck.pitch</comment>
            <translation>Límite del cuello, arriba y abajo, grados</translation>
        </message>
        <message>
            <source>Neck limit, turning, degrees</source>
            <comment>edit.neck.yaw</comment>
            <translation>Límite del cuello, girar, grados</translation>
        </message>
        <message>
            <source>New</source>
            <comment>edit.new</comment>
            <translation>Nuevo</translation>
        </message>
        <message>
            <source>not in a file yet</source>
            <comment>edit.no_file</comment>
            <translation>todavía en ningún archivo</translation>
        </message>
        <message>
            <source>not said</source>
            <comment>edit.none</comment>
            <translation>no indicado</translation>
        </message>
        <message>
            <source>Not saved: {why}. Everything is still here.</source>
            <comment>edit.not_saved</comment>
            <translation>No guardado: {why}. Todo sigue aquí.</translation>
        </message>
        <message>
            <source>Not known while something is wrong with the plan.</source>
            <comment>edit.not_yet</comment>
            <translation>No se sabe mientras haya algo mal en el plan.</translation>
        </message>
        <message>
            <source>Your note</source>
            <comment>edit.note</comment>
            <translation>Su nota</translation>
        </message>
        <message>
            <source>A note is asked for: {why}.</source>
            <comment>edit.note.asked</comment>
            <translation>Se pide una nota: {why}.</translation>
        </message>
        <message>
            <source>For you and your colleagues.</source>
            <comment>edit.note.how</comment>
            <translation>Para usted y sus colegas.</translation>
        </message>
        <message>
            <source>Least share on target, 0 to 1</source>
            <comment>edit.on_target</comment>
            <translation>Menor parte en el punto, de 0 a 1</translation>
        </message>
        <message>
            <source>Open</source>
            <comment>edit.open</comment>
            <translation>Abrir</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>edit.open.which</comment>
            <translation>¿Qué plan?</translation>
        </message>
        <message>
            <source>closed</source>
            <comment>edit.option.closed</comment>
            <translation>cerrados</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.option.eyes_closed</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>firm</source>
            <comment>edit.option.firm</comment>
            <translation>firme</translation>
        </message>
        <message>
            <source>with head shakes</source>
            <comment>edit.option.head_shake</comment>
            <translation>con giros de cabeza</translation>
        </message>
        <message>
            <source>{option} (with a helper only)</source>
            <comment>edit.option.helper</comment>
            <translation>{option} (solo con ayudante)</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.option.no_shake</comment>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>open</source>
            <comment>edit.option.open</comment>
            <translation>abiertos</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>edit.option.sitting</comment>
            <translation>sentado</translation>
        </message>
        <message>
            <source>soft</source>
            <comment>edit.option.soft</comment>
            <translation>blanda</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>edit.option.soft_surface</comment>
            <translation>superficie blanda</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>edit.option.standing</comment>
            <translation>de pie</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>edit.option.walking</comment>
            <translation>caminando</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>edit.option.wall</comment>
            <translation>marcas en la pared</translation>
        </message>
        <message>
            <source>or seconds</source>
            <comment>edit.or_seconds</comment>
            <translation>o segundos</translation>
        </message>
        <message>
            <source>Parts of the plan</source>
            <comment>edit.outline</comment>
            <translation>Partes del plan</translation>
        </message>
        <message>
            <source>the patient's own pace</source>
            <comment>edit.own_pace</comment>
            <translation>al paso del paciente</translation>
        </message>
        <message>
            <source>Person and days</source>
            <comment>edit.page.plan</comment>
            <translation>Persona y días</translation>
        </message>
        <message>
            <source>Safety</source>
            <comment>edit.page.safety</comment>
            <translation>Seguridad</translation>
        </message>
        <message>
            <source>Symptom rules</source>
            <comment>edit.page.symptoms</comment>
            <translation>Reglas de síntomas</translation>
        </message>
        <message>
            <source>Pseudonym</source>
            <comment>edit.person</comment>
            <translation>Seudónimo</translation>
        </message>
        <message>
            <source>Never a real name: the file travels. With another one, the plan gets a new ID, and ticks and days found met are taken out.</source>
            <comment>edit.person.how</comment>
            <translation>Nunca un nombre real: el archivo viaja. Con otro, el plan recibe un ID nuevo, y se quitan las marcas y los días en que algo se dio por cumplido.</translation>
        </message>
        <message>
            <source>Plan ID</source>
            <comment>edit.plan_id</comment>
            <translation>ID del plan</translation>
        </message>
        <message>
            <source>Sessions belong to a plan by this ID. With another one, conditions begin to count anew.</source>
            <comment>edit.plan_id.how</comment>
            <translation>Las sesiones pertenecen a un plan por este ID. Con otro, las condiciones empiezan a contar de nuevo.</translation>
        </message>
        <message>
            <source>Posture</source>
            <comment>edit.posture</comment>
            <translation>Postura</translation>
        </message>
        <message>
            <source>the whole plan</source>
            <comment>edit.preview.all</comment>
            <translation>el plan entero</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>edit.preview.entry</comment>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>What the patient sees</source>
            <comment>edit.preview.name</comment>
            <translation>Lo que ve el paciente</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.preview.stage</comment>
            <translation>Etapa</translation>
        </message>
        <message>
            <source>Week</source>
            <comment>edit.preview.week</comment>
            <translation>Semana</translation>
        </message>
        <message>
            <source>Range to each side, degrees</source>
            <comment>edit.range</comment>
            <translation>Amplitud a cada lado, grados</translation>
        </message>
        <message>
            <source>Usually not asked for.</source>
            <comment>edit.range.none</comment>
            <translation>Normalmente no se pide.</translation>
        </message>
        <message>
            <source>Redo</source>
            <comment>edit.redo</comment>
            <translation>Rehacer</translation>
        </message>
        <message>
            <source>Not given</source>
            <comment>edit.refused</comment>
            <translation>No se da</translation>
        </message>
        <message>
            <source>{option}: {why}</source>
            <comment>edit.refused.line</comment>
            <translation>{option}: {why}</translation>
        </message>
        <message>
            <source>To know: {text}.</source>
            <comment>edit.remark</comment>
            <translation>Conviene saber: {text}.</translation>
        </message>
        <message>
            <source>Remove</source>
            <comment>edit.remove</comment>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Remove what is chosen, Delete in the list</source>
            <comment>edit.remove.name</comment>
            <translation>Quitar lo elegido, Supr en la lista</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>edit.repetitions</comment>
            <translation>Repeticiones</translation>
        </message>
        <message>
            <source>Replace it</source>
            <comment>edit.replace</comment>
            <translation>Reemplazarlo</translation>
        </message>
        <message>
            <source>{file} is there already. If you replace it, what it holds now is gone.</source>
            <comment>edit.replace.ask</comment>
            <translation>{file} ya existe. Si lo reemplaza, se pierde lo que contiene ahora.</translation>
        </message>
        <message>
            <source>{file} was changed by somebody else since you opened it. If you replace it, their changes are gone.</source>
            <comment>edit.replace.changed</comment>
            <translation>Otra persona ha cambiado {file} desde que usted lo abrió. Si lo sustituye, esos cambios se pierden.</translation>
        </message>
        <message>
            <source>Choose another name</source>
            <comment>edit.replace.other</comment>
            <translation>Elegir otro nombre</translation>
        </message>
        <message>
            <source>Rest between entries, s</source>
            <comment>edit.rest</comment>
            <translation>Descanso entre entradas, s</translation>
        </message>
        <message>
            <source>Most rise from a high start</source>
            <comment>edit.rise</comment>
            <translation>Mayor subida desde un comienzo alto</translation>
        </message>
        <message>
            <source>Needed where a rise is allowed.</source>
            <comment>edit.rise.how</comment>
            <translation>Necesario donde se permite una subida.</translation>
        </message>
        <message>
            <source>Most rise of the score</source>
            <comment>edit.rise_most</comment>
            <translation>Mayor subida de la puntuación</translation>
        </message>
        <message>
            <source>Step {number}, from week</source>
            <comment>edit.rung</comment>
            <translation>Paso {number}, desde la semana</translation>
        </message>
        <message>
            <source>Add a step</source>
            <comment>edit.rung.add</comment>
            <translation>Añadir un paso</translation>
        </message>
        <message>
            <source>as before</source>
            <comment>edit.rung.as_before</comment>
            <translation>como antes</translation>
        </message>
        <message>
            <source>Step {number}, degrees to each side</source>
            <comment>edit.rung.range</comment>
            <translation>Paso {number}, grados a cada lado</translation>
        </message>
        <message>
            <source>Empty: as before.</source>
            <comment>edit.rung.range.how</comment>
            <translation>Vacío: como antes.</translation>
        </message>
        <message>
            <source>Remove step {number}</source>
            <comment>edit.rung.remove</comment>
            <translation>Quitar el paso {number}</translation>
        </message>
        <message>
            <source>Step {number}, beats a minute</source>
            <comment>edit.rung.tempo</comment>
            <translation>Paso {number}, golpes por minuto</translation>
        </message>
        <message>
            <source>Limits and help</source>
            <comment>edit.safety</comment>
            <translation>Límites y ayuda</translation>
        </message>
        <message>
            <source>Save</source>
            <comment>edit.save</comment>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Save the plan where?</source>
            <comment>edit.save.which</comment>
            <translation>¿Dónde guardar el plan?</translation>
        </message>
        <message>
            <source>Save as</source>
            <comment>edit.save_as</comment>
            <translation>Guardar como</translation>
        </message>
        <message>
            <source>Highest score, of 10</source>
            <comment>edit.score</comment>
            <translation>Puntuación más alta, de 10</translation>
        </message>
        <message>
            <source>Eyes to target, mm</source>
            <comment>edit.seat</comment>
            <translation>De los ojos al punto, mm</translation>
        </message>
        <message>
            <source>Usual: 750, and not nearer (common practice)</source>
            <comment>edit.seat.how</comment>
            <translation>Habitual: 750, y no más cerca (práctica común)</translation>
        </message>
        <message>
            <source>Sitting: about {cm} cm from the screen, or as far as the plan asks where that is more ({source}).</source>
            <comment>edit.seat.least</comment>
            <translation>Sentado: a unos {cm} cm de la pantalla, o a la distancia que pida el plan si es mayor ({source}).</translation>
        </message>
        <message>
            <source>Seconds</source>
            <comment>edit.seconds</comment>
            <translation>Segundos</translation>
        </message>
        <message>
            <source>Sessions in a row</source>
            <comment>edit.sessions</comment>
            <translation>Sesiones seguidas</translation>
        </message>
        <message>
            <source>Longest time to settle, minutes</source>
            <comment>edit.settle</comment>
            <translation>Tiempo máximo para calmarse, minutos</translation>
        </message>
        <message>
            <source>Most minutes to settle</source>
            <comment>edit.settle_most</comment>
            <translation>Máximo de minutos para calmarse</translation>
        </message>
        <message>
            <source>Sex</source>
            <comment>edit.sex</comment>
            <translation>Sexo</translation>
        </message>
        <message>
            <source>female</source>
            <comment>edit.sex.female</comment>
            <translation>mujer</translation>
        </message>
        <message>
            <source>The tables know these two only.</source>
            <comment>edit.sex.how</comment>
            <translation>Las tablas solo conocen estos dos.</translation>
        </message>
        <message>
            <source>male</source>
            <comment>edit.sex.male</comment>
            <translation>hombre</translation>
        </message>
        <message>
            <source>Head shake</source>
            <comment>edit.shake</comment>
            <translation>Giros de cabeza</translation>
        </message>
        <message>
            <source>Sheet to print</source>
            <comment>edit.sheet</comment>
            <translation>Hoja para imprimir</translation>
        </message>
        <message>
            <source>Web page</source>
            <comment>edit.sheet.html</comment>
            <translation>Página web</translation>
        </message>
        <message>
            <source>No sheet yet: there are {count} to put right in the plan.</source>
            <comment>edit.sheet.not_yet</comment>
            <translation>Todavía sin hoja: queda por corregir en el plan: {count}.</translation>
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
            <translation>¿Dónde poner la hoja del paciente? La terminación se añade sola.</translation>
        </message>
        <message>
            <source>Written: {file}</source>
            <comment>edit.sheet.written</comment>
            <translation>Escrito: {file}</translation>
        </message>
        <message>
            <source>has a condition</source>
            <comment>edit.short.condition</comment>
            <translation>tiene una condición</translation>
        </message>
        <message>
            <source>condition met</source>
            <comment>edit.short.met</comment>
            <translation>condición cumplida</translation>
        </message>
        <message>
            <source>condition not met</source>
            <comment>edit.short.not_met</comment>
            <translation>condición no cumplida</translation>
        </message>
        <message>
            <source>As the patient sees it (F5)</source>
            <comment>edit.show</comment>
            <translation>Como lo ve el paciente (F5)</translation>
        </message>
        <message>
            <source>Affected side</source>
            <comment>edit.side</comment>
            <translation>Lado afectado</translation>
        </message>
        <message>
            <source>both</source>
            <comment>edit.side.both</comment>
            <translation>los dos</translation>
        </message>
        <message>
            <source>left</source>
            <comment>edit.side.left</comment>
            <translation>izquierdo</translation>
        </message>
        <message>
            <source>right</source>
            <comment>edit.side.right</comment>
            <translation>derecho</translation>
        </message>
        <message>
            <source>unknown</source>
            <comment>edit.side.unknown</comment>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.stage</comment>
            <translation>Etapa</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Conditions and entries refer to it.</source>
            <comment>edit.stage.id.how</comment>
            <translation>Letras, cifras, . _ y -. Las condiciones y las entradas se refieren a él.</translation>
        </message>
        <message>
            <source>Name</source>
            <comment>edit.stage.name</comment>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>The patient reads it.</source>
            <comment>edit.stage.name.how</comment>
            <translation>Lo lee el paciente.</translation>
        </message>
        <message>
            <source>New stage</source>
            <comment>edit.stage.new</comment>
            <translation>Etapa nueva</translation>
        </message>
        <message>
            <source>Takes</source>
            <comment>edit.stage.takes</comment>
            <translation>Dura</translation>
        </message>
        <message>
            <source>About {minutes} minutes with rests; up to {most} is common practice.</source>
            <comment>edit.stage.takes.said</comment>
            <translation>Unos {minutes} minutos con descansos; hasta {most} es práctica común.</translation>
        </message>
        <message>
            <source>So far</source>
            <comment>edit.standing</comment>
            <translation>Hasta ahora</translation>
        </message>
        <message>
            <source>Met: {why}. Nothing opens by itself.</source>
            <comment>edit.standing.met</comment>
            <translation>Cumplida: {why}. Nada se abre solo.</translation>
        </message>
        <message>
            <source>No sessions at hand. Opened from the review of a folder, this says whether it is met.</source>
            <comment>edit.standing.no_sessions</comment>
            <translation>No hay sesiones a mano. Abierto desde la revisión de una carpeta, esto dice si se cumple.</translation>
        </message>
        <message>
            <source>Not met: {why}.</source>
            <comment>edit.standing.not_met</comment>
            <translation>No cumplida: {why}.</translation>
        </message>
        <message>
            <source>Begin with nothing</source>
            <comment>edit.start.empty</comment>
            <translation>Empezar sin nada</translation>
        </message>
        <message>
            <source>No exercises yet; usual days, rests and symptom rules.</source>
            <comment>edit.start.empty.how</comment>
            <translation>Sin ejercicios todavía; días, descansos y reglas de síntomas habituales.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>edit.start.file</comment>
            <translation>Abrir un plan</translation>
        </message>
        <message>
            <source>A plan that is in a file already.</source>
            <comment>edit.start.file.how</comment>
            <translation>Un plan que ya está en un archivo.</translation>
        </message>
        <message>
            <source>Go on from the plan of {person}</source>
            <comment>edit.start.last</comment>
            <translation>Seguir con el plan de {person}</translation>
        </message>
        <message>
            <source>Plan {plan}. Its sessions go on to count, and each condition says whether it is met.</source>
            <comment>edit.start.last.how</comment>
            <translation>Plan {plan}, el último practicado. Sus sesiones siguen contando, y cada condición dice si se cumple.</translation>
        </message>
        <message>
            <source>Open this plan</source>
            <comment>edit.start.named</comment>
            <translation>Abrir este plan</translation>
        </message>
        <message>
            <source>These sessions were practised with a plan that has no pseudonym. Open it, set the pseudonym of one person, and save it as another file. Do so for each person.</source>
            <comment>edit.start.named.how</comment>
            <translation>Estas sesiones se practicaron con un plan sin seudónimo. Ábralo, ponga el seudónimo de una persona y guárdelo en otro archivo. Hágalo para cada persona.</translation>
        </message>
        <message>
            <source>The plan of these sessions</source>
            <comment>edit.start.named.which</comment>
            <translation>El plan de estas sesiones</translation>
        </message>
        <message>
            <source>Begin with these stages</source>
            <comment>edit.start.starter</comment>
            <translation>Empezar con estas etapas</translation>
        </message>
        <message>
            <source>The home programme in stages, with usual doses. Each stage opens after calm sessions with the one before. Leave out what you don't want.</source>
            <comment>edit.start.starter.how</comment>
            <translation>El programa para casa en etapas, con dosis habituales. Cada etapa se abre después de sesiones tranquilas con la anterior. Quite lo que no quiera.</translation>
        </message>
        <message>
            <source>Begin a plan</source>
            <comment>edit.start.title</comment>
            <translation>Empezar un plan</translation>
        </message>
        <message>
            <source>Begins on</source>
            <comment>edit.starts_on</comment>
            <translation>Empieza el</translation>
        </message>
        <message>
            <source>A day as in 2026-01-31. Ladders count their weeks from it.</source>
            <comment>edit.starts_on.how</comment>
            <translation>Un día como 2026-01-31. Las escaleras cuentan sus semanas desde él.</translation>
        </message>
        <message>
            <source>{file}  ·  {saved}  ·  {found}</source>
            <comment>edit.state</comment>
            <translation>{file}  ·  {saved}  ·  {found}</translation>
        </message>
        <message>
            <source>changed, not saved</source>
            <comment>edit.state.changed</comment>
            <translation>cambiado, sin guardar</translation>
        </message>
        <message>
            <source>not finished, to put right: {count}</source>
            <comment>edit.state.faults</comment>
            <translation>por corregir antes de poder guardar: {count}</translation>
        </message>
        <message>
            <source>nothing changed yet</source>
            <comment>edit.state.new</comment>
            <translation>nada cambiado todavía</translation>
        </message>
        <message>
            <source>notes: {count}  ·  {minutes}</source>
            <comment>edit.state.remarks</comment>
            <translation>notas: {count}  ·  {minutes}</translation>
        </message>
        <message>
            <source>saved</source>
            <comment>edit.state.saved</comment>
            <translation>guardado</translation>
        </message>
        <message>
            <source>Choose how to begin.</source>
            <comment>edit.state.start</comment>
            <translation>Elija cómo empezar.</translation>
        </message>
        <message>
            <source>Exercise added</source>
            <comment>edit.step.add</comment>
            <translation>Ejercicio añadido</translation>
        </message>
        <message>
            <source>Checklist item added</source>
            <comment>edit.step.add_item</comment>
            <translation>Punto de la lista añadido</translation>
        </message>
        <message>
            <source>Ladder step added</source>
            <comment>edit.step.add_rung</comment>
            <translation>Paso de la escalera añadido</translation>
        </message>
        <message>
            <source>Stage added</source>
            <comment>edit.step.add_stage</comment>
            <translation>Etapa añadida</translation>
        </message>
        <message>
            <source>Condition added</source>
            <comment>edit.step.add_unlock</comment>
            <translation>Condición añadida</translation>
        </message>
        <message>
            <source>Copied</source>
            <comment>edit.step.copy</comment>
            <translation>Copiado</translation>
        </message>
        <message>
            <source>Condition found met</source>
            <comment>edit.step.met</comment>
            <translation>Condición dada por cumplida</translation>
        </message>
        <message>
            <source>Moved</source>
            <comment>edit.step.move</comment>
            <translation>Movido</translation>
        </message>
        <message>
            <source>Removed</source>
            <comment>edit.step.remove</comment>
            <translation>Quitado</translation>
        </message>
        <message>
            <source>Condition removed</source>
            <comment>edit.step.remove_unlock</comment>
            <translation>Condición quitada</translation>
        </message>
        <message>
            <source>Ranges and tempo of the baseline taken over</source>
            <comment>edit.step.take_baseline</comment>
            <translation>Amplitudes y ritmo de la referencia tomados</translation>
        </message>
        <message>
            <source>Begins today</source>
            <comment>edit.step.today</comment>
            <translation>Empieza hoy</translation>
        </message>
        <message>
            <source>{what}</source>
            <comment>edit.step.value</comment>
            <translation>{what}</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>edit.support</comment>
            <translation>Apoyo</translation>
        </message>
        <message>
            <source>corner and stable chair</source>
            <comment>edit.support.corner_and_chair</comment>
            <translation>esquina y silla estable</translation>
        </message>
        <message>
            <source>helper within arm's reach</source>
            <comment>edit.support.helper</comment>
            <translation>ayudante al alcance del brazo</translation>
        </message>
        <message>
            <source>what it takes: {support}</source>
            <comment>edit.support.least</comment>
            <translation>lo que hace falta: {support}</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.support.none</comment>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>Surface</source>
            <comment>edit.surface</comment>
            <translation>Superficie</translation>
        </message>
        <message>
            <source>Enough for today</source>
            <comment>edit.symptoms</comment>
            <translation>Suficiente por hoy</translation>
        </message>
        <message>
            <source>For the published tables of chair stands only</source>
            <comment>edit.tables</comment>
            <translation>Solo para las tablas publicadas de levantarse de la silla</translation>
        </message>
        <message>
            <source>Tempo, beats a minute</source>
            <comment>edit.tempo</comment>
            <translation>Ritmo, golpes por minuto</translation>
        </message>
        <message>
            <source>fixed</source>
            <comment>edit.tempo.fixed</comment>
            <translation>fijo</translation>
        </message>
        <message>
            <source>changes within the set</source>
            <comment>edit.tempo.pair</comment>
            <translation>cambia dentro de la serie</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.tempo.usual</comment>
            <translation>lo habitual: {usual}</translation>
        </message>
        <message>
            <source>Plan</source>
            <comment>edit.title</comment>
            <translation>Plan</translation>
        </message>
        <message>
            <source>to</source>
            <comment>edit.to</comment>
            <translation>a</translation>
        </message>
        <message>
            <source>Today</source>
            <comment>edit.today</comment>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>Undo</source>
            <comment>edit.undo</comment>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Not finished: {count} to put right. It can be kept and opened here again, but nobody can practise it.</source>
            <comment>edit.unfinished</comment>
            <translation>Sin terminar: por corregir: {count}. Se puede guardar y abrir aquí otra vez, pero nadie puede practicarlo.</translation>
        </message>
        <message>
            <source>Save it unfinished</source>
            <comment>edit.unfinished.save</comment>
            <translation>Guardarlo sin terminar</translation>
        </message>
        <message>
            <source>Show me the first</source>
            <comment>edit.unfinished.show</comment>
            <translation>Mostrar lo primero</translation>
        </message>
        <message>
            <source>Opens when</source>
            <comment>edit.unlock</comment>
            <translation>Se abre cuando</translation>
        </message>
        <message>
            <source>Set a condition</source>
            <comment>edit.unlock.add</comment>
            <translation>Poner una condición</translation>
        </message>
        <message>
            <source>Open from the start.</source>
            <comment>edit.unlock.none</comment>
            <translation>Abierta desde el principio.</translation>
        </message>
        <message>
            <source>Take the condition away</source>
            <comment>edit.unlock.remove</comment>
            <translation>Quitar la condición</translation>
        </message>
        <message>
            <source>↑</source>
            <comment>edit.up</comment>
            <translation>↑</translation>
        </message>
        <message>
            <source>Move what is chosen up, Alt+Up</source>
            <comment>edit.up.name</comment>
            <translation>Subir lo elegido, Alt+Flecha arriba</translation>
        </message>
        <message>
            <source>Usual: {usual}</source>
            <comment>edit.usual</comment>
            <translation>Habitual: {usual}</translation>
        </message>
        <message>
            <source>Usual: {usual} ({source})</source>
            <comment>edit.usual.from</comment>
            <translation>Habitual: {usual} ({source})</translation>
        </message>
        <message>
            <source>Marks on the wall</source>
            <comment>edit.wall</comment>
            <translation>Marcas en la pared</translation>
        </message>
        <message>
            <source>Above the camera, in mm</source>
            <comment>edit.wall.above</comment>
            <translation>Por encima de la cámara, en mm</translation>
        </message>
        <message>
            <source>Usual: 100, so that the mark shows above the screen. Below zero: lower.</source>
            <comment>edit.wall.above.how</comment>
            <translation>Habitual: 100, para que la marca se vea por encima de la pantalla. Un valor negativo: más abajo.</translation>
        </message>
        <message>
            <source>From the eyes to the wall, in mm</source>
            <comment>edit.wall.distance</comment>
            <translation>De los ojos a la pared, en mm</translation>
        </message>
        <message>
            <source>In place of the screen. Leave all of it empty for a target on the screen. Once something stands here, the patient is asked to measure what is left out.</source>
            <comment>edit.wall.how</comment>
            <translation>En lugar de la pantalla. Déjelo todo vacío si el punto está en la pantalla. En cuanto haya algo aquí, se pide al paciente que mida lo que falte.</translation>
        </message>
        <message>
            <source>To the right of the camera, in mm</source>
            <comment>edit.wall.right</comment>
            <translation>A la derecha de la cámara, en mm</translation>
        </message>
        <message>
            <source>Usual: 0. As the patient sees it; of two marks their middle. Below zero: to the left.</source>
            <comment>edit.wall.right.how</comment>
            <translation>Habitual: 0. Como lo ve el paciente; con dos marcas, su punto medio. Un valor negativo: a la izquierda.</translation>
        </message>
        <message>
            <source>From mark to mark, in mm</source>
            <comment>edit.wall.spacing</comment>
            <translation>De marca a marca, en mm</translation>
        </message>
        <message>
            <source>So that each mark lies {low} to {high} degrees from the middle.</source>
            <comment>edit.wall.spacing.how</comment>
            <translation>De modo que cada marca quede de {low} a {high} grados del centro.</translation>
        </message>
        <message>
            <source>Person</source>
            <comment>edit.who</comment>
            <translation>Persona</translation>
        </message>
        <message>
            <source>Your words</source>
            <comment>edit.words</comment>
            <translation>Sus palabras</translation>
        </message>
        <message>
            <source>Read before each practice, and on the printed sheet.</source>
            <comment>edit.words.how</comment>
            <translation>Se leen antes de cada práctica, y en la hoja impresa.</translation>
        </message>
        <message>
            <source>To the patient</source>
            <comment>edit.words.title</comment>
            <translation>Para el paciente</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>event.chin_down</comment>
            <translation>barbilla baja</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>event.eyes_closed</comment>
            <translation>ojos cerrados</translation>
        </message>
        <message>
            <source>eyes stayed behind</source>
            <comment>event.eyes_not_with_head</comment>
            <translation>los ojos se quedaron atrás</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>event.eyes_opened</comment>
            <translation>ojos abiertos</translation>
        </message>
        <message>
            <source>eyes left the target</source>
            <comment>event.gaze_off_target</comment>
            <translation>los ojos dejaron el punto</translation>
        </message>
        <message>
            <source>eyes stopped short</source>
            <comment>event.gaze_short</comment>
            <translation>los ojos no llegaron</translation>
        </message>
        <message>
            <source>head went before the eyes</source>
            <comment>event.head_first</comment>
            <translation>la cabeza fue antes que los ojos</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>event.head_moved</comment>
            <translation>la cabeza se movió también</translation>
        </message>
        <message>
            <source>head turned, not tilted</source>
            <comment>event.head_turned</comment>
            <translation>cabeza girada, no inclinada</translation>
        </message>
        <message>
            <source>head went with the target</source>
            <comment>event.head_with_target</comment>
            <translation>la cabeza fue con el punto</translation>
        </message>
        <message>
            <source>out of the picture</source>
            <comment>event.left_picture</comment>
            <translation>fuera de la imagen</translation>
        </message>
        <message>
            <source>eyes and head went together</source>
            <comment>event.moved_together</comment>
            <translation>los ojos y la cabeza fueron juntos</translation>
        </message>
        <message>
            <source>not measured for a while</source>
            <comment>event.not_measured</comment>
            <translation>sin medir durante un rato</translation>
        </message>
        <message>
            <source>not all the way up</source>
            <comment>event.not_upright</comment>
            <translation>sin enderezarse del todo</translation>
        </message>
        <message>
            <source>once</source>
            <comment>event.once</comment>
            <translation>una vez</translation>
        </message>
        <message>
            <source>{code}</source>
            <comment>event.other</comment>
            <translation>{code}</translation>
        </message>
        <message>
            <source>a sudden drop of the head</source>
            <comment>event.possible_fall</comment>
            <translation>una bajada repentina de la cabeza</translation>
        </message>
        <message>
            <source>throws below the eyes</source>
            <comment>event.throw_low</comment>
            <translation>lanzamientos por debajo de los ojos</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>event.times</comment>
            <translation>{count} veces</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>event.too_fast</comment>
            <translation>más rápido que el ritmo</translation>
        </message>
        <message>
            <source>turns larger than asked</source>
            <comment>event.too_large</comment>
            <translation>giros mayores de lo pedido</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>event.too_slow</comment>
            <translation>más lento que el ritmo</translation>
        </message>
        <message>
            <source>turns a little small</source>
            <comment>event.too_small</comment>
            <translation>giros un poco pequeños</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>exchange.back</comment>
            <translation>Atrás (Esc)</translation>
        </message>
        <message>
            <source>{name} (not this computer)</source>
            <comment>exchange.elsewhere</comment>
            <translation>{name} (no este ordenador)</translation>
        </message>
        <message>
            <source>Not done: {why}</source>
            <comment>exchange.failed</comment>
            <translation>No hecho: {why}</translation>
        </message>
        <message>
            <source>Hand out a plan</source>
            <comment>exchange.give</comment>
            <translation>Dar un plan</translation>
        </message>
        <message>
            <source>Hand out a plan without a lock</source>
            <comment>exchange.give_plain</comment>
            <translation>Dar un plan sin cierre</translation>
        </message>
        <message>
            <source>Written: {path}</source>
            <comment>exchange.given</comment>
            <translation>Escrito: {path}</translation>
        </message>
        <message>
            <source>{name} (this computer)</source>
            <comment>exchange.here</comment>
            <translation>{name} (este ordenador)</translation>
        </message>
        <message>
            <source>From a patient</source>
            <comment>exchange.in</comment>
            <translation>De un paciente</translation>
        </message>
        <message>
            <source>Takes the sessions out of a file that a patient has made, into the folder that is open. You can also drop the file on this window. The file itself stays where it is.</source>
            <comment>exchange.in.how</comment>
            <translation>Saca las sesiones de un archivo que hizo un paciente y las pone en la carpeta abierta. También puede soltar el archivo en esta ventana. El archivo se queda donde está.</translation>
        </message>
        <message>
            <source>Keep other computers' keys in the plan</source>
            <comment>exchange.keep</comment>
            <translation>Dejar en el plan las llaves de otros ordenadores</translation>
        </message>
        <message>
            <source>The clinic's key</source>
            <comment>exchange.key</comment>
            <translation>La llave de la clínica</translation>
        </message>
        <message>
            <source>Bring in a key</source>
            <comment>exchange.key.bring</comment>
            <translation>Traer una llave</translation>
        </message>
        <message>
            <source>The key {name} is here now.</source>
            <comment>exchange.key.brought</comment>
            <translation>La llave {name} ya está aquí.</translation>
        </message>
        <message>
            <source>Copied to {path}</source>
            <comment>exchange.key.copied</comment>
            <translation>Copiada a {path}</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <comment>exchange.key.copy</comment>
            <translation>Copiar la llave</translation>
        </message>
        <message>
            <source>A safe place for the copy</source>
            <comment>exchange.key.copy_where</comment>
            <translation>Un lugar seguro para la copia</translation>
        </message>
        <message>
            <source>On this computer: {names}.</source>
            <comment>exchange.key.has</comment>
            <translation>En este ordenador: {names}.</translation>
        </message>
        <message>
            <source>A key lies behind a passphrase. If either is lost, what patients hand over can't be read by anybody: keep a copy in a safe place.</source>
            <comment>exchange.key.how</comment>
            <translation>Una llave está detrás de una frase de paso. Si se pierde una de las dos, nadie puede leer lo que entreguen los pacientes: guarde una copia en un lugar seguro.</translation>
        </message>
        <message>
            <source>Keys (*.age);;All files (*)</source>
            <comment>exchange.key.kinds</comment>
            <translation>Llaves (*.age);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>The key {name} is made. Copy it to a safe place now.</source>
            <comment>exchange.key.made</comment>
            <translation>La llave {name} está hecha. Cópiela ahora a un lugar seguro.</translation>
        </message>
        <message>
            <source>Make a key</source>
            <comment>exchange.key.make</comment>
            <translation>Hacer una llave</translation>
        </message>
        <message>
            <source>There is no key on this computer. Make one, or bring in the copy of a key that the clinic has already.</source>
            <comment>exchange.key.none</comment>
            <translation>No hay ninguna llave en este ordenador. Haga una, o traiga la copia de una llave que la clínica ya tenga.</translation>
        </message>
        <message>
            <source>The copy of the key</source>
            <comment>exchange.key.which</comment>
            <translation>La copia de la llave</translation>
        </message>
        <message>
            <source>Files from patients (*.age *.turnpost);;All files (*)</source>
            <comment>exchange.kinds</comment>
            <translation>Archivos de pacientes (*.age *.turnpost);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>A file that came in between was not taken in. Take it in now.</source>
            <comment>exchange.missed</comment>
            <translation>Un archivo que llegó entretanto no se incorporó. Incorpórelo ahora.</translation>
        </message>
        <message>
            <source>the folder {folder} is not there; connect its disk, or open another folder</source>
            <comment>exchange.no_folder</comment>
            <translation>la carpeta {folder} no está; conecte su disco o abra otra carpeta</translation>
        </message>
        <message>
            <source>no pseudonym</source>
            <comment>exchange.nobody</comment>
            <translation>sin seudónimo</translation>
        </message>
        <message>
            <source>Files in and out</source>
            <comment>exchange.open</comment>
            <translation>Archivos de entrada y salida</translation>
        </message>
        <message>
            <source>What the patient hands over opens with: {names}.</source>
            <comment>exchange.opens</comment>
            <translation>Lo que entregue el paciente se abre con: {names}.</translation>
        </message>
        <message>
            <source>Left as they are, although the file has other versions of them: {names}.</source>
            <comment>exchange.other</comment>
            <translation>Dejadas como están, aunque el archivo tiene otras versiones: {names}.</translation>
        </message>
        <message>
            <source>To a patient</source>
            <comment>exchange.out</comment>
            <translation>A un paciente</translation>
        </message>
        <message>
            <source>Writes a plan that names keys. What the patient hands over opens with each of them, on any computer that has it. Was a key stolen? Then make a new one, leave the stolen one out, hand the plan out again, and read its words to the patient in a call.</source>
            <comment>exchange.out.how</comment>
            <translation>Escribe un plan que nombra llaves. Lo que entregue el paciente se abre con cada una de ellas, en cualquier ordenador que la tenga. ¿Le robaron una llave? Entonces haga una nueva, deje fuera la robada, entregue de nuevo el plan y léale sus palabras al paciente en una llamada.</translation>
        </message>
        <message>
            <source>The same once more</source>
            <comment>exchange.pass.again</comment>
            <translation>La misma otra vez</translation>
        </message>
        <message>
            <source>Passphrase of the key in the copy</source>
            <comment>exchange.pass.brought</comment>
            <translation>Frase de paso de la llave de la copia</translation>
        </message>
        <message>
            <source>Leave it</source>
            <comment>exchange.pass.cancel</comment>
            <translation>Dejarlo</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <comment>exchange.pass.differ</comment>
            <translation>Las dos no son iguales.</translation>
        </message>
        <message>
            <source>A passphrase for the new key: three or four words that nobody would guess</source>
            <comment>exchange.pass.new</comment>
            <translation>Una frase de paso para la llave nueva: tres o cuatro palabras que nadie adivinaría</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>exchange.pass.ok</comment>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Passphrase of the clinic's key</source>
            <comment>exchange.pass.open</comment>
            <translation>Frase de paso de la llave de la clínica</translation>
        </message>
        <message>
            <source>Without a lock anybody who gets hold of a patient's file can read it: e-mail providers, whoever finds a stick. The plan and the patient's program will say so. Is that meant?</source>
            <comment>exchange.plain.ask</comment>
            <translation>Sin cierre puede leer el archivo de un paciente cualquiera que lo consiga: proveedores de correo, quien encuentre una memoria. El plan y el programa del paciente lo dirán. ¿Es lo que quiere?</translation>
        </message>
        <message>
            <source>No</source>
            <comment>exchange.plain.no</comment>
            <translation>No</translation>
        </message>
        <message>
            <source>This clinic has chosen files without a lock. A key changes that.</source>
            <comment>exchange.plain.on</comment>
            <translation>Esta clínica ha elegido archivos sin cierre. Una llave cambia eso.</translation>
        </message>
        <message>
            <source>Yes, without a lock</source>
            <comment>exchange.plain.yes</comment>
            <translation>Sí, sin cierre</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>exchange.plans</comment>
            <translation>Planes (*.json)</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <comment>exchange.take</comment>
            <translation>Recibir un archivo</translation>
        </message>
        <message>
            <source>{person}: new sessions {new}, here before {known}.</source>
            <comment>exchange.taken</comment>
            <translation>{person}: sesiones nuevas {new}, ya presentes {known}.</translation>
        </message>
        <message>
            <source>Show the words of a plan</source>
            <comment>exchange.tell</comment>
            <translation>Mostrar las palabras de un plan</translation>
        </message>
        <message>
            <source>Files from and to patients</source>
            <comment>exchange.title</comment>
            <translation>Archivos de y para pacientes</translation>
        </message>
        <message>
            <source>This file was not locked.</source>
            <comment>exchange.was_plain</comment>
            <translation>Este archivo no estaba cerrado.</translation>
        </message>
        <message>
            <source>Where to put the plan for the patient</source>
            <comment>exchange.where</comment>
            <translation>Dónde poner el plan para el paciente</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>exchange.which</comment>
            <translation>¿Qué plan?</translation>
        </message>
        <message>
            <source>Its words:  {words}</source>
            <comment>exchange.words</comment>
            <translation>Sus palabras:  {words}</translation>
        </message>
        <message>
            <source>Working ...</source>
            <comment>exchange.working</comment>
            <translation>Trabajando ...</translation>
        </message>
        <message>
            <source>Sway from toes to heels</source>
            <comment>exercise.ankle-sway</comment>
            <translation>De los dedos de los pies a los talones</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Look straight ahead.</source>
            <comment>exercise.ankle-sway.how</comment>
            <translation>Póngase de pie, bien recto el cuerpo. Inclínese despacio hacia los dedos de los pies, luego hacia los talones. Doble los tobillos, no las caderas. Mire al frente.</translation>
        </message>
        <message>
            <source>Stands for half a minute</source>
            <comment>exercise.chair-stands-30-s</comment>
            <translation>Levantarse durante medio minuto</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until you hear the end.</source>
            <comment>exercise.chair-stands-30-s.how</comment>
            <translation>Cruce los brazos. Levántese y siéntese tantas veces como sea seguro, hasta que oiga el final.</translation>
        </message>
        <message>
            <source>Five stands from a chair</source>
            <comment>exercise.chair-stands-five</comment>
            <translation>Cinco veces de la silla</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down, as fast as is safe.</source>
            <comment>exercise.chair-stands-five.how</comment>
            <translation>Cruce los brazos. Levántese y siéntese, tan rápido como sea seguro.</translation>
        </message>
        <message>
            <source>Move your eyes, head still</source>
            <comment>exercise.eyes-side-to-side</comment>
            <translation>Ojos a los lados, cabeza quieta</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat. Your head stays still.</source>
            <comment>exercise.eyes-side-to-side.how</comment>
            <translation>Sus ojos saltan al punto con cada golpe. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Eyes first, then head</source>
            <comment>exercise.eyes-then-head</comment>
            <translation>Primero los ojos, luego la cabeza</translation>
        </message>
        <message>
            <source>Look at one mark with your eyes. Then turn your head to it. Now look at the other mark, and turn again.</source>
            <comment>exercise.eyes-then-head.how</comment>
            <translation>Mire una marca con los ojos. Luego gire la cabeza hacia ella. Ahora mire la otra marca y vuelva a girar.</translation>
        </message>
        <message>
            <source>Move your eyes up and down, head still</source>
            <comment>exercise.eyes-up-down</comment>
            <translation>Ojos arriba y abajo, cabeza quieta</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat, a short way at first. Your head stays still.</source>
            <comment>exercise.eyes-up-down.how</comment>
            <translation>Sus ojos saltan al punto con cada golpe, al principio un trecho corto. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Pick up from the floor</source>
            <comment>exercise.floor-reach</comment>
            <translation>Recoger del suelo</translation>
        </message>
        <message>
            <source>Bend and lay a small thing on the floor. Sit up tall. Bend and pick it up. Sit up tall. Your eyes stay on it. Change arms half way through.</source>
            <comment>exercise.floor-reach.how</comment>
            <translation>Agáchese y deje algo pequeño en el suelo. Enderécese. Agáchese y recójalo. Enderécese. Sus ojos se quedan en ello. A la mitad, cambie de brazo.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes</source>
            <comment>exercise.follow-slowly</comment>
            <translation>Seguir el punto con los ojos</translation>
        </message>
        <message>
            <source>The target moves slowly. Your eyes go with it. Your head stays still.</source>
            <comment>exercise.follow-slowly.how</comment>
            <translation>El punto se mueve despacio. Sus ojos van con él. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Toss from hand to hand</source>
            <comment>exercise.hand-toss</comment>
            <translation>Lanzar de mano a mano</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one. Stay far back, so that both hands stay in the picture.</source>
            <comment>exercise.hand-toss.how</comment>
            <translation>Lance una pelota blanda o un calcetín enrollado de una mano a otra, justo por encima de los ojos. Los ojos y la cabeza van con ella. Si cae, déjela y tome otra. Quédese bastante atrás para que las dos manos queden en la imagen.</translation>
        </message>
        <message>
            <source>Tilt your head</source>
            <comment>exercise.head-tilts</comment>
            <translation>Inclinar la cabeza</translation>
        </message>
        <message>
            <source>Tip your ear to your right shoulder, then to your left. Go slowly. Look straight ahead.</source>
            <comment>exercise.head-tilts.how</comment>
            <translation>Incline la oreja hacia el hombro derecho, luego hacia el izquierdo. Vaya despacio. Mire al frente.</translation>
        </message>
        <message>
            <source>Look past a moving scene</source>
            <comment>exercise.moving-background</comment>
            <translation>Mirar con un fondo que se mueve</translation>
        </message>
        <message>
            <source>Look at the mark. It stays where it is. Soft stripes behind it move slowly. Your head stays still.</source>
            <comment>exercise.moving-background.how</comment>
            <translation>Mire la marca. Se queda donde está. Detrás se mueven despacio unas rayas suaves. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Fingertip near and far</source>
            <comment>exercise.near-far</comment>
            <translation>La punta del dedo, cerca y lejos</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length, just under the camera. Bring it slowly to 30 cm from your eyes, then back. Keep your eyes on the tip, your head still.</source>
            <comment>exercise.near-far.how</comment>
            <translation>Levante un dedo con el brazo estirado, justo debajo de la cámara. Acérquelo despacio hasta unos 30 cm de los ojos y vuelva a alejarlo. Sus ojos se quedan en la punta. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Hold your eyes on a near tip</source>
            <comment>exercise.near-hold</comment>
            <translation>Mantener los ojos en una punta cercana</translation>
        </message>
        <message>
            <source>Hold one finger up where you see just one tip. Keep your eyes on it. Your head stays still.</source>
            <comment>exercise.near-hold.how</comment>
            <translation>Levante un dedo donde vea una sola punta. Mantenga los ojos en ella. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Nod, eyes on the target</source>
            <comment>exercise.nods-on-target</comment>
            <translation>Cabeza arriba y abajo, ojos en el punto</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the target.</source>
            <comment>exercise.nods-on-target.how</comment>
            <translation>Mueva la cabeza arriba y abajo, un movimiento por golpe. Sus ojos se quedan en el punto.</translation>
        </message>
        <message>
            <source>Nod, head and eyes together</source>
            <comment>exercise.nods-together</comment>
            <translation>Arriba y abajo, cabeza y ojos juntos</translation>
        </message>
        <message>
            <source>Look up with head and eyes, then look down. Move once a beat.</source>
            <comment>exercise.nods-together.how</comment>
            <translation>Mire hacia arriba con la cabeza y los ojos, luego hacia abajo. Un movimiento por golpe.</translation>
        </message>
        <message>
            <source>Nod while the target moves</source>
            <comment>exercise.nods-x2</comment>
            <translation>Arriba y abajo mientras el punto se mueve</translation>
        </message>
        <message>
            <source>Nod up while the target goes down, then the other way round. Your eyes stay on the target. Nod as far as the target goes, and no farther.</source>
            <comment>exercise.nods-x2.how</comment>
            <translation>Mueva la cabeza hacia arriba mientras el punto baja, y luego al revés. Sus ojos se quedan en el punto. Mueva la cabeza tanto como se mueve el punto, y no más.</translation>
        </message>
        <message>
            <source>Turn with a partner</source>
            <comment>exercise.partner-turns</comment>
            <translation>Girar con otra persona</translation>
        </message>
        <message>
            <source>Turn to one side and take the ball from your partner. Turn to the other side and give it back.</source>
            <comment>exercise.partner-turns.how</comment>
            <translation>Gire hacia un lado y tome la pelota de la otra persona. Gire hacia el otro lado y devuélvasela.</translation>
        </message>
        <message>
            <source>Turn with your eyes shut</source>
            <comment>exercise.remembered-target</comment>
            <translation>Girar con los ojos cerrados</translation>
        </message>
        <message>
            <source>Look at the target. Shut your eyes and turn your head. Keep your eyes where the target was. Open them and see if you are right.</source>
            <comment>exercise.remembered-target.how</comment>
            <translation>Mire el punto. Cierre los ojos y gire la cabeza. Deje los ojos donde estaba el punto. Ábralos y vea si acertó.</translation>
        </message>
        <message>
            <source>Roll your shoulders back</source>
            <comment>exercise.shoulders-back</comment>
            <translation>Hombros en círculo hacia atrás</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-back.how</comment>
            <translation>Suba los dos hombros, llévelos hacia atrás y déjelos caer. Vaya despacio. Mantenga la cabeza recta. Los dos hombros se quedan en la imagen.</translation>
        </message>
        <message>
            <source>Roll your shoulders forward</source>
            <comment>exercise.shoulders-forward</comment>
            <translation>Hombros en círculo hacia delante</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-forward.how</comment>
            <translation>Suba los dos hombros, llévelos hacia delante y déjelos caer. Vaya despacio. Mantenga la cabeza recta. Los dos hombros se quedan en la imagen.</translation>
        </message>
        <message>
            <source>Stand up and sit down</source>
            <comment>exercise.sit-to-stand</comment>
            <translation>Levantarse y sentarse</translation>
        </message>
        <message>
            <source>Stand up from your chair, then sit down again. You may use your hands.</source>
            <comment>exercise.sit-to-stand.how</comment>
            <translation>Levántese de la silla y vuelva a sentarse. Puede usar las manos.</translation>
        </message>
        <message>
            <source>Up and down the stairs</source>
            <comment>exercise.stairs</comment>
            <translation>Subir y bajar la escalera</translation>
        </message>
        <message>
            <source>Go up one step and down again. Hold the rail. Your helper stays close. Count for yourself.</source>
            <comment>exercise.stairs.how</comment>
            <translation>Suba un escalón y vuelva a bajar. Agárrese a la barandilla. La persona que le ayuda se queda cerca. Cuente usted.</translation>
        </message>
        <message>
            <source>Stand in the corner</source>
            <comment>exercise.stand</comment>
            <translation>De pie en la esquina</translation>
        </message>
        <message>
            <source>Stand and turn your head</source>
            <comment>exercise.stand-head-shake</comment>
            <translation>De pie y girar la cabeza</translation>
        </message>
        <message>
            <source>Stand with your feet as wide as your hips. Turn your head from side to side with the beat.</source>
            <comment>exercise.stand-head-shake.how</comment>
            <translation>Póngase de pie, con los pies tan separados como las caderas. Gire la cabeza de un lado a otro con el ritmo.</translation>
        </message>
        <message>
            <source>Stand on one leg</source>
            <comment>exercise.stand-one-leg</comment>
            <translation>De pie sobre una pierna</translation>
        </message>
        <message>
            <source>Lift one foot a little. Stand still and look at a mark on the wall, as high as your eyes. Then change legs.</source>
            <comment>exercise.stand-one-leg.how</comment>
            <translation>Levante un poco un pie. No se mueva y mire una marca en la pared, a la altura de sus ojos. Luego cambie de pierna.</translation>
        </message>
        <message>
            <source>Stand heel to toe</source>
            <comment>exercise.stand-tandem</comment>
            <translation>De pie, talón con punta</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Stand still and look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand-tandem.how</comment>
            <translation>Ponga un pie justo delante del otro. No se mueva y mire una marca en la pared, a la altura de sus ojos.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand.how</comment>
            <translation>Póngase de espaldas a la esquina, con los pies tan separados como los hombros. Deje colgar los brazos. Barbilla alta. Mire una marca en la pared, a la altura de sus ojos.</translation>
        </message>
        <message>
            <source>Follow your thumb, head too</source>
            <comment>exercise.thumb-together</comment>
            <translation>Seguir el pulgar, también con la cabeza</translation>
        </message>
        <message>
            <source>Hold your thumb out in front of you. Move it from side to side. Your head and eyes go with it.</source>
            <comment>exercise.thumb-together.how</comment>
            <translation>Ponga el pulgar delante de usted. Muévalo de un lado a otro. La cabeza y los ojos van con él.</translation>
        </message>
        <message>
            <source>Turn your head, eyes on the target</source>
            <comment>exercise.turns-on-target</comment>
            <translation>Gire la cabeza, ojos en el punto</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the target.</source>
            <comment>exercise.turns-on-target.how</comment>
            <translation>Gire la cabeza de un lado a otro, un giro por golpe. Sus ojos se quedan en el punto.</translation>
        </message>
        <message>
            <source>Turn head and eyes together</source>
            <comment>exercise.turns-together</comment>
            <translation>Gire la cabeza y los ojos juntos</translation>
        </message>
        <message>
            <source>Look to the right with head and eyes, then to the left. Move once a beat.</source>
            <comment>exercise.turns-together.how</comment>
            <translation>Mire a la derecha con la cabeza y los ojos, luego a la izquierda. Un movimiento por golpe.</translation>
        </message>
        <message>
            <source>Head and target move apart</source>
            <comment>exercise.turns-x2</comment>
            <translation>La cabeza y el punto se separan</translation>
        </message>
        <message>
            <source>Turn your head one way while the target goes the other way. Your eyes stay on the target. Turn as far as the target goes, and no farther.</source>
            <comment>exercise.turns-x2.how</comment>
            <translation>Gire la cabeza hacia un lado mientras el punto va hacia el otro. Sus ojos se quedan en el punto. Gire tanto como se mueve el punto, y no más.</translation>
        </message>
        <message>
            <source>Walk forward and backward</source>
            <comment>exercise.walk</comment>
            <translation>Camine hacia delante y hacia atrás</translation>
        </message>
        <message>
            <source>Walk ten steps forward, then ten steps backward. Your helper walks with you. Count your own steps.</source>
            <comment>exercise.walk.how</comment>
            <translation>Dé diez pasos hacia delante, luego diez pasos hacia atrás. La persona que le ayuda camina con usted. Cuente usted sus pasos.</translation>
        </message>
        <message>
            <source>Shift from foot to foot</source>
            <comment>exercise.weight-shift</comment>
            <translation>De un pie al otro</translation>
        </message>
        <message>
            <source>Stand tall. Put your weight on one foot, then on the other. Go slowly.</source>
            <comment>exercise.weight-shift.how</comment>
            <translation>Póngase de pie, bien recto el cuerpo. Ponga el peso en un pie, luego en el otro. Vaya despacio.</translation>
        </message>
        <message>
            <source>Both</source>
            <comment>eyes.both</comment>
            <translation>Los dos</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>eyes.left</comment>
            <translation>Mi izquierdo</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>eyes.right</comment>
            <translation>Mi derecho</translation>
        </message>
        <message>
            <source>Which eye shall be watched?</source>
            <comment>eyes.title</comment>
            <translation>¿Qué ojo se observa?</translation>
        </message>
        <message>
            <source>until it begins</source>
            <comment>far.begins</comment>
            <translation>para empezar</translation>
        </message>
        <message>
            <source>left</source>
            <comment>far.left</comment>
            <translation>por hacer</translation>
        </message>
        <message>
            <source>left, {count} done</source>
            <comment>far.left_done</comment>
            <translation>por hacer, {count} hechas</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>far.of</comment>
            <translation>de {goal}</translation>
        </message>
        <message>
            <source>so far</source>
            <comment>far.so_far</comment>
            <translation>hasta ahora</translation>
        </message>
        <message>
            <source>Target with repetition count</source>
            <comment>field.name</comment>
            <translation>Punto con el número de repeticiones</translation>
        </message>
        <message>
            <source>{count} repetitions. Left {left}, right {right}, {tempo} beats a minute.</source>
            <comment>field.text</comment>
            <translation>{count} repeticiones. Izquierda {left}, derecha {right}, {tempo} golpes por minuto.</translation>
        </message>
        <message>
            <source>{count} repetitions. Down {down}, up {up}, {tempo} beats a minute.</source>
            <comment>field.text_up</comment>
            <translation>{count} repeticiones. Abajo {down}, arriba {up}, {tempo} golpes por minuto.</translation>
        </message>
        <message>
            <source>Let it move (S)</source>
            <comment>figure.go</comment>
            <translation>Mover (S)</translation>
        </message>
        <message>
            <source>Let the drawing move, key S</source>
            <comment>figure.go_name</comment>
            <translation>Dejar que el dibujo se mueva, tecla S</translation>
        </message>
        <message>
            <source>Hold still (S)</source>
            <comment>figure.hold</comment>
            <translation>Detener (S)</translation>
        </message>
        <message>
            <source>Hold the drawing still, key S</source>
            <comment>figure.hold_name</comment>
            <translation>Detener el dibujo, tecla S</translation>
        </message>
        <message>
            <source>Drawings move again.</source>
            <comment>figure.moves</comment>
            <translation>Los dibujos se mueven de nuevo.</translation>
        </message>
        <message>
            <source>It moves slowly, over and over again.</source>
            <comment>figure.moving</comment>
            <translation>Se mueve despacio, una y otra vez.</translation>
        </message>
        <message>
            <source>Drawing: {what}</source>
            <comment>figure.name</comment>
            <translation>Dibujo: {what}</translation>
        </message>
        <message>
            <source>It does not move.</source>
            <comment>figure.still</comment>
            <translation>No se mueve.</translation>
        </message>
        <message>
            <source>Drawings hold still now.</source>
            <comment>figure.stills</comment>
            <translation>Ahora los dibujos están quietos.</translation>
        </message>
        <message>
            <source>From above</source>
            <comment>figure.view.above</comment>
            <translation>Desde arriba</translation>
        </message>
        <message>
            <source>From the front</source>
            <comment>figure.view.body_front</comment>
            <translation>De frente</translation>
        </message>
        <message>
            <source>As in a mirror</source>
            <comment>figure.view.front</comment>
            <translation>Como en un espejo</translation>
        </message>
        <message>
            <source>From the side</source>
            <comment>figure.view.side</comment>
            <translation>De lado</translation>
        </message>
        <message>
            <source>Your face can not be seen well while it moves. The numbers may be rough.</source>
            <comment>finding.coarse_picture</comment>
            <translation>Su cara no se ve bien mientras se mueve. Los números pueden ser poco exactos.</translation>
        </message>
        <message>
            <source>Your eyes could not be followed well enough. Your head is measured, your gaze is not.</source>
            <comment>finding.gaze_not_fitted</comment>
            <translation>No se pudieron seguir bien sus ojos. Se mide su cabeza, pero no su mirada.</translation>
        </message>
        <message>
            <source>The set-up has a weakness ({key}). Numbers may be rough.</source>
            <comment>finding.other</comment>
            <translation>La preparación tiene un punto débil ({key}). Los números pueden ser aproximados.</translation>
        </message>
        <message>
            <source>Repeat the set-up with more light if you can.</source>
            <comment>finding.repeat_hint</comment>
            <translation>Si puede, repita la preparación con más luz.</translation>
        </message>
        <message>
            <source>What Turnpost does, and what it does not</source>
            <comment>first.about</comment>
            <translation>Qué hace Turnpost y qué no</translation>
        </message>
        <message>
            <source>It watches your head and eyes through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and says when something is off.</source>
            <comment>first.about.does</comment>
            <translation>Mira su cabeza y sus ojos por la cámara mientras usted hace los ejercicios que le ha dado su terapeuta. Cuenta, marca el ritmo y avisa cuando algo no va bien.</translation>
        </message>
        <message>
            <source>It does not find out what you have, and it does not choose or change your treatment. It can't hold you, and it calls nobody.</source>
            <comment>first.about.not</comment>
            <translation>No averigua qué tiene usted, y no elige ni cambia su tratamiento. No puede sujetarle, y no llama a nadie.</translation>
        </message>
        <message>
            <source>At the end you get a summary that you can hand to your therapist.</source>
            <comment>first.about.saves</comment>
            <translation>Al final recibe un resumen que puede entregar a su terapeuta.</translation>
        </message>
        <message>
            <source>One step back</source>
            <comment>first.before</comment>
            <translation>Un paso atrás</translation>
        </message>
        <message>
            <source>Camera, light and glasses</source>
            <comment>first.camera</comment>
            <translation>Cámara, luz y gafas</translation>
        </message>
        <message>
            <source>Finish</source>
            <comment>first.finish</comment>
            <translation>Terminar</translation>
        </message>
        <message>
            <source>Skip the rest</source>
            <comment>first.leave</comment>
            <translation>Saltar el resto</translation>
        </message>
        <message>
            <source>Skip the rest; you find these steps again under “Camera, screen, more”</source>
            <comment>first.leave_name</comment>
            <translation>Saltar el resto; encontrará estos pasos otra vez en «Cámara, pantalla, más»</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>first.next</comment>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>First steps</source>
            <comment>first.open</comment>
            <translation>Primeros pasos</translation>
        </message>
        <message>
            <source>The first steps</source>
            <comment>first.overview</comment>
            <translation>Los primeros pasos</translation>
        </message>
        <message>
            <source>Take any of them again, in any order. Nothing you did is lost.</source>
            <comment>first.overview.how</comment>
            <translation>Repita cualquiera de ellos, en el orden que quiera. No se pierde nada.</translation>
        </message>
        <message>
            <source>What stays with you</source>
            <comment>first.privacy</comment>
            <translation>Lo que se queda con usted</translation>
        </message>
        <message>
            <source>At the top left you always see whether the camera is on.</source>
            <comment>first.privacy.mark</comment>
            <translation>Arriba a la izquierda ve siempre si la cámara está encendida.</translation>
        </message>
        <message>
            <source>Step {at} of {of}</source>
            <comment>first.progress</comment>
            <translation>Paso {at} de {of}</translation>
        </message>
        <message>
            <source>Your place for sitting</source>
            <comment>first.sitting</comment>
            <translation>Su sitio para sentarse</translation>
        </message>
        <message>
            <source>A firm chair with a back and no wheels, both feet on the floor.</source>
            <comment>first.sitting.chair</comment>
            <translation>Una silla firme con respaldo y sin ruedas, los dos pies en el suelo.</translation>
        </message>
        <message>
            <source>A lamp or a window in front of you, not behind you.</source>
            <comment>first.sitting.light</comment>
            <translation>Una lámpara o una ventana delante de usted, no detrás.</translation>
        </message>
        <message>
            <source>The screen straight ahead at arm's length, its camera about as high as your eyes. A few books under the laptop help.</source>
            <comment>first.sitting.screen</comment>
            <translation>La pantalla justo enfrente, a la distancia de un brazo, con la cámara más o menos a la altura de sus ojos. Ayuda poner unos libros debajo del portátil.</translation>
        </message>
        <message>
            <source>Sound and voice</source>
            <comment>first.sound</comment>
            <translation>Sonido y voz</translation>
        </message>
        <message>
            <source>Your place for standing</source>
            <comment>first.standing</comment>
            <translation>Su sitio para estar de pie</translation>
        </message>
        <message>
            <source>A corner of the room behind you. A heavy chair without wheels in front of you, so near that you can hold its back.</source>
            <comment>first.standing.corner</comment>
            <translation>Una esquina de la habitación detrás de usted. Una silla pesada sin ruedas delante, tan cerca que pueda agarrar el respaldo.</translation>
        </message>
        <message>
            <source>Where your plan asks for a helper, never stand without one.</source>
            <comment>first.standing.helper</comment>
            <translation>Donde su plan pide a alguien que le ayude, nunca esté de pie sin esa persona.</translation>
        </message>
        <message>
            <source>The laptop on something high and firm, out of your reach, its cable where nobody trips.</source>
            <comment>first.standing.laptop</comment>
            <translation>El portátil sobre algo alto y firme, fuera de su alcance, con el cable donde nadie tropiece.</translation>
        </message>
        <message>
            <source>You need it only if your plan has exercises for standing.</source>
            <comment>first.standing.only</comment>
            <translation>Solo lo necesita si su plan tiene ejercicios de pie.</translation>
        </message>
        <message>
            <source>When to stop, and when to get help</source>
            <comment>first.stop</comment>
            <translation>Cuándo parar y cuándo pedir ayuda</translation>
        </message>
        <message>
            <source>Can you read this with ease?</source>
            <comment>first.text</comment>
            <translation>¿Puede leer esto sin esfuerzo?</translation>
        </message>
        <message>
            <source>Colours</source>
            <comment>first.text.colours</comment>
            <translation>Colores</translation>
        </message>
        <message>
            <source>Dark</source>
            <comment>first.text.dark</comment>
            <translation>Oscuro</translation>
        </message>
        <message>
            <source>Sit as you will when you practise, and choose. The buttons at the top right do the same at any time.</source>
            <comment>first.text.how</comment>
            <translation>Siéntese como lo hará al practicar, y elija. Los botones de arriba a la derecha hacen lo mismo en cualquier momento.</translation>
        </message>
        <message>
            <source>Language</source>
            <comment>first.text.language</comment>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>Light</source>
            <comment>first.text.light</comment>
            <translation>Claro</translation>
        </message>
        <message>
            <source>Drawings of the exercises</source>
            <comment>first.text.motion</comment>
            <translation>Dibujos de los ejercicios</translation>
        </message>
        <message>
            <source>Move slowly</source>
            <comment>first.text.moving</comment>
            <translation>Se mueven despacio</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>first.text.percent</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <comment>first.text.size</comment>
            <translation>Tamaño de la letra</translation>
        </message>
        <message>
            <source>Hold still</source>
            <comment>first.text.still</comment>
            <translation>Quietos</translation>
        </message>
        <message>
            <source>No clinician who speaks this language has checked these words yet.</source>
            <comment>first.text.unchecked</comment>
            <translation>Ningún profesional clínico que hable español ha revisado todavía estos textos.</translation>
        </message>
        <message>
            <source>Half a minute to try it</source>
            <comment>first.try</comment>
            <translation>Medio minuto para probar</translation>
        </message>
        <message>
            <source>Try it now</source>
            <comment>first.try.begin</comment>
            <translation>Probar ahora</translation>
        </message>
        <message>
            <source>Leave it out if you were not told that you may turn your head.</source>
            <comment>first.try.care</comment>
            <translation>No lo haga si nadie le ha dicho que puede girar la cabeza.</translation>
        </message>
        <message>
            <source>A few questions about today come first. Then the camera gets to know you, which takes about a minute. Then you turn your head gently for half a minute.</source>
            <comment>first.try.how</comment>
            <translation>Primero vienen unas preguntas sobre hoy. Después la cámara le conoce, que tarda más o menos un minuto. Después gira la cabeza suavemente durante medio minuto.</translation>
        </message>
        <message>
            <source>Your plan lets the head turn only a little, too little for this try. Leave it out, and ask your therapist how you begin.</source>
            <comment>first.try.none</comment>
            <translation>Su plan permite girar la cabeza solo un poco, demasiado poco para esta prueba. Déjela, y pregunte a su terapeuta cómo empezar.</translation>
        </message>
        <message>
            <source>Is any of this new since last time?</source>
            <comment>gate.ask</comment>
            <translation>¿Hay algo de esto nuevo desde la última vez?</translation>
        </message>
        <message>
            <source>Did any of this start or happen not long ago?</source>
            <comment>gate.ask_first</comment>
            <translation>¿Algo de esto ha aparecido hace poco?</translation>
        </message>
        <message>
            <source>Is any of this new just now?</source>
            <comment>gate.ask_unwell</comment>
            <translation>¿Hay algo de esto nuevo ahora mismo?</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>gate.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>You blacked out</source>
            <comment>gate.blackout</comment>
            <translation>Perdió el conocimiento</translation>
        </message>
        <message>
            <source>You can't stand or walk</source>
            <comment>gate.cannot_stand</comment>
            <translation>No puede estar de pie o caminar</translation>
        </message>
        <message>
            <source>Pain in your chest</source>
            <comment>gate.chest_pain</comment>
            <translation>Dolor en el pecho</translation>
        </message>
        <message>
            <source>Seeing double</source>
            <comment>gate.double_vision</comment>
            <translation>Ve doble</translation>
        </message>
        <message>
            <source>You had a fall</source>
            <comment>gate.fall</comment>
            <translation>Se ha caído</translation>
        </message>
        <message>
            <source>You suddenly hear less</source>
            <comment>gate.hearing_loss</comment>
            <translation>De repente oye menos</translation>
        </message>
        <message>
            <source>Mark what is new. If nothing is, press “None of these”.</source>
            <comment>gate.how</comment>
            <translation>Marque lo que sea nuevo. Si no hay nada, pulse «Nada de esto».</translation>
        </message>
        <message>
            <source>Your neck hurts</source>
            <comment>gate.neck_pain</comment>
            <translation>Le duele el cuello</translation>
        </message>
        <message>
            <source>None of these</source>
            <comment>gate.none</comment>
            <translation>Nada de esto</translation>
        </message>
        <message>
            <source>Do not practise today. Call your therapist first.</source>
            <comment>gate.outcome.call_therapist</comment>
            <translation>No practique hoy. Llame antes a su terapeuta.</translation>
        </message>
        <message>
            <source>Call for emergency help now: {number}. Do not practise today.</source>
            <comment>gate.outcome.emergency</comment>
            <translation>Llame ahora a emergencias: {number}. No practique hoy.</translation>
        </message>
        <message>
            <source>Call for emergency help now. Do not practise today.</source>
            <comment>gate.outcome.emergency_no_number</comment>
            <translation>Llame ahora a emergencias. No practique hoy.</translation>
        </message>
        <message>
            <source>For now you practise sitting down.</source>
            <comment>gate.outcome.seated_only</comment>
            <translation>Por ahora practica en la silla.</translation>
        </message>
        <message>
            <source>Hold on and sit still until it stops. That is all for today. Your therapist sees this first when you hand over your sessions.</source>
            <comment>gate.outcome.sit_and_stop</comment>
            <translation>Agárrese y siéntese sin moverse hasta que pare. Eso es todo por hoy. Su terapeuta verá esto lo primero cuando usted entregue sus sesiones.</translation>
        </message>
        <message>
            <source>A short spin when you bend, look up or tilt your head</source>
            <comment>gate.positional_spin</comment>
            <translation>Todo da vueltas un momento al agacharse, mirar arriba o inclinar la cabeza</translation>
        </message>
        <message>
            <source>A sudden bad headache</source>
            <comment>gate.severe_headache</comment>
            <translation>Un dolor de cabeza fuerte y repentino</translation>
        </message>
        <message>
            <source>Trouble with speech</source>
            <comment>gate.slurred_speech</comment>
            <translation>Dificultad para hablar</translation>
        </message>
        <message>
            <source>Yes, what I marked</source>
            <comment>gate.some</comment>
            <translation>Sí, lo que marqué</translation>
        </message>
        <message>
            <source>Your arm tingles</source>
            <comment>gate.tingling_arm</comment>
            <translation>Siente hormigueo en el brazo</translation>
        </message>
        <message>
            <source>A dizzy spell not like the usual ones</source>
            <comment>gate.unlike_usual</comment>
            <translation>Un mareo distinto de los de siempre</translation>
        </message>
        <message>
            <source>A weak or numb face, arm or leg</source>
            <comment>gate.weak_or_numb</comment>
            <translation>La cara, un brazo o una pierna débil o dormida</translation>
        </message>
        <message>
            <source>None</source>
            <comment>glasses.none</comment>
            <translation>Ninguna</translation>
        </message>
        <message>
            <source>One strength</source>
            <comment>glasses.single</comment>
            <translation>De una graduación</translation>
        </message>
        <message>
            <source>Which glasses do you wear now?</source>
            <comment>glasses.title</comment>
            <translation>¿Qué gafas lleva ahora?</translation>
        </message>
        <message>
            <source>Bi- or varifocal</source>
            <comment>glasses.varifocal</comment>
            <translation>Bifocales o progresivas</translation>
        </message>
        <message>
            <source>Nothing is measured here. Please count for yourself.</source>
            <comment>guide.count</comment>
            <translation>Aquí no se mide nada. Por favor, cuente usted.</translation>
        </message>
        <message>
            <source>That was all of it. Stand still, or sit down. Your helper presses “Done”.</source>
            <comment>guide.over</comment>
            <translation>Eso fue todo. Quédese de pie sin moverse, o siéntese. La persona que le ayuda pulsa «Hecho».</translation>
        </message>
        <message>
            <source>Turn slowly to the other side and give the ball back.</source>
            <comment>guide.partner.give</comment>
            <translation>Gire despacio hacia el otro lado y devuelva la pelota.</translation>
        </message>
        <message>
            <source>First stand still. Your partner is close to you, with the ball.</source>
            <comment>guide.partner.stand</comment>
            <translation>Primero quédese de pie sin moverse. Su acompañante está cerca de usted, con la pelota.</translation>
        </message>
        <message>
            <source>When you are ready, turn slowly to one side and take the ball.</source>
            <comment>guide.partner.take</comment>
            <translation>Cuando quiera, gire despacio hacia un lado y tome la pelota.</translation>
        </message>
        <message>
            <source>Your helper stays one step below you. When you are steady, go down again. Your hand stays on the rail.</source>
            <comment>guide.stairs.down</comment>
            <translation>La persona que le ayuda se queda un escalón más abajo. Cuando esté firme, baje otra vez. Su mano sigue en la barandilla.</translation>
        </message>
        <message>
            <source>Stand before the step, your hand on the rail. Your helper stands close behind you.</source>
            <comment>guide.stairs.stand</comment>
            <translation>Póngase ante el escalón, con la mano en la barandilla. La persona que le ayuda está justo detrás de usted.</translation>
        </message>
        <message>
            <source>Your helper stays close behind you. When you are ready, go up one step, one foot after the other.</source>
            <comment>guide.stairs.up</comment>
            <translation>La persona que le ayuda sigue justo detrás de usted. Cuando quiera, suba un escalón, un pie después del otro.</translation>
        </message>
        <message>
            <source>To stop, say stop and hold on. Your helper stays and helps you sit down. The Escape key can wait.</source>
            <comment>guide.stop</comment>
            <translation>Para parar, diga alto y agárrese. La persona que le ayuda se queda y le ayuda a sentarse. La tecla Escape puede esperar.</translation>
        </message>
        <message>
            <source>Your helper goes behind you. When you are ready, walk ten steps backward. Take your time.</source>
            <comment>guide.walk.back</comment>
            <translation>La persona que le ayuda se pone detrás de usted. Cuando quiera, dé diez pasos hacia atrás. Tómese su tiempo.</translation>
        </message>
        <message>
            <source>When you are ready, walk ten steps forward. Take your time.</source>
            <comment>guide.walk.forward</comment>
            <translation>Cuando quiera, dé diez pasos hacia delante. Tómese su tiempo.</translation>
        </message>
        <message>
            <source>After the tenth step stop, and stand until all is steady.</source>
            <comment>guide.walk.halt</comment>
            <translation>Tras el décimo paso, pare y quédese de pie hasta que todo esté en calma.</translation>
        </message>
        <message>
            <source>First stand still. Your helper is at your side.</source>
            <comment>guide.walk.stand</comment>
            <translation>Primero quédese de pie sin moverse. La persona que le ayuda está a su lado.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>handover.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Not in the file, because they broke off: {count}. Close Turnpost and open it again to save them.</source>
            <comment>handover.broken_off</comment>
            <translation>No están en el archivo porque se interrumpieron: {count}. Cierre Turnpost y ábralo de nuevo para guardarlas.</translation>
        </message>
        <message>
            <source>Not in the file, because you saved them in a folder of your own: {count}. Bring that folder to your therapist.</source>
            <comment>handover.elsewhere</comment>
            <translation>No están en el archivo porque las guardó en una carpeta propia: {count}. Lleve esa carpeta a su terapeuta.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>handover.failed</comment>
            <translation>Eso no ha salido bien: {why}</translation>
        </message>
        <message>
            <source>There are sessions of other plans, of which this clinic has nothing yet: {plans}. They stay here unless you say that they are yours and meant for this clinic.</source>
            <comment>handover.foreign</comment>
            <translation>Hay sesiones de otros planes, de los que esta clínica aún no tiene nada: {plans}. Se quedan aquí, salvo que usted diga que son suyas y para esta clínica.</translation>
        </message>
        <message>
            <source>Mine: take them, too</source>
            <comment>handover.foreign.take</comment>
            <translation>Son mías: incluirlas también</translation>
        </message>
        <message>
            <source>Names of files are not shown in a call. Leave the call's layout (F4) first.</source>
            <comment>handover.in_call</comment>
            <translation>En una llamada no se muestran nombres de archivos. Salga antes de la vista para la llamada (F4).</translation>
        </message>
        <message>
            <source>Turnpost puts them into one file. In it are your answers and what was measured. There is no picture in it, nor the shape of your face, nor your name.</source>
            <comment>handover.inside</comment>
            <translation>Turnpost las pone en un archivo. En él están sus respuestas y lo que se midió. No hay ninguna imagen, ni la forma de su cara, ni su nombre.</translation>
        </message>
        <message>
            <source>Files for the clinic (*.age *.turnpost)</source>
            <comment>handover.kinds</comment>
            <translation>Archivos para la clínica (*.age *.turnpost)</translation>
        </message>
        <message>
            <source>The file is locked: only your clinic can open it.</source>
            <comment>handover.locked</comment>
            <translation>El archivo está cerrado: solo su clínica puede abrirlo.</translation>
        </message>
        <message>
            <source>Looking at what you have practised ...</source>
            <comment>handover.looking</comment>
            <translation>Mirando lo que ha practicado ...</translation>
        </message>
        <message>
            <source>The file is made. Sessions in it: {count}. It is here: {path}</source>
            <comment>handover.made</comment>
            <translation>El archivo está hecho. Sesiones en él: {count}. Está aquí: {path}</translation>
        </message>
        <message>
            <source>Make one with all {count}</source>
            <comment>handover.make_all</comment>
            <translation>Hacer uno con todas: {count}</translation>
        </message>
        <message>
            <source>Make the file</source>
            <comment>handover.make_new</comment>
            <translation>Hacer el archivo</translation>
        </message>
        <message>
            <source>Making the file ...</source>
            <comment>handover.making</comment>
            <translation>Haciendo el archivo ...</translation>
        </message>
        <message>
            <source>Not all went into one file. Send these, too: {names}</source>
            <comment>handover.more</comment>
            <translation>No todo cupo en un archivo. Envíe también estos: {names}</translation>
        </message>
        <message>
            <source>Sessions waiting to be handed over: {count}.</source>
            <comment>handover.new</comment>
            <translation>Sesiones por entregar: {count}.</translation>
        </message>
        <message>
            <source>You have handed over all you practised with this plan. If a file was lost, you can make one with everything again.</source>
            <comment>handover.no_new</comment>
            <translation>Ha entregado todo lo que practicó con este plan. Si se perdió un archivo, puede hacer otro con todo de nuevo.</translation>
        </message>
        <message>
            <source>You have no plan from your therapist open. Open it on the first page, then come back.</source>
            <comment>handover.no_plan</comment>
            <translation>No tiene abierto ningún plan de su terapeuta. Ábralo en la primera página y vuelva después.</translation>
        </message>
        <message>
            <source>Your plan does not name a clinic that can receive files. Ask your therapist for a plan with the clinic's key in it.</source>
            <comment>handover.no_way</comment>
            <translation>Su plan no nombra ninguna clínica que pueda recibir archivos. Pida a su terapeuta un plan con la llave de la clínica.</translation>
        </message>
        <message>
            <source>There is nothing to hand over yet. Practise once, then come back.</source>
            <comment>handover.none</comment>
            <translation>Todavía no hay nada que entregar. Practique una vez y vuelva después.</translation>
        </message>
        <message>
            <source>One session waits to be handed over.</source>
            <comment>handover.one_new</comment>
            <translation>Una sesión espera para entregarse.</translation>
        </message>
        <message>
            <source>Hand over to my therapist</source>
            <comment>handover.open</comment>
            <translation>Entregar a mi terapeuta</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. Whoever gets hold of this file can read it, so give it to your therapist by hand if you can.</source>
            <comment>handover.plain</comment>
            <translation>Su clínica ha elegido archivos sin cierre. Quien consiga este archivo puede leerlo, así que déselo a su terapeuta en mano si puede.</translation>
        </message>
        <message>
            <source>Now send it to your therapist: attach it to an e-mail, or bring it along on a memory stick.</source>
            <comment>handover.send</comment>
            <translation>Ahora envíelo a su terapeuta: adjúntelo a un correo o llévelo en una memoria USB.</translation>
        </message>
        <message>
            <source>Sessions whose curves stayed behind, too large or not readable: {count}.</source>
            <comment>handover.thin</comment>
            <translation>Sesiones cuyas curvas se quedaron aquí, por demasiado grandes o ilegibles: {count}.</translation>
        </message>
        <message>
            <source>Hand over to your therapist</source>
            <comment>handover.title</comment>
            <translation>Entregar a su terapeuta</translation>
        </message>
        <message>
            <source>You have not compared the words of your plan yet. Do it first: then you know that the file goes to your clinic.</source>
            <comment>handover.unchecked</comment>
            <translation>Todavía no ha comparado las palabras de su plan. Hágalo primero: así sabe que el archivo va a su clínica.</translation>
        </message>
        <message>
            <source>Left out, because they can't be read: {count}. Tell your therapist.</source>
            <comment>handover.unread</comment>
            <translation>Sin incluir, porque no se pueden leer: {count}. Dígaselo a su terapeuta.</translation>
        </message>
        <message>
            <source>Not in the file, because they were practised as another person or without a plan: {count}.</source>
            <comment>handover.unsent</comment>
            <translation>No están en el archivo porque se practicaron como otra persona o sin plan: {count}.</translation>
        </message>
        <message>
            <source>Where to put the file</source>
            <comment>handover.where</comment>
            <translation>Dónde poner el archivo</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>help.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>In the whole program</source>
            <comment>help.group.always</comment>
            <translation>En todo el programa</translation>
        </message>
        <message>
            <source>In the layout for a call, between two sets: for your therapist</source>
            <comment>help.group.call</comment>
            <translation>En la vista para la llamada, entre dos series: para su terapeuta</translation>
        </message>
        <message>
            <source>To get about on a page</source>
            <comment>help.group.page</comment>
            <translation>Para moverse por una página</translation>
        </message>
        <message>
            <source>Where you can see yourself</source>
            <comment>help.group.picture</comment>
            <translation>Donde puede verse en la imagen</translation>
        </message>
        <message>
            <source>While a set goes on</source>
            <comment>help.group.set</comment>
            <translation>Durante una serie</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>help.key.colours</comment>
            <translation>Claro u oscuro</translation>
        </message>
        <message>
            <source>I see double: stop (with a fingertip near your eyes)</source>
            <comment>help.key.double</comment>
            <translation>Veo doble: parar (con la punta del dedo cerca de los ojos)</translation>
        </message>
        <message>
            <source>Read on below</source>
            <comment>help.key.down</comment>
            <translation>Seguir leyendo abajo</translation>
        </message>
        <message>
            <source>Faster</source>
            <comment>help.key.faster</comment>
            <translation>Más rápido</translation>
        </message>
        <message>
            <source>Full screen, and back</source>
            <comment>help.key.full_screen</comment>
            <translation>Pantalla completa, y volver</translation>
        </message>
        <message>
            <source>This page, and back</source>
            <comment>help.key.help</comment>
            <translation>Esta página, y volver</translation>
        </message>
        <message>
            <source>Larger movement</source>
            <comment>help.key.larger</comment>
            <translation>Movimiento más grande</translation>
        </message>
        <message>
            <source>Mark this moment for your therapist (in a session)</source>
            <comment>help.key.mark</comment>
            <translation>Marcar este momento para su terapeuta (durante una sesión)</translation>
        </message>
        <message>
            <source>To the next button</source>
            <comment>help.key.next</comment>
            <translation>Al siguiente botón</translation>
        </message>
        <message>
            <source>Another exercise first</source>
            <comment>help.key.other_next</comment>
            <translation>Antes otro ejercicio</translation>
        </message>
        <message>
            <source>Pause, and go on</source>
            <comment>help.key.pause</comment>
            <translation>Pausa, y seguir</translation>
        </message>
        <message>
            <source>Show or hide your picture</source>
            <comment>help.key.picture</comment>
            <translation>Mostrar u ocultar su imagen</translation>
        </message>
        <message>
            <source>Press the button that has the ring</source>
            <comment>help.key.press</comment>
            <translation>Pulsar el botón que tiene el borde</translation>
        </message>
        <message>
            <source>End Turnpost; what was done is saved</source>
            <comment>help.key.quit</comment>
            <translation>Cerrar Turnpost; lo hecho se guarda</translation>
        </message>
        <message>
            <source>Layout for a video call, and back (not in the set-up)</source>
            <comment>help.key.share</comment>
            <translation>Vista para una videollamada, y volver (no durante la preparación)</translation>
        </message>
        <message>
            <source>Slower</source>
            <comment>help.key.slower</comment>
            <translation>Más lento</translation>
        </message>
        <message>
            <source>Smaller movement</source>
            <comment>help.key.smaller</comment>
            <translation>Movimiento más pequeño</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none</source>
            <comment>help.key.sound</comment>
            <translation>Sonido: voz, golpes o nada</translation>
        </message>
        <message>
            <source>Hold drawings still, or let them move</source>
            <comment>help.key.still</comment>
            <translation>Detener los dibujos o dejar que se muevan</translation>
        </message>
        <message>
            <source>Stop at once, or leave the page</source>
            <comment>help.key.stop</comment>
            <translation>Parar enseguida o salir de la página</translation>
        </message>
        <message>
            <source>Take the change back</source>
            <comment>help.key.take_back</comment>
            <translation>Deshacer el cambio</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>help.key.text_larger</comment>
            <translation>Letra más grande</translation>
        </message>
        <message>
            <source>Text in its usual size</source>
            <comment>help.key.text_normal</comment>
            <translation>Letra de tamaño normal</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>help.key.text_smaller</comment>
            <translation>Letra más pequeña</translation>
        </message>
        <message>
            <source>I feel unwell (at any time)</source>
            <comment>help.key.unwell</comment>
            <translation>Me siento mal (en cualquier momento)</translation>
        </message>
        <message>
            <source>Back up</source>
            <comment>help.key.up</comment>
            <translation>Volver arriba</translation>
        </message>
        <message>
            <source>Ctrl</source>
            <comment>help.name.Ctrl</comment>
            <translation>Ctrl</translation>
        </message>
        <message>
            <source>Enter</source>
            <comment>help.name.Enter</comment>
            <translation>Intro</translation>
        </message>
        <message>
            <source>Page Down</source>
            <comment>help.name.PgDown</comment>
            <translation>Av Pág</translation>
        </message>
        <message>
            <source>Page Up</source>
            <comment>help.name.PgUp</comment>
            <translation>Re Pág</translation>
        </message>
        <message>
            <source>Space</source>
            <comment>help.name.Space</comment>
            <translation>Espacio</translation>
        </message>
        <message>
            <source>F1, Ctrl+M and the text size do nothing while a set or the set-up goes on. Between two sets, Esc asks first if that is all for today, and does nothing for two seconds after a page has come by itself.</source>
            <comment>help.note.always</comment>
            <translation>F1, Ctrl+M y el tamaño del texto no hacen nada durante una serie o la preparación. Entre dos series, Esc pregunta primero si eso es todo por hoy, y no hace nada durante dos segundos después de que una página haya aparecido por sí sola.</translation>
        </message>
        <message>
            <source>Where something moves behind the target, any key stops the set.</source>
            <comment>help.note.set</comment>
            <translation>Cuando algo se mueve detrás del punto, cualquier tecla detiene la serie.</translation>
        </message>
        <message>
            <source>Keys and help (F1)</source>
            <comment>help.open</comment>
            <translation>Teclas y ayuda (F1)</translation>
        </message>
        <message>
            <source>How to give a score</source>
            <comment>help.scores</comment>
            <translation>Cómo dar una puntuación</translation>
        </message>
        <message>
            <source>Then press Enter.</source>
            <comment>help.scores.enter</comment>
            <translation>Después pulse Intro.</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <comment>help.title</comment>
            <translation>Teclas y ayuda</translation>
        </message>
        <message>
            <source>If you feel unwell</source>
            <comment>help.unwell</comment>
            <translation>Si se siente mal</translation>
        </message>
        <message>
            <source>Press Esc: what goes on stops at once. While you practise or just after, press U instead: everything stops, and a few questions follow. Sit down, or hold on to something firm.</source>
            <comment>help.unwell.how</comment>
            <translation>Pulse Esc: lo que está en marcha se detiene enseguida. Mientras practica o justo después, pulse U en su lugar: todo se detiene y siguen unas preguntas. Siéntese o agárrese a algo firme.</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Keep your eyes shut.</source>
            <comment>how.ankle-sway.closed</comment>
            <translation>Póngase de pie, bien recto el cuerpo. Inclínese despacio hacia los dedos de los pies, luego hacia los talones. Doble los tobillos, no las caderas. Mantenga los ojos cerrados.</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until the time is up.</source>
            <comment>how.chair-stands-30-s.paper</comment>
            <translation>Cruce los brazos. Levántese y siéntese tantas veces como sea seguro, hasta que pase el tiempo.</translation>
        </message>
        <message>
            <source>Look from one note to the other, once a beat. Your head stays still.</source>
            <comment>how.eyes-side-to-side.wall</comment>
            <translation>Mire de una nota a la otra, una vez por golpe. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Look at one note with your eyes. Then turn your head to it. Now look at the other note, and turn again.</source>
            <comment>how.eyes-then-head.wall</comment>
            <translation>Mire una nota con los ojos. Luego gire la cabeza hacia ella. Ahora mire la otra nota y vuelva a girar.</translation>
        </message>
        <message>
            <source>Look from the upper note to the lower one and back, once a beat. Your head stays still.</source>
            <comment>how.eyes-up-down.wall</comment>
            <translation>Mire de la nota de arriba a la de abajo y de vuelta, una vez por golpe. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one.</source>
            <comment>how.hand-toss.paper</comment>
            <translation>Lance una pelota blanda o un calcetín enrollado de una mano a otra, justo por encima de los ojos. Los ojos y la cabeza van con ella. Si cae, déjela y tome otra.</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length. Bring it slowly to about 30 cm from your eyes, then back out. Your eyes stay on the tip. Your head stays still.</source>
            <comment>how.near-far.paper</comment>
            <translation>Levante un dedo con el brazo estirado. Acérquelo despacio hasta unos 30 cm de los ojos y vuelva a alejarlo. Sus ojos se quedan en la punta. Su cabeza se queda quieta.</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.nods-on-target.wall</comment>
            <translation>Asienta arriba y abajo, un movimiento por golpe. Sus ojos se quedan en la nota de la pared.</translation>
        </message>
        <message>
            <source>Lift your head, then lower it. Keep your eyes shut. Move once a beat.</source>
            <comment>how.nods-together.closed</comment>
            <translation>Suba la cabeza, luego bájela. Mantenga los ojos cerrados. Un movimiento por golpe.</translation>
        </message>
        <message>
            <source>Turn your head from side to side.</source>
            <comment>how.shake</comment>
            <translation>Gire la cabeza de un lado a otro.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-back.paper</comment>
            <translation>Suba los dos hombros, llévelos hacia atrás y déjelos caer. Vaya despacio. Mantenga la cabeza recta.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-forward.paper</comment>
            <translation>Suba los dos hombros, llévelos hacia delante y déjelos caer. Vaya despacio. Mantenga la cabeza recta.</translation>
        </message>
        <message>
            <source>Keep your eyes shut.</source>
            <comment>how.shut</comment>
            <translation>Mantenga los ojos cerrados.</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Shut your eyes and stand still.</source>
            <comment>how.stand-tandem.closed</comment>
            <translation>Ponga un pie justo delante del otro. Cierre los ojos y no se mueva.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.closed</comment>
            <translation>Póngase de espaldas a la esquina, con los pies tan separados como los hombros. Deje colgar los brazos. Barbilla alta. Mantenga los ojos cerrados.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>how.stand.soft</comment>
            <translation>Póngase de espaldas a la esquina, con los pies tan separados como las caderas. Deje colgar los brazos. Barbilla alta. Mire una marca en la pared, a la altura de sus ojos.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.soft.closed</comment>
            <translation>Póngase de espaldas a la esquina, con los pies tan separados como las caderas. Deje colgar los brazos. Barbilla alta. Mantenga los ojos cerrados.</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.turns-on-target.wall</comment>
            <translation>Gire la cabeza de un lado a otro, un giro por golpe. Sus ojos se quedan en la nota de la pared.</translation>
        </message>
        <message>
            <source>Turn your head to the right, then to the left. Keep your eyes shut. Move once a beat.</source>
            <comment>how.turns-together.closed</comment>
            <translation>Gire la cabeza a la derecha, luego a la izquierda. Mantenga los ojos cerrados. Un movimiento por golpe.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>leave.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Go on practising</source>
            <comment>leave.go_on</comment>
            <translation>Seguir practicando</translation>
        </message>
        <message>
            <source>What you have done so far is kept either way.</source>
            <comment>leave.how</comment>
            <translation>Lo que ha hecho hasta ahora se guarda en cualquier caso.</translation>
        </message>
        <message>
            <source>Is that all for today?</source>
            <comment>leave.title</comment>
            <translation>¿Es todo por hoy?</translation>
        </message>
        <message>
            <source>Corner to corner</source>
            <comment>lens.across.corner</comment>
            <translation>De esquina a esquina</translation>
        </message>
        <message>
            <source>Top to bottom</source>
            <comment>lens.across.upright</comment>
            <translation>De arriba abajo</translation>
        </message>
        <message>
            <source>Angle</source>
            <comment>lens.angle</comment>
            <translation>Ángulo</translation>
        </message>
        <message>
            <source>{deg} degrees</source>
            <comment>lens.angle.deg</comment>
            <translation>{deg} grados</translation>
        </message>
        <message>
            <source>Distance to the camera</source>
            <comment>lens.distance</comment>
            <translation>Distancia a la cámara</translation>
        </message>
        <message>
            <source>{cm} cm</source>
            <comment>lens.distance.cm</comment>
            <translation>{cm} cm</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>lens.distance.none</comment>
            <translation>sin medir</translation>
        </message>
        <message>
            <source>Done, and kept for this camera.</source>
            <comment>lens.done</comment>
            <translation>Hecho, y conservado para esta cámara.</translation>
        </message>
        <message>
            <source>Take the usual value</source>
            <comment>lens.forget</comment>
            <translation>Tomar el valor habitual</translation>
        </message>
        <message>
            <source>{views} of {wanted} views. {hint}</source>
            <comment>lens.going_on</comment>
            <translation>{views} de {wanted} vistas. {hint}</translation>
        </message>
        <message>
            <source>I see it. Hold it still.</source>
            <comment>lens.hint.sheet_moving</comment>
            <translation>La veo. Manténgala quieta.</translation>
        </message>
        <message>
            <source>Hold it up so that all four corners show.</source>
            <comment>lens.hint.sheet_none</comment>
            <translation>Levántela de modo que se vean las cuatro esquinas.</translation>
        </message>
        <message>
            <source>Good. Now tilt it another way.</source>
            <comment>lens.hint.sheet_same</comment>
            <translation>Bien. Ahora inclínela de otra manera.</translation>
        </message>
        <message>
            <source>Good. That view is taken.</source>
            <comment>lens.hint.sheet_taken</comment>
            <translation>Bien. Esa vista ya está.</translation>
        </message>
        <message>
            <source>Hold a plain bank card by its rim, about a hand's length from the camera, in front of something darker or lighter. Cover its number if you like: no picture is stored. Tilt it to every side, and hold it still each time.</source>
            <comment>lens.how.card</comment>
            <translation>Sostenga una tarjeta bancaria sencilla por el borde, más o menos a una mano de la cámara, delante de algo más oscuro o más claro. Tape el número si quiere: no se guarda ninguna imagen. Inclínela a cada lado, y cada vez manténgala quieta.</translation>
        </message>
        <message>
            <source>Hold a plain white sheet flat in front of something darker, at its edges, about an arm's length from the camera. Tilt it up, down and to both sides, and hold it still each time.</source>
            <comment>lens.how.paper</comment>
            <translation>Sostenga una hoja blanca lisa por los bordes, delante de algo más oscuro, más o menos a un brazo de la cámara. Inclínela hacia arriba, hacia abajo y a los dos lados, y cada vez manténgala quieta.</translation>
        </message>
        <message>
            <source>Take the angle from the camera's papers. Most makers state it corner to corner.</source>
            <comment>lens.how.stated</comment>
            <translation>Tome el ángulo de los papeles de la cámara. La mayoría de los fabricantes lo dan de esquina a esquina.</translation>
        </message>
        <message>
            <source>Keep this angle</source>
            <comment>lens.keep</comment>
            <translation>Conservar este ángulo</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a card, give or take {error}.</source>
            <comment>lens.known.card</comment>
            <translation>Cámara: {deg} grados de arriba abajo, medida con una tarjeta, con un margen de {error}.</translation>
        </message>
        <message>
            <source>Camera: not measured. {deg} degrees are taken, give or take {error}.</source>
            <comment>lens.known.default</comment>
            <translation>Cámara: sin medir. Se toman {deg} grados, con un margen de {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a sheet, give or take {error}.</source>
            <comment>lens.known.paper</comment>
            <translation>Cámara: {deg} grados de arriba abajo, medida con una hoja, con un margen de {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, as typed, give or take {error}.</source>
            <comment>lens.known.stated</comment>
            <translation>Cámara: {deg} grados de arriba abajo, según lo escrito, con un margen de {error}.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>lens.no_camera</comment>
            <translation>No se encontró ninguna cámara.</translation>
        </message>
        <message>
            <source>Camera on, begin</source>
            <comment>lens.start</comment>
            <translation>Cámara encendida, empezar</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>lens.stop</comment>
            <translation>Apagar la cámara</translation>
        </message>
        <message>
            <source>How wide does your camera see?</source>
            <comment>lens.title</comment>
            <translation>¿Cuánto abarca su cámara?</translation>
        </message>
        <message>
            <source>What do you measure with?</source>
            <comment>lens.with</comment>
            <translation>¿Con qué mide?</translation>
        </message>
        <message>
            <source>A bank card</source>
            <comment>lens.with.card</comment>
            <translation>Una tarjeta bancaria</translation>
        </message>
        <message>
            <source>A sheet of A4 paper</source>
            <comment>lens.with.paper</comment>
            <translation>Una hoja de papel A4</translation>
        </message>
        <message>
            <source>I know the figure</source>
            <comment>lens.with.stated</comment>
            <translation>Conozco el número</translation>
        </message>
        <message>
            <source>The camera is back. Keep counting for yourself, then press Done.</source>
            <comment>lost.again</comment>
            <translation>La cámara ha vuelto. Siga contando usted y luego pulse «Hecho».</translation>
        </message>
        <message>
            <source>The camera is back. Go on when you are ready: press Space.</source>
            <comment>lost.back</comment>
            <translation>La cámara ha vuelto. Siga cuando quiera: pulse la barra espaciadora.</translation>
        </message>
        <message>
            <source>Go on and count for yourself. Press Done when you have done them all.</source>
            <comment>lost.count</comment>
            <translation>Siga y cuente usted. Pulse «Hecho» cuando las haya hecho todas.</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>lost.figure</comment>
            <translation>en pausa</translation>
        </message>
        <message>
            <source>Take hold of something firm, or sit down.</source>
            <comment>lost.hold</comment>
            <translation>Agárrese a algo firme o siéntese.</translation>
        </message>
        <message>
            <source>This is paused.</source>
            <comment>lost.paused</comment>
            <translation>El ejercicio está en pausa.</translation>
        </message>
        <message>
            <source>The set-up waits. It begins again when the camera is back.</source>
            <comment>lost.setup</comment>
            <translation>La preparación espera. Empieza de nuevo cuando vuelva la cámara.</translation>
        </message>
        <message>
            <source>The camera is back. The set-up begins again.</source>
            <comment>lost.setup_again</comment>
            <translation>La cámara ha vuelto. La preparación empieza de nuevo.</translation>
        </message>
        <message>
            <source>Point your nose straight ahead and hold it. A sound says when to go on.</source>
            <comment>mark.ahead</comment>
            <translation>Apunte la nariz al frente y no se mueva. Un sonido dice cuándo seguir.</translation>
        </message>
        <message>
            <source>Back to the exercises</source>
            <comment>mark.back</comment>
            <translation>Volver a los ejercicios</translation>
        </message>
        <message>
            <source>Turn slowly back to straight ahead and hold it until the sound.</source>
            <comment>mark.back_ahead</comment>
            <translation>Vuelva despacio a mirar al frente y quédese así hasta el sonido.</translation>
        </message>
        <message>
            <source>Begin the check</source>
            <comment>mark.begin</comment>
            <translation>Empezar la comprobación</translation>
        </message>
        <message>
            <source>The camera was gone for a while. Begin the check again if you like.</source>
            <comment>mark.camera_lost</comment>
            <translation>La cámara no estuvo durante un rato. Empiece la comprobación otra vez si quiere.</translation>
        </message>
        <message>
            <source>From your eyes to the wall</source>
            <comment>mark.distance</comment>
            <translation>De sus ojos a la pared</translation>
        </message>
        <message>
            <source>The camera read {measured} degrees, the tape says {expected}. Both go into your results.</source>
            <comment>mark.found</comment>
            <translation>La cámara leyó {measured} grados, la cinta dice {expected}. Los dos van a sus resultados.</translation>
        </message>
        <message>
            <source>Your head was not held still long enough at the mark. Try again if you like.</source>
            <comment>mark.gave_up</comment>
            <translation>Su cabeza no estuvo quieta el tiempo suficiente en la marca. Pruebe otra vez si quiere.</translation>
        </message>
        <message>
            <source>Stick a mark on the wall in front of you, at the height of your eyes and to one side. Measure with a tape from your eyes straight to the wall, and from there along the wall to the mark. You can leave this out.</source>
            <comment>mark.how</comment>
            <translation>Pegue una marca en la pared delante de usted, a la altura de sus ojos y hacia un lado. Mida con una cinta desde sus ojos recto hasta la pared, y desde allí a lo largo de la pared hasta la marca. Puede no hacer esto.</translation>
        </message>
        <message>
            <source>As last time: wall {distance}, mark {offset}. {side}</source>
            <comment>mark.last</comment>
            <translation>Como la última vez: pared {distance}, marca {offset}. {side}</translation>
        </message>
        <message>
            <source>Turn slowly until your nose points at the mark. Hold it until the sound.</source>
            <comment>mark.mark</comment>
            <translation>Gire despacio hasta que su nariz apunte a la marca. Quédese así hasta el sonido.</translation>
        </message>
        <message>
            <source>Along the wall to the mark</source>
            <comment>mark.offset</comment>
            <translation>Por la pared hasta la marca</translation>
        </message>
        <message>
            <source>Check the measuring</source>
            <comment>mark.open</comment>
            <translation>Comprobar la medición</translation>
        </message>
        <message>
            <source>This can't be used: {why}.</source>
            <comment>mark.refused</comment>
            <translation>Esto no se puede usar: {why}.</translation>
        </message>
        <message>
            <source>Side of the mark</source>
            <comment>mark.side</comment>
            <translation>Lado de la marca</translation>
        </message>
        <message>
            <source>To my left</source>
            <comment>mark.side.left</comment>
            <translation>A mi izquierda</translation>
        </message>
        <message>
            <source>To my right</source>
            <comment>mark.side.right</comment>
            <translation>A mi derecha</translation>
        </message>
        <message>
            <source>Is your head measured rightly?</source>
            <comment>mark.title</comment>
            <translation>¿Se mide bien su cabeza?</translation>
        </message>
        <message>
            <source>First give both lengths, by the tape.</source>
            <comment>mark.unset</comment>
            <translation>Indique primero las dos medidas, tomadas con la cinta.</translation>
        </message>
        <message>
            <source>Pressed by mistake: go back</source>
            <comment>meant.back</comment>
            <translation>Lo pulsé sin querer: volver</translation>
        </message>
        <message>
            <source>If so, safety questions come now, and that is all practice for today.</source>
            <comment>meant.how</comment>
            <translation>Si es así, ahora vienen preguntas de seguridad y la práctica termina por hoy.</translation>
        </message>
        <message>
            <source>Do you feel unwell?</source>
            <comment>meant.title</comment>
            <translation>¿Se encuentra mal?</translation>
        </message>
        <message>
            <source>The window was moved, so this is paused. Go on with Space.</source>
            <comment>moved.set</comment>
            <translation>La ventana se ha movido; por eso está en pausa. Siga con Espacio.</translation>
        </message>
        <message>
            <source>The window was moved, and the target with it.</source>
            <comment>moved.setup</comment>
            <translation>La ventana se ha movido, y con ella el punto.</translation>
        </message>
        <message>
            <source>The set-up begins again in a moment.</source>
            <comment>moved.setup_again</comment>
            <translation>La preparación empieza de nuevo enseguida.</translation>
        </message>
        <message>
            <source>Turnpost could not open</source>
            <comment>not_open.title</comment>
            <translation>Turnpost no se ha podido abrir</translation>
        </message>
        <message>
            <source>Your saved sessions stay as they are. Restart the computer and try again. If this note comes back, show it to somebody who helps you with the computer. This is what went wrong:</source>
            <comment>not_open.what</comment>
            <translation>Sus sesiones guardadas siguen como estaban. Reinicie el ordenador y pruebe otra vez. Si este aviso vuelve a salir, enséñeselo a alguien que le ayude con el ordenador. Esto es lo que ha fallado:</translation>
        </message>
        <message>
            <source>You closed the question without saying how you are. Nobody has been called.</source>
            <comment>over.closed_unsaid</comment>
            <translation>Ha cerrado la pregunta sin decir cómo está. No se ha llamado a nadie.</translation>
        </message>
        <message>
            <source>You told of a fall. Your therapist should know before you go on.</source>
            <comment>over.fall</comment>
            <translation>Ha contado que se cayó. Su terapeuta debe saberlo antes de que siga.</translation>
        </message>
        <message>
            <source>Good. Sit down and rest. Nobody has been called: if you feel unwell later, call for help. Your therapist reads of the drop when you hand over your sessions.</source>
            <comment>over.fine</comment>
            <translation>Bien. Siéntese y descanse. No se ha llamado a nadie: si más tarde se encuentra mal, pida ayuda. Su terapeuta leerá que su cabeza bajó de golpe cuando usted entregue sus sesiones.</translation>
        </message>
        <message>
            <source>Nobody has answered, and nobody has been called.</source>
            <comment>over.no_answer</comment>
            <translation>Nadie ha respondido y no se ha llamado a nadie.</translation>
        </message>
        <message>
            <source>Sit or lie down where you are safe. Nobody has been called: if you are not better at once, call for help. Your therapist reads of this when you hand over your sessions.</source>
            <comment>over.not_well</comment>
            <translation>Siéntese o túmbese donde esté a salvo. No se ha llamado a nadie: si no mejora enseguida, pida ayuda. Su terapeuta leerá esto cuando usted entregue sus sesiones.</translation>
        </message>
        <message>
            <source>The number for help: {number}</source>
            <comment>over.number</comment>
            <translation>El número para pedir ayuda: {number}</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. If you fell or are hurt, get help now.</source>
            <comment>over.possible_fall</comment>
            <translation>La cámara vio una bajada repentina de su cabeza. Si se cayó o se ha hecho daño, pida ayuda ahora.</translation>
        </message>
        <message>
            <source>You felt unwell, and stopping was right. Sit down and rest. If it does not get better, get help.</source>
            <comment>over.stopped_unwell</comment>
            <translation>Se sentía mal, e hizo bien en parar. Siéntese y descanse. Si no mejora, pida ayuda.</translation>
        </message>
        <message>
            <source>Rest now. Your therapist sees how it went when you hand over your sessions.</source>
            <comment>over.symptom_rule</comment>
            <translation>Descanse ahora. Su terapeuta verá cómo ha ido cuando usted entregue sus sesiones.</translation>
        </message>
        <message>
            <source>That is all for today</source>
            <comment>over.title</comment>
            <translation>Eso es todo por hoy</translation>
        </message>
        <message>
            <source>Show what I did</source>
            <comment>over.to_summary</comment>
            <translation>Mostrar lo que hice</translation>
        </message>
        <message>
            <source>{part}: your head moved.</source>
            <comment>part.moved</comment>
            <translation>{part}: su cabeza se movió.</translation>
        </message>
        <message>
            <source>{part}: seen well.</source>
            <comment>part.seen</comment>
            <translation>{part}: se vio bien.</translation>
        </message>
        <message>
            <source>{part}: your head went less far than your exercises need.</source>
            <comment>part.short</comment>
            <translation>{part}: su cabeza llegó menos lejos de lo que necesitan sus ejercicios.</translation>
        </message>
        <message>
            <source>{part}: your face was often not seen.</source>
            <comment>part.unseen</comment>
            <translation>{part}: a menudo no se vio su cara.</translation>
        </message>
        <message>
            <source>This plan can't be used. {why}</source>
            <comment>plan.bad</comment>
            <translation>Este plan no se puede usar. {why}</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>plan.files</comment>
            <translation>Planes (*.json)</translation>
        </message>
        <message>
            <source>Your plan. Exercises: {entries}.</source>
            <comment>plan.named</comment>
            <translation>Su plan. Ejercicios: {entries}.</translation>
        </message>
        <message>
            <source>Already noted today, at {time}. Note it again only if you practised again.</source>
            <comment>plan.noted_today</comment>
            <translation>Ya está anotado hoy, a las {time}. Anótelo otra vez solo si practicó otra vez.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>plan.open</comment>
            <translation>Abrir un plan</translation>
        </message>
        <message>
            <source>I practised without the laptop</source>
            <comment>plan.report</comment>
            <translation>He practicado sin el ordenador</translation>
        </message>
        <message>
            <source>I practised once more</source>
            <comment>plan.report_again</comment>
            <translation>He practicado otra vez</translation>
        </message>
        <message>
            <source>Practise my plan</source>
            <comment>plan.start</comment>
            <translation>Practicar mi plan</translation>
        </message>
        <message>
            <source>Seated starter</source>
            <comment>plan.starter</comment>
            <translation>Comienzo en la silla</translation>
        </message>
        <message>
            <source>Practise the starter</source>
            <comment>plan.starter_begin</comment>
            <translation>Practicar el comienzo</translation>
        </message>
        <message>
            <source>The seated starter: {entries} exercises on a chair. Do it only if your therapist has told you to.</source>
            <comment>plan.starter_named</comment>
            <translation>El comienzo en la silla: {entries} ejercicios. Hágalo solo si se lo ha dicho su terapeuta.</translation>
        </message>
        <message>
            <source>Try one exercise</source>
            <comment>plan.try</comment>
            <translation>Probar un ejercicio</translation>
        </message>
        <message>
            <source>any key stops</source>
            <comment>practice.any_key</comment>
            <translation>cualquier tecla lo para</translation>
        </message>
        <message>
            <source>{low} to {high} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked</comment>
            <translation>De {low} a {high} grados a cada lado, {tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>About {about} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked_about</comment>
            <translation>Unos {about} grados a cada lado, {tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>{low} to {high}° (this screen's limit), {tempo} beats a minute</source>
            <comment>practice.asked_less</comment>
            <translation>De {low} a {high}° (límite de esta pantalla), {tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>practice.asked_tempo</comment>
            <translation>{tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>This computer is busy and measures fewer pictures. Carry on.</source>
            <comment>practice.busy</comment>
            <translation>El ordenador está ocupado y mide menos imágenes. Siga.</translation>
        </message>
        <message>
            <source>Starting in {seconds}</source>
            <comment>practice.countdown</comment>
            <translation>Empieza en {seconds}</translation>
        </message>
        <message>
            <source>The disk takes nothing just now. Carry on: you can save at the end.</source>
            <comment>practice.disk</comment>
            <translation>Ahora mismo no se puede guardar nada. Siga: podrá guardar al final.</translation>
        </message>
        <message>
            <source>I see double (D)</source>
            <comment>practice.double</comment>
            <translation>Veo doble (D)</translation>
        </message>
        <message>
            <source>I see double: stop, key D</source>
            <comment>practice.double_name</comment>
            <translation>Veo doble: parar, tecla D</translation>
        </message>
        <message>
            <source>Go on (Space)</source>
            <comment>practice.go_on</comment>
            <translation>Seguir (Espacio)</translation>
        </message>
        <message>
            <source>Not measured: {reason}</source>
            <comment>practice.not_measured</comment>
            <translation>No se mide: {reason}</translation>
        </message>
        <message>
            <source>{done} of {goal}</source>
            <comment>practice.of</comment>
            <translation>{done} de {goal}</translation>
        </message>
        <message>
            <source>Pause (Space)</source>
            <comment>practice.pause</comment>
            <translation>Pausa (Espacio)</translation>
        </message>
        <message>
            <source>Paused. Rest as long as you like.</source>
            <comment>practice.paused</comment>
            <translation>En pausa. Descanse todo lo que quiera.</translation>
        </message>
        <message>
            <source>Hide me (P)</source>
            <comment>practice.picture_hide</comment>
            <translation>Ocultarme (P)</translation>
        </message>
        <message>
            <source>Show me (P)</source>
            <comment>practice.picture_show</comment>
            <translation>Mostrarme (P)</translation>
        </message>
        <message>
            <source>Saving your session ...</source>
            <comment>practice.saving</comment>
            <translation>Guardando su sesión ...</translation>
        </message>
        <message>
            <source>Stop (Esc)</source>
            <comment>practice.stop</comment>
            <translation>Parar (Esc)</translation>
        </message>
        <message>
            <source>Stop at once, key Escape</source>
            <comment>practice.stop_name</comment>
            <translation>Parar enseguida, tecla Escape</translation>
        </message>
        <message>
            <source>No picture is stored. Nothing leaves this computer. Your results are files in your own folder, and you can delete them.</source>
            <comment>privacy</comment>
            <translation>No se guarda ninguna imagen. Nada sale de este ordenador. Sus resultados son archivos en su propia carpeta, y usted puede borrarlos.</translation>
        </message>
        <message>
            <source>Turnpost</source>
            <comment>program</comment>
            <translation>Turnpost</translation>
        </message>
        <message>
            <source>Read on ↓</source>
            <comment>read_on</comment>
            <translation>Seguir leyendo ↓</translation>
        </message>
        <message>
            <source>your eyes went farther to the side than in the set-up</source>
            <comment>reason.beyond_setup</comment>
            <translation>sus ojos fueron más hacia el lado que en la preparación</translation>
        </message>
        <message>
            <source>the picture is blurred</source>
            <comment>reason.blurred</comment>
            <translation>la imagen está borrosa</translation>
        </message>
        <message>
            <source>something covers your face, or the light on it has changed</source>
            <comment>reason.covered</comment>
            <translation>algo le tapa la cara, o su luz ha cambiado</translation>
        </message>
        <message>
            <source>your eyes are shut</source>
            <comment>reason.eyes_shut</comment>
            <translation>sus ojos están cerrados</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike</comment>
            <translation>la luz en sus ojos, o sus gafas, han cambiado desde la preparación</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike_around</comment>
            <translation>la luz en sus ojos, o sus gafas, han cambiado desde la preparación</translation>
        </message>
        <message>
            <source>pictures are missing</source>
            <comment>reason.gap</comment>
            <translation>faltan imágenes</translation>
        </message>
        <message>
            <source>your eyes seem to rest beside the target: do the set-up again</source>
            <comment>reason.gaze_beside</comment>
            <translation>sus ojos parecen quedar al lado del punto: repita la preparación</translation>
        </message>
        <message>
            <source>your shoulders and hands are not all seen</source>
            <comment>reason.no_body</comment>
            <translation>no se ven del todo sus hombros y sus manos</translation>
        </message>
        <message>
            <source>your face is not in the picture</source>
            <comment>reason.no_face</comment>
            <translation>su cara no está en la imagen</translation>
        </message>
        <message>
            <source>there was no set-up</source>
            <comment>reason.no_setup</comment>
            <translation>no hubo preparación</translation>
        </message>
        <message>
            <source>there is nothing to measure by</source>
            <comment>reason.other</comment>
            <translation>no hay con qué medir</translation>
        </message>
        <message>
            <source>the measuring is starting again</source>
            <comment>reason.restarting</comment>
            <translation>la medición está empezando de nuevo</translation>
        </message>
        <message>
            <source>no picture comes from the camera</source>
            <comment>reason.silent</comment>
            <translation>no llega imagen de la cámara</translation>
        </message>
        <message>
            <source>it is too dark</source>
            <comment>reason.too_dark</comment>
            <translation>está demasiado oscuro</translation>
        </message>
        <message>
            <source>you are too far away</source>
            <comment>reason.too_far</comment>
            <translation>está demasiado lejos</translation>
        </message>
        <message>
            <source>your head is turned too far</source>
            <comment>reason.turned_too_far</comment>
            <translation>su cabeza está demasiado girada</translation>
        </message>
        <message>
            <source>your glasses change as you nod</source>
            <comment>reason.varifocal</comment>
            <translation>sus gafas cambian cuando mueve la cabeza arriba y abajo</translation>
        </message>
        <message>
            <source>Recordings that broke off and are damaged at the beginning: {n}. Whose they are can't be told. They can be saved without a name, but do not count for the plan. Repetitions in all: {count}.</source>
            <comment>recover.damaged</comment>
            <translation>Registros que se interrumpieron y tienen el principio dañado: {n}. No se puede saber de quién son. Se pueden guardar sin nombre, pero no cuentan para el plan. Repeticiones en total: {count}.</translation>
        </message>
        <message>
            <source>A recording of {when} broke off, and its beginning is damaged: whose it is can't be told. It can be saved without a name, but does not count for the plan. Repetitions: {count}.</source>
            <comment>recover.damaged.one</comment>
            <translation>Un registro del {when} se interrumpió y tiene el principio dañado: no se puede saber de quién es. Se puede guardar sin nombre, pero no cuenta para el plan. Repeticiones: {count}.</translation>
        </message>
        <message>
            <source>Some of it could not be saved: {why}. It stays where it is, and Turnpost asks again next time.</source>
            <comment>recover.failed</comment>
            <translation>Una parte no se pudo guardar: {why}. Se queda donde está, y Turnpost volverá a preguntar la próxima vez.</translation>
        </message>
        <message>
            <source>Ask me next time</source>
            <comment>recover.later</comment>
            <translation>Preguntar la próxima vez</translation>
        </message>
        <message>
            <source>{n} of your sessions broke off before their end. What you did until then is kept. Repetitions in all: {count}.</source>
            <comment>recover.many</comment>
            <translation>{n} de sus sesiones se interrumpieron antes del final. Lo que hizo hasta entonces se conserva. Repeticiones en total: {count}.</translation>
        </message>
        <message>
            <source>A newer version of Turnpost has recorded something here that broke off. It stays as it is. Open the newer version to save it.</source>
            <comment>recover.newer</comment>
            <translation>Una versión más nueva de Turnpost registró aquí algo que se interrumpió. Se queda como está. Abra la versión más nueva para guardarlo.</translation>
        </message>
        <message>
            <source>Your session of {when} broke off before its end. What you did until then is kept. Repetitions: {count}.</source>
            <comment>recover.one</comment>
            <translation>Su sesión del {when} se interrumpió antes del final. Lo que hizo hasta entonces se conserva. Repeticiones: {count}.</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>recover.read</comment>
            <translation>Bien</translation>
        </message>
        <message>
            <source>Save what I did</source>
            <comment>recover.save</comment>
            <translation>Guardar lo que hice</translation>
        </message>
        <message>
            <source>Saved, and marked as broken off. It is in {folder}</source>
            <comment>recover.saved</comment>
            <translation>Guardado y marcado como interrumpido. Está en {folder}</translation>
        </message>
        <message>
            <source>Saving what you did ...</source>
            <comment>recover.saving</comment>
            <translation>Guardando lo que hizo ...</translation>
        </message>
        <message>
            <source>Broken off, and too damaged at the beginning to tell whether it is yours or from trying the sample: {n}. It can be saved, but does not count for the plan. Repetitions in it: {count}.</source>
            <comment>recover.unsure</comment>
            <translation>Interrumpido, y con el principio tan dañado que no se puede saber si es suyo o de probar el ejemplo: {n}. Se puede guardar, pero no cuenta para el plan. Repeticiones que contiene: {count}.</translation>
        </message>
        <message>
            <source>You feel dizzy today, so you stay on your chair.</source>
            <comment>refused.high_start</comment>
            <translation>Hoy siente mareo, así que se queda en la silla.</translation>
        </message>
        <message>
            <source>This one comes later.</source>
            <comment>refused.locked</comment>
            <translation>Este viene más adelante.</translation>
        </message>
        <message>
            <source>The screen can show this one only while you sit in front of it.</source>
            <comment>refused.moving_target</comment>
            <translation>La pantalla solo puede mostrar este mientras está en la silla delante de ella.</translation>
        </message>
        <message>
            <source>You left this one out, as no camera could be used.</source>
            <comment>refused.no_camera</comment>
            <translation>Dejó este sin hacer, porque ninguna cámara servía.</translation>
        </message>
        <message>
            <source>A helper has to stand next to you.</source>
            <comment>refused.no_helper</comment>
            <translation>Alguien que le ayude tiene que estar a su lado.</translation>
        </message>
        <message>
            <source>There are no notes on the wall for it.</source>
            <comment>refused.no_marks</comment>
            <translation>No hay notas en la pared para este.</translation>
        </message>
        <message>
            <source>There is no practice today.</source>
            <comment>refused.no_session</comment>
            <translation>Hoy no hay práctica.</translation>
        </message>
        <message>
            <source>First say how dizzy you are now.</source>
            <comment>refused.no_start_score</comment>
            <translation>Diga primero cuánto mareo siente ahora.</translation>
        </message>
        <message>
            <source>You need to hear the voice for this, or a helper who reads to you. Turn on the sound.</source>
            <comment>refused.no_voice</comment>
            <translation>Para esto necesita oír la voz, o a alguien que le lea. Encienda el sonido.</translation>
        </message>
        <message>
            <source>Your therapist has not opened this one yet.</source>
            <comment>refused.not_cleared</comment>
            <translation>Su terapeuta todavía no ha abierto este.</translation>
        </message>
        <message>
            <source>You left this one out.</source>
            <comment>refused.not_in_place</comment>
            <translation>Dejó este sin hacer.</translation>
        </message>
        <message>
            <source>You saw two here today. That is enough of it for one day.</source>
            <comment>refused.saw_double</comment>
            <translation>Hoy ya vio dos en este. Por hoy es suficiente.</translation>
        </message>
        <message>
            <source>You stopped before this one.</source>
            <comment>refused.session_ended</comment>
            <translation>Paró antes de llegar a este.</translation>
        </message>
        <message>
            <source>The target has too little room to move here. It needs a larger window, or you a little closer.</source>
            <comment>refused.small_screen</comment>
            <translation>Aquí el punto tiene muy poco sitio para moverse. Hace falta una ventana más grande, o que usted se acerque un poco.</translation>
        </message>
        <message>
            <source>You have asked for a screen on which nothing moves.</source>
            <comment>refused.still_screen</comment>
            <translation>Ha pedido una pantalla en la que nada se mueva.</translation>
        </message>
        <message>
            <source>First say that you have something or someone to hold on to.</source>
            <comment>refused.support_not_confirmed</comment>
            <translation>Diga primero que tiene algo o a alguien a quien agarrarse.</translation>
        </message>
        <message>
            <source>Table, a row a session ({ending})</source>
            <comment>report.csv</comment>
            <translation>Tabla, una fila por sesión ({ending})</translation>
        </message>
        <message>
            <source>Written, of {count} sessions: {path}</source>
            <comment>report.done</comment>
            <translation>Escrito, de {count} sesiones: {path}</translation>
        </message>
        <message>
            <source>No report: {why}</source>
            <comment>report.failed</comment>
            <translation>Sin informe: {why}</translation>
        </message>
        <message>
            <source>For a record system, FHIR R4 ({ending})</source>
            <comment>report.fhir</comment>
            <translation>Para un sistema de historias, FHIR R4 ({ending})</translation>
        </message>
        <message>
            <source>Report to read on a screen, HTML ({ending})</source>
            <comment>report.html</comment>
            <translation>Informe para leer en pantalla, HTML ({ending})</translation>
        </message>
        <message>
            <source>Left out, because they broke off and were not saved: {count}.</source>
            <comment>report.left_out</comment>
            <translation>Sin incluir, porque se interrumpieron y no se guardaron: {count}.</translation>
        </message>
        <message>
            <source>Make a report</source>
            <comment>report.make</comment>
            <translation>Hacer un informe</translation>
        </message>
        <message>
            <source>no session is shown that can be reported</source>
            <comment>report.nothing</comment>
            <translation>no se muestra ninguna sesión de la que se pueda informar</translation>
        </message>
        <message>
            <source>{path} holds what was measured or written, or has the name of a session's file; name another file for the report</source>
            <comment>report.over</comment>
            <translation>{path} contiene algo medido o escrito, o lleva el nombre de un archivo de una sesión; indique otro archivo para el informe</translation>
        </message>
        <message>
            <source>Report to file, a page a session, PDF ({ending})</source>
            <comment>report.pdf</comment>
            <translation>Informe para archivar, una página por sesión, PDF ({ending})</translation>
        </message>
        <message>
            <source>Report with all figures, PDF ({ending})</source>
            <comment>report.pdf_details</comment>
            <translation>Informe con todos los valores, PDF ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a repetition ({ending})</source>
            <comment>report.repetitions_csv</comment>
            <translation>Tabla, una fila por repetición ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a questionnaire score ({ending})</source>
            <comment>report.scores_csv</comment>
            <translation>Tabla, una fila por puntuación de cuestionario ({ending})</translation>
        </message>
        <message>
            <source>{path} is there already; choose it with its ending, or name another file</source>
            <comment>report.there</comment>
            <translation>{path} ya existe; elíjalo con su terminación o nombre otro archivo</translation>
        </message>
        <message>
            <source>Table of practice and trends ({ending})</source>
            <comment>report.trends_csv</comment>
            <translation>Tabla de prácticas y tendencias ({ending})</translation>
        </message>
        <message>
            <source>Making the report ...</source>
            <comment>report.working</comment>
            <translation>Haciendo el informe ...</translation>
        </message>
        <message>
            <source>Ask your therapist, on the phone or in a call, to read out the words of your plan. They must be:</source>
            <comment>same.ask</comment>
            <translation>Pida a su terapeuta, por teléfono o en una llamada, que le lea las palabras de su plan. Deben ser estas:</translation>
        </message>
        <message>
            <source>Compare later</source>
            <comment>same.later</comment>
            <translation>Comparar más tarde</translation>
        </message>
        <message>
            <source>What you hand over later will be locked: only your clinic can open it.</source>
            <comment>same.locked</comment>
            <translation>Lo que entregue más tarde estará cerrado: solo su clínica puede abrirlo.</translation>
        </message>
        <message>
            <source>A word is different</source>
            <comment>same.no</comment>
            <translation>Una palabra es distinta</translation>
        </message>
        <message>
            <source>Compare the words</source>
            <comment>same.open</comment>
            <translation>Comparar las palabras</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. What you hand over later can be read by whoever gets hold of the file.</source>
            <comment>same.plain</comment>
            <translation>Su clínica ha elegido archivos sin cierre. Lo que entregue más tarde lo puede leer quien consiga el archivo.</translation>
        </message>
        <message>
            <source>The words did not match, so this plan is put away. Ask your therapist to give you the plan again.</source>
            <comment>same.refused</comment>
            <translation>Las palabras no coincidieron, así que este plan queda apartado. Pida a su terapeuta que le dé el plan otra vez.</translation>
        </message>
        <message>
            <source>Is it your therapist's plan?</source>
            <comment>same.title</comment>
            <translation>¿Es el plan de su terapeuta?</translation>
        </message>
        <message>
            <source>One other word, and somebody may have changed the plan on its way. Then do not use it.</source>
            <comment>same.why</comment>
            <translation>Si una sola palabra es otra, puede que alguien haya cambiado el plan por el camino. Entonces no lo use.</translation>
        </message>
        <message>
            <source>{number}. {word}</source>
            <comment>same.word</comment>
            <translation>{number}. {word}</translation>
        </message>
        <message>
            <source>All words are the same</source>
            <comment>same.yes</comment>
            <translation>Todas las palabras son iguales</translation>
        </message>
        <message>
            <source>Begin now.</source>
            <comment>say.begin</comment>
            <translation>Empiece ahora.</translation>
        </message>
        <message>
            <source>Come to the screen once you feel steady.</source>
            <comment>say.come</comment>
            <translation>Venga a la pantalla cuando se sienta estable.</translation>
        </message>
        <message>
            <source>Stop here. Move your finger back out.</source>
            <comment>say.double</comment>
            <translation>Pare aquí. Vuelva a alejar el dedo.</translation>
        </message>
        <message>
            <source>And stop. This one is done.</source>
            <comment>say.end</comment>
            <translation>Y pare. Este está hecho.</translation>
        </message>
        <message>
            <source>Nobody has been called. If you are hurt, call for help.</source>
            <comment>say.fall</comment>
            <translation>No se ha llamado a nadie. Si se ha hecho daño, pida ayuda.</translation>
        </message>
        <message>
            <source>Half the time is over.</source>
            <comment>say.half</comment>
            <translation>Ha pasado la mitad del tiempo.</translation>
        </message>
        <message>
            <source>Open your eyes.</source>
            <comment>say.open_eyes</comment>
            <translation>Abra los ojos.</translation>
        </message>
        <message>
            <source>That is half. Now with the other arm.</source>
            <comment>say.other_arm</comment>
            <translation>Va por la mitad. Ahora con el otro brazo.</translation>
        </message>
        <message>
            <source>I can't see you. Take your time. When you are steady, sit down on your chair, so that I see you again.</source>
            <comment>say.out_of_sight</comment>
            <translation>No le veo. Tómese su tiempo. Cuando se sienta firme, siéntese en su silla para que pueda verle de nuevo.</translation>
        </message>
        <message>
            <source>Now rest for a while.</source>
            <comment>say.rest</comment>
            <translation>Ahora descanse un rato.</translation>
        </message>
        <message>
            <source>Shut your eyes.</source>
            <comment>say.shut</comment>
            <translation>Cierre los ojos.</translation>
        </message>
        <message>
            <source>Sit down if you can.</source>
            <comment>say.sit</comment>
            <translation>Siéntese si puede.</translation>
        </message>
        <message>
            <source>It begins in {seconds} seconds.</source>
            <comment>say.soon</comment>
            <translation>Empieza en {seconds} segundos.</translation>
        </message>
        <message>
            <source>Stand firm.</source>
            <comment>say.stand_firm</comment>
            <translation>Póngase firme.</translation>
        </message>
        <message>
            <source>Stopped.</source>
            <comment>say.stopped</comment>
            <translation>Parado.</translation>
        </message>
        <message>
            <source>This is how I speak to you while you practise.</source>
            <comment>say.test</comment>
            <translation>Así le hablo mientras practica.</translation>
        </message>
        <message>
            <source>Only two more.</source>
            <comment>say.two_left</comment>
            <translation>Solo dos más.</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>score.dizziness</comment>
            <translation>¿Cuánto mareo siente ahora?</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>score.done</comment>
            <translation>Seguir</translation>
        </message>
        <message>
            <source>Press a number, or use the arrow keys. For ten press 1, then 0.</source>
            <comment>score.how</comment>
            <translation>Pulse un número o use las flechas. Para diez pulse 1 y luego 0.</translation>
        </message>
        <message>
            <source>0: not at all</source>
            <comment>score.least</comment>
            <translation>0: nada</translation>
        </message>
        <message>
            <source>I do not remember</source>
            <comment>score.leave_out</comment>
            <translation>No me acuerdo</translation>
        </message>
        <message>
            <source>10: it can't get worse</source>
            <comment>score.most</comment>
            <translation>10: no puede ser peor</translation>
        </message>
        <message>
            <source>How sick do you feel now?</source>
            <comment>score.nausea</comment>
            <translation>¿Cuántas náuseas siente ahora?</translation>
        </message>
        <message>
            <source>And how dizzy on the morning after?</source>
            <comment>score.next_morning</comment>
            <translation>¿Y cuánto mareo tuvo a la mañana siguiente?</translation>
        </message>
        <message>
            <source>After last time: how dizzy were you for the rest of that day?</source>
            <comment>score.rest_of_day</comment>
            <translation>Después de la última vez: ¿cuánto mareo tuvo el resto de ese día?</translation>
        </message>
        <message>
            <source>How unsteady do you feel now?</source>
            <comment>score.unsteadiness</comment>
            <translation>¿Cuánta inestabilidad siente ahora?</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>score.value</comment>
            <translation>{value} de 10</translation>
        </message>
        <message>
            <source>Add the score</source>
            <comment>scores.add</comment>
            <translation>Añadir la puntuación</translation>
        </message>
        <message>
            <source>Kept: {name}, {score} ({least} to {most}), {day}.</source>
            <comment>scores.added</comment>
            <translation>Guardado: {name}, {score} (de {least} a {most}), {day}.</translation>
        </message>
        <message>
            <source>That day is still to come.</source>
            <comment>scores.ahead</comment>
            <translation>Ese día aún no ha llegado.</translation>
        </message>
        <message>
            <source>Last against first</source>
            <comment>scores.col.change</comment>
            <translation>Última frente a la primera</translation>
        </message>
        <message>
            <source>First</source>
            <comment>scores.col.first</comment>
            <translation>Primera</translation>
        </message>
        <message>
            <source>Last</source>
            <comment>scores.col.last</comment>
            <translation>Última</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.col.name</comment>
            <translation>Cuestionario</translation>
        </message>
        <message>
            <source>All scores</source>
            <comment>scores.col.trend</comment>
            <translation>Todas las puntuaciones</translation>
        </message>
        <message>
            <source>{name} ({least} to {most})</source>
            <comment>scores.course</comment>
            <translation>{name} ({least} a {most})</translation>
        </message>
        <message>
            <source>Filled in on</source>
            <comment>scores.day</comment>
            <translation>Rellenado el</translation>
        </message>
        <message>
            <source>The least possible must be below the most.</source>
            <comment>scores.ends</comment>
            <translation>El mínimo posible debe ser menor que el máximo.</translation>
        </message>
        <message>
            <source>Not kept: {why}</source>
            <comment>scores.failed</comment>
            <translation>No se guardó: {why}</translation>
        </message>
        <message>
            <source>{by} higher</source>
            <comment>scores.higher</comment>
            <translation>{by} más</translation>
        </message>
        <message>
            <source>Only the score is kept, not the questions. How much a score varies by itself, and which end is the better one, is not known here.</source>
            <comment>scores.how</comment>
            <translation>Solo se guarda la puntuación, no las preguntas. Aquí no se sabe cuánto varía una puntuación por sí sola ni cuál es el mejor extremo.</translation>
        </message>
        <message>
            <source>Least possible</source>
            <comment>scores.least</comment>
            <translation>Mínimo posible</translation>
        </message>
        <message>
            <source>{by} lower</source>
            <comment>scores.lower</comment>
            <translation>{by} menos</translation>
        </message>
        <message>
            <source>Most possible</source>
            <comment>scores.most</comment>
            <translation>Máximo posible</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.name</comment>
            <translation>Cuestionario</translation>
        </message>
        <message>
            <source>Type the name of the questionnaire.</source>
            <comment>scores.no_name</comment>
            <translation>Escriba el nombre del cuestionario.</translation>
        </message>
        <message>
            <source>“{field}” needs a number between -{most} and {most}.</source>
            <comment>scores.no_number</comment>
            <translation>«{field}» necesita un número entre -{most} y {most}.</translation>
        </message>
        <message>
            <source>These sessions name nobody: a score would be nobody's.</source>
            <comment>scores.no_person</comment>
            <translation>Estas sesiones no nombran a nadie: una puntuación no sería de nadie.</translation>
        </message>
        <message>
            <source>There is no score of yours to take back.</source>
            <comment>scores.no_undo</comment>
            <translation>No hay ninguna puntuación suya que deshacer.</translation>
        </message>
        <message>
            <source>Entered some time ago and still there: {name}, {score}, {day}.</source>
            <comment>scores.older</comment>
            <translation>Se guardó hace tiempo y sigue ahí: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>{score}, {day}</source>
            <comment>scores.on</comment>
            <translation>{score}, {day}</translation>
        </message>
        <message>
            <source>only one score</source>
            <comment>scores.only</comment>
            <translation>una sola puntuación</translation>
        </message>
        <message>
            <source>The score must lie between {least} and {most}.</source>
            <comment>scores.outside</comment>
            <translation>La puntuación debe estar entre {least} y {most}.</translation>
        </message>
        <message>
            <source>the same</source>
            <comment>scores.same</comment>
            <translation>igual</translation>
        </message>
        <message>
            <source>Score</source>
            <comment>scores.score</comment>
            <translation>Puntuación</translation>
        </message>
        <message>
            <source>Take this old score back</source>
            <comment>scores.sure</comment>
            <translation>Deshacer esta puntuación antigua</translation>
        </message>
        <message>
            <source>Questionnaires</source>
            <comment>scores.tab</comment>
            <translation>Cuestionarios</translation>
        </message>
        <message>
            <source>Undo my last score</source>
            <comment>scores.undo</comment>
            <translation>Deshacer mi última puntuación</translation>
        </message>
        <message>
            <source>Taken back: {name}, {score}, {day}.</source>
            <comment>scores.undone</comment>
            <translation>Deshecho: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>This older score may be of another computer with the same login: {name}, {score}, {day}.</source>
            <comment>scores.unsigned</comment>
            <translation>Esta puntuación más antigua puede ser de otro ordenador con el mismo usuario: {name}, {score}, {day}.</translation>
        </message>
        <message>
            <source>It fits</source>
            <comment>screen.fits</comment>
            <translation>Coincide</translation>
        </message>
        <message>
            <source>Forget the measure</source>
            <comment>screen.forget</comment>
            <translation>Olvidar la medida</translation>
        </message>
        <message>
            <source>Put the card's upper left corner on the corner drawn here. Fit the size with the arrow keys.</source>
            <comment>screen.how</comment>
            <translation>Ponga la esquina superior izquierda de la tarjeta en la dibujada. Tamaño: flechas.</translation>
        </message>
        <message>
            <source>Screen: not measured, and it does not say. {cm} cm are taken for its width.</source>
            <comment>screen.known.assumed</comment>
            <translation>Pantalla: sin medir, y ella no lo dice. Se toman {cm} cm de ancho.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, measured with a card.</source>
            <comment>screen.known.card</comment>
            <translation>Pantalla: {cm} cm de ancho, medida con una tarjeta.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, as the screen says of itself.</source>
            <comment>screen.known.screen</comment>
            <translation>Pantalla: {cm} cm de ancho, según dice ella misma.</translation>
        </message>
        <message>
            <source>Larger</source>
            <comment>screen.larger</comment>
            <translation>Más grande</translation>
        </message>
        <message>
            <source>Outline of a card</source>
            <comment>screen.outline</comment>
            <translation>Contorno de una tarjeta</translation>
        </message>
        <message>
            <source>Smaller</source>
            <comment>screen.smaller</comment>
            <translation>Más pequeño</translation>
        </message>
        <message>
            <source>Hold a bank card against the screen</source>
            <comment>screen.title</comment>
            <translation>Ponga una tarjeta bancaria contra la pantalla</translation>
        </message>
        <message>
            <source>{mm} pixels wide</source>
            <comment>screen.width</comment>
            <translation>{mm} píxeles de ancho</translation>
        </message>
        <message>
            <source>You sit about {cm} cm from the screen, give or take {error} cm.</source>
            <comment>seat.about</comment>
            <translation>Está sentado a unos {cm} cm de la pantalla, {error} cm más o menos.</translation>
        </message>
        <message>
            <source>Go on as I sit</source>
            <comment>seat.anyway</comment>
            <translation>Seguir tal como estoy</translation>
        </message>
        <message>
            <source>Too near for this exercise. Move back by about {cm} cm.</source>
            <comment>seat.back</comment>
            <translation>Demasiado cerca para este ejercicio. Échese atrás unos {cm} cm.</translation>
        </message>
        <message>
            <source>A little near for this exercise. Move back by about the width of your hand.</source>
            <comment>seat.back.hand</comment>
            <translation>Un poco cerca para este ejercicio. Échese atrás más o menos el ancho de una mano.</translation>
        </message>
        <message>
            <source>Too far for this exercise. Come closer by about {cm} cm.</source>
            <comment>seat.closer</comment>
            <translation>Demasiado lejos para este ejercicio. Acérquese unos {cm} cm.</translation>
        </message>
        <message>
            <source>A little far for this exercise. Come closer by about the width of your hand.</source>
            <comment>seat.closer.hand</comment>
            <translation>Un poco lejos para este ejercicio. Acérquese más o menos el ancho de una mano.</translation>
        </message>
        <message>
            <source>Done at about {cm} cm from the screen; {asked} cm were asked for.</source>
            <comment>seat.done</comment>
            <translation>Hecho a unos {cm} cm de la pantalla; se pedían {asked} cm.</translation>
        </message>
        <message>
            <source>This is only a rough figure.</source>
            <comment>seat.rough</comment>
            <translation>Es solo una cifra aproximada.</translation>
        </message>
        <message>
            <source>If you can't move, go on as you sit.</source>
            <comment>seat.told</comment>
            <translation>Si no puede moverse, siga tal como está sentado.</translation>
        </message>
        <message>
            <source>Close this note</source>
            <comment>second.close</comment>
            <translation>Cerrar este aviso</translation>
        </message>
        <message>
            <source>Turnpost is open already</source>
            <comment>second.title</comment>
            <translation>Turnpost ya está abierto</translation>
        </message>
        <message>
            <source>Look for its other window and go on there. Nothing is lost.</source>
            <comment>second.what</comment>
            <translation>Busque su otra ventana y siga allí. No se ha perdido nada.</translation>
        </message>
        <message>
            <source>Repeat the set-up</source>
            <comment>setup.again</comment>
            <translation>Repetir la preparación</translation>
        </message>
        <message>
            <source>The set-up did not work.</source>
            <comment>setup.failed</comment>
            <translation>La preparación no ha salido bien.</translation>
        </message>
        <message>
            <source>far enough</source>
            <comment>setup.far_enough</comment>
            <translation>ya basta</translation>
        </message>
        <message>
            <source>Thank you. Working out your measures ...</source>
            <comment>setup.fitting</comment>
            <translation>Gracias. Calculando sus medidas ...</translation>
        </message>
        <message>
            <source>This takes a few seconds. Rest your eyes.</source>
            <comment>setup.fitting_wait</comment>
            <translation>Tarda unos segundos. Descanse los ojos.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes. Keep your head still.</source>
            <comment>setup.look</comment>
            <translation>Siga el punto con los ojos. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Look at the left note on the wall. Keep your head still.</source>
            <comment>setup.look.left</comment>
            <translation>Mire la nota izquierda de la pared. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Look at the lower note on the wall. Keep your head still.</source>
            <comment>setup.look.lower</comment>
            <translation>Mire la nota de abajo en la pared. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Look at the note on the wall. Keep your head still.</source>
            <comment>setup.look.note</comment>
            <translation>Mire la nota de la pared. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Look at the right note on the wall. Keep your head still.</source>
            <comment>setup.look.right</comment>
            <translation>Mire la nota derecha de la pared. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Look at the upper note on the wall. Keep your head still.</source>
            <comment>setup.look.upper</comment>
            <translation>Mire la nota de arriba en la pared. Mantenga la cabeza quieta.</translation>
        </message>
        <message>
            <source>Nod slowly up, then down. Keep your eyes on the target.</source>
            <comment>setup.nod_slowly</comment>
            <translation>Mueva la cabeza despacio hacia arriba, luego hacia abajo. Mantenga los ojos en el punto.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.nod_slowly.back</comment>
            <translation>de vuelta al centro</translation>
        </message>
        <message>
            <source>slowly down</source>
            <comment>setup.nod_slowly.minus</comment>
            <translation>despacio hacia abajo</translation>
        </message>
        <message>
            <source>slowly up</source>
            <comment>setup.nod_slowly.plus</comment>
            <translation>despacio hacia arriba</translation>
        </message>
        <message>
            <source>Set-up, part {part} of {parts}</source>
            <comment>setup.progress</comment>
            <translation>Preparación, parte {part} de {parts}</translation>
        </message>
        <message>
            <source>Getting ready ...</source>
            <comment>setup.ready</comment>
            <translation>Preparando ...</translation>
        </message>
        <message>
            <source>Keep still and look at the target.</source>
            <comment>setup.rest</comment>
            <translation>No se mueva y mire el punto.</translation>
        </message>
        <message>
            <source>Set-up done.</source>
            <comment>setup.shortened</comment>
            <translation>Preparación terminada.</translation>
        </message>
        <message>
            <source>Next: {what}</source>
            <comment>setup.soon</comment>
            <translation>Ahora viene: {what}</translation>
        </message>
        <message>
            <source>Stop</source>
            <comment>setup.stop</comment>
            <translation>Parar</translation>
        </message>
        <message>
            <source>Set-up</source>
            <comment>setup.title</comment>
            <translation>Preparación</translation>
        </message>
        <message>
            <source>The set-up is done. This could be better:</source>
            <comment>setup.told</comment>
            <translation>La preparación está hecha. Esto podría ser mejor:</translation>
        </message>
        <message>
            <source>Turn your head slowly right, then left. Keep your eyes on the target.</source>
            <comment>setup.turn_slowly</comment>
            <translation>Gire la cabeza despacio a la derecha, luego a la izquierda. Mantenga los ojos en el punto.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.turn_slowly.back</comment>
            <translation>de vuelta al centro</translation>
        </message>
        <message>
            <source>slowly to the left</source>
            <comment>setup.turn_slowly.minus</comment>
            <translation>despacio a la izquierda</translation>
        </message>
        <message>
            <source>slowly to the right</source>
            <comment>setup.turn_slowly.plus</comment>
            <translation>despacio a la derecha</translation>
        </message>
        <message>
            <source>After the last set: {scores}</source>
            <comment>share.after</comment>
            <translation>Después de la última serie: {scores}</translation>
        </message>
        <message>
            <source>asked: {what}</source>
            <comment>share.asked</comment>
            <translation>pedido: {what}</translation>
        </message>
        <message>
            <source>Before: {scores}</source>
            <comment>share.before</comment>
            <translation>Antes: {scores}</translation>
        </message>
        <message>
            <source>Call</source>
            <comment>share.call</comment>
            <translation>Llamada</translation>
        </message>
        <message>
            <source>Record this call only if everyone in it has agreed.</source>
            <comment>share.consent</comment>
            <translation>Grabe esta llamada solo si todas las personas que están en ella han dicho que sí.</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>share.degrees</comment>
            <translation>{value} grados</translation>
        </message>
        <message>
            <source>done</source>
            <comment>share.done</comment>
            <translation>hechas</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>share.down</comment>
            <translation>Abajo</translation>
        </message>
        <message>
            <source>In the call only this window is seen, not you. To stand you need a helper in the room, or a second device that shows you.</source>
            <comment>share.helper</comment>
            <translation>En la llamada solo se ve esta ventana, no a usted. Para estar de pie necesita a alguien que le ayude en la habitación, o un segundo aparato que le muestre.</translation>
        </message>
        <message>
            <source>No picture while you share</source>
            <comment>share.hidden</comment>
            <translation>Sin imagen mientras comparte</translation>
        </message>
        <message>
            <source>Hide outline (P)</source>
            <comment>share.hide</comment>
            <translation>Ocultar contorno (P)</translation>
        </message>
        <message>
            <source>Left</source>
            <comment>share.left</comment>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>share.left_s</comment>
            <translation>quedan {time}</translation>
        </message>
        <message>
            <source>Figures for the call</source>
            <comment>share.name</comment>
            <translation>Números para la llamada</translation>
        </message>
        <message>
            <source>Symptoms: not asked yet</source>
            <comment>share.no_scores</comment>
            <translation>Síntomas: aún sin preguntar</translation>
        </message>
        <message>
            <source>Not saved.</source>
            <comment>share.not_saved</comment>
            <translation>No guardado.</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>share.of</comment>
            <translation>de {goal}</translation>
        </message>
        <message>
            <source>Layout for a video call (F4)</source>
            <comment>share.open</comment>
            <translation>Vista para una videollamada (F4)</translation>
        </message>
        <message>
            <source>Outline of your head, as in a mirror</source>
            <comment>share.outline</comment>
            <translation>Contorno de su cabeza, como en un espejo</translation>
        </message>
        <message>
            <source>This plan can't be used. End the sharing layout to read why.</source>
            <comment>share.plan_bad</comment>
            <translation>Este plan no se puede usar. Termine la vista para la llamada para leer por qué.</translation>
        </message>
        <message>
            <source>Right</source>
            <comment>share.right</comment>
            <translation>Derecha</translation>
        </message>
        <message>
            <source>Saved.</source>
            <comment>share.saved</comment>
            <translation>Guardado.</translation>
        </message>
        <message>
            <source>dizziness {value}</source>
            <comment>share.score.dizziness</comment>
            <translation>mareo {value}</translation>
        </message>
        <message>
            <source>nausea {value}</source>
            <comment>share.score.nausea</comment>
            <translation>náuseas {value}</translation>
        </message>
        <message>
            <source>unsteadiness {value}</source>
            <comment>share.score.unsteadiness</comment>
            <translation>inestabilidad {value}</translation>
        </message>
        <message>
            <source>Show outline (P)</source>
            <comment>share.show</comment>
            <translation>Mostrar contorno (P)</translation>
        </message>
        <message>
            <source>{value} a second</source>
            <comment>share.speed</comment>
            <translation>{value} por segundo</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>share.tempo</comment>
            <translation>{tempo} golpes por minuto</translation>
        </message>
        <message>
            <source>now: {tempo} a minute</source>
            <comment>share.tempo_now</comment>
            <translation>ahora: {tempo} por minuto</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>share.unseen</comment>
            <translation>no se ve</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>share.up</comment>
            <translation>Arriba</translation>
        </message>
        <message>
            <source>Practise {n} times a day</source>
            <comment>sheet.bouts</comment>
            <translation>Practique {n} veces al día</translation>
        </message>
        <message>
            <source>Practise once a day</source>
            <comment>sheet.bouts.one</comment>
            <translation>Practique una vez al día</translation>
        </message>
        <message>
            <source>Do not practise, and call your therapist first, if:</source>
            <comment>sheet.call</comment>
            <translation>No practique, y llame antes a su terapeuta, si:</translation>
        </message>
        <message>
            <source>on {n} days a week</source>
            <comment>sheet.days</comment>
            <translation>{n} días a la semana</translation>
        </message>
        <message>
            <source>every day</source>
            <comment>sheet.days.all</comment>
            <translation>todos los días</translation>
        </message>
        <message>
            <source>Call {number} at once if this is new:</source>
            <comment>sheet.emergency</comment>
            <translation>Llame enseguida al {number} si algo de esto es nuevo:</translation>
        </message>
        <message>
            <source>Call for emergency help at once if this is new:</source>
            <comment>sheet.emergency.no_number</comment>
            <translation>Llame enseguida a emergencias si algo de esto es nuevo:</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>sheet.exercises</comment>
            <translation>Ejercicios</translation>
        </message>
        <message>
            <source>Plan {plan}, week {week}</source>
            <comment>sheet.foot</comment>
            <translation>Plan {plan}, semana {week}</translation>
        </message>
        <message>
            <source>For {person}, week {week}</source>
            <comment>sheet.for</comment>
            <translation>Para {person}, semana {week}</translation>
        </message>
        <message>
            <source>Week {week}</source>
            <comment>sheet.for_nobody</comment>
            <translation>Semana {week}</translation>
        </message>
        <message>
            <source>en</source>
            <comment>sheet.language</comment>
            <translation>es</translation>
        </message>
        <message>
            <source>Later, when your therapist says so:</source>
            <comment>sheet.later</comment>
            <translation>Más adelante, cuando lo diga su terapeuta:</translation>
        </message>
        <message>
            <source>Your neck: turn or tilt your head {turn} degrees at most to each side. Nod {nod} degrees at most up and down.</source>
            <comment>sheet.neck</comment>
            <translation>Su cuello: gire o incline la cabeza {turn} grados como mucho a cada lado. Suba y baje la cabeza {nod} grados como mucho.</translation>
        </message>
        <message>
            <source>{bouts}, {days}. {rest}</source>
            <comment>sheet.often</comment>
            <translation>{bouts}, {days}. {rest}</translation>
        </message>
        <message>
            <source>at your own pace</source>
            <comment>sheet.own_pace</comment>
            <translation>a su propio paso</translation>
        </message>
        <message>
            <source>Page {number} of {pages}</source>
            <comment>sheet.page</comment>
            <translation>Página {number} de {pages}</translation>
        </message>
        <message>
            <source>Drawing: {name}</source>
            <comment>sheet.picture</comment>
            <translation>Dibujo: {name}</translation>
        </message>
        <message>
            <source>From a firm chair</source>
            <comment>sheet.posture.chair</comment>
            <translation>Desde una silla firme</translation>
        </message>
        <message>
            <source>Sitting on a firm chair</source>
            <comment>sheet.posture.sitting</comment>
            <translation>En una silla firme</translation>
        </message>
        <message>
            <source>Standing</source>
            <comment>sheet.posture.standing</comment>
            <translation>De pie</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>sheet.posture.walking</comment>
            <translation>Caminando</translation>
        </message>
        <message>
            <source>up to {most} degrees to each side</source>
            <comment>sheet.range</comment>
            <translation>hasta {most} grados a cada lado</translation>
        </message>
        <message>
            <source>up to {most} degrees up and down</source>
            <comment>sheet.range.nod</comment>
            <translation>hasta {most} grados hacia arriba y hacia abajo</translation>
        </message>
        <message>
            <source>Rest for {seconds} seconds after each exercise.</source>
            <comment>sheet.rest</comment>
            <translation>Descanse {seconds} segundos después de cada ejercicio.</translation>
        </message>
        <message>
            <source>Only with the program, as something has to move on the screen:</source>
            <comment>sheet.screen</comment>
            <translation>Solo con el programa, porque algo tiene que moverse en la pantalla:</translation>
        </message>
        <message>
            <source>Stop for today when:</source>
            <comment>sheet.stop</comment>
            <translation>Pare por hoy cuando:</translation>
        </message>
        <message>
            <source>You are dizzier than {most} of 10. None at all is 0. As bad as it can be is 10.</source>
            <comment>sheet.stop.score.dizziness</comment>
            <translation>Siente más mareo que {most} de 10. Nada es 0. Lo peor que puede ser es 10.</translation>
        </message>
        <message>
            <source>You feel sick, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.nausea</comment>
            <translation>Siente náuseas, y más que {most} de 10.</translation>
        </message>
        <message>
            <source>You feel unsteady, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.unsteadiness</comment>
            <translation>Siente inestabilidad, y más que {most} de 10.</translation>
        </message>
        <message>
            <source>After an exercise your symptoms need more than {minutes} minutes to settle.</source>
            <comment>sheet.stop.settle</comment>
            <translation>Después de un ejercicio, sus síntomas necesitan más de {minutes} minutos para calmarse.</translation>
        </message>
        <message>
            <source>{what}. Hold on, sit still until it is over, and tell your therapist.</source>
            <comment>sheet.stop.spin</comment>
            <translation>{what}. Agárrese, siéntese sin moverse hasta que pase, y dígaselo a su terapeuta.</translation>
        </message>
        <message>
            <source>You feel unwell in any other way.</source>
            <comment>sheet.stop.unwell</comment>
            <translation>Se siente mal de cualquier otra manera.</translation>
        </message>
        <message>
            <source>You are as dizzy as you can imagine.</source>
            <comment>sheet.stop.worst.dizziness</comment>
            <translation>Siente el mayor mareo que puede imaginar.</translation>
        </message>
        <message>
            <source>You feel as sick as you can imagine.</source>
            <comment>sheet.stop.worst.nausea</comment>
            <translation>Siente las mayores náuseas que puede imaginar.</translation>
        </message>
        <message>
            <source>You feel as unsteady as you can imagine.</source>
            <comment>sheet.stop.worst.unsteadiness</comment>
            <translation>Siente la mayor inestabilidad que puede imaginar.</translation>
        </message>
        <message>
            <source>Stand with a corner behind you and a firm chair in front.</source>
            <comment>sheet.support.corner_and_chair</comment>
            <translation>Póngase de pie con una esquina detrás y una silla firme delante.</translation>
        </message>
        <message>
            <source>Only with a helper who is close enough to hold you.</source>
            <comment>sheet.support.helper</comment>
            <translation>Solo con una persona que le ayude y esté tan cerca que pueda sujetarle.</translation>
        </message>
        <message>
            <source>{tempo} moves a minute</source>
            <comment>sheet.tempo</comment>
            <translation>{tempo} movimientos por minuto</translation>
        </message>
        <message>
            <source>first {low} moves a minute, at the end {high}</source>
            <comment>sheet.tempo.changes</comment>
            <translation>primero {low} movimientos por minuto, al final {high}</translation>
        </message>
        <message>
            <source>Your exercises at home</source>
            <comment>sheet.title</comment>
            <translation>Sus ejercicios en casa</translation>
        </message>
        <message>
            <source>From your therapist</source>
            <comment>sheet.words</comment>
            <translation>De su terapeuta</translation>
        </message>
        <message>
            <source>With your eyes shut, or standing, sound leads you whatever you choose here.</source>
            <comment>sound.always</comment>
            <translation>Con los ojos cerrados, o de pie, le guía el sonido, elija lo que elija aquí.</translation>
        </message>
        <message>
            <source>Without sound, practice with your eyes shut or standing needs somebody who reads to you.</source>
            <comment>sound.always.none</comment>
            <translation>Sin sonido, para practicar con los ojos cerrados o de pie necesita a alguien que le lea.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>sound.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Beats only</source>
            <comment>sound.beats</comment>
            <translation>Solo golpes</translation>
        </message>
        <message>
            <source>After a sudden drop of your head the voice always asks how you are.</source>
            <comment>sound.fall</comment>
            <translation>Después de una bajada repentina de su cabeza la voz siempre pregunta cómo está.</translation>
        </message>
        <message>
            <source>This computer can't play a sound.</source>
            <comment>sound.none</comment>
            <translation>Este ordenador no puede tocar sonido.</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none (Ctrl+M)</source>
            <comment>sound.open</comment>
            <translation>Sonido: voz, golpes o nada (Ctrl+M)</translation>
        </message>
        <message>
            <source>A screen reader seems to be on. It says the words, and the voice is quiet unless your eyes are shut.</source>
            <comment>sound.reader</comment>
            <translation>Parece que hay un lector de pantalla en marcha. Él lee las palabras, y la voz calla salvo cuando tiene los ojos cerrados.</translation>
        </message>
        <message>
            <source>Your choice holds while you sit with your eyes open. What is said also stands on the screen.</source>
            <comment>sound.seated</comment>
            <translation>Su elección vale mientras está en la silla con los ojos abiertos. Lo que se dice también está en la pantalla.</translation>
        </message>
        <message>
            <source>Nothing</source>
            <comment>sound.silence</comment>
            <translation>Nada</translation>
        </message>
        <message>
            <source>What do you want to hear?</source>
            <comment>sound.title</comment>
            <translation>¿Qué quiere oír?</translation>
        </message>
        <message>
            <source>Let me hear it</source>
            <comment>sound.try</comment>
            <translation>Déjeme oírlo</translation>
        </message>
        <message>
            <source>Voice and beats</source>
            <comment>sound.voice</comment>
            <translation>Voz y golpes</translation>
        </message>
        <message>
            <source>Begin anew</source>
            <comment>stored.anew</comment>
            <translation>Empezar de nuevo</translation>
        </message>
        <message>
            <source>Delete everything that Turnpost has stored here, for good?</source>
            <comment>stored.ask.everything</comment>
            <translation>¿Borrar para siempre todo lo que Turnpost ha guardado aquí?</translation>
        </message>
        <message>
            <source>Delete the shape and look of your face for good?</source>
            <comment>stored.ask.faces</comment>
            <translation>¿Borrar para siempre la forma y el aspecto de su cara?</translation>
        </message>
        <message>
            <source>Delete this session for good? {when}</source>
            <comment>stored.ask.one</comment>
            <translation>¿Borrar esta sesión para siempre? {when}</translation>
        </message>
        <message>
            <source>Delete all your sessions for good? There are {count} ({size}).</source>
            <comment>stored.ask.sessions</comment>
            <translation>¿Borrar todas sus sesiones para siempre? Son {count} ({size}).</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>stored.back</comment>
            <translation>Volver</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <comment>stored.copy</comment>
            <translation>Guardar una copia</translation>
        </message>
        <message>
            <source>All of it</source>
            <comment>stored.copy.everything</comment>
            <translation>De todo</translation>
        </message>
        <message>
            <source>The shape of my face</source>
            <comment>stored.copy.faces</comment>
            <translation>De la forma de mi cara</translation>
        </message>
        <message>
            <source>Choose the place</source>
            <comment>stored.copy.go</comment>
            <translation>Elegir el lugar</translation>
        </message>
        <message>
            <source>The session that is being recorded now is not in it.</source>
            <comment>stored.copy.in_use</comment>
            <translation>La sesión que se está grabando ahora no está en ella.</translation>
        </message>
        <message>
            <source>A copy of all of it also holds the clinic's keys, locked by their passphrase. Keep such a copy where nobody else gets at it.</source>
            <comment>stored.copy.keys</comment>
            <translation>Una copia de todo lleva también las llaves de la clínica, cerradas con su frase de paso. Guarde esa copia donde nadie más pueda llegar a ella.</translation>
        </message>
        <message>
            <source>Zip files (*.zip)</source>
            <comment>stored.copy.kinds</comment>
            <translation>Archivos zip (*.zip)</translation>
        </message>
        <message>
            <source>The copy is saved, and it is not encrypted: {path}</source>
            <comment>stored.copy.made</comment>
            <translation>La copia está guardada, y no está cifrada: {path}</translation>
        </message>
        <message>
            <source>Saving the copy ...</source>
            <comment>stored.copy.making</comment>
            <translation>Guardando la copia ...</translation>
        </message>
        <message>
            <source>The copy is one ordinary file (zip). It is not encrypted: whoever gets it can read it.</source>
            <comment>stored.copy.open</comment>
            <translation>La copia es un archivo corriente (zip). No está cifrada: quien la reciba puede leerla.</translation>
        </message>
        <message>
            <source>The sessions</source>
            <comment>stored.copy.sessions</comment>
            <translation>De las sesiones</translation>
        </message>
        <message>
            <source>What do you want a copy of?</source>
            <comment>stored.copy.what</comment>
            <translation>¿De qué quiere una copia?</translation>
        </message>
        <message>
            <source>Where shall the copy be?</source>
            <comment>stored.copy.where</comment>
            <translation>¿Dónde quiere la copia?</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <comment>stored.days</comment>
            <translation>{first} a {last}</translation>
        </message>
        <message>
            <source>Delete everything</source>
            <comment>stored.delete.everything</comment>
            <translation>Borrar todo</translation>
        </message>
        <message>
            <source>Delete the shape of my face</source>
            <comment>stored.delete.faces</comment>
            <translation>Borrar la forma de mi cara</translation>
        </message>
        <message>
            <source>Delete one session</source>
            <comment>stored.delete.one</comment>
            <translation>Borrar una sesión</translation>
        </message>
        <message>
            <source>Delete all sessions</source>
            <comment>stored.delete.sessions</comment>
            <translation>Borrar todas las sesiones</translation>
        </message>
        <message>
            <source>It is deleted.</source>
            <comment>stored.deleted</comment>
            <translation>Está borrado.</translation>
        </message>
        <message>
            <source>All of it is deleted. Turnpost now begins as on its first day.</source>
            <comment>stored.deleted.everything</comment>
            <translation>Todo está borrado. Turnpost empieza ahora como el primer día.</translation>
        </message>
        <message>
            <source>Not all of it is deleted.</source>
            <comment>stored.deleted.in_part</comment>
            <translation>No se ha borrado todo.</translation>
        </message>
        <message>
            <source>Deleting ...</source>
            <comment>stored.deleting</comment>
            <translation>Borrando ...</translation>
        </message>
        <message>
            <source>These lie in another place and are never deleted from here: {names}</source>
            <comment>stored.elsewhere</comment>
            <translation>Esto está en otro lugar y nunca se borra desde aquí: {names}</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>stored.eye.left</comment>
            <translation>solo el ojo izquierdo</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>stored.eye.right</comment>
            <translation>solo el ojo derecho</translation>
        </message>
        <message>
            <source>Glasses: {worn}. Camera: {camera}.</source>
            <comment>stored.face</comment>
            <translation>Gafas: {worn}. Cámara: {camera}.</translation>
        </message>
        <message>
            <source>Glasses: {worn}.</source>
            <comment>stored.face_worn</comment>
            <translation>Gafas: {worn}.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>stored.failed</comment>
            <translation>No ha funcionado: {why}</translation>
        </message>
        <message>
            <source>All sessions (those of other people, too), the shape of your face, the copy of your plan, all measures and all that you chose go. Turnpost is then as on its first day.</source>
            <comment>stored.goes.everything</comment>
            <translation>Se borran todas las sesiones (también las de otras personas), la forma de su cara, la copia de su plan, todas las medidas y todo lo que eligió. Turnpost queda como el primer día.</translation>
        </message>
        <message>
            <source>Before you practise again you do the whole set-up once more.</source>
            <comment>stored.goes.faces</comment>
            <translation>Antes de volver a practicar hará otra vez toda la preparación.</translation>
        </message>
        <message>
            <source>The clinic's keys go, too. Without a backup of them nobody can open what patients hand over.</source>
            <comment>stored.goes.keys</comment>
            <translation>También se borran las llaves de la clínica. Sin una copia de ellas nadie podrá abrir lo que entregan los pacientes.</translation>
        </message>
        <message>
            <source>What is deleted no longer counts for your plan, and you can't hand it over any more.</source>
            <comment>stored.goes.sessions</comment>
            <translation>Lo que se borra ya no cuenta para su plan, y ya no podrá entregarlo.</translation>
        </message>
        <message>
            <source>Keep it</source>
            <comment>stored.keep</comment>
            <translation>Conservar</translation>
        </message>
        <message>
            <source>Sessions that broke off and are not saved yet</source>
            <comment>stored.kind.broken_off</comment>
            <translation>Sesiones que se interrumpieron y aún no están guardadas</translation>
        </message>
        <message>
            <source>What was measured of your camera</source>
            <comment>stored.kind.cameras</comment>
            <translation>Lo que se midió de su cámara</translation>
        </message>
        <message>
            <source>An index for the therapist's desk</source>
            <comment>stored.kind.desk_index</comment>
            <translation>Un índice para la mesa del terapeuta</translation>
        </message>
        <message>
            <source>The shape and look of your face, as numbers</source>
            <comment>stored.kind.faces</comment>
            <translation>La forma y el aspecto de su cara, en números</translation>
        </message>
        <message>
            <source>Which sessions you handed over</source>
            <comment>stored.kind.handed_over</comment>
            <translation>Qué sesiones entregó usted</translation>
        </message>
        <message>
            <source>The keys of a clinic, locked</source>
            <comment>stored.kind.keys</comment>
            <translation>Las llaves de una clínica, cerradas</translation>
        </message>
        <message>
            <source>Notes of a therapist</source>
            <comment>stored.kind.notes</comment>
            <translation>Notas de un terapeuta</translation>
        </message>
        <message>
            <source>A copy of your plan</source>
            <comment>stored.kind.plans</comment>
            <translation>Una copia de su plan</translation>
        </message>
        <message>
            <source>Sessions of other people</source>
            <comment>stored.kind.received</comment>
            <translation>Sesiones de otras personas</translation>
        </message>
        <message>
            <source>Remains of something that broke off</source>
            <comment>stored.kind.remains</comment>
            <translation>Restos de algo que se interrumpió</translation>
        </message>
        <message>
            <source>Your sessions, with all that was measured, answered and scored</source>
            <comment>stored.kind.sessions</comment>
            <translation>Sus sesiones, con todo lo que se midió, se respondió y se puntuó</translation>
        </message>
        <message>
            <source>What you chose: text, language, sound</source>
            <comment>stored.kind.settings</comment>
            <translation>Lo que usted eligió: texto, idioma, sonido</translation>
        </message>
        <message>
            <source>This could not be deleted: {what}</source>
            <comment>stored.left</comment>
            <translation>Esto no se pudo borrar: {what}</translation>
        </message>
        <message>
            <source>it is being recorded now</source>
            <comment>stored.left.in_use</comment>
            <translation>se está grabando ahora</translation>
        </message>
        <message>
            <source>{path} ({why})</source>
            <comment>stored.left.row</comment>
            <translation>{path} ({why})</translation>
        </message>
        <message>
            <source>Looking at what is stored ...</source>
            <comment>stored.looking</comment>
            <translation>Mirando qué hay guardado ...</translation>
        </message>
        <message>
            <source>Newer ones</source>
            <comment>stored.newer</comment>
            <translation>Más recientes</translation>
        </message>
        <message>
            <source>This can't be undone. Copies that you handed over or saved elsewhere stay where they are. An expert may still be able to read parts of deleted files from the disk.</source>
            <comment>stored.no_way_back</comment>
            <translation>Esto no se puede deshacer. Las copias que usted entregó o guardó en otro lugar se quedan donde están. Un experto quizá pueda leer todavía del disco partes de los archivos borrados.</translation>
        </message>
        <message>
            <source>Nothing is stored.</source>
            <comment>stored.nothing</comment>
            <translation>No hay nada guardado.</translation>
        </message>
        <message>
            <source>Older ones</source>
            <comment>stored.older</comment>
            <translation>Anteriores</translation>
        </message>
        <message>
            <source>What is stored here</source>
            <comment>stored.open</comment>
            <translation>Qué hay guardado aquí</translation>
        </message>
        <message>
            <source>This folder also holds things that Turnpost did not put there. They always stay: {names}</source>
            <comment>stored.others</comment>
            <translation>En esta carpeta hay también cosas que no puso Turnpost. Se quedan siempre: {names}</translation>
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
            <translation>{session}, interrumpida</translation>
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
            <translation>Borrar esta</translation>
        </message>
        <message>
            <source>What is stored on this computer</source>
            <comment>stored.title</comment>
            <translation>Qué hay guardado en este ordenador</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>stored.unknown</comment>
            <translation>no se sabe</translation>
        </message>
        <message>
            <source>They lie in this folder: {folder}</source>
            <comment>stored.where</comment>
            <translation>Están en esta carpeta: {folder}</translation>
        </message>
        <message>
            <source>Which session do you want to delete?</source>
            <comment>stored.which</comment>
            <translation>¿Qué sesión quiere borrar?</translation>
        </message>
        <message>
            <source>Other accounts on this computer may be able to read these files. They are not encrypted, unless the disk is. Whoever helps you with the computer can close the folder to others.</source>
            <comment>stored.who.others</comment>
            <translation>Es posible que otras cuentas de este ordenador puedan leer estos archivos. No están cifrados, a no ser que lo esté el disco. Quien le ayude con el ordenador puede cerrar la carpeta a los demás.</translation>
        </message>
        <message>
            <source>Only your own account on this computer can read these files, and an administrator's. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.own</comment>
            <translation>Solo su propia cuenta en este ordenador puede leer estos archivos, y la de un administrador. No están cifrados, a no ser que lo esté el disco.</translation>
        </message>
        <message>
            <source>Turnpost can't tell which accounts on this computer can read these files. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.unknown</comment>
            <translation>Turnpost no puede saber qué cuentas de este ordenador pueden leer estos archivos. No están cifrados, a no ser que lo esté el disco.</translation>
        </message>
        <message>
            <source>Delete for good</source>
            <comment>stored.yes</comment>
            <translation>Borrar para siempre</translation>
        </message>
        <message>
            <source>Practise again</source>
            <comment>summary.again</comment>
            <translation>Practicar otra vez</translation>
        </message>
        <message>
            <source>asked: {asked}</source>
            <comment>summary.asked</comment>
            <translation>pedido: {asked}</translation>
        </message>
        <message>
            <source>To show it to your therapist, bring this computer, or a copy of that folder.</source>
            <comment>summary.bring</comment>
            <translation>Para enseñárselo a su terapeuta, lleve este ordenador o una copia de esa carpeta.</translation>
        </message>
        <message>
            <source>Close</source>
            <comment>summary.close</comment>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>summary.degrees</comment>
            <translation>{value} grados</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>summary.degrees_range</comment>
            <translation>de {low} a {high} grados</translation>
        </message>
        <message>
            <source>{value} degrees a second</source>
            <comment>summary.degrees_s</comment>
            <translation>{value} grados por segundo</translation>
        </message>
        <message>
            <source>This was the sample clip, not you.</source>
            <comment>summary.demo</comment>
            <translation>Esto era el vídeo de ejemplo, no usted.</translation>
        </message>
        <message>
            <source>What you practised before is saved, and so is what you answered.</source>
            <comment>summary.done_before</comment>
            <translation>Lo que practicó antes está guardado, y también lo que ha respondido.</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>summary.down</comment>
            <translation>Abajo</translation>
        </message>
        <message>
            <source>Time for each</source>
            <comment>summary.each</comment>
            <translation>Tiempo de cada una</translation>
        </message>
        <message>
            <source>You did the whole exercise.</source>
            <comment>summary.finished</comment>
            <translation>Ha hecho todo el ejercicio.</translation>
        </message>
        <message>
            <source>Your practice for now is done.</source>
            <comment>summary.finished_plan</comment>
            <translation>Su práctica ha terminado por ahora.</translation>
        </message>
        <message>
            <source>Noted as you say it. The camera did not see it, so nothing is measured.</source>
            <comment>summary.finished_reported</comment>
            <translation>Anotado tal como lo dice. La cámara no lo ha visto, así que no hay nada medido.</translation>
        </message>
        <message>
            <source>To the first page</source>
            <comment>summary.first_page</comment>
            <translation>A la primera página</translation>
        </message>
        <message>
            <source>Held</source>
            <comment>summary.held</comment>
            <translation>Mantenido</translation>
        </message>
        <message>
            <source>To the left</source>
            <comment>summary.left</comment>
            <translation>A la izquierda</translation>
        </message>
        <message>
            <source>Left out</source>
            <comment>summary.left_out</comment>
            <translation>Sin hacer</translation>
        </message>
        <message>
            <source>Measured</source>
            <comment>summary.measured</comment>
            <translation>Medido</translation>
        </message>
        <message>
            <source>Your set-up could not be kept ({why}). Next time you do it again; nothing else is lost.</source>
            <comment>summary.not_kept</comment>
            <translation>Su preparación no se pudo conservar ({why}). La próxima vez la hará de nuevo; no se ha perdido nada más.</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>summary.not_measured</comment>
            <translation>no medido</translation>
        </message>
        <message>
            <source>not past the middle</source>
            <comment>summary.not_past</comment>
            <translation>sin pasar del centro</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>summary.not_saved</comment>
            <translation>No guardado: {why}</translation>
        </message>
        <message>
            <source>What you did is still here. Make room, or choose another place, before you close this window.</source>
            <comment>summary.not_saved_do</comment>
            <translation>Lo que hizo sigue aquí. Haga sitio, o elija otro lugar, antes de cerrar esta ventana.</translation>
        </message>
        <message>
            <source>It could not be taken back, so it still counts. {why}</source>
            <comment>summary.not_taken_back</comment>
            <translation>No se pudo retirar, así que sigue contando. {why}</translation>
        </message>
        <message>
            <source>Nothing was practised this time. Why stands beside each exercise.</source>
            <comment>summary.nothing_done</comment>
            <translation>Esta vez no se ha practicado nada. El motivo está junto a cada ejercicio.</translation>
        </message>
        <message>
            <source>nothing to mention</source>
            <comment>summary.nothing_noticed</comment>
            <translation>nada especial</translation>
        </message>
        <message>
            <source>Nothing was practised this time. What you answered is saved.</source>
            <comment>summary.nothing_stopped</comment>
            <translation>Esta vez no se ha practicado nada. Sus respuestas están guardadas.</translation>
        </message>
        <message>
            <source>Noticed</source>
            <comment>summary.noticed</comment>
            <translation>Observado</translation>
        </message>
        <message>
            <source>{value} % of the time</source>
            <comment>summary.of_time</comment>
            <translation>{value} % del tiempo</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>summary.on_target</comment>
            <translation>Ojos en el punto</translation>
        </message>
        <message>
            <source>{count}, as you counted</source>
            <comment>summary.own_count</comment>
            <translation>{count}, según su cuenta</translation>
        </message>
        <message>
            <source>{value} turns a minute</source>
            <comment>summary.per_minute</comment>
            <translation>{value} giros por minuto</translation>
        </message>
        <message>
            <source>Choose another place</source>
            <comment>summary.place</comment>
            <translation>Elegir otro lugar</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>summary.repetitions</comment>
            <translation>Repeticiones</translation>
        </message>
        <message>
            <source>done, as you say</source>
            <comment>summary.reported</comment>
            <translation>hecho, según dice usted</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>summary.retry</comment>
            <translation>Probar otra vez</translation>
        </message>
        <message>
            <source>To the right</source>
            <comment>summary.right</comment>
            <translation>A la derecha</translation>
        </message>
        <message>
            <source>Saved in {folder}</source>
            <comment>summary.saved</comment>
            <translation>Guardado en {folder}</translation>
        </message>
        <message>
            <source>{value} seconds</source>
            <comment>summary.seconds</comment>
            <translation>{value} segundos</translation>
        </message>
        <message>
            <source>Fastest in a turn</source>
            <comment>summary.speed</comment>
            <translation>Lo más rápido en un giro</translation>
        </message>
        <message>
            <source>You stopped early. What you did is saved and counts.</source>
            <comment>summary.stopped</comment>
            <translation>Ha parado antes. Lo que hizo está guardado y cuenta.</translation>
        </message>
        <message>
            <source>Take it back</source>
            <comment>summary.take_back</comment>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Tempo</source>
            <comment>summary.tempo</comment>
            <translation>Ritmo</translation>
        </message>
        <message>
            <source>Your session</source>
            <comment>summary.title</comment>
            <translation>Su sesión</translation>
        </message>
        <message>
            <source>This was only to try it out: it is not counted as practice.</source>
            <comment>summary.try</comment>
            <translation>Esto era solo para probar: no cuenta como práctica.</translation>
        </message>
        <message>
            <source>Stopped. What you did is saved.</source>
            <comment>summary.try_stopped</comment>
            <translation>Terminado. Lo que hizo está guardado.</translation>
        </message>
        <message>
            <source>How far your eyes turned in</source>
            <comment>summary.turned_in</comment>
            <translation>Cuánto giraron sus ojos hacia dentro</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>summary.up</comment>
            <translation>Arriba</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>switch_colours</comment>
            <translation>Claro u oscuro</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>symptoms.not_answered</comment>
            <translation>¿Cuánto mareo siente ahora?</translation>
        </message>
        <message>
            <source>It takes long to settle. It is enough for today.</source>
            <comment>symptoms.not_settled</comment>
            <translation>Tarda mucho en calmarse. Es suficiente por hoy.</translation>
        </message>
        <message>
            <source>That was a lot. It is enough for today.</source>
            <comment>symptoms.score_above</comment>
            <translation>Eso ha sido mucho. Es suficiente por hoy.</translation>
        </message>
        <message>
            <source>Rest until you feel as usual.</source>
            <comment>symptoms.settling</comment>
            <translation>Descanse hasta sentirse como siempre.</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>text_larger</comment>
            <translation>Letra más grande</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>text_smaller</comment>
            <translation>Letra más pequeña</translation>
        </message>
        <message>
            <source>it lies behind a link</source>
            <comment>told.behind_link</comment>
            <translation>está detrás de un enlace</translation>
        </message>
        <message>
            <source>{path}: could not be written ({why})</source>
            <comment>told.broke_off</comment>
            <translation>{path}: no se pudo escribir ({why})</translation>
        </message>
        <message>
            <source>its links lead round in a circle</source>
            <comment>told.circle</comment>
            <translation>sus enlaces dan vueltas en círculo</translation>
        </message>
        <message>
            <source>{path}: lies in the folder that is copied, and would be deleted with it; choose another place</source>
            <comment>told.copy_inside</comment>
            <translation>{path}: está en la carpeta que se copia, y se borraría con ella; elija otro lugar</translation>
        </message>
        <message>
            <source>there is nothing to copy</source>
            <comment>told.copy_nothing</comment>
            <translation>no hay nada que copiar</translation>
        </message>
        <message>
            <source>the disk has a fault</source>
            <comment>told.disk_fault</comment>
            <translation>el disco tiene un fallo</translation>
        </message>
        <message>
            <source>the disk is full</source>
            <comment>told.disk_full</comment>
            <translation>el disco está lleno</translation>
        </message>
        <message>
            <source>the disk is no longer connected</source>
            <comment>told.disk_gone</comment>
            <translation>el disco ya no está conectado</translation>
        </message>
        <message>
            <source>the disk does not answer</source>
            <comment>told.disk_silent</comment>
            <translation>el disco no responde</translation>
        </message>
        <message>
            <source>{path}: the disk does not answer; try again in a moment</source>
            <comment>told.disk_wait</comment>
            <translation>{path}: el disco no responde; inténtelo otra vez dentro de un momento</translation>
        </message>
        <message>
            <source>the measuring process ended while the set-up was being used</source>
            <comment>told.ended</comment>
            <translation>la medición se interrumpió mientras se usaba la preparación</translation>
        </message>
        <message>
            <source>your eyes look another way than last time; do the whole set-up</source>
            <comment>told.eyes_other</comment>
            <translation>sus ojos se ven distintos de la última vez; haga la preparación completa</translation>
        </message>
        <message>
            <source>the face is too dark or too blurred to be measured; more light helps</source>
            <comment>told.face_dark</comment>
            <translation>su cara está demasiado oscura o borrosa para medirla; ayuda tener más luz</translation>
        </message>
        <message>
            <source>the face was not seen for long enough in the set-up; do it again</source>
            <comment>told.face_short</comment>
            <translation>su cara no se vio el tiempo suficiente en la preparación; hágala otra vez</translation>
        </message>
        <message>
            <source>{path}: is there already; name another file</source>
            <comment>told.file_there</comment>
            <translation>{path}: ya existe; elija otro nombre de archivo</translation>
        </message>
        <message>
            <source>its folder is gone</source>
            <comment>told.folder_gone</comment>
            <translation>su carpeta ya no está</translation>
        </message>
        <message>
            <source>another program is using it</source>
            <comment>told.in_use</comment>
            <translation>otro programa lo está usando</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <comment>told.is_folder</comment>
            <translation>es una carpeta</translation>
        </message>
        <message>
            <source>this is another camera than that of the kept set-up; do the whole set-up</source>
            <comment>told.kept_camera</comment>
            <translation>esta es otra cámara que la de la última preparación; haga la preparación completa</translation>
        </message>
        <message>
            <source>you sit much farther from the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_farther</comment>
            <translation>está mucho más lejos de la cámara que en la última preparación; haga la preparación completa</translation>
        </message>
        <message>
            <source>you sit much nearer to the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_nearer</comment>
            <translation>está mucho más cerca de la cámara que en la última preparación; haga la preparación completa</translation>
        </message>
        <message>
            <source>the face was not seen for long enough; do the whole set-up</source>
            <comment>told.kept_short</comment>
            <translation>su cara no se vio el tiempo suficiente; haga la preparación completa</translation>
        </message>
        <message>
            <source>the kept set-up does not fit this face or this light; do the whole set-up</source>
            <comment>told.kept_unlike</comment>
            <translation>la última preparación no va con esta cara o esta luz; haga la preparación completa</translation>
        </message>
        <message>
            <source>the key would take too much memory to be opened; make it on another computer</source>
            <comment>told.key_heavy</comment>
            <translation>abrir la llave exigiría demasiada memoria; hágala en otro ordenador</translation>
        </message>
        <message>
            <source>is a second copy of {path}, left out</source>
            <comment>told.left.copy</comment>
            <translation>es una segunda copia de {path}; no se ha tenido en cuenta</translation>
        </message>
        <message>
            <source>is no file of this program</source>
            <comment>told.left.foreign</comment>
            <translation>no es un archivo de este programa</translation>
        </message>
        <message>
            <source>is not a whole JSON file; is it still being copied?</source>
            <comment>told.left.half</comment>
            <translation>no es un archivo JSON completo; ¿se está copiando todavía?</translation>
        </message>
        <message>
            <source>is too large for a file of this program</source>
            <comment>told.left.large</comment>
            <translation>es demasiado grande para ser un archivo de este programa</translation>
        </message>
        <message>
            <source>not a whole JSON file ({error})</source>
            <comment>told.left.no_json</comment>
            <translation>no es un archivo JSON, o no está completo ({error})</translation>
        </message>
        <message>
            <source>is the same session as {path} with other content, left out; look which of them is right</source>
            <comment>told.left.other</comment>
            <translation>es la misma sesión que {path} con otro contenido; no se ha tenido en cuenta; mire cuál es la correcta</translation>
        </message>
        <message>
            <source>is a file that a patient has handed over: take it in ("Files in and out" at the desk, or 'turnpost receive'), then move it elsewhere; taken in twice it changes nothing</source>
            <comment>told.left.shut</comment>
            <translation>es un archivo que ha entregado un paciente: recíbalo (en «Archivos de entrada y salida», o con 'turnpost receive') y guárdelo después en otro lugar; recibirlo dos veces no cambia nada</translation>
        </message>
        <message>
            <source>is being written just now, or was a minute ago; look again soon</source>
            <comment>told.left.written</comment>
            <translation>se está escribiendo ahora mismo, o se escribía hace un minuto; vuelva a mirar pronto</translation>
        </message>
        <message>
            <source>what was held up has another shape; use a flat, whole one</source>
            <comment>told.lens_shape</comment>
            <translation>lo que levantó tiene otra forma; use algo liso y entero</translation>
        </message>
        <message>
            <source>it was held too square to the camera; tilt it more, to several sides</source>
            <comment>told.lens_square</comment>
            <translation>la sostuvo demasiado recta hacia la cámara; inclínela más, hacia varios lados</translation>
        </message>
        <message>
            <source>nothing was seen to measure; hold it up so that all four corners show</source>
            <comment>told.lens_unseen</comment>
            <translation>no se vio nada que medir; levántela de modo que se vean las cuatro esquinas</translation>
        </message>
        <message>
            <source>no webcam sees so wide or so narrow; measure again</source>
            <comment>told.lens_wide</comment>
            <translation>ninguna cámara web ve tan ancho o tan estrecho; mida otra vez</translation>
        </message>
        <message>
            <source>too many files are open</source>
            <comment>told.many_open</comment>
            <translation>hay demasiados archivos abiertos</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther in</source>
            <comment>told.mark_in</comment>
            <translation>la marca pediría un giro de {turn} grados; póngala más hacia dentro</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther out</source>
            <comment>told.mark_out</comment>
            <translation>la marca pediría un giro de {turn} grados; póngala más hacia fuera</translation>
        </message>
        <message>
            <source>the computer has too little memory</source>
            <comment>told.memory</comment>
            <translation>el ordenador tiene poca memoria</translation>
        </message>
        <message>
            <source>{path}: is a folder; name a file</source>
            <comment>told.name_file</comment>
            <translation>{path}: es una carpeta; indique un archivo</translation>
        </message>
        <message>
            <source>the name is too long</source>
            <comment>told.name_long</comment>
            <translation>el nombre es demasiado largo</translation>
        </message>
        <message>
            <source>something of this name is there already</source>
            <comment>told.name_taken</comment>
            <translation>ya hay algo con ese nombre</translation>
        </message>
        <message>
            <source>this name can't be used here</source>
            <comment>told.name_wrong</comment>
            <translation>este nombre no se puede usar aquí</translation>
        </message>
        <message>
            <source>the place on the network does not answer</source>
            <comment>told.network_silent</comment>
            <translation>el lugar de la red no responde</translation>
        </message>
        <message>
            <source>{path}: was written by a newer version of this program; update it</source>
            <comment>told.newer</comment>
            <translation>{path}: lo escribió una versión más nueva de este programa; actualícelo</translation>
        </message>
        <message>
            <source>a newer version of this program wrote it</source>
            <comment>told.newer_wrote</comment>
            <translation>lo escribió una versión más nueva de este programa</translation>
        </message>
        <message>
            <source>it is not an ordinary file</source>
            <comment>told.no_file</comment>
            <translation>no es un archivo corriente</translation>
        </message>
        <message>
            <source>{path}: the folder can't be made ({why})</source>
            <comment>told.no_folder</comment>
            <translation>{path}: no se puede crear la carpeta ({why})</translation>
        </message>
        <message>
            <source>no file can have such a name</source>
            <comment>told.no_name</comment>
            <translation>ningún archivo puede llamarse así</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why}); choose another place</source>
            <comment>told.no_place</comment>
            <translation>{path}: no se puede escribir ({why}); elija otro lugar</translation>
        </message>
        <message>
            <source>this account has no right to it</source>
            <comment>told.no_right</comment>
            <translation>esta cuenta no tiene permiso para ello</translation>
        </message>
        <message>
            <source>something else lies in it</source>
            <comment>told.not_empty</comment>
            <translation>hay otras cosas dentro</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why})</source>
            <comment>told.not_taken_in</comment>
            <translation>{path}: no se puede escribir ahí, no se incorporó nada ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why}); make room or choose another folder</source>
            <comment>told.not_taken_in.room</comment>
            <translation>{path}: no se puede escribir ahí, no se incorporó nada ({why}); haga sitio o elija otra carpeta</translation>
        </message>
        <message>
            <source>it is not there</source>
            <comment>told.not_there</comment>
            <translation>no está ahí</translation>
        </message>
        <message>
            <source>{path}: the note was not saved ({why})</source>
            <comment>told.note</comment>
            <translation>{path}: la nota no se guardó ({why})</translation>
        </message>
        <message>
            <source>nothing is being measured</source>
            <comment>told.nothing</comment>
            <translation>no se está midiendo nada</translation>
        </message>
        <message>
            <source>the pictures of the other steps are gone; do the whole set-up</source>
            <comment>told.pictures_gone</comment>
            <translation>ya no están las imágenes de los otros pasos; haga toda la preparación</translation>
        </message>
        <message>
            <source>nothing can be changed there, only read</source>
            <comment>told.read_only</comment>
            <translation>ahí no se puede cambiar nada, solo leer</translation>
        </message>
        <message>
            <source>a record could not be written</source>
            <comment>told.record_lost</comment>
            <translation>no se pudo escribir una línea</translation>
        </message>
        <message>
            <source>Body, sitting</source>
            <comment>told.stage_body</comment>
            <translation>Cuerpo, en la silla</translation>
        </message>
        <message>
            <source>Eyes and head, sitting</source>
            <comment>told.stage_eyes</comment>
            <translation>Ojos y cabeza, en la silla</translation>
        </message>
        <message>
            <source>Standing, firm floor</source>
            <comment>told.stage_firm</comment>
            <translation>De pie, suelo firme</translation>
        </message>
        <message>
            <source>Standing, soft surface</source>
            <comment>told.stage_soft</comment>
            <translation>De pie, suelo blando</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>told.stage_walking</comment>
            <translation>Caminar</translation>
        </message>
        <message>
            <source>it is too large</source>
            <comment>told.too_large</comment>
            <translation>es demasiado grande</translation>
        </message>
        <message>
            <source>{path}: can't be deleted ({why})</source>
            <comment>told.undeleted</comment>
            <translation>{path}: no se puede borrar ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be read ({why})</source>
            <comment>told.unread</comment>
            <translation>{path}: no se puede leer ({why})</translation>
        </message>
        <message>
            <source>the folder can't be read ({why})</source>
            <comment>told.unread.folder</comment>
            <translation>no se puede leer la carpeta ({why})</translation>
        </message>
        <message>
            <source>can't be read ({why})</source>
            <comment>told.unread.short</comment>
            <translation>no se puede leer ({why})</translation>
        </message>
        <message>
            <source>the set-up could not be used ({why})</source>
            <comment>told.unusable</comment>
            <translation>la preparación no se pudo usar ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why})</source>
            <comment>told.unwritten</comment>
            <translation>{path}: no se puede escribir ({why})</translation>
        </message>
        <message>
            <source>{path}: is in use by another window; close that first</source>
            <comment>told.window</comment>
            <translation>{path}: lo está usando otra ventana; ciérrela primero</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>tools.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>For therapists: baseline together</source>
            <comment>tools.baseline</comment>
            <translation>Para terapeutas: sesión de referencia juntos</translation>
        </message>
        <message>
            <source>For therapists: plan</source>
            <comment>tools.edit</comment>
            <translation>Para terapeutas: plan</translation>
        </message>
        <message>
            <source>Measure the camera</source>
            <comment>tools.lens</comment>
            <translation>Medir la cámara</translation>
        </message>
        <message>
            <source>Camera, screen, more</source>
            <comment>tools.open</comment>
            <translation>Cámara, pantalla, más</translation>
        </message>
        <message>
            <source>For therapists: review sessions</source>
            <comment>tools.review</comment>
            <translation>Para terapeutas: revisar sesiones</translation>
        </message>
        <message>
            <source>Choose the folder with the sessions</source>
            <comment>tools.review.folder</comment>
            <translation>Elija la carpeta con las sesiones</translation>
        </message>
        <message>
            <source>Measure the screen</source>
            <comment>tools.screen</comment>
            <translation>Medir la pantalla</translation>
        </message>
        <message>
            <source>Camera, screen, and what else there is</source>
            <comment>tools.title</comment>
            <translation>Cámara, pantalla y qué más hay</translation>
        </message>
        <message>
            <source>Two measures make your figures more exact. You take them once. Without them usual values are taken, and your results say so.</source>
            <comment>tools.why</comment>
            <translation>Dos medidas hacen más exactos sus números. Se toman una sola vez. Sin ellas se usan valores habituales, y sus resultados lo dicen.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>trouble.back</comment>
            <translation>Atrás</translation>
        </message>
        <message>
            <source>Another program is using the camera.</source>
            <comment>trouble.busy</comment>
            <translation>Otro programa está usando la cámara.</translation>
        </message>
        <message>
            <source>Close the other program. In a video call, switch your video off there and share this window. To stand you then need a helper in the room, or a second device that shows you.</source>
            <comment>trouble.busy.do</comment>
            <translation>Cierre el otro programa. En una videollamada, apague allí su vídeo y comparta esta ventana. Para estar de pie necesita entonces a alguien que le ayude en la habitación, o un segundo aparato que le muestre.</translation>
        </message>
        <message>
            <source>Use the sample clip</source>
            <comment>trouble.demo</comment>
            <translation>Usar el vídeo de ejemplo</translation>
        </message>
        <message>
            <source>The camera can't be used.</source>
            <comment>trouble.failed</comment>
            <translation>No se puede usar la cámara.</translation>
        </message>
        <message>
            <source>If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do</comment>
            <translation>Si sigue igual, ejecute «turnpost doctor» con alguien que le ayude.</translation>
        </message>
        <message>
            <source>Try again. If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do.retry</comment>
            <translation>Pruebe otra vez. Si sigue igual, ejecute «turnpost doctor» con alguien que le ayude.</translation>
        </message>
        <message>
            <source>The camera does not answer.</source>
            <comment>trouble.hanging</comment>
            <translation>La cámara no responde.</translation>
        </message>
        <message>
            <source>Wait a moment. If nothing comes, unplug it or restart the computer.</source>
            <comment>trouble.hanging.do</comment>
            <translation>Espere un momento. Si no llega nada, desconéctela o reinicie el ordenador.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>trouble.no_camera</comment>
            <translation>No se encontró ninguna cámara.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch.</source>
            <comment>trouble.no_camera.do</comment>
            <translation>Conecte una cámara, o abra su tapa o su interruptor.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch, then try again.</source>
            <comment>trouble.no_camera.do.retry</comment>
            <translation>Conecte una cámara, o abra su tapa o su interruptor, y pruebe otra vez.</translation>
        </message>
        <message>
            <source>Turnpost may not use the camera.</source>
            <comment>trouble.no_permission</comment>
            <translation>Turnpost no tiene permiso para usar la cámara.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy.</source>
            <comment>trouble.no_permission.do</comment>
            <translation>Permita la cámara en los ajustes de su ordenador, en «Privacidad».</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy, then try again.</source>
            <comment>trouble.no_permission.do.retry</comment>
            <translation>Permita la cámara en los ajustes de su ordenador, en «Privacidad», y pruebe otra vez.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps another program is using it.</source>
            <comment>trouble.perhaps_busy</comment>
            <translation>La cámara no da imagen. Quizá la esté usando otro programa.</translation>
        </message>
        <message>
            <source>Close the other program. In a call, switch your video off there and share this window. To stand you then need a helper, or a second device. If it is not that, open the camera's cover, or allow it under Privacy.</source>
            <comment>trouble.perhaps_busy.do</comment>
            <translation>Cierre el otro programa. En una videollamada, apague allí su vídeo y comparta esta ventana. Para estar de pie necesita entonces ayuda o un segundo aparato. Si no es eso, abra la tapa de la cámara o permítala en Privacidad.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps Turnpost may not use it.</source>
            <comment>trouble.perhaps_forbidden</comment>
            <translation>La cámara no da imagen. Quizá Turnpost no tenga permiso para usarla.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings under Privacy. If it is allowed, open its cover, or close other programs.</source>
            <comment>trouble.perhaps_forbidden.do</comment>
            <translation>Permita la cámara en los ajustes, en «Privacidad». Si ya está permitida, abra su tapa o cierre otros programas.</translation>
        </message>
        <message>
            <source>It starts to measure again.</source>
            <comment>trouble.restarting</comment>
            <translation>La medición está empezando de nuevo.</translation>
        </message>
        <message>
            <source>Wait a moment. You need do nothing.</source>
            <comment>trouble.restarting.do</comment>
            <translation>Espere un momento. No tiene que hacer nada.</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>trouble.retry</comment>
            <translation>Probar otra vez</translation>
        </message>
        <message>
            <source>No picture comes from the camera.</source>
            <comment>trouble.silent</comment>
            <translation>No llega ninguna imagen de la cámara.</translation>
        </message>
        <message>
            <source>Wait a moment: Turnpost tries again by itself.</source>
            <comment>trouble.silent.do</comment>
            <translation>Espere un momento: Turnpost vuelve a intentarlo solo.</translation>
        </message>
        <message>
            <source>The camera has been unplugged.</source>
            <comment>trouble.unplugged</comment>
            <translation>La cámara se ha desconectado.</translation>
        </message>
        <message>
            <source>Plug it in again.</source>
            <comment>trouble.unplugged.do</comment>
            <translation>Vuelva a conectarla.</translation>
        </message>
        <message>
            <source>Plug it in again, then try again.</source>
            <comment>trouble.unplugged.do.retry</comment>
            <translation>Vuelva a conectarla y pruebe otra vez.</translation>
        </message>
        <message>
            <source>which arm you use, if it is out of sight</source>
            <comment>unmeasured.arm</comment>
            <translation>qué brazo usa, si no se ve</translation>
        </message>
        <message>
            <source>how clear the target is to you</source>
            <comment>unmeasured.blur_of_target</comment>
            <translation>lo claro que ve el punto</translation>
        </message>
        <message>
            <source>how high your chair is</source>
            <comment>unmeasured.chair</comment>
            <translation>la altura de su silla</translation>
        </message>
        <message>
            <source>The camera does not count this. Count for yourself.</source>
            <comment>unmeasured.count</comment>
            <translation>La cámara no cuenta esto. Cuente usted.</translation>
        </message>
        <message>
            <source>which way your shoulders roll</source>
            <comment>unmeasured.direction</comment>
            <translation>hacia qué lado giran sus hombros</translation>
        </message>
        <message>
            <source>if you see two tips</source>
            <comment>unmeasured.double_image</comment>
            <translation>si ve dos puntas</translation>
        </message>
        <message>
            <source>The camera measures nothing here. You are led by voice.</source>
            <comment>unmeasured.everything</comment>
            <translation>La cámara no mide nada aquí. Le guía la voz.</translation>
        </message>
        <message>
            <source>if your eyes follow the ball</source>
            <comment>unmeasured.eyes_follow</comment>
            <translation>si sus ojos siguen la pelota</translation>
        </message>
        <message>
            <source>the moment your eyes open</source>
            <comment>unmeasured.eyes_opened</comment>
            <translation>el momento en que se abren sus ojos</translation>
        </message>
        <message>
            <source>your feet</source>
            <comment>unmeasured.feet</comment>
            <translation>sus pies</translation>
        </message>
        <message>
            <source>your eyes while you bend</source>
            <comment>unmeasured.gaze_bent</comment>
            <translation>sus ojos mientras se agacha</translation>
        </message>
        <message>
            <source>where your eyes point when they are shut</source>
            <comment>unmeasured.gaze_eyes_shut</comment>
            <translation>hacia dónde apuntan sus ojos cerrados</translation>
        </message>
        <message>
            <source>eyes that stop short of the target</source>
            <comment>unmeasured.gaze_short</comment>
            <translation>ojos que no llegan al punto</translation>
        </message>
        <message>
            <source>your hand</source>
            <comment>unmeasured.hand</comment>
            <translation>su mano</translation>
        </message>
        <message>
            <source>how near your finger really comes</source>
            <comment>unmeasured.hand_place</comment>
            <translation>lo cerca que llega de verdad su dedo</translation>
        </message>
        <message>
            <source>a target in your hand</source>
            <comment>unmeasured.hand_target</comment>
            <translation>un punto en su mano</translation>
        </message>
        <message>
            <source>your hands</source>
            <comment>unmeasured.hands</comment>
            <translation>sus manos</translation>
        </message>
        <message>
            <source>if you bend at the hips</source>
            <comment>unmeasured.hip_bend</comment>
            <translation>si dobla las caderas</translation>
        </message>
        <message>
            <source>the ball itself</source>
            <comment>unmeasured.object</comment>
            <translation>la pelota misma</translation>
        </message>
        <message>
            <source>how fast your eyes jump</source>
            <comment>unmeasured.peak_speed_of_eyes</comment>
            <translation>a qué velocidad saltan sus ojos</translation>
        </message>
        <message>
            <source>how far your eyes go up and down</source>
            <comment>unmeasured.reach_vertical</comment>
            <translation>hasta dónde van sus ojos arriba y abajo</translation>
        </message>
        <message>
            <source>how high your shoulders go</source>
            <comment>unmeasured.shoulder_height</comment>
            <translation>hasta qué altura suben sus hombros</translation>
        </message>
        <message>
            <source>small jumps of your eyes</source>
            <comment>unmeasured.small_jumps</comment>
            <translation>pequeños saltos de sus ojos</translation>
        </message>
        <message>
            <source>if you hold on</source>
            <comment>unmeasured.steadied</comment>
            <translation>si se agarra</translation>
        </message>
        <message>
            <source>how far your eyes turn in</source>
            <comment>unmeasured.vergence</comment>
            <translation>cuánto giran sus ojos hacia dentro</translation>
        </message>
        <message>
            <source>It is too bright. Turn the light a little aside.</source>
            <comment>verdict.bright</comment>
            <translation>Hay demasiada luz. Gire la lámpara un poco hacia un lado.</translation>
        </message>
        <message>
            <source>It is dark. Put more light in front of you.</source>
            <comment>verdict.dark</comment>
            <translation>Está oscuro. Ponga más luz delante de usted.</translation>
        </message>
        <message>
            <source>You are far away. Come a hand closer.</source>
            <comment>verdict.far</comment>
            <translation>Está lejos. Acérquese un palmo.</translation>
        </message>
        <message>
            <source>Good. Your face is well lit and near enough.</source>
            <comment>verdict.good</comment>
            <translation>Bien. Su cara tiene buena luz y está bastante cerca.</translation>
        </message>
        <message>
            <source>You are very near. Move back by a hand.</source>
            <comment>verdict.near</comment>
            <translation>Está muy cerca. Aléjese un palmo.</translation>
        </message>
        <message>
            <source>Your face is not in the picture. Face the screen, in front of its camera.</source>
            <comment>verdict.no_face</comment>
            <translation>Su cara no está en la imagen. Mire hacia la pantalla, delante de su cámara.</translation>
        </message>
        <message>
            <source>Getting the camera ready. This can take half a minute.</source>
            <comment>verdict.opening</comment>
            <translation>Preparando la cámara. Puede tardar medio minuto.</translation>
        </message>
        <message>
            <source>The camera is slow. More light may help.</source>
            <comment>verdict.slow</comment>
            <translation>La cámara va lenta. Más luz puede ayudar.</translation>
        </message>
        <message>
            <source>The voice can't be heard any more. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.failed</comment>
            <translation>La voz ya no se oye. Le guían los golpes y las palabras de la pantalla.</translation>
        </message>
        <message>
            <source>This computer has no voice. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_engine</comment>
            <translation>Este ordenador no tiene voz. Le guían los golpes y las palabras de la pantalla.</translation>
        </message>
        <message>
            <source>This computer has no voice for your language. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_language</comment>
            <translation>Este ordenador no tiene voz en su idioma. Le guían los golpes y las palabras de la pantalla.</translation>
        </message>
        <message>
            <source>en</source>
            <comment>voice.language</comment>
            <translation>es</translation>
        </message>
        <message>
            <source>Higher than the camera: {cm} cm.</source>
            <comment>wall.above</comment>
            <translation>Más alto que la cámara: {cm} cm.</translation>
        </message>
        <message>
            <source>Neither to the left nor to the right of it.</source>
            <comment>wall.ahead</comment>
            <translation>Ni a la izquierda ni a la derecha de ella.</translation>
        </message>
        <message>
            <source>From note to note: {cm} cm.</source>
            <comment>wall.apart</comment>
            <translation>De nota a nota: {cm} cm.</translation>
        </message>
        <message>
            <source>From your eyes straight to the wall: {cm} cm.</source>
            <comment>wall.away</comment>
            <translation>De sus ojos, en línea recta, a la pared: {cm} cm.</translation>
        </message>
        <message>
            <source>Lower than the camera: {cm} cm.</source>
            <comment>wall.below</comment>
            <translation>Más bajo que la cámara: {cm} cm.</translation>
        </message>
        <message>
            <source>To the left of the camera: {cm} cm.</source>
            <comment>wall.left</comment>
            <translation>A la izquierda de la cámara: {cm} cm.</translation>
        </message>
        <message>
            <source>As high as the camera.</source>
            <comment>wall.level</comment>
            <translation>A la altura de la cámara.</translation>
        </message>
        <message>
            <source>The camera is midway between them.</source>
            <comment>wall.middle</comment>
            <translation>La cámara queda en medio de las dos.</translation>
        </message>
        <message>
            <source>Stick one note on the wall behind the screen.</source>
            <comment>wall.one</comment>
            <translation>Pegue una nota en la pared de detrás de la pantalla.</translation>
        </message>
        <message>
            <source>To the right of the camera: {cm} cm.</source>
            <comment>wall.right</comment>
            <translation>A la derecha de la cámara: {cm} cm.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, side by side.</source>
            <comment>wall.two</comment>
            <translation>Pegue dos notas en la pared de detrás de la pantalla, una al lado de la otra.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, one above the other. How high they hang is measured from the place midway between them.</source>
            <comment>wall.two_up</comment>
            <translation>Pegue dos notas en la pared de detrás de la pantalla, una encima de la otra. Su altura se mide desde el punto medio entre las dos.</translation>
        </message>
        <message>
            <source>Before you begin</source>
            <comment>welcome.safe</comment>
            <translation>Antes de empezar</translation>
        </message>
        <message>
            <source>Turn on the camera</source>
            <comment>welcome.start</comment>
            <translation>Encender la cámara</translation>
        </message>
        <message>
            <source>Start the sample</source>
            <comment>welcome.start_demo</comment>
            <translation>Empezar el ejemplo</translation>
        </message>
        <message>
            <source>Time for your exercises</source>
            <comment>welcome.title</comment>
            <translation>Es hora de sus ejercicios</translation>
        </message>
        <message>
            <source>Turnpost watches through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and tells you when something is off.</source>
            <comment>welcome.what</comment>
            <translation>Turnpost mira por la cámara mientras usted hace los ejercicios que le ha dado su terapeuta. Cuenta, marca el ritmo y le avisa cuando algo no va bien.</translation>
        </message>
        <message>
            <source>A short sample clip takes the place of the camera. You see what a person at home would see: the set-up, an exercise, and the summary.</source>
            <comment>welcome.what_demo</comment>
            <translation>Un vídeo corto de ejemplo ocupa el lugar de la cámara. Usted ve lo que se vería en casa: la preparación, un ejercicio y el resumen.</translation>
        </message>
    </context>
</TS>
