"""What a JSON-LD processor reads in files of recipes, and what in them the vocabulary lacks.

Each line of output is the file's number, a word and a text: "recipe", "yield", "time", "ingredient",
"section" and "step" tell what was read; "fault" tells what schema.org would not know there.
"""

import json
import re
import sys

from pyld import jsonld

BASE = "http://schema.org/"
# What schema.org's own context says of these names: a vocabulary, and two short forms.
CONTEXT = {"@context": {"@vocab": BASE, "type": "@type", "id": "@id"}}

# The properties of each type that a recipe may bring, by the pages schema.org/Recipe, HowToSection,
# HowToStep, HowToDirection, HowToTip, ItemList, ListItem and QuantitativeValue.
PLAIN = {"name", "text", "description", "url"}
STEPS = PLAIN | {"itemListElement", "position"}
KNOWN = {
    "Recipe": PLAIN | {"recipeYield", "prepTime", "cookTime", "totalTime", "recipeIngredient",
                       "recipeInstructions"},
    "HowToSection": STEPS, "HowToStep": STEPS, "HowToDirection": STEPS, "HowToTip": STEPS,
    "ItemList": STEPS, "ListItem": PLAIN | {"item", "position"},
    "QuantitativeValue": {"value", "unitText"},
}
TIMES = ("prepTime", "cookTime", "totalTime")
DURATION = re.compile(r"P(?=.)(\d+W|(\d+D)?(T(?=.)(\d+H)?(\d+M)?(\d+S)?)?)$")


def load(address, options):
    """The only document there is: the vocabulary's context, without asking the network."""
    if not re.match(r"https?://schema\.org/?$", address):
        raise ValueError("no such document: " + address)
    return {"contentType": "application/ld+json", "contextUrl": None, "documentUrl": address,
            "document": CONTEXT}


def recipes_of(path):
    """Each recipe of the file with all it refers to in its place."""
    with open(path, encoding="utf-8") as file:
        expanded = jsonld.expand(json.load(file))
    one_vocabulary = json.loads(json.dumps(expanded).replace("https://schema.org/", BASE))
    frame = dict(CONTEXT, **{"@type": "Recipe", "@embed": "@always"})
    framed = jsonld.frame(one_vocabulary, frame, {"omitGraph": False})
    return framed.get("@graph", [])


def several(value):
    if isinstance(value, dict) and "@list" in value:
        return value["@list"]
    return value if isinstance(value, list) else [] if value is None else [value]


def text_of(value):
    if not isinstance(value, dict):
        return str(value)
    return text_of(value.get("@value", value.get("text", value.get("name", value.get("value")))))


def types_of(node):
    """An alias of the frame's context stands for @type."""
    return several(node.get("type", node.get("@type")))


def faults_in(node):
    if not isinstance(node, dict) or "@value" in node:
        return
    types = [each for each in types_of(node) if each in KNOWN]
    if not types:
        yield "type " + ", ".join(map(str, types_of(node)))
    allowed = set().union(*(KNOWN[each] for each in types)) if types else set()
    for name, value in node.items():
        if name in ("type", "id") or name.startswith("@"):
            continue
        if name not in allowed:
            yield "property " + name
        if name in TIMES and not DURATION.match(text_of(value)):
            yield "duration " + text_of(value)
        for each in several(value):
            yield from faults_in(each)


def told(node):
    """The instructions as pairs of a word and a text."""
    if not isinstance(node, dict) or "@value" in node:
        yield "step", text_of(node)
        return
    elements = several(node.get("itemListElement", node.get("item")))
    if "HowToSection" in types_of(node):
        yield "section", text_of(node)
    elif not elements:
        yield "step", text_of(node)
    for each in elements:
        yield from told(each)


def report(recipe):
    yield "recipe", text_of(recipe["name"])
    for each in several(recipe.get("recipeYield"))[:1]:
        yield "yield", text_of(each)
    for name in TIMES:
        if name in recipe:
            yield "time", name + " " + text_of(recipe[name])
    for each in several(recipe.get("recipeIngredient")):
        yield "ingredient", text_of(each)
    for each in several(recipe.get("recipeInstructions")):
        yield from told(each)
    for fault in faults_in(recipe):
        yield "fault", fault


def main():
    jsonld.set_document_loader(load)
    for number, path in enumerate(sys.argv[1:]):
        for recipe in recipes_of(path):
            for word, text in report(recipe):
                print(number, word, " ".join(text.split()))


main()
