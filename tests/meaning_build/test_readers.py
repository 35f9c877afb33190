"""Why the reading of a scan is believed, or is not: what the second reader saw and where, and how the label looks."""

from __future__ import annotations

from dataclasses import replace

import pytest

from importer.models import Figure
from importer.printed import PrintedFigure
from importer.words import Box, SecondReading
from tests.meaning_build.built import built, row
from tests.meaning_build.test_scanned import LABEL_BOX, PAGE, VALUE_BOX, scanned

UNCONFIRMED = "It was read from a scan, and no second reading confirms it."
NO_NUMBER = "It was read from a scan and is not a number that a second reading could confirm."


@pytest.mark.parametrize(
    ("label", "value", "unit", "reading", "reason"),
    [
        ("Moisture {", "4.2", "%", "4.2", "The label was not read cleanly (“Moisture {”); words of it may be lost."),
        ("Viscosity", "1.55", "mPars", "1.55", "The unit “mPars” is not known."),
        ("Moisture", "4.2", "%", "", UNCONFIRMED),
        ("Moisture", "4.2", "%", "abc", UNCONFIRMED),
        ("Moisture", "4.2", "%", "4.7", "One reading of the scan gives “4.2”, another “4.7”."),
        ("Moisture", "4.2", "%", "4.20", "One reading of the scan gives “4.2”, another “4.20”."),
        ("Moisture", "4.2", "%", "< 4.2", "One reading of the scan gives “4.2”, another “< 4.2”."),
        ("Free amino nitrogen", "0.152", "mg/l", "0.152", "Three decimals on a scan may be a thousands separator."),
        ("Saccharification time", "norrnal", None, "normal", "“norrnal” could not be read as a number."),
        ("NDMA", "n.d.", None, "nd?", None),
        ("NDMA", "n.d.", None, "m.d.", NO_NUMBER),
        ("Clarity", "clear", None, "", None),
        ("Odour", "clean, malty", None, "", None),
        ("Moisture", "4 - 5", "%", "4-5", None),
        ("Moisture", "4 - 5", "%", "4-6", "One reading of the scan gives “4 - 5”, another “4-6”."),
        ("Soluble nitrogen", "663", "mg/100 g", "663 mg/100g", None),
        ("Free amino nitrogen", "181", "mg/l", "181 mg.lI-1", None),
    ],
)  # fmt: skip
def test_what_a_second_reader_makes_of_a_value(
    label: str, value: str, unit: str | None, reading: str, reason: str | None
) -> None:
    found = scanned(label, value, unit, reading)
    told = [text for text in found.reasons if "unusual" not in text and "not possible" not in text]
    assert told[:1] == ([reason] if reason else [])
    if reason:
        assert (found.state, "reading-doubtful" in found.flags) == ("review", True)
    else:
        assert "reading-doubtful" not in found.flags


@pytest.mark.parametrize(
    ("label", "value", "unit", "doubtful"),
    [("Viscosity", "1.539", "mPa·s", False), ("Free amino nitrogen", "0.152", "mg/l", True)],
)
def test_three_decimals_may_be_thousands_only_where_a_thousand_times_is_possible(
    label: str, value: str, unit: str, doubtful: bool
) -> None:
    seen = (SecondReading(value, VALUE_BOX, "other"),)
    printed = PrintedFigure(label, value, unit, 1, VALUE_BOX, label_box=LABEL_BOX, second=seen)
    found = built(printed, row("Colour", "4.25", "EBC"), page=PAGE).figures[0]
    assert ("Three decimals on a scan may be a thousands separator." in found.reasons) == doubtful


def test_a_page_in_doubt_says_so_before_anything_else() -> None:
    page = replace(PAGE, doubt="Half of the page is dark.")
    figure = built(PrintedFigure("Moisture {", "4.2", "%", 1, VALUE_BOX), page=page).figures[0]
    assert (figure.flags, figure.reasons) == (("reading-doubtful",), ("Half of the page is dark.",))


def test_one_reader_that_differs_is_enough() -> None:
    seen = tuple(SecondReading(text, VALUE_BOX, name) for text, name in (("4.2", "one"), ("4.7", "other")))
    printed = PrintedFigure("Moisture", "4.2", "%", 1, VALUE_BOX, label_box=LABEL_BOX, second=seen)
    assert built(printed, page=PAGE).figures[0].reasons == ("Readings of the scan differ: “4.2” and “4.7”.",)


def test_a_word_of_two_pieces_is_put_together_in_the_order_of_the_line() -> None:
    pieces = ((210.0, "d.", "one"), (200.0, "n.", "one"), (230.0, "q", "other"))
    seen = tuple(SecondReading(text, Box(x, 20, x + 8, 32), name) for x, text, name in pieces)
    printed = PrintedFigure("NDMA", "n.d.", None, 1, VALUE_BOX, label_box=LABEL_BOX, second=seen)
    assert built(printed, page=PAGE).figures[0].state == "accepted"
    apart = tuple(reading._replace(reader=reading.text) for reading in seen)
    assert built(replace(printed, second=apart), page=PAGE).figures[0].reasons == (NO_NUMBER,)


@pytest.mark.parametrize(("confidence", "state"), [(0.8, "accepted"), (0.79, "review")])
def test_a_described_result_has_to_be_read_surely(confidence: float, state: str) -> None:
    assert scanned("Clarity", "clear", None, "", confidence=confidence).state == state


SIEVE = "2.2 to 2.5 mm"


def sieve(text: str, box: Box, label: str = SIEVE, lost: tuple[Box, ...] = ()) -> Figure:
    """A fraction of a scan whose label a second reader saw as ``text`` in ``box``."""
    value = SecondReading("6.2", VALUE_BOX, "other")
    page = replace(PAGE, second=(value, SecondReading(text, box, "other")), lost=lost)
    printed = PrintedFigure(label, "6.2", "%", 1, VALUE_BOX, label_box=LABEL_BOX, second=(value,))
    return next(figure for figure in built(printed, row("Friability", "86"), page=page).figures if figure.value == 6.2)


HALF = Box(10, 20, 50, 32)


@pytest.mark.parametrize(
    ("text", "box", "differs"),
    [
        (SIEVE, LABEL_BOX, False),
        ("2,2 to 2,5 mm", LABEL_BOX, False),
        ("2.2 to 2.8 mm", LABEL_BOX, True),
        ("2.2 to mm or more", LABEL_BOX, True),  # of the whole label a number is missing
        ("2.2 to", HALF, False),  # of a part of it one may be
        ("2.8 to", HALF, True),
        ("2.8", LABEL_BOX, False),  # most of it was lost
        ("2.8 to 2.9 mm", Box(10, 20, 120, 32), False),  # more than the label
        ("2.8 to 2.9 mm", Box(10, 50, 90, 62), False),  # another row
        ("2.8 to 2.9 mm", Box(10, 8, 90, 20), False),
        ("2.8 to 2.9 mm", Box(110, 20, 190, 32), False),  # beside it
        ("2.8 to 2.9 mm", Box(-80, 20, 0, 32), False),
        ("2.2 to 2.5 mm 4", LABEL_BOX, True),
    ],
)
def test_another_reading_of_the_sizes_in_a_label(text: str, box: Box, differs: bool) -> None:
    found = sieve(text, box)
    assert found.reasons == ((f"One reading of the label gives “{SIEVE}”, another “{text}”.",) if differs else ())


def test_a_lone_a_between_sizes_is_taken_for_a_4_and_is_none() -> None:
    assert sieve("2,2 4 2,5 mm", LABEL_BOX, label="2,2 à 2,5 mm").reasons == ()
    assert sieve("2,2 5 2,5 mm", LABEL_BOX, label="2,2 à 2,5 mm").state == "review"
    assert sieve("2.2 4 2.5 mm", LABEL_BOX).state == "review"


@pytest.mark.parametrize(
    ("lost", "hidden"),
    [
        (Box(40, 18, 60, 30), True),
        (Box(0, 18, 20, 30), True),
        (Box(80, 18, 120, 30), True),
        (Box(91, 18, 120, 30), False),
        (Box(0, 18, 9, 30), False),
        (Box(40, 40, 60, 50), False),
        (Box(40, 5, 60, 15), False),
    ],
)
def test_ink_that_could_not_be_read_hides_the_sizes_it_lies_on(lost: Box, hidden: bool) -> None:
    reason = f"There is ink over the numbers of the label (“{SIEVE}”) that could not be read."
    assert sieve(SIEVE, LABEL_BOX, lost=(lost,)).reasons == ((reason,) if hidden else ())


@pytest.mark.parametrize(
    ("head", "strange"),
    [
        *[("", False), ("Result", False), ("in %", False), ("Lot", False), ("Lot 4711", False)],
        *[("Xyqq", True), ("Xyqq 7", False)],
    ],
)
def test_a_head_of_unknown_words_was_not_read_cleanly(head: str, strange: bool) -> None:
    reason = f"The head of its column (“{head}”) was not read cleanly."
    assert scanned("Moisture", "4.2", "%", "4.2", column=head).reasons == ((reason,) if strange else ())
