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
