"""Signs behind labels and figures, and the footnotes that they point to."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.meaning.footnotes import footnote_doubts, footnotes, footnotes_of, without_footnotes
from importer.printed import PrintedFigure
from importer.words import Box


def _row(label: str, value: str, unit: str | None = "%") -> PrintedFigure:
    return PrintedFigure(label, value, unit, 1, Box(0, 0, 10, 10))


@pytest.mark.parametrize(
    ("label", "value", "note", "text"),
    [
        ("Extract *", "81.4", "* as is", "as is"),
        ("Extract", "81.4*", "* as is   ** dry", "as is"),
        ("Extract", "81.4 **", "* as is   ** dry", "dry"),
        ("Extract¹", "81.4", "¹ oven  ² other", "oven"),
        ("Extract", "81.4 2)", "1) oven 2) mean of two", "mean of two"),
        ("Extract", "81.4 †", "† another lot.", "another lot"),
    ],
)
def test_a_row_finds_its_footnote(label: str, value: str, note: str, text: str) -> None:
    row = _row(label, value)
    assert footnotes_of(row, footnotes([note], [row])) == [text]


@pytest.mark.parametrize("note", ["as is", "Results * marked are as is", "2) mean of two", ""])
def test_other_lines_are_no_footnote_of_the_row(note: str) -> None:
    row = _row("Extract *", "81.4")
    known = footnotes([note], [row])
    assert footnotes_of(row, known) == []
    assert without_footnotes([note], known) == (note,)


def test_a_footnote_does_not_speak_of_the_sheet_as_a_whole() -> None:
    rows = [_row("Extract *", "77.9"), _row("Protein", "10.5")]
    notes = ["* as is", "All methods EBC"]
    assert without_footnotes(notes, footnotes(notes, rows)) == ("All methods EBC",)


@pytest.mark.parametrize(
    ("note", "doubted", "at_name"),
    [
        ("* value of the barley", True, False),
        ("* mean of last year", True, True),  # of another sample, wherever its mark stands
        ("* accredited method", False, False),
        ("* dry basis", False, False),
        ("* EBC methods", False, False),
        ("* IoB methods", True, False),
    ],
)
def test_a_result_with_a_footnote_that_is_not_understood_is_in_doubt(note: str, doubted: bool, at_name: bool) -> None:
    row = _row("Protein", "11.2 *")
    doubts = footnote_doubts(row, footnotes([note], [row]), "EBC")
    assert bool(doubts) is doubted
    assert all(note.lstrip("* ") in doubt.reason for doubt in doubts)
    assert bool(footnote_doubts(_row("Protein *", "11.2"), footnotes([note], [row]), "EBC")) is at_name


@given(st.lists(st.text(alphabet="*¹2)(a †x .", max_size=12), max_size=4), st.text(alphabet="*1)a ", max_size=8))
def test_any_marks_end_in_notes_or_nothing(notes: list[str], value: str) -> None:
    row = _row("Extract", value)
    known = footnotes(notes, [row])
    assert set(footnotes_of(row, known)) <= set(known.values())
    assert set(without_footnotes(notes, known)) <= set(notes)
