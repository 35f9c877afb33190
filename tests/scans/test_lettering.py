"""Words of a scan: what the second reader may change in them, and what it may not."""

from __future__ import annotations

import pytest

from importer.intake.lettering import SAMPLE, agrees, read_unsure, reworded
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
        *[
            ("|. Sorte", "I. Sorte"),
            ("66.0 41.3", "66.0 ±1.3"),
            ("H20", "H2O"),
            ("K.1. (Kolbach)", "K.I. (Kolbach)"),
            ("wg/kg", "µg/kg"),
        ],
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
        *[("344", "3±4"), ("41.3", "±1.3"), ("4.5 42", "4.5 ±2"), ("9", "g"), ("19", "lg")],
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


def _asked(*cells: tuple[str, float]) -> tuple[list[str], dict[int, Read]]:
    """The texts of the cells that the second reader is asked for, and all the answers that come of it."""
    asked: list[str] = []

    def read(which: list[int]) -> list[Read]:
        asked.extend(cells[index][0] for index in which)
        return [Read(cells[index][0], 0.95) for index in which]

    widths = [Box(0, 0, 10 * len(text), 20) for text, _ in cells]
    places = [(box, seen(text, confidence)) for box, (text, confidence) in zip(widths, cells, strict=True)]
    return asked, read_unsure(places, 16, read)


def test_a_unit_in_every_row_is_read_once_and_the_answer_holds_for_all() -> None:
    asked, answers = _asked(("mg/i", 0.7), ("Wurze", 0.7), ("mg/i", 0.8), ("mg/i", 0.6))
    assert sorted(asked) == ["Wurze", "mg/i"]
    assert {index: answer.text for index, answer in answers.items()} == {0: "mg/i", 1: "Wurze", 2: "mg/i", 3: "mg/i"}


def test_texts_with_numbers_or_of_other_widths_are_read_one_by_one() -> None:
    asked, _ = _asked(("> 2.5 mn", 0.7), ("> 2.5 mn", 0.7), ("moit", 0.7), ("moit  ", 0.7))
    assert sorted(asked) == ["> 2.5 mn", "> 2.5 mn", "moit", "moit  "]


def test_english_words_of_the_trade_need_no_look_and_those_that_may_have_lost_an_accent_do() -> None:
    asked, _ = _asked(("Hectolitre weight", 0.9), ("kg/hl", 0.9), ("tipico", 0.9), ("Viscosite", 0.9))
    assert sorted(asked) == ["Viscosite", "tipico"]
    asked, _ = _asked(("Hectolitre weight", 0.8))
    assert asked == ["Hectolitre weight"]


def test_more_words_than_a_sample_are_read_where_the_page_has_other_letters() -> None:
    words = ["Farbe", "Würze", "Malz", *(f"Wert{letter}" for letter in "abcdefgh")]
    assert len(_asked(*((word, 0.9) for word in words))[0]) == len(words)
    plain = [word for word in words if word.isascii()]
    assert len(_asked(*((word, 0.9) for word in plain))[0]) == SAMPLE
