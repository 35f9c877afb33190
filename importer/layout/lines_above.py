"""Lines above the first row of a table that belong to it: rows of unknown names, entries of its columns, a section."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.heads import is_header_line
from importer.layout.lines import Line
from importer.layout.terms import Terms

PROSE_WORDS = 9


def is_prose(line: Line, terms: Terms) -> bool:
    if len(line.cells) > 1:
        return False
    text = line.cells[0].text
    return len(text.split()) >= PROSE_WORDS and not terms.is_label(text)


def rows_above(lines: Sequence[Line], run: Sequence[int], used: set[int], terms: Terms) -> list[int]:
    """Rows of unknown names above the first known one, with section rows between them."""
    found: list[int] = []
    below = lines[run[0]]
    for i in range(run[0] - 1, -1, -1):
        line = lines[i]
        if i in used or below.box.top - line.box.bottom > 2 * line.em or is_prose(line, terms):
            break
        below = line
        if len(line.cells) == 1:
            continue
        values = line.cells[1:]
        plain = all(terms.is_value(cell.text) or terms.is_unit(cell.text) for cell in values)
        if not plain or terms.caption(line.cells[0].text.rstrip(": ")) or is_header_line(line, terms):
            break
        found.insert(0, i)
    return found


def captions_above(lines: Sequence[Line], first: int, used: set[int], terms: Terms) -> list[int]:
    """Lines right above a run that give each of its value columns a batch number, a date, a malt."""
    found: list[int] = []
    below = lines[first]
    for i in range(first - 1, -1, -1):
        line = lines[i]
        if i in used or below.box.top - line.box.bottom > 2 * line.em:
            break
        if len(line.cells) == 1 and not found and first - i <= 2:
            # A section row may stand between the batch rows and the first figure.
            below = line
            continue
        captions = [terms.caption(cell.text.rstrip(": ")) is not None for cell in line.cells]
        if len(line.cells) < 3 or not captions[0] or any(captions[1:]) or terms.is_label(line.cells[0].text):
            break
        # Heads of columns are no entries: "Item", before "EBC unit", is none of them a malt.
        if 2 * sum(bool(terms.roles(cell.text)) for cell in line.cells[1:]) > len(line.cells) - 1:
            break
        if line.box.x1 < _values_from(lines[first]):
            break
        found.insert(0, i)
        below = line
    return found


def section_above(lines: Sequence[Line], first: int, used: set[int], terms: Terms) -> list[int]:
    """The line right above a run that names the parameter, or the sieves, of the rows below it ("Proteins (% dry)")."""
    line, below = lines[max(first - 1, 0)], lines[first]
    if first == 0 or first - 1 in used or len(line.cells) > 1 or ":" in line.text or is_prose(line, terms):
        return []
    near = below.box.top - line.box.bottom < 2 * line.em and abs(line.box.x0 - below.box.x0) < 2 * line.em
    named = terms.is_label(line.text) or terms.is_sieving(line.text)
    valued = any(terms.is_value(cell.text) and not terms.is_unit(cell.text) for cell in below.cells[1:])
    return [first - 1] if near and named and valued and terms.caption(line.text) is None else []


def _values_from(line: Line) -> float:
    """Where the second column of a line begins."""
    return line.cells[1].box.x0 if len(line.cells) > 1 else line.box.x0
