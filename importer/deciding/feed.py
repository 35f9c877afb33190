"""What a recipe needs of each malt: the batch in use, with its numbers in the units of the trade.

Only accepted figures are handed on. Extracts stay on the mash that they were made with, and the family is named beside
them; litre-degrees, points and SRM are the same figure in another unit.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from importer.deciding.choosing import (
    MaltKey,
    in_use,
    is_certain,
    malt_key,
    not_taken_as_latest,
    of_the_same_day,
    pinned,
)
from importer.deciding.ground import Reading, day_of, figures_of, header, mash_of, readings
from importer.meaning.one_value import convert_value
from importer.models import Analysis, Family, Figure, Mash, Model
from importer.store.rows import key

FORMAT = "onebasis-recipe/1"


class Malt(Model):
    """One malt with the batch in use. Numbers are None where the sheet gives none that is accepted."""

    supplier: str
    malt: str
    batch: str
    crop_year: str
    day: str
    pinned: bool
    analysis_id: str
    moisture_percent: float | None = None
    extract_family: Family | None = None
    extract_mash: Mash | None = None
    extract_fine_as_is_percent: float | None = None
    extract_fine_dry_percent: float | None = None
    extract_coarse_as_is_percent: float | None = None
    extract_coarse_dry_percent: float | None = None
    planning_grind: str = ""
    extract_as_is_l_deg_per_kg: float | None = None
    extract_as_is_points_per_lb_us_gal: float | None = None
    colour_ebc: float | None = None
    colour_srm: float | None = None
    colour_family: Family | None = None
    colour_mash: Mash | None = None
    diastatic_power_wk: float | None = None
    diastatic_power_lintner: float | None = None
    diastatic_power_estimated: bool | None = None
    diastatic_power_spread_wk: float | None = None
    protein_percent: float | None = None
    nitrogen_ratio_percent: float | None = None
    nitrogen_ratio_family: Family | None = None
    nitrogen_ratio_mash: Mash | None = None
    nitrogen_ratio_estimated: bool | None = None
    nitrogen_ratio_spread: float | None = None
    review: str = ""


class Change(Model):
    """One number that is another one than was handed out before."""

    supplier: str
    malt: str
    batch_before: str
    batch_now: str
    column: str
    before: float | str | bool | None
    now: float | str | bool | None


class Feed(Model):
    """Every malt with a batch in use, malts that have none, and what differs from what was handed out before.

    ``remarks`` are sentences for a person: why a malt or a batch is left out, and what its sheet holds besides.
    """

    format: str = FORMAT
    malts: tuple[Malt, ...]
    without_batch: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    changes: tuple[Change, ...] = ()


# A change of these alone is no change of a number.
_NAMES = frozenset({"supplier", "malt", "batch", "crop_year", "day", "pinned", "analysis_id", "review"})


def recipe_feed(
    analyses: Sequence[Analysis],
    pins: Mapping[str, str] | None = None,
    handed_out: Iterable[Mapping[str, Any]] = (),
    days: Mapping[str, str] | None = None,
) -> Feed:
    """The malts with their numbers. ``analyses`` are on the EBC basis, in the order of their day.

    ``handed_out`` are the malts of the last feed, as they were given out; ``days`` the day that each sheet is filed
    under, by id. Raises ValueError where a pin leads nowhere.
    """
    chosen = in_use(analyses, pins)
    by_person = pinned(analyses, pins or {})
    malts = tuple(_malt(one, own in by_person) for own, one in chosen.items())
    undated = not_taken_as_latest(analyses, chosen)
    without = _without(analyses, chosen)
    remarks = (
        *_why_without(without, undated),
        *(_no_date(one, (days or {}).get(one.id, "")) for one in undated),
        *(_not_recognised(one) for one in chosen.values() if one.unrecognised),
        *_same_day(analyses, {own: one for own, one in chosen.items() if own not in by_person}),
    )
    return Feed(
        malts=malts,
        without_batch=tuple(_name(found[-1]) for found in without.values()),
        remarks=remarks,
        changes=changes(handed_out, malts),
    )


def _without(analyses: Sequence[Analysis], chosen: Mapping[MaltKey, Analysis]) -> dict[MaltKey, list[Analysis]]:
    """The batches of malts that have none in use."""
    found: dict[MaltKey, list[Analysis]] = {}
    for analysis in analyses:
        own = malt_key(analysis)
        if own is not None and own not in chosen and analysis.kind == "batch":
            found.setdefault(own, []).append(analysis)
    return found


def _why_without(without: Mapping[MaltKey, Sequence[Analysis]], undated: Iterable[Analysis]) -> Iterator[str]:
    told = {malt_key(one) for one in undated}
    for own, found in without.items():
        unsure = next((a for a in reversed(found) if a.state == "accepted" and not is_certain(a)), None)
        if unsure is not None:
            yield (
                f"{_name(unsure, 'batch')}: left out: the malt's name is not certain. Open it in `onebasis review`, "
                "All sheets."
            )
        elif own not in told:
            yield (
                f"{_name(found[-1])}: no batch without anything in review; left out. Pin one with --pin to use it all "
                "the same."
            )


def _no_date(analysis: Analysis, filed: str) -> str:
    under = f" (filed under {filed})" if filed else ""
    return f"{_name(analysis, 'batch')} has no date on its sheet{under}; not taken as the latest. Pin it with --pin."


def _same_day(analyses: Sequence[Analysis], chosen: Mapping[MaltKey, Analysis]) -> Iterator[str]:
    others = of_the_same_day(analyses, chosen)
    for one in chosen.values():
        if told := ", ".join(others.get(one.id, ())):
            yield f"{_name(one, 'batch')} is of the same day as {told}. Pin the one in use with --pin."


def _not_recognised(analysis: Analysis) -> str:
    return f"{_name(analysis, 'batch')}: {rows_without_parameter(analysis)}."


def rows_without_parameter(analysis: Analysis) -> str:
    """Says how many results of a sheet stand in no column, empty where there are none."""
    count = len(analysis.unrecognised)
    if not count:
        return ""
    return f"{count} {'row of the sheet has' if count == 1 else 'rows of the sheet have'} no parameter"


def _name(analysis: Analysis, *more: str) -> str:
    return " ".join(text for name in ("supplier", "malt", *more) if (text := header(analysis, name)))


def changes(before: Iterable[Mapping[str, Any]], malts: Iterable[Malt]) -> tuple[Change, ...]:
    """What differs from the numbers that were handed out before, malt by malt."""
    known = {(key(one.get("supplier")) or "", key(one.get("malt"))): one for one in before}
    found: list[Change] = []
    for malt in malts:
        old = known.get((key(malt.supplier) or "", key(malt.malt)))
        if old is None:
            continue
        for column, now in malt.model_dump().items():
            if column not in _NAMES and column in old and old[column] != now:
                found.append(
                    Change(
                        supplier=malt.supplier,
                        malt=malt.malt,
                        batch_before=str(old.get("batch", "")),
                        batch_now=malt.batch,
                        column=column,
                        before=old[column],
                        now=now,
                    )
                )
    return tuple(found)


# ---------------------------------------------------------------- one malt


def _malt(analysis: Analysis, by_person: bool) -> Malt:
    values: dict[str, Any] = {
        "supplier": header(analysis, "supplier"),
        "malt": header(analysis, "malt"),
        "batch": header(analysis, "batch"),
        "crop_year": header(analysis, "crop_year"),
        "day": day_of(analysis),
        "pinned": by_person,
        "analysis_id": analysis.id,
        "moisture_percent": _plain(analysis, "moisture"),
        "protein_percent": _plain(analysis, "total_protein"),
    }
    values |= _extracts(analysis) | _colour(analysis) | _power(analysis) | _ratio(analysis)
    doubtful = dict.fromkeys(figure.parameter for figure in figures_of(analysis) if figure.state == "review")
    review = "; ".join(part for part in (" ".join(doubtful), rows_without_parameter(analysis)) if part)
    return Malt(**values, review=review)


def _figure(analysis: Analysis, parameter: str) -> Figure | None:
    """The accepted plain figure of a parameter, a printed one first."""
    return next(
        (
            figure
            for figure in figures_of(analysis)
            if figure.parameter == parameter
            and figure.state == "accepted"
            and figure.value is not None
            and figure.bound is None
        ),
        None,
    )


def _plain(analysis: Analysis, parameter: str) -> float | None:
    figure = _figure(analysis, parameter)
    return figure.value if figure else None


def _rounded(value: float, decimals: int) -> float:
    return round(value, decimals)


def _in(value: float, unit: str, wanted: str) -> float:
    return value if unit == wanted else convert_value(value, unit, wanted)[0].exact


def _mash(family: Family, mash: Mash | None) -> Mash:
    """The mash that a figure stands on: the family's ordinary one where nothing else is said."""
    return mash or ("isothermal-65" if family == "IoB" else "congress")


def _extracts(analysis: Analysis) -> dict[str, Any]:
    """Extracts as measured, never estimates: in %, and that for planning (coarse before fine) in other units."""
    found: dict[str, Reading] = {}
    for name in ("fine_as_is", "fine_dry", "coarse_as_is", "coarse_dry"):
        for figure in figures_of(analysis):
            if figure.parameter == f"extract_{name}" and figure.state == "accepted":
                for reading in readings(figure, analysis):
                    if not reading.estimated:
                        found.setdefault(name, reading)
    cells: dict[str, Any] = {
        f"extract_{name}_percent": _rounded(_in(one.value, one.ground.unit, "%"), 2) for name, one in found.items()
    }
    first = next(iter(found.values()), None)
    cells["extract_family"] = first.family if first else None
    cells["extract_mash"] = _mash(first.family, first.mash) if first else None
    for grind in ("coarse", "fine"):
        if f"{grind}_as_is" in found:
            value, unit = found[f"{grind}_as_is"].value, found[f"{grind}_as_is"].ground.unit
            cells["planning_grind"] = grind
            cells["extract_as_is_l_deg_per_kg"] = _rounded(_in(value, unit, "L°/kg"), 1)
            cells["extract_as_is_points_per_lb_us_gal"] = _rounded(_in(value, unit, "pt/lb/gal"), 2)
            break
    return cells


def _colour(analysis: Analysis) -> dict[str, Any]:
    figure = _figure(analysis, "colour")
    if figure is None or figure.value is None or figure.unit is None:
        return {}
    return {
        "colour_ebc": _rounded(_in(figure.value, figure.unit, "EBC"), 2),
        "colour_srm": _rounded(_in(figure.value, figure.unit, "SRM"), 2),
        "colour_family": figure.family,
        "colour_mash": _mash(figure.family, mash_of(figure, analysis)),
    }


def _power(analysis: Analysis) -> dict[str, Any]:
    figure = _figure(analysis, "diastatic_power")
    if figure is None or figure.value is None or figure.unit != "WK":
        return {}
    cells: dict[str, Any] = {
        "diastatic_power_wk": figure.value,
        "diastatic_power_estimated": figure.estimated,
        "diastatic_power_spread_wk": figure.spread,
    }
    try:
        cells["diastatic_power_lintner"] = _rounded(_in(figure.value, "WK", "°Lintner"), 1)
    except ValueError:  # below the range in which the scales are tied to each other
        return cells
    return cells


def _ratio(analysis: Analysis) -> dict[str, Any]:
    figure = _figure(analysis, "nitrogen_ratio")
    if figure is None:
        return {}
    return {
        "nitrogen_ratio_percent": figure.value,
        "nitrogen_ratio_family": figure.family,
        "nitrogen_ratio_mash": _mash(figure.family, mash_of(figure, analysis)),
        "nitrogen_ratio_estimated": figure.estimated,
        "nitrogen_ratio_spread": figure.spread,
    }
