# Textos fijos de las pantallas. Se entregan una sola vez, así que ninguno lleva valores.
# Los huecos entre corchetes, como [at], los rellenan las pantallas.

## En todas las páginas

screen-app-name = Heftwell
screen-bar-label = Dónde está
screen-back = Atrás
screen-home = Inicio
screen-continue = Continuar
screen-change = Cambiar
screen-close = Cerrar
screen-skip = Omitir
screen-undo = Deshacer
screen-undone = Se ha deshecho.
screen-chosen = su respuesta
screen-language = Idioma
screen-signs-link = Señales de alarma y a quién llamar

## Problemas

screen-error-title = Revise esto, por favor
screen-error-prefix = Problema:
screen-error-page-title = Esta página no se abrió
screen-try-again = Probar otra vez
screen-unreachable = No llegó respuesta. Sus notas siguen igual. Cierre la app y vuelva a abrirla.

## Primer arranque

screen-start-title = Antes de levantar, pregunte
screen-start-what = Diga qué quiere levantar y qué le duele hoy. Recibirá una forma de levantarlo, u otra manera de resolverlo.
screen-start-limits = Esto le ayuda a elegir. No le examina. No es un médico ni un terapeuta.
screen-start-private = Lo que cuente se queda en este teléfono, bajo llave. No se envía nada.
screen-start-go = Empezar

screen-use-title = ¿Qué hace más a menudo?
screen-use-hint = Puede cambiarlo más adelante.
screen-use-lift = Levanto cosas yo
screen-use-lift-note = En casa, en el jardín, en el trabajo
screen-use-help = Ayudo a otros a moverse
screen-use-help-note = Como cuidador a domicilio o familiar
screen-use-treat = Trato a pacientes
screen-use-treat-note = Como profesional de la salud

screen-units-title = ¿Cómo pesa las cosas?
screen-units-kg = Kilos (kg)
screen-units-lb = Libras (lb)

## Frase de paso

screen-pass-title = Guarde sus notas bajo llave
screen-pass-what = Una frase de paso es una contraseña larga. Cierra todo lo que escriba aquí.
screen-pass-label = Frase de paso
screen-pass-new = Nueva frase de paso
screen-pass-new-hint = Al menos 10 letras. Van bien cuatro palabras que recuerde.
screen-pass-again = La misma otra vez
screen-pass-show = Mostrar
screen-pass-lost-title = Si la pierde:
screen-pass-lost = no se podrán abrir sus notas. Ni usted ni nosotros. Apúntela y guárdela en casa.
screen-pass-keep = Cerrar mis notas
screen-pass-change = Cambiar la frase de paso
screen-pass-old = Frase de paso de hasta ahora
screen-pass-changed = La nueva frase de paso ya vale.
screen-pass-empty = Escriba su frase de paso.

screen-unlock-title = Abra sus notas
screen-unlock-text = Escriba su frase de paso. Hasta entonces no se da ningún consejo.
screen-unlock-open = Abrir
screen-unlock-wait = Abriendo. Tarda un momento.

## Inicio

screen-greeting-morning = Buenos días
screen-greeting-afternoon = Buenas tardes
screen-greeting-evening = Buenas noches
screen-greeting-day = Hola
screen-home-lead = ¿Va a levantar algo? Consulte aquí primero.
screen-home-check = Consultar antes de levantar
screen-draft-text = Lo dejó a medias. Sus respuestas están guardadas.
screen-draft-go-on = Seguir
screen-morning-go = Responder
screen-saved-title = Tareas guardadas
screen-body-kept-title = Su cuerpo hoy
screen-recent-title = Lo último
screen-pages = Más páginas
screen-lock = Cerrar con llave

screen-fresh-title = ¿Empezar otra consulta?
screen-fresh-text = Hay una abierta. Si empieza otra, la abierta se borra.
screen-fresh-start = Empezar otra

## Preguntas

screen-place = [at] de [of]
screen-not-sure = No lo sé
screen-none-of-these = Ninguna de estas
screen-why-asked = Por qué lo preguntamos
screen-tick-nothing = Marque lo que sea cierto o toque «Ninguna de estas».
screen-tick-and-none = Ha marcado algo. Quite la marca o toque «Continuar».
screen-number-problem = Escriba un número, como 4 o 6,5.
screen-pain-none = sin dolor
screen-pain-worst = el peor dolor que pueda imaginar

## Consejo

screen-outcome-lift = Una forma de levantarlo
screen-outcome-lift-with-change = Cámbielo primero
screen-outcome-do-not-lift = Déjelo así como está
screen-outcome-seek-care = Primero busque ayuda
screen-outcome-refuse = Pregunte a otra persona
screen-cautions = Tenga cuidado
screen-did-it = Lo hice
screen-left-it = Lo dejé
screen-did-it-this-way = Lo hice así
screen-read-it = Ya lo he leído
screen-advice-cues = En tres pasos
screen-advice-how = Cómo se hace
screen-advice-more-cautions = Tenga cuidado también con esto
screen-advice-other-ways = Otras formas de levantarlo
screen-advice-changes = Qué cambiar
screen-advice-changes-any = Basta con una de estas.
screen-advice-together = Haga todo esto:
screen-advice-alternatives = Otras maneras de resolverlo
screen-advice-ruled-out = Formas que se descartaron
screen-advice-who = A quién llamar o preguntar
screen-advice-why = Por qué, y con qué certeza
screen-rule-version = Reglas: versión [version]

## La figura de una manera, y dos lado a lado

screen-figure-asks = Lo que pide, más o menos:
screen-figure-play = Mostrar en movimiento
screen-figure-stop = Parar el movimiento
screen-figure-sure = ¿Qué tan cierto es este dibujo?
screen-figure-estimate = Qué tan cierto: es un cálculo aproximado. Un modelo del cuerpo calcula el esfuerzo de cada articulación en un levantamiento lento. Poco, algo y mucho lo comparan con marcas publicadas para la espalda. Para caderas y rodillas, con reglas propias.

screen-compare-link = Comparar dos formas
screen-compare-title = Dos formas lado a lado
screen-compare-decides = El consejo lo decide la práctica de los terapeutas. Este dibujo no lo decide.
screen-compare-choose = Elija dos formas
screen-compare-none = Esta forma no se pudo dibujar para este levantamiento.

## Después de levantar

screen-after-title = ¿Cuánto le dolió al levantarlo?
screen-after-hint = Cuenta el peor momento. Toque un número.
screen-kept = Guardado en su historial.
screen-left-title = ¿Qué hizo en su lugar?
screen-left-only = Nada. Solo lo dejé.
screen-morning-title = ¿Cómo está hoy?
screen-morning-hint = Su dolor ahora mismo. Toque un número.
screen-usual-title = ¿Se siente otra vez como siempre?
screen-usual-yes = Sí, como siempre
screen-usual-no = No, todavía no

## Historial

screen-history-title = Historial
screen-history-none = Aquí no hay nada todavía.
screen-history-count = Se muestran: [count]
screen-history-more = Ver más antiguas
screen-filter = Mostrar solo algunas
screen-filter-show = Cuáles
screen-filter-all = Todas
screen-filter-done = Las que hice
screen-filter-left = Las que dejé
screen-filter-way = Forma de levantar
screen-filter-any-way = Cualquier forma
screen-filter-since = Desde este día
screen-entry-when = Cuándo
screen-entry-done = Qué hizo
screen-entry-pain = Dolor
screen-entry-answers = Sus respuestas
screen-entry-advice = El consejo que recibió

screen-way-hinge = Bisagra de cadera
screen-way-squat = Sentadilla
screen-way-lunge = Una rodilla al suelo
screen-way-free-bend = Agacharse sin más
screen-way-golfer = Pierna atrás
screen-way-upright = Levantar de pie

## Tareas guardadas

screen-save-link = Guardar para la próxima vez
screen-save-title = Guardar esta tarea
screen-save-text = La próxima vez se abre con un toque. Solo tendrá que decir cómo está.
screen-save-name = Nombre
screen-save-hint = Por ejemplo: cesto de la ropa
screen-save-keep = Guardar
screen-save-empty = Escriba un nombre.
screen-saved-kept = Guardada para la próxima vez.
screen-saved-drop = Borrar

## Ajustes

screen-settings-title = Ajustes
screen-about-title = Sobre usted
screen-about-none = Aún no se ha preguntado.
screen-about-again = Responder otra vez
screen-private-title = Sus notas
screen-private-here = Todo se queda en este teléfono. No se envía nada.
screen-private-locked = Sus notas se cierran con su frase de paso. Se vuelven a cerrar si pasan unos minutos sin usarlas.
screen-private-lost = Si pierde la frase de paso, no se podrán abrir sus notas.
screen-erase-title = Borrar todas las notas
screen-erase-lost = Esto borra lo que levantó, lo que guardó, lo que contó de usted y las señales de alarma abiertas.
screen-erase-final = Es para siempre. Nadie las puede traer de vuelta.
screen-limits-title = Lo que no es
screen-limits-text = No se ha evaluado como producto sanitario. Su terapeuta, su médico y las normas del trabajo van primero.
screen-version = Versión [version]

## Una señal de alarma que se contó

screen-sign-clear-link = Ya pasó, o ya la miró alguien
screen-sign-clear-title = ¿Qué pasa con esta señal?
screen-sign-clear-text = Mientras haya una señal abierta, no hay consejos para levantar. Algunas señales las tiene que mirar un profesional.
screen-sign-clear-clinician = La miró un profesional
screen-sign-clear-emergency = Esta señal la tiene que mirar antes un profesional.
screen-sign-clear-me = Ya pasó
