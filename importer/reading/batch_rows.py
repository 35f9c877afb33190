"""Rows of a table whose columns are parameters: one batch a row."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.layout.transposed import Transposed
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.determinations import LEAST_ROWS, is_mean
from importer.reading.events import Event, Place
from importer.reading.extremes import sums_up
from importer.reading.readings import readings_at, unread_beside
from importer.reading.rows import clean_label
from importer.reading.shifted import may_be_shifted
from importer.reading.values import split_value
from importer.vocabulary.captions import looks_like_batch
from importer.vocabulary.malt_names import is_malt_name, names_one_malt
from importer.words import Page

# A number of fewer digits counts the rows.
MIN_DIGITS = 4
_YEAR = re.compile(r"(?:19|20)\d\d(?:\s?/\s?(?:\d\d)?\d\d)?")
SEVERAL_ROWS = "More than one row could hold the result, and no batch number says which."
_LIMIT_ROLES = ("min", "max", "spec", "typical", "previous", "precision", "unit")


def batch_row_events(table: Transposed, page: Page, lines: Sequence[Line], terms: Terms) -> list[Event]:
    """Figures and header entries, one lane a batch row; rows of limits give the others their limits."""
    batches = [(index, cells) for index, cells in table.rows if _row_role(cells, terms) is None]
    limits = _limits(table, [cells for _, cells in batches], terms)
    events: list[Event] = []
    captioned = any(terms.is_sure_caption(h) and terms.caption(h) == "batch" for h in map(clean_label, table.heads))
    lanes = [_lane(table, cells, terms) or "" for _, cells in batches]
    # Under a caption of batches the shortest codes tell rows apart, if no two are the same.
    told = captioned and all(any(c.isdigit() for c in lane) for lane in lanes) and len(set(lanes)) == len(lanes)
    named = [p for p, lane in zip(batches, lanes, strict=True) if told or _is_number(lane, captioned)]
    found = [pair for pair in batches if "result" in terms.roles(pair[1][min(pair[1])].text)]
    # A row without a batch number among rows that have one: a mean, limits, last year's figures.
    nameless = [pair for pair in batches if named and pair not in named and _holds_values_only(pair[1], terms)]
    batches = named or found or batches
    unclear = not named and not found and len(batches) > 1
    if unclear and (mean := _mean_row(table, batches, terms)) is not None:
        batches, unclear = ([mean[0]], False) if mean[1] else ([*batches, mean[0]], True)
    worded = _worded(lanes, terms)
    for index, cells in nameless:
        row = _figures(table, cells, f"row {table.page}.{index}", limits, page, terms, bare=False)
        events += [_doubted(event, "Its row has no batch number although the others have one.") for event in row]
    shifted = may_be_shifted([cells for _, cells in batches])
    for number, (index, cells) in enumerate(batches):
        lane = _lane(table, cells, terms) or f"row {table.page}.{index}"
        bare = len(batches) == 1 and number == 0
        headers = _headers(table, cells, lane, terms)
        figures = _figures(table, cells, lane, limits, page, terms, bare=bare)
        if lane in worded:
            headers = [_unnamed(event) for event in headers]
            figures = [
                _doubted(event, f"It stands in the row “{lane}”, which may be of no batch.") for event in figures
            ]
        if shifted[number]:
            figures = [_doubted(event, shifted[number]) for event in figures]
        headers += _group_malt(table, index, lane, lines)
        events += [replace(event, lane=None) for event in headers] if bare else headers
        events += [_doubted(event, SEVERAL_ROWS) for event in figures] if unclear else figures
    return events


def _mean_row(
    table: Transposed, batches: Sequence[tuple[int, dict[int, Cell]]], terms: Terms
) -> tuple[tuple[int, dict[int, Cell]], bool] | None:
    """The row of a mean below rows that are counted ("1", "2"), and whether its figures show that it is one."""
    rows = [pair for pair in table.rows if _row_role(pair[1], terms) == "typical"]
    if len(rows) != 1:
        return None
    first, *columns = sorted(rows[0][1])
    counted = [cells[first].text if first in cells else "" for _, cells in batches]
    shown = [
        is_mean(rows[0][1][column].text, [cells[column].text if column in cells else "" for _, cells in batches])
        for column in columns
    ]
    sure = sum(found is True for found in shown) >= LEAST_ROWS and False not in shown
    return rows[0], sure and all(text.strip(" .)").isdigit() and len(text) < MIN_DIGITS for text in counted)


def _limits(table: Transposed, batches: Sequence[dict[int, Cell]], terms: Terms) -> dict[str, dict[int, str]]:
    """The rows of limits, by role and column; none where such rows sum up the batches above them."""
    found: dict[str, dict[int, str]] = {}
    for _, cells in table.rows:
        role = _row_role(cells, terms)
        if role in ("min", "max", "spec"):
            found[role] = {column: cell.text for column, cell in cells.items()}
    ends = [role for role in ("min", "max") if role in found]
    values = {column: [b[column].text for b in batches if column in b] for row in found.values() for column in row}
    if any(sums_up(role, ((text, values[column]) for column, text in found[role].items())) for role in ends):
        # The lowest and the highest of the batches stand together.
        found = {"spec": found["spec"]} if "spec" in found else {}
    return found


def _holds_values_only(cells: dict[int, Cell], terms: Terms) -> bool:
    """True for a row that nothing names: the number of its batch was left out."""
    return len(cells) > 1 and all(terms.is_value(cell.text) for cell in cells.values())


def _group_malt(table: Transposed, index: int, lane: str, lines: Sequence[Line]) -> list[Event]:
    """The malt that a line between the rows names for those below it, in doubt."""
    first = min(number for number, _ in table.rows)
    for i in range(index - 1, first, -1):
        line = lines[i]
        if i not in table.lines and len(line.cells) == 1 and names_one_malt(line.text):
            cell = line.cells[0]
            entry = PrintedHeader("malt", "", cell.text, table.page, cell.box, sure=False, confidence=cell.confidence)
            return [Event(Place(table.page, cell.box.middle, cell.box.x0), header=entry, lane=lane, in_table=True)]
    return []


def _worded(lanes: Sequence[str], terms: Terms) -> set[str]:
    """Names of rows that hold words or signs besides a number where others are a number alone: a mean of the lots, the
    values of a contract."""
    words = {
        lane: [w for w in lane.split() if (_is_word(w) or terms.roles(w)) and terms.caption(w) != "batch"]
        for lane in lanes
        if any(c.isdigit() for c in lane)
    }
    years = {lane for lane in words if _YEAR.fullmatch(lane)}
    worded = {lane for lane, found in words.items() if found} if not all(words.values()) else set()
    return worded | (years if len(years) < len(words) else set())


def _is_word(text: str) -> bool:
    """True for a word, and for a sign like that of a mean; codes have digits or are capitals."""
    plain = text.strip(".,:;()")
    return not any(c.isdigit() for c in plain) and any(c.islower() or (c.isalpha() and len(plain) == 1) for c in plain)


def _unnamed(event: Event) -> Event:
    """A header entry of a row that may be of no batch."""
    if event.header is None or event.header.key != "batch":
        return event
    return replace(event, header=replace(event.header, sure=False, several=True))


def _is_number(text: str, captioned: bool) -> bool:
    return looks_like_batch(text) or (captioned and sum(c.isdigit() for c in text) >= MIN_DIGITS)


def _doubted(event: Event, reason: str) -> Event:
    if event.figure is None:
        return event
    concern = Concern("label-doubtful", reason)
    return replace(event, figure=replace(event.figure, doubts=(*event.figure.doubts, concern)))


def _row_role(cells: dict[int, Cell], terms: Terms) -> str | None:
    first = cells[min(cells)]
    if looks_like_batch(first.text):
        return None
    roles = terms.roles(first.text)
    return next((role for role in roles if role in _LIMIT_ROLES), None)


def _header_key(table: Transposed, column: int, cell: Cell, terms: Terms) -> str | None:
    head = clean_label(table.heads[column])
    if head and terms.is_label(head):
        return None
    key = terms.caption(head) if head else None
    if key is not None:
        return key
    if column == 0 and "number" in terms.roles(head) and sum(c.isdigit() for c in cell.text) >= MIN_DIGITS:
        return "batch"
    if not head and column == 0 and not cell.text.strip("().# ").isdigit():
        return "batch" if looks_like_batch(cell.text) else "malt"
    return None


def _lane(table: Transposed, cells: dict[int, Cell], terms: Terms) -> str | None:
    for column, cell in sorted(cells.items()):
        if _header_key(table, column, cell, terms) == "batch":
            return cell.text.strip()
    return None


def _headers(table: Transposed, cells: dict[int, Cell], lane: str, terms: Terms) -> list[Event]:
    events: list[Event] = []
    for column, cell in sorted(cells.items()):
        key = _header_key(table, column, cell, terms)
        # "CV-301" is a number, whatever its letters stand for elsewhere.
        if key in (None, "ignore") or (terms.roles(cell.text) and not (key == "batch" and looks_like_batch(cell.text))):
            continue
        head = clean_label(table.heads[column])
        if key == "variety" and not terms.is_sure_caption(head) and is_malt_name(cell.text):
            key = "malt"
        if terms.caption(head) is None:
            # "No." alone does not say what the number is of.
            head = ""
        sure = terms.is_sure_caption(head) or (not table.heads[column].strip() and key == "batch")
        entry = PrintedHeader(key, head, cell.text, table.page, cell.box, sure=sure, confidence=cell.confidence)
        events.append(Event(Place(table.page, cell.box.middle, cell.box.x0), header=entry, lane=lane, in_table=True))
    return events


def _figures(
    table: Transposed,
    cells: dict[int, Cell],
    lane: str,
    limits: dict[str, dict[int, str]],
    page: Page,
    terms: Terms,
    bare: bool,
) -> list[Event]:
    events: list[Event] = []
    for column, cell in sorted(cells.items()):
        head = clean_label(table.heads[column])
        if not head or not (terms.is_label(head) or terms.is_value(cell.text)):
            continue
        if not terms.is_label(head) and terms.caption(head) is not None:
            continue
        value, unit, spec = split_value(cell.text)
        figure = PrintedFigure(
            label=head,
            value=value,
            unit=unit or table.units[column] or None,
            page=table.page,
            box=cell.box,
            low=limits.get("min", {}).get(column, ""),
            high=limits.get("max", {}).get(column, ""),
            spec=spec or limits.get("spec", {}).get(column, ""),
            confidence=cell.confidence,
            second=readings_at(page, cell.box),
            doubts=unread_beside(page, cell.box),
        )
        place = Place(table.page, cell.box.middle, cell.box.x0)
        events.append(Event(place, figure, lane=None if bare else lane, in_table=True))
    if bare:
        return [replace(event, lane=None) for event in events]
    return events


def lanes_of(events: Sequence[Event]) -> list[str]:
    """Lane names in order of appearance."""
    return list(dict.fromkeys(event.lane for event in events if event.lane is not None))
