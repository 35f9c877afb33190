"""Habits of a whole sheet: a figure printed in a second unit, labels in capitals, numbered labels."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

from tests.sheets.numbers import Limit, number
from tests.sheets.rows import Cell, Row, evaluate
from tests.sheets.targets import targets
from tests.sheets.truth import TruthAnalysis, TruthFigure
from tests.sheets.values import Profile

if TYPE_CHECKING:
    from tests.sheets.content import Composer

# What an EBC sheet prints once more in the unit of another family: unit, source, decimals, family of that unit.
SECOND = {
    "colour": ("SRM", "colour/1.97", 1, "ASBC"),
    "dp": ("°Lintner", "lintner", 0, "ASBC"),
    "fan": ("mg/100 g", "fan_100g", 0, "EBC"),
}


def print_twice(
    rng: Random, composer: Composer, rows: list[Row], profiles: list[Profile], analyses: list[TruthAnalysis]
) -> None:
    """Prints one figure of an EBC sheet in a second unit too: that one stands beside the figure on the basis."""
    if composer.family != "EBC":
        return
    found = [r for r in rows if r.concept in SECOND and r.unit and r.unit != SECOND[r.concept][0]]
    if not found:
        return
    row = rng.choice(found)
    unit, source, decimals, family = SECOND[row.concept]
    first = row.cells[0].truth
    if not isinstance(first, TruthFigure) or first.unit == unit or first.certainty != "sure" or not first.number:
        return
    unit_text = composer.spell_unit(unit)
    cells = []
    for profile, analysis, cell in zip(profiles, analyses, row.cells, strict=True):
        if not isinstance(cell.truth, TruthFigure):
            cells.append(Cell(""))
            continue
        text = number(evaluate(profile, source), decimals, composer.comma)
        value = float(text.replace(",", "."))
        answer = targets(first.parameter, unit, family, "congress", value)
        truth = TruthFigure(
            first.parameter, row.label, text, unit, unit_text, family, number=value, targets=answer, also=True
        )
        cell.truth.certainty, cell.truth.why = "either", "printed twice"
        analysis.figures.append(truth)
        cells.append(Cell(text, truth))
    second = Row(row.concept + "_second", row.group, row.label, unit_text, "", Limit("", "", ""), cells)
    rows.insert(rows.index(row) + rng.choice((0, 1, 1)), second)


def _capitals(text: str) -> str:
    """Capitals, but Greek letters stay small: laboratories write α-AMYLASE."""
    return "".join(c if c in "αβµμ" else c.upper() for c in text)


def rewrite_labels(rng: Random, rows: list[Row]) -> None:
    """On some sheets all labels are in capitals or small letters, end in a colon or carry a number."""
    roll = rng.random()
    for place, row in enumerate(rows, 1):
        if roll < 0.07:
            row.label = _capitals(row.label)
        elif roll < 0.10:
            row.label = row.label[:1].lower() + row.label[1:] if not row.label[:2].isupper() else row.label
        elif roll < 0.13:
            row.label = f"{place}. {row.label}"
        elif roll < 0.16:
            row.label = f"{row.label}:"
        for cell in row.cells:
            if cell.truth is not None:
                cell.truth.label = row.label
