"""Whether a reading can be believed: nothing is crossed out, and two readers of a scan agree on number and bound."""

from __future__ import annotations

import re

from importer.meaning.possible import possible_range, within_possible
from importer.meaning.recognised import Doubt, Recognised
from importer.reading.numbers import Convention, Number, read_number, same_number
from importer.vocabulary.result_words import result_words
from importer.vocabulary.units import split_unit
from importer.words import Page

SURE_WORD = 0.8
# What is left of letters that could not be read.
_SCRAPS = re.compile(r"[©®™¢£¥{}~^]|-{2,}|—{2,}|_{2,}")


def reading_doubts(figure: Recognised, page: Page, convention: Convention) -> list[Doubt]:
    """Why the reading of a figure on this page cannot be taken on trust; empty for a clean text layer."""
    if page.reading != "ocr":
        doubts = [Doubt("reading-doubtful", page.doubt)] if page.doubt else []
        return [*doubts, *(Doubt("reading-doubtful", reason) for reason in _marred(figure, page))]
    if page.doubt:
        return [Doubt("reading-doubtful", page.doubt)]
    if _SCRAPS.search(figure.printed.label):
        reason = f"The label was not read cleanly (“{figure.printed.label}”); words of it may be lost."
        return [Doubt("reading-doubtful", reason)]
    if figure.number.kind == "word" and _is_known_word(figure):
        return []
    if figure.number.kind not in ("number", "range"):
        return [
            Doubt(
                "reading-doubtful", "It was read from a scan and is not a number that a second reading could confirm."
            )
        ]
    seen = [text for text in (reading.text for reading in figure.printed.second) if any(c.isdigit() for c in text)]
    if not seen:
        return [Doubt("reading-doubtful", "It was read from a scan, and no second reading confirms it.")]
    numbers = [_number(text, convention) for text in seen]
    if not any(number is not None and _agree(number, figure.number) for number in numbers):
        other = "”, “".join(seen[:2])
        return [Doubt("reading-doubtful", f"One reading of the scan gives “{figure.number.text}”, another “{other}”.")]
    dissent = [
        text
        for text, number in zip(seen, numbers, strict=True)
        if number is not None and not _agree(number, figure.number)
    ]
    if dissent:
        return [Doubt("reading-doubtful", f"Readings of the scan differ: “{figure.number.text}” and “{dissent[0]}”.")]
    if figure.number.decimals >= 3 and _may_be_thousands(figure):
        return [Doubt("reading-doubtful", "Three decimals on a scan may be a thousands separator.")]
    return []


def _is_known_word(figure: Recognised) -> bool:
    """True for a word that describes results as it stands ("klar"): one misread is hardly ever another one."""
    known = figure.printed.value.strip(" .").casefold() in result_words().described_as_written
    return known and figure.printed.confidence >= SURE_WORD


def _may_be_thousands(figure: Recognised) -> bool:
    """False where a thousand times the number is not possible: 1.539 mPa·s is no 1539."""
    value, unit = figure.number.value, figure.unit
    if value is None or unit is None or possible_range(figure.parameter, unit) is None:
        return True
    return within_possible(figure.parameter, unit, 1000 * value)


def _marred(figure: Recognised, page: Page) -> list[str]:
    """What is wrong with the place of the value or of the label: a line through it, another text on it."""
    places = [place for place in (figure.printed.box, figure.printed.label_box) if place is not None]
    return [
        reason
        for box, reason in page.marred
        if any(place.x0 < box.centre < place.x1 and place.top < box.middle < place.bottom for place in places)
    ]


def _number(text: str, convention: Convention) -> Number | None:
    number = read_number(text, convention)
    if number is None:
        number = read_number(split_unit(text)[0], convention)
    return number


def _agree(one: Number, other: Number) -> bool:
    return one.decimals == other.decimals and same_number(one, other)
