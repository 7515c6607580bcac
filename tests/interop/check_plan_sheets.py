"""Reads the plans on paper that the app's tests left in a folder: the text with `pypdf`, and the symbol with `zxing-cpp` off a
picture of the page made by `pypdfium2`, at the 200 dots an inch of a plain office printer.

    python3 check_plan_sheets.py FOLDER

One page of the paper's size, the text in reading order, no letter lost. The symbol's text is Base45 (RFC 9285) of a sealed parcel:
its head and checksum are those of `docs/formats/handoff.md`, so every bit was read.
"""

import pathlib
import sys
import zlib

import paper
import pypdfium2
import zxingcpp

DOTS_AN_INCH = 200
IN_ORDER = {
    "en": ["For Green Ladder, from Blue Kettle. Version 1.", "For the phone of Green Ladder only", "Stop if pain jumps", "does not replace advice."],
    "es": ["Para Green Ladder, de Blue Kettle. Versión 1.", "Solo para el teléfono de Green Ladder", "Pare si el dolor sube", "no sustituye un consejo."],
}
BASE45 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
PAIRED, PLAN = 2, 1


def unpack(text):
    """RFC 9285, section 4: three characters are two bytes, two characters are one."""
    out = bytearray()
    for at in range(0, len(text), 3):
        digits = [BASE45.index(sign) for sign in text[at : at + 3]]
        value = sum(digit * 45**place for place, digit in enumerate(digits))
        out += value.to_bytes(2 if len(digits) == 3 else 1, "big")
    return bytes(out)


def check(path):
    file, text = paper.read(path, IN_ORDER)
    picture = pypdfium2.PdfDocument(file)[0].render(scale=DOTS_AN_INCH / 72).to_pil().convert("L")
    found = zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)
    if len(found) != 1:
        sys.exit(f"{path.name}: {len(found)} symbols")
    parcel = unpack(found[0].text)
    if parcel[:7] != b"HWHO" + bytes([1, PAIRED, PLAN]) or int.from_bytes(parcel[7:10], "big") != len(parcel):
        sys.exit(f"{path.name}: the head {parcel[:10].hex()} is not a paired plan's")
    if zlib.crc32(parcel[:-4]) != int.from_bytes(parcel[-4:], "big"):
        sys.exit(f"{path.name}: the checksum does not fit")
    print(f"{path.name}: one page, {len(text)} letters, {len(parcel)} bytes sealed in its symbol")


def main(folder):
    paths = sorted(pathlib.Path(folder).glob("plan-*.pdf.base64"))
    if len(paths) < 56:
        sys.exit("there are too few plans to check")
    for path in paths:
        check(path)


main(sys.argv[1])
