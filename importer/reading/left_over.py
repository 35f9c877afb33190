"""Values that no row, table or entry has taken, though a name stands beside or over them: never without a trace."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure
from importer.reading.events import Event, Place
from importer.reading.numbers import is_word
from importer.reading.readings import readings_at, unread_beside
from importer.reading.rows import clean_label
from importer.reading.values import split_value
from importer.words import Box, Page

OUTSIDE = Concern("label-doubtful", "It stands in no row that was understood; the name may belong to another value.")
# A name stands over its value within this many em.
OVER = 1.6
# A name has so many letters at least.
SHORTEST = 3


def left_over_events(
    lines: Sequence[Line], events: Sequence[Event], page: Page, terms: Terms, headed: frozenset[int]
) -> list[Event]:
    """A figure in doubt for each name without one that has a value beside or below it.

    ``headed`` are the lines of tables whose names stand over the values; of those a row with a unit counts only.
    """
    if not any(event.figure is not None for event in events):
        return []
    taken = [box for event in events for box in _boxes(event)]
    found: list[Event] = []
    for number, line in enumerate(lines):
        for at, cell in enumerate(line.cells):
            label = clean_label(cell.text)
            if not _is_name(label, terms) or _is_taken(cell.box, taken):
                continue
            if number in headed and not any(terms.is_unit(other.text) for other in line.cells[at + 1 :]):
                continue
            value = _beside(line, at, terms)
            if value is None and number not in headed:
                value = _under(lines, number, cell, terms)
            if value is None or _is_taken(value.box, taken):
                continue
            taken.append(value.box)
            found.append(_event(label, cell, value, page))
    return found


def _boxes(event: Event) -> list[Box]:
    """Where an event stands on its page: its value, its name, or its entry."""
    if event.figure is not None:
        own = event.figure
        return [own.box, *([own.label_box] if own.label_box is not None else [])]
    return [event.header.box] if event.header is not None else []


def _is_taken(box: Box, taken: Sequence[Box]) -> bool:
    return any(
        min(box.x1, other.x1) > max(box.x0, other.x0) and min(box.bottom, other.bottom) > max(box.top, other.top) + 1
        for other in taken
    )


def _is_name(label: str, terms: Terms) -> bool:
    if sum(c.isalpha() for c in label) < SHORTEST or terms.is_unit(label):
        return False
    return terms.is_label(label) and not terms.roles(label) and not terms.caption(label)


def _is_result(text: str, terms: Terms) -> bool:
    """True for a number with or without its unit, and for a word that describes a result ("clear")."""
    if is_word(text):
        return True
    if terms.is_unit(text) or terms.is_label(text) or terms.caption(text):
        return False
    return terms.is_value(text)


def _beside(line: Line, at: int, terms: Terms) -> Cell | None:
    """The first result right of a name, before the next name."""
    for cell in line.cells[at + 1 :]:
        if _is_result(cell.text, terms):
            return cell
        if terms.is_label(cell.text) and not terms.is_unit(cell.text):
            return None
    return None


def _under(lines: Sequence[Line], number: int, name: Cell, terms: Terms) -> Cell | None:
    """The result on the next line that stands under a name."""
    if number + 1 >= len(lines) or lines[number + 1].box.top - lines[number].box.bottom > OVER * lines[number].em:
        return None
    below = lines[number + 1].cells
    for at, cell in enumerate(below):
        if min(cell.box.x1, name.box.x1) > max(cell.box.x0, name.box.x0) and _is_result(cell.text, terms):
            # A number before another name counts that.
            return None if any(terms.is_label(other.text) for other in below[at + 1 : at + 2]) else cell
    return None


def _event(label: str, name: Cell, cell: Cell, page: Page) -> Event:
    value, unit, spec = split_value(cell.text)
    figure = PrintedFigure(
        label=label,
        value=value,
        unit=unit,
        page=page.number,
        box=cell.box,
        label_box=name.box,
        spec=spec,
        confidence=cell.confidence,
        second=readings_at(page, cell.box),
        doubts=(OUTSIDE, *unread_beside(page, cell.box)),
        # Nothing that a row gives is doubted for it.
        in_sentence=True,
    )
    return Event(Place(page.number, cell.box.middle, cell.box.x0), figure)
