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
        image = bitmap.to_pil().convert("L")
    finally:
        bitmap.close()
    columns, rows = image.size
    if columns < 5 or rows < 8 or columns > 200 or rows > 200:
        return None
    return image.tobytes(), columns, rows


def measure(grey: bytes, columns: int, rows: int, level: float) -> _Shape | None:
    """Number of holes in the ink and the height of their middle. Ink is what differs from the most common shade."""
    paper = Counter(grey).most_common(1)[0][0]
    contrast = max(abs(value - paper) for value in grey)
    if contrast < 40:
        return None
    dark = [abs(value - paper) >= level * contrast for value in grey]
    inked = [i // columns for i, ink in enumerate(dark) if ink]
    if len(inked) < 8:
        return None
    top, bottom = min(inked), max(inked)
    if bottom - top < 8:
        return None
    seen = bytearray(dark)
    holes: list[list[int]] = []
    for start in range(columns * rows):
        if seen[start]:
            continue
        region, open_ = _flood(start, seen, columns, rows)
        if not open_ and len(region) >= SMALLEST_HOLE:
            holes.append(region)
    if not holes:
        return _Shape(0, 0.5)
    middle = sum(i // columns for hole in holes for i in hole) / sum(len(hole) for hole in holes)
    return _Shape(len(holes), (middle - top) / (bottom - top))


def _flood(start: int, seen: bytearray, columns: int, rows: int) -> tuple[list[int], bool]:
    stack, region, open_ = [start], [], False
    seen[start] = 1
    while stack:
        at = stack.pop()
        region.append(at)
        x, y = at % columns, at // columns
        if x in (0, columns - 1) or y in (0, rows - 1):
            open_ = True
        for there in (
            at - 1 if x else -1,
            at + 1 if x < columns - 1 else -1,
            at - columns if y else -1,
            at + columns if y < rows - 1 else -1,
        ):
            if there >= 0 and not seen[there]:
                seen[there] = 1
                stack.append(there)
    return region, open_


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
