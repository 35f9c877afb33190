"""Rows of a sheet before they are laid out, and small things about their labels."""

from __future__ import annotations

from dataclasses import dataclass

from tests.sheets.numbers import Limit
from tests.sheets.truth import TruthFigure, TruthRow
from tests.sheets.values import Profile


@dataclass(slots=True)
class Cell:
    text: str
    truth: TruthFigure | TruthRow | None = None


@dataclass(slots=True)
class Row:
    """One row. ``unit`` is as printed, empty where the sheet leaves it out."""

    concept: str
    group: str
    label: str
    unit: str
    method: str
    limit: Limit
    cells: list[Cell]
    typical: str = ""


def basis_of_label(wording: str) -> tuple[str, str]:
    """Takes the tag off a wording: ``FGDB~dry`` is ("FGDB", "dry")."""
    text, _, tag = wording.partition("~")
    return text, tag


def basis_in(label: str, markers: dict[str, str]) -> bool:
    """Whether the label holds a moisture basis marker."""
    return any(m.strip(", ()") in label for m in markers.values())


def evaluate(profile: Profile, source: str) -> float:
    """``fan``, ``colour/1.97``, ``soluble_nitrogen*1000``."""
    for sign in "/*":
        name, found, factor = source.partition(sign)
        if found:
            return profile[name] / float(factor) if sign == "/" else profile[name] * float(factor)
    return profile[source]
