"""Lines of a table to rows: joins labels that run over several lines, and tells section rows from wrapped labels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.words import Box

VALUE_ROLES = frozenset({"result", "min", "max", "spec", "typical", "previous"})
# A line this much nearer to one neighbour than to the other belongs to it.
NEARER = 0.86
# From line to line of one cell on a scan, whose boxes hold the ink alone, in em.
INK_PITCH = 1.5
_OPENERS = "([,;/&+-–"


@dataclass(frozen=True, slots=True)
class Row:
    """One row of a table: cells by column index. ``section`` holds the headings above it, outermost first."""

    cells: dict[int, Cell]
    lines: tuple[int, ...]
    box: Box
    has_value: bool
    section: tuple[str, ...] = ()


@dataclass(slots=True)
class _Item:
    index: int
    line: Line
    cells: dict[int, Cell]
    anchor: bool
    label: str

    @property
    def middle(self) -> float:
        return self.line.box.middle


def _is_value_column(roles: tuple[str, ...]) -> bool:
    return any(role in VALUE_ROLES or role.startswith("family:") for role in roles)


def _label_column(
    kept: Sequence[tuple[int, Line, dict[int, Cell]]], roles: Sequence[tuple[str, ...]], terms: Terms
) -> int:
    for i, names in enumerate(roles):
        if "label" in names and not _is_value_column(names):
            return i
    counts: dict[int, int] = {}
    for _, _, cells in kept:
        for column, cell in cells.items():
            counts[column] = counts.get(column, 0) + terms.is_label(cell.text)
    return min(counts, key=lambda c: (-counts[c], c)) if counts else 0


def _with_content_roles(
    kept: Sequence[tuple[int, Line, dict[int, Cell]]], roles: Sequence[tuple[str, ...]], label: int, terms: Terms
) -> Sequence[tuple[str, ...]]:
    """Gives the value columns of a table without a head the role of results."""
    if any(_is_value_column(names) for names in roles):
        return roles
    texts: dict[int, list[str]] = {}
    for _, _, cells in kept:
        for column, cell in cells.items():
            texts.setdefault(column, []).append(cell.text)

    def named(column: int) -> tuple[str, ...]:
        found = texts.get(column, [])
        values = sum(terms.is_value(text) and not terms.is_unit(text) for text in found)
        return ("result",) if column != label and found and 2 * values >= len(found) else roles[column]

    return [named(column) for column in range(len(roles))]


def _is_cut_heading(
    line: Line, cells: dict[int, Cell], roles: Sequence[tuple[str, ...]], label: int, terms: Terms
) -> bool:
    """True for one run of words that falls into several columns ("Échantillon de | référence") and holds no result."""
    named = cells.get(label)
    if named is None or len(line.cells) > 1 or len(cells) < 2 or ":" in line.text or terms.is_label(named.text):
        return False
    results = [cell.text for column, cell in cells.items() if column != label and _is_value_column(roles[column])]
    key = terms.caption(named.text)
    if key in (None, "ignore"):
        return not any(terms.is_value(text) for text in results)
    # The entry of a caption stands in a column of results.
    return not any(text[0].isupper() or any(map(str.isdigit, text)) for text in results)


def _is_anchor(line: Line, cells: dict[int, Cell], roles: Sequence[tuple[str, ...]], label: int, terms: Terms) -> bool:
    """True for a line that carries a row of its own: a value, or a known label with a unit and an empty result."""
    if _is_cut_heading(line, cells, roles, label, terms):
        return False
    known = any(_is_value_column(names) for names in roles)
    for column, cell in cells.items():
        if column == label:
            continue
        if known and _is_value_column(roles[column]) and cell.text.strip("-–— ") and not terms.is_unit(cell.text):
            return True
        if (not known or not roles[column]) and terms.is_value(cell.text):
            return True
    named = cells.get(label)
    if (
        named is not None
        and len(cells) > 1
        and terms.caption(named.text.rstrip(": "))
        and not terms.is_label(named.text)
    ):
        return True
    return (
        named is not None
        and terms.is_label(named.text)
        and any(c != label and (terms.is_unit(cell.text) or not cell.text.strip("-–— ")) for c, cell in cells.items())
    )


def _separators(rules: Sequence[Box], x: float, em: float) -> list[float]:
    """Heights of level rules that pass over the horizontal place ``x``."""
    return sorted({round(r.top, 1) for r in rules if r.height < 2 and r.width > 2 * em and r.x0 - 1 <= x <= r.x1 + 1})


def merge_rows(
    kept: Sequence[tuple[int, Line, dict[int, Cell]]],
    roles: Sequence[tuple[str, ...]],
    rules: Sequence[Box],
    terms: Terms,
    em: float,
) -> list[Row]:
    """Rows in reading order; a row without a value is a section row and is given to the rows below it as such."""
    if not kept:
        return []
    label = _label_column(kept, roles, terms)
    roles = _with_content_roles(kept, roles, label, terms)
    items = [
        _Item(i, line, cells, _is_anchor(line, cells, roles, label, terms), cells[label].text if label in cells else "")
        for i, line, cells in kept
    ]
    anchors = [item for item in items if item.anchor]
    if not anchors:
        return []
    boxes = [item.cells[label].box for item in items if label in item.cells]
    place = median(box.x0 for box in boxes) + em if boxes else anchors[0].line.box.x0
    separators = _separators(rules, place, em)
    pitches = [b.middle - a.middle for a, b in pairwise(anchors)]
    usual = median(pitches) if pitches else 1.6 * em
    parted = sum(_parted(a, b, separators) for a, b in pairwise(anchors))
    regular = len(anchors) > 1 and parted >= 0.7 * (len(anchors) - 1)
    groups = _group(items, separators if regular else [], usual, terms, em)
    return _with_sections([_row(group, label) for group in groups], label, em)


def _parted(a: _Item, b: _Item, separators: Sequence[float]) -> bool:
    return any(a.middle < y < b.middle for y in separators)


def _group(
    items: Sequence[_Item], separators: Sequence[float], usual: float, terms: Terms, em: float
) -> list[list[_Item]]:
    groups: list[list[_Item]] = []
    held: list[_Item] = []
    for position, item in enumerate(items):
        if item.anchor:
            groups.append([*held, item])
            held = []
            continue
        before = groups[-1][-1] if groups and not held else (held[-1] if held else None)
        after = items[position + 1] if position + 1 < len(items) else None
        side = _side(item, before, after, separators, usual, terms, em, bool(held))
        if side == "before" and held:
            held.append(item)
        elif side == "before" and groups:
            groups[-1].append(item)
        elif side == "after":
            held.append(item)
        else:
            for single in held:
                groups.append([single])
            held = []
            groups.append([item])
    groups.extend([single] for single in held)
    return groups


def _side(
    item: _Item,
    before: _Item | None,
    after: _Item | None,
    separators: Sequence[float],
    usual: float,
    terms: Terms,
    em: float,
    in_held: bool,
) -> str:
    """Whether a line without a value goes on the row above ("before"), opens the one below ("after"), or neither."""
    if separators:
        if before is not None and not _parted(before, item, separators) and _hugs(before, item, em):
            return "before"
        if after is not None and not _parted(item, after, separators) and _hugs(item, after, em):
            return "after"
        return "alone"
    far = 1.6 * em
    up = item.middle - before.middle if before is not None else 1e9
    down = after.middle - item.middle if after is not None else 1e9
    if before is not None and before.anchor and not before.label and up < far:
        return "before"
    if after is not None and after.anchor and not after.label and down < far:
        return "after"
    if after is not None and after.anchor and down < far and _closes(item.label, after.label):
        return "after"
    if before is not None and before.anchor and up < far and _closes(before.label, item.label):
        return "before"
    if not item.label:
        return "before" if up <= down and up < far else ("after" if down < far else "alone")
    tight = NEARER * usual
    if up < far and up < tight and up < NEARER * down and before is not None and (before.anchor or in_held):
        return "before"
    if down < far and down < tight and down < NEARER * up and after is not None:
        return "after" if after.anchor or not terms.is_label(after.label) else "alone"
    if before is not None and before.anchor and up < far and _reads_on(before.label, item.label):
        joined = f"{before.label} {item.label}"
        if terms.is_label(joined) or not terms.is_label(item.label):
            return "before"
    return "alone"


def _closes(first: str, second: str) -> bool:
    """True where a bracket that the first line opens is closed in the second."""
    return first.count("(") > first.count(")") and second.count(")") > second.count("(")


def _reads_on(first: str, second: str) -> bool:
    """True where the wording of the second line continues that of the first."""
    return second[0].islower() or second[0] in _OPENERS or first.rstrip()[-1:] in ("-", ",", "/", "(")


def _hugs(upper: _Item, lower: _Item, em: float) -> bool:
    """True for lines of one cell: close, and set alike."""
    a, b = upper.line.cells[0], lower.line.cells[0]
    apart = (
        lower.middle - upper.middle > INK_PITCH * em
        if a.is_ink
        else lower.line.box.top - upper.line.box.bottom > 0.3 * em
    )
    if apart:
        return False
    return not (upper.label and lower.label and (a.bold != b.bold or a.text.isupper() != b.text.isupper()))


def _row(group: Sequence[_Item], label: int) -> Row:
    columns: dict[int, list[Cell]] = {}
    for item in group:
        for column, cell in item.cells.items():
            columns.setdefault(column, []).append(cell)
    cells = {column: _stack(parts) for column, parts in columns.items()}
    box = group[0].line.box
    for item in group[1:]:
        box = box.union(item.line.box)
    return Row(cells, tuple(item.index for item in group), box, any(item.anchor for item in group))


def _stack(parts: Sequence[Cell]) -> Cell:
    """Cells above each other as one; a word broken at the line's end is mended."""
    if len(parts) == 1:
        return parts[0]
    cell = make_cell([word for part in parts for word in part.words])
    text = parts[0].text
    for part in parts[1:]:
        if text.endswith("-") and text[-2:-1].isalpha() and part.text[:1].islower():
            text = text[:-1] + part.text
        else:
            text = f"{text} {part.text}"
    return Cell(text, cell.box, cell.words)


@dataclass(slots=True)
class _Section:
    text: str
    x0: float
    style: tuple[bool, bool, int]
    child_x0: float | None = None


def _with_sections(rows: Sequence[Row], label: int, em: float) -> list[Row]:
    """Gives each row the headings that stand above it, by style and indentation."""
    open_: list[_Section] = []
    out: list[Row] = []
    for row in rows:
        cell = row.cells.get(label) or min(row.cells.values(), key=lambda c: c.box.x0)
        if not row.has_value:
            section = _Section(
                " ".join(c.text for _, c in sorted(row.cells.items())),
                cell.box.x0,
                (cell.bold, cell.text.isupper(), round(cell.words[0].size or 0)),
            )
            open_ = _closed(open_, section)
            open_.append(section)
            out.append(row)
            continue
        while open_ and open_[-1].child_x0 is not None and _is_outdented(open_[-1], cell.box.x0, em):
            open_.pop()
        if open_ and open_[-1].child_x0 is None:
            open_[-1].child_x0 = cell.box.x0
        out.append(Row(row.cells, row.lines, row.box, True, tuple(section.text for section in open_)))
    return out


def _closed(open_: list[_Section], section: _Section) -> list[_Section]:
    """The sections that stay open when ``section`` begins: those of another style that it stands under."""
    for i, other in enumerate(open_):
        if other.style == section.style and abs(other.x0 - section.x0) < 3:
            return open_[:i]
    return [other for other in open_ if other.child_x0 is None or other.style > section.style][:1]


def _is_outdented(section: _Section, x0: float, em: float) -> bool:
    child = section.child_x0
    return child is not None and child > section.x0 + 0.4 * em and x0 < child - 0.4 * em
