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
stop-text = Stop if pain jumps, legs feel odd, you feel dizzy or short of breath.
stop-care = Lift nothing until a clinician has looked at this.
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
source-post-surgery-limits = Your surgeon's limit. Clinics differ, so we have no number of our own.
source-pregnancy-lifting = Lifting in pregnancy: MacDonald and others, 2013, with NIOSH
source-niosh-1994 = NIOSH lifting equation: Waters and others, 1994
source-hse-l23 = HSE guidance on manual handling, L23, 2016
source-osteoporosis-flexion = Exercise with weak bones: Sinaki and Mikkelsen, 1984
source-kneeling-after-replacement = Review of kneeling after knee replacement, 2019
source-kneeling-acceptable-weight = Lifting on the knees: Gallagher and others, NIOSH

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
way-lunge-cue-1 = Put a pad under one knee and kneel on it.
way-lunge-cue-2 = Tip the load to test it. Roll it onto your thigh and hug it.
way-lunge-cue-3 = Stand up through the front leg. Do not twist.
way-lunge-word-1 = One knee down
way-lunge-word-2 = Hug it
way-lunge-word-3 = Stand up
way-lunge-side = Kneel on your { $side } knee.

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
way-golfer-side = Stand on your { $side } leg.

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
caution-adult-and-clinician = Only with an adult there, and by a clinician's plan.
caution-plan-expired = Your plan is past its review date. Ask for a new one.
caution-pregnancy-no-floor-overhead = While pregnant: nothing from the floor, nothing overhead.
caution-weight-unknown-test = Test the weight first. Tip one corner, or slide it a little.
caution-aid-or-help-first = Look for an aid or a helper first.
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

change-find-mass = Find out what it weighs. Tip a corner, read the label or open it. Over { $limit }, do not go on.
change-find-mass-word-1 = Tip a corner
change-find-mass-word-2 = Feel the weight
change-find-mass-word-3 = Then decide
change-bring-closer = Slide it close to your feet before you lift. Hands no more than { $to } from your ankles.
change-bring-closer-word-1 = Slide it close
change-bring-closer-word-2 = Stop
change-bring-closer-word-3 = Then lift
change-better-grip = Put it in a bag, a box or a blanket, so that you can hold it well.
change-better-grip-word-1 = Get a bag
change-better-grip-word-2 = Pack it in
change-better-grip-word-3 = Then lift
change-turn-feet = Turn your feet to face it. Do not twist your back.
change-turn-feet-word-1 = Turn your feet
change-turn-feet-word-2 = Face it
change-turn-feet-word-3 = Then lift
change-raise-start = Have it put higher first: your hands at { $to } or a little more, { $place }.
change-raise-start-word-1 = Get a crate
change-raise-start-word-2 = Have it raised
change-raise-start-word-3 = Then lift
change-lower-end = Put it down lower: your hands at { $to } or less, { $place }.
change-lower-end-word-1 = Find a lower place
change-lower-end-word-2 = Clear it
change-lower-end-word-3 = Then lift
change-split-load = Split it into { $parts } parts or more. Each one { $each } or less.
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

change-together = Do all of this. { $steps }
change-then = Then: { $ways }.
change-then-again = Then ask here again.

place-floor = at the floor
place-shin = about mid-shin
place-knee = about knee height
place-hip = about hip height
place-waist = about waist height
place-chest = about chest height
place-head = above the shoulders

list-or = { $first } or { $last }

## Parts of the body, as they stand in a sentence

region-back = your back
region-knee-left = your left knee
region-knee-right = your right knee
region-hip-left = your left hip
region-hip-right = your right hip
region-shoulders = your shoulders

## Where a value is not known

region-unknown = one part of your body
side-unknown = better
sign-short-unknown = a warning sign
value-unknown = a set amount
way-unknown = one of the ways

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

## Why, by reason id: "because-" is a clause for one line, "reason-" stands alone

because-sign-emergency = you ticked: { $sign }
reason-sign-emergency = You ticked: { $sign }. This can be serious. It needs help now.
because-sign-same-day = you ticked: { $sign }
reason-sign-same-day = You ticked: { $sign }. A clinician should hear of it today.
because-load-is-alive = a person or an animal is not a load
reason-load-is-alive = A person or an animal can move and be hurt. That needs another kind of plan.
because-surgery-no-limit = you had surgery and no limit is written down here
reason-surgery-no-limit = You had surgery not long ago. Your surgeon sets the limit, and none is written down here.
because-pregnancy-complicated = you were told of problems in this pregnancy
reason-pregnancy-complicated = You were told of problems in this pregnancy. Your midwife or doctor can say what you may lift.
because-child-no-plan = you are under 16 and have no plan
reason-child-no-plan = You are under 16. You need an adult there and a clinician's plan.
because-plan-too-old = your plan is too old
reason-plan-too-old =
    { $overdue ->
        [none] Your plan is long past its review date.
       *[other] Your plan is { $overdue } past its review date.
    } Ask for a new one.
because-over-plan-ceiling = your plan says { $max } at most
reason-over-plan-ceiling =
    Your plan says { $max } at most. { $mass ->
        [none] This may be more.
       *[other] This is { $mass }.
    }
because-over-pain-ceiling = pain in { $region } is { $pain } and your plan says { $max } at most
reason-over-pain-ceiling = Pain in { $region } is { $pain } of 10. Your plan says { $max } at most for lifting.
because-plan-avoids = your plan rules it out
reason-plan-avoids = Your plan rules out one or more ways to lift.
because-plan-not-listed = your plan does not list it
reason-plan-not-listed = Your plan lists the ways you may use. Others are left out.
because-plan-expired = your plan is past its review date
reason-plan-expired = Your plan is past its review date. Its limits still hold. What it allowed on top does not.
because-plan-sets-bands = your plan says when pain in { $region } is strong
reason-plan-sets-bands = Your plan says from which number on pain in { $region } counts as strong.
because-surgeon-limit = your surgeon set a limit
reason-surgeon-limit = Your surgeon's limit is in your plan. It comes first.
because-index-over-one = it is over the published limit for healthy adults
reason-index-over-one = The published limit for healthy adults on this task is about { $limit }. This is over it.
because-index-over-three = it is far over the published limit for healthy adults
reason-index-over-three = The published limit for healthy adults on this task is about { $limit }. This is three times that, or more.
because-index-within-one = it is within the published limit for healthy adults
reason-index-within-one = It is within the published limit for healthy adults. That is not your own limit.
because-outside-equation =
    { $what ->
        [hm] it is too far from your body
        [vm] it is too high
        [dm] it goes up or down too far
        [am] you would have to turn too far
        [fm] it is too often or too long
       *[none] published limits do not cover this task
    }
reason-outside-equation =
    Published limits do not cover this task: { $what ->
        [hm] it is too far from your body
        [vm] it is too high
        [dm] it goes up or down too far
        [am] you would have to turn too far
        [fm] it is too often or too long
       *[none] we cannot compare it with them
    }.
because-not-covered = published limits do not cover this way to lift
reason-not-covered =
    Published limits are for two hands, standing. They do not cover { $what ->
        [kneeling] kneeling
        [one_hand] one hand
       *[none] this way
    }. We never show a higher figure.
because-over-guide-weight = it is over a guide weight for healthy adults
reason-over-guide-weight = A guide weight for healthy adults here is { $guide }. This is over it. It is a first check, not a limit.
because-mass-unknown = its weight is not known yet
reason-mass-unknown =
    Nobody has tested its weight. { $high ->
        [none] So we count it as heavy.
       *[other] So we count it as { $high }.
    }
because-bulky = it is hard to hold
reason-bulky = It is big, floppy or hard to grip. That keeps it away from your body.
because-far-reach = it is far from your body
reason-far-reach = Your arms would be nearly straight. The farther away it is, the more your back has to hold.
because-long-carry = you would carry it a long way
reason-long-carry = You would carry it { $distance }. Guidance says about { $stage } at most in one go.
because-high-and-unsteady = it is above your shoulders and your balance may not do
reason-high-and-unsteady = It is above your shoulders. That needs good balance, and yours is not good or not known.
because-high-and-shoulder = it is above your shoulders and they hurt
reason-high-and-shoulder = It is above your shoulders, and your shoulders hurt a lot today.
because-pregnancy-low-or-overhead = you are pregnant and it is too low or too high
reason-pregnancy-low-or-overhead = Guidance for pregnancy says: nothing from below mid-shin, nothing overhead.
because-pregnancy-reach = in pregnancy the load is farther away
reason-pregnancy-reach = In pregnancy the load is farther from your back. So the published limit is lower.
because-hernia-heavy = you have a hernia and this is heavy
reason-hernia-heavy = You have a hernia, and this is over the published limit.
because-hernia-aid = you have a hernia
reason-hernia-aid = You have a hernia. Look for an aid or a helper first.
because-back-severe =
    { $pain ->
        [none] your back hurts a lot
       *[other] your back pain is { $pain } of 10
    }
reason-back-severe =
    { $pain ->
        [none] Your back hurts a lot.
       *[other] Your back pain is { $pain } of 10.
    } Some ways ask too much of it today.
because-back-volatile = your back catches without warning
reason-back-volatile = Your back catches without warning. So we treat it like strong pain.
because-back-flare = your back has a flare-up
reason-back-flare = Today is a flare-up. So we treat it like strong pain, whatever the number.
because-back-not-asked = your back pain is not known
reason-back-not-asked = Your back pain is not known. We count it as strong until you tell us.
because-knee-severe =
    { $pain ->
        [none] { $region } hurts a lot
       *[other] pain in { $region } is { $pain } of 10
    }
reason-knee-severe =
    { $pain ->
        [none] You have strong pain in { $region }.
       *[other] Pain in { $region } is { $pain } of 10.
    } Deep knee bends ask too much of it today.
because-knee-not-asked = pain in { $region } is not known
reason-knee-not-asked = Pain in { $region } is not known. We count it as strong until you tell us.
because-no-knee-to-kneel-on = no knee can take kneeling today
reason-no-knee-to-kneel-on = Neither knee should be on the ground today.
because-kneel-on = you can kneel on your { $side } knee
reason-kneel-on = Kneel on your { $side } knee, not on the other one.
because-cannot-kneel = you cannot kneel
reason-cannot-kneel = You said that you cannot kneel.
because-kneel-not-asked = we do not know if you can kneel
reason-kneel-not-asked = We do not know if you can kneel. We count it as no until you tell us.
because-hip-severe =
    { $pain ->
        [none] { $region } hurts a lot
       *[other] pain in { $region } is { $pain } of 10
    }
reason-hip-severe =
    { $pain ->
        [none] You have strong pain in { $region }.
       *[other] Pain in { $region } is { $pain } of 10.
    } Deep hip bends do not come first today.
because-no-hip-to-stand-on = neither hip can carry you alone today
reason-no-hip-to-stand-on = Neither hip should carry you alone today.
because-stand-on = you can stand on your { $side } leg
reason-stand-on = Stand on your { $side } leg, not on the other one.
because-hip-not-asked = your hips were not asked about
reason-hip-not-asked = You were not asked about your hips. We take it that they do not limit you.
because-shoulder-not-asked = your shoulders were not asked about
reason-shoulder-not-asked = You were not asked about your shoulders. We take it that they do not limit you.
because-balance-not-good = your balance is not good today
reason-balance-not-good = Your balance is not good today. Keep both feet on the ground.
because-balance-not-asked = your balance is not known
reason-balance-not-asked = Your balance is not known. We count it as poor until you tell us.
because-fell-last-year = you fell in the last year
reason-fell-last-year = You fell in the last year. So we count your balance as fair, not as good.
because-over-light = it is more than { $max }
reason-over-light = It is more than { $max }. A free bend or a golfer's lift is for lighter things.
because-more-than-twice = you lift it more than twice
reason-more-than-twice = You lift it more than twice. A free bend is for once or twice.
because-long-run = you lift it many times
reason-long-run = You lift it many times. Deep knee bends then tire your knees and thighs.
because-needs-two-hands = it takes two hands
reason-needs-two-hands = It takes two hands. The golfer's lift has only one.
because-too-high-to-kneel = it is too high for a half-kneel
reason-too-high-to-kneel = It is too high to take from one knee.
because-no-loaded-rounding = you have weak bones or broke a spine bone
reason-no-loaded-rounding = You have weak bones or once broke a spine bone. So do not round your back with a load.
because-new-knee-no-kneeling = your new knee is still healing
reason-new-knee-no-kneeling = Your new knee is still healing. Do not kneel on it yet.
because-old-knee-may-kneel = a healed new knee may kneel if it can
reason-old-knee-may-kneel = A healed new knee may kneel if you can do it. Studies found no medical reason against it.
because-replaced-hip = you have a new hip
reason-replaced-hip = You have a new hip. Do not stand on that leg alone. Ask how deep you may bend it.
because-worn-hip = your hips are worn
reason-worn-hip = Your hips are worn. So deep hip bends do not come first.
because-worn-knee = your knees are worn
reason-worn-knee = Your knees are worn. So deep knee bends do not come first.
because-no-low-way-needed = it is high enough to lift standing
reason-no-low-way-needed = It is high enough. You can stand, and need no deep bend.
because-hinge-eases-knee = a hip hinge asks little of the knees
reason-hinge-eases-knee = Therapists often choose the hip hinge when a knee hurts. We cannot promise it stops pain.
because-hinge-moves-most = a hip hinge moves the most weight
reason-hinge-moves-most = By common practice, the hip hinge moves the most weight.
because-hinge-long-run = a hip hinge suits many light lifts
reason-hinge-long-run = By common practice, the hip hinge suits many light lifts in a row.
because-squat-for-back = a squat keeps your back upright
reason-squat-for-back = Therapists often choose the squat when the back hurts a lot. We cannot promise it stops pain.
because-squat-few-lifts = a squat suits a few lifts
reason-squat-few-lifts = By common practice, the squat suits a few lifts of things that are not light.
because-lunge-to-test = on one knee you can tip it and feel it first
reason-lunge-to-test = On one knee you can tip it and feel its weight before you decide.
because-lunge-to-hug = on one knee you can hug it close
reason-lunge-to-hug = On one knee you can hug what is hard to hold.
because-lunge-for-back = on one knee your back stays upright
reason-lunge-for-back = On one knee your back stays upright. Therapists often choose this when the back hurts a lot.
because-lunge-studies-differ = on one knee you can hug something heavy
reason-lunge-studies-differ = In studies, people chose less weight on their knees. Practice says it suits heavy things. So look for an aid first.
because-free-bend-light = you lift something light only once or twice
reason-free-bend-light = It is light, and only once or twice. Then a free bend can serve.
because-golfer-light = one hand is enough for something light
reason-golfer-light = It is light and one hand is enough. The golfer's lift is easy on the knees.
because-golfer-long-run = a golfer's lift suits many light lifts
reason-golfer-long-run = By common practice, the golfer's lift suits many light lifts in a row.
because-variety = another way spreads the work
reason-variety = In the last two weeks you mostly used one way: { $way }. Another one spreads the work.
because-no-way-left = no way to lift is left today
reason-no-way-left = Your pain, your balance or your plan leaves no way to lift this today.
because-only-second-best-left = it is too many times for the ways that are left
reason-only-second-best-left = The ways that are left do not suit so many lifts in a row.
because-no-change-found = no small change is enough
reason-no-change-found = We looked for a small change. None is enough on its own.
