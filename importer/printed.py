"""What the reading stage hands on: figures and header entries as printed, before any meaning is given to them."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple

from importer.models import Family, Flag
from importer.words import Box, SecondReading

NO_HEAD = "–"
"""Stands for the head of a column that has none, in ``Concern.column``."""


class Concern(NamedTuple):
    """Something doubtful that was seen while a row was read: the flag that it raises and one plain sentence.

    ``column`` is there where the doubt is which column of a table holds the results: the heads of its columns on one
    line, those taken in brackets, and why that is not sure on another. The same text means the same doubt.
    """

    flag: Flag
    reason: str
    column: str = ""


@dataclass(frozen=True, slots=True)
class PrintedFigure:
    """One result row of a sheet, character for character.

    ``label`` is the row's own label; ``section`` the headings above it, outermost first; ``column`` the words of the
    heads over the value (several lines joined). ``column_family`` is set where that head names a method family.
    ``low`` and ``high`` are limit cells of the row as printed; ``spec`` is a single cell that holds a limit or a
    range in words ("max. 4.5", "80 - 82"). ``value`` may be empty: a row whose result cell was left blank.
    ``second`` are independent readings of the value's place on a scan.
    ``in_sentence``: found in running text, not in a row. ``heading``: the lines above the table, where another table
    or part of the sheet came before. ``rivals``: other values of the row that could be the result.
    """

    label: str
    value: str
    unit: str | None
    page: int
    box: Box
    label_box: Box | None = None
    method: str | None = None
    low: str = ""
    high: str = ""
    spec: str = ""
    section: tuple[str, ...] = ()
    column: str = ""
    column_family: Family | None = None
    column_unit: str | None = None
    confidence: float = 1.0
    second: tuple[SecondReading, ...] = ()
    doubts: tuple[Concern, ...] = ()
    in_sentence: bool = False
    heading: tuple[str, ...] = ()
    rivals: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class PrintedHeader:
    """One header entry: the key it was recognised for, its caption and its text as printed.

    ``several``: others of its kind stand beside or below it, so that it may be one of many.
    """

    key: str
    caption: str
    text: str
    page: int
    box: Box
    sure: bool = True
    confidence: float = 1.0
    several: bool = False


@dataclass(frozen=True, slots=True)
class PrintedAnalysis:
    """All that was printed for one batch, or for a specification."""

    pages: tuple[int, ...]
    header: tuple[PrintedHeader, ...]
    figures: tuple[PrintedFigure, ...]
    title: str = ""
    notes: tuple[str, ...] = ()
    is_specification: bool = False
    orphans: tuple[PrintedFigure, ...] = field(default=())
