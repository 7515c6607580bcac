# Questions of the walk, their options, and how answers read. Ids: question-<id>, then -hint, -why, -row
# (the short name on the check page) or the id of an option, and its -note.

## Warning signs

question-signs-today = Anything new or scary today?
question-signs-today-hint = Like new numbness, fever, chest pain, or legs that do not obey.
question-signs-today-row = New or scary today
question-signs-today-no = No
question-signs-today-yes = Yes
question-signs-full = Is any of this new, or getting worse?
question-signs-full-hint = New means in the last 2 weeks. Tick all that are true.
question-signs-full-row = Warning signs
question-signs-flare = A bad day needs a closer look. Is any of this true?
question-signs-flare-hint = New means in the last 2 weeks. Tick all that are true.
question-signs-flare-row = Warning signs on a bad day

## About you

question-age = How old are you?
question-age-why = Bones, balance and limits change with age.
question-age-row = Age
question-age-under16 = Under 16
question-age-16-39 = 16 to 39
question-age-40-64 = 40 to 64
question-age-65-79 = 65 to 79
question-age-80plus = 80 or older
question-conditions = Do you have any of these?
question-conditions-hint = Tick all that are true.
question-conditions-why = Each of these changes which way to lift may suit you.
question-conditions-row = Conditions
question-conditions-osteoporosis = Weak bones
question-conditions-past-spine-fracture = A broken bone in the spine, at any time
question-conditions-pregnant = Pregnant
question-conditions-pregnancy-complicated = Pregnant, and told of problems
question-conditions-knee-replacement-old = A new knee, healed
question-conditions-knee-replacement-recent = A new knee, in the last 3 months
question-conditions-hip-replacement = A new hip
question-conditions-hip-osteoarthritis = Worn hips
question-conditions-knee-osteoarthritis = Worn knees
question-conditions-lumbar-surgery-recent = Low back surgery in the last 3 months
question-conditions-hernia = A hernia in the groin or belly
question-pregnancy-weeks = How many weeks pregnant are you?
question-pregnancy-weeks-why = What may be lifted changes with the weeks.
question-pregnancy-weeks-row = Weeks pregnant
question-pregnancy-weeks-weeks = Weeks
question-weeks-since-surgery = How many weeks ago was the surgery?
question-weeks-since-surgery-why = Not long after surgery, only your surgeon can set a limit.
question-weeks-since-surgery-row = Weeks since surgery
question-weeks-since-surgery-weeks = Weeks
question-fell = Did you fall in the last year?
question-fell-why = After a fall we do not count on good balance.
question-fell-row = Fell in the last year
question-fell-no = No
question-fell-yes = Yes
question-sex = Are you female or male?
question-sex-why = Published figures differ for women and men. If you do not say, we take those for women, which are lower.
question-sex-row = Sex
question-sex-female = Female
question-sex-male = Male
question-sex-not-sure = I would rather not say
question-stature = How tall are you?
question-stature-why = Then the drawing and the sums fit you. If you skip this, we work with a small body and a large one.
question-stature-row = Height
question-stature-cm = Height in cm
question-stature-in = Height in inches. 5 feet 6 inches is 66.
question-stature-not-sure = Skip this question
question-body-mass = How much do you weigh?
question-body-mass-hint = A rough number is enough.
question-body-mass-why = Then the drawing and the sums fit you. If you skip this, we work with a small body and a large one.
question-body-mass-row = Your weight
question-body-mass-kg = Your weight in kg
question-body-mass-lb = Your weight in lb
question-body-mass-not-sure = Skip this question

## The thing

question-what = What do you want to lift?
question-what-row = What
question-what-small = Something small
question-what-small-note = One hand is enough
question-what-box = A box
question-what-bag = A bag or sack
question-what-basket = A basket or tub
question-what-bucket = A bucket
question-what-long = Something long
question-what-big = Something big or bulky
question-what-living = A person or an animal
question-mass = How heavy is it?
question-mass-hint = About as heavy as what? If it is in between, take the heavier one.
question-mass-row = How heavy
question-mass-cup = A full cup
question-mass-flour = A bag of flour
question-mass-bottle = A big bottle of water
question-mass-two-bottles = Two big bottles of water
question-mass-six-pack = A pack of six bottles
question-mass-water-bucket = A bucket full of water
question-mass-bicycle = A bicycle
question-mass-suitcase = A big packed suitcase
question-mass-heavier = Heavier than all of these
question-mass-type-it = I know the number
question-mass-number = How heavy is it?
question-mass-number-hint = Read it from the label, or from a scale.
question-mass-number-kg = Weight in kg
question-mass-number-lb = Weight in lb
question-mass-guess = What could it weigh at most?
question-mass-guess-hint = Guess high. We go by the highest it could be.
question-mass-guess-no-idea = I have no idea
question-start = Where do your hands grip it?
question-start-hint = How high is it when you start?
question-start-row = Starts at
question-start-floor = On the floor
question-start-shin = At the shins
question-start-knee = At the knees
question-start-waist = At the waist
question-start-chest = At the chest
question-start-overhead = Above the head
question-reach = How far away is it?
question-reach-hint = As close as you can get with your feet.
question-reach-row = How far away
question-reach-close = Close to me
question-reach-close-note = Elbows at my sides
question-reach-medium = A bit away
question-reach-medium-note = Elbows in front of me
question-reach-far = Far away
question-reach-far-note = Arms nearly straight
question-often = How many times?
question-often-hint = Count each time you pick something up.
question-often-row = How many times
question-often-once = Once
question-often-twice = Twice
question-often-few = 3 to 10 times
question-often-some-fast = 11 to 30 times, in less than an hour
question-often-some-slow = 11 to 30 times, over some hours
question-often-many-fast = More than 30 times, in less than an hour
question-often-many-slow = More than 30 times, over some hours

question-often-in-plan = Your plan says up to { $count } in one go. Will it be more?
question-often-in-plan-hint = Rest and do something else before the next go.
question-often-in-plan-row = More than the plan says
question-often-in-plan-within = No, I stop there and rest
question-often-in-plan-more = Yes, more in one go

## Your body today

question-back = How much does your back hurt right now?
question-back-row = Back
question-back-state = How is your back today?
question-back-state-row = Back today
question-back-state-steady = Steady
question-back-state-steady-note = No surprises
question-back-state-volatile = It catches
question-back-state-volatile-note = Sudden pain, with no warning
question-back-state-flare = A flare-up
question-back-state-flare-note = Much worse than usual, for hours or days
question-knee-left = How much does your left knee hurt right now?
question-knee-left-row = Left knee
question-knee-right = How much does your right knee hurt right now?
question-knee-right-row = Right knee
question-other = Does one of these hurt today?
question-other-hint = Tick all that hurt.
question-other-row = Also hurts
question-other-hip-left = Left hip
question-other-hip-right = Right hip
question-other-shoulders = Shoulders
question-hip-left = How much does your left hip hurt right now?
question-hip-left-row = Left hip
question-hip-right = How much does your right hip hurt right now?
question-hip-right-row = Right hip
question-shoulders = How much do your shoulders hurt right now?
question-shoulders-hint = Think of the worse one.
question-shoulders-row = Shoulders
question-balance = How is your balance today?
question-balance-row = Balance
question-balance-good = Good
question-balance-good-note = Steady on one leg
question-balance-fair = Fair
question-balance-fair-note = Steady on two legs, not on one
question-balance-poor = Poor
question-balance-poor-note = I need a hand on something
question-kneel = Can you kneel down and get up again?
question-kneel-row = Kneeling
question-kneel-yes = Yes
question-kneel-one-side = On one side only
question-kneel-no = No

## How answers read

answer-pain = { $pain } out of 10
answer-none = None of these
answer-not-sure = Not sure
answer-not-said = Not said
answer-not-known = Not known
answer-as-heavy-as = Not more than { $mass }
mass-up-to = up to { $mass }
mass-over = more than { $mass }
mass-not-known = weight not known

## Pages around the questions

title-bar-lift = Before the lift
title-bar-about = About you
title-bar-own = You today
title-bar-signs = Warning signs
check-title = Check your answers
check-button = See the advice

## Is that right?

interruption-go-on = Yes, that is right
interruption-change = Change an answer
interruption-small-heavy-title = Small, and that heavy?
interruption-small-heavy-text = You said it is small enough for one hand. You also said it is very heavy. Is that right?
interruption-very-heavy-title = Is it really that heavy?
interruption-very-heavy-text = That is as heavy as a grown person. Look at the number again. Is that right?
interruption-many-heavy-title = So heavy, so many times?
interruption-many-heavy-text = You said more than 10 times. You also said it is very heavy. Is that right?
interruption-flare-pain-0-title = A flare-up, and no back pain?
interruption-flare-pain-0-text = You said today is a flare-up. You also said your back pain is 0. Is that right?
interruption-all-ten-title = The worst pain in back and knees?
interruption-all-ten-text = You said 10 for your back and for both knees. Is that right?

## No advice here

refuse-living-title = Not a person or an animal
refuse-living-1 = A person or an animal can move, and can get hurt. We cannot advise on that here.
refuse-living-2 = Ask somebody who can help.
refuse-unsure-sign-title = Not sure about a sign? Ask first
refuse-unsure-sign-1 = If you are not sure, ask a nurse or a doctor first. Do not lift until then.
refuse-unsure-sign-2 = You can go back and answer again.
