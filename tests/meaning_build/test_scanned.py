"""What is believed of a figure that was read from a scan."""

from __future__ import annotations

from dataclasses import replace

import pytest

from importer.meaning.header import build_header
from importer.models import Figure
from importer.printed import PrintedAnalysis, PrintedFigure, PrintedHeader
from importer.words import Box, Page, SecondReading, Word
from tests.meaning_build.built import BOX, built, only, row

LABEL_BOX = Box(10, 20, 90, 32)
VALUE_BOX = Box(200, 20, 230, 32)
PAGE = Page(1, 595, 842, (), "ocr")


def scanned(label: str, value: str, unit: str | None, reading: str, of_label: str = "", **more: object) -> Figure:
    """The figure of one row of a scan, with what a second reader made of its value and of its label."""
    seen = SecondReading(reading, VALUE_BOX, "other", 0.99)
    beside = (SecondReading(of_label, LABEL_BOX, "other", 0.99),) if of_label else ()
    printed = PrintedFigure(label, value, unit, 1, VALUE_BOX, label_box=LABEL_BOX, second=(seen,), **more)  # type: ignore[arg-type]
    analysis = built(printed, row("Friability", "86", "%"), page=replace(PAGE, second=(seen, *beside)))
    return next(figure for figure in analysis.figures if figure.printed is not None and figure.printed.value == value)


@pytest.mark.parametrize(
    ("value", "unit", "reading"),
    [
        ("4.2", "%", "4,2"),
        ("4.2", "%", "4.2)"),
        ("4.2", "%", "|4.2"),
        ("12", "min", "12 min"),
        ("4.0 ± 0.1", "%", "4.0+0.1"),
        ("4.5", "%", "4.5%"),
        ("4.5", "%", "4.5 »"),
        ("12", "min", "12 mest"),
    ],
)
def test_two_readings_of_one_number_are_believed(value: str, unit: str, reading: str) -> None:
    label = "Saccharification time" if unit == "min" else "Moisture"
    assert scanned(label, value, unit, reading).state == "accepted"


@pytest.mark.parametrize(("value", "reading"), [("4.5", "4.6 »"), ("4.5", "45 »"), ("12", "18 mest"), ("12", "12 5")])
def test_what_a_unit_was_misread_as_hides_no_other_number(value: str, reading: str) -> None:
    label, unit = ("Moisture", "%") if "." in value else ("Saccharification time", "min")
    assert scanned(label, value, unit, reading).state == "review"


def test_limits_in_brackets_belong_to_no_reading_of_the_result() -> None:
    assert scanned("Moisture", "3.9", "%", "3.9 [≤ 4.2]", high="4.2").state == "accepted"
    assert scanned("Moisture", "3.9", "%", "3.4 [≤ 4.2]", high="4.2").state == "review"


@pytest.mark.parametrize(
    ("of_label", "state"),
    [("2.2 to 2.5 mm", "accepted"), ("3. 2.2 to 2.5 mm", "accepted"), ("2.2 to 2.8 mm", "review"), ("", "accepted")],
)
def test_other_numbers_in_the_label_are_a_doubt(of_label: str, state: str) -> None:
    assert scanned("2.2 to 2.5 mm", "6.2", "%", "6.2", of_label).state == state


def test_letters_of_a_label_that_one_reader_takes_for_digits_are_no_numbers() -> None:
    assert scanned("8-Glucan (Wort) [mg/1]", "204", "", "204", "β-Glucan (Wort) [mg/l]").state == "accepted"
    assert scanned("β-Glucan 8 (Wort) [mg/l]", "204", "", "204", "β-Glucan (Wort) [mg/l]").state == "review"


def test_a_unit_that_nobody_knows_and_a_strange_head_are_doubts() -> None:
    assert scanned("Viscosity", "1.55", "mPars", "1.55").state == "review"
    strange = scanned("Moisture", "4.2", "%", "4.2", column="Maximnyae Maxi")
    assert strange.state == "review"
    assert "Maximnyae" in " ".join(strange.reasons)
    assert scanned("Moisture", "4.2", "%", "4.2", column="Result").state == "accepted"
    assert scanned("Moisture", "4.2", "%", "4.2", column="Lot").state == "accepted"  # a caption over the result


def test_a_number_that_no_name_stands_for_holds_its_row_back() -> None:
    limit = PrintedFigure("Moisture", "2.6", "%", 1, Box(100, 20, 120, 32), label_box=LABEL_BOX)
    stray = PrintedFigure("", "2.3", None, 1, VALUE_BOX)
    assert only(built(limit), "moisture").state == "accepted"
    figure = only(built(limit, stray), "moisture")
    assert figure.state == "review"
    assert "2.3" in " ".join(figure.reasons)
    elsewhere = replace(stray, box=Box(200, 60, 230, 72))
    assert only(built(limit, elsewhere), "moisture").state == "accepted"


def test_a_method_that_is_the_same_in_all_families_tells_of_none() -> None:
    rows = (row("Moisture", "4.9"), row("Colour", "3.8", "EBC"), row("Alpha-amylase (ASBC)", "56.1", "DU"))
    analysis = built(*rows, notes=())
    assert analysis.method_family == "EBC"
    assert only(analysis, "colour").unit == "EBC"


@pytest.mark.parametrize(
    ("batch", "reading", "state"),
    [
        *[("ZA 23/858", "Batch: ZA 23/858", "accepted"), ("ZA23-858", "ZA 23–858", "accepted")],
        *[("25 4805", "25 4805", "review"), ("ZA 254805", "ZA 254805", "accepted")],
        *[("ZA 23858", "ZA 23/858", "review"), ("254125-B", "254125-8", "review"), ("— 23/858", "— 23/858", "review")],
    ],
)
def test_a_batch_number_of_a_scan_is_read_twice_with_every_stroke(batch: str, reading: str, state: str) -> None:
    page = replace(PAGE, second=(SecondReading(reading, BOX, "other", 0.99),))
    assert built(row("Friability", "86"), batch=batch, page=page).header["batch"].state == state


@pytest.mark.parametrize(
    ("behind", "state"), [("SRM", "review"), ("EBC", "accepted"), ("4.7.1", "accepted"), ("min.", "accepted")]
)
def test_another_unit_right_behind_the_figure_is_a_doubt(behind: str, state: str) -> None:
    """Where the unit is that of the label, the one behind the figure may have been missed."""
    page = Page(1, 595, 842, (Word(behind, VALUE_BOX.x1 + 6, 20, VALUE_BOX.x1 + 24, 32),), "text")
    printed = PrintedFigure("Colour", "8.2", "EBC", 1, VALUE_BOX, label_box=LABEL_BOX)
    assert only(built(printed, row("Friability", "86"), page=page), "colour").state == state


def test_ink_over_the_numbers_of_a_label_is_a_doubt() -> None:
    under = replace(PAGE, second=(SecondReading("6.2", VALUE_BOX, "other", 0.99),), lost=(Box(40, 18, 60, 30),))
    for label, state in (("2.2 to 2.5 mm", "review"), ("Moisture", "accepted")):
        printed = PrintedFigure(label, "6.2", "%", 1, VALUE_BOX, label_box=LABEL_BOX, second=under.second)
        assert next(iter(built(printed, page=under).figures)).state == state


def test_a_unit_that_holds_a_number_is_no_other_reading_of_the_result() -> None:
    readings = tuple(SecondReading(text, VALUE_BOX, "other", 0.99) for text in ("663", "mg/100"))
    printed = PrintedFigure("Soluble nitrogen", "663", "mg/100 g", 1, VALUE_BOX, label_box=LABEL_BOX, second=readings)
    assert not any("mg/100" in reason for reason in only(built(printed, page=PAGE), "soluble_nitrogen").reasons)


@pytest.mark.parametrize(("head", "state"), [("Tarnlow", "accepted"), ("Tarmlow", "review")])
def test_a_supplier_of_a_scan_that_is_spelt_otherwise_in_the_letterhead_is_a_doubt(head: str, state: str) -> None:
    """Both readers may misread the small print in one way; they hardly misread the large print so, too."""
    places = [(100.0, "Malt"), (140.0, "Company")]
    words = tuple(Word(text, x, 300, x + 30, 312) for x, text in [(50.0, head), *places])
    page = replace(PAGE, words=words, second=(SecondReading("Tarnlow Malt Company", BOX, "other", 0.99),))
    analysis = built(row("Friability", "86"), supplier="Tarnlow Malt Company", page=page)
    assert analysis.header["supplier"].state == state


@pytest.mark.parametrize(
    ("malt", "state"),
    [
        ("Lager malt 'Lark'", "accepted"),
        ("Malt d'orge", "accepted"),
        ("Lager malt 'Lark", "review"),
        ("Lark'", "review"),
    ],
)
def test_a_lost_quotation_mark_is_a_doubt(malt: str, state: str) -> None:
    page = replace(PAGE, second=(SecondReading(malt, BOX, "other", 0.99),))
    assert built(row("Friability", "86"), malt=malt, page=page).header["malt"].state == state


@pytest.mark.parametrize(
    ("reading", "behind", "state"),
    [
        ("Malt: Lager malt Batch: A-114", "Batch: A-114", "accepted"),
        ("Malt: Lager malt organic", "", "review"),
        ("Malt: Lager malts Batch: A-114", "Batch: A-114", "review"),
        ("Malt: Lagen malt Batch: A-114", "Batch: A-114", "review"),
    ],
)
def test_a_name_is_confirmed_by_a_reading_of_its_whole_line(reading: str, behind: str, state: str) -> None:
    """What the second reader saw behind the name has to be what the main reader saw there: nothing of it is lost."""
    words = tuple(
        Word(text, BOX.x1 + 5 + 50 * at, 22, BOX.x1 + 40 + 50 * at, 38) for at, text in enumerate(behind.split())
    )
    line = Box(BOX.x0 - 8, BOX.top, BOX.x1 + 120, BOX.bottom)
    page = replace(PAGE, words=words, second=(SecondReading(reading, line, "other", 0.99),))
    assert built(row("Friability", "86"), malt="Lager malt", page=page).header["malt"].state == state


@pytest.mark.parametrize(
    ("reading", "state"),
    [("Malt: Lager malt", "accepted"), ("Malt type Lager malt", "accepted"), ("Malt: Extra lager malt", "review")],
)
def test_a_word_before_a_name_that_only_the_second_reader_saw_is_a_doubt(reading: str, state: str) -> None:
    before = tuple(Word(text, x, 22, x + 3, 38) for x, text in ((1, "Malt"), (5, "type")))
    line = Box(0, BOX.top, BOX.x1, BOX.bottom)
    page = replace(PAGE, words=before, second=(SecondReading(reading, line, "other", 0.99),))
    assert built(row("Friability", "86"), malt="Lager malt", page=page).header["malt"].state == state


@pytest.mark.parametrize(
    ("reading", "state"), [("Ferncombe Malt Works", "accepted"), ("New Ferncombe Malt Works", "review")]
)
def test_a_name_without_a_caption_is_the_whole_of_its_second_reading(reading: str, state: str) -> None:
    page = replace(PAGE, second=(SecondReading(reading, BOX, "other", 0.99),))
    name = PrintedHeader("supplier", "", "Ferncombe Malt Works", 1, BOX)
    fields = build_header(PrintedAnalysis((1,), (name,), ()), {1: page})
    assert fields["supplier"].state == state


@pytest.mark.parametrize(("name", "state"), [("Mälzerei Tannried", "accepted"), ("Málzerei Tannried", "review")])
def test_dots_over_letters_that_the_main_reader_does_not_know_are_no_doubt(name: str, state: str) -> None:
    page = replace(PAGE, second=(SecondReading("Malzerei Tannried", BOX, "tesseract", 0.9),))
    fields = build_header(PrintedAnalysis((1,), (PrintedHeader("supplier", "", name, 1, BOX),), ()), {1: page})
    assert fields["supplier"].state == state


def test_the_words_of_a_name_and_one_beside_it_are_no_other_spelling_of_it() -> None:
    words = tuple(Word(t, x, 22, x + 5, 39) for t, x in (("Lot", 1), ("Ferncombe", 11), ("Malt", 17), ("Works", 24)))
    name = PrintedHeader("supplier", "", "Ferncombe Malt Works", 1, BOX)
    page = replace(PAGE, words=words, second=(SecondReading("Ferncombe Malt Works", BOX, "other", 0.99),))
    assert build_header(PrintedAnalysis((1,), (name,), ()), {1: page})["supplier"].state == "accepted"


@pytest.mark.parametrize(("reading", "state"), [("Lager malt Lark", "accepted"), ("Lager malt ‘Lark’", "review")])
def test_marks_around_a_name_that_one_reader_saw_are_a_doubt(reading: str, state: str) -> None:
    page = replace(PAGE, second=(SecondReading(reading, BOX, "other", 0.99),))
    assert built(row("Friability", "86"), malt="Lager malt Lark", page=page).header["malt"].state == state
