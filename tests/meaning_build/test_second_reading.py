"""What a second reading of a scan confirms: the number beside a unit misread by one reader, and words seen twice."""

from __future__ import annotations

import pytest

from importer.meaning.trust import _before_unit
from importer.vocabulary.units import parse_unit


@pytest.mark.parametrize(
    ("text", "unit", "left"),
    [
        ("181 mg.lI-1", "mg.l-1", ("181",)),
        ("181 mg.lI-1", "WK", ()),  # another unit
        ("mg/100gr", "mg/100 g", ()),  # no number before it
        ("4,5 l2", "%", ()),
        ("11.4 % on", "% on dry", ("11.4",)),  # the line wraps
        ("82,2 wfr.", "%, wfr.", ("82,2",)),
        ("39.8 1b/bushel", "lb/bushel", ("39.8",)),
        ("4,5 1", "mg.l-1", ()),  # a digit, not the end of a unit
        ("4,5 m", "mg/l", ()),
        ("4,5 1l", "mg/l", ()),
        ("589 100 g", "mg/100 g", ("589",)),
        ("181 m", "m", ()),  # one letter may be a digit
    ],
)
def test_the_number_before_a_misread_unit(text: str, unit: str, left: tuple[str, ...]) -> None:
    assert _before_unit(text, unit) == left


@pytest.mark.parametrize(("text", "basis"), [("%$", None), ("%$ i.d.TrS", "dry"), ("%§ TrS", "dry")])
def test_a_percent_sign_with_its_ring_read_twice(text: str, basis: str | None) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert (unit.code, unit.basis) == ("%", basis)


def test_a_sign_without_a_percent_is_no_unit() -> None:
    assert parse_unit("$") is None
    assert parse_unit("$%") is None
