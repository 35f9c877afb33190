"""Sizes of sieves whose "mm" stands in a heading or nowhere: with it, so that they are names of rows and no values."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms

MM = "mm"
# So many sizes stand below each other; a single one may be a value of the row above it.
FEWEST = 2
# Sizes of one column begin, or end, no farther apart than this (em), and few lines apart.
ALIGNED = 3.0
NEAR_LINES = 3


def with_sizes_named(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines with "mm" behind each bare size that begins a row of sieves ("> 2.8", "2.5 - 2.8", "< 2.2").

    Numbers by themselves ("2.8") are sizes under a heading of sieves only.
    """
    marked: dict[int, int] = {}
    run: list[tuple[int, int]] = []
    headed = False
    for i, line in enumerate(lines):
        at = _size_at(line, terms, headed)
        if at is None:
            if terms.is_sieving(line.text):
                headed = True
            elif i - (run[-1][0] if run else -NEAR_LINES) >= NEAR_LINES or _names_row(line, terms):
                headed = False
                marked |= _whole(run, lines)
                run = []
            continue
        if run and not _aligned(lines[run[-1][0]], run[-1][1], line, at):
            marked |= _whole(run, lines)
            run = []
        run.append((i, at))
    marked |= _whole(run, lines)
    return [_named(line, marked[i]) if i in marked else line for i, line in enumerate(lines)]


def _size_at(line: Line, terms: Terms, headed: bool) -> int | None:
    """The cell of a line that is a bare size with a value behind it; a running number may stand before it."""
    for at, cell in enumerate(line.cells[:2]):
        if any(terms.is_value(other.text) for other in line.cells[at + 1 :]) and _is_size(cell.text, terms, headed):
            return at if at == 0 or line.cells[0].text.strip(".)").isdigit() else None
    return None


def _is_size(text: str, terms: Terms, headed: bool) -> bool:
    if not terms.is_value(text) or terms.is_label(text) or text[-1:].isalpha():
        return False
    plain = text.replace(".", "").replace(",", "").isdigit()
    return (headed or not plain) and terms.is_label(f"{text} {MM}")


def _names_row(line: Line, terms: Terms) -> bool:
    return any(terms.is_label(cell.text) for cell in line.cells)


def _aligned(above: Line, at: int, line: Line, other: int) -> bool:
    one, two = above.cells[at].box, line.cells[other].box
    return min(abs(one.x0 - two.x0), abs(one.x1 - two.x1)) < ALIGNED * line.em


def _whole(run: Sequence[tuple[int, int]], lines: Sequence[Line]) -> dict[int, int]:
    texts = {lines[i].cells[at].text for i, at in run}
    return dict(run) if len(run) == len(texts) >= FEWEST else {}


def _named(line: Line, at: int) -> Line:
    cells: list[Cell] = list(line.cells)
    *words, last = cells[at].words
    cells[at] = make_cell([*words, last._replace(text=f"{last.text} {MM}")], cells[at].after_leader)
    return replace(line, cells=tuple(cells))
