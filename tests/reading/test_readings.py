"""The part of a whole line's second reading that stands where a value does."""

from __future__ import annotations

import pytest

from importer.reading.readings import readings_at
from importer.words import Box, Page, SecondReading, Word

LINE = [("Proteína", 50), ("de", 95), ("malta:", 112), ("10,1", 150), ("%", 175), ("(b.s.)", 186)]


def seen(reading: str) -> list[str]:
    """What is told of the value where another reader saw this line."""
    words = tuple(Word(text, x, 100, x + 5 * len(text), 110) for text, x in LINE)
    page = Page(1, 595, 842, words, "ocr", second=(SecondReading(reading, Box(50, 99, 220, 111), "other", 0.9),))
    return [found.text for found in readings_at(page, Box(150, 100, 180, 110))]


@pytest.mark.parametrize(
    "reading", ["Proteína de malta: 10,1 % (b.s.)", "Proteina de malta: 10.1 % (b.s.)", "Proteina de malfa:10,1%(b.s.)"]
)
def test_a_line_with_the_same_numbers_confirms_the_value(reading: str) -> None:
    assert seen(reading) == ["10,1 %"]


@pytest.mark.parametrize(
    "reading",
    [
        "Proteína de malta: 10,7 % (b.s.)",
        "Proteína de malta: 101 % (b.s.)",
        "Proteína de malta: <10,1 % (b.s.)",
        "10,1",
    ],
)
def test_other_numbers_or_another_line_do_not(reading: str) -> None:
    assert seen(reading) == [reading]
