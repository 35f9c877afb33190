"""Certificates of several batches that stand side by side on one page, each with its own batch number above."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from importer.reading.events import Event
from importer.vocabulary.text import bare
from importer.vocabulary.units import split_unit

# Points: entries of one line, and how far left of its caption a certificate may begin.
SAME_LINE = 3.0
MARGIN = 6.0
MIN_FIGURES = 2


@dataclass(frozen=True, slots=True)
class _Row:
    """Batch numbers on one line: where each certificate begins, and the name of its lane."""

    y: float
    starts: tuple[float, ...]
    lanes: tuple[str, ...]

    def lane(self, x: float) -> str | None:
        found = None
        for start, lane in zip(self.starts, self.lanes, strict=True):
            if x >= start - MARGIN:
                found = lane
        return found


def with_lanes(events: Sequence[Event]) -> list[Event]:
    """The events of a page, those of certificates side by side parted by the batch number that they stand under."""
    rows = _rows(events)
    if not rows:
        return list(events)
    paired = _paired_lines(events)
    shared = [replace(event, lane=_lane_of(event, rows, paired)) for event in events]
    count = Counter(event.lane for event in shared if event.figure is not None)
    lanes = [lane for row in rows for lane in row.lanes]
    return shared if all(count[lane] >= MIN_FIGURES for lane in lanes) else list(events)


def _rows(events: Sequence[Event]) -> list[_Row]:
    # "Lot" may head a column of results as well: what has a unit is no batch number.
    entries = [
        e
        for e in events
        if e.header is not None and e.header.key == "batch" and e.lane is None and split_unit(e.header.text)[1] is None
    ]
    entries.sort(key=lambda event: event.place)
    rows: list[_Row] = []
    while entries:
        first = entries[0]
        line = [e for e in entries if e.place.y - first.place.y < SAME_LINE]
        entries = entries[len(line) :]
        line.sort(key=lambda event: event.place.x)
        names = [bare(e.header.text) for e in line if e.header is not None]
        if len(names) > 1 and len(set(names)) == len(names):
            rows.append(_Row(first.place.y, tuple(e.place.x for e in line), tuple(names)))
    return rows


def _paired_lines(events: Sequence[Event]) -> set[int]:
    """Heights (in lines) at which one entry is given more than once: those belong to the certificates below."""
    count = Counter((round(e.place.y / SAME_LINE), e.header.key) for e in events if e.header is not None)
    return {y for (y, _), times in count.items() if times > 1}


def _lane_of(event: Event, rows: Sequence[_Row], paired: set[int]) -> str | None:
    if event.lane is not None:
        return event.lane
    above = [row for row in rows if event.place.y > row.y - SAME_LINE]
    if above:
        row = above[-1]
    elif event.header is not None and round(event.place.y / SAME_LINE) in paired:
        row = rows[0]
    else:
        return None
    figure = event.figure
    x = figure.label_box.x0 if figure is not None and figure.label_box is not None else event.place.x
    return row.lane(x)
