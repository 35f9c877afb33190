"""Spreadsheets as odd programs and hands leave them: each ends as figures, or as a problem that says what to do."""

from __future__ import annotations

import io
import time
import zipfile
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest

from importer import read_sheet
from importer.models import Sheet

ROWS = [
    ("Supplier", "Nordtal Malting", ""),
    ("Batch", "N-1", ""),
    ("Moisture", 4.2, "%"),
    ("Extract, fine, dry", 81.2, "%"),
    ("Colour", 3.5, "EBC"),
    ("Friability", 88, "%"),
]
Edit = Callable[[bytes], bytes]


def read(tmp_path: Path, name: str, data: bytes) -> Sheet:
    path = tmp_path / name
    path.write_bytes(data)
    return read_sheet(path)


def values(sheet: Sheet) -> dict[str, float | None]:
    return {figure.parameter: figure.value for analysis in sheet.analyses for figure in analysis.figures}


ALL = {"moisture": 4.2, "extract_fine_dry": 81.2, "colour": 3.5, "friability": 88.0}

# ------------------------------------------------------------------------------------------------------------ workbooks


def xlsx(edits: dict[str, Edit] | None = None, added: dict[str, bytes] | None = None) -> bytes:
    """The workbook with some of its parts changed, and others added."""
    book = openpyxl.Workbook()
    for row in ROWS:
        book.active.append(row)
    plain, out = io.BytesIO(), io.BytesIO()
    book.save(plain)
    with zipfile.ZipFile(plain) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            edit = (edits or {}).get(name)
            before = old.read(name)
            after = edit(before) if edit else before
            assert (after != before) is (edit is not None), name
            new.writestr(name, after)
        for name, data in (added or {}).items():
            new.writestr(name, data)
    return out.getvalue()


CELL = b'<c r="B3" t="n"><v>4.2</v></c>'


def cell(instead: bytes) -> dict[str, Edit]:
    return {"xl/worksheets/sheet1.xml": lambda xml: xml.replace(CELL, instead)}


def test_a_formula_is_worth_its_stored_result(tmp_path: Path) -> None:
    sheet = read(tmp_path, "a.xlsx", xlsx(cell(b'<c r="B3"><f>[1]Lab!$B$2*1</f><v>4.2</v></c>')))
    assert values(sheet) == ALL
    assert not sheet.problems


@pytest.mark.parametrize(
    "instead", [b'<c r="B3"><f>B4/20</f></c>', b'<c r="B3" t="e"><f>[1]Lab!$B$2</f><v>#REF!</v></c>']
)
def test_a_result_that_is_not_there_leaves_its_row(tmp_path: Path, instead: bytes) -> None:
    sheet = read(tmp_path, "a.xlsx", xlsx(cell(instead)))
    assert values(sheet) == {**ALL, "moisture": None}
    (figure,) = [f for analysis in sheet.analyses for f in analysis.figures if f.parameter == "moisture"]
    assert figure.state == "review"


def test_a_formula_that_comes_to_an_empty_text_lacks_nothing(tmp_path: Path) -> None:
    empty = CELL + b'<c r="E3" t="str"><f>IF(A1="","",A1)</f><v></v></c>'
    sheet = read(tmp_path, "a.xlsx", xlsx(cell(empty)))
    assert values(sheet) == ALL
    reasons = [reason for analysis in sheet.analyses for figure in analysis.figures for reason in figure.reasons]
    assert not [reason for reason in reasons if "formula" in reason]


RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
LINK_TYPE = b"application/vnd.openxmlformats-officedocument.spreadsheetml.externalLink+xml"
LINK = (
    b'<externalLink xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><externalBook xmlns:r="'
    + RELATIONS.encode()
    + b'" r:id="rId1"><sheetNames><sheetName val="Lab"/></sheetNames></externalBook></externalLink>'
)
LINKED: dict[str, Edit] = {
    **cell(b'<c r="B3"><f>[1]Lab!$B$2</f><v>4.2</v></c>'),
    "xl/workbook.xml": lambda xml: xml.replace(
        b"</sheets>",
        b'</sheets><externalReferences><externalReference xmlns:r="'
        + RELATIONS.encode()
        + b'" r:id="rId99"/></externalReferences>',
    ),
    "xl/_rels/workbook.xml.rels": lambda xml: xml.replace(
        b"</Relationships>",
        b'<Relationship Id="rId99" Type="'
        + RELATIONS.encode()
        + b'/externalLink" Target="externalLinks/externalLink1.xml"/></Relationships>',
    ),
    "[Content_Types].xml": lambda xml: xml.replace(
        b"</Types>",
        b'<Override PartName="/xl/externalLinks/externalLink1.xml" ContentType="' + LINK_TYPE + b'"/></Types>',
    ),
}


@pytest.mark.parametrize("parts", [0, 1, 2], ids=["link is gone", "its target is gone", "whole"])
def test_a_workbook_with_links_to_others(tmp_path: Path, parts: int) -> None:
    """What it is linked to is never looked for; a copy by email often lacks it."""
    package = b"http://schemas.openxmlformats.org/package/2006/relationships"
    target = (
        b'<Relationships xmlns="' + package + b'"><Relationship Id="rId1" Type="' + RELATIONS.encode()
        + b'/externalLinkPath" Target="file:///etc/passwd" TargetMode="External"/></Relationships>'
    )  # fmt: skip
    added = {"xl/externalLinks/externalLink1.xml": LINK, "xl/externalLinks/_rels/externalLink1.xml.rels": target}
    sheet = read(tmp_path, "a.xlsx", xlsx(LINKED, dict(list(added.items())[:parts])))
    assert values(sheet) == ALL
    assert not sheet.problems


# --------------------------------------------------------------------------------------------------------- OpenDocument

SPACES = " ".join(
    f'xmlns:{name}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"' for name in ("office", "table", "text")
)


def ods(*rows: str) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        archive.writestr(
            "content.xml",
            f"<office:document-content {SPACES}><office:body><office:spreadsheet><table:table>"
            f"{''.join(rows)}</table:table></office:spreadsheet></office:body></office:document-content>",
        )
    return out.getvalue()


def row(*cells: str, times: str = "1") -> str:
    return f'<table:table-row table:number-rows-repeated="{times}">{"".join(cells)}</table:table-row>'


def filled(text: object, attributes: str = "") -> str:
    return f"<table:table-cell {attributes}><text:p>{text}</text:p></table:table-cell>"


def empty(times: int) -> str:
    return f'<table:table-cell table:number-columns-repeated="{times}"/>'


TABLE = [row(*map(filled, cells)) for cells in ROWS]
MILLIONS = 100_000_000


@pytest.mark.parametrize(
    "rows",
    [
        [row(*map(filled, cells), empty(MILLIONS)) for cells in ROWS],
        [*TABLE, row(empty(1024), times=str(MILLIONS)), row(filled("end"))],
        [row(filled(a, f'table:number-columns-spanned="{MILLIONS}"'), filled(b), filled(c)) for a, b, c in ROWS],
        [*TABLE, row(filled(7, f'table:number-columns-repeated="{MILLIONS}"'))],
        [*TABLE, row(filled(7, 'table:number-columns-repeated="-5"'))],
    ],
    ids=["empty columns", "empty rows", "merged", "filled columns", "fewer than none"],
)
def test_columns_and_rows_by_the_million(tmp_path: Path, rows: list[str]) -> None:
    began = time.process_time()
    sheet = read(tmp_path, "a.ods", ods(*rows))
    assert values(sheet) == ALL
    assert time.process_time() - began < 60


@pytest.mark.parametrize("times", [str(MILLIONS), "9" * 5000, "²"])
def test_filled_rows_by_the_million(tmp_path: Path, times: str) -> None:
    sheet = read(tmp_path, "a.ods", ods(*TABLE, row(filled(7), times=times)))
    ((code, message),) = [(problem.code, problem.message) for problem in sheet.problems]
    assert code in ("too-large", "damaged")
    assert "try" in message


# ------------------------------------------------------------------------------------------------------------------ CSV


@pytest.mark.parametrize("name", ["a.csv", "a.txt"])
@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "utf-16-be", "utf-32"])
def test_wide_characters(tmp_path: Path, name: str, encoding: str) -> None:
    text = "\r\n".join(";".join(str(cell).replace(".", ",") for cell in cells) for cells in ROWS)
    assert values(read(tmp_path, name, text.encode(encoding))) == ALL


def test_wide_characters_cut_off_in_the_middle(tmp_path: Path) -> None:
    text = "\r\n".join(";".join(map(str, cells)) for cells in ROWS)
    ((code, message),) = [(p.code, p.message) for p in read(tmp_path, "a.csv", text.encode("utf-16")[:-1]).problems]
    assert code == "damaged"
    assert "send it again" in message
