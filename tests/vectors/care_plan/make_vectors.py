"""Writes the vectors of this folder: what a care plan's parcel may carry, each with one fault.

    venv/bin/python make_vectors.py        (packages: see docs/formats/read_handoff.py)

The bytes are made by an encoder that is not ours, from docs/formats/record.md. The fault is the file's name, and the
refusal that is expected stands inside. They are read on 25 November 2026. Everything in here is invented.
"""

import pathlib

import cbor2

HERE = pathlib.Path(__file__).resolve().parent
# 2026-11-20, 2026-11-25 and 2027-02-20 in days since 1970-01-01.
ISSUED, TODAY, REVIEW = 20_777, 20_782, 20_869
NOON = [1_795_594_320_000, 60]
ID = bytes([4] * 16)


def move(what="bed_to_chair", ways=("stand_pivot_belt", "stand_aid"), workers=1, equipment=("belt", "stand_aid"),
         by="office", issued=ISSUED, review=REVIEW, **more):
    fields = {1: what, 2: list(ways), 3: workers, 4: list(equipment), 5: by, 6: issued, 7: review}
    fields = {key: value for key, value in fields.items() if value is not None}
    return {**fields, **{int(key[1:]): value for key, value in more.items()}}


BED = move("up_in_bed", ["slide_sheet_two"], 2, ["slide_sheet"], "nurse", review=None)


def plan(moves=None, id_=ID, version=3, made=NOON, code="A7", by="Blue Kettle", kind=25, layout=1, must=(), **more):
    fields = {1: id_, 2: version, 3: made, 4: code, 5: by, 6: [move(), BED] if moves is None else moves}
    fields = {key: value for key, value in fields.items() if value is not None}
    fields |= {int(key[1:]): value for key, value in more.items()}
    return cbor2.dumps([kind, layout, list(must), fields], canonical=True)


GOOD = plan()
UNREADABLE, NEWER, UNFIT = "unreadable", "newer-content", "care-contradiction"
FAULTS = {
    # name: (bytes, refusal)
    "empty": (b"", UNREADABLE),
    "cut": (GOOD[:-3], UNREADABLE),
    "followed_by_a_byte": (GOOD + b"\0", UNREADABLE),
    "of_another_kind": (plan(kind=13), UNREADABLE),
    "frame_without_a_body": (cbor2.dumps([25, 1, []]), UNREADABLE),
    "layout_of_tomorrow": (plan(layout=2), NEWER),
    "must_understand_an_unknown_key": (plan(must=[[9]], k9=1), NEWER),
    "must_understand_an_unknown_key_of_a_move": (plan([move(k9=1)], must=[[6, 9]]), NEWER),
    "id_too_short": (plan(id_=bytes(15)), UNREADABLE),
    "id_missing": (plan(id_=None), UNREADABLE),
    "version_missing": (plan(version=None), UNREADABLE),
    "version_none": (plan(version=0), UNFIT),
    "version_below_zero": (plan(version=-1), UNREADABLE),
    "made_a_text": (plan(made="today"), UNREADABLE),
    "code_missing": (plan(code=None), UNREADABLE),
    "code_empty": (plan(code=""), UNFIT),
    "code_as_long_as_a_name": (plan(code="Somebody Nobody"), UNFIT),
    "code_with_a_line_break": (plan(code="A\n7"), UNFIT),
    "code_turns_the_writing": (plan(code="A\u202e7"), UNFIT),
    "code_with_spaces_at_the_end": (plan(code="A7 "), UNFIT),
    "sender_turns_the_writing": (plan(by="Blue\u202eKettle"), UNFIT),
    "moves_none": (plan([]), UNFIT),
    "moves_a_number": (plan(moves=7), UNREADABLE),
    "move_twice": (plan([move(), move(ways=["hoist_two"], equipment=["hoist"], workers=2)]), UNFIT),
    "move_of_tomorrow": (plan([move("over_the_moon")]), NEWER),
    "move_to_catch": (plan([move("catch")]), NEWER),
    "way_of_tomorrow": (plan([move(ways=["by_magic"])]), NEWER),
    "way_of_another_move": (plan([move(ways=["slide_sheet_two"])]), NEWER),
    "ways_none": (plan([move(ways=[])]), UNFIT),
    "equipment_of_tomorrow": (plan([move(equipment=["crane"])]), NEWER),
    "workers_none": (plan([move(workers=0)]), UNFIT),
    "workers_a_crowd": (plan([move(workers=5)]), UNFIT),
    "issuer_of_tomorrow": (plan([move(by="neighbour")]), NEWER),
    "issued_after_tomorrow": (plan([move(issued=TODAY + 2)]), "care-future"),
    "issued_at_the_end_of_time": (plan([move(issued=2**31 - 1, review=None)]), "care-future"),
    "issued_past_the_range": (plan([move(issued=2**31)]), UNREADABLE),
    "review_before_it_was_issued": (plan([move(review=ISSUED - 1)]), UNFIT),
    "review_a_text": (plan([move(review="soon")]), UNREADABLE),
}


def main():
    for name, (payload, refused) in FAULTS.items():
        (HERE / f"{name}.toml").write_text(f'payload = "{payload.hex()}"\nrefused = "{refused}"\n')


if __name__ == "__main__":
    main()
