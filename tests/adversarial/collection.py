"""All misleading sheets, by name."""

from tests.adversarial import (
    columns,
    drawing,
    figures,
    languages,
    measures,
    occasions,
    papers,
    sections,
    spreadsheets,
    variants,
)
from tests.adversarial.case import SHEETS

__all__ = ["SHEETS"]

_PARTS = (columns, drawing, figures, languages, measures, occasions, papers, sections, spreadsheets, variants)
