"""Things found on the pages, in reading order: header entries and figures, before they are shared out to analyses."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from importer.printed import PrintedFigure, PrintedHeader


class Place(NamedTuple):
    """Where something stands, in the order of reading."""

    page: int
    y: float
    x: float


@dataclass(frozen=True, slots=True)
class Event:
    """``lane`` names the batch column or batch row that the item stands in; None where it holds for all of them.

    ``limits_only`` marks a figure from a table that has limits or typical values but no results.
    """

    place: Place
    figure: PrintedFigure | None = None
    header: PrintedHeader | None = None
    lane: str | None = None
    limits_only: bool = False
    in_table: bool = False
