"""Blocks of header entries beside a table."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from importer.layout.lines import Line
from importer.layout.tables import Table
from importer.layout.terms import Terms
from importer.reading.events import Event
from importer.reading.pairs import free_events
from importer.words import Page


def beside_events(
    block: Sequence[Line], tables: Sequence[Table], lines: Sequence[Line], page: Page, terms: Terms, later: bool
) -> list[Event]:
    """What a block says. What it says of the last delivery is in doubt, and begins no other batch within the table."""
    events = free_events(block, frozenset(), page, terms, later=later)
    if not any(len(line.cells) == 1 and "previous" in terms.roles(line.text) for line in block):
        return events
    top = min(line.box.top for line in block)
    rows = [[lines[i].box for i in table.lines] for table in tables if table.lines]
    extents = [(min(box.top for box in boxes), max(box.bottom for box in boxes)) for boxes in rows]
    above = min((start for start, end in extents if start <= top < end), default=top)
    return [_of_last(event, above) for event in events]


def _of_last(event: Event, above: float) -> Event:
    if event.header is None:
        return event
    header = replace(event.header, sure=False, several=True)
    return replace(event, header=header, place=event.place._replace(y=min(event.place.y, above)))
