"""Which way the lines of text run, from the direction of each mark's nearest neighbour."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Marks

ASKED = 700


class Axis(NamedTuple):
    """``upright``: lines run from side to side. ``share``: how many of the marks agree (0.5..1)."""

    upright: bool
    share: float


def find_axis(marks: Marks) -> Axis:
    """Letters stand closer to the next letter of their line than to the line below."""
    count = len(marks)
    if count < 8:
        return Axis(True, 1.0)
    asked = np.linspace(0, count - 1, min(ASKED, count)).astype(np.int64)
    gap_x = np.maximum(marks.x0[None, :], marks.x0[asked, None]) - np.minimum(marks.x1[None, :], marks.x1[asked, None])
    gap_y = np.maximum(marks.top[None, :], marks.top[asked, None]) - np.minimum(
        marks.bottom[None, :], marks.bottom[asked, None]
    )
    distance = np.maximum(gap_x, 0) ** 2 + np.maximum(gap_y, 0) ** 2
    # the accents and dots of a letter overlap it: only marks clearly beside or above count
    apart = (gap_x >= 0) != (gap_y >= 0)
    distance = np.where(apart, distance, np.iinfo(np.int64).max)
    distance[np.arange(len(asked)), asked] = np.iinfo(np.int64).max
    nearest = distance.argmin(axis=1)
    found = distance[np.arange(len(asked)), nearest] < np.iinfo(np.int64).max
    beside = gap_x[np.arange(len(asked)), nearest] >= 0
    if not found.any():
        return Axis(True, 1.0)
    share = float(beside[found].mean())
    return Axis(share >= 0.5, max(share, 1.0 - share))
