"""How far the lines of a page lean."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Mask

COARSE = np.arange(-15.0, 15.01, 0.5)
FINE = np.arange(-0.5, 0.51, 0.1)
FINEST = np.arange(-0.08, 0.081, 0.02)
POINTS = 40_000


def find_skew(ink: Mask) -> float:
    """Degrees by which the page has to be turned clockwise for its lines to run level (0.0: no lines found).

    Ink is projected along each angle: along the lines the profile is all peaks and gaps.
    """
    y, x = np.nonzero(ink)
    if len(y) < 200:
        return 0.0
    if len(y) > POINTS:
        keep = np.random.default_rng(5).integers(0, len(y), POINTS)
        y, x = y[keep], x[keep]
    across = x - ink.shape[1] / 2.0
    best = 0.0
    for steps in (COARSE, FINE, FINEST):
        best = _best(y, across, best + steps)
    return -best


def _best(y: np.ndarray, x: np.ndarray, degrees: np.ndarray) -> float:
    scores = [_sharpness(y, x, float(angle)) for angle in degrees]
    return float(degrees[int(np.argmax(scores))])


def _sharpness(y: np.ndarray, x: np.ndarray, degrees: float) -> float:
    shifted = y - x * np.tan(np.deg2rad(degrees))
    profile = np.bincount((shifted - shifted.min()).astype(np.int64)).astype(np.float64)
    return float(np.sum(np.diff(profile) ** 2))
