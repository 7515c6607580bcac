"""Builds the body of every `pose` reply in MuJoCo, a general rigid-body dynamics library, and compares the
joint moments of its inverse dynamics with ours, given the same contact forces.

    python3 check_poses.py LINES_BINARY [COUNT]

LINES_BINARY answers JSON lines on standard input (`headless lines`). Prints a closing line with counts and the
largest difference, and the time of one evaluation; exits 1 when any difference passes 1e-6 · max(|M|, 1 N·m).
"""

import itertools
import json
import subprocess
import sys
import time

import mujoco
import numpy as np

WAYS = ["hinge", "squat", "lunge", "free_bend", "golfer", "upright"]
PEOPLE = [(150, 48), (165, 66.8), (175, 84.6), (190, 110)]
OBJECTS = [
    {"mass_kg": mass, "start_height_cm": height, "width_cm": width, "depth_cm": depth}
    for mass, height, (width, depth) in itertools.product(
        [0.1, 2.3, 8, 20], [2, 15, 29, 45, 85, 110], [(20, 15), (60, 35)]
    )
]

# A hand that leans: its forces are among the contacts, and are given to the library like the others.
SUPPORTS = [{"on": "thigh", "push_n": 60}, {"on": "furniture", "push_n": 80, "height_cm": 60}]


def questions():
    for way, (stature, mass), thing in itertools.product(WAYS, PEOPLE, OBJECTS):
        person = {"stature_cm": stature, "mass_kg": mass}
        if way == "lunge" and stature in (165, 190):
            person |= {"knee_left_nrs": 0, "knee_right_nrs": 5}
        line = {"do": "pose", "way": way, "person": person, "object": thing}
        yield line
        if thing["mass_kg"] in (0.1, 8) and way != "upright":
            for support in SUPPORTS:
                yield line | {"support": support}


def ask(binary, lines):
    text = "\n".join(json.dumps(line) for line in lines) + "\n"
    done = subprocess.run([binary, "lines"], input=text, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines() if line.strip()]


def model_of(pose):
    """The segments as a tree hanging from a free pelvis; joints turn about -y, from forward to up."""
    joints = {joint["segment"]: joint for joint in pose["joints"]}
    segments = {segment["name"]: segment for segment in pose["segments"]}
    spec = mujoco.MjSpec()
    spec.compiler.degree = False
    spec.option.gravity = [0, 0, -pose["g"]]
    bodies = {}
    waiting = list(pose["segments"])
    while waiting:
        segment = waiting.pop(0)
        parent = segment["parent"]
        if parent is not None and parent not in bodies:
            waiting.append(segment)
            continue
        origin = np.array(segment["from_m"] if parent is None else joints[segment["name"]]["at_m"])
        above = np.zeros(2) if parent is None else bodies[parent][1]
        offset = origin - above
        holder = spec.worldbody if parent is None else bodies[parent][0]
        body = holder.add_body(name=segment["name"], pos=[offset[0], 0, offset[1]])
        com = np.array(segment["com_m"]) - origin
        body.mass = segment["mass_kg"]
        body.ipos = [com[0], 0, com[1]]
        body.inertia = [1e-3] * 3
        body.explicitinertial = True
        if parent is None:
            body.add_joint(name="free", type=mujoco.mjtJoint.mjJNT_FREE)
        else:
            body.add_joint(name=segment["name"], type=mujoco.mjtJoint.mjJNT_HINGE, axis=[0, -1, 0])
        bodies[segment["name"]] = (body, origin)
    assert set(bodies) == set(segments)
    return spec.compile()


def push(model, data, name, at, force):
    body = mujoco.mj_name2id(model, mujoco.mjtObj.mjOBJ_BODY, name)
    applied = np.zeros(model.nv)
    mujoco.mj_applyFT(model, data, np.array([force[0], 0, force[1]], float), np.zeros(3), np.array([at[0], 0, at[1]], float), body, applied)
    return applied


def moments(pose):
    model = model_of(pose)
    data = mujoco.MjData(model)
    mujoco.mj_forward(model, data)
    outside = np.zeros(model.nv)
    for contact in pose["contacts"]:
        outside += push(model, data, contact["segment"], contact["at_m"], contact["force_n"])
    load = pose["load"]
    for hand in load["hands"]:
        weight = -load["mass_kg"] * pose["g"] / len(load["hands"])
        outside += push(model, data, hand, load["at_m"], [0, weight])
    data.qacc[:] = 0
    started = time.perf_counter()
    mujoco.mj_inverse(model, data)
    took = time.perf_counter() - started
    needed = data.qfrc_inverse - outside
    found = {}
    for joint in pose["joints"]:
        at = model.jnt_dofadr[mujoco.mj_name2id(model, mujoco.mjtObj.mjOBJ_JOINT, joint["segment"])]
        found[joint["name"]] = needed[at] * joint["extension_turns"]
    root = needed[:6]
    return found, root, took


def main():
    binary = sys.argv[1]
    lines = list(questions())
    replies = ask(binary, lines)
    assert len(replies) == len(lines)
    poses = [(line, reply["ok"]) for line, reply in zip(lines, replies) if "ok" in reply]
    refused = [reply for reply in replies if "ok" not in reply]
    assert all(reply["error"]["code"] == "no_posture" for reply in refused), refused[:3]
    worst, failed, compared, times = 0.0, 0, 0, []
    for line, pose in poses:
        found, root, took = moments(pose)
        times.append(took)
        if max(abs(root)) > 1e-6:
            failed += 1
            print("the whole body does not balance:", root, line)
        for joint in pose["joints"]:
            ours, theirs = joint["moment_nm"], found[joint["name"]]
            share = abs(ours - theirs) / max(abs(theirs), 1.0)
            worst = max(worst, share)
            compared += 1
            if share > 1e-6:
                failed += 1
                print(joint["name"], ours, theirs, line)
    print(f"{len(poses)} poses solved, {len(refused)} refused with a reason, {compared} joint moments compared")
    print(f"largest difference {worst:.2e}; one inverse-dynamics evaluation {1e6 * np.median(times):.1f} us median")
    ways = {way: sum(line["way"] == way for line, _ in poses) for way in WAYS}
    leaning = sum("support" in line for line, _ in poses)
    print("by way:", ways, "with a hand that leans:", leaning)
    enough = len(poses) >= 500 and all(ways.values()) and leaning >= 200
    print(f"{compared - failed} passed, {failed} failed")
    return 0 if enough and not failed else 1


if __name__ == "__main__":
    sys.exit(main())
