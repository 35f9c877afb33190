"""Words of a page to lines, and lines to cells: pieces of text parted by white space, leaders or drawn rules."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from importer.words import Box, Page, Word

# Shares of the type size (em). Word spaces are 0.25 to 0.4 em, the gutter of a narrow table about 0.9 em.
CELL_GAP = 0.72
CELL_GAP_OCR = 0.95
# So many words of a line in equal distance are running text, set apart to fill the line.
JUSTIFIED = 6
# Cells of a column begin, end or are centred no farther apart than this.
ALIGNED = 0.25
# Of a character of type that has one width for all: bearings at the ends of a word, the word space with those beside
# it, and how unlike words may be.
ENDS, WORD_SPACE_TYPEWRITTEN, EQUAL = 0.3, 1.85, 0.12
LEAST_SPACED = 4  # so many lone letters beside each other are a word that is spaced out
WIDER_SPACE = 1.8  # of the space between its letters, from which a space parts two such words
NEAR = 3  # lines over and under running text among which no two stand in columns
# Two words stand on one line when they share this much of the lower one's height.
SAME_LINE = 0.55
# A mark this much smaller than its line and raised is a footnote mark.
MARK_SIZE = 0.78

_LEADER = re.compile(r"(?:[.·•_…‧∙⋅]\s?){3,}|…+")
_DOTS = set("._·…•")
# Rules of tables that are drawn with characters.
_UPRIGHT = ("|", "¦", "│", "║")
_LEVEL = re.compile(r"^(?=.{5,}$|.*[+|])[-+=_|─━═┼]{2,}$")
_DECIMAL = re.compile(r"^\d+[.,]\d+$")
_NUMBER = re.compile(r"^\d+(?:[.,]\d+)?$")
_BRACKETED = re.compile(r"^\(\d{1,2}\)$")
# Letters beside each other are a word: "EBC" in small type is a unit.
_MARK = re.compile(r"^(?!.*[a-f]{2})[\d*†‡#§¹²³⁴⁵⁶⁷⁸⁹⁰a-f,)(]{1,4}$", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Cell:
    """Text between two gaps of one line. ``after_leader`` is true where dots led the eye to it."""

    text: str
    box: Box
    words: tuple[Word, ...]
    after_leader: bool = False

    @property
    def confidence(self) -> float:
        return min((word.confidence for word in self.words), default=1.0)

    @property
    def is_ink(self) -> bool:
        """Whether the box holds the ink alone, as on a scan, which is lower than the letters are set."""
        return not any(word.size for word in self.words)

    @property
    def bold(self) -> bool:
        return any(word.bold for word in self.words)


@dataclass(frozen=True, slots=True)
class Line:
    """Cells that stand beside each other. ``em`` is the type size in points."""

    cells: tuple[Cell, ...]
    box: Box
    em: float
    page: int

    @property
    def text(self) -> str:
        return " ".join(cell.text for cell in self.cells)


def page_em(page: Page) -> float:
    """Usual type size of a page in points."""
    sizes = [word.size for word in page.words if word.size > 0]
    if sizes:
        return median(sizes)
    heights = [word.bottom - word.top for word in page.words]
    return median(heights) / 0.8 if heights else 10.0


def _advance(words: Iterable[Word]) -> float:
    """The middle width of a character in points, from the longer words."""
    widths = [(word.x1 - word.x0) / (len(word.text) - ENDS) for word in words if len(word.text) > 2]
    return median(widths) if widths else 0.0


def _is_typewritten(groups: list[list[Word]]) -> bool:
    """Whether all characters of a picture's lines are equally wide: its word spaces are as wide as a character."""
    spreads = []
    for group in groups:
        widths = [(word.x1 - word.x0) / (len(word.text) - ENDS) for word in group if len(word.text) > 3]
        if len(widths) > 1:
            spreads.append((max(widths) - min(widths)) / median(widths))
    return len(spreads) > 3 and median(spreads) < EQUAL


def _height(word: Word) -> float:
    return max(word.bottom - word.top, 0.1)


def _split_leaders(words: Iterable[Word]) -> list[tuple[Word, bool]]:
    """Takes dotted leaders out of words; the flag says that a leader stood before the word."""
    out: list[tuple[Word, bool]] = []
    led = False
    ordered = list(words)
    dots = [set(word.text) <= _DOTS for word in ordered]
    for at, word in enumerate(ordered):
        if "." not in word.text and "_" not in word.text and "…" not in word.text and "·" not in word.text:
            out.append((word, led))
            led = False
            continue
        if dots[at] and (len(word.text) >= 2 or any(dots[max(0, at - 1) : at]) or any(dots[at + 1 : at + 2])):
            led = True
            continue
        position, width = 0, (word.x1 - word.x0) / max(len(word.text), 1)
        for match in _LEADER.finditer(word.text):
            if match.end() - match.start() < 3 and "…" not in match.group():
                continue
            if match.start() > position:
                out.append((_slice(word, position, match.start(), width), led))
            led = True
            position = match.end()
        if position < len(word.text):
            out.append((_slice(word, position, len(word.text), width), led))
            led = False
    return out


def _slice(word: Word, start: int, end: int, width: float) -> Word:
    if start == 0 and end == len(word.text):
        return word
    return word._replace(text=word.text[start:end], x0=word.x0 + start * width, x1=word.x0 + end * width)


def _group_by_height(words: list[Word]) -> list[list[Word]]:
    """Words that share a line, by overlap of their heights; never by a fixed distance."""
    lines: list[list[Word]] = []
    bands: list[tuple[float, float]] = []
    for word in sorted(words, key=lambda w: ((w.top + w.bottom) / 2, w.x0)):
        best, share = -1, SAME_LINE
        own_top, own_bottom, height = word.top, word.bottom, _height(word)
        for i in range(len(lines) - 1, max(-1, len(lines) - 5), -1):
            top, bottom = bands[i]
            overlap = min(bottom, own_bottom) - max(top, own_top)
            # Words apart share nothing, however small they are.
            part = overlap / min(height, max(bottom - top, 0.1)) if overlap > 0 else 0.0
            if part > share:
                best, share = i, part
        if best < 0:
            lines.append([word])
            bands.append((own_top, own_bottom))
            continue
        lines[best].append(word)
        # The band stays that of the tallest plain word, so that lines never creep together.
        top, bottom = bands[best]
        if height > bottom - top and len(lines[best]) < 3:
            bands[best] = (own_top, own_bottom)
    return lines


def _without_typed_rules(words: list[Word]) -> tuple[list[Word], list[Box]]:
    """Words without those that draw the rules of a table ("|", "-----+----"), and the places of the upright ones."""
    if not any(word.text in _UPRIGHT or word.text[0] in "-+=_|─━═┼" for word in words):
        return words, []
    strokes = [word.box for word in words if word.text in _UPRIGHT]
    return [word for word in words if word.text not in _UPRIGHT and not _LEVEL.match(word.text)], strokes


def _is_small(word: Word, before: Word) -> bool:
    if word.size and before.size:
        return word.size < MARK_SIZE * before.size
    return _height(word) < 0.6 * _height(before)


def _is_mark(word: Word, before: Word, em: float) -> bool:
    """True for a raised small footnote mark right behind a word."""
    if not _MARK.match(word.text) or word.x0 - before.x1 > 0.4 * em or not _is_small(word, before):
        return False
    return word.bottom < before.bottom - 0.08 * _height(before)


def _is_subscript(word: Word, before: Word, em: float) -> bool:
    """True for the lowered 2 of SO2, which belongs to the word before it."""
    return (
        word.text.isalnum()
        and len(word.text) <= 2
        and word.x0 - before.x1 < 0.15 * em
        and bool(word.size and before.size)
        and _is_small(word, before)
        and word.bottom >= before.bottom - 0.08 * _height(before)
    )


def _cells(words: list[tuple[Word, bool]], em: float, widest: float, cuts: tuple[Box, ...]) -> list[Cell]:
    cells: list[Cell] = []
    run: list[Word] = []
    led = False

    def close() -> None:
        if run:
            cells.append(make_cell(run, led))
            run.clear()

    for word, after_leader in words:
        if run:
            before = run[-1]
            if _is_mark(word, before, em):
                continue
            if _is_subscript(word, before, em):
                run[-1] = before._replace(text=before.text + word.text, x1=word.x1)
                continue
            gap = word.x0 - before.x1
            if after_leader or gap > widest or _cut_between(before, word, cuts):
                close()
                led = after_leader
        else:
            led = after_leader
        run.append(word)
    close()
    return _with_colons([part for cell in cells for part in _parted_numbers(cell)])


def _parted_numbers(cell: Cell) -> list[Cell]:
    """Numbers so close that they look like one text ("4.3 80.9 1.66 42"), each for itself; so with bracketed marks."""
    texts = [word.text for word in cell.words]
    numbers = len(texts) > 2 and sum(_DECIMAL.match(text) is not None for text in texts) > 1
    if len(texts) > 1 and all((_NUMBER if numbers else _BRACKETED).match(text) for text in texts):
        return [make_cell([word]) for word in cell.words]
    return [cell]


def _with_colons(cells: list[Cell]) -> list[Cell]:
    """Colons that stand apart belong to the caption before them."""
    out: list[Cell] = []
    for cell in cells:
        if cell.text in (":", "：") and out:
            out[-1] = make_cell([*out[-1].words, *cell.words], out[-1].after_leader)
        else:
            out.append(cell)
    return out


def _cut_between(before: Word, word: Word, cuts: tuple[Box, ...]) -> bool:
    y = (word.top + word.bottom) / 2
    left, right = before.x1 - 1.0, word.x0 + 1.0
    return any(left <= rule.x0 <= right and rule.top <= y <= rule.bottom for rule in cuts)


def _is_justified(line: Line) -> bool:
    """True for words of running text that were set apart to fill the line: unlike in width, in equal distance."""
    cells = line.cells
    if len(cells) < JUSTIFIED or any(cell.after_leader for cell in cells):
        return False
    gaps = [right.box.x0 - left.box.x1 for left, right in pairwise(cells)]
    widths = [cell.box.width for cell in cells]
    words = sum(any(c.islower() for c in cell.text) for cell in cells)
    return max(gaps) - min(gaps) < 0.2 * line.em and max(widths) > 2 * min(widths) and 2 * words > len(cells)


def make_cell(words: Iterable[Word], after_leader: bool = False) -> Cell:
    """A cell of words that belong together, in reading order."""
    kept = tuple(words)
    box = kept[0].box
    for word in kept[1:]:
        box = box.union(word.box)
    return Cell(" ".join(word.text for word in kept), box, kept, after_leader)


def _without_stroke(cell: Cell) -> Cell:
    """The cell of a scan without the rest of a rule that was read as "=" before words or behind a number.

    Before a number it may be what is left of a limit, and between words it says something.
    """
    first, *rest = cell.words
    if rest and first.text == "=" and not any(sign.isdigit() for word in rest for sign in word.text):
        return make_cell(rest, cell.after_leader)
    if rest and rest[-1].text == "=" and _DECIMAL.match(" ".join(word.text for word in cell.words[:-1])):
        return make_cell(cell.words[:-1], cell.after_leader)
    return cell


def _closed_up(cell: Cell) -> Cell:
    """The cell with letters that are set apart for emphasis as one word ("L O T  N O ." is two)."""
    words = cell.words
    if len(words) < LEAST_SPACED or any(len(word.text) > 1 or word.text.isdigit() for word in words):
        return cell
    if not all(word.text.isalpha() for word in words[:3]):
        return cell
    gaps = [b.x0 - a.x1 for a, b in pairwise(words)]
    usual = median(gaps)
    runs: list[list[Word]] = [[words[0]]]
    for gap, word in zip(gaps, words[1:], strict=True):
        if gap > WIDER_SPACE * usual:
            runs.append([])
        runs[-1].append(word)
    return make_cell([_one_word(run) for run in runs], cell.after_leader)


def _one_word(letters: list[Word]) -> Word:
    box = make_cell(letters).box
    text = "".join(letter.text for letter in letters)
    return letters[0]._replace(text=text, x0=box.x0, top=box.top, x1=box.x1, bottom=box.bottom)


def find_lines(page: Page) -> list[Line]:
    """All lines of a page, top to bottom, each split into cells."""
    em = page_em(page)
    cuts = tuple(rule for rule in page.rules if rule.width < 2 and rule.height > 0.7 * em)
    limit = CELL_GAP if page.reading != "ocr" else CELL_GAP_OCR
    lines: list[Line] = []
    typed = page.reading != "ocr"
    groups = _group_by_height([word for word in page.words if word.text.strip()])
    spaced = not typed and _is_typewritten(groups)
    for group in groups:
        group.sort(key=lambda word: word.x0)
        if typed:
            group, strokes = _without_typed_rules(group)
        if not group:
            continue
        sizes = [word.size for word in group if word.size > 0]
        line_em = median(sizes) if sizes else em
        widest = max(limit * line_em, WORD_SPACE_TYPEWRITTEN * _advance(group) if spaced else 0.0)
        cells = _cells(_split_leaders(group), line_em, widest, (*cuts, *strokes) if typed and strokes else cuts)
        if not cells:
            continue
        cells = [_closed_up(cell) if typed else _without_stroke(cell) for cell in cells]
        box = cells[0].box
        for cell in cells[1:]:
            box = box.union(cell.box)
        lines.append(Line(tuple(cells), box, line_em, page.number))
    lines.sort(key=lambda line: line.box.middle)
    return _with_running_text(lines)


def _with_running_text(lines: list[Line]) -> list[Line]:
    """The lines, with justified text as one cell; heads of a table stand in equal distance, too, but over columns."""
    wide = [_is_justified(line) for line in lines]
    if not any(wide):
        return lines
    near = [lines[max(0, i - NEAR) : i + 1 + NEAR] for i in range(len(lines))]
    return [
        Line((make_cell([word for cell in line.cells for word in cell.words]),), line.box, line.em, line.page)
        if justified and not any(_in_columns(upper, lower) for upper, lower in pairwise(around))
        else line
        for line, justified, around in zip(lines, wide, near, strict=True)
    ]


def _in_columns(line: Line, other: Line) -> bool:
    """Whether most cells of one of two lines stand under or over cells of the other one, edge to edge or centred."""
    places = [(cell.box.x0, cell.box.x1, (cell.box.x0 + cell.box.x1) / 2) for cell in line.cells]
    fit = sum(
        any(
            min(abs(cell.box.x0 - x0), abs(cell.box.x1 - x1), abs((cell.box.x0 + cell.box.x1) / 2 - middle))
            < ALIGNED * line.em
            for x0, x1, middle in places
        )
        for cell in other.cells
    )
    return len(other.cells) > 2 and 3 * fit >= 2 * len(other.cells)
