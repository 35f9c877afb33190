"""What stands under a caption: the value below a label in small type, as on cards and forms."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.reading.entry_kinds import fits_entry
from importer.reading.rows import clean_label
from importer.reading.values import split_value

# A value under its caption begins within this many em below it.
BELOW = 1.6
# Where a whole line of captions has an entry for each, in boxes, the entries may stand farther off.
BELOW_IN_BOXES = 3.0
# Definitions are set in from their captions by less than this.
INDENT = 4.0
# Distances are alike within this many em.
SAME = 0.1


def has_unit(text: str, terms: Terms) -> bool:
    """True for a value with its unit behind it."""
    return terms.is_value(text) and split_value(text)[1] is not None


def value_under(
    caption: Cell,
    label: str,
    line: Line,
    number: int,
    lines: Sequence[Line],
    used: frozenset[int],
    terms: Terms,
) -> Cell | None:
    """The value that stands under a label, as on cards: label in small type, value below it."""
    if len(line.cells) > 1 and all(terms.is_unit(cell.text) for cell in line.cells):
        return None
    if not terms.is_label(label) or any(
        has_unit(cell.text, terms) for cell in line.cells if not terms.is_label(cell.text)
    ):
        return None
    cell = below(caption, line, number, lines, used, terms) or _in_box_below(caption, line, number, lines, used, terms)
    if cell is not None and terms.is_unit(cell.text) and number + 1 < len(lines):
        unit = cell
        cell = below(unit, lines[number + 1], number + 1, lines, used, terms)
        if cell is not None and terms.is_value(cell.text):
            return make_cell([*cell.words, *unit.words])
    return cell if cell is not None and terms.is_value(cell.text) else None


def _in_box_below(
    caption: Cell, line: Line, number: int, lines: Sequence[Line], used: frozenset[int], terms: Terms
) -> Cell | None:
    """The only value of the next line between this label and the next one: a form whose boxes hold name and value."""
    if number + 1 >= len(lines) or number + 1 in used:
        return None
    under = lines[number + 1]
    if under.box.top - line.box.bottom > BELOW * line.em:
        return None
    later = [cell.box.x0 for cell in line.cells if cell.box.x0 > caption.box.x0 + 1]
    end = min(later, default=float("inf"))
    inside = [cell for cell in under.cells if caption.box.x0 - 1 <= cell.box.x0 < end - 1]
    return inside[0] if len(inside) == 1 and terms.is_value(inside[0].text) else None


def more_below(value: Cell, lines: Sequence[Line], used: frozenset[int], terms: Terms) -> bool:
    """True where another value stands right below one found under its name: limits, or the last batch."""
    first = value.words[0]
    at = next((i for i, line in enumerate(lines) if any(first in cell.words for cell in line.cells)), None)
    if at is None:
        return False
    # A row between may have nothing in this place: a limit that the parameter does not have. A name ends the search.
    found = (below(value, lines[i], i, lines, used, terms) for i in range(at, min(at + 3, len(lines))))
    nearest = next((cell for cell in found if cell is not None), None)
    return nearest is not None and _is_plain_value(nearest.text, terms)


def nearer_above(name: Cell, value: Cell, line: Line, number: int, lines: Sequence[Line], terms: Terms) -> bool:
    """True where another value stands right above the name, nearer than the one found below it."""
    over = [cell for cell in lines[number - 1].cells if _share_width(cell, name)] if number else []
    if len(over) != 1 or not _is_plain_value(over[0].text, terms):
        return False
    return name.box.top - over[0].box.bottom < value.box.top - name.box.bottom - SAME * line.em


def _share_width(one: Cell, other: Cell) -> bool:
    return min(one.box.x1, other.box.x1) > max(one.box.x0, other.box.x0)


def _is_plain_value(text: str, terms: Terms) -> bool:
    """True for a number with or without its unit, and no further words ("6/64 screen" is the name of a sieve)."""
    if terms.is_unit(text) or not terms.is_value(text):
        return False
    value, unit, _ = split_value(text)
    return not any(c.isalpha() for c in value) and (unit is None or terms.is_unit(unit))


def below(
    caption: Cell, line: Line, number: int, lines: Sequence[Line], used: frozenset[int], terms: Terms
) -> Cell | None:
    """The cell under a caption, if it is near, stands under it and is no caption itself."""
    for later in range(number + 1, min(number + 3, len(lines))):
        under = lines[later]
        reach = BELOW_IN_BOXES if later == number + 1 and _has_entries(line, under, terms) else BELOW
        if later in used or under.box.top - line.box.bottom > reach * line.em:
            return None
        if later == number + 1 and caption in line.cells and _stand_in_order(line, under, terms):
            return under.cells[line.cells.index(caption)]
        for cell in under.cells:
            across = min(cell.box.x1, caption.box.x1) - max(cell.box.x0, caption.box.x0)
            aligned = abs(cell.box.x0 - caption.box.x0) < 0.6 * line.em
            over = across > 0 and (aligned or across > 0.5 * min(cell.box.width, caption.box.width))
            if over or _is_indented(cell, caption, line, under):
                if terms.caption(clean_label(cell.text)) or cell.text.rstrip().endswith(":") or ": " in cell.text:
                    return None
                return _own_part(cell, caption, line)
    return None


def _is_indented(cell: Cell, caption: Cell, line: Line, under: Line) -> bool:
    """True for what stands alone below a lone caption, set in from it as in a list of definitions."""
    alone = len(line.cells) == len(under.cells) == 1
    return alone and 0 < cell.box.x0 - caption.box.x0 < INDENT * line.em and under.box.top - line.box.bottom < line.em


def _has_entries(line: Line, under: Line, terms: Terms) -> bool:
    """True for a line of captions and nothing else over a line with as many cells, each below one of them."""
    if len(line.cells) < 3 or len(line.cells) != len(under.cells):
        return False
    pairs = zip(line.cells, under.cells, strict=True)
    return all(
        terms.caption(clean_label(cell.text)) is not None and abs(cell.box.x0 - entry.box.x0) < 0.6 * line.em
        for cell, entry in pairs
    )


def _stand_in_order(line: Line, under: Line, terms: Terms) -> bool:
    """True for a line of captions with an entry below each, though heads are centred and entries are not.

    Each entry stands nearer to its own caption than to any other, and is what such a caption can hold.
    """
    if len(line.cells) < 3 or len(line.cells) != len(under.cells):
        return False
    middles = [cell.box.centre for cell in line.cells]
    for at, (cell, entry) in enumerate(zip(line.cells, under.cells, strict=True)):
        key, text = terms.caption(clean_label(cell.text)), clean_label(entry.text)
        if key is None or terms.caption(text) is not None or ":" in text or fits_entry(key, text) is False:
            return False
        if min(range(len(middles)), key=lambda i: abs(middles[i] - entry.box.centre)) != at:
            return False
    return True


def _own_part(cell: Cell, caption: Cell, line: Line) -> Cell:
    """The words of a cell under one caption, where the entries of the captions beside it stand close to each other."""
    near = 0.4 * line.em
    others = [other.box.x0 for other in line.cells if other is not caption]
    start = max((x for x in others if x < caption.box.x0), default=None)
    end = min((x for x in others if x > caption.box.x0), default=float("inf"))
    own = [
        word
        for word in cell.words
        if word.x0 < end - near and (start is None or cell.box.x0 > start + near or word.x0 > caption.box.x0 - near)
    ]
    return make_cell(own) if own and len(own) < len(cell.words) else cell
