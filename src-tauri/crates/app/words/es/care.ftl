# Antes de mover a una persona: preguntas, respuesta, texto para la oficina y registro. "Usted" es quien trabaja.

## Preguntas

care-unhurt = La persona está en el suelo. ¿Se hizo daño?
care-unhurt-hint = No la mueva aún. Háblele y mire de la cabeza a los pies.
care-unhurt-look-1 = ¿Le contesta como siempre?
care-unhurt-look-2 = ¿Le duele la cabeza, el cuello, la espalda o la cadera?
care-unhurt-look-3 = ¿Hay sangre, o una pierna o un brazo con forma rara?
care-unhurt-look-4 = ¿Mueve brazos y piernas como antes?
care-unhurt-unhurt = No, miré y no tiene daño
care-unhurt-hurt = Sí, o puede ser
care-unhurt-not-looked = Aún no he mirado
care-unhurt-row = Daño
care-new = ¿Hay algo nuevo o que asuste hoy?
care-new-hint = Por ejemplo dolor, mareo, mucho sueño, falta de aire, una caída o una herida.
care-new-nothing = No, ni en la persona ni en mí
care-new-in-them = Sí, en la persona
care-new-they-say-no = La persona no quiere moverse ahora
care-new-in-me = Sí, en mí
care-signs = ¿Qué hay de nuevo en la persona?
care-same = ¿Sigue así hoy?
care-same-planned = ¿Está hoy como dice el plan de cuidado?
care-same-as-planned = Sí, todo
care-same-as-noted = Sí, todo
care-same-missing = Falta equipo o alguien
care-same-differs = No, la persona no está como dice el plan
care-same-changed = No, ha cambiado
care-differs = ¿Qué no es como dice el plan?
care-differs-hint = Solo lo que ve. La oficina lo va a leer.
care-differs-legs = Apoya menos peso en las piernas
care-differs-follows = Hoy no sigue los pasos
care-differs-arms = Tiene los brazos más débiles
care-differs-pain = Tiene más dolor
care-differs-lines = Tiene un tubo, yeso o vendaje nuevo
care-differs-weight = Pesa más de lo que dice el plan
care-differs-place = El cuarto, la cama o la silla no es igual
care-differs-something = Otra cosa
care-limb = ¿Qué sostiene?
care-limb-leg = Una pierna
care-limb-arm = Un brazo
care-limb-row = Se sostiene
care-independent = ¿Puede levantarse sola si usted dice cada paso?
care-independent-yes = Sí
care-independent-no = No
care-independent-row = Se levanta sola
care-able = ¿Cuánto puede hacer la persona?
care-able-fully = Todo
care-able-partly = Una parte
care-able-not = Nada
care-able-row = Hace por sí misma
care-legs = ¿Cuánto peso apoya en las piernas?
care-legs-full = Todo
care-legs-part = Una parte
care-legs-none = Nada
care-legs-row = Peso en las piernas
care-follows = ¿Sigue pasos sencillos?
care-follows-hint = Por ejemplo: inclínese, ahora empuje.
care-follows-yes = Sí
care-follows-unsure = No siempre, o no lo sé
care-follows-no = No
care-follows-row = Sigue pasos
care-arms = ¿Empuja fuerte con los dos brazos?
care-arms-hint = Lo bastante para subir un poco su asiento.
care-arms-yes = Sí
care-arms-no = No
care-arms-row = Brazos fuertes
care-help = ¿Cuánto levanta usted de la persona?
care-help-none = Nada, lo hace sola
care-help-steady-only = Nada, solo la sostengo
care-help-tenth = Un poco, como la décima parte
care-help-quarter = Como una cuarta parte
care-help-half = La mitad o más
care-help-unpredictable = Cambia de un momento a otro
care-help-row = Levantamos
care-mass = ¿Cuánto pesa la persona?
care-mass-hint = Basta un cálculo. Si duda, tome el más alto.
care-mass-row = Su peso
care-hold = ¿Cuánto tiempo lo sostiene?
care-hold-up-1-min = Hasta 1 minuto
care-hold-up-2-min = Hasta 2 minutos
care-hold-longer = Más tiempo
care-hold-row = Tiempo
care-reclines = ¿La silla se echa hacia atrás?
care-reclines-yes = Sí
care-reclines-no = No
care-reclines-row = Silla que se echa atrás
care-here = ¿Quién y qué hay aquí ahora?
care-here-hint = Marque solo lo que funciona y está listo.
care-here-second = Otra persona con formación
care-here-third = Una tercera persona con formación
care-here-row = Aquí
care-harder = ¿Algo lo hace más difícil?
care-harder-hint = Entonces el límite a mano es menor.
care-harder-arms-extended = Tengo los brazos estirados
care-harder-near-floor = Está cerca del suelo
care-harder-sitting-or-kneeling = Estoy sentado o de rodillas
care-harder-twisted = Tengo la espalda girada
care-harder-one-hand = Tengo solo una mano
care-harder-above-shoulder = Las manos están sobre los hombros
care-harder-tight-space = Hay poco sitio
care-harder-long-shift = Mi turno pasa de 8 horas
care-harder-row = Más difícil por
care-trained = ¿Para qué equipo tiene formación?
care-trained-hint = Se pregunta una vez. Nunca ofrecemos otro equipo. Puede cambiarlo después.
care-untrained = Usted no tiene formación para esto
care-line = { $label }: { $text }
care-equipment-row = Equipo aquí
care-move-unknown = Un movimiento
care-equipment-unknown = Algún equipo
care-noted = Anotado: { $day }

## Dibujos para distinguir

care-picture-kettle = Tetera
care-picture-leaf = Hoja
care-picture-boat = Barco
care-picture-star = Estrella
care-picture-house = Casa
care-picture-sun = Sol
care-picture-key = Llave
care-picture-cup = Taza
care-picture-tree = Árbol
care-picture-bird = Pájaro
care-picture-fish = Pez
care-picture-moon = Luna
care-picture-bell = Campana
care-picture-pear = Pera
care-picture-kite = Cometa
care-picture-lamp = Lámpara

## Usted hoy

care-own = Primero: ¿cómo está usted hoy?
care-own-text = Su espalda y sus rodillas también cuentan. Se pregunta una vez para unas horas.
care-own-private = Se queda en este teléfono. La oficina nunca lo recibe.
care-own-quick = No me duele nada, tengo buen equilibrio y puedo arrodillarme
care-own-sign = Primero: ¿qué hay de nuevo en usted?
care-own-sign-text = Ahora le preguntamos por señales de alarma. Luego volvemos aquí.
care-own-posture = Cálculo para este trabajo, de esta forma: { $way }. Explica, no es un límite.

## La respuesta

care-outcome-lift = Si decide seguir: { $way }
care-outcome-do-not-lift = Ahora no, y así no
care-outcome-catch = No la atrape. Guíe la caída.
care-outcome-seek-care = No la mueva. Pida ayuda ya.
care-outcome-own-sign = Usted necesita ayuda primero. Pida a otra persona que lo haga.
care-people =
    { $workers ->
        [0] Usted está al lado
        [one] 1 persona
       *[other] { $workers } personas
    }
care-limit = El límite publicado aquí: { $limit } de su peso por persona. No es una meta.
care-sure-plan = Esto sigue el plan de cuidado. Primero van su empresa y las reglas locales.
care-sure-published = Se basa en reglas publicadas para mover personas. Primero van su empresa y las reglas locales.
care-authority-plan = El plan de cuidado
care-guided-step-1 = Pies planos, o rodillas dobladas en la cama.
care-guided-step-2 = La persona empuja con los dos brazos cuando usted cuenta tres.
care-guided-step-3 = Diga el paso que sigue. No tire de un brazo.
care-guided-word-1 = Pies planos
care-guided-word-2 = Empujar
care-guided-word-3 = Sin tirar

## El plan de cuidado

care-plan-line =
    Plan de cuidado ({ $who }, { $day }): { $ways }. { $workers ->
        [none] Personas: no dice
       *[other] Personas: { $workers }
    }
care-plan-review = Debe revisarse hasta el { $day }.
care-plan-old = Ya pasó su fecha ({ $day }). Lo que permite ya no vale. Pida uno nuevo a la oficina.
care-plan-old-short = Ya pasó su fecha
care-plan-exception = Las fuentes no concuerdan en esta forma. Nombrarla aquí la permite.
care-give-nothing = No hay un plan de cuidado suyo para entregar. Primero anote uno.
care-give-old = Un plan de cuidado ya pasó su fecha. No se entregó nada. Primero revíselo.
care-by-office = la oficina
care-by-therapist = terapeuta
care-by-nurse = enfermería
care-by-doctor = médico
care-by-other = otra persona

## Texto para la oficina

care-office-title = Para la oficina
care-office-head = { $code }: { $what }
care-office-when = { $day }, { $time }
care-office-not-done = No hice este movimiento.
care-office-floor = La persona está en el suelo.
care-office-says-no = La persona no quiere moverse ahora.
care-office-signs = Nuevo hoy: { $signs }
care-office-differs = No es como dice el plan: { $what }
care-office-not-as-planned = La persona no está hoy como dice el plan.
care-office-wanted = Esto lo haría posible: { $way }. { $equipment }. Personas: { $workers }
care-office-untrained = No tengo formación para: { $equipment }
care-office-ask = Por favor, díganme cómo seguir.

## El registro

care-result-done = hecho
care-result-not-done = no hecho
care-result-near-miss = casi accidente
care-result-refused = no hecho, y se preguntó a la oficina
care-entry = { $time } { $code }, { $what }: { $result }
care-entry-helped = Lo que ayudó: { $what }
care-told-copied = Texto copiado para la oficina
care-told-shared = Texto enviado a la oficina
care-told-said = Oficina avisada en persona o por teléfono
care-seen-too-heavy = Pesaba más de lo pensado.
care-helped-talked = Dije cada paso
care-helped-slower = Fuimos más despacio
care-helped-second-worker = Otra persona de ayuda
care-helped-equipment = El equipo
care-helped-bed-raised = Una cama o silla más alta
care-helped-room = Más sitio
care-helped-rest-first = La persona descansó antes
care-helped-pause = Una pausa en medio

## El turno

care-shift-title = Turno del { $day }, desde las { $time }
care-shift-count = Movimientos: { $all }. Casi accidentes y negativas: { $proofs }
care-shift-erased = Borrado: { $plain }. Además casi accidentes y negativas: { $proofs }
