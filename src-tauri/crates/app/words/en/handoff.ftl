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
