# The look back, and what leaves the app. $n is a count.

report-date = { $day } { $month } { $year }
report-nothing = Nothing is kept in this time.
report-no-title = A lift without a name
report-holder = The person who uses this phone

## Pain, by when it was asked

report-pain-before = Pain before lifting
report-pain-during = Pain while lifting
report-pain-next-morning = Pain the next morning

## Headings

report-title-counted = Lifts
report-title-pain = Pain
report-title-weeks = Week by week
report-title-ways = Ways to lift
report-title-response = Heavy days
report-title-against = Against the advice
report-title-missing = Not told

## Sentences of the look back

report-counted =
    { $days ->
        [one] { $done } done and { $left } decided against, on one day: { $last }.
       *[other] { $done } done and { $left } decided against, on { $days } days, from { $first } to { $last }.
    }
report-week = Week from { $from }: { $lifted } in all, lifted { $times } times. The heaviest was { $heaviest }.
report-week-unknown = Week from { $from }: lifted { $times } times. How heavy is not known.
report-week-none = Week from { $from }: nothing lifted.
report-change-less = { $kind }: less. At first { $first } out of 10, lately { $last }.
report-change-same = { $kind }: about the same. At first { $first } out of 10, lately { $last }.
report-change-more = { $kind }: more. At first { $first } out of 10, lately { $last }.
report-trend-down = { $kind } goes down: { $slope } points a week (likely { $low } to { $high }).
report-trend-up = { $kind } goes up: { $slope } points a week (likely { $low } to { $high }).
report-trend-unclear = { $kind }: no clear way up or down ({ $low } to { $high } points a week).
report-trend-none-yet = Not enough days yet to say where pain goes. It takes { $need } days over two weeks.
report-change-rule = A change counts from 2 points, or from 30 % (Ostelo 2008, low back pain).
report-trend-not-yet = { $kind }: not enough days yet to say where it goes.
report-way = { $way } { $times }
report-ways = Ways used: { $list }. How even: { $even } out of 100.
report-other-way = Done in another way than the one shown first: { $n } of { $of }.
report-response-more = Heavier days went with more pain the next morning: { $slope } points for { $mass } more. Likely { $low } to { $high }, from { $days } days. It may have other reasons. This is no limit.
report-response-less = Heavier days went with less pain the next morning: { $slope } points for { $mass } more. Likely { $low } to { $high }, from { $days } days. It may have other reasons. This is no limit.
report-response-unclear = No clear link of heavy days and pain the next morning ({ $days } days).
report-response-alike = Pain the next morning was nearly always the same, so heavy days cannot be told from others.
report-response-not-yet = Not enough days yet to set heavy days beside pain the next morning.
report-done-against =
    { $n ->
        [one] Done once though the advice was not to.
       *[other] Done { $n } times though the advice was not to.
    }
report-done-unchanged =
    { $n ->
        [one] Done once where the advice was to change something first.
       *[other] Done { $n } times where the advice was to change something first.
    }
report-done-without-aid =
    { $n ->
        [one] Done once though an aid or help was advised first.
       *[other] Done { $n } times though an aid or help was advised first.
    }
report-flares =
    { $n ->
        [one] One day with a flare-up.
       *[other] { $n } days with a flare-up.
    }
report-no-during = Pain while lifting was not told for { $n } of { $of }.
report-no-morning = The next morning was not told for { $n } of { $of }.
report-no-mass = How heavy was not known for { $n } of { $of }.

## A note to paste

report-page-title = Looking back on lifting and pain
report-page-made = Made on { $day } with Heftwell.
report-note-title = Heftwell, look back of { $day }
report-note-own = Told by the person. Not checked by a clinician.
report-note-of = Told by { $name } and handed over. Not examined.
report-note-limits = These are the person's own notes. They show no cause and set no limit.

## A document

report-document-title = Lifting and pain, told by the person
report-section-history = History
report-section-limits = Limits
report-section-plan = Plan
report-plan-of = { $title }. Set by { $by }, version { $version }.
report-goal-mass = Lift no more than { $mass }.
report-part-lift = Lift
report-part-decision = Done or left
report-part-advised = Advice shown
report-part-way = Way to lift
report-part-mass = How heavy
report-part-times = How many times

## What leaves

report-leaves-lifts =
    { $n ->
        [one] One entry of your history: { $last }.
       *[other] { $n } entries of your history, from { $first } to { $last }.
    }
report-leaves-note = A short text with counts, pain and ways.
report-leaves-csv = Each lift as a row, with what it was, the advice and your pain.
report-leaves-fhir = Each lift and pain score, in a form that clinic software reads.
report-leaves-pdf = One page with counts, pain and ways.
report-stays = Your passphrase, your answers about health, and warning signs.
report-leaves-theirs =
    { $n ->
        [one] One entry that { $name } handed over: { $last }.
       *[other] { $n } entries that { $name } handed over, from { $first } to { $last }.
    }
report-stays-theirs = What you noted of them, and their plans.
report-open = This is not sealed. Whoever gets it can read it.
