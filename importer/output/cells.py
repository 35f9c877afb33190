"""What CSV files are made of: safe cells, lines, and the Table Schema that goes beside them."""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any, Literal

FieldType = Literal["string", "number", "integer", "boolean", "date", "any"]
Cell = str | int | float | bool | None

# Characters that make a spreadsheet program take a cell for a formula, the full-width ones included.
_TRIGGER = "=+\\-@\t\r\n＝＋－＠"
_LEADING = re.compile(rf"^\s*[{_TRIGGER}]")
# A program that expects another delimiter cuts a text at it: what follows must not begin a formula either.
_INNER = re.compile(rf"([;\t|\r\n]\s*)(?=[{_TRIGGER}])")
_HARMLESS = re.compile(r"[+\-−]?\d+(?:[.,]\d+)*\s*%?|[-–—+]+")


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a CSV file, as the schema describes it."""

    name: str
    type: FieldType
    description: str


def safe_text(text: str | None) -> str:
    """Text that came from a sheet, so that no spreadsheet program runs it: an apostrophe disarms a formula.

    A plain number with a sign stays as it is, and so do dashes that stand for "none".
    """
    if not text:
        return ""
    if _HARMLESS.fullmatch(text):
        return text
    disarmed = _INNER.sub(r"\1'", text)
    return f"'{disarmed}" if _LEADING.match(text) else disarmed


def cell(value: Cell) -> str:
    """A value of the program's own as CSV text: decimal point, true and false, nothing for None."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    return repr(value) if isinstance(value, float) else str(value)


def to_text(columns: Sequence[Column], rows: Iterable[Sequence[Cell]]) -> str:
    """Head and rows as CSV (RFC 4180: comma, CRLF, quotes doubled)."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([column.name for column in columns])
    for row in rows:
        writer.writerow([cell(value) for value in row])
    return out.getvalue()


def table_schema(columns: Sequence[Column], title: str, key: str | Sequence[str] | None) -> str:
    """The Table Schema (specs.frictionlessdata.io/table-schema) of a CSV file as JSON text."""
    schema: dict[str, Any] = {
        "format": "onebasis/1",
        "title": title,
        "fields": [{"name": c.name, "type": c.type, "description": c.description} for c in columns],
        "missingValues": [""],
    }
    if key is not None:
        schema["primaryKey"] = key if isinstance(key, str) else list(key)
    return json.dumps(schema, indent=2, ensure_ascii=False) + "\n"


def joined(values: Iterable[str]) -> str:
    """Several words in one cell."""
    return " ".join(values)
