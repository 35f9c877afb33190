"""Words of a scan that name nothing, as a second reader saw them: a head or a label misread by one is right by two."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from difflib import SequenceMatcher
from itertools import pairwise

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.words import Box, SecondReading

# Share of a box that another has to have of its width, for both to hold the same words.
SAME_WIDTH = 0.8
# How much of a word two readings of it have in common at least; letters lose their accents more easily than that.
ALIKE = 0.7
# "(3)" over a column; fewer in a line count nothing.
_MARK = re.compile(r"\(\d{1,2}\)")
FEWEST_MARKS = 3
# Nobody prints a sum as a result.
_SUM = re.compile(r"\d+(?:[.,]\d+)?\+\d+(?:[.,]\d+)?")


def look_again(lines: Sequence[Line], second: Sequence[SecondReading], terms: Terms) -> list[Line]:
    """The lines with the words of ``second`` where only those name a column or a parameter; numbers stay."""
    if not second:
        return list(lines)
    return [_line(line, _level(line.box, second), terms) for line in lines]


def _level(box: Box, second: Sequence[SecondReading]) -> list[SecondReading]:
    return [reading for reading in second if box.top < reading.box.middle < box.bottom]


def _line(line: Line, second: Sequence[SecondReading], terms: Terms) -> Line:
    # A head is only looked for beside one that is known, a label only where a figure may follow.
    if len(line.cells) < 2 or not second:
        return line
    line = _counted(line, second)
    heads = any(terms.roles(cell.text) for cell in line.cells)
    cells = tuple(_cell(cell, second, terms, heads) for cell in line.cells)
    return line if cells == line.cells else replace(line, cells=cells)


def _counted(line: Line, second: Sequence[SecondReading]) -> Line:
    """The line with its marks ("(1)", "(2)") as the other reader saw them, where they count on without a gap."""
    seen = [_mark(cell, second) for cell in line.cells]
    counts = [int(mark[1:-1]) for mark in seen if mark]
    if len(counts) < FEWEST_MARKS or any(b != a + 1 for a, b in pairwise(counts)):
        return line
    cells = tuple(
        make_cell([cell.words[0]._replace(text=mark)], cell.after_leader) if mark else cell
        for cell, mark in zip(line.cells, seen, strict=True)
    )
    return line if [cell.text for cell in cells] == [cell.text for cell in line.cells] else replace(line, cells=cells)


def _mark(cell: Cell, second: Sequence[SecondReading]) -> str:
    """The mark in the place of a cell of one word, by either reader; "" where it holds something else."""
    if len(cell.words) != 1 or _MARK.fullmatch(cell.text):
        return cell.text if _MARK.fullmatch(cell.text) else ""
    return next((one.text for one in second if _MARK.fullmatch(one.text) and _holds(cell.box, one.box)), "")


def _cell(cell: Cell, second: Sequence[SecondReading], terms: Terms, heads: bool) -> Cell:
    if _SUM.fullmatch("".join(cell.text.split())):
        return _with_tolerance(cell, second)
    if terms.is_value(cell.text) or terms.roles(cell.text):
        return cell
    heads = heads and not terms.is_unit(cell.text)
    found: dict[tuple[str, ...], None] = {}
    for words in _readings(cell, second):
        text = " ".join(words)
        names = (heads and terms.roles(text)) or terms.is_plainer(text, cell.text)
        if names and _is_same(cell, words):
            found[words] = None
    if len({" ".join(words).casefold() for words in found}) != 1:
        return cell
    words = next(iter(found))
    read = [word._replace(text=text) for word, text in zip(cell.words, words, strict=True)]
    return make_cell(read, cell.after_leader)


def _with_tolerance(cell: Cell, second: Sequence[SecondReading]) -> Cell:
    """The cell with "±" for "+" between two numbers, where the other reader saw that and all else the same."""
    seen = {"".join(one.text.split()) for one in second if _holds(cell.box, one.box)}
    plain = "".join(cell.text.split())
    if seen != {plain.replace("+", "±")}:
        return cell
    return make_cell([word._replace(text=word.text.replace("+", "±")) for word in cell.words], cell.after_leader)


def _readings(cell: Cell, second: Sequence[SecondReading]) -> list[tuple[str, ...]]:
    """Other readings of as many words: of the whole cell, or put together from those of its words."""
    whole = [tuple(reading.text.split()) for reading in second if _holds(cell.box, reading.box)]
    single = tuple(
        next((one.text for one in second if _holds(word.box, one.box) and " " not in one.text.strip()), word.text)
        for word in cell.words
    )
    return [words for words in (*whole, single) if len(words) == len(cell.words)]


def _holds(box: Box, other: Box) -> bool:
    shared = min(box.x1, other.x1) - max(box.x0, other.x0)
    return shared >= SAME_WIDTH * max(box.width, other.width)


def _is_same(cell: Cell, words: Sequence[str]) -> bool:
    """True where the words are like those of the cell, sign for sign where they hold digits."""
    return all(_is_like(word.text, other) for word, other in zip(cell.words, words, strict=True))


def _is_like(one: str, other: str) -> bool:
    if any(sign.isdigit() for sign in one + other):
        return one.replace(",", ".") == other.replace(",", ".")
    # A sign that stands alone has nothing in common with what it was taken for ("+", "±").
    alone = len(one) == len(other) == 1 and not one.isalnum() and not other.isalnum()
    return alone or SequenceMatcher(None, one.casefold(), other.casefold(), autojunk=False).ratio() >= ALIKE
