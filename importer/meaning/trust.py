"""Whether an optical reading can be believed: two readers of different make must agree on number and bound."""

from __future__ import annotations

from importer.meaning.recognised import Doubt, Recognised
from importer.reading.numbers import Convention, Number, read_number, same_number
from importer.vocabulary.units import split_unit
from importer.words import Page


def reading_doubts(figure: Recognised, page: Page, convention: Convention) -> list[Doubt]:
    """Why the reading of a figure on this page cannot be taken on trust; empty for a text layer."""
    if page.reading != "ocr":
        return [Doubt("reading-doubtful", page.doubt)] if page.doubt else []
    if page.doubt:
        return [Doubt("reading-doubtful", page.doubt)]
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
    if figure.number.decimals >= 3:
        return [Doubt("reading-doubtful", "Three decimals on a scan may be a thousands separator.")]
    return []


def _number(text: str, convention: Convention) -> Number | None:
    number = read_number(text, convention)
    if number is None:
        number = read_number(split_unit(text)[0], convention)
    return number


def _agree(one: Number, other: Number) -> bool:
    return one.decimals == other.decimals and same_number(one, other)
