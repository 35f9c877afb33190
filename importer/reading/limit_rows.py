"""Tables whose heads name limits and no results: values in the cells of names or of limits, which would be lost."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure
from importer.reading.events import Event
from importer.reading.limit_cells import is_limit_text
from importer.reading.values import split_value

IN_LABEL = Concern("label-doubtful", "The value stands in the cell of its name, and no head says that it is a result.")
AMONG_LIMITS = Concern("label-doubtful", "The value stands in a cell of limits, and no head says that it is a result.")
# A single row may hold anything.
FEWEST = 2
_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def with_results_among_limits(events: Sequence[Event], terms: Terms) -> list[Event]:
    """The rows of limits of one table, as results in doubt where most hold a value besides their limits."""
    rows = [event.figure for event in events if event.limits_only and event.figure is not None]
    found = {id(row): figure for row in rows if (figure := _result(row, terms)) is not None}
    if len(found) < FEWEST or 2 * len(found) < len(rows):
        return list(events)
    return [
        replace(event, figure=found[id(event.figure)], limits_only=False) if id(event.figure) in found else event
        for event in events
    ]


def _result(row: PrintedFigure, terms: Terms) -> PrintedFigure | None:
    if row.value:
        return None
    return _in_label(row, terms) or _in_limit(row)


def _in_label(row: PrintedFigure, terms: Terms) -> PrintedFigure | None:
    """The row of "Moisture 4.3 %": a name and a value with its unit behind it."""
    words = row.label.split()
    for cut in range(1, len(words)):
        name, text = " ".join(words[:cut]).rstrip(":= "), " ".join(words[cut:])
        value, unit, _ = split_value(text)
        if not (_NUMBER.fullmatch(value) and terms.is_label(name) and not terms.is_label(text)):
            continue
        if unit is None or terms.is_unit(unit):
            box = row.label_box or row.box
            return replace(row, label=name, value=value, unit=unit or row.unit, box=box, doubts=(*row.doubts, IN_LABEL))
    return None


def _in_limit(row: PrintedFigure) -> PrintedFigure | None:
    """The row of "4.3 % (max. 5.0)" under a head of limits."""
    value, unit, limits = split_value(row.spec)
    if row.low or row.high or not _NUMBER.fullmatch(value) or not (limits and is_limit_text(limits)):
        return None
    return replace(row, value=value, unit=unit or row.unit, spec=limits, doubts=(*row.doubts, AMONG_LIMITS))
