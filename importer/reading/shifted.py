"""Rows of a table that lack a value: whether the others still stand under their own heads."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from importer.layout.lines import Cell
from importer.reading.numbers import read_number
from importer.reading.values import split_value

# A value so many times beyond those of the other rows is none of its column ...
BEYOND = 1.25
# ... and so near to those of the column beside it may be one of that.
NEAR = 1.1

Row = Mapping[int, Cell]


def may_be_shifted(rows: Sequence[Row]) -> list[str]:
    """For each row, why its values may stand under the wrong heads; "" where nothing speaks for that.

    Evidence is a row with fewer values than another one, and a value in it that is unlike those of its own column and
    like those of the column beside it.
    """
    numbers = [
        {column: number for column, cell in row.items() if (number := _number(cell)) is not None} for row in rows
    ]
    most = max((len(row) for row in rows), default=0)
    return [_reason(numbers, at, row) if len(row) < most else "" for at, row in enumerate(rows)]


def _number(cell: Cell) -> float | None:
    number = read_number(split_value(cell.text)[0], None)
    return number.value if number is not None and number.kind == "number" else None


def _reason(numbers: Sequence[Mapping[int, float]], at: int, row: Row) -> str:
    columns = sorted({column for other in numbers for column in other})
    for place, column in enumerate(columns):
        value = numbers[at].get(column)
        others = _others(numbers, at, column)
        if value is None or not others or _within(value, others, BEYOND):
            continue
        beside = [columns[i] for i in (place - 1, place + 1) if 0 <= i < len(columns)]
        if any(_within(value, _others(numbers, at, other), NEAR) for other in beside):
            text = row[column].text
            return f"Its row lacks a value, and {text} is like those of the column beside it: the row may be shifted."
    return ""


def _others(numbers: Sequence[Mapping[int, float]], at: int, column: int) -> list[float]:
    return [row[column] for i, row in enumerate(numbers) if i != at and column in row]


def _within(value: float, others: Sequence[float], times: float) -> bool:
    return bool(others) and min(others) / times <= value <= max(others) * times
