"""The data files say what they promise: every name leads somewhere, every relation has a source."""

from __future__ import annotations

import tomllib
from dataclasses import replace

import pytest

from importer.data import mappings_folder
from importer.errors import DataError
from importer.meaning import tables
from importer.meaning.checks import check_rules
from importer.meaning.derive import rules
from importer.meaning.formulas import constants
from importer.meaning.naming import in_a_sentence
from importer.meaning.possible import (
    cereal_of,
    class_of,
    is_pale_barley,
    malt_classes,
    typical_range,
    within_possible,
    within_typical,
)
from importer.meaning.relations import (
    check_topics,
    family_of_unit,
    relations,
    source_text,
    sources,
    unit_meaning,
    wort_of,
)
from importer.models import FAMILIES
from importer.vocabulary.parameters import parameters

with (mappings_folder() / "units.toml").open("rb") as file:
    UNIT_CODES = {*tomllib.load(file)["units"], "–", "text", "fraction"}

NAMES = """
moisture
extract_fine_dry extract_fine_as_is extract_coarse_dry extract_coarse_as_is fine_coarse_difference
colour boiled_colour
total_nitrogen total_protein soluble_nitrogen soluble_protein
nitrogen_ratio free_amino_nitrogen
friability homogeneity partly_unmodified_grains whole_grains glassy_grains
diastatic_power alpha_amylase beta_glucan beta_glucan_malt viscosity saccharification_time filtration turbidity
clarity odour wort_ph final_attenuation relative_extract_45
sieve_over_2_8 sieve_2_5_to_2_8 sieve_over_2_5 sieve_2_2_to_2_5 sieve_under_2_2
thousand_corn_weight hectolitre_weight foreign_matter broken_grains acrospire_length lipoxygenase
dms_precursor sulphur_dioxide arsenic lead cadmium gluten
ndma deoxynivalenol zearalenone ochratoxin_a aflatoxin_b1
glycosidic_nitrile predicted_spirit_yield fermentability fermentable_extract
"""
CONTRACT = NAMES.split()


def test_parameters_are_those_promised_in_order() -> None:
    assert list(parameters()) == CONTRACT


@pytest.mark.parametrize("name", CONTRACT)
def test_parameter(name: str) -> None:
    entry = parameters()[name]
    for family in FAMILIES:
        assert entry.units[family] in UNIT_CODES
        assert entry.printed_units[family], family
        assert set(entry.printed_units[family]) <= UNIT_CODES
    assert set(entry.possible) | set(entry.typical) <= UNIT_CODES
    if entry.kind == "number":
        assert all(entry.units[family] in entry.possible for family in FAMILIES)
    if entry.sibling is not None:
        other = parameters()[entry.sibling]
        assert other.sibling == name
        assert {entry.basis, other.basis} == {"dry", "as-is"}
    for unit, (low, high) in entry.typical.items():
        bounds = entry.possible[unit]
        assert bounds[0] <= low < high <= bounds[1], f"{unit}: typical outside possible"


def test_residues_carry_the_caution() -> None:
    cautioned = {name for name, entry in parameters().items() if entry.food_safety}
    assert {"arsenic", "lead", "cadmium", "gluten", "ndma", "deoxynivalenol", "zearalenone"} <= cautioned
    assert {"ochratoxin_a", "aflatoxin_b1", "sulphur_dioxide"} <= cautioned
    assert not {"moisture", "dms_precursor", "glycosidic_nitrile"} & cautioned


@pytest.mark.parametrize(
    "name", ["free_amino_nitrogen", "soluble_nitrogen", "colour", "diastatic_power", "lead", "ndma"]
)
def test_a_missing_unit_is_not_guessed(name: str) -> None:
    assert not parameters()[name].sole_unit


def test_a_contaminant_has_no_sole_unit() -> None:
    assert not [name for name, entry in parameters().items() if entry.food_safety and entry.sole_unit]


@pytest.mark.parametrize("relation", relations().values(), ids=lambda r: r.id)
def test_relation(relation) -> None:  # type: ignore[no-untyped-def]
    assert relation.parameters <= set(parameters())
    assert source_text(relation.source)
    assert relation.formula
    assert relation.one_way or relation.inverse
    if relation.kind == "correlation":
        assert relation.relative_spread or relation.absolute_spread, "an estimate says how good it is"
    if relation.kind == "unit":
        assert relation.offset == 0
    if relation.between is not None:
        assert set(relation.between) <= {wort_of(f, None).name for f in FAMILIES}


def test_every_source_is_of_a_known_kind() -> None:
    kinds = {"published", "definition", "common practice, no source", "from memory"}
    assert {source.kind for source in sources().values()} <= kinds
    assert "from memory" in source_text("plato-cubic")


def test_formula_shows_the_factor_that_is_used() -> None:
    """The text a brewer sees and the number the program multiplies by are the same."""
    for relation in relations().values():
        if relation.named is None and relation.factor > 1:
            shown = [float(part) for part in relation.formula.replace("10 000", "10000").split() if _is_number(part)]
            assert any(abs(number / relation.factor - 1) < 1e-4 for number in shown), relation.id


def _is_number(text: str) -> bool:
    return text.replace(".", "", 1).isdigit()


def test_constants_agree_with_the_relations() -> None:
    assert relations()["litre-degrees-percent"].factor == pytest.approx(1 / constants().litre_degrees_per_percent)
    assert relations()["nitrogen-protein"].factor == constants().protein_factor
    assert relations()["nitrogen-protein-wheat"].factor == constants().protein_factor_wheat
    assert relations()["wort-solute-typical"].factor == constants().wort_factor
    spread = relations()["wort-solute-typical"].relative_spread
    assert spread == pytest.approx(constants().wort_factor_spread / constants().wort_factor, abs=1e-4)


def test_worts() -> None:
    assert wort_of("EBC", None) == wort_of("ASBC", "congress")
    assert wort_of("IoB", None) == wort_of("IoB", "isothermal-65")
    assert len({wort_of("EBC", None), wort_of("IoB", None), wort_of("EBC", "isothermal-65")}) == 3
    assert wort_of("IoB", "congress") not in {wort_of("EBC", None), wort_of("IoB", None)}


def test_printed_units_mean_something() -> None:
    assert unit_meaning("diastatic_power", "°L", "IoB").code == "°Lintner"
    assert unit_meaning("colour", "°L", "ASBC").code == "SRM"
    assert unit_meaning("colour", "°L", "EBC").code is None
    assert unit_meaning("beta_glucan", "ppm", "EBC").code == "mg/L"
    assert unit_meaning("lead", "ppm", "EBC").code == "mg/kg"
    assert family_of_unit("diastatic_power", "WK") == "EBC"
    assert family_of_unit("extract_coarse_dry", "L°/kg") == "IoB"
    assert family_of_unit("moisture", "%") is None


@pytest.mark.parametrize(
    ("name", "wanted"),
    [
        ("Pilsner Malt", "pilsner"),
        ("Pilsener Malz hell", "pilsner"),
        ("Best Pale Ale Malt", "ale"),
        ("Extra Pale Malt", "extra_pale"),
        ("Dark Crystal 400", "crystal"),
        ("Caramelmalz Münchner Art", "crystal"),
        ("Pale Chocolate", "roasted"),
        ("Röstmalz", "roasted"),
        ("Weizenmalz hell", "wheat"),
        ("Malta de trigo", "wheat"),
        ("Roggenmalz", "rye"),
        ("Malted oats", "oat"),
        ("Münchner Malz Typ II", "munich"),
        ("Wiener Malz", "vienna"),
        ("Distilling Malt", "distilling"),
        ("Sauermalz", "acidulated"),
        ("Two-row spring barley", None),
        ("", None),
    ],
)
def test_class_of_a_malt(name: str, wanted: str | None) -> None:
    assert class_of(name) == wanted


def test_classes() -> None:
    assert is_pale_barley("pilsner") is True
    assert is_pale_barley("crystal") is False
    assert is_pale_barley(None) is None
    assert cereal_of("wheat") == "wheat"
    assert cereal_of(None) is None
    for entry in malt_classes().values():
        for table in (entry.typical, entry.possible):
            for name, units in table.items():
                assert set(units) <= UNIT_CODES, name
                assert all(low < high for low, high in units.values())
                assert name in parameters()


@pytest.mark.parametrize(
    ("parameter", "unit", "good", "bad"),
    [
        ("moisture", "%", 4.5, 45.0),
        ("extract_coarse_dry", "L°/kg", 308.0, 79.8),
        ("extract_fine_dry", "%", 81.5, 308.0),
        ("total_nitrogen", "%", 1.7, 10.6),
        ("total_protein", "%", 10.6, 1.7),
        ("soluble_nitrogen", "%", 0.65, 650.0),
        ("nitrogen_ratio", "%", 41.0, 0.41),
        ("free_amino_nitrogen", "mg/L", 165.0, 0.15),
        ("viscosity", "mPa·s", 1.45, 1450.0),
        ("wort_ph", "pH", 5.9, 59.0),
        ("hectolitre_weight", "kg/hL", 55.0, 28.0),
    ],
)
def test_possible(parameter: str, unit: str, good: float, bad: float) -> None:
    """From memory, wider than any specification on purpose: outside is a misreading or a wrong unit."""
    assert within_possible(parameter, unit, good)
    assert not within_possible(parameter, unit, bad)
    assert within_typical(parameter, unit, good)


def test_ranges_by_class() -> None:
    assert within_possible("nitrogen_ratio", "%", 8.0, "roasted")
    assert not within_possible("nitrogen_ratio", "%", 8.0)
    assert not within_typical("colour", "EBC", 60.0, "pilsner")
    assert within_typical("colour", "EBC", 4.5, "pilsner")
    assert within_typical("colour", "EBC", 60.0, "crystal")
    assert typical_range("friability", "%", "wheat") == parameters()["friability"].typical["%"]
    assert within_possible("colour", "unknown unit", 1e9)


def test_rules_and_checks_load() -> None:
    assert rules()
    assert check_rules()


def test_a_missing_file_is_named() -> None:
    with pytest.raises(DataError, match="no_such_table"):
        tables.table("no_such_table")


def test_an_unknown_topic_is_refused_with_those_that_there_are() -> None:
    known = tables.table("conversions")["topics"]
    misspelt = replace(relations()["srm-ebc"], topics=("color",))
    with pytest.raises(DataError, match=r"srm-ebc.*no topic 'color'.*colour; diastatic power"):
        check_topics(misspelt, known)


def test_every_topic_and_dimension_that_is_listed_is_in_use() -> None:
    """And every one in use is listed: a misspelt one would never be noticed otherwise."""
    units = tables.table("units")
    assert {unit["dimension"] for unit in units["units"].values()} == set(units["dimensions"])
    used = {topic for relation in relations().values() for topic in relation.topics}
    assert used == set(tables.table("conversions")["topics"])


@pytest.mark.parametrize(
    ("parameter", "words"),
    [
        ("deoxynivalenol", "deoxynivalenol (DON)"),
        ("ndma", "NDMA"),
        ("wort_ph", "wort pH"),
        ("beta_glucan", "β-glucan in wort"),
        ("ochratoxin_a", "ochratoxin A"),
    ],
)
def test_short_names_keep_their_capitals_in_a_sentence(parameter: str, words: str) -> None:
    assert in_a_sentence(parameter) == words
