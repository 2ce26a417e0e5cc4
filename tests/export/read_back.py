"""Reads an exported file with other programs' readers and prints what they see, one line a thing.

usage: read_back.py ics|csv|svg|recipe FILE
ics: python3-icalendar; csv: Python's csv module; svg: Python's XML parser; recipe: JSON Schema 2020-12
of the properties that schema.org/Recipe gives these types (python3-jsonschema).
"""
import csv
import datetime
import json
import sys
import xml.etree.ElementTree


def utc(value):
    return value.dt.astimezone(datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")


def ics(path):
    import icalendar

    with open(path, "rb") as file:
        calendar = icalendar.Calendar.from_ical(file.read())
    for event in calendar.walk("VEVENT"):
        end = event.get("DTEND", event["DTSTART"])
        alarms = [utc(alarm["TRIGGER"]) for alarm in event.walk("VALARM")]
        print(event["UID"], utc(event["DTSTART"]), utc(end), event["SUMMARY"], *alarms, sep="|")


def table(path):
    with open(path, encoding="utf-8-sig", newline="") as file:
        for row in csv.reader(file, strict=True):
            print("|".join(row))


def svg(path):
    space = "{http://www.w3.org/2000/svg}"
    root = xml.etree.ElementTree.parse(path).getroot()
    print(root.tag)
    for text in root.iter(space + "text"):
        print("".join(text.itertext()).strip())


DURATION = {"type": "string", "pattern": r"^PT(\d+H)?(\d+M)?(\d+S)?$", "minLength": 4}
TEXT = {"type": "string", "minLength": 1}
STEP = {
    "type": "object",
    "properties": {"@type": {"const": "HowToStep"}, "name": TEXT, "text": TEXT},
    "required": ["@type", "text"],
}
SECTION = {
    "type": "object",
    "properties": {
        "@type": {"const": "HowToSection"},
        "name": TEXT,
        "itemListElement": {"type": "array", "items": STEP, "minItems": 1},
    },
    "required": ["@type", "itemListElement"],
}
RECIPE = {
    "type": "object",
    "properties": {
        "@type": {"const": "Recipe"},
        "name": TEXT,
        "recipeYield": {"type": ["string", "number"]},
        "prepTime": DURATION,
        "cookTime": DURATION,
        "recipeIngredient": {"type": "array", "items": TEXT},
        "recipeInstructions": {"type": "array", "items": SECTION},
    },
    "required": ["@type", "name"],
}


def recipe(path):
    import jsonschema

    with open(path, encoding="utf-8") as file:
        document = json.load(file)
    if document["@context"] != "https://schema.org":
        sys.exit("no context of schema.org")
    for each in document.get("@graph", [document]):
        jsonschema.Draft202012Validator(RECIPE).validate(each)
        print(each["name"], each["recipeYield"], each["prepTime"], each["cookTime"], sep="|")
        for ingredient in each["recipeIngredient"]:
            print(ingredient)


{"ics": ics, "csv": table, "svg": svg, "recipe": recipe}[sys.argv[1]](sys.argv[2])
