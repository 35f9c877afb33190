"""Finds the heads of tables: lines whose cells name columns, and the lines above and below that belong to them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from importer.layout.apart import hides_name
from importer.layout.head_cells import CLOSE_HEADS, HeadCell, merge_heads, overlap
from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.words import Box

# Lines of one head follow each other within this many em (top to bottom of the gap between them).
# Of the type size: how far from one place words of one head may begin.
FLUSH = 0.3
HEAD_GAP = 1.0
MAX_HEAD_LINES = 5
_YEAR = re.compile(r"(?:19|20)\d\d(?:\s?[/-]\s?\d{2,4})?")
# Roles that mark a head on their own; the rest only count beside another.
TELLING = ("result", "unit", "min", "max", "spec", "typical", "method", "family:IoB", "family:EBC", "family:ASBC")


@dataclass(frozen=True, slots=True)
class Head:
    """The head of a table, from line ``first`` to line ``last`` of the page."""

    first: int
    last: int
    cells: tuple[HeadCell, ...]
    box: Box


WORD_SPACE = 0.34


def with_parted_heads(line: Line, space: float, terms: Terms) -> Line:
    """The line with cells parted that hold two heads side by side ("Result Norm"). ``space`` parts words, in em."""
    if len(line.cells) < 2:
        return line
    cells = [part for cell in line.cells for part in _parted(cell, min(space, _beside(line, cell)), line.em, terms)]
    return line if len(cells) == len(line.cells) else Line(tuple(cells), line.box, line.em, line.page)


def _beside(line: Line, cell: Cell) -> float:
    """The narrowest space between words in the other cells of a line, in em; 0 where they have none to compare with."""
    gaps = [(b.x0 - a.x1) / line.em for other in line.cells if other is not cell for a, b in pairwise(other.words)]
    return max(min(gaps, default=0.0), 0.0)


def _word_space(lines: Sequence[Line]) -> float:
    """The usual space between two words of a page, in em: typewriter faces have wide ones."""
    gaps = [
        (b.x0 - a.x1) / line.em
        for line in lines
        for cell in line.cells
        if len(cell.words) > 2
        for a, b in pairwise(cell.words)
    ]
    return median(gaps) if gaps else 0.0


def _parted(cell: Cell, space: float, em: float, terms: Terms) -> list[Cell]:
    if len(cell.words) < 2 or len(cell.words) > 6:
        return [cell]
    twice = _two_ends(cell, terms)
    if twice:
        return twice
    whole = terms.roles(cell.text)
    for cut in range(1, len(cell.words)):
        gap = cell.words[cut].x0 - cell.words[cut - 1].x1
        if gap < (max(CLOSE_HEADS, 1.1 * space) if whole else WORD_SPACE) * em:
            continue
        left, right = make_cell(cell.words[:cut]), make_cell(cell.words[cut:])
        if terms.roles(left.text):
            rest = _parted(right, space, em, terms)
            roles = [terms.roles(part.text) for part in (left, *rest)]
            # "Spec. limit" is one head; "Min. Max." are two where they stand apart, and one where they do not.
            if all(roles) and (len(whole) != 1 or (whole not in roles and len(set(roles)) == len(roles))):
                return [left, *rest]
    return [cell]


def _two_ends(cell: Cell, terms: Terms) -> list[Cell]:
    """The heads of "Spec. min. Spec. max.": the same words twice, once for each end of the limits."""
    half, odd = divmod(len(cell.words), 2)
    left, right = cell.words[:half], cell.words[half:]
    same = sum(a.text.casefold() == b.text.casefold() for a, b in zip(left, right, strict=False))
    if odd or half < 2 or same != half - 1:
        return []
    cells = [make_cell(left), make_cell(right)]
    return cells if {terms.roles(part.text)[:1] for part in cells} == {("min",), ("max",)} else []


def _role_cells(line: Line, terms: Terms) -> list[tuple[Cell, tuple[str, ...]]]:
    return [(cell, terms.roles(cell.text)) for cell in line.cells]


def is_head_line(line: Line, terms: Terms) -> bool:
    """True for a line that names columns and holds no result of its own."""
    valued = any(terms.is_value(cell.text) and not terms.roles(cell.text) for cell in line.cells[1:])
    # A batch number or a year may stand in a head; a figure with its unit may not.
    if valued and not _looks_like_batches(line, terms):
        return False
    named = [roles for _, roles in _role_cells(line, terms) if roles]
    if all(terms.is_method(cell.text) or terms.is_unit(cell.text) for cell in line.cells):
        return False
    if says_methods(line, terms):
        return False
    if len(line.cells) == 1 or any(terms.is_label(cell.text) and not terms.roles(cell.text) for cell in line.cells):
        return False
    if named and len({terms.basis(cell.text) for cell in line.cells} - {None}) == 2:
        return not _is_captioned(line, terms)
    telling = {role for roles in named for role in roles if role in TELLING}
    if telling and (len(named) >= 2 or _heads_samples(line, terms)):
        return not _is_captioned(line, terms)
    return False


def _heads_samples(line: Line, terms: Terms) -> bool:
    """True for a caption of malts or batches before several of them ("Product  Unit  Pilsner malt  Munich malt")."""
    return len(line.cells) > 3 and terms.caption(line.cells[0].text) in ("malt", "batch")


def says_methods(line: Line, terms: Terms) -> bool:
    """True for "Methods   EBC", which speaks of the whole sheet."""
    if len(line.cells) != 2:
        return False
    first, second = (terms.roles(cell.text) for cell in line.cells)
    return "method" in first and len(second) == 1 and second[0].startswith("family:")


def _is_captioned(line: Line, terms: Terms) -> bool:
    """True for a line of header entries such as "Method: EBC   Result: 12"."""
    return any(":" in cell.text[:-1] for cell in line.cells)


def _looks_like_batches(line: Line, terms: Terms) -> bool:
    first = line.cells[0].text
    return ("label" in terms.roles(first) or terms.caption(first) == "batch") and not any(
        terms.is_unit(cell.text) for cell in line.cells[1:] if not terms.roles(cell.text)
    )


def is_lone_head(line: Line, after: Line | None, terms: Terms) -> bool:
    """True for a single head over the result column ("Result", "EBC") with a row right below it."""
    if after is None or len(line.cells) != 1 or len(after.cells) < 2:
        return False
    cell = line.cells[0]
    roles = terms.roles(cell.text)
    if not any(role in TELLING for role in roles) or terms.is_unit(cell.text):
        return False
    under = [c for c in after.cells[1:] if min(c.box.x1, cell.box.x1) - max(c.box.x0, cell.box.x0) > 0]
    return bool(under) and terms.is_value(under[0].text) and cell.box.x0 > after.cells[0].box.x1


def _names_families(line: Line, after: Line | None, terms: Terms) -> bool:
    """True for nothing but method families ("IoB  EBC") right of the name of the row below."""
    if after is None or len(line.cells) < 2 or not terms.is_label(after.cells[0].text):
        return False
    roles = [terms.roles(cell.text) for cell in line.cells]
    families = {names[0] for names in roles if len(names) == 1 and names[0].startswith("family:")}
    valued = [cell for cell in after.cells[1:] if terms.is_value(cell.text)]
    beside = line.cells[0].box.x0 > after.cells[0].box.x1 - line.em
    return len(families) == len(roles) and beside and any(overlap(cell.box, line.box) > 0 for cell in valued)


def _belongs(line: Line, core: Sequence[Line], terms: Terms, below: bool) -> bool:
    """True for a line close to the head that only holds pieces of heads (wrapped words, units, group heads)."""
    near = core[-1] if below else core[0]
    gap = line.box.top - near.box.bottom if below else near.box.top - line.box.bottom
    if gap > HEAD_GAP * line.em:
        return False
    if _is_captioned(line, terms) or says_methods(line, terms) or _is_entry_row(line, terms):
        return False
    if not below and _is_entry(line, terms):
        return False
    if below and _ends_with_years(line, core, terms):
        return True
    if holds_entries(line, terms):
        return False
    values = [cell for cell in line.cells if terms.is_value(cell.text)]
    if (values and any(not terms.is_unit(cell.text) for cell in values)) or hides_name(line, terms):
        return False
    # Of heads set half a line apart the boxes overlap, those of a scan, which hold the ink alone, by less.
    overlapping = gap < (0.0 if line.cells[0].is_ink else -0.2 * line.em)
    if overlapping and not any(terms.is_label(cell.text) for cell in line.cells):
        return True
    if terms.is_label(line.cells[0].text) and len(line.cells) >= 1 and below:
        roles = terms.roles(line.cells[0].text)
        if not roles and not (
            len(line.cells) > 1 and all(terms.is_unit(c.text) or terms.roles(c.text) for c in line.cells)
        ):
            return False
    span_left = min(part.box.x0 for part in core) - line.em
    span_right = max(part.box.x1 for part in core) + 3 * line.em
    begun = [head.box.x0 for head in near.cells]
    if any(
        cell.box.x0 < span_left
        or (cell.box.x1 > span_right and not any(abs(cell.box.x0 - x0) < FLUSH * line.em for x0 in begun))
        for cell in line.cells
    ):
        return False
    if below:
        return (
            all(
                terms.is_unit(cell.text) or bool(terms.roles(cell.text)) or _stands_under(cell, core)
                for cell in line.cells
            )
            and len(line.text) < 90
            and (len(line.cells) > 1 or (_stands_under(line.cells[0], core[:]) and gap < 0.4 * line.em))
        )
    if len(line.cells) > 1:
        return True
    # A line that begins where the table does is its title.
    titled = line.cells[0].box.x0 < min(part.cells[0].box.x0 for part in core) + line.em
    return not titled and _stands_under(line.cells[0], core) and _heads(line.cells[0], core[0], terms)


def _heads(cell: Cell, below: Line, terms: Terms) -> bool:
    """True for a lone cell above heads that names a column, by itself or with the head below it ("Cahier des /
    charges")."""
    joined = (f"{cell.text} {head.text}" for head in below.cells if overlap(cell.box, head.box) > 0)
    return bool(terms.roles(cell.text)) or any(terms.roles(text) for text in joined)


def holds_entries(line: Line, terms: Terms) -> bool:
    """True for captions and entries in turn ("Lot  24-0815  Crop  2025"), the head of a sheet in columns."""
    if len(line.cells) < 4 or terms.is_label(line.cells[0].text):
        return False
    # What stands behind a caption is its entry, whatever it sounds like ("Malt  Extra pale malt").
    named = [
        n
        for n, cell in enumerate(line.cells)
        if terms.caption(cell.text.rstrip(": ")) is not None and not terms.is_unit(cell.text)
    ]
    if any(terms.is_label(cell.text) for n, cell in enumerate(line.cells) if n in named or n - 1 not in named):
        return False
    return len(named) > 1 and named[0] == 0 and all(b > a + 1 for a, b in pairwise(named))


def next_certificate(lines: Sequence[Line], start: int, end: int, terms: Terms) -> int:
    """The line before ``end`` where another certificate begins: a title with header entries below it, or entries with a
    batch right above the next head or the end of the page."""
    for i in range(start + 1, end):
        titled = len(lines[i].cells) == 1 and terms.is_title(lines[i].text)
        if titled and any(holds_entries(line, terms) or is_header_line(line, terms) for line in lines[i + 1 : end]):
            return i
    return _entries_above(lines, start, end, terms)


def _entries_above(lines: Sequence[Line], start: int, end: int, terms: Terms) -> int:
    """The first of the header entries in two cells above a line ("Batch  24-0815"); ``end`` where no batch is among
    them."""
    first, keys = end, set()
    for i in range(end - 1, start, -1):
        name, *rest = lines[i].cells
        if len(rest) > 1 or terms.is_label(name.text):
            break
        key = terms.caption(name.text.rstrip(": ")) if rest else None
        if key is not None:
            first = i
            keys.add(key)
    return first if "batch" in keys and len(keys) > 1 else end


def is_header_line(line: Line, terms: Terms) -> bool:
    """True for a line of header entries ("Batch: 24-0815"), which may stand between two tables."""
    for cell in line.cells:
        caption, colon, rest = cell.text.partition(":")
        if colon and (not rest or rest.startswith(" ")) and terms.caption(caption) and not terms.is_label(caption):
            return True
    return False


def _is_entry_row(line: Line, terms: Terms) -> bool:
    """True for a caption and its entries of several columns ("Lot  24-1174  24-1175"), which are rows of the table."""
    first, *rest = line.cells
    key = terms.caption(first.text.rstrip(": "))
    return (
        len(rest) > 1
        and key not in (None, "ignore")
        and not any(terms.roles(cell.text) or terms.caption(cell.text) or terms.is_label(cell.text) for cell in rest)
    )


def _is_entry(line: Line, terms: Terms) -> bool:
    """True for one caption and its entry ("Lot no.  24-0815"), which may stand right above the heads of a workbook."""
    if len(line.cells) != 2:
        return False
    name, entry = (cell.text for cell in line.cells)
    key = terms.caption(name.rstrip(": "))
    heads = terms.roles(entry) or terms.caption(entry) or terms.is_label(entry) or terms.is_unit(entry)
    return key not in (None, "ignore") and not terms.is_label(name) and not heads


def _ends_with_years(line: Line, core: Sequence[Line], terms: Terms) -> bool:
    """True for harvests and words that end the heads above them ("Crop average / 2024", "Your / lot")."""
    pairs = [(head, cell) for cell in line.cells for head in core[-1].cells[1:] if overlap(head.box, cell.box) > 0]
    if len(pairs) != len(line.cells) or not any(_YEAR.fullmatch(cell.text) for cell in line.cells):
        return False
    return all(
        (terms.roles(head.text) and _YEAR.fullmatch(cell.text))
        or (not terms.is_value(cell.text) and terms.roles(f"{head.text} {cell.text}"))
        for head, cell in pairs
    )


def _stands_under(cell: Cell, core: Sequence[Line]) -> bool:
    """True where a cell shares its width with a head cell that is not the first: a wrapped head or a group of heads."""
    for line in core:
        for head in line.cells[1:]:
            if min(head.box.x1, cell.box.x1) - max(head.box.x0, cell.box.x0) > 0.5 * min(
                head.box.width, cell.box.width
            ):
                return True
    return False


def find_heads(lines: Sequence[Line], terms: Terms) -> list[Head]:
    """All heads of a page, top to bottom."""
    space = _word_space(lines)
    lines = [with_parted_heads(line, space, terms) for line in lines]
    heads: list[Head] = []
    i = 0
    while i < len(lines):
        after = lines[i + 1] if i + 1 < len(lines) else None
        named = is_head_line(lines[i], terms) or is_lone_head(lines[i], after, terms)
        if not (named or _names_families(lines[i], after, terms)):
            i += 1
            continue
        first = last = i
        floor = heads[-1].last if heads else -1
        while (
            first - 1 > floor
            and last - first < MAX_HEAD_LINES
            and _belongs(lines[first - 1], lines[first : last + 1], terms, below=False)
        ):
            first -= 1
        while last + 1 < len(lines) and last - first < MAX_HEAD_LINES:
            following = lines[last + 1]
            if not (is_head_line(following, terms) or _belongs(following, lines[first : last + 1], terms, below=True)):
                break
            last += 1
        core = lines[first : last + 1]
        box = core[0].box
        for line in core[1:]:
            box = box.union(line.box)
        heads.append(Head(first, last, merge_heads(core, terms), box))
        i = last + 1
    return heads
