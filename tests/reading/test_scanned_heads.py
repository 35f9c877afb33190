"""Heads of several lines over columns of values, with the low boxes of ink that a scan gives."""

from __future__ import annotations

import pytest

from importer.layout.lines import find_lines
from importer.layout.transposed import find_transposed
from importer.meaning.terms import SheetTerms
from importer.reading.letterhead import letterhead_events
from importer.words import Page, Word

STEP = 9.3
COLUMNS = (
    (40, ("", "", "Lot-Nr.", "B2404363", "B2404374")),
    (140, ("", "Mürbigkeit", "(Friabilimeter)", "86,60", "95,50")),
    (240, ("Ganze", "Körner", "(Friab.)", "1,5", "0,7")),
    (340, ("Ganzglasige", "Körner", "(Friabilimeter)", "1,0", "0,3")),
    (440, ("", "", "Wassergehalt", "3,60", "2,90")),
)


@pytest.mark.parametrize("ink", [5.9, 8.0])
def test_all_lines_of_a_head_are_joined(ink: float) -> None:
    words = [
        Word(text, x, 100 + STEP * row, x + 4.2 * len(text), 100 + STEP * row + ink, 0.9, 8)
        for x, texts in COLUMNS
        for row, text in enumerate(texts)
        if text
    ]
    page = Page(1, 600, 800, tuple(words), "ocr")
    (table,) = find_transposed(find_lines(page), page, SheetTerms())
    assert table.heads[1:] == (
        "Mürbigkeit (Friabilimeter)",
        "Ganze Körner (Friab.)",
        "Ganzglasige Körner (Friabilimeter)",
        "Wassergehalt",
    )


@pytest.mark.parametrize(("ink", "sure"), [(12.0, True), (7.5, False)])
def test_large_letters_of_a_scan_speak_for_the_name_of_a_maltster(ink: float, sure: bool) -> None:
    """A scan tells no size of type, only how high the ink is."""
    words = [Word("Ferncombe", 50, 50, 110, 50 + 1.3 * ink, 0.9), Word("Maltings", 115, 50, 165, 50 + ink, 0.9)]
    rows = ("Moisture 4.2 %", "Friability 88.1 %", "Colour 3.4 EBC", "Viscosity 1.52 mPas")
    for row, text in enumerate(rows):
        y = 200 + 20 * row
        words += [Word(part, 50 + 90 * at, y, 90 + 90 * at, y + 7.5, 0.9) for at, part in enumerate(text.split())]
    page = Page(1, 600, 800, tuple(words), "ocr")
    (event,) = letterhead_events(page, find_lines(page), (), SheetTerms())
    assert event.header is not None
    assert (event.header.text, event.header.sure) == ("Ferncombe Maltings", sure)
