"""The text layer of a PDF page: characters with positions, grouped into words on an upright page.

pdfium gives character boxes in the page's own space, bottom-left, before any turn. Everything is brought here, once,
to points from the top left of the page as a person reads it: by the direction most characters run in, whatever the
page's rotation entry says.
"""

from __future__ import annotations

import ctypes
from collections import Counter
from dataclasses import dataclass
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
# Of all characters: from this share on, those that run as the page stands make it upright, however much else is turned.
UPRIGHT_SHARE = 0.25
# What pdfium gives for the hyphen of a word broken at the end of a line.
LINE_HYPHEN = 2


class Char(NamedTuple):
    """A character on the upright page. ``piece`` is its text object, below -1 where that runs another way."""

    text: str
    box: Box
    size: float
    bold: bool
    hidden: bool
    piece: int


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
    """What all characters of one text object share. ``coverable``: what else is drawn may hide some of them. ``lean``:
    how far upright type that is slanted into italics leans to the right, of its height. Its boxes are wider than the
    letters by as much, and lie on each other."""

    number: int
    size: float
    turn: int
    bold: bool
    invisible: bool
    white: bool
    order: int
    coverable: bool
    font: str
    aslant: bool
    lean: float


def _turn_of(a: float, b: float) -> int:
    """Quarter turns counter-clockwise of a baseline whose direction is (a, b)."""
    if abs(a) >= abs(b):
        return 0 if a >= 0 else 2
    return 1 if b > 0 else 3


def _piece(handle: Any, drawing: Drawing, number: int) -> _Piece:
    given = ctypes.c_float()
    pdfium.FPDFTextObj_GetFontSize(handle, given)
    matrix = pdfium.FS_MATRIX()
    pdfium.FPDFPageObj_GetMatrix(handle, matrix)
    scale = (matrix.a**2 + matrix.b**2) ** 0.5 or 1.0
    mode = pdfium.FPDFTextObj_GetTextRenderMode(handle)
    r, g, b, alpha = (ctypes.c_uint() for _ in range(4))
    coloured = pdfium.FPDFPageObj_GetFillColor(handle, r, g, b, alpha)
    font = pdfium.FPDFTextObj_GetFont(handle)
    weight = pdfium.FPDFFont_GetWeight(font) if font else 0
    name = _font_name(font)
    size = given.value * scale
    white = bool(coloured) and min(r.value, g.value, b.value) >= PALE
    order = drawing.order_of(handle)
    return _Piece(
        number=number,
        size=size,
        turn=_turn_of(matrix.a, matrix.b),
        bold=weight >= 600 or "bold" in name.lower(),
        invisible=mode in (pdfium.FPDF_TEXTRENDERMODE_INVISIBLE, pdfium.FPDF_TEXTRENDERMODE_CLIP)
        or bool(coloured and alpha.value < 20)
        or size < SMALLEST_TYPE,
        white=white,
        order=order,
        coverable=white or order < drawing.last_cover,
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


def _is_damaged(text: str) -> bool:
    """True for what stands for no character a sheet prints: unmapped, private use, controls."""
    code = ord(text)
    return code == 0 or code == 0xFFFD or 0xE000 <= code <= 0xF8FF or code < 9 or 14 <= code < 32


_Drawn = tuple[str, Box, _Piece, bool]
"""A character as it is drawn: its box in page space, its piece, and whether it cannot be seen."""

# Spaces, ends of lines, and what is no character.
_GAPS = frozenset((32, 160, 13, 10, 9, 0xFFFE, 0xFEFF))


def _characters(text_page: Any, drawing: Drawing, samples: dict[tuple[str, str], Sample]) -> list[_Drawn | None]:
    """The characters of a page in the order of the file; None for a space."""
    chars: list[_Drawn | None] = []
    pieces: dict[int, _Piece] = {}
    rect = pdfium.FS_RECTF()
    get_code, get_box = pdfium.FPDFText_GetUnicode, pdfium.FPDFText_GetLooseCharBox
    get_object, generated = pdfium.FPDFText_GetTextObject, pdfium.FPDFText_IsGenerated
    for i in range(pdfium.FPDFText_CountChars(text_page)):
        code = get_code(text_page, i)
        if code == LINE_HYPHEN:
            code = 45
        if code in _GAPS:
            if generated(text_page, i) != 1:
                chars.append(None)
            continue
        handle = get_object(text_page, i)
        if not handle:
            continue
        address = ctypes.addressof(handle.contents)
        piece = pieces.get(address)
        if piece is None:
            piece = pieces[address] = _piece(handle, drawing, len(pieces))
        get_box(text_page, i, rect)
        box = Box(rect.left, rect.bottom, rect.right, rect.top)
        size = piece.size
        if box.bottom - box.top > 3 * size + 4 or box.x1 - box.x0 > 4 * size + 4:
            box = _tight_box(text_page, i)
        if piece.lean:
            box = box._replace(x1=max(box.centre, box.x1 - piece.lean * box.height))
        hidden = piece.invisible or (piece.coverable and drawing.hides(box, piece.order, piece.white))
        text = chr(code)
        chars.append((text, box, piece, hidden))
        if text in TELLING_DIGITS and not (hidden or piece.turn or piece.lean):
            samples.setdefault((piece.font, text), Sample(text, box))
    return _with_ligatures_apart(chars)


_SPACE = Char(" ", Box(0, 0, 0, 0), 0, False, False, -1)


def _with_ligatures_apart(chars: list[_Drawn | None]) -> list[_Drawn | None]:
    """The letters of a ligature ("fi", "ff"), which all come with the box of the one shape, side by side in it."""
    apart = list(chars)
    first = 0
    for at in range(1, len(chars) + 1):
        start = chars[first]
        if start is not None and at < len(chars) and _is_same_shape(start, chars[at]):
            continue
        if start is not None and at - first > 1:
            for place, letter in enumerate(chars[first:at]):
                if letter is not None:
                    text, box, piece, hidden = letter
                    apart[first + place] = (text, _share(box, piece.turn, place, at - first), piece, hidden)
        first = at
    return apart


def _is_same_shape(one: _Drawn, other: _Drawn | None) -> bool:
    """True for letters of one piece of text in the very same place; a letter printed twice for bold type is no pair."""
    if other is None or one[1] != other[1] or one[2] is not other[2]:
        return False
    letters = one[0].isalpha() and other[0].isalpha()
    return letters and (one[0] != other[0] or one[0] in DOUBLED_IN_LIGATURES)


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
    (x0, low, x1, high), (left, foot, right, head) = box, area
    if turn == 0:
        return Box(x0 - left, head - high, x1 - left, head - low)
    if turn == 1:
        return Box(low - foot, x0 - left, high - foot, x1 - left)
    if turn == 2:
        return Box(right - x1, low - foot, right - x0, high - foot)
    return Box(head - high, right - x1, head - low, right - x0)


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
    smaller, larger = (before.size, char.size) if before.size < char.size else (char.size, before.size)
    if before.hidden != char.hidden or larger - smaller > 0.2 * larger:
        return True
    size = smaller if smaller > 1.0 else 1.0
    (left, _, right, bottom), (x0, top, _, own_bottom) = before.box, char.box
    if abs(bottom - own_bottom) > BASELINE_SHIFT * size and not _holds_or_is_held(before, char):
        return True
    gap = x0 - right
    if gap > WORD_GAP * size or gap < -BACKWARD * size - (right - left) * 0.3:
        return True
    if before.piece == char.piece:
        return False
    if not -PIECE_OVERLAP * size <= gap <= PIECE_GAP * size:
        return True
    x, y = (right + x0) / 2, (top + own_bottom) / 2
    return any(abs(rule.x0 - x) < 0.3 * size and rule.top <= y <= rule.bottom for rule in drawing_cuts)


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
            (hidden if run[0].hidden else words).append(_joined(run))
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
    real = [char for char in chars if char is not None]
    turn = _upright_turn(real, page_turn)
    width, height = (area.width, area.height) if turn % 2 == 0 else (area.height, area.width)
    slanting = sum(piece.aslant for _, _, piece, _ in real) * 2 <= len(real)
    running: list[Char] = []
    standing: list[Char] = []
    across: list[Char] = []
    for char in chars:
        if char is None:
            running.append(_SPACE)
            continue
        text, place, piece, hidden = char
        box = upright(place, turn, area)
        out = box.x1 < 0 or box.x0 > width or box.bottom < 0 or box.top > height
        along = piece.turn == turn
        here = Char(text, box, piece.size, piece.bold, hidden or out, piece.number if along else -2 - piece.turn)
        (across if piece.aslant and slanting else running if along else standing).append(here)
    cuts = tuple(b for b in (upright(r, turn, area) for r in drawing.rules) if b.width < 1.5)
    aslant, unseen = _words(across, cuts)
    words, covered = _words(_without_doubles(running), cuts)
    words += _sideways_words([c for c in standing if not c.hidden])
    covered += [*unseen, *_sideways_words([c for c in standing if c.hidden])]
    damaged = sum(_is_damaged(text) for text, *_ in real) / len(real) if real else 0.0
    return TextLayer(tuple(words), tuple(covered), width, height, turn, damaged, tuple(samples.values()), tuple(aslant))


def _upright_turn(chars: list[_Drawn], page_turn: int) -> int:
    """The turn that most characters need, those that can be seen if there are any; the page's own where many do, as
    the heads of a wide table may be turned."""
    votes = Counter(piece.turn for _, _, piece, hidden in chars if not hidden)
    votes = votes or Counter(piece.turn for _, _, piece, _ in chars)
    if votes[page_turn] >= UPRIGHT_SHARE * votes.total():
        return page_turn
    return votes.most_common(1)[0][0]


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
    lefts, tops, rights, bottoms = zip(*[char.box for char in run], strict=True)
    box = min(lefts), min(tops), max(rights), max(bottoms)
    return Word("".join([char.text for char in run]), *box, size=round(run[0].size, 2), bold=run[0].bold)
