"""Reads a Heftwell vault without any of Heftwell's code, to prove that vault.md and record.md are complete.

    python3 -m venv venv && venv/bin/pip install argon2-cffi pynacl cryptography cbor2
    venv/bin/python read_vault.py FOLDER        (asks for the passphrase, or reads it from standard input)

Prints one JSON object a line: every record, then what the chain over the lifts says. It only reads.
What it prints is health data in clear: do not leave it lying about.
"""

import getpass
import hashlib
import hmac
import json
import pathlib
import sqlite3
import struct
import sys
import unicodedata

import argon2.low_level
import cbor2
import nacl.bindings
import nacl.exceptions
from cryptography.hazmat.primitives.ciphers import Cipher, algorithms, modes

PAGE = 4096
RESERVE = 80  # at the end of each page: 16 bytes IV, 64 bytes HMAC


# ---- key slots (vault.md, "The slots file") ----

def data_key(folder, passphrase):
    """The 32-byte data key, from the first copy of the slots that is whole."""
    for name in ("slots", "slots.copy"):
        path = folder / name
        if not path.exists():
            continue
        raw = path.read_bytes()
        if raw[:8] != b"HFTWSLOT" or raw[8] != 1 or hashlib.sha256(raw[:-32]).digest() != raw[-32:]:
            continue
        header, count = raw[:25], raw[25]
        for at in range(26, 26 + 102 * count, 102):
            slot = raw[at:at + 102]
            if slot[:2] != b"\x01\x01":
                continue
            memory_kib, passes, lanes = struct.unpack(">III", slot[2:14])
            salt, nonce, wrapped = slot[14:30], slot[30:54], slot[54:]
            key = argon2.low_level.hash_secret_raw(
                unicodedata.normalize("NFC", passphrase).encode(), salt, time_cost=passes, memory_cost=memory_kib,
                parallelism=lanes, hash_len=32, type=argon2.low_level.Type.ID, version=0x13)
            try:
                return nacl.bindings.crypto_aead_xchacha20poly1305_ietf_decrypt(
                    wrapped, header + slot[:54], nonce, key)
            except nacl.exceptions.CryptoError:
                continue
        sys.exit("wrong passphrase")
    sys.exit("no whole copy of the slots")


def derive(key, label):
    """HKDF-SHA256 without salt, 32 bytes."""
    extracted = hmac.digest(bytes(32), key, "sha256")
    return hmac.digest(extracted, label + b"\x01", "sha256")


# ---- database (vault.md, "The database file") ----

def decrypt_page(number, page, key, mac_key):
    start = 16 if number == 1 else 0
    body, iv, tag = page[start:PAGE - RESERVE], page[PAGE - 80:PAGE - 64], page[PAGE - 64:]
    if hmac.digest(mac_key, body + iv + struct.pack("<I", number), "sha512") != tag:
        sys.exit(f"page {number} is damaged")
    decryptor = Cipher(algorithms.AES(key), modes.CBC(iv)).decryptor()
    head = b"SQLite format 3\0" if number == 1 else b""
    return head + decryptor.update(body) + decryptor.finalize() + bytes(RESERVE)


def pages(folder):
    """The encrypted pages by number: those of the file, replaced by those the log has committed."""
    raw = (folder / "vault.db").read_bytes()
    found = {at // PAGE + 1: raw[at:at + PAGE] for at in range(0, len(raw), PAGE)}
    log = folder / "vault.db-wal"
    wal = log.read_bytes() if log.exists() else b""
    if len(wal) > 32:
        order = ">" if wal[3] & 1 else "<"
        salts, sums = wal[16:24], checksum(order, wal[:24], (0, 0))
        pending = {}
        for at in range(32, len(wal) - PAGE - 23, PAGE + 24):
            head, page = wal[at:at + 24], wal[at + 24:at + 24 + PAGE]
            number, size = struct.unpack(">II", head[:8])
            sums = checksum(order, page, checksum(order, head[:8], sums))
            if head[8:16] != salts or struct.unpack(">II", head[16:24]) != sums:
                break
            pending[number] = page
            if size:
                found.update(pending)
                found = {n: p for n, p in found.items() if n <= size}
                pending = {}
    return found


def checksum(order, data, sums):
    """The checksum of SQLite's write-ahead log (sqlite.org/fileformat2.html, section 4.2)."""
    a, b = sums
    words = struct.unpack(f"{order}{len(data) // 4}I", data)
    for x, y in zip(words[::2], words[1::2]):
        a = (a + x + b) & 0xFFFFFFFF
        b = (b + y + a) & 0xFFFFFFFF
    return a, b


def open_database(folder, key):
    encrypted = pages(folder)
    salt = encrypted[1][:16]
    mac_key = hashlib.pbkdf2_hmac("sha512", key, bytes(byte ^ 0x3A for byte in salt), 2, 32)
    plain = bytearray(b"".join(decrypt_page(n, encrypted[n], key, mac_key) for n in sorted(encrypted)))
    plain[18:20] = b"\x01\x01"  # "no write-ahead log", since it has been worked in; memory only
    database = sqlite3.connect(":memory:")
    database.deserialize(bytes(plain))
    return database


# ---- records (record.md) ----

def enum(*ids):
    return lambda code: ids[code - 1]


def same(value):
    return value


def moment(value):
    return {"at_ms": value[0], "offset_min": value[1]}


def listed(read):
    return lambda values: [read(value) for value in values]


def keyed(**fields):
    """A map: `name=(key, reader)`. Keys not listed are shown as they are."""
    by_key = {key: (name, read) for name, (key, read) in fields.items()}

    def read_map(value):
        out = {}
        for key, part in value.items():
            name, read = by_key.get(key, (f"key {key}", same))
            out[name] = read(part)
        return out
    return read_map


def mass(value):
    return {1: lambda g: {"known_g": g}, 2: lambda low, high: {"untested_g": [low, high]},
            3: lambda: "unknown"}[value[0]](*value[1:])


def answered(value):
    question, (code, *rest) = value
    answer = {1: lambda: {"choice": rest[0]}, 2: lambda: {"choices": rest[0]}, 3: lambda: {"pain": rest[0]},
              4: lambda: {"thousandths": rest[0], "unit": UNIT(rest[1])}, 5: lambda: "not sure"}[code]()
    return {question: answer}


def args(value):
    return dict(value)


UNIT = enum("kg", "lb", "cm", "in", "weeks", "min", "count", "m", "deg")
WAY = enum("upright", "hinge", "squat", "lunge", "free_bend", "golfer")
HEIGHT = enum("floor", "shin", "knee", "waist", "chest", "overhead")
STEP = keyed(kind=(1, same), args=(2, args))
TASK = keyed(
    what=(1, same), mass=(2, mass), awkward=(3, same), start=(4, HEIGHT), start_mm=(5, same), end=(6, HEIGHT),
    end_mm=(7, same), reach=(8, enum("close", "medium", "far")), reach_mm=(9, same), twist_deg=(10, same),
    carry_mm=(11, same), reps=(12, same), span_min=(13, same), helpers=(14, same), helper_max_g=(15, same),
    two_hands=(16, same), width_mm=(17, same), depth_mm=(18, same), divisible=(19, same),
    coupling=(20, enum("good", "fair", "poor")), often=(21, same))
BODY = keyed(
    at=(1, moment), back=(2, same), back_state=(3, enum("steady", "volatile", "flare")), knee_left=(4, same),
    knee_right=(5, same), hip_left=(6, same), hip_right=(7, same), shoulders=(8, same),
    balance=(9, enum("good", "fair", "poor", "unknown")), kneel=(10, enum("yes", "one_side", "no", "unknown")),
    signs=(11, same))
ABOUT = keyed(
    age=(1, enum("under16", "16-39", "40-64", "65-79", "80plus")), sex=(2, enum("female", "male")),
    stature_mm=(3, same), mass_g=(4, same), conditions=(5, same), pregnancy_weeks=(6, same),
    weeks_since_surgery=(7, same), fell_last_year=(8, same), asked_at=(9, moment), signs_asked_at=(10, moment),
    fell_asked_at=(11, moment))
SETTINGS = keyed(used_for=(1, enum("lift", "help", "treat")), units=(2, enum("kg", "lb")))
ADVICE = keyed(
    outcome=(1, enum("lift", "lift_with_change", "do_not_lift", "seek_care", "refuse")),
    urgency=(2, enum("none", "routine", "same_day", "emergency")), ways=(3, listed(WAY)),
    ruled_out=(4, listed(keyed(way=(1, WAY), because=(2, same)))), cautions=(5, same),
    changes=(6, listed(keyed(kind=(1, same), args=(2, args), ways=(3, listed(WAY)), steps=(4, listed(STEP))))),
    alternatives=(7, same),
    reasons=(8, listed(keyed(
        id=(1, same), step=(2, same), authority=(3, enum("law", "emergency", "plan", "today", "practice")),
        sure=(4, enum("published", "house", "estimate")), source=(5, same), args=(6, args)))),
    heaviest_g=(9, same), limit=(10, keyed(recommended_g=(1, same), index_thousandths=(2, same))),
    rule_version=(11, same))
LIFT = keyed(
    at=(1, moment), title=(2, same), task=(3, TASK), body=(4, BODY), advice=(5, ADVICE), done=(6, same),
    way=(7, WAY), instead=(8, same))
CHECK_IN = keyed(
    kind=(1, enum("during", "after", "next_morning")), at=(2, moment), pain=(3, same),
    back_to_usual=(4, enum("yes", "no", "not_sure")), skipped=(5, same))
DRAFT = keyed(
    opened_at=(1, moment), purpose=(2, enum("lift", "about", "own")), answers=(3, listed(answered)), saved_task=(4, same),
    advice=(5, ADVICE), open_question=(6, same))
SIGN = keyed(
    sign=(1, same), raised_at=(2, moment), cleared=(3, keyed(at=(1, moment), by=(2, enum("me", "clinician")))))
SAVED_TASK = keyed(name=(1, same), task=(2, TASK), answers=(3, listed(answered)))
CARE_PLAN = keyed(
    ways=(1, same), workers=(2, same), equipment=(3, same), issued_by=(4, same), issued_day=(5, same),
    entered_at=(6, moment), came_by=(7, enum("typed", "parcel")),
    review_day=(8, same), plan_id=(9, lambda value: value.hex()))
PLAN_HEAD = keyed(
    id=(1, lambda value: value.hex()), version=(2, same), made_at=(3, moment), code=(4, same), from_=(5, same),
    is_own=(6, same))
CARE_MOVE = keyed(
    what=(1, same), able=(2, enum("fully", "partly", "not")),
    help=(3, enum("none", "steady_only", "some_lift", "unpredictable")), share_permille=(4, same), workers=(5, same),
    limb=(6, enum("leg", "arm")), hold=(7, enum("up_1_min", "up_2_min", "longer")), chair_reclines=(8, same),
    noted_at=(9, moment), plan=(10, CARE_PLAN))
CARE_PERSON = keyed(
    code=(1, same), picture=(2, same), since=(3, moment), legs=(4, enum("full", "part", "none")),
    follows=(5, enum("yes", "unsure", "no")), arms_strong=(6, same), mass_g=(7, same), equipment=(8, same),
    noted_at=(9, moment), moves=(10, listed(CARE_MOVE)), plans=(11, listed(PLAN_HEAD)))
MOVE_ENTRY = keyed(
    at=(1, moment), person=(2, same), code=(3, same), what=(4, same),
    result=(5, enum("done", "not_done", "near_miss", "refused")),
    outcome=(6, enum("lift", "lift_with_change", "do_not_lift", "seek_care", "refuse")), way=(7, same),
    workers=(8, same), equipment=(9, same), helped=(10, same), signs=(11, same), report=(12, same),
    told=(13, enum("copied", "shared", "said")), rule_version=(14, same))
SHIFT = keyed(
    began_at=(1, moment), handed_at=(2, moment), erased=(3, keyed(at=(1, moment), plain=(2, same), proofs=(3, same))))
MOVE_DRAFT = keyed(
    opened_at=(1, moment), person=(2, same), what=(3, same), answers=(4, listed(answered)), open_question=(5, same))
WORKER = keyed(trained=(1, same))
def wording(value):
    return {("ours", "typed")[value[0] - 1]: value[1]}


def hexed(value):
    return value.hex()


def or_none(read):
    return lambda place: read(place) if place else None


def places(**fields):
    """A list with fixed places; further ones are shown as they are."""
    def read_list(value):
        out = {name: read(part) for (name, read), part in zip(fields.items(), value)}
        return out | ({"more": value[len(fields):]} if len(value) > len(fields) else {})
    return read_list


def one_less(place):
    return place - 1


REGION = enum("back", "knee_left", "knee_right", "hip_left", "hip_right", "shoulders")
DEVICE = keyed(keys=(1, lambda value: f"{len(value)} secret bytes"), alias=(2, same), made_at=(3, moment))
PAIRED = keyed(id=(1, hexed), pairing=(2, lambda value: f"{len(value)} bytes"), name=(3, same), since=(4, moment))
PLAN = keyed(
    id=(1, hexed), version=(2, same), made_at=(3, moment), whom=(4, same), by=(5, same), title=(6, wording),
    pattern=(7, same), review_on=(8, same), grace_weeks=(9, same), ceiling_g=(10, same),
    ceilings=(11, listed(keyed(start=(1, HEIGHT), grams=(2, same)))), times_a_bout=(12, same), bouts_a_day=(13, same),
    pain_ceiling=(14, same), next_morning=(15, enum("back_to_usual", "no_worse")),
    ways=(16, listed(keyed(
        way=(1, WAY), standing=(2, enum("preferred", "allowed", "not_allowed")), why=(3, wording)))),
    cues=(17, listed(wording)),
    practice=(18, listed(keyed(way=(1, WAY), grams=(2, same), sets=(3, same), times=(4, same), days_a_week=(5, same)))),
    progression=(19, keyed(
        step_g=(1, same), good_days=(2, same), hold_from=(3, same), back_over=(4, same), is_locked=(5, same))),
    bands=(20, listed(keyed(region=(1, REGION), moderate_from=(2, same), severe_from=(3, same)))),
    notes=(21, listed(wording)), why=(22, wording), flare=(23, listed(wording)),
    call=(24, same))
FOLLOWED = keyed(plan=(1, PLAN), at=(2, moment), pairing=(3, hexed), from_=(4, same), stopped_at=(5, moment))
LOOK = places(
    kind=enum("during", "after", "next_morning"), after_min=same, pain=or_none(one_less),
    back_to_usual=or_none(enum("yes", "no", "not_sure")))
HISTORY_LIFT = places(
    after_min=same, done=same, outcome=enum("lift", "lift_with_change", "do_not_lift", "seek_care", "refuse"),
    way=or_none(WAY), advised=or_none(WAY), mass=or_none(mass), start=or_none(HEIGHT), times=same,
    pain=lambda value: [place - 1 if place else None for place in value],
    back_state=or_none(enum("steady", "volatile", "flare")), looks=listed(LOOK), instead=same, title=same)
PRACTICE_EVENT = enum("done", "left", "step_up", "step_down", "offer_left", "flare")
BACK_TO_USUAL = enum("yes", "no", "not_sure")
HISTORY = keyed(
    from_=(1, same), made_at=(2, moment), since=(3, same), with_notes=(4, same),
    plan=(5, keyed(id=(1, hexed), version=(2, same))), start_min=(6, same), lifts=(7, listed(HISTORY_LIFT)),
    signs=(8, listed(places(at_min=same, sign=same, is_cleared=same))), words=(9, same),
    practice=(10, listed(places(
        at_min=same, version=same, event=PRACTICE_EVENT, way=or_none(WAY), grams=same, pain=or_none(one_less),
        morning_asked=same, morning_pain=or_none(one_less), back_to_usual=or_none(BACK_TO_USUAL)))))
PRACTICE = keyed(
    at=(1, moment), plan=(2, hexed), version=(3, same), event=(4, PRACTICE_EVENT), way=(5, WAY), grams=(6, same),
    pain=(7, same), morning=(8, keyed(at=(1, moment), pain=(2, same), back_to_usual=(3, BACK_TO_USUAL))))
RECEIVED = keyed(history=(1, HISTORY), at=(2, moment), from_=(3, same))
PATIENT = keyed(
    alias=(1, same), since=(2, moment), pairing=(3, hexed), seen_at=(4, moment), review_on=(5, same))
NOTE = keyed(at=(1, moment), text=(2, same))
DEPARTURE = keyed(
    at=(1, moment),
    what=(2, enum("plan", "history", "care_plan", "plan_page", "note", "page", "table", "document", "shift", "office", "card")),
    how=(3, listed(enum("shown", "saved", "copied", "shared", "printed", "told"))), seal=(4, enum("device", "code")),
    to=(5, same), about=(6, same), version=(7, same), days=(8, same), with_notes=(9, same), entries=(10, same))
KINDS = {1: ("task", TASK), 2: ("body_today", BODY), 3: ("about", ABOUT), 4: ("settings", SETTINGS),
         5: ("advice", ADVICE), 6: ("lift", LIFT), 7: ("check_in", CHECK_IN), 8: ("draft", DRAFT),
         9: ("open_sign", SIGN), 10: ("saved_task", SAVED_TASK), 11: ("device", DEVICE), 12: ("paired", PAIRED),
         13: ("plan", PLAN), 14: ("followed", FOLLOWED), 15: ("history", HISTORY), 16: ("received", RECEIVED),
         17: ("practice", PRACTICE),
         18: ("care_person", CARE_PERSON), 19: ("move_entry", MOVE_ENTRY), 20: ("shift", SHIFT),
         21: ("move_draft", MOVE_DRAFT), 22: ("worker", WORKER),
         23: ("patient", PATIENT), 24: ("note", NOTE),
         26: ("departure", DEPARTURE)}


def record(raw):
    kind, major, must, body = cbor2.loads(raw)
    if major != 1 or must:
        sys.exit("a record from a newer version")
    if cbor2.dumps([kind, major, must, body], canonical=True) != raw:
        sys.exit("a record that is not canonical")
    name, read = KINDS[kind]
    return {name: read(body)}


# ---- chain over the lifts (vault.md, "The chain over the lifts") ----

def chain_holds(database, key):
    mac, seq, expected = bytes(32), 0, {}
    for seq, event, lift, digest, stored in database.execute(
            "SELECT seq, event, lift_id, row_digest, mac FROM lift_log ORDER BY seq"):
        covered = b"heftwell lift log 1" + mac + struct.pack(">qqq", seq, event, lift) + digest
        mac = hmac.digest(key, covered, "sha256")
        if mac != stored:
            return False
        if event == 1:
            expected[lift] = digest
        else:
            expected.pop(lift, None)
    there = {
        lift: hashlib.sha256(struct.pack(">qBI", at_ms, done, way) + raw).digest()
        for lift, at_ms, done, way, raw in database.execute("SELECT id, at_ms, done, way, record FROM lift")}
    head = database.execute("SELECT seq, mac FROM lift_log_head").fetchone() or (0, bytes(32))
    return there == expected and head == (seq, mac)


def main():
    folder = pathlib.Path(sys.argv[1])
    passphrase = getpass.getpass("Passphrase: ") if sys.stdin.isatty() else sys.stdin.readline().rstrip("\n")
    key = data_key(folder, passphrase)
    database = open_database(folder, derive(key, b"heftwell vault 1 database"))
    for table, order in (("current", "kind"), ("saved_task", "id"), ("sign", "id"), ("lift", "id"),
                         ("care_person", "id"), ("shift", "id")):
        for row_id, raw in database.execute(f"SELECT {order}, record FROM {table} ORDER BY {order}"):
            print(json.dumps({"table": table, "id": row_id, **record(raw)}, ensure_ascii=False))
    handed = {"pairing": "seq", "plan": "id", "plan_version": "plan_id, version", "followed": "id", "received": "id"}
    tables = {name for name, in database.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")}
    for table, order in handed.items() if "pairing" in tables else ():
        for raw, in database.execute(f"SELECT record FROM {table} ORDER BY {order}"):
            print(json.dumps({"table": table, **record(raw)}, ensure_ascii=False))
    for row_id, raw in database.execute("SELECT id, record FROM practice ORDER BY id") if "practice" in tables else ():
        print(json.dumps({"table": "practice", "id": row_id, **record(raw)}, ensure_ascii=False))
    treated = {"patient": "id, id", "patient_note": "id, patient_id", "plan_why": "plan_id, version"}
    for table, columns in treated.items() if "patient" in tables else ():
        for row_id, second, raw in database.execute(f"SELECT {columns}, record FROM {table} ORDER BY 1, 2"):
            print(json.dumps({"table": table, "id": row_id, "of": second, **record(raw)}, ensure_ascii=False))
    for plan, patient in database.execute("SELECT plan_id, patient_id FROM patient_plan") if "patient" in tables else ():
        print(json.dumps({"table": "patient_plan", "plan": plan, "of": patient}))
    for row_id, raw in database.execute("SELECT id, record FROM departure ORDER BY id") if "departure" in tables else ():
        print(json.dumps({"table": "departure", "id": row_id, **record(raw)}, ensure_ascii=False))
    for row_id, lift, raw in database.execute("SELECT id, lift_id, record FROM check_in ORDER BY id"):
        print(json.dumps({"table": "check_in", "id": row_id, "of_lift": lift, **record(raw)}, ensure_ascii=False))
    for row_id, shift, raw in database.execute("SELECT id, shift_id, record FROM move_entry ORDER BY id"):
        print(json.dumps({"table": "move_entry", "id": row_id, "of_shift": shift, **record(raw)}, ensure_ascii=False))
    holds = chain_holds(database, derive(key, b"heftwell vault 1 lift log"))
    print(json.dumps({"chain": "holds" if holds else "BROKEN"}))
    sys.exit(0 if holds else 1)


if __name__ == "__main__":
    main()
