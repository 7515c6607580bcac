# The plan day by day: practice, the step that is offered, a flare-up.

## The clinician's steps for a flare-up

plan-section-flare = In a flare-up
plan-field-flare-1 = First thing to do in a flare-up
plan-field-flare-2 = Second thing to do in a flare-up
plan-field-flare-3 = Third thing to do in a flare-up

## The step. $mass is the level, $more one step.

plan-step-stay = Stay at { $mass } for now.
plan-step-up = You may try { $more } more: { $mass }.
plan-step-down = Go one step down for now: { $mass }.
plan-step-flare = A flare-up today: at most { $mass }.
plan-step-was-left = You left the step that was offered. It comes back after you note more practice.
plan-step-ask = The plan's rule would go one step down. Ask your clinician, who allows the steps.
plan-step-need =
    { $count ->
        [one] One more good day, and you may try { $more } more.
       *[other] { $count } more good days, and you may try { $more } more.
    }
plan-take-step-up = Take the step
plan-leave-step-up = Stay here
plan-take-step-down = Go one step down
plan-leave-step-down = Stay here

## What is practised

plan-item = With { $mass }: { $sets } sets of { $times }, { $days } days a week.
plan-item-done = Noted today.
plan-item-done-pain = Noted today. Worst pain: { $pain } out of 10.
plan-item-left = Left for today.

## A flare-up

plan-home-flare = A flare-up today. Leave heavy things.
plan-flare-signs = Look at the warning signs first.
plan-flare-leave = Leave heavy things for a day or two.
plan-flare-move = Keep moving a little, as it lets you.
plan-flare-ring = Ring your clinician if it is no better in 7 days.
plan-flare-often = This is the second flare-up within two weeks. Ring your clinician.
plan-line-flare = In a flare-up

## The log

plan-log-practice = Practice
plan-log-no-level = no level set
plan-log-done = { $way }, { $mass }
plan-log-left = Left: { $way }
plan-log-step-up = One step up, to { $mass }
plan-log-step-down = One step down, to { $mass }
plan-log-offer-left = A step was offered and left
plan-log-flare = A flare-up. From then on: { $mass }
plan-log-pain = Worst pain while practising: { $pain } out of 10.

## In the look back. $n is a count.

report-title-practice = Practice
report-title-progress = Going on with the plan
report-practice =
    { $days ->
        [0] Nothing was practised yet.
        [one] Practised { $times } times on one day. The level is { $mass } now.
       *[other] Practised { $times } times on { $days } days. The level is { $mass } now.
    }
report-practice-left =
    { $n ->
        [one] Practice was left once.
       *[other] Practice was left { $n } times.
    }
report-practice-flares =
    { $n ->
        [one] One flare-up was told.
       *[other] { $n } flare-ups were told.
    }
report-progress-step-up = The plan's rule proposes one step up, from { $level } to { $next }.
report-progress-hold = The plan's rule proposes to stay at { $level }.
report-progress-step-down = The plan's rule proposes one step down, from { $level } to { $next }.
report-progress-from = Good practice days in a row: { $good } of { $need }. Most pain while practising: { $pain }. Settled by next morning: { $settled }.
report-progress-not-told = not told
report-progress-yes = yes
report-progress-no = no
report-leaves-practice =
    { $n ->
        [one] One note about practice with the plan.
       *[other] { $n } notes about practice with the plan.
    }

# Parts of the document for clinic software.
report-part-sets = Sets, by the plan
report-part-times-set = Times in a set, by the plan
report-part-level = Level from then on
report-part-step = Step by the plan's rule
report-part-flare = Flare-up
report-pain-practising = Pain while practising
