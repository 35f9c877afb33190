"""Which of several printings of a parameter is the figure, what its neighbours tell of it, what stands behind it."""

from __future__ import annotations

import pytest

from importer.meaning.build import Options, build
from importer.meaning.resolve import resolve
from importer.printed import PrintedAnalysis
from importer.reading.numbers import is_word
from importer.words import Page
from tests.meaning_build.built import SOURCE, built, only, row

MOISTURE = row("Moisture", "4.3")


def test_a_footnote_mark_that_ran_into_the_number_is_a_doubt() -> None:
    """One decimal more than usual, more than the limits beside it have, and a note with that number."""
    notes = ("Methods: EBC", "2 determined by our partner laboratory")
    glued = row("Friability", "86.52", low="80.0", high="90.0")
    found = only(built(glued, notes=notes), "friability")
    assert found.reasons == ("Its last digit may be the mark of footnote 2.",)
    assert found.flags == ("reading-doubtful",)
    assert only(built(glued), "friability").state == "accepted"
    assert (
        only(built(row("Friability", "86.52", low="80.00", high="90.00"), notes=notes), "friability").state
        == "accepted"
    )
    beside = (row("Friability", "86.52"), row("Homogeneity", "98.5"), MOISTURE)
    assert only(built(*beside, notes=notes), "friability").state == "review"
    two = (row("Friability", "86.52"), row("Homogeneity", "98.51"), row("Moisture", "4.31"))
    assert only(built(*two, notes=notes), "friability").state == "accepted"


def test_degrees_beside_ebc_units_tell_which_degrees_they_are() -> None:
    """EBC ÷ °L is 1.97 for SRM and about 2.65 for visual Lovibond (ASBC Beer-10; a common comparison)."""
    found = {}
    for degrees in ("2.03", "1.50", "1.75"):
        rows = (row("Colour", "4.0", "EBC"), row("Colour", degrees, "°L"), row("Boiled colour", "3.0", "°L"))
        found[degrees] = only(built(*rows), "boiled_colour")
    assert found["2.03"].value == pytest.approx(1.97 * 3.0, abs=0.1)
    assert found["2.03"].unit == "EBC"
    assert found["1.50"].unit == "EBC"
    assert found["1.50"].value != found["2.03"].value
    assert (found["1.75"].value, found["1.75"].unit) == (3.0, "°L")
    assert "not-convertible" in found["1.75"].flags


def test_a_sentence_repeats_a_row_and_is_a_figure_where_there_is_none() -> None:
    told = row("Moisture", "4.4", in_sentence=True)
    both = only(built(MOISTURE, told), "moisture")
    assert (both.value, both.state, both.also_printed) == (4.3, "accepted", ())
    assert only(built(told), "moisture").value == 4.4


def test_only_rows_that_contradict_each_other_are_doubted() -> None:
    rows = (row("Colour", "4.0", "EBC"), row("Colour", "9.0", "EBC"), row("Colour", "2.0", "°Lovibond"))
    found = only(built(*rows), "colour")
    assert "The sheet gives it more than once: 4.0 and 9.0." in found.reasons
    assert "duplicate-row" in found.flags


@pytest.mark.parametrize(("basis", "unit"), [("EBC", "WK"), ("ASBC", "°Lintner"), ("IoB", "°IoB")])
def test_the_column_of_the_basis_is_the_figure(basis: str, unit: str) -> None:
    rows = [
        row("Diastatic power", value, unit, column_family=family)
        for value, unit, family in (("280", "WK", "EBC"), ("90", "°Lintner", "ASBC"), ("88", "°IoB", "IoB"))
    ]
    found = only(built(*rows, options=Options(basis=basis)), "diastatic_power")  # type: ignore[arg-type]
    assert found.printed is not None
    assert (found.printed.unit, found.unit) == (unit, unit)
    assert len(found.also_printed) == 2


def test_a_check_between_figures_is_of_one_moisture_basis() -> None:
    """6.25 × nitrogen is protein only where both are of dry malt, or both as is (published methods)."""
    dry = (row("Total nitrogen", "1.60", "% dry"), row("Total protein", "10.0", "% dry"))
    (check,) = [c for c in built(*dry).checks if "nitrogen" in c.check]
    assert check.holds
    mixed = (row("Total nitrogen", "1.60", "% dry"), row("Total protein", "9.6", "% as is"))
    assert not [c for c in built(*mixed).checks if not c.holds]


def test_what_a_person_is_asked_stands_behind_the_analysis() -> None:
    rows = (MOISTURE, row("Zorblax", "3"), row("Colour", "4.0", None), row("Moisture", "4.4"), row("Quux", "7"))
    printed = PrintedAnalysis((1,), (), rows, notes=("Methods: EBC",))
    pages = {1: Page(1, 595, 842, (), "text")}
    made = build(printed, resolve(printed, None), pages, SOURCE, "id-1", None, Options())
    assert [[figure.row for figure in group] for group in made.groups] == [[0, 3], [2]]
    assert [[doubt.flag for doubt in doubts] for doubts in made.doubts] == [["duplicate-row"], ["unit-assumed"]]
    assert made.unknown_rows == (1, 4)
    assert made.analysis.id == "id-1"


def test_a_decimal_comma_holds_for_limits_and_second_readings_too() -> None:
    found = built(row("Colour", "3,8", "EBC", low="3,000", high="4,5"), row("pH", "5,92", None))
    assert only(found, "colour").limits.low == 3.0


def test_known_words_are_words_and_numbers_are_none() -> None:
    assert is_word("clear")
    assert is_word("normal")
    assert not is_word("4.2")
    assert not is_word("n.d.")
    assert not is_word("Zorblax")
