"""Reads the pages that the app's tests left in a folder with `pypdf`, a library of its own, and compares the widths of
letters that line breaks rest on with those of `reportlab` (Adobe Font Metrics of the 14 core fonts).

    python3 check_pages.py FOLDER

One page, of the paper's size, with the text in reading order: title, who made it, every passage after the other, the limits
at the end; letters with accents come out as they went in.
"""

import base64
import io
import pathlib
import re
import sys

from pypdf import PdfReader
from reportlab.pdfbase import _fontdata

PAPERS = {"kg": (595.28, 841.89), "lb": (612, 792)}
IN_ORDER = {
    "en": ["Looking back on lifting and pain", "Told by the person.", "Pain", "Ways to lift", "Heavy days", "set no limit."],
    "es": ["Mirar atrás: cargas y dolor", "Ningún profesional lo ha revisado.", "Dolor", "Formas de levantar", "Días pesados", "ni fijan límites."],
}
FONT = "src-tauri/crates/app/src/report/sheet/font.rs"


def check_widths():
    source = pathlib.Path(FONT).read_text(encoding="utf-8")
    for name, font in [("PLAIN", "Helvetica"), ("BOLD", "Helvetica-Bold")]:
        table = re.search(rf"const {name}: \[u16; 224\] = \[(.*?)\];", source, re.S).group(1)
        ours = [int(number) for number in re.findall(r"\d+", table)]
        letters = _fontdata.encodings["WinAnsiEncoding"][32:]
        theirs = [_fontdata.widthsByFontGlyph[font].get(letter, 0) if letter else 0 for letter in letters]
        if ours != theirs:
            sys.exit(f"{font}: widths differ")


def check_page(path):
    _, language, units = path.name.split(".")[0].split("-")
    reader = PdfReader(io.BytesIO(base64.b64decode(path.read_text(encoding="ascii"))))
    if len(reader.pages) != 1:
        sys.exit(f"{path.name}: {len(reader.pages)} pages")
    box = reader.pages[0].mediabox
    wide, high = PAPERS[units]
    if abs(float(box.width) - wide) > 0.01 or abs(float(box.height) - high) > 0.01:
        sys.exit(f"{path.name}: {box.width} × {box.height}")
    if reader.trailer["/Root"]["/Lang"] != language:
        sys.exit(f"{path.name}: language {reader.trailer['/Root']['/Lang']}")
    text = " ".join(reader.pages[0].extract_text().split())
    at = 0
    for words in IN_ORDER[language]:
        found = text.find(words, at)
        if found < 0:
            sys.exit(f"{path.name}: {words!r} is not there after {text[:at][-60:]!r}")
        at = found + len(words)
    if "?" in text:
        sys.exit(f"{path.name}: a letter was lost: {text[max(0, text.find('?') - 30):][:60]!r}")
    print(f"{path.name}: one page, {len(text)} letters in reading order")


def main(folder):
    check_widths()
    paths = sorted(pathlib.Path(folder).glob("history-*.pdf.base64"))
    if len(paths) < 3:
        sys.exit("there are too few pages to check")
    for path in paths:
        check_page(path)


main(sys.argv[1])
