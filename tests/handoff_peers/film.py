"""Makes what a phone's camera would see of another phone's screen: pictures of symbols in, a film for a camera out.

    venv/bin/python film.py FOLDER FILM.y4m --seed 1 --loss 0.2 --frames 48

FOLDER holds `symbol_000.png` and so on, taken off a real screen, in the order in which they were shown. The film is
1280 x 720, 8 frames a second, in the plain format that Chromium's fake camera reads. Each frame shows one symbol as a
hand-held camera sees it: tilted, turned, shaken, out of focus, unevenly lit, with a moire of two periods, a low contrast
and noise. A lost frame is torn between two symbols and smeared, as when the camera opens while the screen changes.
The amounts are house rules: the "combined" case of `docs/formats/handoff.md`, mild amounts of all at once.
"""

import argparse
import pathlib

import numpy
from PIL import Image, ImageFilter

WIDTH, HEIGHT, RATE = 1280, 720, 8
MOST_FRAMES = 60


def corners(random, share):
    """Where the four corners of the card land: share of the short side, turned, shifted and seen at an angle."""
    side = HEIGHT * share
    turn = numpy.radians(random.uniform(-8, 8))
    keystone = random.uniform(-0.06, 0.06, (4, 2)) * side
    square = numpy.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * side / 2
    spin = numpy.array([[numpy.cos(turn), -numpy.sin(turn)], [numpy.sin(turn), numpy.cos(turn)]])
    room = (HEIGHT - side * 1.15) / 2
    middle = numpy.array([WIDTH / 2, HEIGHT / 2]) + random.uniform(-1, 1, 2) * max(0, room)
    return square @ spin.T + keystone + middle


def perspective(to, side):
    """The eight numbers that map a point of the frame to a point of the card (Pillow's PERSPECTIVE)."""
    rows, wanted = [], []
    for (x, y), (u, v) in zip(to, [(0, 0), (side, 0), (side, side), (0, side)]):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        wanted += [u, v]
    return numpy.linalg.solve(numpy.array(rows), numpy.array(wanted))


def seen(card, random, share, hard):
    """One frame, 0 to 255, of a card of grey pixels."""
    side = card.size[0]
    # Pillow reads outside the card as black: the phone around the screen.
    frame = card.transform((WIDTH, HEIGHT), Image.Transform.PERSPECTIVE, perspective(corners(random, share), side), Image.Resampling.BICUBIC)
    frame = frame.filter(ImageFilter.GaussianBlur(random.uniform(0.6, 1.0) * hard))
    light = numpy.asarray(frame, dtype=float)
    down, across = numpy.mgrid[0:HEIGHT, 0:WIDTH]
    angle = random.uniform(0, 2 * numpy.pi)
    ramp = (numpy.cos(angle) * across / WIDTH + numpy.sin(angle) * down / HEIGHT) * 0.25 * hard
    period = random.uniform(3.3, 7.7, 2)
    moire = sum(numpy.sin(2 * numpy.pi * (across * numpy.cos(a) + down * numpy.sin(a)) / p) for p, a in zip(period, random.uniform(0, numpy.pi, 2)))
    low, high = random.uniform(25, 45), random.uniform(170, 215)
    light = low + light / 255 * (high - low)
    light = light * (1 + ramp) + 4 * hard * moire + random.normal(0, 6 * hard, light.shape)
    return numpy.clip(light, 0, 255).astype(numpy.uint8)


def torn(one, other, random):
    """Half of one symbol and half of the next, smeared: no reader gets anything from it."""
    cut = int(one.size[1] * random.uniform(0.35, 0.65))
    both = one.copy()
    both.paste(other.crop((0, cut, other.size[0], other.size[1])), (0, cut))
    return both.filter(ImageFilter.BoxBlur(both.size[0] / 110))


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("folder", type=pathlib.Path)
    asked.add_argument("film", type=pathlib.Path)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--loss", type=float, default=0.2)
    asked.add_argument("--frames", type=int, default=48)
    asked.add_argument("--hard", type=float, default=1.0)
    asked = asked.parse_args()
    random = numpy.random.default_rng(asked.seed)
    cards = [Image.open(path).convert("L") for path in sorted(asked.folder.glob("symbol_*.png"))]
    if not cards:
        raise SystemExit("no symbol_*.png to film")
    share = random.uniform(0.75, 0.9)
    with asked.film.open("wb") as film:
        film.write(f"YUV4MPEG2 W{WIDTH} H{HEIGHT} F{RATE}:1 Ip A1:1 C420jpeg\n".encode())
        for at in range(min(asked.frames, MOST_FRAMES)):
            card, after = cards[at % len(cards)], cards[(at + 1) % len(cards)]
            if random.random() < asked.loss:
                card = torn(card, after, random)
            film.write(b"FRAME\n")
            film.write(seen(card, random, share, asked.hard).tobytes())
            film.write(bytes([128]) * (WIDTH * HEIGHT // 2))


if __name__ == "__main__":
    main()
