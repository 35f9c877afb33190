"""What a report tells of a year, a malt or a supplier: trends, what was out of agreement, what is missing."""

from __future__ import annotations

import statistics
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from importer.deciding.agreed import Agreement, against_limits, agreement_for
from importer.deciding.choosing import MaltKey, is_dated, malt_key
from importer.deciding.deliveries import Delivery, without_sheet
from importer.deciding.ground import Ground, Reading, day_of, figures_of, ground_title, header, readings
from importer.deciding.precision import against_a_value
from importer.deciding.results import AgainstLimit
from importer.models import Analysis, Figure
from importer.store.rows import key
from importer.vocabulary.parameters import parameters

LEAST_POINTS = 3


@dataclass(frozen=True, slots=True)
class Point:
    """One batch in a trend; ``outside``: outside what was agreed."""

    day: str
    batch: str
    crop_year: str
    value: float
    spread: float | None
    estimated: bool
    outside: bool


@dataclass(frozen=True, slots=True)
class Band:
    """Where 19 of 20 results of an unchanged malt would lie by the scatter of the laboratory, for one harvest."""

    first_day: str
    last_day: str
    crop_year: str
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Series:
    """One figure of a malt over time, all on one ground. Limits are those agreed, on the same ground."""

    parameter: str
    title: str
    unit: str
    ground: str
    points: tuple[Point, ...]
    bands: tuple[Band, ...]
    low: float | None
    high: float | None
    source: str


@dataclass(frozen=True, slots=True)
class Complaint:
    """One figure outside what was agreed."""

    analysis: Analysis
    figure: Figure | None
    found: AgainstLimit


@dataclass(frozen=True, slots=True)
class MaltReport:
    """One malt of one supplier. ``harvests`` are the days on which another crop year begins, with that year."""

    supplier: str
    malt: str
    batches: tuple[Analysis, ...]
    series: tuple[Series, ...]
    harvests: tuple[tuple[str, str], ...]
    complaints: tuple[Complaint, ...]
    not_said: tuple[tuple[Analysis, AgainstLimit], ...]
    agreed: bool


@dataclass(frozen=True, slots=True)
class Report:
    """The whole of it. ``residues`` is true where any sheet has such figures, which are not judged.

    ``undated`` are batches that may belong to it, but tell no day; ``days`` is the day of every batch by id.
    """

    scope: str
    malts: tuple[MaltReport, ...]
    missing: tuple[Delivery, ...]
    deliveries: int
    residues: bool
    undated: tuple[Analysis, ...]
    days: Mapping[str, str]

    @property
    def complaints(self) -> tuple[Complaint, ...]:
        return tuple(one for malt in self.malts for one in malt.complaints)

    @property
    def batches(self) -> int:
        return sum(len(malt.batches) for malt in self.malts)


class NothingFoundError(ValueError):
    """No batch is of the malt, supplier or year that was asked for."""


def make_report(
    analyses: Sequence[Analysis],
    scope: str | Sequence[str],
    *,
    agreements: Sequence[Agreement] = (),
    deliveries: Sequence[Delivery] = (),
) -> Report:
    """The report on what ``scope`` names: years, and malts or suppliers by name or a part of it; all of them hold.

    ``analyses`` are current ones in the order of their day. A sheet that tells no day belongs to no year: the day on
    which it came in says nothing about it. Raises NothingFoundError, a ValueError.
    """
    scope = (scope,) if isinstance(scope, str) else scope
    batches = [a for a in analyses if a.kind == "batch"]
    known = {a.id: day_of(a) if is_dated(a) else "" for a in batches}
    chosen = [a for a in batches if all(_in_scope(word, known[a.id], *_names(a)) for word in scope)]
    places = [word for word in scope if not _is_year(word)]
    undated = [a for a in batches if not known[a.id] and all(_in_scope(word, "", *_names(a)) for word in places)]
    if not chosen:
        raise NothingFoundError(f"No batch in the store is of {' and '.join(scope)}.")
    by_malt: dict[MaltKey, list[Analysis]] = {}
    for analysis in chosen:
        by_malt.setdefault(malt_key(analysis) or ("", ""), []).append(analysis)
    wanted = [d for d in deliveries if all(_in_scope(word, d.day, d.supplier, d.malt) for word in scope)]
    residues = any(is_residue(figure) for analysis in chosen for figure in analysis.figures)
    malts = tuple(_malt(found, agreements, known) for _, found in sorted(by_malt.items()))
    missing = without_sheet(wanted, batches)
    return Report(" · ".join(scope), malts, missing, len(wanted), residues, tuple(undated), known)


def _names(analysis: Analysis) -> tuple[str, str]:
    return header(analysis, "supplier"), header(analysis, "malt")


def _in_scope(word: str, day: str, supplier: str, malt: str) -> bool:
    if _is_year(word):
        return day.startswith(word)
    wanted = key(word)
    return wanted is not None and any(wanted in (key(name) or "") for name in (supplier, malt))


def _is_year(word: str) -> bool:
    return len(word) == 4 and word.isascii() and word.isdigit()


def is_residue(figure: Figure) -> bool:
    """True for a residue or contaminant, which is shown and never judged."""
    entry = parameters().get(figure.parameter)
    return entry is not None and entry.food_safety


def _malt(batches: Sequence[Analysis], agreements: Sequence[Agreement], days: Mapping[str, str]) -> MaltReport:
    results: dict[str, tuple[AgainstLimit, ...]] = {}
    agreed = False
    for analysis in batches:
        agreement = agreement_for(analysis, agreements)
        agreed = agreed or agreement is not None
        results[analysis.id] = against_limits(analysis, agreement) if agreement else ()
    complaints = [
        Complaint(a, _printed(a, one.parameter), one)
        for a in batches
        for one in results[a.id]
        if one.standing == "outside"
    ]
    silent = [(a, one) for a in batches for one in results[a.id] if one.standing == "not-said"]
    return MaltReport(
        supplier=header(batches[-1], "supplier"),
        malt=header(batches[-1], "malt"),
        batches=tuple(batches),
        series=tuple(_all_series(batches, results, days)),
        harvests=_harvests(batches, days),
        complaints=tuple(complaints),
        not_said=tuple(silent),
        agreed=agreed,
    )


def _printed(analysis: Analysis, parameter: str) -> Figure | None:
    """The printed figure behind a parameter; for a derived one the first that it was computed from."""
    figure = next((f for f in figures_of(analysis) if f.parameter == parameter), None)
    if figure is None or figure.printed is not None:
        return figure
    return next((f for f in analysis.figures if f.parameter in figure.from_), None)


def _harvests(batches: Iterable[Analysis], days: Mapping[str, str]) -> tuple[tuple[str, str], ...]:
    found: list[tuple[str, str]] = []
    last = ""
    for analysis in batches:
        crop, day = header(analysis, "crop_year"), days[analysis.id]
        if crop and last and crop != last and day:
            found.append((day, crop))
        last = crop or last
    return tuple(found)


# ---------------------------------------------------------------- trends


@dataclass(frozen=True, slots=True)
class _Seen:
    reading: Reading
    figure: Figure
    analysis: Analysis
    day: str


def _all_series(
    batches: Sequence[Analysis], results: dict[str, tuple[AgainstLimit, ...]], days: Mapping[str, str]
) -> Iterable[Series]:
    """A trend for each printed figure, and for a derived one that was agreed on; methods are not mixed in one.

    An estimate stands as it was before it was estimated, where the sheet prints that.
    """
    agreed = {one.parameter for found in results.values() for one in found}
    seen: dict[Ground, list[_Seen]] = {}
    for analysis in batches:
        for figure in figures_of(analysis):
            if figure.state != "accepted" or is_residue(figure):
                continue
            if figure.printed is None and figure.parameter not in agreed:
                continue
            if not days[analysis.id]:
                continue
            reading = min(readings(figure, analysis), key=lambda one: one.estimated, default=None)
            if reading is not None:
                seen.setdefault(reading.ground, []).append(_Seen(reading, figure, analysis, days[analysis.id]))
    order = list(parameters())
    for _, found in sorted(seen.items(), key=lambda pair: order.index(pair[0].parameter)):
        if len(found) >= LEAST_POINTS:
            yield _series(found, results)


def _series(found: Sequence[_Seen], results: dict[str, tuple[AgainstLimit, ...]]) -> Series:
    first = found[0]
    unit = first.reading.ground.unit
    name = first.reading.ground.parameter
    points = tuple(_point(one, [r for r in results[one.analysis.id] if r.parameter == name]) for one in found)
    limits = [
        result
        for one in found
        for result in results[one.analysis.id]
        if (result.parameter, result.unit, result.value) == (name, unit, one.reading.value)
    ]
    low = next((result.low for result in reversed(limits) if result.low is not None), None)
    high = next((result.high for result in reversed(limits) if result.high is not None), None)
    bands, source = _bands(found, points)
    ground = ground_title(first.figure, first.analysis, "EBC")
    if first.figure.estimated and not first.reading.estimated:
        ground = first.reading.family
    if parameters()[name].depends_on != "mash":
        ground = ""
    return Series(name, parameters()[name].title, unit, ground, points, bands, low, high, source)


def _point(one: _Seen, judged: Sequence[AgainstLimit]) -> Point:
    return Point(
        day=one.day,
        batch=header(one.analysis, "batch"),
        crop_year=header(one.analysis, "crop_year"),
        value=one.reading.value,
        spread=one.reading.spread if one.reading.estimated else None,
        estimated=one.reading.estimated,
        outside=any(result.standing == "outside" for result in judged),
    )


def _bands(found: Sequence[_Seen], points: Sequence[Point]) -> tuple[tuple[Band, ...], str]:
    """For each harvest the median ± how far a single result may lie from it by scatter alone."""
    groups: dict[str, list[Point]] = {}
    for point in points:
        groups.setdefault(point.crop_year, []).append(point)
    bands: list[Band] = []
    source = ""
    for crop, group in groups.items():
        middle = statistics.median(point.value for point in group)
        reading = found[0].reading
        held = against_a_value(Reading(reading.ground, middle, reading.family, reading.mash))
        if held is None:
            return (), ""
        days = sorted(point.day for point in group)
        bands.append(Band(days[0], days[-1], crop, middle - held.allowance, middle + held.allowance))
        source = held.source
    return tuple(bands), source
