"""Wide CSV: one row an analysis, one column a parameter and unit, and no two methods in one column."""

from __future__ import annotations

import csv
import io
import json

import pytest

from importer.models import Document, Unrecognised
from importer.output.units import unit_suffix
from importer.output.wide_out import to_wide
from importer.vocabulary.parameters import parameters
from tests.outputs import factory


def rows_of(doc: Document, *, include_review: bool = False) -> list[dict[str, str]]:
    text, _ = to_wide(doc, include_review=include_review)
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


def test_columns_are_named_by_parameter_and_unit() -> None:
    (row,) = rows_of(factory.document())
    assert row["extract_fine_dry_percent"] == "81.27"
    assert row["moisture_percent"] == "4.2"
    assert row["wort_ph_ph"] == "5.94"
    assert row["odour_text"] == "normal"
    assert {"colour_ebc", "diastatic_power_wk", "free_amino_nitrogen_mg_per_l", "viscosity_mpa_s"} <= set(row)


def test_header_columns_come_first() -> None:
    names = list(rows_of(factory.document())[0])
    assert names[0] == "analysis_id"
    assert max(names.index(name) for name in ("supplier", "malt", "batch", "basis")) < names.index("moisture_percent")
    assert names.index("review") < names.index("moisture_percent")


@pytest.mark.parametrize(
    ("basis", "names"),
    [
        ("EBC", {"extract_fine_dry_percent", "colour_ebc", "diastatic_power_wk"}),
        ("IoB", {"extract_fine_dry_l_deg_per_kg", "colour_ebc", "diastatic_power_iob"}),
        ("ASBC", {"extract_fine_dry_percent", "colour_lovibond", "diastatic_power_lintner"}),
    ],
)
def test_every_parameter_has_a_column_on_every_basis(basis: str, names: set[str]) -> None:
    text, _ = to_wide(Document.model_validate({"basis": basis}))
    columns = text.strip().split(",")
    assert names <= set(columns)
    assert len(set(columns)) == len(columns)
    for parameter in parameters():
        assert any(column == parameter or column.startswith(parameter + "_") for column in columns)


def test_what_cannot_be_converted_stands_in_a_column_of_its_own() -> None:
    (row,) = rows_of(factory.document())
    assert row["beta_glucan_mg_per_l_iob"] == "110.0"
    assert row["beta_glucan_mg_per_l"] == ""


def test_two_methods_never_share_a_column() -> None:
    ours = factory.beta_glucan().model_copy(update={"family": "EBC", "flags": (), "value": 150.0})
    doc = factory.document(factory.analysis(), factory.analysis(ours, id="b-1", derived=()))
    first, second = rows_of(doc)
    assert (first["beta_glucan_mg_per_l"], first["beta_glucan_mg_per_l_iob"]) == ("", "110.0")
    assert (second["beta_glucan_mg_per_l"], second["beta_glucan_mg_per_l_iob"]) == ("150.0", "")


def test_two_mashes_of_one_family_never_share_a_column() -> None:
    """MEBAK results of a mash at 65 °C count as EBC and cannot be compared with the Congress mash."""
    apart = factory.beta_glucan().model_copy(update={"family": "EBC", "value": 241.0})
    malt = factory.analysis(apart, method_family="EBC", derived=())
    (row,) = rows_of(factory.document(malt))
    assert row["beta_glucan_mg_per_l"] == ""
    assert row["beta_glucan_mg_per_l_ebc_isothermal_65"] == "241.0"
    (row,) = rows_of(factory.document(malt, basis="IoB"))
    assert row["beta_glucan_mg_per_l_ebc_isothermal_65"] == "241.0"
    congress = factory.analysis(apart, method_family="EBC", mash="congress", derived=())
    (row,) = rows_of(factory.document(congress, basis="IoB"))
    assert row["beta_glucan_mg_per_l_ebc"] == "241.0"


def test_a_unit_that_is_not_the_basis_unit_has_a_column_of_its_own() -> None:
    odd = factory.moisture().model_copy(update={"unit": "g/t"})
    (row,) = rows_of(factory.document(factory.analysis(odd, derived=())))
    assert row["moisture_percent"] == ""
    assert row["moisture_g_per_t"] == "4.2"


def test_a_figure_in_review_leaves_its_cell_empty() -> None:
    (row,) = rows_of(factory.document())
    assert row["nitrogen_ratio_percent"] == ""
    assert row["review"].split() == ["nitrogen_ratio"]
    (row,) = rows_of(factory.document(), include_review=True)
    assert row["nitrogen_ratio_percent"] == "42.8"
    assert row["review"].split() == ["nitrogen_ratio"]


def test_a_doubtful_batch_number_is_named() -> None:
    unsure = factory.analysis(header=factory.header("review", batch="PA-1"))
    missing = factory.analysis(header={})
    general = factory.analysis(header={}, kind="specification")
    rows = rows_of(factory.document(unsure, missing, general))
    assert [row["review"].split() for row in rows] == [
        ["batch", "nitrogen_ratio"],
        ["batch", "nitrogen_ratio"],
        ["nitrogen_ratio"],
    ]
    assert rows[2]["kind"] == "specification"


def test_two_figures_for_one_place_are_both_in_doubt() -> None:
    doc = factory.document(factory.analysis(factory.moisture(4.2), factory.moisture(4.9), derived=()))
    (row,) = rows_of(doc, include_review=True)
    assert row["moisture_percent"] == ""
    assert row["review"] == "moisture"


def test_a_computed_figure_fills_only_a_place_that_nothing_printed_claims() -> None:
    (row,) = rows_of(factory.document())
    assert row["total_protein_percent"] == "9.69"
    doubtful = factory.protein().model_copy(update={"state": "review", "printed": factory.printed("Protein", "9.9")})
    (row,) = rows_of(factory.document(factory.analysis(doubtful)))
    assert row["total_protein_percent"] == ""
    assert row["review"] == "total_protein"


def test_bounds_and_ranges_stay_what_they_are() -> None:
    text, schema_text = to_wide(factory.document())
    (row,) = csv.DictReader(io.StringIO(text, newline=""))
    assert row["ndma_ug_per_kg"] == "<2.5"
    assert row["saccharification_time_min"] == "10 – 15"
    types = {field["name"]: field["type"] for field in json.loads(schema_text)["fields"]}
    assert types["ndma_ug_per_kg"] == "string"
    assert types["saccharification_time_min"] == "string"
    assert types["moisture_percent"] == "number"
    assert list(types) == list(row)


def test_described_results_cannot_run() -> None:
    (row,) = rows_of(factory.document(factory.analysis(factory.odour("=1+1"), derived=())))
    assert row["odour_text"] == "'=1+1"


@pytest.mark.parametrize(
    ("unit", "suffix"),
    [
        ("%", "percent"),
        ("mg/L", "mg_per_l"),
        ("µg/kg", "ug_per_kg"),
        ("WK", "wk"),
        ("°IoB", "iob"),
        ("–", ""),
        ("kg/hL", "kg_per_hl"),
        ("mg/100 g", "mg_per_100_g"),
        ("mPa·s", "mpa_s"),
        ("pt/lb/gal", "pt_per_lb_per_gal"),
    ],
)
def test_units_in_names(unit: str, suffix: str) -> None:
    assert unit_suffix(unit) == suffix


def test_rows_without_a_parameter_are_told_as_printed() -> None:
    rows = (
        Unrecognised(label="Malttest", value="96.9 %", unit="%", page=1, box=factory.BOX),
        Unrecognised(label="Steep out", value="44.1", unit="h", page=1, box=factory.BOX),
    )
    told, none = rows_of(factory.document(factory.analysis(unrecognised=rows), factory.analysis(unrecognised=())))
    assert told["unrecognised"] == "Malttest: 96.9 %; Steep out: 44.1 h"
    assert none["unrecognised"] == ""


@pytest.mark.parametrize("evil", ["=HYPERLINK(1)", "+1+cmd", "-2+3", "@SUM(A1)", "\t=1", "＝1"])
def test_rows_without_a_parameter_never_run_as_a_formula(evil: str) -> None:
    """At the start of the cell, and after a semicolon where another delimiter is expected."""
    rows = tuple(Unrecognised(label=evil, value=evil, page=1, box=factory.BOX) for _ in range(2))
    (row,) = rows_of(factory.document(factory.analysis(unrecognised=rows)))
    first, second = row["unrecognised"].split("; ")
    assert first.startswith("'")
    assert second.startswith("'")


def test_the_schema_explains_the_rows_without_a_parameter() -> None:
    _, schema = to_wide(factory.document())
    (field,) = [field for field in json.loads(schema)["fields"] if field["name"] == "unrecognised"]
    assert field["type"] == "string"
    assert "no parameter" in field["description"]
