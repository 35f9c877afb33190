"""Arithmetic between the printed figures of one sheet (mappings/checks.toml).

A check that fails says that one of its figures is misread or that two bases are mixed; never which, so it names all.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import replace
from functools import cache, lru_cache
from typing import Any

from importer.errors import DataError
from importer.meaning.check_forms import FORMS, FORMULAS, CheckInput, Rule, Term, alarm, slack
from importer.meaning.formulas import Inputs
from importer.meaning.relations import Link, relations, shortest, source_text, unit_meaning, wort_of
from importer.meaning.standing import needs_basis
from importer.meaning.tables import table
from importer.models import Check
from importer.vocabulary.parameters import MoistureBasis, parameters

FILE = "mappings/checks.toml"

__all__ = ["CheckInput", "check_rules", "run_checks"]


def _rule(raw: dict[str, Any]) -> Rule:
    where = f"check {raw.get('check', raw)!r}"
    try:
        names = tuple(raw["parameters"])
        unknown = [name for name in names if name not in parameters()]
        if unknown:
            raise DataError(f"{FILE}: {where}: there is no parameter {', '.join(unknown)}")
        if raw["form"] not in FORMS or (raw["form"] == "equation" and raw["formula"] not in {*FORMULAS, "times"}):
            raise DataError(f"{FILE}: {where}: unknown form or formula")
        source_text(raw["source"])
        units = raw.get("units", {})
        return Rule(
            check=raw["check"],
            parameters=names,
            form=raw["form"],
            formula=raw.get("formula", ""),
            factors=tuple(raw.get("factors", ())),
            wheat_factors=tuple(raw.get("wheat_factors", ())),
            units=units if isinstance(units, dict) else {},
            pair=tuple(units) if isinstance(units, list) else (),
            alike=frozenset(raw.get("alike", ())),
            loose=raw.get("loose", False),
            across=raw.get("across", False),
            made_up_to_450_g=raw.get("made_up_to_450_g", False),
            families=tuple(raw.get("families", ())),
            bands=tuple((float(low), float(high)) for low, high in raw.get("bands", ())),
            limit=raw.get("limit"),
            limits=tuple(raw.get("limits", ())),
            tolerance=float(raw.get("tolerance", 0)),
            relative=float(raw.get("relative", 0)),
            relation=raw.get("relation"),
        )
    except KeyError as missing:
        raise DataError(f"{FILE}: {where} has no {missing}") from None


@cache
def check_rules() -> tuple[Rule, ...]:
    """All checks of the data file."""
    return tuple(_rule(raw) for raw in table("checks")["check"])


def run_checks(figures: Sequence[CheckInput], malt_class: str | None = None) -> tuple[Check, ...]:
    """Every check for which the sheet prints all figures, once for each set of figures that belong together."""
    usable = [figure for figure in figures if math.isfinite(figure.value)]
    found: dict[tuple[str, str], Check] = {}
    printed = {figure.parameter for figure in usable}
    for rule in check_rules():
        if not printed.issuperset(rule.parameters):
            continue
        for terms in _sets(rule, usable):
            verdict = FORMS[rule.form](rule, terms, malt_class)
            if verdict is not None:
                # One answer is enough to whether two figures exclude each other, however often they are printed.
                key = (rule.check, "" if rule.form == "not-both" else verdict[1])
                check = _check(rule.check, terms, *verdict)
                found[key] = check if key not in found or not check.holds else found[key]
    for first, second in itertools.combinations(usable, 2):
        twice = _printed_twice(first, second)
        if twice is not None:
            found.setdefault((twice.check, twice.detail), twice)
    return tuple(found.values())


def _check(name: str, terms: Sequence[Term], holds: bool, detail: str) -> Check:
    names = tuple(dict.fromkeys(term.source.parameter for term in terms))
    if not holds:
        detail += " One of them is misread, or two bases or mashes are mixed."
    return Check(check=name, parameters=names, holds=holds, detail=detail)


# ---------------------------------------------------------------- which figures belong together


@lru_cache(maxsize=1024)
def _path(parameter: str, start: str, end: str, loose: bool) -> tuple[Link, ...] | None:
    usable = [
        r
        for r in relations().values()
        if parameter in r.parameters and r.routed and r.between is None and not r.needs
        if loose or r.kind == "unit"
    ]
    return shortest(start, end, usable)


def _term(figure: CheckInput, unit: str | None, loose: bool) -> Term | None:
    half = 0.5 * 10.0**-figure.decimals
    if unit is None or unit == figure.unit:
        return Term(figure, figure.value, figure.unit, half)
    code = unit_meaning(figure.parameter, figure.unit, figure.family).code
    wanted = unit_meaning(figure.parameter, unit, figure.family).code or unit
    path = None if code is None else _path(figure.parameter, code, wanted, loose)
    if path is None:
        return None
    value, above = figure.value, figure.value + half
    for link in path:
        value, above = link.apply(value, Inputs()), link.apply(above, Inputs())
    return Term(figure, value, unit, abs(above - value))


def _basis(term: Term) -> MoistureBasis | None:
    name = term.source.parameter
    if not needs_basis(name, term.source.unit) or parameters()[name].sibling is not None:
        return None
    return term.source.basis or parameters()[name].basis


def _together(rule: Rule, terms: Sequence[Term]) -> bool:
    """One family and mash, one moisture basis, and one unit where the check asks for it."""
    on_mash = [t.source for t in terms if parameters()[t.source.parameter].depends_on == "mash"]
    worts = {wort_of(s.family, s.mash).name for s in on_mash}
    families = {s.family for s in on_mash}
    if not rule.families and (len(worts) > 1 or (len(families) > 1 and not rule.across)):
        return False
    bases = {basis for basis in map(_basis, terms) if basis is not None}
    if len(bases) > 1:
        return False
    return len({t.unit for t in terms if t.source.parameter in rule.alike}) <= 1


def _sets(rule: Rule, figures: Sequence[CheckInput]) -> list[tuple[Term, ...]]:
    wanted: list[tuple[str, str | None, str | None]]
    if rule.pair:
        wanted = [(rule.parameters[0], unit, None) for unit in rule.pair]
    elif rule.relation is not None:
        relation = relations()[rule.relation]
        wanted = [(rule.parameters[0], relation.from_, None), (rule.parameters[0], relation.to, None)]
    elif rule.families:
        names = rule.parameters if len(rule.parameters) == 2 else rule.parameters * 2
        wanted = [(n, rule.units.get(n), f) for n, f in zip(names, rule.families, strict=True)]
    else:
        wanted = [(name, rule.units.get(name), None) for name in rule.parameters]
    printed_units = bool(rule.pair) or rule.relation is not None
    columns: list[list[Term]] = []
    for name, unit, family in wanted:
        column = [
            term
            for figure in figures
            if figure.parameter == name and (family is None or figure.family == family)
            if not printed_units or _reads(figure, unit)
            if (term := _term(replace(figure, unit=unit) if printed_units and unit else figure, unit, rule.loose))
        ]
        columns.append(column)
    return [terms for terms in itertools.product(*columns) if _together(rule, terms)]


def _reads(figure: CheckInput, unit: str | None) -> bool:
    """Whether the figure is printed in this unit, under whichever of its names."""
    if figure.unit == unit:
        return True
    if figure.unit in ("°L", "°Lovibond"):
        return False
    return unit_meaning(figure.parameter, figure.unit, figure.family).code == unit


def _printed_twice(first: CheckInput, second: CheckInput) -> Check | None:
    """The same figure in two columns or units. None where the two need not agree."""
    if first.parameter != second.parameter:
        return None
    entry = parameters()[first.parameter]
    worts = [wort_of(figure.family, figure.mash) for figure in (first, second)]
    if entry.depends_on != "none" and (first.family != second.family or worts[0] != worts[1]):
        return None
    unit = entry.units[first.family]
    terms = [_term(figure, unit, False) for figure in (first, second)]
    if terms[0] is None or terms[1] is None or _basis(terms[0]) != _basis(terms[1]):
        return None
    a, b = terms[0], terms[1]
    tolerance = a.half + b.half + slack() + 0.005 * abs(a.value)
    holds = abs(a.value - b.value) <= alarm() * tolerance
    detail = f"{entry.title} is printed as {a.shown} and as {b.shown}."
    return _check("printed twice", (a, b), holds, detail)
