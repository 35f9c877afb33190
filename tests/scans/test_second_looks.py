"""Which cells of a scan get a second reading: every number that may be a result, and no more words than needed."""

from __future__ import annotations

import pytest

from importer.intake.cell_boxes import Cell
from importer.intake.cellwise import may_hold_figure
from importer.intake.ocr import Seen
from importer.words import Box


def cell(text: str, confidence: float = 0.95) -> Cell:
    box = Box(0, 0, 10 * len(text) + 1, 20)
    return Cell(box, tuple(Seen(word, *box, confidence) for word in text.split()))


@pytest.mark.parametrize(
    "text",
    [
        *["4.5", "", "<0,5 mg/kg", "5.6 EBC units", "Batch 48213", "of 12.03.2024", "Kolbach index: 43,5 %"],
        *["Colour: <2.0", "Weight = 42.1 g", "Iz", "4,5-5,0"],
    ],
)
def test_what_may_be_a_result_is_read_twice(text: str) -> None:
    assert may_hold_figure(cell(text))


@pytest.mark.parametrize("text", ["Sieve > 2.8 mm", "Extract (0.7 mm), fine", "mg/100 g", "mg/100 g dry"])
def test_names_and_units_are_not_while_the_main_reader_is_sure(text: str) -> None:
    assert not may_hold_figure(cell(text))
    assert may_hold_figure(cell(text, 0.4))
