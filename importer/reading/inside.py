"""A label and its value written without any gap ("Moisture 4.5 %")."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from importer.layout.terms import Terms
from importer.reading.entries import SENTENCE_WORDS
from importer.reading.listed import listed
from importer.reading.numbers import read_number
from importer.reading.pieces import Piece
from importer.reading.rows import clean_label
from importer.reading.values import split_value
from importer.vocabulary.units import parse_unit
from importer.words import Box, Word

# Sizes of sieves and mills, temperatures and times stand in labels.
_CONDITIONS = frozenset({"length", "temperature", "time", "mass"})
# A word of these before a number says that it is not the result.
_NO_RESULT = frozenset({"min", "max", "spec", "typical", "previous"})


@dataclass(frozen=True, slots=True)
class Inside:
    """``rival`` is another value that could be the result; "" where there is none."""

    label: str
    text: str
    box: Box
    rival: str = ""


def value_inside(piece: Piece, terms: Terms) -> Inside | None:
    """The longest known label with a value behind it; the shortest where limits and a method follow the value."""
    words = piece.cell.words
    if not 2 <= len(words) <= SENTENCE_WORDS or not any(c.isdigit() for c in piece.text):
        return None
    cuts = [cut for cut in range(1, len(words)) if _begins_value(words, cut) and terms.is_label(_label(words, cut))]
    for cut in cuts:
        if listed(_text(words[cut:])) is not None:
            return Inside(_label(words, cut), _text(words[cut:]), _box(words[cut:]))
    for cut in reversed(cuts):
        if terms.is_value(_text(words[cut:])) and not _is_size(words, cut, terms):
            cut = _range_begins(words, cuts, cut)
            return _first_value(words, cuts, cut, terms) or Inside(
                _label(words, cut), _text(words[cut:]), _box(words[cut:])
            )
    return None


def _is_size(words: Sequence[Word], cut: int, terms: Terms) -> bool:
    """True for the sieve size that ends a name: "Between 2.5 and 2.8 mm"."""
    unit = parse_unit(split_value(_text(words[cut:]))[1] or "")
    return unit is not None and unit.dimension == "length" and terms.is_label(_text(words))


def _begins_value(words: Sequence[Word], cut: int) -> bool:
    text = words[cut].text
    return (text[:1].isdigit() or text[:1] in "<>≤≥+-–−") and not words[cut - 1].text.endswith(",")


def _range_begins(words: Sequence[Word], cuts: Sequence[int], last: int) -> int:
    """Where a range begins whose end is the value from ``last`` on ("10 - 15 min"); ``last`` where there is none."""
    for cut in cuts:
        number = read_number(split_value(_text(words[cut:]))[0], None) if cut < last else None
        if number is not None and number.bound == "range":
            return cut
    return last


def _first_value(words: Sequence[Word], cuts: Sequence[int], last: int, terms: Terms) -> Inside | None:
    """The value that the label before another one holds already ("Moisture 4.3 %, typical 4.5"), None without one."""
    for cut in cuts:
        comma = next((i + 1 for i in range(cut, last) if words[i].text.endswith((",", ";"))), last)
        ends = (end for end in range(comma, cut, -1) if terms.is_value(_text(words[cut:end]).rstrip(",;")))
        end = next(ends, 0)
        if end and _may_be_result(_text(words[cut:end]).rstrip(",;"), words[end:last], terms):
            return Inside(
                _label(words, cut), _text(words[cut:end]).rstrip(",;"), _box(words[cut:end]), _text(words[last:])
            )
    return None


def _may_be_result(text: str, between: Sequence[Word], terms: Terms) -> bool:
    """True for a value in a unit of results, and for a number before another one or before "typical", "max." ..."""
    unit = parse_unit(split_value(text)[1] or "")
    if unit is not None:
        return unit.doubtful or unit.dimension not in _CONDITIONS
    return not between or any(_NO_RESULT.intersection(terms.roles(word.text)) for word in between)


def _label(words: Sequence[Word], cut: int) -> str:
    return clean_label(_text(words[:cut]))


def _text(words: Sequence[Word]) -> str:
    return " ".join(word.text for word in words)


def _box(words: Sequence[Word]) -> Box:
    box = words[0].box
    for word in words[1:]:
        box = box.union(word.box)
    return box
