"""Thresholds and constants of mappings/effects.toml."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from typing import Any, TypeVar

from importer.deciding.ground import Ground, Reading, ground_of
from importer.errors import DataError
from importer.meaning.possible import malt_classes
from importer.meaning.relations import source_text
from importer.meaning.tables import table
from importer.models import FAMILIES, Family, Mash
from importer.vocabulary.parameters import parameters

FILE = "mappings/effects.toml"
_T = TypeVar("_T")
_WHERE = frozenset({"subject", "parameter", "unit", "family", "mash", "below", "above", "classes", "not_classes"})
_KEYS = _WHERE | {"low", "high", "source", "low_source", "high_source"}


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution: what is said ``below`` and ``above`` its thresholds, for which method and which classes of malt."""

    subject: str
    parameter: str
    unit: str
    family: Family | None
    mash: Mash | None
    below: float | None
    above: float | None
    classes: frozenset[str]
    not_classes: frozenset[str]
    low: str
    high: str
    low_source: str
    high_source: str

    def fits(self, reading: Reading) -> bool:
        """Whether the thresholds are in the unit and on the method of a reading."""
        if self.family is None:
            return (reading.ground.parameter, reading.ground.unit) == (self.parameter, self.unit)
        return self.ground(self.family) == reading.ground

    def ground(self, family: Family) -> Ground:
        """The ground of the thresholds."""
        return ground_of(self.parameter, self.unit, family, self.mash)

    def holds_for(self, malt_class: str | None) -> bool:
        """Whether it holds for a class of malt; one that is only for some classes needs the class to be known."""
        if self.classes:
            return malt_class in self.classes
        return malt_class not in self.not_classes


@dataclass(frozen=True, slots=True)
class GristPower:
    """What a whole grist needs to convert itself, in ``unit``; malts of ``without_power`` may count as 0."""

    unit: str
    minimum: float
    comfortable: float
    without_power: list[str]
    source: str


@dataclass(frozen=True, slots=True)
class MashTemperature:
    """When a warmer mash keeps body: power in ``unit``, strength in % by volume or gravity in °P, °C."""

    unit: str
    power: float
    strength: float
    gravity_plato: float
    temperature: float
    usual: float
    source: str
    gravity_note: str


@dataclass(frozen=True, slots=True)
class Constants:
    """See the head of the file."""

    wort_litres_per_kg: float
    colour_bends_above: float
    colour_boiling: list[float]
    colour_boiling_source: str


@cache
def cautions() -> tuple[Caution, ...]:
    """All cautions in the order of the file. Raises DataError where one cannot be used."""
    return tuple(_caution(raw) for raw in table("effects").get("caution", []))


@cache
def grist_power() -> GristPower:
    """What is needed to tell the diastatic power of a grist. Raises DataError where the file cannot be used."""
    return _section("grist_power", GristPower)


@cache
def mash_temperature() -> MashTemperature:
    """How the mash temperature follows a malt. Raises DataError where the file cannot be used."""
    return _section("mash_temperature", MashTemperature)


@cache
def effect_constants() -> Constants:
    """Constants of the effects. Raises DataError where the file cannot be used."""
    return _section("constants", Constants)


def _section(name: str, kind: Callable[..., _T]) -> _T:
    try:
        return kind(**table("effects")[name])
    except (KeyError, TypeError) as fault:
        raise DataError(f"{FILE}: [{name}]: {fault}") from None


def _caution(raw: dict[str, Any]) -> Caution:
    where = f"{FILE}: caution on {raw.get('parameter', 'no parameter')!r}"
    if unknown := set(raw) - _KEYS:
        raise DataError(f"{where}: there is no key {min(unknown)!r}")
    try:
        if raw["parameter"] not in parameters() or raw.get("family", "EBC") not in FAMILIES:
            raise DataError(f"{where}: unknown parameter or family")
        for name in (*raw.get("classes", ()), *raw.get("not_classes", ())):
            if name not in malt_classes():
                raise DataError(f"{where}: there is no class {name!r} in mappings/malt_classes.toml")
        for end, words in (("below", "low"), ("above", "high")):
            if (end in raw) != (words in raw):
                raise DataError(f"{where}: {end} and {words} go together")
        return Caution(
            subject=raw["subject"],
            parameter=raw["parameter"],
            unit=raw["unit"],
            family=raw.get("family"),
            mash=raw.get("mash"),
            below=raw.get("below"),
            above=raw.get("above"),
            classes=frozenset(raw.get("classes", ())),
            not_classes=frozenset(raw.get("not_classes", ())),
            low=raw.get("low", ""),
            high=raw.get("high", ""),
            low_source=source_text(raw.get("low_source") or raw.get("source") or raw["high_source"]),
            high_source=source_text(raw.get("high_source") or raw.get("source") or raw["low_source"]),
        )
    except KeyError as missing:
        raise DataError(f"{where}: there is no {missing}") from None
