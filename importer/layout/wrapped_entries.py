"""Entries of the head whose lines or captions are not told apart by spaces: names that run over several lines of a box,
and captions that stand as close as words do."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms

# Only names are long enough to be wrapped, and any words can be one.
NAMES = frozenset({"malt", "variety", "supplier", "customer"})
# Lines of one box begin at one place and follow each other within these shares of the type size (em).
ALIGNED, TIGHT = 0.2, 0.35
# Captions of a line from which two that run together are looked for.
FEWEST_CAPTIONS = 2


def with_entries_whole(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines, with each such name as one cell of the line of its caption.

    With an odd number of lines the caption stands beside the middle one, with two between them.
    """
    out = list(lines)
    for at in range(1, len(lines) - 1):
        over, line, under = out[at - 1], out[at], out[at + 1]
        if len(over.cells) != 1 or len(under.cells) != 1 or not _is_alike(over.cells[0], under.cells[0], line.em):
            continue
        for number, caption in enumerate(line.cells):
            if terms.caption(caption.text.rstrip(": ")) not in NAMES:
                continue
            joined = _joined(line, number, over.cells[0], under.cells[0], terms)
            if joined is not None:
                out[at] = joined
                out[at - 1] = out[at + 1] = Line((), over.box, over.em, over.page)
                break
    return [line for line in out if line.cells]


def _joined(line: Line, number: int, over: Cell, under: Cell, terms: Terms) -> Line | None:
    """The line with the name behind a caption made whole; None where the lines above and below are none of it."""
    rest = line.cells[number + 1 :]
    own = rest[0] if rest and _is_alike(rest[0], over, line.em) else None
    later = rest[1:] if own is not None else rest
    end = min((cell.box.x0 for cell in later), default=float("inf"))
    if over.box.x0 <= line.cells[number].box.x1 or max(over.box.x1, under.box.x1) >= end:
        return None
    if any(_is_other(cell.text, terms) for cell in (over, under, *((own,) if own is not None else ()))):
        return None
    if own is None:
        close = over.box.bottom > line.box.top + ALIGNED * line.em and under.box.top < line.box.bottom
        close = close and abs(under.box.top - over.box.bottom) < TIGHT * line.em
    else:
        gaps = (own.box.top - over.box.bottom, under.box.top - own.box.bottom)
        close = all(abs(gap) < TIGHT * line.em for gap in gaps)
    if not close:
        return None
    words = [word for cell in (over, *((own,) if own is not None else ()), under) for word in cell.words]
    cells = (*line.cells[: number + 1], make_cell(words), *later)
    return Line(cells, line.box.union(over.box).union(under.box), line.em, line.page)


def _is_alike(one: Cell, other: Cell, em: float) -> bool:
    """True for texts that begin at one place, in one type."""
    same = one.words[0].size == other.words[0].size and one.bold == other.bold
    return same and abs(one.box.x0 - other.box.x0) < ALIGNED * em


def _is_other(text: str, terms: Terms) -> bool:
    """True for what is no part of a name: a result, a label, an entry with its caption."""
    named = ":" in text or any(character.isdigit() for character in text)
    return named or terms.is_value(text) or terms.is_label(text)


def with_captions_apart(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines, with two captions that run together ("Quantity Packing") in cells of their own where they stand among
    other captions."""
    return [_with_captions_apart(line, terms) if len(line.cells) > 2 else line for line in lines]


def _with_captions_apart(line: Line, terms: Terms) -> Line:
    if sum(terms.is_sure_caption(cell.text) for cell in line.cells) < FEWEST_CAPTIONS:
        return line
    cells = tuple(part for cell in line.cells for part in _captions_of(cell, terms))
    return line if len(cells) == len(line.cells) else Line(cells, line.box, line.em, line.page)


def _captions_of(cell: Cell, terms: Terms) -> tuple[Cell, ...]:
    # "Batch Result" is the head of a column.
    if terms.caption(cell.text) is None and not (terms.is_label(cell.text) or terms.roles(cell.text)):
        for cut in range(1, len(cell.words)):
            parts = (make_cell(cell.words[:cut]), make_cell(cell.words[cut:]))
            if all(terms.is_sure_caption(part.text) for part in parts):
                return parts
    return (cell,)
