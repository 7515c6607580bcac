# Home, history and saved tasks: texts with values in them.

## A lift in one line

lift-title = { $thing }, { $mass }, { $start }
lift-title-short = { $thing }, { $mass }
lift-title-none = A lift not described
saved-text = { $mass }, { $start }
thing-small = Something small
thing-box = Box
thing-bag = Bag
thing-basket = Basket
thing-bucket = Bucket
thing-long = Something long
thing-big = Something big
thing-not-sure = Something
from-floor = from the floor
from-shin = from shin height
from-knee = from knee height
from-waist = from waist height
from-chest = from chest height
from-overhead = from above the head

## Home

body-part = { $region } { $pain }
body-until = We ask again after { $time }.
morning-ask = Yesterday: { $title }. How is it today?
open-sign = You ticked a warning sign: { $sign }. Do not lift until it is cleared.
open-sign-since = Since: { $day }.

## An entry of the history

entry-lift = Advice: lift this way
entry-lift-with-change = Advice: change something first
entry-do-not-lift = Advice: do not lift it as it is
entry-seek-care = Advice: get help first
entry-refuse = No advice could be given
entry-done = Done
entry-done-way = Done: { $way }
entry-left = Left
entry-left-instead = Left. Instead: { $instead }
entry-pain-after = Worst pain while lifting: { $pain } out of 10.
entry-pain-morning = Next morning: { $pain } out of 10.
entry-usual-yes = Back to usual the next morning.
entry-usual-no = Not back to usual the next morning.
entry-usual-not-sure = The next morning: not sure if back to usual.

## Demo

note-demo = Invented demo data. Nobody lives here. It came with this passphrase: { $passphrase }
demo-laundry = Laundry basket
demo-water = Pack of water
