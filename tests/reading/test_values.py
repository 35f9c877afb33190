"""Cells of values taken apart, and rows whose values may stand under the wrong heads."""

from __future__ import annotations

import pytest

from importer.layout.lines import Cell, make_cell
from importer.reading.shifted import may_be_shifted
from importer.reading.values import split_value
from importer.words import Word


@pytest.mark.parametrize("text", [": 79,7 %", "：79,7 %", ".... 79,7 %", ". . . 79,7 %", "… : 79,7 %", "79,7 %"])
def test_the_colon_or_leader_of_a_label_is_no_part_of_the_value(text: str) -> None:
    assert split_value(text) == ("79,7", "%", "")


def test_the_full_stop_of_a_sentence_is_no_part_of_a_number() -> None:
    assert split_value("5,79.") == ("5,79", None, "")
    assert split_value("4,500.")[0] == "4,500."  # thousands or a decimal comma: nothing is decided


@pytest.mark.parametrize("text", [".5", ":", "...."])
def test_what_is_no_leader_stays(text: str) -> None:
    assert split_value(text)[0] == text


def test_limits_in_brackets_are_taken_off_and_a_second_figure_is_not() -> None:
    assert split_value("10.5 (max 12)") == ("10.5", None, "max 12")
    assert split_value("10.5 (9.0 - 12.0)") == ("10.5", None, "9.0 - 12.0")
    assert split_value("10.5 (1.68)") == ("10.5 (1.68)", None, "")
    assert split_value("10.5 (1.68) %") == ("10.5 (1.68)", "%", "")


def _row(*texts: str) -> dict[int, Cell]:
    words = [Word(text, 40.0 * i, 0.0, 40.0 * i + 30, 10.0) for i, text in enumerate(texts)]
    return {i: make_cell([word]) for i, word in enumerate(words) if word.text}


def test_a_row_with_a_value_too_few_that_fits_the_columns_beside_its_own_is_told() -> None:
    whole = (_row("81.4", "80.1", "41.0", "38.2"), _row("81.0", "79.6", "40.2", "37.9"))
    left = may_be_shifted([whole[0], _row("80.0", "39.5", "37.4", ""), whole[1]])
    assert left[0] == left[2] == ""
    assert "39.5" in left[1]
    assert "81.2" in may_be_shifted([*whole, _row("", "80.0", "81.2", "39.5")])[2]


def test_a_gap_among_values_that_fit_their_own_columns_is_no_shift() -> None:
    rows = [_row("81.4", "80.1", "41.0", "38.2"), _row("80.0", "", "39.5", "37.4"), _row("82.0", "80.3", "", "")]
    assert may_be_shifted(rows) == ["", "", ""]
    assert may_be_shifted([_row("3.2", "81.0"), _row("9.9", "80.0")]) == ["", ""]
    assert may_be_shifted([]) == []
