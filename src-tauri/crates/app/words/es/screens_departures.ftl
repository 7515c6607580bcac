# La página "Lo que salió de este teléfono": palabras fijas.

screen-gone-title = Lo que salió de este teléfono
screen-hand-kept = El registro
screen-gone-note = Qué, cuándo y a quién
screen-gone-lead = Lo más nuevo primero. Lo que contenía no se guarda aquí.
screen-gone-none = No hay nada en esta lista.
screen-gone-more = Mostrar más antiguos
screen-gone-stays = Esta lista se queda aquí. Nunca se entrega.
screen-gone-clear = Vaciar esta lista
screen-gone-clear-what = La lista se borra del todo. Lo que salió sigue donde está ahora, y no se avisa a nadie.
screen-gone-clear-yes = Borrar la lista
screen-gone-cleared = La lista está vacía ahora.
