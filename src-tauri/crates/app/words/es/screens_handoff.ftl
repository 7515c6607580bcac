# Palabras fijas de las páginas que pasan planes e historiales de teléfono a teléfono.

## Entregar

screen-hand-title = Entregar
screen-hand-link = Planes y personas
screen-hand-lead = Pase un plan o su historial de un teléfono a otro. Nada se envía. El otro teléfono lee su pantalla.
screen-hand-give = Entregar algo
screen-hand-give-note = Un plan o su historial
screen-hand-take = Recibir algo
screen-hand-take-note = Con la cámara, una foto o un archivo
screen-hand-plans = Planes
screen-hand-mine = El plan que sigo
screen-hand-made = Planes para otros
screen-hand-made-note = Haga uno a partir de un modelo
screen-hand-people = Personas
screen-hand-pair = Enlazar con alguien
screen-hand-pair-note = Dos teléfonos se conocen, una sola vez
screen-hand-paired = Con quién estoy enlazado
screen-hand-no-alias = Todavía sin nombre

## Mi tarjeta

screen-card-title = Mi tarjeta
screen-card-what = El otro teléfono muestra este nombre. No tiene que ser el suyo.
screen-card-label = Nombre en mi tarjeta
screen-card-hint = Elija un nombre que no diga quién es.
screen-card-suggest = Usar “[name]”
screen-card-keep = Guardar este nombre

## Enlazar

screen-pair-title = Enlazar dos teléfonos
screen-pair-step-show = Muestre esto al otro teléfono.
screen-pair-step-scan = Después lea el otro teléfono.
screen-pair-step-words = Al final, comparen seis palabras.
screen-pair-scanned = Usted ya leyó el otro teléfono. Ahora el otro debe leer este. Después comparen las palabras.
screen-pair-scan = Leer el otro teléfono
screen-pair-compare = Comparar las palabras

screen-compare-words-title = ¿Son iguales estas palabras?
screen-compare-words-what = Léalas en voz alta. El teléfono de [name] debe mostrar las mismas seis palabras.
screen-compare-same = Las seis palabras son iguales
screen-compare-other = La otra persona dice lo mismo
screen-compare-both = Marque las dos, o toque “No son iguales”.
screen-compare-differ = No son iguales
screen-compare-pair = Enlazar
screen-paired = Ya están enlazados.
screen-not-paired = No se enlazó. No se guardó nada. Empiecen de nuevo y lean solo el teléfono del otro.

screen-warn-title = Este teléfono no es el que usted conoce
screen-warn-what = Puede ser un teléfono nuevo. También puede ser otra persona que usa este nombre.
screen-warn-ask = Pregunte a [name] cara a cara: ¿tiene un teléfono nuevo?
screen-warn-go-on = Sí, es un teléfono nuevo
screen-warn-stop = Parar aquí

screen-people-none = No está enlazado con nadie. Enlace una vez y luego entregue cuantas veces quiera.
screen-people-none-short = Nadie todavía
screen-role-lifts = Levanta cosas
screen-role-helps = Ayuda a otros a moverse
screen-role-treats = Atiende a personas

screen-person-history = Ver lo que le entregó
screen-person-name = Nombre para esta persona
screen-person-name-hint = Solo usted ve este nombre.
screen-person-keep = Guardar el nombre
screen-person-end = Terminar este enlace
screen-person-end-what = Los planes y notas que llegaron se quedan. Para entregar otra vez, hay que enlazar de nuevo.
screen-person-end-yes = Terminar ahora
screen-person-ended = El enlace ha terminado.

## Qué entregar

screen-give-what = ¿Qué quiere entregar?
screen-give-history = Mi historial
screen-give-history-note = Lo que levantó y cómo se sintió
screen-give-new-plan = Un plan nuevo
screen-give-new-plan-note = Hágalo primero
screen-give-care = Un plan de cuidado
screen-give-care-note = Para alguien a quien se ayuda a moverse. Primero elija la persona.
screen-give-when = ¿Desde cuándo?
screen-give-when-30 = Los últimos 30 días
screen-give-when-90 = Los últimos 90 días
screen-give-when-all = Todo
screen-give-notes = ¿Van también sus notas?
screen-give-notes-no = No, sin notas
screen-give-notes-no-note = Solo levantamientos y dolor
screen-give-notes-yes = Sí, con notas
screen-give-notes-yes-note = Todo lo que escribió con sus palabras
screen-give-whom = ¿Para quién?
screen-give-unpaired = Alguien con quien no estoy enlazado
screen-give-unpaired-note = Se abre con ocho palabras que usted lee en voz alta

screen-leaves-title = Esto saldrá de su teléfono
screen-leaves-sealed = Va sellado. Una foto de su pantalla no sirve a nadie más.

## Mostrar

screen-show-title = Muestre esto al otro teléfono
screen-show-symbol = Código QR para el otro teléfono
screen-show-one = El otro teléfono toca “Recibir algo” y mira esto.
screen-show-many = Las imágenes cambian todo el tiempo. No muevan los teléfonos hasta que el otro anillo esté lleno.
screen-show-none = Esto es muy largo para un código QR. Guárdelo como archivo y páselo.
screen-show-bright = Suba el brillo de su pantalla.
screen-show-rests = Está oculto: nadie tocó el teléfono en un minuto.
screen-show-again = Mostrar otra vez
screen-show-pause = Pausa
screen-show-play = Seguir
screen-show-next = Imagen siguiente
screen-show-slower = Más lento
screen-show-faster = Más rápido
screen-show-done = Listo
screen-show-other-ways = Si el otro teléfono no puede leerlo
screen-show-larger = Mostrar cuadros más grandes
screen-show-print = Imprimir

screen-code-what = No están enlazados. Se abre solo con ocho palabras.
screen-code-show = Mostrar las ocho palabras
screen-code-aloud = Léalas en voz alta. No las envíe junto con una foto o el archivo.
screen-code-hide = Ocultar las palabras

screen-paper-what = Lea esto con Heftwell: Entregar, luego “Recibir algo”. Solo el teléfono debido puede abrirlo.

screen-file-what = El archivo también va sellado. Puede pasarlo como cualquier archivo.
screen-file-save = Guardar como archivo
screen-file-saved = Guardado: [path]
screen-file-browser = Su navegador lo guarda como [path].

## Recibir

screen-scan-pair = Leer el otro teléfono
screen-scan-parcel = Recibir algo
screen-scan-pair-what = El otro teléfono muestra su código QR en “Enlazar con alguien”.
screen-scan-parcel-what = Apunte la cámara al código QR del otro teléfono o del papel.
screen-scan-opening = Abriendo la cámara.
screen-scan-hold = Llene el cuadro con el código. No se mueva.
screen-scan-none = Aquí no hay cámara. Use una foto o un archivo.
screen-scan-refused = No se puede usar la cámara. Puede permitirla en los ajustes de su teléfono. O use una foto o un archivo.
screen-scan-more = No se mueva. Está llegando más.
screen-scan-whole = Ya llegó todo.
screen-scan-count = [have] de [need]
screen-scan-ring = Cuánto ha llegado
screen-scan-other-ways = Sin la cámara en vivo
screen-scan-photo = Tomar una foto
screen-scan-picture = Elegir una imagen
screen-scan-file = Elegir un archivo
screen-scan-nothing = En esta imagen no se puede leer un código QR. Acérquese, no se mueva y evite los reflejos.
screen-scan-too-large = Este archivo es muy grande. Elija otro.

screen-eight-title = Escriba las ocho palabras
screen-eight-what = Esto viene de alguien con quien no está enlazado. Pídale que le lea ocho palabras.
screen-eight-label = Ocho palabras
screen-eight-hint = Con espacios entre ellas. No importan las mayúsculas.
screen-eight-open = Abrir

screen-question-nothing = Todavía no ha cambiado nada.

## Planes

screen-plan-none = Usted no sigue ningún plan. Un profesional de salud puede entregarle uno.
screen-plan-stop = Dejar de seguir este plan
screen-plan-stop-what = Sus límites ya no contarán en los consejos. Hable primero con quien lo hizo.
screen-plan-stop-yes = Dejar de seguirlo
screen-plan-stopped = Ya no sigue ningún plan.

screen-plans-none = Todavía no hay ningún plan.
screen-plans-new = Hacer un plan nuevo
screen-plans-pattern = ¿De qué modelo parte el plan?
screen-plans-pattern-what = Cada uno es un primer borrador, por regla de la casa. Puede cambiar cada línea.
screen-plans-whom = ¿Para quién es el plan?
screen-plans-whom-label = Nombre en el plan
screen-plans-begin = Seguir
screen-plans-for = Para [name]
screen-plans-give = Entregarlo
screen-plans-preview = Lo que respondería
screen-plans-day = ¿En qué tipo de día?
screen-plans-paper = En papel
screen-plans-paper-make = Ponerlo en papel
screen-plans-paper-whom = ¿Quién escaneará la hoja?
screen-plans-paper-what = Una hoja con el plan en palabras sencillas. Su símbolo lleva el plan a un teléfono enlazado.
screen-plans-paper-for = Con un símbolo que solo abre este teléfono.
screen-plans-paper-nobody = Nadie
screen-plans-paper-nobody-note = Una hoja para leer, sin símbolo.
screen-plans-yes = Sí
screen-plans-no = No
screen-plans-in = En [unit]
screen-plans-number = Número
screen-plans-range = De [min] a [max].
screen-plans-set = Guardar esto
screen-plans-without = Dejarlo fuera
