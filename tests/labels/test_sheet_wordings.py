"""Wordings as certificates of each country print them, and their false friends. Common practice, no source."""

from __future__ import annotations

from typing import Any

import pytest

from importer.meaning.labels import LabelQuery, Match, recognise
from importer.models import Family
from importer.vocabulary.units import parse_unit


def ask(label: str, unit: str | None = None, value: float | None = None, family: Family | None = None) -> Match:
    parsed = parse_unit(unit) if unit else None
    assert unit is None or parsed is not None, unit
    return recognise(LabelQuery(label, unit=parsed, value=value, family=family))


def sure(match: Match) -> str | None:
    return match.parameter if match.state == "sure" else None


def test_wordings_of_each_language_are_certain(wordings: list[dict[str, Any]]) -> None:
    missed = [
        f"{row['label']!r}: {found.parameter} {found.state}, not {row['parameter']} ({found.why})"
        for row in wordings
        if sure(found := ask(row["label"], row.get("unit"), row.get("value"), "EBC")) != row["parameter"]
    ]
    assert len(wordings) > 500
    assert not missed


def test_false_friends_are_never_certain(false_friends: list[dict[str, Any]]) -> None:
    certain = [
        f"{row['label']!r}: {found.parameter}"
        for row in false_friends
        for found in [ask(row["label"], row.get("unit"), row.get("value"), "EBC")]
        if found.state == "sure" and found.matrix == "malt"
    ]
    assert len(false_friends) > 150
    assert not certain


# ---------------------------------------------------------------------------------------------- limits in brackets


@pytest.mark.parametrize(
    ("label", "unit"),
    [
        ("β-Glucan (max. 120 mg/l)", "mg/L"),
        ("β-Glucan [≤ 1.2 %]", "%"),
        ("Friability (85 – 90 %)", "%"),
        ("Viscosity (1.4 to 1.6 mPa·s)", "mPa·s"),
    ],
)
def test_a_limit_in_the_label_lends_its_unit(label: str, unit: str) -> None:
    found = ask(label)
    assert found.unit is not None
    assert found.unit.code == unit
    assert found.state == "sure"


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("Sieving (2.5 – 2.8 mm)", "sieve_2_5_to_2_8"),
        ("Sieving (> 2.8 mm)", "sieve_over_2_8"),
        ("Sieving (< 2.2 mm)", "sieve_under_2_2"),
        ("Extract (45 °C)", "relative_extract_45"),
    ],
)
def test_sizes_and_temperatures_in_brackets_are_no_limits(label: str, parameter: str) -> None:
    assert sure(ask(label, "%")) == parameter


def test_a_label_that_is_nothing_but_a_limit_stays_as_it_is() -> None:
    assert ask("(max. 4.5 %)", "%").parameter is None


# ---------------------------------------------------------------------------------------------- sieves


@pytest.mark.parametrize(
    ("label", "value", "parameter"),
    [
        ("2.8/2.5 mm", 28.0, "sieve_2_5_to_2_8"),
        ("2,5/2,2 mm", 5.0, "sieve_2_2_to_2_5"),
        ("+ 2.8 mm", 64.0, "sieve_over_2_8"),
        ("Sieve III (2.5 to 2.2 mm)", 5.0, "sieve_2_2_to_2_5"),
        ("Total above 2.5 mm", 93.0, "sieve_over_2_5"),
    ],
)
def test_sieves_by_their_sizes(label: str, value: float, parameter: str) -> None:
    assert sure(ask(label, "%", value)) == parameter


@pytest.mark.parametrize(("label", "value"), [("2.8/2.5 mm", None), ("2.8/2.5 mm", 93.0), ("2.5/2.2 mm", 60.0)])
def test_two_sieves_with_a_stroke_are_certain_by_an_ordinary_value_only(label: str, value: float | None) -> None:
    assert ask(label, "%", value).state == "doubtful"


# ---------------------------------------------------------------------------------------------- shortened words


@pytest.mark.parametrize(
    ("label", "unit", "parameter"),
    [
        ("Extr. Grobschr.", "%", "extract_coarse_dry"),
        ("Wilgotn.", "%", "moisture"),
        ("Viscosid.", "mPa·s", "viscosity"),
        ("Humid. (105 °C, 3 h)", "%", "moisture"),
    ],
)
def test_a_word_cut_short_is_the_word_that_begins_so(label: str, unit: str, parameter: str) -> None:
    assert sure(ask(label, unit)) == parameter


@pytest.mark.parametrize("label", ["Tro. %", "Prec.", "Extra.", "Conc.", "Glu."])
def test_a_word_cut_too_short_is_not_guessed(label: str) -> None:
    assert ask(label, "%").state != "sure"


# ---------------------------------------------------------------------------------------------- conditions


@pytest.mark.parametrize(
    ("label", "unit", "parameter"),
    [
        ("Colour (430 nm)", "EBC", "colour"),
        ("Kochfarbe, 430 nm", "EBC", "boiled_colour"),
        ("Friability (8 min)", "%", "friability"),
        ("pH (20 °C)", "pH", "wort_ph"),
        ("Viscosity at 8.6 % extract", "mPa·s", "viscosity"),
        ("Humidity (105 °C, 3 h)", "%", "moisture"),
    ],
)
def test_conditions_of_the_method_change_nothing(label: str, unit: str, parameter: str) -> None:
    assert sure(ask(label, unit)) == parameter


@pytest.mark.parametrize(
    "method",
    [
        "EBC 4.2",
        "MEBAK R-110.40.020 [2016-03]",
        "PN-A-79083",
        "NF V03-707",
        "SOP 12",
        "interní metoda",
        "in-house",
        "n = 2",
    ],
)
def test_the_method_beside_a_label_changes_nothing(method: str) -> None:
    assert sure(ask(f"Moisture ({method})", "%", 4.2)) == "moisture"
    assert sure(ask(f"Viscosité du moût\n{method}", "mPa·s", 1.52)) == "viscosity"


@pytest.mark.parametrize("label", ["Titratable acidity, pH 8.2", "Acidity to pH 7", "Säure bis pH 7,0"])
def test_the_end_point_of_a_titration_is_no_ph_of_the_wort(label: str) -> None:
    assert ask(label, None, 6.0).parameter is None
