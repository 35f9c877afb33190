"""Cards with a big value above its name, in rows beside each other or one below the other."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms

# Cards below each other hold one value a line; fewer than so many may be a value and the name of the next row.
FEWEST_ALONE = 3
# A name stands under its value within so many em, and nearer to it than to the line below.
NEAR, SAME = 1.8, 0.1
# Lines of values, of units and of names in turn; in every card, or in none, a limit stands below the name.
_PLAIN, _LIMITED = re.compile("(?:VU?N)+"), re.compile("(?:VU?NV)+")


@dataclass(frozen=True, slots=True)
class Card:
    """A name with the value above it, and what stands below it. ``line`` is that of the name."""

    name: Cell
    value: Cell
    line: Line
    limit: str = ""


@dataclass(frozen=True, slots=True)
class Cards:
    """The cards of a page, and the indices of the lines that they take."""

    cards: tuple[Card, ...]
    lines: frozenset[int]


def find_cards(lines: Sequence[Line], terms: Terms) -> Cards:
    """Runs of lines of values and lines of names in turn that begin with values and end with names."""
    cards: list[Card] = []
    used: set[int] = set()
    kinds = [_kind(line, terms) for line in lines]
    i = 0
    while i < len(lines):
        end = i
        while end < len(lines) and kinds[end]:
            end += 1
        found = _of_run(lines, kinds, i, end) if end > i else []
        if found:
            cards += found
            used |= set(range(i, end))
        i = max(end, i + 1)
    return Cards(tuple(cards), frozenset(used))


def _kind(line: Line, terms: Terms) -> str:
    """ "V" for a line of values, "U" for one of units, "N" for one of names; "" for any other."""
    texts = [cell.text for cell in line.cells]
    if all(terms.is_unit(text) for text in texts):
        return "U"
    if all(terms.is_value(text) and not terms.is_label(text) for text in texts):
        return "V"
    if any(terms.is_value(text) or text.rstrip().endswith(":") for text in texts):
        return ""
    return "N" if 2 * sum(terms.is_label(text) for text in texts) > len(texts) else ""


def _of_run(lines: Sequence[Line], kinds: Sequence[str], first: int, end: int) -> list[Card]:
    """The cards of a run; none where it is anything but values and names in turn, each under its value."""
    pattern = "".join(kinds[first:end])
    limited = _LIMITED.fullmatch(pattern) is not None
    if not (limited or _PLAIN.fullmatch(pattern)):
        return []
    if _is_single(lines[first:end]) and pattern.count("N") < FEWEST_ALONE:
        return []
    cards: list[Card] = []
    for i in range(first, end):
        if kinds[i] != "N":
            continue
        units = lines[i - 1] if kinds[i - 1] == "U" else None
        at = i - 2 if units is not None else i - 1
        pairs = _pairs(lines[at], units, lines[i])
        if not pairs or not _apart(lines, at, i, first, i + 1 if limited else end):
            return []
        cards += [_with_limit(card, lines[i + 1]) for card in pairs] if limited else pairs
    return cards


def _with_limit(card: Card, limits: Line) -> Card:
    below = next((cell.text for cell in limits.cells if _over(cell, card.name)), "")
    return replace(card, limit=below)


def _is_single(lines: Sequence[Line]) -> bool:
    return all(len(line.cells) == 1 for line in lines)


def _apart(lines: Sequence[Line], value: int, name: int, start: int, end: int) -> bool:
    """True where a line of names is no farther from its values than these from the line above them and than the names
    from the line below; the line above the first values of a run is farther off."""
    inside, same = lines[name].box.top - lines[name - 1].box.bottom, SAME * lines[name].em
    above = lines[value].box.top - lines[value - 1].box.bottom if value else inside + 1
    below = lines[name + 1].box.top - lines[name].box.bottom if name + 1 < end else inside + 1
    near_above = inside < above - same if value == start else inside <= above + same
    return near_above and inside <= below + same and inside < NEAR * lines[name].em


def _pairs(values: Line, units: Line | None, names: Line) -> list[Card]:
    """Each name with the one value above it; none where a value or a name is left over."""
    cards = []
    for name in names.cells:
        over = [cell for cell in values.cells if _over(cell, name)]
        beside = [cell for cell in units.cells if _over(cell, name)] if units is not None else []
        if len(over) != 1 or len(beside) > 1:
            return []
        cards.append(Card(name, make_cell([*over[0].words, *(beside[0].words if beside else ())]), names))
    return cards if len({id(card.value.words[0]) for card in cards}) == len(values.cells) == len(cards) else []


def _over(cell: Cell, name: Cell) -> bool:
    return min(cell.box.x1, name.box.x1) - max(cell.box.x0, name.box.x0) > 0
