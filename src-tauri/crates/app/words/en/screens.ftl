# Fixed words of the screens. They are handed over once, so none takes a value.
# Slots in square brackets, such as [at], are filled by the screens.

## On every page

screen-app-name = Heftwell
screen-bar-label = Where you are
screen-back = Back
screen-home = Home
screen-continue = Continue
screen-change = Change
screen-close = Close
screen-skip = Skip
screen-undo = Undo
screen-undone = Taken back.
screen-chosen = your answer
screen-language = Language
screen-signs-link = Warning signs and whom to call

## Problems

screen-error-title = Please look at this
screen-error-prefix = Problem:
screen-error-page-title = This page did not open
screen-try-again = Try again
screen-unreachable = No reply came. Your notes are not touched. Close the app and open it again.

## First start

screen-start-title = Before you lift, ask
screen-start-what = Tell us what you want to lift and what hurts today. You get a way to lift it, or another way to get it done.
screen-start-limits = This helps you choose. It does not examine you. It is not a doctor or therapist.
screen-start-private = What you tell it stays on this phone, locked. Nothing is sent.
screen-start-go = Start

screen-use-title = What do you do most?
screen-use-hint = You can change this later.
screen-use-lift = Lift things myself
screen-use-lift-note = At home, in the garden, at work
screen-use-help = Help others move
screen-use-help-note = As a home-care worker or a relative
screen-use-treat = Treat people
screen-use-treat-note = As a clinician

screen-units-title = How do you weigh things?
screen-units-kg = Kilograms (kg)
screen-units-lb = Pounds (lb)

## Passphrase

screen-pass-title = Lock your notes
screen-pass-what = A passphrase is a long password. It locks all you write here.
screen-pass-label = Passphrase
screen-pass-new = New passphrase
screen-pass-new-hint = At least 10 letters. Four words you can remember work well.
screen-pass-again = The same once more
screen-pass-show = Show
screen-pass-lost-title = If you lose it:
screen-pass-lost = your notes cannot be opened. Not by you, not by us. Write it down and keep it at home.
screen-pass-keep = Lock my notes
screen-pass-change = Change the passphrase
screen-pass-old = Passphrase until now
screen-pass-changed = The new passphrase holds from now on.
screen-pass-empty = Type your passphrase.

screen-unlock-title = Open your notes
screen-unlock-text = Type your passphrase. Until then, no advice is given.
screen-unlock-open = Open
screen-unlock-wait = Opening. This takes a moment.

## Home

screen-greeting-morning = Good morning
screen-greeting-afternoon = Good afternoon
screen-greeting-evening = Good evening
screen-greeting-day = Hello
screen-home-lead = About to lift something? Ask here first.
screen-home-check = Check a lift
screen-draft-text = You stopped part way. Your answers are kept.
screen-draft-go-on = Go on
screen-morning-go = Answer
screen-saved-title = Saved lifts
screen-body-kept-title = Your body today
screen-recent-title = Last lifts
screen-pages = More pages
screen-lock = Lock now

screen-fresh-title = Start a new check?
screen-fresh-text = One is still open. If you start a new one, the open one is dropped.
screen-fresh-start = Start new

## Questions

screen-place = [at] of [of]
screen-not-sure = I'm not sure
screen-none-of-these = None of these
screen-why-asked = Why we ask
screen-tick-nothing = Tick what is true, or tap “None of these”.
screen-tick-and-none = You ticked something. Untick it, or tap “Continue”.
screen-number-problem = Type a number, such as 4 or 6.5.
screen-pain-none = no pain
screen-pain-worst = worst pain you can think of

## Advice

screen-outcome-lift = A way to lift it
screen-outcome-lift-with-change = Change it first
screen-outcome-do-not-lift = Leave it as it is
screen-outcome-seek-care = Get help first
screen-outcome-refuse = Ask somebody else
screen-cautions = Take care
screen-did-it = I did it
screen-left-it = I left it
screen-did-it-this-way = I did it this way
screen-read-it = I have read this
screen-advice-cues = In three steps
screen-advice-how = How to do it
screen-advice-more-cautions = Take care of this too
screen-advice-other-ways = Other ways to lift it
screen-advice-changes = What to change
screen-advice-changes-any = Any one of these is enough.
screen-advice-together = Do all of these:
screen-advice-alternatives = Other ways to get it done
screen-advice-ruled-out = Ways that were left out
screen-advice-who = Whom to call or ask
screen-advice-why = Why, and how sure
screen-rule-version = Rules: version [version]

## The figure of a way, and two side by side

screen-figure-asks = What it asks, by estimate:
screen-figure-play = Show it moving
screen-figure-stop = Stop moving
screen-figure-sure = How sure is this drawing?
screen-figure-estimate = How sure: estimate. A body model works out the pull on each joint in a slow lift. Little, some and much compare that with published marks for the back and house rules for hips and knees.

screen-compare-link = Compare two ways
screen-compare-title = Two ways side by side
screen-compare-decides = What therapists do in practice decides the advice. This drawing does not.
screen-compare-choose = Choose two ways
screen-compare-none = This way could not be drawn for this lift.

## After the lift

screen-after-title = How bad was the pain while you lifted?
screen-after-hint = The worst moment counts. Tap a number.
screen-kept = Kept in your history.
screen-left-title = What did you do instead?
screen-left-only = Nothing. I just left it.
screen-morning-title = How is it today?
screen-morning-hint = Your pain right now. Tap a number.
screen-usual-title = Do you feel as usual again?
screen-usual-yes = Yes, as usual
screen-usual-no = No, not yet

## History

screen-history-title = History
screen-history-none = Nothing here yet.
screen-history-count = Lifts shown: [count]
screen-history-more = Show older ones
screen-filter = Show only some
screen-filter-show = Which lifts
screen-filter-all = All
screen-filter-done = Those I did
screen-filter-left = Those I left
screen-filter-way = Way to lift
screen-filter-any-way = Any way
screen-filter-since = Since this day
screen-entry-when = When
screen-entry-done = What you did
screen-entry-pain = Pain
screen-entry-answers = Your answers
screen-entry-advice = The advice you got

screen-way-hinge = Hip hinge
screen-way-squat = Squat
screen-way-lunge = Half-kneel
screen-way-free-bend = Free bend
screen-way-golfer = Golfer's lift
screen-way-upright = Standing lift

## Saved lifts

screen-save-link = Save this lift for next time
screen-save-title = Save this lift
screen-save-text = Next time, one tap opens it. Then you only tell how you feel.
screen-save-name = Name
screen-save-hint = Such as: laundry basket
screen-save-keep = Save
screen-save-empty = Type a name.
screen-saved-kept = Saved for next time.
screen-saved-drop = Delete

## Settings

screen-settings-title = Settings
screen-about-title = About you
screen-about-none = Not asked yet.
screen-about-again = Answer these again
screen-private-title = Your notes
screen-private-here = All stays on this phone. Nothing is sent.
screen-private-locked = Notes are locked with your passphrase. They lock again when you stop using them for some minutes.
screen-private-lost = If you lose the passphrase, your notes cannot be opened.
screen-erase-title = Erase all notes
screen-erase-lost = This erases your lifts, your saved lifts, all you told about yourself, and open warning signs.
screen-erase-final = It is for good. Nobody can bring them back.
screen-limits-title = What this is not
screen-limits-text = It was not tested as a medical device. Your therapist, your doctor and the rules at work come first.
screen-version = Version [version]

## A warning sign that was told

screen-sign-clear-link = It has gone, or it was looked at
screen-sign-clear-title = What about this sign?
screen-sign-clear-text = While a sign is open, you get no advice on lifting. Some signs need a clinician to look at them.
screen-sign-clear-clinician = A clinician looked at it
screen-sign-clear-emergency = For this sign, a clinician has to look first.
screen-sign-clear-me = It has gone
