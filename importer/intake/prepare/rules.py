"""The drawn lines of tables: found, reported and taken out, since they are read as letters otherwise."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import connected, runs, widen

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Marks, Mask

LENGTH = 3.5  # of the glyph height: no stroke of a letter is as long
THICKNESS = 0.45
GAP = 1  # half the pixels that a scan may break a line by
FILLED = 0.9  # of a run is ink
ATTACHED = 0.3  # of the length of a row of letters that touch has strokes above or below; a line has less


def find_rules(ink: Mask, glyph: float) -> tuple[Marks, Marks, Mask]:
    """Level lines, upright lines, and the mask of all their pixels."""
    level_mask, level = _level(ink, glyph)
    upright_mask, upright = _level(np.ascontiguousarray(ink.T), glyph)
    upright = type(upright)(upright.top, upright.x0, upright.bottom, upright.x1, upright.area)
    return level, upright, level_mask | upright_mask.T


def _level(ink: Mask, glyph: float) -> tuple[Mask, Marks]:
    bridged = widen(ink.view(np.uint8), GAP, 1)
    row, start, end = runs(bridged.view(bool))
    long = end - start - 2 * GAP >= LENGTH * glyph
    mask = np.zeros(ink.shape, dtype=bool)
    for r, s, e in zip(row[long].tolist(), start[long].tolist(), end[long].tolist(), strict=True):
        if np.count_nonzero(ink[r, s:e]) >= FILLED * (e - s - 2 * GAP):
            mask[r, s:e] = True
    marks = connected(mask)
    # a slightly leaning line is a stair of runs; what is thick on the whole is a bar or a picture, not a line
    kept = marks.area <= THICKNESS * glyph * marks.width
    for index in np.flatnonzero(kept).tolist():
        kept[index] = _stands_free(ink, marks.take(np.array([index])))
    for index in np.flatnonzero(~kept).tolist():
        mask[marks.top[index] : marks.bottom[index], marks.x0[index] : marks.x1[index]] = False
    return mask, marks.take(kept)


def _stands_free(ink: Mask, line: Marks) -> bool:
    x0, x1, top, bottom = int(line.x0[0]), int(line.x1[0]), int(line.top[0]), int(line.bottom[0])
    sides = [row for row in (top - 2, top - 3, bottom + 1, bottom + 2) if 0 <= row < ink.shape[0]]
    return sum(np.count_nonzero(ink[row, x0:x1]) for row in sides) < ATTACHED * len(sides) * (x1 - x0)
