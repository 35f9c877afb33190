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
# Characters: "between 2.5 and 2.8".
LONGEST = 24


def with_sizes_named(lines: Sequence[Line], terms: Terms) -> list[Line]:
    """The lines with "mm" behind each bare size that begins a row of sieves ("> 2.8", "2.5 - 2.8", "< 2.2").

    Numbers by themselves ("2.8") are sizes under a heading of sieves only.
    """
    marked: dict[int, int] = {}
    run: list[tuple[int, int]] = []
    for i, line in enumerate(lines):
        at = _size_at(line, terms)
        if at is None:
            continue
        if run and not (i - run[-1][0] <= NEAR_LINES and _aligned(lines[run[-1][0]], run[-1][1], line, at)):
            marked |= _whole(run, lines, terms)
            run = []
        run.append((i, at))
    marked |= _whole(run, lines, terms)
    return [_named(line, marked[i]) if i in marked else line for i, line in enumerate(lines)]


def _size_at(line: Line, terms: Terms) -> int | None:
    """The cell of a line that may be a bare size with a value behind it; a running number may stand before it."""
    at = int(line.cells[0].text.strip(".)").isdigit())
    if at + 1 >= len(line.cells):
        return None
    text = line.cells[at].text
    if len(text) > LONGEST or not any(map(str.isdigit, text)) or not terms.is_value(text) or terms.is_label(text):
        return None
    behind = any(terms.is_value(cell.text) for cell in line.cells[at + 1 :])
    return at if behind and terms.is_label(f"{text} {MM}") else None


def _aligned(above: Line, at: int, line: Line, other: int) -> bool:
    one, two = above.cells[at].box, line.cells[other].box
    return min(abs(one.x0 - two.x0), abs(one.x1 - two.x1)) < ALIGNED * line.em


def _whole(run: Sequence[tuple[int, int]], lines: Sequence[Line], terms: Terms) -> dict[int, int]:
    """The run where it is one of sizes, each another one."""
    texts = [lines[i].cells[at].text for i, at in run]
    if not len(set(texts)) == len(texts) >= FEWEST:
        return {}
    plain = all(text.replace(".", "").replace(",", "").isdigit() for text in texts)
    above = lines[max(0, run[0][0] - NEAR_LINES) : run[0][0]]
    return {} if plain and not any(terms.is_sieving(line.text) for line in above) else dict(run)


def _named(line: Line, at: int) -> Line:
    cells: list[Cell] = list(line.cells)
    *words, last = cells[at].words
    cells[at] = make_cell([*words, last._replace(text=f"{last.text} {MM}")], cells[at].after_leader)
    return replace(line, cells=tuple(cells))
