# Planes: patrones para empezar, la página para cambiar uno, y un plan en palabras simples.

## Starting patterns, by pattern id

plan-pattern-sore-back = Una espalda que duele
plan-pattern-sore-back-text = La espalda duele al levantar y se calma al otro día.
plan-pattern-after-flare = Después de un brote
plan-pattern-after-flare-text = La espalda estuvo mal hace poco. Muy liviano y pocas veces.
plan-pattern-sore-knee = Una rodilla que duele
plan-pattern-sore-knee-text = Doblar mucho una rodilla duele. La cadera hace el trabajo.
plan-pattern-both-knees = Duelen las dos rodillas
plan-pattern-both-knees-text = Doblar mucho y arrodillarse duele. La cadera hace el trabajo.
plan-pattern-back-and-knees = Duelen la espalda y las rodillas
plan-pattern-back-and-knees-text = Duele la espalda y también doblar mucho las rodillas. Cosas livianas, mejor desde la cintura.
plan-pattern-sore-hip = Una cadera que duele
plan-pattern-sore-hip-text = Doblar la cadera duele. El cuerpo recto y la carga cerca.
plan-pattern-after-surgery = Después de una operación
plan-pattern-after-surgery-text = Solo con el límite escrito del cirujano. Ponga ese límite.
plan-pattern-thin-bones = Huesos frágiles
plan-pattern-thin-bones-text = Huesos que se rompen con poco. La espalda larga y cargas livianas.
plan-pattern-older-unsteady = Mayor y con poco equilibrio
plan-pattern-older-unsteady-text = El equilibrio es malo. Los dos pies en el suelo, cosas livianas, nada sobre una pierna.
plan-pattern-stiff-healing = Rigidez, y sana bien
plan-pattern-stiff-healing-text = Queda poco dolor, pero cuesta doblarse. Dos formas de practicar, un poco cada vez.
plan-pattern-building-up = Volver a más
plan-pattern-building-up-text = El dolor bajó. Paso a paso a cosas más pesadas.
plan-pattern-heavy-job = Un trabajo pesado
plan-pattern-heavy-job-text = De vuelta al trabajo con cosas pesadas. Primero ayuda o un carrito; luego, cerca.

## What to think of while lifting

plan-cue-close = Téngalo cerca del cuerpo.
plan-cue-slow = Vaya despacio.
plan-cue-long-back = Mantenga la espalda larga.
plan-cue-hips-back = Lleve la cadera hacia atrás.
plan-cue-kneel = Ponga una rodilla en el suelo y abrácelo.
plan-cue-hand = Apoye una mano en algo firme.
plan-cue-breathe = Suelte el aire al levantar.
plan-cue-raise = Tenga a la altura de la cintura lo que usa.
plan-cue-wide = Ponga los pies bien separados.
plan-cue-ask = Pida antes ayuda o un carrito.
plan-cue-no-twist = Gire con los pies, no con la espalda.
plan-cue-stop = Pare si el dolor sube de golpe.

## Why a way is ruled out

plan-why-bend = Doblar la espalda con peso le duele ahora.
plan-why-fold-back = Ir hacia delante es lo más duro para la espalda.
plan-why-deep-knee = Doblar mucho las piernas le duele.
plan-why-kneel = Estar de rodillas le duele.
plan-why-one-leg = Una sola pierna lleva todo.
plan-why-get-up = Levantarse de una rodilla pide buen equilibrio.
plan-why-unsteady = Sobre una pierna se puede caer.
plan-why-heavy = Sus cargas pesan demasiado para redondear la espalda.
plan-why-surgery = Su médico aún no lo deja.
plan-why-bones = Doblar la espalda con peso es duro para sus huesos.

## Notes for the person

plan-note-flare = En un brote, deje las cosas pesadas un día o dos y siga en movimiento. Luego empiece con más o menos la mitad.
plan-note-fall = Si se cae, o casi se cae, dígaselo a su clínico.
plan-note-job = Las reglas del trabajo van antes que este plan.
plan-note-surgeon = La carta de su cirujano va antes que este plan.
plan-note-vary = Cambie de vez en cuando la forma de levantar.

## The page to edit a plan

plan-untitled = Plan
plan-not-set = Sin poner
plan-yes = Sí
plan-no = No
plan-page-house = Todos los números son una regla de la casa para empezar. Cambie lo que no encaje.
plan-section-whom = Para quién es
plan-section-limits = Cuánto y cuántas veces
plan-section-pain = Dolor
plan-section-ways = Formas de levantar
plan-section-cues = En qué pensar
plan-section-practice = Práctica
plan-section-progress = Cómo seguir
plan-section-notes = Notas
plan-field-for = Para quién
plan-field-title = Cómo se llama el plan
plan-field-review-on = Mirarlo otra vez antes del
plan-field-call = A quién llamar
plan-call-hint = Quién y cuándo: un nombre, un número y horas. La app no llama.
plan-field-grace-weeks = Semanas que siguen los límites después
plan-field-ceiling = Lo máximo en cualquier caso
plan-field-ceiling-floor = Lo máximo desde el suelo
plan-field-ceiling-shin = Lo máximo desde media pierna
plan-field-ceiling-knee = Lo máximo desde las rodillas
plan-field-ceiling-waist = Lo máximo desde la cintura
plan-field-ceiling-chest = Lo máximo desde el pecho
plan-field-ceiling-overhead = Lo máximo desde arriba de la cabeza
plan-field-times-a-bout = Veces seguidas
plan-field-bouts-a-day = Tandas al día
plan-field-pain-ceiling = No levantar con dolor de más de
plan-field-next-morning = A la mañana siguiente
plan-field-bands-for = Partes con sus propios números de dolor
plan-field-preferred = Usar primero
plan-field-not-allowed = No usar
plan-field-why-upright = Por qué no
plan-field-why-hinge = Por qué no
plan-field-why-squat = Por qué no
plan-field-why-lunge = Por qué no
plan-field-why-free-bend = Por qué no
plan-field-why-golfer = Por qué no
plan-why-label = Por qué no: { $way }
plan-field-cue-1 = Lo primero en que pensar
plan-field-cue-2 = Lo segundo en que pensar
plan-field-cue-3 = Lo tercero en que pensar
plan-practice-way =
    { $place ->
        [1] Primera forma de practicar
        [2] Segunda forma de practicar
       *[other] Tercera forma de practicar
    }
plan-practice-load = { $way }: con cuánto
plan-practice-sets = { $way }: series
plan-practice-times = { $way }: veces en cada serie
plan-practice-days = { $way }: días por semana
plan-practice-none = Ninguna
plan-field-step = Un paso
plan-field-good-days = Días buenos antes de subir
plan-field-hold-from = Esperar desde este dolor
plan-field-back-over = Volver atrás con más de este dolor
plan-field-locked = Solo yo permito pasos
plan-field-notes = Notas
plan-field-why-private = Razón privada
plan-private-hint = Esto se queda en este teléfono y no va en ningún papel. Puede cambiarlo hasta que entregue la versión.
plan-field-why = Por qué esta versión

## Where pain begins to count as moderate and as strong, by part of the body

plan-region-back = Espalda
plan-region-knee-left = Rodilla izquierda
plan-region-knee-right = Rodilla derecha
plan-region-hip-left = Cadera izquierda
plan-region-hip-right = Cadera derecha
plan-region-shoulders = Hombros
plan-bands-moderate = { $region }: medio desde
plan-bands-severe = { $region }: fuerte desde
plan-bands-hint = El dolor cuenta como medio desde 4 y como fuerte desde 7. No hay acuerdo sobre estos números (Boonstra 2016). Ponga otros si le van mejor a esta persona.
plan-bands = { $region }: dolor medio desde { $moderate }, dolor fuerte desde { $severe }.

## Parts that do not fit together

plan-against-preferred = Una forma no puede ir primero y estar prohibida. No se cambió nada. Quite una de las dos marcas.
plan-against-practice-way = Lo que se practica quedaría prohibido. No se cambió nada. Elija otra forma de practicar.
plan-against-practice-twice = Una forma se practicaría dos veces. No se cambió nada. Elija otra forma.
plan-against-practice-load = La práctica pesaría más que el límite. No se cambió nada. Baje la práctica o suba el límite.
plan-against-step = Un paso sería mayor que el límite. No se cambió nada. Haga el paso más chico.
plan-against-height = Una altura permitiría más que el límite general. No se cambió nada. Baje esa altura o suba el límite.
plan-against-back = Volver atrás llegaría antes que esperar. No se cambió nada. Espere con menos dolor.
plan-against-bands = El dolor fuerte debe empezar en un número más alto que el medio. No se cambió nada. Cambie antes el otro número.
plan-against-past = La fecha para mirar este plan otra vez ya pasó. No se mostró nada. Elija otra fecha.

## A plan in plain words

plan-for = Para { $name }.
plan-from = De { $name }
plan-from-unverified = Dice ser de { $name }
plan-version = Versión { $version }, { $day }
plan-version-none = Aún no se pasó a nadie
plan-review = Mirarlo otra vez antes del { $day }
plan-expired =
    La fecha de este plan ya pasó. Sus límites siguen { $weeks } más desde ese día. Pida uno nuevo.
plan-line-limits = Cuánto
plan-line-often = Cuántas veces
plan-line-pain = Dolor
plan-line-bands = Cómo cuenta el dolor
plan-line-preferred = Usar primero
plan-line-not-allowed = No usar
plan-line-cues = Pensar en
plan-line-practice = Práctica
plan-line-progress = Cómo seguir
plan-line-call = A quién llamar
plan-call = A quién llamar: { $call }
plan-line-why = Por qué esta versión
plan-line-notes = Notas
plan-limit-any = Como máximo { $mass }.
plan-limit-from = Como máximo { $mass } { $start }.
plan-often-bout =
    { $count ->
        [one] { $count } vez seguida.
       *[other] Hasta { $count } veces seguidas.
    }
plan-often-day =
    { $count ->
        [one] { $count } tanda al día.
       *[other] Hasta { $count } tandas al día.
    }
plan-often-noted = Hoy van { $count }.
plan-pain-ceiling = No levantar con dolor de más de { $pain } de 10.
plan-morning-back-to-usual = A la mañana siguiente está como siempre.
plan-morning-no-worse = A la mañana siguiente no está peor que antes.
plan-ruled-out = { $way }.
plan-ruled-out-why = { $way }: { $why }
plan-practice = { $way } con { $mass }: { $sets } series de { $times }, { $days } días por semana.
plan-progress-locked = Un paso más solo si su clínico lo dice.
plan-progress-step = Después de { $days } días buenos, { $mass } más.
plan-progress-hold = Espere con dolor de { $pain } o más.
plan-progress-back = Un paso atrás con dolor de más de { $pain }.
plan-card = Su plan: { $title }. { $from }.
plan-heaviest = Con el plan, hoy como máximo { $mass }.
plan-day-good = Bueno
plan-day-usual = Normal
plan-day-bad = Malo
plan-preview-day =
    { $day ->
        [good] Un día bueno:
        [bad] Un día malo:
       *[usual] Un día normal:
    } espalda { $back }, rodillas { $knees }, espalda estable y buen equilibrio. Pegado al cuerpo, y una vez si no dice cuántas. Los números son una regla de la casa. Son las palabras que leería la persona: "usted" es esa persona.

## Un plan en papel
sheet-whose = Para { $whom }, de { $by }. Versión { $version }.
sheet-with-symbol = Un símbolo que solo abre el teléfono de { $name }.
sheet-without-symbol = Sin símbolo: la hoja es solo para leer.
sheet-symbol = Solo para el teléfono de { $name }: abra Heftwell, elija escanear y ponga la cámara encima. Se abre hasta el { $day }.
sheet-symbol-too-long = Este plan es demasiado largo para un símbolo en papel. Entréguelo en la pantalla.
sheet-stays = Sus notas sobre la persona, las razones privadas, las versiones de antes y lo que le contó.
sheet-open = Las palabras de la hoja no van selladas. Quien tenga la hoja puede leerlas.
sheet-stop = Pare si el dolor sube de golpe, siente raras las piernas, se marea o le falta el aire. Entonces pida ayuda.
sheet-limits = Este plan se hizo para una sola persona. Ayuda a elegir y no sustituye un consejo.
