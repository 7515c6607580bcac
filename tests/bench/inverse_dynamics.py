"""Times inverse dynamics of MuJoCo on the postures of tests/dynamics/check_poses.py.

    python3 inverse_dynamics.py LINES_BINARY

Prints the questions that have a posture, as one JSON list. Then, for every line on standard input, evaluates
all postures and prints the median of one evaluation, and of a call that does nothing, in microseconds.
"""

import json
import statistics
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "dynamics"))
import check_poses
import mujoco

# One evaluation is not much longer than the clock's own step.
CALLS = 20


def ready(pose):
    model = check_poses.model_of(pose)
    data = mujoco.MjData(model)
    mujoco.mj_forward(model, data)
    data.qacc[:] = 0
    return model, data


def microseconds(call, *given):
    started = time.perf_counter()
    for _ in range(CALLS):
        call(*given)
    return 1e6 * (time.perf_counter() - started) / CALLS


def main():
    lines = list(check_poses.questions())
    replies = check_poses.ask(sys.argv[1], lines)
    solved = [(line, ready(reply["ok"])) for line, reply in zip(lines, replies, strict=True) if "ok" in reply]
    print(json.dumps([line for line, _ in solved]), flush=True)
    for _ in sys.stdin:
        evaluation = statistics.median(microseconds(mujoco.mj_inverse, *built) for _, built in solved)
        call = statistics.median(microseconds(mujoco.mj_isDual, built[0]) for _, built in solved)
        print(json.dumps({"evaluation_us": evaluation, "call_us": call}), flush=True)


if __name__ == "__main__":
    main()
