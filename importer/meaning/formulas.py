"""The formulas behind the relations: pure arithmetic, every argument and result with its unit.

Coefficients stand in mappings/conversions.toml under [constants]; sources in mappings/sources.toml.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache

from importer.errors import DataError
from importer.meaning.tables import table


@dataclass(frozen=True, slots=True)
class Constants:
    """The numbers of [constants]; see there for meaning and source."""

    protein_factor: float
    protein_factor_wheat: float
    protein_factor_band: tuple[float, ...]
    protein_factor_wheat_band: tuple[float, ...]
    litre_degrees_per_percent: float
    spirit_factor: float
    sucrose_density: tuple[float, ...]
    air_density: float
    plato_cubic: tuple[float, ...]
    mash_water: float
    wort_factor: float
    wort_factor_spread: float
    water_viscosity: float
    viscosity_reference: float
    pale_colour_limit: float


@cache
def constants() -> Constants:
    """The constants as shipped."""
    raw = table("conversions").get("constants", {})
    try:
        values = {k: tuple(map(float, v)) if isinstance(v, list) else float(v) for k, v in raw.items()}
        return Constants(**values)  # type: ignore[arg-type]  # a list where a number belongs fails in the tests of the data
    except (TypeError, ValueError) as problem:
        raise DataError(f"mappings/conversions.toml: [constants]: {problem}") from None


# -------------------------------------------------------------------------------------------- moisture


def dry_from_as_is(as_is: float, moisture: float) -> float:
    """A mass-based figure on dry malt, from the figure as is and the moisture in % as is."""
    return as_is / (1 - moisture / 100)


def as_is_from_dry(dry: float, moisture: float) -> float:
    """A mass-based figure on malt as is, from the dry figure and the moisture in % as is."""
    return dry * (1 - moisture / 100)


# --------------------------------------------------------------------------- wort strength and extract


def sucrose_density(plato: float) -> float:
    """Density at 20 °C in kg/m³ of a sucrose solution of so many % by mass."""
    w = plato / 100
    return sum(c * w**n for n, c in enumerate(constants().sucrose_density))


def gravity_from_plato(plato: float) -> float:
    """Apparent specific gravity 20/20 (weighed in air)."""
    air = constants().air_density
    return (sucrose_density(plato) - air) / (sucrose_density(0) - air)


def plato_from_gravity(gravity: float) -> float:
    """°Plato from the apparent specific gravity 20/20."""
    return sum(c * gravity**n for n, c in enumerate(constants().plato_cubic))


def sucrose_litre_degrees(plato: float) -> float:
    """L°/kg of pure sucrose dissolved to so many °P: the ceiling of any extract."""
    return 1000 * (gravity_from_plato(plato) - 1) / (plato / 100 * sucrose_density(plato) / 1000)


def congress_extract_as_is(plato: float, moisture: float) -> float:
    """Extract in % of malt as is, from the wort of 50 g malt made up to 450 g and the moisture in %."""
    return plato * (constants().mash_water + moisture) / (100 - plato)


def congress_extract_dry(plato: float, moisture: float) -> float:
    """Extract in % of dry malt, from the wort of 50 g malt made up to 450 g and the moisture in %."""
    return dry_from_as_is(congress_extract_as_is(plato, moisture), moisture)


def wort_volume(extract_dry: float, moisture: float) -> float:
    """mL of wort from 100 g of malt as is in a mash of 50 g made up to 450 g; extract in % dry, moisture in % as is."""
    extract = as_is_from_dry(extract_dry, moisture)
    mass = constants().mash_water + moisture + extract
    return mass / sucrose_density(100 * extract / mass) * 1000


def mg_per_100g_dry(mg_per_litre: float, extract_dry: float, moisture: float) -> float:
    """A wort solute in mg per 100 g of dry malt, from mg per litre of a wort made up to 450 g."""
    return mg_per_litre * wort_volume(extract_dry, moisture) / 1000 / (1 - moisture / 100)


def mg_per_litre(mg_per_100g: float, extract_dry: float, moisture: float) -> float:
    """A wort solute in mg per litre of a wort made up to 450 g, from mg per 100 g of dry malt."""
    return mg_per_100g * 1000 / wort_volume(extract_dry, moisture) * (1 - moisture / 100)


def spirit_yield(extract: float, fermentability: float) -> float:
    """Predicted spirit yield in litres of alcohol per tonne; extract and fermentability in %, same moisture basis."""
    return extract * fermentability / 100 * constants().spirit_factor


# --------------------------------------------------------------------------------- nitrogen, viscosity


def nitrogen_ratio(soluble: float, total: float) -> float:
    """Soluble as % of total nitrogen; both in one unit and on one moisture basis."""
    return 100 * soluble / total


def viscosity_at_reference(viscosity: float, plato: float) -> float:
    """Estimate in mPa·s at 8.6 % extract from a wort of 8 to 10 °P (log-linear, ±0.02; not a published conversion)."""
    c = constants()
    return c.water_viscosity * math.pow(viscosity / c.water_viscosity, c.viscosity_reference / plato)


# ------------------------------------------------------------------------ what a brewer does with them


def weighted_mean(parts: Iterable[tuple[float, float]]) -> float:
    """The figure of a grist, from (mass, figure) of every part, adjuncts included."""
    pairs = list(parts)
    return sum(mass * figure for mass, figure in pairs) / sum(mass for mass, _ in pairs)


def mass_for_new_extract(mass: float, extract_planned: float, extract_new: float) -> float:
    """kg of malt that give the same extract; both extracts of one family, as is."""
    return mass * extract_planned / extract_new


def critical_difference(r95: float, big_r95: float, n1: int = 1, n2: int = 1) -> float:
    """By how much the means of n1 and n2 results of two laboratories may differ (95 %), after ISO 5725-6."""
    return math.sqrt(big_r95**2 - r95**2 * (1 - 1 / (2 * n1) - 1 / (2 * n2)))


def rounding_tolerance(
    relation: Callable[..., float], inputs: Iterable[tuple[float, float]], half_result: float
) -> float:
    """How far a printed result may stand from ``relation`` of the printed inputs through rounding alone.

    ``inputs`` are (value, half a last digit), ``half_result`` is half a last digit of the result. The error of each
    input is carried through the slope of the relation there.
    """
    pairs = list(inputs)
    values = [value for value, _ in pairs]
    total = half_result
    for index, (value, half) in enumerate(pairs):
        if half:
            step = half / 2
            up, down = list(values), list(values)
            up[index], down[index] = value + step, value - step
            total += abs(relation(*up) - relation(*down))
    return total


# ------------------------------------------------------------------------ formulas that relations name


@dataclass(frozen=True, slots=True)
class Inputs:
    """What a named formula may need besides the value: moisture % as is, extract % dry, density kg/L, strength °P."""

    moisture: float | None = None
    extract: float | None = None
    density: float | None = None
    plato: float | None = None

    def known(self) -> frozenset[str]:
        names = ("moisture", "extract", "density", "plato")
        return frozenset(name for name in names if getattr(self, name) is not None)


Formula = Callable[[float, Inputs], float]


def _given(value: float | None) -> float:
    if value is None:
        raise ValueError("a quantity that this formula needs is not known")
    return value


NAMED: dict[str, tuple[Formula, Formula | None]] = {
    "plato-gravity": (lambda x, _: gravity_from_plato(x), lambda x, _: plato_from_gravity(x)),
    "wort-solute": (
        lambda x, given: mg_per_100g_dry(x, _given(given.extract), _given(given.moisture)),
        lambda x, given: mg_per_litre(x, _given(given.extract), _given(given.moisture)),
    ),
    "kinematic": (lambda x, given: x * _given(given.density), lambda x, given: x / _given(given.density)),
    "viscosity-8.6": (lambda x, given: viscosity_at_reference(x, _given(given.plato)), None),
}
