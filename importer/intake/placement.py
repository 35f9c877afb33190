"""A table of cells laid out as a page of words, so that later stages read spreadsheets and PDF files alike.

Rows are a fixed pitch apart and columns as wide as their texts: a cell never reaches into the next filled one, just as
on a print. Lengths are points.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import pairwise

from importer.errors import TooLarge
from importer.intake.cells import Cell, Table
from importer.limits import MAX_WORDS_PER_PAGE
from importer.words import Page, Word

ROW_PITCH = 14.0
TEXT_SIZE = 9.0
CHARACTER = 5.0
SPACE = 3.0
COLUMN_GAP = 18.0
MARGIN = 36.0
# More empty rows or columns than this between filled ones say nothing that fewer do not.
MOST_EMPTY = 3
EMPTY_COLUMN = 14.0


def to_page(table: Table, name: str) -> Page:
    """The page of a table. Raises TooLarge where it has more words than a page may have."""
    filled = Counter(row for row, _ in table.cells)
    tops = _row_tops(table, filled)
    lefts = _column_lefts(table)
    words: list[Word] = []
    hidden: list[Word] = []
    for (row, column), cell in sorted(table.cells.items()):
        into = hidden if cell.hidden else words
        into.extend(_words(cell, column, tops[row], lefts, stacked=filled[row] == 1))
        if len(words) > MAX_WORDS_PER_PAGE:
            raise TooLarge(f"{name} has a table of more than {MAX_WORDS_PER_PAGE} words. Split it and try again.")
    everything = [*words, *hidden]
    return Page(
        number=table.number,
        width=max((word.x1 for word in everything), default=0.0) + MARGIN,
        height=max((word.bottom for word in everything), default=0.0) + MARGIN,
        words=tuple(words),
        reading="spreadsheet",
        doubt=table.doubt,
        hidden=tuple(hidden),
    )


def _row_tops(table: Table, filled: Counter[int]) -> dict[int, float]:
    """The top of each filled row.

    The lines of a cell that stands alone in its row are lines of their own; beside others they are one entry.
    """
    lines = {row: cell.text.count("\n") + 1 if filled[row] == 1 else 1 for (row, _), cell in table.cells.items()}
    tops: dict[int, float] = {}
    top, before = MARGIN, None
    for row in sorted(lines):
        if before is not None:
            top += ROW_PITCH * (lines[before] + min(row - before - 1, MOST_EMPTY))
        tops[row] = top
        before = row
    return tops


def _width(line: str) -> float:
    parts = line.split()
    return sum(len(part) for part in parts) * CHARACTER + SPACE * (len(parts) - 1) if parts else 0.0


def _column_lefts(table: Table) -> dict[int, float]:
    """The left edge of every filled column, and of one beyond the last.

    A text may run over empty cells to its right, as on a print, but not into a filled one: where it would, its own
    column is widened.
    """
    used = sorted({column for _, column in table.cells})
    if not used:
        return {}
    place = {column: index for index, column in enumerate(used)}
    # By first and following filled column: the room that the widest text between them needs.
    needs: dict[tuple[int, int], float] = {}
    rows: dict[int, list[int]] = {}
    for row, column in sorted(table.cells):
        rows.setdefault(row, []).append(column)
    for row, columns in rows.items():
        for column, following in pairwise(columns):
            span = (place[column], place[following])
            room = _width(table.cells[row, column].text.replace("\n", " ")) + COLUMN_GAP
            needs[span] = max(needs.get(span, 0.0), room)
    empty = [min(after - before - 1, MOST_EMPTY) * EMPTY_COLUMN for before, after in pairwise([*used, used[-1] + 1])]
    widths = [EMPTY_COLUMN + gap for gap in empty]
    for (start, end), room in sorted(needs.items(), key=lambda need: (need[0][1] - need[0][0], need[0][0])):
        widths[start] += max(0.0, room - sum(widths[start:end]))
    lefts: dict[int, float] = {}
    left = MARGIN
    for column, width in zip(used, widths, strict=True):
        lefts[column] = left
        left += width
    lefts[used[-1] + 1] = left
    return lefts


def _words(cell: Cell, column: int, top: float, lefts: dict[int, float], *, stacked: bool) -> Iterator[Word]:
    lines = cell.text.split("\n") if stacked else [cell.text.replace("\n", " ")]
    for number, line in enumerate(lines):
        x = lefts[column] + _indent(cell, column, _width(line), lefts)
        y = top + number * ROW_PITCH
        for part in line.split():
            end = x + len(part) * CHARACTER
            yield Word(part, x, y, end, y + TEXT_SIZE, size=TEXT_SIZE, bold=cell.bold)
            x = end + SPACE


def _indent(cell: Cell, column: int, width: float, lefts: dict[int, float]) -> float:
    """How far a centred text of a merged cell is moved to the middle of its columns."""
    if not cell.centred or cell.columns < 2:
        return 0.0
    beyond = min((left for other, left in lefts.items() if other >= column + cell.columns), default=None)
    right = max(lefts.values()) if beyond is None else beyond
    return max(0.0, (right - COLUMN_GAP - lefts[column] - width) / 2)
