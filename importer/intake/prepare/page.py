"""One picture of a page -> the upright, level, evenly lit page at one size of print."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image, ImageFilter

from importer.intake.prepare import bands, cells, geometry, ink, outline, rules, skew, turn
from importer.intake.prepare.broken_lines import find_broken
from importer.intake.prepare.ticks import find_ticks

if TYPE_CHECKING:
    from importer.intake.prepare.cells import Cells
    from importer.intake.prepare.geometry import Grey, Matrix
    from importer.intake.prepare.ink import Marks, Mask

GLYPH = 16.0  # height of a figure on the prepared page, in pixels
LOOK = 1600  # longer side of the small picture on which everything is estimated
MOST_PIXELS = 8_000_000
LEAST_SKEW = 0.15  # degrees; below it turning blurs more than it helps
A4_LONGER_SIDE = 842.0
NARROWEST = 12  # pixels; a picture as flat as that holds no line of text

LINES_ASKED = 14
# Words are 1.1 to 1.7 times as high as the middle letter; beyond this the letters are in pieces.
BROKEN_LETTERS = 2.0
WORD_TO_GLYPH = 0.8

# Says whether most of some pieces of level text stand on their head; None: cannot tell.
UpsideDown = Callable[[list[Image.Image]], bool | None]


@dataclass(frozen=True)
class Prepared:
    """The page as it is read.

    ``even`` is the grey page with its paper at one level and rules taken out; ``ink`` its mask; ``marks`` the
    connected marks. ``matrix`` maps pixels of the picture to pixels of ``even``; ``points`` is points per pixel of
    ``even``. ``print_pixels`` is the height of a figure in pixels of the picture, ``axis_share`` how many marks agree
    on the direction of the lines (0.5..1), ``paper`` and ``darkest`` the levels of paper and ink in ``even``. ``taken``
    says where coloured ink was taken out (None: nowhere).
    """

    even: Grey
    ink: Mask
    marks: Marks
    level_rules: Marks
    upright_rules: Marks
    matrix: Matrix
    points: float
    glyph: float
    print_pixels: float
    axis_share: float
    darkest: float
    paper: float
    turns: int
    taken: Mask | None

    @cached_property
    def cells(self) -> Cells:
        """The cells of the page, found once for all that read it."""
        return cells.find_cells(self.marks, self.upright_rules, self.glyph)

    @property
    def width(self) -> float:
        return float(self.even.shape[1]) * self.points

    @property
    def height(self) -> float:
        return float(self.even.shape[0]) * self.points


@dataclass(frozen=True, slots=True)
class _Look:
    """What the small picture shows: its mask of ink, the marks that may be letters, and letters run together too."""

    grey: Grey
    ink: Mask
    letters: Marks
    strings: Marks
    glyph: float


@dataclass(frozen=True, slots=True)
class _Source:
    """The picture, the level of its paper, and the picture for looks, ``shrink`` times smaller."""

    image: Image.Image
    paper: int
    coarse: Image.Image
    shrink: int


def prepare(grey: Grey, dpi: float | None, upside_down: UpsideDown, taken: Mask | None = None) -> Prepared | None:
    """Bring a grey picture upright, level, evenly lit and to one size of print; None for a picture without room.

    ``taken`` are the pixels of the picture from which ink of pens and stamps was taken out.
    """
    height, width = grey.shape
    if min(height, width) < NARROWEST:
        return None
    matrix, size = np.eye(3), (float(width), float(height))
    corners = outline.find_outline(grey)
    if corners is not None:
        size = _sheet_size(corners)
        matrix = geometry.from_corners(corners, geometry.frame(*size))
    picture = _source(grey, size)
    look, step = _look(picture, matrix, size)
    axis = turn.find_axis(look.strings, look.glyph)
    turns = 0 if axis.upright else 1
    matrix, size, look, step = _turned(picture, matrix, size, turns, look, step)
    level, level_size, look, step = _levelled(picture, matrix, size, look, step)
    if upside_down(_pieces(look)):
        turns += 2
        matrix, size, look, step = _turned(picture, level, level_size, 2, look, step)
    else:
        matrix, size = level, level_size
    scale = _scale(look.glyph * step, size)
    final = (max(NARROWEST, round(size[0] * scale)), max(NARROWEST, round(size[1] * scale)))
    longer = max(size)
    points = (72.0 / dpi if dpi and corners is None else A4_LONGER_SIDE / longer) / scale
    final_matrix = geometry.scaling(scale) @ matrix
    page = _finish(picture, final_matrix, final, points, look.glyph * step, axis.share, turns)
    if taken is None:
        return page
    drawn = np.asarray(geometry.resample(Image.fromarray(taken), final_matrix, final, 0)).astype(bool)
    return replace(page, taken=drawn if page.taken is None else drawn | page.taken)


def _sheet_size(corners: geometry.Points) -> tuple[float, float]:
    sides = np.hypot(*(np.roll(corners, -1, axis=0) - corners).T)
    return float(max(sides[0], sides[2])), float(max(sides[1], sides[3]))


def _source(grey: Grey, size: tuple[float, float]) -> _Source:
    image = Image.fromarray(grey)
    shrink = max(1, int(max(size) / LOOK))
    return _Source(image, int(ink.levels(grey, (0.7,))[0]), image.reduce(shrink) if shrink > 1 else image, shrink)


def _look(picture: _Source, matrix: Matrix, size: tuple[float, float]) -> tuple[_Look, float]:
    """The small picture through ``matrix``; also how many pixels of the map's target one of its pixels covers."""
    step = max(1.0, max(size) / LOOK)
    small_size = (max(8, round(size[0] / step)), max(8, round(size[1] / step)))
    small_matrix = geometry.scaling(1.0 / step) @ matrix @ geometry.scaling(picture.shrink)
    small = geometry.resample(picture.coarse, small_matrix, small_size, picture.paper)
    reach = max(8, max(small_size) // 40)
    grey = ink.even_paper(np.asarray(small), reach, 4)
    mask = ink.ink_of(grey)
    marks = ink.connected(mask)
    if _dirty(marks):
        soft = np.asarray(small.filter(ImageFilter.BoxBlur(1)))
        even = ink.even_paper(soft, reach, 4)
        mask = ink.ink_of(even)
        marks = ink.connected(mask)
    letters, glyph = letters_of(marks)
    words = word_height(mask)
    if words > BROKEN_LETTERS * glyph:
        mask = ink.thickened(mask, 1)
        marks = ink.connected(mask)
        letters, _ = letters_of(marks)
        glyph = WORD_TO_GLYPH * words
    longest = np.maximum(marks.width, marks.height)
    strings = marks.take((longest >= 0.5 * glyph) & (longest <= 25 * glyph))
    return _Look(grey, mask, letters, strings, glyph), step


def _dirty(marks: Marks) -> bool:
    """More dirt than print: noise or the pepper of a copier."""
    dirt = int(np.count_nonzero(marks.area <= 3))
    return dirt > 300 and dirt > 0.4 * len(marks)


def letters_of(marks: Marks) -> tuple[Marks, float]:
    """The marks that may be letters or figures, and their middle height in pixels (0.0: none)."""
    height, width = marks.height, marks.width
    possible = (height >= 4) & (height <= 120) & (width <= 4 * height) & (height <= 8 * width) & (marks.area >= 6)
    heights = height[possible]
    if not len(heights):
        return marks.take(possible), 0.0
    middle = float(np.median(heights))
    for _ in range(2):
        near = heights[(heights >= 0.6 * middle) & (heights <= 2.0 * middle)]
        middle = float(np.median(near))
        alike = near[np.abs(near - middle) <= 1.0]
        if len(alike):  # a few marks of all sizes have no common height
            middle = float(np.mean(alike))
    return marks.take(possible & (height >= 0.5 * middle) & (height <= 2.5 * middle)), middle


def word_height(ink_mask: Mask) -> float:
    """The middle height of words, in whatever direction they run; 0.0 where there are too few.

    Letters that a copier has broken into pieces still make whole words.
    """
    blobs = ink.connected(ink.thickened(ink_mask, 2))
    height, width = blobs.height - 4, blobs.width - 4
    short, long = np.minimum(height, width), np.maximum(height, width)
    words = (short >= 5) & (short <= 80) & (long >= 1.6 * short) & (long <= 20 * short)
    words &= blobs.area >= 0.45 * blobs.height * blobs.width
    return float(np.median(short[words])) if np.count_nonzero(words) >= 8 else 0.0


def _pieces(look: _Look) -> list[Image.Image]:
    """Some words of the small picture, the longest of moderate length first."""
    if not look.glyph:
        return []
    found = cells.find_cells(look.letters, cells.NO_RULES, look.glyph)
    width, height = found.x1 - found.x0, found.bottom - found.top
    usable = np.flatnonzero((width >= 2 * height) & (width <= 9 * height) & (height >= 0.8 * look.glyph))
    chosen = usable[np.argsort(-width[usable], kind="stable")][:LINES_ASKED]
    pad = max(2, round(0.25 * look.glyph))
    whitened = [min(255, round(level * 255 / ink.PAPER)) for level in range(256)]
    pieces = []
    taken = found.take(chosen)
    for x0, top, x1, bottom in zip(
        taken.x0.tolist(), taken.top.tolist(), taken.x1.tolist(), taken.bottom.tolist(), strict=True
    ):
        piece = Image.fromarray(look.grey[max(0, top - pad) : bottom + pad, max(0, x0 - pad) : x1 + pad])
        pieces.append(piece.point(whitened))
    return pieces


def _turned(
    picture: _Source, matrix: Matrix, size: tuple[float, float], turns: int, look: _Look, step: float
) -> tuple[Matrix, tuple[float, float], _Look, float]:
    if not turns:
        return matrix, size, look, step
    matrix = geometry.quarter_turns(turns, *size) @ matrix
    size = size if turns == 2 else (size[1], size[0])
    if turns == 2:  # nothing on the small picture is used from here on but the height of its letters
        return matrix, size, look, step
    look, step = _look(picture, matrix, size)
    return matrix, size, look, step


def _levelled(
    picture: _Source, matrix: Matrix, size: tuple[float, float], look: _Look, step: float
) -> tuple[Matrix, tuple[float, float], _Look, float]:
    degrees = skew.find_skew(look.ink)
    if abs(degrees) < LEAST_SKEW:
        return matrix, size, look, step
    rotation, width, height = geometry.rotation(degrees, *size)
    matrix, size = rotation @ matrix, (width, height)
    look, step = _look(picture, matrix, size)
    return matrix, size, look, step


def _scale(print_pixels: float, size: tuple[float, float]) -> float:
    scale = GLYPH / print_pixels if print_pixels else 1.0
    most = (MOST_PIXELS / max(size[0] * size[1], 1.0)) ** 0.5
    return float(min(max(scale, 0.1), 6.0, most))


def _finish(
    picture: _Source,
    matrix: Matrix,
    size: tuple[int, int],
    points: float,
    print_pixels: float,
    axis_share: float,
    turns: int,
) -> Prepared:
    drawn = geometry.resample(picture.image, matrix, size, picture.paper)
    grey = bands.turn_bands(np.asarray(drawn), GLYPH)
    even = ink.even_paper(grey, round(0.8 * GLYPH), 2)
    level, upright, lines = rules.find_rules(ink.ink_of(even), GLYPH)
    blank = int(ink.levels(even, (0.5,))[0])
    if lines.any():
        even[ink.thickened(lines, 1)] = blank
    mask = ink.ink_of(even)  # once more: without heavy lines pale print is seen better
    marks = ink.connected(mask)
    darkest, paper = ink.levels(even, (0.005, 0.5))
    ticks = find_ticks(even, mask, marks, GLYPH, darkest, paper)
    if ticks is not None:
        even[ticks] = blank
        mask &= ~ticks
        marks = ink.connected(mask)
    broken, broken_upright = find_broken(marks, GLYPH)
    leaders = rules.find_leaders(marks, GLYPH) | broken
    for index in np.flatnonzero(leaders).tolist():
        x0, top, x1, bottom = marks.box(index)
        even[max(0, top - 1) : bottom + 1, max(0, x0 - 1) : x1 + 1] = blank
        mask[top:bottom, x0:x1] = False
    darkest, paper = ink.levels(even, (0.005, 0.5))
    even = _stretched(even, darkest, paper)
    return Prepared(
        even,
        mask,
        marks.take(~leaders),
        level,
        upright.plus(broken_upright),
        matrix,
        points,
        GLYPH,
        print_pixels,
        axis_share,
        darkest,
        paper,
        turns,
        ticks,
    )


def _stretched(even: Grey, darkest: float, paper: float) -> Grey:
    """Ink to black and paper to white; a page that is nearly blank is left pale."""
    contrast = max(paper - darkest, 0.12 * paper, 1.0)
    table = np.clip((np.arange(256) - (paper - contrast)) * (255.0 / contrast), 0, 255).astype(np.uint8)
    stretched: Grey = table[even]
    return stretched
