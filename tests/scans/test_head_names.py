"""Which names in the head of a scanned page get a second reading."""

from __future__ import annotations

import numpy as np
import pytest

from importer.intake.head_names import MOST_PLACES, name_places
from importer.intake.ocr import Seen
from importer.intake.prepare.ink import Marks
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


def _marks(words: list[Seen]) -> Marks:
    """A mark for each word."""
    edges = np.array([(w.x0, w.top, w.x1, w.bottom) for w in words], dtype=np.int64).reshape(-1, 4).T
    return Marks(*edges, np.full(len(words), 100))


def _places(words: list[Seen]) -> list[Box]:
    return name_places(words, PAGE, _marks(words))


def _read(words: list[Seen], places: list[Box]) -> list[str]:
    return [
        " ".join(w.text for w in words if p.x0 <= w.x0 and w.x1 <= p.x1 and p.top <= w.top and w.bottom <= p.bottom)
        for p in places
    ]


@pytest.mark.parametrize(
    ("words", "names"),
    [
        (_line(100, (50, "Malt: Pale Ale")), ["Malt: Pale Ale"]),
        (_line(100, (50, "Malt type"), (400, "Pale Ale")), ["Pale Ale"]),
        (_line(100, (50, "Supplier")) + _line(135, (50, "Quarrow and Sons")), ["Quarrow and Sons"]),
        (_line(100, (50, "Harrowmere Maltings Ltd")), ["Harrowmere Maltings Ltd"]),
        (_line(100, (50, "Wiener Malz"), (900, "Seite")), ["Wiener Malz"]),
    ],
)
def test_a_name_is_found_by_its_caption_or_its_words(words: list[Seen], names: list[str]) -> None:
    assert _read(words, _places(words)) == names


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
    assert _places(words) == []


def test_a_page_full_of_names_does_not_cost_a_reading_for_each() -> None:
    words = [word for row in range(40) for word in _line(30.0 * row, (50, "Vienna Malt"), (900, "Munich Malt"))]
    words += _line(1300, (50, "Malt: Pale Ale"))
    places = _places(words)
    assert len(places) == MOST_PLACES
    assert _read(words, places)[0] == "Malt: Pale Ale"  # what has a caption comes first


def test_ink_beside_a_name_that_the_main_reader_did_not_see_is_read_as_well() -> None:
    whole = _line(100, (50, "Harrowmere Malt Works"), (900, "Page"))
    seen = [word for word in whole if word.text != "Harrowmere"]
    (place,) = name_places(seen, PAGE, _marks(whole))
    assert (place.x0, place.x1) == (50, whole[2].x1)


def test_a_name_that_is_read_twice_already_is_not_read_again() -> None:
    words = _line(100, (50, "Harrowmere Maltings"))
    assert name_places(words, PAGE, _marks(words), [Box(40, 95, 900, 125)]) == []
