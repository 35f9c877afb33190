"""Figures that follow from printed ones: what is computed, from what, in which state, and what is left alone."""

from __future__ import annotations

from typing import Any

import pytest

from importer.meaning.convert import Context
from importer.meaning.derive import derive, protein_factor, rules
from importer.models import Family, Figure, Printed

KEPT: dict[str, Any] = {"flags": ("not-convertible",)}


def figure(parameter: str, value: float | None, unit: str = "%", family: Family = "EBC", **more: Any) -> Figure:
    printed = Printed(label=parameter, value=str(value), page=1, box=(0, 0, 1, 1))
    fields = {"state": "accepted", "printed": printed, **more}
    return Figure(parameter=parameter, value=value, unit=unit, family=family, **fields)


def run(*figures: Figure, basis: Family = "EBC", context: Context | None = None, **more: Any) -> dict[str, Figure]:
    return {f.parameter: f for f in derive(figures, basis, context or Context(), **more)}


def test_as_is_extract_with_its_step() -> None:
    """Definition, arithmetic: 81.5 % dry at 4.5 % moisture is 77.83 % as is."""
    found = run(figure("extract_fine_dry", 81.5), figure("moisture", 4.5))["extract_fine_as_is"]
    assert (found.value, found.unit, found.family, found.state) == (77.83, "%", "EBC", "accepted")
    assert found.printed is None
    assert found.from_ == ("extract_fine_dry", "moisture")
    (step,) = found.steps
    assert (step.kind, step.from_.value, step.to.value) == ("moisture-basis", 81.5, 77.83)


def test_printed_figures_are_never_derived_again() -> None:
    found = run(figure("extract_fine_dry", 81.5), figure("extract_fine_as_is", 77.8), figure("moisture", 4.5))
    assert not {"extract_fine_dry", "extract_fine_as_is", "moisture"} & set(found)
    bounded = run(figure("total_protein", 11.0, bound="<"), figure("total_nitrogen", 1.7))
    assert "total_protein" not in bounded


def test_nothing_follows_from_limits_and_ranges() -> None:
    assert run(figure("total_nitrogen", 1.7, bound="<")) == {}
    assert run(figure("total_nitrogen", None, bound="range", range=(1.5, 1.7))) == {}
    assert run(figure("total_nitrogen", 1.7, flags=("no-moisture",), state="review")) == {}
    assert run(figure("total_nitrogen", 17.0, flags=("outside-possible",), state="review")) == {}


def test_doubt_is_inherited() -> None:
    doubtful = figure("moisture", 4.5, state="review", flags=("reading-doubtful",))
    found = run(figure("extract_fine_dry", 81.5), doubtful)["extract_fine_as_is"]
    assert (found.state, found.flags) == ("review", ("reading-doubtful",))
    assert "moisture" in found.reasons[0]


def test_rules_build_on_each_other() -> None:
    found = run(figure("extract_fine_dry", 81.5), figure("fine_coarse_difference", 1.4), figure("moisture", 4.5))
    assert found["extract_coarse_dry"].value == 80.1
    assert found["extract_coarse_as_is"].value == pytest.approx(80.1 * 0.955, abs=0.005)


def test_protein_and_nitrogen() -> None:
    assert run(figure("total_nitrogen", 1.7))["total_protein"].value == 10.62
    assert run(figure("total_protein", 11.5))["total_nitrogen"].value == 1.84
    assert "6.25" in run(figure("total_nitrogen", 1.7))["total_protein"].steps[0].formula


@pytest.mark.parametrize("malt_class", ["wheat", "rye"])
def test_protein_factor_of_wheat_is_not_guessed(malt_class: str) -> None:
    assert run(figure("total_nitrogen", 2.1), context=Context(malt_class=malt_class)) == {}


def test_protein_factor_is_taken_from_a_printed_pair() -> None:
    wheat = Context(malt_class="wheat")
    pair = (figure("total_nitrogen", 2.10), figure("total_protein", 11.97))
    assert run(*pair, figure("soluble_nitrogen", 0.80), context=wheat)["soluble_protein"].value == 4.56
    odd = (figure("total_nitrogen", 2.10), figure("total_protein", 12.5))
    assert "soluble_protein" not in run(*odd, figure("soluble_nitrogen", 0.80))


@pytest.mark.parametrize(
    ("label", "nitrogen"),
    [
        ("Crude protein (N x 5,7)", 1.98),
        ("Rohprotein N×5.70 wfr.", 1.98),
        ("Protein (N x 6.25)", 1.81),
        ("Protein", 1.81),
        ("Protein, method 5.3.1", 1.81),
        ("Protein (N x 5.83)", None),
    ],
)
def test_protein_factor_is_taken_from_the_label(label: str, nitrogen: float | None) -> None:
    """11.3 % ÷ 5.7 is 1.98 %, ÷ 6.25 is 1.81 % (arithmetic); another factor than these two is not followed."""
    printed = Printed(label=label, value="11.3", page=1, box=(0, 0, 1, 1))
    found = run(figure("total_protein", 11.3, printed=printed), figure("soluble_nitrogen", 0.742))
    assert ("total_nitrogen" in found) == (nitrogen is not None)
    if nitrogen is not None:
        assert found["total_nitrogen"].value == pytest.approx(nitrogen, abs=0.005)
        assert found["soluble_protein"].value == pytest.approx(0.742 * 11.3 / nitrogen, abs=0.02)


def test_a_named_factor_serves_wheat_too() -> None:
    printed = Printed(label="Protein (N x 5.7)", value="11.3", page=1, box=(0, 0, 1, 1))
    found = run(figure("total_protein", 11.3, printed=printed), context=Context(malt_class="wheat"))
    assert found["total_nitrogen"].value == pytest.approx(1.98, abs=0.005)


@pytest.mark.parametrize(
    ("protein", "nitrogen", "factor"), [(10.6, 1.70, 6.25), (11.97, 2.10, 5.7), (12.5, 2.10, None), (10.0, 0.0, None)]
)
def test_protein_factor_bands(protein: float, nitrogen: float, factor: float | None) -> None:
    """Within 6.18 to 6.32 it is 6.25, within 5.63 to 5.77 it is 5.7, otherwise neither."""
    assert protein_factor(protein, nitrogen) == factor


def test_ratio_on_one_wort() -> None:
    found = run(figure("soluble_nitrogen", 0.65), figure("total_nitrogen", 1.60))["nitrogen_ratio"]
    assert (found.value, found.estimated, found.family) == (40.62, False, "EBC")
    assert found.method_offset is not None
    assert found.method_offset.applied is False


def test_ratio_of_an_iob_wort_carries_its_offset() -> None:
    found = run(figure("soluble_nitrogen", 0.61, "%", "IoB", **KEPT), figure("total_nitrogen", 1.60))["nitrogen_ratio"]
    assert (found.value, found.family, found.estimated, found.spread) == (42.9, "EBC", True, 2.5)
    assert [step.kind for step in found.steps] == ["definition", "correlation"]
    assert found.method_offset is not None
    assert found.method_offset.applied


def test_worts_are_never_mixed() -> None:
    found = run(
        figure("extract_fine_dry", 81.5),
        figure("extract_coarse_dry", 308.0, "L°/kg", "IoB", **KEPT),
        figure("soluble_nitrogen", 0.61, "%", "IoB", **KEPT),
        figure("soluble_protein", 4.3),
        figure("total_protein", 10.6),
    )
    assert "fine_coarse_difference" not in found
    assert found["nitrogen_ratio"].from_ == ("soluble_protein", "total_protein")


def test_iob_extract_brings_an_estimate_beside_it() -> None:
    """Common practice, no source: pale malts of 295 to 318 L°/kg have about 1.5 points more in the Congress mash."""
    printed = figure("extract_coarse_dry", 308.0, "L°/kg", "IoB", **KEPT)
    found = run(printed, figure("moisture", 3.5))
    estimate = found["extract_fine_dry"]
    assert (estimate.value, estimate.unit, estimate.family) == (81.3, "%", "EBC")
    assert (estimate.estimated, estimate.spread, estimate.from_) == (True, 1.0, ("extract_coarse_dry",))
    assert [step.kind for step in estimate.steps] == ["unit", "correlation"]
    assert "extract_fine_as_is" not in found, "nothing is built on an estimate"
    assert (found["extract_coarse_as_is"].value, found["extract_coarse_as_is"].family) == (297.22, "IoB")


@pytest.mark.parametrize(
    ("extract", "context", "colour"),
    [
        (290.0, Context(), None),
        (320.0, Context(), None),
        (308.0, Context(estimates=False), None),
        (300.0, Context(malt_class="munich"), None),
        (300.0, Context(malt_class="crystal"), None),
        (300.0, Context(), 25.0),
        (300.0, Context(colour=25.0), None),
    ],
)
def test_no_estimate_outside_pale_malts(extract: float, context: Context, colour: float | None) -> None:
    figures = [figure("extract_coarse_dry", extract, "L°/kg", "IoB", **KEPT)]
    if colour is not None:
        figures.append(figure("colour", colour, "EBC", "IoB", **KEPT))
    assert "extract_fine_dry" not in run(*figures, context=context)


def test_estimate_for_an_iob_basis() -> None:
    found = run(figure("extract_fine_dry", 81.5, **KEPT), basis="IoB")["extract_coarse_dry"]
    assert (found.value, found.unit, found.family, found.estimated) == (308.8, "L°/kg", "IoB", True)
    assert run(figure("extract_fine_dry", 81.5, **KEPT), basis="IoB", mash="isothermal-65") == {}


def test_impossible_results_are_left_out() -> None:
    assert "nitrogen_ratio" not in run(figure("soluble_nitrogen", 1.2), figure("total_nitrogen", 1.3))


def test_every_rule_names_parameters_and_a_source() -> None:
    assert len(rules()) >= 15
    assert all(rule.source for rule in rules())
