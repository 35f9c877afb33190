"""Columns and heads that stand closer than cells do, and heads of many lines over columns of parameters."""

from __future__ import annotations

from pathlib import Path

from reportlab.pdfbase.pdfmetrics import stringWidth  # type: ignore[import-untyped]

from importer import read_sheet
from importer.models import Analysis, Figure
from tests.reading.test_forms import Text, moistures, read, table, values
from tests.sheets.unseen_make import make_unseen


def flush_right(x: float, top: float, text: str) -> Text:
    return (x - stringWidth(text, "Helvetica", 9), top, text)


def test_numbers_and_limits_with_a_word_space_between_are_two_columns(tmp_path: Path) -> None:
    texts: list[Text] = [(60, 118, "Lot No"), (240, 118, "Units"), flush_right(360, 118, "6206")]
    texts += [flush_right(450, 118, "6257"), (452.6, 118, "Specification")]
    rows = [
        ("Moisture", "%", "4.2", "4.3", "max. 4.6"),
        ("Extract fine, dry", "%", "81.9", "82.7", "min. 76.8"),
        ("Friability", "%", "86", "98.5", "min. 80"),
        ("Beta-glucan", "mg/l", "146", "141", "max. 152"),
    ]
    for number, (name, unit, first, second, limit) in enumerate(rows):
        top = 136 + 14 * number
        texts += [(60, top, name), (240, top, unit), flush_right(360, top, first)]
        texts += [flush_right(450, top, second), (452.6, top, limit)]
    sheet = read(tmp_path, texts)
    assert moistures(sheet) == {"6206": [4.2], "6257": [4.3]}
    glucan = next(f for f in sheet.analyses[1].figures if f.parameter == "beta_glucan")
    assert (glucan.printed.value if glucan.printed else "", glucan.limits.high) == ("141", 152)


def test_batch_numbers_that_run_together_in_the_head_are_those_of_their_columns(tmp_path: Path) -> None:
    numbers = ("22-0500-PA", "22-0556-PA", "22-0586-PA")
    step = stringWidth("22-0500-PA ", "Helvetica", 9)
    texts: list[Text] = [(60, 118, "Lot No"), (240, 118, "Units"), (300, 118, "Specification")]
    texts += [(370 + step * at, 118, number) for at, number in enumerate(numbers)]
    rows = [("Moisture", "%", "max. 5", ("4.2", "4.3", "4.5")), ("Friability", "%", "min. 80", ("86", "88", "91"))]
    for line, (name, unit, limit, found) in enumerate(rows):
        top = 136 + 14 * line
        texts += [(60, top, name), (240, top, unit), (300, top, limit)]
        texts += [(382 + step * at, top, value) for at, value in enumerate(found)]
    assert moistures(read(tmp_path, texts)) == dict(zip(numbers, ([4.2], [4.3], [4.5]), strict=True))


def made(folder: Path, layout: str, seed: int) -> tuple[Analysis, ...]:
    file = folder / "sheet.pdf"
    file.write_bytes(make_unseen(seed, layout, None, None).pdf_bytes)
    return read_sheet(file).analyses


def first_lot(folder: Path, texts: list[Text]) -> dict[str, Figure]:
    analysis = read(folder, texts).analyses[0]
    return {f.parameter: f for f in analysis.figures if not f.from_}


def test_heads_of_many_lines_that_run_together_are_parted_by_the_lines_below_them(tmp_path: Path) -> None:
    found = made(tmp_path, "u-month-list", 740928)[0]
    assert {f.parameter: f.printed.value for f in found.figures if f.printed} == {
        "moisture": "4.00",
        "extract_fine_dry": "82.00",
        "total_nitrogen": "1.73",
        "nitrogen_ratio": "39.08",
        "colour": "2.60",
        "sieve_2_5_to_2_8": "24.5",
    }


def test_units_that_begin_where_their_heads_begin_belong_to_them(tmp_path: Path) -> None:
    heads = ("Lot", "Moisture", "Extract fine, dry", "Friability", "Colour")
    units = ("", "%", "%", "%", "EBC")
    places = (60, 130, 190, 280, 360)
    texts = [*table([heads], 120, places), *table([units], 132, places)]
    lots = [("A24-101", "4.2", "81.9", "86", "3.1"), ("A24-102", "4.4", "82.1", "88", "3.3")]
    texts += table(lots, 150, (60, 152, 246, 312, 386))
    found = first_lot(tmp_path, texts)
    assert {name: f.printed.unit for name, f in found.items() if f.printed} == {
        "moisture": "%",
        "extract_fine_dry": "%",
        "friability": "%",
        "colour": "EBC",
    }


def test_tables_side_by_side_whose_result_columns_are_headed_lot(tmp_path: Path) -> None:
    found = made(tmp_path, "u-lots-beside", 740725)
    assert [(a.header["batch"].value, a.header["batch"].state) for a in found] == [
        ("23.4366", "accepted"),
        ("23.4371", "accepted"),
    ]
    assert [values(a) for a in found] == [[3.1], [2.7]]


def test_a_word_like_one_for_another_product_does_not_take_the_figures_away(tmp_path: Path) -> None:
    texts: list[Text] = [
        (50, 60, "Adjuntamos los resultados del análisis de su entrega."),
        (50, 80, "Lote N°: 202205940"),
    ]
    texts += [(50, 100, "Contenido de agua: 2,9 %"), (50, 114, "Extracto (fino): 80,6 % base seca")]
    (analysis,) = read(tmp_path, texts).analyses
    assert {f.parameter for f in analysis.figures} >= {"moisture", "extract_fine_dry"}


def test_a_doubtful_row_that_another_takes_the_place_of_is_kept(tmp_path: Path) -> None:
    rows = [("Test", "Result", "Unit"), ("Moisture", "3.5", "%"), ("Extract Fine/coarse 0.7mm", "298.9", "l°/kg as is")]
    rows += [("Extract fine/coarse difference", "3.5", "l°/kg"), ("Friability", "92", "%")]
    (analysis,) = read(
        tmp_path, [(50, 60, "Methods: Institute of Brewing"), *table(rows, 120, (54, 260, 330))]
    ).analyses
    assert [row.value for row in analysis.unrecognised] == ["298.9"]
