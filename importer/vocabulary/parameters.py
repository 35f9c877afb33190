"""The parameter dictionary: names, units, bases and ranges, read from mappings/parameters.toml."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import FAMILIES, Family

MoistureBasis = Literal["dry", "as-is"]
Dependence = Literal["none", "mash", "scale"]


@dataclass(frozen=True, slots=True)
class Parameter:
    """One canonical parameter.

    ``units`` is the unit of the parameter on each basis. ``basis`` is the moisture basis that the parameter's name
    stands for (``as-is`` for ``extract_fine_as_is``), None where moisture plays no part. ``depends_on`` says what a
    change of method family does: ``none`` (same figure everywhere), ``scale`` (another scale for the same thing),
    ``mash`` (another wort, so another figure). ``printed_units`` are the unit codes
    of mappings/units.toml that are in use for it, by family. ``possible`` and ``typical`` give, for a unit code, the
    range outside which a reading is a misreading, and the range of ordinary malts. ``sole_unit`` is True where one
    unit is in use anywhere, so that a missing unit cannot be misread. ``basis_settled`` is True where every family
    prints the figure on ``basis`` unless the sheet says otherwise.
    """

    name: str
    title: str
    kind: Literal["number", "text"]
    units: dict[Family, str]
    basis: MoistureBasis | None
    depends_on: Dependence
    printed_units: dict[Family, tuple[str, ...]]
    possible: dict[str, tuple[float, float]]
    typical: dict[str, tuple[float, float]]
    decimals: int
    food_safety: bool = False
    sibling: str | None = None
    sole_unit: bool = False
    basis_settled: bool = False


def _ranges(raw: dict[str, Any], where: str) -> dict[str, tuple[float, float]]:
    ranges: dict[str, tuple[float, float]] = {}
    for unit, pair in raw.items():
        if not (isinstance(pair, list) and len(pair) == 2 and pair[0] <= pair[1]):
            raise DataError(f"mappings/parameters.toml: {where}: the range for {unit!r} must be [low, high]")
        ranges[unit] = (float(pair[0]), float(pair[1]))
    return ranges


def _parameter(name: str, raw: dict[str, Any]) -> Parameter:
    try:
        unit = raw.get("unit")
        units: dict[Family, str] = {f: raw["units"].get(f, unit) if unit is None else unit for f in FAMILIES}
        printed = raw.get("printed_units", {})
        return Parameter(
            name=name,
            title=raw["title"],
            kind=raw.get("kind", "number"),
            units=units,
            basis=raw.get("basis"),
            depends_on=raw["depends_on"],
            printed_units={f: tuple(printed.get(f, printed.get("all", [units[f]]))) for f in FAMILIES},
            possible=_ranges(raw.get("possible", {}), name),
            typical=_ranges(raw.get("typical", {}), name),
            decimals=raw.get("decimals", 1),
            food_safety=raw.get("food_safety", False),
            sibling=raw.get("sibling"),
            sole_unit=raw.get("sole_unit", False),
            basis_settled=raw.get("basis_settled", False),
        )
    except KeyError as missing:
        raise DataError(f"mappings/parameters.toml: parameter {name!r} has no {missing}") from None


@cache
def parameters() -> dict[str, Parameter]:
    """All parameters by name, in the order of the file (the order of reports and columns).

    Raises DataError where the file cannot be used.
    """
    try:
        raw = tomllib.loads((mappings_folder() / "parameters.toml").read_text(encoding="utf-8"))
    except ValueError as fault:
        raise DataError(f"mappings/parameters.toml: {fault}") from None
    return {name: _parameter(name, entry) for name, entry in raw["parameters"].items()}
