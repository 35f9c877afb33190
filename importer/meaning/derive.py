"""Figures that a sheet does not print but that follow from those it prints (mappings/derived.toml).

A derived figure is never built on a limit, a range or a figure that is missing its moisture; it is accepted only if
everything it rests on is; and it stays on the mash of the figures it comes from.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from importer.errors import DataError
from importer.meaning.convert import RATIO, Context, Start, same_wort, to_basis
from importer.meaning.formulas import Inputs, as_is_from_dry, constants, dry_from_as_is, nitrogen_ratio
from importer.meaning.naming import in_a_sentence
from importer.meaning.possible import cereal_of, is_pale_barley, within_possible
from importer.meaning.relations import Link, relations, source_text
from importer.meaning.rounding import round_exact, round_spread, round_to_spread
from importer.meaning.steps import make_step
from importer.meaning.tables import table
from importer.models import Family, Figure, Flag, Mash, Quantity, State, Step, StepKind
from importer.vocabulary.parameters import parameters

FILE = "mappings/derived.toml"
FORMS: dict[str, Callable[..., float]] = {
    "as-is": as_is_from_dry,
    "dry": dry_from_as_is,
    "times": lambda value, constant: value * constant,
    "over": lambda value, constant: value / constant,
    "percent-of": nitrogen_ratio,
    "plus": lambda first, second: first + second,
    "minus": lambda first, second: first - second,
}
# A number of the size of a protein factor that stands alone, not within that of a chapter ("method 5.3.1").
_FACTOR = re.compile(r"(?<![\d.,])[56][.,]\d{1,2}(?![.,]?\d)")
UNUSABLE: frozenset[Flag] = frozenset({"no-moisture", "outside-possible", "check-failed"})


@dataclass(frozen=True, slots=True)
class Rule:
    """One way to a figure; see the head of the data file."""

    parameter: str
    inputs: tuple[str, ...]
    form: str
    constant: str | None
    factor_of: tuple[str, ...]
    not_cereals: frozenset[str]
    chain: tuple[Link, ...]
    between: tuple[str, ...]
    kind: StepKind
    formula: str
    source: str


@dataclass(frozen=True, slots=True)
class _Input:
    """A figure that a rule may use. ``exact`` is its value before rounding, where it was computed here."""

    figure: Figure
    exact: float


def _rule(raw: dict[str, Any]) -> Rule:
    try:
        names = (raw["parameter"], *raw["from"])
        unknown = [name for name in names if name not in parameters()]
        if unknown or (raw["form"] not in FORMS and raw["form"] != "relations"):
            raise DataError(f"{FILE}: rule for {raw['parameter']!r}: unknown {', '.join(unknown) or raw['form']}")
        backward = raw.get("backward", False)
        return Rule(
            parameter=raw["parameter"],
            inputs=tuple(raw["from"]),
            form=raw["form"],
            constant=raw.get("constant"),
            factor_of=tuple(raw.get("factor_of", ())),
            not_cereals=frozenset(raw.get("not_cereals", ())),
            chain=tuple(Link(relations()[name], backward=backward) for name in raw.get("chain", ())),
            between=tuple(raw.get("between", ())),
            kind=raw.get("kind", "correlation"),
            formula=raw.get("formula", ""),
            source=source_text(raw.get("source", "definition")),
        )
    except KeyError as missing:
        raise DataError(f"{FILE}: a rule has no {missing}, or names one that does not exist") from None


@cache
def rules() -> tuple[Rule, ...]:
    """All rules, in the order in which they are tried."""
    return tuple(_rule(raw) for raw in table("derived")["rule"])


def derive(figures: Sequence[Figure], target: Family, context: Context, mash: Mash | None = None) -> tuple[Figure, ...]:
    """The figures that follow from ``figures`` (already on the basis) and are not printed among them.

    ``mash`` is the mash of the sheet's EBC figures. A parameter that is printed, in whatever form, is never derived.
    """
    printed = {figure.parameter for figure in figures}
    stands = _stands(figures)
    found: dict[str, Figure] = {}
    arithmetic = [rule for rule in rules() if rule.form != "relations" and rule.parameter not in printed]
    for family, kept in stands:
        at_hand = _at_hand(figures, family, kept)
        # Twice, because one rule may supply what an earlier one needs.
        for rule in (*arithmetic, *arithmetic):
            if rule.parameter in found:
                continue
            result = _apply(rule, at_hand, family, kept, target, context, mash)
            if result is not None:
                found[rule.parameter] = result.figure
                if not result.figure.estimated:
                    at_hand[rule.parameter] = result
    known = (*figures, *found.values())
    for rule in rules():
        if rule.form == "relations" and rule.parameter not in printed and rule.parameter not in found:
            estimate = _estimate(rule, known, target, context, mash)
            if estimate is not None:
                found[rule.parameter] = estimate
    order = list(parameters())
    return tuple(sorted(found.values(), key=lambda figure: order.index(figure.parameter)))


# ---------------------------------------------------------------- what is at hand


def _usable(figure: Figure) -> bool:
    entry = parameters()[figure.parameter]
    return (
        figure.value is not None
        and figure.bound is None
        and figure.text is None
        and not UNUSABLE.intersection(figure.flags)
        and figure.unit == entry.units[figure.family]
    )


def _kept(figure: Figure) -> bool:
    return "not-convertible" in figure.flags


def _stands(figures: Iterable[Figure]) -> list[tuple[Family | None, bool]]:
    """The different worts among the figures: those on the basis first, then what could not be brought there."""
    found = dict.fromkeys(
        (figure.family, _kept(figure))
        for figure in figures
        if parameters()[figure.parameter].depends_on == "mash" and _usable(figure)
    )
    ordered: list[tuple[Family | None, bool]] = sorted(found, key=lambda stand: stand[1])
    return ordered or [(None, False)]


def _at_hand(figures: Iterable[Figure], family: Family | None, kept: bool) -> dict[str, _Input]:
    at_hand: dict[str, _Input] = {}
    for figure in figures:
        if not _usable(figure) or figure.value is None:
            continue
        depends = parameters()[figure.parameter].depends_on == "mash"
        if (figure.family == family and _kept(figure) == kept) if depends else not _kept(figure):
            at_hand.setdefault(figure.parameter, _Input(figure, figure.value))
    return at_hand


# ---------------------------------------------------------------- one rule


def _state(inputs: Sequence[Figure]) -> tuple[State, tuple[Flag, ...], tuple[str, ...]]:
    doubtful = [figure for figure in inputs if figure.state != "accepted"]
    if not doubtful:
        return "accepted", (), ()
    flags = tuple(dict.fromkeys(flag for figure in doubtful for flag in figure.flags))
    names = ", ".join(in_a_sentence(figure.parameter) for figure in doubtful)
    return "review", flags, (f"Computed from figures that are in review: {names}.",)


def _factor(rule: Rule, at_hand: dict[str, _Input], context: Context) -> float | None:
    """The rule's constant; for protein the factor of a printed pair or label, None where it must not be guessed."""
    if rule.constant is None:
        return None
    value: float = getattr(constants(), rule.constant)
    if not rule.factor_of:
        return value
    pair = [at_hand.get(name) for name in rule.factor_of]
    first, second = pair
    if first is not None and second is not None and first.figure.printed and second.figure.printed:
        return protein_factor(first.exact, second.exact)
    told = _factors_of_labels(at_hand[name].figure for name in (*rule.inputs, *rule.factor_of) if name in at_hand)
    if told:
        known = told & {constants().protein_factor, constants().protein_factor_wheat}
        return known.pop() if len(told) == len(known) == 1 else None
    return None if cereal_of(context.malt_class) in rule.not_cereals else value


def _factors_of_labels(figures: Iterable[Figure]) -> set[float]:
    """The protein factors that labels name, as in "Protein (N × 5.7)"."""
    labels = [f.printed.label for f in figures if f.printed is not None and "protein" in f.parameter]
    return {float(text.replace(",", ".")) for label in labels for text in _FACTOR.findall(label)}


def protein_factor(protein: float, nitrogen: float) -> float | None:
    """The factor that a printed pair of protein and nitrogen shows, None where it shows neither 6.25 nor 5.7."""
    c = constants()
    ratio = protein / nitrogen if nitrogen else 0.0
    if c.protein_factor_band[0] <= ratio <= c.protein_factor_band[1]:
        return c.protein_factor
    if c.protein_factor_wheat_band[0] <= ratio <= c.protein_factor_wheat_band[1]:
        return c.protein_factor_wheat
    return None


def _apply(
    rule: Rule,
    at_hand: dict[str, _Input],
    family: Family | None,
    kept: bool,
    target: Family,
    context: Context,
    mash: Mash | None,
) -> _Input | None:
    inputs = [at_hand[name] for name in rule.inputs if name in at_hand]
    if len(inputs) < len(rule.inputs):
        return None
    arguments = [item.exact for item in inputs]
    factor = _factor(rule, at_hand, context)
    if rule.constant is not None:
        if factor is None:
            return None
        arguments.append(factor)
    try:
        exact = FORMS[rule.form](*arguments)
    except ZeroDivisionError:
        return None
    entry = parameters()[rule.parameter]
    on_mash = entry.depends_on == "mash" and family is not None
    stand: Family = family if on_mash and family is not None else target
    unit = entry.units[stand]
    if within_possible(rule.parameter, unit, exact, context.malt_class) is False:
        return None
    first = inputs[0].figure
    shown = [f"{item.figure.value:g}" for item in inputs]
    start = Quantity(value=first.value or 0.0, unit=first.unit or "", family=first.family)
    end = Quantity(value=round_exact(exact), unit=unit, family=stand)
    formula = rule.formula.format(*shown, k=factor)
    figure = _figure(rule.parameter, inputs, end, make_step(rule.kind, start, end, formula, rule.source))
    if on_mash and kept:
        figure = figure.model_copy(update={"flags": tuple(dict.fromkeys(("not-convertible", *figure.flags)))})
    if rule.parameter == RATIO:
        figure = _ratio_on_basis(figure, exact, stand, target, context, mash)
    return _Input(figure, exact)


def _figure(parameter: str, inputs: Sequence[_Input], end: Quantity, step: Step) -> Figure:
    state, flags, reasons = _state([item.figure for item in inputs])
    return Figure.model_validate(
        {
            "parameter": parameter,
            "value": end.value,
            "unit": end.unit,
            "family": end.family,
            "state": state,
            "flags": flags,
            "reasons": reasons,
            "estimated": any(item.figure.estimated for item in inputs),
            "steps": (step,),
            "from": tuple(item.figure.parameter for item in inputs),
        }
    )


def _ratio_on_basis(
    figure: Figure, exact: float, family: Family, target: Family, context: Context, mash: Mash | None
) -> Figure:
    """The computed ratio with its method offset, as for a printed one."""
    start = Start(RATIO, round_exact(exact), "%", family, mash if family == "EBC" else None, decimals=2)
    outcome = to_basis(start, target, context)
    flags: list[Flag] = [flag for flag in figure.flags if flag != "not-convertible"]
    if "nitrogen-ratio-offset-applied" not in outcome.flags:
        flags.append("nitrogen-ratio-offset-not-applied")
    reasons = (*figure.reasons, *([outcome.reason] if outcome.reason else []))
    return figure.model_copy(
        update={
            "value": round_exact(outcome.value),
            "family": outcome.family,
            "flags": tuple(dict.fromkeys((*flags, *outcome.flags))),
            "reasons": reasons,
            "estimated": figure.estimated or outcome.estimated,
            "spread": outcome.spread,
            "steps": (*figure.steps, *outcome.steps),
            "method_offset": outcome.method_offset,
        }
    )


# ---------------------------------------------------------------- estimates between families


def _pale(figures: Iterable[Figure], context: Context) -> bool:
    """Whether nothing speaks against a pale barley malt: neither its class nor its colour."""
    limit = constants().pale_colour_limit
    if is_pale_barley(context.malt_class) is False or (context.colour is not None and context.colour > limit):
        return False
    to_ebc = {"EBC": 1.0, "°L": 1.97}
    colours = [f.value * to_ebc[f.unit] for f in figures if f.parameter == "colour" and f.value and f.unit in to_ebc]
    return all(colour <= limit for colour in colours)


def _estimate(
    rule: Rule, figures: Sequence[Figure], target: Family, context: Context, mash: Mash | None
) -> Figure | None:
    """A figure of another family by a chain of relations, where all of them hold."""
    if not context.estimates or target not in rule.between[1:] or not _pale(figures, context):
        return None
    if rule.between[0] == "EBC" and mash == "isothermal-65":
        return None
    source = next(
        (f for f in figures if f.parameter == rule.inputs[0] and f.family == rule.between[0] and _usable(f)), None
    )
    if source is None or source.value is None or not _kept(source) or same_wort(source.family, None, target):
        return None
    entry = parameters()[rule.parameter]
    value, spread = source.value, 0.0
    steps: list[Step] = []
    shown = Quantity(value=value, unit=source.unit or "", family=source.family)
    for number, link in enumerate(rule.chain):
        result = link.apply(value, Inputs())
        if not link.holds_for(value, result):
            return None
        spread = link.spread_after(spread, result, value)
        estimated = any(earlier.kind == "correlation" for earlier in rule.chain[: number + 1])
        last = number == len(rule.chain) - 1
        end = Quantity(
            value=round_to_spread(result, spread) if estimated else round_exact(result),
            unit=entry.units[target] if last else link.end.removesuffix(" EBC"),
            family=target if last or link.kind == "correlation" else source.family,
        )
        steps.append(make_step(link.kind, shown, end, link.formula, link.source))
        value, shown = result, end
    state, flags, reasons = _state([source])
    return Figure.model_validate(
        {
            "parameter": rule.parameter,
            "value": shown.value,
            "unit": shown.unit,
            "family": target,
            "state": state,
            "flags": tuple(flag for flag in flags if flag != "not-convertible"),
            "reasons": reasons,
            "estimated": True,
            "spread": round_spread(spread),
            "steps": tuple(steps),
            "from": rule.inputs,
        }
    )
