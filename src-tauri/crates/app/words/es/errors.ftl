# Un mensaje por cada código de error: qué pasó, qué sigue igual, qué hacer ahora.

## La línea que envió la pantalla

error-bad-json = La app no pudo leer lo que envió la pantalla. No cambió nada. Pruebe otra vez.
error-too-long = Ese texto es muy largo. No cambió nada. Hágalo más corto y pruebe otra vez.
error-duplicate-key = La pantalla envió lo mismo dos veces. No cambió nada. Pruebe otra vez.
error-not-an-object = La app no pudo leer lo que envió la pantalla. No cambió nada. Pruebe otra vez.
error-unknown-command = La app no conoce este paso. No cambió nada. Vuelva al inicio y pruebe otra vez.
error-unknown-field = La pantalla envió algo que la app no conoce. No cambió nada. Pruebe otra vez.
error-missing-field = Aquí falta algo. No cambió nada. Complételo y pruebe otra vez.
error-wrong-type = Esa respuesta es de otro tipo. No cambió nada. Conteste otra vez.
error-not-a-choice = Eso no es una de las opciones. No cambió nada. Elija una de las que ve.
error-out-of-range = Ese número es muy bajo o muy alto. Sus otras respuestas siguen ahí. Mírelo y escríbalo otra vez.
error-answer-needed = Una pregunta aún no tiene respuesta. Sus otras respuestas siguen ahí. Contéstela primero.
error-contradiction = Dos respuestas no van juntas. No cambió nada. Mire las dos otra vez.
error-not-built = La app aún no puede hacer esto. No cambió nada. Elija otra cosa.
error-no-posture = Esta forma no se puede hacer aquí. No cambió nada. Elija otra forma.

## Cerrada y abierta

error-locked = Sus notas están cerradas. Siguen ahí. Escriba su frase de paso para abrirlas.
error-already-set-up = Aquí ya hay notas. No cambió nada. Ábralas con su frase de paso.
error-not-set-up = Aquí aún no hay notas. No se ha perdido nada. Empiece por elegir una frase de paso.
error-passphrase-short = Esa frase de paso es muy corta. No cambió nada. Use 10 signos o más. Unas palabras seguidas van bien.
error-passphrase-mismatch = Las dos frases de paso no son iguales. No cambió nada. Escriba las dos otra vez.
error-wrong-passphrase = Esa frase de paso no abre sus notas. Sus notas siguen ahí. Mire las mayúsculas y pruebe otra vez.
error-try-later =
    { $seconds ->
        [one] Demasiados fallos seguidos. Sus notas siguen ahí. Espere { $seconds } segundo y pruebe otra vez.
       *[other] Demasiados fallos seguidos. Sus notas siguen ahí. Espere { $seconds } segundos y pruebe otra vez.
    }

## Las notas en este teléfono

error-vault-missing = Falta un archivo con sus notas. La app no cambió nada. Si lo movió, póngalo donde estaba.
error-vault-damaged = Un archivo con sus notas está dañado. La app lo dejó como está. Ponga una copia, si tiene una.
error-vault-foreign = El archivo en este lugar no es de esta app. La app lo dejó como está. Ponga el suyo otra vez.
error-vault-newer = Sus notas son de una versión más nueva de la app. No se ha perdido nada. Instale la versión nueva para abrirlas.
error-disk-full = No queda sitio en este teléfono. Lo guardado antes sigue ahí. Haga sitio y pruebe otra vez.
error-storage-failed = El teléfono no pudo leer o escribir. Lo guardado antes sigue ahí. Cierre la app y pruebe otra vez.
error-erase-unfinished = No se borró todo. No cuente más con sus notas. Cierre la app y vuelva a abrirla para acabar.
error-randomness-failed = El teléfono no dio números al azar. No cambió nada. Reinicie el teléfono y pruebe otra vez.

## El recorrido y el historial

error-not-found = Eso ya no está. No cambió nada más. Vuelva al inicio y mire otra vez.
error-no-draft = No hay nada abierto. Su historial sigue ahí. Empiece de nuevo desde el inicio.
error-question-not-open = Esta pregunta no está abierta ahora. Sus respuestas siguen ahí. Siga donde estaba.
error-answer-not-offered = Esta respuesta no es una de las que se ven. Sus otras respuestas siguen ahí. Elija una de las que ve.
error-internal = Algo falló en la app. Lo guardado antes sigue ahí. Cierre la app y pruebe otra vez.

## Handing over

error-alias-needed = Aún no tiene un nombre que otros vean. No se cambió nada. Elija primero un nombre.
error-alias-length = Ese nombre está vacío o es muy largo. No se cambió nada. Use de 1 a 40 signos.
error-alias-character = Ese nombre tiene un signo que no se ve. No se cambió nada. Escriba con letras simples.
error-pair-expired = Unir los teléfonos tardó mucho. No se cambió nada. Empiece de nuevo y lea antes de cinco minutos.
error-pair-nothing-scanned = Aún no se leyó el otro teléfono. No se cambió nada. Lea primero su código.
error-pair-again = Se unieron con otras llaves de este teléfono. No se cambió nada. Una los teléfonos otra vez.
error-unknown-pairing = Ya no está unido a esa persona. No se cambió nada. Una los teléfonos otra vez.
error-scan-not-started = La pantalla de lectura está cerrada. No se tomó nada. Ábrala y lea otra vez.
error-no-parcel = Aquí no hay nada que espere por usted. No se cambió nada. Lea el código otra vez.
error-code-wrong = Estas palabras no lo abren. No se cambió nada. Pida las ocho palabras y escriba otra vez.
error-unknown-show = Esto ya no se muestra. No se cambió nada. Muéstrelo otra vez.
error-plan-contradiction = Esto no encaja con el resto del plan. No se cambió nada. Mire las dos partes.
error-unknown-plan = Ese plan ya no está. No se cambió nada más. Vuelva y mire otra vez.
error-nothing-to-show = Aún no hay nada que pasar. No se cambió nada. Elija un día anterior.
