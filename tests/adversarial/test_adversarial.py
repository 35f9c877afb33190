"""Nothing on a misleading sheet is accepted wrong, nothing printed vanishes, and every doubt is explained.

``python -m tests.adversarial [NAME...]`` shows what was read from each sheet; ``--save FOLDER`` keeps the sheets.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from importer import read_sheet
from tests.adversarial.collection import SHEETS
from tests.adversarial.paper import draw
from tests.adversarial.verdict import Verdict, judge


@pytest.fixture(params=sorted(SHEETS))
def verdict(request: pytest.FixtureRequest, tmp_path: Path) -> Verdict:
    case = SHEETS[request.param]
    if case.fails:
        request.applymarker(pytest.mark.xfail(reason=case.fails, strict=True))
    file = tmp_path / f"{case.name}.{case.form}"
    file.write_bytes(draw(case))
    return judge(case, read_sheet(file))


def test_nothing_is_accepted_wrong_or_lost_or_left_unexplained(verdict: Verdict) -> None:
    assert not verdict.wrong, "accepted wrong"
    assert not verdict.lost, "lost without a trace"
    assert not verdict.mute, "in review without a reason"
