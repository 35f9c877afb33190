"""Tables whose names stand close behind their values, after a column of units."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest
from reportlab.pdfbase.pdfmetrics import stringWidth  # type: ignore[import-untyped]

from tests.reading.test_form_boxes import HEAD, accepted
from tests.reading.test_forms import Text, read, table

ROWS = (
    ("%", "4.3", "Moisture"),
    ("%", "81.4", "Extract fine grind, dry"),
    ("%", "10.5", "Total protein, dry"),
    ("EBC", "3.4", "Wort colour"),
    ("%", "86", "Friability"),
)
EXPECTED = {"moisture": 4.3, "extract_fine_dry": 81.4, "total_protein": 10.5, "colour": 3.4, "friability": 86.0}


def close(heads: Sequence[str], rows: Sequence[Sequence[str]], gap: float, top: float = 130) -> list[Text]:
    """Units at the left, values set right, names close behind them."""
    texts: list[Text] = []
    for at, (unit, value, name) in enumerate([heads, *rows]):
        y = top + 15 * at
        texts += [(54, y, unit), (150 - stringWidth(value, "Helvetica", 9), y, value), (150 + gap, y, name)]
    return texts


@pytest.mark.parametrize("gap", [3.0, 5.0, 20.0])
def test_names_close_behind_their_values(tmp_path: Path, gap: float) -> None:
    texts = close(("Unit", "Result", "Parameter"), ROWS, gap)
    assert accepted(read(tmp_path, [*HEAD, *texts]).analyses[0]) == EXPECTED


def test_numbers_of_rows_close_before_the_names_are_no_values(tmp_path: Path) -> None:
    rows = [(f"{i} {name}", unit, value) for i, (unit, value, name) in enumerate(ROWS, 3)]
    texts = table([("Parameter", "Unit", "Result"), *rows], 130, (54, 240, 320))
    assert accepted(read(tmp_path, [*HEAD, *texts]).analyses[0]) == EXPECTED


@pytest.mark.parametrize("heads", [(), ("Result", "Unit", "Determination", "Target", "1")])
def test_values_before_and_limits_behind_the_names_are_not_exchanged(tmp_path: Path, heads: tuple[str, ...]) -> None:
    """Without heads that say which is which the values wait; what looks like limits is never the result."""
    rows = [
        ("4.1", "%", "Moisture", "max 5.0"),
        ("712", "mg/100 g", "Soluble nitrogen, dry", "620 - 780"),
        ("40.5", "%", "Kolbach index", "38 - 45"),
        ("6.00", "", "Wort pH", "5.7 - 6.1"),
    ]
    texts = table([heads, *rows] if heads else rows, 130, (54, 110, 190, 340, 420))
    (analysis,) = read(tmp_path, [*HEAD, *texts]).analyses
    found = {f.parameter: (f.printed.value, f.state) for f in analysis.figures if f.printed is not None}
    assert found == {
        "moisture": ("4.1", "review"),
        "soluble_nitrogen": ("712", "review"),
        "nitrogen_ratio": ("40.5", "review"),
        "wort_ph": ("6.00", "review"),
    }


def test_numbers_of_sections_before_the_names_are_no_rivals_of_the_results(tmp_path: Path) -> None:
    rows = [(f"3.{at}", name, value, unit) for at, (unit, value, name) in enumerate(ROWS, 1)]
    assert accepted(read(tmp_path, [*HEAD, *table(rows, 130, (54, 90, 260, 320))]).analyses[0]) == EXPECTED
