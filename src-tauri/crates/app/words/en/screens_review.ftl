# Looking back and taking it out: fixed words.

screen-back-title = Looking back
screen-back-lead = What you noted, put together. It shows no cause and sets no limit.
screen-back-theirs = What they handed over, put together. It shows no cause and sets no limit.
screen-back-span = How far back
screen-back-12-weeks = 12 weeks
screen-back-year = One year
screen-back-all = All
screen-back-table = The numbers
screen-back-day = Day
screen-back-week = Week from
screen-back-lifted = Lifted in all
screen-back-times = How often
screen-back-out = Take it out of the app

screen-out-title = Take it out
screen-out-lead = For your clinic, your records or another program.
screen-out-note = A short note
screen-out-note-hint = Plain text to paste or read out.
screen-out-csv = A table
screen-out-csv-hint = Opens in a spreadsheet.
screen-out-fhir = A file for clinic software
screen-out-fhir-hint = In the HL7 FHIR R4 form.
screen-out-pdf = One page to print
screen-out-pdf-hint = A PDF for the fridge or the chart.
screen-out-save = Save it
screen-out-saved-at = Saved: [path]
screen-out-saved = Saved with your downloads.
screen-out-leaves = What leaves
screen-out-stays = What stays
screen-out-make = Make it
screen-out-made = Here it is
screen-out-copy = Copy it all
screen-out-copied = Copied. Other apps can read what is copied.
screen-out-copy-failed = Copying did not work. Mark the text and copy it by hand.
