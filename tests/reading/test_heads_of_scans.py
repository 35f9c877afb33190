"""Heads and names of several lines on a scan, whose boxes hold the ink alone."""

from __future__ import annotations

import pytest

from importer.layout.heads import find_heads
from importer.layout.lines import Cell, Line
from importer.layout.transposed_heads import head_text
from importer.layout.wrap import merge_rows
from importer.meaning.terms import SheetTerms
from importer.words import Box, Word


def cell(text: str, top: float, bottom: float, size: float = 0.0) -> Cell:
    word = Word(text, 100, top, 100 + 6 * len(text), bottom, size=size)
    return Cell(text, word.box, (word,))


@pytest.mark.parametrize(
    ("top", "bottom", "size", "head"),
    [
        (154.6, 160.3, 0.0, "Water in malt"),  # one line higher, measured from ink to ink
        (140.0, 145.7, 0.0, "malt"),  # a title
        (154.6, 160.3, 8.0, "malt"),  # boxes of type, so far apart
    ],
)
def test_a_line_of_ink_above_a_word_that_names_something_is_a_part_of_the_head(
    top: float, bottom: float, size: float, head: str
) -> None:
    assert (
        head_text([cell("Water in", top, bottom, size), cell("malt", 164.3, 169.6, size)], 6.58, SheetTerms()) == head
    )


@pytest.mark.parametrize(("ink", "labels"), [(True, ["Extrakt (wfr.)", "Farbe"]), (False, ["Extrakt", "Farbe"])])
def test_a_name_that_goes_on_between_the_rules_of_its_row_is_one(ink: bool, labels: list[str]) -> None:
    size = 0.0 if ink else 6.4

    def row(top: float, *texts: tuple[str, float]) -> Line:
        words = [Word(text, x, top, x + 5 * len(text), top + 5.6, size=size) for text, x in texts]
        cells = tuple(Cell(word.text, word.box, (word,)) for word in words)
        return Line(cells, Box(cells[0].box.x0, top, cells[-1].box.x1, top + 5.6), 6.4, 1)

    lines = [row(10, ("Extrakt", 60), ("81,3", 300)), row(18.8, ("(wfr.)", 61)), row(35, ("Farbe", 60), ("2,6", 300))]
    kept = [(at, line, {(0 if cell.box.x0 < 200 else 1): cell for cell in line.cells}) for at, line in enumerate(lines)]
    rules = [Box(50, y, 400, y) for y in (5.0, 30.0, 45.0)]
    rows = merge_rows(kept, (("label",), ("result",)), rules, SheetTerms(), 6.4)
    assert [found.cells[0].text for found in rows if found.has_value] == labels


def test_a_head_of_two_lines_beside_heads_of_one_is_whole() -> None:
    def line(top: float, *texts: tuple[str, float]) -> Line:
        words = [Word(text, x, top, x + 5 * len(text), top + 5.4) for text, x in texts]
        cells = tuple(Cell(word.text, word.box, (word,)) for word in words)
        return Line(cells, Box(cells[0].box.x0, top, cells[-1].box.x1, top + 5.4), 6.5, 1)

    lines = [
        line(166.9, ("GEMETEN", 146)),
        line(171.3, ("ANALYSE", 50), ("EENHEID", 184), ("MINIMUM", 220), ("MAXIMUM", 260)),
        line(176.0, ("WAARDE", 146)),
        line(190.0, ("Vocht", 50), ("6.3", 150), ("%", 184), ("6.8", 262)),
    ]
    (head,) = find_heads(lines, SheetTerms())
    assert [cell.text for cell in head.cells] == ["ANALYSE", "GEMETEN WAARDE", "EENHEID", "MINIMUM", "MAXIMUM"]
