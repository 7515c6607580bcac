# The list of what left this phone.

# $day: "Today" or a date; $time: a time of day
departure-when = { $day }, { $time }
# $what: one of the next messages; $about: a name or a code
departure-about = { $what }: { $about }

departure-what-plan = Plan
departure-what-history = History
departure-what-care-plan = Care plan
departure-what-plan-page = Plan on paper
departure-what-note = Look back as a note
departure-what-page = Look back as a page
departure-what-table = Look back as a table
departure-what-document = Look back for clinic software
departure-what-shift = Log of a shift
departure-what-office = Text for the office
departure-what-card = Your card: your name for others, and this phone's open keys

departure-version = Version { $version }
departure-days =
    { $days ->
        [one] The last day
       *[other] The last { $days } days
    }
departure-all-days = From the beginning
departure-entries =
    { $entries ->
        [one] 1 entry
       *[other] { $entries } entries
    }
departure-names = With the name of each thing
departure-no-names = No names of things

departure-how-shown = Shown on the screen.
departure-how-saved = Saved as a file.
departure-how-copied = Copied.
departure-how-shared = Given to another app.
departure-how-printed = Sent to a printer.
departure-how-told = You said it was handed over.

# $name: what the other is called here
departure-to-device = Only the phone of { $name } can open it.
departure-to-code = Whoever has the eight words can open it.
departure-to-card = For { $name }.
departure-to-symbol = The symbol is only for { $name }. Anybody can read the words.
departure-to-all = Anybody who has it can read it.
