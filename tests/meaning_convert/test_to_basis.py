"""From a printed number to the method basis: values, steps, flags and reasons.

Numbers that a source prints stand in tests/published with that source; here they show which way a figure takes.
"""

from __future__ import annotations

import pytest

from importer.meaning.convert import (
    Context,
    Outcome,
    Start,
    at_basis,
    convert_alike,
    lovibond_of_pair,
    needs_basis,
    same_wort,
    stands_on,
    to_basis,
)
from importer.models import Family, Mash
from importer.vocabulary.parameters import MoistureBasis

SHEET = Context(moisture=4.5, extract_dry=81.0)


def go(
    parameter: str,
    value: float,
    unit: str,
    family: Family,
    target: Family = "EBC",
    *,
    mash: Mash | None = None,
    basis: MoistureBasis | None = None,
    context: Context = SHEET,
) -> Outcome:
    return to_basis(Start(parameter, value, unit, family, mash, basis), target, context)


def kinds(outcome: Outcome) -> list[str]:
    return [step.kind for step in outcome.steps]


# ---------------------------------------------------------------- the ratio


def test_iob_ratio_becomes_a_kolbach_index() -> None:
    """Joint IoB/EBC trial: the Congress wort holds 1.12 to 1.13 times the soluble nitrogen of the IoB wort."""
    result = go("nitrogen_ratio", 38.0, "%", "IoB", mash="isothermal-65")
    assert (result.value, result.unit, result.family) == (42.8, "%", "EBC")
    assert (result.estimated, result.spread) == (True, 2.5)
    assert result.flags == ("nitrogen-ratio-offset-applied",)
    (step,) = result.steps
    assert (step.kind, step.from_.value, step.to.value, step.formula) == ("correlation", 38.0, 42.8, "ratio × 1.125")
    assert (step.from_.family, step.to.family) == ("IoB", "EBC")
    offset = result.method_offset
    assert offset is not None
    assert (offset.applied, offset.points, offset.from_, offset.to) == (True, 4.8, "IoB", "EBC")


def test_plus_five_is_selectable() -> None:
    """Common practice, no source."""
    result = go("nitrogen_ratio", 38.0, "%", "IoB", context=Context(ratio_rule="plus-five"))
    assert result.value == 43.0
    assert result.steps[0].formula == "ratio + 5"
    assert "common practice" in result.steps[0].source


def test_kolbach_index_becomes_an_iob_ratio() -> None:
    result = go("nitrogen_ratio", 42.75, "%", "EBC", "IoB")
    assert result.value == 38.0
    assert result.method_offset is not None
    assert result.method_offset.points == pytest.approx(-4.75, abs=0.06)


@pytest.mark.parametrize(
    ("value", "mash", "context", "why"),
    [
        (38.0, None, Context(estimates=False), "estimates are left out"),
        (30.0, None, SHEET, "outside 32 to 46"),
        (50.0, None, SHEET, "outside 32 to 46"),
        (38.0, None, Context(malt_class="wheat"), "pale barley malts only"),
        (38.0, None, Context(malt_class="crystal"), "pale barley malts only"),
        (38.0, None, Context(colour=60.0), "pale barley malts only"),
    ],
)
def test_ratio_that_must_not_be_converted(value: float, mash: Mash | None, context: Context, why: str) -> None:
    result = go("nitrogen_ratio", value, "%", "IoB", mash=mash, context=context)
    assert (result.value, result.family, result.estimated, result.steps) == (value, "IoB", False, ())
    assert set(result.flags) == {"not-convertible", "nitrogen-ratio-offset-not-applied"}
    assert result.reason is not None
    assert why in result.reason
    assert result.method_offset is not None
    assert result.method_offset.applied is False


def test_ratio_of_a_steady_65_mash_gets_no_offset() -> None:
    """No correction for the MEBAK mash at 65 °C is published."""
    result = go("nitrogen_ratio", 40.0, "%", "EBC", mash="isothermal-65")
    assert (result.value, result.family) == (40.0, "EBC")
    assert set(result.flags) == {"not-convertible", "nitrogen-ratio-offset-not-applied"}


def test_ratio_between_ebc_and_asbc_is_one_figure() -> None:
    result = go("nitrogen_ratio", 42.0, "%", "ASBC")
    assert (result.value, result.family, result.steps, result.flags) == (42.0, "EBC", (), ())
    assert result.method_offset is not None
    assert result.method_offset.applied is False


# ---------------------------------------------------------------- extract


def test_iob_extract_is_never_an_ebc_extract() -> None:
    result = go("extract_coarse_dry", 308.0, "L°/kg", "IoB")
    assert (result.parameter, result.value, result.unit, result.family) == ("extract_coarse_dry", 308.0, "L°/kg", "IoB")
    assert result.flags == ("not-convertible",)


def test_litre_degrees_are_iob_on_any_sheet() -> None:
    """EBC 4.6.1 is the IoB mash: the body that numbers a method does not settle the mash."""
    assert go("extract_coarse_dry", 308.0, "L°/kg", "EBC").family == "IoB"


def test_iob_extract_in_percent_goes_to_litre_degrees() -> None:
    result = go("extract_coarse_dry", 80.0, "%", "IoB", "IoB")
    assert (result.value, result.unit, kinds(result)) == (308.8, "L°/kg", ["unit"])


def test_points_per_pound_on_an_american_sheet() -> None:
    """8.34540 L°/kg a point, then 3.86 L°/kg a per cent: two changes, two steps."""
    result = go("extract_coarse_as_is", 37.0, "pt/lb/gal", "ASBC")
    assert (result.value, result.unit, result.family) == (79.99, "%", "EBC")
    assert kinds(result) == ["unit", "unit"]


@pytest.mark.parametrize("parameter", ["extract_fine_dry", "viscosity", "wort_ph", "final_attenuation", "beta_glucan"])
def test_congress_worts_are_one(parameter: str) -> None:
    unit = {"viscosity": "mPa·s", "wort_ph": "pH", "beta_glucan": "mg/L"}.get(parameter, "%")
    result = go(parameter, 81.5, unit, "ASBC")
    assert (result.value, result.family, result.steps, result.flags) == (81.5, "EBC", (), ())


@pytest.mark.parametrize(
    ("parameter", "unit"),
    [
        ("extract_fine_dry", "%"),
        ("colour", "EBC"),
        ("soluble_nitrogen", "%"),
        ("free_amino_nitrogen", "mg/L"),
        ("beta_glucan", "mg/L"),
        ("viscosity", "mPa·s"),
        ("wort_ph", "pH"),
        ("final_attenuation", "%"),
    ],
)
@pytest.mark.parametrize(("family", "mash"), [("IoB", "isothermal-65"), ("EBC", "isothermal-65")])
def test_another_mash_is_another_figure(parameter: str, unit: str, family: Family, mash: Mash) -> None:
    result = go(parameter, 200.0, unit, family, mash=mash)
    assert result.family == family
    assert "not-convertible" in result.flags
    assert result.reason is not None
    assert "no published relation" in result.reason


@pytest.mark.parametrize(
    ("parameter", "unit"),
    [("moisture", "%"), ("total_nitrogen", "%"), ("friability", "%"), ("sieve_over_2_8", "%"), ("alpha_amylase", "DU")],
)
@pytest.mark.parametrize("family", ["IoB", "ASBC", "EBC"])
@pytest.mark.parametrize("mash", [None, "isothermal-65"])
def test_figures_that_no_mash_touches(parameter: str, unit: str, family: Family, mash: Mash | None) -> None:
    result = go(parameter, 4.5, unit, family, mash=mash)
    assert (result.value, result.family, result.flags, result.steps) == (4.5, "EBC", (), ())


# ---------------------------------------------------------------- moisture


def test_as_is_nitrogen_is_brought_to_dry() -> None:
    result = go("total_nitrogen", 1.60, "%", "EBC", basis="as-is", context=Context(moisture=5.0))
    assert (result.value, kinds(result)) == (1.684, ["moisture-basis"])
    assert "M = 5 %" in result.steps[0].formula


def test_moisture_comes_before_the_scale() -> None:
    result = go("diastatic_power", 100.0, "°Lintner", "ASBC", basis="as-is", context=Context(moisture=4.5))
    assert kinds(result) == ["moisture-basis", "scale"]
    assert result.value == pytest.approx(3.5 * 100 / 0.955 - 16, abs=0.01)
    assert [step.to.unit for step in result.steps] == ["°Lintner", "WK"]


@pytest.mark.parametrize("moisture", [None, 45.0, 0.0])
def test_without_a_usable_moisture_nothing_moves(moisture: float | None) -> None:
    """45 % is a lost comma: a figure converted with it would be wrong by two fifths."""
    result = go("total_protein", 10.6, "%", "ASBC", basis="as-is", context=Context(moisture=moisture))
    assert (result.value, result.unit, result.flags, result.steps) == (10.6, "%", ("no-moisture",), ())
    assert result.reason is not None


def test_moisture_plays_no_part_in_wort() -> None:
    assert go("free_amino_nitrogen", 165.0, "mg/L", "EBC", basis="as-is").steps == ()
    assert needs_basis("free_amino_nitrogen", "mg/100 g")
    assert not needs_basis("free_amino_nitrogen", "mg/L")
    assert not needs_basis("friability", "%")


def test_an_as_is_extract_has_a_name_of_its_own() -> None:
    assert at_basis("extract_fine_dry", "as-is") == "extract_fine_as_is"
    assert at_basis("extract_fine_dry", None) == "extract_fine_dry"
    assert at_basis("total_nitrogen", "as-is") == "total_nitrogen"
    result = go("extract_fine_dry", 77.8, "%", "EBC", basis="as-is")
    assert (result.parameter, result.value, result.steps) == ("extract_fine_as_is", 77.8, ())


# ---------------------------------------------------------------- FAN and soluble nitrogen


def test_fan_by_the_sheets_own_mass_balance() -> None:
    """From memory: mass balance of a mash made up to 450 g."""
    result = go("free_amino_nitrogen", 150.0, "mg/100 g", "EBC")
    assert result.value == pytest.approx(167.8, abs=0.4)
    assert (result.unit, kinds(result), result.estimated) == ("mg/L", ["definition"], False)
    assert "853.6" in result.steps[0].formula


def test_fan_by_the_ordinary_factor_is_an_estimate() -> None:
    result = go("free_amino_nitrogen", 150.0, "mg/100 g", "EBC", context=Context())
    assert result.value == pytest.approx(150 / 0.895, abs=0.1)
    assert (kinds(result), result.estimated, result.spread) == (["correlation"], True, 1.5)
    kept = go("free_amino_nitrogen", 150.0, "mg/100 g", "EBC", context=Context(estimates=False))
    assert (kept.value, kept.unit, kept.flags) == (150.0, "mg/100 g", ("not-convertible",))


def test_fan_as_is_needs_the_moisture_first() -> None:
    result = go("free_amino_nitrogen", 150.0, "mg/100 g", "EBC", basis="as-is")
    assert kinds(result) == ["moisture-basis", "definition"]
    lacking = go("free_amino_nitrogen", 150.0, "mg/100 g", "EBC", basis="as-is", context=Context())
    assert (lacking.value, lacking.unit, lacking.flags) == (150.0, "mg/100 g", ("no-moisture",))


def test_iob_fan_stays_per_100_g() -> None:
    """An IoB mash may have been made up to 515 ml, where the factor is another one."""
    targets: tuple[Family, ...] = ("IoB", "EBC")
    for target in targets:
        result = go("free_amino_nitrogen", 150.0, "mg/100 g", "IoB", target)
        assert (result.value, result.unit, result.family) == (150.0, "mg/100 g", "IoB")
        assert "not-convertible" in result.flags


def test_a_figure_that_stays_still_comes_to_dry_malt() -> None:
    """A column of one unit never mixes malt as is with dry malt."""
    start = Start("free_amino_nitrogen", 150.0, "mg/100 g", "IoB", basis="as-is")
    result = to_basis(start, "EBC", SHEET)
    assert (result.value, result.unit, kinds(result)) == (157.07, "mg/100 g", ["moisture-basis"])
    assert result.flags == ("not-convertible",)
    assert convert_alike(start, result, 140.0, "EBC", SHEET) == 146.6
    lacking = go("soluble_nitrogen", 0.60, "%", "IoB", basis="as-is", context=Context())
    assert (lacking.value, set(lacking.flags)) == (0.60, {"no-moisture", "not-convertible"})


@pytest.mark.parametrize(
    ("value", "unit", "expected"), [(165.0, "ppm", 165.0), (16.5, "mg/100 mL", 165.0), (165.0, "mg/L", 165.0)]
)
def test_fan_in_wort_units(value: float, unit: str, expected: float) -> None:
    result = go("free_amino_nitrogen", value, unit, "ASBC")
    assert (result.value, result.unit, result.estimated) == (expected, "mg/L", False)


def test_soluble_nitrogen() -> None:
    assert go("soluble_nitrogen", 680.0, "mg/100 g", "EBC").value == 0.68
    per_litre = go("soluble_nitrogen", 680.0, "mg/L", "EBC")
    assert (kinds(per_litre), per_litre.value) == (["definition", "unit"], 0.6078)


# ---------------------------------------------------------------- colour and enzymes


def test_colour_of_an_american_sheet() -> None:
    for unit in ("°L", "SRM", "°Lovibond", "°ASBC"):
        result = go("colour", 4.0, unit, "ASBC")
        assert (result.value, result.unit, kinds(result)) == (7.88, "EBC", ["scale"])
        assert result.steps[0].from_.unit == unit


def test_degrees_l_of_a_european_sheet_are_not_guessed() -> None:
    """SRM or visual Lovibond: 160 °L is 315 or 425 EBC."""
    result = go("colour", 160.0, "°L", "EBC")
    assert (result.value, result.unit, result.flags) == (160.0, "°L", ("not-convertible",))
    assert go("colour", 160.0, "°L", "EBC", context=Context(lovibond="srm")).value == 315.2
    assert go("colour", 160.0, "°L", "EBC", context=Context(lovibond="visual")).value == 425.17


def test_a_printed_pair_tells_what_degrees_l_are() -> None:
    assert lovibond_of_pair(7.9, 4.0) == "srm"
    assert lovibond_of_pair(160.0, 60.6) == "visual"
    assert lovibond_of_pair(9.0, 4.0) is None
    assert lovibond_of_pair(9.0, 0.0) is None


def test_colour_for_an_american_basis() -> None:
    result = go("colour", 4.0, "EBC", "EBC", "ASBC")
    assert (result.value, result.unit, result.family) == (2.03, "°L", "ASBC")
    same = go("colour", 4.0, "SRM", "ASBC", "ASBC")
    assert (same.value, same.unit, kinds(same)) == (4.0, "°L", ["unit"])


def test_diastatic_power() -> None:
    assert go("diastatic_power", 100.0, "°L", "ASBC").value == 334.0
    iob = go("diastatic_power", 40.0, "°IoB", "IoB")
    assert (iob.value, iob.unit, iob.estimated) == (140.0, "WK", True)
    twice = go("diastatic_power", 40.0, "°IoB", "IoB", "ASBC")
    assert (twice.value, kinds(twice)) == (44.6, ["correlation", "scale"])
    assert [step.to.family for step in twice.steps] == ["EBC", "ASBC"]


def test_windisch_kolbach_units_are_ebc_on_any_sheet() -> None:
    assert go("diastatic_power", 300.0, "WK", "ASBC").steps == ()


@pytest.mark.parametrize("value", [0.0, 5.0])
def test_scale_is_not_stretched_to_coloured_malts(value: float) -> None:
    result = go("diastatic_power", value, "°Lintner", "ASBC")
    assert (result.value, result.unit, result.family, result.flags) == (value, "°Lintner", "ASBC", ("not-convertible",))


# ---------------------------------------------------------------- other units


@pytest.mark.parametrize(
    ("parameter", "value", "unit", "expected", "to"),
    [
        ("ndma", 0.0015, "ppm", 1.5, "µg/kg"),
        ("deoxynivalenol", 0.5, "mg/kg", 500.0, "µg/kg"),
        ("arsenic", 120.0, "ppb", 0.12, "mg/kg"),
        ("glycosidic_nitrile", 1.5, "ppm", 1.5, "g/t"),
        ("beta_glucan_malt", 400.0, "mg/100 g", 0.4, "%"),
        ("acrospire_length", 75.0, "%", 0.75, "–"),
        ("filtration", 1.5, "h", 90.0, "min"),
        ("viscosity", 1.52, "cP", 1.52, "mPa·s"),
    ],
)
def test_exact_units(parameter: str, value: float, unit: str, expected: float, to: str) -> None:
    result = go(parameter, value, unit, "EBC")
    assert (result.value, result.unit, result.estimated, result.flags) == (expected, to, False, ())
    assert set(kinds(result)) == {"unit"}


@pytest.mark.parametrize(
    ("parameter", "unit"), [("alpha_amylase", "U/g"), ("filtration", "mL/h"), ("lead", "mPa·s"), ("colour", "c.u.")]
)
def test_unit_that_leads_nowhere(parameter: str, unit: str) -> None:
    result = go(parameter, 250.0, unit, "EBC")
    assert (result.value, result.unit, result.flags) == (250.0, unit, ("not-convertible",))
    assert result.reason is not None
    assert unit in result.reason


def test_bushels() -> None:
    """American sheets use the US bushel; elsewhere the sheet does not say."""
    assert go("hectolitre_weight", 42.0, "lb/bu", "ASBC").value == 54.06
    british = go("hectolitre_weight", 42.0, "lb/bu", "IoB")
    assert (british.value, british.flags) == (52.38, ("unit-assumed",))
    assert british.reason is not None
    assert go("hectolitre_weight", 42.0, "lb/bu", "EBC").flags == ("not-convertible",)


# ---------------------------------------------------------------- limits and words


def test_limits_go_the_figures_way() -> None:
    start = Start("nitrogen_ratio", 38.0, "%", "IoB")
    result = to_basis(start, "EBC", SHEET)
    assert convert_alike(start, result, 40.0, "EBC", SHEET) == 45.0
    assert convert_alike(start, result, 48.0, "EBC", SHEET) == 54.0, (
        "beyond the range of the relation, and only a limit"
    )


def test_limits_of_a_figure_that_stayed() -> None:
    start = Start("nitrogen_ratio", 30.0, "%", "IoB")
    result = to_basis(start, "EBC", SHEET)
    assert convert_alike(start, result, 40.0, "EBC", SHEET) == 40.0


def test_limits_in_another_unit_on_their_own_family() -> None:
    start = Start("colour", 4.0, "SRM", "IoB")
    result = to_basis(start, "EBC", SHEET)
    assert (result.value, result.family) == (7.88, "IoB")
    assert convert_alike(start, result, 5.0, "EBC", SHEET) == 9.85


def test_words_about_a_wort_stay_with_their_wort() -> None:
    assert stands_on("clarity", "ASBC", None, "EBC") == ("EBC", ())
    assert stands_on("clarity", "IoB", None, "EBC") == ("IoB", ("not-convertible",))
    assert same_wort("EBC", "congress", "ASBC")
    assert not same_wort("EBC", "isothermal-65", "EBC")
