"""Workbooks and delimited text by chance, and workbooks whose bytes are damaged."""

from __future__ import annotations

import csv
import datetime
import io
import tempfile
import warnings
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import Workbook
from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE

from importer import read_sheet
from importer.models import Sheet
from tests.fuzz.tables import cells, grids
from tests.fuzz.test_pdf_intake import altered, changes

typed = st.one_of(
    cells,
    st.floats(allow_nan=False, allow_infinity=False),
    st.integers(-(10**12), 10**12),
    st.booleans(),
    st.dates(datetime.date(1900, 3, 1), datetime.date(2100, 1, 1)),
    st.just("=1/0"),
    st.just("=A1"),
    st.none(),
)
typed_grids = st.lists(st.lists(typed, min_size=1, max_size=6), min_size=1, max_size=9)


def _read(data: bytes, suffix: str) -> Sheet:
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder, f"sheet{suffix}")
        file.write_bytes(data)
        return read_sheet(file)


def _workbook(grid: list[list[object]], formats: list[str]) -> bytes:
    book = Workbook()
    page = book.active
    assert page is not None
    for i, row in enumerate(grid, 1):
        for j, value in enumerate(row, 1):
            plain = ILLEGAL_CHARACTERS_RE.sub("", value) if isinstance(value, str) else value
            cell = page.cell(i, j, plain)  # type: ignore[arg-type]
            cell.number_format = formats[(i + j) % len(formats)]
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


codes = st.sampled_from(("General", "0.0", "0.00%", "#,##0.0", '0.0" %"', "dd.mm.yyyy", "@", ";;;"))


@settings(deadline=None, max_examples=40)
@given(typed_grids, st.lists(codes, min_size=1, max_size=4))
def test_any_workbook_ends_as_figures_or_a_problem(grid: list[list[object]], formats: list[str]) -> None:
    sheet = _read(_workbook(grid, formats), ".xlsx")
    assert sheet.analyses or sheet.problems
    for analysis in sheet.analyses:
        for figure in analysis.figures:
            assert figure.reasons or figure.state == "accepted"


@settings(deadline=None, max_examples=60)
@given(grids, st.sampled_from(",;\t|"), st.sampled_from(("utf-8", "utf-16", "cp1252")))
def test_any_delimited_text_ends_as_figures_or_a_problem(grid: list[list[str]], delimiter: str, encoding: str) -> None:
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows(grid)
    data = out.getvalue().encode(encoding, "replace")
    sheet = _read(data, ".csv")
    assert sheet.analyses or sheet.problems
    assert all(problem.message and problem.file == "sheet.csv" for problem in sheet.problems)


@settings(deadline=None, max_examples=40)
@given(changes)
def test_a_damaged_workbook_is_figures_or_a_problem(how: list[tuple[str, float, int, bytes]]) -> None:
    data = _workbook([["Parameter", "Result", "Unit"], ["Moisture", 4.3, "%"], ["Friability", 86, "%"]], ["General"])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        sheet = _read(altered(data, how), ".xlsx")
    assert sheet.analyses or sheet.problems


@settings(deadline=None, max_examples=30)
@given(st.floats(4, 5), st.integers(0, 3))
def test_a_number_of_a_cell_is_the_figure(value: float, decimals: int) -> None:
    code = "0." + "0" * decimals if decimals else "0"
    sheet = _read(_workbook([["Batch", "A-114"], ["Parameter", "Result"], ["Moisture %", value]], [code]), ".xlsx")
    (figure,) = [figure for analysis in sheet.analyses for figure in analysis.figures]
    assert figure.value == pytest.approx(float(f"{value:.{decimals}f}"), abs=1e-9)
