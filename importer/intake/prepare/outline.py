"""The outline of a sheet of paper photographed on something darker."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PIL import Image, ImageFilter

from importer.intake.prepare.ink import levels

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.geometry import Grey, Points

    Floats = NDArray[np.float64]

LONGER_SIDE = 640
BORDER_SHARE = 0.02
BORDER_DARKER = 0.8
RISE = 0.22  # of the natural logarithm: paper at least a quarter brighter than what it lies on
REACH = 4  # pixels over which an edge may be spread
SUSTAIN = 12  # pixels behind an edge that stay bright
LINE_TOLERANCE = 2.5
LEAST_SUPPORT = 0.35
LEAST_AREA = 0.2
TRIALS = 200


def find_outline(grey: Grey) -> Points | None:
    """The corners of the sheet (top left, top right, bottom right, bottom left) in pixels, or None.

    None for a scan: there the border of the picture is paper. A side that runs outside the picture is taken to be
    the picture's own border; fewer than two sides found is no find.
    """
    height, width = grey.shape
    border = _border(grey)
    paper = levels(grey, (0.9,))[0]
    if float(np.median(border)) >= BORDER_DARKER * paper:
        return None
    shrink = max(1.0, max(height, width) / LONGER_SIDE)
    size = (max(8, round(width / shrink)), max(8, round(height / shrink)))
    small = Image.fromarray(grey).resize(size, Image.Resampling.BOX).filter(ImageFilter.GaussianBlur(1.0))
    bright = np.log(np.maximum(np.asarray(small, dtype=np.float64), 4.0))
    views = [bright, bright[:, ::-1].T, bright[::-1], bright.T]  # top, right, bottom, left seen as a top side
    lines = [_top_side(view) for view in views]
    if sum(line is not None for line in lines) < 2:
        return None
    corners = _corners(lines, size[0], size[1])
    if corners is None or not _sensible(corners, size[0], size[1]):
        return None
    scale: Points = corners * np.array([width / size[0], height / size[1]])
    return scale


def _border(grey: Grey) -> Grey:
    band_y = max(1, round(grey.shape[0] * BORDER_SHARE))
    band_x = max(1, round(grey.shape[1] * BORDER_SHARE))
    sides = (grey[:band_y], grey[-band_y:], grey[:, :band_x], grey[:, -band_x:])
    return np.concatenate([side.ravel() for side in sides])


def _top_side(bright: Floats) -> tuple[float, float] | None:
    """Slope and offset of the first strong rise from above, or None where too few columns agree."""
    height, width = bright.shape
    if height < 4 * SUSTAIN:
        return None
    rise = bright[REACH:] - bright[:-REACH]
    sums = np.cumsum(np.vstack([np.zeros(width), bright]), axis=0)
    after = (sums[REACH + SUSTAIN :] - sums[REACH:-SUSTAIN]) / SUSTAIN  # mean behind the edge
    rows = min(len(after), len(rise))
    strong = (rise[:rows] > RISE) & (after[:rows] - bright[:rows] > RISE)
    strong[int(0.6 * height) :] = False
    columns = np.flatnonzero(strong.any(axis=0))
    if len(columns) < LEAST_SUPPORT * width:
        return None
    first = strong[:, columns].argmax(axis=0)
    # the steepest place of the edge that begins there
    window = np.minimum(first[:, None] + np.arange(REACH + 2), rows - 1)
    steepest = rise[window, columns[:, None]].argmax(axis=1)
    y = (first + steepest).astype(np.float64) + REACH / 2.0 + 0.5
    return _line(columns.astype(np.float64) + 0.5, y)


def _line(x: Floats, y: Floats) -> tuple[float, float] | None:
    """The line most points agree on (random sampling with a fixed seed), refined by least squares."""
    random = np.random.default_rng(7)
    a, b = random.integers(0, len(x), TRIALS), random.integers(0, len(x), TRIALS)
    apart = np.abs(x[a] - x[b]) > 0.15 * (x[-1] - x[0])
    a, b = a[apart], b[apart]
    if not len(a):
        return None
    slopes = (y[b] - y[a]) / (x[b] - x[a])
    offsets = y[a] - slopes * x[a]
    near = np.abs(slopes[:, None] * x + offsets[:, None] - y) < LINE_TOLERANCE
    best = int(near.sum(axis=1).argmax())
    inside = near[best]
    if inside.sum() < LEAST_SUPPORT * len(x) or inside.sum() < 12 or abs(slopes[best]) > 0.6:
        return None
    for _ in range(2):
        slope, offset = np.polyfit(x[inside], y[inside], 1)
        inside = np.abs(slope * x + offset - y) < LINE_TOLERANCE
    return float(slope), float(offset)


def _corners(lines: list[tuple[float, float] | None], width: int, height: int) -> Points | None:
    top = lines[0] or (0.0, 0.0)
    bottom_view = lines[2]
    bottom = (-bottom_view[0], height - bottom_view[1]) if bottom_view else (0.0, float(height))
    right_view, left_view = lines[1], lines[3]
    # x as a line over y
    right = (-right_view[0], width - right_view[1]) if right_view else (0.0, float(width))
    left = left_view or (0.0, 0.0)
    found = [_meet(top, left), _meet(top, right), _meet(bottom, right), _meet(bottom, left)]
    corners = np.array(found)
    return corners if np.all(np.isfinite(corners)) else None


def _meet(level: tuple[float, float], upright: tuple[float, float]) -> tuple[float, float]:
    """Where y = a x + b meets x = c y + d."""
    a, b = level
    c, d = upright
    denominator = 1.0 - a * c
    if abs(denominator) < 1e-6:
        return float("nan"), float("nan")
    y = (a * d + b) / denominator
    return c * y + d, y


def _sensible(corners: Points, width: int, height: int) -> bool:
    """A convex sheet of some size with corners that are not far from right angles, within or near the picture."""
    sides = np.roll(corners, -1, axis=0) - corners
    lengths = np.hypot(sides[:, 0], sides[:, 1])
    if lengths.min() < 0.25 * min(width, height):
        return False
    turns = sides[:, 0] * np.roll(sides[:, 1], -1) - sides[:, 1] * np.roll(sides[:, 0], -1)
    sines = turns / (lengths * np.roll(lengths, -1))
    x, y = corners[:, 0], corners[:, 1]
    area = 0.5 * float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))
    margin = 0.15 * max(width, height)
    inside = (x > -margin).all() and (x < width + margin).all() and (y > -margin).all() and (y < height + margin).all()
    return bool((sines > 0.8).all() and area > LEAST_AREA * width * height and inside)
