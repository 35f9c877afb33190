"""The goods-in book: a CSV file of what was delivered, to find batches that came without a sheet.

A head and one row a delivery: ``day`` (ISO 8601), ``supplier``, ``malt``, ``batch``; other columns are passed over.
Comma or semicolon between the cells.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from importer.deciding.choosing import malt_key
from importer.deciding.files import MOST_BYTES
from importer.deciding.ground import header
from importer.errors import OwnFileError
from importer.models import Analysis
from importer.store.rows import is_day, key

NEEDED = ("day", "supplier", "malt", "batch")
_DAY = re.compile(r"\d{4}-\d{2}-\d{2}")


@dataclass(frozen=True, slots=True)
class Delivery:
    """One row of the goods-in book."""

    day: str
    supplier: str
    malt: str
    batch: str


def read_deliveries(path: str | Path) -> tuple[Delivery, ...]:
    """The rows of a CSV file with the columns day, supplier, malt and batch; others may stand beside them.

    Raises OwnFileError, which says where it is wrong.
    """
    path = Path(path)
    try:
        if not path.is_file():
            raise OwnFileError(f"{path}: there is no such file.")
        if path.stat().st_size > MOST_BYTES * 20:
            raise OwnFileError(f"{path} is too large for a list of deliveries.")
        text = path.read_bytes().decode("utf-8-sig")
    except OSError as error:
        raise OwnFileError(f"{path} cannot be read: {error.strerror or error}.") from None
    except UnicodeDecodeError:
        raise OwnFileError(f"{path} is not UTF-8 text. Save it as CSV UTF-8.") from None
    first = text.partition("\n")[0]
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=";" if first.count(";") > first.count(",") else ",")
    try:
        rows = [row for row in reader if any(cell.strip() for cell in row)]
    except csv.Error as error:
        raise OwnFileError(f"{path.name} is no CSV file: {error}.") from None
    if not rows:
        raise OwnFileError(f"{path.name} is empty.")
    head = [cell.strip().casefold() for cell in rows[0]]
    missing = [name for name in NEEDED if name not in head]
    if missing:
        raise OwnFileError(f"{path.name}: the head lacks {', '.join(missing)}. Its columns are: {', '.join(head)}.")
    places = [head.index(name) for name in NEEDED]
    return tuple(_row(path, number, row, places) for number, row in enumerate(rows[1:], 2))


def _row(path: Path, number: int, row: list[str], places: Sequence[int]) -> Delivery:
    day, supplier, malt, batch = (row[place].strip() if place < len(row) else "" for place in places)
    if not _DAY.fullmatch(day) or not is_day(day):
        raise OwnFileError(f"{path.name}, row {number}: {day!r} is no day such as 2025-03-31.")
    if not (malt and batch):
        raise OwnFileError(f"{path.name}, row {number}: malt or batch is missing.")
    return Delivery(day, supplier, malt, batch)


def without_sheet(deliveries: Iterable[Delivery], analyses: Iterable[Analysis]) -> tuple[Delivery, ...]:
    """Deliveries whose batch no analysis of their malt has.

    A part of a name is enough ("Nordtal" for "Nordtal Malting Ltd"), and one that is left out matches any.
    """
    known: dict[str | None, list[tuple[str, str]]] = {}
    for analysis in analyses:
        own = malt_key(analysis) or (key(header(analysis, "supplier")) or "", "")
        known.setdefault(key(header(analysis, "batch")), []).append(own)
    return tuple(one for one in deliveries if not any(_same(one, own) for own in known.get(key(one.batch), ())))


def _same(delivery: Delivery, own: tuple[str, str]) -> bool:
    names = ((key(delivery.supplier) or "", own[0]), (key(delivery.malt) or "", own[1]))
    return all(ours in theirs or theirs in ours for ours, theirs in names)
