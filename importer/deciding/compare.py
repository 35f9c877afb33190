"""Analyses side by side. A difference counts only beyond the scatter of the method; methods are never mixed."""

from __future__ import annotations

import math
import statistics
from collections.abc import Sequence
from dataclasses import dataclass, replace

from importer.deciding.ground import (
    Ground,
    Reading,
    day_of,
    figures_of,
    ground_of,
    ground_title,
    header,
    mash_of,
    readings,
)
from importer.deciding.precision import Scatter, Setting, scatter
from importer.deciding.results import Comparison, Difference, Named, Residue, Row, Shown
from importer.models import Analysis, Family, Figure
from importer.output.table_line import rounded_range, short
from importer.output.words import CAUTION, as_printed
from importer.store.rows import key
from importer.vocabulary.parameters import parameters

_ENOUGH_FOR_MEAN = 2


@dataclass(frozen=True, slots=True)
class Held:
    """A figure with the analysis it stands in, or a mean of ``number`` figures that stand on one ground."""

    figure: Figure
    analysis: Analysis
    number: int = 1
    means: tuple[Reading, ...] = ()

    @property
    def supplier(self) -> str | None:
        return key(header(self.analysis, "supplier"))

    @property
    def readings(self) -> tuple[Reading, ...]:
        return self.means or tuple(readings(self.figure, self.analysis))


def compare(analyses: Sequence[Analysis], basis: Family = "EBC") -> Comparison:
    """The analyses side by side, each held against the first. Raises ValueError where there are fewer than two.

    ``basis`` is the one that they were read on: nothing is converted here.
    """
    if len(analyses) < 2:
        raise ValueError("a comparison needs two analyses or more")
    columns = [held_by_ground(analysis) for analysis in analyses]
    rows, residues = rows_of(columns, basis)
    return Comparison(
        basis=basis,
        analyses=tuple(named(analysis) for analysis in analyses),
        rows=rows,
        residues=residues,
        notice=CAUTION if residues else "",
    )


def named(analysis: Analysis) -> Named:
    """Which analysis this is."""
    return Named(
        id=analysis.id,
        supplier=header(analysis, "supplier"),
        malt=header(analysis, "malt"),
        batch=header(analysis, "batch"),
        crop_year=header(analysis, "crop_year"),
        day=day_of(analysis),
        method_family=analysis.method_family,
        file=analysis.source.file,
    )


Column = dict[Ground, Held]


def held_by_ground(analysis: Analysis) -> Column:
    """The figures of an analysis by what they stand on. Two different figures on one ground are both in doubt."""
    column: Column = {}
    for figure in figures_of(analysis):
        ground = ground_of(figure.parameter, figure.unit or "", figure.family, mash_of(figure, analysis))
        known = column.get(ground)
        if known is None:
            column[ground] = Held(figure, analysis)
        elif known.figure.printed is not None and _content(known.figure) != _content(figure):
            doubtful = known.figure.model_copy(update={"state": "review"})
            column[ground] = replace(known, figure=doubtful)
    return column


def _content(figure: Figure) -> tuple[object, ...]:
    return figure.value, figure.bound, figure.range, figure.text


def rows_of(
    columns: Sequence[Column], basis: Family, *, first_is_reference: bool = True
) -> tuple[tuple[Row, ...], tuple[Residue, ...]]:
    """A row for each ground that any column has, in the order of the dictionary; residues apart.

    Differences are those of each column from the first that has the figure, or of the first from each of the others.
    """
    order = {name: number for number, name in enumerate(parameters())}
    grounds = list(dict.fromkeys(ground for column in columns for ground in column))
    grounds.sort(key=lambda ground: order.get(ground.parameter, len(order)))
    rows: list[Row] = []
    residues: list[Residue] = []
    for ground in grounds:
        held = [column.get(ground) for column in columns]
        cells = tuple(shown(one, basis) if one else None for one in held)
        entry = parameters().get(ground.parameter)
        title = entry.title if entry else ground.parameter
        if entry is not None and entry.food_safety:
            residues.append(Residue(parameter=ground.parameter, title=title, cells=cells))
            continue
        differences = _from_first(held) if first_is_reference else _of_first(held)
        first = next(number for number, one in enumerate(held) if one)
        rows.append(
            Row(
                parameter=ground.parameter,
                title=title,
                ground=next(cell.ground for cell in cells if cell),
                cells=cells,
                differences=tuple(differences),
                reference=first if first_is_reference else 0,
            )
        )
    return tuple(rows), tuple(residues)


def _from_first(held: Sequence[Held | None]) -> list[Difference | None]:
    """Each against the first that has the figure."""
    reference = next(one for one in held if one)
    return [difference(reference, one) if one and one is not reference else None for one in held]


def _of_first(held: Sequence[Held | None]) -> list[Difference | None]:
    """The first against each of the others."""
    first, *others = held
    return [None, *(difference(other, first) if first and other else None for other in others)]


def shown(held: Held, basis: Family) -> Shown:
    """A figure as it is shown."""
    figure = held.figure
    printed = figure.printed
    return Shown(
        value=figure.value,
        unit=figure.unit,
        family=figure.family,
        ground=ground_title(figure, held.analysis, basis),
        bound=figure.bound,
        range=figure.range,
        text=figure.text,
        state=figure.state,
        estimated=figure.estimated,
        spread=figure.spread,
        number=held.number,
        printed=as_printed(printed, figure) if printed else "",
    )


# ---------------------------------------------------------------- one difference


def difference(reference: Held, other: Held) -> Difference:
    """The other less the reference, judged by the scatter of the method, or why nothing can be said."""
    pair = (reference.figure, other.figure)
    if any(figure.state == "review" for figure in pair):
        return Difference(verdict="not-said", words="in review: nothing is concluded from it")
    if all(_content(figure) == _content(pair[0]) for figure in pair):
        return Difference(verdict="equal", difference=0.0, unit=pair[0].unit, words="the same")
    if any(figure.value is None or figure.bound is not None for figure in pair):
        what = "described in words" if all(figure.text for figure in pair) else "not two plain numbers"
        return Difference(verdict="not-said", words=f"{what}: {' and '.join(_told(figure) for figure in pair)}")
    found = _common(reference, other)
    if found is None:
        return Difference(verdict="not-said", words="they stand on different methods and are not compared")
    return _judge(reference, other, *found)


def _told(figure: Figure) -> str:
    if figure.range is not None:
        entry = parameters().get(figure.parameter)
        return rounded_range(*figure.range, entry.decimals if entry else 2)
    return f"{figure.bound or ''}{figure.value:g}" if figure.value is not None else f"“{figure.text}”"


def _common(reference: Held, other: Held) -> tuple[Reading, Reading] | None:
    """Two readings on one ground: those without an estimate first, as nothing but the laboratory lies between them."""
    pairs = [(a, b) for a in reference.readings for b in other.readings if a.ground == b.ground]
    return min(pairs, key=lambda pair: pair[0].estimated + pair[1].estimated, default=None)


def setting_of(reference: Held, other: Held) -> Setting:
    """A supplier's sheets are taken for results of one laboratory; sheets of two suppliers for two."""
    same = reference.supplier is not None and reference.supplier == other.supplier
    return "same-laboratory" if same else "other-laboratory"


def _judge(reference: Held, other: Held, ours: Reading, theirs: Reading) -> Difference:
    gap = theirs.value - ours.value
    mean_of = max(reference.number, other.number)
    method = reference.figure.printed.method if reference.figure.printed else None
    found = scatter(_middle(ours, theirs), setting_of(reference, other), mean_of=mean_of, method=method)
    on = "" if ours.ground.unit == reference.figure.unit and not reference.figure.estimated else _on(ours)
    told = f"{_signed(gap, ours)} {ours.ground.unit}"
    common = {"difference": _rounded(gap), "unit": ours.ground.unit, "compared_on": on}
    estimates = [reading for reading in (ours, theirs) if reading.estimated]
    if any(reading.spread is None for reading in estimates):
        words = f"{told}, but one is an estimate whose spread is not known"
        return Difference(verdict="not-said", words=words, **common)
    if found is None and not estimates:
        words = f"{told}; no precision of the method is known to judge it by"
        return Difference(verdict="not-said", words=words, **common)
    return _against(gap, told, found, estimates, common)


def _against(
    gap: float, told: str, found: Scatter | None, estimates: Sequence[Reading], common: dict[str, object]
) -> Difference:
    spreads = [reading.spread or 0.0 for reading in estimates]
    allowance = math.hypot(found.allowance if found else 0.0, *spreads)
    formula = found.formula if found else ""
    if estimates:
        formula = f"√(({formula})² + spread of each estimate²)" if found else "√(spread of each estimate²)"
    cause = "the spread of the estimate" if estimates else "the method's own scatter"
    inside = abs(gap) <= allowance * (1 + 1e-9)
    beyond = f"no more than {cause}" if inside else f"more than {cause}"
    words = f"{told}, {beyond} (±{short(allowance)})"
    if found is not None and found.outside:
        words += "; the precision was found on other values"
    return Difference(
        verdict="within-scatter" if inside else "different",
        allowance=_rounded(allowance),
        words=words,
        formula=formula,
        source=found.source if found else "the relation's own spread",
        **common,
    )


def _middle(ours: Reading, theirs: Reading) -> Reading:
    """Precision is taken half way, so that a comparison is the same from either side."""
    return replace(ours, value=(ours.value + theirs.value) / 2)


def _on(reading: Reading) -> str:
    return (
        f"compared on {reading.family} in {reading.ground.unit}, before the estimate" if not reading.estimated else ""
    )


def _signed(gap: float, reading: Reading) -> str:
    entry = parameters()[reading.ground.parameter]
    decimals = entry.decimals
    while decimals < 4 and round(gap, decimals) == 0 and gap:
        decimals += 1
    return f"{gap:+.{decimals}f}".replace("-", "−")


def _rounded(value: float) -> float:
    return float(f"{value:.6g}")


# ---------------------------------------------------------------- means


def mean_column(earlier: Sequence[Analysis]) -> Column:
    """Means of accepted figures over analyses, ground by ground; a ground with fewer than two has none."""
    found: dict[Ground, list[Held]] = {}
    for analysis in earlier:
        for ground, held in held_by_ground(analysis).items():
            if held.figure.state == "accepted" and held.readings:
                found.setdefault(ground, []).append(held)
    return {ground: _mean(all_) for ground, all_ in found.items() if len(all_) >= _ENOUGH_FOR_MEAN}


def _mean(all_: Sequence[Held]) -> Held:
    """The mean of the numbers as they stand and, where all were estimated from one ground, of what they came from."""
    last = all_[-1]
    grounds = [reading.ground for reading in last.readings]
    means: list[Reading] = []
    for ground in grounds:
        same = [reading for held in all_ for reading in held.readings if reading.ground == ground]
        if len(same) == len(all_):
            means.append(_mean_reading(same))
    first = means[0]
    changes = {"value": first.value, "spread": first.spread, "estimated": first.estimated, "printed": None, "steps": ()}
    return Held(last.figure.model_copy(update=changes), last.analysis, len(all_), tuple(means))


def _mean_reading(same: Sequence[Reading]) -> Reading:
    """An estimate's mean carries the largest spread: what is wrong with a relation is wrong with all of them."""
    estimates = [reading for reading in same if reading.estimated]
    known = [reading.spread for reading in estimates if reading.spread is not None]
    return replace(
        same[-1],
        value=_rounded(statistics.fmean(reading.value for reading in same)),
        estimated=bool(estimates),
        spread=max(known) if known and len(known) == len(estimates) else None,
    )
