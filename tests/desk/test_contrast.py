"""Readable in light and in dark: WCAG 2.2, success criterion 1.4.3, asks for 4.5 : 1 (1.4.11: 3 : 1 for controls)."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import importer.desk

CSS = Path(importer.desk.__file__ or "").with_name("static").joinpath("desk.css").read_text(encoding="utf-8")
TEXT = [("ink", "paper"), ("ink", "card"), ("quiet", "paper"), ("quiet", "card"), ("quiet", "soft"), ("ink", "soft")]
TEXT += [("accent", "paper"), ("accent", "card"), ("on-accent", "accent"), ("warn", "warn-soft"), ("ink", "warn-soft")]
TEXT += [("warn", "card"), ("good", "card"), ("good", "paper"), ("ink", "key")]


def colours(part: str) -> dict[str, str]:
    return dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", part))


LIGHT = colours(CSS.partition("@media")[0])
DARK = colours(CSS.partition("prefers-color-scheme: dark")[2].partition("* {")[0])


def luminance(colour: str) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    levels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [level / 12.92 if level <= 0.04045 else ((level + 0.055) / 1.055) ** 2.4 for level in levels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def ratio(one: str, other: str) -> float:
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_the_measure_itself() -> None:
    """21 : 1 for black on white, and #767676 as the lightest grey on white that passes (WCAG 2.2, techniques)."""
    assert ratio("#000000", "#ffffff") == pytest.approx(21)
    assert ratio("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("mode", ["light", "dark"])
@pytest.mark.parametrize(("front", "back"), TEXT)
def test_text_can_be_read(mode: str, front: str, back: str) -> None:
    palette = LIGHT if mode == "light" else DARK
    assert ratio(palette[front], palette[back]) >= 4.5


@pytest.mark.parametrize("palette", [LIGHT, DARK], ids=["light", "dark"])
def test_marks_and_borders_of_controls_can_be_seen(palette: dict[str, str]) -> None:
    assert ratio(palette["mark"], "#ffffff") >= 3.0
    assert ratio(palette["quiet"], palette["card"]) >= 3.0
    assert ratio(palette["accent"], palette["paper"]) >= 3.0
