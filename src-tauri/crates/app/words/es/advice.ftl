# El consejo. Frases cortas, palabras sencillas, de usted. Un valor desconocido es la palabra none.

## Qué hacer: titulares, por id de resultado

outcome-lift = Si decide levantarlo: { $way }
outcome-lift-with-change = Primero cambie algo
outcome-do-not-lift = No lo levante así como está
outcome-seek-care =
    { $urgency ->
        [emergency] Pida ayuda de emergencia ahora
       *[same_day] Pida consejo médico hoy
    }
outcome-refuse = Aquí no le podemos dar consejo. Otros sí pueden.

## Líneas que van en cada consejo

why-one = Porque { $first }.
why-two = Porque { $first } y { $second }.
why-plan-rules-out-one = su plan excluye «{ $way }»
why-plan-rules-out-some = su plan excluye algunas formas
why-plan-lists = su plan nombra esta forma
why-plan-lists-no-other = su plan no nombra otra forma
stop-text = Pare si el dolor sube de golpe, siente raras las piernas, se marea o le falta el aire.
stop-care = No levante nada hasta que le revise un médico.
stop-refuse = Déjelo donde está hasta que alguien pueda aconsejarle.
foot = Esto le ayuda a elegir. No le examina. No es un médico ni un terapeuta.
disagree = Los estudios no se ponen de acuerdo en cuál es la mejor forma. Lo que más ayuda: poco peso, cerca y despacio.
limit-text = Límite publicado para adultos sanos en esta tarea: cerca de { $limit }. No es su límite.
limit-none = Los límites publicados para adultos sanos no cubren esta tarea.

## Qué tan firme es todo el consejo, en una línea

sure-line-plan = Esto sigue el plan de su terapeuta.
sure-line-sign = Las guías publicadas lo nombran como señal de alarma.
sure-line-published = Se apoya en cifras publicadas para adultos sanos.
sure-line-practice = Los terapeutas suelen elegir esto. No podemos prometer que quite el dolor.
sure-line-common = Es la práctica común. Ningún estudio lo ha resuelto.
sure-line-house = Es una regla nuestra, por cautela. Ningún estudio lo ha resuelto.

## De quién es la regla, por id de autoridad

authority-law = La ley y las reglas del trabajo
authority-emergency = Una señal de alarma
authority-plan = El plan de su cirujano o terapeuta
authority-today = Su dolor y su equilibrio de hoy
authority-practice = La práctica común y las cifras publicadas

## Qué tan firme es una razón

sure-published = Guía publicada
sure-house = Regla nuestra, por cautela
sure-estimate = Una estimación. Se estudió a poca gente.
sure-common-practice = Práctica común. Ningún estudio lo ha resuelto.
sure-plan = Lo fijó su terapeuta

## De dónde viene, por id de fuente. Las citas conservan sus nombres.

source-red-flags = Señales de alarma en el dolor de espalda: marco de IFOMPT, 2020; guía NICE NG59
source-house-rule = Regla nuestra
source-common-practice = Práctica común, sin fuente
source-plan = Su plan
source-post-surgery-limits = Límites tras una operación de columna: Magnusson y otros, 1999; McGregor y otros, 2007. Cada uno da otro, por eso vale el de su cirujano.
source-pregnancy-lifting = Levantar en el embarazo: Waters y otros, 2014; MacDonald y otros, 2013
source-niosh-1994 = Ecuación de levantamiento de NIOSH: Waters y otros, 1994
source-niosh-1981 = Guía de NIOSH sobre levantar a mano, 1981
source-posture-model = Nuestro propio modelo del cuerpo; una estimación
source-hse-l23 = Guía de HSE sobre manejo manual de cargas, L23, 2016
source-osteoporosis-flexion = Ejercicio con huesos débiles: Sinaki y Mikkelsen, 1984
source-kneeling-after-replacement = Arrodillarse con prótesis de rodilla: Wylde y otros, 2019
source-kneeling-acceptable-weight = Levantar de rodillas: Gallagher y otros, 1990 a 1992
source-pain-monitoring = Modelo de control del dolor, estudiado en rodillas y talones: Thomeé, 1997; Silbernagel y otros, 2007

## Formas de levantar, por id: nombre, qué es, tres pasos, tres palabras grandes

way-hinge = Bisagra de cadera
way-hinge-gloss = Se dobla por la cadera. Las rodillas se doblan poco.
way-hinge-cue-1 = Lleve la cadera hacia atrás, como hacia una pared.
way-hinge-cue-2 = Rodillas sueltas, espalda larga.
way-hinge-cue-3 = La carga cerca de los muslos. Empuje el suelo para subir.
way-hinge-word-1 = Cadera atrás
way-hinge-word-2 = Espalda larga
way-hinge-word-3 = Carga cerca

way-squat = Sentadilla
way-squat-gloss = Dobla mucho las rodillas. La espalda queda derecha.
way-squat-cue-1 = Pies separados, pecho arriba.
way-squat-cue-2 = Baje como para sentarse entre los talones.
way-squat-cue-3 = La carga entre los pies, cerca de usted. Suba despacio.
way-squat-word-1 = Pies separados
way-squat-word-2 = Pecho arriba
way-squat-word-3 = Carga cerca

way-lunge = Una rodilla al suelo
way-lunge-gloss = Baja con una rodilla al suelo, abraza la carga y se pone de pie.
way-lunge-cue-1 = Baje con una rodilla al suelo. Ponga algo blando debajo.
way-lunge-cue-2 = Incline la carga para probarla. Súbala al muslo y abrácela.
way-lunge-cue-3 = Suba con la pierna de delante. No gire.
way-lunge-word-1 = Rodilla al suelo
way-lunge-word-2 = Abrace la carga
way-lunge-word-3 = Póngase de pie
way-lunge-side = Baje con la rodilla { $side } al suelo. Ponga algo blando debajo.

way-free-bend = Agacharse sin más
way-free-bend-gloss = Se agacha y la espalda se dobla. Para cosas ligeras, una o dos veces.
way-free-bend-cue-1 = Dóblese una vez, despacio. Deje que la espalda se curve.
way-free-bend-cue-2 = Una mano en el muslo o en un banco.
way-free-bend-cue-3 = Suba despacio.
way-free-bend-word-1 = Baje despacio
way-free-bend-word-2 = Mano de apoyo
way-free-bend-word-3 = Suba despacio

way-golfer = Pierna atrás
way-golfer-gloss = Se inclina y lleva una pierna hacia atrás. Recoge con una mano.
way-golfer-cue-1 = Póngase cerca. Agárrese a algo firme.
way-golfer-cue-2 = Inclínese con la espalda recta. Deje ir la pierna libre hacia atrás.
way-golfer-cue-3 = Recoja la cosa ligera con una mano.
way-golfer-word-1 = Agárrese
way-golfer-word-2 = Espalda recta
way-golfer-word-3 = Pierna atrás
way-golfer-side = Póngase cerca, sobre la pierna { $side }. Agárrese a algo firme.

way-upright = Levantar de pie
way-upright-gloss = Está a buena altura. No hace falta agacharse.
way-upright-cue-1 = Póngase cerca, con los pies separados.
way-upright-cue-2 = Codos junto al cuerpo.
way-upright-cue-3 = Gire con los pies.
way-upright-word-1 = Póngase cerca
way-upright-word-2 = Codos pegados
way-upright-word-3 = Gire los pies

way-also = Esta forma también puede servir.
way-not-first = No va primero: { $why }.

side-left = izquierda
side-right = derecha

## A qué prestar atención, por id de aviso

caution-emergency-now = Llame ahora a su número de emergencias.
caution-same-day-advice = Pida consejo médico hoy.
caution-over-plan-ceiling = Esto pasa del límite de su plan.
caution-over-pain-ceiling = Su dolor pasa del límite de su plan.
caution-surgeon-limit-first = Primero va el límite de su cirujano.
caution-adult-and-clinician = Solo con un adulto al lado y con el plan de un médico o terapeuta.
caution-plan-expired = A su plan se le pasó la fecha. Pida uno nuevo.
caution-pregnancy-no-floor-overhead = En el embarazo: nada del suelo y nada por encima de la cabeza.
caution-weight-unknown-test = Primero pruebe el peso. Incline una esquina o deslícelo un poco.
caution-aid-or-help-first = ¿Puede esperar? ¿Le ayuda un carrito u otra persona? Pruebe eso primero.
caution-no-loaded-rounding = Mantenga la espalda larga. No la curve con carga.
caution-no-single-leg = Los dos pies en el suelo.
caution-hold-support = Una mano en algo firme.
caution-keep-close = Llévelo cerca del cuerpo.
caution-no-twist = Gire con los pies, no con la espalda.
caution-pace-and-mix = Descanse a menudo y cambie la forma de levantar.
caution-team-two-thirds = Dos personas no pueden el doble. Cuente dos tercios de los dos límites juntos.

## Otras maneras de hacerlo, por id

alternative-follow-surgeon-limit = Siga el límite escrito de su cirujano. Si no lo tiene, pídalo.
alternative-call-clinician = Llame a su médico o terapeuta.
alternative-leave-it = Déjelo, o hágalo más tarde.
alternative-ask-person = Pida a alguien que lo haga.
alternative-split-load = Llévelo por partes.
alternative-raise-start = Pida que lo pongan más alto, en una mesa o una caja firme.
alternative-slide-or-roll = Deslícelo, ruédelo o muévalo esquina por esquina.
alternative-trolley = Use un carrito o una cesta con ruedas.
alternative-reacher = Use una pinza larga para recoger.
alternative-long-tool-or-sit = Use una herramienta de mango largo, o hágalo sentado.
alternative-spread-over-days = Repártalo durante el día o en varios días.
alternative-two-person = Levántelo junto con otra persona.
alternative-wait-for-help = Espere a que llegue ayuda.
alternative-use-equipment = Use el equipo hecho para eso.

## Qué cambiar, por id de cambio: qué hacer, y tres palabras grandes

change-find-mass =
    Averigüe cuánto pesa. Incline una esquina, lea la etiqueta o ábralo.{ $limit ->
        [none] { "" }
       *[other] { " " }Si pasa de { $limit }, no siga.
    }
change-find-mass-word-1 = Incline una esquina
change-find-mass-word-2 = Sienta el peso
change-find-mass-word-3 = Luego decida
change-bring-closer = Acérquelo a su cuerpo antes de levantar. Las manos, a { $to } de los tobillos como mucho.
change-bring-closer-word-1 = Acérquelo
change-bring-closer-word-2 = Póngase cerca
change-bring-closer-word-3 = Luego levante
change-better-grip = Métalo en una bolsa, una caja o una manta, para agarrarlo bien.
change-better-grip-word-1 = Traiga una bolsa
change-better-grip-word-2 = Métalo dentro
change-better-grip-word-3 = Luego levante
change-turn-feet = Gire los pies hasta tenerlo de frente. No gire la espalda.
change-turn-feet-word-1 = Gire los pies
change-turn-feet-word-2 = De frente
change-turn-feet-word-3 = Luego levante
change-raise-start = Pida que lo pongan más alto, para agarrarlo a { $to }, { $place }.
change-raise-start-word-1 = Traiga una caja
change-raise-start-word-2 = Pida subirlo
change-raise-start-word-3 = Luego levante
change-raise-end = Déjelo más arriba, en una mesa o una caja firme, con las manos a { $to } o más, { $place }.
change-raise-end-word-1 = Busque una mesa
change-raise-end-word-2 = Despéjela
change-raise-end-word-3 = Luego levante
change-lower-end = Déjelo más abajo, con las manos a { $to } o menos, { $place }.
change-lower-end-word-1 = Un lugar más bajo
change-lower-end-word-2 = Despéjelo
change-lower-end-word-3 = Luego levante
change-split-load = Divídalo en { $parts } partes, cada una de { $each } o menos. Levántelas una por una.
change-split-load-word-1 = Ábralo
change-split-load-word-2 = Divídalo
change-split-load-word-3 = Parte por parte
change-lighten = Saque una parte. Deje { $to } o menos.
change-lighten-word-1 = Ábralo
change-lighten-word-2 = Saque una parte
change-lighten-word-3 = Luego levante
change-shorten-bout = Levante { $to } como mucho. Luego descanse y haga otra cosa.
change-shorten-bout-word-1 = Pocas veces
change-shorten-bout-word-2 = Descanse
change-shorten-bout-word-3 = Otras pocas
change-carry-in-stages = Llévelo en tramos de { $to } como mucho. Déjelo en el suelo entre uno y otro.
change-carry-in-stages-word-1 = Un tramo corto
change-carry-in-stages-word-2 = Déjelo
change-carry-in-stages-word-3 = Siga
change-second-person = Levántelo junto con otra persona que pueda.
change-second-person-word-1 = Llame a alguien
change-second-person-word-2 = Cuenten hasta tres
change-second-person-word-3 = Levanten juntos
change-three-people = Levántelo junto con otras dos personas que puedan. Tres pueden con la mitad de sus límites juntos.
change-three-people-word-1 = Llame a dos personas
change-three-people-word-2 = Cuenten hasta tres
change-three-people-word-3 = Levanten juntos

change-together = Haga todo esto. { $steps }
change-then = Después: { $ways }.
change-eases = Un modelo del cuerpo calcula un { $percent } % menos de carga para la espalda.
change-then-again = Después pregunte aquí otra vez.

place-floor = a ras del suelo
place-shin = más o menos a media pierna
place-knee = más o menos a la altura de la rodilla
place-hip = más o menos a la altura de la cadera
place-waist = más o menos a la altura de la cintura
place-chest = más o menos a la altura del pecho
place-head = por encima de los hombros

list-or = { $first } o { $last }

## Quién puede ayudar

who-emergency-number = El número de emergencias de su zona
who-clinician = Su médico o terapeuta
who-clinician-today = Su médico, hoy. Si está cerrado: urgencias
who-nurse-line = Una enfermera por teléfono, si tiene ese servicio
who-surgeon = Su cirujano, o el hospital donde le operaron
who-midwife = Su partera, su obstetra o el servicio de maternidad
who-adult = Otro adulto que pueda levantar
who-parent = Su madre, su padre o el adulto que le cuida
who-trained-helper = Alguien con formación para mover personas
who-care-office = La oficina de cuidados, si este es su trabajo
who-plan-author = El terapeuta que hizo su plan
who-animal-helper = Otra persona, si es un animal
