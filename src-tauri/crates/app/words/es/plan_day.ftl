# El plan día a día: práctica, el paso que se ofrece, un brote.

## Los pasos del clínico para un brote

plan-section-flare = En un brote
plan-field-flare-1 = Primero, en un brote
plan-field-flare-2 = Segundo, en un brote
plan-field-flare-3 = Tercero, en un brote

## El paso. $mass es el nivel, $more un paso.

plan-step-stay = Por ahora quédese en { $mass }.
plan-step-up = Puede probar { $more } más: { $mass }.
plan-step-down = Por ahora baje un paso: { $mass }.
plan-step-flare = Hoy tiene un brote: como máximo { $mass }.
plan-step-was-left = Dejó el paso que se ofreció. Vuelve después de que anote más práctica.
plan-step-ask = La regla del plan bajaría un paso. Pregunte a su clínico, que abre los pasos.
plan-step-need =
    { $count ->
        [one] Un día bueno más, y puede probar { $more } más.
       *[other] { $count } días buenos más, y puede probar { $more } más.
    }
plan-take-step-up = Subir el paso
plan-leave-step-up = Quedarme aquí
plan-take-step-down = Bajar un paso
plan-leave-step-down = Quedarme aquí

## Qué se practica

plan-item = Con { $mass }: { $sets } series de { $times }, { $days } días por semana.
plan-item-done = Anotado hoy.
plan-item-done-pain = Anotado hoy. Peor dolor: { $pain } de 10.
plan-item-left = Hoy lo dejó.

## Un brote

plan-home-flare = Hoy tiene un brote. Deje las cosas pesadas.
plan-flare-signs = Mire primero las señales de alarma.
plan-flare-leave = Deje las cosas pesadas uno o dos días.
plan-flare-move = Siga moviéndose un poco, según pueda.
plan-flare-ring = Llame a su clínico si en 7 días no mejora.
plan-flare-often = Es el segundo brote en dos semanas. Llame a su clínico.
plan-line-flare = En un brote

## El registro

plan-log-practice = Práctica
plan-log-no-level = sin nivel fijado
plan-log-done = { $way }, { $mass }
plan-log-left = Lo dejó: { $way }
plan-log-step-up = Un paso más, a { $mass }
plan-log-step-down = Un paso menos, a { $mass }
plan-log-offer-left = Se ofreció un paso y lo dejó
plan-log-flare = Un brote. Desde entonces: { $mass }
plan-log-pain = Peor dolor al practicar: { $pain } de 10.

## En la mirada atrás. $n es una cuenta.

report-title-practice = Práctica
report-title-progress = Cómo seguir con el plan
report-practice =
    { $days ->
        [0] Todavía no practicó nada.
        [one] Practicó { $times } veces en un día. El nivel es ahora { $mass }.
       *[other] Practicó { $times } veces en { $days } días. El nivel es ahora { $mass }.
    }
report-practice-left =
    { $n ->
        [one] Dejó la práctica una vez.
       *[other] Dejó la práctica { $n } veces.
    }
report-practice-flares =
    { $n ->
        [one] Se contó un brote.
       *[other] Se contaron { $n } brotes.
    }
report-progress-step-up = La regla del plan propone un paso más, de { $level } a { $next }.
report-progress-hold = La regla del plan propone quedarse en { $level }.
report-progress-step-down = La regla del plan propone un paso menos, de { $level } a { $next }.
report-progress-from = Días buenos seguidos de práctica: { $good } de { $need }. Mayor dolor al practicar: { $pain }. Calmado a la mañana siguiente: { $settled }.
report-progress-not-told = no se dijo
report-progress-yes = sí
report-progress-no = no
report-leaves-practice =
    { $n ->
        [one] Una nota sobre la práctica con el plan.
       *[other] { $n } notas sobre la práctica con el plan.
    }

# Partes del documento para el programa de una clínica.
report-part-sets = Series, según el plan
report-part-times-set = Veces por serie, según el plan
report-part-level = Nivel desde entonces
report-part-step = Paso según la regla del plan
report-part-flare = Brote
report-pain-practising = Dolor al practicar
