"""What a conversion starts from and how it ends, and on which mash and moisture basis a figure stands."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from importer.meaning.relations import RatioRule, wort_of, wort_units
from importer.models import Family, Flag, Mash, MethodOffset, Step
from importer.vocabulary.parameters import MoistureBasis, parameters


@dataclass(frozen=True, slots=True)
class Context:
    """What the rest of the sheet says that a conversion may need.

    ``moisture`` is in % as is, ``extract_dry`` in % of dry malt from a mash made up to 450 g. ``lovibond`` is the
    meaning of "°L" that a sheet with both EBC and °L has shown (see ``lovibond_of_pair``). ``malt_class`` is a class of
    mappings/malt_classes.toml and ``colour`` the malt's in EBC units, None where unknown: some estimates hold for pale
    barley malts only. ``estimates`` False leaves every correlation out.
    """

    moisture: float | None = None
    extract_dry: float | None = None
    ratio_rule: RatioRule = "published"
    estimates: bool = True
    lovibond: Literal["srm", "visual"] | None = None
    malt_class: str | None = None
    colour: float | None = None


@dataclass(frozen=True, slots=True)
class Start:
    """A printed number with everything that was understood about it. ``unit`` is a code of mappings/units.toml."""

    parameter: str
    value: float
    unit: str
    family: Family
    mash: Mash | None = None
    basis: MoistureBasis | None = None
    decimals: int = 1


@dataclass(frozen=True, slots=True)
class Outcome:
    """The number on the basis, or on its own family where no relation leads there (``reason`` then says why)."""

    parameter: str
    value: float
    unit: str
    family: Family
    steps: tuple[Step, ...] = ()
    flags: tuple[Flag, ...] = ()
    estimated: bool = False
    spread: float | None = None
    method_offset: MethodOffset | None = None
    reason: str | None = None


def needs_basis(parameter: str, unit: str) -> bool:
    """Whether a figure in this unit differs between dry malt and malt as is."""
    return parameters()[parameter].basis is not None and unit not in wort_units()


def at_basis(parameter: str, basis: MoistureBasis | None) -> str:
    """The parameter's name at the basis that the sheet states, where the two bases have names of their own."""
    entry = parameters()[parameter]
    if basis is not None and entry.sibling is not None and entry.basis != basis:
        return entry.sibling
    return parameter


def same_wort(family: Family, mash: Mash | None, target: Family) -> bool:
    """Whether figures that depend on the mash mean the same on the two families."""
    return wort_of(family, mash) == wort_of(target, None)


def stands_on(parameter: str, family: Family, mash: Mash | None, target: Family) -> tuple[Family, tuple[Flag, ...]]:
    """The family that a described result stands on, with the flag where it cannot be carried to the basis."""
    if parameters()[parameter].depends_on != "mash" or same_wort(family, mash, target):
        return target, ()
    return family, ("not-convertible",)


def lovibond_of_pair(ebc: float, degrees: float) -> Literal["srm", "visual"] | None:
    """What "°L" means on a sheet that prints it beside EBC units: EBC ÷ °L is 1.97 for SRM, about 2.65 for Lovibond."""
    if degrees <= 0:
        return None
    ratio = ebc / degrees
    if 1.85 <= ratio <= 2.1:
        return "srm"
    return "visual" if 2.45 <= ratio <= 2.8 else None
