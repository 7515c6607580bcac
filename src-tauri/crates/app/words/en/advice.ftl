# The advice. Short sentences, plain words, "you". A value that is not known is the word none.

## What to do: headlines, by outcome id

outcome-lift = If you choose to lift: { $way }
outcome-lift-with-change = Change something first
outcome-do-not-lift = Do not lift this as it is
outcome-seek-care =
    { $urgency ->
        [emergency] Call for emergency help now
       *[same_day] Get medical advice today
    }
outcome-refuse = We cannot advise on this. Others can.

## Lines that stand on every advice

why-one = Because { $first }.
why-two = Because { $first } and { $second }.
why-plan-rules-out-one = your plan rules out the { $way }
why-plan-rules-out-some = your plan rules out some ways
why-plan-lists = your plan lists this way
why-plan-lists-no-other = your plan lists no other way
stop-text = Stop if pain jumps, legs feel odd, you feel dizzy or short of breath.
stop-care = Lift nothing until a doctor has looked at this.
stop-refuse = Leave it where it is until somebody can advise you.
foot = This helps you choose. It does not examine you. It is not a doctor or therapist.
disagree = Studies disagree about the best way. Light, close and slow help most.
limit-text = Published limit for healthy adults on this task: about { $limit }. It is not your limit.
limit-none = Published limits for healthy adults do not cover this task.

## How sure the whole advice is, in one line

sure-line-plan = This follows your therapist's plan.
sure-line-sign = Published guidance names this as a warning sign.
sure-line-published = This rests on published figures for healthy adults.
sure-line-practice = Therapists often choose this. We cannot promise that it stops pain.
sure-line-common = This is common practice. No study has settled it.
sure-line-house = This is our own careful rule. No study has settled it.

## Whose rule it is, by authority id

authority-law = The law and the rules at work
authority-emergency = A warning sign
authority-plan = Your surgeon's or therapist's plan
authority-today = Your pain and balance today
authority-practice = Common practice and published figures

## How sure one reason is

sure-published = Published guidance
sure-house = Our own careful rule
sure-estimate = An estimate. Few people were studied.
sure-common-practice = Common practice. No study has settled it.
sure-plan = Set by your therapist

## Where it comes from, by source id. Citations keep their names.

source-red-flags = Red flags for back pain: IFOMPT framework, 2020; NICE guideline NG59
source-house-rule = Our own rule
source-common-practice = Common practice, no source
source-plan = Your plan
source-post-surgery-limits = Limits after spine surgery: Magnusson and others, 1999; McGregor and others, 2007. They differ, so your surgeon's holds.
source-pregnancy-lifting = Lifting in pregnancy: Waters and others, 2014; MacDonald and others, 2013
source-niosh-1994 = NIOSH lifting equation: Waters and others, 1994
source-niosh-1981 = NIOSH work practices guide for manual lifting, 1981
source-posture-model = Our own body model; an estimate
source-hse-l23 = HSE guidance on manual handling, L23, 2016
source-osteoporosis-flexion = Exercise with weak bones: Sinaki and Mikkelsen, 1984
source-kneeling-after-replacement = Kneeling after knee replacement: Wylde and others, 2019
source-kneeling-acceptable-weight = Lifting on the knees: Gallagher and others, 1990 to 1992
source-pain-monitoring = Pain-monitoring model, studied in knees and heels: Thomeé, 1997; Silbernagel and others, 2007

## Ways to lift, by way id: name, what it is, three cues, three big words

way-hinge = Hip hinge
way-hinge-gloss = You fold at the hips. Your knees bend only a little.
way-hinge-cue-1 = Push your hips back, as if to a wall behind you.
way-hinge-cue-2 = Soft knees, long back.
way-hinge-cue-3 = Load close to your thighs. Push the floor away to stand up.
way-hinge-word-1 = Hips back
way-hinge-word-2 = Long back
way-hinge-word-3 = Load close

way-squat = Squat
way-squat-gloss = Your knees bend deep. Your back stays upright.
way-squat-cue-1 = Feet wide, chest up.
way-squat-cue-2 = Sit down between your heels.
way-squat-cue-3 = Load between your feet, close to you. Stand up slowly.
way-squat-word-1 = Feet wide
way-squat-word-2 = Chest up
way-squat-word-3 = Load close

way-lunge = Half-kneel
way-lunge-gloss = You go down on one knee, hug the load and stand up.
way-lunge-cue-1 = Go down on one knee. Put a pad under it.
way-lunge-cue-2 = Tip the load to test it. Roll it onto your thigh and hug it.
way-lunge-cue-3 = Stand up through the front leg. Do not twist.
way-lunge-word-1 = One knee down
way-lunge-word-2 = Hug it
way-lunge-word-3 = Stand up
way-lunge-side = Go down on your { $side } knee. Put a pad under it.

way-free-bend = Free bend
way-free-bend-gloss = You simply bend down. For light things, once or twice.
way-free-bend-cue-1 = Bend once, slowly. Let your back round.
way-free-bend-cue-2 = One hand on your thigh or on a bench.
way-free-bend-cue-3 = Come up slowly.
way-free-bend-word-1 = Bend slowly
way-free-bend-word-2 = Lean on a hand
way-free-bend-word-3 = Up slowly

way-golfer = Golfer's lift
way-golfer-gloss = You lean forward and lift one leg back. One hand picks up.
way-golfer-cue-1 = Stand close. Hold on to something firm.
way-golfer-cue-2 = Lean forward with a flat back. Let the free leg swing back.
way-golfer-cue-3 = Pick up the light thing with one hand.
way-golfer-word-1 = Hold on
way-golfer-word-2 = Flat back
way-golfer-word-3 = Leg back
way-golfer-side = Stand on your { $side } leg, close to it. Hold on to something firm.

way-upright = Standing lift
way-upright-gloss = It is high enough. You do not need to bend down.
way-upright-cue-1 = Stand close, feet apart.
way-upright-cue-2 = Elbows near your sides.
way-upright-cue-3 = Turn with your feet.
way-upright-word-1 = Stand close
way-upright-word-2 = Elbows in
way-upright-word-3 = Turn your feet

way-also = This way can serve too.
way-not-first = Not first: { $why }.

side-left = left
side-right = right

## What to heed, by caution id

caution-emergency-now = Call your emergency number now.
caution-same-day-advice = Get medical advice today.
caution-over-plan-ceiling = This is over the limit in your plan.
caution-over-pain-ceiling = Your pain is over the limit in your plan.
caution-surgeon-limit-first = Your surgeon's limit comes first.
caution-adult-and-clinician = Only with an adult there, and by a doctor's or therapist's plan.
caution-plan-expired = Your plan is past its review date. Ask for a new one.
caution-pregnancy-no-floor-overhead = While pregnant: nothing from the floor, nothing overhead.
caution-weight-unknown-test = Test the weight first. Tip one corner, or slide it a little.
caution-aid-or-help-first = Can it wait? Can a trolley or another person help? Try that first.
caution-no-loaded-rounding = Keep your back long. Do not round it with a load.
caution-no-single-leg = Keep both feet on the ground.
caution-hold-support = Keep one hand on something firm.
caution-keep-close = Keep it close to your body.
caution-no-twist = Turn with your feet, not with your back.
caution-pace-and-mix = Rest often, and change the way you lift.
caution-team-two-thirds = Two people do not manage double. Count on two thirds of both limits together.

## Other ways to get it done, by alternative id

alternative-follow-surgeon-limit = Keep to your surgeon's written limit. If you have none, ask for it.
alternative-call-clinician = Call your doctor or therapist.
alternative-leave-it = Leave it, or do it later.
alternative-ask-person = Ask somebody to do it.
alternative-split-load = Carry it in parts.
alternative-raise-start = Have somebody put it higher first, on a table or a crate.
alternative-slide-or-roll = Slide it, roll it, or walk it corner by corner.
alternative-trolley = Use a trolley or a basket on wheels.
alternative-reacher = Use a grabber.
alternative-long-tool-or-sit = Use a tool with a long handle, or sit to do it.
alternative-spread-over-days = Spread it over the day, or over several days.
alternative-two-person = Lift it together with another person.
alternative-wait-for-help = Wait until help comes.
alternative-use-equipment = Use the equipment made for it.

## What to change, by change id: what to do, and three big words

change-find-mass =
    Find out what it weighs. Tip a corner, read the label or open it.{ $limit ->
        [none] { "" }
       *[other] { " " }Over { $limit }, do not go on.
    }
change-find-mass-word-1 = Tip a corner
change-find-mass-word-2 = Feel the weight
change-find-mass-word-3 = Then decide
change-bring-closer = Bring it close to you before you lift. Hands no more than { $to } from your ankles.
change-bring-closer-word-1 = Bring it close
change-bring-closer-word-2 = Stand near
change-bring-closer-word-3 = Then lift
change-better-grip = Put it in a bag, a box or a blanket, so that you can hold it well.
change-better-grip-word-1 = Get a bag
change-better-grip-word-2 = Pack it in
change-better-grip-word-3 = Then lift
change-turn-feet = Turn your feet to face it. Do not twist your back.
change-turn-feet-word-1 = Turn your feet
change-turn-feet-word-2 = Face it
change-turn-feet-word-3 = Then lift
change-raise-start = Have it put higher first, so that your hands grip at { $to }, { $place }.
change-raise-start-word-1 = Get a crate
change-raise-start-word-2 = Have it raised
change-raise-start-word-3 = Then lift
change-raise-end = Put it down higher, on a table or a crate, with your hands at { $to } or more, { $place }.
change-raise-end-word-1 = Find a table
change-raise-end-word-2 = Clear it
change-raise-end-word-3 = Then lift
change-lower-end = Put it down lower, with your hands at { $to } or less, { $place }.
change-lower-end-word-1 = Find a lower place
change-lower-end-word-2 = Clear it
change-lower-end-word-3 = Then lift
change-split-load = Split it into { $parts } parts, each { $each } or less. Lift them one by one.
change-split-load-word-1 = Open it
change-split-load-word-2 = Split it
change-split-load-word-3 = Part by part
change-lighten = Take some out. Leave { $to } or less in it.
change-lighten-word-1 = Open it
change-lighten-word-2 = Take some out
change-lighten-word-3 = Then lift
change-shorten-bout = Lift { $to } at most. Then rest and do something else.
change-shorten-bout-word-1 = Do a few
change-shorten-bout-word-2 = Rest
change-shorten-bout-word-3 = Do a few more
change-carry-in-stages = Carry it in short stretches of { $to } at most. Put it down in between.
change-carry-in-stages-word-1 = Carry a bit
change-carry-in-stages-word-2 = Put it down
change-carry-in-stages-word-3 = Go on
change-second-person = Lift it together with another able person.
change-second-person-word-1 = Call somebody
change-second-person-word-2 = Count to three
change-second-person-word-3 = Lift together
change-three-people = Lift it together with two more able people. Three manage about half of their limits together.
change-three-people-word-1 = Call two people
change-three-people-word-2 = Count to three
change-three-people-word-3 = Lift together

change-together = Do all of these. { $steps }
change-then = Then: { $ways }.
change-eases = A body model finds about { $percent } % less for the back to hold.
change-then-again = Then ask here again.

place-floor = at the floor
place-shin = about mid-shin
place-knee = about knee height
place-hip = about hip height
place-waist = about waist height
place-chest = about chest height
place-head = above the shoulders

list-or = { $first } or { $last }

## Who can help

who-emergency-number = Your local emergency number
who-clinician = Your doctor or therapist
who-clinician-today = Your doctor, today. If closed: the out-of-hours service
who-nurse-line = A nurse on the phone, if you have such a line
who-surgeon = Your surgeon, or the ward where you were
who-midwife = Your midwife or maternity ward
who-adult = Another adult who is able to lift
who-parent = A parent, or the adult who looks after you
who-trained-helper = Somebody who is trained to move people
who-care-office = Your care office, if this is your work
who-plan-author = The therapist who made your plan
who-animal-helper = A second person, for an animal
