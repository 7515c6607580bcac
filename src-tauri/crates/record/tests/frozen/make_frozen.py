"""Writes frozen.txt: the bytes of sample records, made by an encoder that is not ours.

Run from this folder after `pip install cbor2`. The samples repeat those of `../support/mod.rs` by hand,
with the keys and codes of docs/formats/record.md. Lines that are there may be added to, never changed.
"""

import cbor2

ADVICE = {
    1: 2, 2: 1, 3: [3, 4],
    4: [{1: 2, 2: ["back_severe"]}],
    5: ["keep_close", "no_twist"],
    6: [{1: "raise_start", 2: [["to_mm", 500]], 3: [2, 3], 4: []},
        {1: "split_and_raise", 2: [], 3: [3], 4: [{1: "split", 2: [["parts", 2]]}]}],
    7: ["ask_person"],
    8: [{1: "back_severe", 2: 5, 3: 4, 4: 2, 5: "house_rule", 6: [["pain", 8], ["region", "back"]]},
        {1: "under", 2: 4, 3: 5, 4: 1, 5: "niosh_94_110", 6: [["margin_g", -250]]}],
    9: 6000,
    10: {1: 11400, 2: 526},
    11: "0.1.0",
}
SPARE_ADVICE = {1: 5, 2: 1, 3: [], 4: [], 5: [], 6: [], 7: [], 8: [], 11: "0.1.0"}
TASK = {
    1: "box", 2: [2, 3000, 12000], 3: True, 4: 1, 5: 0, 6: 4, 7: 950, 8: 3, 9: 630, 10: 45, 11: 2000,
    12: 12, 13: 60, 14: 1, 15: [16000], 16: True, 17: 400, 18: 300, 19: False, 20: 3, 21: "some_slow",
}
BODY = {1: [1795594320000, 60], 2: 8, 3: 2, 4: 0, 5: 10, 6: 1, 7: 2, 8: 3, 9: 4, 10: 2, 11: ["night_pain"]}
PLAN = {
    1: bytes([2] * 16), 2: 3, 3: [1795594320000, 60], 4: "Green Ladder", 5: "Blue Kettle",
    6: [1, "plan-pattern-sore-back"], 7: "sore_back", 8: 20800, 9: 4, 10: 12000, 11: [{1: 1, 2: 8000}], 12: 5, 13: 3,
    14: 5, 15: 1, 16: [{1: 3, 2: 1}, {1: 5, 2: 3, 3: [2, "not yet"]}], 17: [[1, "plan-cue-close"]],
    18: [{1: 3, 2: 4000, 3: 2, 4: 8, 5: 3}], 19: {1: 500, 2: 2, 3: 4, 4: 5, 5: True}, 20: [{1: 1, 2: 4, 3: 8}],
    21: [[2, "Ring when in doubt."]],
}
HISTORY = {
    1: "Green Ladder", 2: [1795594320000, 60], 3: 20700, 4: True, 5: {1: bytes([2] * 16), 2: 3}, 6: 29926572,
    7: [[0, True, 1, 3, 4, [1, 6000], 1, 2, bytes([4, 1, 0, 0, 0, 11]), 1, [[1, 1, 5, 0], [3, 1320, 0, 0]], 0, 1],
        [1440, False, 3, 0, 0, [], 0, 0, bytes(6), 0, [], 2, 0]],
    8: [[29926600, 3, True]], 9: ["Box, 6 kg", "ask_person", "fever_unwell"],
}
# With the place that came later: whether an aid or help was advised first.
HISTORY_AID = {**HISTORY, 7: [HISTORY[7][0] + [True], HISTORY[7][1]]}

CARE_PLAN = {1: ["stand_aid", "hoist_two"], 2: 2, 3: ["stand_aid", "hoist"], 4: "office", 5: 20769,
             6: [1795594320000, 60], 7: 1}
CARE_PLAN_TAKEN = {**CARE_PLAN, 7: 2, 8: 20860, 9: bytes([4] * 16)}
MOVE_ENTRY = {1: [1795594320000, 60], 2: 3, 3: "A7", 4: "bed_to_chair", 5: 3, 6: 1, 7: "stand_aid", 8: 1,
              9: ["stand_aid"], 10: ["slower"], 11: ["legs_give"], 12: "Cay\u00f3 la correa.", 13: 1, 14: "0.1.0"}
MOVE_REFUSED = {1: [1795594320000, 60], 2: 3, 3: "A7", 4: "bed_to_chair", 5: 4, 6: 3, 9: [], 10: [], 11: [],
                12: "Cay\u00f3 la correa.", 14: "0.1.0"}

# name: (kind, body)
SAMPLES = {
    "task_full": (1, TASK),
    "task_nothing_asked": (1, {}),
    "task_mass_known": (1, {2: [1, 6000]}),
    "task_mass_unknown": (1, {2: [3]}),
    "body_full": (2, BODY),
    "body_nothing_asked": (2, {1: [-1, -300]}),
    "about_full": (3, {1: 4, 2: 1, 3: 1650, 4: 70000, 5: ["osteoporosis"], 6: 20, 7: 8, 8: True,
                       9: [1, 0], 10: [2, 0], 11: [3, 0]}),
    "settings": (4, {1: 3, 2: 2}),
    "advice_full": (5, ADVICE),
    "advice_spare": (5, SPARE_ADVICE),
    "lift_done": (6, {1: [1795594320000, 60], 2: "Caja, 6,5 kg", 3: TASK, 4: BODY, 5: ADVICE, 6: True, 7: 3}),
    "lift_left": (6, {1: [1795594320000, 60], 2: "Box", 3: {}, 4: {1: [0, 0]}, 5: SPARE_ADVICE, 6: False,
                      8: "ask_person"}),
    "check_in_told": (7, {1: 3, 2: [1795594320000, 60], 3: 2, 4: 1, 5: False}),
    "check_in_skipped": (7, {1: 2, 2: [1795594320000, 60], 5: True}),
    "draft_full": (8, {1: [1795594320000, 60], 2: 1,
                       3: [["what", [1, "box"]], ["other", [2, ["hip_left", "shoulders"]]], ["signs_full", [2, []]],
                           ["back", [3, 8]], ["mass_number", [4, 6500, 1]], ["reach", [5]]],
                       4: 7, 5: SPARE_ADVICE, 6: "often"}),
    "draft_empty": (8, {1: [0, 0], 2: 2, 3: []}),
    "sign_open": (9, {1: "fever_unwell", 2: [1795594320000, 60]}),
    "sign_cleared": (9, {1: "fever_unwell", 2: [1795594320000, 60], 3: {1: [1795680720000, 60], 2: 2}}),
    "care_person_full": (18, {
        1: "A7", 2: "kettle", 3: [1795594320000, 60], 4: 2, 5: 2, 6: True, 7: 80000, 8: ["stand_aid"],
        9: [1795594320000, 60], 10: [
            {1: "bed_to_chair", 2: 2, 3: 3, 4: 250, 5: 2, 6: 1, 7: 2, 8: False, 9: [1795594320000, 60], 10: CARE_PLAN},
            {1: "car"}]}),
    "care_person_new": (18, {1: "B2", 2: "leaf", 3: [0, 0], 10: []}),
    "care_person_planned": (18, {
        1: "B2", 2: "leaf", 3: [0, 0], 10: [{1: "bed_to_chair", 10: CARE_PLAN_TAKEN}], 11: [
            {1: bytes([4] * 16), 2: 3, 3: [1795594320000, 60], 4: "B2", 5: "Blue Kettle", 6: False},
            {1: bytes([5] * 16), 2: 1, 3: [0, 0], 4: "B2", 6: True}]}),
    "person_plan": (25, {
        1: bytes([4] * 16), 2: 3, 3: [1795594320000, 60], 4: "B2", 5: "Blue Kettle", 6: [
            {1: "bed_to_chair", 2: ["stand_aid", "stand_pivot_belt"], 3: 2, 4: ["stand_aid", "belt"], 5: "office",
             6: 20769, 7: 20860},
            {1: "up_in_bed", 2: ["slide_sheet_two"], 4: ["slide_sheet"], 5: "nurse", 6: 20700}]}),
    "move_entry_near_miss": (19, MOVE_ENTRY),
    "move_entry_refused": (19, MOVE_REFUSED),
    "shift_handed_over": (20, {1: [1795594320000, 60], 2: [1795594320000, 60],
                               3: {1: [1795594320000, 60], 2: 5, 3: 0}}),
    "shift_open": (20, {1: [0, 0]}),
    "move_draft": (21, {1: [1795594320000, 60], 2: 3, 3: "bed_to_chair",
                        4: [["same", [1, "as_planned"]], ["new", [1, "nothing"]]], 5: "new"}),
    "worker": (22, {1: ["belt", "hoist"]}),
    "worker_not_asked": (22, {}),
    "saved_task": (10, {1: "Laundry basket", 2: TASK, 3: [["what", [1, "basket"]]]}),
    "device": (11, {1: bytes([7] * 64), 2: "Blue Kettle", 3: [1795594320000, 60]}),
    "paired": (12, {1: bytes([1] * 16), 2: bytes([9, 8, 7]), 3: "Green Ladder", 4: [1795594320000, 60]}),
    "plan_full": (13, PLAN),
    "plan_bare": (13, {1: bytes(16), 2: 1, 3: [0, 0], 4: "A", 5: "B", 6: [2, "C"], 8: -1, 9: 0, 11: [], 16: [], 17: [],
                       18: [], 19: {5: False}, 20: [], 21: []}),
    "plan_with_why": (13, {1: bytes(16), 2: 1, 3: [0, 0], 4: "A", 5: "B", 6: [2, "C"], 8: -1, 9: 0, 11: [], 16: [],
                           17: [], 18: [], 19: {5: False}, 20: [], 21: [], 22: [2, "Two good weeks."]}),
    "patient": (23, {1: "Green Ladder", 2: [1795594320000, 60], 3: bytes([1] * 16), 4: [1795594320000, 60], 5: 20800}),
    "patient_new": (23, {1: "Red Boat", 2: [0, 0]}),
    "note": (24, {1: [1795594320000, 60], 2: "Cay\u00f3 en abril."}),
    "departure": (26, {1: [1795594320000, 60], 2: 2, 3: [1, 2], 4: 1, 5: "Blue Kettle", 6: "Green Ladder", 7: 3, 8: 90,
                       9: False, 10: 41}),
    "departure_bare": (26, {1: [0, 0], 2: 10, 3: [3]}),
    "followed": (14, {1: PLAN, 2: [1795594320000, 60], 3: bytes([1] * 16), 4: "Blue Kettle", 5: [1795594320000, 60]}),
    "history_full": (15, HISTORY),
    "history_empty": (15, {1: "A", 2: [0, 0], 4: False, 6: 0, 7: [], 8: [], 9: []}),
    "plan_flare": (13, {1: bytes(16), 2: 1, 3: [0, 0], 4: "A", 5: "B", 6: [2, "C"], 8: -1, 9: 0, 11: [], 16: [], 17: [],
                        18: [], 19: {5: False}, 20: [], 21: [], 23: [[2, "Walk a little."]]}),
    "plan_call": (13, {1: bytes(16), 2: 1, 3: [0, 0], 4: "A", 5: "B", 6: [2, "C"], 8: -1, 9: 0, 11: [], 16: [], 17: [],
                       18: [], 19: {5: False}, 20: [], 21: [], 24: "555 0100, mornings"}),
    "history_practice": (15, {1: "A", 2: [0, 0], 4: False, 6: 0, 7: [], 8: [], 9: [], 10: [
        [29926600, 3, 1, 3, 4000, 3, True, 1, 1], [29928000, 3, 6, 0, 0, 0, False, 0, 0]]}),
    "practice_done": (17, {1: [1795594320000, 60], 2: bytes([2] * 16), 3: 3, 4: 1, 5: 3, 6: 4000, 7: 2,
                           8: {1: [1795594320000, 60], 2: 0, 3: 1}}),
    "practice_flare": (17, {1: [0, 0], 2: bytes(16), 3: 1, 4: 6}),
    "received": (16, {1: HISTORY, 2: [1795594320000, 60], 3: "Green Ladder"}),
    "history_aid": (15, HISTORY_AID),
    "received_aid": (16, {1: HISTORY_AID, 2: [1795594320000, 60], 3: "Green Ladder"}),
}

if __name__ == "__main__":
    with open("frozen.txt", "w", encoding="ascii") as out:
        for name, (kind, body) in SAMPLES.items():
            out.write(f"{name} {cbor2.dumps([kind, 1, [], body], canonical=True).hex()}\n")
