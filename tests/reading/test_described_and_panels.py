"""Described results whose words name something else as well, and several lists side by side."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.reading.test_form_boxes import HEAD, accepted
from tests.reading.test_forms import Text, read, table
from tests.reading.test_running_values import lines


@pytest.mark.parametrize(
    "texts",
    [
        lines("Moisture: 4.3 %", "Friability: 86 %", "Wort clarity: clear", "Wort pH: 5.92"),
        table(
            [
                ("Parameter", "Specification", "Result"),
                ("Moisture", "max. 5.0 %", "4.3 %"),
                ("Friability", "min. 80 %", "86 %"),
                ("Wort clarity", "", "clear"),
                ("Wort pH", "5.7 - 6.1", "5.92"),
            ],
            130,
            (54, 240, 400),
        ),
    ],
    ids=["lines", "table"],
)
def test_a_described_result_is_read_although_its_word_is_a_name(tmp_path: Path, texts: list[Text]) -> None:
    found = accepted(read(tmp_path, [*HEAD, *texts]).analyses[0])
    assert found["clarity"] == "clear"
    assert (found["moisture"], found["friability"], found["wort_ph"]) == (4.3, 86.0, 5.92)


def test_values_in_units_named_like_a_method_are_no_column_of_methods(tmp_path: Path) -> None:
    rows = [
        ("Moisture", "4.3 %", "Wort colour", "4.2 EBC", "Thousand corn weight", "41.4 g"),
        ("Friability", "86 %", "Wort turbidity", "1.1 EBC", "Hectolitre weight", "51.3 kg/hl"),
        ("Kolbach index", "41.2 %", "Wort pH", "5.92", "Held on 2.5 mm", "93.2 %"),
    ]
    found = accepted(read(tmp_path, [*HEAD, *table(rows, 130, (40, 130, 220, 320, 400, 520))]).analyses[0])
    assert found == {
        "moisture": 4.3, "friability": 86.0, "nitrogen_ratio": 41.2, "colour": 4.2, "turbidity": 1.1, "wort_ph": 5.92,
        "thousand_corn_weight": 41.4, "hectolitre_weight": 51.3, "sieve_over_2_5": 93.2,
    }  # fmt: skip


def test_a_column_of_methods_stays_one(tmp_path: Path) -> None:
    rows = [
        ("Moisture", "EBC 4.2", "4.3 %"),
        ("Friability", "EBC 4.15", "86 %"),
        ("Wort colour", "EBC 4.7.1", "3.4 EBC"),
    ]
    found = accepted(read(tmp_path, [*HEAD, *table(rows, 130, (54, 240, 400))]).analyses[0])
    assert found == {"moisture": 4.3, "friability": 86.0, "colour": 3.4}
