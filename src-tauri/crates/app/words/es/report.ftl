# La mirada atrás y lo que sale de la aplicación. $n es una cantidad.

report-date = { $day } de { $month } de { $year }
report-nothing = No hay nada guardado en este tiempo.
report-no-title = Un levantamiento sin nombre
report-holder = La persona que usa este teléfono

## Dolor, según cuándo se preguntó

report-pain-before = Dolor antes de levantar
report-pain-during = Dolor al levantar
report-pain-next-morning = Dolor a la mañana siguiente

## Títulos

report-title-counted = Levantamientos
report-title-pain = Dolor
report-title-weeks = Semana a semana
report-title-ways = Formas de levantar
report-title-response = Días pesados
report-title-against = Contra el consejo
report-title-missing = Sin decir

## Frases de la mirada atrás

report-counted =
    { $days ->
        [one] { $done } hechas y { $left } que no se hicieron, en un día: { $last }.
       *[other] { $done } hechas y { $left } que no se hicieron, en { $days } días, del { $first } al { $last }.
    }
report-week = Semana desde el { $from }: { $lifted } en total, { $times } veces. Lo más pesado fue { $heaviest }.
report-week-unknown = Semana desde el { $from }: { $times } veces. No se sabe cuánto pesaba.
report-week-none = Semana desde el { $from }: nada.
report-change-less = { $kind }: menos. Al principio { $first } de 10, últimamente { $last }.
report-change-same = { $kind }: más o menos igual. Al principio { $first } de 10, últimamente { $last }.
report-change-more = { $kind }: más. Al principio { $first } de 10, últimamente { $last }.
report-trend-down = { $kind }: baja { $slope } puntos por semana (entre { $low } y { $high }).
report-trend-up = { $kind }: sube { $slope } puntos por semana (entre { $low } y { $high }).
report-trend-unclear = { $kind }: no está claro si sube o baja (de { $low } a { $high } puntos por semana).
report-trend-none-yet = Aún faltan días para decir hacia dónde va el dolor. Hacen falta { $need } días en dos semanas.
report-change-rule = Un cambio cuenta desde 2 puntos, o desde el 30 % (Ostelo 2008, dolor lumbar).
report-trend-not-yet = { $kind }: aún faltan días para decir hacia dónde va.
report-way = { $way } { $times }
report-ways = Formas usadas: { $list }. Reparto: { $even } de 100.
report-other-way = Hechas de otra forma que la mostrada primero: { $n } de { $of }.
report-response-more = Tras días más pesados hubo más dolor a la mañana siguiente: { $slope } puntos por { $mass } más. Entre { $low } y { $high }, con { $days } días. Puede tener otras causas. No es un límite.
report-response-less = Tras días más pesados hubo menos dolor a la mañana siguiente: { $slope } puntos por { $mass } más. Entre { $low } y { $high }, con { $days } días. Puede tener otras causas. No es un límite.
report-response-unclear = No hay un vínculo claro entre días pesados y dolor a la mañana siguiente ({ $days } días).
report-response-alike = El dolor a la mañana siguiente fue casi siempre igual: no se ve si los días pesados cambian algo.
report-response-not-yet = Aún faltan días para comparar días pesados y dolor a la mañana siguiente.
report-done-against =
    { $n ->
        [one] Hecho una vez aunque el consejo era no hacerlo.
       *[other] Hecho { $n } veces aunque el consejo era no hacerlo.
    }
report-done-unchanged =
    { $n ->
        [one] Hecho una vez donde el consejo era cambiar algo antes.
       *[other] Hecho { $n } veces donde el consejo era cambiar algo antes.
    }
report-done-without-aid =
    { $n ->
        [one] Hecho una vez aunque se aconsejaba antes un aparato o ayuda.
       *[other] Hecho { $n } veces aunque se aconsejaba antes un aparato o ayuda.
    }
report-flares =
    { $n ->
        [one] Un día con un brote.
       *[other] { $n } días con un brote.
    }
report-no-during = No se dijo el dolor al levantar en { $n } de { $of }.
report-no-morning = No se dijo la mañana siguiente en { $n } de { $of }.
report-no-mass = No se sabía cuánto pesaba en { $n } de { $of }.

## Una nota para pegar

report-page-title = Mirar atrás: cargas y dolor
report-page-made = Hecho el { $day } con Heftwell.
report-note-title = Heftwell, mirada atrás del { $day }
report-note-own = Lo cuenta la persona. Ningún profesional lo ha revisado.
report-note-of = Lo cuenta { $name } y lo entregó. Sin examen.
report-note-limits = Son notas de la propia persona. No muestran causas ni fijan límites.

## Un documento

report-document-title = Cargas y dolor, contado por la persona
report-section-history = Historial
report-section-limits = Límites
report-section-plan = Plan
report-plan-of = { $title }. De { $by }, versión { $version }.
report-goal-mass = No levantar más de { $mass }.
report-part-lift = Levantamiento
report-part-decision = Hecho o dejado
report-part-advised = Consejo mostrado
report-part-way = Forma de levantar
report-part-mass = Cuánto pesa
report-part-times = Cuántas veces

## Lo que sale

report-leaves-lifts =
    { $n ->
        [one] Una entrada de su historial: { $last }.
       *[other] { $n } entradas de su historial, del { $first } al { $last }.
    }
report-leaves-note = Un texto corto con cuentas, dolor y formas.
report-leaves-csv = Cada levantamiento en una fila, con qué era, el consejo y su dolor.
report-leaves-fhir = Cada levantamiento y cada dolor, en una forma que lee el programa de una clínica.
report-leaves-pdf = Una página con cuentas, dolor y formas.
report-stays = Su contraseña, sus respuestas sobre su salud y las señales de alarma.
report-leaves-theirs =
    { $n ->
        [one] Una entrada que entregó { $name }: { $last }.
       *[other] { $n } entradas que entregó { $name }, del { $first } al { $last }.
    }
report-stays-theirs = Lo que usted anotó y sus planes.
report-open = Esto no va sellado. Quien lo reciba puede leerlo.
