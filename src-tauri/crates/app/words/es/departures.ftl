# La lista de lo que salió de este teléfono.

# $day: "Hoy" o una fecha; $time: una hora
departure-when = { $day }, { $time }
# $what: uno de los mensajes que siguen; $about: un nombre o un código
departure-about = { $what }: { $about }

departure-what-plan = Plan para levantar
departure-what-history = Historial
departure-what-care-plan = Plan de cuidado
departure-what-plan-page = Plan en papel
departure-what-note = Mirada atrás como nota
departure-what-page = Mirada atrás como página
departure-what-table = Mirada atrás como tabla
departure-what-document = Mirada atrás para el programa de una clínica
departure-what-shift = Registro de un turno
departure-what-office = Texto para la oficina
departure-what-card = Su tarjeta: su nombre para otros y las claves abiertas de este teléfono

departure-version = Versión { $version }
departure-days =
    { $days ->
        [one] El último día
       *[other] Los últimos { $days } días
    }
departure-all-days = Desde el principio
departure-entries =
    { $entries ->
        [one] 1 anotación
       *[other] { $entries } anotaciones
    }
departure-names = Con el nombre de cada cosa
departure-no-names = Sin nombres de cosas

departure-how-shown = Se mostró en la pantalla.
departure-how-saved = Se guardó como archivo.
departure-how-copied = Se copió.
departure-how-shared = Se dio a otra aplicación.
departure-how-printed = Se envió a una impresora.
departure-how-told = Usted dijo que se entregó.

# $name: cómo se llama aquí la otra persona
departure-to-device = Solo el teléfono de { $name } puede abrirlo.
departure-to-code = Lo abre quien tenga las ocho palabras.
departure-to-card = Para { $name }.
departure-to-symbol = El símbolo es solo para { $name }. Las palabras las lee cualquiera.
departure-to-all = Quien lo tenga puede leerlo.
