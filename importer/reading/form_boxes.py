"""Forms whose boxes hold a name and the value below it: lines of names and lines of values in turn."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.reading.numbers import is_word

# So many lines of names, each with its line of values: fewer could be a head over a row.
LEAST_ROWS = 3
# Lines of a form follow each other within this many em.
NEAR = 2.5
# A value begins no farther left of its name than this many em.
BEFORE = 0.6
DESCRIBING_WORDS = 3
_COUNT = re.compile(r"\d{1,2}[.)]?")


@dataclass(frozen=True, slots=True)
class Form:
    """``rows`` are lines of one name and its value each, ``used`` the numbers of the lines that they are from."""

    rows: tuple[Line, ...]
    used: frozenset[int]


def find_forms(lines: Sequence[Line], terms: Terms) -> Form:
    """The boxes of all forms among the lines of a page.

    The lines take turns from a line of names to a line of values, with no values above and no names below them: only so
    is it sure that a value belongs to the name above it.
    """
    rows: list[Line] = []
    used: set[int] = set()
    first = 0
    while first < len(lines):
        last = first
        boxes: list[tuple[Line, Cell, Cell]] = []
        while last + 1 < len(lines) and (last == first or _is_near(lines[last - 1], lines[last])):
            found = _boxes(lines[last], lines[last + 1], terms)
            if not found:
                break
            boxes += [(lines[last], name, value) for name, value in found]
            last += 2
        if _is_form(lines, first, last, terms):
            counted = _are_counted([name for _, name, _ in boxes])
            rows += [_row(name, value, counted, line) for line, name, value in boxes]
            used.update(range(first, last))
        first = max(last, first + 1)
    return Form(tuple(rows), frozenset(used))


def _is_form(lines: Sequence[Line], first: int, last: int, terms: Terms) -> bool:
    names = [cell for i in range(first, last, 2) for cell in lines[i].cells]
    if last - first < 2 * LEAST_ROWS or max(len(lines[i].cells) for i in range(first, last)) < 2:
        return False
    if 2 * sum(_is_name(cell, terms) for cell in names) < len(names) + 1:
        return False
    above = first > 0 and _is_near(lines[first - 1], lines[first]) and _are_values(lines[first - 1], terms)
    below = (
        last < len(lines)
        and _is_near(lines[last - 1], lines[last])
        and _are_names(lines[last], terms)
        and any(_is_name(cell, terms) for cell in lines[last].cells)
    )
    return not above and not below


def _boxes(names: Line, values: Line, terms: Terms) -> list[tuple[Cell, Cell]]:
    """The names of a line with the values of the next; none unless each has one."""
    if not (_is_near(names, values) and _are_names(names, terms) and _are_values(values, terms)):
        return []
    ends = [cell.box.x0 for cell in names.cells[1:]]
    shares: list[list[Cell]] = [[] for _ in names.cells]
    for cell in values.cells:
        shares[sum(cell.box.x0 > end - BEFORE * names.em for end in ends)].append(cell)
    started = values.cells[0].box.x0 > names.cells[0].box.x0 - BEFORE * names.em
    joined = [make_cell([word for cell in share for word in cell.words], True) for share in shares if share]
    if not started or len(joined) < len(shares) or not all(_is_value(cell.text, terms) for cell in joined):
        return []
    return list(zip(names.cells, joined, strict=True))


def _is_near(above: Line, below: Line) -> bool:
    return below.box.top - above.box.bottom < NEAR * max(above.em, below.em)


def _are_names(line: Line, terms: Terms) -> bool:
    """True for a line of what could be names and nothing else, known or not."""
    return all(
        any(c.isalpha() for c in cell.text)
        and ":" not in cell.text
        and not is_word(cell.text)
        and (_is_name(cell, terms) or not terms.is_value(cell.text))
        for cell in line.cells
    )


def _is_name(cell: Cell, terms: Terms) -> bool:
    return terms.is_label(cell.text) or terms.is_label(_without_count(cell).text)


def _are_values(line: Line, terms: Terms) -> bool:
    texts = [cell.text for cell in line.cells]
    return any(map(terms.is_value, texts)) and all(terms.is_unit(text) or _is_value(text, terms) for text in texts)


def _is_value(text: str, terms: Terms) -> bool:
    """True for a number, and for words that could describe a result ("clear")."""
    if is_word(text):
        return True
    if terms.is_label(text) or terms.caption(text) is not None or terms.roles(text):
        return False
    return terms.is_value(text) or not (any(c.isdigit() for c in text) or len(text.split()) > DESCRIBING_WORDS)


def _are_counted(names: Sequence[Cell]) -> bool:
    """True where a running number stands before each name ("21 Moisture", "22 Colour")."""
    first = [cell.words[0].text for cell in names]
    if not all(_COUNT.fullmatch(text) and len(cell.words) > 1 for text, cell in zip(first, names, strict=True)):
        return False
    numbers = [int(text.rstrip(".)")) for text in first]
    return all(b == a + 1 for a, b in pairwise(numbers))


def _without_count(cell: Cell) -> Cell:
    counted = len(cell.words) > 1 and _COUNT.fullmatch(cell.words[0].text)
    return make_cell(cell.words[1:]) if counted else cell


def _row(name: Cell, value: Cell, counted: bool, line: Line) -> Line:
    name = _without_count(name) if counted else name
    return Line((name, value), name.box.union(value.box), line.em, line.page)
