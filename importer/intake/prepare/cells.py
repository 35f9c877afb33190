"""Marks of ink grouped into the cells of a page: pieces of one line with no wide gap inside.

No grid is known here. A cell is what a second reader gets to see at once, so a sign in front of a figure, its
decimal point and a unit close behind it have to be inside.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import Marks, joined, pairs

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Ints, Mask

# All of the glyph height:
SPACE = 0.9  # widest gap inside a cell: a space is 0.35 to 0.5, in typewriter faces up to 0.9
SIGN_SPACE = 2.0  # widest gap between a sign and the figure that it belongs to
TALLEST = 2.2  # what is taller is no letter
LEAST_AREA = 0.04  # of the glyph height squared: what holds nothing larger is dirt; a thin dash has 0.05
ACCENT_GAP = 0.3  # between a letter and its dot or accent


_NONE = np.zeros(0, dtype=np.int64)
NO_RULES = Marks(_NONE, _NONE, _NONE, _NONE, _NONE)


@dataclass(frozen=True, slots=True)
class Cells:
    """Bounding boxes in pixels of the prepared page, how many marks each holds, and the area of the largest."""

    x0: Ints
    top: Ints
    x1: Ints
    bottom: Ints
    marks: Ints
    largest: Ints

    def __len__(self) -> int:
        return len(self.x0)

    @property
    def height(self) -> Ints:
        return self.bottom - self.top

    def take(self, which: Mask | Ints) -> Cells:
        columns = (self.x0, self.top, self.x1, self.bottom, self.marks, self.largest)
        return Cells(*(column[which] for column in columns))


def find_cells(marks: Marks, upright_rules: Marks, glyph: float) -> Cells:
    """Group marks into cells, in reading order of their tops; specks alone make no cell."""
    order = np.argsort(marks.x0, kind="stable")
    marks = marks.take(order)
    marks = marks.take((marks.height <= TALLEST * glyph) & (marks.width <= 12 * glyph))
    if not len(marks):
        return Cells(_NONE, _NONE, _NONE, _NONE, _NONE, _NONE)
    first, second = _neighbours(marks, glyph)
    open_way = ~_ruled_off(marks, first, second, upright_rules)
    group = joined(len(marks), first[open_way], second[open_way])
    cells = _boxes(marks, group, np.ones(len(marks), dtype=np.int64), marks.area)
    cells = _with_signs(cells, glyph, upright_rules)
    kept = cells.take(cells.largest >= LEAST_AREA * glyph * glyph)
    return kept.take(np.lexsort((kept.x0, kept.top)))


def _neighbours(marks: Marks, glyph: float) -> tuple[Ints, Ints]:
    """Pairs of marks of one cell: close side by side, or an accent over its letter."""
    count = len(marks)
    last = np.searchsorted(marks.x0, marks.x1 + SPACE * glyph, side="right")
    first, second = pairs(np.arange(1, count + 1), last)
    low = np.maximum(marks.top[first], marks.top[second])
    high = np.minimum(marks.bottom[first], marks.bottom[second])
    smaller = np.minimum(marks.height[first], marks.height[second])
    # a comma hangs below the line and a point may touch the line's foot: a third of the smaller mark is enough
    level = high - low >= np.maximum(0.34 * smaller, 1)
    over = np.minimum(marks.x1[first], marks.x1[second]) - np.maximum(marks.x0[first], marks.x0[second]) > 0
    small = smaller <= 0.45 * glyph
    accent = over & small & (low - high <= ACCENT_GAP * glyph)
    linked = level | accent
    return first[linked], second[linked]


def _ruled_off(marks: Marks | Cells, first: Ints, second: Ints, rules: Marks) -> Mask:
    """Pairs with an upright line between them."""
    apart = np.zeros(len(first), dtype=bool)
    low = np.minimum(marks.bottom[first], marks.bottom[second])
    middle = (np.maximum(marks.top[first], marks.top[second]) + low) / 2
    a = (marks.x0[first] + marks.x1[first]) / 2
    b = (marks.x0[second] + marks.x1[second]) / 2
    left, right = np.minimum(a, b), np.maximum(a, b)
    for index in range(len(rules)):
        x = (rules.x0[index] + rules.x1[index]) / 2
        beside = (middle >= rules.top[index]) & (middle <= rules.bottom[index])
        apart |= (left < x) & (x < right) & beside
    return apart


def _boxes(marks: Marks | Cells, group: Ints, held: Ints, areas: Ints) -> Cells:
    count = int(group.max()) + 1
    x0, top = np.full(count, 1 << 30), np.full(count, 1 << 30)
    x1, bottom = np.zeros(count, dtype=np.int64), np.zeros(count, dtype=np.int64)
    np.minimum.at(x0, group, marks.x0)
    np.minimum.at(top, group, marks.top)
    np.maximum.at(x1, group, marks.x1)
    np.maximum.at(bottom, group, marks.bottom)
    largest = np.zeros(count, dtype=np.int64)
    np.maximum.at(largest, group, areas)
    return Cells(x0, top, x1, bottom, np.bincount(group, weights=held, minlength=count).astype(np.int64), largest)


def _with_signs(cells: Cells, glyph: float, rules: Marks) -> Cells:
    """Join a lone sign (<, >, -, ≤ ...) with what stands to its right, however wide the space between."""
    height = cells.bottom - cells.top
    tallest = np.where(cells.marks == 2, 1.1, 0.95) * glyph
    signs = np.flatnonzero((cells.marks <= 2) & (height <= tallest) & (cells.x1 - cells.x0 <= 1.3 * glyph))
    first, second = [], []
    for index in signs.tolist():
        gap = cells.x0 - cells.x1[index]
        overlap = np.minimum(cells.bottom, cells.bottom[index]) - np.maximum(cells.top, cells.top[index])
        level = (overlap >= 0.5 * np.minimum(height, height[index])) & (height > 0.7 * glyph)
        near = np.flatnonzero((gap > 0) & (gap <= SIGN_SPACE * glyph) & level)
        if len(near):
            first.append(index)
            second.append(int(near[np.argmin(gap[near])]))
    if not first:
        return cells
    a, b = np.array(first), np.array(second)
    open_way = ~_ruled_off(cells, a, b, rules)
    return _boxes(cells, joined(len(cells), a[open_way], b[open_way]), cells.marks, cells.largest)
