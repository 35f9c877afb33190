"""Unit spellings. Sources: SI Brochure 9th ed. (2019) for unit symbols and their products, Unicode Standard Annex 15
(NFKC) for compatibility signs; trade spellings are common practice, no source."""

from __future__ import annotations

import tomllib
import unicodedata
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.data import mappings_folder
from importer.errors import DataError
from importer.vocabulary import unit_names
from importer.vocabulary.units import Unit, parse_unit, parse_units

RAW = tomllib.loads((mappings_folder() / "units.toml").read_text(encoding="utf-8"))
SPELLINGS = [(code, spelling) for code, unit in RAW["units"].items() for spelling in unit["spellings"]]
DAMAGED = [(code, spelling) for code, unit in RAW["units"].items() for spelling in unit.get("damaged", [])]


def code_of(text: str) -> str | None:
    unit = parse_unit(text)
    return unit.code if unit else None


@pytest.mark.parametrize(("code", "spelling"), SPELLINGS)
def test_every_spelling_means_its_unit(code: str, spelling: str) -> None:
    assert code_of(spelling) == code


@pytest.mark.parametrize(("code", "spelling"), DAMAGED)
def test_every_damaged_spelling_is_repaired(code: str, spelling: str) -> None:
    assert code_of(spelling) == code


@pytest.mark.parametrize("spelling", ["wg/kg", "pg/kg", "*L", "°|", "mg/ka", "my/l", "l%kg", "lb/8u", "1/t", "8r"])
def test_damage_that_may_hide_another_unit_is_marked(spelling: str) -> None:
    unit = parse_unit(spelling)
    assert unit is None or unit.damaged


@pytest.mark.parametrize(
    ("spelling", "code"),
    [
        *[("mg/|", "mg/L"), ("mg /1", "mg/L"), ("mg.|-1", "mg/L"), ("mg·I⁻¹", "mg/L"), ("rng/l", "mg/L")],
        *[
            ("loB", "°IoB"),
            ("deg. loB", "°IoB"),
            ("kg/h1", "kg/hL"),
            *[("&", "%"), ("&%", "%"), ("& TrS.", "%"), ("&% dry", "%")],
            ("mPa-s", "mPa·s"),
            ("l°/kq", "L°/kg"),
        ],
    ],
)
def test_letters_that_print_alike_are_no_damage(spelling: str, code: str) -> None:
    unit = parse_unit(spelling)
    assert unit is not None
    assert (unit.code, unit.damaged) == (code, False)


@pytest.mark.parametrize("text", ["ill", "1/8", "5/64", "9", "lo", "im", "i", "|", "1.1", "0/0.1", "Ill. 5"])
def test_words_and_numbers_that_look_like_units_are_none(text: str) -> None:
    assert parse_unit(text) is None


@pytest.mark.parametrize(("code", "spelling"), SPELLINGS)
def test_case_and_gaps_do_not_matter(code: str, spelling: str) -> None:
    assert code_of(f"  {spelling} ") == code
    assert code_of(f"({spelling})") == code
    assert code_of(spelling.swapcase()) == code


# "c.u." names the national colour units; as a spelling it would be the sign of copper.
@pytest.mark.parametrize("code", [code for code in RAW["units"] if code != "c.u."])
def test_a_canonical_code_spells_itself(code: str) -> None:
    assert code_of(code) == code


@pytest.mark.parametrize(
    ("text", "code", "basis"),
    [
        ("% m/m", "%", None),
        ("% w/w", "%", None),
        ("%dry", "%", "dry"),
        ("% d.m.", "%", "dry"),
        ("% d.b.", "%", "dry"),
        ("%, db", "%", "dry"),
        ("% TS", "%", "dry"),
        ("% i. TrS.", "%", "dry"),
        ("% Trs", "%", "dry"),
        ("% wfr.", "%", "dry"),
        ("% lftr.", "%", "as-is"),
        ("% as is", "%", "as-is"),
        ("% tel quel", "%", "as-is"),
        ("% sur sec", "%", "dry"),
        ("% s.s.", "%", "dry"),
        ("% ss", "%", "dry"),
        ("% s.m.", "%", "dry"),
        ("% v suš.", "%", "dry"),
        ("% i ts", "%", "dry"),
        ("% op ds", "%", "dry"),
        ("% suchej masy", "%", "dry"),
        ("%(绝干)", "%", "dry"),
        ("in 100 gew. dl. droge stof", "%", "dry"),
        ("g/100 g", "%", None),
        ("mg/100g MTrS", "mg/100 g", "dry"),
        ("mg/100 g dm", "mg/100 g", "dry"),
        ("mg/100gTrS", "mg/100 g", "dry"),
        ("g dry", "g", "dry"),
        ("g TrS", "g", "dry"),
        ("DU, db", "DU", "dry"),
        ("°, db", "°", "dry"),
        ("L°/kg dry", "L°/kg", "dry"),
        ("% lftr. oder % in TrS", "%", None),
        ("% as-is and dry basis", "%", None),
    ],
)
def test_the_moisture_basis_beside_a_unit(text: str, code: str, basis: str | None) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert (unit.code, unit.basis) == (code, basis)


@pytest.mark.parametrize("text", ["mPas", "mPa.s", "mPa·s", "mPa s", "mPa*s", "mPa×s", "mPa∙s", "MPAS", "cP"])
def test_signs_of_multiplication_fold(text: str) -> None:
    assert code_of(text) == "mPa·s"


@pytest.mark.parametrize(
    ("text", "reference"),
    [
        ("mPas (8,6 %)", "8.6 %"),
        ("mPa·s @ 8.6%", "8.6 %"),
        ("mPas (20 °C, 8,6 %)", "8.6 %"),
        ("mPa·s (20 °C)", "20 °C"),
        ("EBC (10% sol)", "10 %"),
        ("mg/l (65 °C)", "65 °C"),
        ("mPas", None),
    ],
)
def test_the_strength_or_temperature_that_a_unit_is_stated_for(text: str, reference: str | None) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert unit.reference == reference


@pytest.mark.parametrize(
    ("text", "family"),
    [
        ("L°/kg", "IoB"),
        ("°IoB", "IoB"),
        ("WK", "EBC"),
        ("°Lintner", "ASBC"),
        ("SRM", "ASBC"),
        ("°L", None),
        ("%", None),
    ],
)
def test_the_method_family_of_a_unit(text: str, family: str | None) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert unit.family == family


@pytest.mark.parametrize("text", ["EBC", "IoB", "ASBC", "min", "°"])
def test_spellings_with_another_meaning_are_doubtful(text: str) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert unit.doubtful


@pytest.mark.parametrize("text", ["EBC units", "°EBC", "°IoB", "minutes", "°L", "WK"])
def test_plain_spellings_are_not_doubtful(text: str) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert not unit.doubtful


def test_the_two_meanings_of_the_degree_l_are_left_to_the_row() -> None:
    assert code_of("°L") == code_of("º L") == code_of("Degrees L") == "°L"
    assert code_of("° Lovibond") == "°Lovibond"
    assert code_of("°Lintner") == "°Lintner"


def test_parts_per_million_keep_their_name() -> None:
    assert (code_of("ppm"), code_of("ppb")) == ("ppm", "ppb")


@pytest.mark.parametrize(
    "text",
    ["", " ", "Moisture", "L", "m", "G", "as is", "dry", "grain", "normal", "HWE", "Dry matter %", "4.2", "%%%%x", "N"],
)
def test_what_is_no_unit(text: str) -> None:
    assert parse_unit(text) is None


@pytest.mark.parametrize(
    ("text", "codes"),
    [
        ("IoB / WK / °L", ["°IoB", "WK", "°L"]),
        ("EBC/SRM Units", ["EBC", "SRM"]),
        ("degrees Lovibond, SRM or EBC", ["°Lovibond", "SRM", "EBC"]),
        ("EBC / Lovibond", ["EBC", "°Lovibond"]),
    ],
)
def test_several_units_in_one_cell_are_listed_and_none_is_chosen(text: str, codes: list[str]) -> None:
    assert [unit.code for unit in parse_units(text)] == codes
    assert parse_unit(text) is None


def test_two_names_of_one_unit_are_that_unit() -> None:
    assert code_of("LAA/MT or L/MT") == "L/t"
    assert code_of("mg/kg ppm") == "mg/kg"


def test_compatibility_characters_fold() -> None:
    # UAX 15: the micro sign, the one-character "℃" and full-width signs are compatibility forms.
    assert unicodedata.normalize("NFKC", "µ") == "μ"
    assert code_of("µg/kg") == code_of("μg/kg") == "µg/kg"
    assert code_of("℃") == "°C"
    assert code_of("％") == "%"
    assert code_of("mg L⁻¹") == code_of("mg l−1") == code_of("mg.l-1") == "mg/L"


def test_the_printed_text_plays_no_part_in_comparisons() -> None:
    assert parse_unit("mg/l") == parse_unit("mg / L")
    assert parse_unit("mg/l") != parse_unit("mg/100 g")


@given(st.text(max_size=100))
def test_never_an_exception(text: str) -> None:
    unit = parse_unit(text)
    assert unit is None or isinstance(unit, Unit)


def test_spacing_agrees_with_a_general_unit_library() -> None:
    # pint (general unit library) as an outside reading of the dimensions of SI spellings.
    pint = pytest.importorskip("pint")
    registry = pint.UnitRegistry()
    for text, other in [("mg/L", "mg/dm^3"), ("mPa·s", "centipoise"), ("mm²/s", "centistokes"), ("g/t", "mg/kg")]:
        assert (
            registry(other.replace("dm^3", "decimeter**3")).dimensionality
            == registry(
                {"mg/L": "mg/liter", "mPa·s": "millipascal*second", "mm²/s": "mm**2/s", "g/t": "g/metric_ton"}[text]
            ).dimensionality
        )
    assert code_of("mg/dm3") == "mg/L"
    assert code_of("centipoise") == "mPa·s"
    assert code_of("cSt") == "mm²/s"


@pytest.mark.parametrize(
    ("text", "code", "basis"),
    [
        ("in %:", "%", None), ("Vyjádřeno v %", "%", None), ("Angaben in % TrS:", "%", "dry"),
        ("% i. Tr.S.", "%", "dry"), ("% mat. sèche", "%", "dry"), ("% t.q. ricevuto", "%", "as-is"),
        ("% utørret", "%", "as-is"), ("Einh. EBC", "EBC", None), ("uds. EBC", "EBC", None), ("j. EBC", "EBC", None),
        ("IoB-Einh.", "°IoB", None), ("enh. WK", "WK", None), ("L°/kg as rec'd", "L°/kg", "as-is"),
        ("lb per bu", "lb/bu", None), ("mcg/kg", "µg/kg", None),
    ],
)  # fmt: skip
def test_units_as_certificates_word_them(text: str, code: str, basis: str | None) -> None:
    unit = parse_unit(text)
    assert unit is not None
    assert (unit.code, unit.basis) == (code, basis)


@pytest.mark.parametrize("text", ["pH:", "EBC:", "Min:"])
def test_one_word_with_a_colon_is_a_caption_and_no_unit(text: str) -> None:
    assert parse_unit(text) is None


@pytest.mark.parametrize(
    ("entry", "told"),
    [
        ('dimension = "viscosty"', "dimension 'viscosty' is none of [dimensions]. Did you mean viscosity"),
        ('dimension = "qqq"', "dimension 'qqq' is none of [dimensions]. A new one is added there first"),
        ("", "dimension is missing"),
        ('dimensoin = "viscosity"', "there is no entry 'dimensoin'. Did you mean dimension?"),
        ('dimension = "viscosity"\nfamily = "iob"', "there is no method family 'iob'. Did you mean IoB?"),
        ('dimension = "viscosity"\nlabel = "words"', "label must be word, bracket, never"),
    ],
)
def test_a_wrong_entry_of_the_unit_file_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, entry: str, told: str
) -> None:
    text = (mappings_folder() / "units.toml").read_text(encoding="utf-8")
    (tmp_path / "units.toml").write_text(text.replace('dimension = "viscosity"', entry, 1), encoding="utf-8")
    monkeypatch.setattr(unit_names, "mappings_folder", lambda: tmp_path)
    with pytest.raises(DataError) as raised:
        unit_names.unit_table.__wrapped__()
    assert str(raised.value).startswith("mappings/units.toml: mPa·s: ")
    assert told in str(raised.value)
