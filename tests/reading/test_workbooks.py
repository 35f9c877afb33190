"""Analyses in workbooks as laboratories keep them: groups of heads, averages, certificates below each other."""

from __future__ import annotations

import csv
import datetime
import io
from collections.abc import Sequence
from pathlib import Path

import openpyxl
import pytest
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import Table, TableCell, TableColumn, TableRow
from odf.text import P

from importer import read_sheet
from importer.models import Analysis

Rows = Sequence[Sequence[object]]
NAMES = ("Moisture", "Extract fine grind, dry", "Colour", "Friability")
UNITS = ("%", "%", "EBC", "%")
PARAMETERS = ("moisture", "extract_fine_dry", "colour", "friability")
ONE, OTHER = (4.2, 81.2, 3.5, 88), (4.6, 80.3, 4.1, 84)


def head(batch: object, malt: str = "Pilsner Malt") -> list[list[object]]:
    return [["Supplier", "Nordtal Maltings"], ["Malt type", malt], ["Batch no.", batch], ["Method", "EBC"], []]


def body(*columns: Sequence[object]) -> list[list[object]]:
    return [list(row) for row in zip(NAMES, UNITS, *columns, strict=True)]


def xlsx(tmp_path: Path, rows: Rows, merged: Sequence[str] = (), formats: dict[str, str] | None = None) -> Path:
    book = openpyxl.Workbook()
    for row in rows:
        book.active.append(list(row))
    for area in merged:
        book.active.merge_cells(area)
    for place, code in (formats or {}).items():
        book.active[place].number_format = code
    book.save(tmp_path / "a.xlsx")
    return tmp_path / "a.xlsx"


def batches(path: Path) -> dict[str, Analysis]:
    return {a.header["batch"].value: a for a in read_sheet(path).analyses if "batch" in a.header}


def accepted(analysis: Analysis) -> dict[str, float | None]:
    return {figure.parameter: figure.value for figure in analysis.figures if figure.state == "accepted"}


def told(values: Sequence[float]) -> dict[str, float]:
    return dict(zip(PARAMETERS, values, strict=True))


def test_two_heads_under_one_group_are_columns_of_their_own(tmp_path: Path) -> None:
    heads = [["Parameter", "Unit", "Specification", None, "Result", "Method"], [None, None, "min", "max", None, None]]
    rows = [*head("N-101"), *heads, *body((None, 80.0, 2.5, 80), (5.0, None, 4.5, None), ONE, ("EBC",) * 4)]
    path = xlsx(tmp_path, rows, ("A6:A7", "B6:B7", "C6:D6", "E6:E7", "F6:F7"))
    analysis = batches(path)["N-101"]
    assert accepted(analysis) == told(ONE)
    limits = {figure.parameter: (figure.limits.low, figure.limits.high) for figure in analysis.figures if figure.limits}
    assert limits["colour"] == (2.5, 4.5)


@pytest.mark.parametrize("average", ["Average 2024", "Ø 2024", "Mean 2023/24"])
def test_the_average_of_a_year_is_no_batch(tmp_path: Path, average: str) -> None:
    rows = [*head("N-102"), ["Parameter", "Unit", "This lot", "Previous lot", average], *body(ONE, OTHER, OTHER)]
    found = read_sheet(xlsx(tmp_path, rows)).analyses
    assert [analysis.header["batch"].value for analysis in found] == ["N-102"]
    assert accepted(found[0]) == told(ONE)


def test_certificates_below_each_other_are_told_apart(tmp_path: Path) -> None:
    table = ["Parameter", "Unit", "Result"]
    rows = [*head("N-103"), table, *body(ONE), [], [], *head("N-104", "Vienna Malt"), table, *body(OTHER)]
    found = batches(xlsx(tmp_path, rows))
    assert {batch: accepted(analysis) for batch, analysis in found.items()} == {
        "N-103": told(ONE),
        "N-104": told(OTHER),
    }
    assert found["N-104"].header["malt"].value == "Vienna Malt"


def test_a_batch_number_keeps_the_zeros_and_signs_that_it_is_shown_with(tmp_path: Path) -> None:
    rows = [*head(4177), ["Parameter", "Unit", "Result"], *body(ONE)]
    assert list(batches(xlsx(tmp_path, rows, formats={"B3": "000000"}))) == ["004177"]
    assert list(batches(xlsx(tmp_path, rows, formats={"B3": "00-0000"}))) == ["00-4177"]


def test_a_batch_number_that_a_spreadsheet_took_for_a_date_is_asked(tmp_path: Path) -> None:
    rows = [*head(datetime.date(2025, 11, 1)), ["Parameter", "Unit", "Result"], *body(ONE)]
    for code in ("mmm-yy", "yyyy-mm-dd"):
        (analysis,) = read_sheet(xlsx(tmp_path, rows, formats={"B3": code})).analyses
        assert analysis.header["batch"].state == "review"
        assert analysis.state == "review"


def test_a_column_of_methods_is_none_of_units(tmp_path: Path) -> None:
    rows = [*head("N-105"), ["parameter", "unit", "value", "method"], *body(ONE, ("EBC",) * 4)]
    text = io.StringIO(newline="")
    csv.writer(text).writerows(rows)
    (tmp_path / "a.csv").write_text(text.getvalue(), encoding="utf-8")
    assert accepted(batches(tmp_path / "a.csv")["N-105"]) == told(ONE)


def test_hidden_columns_of_an_open_document_are_not_read(tmp_path: Path) -> None:
    document, table = OpenDocumentSpreadsheet(), Table(name="A")
    table.addElement(TableColumn(numbercolumnsrepeated=2))
    table.addElement(TableColumn(visibility="collapse"))
    for row in [*head("N-106"), ["Parameter", "Unit", "Result", "Result"], *body(OTHER, ONE)]:
        line = TableRow()
        for content in row:
            cell = TableCell(valuetype="string")
            cell.addElement(P(text=str(content)))
            line.addElement(cell)
        table.addElement(line)
    document.spreadsheet.addElement(table)
    document.save(tmp_path / "a.ods")
    assert accepted(batches(tmp_path / "a.ods")["N-106"]) == told(ONE)


def test_a_label_that_stands_for_several_rows_goes_to_those_below_it(tmp_path: Path) -> None:
    rows = [
        *head("N-107"), ["Parameter", None, "Unit", "Result"],
        ["Extract", "fine grind, dry", "%", 81.7], [None, "coarse grind, dry", "%", 80.1],
        [None, "fine-coarse difference", "%", 1.6], ["Moisture", None, "%", 4.3], ["Colour", None, "EBC", 3.4],
    ]  # fmt: skip
    assert accepted(batches(xlsx(tmp_path, rows, ("A7:A9",)))["N-107"]) == {
        "extract_fine_dry": 81.7,
        "extract_coarse_dry": 80.1,
        "fine_coarse_difference": 1.6,
        "moisture": 4.3,
        "colour": 3.4,
    }


@pytest.mark.parametrize("heads", [("2025 Result", "2024 Result"), ("Result (2025)", "Result (2024)")])
def test_results_of_two_years_are_no_two_batches(tmp_path: Path, heads: tuple[str, str]) -> None:
    rows = [*head("N-108"), ["Parameter", "Unit", *heads], *body(ONE, OTHER)]
    (analysis,) = read_sheet(xlsx(tmp_path, rows)).analyses
    assert analysis.header["batch"].value == "N-108"
    assert accepted(analysis) == {}


def test_a_line_about_methods_above_heads_of_rows_speaks_of_the_sheet(tmp_path: Path) -> None:
    heads = ["Batch", *(f"{name} ({unit})" for name, unit in zip(NAMES, UNITS, strict=True))]
    rows = [["Supplier", "Nordtal Maltings"], ["Methods", "MEBAK"], [], heads, ["N-1091", *ONE], ["N-1092", *OTHER]]
    found = batches(xlsx(tmp_path, rows))
    assert {batch: accepted(analysis) for batch, analysis in found.items()} == {
        "N-1091": told(ONE),
        "N-1092": told(OTHER),
    }
    assert {analysis.family_from for analysis in found.values()} == {"stated"}


def test_entries_of_the_head_below_a_table_are_read(tmp_path: Path) -> None:
    rows = [["Parameter", "Unit", "Result"], *body(ONE), [], *head("N-110")]
    analysis = batches(xlsx(tmp_path, rows))["N-110"]
    assert accepted(analysis) == told(ONE)
    assert analysis.header["supplier"].value == "Nordtal Maltings"


def test_a_limit_in_a_line_is_no_result(tmp_path: Path) -> None:
    lines = (
        "Batch no. N-1120",
        "Methods: EBC",
        "Moisture max. 4.5 %",
        "Protein not more than 11.0 %",
        "Friability min. 82 %",
    )
    figures = [f for a in read_sheet(xlsx(tmp_path, [[line] for line in lines])).analyses for f in a.figures]
    assert len(figures) == 3
    assert {figure.state for figure in figures} == {"review"}
    lines = (
        "Batch no. N-1121",
        "Methods: EBC",
        "Moisture 4.5 %",
        "Friability (8 min) 82 %",
        "Saccharification time, min 10",
    )
    figures = [f for a in read_sheet(xlsx(tmp_path, [[line] for line in lines])).analyses for f in a.figures]
    assert not [reason for figure in figures for reason in figure.reasons if "limit" in reason]
