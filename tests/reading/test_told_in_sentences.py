"""Figures told in sentences are asked for, each of them, with or without a unit."""

from __future__ import annotations

from pathlib import Path

from importer.models import Figure
from tests.reading.test_forms import Text, read


def told(folder: Path, *lines: str) -> dict[str, Figure]:
    texts: list[Text] = [(50, 60, "Nordtal Maltings"), (50, 80, "Lot no.: L24-1174")]
    (analysis,) = read(folder, [*texts, *((50, 110 + 12 * i, line) for i, line in enumerate(lines))]).analyses
    return {figure.parameter: figure for figure in analysis.figures}


def test_a_ratio_without_a_unit_is_found(tmp_path: Path) -> None:
    found = told(
        tmp_path,
        "The moisture content of the delivered malt was found to be 4.4 %, soluble protein amounted to 4.3 %",
        "on dry matter, which gives a Kolbach index of 41.3. The pH of the wort was determined by method EBC 8.17",
        "and the viscosity of the wort came to 1.48 mPa.s.",
    )
    assert found["nitrogen_ratio"].printed is not None
    assert found["nitrogen_ratio"].printed.value == "41.3"
    assert "wort_ph" not in found, "the number of a method is no result"
    assert {figure.state for figure in found.values()} == {"review"}


def test_a_doubtful_row_does_not_hide_what_a_sentence_says(tmp_path: Path) -> None:
    found = told(
        tmp_path,
        "Le taux d'humidité est de 4,4 %. La friabilité s'élève à 86 % et la viscosité à 1,50 mPa.s. Le lot",
        "précédent avait une friabilité de 82 %.",
    )
    assert found["friability"].state == "review"
    assert any("82 and 86" in reason for reason in found["friability"].reasons)
