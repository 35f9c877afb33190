"""The scatter of laboratory methods (mappings/precision.toml), and the critical differences that follow from it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cache
from typing import Any, Literal

from importer.deciding.ground import Reading
from importer.errors import DataError
from importer.meaning.formulas import critical_difference
from importer.meaning.relations import source_text
from importer.meaning.tables import table
from importer.models import FAMILIES
from importer.vocabulary.parameters import parameters

FILE = "mappings/precision.toml"
Setting = Literal["same-laboratory", "other-laboratory"]
_KEYS = frozenset({"parameter", "unit", "families", "r", "R", "relative", "range", "method", "only_method", "source"})


@dataclass(frozen=True, slots=True)
class Precision:
    """One entry. ``r`` and ``R`` are given at both ends of ``span``, in the unit, or in % of the result."""

    parameter: str
    unit: str
    families: frozenset[str]
    r: tuple[float, float] | None
    R: tuple[float, float]
    relative: bool
    span: tuple[float, float] | None
    method: str | None
    only_method: bool
    source: str

    def at(self, value: float) -> tuple[float, float]:
        """r95 and R95 at a result, in its unit; r95 is R95 where nobody gives it."""
        low, high = self.span or (value, value)
        share = min(1.0, max(0.0, (value - low) / (high - low))) if high > low else 0.0
        scale = abs(value) / 100 if self.relative else 1.0
        big = (self.R[0] + share * (self.R[1] - self.R[0])) * scale
        small = big if self.r is None else (self.r[0] + share * (self.r[1] - self.r[0])) * scale
        return small, big

    def covers(self, value: float) -> bool:
        """Whether the trial had such results."""
        return self.span is None or self.span[0] <= value <= self.span[1]


@dataclass(frozen=True, slots=True)
class Scatter:
    """How far two results may lie apart by scatter alone, in their unit; how it was found, and from what."""

    allowance: float
    formula: str
    source: str
    outside: bool = False


def between_months(repeatability: float, reproducibility: float, n: int = 1) -> float:
    """One laboratory at different times, one result against the mean of ``n``: between r and R. No source.

    √((r² + R²) ÷ 2) for two single results; a mean of n scatters by √n less.
    """
    return math.sqrt((repeatability**2 + reproducibility**2) / 2) * math.sqrt((1 + 1 / n) / 2)


def against_a_value(reading: Reading) -> Scatter | None:
    """How far a single result may lie from a fixed value, such as a limit, by scatter alone (ISO 5725-6): ÷ √2.

    A fixed value has no scatter of its own, so that it is less than between two results.
    """
    found = scatter(reading, "same-laboratory")
    if found is None:
        return None
    return replace(found, allowance=found.allowance / math.sqrt(2), formula=f"({found.formula}) ÷ √2")


def scatter(reading: Reading, setting: Setting, *, mean_of: int = 1, method: str | None = None) -> Scatter | None:
    """How far a second result may lie from this one by scatter alone; None where no precision is known."""
    entry = _entry(reading, method)
    if entry is None:
        return None
    r, big = entry.at(reading.value)
    source = source_text(entry.source)
    outside = not entry.covers(reading.value)
    if setting == "same-laboratory":
        formula = f"√((r² + R²) ÷ 2), r = {r:.3g}, R = {big:.3g}"
        if mean_of > 1:
            formula += f", against a mean of {mean_of}: × √((1 + 1 ÷ {mean_of}) ÷ 2)"
        return Scatter(between_months(r, big, mean_of), formula, f"{source}; {source_text('between-months')}", outside)
    formula = f"R = {big:.3g}"
    if mean_of > 1:
        formula = f"√(R² − r²(1 − 1 ÷ 2 − 1 ÷ {2 * mean_of})), r = {r:.3g}, R = {big:.3g}"
    allowance = critical_difference(r, big, 1, mean_of)
    return Scatter(allowance, formula, f"{source}; {source_text('iso-5725')}", outside)


def _entry(reading: Reading, method: str | None) -> Precision | None:
    """The entry for a reading: one whose trial had such results before one that had not, in the order of the file."""
    fitting = [
        entry
        for entry in precisions()
        if (entry.parameter, entry.unit) == (reading.ground.parameter, reading.ground.unit)
        and (not entry.families or reading.family in entry.families)
        and (not entry.only_method or (entry.method or "").casefold() in (method or "").casefold())
    ]
    inside = [entry for entry in fitting if entry.covers(reading.value)]
    if inside or not fitting:
        return inside[0] if inside else None
    return min(fitting, key=lambda entry: min(abs(reading.value - end) for end in entry.span or (0.0,)))


@cache
def precisions() -> tuple[Precision, ...]:
    """All entries, in the order of the file. Raises DataError where one cannot be used."""
    return tuple(_precision(raw) for raw in table("precision").get("precision", []))


def _precision(raw: dict[str, Any]) -> Precision:
    name = raw.get("parameter", "an entry without a parameter")
    where = f"{FILE}: {name}"
    if unknown := set(raw) - _KEYS:
        raise DataError(f"{where}: there is no key {min(unknown)!r}")
    try:
        if name not in parameters():
            raise DataError(f"{where}: no such parameter in mappings/parameters.toml")
        if not set(raw.get("families", ())) <= set(FAMILIES):
            raise DataError(f"{where}: families must be EBC, IoB or ASBC")
        span = raw.get("range")
        return Precision(
            parameter=name,
            unit=raw["unit"],
            families=frozenset(raw.get("families", ())),
            r=_ends(raw["r"], where) if "r" in raw else None,
            R=_ends(raw["R"], where),
            relative=raw.get("relative", False),
            span=_ends(span, where) if span is not None else None,
            method=raw.get("method"),
            only_method=raw.get("only_method", False),
            source=raw["source"],
        )
    except KeyError as missing:
        raise DataError(f"{where}: there is no {missing}") from None


def _ends(raw: Any, where: str) -> tuple[float, float]:
    pair = raw if isinstance(raw, list) else [raw, raw]
    if len(pair) != 2 or not all(isinstance(end, (int, float)) and end >= 0 for end in pair):
        raise DataError(f"{where}: {raw!r} must be a number or [at low, at high]")
    return float(pair[0]), float(pair[1])
