-- What left this device: what, how and to whom, never what was in it.

CREATE TABLE departure (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    record  BLOB NOT NULL
) STRICT;
