"""A bounded run of the accuracy report: nothing wrong may be accepted, little may be asked, next to nothing lost."""

from __future__ import annotations

import pytest

from importer import read_sheet
from tests.accuracy.__main__ import run
from tests.accuracy.report import summary, tally, wrong_lines

ACCEPTED_RIGHT = 0.97  # share of the figures that a good reader need not ask about
MISSED = 0.005  # share of all figures that are neither read nor listed as unrecognised
AMBIGUOUS_ACCEPTED = 0  # figures that cannot be known from the sheet


@pytest.mark.slow
@pytest.mark.parametrize(("count", "kept"), [(62, False), (40, True)])
def test_made_sheets_are_read_well(count: int, kept: bool) -> None:
    found = list(run(read_sheet, count, 1, kept))
    total = tally(found)["all"]["all"]
    # What is kept aside stays unseen here too: only its counts are shown.
    shown = summary(tally(found), ("layout",)) + ("" if kept else "\n" + "\n".join(wrong_lines(found)))
    assert total.figures > 8 * count
    assert total.accepted_wrong == 0, shown
    assert total.batch_wrong == 0, shown
    assert total.ambiguous_accepted <= AMBIGUOUS_ACCEPTED, shown
    assert total.missed <= MISSED * total.figures, shown
    assert total.sure_right >= ACCEPTED_RIGHT * total.sure, shown
