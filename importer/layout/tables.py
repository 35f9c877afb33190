"""Tables of a page: a head, columns, and rows whose cells stand in those columns.

A table without a head is a run of lines in which a label is followed by a value. Nothing here knows what a label
means; :class:`Terms` answers whether a text is one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from statistics import median

from importer.layout.apart import names_apart, seams, with_units_apart
from importer.layout.grid import (
    Span,
    cells_by_column,
    cut_spans,
    in_order,
    is_title,
    nearest,
    one_cell_each,
    river_spans,
    rule_borders,
    ruled_spans,
    split_span,
)
from importer.layout.head_cells import HeadCell
from importer.layout.heads import Head, holds_entries, is_header_line, next_certificate
from importer.layout.lines import Cell, Line
from importer.layout.lines_above import captions_above, is_prose, rows_above, section_above
from importer.layout.recut import heads_by_brackets, heads_by_column
from importer.layout.terms import Terms
from importer.layout.wrap import Row, merge_rows
from importer.words import Box, Page

# A gap this many times the usual distance of lines ends the run from which columns are measured.
BREAK = 2.4
# Lines of one wrapped name begin at one place and follow each other closer than this, in em.
ALIGNED, CLOSE = 0.3, 0.6
# A number and the unit behind it can be parted by a word space only, in em.
WORD_RIVER = 0.15


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table: where it stands, its head, and what that head may say of it."""

    span: Span
    head: str
    roles: tuple[str, ...]
    head_box: Box | None = None


@dataclass(frozen=True, slots=True)
class Table:
    """``headed`` is false where no head was found. ``lines`` are the indices of the page's lines used, ``head_line``
    that of the first line of the head."""

    page: int
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]
    lines: frozenset[int]
    headed: bool
    ruled: bool
    em: float
    head_line: int | None = None


def find_tables(
    lines: Sequence[Line], heads: Sequence[Head], page: Page, terms: Terms, carried: Table | None = None
) -> list[Table]:
    """All tables of a page with their heads; ``carried`` is the last table of the page before, which may go on."""
    tables: list[Table] = []
    first = heads[0].first if heads else len(lines)
    if carried is not None and carried.headed:
        table = _carry_on(lines[:first], page, terms, carried)
        if table is not None:
            tables.append(table)
    for number, head in enumerate(heads):
        end = heads[number + 1].first if number + 1 < len(heads) else len(lines)
        table = _headed_table(lines, head, next_certificate(lines, head.last + 1, end, terms), page, terms)
        if table is not None:
            tables.append(table)
    used = {i for table in tables for i in table.lines} | {i for h in heads for i in range(h.first, h.last + 1)}
    tables += _headless_tables(lines, used, page, terms)
    tables.sort(key=lambda table: min(table.lines, default=0))
    return tables


def _body(lines: Sequence[Line], start: int, end: int) -> int:
    """First line after ``start`` that lies beyond a wide gap (where the table's columns stop being sure)."""
    gaps = [b.box.middle - a.box.middle for a, b in zip(lines[start:end], lines[start + 1 : end], strict=False)]
    if not gaps:
        return end
    usual = median(gaps[: max(6, len(gaps) // 2)])
    for i, gap in enumerate(gaps):
        if gap > BREAK * max(usual, lines[start + i].em) and i > 0:
            return start + i + 1
    return end


def _has_value(line: Line, terms: Terms) -> bool:
    return any(terms.is_value(cell.text) for cell in line.cells[1:])


def _headed_table(lines: Sequence[Line], head: Head, end: int, page: Page, terms: Terms) -> Table | None:
    start = head.last + 1
    if start >= end:
        return None
    stop = _body(lines, start, end)
    model = [
        lines[i]
        for i in range(start, stop)
        if len(lines[i].cells) >= 2
        and not _is_captioned(lines[i], terms)
        and not _in_header_grid(lines, i, terms, start)
    ]
    valued = [line for line in model if _has_value(line, terms)] or model
    if not valued:
        return None
    em = median(line.em for line in valued)
    borders = rule_borders(page.rules, head.box.top, valued[-1].box.bottom, em)
    spans = ruled_spans(borders, [*lines[head.first : start], *valued]) if len(borders) >= 2 else []
    ruled = len(spans) >= len(head.cells)
    if not ruled:
        spans = cut_spans(river_spans(valued, em), sorted([*borders, *seams(lines[head.first : start], valued, terms)]))
    heads = heads_by_column(head.cells, lines[head.first : start], spans, terms)
    heads = heads_by_brackets(heads, valued, spans, terms)
    boxes = [cell.box for cell in heads]
    if not ruled and len(spans) < len(boxes) and any("unit" in cell.roles for cell in head.cells):
        apart = cut_spans(river_spans([with_units_apart(line, terms) for line in valued], em, WORD_RIVER), borders)
        spans = apart if in_order(apart, boxes) else spans
    if not ruled and (named := names_apart(valued, terms)):
        spans = cut_spans(river_spans(named, em, WORD_RIVER), borders)
    if in_order(spans, boxes) and not ruled and not _stand_over(spans, heads):
        # Heads at the left of wide columns with their values at the right: they follow each other in the same order.
        columns = tuple(Column(span, cell.text, cell.roles, cell.box) for span, cell in zip(spans, heads, strict=True))
    else:
        spans = _with_heads(spans, heads, valued)
        columns = _columns(spans, heads, terms)
    # Batch numbers, dates and malts of the columns may stand above their heads.
    above = captions_above(lines, head.first, set(), terms)
    table = _fill(lines, [*above, *range(start, end)], columns, page, terms, ruled, em, headed=True)
    return replace(table, head_line=head.first) if table is not None else None


def _stand_over(spans: Sequence[Span], heads: Sequence[HeadCell]) -> bool:
    """True where each head stands over its own column."""
    return all(nearest(spans, head.box) == i for i, head in enumerate(heads))


def _is_captioned(line: Line, terms: Terms) -> bool:
    first = line.cells[0].text
    return first.rstrip().endswith(":") and terms.caption(first) is not None and not terms.is_label(first)


def _with_heads(spans: Sequence[Span], heads: Sequence[HeadCell], lines: Sequence[Line]) -> list[Span]:
    """Columns such that no two heads share one; a head with nothing below it, beside another, is an empty column."""
    out: list[Span] = []
    owned: dict[int, list[HeadCell]] = {}
    for head in heads:
        owned.setdefault(nearest(spans, head.box), []).append(head)
    for i, span in enumerate(spans):
        inside = owned.get(i, [])
        above = [head for head in inside if span.overlap(head.box) > 0]
        if above and len(above) < len(inside):
            out += [Span(head.box.x0, head.box.x1) for head in inside if head not in above]
            inside = above
        out.extend([span] if len(inside) < 2 else split_span(span, [head.box for head in inside], lines))
    return sorted(out, key=lambda span: span.x0)


def _columns(spans: Sequence[Span], heads: Sequence[HeadCell], terms: Terms) -> tuple[Column, ...]:
    texts: dict[int, list[HeadCell]] = {}
    for head in heads:
        texts.setdefault(nearest(spans, head.box), []).append(head)
    columns: list[Column] = []
    for i, span in enumerate(spans):
        inside = texts.get(i, [])
        roles = tuple(dict.fromkeys(role for head in inside for role in head.roles))
        box = inside[0].box if inside else None
        columns.append(Column(span, " ".join(head.text for head in inside), roles, box))
    return tuple(columns)


def _fill(
    lines: Sequence[Line],
    indices: Sequence[int],
    columns: tuple[Column, ...],
    page: Page,
    terms: Terms,
    ruled: bool,
    em: float,
    headed: bool,
) -> Table | None:
    """Rows of a table from the lines that fit its columns. Lines of prose are left to others."""
    spans = [column.span for column in columns]
    kept: list[tuple[int, Line, dict[int, Cell]]] = []
    last_bottom: float | None = None
    usual = 2.2 * em
    # The lines of entries above a head are rows; the head itself heads no entries of the line below it.
    start = next((b for a, b in pairwise(indices) if b > a + 1), indices[0])
    for i in indices:
        line = lines[i]
        if last_bottom is not None and line.box.top - last_bottom > 6 * usual and not _has_value(line, terms):
            break
        if is_header_line(line, terms) or _in_header_grid(lines, i, terms, start) or holds_entries(line, terms):
            continue
        if (
            is_title(line, spans, em)
            or is_prose(line, terms)
            or line.box.x1 < spans[0].x0 - em
            or line.box.x0 > spans[-1].x1 + em
        ):
            continue
        kept.append((i, line, cells_by_column(line, spans)))
        last_bottom = line.box.bottom
    rows = merge_rows(kept, tuple(column.roles for column in columns), page.rules, terms, em)
    if not rows:
        return None
    used = frozenset(i for row in rows for i in row.lines if row.has_value)
    return Table(page.number, columns, tuple(rows), used, headed, ruled, em)


def _carry_on(lines: Sequence[Line], page: Page, terms: Terms, carried: Table) -> Table | None:
    """The rest of the table of the page before, if enough lines fit its columns."""
    spans = [column.span for column in carried.columns]
    start = 0
    while start < len(lines):
        cells = cells_by_column(lines[start], spans)
        first = cells.get(0)
        if first is not None and len(cells) >= 2 and terms.is_label(first.text) and _has_value(lines[start], terms):
            break
        start += 1
    if start >= len(lines):
        return None
    return _fill(lines, range(start, len(lines)), carried.columns, page, terms, carried.ruled, carried.em, headed=True)


def _headless_tables(lines: Sequence[Line], used: set[int], page: Page, terms: Terms) -> list[Table]:
    """Runs of lines in which a label is followed by a value, without a head above them."""
    tables: list[Table] = []
    run: list[int] = []

    def close() -> None:
        if run:
            run[:0] = rows_above(lines, run, used, terms)
            run[:0] = captions_above(lines, run[0], used, terms) or section_above(lines, run[0], used, terms)
            table = _headless(lines, run, _wrapped_below(lines, run[-1], used), page, terms)
            if table is not None:
                tables.append(table)
        run.clear()

    for i, line in enumerate(lines):
        if i in used or (run and line.box.top - lines[i - 1].box.bottom > 3 * line.em):
            close()
        if i in used or _in_header_grid(lines, i, terms):
            continue
        if holds_entries(line, terms):
            close()
            continue
        if (len(line.cells) >= 2 and (_starts_row(line, terms) or (bool(run) and _names_row(line, terms)))) or (
            run and len(line.cells) > 1 and _goes_on(line, lines[run[0]], terms)
        ):
            run.append(i)
        elif len(line.cells) > 1 or is_prose(line, terms):
            close()
    close()
    return tables


def _in_header_grid(lines: Sequence[Line], i: int, terms: Terms, first: int = 0) -> bool:
    """True for a line of header captions and for the line of their entries below it. Lines before ``first`` are
    heads of a table."""
    return _are_captions(lines[i], terms) or (i > first and _are_captions(lines[i - 1], terms))


def _are_captions(line: Line, terms: Terms) -> bool:
    """True for a line of header captions, whose entries stand in the line below it."""
    return len(line.cells) > 1 and all(terms.caption(cell.text.rstrip(": ")) is not None for cell in line.cells)


def _goes_on(line: Line, first: Line, terms: Terms) -> bool:
    """True for a row whose label is not known, and for the values beside a label of two lines."""
    if _is_captioned(line, terms) or is_header_line(line, terms):
        return False
    if all(terms.is_value(cell.text) or terms.is_unit(cell.text) for cell in line.cells[1:]):
        return True
    aligned = abs(line.cells[0].box.x0 - first.cells[0].box.x0) < 0.5 * line.em
    return aligned and all(len(cell.text.split()) <= 3 for cell in line.cells[1:])


def _names_row(line: Line, terms: Terms) -> bool:
    """True for a row whose result is a word ("Odour  normal")."""
    first = line.cells[0].text
    short = all(len(cell.text.split()) <= 3 for cell in line.cells[1:])
    return terms.is_label(first) and not first.endswith(":") and short


def _starts_row(line: Line, terms: Terms) -> bool:
    return any(
        ": " not in cell.text
        and terms.is_label(cell.text)
        and any(terms.is_value(later.text) for later in line.cells[n + 1 :])
        for n, cell in enumerate(line.cells[:-1])
    ) or _ends_row(line, terms)


def _ends_row(line: Line, terms: Terms) -> bool:
    """True for a row that is read from right to left, or whose values stand before the names."""
    *before, last = line.cells
    if not before or not terms.is_label(last.text) or terms.is_value(last.text) or ":" in line.text:
        return False
    plain = all(terms.is_value(cell.text) or terms.is_unit(cell.text) for cell in before)
    if not plain or not any(terms.is_value(cell.text) and not terms.is_unit(cell.text) for cell in before):
        return False
    # A bare number before a name counts the rows or the sections.
    return any(terms.is_unit(cell.text) or terms.is_unit(cell.words[-1].text) for cell in before)


def _wrapped_below(lines: Sequence[Line], last: int, used: set[int]) -> int:
    """The last of the lines that go on with a name of the row ``last``, close under it; itself where none does."""
    starts = [cell.box.x0 for cell in lines[last].cells[:-1]]
    while last + 1 < len(lines) and last + 1 not in used and len(lines[last + 1].cells) == 1:
        line = lines[last + 1]
        close = line.box.top - lines[last].box.bottom < CLOSE * line.em
        if not close or not any(abs(line.box.x0 - x0) < ALIGNED * line.em for x0 in starts):
            break
        last += 1
    return last


def _headless(lines: Sequence[Line], run: Sequence[int], last: int, page: Page, terms: Terms) -> Table | None:
    chosen = [lines[i] for i in run]
    em = median(line.em for line in chosen)
    borders = rule_borders(page.rules, chosen[0].box.top, chosen[-1].box.bottom, em)
    rivers = cut_spans(river_spans(chosen, em), borders)
    ruled = len(borders) - 1 >= len(rivers) or one_cell_each(borders, chosen)
    spans = ruled_spans(borders, chosen) if ruled else rivers
    if len(spans) < 2:
        return None
    columns = tuple(Column(span, "", ()) for span in spans)
    return _fill(lines, range(run[0], last + 1), columns, page, terms, ruled, em, headed=False)
