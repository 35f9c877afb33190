"""Ideas to parameters: the rules of mappings/label_rules.toml, and what unit and value say for or against each."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from importer.errors import DataError
from importer.meaning.tables import table
from importer.models import Family, Mash
from importer.vocabulary.lexicon import Ideas, concepts
from importer.vocabulary.nearest import did_you_mean
from importer.vocabulary.parameters import Parameter, parameters
from importer.vocabulary.units import Unit


@dataclass(frozen=True, slots=True)
class Rule:
    """One [[rule]] of the file; ``number`` is its place there."""

    number: int
    parameter: str | None
    as_is: str | None
    needs: tuple[Ideas, ...]
    named: Ideas
    unless: Ideas
    families: frozenset[str]
    units: frozenset[str]
    doubt: str
    why: str
    alone: bool
    default: bool
    ordinary: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Twins:
    """Parameters whose values a label of this one may really have."""

    twins: tuple[str, ...]
    switch: bool


@dataclass(frozen=True, slots=True)
class Rules:
    """The rules of mappings/label_rules.toml, checked."""

    rules: tuple[Rule, ...]
    twins: dict[str, Twins]
    families: dict[str, Family]
    mashes: dict[str, Mash]
    doubts: dict[str, str]
    doubts_of_labels: dict[str, str]


@dataclass(frozen=True, slots=True)
class Candidate:
    """A parameter that a label can mean. ``fit`` adds up what unit and value say; ``against`` is True where one of
    them speaks against it, ``backed`` where one speaks for it that not every parameter shares."""

    parameter: str | None
    rule: Rule
    ideas: Ideas
    fit: int = 0
    against: bool = False
    backed: bool = False


_FIELDS = {"parameter", "as_is", "needs", "also", "unless", "families", "units", "doubt", "why", "alone", "default"} | {
    "ordinary"
}


@cache
def rules() -> Rules:
    """The rules of mappings/label_rules.toml. Raises DataError where one names an idea or a parameter that is none."""
    raw = table("label_rules")
    every = tuple(read_rule(number, entry) for number, entry in enumerate(raw["rule"], 1))
    twins = {entry["parameter"]: Twins(tuple(entry["twins"]), bool(entry.get("switch"))) for entry in raw["twins"]}
    return Rules(
        every, twins, dict(raw["families"]), dict(raw["mashes"]), dict(raw["doubts"]), dict(raw["doubts_of_labels"])
    )


def read_rule(number: int, raw: dict[str, Any]) -> Rule:
    """A [[rule]] of the file, its number in it. Raises DataError where a name in it leads nowhere."""
    where = f"mappings/label_rules.toml: rule {number} ({raw.get('parameter', raw.get('why', ''))})"
    unknown = raw.keys() - _FIELDS
    if unknown:
        raise DataError(f"{where}: {', '.join(sorted(unknown))} is not a part of a rule")
    needs = tuple(frozenset(need.split("|")) for need in raw.get("needs", ()))
    named = frozenset(raw.get("also", ())).union(*needs)
    unless = frozenset(raw.get("unless", ()))
    known = concepts()
    for idea in named | unless:
        if idea not in known:
            near = did_you_mean(idea, known.names())
            raise DataError(f"{where}: {idea} is not an idea of mappings/concepts.toml.{near}")
    for name in (raw.get("parameter"), raw.get("as_is")):
        if name is not None and name not in parameters():
            raise DataError(f"{where}: {name} is not a parameter")
    ordinary = raw.get("ordinary")
    if not needs:
        raise DataError(f"{where} needs nothing")
    return Rule(
        number=number,
        parameter=raw.get("parameter"),
        as_is=raw.get("as_is"),
        needs=needs,
        named=named,
        unless=unless,
        families=frozenset(raw.get("families", ())),
        units=frozenset(raw.get("units", ())),
        doubt=raw.get("doubt", ""),
        why=raw.get("why", ""),
        alone=bool(raw.get("alone")),
        default=bool(raw.get("default")),
        ordinary=(float(ordinary[0]), float(ordinary[1])) if ordinary else None,
    )


@lru_cache(maxsize=8192)
def fitting(ideas: Ideas, family: Family | None) -> tuple[Rule, ...]:
    """The rules that a set of ideas satisfies best. Rules of another family count only where no other rule holds."""
    known = concepts()
    plain = ideas & known.plain
    foreign = frozenset(idea for idea in ideas if idea in known.foreign)
    found: list[Rule] = []
    for rule in rules().rules:
        if rule.alone and plain:
            continue
        if not all(need & ideas for need in rule.needs):
            continue
        if (plain - rule.named) or (foreign - rule.named) or (rule.unless & ideas):
            continue
        found.append(rule)
    if not found:
        return ()
    most = max(len(rule.needs) for rule in found)
    best = [rule for rule in found if len(rule.needs) == most]
    if family is not None:
        best = [rule for rule in best if not rule.families or family in rule.families] or best
    return tuple(best)


# ---------------------------------------------------------------------------------------------- unit and value


@lru_cache(maxsize=512)
def unit_codes(name: str) -> frozenset[str]:
    """All unit codes that a parameter is printed in."""
    entry = parameters()[name]
    printed = {code for codes in entry.printed_units.values() for code in codes}
    return frozenset(printed | set(entry.units.values()) | set(entry.possible))


def unit_fits(name: str, unit: Unit | None, rule: Rule | None = None) -> bool | None:
    """Whether a parameter is printed in the unit; None where there is no unit or it says nothing."""
    if unit is None or parameters()[name].kind == "text":
        return None
    if rule is not None and rule.units:
        return unit.code in rule.units
    return unit.code in unit_codes(name)


def possible(name: str, unit: Unit | None, value: float | None) -> bool | None:
    """Whether a value can be one of the parameter's; None where nothing is known."""
    if value is None:
        return None
    entry = parameters()[name]
    ranges = _ranges(entry, unit)
    return any(low <= value <= high for low, high in ranges) if ranges else None


def _ranges(entry: Parameter, unit: Unit | None) -> list[tuple[float, float]]:
    if unit is not None:
        found = entry.possible.get(unit.code)
        return [found] if found else []
    return [entry.possible[code] for code in set(entry.units.values()) if code in entry.possible]


def is_ordinary(rule: Rule, value: float | None) -> bool:
    """False where the value lies outside the range in which the rule reads its label with certainty."""
    return rule.ordinary is None or value is None or rule.ordinary[0] <= value <= rule.ordinary[1]


def weigh(candidate: Candidate, unit: Unit | None, value: float | None) -> Candidate:
    """A candidate with what unit and value say of it."""
    name = candidate.parameter
    if name is None:
        return candidate
    by_unit = unit_fits(name, unit, candidate.rule)
    by_value = possible(name, unit, value)
    if by_value and not is_ordinary(candidate.rule, value):
        by_value = False
    fit = sum((1 if said else -1) for said in (by_unit, by_value) if said is not None)
    backed = (by_unit is True and unit is not None and unit.code != "%") or (by_unit is not False and by_value is True)
    return Candidate(
        name,
        candidate.rule,
        candidate.ideas,
        fit,
        by_unit is False or by_value is False,
        backed and by_value is not False,
    )


def twin(name: str, unit: Unit | None, value: float | None) -> tuple[str, bool] | None:
    """The parameter whose value a row really has where it is impossible for ``name``, and whether to take it."""
    known = rules().twins.get(name)
    if known is None or value is None or possible(name, unit, value) is not False:
        return None
    for other in known.twins:
        if possible(other, unit, value) and unit_fits(other, unit) is not False:
            return other, known.switch
    return None
