"""What holds for every number: there and back, monotony, no crossing between worts, a chain without gaps."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.meaning.convert import Context, Start, needs_basis, same_wort, to_basis
from importer.meaning.formulas import Inputs, as_is_from_dry, dry_from_as_is
from importer.meaning.relations import Link, Relation, family_of_unit, relations
from importer.models import FAMILIES, Family
from importer.vocabulary.parameters import parameters

GIVEN = Inputs(moisture=4.5, extract=81.0, density=1.034, plato=8.8)
RELATIONS = sorted(relations().values(), key=lambda r: r.id)
NUMBERS = sorted(name for name, p in parameters().items() if p.kind == "number")
EVERY_UNIT = sorted({u for p in parameters().values() for f in FAMILIES for u in p.printed_units[f]})


def in_range(relation: Relation, share: float) -> float:
    low, high = relation.valid or (0.1, 500.0)
    return low + share * (high - low)


@pytest.mark.parametrize("relation", [r for r in RELATIONS if not r.one_way], ids=lambda r: r.id)
@given(share=st.floats(0, 1))
def test_there_and_back(relation: Relation, share: float) -> None:
    value = in_range(relation, share)
    there = Link(relation).apply(value, GIVEN)
    back = Link(relation, backward=True).apply(there, GIVEN)
    # Plato and gravity go by two independent formulas that agree within 0.011 °P between 1 and 20 °P.
    tolerance = 0.05 if relation.id == "plato-gravity" else 1e-9 * max(1.0, abs(value))
    assert back == pytest.approx(value, abs=tolerance)


@pytest.mark.parametrize("relation", RELATIONS, ids=lambda r: r.id)
@given(shares=st.tuples(st.floats(0, 1), st.floats(0, 1)))
def test_more_stays_more(relation: Relation, shares: tuple[float, float]) -> None:
    low, high = sorted(in_range(relation, share) for share in shares)
    assert Link(relation).apply(low, GIVEN) <= Link(relation).apply(high, GIVEN)


@given(value=st.floats(0.01, 1000), moisture=st.floats(0.3, 14))
def test_moisture_basis_there_and_back(value: float, moisture: float) -> None:
    assert dry_from_as_is(as_is_from_dry(value, moisture), moisture) == pytest.approx(value, rel=1e-12)
    assert as_is_from_dry(value, moisture) < value


@given(
    name=st.sampled_from(NUMBERS),
    unit=st.sampled_from([*EVERY_UNIT, "", "nonsense"]),
    value=st.floats(-10, 1e5),
    family=st.sampled_from(FAMILIES),
    mash=st.sampled_from([None, "congress", "isothermal-65"]),
    basis=st.sampled_from([None, "dry", "as-is"]),
    target=st.sampled_from(FAMILIES),
    moisture=st.none() | st.floats(-5, 120),
    extract=st.none() | st.floats(-5, 120),
    estimates=st.booleans(),
    lovibond=st.sampled_from([None, "srm", "visual"]),
)
def test_whatever_is_printed(  # type: ignore[no-untyped-def]
    name, unit, value, family, mash, basis, target, moisture, extract, estimates, lovibond
) -> None:
    context = Context(moisture, extract, estimates=estimates, lovibond=lovibond)
    result = to_basis(Start(name, value, unit, family, mash, basis), target, context)
    entry = parameters()[result.parameter]
    correlated = any(step.kind == "correlation" for step in result.steps)
    assert math.isfinite(result.value)
    assert result.estimated is correlated
    assert estimates or not correlated
    if not result.steps:
        assert (result.value, result.unit) == (value, unit)
    else:
        assert result.steps[0].from_.value == value
        assert result.steps[-1].to.value == result.value
        assert all(a.to == b.from_ for a, b in zip(result.steps, result.steps[1:], strict=False))
    if not {"not-convertible", "no-moisture"} & set(result.flags):
        assert (result.unit, result.family) == (entry.units[target], target)
        own = family_of_unit(result.parameter, unit) or family
        apart = entry.depends_on == "mash" and not same_wort(own, mash if own == family else None, target)
        assert not apart or (correlated and name == "nitrogen_ratio"), "another wort without a relation"
        wet = basis == "as-is" and entry.basis == "dry" and entry.sibling is None and needs_basis(name, unit)
        assert not wet or "moisture-basis" in {step.kind for step in result.steps}
    else:
        assert result.reason


@pytest.mark.parametrize(
    ("name", "first", "second", "low", "high"),
    [
        ("nitrogen_ratio", "IoB", "EBC", 32, 46),
        ("diastatic_power", "EBC", "ASBC", 40, 800),
        ("diastatic_power", "EBC", "IoB", 40, 800),
        ("colour", "EBC", "ASBC", 1, 2000),
        ("extract_fine_dry", "EBC", "ASBC", 60, 88),
    ],
)
@given(share=st.floats(0, 1))
def test_basis_there_and_back_within_the_spread(
    name: str, first: Family, second: Family, low: float, high: float, share: float
) -> None:
    value = round(low + (0.01 + 0.98 * share) * (high - low), 1)
    there = to_basis(Start(name, value, parameters()[name].units[first], first), second, Context())
    assert there.family == second
    back = to_basis(Start(name, there.value, there.unit, second), first, Context())
    assert back.family == first
    assert abs(back.value - value) <= max(back.spread or 0.0, 0.01)
