-- Whom a clinician treats, notes that never leave this device, and why a plan changed.

-- `pairing` is empty while no phone of theirs is known.
CREATE TABLE patient (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    pairing  BLOB NOT NULL CHECK (length(pairing) IN (0, 16)),
    record   BLOB NOT NULL
) STRICT;

-- A phone is one patient's.
CREATE UNIQUE INDEX patient_by_pairing ON patient (pairing) WHERE length(pairing) = 16;

-- Whose plan it is.
CREATE TABLE patient_plan (
    plan_id     INTEGER PRIMARY KEY REFERENCES plan (id) ON DELETE CASCADE,
    patient_id  INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE
) STRICT;

CREATE INDEX patient_plan_by_patient ON patient_plan (patient_id);

CREATE TABLE patient_note (
    id          INTEGER PRIMARY KEY AUTOINCREMENT,
    patient_id  INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    record      BLOB NOT NULL
) STRICT;

CREATE INDEX patient_note_by_patient ON patient_note (patient_id);

-- Why a version is as it is, where the person is not told. Where they are, the version itself says it.
CREATE TABLE plan_why (
    plan_id  INTEGER NOT NULL REFERENCES plan (id) ON DELETE CASCADE,
    version  INTEGER NOT NULL,
    record   BLOB NOT NULL,
    PRIMARY KEY (plan_id, version)
) STRICT;
