"""Recognised figures to the outward analysis: converted, checked, and each accepted or sent to review.

The only place that sets a state.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from importer.meaning.checks import CheckInput, run_checks
from importer.meaning.convert import Context, Outcome, Start, convert_alike, lovibond_of_pair, stands_on, to_basis
from importer.meaning.derive import derive
from importer.meaning.glued_marks import glued_mark
from importer.meaning.header import build_header, with_said_header
from importer.meaning.look import NUMBER_KINDS
from importer.meaning.outward import BOUNDS, also_printed, to_printed, unrecognised
from importer.meaning.possible import class_of, within_possible, within_typical
from importer.meaning.recognised import Doubt, Recognised
from importer.meaning.relations import RatioRule
from importer.meaning.resolve import Resolved
from importer.meaning.said import KEPT_IN_SIGHT, NOTHING, Statements
from importer.meaning.trust import nameless_beside, other_unit_behind, reading_doubts
from importer.models import (
    Analysis,
    Check,
    Family,
    Figure,
    Flag,
    Limits,
    Source,
    State,
)
from importer.printed import PrintedAnalysis, PrintedFigure
from importer.reading.numbers import Convention
from importer.vocabulary.parameters import parameters
from importer.words import Page

REVIEW_FLAGS: frozenset[Flag] = frozenset(
    {
        "family-assumed",
        "unit-assumed",
        "moisture-basis-assumed",
        "label-doubtful",
        "reading-doubtful",
        "outside-possible",
        "unusual-for-malt",
        "check-failed",
        "no-moisture",
        "duplicate-row",
    }
)
RATIO = "nitrogen_ratio"


@dataclass(frozen=True, slots=True)
class Options:
    """What is asked for: the basis, whether estimates are wanted, and the rule for nitrogen ratios."""

    basis: Family = "EBC"
    estimates: bool = True
    ratio_rule: RatioRule = "published"


@dataclass(frozen=True, slots=True)
class Built:
    """An analysis with what a person is asked about it: for each figure the rows behind it, the first one's first, and
    every doubt about it, lifted ones too; the numbers of the rows that no parameter was found for."""

    analysis: Analysis
    groups: tuple[tuple[Recognised, ...], ...]
    doubts: tuple[tuple[Doubt, ...], ...]
    unknown_rows: tuple[int, ...]


def build_analysis(
    printed: PrintedAnalysis,
    resolved: Resolved,
    pages: Mapping[int, Page],
    source: Source,
    identity: str,
    convention: Convention,
    options: Options,
) -> Analysis:
    """One analysis as the contract prints it."""
    return build(printed, resolved, pages, source, identity, convention, options).analysis


def build(
    printed: PrintedAnalysis,
    resolved: Resolved,
    pages: Mapping[int, Page],
    source: Source,
    identity: str,
    convention: Convention,
    options: Options,
    statements: Statements = NOTHING,
) -> Built:
    """One analysis with the rows and doubts behind its figures, and with what a person said of it."""
    header = with_said_header(build_header(printed, pages), statements.header, source.pages)
    malt = header["malt"].value if "malt" in header else ""
    malt_class = class_of(malt)
    weighed = [_weighed(figure, pages, convention, malt_class, resolved.unknown) for figure in resolved.figures]
    weighed = [_marked(figure, weighed, printed.notes, convention) for figure in weighed]
    groups = _groups(weighed, options.basis)
    plain = [_check_input(figure) for group in groups for figure in group if _is_plain(figure)]
    checks = run_checks(plain, malt_class)
    failed = {name: check for check in checks if not check.holds for name in check.parameters}
    context = _context(weighed, options, malt_class)
    assumed = resolved.family.source == "assumed"
    made = [_figure(group, failed, context, options, assumed) for group in groups]
    figures = tuple(figure for figure, _ in made)
    derived = derive(figures, options.basis, context, resolved.family.mash)
    kind = "specification" if printed.is_specification else "batch"
    batch = header.get("batch")
    doubtful_batch = kind == "batch" and (batch is None or batch.state == "review")
    state: State = "review" if doubtful_batch or any(f.state == "review" for f in figures) else "accepted"
    beside = _beside(groups)
    strange = [unrecognised(figure) for figure in (*resolved.unknown, *(figure.printed for figure in beside))]
    rows = (*resolved.unknown_rows, *(figure.row for figure in beside))
    analysis = Analysis(
        id=identity,
        kind=kind,
        source=source,
        header=header,
        method_family=resolved.family.family,
        family_from=resolved.family.source,
        mash=resolved.family.mash,
        state=state,
        figures=figures,
        derived=derived,
        unrecognised=tuple(row for rows in strange for row in rows),
        checks=checks,
    )
    behind = tuple(tuple(group) for group in groups)
    numbers = tuple(row for row, found in zip(rows, strange, strict=True) for _ in found)
    return Built(analysis, behind, tuple(doubts for _, doubts in made), numbers)


# ---------------------------------------------------------------------------------------------- weighing


def _weighed(
    figure: Recognised,
    pages: Mapping[int, Page],
    convention: Convention,
    malt_class: str | None,
    unknown: Sequence[PrintedFigure],
) -> Recognised:
    """The figure with the doubts that its reading and its size raise."""
    doubts = [*figure.doubts]
    if figure.said is None or figure.said.value is None:
        doubts += reading_doubts(figure, pages[figure.printed.page], convention)
        doubts += nameless_beside(figure.printed, unknown)
        doubts += other_unit_behind(figure, pages[figure.printed.page])
    title = parameters()[figure.parameter].title
    if figure.unit is not None and figure.number.kind in NUMBER_KINDS:
        for value in _ends(figure):
            if not within_possible(figure.parameter, figure.unit, value, malt_class):
                doubts.append(Doubt("outside-possible", f"{value:g} {figure.unit} is not possible for {title}."))
            elif figure.number.bound is None and not within_typical(figure.parameter, figure.unit, value, malt_class):
                doubts.append(Doubt("unusual-for-malt", f"{value:g} {figure.unit} is unusual for {title}."))
    return replace(figure, doubts=tuple(dict.fromkeys(doubts)))


def _marked(
    figure: Recognised, figures: Sequence[Recognised], notes: Sequence[str], convention: Convention
) -> Recognised:
    if figure.said is not None and figure.said.value is not None:
        return figure
    doubts = glued_mark(figure, figures, notes, convention)
    return replace(figure, doubts=(*figure.doubts, *doubts)) if doubts else figure


def _ends(figure: Recognised) -> list[float]:
    number = figure.number
    return [value for value in (number.value, number.low, number.high) if value is not None]


def _groups(figures: Sequence[Recognised], basis: Family) -> list[list[Recognised]]:
    """Figures of one parameter together, the one that stands nearest to the basis first; in the order of the sheet."""
    groups: dict[str, list[Recognised]] = {}
    for figure in figures:
        groups.setdefault(figure.parameter, []).append(figure)
    out: list[list[Recognised]] = []
    for name, group in groups.items():
        # What a sentence tells again of a row is not a second result, unless it is not certain what the row says.
        rows = [figure for figure in group if not figure.printed.in_sentence]
        if any(figure.sure for figure in rows):
            group = rows
        unit = parameters()[name].units[basis]
        ranked = sorted(group, key=lambda f: _distance(f, basis, unit))
        out.append(_without_conflict(ranked))
    return out


def _distance(figure: Recognised, basis: Family, unit: str) -> tuple[bool, ...]:
    apart = figure.family != basis and "IoB" in (figure.family, basis)
    moist = figure.basis not in (None, parameters()[figure.parameter].basis)
    return apart, figure.family != basis, figure.unit != unit, moist, not figure.sure, figure.printed.in_sentence


def _without_conflict(group: list[Recognised]) -> list[Recognised]:
    """Marks rows that give one parameter twice on the same method and unit with different numbers."""
    first = group[0]
    rivals = [
        other
        for other in group[1:]
        if other.family == first.family
        and other.unit == first.unit
        and other.basis == first.basis
        and not _alike(first, other)
    ]
    if not rivals:
        return group
    values = " and ".join(dict.fromkeys(f.printed.value for f in (first, *rivals)))
    doubt = Doubt("duplicate-row", f"The sheet gives it more than once: {values}.")
    return [replace(f, doubts=(*f.doubts, doubt)) if f is first or f in rivals else f for f in group]


def _beside(groups: Sequence[Sequence[Recognised]]) -> list[Recognised]:
    """Rows that another of their parameter, on another basis or in another unit, takes the place of, although it is not
    certain that they are of that parameter: they are kept as rows of none."""
    return [
        other
        for first, *others in groups
        for other in others
        if any(doubt.flag == "label-doubtful" for doubt in other.doubts if doubt.flag not in other.settled)
        and not any(doubt.flag == "duplicate-row" for doubt in other.doubts)
        and not _alike(first, other)
    ]


def _alike(one: Recognised, other: Recognised) -> bool:
    a, b = one.number, other.number
    return (a.value, a.low, a.high, a.bound) == (b.value, b.low, b.high, b.bound) and one.text == other.text


def _is_plain(figure: Recognised) -> bool:
    """True for a single number without a bound, the only kind that arithmetic checks can use."""
    return figure.number.kind == "number" and figure.number.bound is None and figure.unit is not None


def _check_input(figure: Recognised) -> CheckInput:
    return CheckInput(
        parameter=figure.parameter,
        value=figure.number.value or 0.0,
        unit=figure.unit or "",
        decimals=figure.number.decimals,
        family=figure.family,
        mash=figure.mash,
        basis=figure.basis,
    )


def _context(figures: Sequence[Recognised], options: Options, malt_class: str | None) -> Context:
    moisture = _only(figures, "moisture", "%")
    extract = _only(figures, "extract_fine_dry", "%")
    ebc, degrees = _only(figures, "colour", "EBC"), _only(figures, "colour", "°L")
    return Context(
        moisture=moisture,
        extract_dry=extract,
        ratio_rule=options.ratio_rule,
        estimates=options.estimates,
        lovibond=lovibond_of_pair(ebc, degrees) if ebc is not None and degrees is not None else None,
        malt_class=malt_class,
        colour=ebc,
    )


def _only(figures: Sequence[Recognised], parameter: str, unit: str) -> float | None:
    found = {f.number.value for f in figures if f.parameter == parameter and f.unit == unit and _is_plain(f)}
    return found.pop() if len(found) == 1 else None


# ---------------------------------------------------------------------------------------------- figures


def _figure(
    group: Sequence[Recognised], failed: Mapping[str, Check], context: Context, options: Options, assumed: bool
) -> tuple[Figure, tuple[Doubt, ...]]:
    """The figure of a group, and every doubt about it, lifted ones too."""
    first = group[0]
    doubts = list(first.doubts)
    if first.parameter in failed and _is_plain(first):
        doubts.append(Doubt("check-failed", f"It does not agree with other figures: {failed[first.parameter].detail}"))
    outcome = _outcome(first, first.number.value, options.basis, context)
    ends = _range(first, options.basis, context)
    doubts += _doubts_of(outcome, assumed)
    lifted = first.settled - KEPT_IN_SIGHT
    open_doubts = [doubt for doubt in doubts if doubt.flag not in lifted]
    flags = [doubt.flag for doubt in open_doubts]
    reasons = [doubt.reason for doubt in open_doubts if doubt.reason] + _remarks(first)
    if outcome is not None:
        flags += [flag for flag in outcome.flags if flag not in (*lifted, "nitrogen-ratio-offset-not-applied")]
    limits = _limits(first, outcome, options.basis, context)
    flags += [*first.notes, *_corrected(first)]
    if first.parameter == RATIO and "nitrogen-ratio-offset-applied" not in flags:
        flags.append("nitrogen-ratio-offset-not-applied")
    value = outcome.value if outcome is not None and ends is None and first.number.value is not None else None
    if _outside(value, limits):
        flags.append("outside-limits")
    family, text_flags = stands_on(first.parameter, first.family, first.mash, options.basis)
    kept = tuple(dict.fromkeys([*flags, *(text_flags if outcome is None else ())]))
    figure = Figure(
        parameter=first.parameter,
        value=value,
        unit=outcome.unit if outcome is not None else parameters()[first.parameter].units[family],
        family=outcome.family if outcome is not None else family,
        bound="range" if ends is not None else (BOUNDS.get(first.number.bound or "") if value is not None else None),
        range=ends,
        text=first.text,
        state="review" if REVIEW_FLAGS & set(kept) - first.settled else "accepted",
        flags=kept,
        reasons=tuple(dict.fromkeys(reasons)),
        estimated=outcome.estimated if outcome is not None else False,
        spread=outcome.spread if outcome is not None else None,
        limits=limits,
        printed=to_printed(first.printed),
        steps=outcome.steps if outcome is not None else (),
        method_offset=outcome.method_offset if outcome is not None else None,
        also_printed=tuple(also_printed(other) for other in group[1:]),
    )
    return figure, tuple(doubts)


def _doubts_of(outcome: Outcome | None, assumed: bool) -> list[Doubt]:
    """What the way to the basis leaves in doubt, and why a figure stays on its own."""
    if outcome is None:
        return []
    told: list[Flag] = [flag for flag in outcome.flags if flag in REVIEW_FLAGS or flag == "not-convertible"]
    bearer = "not-convertible" if "not-convertible" in told else next(iter(told), None)
    doubts = [Doubt(flag, (outcome.reason or "") if flag == bearer else "") for flag in told]
    if "not-convertible" in outcome.flags and assumed:
        doubts.append(
            Doubt("family-assumed", "Its unit cannot be brought to the basis while the method family is not known.")
        )
    return doubts


def _corrected(figure: Recognised) -> list[Flag]:
    """The flag of a figure that a person has changed or confirmed."""
    return ["corrected-by-person"] if figure.said is not None and figure.said.by_person else []


def _remarks(figure: Recognised) -> list[str]:
    """What was learned of a row, told where it made a difference."""
    said = figure.said
    return [said.remark] if said is not None and said.remark and not said.by_person else []


def _start(figure: Recognised, value: float) -> Start:
    return Start(
        parameter=figure.parameter,
        value=value,
        unit=figure.unit or "",
        family=figure.family,
        mash=figure.mash,
        basis=figure.basis,
        decimals=figure.number.decimals,
    )


def _outcome(figure: Recognised, value: float | None, basis: Family, context: Context) -> Outcome | None:
    """The figure on the basis; None for one that is described in words. A range is carried by its lower end."""
    if figure.number.kind not in NUMBER_KINDS or figure.unit in (None, "text"):
        return None
    start = value if value is not None else figure.number.low
    return None if start is None else to_basis(_start(figure, start), basis, context)


def _range(figure: Recognised, basis: Family, context: Context) -> tuple[float, float] | None:
    number = figure.number
    if number.bound != "range" or number.low is None or number.high is None:
        return None
    low = _outcome(figure, number.low, basis, context)
    if low is None:
        return number.low, number.high
    high = convert_alike(_start(figure, number.low), low, number.high, basis, context)
    pair = (low.value, high if high is not None else number.high)
    return min(pair), max(pair)


def _limits(figure: Recognised, outcome: Outcome | None, basis: Family, context: Context) -> Limits:
    if outcome is None or figure.number.value is None:
        return Limits(low=figure.low, high=figure.high)
    start = _start(figure, figure.number.value)

    def moved(value: float | None) -> float | None:
        return None if value is None else convert_alike(start, outcome, value, basis, context)

    return Limits(low=moved(figure.low), high=moved(figure.high))


def _outside(value: float | None, limits: Limits) -> bool:
    if value is None:
        return False
    return (limits.low is not None and value < limits.low) or (limits.high is not None and value > limits.high)
