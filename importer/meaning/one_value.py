"""One conversion by itself, for a brewer who has a number and two units."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from importer.meaning.formulas import Inputs, as_is_from_dry, dry_from_as_is
from importer.meaning.relations import Link, RatioRule, Relation, relations, shortest, source_text
from importer.meaning.rounding import round_exact, round_spread, round_to_spread
from importer.meaning.steps import make_step
from importer.meaning.tables import table
from importer.models import Quantity, Step, StepKind
from importer.vocabulary.nearest import did_you_mean
from importer.vocabulary.parameters import MoistureBasis

_BASIS = re.compile(
    r"[\s,(]*\b(?:(?P<dry>dry(?: basis| matter)?|d\.?b\.?|d\.?m\.?)|as[ -]is|as received)\)?\s*$", re.IGNORECASE
)
_OPTION = {
    "moisture": "the moisture in %",
    "extract": "the extract in % dry",
    "density": "the density in kg/L",
    "plato": "the wort strength in °P",
}


class ConversionError(ValueError):
    """A conversion that cannot be made; the message says why and what can be done."""


@dataclass(frozen=True, slots=True)
class Conversion:
    """One result with everything that stands behind it.

    ``exact`` is the value before rounding; ``spread`` is ± in ``unit``, None where nothing is known.
    """

    value: float
    exact: float
    unit: str
    topic: str
    steps: tuple[Step, ...]
    estimated: bool
    spread: float | None
    notes: tuple[str, ...] = ()

    @property
    def kind(self) -> StepKind:
        """The kind of the weakest step: a chain is no better than that."""
        order: tuple[StepKind, ...] = ("unit", "moisture-basis", "definition", "scale", "correlation")
        return max((step.kind for step in self.steps), key=order.index, default="unit")

    @property
    def formula(self) -> str:
        return "; ".join(step.formula for step in self.steps) or "the same unit"

    @property
    def source(self) -> str:
        return "; ".join(dict.fromkeys(step.source for step in self.steps)) or source_text("definition")


@dataclass(frozen=True, slots=True)
class _Unit:
    codes: tuple[str, ...]
    basis: MoistureBasis | None
    text: str


@cache
def _known_codes() -> frozenset[str]:
    return frozenset(code for r in relations().values() if r.routed for code in (r.from_, r.to))


def _fold(text: str) -> str:
    return " ".join(text.replace("º", "°").replace("˚", "°").replace("μ", "µ").split())


def _unit(text: str) -> _Unit:
    """What a brewer's spelling of a unit stands for. Raises ConversionError where it is ambiguous or unknown."""
    plain = _fold(text)
    names, ambiguous = table("conversions")["names"], table("conversions")["ambiguous"]
    if plain in ambiguous:
        raise ConversionError(ambiguous[plain])
    if plain.casefold() in names:
        return _Unit(tuple(names[plain.casefold()]), None, plain)
    if plain in _known_codes():
        return _Unit((plain,), None, plain)
    stated = _BASIS.search(plain)
    basis: MoistureBasis | None = None
    if stated and stated.start() > 0:
        basis = "dry" if stated["dry"] else "as-is"
        inner = _unit(plain[: stated.start()])
        return _Unit(inner.codes, basis, plain)
    from importer.vocabulary.units import parse_unit

    found = parse_unit(plain)
    if found is not None:
        if found.code in ambiguous:
            raise ConversionError(ambiguous[found.code])
        return _Unit((found.code,), found.basis, plain)
    codes = sorted(_known_codes())
    hint = did_you_mean(plain, codes) or f" It converts {', '.join(codes)}."
    raise ConversionError(f"{text!r} is not a unit that onebasis knows.{hint}")


def convert_value(
    value: float,
    unit_from: str,
    unit_to: str,
    *,
    moisture: float | None = None,
    extract: float | None = None,
    density: float | None = None,
    plato: float | None = None,
    ratio_rule: RatioRule = "published",
) -> list[Conversion]:
    """Every way in which the value can be restated in the other unit, the least doubtful first.

    ``moisture`` (% as is), ``extract`` (% dry), ``density`` (kg/L) and ``plato`` are used where a relation needs them.
    Raises ConversionError where a unit is unknown or ambiguous, no relation leads from one to the other, something that
    it needs is missing, or the value lies outside the range in which it holds.
    """
    if not math.isfinite(value):
        raise ConversionError("the value must be a number")
    if moisture is not None and not 0 <= moisture < 100:
        raise ConversionError("the moisture must lie between 0 and 100 %")
    if density is not None and density <= 0:
        raise ConversionError("the density must be above 0")
    start, end = _unit(unit_from), _unit(unit_to)
    inputs = Inputs(moisture=moisture, extract=extract, density=density, plato=plato)
    chosen = [r for r in relations().values() if r.routed and r.rule in (None, ratio_rule)]
    found: dict[tuple[str, ...], Conversion] = {}
    trouble: list[str] = []
    for path, topic in _paths(start, end, chosen, inputs.known()):
        try:
            found.setdefault(tuple(link.relation.id for link in path), _along(path, topic, value, start, end, inputs))
        except ConversionError as problem:
            trouble.append(str(problem))
    if found:
        return sorted(found.values(), key=lambda c: (c.estimated, len(c.steps)))
    raise ConversionError(trouble[0] if trouble else _hopeless(start, end, chosen))


def _paths(
    start: _Unit, end: _Unit, chosen: list[Relation], known: frozenset[str]
) -> Iterable[tuple[tuple[Link, ...], str]]:
    usable = [r for r in chosen if r.usable(known)]
    topics = dict.fromkeys(topic for r in chosen for topic in r.topics)
    for first in start.codes:
        for last in end.codes:
            if first == last:
                yield (), "moisture basis"
                continue
            for topic in topics:
                path = shortest(first, last, [r for r in usable if topic in r.topics])
                if path is not None:
                    yield path, topic


def _hopeless(start: _Unit, end: _Unit, chosen: list[Relation]) -> str:
    """Why there is no way, and where else one leads."""
    for first in start.codes:
        for last in end.codes:
            for topic in dict.fromkeys(t for r in chosen for t in r.topics):
                path = shortest(first, last, [r for r in chosen if topic in r.topics])
                missing = sorted({need for link in path or () for need in link.relation.needs})
                if missing:
                    return f"{start.text} to {end.text} needs {' and '.join(_OPTION[name] for name in missing)}."
    reach = sorted({unit for code in start.codes for unit in _reachable(code, chosen)} - set(start.codes))
    others = f" From {start.text} onebasis converts to {', '.join(reach)}." if reach else ""
    return f"No relation leads from {start.text} to {end.text}.{others}"


def _reachable(code: str, chosen: list[Relation]) -> set[str]:
    codes = {r.from_ for r in chosen} | {r.to for r in chosen}
    topics = dict.fromkeys(topic for r in chosen for topic in r.topics)
    return {
        other
        for other in codes
        for topic in topics
        if shortest(code, other, [r for r in chosen if topic in r.topics]) is not None
    }


def _along(path: tuple[Link, ...], topic: str, value: float, start: _Unit, end: _Unit, inputs: Inputs) -> Conversion:
    now = Quantity(value=value, unit=path[0].start if path else start.codes[0])
    steps: list[Step] = []
    spread, estimated, exact = 0.0, False, value
    notes: list[str] = []
    if start.basis and end.basis and start.basis != end.basis:
        if inputs.moisture is None:
            raise ConversionError(f"{start.text} to {end.text} needs {_OPTION['moisture']}.")
        to_dry = end.basis == "dry"
        exact = (dry_from_as_is if to_dry else as_is_from_dry)(exact, inputs.moisture)
        formula = "dry = as is ÷ (1 − M ÷ 100)" if to_dry else "as is = dry × (1 − M ÷ 100)"
        formula = f"{formula}, M = {inputs.moisture:g} %"
        then = Quantity(value=round_exact(exact), unit=now.unit)
        steps.append(make_step("moisture-basis", now, then, formula, source_text("definition")))
        now = then
    for link in path:
        try:
            result = link.apply(exact, inputs)
        except (ValueError, ZeroDivisionError, OverflowError):
            raise ConversionError(f"{link.formula} cannot take {exact:g} {link.start}.") from None
        if isinstance(result, complex) or not math.isfinite(result):
            raise ConversionError(f"{link.formula} cannot take {exact:g} {link.start}.")
        bounds = link.valid_range(inputs)
        if bounds is not None and not link.holds_for(exact, result):
            holds = f"{link.formula} holds from {bounds[0]:.4g} to {bounds[1]:.4g} {link.start}"
            raise ConversionError(f"{exact:g} {link.start} is outside: {holds}.")
        spread = link.spread_after(spread, result, exact)
        estimated = estimated or link.kind == "correlation"
        written = round_to_spread(result, spread) if estimated else round_exact(result, link.relation.decimals)
        then = Quantity(value=written, unit=link.end)
        steps.append(make_step(link.kind, now, then, link.explained(inputs), link.source))
        notes += [link.relation.note] if link.relation.note else []
        if bounds is not None:
            notes.append(f"Holds from {bounds[0]:.4g} to {bounds[1]:.4g} {link.start}.")
        exact, now = result, then
    return Conversion(
        value=now.value,
        exact=exact,
        unit=now.unit,
        topic=topic,
        steps=tuple(steps),
        estimated=estimated,
        spread=round_spread(spread) if spread else None,
        notes=tuple(dict.fromkeys(notes)),
    )
