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
    """What a block says: of the whole table beside it, from its first row on. What it says of the last delivery is in
    doubt."""
    top = min(line.box.top for line in block)
    bottom = max(line.box.bottom for line in block)
    rows = [[lines[i].box for i in table.lines] for table in tables if table.lines]
    starts = [min(box.top for box in boxes) for boxes in rows if max(box.bottom for box in boxes) > top]
    above = min((start for start in starts if start < bottom), default=top)
    former = any(len(line.cells) == 1 and "previous" in terms.roles(line.text) for line in block)
    return [_of_table(e, above, former) for e in free_events(block, frozenset(), page, terms, later=later)]


def _of_table(event: Event, above: float, former: bool) -> Event:
    if event.header is None:
        return event
    header = replace(event.header, sure=False, several=True) if former else event.header
    return replace(event, header=header, place=event.place._replace(y=min(event.place.y, above)))
