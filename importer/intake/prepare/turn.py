"""Which way the lines of text run, from the direction of each mark's nearest neighbour."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Marks, Mask

ASKED = 700


class Axis(NamedTuple):
    """``upright``: lines run from side to side. ``share``: how many of the marks agree (0.5..1)."""

    upright: bool
    share: float


def find_axis(marks: Marks, glyph: float) -> Axis:
    """Which way the lines run.

    Letters stand closer to the next letter of their line than to the line below; where letters have run together the
    long pieces themselves tell.
    """
    short, long = np.minimum(marks.width, marks.height), np.maximum(marks.width, marks.height)
    letters = marks.take((long <= 4 * short) & (marks.height <= 2.5 * glyph))
    beside = _beside(letters)
    strings = marks.take((short >= 0.6 * glyph) & (long >= 1.8 * short) & (2 * marks.area >= 0.6 * short * long))
    level = int(np.count_nonzero(strings.width > strings.height))
    votes, across = len(beside) + 2 * len(strings), int(beside.sum()) + 2 * level
    if votes < 8:
        return Axis(True, 1.0)
    share = across / votes
    return Axis(share >= 0.5, max(share, 1.0 - share))


def _beside(marks: Marks) -> Mask:
    """For some of the marks: is the nearest other mark beside it (and not above or below)?"""
    count = len(marks)
    if count < 2:
        return np.zeros(0, dtype=bool)
    asked = np.linspace(0, count - 1, min(ASKED, count)).astype(np.int64)
    gap_x = np.maximum(marks.x0, marks.x0[asked, None]) - np.minimum(marks.x1, marks.x1[asked, None])
    gap_y = np.maximum(marks.top, marks.top[asked, None]) - np.minimum(marks.bottom, marks.bottom[asked, None])
    distance = np.maximum(gap_x, 0) ** 2 + np.maximum(gap_y, 0) ** 2
    # the accents and dots of a letter overlap it: only marks clearly beside or above count
    far = np.iinfo(np.int64).max
    distance = np.where((gap_x >= 0) != (gap_y >= 0), distance, far)
    row = np.arange(len(asked))
    distance[row, asked] = far
    nearest = distance.argmin(axis=1)
    found = distance[row, nearest] < far
    beside: Mask = gap_x[row, nearest][found] >= 0
    return beside
