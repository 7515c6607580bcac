# One message for each error code: what happened, what is not affected, what to do next.

## The line a screen sent

error-bad-json = The app could not read what the screen sent. Nothing was changed. Please try again.
error-too-long = That text is too long. Nothing was changed. Make it shorter and try again.
error-duplicate-key = The screen sent the same thing twice. Nothing was changed. Please try again.
error-not-an-object = The app could not read what the screen sent. Nothing was changed. Please try again.
error-unknown-command = The app does not know this step. Nothing was changed. Go home and try again.
error-unknown-field = The screen sent something the app does not know. Nothing was changed. Please try again.
error-missing-field = Something is missing here. Nothing was changed. Fill it in and try again.
error-wrong-type = That is the wrong kind of answer. Nothing was changed. Please answer again.
error-not-a-choice = That is not one of the choices. Nothing was changed. Pick one that is shown.
error-out-of-range = That number is too low or too high. Your other answers are kept. Look at it and type it again.
error-answer-needed = One question has no answer yet. Your other answers are kept. Answer it first.
error-contradiction = Two answers do not fit together. Nothing was changed. Look at both again.
error-not-built = The app cannot do this yet. Nothing was changed. Choose something else.
error-no-posture = This way cannot be done here. Nothing was changed. Choose another way.

## Locked and unlocked

error-locked = Your notes are locked. They are still there. Type your passphrase to open them.
error-already-set-up = There are notes here already. Nothing was changed. Open them with your passphrase.
error-not-set-up = There are no notes here yet. Nothing is lost. Start by choosing a passphrase.
error-passphrase-short = That passphrase is too short. Nothing was changed. Use 10 signs or more. Some words in a row work well.
error-passphrase-mismatch = The two passphrases are not the same. Nothing was changed. Type both again.
error-wrong-passphrase = That passphrase does not open your notes. Your notes are still there. Check capital letters and try again.
error-try-later =
    { $seconds ->
        [one] Too many wrong tries. Your notes are still there. Wait { $seconds } second, then try again.
       *[other] Too many wrong tries. Your notes are still there. Wait { $seconds } seconds, then try again.
    }

## The notes on this phone

error-vault-missing = A file with your notes is missing. The app changed nothing. Put the file back if you moved it.
error-vault-damaged = A file with your notes is damaged. The app left it as it is. Bring back a copy if you have one.
error-vault-foreign = The file in this place is not from this app. The app left it as it is. Put the right file back.
error-vault-newer = Your notes are from a newer version of the app. Nothing is lost. Get the newer version to open them.
error-disk-full = There is no room left on this phone. What was kept before is still there. Make some room and try again.
error-storage-failed = The phone could not read or write. What was kept before is still there. Close the app and try again.
error-erase-unfinished = Not all was erased. Do not count on your notes any more. Close the app and open it again to finish.
error-randomness-failed = The phone gave no random numbers. Nothing was changed. Start the phone again and try once more.

## The walk and the history

error-not-found = That is not there any more. Nothing else was changed. Go home and look again.
error-no-draft = No lift is open. Your history is still there. Start a new one from home.
error-question-not-open = This question is not open now. Your answers are kept. Go on where you were.
error-answer-not-offered = This answer is not one of those shown. Your other answers are kept. Pick one that is shown.
error-internal = Something went wrong in the app. What was kept before is still there. Close the app and try again.

## Handing over

error-alias-needed = You have no name for others to see yet. Nothing was changed. Choose a name first.
error-alias-length = That name is empty or too long. Nothing was changed. Use 1 to 40 signs.
error-alias-character = That name has a sign that cannot be seen. Nothing was changed. Type it with plain letters.
error-pair-expired = Pairing took too long. Nothing was changed. Start again and scan within five minutes.
error-pair-nothing-scanned = The other phone was not scanned yet. Nothing was changed. Scan its code first.
error-pair-again = You were paired with other keys of this phone. Nothing was changed. Pair with them again.
error-unknown-pairing = You are not paired with them any more. Nothing was changed. Pair with them again.
error-scan-not-started = The scan screen is closed. Nothing was taken. Open it and scan again.
error-no-parcel = Nothing is waiting for you here. Nothing was changed. Scan the code again.
error-code-wrong = These words do not open it. Nothing was changed. Ask for the eight words and type them again.
error-unknown-show = This is not shown any more. Nothing was changed. Show it again.
error-plan-contradiction = This does not fit with the rest of the plan. Nothing was changed. Look at both parts.
error-unknown-plan = That plan is not there any more. Nothing else was changed. Go back and look again.
error-nothing-to-show = There is nothing to hand over yet. Nothing was changed. Choose an earlier day.
