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
outcome-refuse = Aquí no podemos aconsejarle. Otros sí pueden.

## Líneas que van en cada consejo

why-one = Porque { $first }.
why-two = Porque { $first } y { $second }.
stop-text = Pare si el dolor sube de golpe, siente raras las piernas, se marea o le falta el aire.
stop-care = No levante nada hasta que lo vea un médico.
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
sure-line-common = Es la costumbre. Ningún estudio lo ha resuelto.
sure-line-house = Es una regla nuestra, por cautela. Ningún estudio lo ha resuelto.

## De quién es la regla, por id de autoridad

authority-law = La ley y las reglas del trabajo
authority-emergency = Una señal de alarma
authority-plan = El plan de su cirujano o terapeuta
authority-today = Su dolor y su equilibrio de hoy
authority-practice = La costumbre y las cifras publicadas

## Qué tan firme es una razón

sure-published = Guía publicada
sure-house = Regla nuestra, por cautela
sure-estimate = Una estimación. Se estudió a poca gente.
sure-common-practice = Costumbre. Ningún estudio lo ha resuelto.
sure-plan = Lo fijó su terapeuta

## De dónde viene, por id de fuente. Las citas conservan sus nombres.

source-red-flags = Señales de alarma en el dolor de espalda: marco de IFOMPT, 2020; guía NICE NG59
source-house-rule = Regla nuestra
source-common-practice = Costumbre, sin fuente
source-plan = Su plan
source-post-surgery-limits = El límite de su cirujano. Cada clínica pone otro; nosotros no damos una cifra.
source-pregnancy-lifting = Levantar en el embarazo: MacDonald y otros, 2013, con NIOSH
source-niosh-1994 = Ecuación de levantamiento de NIOSH: Waters y otros, 1994
source-hse-l23 = Guía de HSE sobre manejo manual de cargas, L23, 2016
source-osteoporosis-flexion = Ejercicio con huesos débiles: Sinaki y Mikkelsen, 1984
source-kneeling-after-replacement = Revisión sobre arrodillarse con prótesis de rodilla, 2019
source-kneeling-acceptable-weight = Levantar de rodillas: Gallagher y otros, NIOSH

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
way-lunge-cue-1 = Ponga algo blando en el suelo y apoye ahí una rodilla.
way-lunge-cue-2 = Incline la carga para probarla. Súbala al muslo y abrácela.
way-lunge-cue-3 = Suba con la pierna de delante. No gire.
way-lunge-word-1 = Rodilla al suelo
way-lunge-word-2 = Abrace la carga
way-lunge-word-3 = Póngase de pie
way-lunge-side = Apoye en el suelo la rodilla { $side }.

way-free-bend = Agacharse sin más
way-free-bend-gloss = Se agacha sin cuidar la forma. Para cosas ligeras, una o dos veces.
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
way-golfer-side = Apóyese en la pierna { $side }.

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
caution-aid-or-help-first = Busque primero una ayuda o a otra persona.
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
alternative-raise-start = Pida que lo pongan más alto, en una mesa o un cajón.
alternative-slide-or-roll = Deslícelo, ruédelo o muévalo esquina por esquina.
alternative-trolley = Use un carrito o una cesta con ruedas.
alternative-reacher = Use una pinza larga para recoger.
alternative-long-tool-or-sit = Use una herramienta de mango largo, o hágalo sentado.
alternative-spread-over-days = Repártalo durante el día o en varios días.
alternative-two-person = Levántelo junto con otra persona.
alternative-wait-for-help = Espere a que llegue ayuda.
alternative-use-equipment = Use el equipo hecho para eso.

## Qué cambiar, por id de cambio: qué hacer, y tres palabras grandes

change-find-mass = Averigüe cuánto pesa. Incline una esquina, lea la etiqueta o ábralo. Si pasa de { $limit }, no siga.
change-find-mass-word-1 = Incline una esquina
change-find-mass-word-2 = Sienta el peso
change-find-mass-word-3 = Luego decida
change-bring-closer = Acérquelo a sus pies antes de levantar. Las manos, a { $to } de los tobillos como mucho.
change-bring-closer-word-1 = Acérquelo
change-bring-closer-word-2 = Pare
change-bring-closer-word-3 = Luego levante
change-better-grip = Métalo en una bolsa, una caja o una manta, para agarrarlo bien.
change-better-grip-word-1 = Traiga una bolsa
change-better-grip-word-2 = Métalo dentro
change-better-grip-word-3 = Luego levante
change-turn-feet = Gire los pies hasta tenerlo de frente. No gire la espalda.
change-turn-feet-word-1 = Gire los pies
change-turn-feet-word-2 = De frente
change-turn-feet-word-3 = Luego levante
change-raise-start = Pida que lo pongan más alto: sus manos a { $to } o algo más, { $place }.
change-raise-start-word-1 = Traiga un cajón
change-raise-start-word-2 = Pida subirlo
change-raise-start-word-3 = Luego levante
change-lower-end = Déjelo más abajo: sus manos a { $to } o menos, { $place }.
change-lower-end-word-1 = Un lugar más bajo
change-lower-end-word-2 = Despéjelo
change-lower-end-word-3 = Luego levante
change-split-load = Divídalo en { $parts } partes o más. Cada una, de { $each } o menos.
change-split-load-word-1 = Ábralo
change-split-load-word-2 = Divídalo
change-split-load-word-3 = Parte por parte
change-lighten = Saque una parte. Deje { $to } o menos.
change-lighten-word-1 = Ábralo
change-lighten-word-2 = Saque una parte
change-lighten-word-3 = Luego levante
change-shorten-bout = Levante { $to } como mucho. Luego descanse y haga otra cosa.
change-shorten-bout-word-1 = Haga pocas
change-shorten-bout-word-2 = Descanse
change-shorten-bout-word-3 = Haga otras pocas
change-carry-in-stages = Llévelo en tramos de { $to } como mucho. Déjelo en el suelo entre uno y otro.
change-carry-in-stages-word-1 = Un tramo corto
change-carry-in-stages-word-2 = Déjelo
change-carry-in-stages-word-3 = Siga
change-second-person = Levántelo junto con otra persona que pueda.
change-second-person-word-1 = Llame a alguien
change-second-person-word-2 = Cuenten hasta tres
change-second-person-word-3 = Levanten juntos

change-together = Haga todo esto. { $steps }
change-then = Después: { $ways }.
change-then-again = Después pregunte aquí otra vez.

place-floor = a ras del suelo
place-shin = más o menos a media pierna
place-knee = más o menos a la altura de la rodilla
place-hip = más o menos a la altura de la cadera
place-waist = más o menos a la altura de la cintura
place-chest = más o menos a la altura del pecho
place-head = por encima de los hombros

list-or = { $first } o { $last }

## Partes del cuerpo, tal como van en una frase

region-back = la espalda
region-knee-left = la rodilla izquierda
region-knee-right = la rodilla derecha
region-hip-left = la cadera izquierda
region-hip-right = la cadera derecha
region-shoulders = los hombros

## Donde no se sabe un valor

region-unknown = una parte del cuerpo
side-unknown = que esté mejor
sign-short-unknown = una señal de alarma
value-unknown = una cifra fijada
way-unknown = una de las formas

## Quién puede ayudar

who-emergency-number = El número de emergencias de su zona
who-clinician = Su médico o terapeuta
who-clinician-today = Su médico, hoy. Si está cerrado: el servicio de guardia
who-nurse-line = Una enfermera por teléfono, si tiene ese servicio
who-surgeon = Su cirujano, o la planta donde estuvo
who-midwife = Su matrona o el servicio de maternidad
who-adult = Otro adulto que pueda levantar
who-parent = Su madre, su padre o el adulto que le cuida
who-trained-helper = Alguien con formación para mover personas
who-care-office = La oficina de cuidados, si este es su trabajo
who-plan-author = El terapeuta que hizo su plan
who-animal-helper = Otra persona, si es un animal

## Por qué, por id de razón: "because-" es media frase, "reason-" va sola

because-sign-emergency = usted marcó: { $sign }
reason-sign-emergency = Usted marcó: { $sign }. Puede ser grave. Necesita ayuda ahora.
because-sign-same-day = usted marcó: { $sign }
reason-sign-same-day = Usted marcó: { $sign }. Un médico debe saberlo hoy.
because-load-is-alive = una persona o un animal no es una carga
reason-load-is-alive = Una persona o un animal se mueve y puede hacerse daño. Eso pide otra clase de plan.
because-surgery-no-limit = le operaron y aquí no hay un límite escrito
reason-surgery-no-limit = Le operaron hace poco. El límite lo pone su cirujano, y aquí no hay ninguno escrito.
because-pregnancy-complicated = le hablaron de problemas en este embarazo
reason-pregnancy-complicated = Le hablaron de problemas en este embarazo. Su matrona o su médico puede decirle qué puede levantar.
because-child-no-plan = tiene menos de 16 años y no hay un plan
reason-child-no-plan = Tiene menos de 16 años. Hace falta un adulto al lado y el plan de un médico o terapeuta.
because-plan-too-old = su plan es demasiado viejo
reason-plan-too-old =
    { $overdue ->
        [none] A su plan se le pasó la fecha hace mucho.
       *[other] A su plan se le pasó la fecha hace { $overdue }.
    } Pida uno nuevo.
because-over-plan-ceiling = su plan dice { $max } como mucho
reason-over-plan-ceiling =
    Su plan dice { $max } como mucho. { $mass ->
        [none] Esto puede ser más.
       *[other] Esto pesa { $mass }.
    }
because-over-pain-ceiling = el dolor en { $region } es { $pain } y su plan dice { $max } como mucho
reason-over-pain-ceiling = El dolor en { $region } es { $pain } de 10. Su plan dice { $max } como mucho para levantar.
because-plan-avoids = su plan la excluye
reason-plan-avoids = Su plan excluye una o más formas de levantar.
because-plan-not-listed = su plan no la nombra
reason-plan-not-listed = Su plan nombra las formas que puede usar. Las otras quedan fuera.
because-plan-expired = a su plan se le pasó la fecha
reason-plan-expired = A su plan se le pasó la fecha. Sus límites siguen. Lo que permitía de más, no.
because-plan-sets-bands = su plan dice cuándo es fuerte el dolor en { $region }
reason-plan-sets-bands = Su plan dice desde qué número es fuerte el dolor en { $region }.
because-surgeon-limit = su cirujano puso un límite
reason-surgeon-limit = El límite de su cirujano está en su plan. Va primero.
because-index-over-one = pasa del límite publicado para adultos sanos
reason-index-over-one = El límite publicado para adultos sanos en esta tarea es cerca de { $limit }. Esto lo pasa.
because-index-over-three = pasa por mucho del límite publicado para adultos sanos
reason-index-over-three = El límite publicado para adultos sanos en esta tarea es cerca de { $limit }. Esto es tres veces más, o mayor.
because-index-within-one = no pasa del límite publicado para adultos sanos
reason-index-within-one = No pasa del límite publicado para adultos sanos. Ese no es su propio límite.
because-outside-equation =
    { $what ->
        [hm] está demasiado lejos del cuerpo
        [vm] está demasiado alto
        [dm] sube o baja demasiado
        [am] tendría que girar demasiado
        [fm] son demasiadas veces o demasiado tiempo
       *[none] los límites publicados no cubren esta tarea
    }
reason-outside-equation =
    Los límites publicados no cubren esta tarea: { $what ->
        [hm] está demasiado lejos del cuerpo
        [vm] está demasiado alto
        [dm] sube o baja demasiado
        [am] tendría que girar demasiado
        [fm] son demasiadas veces o demasiado tiempo
       *[none] no podemos comparar
    }.
because-not-covered = los límites publicados no cubren esta forma de levantar
reason-not-covered =
    Los límites publicados son para dos manos y de pie. No cubren { $what ->
        [kneeling] levantar de rodillas
        [one_hand] levantar con una mano
       *[none] esta forma
    }. Nunca damos una cifra mayor.
because-over-guide-weight = pasa del peso de guía para adultos sanos
reason-over-guide-weight = El peso de guía para adultos sanos aquí es { $guide }. Esto lo pasa. Es una primera prueba, no un límite.
because-mass-unknown = aún no se sabe cuánto pesa
reason-mass-unknown =
    Nadie ha probado su peso. { $high ->
        [none] Por eso lo contamos como pesado.
       *[other] Por eso lo contamos como { $high }.
    }
because-bulky = es difícil de agarrar
reason-bulky = Es grande, blando o difícil de agarrar. Así queda lejos del cuerpo.
because-far-reach = está lejos del cuerpo
reason-far-reach = Tendría los brazos casi estirados. Cuanto más lejos está, más trabaja la espalda.
because-long-carry = habría que llevarlo lejos
reason-long-carry = Tendría que llevarlo { $distance }. Las guías dicen unos { $stage } de una vez como mucho.
because-high-and-unsteady = está por encima de los hombros y su equilibrio puede no bastar
reason-high-and-unsteady = Está por encima de los hombros. Eso pide buen equilibrio, y el suyo no es bueno o no se sabe.
because-high-and-shoulder = está por encima de los hombros y le duelen
reason-high-and-shoulder = Está por encima de los hombros, y hoy los hombros le duelen mucho.
because-pregnancy-low-or-overhead = en el embarazo está demasiado bajo o demasiado alto
reason-pregnancy-low-or-overhead = Las guías para el embarazo dicen: nada de más abajo de media pierna, nada por encima de la cabeza.
because-pregnancy-reach = en el embarazo la carga queda más lejos
reason-pregnancy-reach = En el embarazo la carga queda más lejos de la espalda. Por eso el límite publicado es menor.
because-hernia-heavy = tiene una hernia y esto pesa mucho
reason-hernia-heavy = Tiene una hernia, y esto pasa del límite publicado.
because-hernia-aid = tiene una hernia
reason-hernia-aid = Tiene una hernia. Busque primero una ayuda o a otra persona.
because-back-severe =
    { $pain ->
        [none] le duele mucho la espalda
       *[other] su dolor de espalda es { $pain } de 10
    }
reason-back-severe =
    { $pain ->
        [none] Le duele mucho la espalda.
       *[other] Su dolor de espalda es { $pain } de 10.
    } Hoy algunas formas le piden demasiado.
because-back-volatile = la espalda le da tirones sin aviso
reason-back-volatile = La espalda le da tirones sin aviso. Por eso la tratamos como un dolor fuerte.
because-back-flare = la espalda está en un brote
reason-back-flare = Hoy tiene un brote. Por eso lo tratamos como un dolor fuerte, sea cual sea el número.
because-back-not-asked = no se sabe cuánto le duele la espalda
reason-back-not-asked = No se sabe cuánto le duele la espalda. Lo contamos como fuerte hasta que nos lo diga.
because-knee-severe =
    { $pain ->
        [none] le duele mucho { $region }
       *[other] el dolor en { $region } es { $pain } de 10
    }
reason-knee-severe =
    { $pain ->
        [none] Le duele mucho { $region }.
       *[other] El dolor en { $region } es { $pain } de 10.
    } Hoy doblarla mucho le pide demasiado.
because-knee-not-asked = no se sabe cuánto le duele { $region }
reason-knee-not-asked = No se sabe cuánto le duele { $region }. Lo contamos como fuerte hasta que nos lo diga.
because-no-knee-to-kneel-on = hoy no puede apoyar ninguna rodilla
reason-no-knee-to-kneel-on = Hoy no apoye ninguna rodilla en el suelo.
because-kneel-on = puede apoyar la rodilla { $side }
reason-kneel-on = Apoye en el suelo la rodilla { $side }, no la otra.
because-cannot-kneel = no puede arrodillarse
reason-cannot-kneel = Usted dijo que no puede arrodillarse.
because-kneel-not-asked = no se sabe si puede arrodillarse
reason-kneel-not-asked = No se sabe si puede arrodillarse. Lo contamos como que no hasta que nos lo diga.
because-hip-severe =
    { $pain ->
        [none] le duele mucho { $region }
       *[other] el dolor en { $region } es { $pain } de 10
    }
reason-hip-severe =
    { $pain ->
        [none] Le duele mucho { $region }.
       *[other] El dolor en { $region } es { $pain } de 10.
    } Hoy doblarla mucho no va primero.
because-no-hip-to-stand-on = hoy ninguna cadera puede cargarle sola
reason-no-hip-to-stand-on = Hoy no se apoye en una sola pierna: ninguna cadera debe cargarle sola.
because-stand-on = puede apoyarse en la pierna { $side }
reason-stand-on = Apóyese en la pierna { $side }, no en la otra.
because-hip-not-asked = no se le preguntó por las caderas
reason-hip-not-asked = No se le preguntó por las caderas. Contamos con que no le limitan.
because-shoulder-not-asked = no se le preguntó por los hombros
reason-shoulder-not-asked = No se le preguntó por los hombros. Contamos con que no le limitan.
because-balance-not-good = hoy su equilibrio no es bueno
reason-balance-not-good = Hoy su equilibrio no es bueno. Mantenga los dos pies en el suelo.
because-balance-not-asked = no se sabe cómo está su equilibrio
reason-balance-not-asked = No se sabe cómo está su equilibrio. Lo contamos como malo hasta que nos lo diga.
because-fell-last-year = se cayó en el último año
reason-fell-last-year = Se cayó en el último año. Por eso contamos su equilibrio como regular, no como bueno.
because-over-light = pesa más de { $max }
reason-over-light = Pesa más de { $max }. Agacharse sin más o llevar la pierna atrás es para cosas más ligeras.
because-more-than-twice = lo levanta más de dos veces
reason-more-than-twice = Lo levanta más de dos veces. Agacharse sin más es para una o dos.
because-long-run = lo levanta muchas veces
reason-long-run = Lo levanta muchas veces. Doblar mucho las rodillas las cansa, y también los muslos.
because-needs-two-hands = hacen falta las dos manos
reason-needs-two-hands = Hacen falta las dos manos. Con la pierna atrás solo queda una.
because-too-high-to-kneel = está demasiado alto para arrodillarse
reason-too-high-to-kneel = Está demasiado alto para tomarlo con una rodilla en el suelo.
because-no-loaded-rounding = tiene huesos débiles o se rompió un hueso de la columna
reason-no-loaded-rounding = Tiene huesos débiles o se rompió un hueso de la columna. Por eso no curve la espalda con carga.
because-new-knee-no-kneeling = su rodilla nueva aún está sanando
reason-new-knee-no-kneeling = Su rodilla nueva aún está sanando. No la apoye todavía.
because-old-knee-may-kneel = una rodilla nueva ya sana puede apoyarse si la deja
reason-old-knee-may-kneel = Una rodilla nueva ya sana puede apoyarse, si usted puede. Los estudios no hallaron un motivo médico en contra.
because-replaced-hip = tiene una cadera nueva
reason-replaced-hip = Tiene una cadera nueva. No se apoye solo en esa pierna. Pregunte cuánto puede doblarla.
because-worn-hip = tiene las caderas gastadas
reason-worn-hip = Tiene las caderas gastadas. Por eso doblarlas mucho no va primero.
because-worn-knee = tiene las rodillas gastadas
reason-worn-knee = Tiene las rodillas gastadas. Por eso doblarlas mucho no va primero.
because-no-low-way-needed = está a buena altura para levantarlo de pie
reason-no-low-way-needed = Está a buena altura. Puede quedarse de pie, sin agacharse mucho.
because-hinge-eases-knee = la bisagra de cadera pide poco a las rodillas
reason-hinge-eases-knee = Los terapeutas suelen elegir la bisagra de cadera si duele una rodilla. No podemos prometer que quite el dolor.
because-hinge-moves-most = la bisagra de cadera es la que más peso mueve
reason-hinge-moves-most = Según la costumbre, la bisagra de cadera es la que más peso mueve.
because-hinge-long-run = la bisagra de cadera sirve para muchas cargas ligeras
reason-hinge-long-run = Según la costumbre, la bisagra de cadera sirve para muchas cargas ligeras seguidas.
because-squat-for-back = la sentadilla deja la espalda derecha
reason-squat-for-back = Los terapeutas suelen elegir la sentadilla si la espalda duele mucho. No podemos prometer que quite el dolor.
because-squat-few-lifts = la sentadilla sirve para pocas veces
reason-squat-few-lifts = Según la costumbre, la sentadilla sirve para pocas veces y cosas que no son ligeras.
because-lunge-to-test = con una rodilla al suelo puede inclinarlo y sentir el peso
reason-lunge-to-test = Con una rodilla al suelo puede inclinarlo y sentir el peso antes de decidir.
because-lunge-to-hug = con una rodilla al suelo puede abrazarlo de cerca
reason-lunge-to-hug = Con una rodilla al suelo puede abrazar lo que es difícil de agarrar.
because-lunge-for-back = con una rodilla al suelo la espalda queda derecha
reason-lunge-for-back = Con una rodilla al suelo la espalda queda derecha. Los terapeutas suelen elegirlo si la espalda duele mucho.
because-lunge-studies-differ = con una rodilla al suelo puede abrazar algo pesado
reason-lunge-studies-differ = En los estudios, la gente eligió menos peso de rodillas. La costumbre dice que sirve para cosas pesadas. Busque primero una ayuda.
because-free-bend-light = levanta algo ligero solo una o dos veces
reason-free-bend-light = Es ligero, y solo una o dos veces. Entonces agacharse sin más puede servir.
because-golfer-light = basta una mano para algo ligero
reason-golfer-light = Es ligero y basta una mano. Con la pierna atrás las rodillas trabajan poco.
because-golfer-long-run = la pierna atrás sirve para muchas cargas ligeras
reason-golfer-long-run = Según la costumbre, la pierna atrás sirve para muchas cargas ligeras seguidas.
because-variety = otra forma reparte el trabajo
reason-variety = En las últimas dos semanas usó casi siempre una forma: { $way }. Otra reparte el trabajo.
because-no-way-left = hoy no queda ninguna forma de levantar
reason-no-way-left = Su dolor, su equilibrio o su plan no dejan hoy ninguna forma de levantarlo.
because-only-second-best-left = son demasiadas veces para las formas que quedan
reason-only-second-best-left = Las formas que quedan no van bien para tantas veces seguidas.
because-no-change-found = ningún cambio pequeño basta
reason-no-change-found = Buscamos un cambio pequeño. Ninguno basta por sí solo.
