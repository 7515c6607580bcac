# Mirar atrás y sacar los datos: palabras fijas.

screen-back-title = Mirar atrás
screen-back-lead = Lo que usted anotó, todo junto. No muestra causas ni fija límites.
screen-back-theirs = Lo que entregó, todo junto. No muestra causas ni fija límites.
screen-back-span = Hasta cuándo
screen-back-12-weeks = 12 semanas
screen-back-year = Un año
screen-back-all = Todo
screen-back-table = Los números
screen-back-day = Día
screen-back-week = Semana desde
screen-back-lifted = Levantado en total
screen-back-times = Cuántas veces
screen-back-out = Sacar los datos de la aplicación

screen-out-title = Sacar los datos
screen-out-lead = Para su clínica, sus papeles u otro programa.
screen-out-note = Una nota corta
screen-out-note-hint = Texto para pegar o leer en voz alta.
screen-out-csv = Una tabla
screen-out-csv-hint = Se abre en una hoja de cálculo.
screen-out-fhir = Un archivo para la clínica
screen-out-fhir-hint = En la forma HL7 FHIR R4.
screen-out-pdf = Una página para imprimir
screen-out-pdf-hint = Un PDF para la nevera o la ficha.
screen-out-save = Guardarlo
screen-out-saved-at = Guardado: [path]
screen-out-saved = Guardado con sus descargas.
screen-out-leaves = Lo que sale
screen-out-stays = Lo que se queda
screen-out-make = Hacerlo
screen-out-made = Aquí está
screen-out-copy = Copiarlo todo
screen-out-copied = Copiado. Otras aplicaciones pueden leer lo copiado.
screen-out-copy-failed = No se pudo copiar. Marque el texto y cópielo a mano.
