"""What the entries of a header can look like, by key."""

from __future__ import annotations

import re

from importer.reading.dates import parse_crop_year, parse_date
from importer.vocabulary.malt_names import has_legal_form

DATES = frozenset({"date", "produced_on", "analysed_on", "delivered_on", "best_before"})
COMPANIES = frozenset({"supplier", "customer"})
NUMBERED = frozenset({"quantity", "certificate", "order", "batch"})

# "(2 pages)", and "337131 (intact)".
_BRACKETED = re.compile(r"\(\d{1,2} ")
_NUMBER = re.compile(r"\d{4}")


def fits_entry(key: str, text: str) -> bool | None:
    """Whether a text can be an entry of this key; None where any text can."""
    if key in DATES:
        return parse_date(text) is not None
    if key == "crop_year":
        return parse_crop_year(text) is not None
    if key in NUMBERED:
        return any(c.isdigit() for c in text) and not _BRACKETED.match(text)
    if key in COMPANIES and ((len(text.split()) == 1 and has_legal_form(text)) or _NUMBER.match(text) or "@" in text):
        return False
    return None
