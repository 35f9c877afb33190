"""Whether the digits of a text layer are the digits that the page shows.

A font can map its shapes to the wrong characters: the text says 8 where a 3 is drawn. One example of each digit of each
font is drawn and its shape looked at: the number and place of its holes. That a shape cannot be told is no evidence.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from typing import Any, NamedTuple

from importer.words import Box

GLYPH_PIXELS = 28
# Shares of the strongest contrast at which a pixel counts as ink: thin strokes open at one and close at another.
INK_LEVELS = (0.4, 0.25, 0.6)
# Fewer pixels than this are a speck of the drawing, not a hole.
SMALLEST_HOLE = 4
# Where the middle of a lone hole lies, as a share of the digit's height from the top.
UPPER, LOWER = 0.46, 0.54
# Digits with holes tell most: no mapping mixed up at random leaves all of them in place.
TELLING_DIGITS = frozenset("0689")
_NO_HOLE = frozenset("12357")
_HOLES: dict[str, frozenset[int]] = {
    "0": frozenset({1, 2}),
    "4": frozenset({0, 1}),
    "6": frozenset({1}),
    "8": frozenset({2}),
    "9": frozenset({1}),
    **{digit: frozenset({0}) for digit in _NO_HOLE},
}


class Sample(NamedTuple):
    """One drawn digit: what the text says it is, and where it stands in page space (bottom-left origin)."""

    text: str
    box: Box


def first_mismatch(page: Any, samples: Iterable[Sample]) -> str | None:
    """The first digit whose shape cannot be what the text says, None if there is none. ``page`` is a pypdfium2 page."""
    turn = page.get_rotation()
    if turn:
        page.set_rotation(0)
    try:
        width, height = page.get_size()
        for sample in samples:
            if _differs(page, sample, width, height):
                return sample.text
        return None
    finally:
        if turn:
            page.set_rotation(turn)


class _Shape(NamedTuple):
    holes: int
    place: float


def _differs(page: Any, sample: Sample, width: float, height: float) -> bool:
    """True where the drawn shape is not that of the digit at any level of ink."""
    drawn = _draw(page, sample, width, height)
    if drawn is None:
        return False
    shapes = (measure(*drawn, level) for level in INK_LEVELS)
    return all(shape is not None and not _fits(sample.text, shape) for shape in shapes)


def _draw(page: Any, sample: Sample, width: float, height: float) -> tuple[bytes, int, int] | None:
    scale = GLYPH_PIXELS / max(sample.box.height, 1.0)
    box = sample.box
    crop = (
        max(0.0, box.x0 - 0.5),
        max(0.0, box.top - 0.5),
        max(0.0, width - box.x1 - 0.5),
        max(0.0, height - box.bottom - 0.5),
    )
    if crop[0] + crop[2] >= width or crop[1] + crop[3] >= height:
        return None
    bitmap = page.render(scale=scale, crop=crop, grayscale=True)
    try:
        columns, rows, stride = bitmap.width, bitmap.height, bitmap.stride
        if columns < 5 or rows < 8 or columns > 200 or rows > 200:
            return None
        grey = bytes(bitmap.buffer)
    finally:
        bitmap.close()
    if stride != columns:
        grey = b"".join(grey[at : at + columns] for at in range(0, rows * stride, stride))
    return grey, columns, rows


def measure(grey: bytes, columns: int, rows: int, level: float) -> _Shape | None:
    """Number of holes in the ink and the height of their middle. Ink is what differs from the most common shade."""
    shades = Counter(grey)
    paper = shades.most_common(1)[0][0]
    contrast = max(abs(value - paper) for value in shades)
    if contrast < 40:
        return None
    ink = bytearray(b"0" * 256)
    for value in shades:
        if abs(value - paper) >= level * contrast:
            ink[value] = 49  # "1"
    marks = grey.translate(ink)
    lines = [marks[at : at + columns] for at in range(0, columns * rows, columns)]
    inked = [row for row, line in enumerate(lines) if b"1" in line]
    if marks.count(b"1") < 8:
        return None
    top, bottom = inked[0], inked[-1]
    if bottom - top < 8:
        return None
    holes = _holes(lines, columns)
    if not holes:
        return _Shape(0, 0.5)
    inside, row = sum(holes), (1 << columns) - 1
    counts = [(inside >> at & row).bit_count() for at in range(0, rows * (columns + 1), columns + 1)]
    middle = sum(at * count for at, count in enumerate(counts)) / sum(counts)
    return _Shape(len(holes), (middle - top) / (bottom - top))


def _holes(lines: list[bytes], columns: int) -> list[int]:
    """The stretches of paper that the ink encloses. A picture is one whole number here, a bit for each pixel, with a
    column of ink at the end of every row, so that all pixels spread to their neighbours in one step.
    """
    stride = columns + 1
    whole = int(b"1".join(lines)[::-1], 2)
    paper = ~whole & ((1 << len(lines) * stride - 1) - 1)
    edge = (1 << columns) - 1
    edge |= edge << (len(lines) - 1) * stride
    for at in range(len(lines)):
        edge |= (1 | 1 << columns - 1) << at * stride
    left = paper & ~_flooded(paper & edge, paper, stride)
    holes: list[int] = []
    while left:
        hole = _flooded(left & -left, left, stride)
        left &= ~hole
        if hole.bit_count() >= SMALLEST_HOLE:
            holes.append(hole)
    return holes


def _flooded(wet: int, paper: int, stride: int) -> int:
    before = 0
    while wet != before:
        before = wet
        wet |= (wet << 1 | wet >> 1 | wet << stride | wet >> stride) & paper
    return wet


def _fits(text: str, shape: _Shape) -> bool:
    if shape.holes > 2:
        return True
    if shape.holes not in _HOLES[text]:
        return False
    if shape.holes == 1:
        if text == "6":
            return shape.place > UPPER
        if text == "9":
            return shape.place < LOWER
    return True
