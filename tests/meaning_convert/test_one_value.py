"""The single conversion of the command line: what it finds, and what it says where there is nothing to find."""

from __future__ import annotations

import math

import pytest

from importer.meaning.convert import ConversionError, convert_value


def test_litre_degrees_say_what_they_are_not() -> None:
    (found,) = convert_value(308, "L°/kg", "%")
    assert (found.value, found.unit, found.kind, found.estimated) == (79.79, "%", "unit", False)
    assert "does not turn an IoB extract into an EBC extract" in found.notes[0]
    assert found.formula == "% = L°/kg ÷ 3.86"
    assert "common practice" in found.source


def test_iob_to_ebc_extract_is_an_estimate() -> None:
    (found,) = convert_value(308, "L°/kg", "% EBC")
    assert (found.value, found.kind, found.spread) == (81.3, "correlation", 1.0)
    assert len(found.steps) == 2


def test_ratio_rules() -> None:
    assert convert_value(38, "SNR", "KI")[0].value == 42.8
    assert convert_value(38, "% SNR", "Kolbach index", ratio_rule="plus-five")[0].value == 43.0


def test_both_bushels_and_both_protein_factors_are_offered() -> None:
    assert {c.unit for c in convert_value(55, "kg/hL", "lb/bu")} == {"lb/bu US", "lb/bu imperial"}
    assert [c.value for c in convert_value(2.0, "% N", "% protein")] == [12.5, 11.4]


def test_better_way_where_more_is_known() -> None:
    rough = convert_value(150, "mg/100 g", "mg/L")[0]
    fine = convert_value(150, "mg/100 g", "mg/L", extract=81, moisture=4.5)[0]
    assert (rough.estimated, fine.estimated) == (True, False)
    assert fine.value == 167.81


def test_moisture_basis() -> None:
    """A published pair: 77.5 % as is with 5 % water is 81.6 % dry."""
    assert convert_value(77.5, "% as is", "% dry", moisture=5)[0].value == pytest.approx(81.6, abs=0.05)
    both = convert_value(290, "L°/kg as is", "% dry", moisture=4)[0]
    assert [step.kind for step in both.steps] == ["moisture-basis", "unit"]


def test_spellings() -> None:
    for text in ("LDK", "l°/kg", "litre degrees/kg"):
        assert convert_value(308, text, "%")[0].value == 79.79
    assert convert_value(300, "°WK", "Lintner")[0].value == 90.29
    assert convert_value(12, "Plato", "SG")[0].value == 1.04839


@pytest.mark.parametrize(
    ("value", "start", "end", "says"),
    [
        (4, "°L", "EBC", "°Lintner, SRM or °Lovibond"),
        (4, "EBC", "WK", "No relation leads from EBC to WK"),
        (4, "EBC", "WK", "SRM"),
        (4, "furlong", "WK", "not a unit"),
        (4, "pt/lb", "%", "pt/lb/gal"),
        (1.5, "mm²/s", "mPa·s", "density"),
        (77.5, "% as is", "% dry", "moisture"),
        (10, "SNR", "KI", "32 to 46"),
        (250, "L°/kg", "% EBC", "holds from"),
        (5, "°Lintner", "WK", "holds from"),
        (math.nan, "%", "mg/kg", "number"),
        (math.inf, "%", "mg/kg", "number"),
        (-5, "SG", "°P", "holds from"),
    ],
)
def test_refusals_say_what_to_do(value: float, start: str, end: str, says: str) -> None:
    with pytest.raises(ConversionError, match=says.replace("°", ".")):
        convert_value(value, start, end)


def test_options_out_of_range() -> None:
    with pytest.raises(ConversionError, match="moisture"):
        convert_value(77.5, "% as is", "% dry", moisture=100)
    with pytest.raises(ConversionError, match="density"):
        convert_value(1.5, "mm²/s", "mPa·s", density=0)
