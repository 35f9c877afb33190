"""Entries of the head that cannot be what their caption says."""

from __future__ import annotations

import pytest

from importer.meaning.header import build_header
from importer.models import HeaderField
from importer.printed import PrintedAnalysis, PrintedHeader
from importer.words import Box, Page

BOX = Box(100, 20, 200, 32)


def field(key: str, text: str, caption: str) -> HeaderField | None:
    entry = PrintedHeader(key, caption, text, 1, BOX, sure=True)
    printed = PrintedAnalysis(figures=(), header=(entry,), pages=(1,))
    return build_header(printed, {1: Page(1, 595, 842, (), "text")}).get(key)


@pytest.mark.parametrize(
    ("key", "text", "caption", "value", "state"),
    [
        ("batch", "22-0500-PA 22-0556-PA", "Lot", "22-0500-PA 22-0556-PA", "review"),
        ("batch", "24 1234", "Lot", "24 1234", "accepted"),
        ("batch", "230724-B Unit", "Batch", "230724-B", "accepted"),
        ("malt", "CANTIDAD ENVASE", "ARTÍCULO", "CANTIDAD ENVASE", "review"),
        ("malt", "Lager Malt", "Product", "Lager Malt", "accepted"),
        ("customer", "Brauerei Bichl GmbH & Co.", "Kunde", "Brauerei Bichl GmbH & Co.", "review"),
        ("customer", "Brauerei Bichl GmbH & Co. KG", "Kunde", "Brauerei Bichl GmbH & Co. KG", "accepted"),
        ("customer", "Wren & Co.", "Customer", "Wren & Co.", "accepted"),
        ("quantity", "24 t", "Quantity", "24 t", "accepted"),
        ("delivered_on", "19/06/2024 10:42", "Verzonden", "2024-06-19", "review"),
        ("delivered_on", "19/06/2024", "Verzonden", "2024-06-19", "accepted"),
    ],
)
def test_what_an_entry_can_be(key: str, text: str, caption: str, value: str, state: str) -> None:
    found = field(key, text, caption)
    assert found is not None
    assert (found.value, found.state) == (value, state)


@pytest.mark.parametrize(("key", "text"), [("batch", "5,7 %"), ("quantity", "304 L°/kg")])
def test_results_are_no_entries(key: str, text: str) -> None:
    assert field(key, text, "Lot" if key == "batch" else "Yield") is None
