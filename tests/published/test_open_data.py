"""Ranges that no malt leaves, against an open data set of barley trials: steptoe.morex.pheno of the R package agridat.

USDA and GrainGenes; Hayes et al. 1993: 152 lines in 9 environments with quality figures, six-row, North American
methods. The package names CC BY-SA 4.0 and a licence file of its own; until that is settled the data do not come with
the project. Put the CSV file where OPEN_DATA says to run these tests.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from importer.meaning.possible import within_possible

OPEN_DATA = Path(__file__).parent / "steptoe.morex.pheno.csv"
COLUMNS = [
    ("amylase", "alpha_amylase", "DU"),
    ("diapow", "diastatic_power", "°Lintner"),
    ("malt", "extract_fine_dry", "%"),
    ("protein", "total_protein", "%"),
]


@pytest.mark.parametrize(("column", "parameter", "unit"), COLUMNS)
def test_no_measurement_counts_as_impossible(column: str, parameter: str, unit: str) -> None:
    if not OPEN_DATA.is_file():
        pytest.skip("whether its licence lets the data set be handed on is not settled")
    with OPEN_DATA.open(encoding="utf-8", newline="") as stream:
        values = [float(row[column]) for row in csv.DictReader(stream) if row[column] not in ("", "NA")]
    assert len(values) > 1000
    assert [value for value in values if not within_possible(parameter, unit, value)] == []
