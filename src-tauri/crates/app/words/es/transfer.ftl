# Mover a una persona. "Usted" es quien trabaja, "la persona" es a quien se mueve. Un valor desconocido es la palabra none.

## Formas de mover a una persona

way-stand-by = Estar al lado
way-stand-by-gloss = La persona lo hace. Usted está cerca y no levanta nada.
way-stand-by-cue-1 = Póngase a su lado más débil.
way-stand-by-cue-2 = Diga un paso cada vez.
way-stand-by-cue-3 = Tenga las manos libres y listas.
way-stand-by-word-1 = Cerca
way-stand-by-word-2 = Sin levantar
way-stand-by-word-3 = Paso a paso
way-stand-pivot-belt = De pie y girar, con cinturón
way-stand-pivot-belt-gloss = La persona se pone de pie. El cinturón sostiene, no levanta.
way-stand-pivot-belt-cue-1 = Ajuste bien el cinturón. Pies planos, rodillas dobladas.
way-stand-pivot-belt-cue-2 = La persona se inclina y empuja cuando usted cuenta tres.
way-stand-pivot-belt-cue-3 = Gire a pasos cortos hacia su lado más fuerte.
way-stand-pivot-belt-word-1 = Inclinarse
way-stand-pivot-belt-word-2 = Empujar
way-stand-pivot-belt-word-3 = Pasos cortos
way-stand-aid = Ayuda para ponerse de pie
way-stand-aid-gloss = El aparato levanta. La persona apoya parte de su peso.
way-stand-aid-cue-1 = Pies en la base, rodillas contra el apoyo.
way-stand-aid-cue-2 = Ponga la faja. La persona agarra la barra.
way-stand-aid-cue-3 = Suba despacio, y pare si se suelta.
way-stand-aid-word-1 = Pies planos
way-stand-aid-word-2 = Agarrarse
way-stand-aid-word-3 = Subir despacio
way-slide-board = Tabla para deslizar
way-slide-board-gloss = La persona va sentada y se desliza con los brazos.
way-slide-board-cue-1 = Quite el brazo de la silla de ese lado. Frenos puestos.
way-slide-board-cue-2 = Ponga la tabla bien debajo de un muslo.
way-slide-board-cue-3 = La persona empuja y se desliza poco a poco. Usted sostiene.
way-slide-board-word-1 = Brazo fuera
way-slide-board-word-2 = Tabla debajo
way-slide-board-word-3 = Poco a poco
way-hoist-two = Grúa, dos personas
way-hoist-two-gloss = La grúa levanta. Uno la maneja y otro guía a la persona.
way-hoist-two-cue-1 = Mire la faja, la talla y cada lazo.
way-hoist-two-cue-2 = Suba un poco, pare y mire otra vez.
way-hoist-two-cue-3 = Uno maneja la grúa. Otro está con la persona.
way-hoist-two-word-1 = Mirar lazos
way-hoist-two-word-2 = Subir despacio
way-hoist-two-word-3 = Al lado
way-slide-sheet-two = Sábana para deslizar, dos o más
way-slide-sheet-two-gloss = La persona se desliza en la sábana. Nadie levanta.
way-slide-sheet-two-cue-1 = Cama plana, a la altura de su codo.
way-slide-sheet-two-cue-2 = Uno a cada lado. Nadie tira desde la cabecera.
way-slide-sheet-two-cue-3 = A la de tres, mueva su peso y deslice.
way-slide-sheet-two-word-1 = Cama plana
way-slide-sheet-two-word-2 = A cada lado
way-slide-sheet-two-word-3 = Deslizar
way-guided-self-rise = Se levanta y usted guía
way-guided-self-rise-gloss = La persona usa su fuerza. Usted dice cada paso.
way-guided-self-rise-cue-1 = Ponga una silla firme a su lado.
way-guided-self-rise-cue-2 = La persona se gira de lado y empuja con los brazos.
way-guided-self-rise-cue-3 = Diga el paso que sigue. No tire de un brazo.
way-guided-self-rise-word-1 = Silla firme
way-guided-self-rise-word-2 = Empujar
way-guided-self-rise-word-3 = Sin tirar
way-manual-lift = A mano, dentro del límite
way-manual-lift-gloss = La sostiene cerca, con las dos manos, poco tiempo.
way-manual-lift-cue-1 = Suba antes la cama, o siéntese a su lado.
way-manual-lift-cue-2 = Sostenga bajo las articulaciones, cerca del cuerpo.
way-manual-lift-cue-3 = Apoye el peso en cuanto pueda.
way-manual-lift-word-1 = Dos manos
way-manual-lift-word-2 = Cerca
way-manual-lift-word-3 = Apoyar pronto

## Movimientos

move-bed-to-chair = De la cama a la silla
move-chair-to-bed = De la silla a la cama
move-chair-to-toilet = De la silla al inodoro
move-toilet-to-chair = Del inodoro a la silla
move-chair-to-chair = De una silla a otra
move-chair-to-wheelchair = Silla y silla de ruedas
move-car = Entrar o salir del coche
move-up-in-bed = Subir en la cama
move-turn-in-bed = Girar en la cama
move-sit-up = Sentarse
move-up-in-chair = Subir en la silla
move-lateral = De lado a otra cama
move-floor-to-chair = Levantarse del suelo
move-hold-limb = Sostener una pierna o un brazo
move-stockings = Poner medias
move-shoes = Poner zapatos
move-wash-low = Lavar abajo
move-catch = Atrapar a quien se cae

## Equipo

equipment-belt = Cinturón
equipment-slide-board = Tabla para deslizar
equipment-stand-aid = Ayuda para ponerse de pie
equipment-hoist = Grúa y faja
equipment-slide-sheet = Sábana para deslizar
equipment-removable-arm-chair = Silla con un brazo que se quita
equipment-car-hoist = Grúa para el coche
equipment-lateral-aid = Tabla para pasar de cama a cama
equipment-limb-sling = Faja para una pierna o un brazo
equipment-foot-stool = Banquito para el pie
equipment-adjustable-bed = Cama que sube

## Señales nuevas de la persona

client-sign-new-hip-pain = Dolor nuevo en la cadera o la ingle
client-sign-head-knock = Un golpe en la cabeza
client-sign-neck-pain = Dolor nuevo en el cuello o la espalda tras caerse
client-sign-odd-shape = Un brazo o una pierna tiene una forma rara
client-sign-bleeding = Sangra mucho
client-sign-severe-pain = Dolor nuevo muy fuerte
client-sign-passed-out = Se desmayó, o no se despierta
client-sign-fit = Tuvo un ataque
client-sign-stroke-signs = Cara caída, brazo débil o habla rara
client-sign-chest-pain = Dolor en el pecho
client-sign-breathless = Le falta el aire
client-sign-drowsy = Mucho sueño
client-sign-confused = Está confusa
client-sign-dizzy = Está mareada
client-sign-weaker = Más débil que antes
client-sign-fell = Se cayó desde la última visita
client-sign-fever = Fiebre, o se siente muy mal
client-sign-resists = Se resiste
client-sign-new-wound = Una herida, llaga o bulto nuevo
client-sign-other = Otra señal nueva

## Mire esto antes

move-check-agrees = Pregúntele. Diga qué va a hacer.
move-check-brakes = Frenos puestos en los dos lados.
move-check-floor-clear = Suelo seco y libre, con sitio para girar.
move-check-shoes = Zapatos que no resbalan, suyos y de la persona.
move-check-lines = Tubos, sueros y yesos apartados.
move-check-device-ready = Con carga, en fecha y de la talla justa.
move-check-rated-load = Lea el peso máximo en la etiqueta.
move-check-chair-arm-off = Quite el brazo de la silla de ese lado.
move-check-stronger-side = El lado más fuerte va primero.
move-check-bed-height = Cama plana, a la altura de su codo.
move-check-level-surfaces = Las dos camas al mismo nivel y con freno.
move-check-count-together = Todos a la de tres.
move-check-looked-over = Mire de pies a cabeza: dolor, sangre o una forma rara.
move-check-firm-furniture = Ponga una silla firme cerca.

## Pare cuando

move-stop-says-stop = La persona dice basta.
move-stop-new-pain = Tiene un dolor nuevo.
move-stop-dizzy-pale = Está mareada, pálida o le falta el aire.
move-stop-legs-give = Le fallan las piernas.
move-stop-resists = Se resiste, o ya no sigue los pasos.
move-stop-line-pulls = Un tubo o un suero tira.
move-stop-device-fails = Se corre el cinturón, o falla un freno o la batería.
move-stop-own-pain = Su espalda da un tirón, o su dolor es 6 o más.
move-stop-too-heavy = Usted carga más peso de lo que creía.
move-stop-not-as-planned = No va como estaba previsto.

## Qué más hacer

move-else-wait-for-help = Que esté a gusto y sin frío hasta que llegue ayuda.
move-else-use-equipment = Pida a la oficina el equipo que falta.
move-else-call-clinician = Llame a su enfermera, médico o terapeuta.
move-else-ask-person = Pida a otro que haga su parte.
move-else-leave-it = Déjelo por ahora y pregunte luego.
move-else-long-tool-or-sit = Siéntese para hacerlo, o use un mango largo.
move-else-follow-surgeon-limit = Siga el límite escrito de su cirujano.

## Señales y a quién podemos aconsejar

because-client-sign-emergency = la persona tiene una señal que pide ayuda ya
reason-client-sign-emergency =
    { $what ->
        [new_hip_pain] Un dolor nuevo en la cadera puede ser un hueso roto.
        [head_knock] Se dio un golpe en la cabeza.
        [stroke_signs] Puede ser un ataque al cerebro.
        [chest_pain] Le duele el pecho.
        [breathless] Le falta el aire.
       *[none] Tiene una señal nueva que puede ser grave.
    } No la mueva. Pida ayuda ya.
because-client-sign-today = la persona no está como antes
reason-client-sign-today =
    { $what ->
        [drowsy] Hoy tiene mucho sueño.
        [confused] Hoy está confusa.
        [dizzy] Hoy está mareada.
        [weaker] Hoy está más débil.
        [fell] Se cayó desde la última visita.
        [fever] Tiene fiebre o se siente muy mal.
        [resists] Se resiste.
        [new_wound] Tiene una herida o llaga nueva.
       *[none] Hoy tiene una señal nueva.
    } Déjela donde está y avise hoy a la oficina.
because-floor-hurt = está en el suelo y puede estar herida
reason-floor-hurt = Está en el suelo y puede estar herida. No la mueva. Que no pase frío, y pida ayuda ya.
because-floor-not-checked = nadie ha mirado aún si está herida
reason-floor-not-checked = Mire antes de pies a cabeza. Hasta entonces contamos con que está herida.
because-worker-is-child = usted tiene menos de 16 años
reason-worker-is-child = Usted tiene menos de 16 años. Lo debe hacer un adulto que sepa.
because-client-says-no = la persona no quiere
reason-client-says-no = La persona dijo que no. Eso va primero.

## El plan de cuidado

because-care-plan-differs = hoy no es como dice el plan
reason-care-plan-differs = Hoy la persona no está como dice el plan. Por eso el plan no vale para esto.
because-care-plan-covers = el plan de cuidado lo incluye
reason-care-plan-covers = El plan de cuidado incluye este movimiento.
because-care-plan-old = el plan de cuidado ya pasó su fecha
reason-care-plan-old = El plan de cuidado ya pasó su fecha. Lo que prohíbe sigue valiendo. Lo que permitía, no.
because-care-plan-none = ningún plan de cuidado lo incluye
reason-care-plan-none = Ningún plan de cuidado incluye esto. En su lugar valen reglas publicadas.
because-care-plan-other-way = el plan de cuidado nombra otra forma
reason-care-plan-other-way = El plan de cuidado dice cómo se hace. Otras formas quedan fuera.
because-care-plan-more-workers = el plan de cuidado pide { $people } personas
reason-care-plan-more-workers = El plan de cuidado pide { $people } personas. Aquí hay menos.
because-belt-by-plan = el plan de cuidado incluye el cinturón
reason-belt-by-plan = Las fuentes no coinciden sobre el cinturón. El plan incluye esto, y así puede sostener. Nunca levanta.
because-hands-by-plan = el plan nombra a dos que levantan a mano
reason-hands-by-plan = Las fuentes no coinciden sobre levantar a mano entre dos. El plan lo nombra.

## Cuánto peso sería para usted

because-share-within-limit = su parte está dentro del límite publicado
reason-share-within-limit = Su parte es de unos { $share }. El límite publicado aquí es { $limit } por cada uno. No es una meta.
because-share-over-limit = su parte pasa del límite publicado
reason-share-over-limit =
    Su parte es de unos { $share }. El límite publicado aquí es { $limit } por cada uno. { $people ->
        [none] Use equipo.
       *[other] A mano harían falta { $people }. Use equipo.
    }
because-share-not-known = nadie sabe cuánto levantaría usted
reason-share-not-known = Nadie sabe cuánto de su peso sería para usted. Por eso contamos con equipo.
because-client-mass-not-known = no se sabe su peso
reason-client-mass-not-known = No se sabe su peso. La parte de usted puede pasar del límite.
because-limit-lowered = algo aquí le baja el límite
reason-limit-lowered =
    { $what ->
        [arms_extended] Tiene los brazos estirados.
        [near_floor] Está cerca del suelo.
        [sitting_or_kneeling] Usted está sentado o de rodillas.
        [twisted] Tiene la espalda girada.
        [one_hand] Tiene una mano para ello.
        [above_shoulder] Sus manos están más altas que los hombros.
        [tight_space] Hay poco sitio.
        [long_shift] Su turno es largo.
        [long_hold] Lo sostendría más de un minuto.
        [own_back] Le duele la espalda.
        [own_legs] Le duele mucho una rodilla o una cadera, o no se sabe.
        [own_bones] Sus huesos son débiles.
        [own_pregnancy] Está embarazada.
       *[none] Algo lo hace más difícil.
    } Por eso su límite aquí es { $limit }. Cuánto baja es regla nuestra.
because-limit-needs-following = no sigue pasos sencillos
reason-limit-needs-following = El límite vale para quien sigue los pasos y no se mueve de golpe.
because-limb-mass = de lo que pesa un brazo o una pierna
reason-limb-mass =
    { $what ->
        [leg] Una pierna suya pesa unos { $share }.
        [arm] Un brazo suyo pesa unos { $share }.
       *[none] La parte que sostiene pesa unos { $share }.
    }
because-held-too-long = lo sostendría demasiado tiempo
reason-held-too-long = Lo sostendría más de 2 minutos. Ahí acaban los límites publicados. Apóyelo en algo.
because-check-rated-load = pesa mucho
reason-check-rated-load = Pesa mucho. Lea antes el peso máximo en el equipo.
because-low-work-too-much = tan abajo es demasiado para usted
reason-low-work-too-much = Tan abajo es más de lo que permiten hoy los límites para usted. Suba la cama o siéntese.

## Por qué una forma vale o no

because-worker-bears-nothing = hoy su cuerpo dice que no
reason-worker-bears-nothing =
    { $what ->
        [back] Hoy su espalda no está para levantar a nadie.
        [back_not_asked] No se sabe cuánto le duele la espalda. Contamos con que mucho.
        [shoulders] Le duelen mucho los hombros.
        [balance] Hoy tiene poco equilibrio.
        [balance_not_asked] No se sabe cómo está de equilibrio. Contamos con que mal.
        [hernia] Usted tiene una hernia.
       *[none] Hoy su cuerpo no está para ello.
    } Usted no carga nada de su peso.
because-legs-do-not-carry = sus piernas no aguantan bastante peso
reason-legs-do-not-carry =
    { $what ->
        [part] Solo apoya parte de su peso.
        [none] No apoya peso en las piernas.
       *[not_asked] Nadie sabe si sus piernas aguantan peso.
    } Algunas formas piden más.
because-does-not-follow = no sigue pasos sencillos
reason-does-not-follow =
    { $what ->
        [no] No sigue pasos sencillos.
       *[none] Nadie sabe bien si sigue pasos sencillos.
    } Algunas formas lo piden.
because-arms-not-strong = sus brazos no son bastante fuertes
reason-arms-not-strong =
    { $what ->
        [no] Sus brazos no son fuertes.
       *[none] Nadie sabe si sus brazos son fuertes.
    } Algunas formas lo piden.
because-cannot-alone = no puede sola
reason-cannot-alone = Hoy la persona no puede sola.
because-help-unpredictable = la ayuda que pide cambia
reason-help-unpredictable = La ayuda que pide cambia todo el tiempo. Por eso no contamos con la suya.
because-belt-alone = usted no tiene a nadie, y las fuentes no coinciden
reason-belt-alone = Las fuentes no coinciden sobre el cinturón. Usted está sin nadie más y sin plan. Vale la más dura.
because-no-lift-by-hand = a las personas no se las levanta a mano
reason-no-lift-by-hand = A las personas no se las levanta a mano, salvo si el plan lo nombra.
because-chair-does-not-recline = la silla no se echa atrás
reason-chair-does-not-recline = La silla no se echa atrás. No hay dónde deslizar.
because-never-from-floor = a nadie se le levanta del suelo a mano
reason-never-from-floor = Nunca levante a mano a nadie del suelo.
because-never-catch = usted no puede parar una caída
reason-never-catch = No intente atrapar a quien se cae. Aparte cosas de su cabeza y llame.
because-equipment-missing = aquí no está el equipo para ello
reason-equipment-missing =
    { $what ->
        [belt] Un cinturón
        [slide_board] Una tabla para deslizar
        [stand_aid] Una ayuda para ponerse de pie
        [hoist] Una grúa
        [slide_sheet] Una sábana para deslizar
        [removable_arm_chair] Una silla con un brazo que se quita
        [car_hoist] Una grúa para el coche
        [lateral_aid] Una tabla entre camas
        [limb_sling] Una faja para pierna o brazo
       *[none] Algún equipo
    } no está aquí, o usted no aprendió a usarlo.
because-too-few-workers = hacen falta { $people } personas
reason-too-few-workers = Hacen falta { $people } personas. Aquí hay menos.
because-stand-by-suits = la persona puede sola
reason-stand-by-suits = La persona puede sola. Esté cerca y no levante nada.
because-stand-aid-suits = apoya parte de su peso y sigue los pasos
reason-stand-aid-suits = Apoya parte de su peso y sigue los pasos. El aparato levanta.
because-belt-suits = apoya parte de su peso y sigue los pasos
reason-belt-suits = Apoya parte de su peso y sigue los pasos. Un cinturón la sostiene al girar.
because-slide-board-suits = sus brazos son fuertes y sigue los pasos
reason-slide-board-suits = Sus brazos son fuertes y sigue los pasos. Puede deslizarse por una tabla.
because-hoist-suits = aquí hay una grúa y dos personas
reason-hoist-suits = Aquí hay una grúa y dos personas. La grúa levanta.
because-slide-sheet-suits = aquí hay una sábana y gente bastante
reason-slide-sheet-suits = Con una sábana para deslizar y gente bastante, nadie levanta.
because-self-rise-suits = no está herida y se levanta sola
reason-self-rise-suits = No está herida y se levanta sola. Usted guía, paso a paso.
because-guided-suits = la persona hace casi todo
reason-guided-suits = La persona hace casi todo. Usted guía, y ella usa sus brazos.
because-hold-suits = pesa poco y es por poco tiempo
reason-hold-suits = Pesa poco y es por poco tiempo, según los límites publicados.
because-no-move-left = ahora nada aquí la puede mover
reason-no-move-left = Con lo que hay y con quien está, ahora no hay forma de moverla.

## Avisos

caution-check-injury-first = Mire antes si está herida, de pies a cabeza.
caution-no-manual-floor-lift = Nunca levante a mano a nadie del suelo.
caution-client-changed-report = La persona ha cambiado. Avise a la oficina antes de seguir.
caution-over-35lb-equipment = Si va a cargar más de 15,9 kg (35 lb) de su peso, use equipo.
caution-two-workers = Para esto hacen falta dos personas o más.
caution-worker-own-body = Hoy su propio cuerpo pone el límite.
caution-stronger-side = Muévala hacia su lado más fuerte.
caution-report-to-office = Diga a la oficina qué falta o qué no es como en el plan.

## Fuentes

source-osha-3182 = Guía para residencias de ancianos: OSHA 3182, 2009
source-vha-2014 = Algoritmos para mover pacientes: Veterans Health Administration, 2014
source-va-care-form = Criterios y plan de cuidado: Veterans Affairs
source-waters-2007 = Cuándo se puede levantar a mano: Waters, 2007
source-aorn-2011 = Sostener un brazo o una pierna: Waters y otros, AORN Journal, 2011
source-limb-mass = Lo que pesa un brazo o una pierna: Waters y otros, 2009 y 2011
source-after-fall = Qué hacer tras una caída: páginas de salud pública
