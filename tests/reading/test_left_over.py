"""Names with a value that no row, table or entry took are kept in doubt."""

from __future__ import annotations

from pathlib import Path

from importer import read_sheet
from tests.reading.test_forms import HEAD, read, table
from tests.sheets.exam_make import make_exam


def test_rows_above_a_strip_of_sieves_are_no_heads_of_it(tmp_path: Path) -> None:
    file = tmp_path / "sheet.pdf"
    file.write_bytes(make_exam(2228, "sieve-strip", None, None).pdf_bytes)
    (analysis,) = read_sheet(file).analyses
    figures = {f.parameter: f for f in analysis.figures if f.printed is not None}
    for name, value in {"lipoxygenase": "2,7", "ndma": "1,9", "thousand_corn_weight": "33,5"}.items():
        assert (figures[name].printed.value, figures[name].state) == (value, "accepted")  # type: ignore[union-attr]
    assert figures["moisture"].state == "accepted"


def test_a_name_outside_of_the_table_does_not_doubt_its_rows(tmp_path: Path) -> None:
    rows = table((("Parameter", "Unit", "Result"), ("Moisture", "%", "4.3"), ("Friability", "%", "86")), 150)
    (analysis,) = read(tmp_path, [*HEAD, *rows]).analyses
    assert {f.parameter: f.state for f in analysis.figures} == {"moisture": "accepted", "friability": "accepted"}
