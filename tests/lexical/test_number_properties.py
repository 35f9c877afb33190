"""What must hold of any number, however it is written (ISO 80000-1:2022, 7.3)."""

from __future__ import annotations

import math
from decimal import Decimal

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from importer.reading.numbers import Convention, decide_convention, read_number
from tests.lexical.test_numbers import read


def grouped(number: Decimal, sign: str, group: str) -> str:
    whole, _, after = f"{abs(number):f}".partition(".")
    blocks: list[str] = []
    while len(whole) > 3:
        whole, block = whole[:-3], whole[-3:]
        blocks.insert(0, block)
    text = group.join([whole, *blocks])
    return ("-" if number < 0 else "") + (f"{text}{sign}{after}" if after else text)


@given(
    st.decimals(-99999, 99999, places=2),
    st.sampled_from([(".", ""), (",", ""), (".", ","), (",", "."), (",", "\u00a0"), (".", "'")]),
)
def test_a_written_number_reads_back(number: Decimal, signs: tuple[str, str]) -> None:
    # ISO 80000-1: the same number in each way of writing it.
    sign, group = signs
    found = read(grouped(number, sign, group), ("." if sign == "." else ","))
    assert found.value is not None
    assert math.isclose(found.value, float(number), abs_tol=1e-9)
    assert (found.decimals, found.ambiguous) == (2, False)


@given(st.integers(0, 999), st.integers(0, 999), st.sampled_from([".", ","]))
def test_three_decimals_follow_the_sheet(whole: int, after: int, sign: str) -> None:
    convention: Convention = "." if sign == "." else ","
    found = read(f"{whole}{sign}{after:03d}", convention)
    assert found.value == pytest.approx(whole + after / 1000)
    without = read(f"{whole}{sign}{after:03d}")
    assert without.ambiguous == (whole > 0)


@given(st.lists(st.decimals(0, 999, places=1), min_size=1), st.sampled_from([".", ","]))
def test_the_vote_finds_the_sign_that_was_written(numbers: list[Decimal], sign: str) -> None:
    assert decide_convention([str(number).replace(".", sign) for number in numbers]) == sign


@given(
    st.decimals(0, 999, places=1),
    st.decimals(0, 999, places=1),
    st.sampled_from([" - ", "-", " to ", "÷", "~", " bis "]),
)
def test_a_written_range_reads_back(one: Decimal, other: Decimal, sign: str) -> None:
    assume(one <= other)
    found = read(f"{one}{sign}{other}", ".")
    assert (found.low, found.high) == (float(one), float(other))


@given(st.text(max_size=120), st.sampled_from([".", ",", None]), st.booleans())
def test_never_an_exception(text: str, convention: Convention, optical: bool) -> None:
    number = read_number(text, convention, optical)
    assert number is None or (number.value is None or math.isfinite(number.value))


CELL = st.lists(st.sampled_from([*"0123456789.,- ()<>≤±/~%'", "max", "min", "to", "n.d.", " "]), max_size=30).map(
    "".join
)


@given(CELL)
def test_a_certain_plain_figure_holds_the_digits_that_were_printed(text: str) -> None:
    number = read_number(text, None)
    if (
        number
        and number.kind == "number"
        and number.bound is None
        and not number.ambiguous
        and number.low is number.high
    ):
        printed = "".join(mark for mark in text.split("±")[0] if mark.isdigit()).lstrip("0").rstrip("0")
        assert number.value is not None
        shown = f"{abs(number.value):.{number.decimals}f}".replace(".", "").lstrip("0").rstrip("0")
        assert shown == printed
