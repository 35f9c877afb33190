"""Where a page falls into parts whose lines are not level, such as two tables side by side.

The main reader takes a page for one block of lines that run from side to side; where the lines of two tables lie half
a line apart, it reads a mixture of both. Such parts are handed to it as pictures of their own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import pairs

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.cells import Cells
    from importer.intake.prepare.ink import Ints, Mask

# Height of a cell of print, of the glyph height.
LEAST_PRINT, MOST_PRINT = 0.6, 1.9
# How much of the lower of two cells side by side lies beside the other, where they stand on different lines.
LEAST_SHARED, MOST_SHARED = 0.1, 0.55
# Of the distance from line to line, how far between two lines of one column those of the other stand.
LEAST_BETWEEN = 0.3
LEAST_PITCH = 0.8  # of a cell's height, to the next line
LEAST_UNEVEN = 4  # pairs of such cells on a page
LEAST_GAP = 0.8  # of the glyph height, between two parts
MOST_CELLS, MOST_PAIRS, MOST_PARTS = 2000, 4000, 60  # more are dirt

Part = tuple[int, int, int, int]
"""Left, top, right and bottom in pixels."""


def find_parts(cells: Cells, glyph: float, whole: Part) -> list[Part]:
    """The page in parts, from top to bottom and left to right; the page itself where all lines are level."""
    if len(cells) > MOST_CELLS or not LEAST_UNEVEN <= len(_uneven(cells, glyph)[0]) <= MOST_PAIRS:
        return [whole]
    parts = _parted(cells, glyph, whole)
    return parts if len(parts) <= MOST_PARTS else [whole]


def _parted(cells: Cells, glyph: float, whole: Part) -> list[Part]:
    split = _split(cells, glyph, whole)
    if split is None:
        return [whole]
    x0, first, x1, last = whole
    x, top, bottom = split[0], max(first, split[1]), min(last, split[2])
    pieces = ((x0, first, x1, top), (x0, top, x, bottom), (x, top, x1, bottom), (x0, bottom, x1, last))
    out: list[Part] = []
    for piece in pieces:
        inside = _inside(cells, piece)
        if len(inside):
            out += _parted(inside, glyph, piece)
    return out


def _inside(cells: Cells, part: Part) -> Cells:
    x, y = (cells.x0 + cells.x1) / 2, (cells.top + cells.bottom) / 2
    return cells.take((x > part[0]) & (x < part[2]) & (y > part[1]) & (y < part[3]))


def _split(cells: Cells, glyph: float, whole: Part) -> tuple[int, int, int] | None:
    """The upright cut that parts most of the uneven lines, and how far up and down it reaches."""
    left, right = _uneven(cells, glyph)
    start, end = cells.x1[left], cells.x0[right]
    step = max(1, round(glyph / 2))
    best: tuple[int, int, int, int] | None = None
    for x in np.unique((start + end) // 2 // step * step).tolist():
        for top, bottom in _free(cells, glyph, x, whole):
            high = np.minimum(cells.top[left], cells.top[right])
            low = np.maximum(cells.bottom[left], cells.bottom[right])
            cut = (start < x) & (end > x) & (high >= top) & (low <= bottom)
            parted = int(np.count_nonzero(cut))
            if parted and (best is None or parted > best[0]):
                best = (parted, x, *_grown(cells, int(high[cut].min()), int(low[cut].max())))
    return best[1:] if best else None


def _grown(cells: Cells, top: int, bottom: int) -> tuple[int, int]:
    """The heights, so far up and down that they cut through no line."""
    while True:
        through = (cells.top < bottom) & (cells.bottom > top)
        high, low = int(cells.top[through].min()), int(cells.bottom[through].max())
        if (high, low) == (top, bottom):
            return top - 1, bottom + 1
        top, bottom = high, low


def _uneven(cells: Cells, glyph: float) -> tuple[Ints, Ints]:
    """Pairs of cells of print side by side whose lines are not level, the left one of each first."""
    height = cells.bottom - cells.top
    print_ = np.flatnonzero((height >= LEAST_PRINT * glyph) & (height <= MOST_PRINT * glyph))
    order = print_[np.argsort(cells.top[print_], kind="stable")]
    last = np.searchsorted(cells.top[order], cells.bottom[order] + glyph, side="right")
    one, other = pairs(np.arange(1, len(order) + 1), last)
    one, other = order[one], order[other]
    swap = cells.x0[one] > cells.x0[other]
    left, right = np.where(swap, other, one), np.where(swap, one, other)
    beside = cells.x0[right] - cells.x1[left] >= LEAST_GAP * glyph
    left, right = left[beside], right[beside]
    shared = np.minimum(cells.bottom[left], cells.bottom[right]) - np.maximum(cells.top[left], cells.top[right])
    lower = np.minimum(height[left], height[right])
    overlapping = (shared >= LEAST_SHARED * lower) & (shared <= MOST_SHARED * lower)
    middle, pitch = (cells.top + cells.bottom) / 2, _pitches(cells)
    share = np.abs(middle[left] - middle[right]) / np.minimum(pitch[left], pitch[right])
    between = (shared < LEAST_SHARED * lower) & (share >= LEAST_BETWEEN) & (share <= 1 - LEAST_BETWEEN)
    uneven = overlapping | between
    return left[uneven], right[uneven]


def _pitches(cells: Cells) -> NDArray[np.float64]:
    """The distance of each cell from the next one of its column, above or below; infinite where there is none."""
    middle = (cells.top + cells.bottom) / 2
    over = np.minimum(cells.x1[:, None], cells.x1) - np.maximum(cells.x0[:, None], cells.x0) > 0
    apart = np.abs(middle[:, None] - middle)
    lines = over & (apart > LEAST_PITCH * (cells.bottom - cells.top)[:, None])
    found: NDArray[np.float64] = np.where(lines, apart, np.inf).min(axis=1, initial=np.inf)
    return found


def _free(cells: Cells, glyph: float, x: int, whole: Part) -> list[tuple[int, int]]:
    """The heights between which nothing stands at ``x``; lines level with what stands there are left out, too."""
    reach = LEAST_GAP * glyph / 2
    crossing = (cells.x0 < x + reach) & (cells.x1 > x - reach)
    taken = [(whole[1], whole[1])]
    for index in np.flatnonzero(crossing).tolist():
        beside = _level_with(cells, index)
        taken.append((int(cells.top[beside].min()), int(cells.bottom[beside].max())))
    taken.append((whole[3], whole[3]))
    taken.sort()
    free: list[tuple[int, int]] = []
    reached = whole[1]
    for top, bottom in taken:
        if top - reached > 2 * glyph:
            free.append((reached, top))
        reached = max(reached, bottom)
    return free


def _level_with(cells: Cells, index: int) -> Mask:
    """The cell itself and all that share a line with it."""
    shared = np.minimum(cells.bottom, cells.bottom[index]) - np.maximum(cells.top, cells.top[index])
    found: Mask = shared > 0
    return found
