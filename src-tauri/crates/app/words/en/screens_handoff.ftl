# Fixed words of the pages that hand plans and histories from phone to phone.

## Hand over

screen-hand-title = Hand over
screen-hand-link = Plans and people
screen-hand-lead = Pass a plan or your history from phone to phone. Nothing is sent. The other phone reads your screen.
screen-hand-give = Hand something over
screen-hand-give-note = A plan, or your history
screen-hand-take = Take something in
screen-hand-take-note = With the camera, a photo or a file
screen-hand-plans = Plans
screen-hand-mine = The plan I follow
screen-hand-made = Plans for others
screen-hand-made-note = Make one from a pattern
screen-hand-people = People
screen-hand-pair = Pair with somebody
screen-hand-pair-note = Two phones get to know each other, once
screen-hand-paired = Whom I am paired with
screen-hand-no-alias = No name yet

## My card

screen-card-title = My card
screen-card-what = The other phone shows this name for you. It does not have to be your own.
screen-card-label = Name on my card
screen-card-hint = Choose a name that does not tell who it is.
screen-card-suggest = Use “[name]”
screen-card-keep = Keep this name

## Pairing

screen-pair-title = Pair two phones
screen-pair-step-show = Show this to the other phone.
screen-pair-step-scan = Then scan the other phone.
screen-pair-step-words = At the end, compare six words.
screen-pair-scanned = You have scanned the other phone. Now it must scan this. Then compare the words.
screen-pair-scan = Scan the other phone
screen-pair-compare = Compare the words

screen-compare-words-title = Are these words the same?
screen-compare-words-what = Read them aloud. The phone of [name] must show the same six words.
screen-compare-same = All six words are the same
screen-compare-other = The other person says so too
screen-compare-both = Tick both, or tap “They differ”.
screen-compare-differ = They differ
screen-compare-pair = Pair
screen-paired = You are paired now.
screen-not-paired = Not paired. Nothing was kept. Start again, and scan each other's phone only.

screen-warn-title = This phone is not the one you know
screen-warn-what = It may be a new phone. It may also be somebody else who uses this name.
screen-warn-ask = Ask [name] face to face: do you have a new phone?
screen-warn-go-on = Yes, it is a new phone
screen-warn-stop = Stop here

screen-people-none = You are not paired with anybody. Pair once, and then hand over as often as you like.
screen-people-none-short = Nobody yet
screen-role-lifts = Lifts for themselves
screen-role-helps = Helps others move
screen-role-treats = Treats people

screen-person-history = See what they handed over
screen-person-name = Name for this person
screen-person-name-hint = Only you see this name.
screen-person-keep = Keep the name
screen-person-end = End this pairing
screen-person-end-what = Plans and notes that came over stay. To hand over again, you must pair again.
screen-person-end-yes = End it now
screen-person-ended = The pairing has ended.

## What to hand over

screen-give-what = What do you want to hand over?
screen-give-history = My history
screen-give-history-note = What you lifted, and how it felt
screen-give-new-plan = A new plan
screen-give-new-plan-note = Make it first
screen-give-care = A care plan
screen-give-care-note = For somebody who is helped to move. Pick the person first.
screen-give-when = From when?
screen-give-when-30 = The last 30 days
screen-give-when-90 = The last 90 days
screen-give-when-all = All of it
screen-give-notes = Should your own notes go along?
screen-give-notes-no = No, without notes
screen-give-notes-no-note = Lifts and pain only
screen-give-notes-yes = Yes, with notes
screen-give-notes-yes-note = All that you wrote in your own words
screen-give-whom = For whom?
screen-give-unpaired = Somebody I am not paired with
screen-give-unpaired-note = It opens with eight words that you read aloud

screen-leaves-title = This will leave your phone
screen-leaves-sealed = It is sealed. A photo of your screen is of no use to others.

## Showing

screen-show-title = Show this to the other phone
screen-show-symbol = QR code for the other phone
screen-show-one = The other phone taps “Take something in” and looks at this.
screen-show-many = The pictures change all the time. Hold both phones still until the other ring is full.
screen-show-none = This is too long for a QR code. Save it as a file and pass the file on.
screen-show-bright = Turn up the brightness of your screen.
screen-show-rests = Hidden, since nobody has touched the phone for a minute.
screen-show-again = Show it again
screen-show-pause = Pause
screen-show-play = Play
screen-show-next = Next picture
screen-show-slower = Slower
screen-show-faster = Faster
screen-show-done = Done
screen-show-other-ways = If the other phone cannot read it
screen-show-larger = Show larger squares
screen-show-print = Print it

screen-code-what = You are not paired. It opens only with eight words.
screen-code-show = Show the eight words
screen-code-aloud = Read these aloud. Do not send them along with a photo or the file.
screen-code-hide = Hide the words

screen-paper-what = Scan this with Heftwell: Hand over, then “Take something in”. Only the right phone can open it.

screen-file-what = The file is sealed too. You can pass it on like any file.
screen-file-save = Save as a file
screen-file-saved = Saved: [path]
screen-file-browser = Your browser saves it as [path].

## Taking in

screen-scan-pair = Scan the other phone
screen-scan-parcel = Take something in
screen-scan-pair-what = The other phone shows its QR code under “Pair with somebody”.
screen-scan-parcel-what = Point the camera at the QR code on the other phone or on paper.
screen-scan-opening = Opening the camera.
screen-scan-hold = Fill the square with the code. Hold still.
screen-scan-none = There is no camera here. Use a photo or a file.
screen-scan-refused = The camera may not be used. You can allow it in the settings of your phone. Or use a photo or a file.
screen-scan-more = Hold still. More is coming in.
screen-scan-whole = All of it is in.
screen-scan-count = [have] of [need]
screen-scan-ring = How much is in
screen-scan-other-ways = Without the live camera
screen-scan-photo = Take a photo
screen-scan-picture = Choose a picture
screen-scan-file = Choose a file
screen-scan-nothing = There is no QR code to be read in this picture. Go closer, hold still, and avoid glare.
screen-scan-too-large = This file is too large. Choose another one.

screen-eight-title = Type the eight words
screen-eight-what = This comes from somebody you are not paired with. Ask them to read you eight words.
screen-eight-label = Eight words
screen-eight-hint = With spaces between them. Large or small letters do not matter.
screen-eight-open = Open it

screen-question-nothing = Nothing has changed yet.

## Plans

screen-plan-none = You do not follow a plan. A clinician can hand you one.
screen-plan-stop = Stop following this plan
screen-plan-stop-what = Its limits will no longer count in your advice. Talk to the person who made it first.
screen-plan-stop-yes = Stop following it
screen-plan-stopped = You no longer follow a plan.

screen-plans-none = There is no plan yet.
screen-plans-new = Make a new plan
screen-plans-pattern = What should the plan start from?
screen-plans-pattern-what = Each is a first draft by house rules. You can change every line.
screen-plans-whom = Whom is the plan for?
screen-plans-whom-label = Name on the plan
screen-plans-begin = Go on
screen-plans-for = For [name]
screen-plans-give = Hand it over
screen-plans-preview = What it would answer
screen-plans-day = On which kind of day?
screen-plans-paper = On paper
screen-plans-paper-make = Put it on paper
screen-plans-paper-whom = Who will scan the page?
screen-plans-paper-what = One page with the plan in plain words. A symbol on it brings the plan to a paired phone.
screen-plans-paper-for = With a symbol that only this phone can open.
screen-plans-paper-nobody = Nobody
screen-plans-paper-nobody-note = A page to read, without a symbol.
screen-plans-yes = Yes
screen-plans-no = No
screen-plans-in = In [unit]
screen-plans-number = Number
screen-plans-range = From [min] to [max].
screen-plans-set = Keep this
screen-plans-without = Leave it out
