# Before somebody is moved: questions, the answer, the text for the office, the log. "You" is the worker, "they" the person.

## Questions

care-unhurt = They are on the floor. Are they hurt?
care-unhurt-hint = Do not move them yet. Talk to them and look from head to foot.
care-unhurt-look-1 = Do they answer you as always?
care-unhurt-look-2 = Pain in the head, neck, back or hip?
care-unhurt-look-3 = Blood, or a leg or arm with an odd shape?
care-unhurt-look-4 = Can they move arms and legs as before?
care-unhurt-unhurt = No, I looked and they are not hurt
care-unhurt-hurt = Yes, or it may be so
care-unhurt-not-looked = I have not looked yet
care-unhurt-row = Hurt
care-new = Is anything new or scary today?
care-new-hint = Such as pain, dizzy, very sleepy, confused, short of breath, a fall, or a new wound.
care-new-nothing = No, not in them and not in me
care-new-in-them = Yes, in them
care-new-they-say-no = They do not want to move now
care-new-in-me = Yes, in me
care-signs = What is new in them?
care-same = Is it still so today?
care-same-planned = Is it today as the care plan says?
care-same-as-planned = Yes, all of it
care-same-as-noted = Yes, all of it
care-same-missing = Equipment or a worker is missing
care-same-differs = No, they are not as the plan says
care-same-changed = No, it has changed
care-differs = What is not as the plan says?
care-differs-hint = Only what you see. The office will read it.
care-differs-legs = They take less weight on the legs
care-differs-follows = They do not follow the steps today
care-differs-arms = Their arms are weaker
care-differs-pain = They have more pain
care-differs-lines = A tube, cast or dressing is new
care-differs-weight = They are heavier than the plan says
care-differs-place = The room, bed or chair is not the same
care-differs-something = Something else
care-limb = What do you hold?
care-limb-leg = A leg
care-limb-arm = An arm
care-limb-row = Held
care-independent = Can they get up alone, if you say each step?
care-independent-yes = Yes
care-independent-no = No
care-independent-row = Gets up alone
care-able = How much can they do themselves?
care-able-fully = All of it
care-able-partly = A part of it
care-able-not = Nothing
care-able-row = Does themselves
care-legs = How much weight do their legs take?
care-legs-full = All of it
care-legs-part = A part of it
care-legs-none = None
care-legs-row = Weight on the legs
care-follows = Do they follow simple steps?
care-follows-hint = Such as: lean forward, now push up.
care-follows-yes = Yes
care-follows-unsure = Not always, or I am not sure
care-follows-no = No
care-follows-row = Follows steps
care-arms = Can both their arms push hard?
care-arms-hint = Enough to lift their own seat a little.
care-arms-yes = Yes
care-arms-no = No
care-arms-row = Strong arms
care-help = How much of them do you lift?
care-help-none = Nothing, they do it
care-help-steady-only = Nothing, I only steady them
care-help-tenth = A little, about a tenth
care-help-quarter = About a quarter
care-help-half = Half or more
care-help-unpredictable = It changes from moment to moment
care-help-row = Lifted by us
care-mass = How heavy are they?
care-mass-hint = A guess is fine. If in doubt, take the higher one.
care-mass-row = Their weight
care-hold = For how long do you hold it?
care-hold-up-1-min = Up to 1 minute
care-hold-up-2-min = Up to 2 minutes
care-hold-longer = Longer
care-hold-row = Held for
care-reclines = Does the chair lean back?
care-reclines-yes = Yes
care-reclines-no = No
care-reclines-row = Chair leans back
care-here = Who and what is here now?
care-here-hint = Tick only what works and is ready.
care-here-second = A second trained worker
care-here-third = A third trained worker
care-here-row = Here
care-harder = Does anything make it harder?
care-harder-hint = The limit by hand is lower then.
care-harder-arms-extended = My arms are stretched out
care-harder-near-floor = It is near the floor
care-harder-sitting-or-kneeling = I sit or kneel
care-harder-twisted = My back is twisted
care-harder-one-hand = I have one hand for it
care-harder-above-shoulder = My hands are above my shoulders
care-harder-tight-space = There is little room
care-harder-long-shift = My shift is over 8 hours
care-harder-row = Harder by
care-trained = What are you trained on?
care-trained-hint = Asked once. We never offer what you are not trained on. You can change it later.
care-untrained = You are not trained on it
care-line = { $label }: { $text }
care-equipment-row = Equipment here
care-move-unknown = A move
care-equipment-unknown = Some equipment
care-noted = Noted: { $day }

## Pictures to tell people by

care-picture-kettle = Kettle
care-picture-leaf = Leaf
care-picture-boat = Boat
care-picture-star = Star
care-picture-house = House
care-picture-sun = Sun
care-picture-key = Key
care-picture-cup = Cup
care-picture-tree = Tree
care-picture-bird = Bird
care-picture-fish = Fish
care-picture-moon = Moon
care-picture-bell = Bell
care-picture-pear = Pear
care-picture-kite = Kite
care-picture-lamp = Lamp

## You today

care-own = First: how are you today?
care-own-text = Your back and your knees count too. Asked once for some hours.
care-own-private = It stays on this phone. The office never gets it.
care-own-quick = Nothing hurts, my balance is good, and I can kneel
care-own-sign = First: what is new in you?
care-own-sign-text = We ask you about warning signs now. Then we come back to this move.
care-own-posture = Sums for this work, held in this way: { $way }. They explain. They are not a limit.

## The answer

care-outcome-lift = If you choose to go ahead: { $way }
care-outcome-do-not-lift = Not now, and not like this
care-outcome-catch = Do not catch them. Guide the fall.
care-outcome-seek-care = Do not move them. Get help now.
care-outcome-own-sign = You need help first. Ask somebody else to do this.
care-people =
    { $workers ->
        [0] You stand by
        [one] 1 worker
       *[other] { $workers } workers
    }
care-limit = The published limit here: { $limit } of their weight for each worker. It is not a goal.
care-sure-plan = This follows the care plan. Your employer and local rules come first.
care-sure-published = This rests on published rules for moving people. Your employer and local rules come first.
care-authority-plan = The care plan
care-guided-step-1 = Feet flat, or knees bent in bed.
care-guided-step-2 = They push with both arms on your count of three.
care-guided-step-3 = Say the next step. Do not pull on an arm.
care-guided-word-1 = Feet flat
care-guided-word-2 = Push up
care-guided-word-3 = No pulling

## The care plan

care-plan-line =
    Care plan ({ $who }, { $day }): { $ways }. { $workers ->
        [none] Workers: not said
       *[other] Workers: { $workers }
    }
care-plan-review = To be looked at again by { $day }.
care-plan-old = Past its date ({ $day }). What it allows no longer counts. Ask the office for a new one.
care-plan-old-short = Past its date
care-plan-exception = Sources differ on this way. Naming it here allows it.
care-give-nothing = There is no care plan of yours to hand over. Write one down first.
care-give-old = A care plan here is past its date. Nothing was handed over. Look at it again first.
care-by-office = the office
care-by-therapist = a therapist
care-by-nurse = a nurse
care-by-doctor = a doctor
care-by-other = somebody else

## Text for the office

care-office-title = For the office
care-office-head = { $code }: { $what }
care-office-when = { $day }, { $time }
care-office-not-done = I did not do this move.
care-office-floor = They are on the floor.
care-office-says-no = They do not want to move now.
care-office-signs = New today: { $signs }
care-office-differs = Not as the plan says: { $what }
care-office-not-as-planned = They are not today as the care plan says.
care-office-wanted = This would make it possible: { $way }. { $equipment }. Workers: { $workers }
care-office-untrained = I am not trained on: { $equipment }
care-office-ask = Please tell me how to go on.

## The log

care-result-done = done
care-result-not-done = not done
care-result-near-miss = near miss
care-result-refused = refused, and the office was asked
care-entry = { $time } { $code }, { $what }: { $result }
care-entry-helped = What helped: { $what }
care-told-copied = Text copied for the office
care-told-shared = Text shared with the office
care-told-said = Office told in person or by phone
care-seen-too-heavy = It was heavier than thought.
care-helped-talked = I told them each step
care-helped-slower = We went slower
care-helped-second-worker = A second worker
care-helped-equipment = The equipment
care-helped-bed-raised = A higher bed or chair
care-helped-room = More room
care-helped-rest-first = They rested first
care-helped-pause = A pause on the way

## The shift

care-shift-title = Shift of { $day }, from { $time }
care-shift-count = Moves: { $all }. Near misses and refusals: { $proofs }
care-shift-erased = Erased: { $plain }. Of these near misses and refusals: { $proofs }
