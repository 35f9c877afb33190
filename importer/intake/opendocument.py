"""OpenDocument spreadsheets (ODS) as tables of cells, after OpenDocument 1.3 part 3, chapter 9."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from defusedxml.ElementTree import fromstring

from importer.errors import TooLarge
from importer.intake.cells import Cell, Table, clean_text
from importer.intake.number_format import general
from importer.intake.source import Source
from importer.intake.workbook import check_unpacked_size
from importer.limits import MAX_CELLS

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

_NS = "urn:oasis:names:tc:opendocument:xmlns:"
_TABLE, _TEXT = f"{{{_NS}table:1.0}}", f"{{{_NS}text:1.0}}"
_OFFICE, _STYLE = f"{{{_NS}office:1.0}}", f"{{{_NS}style:1.0}}"
_MOST_COLUMNS = 20_000
_GROUPS = {f"{_TABLE}table-header-rows", f"{_TABLE}table-row-group", f"{_TABLE}table-rows"}


def read_ods(source: Source) -> list[Table]:
    """The visible sheets of an ODS workbook, with the text that their cells show."""
    check_unpacked_size(source)
    with zipfile.ZipFile(io.BytesIO(source.data)) as archive:
        root = fromstring(archive.read("content.xml"), forbid_dtd=True)
    hidden = {
        style.get(f"{_STYLE}name")
        for style in root.iter(f"{_STYLE}style")
        if any(p.get(f"{_TABLE}display") == "false" for p in style.iter(f"{_STYLE}table-properties"))
    }
    tables = []
    body = root.find(f"{_OFFICE}body/{_OFFICE}spreadsheet")
    for number, element in enumerate([] if body is None else body.iter(f"{_TABLE}table"), 1):
        if element.get(f"{_TABLE}style-name") not in hidden:
            table = Table(number)
            _fill(table, element, source.name)
            tables.append(table)
    return tables


def _fill(table: Table, element: Element, name: str) -> None:
    row = 0
    unseen = _hidden_columns(element)
    for row_element in _rows(element):
        repeated = _count(row_element, "number-rows-repeated")
        hidden = row_element.get(f"{_TABLE}visibility", "visible") != "visible"
        cells = list(_cells(row_element))
        if cells:
            if repeated * len(cells) > MAX_CELLS:
                raise TooLarge(f"{name} has a table of more than {MAX_CELLS} cells. Split it and try again.")
            for again in range(repeated):
                for column, cell in cells:
                    table.put(row + again, column, replace(cell, hidden=hidden or column in unseen), name)
        row += repeated


def _rows(element: Element) -> Iterator[Element]:
    for child in element:
        if child.tag == f"{_TABLE}table-row":
            yield child
        elif child.tag in _GROUPS:
            yield from _rows(child)


def _hidden_columns(element: Element) -> set[int]:
    found: set[int] = set()
    at = 0
    for column in element.iter(f"{_TABLE}table-column"):
        repeated = min(_count(column, "number-columns-repeated"), _MOST_COLUMNS)
        if column.get(f"{_TABLE}visibility", "visible") != "visible":
            found.update(range(at, at + repeated))
        at += repeated
    return found


def _count(element: Element, name: str) -> int:
    text = element.get(f"{_TABLE}{name}", "1")
    return max(1, int(text)) if text.isdigit() else 1


def _cells(row: Element) -> Iterator[tuple[int, Cell]]:
    """The filled cells of a row with their columns. Cells under a merged one are kept only if they show anything."""
    column = 0
    for element in row:
        if element.tag not in (f"{_TABLE}table-cell", f"{_TABLE}covered-table-cell"):
            continue
        repeated = _count(element, "number-columns-repeated")
        covered = element.tag == f"{_TABLE}covered-table-cell"
        text = "" if covered else clean_text(_shown(element))
        if text:
            kind = element.get(f"{_OFFICE}value-type")
            # A displayed number carries the mark of the person's own settings: it is kept as it is, as a text.
            cell = Cell(
                text,
                number=kind in ("float", "percentage") and element.find(f"{_TEXT}p") is None,
                columns=_count(element, "number-columns-spanned"),
            )
            for again in range(min(repeated, 1024)):
                yield column + again, cell
        column += repeated


def _shown(element: Element) -> str:
    """The text of a cell; a date by its value, because its display may be ambiguous."""
    date = element.get(f"{_OFFICE}date-value")
    if date:
        return date[:10]
    paragraphs = [_paragraph(p) for p in element.findall(f"{_TEXT}p")]
    if paragraphs:
        return "\n".join(paragraphs)
    value = element.get(f"{_OFFICE}value")
    if value is not None:
        return general(float(value))
    return element.get(f"{_OFFICE}string-value", "")


def _paragraph(element: Element) -> str:
    parts = [element.text or ""]
    for child in element:
        if child.tag == f"{_TEXT}s" or child.tag == f"{_TEXT}tab":
            parts.append(" ")
        elif child.tag == f"{_TEXT}line-break":
            parts.append("\n")
        elif child.tag != f"{_OFFICE}annotation":
            parts.append(_paragraph(child))
        parts.append(child.tail or "")
    return "".join(parts)
