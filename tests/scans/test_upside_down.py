"""Which way up a page lies: how many lines are asked, and what they have to say together."""

from __future__ import annotations

import pytest
from PIL import Image

from importer.intake import second


def _asked(monkeypatch: pytest.MonkeyPatch, votes: list[float]) -> tuple[bool | None, int]:
    """What is told of lines with these votes (above 0: on its head), and how many of them were looked at."""
    lines = [Image.new("L", (100, 48)) for _ in votes]
    given = {id(line): vote for line, vote in zip(lines, votes, strict=True)}
    seen: list[int] = []

    def vote(_: object, asked: list[Image.Image]) -> list[float]:
        seen.extend(map(id, asked))
        return [given[id(line)] for line in asked]

    monkeypatch.setattr(second, "_classifier", lambda: object())
    monkeypatch.setattr(second, "_votes", vote)
    return second.upside_down(lines), len(seen)


@pytest.mark.parametrize(
    ("votes", "told", "looked_at"),
    [
        ([-9.0] * 14, False, second.FEW_LINES),
        ([9.0] * 14, True, second.FEW_LINES),
        ([-9.0, 9.0, -9.0, 9.0, -9.0, 0.5, *[9.0] * 8], True, 14),  # the first few differ
        ([9.0, 9.0, 9.0, 9.0, 9.0, 1.0, *[-9.0] * 8], False, 14),
        ([1.0, 0.5], False, 2),  # next to nothing: pages mostly lie upright
        ([3.0], True, 1),
    ],
)
def test_as_many_lines_are_asked_as_the_answer_needs(
    monkeypatch: pytest.MonkeyPatch, votes: list[float], told: bool, looked_at: int
) -> None:
    assert _asked(monkeypatch, votes) == (told, looked_at)


def test_nobody_can_tell_of_a_page_without_lines(monkeypatch: pytest.MonkeyPatch) -> None:
    assert _asked(monkeypatch, []) == (None, 0)
