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


@pytest.mark.parametrize("moisture", [0, 0.4, 99.9])
def test_moisture_may_be_anything_below_a_hundred(moisture: float) -> None:
    found = convert_value(50, "% dry", "% as is", moisture=moisture)[0]
    assert found.exact == pytest.approx(50 * (1 - moisture / 100))


def test_a_step_between_bases_shows_its_formula_and_its_moisture() -> None:
    (to_dry,) = convert_value(77.5, "% as is", "% dry", moisture=5)
    (to_as_is,) = convert_value(81.6, "% dry", "% as is", moisture=5)
    assert to_dry.formula == "dry = as is ÷ (1 − M ÷ 100), M = 5 %"
    assert to_as_is.formula == "as is = dry × (1 − M ÷ 100), M = 5 %"
    assert (to_as_is.value, to_as_is.exact) == (77.52, pytest.approx(81.6 * 0.95))
    assert (to_as_is.topic, to_as_is.kind, to_as_is.spread, to_as_is.estimated) == (
        "moisture basis", "moisture-basis", None, False,
    )  # fmt: skip


def test_a_basis_on_one_side_only_changes_nothing() -> None:
    for start, end in (("% dry", "%"), ("%", "% as is"), ("% TrS", "% dry")):
        found = convert_value(4.2, start, end, moisture=5)[0]
        assert (found.value, found.steps, found.formula) == (4.2, (), "the same unit")
    assert convert_value(80, "% TrS", "% as is", moisture=5)[0].value == 76.0


def test_density_and_strength_are_used() -> None:
    """Dynamic = kinematic viscosity × density, the definition."""
    assert convert_value(1.5, "mm²/s", "mPa·s", density=1.034)[0].value == 1.551
    assert convert_value(1.5, "mm²/s", "mPa·s", density=0.9)[0].value == 1.35


def test_degree_signs_and_micro_signs_are_one() -> None:
    for text in ("ºIoB", "˚IoB", "°IoB"):
        assert convert_value(40, text, "WK")[0].value == convert_value(40, "°IoB", "WK")[0].value
    assert convert_value(50, "μg/kg", "mg/kg")[0].value == 0.05


def test_what_a_result_carries() -> None:
    (found,) = convert_value(308, "L°/kg", "% EBC")
    assert (found.topic, found.unit) == ("extract", "% EBC")
    assert found.exact == pytest.approx(308 / 3.86 + 1.5)
    assert len(found.notes) == 3
    assert found.notes[-1] == "Holds from 76.42 to 82.38 %."
    assert [step.to.value for step in found.steps] == [79.79, 81.3]
    assert found.steps[0].from_.value == 308


def test_the_spread_grows_along_the_chain() -> None:
    """1.97 × a colour ± 1 % (mappings/conversions.toml)."""
    small, large = convert_value(4, "SRM", "EBC")[0], convert_value(40, "SRM", "EBC")[0]
    assert small.spread == pytest.approx(0.079)
    assert large.spread == pytest.approx(0.79)


def test_a_misspelt_unit_is_answered_with_near_ones() -> None:
    with pytest.raises(
        ConversionError, match=r"'°Lintnr' is not a unit that onebasis knows\. Did you mean °Lintner"
    ) as near:
        convert_value(4, "°Lintnr", "WK")
    assert near.value.args[0].endswith("?")
    with pytest.raises(ConversionError, match=r"It converts %, .*L°/kg.*SRM"):
        convert_value(4, "furlong", "WK")


def test_where_nothing_leads_the_reachable_units_are_listed() -> None:
    with pytest.raises(ConversionError) as trouble:
        convert_value(4, "EBC", "WK")
    text = trouble.value.args[0]
    assert text.startswith("No relation leads from EBC to WK. From EBC onebasis converts to ")
    listed = text.partition("converts to ")[2].rstrip(".").split(", ")
    assert "SRM" in listed
    assert "EBC" not in listed
    assert "°Lintner" not in listed
    for unit in listed:
        assert convert_value(4, "EBC", unit)


def test_refusals_are_sentences() -> None:
    for arguments, says in (
        ((math.nan, "%", "mg/kg"), "the value must be a number"),
        ((77.5, "% as is", "% dry"), "% as is to % dry needs the moisture in %."),
        ((1.5, "mm²/s", "mPa·s"), "mm²/s to mPa·s needs the density in kg/L."),
        ((10, "SNR", "KI"), "10 SNR is outside: ratio × 1.125 holds from 32 to 46 SNR."),
    ):
        with pytest.raises(ConversionError) as trouble:
            convert_value(*arguments)
        assert trouble.value.args[0] == says
    with pytest.raises(ConversionError) as trouble:
        convert_value(77.5, "% as is", "% dry", moisture=100)
    assert trouble.value.args[0] == "the moisture must lie between 0 and 100 %"
    with pytest.raises(ConversionError) as trouble:
        convert_value(1.5, "mm²/s", "mPa·s", density=0)
    assert trouble.value.args[0] == "the density must be above 0"
