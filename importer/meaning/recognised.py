"""One printed figure with its meaning settled as far as the sheet allows, ready to be converted and checked."""

from __future__ import annotations

from dataclasses import dataclass

from importer.meaning.labels import Match
from importer.models import Family, Flag, Mash
from importer.printed import PrintedFigure
from importer.reading.numbers import Number
from importer.vocabulary.parameters import MoistureBasis


@dataclass(frozen=True, slots=True)
class Doubt:
    """Why a figure needs a person: a flag and one plain sentence."""

    flag: Flag
    reason: str


@dataclass(frozen=True, slots=True)
class Recognised:
    """``unit`` is a unit code. ``low`` and ``high`` are printed limits in that unit. ``basis`` is the moisture basis
    that the number stands on (None where moisture plays no part)."""

    printed: PrintedFigure
    match: Match
    parameter: str
    number: Number
    unit: str | None
    family: Family
    mash: Mash | None
    basis: MoistureBasis | None
    low: float | None
    high: float | None
    doubts: tuple[Doubt, ...] = ()
    notes: tuple[Flag, ...] = ()
    text: str | None = None

    @property
    def sure(self) -> bool:
        return not self.doubts
