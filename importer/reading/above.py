"""Header entries that stand above or before their captions: forms with the caption in small type below the entry."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.reading.entry_kinds import fits_entry
from importer.reading.rows import clean_label
from importer.reading.under import BELOW, BELOW_IN_BOXES
from importer.vocabulary.captions import looks_like_batch
from importer.vocabulary.malt_names import names_brewer, names_malt, names_maltster

# Entries begin where their captions do, or share their middle, within this many em.
SAME_PLACE = 0.6
_NAMED = {"malt": names_malt, "supplier": names_maltster, "customer": names_brewer}


def entry_above(caption: Cell, line: Line, number: int, lines: Sequence[Line], terms: Terms) -> Cell | None:
    """The entry right above a caption, where that is so for every caption of its line and nothing below fits them."""
    if number == 0 or caption not in line.cells or not _are_captions(line.cells, terms):
        return None
    over = lines[number - 1]
    if not _begins_with_entries(number, lines, terms) or not _fit(over.cells, line.cells, terms):
        return None
    below = lines[number + 1] if number + 1 < len(lines) else None
    if (
        below is not None
        and below.box.top - line.box.bottom < BELOW_IN_BOXES * line.em
        and _may_hold(below, line, terms)
    ):
        return None
    return over.cells[line.cells.index(caption)]


def _begins_with_entries(number: int, lines: Sequence[Line], terms: Terms) -> bool:
    """True where lines of entries and of captions take turns up from here, and the first of them holds entries."""
    while number > 0 and _stand_over(lines[number - 1], lines[number], terms):
        if number == 1 or not _are_captions(lines[number - 2].cells, terms):
            return True
        number -= 2
    return False


def _may_hold(below: Line, line: Line, terms: Terms) -> bool:
    """True for a line that may hold the entries of the captions above it, or of some of them."""
    if len(below.cells) == len(line.cells):
        return _fit(below.cells, line.cells, terms)
    pairs = [(c, cell) for c in line.cells for cell in below.cells if abs(c.box.x0 - cell.box.x0) < line.em]
    return any((key := _key(c, terms)) is not None and is_told(key, cell.text.strip()) for c, cell in pairs)


def entry_before(caption: Cell, line: Line, number: int, lines: Sequence[Line], terms: Terms) -> Cell | None:
    """The entry left of a caption that ends its line, where a line beside it is of the same form."""
    if not _is_behind(line, terms) or caption != line.cells[1]:
        return None
    beside = [lines[i] for i in (number - 1, number + 1) if 0 <= i < len(lines)]
    alike = [other for other in beside if _is_behind(other, terms)]
    return line.cells[0] if any(abs(_gap(other, line)) < BELOW * line.em for other in alike) else None


def is_told(key: str, text: str) -> bool:
    """True for an entry that can be one of its caption only: a date, a harvest, a batch, a name of the trade."""
    if key == "batch":
        return looks_like_batch(text)
    named = _NAMED.get(key)
    return named(text) if named is not None else fits_entry(key, text) is True


def _gap(one: Line, other: Line) -> float:
    upper, lower = sorted((one, other), key=lambda line: line.box.top)
    return lower.box.top - upper.box.bottom


def _key(cell: Cell, terms: Terms) -> str | None:
    return terms.caption(clean_label(cell.text.strip("()[] ")))


def _are_captions(cells: Sequence[Cell], terms: Terms) -> bool:
    return len(cells) > 1 and all(_key(cell, terms) is not None and ":" not in cell.text for cell in cells)


def _stand_over(over: Line, line: Line, terms: Terms) -> bool:
    """True for a line close above with an entry over each caption, and no caption or name of a figure among them."""
    if len(over.cells) != len(line.cells) or line.box.top - over.box.bottom > BELOW * over.em:
        return False
    return all(
        (abs(a.box.x0 - b.box.x0) < SAME_PLACE * line.em or abs(a.box.centre - b.box.centre) < SAME_PLACE * line.em)
        and terms.caption(clean_label(a.text)) is None
        and ":" not in a.text
        for a, b in zip(over.cells, line.cells, strict=True)
    )


def _fit(entries: Sequence[Cell], captions: Sequence[Cell], terms: Terms) -> bool:
    """True where every entry can be one of its caption, and most can be one of no other; a title is none."""
    if any(terms.is_title(entry.text) for entry in entries):
        return False
    pairs = [(key, entry.text.strip()) for c, entry in zip(captions, entries, strict=True) if (key := _key(c, terms))]
    told = sum(is_told(key, text) for key, text in pairs)
    return all(fits_entry(key, text) is not False for key, text in pairs) and 2 * told > len(pairs)


def _is_behind(line: Line, terms: Terms) -> bool:
    """True for an entry and its caption behind it ("24-0815  (batch)")."""
    if len(line.cells) != 2 or ":" in line.text:
        return False
    entry, caption = line.cells
    key = _key(caption, terms)
    if key in (None, "ignore") or terms.is_label(caption.text) or terms.caption(clean_label(entry.text)) is not None:
        return False
    return is_told(key, entry.text.strip())
