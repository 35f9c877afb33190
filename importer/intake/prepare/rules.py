"""The drawn lines of tables: found, reported and taken out, since they are read as letters otherwise."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import connected, runs, thickened, widen

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Marks, Mask

LENGTH = 3.5  # of the glyph height: no stroke of a letter is as long
SIDE = 1.4  # of the glyph height: the side of a box, where it meets a level line
# Of the glyph height. Blurred letters that run together are as thick as the heaviest lines, but not as evenly thick.
THICKNESS, HEAVY = 0.45, 0.65
EVEN = 0.75  # of the columns of a line have about its thickness
GAP = 1  # half the pixels that a scan may break a line by
FILLED = 0.9  # of a run is ink
# Leaders: size and distance of the dots, of the glyph height, and how many make a row.
DOT, DASH, DOT_GAP, LEAST_DOTS = 0.35, 1.0, 1.2, 7
MEET = 3  # pixels between the end of a box's side and the line that it meets
ATTACHED = 0.12  # of the length of a row of letters that touch has strokes above or below; a line has less


def find_rules(ink: Mask, glyph: float) -> tuple[Marks, Marks, Mask]:
    """Level lines, upright lines, and the mask of all their pixels."""
    level_mask, level = _level(ink, glyph, LENGTH)
    across = np.ascontiguousarray(ink.T)
    crossings = np.ascontiguousarray(thickened(level_mask, 2).T)
    upright_mask, upright = _level(across, glyph, LENGTH, crossings=crossings)
    if len(level):
        meeting = widen(np.ascontiguousarray(level_mask.T).view(np.uint8), MEET, 1).view(bool)
        sides_mask, sides = _level(across & ~upright_mask, glyph, SIDE, meeting, crossings)
        upright_mask |= sides_mask
        upright = upright.plus(sides)
    return level, upright.transposed(), level_mask | upright_mask.T


def _level(
    ink: Mask, glyph: float, length: float, meeting: Mask | None = None, crossings: Mask | None = None
) -> tuple[Mask, Marks]:
    """Lines along the rows of a mask at least ``length`` glyphs long, and with ``meeting`` only those that touch it."""
    bridged = widen(ink.view(np.uint8), GAP, 1).view(bool)
    row, start, end = runs(bridged)
    long = end - start - 2 * GAP >= length * glyph
    mask = np.zeros(ink.shape, dtype=bool)
    for r, s, e in zip(row[long].tolist(), start[long].tolist(), end[long].tolist(), strict=True):
        if np.count_nonzero(ink[r, s:e]) >= FILLED * (e - s - 2 * GAP):
            mask[r, s:e] = True
    marks = connected(mask)
    beside = ink if crossings is None else ink & ~crossings
    # a slightly leaning line is a stair of runs; what is thick on the whole is a bar or a picture, not a line
    kept = marks.area <= HEAVY * glyph * marks.width
    heavy = marks.area > THICKNESS * glyph * marks.width
    for index in np.flatnonzero(kept).tolist():
        x0, top, x1, bottom = marks.box(index)
        touches = meeting is None or bool(meeting[top:bottom, x0:x1].any())
        kept[index] = touches and _stands_free(beside, x0, top, x1, bottom)
        if kept[index] and heavy[index]:
            kept[index] = _evenly_thick(beside, x0, top, x1, bottom)
    for index in np.flatnonzero(~kept).tolist():
        x0, top, x1, bottom = marks.box(index)
        mask[top:bottom, x0:x1] = False
    return mask, marks.take(kept)


def _stands_free(ink: Mask, x0: int, top: int, x1: int, bottom: int) -> bool:
    sides = [row for row in (top - 2, top - 3, bottom + 1, bottom + 2) if 0 <= row < ink.shape[0]]
    return sum(int(np.count_nonzero(ink[row, x0:x1])) for row in sides) < ATTACHED * len(sides) * (x1 - x0)


def _evenly_thick(ink: Mask, x0: int, top: int, x1: int, bottom: int) -> bool:
    margin = max(2, (bottom - top) // 2)
    columns = ink[max(0, top - margin) : bottom + margin, x0:x1].sum(axis=0)
    middle = float(np.median(columns))
    return float(np.mean(np.abs(columns - middle) <= max(2.0, 0.3 * middle))) >= EVEN


def find_leaders(marks: Marks, glyph: float) -> Mask:
    """Which marks belong to rows of dots or dashes: leaders between label and result, broken lines."""
    small = np.flatnonzero((marks.height <= DOT * glyph) & (marks.width <= DASH * glyph))
    found = np.zeros(len(marks), dtype=bool)
    if len(small) < LEAST_DOTS:
        return found
    dots = marks.take(small)
    order = np.lexsort((dots.x0, np.round((dots.top + dots.bottom) / 4)))
    dots, small = dots.take(order), small[order]
    foot = (dots.top + dots.bottom) / 2
    pitch = np.diff(dots.x0)
    level = (np.abs(np.diff(foot)) <= 2) & (pitch > 0) & (dots.x0[1:] - dots.x1[:-1] <= DOT_GAP * glyph)
    steady = level.copy()
    steady[1:] &= ~level[:-1] | (np.abs(np.diff(pitch)) <= np.maximum(0.25 * pitch[:-1], 1.5))
    start = 0
    for index, linked in enumerate([*steady.tolist(), False]):
        if not linked:
            if index + 1 - start >= LEAST_DOTS:
                found[small[start : index + 1]] = True
            start = index + 1
    return found
