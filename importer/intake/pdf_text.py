"""The text layer of a PDF page: characters with positions, grouped into words on an upright page.

pdfium gives character boxes in the page's own space, bottom-left, before any turn. Everything is brought here, once,
to points from the top left of the page as a person reads it: by the direction most characters run in, whatever the
page's rotation entry says.
"""

from __future__ import annotations

import ctypes
from collections import Counter
from dataclasses import dataclass
from itertools import groupby
from typing import Any, NamedTuple

import pypdfium2.raw as pdfium

from importer.intake.glyphs import TELLING_DIGITS, Sample
from importer.intake.pdf_drawing import Drawing
from importer.words import Box, Word

# Shares of the font size. A space is about 0.25 em; kerning and letter spacing stay well below 0.2 em.
WORD_GAP = 0.2
# Between two separately drawn pieces of text a smaller gap already parts them: cells of a tight table nearly touch.
PIECE_GAP = 0.12
BASELINE_SHIFT = 0.25
BACKWARD = 0.35
# Two pieces of text that overlap more than this are printed on each other; kerning moves letters less.
PIECE_OVERLAP = 0.25
# A baseline is aslant where it rises more than this against its length: a watermark or a stamp over the page.
ASLANT = 0.1
# Paler than this on white paper is not meant to be read: the contrast is below 1.4 to 1.
PALE = 225
# Smaller than this is not meant to be read.
SMALLEST_TYPE = 2.0
# Letters that follow themselves within one shape ("ff", "tt").
DOUBLED_IN_LIGATURES = "ft"
# What pdfium gives for the hyphen of a word broken at the end of a line.
LINE_HYPHEN = 2


class Char(NamedTuple):
    text: str
    box: Box
    size: float
    turn: int
    bold: bool
    hidden: bool
    piece: int
    damaged: bool
    aslant: bool = False


@dataclass(frozen=True, slots=True)
class TextLayer:
    """Words of one page, those that cannot be seen, those aslant over it, and how far the layer can be believed.

    ``turn`` is the number of clockwise quarter turns that make the page upright. ``damaged`` is the share of
    characters without a usable Unicode value. ``samples`` holds one drawn example of each telling digit of each font,
    in page space.
    """

    words: tuple[Word, ...]
    hidden: tuple[Word, ...]
    width: float
    height: float
    turn: int
    damaged: float
    samples: tuple[Sample, ...]
    aslant: tuple[Word, ...] = ()


class _Piece(NamedTuple):
    """What all characters of one text object share.

    ``lean``: how far upright type that is slanted into italics leans to the right, of its height. Its boxes are wider
    than the letters by as much, and lie on each other.
    """

    size: float
    turn: int
    bold: bool
    invisible: bool
    white: bool
    order: int
    font: str
    aslant: bool
    lean: float


def _turn_of(a: float, b: float) -> int:
    """Quarter turns counter-clockwise of a baseline whose direction is (a, b)."""
    if abs(a) >= abs(b):
        return 0 if a >= 0 else 2
    return 1 if b > 0 else 3


def _piece(handle: Any, drawing: Drawing) -> _Piece:
    size = ctypes.c_float()
    pdfium.FPDFTextObj_GetFontSize(handle, size)
    matrix = pdfium.FS_MATRIX()
    pdfium.FPDFPageObj_GetMatrix(handle, matrix)
    scale = (matrix.a**2 + matrix.b**2) ** 0.5 or 1.0
    mode = pdfium.FPDFTextObj_GetTextRenderMode(handle)
    r, g, b, alpha = (ctypes.c_uint() for _ in range(4))
    coloured = pdfium.FPDFPageObj_GetFillColor(handle, r, g, b, alpha)
    font = pdfium.FPDFTextObj_GetFont(handle)
    weight = pdfium.FPDFFont_GetWeight(font) if font else 0
    name = _font_name(font)
    return _Piece(
        size=size.value * scale,
        turn=_turn_of(matrix.a, matrix.b),
        bold=weight >= 600 or "bold" in name.lower(),
        invisible=mode in (pdfium.FPDF_TEXTRENDERMODE_INVISIBLE, pdfium.FPDF_TEXTRENDERMODE_CLIP)
        or bool(coloured and alpha.value < 20),
        white=bool(coloured) and min(r.value, g.value, b.value) >= PALE,
        order=drawing.order_of(handle),
        font=name,
        aslant=min(abs(matrix.a), abs(matrix.b)) > ASLANT * max(abs(matrix.a), abs(matrix.b)),
        lean=max(0.0, matrix.c / matrix.d) if matrix.a > 0 and matrix.d > 0 and matrix.b == 0 else 0.0,
    )


def _font_name(font: Any) -> str:
    if not font:
        return ""
    buffer = ctypes.create_string_buffer(128)
    pdfium.FPDFFont_GetBaseFontName(font, buffer, 128)
    return buffer.value.decode("utf-8", "replace")


def _is_damaged(code: int) -> bool:
    """True for a code that stands for no character a sheet prints: unmapped, private use, controls."""
    return code == 0 or code == 0xFFFD or 0xE000 <= code <= 0xF8FF or code < 9 or 14 <= code < 32


def _characters(text_page: Any, drawing: Drawing, samples: dict[tuple[str, str], Sample]) -> list[Char]:
    chars: list[Char] = []
    pieces: dict[int, tuple[int, _Piece]] = {}
    rect = pdfium.FS_RECTF()
    get_code, get_box = pdfium.FPDFText_GetUnicode, pdfium.FPDFText_GetLooseCharBox
    get_object, generated = pdfium.FPDFText_GetTextObject, pdfium.FPDFText_IsGenerated
    for i in range(pdfium.FPDFText_CountChars(text_page)):
        code = get_code(text_page, i)
        if code == LINE_HYPHEN:
            code = 45
        if code in (32, 160, 13, 10, 9) or code == 0xFFFE or code == 0xFEFF:
            if generated(text_page, i) != 1:
                chars.append(_SPACE)
            continue
        handle = get_object(text_page, i)
        if not handle:
            continue
        address = ctypes.addressof(handle.contents)
        known = pieces.get(address)
        if known is None:
            known = (len(pieces), _piece(handle, drawing))
            pieces[address] = known
        number, piece = known
        get_box(text_page, i, rect)
        box = Box(rect.left, rect.bottom, rect.right, rect.top)
        if box.height > 3 * piece.size + 4 or box.width > 4 * piece.size + 4:
            box = _tight_box(text_page, i)
        if piece.lean:
            box = box._replace(x1=max(box.centre, box.x1 - piece.lean * box.height))
        hidden = piece.invisible or piece.size < SMALLEST_TYPE or drawing.hides(box, piece.order, piece.white)
        damaged = _is_damaged(code)
        char = Char(chr(code), box, piece.size, piece.turn, piece.bold, hidden, number, damaged, piece.aslant)
        chars.append(char)
        if char.text in TELLING_DIGITS and not (hidden or piece.turn or piece.lean):
            samples.setdefault((piece.font, char.text), Sample(char.text, box))
    return _with_ligatures_apart(chars)


def _ligatures_apart(chars: list[Char]) -> list[Char]:
    """The characters, where the letters of a ligature that all have the place of the whole share it evenly."""
    apart: list[Char] = []
    for (_, box), group in groupby(chars, key=lambda char: (char.piece, char.box)):
        letters = list(group)
        if len(letters) == 1 or letters[0] is _SPACE:
            apart += letters
            continue
        wide = box.width / len(letters)
        for at, letter in enumerate(letters):
            left = box.x0 + at * wide
            apart.append(letter._replace(box=Box(left, box.top, left + wide, box.bottom)))
    return apart


_SPACE = Char(" ", Box(0, 0, 0, 0), 0, 0, False, False, -1, False)


def _with_ligatures_apart(chars: list[Char]) -> list[Char]:
    """The letters of a ligature ("fi", "ff"), which all come with the box of the one shape, side by side in it."""
    apart = list(chars)
    first = 0
    for at in range(1, len(chars) + 1):
        if at < len(chars) and _is_same_shape(chars[first], chars[at]):
            continue
        for place in range(first, at if at - first > 1 else first):
            share = _share(chars[first].box, chars[first].turn, place - first, at - first)
            apart[place] = chars[place]._replace(box=share)
        first = at
    return apart


def _is_same_shape(one: Char, other: Char) -> bool:
    """True for letters of one piece of text in the very same place; a letter printed twice for bold type is no pair."""
    same = one.piece == other.piece and one.box == other.box and one.text.isalpha() and other.text.isalpha()
    return same and (one.text != other.text or one.text in DOUBLED_IN_LIGATURES)


def _share(box: Box, turn: int, number: int, count: int) -> Box:
    """Part ``number`` of ``count`` of a box in page space, along a baseline that runs ``turn`` quarter turns left."""
    number = number if turn in (0, 1) else count - 1 - number
    if turn in (0, 2):
        wide = box.width / count
        return Box(box.x0 + number * wide, box.top, box.x0 + (number + 1) * wide, box.bottom)
    high = box.height / count
    return Box(box.x0, box.top + number * high, box.x1, box.top + (number + 1) * high)


def _tight_box(text_page: Any, index: int) -> Box:
    left, right, bottom, top = (ctypes.c_double() for _ in range(4))
    pdfium.FPDFText_GetCharBox(text_page, index, left, right, bottom, top)
    return Box(left.value, bottom.value, right.value, top.value)


def upright(box: Box, turn: int, area: Box) -> Box:
    """A box of the page's own space (bottom-left origin) on the page turned clockwise by ``turn`` quarters."""
    if turn == 0:
        return Box(box.x0 - area.x0, area.bottom - box.bottom, box.x1 - area.x0, area.bottom - box.top)
    if turn == 1:
        return Box(box.top - area.top, box.x0 - area.x0, box.bottom - area.top, box.x1 - area.x0)
    if turn == 2:
        return Box(area.x1 - box.x1, box.top - area.top, area.x1 - box.x0, box.bottom - area.top)
    return Box(area.bottom - box.bottom, area.x1 - box.x1, area.bottom - box.top, area.x1 - box.x0)


# Fake bold prints most characters of a run twice; fewer coincidences than this share are chance.
DOUBLE_SHARE = 0.01


def _has_doubles(chars: list[Char]) -> bool:
    places = [(c.text, round(c.box.x0 / 2), round(c.box.top / 2)) for c in chars if c is not _SPACE]
    return len(places) - len(set(places)) > DOUBLE_SHARE * len(places)


def _without_doubles(chars: list[Char]) -> list[Char]:
    """Drops the second print of fake bold: the same character almost on the same place.

    A character that stands at its own width from its like follows it ("ll" in narrow type), however small that is.
    """
    if not _has_doubles(chars):
        return chars
    seen: dict[tuple[str, bool, int, int], list[Box]] = {}
    kept: list[Char] = []
    for char in chars:
        if char is _SPACE:
            kept.append(char)
            continue
        near = 0.2 * char.size
        aside = min(near, 0.8 * char.box.width or near)
        cell_x, cell_y = int(char.box.x0 // 4), int(char.box.top // 4)
        double = any(
            abs(box.x0 - char.box.x0) < aside and abs(box.top - char.box.top) < near
            for dx in (-1, 0, 1)
            for dy in (-1, 0, 1)
            for box in seen.get((char.text, char.hidden, cell_x + dx, cell_y + dy), ())
        )
        if double:
            continue
        seen.setdefault((char.text, char.hidden, cell_x, cell_y), []).append(char.box)
        kept.append(char)
    return kept


def _parts(before: Char, char: Char, drawing_cuts: tuple[Box, ...]) -> bool:
    """True where a new word begins between two characters that follow each other (on the upright page)."""
    size = max(min(before.size, char.size), 1.0)
    if before.hidden != char.hidden or abs(before.size - char.size) > 0.2 * max(before.size, char.size):
        return True
    if abs(before.box.bottom - char.box.bottom) > BASELINE_SHIFT * size and not _holds_or_is_held(before, char):
        return True
    gap = char.box.x0 - before.box.x1
    if gap > WORD_GAP * size or gap < -BACKWARD * size - before.box.width * 0.3:
        return True
    if before.piece != char.piece and not -PIECE_OVERLAP * size <= gap <= PIECE_GAP * size:
        return True
    if before.piece != char.piece and drawing_cuts:
        x, y = (before.box.x1 + char.box.x0) / 2, char.box.middle
        return any(abs(rule.x0 - x) < 0.3 * size and rule.top <= y <= rule.bottom for rule in drawing_cuts)
    return False


def _holds_or_is_held(one: Char, other: Char) -> bool:
    """Whether the height of one lies within that of the other: a ligature's letters have the height of their ink."""
    inner, outer = (one.box, other.box) if one.box.height < other.box.height else (other.box, one.box)
    return outer.top <= inner.top and inner.bottom <= outer.bottom and one.size == other.size


def _words(chars: list[Char], cuts: tuple[Box, ...]) -> tuple[list[Word], list[Word]]:
    words: list[Word] = []
    hidden: list[Word] = []
    run: list[Char] = []

    def close() -> None:
        if run:
            box = run[0].box
            for char in run[1:]:
                box = box.union(char.box)
            word = Word("".join(c.text for c in run), *box, size=round(run[0].size, 2), bold=run[0].bold)
            (hidden if run[0].hidden else words).append(word)
            run.clear()

    for char in chars:
        if char is _SPACE:
            close()
            continue
        if run and _parts(run[-1], char, cuts):
            close()
        run.append(char)
    close()
    return words, hidden


def read_text_layer(page: Any, drawing: Drawing, area: Box, page_turn: int) -> TextLayer:
    """The words of a pdfium page handle. ``area`` is the visible area in page space, ``page_turn`` its /Rotate / 90."""
    text_page = pdfium.FPDFText_LoadPage(page)
    if not text_page:
        return TextLayer((), (), area.width, area.height, page_turn, 0.0, ())
    samples: dict[tuple[str, str], Sample] = {}
    try:
        chars = _characters(text_page, drawing, samples)
    finally:
        pdfium.FPDFText_ClosePage(text_page)
    real = [c for c in chars if c is not _SPACE]
    if sum(c.aslant for c in real) * 2 > len(real):
        chars = [c if c is _SPACE else c._replace(aslant=False) for c in chars]
    votes = Counter(c.turn for c in real if not c.hidden) or Counter(c.turn for c in real)
    turn = votes.most_common(1)[0][0] if votes else page_turn
    width, height = (area.width, area.height) if turn % 2 == 0 else (area.height, area.width)
    inside: list[Char] = []
    for char in _ligatures_apart(chars) if turn == 0 else chars:
        if char is _SPACE:
            inside.append(char)
            continue
        box = upright(char.box, turn, area)
        out = box.x1 < 0 or box.x0 > width or box.bottom < 0 or box.top > height
        sideways = char.turn != turn
        inside.append(
            char._replace(box=box, hidden=char.hidden or out, piece=-2 - char.turn if sideways else char.piece)
        )
    cuts = tuple(b for b in (upright(r, turn, area) for r in drawing.rules) if b.width < 1.5)
    aslant, unseen = _words([c for c in inside if c.aslant], cuts)
    inside = [c for c in inside if not c.aslant]
    running = [c for c in inside if c is _SPACE or c.piece > -2]
    words, hidden = _words(_without_doubles(running), cuts)
    standing = [c for c in inside if c is not _SPACE and c.piece <= -2]
    words += _sideways_words([c for c in standing if not c.hidden])
    hidden += [*unseen, *_sideways_words([c for c in standing if c.hidden])]
    damaged = sum(c.damaged for c in real) / len(real) if real else 0.0
    return TextLayer(tuple(words), tuple(hidden), width, height, turn, damaged, tuple(samples.values()), tuple(aslant))


def _sideways_words(chars: list[Char]) -> list[Word]:
    """Text that runs up or down the page, a word a run of characters; vertical column heads are read this way."""
    words: list[Word] = []
    run: list[Char] = []
    for char in chars:
        before = run[-1] if run else None
        if before is not None:
            gap = max(char.box.top - before.box.bottom, before.box.top - char.box.bottom)
            if (
                char.piece != before.piece
                or abs(char.box.x0 - before.box.x0) > 0.3 * char.size
                or gap > WORD_GAP * char.size
            ):
                words.append(_joined(run))
                run = []
        run.append(char)
    if run:
        words.append(_joined(run))
    return words


def _joined(run: list[Char]) -> Word:
    box = run[0].box
    for char in run[1:]:
        box = box.union(char.box)
    return Word("".join(c.text for c in run), *box, size=round(run[0].size, 2), bold=run[0].bold)
