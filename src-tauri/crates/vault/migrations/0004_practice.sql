-- The log of the plan that is followed: practice, steps taken, flare-ups.

CREATE TABLE practice (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    at_ms   INTEGER NOT NULL,
    record  BLOB NOT NULL
) STRICT;
