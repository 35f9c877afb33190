"""Tables whose columns are parameters and whose rows are batches: heads of several lines over lines of values."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from importer.layout.grid import (
    Span,
    cells_by_column,
    cut_spans,
    in_order,
    nearest,
    river_spans,
    rule_borders,
    ruled_spans,
    split_span,
)
from importer.layout.heads import says_methods
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.layout.transposed_heads import (
    WRAP_GAP,
    are_apart,
    head_text,
    parts_of_head,
    under,
    unit_of_head,
)
from importer.words import Page

MAX_HEAD_LINES = 10
HEAD_GAP = 2.2
HEAD_PITCH = 2.0
MIN_VALUES = 2
# What stands in the place of a value that was not determined.
BLANK = "-–—./ "
# Columns without a label that are put up with: a remark, a figure of an unknown name.
KNOWN_SHARE = 0.5
_PLAIN = re.compile(r"\d+(?:[.,]\d+)?$")
LIMIT_ROLES = ("min", "max", "spec", "typical", "previous")


@dataclass(frozen=True, slots=True)
class Transposed:
    """``heads`` are the column heads (all lines joined), ``units`` those of a line of units under them ("" where there
    is none), ``rows`` the cells of each line by column."""

    page: int
    spans: tuple[Span, ...]
    heads: tuple[str, ...]
    units: tuple[str, ...]
    rows: tuple[tuple[int, dict[int, Cell]], ...]
    lines: frozenset[int]


def _values(line: Line, terms: Terms) -> int:
    return sum(
        terms.is_value(cell.text) and not terms.is_unit(cell.text) and not terms.is_label(cell.text)
        for cell in line.cells
    )


def _is_value_line(line: Line, terms: Terms) -> bool:
    """True for a row of values, and for a row of limits, which may have a few only."""
    if terms.is_label(line.cells[0].text):
        return False
    values = _values(line, terms)
    named = any(role in LIMIT_ROLES for role in terms.roles(line.cells[0].text))
    if values >= 1 and named and len(line.cells) > 1:
        return True
    blank = sum(not cell.text.strip(BLANK) for cell in line.cells)
    return values >= MIN_VALUES and (values > MIN_VALUES or values + blank == len(line.cells))


def _is_short_row(line: Line, beside: Line, terms: Terms) -> bool:
    """True for a row above or below another one in which some values are missing ("A24-102  4.1      3.3")."""
    first, *rest = line.cells
    near = abs(line.box.middle - beside.box.middle) < 4 * line.em
    aligned = abs(first.box.x0 - beside.cells[0].box.x0) < 0.5 * line.em
    named = any(c.isdigit() for c in first.text) and not (terms.is_label(first.text) or terms.roles(first.text))
    return bool(rest) and near and aligned and named and all(terms.is_value(cell.text) for cell in rest)


def _is_above_units(lines: Sequence[Line], number: int, terms: Terms) -> bool:
    """True for a line of heads that are sizes ("> 2.8", "2.5-2.8"): units stand close below."""
    below = lines[number]
    for line in lines[number + 1 : number + 3]:
        if line.box.top - below.box.bottom > WRAP_GAP * line.em:
            return False
        if sum(terms.is_unit(cell.text.strip("()[]")) for cell in line.cells) > MIN_VALUES and not _values(line, terms):
            return True
        below = line
    return False


def find_transposed(lines: Sequence[Line], page: Page, terms: Terms) -> list[Transposed]:
    """All such tables of a page."""
    found: list[Transposed] = []
    i = 0
    while i < len(lines):
        if not _is_value_line(lines[i], terms) or _is_above_units(lines, i, terms):
            i += 1
            continue
        run = [i]
        j = i + 1
        while j < len(lines) and lines[j].box.top - lines[run[-1]].box.bottom < 4 * lines[j].em:
            if _is_value_line(lines[j], terms) or _is_short_row(lines[j], lines[run[-1]], terms):
                run.append(j)
            elif len(lines[j].cells) > 1 and terms.is_label(lines[j].cells[0].text):
                break
            elif _are_labels(lines[j], terms):
                # Numbers above the heads are no rows of theirs.
                break
            j += 1
        while run[0] > 0 and _is_short_row(lines[run[0] - 1], lines[run[0]], terms):
            run.insert(0, run[0] - 1)
        table = _table(lines, run, page, terms)
        if table is not None:
            found.append(table)
        i = run[-1] + 1
    return found


def _head_lines(lines: Sequence[Line], run: Sequence[int], terms: Terms) -> list[int]:
    heads: list[int] = []
    first = run[0]
    below = lines[first]
    pitch = median([lines[b].box.middle - lines[a].box.middle for a, b in pairwise(run)] or [0.0])
    for k in range(first - 1, max(-1, first - 1 - MAX_HEAD_LINES), -1):
        line = lines[k]
        if below.box.top - line.box.bottom > HEAD_GAP * max(line.em, below.em) and heads:
            break
        # Names of parameters may stand as far above the first row as that above the third.
        far = 3 * line.em if heads or not _are_labels(line, terms) else max(3 * line.em, HEAD_PITCH * pitch)
        if below.box.top - line.box.bottom > far:
            break
        values = 2 * _values(line, terms) > len(line.cells) - terms.is_label(line.cells[0].text)
        if values and not (heads and _is_wrapped(line, below)):
            break
        entries = _holds_entries(line, terms) and not (heads and k > 0 and _closes(line, lines[k - 1]))
        if entries or says_methods(line, terms) or _is_row(line, terms):
            break
        if heads and below.box.top - line.box.bottom > WRAP_GAP * line.em and _opens_with_entry(line, terms):
            break
        numbered = any(_is_number(cell, terms) for cell in line.cells) and not _are_labels(line, terms)
        if numbered and k > 0 and _are_captions(lines[k - 1], terms):
            break
        heads.insert(0, k)
        below = line
    return heads


def _closes(line: Line, above: Line) -> bool:
    """True for the last words of wrapped heads with their colons ("basis:" close under "Extract, dry")."""
    close = 0 <= line.box.top - above.box.bottom < WRAP_GAP * line.em
    return close and len(above.cells) > 1 and all(cell.text.endswith(":") for cell in line.cells)


def _is_wrapped(line: Line, below: Line) -> bool:
    """True for a size alone in the first line of a narrow head ("2.5" close over "to" over "2.8 mm")."""
    (first, *rest), over = line.cells, below.box.top - line.box.bottom
    return (
        not rest
        and over < WRAP_GAP * line.em
        and any(cell.box.x0 < first.box.x1 and cell.box.x1 > first.box.x0 for cell in below.cells)
    )


def _is_row(line: Line, terms: Terms) -> bool:
    """True for a name, a plain number and at most a unit: a row of a table above ("Friability  %  88")."""
    first, *rest = line.cells
    if not terms.is_label(first.text) or terms.is_value(first.text) or len(rest) > 2:
        return False
    numbers = [cell for cell in rest if _PLAIN.match(cell.text)]
    return len(numbers) == 1 and all(cell in numbers or terms.is_unit(cell.text) for cell in rest)


def _holds_entries(line: Line, terms: Terms) -> bool:
    """True for a line with a header entry ("Batch: 24-0815"), or with captions alone in half of its cells.

    A unit behind a colon is no entry, and one caption among the lower lines of heads ("at / dispatch:") is none.
    """
    if _are_labels(line, terms):
        return False
    captions = 0
    for cell in line.cells:
        caption, colon, rest = cell.text.partition(":")
        rest = rest.strip()
        if not colon or not caption.strip() or terms.is_label(caption) or terms.is_label(cell.text):
            continue
        if len(line.cells) > 1 and terms.is_unit(rest.removeprefix("(").removesuffix(")")):
            continue
        if rest:
            return True
        captions += terms.caption(caption) is not None
    return 2 * captions >= len(line.cells) and captions > 0


def _are_labels(line: Line, terms: Terms) -> bool:
    """True for a line of heads, most of which name a parameter."""
    return len(line.cells) > 2 and 2 * sum(terms.is_label(cell.text) for cell in line.cells) >= len(line.cells) - 1


def _opens_with_entry(line: Line, terms: Terms) -> bool:
    """True for a line of the sheet's head without colons ("Variety  Corvane  Crop  2025")."""
    if len(line.cells) < 2 or any(terms.is_label(cell.text) or terms.is_unit(cell.text) for cell in line.cells):
        return False
    first, second = line.cells[:2]
    known = terms.is_sure_caption(first.text) and terms.caption(first.text) != "ignore"
    return known and terms.caption(second.text) is None


def _goes_on(line: Line, lines: Sequence[Line], heads: Sequence[int]) -> bool:
    """True for the lower line of one wrapped head, which stands close under a line of the others."""
    return any(
        0 <= line.box.top - lines[k].box.bottom < WRAP_GAP * line.em and len(lines[k].cells) > 1
        for k in heads
        if lines[k] is not line
    )


def _are_captions(line: Line, terms: Terms) -> bool:
    """True for a line of captions over their entries, as in the head of a sheet."""
    texts = [cell.text for cell in line.cells]
    if len(texts) < 2 or any(terms.is_label(text) or terms.is_unit(text) for text in texts):
        return False
    return 2 * sum(terms.caption(text) is not None and not terms.roles(text) for text in texts) >= len(texts)


def _is_number(cell: Cell, terms: Terms) -> bool:
    """True for a date, a batch number and the like: entries of a block above the table."""
    text = cell.text
    return sum(c.isdigit() for c in text) > 2 and not (terms.is_label(text) or terms.is_unit(text) or terms.roles(text))


def _table(lines: Sequence[Line], run: Sequence[int], page: Page, terms: Terms) -> Transposed | None:
    heads = _head_lines(lines, run, terms)
    if not heads:
        return None
    body = [lines[i] for i in run]
    em = median(line.em for line in body)
    borders = rule_borders(page.rules, lines[heads[0]].box.top, body[-1].box.bottom, em)
    spans = cut_spans(river_spans(_for_columns(body, lines, heads), em), borders)
    if len(borders) - 1 >= len(spans):
        spans = ruled_spans(borders, body)
    spans = _parted(spans, [lines[k] for k in heads], body)
    if len(spans) < MIN_VALUES:
        return None
    texts: dict[int, list[Cell]] = {}
    used_heads: list[int] = []
    base = _in_order([lines[k] for k in heads], spans, terms)
    for k in heads:
        lower = [lines[h] for h in heads if h > k]
        below = under(lines[k], texts)
        for cell in lines[k].cells:
            whole = bool(base) and not are_apart(cell, base, lower, em)
            parts = (
                {nearest(base, cell.box): cell} if whole else parts_of_head(cell, lines[k], lower, base or spans, em)
            )
            if cell in below:
                parts = {below[cell]: cell}
            if not parts:
                texts.clear()
            for column, part in parts.items():
                texts.setdefault(column, []).append(part)
        if len(lines[k].cells) > 1 or _goes_on(lines[k], lines, heads):
            used_heads.append(k)
    units = tuple(unit_of_head(texts.get(i, []), terms) for i in range(len(spans)))
    joined = tuple(head_text(texts.get(i, []), em, terms) for i in range(len(spans)))
    values = _value_columns(body, spans, terms)
    labels = [i for i in values if terms.is_label(joined[i])]
    if len(labels) < MIN_VALUES or len(labels) < KNOWN_SHARE * len(values):
        return None
    if len(labels) == MIN_VALUES and len(values) > MIN_VALUES:
        return None
    rows = tuple((i, cells_by_column(lines[i], spans)) for i in run)
    return Transposed(page.number, tuple(spans), joined, units, rows, frozenset([*used_heads, *run]))


def _parted(spans: Sequence[Span], heads: Sequence[Line], body: Sequence[Line]) -> list[Span]:
    """Columns so close that their values look like one text, parted where several heads of one line stand over them
    and no word of the rows lies between, but for those of few rows that have one cell there ("Average")."""
    out: list[Span] = []
    for span in spans:
        inside = [[cell for cell in line.cells if span.overlap(cell.box) > 0] for line in body]
        several = [cells for cells in inside if len(cells) > 1]
        shown = several if 2 * len(several) > len(inside) else inside
        words = [word for cells in shown for cell in cells for word in cell.words]
        over = max(([c.box for c in line.cells if span.overlap(c.box) > 0] for line in heads), key=len)
        parts = split_span(span, over, body) if len(over) > 1 else [span]
        clear = all(not word.x0 < part.x1 < word.x1 for part in parts[:-1] for word in words)
        out += parts if clear else [span]
    return out


def _in_order(heads: Sequence[Line], spans: Sequence[Span], terms: Terms) -> list[Span]:
    """The places of the heads, where one line has one for each column but not over its values: heads to the left and
    values to the right of wide columns. Empty where each head stands over its values."""
    best = max(heads, key=lambda line: len(line.cells))
    if not in_order(spans, [cell.box for cell in best.cells]) or not any(
        terms.is_label(cell.text) for cell in best.cells
    ):
        return []
    if all(nearest(spans, cell.box) == i for i, cell in enumerate(best.cells)):
        return []
    edges = [*(cell.box.x0 for cell in best.cells), max(best.box.x1, spans[-1].x1)]
    return [Span(a, b - 0.1) for a, b in pairwise(edges)]


def _for_columns(body: Sequence[Line], lines: Sequence[Line], heads: Sequence[int]) -> list[Line]:
    """Lines from which columns are measured: the values, and the head line with most cells if there is one row only."""
    if len(body) > 1:
        return list(body)
    return [*body, *[lines[k] for k in heads if len(lines[k].cells) >= len(body[0].cells)]]


def _value_columns(body: Sequence[Line], spans: Sequence[Span], terms: Terms) -> list[int]:
    """The columns of which at least half of the cells are values."""
    columns: dict[int, list[bool]] = {}
    for line in body:
        for cell in line.cells:
            columns.setdefault(nearest(spans, cell.box), []).append(terms.is_value(cell.text))
    return sorted(i for i, values in columns.items() if sum(values) >= 0.5 * len(values))
