# Señales de alarma: qué mirar y a quién llamar. Se leen con la app bloqueada.

signs-title = Señales de alarma
signs-intro = ¿Es nuevo en las últimas 2 semanas, o va a peor? Entonces no levante. Pida ayuda primero.

## Qué hacer, por grupo

signs-emergency-title = Pida ayuda de emergencia ahora
signs-emergency-do = Llame ya a su número de emergencias. No conduzca. No levante nada. No se quede a solas.
signs-same-day-title = Pida consejo médico hoy
signs-same-day-do = Llame hoy a su médico. Si está cerrado, vaya a urgencias. Hasta entonces no levante.
signs-surgeon-title = Pregunte primero a su cirujano
signs-surgeon-do = Primero va el límite escrito de su cirujano. Si no lo tiene, llame y pregunte. Hasta entonces no levante.
signs-none = Ninguna de estas

## A quién llamar

signs-whom-title = A quién llamar
signs-whom-emergency = El número de emergencias de su zona. Apúntelo donde lo vea.
signs-whom-same-day = Su médico o su clínica. Si está cerrado: urgencias.
signs-whom-nurse = Una enfermera por teléfono, si tiene ese servicio.
signs-whom-near = Un vecino o un amigo, para no estar a solas.

## Sin poder seguir

signs-stuck-title = ¿Se quedó sin poder moverse al levantar algo?
signs-stuck-intro = Con calma. Un paso cada vez.
signs-stuck-do-1 = Baje la carga, o déjela caer lejos de los pies.
signs-stuck-do-2 = Apóyese en algo firme. Respire despacio.
signs-stuck-do-3 = Póngase a gatas, o acuéstese de lado.
signs-stuck-do-4 = Descanse unos minutos. Luego muévase poco a poco.
signs-stuck-do-5 = ¿Piernas débiles o dormidas, o problemas para orinar o ir al baño? Llame ahora a su número de emergencias.

signs-floor-title = ¿No puede levantarse del suelo?
signs-floor-intro = Tómese su tiempo. Primero mire cómo está.
signs-floor-do-1 = Sin prisa. Mire: ¿mucho dolor, sangre, una forma rara, piernas dormidas? Quédese ahí y pida ayuda.
signs-floor-do-2 = ¿Sin daño? Gire de lado. Póngase a gatas.
signs-floor-do-3 = Gatee hasta una silla firme. Ponga las manos en el asiento.
signs-floor-do-4 = Ponga delante la pierna más fuerte. Empuje, gire y siéntese.
signs-floor-do-5 = ¿No puede? Abríguese, haga ruido y pida ayuda.

## La pregunta de cada señal, por id, y lo mismo en pocas palabras

sign-saddle-numb = ¿Siente dormida o con hormigueo la zona entre las piernas, donde toca el asiento de una bici?
sign-short-saddle-numb = zona dormida entre las piernas
sign-bladder-bowel = ¿Le cuesta empezar o parar de orinar, se le escapa orina o caca, o no nota las ganas?
sign-short-bladder-bowel = problemas nuevos con la orina o la caca
sign-both-legs-weak = ¿Tiene las dos piernas débiles, dormidas o difíciles de mover, o dolor en las dos?
sign-short-both-legs-weak = las dos piernas débiles, dormidas o con dolor
sign-one-leg-weaker = ¿Una pierna o un pie pierde fuerza? ¿Arrastra el pie, o la rodilla cede?
sign-short-one-leg-weaker = una pierna pierde fuerza
sign-major-trauma = ¿Empezó tras una mala caída, un choque o un golpe fuerte?
sign-short-major-trauma = empezó tras una caída, un choque o un golpe
sign-minor-trauma-fragile = ¿Dolor fuerte de golpe tras una caída o carga pequeña? ¿Y huesos débiles, corticoides o más de 70 años?
sign-short-minor-trauma-fragile = dolor fuerte de golpe, y huesos quizá débiles
sign-fever-unwell = ¿Fiebre, escalofríos, o se siente muy mal junto con el dolor?
sign-short-fever-unwell = fiebre, o se siente muy mal
sign-cancer-history = ¿Ha tenido cáncer alguna vez, y este dolor es distinto y nuevo?
sign-short-cancer-history = cáncer en el pasado y un dolor nuevo
sign-weight-loss = ¿Baja de peso sin querer?
sign-short-weight-loss = baja de peso sin querer
sign-night-pain = ¿El dolor nunca cede, haga lo que haga, ni de noche?
sign-short-night-pain = dolor que nunca cede
sign-hot-joint = ¿Una articulación caliente, roja o muy hinchada? Si está muy mal o es una prótesis, pida ayuda de emergencia.
sign-short-hot-joint = una articulación caliente, roja o muy hinchada
sign-locked-knee = ¿Se le traba una rodilla? ¿No puede estirarla o doblarla?
sign-short-locked-knee = una rodilla trabada
sign-no-weight-bear = ¿No puede dar 4 pasos con una pierna? Si fue tras una caída, pida ayuda de emergencia.
sign-short-no-weight-bear = no puede dar 4 pasos
sign-calf-swollen = ¿Una pantorrilla hinchada, dolorida y caliente?
sign-short-calf-swollen = una pantorrilla hinchada, dolorida y caliente
sign-chest-breath = ¿Dolor en el pecho, falta de aire, o sudor con ganas de vomitar?
sign-short-chest-breath = dolor en el pecho o falta de aire
sign-dizzy-faint = ¿Se marea, o va a desmayarse ahora? Si no se le pasa, pida ayuda de emergencia.
sign-short-dizzy-faint = mareo o desmayo
sign-stroke-signs = ¿Cara caída de un lado, un brazo sin fuerza, habla rara o confusión repentina?
sign-short-stroke-signs = la cara, un brazo o el habla no están como siempre
sign-hernia-bad = ¿Un bulto en la ingle o la barriga que duele mucho, o vomita por eso?
sign-short-hernia-bad = un bulto que duele mucho en la ingle o la barriga
sign-post-op-recent = ¿Le operaron de espalda, cadera, rodilla o vientre en los últimos 3 meses?
sign-short-post-op-recent = operación en los últimos 3 meses
