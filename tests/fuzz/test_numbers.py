"""Cells of results by chance: each is a number that was printed, a known word, or nothing."""

from __future__ import annotations

import math

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.reading.numbers import Convention, Number, decide_convention, read_number, same_number
from importer.reading.plain_number import fold_signs
from importer.vocabulary.units import split_unit

PIECES = (
    *"0123456789", *"0123456789", *".,'’·٫ \u00a0\u202f", *"()[]<>≤≥±~-–−+/;|*†¹²%°&=:…",
    "1.234", "12,5", "0,05", "..", "+/-", "<=", "&lt;", "min", "max.", "up to", "bis", "ca.", "n.d.", "n.n.", "and",
    "zwischen", "entre", "from", "to", "not detected", "clear", "normal", "EBC", "mg/l", "٤", "４", "½", "e5", "\u202e",
)  # fmt: skip
written = st.lists(st.sampled_from(PIECES), max_size=24).map("".join) | st.text(max_size=110)
conventions = st.sampled_from((".", ",", None))


@settings(deadline=None, max_examples=400)
@given(written, conventions, st.booleans())
def test_a_cell_is_what_was_printed_or_nothing(text: str, convention: Convention, optical: bool) -> None:
    number = read_number(text, convention, optical)
    if number is not None:
        _is_sound(number)
        _is_printed(number, text)
        assert same_number(number, number)
        assert read_number(f" {text} ", convention, optical) == number or len(text) > 98


@settings(deadline=None, max_examples=200)
@given(written, conventions)
def test_what_stands_before_a_unit_is_read_the_same_way(text: str, convention: Convention) -> None:
    before, unit = split_unit(text)
    assert unit is not None or before == text or before == text.strip()
    number = read_number(before, convention)
    if number is not None:
        _is_printed(number, text)


@settings(deadline=None, max_examples=100)
@given(st.lists(written, max_size=8))
def test_the_decimal_sign_of_a_sheet_does_not_depend_on_the_order(texts: list[str]) -> None:
    assert decide_convention(texts) == decide_convention(texts[::-1])
    assert decide_convention(texts) in (".", ",", None)


def _is_sound(number: Number) -> None:
    assert number.decimals >= 0
    assert number.ambiguous == bool(number.why), "doubt without a reason, or a reason without doubt"
    for value in _values(number):
        assert math.isfinite(value)
    if number.kind == "number":
        assert number.value is not None
        assert number.bound != "range"
    elif number.kind == "range":
        assert (number.value, number.bound) == (None, "range")
        assert number.low is not None
        assert number.high is not None
        assert number.low <= number.high or number.ambiguous
    elif number.kind == "several":
        assert len(number.pieces) > 1
        assert number.ambiguous
        for piece in number.pieces:
            assert piece.kind == "number"
    else:
        assert number.value is None
        assert not number.pieces


def _values(number: Number) -> list[float]:
    found = (number.value, number.low, number.high, number.tolerance, number.alternative)
    return [value for value in found if value is not None]


def _is_printed(number: Number, text: str) -> None:
    """Nothing is computed: the digits of each value stand in the text, in their order."""
    printed = "".join(mark for mark in fold_signs(text) if mark in "0123456789")
    for part in (number, *number.pieces):
        for value in _values(part):
            digits = f"{abs(value):.20g}" if value == int(value) else repr(abs(value))
            if "e" not in digits:
                wanted = digits.replace(".", "").strip("0")
                assert _holds(printed, wanted), (text, value)


def _holds(printed: str, wanted: str) -> bool:
    rest = iter(printed)
    return all(digit in rest for digit in wanted)
