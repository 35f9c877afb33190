"""From a printed figure to the method basis: one Step a change, and the reason where no way leads there.

The order is fixed: units within the sheet's own family, then the moisture basis, then the scale or the correlation that
leads to another family. Values are rounded only when they are written down, never along the chain.

What is decided here and why:

* Two families stand on one wort (EBC and ASBC, both Congress) or on different ones (IoB; MEBAK at 65 °C). A figure
  that depends on the mash crosses from one wort to another only by a relation of its own, and there is one: the ratio.
* IoB hot water extract keeps its family, unit and name. ÷ 3.86 restates it in % of the same mash and does not make it
  an EBC extract; the estimate of the EBC fine extract is a derived figure (see derive).
* IoB colour keeps its family although both are printed in EBC units: the worts differ in strength by laboratory.
* FAN and soluble nitrogen pass between mg/100 g and mg/L by the mass balance of a mash made up to 450 g. An IoB mash
  may have been made up to 515 ml, so there they keep their unit.
* A ratio on the MEBAK mash at 65 °C gets no correction: nobody has published one.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

from importer.meaning.formulas import Inputs, constants, dry_from_as_is
from importer.meaning.one_value import Conversion, ConversionError, convert_value
from importer.meaning.possible import is_pale_barley, within_possible
from importer.meaning.relations import (
    Link,
    RatioRule,
    UnitMeaning,
    family_of_unit,
    relations,
    shortest,
    source_text,
    unit_meaning,
    wort_of,
)
from importer.meaning.rounding import round_exact, round_spread, round_to_spread
from importer.meaning.standing import (
    Context,
    Outcome,
    Start,
    at_basis,
    lovibond_of_pair,
    needs_basis,
    same_wort,
    stands_on,
)
from importer.meaning.steps import make_offset, make_step
from importer.models import Family, Flag, MethodOffset, Quantity, Step, StepKind
from importer.vocabulary.parameters import Parameter, parameters

RATIO = "nitrogen_ratio"

__all__ = [
    "Context",
    "Conversion",
    "ConversionError",
    "Outcome",
    "Start",
    "at_basis",
    "convert_alike",
    "convert_value",
    "lovibond_of_pair",
    "needs_basis",
    "same_wort",
    "stands_on",
    "to_basis",
]


# ---------------------------------------------------------------- ways


@dataclass(frozen=True, slots=True)
class _Way:
    """How a figure gets to a unit and a family: links, with the moisture step between them."""

    before: tuple[Link, ...]
    moisture: bool
    after: tuple[Link, ...]
    unit: str
    family: Family


@lru_cache(maxsize=4096)
def _links(
    parameter: str, start: str, end: str, family: Family, known: frozenset[str], estimates: bool, full: bool
) -> tuple[Link, ...] | None:
    usable = [
        r
        for r in relations().values()
        if parameter in r.parameters
        and r.routed
        and r.between is None
        and (not r.families or family in r.families)
        and r.usable(known)
        and (estimates or r.kind != "correlation")
        and (full or not r.only_450_g)
    ]
    return shortest(start, end, usable)


@lru_cache(maxsize=256)
def _method_link(parameter: str, from_wort: str, to_wort: str, rule: RatioRule) -> Link | None:
    for relation in relations().values():
        if relation.between is None or parameter not in relation.parameters or relation.rule not in (None, rule):
            continue
        if relation.between == (from_wort, to_wort):
            return Link(relation)
        if relation.between == (to_wort, from_wort) and not relation.one_way:
            return Link(relation, backward=True)
    return None


def _moisture(context: Context) -> float | None:
    """The sheet's moisture, unless it can only be a misreading: that would spoil every figure it touches."""
    moisture = context.moisture
    return moisture if moisture is not None and within_possible("moisture", "%", moisture) else None


def _inputs(context: Context) -> Inputs:
    extract = context.extract_dry
    usable = extract is not None and within_possible("extract_fine_dry", "%", extract)
    return Inputs(moisture=_moisture(context), extract=extract if usable else None)


def _way(start: Start, meaning: UnitMeaning, own: Family, goal: Family, context: Context) -> _Way | str:
    """The way to a family's unit, or one sentence that says why there is none."""
    entry = parameters()[start.parameter]
    unit = entry.units[goal]
    if meaning.code is None:
        return _sentence(meaning.why or f"what {start.unit} means here cannot be told")
    wanted = unit_meaning(start.parameter, unit, goal, None).code or unit
    wort = wort_of(own, start.mash if own == start.family else None)
    known = _inputs(context).known()
    path = _links(start.parameter, meaning.code, wanted, own, known, context.estimates, wort.made_up_to_450_g)
    if path is None:
        return _no_way(entry, start, unit, own, known, wort.made_up_to_450_g)
    cut = next((i for i, link in enumerate(path) if link.kind != "unit"), len(path))
    return _Way(path[:cut], _is_wet(start), path[cut:], unit, goal)


def _is_wet(start: Start) -> bool:
    """Whether the number stands on malt as is although its parameter stands for dry malt."""
    entry = parameters()[start.parameter]
    as_is = start.basis == "as-is" and entry.basis == "dry" and entry.sibling is None
    return as_is and needs_basis(start.parameter, start.unit)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:] + "."


def _no_way(entry: Parameter, start: Start, unit: str, own: Family, known: frozenset[str], full: bool) -> str:
    name = entry.title
    if _links(start.parameter, start.unit, unit, own, known, True, full) is not None:
        return f"{name}: only an estimate leads from {start.unit} to {unit}, and estimates are left out."
    if not full and _links(start.parameter, start.unit, unit, own, known, True, True) is not None:
        known_only = "only for a mash made up to 450 g, which the sheet does not say"
        return f"{name}: {start.unit} becomes {unit} {known_only}."
    return f"{name}: no relation leads from {start.unit} to {unit}."


def _across(start: Start, own: Family, target: Family, context: Context) -> tuple[Link | None, str | None]:
    """The relation between two worts, or why there is none."""
    title = parameters()[start.parameter].title
    here = wort_of(own, start.mash if own == start.family else None)
    there = wort_of(target, None)
    link = _method_link(start.parameter, here.name, there.name, context.ratio_rule)
    if link is None:
        return None, f"{title}: no published relation leads from the {here.title} to the {there.title}."
    if not context.estimates and link.kind == "correlation":
        way = f"from the {here.title} to the {there.title}"
        return None, f"{title}: only an estimate leads {way}, and estimates are left out."
    dark = context.colour is not None and context.colour > constants().pale_colour_limit
    if link.relation.pale_barley and (dark or is_pale_barley(context.malt_class) is False):
        return None, f"{title}: {link.formula} holds for pale barley malts only."
    return link, None


# ---------------------------------------------------------------- to the basis


def to_basis(start: Start, target: Family, context: Context) -> Outcome:
    """The figure on the basis, with one Step a change.

    Where no relation leads there it stays on its own family (in that family's unit, if an exact way leads to it) with
    the flag ``not-convertible``; where the moisture is lacking it stays as printed with ``no-moisture``.
    """
    start = replace(start, parameter=at_basis(start.parameter, start.basis))
    entry = parameters()[start.parameter]
    own = family_of_unit(start.parameter, start.unit) or start.family
    meaning = unit_meaning(start.parameter, start.unit, own, context.lovibond)
    flags: list[Flag] = ["unit-assumed"] if meaning.assumed else []
    assumed = _sentence(meaning.why) if meaning.assumed and meaning.why else None

    here = wort_of(own, start.mash if own == start.family else None)
    crossing, reason = None, None
    goal = target
    if entry.depends_on == "mash" and here != wort_of(target, None):
        crossing, reason = _across(start, own, target, context)
        goal = own
    if _is_wet(start) and _moisture(context) is None:
        flags += ["no-moisture", *(("not-convertible",) if reason else ())]
        sentence = f"{entry.title} is printed as is, and the sheet gives no usable moisture to bring it to dry malt."
        return _unchanged(start, own, target, flags, sentence)

    way = _way(start, meaning, own, goal, context)
    result: Outcome | str = reason or ""
    if isinstance(way, str):
        result = way
    elif reason is None:
        result = _walk(start, meaning, own, way, crossing, target, context, check=True)
    if isinstance(result, Outcome):
        return replace(result, flags=(*flags, *result.flags), reason=assumed)
    return _kept(start, meaning, own, target, context, flags, f"{assumed} {result}" if assumed else result)


def _kept(
    start: Start, meaning: UnitMeaning, own: Family, target: Family, context: Context, flags: list[Flag], reason: str
) -> Outcome:
    """The figure on its own family, because no relation leads to the basis; in the printed unit if none to its own."""
    flags = [*flags, "not-convertible"]
    if start.parameter == RATIO:
        flags.append("nitrogen-ratio-offset-not-applied")
    way = _way(start, meaning, own, own, context)
    if isinstance(way, str):
        way = _Way((), _is_wet(start), (), start.unit, own)
    result = _walk(start, meaning, own, way, None, target, context, check=True)
    if isinstance(result, str):
        return _unchanged(start, own, target, flags, reason)
    return replace(result, flags=tuple(flags), reason=reason)


def _unchanged(start: Start, own: Family, target: Family, flags: list[Flag], reason: str) -> Outcome:
    return Outcome(
        parameter=start.parameter,
        value=start.value,
        unit=start.unit,
        family=own,
        flags=tuple(flags),
        method_offset=_offset(start, own, target, None),
        reason=reason,
    )


def _offset(start: Start, own: Family, target: Family, result: float | None) -> MethodOffset | None:
    if start.parameter != RATIO:
        return None
    return make_offset(own, target, None if result is None else round(result - start.value, max(start.decimals, 1)))


# ---------------------------------------------------------------- walking a way


class _Trail:
    """A value on its way: what it is now, what it was at each stop, and the error it carries."""

    def __init__(self, value: float, unit: str, family: Family) -> None:
        self.value = value
        self.shown = Quantity(value=value, unit=unit, family=family)
        self.steps: list[Step] = []
        self.spread = 0.0
        self.estimated = False

    def stop(self, link: Link | None, value: float, unit: str, family: Family, formula: str, source: str) -> None:
        """One change. ``link`` is None for the moisture basis."""
        if link is not None:
            self.spread = link.spread_after(self.spread, value, self.value)
            self.estimated = self.estimated or link.kind == "correlation"
        elif self.value:
            self.spread *= abs(value / self.value)
        self.value = value
        written = round_to_spread(value, self.spread) if self.estimated else round_exact(value)
        to = Quantity(value=written, unit=unit, family=family)
        kind: StepKind = "moisture-basis" if link is None else link.kind
        self.steps.append(make_step(kind, self.shown, to, formula, source))
        self.shown = to


def _walk(
    start: Start,
    meaning: UnitMeaning,
    own: Family,
    way: _Way,
    crossing: Link | None,
    target: Family,
    context: Context,
    *,
    check: bool,
) -> Outcome | str:
    """Takes the way. Returns a sentence where a relation on it does not hold for the value."""
    inputs = _inputs(context)
    trail = _Trail(start.value, start.unit, own)
    links = (*way.before, *([None] if way.moisture else []), *way.after, *([crossing] if crossing else []))
    last = len(links) - 1
    goal = target if crossing else way.family
    on_scales = parameters()[start.parameter].depends_on == "scale"
    for index, link in enumerate(links):
        unit = trail.shown.unit if link is None or link is crossing else link.end
        if index == last:
            unit = way.unit
        family = goal if index == last else (on_scales and family_of_unit(start.parameter, unit)) or own
        if link is None:
            moisture = inputs.moisture or 0.0
            value = dry_from_as_is(trail.value, moisture)
            formula = f"dry = as is ÷ (1 − M ÷ 100), M = {moisture:g} %"
            trail.stop(None, value, unit, family, formula, source_text("definition"))
            continue
        value = link.apply(trail.value, inputs)
        if check and not link.holds_for(trail.value, value):
            low, high = link.valid_range(inputs) or (0.0, 0.0)
            outside = f"{trail.value:.4g} {trail.shown.unit} lies outside {low:.4g} to {high:.4g}"
            return f"{parameters()[start.parameter].title}: {outside}, where {link.formula} holds."
        trail.stop(link, value, unit, family, link.explained(inputs), link.source)
    if not links and start.unit != way.unit:
        formula = f"{way.unit} = {start.unit}"
        rename = Quantity(value=start.value, unit=way.unit, family=goal)
        trail.steps.append(make_step("unit", trail.shown, rename, formula, source_text(meaning.source)))
    moved = bool(links)
    return Outcome(
        parameter=start.parameter,
        value=trail.shown.value if moved else start.value,
        unit=way.unit,
        family=goal,
        steps=tuple(trail.steps),
        flags=("nitrogen-ratio-offset-applied",) if crossing and start.parameter == RATIO else (),
        estimated=trail.estimated,
        spread=round_spread(trail.spread) if trail.spread else None,
        method_offset=_offset(start, own, target, trail.shown.value if crossing else None),
    )


def convert_alike(start: Start, outcome: Outcome, value: float, target: Family, context: Context) -> float | None:
    """Another number of the same row (a limit) in the unit and family that the figure ended in.

    A figure that stayed as printed leaves its limits as printed. Validity ranges are not asked: a limit may lie beyond
    them where the figure itself does not. None where the number cannot go the figure's way.
    """
    if not outcome.steps:
        return value
    start = replace(start, parameter=at_basis(start.parameter, start.basis), value=value)
    own = family_of_unit(start.parameter, start.unit) or start.family
    meaning = unit_meaning(start.parameter, start.unit, own, context.lovibond)
    here = wort_of(own, start.mash if own == start.family else None)
    kept = "not-convertible" in outcome.flags
    crossing, goal = None, own if kept else target
    if not kept and parameters()[start.parameter].depends_on == "mash" and here != wort_of(target, None):
        crossing, _ = _across(start, own, target, context)
        goal = own
    way = _way(start, meaning, own, goal, context)
    if isinstance(way, str):
        if not kept:
            return None
        way = _Way((), _is_wet(start), (), start.unit, own)
    result = _walk(start, meaning, own, way, crossing, target, context, check=False)
    return result.value if isinstance(result, Outcome) else None
