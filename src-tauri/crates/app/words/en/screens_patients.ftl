# The people a clinician treats: fixed words of the screens.

screen-patients = People I treat
screen-patients-find = Find a name
screen-patients-find-hint = Type the start of a name.
screen-patients-none = Nobody is on the list yet. People come here when you make a plan for them or their history comes.
screen-patients-add = Add a person
screen-patients-new = Whom do you want to add?
screen-patients-alias = Name on this list
screen-patients-plans = Plans
screen-patients-no-plan = No plan yet.
screen-patients-not-given = Not handed over yet.
screen-patients-why = Why: [why]
screen-patients-why-private = Why, for you alone: [why]
screen-patients-first = First version.
screen-patients-look = Look back with them
screen-patients-give = Hand something over
screen-patients-make = Make a plan
screen-patients-notes = My notes
screen-patients-notes-what = They never leave this phone.
screen-patients-note = New note
screen-patients-note-keep = Keep the note
screen-patients-note-remove = Remove this note
screen-patients-rename = Another name
screen-patients-remove = Take off the list
screen-patients-remove-what = Plans made for them and your notes are erased. What they handed over stays.
screen-patients-remove-yes = Take off and erase
