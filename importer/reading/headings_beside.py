"""Headings side by side over blocks of results ("Barley" and "Malt"): each speaks of the block below it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.printed import Concern
from importer.reading.events import Event

# Headings have so many words, rows below them follow each other within this many em.
MOST_WORDS = 3
APART = 2.5


def with_headings_beside(events: Sequence[Event], lines: Sequence[Line], terms: Terms) -> list[Event]:
    """The events of a page, figures in doubt where the heading over their block speaks of something else."""
    found = list(events)
    for number, (line, below) in enumerate(pairwise(lines)):
        if not (_are_headings(line, terms) and _begin_rows(line, below, terms)):
            continue
        bottom = _bottom(lines, number)
        for at, event in enumerate(found):
            figure = event.figure
            if figure is None or figure.label_box is None or not line.box.bottom <= figure.box.middle <= bottom:
                continue
            over = _over(line.cells, figure.label_box.x0 + line.em)
            if figure.page == line.page and over is not None and terms.is_other_matter(over.text):
                concern = Concern("label-doubtful", f"It stands under the heading “{over.text}”.")
                found[at] = replace(event, figure=replace(figure, doubts=(*figure.doubts, concern)))
    return found


def _are_headings(line: Line, terms: Terms) -> bool:
    """True for a few words in each of several cells, of which one speaks of something else than malt."""
    texts = [cell.text for cell in line.cells]
    if len(texts) < 2 or any(len(text.split()) > MOST_WORDS or not text[:1].isalpha() for text in texts):
        return False
    if any(c.isdigit() or c == ":" for c in line.text) or any(terms.is_label(text) for text in texts):
        return False
    return any(terms.is_other_matter(text) and not terms.is_sure_caption(text) for text in texts)


def _begin_rows(line: Line, below: Line, terms: Terms) -> bool:
    """True where each heading stands over the first name of a row in the next line."""
    names = [cell.box.x0 for cell in below.cells if terms.is_label(cell.text)]
    return all(any(abs(cell.box.x0 - x0) < line.em for x0 in names) for cell in line.cells)


def _bottom(lines: Sequence[Line], number: int) -> float:
    """Where the blocks below a line of headings end: at a wide gap."""
    last = lines[number]
    for line in lines[number + 1 :]:
        if line.box.top - last.box.bottom > APART * line.em:
            break
        last = line
    return last.box.bottom


def _over(cells: Sequence[Cell], x: float) -> Cell | None:
    """The heading of what begins at ``x``: the last that begins left of it."""
    return next((cell for cell in reversed(cells) if cell.box.x0 <= x), None)
