"""Words of a page to lines and cells."""

from __future__ import annotations

import pytest

from importer.layout.lines import find_lines
from importer.words import Page, Word

SIZE = 10.0
HEADS = ("Parameter", "Methode", "Einheit", "Min.", "Max.", "Ergebnis", "Vorjahr")
ROWS = (
    ("Wassergehalt", "4.2", "%", "-", "5,0", "4,31", "4,4"),
    ("Extrakt wfr.", "4.5.1", "%", "80,0", "-", "81,72", "81,0"),
    ("Farbe", "4.7.2", "EBC", "3,0", "4,5", "3,6", "3,4"),
)


def words(texts: list[tuple[str, float]], top: float, reading: str = "text", wide: float = 5.0) -> list[Word]:
    """Words that begin at given places, each character equally wide."""
    size = SIZE if reading == "text" else 0.0
    return [Word(text, x, top, x + wide * len(text), top + 8, size=size) for text, x in texts]


def table(gap: float) -> Page:
    """A table whose columns are as wide as their longest entry, with one distance between all of them."""
    columns = list(zip(HEADS, *ROWS, strict=True))
    edges = [100.0]
    for column in columns:
        edges.append(edges[-1] + 5.0 * max(map(len, column)) + gap)
    found = []
    for number, row in enumerate((HEADS, *ROWS)):
        found += words(list(zip(row, edges, strict=False)), 100 + 14.0 * number)
    return Page(1, 595, 842, tuple(found), "text")


@pytest.mark.parametrize("gap", [7.4, 9.0, 20.0])
def test_heads_in_equal_distance_over_columns_stay_apart(gap: float) -> None:
    lines = find_lines(table(gap))
    assert [len(line.cells) for line in lines] == [7, 7, 7, 7]


def test_words_set_apart_to_fill_the_line_are_one_text() -> None:
    found = []
    for number, text in enumerate(("This batch shows a moisture of 4.2", "percent and an extract of about eighty",
                                   "one percent on dry matter as")):  # fmt: skip
        parts = text.split()
        gap = (300 - 5.0 * sum(map(len, parts))) / (len(parts) - 1)
        at = 100.0
        for part in parts:
            found += words([(part, at)], 100 + 12.0 * number)
            at += 5.0 * len(part) + gap
    assert [len(line.cells) for line in find_lines(Page(1, 595, 842, tuple(found), "text"))] == [1, 1, 1]


@pytest.mark.parametrize(("space", "cells"), [(7.5, 1), (13.0, 2)])
def test_word_spaces_of_typewriter_type_on_a_scan_part_no_cells(space: float, cells: int) -> None:
    """Small print sets the type size of the page; a space of larger type of one width is no gap between columns."""
    found = []
    for number, label in enumerate(("Moisture content", "Laboratory colour", "Soluble nitrogen", "Fine extract dry")):
        at = 100.0
        for part in label.split():
            found += words([(part, at)], 100 + 30.0 * number, "ocr", 3.6)
            at += 3.6 * (len(part) + 1.2)
        found += words([("12,34", 100.0), ("EBC", 127.5 + space)], 112 + 30.0 * number, "ocr", 5.5)
    small = [word._replace(bottom=word.top + 5.6) if word.text[0].isalpha() else word for word in found]
    lines = find_lines(Page(1, 595, 842, tuple(small), "ocr"))
    assert [len(line.cells) for line in lines if line.text.startswith("12")] == [cells] * 4


def test_type_of_many_widths_on_a_scan_keeps_its_columns() -> None:
    found = []
    for number, (label, wide) in enumerate((("Extract", 4.1), ("Colour", 5.2), ("Nitrogen", 4.7), ("Moisture", 5.6))):
        found += words([(label, 100.0)], 100 + 15.0 * number, "ocr", wide)
        found += words([("12,34", 100 + wide * len(label) + 10.5)], 100 + 15.0 * number, "ocr", 4.6)
    lines = find_lines(Page(1, 595, 842, tuple(found), "ocr"))
    assert [len(line.cells) for line in lines] == [2, 2, 2, 2]


def test_small_letters_beside_a_figure_are_its_unit_and_a_small_letter_is_a_footnote() -> None:
    large = Word("3.0", 100, 100, 130, 118, size=16)
    unit = Word("EBC", 133, 105, 150, 115, size=9)
    (line,) = find_lines(Page(1, 595, 842, (large, unit), "text"))
    assert line.text == "3.0 EBC"
    (line,) = find_lines(Page(1, 595, 842, (large, Word("b", 131, 98, 135, 105, size=7)), "text"))
    assert line.text == "3.0"


def test_letters_set_apart_are_a_word() -> None:
    spaced = words([(letter, 100 + 7.0 * n + (4 if n > 2 else 0)) for n, letter in enumerate("LOTNO")], 100)
    (line,) = find_lines(Page(1, 595, 842, tuple(spaced), "text"))
    assert line.text == "LOT NO"
    columns = words([(letter, 100 + 30.0 * n) for n, letter in enumerate("ABCD")], 100)
    (line,) = find_lines(Page(1, 595, 842, tuple(columns), "text"))
    assert [cell.text for cell in line.cells] == ["A", "B", "C", "D"]
