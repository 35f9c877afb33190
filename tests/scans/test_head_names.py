"""Which names in the head of a scanned page get a second reading."""

from __future__ import annotations

import pytest

from importer.intake.head_names import MOST_PLACES, name_places
from importer.intake.ocr import Seen
from importer.words import Box

GLYPH, PAGE = 20.0, 3000.0


def _line(top: float, *texts: tuple[float, str]) -> list[Seen]:
    """Words from places on a line, each letter 15 pixels wide; a text's words have a space of 10 between them."""
    words = []
    for x, text in texts:
        for token in text.split():
            words.append(Seen(token, x, top, x + 15.0 * len(token), top + GLYPH, 0.97))
            x += 15.0 * len(token) + 10
    return words


def _read(words: list[Seen], places: list[Box]) -> list[str]:
    return [
        " ".join(w.text for w in words if p.x0 <= w.x0 and w.x1 <= p.x1 and p.top <= w.top and w.bottom <= p.bottom)
        for p in places
    ]


@pytest.mark.parametrize(
    ("words", "names"),
    [
        (_line(100, (50, "Malt: Pale Ale")), ["Pale Ale"]),
        (_line(100, (50, "Malt type"), (400, "Pale Ale")), ["Pale Ale"]),
        (_line(100, (50, "Supplier")) + _line(135, (50, "Quarrow and Sons")), ["Quarrow and Sons"]),
        (_line(100, (50, "Harrowmere Maltings Ltd")), ["Harrowmere Maltings Ltd"]),
        (_line(100, (50, "Wiener Malz"), (900, "Seite")), ["Wiener Malz"]),
    ],
)
def test_a_name_is_found_by_its_caption_or_its_words(words: list[Seen], names: list[str]) -> None:
    assert _read(words, name_places(words, PAGE)) == names


@pytest.mark.parametrize(
    "words",
    [
        _line(100, (50, "Certificate of malt analysis")),
        _line(100, (50, "Moisture"), (400, "4.5"), (500, "%")),
        _line(2000, (50, "Malt: Pale Ale")),
        _line(100, (50, "The malt has to be kept dry and cool and used within a year")),
        [],
    ],
)
def test_titles_figures_sentences_and_the_foot_of_a_page_cost_no_second_reading(words: list[Seen]) -> None:
    assert name_places(words, PAGE) == []


def test_a_page_full_of_names_does_not_cost_a_reading_for_each() -> None:
    words = [word for row in range(40) for word in _line(30.0 * row, (50, "Vienna Malt"), (900, "Munich Malt"))]
    words += _line(1300, (50, "Malt: Pale Ale"))
    places = name_places(words, PAGE)
    assert len(places) == MOST_PLACES
    assert _read(words, places)[0] == "Pale Ale"  # what has a caption comes first
