"""A prepared picture of a page -> words, second readings and what could not be read."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np
from PIL import Image

from importer.intake import ocr, second
from importer.intake.prepare.cells import Cells, find_cells
from importer.intake.prepare.page import A4_LONGER_SIDE, Prepared, prepare
from importer.words import Box, Page, SecondReading, Word

MAIN_GLYPH = 32  # height of a figure in the picture for Tesseract, in pixels
SURE_WORD = 0.8  # confidence of the main reader from which a word without digits is taken for one
SPECK_AREA = 3  # pixels of the prepared page; a decimal point has 5 and more
MOST_SPECKS = 1500
LINE_PAD = 0.5  # of the glyph height, around a cell for the second reader


class Cell(NamedTuple):
    """One cell of the page: box in pixels of the prepared page, the main reader's words in it."""

    box: Box
    words: tuple[ocr.Seen, ...]

    @property
    def text(self) -> str:
        return " ".join(word.text for word in self.words)


def read_page(grey: np.ndarray, number: int, dpi: float | None) -> Page:
    """Read a grey picture (0 black .. 255 white) of one page."""
    height, width = grey.shape
    page = prepare(grey, dpi, second.upside_down)
    if page is None:
        scale = 72.0 / dpi if dpi else A4_LONGER_SIDE / max(width, height)
        return Page(number, width * scale, height * scale, (), "ocr")
    words = read_words(page)
    cells = with_words(find_cells(page.marks, page.upright_rules, page.glyph), words)
    readings, lost = second_readings(page, cells)
    return Page(
        number,
        page.width,
        page.height,
        tuple(_word(word, page.points) for word in words),
        "ocr",
        rules=_rules(page),
        second=tuple(readings),
        lost=tuple(lost),
    )


def read_words(page: Prepared) -> list[ocr.Seen]:
    """The main reader's words, in pixels of the prepared page."""
    if not len(page.marks):
        return []
    pad = round(1.5 * page.glyph)
    left, top = max(0, int(page.marks.x0.min()) - pad), max(0, int(page.marks.top.min()) - pad)
    right, bottom = int(page.marks.x1.max()) + pad, int(page.marks.bottom.max()) + pad
    image = Image.fromarray(_without_dirt(page)[top:bottom, left:right])
    enlarge = MAIN_GLYPH / page.glyph
    size = (round(image.width * enlarge), round(image.height * enlarge))
    # soft edges are wanted: sharp ones cost decimal points
    large = image.resize(size, Image.Resampling.BILINEAR)
    seen = ocr.read_block(large, dpi=72.0 / page.points * enlarge)
    return [
        word._replace(
            x0=word.x0 / enlarge + left,
            x1=word.x1 / enlarge + left,
            top=word.top / enlarge + top,
            bottom=word.bottom / enlarge + top,
        )
        for word in seen
    ]


def _without_dirt(page: Prepared) -> np.ndarray:
    """The page for the main reader: as it is, or freed of specks where they outnumber the print many times.

    Specks keep the main reader busy for minutes. The second reader always sees the page as it is.
    """
    dirt = page.marks.take(page.marks.area <= SPECK_AREA)
    if len(dirt) < MOST_SPECKS or len(dirt) < len(page.marks) / 2:
        return page.even
    cleaned = page.even.copy()
    for x0, top, x1, bottom in zip(dirt.x0.tolist(), dirt.top.tolist(), dirt.x1.tolist(), dirt.bottom.tolist(),
                                   strict=True):
        cleaned[max(0, top - 1) : bottom + 1, max(0, x0 - 1) : x1 + 1] = 255
    return cleaned


def with_words(cells: Cells, words: Sequence[ocr.Seen]) -> list[Cell]:
    """Give every cell the words whose middle lies in it."""
    boxes = [Box(*map(float, box)) for box in zip(cells.x0, cells.top, cells.x1, cells.bottom, strict=True)]
    held: list[list[ocr.Seen]] = [[] for _ in boxes]
    if boxes:
        edges = np.array(boxes)
        for word in words:
            x, y = (word.x0 + word.x1) / 2, (word.top + word.bottom) / 2
            inside = (edges[:, 0] <= x) & (x <= edges[:, 2]) & (edges[:, 1] <= y) & (y <= edges[:, 3])
            for index in np.flatnonzero(inside)[:1].tolist():
                held[index].append(word)
    return [Cell(box, tuple(sorted(own, key=lambda w: w.x0))) for box, own in zip(boxes, held, strict=True)]


def may_hold_figure(cell: Cell) -> bool:
    """Whether a second look is worth its time: not at what is surely a word."""
    text = cell.text
    letters = sum(character.isalpha() for character in text)
    if any(character.isdigit() for character in text) or letters < 3:
        return text != "%"
    return letters < 12 and min(word.confidence for word in cell.words) < SURE_WORD


def second_readings(page: Prepared, cells: Sequence[Cell]) -> tuple[list[SecondReading], list[Box]]:
    """What the second reader sees in every cell that may hold a figure; and the cells that nobody could read."""
    asked = [cell for cell in cells if may_hold_figure(cell)]
    answers = second.read_cells([crop(page, cell.box) for cell in asked]) if second.available() else []
    readings, lost = [], []
    for index, cell in enumerate(asked):
        box = scaled(cell.box, page.points)
        answer = answers[index] if answers else second.Read("", 0.0)
        if answer.text:
            readings.append(SecondReading(answer.text, box, second.NAME, answer.confidence))
        elif not cell.words:
            lost.append(box)
    return readings, lost


def crop(page: Prepared, box: Box) -> Image.Image:
    """A cell with a margin of plain paper."""
    pad = round(LINE_PAD * page.glyph)
    x0, top, x1, bottom = (round(edge) for edge in box)
    inside = page.even[max(0, top - 1) : bottom + 1, max(0, x0 - 1) : x1 + 1]
    framed = np.full((inside.shape[0] + 2 * pad, inside.shape[1] + 2 * pad), 255, dtype=np.uint8)
    framed[pad:-pad, pad:-pad] = inside
    return Image.fromarray(framed)


def scaled(box: Box, points: float) -> Box:
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
