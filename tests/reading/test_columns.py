"""Columns and heads that a scan has run together, and names that hold a size."""

from __future__ import annotations

from pathlib import Path

from importer.layout.grid import Span, in_order
from importer.models import Figure
from importer.reading.readings import readings_at
from importer.words import Box, Page, SecondReading
from tests.reading.test_forms import Text, read, table


def boxes(*ends: tuple[float, float]) -> list[Box]:
    return [Box(x0, 0, x1, 8) for x0, x1 in ends]


def printed(folder: Path, texts: list[Text]) -> list[Figure]:
    """The figures of the one analysis that were printed, not reckoned."""
    (analysis,) = read(folder, texts).analyses
    return [figure for figure in analysis.figures if not figure.from_]


def test_heads_stand_in_order_only_where_each_is_at_its_own_column() -> None:
    wide = [Span(50, 200), Span(300, 440), Span(500, 545)]
    assert in_order(wide, boxes((50, 90), (300, 340), (480, 530)))
    assert not in_order(wide, boxes((306, 354), (452, 472), (501, 543))), "the first head is not over the first column"


def test_a_cell_that_bridges_two_columns_leaves_the_table_whole(tmp_path: Path) -> None:
    rows: list[tuple[str, ...]] = [("Parameter", "Unit", "Result")]
    rows += [("Moisture", "%", "4.3"), ("Friability", "%", "86.1"), ("Total protein, dry", "%", "10.4")]
    texts = table(rows, 130, (250, 360, 460))
    texts += [(54, 150, "General"), (250, 210, "Soluble nitrogen on dry matter mg/100 g"), (460, 210, "712")]
    found = {figure.parameter: figure.printed.value for figure in printed(tmp_path, texts)}
    assert found == {
        "moisture": "4.3",
        "friability": "86.1",
        "total_protein": "10.4",
        "soluble_nitrogen": "712",
    }


def test_a_size_at_the_end_of_a_name_is_no_result(tmp_path: Path) -> None:
    texts: list[Text] = table([("Parameter", "Unit", "Result"), ("Moisture", "%", "4.3")], 130, (54, 250, 360))
    texts.append((54, 260, "Between 2.5 and 2.8 mm"))
    assert [figure.parameter for figure in printed(tmp_path, texts)] == ["moisture"]


def readings(*parts: tuple[str, float, float], reader: str = "second") -> tuple[SecondReading, ...]:
    return tuple(SecondReading(text, Box(x0, 0, x1, 10), reader, 0.9) for text, x0, x1 in parts)


def test_readings_of_parts_are_one_reading_of_all() -> None:
    place = Box(100, 0, 160, 10)
    page = Page(1, 600, 800, (), "ocr", second=readings(("5", 100, 108), ("- 10", 120, 160)))
    assert [reading.text for reading in readings_at(page, place)] == ["5 - 10"]
    other = Page(1, 600, 800, (), "ocr", second=readings(("5 - 10", 99, 161), ("10", 140, 160)))
    assert sorted(reading.text for reading in readings_at(other, place)) == ["10", "5 - 10"]
    mixed = (*readings(("5", 100, 108)), *readings(("- 10", 120, 160), reader="other"))
    assert len(readings_at(Page(1, 600, 800, (), "ocr", second=mixed), place)) == 2


def test_heads_that_run_together_are_cut_by_the_columns_below_them(tmp_path: Path) -> None:
    texts: list[Text] = [(440, 118, "Low"), (502, 118, "Your")]
    texts += [(60, 129, "Test"), (370, 129, "Unit"), (440, 129, "limit Maximum batch")]
    rows = [
        ("Moisture", "%", "", "6", "5.3"),
        ("Friability", "%", "82", "", "86.1"),
        ("Colour", "EBC", "2.3", "2.8", "2.6"),
    ]
    for number, row in enumerate(rows):
        texts += [(x, 146 + 14 * number, text) for x, text in zip((60, 370, 440, 472, 502), row, strict=True) if text]
    found = {figure.parameter: figure for figure in printed(tmp_path, texts)}
    assert {name: figure.printed.value for name, figure in found.items()} == {
        "moisture": "5.3",
        "friability": "86.1",
        "colour": "2.6",
    }


def test_a_unit_that_only_a_name_gives_is_in_doubt_where_the_methods_do_not_give_it(tmp_path: Path) -> None:
    rows = [("Test", "Result"), ("Moisture, %", "4.3"), ("Diastatic power WK", "54")]
    texts = [(50, 60, "Methods: Institute of Brewing"), *table(rows, 130, (54, 250))]
    found = {figure.parameter: figure for figure in printed(tmp_path, texts)}
    assert found["diastatic_power"].state == "review"
    assert "Its name gives WK" in found["diastatic_power"].reasons[0]
    texts[0] = (50, 60, "Methods: EBC")
    found = {figure.parameter: figure for figure in printed(tmp_path, texts)}
    assert not any("Its name gives" in reason for reason in found["diastatic_power"].reasons)


def test_a_limit_that_may_head_either_of_two_columns_makes_none_of_them_the_result(tmp_path: Path) -> None:
    texts: list[Text] = [(60, 129, "Test"), (370, 129, "Unit"), (425, 129, "Low limit"), (474, 129, "Maximum Mälz")]
    rows = [("Moisture", "%", "", "6", "5.3"), ("Colour", "EBC", "2.3", "2.8", "2.6")]
    for number, row in enumerate(rows):
        texts += [(x, 146 + 14 * number, text) for x, text in zip((60, 370, 432, 474, 508), row, strict=True) if text]
    found = printed(tmp_path, texts)
    assert {figure.parameter for figure in found} == {"moisture", "colour"}
    assert all(figure.state == "review" for figure in found)


def test_a_head_whose_words_stand_wide_apart_does_not_part_the_brackets_below_it(tmp_path: Path) -> None:
    texts: list[Text] = [(60, 129, "Analyte"), (300, 129, "Test"), (341, 129, "result"), (400, 129, "Dim.")]
    rows = [
        ("Moisture", "4.7 (3.0 - 5.0)", "%"),
        ("Extract fine, dry", "83.3 (79.5 - 86)", "%"),
        ("Friability", "86.1 (82.0 - 99)", "%"),
        ("Odour", "typical", ""),
    ]
    for number, row in enumerate(rows):
        texts += [(x, 146 + 14 * number, text) for x, text in zip((60, 300, 400), row, strict=True) if text]
    found = {figure.parameter: figure for figure in printed(tmp_path, texts)}
    assert {name: figure.printed.value for name, figure in found.items()} == {
        "moisture": "4.7",
        "extract_fine_dry": "83.3",
        "friability": "86.1",
        "odour": "typical",
    }
    assert (found["friability"].limits.low, found["friability"].limits.high) == (82.0, 99.0)
