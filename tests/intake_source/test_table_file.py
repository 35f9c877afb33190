"""Spreadsheets become pages: every filled cell as it is shown, in its place, and none over another.

The workbooks are written by general libraries (openpyxl, xlwt, odfpy), so that reader and writer are not the same code.
"""

from __future__ import annotations

import contextlib
import datetime
import io
import zipfile
from pathlib import Path

import openpyxl
import pytest
import xlwt
from hypothesis import given, settings
from hypothesis import strategies as st
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import CoveredTableCell, Table, TableCell, TableRow
from odf.text import P
from openpyxl.styles import Alignment, Font

from importer.errors import Damaged, EmptyFile, PasswordProtected, SheetError, TooLarge
from importer.intake import cells as cells_module
from importer.intake import placement, workbook
from importer.intake.cells import Cell
from importer.intake.cells import Table as Grid
from importer.intake.source import Source, open_source
from importer.intake.table_file import read_table_file
from importer.words import Page, Word


def source_of(data: bytes, name: str = "x.xlsx") -> Source:
    return Source(Path(name), name, "0" * 64, "spreadsheet", data, datetime.datetime(2024, 1, 1, tzinfo=datetime.UTC))


def xlsx(book: openpyxl.Workbook) -> Source:
    out = io.BytesIO()
    book.save(out)
    return source_of(out.getvalue())


def lines(page: Page, words: tuple[Word, ...] | None = None) -> list[list[str]]:
    """The texts of each row, cut where the gap is wider than a space."""
    rows: dict[float, list[Word]] = {}
    for word in words or page.words:
        rows.setdefault(word.top, []).append(word)
    result = []
    for _, row in sorted(rows.items()):
        texts: list[str] = []
        end = None
        for word in sorted(row, key=lambda word: word.x0):
            if end is not None and word.x0 - end < 5:
                texts[-1] += f" {word.text}"
            else:
                texts.append(word.text)
            end = word.x1
        result.append(texts)
    return result


def book_of(rows: list[list[object]]) -> openpyxl.Workbook:
    book = openpyxl.Workbook()
    for row in rows:
        book.active.append(row)
    return book


def test_cells_stand_in_rows_and_columns() -> None:
    (page,) = read_table_file(
        xlsx(book_of([["Parameter", "Result", "Unit"], ["Extract, fine, dry", 81.2, "%"], ["Colour", 3.5, "EBC"]]))
    )
    assert lines(page) == [
        ["Parameter", "Result", "Unit"],
        ["Extract, fine, dry", "81.2", "%"],
        ["Colour", "3.5", "EBC"],
    ]
    assert (page.number, page.reading, page.doubt) == (1, "spreadsheet", None)
    by_text = {word.text: word for word in page.words}
    assert by_text["Result"].x0 == by_text["81.2"].x0 == by_text["3.5"].x0
    assert by_text["Colour"].top - by_text["Extract,"].top == placement.ROW_PITCH
    assert page.width > max(word.x1 for word in page.words)


def test_numbers_and_dates_as_they_are_shown() -> None:
    book = book_of([[4.2, 0.042, datetime.datetime(2024, 3, 15, 9, 30), datetime.date(2024, 3, 1), True, 240317]])
    book.active["A1"].number_format = "0.00"
    book.active["B1"].number_format = "0.0%"
    (page,) = read_table_file(xlsx(book))
    assert lines(page) == [["4.20", "4.2%", "2024-03-15", "2024-03-01", "TRUE", "240317"]]


def test_numbers_take_the_decimal_mark_of_the_texts() -> None:
    (page,) = read_table_file(xlsx(book_of([["Wassergehalt", 4.25, "max. 4,5"], ["Datum", "15.03.2024", 3]])))
    assert lines(page)[0] == ["Wassergehalt", "4,25", "max. 4,5"]
    (page,) = read_table_file(xlsx(book_of([["Moisture", 4.25, "max. 4.5"], ["x", "4,5", None]])))
    assert lines(page)[0] == ["Moisture", "4.25", "max. 4.5"]


def test_long_texts_run_over_empty_cells_but_not_into_filled_ones() -> None:
    title = "Certificate of analysis for a long list of malts " * 2
    (page,) = read_table_file(
        xlsx(book_of([[title], ["Moisture", 4.2, "%"], ["Soluble nitrogen ratio of the wort", 1, "%"]]))
    )
    assert lines(page)[1] == ["Moisture", "4.2", "%"]
    by_text = {word.text: word for word in page.words}
    assert by_text["4.2"].x0 < 300 < max(word.x1 for word in page.words)
    assert lines(page)[2] == ["Soluble nitrogen ratio of the wort", "1", "%"]


def test_a_cell_that_stands_alone_keeps_its_lines() -> None:
    (page,) = read_table_file(xlsx(book_of([["Batch: 17\nCrop: 2023"], ["Extract\nfine", 81.2], ["Colour", 3.5]])))
    assert lines(page) == [["Batch: 17"], ["Crop: 2023"], ["Extract fine", "81.2"], ["Colour", "3.5"]]


def test_merged_heads_stand_in_the_middle_of_their_columns() -> None:
    book = book_of([["Parameter", "Limits", None], [None, "minimum", "maximum"], ["Moisture", 3.0, 5.0]])
    book.active.merge_cells("B1:C1")
    book.active["B1"].alignment = Alignment(horizontal="center")
    book.active["A3"].font = Font(bold=True)
    (page,) = read_table_file(xlsx(book))
    by_text = {word.text: word for word in page.words}
    head = by_text["Limits"]
    assert by_text["minimum"].x0 < head.x0
    assert head.x1 < by_text["maximum"].x1
    assert by_text["Moisture"].bold
    assert not by_text["3"].bold


def test_what_is_hidden_is_kept_apart() -> None:
    book = book_of([["Moisture", 4.2, "secret"], ["Colour", 3.5, "secret"], ["pH", 5.9, "secret"]])
    book.active.row_dimensions[2].hidden = True
    book.active.column_dimensions["C"].hidden = True
    hidden = book.create_sheet("lists")
    hidden["A1"] = "never seen"
    hidden.sheet_state = "hidden"
    book.create_sheet("second")["B7"] = "Extract"
    pages = read_table_file(xlsx(book))
    assert [page.number for page in pages] == [1, 3]
    assert lines(pages[0]) == [["Moisture", "4.2"], ["pH", "5.9"]]
    assert sorted(word.text for word in pages[0].hidden) == ["3.5", "Colour", "secret", "secret", "secret"]
    assert lines(pages[1]) == [["Extract"]]


def test_a_formula_without_a_stored_result_puts_the_page_in_doubt() -> None:
    """openpyxl stores formulas without results, as programs that never calculated them do."""
    (page,) = read_table_file(xlsx(book_of([["Moisture", 4.2], ["Protein", "=B1*6.25"]])))
    assert page.doubt is not None
    assert "formula" in page.doubt
    assert lines(page) == [["Moisture", "4.2"], ["Protein", "#VALUE!"]]


def test_old_workbooks() -> None:
    book = xlwt.Workbook()
    sheet = book.add_sheet("Malz")
    two = xlwt.easyxf("font: bold on", num_format_str="0.00")
    day = xlwt.easyxf(num_format_str="DD.MM.YYYY")
    for row, (label, value) in enumerate([("Wassergehalt", 4.2), ("Farbe", 3.5)]):
        sheet.write(row, 0, label)
        sheet.write(row, 1, value, two)
        sheet.write(row, 2, "max. 4,5")
    sheet.write(2, 0, datetime.datetime(2024, 3, 15), day)
    sheet.write(2, 1, True)
    book.add_sheet("leer")
    out = io.BytesIO()
    book.save(out)
    (page,) = read_table_file(source_of(out.getvalue(), "x.xls"))
    assert lines(page) == [["Wassergehalt", "4,20", "max. 4,5"], ["Farbe", "3,50", "max. 4,5"], ["2024-03-15", "TRUE"]]


def ods(rows: list[list[tuple[str, dict[str, object]]]]) -> bytes:
    document = OpenDocumentSpreadsheet()
    table = Table(name="Malt")
    for row in rows:
        line = TableRow()
        for text, attributes in row:
            cell = CoveredTableCell() if text == "(covered)" else TableCell(**attributes)
            for part in text.split("\n") if text not in ("", "(covered)") else ():
                cell.addElement(P(text=part))
            line.addElement(cell)
        table.addElement(line)
    document.spreadsheet.addElement(table)
    out = io.BytesIO()
    document.write(out)
    return out.getvalue()


def test_open_document_sheets() -> None:
    number = {"valuetype": "float", "value": "4.2"}
    data = ods(
        [
            [("Prüfbericht", {"numbercolumnsspanned": 2}), ("(covered)", {}), ("", {"numbercolumnsrepeated": 16_000})],
            [("Wassergehalt", {}), ("4,20", number), ("%", {})],
            [("analysiert", {}), ("15.03.24", {"valuetype": "date", "datevalue": "2024-03-15T00:00:00"})],
            [("", {}), ("x", {"numbercolumnsrepeated": 2})],
        ]
    )
    (page,) = read_table_file(source_of(data, "x.ods"))
    assert lines(page) == [["Prüfbericht"], ["Wassergehalt", "4,20", "%"], ["analysiert", "2024-03-15"], ["x", "x"]]


def test_delimited_text() -> None:
    data = "Lieferant;Nordtal\n\nWassergehalt;4,2;%\nFarbe;3,5;EBC\n".encode("cp1252")
    (page,) = read_table_file(source_of(data, "x.csv"))
    assert lines(page) == [["Lieferant", "Nordtal"], ["Wassergehalt", "4,2", "%"], ["Farbe", "3,5", "EBC"]]


@pytest.mark.parametrize("share", [0.1, 0.3, 0.5, 0.7, 0.9, 0.99])
def test_a_cut_off_workbook_is_damaged(tmp_path: Path, share: float) -> None:
    data = xlsx(book_of([["Moisture", 4.2]] * 50)).data
    path = tmp_path / "cut.xlsx"
    path.write_bytes(data[: int(len(data) * share)])
    with pytest.raises(Damaged):
        read_table_file(open_source(path))


def test_altered_workbooks_give_pages_or_a_reason() -> None:
    data = bytearray(xlsx(book_of([["Moisture", 4.2, "%"]] * 5)).data)
    for at in range(40, len(data), 97):
        altered = bytes(data[:at]) + bytes([data[at] ^ 0xFF]) + bytes(data[at + 1 :])
        with contextlib.suppress(SheetError):
            assert all(page.words for page in read_table_file(source_of(altered)))


def test_empty_workbooks() -> None:
    with pytest.raises(EmptyFile, match="no filled cells"):
        read_table_file(xlsx(openpyxl.Workbook()))


def test_an_archive_that_unpacks_to_too_much(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(workbook, "MAX_UNPACKED_BYTES", 5_000)
    out = io.BytesIO()
    book_of([["Moisture", 4.2]]).save(out)
    with zipfile.ZipFile(out, "a", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("xl/worksheets/sheet9.xml", b" " * 1_000_000)
    with pytest.raises(TooLarge, match="unpacks"):
        read_table_file(source_of(out.getvalue()))


def test_entities_are_not_expanded() -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        archive.writestr("content.xml", '<!DOCTYPE a [<!ENTITY b "bbbb"><!ENTITY c "&b;&b;">]><a>&c;</a>')
    with pytest.raises(Damaged):
        read_table_file(source_of(out.getvalue(), "x.ods"))


def test_too_many_cells_and_words(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(cells_module, "MAX_CELLS", 20)
    with pytest.raises(TooLarge, match="20 cells"):
        read_table_file(xlsx(book_of([["a", "b", "c"]] * 10)))
    monkeypatch.setattr(placement, "MAX_WORDS_PER_PAGE", 5)
    with pytest.raises(TooLarge, match="5 words"):
        read_table_file(xlsx(book_of([["a", "b", "c"]] * 3)))


def test_a_cell_far_out_takes_no_time() -> None:
    book = book_of([["Moisture", 4.2]])
    book.active["XFD1048576"] = "far"
    (page,) = read_table_file(xlsx(book))
    assert lines(page) == [["Moisture", "4.2"], ["far"]]
    assert page.width < 1000
    assert page.height < 1000


def test_locked_old_workbooks(monkeypatch: pytest.MonkeyPatch) -> None:
    import xlrd

    def locked(**_: object) -> None:
        raise xlrd.XLRDError("Workbook is encrypted")

    monkeypatch.setattr(xlrd, "open_workbook", locked)
    with pytest.raises(PasswordProtected):
        read_table_file(source_of(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "x.xls"))


GRIDS = st.dictionaries(
    st.tuples(st.integers(0, 12), st.integers(0, 9)),
    st.text("abc 1.,\n", min_size=1, max_size=30).map(str.strip).filter(bool),
    min_size=1,
    max_size=30,
)


@given(GRIDS)
@settings(max_examples=60)
def test_cells_never_touch_whatever_the_grid(grid: dict[tuple[int, int], str]) -> None:
    table = Grid(1)
    for (row, column), text in grid.items():
        table.put(row, column, Cell(text), "x")
    page = placement.to_page(table, "x")
    assert sorted(word.text for word in page.words) == sorted(part for text in grid.values() for part in text.split())
    rows: dict[float, list[Word]] = {}
    for word in page.words:
        rows.setdefault(word.top, []).append(word)
    per_row: dict[int, list[tuple[int, str]]] = {}
    for (row, column), text in sorted(grid.items()):
        per_row.setdefault(row, []).append((column, text))
    expected = []
    for entries in per_row.values():
        if len(entries) == 1:
            expected += [[" ".join(line.split())] for line in entries[0][1].split("\n") if line.strip()]
        else:
            expected.append([" ".join(text.split()) for _, text in entries])
    assert lines(page) == expected
