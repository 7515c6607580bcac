# Las personas a quienes trata un clínico: palabras fijas de las pantallas.

screen-patients = Personas que trato
screen-patients-find = Buscar un nombre
screen-patients-find-hint = Escriba el principio de un nombre.
screen-patients-none = Aún no hay nadie en la lista. Llegan aquí al hacerles un plan o al llegar su historial.
screen-patients-add = Añadir a alguien
screen-patients-new = ¿A quién quiere añadir?
screen-patients-alias = Nombre en esta lista
screen-patients-plans = Planes
screen-patients-no-plan = Aún no hay plan.
screen-patients-not-given = Aún sin entregar.
screen-patients-why = Por qué: [why]
screen-patients-why-private = Por qué, solo para usted: [why]
screen-patients-first = Primera versión.
screen-patients-look = Mirar atrás juntos
screen-patients-give = Entregar algo
screen-patients-make = Hacer un plan
screen-patients-notes = Mis notas
screen-patients-notes-what = Nunca salen de este teléfono.
screen-patients-note = Nota nueva
screen-patients-note-keep = Guardar la nota
screen-patients-note-remove = Quitar esta nota
screen-patients-rename = Otro nombre
screen-patients-remove = Quitar de la lista
screen-patients-remove-what = Se borran los planes hechos para esta persona y sus notas de usted. Lo que entregó se queda.
screen-patients-remove-yes = Quitar y borrar
