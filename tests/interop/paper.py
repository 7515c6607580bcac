"""A page of PDF that the app made, read with `pypdf`: what every check of a page asks for."""

import base64
import io
import sys

from pypdf import PdfReader

PAPERS = {"kg": (595.28, 841.89), "lb": (612, 792)}


def read(path, in_order):
    """Bytes and text of the only page, whose name ends in its language and units. It must have the paper's size, name its
    language, hold the sentences of `in_order` one after the other, and have lost no letter."""
    *_, language, units = path.name.split(".")[0].split("-")
    file = base64.b64decode(path.read_text(encoding="ascii"))
    reader = PdfReader(io.BytesIO(file))
    if len(reader.pages) != 1:
        sys.exit(f"{path.name}: {len(reader.pages)} pages")
    box = reader.pages[0].mediabox
    wide, high = PAPERS[units]
    if max(abs(float(box.width) - wide), abs(float(box.height) - high)) > 0.01:
        sys.exit(f"{path.name}: {box.width} × {box.height}")
    if reader.trailer["/Root"]["/Lang"] != language:
        sys.exit(f"{path.name}: language {reader.trailer['/Root']['/Lang']}")
    text = " ".join(reader.pages[0].extract_text().split())
    at = 0
    for words in in_order[language]:
        found = text.find(words, at)
        if found < 0:
            sys.exit(f"{path.name}: {words!r} is not there after {text[:at][-60:]!r}")
        at = found + len(words)
    if "?" in text:
        sys.exit(f"{path.name}: a letter was lost: {text[max(0, text.find('?') - 30):][:60]!r}")
    return file, text
