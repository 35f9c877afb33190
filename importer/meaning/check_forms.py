"""The forms of a check: what has to hold between its figures, and the sentence that shows the numbers."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from importer.meaning.formulas import Inputs, as_is_from_dry, constants, nitrogen_ratio, rounding_tolerance
from importer.meaning.naming import in_a_sentence
from importer.meaning.possible import cereal_of
from importer.meaning.relations import Link, relations, wort_of
from importer.meaning.tables import table
from importer.models import Family, Mash
from importer.vocabulary.parameters import MoistureBasis, parameters

FORMULAS: dict[str, Callable[..., float]] = {
    "as-is": as_is_from_dry,
    "percent-of": nitrogen_ratio,
    "minus": lambda first, second: first - second,
    "plus": lambda first, second: first + second,
    "equal-share": lambda total_protein, soluble, total: total_protein * soluble / total,
}
SIGNS = {
    "as-is": "{0} × (1 − {1} ÷ 100)",
    "percent-of": "100 × {0} ÷ {1}",
    "minus": "{0} − {1}",
    "plus": "{0} + {1}",
    "equal-share": "{0} × {1} ÷ {2}",
}


@dataclass(frozen=True, slots=True)
class CheckInput:
    """One plain printed number (no bound, no range) with what was understood about it. ``unit`` is a unit code."""

    parameter: str
    value: float
    unit: str
    decimals: int
    family: Family
    basis: MoistureBasis | None = None
    mash: Mash | None = None


@dataclass(frozen=True, slots=True)
class Term:
    """An input in the unit that the check works in. ``half`` is half a last digit there."""

    source: CheckInput
    value: float
    unit: str
    half: float

    @property
    def shown(self) -> str:
        unit = "" if self.unit in ("–", "pH") else f" {self.unit}"
        return f"{self.value:.6g}{unit}"


@dataclass(frozen=True, slots=True)
class Rule:
    """One check; see the head of the data file."""

    check: str
    parameters: tuple[str, ...]
    form: str
    formula: str
    factors: tuple[str, ...]
    wheat_factors: tuple[str, ...]
    units: dict[str, str]
    pair: tuple[str, ...]
    alike: frozenset[str]
    loose: bool
    across: bool
    made_up_to_450_g: bool
    families: tuple[str, ...]
    bands: tuple[tuple[float, float], ...]
    limit: float | None
    limits: tuple[float, ...]
    tolerance: float
    relative: float
    relation: str | None


def slack() -> float:
    """Added to every tolerance, because laboratories round before they compute."""
    return float(table("checks")["slack"])


def alarm() -> float:
    """A check fails beyond so many times the tolerance."""
    return float(table("checks")["alarm"])


Verdict = tuple[bool, str] | None


def _title(term: Term) -> str:
    return in_a_sentence(term.source.parameter)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def _equation(rule: Rule, terms: Sequence[Term], malt_class: str | None) -> Verdict:
    result, rest = terms[0], terms[1:]
    inputs = [(term.value, term.half) for term in rest]
    if rule.formula in ("percent-of", "equal-share") and rest[-1].value <= 2 * rest[-1].half:
        return None
    ways: list[tuple[Callable[..., float], str]]
    if rule.formula == "times":
        names = rule.factors + (rule.wheat_factors if cereal_of(malt_class) in (None, "wheat", "rye") else ())
        factors: list[float] = [getattr(constants(), name) for name in names]
        ways = [(lambda x, k=factor: k * x, f"{factor:g} × {{0}}") for factor in factors]
    else:
        ways = [(FORMULAS[rule.formula], SIGNS[rule.formula])]
    verdicts: list[tuple[bool, str]] = []
    for formula, signs in ways:
        expected = formula(*(value for value, _ in inputs))
        tolerance = rounding_tolerance(formula, inputs, result.half) + slack()
        text = signs.format(*(term.shown for term in rest))
        detail = f"{_title(result)} {result.shown} against {text} = {expected:.4g}, tolerance {tolerance:.2g}."
        verdicts.append((abs(result.value - expected) <= alarm() * tolerance, _sentence(detail)))
    return next((verdict for verdict in verdicts if verdict[0]), verdicts[0])


def _at_most(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    allowed = rule.tolerance + slack() + sum(term.half for term in terms)
    listed = ", ".join(f"{_title(term)} {term.shown}" for term in terms)
    if rule.limit is not None:
        total = sum(term.value for term in terms)
        return total <= rule.limit + allowed, _sentence(f"{listed}: together {total:.4g}, at most {rule.limit:g}.")
    low, high = terms[0], terms[1]
    detail = f"{_title(low)} {low.shown} is not to be above {_title(high)} {high.shown}."
    return low.value <= high.value + allowed, _sentence(detail)


def _sum(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    total = sum(term.value for term in terms)
    allowed = rule.tolerance + 2 * sum(term.half for term in terms)
    listed = " + ".join(term.shown for term in terms)
    limit = rule.limit or 0.0
    return abs(total - limit) <= allowed, f"{listed} = {total:.4g}, expected {limit:g} ± {allowed:.2g}."


def _in_bands(rule: Rule, low: float, high: float) -> bool:
    return any(low <= band[1] and high >= band[0] for band in rule.bands)


def _share(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    part, whole = terms
    if whole.value <= 0:
        return None
    share = nitrogen_ratio(part.value, whole.value)
    detail = f"{_title(part)} {part.shown} is {share:.3g} % of {_title(whole)} {whole.shown}."
    return _in_bands(rule, share, share), _sentence(detail)


def _quotient(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    first, second = terms
    if rule.made_up_to_450_g and not wort_of(first.source.family, first.source.mash).made_up_to_450_g:
        return None
    if second.value <= second.half or first.source == second.source:
        return None
    low = (first.value - first.half) / (second.value + second.half)
    high = (first.value + first.half) / (second.value - second.half)
    expected = " or ".join(f"{band[0]:g} to {band[1]:g}" for band in rule.bands)
    detail = f"{_title(first)} {first.shown} ÷ {second.shown} = {first.value / second.value:.3g}, expected {expected}."
    return _in_bands(rule, low, high), _sentence(detail)


def _relation(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    first, second = terms
    link = Link(relations()[rule.relation or ""])
    expected = link.apply(first.value, Inputs())
    if not link.holds_for(first.value, expected) or second.value <= 0:
        return None
    carried = abs(link.apply(first.value + first.half, Inputs()) - expected)
    allowed = rule.relative * abs(expected) + second.half + carried
    computed = f"{expected:.4g} {second.unit} by {link.formula}"
    detail = f"{_title(first)} {first.shown} makes {computed}, printed {second.shown}."
    return abs(second.value - expected) <= allowed, _sentence(detail)


def _apart(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    first, second = terms
    if wort_of(second.source.family, second.source.mash) != wort_of(second.source.family, None):
        return None
    gap = second.value - first.value
    families = f"{first.source.family} {first.shown}, {second.source.family} {second.shown}"
    expected = " or ".join(f"{band[0]:g} to {band[1]:g}" for band in rule.bands)
    return _in_bands(rule, gap, gap), _sentence(f"{_title(second)}: {families}, {gap:.3g} apart, expected {expected}.")


def _not_both(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    above = [term.value > limit for term, limit in zip(terms, rule.limits, strict=True)]
    listed = " and ".join(f"{_title(term)} {term.shown}" for term in terms)
    return not all(above), _sentence(f"{listed} of one malt.")


def _spirit(rule: Rule, terms: Sequence[Term], _: str | None) -> Verdict:
    """Only the basis that the sheet states can fail: a yield as is may stand beside a dry extract."""
    result, rest = terms[0], terms[1:]
    fermentable = rest[0].value if len(rest) == 1 else rest[0].value * rest[1].value / 100
    expected = fermentable * constants().spirit_factor
    holds = abs(result.value - expected) <= rule.tolerance + result.half
    basis = parameters()[rest[0].source.parameter].basis
    if not holds and (basis is None or result.source.basis != basis):
        return None
    signs = " × ".join(term.shown for term in rest)
    return holds, _sentence(f"{_title(result)} {result.shown} against {signs} × 6.06 = {expected:.4g}.")


FORMS: dict[str, Callable[[Rule, Sequence[Term], str | None], Verdict]] = {
    "equation": _equation,
    "at-most": _at_most,
    "sum": _sum,
    "share": _share,
    "quotient": _quotient,
    "relation": _relation,
    "apart": _apart,
    "not-both": _not_both,
    "spirit": _spirit,
}
