"""Rows of a table to printed figures."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import takewhile

from importer.layout.grid import Span
from importer.layout.lines import Cell
from importer.layout.tables import Table
from importer.layout.terms import Terms
from importer.layout.wrap import Row
from importer.models import Family
from importer.printed import NO_HEAD, Concern, PrintedFigure, PrintedHeader
from importer.reading.dates import parse_date
from importer.reading.entry_kinds import fits_entry
from importer.reading.events import Event, Place
from importer.reading.limit_cells import are_extremes, in_order_of, is_tolerance, with_limits_below
from importer.reading.listed import value_parts
from importer.reading.panels import Panel, find_panels
from importer.reading.readings import readings_at, unread_beside
from importer.reading.surroundings import is_remark_of_another
from importer.vocabulary.batch_code import holds_several
from importer.vocabulary.captions import looks_like_batch
from importer.vocabulary.malt_names import names_malt
from importer.vocabulary.units import parse_unit, split_unit
from importer.words import Page

_NO_RESULTS = {"typical", "previous", "min", "max", "spec", "precision", "date", "number", "method", "unit"}
ASTRAY = Concern("label-doubtful", "Its value stands outside of the column of results.")
_NUMBERED = re.compile(r"^\s*\d{1,2}[.)]\s+(?=\S)")


@dataclass(frozen=True, slots=True)
class BatchColumns:
    """Places and names of the batch columns of a table, for a table below that goes on with them."""

    spans: tuple[Span, ...] = ()
    lanes: tuple[str, ...] = ()


def table_events(
    table: Table,
    page: Page,
    terms: Terms,
    above: BatchColumns,
    titles: tuple[str, ...] = (),
    legend: Mapping[str, str] | None = None,
) -> tuple[list[Event], BatchColumns]:
    """All figures and header entries of a table, and its batch columns (those of the table above if it has none).

    ``titles`` are the titles of the page; they say what was examined. ``legend`` is the batch number of heads that only
    count the batches.
    """
    events: list[Event] = []
    numbers = _numbers_in_heads(table, terms, legend or {})
    for panel in find_panels(table, terms, lambda text: text in numbers or looks_like_batch(text), above.spans):
        groups = _group_texts(table, panel)
        lanes = _lanes(table, panel, above, numbers)
        if panel.batches:
            above = BatchColumns(
                tuple(table.columns[column].span for column, _ in panel.results), tuple(str(n) for n in lanes.values())
            )
            events += _head_entries(table, panel, lanes, numbers, terms)
        columns = [column for column, _ in panel.results]
        if panel.batches and are_extremes(table, panel.low, panel.high, columns):
            panel = replace(panel, low=None, high=None)
        for number, (row, limits) in enumerate(with_limits_below(table.rows, panel.label, columns)):
            if row.has_value:
                found = _row_events(table, panel, row, titles, groups.get(number, ()), lanes, page, terms)
                events += [_limited(event, limits) for event in found] if limits else found
    return events, above


def _limited(event: Event, limits: str) -> Event:
    figure = event.figure
    if figure is None or figure.low or figure.high or figure.spec:
        return event
    return replace(event, figure=replace(figure, spec=limits))


def _numbers_in_heads(table: Table, terms: Terms, legend: Mapping[str, str]) -> dict[str, str]:
    """The batch number in each head that has one."""
    # "Batch no." over the names of the parameters makes numbers of all plain figures beside it.
    counted = any(terms.caption(column.head) == "batch" for column in table.columns)
    found = {column.head: _batch_in(column.head, terms, counted) for column in table.columns}
    return {**{head: batch for head, batch in found.items() if batch is not None}, **legend}


def _batch_in(head: str, terms: Terms, counted: bool) -> str | None:
    words = head.split()
    for n in range(min(3, len(words) - 1), 0, -1):
        rest = " ".join(takewhile(_is_of_number, words[n:]))
        if terms.caption(" ".join(words[:n])) == "batch" and any(c.isdigit() for c in rest):
            return rest
    if holds_several(head):
        return None
    # A date may stand under the number, in the same head.
    undated = " ".join(takewhile(lambda word: parse_date(word) is None, words)) or head.strip()
    if looks_like_batch(undated) or (counted and sum(c.isdigit() for c in undated) > 2):
        return undated
    numbers = [part for part in words if looks_like_batch(part) and parse_unit(part) is None]
    return numbers[-1] if numbers else None


def _is_of_number(word: str) -> bool:
    """True for a word that can be part of a batch number: with a digit and no date, or a few capitals or signs."""
    if any(c.isdigit() for c in word):
        return parse_date(word) is None
    return len(word) <= 3 and word.upper() == word


def _lanes(table: Table, panel: Panel, above: BatchColumns, numbers: Mapping[str, str]) -> dict[int, str | None]:
    """A name for each batch column: its head where that is a batch number, else that of the column above it."""
    if not panel.batches:
        return {column: None for column, _ in panel.results}
    heads = {column: table.columns[column].head for column, _ in panel.results}
    if len(above.lanes) == len(panel.results) and not any(head in numbers for head in heads.values()):
        return {column: lane for (column, _), lane in zip(panel.results, above.lanes, strict=True)}
    lanes: dict[int, str | None] = {
        column: numbers.get(head) or f"#{position}" for position, (column, head) in enumerate(heads.items())
    }
    if len(set(lanes.values())) < len(lanes):
        return {column: f"#{position}" for position, column in enumerate(heads)}
    return lanes


def _without_role(text: str, terms: Terms) -> str:
    """The words of a head before those that call its column the result ("Pilsner malt / Result")."""
    words = text.split()
    cuts = (cut for cut in range(len(words) - 1, 0, -1) if terms.roles(" ".join(words[cut:])) == ("result",))
    return " ".join(words[: next(cuts, len(words))])


def _head_entries(
    table: Table, panel: Panel, lanes: dict[int, str | None], numbers: Mapping[str, str], terms: Terms
) -> list[Event]:
    """Batch numbers, or the names of malts, in the heads of batch columns."""
    events: list[Event] = []
    for column, _ in panel.results:
        head, box = table.columns[column].head, table.columns[column].head_box
        batch = numbers.get(head)
        if box is None or (batch is None and not names_malt(head)):
            continue
        behind = _without_role(head.partition(batch)[2] if batch else head, terms)
        entries = [("batch", batch)] if batch else []
        # The name of the malt may stand below the number, in the same head.
        entries += [("malt", behind)] if names_malt(behind) and not (batch and any(map(str.isdigit, behind))) else []
        for key, text in entries:
            entry = PrintedHeader(key, "", text, table.page, box)
            events.append(Event(Place(table.page, box.top, box.x0), header=entry, lane=lanes[column], in_table=True))
    return events


def _group_texts(table: Table, panel: Panel) -> dict[int, tuple[str, ...]]:
    """Texts of merged cells left of the labels, for each row that they stand beside (the nearest, by height)."""
    texts: dict[int, tuple[str, ...]] = {}
    for column in panel.groups:
        marks = [(row.cells[column], i) for i, row in enumerate(table.rows) if column in row.cells]
        if not marks or len(marks) > 0.6 * max(len(table.rows), 1):
            continue
        for i, row in enumerate(table.rows):
            nearest = min(marks, key=lambda mark: (abs(mark[0].box.middle - row.box.middle), mark[1] > i))
            texts[i] = (*texts.get(i, ()), nearest[0].text)
    return texts


def clean_label(text: str) -> str:
    """A label without its row number, leader dots and colon."""
    return _NUMBERED.sub("", text).strip().rstrip(".:… ").strip()


def _row_events(
    table: Table,
    panel: Panel,
    row: Row,
    titles: tuple[str, ...],
    groups: tuple[str, ...],
    lanes: dict[int, str | None],
    page: Page,
    terms: Terms,
) -> list[Event]:
    label_cell = row.cells.get(panel.label)
    if panel.sublabel is not None:
        label_cell = _with_sublabel(table, panel.label, panel.sublabel, row, page)
    label = clean_label(label_cell.text) if label_cell is not None else ""
    head = table.columns[panel.label].head
    section = (*titles, *((head,) if head else ()), *row.section, *groups)
    if not label and groups:
        label = groups[-1]
    if not label and not any(
        terms.is_value(row.cells[column].text) for column, _ in panel.results if column in row.cells
    ):
        return []
    caption = terms.caption(label) if label else None
    if caption is not None and not terms.is_label(label):
        return _caption_events(caption, label, row, panel, lanes, table, terms)
    base = _base_figure(table, panel, row, label, label_cell, section)
    if (other := _other_sample_beside(table, panel, row, terms)) is not None:
        base = replace(base, doubts=(*base.doubts, other))
    events: list[Event] = []
    cells = [(column, family, row.cells.get(column)) for column, family in panel.results]
    if panel.limits_only and not any(cell is not None for _, _, cell in cells):
        limits = _limits_figure(base, row)
        if limits.value or base.low or base.high or base.spec:
            events.append(Event(Place(table.page, row.box.middle, row.box.x0), limits, limits_only=True, in_table=True))
        return events
    if not any(cell is not None for _, _, cell in cells):
        astray = _value_elsewhere(table, panel, row, terms)
        if astray is not None:
            base = replace(base, doubts=(*base.doubts, ASTRAY))
            cells = [(panel.results[0][0], panel.results[0][1], astray)]
    figures = [(column, _figure(base, table, panel, row, column, family, cell, page)) for column, family, cell in cells]
    for column, figure in _with_shared_unit(figures) if panel.batches else figures:
        if figure is None:
            continue
        place = Place(table.page, row.box.middle, figure.box.x0)
        events.append(Event(place, figure, lane=lanes.get(column), limits_only=panel.limits_only, in_table=True))
    return events


def _other_sample_beside(table: Table, panel: Panel, row: Row, terms: Terms) -> Concern | None:
    """A doubt where a remark of the row says that it is of another sample ("retained sample")."""
    known = {panel.label, panel.method, panel.low, panel.high, panel.spec, panel.sublabel, *panel.units}
    known |= {column for column, _ in panel.results}
    for column, cell in row.cells.items():
        # In a column of earlier values "typical" is such a value.
        remarks = column not in known and set(table.columns[column].roles) <= {"remark"}
        others = any(other.cells[column].text != cell.text for other in table.rows if column in other.cells)
        if remarks and is_remark_of_another(cell.text, terms) and (others or _stands_once(table, column)):
            return Concern("label-doubtful", f"Its row says “{cell.text}”.")
    return None


def _stands_once(table: Table, column: int) -> bool:
    return sum(column in row.cells for row in table.rows if row.has_value) == 1


def _with_sublabel(table: Table, label: int, column: int, row: Row, page: Page) -> Cell | None:
    """The label of a row with the words in the column right of it; one label may stand for several rows: in the middle
    of them on paper, beside the first in a spreadsheet."""
    own = row.cells.get(label)
    named = [other.cells[label] for other in table.rows if label in other.cells]
    if page.reading == "spreadsheet":
        named = [cell for cell in named if cell.box.middle <= row.box.middle]
    if own is None and named:
        own = min(named, key=lambda cell: abs(cell.box.middle - row.box.middle))
    more = row.cells.get(column)
    if own is None or more is None:
        return own or more
    return Cell(f"{own.text} {more.text}", own.box.union(more.box), (*own.words, *more.words))


def _rivals(table: Table, panel: Panel, row: Row) -> Concern | None:
    """Why the result column of a row is in doubt, with what else the row holds."""
    if not panel.doubt:
        return None
    others = []
    for column in panel.rivals:
        if column in row.cells:
            head = table.columns[column].head
            others.append(f"{row.cells[column].text} ({head})" if head else row.cells[column].text)
    more = f" The row also holds {', '.join(others)}." if others else ""
    return Concern("label-doubtful", panel.doubt + more, _arrangement(table, panel, panel.doubt))


def _arrangement(table: Table, panel: Panel, doubt: str) -> str:
    """The heads of a table in their order, those over the results in brackets; the doubt about them on another line."""
    taken = {column for column, _ in panel.results}
    heads = [" ".join(column.head.split()) or NO_HEAD for column in table.columns]
    shown = " | ".join(f"[{head}]" if i in taken else head for i, head in enumerate(heads))
    return f"{shown}\n{doubt}"


def _value_elsewhere(table: Table, panel: Panel, row: Row, terms: Terms) -> Cell | None:
    """A value of a row without one in the columns of results, in a column that is not known to be anything else."""
    taken = {panel.label, panel.method, panel.low, panel.high, panel.spec, panel.sublabel, *panel.units}
    for column, cell in sorted(row.cells.items()):
        known = column in taken or _NO_RESULTS & set(table.columns[column].roles)
        if not known and terms.is_value(cell.text) and not terms.is_unit(cell.text) and column > panel.label:
            return cell
    return None


def _with_shared_unit(figures: Sequence[tuple[int, PrintedFigure | None]]) -> list[tuple[int, PrintedFigure | None]]:
    """Batches of one row share its unit, which may be printed behind one of them only."""
    units = {figure.unit for _, figure in figures if figure is not None and figure.unit}
    if len(units) != 1:
        return list(figures)
    unit = units.pop()
    return [(column, replace(f, unit=unit) if f is not None and not f.unit else f) for column, f in figures]


def _limits_figure(base: PrintedFigure, row: Row) -> PrintedFigure:
    """A row of a specification: its limits, or the words that stand in their place ("clear")."""
    words = [text for text in (base.low, base.high, base.spec) if text and not any(c.isdigit() for c in text)]
    if words and not any(c.isdigit() for c in base.low + base.high + base.spec):
        return replace(base, value=words[0], low="", high="", spec="", box=row.box)
    return replace(base, value="", box=row.box)


def _caption_events(
    caption: str, label: str, row: Row, panel: Panel, lanes: dict[int, str | None], table: Table, terms: Terms
) -> list[Event]:
    if caption == "ignore":
        return []
    events: list[Event] = []
    for column, _ in panel.results:
        cell = row.cells.get(column)
        if cell is None or fits_entry(caption, cell.text) is False:
            continue
        sure = terms.is_sure_caption(label)
        unit = _text(row, _unit_column(panel, column)) if caption == "quantity" else ""
        text = f"{cell.text} {unit}" if unit and not any(c.isalpha() for c in cell.text) else cell.text
        entry = PrintedHeader(caption, label, text, table.page, cell.box, sure=sure, confidence=cell.confidence)
        events.append(
            Event(Place(table.page, row.box.middle, cell.box.x0), header=entry, lane=lanes.get(column), in_table=True)
        )
    return events


def _text(row: Row, column: int | None) -> str:
    if column is None or column not in row.cells:
        return ""
    return row.cells[column].text


def _tolerance(row: Row, column: int | None) -> str:
    text = _text(row, column)
    return text if is_tolerance(text) else ""


def _base_figure(
    table: Table, panel: Panel, row: Row, label: str, label_cell: Cell | None, section: tuple[str, ...]
) -> PrintedFigure:
    figure = PrintedFigure(
        label=label,
        value="",
        unit=None,
        page=table.page,
        box=row.box,
        label_box=label_cell.box if label_cell is not None else None,
        method=_text(row, panel.method) or None,
        low=_text(row, panel.low),
        high=_text(row, panel.high),
        spec=f"{_text(row, panel.spec)} {_tolerance(row, panel.tolerance)}".strip(),
        section=section,
        doubts=(doubt,) if (doubt := _rivals(table, panel, row)) else (),
        rivals=tuple(row.cells[column].text for column in panel.rivals if column in row.cells),
    )
    return in_order_of(table.columns[panel.spec].head, figure) if panel.spec is not None else figure


def _unit_column(panel: Panel, column: int) -> int | None:
    """The unit column of a result: the next one to its right before another result, else the one before it."""
    results = sorted(c for c, _ in panel.results)
    later = [u for u in panel.units if u > column and not any(column < r < u for r in results)]
    if later:
        return later[0]
    earlier = [u for u in panel.units if u < column]
    return earlier[-1] if earlier else (panel.units[0] if panel.units else None)


def _figure(
    base: PrintedFigure,
    table: Table,
    panel: Panel,
    row: Row,
    column: int,
    family: Family | None,
    cell: Cell | None,
    page: Page,
) -> PrintedFigure | None:
    head = table.columns[column].head
    # "EBC" over a column of results names the family, not a unit.
    head_unit = split_unit(head)[1] if family is None else None
    unit_text = _text(row, _unit_column(panel, column)) or None
    if cell is None:
        if not (base.label and (base.low or base.high or base.spec or unit_text)):
            return None
        return replace(base, column=head, column_family=family, unit=unit_text)
    parts = value_parts(cell.text)
    return replace(
        base,
        value=parts.value,
        unit=unit_text or parts.unit,
        box=cell.box,
        method=base.method or parts.method,
        low=base.low or parts.low,
        high=base.high or parts.high,
        spec=base.spec or parts.spec,
        column=head,
        column_family=family,
        column_unit=head_unit.code if head_unit is not None else None,
        confidence=min([cell.confidence, *(w.confidence for w in cell.words)]),
        second=readings_at(page, cell.box),
        doubts=(*base.doubts, *unread_beside(page, cell.box)),
    )
