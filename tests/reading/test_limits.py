"""Ways in which sheets give the limits of their results; a limit is never the result, nor one of another figure."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from importer.models import Analysis
from tests.reading.test_forms import Text, read, table

HEAD: list[Text] = [
    (50, 60, "Certificate of analysis"),
    (50, 76, "Malt: Pilsner Malt"),
    (300, 76, "Batch no.: L24-1174"),
    (50, 92, "Methods: EBC"),
]
Row = tuple[str, str, str, str, str]
ROWS: tuple[Row, ...] = (
    ("Moisture", "%", "4.3", "", "4.5"),
    ("Extract fine grind, dry", "%", "81.4", "80.0", ""),
    ("Total protein, dry", "%", "10.5", "9.8", "11.2"),
    ("Friability", "%", "86", "82", ""),
)
PLACES = (54, 200, 270, 340, 410)
EXPECTED = {
    "moisture": (4.3, None, 4.5),
    "extract_fine_dry": (81.4, 80.0, None),
    "total_protein": (10.5, 9.8, 11.2),
    "friability": (86.0, 82.0, None),
}


def limit(row: Row, least: str = "min. {}", most: str = "max. {}", between: str = "{} - {}") -> str:
    low, high = row[3:]
    return between.format(low, high) if low and high else most.format(high) if high else least.format(low)


def under(head: Sequence[str], rows: Sequence[Sequence[str]], top: float = 130) -> list[Text]:
    return table([head, *rows], top, PLACES)


def found(analysis: Analysis) -> dict[str, tuple[float | None, float | None, float | None]]:
    return {f.parameter: (f.value, f.limits.low, f.limits.high) for f in analysis.figures if f.state == "accepted"}


RESULTS = under(("Parameter", "Unit", "Result"), [row[:3] for row in ROWS])
FORMS: dict[str, list[Text]] = {
    "maximum-first": under(
        ("Parameter", "Max.", "Min.", "Unit", "Result"), [(a, high, low, u, v) for a, u, v, low, high in ROWS]
    ),
    "result-between": under(
        ("Parameter", "Min", "Result", "Max", "Unit"), [(a, low, v, high, u) for a, u, v, low, high in ROWS]
    ),
    "head-of-both": [
        (374, 116, "Contract limits"),
        *under(("Parameter", "Unit", "Result", "from", "to"), ROWS),
    ],
    "signs-as-words": under(
        ("Parameter", "Unit", "Result", "Requirement"),
        [(*row[:3], limit(row, "not less than {}", "not more than {}", "between {} and {}")) for row in ROWS],
    ),
    "units-in-limits": table(
        [("Parameter", "Result", "Min.", "Max.")]
        + [(a, f"{v} {u}", f"{low} {u}" if low else "", f"{high} {u}" if high else "") for a, u, v, low, high in ROWS],
        130,
        (54, 200, 290, 380),
    ),
    "stroke": under(
        ("Parameter", "Unit", "Result", "Specification"),
        [(*row[:3], f"{row[3] or '-'} / {row[4] or '-'}") for row in ROWS],
    ),
    "stroke-under-min-max": under(
        ("Parameter", "Unit", "Result", "Min / Max"),
        [(*row[:3], f"{row[3] or '-'} / {row[4] or '-'}") for row in ROWS],
    ),
    "stroke-under-max-min": under(
        ("Parameter", "Unit", "Result", "Limits max / min"),
        [(*row[:3], f"{row[4] or '–'} / {row[3] or '–'}") for row in ROWS],
    ),
    "signs-as-heads": under(("Parameter", "Unit", "Result", "≥", "≤"), ROWS),
    "signs-behind-words": under(("Parameter", "Unit", "Result", "Spec. >=", "Spec. <="), ROWS),
    "narrow-heads": table(
        [("Parameter", "Einheit", "Ergebnis", "Spez. min.", "Spez. max."), *ROWS], 130, (54, 200, 270, 340, 384.5)
    ),
    "from": under(
        ("Parameter", "Unit", "Result", "Limits"), [(*row[:3], limit(row, "from {}", "{} max")) for row in ROWS]
    ),
    "a-partir-de": under(
        ("Parameter", "Unit", "Result", "Limits"), [(*row[:3], limit(row, "à partir de {}", "{} max")) for row in ROWS]
    ),
    "ab": under(("Parameter", "Unit", "Result", "Limits"), [(*row[:3], limit(row, "ab {}", "bis {}")) for row in ROWS]),
    "head-that-says-nothing": under(
        ("Parameter", "Unit", "Result", "Brewhouse"), [(*row[:3], limit(row, "≥ {}", "≤ {}")) for row in ROWS]
    ),
    "no-heads": table([(row[0], row[2], row[1], limit(row)) for row in ROWS], 130, PLACES),
    "below-in-brackets": [
        *under(("Parameter", "Unit", "Result"), []),
        *(text for i, row in enumerate(ROWS) for text in table([row[:3]], 150 + 26 * i, PLACES)),
        *((270, 160 + 26 * i, f"({limit(row)})") for i, row in enumerate(ROWS)),
    ],
    "in-the-label": table(
        [("Parameter", "Result")] + [(f"{row[0]} ({limit(row)} %)", f"{row[2]} %") for row in ROWS], 130, (54, 330)
    ),
    "second-table": [
        *RESULTS,
        (50, 270, "Specification"),
        *under(("Parameter", "Unit", "Min.", "Max."), [(a, u, low, high) for a, u, _, low, high in ROWS], 290),
    ],
}


@pytest.mark.parametrize("texts", FORMS.values(), ids=FORMS.keys())
def test_limits_are_those_of_their_figures(tmp_path: Path, texts: list[Text]) -> None:
    assert found(read(tmp_path, [*HEAD, *texts]).analyses[0]) == EXPECTED


def test_a_value_with_a_tolerance_is_a_range(tmp_path: Path) -> None:
    texts = under(("Parameter", "Unit", "Result", "Specification"), [("Moisture", "%", "4.3", "4.0 ± 0.5")] * 1)
    more = [("Friability", "%", "86", "88 ± 5"), ("Total protein, dry", "%", "10.5", "10.5 ± 0.7")]
    figures = found(read(tmp_path, [*HEAD, *texts, *table(more, 162, PLACES)]).analyses[0])
    assert figures["moisture"] == (4.3, 3.5, 4.5)
    assert figures["total_protein"] == (10.5, 9.8, 11.2)


@pytest.mark.parametrize("head", ["Guarantee", "Typical", "Uncertainty"])
def test_single_values_beside_the_result_set_no_limit(tmp_path: Path, head: str) -> None:
    rows = [(*row[:3], row[3] or row[4]) for row in ROWS]
    figures = found(read(tmp_path, [*HEAD, *under(("Parameter", "Unit", "Result", head), rows)]).analyses[0])
    assert figures == {name: (value, None, None) for name, (value, _, _) in EXPECTED.items()}


@pytest.mark.parametrize(
    "heads", [("Tol. -", "Tol. +"), ("Tol. +", "Tol. -"), ("Tolerance -", "Tolerance +"), ("Toleranz -", "Toleranz +")]
)
def test_bare_numbers_of_tolerances_set_no_limit(tmp_path: Path, heads: Sequence[str]) -> None:
    rows = [(*row[:3], "0.5", "0.7") for row in ROWS]
    texts = table([("Parameter", "Unit", "Result", *heads), *rows], 130, (54, 200, 270, 340, 420))
    figures = found(read(tmp_path, [*HEAD, *texts]).analyses[0])
    assert figures == {name: (value, None, None) for name, (value, _, _) in EXPECTED.items()}


def test_ends_in_another_order_than_their_head_says_are_no_limits_on_the_wrong_side(tmp_path: Path) -> None:
    rows = [(*row[:3], "11.2 / 9.8") for row in ROWS if row[0].startswith("Total")]
    texts = under(("Parameter", "Unit", "Result", "Min / Max"), rows)
    assert found(read(tmp_path, [*HEAD, *texts]).analyses[0]) == {"total_protein": (10.5, None, None)}


BATCHES = ("L24-1174", "L24-1175", "L24-1176")
VALUES = (
    ("Moisture", "%", "4.3", "4.1", "4.6"),
    ("Total protein, dry", "%", "10.5", "10.9", "10.2"),
    ("Friability", "%", "86", "84", "89"),
)


def ends(values: Sequence[str]) -> tuple[str, str]:
    return min(values, key=float), max(values, key=float)


@pytest.mark.parametrize(("of_batches", "limits"), [(True, (None, None)), (False, (4.0, 5.0))])
def test_the_least_and_greatest_of_batches_are_no_limits(
    tmp_path: Path, of_batches: bool, limits: tuple[float | None, float | None]
) -> None:
    agreed = (("4.0", "5.0"), ("9.5", "11.5"), ("80", ""))
    beside = [ends(row[2:]) for row in VALUES] if of_batches else agreed
    columns = [("Parameter", "Unit", *BATCHES, "Min.", "Max.")]
    columns += [(*row, *both) for row, both in zip(VALUES, beside, strict=True)]  # type: ignore[misc]
    head = [text for text in HEAD if "Batch" not in text[2]]
    sheet = read(tmp_path, [*head, *table(columns, 130, (54, 180, 230, 290, 350, 410, 470))])
    assert {found(analysis)["moisture"][1:] for analysis in sheet.analyses} == {limits}
    names = ["Moisture %", "Protein dry %", "Friability %"]
    rows: list[Sequence[str]] = [("Batch", *names)]
    rows += [(batch, *(row[2 + i] for row in VALUES)) for i, batch in enumerate(BATCHES)]
    rows += [(name, *(both[i] for both in beside)) for i, name in enumerate(("Minimum", "Maximum"))]
    sheet = read(tmp_path, [*head, *table(rows, 130, (54, 150, 250, 350))])
    assert {found(analysis)["moisture"][1:] for analysis in sheet.analyses} == {limits}


@pytest.mark.parametrize("label", ["Friability (8 min)", "Extract fine grind, dry (0.2 mm)", "Moisture (105 °C, 3 h)"])
def test_conditions_in_a_label_are_no_limits(tmp_path: Path, label: str) -> None:
    rows = [("Parameter", "Result"), (label, "81 %"), ("Total protein, dry", "10.5 %")]
    analysis = read(tmp_path, [*HEAD, *table(rows, 130, (54, 330))]).analyses[0]
    assert len(analysis.figures) == 2
    assert {(f.limits.low, f.limits.high) for f in analysis.figures} == {(None, None)}
