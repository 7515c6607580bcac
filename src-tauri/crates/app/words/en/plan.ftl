# Plans: starting patterns, the page to edit one, and a plan in plain words.

## Starting patterns, by pattern id

plan-pattern-sore-back = A back that aches
plan-pattern-sore-back-text = The back aches when lifting and settles by the next day.
plan-pattern-after-flare = After a flare-up
plan-pattern-after-flare-text = The back had a bad spell in the last two weeks. Very light, few times.
plan-pattern-sore-knee = One sore knee
plan-pattern-sore-knee-text = Deep bends of one knee hurt. The hips do the work.
plan-pattern-both-knees = Both knees sore
plan-pattern-both-knees-text = Deep bends and kneeling hurt. The hips do the work.
plan-pattern-back-and-knees = Sore back and sore knees
plan-pattern-back-and-knees-text = The back aches and deep knee bends hurt too. Light things, best from waist height.
plan-pattern-sore-hip = A sore hip
plan-pattern-sore-hip-text = Folding at the hip hurts. Upright and close.
plan-pattern-after-surgery = After surgery
plan-pattern-after-surgery-text = Only with the surgeon's written limit. Put that limit in.
plan-pattern-thin-bones = Thin bones
plan-pattern-thin-bones-text = Bones that break with ease. A long back, and light loads.
plan-pattern-older-unsteady = Older and unsteady
plan-pattern-older-unsteady-text = Balance is poor. Both feet on the floor, light things, nothing on one leg.
plan-pattern-stiff-healing = Stiff and healing well
plan-pattern-stiff-healing-text = Little pain is left, but bending is stiff. Two ways to practise, a little each time.
plan-pattern-building-up = Building up again
plan-pattern-building-up-text = Pain has gone down. Step by step to heavier things.
plan-pattern-heavy-job = A heavy job
plan-pattern-heavy-job-text = Back to work with heavy things. Help or a trolley first, then close.

## What to think of while lifting

plan-cue-close = Keep it close to you.
plan-cue-slow = Go slowly.
plan-cue-long-back = Keep your back long.
plan-cue-hips-back = Push your hips back.
plan-cue-kneel = Go down on one knee and hug it.
plan-cue-hand = Rest one hand on something firm.
plan-cue-breathe = Breathe out as you lift.
plan-cue-raise = Keep what you use at waist height.
plan-cue-wide = Stand with your feet wide.
plan-cue-ask = Ask for help or a trolley first.
plan-cue-no-twist = Turn with your feet, do not twist.
plan-cue-stop = Stop if pain jumps.

## Why a way is ruled out

plan-why-bend = Rounding with a load hurts your back now.
plan-why-fold-back = Leaning forward loads your back the most.
plan-why-deep-knee = Deep knee bends hurt your knees.
plan-why-kneel = Kneeling hurts your knees.
plan-why-one-leg = One leg would carry it all.
plan-why-get-up = Getting up from one knee takes good balance.
plan-why-unsteady = On one leg you could fall.
plan-why-heavy = Your loads are too heavy for a round back.
plan-why-surgery = Your surgeon has not allowed it yet.
plan-why-bones = Rounding with a load is hard on thin bones.

## Notes for the person

plan-note-flare = In a flare-up, leave heavy things for a day or two and keep moving. Then start at about half.
plan-note-fall = If you fall, or nearly fall, tell your clinician.
plan-note-job = The rules at work come before this plan.
plan-note-surgeon = Your surgeon's letter comes before this plan.
plan-note-vary = Change the way you lift now and then.

## The page to edit a plan

plan-untitled = Plan
plan-not-set = Not set
plan-yes = Yes
plan-no = No
plan-page-house = All numbers here are a house rule to start from. Change what does not fit.
plan-section-whom = Who it is for
plan-section-limits = How much and how often
plan-section-pain = Pain
plan-section-ways = Ways to lift
plan-section-cues = What to think of
plan-section-practice = Practice
plan-section-progress = Going on
plan-section-notes = Notes
plan-field-for = For whom
plan-field-title = What the plan is called
plan-field-review-on = Look at it again by
plan-field-call = Whom to call
plan-call-hint = Who and when, such as a name, a number and hours. The app does not ring.
plan-field-grace-weeks = Weeks that limits stay after that day
plan-field-ceiling = Most for any lift
plan-field-ceiling-floor = Most from the floor
plan-field-ceiling-shin = Most from shin height
plan-field-ceiling-knee = Most from knee height
plan-field-ceiling-waist = Most from waist height
plan-field-ceiling-chest = Most from chest height
plan-field-ceiling-overhead = Most from above the head
plan-field-times-a-bout = Lifts in one go
plan-field-bouts-a-day = Goes in a day
plan-field-pain-ceiling = No lifting with pain above
plan-field-next-morning = The next morning
plan-field-bands-for = Parts with their own pain numbers
plan-field-preferred = Use first
plan-field-not-allowed = Do not use
plan-field-why-upright = Why not
plan-field-why-hinge = Why not
plan-field-why-squat = Why not
plan-field-why-lunge = Why not
plan-field-why-free-bend = Why not
plan-field-why-golfer = Why not
plan-why-label = Why not: { $way }
plan-field-cue-1 = First thing to think of
plan-field-cue-2 = Second thing to think of
plan-field-cue-3 = Third thing to think of
plan-practice-way =
    { $place ->
        [1] First way to practise
        [2] Second way to practise
       *[other] Third way to practise
    }
plan-practice-load = { $way }: with how much
plan-practice-sets = { $way }: sets
plan-practice-times = { $way }: times in each set
plan-practice-days = { $way }: days a week
plan-practice-none = None
plan-field-step = One step
plan-field-good-days = Good days before a step up
plan-field-hold-from = Hold from this pain
plan-field-back-over = Step back above this pain
plan-field-locked = Only I allow steps
plan-field-notes = Notes
plan-field-why-private = Private reason
plan-private-hint = This stays on this phone and is on no paper. You can change it until the version is handed over.
plan-field-why = Why this version

## Where pain begins to count as moderate and as strong, by part of the body

plan-region-back = Back
plan-region-knee-left = Left knee
plan-region-knee-right = Right knee
plan-region-hip-left = Left hip
plan-region-hip-right = Right hip
plan-region-shoulders = Shoulders
plan-bands-moderate = { $region }: moderate from
plan-bands-severe = { $region }: strong from
plan-bands-hint = Pain counts as moderate from 4 and as strong from 7. There are no agreed numbers (Boonstra 2016). Set others if they fit this person.
plan-bands = { $region }: moderate pain from { $moderate }, strong pain from { $severe }.

## Parts that do not fit together

plan-against-preferred = A way cannot be used first and not at all. Nothing was changed. Untick one of the two.
plan-against-practice-way = What is practised would be ruled out. Nothing was changed. Choose another way to practise.
plan-against-practice-twice = One way would be practised twice. Nothing was changed. Choose another way.
plan-against-practice-load = Practice would be heavier than the limit. Nothing was changed. Lower the practice or raise the limit.
plan-against-step = One step would be larger than the limit. Nothing was changed. Make the step smaller.
plan-against-height = One height would allow more than any lift may have. Nothing was changed. Lower it, or raise the limit for any lift.
plan-against-back = The step back would come before the hold. Nothing was changed. Hold at a lower pain.
plan-against-bands = Strong pain must start at a higher number than moderate pain. Nothing was changed. Change the other number first.
plan-against-past = The day to look at this plan again has passed. Nothing was shown. Choose a new day.

## A plan in plain words

plan-for = For { $name }.
plan-from = From { $name }
plan-from-unverified = Says it is from { $name }
plan-version = Version { $version }, { $day }
plan-version-none = Not handed over yet
plan-review = Look at it again by { $day }
plan-expired =
    This plan is past its day. Its limits stay for { $weeks } more after that day. Ask for a new one.
plan-line-limits = How much
plan-line-often = How often
plan-line-pain = Pain
plan-line-bands = What pain counts as
plan-line-preferred = Use first
plan-line-not-allowed = Do not use
plan-line-cues = Think of
plan-line-practice = Practice
plan-line-progress = Going on
plan-line-call = Whom to call
plan-call = Whom to call: { $call }
plan-line-why = Why this version
plan-line-notes = Notes
plan-limit-any = At most { $mass }.
plan-limit-from = At most { $mass } { $start }.
plan-often-bout =
    { $count ->
        [one] { $count } lift in one go.
       *[other] Up to { $count } lifts in one go.
    }
plan-often-day =
    { $count ->
        [one] { $count } go a day.
       *[other] Up to { $count } goes a day.
    }
plan-often-noted = { $count } noted today.
plan-pain-ceiling = No lifting with pain above { $pain } out of 10.
plan-morning-back-to-usual = The next morning it is back to usual.
plan-morning-no-worse = The next morning it is no worse than before.
plan-ruled-out = { $way }.
plan-ruled-out-why = { $way }: { $why }
plan-practice = { $way } with { $mass }: { $sets } sets of { $times }, { $days } days a week.
plan-progress-locked = A step up only when your clinician says so.
plan-progress-step = After { $days } good days, { $mass } more.
plan-progress-hold = Hold when pain is { $pain } or more.
plan-progress-back = A step back when pain is above { $pain }.
plan-card = Your plan: { $title }. { $from }.
plan-heaviest = With the plan, at most { $mass } today.
plan-day-good = Good
plan-day-usual = Usual
plan-day-bad = Bad
plan-preview-day =
    { $day ->
        [good] A good day:
        [bad] A bad day:
       *[usual] A usual day:
    } back pain { $back }, knees { $knees }, a steady back and good balance. Held close, and once unless it says how often. The numbers are a house rule. These are the words the person would read, so "you" is the person.

## A plan on paper
sheet-whose = For { $whom }, from { $by }. Version { $version }.
sheet-with-symbol = A symbol that only the phone of { $name } can open.
sheet-without-symbol = No symbol: the page is only for reading.
sheet-symbol = For the phone of { $name } only: open Heftwell, choose to scan, and hold the camera over this. It opens until { $day }.
sheet-symbol-too-long = This plan is too long for a symbol on paper. Hand it over on the screen.
sheet-stays = Your notes on the person, private reasons, older versions and what they told you.
sheet-open = The words on the page are not sealed. Whoever holds the page can read them.
sheet-stop = Stop if pain jumps, legs feel odd, you feel dizzy or short of breath. Then ask for help.
sheet-limits = This plan was made for one person. It helps to choose and does not replace advice.
