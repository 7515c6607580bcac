# Fixed words of the screens for helping others move.

## People

screen-care-title = People you help
screen-care-before = Before a move
screen-care-lead = Who is it? Tap the picture and code.
screen-care-none = Nobody is written down yet.
screen-care-new = Somebody new
screen-care-link = Help others move
screen-care-things = Check a lift of a thing
screen-care-shift = Shift and log
screen-care-trained = Your training
screen-care-code-title = A code and a picture
screen-care-code-what = Use a code, never a name, unless your employer allows it.
screen-care-code = Code
screen-care-code-pick = Pick the picture that helps you tell who it is. It stays on top of every page.
screen-care-move-title = What is the move?
screen-care-moves-known = Known
screen-care-moves-all = Other moves
screen-care-known-title = What is known
screen-care-forget = They have changed: ask all anew
screen-care-edit = Change code or picture
screen-care-drop = Remove this person
screen-care-drop-sure = All that is known of them goes. The log stays until you erase it.
screen-care-who = This is about

## Care plan

screen-care-plan = Write down the care plan
screen-care-plan-pick = For which move?
screen-care-plan-ways = Which ways does it name?
screen-care-plan-workers = How many workers does it ask for?
screen-care-plan-not-said = It does not say
screen-care-plan-by = Who issued it?
screen-care-plan-on = Which date is on it?
screen-care-plan-on-hint = Year, month, day. Such as 2026-11-25
screen-care-plan-on-label = Date on the plan
screen-care-plan-review = When is it to be looked at again?
screen-care-plan-review-what = After that day the plan still forbids. What it allows no longer counts. A plan counts for half a year at most.
screen-care-plan-review-label = Day to look at it again
screen-care-plan-review-empty = Type the day, or tap "It does not say".
screen-care-plan-give = Hand over the care plan
screen-care-plan-keep = Keep it
screen-care-plan-drop = Remove this plan
screen-care-plan-strict = Where sources differ we take the strict one. A care plan can allow the other.

## The answer

screen-care-before-checks = Look at this first
screen-care-steps = Steps
screen-care-stop = Stop when
screen-care-after = What to report
screen-care-after-what = Tell the office what was not as planned, each near miss, and new pain of theirs.
screen-care-with = With
screen-care-without = No equipment
screen-care-read = Read it aloud
screen-care-read-stop = Stop reading
screen-care-done = It is done
screen-care-not-done = We did not do it
screen-care-tell = Tell the office
screen-care-differs = Not as the care plan says today
screen-care-no-equipment = Equipment or a worker is missing
screen-care-wrong = Something is wrong now
screen-care-harder = Something makes it harder
screen-care-own-load = What it asks of your body
screen-care-else = What else to do
screen-care-differ-title = Sources differ here
screen-care-order = Your employer and local rules come first. Then a warning sign, the care plan, and today. Their own no beats all.
screen-care-own-ask = Answer some questions
screen-care-mark-go = A way to move them
screen-care-mark-leave = Do not move them like this
screen-care-log = Keep it in the log
screen-care-own-again = Change how I am today

## Something is wrong in the middle

screen-care-stop-title = Stop. Lower them now.
screen-care-stop-1 = Let them down on the nearest seat, bed or floor. Slowly.
screen-care-stop-2 = Stay with them. Talk to them.
screen-care-stop-3 = Call for help. If it is serious: your local emergency number.
screen-care-stop-4 = Do not lift them again alone.
screen-care-stop-log = Write it down as a near miss
screen-care-stop-fine = All is well, go back

## Office, log and shift

screen-care-report-what = Only facts. Nothing about your own body. Look it over. It leaves only when you tap.
screen-care-copy = Copy the text
screen-care-share = Share the text
screen-care-said = I told them myself
screen-care-copied = Copied. Paste it where the office reads it.
screen-care-copy-failed = This phone did not let us copy. Mark the text and copy it by hand.
screen-care-kept = Kept in the log.
screen-care-helped-title = What helped?
screen-care-nearly = It nearly went wrong
screen-care-near-title = What did you see?
screen-care-shift-none = Nothing in this shift yet.
screen-care-shift-what = This is what you hand over. It leaves only when you copy or share it.
screen-care-shift-proof = Near misses and refusals are proof. They stay unless you say so.
screen-care-shift-hand = It was handed over
screen-care-shift-last = Handed over
screen-care-shift-erase = Erase the moves of this shift
screen-care-shift-erase-all = Erase near misses and refusals too
screen-care-shift-sure = They are proof that you asked and stopped. Did the office get them?
screen-care-proof = Proof
