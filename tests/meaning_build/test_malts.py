"""What the class of malt and its other figures change about a figure."""

from __future__ import annotations

import pytest

from tests.meaning_build.built import built, only, row


@pytest.mark.parametrize(
    ("malt", "colour", "state"),
    [
        ("Pilsner malt", "3.6", "accepted"),
        ("Pilsner malt", "1300", "review"),
        ("Roasted malt", "1300", "accepted"),
        (None, "1300", "accepted"),
    ],
)
def test_a_figure_is_held_against_its_class_of_malt(malt: str | None, colour: str, state: str) -> None:
    figure = only(built(row("Colour", colour, "EBC"), malt=malt), "colour")
    assert figure.state == state
    assert figure.flags == (() if state == "accepted" else ("unusual-for-malt",))


def test_a_roasted_malt_may_have_a_ratio_that_no_other_has() -> None:
    """mappings/malt_classes.toml: roasting takes nitrogen out of solution."""
    ratio = row("Soluble nitrogen ratio", "4.0")
    assert "outside-possible" in only(built(ratio, malt="Pilsner malt"), "nitrogen_ratio").flags
    assert "outside-possible" not in only(built(ratio, malt="Roasted malt"), "nitrogen_ratio").flags


def test_extract_and_moisture_make_an_estimate_of_fan_exact() -> None:
    fan = row("Free amino nitrogen", "150", "mg/100 g")
    rough = only(built(fan), "free_amino_nitrogen")
    exact = only(built(fan, row("Moisture", "4.5"), row("Extract fine, dry", "81.0")), "free_amino_nitrogen")
    assert (rough.value, rough.estimated, rough.spread) == (167.6, True, 1.5)
    assert (exact.value, exact.estimated, exact.spread) == (167.81, False, None)


@pytest.mark.parametrize(
    ("more", "malt", "estimated"),
    [
        ((), None, True),
        (("160",), None, False),
        (("5.2",), None, True),
        ((), "Crystal malt", False),
        ((), "Pale malt", True),
    ],
)
def test_the_estimate_of_the_congress_extract_is_for_pale_malts(
    more: tuple[str, ...], malt: str | None, estimated: bool
) -> None:
    """Paired limits of the trade for pale malts (common practice, no source): mappings/conversions.toml."""
    rows = row("Extract coarse, dry", "308", "L°/kg"), *(row("Colour", text, "EBC") for text in more)
    analysis = built(*rows, malt=malt, notes=("IoB methods",))
    found = [figure for figure in analysis.derived if figure.parameter == "extract_fine_dry"]
    assert [figure.value for figure in found] == ([81.3] if estimated else [])
    assert all(figure.estimated and figure.family == "EBC" for figure in found)


def test_a_unit_that_depends_on_the_family_is_in_review_without_one() -> None:
    figure = only(built(row("Bushel weight", "42.5", "lb/bu"), notes=()), "hectolitre_weight")
    assert (figure.state, figure.value, figure.unit) == ("review", 42.5, "lb/bu")
    assert figure.flags == ("not-convertible", "family-assumed")
    assert figure.reasons[-1] == "Its unit cannot be brought to the basis while the method family is not known."


def test_figures_of_two_mashes_are_not_held_against_each_other() -> None:
    """0.50 of 1.60 is 31 %, but the soluble nitrogen is of another mash than the index."""
    rows = row("Kolbach index", "43"), row("Soluble nitrogen, 65 °C mash", "0.50"), row("Total nitrogen, dry", "1.60")
    analysis = built(*rows)
    assert all(check.holds for check in analysis.checks)
    assert only(analysis, "nitrogen_ratio").state == "accepted"
    assert only(analysis, "soluble_nitrogen").flags == ("not-convertible",)
    (protein,) = [figure for figure in analysis.derived if figure.parameter == "soluble_protein"]
    assert "not-convertible" in protein.flags
