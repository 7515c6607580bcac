"""Computes every figure of the `review` reply once more with SciPy, a general statistics library, on made-up
histories: long and short ones, with ties, gaps, several lifts a day and much left untold.

    python3 check_review.py LINES_BINARY

LINES_BINARY answers JSON lines on standard input (`headless lines`). Slopes and intervals: scipy.stats.theilslopes
(Theil 1950, Sen 1968). Evenness: scipy.stats.entropy over the logarithm of five (Pielou 1966). Sums and medians:
NumPy. Exits 1 when any figure differs by more than 1e-9.
"""

import json
import math
import subprocess
import sys

import numpy as np
from scipy import stats

WAYS = ["hinge", "squat", "lunge", "free_bend", "golfer"]
KINDS = ["before", "during", "next_morning"]
DECISIONS = ["done", "done", "done", "done_unchanged", "done_against", "left"]
WINDOW = 84
NEAR = 1e-9


def histories():
    """Thirty made-up histories: (day looked back from, lifts)."""
    for seed in range(30):
        random = np.random.default_rng(seed)
        days = int(random.choice([3, 10, 20, 60, 84, 200]))
        chance = random.choice([0.15, 0.5, 1.0])
        levels = int(random.choice([1, 2, 5, 11]))
        loads = random.choice([2.0, 4.5, 7.25, 10.0, 16.0], size=int(random.integers(1, 6)), replace=False)
        ways = WAYS[: int(random.integers(1, 6))]
        lifts = []
        for day in range(days):
            for _ in range(int(random.integers(1, 4))):
                if random.random() < chance and len(lifts) < 400:
                    lifts.append(lift(random, day, days, levels, loads, ways))
        yield days - 1 + int(random.integers(0, 3)), lifts


def lift(random, day, days, levels, loads, ways):
    told = {"day": day, "decision": str(random.choice(DECISIONS))}
    load = float(random.choice(loads))
    if random.random() < 0.9:
        told["mass_kg"] = load
    if random.random() < 0.8:
        told["times"] = int(random.integers(1, 8))
    if random.random() < 0.9:
        told["way"] = str(random.choice(ways))
    if random.random() < 0.9:
        told["advised_way"] = str(random.choice(ways))
    if random.random() < 0.7:
        told["aid_first"] = bool(random.random() < 0.4)
    for kind in KINDS:
        if random.random() < 0.8:
            drift = 3 * day / days + load / 8
            told[f"{kind}_nrs"] = int(np.clip(random.integers(0, levels) + drift * (levels > 2), 0, 10))
    return told


def theil_sen(x, y):
    if len(set(x)) < 2:
        return None
    with np.errstate(invalid="ignore"):
        found = stats.theilslopes(y, x, 0.95)
    return found.slope, found.low_slope, found.high_slope


def worst_of_days(lifts, key):
    worst = {}
    for told in lifts:
        if key in told:
            worst[told["day"]] = max(worst.get(told["day"], 0), told[key])
    return sorted(worst.items())


class Differences:
    def __init__(self):
        self.compared, self.known, self.faults = 0, 0, []

    def near(self, what, ours, theirs):
        self.compared += 1
        both_missing = ours is None and theirs is None
        if not both_missing and (ours is None or theirs is None or abs(ours - theirs) > NEAR * max(1, abs(theirs))):
            self.faults.append(f"{what}: ours {ours}, theirs {theirs}")

    def slope(self, what, ours, theirs, scale):
        if math.isnan(theirs[1]):
            # Ties leave no variance, so that the interval of Sen's equation 2.6 is not defined.
            self.near(f"{what} too alike", 1 if ours.get("too_alike") else 0, 1)
            return
        self.known += 1
        for name, value in zip(["slope", "low", "high"], theirs):
            self.near(f"{what} {name}", ours[name], value * scale)


def check(number, until, lifts, reply, differences):
    past = [told for told in lifts if told["day"] <= until]
    recent = [told for told in past if told["day"] > until - WINDOW]
    done = [told for told in past if told["decision"] != "left"]
    for kind, ours in zip(KINDS, reply["pain"]):
        what = f"history {number}, {kind}"
        days = worst_of_days(recent, f"{kind}_nrs")
        x, y = [day for day, _ in days], [score for _, score in days]
        differences.near(f"{what} days", ours["days"], len(days))
        if len(days) >= 8 and x[-1] - x[0] >= 14:
            differences.slope(f"{what} trend", ours["trend_per_week"], theil_sen(x, y), 7)
        else:
            differences.near(f"{what} not yet", ours["trend_per_week"]["have_days"], len(days))
        if len(days) >= 6:
            differences.near(f"{what} first", ours["change"]["first_nrs"], float(np.median(y[:3])))
            differences.near(f"{what} last", ours["change"]["last_nrs"], float(np.median(y[-3:])))
    check_response(number, recent, reply["next_morning_per_kg"], differences)
    counts = [sum(told.get("way") == way for told in done) for way in WAYS]
    evenness = stats.entropy(counts) / math.log(5) if sum(counts) else None
    differences.near(f"history {number}, evenness", reply["evenness"], evenness)
    check_counts(number, past, done, reply["counts"], differences)
    for week in reply["weeks"]:
        inside = [told for told in done if 0 <= told["day"] - week["from_day"] < 7]
        lifted = float(np.sum([told.get("mass_kg", 0) * told.get("times", 1) for told in inside]))
        differences.near(f"history {number}, week {week['from_day']}", week["lifted_kg"], lifted)
    times = sum(told.get("times", 1) for told in done)
    differences.near(f"history {number}, times", sum(week["times"] for week in reply["weeks"]), times)


def check_counts(number, past, done, ours, differences):
    both = [told for told in done if "way" in told and "advised_way" in told]
    theirs = {
        "entries": len(past),
        "done": len(done),
        "left": len(past) - len(done),
        "done_against": sum(told["decision"] == "done_against" for told in past),
        "done_unchanged": sum(told["decision"] == "done_unchanged" for told in past),
        "done_without_aid": sum(told["decision"] == "done" and told.get("aid_first", False) for told in past),
        "way_and_advised": len(both),
        "other_way": sum(told["way"] != told["advised_way"] for told in both),
        "days": len({told["day"] for told in past}),
    }
    for name, count in theirs.items():
        differences.near(f"history {number}, {name}", ours[name], count)


def check_response(number, recent, ours, differences):
    days = {}
    for told in recent:
        if told["decision"] != "left":
            mass, pain = days.get(told["day"], (None, None))
            mass = max([m for m in (mass, told.get("mass_kg")) if m is not None], default=None)
            pain = max([p for p in (pain, told.get("next_morning_nrs")) if p is not None], default=None)
            days[told["day"]] = (mass, pain)
    points = [(mass, pain) for mass, pain in days.values() if mass is not None and pain is not None]
    x, y = [mass for mass, _ in points], [pain for _, pain in points]
    if len(points) >= 10 and len(set(x)) >= 3:
        differences.slope(f"history {number}, response", ours, theil_sen(x, y), 1)
    else:
        differences.near(f"history {number}, response not yet", ours["have_days"], len(points))


def main(binary):
    given = list(histories())
    lines = [json.dumps({"do": "review", "until_day": until, "lifts": lifts}) for until, lifts in given]
    assert max(map(len, lines)) < 65_536, "a line is too long"
    done = subprocess.run([binary, "lines"], input="\n".join(lines) + "\n", capture_output=True, text=True, check=True)
    replies = [json.loads(line)["ok"] for line in done.stdout.splitlines()]
    assert len(replies) == len(given), "a reply is missing"
    differences = Differences()
    for number, ((until, lifts), reply) in enumerate(zip(given, replies)):
        check(number, until, lifts, reply, differences)
    for fault in differences.faults[:20]:
        print(fault)
    print(f"{len(given)} histories, {differences.compared} figures, {differences.known} slopes with intervals, "
          f"{len(differences.faults)} differ")
    if differences.faults or differences.known < 40:
        sys.exit(1)


main(sys.argv[1])
