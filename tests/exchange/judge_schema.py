"""Judges files by a JSON Schema: one line each, "good" or "bad: reason"."""

import json
import sys

import jsonschema


def verdict(validator, path):
    with open(path, encoding="utf-8") as file:
        error = jsonschema.exceptions.best_match(validator.iter_errors(json.load(file)))
    return "good" if error is None else "bad: " + error.message.replace("\n", " ")[:200]


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for path in sys.argv[2:]:
        print(verdict(validator, path))


main()
