"""Ink of pens and stamps on a colour picture: told from print by its colour and shape, and taken out of the grey page.

What was under an opaque stroke cannot be seen, so the mask of what was taken out goes along with the page: a figure
that it touches is not to be trusted.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image

from importer.intake.prepare import ink
from importer.intake.prepare.ticks import is_tick, whole_mark

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.geometry import Grey
    from importer.intake.prepare.ink import Marks, Mask

    Floats = NDArray[np.float32]
    Colours = NDArray[np.uint8]

A4_LONGER_SIDE_MM = 297.0
GLANCE = 4  # the picture is first looked at so many times smaller
LEAST_COLOURED = 30  # pixels of the glance
# Chroma from which a pixel has a colour of its own: steps between its channels, and their share of the brightest one.
CHROMA, SATURATION = 45, 0.3
# Millimetres: a stamp is wider and higher than the first; the greater side of a stroke of a pen is between the others.
STAMP, STROKE, LONGEST_STROKE = 11.0, 3.5, 25.0
SLENDER = 0.34  # of its box that a stroke or an outline covers at most
STRAIGHT = 0.3  # of a mark's pixels in long level or upright runs: a ruled table, not a stamp
# Marks of the same colour that look like letters: so many, and the colour is that of print.
PRINTED, LETTER = 4, 3.5
ALIKE = 0.96  # cosine between two inks
# Of the brightest channel of the stroke: darker pixels are print that shows through it.
OVERPRINT = 0.75
REACH = 2.0  # millimetres around a stroke from which the paper below it is known


@dataclass(frozen=True, slots=True)
class Parted:
    """The grey page, and where ink of pens and stamps was taken out of it (None: nowhere)."""

    grey: Grey
    taken: Mask | None


def part(picture: Image.Image) -> Parted:
    """The grey page of a picture without the coloured ink of pens and stamps."""
    grey = np.asarray(picture.convert("L"))
    if picture.mode != "RGB":
        return Parted(grey, None)
    glance = picture.reduce(GLANCE) if min(picture.size) >= 8 * GLANCE else picture
    paper = _paper(np.asarray(glance))
    if np.count_nonzero(_coloured(np.asarray(glance), paper)) < LEAST_COLOURED:
        return Parted(grey, None)
    colours = np.asarray(picture)
    mask = _coloured(colours, paper)
    marks = ink.connected(mask)
    millimetre = max(picture.size) / A4_LONGER_SIDE_MM
    marks = marks.take(np.maximum(marks.width, marks.height) >= 0.8 * millimetre)
    areas = _areas(mask, marks, millimetre)
    taken = np.zeros(mask.shape, dtype=bool)
    for area in areas:
        if not _is_print(area, areas, marks, mask, colours, paper, millimetre):
            _take(area, mask, colours, paper, taken)
    if not taken.any():
        return Parted(grey, None)
    around = ink.paper_under(grey, round(REACH * millimetre), GLANCE)
    return Parted(np.where(taken, around, grey), taken)


def _paper(colours: Colours) -> Floats:
    return np.array([ink.levels(colours[..., channel], (0.7,))[0] for channel in range(3)], dtype=np.float32)


def _coloured(colours: Colours, paper: Floats) -> Mask:
    """Which pixels have another colour than the paper and black print on it."""
    tables = [np.clip(np.arange(256) * (255.0 / max(level, 1.0)), 0, 255).astype(np.int16) for level in paper]
    red, green, blue = (table[colours[..., channel]] for channel, table in enumerate(tables))
    brightest = np.maximum(np.maximum(red, green), blue)
    chroma = brightest - np.minimum(np.minimum(red, green), blue)
    coloured: Mask = (chroma >= CHROMA) & (chroma >= SATURATION * brightest)
    return coloured


def _areas(mask: Mask, marks: Marks, millimetre: float) -> list[tuple[int, int, int, int]]:
    """The boxes of what has the shape of a stamp or of a stroke of a pen."""
    longer = np.maximum(marks.width, marks.height) / millimetre
    shorter = np.minimum(marks.width, marks.height) / millimetre
    slender = marks.area <= SLENDER * marks.width * marks.height
    stamps = slender & (shorter >= STAMP)
    strokes = slender & (longer >= STROKE) & (longer <= LONGEST_STROKE) & (shorter >= 0.4 * STROKE)
    found = []
    for index in np.flatnonzero(stamps | strokes).tolist():
        box = marks.box(index)
        inside = mask[box[1] : box[3], box[0] : box[2]]
        meant = stamps[index] or (is_tick(whole_mark(inside)) and not _in_a_row(marks, index))
        if meant and not _is_ruled(inside, millimetre):
            found.append(box)
    return found


def _in_a_row(marks: Marks, index: int) -> bool:
    """Whether a mark has neighbours of its own height beside it, as letters of a title have."""
    x0, top, x1, bottom = marks.box(index)
    height = bottom - top
    alike = np.abs(marks.height - height) <= 0.3 * height
    level = (marks.top < bottom - 0.5 * height) & (marks.bottom > top + 0.5 * height)
    near = (marks.x0 < x1 + 0.6 * height) & (marks.x1 > x0 - 0.6 * height)
    return int(np.count_nonzero(alike & level & near)) > 1  # the mark itself is one


def _is_ruled(mask: Mask, millimetre: float) -> bool:
    total = np.count_nonzero(mask)
    long = 5.0 * millimetre
    straight = 0
    for turned in (mask, mask.T):
        _, start, end = ink.runs(turned)
        lengths = end - start
        straight += int(lengths[lengths >= long].sum())
    return bool(straight > STRAIGHT * total)


def _inks(box: tuple[int, int, int, int], mask: Mask, colours: Colours, paper: Floats) -> tuple[Floats, Mask]:
    """The density of each coloured pixel in a box in the three channels, and where these pixels are."""
    x0, top, x1, bottom = box
    inside = mask[top:bottom, x0:x1]
    shares = np.clip(colours[top:bottom, x0:x1][inside] / paper, 1 / 255, 1.0)
    return (-np.log(shares)).astype(np.float32), inside


def _usual(inks: Floats) -> Floats:
    usual = np.median(inks, axis=0)
    length = float(np.linalg.norm(usual))
    unit: Floats = (usual / length if length else usual).astype(np.float32)
    return unit


def _alike(inks: Floats, usual: Floats) -> Mask:
    lengths = np.linalg.norm(inks, axis=1)
    like: Mask = inks @ usual >= ALIKE * np.maximum(lengths, 1e-6)
    return like


def _is_print(
    area: tuple[int, int, int, int],
    areas: list[tuple[int, int, int, int]],
    marks: Marks,
    mask: Mask,
    colours: Colours,
    paper: Floats,
    millimetre: float,
) -> bool:
    """Whether letters outside of all stamps and strokes have the same colour: then it may be print, and stays."""
    usual = _usual(_inks(area, mask, colours, paper)[0])
    outside = np.maximum(marks.width, marks.height) <= LETTER * millimetre
    for x0, top, x1, bottom in areas:
        outside &= (marks.x1 <= x0) | (marks.x0 >= x1) | (marks.bottom <= top) | (marks.top >= bottom)
    letters = 0
    for index in np.flatnonzero(outside).tolist():
        letters += bool(_alike(_usual(_inks(marks.box(index), mask, colours, paper)[0])[None, :], usual)[0])
        if letters >= PRINTED:
            return True
    return False


def _take(area: tuple[int, int, int, int], mask: Mask, colours: Colours, paper: Floats, taken: Mask) -> None:
    """Mark what is to be taken out: pixels of the ink of ``area`` with their soft edges, but for print below."""
    inks, inside = _inks(area, mask, colours, paper)
    brightest = np.exp(-inks.min(axis=1))
    own = _alike(inks, _usual(inks)) & (brightest >= OVERPRINT * float(np.median(brightest)))
    x0, top, x1, bottom = area
    stroke = np.zeros_like(inside)
    stroke[inside] = own
    pad = 2
    y0, y1, left, right = max(0, top - pad), bottom + pad, max(0, x0 - pad), x1 + pad
    shares = colours[y0:y1, left:right] / paper
    framed = np.zeros(shares.shape[:2], dtype=bool)
    framed[top - y0 : top - y0 + stroke.shape[0], x0 - left : x0 - left + stroke.shape[1]] = stroke
    bright = shares.max(axis=2) >= OVERPRINT * float(np.median(brightest))
    taken[y0:y1, left:right] |= ink.thickened(framed, pad) & bright
