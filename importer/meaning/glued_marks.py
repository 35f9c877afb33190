"""Last digits that may be marks of footnotes, set as large as the number: "4.31" for "4.3" with footnote 1."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from importer.meaning.footnotes import signs_behind
from importer.meaning.recognised import Doubt, Recognised
from importer.reading.numbers import Convention, read_number
from importer.reading.values import split_value
from importer.vocabulary.parameters import parameters

# "1) not accredited", "¹ by NIR", "1 calculated": a note of its own, which begins with its mark.
_NOTE = re.compile(r"\s*(?:[(\[]?([1-9])[)\]]|([¹²³⁴⁵⁶⁷⁸⁹])[)\]]?|([1-9])(?=\s+[^\W\d_A-Z]))\s*[^\W\d_]{2}")
_PLAIN = str.maketrans("¹²³⁴⁵⁶⁷⁸⁹", "123456789")


def glued_mark(
    figure: Recognised, figures: Sequence[Recognised], notes: Iterable[str], convention: Convention
) -> list[Doubt]:
    """A doubt where the last digit is the mark of a note, and is one more than usual and than the limits have, or the
    figures beside it."""
    number = figure.number
    if number.kind != "number" or number.decimals <= parameters()[figure.parameter].decimals:
        return []
    last = next((sign for sign in reversed(figure.printed.value) if sign.isdigit()), "")
    listed = {"".join(filter(None, found.groups())).translate(_PLAIN) for note in notes if (found := _NOTE.match(note))}
    if last not in listed or last in signs_behind(figure.printed):
        return []
    others = _decimals_of_limits(figure, convention) or _decimals_beside(figure, figures)
    if not others or 2 * sum(decimals >= number.decimals for decimals in others) >= len(others):
        return []
    return [Doubt("reading-doubtful", f"Its last digit may be the mark of footnote {last}.")]


def _decimals_of_limits(figure: Recognised, convention: Convention) -> list[int]:
    texts = (figure.printed.low, figure.printed.high, figure.printed.spec)
    numbers = (read_number(split_value(text)[0], convention) for text in texts if text)
    return [number.decimals for number in numbers if number is not None and number.kind in ("number", "range")]


def _decimals_beside(figure: Recognised, figures: Sequence[Recognised]) -> list[int]:
    """Those of the other plain numbers in the same unit."""
    return [
        other.number.decimals
        for other in figures
        if other is not figure and other.unit == figure.unit and other.number.kind == "number"
    ]
