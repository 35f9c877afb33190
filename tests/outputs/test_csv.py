"""Long CSV: RFC 4180, a schema that fits, nothing lost, and nothing that a spreadsheet program would run."""

from __future__ import annotations

import csv
import io
import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.output.cells import safe_text
from importer.output.csv_out import LONG_COLUMNS, schema_path, to_csv
from tests.outputs import factory


def read_back(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


def test_one_row_a_figure_with_derived_ones_marked() -> None:
    doc = factory.document()
    rows = read_back(to_csv(doc)[0])
    assert len(rows) == len(doc.analyses[0].figures) + len(doc.analyses[0].derived)
    assert [row["parameter"] for row in rows if row["derived"] == "true"] == ["total_protein"]


def test_values_equal_those_of_the_document() -> None:
    doc = factory.document()
    rows = read_back(to_csv(doc)[0])
    for row, figure in zip(rows, (*doc.analyses[0].figures, *doc.analyses[0].derived), strict=True):
        assert row["parameter"] == figure.parameter
        assert (float(row["value"]) if row["value"] else None) == figure.value
        assert (row["unit"] or None) == figure.unit
        assert row["state"] == figure.state
        assert tuple(row["flags"].split()) == figure.flags
        assert (float(row["spread"]) if row["spread"] else None) == figure.spread
        assert row["estimated"] == str(figure.estimated).lower()
        assert row["batch"] == "PA-2024-017"
        assert row["basis"] == "EBC"
    by_name = {row["parameter"]: row for row in rows}
    assert (by_name["ndma"]["bound"], by_name["ndma"]["value"]) == ("<", "2.5")
    assert by_name["saccharification_time"]["range_high"] == "15.0"
    assert by_name["nitrogen_ratio"]["offset_points"] == "4.8"
    assert "309 L°/kg (IoB) to 81.27 % (EBC)" in by_name["extract_fine_dry"]["steps"]
    assert by_name["extract_fine_dry"]["also_printed"] == "Extract EBC fine 81.4 % (EBC)"
    assert by_name["moisture"]["printed_high"] == "5.0"


def test_the_form_is_that_of_rfc_4180() -> None:
    odour = factory.odour('he said "fresh",\nthen left')
    text, _ = to_csv(factory.document(factory.analysis(odour)))
    head, _, rest = text.partition("\r\n")
    assert head == ",".join(column.name for column in LONG_COLUMNS)
    assert '"he said ""fresh"",\nthen left"' in rest
    assert text.endswith("\r\n")
    assert all(len(row) == len(LONG_COLUMNS) for row in csv.reader(io.StringIO(text, newline="")))


def test_the_schema_describes_every_column_and_fits_the_cells() -> None:
    text, schema_text = to_csv(factory.document())
    schema = json.loads(schema_text)
    assert [field["name"] for field in schema["fields"]] == text.split("\r\n")[0].split(",")
    casts = {
        "number": float,
        "integer": int,
        "string": str,
        "boolean": {"true": True, "false": False}.__getitem__,
    }
    for row in read_back(text):
        for field in schema["fields"]:
            assert field["description"]
            if row[field["name"]] != "":
                casts[field["type"]](row[field["name"]])


@pytest.mark.parametrize(
    "text",
    [
        "=HYPERLINK(1)",
        "+SUM(A1)",
        "-2+3+cmd|' /C calc'!A0",
        "@SUM(1)",
        "\t=1",
        "\r=1",
        " =1",
        "＝1+1",
        "-A1",
    ],
)
def test_text_that_would_run_is_disarmed(text: str) -> None:
    safe = safe_text(text)
    assert safe.startswith("'")
    assert safe.replace("'", "") == text.replace("'", "")


@pytest.mark.parametrize("text", ["x;=1+1", "x\n=1", "x\t@a", "x|-A1", "x; =1"])
def test_text_that_another_delimiter_would_cut_is_disarmed(text: str) -> None:
    safe = safe_text(text)
    assert "'" in safe
    assert safe.replace("'", "") == text


@pytest.mark.parametrize("text", ["-1.5", "+5", "-1,5", "-", "–", "--", "4.2", "< 0.5", "max. 5", "a-b", "10-15", ""])
def test_harmless_text_stays(text: str) -> None:
    assert safe_text(text) == text


def test_nothing_of_a_sheet_can_run() -> None:
    attack = "=cmd|' /C calc'!A0"
    figure = factory.odour(attack).model_copy(
        update={"printed": factory.printed(attack, attack, attack, low=attack, high=attack), "reasons": (attack,)}
    )
    header = factory.header(supplier=attack, batch=attack, malt=attack)
    doc = factory.document(factory.analysis(figure, header=header, derived=()))
    (row,) = read_back(to_csv(doc)[0])
    assert not [name for name, cell in row.items() if cell.startswith(("=", "+", "-", "@"))]
    assert sum(cell.startswith("'=") for cell in row.values()) == 10


@given(st.text(max_size=40))
def test_no_text_ever_begins_a_formula(text: str) -> None:
    safe = safe_text(text)
    if safe and safe.lstrip()[:1] in tuple("=+-@＝＋－＠"):
        assert all(c in "+-−–—.,0123456789 \t%" for c in safe) or math.isfinite(float(safe))


def test_schema_names() -> None:
    from pathlib import Path

    assert schema_path(Path("out/malts.csv")) == Path("out/malts.schema.json")
    assert schema_path(Path("malts")) == Path("malts.schema.json")
