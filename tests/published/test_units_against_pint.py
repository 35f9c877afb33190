"""Exact factors against pint, a general library of units that knows nothing of this project."""

from __future__ import annotations

from functools import cache
from typing import Any

import pint
import pytest

from importer.meaning.convert import convert_value


@cache
def registry() -> Any:
    return pint.UnitRegistry()


def measured(amount: float, unit: str) -> Any:
    return amount * registry().parse_expression(unit)


def in_units(amount: float, unit: str, to: str) -> float:
    return float((measured(amount, unit) / measured(1, to)).to_base_units().magnitude)


@pytest.mark.parametrize(
    ("unit", "in_pint", "to", "to_in_pint"),
    [
        ("ppm", "ppm", "mg/kg", "mg/kg"),
        ("ppb", "µg/kg", "mg/kg", "mg/kg"),
        ("mg/100 g", "mg/(100 g)", "mg/kg", "mg/kg"),
        ("%", "percent", "mg/100 g", "mg/(100 g)"),
        ("%", "percent", "mg/kg", "mg/kg"),
        ("g/t", "g/t", "mg/kg", "mg/kg"),
        ("mg/100 mL", "mg/(100 mL)", "mg/L", "mg/L"),
        ("pt/lb/gal", "gallon/pound", "L°/kg", "L/kg"),
        ("pt/lb/imp gal", "imperial_gallon/pound", "L°/kg", "L/kg"),
        ("lb/bu US", "pound/bushel", "kg/hL", "kg/hL"),
        ("lb/bu imperial", "pound/imperial_bushel", "kg/hL", "kg/hL"),
        ("g/L", "g/L", "kg/hL", "kg/hL"),
        ("cP", "centipoise", "mPa·s", "mPa*s"),
        ("in", "inch", "mm", "mm"),
        ("h", "hour", "min", "min"),
        ("s", "second", "min", "min"),
    ],
)
def test_exact_factor(unit: str, in_pint: str, to: str, to_in_pint: str) -> None:
    there = convert_value(37.5, unit, to)[0].exact
    assert there == pytest.approx(in_units(37.5, in_pint, to_in_pint), rel=1e-12)
    back = convert_value(37.5, to, unit)
    assert min(abs(r.exact / in_units(37.5, to_in_pint, in_pint) - 1) for r in back) < 1e-12


def test_brewers_pounds_per_quarter() -> None:
    """One brewer's pound in a barrel of 36 imperial gallons is 1000/360 degrees; the quarter of malt is 336 lb."""
    expected = (1000 / 360 * 36 * measured(1, "imperial_gallon") / measured(336, "pound")).to("L/kg").magnitude
    assert convert_value(1, "lb/qr", "L°/kg")[0].exact == pytest.approx(expected, rel=1e-12)


def test_kinematic_viscosity() -> None:
    expected = (measured(1.5, "centistokes") * measured(1.034, "kg/L")).to("mPa*s").magnitude
    assert convert_value(1.5, "mm²/s", "mPa·s", density=1.034)[0].exact == pytest.approx(expected, rel=1e-12)
