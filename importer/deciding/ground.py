"""What a number stands on. Only numbers on the same ground may be set against each other."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from importer.meaning.relations import wort_of
from importer.models import Analysis, Family, Figure, Mash
from importer.vocabulary.parameters import parameters


@dataclass(frozen=True, slots=True)
class Ground:
    """Parameter and unit, and the wort where the figure depends on the mash (None: the same on all)."""

    parameter: str
    unit: str
    wort: str | None = None


@dataclass(frozen=True, slots=True)
class Reading:
    """One number of a figure: ``value`` with its ground, ± ``spread`` where it is an estimate (None: not known)."""

    ground: Ground
    value: float
    family: Family
    mash: Mash | None = None
    estimated: bool = False
    spread: float | None = None


def mash_of(figure: Figure, analysis: Analysis) -> Mash | None:
    """The mash that a figure which stayed on the sheet's own method was made with; None: the family's ordinary one."""
    own = "not-convertible" in figure.flags and figure.family == analysis.method_family
    return analysis.mash if own else None


def ground_of(parameter: str, unit: str, family: Family, mash: Mash | None = None) -> Ground:
    """The ground of a number of a parameter in a unit, on a family and mash."""
    depends = parameters()[parameter].depends_on == "mash"
    return Ground(parameter, unit, wort_of(family, mash).name if depends else None)


def readings(figure: Figure, analysis: Analysis) -> Iterator[Reading]:
    """The number as it stands; then, for an estimate, the number that the estimate was made from.

    Empty for limits of detection, ranges and described results.
    """
    if figure.value is None or figure.bound is not None or figure.unit is None:
        return
    if figure.parameter not in parameters():
        return
    mash = mash_of(figure, analysis)
    ground = ground_of(figure.parameter, figure.unit, figure.family, mash)
    yield Reading(ground, figure.value, figure.family, mash, figure.estimated, figure.spread)
    if figure.estimated and figure.printed is not None:
        first = next((step for step in figure.steps if step.kind == "correlation"), None)
        if first is not None and first.from_.family is not None:
            family = first.from_.family
            mash = analysis.mash if family == analysis.method_family else None
            ground = ground_of(figure.parameter, first.from_.unit, family, mash)
            yield Reading(ground, first.from_.value, family, mash)


def ground_title(figure: Figure, analysis: Analysis, basis: Family) -> str:
    """What a figure stands on, in short, where that is not the basis; empty where it is."""
    if figure.family == basis and "not-convertible" not in figure.flags:
        return ""
    mash = mash_of(figure, analysis)
    return f"{figure.family}, 65 °C mash" if figure.family != "IoB" and mash == "isothermal-65" else figure.family


def figures_of(analysis: Analysis) -> Iterator[Figure]:
    """Every figure; a derived one only where the parameter is not printed on the same ground."""
    taken = set()
    for figure in (*analysis.figures, *analysis.derived):
        key = (figure.parameter, figure.unit, figure.family, mash_of(figure, analysis))
        if figure.printed is None and key in taken:
            continue
        taken.add(key)
        yield figure


def header(analysis: Analysis, key: str) -> str:
    """A header entry, empty where the sheet has none."""
    found = analysis.header.get(key)
    return found.value if found else ""


def day_of(analysis: Analysis) -> str:
    """The day of the analysis, else of production or delivery (ISO 8601); empty where the sheet has none."""
    return next((d for k in ("analysed_on", "produced_on", "delivered_on") if (d := header(analysis, k))), "")
