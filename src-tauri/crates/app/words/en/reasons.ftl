# Why, by reason id: "because-" is a clause for one line, "reason-" stands alone.
# A value that is not known is the word none.

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

## Signs, and who may be advised

because-sign-emergency = you ticked: { $sign }
reason-sign-emergency = You ticked: { $sign }. This can be serious. It needs help now.
because-sign-same-day = you ticked: { $sign }
reason-sign-same-day = You ticked: { $sign }. A doctor should hear of it today.
because-load-is-alive = a person or an animal is not a load
reason-load-is-alive = A person or an animal can move and be hurt. That needs another kind of plan.
because-surgery-no-limit = you had surgery and no limit is written down here
reason-surgery-no-limit = You had surgery not long ago. Your surgeon sets the limit, and none is written down here.
because-pregnancy-complicated = you were told of problems in this pregnancy
reason-pregnancy-complicated = You were told of problems in this pregnancy. Your midwife or doctor can say what you may lift.
because-child-no-plan = you are under 16 and have no plan
reason-child-no-plan = You are under 16. You need an adult there, and a plan by a doctor or therapist.
because-plan-too-old = your plan is too old
reason-plan-too-old =
    { $overdue ->
        [none] Your plan is long past its review date.
       *[other] Your plan is { $overdue } past its review date.
    } Ask for a new one.

## The plan

because-over-plan-ceiling = your plan says { $max } at most
reason-over-plan-ceiling =
    Your plan says { $max } at most. { $guess ->
        [yes] This may be more.
       *[none] This is more.
    }
because-over-plan-times = your plan says { $max } in one go at most
reason-over-plan-times =
    Your plan says { $max } in one go at most. { $times ->
        [none] How often is not known, so tell us first.
       *[other] You say up to { $times }.
    }
because-plan-bouts-done =
    your plan says { $max ->
        [one] { $max } go
       *[other] { $max } goes
    } a day at most, and today's are done
reason-plan-bouts-done =
    Your plan says { $max ->
        [one] { $max } go
       *[other] { $max } goes
    } a day at most. You noted { $done } today.
because-over-pain-ceiling = pain in { $region } is { $pain } and your plan says { $max } at most
reason-over-pain-ceiling = Pain in { $region } is { $pain } of 10. Your plan says { $max } at most for lifting.
because-pain-not-asked = pain in { $region } is not known and your plan says { $max } at most
reason-pain-not-asked = Your plan says pain of { $max } at most for lifting. Pain in { $region } is not known, so tell us first.
because-plan-avoids = your plan rules it out
reason-plan-avoids = Your plan rules out one or more ways to lift.
because-plan-prefers = your plan puts it first
reason-plan-prefers = Your plan puts one or more ways to lift first.
because-plan-not-listed = your plan does not list it
reason-plan-not-listed = Your plan lists the ways you may use. Others are left out.
because-plan-expired = your plan is past its review date
reason-plan-expired = Your plan is past its review date. Its limits still hold. What it allowed on top does not.
because-plan-sets-bands = your plan says when pain in { $region } is strong
reason-plan-sets-bands = Your plan says from which number on pain in { $region } counts as strong.
because-surgeon-limit = your surgeon set a limit
reason-surgeon-limit = Your surgeon's limit is in your plan. It comes first.

## The task

because-index-over-one =
    { $guess ->
        [yes] it may be over the published limit for healthy adults
       *[none] it is over the published limit for healthy adults
    }
reason-index-over-one =
    The published limit for healthy adults on this task is about { $limit }. { $guess ->
        [yes] This may be over it.
       *[none] This is over it.
    }
because-index-over-three =
    { $guess ->
        [yes] it may be far over the published limit for healthy adults
       *[none] it is far over the published limit for healthy adults
    }
reason-index-over-three =
    The published limit for healthy adults on this task is about { $limit }. { $guess ->
        [yes] This may be three times that, or more.
       *[none] This is three times that, or more.
    }
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
because-over-guide-weight =
    { $guess ->
        [yes] it may be over a guide weight for healthy adults
       *[none] it is over a guide weight for healthy adults
    }
reason-over-guide-weight =
    A guide weight for healthy adults here is { $guide }. { $guess ->
        [yes] This may be over it.
       *[none] This is over it.
    } It is a first check, not a limit.
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
because-hernia-heavy =
    { $guess ->
        [yes] you have a hernia and this may be heavy
       *[none] you have a hernia and this is heavy
    }
reason-hernia-heavy =
    { $guess ->
        [yes] You have a hernia, and this may be over the published limit.
       *[none] You have a hernia, and this is over the published limit.
    }
because-hernia-aid = you have a hernia
reason-hernia-aid = You have a hernia. Let a trolley or another person do it, if you can.
because-hernia-light = you have a hernia
reason-hernia-light = You have a hernia. This is light. Stop if the lump hurts or gets bigger.

## Body and ways

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
because-back-state-not-asked = we do not know if your back catches
reason-back-state-not-asked = We do not know if your back catches without warning. It hurts, so we count it as yes until you tell us.
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
because-kneel-side-not-known = we do not know which knee you can kneel on
reason-kneel-side-not-known = You can kneel on one side, and one knee is bad today. We do not know if it is the same one.
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

## Load and ways

because-over-light =
    { $guess ->
        [yes] it may be more than { $max }
       *[none] it is more than { $max }
    }
reason-over-light =
    { $guess ->
        [yes] It may be more than { $max }.
       *[none] It is more than { $max }.
    } A free bend or a golfer's lift is for lighter things.
because-more-than-twice = you lift it more than twice
reason-more-than-twice = You lift it more than twice. A free bend is for once or twice.
because-long-run = you lift it many times
reason-long-run = You lift it many times. Deep knee bends then tire your knees and thighs.
because-needs-two-hands = it takes two hands
reason-needs-two-hands = It takes two hands. The golfer's lift leaves you one.
because-too-high-to-kneel = it is too high for a half-kneel
reason-too-high-to-kneel = It is too high to take from one knee.

## Conditions

because-no-loaded-rounding = you have weak bones or broke a spine bone
reason-no-loaded-rounding = You have weak bones or once broke a spine bone. So do not round your back with a load.
because-new-knee-no-kneeling = your new knee is still healing
reason-new-knee-no-kneeling = Your new knee is still healing. Do not kneel on it yet.
because-old-knee-may-kneel = a healed new knee may kneel if it can
reason-old-knee-may-kneel = A healed new knee may kneel if you can do it. Studies found no medical reason against it.
because-back-surgery = you had surgery on your back
reason-back-surgery = You had surgery on your back not long ago. So do not round it with a load.
because-replaced-hip = you have a new hip
reason-replaced-hip = You have a new hip. Do not stand on that leg alone. Ask how deep you may bend it.
because-worn-hip = your hips are worn
reason-worn-hip = Your hips are worn. So deep hip bends move down the list.
because-worn-knee = your knees are worn
reason-worn-knee = Your knees are worn. So deep knee bends move down the list.
because-no-low-way-needed = it is high enough to lift standing
reason-no-low-way-needed = It is high enough. You can stand, and need no deep bend.

## What speaks for a way

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
reason-lunge-studies-differ = In studies, people chose less weight on their knees. Practice says it suits heavy things. So try a trolley or a helper first.
because-free-bend-light = you lift something light only once or twice
reason-free-bend-light = It is light, and only once or twice. Then a free bend can serve.
because-golfer-light = one hand is enough for something light
reason-golfer-light = It is light and one hand is enough. The golfer's lift is easy on the knees.
because-golfer-long-run = a golfer's lift suits many light lifts
reason-golfer-long-run = By common practice, the golfer's lift suits many light lifts in a row.
because-variety = another way spreads the work
reason-variety = In the last two weeks you mostly used one way: { $way }. Another one spreads the work.
because-model-differs = a body model finds { $way } lighter on the low back
reason-model-differs = A body model finds another way lighter on the low back: { $way }. We follow common practice, and say both.
because-force-over-action-limit = a body model puts a high force on the low back
reason-force-over-action-limit = With this way a body model puts a high force on the low back: { $way }. It passes a published mark for workers. Keep it close and slow.
because-energy-over-limit = at this pace it takes too much effort for so long
reason-energy-over-limit = At this pace it takes more effort than published limits allow for so long. Rest more often.

## What is left

because-no-way-left = no way to lift is left today
reason-no-way-left = Your pain, your balance or your plan leaves no way to lift this today.
because-only-second-best-left =
    { $what ->
        [long_run] it is too many times for the ways that are left
        [hip] the ways that are left bend a sore hip deep
       *[none] the ways that are left do not suit you today
    }
reason-only-second-best-left =
    { $what ->
        [long_run] The ways that are left do not suit so many lifts in a row.
        [hip] The ways that are left bend a sore hip deep. They are not for today.
       *[none] The ways that are left do not suit this body and this many lifts.
    }
because-no-change-found = no small change is enough
reason-no-change-found = We looked for a small change. None is enough on its own.

## What next in the plan

because-two-good-sessions = the last times went well
reason-two-good-sessions = The last times went well, and you felt as usual by next morning.
because-too-few-sessions = you have not done this level often enough yet
reason-too-few-sessions = You have not done this level often enough yet. Stay with it for now.
because-pain-over-during = pain reached { $pain } of 10 while lifting
reason-pain-over-during = Pain reached { $pain } of 10 while lifting. That is over { $max }. Go one step back.
because-pain-acceptable-during = pain reached { $pain } of 10 while lifting
reason-pain-acceptable-during = Pain reached { $pain } of 10 while lifting. That can be fine, but is no time to add more.
because-not-settled = pain was not back to usual by next morning
reason-not-settled = Pain was not back to usual by next morning. Go one step back.
because-week-rising = pain went up over the week
reason-week-rising = Pain went up over the week. Go one step back.
because-flare-step-down = today is a flare-up
reason-flare-step-down = Today is a flare-up. Do less for a few days, and keep moving.
because-at-ceiling = one step more would be over { $max }
reason-at-ceiling = One step more would be over { $max }, a limit in your plan.
because-steps-locked = your therapist unlocks the next step
reason-steps-locked = Your therapist unlocks the next step. Ask at your next visit.
because-history-incomplete = some of the last times are not known
reason-history-incomplete = Some of the last times are not known. So the level stays as it is.
because-no-level-known = no level is set in your plan
reason-no-level-known = No level is set in your plan. Ask your therapist for one.
