"""A row that the reading missed: what stands in a box that a person draws on a page, from its text or by eye."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from importer.reading.numbers import read_number
from importer.vocabulary.units import parse_unit, split_unit
from importer.words import Box, Word


@dataclass(frozen=True, slots=True)
class RowRead:
    """What was read in a box, as label, value and unit; "" for what was not found."""

    label: str
    value: str
    unit: str


def read_box(
    data: bytes, name: str, number: int, reading: str, box: tuple[float, float, float, float], width: float
) -> RowRead:
    """Reads a box of a page (points from the top left). Runs in the drawing process."""
    from importer.drawing.pages import page_words

    words = page_words(data, name, number, reading, Box(*box), width)
    return row_of([word.text for word in _in_order([word for word in words if _inside(word, Box(*box))])])


def _inside(word: Word, box: Box) -> bool:
    return box.x0 <= (word.x0 + word.x1) / 2 <= box.x1 and box.top <= (word.top + word.bottom) / 2 <= box.bottom


def _in_order(words: Sequence[Word]) -> list[Word]:
    """By lines, each from left to right."""
    lines: list[list[Word]] = []
    for word in sorted(words, key=lambda one: one.top + one.bottom):
        middle = (word.top + word.bottom) / 2
        if lines and lines[-1][-1].top <= middle <= lines[-1][-1].bottom:
            lines[-1].append(word)
        else:
            lines.append([word])
    return [word for line in lines for word in sorted(line, key=lambda one: one.x0)]


def row_of(texts: Sequence[str]) -> RowRead:
    """Words of one row as label, value and unit: the last number is the value, a unit may stand behind it."""
    for at in range(len(texts) - 1, -1, -1):
        number = read_number(texts[at], None)
        rest, unit = split_unit(texts[at])
        if number is None and unit is not None and rest:
            number = read_number(rest, None)
        if number is None or number.kind not in ("number", "range"):
            continue
        if at == 0 and len(texts) > 2:
            continue  # "2.5 mm" at the beginning is the name of a sieve
        behind = " ".join(texts[at + 1 : at + 3])
        known = next((text for text in (behind, *texts[at + 1 : at + 2]) if text and parse_unit(text) is not None), "")
        value = rest if unit is not None and rest else texts[at]
        sign = texts[at - 1] if at and texts[at - 1] in ("<", ">", "≤", "≥") else ""
        label = texts[: at - 1] if sign else texts[:at]
        return RowRead(" ".join(label), f"{sign} {value}".strip(), (unit.text if unit is not None else known) or known)
    return RowRead(" ".join(texts), "", "")
