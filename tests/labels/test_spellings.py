"""Labels as they are shortened, joined, set and misread. Which forms are in use: common practice, no source."""

from __future__ import annotations

import pytest

from importer.meaning.labels import describe
from tests.labels.test_examples import ask, sure


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("TN", "total_nitrogen"),
        ("T.N.", "total_nitrogen"),
        ("TSN", "soluble_nitrogen"),
        ("FAN", "free_amino_nitrogen"),
        ("F.A.N.", "free_amino_nitrogen"),
        ("PUG", "partly_unmodified_grains"),
        ("WUG", "whole_grains"),
        ("FGDB", "extract_fine_dry"),
        ("DBCG", "extract_coarse_dry"),
        ("FGCG", "fine_coarse_difference"),
        ("F/C", "fine_coarse_difference"),
        ("m.c.", "moisture"),
        ("Moisture Content (MC)", "moisture"),
        ("As", "arsenic"),
        ("Pb", "lead"),
        ("DON", "deoxynivalenol"),
        ("PSY", "predicted_spirit_yield"),
        ("VZ 45 °C", "relative_extract_45"),
        ("TKG", "thousand_corn_weight"),
        ("EVG", "final_attenuation"),
        ("ELG", "nitrogen_ratio"),
        ("WK", "diastatic_power"),
    ],
)
def test_abbreviations(label: str, parameter: str) -> None:
    assert sure(ask(label)) == parameter


@pytest.mark.parametrize("label", ["MC", "as", "AS IS", "EBC", "°L", "Extract C", "FE", "MY", "ML"])
def test_abbreviations_that_say_too_little(label: str) -> None:
    assert ask(label).state != "sure"


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("Extraktdiff.", "fine_coarse_difference"),
        ("Würzefarbe", "colour"),
        ("Malzeiweißgehalt", "total_protein"),
        ("Kongresswürzeviskosität", "viscosity"),
        ("Feinschrotextraktgehalt", "extract_fine_dry"),
        ("Moutextract fijn", "extract_fine_dry"),
    ],
)
def test_words_that_are_written_together(label: str, parameter: str) -> None:
    assert describe(label, "EBC" if "farbe" in label else None, "EBC").parameter == parameter


# ---------------------------------------------------------------------------------------------- sieves and temperatures


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("> 2.8 mm", "sieve_over_2_8"),
        (">2,8mm", "sieve_over_2_8"),
        ("2.5-2.8 mm", "sieve_2_5_to_2_8"),
        ("2,8 – 2,5 mm", "sieve_2_5_to_2_8"),
        ("2.2-2.5 mm%", "sieve_2_2_to_2_5"),
        ("between 2.2 and 2.5 mm", "sieve_2_2_to_2_5"),
        ("< 2.2 mm%", "sieve_under_2_2"),
        ("Grading > 2.5 mm x 20mm", "sieve_over_2_5"),
        ("Grading < 2.2 mm x 20mm", "sieve_under_2_2"),
        ("2.8 + 2.5 mm", "sieve_over_2_5"),
        ("Screenings <2.2 mm", "sieve_under_2_2"),
        ("Screening below 2,2 mm", "sieve_under_2_2"),
        ("Retained on 2.5 mm sieve", "sieve_over_2_5"),
        ("1. Sorte", "sieve_over_2_5"),
        ("> 2.5 mm < 2.8 mm", "sieve_2_5_to_2_8"),
    ],
)
def test_sieves(label: str, parameter: str) -> None:
    assert sure(ask(label, "%")) == parameter


@pytest.mark.parametrize(
    "label", ["On 7/64", "Thru", "Plump", "< 2.5 mm", "> 2.2 mm", "2.5 mm", "2.8, 2.5, 2.2 mm", "Assortment"]
)
def test_sieves_that_are_none_or_not_clear(label: str) -> None:
    assert ask(label, "%").state != "sure"


@pytest.mark.parametrize(
    "label", ["70 °C viscosity", "Extract at 20 °C", "Cold water extract", "Relative extract 20 °C"]
)
def test_other_mashes_are_other_figures(label: str) -> None:
    assert ask(label).state != "sure"


def test_temperatures_of_the_measurement_do_no_harm() -> None:
    assert sure(ask("Viscosity at 20 °C")) == "viscosity"
    assert sure(ask("Moisture (105 °C)")) == "moisture"


# ---------------------------------------------------------------------------------------------- typesetting and limits


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("1. Moisture", "moisture"),
        ("a) Yield on Fine Grinding", "extract_fine_dry"),
        ("MoistureFootnote3", "moisture"),
        ("Color*****", "colour"),
        ("Moisture ........", "moisture"),
        ("• Friability", "friability"),
        ("W\ufffdrzefarbe", "colour"),
        ("WÃ¼rzefarbe", "colour"),
        ("F R I A B I L I T Y", "friability"),
        ("Diastatic power EBC 4.12", "diastatic_power"),
        ("Farbe (MEBAK R-205.07.110)", "colour"),
        ("Sulfur dioxide (SO2)", "sulphur_dioxide"),
        ("Viscosity 8.6 °P", "viscosity"),
        ("Saccharifi-\ncation time", "saccharification_time"),
    ],
)
def test_typesetting_is_taken_off(label: str, parameter: str) -> None:
    assert sure(ask(label)) == parameter


@pytest.mark.parametrize(
    ("label", "limit"),
    [
        ("Moisture max.", "max"),
        ("Minimum extract (dry basis)", "min"),
        ("Saccharification (min)", None),
        ("≤ Moisture", "max"),
        ("Moisture, not more than", "max"),
        ("Friability mind.", "min"),
        ("Moisture", None),
        ("> 2.8 mm", None),
    ],
)
def test_limit_words(label: str, limit: str | None) -> None:
    assert describe(label).limit == limit


def test_the_unit_of_the_label_is_told() -> None:
    unit = describe("Moisture (%)").unit
    assert unit is not None
    assert unit.code == "%"


# ----------------------------------------------------------------------------------------- foreign figures and spelling


@pytest.mark.parametrize(
    "label",
    [
        "Germinative energy", "Steep-out moisture", "Gushing test", "Beta-amylase", "Mealy corns", "Zinc", "Salmonella",
        "Coagulable nitrogen", "Titratable acidity", "Real degree of fermentation", "Malting loss", "Keimfähigkeit",
        "Spelzengehalt", "T-2 toxin",
    ],
)  # fmt: skip
def test_other_figures_are_told_apart(label: str) -> None:
    found = ask(label)
    assert (found.parameter, found.state) == (None, "unknown")
    assert found.why


@pytest.mark.parametrize(
    ("label", "unit", "parameter"),
    [
        ("Moistuer", "%", "moisture"),
        ("Molsture content", "%", "moisture"),
        ("m0isture", "%", "moisture"),
        ("Friabi1ity", "%", "friability"),
        ("Viscosrty", "mPa·s", "viscosity"),
        ("Muerbigkeit", "%", "friability"),
        ("Loeslicher Stickstoff", "%", "soluble_nitrogen"),
        ("Viskositaet", "mPa·s", "viscosity"),
        ("Eiweißlösungsgrsd", "%", "nitrogen_ratio"),
    ],
)
def test_slips_and_misreadings(label: str, unit: str, parameter: str) -> None:
    found = ask(label, unit)
    assert found.parameter == parameter


def test_a_misread_word_without_evidence_is_doubtful() -> None:
    assert ask("Viscosrty").state == "doubtful"


def test_a_qualifier_that_is_not_known_raises_doubt() -> None:
    assert ask("Xyzzish nitrogen", "%").state != "sure"
    assert ask("Colour plughed", "EBC").state != "sure"
