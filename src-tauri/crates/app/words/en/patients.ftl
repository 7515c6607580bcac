# The people a clinician treats: what Rust says of them.

patients-count =
    { $count ->
        [0] Nobody.
        [one] One person.
       *[other] { $count } people.
    }
patients-seen = Last seen { $day }.
patients-seen-never = Not seen yet.
patients-review = Look at the plan again by { $day }.
patients-review-due = Review due: the plan was to be looked at again by { $day }.
patients-histories =
    { $count ->
        [0] No history came yet.
        [one] One history came.
       *[other] { $count } histories came.
    }
patients-changed = { $label }: now “{ $new }” Before: “{ $old }”
patients-new = { $label }: new: “{ $new }”
patients-gone = { $label }: gone: “{ $old }”
