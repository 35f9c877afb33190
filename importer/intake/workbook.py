"""Excel workbooks, new (XLSX) and old (XLS), as tables of cells."""

from __future__ import annotations

import datetime
import io
import os
import re
import warnings
import zipfile
from typing import Any

from importer.errors import PasswordProtected, TooLarge
from importer.intake.cells import Cell, Table, clean_text
from importer.intake.number_format import shown
from importer.intake.source import Source
from importer.limits import MAX_UNPACKED_BYTES, MIB

_NO_RESULT = "A formula on this sheet has no stored result. Open the file in a spreadsheet program and save it again."

# What spreadsheet programs show where a formula fails.
_UNKNOWN = "#VALUE!"


def check_unpacked_size(source: Source) -> None:
    """Refuses an archive whose XML parts would unpack to more than is read; the archive's own list tells."""
    with zipfile.ZipFile(io.BytesIO(source.data)) as archive:
        size = sum(entry.file_size for entry in archive.infolist() if entry.filename.endswith((".xml", ".rels")))
    if size > MAX_UNPACKED_BYTES:
        raise TooLarge(
            f"{source.name} unpacks to more than {MAX_UNPACKED_BYTES // MIB} MB. Keep only the analyses and try again."
        )


def read_xlsx(source: Source) -> list[Table]:
    """The visible sheets of an XLSX workbook, with what their cells show."""
    check_unpacked_size(source)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # about features of the file that play no part here
        book = _load(source, data_only=True)
        formulas = None
        if _has_formulas(source):
            formulas = _load(source, data_only=False)
    tables = []
    for number, sheet in enumerate(book.worksheets, 1):
        if sheet.sheet_state != "visible":
            continue
        table = Table(number)
        _fill_xlsx(table, sheet, source.name)
        if formulas is not None:
            _show_missing_results(table, sheet, formulas.worksheets[number - 1], source.name)
        tables.append(table)
    return tables


def _load(source: Source, *, data_only: bool) -> Any:
    """The workbook, without what it was linked to elsewhere: results of links are kept in its cells."""
    import openpyxl

    return openpyxl.load_workbook(io.BytesIO(source.data), data_only=data_only, keep_links=False)


def _fill_xlsx(table: Table, sheet: Any, name: str) -> None:
    merged = {(area.min_row, area.min_col): area.max_col - area.min_col + 1 for area in sheet.merged_cells.ranges}
    hidden_rows = {row for row, dimension in sheet.row_dimensions.items() if dimension.hidden}
    hidden_columns = {
        column
        for dimension in sheet.column_dimensions.values()
        if dimension.hidden and dimension.min is not None
        for column in range(dimension.min, min(dimension.max, dimension.min + 20_000) + 1)
    }
    for (row, column), cell in sorted(sheet._cells.items()):
        if cell.value is None:
            continue
        text = clean_text(_shown(cell.value, cell.number_format))
        if not text:
            continue
        columns = merged.get((row, column), 1)
        table.put(
            row - 1,
            column - 1,
            Cell(
                text,
                number=isinstance(cell.value, (int, float)) and not isinstance(cell.value, bool),
                columns=columns,
                centred=columns > 1 and cell.alignment.horizontal in ("center", "centerContinuous"),
                bold=bool(cell.font.b),
                hidden=row in hidden_rows or column in hidden_columns,
            ),
            name,
        )


def _has_formulas(source: Source) -> bool:
    with zipfile.ZipFile(io.BytesIO(source.data)) as archive:
        return any(
            b"<f" in archive.read(entry)
            for entry in archive.namelist()
            if entry.startswith("xl/worksheets/") and entry.endswith(".xml")
        )


def _show_missing_results(table: Table, values: Any, formulas: Any, name: str) -> None:
    """Shows that there is something where a formula stands and the file does not say what it came to.

    A formula may well come to an empty text; that the file says.
    """
    for (row, column), cell in formulas._cells.items():
        if cell.data_type != "f":
            continue
        result = values._cells.get((row, column))
        if result is None or (result.value is None and result.data_type != "str"):
            table.doubt = _NO_RESULT
            table.put(row - 1, column - 1, Cell(_UNKNOWN), name)


def _shown(value: object, number_format: str) -> str:
    """A value of a cell as a person sees it; dates in ISO 8601."""
    if isinstance(value, bool):
        return "TRUE" if value else "FALSE"
    if isinstance(value, (int, float)):
        return shown(value, number_format)
    if isinstance(value, datetime.date):
        return _day(value, number_format)
    if isinstance(value, datetime.time):
        return value.isoformat("minutes")
    if isinstance(value, datetime.timedelta):
        minutes = round(value.total_seconds() / 60)
        return f"{minutes // 60}:{minutes % 60:02d}"
    return str(value)


# What a format code shows as it stands, and its colours and languages.
_LITERAL = re.compile(r'"[^"]*"|\[[^\]]*\]|\\.')


def _day(value: datetime.date, number_format: str) -> str:
    """A date in ISO 8601, without the day where the cell shows none ("Nov-25")."""
    code = _LITERAL.sub("", number_format.lower())
    shown = f"{value:%Y-%m-%d}"
    return shown[:7] if "y" in code and "m" in code and "d" not in code else shown


def read_xls(source: Source) -> list[Table]:
    """The visible sheets of an old XLS workbook."""
    import xlrd

    with open(os.devnull, "w", encoding="utf-8") as nowhere:
        try:
            book = xlrd.open_workbook(file_contents=source.data, formatting_info=True, logfile=nowhere)
        except xlrd.XLRDError as error:
            if "encrypted" in str(error).lower():
                raise PasswordProtected(
                    f"{source.name} is locked with a password. Ask the sender for an open copy."
                ) from None
            raise
        tables = []
        for number, sheet in enumerate(book.sheets(), 1):
            if sheet.visibility == 0:
                table = Table(number)
                _fill_xls(table, sheet, book, source.name)
                tables.append(table)
        return tables


def _fill_xls(table: Table, sheet: Any, book: Any, name: str) -> None:
    merged = {(row, column): end - column for row, _, column, end in sheet.merged_cells}
    for row in range(sheet.nrows):
        hidden_row = row in sheet.rowinfo_map and bool(sheet.rowinfo_map[row].hidden)
        for column in range(sheet.row_len(row)):
            cell = sheet.cell(row, column)
            style = book.xf_list[cell.xf_index]
            text = clean_text(_shown_xls(cell, style, book))
            if not text:
                continue
            columns = merged.get((row, column), 1)
            hidden = hidden_row or (column in sheet.colinfo_map and bool(sheet.colinfo_map[column].hidden))
            table.put(
                row,
                column,
                Cell(
                    text,
                    number=cell.ctype == 2,
                    columns=columns,
                    centred=columns > 1 and style.alignment.hor_align == 2,
                    bold=bool(book.font_list[style.font_index].bold),
                    hidden=hidden,
                ),
                name,
            )


def _shown_xls(cell: Any, style: Any, book: Any) -> str:
    import xlrd

    if cell.ctype == xlrd.XL_CELL_NUMBER:
        return shown(cell.value, book.format_map[style.format_key].format_str)
    if cell.ctype == xlrd.XL_CELL_DATE:
        when: datetime.datetime = xlrd.xldate_as_datetime(cell.value, book.datemode)
        code: str = book.format_map[style.format_key].format_str
        return when.time().isoformat("minutes") if cell.value < 1 else _day(when, code)
    if cell.ctype == xlrd.XL_CELL_BOOLEAN:
        return "TRUE" if cell.value else "FALSE"
    if cell.ctype == xlrd.XL_CELL_ERROR:
        return str(xlrd.error_text_from_code.get(cell.value, "#ERROR"))
    return str(cell.value)
