"""All misleading sheets, by name."""

from tests.adversarial import (
    bare_names,
    beside_results,
    columns,
    drawing,
    entries_and_captions,
    figures,
    heads_above,
    keyed,
    languages,
    lots_in_rows,
    measures,
    occasions,
    other_houses,
    other_samples,
    papers,
    parts_of_documents,
    repeats,
    sections,
    spreadsheets,
    variants,
    wordings,
)
from tests.adversarial.case import SHEETS

__all__ = ["SHEETS"]

_PARTS = (
    bare_names,
    beside_results,
    columns,
    drawing,
    entries_and_captions,
    figures,
    heads_above,
    keyed,
    languages,
    lots_in_rows,
    measures,
    occasions,
    other_houses,
    other_samples,
    papers,
    parts_of_documents,
    repeats,
    sections,
    spreadsheets,
    variants,
    wordings,
)
