"""Lines of dots and dashes: leaders between a label and its result, and the broken lines of a table.

A scan lets some of the dots run together, so that they keep no step; what they keep is one height and one level.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import Marks

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Ints, Mask

# All of the glyph height: how thick a dot or dash is, how long, how far apart, and how long such a line is.
THICK, LONG, APART, LENGTH = 0.3, 3.5, 0.5, 3.5
# The same of upright lines, whose dashes may not be taken for letters that stand above each other.
UPRIGHT_LONG, UPRIGHT_APART = 1.0, 0.4
LEAST, UPRIGHT_LEAST = 4, 6
# Dots right behind each other that go on over a gap as wide as this, of the glyph height, where another line crosses.
SOLID, CROSSED = 3, 1.4
CROSS = 0.75  # of the glyph height: where two broken lines meet
BAND = 4  # pixels
LEVEL, ALIKE = 1.5, 2.0  # pixels: between the middles of two dots of one line, and between how thick they are


def find_broken(marks: Marks, glyph: float) -> tuple[Mask, Marks]:
    """Which marks are part of a broken line, and the upright ones of these lines."""
    level, rows = _lines(marks, glyph, LONG, APART, LEAST)
    upright, columns = _lines(marks.transposed(), glyph, UPRIGHT_LONG, UPRIGHT_APART, UPRIGHT_LEAST)
    columns = columns.transposed()
    found = level | upright
    small = (marks.width <= CROSS * glyph) & (marks.height <= CROSS * glyph)
    # A corner may stand at the end of an upright line; behind a level one a sign may follow ("....<0.5").
    for lines, end in ((rows, 0.0), (columns, CROSS * glyph)):
        for x0, top, x1, bottom in map(lines.box, range(len(lines))):
            found |= (
                small & (marks.x0 <= x1) & (marks.x1 >= x0) & (marks.top <= bottom + end) & (marks.bottom >= top - end)
            )
    return found, columns


def _lines(marks: Marks, glyph: float, longest: float, apart: float, least: int) -> tuple[Mask, Marks]:
    found = np.zeros(len(marks), dtype=bool)
    small = np.flatnonzero((marks.height <= THICK * glyph) & (marks.width <= longest * glyph))
    spans: list[tuple[int, int, int, int]] = []
    for shift in (0.0, BAND / 2):  # a line may lie on the edge between two bands
        for run in _runs(marks.take(small), shift, glyph, apart):
            if len(run) < least:
                continue
            own = marks.take(small[run])
            box = int(own.x0.min()), int(own.top.min()), int(own.x1.max()), int(own.bottom.max())
            if box[2] - box[0] >= LENGTH * glyph:
                if not found[small[run]].all():
                    spans.append(box)
                found[small[run]] = True
    x0, top, x1, bottom = np.array(spans, dtype=np.int64).reshape(-1, 4).T
    return found, Marks(x0, top, x1, bottom, np.zeros(len(spans), dtype=np.int64))


def _runs(dots: Marks, shift: float, glyph: float, apart: float) -> list[Ints]:
    """Dots one behind the other on a level, as places in ``dots``; where another line crosses, a run goes on behind."""
    middle = (dots.top + dots.bottom) / 2
    band = np.floor((middle + shift) / BAND)
    order = np.lexsort((dots.x0, band))
    if len(order) < SOLID:
        return []
    dots, middle, band = dots.take(order), middle[order], band[order]
    gap = dots.x0[1:] - dots.x1[:-1]
    level = (np.diff(band) == 0) & (np.abs(np.diff(middle)) <= LEVEL) & (np.abs(np.diff(dots.height)) <= ALIKE)
    linked = level & (gap >= -1) & (gap <= apart * glyph)
    goes_on = level & ~linked & (gap <= CROSSED * glyph)
    cuts = np.flatnonzero(~linked) + 1
    runs: list[Ints] = []
    before = -1
    for first, piece in zip([0, *cuts.tolist()], np.split(order, cuts), strict=True):
        if len(piece) < SOLID:
            continue
        if runs and before == first and goes_on[first - 1]:
            runs[-1] = np.concatenate([runs[-1], piece])
        else:
            runs.append(piece)
        before = first + len(piece)
    return runs
