"""Which method family the figures of a sheet stand on where it says one thing and its rows another."""

from __future__ import annotations

import pytest

from importer.printed import PrintedFigure
from tests.meaning_build.built import built, only, row

MOISTURE = row("Moisture", "4.3")
EXTRACT = row("Extract fine, dry", "81.4")
IOB_EXTRACT = row("Extract 0.7 mm, dry", "302", "L°/kg")
IOB_POWER = row("Diastatic power", "48", "°IoB")


@pytest.mark.parametrize(
    ("rows", "state"),
    [
        ((IOB_EXTRACT, IOB_POWER), "review"),
        ((IOB_POWER,), "accepted"),
        ((IOB_EXTRACT, IOB_POWER, row("Extract fine, dry", "81.4", method="EBC 4.5.1"), EXTRACT), "review"),
        ((row("Diastatic power", "280", "WK"), EXTRACT), "accepted"),
    ],
    ids=["units-of-several-rows", "of-one-row", "one-row-names-its-method", "the-same-family"],
)
def test_a_methods_note_does_not_outweigh_the_units_of_several_rows(
    rows: tuple[PrintedFigure, ...], state: str
) -> None:
    analysis = built(MOISTURE, row("Viscosity", "1.52", "mPa·s"), *rows)
    assert only(analysis, "viscosity").state == state
    assert only(analysis, "moisture").state == "accepted"
    assert ("family-assumed" in only(analysis, "viscosity").flags) == (state == "review")
