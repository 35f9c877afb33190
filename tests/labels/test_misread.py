"""Short words of labels as optical reading takes them."""

from __future__ import annotations

import pytest

from importer.meaning.labels import describe


@pytest.mark.parametrize(
    ("misread", "meant", "unit"),
    [
        ("Viscosité du moit", "Viscosité du moût", "mPa·s"),
        ("Azote soluble du moit", "Azote soluble du moût", "mg/100 g"),
        ("Extract fine, dry, loB mash", "Extract fine, dry, IoB mash", "%"),
    ],
)
def test_a_short_word_misread_is_the_one_meant(misread: str, meant: str, unit: str) -> None:
    found, plain = describe(misread, unit), describe(meant, unit)
    assert (found.parameter, found.state, found.family) == (plain.parameter, plain.state, plain.family)
    assert found.parameter is not None


def test_another_short_word_is_no_misreading() -> None:
    assert describe("Viscosité du mois", "mPa·s").state != "sure"
