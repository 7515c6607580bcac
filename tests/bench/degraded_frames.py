"""Frames of symbols as a bad camera sees them, and what two decoders of others make of each.

    venv/bin/python degraded_frames.py FOLDER

FOLDER holds `v10.pgm` and so on: our symbols, one pixel a module, quiet zone included. One line in, `WIDTH HEIGHT VERSION
CASE NUMBER`, makes one frame: it is written to `FOLDER/frame.grey` as WIDTH x HEIGHT bytes, row by row, and one line of
JSON comes back with the text that zbar and zxing-cpp read, or nothing, and the microseconds that each took. The same line
gives the same frame in every run. The cases and their amounts are house rules; they follow no camera.
"""

import json
import pathlib
import sys
import time
import zlib

import numpy
import zxingcpp
from PIL import Image, ImageFilter
from pyzbar import pyzbar

# Share of the frame's short side that the symbol fills, by case; "far" is held too far away.
NEAR, FAR = (0.70, 0.85), (0.45, 0.55)


def perspective(to, side):
    """The eight numbers that map a point of the frame to a point of the card (Pillow's PERSPECTIVE)."""
    rows, wanted = [], []
    for (x, y), (u, v) in zip(to, [(0, 0), (side, 0), (side, side), (0, side)]):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        wanted += [u, v]
    return numpy.linalg.solve(numpy.array(rows), numpy.array(wanted))


def place(card, width, height, share, turn, bend):
    """The card in a frame of its own white page: turned, bent as seen at an angle."""
    side = height * share
    square = numpy.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * side / 2
    spin = numpy.array([[numpy.cos(turn), -numpy.sin(turn)], [numpy.sin(turn), numpy.cos(turn)]])
    to = square @ spin.T + bend * side + numpy.array([width / 2, height / 2])
    big = card.resize((card.size[0] * 8, card.size[1] * 8), Image.Resampling.NEAREST)
    how = perspective(to, big.size[0])
    frame = big.transform((width, height), Image.Transform.PERSPECTIVE, how, Image.Resampling.BICUBIC, fillcolor=90)
    return frame


def smear(light, length, random):
    """Shaken along one axis while the camera is open."""
    axis = int(random.integers(0, 2))
    return sum(numpy.roll(light, at, axis=axis) for at in range(length)) / length


def moire(shape, random, amount):
    down, across = numpy.mgrid[0 : shape[0], 0 : shape[1]]
    waves = 0
    for period, angle in zip(random.uniform(3.3, 7.7, 2), random.uniform(0, numpy.pi, 2)):
        waves = waves + numpy.sin(2 * numpy.pi * (across * numpy.cos(angle) + down * numpy.sin(angle)) / period)
    return amount * waves


def glare(shape, random):
    """A lamp mirrored in the screen, and light from one side."""
    down, across = numpy.mgrid[0 : shape[0], 0 : shape[1]]
    x, y = random.uniform(0.3, 0.7, 2) * [shape[1], shape[0]]
    spot = numpy.exp(-((across - x) ** 2 + (down - y) ** 2) / (2 * (0.12 * shape[0]) ** 2))
    return 70 * spot, 1 + 0.35 * (across / shape[1] - 0.5)


def frame(card, width, height, case, random):
    """One frame, 0 to 255."""
    share = random.uniform(*(FAR if case == "far" else NEAR))
    mild = case == "combined"
    turn = numpy.radians(random.uniform(-30, 30)) if case == "turned" else numpy.radians(random.uniform(-4, 4))
    bend = random.uniform(-0.09, 0.09, (4, 2)) if case == "tilted" else random.uniform(-0.03, 0.03, (4, 2)) * mild
    seen = place(card, width, height, share * (0.8 if case == "turned" else 1), turn, bend)
    soft = random.uniform(1.0, 1.8) if case == "blurred" else random.uniform(0.5, 0.9)
    light = numpy.asarray(seen.filter(ImageFilter.GaussianBlur(soft)), dtype=float)
    if case == "shaken":
        light = smear(light, int(random.integers(3, 7)), random)
    if case == "flat":
        light = 110 + light / 255 * random.uniform(40, 60)
    if case in ("glare", "combined"):
        spot, ramp = glare(light.shape, random)
        light = light * ramp + spot * (0.4 if mild else 1)
    if case in ("moire", "combined"):
        light = light + moire(light.shape, random, 6 if mild else 18)
    if mild:
        light = 25 + light * 0.7
    light = light + random.normal(0, random.uniform(15, 25) if case == "noisy" else 5, light.shape)
    return numpy.clip(light, 0, 255).astype(numpy.uint8)


def timed(work):
    start = time.perf_counter()
    made = work()
    return made, (time.perf_counter() - start) * 1e6


def main():
    folder = pathlib.Path(sys.argv[1])
    for line in sys.stdin:
        width, height, version, case, number = line.split()
        random = numpy.random.default_rng(zlib.crc32(line.strip().encode()))
        card = Image.open(folder / f"v{version}.pgm").convert("L")
        grey = frame(card, int(width), int(height), case, random)
        (folder / "frame.grey").write_bytes(grey.tobytes())
        picture = Image.fromarray(grey)
        by_zbar, zbar_us = timed(lambda: pyzbar.decode(picture, symbols=[pyzbar.ZBarSymbol.QRCODE]))
        by_zxing, zxing_us = timed(lambda: zxingcpp.read_barcodes(grey, formats=zxingcpp.BarcodeFormat.QRCode))
        print(
            json.dumps(
                {
                    "zbar": by_zbar[0].data.decode("ascii", "replace") if by_zbar else None,
                    "zbar_us": zbar_us,
                    "zxing": by_zxing[0].text if by_zxing else None,
                    "zxing_us": zxing_us,
                }
            ),
            flush=True,
        )


if __name__ == "__main__":
    main()
