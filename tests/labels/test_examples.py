"""Labels whose meaning depends on what stands around them.

Conventions as the methods print them (IoB: extract at 0.7 mm in litre degrees; EBC and ASBC: fine grind in per cent),
and the factor 6.25 between nitrogen and protein of the published methods; which words are in use: common practice.
"""

from __future__ import annotations

import pytest

from importer.meaning.labels import LabelQuery, Match, describe, recognise
from importer.models import Family
from importer.vocabulary.units import parse_unit


def ask(
    text: str, unit: str | None = None, family: Family | None = None, value: float | None = None, *section: str
) -> Match:
    parsed = parse_unit(unit) if unit else None
    assert unit is None or parsed is not None
    return recognise(LabelQuery(text, section=section, unit=parsed, value=value, family=family))


def sure(match: Match) -> str | None:
    return match.parameter if match.state == "sure" else None


@pytest.mark.parametrize(
    ("label", "unit", "parameter"),
    [
        ("Proteine totale s.u.", "%", "total_protein"),
        ("Proteine totale", "% s.u.", "total_protein"),
        ("Proteine totale", "s.u. %", "total_protein"),
        ("Azot total", "% (raportat la s.u.)", "total_nitrogen"),
        ("Azot solubil (substanță uscată)", "%", "soluble_nitrogen"),
        ("Extract măciniș grosier raportat la s.u.", "%", "extract_coarse_dry"),
        ("Extract fin, raportat la substanța uscată", "%", "extract_fine_dry"),
    ],
)
def test_the_dry_basis_in_romanian(label: str, unit: str, parameter: str) -> None:
    """ "s.u." stands for "substanță uscată", dry substance (common usage)."""
    found = ask(label, unit)
    assert sure(found) == parameter
    assert found.basis == "dry"


def test_su_alone_is_no_basis_in_other_words() -> None:
    assert ask("Proteine su tal quale", "%").basis == "as-is"


# ---------------------------------------------------------------------------------------------- headings


@pytest.mark.parametrize(
    ("section", "label", "unit", "parameter"),
    [
        (("Nitrogen",), "Total (% dry)", None, "total_nitrogen"),
        (("Nitrogen",), "Soluble(%dry)", None, "soluble_nitrogen"),
        (("Chemical analysis", "Nitrogen"), "soluble", "%", "soluble_nitrogen"),
        (("Protein",), "total", "%", "total_protein"),
        (("Stickstoff",), "löslich", "%", "soluble_nitrogen"),
        (("Azote",), "total", "%", "total_nitrogen"),
        (("Extract",), "fine, dry", "%", "extract_fine_dry"),
        (("Extract",), "coarse, as is", "%", "extract_coarse_as_is"),
        (("Extrakt",), "Feinschrot wfr.", "%", "extract_fine_dry"),
        (("Sieving",), "> 2.8 mm", "%", "sieve_over_2_8"),
        (("Sortierung",), "> 2,8 mm", "%", "sieve_over_2_8"),
        (("Sortierung",), "2,5 - 2,8 mm", "%", "sieve_2_5_to_2_8"),
        (("Colour",), "boiled wort", "EBC", "boiled_colour"),
    ],
)
def test_children_without_a_noun(section: tuple[str, ...], label: str, unit: str | None, parameter: str) -> None:
    assert sure(ask(label, unit, None, None, *section)) == parameter


def test_a_heading_is_not_needed_where_the_label_is_certain() -> None:
    assert sure(ask("Moisture", "%", None, 4.2, "Nitrogen")) == "moisture"


def test_a_label_that_adds_nothing_to_its_heading_is_doubtful() -> None:
    assert ask("Average", "%", None, None, "Friability").state == "doubtful"


def test_wort_above_protein_raises_doubt() -> None:
    assert ask("Protein", "%", None, None, "Wort analysis").state == "doubtful"
    assert ask("Extract", "%", "EBC", None, "Wort analysis").state == "sure"


@pytest.mark.parametrize(
    ("section", "label", "matrix"),
    [
        (("Barley",), "Moisture", "barley"),
        (("Gerste",), "Eiweiß", "barley"),
        (("Barley", "Malt"), "Moisture", "malt"),
        ((), "Barley moisture", "barley"),
        ((), "Moisture of malted barley", "malt"),
        (("Barley",), "Malt moisture", "malt"),
        (("Syrup",), "Viscosity", "other"),
        ((), "Moisture", "malt"),
    ],
)
def test_what_was_examined(section: tuple[str, ...], label: str, matrix: str) -> None:
    assert ask(label, "%", None, None, *section).matrix == matrix


# ---------------------------------------------------------------------------------------------- strokes and halves


@pytest.mark.parametrize("family", ["IoB", "EBC", "ASBC", None])
def test_three_names_of_one_figure(family: Family | None) -> None:
    assert sure(ask("SNR/KI/ST", "%", family)) == "nitrogen_ratio"
    assert sure(ask("DP/DPWK/LINTNER", None, family)) == "diastatic_power"


@pytest.mark.parametrize(
    "label", ["TN/TP", "Total Nitrogen / Protein, dry", "N total / Proteína total", "Teneur en azote/protéines"]
)
def test_nitrogen_or_protein_is_decided_by_the_value(label: str) -> None:
    assert sure(ask(label, "%", None, 1.65)) == "total_nitrogen"
    assert sure(ask(label, "%", None, 10.3)) == "total_protein"
    assert ask(label, "%", "ASBC").state == "doubtful"
    assert {ask(label, "%").parameter, *(name for name, _ in ask(label, "%").rivals)} == {
        "total_nitrogen",
        "total_protein",
    }


def test_soluble_nitrogen_or_protein_is_decided_by_the_value() -> None:
    assert sure(ask("Soluble N / soluble protein", "%", None, 0.68)) == "soluble_nitrogen"
    assert sure(ask("Soluble N / soluble protein", "%", None, 4.3)) == "soluble_protein"


@pytest.mark.parametrize(
    "label", ["Soluble N / Total N", "soluble/total protein", "S/T", "TSN/TN", "lösl. N / Gesamt-N"]
)
def test_a_part_over_its_whole_is_a_ratio(label: str) -> None:
    assert sure(ask(label, "%", None, 41.0)) == "nitrogen_ratio"


def test_a_whole_before_its_part_is_not_certain() -> None:
    assert ask("Total / soluble nitrogen", "%").state != "sure"


@pytest.mark.parametrize(
    ("label", "parameter"),
    [
        ("Vlhkosť / Moisture content", "moisture"),
        ("Wassergehalt / Moisture", "moisture"),
        ("Wassergehalt – Moisture", "moisture"),
        ("Xyzzy plugh / Moisture content", "moisture"),
        ("Farbe / Couleur / Colour", "colour"),
        ("Kleur (Colour)", "colour"),
        ("Kleur\nColour", "colour"),
        ("Kochfarbe\n(Boiled wort colour)", "boiled_colour"),
        ("Viskosität | Viscosity", "viscosity"),
        ("Extrakt jemný / Fine extract", "extract_fine_dry"),
        ("Gesamtstickstoff – Total nitrogen", "total_nitrogen"),
    ],
)
def test_translations_beside_each_other(label: str, parameter: str) -> None:
    assert sure(ask(label)) == parameter


@pytest.mark.parametrize(
    "label", ["Moisture / Protein", "Farbe / Boiled colour", "Friability / Viscosity", "Extract fine / Extract coarse"]
)
def test_halves_that_contradict_are_never_certain(label: str) -> None:
    assert ask(label).state != "sure"


# ---------------------------------------------------------------------------------------------- extract and family


@pytest.mark.parametrize(
    ("label", "unit", "family", "parameter"),
    [
        ("Extract", "L°/kg", None, "extract_coarse_dry"),
        ("Extract", None, "IoB", "extract_coarse_dry"),
        ("Hot water extract", "L°/kg", "IoB", "extract_coarse_dry"),
        ("HWE 0.7 mm", None, None, "extract_coarse_dry"),
        ("HWE 0.2 mm", None, None, "extract_fine_dry"),
        ("Extract (0.7/0.2mm)", None, "IoB", "extract_coarse_dry"),
        ("Extract (0.7/0.2mm)", None, "EBC", "extract_fine_dry"),
        ("Extract", None, "EBC", "extract_fine_dry"),
        ("Extract", None, "ASBC", "extract_fine_dry"),
        ("Extract", "%", None, "extract_fine_dry"),
        ("Extract 0.2 mm", "%", "EBC", "extract_fine_dry"),
        ("Extract 1.0 mm", "%", "EBC", "extract_coarse_dry"),
        ("Extract as is", "%", "EBC", "extract_fine_as_is"),
        ("Extract, % dry", None, "EBC", "extract_fine_dry"),
        ("Extrakt lftr.", "%", "EBC", "extract_fine_as_is"),
    ],
)
def test_extract_by_mill_unit_and_family(label: str, unit: str | None, family: Family | None, parameter: str) -> None:
    assert sure(ask(label, unit, family)) == parameter


def test_extract_without_unit_or_family_is_doubtful() -> None:
    assert ask("Extract").state == "doubtful"
    assert [name for name, _ in ask("Extract").rivals] == ["extract_coarse_dry"]


@pytest.mark.parametrize(
    ("label", "basis"),
    [
        ("Extract, dry basis", "dry"),
        ("Extract as is", "as-is"),
        ("Extract", None),
        ("Extract (% dry)", "dry"),
        ("Extract % lftr.", "as-is"),
    ],
)
def test_moisture_basis_of_the_wording(label: str, basis: str | None) -> None:
    assert describe(label, None, "EBC").basis == basis


def test_both_bases_in_one_label_are_doubtful() -> None:
    assert ask("Fine extract as is / dry basis", "%").state == "doubtful"


@pytest.mark.parametrize(
    ("label", "family", "mash"),
    [
        ("Kolbach index", "EBC", None),
        ("SNR", "IoB", None),
        ("S/T", None, None),
        ("HWE 0.7 mm", "IoB", None),
        ("Viscosity, Congress wort", "EBC", "congress"),
        ("β-glucan (65 °C wort)", None, "isothermal-65"),
        ("Colour EBC", None, None),
        ("Colour (IOB)", "IoB", None),
        ("Moisture", None, None),
    ],
)
def test_family_and_mash_of_the_wording(label: str, family: str | None, mash: str | None) -> None:
    found = describe(label)
    assert (found.family, found.mash) == (family, mash)


# ---------------------------------------------------------------------------------------------- unit and value


@pytest.mark.parametrize(
    ("label", "unit", "value", "better"),
    [
        ("Total nitrogen", "%", 10.4, "total_protein"),
        ("Total protein", "%", 1.7, "total_nitrogen"),
        ("Soluble nitrogen", "%", 4.1, "soluble_protein"),
        ("Soluble protein", "%", 0.65, "soluble_nitrogen"),
    ],
)
def test_a_value_on_the_other_scale_is_never_certain(label: str, unit: str, value: float, better: str) -> None:
    found = ask(label, unit, None, value)
    assert found.state == "doubtful"
    assert found.parameter == better
    assert found.why


@pytest.mark.parametrize(
    ("label", "unit"), [("Moisture", "mPa·s"), ("Viscosity", "%"), ("Friability", "mg/L"), ("FAN", "WK")]
)
def test_a_unit_that_cannot_be_raises_doubt(label: str, unit: str) -> None:
    assert ask(label, unit).state == "doubtful"


@pytest.mark.parametrize(
    ("label", "unit", "parameter"),
    [
        ("β-glucan", "mg/L", "beta_glucan"),
        ("β-glucan", "ppm", "beta_glucan"),
        ("β-glucan", "%", "beta_glucan_malt"),
        ("β-glucan", "mg/100 g", "beta_glucan_malt"),
        ("β-glucan in malt", "%", "beta_glucan_malt"),
        ("ẞ-glucan", "mg/L", "beta_glucan"),
        ("KZ", "EBC", "boiled_colour"),
        ("KZ", "%", "nitrogen_ratio"),
        ("MC", "g/t", "glycosidic_nitrile"),
        ("Diastatic power (Windisch-Kolbach)", "WK", "diastatic_power"),
    ],
)
def test_the_unit_chooses_between_rivals(label: str, unit: str, parameter: str) -> None:
    assert sure(ask(label, unit)) == parameter


def test_evidence_invents_nothing() -> None:
    for value in (4.2, 81.0, 1.6):
        assert ask("Xyzzy", "%", "EBC", value).parameter is None
