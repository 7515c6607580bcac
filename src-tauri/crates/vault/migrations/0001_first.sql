-- The first layout. Columns repeat only what a query needs; the record itself is the `record` blob.
-- Times: milliseconds since 1970-01-01T00:00:00Z. AUTOINCREMENT: an id is never used twice.

-- "Hftw": this file is ours even where no key slots lie beside it.
PRAGMA application_id = 1214674039;

CREATE TABLE lift (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    at_ms   INTEGER NOT NULL,
    done    INTEGER NOT NULL CHECK (done IN (0, 1)),
    way     INTEGER NOT NULL DEFAULT 0,
    record  BLOB NOT NULL
) STRICT;

CREATE TABLE lift_log (
    seq         INTEGER PRIMARY KEY,
    event       INTEGER NOT NULL CHECK (event IN (1, 2)),
    lift_id     INTEGER NOT NULL,
    row_digest  BLOB NOT NULL CHECK (length(row_digest) = 32),
    mac         BLOB NOT NULL CHECK (length(mac) = 32)
) STRICT;

CREATE TABLE lift_log_head (
    only_row  INTEGER PRIMARY KEY CHECK (only_row = 1),
    seq       INTEGER NOT NULL,
    mac       BLOB NOT NULL CHECK (length(mac) = 32)
) STRICT;

CREATE TABLE check_in (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    lift_id  INTEGER NOT NULL REFERENCES lift (id) ON DELETE CASCADE,
    at_ms    INTEGER NOT NULL,
    record   BLOB NOT NULL
) STRICT;

CREATE INDEX check_in_by_lift ON check_in (lift_id);

CREATE TABLE saved_task (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    record  BLOB NOT NULL
) STRICT;

CREATE TABLE sign (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    sign     TEXT NOT NULL,
    is_open  INTEGER NOT NULL CHECK (is_open IN (0, 1)),
    record   BLOB NOT NULL
) STRICT;

-- A sign is open once, from the first time it was raised.
CREATE UNIQUE INDEX sign_open_once ON sign (sign) WHERE is_open = 1;

-- Records of which there is one: draft, body today, about, settings. `kind` is the record's own number.
CREATE TABLE current (
    kind    INTEGER PRIMARY KEY,
    record  BLOB NOT NULL
) STRICT;
