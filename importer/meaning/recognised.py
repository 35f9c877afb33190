"""One printed figure with its meaning settled as far as the sheet allows, ready to be converted and checked."""

from __future__ import annotations

from dataclasses import dataclass

from importer.meaning.labels import Match
from importer.meaning.said import NEVER_SETTLED, Said
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
    that the number stands on (None where moisture plays no part). ``row`` is the number of the row within the printed
    analysis, ``said`` what a person said of it; ``printed`` stays as it was read."""

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
    row: int = 0
    said: Said | None = None

    @property
    def sure(self) -> bool:
        return all(doubt.flag in self.settled for doubt in self.doubts)

    @property
    def about(self) -> str:
        """What a person's word on this row is about: it does not hold for another number, unit or parameter."""
        number = self.number
        ends = [f"{end:g}" if end is not None else "" for end in (number.value, number.low, number.high)]
        parts = (self.parameter, *ends, number.bound, self.text, self.unit, self.family, self.basis)
        return "|".join(part or "" for part in parts)

    @property
    def settled(self) -> frozenset[Flag]:
        """The doubts that were lifted."""
        if self.said is None or self.said.about not in ("", self.about):
            return frozenset()
        return self.said.settled - NEVER_SETTLED
