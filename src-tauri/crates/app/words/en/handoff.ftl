# Handing plans and histories from phone to phone: texts with values in them, and why something was not taken.

## Names and people

handoff-suggest = { $colour } { $thing }
handoff-suggest-colours = Blue. Green. Red. Yellow. White. Black. Grey. Brown. Orange. Purple
handoff-suggest-things = Kettle. Ladder. Boat. Lamp. Chair. Spoon. Button. Basket. Bottle. Window. Pencil. Drum. Bench. Clock. Bridge. Cup
handoff-pairing-since = Paired { $day }
handoff-pairing-old-keys = This phone was set up again since then. Pair with them once more.
handoff-role-lifts = Lifts things
handoff-role-helps = Helps others move
handoff-role-treats = Treats people

## Pairing

handoff-warning-other-keys = You know a phone called { $alias }. This is another phone. Go on only if they have a new phone. It will take the place of the old one.
handoff-warning-renamed = You know this phone as { $was }. Now it calls itself { $alias }. Ask them why.

## Why something was not taken

handoff-refused-foreign = This code is not from this app. Nothing was taken. Look for the code on the other phone.
handoff-refused-damaged = This code is damaged. Nothing was taken. Hold still and scan it again.
handoff-refused-truncated = Part of this code is missing. Nothing was taken. Ask for the whole code or file.
handoff-refused-newer = This was made with a newer version of the app. Nothing was taken. Get the newer version to read it.
handoff-refused-spoiled = The pictures did not fit together. They were thrown away. Go on scanning.
handoff-refused-picture = This file is not a picture that the app can read. Nothing was taken. Try a photo of the code.
handoff-refused-offer-here = This code is for pairing. Nothing was taken. Go to pairing to use it.
handoff-refused-parcel-here = This code holds a plan or a history. It is not for pairing. Nothing was taken.
handoff-refused-show-yours = Your own code is not shown yet. Nothing was taken. Show your code first, then scan theirs.
handoff-refused-own-card = This is your own code. Nothing was taken. Scan the code on the other phone.
handoff-refused-same = You have this already. Nothing was changed.
handoff-refused-same-plan = You follow this plan already. Nothing was changed.
handoff-refused-replayed = You took this once before, and a newer one since. Nothing was changed. Ask for the newest.
handoff-refused-older = You have something newer from them. Nothing was changed. Ask for the newest.
handoff-refused-older-plan = This version is older than the one you have. Nothing was changed. Ask for the newest plan.
handoff-refused-same-number = This plan has the number of yours, but says something else. Nothing was changed. Ask for a new version.
handoff-refused-number-twice = This number was used before for something else. Nothing was changed. Pair with them again.
handoff-refused-wrong-recipient = This is meant for another phone. Nothing was taken. Ask them to show it for you.
handoff-refused-unknown-sender = This comes from a phone you are not paired with. Nothing was taken. Pair with them first.
handoff-refused-not-authentic = This is not what the sender made. Somebody may have changed it. Nothing was taken. Ask them to show it again.
handoff-refused-expired = The time to take this has run out. Nothing was taken. Ask them to show it again.
handoff-refused-unreadable = The app cannot read what is inside. Nothing was taken. Ask them to show it again.
handoff-refused-newer-content = This says something that your app does not know yet. Nothing was taken. Get the newer version to use it.
handoff-refused-contradiction = Two parts of this plan do not fit together. Nothing was taken. Ask for a new version.
handoff-refused-same-care = You have this care plan already. Nothing was changed.
handoff-refused-older-care = This care plan is older than yours. Nothing was changed. Ask for the newest one.
handoff-refused-care-other-person = This care plan was for another person before. Nothing was changed. Ask the sender who it is for.
handoff-refused-care-own = This care plan was made on this phone. Nothing was changed.
handoff-refused-care-future = The day on this care plan has not come yet. Nothing was taken. Ask the sender.
handoff-refused-care-contradiction = Two parts of this care plan do not fit together. Nothing was taken. Ask for a new one.
handoff-refused-care-full = There are too many people on this phone. Nothing was taken. Remove one you no longer help.
handoff-refused-used = This was taken once before with its words. Nothing was changed. Ask for a new one.
handoff-refused-memory = The phone is short of memory. Nothing was taken. Close other apps and try again.
handoff-code-not-eight = There must be eight words. Nothing was changed. Ask for the words and type all of them.
handoff-code-not-a-word = One of these words is not in the list. Nothing was changed. Look at how they are written.

## The question about what came in

handoff-question-plan-title = Use this plan?
handoff-question-plan = A plan from { $from } for { $whom }, version { $version }.
handoff-question-newer =
    { $days ->
        [one] It is { $days } day newer than yours.
       *[other] It is { $days } days newer than yours.
    }
handoff-question-newer-today = It is newer than yours, from the same day.
handoff-question-plan-yes = Use it
handoff-question-care-title = Use this care plan?
handoff-question-care = A care plan for { $code }, from { $from }, version { $version }.
handoff-care-known = { $code } is on this phone
handoff-care-new = New here. They will be written down.
handoff-question-history-title = Take in this history?
handoff-question-history = A history from { $from }.
handoff-question-history-yes = Take it in
handoff-question-no = Leave it
handoff-fact-title = Plan
handoff-fact-made = Made
handoff-fact-review = Holds
handoff-fact-person = Person
handoff-fact-allows = Allowed by this plan where sources differ
handoff-fact-holds = What it holds
handoff-warning-unverified = It came with eight words. Nobody knows for sure who sent it. Ask them.
handoff-warning-takes-place = You follow another plan now: { $title }. { $from }. This one takes its place.
handoff-warning-other-name = This plan is for { $whom }. Others know you as { $mine }. Ask if it is meant for you.
handoff-warning-crossed = Its number and its day do not fit with the one you have. Ask which one is right.
handoff-warning-overdue = The day to look at this plan again has passed. Ask for a new one.
handoff-warning-care-sender = The one before came from { $from }. Ask who made this one.
handoff-warning-care-old = Part of this plan is past its date. What it allows no longer counts. Ask for a new one.
handoff-warning-care-replaced = It takes the place of what you have for: { $moves }
handoff-warning-care-stays = You have a newer plan for this. Yours stays: { $moves }
handoff-warning-care-gone = It no longer says anything about: { $moves }
handoff-said-care = The care plan is kept.
handoff-said-plan = You follow this plan from now on.
handoff-said-history = The history is kept.
handoff-said-declined = It was left. Nothing was changed.

## What leaves, and how it is shown

handoff-show-confirm = Show it
handoff-to = Only { $name } can open it.
handoff-to-code = Whoever has the eight words can open it.
handoff-expires = It can be taken in until { $day }.
handoff-leaves-plan = The plan for { $whom }, version { $version }
handoff-leaves-care = The care plan for { $code }, version { $version }
handoff-leaves-name = Your name for others: { $name }
handoff-leaves-lifts =
    { $count ->
        [one] { $count } lift, { $first }.
       *[other] { $count } lifts, { $first } to { $last }.
    }
handoff-leaves-left =
    { $count ->
        [0] None of them was left.
        [one] { $count } of them was left.
       *[other] { $count } of them were left.
    }
handoff-leaves-looks =
    { $count ->
        [0] Nobody said how it felt.
        [one] How it felt, { $count } time.
       *[other] How it felt, { $count } times.
    }
handoff-leaves-signs =
    { $count ->
        [one] { $count } warning sign.
       *[other] { $count } warning signs.
    }
handoff-leaves-practice =
    { $count ->
        [one] One note about practice, with pain.
       *[other] { $count } notes about practice, with pain.
    }
handoff-leaves-plan-version = The plan you follow, by its number: version { $version }.
handoff-leaves-notes = The name of each thing.
handoff-leaves-no-notes = No names of things.
