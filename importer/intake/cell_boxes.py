"""The cells of a prepared page with the main reader's words in them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from importer.intake import ocr
from importer.intake.prepare.ink import joined
from importer.intake.prepare.page import Prepared
from importer.words import Box

TALL = 1.8  # of the glyph height, from which a cell may hold two lines whose letters touch


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell of the page: box in pixels of the prepared page, the main reader's words in it."""

    box: Box
    words: tuple[ocr.Seen, ...]

    @property
    def text(self) -> str:
        return " ".join(word.text for word in self.words)


def cells_of(page: Prepared, words: Sequence[ocr.Seen]) -> list[Cell]:
    """The cells of a page, each with the words whose middle lies in it; pieces of one word are one cell."""
    found = page.cells
    boxes = [Box(*map(float, box)) for box in zip(found.x0, found.top, found.x1, found.bottom, strict=True)]
    boxes = _in_lines(_whole(boxes, words), words, page.glyph)
    held: list[list[ocr.Seen]] = [[] for _ in boxes]
    if boxes:
        edges = np.array(boxes)
        for word in words:
            x, y = (word.x0 + word.x1) / 2, (word.top + word.bottom) / 2
            inside = (edges[:, 0] <= x) & (x <= edges[:, 2]) & (edges[:, 1] <= y) & (y <= edges[:, 3])
            for index in np.flatnonzero(inside)[:1].tolist():
                held[index].append(word)
    return [Cell(box, tuple(sorted(own, key=lambda w: w.x0))) for box, own in zip(boxes, held, strict=True)]


def _whole(boxes: list[Box], words: Sequence[ocr.Seen]) -> list[Box]:
    """Join cells that lie side by side under one word of the main reader: wide-set type is one cell all the same."""
    if not boxes:
        return boxes
    edges = np.array(boxes)
    middle_x, middle_y = (edges[:, 0] + edges[:, 2]) / 2, (edges[:, 1] + edges[:, 3]) / 2
    first, other = [], []
    for word in words:
        under = (middle_x > word.x0) & (middle_x < word.x1) & (middle_y > word.top - 2) & (middle_y < word.bottom + 2)
        covered = np.flatnonzero(under)
        first += covered[:-1].tolist()
        other += covered[1:].tolist()
    if not first:
        return boxes
    group = joined(len(boxes), np.array(first), np.array(other))
    whole: dict[int, Box] = {}
    for index, box in zip(group.tolist(), boxes, strict=True):
        whole[index] = whole[index].union(box) if index in whole else box
    return list(whole.values())


def _in_lines(boxes: list[Box], words: Sequence[ocr.Seen], glyph: float) -> list[Box]:
    """Cells cut between the lines of the words in them: long letters touch those of the line below in narrow type."""
    out: list[Box] = []
    for box in boxes:
        cuts = _cuts(box, words) if box.height > TALL * glyph else []
        edges = [box.top, *cuts, box.bottom]
        out += [Box(box.x0, top, box.x1, bottom) for top, bottom in pairwise(edges)]
    return out


def _cuts(box: Box, words: Sequence[ocr.Seen]) -> list[float]:
    """Where the lines of the words whose middle is in the box are parted; none where words of two lines overlap."""
    inside = sorted(
        (w for w in words if box.x0 <= (w.x0 + w.x1) / 2 <= box.x1 and box.top <= (w.top + w.bottom) / 2 <= box.bottom),
        key=lambda w: w.top + w.bottom,
    )
    lines: list[list[ocr.Seen]] = []
    for word in inside:
        if lines and (word.top + word.bottom) / 2 < max(w.bottom for w in lines[-1]):
            lines[-1].append(word)
        else:
            lines.append([word])
    return [(max(w.bottom for w in a) + min(w.top for w in b)) / 2 for a, b in pairwise(lines)]
