"""Recipe lines: a plain file in which a brewery writes a grist with the values that it was planned with.

recipe = "Anvil Bitter"
volume = 1000                # litres of wort after boiling
efficiency = 92              # brewhouse efficiency, % of the laboratory's extract as is
strength = 3.8               # % alcohol by volume; or gravity = 9.5 in °P
round = 0.5                  # kg that weights are rounded to

[[line]]
malt = "Best Pale Ale Malt"
supplier = "Quillbrook Maltings"
kg = 180
extract = { value = 297, unit = "L°/kg", family = "IoB", grind = "coarse" }   # as is
colour = { value = 5, unit = "EBC", family = "IoB" }

[[line]]
malt = "Crystal Malt 150"
kg = 9
colouring = true             # is weighed for its colour

[[line]]
adjunct = "Flaked maize"     # unmalted
kg = 12
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from importer.deciding.files import Entry, read_toml
from importer.meaning.convert import Context, Start, to_basis
from importer.meaning.relations import family_of_unit
from importer.models import Family
from importer.vocabulary.parameters import parameters

_WHOLE = ("recipe", "volume", "efficiency", "strength", "gravity", "round", "line")
_LINE = ("malt", "supplier", "adjunct", "kg", "colouring", "extract", "colour", "diastatic_power")
_GRINDS = {"fine": "extract_fine_as_is", "coarse": "extract_coarse_as_is"}


@dataclass(frozen=True, slots=True)
class Planned:
    """A planning value, in the family's own unit."""

    parameter: str
    value: float
    unit: str
    family: Family


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a grist. ``adjunct`` is unmalted. ``diastatic_power`` is as is, for a malt without a batch."""

    name: str
    kg: float
    supplier: str = ""
    adjunct: bool = False
    colouring: bool = False
    extract: Planned | None = None
    colour: Planned | None = None
    diastatic_power: Planned | None = None


@dataclass(frozen=True, slots=True)
class Recipe:
    """A grist. Volume in litres, efficiency in %, strength in % by volume, gravity in °P, rounding in kg."""

    name: str
    lines: tuple[Line, ...]
    volume: float | None = None
    efficiency: float | None = None
    strength: float | None = None
    gravity: float | None = None
    round_kg: float | None = None


def read_recipe(path: str | Path) -> Recipe:
    """The recipe of a file. Raises OwnFileError, which says where it is wrong and what would be right."""
    path = Path(path)
    whole = Entry(read_toml(path), path.name, whole=True)
    whole.only(_WHOLE)
    lines = tuple(_line(entry) for entry in whole.tables("line"))
    if not lines:
        raise whole.fault("there is no [[line]].")
    return Recipe(
        name=whole.text("recipe") or path.stem,
        lines=lines,
        volume=whole.number("volume", low=0.1, high=1e7),
        efficiency=whole.number("efficiency", low=1, high=110),
        strength=whole.number("strength", low=0, high=25),
        gravity=whole.number("gravity", low=0, high=40),
        round_kg=whole.number("round", low=0.0001, high=1e4),
    )


def _line(entry: Entry) -> Line:
    entry.only(_LINE)
    malt, adjunct = entry.text("malt"), entry.text("adjunct")
    if bool(malt) == bool(adjunct):
        raise entry.fault("give either malt or adjunct.")
    kg = entry.needed("kg", low=0.0001, high=1e6)
    return Line(
        name=malt or adjunct,
        kg=kg,
        supplier=entry.text("supplier"),
        adjunct=bool(adjunct),
        colouring=entry.flag("colouring"),
        extract=_extract(entry),
        colour=_planned(entry, "colour", "colour"),
        diastatic_power=_planned(entry, "diastatic_power", "diastatic_power"),
    )


def _extract(entry: Entry) -> Planned | None:
    table = entry.table("extract")
    if table is None:
        return None
    grind = table.text("grind", needed=True)
    if grind not in _GRINDS:
        raise table.fault('grind is "fine" or "coarse" (IoB with the mill at 0.7 mm is coarse).')
    return _planned(entry, "extract", _GRINDS[grind])


def _planned(entry: Entry, name: str, parameter_name: str) -> Planned | None:
    table = entry.table(name)
    if table is None:
        return None
    table.only(("value", "unit", "family", *(("grind",) if name == "extract" else ())))
    parameter = parameters()[parameter_name]
    unit = table.unit(parameter)
    if unit is None:
        raise table.fault(f"unit is missing: {', '.join(dict.fromkeys(parameter.units.values()))}.")
    of_unit = family_of_unit(parameter_name, unit.code)
    family = table.family() or of_unit
    if family is None:
        raise table.fault("family is missing: EBC, IoB or ASBC. Figures of different mashes are not mixed.")
    value = table.needed("value", low=0, high=5000)
    result = to_basis(Start(parameter_name, value, unit.code, family, None, parameter.basis), family, Context())
    if result.unit != parameter.units[result.family]:
        raise table.fault(f"{unit.text} cannot be put into {parameter.units[family]}. {result.reason or ''}".strip())
    return Planned(parameter_name, result.value, result.unit, result.family)
