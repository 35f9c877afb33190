"""Does the ink of a figure have the width of what was read in it?

Both readers can lose the same decimal point or sign, above all where a copier has eaten it. The digits then still
stand as far apart as the point made them. The advance of a digit, a point and a sign is learnt from the page itself,
so no font needs to be known, and a figure that is wider than its reading explains is reported.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare.ink import runs

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.ink import Mask

    Floats = NDArray[np.float64]

DIGITS, SEPARATORS, DASHES, SIGNS = "0123456789", ".,", "-–−", "<>≤≥"
# Widths over the height of a digit, the middle of common text faces: digit, point, dash, comparison sign, what a 1 is
# narrower by, at an end of the figure and inside, and what the outer side bearings take off.
EXPECTED = np.array([0.78, 0.39, 0.55, 0.82, -0.12, -0.03, -0.10])
# How many figures' worth of evidence the expectation counts for.
STIFFNESS = 2.0
LEAST_FIGURES = 4
# Of the page's own width of a point: half-way between 'no point' and 'a point' and a little more.
SURPLUS = 0.62
LEAST_SURPLUS = 0.2


@dataclass(frozen=True, slots=True)
class Piece:
    """A numeric piece of a cell: what was read in it and its ink's width over the height of its digits."""

    text: str
    width: float


def pieces(ink: Mask, text: str) -> list[Piece]:
    """The numeric pieces of a cell's ink, cut at its widest gaps where the reading has spaces."""
    tokens = text.split()
    start, end = _columns(ink)
    if not tokens or len(start) < len(tokens):
        return []
    cuts = np.sort(np.argsort(end[:-1] - start[1:], kind="stable")[: len(tokens) - 1])
    bounds = np.split(np.arange(len(start)), cuts + 1)
    found = []
    for token, part in zip(tokens, bounds, strict=True):
        x0, x1 = int(start[part[0]]), int(end[part[-1]])
        height = _digit_height(ink[:, x0:x1], start[part] - x0, end[part] - x0)
        if _numeric(token) and height:
            found.append(Piece(token, (x1 - x0) / height))
    return found


def too_wide(cells: Sequence[Sequence[Piece]]) -> list[bool]:
    """For each cell: is one of its pieces wider than its characters are on this page?"""
    flat = [piece for cell in cells for piece in cell]
    if len(flat) < LEAST_FIGURES:
        return [False] * len(cells)
    counts = np.array([_counts(piece.text) for piece in flat])
    widths = np.array([piece.width for piece in flat])
    advance = _learnt(counts, widths)
    surplus = widths - counts @ advance
    spread = 1.4826 * float(np.median(np.abs(surplus - np.median(surplus))))
    limit = max(LEAST_SURPLUS, SURPLUS * float(advance[1]), 3.5 * spread)
    wide = iter((surplus > limit).tolist())
    return [any([next(wide) for _ in cell]) for cell in cells]


def _learnt(counts: Floats, widths: Floats) -> Floats:
    """Least squares held near the expectation; figures that do not fit are left out of the second and third round."""
    keep = np.ones(len(widths), dtype=bool)
    advance = EXPECTED
    for _ in range(4):
        a, b = counts[keep], widths[keep]
        pull = STIFFNESS * np.eye(len(EXPECTED))
        advance = np.linalg.solve(a.T @ a + pull, a.T @ b + pull @ EXPECTED)
        off = np.abs(widths - counts @ advance)
        keep = off <= max(0.12, 2.5 * float(np.median(off)))
    return advance


def _numeric(token: str) -> bool:
    known = DIGITS + SEPARATORS + DASHES + SIGNS
    return all(character in known for character in token) and any(character in DIGITS for character in token)


def _counts(token: str) -> list[float]:
    def count(kind: str) -> float:
        return float(sum(character in kind for character in token))

    ends = float((token[0] == "1") + (token[-1] == "1"))
    return [count(DIGITS), count(SEPARATORS), count(DASHES), count(SIGNS), ends, count("1") - ends, 1.0]


def _columns(ink: Mask) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    _, start, end = runs(ink.any(axis=0)[None, :])
    return start, end


def _digit_height(ink: Mask, start: NDArray[np.int64], end: NDArray[np.int64]) -> float:
    """The height of the tallest run of columns: a digit, or digits that touch."""
    heights = []
    for x0, x1 in zip(start.tolist(), end.tolist(), strict=True):
        rows = np.flatnonzero(ink[:, x0:x1].any(axis=1))
        heights.append(int(rows[-1] - rows[0]) + 1)
    return float(max(heights, default=0))
