"""Heads of tables in less usual forms: harvests below a head, families alone, limits in brackets, means."""

from __future__ import annotations

from pathlib import Path

import pytest

from importer.models import Analysis
from importer.vocabulary.batch_code import holds_several
from tests.reading.test_forms import HEAD, Text, read, table
from tests.reading.test_workbooks import ONE as SHOWN
from tests.reading.test_workbooks import OTHER, accepted, batches, body, head, told, xlsx

NAMES = ("Moisture", "Extract fine grind, dry", "Total protein, dry", "Friability")
UNITS = ("%", "%", "%", "%")
LOT: Text = (50, 120, "Batch: L24-1174")
OLD, OLDER, NEW = ("4.5", "81.2", "10.9", "84"), ("4.7", "80.9", "11.0", "83"), ("4.3", "81.6", "10.4", "88")


def results(analysis: Analysis) -> dict[str, str]:
    return {f.parameter: f.printed.value for f in analysis.figures if f.state == "accepted" and f.printed}


def expected(values: tuple[str, ...]) -> dict[str, str]:
    return dict(zip(("moisture", "extract_fine_dry", "total_protein", "friability"), values, strict=True))


def test_harvests_below_heads_of_averages_belong_to_them(tmp_path: Path) -> None:
    heads = [("Parameter", "Unit", "Average of crop", "Average of crop", "Your"), ("", "", "2023", "2024", "lot")]
    places = (54, 190, 240, 340, 440)
    texts = [*table(heads[:1], 150, places), *table(heads[1:], 161, places)]
    texts += table(list(zip(NAMES, UNITS, OLDER, OLD, NEW, strict=True)), 180, places)
    (analysis,) = read(tmp_path, [*HEAD, LOT, *texts]).analyses
    assert results(analysis) == expected(NEW)


def test_bare_years_beside_the_result_head_other_harvests(tmp_path: Path) -> None:
    rows = [("Analysis (EBC)", "Unit", "2023", "2024", "This lot"), *zip(NAMES, UNITS, OLDER, OLD, NEW, strict=True)]
    (analysis,) = read(tmp_path, [*HEAD, LOT, *table(rows, 150)]).analyses
    assert results(analysis) == expected(NEW)
    assert len(analysis.figures) == len(NAMES), "the year in the head is no colour"


def test_method_families_alone_head_their_columns(tmp_path: Path) -> None:
    rows = [
        ("", "IoB", "EBC"),
        ("Moisture", "3.2 %", "3.2 %"),
        ("Soluble nitrogen, dry", "0.58 %", "0.65 %"),
        ("Viscosity", "1.50 mPa·s", "1.47 mPa·s"),
    ]
    (analysis,) = read(tmp_path, [*HEAD[:2], LOT, *table(rows, 150)]).analyses
    assert results(analysis) == {"moisture": "3.2", "soluble_nitrogen": "0.65", "viscosity": "1.47"}


@pytest.mark.parametrize(("last", "state"), [("{} (max. 90)", "accepted"), ("{}", "review")])
def test_limits_in_brackets_behind_results_are_read_where_the_cells_hold_them(
    tmp_path: Path, last: str, state: str
) -> None:
    cells = tuple(last.format(value) for value in NEW)
    rows = [("Parameter", "Unit", "Result (limit)"), *zip(NAMES, UNITS, cells, strict=True)]
    (analysis,) = read(tmp_path, [*HEAD, LOT, *table(rows, 150)]).analyses
    assert {f.printed.value for f in analysis.figures if f.printed} == set(NEW)
    assert {f.state for f in analysis.figures if not f.parameter.startswith("extract")} == {state}


def test_entries_right_above_the_heads_of_a_workbook_are_none_of_them(tmp_path: Path) -> None:
    rows = [*head("N-201")[:-1], ["Analysed on", "12 October 2025"], ["Group", "Parameter", "Unit", "Result"]]
    rows += [[group, *row] for group, row in zip(("Grain", None, "Wort", None), body(SHOWN), strict=True)]
    analysis = batches(xlsx(tmp_path, rows))["N-201"]
    assert accepted(analysis) == told(SHOWN)
    assert analysis.header["analysed_on"].value == "2025-10-12"


def test_the_mean_below_batches_does_not_join_the_columns_left_of_it(tmp_path: Path) -> None:
    rows = [
        ["Lot", "Malt type", "Moisture", "Extract fine grind, dry", "Colour", "Friability"],
        ["", "", "%", "%", "EBC", "%"],
        ["N-301", "Pilsner Malt", *SHOWN],
        ["N-302", "Vienna Malt", *OTHER],
        ["Average of all", None, 4.4, 80.8, 3.8, 86],
    ]
    found = batches(xlsx(tmp_path, [["Supplier", "Nordtal Maltings"], ["Method", "EBC"], [], *rows]))
    assert {batch: accepted(analysis) for batch, analysis in found.items()} == {
        "N-301": told(SHOWN),
        "N-302": told(OTHER),
    }
    assert [analysis.header["malt"].value for analysis in found.values()] == ["Pilsner Malt", "Vienna Malt"]


def test_the_malt_in_the_head_of_a_batch_ends_before_the_word_for_results(tmp_path: Path) -> None:
    heads = ["Lot N-401 Pilsner Malt", None, "Lot N-402 Vienna Malt", None]
    rows = [["Parameter", "Unit", *heads], [None, None, "Result", "Spec.", "Result", "Spec."]]
    limits = ("max 5.0", "min 80", "max 5", "min 80")
    rows += body(SHOWN, limits, OTHER, limits)
    found = batches(xlsx(tmp_path, rows, ("A1:A2", "B1:B2", "C1:D1", "E1:F1")))
    assert [analysis.header["malt"].value for analysis in found.values()] == ["Pilsner Malt", "Vienna Malt"]
    assert accepted(found["N-402"])["moisture"] == OTHER[0]


def test_batch_numbers_under_a_group_of_heads_are_columns_of_their_own(tmp_path: Path) -> None:
    rows = [("Parameter", "Unit", "This delivery", "Previous three deliveries"), ("", "", "N-501", "N-502", "N-503")]
    rows += [(name, unit, *shown) for name, unit, *shown in zip(NAMES, UNITS, NEW, OLD, OLDER, strict=True)]
    texts = [*table(rows[:1], 150), *table(rows[1:2], 161), *table(rows[2:], 180)]
    (analysis,) = read(tmp_path, [*HEAD, *texts]).analyses
    assert results(analysis) == expected(NEW)


def test_several_batch_numbers_in_one_head_are_that_of_none() -> None:
    assert holds_several("Earlier BF-9001 BF-8987 BF-8960")
    assert not holds_several("Lot ZA 25/507 Pilsner malt")


def test_a_column_beside_the_contract_is_no_order(tmp_path: Path) -> None:
    rows = [("Contract", "OC 5519"), *zip(NAMES, OLD, NEW, strict=True)]
    texts = [*table(rows[:1], 150, (190, 290)), *table(rows[1:], 166, (54, 190, 290))]
    (analysis,) = read(tmp_path, [*HEAD, LOT, *texts]).analyses
    assert "order" not in analysis.header or analysis.header["order"].state == "review"


def test_headings_side_by_side_speak_of_the_block_below_them(tmp_path: Path) -> None:
    rows = [("Barley", "", "Malt"), ("Moisture", "12.9 %", "Moisture", "4.4 %")]
    rows += [("Sieving over 2.5 mm", "95 %", "Friability", "86 %"), ("Protein, dry", "10.9 %", "Colour", "3.3 EBC")]
    (analysis,) = read(tmp_path, [*HEAD, LOT, *table(rows, 150, (54, 170, 260, 380))]).analyses
    assert results(analysis) == {"friability": "86", "colour": "3.3"}


def test_the_section_above_the_first_row_names_what_its_rows_are_of(tmp_path: Path) -> None:
    rows = [("Proteins (% dry)", ""), ("Total", "11.1"), ("Soluble", "4.5"), ("Sieving (%)", ""), ("> 2.8 mm", "64.2")]
    (analysis,) = read(tmp_path, [*HEAD, LOT, *table(rows, 150, (54, 260))]).analyses
    assert results(analysis) == {"total_protein": "11.1", "soluble_protein": "4.5", "sieve_over_2_8": "64.2"}
