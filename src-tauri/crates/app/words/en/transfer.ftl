# Moving a person. "You" is the worker, "they" the person who is moved. A value that is not known is the word none.

## Ways to move a person

way-stand-by = Stand by
way-stand-by-gloss = They do it. You stay close and lift nothing.
way-stand-by-cue-1 = Stay at their weaker side.
way-stand-by-cue-2 = Say one step at a time.
way-stand-by-cue-3 = Keep your hands free and ready.
way-stand-by-word-1 = Stay close
way-stand-by-word-2 = Lift nothing
way-stand-by-word-3 = One step
way-stand-pivot-belt = Stand and turn with a belt
way-stand-pivot-belt-gloss = They stand up. The belt is there to steady, not to lift.
way-stand-pivot-belt-cue-1 = Put the belt on snugly. Feet flat, knees bent.
way-stand-pivot-belt-cue-2 = They lean forward and push up on your count of three.
way-stand-pivot-belt-cue-3 = Turn in small steps toward their stronger side.
way-stand-pivot-belt-word-1 = Lean forward
way-stand-pivot-belt-word-2 = Push up
way-stand-pivot-belt-word-3 = Small steps
way-stand-aid = Stand aid
way-stand-aid-gloss = The aid lifts. They stand on part of their weight.
way-stand-aid-cue-1 = Feet on the plate, knees against the pad.
way-stand-aid-cue-2 = Put the sling on. They hold the bar.
way-stand-aid-cue-3 = Raise slowly, and stop if they let go.
way-stand-aid-word-1 = Feet flat
way-stand-aid-word-2 = Hold on
way-stand-aid-word-3 = Raise slowly
way-slide-board = Slide board
way-slide-board-gloss = They sit and slide across with their arms.
way-slide-board-cue-1 = Take off the chair arm on that side. Brakes on.
way-slide-board-cue-2 = Put the board well under one thigh.
way-slide-board-cue-3 = They push and slide in small moves. You steady.
way-slide-board-word-1 = Arm off
way-slide-board-word-2 = Board under
way-slide-board-word-3 = Small slides
way-hoist-two = Hoist, two people
way-hoist-two-gloss = The hoist lifts. One works it, one guides the person.
way-hoist-two-cue-1 = Check the sling, its size and each loop.
way-hoist-two-cue-2 = Raise a little, stop, and check again.
way-hoist-two-cue-3 = One works the hoist. One stays with the person.
way-hoist-two-word-1 = Check loops
way-hoist-two-word-2 = Raise slowly
way-hoist-two-word-3 = Stay beside
way-slide-sheet-two = Slide sheet, two or more people
way-slide-sheet-two-gloss = They slide on a sheet. Nobody lifts.
way-slide-sheet-two-cue-1 = Bed flat and at the height of your elbow.
way-slide-sheet-two-cue-2 = One on each side. Nobody pulls from the head end.
way-slide-sheet-two-cue-3 = Move on the count of three, by shifting your weight.
way-slide-sheet-two-word-1 = Bed flat
way-slide-sheet-two-word-2 = Each side
way-slide-sheet-two-word-3 = Slide, no lift
way-guided-self-rise = They rise, you guide
way-guided-self-rise-gloss = They do it with their own strength. You say each step.
way-guided-self-rise-cue-1 = Put a firm chair beside them.
way-guided-self-rise-cue-2 = They roll to one side and push up with the arms.
way-guided-self-rise-cue-3 = Say the next step. Do not pull on an arm.
way-guided-self-rise-word-1 = Firm chair
way-guided-self-rise-word-2 = Push up
way-guided-self-rise-word-3 = No pulling
way-manual-lift = By hand, within the limit
way-manual-lift-gloss = You hold it close, with both hands, for a short time.
way-manual-lift-cue-1 = Raise the bed first, or sit down beside them.
way-manual-lift-cue-2 = Hold under the joints, close to your body.
way-manual-lift-cue-3 = Rest the weight as soon as you can.
way-manual-lift-word-1 = Both hands
way-manual-lift-word-2 = Hold close
way-manual-lift-word-3 = Rest soon

## Moves

move-bed-to-chair = From bed to chair
move-chair-to-bed = From chair to bed
move-chair-to-toilet = From chair to toilet
move-toilet-to-chair = From toilet to chair
move-chair-to-chair = From chair to chair
move-chair-to-wheelchair = Chair and wheelchair
move-car = Into or out of a car
move-up-in-bed = Up the bed
move-turn-in-bed = Turn in bed
move-sit-up = Sit up
move-up-in-chair = Up in the chair
move-lateral = Sideways to another bed
move-floor-to-chair = Up from the floor
move-hold-limb = Hold a leg or an arm
move-stockings = Put on stockings
move-shoes = Put on shoes
move-wash-low = Wash low down
move-catch = Catch somebody who falls

## Equipment

equipment-belt = Belt
equipment-slide-board = Slide board
equipment-stand-aid = Stand aid
equipment-hoist = Hoist and sling
equipment-slide-sheet = Slide sheet
equipment-removable-arm-chair = Chair with an arm that comes off
equipment-car-hoist = Hoist for a car
equipment-lateral-aid = Board for sliding between beds
equipment-limb-sling = Sling for a leg or an arm
equipment-foot-stool = Foot stool
equipment-adjustable-bed = Bed that rises

## New signs of the person

client-sign-new-hip-pain = New pain in the hip or groin
client-sign-head-knock = A knock on the head
client-sign-neck-pain = New pain in the neck or back after a fall
client-sign-odd-shape = An arm or a leg has an odd shape
client-sign-bleeding = Bleeds a lot
client-sign-severe-pain = Very strong new pain
client-sign-passed-out = Passed out, or does not wake up
client-sign-fit = Had a fit
client-sign-stroke-signs = Face droops, an arm is weak, or speech is odd
client-sign-chest-pain = Chest pain
client-sign-breathless = Short of breath
client-sign-drowsy = Very sleepy
client-sign-confused = Confused
client-sign-dizzy = Dizzy
client-sign-weaker = Weaker than before
client-sign-fell = Fell since the last visit
client-sign-fever = Fever, or feels very ill
client-sign-resists = Fights the move
client-sign-new-wound = A new wound, sore or swelling
client-sign-other = Another new sign

## Look at this first

move-check-agrees = Ask them. Say what you will do.
move-check-brakes = Brakes on, at both ends.
move-check-floor-clear = Floor dry and clear, with room to turn.
move-check-shoes = Shoes that grip, on their feet and yours.
move-check-lines = Tubes, drips and casts out of the way.
move-check-device-ready = Charged, in date, and the right size.
move-check-rated-load = Read the highest weight on the label.
move-check-chair-arm-off = Take off the chair arm on that side.
move-check-stronger-side = The stronger side goes first.
move-check-bed-height = Bed flat, at the height of your elbow.
move-check-level-surfaces = Both beds level and locked.
move-check-count-together = All move on the count of three.
move-check-looked-over = Look from head to foot for pain, blood or an odd shape.
move-check-firm-furniture = Put a firm chair close by.

## Stop when

move-stop-says-stop = They say stop.
move-stop-new-pain = They have new pain.
move-stop-dizzy-pale = They are dizzy, pale or short of breath.
move-stop-legs-give = Their legs give way.
move-stop-resists = They fight it, or no longer follow.
move-stop-line-pulls = A tube or a drip pulls.
move-stop-device-fails = The belt slips, or a brake or the battery fails.
move-stop-own-pain = Your back catches, or your pain is 6 or more.
move-stop-too-heavy = You take more weight than you thought.
move-stop-not-as-planned = It does not go as planned.

## What else to do

move-else-wait-for-help = Keep them warm and at ease until help comes.
move-else-use-equipment = Ask the office for the equipment that is missing.
move-else-call-clinician = Call their nurse, doctor or therapist.
move-else-ask-person = Ask another worker to take your part.
move-else-leave-it = Leave it for now, and ask again later.
move-else-long-tool-or-sit = Sit down to do it, or use a long handle.
move-else-follow-surgeon-limit = Keep to your surgeon's written limit.

## Signs and who may be advised

because-client-sign-emergency = they have a sign that needs help now
reason-client-sign-emergency =
    { $what ->
        [new_hip_pain] New hip pain can mean a broken bone.
        [head_knock] They had a knock on the head.
        [stroke_signs] These can be signs of a stroke.
        [chest_pain] They have chest pain.
        [breathless] They are short of breath.
       *[none] They have a new sign that can be serious.
    } Do not move them. Get help now.
because-client-sign-today = they are not as they were
reason-client-sign-today =
    { $what ->
        [drowsy] They are very sleepy today.
        [confused] They are confused today.
        [dizzy] They are dizzy today.
        [weaker] They are weaker today.
        [fell] They fell since the last visit.
        [fever] They have a fever or feel very ill.
        [resists] They fight the move.
        [new_wound] They have a new wound or sore.
       *[none] They have a new sign today.
    } Leave them where they are, and tell the office today.
because-floor-hurt = they are on the floor and may be hurt
reason-floor-hurt = They are on the floor and may be hurt. Do not move them. Keep them warm, and get help now.
because-floor-not-checked = nobody has looked for an injury yet
reason-floor-not-checked = Look from head to foot first. Until then we count them as hurt.
because-worker-is-child = you are under 16
reason-worker-is-child = You are under 16. An adult who is trained has to do this.
because-client-says-no = they do not want it
reason-client-says-no = They said no. That comes first.

## The care plan

because-care-plan-differs = today is not as the care plan says
reason-care-plan-differs = They are not today as the care plan says. So the plan does not cover this.
because-care-plan-covers = the care plan covers this move
reason-care-plan-covers = The care plan covers this move.
because-care-plan-old = the care plan is past its date
reason-care-plan-old = The care plan is past its date. What it forbids still holds. What it allowed does not.
because-care-plan-none = no care plan covers this move
reason-care-plan-none = No care plan covers this move. Here published rules stand in for it.
because-care-plan-other-way = the care plan names another way
reason-care-plan-other-way = The care plan names the ways to do this. Others are left out.
because-care-plan-more-workers = the care plan asks for { $people } workers
reason-care-plan-more-workers = The care plan asks for { $people } workers. Fewer are here.
because-belt-by-plan = the care plan covers the belt
reason-belt-by-plan = Sources differ on the belt. The care plan covers this move, so it may steady. It never lifts.
because-hands-by-plan = the care plan names two who lift by hand
reason-hands-by-plan = Sources differ on two who lift by hand. The care plan names it.

## How much you would take

because-share-within-limit = your part is within the published limit
reason-share-within-limit = Your part is about { $share }. The published limit here is { $limit } for each worker. It is not a goal.
because-share-over-limit = your part is over the published limit
reason-share-over-limit =
    Your part is about { $share }. The published limit here is { $limit } for each worker. { $people ->
        [none] Use equipment.
       *[other] By hand that takes { $people } workers. Use equipment.
    }
because-share-not-known = nobody knows how much you would lift
reason-share-not-known = Nobody knows how much of their weight you would take. So we count on equipment.
because-client-mass-not-known = their weight is not known
reason-client-mass-not-known = Their weight is not known. So your part may be over the limit.
because-limit-lowered = something here makes your limit lower
reason-limit-lowered =
    { $what ->
        [arms_extended] Your arms are stretched out.
        [near_floor] It is near the floor.
        [sitting_or_kneeling] You sit or kneel.
        [twisted] Your back is twisted.
        [one_hand] You have one hand for it.
        [above_shoulder] Your hands are above your shoulders.
        [tight_space] There is little room.
        [long_shift] Your shift is long.
        [long_hold] You would hold it for more than a minute.
        [own_back] Your back hurts.
        [own_legs] A knee or a hip hurts a lot, or was not asked about.
        [own_bones] Your bones are weak.
        [own_pregnancy] You are pregnant.
       *[none] Something makes it harder.
    } So your limit here is { $limit }. The size of that step is our own rule.
because-limit-needs-following = they do not follow simple steps
reason-limit-needs-following = The limit is for a person who follows and does not move all at once.
because-limb-mass = of what an arm or a leg weighs
reason-limb-mass =
    { $what ->
        [leg] A leg of theirs weighs about { $share }.
        [arm] An arm of theirs weighs about { $share }.
       *[none] The part you hold weighs about { $share }.
    }
because-held-too-long = you would hold it too long
reason-held-too-long = You would hold it for more than 2 minutes. Published limits end there. Rest it on something.
because-check-rated-load = they are very heavy
reason-check-rated-load = They are very heavy. Read the highest weight on the equipment first.
because-low-work-too-much = it is too much for you so low down
reason-low-work-too-much = So low down this is more than lifting limits allow for you today. Raise the bed, or sit.

## Why a way fits or not

because-worker-bears-nothing = your own body says no today
reason-worker-bears-nothing =
    { $what ->
        [back] Your back is not fit to lift a person today.
        [back_not_asked] Your back pain is not known, so we count it as strong.
        [shoulders] Your shoulders hurt a lot.
        [balance] Your balance is poor today.
        [balance_not_asked] Your balance is not known, so we count it as poor.
        [hernia] You have a hernia.
       *[none] Your body is not fit for it today.
    } You take no part of their weight.
because-legs-do-not-carry = their legs do not take enough weight
reason-legs-do-not-carry =
    { $what ->
        [part] They take only part of their weight.
        [none] They take no weight on their legs.
       *[not_asked] Nobody knows if their legs take weight.
    } Some ways need more.
because-does-not-follow = they do not follow simple steps
reason-does-not-follow =
    { $what ->
        [no] They do not follow simple steps.
       *[none] Nobody is sure that they follow simple steps.
    } Some ways need that.
because-arms-not-strong = their arms are not strong enough
reason-arms-not-strong =
    { $what ->
        [no] Their arms are not strong.
       *[none] Nobody knows if their arms are strong.
    } Some ways need that.
because-cannot-alone = they cannot do it alone
reason-cannot-alone = They cannot do it alone today.
because-help-unpredictable = the help they need changes
reason-help-unpredictable = The help they need changes all the time. So we count on none from them.
because-belt-alone = you are alone, and sources differ on the belt
reason-belt-alone = Sources differ on the belt. You are alone and no care plan covers it. So we take the strict one.
because-no-lift-by-hand = people are not lifted by hand
reason-no-lift-by-hand = People are not lifted by hand, unless the care plan names it.
because-chair-does-not-recline = the chair does not lean back
reason-chair-does-not-recline = The chair does not lean back, so there is nothing to slide on.
because-never-from-floor = nobody is lifted from the floor by hand
reason-never-from-floor = Never lift a person from the floor by hand.
because-never-catch = you cannot stop a fall
reason-never-catch = Do not try to catch a person who falls. Push things away from the head, and call for help.
because-equipment-missing = the equipment for it is not here
reason-equipment-missing =
    { $what ->
        [belt] A belt
        [slide_board] A slide board
        [stand_aid] A stand aid
        [hoist] A hoist
        [slide_sheet] A slide sheet
        [removable_arm_chair] A chair with an arm that comes off
        [car_hoist] A hoist for a car
        [lateral_aid] A board for sliding
        [limb_sling] A sling for a leg or an arm
       *[none] Some equipment
    } is not here, or you are not trained on it.
because-too-few-workers = it takes { $people } workers
reason-too-few-workers = It takes { $people } workers. Fewer are here.
because-stand-by-suits = they can do it alone
reason-stand-by-suits = They can do it alone. Stay close and lift nothing.
because-stand-aid-suits = they take part of their weight and follow
reason-stand-aid-suits = They take part of their weight and follow. A stand aid does the lifting.
because-belt-suits = they take part of their weight and follow
reason-belt-suits = They take part of their weight and follow. A belt can steady them while they stand and turn.
because-slide-board-suits = their arms are strong and they follow
reason-slide-board-suits = Their arms are strong and they follow. They can slide across a board.
because-hoist-suits = a hoist and two workers are here
reason-hoist-suits = A hoist and two workers are here. The hoist does the lifting.
because-slide-sheet-suits = a slide sheet and enough workers are here
reason-slide-sheet-suits = With a slide sheet and enough workers, nobody lifts.
because-self-rise-suits = they are not hurt and can rise alone
reason-self-rise-suits = They are not hurt and can rise alone. You guide, step by step.
because-guided-suits = they can do most of it
reason-guided-suits = They can do most of it. You guide, and they use their own arms.
because-hold-suits = it is light enough to hold for a short time
reason-hold-suits = It is light enough to hold for a short time, by published limits.
because-no-move-left = nothing here can move them now
reason-no-move-left = With what and who is here, there is no way to move them now.

## Cautions

caution-check-injury-first = Look for an injury first, from head to foot.
caution-no-manual-floor-lift = Never lift a person from the floor by hand.
caution-client-changed-report = They have changed. Tell the office before you do more.
caution-over-35lb-equipment = If you would take more than 15.9 kg (35 lb) of their weight, use equipment.
caution-two-workers = This takes two workers or more.
caution-worker-own-body = Your own body limits this today.
caution-stronger-side = Move toward their stronger side.
caution-report-to-office = Tell the office what is missing or not as planned.

## Sources

source-osha-3182 = Guidelines for Nursing Homes: OSHA 3182, 2009
source-vha-2014 = Patient handling algorithms: Veterans Health Administration, 2014
source-va-care-form = Assessment criteria and care plan form: Veterans Affairs
source-waters-2007 = When it may be lifted by hand: Waters, 2007
source-aorn-2011 = Holding a limb: Waters and others, AORN Journal, 2011
source-limb-mass = What a limb weighs: Waters and others, 2009 and 2011
source-after-fall = What carers do after a fall: public health service pages
