"""Numbers. Sources: ISO 80000-1:2022, 7.3 (decimal sign is a comma or a point on the line; groups of three digits);
Unicode Standard, 4.6 (decimal digits of all scripts), Annex 15 (superscripts are no decimal digits). The rest is
common practice, no source."""

from __future__ import annotations

import time
from dataclasses import replace

import pytest

from importer.reading.numbers import Convention, Number, count_votes, decide_convention, read_number, same_number


def read(text: str, convention: Convention = None, optical: bool = False) -> Number:
    number = read_number(text, convention, optical)
    assert number is not None, text
    return number


@pytest.mark.parametrize(
    ("text", "value", "decimals"),
    [
        ("4.2", 4.2, 1), ("4,2", 4.2, 1), ("450", 450, 0), ("0", 0, 0), ("0.450", 0.45, 3), ("0,05", 0.05, 2),
        ("+0.3", 0.3, 1), ("-0.3", -0.3, 1), ("−0,3", -0.3, 1), ("–0,3", -0.3, 1), ("1'450", 1450, 0),
        ("1’450.5", 1450.5, 1), ("1,234.5", 1234.5, 1), ("1.234,567", 1234.567, 3), ("1\u00a0450,5", 1450.5, 1),
        ("1\u202f450", 1450, 0), ("４．５", 4.5, 1), ("٤٫٥", 4.5, 1), ("4·5", 4.5, 1), ("= 4.5", 4.5, 1),
        ("1.234.567", 1234567, 0),
        (" 82 ", 82, 0), ("1234.567", 1234.567, 3), ("1 450", 1450, 0),
    ],
)  # fmt: skip
def test_plain_figures(text: str, value: float, decimals: int) -> None:
    number = read(text)
    assert (number.kind, number.value, number.bound, number.decimals) == ("number", value, None, decimals)
    assert not number.ambiguous


@pytest.mark.parametrize(
    ("text", "value", "bound"),
    [
        ("<0,5", 0.5, "<"), ("< 0.5", 0.5, "<"), ("&lt;0.5", 0.5, "<"), ("≤ 5", 5, "max"), ("<= 5", 5, "max"),
        ("> 98", 98, ">"),
        ("≥180", 180, "min"), ("max. 4.5", 4.5, "max"), ("4.5 max", 4.5, "max"), ("min 80", 80, "min"),
        ("maks. 5", 5, "max"),
        ("80 min", 80, "min"), ("Above 80", 80, ">"), ("bis 4", 4, "max"), ("up to 2.0", 2, "max"),
        ("ca. 3", 3, "approx"),
        ("~3", 3, "approx"), ("not more than 4.5", 4.5, "max"), ("nicht über 4,5", 4.5, "max"), ("powyżej 80", 80, ">"),
        ("inferiore al 5", 5, "<"), ("не більше 5", 5, "max"), ("mind. 80", 80, "min"), ("od 4", 4, "min"),
        ("98+", 98, "min"),
        ("4.5 or less", 4.5, "max"), ("< -5", -5, "<"), ("less 4,5", 4.5, "<"), ("more of 4,5", 4.5, ">"),
    ],
)  # fmt: skip
def test_bounds(text: str, value: float, bound: str) -> None:
    number = read(text)
    assert (number.kind, number.value, number.bound) == ("number", value, bound)
    assert number.high == (value if bound in ("<", "max") else None)
    assert number.low == (value if bound in (">", "min") else None)


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("10-15", 10, 15), ("10 – 15", 10, 15), ("4.0..4.5", 4, 4.5), ("3,5÷4,5", 3.5, 4.5), ("3.5~4.5", 3.5, 4.5),
        ("10 -- 15", 10, 15),
        ("10 to 15", 10, 15), ("10 bis 15", 10, 15), ("10 à 15", 10, 15), ("10 do 15", 10, 15), ("3∼5", 3, 5),
        ("> 9.5 and < 11.5", 9.5, 11.5), (">9.5 <11.5", 9.5, 11.5), ("≥ 38 – ≤ 45", 38, 45), ("min 4.0 max 5.0", 4, 5),
        ("4.0 min - 5.0 max", 4, 5), ("between 4 and 5", 4, 5), ("von 4 bis 5", 4, 5), ("od 4 do 5", 4, 5),
        ("-0.5 - 0.5", -0.5, 0.5), ("3 - 4,5", 3, 4.5),
    ],
)  # fmt: skip
def test_ranges(text: str, low: float, high: float) -> None:
    number = read(text)
    assert (number.kind, number.bound, number.value) == ("range", "range", None)
    assert (number.low, number.high, number.ambiguous) == (low, high, False)


def test_a_range_upside_down_is_doubtful() -> None:
    assert read("2024-25").ambiguous


def test_tolerance_and_bracketed_limits() -> None:
    assert (read("4.5 ± 0.2").value, read("4.5 ± 0.2").tolerance) == (4.5, 0.2)
    limits = read("4.5 (3.0-5.0)")
    assert (limits.value, limits.low, limits.high, limits.bound) == (4.5, 3.0, 5.0, None)
    assert (read("4.5 (max 5.0)").value, read("4.5 (max 5.0)").high) == (4.5, 5.0)


@pytest.mark.parametrize(
    ("text", "mark"), [("4.5*", "*"), ("4.5 ¹", "¹"), ("4.5†", "†"), ("4.5 #", "#"), ("4.5²", "²"), ("4.5 a)", "a)")]
)
def test_footnote_marks_are_no_digits(text: str, mark: str) -> None:
    assert (read(text).value, read(text).mark) == (4.5, mark)


@pytest.mark.parametrize(
    "text", ["n.d.", "nd", "not detected", "n.n.", "b.d.l.", "< LOD", "<LOQ", "nicht nachweisbar", "未检出"]
)
def test_not_detected(text: str) -> None:
    assert (read(text).kind, read(text).value) == ("not-detected", None)


def test_not_detected_keeps_a_printed_limit() -> None:
    assert (read("n.d. (<5)").kind, read("n.d. (<5)").high) == ("not-detected", 5)
    assert (read("< LOQ (0.01)").kind, read("< LOQ (0.01)").high) == ("not-detected", 0.01)


@pytest.mark.parametrize("text", ["", " ", "-", "–", "—", "n/a", "k.A.", "...", "nicht best.", "not analysed"])
def test_blank(text: str) -> None:
    assert (read(text).kind, read(text).value) == ("blank", None)


@pytest.mark.parametrize(
    "text",
    ["normal", "Clear", "klar", "leicht opal", "fast", "N", "nil", "rein", "clair", "very high", "clear / normal"],
)
def test_described_results(text: str) -> None:
    assert read(text).kind == "word"


@pytest.mark.parametrize(
    "text",
    [
        "06", "00", "1.2e3", "4,O", "24-0815", "12-05-2026", "04.03.2026", "4-5-6", "4½", "Pilsner", "batch 5",
        "5 pieces",
        "4.2 %", "<", "max", "4.5 - ", "1,23,4", "1.2.3", "12,34.5", "l2", "4.5.1", "Moisture 4.5",
        "x" * 5000, "1" * 40,
    ],
)  # fmt: skip
def test_what_is_no_number(text: str) -> None:
    assert read_number(text, None) is None


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("1.55 / 9.7", [1.55, 9.7]),
        ("10 / 20 / 70", [10, 20, 70]),
        ("4.5; 4.6", [4.5, 4.6]),
        ("4.5 4.7", [4.5, 4.7]),
        ("4.5 (4.0)", [4.5, 4.0]),
    ],
)
def test_several_figures_in_a_cell_are_never_one(text: str, pieces: list[float]) -> None:
    number = read(text)
    assert (number.kind, number.value, number.ambiguous) == ("several", None, True)
    assert [piece.value for piece in number.pieces] == pieces


@pytest.mark.parametrize(
    ("text", "convention", "value", "ambiguous", "other"),
    [
        ("1,450", ".", 1450.0, False, None),
        ("1,450", ",", 1.45, False, None),
        ("1,450", None, 1.45, True, 1450.0),
        ("1.450", ".", 1.45, False, None),
        ("1.450", ",", 1450.0, True, 1.45),
        ("1.450", None, 1.45, True, 1450.0),
        ("4.5", ",", 4.5, False, None),
        ("1.234.567", ".", 1234567.0, True, None),
        ("1,234.5", ",", 1234.5, True, None),
    ],
)
def test_three_digits_behind_a_sign(
    text: str, convention: Convention, value: float, ambiguous: bool, other: float | None
) -> None:
    number = read(text, convention)
    assert (number.value, number.ambiguous, number.alternative) == (value, ambiguous, other)
    assert bool(number.why) == ambiguous


def test_no_digit_is_changed_by_keeping_the_number() -> None:
    assert read("300,500,500,500,505").value == 300500500500505
    assert read("0.12345678901234").value == 0.12345678901234
    for text in ("30,050,050,050,050,053", "3 005 005 005 005 053", "12345678.123456789", "0.1234567890123456"):
        assert read_number(text, None) is None, text
    assert read_number("4.5 - 30,050,050,050,050,053", None) is None


@pytest.mark.parametrize("text", ["82.", "4.5.", ".5", ",5", "81. 5", "81 ,5", "(4.5)", "- 0.3", "120 450"])
def test_doubtful_writing_has_a_reason(text: str) -> None:
    assert read(text).ambiguous
    assert read(text).why


def test_a_space_inside_a_number_is_doubtful_on_a_picture() -> None:
    assert not read("1 450").ambiguous
    assert read("1 450", None, True).ambiguous
    assert not read("1\u00a0450", None, True).ambiguous


@pytest.mark.parametrize(
    ("texts", "convention"),
    [
        (["4,5", "81,23"], ","),
        (["4.5", "81.23"], "."),
        (["1.450", "1,450"], None),
        (["4.5", "4,5"], None),
        ([], None),
        (["1.234,5"], ","),
        (["0.450"], "."),
        (["1.234.567"], ","),
        (["< 4,5 - 5,0 %"], ","),
        (["04.03.2026", "4.5.1"], None),
    ],
)
def test_the_decimal_sign_of_a_sheet(texts: list[str], convention: Convention) -> None:
    assert decide_convention(texts) == convention


def test_votes_are_counted() -> None:
    votes = count_votes(["4,5", "3,2 - 4,1", "7.25", "1.450"])
    assert (votes.point, votes.comma, votes.convention) == (1, 3, None)


def test_same_number_goes_by_value_and_bound() -> None:
    assert same_number(read("4.50"), read("4,5"))
    assert same_number(read("< 0.5"), read("<0,50"))
    assert same_number(read("10-15"), read("10 bis 15"))
    assert same_number(read("n.d."), read("not detected"))
    assert not same_number(read("4.5"), read("< 4.5"))
    assert not same_number(read("4.5"), read("4.6"))
    assert not same_number(read("klar"), read("normal"))


@pytest.mark.parametrize("piece", ["1", "1 ", "1.1", "(1", "- ", "min ", "/", "1 000"])
def test_long_cells_take_no_time(piece: str) -> None:
    began = time.process_time()
    for length in (99, 100, 5000):
        read_number((piece * length)[:length], None)
    assert time.process_time() - began < 0.3


@pytest.mark.parametrize(
    "text",
    [
        "≤ 4.5 max", "≥ 4.5 max", "max min 4.5", "4 - < 5", "n.d. 0.5 0.7", "> 0.5 n.d.", "0.5 n.d.", "between 4",
        "tra 4", "< 4.5 (4 - 5)", "4/5/6/7/8/9/1", "4.5 -", "- - 5", "--5", "4.5++", "+ + 4", "4 + 5", "< 98+",
        "< 4 ± 0.2", "4 ± < 0.2", "4;", "/4", "( )", "((4))", "(4", "4)", "- <4", "-(4)", "4 (5 - 6) 7", "max. 4 to 5",
        "+", "±4", "4 ±", "4 (", ") 4", "max", "~", "4 and", "4 < 5 max min",
    ],
)  # fmt: skip
def test_contradictions_and_loose_ends_are_no_number(text: str) -> None:
    assert read_number(text, None) is None


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("max. 5 min. 3", 3, 5), ("≤5 ≥3", 3, 5), ("≥3 ≤5", 3, 5), ("≤5 - ≥3", 3, 5), ("< 5 > 3", 3, 5),
        ("approx. 4 - 5", 4, 5), ("4 - ca. 5", 4, 5), ("from 4 to 5", 4, 5), ("4 to + 5", 4, 5), ("4 - 4", 4, 4),
        ("4.25 - 5", 4.25, 5), ("4 to -5", 4, -5),
    ],
)  # fmt: skip
def test_both_ends_of_a_range_however_they_are_named(text: str, low: float, high: float) -> None:
    number = read(text)
    assert (number.kind, number.bound, number.value, number.low, number.high) == ("range", "range", None, low, high)
    assert number.decimals == (2 if "." in text and "25" in text else 0)
    assert number.ambiguous is (low > high)
    assert number.why == ("the first end of the range is above the second" if low > high else "")


@pytest.mark.parametrize("text", ["1.234 - 2", "1 - 1.234"])
def test_a_range_is_as_doubtful_as_its_ends(text: str) -> None:
    assert read(text).ambiguous
    assert "thousands" in read(text).why


@pytest.mark.parametrize(
    ("text", "value", "bound"),
    [
        ("≈ 4.5", 4.5, "approx"), ("ø 4.5", 4.5, "approx"), ("~ 4.5", 4.5, "approx"), ("ca. max 4.5", 4.5, "approx"),
        ("max ca. 4.5", 4.5, "max"), ("min. ≥ 4", 4, "min"), ("< <4", 4, "<"), ("< 0.5 n.d.", 0.5, "<"),
        ("max: 4.5", 4.5, "max"), ("4.5+", 4.5, "min"),
    ],
)  # fmt: skip
def test_a_bound_said_twice_or_roughly(text: str, value: float, bound: str) -> None:
    number = read(text)
    assert (number.kind, number.value, number.bound, number.ambiguous) == ("number", value, bound, False)


@pytest.mark.parametrize(
    ("text", "high"), [("n.d. (<0.5)", 0.5), ("not detected < 0.5", 0.5), ("n.d. 0.5", 0.5), ("n.d.", None)]
)
def test_not_detected_is_below_the_printed_limit(text: str, high: float | None) -> None:
    number = read(text)
    assert (number.kind, number.value, number.low, number.high) == ("not-detected", None, None, high)
    assert (number.bound, number.decimals, number.ambiguous) == ("<" if high else None, 0, False)
    assert number.text == text


@pytest.mark.parametrize(
    ("text", "low", "high", "why"),
    [
        ("4.5 (max 5.0)", None, 5.0, ""), ("4.5 (min 4.0)", 4.0, None, ""), ("4.5 (4.0 - 5.0)", 4.0, 5.0, ""),
        ("4.5 (5.0 - 4.0)", 5.0, 4.0, "the first end of the range is above the second"),
    ],
)  # fmt: skip
def test_limits_in_brackets_belong_to_the_figure(text: str, low: float | None, high: float | None, why: str) -> None:
    number = read(text)
    assert (number.value, number.bound, number.low, number.high) == (4.5, None, low, high)
    assert (number.ambiguous, number.why) == (bool(why), why)


def test_a_tolerance_may_be_doubtful_and_the_figure_approximate() -> None:
    assert (read("ca. 4 ± 0.2").bound, read("ca. 4 ± 0.2").tolerance) == ("approx", 0.2)
    assert not read("4 ± 0.2").ambiguous
    assert "thousands" in read("4 ± 1.234").why


def test_several_figures_have_a_reason_and_the_finest_decimals() -> None:
    number = read("4 / 5.25 / 6 / 7 / 8 / 9.5")
    assert (len(number.pieces), number.decimals, number.why) == (6, 2, "the cell holds more than one figure")
    assert [piece.bound for piece in read("3 < 5").pieces] == [None, "<"]
    assert [piece.value for piece in read("4 and 5").pieces] == [4, 5]


def test_a_negative_figure_may_be_thousands_too() -> None:
    assert (read("-1.234").value, read("-1.234").alternative) == (-1.234, -1234.0)
    assert read("-4.5").alternative is None
    assert read("- 4.5").why == "the dash stands apart from the figure; it may be no minus sign"
    assert read("(4.5)").why == "the figure stands in brackets"


def test_readings_differ_by_any_of_their_parts() -> None:
    for one, other in (
        ("4.5 (max 5)", "4.5 (max 6)"), ("4.5 (max 5)", "4.5"), ("4.5 ± 0.2", "4.5 ± 0.3"), ("4.5 ± 0.2", "4.5"),
        ("4 / 5", "4 / 6"), ("4 / 5", "3 / 5"), ("4 / 5", "4 / 5 / 6"), ("4 - 5", "4 - 6"), ("3 - 5", "4 - 5"),
        ("n.d. (<5)", "n.d."),
    ):  # fmt: skip
        assert not same_number(read(one), read(other)), (one, other)
        assert not same_number(read(other), read(one)), (one, other)
        assert same_number(read(one), read(one.replace("4", "4.0").replace("4.0.5", "4.5"))), one


def test_readings_are_held_together_by_value_not_by_bits() -> None:
    one, other = read("0.3"), replace(read("0.3"), value=0.1 + 0.2)
    assert same_number(one, other)
    assert not same_number(one, replace(one, value=0.3 * (1 + 1e-8)))
    assert same_number(read("0"), replace(read("0"), value=1e-13))


@pytest.mark.parametrize("text", ["from 82", "ab 82", "à partir de 82", "dès 82", "da 82", "fra 82", "desde 82"])
def test_a_word_for_the_lower_end_alone_is_a_least_value(text: str) -> None:
    number = read_number(text, None)
    assert number is not None
    assert (number.bound, number.value) == ("min", 82.0)
    both = read_number("from 80 to 82", None)
    assert both is not None
    assert (both.bound, both.low, both.high) == ("range", 80.0, 82.0)
