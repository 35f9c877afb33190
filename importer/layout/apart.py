"""Values with units, names or limits so close behind them that they stand in one cell, parted where columns meet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms

# Points within which words of a column begin, or end, at one place; and lines that have to show that.
FLUSH, FEWEST_LINES = 0.6, 3


def seams(heads: Sequence[Line], lines: Sequence[Line], terms: Terms) -> list[float]:
    """Places at which two columns meet with a word space only ("4.3 max. 4.6" under "6257 Specification"): numbers end
    there, and what stands behind them begins there, in all lines."""
    spaces = [
        (left.x1, right.x0)
        for line in heads
        for cell in line.cells
        for left, right in pairwise(cell.words)
        if terms.roles(" ".join(word.text for word in cell.words if word.x0 >= right.x0))
    ]
    return [place for start, end in spaces if (place := _seam(start, end, lines, terms)) is not None]


def _seam(start: float, end: float, lines: Sequence[Line], terms: Terms) -> float | None:
    """The place between ``start`` and ``end`` at which columns meet; None where words reach over it."""
    ends: list[float] = []
    starts: list[float] = []
    beginnings: set[int] = set()
    for line in lines:
        for cell in line.cells:
            if not (cell.box.x0 < end and cell.box.x1 > start):
                continue
            before = [word for word in cell.words if word.box.centre < (start + end) / 2]
            behind = cell.words[len(before) :]
            ends += [before[-1].x1] if before else []
            starts += [behind[0].x0] if behind else []
            if before and behind and terms.is_value(" ".join(word.text for word in before)):
                beginnings.add(round(before[0].x0))
    low, high = max([start, *ends]), min([end, *starts])
    flush = (
        max(ends, default=0.0) - min(ends, default=0.0) < FLUSH
        and max(starts, default=0.0) - min(starts, default=0.0) < FLUSH
    )
    return (low + high) / 2 if low < high and flush and len(ends) >= FEWEST_LINES and len(beginnings) > 1 else None


def with_units_apart(line: Line, terms: Terms) -> Line:
    """The line with numbers and the units close behind them in cells of their own, as where their columns meet."""
    cells: list[Cell] = []
    for cell in line.cells:
        texts = [word.text for word in cell.words]
        cuts = range(1, len(texts)) if terms.is_value(cell.text) else ()
        cut = next((n for n in cuts if terms.is_unit(" ".join(texts[n:]))), 0)
        cells += [make_cell(cell.words[:cut]), make_cell(cell.words[cut:])] if cut else [cell]
    return replace(line, cells=tuple(cells))


def names_apart(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines whose names stand close behind their values ("%  4.3 Moisture"), with these in cells of their own; none
    unless they are most of the lines and no other cell is a name."""
    hidden = [line for line in lines if hides_name(line, terms)]
    alone = any(
        terms.is_label(cell.text) and not (terms.is_unit(cell.text) or _hidden_name(cell, terms))
        for line in lines
        for cell in line.cells
    )
    return [] if alone or 2 * len(hidden) <= len(lines) else [_with_names_apart(line, terms) for line in hidden]


def hides_name(line: Line, terms: Terms) -> bool:
    """True for a name behind the only value of a line: a number counts its name where the value stands apart."""
    *before, last = line.cells
    values = (terms.is_value(cell.text) and not terms.is_unit(cell.text) for cell in before)
    return bool(_hidden_name(last, terms)) and not any(values)


def _with_names_apart(line: Line, terms: Terms) -> Line:
    """The line with the names close behind values in cells of their own."""
    cells: list[Cell] = []
    for cell in line.cells:
        cut = _hidden_name(cell, terms)
        cells += [make_cell(cell.words[:cut]), make_cell(cell.words[cut:])] if cut else [cell]
    return replace(line, cells=tuple(cells))


def _hidden_name(cell: Cell, terms: Terms) -> int:
    """Where in a cell a name begins behind a value; 0 for nowhere."""
    texts = [word.text for word in cell.words]
    if not texts[0][:1].isdigit() or not terms.is_value(texts[0]):
        return 0
    name = " ".join(texts[1:])
    return int(bool(name) and terms.is_label(name) and not terms.is_unit(name))
