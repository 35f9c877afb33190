"""Workbooks and delimited text by chance, and workbooks whose bytes are damaged."""

from __future__ import annotations

import csv
import datetime
import io
import warnings
import zipfile
from functools import cache
from html import escape

import pytest
import xlwt
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import Workbook
from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE

from tests.fuzz.damage import altered, changes, read_bytes
from tests.fuzz.tables import cells, grids

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
    sheet = read_bytes(_workbook(grid, formats), ".xlsx")
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
    sheet = read_bytes(data, ".csv")
    assert sheet.analyses or sheet.problems
    assert all(problem.message and problem.file == "sheet.csv" for problem in sheet.problems)


@settings(deadline=None, max_examples=40)
@given(changes)
def test_a_damaged_workbook_is_figures_or_a_problem(how: list[tuple[str, float, int, bytes]]) -> None:
    data = _workbook([["Parameter", "Result", "Unit"], ["Moisture", 4.3, "%"], ["Friability", 86, "%"]], ["General"])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        sheet = read_bytes(altered(data, how), ".xlsx")
    assert sheet.analyses or sheet.problems


ROWS = (("Batch", "A-114", ""), ("Moisture", 4.3, "%"), ("Friability", 86, "%"))


@cache
def _old_workbook() -> bytes:
    book = xlwt.Workbook()
    sheet = book.add_sheet("Malt")
    for i, cells_of_row in enumerate(ROWS):
        for j, value in enumerate(cells_of_row):
            sheet.write(i, j, value)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


@settings(deadline=None, max_examples=40)
@given(changes)
def test_a_damaged_old_workbook_is_figures_or_a_problem(how: list[tuple[str, float, int, bytes]]) -> None:
    sheet = read_bytes(altered(_old_workbook(), how), ".xls")
    assert sheet.analyses or sheet.problems


TAGS = (
    "table:table",
    "table:table-row",
    "table:table-cell",
    "table:covered-table-cell",
    "text:p",
    "text:span",
    "text:s",
)
ATTRIBUTES = (
    'table:number-columns-repeated="3"', 'table:number-rows-repeated="100000000"', 'table:number-columns-spanned="x"',
    'office:value-type="float" office:value="4.3"', 'office:value-type="date" office:date-value="2024-99-99"',
    'office:value-type="percentage" office:value="nan"', 'table:visibility="collapse"', 'text:c="999999999"', "",
)  # fmt: skip
SPACES = " ".join(f'xmlns:{s}="urn:oasis:names:tc:opendocument:xmlns:{s}:1.0"' for s in ("office", "table", "text"))
marked_up = st.recursive(
    cells.map(lambda text: escape(ILLEGAL_CHARACTERS_RE.sub("", text))),
    lambda inner: st.builds(
        lambda tag, attribute, parts: f"<{tag} {attribute}>{''.join(parts)}</{tag}>",
        st.sampled_from(TAGS), st.sampled_from(ATTRIBUTES), st.lists(inner, max_size=4),
    ),
    max_leaves=20,
)  # fmt: skip


def _open_document(content: str) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        body = f"<office:body><office:spreadsheet>{content}</office:spreadsheet></office:body>"
        archive.writestr(
            "content.xml",
            f"<office:document-content {SPACES}>{body}</office:document-content>".encode("utf-8", "replace"),
        )
    return out.getvalue()


@settings(deadline=None, max_examples=60)
@given(marked_up)
def test_any_open_document_sheet_ends_as_figures_or_a_problem(content: str) -> None:
    sheet = read_bytes(_open_document(content), ".ods")
    assert sheet.analyses or sheet.problems


@settings(deadline=None, max_examples=30)
@given(st.floats(4, 5), st.integers(0, 3))
def test_a_number_of_a_cell_is_the_figure(value: float, decimals: int) -> None:
    code = "0." + "0" * decimals if decimals else "0"
    sheet = read_bytes(_workbook([["Batch", "A-114"], ["Parameter", "Result"], ["Moisture %", value]], [code]), ".xlsx")
    (figure,) = [figure for analysis in sheet.analyses for figure in analysis.figures]
    assert figure.value == pytest.approx(float(f"{value:.{decimals}f}"), abs=1e-9)
