"""The relations of mappings/conversions.toml, ready for use in either direction."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from math import hypot
from typing import Any, Literal, get_args

from importer.errors import DataError
from importer.meaning.formulas import NAMED, Inputs, wort_volume
from importer.meaning.tables import table
from importer.models import Family, Mash, StepKind

RatioRule = Literal["published", "plus-five"]
FILE = "mappings/conversions.toml"


@dataclass(frozen=True, slots=True)
class Source:
    """Where a relation comes from. ``text`` is what stands in a step."""

    id: str
    title: str
    kind: str
    year: int | None = None

    @property
    def text(self) -> str:
        year = f", {self.year}" if self.year else ""
        kind = f" ({self.kind})" if self.kind in ("common practice, no source", "from memory") else ""
        return f"{self.title}{year}{kind}"


@cache
def sources() -> dict[str, Source]:
    """All sources by id."""
    return {k: Source(k, v["title"], v["kind"], v.get("year")) for k, v in table("sources").items()}


def source_text(name: str) -> str:
    """What to print for a source id."""
    try:
        return sources()[name].text
    except KeyError:
        raise DataError(f"mappings/sources.toml has no entry {name!r}") from None


@dataclass(frozen=True, slots=True)
class Relation:
    """One relation between two units, as in the data file; see the head of the file for every field."""

    id: str
    kind: StepKind
    topics: tuple[str, ...]
    from_: str
    to: str
    factor: float
    offset: float
    named: str | None
    formula: str
    inverse: str
    one_way: bool
    parameters: frozenset[str]
    families: frozenset[str]
    between: tuple[str, str] | None
    rule: str | None
    valid: tuple[float, float] | None
    pale_barley: bool
    only_450_g: bool
    needs: frozenset[str]
    lacks: frozenset[str]
    relative_spread: float
    absolute_spread: float
    source: str
    inverse_source: str
    note: str
    routed: bool
    decimals: int

    def usable(self, known: frozenset[str]) -> bool:
        """Whether what it needs is known (and, for a makeshift, whether the better way is closed)."""
        return self.needs <= known and (not self.lacks or not self.lacks <= known)


@dataclass(frozen=True, slots=True)
class Link:
    """A relation used in one direction."""

    relation: Relation
    backward: bool = False

    @property
    def start(self) -> str:
        return self.relation.to if self.backward else self.relation.from_

    @property
    def end(self) -> str:
        return self.relation.from_ if self.backward else self.relation.to

    @property
    def kind(self) -> StepKind:
        return self.relation.kind

    @property
    def formula(self) -> str:
        return self.relation.inverse if self.backward else self.relation.formula

    @property
    def source(self) -> str:
        return source_text(self.relation.inverse_source if self.backward else self.relation.source)

    def explained(self, inputs: Inputs) -> str:
        """The formula with the sheet's own numbers, where it uses any."""
        if "moisture" in self.relation.needs and inputs.extract is not None and inputs.moisture is not None:
            volume = wort_volume(inputs.extract, inputs.moisture)
            return f"{self.formula} = {volume:.1f}, M = {inputs.moisture:g} %"
        return self.formula

    def apply(self, value: float, inputs: Inputs) -> float:
        """The value in the unit at the end. Raises ValueError where the formula cannot take it."""
        relation = self.relation
        if relation.named is None:
            if self.backward:
                return (value - relation.offset) / relation.factor
            return relation.factor * value + relation.offset
        forward, back = NAMED[relation.named]
        formula = back if self.backward else forward
        if formula is None:
            raise ValueError(f"{relation.id} cannot be turned round")
        return formula(value, inputs)

    def holds_for(self, value: float, result: float) -> bool:
        """Whether the value lies where the relation is known to hold. ``result`` is the value after the link."""
        valid = self.relation.valid
        if valid is None:
            return True
        tested = result if self.backward else value
        slack = 1e-6 * max(1.0, abs(valid[1]))
        return valid[0] - slack <= tested <= valid[1] + slack

    def valid_range(self, inputs: Inputs) -> tuple[float, float] | None:
        """The valid range in the unit at the start of the link."""
        valid = self.relation.valid
        if valid is None or not self.backward:
            return valid
        ends = Link(self.relation).apply(valid[0], inputs), Link(self.relation).apply(valid[1], inputs)
        return min(ends), max(ends)

    def spread_after(self, before: float, result: float, value: float) -> float:
        """± of the result: what the value carried already, and what this relation adds, as independent errors."""
        relation = self.relation
        slope = 1.0
        if relation.named is None:
            slope = 1 / relation.factor if self.backward else relation.factor
        elif value:
            slope = result / value
        own = relation.relative_spread * abs(result)
        own += relation.absolute_spread * (abs(slope) if self.backward else 1.0)
        return hypot(slope * before, own)


def _number(raw: Any, where: str) -> float:
    if isinstance(raw, list):
        if len(raw) != 2:
            raise DataError(f"{FILE}: {where}: a factor is a number or [a, b] for a ÷ b")
        return float(raw[0]) / float(raw[1])
    return float(raw)


def _pair(raw: Any) -> tuple[float, float] | None:
    return None if raw is None else (float(raw[0]), float(raw[1]))


def _relation(raw: dict[str, Any]) -> Relation:
    where = f"relation {raw.get('id', raw)!r}"
    try:
        named = raw.get("named")
        if named is not None and named not in NAMED:
            raise DataError(f"{FILE}: {where}: there is no formula named {named!r}")
        if raw["kind"] not in get_args(StepKind):
            raise DataError(f"{FILE}: {where}: kind must be one of {', '.join(get_args(StepKind))}")
        one_way = raw.get("one_way", False)
        spread = raw.get("spread", {})
        between = raw.get("between")
        relation = Relation(
            id=raw["id"],
            kind=raw["kind"],
            topics=tuple(raw["topics"]),
            from_=raw["from"],
            to=raw["to"],
            factor=1.0 if named else _number(raw["factor"], where),
            offset=float(raw.get("offset", 0)),
            named=named,
            formula=raw["formula"],
            inverse="" if one_way else raw["inverse"],
            one_way=one_way,
            parameters=frozenset(raw.get("parameters", ())),
            families=frozenset(raw.get("families", ())),
            between=None if between is None else (between[0], between[1]),
            rule=raw.get("rule"),
            valid=_pair(raw.get("valid")),
            pale_barley=raw.get("pale_barley", False),
            only_450_g=raw.get("only_450_g", False),
            needs=frozenset(raw.get("needs", ())),
            lacks=frozenset(raw.get("lacks", ())),
            relative_spread=float(spread.get("relative", 0)),
            absolute_spread=float(spread.get("absolute", 0)),
            source=raw["source"],
            inverse_source=raw.get("inverse_source", raw["source"]),
            note=raw.get("note", ""),
            routed=raw.get("routed", True),
            decimals=raw.get("decimals", 0),
        )
    except KeyError as missing:
        raise DataError(f"{FILE}: {where} has no {missing}") from None
    source_text(relation.source)
    return relation


def check_topics(relation: Relation, known: Iterable[str]) -> None:
    """Raises DataError for a topic that is not listed: misspelt, it would cut the relation off from all others."""
    known = sorted(known)
    for topic in relation.topics:
        if topic not in known:
            raise DataError(
                f"{FILE}: relation {relation.id!r}: there is no topic {topic!r}. "
                f"Use one of [topics] or add it there: {'; '.join(known)}"
            )


@cache
def relations() -> dict[str, Relation]:
    """All relations by id."""
    raw = table("conversions")
    found = [_relation(entry) for entry in raw["relation"]]
    for relation in found:
        check_topics(relation, raw["topics"])
    return {relation.id: relation for relation in found}


def links(chosen: Iterable[Relation]) -> dict[str, list[Link]]:
    """The links that start at each unit."""
    found: dict[str, list[Link]] = {}
    for relation in chosen:
        found.setdefault(relation.from_, []).append(Link(relation))
        if not relation.one_way:
            found.setdefault(relation.to, []).append(Link(relation, backward=True))
    return found


def shortest(start: str, end: str, chosen: Iterable[Relation]) -> tuple[Link, ...] | None:
    """The chain of links from one unit to another with the fewest correlations, then the fewest links."""
    if start == end:
        return ()
    graph = links(chosen)
    best: dict[str, tuple[tuple[int, int], tuple[Link, ...]]] = {start: ((0, 0), ())}
    todo = [start]
    while todo:
        unit = min(todo, key=lambda u: best[u][0])
        todo.remove(unit)
        if unit == end:
            return best[unit][1]
        (correlations, steps), path = best[unit]
        for link in graph.get(unit, ()):
            cost = (correlations + (link.kind == "correlation"), steps + 1)
            if link.end not in best or cost < best[link.end][0]:
                best[link.end] = (cost, (*path, link))
                todo.append(link.end)
    return None


# ---------------------------------------------------------------- worts and printed units


@dataclass(frozen=True, slots=True)
class Wort:
    """A mash, whichever families report from it."""

    name: str
    title: str
    made_up_to_450_g: bool


@cache
def _worts() -> dict[tuple[str, str | None], Wort]:
    found: dict[tuple[str, str | None], Wort] = {}
    for raw in table("conversions")["wort"]:
        wort = Wort(raw["name"], raw["title"], raw["made_up_to_450_g"])
        for family, mash in raw["stands"]:
            found[(family, mash)] = wort
        for family in raw["default_of"]:
            found[(family, None)] = wort
    return found


def wort_of(family: Family, mash: Mash | None) -> Wort:
    """The wort that a family's figures are measured on; its ordinary one where the sheet names no mash."""
    known = _worts().get((family, mash))
    return known or Wort(f"{family}/{mash}", f"{family} with a {mash} mash", made_up_to_450_g=False)


@dataclass(frozen=True, slots=True)
class UnitMeaning:
    """What a printed unit stands for on its row. ``code`` is None where that cannot be told; ``why`` says why."""

    code: str | None
    assumed: bool = False
    why: str | None = None
    source: str = "definition"


@cache
def unit_meaning(parameter: str, unit: str, family: Family, lovibond: str | None = None) -> UnitMeaning:
    """Settles a unit code that means different things on different rows ("°L", "ppm", "lb/bu")."""
    for raw in table("conversions")["reading"]:
        if (
            unit in raw["units"]
            and parameter in raw.get("parameters", (parameter,))
            and family in raw.get("families", (family,))
            and raw.get("lovibond", lovibond) == lovibond
        ):
            source = raw.get("source", "definition")
            return UnitMeaning(raw.get("means"), raw.get("assumed", False), raw.get("why"), source)
    return UnitMeaning(unit)


@cache
def family_of_unit(parameter: str, unit: str) -> Family | None:
    """The family that a figure in this unit stands on, whatever the sheet as a whole stands on."""
    for raw in table("conversions")["unit_family"]:
        if parameter in raw["parameters"]:
            family: Family | None = raw["units"].get(unit)
            return family
    return None


@cache
def wort_units() -> frozenset[str]:
    """Units of a volume of wort, in which moisture plays no part."""
    return frozenset(table("conversions")["wort_units"]["codes"])
