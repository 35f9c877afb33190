"""The picture of a page -> words, second readings, rules, what could not be read, and whether to trust the page."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image

from importer.intake import ocr, second
from importer.intake.cellwise import CellsRead, read_cells
from importer.intake.prepare.ink import thickened
from importer.intake.prepare.page import A4_LONGER_SIDE, Prepared, UpsideDown, prepare
from importer.intake.prepare.parts import find_parts
from importer.words import Box, Page, SecondReading, Word

if TYPE_CHECKING:
    from importer.intake.prepare.geometry import Grey
    from importer.intake.prepare.ink import Mask

MAIN_GLYPH = 26  # height of a figure in the picture for the main reader, in pixels
WHITE = 200  # levels of the prepared page from which the main reader sees plain paper
_WHITENED = [min(255, level * 255 // WHITE) for level in range(256)]
SPECK_AREA = 3  # pixels of the prepared page; a decimal point has 5 and more
MOST_SPECKS = 1500
# Pixels around ink that its soft edges reach; the share of a page's pixels that may be dark without being ink.
NEAR_INK, MOST_NOISE = 3, 0.03
_SUM = re.compile(r"(?<=\d)\+(?=\d)")
POOR_READING = 0.55  # mean confidence of a page that may stand on its head
# The page gate.
LEAST_AGREEMENT = 0.6
LEAST_COMPARED = 6
MOST_UNEXPLAINED = 0.3
LEAST_AXIS_SHARE = 0.6
LEAST_PRINT = 6.5  # height of a figure in pixels of the picture
BETTER_COPY = (
    "Ask for the original PDF, or for a scan at 300 dpi, or for a sharp photograph: page flat, filling the frame, "
    "without shadow."
)


def read_page(grey: Grey, number: int, dpi: float | None, taken: Mask | None = None) -> Page:
    """Read a grey picture (0 black .. 255 white) of one page; ``taken`` is where coloured ink was taken out of it."""
    height, width = grey.shape
    page = prepare(grey, dpi, second.upside_down, taken)
    if page is None or not len(page.marks):
        scale = 72.0 / dpi if dpi else A4_LONGER_SIDE / max(width, height)
        return Page(number, width * scale, height * scale, (), "ocr")
    words = read_words(page)
    if not second.can_tell_upside_down() and quality(words) < POOR_READING:
        page, words = _better_turn(page, words, grey, dpi, taken)
    read = read_cells(page, words)
    return Page(
        number,
        page.width,
        page.height,
        tuple(_word(word, page.points) for word in read.words),
        "ocr",
        rules=_rules(page),
        second=tuple(SecondReading(r.text, scaled(r.box, page.points), r.reader, r.confidence) for r in read.readings),
        doubt=doubt(page, read),
        lost=tuple(scaled(box, page.points) for box in read.lost),
    )


def read_words(page: Prepared) -> list[ocr.Seen]:
    """The main reader's words, in pixels of the prepared page."""
    pad = round(1.5 * page.glyph)
    left, top = max(0, int(page.marks.x0.min()) - pad), max(0, int(page.marks.top.min()) - pad)
    right, bottom = int(page.marks.x1.max()) + pad, int(page.marks.bottom.max()) + pad
    reach = (left, top, min(right, page.even.shape[1]), min(bottom, page.even.shape[0]))
    parts = find_parts(page.cells, page.glyph, reach)
    clean = _without_dirt(page)
    enlarge = MAIN_GLYPH / page.glyph
    pictures = [_enlarged(clean[top:bottom, left:right], enlarge) for left, top, right, bottom in parts]
    dpi = 72.0 / page.points * enlarge
    read = ocr.read_blocks(pictures, dpi) if len(pictures) > 1 else [ocr.read_block(pictures[0], dpi)]
    return [
        word._replace(
            text=_SUM.sub("±", word.text),
            x0=word.x0 / enlarge + left,
            x1=word.x1 / enlarge + left,
            top=word.top / enlarge + top,
            bottom=word.bottom / enlarge + top,
        )
        for (left, top, _, _), seen in zip(parts, read, strict=True)
        for word in _with_plus_minus(seen)
    ]


def _with_plus_minus(words: Sequence[ocr.Seen]) -> list[ocr.Seen]:
    """The words with ± for a + between two numbers: the main reader does not know the sign, and nobody prints a sum."""
    return [
        word._replace(text=word.text[:-1] + "±") if word.text.endswith("+") and _is_in_sum(words, at) else word
        for at, word in enumerate(words)
    ]


def _is_in_sum(words: Sequence[ocr.Seen], at: int) -> bool:
    """Whether the word is a + between two numbers, or a number with one behind it close to another number."""
    own = words[at]
    glued = own.text != "+"
    if at + 1 == len(words) or not (glued or at):
        return False
    before, after = own._replace(text=own.text[:-1], x1=own.x0) if glued else words[at - 1], words[at + 1]
    level = max(before.top, after.top) < own.bottom and min(before.bottom, after.bottom) > own.top
    near = not glued or after.x0 - own.x1 < own.bottom - own.top
    aside = before.x1 <= own.x0 + 1 and after.x0 >= own.x1 - 1
    return level and near and aside and _ends_in_digits(before.text, after.text)


def _ends_in_digits(before: str, after: str) -> bool:
    return before[-1:].isdigit() and after[:1].isdigit()


def _enlarged(grey: Grey, enlarge: float) -> Image.Image:
    image = Image.fromarray(grey)
    size = (max(1, round(image.width * enlarge)), max(1, round(image.height * enlarge)))
    # soft edges are wanted: sharp ones cost decimal points; and paper without a trace of tint, or rows are lost
    return image.point(_WHITENED).resize(size, Image.Resampling.BILINEAR)


def _without_dirt(page: Prepared) -> Grey:
    """The page for the main reader: as it is, or freed of noise, and of specks where they outnumber the print.

    Specks keep the main reader busy for minutes. The second reader always sees the page as it is.
    """
    noise = (page.even < WHITE) & ~thickened(page.ink, NEAR_INK)
    noisy = int(np.count_nonzero(noise)) > MOST_NOISE * noise.size
    dirt = page.marks.take(page.marks.area <= SPECK_AREA)
    specks = len(dirt) >= max(MOST_SPECKS, len(page.marks) / 2)
    if not noisy and not specks:
        return page.even
    cleaned = page.even.copy()
    if noisy:
        cleaned[noise] = 255
    for index in range(len(dirt) if specks else 0):
        x0, top, x1, bottom = dirt.box(index)
        cleaned[max(0, top - 1) : bottom + 1, max(0, x0 - 1) : x1 + 1] = 255
    return cleaned


def quality(words: Sequence[ocr.Seen]) -> float:
    """Mean confidence by characters (0.0 for no words)."""
    letters = sum(len(word.text) for word in words)
    return sum(word.confidence * len(word.text) for word in words) / letters if letters else 0.0


def _better_turn(
    page: Prepared, words: list[ocr.Seen], grey: Grey, dpi: float | None, taken: Mask | None
) -> tuple[Prepared, list[ocr.Seen]]:
    """Without a reader that tells head from foot the page is read both ways, and the better reading taken."""
    head_down: UpsideDown = lambda _: True  # noqa: E731
    turned = prepare(grey, dpi, head_down, taken)
    if turned is None:
        return page, words
    other = read_words(turned)
    return (turned, other) if quality(other) > quality(words) else (page, words)


def doubt(page: Prepared, read: CellsRead) -> str | None:
    """Why nothing of the page can be taken without a look, with how to get a better copy; None for a good page."""
    if page.axis_share < LEAST_AXIS_SHARE:
        return f"It cannot be told which way the lines of this picture run. {BETTER_COPY}"
    if 0.0 < page.print_pixels < LEAST_PRINT:
        pixels = f"{page.print_pixels:.0f}"
        return f"The print is too small in this picture: a figure is {pixels} pixels high. {BETTER_COPY}"
    if read.compared >= LEAST_COMPARED and read.same < LEAST_AGREEMENT * read.compared:
        return f"Two readings of this page agree on only {read.same} of {read.compared} figures. {BETTER_COPY}"
    if read.compared >= LEAST_COMPARED and read.unexplained > MOST_UNEXPLAINED * read.compared:
        held = f"{read.unexplained} of {read.compared} figures"
        return f"Points or digits seem to be lost on this page: {held} hold ink that was not read. {BETTER_COPY}"
    return None


def scaled(box: Box, points: float) -> Box:
    """A box of pixels in points; ``points`` is the size of a pixel."""
    return Box(*(edge * points for edge in box))


def _word(word: ocr.Seen, points: float) -> Word:
    x0, top, x1, bottom = (edge * points for edge in (word.x0, word.top, word.x1, word.bottom))
    return Word(word.text, x0, top, x1, bottom, word.confidence)


def _rules(page: Prepared) -> tuple[Box, ...]:
    level, upright = page.level_rules, page.upright_rules
    lines = []
    for x0, x1, top, bottom in zip(level.x0, level.x1, level.top, level.bottom, strict=True):
        y = float(top + bottom) / 2
        lines.append(scaled(Box(float(x0), y, float(x1), y), page.points))
    for x0, x1, top, bottom in zip(upright.x0, upright.x1, upright.top, upright.bottom, strict=True):
        x = float(x0 + x1) / 2
        lines.append(scaled(Box(x, float(top), x, float(bottom)), page.points))
    return tuple(lines)
