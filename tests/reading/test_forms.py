"""Forms of sheets that the reading has to take apart: several batches, blocks beside tables, running lines."""

from __future__ import annotations

import io
from collections.abc import Sequence
from pathlib import Path

import pytest
from reportlab.pdfgen.canvas import Canvas  # type: ignore[import-untyped]

from importer import read_sheet
from importer.models import Analysis, Sheet

Text = tuple[float, float, str]
ROWS = (
    ("Moisture", "%", ("4.3", "4.6", "4.4")),
    ("Extract fine grind, dry", "%", ("81.4", "80.7", "81.1")),
    ("Total protein, dry", "%", ("10.5", "11.2", "10.8")),
    ("Friability", "%", ("86", "82", "88")),
)
BATCHES = ("L24-1174", "L24-1175", "L24-1176")
HEAD: tuple[Text, ...] = (
    (50, 60, "Certificate of analysis"),
    (50, 90, "Malt: Pilsner Malt"),
    (50, 105, "Methods: EBC"),
)
PLACES = (54, 200, 260, 330, 400)


def table(rows: Sequence[Sequence[str]], top: float, places: Sequence[float] = PLACES) -> list[Text]:
    return [(x, top + 16 * i, text) for i, row in enumerate(rows) for x, text in zip(places, row, strict=False)]


def figures(head: Sequence[str], *above: Sequence[str]) -> list[Sequence[str]]:
    return [*above, head, *[(label, unit, *values) for label, unit, values in ROWS]]


def read(folder: Path, texts: Sequence[Text], face: str = "Helvetica") -> Sheet:
    buffer = io.BytesIO()
    canvas = Canvas(buffer, pagesize=(595, 842), invariant=1)
    canvas.setFont(face, 9)
    for x, y, text in texts:
        if text:
            canvas.drawString(x, 842 - y, text)
    canvas.save()
    path = folder / "sheet.pdf"
    path.write_bytes(buffer.getvalue())
    return read_sheet(path)


def values(analysis: Analysis, name: str = "moisture") -> list[float | None]:
    return [f.value for f in analysis.figures if f.parameter == name and f.state == "accepted"]


def moistures(sheet: Sheet) -> dict[str, list[float | None]]:
    return {a.header["batch"].value: values(a) for a in sheet.analyses if "batch" in a.header}


EXPECTED = {"L24-1174": [4.3], "L24-1175": [4.6], "L24-1176": [4.4]}


@pytest.mark.parametrize(
    "texts",
    [
        table(figures(("Parameter", "Unit", *(f"Lot {b}" for b in BATCHES))), 150),
        table(figures(("Lot", "", *BATCHES)), 150),
        table(figures(("Analysis", "", "Result", "Result", "Result"), ("Lot", "", *BATCHES)), 150),
        [
            *table(figures(("Parameter", "Unit", "A", "B", "C")), 150),
            (50, 300, "A: L24-1174; B: L24-1175; C: L24-1176"),
        ],
        [
            *table(figures(("Parameter", "Unit", "Sample 1", "Sample 2", "Sample 3")), 150),
            *((50, 300 + 14 * i, f"Sample {i + 1} = Lot {b}") for i, b in enumerate(BATCHES)),
        ],
    ],
    ids=["caption-in-head", "number-as-head", "row-above-heads", "legend", "legend-of-samples"],
)
def test_batches_as_columns_are_told_apart(tmp_path: Path, texts: list[Text]) -> None:
    assert moistures(read(tmp_path, [*HEAD, *texts])) == EXPECTED


def test_columns_that_nothing_tells_apart_stay_in_doubt(tmp_path: Path) -> None:
    sheet = read(
        tmp_path, [*HEAD, (50, 120, "Batch: T-4711"), *table(figures(("Parameter", "Unit", "A", "B", "C")), 150)]
    )
    assert not any(values(analysis) for analysis in sheet.analyses)
    reasons = " ".join(r for a in sheet.analyses for f in a.figures for r in f.reasons)
    assert "4.6" in reasons
    assert "4.4" in reasons


def test_certificates_side_by_side(tmp_path: Path) -> None:
    texts: list[Text] = [(50, 60, "Methods: EBC"), (50, 90, "Lot: L24-1174"), (310, 90, "Lot: L24-1175")]
    for start, at in ((54, 0), (314, 1)):
        rows = [("Parameter", "Result", "Unit"), *[(label, found[at], unit) for label, unit, found in ROWS]]
        texts += table(rows, 130, (start, start + 126, start + 170))
    assert moistures(read(tmp_path, texts)) == {"L24-1174": [4.3], "L24-1175": [4.6]}


def test_header_entries_beside_a_table(tmp_path: Path) -> None:
    texts = table([("Parameter", "Unit", "Result"), *[(a, b, c[0]) for a, b, c in ROWS]], 120, (230, 380, 460))
    side = [
        (50, 120 + 10 * i, text) for i, text in enumerate(("Lot no.", "L24-1174", "Crop", "2024", "Malt", "Pilsner"))
    ]
    found = read(tmp_path, [(50, 60, "Methods: EBC"), *texts, *side]).analyses[0]
    assert found.header["batch"].value == "L24-1174"
    assert found.header["crop_year"].value == "2024"
    assert values(found) == [4.3]


def test_captions_over_their_entries(tmp_path: Path) -> None:
    block = [(50, 80, "Product"), (300, 80, "Supplied by"), (56, 92, "Pale Ale Malt"), (306, 92, "Malting Co. Ltd")]
    block += [(50, 110, "Lot no."), (300, 110, "Produced on"), (56, 122, "L24-1174"), (306, 122, "2025-03-12")]
    rows = [("Parameter", "Unit", "Result"), *[(a, b, c[0]) for a, b, c in ROWS]]
    header = read(tmp_path, [(50, 50, "Methods: EBC"), *block, *table(rows, 160)]).analyses[0].header
    assert header["batch"].value == "L24-1174"
    assert header["produced_on"].value == "2025-03-12"
    assert "malt" not in header or "Supplied" not in header["malt"].value


def test_running_lines_of_entries(tmp_path: Path) -> None:
    lines: list[Text] = [
        (50, 150, "Moisture: 4.3 %; Extract fine grind, dry: 81.4 %; Total protein, dry: 10.5 %; Wort"),
        (50, 162, "colour: 3.6 EBC; Friability: 86 %"),
    ]
    found = read(tmp_path, [*HEAD, *lines]).analyses[0]
    assert values(found) == [4.3]
    assert values(found, "colour") == [3.6]
    assert values(found, "friability") == [86.0]


def test_a_table_ruled_with_characters(tmp_path: Path) -> None:
    rows = [f"{'Parameter':25}| Lab. value | Unit", "-" * 25 + "+------------+------"]
    rows += [f"{label:25}|{found[0]:>11} | {unit}" for label, unit, found in ROWS]
    found = read(tmp_path, [*HEAD, *((50, 150 + 12 * i, row) for i, row in enumerate(rows))], "Courier").analyses[0]
    assert values(found) == [4.3]
    assert values(found, "extract_fine_dry") == [81.4]


def test_values_told_in_sentences_are_kept_in_doubt(tmp_path: Path) -> None:
    text = "the malt has a moisture of 4.3 % and an extract (fine, dry) of 81.4 %."
    found = read(tmp_path, [*HEAD, (50, 150, text)]).analyses[0]
    assert [(f.value, f.state) for f in found.figures if f.parameter == "moisture"] == [(4.3, "review")]


def test_lines_under_a_heading_of_contract_values_are_no_results(tmp_path: Path) -> None:
    rows = [("Parameter", "Unit", "Result"), ("Moisture", "%", "4.3"), ("Friability", "%", "86")]
    lines: list[Text] = [
        (50, 220, "Contract values:"),
        (50, 232, "Total protein, dry: 11.2 %"),
        (50, 244, "Colour: 4.1 EBC"),
    ]
    found = read(tmp_path, [*HEAD, *table(rows, 150), *lines]).analyses[0]
    assert values(found) == [4.3]
    assert not values(found, "total_protein")
    assert not values(found, "colour")


def test_a_column_without_a_head_beside_an_empty_one_is_no_result(tmp_path: Path) -> None:
    """As many heads as columns, but one head stands over nothing and one column has no head."""
    heads: list[Text] = [(54, 150, "Parameter"), (170, 150, "Min"), (250, 150, "Result"), (420, 150, "Unit")]
    rows = [(label, found[0], found[1], unit) for label, unit, found in ROWS]
    found = read(tmp_path, [*HEAD, *heads, *table(rows, 166, (54, 250, 330, 420))]).analyses[0]
    assert 4.6 not in values(found)


def test_names_between_values_do_not_say_whose_they_are(tmp_path: Path) -> None:
    rows = [
        ("4.3 %", "Moisture", "1.2 %", "Extract difference"),
        ("10.5 %", "Total protein, dry", "86 %", "Friability"),
    ]
    found = read(tmp_path, [*HEAD, *table(rows, 150, (54, 130, 230, 330))]).analyses[0]
    assert not [f for f in found.figures if f.state == "accepted"]


def test_results_that_equal_the_marks_of_a_key_are_no_marks(tmp_path: Path) -> None:
    rows = [("Lot no.", "(1)", "(2)", "(3)"), ("TM24-0815", "4.4", "1.2", "3.1"), ("TM24-0900", "3", "1", "2")]
    key: list[Text] = [(50, 220, "(1) Moisture (%)"), (50, 232, "(2) Fine-coarse difference, dry (%)")]
    key.append((50, 244, "(3) Colour (EBC)"))
    found = read(tmp_path, [*HEAD, *table(rows, 150), *key]).analyses
    assert [values(one) for one in found] == [[4.4], [3]]
    assert [values(one, "fine_coarse_difference") for one in found] == [[1.2], [1]]
    assert [values(one, "colour") for one in found] == [[3.1], [2]]


def test_a_lot_of_which_a_value_is_missing_keeps_its_row(tmp_path: Path) -> None:
    heads: list[Text] = [(54, 150, "Lot no."), (170, 150, "Moisture %"), (250, 150, "Friability %"), (330, 150, "pH")]
    rows: list[Text] = [(54, 166, "A24-100"), (170, 166, "4.1"), (330, 166, "5.9")]
    rows += [(54, 182, "A24-101"), (170, 182, "4.4"), (250, 182, "86"), (330, 182, "5.8")]
    rows += [(54, 198, "A24-102"), (170, 198, "4.0")]
    found = read(tmp_path, [*HEAD, *heads, *rows]).analyses
    assert [values(one) for one in found] == [[4.1], [4.4], [4.0]]
    assert [values(one, "friability") for one in found] == [[], [86], []]
    assert [values(one, "wort_ph") for one in found] == [[5.9], [5.8], []]


def test_an_entry_that_reaches_below_the_next_caption_is_in_doubt(tmp_path: Path) -> None:
    lines: list[Text] = [(54, 150, "Customer"), (150, 150, "Variety"), (54, 162, "Long Acre Brewing Company Corvane")]
    rows = [("Parameter", "Unit", "Result"), ("Moisture", "%", "4.3"), ("Friability", "%", "86")]
    head = read(tmp_path, [*HEAD, *lines, *table(rows, 200)]).analyses[0].header
    assert head["customer"].state == "review"


def test_a_second_certificate_on_a_page_keeps_its_figures_to_itself(tmp_path: Path) -> None:
    """Its head holds captions and entries in turn and no colons, like rows of the table above it."""
    first = [("Parameter", "Result", "Unit"), ("Moisture", "4.3", "%"), ("Friability", "86", "%")]
    second = [("Parameter", "Result", "Unit"), ("Moisture", "5.1", "%"), ("Broken grains", "0.8", "%")]
    places = (54, 140, 290, 380)
    head = table(
        [("Crop", "2025", "Malt", "Wheat malt"), ("Batch no.", "PM 25-7981", "Sampled", "09.04.2026")], 230, places
    )
    title: list[Text] = [(54, 214, "Certificate of analysis")]
    number: list[Text] = [(50, 120, "Batch no.: PM 25-7980")]
    found = read(tmp_path, [*HEAD, *number, *table(first, 150), *title, *head, *table(second, 270)]).analyses
    assert [values(one) for one in found] == [[4.3], [5.1]]
    assert [values(one, "broken_grains") for one in found] == [[], [0.8]]
    assert [one.header["batch"].value for one in found] == ["PM 25-7980", "PM 25-7981"]
