"""Heads and labels that one reader of a scan misread and another did not."""

from __future__ import annotations

import pytest

from importer.layout.lines import Line, find_lines
from importer.layout.second_look import look_again
from importer.meaning.terms import SheetTerms
from importer.meaning.trust import _is_strange_head
from importer.words import Box, Page, SecondReading, Word

TERMS = SheetTerms()
APART = 220.0
LETTER = 5.0


def _row(*texts: str) -> tuple[Word, ...]:
    """Cells of one line, far apart; the words of each a space apart."""
    words = []
    for number, text in enumerate(texts):
        x = 40 + APART * number
        for part in text.split():
            words.append(Word(part, x, 100, x + LETTER * len(part), 110, 0.9, 10))
            x += LETTER * (len(part) + 0.5)
    return tuple(words)


def _looked(row: tuple[str, ...], cell: int, *others: str, level: float = 0) -> list[str]:
    """The cells of a line on a scan after ``others`` were seen in the place of one of them."""
    page = Page(1, 1000, 800, _row(*row), "ocr")
    lines: list[Line] = find_lines(page)
    box = lines[0].cells[cell].box
    place = Box(box.x0, box.top + level, box.x1, box.bottom + level)
    second = [SecondReading(other, place, "other", 0.9) for other in others]
    return [part.text for part in look_again(lines, second, TERMS)[0].cells]


@pytest.mark.parametrize(
    ("row", "cell", "other"),
    [
        (("Prova", "Misura", "vatore"), 2, "Valore"),
        (("Caractéristique", "Unité", "Résultat", "+"), 3, "±"),
        (("Granos viítreos (fribilímetro)", "1,9", "%"), 0, "Granos vitreos (friabilimetro)"),
        (("Pilky a zlomky", "0,9", "%"), 0, "Půlky a zlomky"),
        (("Hot water extract", "L%/kg dry", "306.0"), 1, "L°/kg dry"),
        (("Retained on 2.5 mm", "93,8+1,9", "%"), 1, "93,8±1,9"),
    ],
)
def test_a_name_that_the_other_reader_saw_is_taken(row: tuple[str, ...], cell: int, other: str) -> None:
    assert _looked(row, cell, other) == [*row[:cell], other, *row[cell + 1 :]]


@pytest.mark.parametrize(
    ("row", "cell", "other"),
    [
        # Another name, and not another reading of the same letters.
        (("Prova", "Misura", "xxxxxx"), 2, "Valore"),
        (("Pilky a zlomky", "0,9", "%"), 0, "Voda ve sladu"),
        # What names something is left alone, a number always is.
        (("Prova", "Valore", "Minimo"), 2, "Massimo"),
        (("Moisture", "4.5", "%"), 1, "45"),
        # The sizes of a sieve are not a matter of spelling.
        (("uber 2,8 nm", "94,5", "%"), 0, "über 2,5 mm"),
        # Another unit or basis, and a unit that was read well.
        (("Hot water extract", "L%/kg dry", "306.0"), 1, "L°/kg wet"),
        (("Wort colour", "°L", "3.1"), 1, "%L"),
        # The other reader saw another number.
        (("Retained on 2.5 mm", "93,8+1,9", "%"), 1, "98,8±1,9"),
        # A word more may be another parameter.
        (("Extrakt Feinschrct", "81,0", "%"), 0, "Feinschrot"),
        # A head without any known beside it.
        (("Anna", "Berg", "vatore"), 2, "Valore"),
    ],
)
def test_what_is_no_reading_of_the_same_is_not_taken(row: tuple[str, ...], cell: int, other: str) -> None:
    assert _looked(row, cell, other) == list(row)


def _marks(row: tuple[str, ...], seen: dict[int, str]) -> list[str]:
    page = Page(1, 1400, 800, _row(*row), "ocr")
    (line,) = find_lines(page)
    second = [SecondReading(text, line.cells[n].box, "other", 0.9) for n, text in seen.items()]
    return [cell.text for cell in look_again([line], second, TERMS)[0].cells]


def test_marks_that_count_on_are_taken_from_the_other_reader() -> None:
    assert _marks(("Charge", "Gd)", "@", "(3)", "6)"), {1: "(1)", 2: "(2)", 4: "(4)"}) == [
        "Charge",
        *("(1)", "(2)", "(3)", "(4)"),
    ]


@pytest.mark.parametrize(
    ("row", "seen"),
    [
        (("Charge", "Gd)", "@", "(3)"), {1: "(1)", 2: "(7)"}),  # they do not count on
        (("Charge", "Gd)", "(3)"), {1: "(2)"}),  # too few of them
    ],
)
def test_marks_that_count_nothing_stay(row: tuple[str, ...], seen: dict[int, str]) -> None:
    assert _marks(row, seen) == list(row)


def test_two_other_readings_that_differ_settle_nothing() -> None:
    assert _looked(("Druh", "Jednotka", "Mix."), 2, "Min.")[2] == "Min."
    assert _looked(("Druh", "Jednotka", "Mix."), 2, "Min.", "Max.")[2] == "Mix."


def test_a_reading_of_the_line_below_is_not_taken() -> None:
    assert _looked(("Prova", "Misura", "vatore"), 2, "Valore", level=14)[2] == "vatore"


def test_a_verdict_with_letters_read_as_digits_is_no_number() -> None:
    assert not TERMS.is_value("1.0.")
    assert TERMS.is_value("1.0")
    assert TERMS.is_value("1.5.")


@pytest.mark.parametrize(("head", "strange"), [("Lote", False), ("Charge", False), ("Lxte", True), ("vatore", True)])
def test_the_caption_of_a_batch_over_results_was_read_cleanly(head: str, strange: bool) -> None:
    assert _is_strange_head(head) is strange


@pytest.mark.parametrize(
    ("seen", "kept"),
    [("= mPas", "mPas"), ("58,9 =", "58,9"), ("= 36,36", "= 36,36"), ("Kolbach =", "Kolbach ="), ("=", "=")],
)
def test_the_rest_of_a_rule_is_no_part_of_a_unit_or_a_number(seen: str, kept: str) -> None:
    page = Page(1, 1000, 800, _row("Viskosität", seen), "ocr")
    assert find_lines(page)[0].cells[1].text == kept
