# Preguntas del recorrido, sus opciones y cómo se leen las respuestas. Ids: question-<id>, luego -hint, -why,
# -row (el nombre corto en la página de repaso) o el id de una opción, y su -note.

## Señales de alarma

question-signs-today = ¿Hay algo nuevo que le asuste hoy?
question-signs-today-hint = Por ejemplo: algo dormido, fiebre, dolor de pecho o piernas que no responden.
question-signs-today-row = Algo nuevo hoy
question-signs-today-no = No
question-signs-today-yes = Sí
question-signs-full = ¿Algo de esto es nuevo o va a peor?
question-signs-full-hint = Nuevo quiere decir en las últimas 2 semanas. Marque todo lo que sea cierto.
question-signs-full-row = Señales de alarma
question-signs-flare = En un día malo hay que mirar mejor. ¿Es cierto algo de esto?
question-signs-flare-hint = Nuevo quiere decir en las últimas 2 semanas. Marque todo lo que sea cierto.
question-signs-flare-row = Señales de un día malo

## Sobre usted

question-age = ¿Qué edad tiene?
question-age-why = Los huesos, el equilibrio y los límites cambian con la edad.
question-age-row = Edad
question-age-under16 = Menos de 16
question-age-16-39 = De 16 a 39
question-age-40-64 = De 40 a 64
question-age-65-79 = De 65 a 79
question-age-80plus = 80 o más
question-conditions = ¿Tiene algo de esto?
question-conditions-hint = Marque todo lo que sea cierto.
question-conditions-why = Cada cosa cambia qué forma de levantar le puede servir.
question-conditions-row = Problemas de salud
question-conditions-osteoporosis = Huesos débiles
question-conditions-past-spine-fracture = Un hueso roto en la columna, alguna vez
question-conditions-pregnant = Embarazo
question-conditions-pregnancy-complicated = Embarazo, y le han dicho que hay problemas
question-conditions-knee-replacement-old = Una rodilla nueva, ya curada
question-conditions-knee-replacement-recent = Una rodilla nueva, en los últimos 3 meses
question-conditions-hip-replacement = Una cadera nueva
question-conditions-hip-osteoarthritis = Caderas gastadas
question-conditions-knee-osteoarthritis = Rodillas gastadas
question-conditions-lumbar-surgery-recent = Cirugía de la zona lumbar en los últimos 3 meses
question-conditions-hernia = Una hernia en la ingle o el vientre
question-pregnancy-weeks = ¿De cuántas semanas está?
question-pregnancy-weeks-why = Lo que se puede levantar cambia con las semanas.
question-pregnancy-weeks-row = Semanas de embarazo
question-pregnancy-weeks-weeks = Semanas
question-weeks-since-surgery = ¿Hace cuántas semanas fue la cirugía?
question-weeks-since-surgery-why = Poco después de una cirugía, solo su cirujano puede poner un límite.
question-weeks-since-surgery-row = Semanas desde la cirugía
question-weeks-since-surgery-weeks = Semanas
question-fell = ¿Se ha caído en el último año?
question-fell-why = Después de una caída no contamos con un buen equilibrio.
question-fell-row = Caída en el último año
question-fell-no = No
question-fell-yes = Sí
question-sex = ¿Es usted mujer u hombre?
question-sex-why = Las cifras publicadas no son las mismas para mujeres y hombres. Sin respuesta, tomamos las de mujer, que son más bajas.
question-sex-row = Sexo
question-sex-female = Mujer
question-sex-male = Hombre
question-sex-not-sure = Prefiero no decirlo
question-stature = ¿Cuánto mide?
question-stature-why = Así el dibujo y las cuentas son para usted. Sin respuesta, contamos con un cuerpo pequeño y uno grande.
question-stature-row = Altura
question-stature-cm = Altura en cm
question-stature-in = Altura en pulgadas. 5 pies y 6 pulgadas son 66.
question-stature-not-sure = Pasar esta pregunta
question-body-mass = ¿Cuánto pesa usted?
question-body-mass-hint = Basta con un número cercano.
question-body-mass-why = Así el dibujo y las cuentas son para usted. Sin respuesta, contamos con un cuerpo pequeño y uno grande.
question-body-mass-row = Su peso
question-body-mass-kg = Su peso en kg
question-body-mass-lb = Su peso en lb
question-body-mass-not-sure = Pasar esta pregunta

## La cosa

question-what = ¿Qué quiere levantar?
question-what-row = Qué
question-what-small = Algo pequeño
question-what-small-note = Basta una mano
question-what-box = Una caja
question-what-bag = Una bolsa o un saco
question-what-basket = Una cesta o un barreño
question-what-bucket = Un cubo
question-what-long = Algo largo
question-what-big = Algo grande
question-what-living = Una persona o un animal
question-mass = ¿Cuánto pesa?
question-mass-hint = ¿Más o menos como qué? Si está entre dos, tome la más pesada.
question-mass-row = Cuánto pesa
question-mass-cup = Una taza llena
question-mass-flour = Una bolsa de harina
question-mass-bottle = Una botella grande de agua
question-mass-two-bottles = Dos botellas grandes de agua
question-mass-six-pack = Un paquete de seis botellas
question-mass-water-bucket = Un cubo lleno de agua
question-mass-bicycle = Una bicicleta
question-mass-suitcase = Una maleta grande y llena
question-mass-heavier = Más que todo esto
question-mass-type-it = Sé el número
question-mass-number = ¿Cuánto pesa?
question-mass-number-hint = Léalo en la etiqueta o en una báscula.
question-mass-number-kg = Peso en kg
question-mass-number-lb = Peso en lb
question-mass-guess = ¿Cuánto puede pesar como mucho?
question-mass-guess-hint = Diga de más. Contamos con lo más que puede pesar.
question-mass-guess-no-idea = No tengo ni idea
question-start = ¿Dónde lo agarran sus manos?
question-start-hint = ¿A qué altura está al empezar?
question-start-row = Empieza
question-start-floor = En el suelo
question-start-shin = A media pierna
question-start-knee = En las rodillas
question-start-waist = En la cintura
question-start-chest = En el pecho
question-start-overhead = Sobre la cabeza
question-reach = ¿A qué distancia está?
question-reach-hint = Acérquese con los pies todo lo que pueda.
question-reach-row = A qué distancia
question-reach-close = Muy cerca
question-reach-close-note = Los codos al lado del cuerpo
question-reach-medium = Un poco lejos
question-reach-medium-note = Los codos delante del cuerpo
question-reach-far = Lejos
question-reach-far-note = Los brazos casi rectos
question-often = ¿Cuántas veces?
question-often-hint = Cuente cada vez que levanta algo.
question-often-row = Cuántas veces
question-often-once = Una vez
question-often-twice = Dos veces
question-often-few = De 3 a 10 veces
question-often-some-fast = De 11 a 30 veces, en menos de una hora
question-often-some-slow = De 11 a 30 veces, en varias horas
question-often-many-fast = Más de 30 veces, en menos de una hora
question-often-many-slow = Más de 30 veces, en varias horas

question-often-in-plan = Su plan dice hasta { $count } veces seguidas. ¿Serán más?
question-often-in-plan-hint = Descanse y haga otra cosa antes de la siguiente tanda.
question-often-in-plan-row = Más de lo que dice el plan
question-often-in-plan-within = No, paro ahí y descanso
question-often-in-plan-more = Sí, más veces seguidas

## Su cuerpo hoy

question-back = ¿Cuánto le duele la espalda ahora?
question-back-row = Espalda
question-back-state = ¿Cómo está su espalda hoy?
question-back-state-row = Espalda hoy
question-back-state-steady = Tranquila
question-back-state-steady-note = Sin sorpresas
question-back-state-volatile = Da pinchazos
question-back-state-volatile-note = Dolor de golpe, sin avisar
question-back-state-flare = Un brote
question-back-state-flare-note = Mucho peor que siempre, por horas o días
question-knee-left = ¿Cuánto le duele la rodilla izquierda ahora?
question-knee-left-row = Rodilla izquierda
question-knee-right = ¿Cuánto le duele la rodilla derecha ahora?
question-knee-right-row = Rodilla derecha
question-other = ¿Le duele hoy algo de esto?
question-other-hint = Marque todo lo que le duele.
question-other-row = También duele
question-other-hip-left = Cadera izquierda
question-other-hip-right = Cadera derecha
question-other-shoulders = Hombros
question-hip-left = ¿Cuánto le duele la cadera izquierda ahora?
question-hip-left-row = Cadera izquierda
question-hip-right = ¿Cuánto le duele la cadera derecha ahora?
question-hip-right-row = Cadera derecha
question-shoulders = ¿Cuánto le duelen los hombros ahora?
question-shoulders-hint = Piense en el peor.
question-shoulders-row = Hombros
question-balance = ¿Cómo está su equilibrio hoy?
question-balance-row = Equilibrio
question-balance-good = Bien
question-balance-good-note = Firme sobre una pierna
question-balance-fair = Regular
question-balance-fair-note = Firme sobre dos piernas, no sobre una
question-balance-poor = Mal
question-balance-poor-note = Tengo que apoyar una mano
question-kneel = ¿Puede arrodillarse y volver a levantarse?
question-kneel-row = Arrodillarse
question-kneel-yes = Sí
question-kneel-one-side = Solo de un lado
question-kneel-no = No

## Cómo se leen las respuestas

answer-pain = { $pain } de 10
answer-none = Nada de esto
answer-not-sure = No está claro
answer-not-said = No lo dijo
answer-not-known = No se sabe
answer-as-heavy-as = No más de { $mass }
mass-up-to = hasta { $mass }
mass-over = más de { $mass }
mass-not-known = peso sin saber

## Páginas alrededor de las preguntas

title-bar-lift = Antes de levantar
title-bar-about = Sobre usted
title-bar-own = Usted hoy
title-bar-signs = Señales de alarma
check-title = Repase sus respuestas
check-button = Ver el consejo

## ¿Es así?

interruption-go-on = Sí, es así
interruption-change = Cambiar una respuesta
interruption-small-heavy-title = ¿Pequeño y tan pesado?
interruption-small-heavy-text = Dijo que es pequeño y basta una mano. También dijo que pesa mucho. ¿Es así?
interruption-very-heavy-title = ¿Pesa tanto de verdad?
interruption-very-heavy-text = Eso pesa como una persona adulta. Mire otra vez el número. ¿Es así?
interruption-many-heavy-title = ¿Tan pesado y tantas veces?
interruption-many-heavy-text = Dijo más de 10 veces. También dijo que pesa mucho. ¿Es así?
interruption-flare-pain-0-title = ¿Un brote y nada de dolor?
interruption-flare-pain-0-text = Dijo que hoy tiene un brote. También dijo que el dolor de espalda es 0. ¿Es así?
interruption-all-ten-title = ¿El peor dolor en espalda y rodillas?
interruption-all-ten-text = Dijo 10 para la espalda y para las dos rodillas. ¿Es así?

## Aquí no hay consejo

refuse-living-title = Ni personas ni animales
refuse-living-1 = Una persona o un animal se puede mover y se puede hacer daño. Sobre eso no le podemos dar consejo aquí.
refuse-living-2 = Pida ayuda a alguien que pueda.
refuse-unsure-sign-title = ¿Duda de una señal? Pregunte antes
refuse-unsure-sign-1 = Si tiene dudas, pregunte antes a una enfermera o a un médico. No levante nada hasta entonces.
refuse-unsure-sign-2 = Puede volver y contestar otra vez.
