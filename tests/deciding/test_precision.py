"""The scatter of methods and critical differences, against published examples; sources stand beside each check."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.deciding.ground import Reading, ground_of
from importer.deciding.precision import (
    against_a_value,
    between_months,
    precisions,
    scatter,
)
from importer.meaning.formulas import critical_difference
from importer.meaning.relations import sources
from importer.models import Family
from importer.vocabulary.parameters import parameters

POSITIVE = st.floats(0.001, 1000)


def reading(parameter: str, value: float, unit: str, family: Family = "EBC") -> Reading:
    return Reading(ground_of(parameter, unit, family), value, family)


def test_two_laboratories_single_results() -> None:
    """ISO 5725-6: with one result each the critical difference is R. Final attenuation, Mschr. Brauwiss. 52 (1999) 94:
    r95 = 0.5, R95 = 2.9."""
    assert critical_difference(0.5, 2.9) == pytest.approx(2.9, abs=0.001)


def test_two_laboratories_means_of_two() -> None:
    """ISO 5725-6, formula from memory: √(2.9² − 0.5²(1 − 1/4 − 1/4)) = 2.88."""
    assert critical_difference(0.5, 2.9, 2, 2) == pytest.approx(2.88, abs=0.01)


def test_against_a_fixed_value_the_scatter_is_smaller() -> None:
    """ISO 5725-6, from memory: a value without scatter of its own divides the critical difference by √2."""
    at = reading("final_attenuation", 83.9, "%")
    two, one = scatter(at, "same-laboratory"), against_a_value(at)
    assert two is not None
    assert one is not None
    assert one.allowance == pytest.approx(two.allowance / math.sqrt(2))


@given(POSITIVE, POSITIVE, st.integers(1, 20), st.integers(1, 20))
def test_critical_difference_is_the_same_from_either_side_and_falls_with_more_results(
    r: float, more: float, n1: int, n2: int
) -> None:
    big = r + more
    one = critical_difference(r, big, n1, n2)
    assert one == pytest.approx(critical_difference(r, big, n2, n1))
    assert one <= critical_difference(r, big) + 1e-9


@given(POSITIVE, POSITIVE)
def test_between_months_lies_between_repeatability_and_reproducibility(r: float, more: float) -> None:
    assert r - 1e-9 <= between_months(r, r + more) <= r + more + 1e-9


# Each row: parameter, unit, family, result, r95, R95, all as printed by the source.
PUBLISHED = [
    # joint IoB/EBC trial of soluble nitrogen by Dumas, J. Inst. Brew.
    ("soluble_nitrogen", "%", "EBC", 0.70, 0.047, 0.136),
    ("soluble_nitrogen", "%", "IoB", 0.62, 0.039, 0.144),
    # EBC Analysis Committee, combustion of barley and malt, abstract: r95 and R95 over 1.23 to 1.86 % of dry matter
    ("total_nitrogen", "%", "EBC", 1.25, 0.063, 0.116),
    ("total_nitrogen", "%", "IoB", 1.85, 0.063, 0.116),
    # Hagen and Schwarz, Mschr. Brauwiss. 52 (1999) 94
    ("final_attenuation", "%", "EBC", 83.9, 0.5, 2.9),
    # Angelino, Mschr. Brauwiss. 53 (2000) 54–55
    ("boiled_colour", "EBC", "EBC", 4.7, 0.33, 1.12),
    ("boiled_colour", "EBC", "EBC", 5.2, 0.42, 1.44),
    ("boiled_colour", "EBC", "EBC", 8.9, 0.44, 2.25),
    # precision of Analytica-EBC as an assay supplier quotes it: ends of the range
    ("diastatic_power", "WK", "EBC", 200, 14, 51),
    ("diastatic_power", "WK", "EBC", 600, 28, 110),
]


@pytest.mark.parametrize(("parameter", "unit", "family", "value", "r", "big"), PUBLISHED)
def test_published_precision(parameter: str, unit: str, family: Family, value: float, r: float, big: float) -> None:
    at = reading(parameter, value, unit, family)
    apart = scatter(at, "other-laboratory")
    alike = scatter(at, "same-laboratory")
    assert apart is not None
    assert alike is not None
    assert apart.allowance == pytest.approx(big)
    assert alike.allowance == pytest.approx(math.sqrt((r**2 + big**2) / 2))
    assert not apart.outside


def test_precision_of_the_ratio_follows_from_that_of_soluble_nitrogen() -> None:
    """At 1.6 % total nitrogen the published R95 of soluble nitrogen, 0.136 %, is 8.5 points of the ratio."""
    found = scatter(reading("nitrogen_ratio", 42, "%"), "other-laboratory")
    assert found is not None
    assert found.allowance == pytest.approx(100 * 0.136 / 1.6, abs=0.05)


def test_a_method_that_has_its_own_precision_needs_to_be_printed() -> None:
    """NIR has a wider scatter than the oven (Angelino, MBAA Tech. Q. 33 (1996) 170–172)."""
    at = reading("moisture", 4.1, "%")
    oven = scatter(at, "other-laboratory")
    nir = scatter(at, "other-laboratory", method="NIR")
    assert oven is not None
    assert nir is not None
    assert nir.allowance == pytest.approx(1.3)
    assert oven.allowance < nir.allowance


def test_what_lies_outside_the_trial_is_said() -> None:
    found = scatter(reading("boiled_colour", 30, "EBC"), "other-laboratory")
    assert found is not None
    assert found.outside


def test_nothing_is_known_of_homogeneity() -> None:
    assert scatter(reading("homogeneity", 98, "%"), "same-laboratory") is None


def test_every_entry_names_a_source_and_a_unit_of_its_parameter() -> None:
    for entry in precisions():
        assert entry.source in sources()
        known = parameters()[entry.parameter]
        assert entry.unit in {*known.units.values(), *(u for us in known.printed_units.values() for u in us)}
        assert entry.r is None or all(small <= big for small, big in zip(entry.r, entry.R, strict=True))
