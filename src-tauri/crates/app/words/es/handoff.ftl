# Pasar planes e historiales de un teléfono a otro: textos con valores, y por qué algo no se tomó.

## Names and people

handoff-suggest = { $thing } { $colour }
handoff-suggest-colours = azul. verde. rojo. amarillo. blanco. negro. gris. marrón. naranja. morado
handoff-suggest-things = Vaso. Barco. Banco. Tambor. Lápiz. Cesto. Botón. Reloj. Puente. Farol. Plato. Libro. Cubo. Globo. Sombrero. Tren
handoff-pairing-since = Unidos desde el { $day }
handoff-pairing-old-keys = Este teléfono se preparó de nuevo después. Únalo otra vez con esa persona.
handoff-role-lifts = Levanta cosas
handoff-role-helps = Ayuda a otros a moverse
handoff-role-treats = Trata a personas

## Pairing

handoff-warning-other-keys = Usted conoce un teléfono llamado { $alias }. Este es otro teléfono. Siga solo si esa persona tiene teléfono nuevo. Ocupará el lugar del anterior.
handoff-warning-renamed = Usted conoce este teléfono como { $was }. Ahora se llama { $alias }. Pregunte por qué.

## Why something was not taken

handoff-refused-foreign = Este código no es de esta app. No se tomó nada. Busque el código en el otro teléfono.
handoff-refused-damaged = Este código está dañado. No se tomó nada. Sujete firme y lea el código otra vez.
handoff-refused-truncated = Falta una parte de este código. No se tomó nada. Pida el código o el archivo entero.
handoff-refused-newer = Esto se hizo con una versión más nueva de la app. No se tomó nada. Instale la versión nueva para leerlo.
handoff-refused-spoiled = Las imágenes no encajaban. Se tiraron. Siga leyendo.
handoff-refused-picture = Este archivo no es una imagen que la app lea. No se tomó nada. Pruebe con una foto del código.
handoff-refused-offer-here = Este código es para unir teléfonos. No se tomó nada. Vaya a unir teléfonos para usarlo.
handoff-refused-parcel-here = Este código lleva un plan o un historial. No sirve para unir teléfonos. No se tomó nada.
handoff-refused-show-yours = Su código aún no se muestra. No se tomó nada. Muestre primero su código y luego lea el otro.
handoff-refused-own-card = Este es su propio código. No se tomó nada. Lea el código del otro teléfono.
handoff-refused-same = Usted ya tiene esto. No se cambió nada.
handoff-refused-same-plan = Usted ya sigue este plan. No se cambió nada.
handoff-refused-replayed = Ya lo tomó una vez, y después uno más nuevo. No se cambió nada. Pida el más nuevo.
handoff-refused-older = Usted tiene algo más nuevo de esa persona. No se cambió nada. Pida lo más nuevo.
handoff-refused-older-plan = Esta versión es más vieja que la suya. No se cambió nada. Pida el plan más nuevo.
handoff-refused-same-number = Este plan tiene el número del suyo, pero dice otra cosa. No se cambió nada. Pida una versión nueva.
handoff-refused-number-twice = Este número ya se usó para otra cosa. No se cambió nada. Una los teléfonos otra vez.
handoff-refused-wrong-recipient = Esto es para otro teléfono. No se tomó nada. Pida que lo muestren para usted.
handoff-refused-unknown-sender = Esto viene de un teléfono que no está unido al suyo. No se tomó nada. Una primero los teléfonos.
handoff-refused-not-authentic = Esto no es lo que hizo esa persona. Alguien pudo cambiarlo. No se tomó nada. Pida que lo muestre otra vez.
handoff-refused-expired = El tiempo para tomar esto se acabó. No se tomó nada. Pida que lo muestren otra vez.
handoff-refused-unreadable = La app no puede leer lo que hay dentro. No se tomó nada. Pida que lo muestren otra vez.
handoff-refused-newer-content = Esto dice algo que su app aún no conoce. No se tomó nada. Instale la versión nueva para usarlo.
handoff-refused-contradiction = Dos partes de este plan no encajan. No se tomó nada. Pida una versión nueva.
handoff-refused-same-care = Usted ya tiene este plan de cuidado. No se cambió nada.
handoff-refused-older-care = Este plan de cuidado es más viejo que el suyo. No se cambió nada. Pida el más nuevo.
handoff-refused-care-other-person = Antes este plan de cuidado era de otra persona. No se cambió nada. Pregunte de quién es.
handoff-refused-care-own = Este plan de cuidado se hizo en este teléfono. No se cambió nada.
handoff-refused-care-future = La fecha de este plan de cuidado aún no llega. No se tomó nada. Pregunte a quien lo envió.
handoff-refused-care-contradiction = Dos partes de este plan de cuidado no concuerdan. No se tomó nada. Pida otro.
handoff-refused-care-full = Hay demasiadas personas en este teléfono. No se tomó nada. Quite una que ya no ayuda.
handoff-refused-used = Esto ya se tomó una vez con sus palabras. No se cambió nada. Pida uno nuevo.
handoff-refused-memory = Al teléfono le falta memoria. No se tomó nada. Cierre otras apps y pruebe otra vez.
handoff-code-not-eight = Tienen que ser ocho palabras. No se cambió nada. Pida las palabras y escriba todas.
handoff-code-not-a-word = Una de estas palabras no está en la lista. No se cambió nada. Mire cómo se escriben.

## The question about what came in

handoff-question-plan-title = ¿Usar este plan?
handoff-question-plan = Un plan de { $from } para { $whom }, versión { $version }.
handoff-question-newer =
    { $days ->
        [one] Es { $days } día más nuevo que el suyo.
       *[other] Es { $days } días más nuevo que el suyo.
    }
handoff-question-newer-today = Es más nuevo que el suyo, del mismo día.
handoff-question-plan-yes = Usarlo
handoff-question-care-title = ¿Usar este plan de cuidado?
handoff-question-care = Un plan de cuidado para { $code }, de { $from }, versión { $version }.
handoff-care-known = { $code } está en este teléfono
handoff-care-new = Aún no está aquí. Se anotará.
handoff-question-history-title = ¿Tomar este historial?
handoff-question-history = Un historial de { $from }.
handoff-question-history-yes = Tomarlo
handoff-question-no = Dejarlo
handoff-fact-title = Plan
handoff-fact-made = Hecho
handoff-fact-review = Vale
handoff-fact-person = Persona
handoff-fact-allows = Lo permite este plan donde las fuentes no concuerdan
handoff-fact-holds = Qué lleva
handoff-warning-unverified = Llegó con ocho palabras. Nadie sabe bien quién lo mandó. Pregunte a esa persona.
handoff-warning-takes-place = Usted sigue ahora otro plan: { $title }. { $from }. Este ocupa su lugar.
handoff-warning-other-name = Este plan es para { $whom }. Otros le conocen como { $mine }. Pregunte si es para usted.
handoff-warning-crossed = Su número y su día no encajan con el que usted tiene. Pregunte cuál vale.
handoff-warning-overdue = La fecha para mirar este plan otra vez ya pasó. Pida uno nuevo.
handoff-warning-care-sender = El anterior vino de { $from }. Pregunte quién hizo este.
handoff-warning-care-old = Una parte de este plan ya pasó su fecha. Lo que permite ya no vale. Pida uno nuevo.
handoff-warning-care-replaced = Toma el lugar de lo que usted tiene para: { $moves }
handoff-warning-care-stays = Usted tiene un plan más nuevo para esto. El suyo queda: { $moves }
handoff-warning-care-gone = Ya no dice nada de: { $moves }
handoff-said-care = El plan de cuidado está guardado.
handoff-said-plan = Desde ahora usted sigue este plan.
handoff-said-history = El historial quedó guardado.
handoff-said-declined = Se dejó. No se cambió nada.

## What leaves, and how it is shown

handoff-show-confirm = Mostrarlo
handoff-to = Solo { $name } puede abrirlo.
handoff-to-code = Quien tenga las ocho palabras puede abrirlo.
handoff-expires = Se puede tomar hasta el { $day }.
handoff-leaves-plan = El plan para { $whom }, versión { $version }
handoff-leaves-care = El plan de cuidado para { $code }, versión { $version }
handoff-leaves-name = Su nombre para otros: { $name }
handoff-leaves-lifts =
    { $count ->
        [one] { $count } vez, el { $first }.
       *[other] { $count } veces, del { $first } al { $last }.
    }
handoff-leaves-left =
    { $count ->
        [0] Ninguna se dejó.
        [one] { $count } se dejó.
       *[other] { $count } se dejaron.
    }
handoff-leaves-looks =
    { $count ->
        [0] Nadie dijo cómo se sintió.
        [one] Cómo se sintió, { $count } vez.
       *[other] Cómo se sintió, { $count } veces.
    }
handoff-leaves-signs =
    { $count ->
        [one] { $count } señal de alarma.
       *[other] { $count } señales de alarma.
    }
handoff-leaves-practice =
    { $count ->
        [one] Una nota sobre la práctica, con el dolor.
       *[other] { $count } notas sobre la práctica, con el dolor.
    }
handoff-leaves-plan-version = El plan que sigue, por su número: versión { $version }.
handoff-leaves-notes = El nombre de cada cosa.
handoff-leaves-no-notes = Sin nombres de cosas.
