"""Lines outside of tables, cut at colons: captions, and what stands beside them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms

MAX_CAPTION_WORDS = 6
_COLONS = (":", "：")
# A colon or an equals sign set apart from its caption; a stroke between two entries.
_SIGNS = (*_COLONS, "=", "|")


@dataclass(frozen=True, slots=True)
class Piece:
    """A part of a line: a caption that ended with a colon (or stands alone), or plain text."""

    text: str
    cell: Cell
    colon: bool


def pieces_of(line: Line, terms: Terms) -> list[Piece]:
    """Cuts the cells of a line at colons; the caption before a colon is parted from the words before it."""
    pieces: list[Piece] = []
    for cell in line.cells:
        if cell.text in _SIGNS and pieces:
            pieces[-1] = Piece(pieces[-1].text, pieces[-1].cell, cell.text != "|")
            continue
        if cell.text.startswith(_COLONS) and pieces and not pieces[-1].colon:
            # The colons of a block stand below each other, before the entries (": 24-0815").
            pieces[-1] = Piece(pieces[-1].text, pieces[-1].cell, True)
        pieces += _cut(_without_colon(cell), terms)
    return pieces


def _without_colon(cell: Cell) -> Cell:
    first = cell.words[0]
    if not first.text.startswith(_COLONS):
        return cell
    if len(first.text) == 1:
        return make_cell(cell.words[1:], cell.after_leader) if len(cell.words) > 1 else cell
    step = (first.x1 - first.x0) / len(first.text)
    return make_cell([first._replace(text=first.text[1:], x0=first.x0 + step), *cell.words[1:]], cell.after_leader)


def _cut(cell: Cell, terms: Terms) -> list[Piece]:
    pieces: list[Piece] = []
    run: list[int] = []
    for i, word in enumerate(cell.words):
        run.append(i)
        if (word.text.endswith(_COLONS) and len(word.text) > 1) or word.text in (*_COLONS, "="):
            caption = _caption_tail(cell, run, terms)
            rest = run[: len(run) - len(caption)]
            if rest:
                pieces.append(_piece(cell, rest, colon=False))
            pieces.append(_piece(cell, caption, colon=True))
            run = []
    if run:
        pieces.append(_piece(cell, run, colon=False))
    return pieces


def _piece(cell: Cell, indices: Sequence[int], colon: bool) -> Piece:
    part = make_cell([cell.words[i] for i in indices], cell.after_leader and indices[0] == 0)
    if len(indices) == len(cell.words):
        part = Cell(cell.text, part.box, part.words, part.after_leader)
    text = part.text
    if colon:
        text = text.rstrip(":：= ")
    return Piece(text.strip(), part, colon)


def _caption_tail(cell: Cell, run: Sequence[int], terms: Terms) -> list[int]:
    """The longest run of words before a colon that is a known caption or label; all of them where none is known."""
    if run[0] == 0 and cell.words and len(run) <= MAX_CAPTION_WORDS:
        whole = " ".join(cell.words[i].text for i in run).rstrip(":：= ")
        if terms.caption(whole) or terms.is_label(whole):
            return list(run)
    for start in range(max(0, len(run) - MAX_CAPTION_WORDS), len(run)):
        text = " ".join(cell.words[i].text for i in run[start:]).rstrip(":：= ")
        if terms.caption(text) or terms.is_label(text):
            return list(run[start:])
    return list(run)
