"""Taking units off values and labels: common practice, no source."""

from __future__ import annotations

import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.vocabulary.units import split_label, split_unit, split_value


def parts(text: str) -> tuple[str, str | None, str | None]:
    rest, unit = split_unit(text)
    return rest, unit.code if unit else None, unit.basis if unit else None


@pytest.mark.parametrize(
    ("text", "rest", "code", "basis"),
    [
        ("4.2%", "4.2", "%", None),
        ("4.2 % dry", "4.2", "%", "dry"),
        ("81.5 % dm", "81.5", "%", "dry"),
        ("152mg/l", "152", "mg/L", None),
        ("1,53 mPas", "1,53", "mPa·s", None),
        ("1.55 mPas (8,6 %)", "1.55", "mPa·s", None),
        ("≥180 mg/100g", "≥180", "mg/100 g", None),
        ("182 mg/100 g MTrS", "182", "mg/100 g", "dry"),
        ("300 °WK", "300", "WK", None),
        ("max. 4.5 %", "max. 4.5", "%", None),
        ("4.5% max", "4.5 max", "%", None),
        ("300 °L min", "300 min", "°L", None),
        ("82 min IoB", "82 min", "°IoB", None),
        ("10-15 min", "10-15", "min", None),
        ("80%~85%", "80~85", "%", None),
        ("80 %–85 %", "80–85", "%", None),
        ("0.70 % - 0.80 %", "0.70 - 0.80", "%", None),
        ("4.5% - 5.0", "4.5 - 5.0", "%", None),
        ("> 9.5 % and < 11.5 %", "> 9.5 and < 11.5", "%", None),
        ("10% / 20% / 70%", "10 / 20 / 70", "%", None),
        ("4.2 % (max 5.0 %)", "4.2 (max 5.0)", "%", None),
        ("1 450 mg/l", "1 450", "mg/L", None),
        ("81. 5 %", "81. 5", "%", None),
        ("4.2 %*", "4.2*", "%", None),
        ("98,5 %²", "98,5²", "%", None),
        ("pH 5.85", "5.85", "pH", None),
        ("EBC: 3~5", "3~5", "EBC", None),
        ("304 1°/kg", "304", "L°/kg", None),
        ("81.5 °/o", "81.5", "%", None),
        ("45 lbs/bu", "45", "lb/bu", None),
        ("4.2 g/100 g", "4.2", "%", None),
        ("2-3 j. EBC", "2-3", "EBC", None),
        ("not more than 4.5 %", "not more than 4.5", "%", None),
        ("1,6 % i. TrS.", "1,6", "%", "dry"),
        ("83,4 % b/s", "83,4", "%", "dry"),
        ("1,52 mPas ber. auf 8,6 %", "1,52", "mPa·s", None),
        ("Extrait MG % MS", "Extrait MG", "%", "dry"),
    ],
)
def test_values(text: str, rest: str, code: str, basis: str | None) -> None:
    assert parts(text) == (rest, code, basis)


@pytest.mark.parametrize(
    ("text", "rest", "code", "basis"),
    [
        ("Moisture (%)", "Moisture", "%", None),
        ("Moisture [%]", "Moisture", "%", None),
        ("Moisture %", "Moisture", "%", None),
        ("Moisture, %", "Moisture", "%", None),
        ("Moisture in %", "Moisture", "%", None),
        ("Moisture - %", "Moisture", "%", None),
        ("Moisture / %", "Moisture", "%", None),
        ("Humedad en %", "Humedad", "%", None),
        ("% Moisture", "Moisture", "%", None),
        ("Moisture ......... %", "Moisture", "%", None),
        ("Moisture (%) max", "Moisture max", "%", None),
        ("Moisture, %, max", "Moisture max", "%", None),
        ("Friability, %, min", "Friability min", "%", None),
        ("水分含量/% ≤", "水分含量 ≤", "%", None),
        ("Extract, % dry", "Extract", "%", "dry"),
        ("Ext. fine, dm %", "Ext. fine", "%", "dry"),
        ("Extrakt in % TrS", "Extrakt", "%", "dry"),
        ("Extract (fine grind, % dry)", "Extract (fine grind)", "%", "dry"),
        ("Extract (0.2 mm) % dry", "Extract (0.2 mm)", "%", "dry"),
        ("Extract IoB 0.7 mm L°/kg dry", "Extract IoB 0.7 mm", "L°/kg", "dry"),
        ("Azote total % sur sec", "Azote total", "%", "dry"),
        ("Protein (N x 6.25) % dry", "Protein (N x 6.25)", "%", "dry"),
        ("Protein N x 6.25 %", "Protein N x 6.25", "%", None),
        ("FAN (mg/l)", "FAN", "mg/L", None),
        ("FAN (mg/l) dry", "FAN", "mg/L", "dry"),
        ("FAN mg/100g MTrS", "FAN", "mg/100 g", "dry"),
        ("Extract ld/kg*", "Extract", "L°/kg", None),
        ("Colour (EBC)", "Colour", "EBC", None),
        ("Colour EBC", "Colour", "EBC", None),
        ("Couleur en °L/SRM (ASBC)", "Couleur (ASBC)", "SRM", None),
        ("Farbe [EBC-Einh.]", "Farbe", "EBC", None),
        ("α-amylase DU", "α-amylase", "DU", None),
        ("TKW g", "TKW", "g", None),
        ("1000 corn weight, g dry", "1000 corn weight", "g", "dry"),
        ("Saccharification time (min)", "Saccharification time", "min", None),
        ("Viscosity mPas (8,6 %)", "Viscosity", "mPa·s", None),
        ("Viscosity 8.6 % mPas", "Viscosity 8.6 %", "mPa·s", None),
        ("VZ 45 %", "VZ 45", "%", None),
        ("< 2.2 mm%", "< 2.2 mm", "%", None),
        ("2.5-2.8 mm %", "2.5-2.8 mm", "%", None),
        ("Test weight (kg/hL)", "Test weight", "kg/hL", None),
    ],
)
def test_labels(text: str, rest: str, code: str, basis: str | None) -> None:
    assert parts(text) == (rest, code, basis)


@pytest.mark.parametrize(
    "text",
    [
        "", "   ", "pH", "Wort pH", "Moisture m", "Screening", "Extract fine", "Couleur du", "first class grain", "N",
        "Friability min", "VZ 45 °C", "Viscosity 8.6 %", "Viscosity (8.6 %)", "Grading > 2.5 mm x 20mm", "normal",
        "SNR/KI/ST", "DP/DPWK/LINTNER", "DP / IoB / WK / °L", "4.2", "24-0815", "12.03.2026", "1.55 (8.6 %)",
        "3041°/kg", "4.5 %0", "2.5%/min", "Moisture ........", "Extract (0.7/0.2mm), dry",
        "Total Nitrogen / Protein, dry",
    ],
)  # fmt: skip
def test_texts_without_a_unit_come_back_untouched(text: str) -> None:
    assert split_unit(text) == (text, None)


@pytest.mark.parametrize("text", ["%", "mg/l", "°WK", "% dry", "EBC"])
def test_a_lone_unit_leaves_nothing(text: str) -> None:
    rest, unit = split_unit(text)
    assert rest == ""
    assert unit is not None


VALUES = st.one_of(
    st.integers(0, 9999).map(str),
    st.decimals(0, 999, places=2).map(str),
    st.decimals(0, 999, places=1).map(lambda number: str(number).replace(".", ",")),
    st.tuples(st.integers(1, 50), st.integers(51, 99)).map(lambda pair: f"{pair[0]} - {pair[1]}"),
)
UNITS = ["%", "mg/l", "mg/100 g", "mPa·s", "EBC", "°WK", "L°/kg", "g", "kg/hl", "U/g", "% dry", "mg/100 g TrS", "ppb"]


@given(VALUES, st.sampled_from(UNITS), st.sampled_from(["", " ", "\u00a0"]))
def test_a_unit_put_behind_a_value_comes_off_again(value: str, unit: str, gap: str) -> None:
    rest, found = split_value(f"{value}{gap}{unit}")
    alone = split_unit(unit)[1]
    assert rest == value
    assert found == alone


@given(
    st.sampled_from(["Moisture", "Extract fine", "Gesamtstickstoff", "β-glucan", "1000 corn weight", "Kolbach index"]),
    st.sampled_from(UNITS),
    st.sampled_from(["{} ({})", "{} [{}]", "{}, {}", "{} in {}"]),
)
def test_a_unit_put_behind_a_label_comes_off_again(label: str, unit: str, form: str) -> None:
    rest, found = split_label(form.format(label, unit))
    assert rest == label
    assert found == split_unit(unit)[1]


@given(st.text(max_size=260))
def test_no_text_is_lost_without_a_unit(text: str) -> None:
    rest, unit = split_unit(text)
    assert unit is not None or rest == text


@pytest.mark.parametrize("piece", ["1 ", "(", "mg/l ", "% ", ", ", "a/", "1.1", ". ", "- "])
def test_long_texts_take_no_time(piece: str) -> None:
    began = time.process_time()
    for length in (60, 80, 239, 240, 5000):
        split_unit((piece * length)[:length])
    assert time.process_time() - began < 0.5


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("α-Amylase DU", "DU"), ("ALPHA AMYLASE, DU", "DU"), ("ALPHA AMYLASE (DU)", "DU"), ("COULEUR DU MOÛT", None),
        ("Couleur du moût", None), ("pH DU MOÛT", None), ("TEMPS DU", None),
    ],
)  # fmt: skip
def test_an_article_is_no_dextrinising_unit(text: str, code: str | None) -> None:
    unit = split_label(text)[1]
    assert (unit.code if unit else None) == code


@pytest.mark.parametrize(
    "text", ["Viscosity (8,6 °P)", "Viscosité moût (8.6 %)", "Viscosity at 8.6 °P", "Viscosity 8.6 %"]
)
def test_the_strength_that_a_label_names_is_no_unit(text: str) -> None:
    assert split_label(text) == (text, None)


@pytest.mark.parametrize(
    ("text", "code", "basis"),
    [
        ("gm", "g", None), ("lbs./bu.", "lb/bu", None), ("EBC-U", "EBC", None), ("deg. SRM", "SRM", None),
        ("litre°/kg", "L°/kg", None), ("cp", "mPa·s", None), ("du", "DU", None), ("ug/kg", "µg/kg", None),
        ("mg/100gms", "mg/100 g", None), ("kgs/hl", "kg/hL", None), ("% af TS", "%", "dry"),
        ("% lufttørt", "%", "as-is"), ("% v pův. hmotě", "%", "as-is"), ("% a.z.", "%", "as-is"),
    ],
)  # fmt: skip
def test_sloppy_spellings(text: str, code: str, basis: str | None) -> None:
    unit = split_unit(text)[1]
    assert unit is not None
    assert (unit.code, unit.basis) == (code, basis)


@pytest.mark.parametrize(
    ("text", "value", "code"),
    [
        ("% 4,3", "4,3", "%"),
        ("% 4.0 - 5.0", "4.0 - 5.0", "%"),
        ("mPa s 1,561", "1,561", "mPa·s"),
        ("WK 280", "280", "WK"),
        ("mg/l 150", "150", "mg/L"),
        ("% −0,3", "−0,3", "%"),
        ("% -0.3", "-0.3", "%"),
        ("%−0,3", "−0,3", "%"),
        ("% - 0.3", "- 0.3", "%"),
        ("% ± 0.3", "± 0.3", "%"),
        ("pH - 5.85", "5.85", "pH"),
    ],
)
def test_units_before_their_number(text: str, value: str, code: str) -> None:
    rest, unit = split_unit(text)
    assert unit is not None
    assert (rest, unit.code) == (value, code)


@pytest.mark.parametrize("text", ["min 36", "L 24", "t 25", "mm 2.5", "%, 4.5", "°C 20"])
def test_words_letters_and_sizes_before_a_number_are_no_unit_of_it(text: str) -> None:
    assert split_unit(text)[1] is None


@pytest.mark.parametrize(
    ("text", "label", "code"),
    [
        ("HWE (0.7 mm), Id/kg dry", "HWE (0.7 mm)", "L°/kg"),
        ("D.P, °loB", "D.P", "°IoB"),
        ("Beta-glucan, mg/I", "Beta-glucan", "mg/L"),
        ("Extrait farine, s/s", "Extrait farine, s/s", None),  # two names that are no unit together
        ("Assortment, 7/64", "Assortment, 7/64", None),
    ],
)
def test_a_unit_misread_as_letters_that_print_alike_is_split_off(text: str, label: str, code: str | None) -> None:
    left, unit = split_label(text)
    assert (left, unit and unit.code) == (label, code)
