"""Cautions from single figures: when they are said, and for which malts and methods they hold."""

from __future__ import annotations

import pytest

from importer.deciding.cautions import cautions_of
from importer.deciding.effects_data import cautions
from importer.deciding.results import Effect
from importer.models import Family, Figure, Mash
from tests.deciding.factory import analysis, estimate, figure


def said(
    one: Figure, malt: str = "Pilsner Malt", family: Family = "EBC", mash: Mash | None = "congress"
) -> list[Effect]:
    return list(cautions_of(analysis(one, malt=malt, family=family, mash=mash)))


FRIABILITY_LOW = figure("friability", 80)


@pytest.mark.parametrize(
    ("one", "subject"),
    [
        # common practice, no source: below about 85 viscous wort, above about 98 flour and set mashes
        (FRIABILITY_LOW, "run-off"),
        (figure("friability", 99), "run-off"),
        # common practice, no source: congress above 200 mg/L
        (figure("beta_glucan", 230, "mg/L"), "run-off"),
        # Braumagazin, table of malt analysis parameters: difference below 2
        (figure("fine_coarse_difference", 2.4), "run-off"),
        # German encyclopaedia, Kolbachzahl: under 35 poor
        (figure("nitrogen_ratio", 33), "fermentation"),
        # trade listing of specifications: at least 150 mg/L
        (figure("free_amino_nitrogen", 130, "mg/L"), "fermentation"),
    ],
)
def test_a_caution_is_said_with_its_source(one: Figure, subject: str) -> None:
    (found,) = said(one)
    assert (found.subject, found.kind) == (subject, "caution")
    assert found.source
    assert f"{one.value:g}" in found.words


@pytest.mark.parametrize(
    "one",
    [
        figure("friability", 90),
        figure("beta_glucan", 190, "mg/L"),
        figure("nitrogen_ratio", 41),
        figure("free_amino_nitrogen", 160, "mg/L"),
        figure("viscosity", 1.55, "mPa·s"),
        figure("friability", 80, bound="<"),
    ],
)
def test_an_ordinary_figure_gives_none(one: Figure) -> None:
    assert said(one) == []


def test_thresholds_hold_for_their_own_mash() -> None:
    """Congress above 200, 65 °C above 350 mg/L: common practice, no source."""
    kept = figure("beta_glucan", 300, "mg/L", flags=("not-convertible",))
    assert said(kept, mash="isothermal-65") == []
    kept = figure("beta_glucan", 360, "mg/L", flags=("not-convertible",))
    (found,) = said(kept, mash="isothermal-65")
    assert "EBC mash at 65 °C" in found.validity


@pytest.mark.parametrize("malt", ["Wheat Malt", "Crystal Malt 150", "Roasted Barley", "Rye Malt"])
def test_friability_says_nothing_of_malts_that_it_is_not_made_for(malt: str) -> None:
    assert said(FRIABILITY_LOW, malt=malt) == []


def test_an_estimate_gives_a_caution_only_with_the_whole_of_its_spread() -> None:
    near = estimate("nitrogen_ratio", 46.0, "%", 2.5, (40.9, "%", "IoB"))
    assert said(near, family="IoB", mash="isothermal-65") == []
    far = estimate("nitrogen_ratio", 50.6, "%", 2.5, (45.0, "%", "IoB"))
    (found,) = said(far, family="IoB", mash="isothermal-65")
    assert found.value == 45.0
    assert found.validity.startswith("for IoB")


@pytest.mark.parametrize(("power", "unit", "count"), [(40, "°IoB", 1), (50, "°IoB", 0), (100, "WK", 1), (150, "WK", 0)])
def test_power_of_an_ale_malt_on_any_scale(power: float, unit: str, count: int) -> None:
    """At least 45 °IoB for an ale malt: common practice, no source. WK by an estimate of ± 12 %."""
    one = figure("diastatic_power", power, unit, "IoB" if unit == "°IoB" else "EBC")
    assert len(said(one, malt="Best Pale Ale Malt")) == count


def test_a_figure_in_review_gives_none_and_that_is_said() -> None:
    (found,) = said(figure("friability", 20, state="review"))
    assert found.kind == "withheld"
    assert "in review" in found.words


def test_residues_give_no_caution() -> None:
    assert said(figure("ndma", 40, "µg/kg")) == []
    assert not {rule.parameter for rule in cautions()} & {"ndma", "deoxynivalenol", "arsenic", "lead"}
