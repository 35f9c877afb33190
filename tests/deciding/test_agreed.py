"""Agreed limits: read from a brewer's file, converted, and judged or not."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.deciding.agreed import against_limits, agreement_for, read_agreed
from importer.deciding.results import AgainstLimit
from importer.errors import OwnFileError
from importer.models import Analysis
from tests.deciding.factory import analysis, estimate, figure


def agreed(tmp_path: Path, *limits: str, malt: str = "Pale Ale Malt", supplier: str = "") -> Path:
    path = tmp_path / "agreed.toml"
    who = f'supplier = "{supplier}"\n' if supplier else ""
    lines = ",\n".join(f"  {{ {limit} }}" for limit in limits)
    path.write_text(f'[[agreed]]\n{who}malt = "{malt}"\nlimits = [\n{lines}\n]\n', encoding="utf-8")
    return path


def judged(tmp_path: Path, one: Analysis, *limits: str) -> list[AgainstLimit]:
    found = agreement_for(one, read_agreed(agreed(tmp_path, *limits)))
    assert found is not None
    return list(against_limits(one, found))


def only(tmp_path: Path, one: Analysis, *limits: str) -> AgainstLimit:
    (found,) = judged(tmp_path, one, *limits)
    return found


@pytest.mark.parametrize(
    ("value", "standing"), [(3.4, "within"), (3.5, "within"), (3.6, "outside"), (2.0, "within"), (1.9, "outside")]
)
def test_both_ends(tmp_path: Path, value: float, standing: str) -> None:
    assert only(
        tmp_path, analysis(figure("moisture", value)), 'parameter = "moisture", min = 2.0, max = 3.5'
    ).standing == (standing)


def test_a_limit_in_another_unit_is_converted(tmp_path: Path) -> None:
    """3 SRM are 5.91 EBC: EBC = 1.97 × SRM, the factors of the Standard Reference Method (25 and 12.7)."""
    limit = 'parameter = "colour", max = 3, unit = "SRM", family = "EBC"'
    found = only(tmp_path, analysis(figure("colour", 5.9, "EBC")), limit)
    assert found.standing == "within"
    assert found.high == pytest.approx(5.91, abs=0.005)
    assert only(tmp_path, analysis(figure("colour", 6.0, "EBC")), limit).standing == "outside"


def test_a_limit_in_per_cent_for_litre_degrees(tmp_path: Path) -> None:
    """79.0 % × 3.86 = 304.9 L°/kg: trade factor 386 for 100 % (common practice, no source)."""
    one = analysis(figure("extract_coarse_dry", 305, "L°/kg", "IoB"), family="IoB", mash="isothermal-65")
    found = only(tmp_path, one, 'parameter = "extract_coarse_dry", min = 79.0, unit = "%", family = "IoB"')
    assert found.standing == "within"
    assert found.low == pytest.approx(304.94, abs=0.01)


def test_a_limit_as_is_uses_the_sheets_own_moisture(tmp_path: Path) -> None:
    """1.60 % as is with 5 % moisture is 1.684 % dry (definition, check value mb-05)."""
    limit = 'parameter = "total_nitrogen", max = 1.60, basis = "as-is"'
    one = analysis(figure("moisture", 5.0), figure("total_nitrogen", 1.68))
    found = only(tmp_path, one, limit)
    assert found.standing == "within"
    assert found.high == pytest.approx(1.684, abs=0.001)
    assert only(tmp_path, analysis(figure("total_nitrogen", 1.68)), limit).standing == "not-said"


def test_methods_are_not_mixed(tmp_path: Path) -> None:
    one = analysis(figure("beta_glucan", 300, "mg/L", flags=("not-convertible",)), mash="isothermal-65")
    found = only(tmp_path, one, 'parameter = "beta_glucan", max = 200, family = "EBC"')
    assert found.standing == "not-said"
    assert "another method" in found.words
    limit = 'parameter = "beta_glucan", max = 350, family = "EBC", mash = "isothermal-65"'
    assert only(tmp_path, one, limit).standing == "within"


def test_an_estimate_is_judged_on_its_own_method_where_the_limit_is_on_that(tmp_path: Path) -> None:
    ratio = estimate("nitrogen_ratio", 42.8, "%", 2.5, (38.0, "%", "IoB"))
    one = analysis(ratio, family="IoB", mash="isothermal-65")
    iob, ebc, far = judged(
        tmp_path,
        one,
        'parameter = "nitrogen_ratio", min = 36, max = 42, family = "IoB"',
        'parameter = "nitrogen_ratio", max = 44, family = "EBC"',
        'parameter = "nitrogen_ratio", max = 40, family = "EBC"',
    )
    assert (iob.standing, iob.value) == ("within", 38.0)
    assert ebc.standing == "not-said"
    assert "spread" in ebc.words
    assert far.standing == "outside"


def test_figures_in_review_and_missing_ones_cannot_be_said(tmp_path: Path) -> None:
    one = analysis(figure("moisture", 9.0, state="review"))
    review, missing = judged(tmp_path, one, 'parameter = "moisture", max = 4', 'parameter = "friability", min = 85')
    assert (review.standing, missing.standing) == ("not-said", "not-said")
    assert "in review" in review.words
    assert "does not give it" in missing.words


@pytest.mark.parametrize(
    ("low", "high", "limit", "standing"),
    [(10, 15, "max = 15", "within"), (10, 15, "max = 12", "not-said"), (10, 15, "max = 8", "outside")],
)
def test_a_range_is_judged_only_as_a_whole(tmp_path: Path, low: float, high: float, limit: str, standing: str) -> None:
    one = analysis(figure("saccharification_time", None, "min", bound="range", between=(low, high)))
    assert only(tmp_path, one, f'parameter = "saccharification_time", {limit}, family = "EBC"').standing == standing


@pytest.mark.parametrize(("value", "limit", "standing"), [(2.0, "max = 2", "within"), (5.0, "max = 2", "not-said")])
def test_a_limit_of_detection(tmp_path: Path, value: float, limit: str, standing: str) -> None:
    one = analysis(figure("glassy_grains", value, bound="<"))
    assert only(tmp_path, one, f'parameter = "glassy_grains", {limit}').standing == standing


def test_outside_by_no_more_than_the_scatter_is_said(tmp_path: Path) -> None:
    near = only(tmp_path, analysis(figure("total_protein", 11.4)), 'parameter = "total_protein", max = 11.2')
    far = only(tmp_path, analysis(figure("total_protein", 13.4)), 'parameter = "total_protein", max = 11.2')
    assert (near.standing, near.within_scatter) == ("outside", True)
    assert (far.standing, far.within_scatter) == ("outside", False)


def test_the_agreement_with_the_supplier_goes_before_the_general_one(tmp_path: Path) -> None:
    path = tmp_path / "agreed.toml"
    path.write_text(
        '[[agreed]]\nmalt = "pale-ale malt"\nlimits = [{ parameter = "moisture", max = 4 }]\n'
        '[[agreed]]\nsupplier = "NORDTAL Malting"\nmalt = "Pale Ale Malt"\n'
        'limits = [{ parameter = "moisture", max = 3 }]\n',
        encoding="utf-8",
    )
    agreements = read_agreed(path)
    own = agreement_for(analysis(), agreements)
    other = agreement_for(analysis(supplier="Somebody Else"), agreements)
    assert own is not None
    assert other is not None
    assert (own.limits[0].high, other.limits[0].high) == (3.0, 4.0)
    assert agreement_for(analysis(malt="Munich Malt"), agreements) is None


@given(st.floats(1, 12), st.floats(1, 12))
def test_a_limit_and_its_own_value_agree(value: float, limit: float) -> None:
    import tempfile

    with tempfile.TemporaryDirectory() as name:
        found = only(Path(name), analysis(figure("moisture", value)), f'parameter = "moisture", max = {limit!r}')
    assert (found.standing == "within") == (value <= limit * (1 + 1e-8))


FAULTS = [
    ('parameter = "moistur", max = 4', "Did you mean moisture?"),
    ('parameter = "moisture", maximum = 4', "no key 'maximum'"),
    ('parameter = "moisture"', "min or max is missing"),
    ('parameter = "moisture", max = "4 %"', "must be a number"),
    ('parameter = "moisture", max = true', "must be a number"),
    ('parameter = "moisture", max = nan', "must be a number"),
    ('parameter = "moisture", min = 5, max = 4', "lies above"),
    ('parameter = "moisture", max = 45', "Is the unit right"),
    ('parameter = "moisture", max = 4, unit = "mg/l"', "is no unit for moisture; in use are %"),
    ('parameter = "beta_glucan", max = 200', "say which family"),
    ('parameter = "beta_glucan", max = 200, family = "EBS"', "it is EBC, IoB or ASBC"),
    ('parameter = "diastatic_power", min = 200', "needs its unit"),
    ('parameter = "diastatic_power", min = 200, unit = "WK", family = "ASBC"', "belongs to EBC"),
    ('parameter = "extract_fine_dry", min = 80, family = "EBC", basis = "as-is"', "extract_fine_as_is instead"),
    ('parameter = "colour", max = 6, family = "EBC", basis = "dry"', "the same dry and as is"),
    ('parameter = "ndma", max = 2.5', "never judges it"),
    ('parameter = "odour", max = 1', "described in words"),
    ('parameter = "beta_glucan", max = 200, family = "EBC", mash = "long"', "mash is congress or isothermal-65, not"),
]  # fmt: skip


@pytest.mark.parametrize(("limit", "told"), FAULTS)
def test_faults_say_where_and_what_would_be_right(tmp_path: Path, limit: str, told: str) -> None:
    path = agreed(tmp_path, 'parameter = "friability", min = 80', limit)
    with pytest.raises(OwnFileError) as fault:
        read_agreed(path)
    assert str(fault.value).startswith("agreed.toml, [[agreed]] 1, limits 2: ")
    assert told in str(fault.value)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "no [[agreed]] entry"),
        (b"[[agreed]\n", "not valid TOML"),
        (b"agreed = 3\n", "must be a list of tables"),
        (b"[[agreed]]\n", "malt must be a text"),
        (b"[[agreed]]\nmalt = '--'\nlimits = []\n", "needs letters or digits"),
        (b"[[agreed]]\nmalt = 'Pale'\nlimits = []\n", "there are no limits"),
        (b"[agreement]\nmalt = 'Pale'\n", "Did you mean agreed?"),
        ("[[agreed]]\nmalt = 'Mälz'\n".encode("latin-1"), "not UTF-8"),
        (b"\x00\x01\x02", "not valid TOML"),
        (b"x = " + b"[" * 5000, "not valid TOML"),
    ],
)  # fmt: skip
def test_files_that_are_no_agreement(tmp_path: Path, content: bytes, told: str) -> None:
    path = tmp_path / "agreed.toml"
    path.write_bytes(content)
    with pytest.raises(OwnFileError) as fault:
        read_agreed(path)
    assert told in str(fault.value)


def test_a_malt_stands_there_once(tmp_path: Path) -> None:
    path = tmp_path / "agreed.toml"
    one = '[[agreed]]\nmalt = "Pale"\nlimits = [{ parameter = "moisture", max = 4 }]\n'
    path.write_text(one + one.replace("Pale", "PALE"), encoding="utf-8")
    with pytest.raises(OwnFileError, match=r"stands in agreed\.toml, \[\[agreed\]\] 1 already"):
        read_agreed(path)


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    with pytest.raises(OwnFileError, match="no such file"):
        read_agreed(tmp_path / "none.toml")
    with pytest.raises(OwnFileError, match="no such file"):
        read_agreed(tmp_path)
