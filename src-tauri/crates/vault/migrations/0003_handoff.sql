-- Handing over between devices: who is paired, which numbers were used, plans, histories.
-- Identities have 16 bytes. The keys of this device are a record of `current`.

CREATE TABLE pairing (
    seq     INTEGER PRIMARY KEY AUTOINCREMENT,
    id      BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    record  BLOB NOT NULL
) STRICT;

-- The last number used in parcels through a pairing. `purpose` is the parcel's own code.
CREATE TABLE sent (
    pairing  BLOB NOT NULL REFERENCES pairing (id) ON DELETE CASCADE,
    purpose  INTEGER NOT NULL,
    number   INTEGER NOT NULL,
    PRIMARY KEY (pairing, purpose)
) STRICT;

-- The last numbers accepted through a pairing, in the hand-off's own form.
CREATE TABLE seen (
    pairing  BLOB NOT NULL REFERENCES pairing (id) ON DELETE CASCADE,
    purpose  INTEGER NOT NULL,
    numbers  BLOB NOT NULL,
    PRIMARY KEY (pairing, purpose)
) STRICT;

-- Parcels under a code that were accepted: each is taken once.
CREATE TABLE opened (
    digest  BLOB NOT NULL PRIMARY KEY CHECK (length(digest) = 32),
    at_ms   INTEGER NOT NULL
) STRICT;

-- Plans made here, as they stand now.
CREATE TABLE plan (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    record  BLOB NOT NULL
) STRICT;

-- Every version of them that was handed over.
CREATE TABLE plan_version (
    plan_id  INTEGER NOT NULL REFERENCES plan (id) ON DELETE CASCADE,
    version  INTEGER NOT NULL,
    record   BLOB NOT NULL,
    PRIMARY KEY (plan_id, version)
) STRICT;

-- Plans that came from somebody and were taken up, in the order of taking. None is removed.
CREATE TABLE followed (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    plan       BLOB NOT NULL CHECK (length(plan) = 16),
    is_active  INTEGER NOT NULL CHECK (is_active IN (0, 1)),
    record     BLOB NOT NULL
) STRICT;

-- One plan is followed at a time.
CREATE UNIQUE INDEX followed_active_once ON followed (is_active) WHERE is_active = 1;

-- Histories of others. They stay when a pairing ends. `pairing` is empty for one that came under a code.
CREATE TABLE received (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    pairing  BLOB NOT NULL CHECK (length(pairing) IN (0, 16)),
    record   BLOB NOT NULL
) STRICT;

CREATE INDEX received_by_pairing ON received (pairing);
