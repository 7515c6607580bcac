# Por qué, por id de razón: "because-" es media frase, "reason-" va sola.
# Un valor desconocido es la palabra none.

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

## Señales, y a quién podemos aconsejar

because-sign-emergency = usted marcó: { $sign }
reason-sign-emergency = Usted marcó: { $sign }. Puede ser grave. Necesita ayuda ahora.
because-sign-same-day = usted marcó: { $sign }
reason-sign-same-day = Usted marcó: { $sign }. Un médico debe saberlo hoy.
because-load-is-alive = una persona o un animal no es una carga
reason-load-is-alive = Una persona o un animal se mueve y puede hacerse daño. Eso pide otra clase de plan.
because-surgery-no-limit = le operaron y aquí no hay un límite escrito
reason-surgery-no-limit = Le operaron hace poco. El límite lo pone su cirujano, y aquí no hay ninguno escrito.
because-pregnancy-complicated = le hablaron de problemas en este embarazo
reason-pregnancy-complicated = Le hablaron de problemas en este embarazo. Su partera o su médico puede decirle qué puede levantar.
because-child-no-plan = tiene menos de 16 años y no hay un plan
reason-child-no-plan = Tiene menos de 16 años. Hace falta un adulto al lado y el plan de un médico o terapeuta.
because-plan-too-old = su plan es demasiado viejo
reason-plan-too-old =
    { $overdue ->
        [none] A su plan se le pasó la fecha hace mucho.
       *[other] A su plan se le pasó la fecha hace { $overdue }.
    } Pida uno nuevo.

## El plan

because-over-plan-ceiling = su plan dice { $max } como mucho
reason-over-plan-ceiling =
    Su plan dice { $max } como mucho. { $guess ->
        [yes] Esto puede ser más.
       *[none] Esto es más.
    }
because-over-plan-times = su plan dice { $max } veces seguidas como mucho
reason-over-plan-times =
    Su plan dice { $max } veces seguidas como mucho. { $times ->
        [none] No se sabe cuántas serán, así que díganoslo antes.
       *[other] Usted dice hasta { $times }.
    }
because-plan-bouts-done =
    su plan dice { $max ->
        [one] { $max } tanda
       *[other] { $max } tandas
    } al día como mucho, y las de hoy ya están hechas
reason-plan-bouts-done =
    Su plan dice { $max ->
        [one] { $max } tanda
       *[other] { $max } tandas
    } al día como mucho. Usted anotó { $done } hoy.
because-over-pain-ceiling = el dolor en { $region } es { $pain } y su plan dice { $max } como mucho
reason-over-pain-ceiling = El dolor en { $region } es { $pain } de 10. Su plan dice { $max } como mucho para levantar.
because-pain-not-asked = no se sabe el dolor en { $region } y su plan dice { $max } como mucho
reason-pain-not-asked = Su plan dice un dolor de { $max } como mucho para levantar. No se sabe el de { $region }, así que díganoslo antes.
because-plan-avoids = su plan la excluye
reason-plan-avoids = Su plan excluye una o más formas de levantar.
because-plan-prefers = su plan la pone primero
reason-plan-prefers = Su plan pone primero una o más formas de levantar.
because-plan-not-listed = su plan no la nombra
reason-plan-not-listed = Su plan nombra las formas que puede usar. Las otras quedan fuera.
because-plan-expired = a su plan se le pasó la fecha
reason-plan-expired = A su plan se le pasó la fecha. Sus límites siguen. Lo que permitía de más, no.
because-plan-sets-bands = su plan dice cuándo es fuerte el dolor en { $region }
reason-plan-sets-bands = Su plan dice desde qué número es fuerte el dolor en { $region }.
because-surgeon-limit = su cirujano puso un límite
reason-surgeon-limit = El límite de su cirujano está en su plan. Va primero.

## La tarea

because-index-over-one =
    { $guess ->
        [yes] puede pasar del límite publicado para adultos sanos
       *[none] pasa del límite publicado para adultos sanos
    }
reason-index-over-one =
    El límite publicado para adultos sanos en esta tarea es cerca de { $limit }. { $guess ->
        [yes] Esto puede pasarlo.
       *[none] Esto lo pasa.
    }
because-index-over-three =
    { $guess ->
        [yes] puede pasar por mucho del límite publicado para adultos sanos
       *[none] pasa por mucho del límite publicado para adultos sanos
    }
reason-index-over-three =
    El límite publicado para adultos sanos en esta tarea es cerca de { $limit }. { $guess ->
        [yes] Esto puede ser tres veces eso, o más.
       *[none] Esto es tres veces eso, o más.
    }
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
because-over-guide-weight =
    { $guess ->
        [yes] puede pasar del peso de guía para adultos sanos
       *[none] pasa del peso de guía para adultos sanos
    }
reason-over-guide-weight =
    El peso de guía para adultos sanos aquí es { $guide }. { $guess ->
        [yes] Esto puede pasarlo.
       *[none] Esto lo pasa.
    } Es una primera prueba, no un límite.
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
because-hernia-heavy =
    { $guess ->
        [yes] tiene una hernia y esto puede pesar mucho
       *[none] tiene una hernia y esto pesa mucho
    }
reason-hernia-heavy =
    { $guess ->
        [yes] Tiene una hernia, y esto puede pasar del límite publicado.
       *[none] Tiene una hernia, y esto pasa del límite publicado.
    }
because-hernia-aid = tiene una hernia
reason-hernia-aid = Tiene una hernia. Deje que lo haga un carrito u otra persona, si puede.
because-hernia-light = tiene una hernia
reason-hernia-light = Tiene una hernia. Esto pesa poco. Pare si el bulto duele o crece.

## Cuerpo y formas

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
because-back-volatile = la espalda le da pinchazos sin avisar
reason-back-volatile = La espalda le da pinchazos sin avisar. Por eso la tratamos como un dolor fuerte.
because-back-state-not-asked = no se sabe si la espalda le da pinchazos
reason-back-state-not-asked = No se sabe si la espalda le da pinchazos. Le duele, así que contamos que sí hasta que nos lo diga.
because-back-flare = tiene un brote de dolor de espalda
reason-back-flare = Hoy tiene un brote de dolor. Por eso lo tratamos como un dolor fuerte, sea cual sea el número.
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
because-kneel-side-not-known = no se sabe en qué rodilla puede arrodillarse
reason-kneel-side-not-known = Puede arrodillarse de un lado, y una rodilla está mal hoy. No se sabe si es la misma.
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

## Carga y formas

because-over-light =
    { $guess ->
        [yes] puede pesar más de { $max }
       *[none] pesa más de { $max }
    }
reason-over-light =
    { $guess ->
        [yes] Puede pesar más de { $max }.
       *[none] Pesa más de { $max }.
    } Agacharse sin más o llevar la pierna atrás es para cosas más ligeras.
because-more-than-twice = lo levanta más de dos veces
reason-more-than-twice = Lo levanta más de dos veces. Agacharse sin más es para una o dos.
because-long-run = lo levanta muchas veces
reason-long-run = Lo levanta muchas veces. Doblar mucho las rodillas las cansa, y también los muslos.
because-needs-two-hands = hacen falta las dos manos
reason-needs-two-hands = Hacen falta las dos manos. Con la pierna atrás solo queda una.
because-too-high-to-kneel = está demasiado alto para arrodillarse
reason-too-high-to-kneel = Está demasiado alto para tomarlo con una rodilla en el suelo.

## Enfermedades y prótesis

because-no-loaded-rounding = tiene huesos débiles o se rompió un hueso de la columna
reason-no-loaded-rounding = Tiene huesos débiles o se rompió un hueso de la columna. Por eso no curve la espalda con carga.
because-new-knee-no-kneeling = su rodilla nueva aún está sanando
reason-new-knee-no-kneeling = Su rodilla nueva aún está sanando. No la apoye todavía.
because-old-knee-may-kneel = una rodilla nueva ya sana puede apoyarse si la deja
reason-old-knee-may-kneel = Una rodilla nueva ya sana puede apoyarse, si usted puede. Los estudios no hallaron un motivo médico en contra.
because-back-surgery = le operaron de la espalda
reason-back-surgery = Le operaron de la espalda hace poco. Por eso no la curve con carga.
because-replaced-hip = tiene una cadera nueva
reason-replaced-hip = Tiene una cadera nueva. No se apoye solo en esa pierna. Pregunte cuánto puede doblarla.
because-worn-hip = tiene las caderas gastadas
reason-worn-hip = Tiene las caderas gastadas. Por eso doblarlas mucho baja en la lista.
because-worn-knee = tiene las rodillas gastadas
reason-worn-knee = Tiene las rodillas gastadas. Por eso doblarlas mucho baja en la lista.
because-no-low-way-needed = está a buena altura para levantarlo de pie
reason-no-low-way-needed = Está a buena altura. Puede quedarse de pie, sin agacharse mucho.

## Qué habla a favor de una forma

because-hinge-eases-knee = la bisagra de cadera pide poco a las rodillas
reason-hinge-eases-knee = Los terapeutas suelen elegir la bisagra de cadera si duele una rodilla. No podemos prometer que quite el dolor.
because-hinge-moves-most = la bisagra de cadera es la que más peso mueve
reason-hinge-moves-most = Según la práctica común, la bisagra de cadera es la que más peso mueve.
because-hinge-long-run = la bisagra de cadera sirve para muchas cargas ligeras
reason-hinge-long-run = Según la práctica común, la bisagra de cadera sirve para muchas cargas ligeras seguidas.
because-squat-for-back = la sentadilla deja la espalda derecha
reason-squat-for-back = Los terapeutas suelen elegir la sentadilla si la espalda duele mucho. No podemos prometer que quite el dolor.
because-squat-few-lifts = la sentadilla sirve para pocas veces
reason-squat-few-lifts = Según la práctica común, la sentadilla sirve para pocas veces y cosas que no son ligeras.
because-lunge-to-test = con una rodilla al suelo puede inclinarlo y sentir el peso
reason-lunge-to-test = Con una rodilla al suelo puede inclinarlo y sentir el peso antes de decidir.
because-lunge-to-hug = con una rodilla al suelo puede abrazarlo de cerca
reason-lunge-to-hug = Con una rodilla al suelo puede abrazar lo que es difícil de agarrar.
because-lunge-for-back = con una rodilla al suelo la espalda queda derecha
reason-lunge-for-back = Con una rodilla al suelo la espalda queda derecha. Los terapeutas suelen elegirlo si la espalda duele mucho.
because-lunge-studies-differ = con una rodilla al suelo puede abrazar algo pesado
reason-lunge-studies-differ = En los estudios, la gente eligió menos peso de rodillas. La práctica común dice que sirve para cosas pesadas. Pruebe primero con un carrito o con ayuda.
because-free-bend-light = levanta algo ligero solo una o dos veces
reason-free-bend-light = Es ligero, y solo una o dos veces. Entonces agacharse sin más puede servir.
because-golfer-light = basta una mano para algo ligero
reason-golfer-light = Es ligero y basta una mano. Con la pierna atrás las rodillas trabajan poco.
because-golfer-long-run = la pierna atrás sirve para muchas cargas ligeras
reason-golfer-long-run = Según la práctica común, la pierna atrás sirve para muchas cargas ligeras seguidas.
because-variety = otra forma reparte el trabajo
reason-variety = En las últimas dos semanas usó casi siempre una forma: { $way }. Otra reparte el trabajo.
because-model-differs = un modelo del cuerpo halla que { $way } carga menos la zona lumbar
reason-model-differs = Un modelo del cuerpo halla otra forma que carga menos la zona lumbar: { $way }. Seguimos la práctica común, y decimos las dos cosas.
because-force-over-action-limit = un modelo del cuerpo da una fuerza alta en la zona lumbar
reason-force-over-action-limit = Con esta forma un modelo del cuerpo da una fuerza alta en la zona lumbar: { $way }. Pasa de una marca publicada para trabajadores. Llévelo cerca y despacio.
because-energy-over-limit = a este ritmo pide demasiado esfuerzo por tanto tiempo
reason-energy-over-limit = A este ritmo pide más esfuerzo del que dicen los límites publicados. Descanse más a menudo.

## Qué queda

because-no-way-left = hoy no queda ninguna forma de levantar
reason-no-way-left = Su dolor, su equilibrio o su plan no dejan hoy ninguna forma de levantarlo.
because-only-second-best-left =
    { $what ->
        [long_run] son demasiadas veces para las formas que quedan
        [hip] las formas que quedan doblan mucho una cadera con dolor
       *[none] las formas que quedan no le van bien hoy
    }
reason-only-second-best-left =
    { $what ->
        [long_run] Las formas que quedan no van bien para tantas veces seguidas.
        [hip] Las formas que quedan doblan mucho una cadera con dolor. No son para hoy.
       *[none] Las formas que quedan no van bien para este cuerpo y tantas veces.
    }
because-no-change-found = ningún cambio pequeño basta
reason-no-change-found = Buscamos un cambio pequeño. Ninguno basta por sí solo.

## Qué sigue en el plan

because-two-good-sessions = las últimas veces fueron bien
reason-two-good-sessions = Las últimas veces fueron bien, y a la mañana siguiente estaba como siempre.
because-too-few-sessions = aún no hizo este nivel las veces que hacen falta
reason-too-few-sessions = Aún no hizo este nivel las veces que hacen falta. Por ahora siga en él.
because-pain-over-during = el dolor llegó a { $pain } de 10 al levantar
reason-pain-over-during = El dolor llegó a { $pain } de 10 al levantar. Es más de { $max }. Baje un paso.
because-pain-acceptable-during = el dolor llegó a { $pain } de 10 al levantar
reason-pain-acceptable-during = El dolor llegó a { $pain } de 10 al levantar. Puede estar bien, pero no es momento de subir.
because-not-settled = a la mañana siguiente el dolor no había cedido
reason-not-settled = A la mañana siguiente el dolor no había cedido. Baje un paso.
because-week-rising = el dolor subió durante la semana
reason-week-rising = El dolor subió durante la semana. Baje un paso.
because-flare-step-down = hoy tiene un brote de dolor
reason-flare-step-down = Hoy tiene un brote de dolor. Haga menos unos días, y siga en movimiento.
because-at-ceiling = un paso más pasaría de { $max }
reason-at-ceiling = Un paso más pasaría de { $max }, un límite de su plan.
because-steps-locked = el siguiente paso lo abre su terapeuta
reason-steps-locked = El siguiente paso lo abre su terapeuta. Pregunte en la próxima visita.
because-history-incomplete = no se sabe todo de las últimas veces
reason-history-incomplete = No se sabe todo de las últimas veces. Por eso el nivel queda como está.
because-no-level-known = su plan no fija ningún nivel
reason-no-level-known = Su plan no fija ningún nivel. Pídalo a su terapeuta.
