# Inicio, historial y tareas guardadas: textos con valores.

## Un levantamiento en una línea

lift-title = { $thing }, { $mass }, { $start }
lift-title-short = { $thing }, { $mass }
lift-title-none = Sin describir
saved-text = { $mass }, { $start }
thing-small = Algo pequeño
thing-box = Caja
thing-bag = Bolsa
thing-basket = Cesta
thing-bucket = Cubo
thing-long = Algo largo
thing-big = Algo grande
thing-not-sure = Algo
from-floor = desde el suelo
from-shin = desde media pierna
from-knee = desde las rodillas
from-waist = desde la cintura
from-chest = desde el pecho
from-overhead = desde arriba de la cabeza

## Inicio

body-part = { $region } { $pain }
body-until = Después de las { $time } volvemos a preguntar.
morning-ask = Ayer: { $title }. ¿Cómo está hoy?
open-sign = Marcó una señal de alarma: { $sign }. No levante nada hasta que esté aclarado.
open-sign-since = Desde: { $day }.

## Una entrada del historial

entry-lift = Consejo: levantar así
entry-lift-with-change = Consejo: cambiar algo antes
entry-do-not-lift = Consejo: no levantarlo tal como está
entry-seek-care = Consejo: pedir ayuda antes
entry-refuse = No se pudo dar consejo
entry-done = Hecho
entry-done-way = Hecho: { $way }
entry-left = Se dejó
entry-left-instead = Se dejó. En su lugar: { $instead }
entry-pain-after = El peor dolor al levantar: { $pain } de 10.
entry-pain-morning = A la mañana siguiente: { $pain } de 10.
entry-usual-yes = A la mañana siguiente, como siempre.
entry-usual-no = A la mañana siguiente, aún no como siempre.
entry-usual-not-sure = A la mañana siguiente: no está claro si como siempre.

## Demostración

note-demo = Datos inventados. Aquí no vive nadie. Vinieron con esta frase de paso: { $passphrase }
demo-laundry = Cesta de ropa
demo-water = Paquete de agua
