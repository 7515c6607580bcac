"""Reads our symbols with two decoders that are not ours, and draws symbols with an encoder that is not ours.

    apt-get install libzbar0; python3 -m venv venv; venv/bin/pip install -r requirements.txt
    venv/bin/python check_symbols.py FOLDER

FOLDER holds `ours.json`, a list of [picture, text]. Each picture must be read as its text by zbar and by zxing-cpp.
Then `theirs.json` and its pictures are written for our own reader: the same texts drawn by segno. Run by
`src-tauri/crates/handoff/tests/symbol_peers.rs`.
"""

import json
import pathlib
import sys

import segno
import zxingcpp
from PIL import Image
from pyzbar import pyzbar


def zbar(picture):
    return [found.data.decode() for found in pyzbar.decode(picture, symbols=[pyzbar.ZBarSymbol.QRCODE])]


def zxing(picture):
    return [found.text for found in zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)]


def check(folder, decoder):
    wrong = []
    for name, text in json.loads((folder / "ours.json").read_text()):
        found = decoder(Image.open(folder / name).convert("L"))
        if found != [text]:
            wrong.append(f"{decoder.__name__}: {name} of {len(text)} characters gave {found!r:.80}")
    return wrong


def draw(folder):
    drawn = []
    for at, (_, text) in enumerate(json.loads((folder / "ours.json").read_text())):
        for level in "lm":
            try:
                symbol = segno.make_qr(text, error=level, mode="alphanumeric", boost_error=False)
            except segno.encoder.DataOverflowError:
                continue
            name = f"theirs_{at}_{level}.png"
            symbol.save(str(folder / name), scale=4, border=4)
            drawn.append([name, text])
    (folder / "theirs.json").write_text(json.dumps(drawn))


def main():
    folder = pathlib.Path(sys.argv[1])
    wrong = check(folder, zbar) + check(folder, zxing)
    print("\n".join(wrong))
    draw(folder)
    sys.exit(bool(wrong))


if __name__ == "__main__":
    main()
