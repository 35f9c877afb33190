"""Words of a scan: what the second reader may change in them, and what it may not."""

from __future__ import annotations

import pytest

from importer.intake.lettering import agrees, reworded
from importer.intake.ocr import Seen
from importer.intake.second import Read
from importer.words import Box

BOX = Box(100, 10, 300, 30)


def seen(text: str, confidence: float = 0.8) -> list[Seen]:
    """The main reader's words side by side, ten pixels a letter and thirty between words."""
    found, at = [], BOX.x0
    for word in text.split():
        found.append(Seen(word, at, BOX.top, at + 10 * len(word), BOX.bottom, confidence))
        at += 10 * len(word) + 30
    return found


def text_of(words: list[Seen] | None) -> str | None:
    return None if words is None else " ".join(word.text for word in words)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        *[
            ("Wurze gekocht", "Würze gekocht"),
            ("Couleur du moit", "Couleur du moût"),
            ("EiweiBlésungsgrad", "Eiweißlösungsgrad"),
        ],
        *[("|. Sorte", "I. Sorte"), ("H20", "H2O"), ("K.1. (Kolbach)", "K.I. (Kolbach)"), ("wg/kg", "µg/kg")],
        *[("4,0+0,1", "4,0 ± 0,1"), ("82,7 [2 77,7]", "82,7 [≥ 77,7]"), ("1,1[s2]", "1,1 [≤ 2]"), ("4]", "41")],
        *[("1.0,", "i.O."), ("de 2,5 42,8 mm", "de 2,5 à 2,8 mm"), ("de 2,2a2,5mm", "de 2,2 à 2,5 mm")],
    ],
)
def test_letters_and_signs_are_taken_from_the_second_reader(old: str, new: str) -> None:
    assert text_of(reworded(seen(old), BOX, Read(new, 0.98))) == new


@pytest.mark.parametrize(
    ("old", "new"),
    [
        *[("4,5 %", "45 %"), ("45 %", "4,5 %"), ("> 2,8 mm", "> 2,5 mm"), ("158 mg/l", "1.58 mg/l")],
        *[
            ("<0,5 mg/kg", "0,5 mg/kg"),
            ("-0,5 %", "0,5 %"),
            ("Extrakt lufttrocken fein", "fein"),
            ("Farbe", "Viskosität"),
        ],
        *[("254125-B", "254125-8"), ("L024-1174", "L02A-1174"), ("25,0", "≥5,0")],
        *[("2,2a2,5mm", "2,2 à 2,8 mm"), ("1,0", "à,0"), ("mg/l", "mg/")],
    ],
)
def test_numbers_and_whole_words_are_never_taken_from_it(old: str, new: str) -> None:
    assert reworded(seen(old), BOX, Read(new, 0.98)) is None


def test_an_unsure_answer_changes_nothing() -> None:
    assert reworded(seen("Wurze"), BOX, Read("Würze", 0.7)) is None
    assert reworded(seen("Wurze"), BOX, Read("", 0.0)) is None


def test_words_that_are_the_same_keep_their_places_and_the_gaps_of_columns() -> None:
    old = seen("73,9 % min. 67,7")
    new = reworded(old, BOX, Read("73,9 % min . 67,7", 0.98))
    assert new is not None
    places = {word.text: word.x0 for word in new}
    assert (places["73,9"], places["67,7"]) == (old[0].x0, old[3].x0)


def test_a_word_that_nobody_else_saw_is_added_and_a_lone_number_is_not() -> None:
    assert text_of(reworded([], BOX, Read("Eiweiß gesamt", 0.98))) == "Eiweiß gesamt"
    assert reworded([], BOX, Read("1", 0.98)) is None


@pytest.mark.parametrize(
    ("old", "new", "same"),
    [
        *[("4.2", "4,2", True), ("s 4,2", "≤ 4,2", True), ("5 4,2", "≤ 4,2", True), ("<0,5", "<0,5", True)],
        *[("0,5", "<0,5", False), ("42", "4,2", False), ("254125-B", "254125-8", False), ("", "4,2", False)],
    ],
)
def test_readings_agree_but_for_signs_that_the_main_reader_does_not_know(old: str, new: str, same: bool) -> None:
    assert agrees(old, new) is same
