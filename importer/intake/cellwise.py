"""Cell by cell: what the second reader says to the main reader's words, and what is left unread."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image

from importer.intake import ocr, second, spacing
from importer.intake.alike import alike, plain, same_numbers
from importer.intake.cell_boxes import Cell, cells_of
from importer.intake.head_names import name_places
from importer.intake.lettering import agrees, read_unsure, reworded
from importer.intake.prepare.page import Prepared
from importer.vocabulary.text import has_digit
from importer.vocabulary.unit_names import parse_plain
from importer.words import Box

if TYPE_CHECKING:
    from importer.intake.prepare.ink import Marks

SURE_WORD = 0.6  # confidence of the main reader from which a word without digits is taken for one
LONGEST_DOUBTFUL_WORD = 12
# "Sieve > 2.8 mm" is a label; "Batch 48213" and "of 12.03.2024" hold something to be sure of.
LETTERS_OF_LABEL = 5
NUMBER_OR_DATE = re.compile(r"\d{4}|\d[./-]\d+[./-]\d")
BEGINS_WITH_NUMBER = re.compile(r"[<>≤≥]?\s*\d")  # "5.6 EBC units" is a result, not a label
NUMBER_BEHIND_LABEL = re.compile(r"[:=]\s*[<>≤≥]?\s*[-−–]?\d")
# Of the glyph height, around a cell for the second reader.
PAD_DOWN, PAD_ACROSS = 0.5, 0.3
LEGACY_ENLARGE = 2
# What letters a figure may have been misread as: only cells of these are worth a second look where no digit is.
LIKE_DIGITS = frozenset("OoDQIil|!SsBZzgqeabG.,:;'’-–—−~_<>≤≥=+±°*/\\()[]{}$&@§¢£¥«»")
FIGURE = re.compile(r"(?:<|>|≤|≥|[mM](?:ax|in)\.?)?\s*[-−–]?\d+(?:[.,]\d+)?(?:\s*[-–±]\s*\d+(?:[.,]\d+)?)?\s*%?")
LEAST_CERTAINTY, SURE_ANSWER = 0.5, 0.9
# A short number with letters in it.
GARBLED = re.compile(r"(?=.*\d)(?=.*[A-Za-z])[\w.,]{2,5}")
STROKES = frozenset("-–—_|¦=~.'‘’`")  # what rules, edges and dirt are taken for
# Ink that a figure's reading does not account for: how far beside it is looked for, how much of it is a stroke (of the
# glyph height squared), and how much higher than the others a digit may be.
BESIDE, LEAST_STROKE, MOST_HEIGHT = 0.5, 0.05, 1.45
UPRIGHT = 2.5  # times its width: so high is no digit
TOUCHING = 0.5  # of the glyph height beside a cell: coloured ink that near may have hidden a sign or a digit


@dataclass(frozen=True, slots=True)
class Reading:
    """A second reader's text for a cell."""

    text: str
    box: Box
    reader: str
    confidence: float


@dataclass(frozen=True, slots=True)
class CellsRead:
    """The page's words after the comparison; second readings; places with unread ink; all in prepared pixels.

    ``compared`` cells hold a digit in some reading, ``same`` of them read the same twice, and ``unexplained`` hold ink
    that the readings do not account for.
    """

    words: tuple[ocr.Seen, ...]
    readings: tuple[Reading, ...]
    lost: tuple[Box, ...]
    compared: int
    same: int
    unexplained: int


@dataclass(slots=True)
class _Settled:
    """What stands after the comparison: the main reader's words that are kept, those in place of others, and doubts."""

    kept: dict[int, ocr.Seen]
    added: list[ocr.Seen]
    readings: list[Reading]
    lost: list[Box]

    def replace(self, cell: Cell, new: Sequence[ocr.Seen]) -> None:
        for word in cell.words:
            self.kept.pop(id(word), None)
        self.added.extend(new)

    def reword(self, cell: Cell, answer: second.Read) -> bool:
        """Take the second reader's letters where they stand for the same word; False where the words stay."""
        new = reworded(cell.words, cell.box, answer)
        if new:
            self.replace(cell, new)
            self.readings += _main_reading(cell, answer)
        return bool(new)


def read_cells(page: Prepared, words: Sequence[ocr.Seen]) -> CellsRead:
    """Have every cell that may hold a figure, and every unsure word, read once more and compare."""
    cells = cells_of(page, words)
    asked = [cell for cell in cells if may_hold_figure(cell)]
    answers = _second(page, asked)
    stray = _strays(words, cells)
    settled = _Settled({id(word): word for word in words if id(word) not in stray}, [], [], [])
    pointed = _compare_figures(page, asked, answers, settled)
    if second.available():
        _compare_words(page, [cell for cell in cells if not may_hold_figure(cell)], settled)
        _ask_for_names(page, settled)
    unexplained = _unexplained(page, asked, answers)
    hidden = [cell.box for cell in cells if has_digit(cell.text) and _is_touched(page, cell.box)]
    return CellsRead(
        (*settled.kept.values(), *settled.added),
        tuple(settled.readings),
        (*settled.lost, *unexplained, *hidden),
        *_agreement(page, asked, answers, pointed, unexplained),
    )


def _agreement(
    page: Prepared,
    cells: Sequence[Cell],
    answers: Sequence[second.Read],
    pointed: set[int],
    unexplained: Sequence[Box],
) -> tuple[int, int, int]:
    """How many cells hold a digit, are read the same twice, and hold unread ink. Letters beside a number do not count.

    Those under a stamp do not count, nor upright strokes that only the second reader takes for a 1: the edge of the
    paper. A reading whose point the ink shows is one that both agree on.
    """
    if not (second.available() or ocr.legacy_data()):
        return 0, 0, 0
    counted = [
        index
        for index, (cell, answer) in enumerate(zip(cells, answers, strict=True))
        if (has_digit(cell.text) or has_digit(answer.text))
        and not _is_touched(page, cell.box)
        and (cell.words or cell.box.height < UPRIGHT * cell.box.width)
    ]
    same = sum(
        index in pointed
        or alike(answers[index].text, cells[index].text)
        or agrees(cells[index].text, answers[index].text)
        or same_numbers(cells[index].text, answers[index].text)
        for index in counted
    )
    boxes = {cells[index].box for index in counted}
    return len(counted), same, sum(box in boxes for box in unexplained)


def _compare_figures(
    page: Prepared, cells: Sequence[Cell], answers: Sequence[second.Read], settled: _Settled
) -> set[int]:
    """Settle what stands in cells that may hold a figure; tells of which ones the ink showed the point.

    A figure of the main reader is replaced only where two readers of other kinds agree on another one, or where it is
    no figure at all and the second reader sees one; such a reading is then not its own witness: only a third one is
    reported beside it. It is replaced, too, where both have the same digits and the ink shows the point that only the
    second reader saw: there the ink is the witness, and the second reading is reported.
    """
    two_kinds = second.available()
    differing = [
        i for i, answer in enumerate(answers) if FIGURE.fullmatch(answer.text) and not alike(answer.text, cells[i].text)
    ]
    third = _legacy(page, [cells[i] for i in differing]) if two_kinds and ocr.legacy_data() else []
    witnesses = dict(zip(differing, third, strict=False))
    pointed = _pointed(page, cells, answers, differing)
    for index, (cell, answer) in enumerate(zip(cells, answers, strict=True)):
        witness = witnesses.get(index)
        confirmed = witness is not None and alike(witness.text, answer.text)
        if _takes_over(cell, answer, confirmed or index in pointed, page.glyph):
            settled.replace(cell, [ocr.Seen(answer.text, *cell.box, answer.confidence)])
            if witness is not None and confirmed:
                settled.readings.append(Reading(witness.text, cell.box, ocr.LEGACY, witness.confidence))
            elif index in pointed:
                settled.readings.append(_second_reading(cell, answer))
            elif has_digit(cell.text):
                settled.readings += _main_reading(cell, answer)
        elif two_kinds and settled.reword(cell, answer):
            continue
        elif answer.text and (cell.words or answer.confidence >= LEAST_CERTAINTY):
            settled.readings.append(_second_reading(cell, answer))
        elif not cell.words:
            settled.lost.append(cell.box)
    return pointed


def _compare_words(page: Prepared, cells: Sequence[Cell], settled: _Settled) -> None:
    """Settle the letters of cells with words that the main reader is not sure of."""
    places = [(cell.box, cell.words) for cell in cells]
    answers = read_unsure(places, page.glyph, lambda which: _second(page, [cells[i] for i in which]))
    for index, answer in answers.items():
        if not settled.reword(cells[index], answer) and answer.text:
            settled.readings.append(_second_reading(cells[index], answer))


def _ask_for_names(page: Prepared, settled: _Settled) -> None:
    """A second reading of the names in the head that have none; the main reader's words stay as they are."""
    words = [*settled.kept.values(), *settled.added]
    places = name_places(words, page.even.shape[0], page.marks, [reading.box for reading in settled.readings])
    for box, answer in zip(places, second.read_cells([crop(page, box) for box in places]), strict=True):
        if answer.text:
            settled.readings.append(Reading(answer.text, box, second.NAME, answer.confidence))


def _strays(words: Sequence[ocr.Seen], cells: Sequence[Cell]) -> set[int]:
    """Strokes that the main reader saw where no ink of a cell is: a rule, or the edge of something."""
    held = {id(word) for cell in cells for word in cell.words}
    return {id(word) for word in words if id(word) not in held and STROKES.issuperset(word.text)}


def _second_reading(cell: Cell, answer: second.Read) -> Reading:
    return Reading(answer.text, cell.box, second.NAME if second.available() else ocr.LEGACY, answer.confidence)


def _main_reading(cell: Cell, answer: second.Read) -> list[Reading]:
    """What is told beside a text of the second reader that stands: its own where the main reader saw the same."""
    if agrees(cell.text, answer.text) or same_numbers(cell.text, answer.text):
        return [_second_reading(cell, answer)]
    return [Reading(cell.text, cell.box, ocr.NAME, min(word.confidence for word in cell.words))] if cell.words else []


def may_hold_figure(cell: Cell) -> bool:
    """Whether a second look is worth its time: a digit was read, or nothing, or scraps; not what is surely a word."""
    text = cell.text
    if not text:
        return True
    sure = min(word.confidence for word in cell.words) >= SURE_WORD
    if has_digit(text):
        letters = sum(character.isalpha() for character in text)
        result = BEGINS_WITH_NUMBER.match(text) or NUMBER_BEHIND_LABEL.search(text) or NUMBER_OR_DATE.search(text)
        label = letters >= LETTERS_OF_LABEL and not result
        return not (sure and (label or parse_plain(text) is not None))
    if len(text) > LONGEST_DOUBTFUL_WORD:
        return False
    return not sure or all(character in LIKE_DIGITS for character in text)


def _takes_over(cell: Cell, answer: second.Read, confirmed: bool, glyph: float) -> bool:
    """Whether the second reader's text is to stand in the main reader's place."""
    figure = FIGURE.fullmatch(answer.text) is not None and answer.confidence >= LEAST_CERTAINTY
    if not cell.words:
        return figure or confirmed  # nothing was read there at all
    slack = 0.6 * glyph
    inside = all(cell.box.x0 - slack <= w.x0 and w.x1 <= cell.box.x1 + slack for w in cell.words)
    return inside and (confirmed or (figure and (not has_digit(cell.text) or _is_garbled(cell, answer))))


def _is_garbled(cell: Cell, answer: second.Read) -> bool:
    """Whether letters among the digits of a short number are a misread point: "7A" where the other one has "7.1"."""
    pointed = any(sign in spacing.SEPARATORS for sign in answer.text)
    return pointed and answer.confidence >= SURE_ANSWER and GARBLED.fullmatch(cell.text) is not None


def _second(page: Prepared, cells: Sequence[Cell]) -> list[second.Read]:
    if second.available():
        return second.read_cells([crop(page, cell.box) for cell in cells])
    return _legacy(page, cells) if ocr.legacy_data() else [second.Read("", 0.0)] * len(cells)


def _legacy(page: Prepared, cells: Sequence[Cell]) -> list[second.Read]:
    pictures = []
    for cell in cells:
        picture = crop(page, cell.box)
        size = (picture.width * LEGACY_ENLARGE, picture.height * LEGACY_ENLARGE)
        pictures.append(picture.resize(size, Image.Resampling.BILINEAR))
    return [second.Read(text, confidence) for text, confidence in ocr.read_lines(pictures)]


def crop(page: Prepared, box: Box) -> Image.Image:
    """A cell with a margin of plain paper."""
    down, across = round(PAD_DOWN * page.glyph), round(PAD_ACROSS * page.glyph)
    x0, top, x1, bottom = (round(edge) for edge in box)
    inside = page.even[max(0, top - 1) : bottom + 1, max(0, x0 - 1) : x1 + 1]
    framed = np.full((inside.shape[0] + 2 * down, inside.shape[1] + 2 * across), 255, dtype=np.uint8)
    framed[down:-down, across:-across] = inside
    return Image.fromarray(framed)


def _pointed(
    page: Prepared, cells: Sequence[Cell], answers: Sequence[second.Read], differing: Sequence[int]
) -> set[int]:
    """The cells in which the main reader has all digits of the second one but lost a decimal sign.

    The ink has to show the sign, and the digits have to stand apart by more than they do without one: else it is dirt.
    """
    found = []
    for index in differing:
        text, other = answers[index].text, cells[index].text
        lost = sum(c in spacing.SEPARATORS for c in text) > sum(c in spacing.SEPARATORS for c in other)
        if lost and _digits_only(text) == _digits_only(other):
            own = _marks_in(page, cells[index].box)
            plain, marks = spacing.leading_number(own, text, page.glyph)
            found.append((index, marks, plain, spacing.leading_number(own, other, page.glyph)[0]))
    if not found:
        return set()
    known = [
        spacing.pieces(_marks_in(page, c.box), a.text or c.text, page.glyph)
        for c, a in zip(cells, answers, strict=True)
    ]
    without = [spacing.pieces(own, other, page.glyph) for _, own, _, other in found]
    wide = spacing.too_wide([*known, *without])[len(known) :]
    return {
        index
        for (index, own, text, _), apart in zip(found, wide, strict=True)
        if apart and spacing.points_seen(own, text, page.glyph)
    }


def _digits_only(text: str) -> str:
    return "".join(character for character in plain(text) if character not in spacing.SEPARATORS)


def _marks_in(page: Prepared, box: Box) -> Marks:
    x, y = (page.marks.x0 + page.marks.x1) / 2, (page.marks.top + page.marks.bottom) / 2
    return page.marks.take((x >= box.x0) & (x <= box.x1) & (y >= box.top) & (y <= box.bottom))


def _unexplained(page: Prepared, cells: Sequence[Cell], answers: Sequence[second.Read]) -> list[Box]:
    """Cells with ink that their reading does not account for.

    Either the ink is wider than the characters read, so a point or a sign was not seen; or more ink stands right
    beside the cell or sticks out of it: a stamp or a pen stroke that has swallowed a digit.
    """
    texts = [answer.text or cell.text for cell, answer in zip(cells, answers, strict=True)]
    inks = [_marks_in(page, cell.box) for cell in cells]
    found = [spacing.pieces(own, text, page.glyph) for own, text in zip(inks, texts, strict=True)]
    heights = [piece.height for pieces in found for piece in pieces]
    usual = float(np.median(heights)) if len(heights) >= spacing.LEAST_FIGURES else page.glyph
    crowded = []
    for cell, own, text in zip(cells, inks, texts, strict=True):
        more = _ink_beside(page, cell.box) or _sticks_out(own, text, page.glyph, usual)
        crowded.append(has_digit(text) and (more or spacing.unread_points(own, text, page.glyph)))
    wide = spacing.too_wide(found)
    return [cell.box for cell, a, b in zip(cells, wide, crowded, strict=True) if a or b]


def _ink_beside(page: Prepared, box: Box) -> bool:
    """Whether more ink than dirt stands within half a digit of a cell's left or right end."""
    x0, top, x1, bottom = (round(edge) for edge in box)
    reach = round(BESIDE * page.glyph)
    sides = (page.ink[top:bottom, max(0, x0 - reach) : x0], page.ink[top:bottom, x1 : x1 + reach])
    return any(int(np.count_nonzero(side)) > LEAST_STROKE * page.glyph**2 for side in sides)


def _is_touched(page: Prepared, box: Box) -> bool:
    """Whether ink of a pen or stamp was taken out over a cell: what was below it may be lost."""
    if page.taken is None:
        return False
    x0, top, x1, bottom = (round(edge) for edge in box)
    reach = round(TOUCHING * page.glyph)
    return bool(page.taken[top:bottom, max(0, x0 - reach) : x1 + reach].any())


def _sticks_out(own: Marks, text: str, glyph: float, digit: float) -> bool:
    """Whether a mark of a figure is much higher than its other digits, or than a ``digit`` of the page."""
    if FIGURE.fullmatch(text) is None:
        return False
    heights = own.height[own.height >= 0.5 * glyph]
    if not len(heights):
        return False
    usual = float(np.median(heights)) if len(heights) >= 3 else digit
    return float(heights.max()) > MOST_HEIGHT * usual
