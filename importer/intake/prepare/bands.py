"""Dark bands with pale print, such as the head of a table: turned into dark print on paper."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from importer.intake.prepare import ink

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.geometry import Grey

BLOCK = 8
DARK = 0.86  # of the paper's level
LEAST_WIDTH, LEAST_HEIGHT = 2.5, 1.1  # of the glyph height
FILLED = 0.6
MOSTLY = 0.55  # share of a block's pixels: heavy rules close together are no band
PALE_PRINT, MOST_PALE = 0.02, 0.45  # share of a band that is print
EDGE = 3  # pixels around a band that belong to neither side


def turn_bands(grey: Grey, glyph: float) -> Grey:
    """The page with its dark bands inverted; the picture itself where it has none."""
    height, width = grey.shape
    rows, columns = height // BLOCK, width // BLOCK
    if rows < 4 or columns < 4:
        return grey
    paper = ink.block_max(grey[: rows * BLOCK, : columns * BLOCK], BLOCK)
    paper = ink.closed(paper, columns // 8 + 1, max(6, rows // 16))
    dark = _shares(grey[: rows * BLOCK, : columns * BLOCK], DARK * paper)
    regions = ink.connected(dark >= MOSTLY)
    wide = (regions.width * BLOCK >= LEAST_WIDTH * glyph) & (regions.height * BLOCK >= LEAST_HEIGHT * glyph)
    solid = regions.area >= FILLED * regions.width * regions.height
    turned = grey
    for index in np.flatnonzero(wide & solid).tolist():
        x0, top, x1, bottom = regions.box(index)
        level = int(np.median(paper[top:bottom, x0:x1]))
        area = _exact(grey, (x0 - 1) * BLOCK, (top - 1) * BLOCK, (x1 + 1) * BLOCK, (bottom + 1) * BLOCK, level)
        if area is None:
            continue
        band = grey[area].astype(np.float64)
        fill = float(np.median(band))
        inner = (slice(EDGE, -EDGE), slice(EDGE, -EDGE))
        pale = float((band[inner] > fill + 0.4 * (level - fill)).mean())
        black = float((band[inner] < 0.7 * fill).mean())
        if (
            not PALE_PRINT <= pale <= MOST_PALE or black > 0.3 * pale or level - fill < 20
        ):  # dark print on a tint stays as it is
            continue
        if not _sharp(grey, area, 0.5 * (level - fill)):  # a shadow
            continue
        if turned is grey:
            turned = grey.copy()
        inverted = np.clip(level * (1.0 - (band - fill) / (level - fill)), 0, 255)
        turned[area] = level
        turned[area][inner] = inverted.astype(np.uint8)[inner]
    return turned


def _shares(grey: Grey, levels: NDArray[np.floating]) -> NDArray[np.floating]:
    """How much of each block is darker than its level."""
    rows, columns = levels.shape
    below = grey.reshape(rows, BLOCK, columns, BLOCK) < levels[:, None, :, None]
    shares: NDArray[np.floating] = below.mean(axis=(1, 3), dtype=np.float32)
    return shares


def _sharp(grey: Grey, area: tuple[slice, slice], least: float) -> bool:
    """Whether the band ends within a few pixels, above and below, by at least so many levels."""
    rows, columns = area
    for outside, inside in ((rows.start - 4, rows.start + 4), (rows.stop + 3, rows.stop - 5)):
        if 0 <= outside < grey.shape[0]:
            step = float(np.median(grey[outside, columns])) - float(np.median(grey[inside, columns]))
            if step < least:
                return False
    return True


def _exact(grey: Grey, x0: int, top: int, x1: int, bottom: int, level: int) -> tuple[slice, slice] | None:
    """The band's own rows and columns within a box around it."""
    x0, top = max(0, x0), max(0, top)
    part = grey[top:bottom, x0:x1]
    middle = (level + float(np.median(part))) / 2
    rows = np.flatnonzero(np.median(part, axis=1) < middle)
    columns = np.flatnonzero(np.median(part, axis=0) < middle)
    if len(rows) < 3 * EDGE or len(columns) < 3 * EDGE:
        return None
    return (
        slice(top + int(rows[0]) - 1 if top + rows[0] else 0, top + int(rows[-1]) + 2),
        slice(x0 + int(columns[0]) - 1 if x0 + columns[0] else 0, x0 + int(columns[-1]) + 2),
    )
