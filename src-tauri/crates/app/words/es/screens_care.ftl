# Palabras fijas de las pantallas para mover a otras personas.

## Personas

screen-care-title = Personas que ayuda
screen-care-before = Antes de mover
screen-care-lead = ¿Quién es? Toque el dibujo y el código.
screen-care-none = Aún no hay nadie anotado.
screen-care-new = Alguien nuevo
screen-care-link = Ayudar a mover
screen-care-things = Revisar una carga
screen-care-shift = Turno y registro
screen-care-trained = Su formación
screen-care-code-title = Un código y un dibujo
screen-care-code-what = Use un código, nunca un nombre, salvo que su empresa lo permita.
screen-care-code = Código
screen-care-code-pick = Elija el dibujo que le ayude a saber quién es. Queda arriba en cada página.
screen-care-move-title = ¿Qué movimiento es?
screen-care-moves-known = Conocidos
screen-care-moves-all = Otros movimientos
screen-care-known-title = Lo que se sabe
screen-care-forget = Ha cambiado: preguntar todo de nuevo
screen-care-edit = Cambiar código o dibujo
screen-care-drop = Quitar a esta persona
screen-care-drop-sure = Se va todo lo que se sabe. El registro queda hasta que lo borre.
screen-care-who = Se trata de

## Plan de cuidado

screen-care-plan = Anotar el plan de cuidado
screen-care-plan-pick = ¿Para qué movimiento?
screen-care-plan-ways = ¿Qué formas nombra?
screen-care-plan-workers = ¿Cuántas personas pide?
screen-care-plan-not-said = No lo dice
screen-care-plan-by = ¿Quién lo hizo?
screen-care-plan-on = ¿Qué fecha tiene?
screen-care-plan-on-hint = Año, mes, día. Como 2026-11-25
screen-care-plan-on-label = Fecha del plan
screen-care-plan-review = ¿Cuándo debe revisarse?
screen-care-plan-review-what = Después de ese día el plan aún prohíbe. Lo que permite ya no vale. Un plan vale medio año como máximo.
screen-care-plan-review-label = Día para revisarlo
screen-care-plan-review-empty = Escriba el día, o toque "No lo dice".
screen-care-plan-give = Entregar el plan de cuidado
screen-care-plan-keep = Guardarlo
screen-care-plan-drop = Quitar este plan
screen-care-plan-strict = Si las fuentes no coinciden, tomamos la más estricta. Un plan puede permitir la otra.

## La respuesta

screen-care-before-checks = Mire esto primero
screen-care-steps = Pasos
screen-care-stop = Pare si
screen-care-after = Qué avisar
screen-care-after-what = Avise a la oficina de lo que no fue como el plan, de un casi accidente y de dolor nuevo.
screen-care-with = Con
screen-care-without = Sin equipo
screen-care-read = Leer en voz alta
screen-care-read-stop = Dejar de leer
screen-care-done = Está hecho
screen-care-not-done = No lo hicimos
screen-care-tell = Avisar a la oficina
screen-care-differs = Hoy no es como dice el plan
screen-care-no-equipment = Falta equipo o alguien
screen-care-wrong = Algo va mal ahora
screen-care-harder = Algo lo hace más difícil
screen-care-own-load = Lo que pide a su cuerpo
screen-care-else = Qué más hacer
screen-care-differ-title = Las fuentes no coinciden
screen-care-order = Primero van su empresa y las reglas locales. Luego las señales de alarma, el plan y el día de hoy. El no de la persona va antes que todo.
screen-care-own-ask = Contestar unas preguntas
screen-care-mark-go = Una forma de mover
screen-care-mark-leave = No la mueva así
screen-care-log = Guardar en el registro
screen-care-own-again = Cambiar cómo estoy hoy

## Algo va mal en medio

screen-care-stop-title = Pare. Bájela ahora.
screen-care-stop-1 = Baje a la persona a la silla, cama o suelo más cercano. Despacio.
screen-care-stop-2 = Quédese con la persona. Háblele.
screen-care-stop-3 = Pida ayuda. Si es grave: el número de emergencias de su zona.
screen-care-stop-4 = No la levante otra vez sin ayuda.
screen-care-stop-log = Anotarlo como casi accidente
screen-care-stop-fine = Todo va bien, volver

## Oficina, registro y turno

screen-care-report-what = Solo hechos. Nada de su cuerpo. Léalo. Sale solo cuando usted toca.
screen-care-copy = Copiar el texto
screen-care-share = Enviar el texto
screen-care-said = Ya les avisé yo
screen-care-copied = Copiado. Péguelo donde la oficina lo lea.
screen-care-copy-failed = El teléfono no dejó copiar. Marque el texto y cópielo a mano.
screen-care-kept = Guardado en el registro.
screen-care-helped-title = ¿Qué ayudó?
screen-care-nearly = Casi sale mal
screen-care-near-title = ¿Qué vio?
screen-care-shift-none = Nada en este turno aún.
screen-care-shift-what = Esto es lo que entrega. Sale solo cuando lo copia o lo envía.
screen-care-shift-proof = Los casi accidentes y las negativas son prueba. Quedan si no dice otra cosa.
screen-care-shift-hand = Ya está entregado
screen-care-shift-last = Entregado
screen-care-shift-erase = Borrar los movimientos del turno
screen-care-shift-erase-all = Borrar también casi accidentes y negativas
screen-care-shift-sure = Son prueba de que preguntó y paró. ¿Los tiene la oficina?
screen-care-proof = Prueba
