"""Limits in brackets inside a label: "Thousand corn weight (min. 39 g)", "Kolbach index [35 – 40 %]"."""

from __future__ import annotations

import re

from importer.reading.values import split_value
from importer.vocabulary.lexicon import Ideas, lexicon
from importer.vocabulary.result_words import result_words
from importer.vocabulary.text import fold, tokens
from importer.vocabulary.units import Unit, parse_unit

_GROUP = re.compile(r"[(\[]([^()\[\]]{2,40})[)\]]")
_REPEATS = re.compile(r"[(\[]?\bn\s?=\s?\d{1,2}\b[)\]]?")
"""Number of determinations: "(n = 2)"."""
_LIMITS: Ideas = frozenset({"LIMIT_MAX", "LIMIT_MIN", "MIN", "AGREED"})
_BOUNDS = "<>≤≥±"


def without_limits(text: str) -> tuple[str, Unit | None]:
    """The label without brackets that hold a limit (numbers with a word for limits, a sign or a range, and a unit),
    and that unit; without the number of determinations.

    Sizes of sieves and mills stay ("(2.5 – 2.8 mm)"), and so does a number by itself ("(65 °C)").
    """
    if "=" in text:
        text = _REPEATS.sub(" ", text)
    if "(" not in text and "[" not in text:
        return text, None
    units: list[Unit] = []
    kept = _GROUP.sub(lambda found: " " if _is_limit(found[1], units) else found.group(), text)
    return (kept, units[0] if units else None) if any(letter.isalpha() for letter in kept) else (text, None)


def limit_in(text: str) -> tuple[str, Unit | None]:
    """The limit in brackets inside a label as printed, and its unit; "" where there is none or more than one."""
    found: list[str] = []
    units: list[Unit] = []
    for group in _GROUP.finditer(text):
        # "Friability (8 min)" names a time.
        measure = parse_unit(split_value(group[1])[1] or "")
        if (measure is None or measure.dimension != "time") and _is_limit(group[1], units):
            found.append(group[1])
    return (found[0], units[0] if units else None) if len(found) == 1 else ("", None)


def _is_limit(body: str, units: list[Unit]) -> bool:
    """True for a limit; its unit is added to ``units``."""
    if not any(letter.isdigit() for letter in body):
        return False
    found = tokens(body)
    numbers = [i for i, token in enumerate(found) if token.kind == "number"]
    if not numbers:
        return False
    words = lexicon()
    bound, rest = len(numbers) > 1, ""
    for i, token in enumerate(found):
        known = words.find(token.text, token.raw) if token.kind == "word" else None
        ideas = frozenset().union(*(said for one in known[0] for said in one.meanings)) if known else frozenset()
        if token.raw in _BOUNDS or ideas & _LIMITS:
            bound = True
        elif token.raw == ":" and i < numbers[0]:
            continue
        elif token.kind != "number" and not (numbers[0] < i < numbers[-1] and _joins(token.raw)):
            rest += token.raw if token.glued or token.raw in "/°" else f" {token.raw}"
    if not bound:
        return False
    unit = parse_unit(rest.strip()) if rest.strip() else None
    if unit is None:
        return not rest.strip() and any(token.kind == "word" for token in found)
    if unit.dimension in ("length", "temperature"):
        return False
    units.append(unit)
    return True


def _joins(raw: str) -> bool:
    return raw in "-–" or fold(raw) in result_words().range_between
