"""Results written behind their names in running lines, with limits, methods and other values behind them."""

from __future__ import annotations

from pathlib import Path

import pytest

from importer.models import Figure
from importer.reading.listed import Listed, listed
from tests.reading.test_forms import Text, read, table
from tests.reading.test_limits import EXPECTED, HEAD, ROWS, Row, found, limit


def lines(*texts: str) -> list[Text]:
    return [(54, 130 + 16 * i, text) for i, text in enumerate(texts)]


def told(row: Row, method: str = "") -> str:
    return f"{row[0]} {row[2]} {row[1]}, {limit(row)}{method}"


METHODS = ("4.2", "4.5.1", "4.3.1", "4.15")
FORMS: dict[str, list[Text]] = {
    "limit-behind-a-comma": lines(*(told(row) for row in ROWS)),
    "method-behind-the-limit": lines(*(told(row, f", EBC {m}") for row, m in zip(ROWS, METHODS, strict=True))),
    "method-before-the-limit": lines(
        *(f"{a} {v} {u}, EBC {m}, {limit((a, u, v, *ends))}" for (a, u, v, *ends), m in zip(ROWS, METHODS, strict=True))
    ),
    "behind-colons": lines(*(told((f"{row[0]}:", *row[1:])) for row in ROWS)),
    "in-one-line": lines("; ".join(told(row) for row in ROWS[:2]) + ";", "; ".join(told(row) for row in ROWS[2:])),
    "a-word-for-limits": lines(*(f"{row[0]} {row[2]} {row[1]}, specification {limit(row)}" for row in ROWS)),
    "in-cells": table(
        [("Parameter", "Result"), *((row[0], f"{row[2]} {row[1]}, {limit(row)}") for row in ROWS)], 130, (54, 250)
    ),
}


@pytest.mark.parametrize("texts", FORMS.values(), ids=FORMS.keys())
def test_limits_behind_commas_belong_to_the_result_before_them(tmp_path: Path, texts: list[Text]) -> None:
    assert found(read(tmp_path, [*HEAD, *texts]).analyses[0]) == EXPECTED


def moisture(folder: Path, text: str) -> Figure:
    (figure,) = read(folder, [*HEAD, *lines(text, "Friability 86 %")]).analyses[0].figures[:1]
    assert figure.parameter == "moisture"
    return figure


@pytest.mark.parametrize(
    "text",
    [
        "Moisture 4.3 %, typical 4.5",
        "Moisture 4.3 %, last lot 4.5 %",
        "Moisture 4.3 %, guaranteed 5.0",
        "Moisture 4.3 % max. 4.5",
        "Moisture 4.3 typical 4.5",
        "Moisture 4.3 5.0",
        "Moisture 4.3 %, 4.5",
        "Moisture 4.3 / 5.0 %",
        "Moisture 4.3 | 5.0 %",
        "Moisture 4.3 % | 5.0 %",
        "Moisture 4 of 5 %",
    ],
)
def test_a_second_value_is_never_the_result(tmp_path: Path, text: str) -> None:
    figure = moisture(tmp_path, text)
    assert figure.state == "review" or (figure.value, figure.limits.high) == (4.3, 4.5)


@pytest.mark.parametrize("text", ["10 - 15 min", "10 – 15 min", "10-15 min", "10 to 15 min"])
def test_a_range_with_spaces_is_read_as_one(tmp_path: Path, text: str) -> None:
    figures = read(tmp_path, [*HEAD, *lines("Moisture 4.3 %", f"Saccharification time {text}")]).analyses[0].figures
    assert [(f.range, f.state) for f in figures[1:]] == [((10.0, 15.0), "accepted")]


def test_a_number_at_the_end_of_a_label_may_be_the_result(tmp_path: Path) -> None:
    rows = [("Moisture 4.3", "5.0 %"), ("Protein, dry 10.5 %", "11.5 %"), ("Friability", "86 %")]
    figures = read(tmp_path, [*HEAD, *table(rows, 130, (54, 300))]).analyses[0].figures
    assert [f.parameter for f in figures if f.state == "accepted"] == ["friability"]


@pytest.mark.parametrize("label", ["VZ 45", "Moisture EBC 4.2", "Moisture 1", "Moisture (max. 5.0)"])
def test_sizes_methods_footnotes_and_limits_end_labels_without_a_doubt(tmp_path: Path, label: str) -> None:
    value = "38.5 %" if "45" in label else "4.3 %"
    rows = [(label, value), ("Friability", "86 %")]
    figures = read(tmp_path, [*HEAD, *table(rows, 130, (54, 300))]).analyses[0].figures
    assert [f.state for f in figures] == ["accepted", "accepted"]


@pytest.mark.parametrize("label", ["Extract 0.2 mm, dry", "Extract fine grind 0.2 mm dry"])
def test_a_size_in_a_name_is_no_value(tmp_path: Path, label: str) -> None:
    analysis = read(tmp_path, [*HEAD, *lines("Moisture 4.3 %", f"{label} 81.4 %")]).analyses[0]
    assert {f.parameter: f.value for f in analysis.figures} == {"moisture": 4.3, "extract_fine_dry": 81.4}


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("4,3 %, max. 4,5", Listed("4,3", "%", spec="max. 4,5")),
        ("4.3 %, max. 5.0, min. 3.0", Listed("4.3", "%", low="min. 3.0", high="max. 5.0")),
        ("1.52, IoB 2.1", Listed("1.52", None, method="IoB 2.1")),
        ("43 g/kg, max. 4.5 %", None),
        ("76 %, 2.5 - 2.8 mm", None),
        ("10.5, 9.8, 11.2", None),
        ("86 %, max. 90, max. 95", None),
        ("max. 4.5, min. 3.0", None),
        ("4.3 %", None),
    ],
)
def test_parts_of_a_listed_result(text: str, parts: Listed | None) -> None:
    assert listed(text) == parts


def test_units_before_their_values(tmp_path: Path) -> None:
    rows = [(row[0], f"{row[1]} {row[2]}") for row in ROWS]
    figures = found(read(tmp_path, [*HEAD, *table(rows, 130, (54, 300))]).analyses[0])
    assert {name: value for name, (value, _, _) in figures.items()} == {name: e[0] for name, e in EXPECTED.items()}


@pytest.mark.parametrize("cell", ["280 WK 300", "280 WK, 300"])
def test_a_number_behind_the_unit_leaves_the_result_in_doubt(tmp_path: Path, cell: str) -> None:
    rows = [("Parameter", "Result"), ("Diastatic power", cell), ("Friability", "86 %")]
    figures = read(tmp_path, [*HEAD, *table(rows, 130, (54, 300))]).analyses[0].figures
    assert [f.state for f in figures if f.parameter == "diastatic_power"] == ["review"]
