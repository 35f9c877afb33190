"""Blocks of header entries that stand beside a table: the lines of a page parted from those of the table."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from importer.layout.head_cells import HeadCell
from importer.layout.heads import Head, next_certificate
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms

# So many captions beside a table make a block of entries; one may be a remark or a group of rows.
CAPTIONS = 2
# "This lot", "Last delivery": groups of rows rather than captions.
_SAMPLES = frozenset({"result", "previous", "typical"})


def part_blocks(lines: Sequence[Line], heads: Sequence[Head], terms: Terms) -> tuple[list[Line], list[list[Line]]]:
    """The lines without what stands beside tables, and the lines of each block beside one."""
    main = list(lines)
    blocks: list[list[Line]] = []
    for number, head in enumerate(heads):
        end = heads[number + 1].first if number + 1 < len(heads) else len(lines)
        end = next_certificate(lines, head.last + 1, end, terms)
        below = main[head.last + 1 : end]
        titled = any(_is_over_entries(cell, below, terms) for cell in head.cells)
        for is_outside in _sides(head, lines[head.first].em, below, terms):
            block = _block(main, head.first, end, is_outside, titled, terms)
            if block:
                blocks.append([line for _, line in block])
                for i, side in block:
                    main[i] = _without(main[i], side)
    return [line for line in main if line.cells], blocks


def _sides(head: Head, em: float, below: Sequence[Line], terms: Terms) -> list[Callable[[Cell], bool]]:
    """Tests for the cells left and right of the columns that a head names."""
    # "Lot no." on the line of the heads may be the first caption of a block as well as the head of a column, and
    # "Last delivery" the title of one.
    named = [
        cell for cell in head.cells if set(cell.roles) - {"number", "date"} and not _is_over_entries(cell, below, terms)
    ]
    left = min((cell.box.x0 for cell in named), default=0.0) - em
    right = max((cell.box.x1 for cell in named), default=float("inf")) + em
    return [lambda cell: cell.box.x1 < left, lambda cell: cell.box.x0 > right]


def _is_over_entries(head: HeadCell, below: Sequence[Line], terms: Terms) -> bool:
    """True for a head over captions with their entries ("Lot no.: 24-0815"), and not over names or values."""
    under = [cell for line in below for cell in line.cells if abs(cell.box.x0 - head.box.x0) < 0.5 * line.em]
    entries = sum(_is_entry(cell.text, terms) for cell in under)
    rows = [cell for cell in under if ":" not in cell.text]
    return entries >= CAPTIONS and not any(terms.is_value(cell.text) or terms.is_label(cell.text) for cell in rows)


def _is_caption(text: str, terms: Terms) -> bool:
    text = text.rstrip(": ")
    return terms.caption(text) is not None and not terms.is_label(text) and not _SAMPLES & set(terms.roles(text))


def _is_entry(text: str, terms: Terms) -> bool:
    """True for a caption with its entry ("Lot no.: 24-0815")."""
    caption, _, entry = text.partition(":")
    return bool(entry.strip()) and _is_caption(caption, terms)


def _block(
    lines: Sequence[Line], first: int, end: int, is_outside: Callable[[Cell], bool], titled: bool, terms: Terms
) -> list[tuple[int, Line]]:
    """The cells beside a table as lines of their own, with their numbers; empty where they are no header entries.

    ``titled``: a title on the line of the heads stands over them, so that captions with their entries count as well.
    """
    found: list[tuple[int, Line]] = []
    for i in range(first, end):
        cells = tuple(cell for cell in lines[i].cells if is_outside(cell))
        if cells:
            found.append((i, _line(cells, lines[i])))
    # Values of the table may stand right of its heads, but left of the block.
    edge = min((c.box.x0 - line.em for _, line in found for c in line.cells if _is_caption(c.text, terms)), default=0.0)
    found = [(i, _line(own, line)) for i, line in found if (own := tuple(c for c in line.cells if c.box.x0 >= edge))]
    texts = [cell.text for _, line in found for cell in line.cells]
    captions = sum(_is_caption(text, terms) or (titled and _is_entry(text, terms)) for text in texts)
    others = sum(terms.is_label(text) or terms.is_value(text) for text in texts)
    if 2 * sum(terms.is_label(text) for text in texts) >= captions:
        # Entries may stand in the rows of the table itself, above its results.
        return []
    if captions == len(texts):
        # Captions whose entries stand on the other side of the edge are parted from them by nothing but chance.
        return []
    named = [text for text in texts if _is_caption(text, terms)]
    if len(set(named)) < len(named) or any("result" in terms.roles(text) for text in texts):
        # A block has each caption once, and nothing in it is "this lot".
        return []
    if captions < CAPTIONS or others > captions or all(len(line.cells) == len(lines[i].cells) for i, line in found):
        return []
    # The block may begin above the head of the table.
    for i in range(first - 1, -1, -1):
        below = found[0][1]
        near = below.box.top - lines[i].box.bottom < 1.6 * below.em
        if not near or len(lines[i].cells) > 1 or not all(is_outside(cell) for cell in lines[i].cells):
            break
        found.insert(0, (i, lines[i]))
    return found


def _line(cells: tuple[Cell, ...], line: Line) -> Line:
    box = cells[0].box
    for cell in cells[1:]:
        box = box.union(cell.box)
    return Line(cells, box, line.em, line.page)


def _without(line: Line, side: Line) -> Line:
    kept = tuple(cell for cell in line.cells if cell not in side.cells)
    return _line(kept, line) if kept else Line((), line.box, line.em, line.page)
