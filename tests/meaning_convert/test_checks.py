"""Checks between printed figures: honest sheets pass with any rounding, the misreadings they are for do not."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.errors import DataError
from importer.meaning import checks
from importer.meaning.checks import CheckInput, check_rules, run_checks
from importer.models import Check, Family, Mash
from importer.vocabulary.parameters import MoistureBasis


def put(
    parameter: str,
    text: str,
    unit: str = "%",
    family: Family = "EBC",
    *,
    basis: MoistureBasis | None = None,
    mash: Mash | None = None,
) -> CheckInput:
    decimals = len(text.partition(".")[2])
    return CheckInput(parameter, float(text), unit, decimals, family, basis, mash)


def named(name: str, *figures: CheckInput, malt_class: str | None = None) -> list[Check]:
    return [check for check in run_checks(figures, malt_class) if check.check.startswith(name)]


@pytest.mark.parametrize(
    ("name", "figures", "holds"),
    [
        # as is = dry × (1 − moisture/100): 81.5 at 4.5 % is 77.83
        ("as is =", ["extract_fine_as_is 77.8", "extract_fine_dry 81.5", "moisture 4.5"], True),
        ("as is =", ["extract_fine_as_is 78.0", "extract_fine_dry 81.5", "moisture 4.5"], True),
        ("as is =", ["extract_fine_as_is 77.3", "extract_fine_dry 81.5", "moisture 4.5"], False),
        ("as is =", ["extract_fine_as_is 77.8", "extract_fine_dry 81.5", "moisture 45"], False),
        ("as is not above", ["extract_fine_as_is 81.5", "extract_fine_dry 77.8"], False),
        ("fine − coarse", ["fine_coarse_difference 1.4", "extract_fine_dry 81.5", "extract_coarse_dry 80.1"], True),
        ("fine − coarse", ["fine_coarse_difference 1.9", "extract_fine_dry 81.5", "extract_coarse_dry 80.1"], False),
        ("coarse not above", ["extract_coarse_dry 81.8", "extract_fine_dry 81.5"], True),
        ("coarse not above", ["extract_coarse_dry 82.5", "extract_fine_dry 81.5"], False),
        ("protein =", ["total_protein 10.6", "total_nitrogen 1.70"], True),
        ("protein =", ["total_protein 12.0", "total_nitrogen 2.10"], True),
        ("protein =", ["total_protein 10.6", "total_nitrogen 1.78"], False),
        ("ratio = soluble /", ["nitrogen_ratio 41", "soluble_nitrogen 0.65", "total_nitrogen 1.60"], True),
        ("ratio = soluble /", ["nitrogen_ratio 46", "soluble_nitrogen 0.65", "total_nitrogen 1.60"], False),
        ("ratio = soluble p", ["nitrogen_ratio 39.6", "soluble_protein 4.2", "total_protein 10.6"], True),
        ("soluble not above", ["soluble_nitrogen 1.60", "total_nitrogen 0.65"], False),
        ("held on 2.5 mm =", ["sieve_over_2_5 92.6", "sieve_over_2_8 62.5", "sieve_2_5_to_2_8 30.1"], True),
        ("held on 2.5 mm =", ["sieve_over_2_5 92.6", "sieve_over_2_8 62.5", "sieve_2_5_to_2_8 20.1"], False),
        (
            "sieve fractions",
            ["sieve_over_2_8 62.5", "sieve_2_5_to_2_8 30.1", "sieve_2_2_to_2_5 5.9", "sieve_under_2_2 1.5"],
            True,
        ),
        (
            "sieve fractions",
            ["sieve_over_2_8 62.5", "sieve_2_5_to_2_8 30.1", "sieve_2_2_to_2_5 5.9", "sieve_under_2_2 7.5"],
            False,
        ),
        ("friability and whole", ["friability 88", "whole_grains 1.2"], True),
        ("friability and whole", ["friability 99", "whole_grains 3.2"], False),
    ],
)
def test_relation(name: str, figures: list[str], holds: bool) -> None:
    """Definitions; tolerances from the rounding of every figure."""
    checks = named(name, *(put(figure.split()[0], figure.split()[1]) for figure in figures))
    assert checks
    assert all(check.holds is holds for check in checks)
    if not holds:
        assert set(checks[0].parameters) <= {figure.split()[0] for figure in figures}
        assert "misread" in checks[0].detail


def test_detail_shows_the_numbers() -> None:
    (check,) = named("protein =", put("total_protein", "10.6"), put("total_nitrogen", "1.78"))
    assert check.parameters == ("total_protein", "total_nitrogen")
    assert "10.6 %" in check.detail
    assert "1.78 %" in check.detail
    assert "11.12" in check.detail


def test_wheat_factor_is_not_for_barley() -> None:
    """1.86 for 1.70 would pass as 5.7 × nitrogen; on a barley malt it is a misreading."""
    pair = put("total_protein", "10.6"), put("total_nitrogen", "1.86")
    assert named("protein =", *pair)[0].holds
    assert not named("protein =", *pair, malt_class="pilsner")[0].holds


def test_units_are_brought_together() -> None:
    pair = put("nitrogen_ratio", "40.0"), put("soluble_nitrogen", "680", "mg/100 g"), put("total_nitrogen", "1.70")
    assert named("ratio = soluble /", *pair)[0].holds


def test_families_are_never_mixed() -> None:
    kolbach = put("nitrogen_ratio", "43")
    iob = put("soluble_nitrogen", "0.61", family="IoB"), put("total_nitrogen", "1.60", family="IoB")
    assert named("ratio = soluble /", kolbach, *iob) == []
    fine = put("extract_fine_dry", "81.5"), put("extract_coarse_dry", "308", "L°/kg", "IoB")
    assert named("coarse not above", *fine) == []


def test_mashes_are_never_mixed() -> None:
    congress = put("nitrogen_ratio", "43", mash="congress")
    steady = put("soluble_nitrogen", "0.61", mash="isothermal-65")
    assert named("ratio = soluble /", congress, steady, put("total_nitrogen", "1.60")) == []


def test_moisture_bases_are_never_mixed() -> None:
    as_is = put("total_protein", "10.1", basis="as-is")
    assert named("protein =", as_is, put("total_nitrogen", "1.70")) == []


def test_nitrogen_serves_every_family() -> None:
    iob = put("nitrogen_ratio", "38", family="IoB"), put("soluble_nitrogen", "0.61", family="IoB")
    assert named("ratio = soluble /", *iob, put("total_nitrogen", "1.60", family="EBC"))[0].holds


@pytest.mark.parametrize(
    ("name", "first", "second", "holds"),
    [
        ("colour in EBC against SRM", "colour 3.9 EBC EBC", "colour 2.0 SRM ASBC", True),
        ("colour in EBC against SRM", "colour 3.9 EBC EBC", "colour 3.0 SRM ASBC", False),
        ("colour in EBC against °L", "colour 3.9 EBC EBC", "colour 2.0 °L ASBC", True),
        ("colour in EBC against °L", "colour 160 EBC EBC", "colour 60.6 °L EBC", True),
        ("colour in EBC against °L", "colour 160 EBC EBC", "colour 106 °L EBC", False),
        ("diastatic power in WK", "diastatic_power 334 WK EBC", "diastatic_power 100 °Lintner ASBC", True),
        ("diastatic power in WK", "diastatic_power 334 WK EBC", "diastatic_power 140 °Lintner ASBC", False),
        ("diastatic power in WK", "diastatic_power 140 WK EBC", "diastatic_power 40 °IoB IoB", True),
        ("soluble nitrogen per", "soluble_nitrogen 680 mg/100~g EBC", "soluble_nitrogen 760 mg/L EBC", True),
        ("soluble nitrogen per", "soluble_nitrogen 680 mg/100~g EBC", "soluble_nitrogen 680 mg/L EBC", False),
        ("FAN per", "free_amino_nitrogen 150 mg/100~g EBC", "free_amino_nitrogen 168 mg/L EBC", True),
        ("Kolbach index", "nitrogen_ratio 38 % IoB", "nitrogen_ratio 42 % EBC", True),
        ("Kolbach index", "nitrogen_ratio 42 % IoB", "nitrogen_ratio 38 % EBC", False),
        ("EBC fine extract", "extract_coarse_dry 308 L°/kg IoB", "extract_fine_dry 81.5 % EBC", True),
        ("EBC fine extract", "extract_coarse_dry 308 L°/kg IoB", "extract_fine_dry 61.5 % EBC", False),
        ("printed twice", "total_nitrogen 1.60 % IoB", "total_nitrogen 1.60 % EBC", True),
        ("printed twice", "total_nitrogen 1.60 % IoB", "total_nitrogen 1.68 % EBC", False),
        ("printed twice", "lead 0.05 mg/kg EBC", "lead 50 µg/kg EBC", True),
        ("dark colour", "colour 300 EBC EBC", "diastatic_power 200 WK EBC", False),
        ("dark colour", "colour 4.0 EBC EBC", "diastatic_power 300 WK EBC", True),
    ],
)
def test_pairs(name: str, first: str, second: str, holds: bool) -> None:
    figures = []
    for text in (first, second):
        parameter, value, unit, family = text.split()
        figures.append(put(parameter, value, unit.replace("~", " "), family))  # type: ignore[arg-type]
    checks = named(name, *figures)
    assert [check.holds for check in checks] == [holds]


def test_fan_as_a_share_of_soluble_nitrogen() -> None:
    """From memory: 18 to 26 %, alarm outside 12 to 32 %."""
    soluble = put("soluble_nitrogen", "680", "mg/100 g")
    assert named("FAN as a share", put("free_amino_nitrogen", "150", "mg/L"), soluble)[0].holds
    assert not named("FAN as a share", put("free_amino_nitrogen", "310", "mg/L"), soluble)[0].holds


def test_spirit_yield() -> None:
    """J. Inst. Brew. 102 (1996) 433: factor 6.06; 78.5 % dry at 87.5 % is 416 L/t dry."""
    rest = put("extract_coarse_dry", "303", "L°/kg", "IoB"), put("fermentability", "87.5", "%", "IoB")
    good = put("predicted_spirit_yield", "416", "L/t", "IoB", basis="dry")
    wrong = put("predicted_spirit_yield", "466", "L/t", "IoB", basis="dry")
    unsaid = put("predicted_spirit_yield", "398", "L/t", "IoB")
    assert named("spirit yield", good, *rest)[0].holds
    assert not named("spirit yield", wrong, *rest)[0].holds
    assert named("spirit yield", unsaid, *rest) == [], "may be as is beside a dry extract"


@given(
    dry=st.floats(60, 88),
    moisture=st.floats(1, 8),
    digits=st.tuples(st.integers(1, 2), st.integers(1, 2), st.integers(1, 2)),
)
def test_honest_rounding_never_fails(dry: float, moisture: float, digits: tuple[int, int, int]) -> None:
    as_is = dry * (1 - moisture / 100)
    texts = [f"{v:.{n}f}" for v, n in zip((as_is, dry, moisture), digits, strict=True)]
    names = ("extract_fine_as_is", "extract_fine_dry", "moisture")
    checks = run_checks([put(name, text) for name, text in zip(names, texts, strict=True)])
    assert checks
    assert all(check.holds for check in checks)


@given(soluble=st.floats(0.35, 1.0), total=st.floats(1.2, 2.4), digits=st.integers(0, 2))
def test_honest_ratio_never_fails(soluble: float, total: float, digits: int) -> None:
    ratio = 100 * soluble / total
    figures = [
        put("nitrogen_ratio", f"{ratio:.{digits}f}"),
        put("soluble_nitrogen", f"{soluble:.2f}"),
        put("total_nitrogen", f"{total:.2f}"),
        put("total_protein", f"{6.25 * total:.1f}"),
        put("soluble_protein", f"{6.25 * soluble:.1f}"),
    ]
    assert [check for check in run_checks(figures) if not check.holds] == []


def test_names_are_unique() -> None:
    names = [rule.check for rule in check_rules()]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize(
    ("raw", "says"),
    [
        ({"check": "c", "parameters": ["moisture", "sugar", "salt"]}, "check 'c': there is no parameter sugar, salt"),
        ({"check": "c", "parameters": ["moisture"], "form": "guess"}, "check 'c': unknown form or formula"),
        (
            {"check": "c", "parameters": ["moisture"], "form": "equation", "formula": "cube"},
            "check 'c': unknown form or formula",
        ),
        ({"check": "c"}, "check 'c' has no 'parameters'"),
        ({"parameters": ["moisture"], "form": "sum", "source": "definition"}, "has no 'check'"),
    ],
)
def test_a_check_that_cannot_be_used_is_named(
    raw: dict[str, object], says: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(checks, "table", lambda _: {"check": [raw]})
    with pytest.raises(DataError) as fault:
        checks.check_rules.__wrapped__()
    assert fault.value.args[0].startswith("mappings/checks.toml: check ")
    assert says in fault.value.args[0]


def test_a_pair_that_excludes_each_other_is_told_once_and_the_worst_counts() -> None:
    pale, dark = put("colour", "4.0", "EBC"), put("colour", "300", "EBC")
    power = put("diastatic_power", "200", "WK")
    for colours in ((pale, dark), (dark, pale)):
        assert [check.holds for check in named("dark colour", *colours, power)] == [False]
    assert [check.holds for check in named("dark colour", pale, pale, power)] == [True]


def test_a_failed_check_says_what_it_may_mean() -> None:
    (check,) = named("printed twice", put("total_nitrogen", "1.60"), put("total_nitrogen", "1.75"))
    assert check.detail == (
        "Total nitrogen is printed as 1.6 % and as 1.75 %. One of them is misread, or two bases or mashes are mixed."
    )


@pytest.mark.parametrize(
    ("one", "other", "holds"),
    [
        # Allowed: 1.5 × (both roundings + 0.02 + 0.5 %); for 2.00 and two decimals 1.5 × (0.005 + 0.005 + 0.02 + 0.01).
        ("2.00", "2.05", True),
        ("2.00", "2.07", False),
        # With one decimal the roundings alone are 0.1: 1.5 × 0.13.
        ("2.0", "2.1", True),
        ("2.0", "2.3", False),
        ("2.00", "2.1", True),
        ("2.00", "2.2", False),
    ],
)
def test_how_far_the_same_figure_may_differ(one: str, other: str, holds: bool) -> None:
    (check,) = named("printed twice", put("total_nitrogen", one), put("total_nitrogen", other))
    assert check.holds is holds


def test_roundings_are_carried_to_the_other_unit() -> None:
    """50 µg/kg is 0.050 mg/kg, and its rounding half a µg."""
    fine = put("lead", "50", "µg/kg")
    assert named("printed twice", put("lead", "0.05", "mg/kg"), fine)[0].holds
    assert not named("printed twice", put("lead", "0.5", "mg/kg"), fine)[0].holds
    assert named("printed twice", put("lead", "0.050", "mg/kg"), put("lead", "0.05", "mg/kg"))[0].holds


def test_degrees_lovibond_are_not_read_as_srm() -> None:
    """°L of a comparator and SRM part at dark malts, so each has a check of its own."""
    pair = put("colour", "3.9", "EBC"), put("colour", "2.0", "°L", "ASBC")
    assert named("colour in EBC against SRM", *pair) == []
    assert named("colour in EBC against °L", *pair)


def test_what_depends_on_the_mash_is_held_together_within_one_mash_only() -> None:
    congress = put("viscosity", "1.52", "mPa·s", mash="congress")
    assert named("printed twice", congress, put("viscosity", "1.80", "mPa·s", "IoB")) == []
    assert named("printed twice", congress, put("viscosity", "1.80", "mPa·s", mash="isothermal-65")) == []
    assert not named("printed twice", congress, put("viscosity", "1.80", "mPa·s", mash="congress"))[0].holds


def test_the_same_figure_on_two_moisture_bases_need_not_agree() -> None:
    dry, as_is = put("total_protein", "10.5", basis="dry"), put("total_protein", "10.0", basis="as-is")
    assert named("printed twice", dry, as_is) == []
    assert not named("printed twice", dry, put("total_protein", "10.0", basis="dry"))[0].holds


def test_three_prints_of_one_figure_are_compared_pair_by_pair() -> None:
    figures = [put("moisture", text) for text in ("4.3", "4.9", "5.6")]
    assert len(named("printed twice", *figures)) == 3


@pytest.mark.parametrize(
    ("degrees", "holds"), [("100", True), ("107", True), ("93", True), ("112", False), ("86", False)]
)
def test_a_relation_holds_within_its_relative_spread(degrees: str, holds: bool) -> None:
    """WK = 3.5 × °Lintner − 16, ± 8 % (mappings/checks.toml): 334 WK are 100 °Lintner."""
    pair = put("diastatic_power", "334", "WK"), put("diastatic_power", degrees, "°Lintner", "ASBC")
    assert named("diastatic power in WK against °Lintner", *pair)[0].holds is holds


def test_a_mash_that_may_be_made_up_to_515_ml_is_not_held_against_the_450_g_of_congress() -> None:
    pair = [
        put("soluble_nitrogen", text, unit, "IoB", mash="isothermal-65")
        for text, unit in (("680", "mg/100 g"), ("680", "mg/L"))
    ]
    assert named("soluble nitrogen per", *pair) == []


def test_extracts_in_different_units_are_not_subtracted() -> None:
    """2.1 L°/kg between the grinds is no difference of 81.5 % and 80.1 %."""
    percent = put("extract_fine_dry", "81.5"), put("extract_coarse_dry", "80.1")
    assert named("fine − coarse", put("fine_coarse_difference", "2.1", "L°/kg"), *percent) == []
    assert named("fine − coarse", put("fine_coarse_difference", "1.4"), *percent)[0].holds
    colours = put("colour", "3.9", "EBC"), put("boiled_colour", "2.6", "°L")
    assert named("colour not above", *colours) == []
    assert not named("colour not above", colours[0], put("boiled_colour", "2.6", "EBC"))[0].holds
