"""Limits that no head names: a column of them, rows of them below the results, and lists of them in another table."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from importer.layout.lines import Cell
from importer.layout.tables import Table
from importer.layout.terms import Terms
from importer.layout.wrap import Row
from importer.printed import PrintedFigure
from importer.reading.extremes import sums_up
from importer.reading.values import split_value
from importer.vocabulary.captions import sides_of
from importer.vocabulary.units import parse_unit

# So many of the cells of a column of limits hold a range, a sign or a word for one.
SHARE = 0.6
# Limits in a row of their own stand within this many heights below their result.
NEAR = 1.3
_LIMIT = re.compile(r"[<>≤≥]|\d\s*[-–—÷~]\s*\d|\b(max|min)", re.IGNORECASE)
# A result can be "<0.01" or "10 - 15"; what holds either of these, or is set in brackets, is none.
_NO_RESULT = re.compile(r"[>≤≥]|\b(max|min)|^[(\[].*\d.*[)\]]$", re.IGNORECASE)
_IN_BRACKETS = re.compile(r"([^()\[\]]+)[(\[][^()\[\]]+[)\]]")

# What stands for a missing end of limits.
_NONE = ("", "-", "–", "—")
_PLAIN = re.compile(r"\d+(?:[.,]\d+)?")


def is_limit_text(text: str) -> bool:
    """True for a text that could be a limit: with a sign or a word of one, or a range."""
    return bool(_LIMIT.search(text))


def is_signed(text: str) -> bool:
    """True for what a result is above or below a target ("+0.2", "−0.4")."""
    return text.lstrip()[:1] in ("+", "-", "–", "−") and any(c.isdigit() for c in text)


def is_tolerance(text: str) -> bool:
    """True for what a result may be off by ("± 0.2")."""
    return text.lstrip().startswith("±")


def roles_but_brackets(table: Table, column: int, terms: Terms) -> tuple[str, ...]:
    """The roles of a column, without those in brackets ("Result (limit)") where its cells hold limits in brackets."""
    roles = table.columns[column].roles
    head = _IN_BRACKETS.fullmatch(table.columns[column].head.strip())
    if "result" not in roles or head is None or not {"spec", "min", "max"} & set(roles):
        return roles
    texts = _texts(table, column)
    limited = sum(bool(split_value(text)[2]) for text in texts)
    return ("result",) if terms.roles(head[1]) == ("result",) and limited >= SHARE * len(texts) > 0 else roles


def limit_share(table: Table, column: int) -> float:
    """The share of the cells of a column that could be limits."""
    texts = _texts(table, column)
    return sum(map(is_limit_text, texts)) / len(texts) if texts else 0.0


def unnamed_limits(table: Table, unknown: Sequence[int]) -> int | None:
    """The one of several value columns without a telling head that holds limits, if there is just one such."""
    found = [i for i in unknown if limit_share(table, i) >= SHARE and any(map(_NO_RESULT.search, _texts(table, i)))]
    return found[0] if len(found) == 1 else None


def are_extremes(table: Table, low: int | None, high: int | None, results: Sequence[int]) -> bool:
    """True where the columns called lowest and highest hold the lowest and highest of the batches beside them."""
    return any(
        column is not None
        and sums_up(
            role,
            (
                (row.cells[column].text, [row.cells[i].text for i in results if i in row.cells])
                for row in table.rows
                if column in row.cells
            ),
        )
        for role, column in (("min", low), ("max", high))
    )


def with_limits_below(rows: Sequence[Row], label: int, results: Sequence[int]) -> list[tuple[Row, str]]:
    """Rows with the limits that stand by themselves right below their result; those rows themselves hold nothing."""
    found: list[tuple[Row, str]] = []
    for row in rows:
        above = found[-1][0] if found else None
        if above is not None and not found[-1][1] and _stands_below(row, above, label, results):
            found[-1] = (above, next(iter(row.cells.values())).text.strip("()[] "))
            found.append((replace(row, has_value=False), ""))
        else:
            found.append((row, ""))
    return found


def _stands_below(row: Row, above: Row, label: int, results: Sequence[int]) -> bool:
    if len(row.cells) != 1 or label not in above.cells or not above.has_value:
        return False
    (column, cell), *_ = row.cells.items()
    result = above.cells.get(column)
    if column not in results or result is None or not (_NO_RESULT.search(cell.text) or _is_range(cell.text)):
        return False
    return not is_limit_text(result.text) and cell.box.top - result.box.bottom < NEAR * _height(result)


def _height(cell: Cell) -> float:
    return max(cell.box.height, 1.0)


def _is_range(text: str) -> bool:
    return bool(re.fullmatch(r"\d+(?:[.,]\d+)?\s*[-–—÷]\s*\d+(?:[.,]\d+)?", text.strip()))


def with_listed_limits(results: Sequence[PrintedFigure], limits: Sequence[PrintedFigure]) -> list[PrintedFigure]:
    """Results with the limits that a table of limits gives under the same name and unit, if it does so once."""
    listed: dict[str, list[PrintedFigure]] = {}
    for figure in limits:
        if figure.low or figure.high or figure.spec:
            listed.setdefault(_plain(figure.label), []).append(figure)
    named = [_plain(figure.label) for figure in results]
    out = []
    for figure, name in zip(results, named, strict=True):
        found = listed.get(name, [])
        bare = not (figure.low or figure.high or figure.spec)
        if name and bare and len(found) == 1 and named.count(name) == 1 and _same_unit(figure, found[0]):
            out.append(replace(figure, low=found[0].low, high=found[0].high, spec=found[0].spec))
        else:
            out.append(figure)
    return out


def in_order_of(head: str, figure: PrintedFigure) -> PrintedFigure:
    """The figure with "9.8 / 11.2" of its limit cell parted, each on the side that the head names for it."""
    sides, ends = sides_of(head), [end.strip() for end in figure.spec.split("/")]
    if set(sides) != {"min", "max"} or len(sides) != 2 or len(ends) != 2 or figure.low or figure.high:
        return figure
    if not all(end in _NONE or _PLAIN.fullmatch(end) for end in ends):
        return figure
    low, high = ends if sides[0] == "min" else reversed(ends)
    numbers = [float(end.replace(",", ".")) for end in ends if end not in _NONE]
    if len(numbers) == 2 and (numbers[0] > numbers[1]) == (sides[0] == "min"):
        # The ends stand the other way round than the head says.
        return figure
    return replace(figure, spec="", low="" if low in _NONE else low, high="" if high in _NONE else high)


def _same_unit(one: PrintedFigure, other: PrintedFigure) -> bool:
    """True where the limits have no unit of their own, or that of the result."""
    text = other.unit or next((u for t in (other.low, other.high, other.spec) if (u := split_value(t)[1])), None)
    return not text or parse_unit(text) == parse_unit(one.unit or "")


def _plain(text: str) -> str:
    return re.sub(r"\W+", " ", text).strip().casefold()


def _texts(table: Table, column: int) -> list[str]:
    return [row.cells[column].text for row in table.rows if row.has_value and column in row.cells]
