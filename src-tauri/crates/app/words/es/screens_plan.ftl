# Las páginas del plan que se sigue.

screen-plan-open = Ver su plan
screen-plan-step = Su nivel
screen-plan-practice = Práctica
screen-plan-log = Práctica hasta hoy
screen-plan-log-none = Todavía no hay nada anotado.
screen-plan-whole = Todo el plan
screen-plan-how = ¿Cuánto fue el peor dolor mientras lo hacía?
screen-plan-how-hint = 0 es nada, 10 es lo peor que pueda imaginar.
screen-plan-did = Lo hice, sin número
screen-plan-left = Hoy no
screen-plan-kept = Anotado.
screen-plan-stepped = Su nivel ha cambiado.
screen-plan-stayed = Se queda en su nivel.
screen-plan-flare = Hoy tengo un brote
screen-plan-flare-on = Hoy contó que tiene un brote
screen-plan-flare-what = Su nivel es ahora más o menos la mitad. Por hoy su espalda cuenta como en un brote.
screen-plan-flare-told = Anotado.
screen-plan-flare-steps = Qué hacer en un brote
