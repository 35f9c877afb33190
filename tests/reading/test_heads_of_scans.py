"""Heads of several lines over columns of parameters on a scan, whose boxes hold the ink alone."""

from __future__ import annotations

import pytest

from importer.layout.lines import Cell
from importer.layout.transposed_heads import head_text
from importer.meaning.terms import SheetTerms
from importer.words import Word


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
