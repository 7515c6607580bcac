"""Reads the pages that the app's tests left in a folder with `pypdf`, a library of its own, and compares the widths of
letters that line breaks rest on with those of `reportlab` (Adobe Font Metrics of the 14 core fonts).

    python3 check_pages.py FOLDER

One page, of the paper's size, with the text in reading order: title, who made it, every passage after the other, the limits
at the end; letters with accents come out as they went in.
"""

import pathlib
import re
import sys

import paper
from reportlab.pdfbase import _fontdata

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
    _, text = paper.read(path, IN_ORDER)
    print(f"{path.name}: one page, {len(text)} letters in reading order")


def main(folder):
    check_widths()
    paths = sorted(pathlib.Path(folder).glob("history-*.pdf.base64"))
    if len(paths) < 3:
        sys.exit("there are too few pages to check")
    for path in paths:
        check_page(path)


main(sys.argv[1])
