"""What the text around a table and below it says of its figures: headings of other samples, notes to single results."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace

from importer.layout.lines import Line
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.events import Event
from importer.vocabulary.captions import (
    basis_statement,
    document_title,
    family_statement,
    looks_like_batch,
    mash_statement,
)

# Lines of a heading stand no farther from each other, and from the table, than this (em).
NEAR = 3.0
MAX_LINES = 4
_SIGNED = re.compile(r"^(?P<value>.*\d.*?)\s*(?P<sign>[*†‡§#¹²³⁴⁵]{1,3}|(?<=\s)\(?\d\))$")
_NUMBERS = ("batch", "order", "certificate")


def heading_above(lines: Sequence[Line], first: int, used: Iterable[int]) -> tuple[str, ...]:
    """The lines of one cell right above line ``first`` that no table has taken, from top to bottom."""
    taken = set(used)
    found: list[str] = []
    below = lines[first]
    for i in range(first - 1, max(-1, first - 1 - MAX_LINES), -1):
        line = lines[i]
        if i in taken or len(line.cells) > 1 or below.box.top - line.box.bottom > NEAR * line.em:
            break
        found.insert(0, line.text)
        below = line
    return tuple(found)


def of_other_kind(heading: Sequence[str], terms: Terms) -> Concern | None:
    """A doubt where the heading of a later table speaks of something else than the malt of the sheet."""
    for text in heading:
        if terms.is_other_matter(text) or document_title(text) in ("specification", "typical"):
            return Concern("label-doubtful", f"Its table stands under the heading “{text}”.")
    return None


def numbers_named(texts: Iterable[str], terms: Terms) -> dict[str, str]:
    """Batch, order and certificate numbers that headings name with their captions, the text of each by its number."""
    found: dict[str, str] = {}
    for text in texts:
        words = text.replace(":", " ").split()
        for at, word in enumerate(words):
            number = word.strip(",;()")
            if not looks_like_batch(number) or at == 0:
                continue
            captions = (" ".join(words[max(0, at - n) : at]) for n in (1, 2, 3))
            if any(terms.caption(caption) in _NUMBERS for caption in captions):
                found[number] = text
    return found


def of_other_number(figure: PrintedFigure, named: dict[str, str], headers: Sequence[PrintedHeader]) -> Concern | None:
    """A doubt where a heading over a figure names a number that is none of those in the head of its sheet."""
    known = " ".join(_plain(entry.text) for entry in headers)
    for number, text in named.items():
        if text in (*figure.section, *figure.heading) and _plain(number) not in known:
            return Concern("label-doubtful", f"Its table stands under the heading “{text}”.")
    return None


def _plain(text: str) -> str:
    return re.sub(r"\W+", "", text).casefold()


def with_notes(events: Sequence[Event], lines: Sequence[Line]) -> list[Event]:
    """Figures without the footnote signs behind their values; in doubt where the note says something that matters."""
    return [_with_note(event, lines) for event in events]


def _with_note(event: Event, lines: Sequence[Line]) -> Event:
    figure = event.figure
    match = _SIGNED.match(figure.value) if figure is not None else None
    if figure is None or match is None:
        return event
    sign = match["sign"]
    note = next((line.text for line in lines if line.text.startswith(sign) and len(line.text) > len(sign) + 2), None)
    if note is None:
        return event if sign[-1] == ")" else replace(event, figure=replace(figure, value=match["value"]))
    figure = replace(figure, value=match["value"])
    if not (basis_statement(note) or family_statement(note) or mash_statement(note)):
        figure = replace(figure, doubts=(*figure.doubts, Concern("label-doubtful", f"A note says of it: “{note}”.")))
    return replace(event, figure=figure)
