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
