"""Ticks of a pen on a grey page: told from print by their shape, and taken out where they touch nothing."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare import ink

if TYPE_CHECKING:
    from importer.intake.prepare.geometry import Grey
    from importer.intake.prepare.ink import Marks, Mask

SLENDER = 0.34  # of its box that a tick covers at most
# In heights of a figure: the least and greatest height of a tick, and its least width.
LOWEST, HIGHEST, NARROWEST = 1.35, 6.0, 0.8
# Of a tick's height and width: its left end lies below the first and above the second, its foot is left of the third,
# its head right of the fourth, and its long arm leans by the fifth.
LEFT_HIGH, LEFT_LOW, FOOT, HEAD, LEAN = 0.2, 0.9, 0.6, 0.8, 0.2
SOFT, PALER = 2, 0.2  # pixels of the soft edge of a stroke, and of the contrast by how much that is paler
MOST = 60  # marks looked at; a page with more of them has other troubles


def find_ticks(even: Grey, mask: Mask, marks: Marks, glyph: float, darkest: float, paper: float) -> Mask | None:
    """Where ticks that touch no print are on an evened page; None for nowhere."""
    slender = (marks.area <= SLENDER * marks.width * marks.height) & (marks.height >= LOWEST * glyph)
    ticks = np.flatnonzero(slender & (marks.height <= HIGHEST * glyph) & (marks.width >= NARROWEST * glyph))
    taken = np.zeros_like(mask)
    for index in ticks.tolist() if len(ticks) <= MOST else ():
        x0, top, x1, bottom = marks.box(index)
        shape = whole_mark(mask[top:bottom, x0:x1])
        if is_tick(shape):
            taken[top:bottom, x0:x1] |= shape
    if not taken.any():
        return None
    edges: Mask = ink.thickened(taken, SOFT) & (even > darkest + PALER * (paper - darkest))
    return edges | taken


def whole_mark(mask: Mask) -> Mask:
    """The mark that fills a box from side to side, without others that reach into it."""
    row, start, end, group = ink.grouped(mask)
    shape = np.zeros_like(mask)
    if len(row):
        chosen = int(np.argmax(np.bincount(group, weights=end - start)))
        for y, x0, x1 in zip(*(part[group == chosen].tolist() for part in (row, start, end)), strict=True):
            shape[y, x0:x1] = True
    return shape


def is_tick(shape: Mask) -> bool:
    """Whether a mark goes down a little from its left end and up from there to the right, far above that end."""
    height, width = shape.shape
    rows, columns = np.nonzero(shape)
    if not len(rows):
        return False
    left_end = float(rows[columns == columns.min()].mean()) / height
    foot = float(columns[rows >= rows.max() - 1].mean()) / width
    head = float(columns[rows <= rows.min() + 1].mean()) / width
    upper = columns[(rows > 0.15 * height) & (rows < 0.3 * height)]
    lower = columns[(rows > 0.55 * height) & (rows < 0.7 * height)]
    if not len(upper) or not len(lower):
        return False
    leans = float(upper.max() - lower.max()) >= LEAN * width
    return bool(LEFT_HIGH < left_end < LEFT_LOW and foot < FOOT and head > HEAD and leans)
