"""Entries of the head that are easily missed, or taken from words that are none."""

from __future__ import annotations

from pathlib import Path

import pytest

from importer.intake.pdf_text import Char, _without_doubles
from importer.models import HeaderField
from importer.vocabulary.header_captions import header_caption
from importer.words import Box
from tests.reading.test_forms import PLACES, ROWS, Text, read, table

RESULTS: list[Text] = [
    (50, 180, "Methods: EBC"),
    *table([("Parameter", "Unit", "Result"), *[(a, b, c[0]) for a, b, c in ROWS]], 210, PLACES),
]


def header(folder: Path, *texts: Text) -> dict[str, HeaderField]:
    return read(folder, [*texts, *RESULTS]).analyses[0].header


def accepted(entries: dict[str, HeaderField]) -> dict[str, str]:
    return {key: field.value for key, field in entries.items() if field.state == "accepted"}


@pytest.mark.parametrize(
    ("text", "key", "value"),
    [
        ("Your P/O: 24881", "order", "24881"),
        ("Product: Lager malt; Lot no. / silo: 202401917; Crop: 2024", "batch", "202401917"),
        ("Malt: Lager malt; Harvest (barley): 2024", "malt", "Lager malt"),
        ("Brewery: Larkmoor Brewing", "customer", "Larkmoor Brewing"),
    ],
)
def test_entries_in_one_line(tmp_path: Path, text: str, key: str, value: str) -> None:
    assert accepted(header(tmp_path, (50, 100, text)))[key] == value


def test_entries_in_boxes_far_below_their_captions(tmp_path: Path) -> None:
    places = (50, 200, 350)
    captions = [(x, 100, text) for x, text in zip(places, ("Product", "Produced on", "Batch no."), strict=True)]
    entries = [(x, 124, text) for x, text in zip(places, ("Lager malt", "2025-03-12", "L24-1174"), strict=True)]
    found = accepted(header(tmp_path, *captions, *entries))
    assert (found["malt"], found["produced_on"], found["batch"]) == ("Lager malt", "2025-03-12", "L24-1174")


@pytest.mark.parametrize(
    "text",
    ["Enclosed: certificate of analysis (1 pages).", "Certificate for malt HL270025", "Attached analysis 3 pages"],
)
def test_words_about_a_certificate_are_no_number_of_one(tmp_path: Path, text: str) -> None:
    assert "certificate" not in accepted(header(tmp_path, (50, 100, text)))


def test_a_heading_below_a_heading_is_no_variety(tmp_path: Path) -> None:
    assert "variety" not in accepted(header(tmp_path, (50, 100, "Grain"), (50, 112, "General")))


def test_a_known_word_is_no_misprint_of_a_caption() -> None:
    assert header_caption("Ontvanger") == ("customer", 100.0)
    found = header_caption("Ontvangen")
    assert found is None or found[0] != "customer"
    # What optical reading has damaged is understood still.
    assert (header_caption("Ontvan9er") or ("", 0))[0] == "customer"


def test_narrow_letters_that_follow_each_other_are_no_double_print() -> None:
    def char(text: str, x0: float) -> Char:
        return Char(text, Box(x0, 40, x0 + 2.05, 51), 11.25, True, False, 0)

    printed = [char("l", 53.28), char("l", 55.33), char("o", 57.38)]
    again = [c._replace(box=Box(c.box.x0 + 0.25, 40, c.box.x1 + 0.25, 51)) for c in printed]
    assert "".join(c.text for c in _without_doubles([*printed, *again])) == "llo"


@pytest.mark.parametrize(
    ("title", "malt"),
    [
        ("Analysis certificate Pilsner malt", "Pilsner malt"),
        ("Analysenzertifikat Wiener Malz", "Wiener Malz"),
        ("Crystal malt 150 analysis report", "Crystal malt 150"),
        ("Analyserapport pilsnermout", "pilsnermout"),
    ],
)
def test_a_malt_that_only_the_title_names_is_offered(tmp_path: Path, title: str, malt: str) -> None:
    field = header(tmp_path, (50, 60, title))["malt"]
    assert (field.value, field.state) == (malt, "review")


@pytest.mark.parametrize(
    "title",
    [
        "Certificate of malt analysis",
        "Wheat malt analysis",
        "Analysis certificate Pilsner malt and Munich malt",
        "Test report Hollowmere Maltings Pilsner malt",
    ],
)
def test_a_title_that_names_no_malt_or_several_offers_none(tmp_path: Path, title: str) -> None:
    assert "malt" not in header(tmp_path, (50, 60, title))
    named = header(tmp_path, (50, 60, title), (50, 90, "Malt: Lager malt"))
    assert accepted(named)["malt"] == "Lager malt"


@pytest.mark.parametrize(
    ("text", "key", "state"),
    [
        ("Customer: Brasserie de la", "customer", "review"),
        ("Barley variety: Brindale,", "variety", "review"),
        ("Barley variety: Brindale, Corvane", "variety", "accepted"),
        ("Malt: Pale ale malt", "malt", "accepted"),
    ],
)
def test_entries_that_have_to_go_on_wait(tmp_path: Path, text: str, key: str, state: str) -> None:
    assert header(tmp_path, (50, 100, text))[key].state == state
