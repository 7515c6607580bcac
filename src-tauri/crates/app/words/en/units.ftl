# Numbers with their unit, and dates. $n is a number, already rounded.

unit-kilograms = { $n } kg
unit-pounds = { $n } lb
unit-centimetres = { $n } cm
unit-inches = { $n } in
unit-metres =
    { $n ->
        [one] { $n } metre
       *[other] { $n } metres
    }
unit-feet =
    { $n ->
        [one] { $n } foot
       *[other] { $n } feet
    }
unit-feet-and-inches = { $feet } ft { $inches } in
unit-weeks =
    { $n ->
        [one] { $n } week
       *[other] { $n } weeks
    }
unit-times =
    { $n ->
        [one] once
        [2] twice
       *[other] { $n } times
    }

date-today = Today
date-yesterday = Yesterday
date-day = { $weekday } { $day } { $month }
date-day-year = { $weekday } { $day } { $month } { $year }
date-whole = { $day } { $month } { $year }
date-short = { $day } { $month }
date-short-year = { $day } { $month } { $year }
date-time = { $hour }:{ $minute }

date-weekday-1 = Monday
date-weekday-2 = Tuesday
date-weekday-3 = Wednesday
date-weekday-4 = Thursday
date-weekday-5 = Friday
date-weekday-6 = Saturday
date-weekday-7 = Sunday

date-month-1 = January
date-month-2 = February
date-month-3 = March
date-month-4 = April
date-month-5 = May
date-month-6 = June
date-month-7 = July
date-month-8 = August
date-month-9 = September
date-month-10 = October
date-month-11 = November
date-month-12 = December

date-month-short-1 = Jan
date-month-short-2 = Feb
date-month-short-3 = Mar
date-month-short-4 = Apr
date-month-short-5 = May
date-month-short-6 = Jun
date-month-short-7 = Jul
date-month-short-8 = Aug
date-month-short-9 = Sep
date-month-short-10 = Oct
date-month-short-11 = Nov
date-month-short-12 = Dec
