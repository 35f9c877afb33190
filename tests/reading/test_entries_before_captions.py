"""Entries above or left of their captions, and set in below them: forms that name what stands there afterwards."""

from __future__ import annotations

from pathlib import Path

import pytest

from importer.models import Analysis
from tests.reading.test_forms import Text, read, table

ROWS: list[tuple[str, ...]] = [
    ("Analysis", "Unit", "Result"),
    ("Moisture", "%", "4.3"),
    ("Total protein, dry", "%", "10.4"),
    ("Friability", "%", "86"),
]
FIRST = ("Nordtal Maltings", "Pilsner Malt", "L24-1174"), ("Supplier", "Malt type", "Lot no.")
SECOND = ("12.10.2025", "25.1 t"), ("Analysed on", "Quantity")
PLACES = (54, 200, 330)


def analysis(folder: Path, lines: list[tuple[str, ...]], places: tuple[float, ...] = PLACES) -> Analysis:
    texts: list[Text] = [(50, 60, "Certificate of analysis"), (50, 80, "Methods: EBC")]
    texts += [(x, 110 + 13 * i, text) for i, row in enumerate(lines) for x, text in zip(places, row, strict=False)]
    (found,) = read(folder, [*texts, *table(ROWS, 260)]).analyses
    return found


def entries(found: Analysis) -> dict[str, str]:
    return {key: entry.value for key, entry in found.header.items() if entry.state == "accepted"}


EXPECTED = {
    "supplier": "Nordtal Maltings",
    "malt": "Pilsner Malt",
    "batch": "L24-1174",
    "analysed_on": "2025-10-12",
    "quantity": "25.1 t",
}


def test_captions_below_their_entries_name_them(tmp_path: Path) -> None:
    assert entries(analysis(tmp_path, [*FIRST, *SECOND])) == EXPECTED


def test_captions_above_their_entries_name_nothing_above_them(tmp_path: Path) -> None:
    lines = [*FIRST[::-1], *SECOND[::-1]]
    assert entries(analysis(tmp_path, lines)) == EXPECTED
    # The quantity was left blank: the line of the entries is shorter than that of the captions.
    blank = analysis(tmp_path, [("Delivered on", "Quantity"), ("11.10.2025", "25.1 t"), SECOND[1], SECOND[0][:1]])
    assert blank.header["analysed_on"].value == "2025-10-12"
    assert blank.header["delivered_on"].value == "2025-10-11"


@pytest.mark.parametrize("form", ["({})", "{}"])
def test_captions_behind_their_entries_name_them(tmp_path: Path, form: str) -> None:
    pairs = [("Nordtal Maltings", "Supplier"), ("Pilsner Malt", "Malt type"), ("L24-1174", "Lot no.")]
    found = entries(analysis(tmp_path, [(entry, form.format(caption)) for entry, caption in pairs]))
    assert found == {key: EXPECTED[key] for key in ("supplier", "malt", "batch")}


def test_entries_set_in_below_short_captions_are_theirs(tmp_path: Path) -> None:
    lines = [("Malt",), ("", "Pilsner Malt"), ("Lot",), ("", "L24-1174"), ("Crop",), ("", "2025")]
    found = entries(analysis(tmp_path, lines, (54, 76)))
    assert (found["malt"], found["batch"], found["crop_year"]) == ("Pilsner Malt", "L24-1174", "2025")


def test_the_name_of_a_parameter_behind_a_caption_is_no_sure_malt(tmp_path: Path) -> None:
    found = analysis(tmp_path, [("Lot:", "L24-1174"), ("Malt:", "Moisture")])
    assert "malt" not in entries(found)


@pytest.mark.parametrize(
    ("printed", "name"), [("Pale Malt EBC", "Pale Malt"), ("Caramel Malt 150 EBC", "Caramel Malt 150 EBC")]
)
def test_a_method_family_behind_a_malt_is_no_part_of_its_name(tmp_path: Path, printed: str, name: str) -> None:
    assert entries(analysis(tmp_path, [("Lot:", "L24-1174"), ("Malt:", printed)]))["malt"] == name


def test_a_title_above_captions_in_boxes_holds_no_entries(tmp_path: Path) -> None:
    lines = [("Certificate of analysis", "24-118"), ("Malt type", "Lot no."), ("", ""), ("Pilsner Malt", "L24-1174")]
    found = analysis(tmp_path, lines, (54, 250)).header
    assert "batch" not in found or found["batch"].value == "L24-1174"
