"""Spreadsheets and CSV files -> pages of words, one page a sheet of the workbook."""

from __future__ import annotations

import csv

from importer.errors import Damaged, EmptyFile, SheetError, TooLarge
from importer.intake.cells import Cell, Table, clean_text, with_the_texts_decimal_mark
from importer.intake.delimited import rows
from importer.intake.encoding import decode
from importer.intake.placement import to_page
from importer.intake.source import Source
from importer.intake.web import is_web_table, read_web
from importer.limits import MAX_PAGES
from importer.words import Page

_ZIP = b"PK"
_OLD = (b"\xd0\xcf\x11\xe0", b"\x09")
_ODS_MARK = b"mimetypeapplication/vnd.oasis.opendocument.spreadsheet"


def read_table_file(source: Source) -> list[Page]:
    """The filled sheets of a workbook, or the one table of a CSV file, in order.

    Raises EmptyFile, TooLarge, PasswordProtected or Damaged.
    """
    try:
        tables = _tables(source)
    except (SheetError, MemoryError):
        raise
    except Exception as error:  # readers of other people's formats raise whatever they stumble over
        raise Damaged(
            f"{source.name} is damaged or is not the spreadsheet it claims to be ({type(error).__name__}). "
            "Open it in a spreadsheet program, save it again, and try once more."
        ) from error
    filled = [table for table in tables if table.cells]
    if not filled:
        raise EmptyFile(f"{source.name} has no filled cells. If it shows a picture of a sheet, save it as PDF.")
    if len(filled) > MAX_PAGES:
        raise TooLarge(f"{source.name} has {len(filled)} sheets; at most {MAX_PAGES} are read. Split it and try again.")
    with_the_texts_decimal_mark(filled)
    return [to_page(table, source.name) for table in filled]


def _tables(source: Source) -> list[Table]:
    if source.data.startswith(_ZIP):
        if _ODS_MARK in source.data[:200]:
            from importer.intake.opendocument import read_ods

            return read_ods(source)
        from importer.intake.workbook import read_xlsx

        return read_xlsx(source)
    if source.data.startswith(_OLD):
        from importer.intake.workbook import read_xls

        return read_xls(source)
    if is_web_table(source.data):
        return read_web(source.data, source.name)
    return [_delimited(source)]


def _delimited(source: Source) -> Table:
    text = decode(source.data)
    if text is None:
        raise Damaged(f"{source.name} is not readable text. Save it as CSV again, and try once more.")
    table = Table(1)
    try:
        for row, cells in enumerate(rows(text)):
            for column, content in enumerate(cells):
                shown = clean_text(content)
                if shown:
                    table.put(row, column, Cell(shown), source.name)
    except csv.Error as error:
        raise Damaged(f"{source.name} is damaged ({error}). Save it as CSV again, and try once more.") from None
    return table
