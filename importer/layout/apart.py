"""Values with their units or names so close behind them that they stand in one cell, parted where columns meet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms


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
