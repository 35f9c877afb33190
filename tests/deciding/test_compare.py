"""Analyses side by side: what counts as a difference, and what must never be set against each other."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.deciding.compare import compare
from importer.deciding.meaning_of import batch_meaning
from importer.deciding.results import Difference, Row, Shown
from importer.models import Analysis
from importer.output.words import CAUTION
from importer.telling.batch_table import comparison_table
from tests.deciding.factory import analysis, estimate, figure


def row(found: tuple[Row, ...], parameter: str, ground: str = "") -> Row:
    (one,) = [r for r in found if r.parameter == parameter and r.ground == ground]
    return one


def difference(one: Analysis, other: Analysis, parameter: str, ground: str = "") -> Difference:
    found = row(compare([one, other]).rows, parameter, ground).differences[1]
    assert found is not None
    return found


def test_a_difference_within_the_scatter_is_said_to_be_no_more_than_that() -> None:
    """Final attenuation, two suppliers: R95 = 2.9 (Mschr. Brauwiss. 52 (1999) 94)."""
    one = analysis(figure("final_attenuation", 82.0), supplier="A")
    other = analysis(figure("final_attenuation", 84.9), supplier="B")
    found = difference(one, other, "final_attenuation")
    assert found.verdict == "within-scatter"
    assert found.difference == pytest.approx(2.9)
    assert found.allowance == pytest.approx(2.9)
    assert "no more than the method's own scatter" in found.words
    assert "52, 94" in found.source


def test_a_difference_beyond_the_scatter_counts() -> None:
    one = analysis(figure("final_attenuation", 82.0), supplier="A")
    other = analysis(figure("final_attenuation", 85.0), supplier="B")
    assert difference(one, other, "final_attenuation").verdict == "different"


def test_one_supplier_is_one_laboratory() -> None:
    """Between r95 = 0.5 and R95 = 2.9: √((0.5² + 2.9²) ÷ 2) = 2.08; a choice of this project, no source."""
    one, other = (analysis(figure("final_attenuation", v), batch=b) for v, b in ((82.0, "B1"), (84.2, "B2")))
    found = difference(one, other, "final_attenuation")
    assert found.allowance == pytest.approx(2.08, abs=0.01)
    assert found.verdict == "different"


def test_methods_stand_in_rows_of_their_own() -> None:
    one = analysis(figure("beta_glucan", 150, "mg/L"), batch="B1")
    other = analysis(figure("beta_glucan", 300, "mg/L", flags=("not-convertible",)), batch="B2", mash="isothermal-65")
    iob = analysis(figure("beta_glucan", 310, "mg/L", "IoB", flags=("not-convertible",)), batch="B3", family="IoB")
    found = compare([one, other, iob])
    assert [(r.ground, [c.value if c else None for c in r.cells]) for r in found.rows] == [
        ("", [150, None, None]),
        ("EBC, 65 °C mash", [None, 300, None]),
        ("IoB", [None, None, 310]),
    ]
    assert all(d is None for r in found.rows for d in r.differences)


def test_two_estimates_from_one_method_are_compared_as_they_were() -> None:
    one = analysis(estimate("nitrogen_ratio", 42.8, "%", 2.5, (38.0, "%", "IoB")), batch="B1", family="IoB", mash=None)
    other = analysis(
        estimate("nitrogen_ratio", 46.1, "%", 2.5, (41.0, "%", "IoB")), batch="B2", family="IoB", mash=None
    )
    found = difference(one, other, "nitrogen_ratio")
    assert found.difference == pytest.approx(3.0)
    assert found.compared_on == "compared on IoB in %, before the estimate"
    assert "spread" not in found.words


def test_an_estimate_against_a_measurement_is_judged_with_its_spread() -> None:
    """√(8.5² + 2.5²) = 8.86: scatter of two laboratories (8.5 points, J. Inst. Brew.) and spread of the estimate."""
    one = analysis(
        estimate("nitrogen_ratio", 42.8, "%", 2.5, (38.0, "%", "IoB")), supplier="A", family="IoB", mash=None
    )
    other = analysis(figure("nitrogen_ratio", 34.0), supplier="B")
    found = difference(one, other, "nitrogen_ratio")
    assert found.allowance == pytest.approx(8.86, abs=0.01)
    assert found.verdict == "within-scatter"
    assert "the spread of the estimate" in found.words


def test_an_estimate_of_unknown_spread_says_nothing() -> None:
    one = analysis(estimate("nitrogen_ratio", 42.8, "%", None, (38.0, "%", "IoB")), supplier="A", family="IoB")
    other = analysis(figure("nitrogen_ratio", 30.0), supplier="B")
    assert difference(one, other, "nitrogen_ratio").verdict == "not-said"


def test_nothing_is_concluded_from_a_figure_in_review() -> None:
    one = analysis(figure("moisture", 3.0), batch="B1")
    other = analysis(figure("moisture", 9.0, state="review"), batch="B2")
    found = difference(one, other, "moisture")
    assert found.verdict == "not-said"
    assert found.difference is None
    assert "in review" in found.words


def test_limits_of_detection_are_no_numbers() -> None:
    one = analysis(figure("turbidity", 2.0, "EBC", bound="<"), batch="B1")
    other = analysis(figure("turbidity", 1.5, "EBC"), batch="B2")
    assert difference(one, other, "turbidity").verdict == "not-said"
    same = analysis(figure("turbidity", 2.0, "EBC", bound="<"), batch="B3")
    assert difference(one, same, "turbidity").verdict == "equal"


def test_residues_are_shown_and_never_judged() -> None:
    one, other = (analysis(figure("ndma", v, "µg/kg", bound="<"), batch=b) for v, b in ((1.0, "B1"), (9.0, "B2")))
    found = compare([one, other])
    assert not found.rows
    assert [cell.value if cell else None for cell in found.residues[0].cells] == [1.0, 9.0]
    assert found.residues[0].cells[1] is not None
    assert found.residues[0].cells[1].bound == "<"
    assert found.notice == CAUTION


def test_a_row_is_held_against_the_first_that_has_the_figure() -> None:
    one = analysis(figure("moisture", 4.0), batch="B1")
    two = analysis(figure("friability", 90.0), batch="B2")
    three = analysis(figure("friability", 70.0), batch="B3")
    found = row(compare([one, two, three]).rows, "friability")
    assert found.reference == 1
    assert found.differences[2] is not None
    assert found.differences[2].difference == pytest.approx(-20.0)


def test_two_figures_of_one_kind_on_a_sheet_are_both_in_doubt() -> None:
    one = analysis(figure("moisture", 4.0), figure("moisture", 5.0), batch="B1")
    other = analysis(figure("moisture", 4.0), batch="B2")
    assert difference(one, other, "moisture").verdict == "not-said"


def test_one_is_no_comparison() -> None:
    with pytest.raises(ValueError, match="two analyses"):
        compare([analysis(figure("moisture", 4.0))])


@given(st.floats(60, 90), st.floats(60, 90), st.booleans())
def test_a_comparison_is_the_same_from_either_side(a: float, b: float, one_supplier: bool) -> None:
    one = analysis(figure("final_attenuation", a), batch="B1")
    other = analysis(
        figure("final_attenuation", b), batch="B2", supplier="Nordtal Malting" if one_supplier else "Other"
    )
    there, back = difference(one, other, "final_attenuation"), difference(other, one, "final_attenuation")
    assert there.verdict == back.verdict
    assert there.allowance == back.allowance
    assert (there.difference or 0.0) == pytest.approx(-(back.difference or 0.0))


def batch_of(value: float, number: int, **more: str) -> Analysis:
    return analysis(figure("friability", value), batch=f"B{number}", day=f"2025-01-{number:02d}", **more)  # type: ignore[arg-type]


def test_a_batch_is_held_against_the_last_and_the_mean() -> None:
    history = [batch_of(v, n) for n, v in enumerate((90.0, 92.0, 94.0, 88.0), 1)]
    other = batch_of(60.0, 9, supplier="Somebody Else")
    found = batch_meaning(history[-1], [*history, other], mean_of=2)
    assert found.against == ("last batch B3", "mean of 2 before")
    (line,) = found.rows
    assert [cell.value if cell else None for cell in line.cells] == [88.0, 94.0, 93.0]
    assert [d.difference if d else None for d in line.differences] == [None, pytest.approx(-6), pytest.approx(-5)]


def test_the_mean_leaves_out_what_is_in_review_and_what_stands_on_another_method() -> None:
    history = [
        analysis(figure("viscosity", 1.5, "mPa·s"), batch="B1", day="2025-01-01"),
        analysis(figure("viscosity", 9.9, "mPa·s", state="review"), batch="B2", day="2025-01-02"),
        analysis(figure("viscosity", 1.7, "mPa·s", flags=("not-convertible",)), batch="B3", day="2025-01-03",
                 mash="isothermal-65"),
        analysis(figure("viscosity", 1.6, "mPa·s"), batch="B4", day="2025-01-04"),
        analysis(figure("viscosity", 1.56, "mPa·s"), batch="B5", day="2025-01-05"),
    ]  # fmt: skip
    found = row(batch_meaning(history[-1], history, mean_of=5).rows, "viscosity")
    assert found.cells[2] is not None
    assert found.cells[2].value == pytest.approx(1.55)
    assert found.cells[2].number == 2


def test_the_first_batch_of_a_malt_stands_alone() -> None:
    only = batch_of(90.0, 1)
    assert batch_meaning(only, []).against == ()
    assert batch_meaning(only, [only]).against == ()


def test_a_reissue_of_the_same_batch_is_not_the_last_batch() -> None:
    first = batch_of(90.0, 1)
    again = analysis(figure("friability", 91.0), batch="B1", day="2025-01-20")
    assert batch_meaning(again, [first, again]).against == ()


def test_another_harvest_is_said() -> None:
    old, new = batch_of(90.0, 1, crop="2024"), batch_of(90.0, 2, crop="2025")
    assert batch_meaning(new, [old, new]).harvest == "another harvest: 2025 after 2024"


def test_a_sheet_that_is_not_in_the_store_is_placed_by_its_day() -> None:
    first, second = batch_of(90.0, 1), batch_of(92.0, 5)
    assert batch_meaning(batch_of(91.0, 3), [first, second]).against == ("last batch B1",)
    assert batch_meaning(batch_of(91.0, 9), [first, second]).against[0] == "last batch B5"
    undated = analysis(figure("friability", 91.0), batch="B9", day="")
    assert batch_meaning(undated, [first, second]).against[0] == "last batch B5"
    assert batch_meaning(second, [first, undated, second]).against == (f"last batch {first.header['batch'].value}",)


def test_ranges_and_described_results_are_shown_as_values_are() -> None:
    """Common practice, no source: a range is written as its values would be, "normal" without a unit."""
    first, second = (
        analysis(
            figure("colour", None, "EBC", bound="range", between=(4.1368, end)),
            figure("saccharification_time", None, "min", text=words),
        )
        for end, words in ((5.02354, "normal"), (6.0, "slow"))
    )
    shown = comparison_table(compare([first, second]))
    assert "4.14 – 5.02 EBC" in shown
    assert "not two plain numbers: 4.14 – 5.02 and 4.14 – 6.00" in shown
    assert "described in words: “normal” and “slow”" in shown
    assert "normal min" not in shown
    assert row(compare([first, second]).rows, "saccharification_time").cells[0] == Shown(
        unit="min", family="EBC", text="normal", state="accepted", printed="None"
    )
