"""Forms whose boxes hold a name in small type and its value below it."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from importer.models import Analysis
from tests.reading.test_forms import Text, read

HEAD: list[Text] = [(50, 60, "Certificate of analysis"), (50, 84, "Batch no.: L24-1174"), (300, 84, "Methods: EBC")]
NAMES = (
    ("Moisture", "Extract fine grind, dry", "Total protein, dry"),
    ("Friability", "Kolbach index", "Wort pH"),
    ("Held on 2.5 mm", "Wort clarity", "Viscosity"),
)
VALUES = (("4.3 %", "81.4 %", "10.5 %"), ("86 %", "41.2 %", "5.92"), ("96.2 %", "clear", "1.52 mPa.s"))
EXPECTED = {
    "moisture": 4.3,
    "extract_fine_dry": 81.4,
    "total_protein": 10.5,
    "friability": 86.0,
    "nitrogen_ratio": 41.2,
    "wort_ph": 5.92,
    "sieve_over_2_5": 96.2,
    "clarity": "clear",
    "viscosity": 1.52,
}
PLACES = (50, 220, 390)


def boxes(names: Sequence[Sequence[str]], values: Sequence[Sequence[str]], shift: float = 70) -> list[Text]:
    """Lines of names and of values in turn, the values set to the right within their boxes."""
    texts: list[Text] = []
    for at, (row, below) in enumerate(zip(names, values, strict=True)):
        texts += [(x, 120 + 28 * at, name) for x, name in zip(PLACES, row, strict=False)]
        texts += [(x + shift, 132 + 28 * at, value) for x, value in zip(PLACES, below, strict=False)]
    return texts


def accepted(analysis: Analysis) -> dict[str, float | str | None]:
    return {f.parameter: f.text or f.value for f in analysis.figures if f.state == "accepted"}


@pytest.mark.parametrize("shift", [0, 6, 70])
def test_values_belong_to_the_names_above_them(tmp_path: Path, shift: float) -> None:
    assert accepted(read(tmp_path, [*HEAD, *boxes(NAMES, VALUES, shift)]).analyses[0]) == EXPECTED


def test_running_numbers_before_the_names_are_no_part_of_them(tmp_path: Path) -> None:
    counted = [[f"{20 + 3 * i + j} {name}" for j, name in enumerate(row)] for i, row in enumerate(NAMES)]
    assert accepted(read(tmp_path, [*HEAD, *boxes(counted, VALUES)]).analyses[0]) == EXPECTED


def test_the_last_line_may_have_fewer_boxes(tmp_path: Path) -> None:
    names, values = (*NAMES, ("Free amino nitrogen",)), (*VALUES, ("150 mg/l",))
    found = accepted(read(tmp_path, [*HEAD, *boxes(names, values)]).analyses[0])
    assert found == {**EXPECTED, "free_amino_nitrogen": 150.0}


def test_an_unknown_name_keeps_its_value_in_sight(tmp_path: Path) -> None:
    names = (NAMES[0], ("Friability", "Snowdrift value", "Wort pH"), NAMES[2])
    analysis = read(tmp_path, [*HEAD, *boxes(names, VALUES)]).analyses[0]
    assert [(row.label, row.value) for row in analysis.unrecognised] == [("Snowdrift value", "41.2")]
    assert accepted(analysis) == {name: value for name, value in EXPECTED.items() if name != "nitrogen_ratio"}


def test_values_above_their_names_are_not_given_to_the_names_above_them(tmp_path: Path) -> None:
    texts = [
        (x, y - 12 if text in {v for row in VALUES for v in row} else y + 12, text)
        for x, y, text in boxes(NAMES, VALUES)
    ]
    found = accepted(read(tmp_path, [*HEAD, *texts]).analyses[0])
    assert all(EXPECTED[name] == value for name, value in found.items())


def test_a_line_of_values_that_lacks_one_leaves_its_figures_in_doubt(tmp_path: Path) -> None:
    values = (VALUES[0], ("86 %", "", "5.92"), VALUES[2])
    found = accepted(read(tmp_path, [*HEAD, *boxes(NAMES, values)]).analyses[0])
    assert all(EXPECTED[name] == value for name, value in found.items())
    assert "nitrogen_ratio" not in found


def test_two_lines_of_values_under_names_are_no_boxes(tmp_path: Path) -> None:
    texts = boxes(NAMES, VALUES)
    more = [(x, y + 9, "4.4 %") for x, y, text in texts if text == "4.3 %"]
    found = accepted(read(tmp_path, [*HEAD, *texts, *more]).analyses[0])
    assert "moisture" not in found
