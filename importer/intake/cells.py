"""Tables of cells, as every kind of spreadsheet is read into."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field, replace

from importer.errors import TooLarge
from importer.limits import MAX_CELLS

# A decimal comma as text cells print it, and a decimal point that is no date or number of a clause.
_COMMA = re.compile(r"(?<![\d.,])\d+,\d{1,2}(?![\d.,])")
_POINT = re.compile(r"(?<![\d.,])\d+\.\d{1,2}(?![\d.,])")


@dataclass(frozen=True, slots=True)
class Cell:
    """A filled cell as it is shown. ``number`` is true where the file holds a number and not a text.

    ``columns`` is how many columns a merged cell spans, ``centred`` whether its text stands in their middle.
    """

    text: str
    number: bool = False
    columns: int = 1
    centred: bool = False
    bold: bool | None = None
    hidden: bool = False


@dataclass(slots=True)
class Table:
    """The filled cells of one sheet of a workbook by (row, column), both from 0. ``number`` counts sheets from 1."""

    number: int
    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    doubt: str | None = None

    def put(self, row: int, column: int, cell: Cell, name: str) -> None:
        """Adds a filled cell. Raises TooLarge where a table holds more than is read."""
        if len(self.cells) >= MAX_CELLS:
            raise TooLarge(f"{name} has a table of more than {MAX_CELLS} cells. Split it and try again.")
        self.cells[row, column] = cell


def clean_text(text: str) -> str:
    """Cell text without characters that no sheet shows; line breaks stay."""
    shown = "".join(c if c == "\n" or c.isprintable() else " " for c in text.replace("\r\n", "\n").replace("\r", "\n"))
    return "\n".join(" ".join(line.split()) for line in shown.split("\n")).strip()


def with_the_texts_decimal_mark(tables: Iterable[Table]) -> None:
    """Shows numbers with a decimal comma where the texts of the workbook use one.

    A workbook does not say how its numbers look: that is up to the program that opens it. The texts beside them
    ("max. 4,5") were typed by a person, and tell.
    """
    tables = list(tables)
    texts = [cell.text for table in tables for cell in table.cells.values() if not cell.number]
    commas = sum(len(_COMMA.findall(text)) for text in texts)
    points = sum(len(_POINT.findall(text)) for text in texts)
    if commas == 0 or points > 0:
        return
    for table in tables:
        for place, cell in table.cells.items():
            if cell.number and cell.text.count(".") == 1:
                table.cells[place] = replace(cell, text=cell.text.replace(".", ","))
