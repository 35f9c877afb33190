"""Bounds, ranges, words and grouped digits instead of the plain number, where laboratories print them."""

from __future__ import annotations

from random import Random

from tests.sheets.concepts import Concept, Form
from tests.sheets.numbers import number
from tests.sheets.truth import TruthFigure
from tests.sheets.wording import Wording

DETECTION_LIMITS = {
    "ndma": 1.0,
    "arsenic": 0.1,
    "lead": 0.1,
    "cadmium": 0.05,
    "sulphur_dioxide": 5.0,
    "ochratoxin_a": 0.5,
    "aflatoxin_b1": 0.5,
    "deoxynivalenol": 50.0,
    "zearalenone": 10.0,
    "glycosidic_nitrile": 0.5,
    "t2_ht2": 10.0,
    "fumonisins": 50.0,
}


def _detection_limit(concept: str, unit: str) -> float:
    if concept == "deoxynivalenol" and unit == "mg/kg":
        return 0.2
    return DETECTION_LIMITS.get(concept, 0.0)


def largest_decoration(concept: str, unit: str) -> float:
    """The largest figure that may be printed instead of the plain one; limits have to lie above it."""
    if concept == "saccharification_time":
        return 16.0
    return 1.3 * _detection_limit(concept, unit)


def decorate(rng: Random, words: Wording, comma: bool, concept: Concept, form: Form, figure: TruthFigure) -> None:
    """Changes what is printed for a figure, by chance, and its answer with it."""
    roll = rng.random()
    space = rng.choice(("", " "))
    printed = figure.number or 0.0
    least = _detection_limit(concept.name, form.unit)
    if form.unit == "text":
        _say(figure, words.pick(rng, "words", concept.name))
    elif concept.name == "filtration" and roll < 0.35:
        _say(figure, words.pick(rng, "words", "filtration"))
        figure.certainty = "either"
    elif concept.name == "saccharification_time" and roll < 0.3:
        low = 10.0 if printed >= 10 else 5.0
        dash = rng.choice((" - ", "-", "–"))
        figure.value = f"{low:.0f}{dash}{low + 5:.0f}"
        figure.bound, figure.range, figure.number = "range", (low, low + 5), None
    elif concept.name == "saccharification_time" and roll < 0.5:
        top = 10.0 if printed < 10 else 15.0
        figure.value, figure.bound, figure.number = f"<{space}{top:.0f}", "<", top
    elif least and roll < 0.4:
        places = 0 if least >= 5 else 2 if least < 0.1 else 1
        figure.value, figure.bound, figure.number = f"<{space}{number(least, places, comma)}", "<", least
    elif least and roll < 0.5:
        _say(figure, words.pick(rng, "words", "nd"))
        figure.certainty = "either"
    elif printed >= 1000 and float(printed).is_integer() and roll < 0.4:  # 1 250 or, in the sheet's own way, 1,250
        sign = " " if roll < 0.25 else "." if comma else ","
        figure.value = f"{int(printed):,}".replace(",", sign)
        figure.certainty = "either" if sign == " " else "ambiguous"
        figure.why = "grouped digits"


def _say(figure: TruthFigure, word: str) -> None:
    figure.value = figure.text = word
    figure.number = None
