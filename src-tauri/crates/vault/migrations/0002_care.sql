-- Helping others move: the people, the log of moves, and the shifts the log is handed over in.

CREATE TABLE care_person (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    record  BLOB NOT NULL
) STRICT;

CREATE TABLE shift (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    is_open  INTEGER NOT NULL CHECK (is_open IN (0, 1)),
    record   BLOB NOT NULL
) STRICT;

-- One shift is open at a time.
CREATE UNIQUE INDEX shift_open_once ON shift (is_open) WHERE is_open = 1;

-- A removed person leaves the log as it is: an entry carries the code of its day.
CREATE TABLE move_entry (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    shift_id  INTEGER NOT NULL REFERENCES shift (id),
    is_proof  INTEGER NOT NULL CHECK (is_proof IN (0, 1)),
    record    BLOB NOT NULL
) STRICT;

CREATE INDEX move_entry_by_shift ON move_entry (shift_id);
