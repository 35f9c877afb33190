"""Names and heads whose last words stand on a line of their own, and columns told apart by what stands in them."""

from __future__ import annotations

from pathlib import Path

from importer.models import Analysis
from tests.reading.test_forms import Text, moistures, read, table


def one(folder: Path, texts: list[Text]) -> Analysis:
    (analysis,) = read(folder, texts).analyses
    return analysis


def test_the_last_name_of_a_list_goes_on_below_its_value(tmp_path: Path) -> None:
    texts: list[Text] = [(50, 60, "Zbiór: 2025"), (250, 60, "Wilgotność słodu"), (420, 60, "4,2 %")]
    texts += [(50, 76, "Nr partii: 001800/3"), (250, 76, "Indeks Kolbacha"), (420, 76, "43,6 %")]
    texts += [(250, 92, "Barwa brzeczki"), (420, 92, "2,4 EBC"), (250, 103, "kongresowej")]
    texts += [(250, 119, "Barwa brzeczki po"), (420, 119, "3,9 EBC"), (250, 130, "gotowaniu (EBC)")]
    found = {f.parameter: f.printed.value for f in one(tmp_path, texts).figures if f.printed and f.state == "accepted"}
    assert found["boiled_colour"] == "3,9"
    assert found.get("colour") != "3,9"


def test_a_head_that_goes_on_under_the_last_column_heads_no_table_of_its_own(tmp_path: Path) -> None:
    places = (50, 190, 220, 270, 340, 370, 440)
    rows = [("Item", "IOB", "Unit", "IoB method", "EBC", "Unit", "EBC"), ("", "", "", "", "", "", "methods no.")]
    texts = table(rows, 120, places)
    texts = [(x, 131 if text == "methods no." else top, text) for x, top, text in texts]
    values = [("Moisture", "4.0", "%", "2.1", "4.0", "%", "4.2"), ("Friability", "", "", "", "94", "%", "4.15")]
    values += [("Diastatic power", "92", "°IoB", "2.7", "322", "WK", "4.12"), ("pH", "", "", "", "5.8", "", "8.17")]
    analysis = one(tmp_path, [*texts, *table(values, 150, places)])
    found = {f.parameter: f.printed.value for f in analysis.figures if f.printed}
    assert (found["moisture"], found["diastatic_power"]) == ("4.0", "322")
    assert "malt" not in analysis.header


def test_captions_over_the_rows_do_not_hide_that_a_column_holds_names(tmp_path: Path) -> None:
    rows = [
        ("Batch number(s)", "Units", "202408900", "202408907"),
        ("Date of analysis", "", "27.12.2024", "26.12.2024"),
    ]
    rows += [("Best before", "", "26.12.2025", "26.12.2025"), ("Variety", "", "Sulmira", "Quintal")]
    rows += [("Moisture", "%", "3.2", "2.5"), ("Friability", "%", "88", "91"), ("On 7/64", "%", "60", "61")]
    sheet = read(tmp_path, table([*rows, ("On 6/64", "%", "30", "31")], 120, (50, 200, 300, 400)))
    assert moistures(sheet) == {"202408900": [3.2], "202408907": [2.5]}


def test_the_unit_of_a_row_that_was_not_found_says_nothing_of_the_others(tmp_path: Path) -> None:
    rows = [("Test", "Result"), ("Moisture, %", "6.1"), ("Total protein, %", "11.6")]
    texts = [*table(rows, 120, (54, 250)), (54, 220, "EBC 4.5.1"), (250, 220, "% as is")]
    texts.append((54, 240, "Methods: Analytica EBC"))
    protein = next(f for f in one(tmp_path, texts).figures if f.parameter == "total_protein")
    assert protein.value == 11.6


def test_ebc_in_a_name_on_a_sheet_by_other_methods_may_not_be_the_unit(tmp_path: Path) -> None:
    states = {}
    for name in ("EBC wort colour", "Wort colour (EBC)"):
        rows = [("Test", "Result"), ("Moisture, %", "4.1"), (name, "2.34")]
        analysis = one(tmp_path, [(50, 60, "Methods: ASBC"), *table(rows, 120, (54, 250))])
        states[name] = next(f.state for f in analysis.figures if f.parameter == "colour")
    assert states == {"EBC wort colour": "review", "Wort colour (EBC)": "accepted"}
