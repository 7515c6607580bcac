"""Validates the documents that the app's tests left in a folder with `fhir.resources`, a published model library.

    python3 check_documents.py FOLDER

The library has no R4 models; its R4B models (4.3.0) agree with R4 on the resources used here. It checks structure: names,
types, cardinalities, one value of a choice. It does not check codes or references; the app's own tests do, naming the rule.
A document with one fault put in must be refused, or the check proves nothing.
"""

import copy
import json
import pathlib
import sys

from fhir.resources.R4B.bundle import Bundle

FAULTS = [
    ("an unknown field", lambda resource: resource.update(colour="blue")),
    ("no status", lambda resource: resource.pop("status")),
    ("two values", lambda resource: resource.update(valueInteger=1, valueString="one")),
    ("a date that is none", lambda resource: resource.update(effectiveDateTime="next Friday")),
]


def refused(document):
    try:
        Bundle.model_validate(document)
    except ValueError:
        return True
    return False


def main(folder):
    paths = sorted(pathlib.Path(folder).glob("*.json"))
    if not paths:
        sys.exit("there is no document to check")
    for path in paths:
        document = json.loads(path.read_text(encoding="utf-8"))
        bundle = Bundle.model_validate(document)
        at = next(i for i, e in enumerate(document["entry"]) if e["resource"]["resourceType"] == "Observation")
        for name, spoil in FAULTS:
            spoilt = copy.deepcopy(document)
            spoil(spoilt["entry"][at]["resource"])
            if not refused(spoilt):
                sys.exit(f"{path.name}: the library takes {name}")
        print(f"{path.name}: {len(bundle.entry)} resources, {len(FAULTS)} faults refused")


main(sys.argv[1])
