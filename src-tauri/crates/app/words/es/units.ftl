# Números con su unidad, y fechas. $n es un número ya redondeado.

unit-kilograms = { $n } kg
unit-pounds = { $n } lb
unit-centimetres = { $n } cm
unit-inches =
    { $n ->
        [one] { $n } pulgada
       *[other] { $n } pulgadas
    }
unit-metres =
    { $n ->
        [one] { $n } metro
       *[other] { $n } metros
    }
unit-feet =
    { $n ->
        [one] { $n } pie
       *[other] { $n } pies
    }
unit-feet-and-inches = { $feet } pies { $inches } pulgadas
unit-weeks =
    { $n ->
        [one] { $n } semana
       *[other] { $n } semanas
    }
unit-times =
    { $n ->
        [one] una vez
       *[other] { $n } veces
    }

date-today = Hoy
date-yesterday = Ayer
date-day = { $weekday } { $day } de { $month }
date-day-year = { $weekday } { $day } de { $month } de { $year }
date-whole = { $day } de { $month } de { $year }
date-short = { $day } { $month }
date-short-year = { $day } { $month } { $year }
date-time = { $hour }:{ $minute }

date-weekday-1 = lunes
date-weekday-2 = martes
date-weekday-3 = miércoles
date-weekday-4 = jueves
date-weekday-5 = viernes
date-weekday-6 = sábado
date-weekday-7 = domingo

date-month-1 = enero
date-month-2 = febrero
date-month-3 = marzo
date-month-4 = abril
date-month-5 = mayo
date-month-6 = junio
date-month-7 = julio
date-month-8 = agosto
date-month-9 = septiembre
date-month-10 = octubre
date-month-11 = noviembre
date-month-12 = diciembre

date-month-short-1 = ene
date-month-short-2 = feb
date-month-short-3 = mar
date-month-short-4 = abr
date-month-short-5 = may
date-month-short-6 = jun
date-month-short-7 = jul
date-month-short-8 = ago
date-month-short-9 = sept
date-month-short-10 = oct
date-month-short-11 = nov
date-month-short-12 = dic
